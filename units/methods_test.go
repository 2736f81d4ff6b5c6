package units

import (
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"example.com/benchsums/internal/figures"
)

// Every accessor gives 1 for the constant it is named after, and every scale
// has its accessor.
func TestAccessors(t *testing.T) {
	singular := func(name string) string {
		for _, r := range [...][2]string{
			{"Feet", "Foot"}, {"Inches", "Inch"}, {"Gravities", "Gravity"}, {"Kilograms", "Kilogram"}, {"Grams", "Gram"},
			{"Pounds", "Pound"}, {"Ounces", "Ounce"}, {"Tons", "Ton"}, {"Kilopounds", "Kilopound"}, {"Torrs", "Torr"}, {"Gons", "Gon"},
			{"FahrenheitDegrees", "FahrenheitDifference"}, {"Millimetres", "Millimetre"}, {"Centimetres", "Centimetre"}, {"Metres", "Metre"},
			{"Newtons", "Newton"}, {"Radians", "Radian"}, {"Degrees", "Degree"}, {"Revolutions", "Revolution"}, {"Miles", "Mile"},
			{"Kilometres", "Kilometre"}, {"Seconds", "Second"}, {"Micrometres", "Micrometre"}, {"Microinches", "Microinch"}, {"Litres", "Litre"},
			{"Millilitres", "Millilitre"}, {"Gallons", "Gallon"}, {"Pints", "Pint"}, {"Quarts", "Quart"}, {"Gills", "Gill"},
			{"Atmospheres", "Atmosphere"}, {"Turns", "Turn"}, {"Minutes", "Minute"},
		} {
			name = strings.ReplaceAll(name, r[0], r[1])
		}
		if name == "Kelvins" {
			return "Kelvin"
		}
		return name
	}
	for _, e := range everyKind {
		typ := reflect.TypeOf(e.value)
		scales := map[string]float64{}
		for _, s := range e.kind.scales {
			scales[s.goName] = s.factor
			scales[strings.TrimSuffix(s.goName, "Difference")] = s.factor
		}
		found := 0
		for i := range typ.NumMethod() {
			m := typ.Method(i)
			if m.Type.NumIn() != 1 || m.Type.NumOut() != 1 || m.Type.Out(0).Kind() != reflect.Float64 || m.Type.Out(0).Name() != "float64" {
				continue
			}
			if m.Name == "Celsius" || m.Name == "Fahrenheit" { // TestTemperatureScales
				continue
			}
			found++
			factor, ok := scales[m.Name]
			if !ok {
				factor, ok = scales[singular(m.Name)]
			}
			if !ok {
				factor, ok = scales[strings.TrimSuffix(singular(m.Name), "s")]
			}
			if !ok {
				t.Errorf("%s.%s: no unit of that name", typ, m.Name)
				continue
			}
			v := reflect.New(typ).Elem()
			v.SetFloat(factor * 3)
			got := v.Method(i).Call(nil)[0].Float()
			figures.Near(t, typ.String()+"."+m.Name, got, 3, 1e-15*3)
		}
		units := 0
		for _, s := range e.kind.scales {
			if s.zero == 0 && s.goName != "One" {
				units++
			}
		}
		if found != units {
			t.Errorf("%s has %d accessors for %d units", typ, found, units)
		}
	}
}

func TestAngularSpeedAndTime(t *testing.T) {
	n := 3000 * RevolutionPerMinute
	if got := n.Time(360 * Degree); got != 20*time.Millisecond {
		t.Errorf("a turn at 3000 rev/min takes %v", got)
	}
	figures.Near(t, "angle in a millisecond", n.Angle(time.Millisecond).Degrees(), 18, 1e-12)
	for _, c := range []struct {
		w    AngularSpeed
		a    Angle
		want time.Duration
	}{
		{0, 1, math.MaxInt64}, {0, 0, math.MaxInt64}, {1e-30, -1, math.MinInt64}, {1e-30, 1, math.MaxInt64}, {-1, 1, -time.Second},
	} {
		if got := c.w.Time(c.a); got != c.want {
			t.Errorf("%v through %v: %v, want %v", c.w, c.a, got, c.want)
		}
	}
}

func TestProducts(t *testing.T) {
	if a := (20 * Millimetre).Times(30 * Millimetre); math.Abs(a.SquareMillimetres()-600) > 1e-9 {
		t.Errorf("20 mm by 30 mm: %v", a)
	}
	if v := (600 * SquareMillimetre).Times(10 * Millimetre); math.Abs(v.CubicCentimetres()-6) > 1e-12 {
		t.Errorf("600 mm² by 10 mm: %v", v)
	}
}
