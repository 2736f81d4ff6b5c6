package units

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

// What is typed in a usual unit comes back, to the very same value, and in the
// very same words where it has six figures or fewer.
func TestTypedComesBack(t *testing.T) {
	for _, e := range everyKind {
		usual := &e.kind.text[0]
		t.Run(e.kind.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				places := rapid.IntRange(0, 4).Draw(t, "places")
				n := rapid.IntRange(0, 999_999).Draw(t, "digits")
				typed := strconv.FormatFloat(float64(n)/math.Pow10(places), 'f', -1, 64)
				text := usual.join(typed)
				v, err := e.kind.parse(text)
				if err != nil {
					t.Fatal(err)
				}
				back, err := e.kind.marshal(v)
				if err != nil {
					t.Fatal(err)
				}
				if string(back) != text {
					t.Fatalf("%q came back as %q", text, back)
				}
			})
		})
	}
}

// Whatever the value, the text reads back to it, bit for bit.
func TestEveryValueRoundTrips(t *testing.T) {
	for _, e := range everyKind {
		t.Run(e.kind.name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				v := rapid.Float64().Draw(t, "v")
				if rapid.Bool().Draw(t, "typed") {
					s := &e.kind.scales[rapid.IntRange(0, len(e.kind.scales)-1).Draw(t, "unit")]
					v = s.si(float64(rapid.IntRange(-1_000_000, 1_000_000).Draw(t, "n")) / 1000)
				}
				if e.kind == &temperatureKind {
					v = math.Abs(v)
				}
				text, err := e.kind.marshal(v)
				if err != nil {
					t.Fatal(err)
				}
				back, err := e.kind.parse(string(text))
				if err != nil || back != v {
					t.Fatalf("%g became %q became %g, %v", v, text, back, err)
				}
			})
		})
	}
}

// A unit of the kind's text list is chosen where it is shorter than many
// figures of the usual one.
func TestMarshalText(t *testing.T) {
	for _, c := range []struct {
		v    interface{ MarshalText() ([]byte, error) }
		want string
	}{
		{12.7 * Millimetre, "12.7 mm"},
		{0.1 * Millimetre, "0.1 mm"},
		{1 * Inch, "25.4 mm"},
		{3.0 / 64 * Inch, "0.046875 in"},
		{60 * Degree, "60°"},
		{28.5 * Degree, "28.5°"},
		{1 * Radian, "1 rad"},
		{1 * Pound, "1 lb"},
		{5 * OunceForceInch, "5 ozf in"},
		{5 * PoundForceInch, "5 lbf in"},
		{30 * TonForcePerSquareInch, "30 tonf/in²"},
		{760 * MillimetreOfMercury, "760 mmHg"},
		{14.7 * PoundPerSquareInch, "14.7 psi"},
		{1.5 * ImperialPint, "1.5 imp pint"},
		{1 * USPint, "1 US pint"},
		{3 * CubicInch, "3 in³"},
		{3000 * RevolutionPerMinute, "3000 rev/min"},
		{2.54 * Centimetre, "2.54 cm"},
		{12.7 * Micrometre, "12.7 µm"},
		{194.39 * NewtonMetre, "194.39 N m"},
		{15 * RevolutionPerSecond, "15 rev/s"},
		{30 * KilopoundPerSquareInch, "30 ksi"},
		{5000 * PoundPerSquareInch, "5000 psi"},
		{11 * KilopoundPerSquareInch, "11000 psi"},
		{123456e3 * Millimetre, "123456000 mm"},
		{100 * PoundPerSquareInch, "100 psi"},
		{1.37 * ImperialQuart, "2.74 imp pint"},
		{Celsius(20), "20 °C"},
		{Fahrenheit(68), "68 °F"},
		{Ratio(0.15), "0.15"},
		{Length(math.Copysign(0, -1)), "0 mm"},
		{Length(math.Pi), "3141.592653589793 mm"},
		{Length(1e-300), "1e-297 mm"},
	} {
		got, err := c.v.MarshalText()
		if err != nil || string(got) != c.want {
			t.Errorf("%#v: got %q, %v, want %q", c.v, got, err, c.want)
		}
	}
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if _, err := Length(v).MarshalText(); !errors.Is(err, ErrNotFinite) || err.Error() != "length: not a finite number" {
			t.Errorf("length %g: %v", v, err)
		}
	}
	if _, err := Temperature(-1).MarshalText(); !errors.Is(err, ErrDomain) || err.Error() != "temperature -1 K: below absolute zero: outside the domain" {
		t.Errorf("-1 K: %v", err)
	}
}

func TestString(t *testing.T) {
	for _, c := range []struct {
		v    fmt.Stringer
		want string
	}{
		{12.7 * Millimetre, "12.7 mm"},
		{1.0 / 3 * Inch, "8.46667 mm"},
		{1 * Metre, "1000 mm"},
		{0.5 * Micrometre, "0.0005 mm"},
		{-3 * Millimetre, "-3 mm"},
		{Length(0), "0 mm"},
		{Length(math.Copysign(0, -1)), "0 mm"},
		{60 * Degree, "60°"},
		{101.325 * Kilopascal, "101.325 kPa"},
		{1 * Megapascal, "1 MPa"},
		{999.9999999999 * Kilopascal, "1 MPa"},
		{60 * NewtonMillimetre, "60 N mm"},
		{1.5 * Kilowatt, "1.5 kW"},
		{Fahrenheit(32), "0 °C"},
		{Celsius(-5), "-5 °C"},
		{9 * FahrenheitDifference, "5 K"},
		{Ratio(9.5), "9.5"},
		{Length(math.Inf(1)), "+Inf mm"},
		{Length(math.NaN()), "NaN mm"},
		{1e15 * Millimetre, "1e+15 mm"},
	} {
		if got := c.v.String(); got != c.want {
			t.Errorf("%#v: got %q, want %q", c.v, got, c.want)
		}
	}
}

// No verb prints a number without its unit.
func TestFormat(t *testing.T) {
	l := 4.4217 * Millimetre
	for _, c := range []struct{ format, want string }{
		{"%v", "4.4217 mm"}, {"%s", "4.4217 mm"}, {"%+v", "4.4217 mm"}, {"%q", `"4.4217 mm"`},
		{"%.2f", "4.42 mm"}, {"%.0f", "4 mm"}, {"%f", "4.421700 mm"}, {"%F", "4.421700 mm"},
		{"%e", "4.421700e+00 mm"}, {"%.1E", "4.4E+00 mm"}, {"%g", "4.4217 mm"}, {"%.3g", "4.42 mm"}, {"%.2G", "4.4 mm"},
		{"%.3v", "4.42 mm"}, {"%+.2f", "+4.42 mm"}, {"% .2f", " 4.42 mm"},
		{"%12.2f", "     4.42 mm"}, {"%-12.2f|", "4.42 mm     |"}, {"%12v", "   4.4217 mm"}, {"%2v", "4.4217 mm"}, {"%-12v|", "4.4217 mm   |"},
		{"%#v", "0.004421700000000001*units.Metre"},
		{"%d", "%!d(units.Length=4.4217 mm)"}, {"%x", "%!x(units.Length=4.4217 mm)"}, {"%t", "%!t(units.Length=4.4217 mm)"},
	} {
		if got := fmt.Sprintf(c.format, l); got != c.want {
			t.Errorf("%s: got %q, want %q", c.format, got, c.want)
		}
	}
	for _, c := range []struct{ got, want string }{
		{fmt.Sprintf("%.1f", 28.25*Degree), "28.2°"},
		{fmt.Sprintf("%8.1f|", 28.3*Degree), "   28.3°|"},
		{fmt.Sprintf("%.1f", Celsius(20)), "20.0 °C"},
		{fmt.Sprintf("%.3f", Ratio(0.15)), "0.150"},
		{fmt.Sprintf("%.1f", 2500*Newton), "2.5 kN"},
		{fmt.Sprint(1*Millimetre, 2*Degree), "1 mm 2°"},
		{fmt.Sprintf("%v", []Length{1 * Millimetre, 2 * Millimetre}), "[1 mm 2 mm]"},
		{fmt.Sprintf("%.1f", struct{ Bore Length }{35 * Millimetre}), "{35.0 mm}"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}

// Reading a plain length allocates nothing, nor does reading one with its
// fraction, its angle in minutes.
func TestParsingAllocatesNothing(t *testing.T) {
	for _, text := range []string{"12.7 mm", "1 3/16 in", "10 thou", "-0.5 µm"} {
		if n := testing.AllocsPerRun(100, func() { _, _ = ParseLength(text) }); n != 0 {
			t.Errorf("%q: %g allocations", text, n)
		}
	}
	if n := testing.AllocsPerRun(100, func() { _, _ = ParseAngle("28° 30′") }); n != 0 {
		t.Errorf("28° 30′: %g allocations", n)
	}
}
