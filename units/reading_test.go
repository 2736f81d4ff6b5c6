package units

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
)

func TestParseReading(t *testing.T) {
	mm := func(v, std, dof float64) Reading[Length] {
		return Reading[Length]{Length(v) * Millimetre, Length(std), dof}
	}
	limits := func(mm float64) float64 { return float64(Length(mm)*Millimetre) / math.Sqrt(3) }
	for _, c := range []struct {
		want  Reading[Length]
		texts []string
	}{
		{mm(84.5, 0, 0), []string{"84.5 mm", " 84.5mm ", "(84.5 ± 0) mm", "84.5 mm ± 0 mm"}},
		{mm(84.5, limits(0.5), 0), []string{"84.5 mm ± 0.5 mm", "84.5 ± 0.5 mm", "84.5±0.5mm", "84.5 mm +/- 0.5 mm", "84.5 mm +- 0.5 mm", "84.5 mm + or - 0.5 mm", "(84.5 ± 0.5) mm", "84.5 ± 5e-1 mm"}},
		{mm(84.5, float64(0.6*Millimetre)/2, 0), []string{"84.5 mm ± 0.6 mm (k=2)", "84.5 ± 0.6 mm (k = 2)", "(84.5 ± 0.6) mm (k 2)"}},
		{mm(84.5, float64(0.3*Millimetre), 0), []string{"84.5 mm (u 0.3 mm)", "84.5 mm (u = 0.3 mm)", "84.5 mm(u=0.3 mm)"}},
		{mm(84.5, float64(0.3*Millimetre), 4), []string{"84.5 mm (u 0.3 mm, dof 4)", "84.5 mm (dof 4, u 0.3 mm)", "84.5 mm (u=0.3 mm,dof=4)"}},
		{mm(84.5, limits(0.5), 4), []string{"84.5 mm ± 0.5 mm (dof 4)"}},
		{mm(84.53, float64(12e-2*Millimetre), 0), []string{"84.53(12) mm"}},
		{mm(84.53, float64(12e-2*Millimetre), 6), []string{"84.53(12) mm (dof 6)"}},
	} {
		for _, text := range c.texts {
			got, err := ParseReading[Length](text)
			if err != nil {
				t.Errorf("%v", err)
			} else if got != c.want {
				t.Errorf("%q: got %#v, want %#v", text, got, c.want)
			}
		}
	}
}

func TestParseReadingOfOtherKinds(t *testing.T) {
	root3 := math.Sqrt(3)
	same := func(text string, gotValue, gotStd, wantValue, wantStd float64, err error) {
		t.Helper()
		if err != nil {
			t.Error(err)
			return
		}
		figures.Near(t, text, gotValue, wantValue, 1e-15*math.Abs(wantValue))
		figures.Near(t, text+": u", gotStd, wantStd, 1e-14*wantStd)
	}
	for _, text := range []string{"28° 30′ ± 10′", "28.5° ± 10′", "28d30m +/- 10'"} {
		r, err := ParseReading[Angle](text)
		same(text, float64(r.Value), float64(r.Std), float64(28.5*Degree), float64(10*ArcMinute)/root3, err)
	}
	for _, text := range []string{"20 °C ± 2 °C", "20 ± 2 °C", "20 °C ± 2 K"} {
		r, err := ParseReading[Temperature](text)
		same(text, float64(r.Value), float64(r.Std), float64(Celsius(20)), 2/root3, err)
	}
	r, err := ParseReading[Temperature]("68 °F ± 9 °F")
	same("68 °F ± 9 °F", float64(r.Value), float64(r.Std), float64(Fahrenheit(68)), 5/root3, err)
	for _, text := range []string{"1/2 in ± 1/64 in", "1/2 ± 1/64 in", `½" ± 1/64"`, "0.5 in ± 0.396875 mm"} {
		r, err := ParseReading[Length](text)
		same(text, float64(r.Value), float64(r.Std), float64(0.5*Inch), float64(Inch)/64/root3, err)
	}
	for _, text := range []string{"200 bar ± 1 %", "200 bar ± 2 bar", "-200 bar ± 1 %"} {
		r, err := ParseReading[Pressure](text)
		same(text, math.Abs(float64(r.Value)), float64(r.Std), float64(200*Bar), float64(2*Bar)/root3, err)
	}
	for _, text := range []string{"0.15 ± 0.02", "15 % ± 2 %", "15 ± 2 %"} {
		r, err := ParseReading[float64](text)
		same(text, r.Value, r.Std, 0.15, 0.02/root3, err)
		q, err := ParseReading[Ratio](text)
		same(text, float64(q.Value), float64(q.Std), 0.15, 0.02/root3, err)
	}
	v, err := ParseReading[Volume]("1 pint (imp) ± 2 cc (k=2)")
	same("a note behind a country", float64(v.Value), float64(v.Std), float64(ImperialPint), float64(Millilitre), err)
	f, err := ParseReading[Force]("100.02147(35) kgf")
	same("100.02147(35) kgf", float64(f.Value), float64(f.Std), float64(100.02147*KilogramForce), float64(0.00035*KilogramForce), err)
	g, err := ParseReading[Force]("1200(30) N")
	same("1200(30) N", float64(g.Value), float64(g.Std), 1200, 30, err)
}

func TestParseReadingRefuses(t *testing.T) {
	for _, c := range []struct {
		text string
		err  error
		pos  int
		msg  string
	}{
		{"84.5", ErrNoUnit, 4, "which unit? write 84.5 mm or 84.5 in or 84.5 thou"},
		{"84.5 ± 0.5", ErrNoUnit, 5, "which unit? write 84.5 mm or 84.5 in or 84.5 thou"},
		{"84.5 mm ± 0.5", ErrNoUnit, 14, "which unit? write 0.5 mm or 0.5 in or 0.5 thou"},
		{"84,5 ± 0.5 mm", ErrSyntax, 2, "a comma: write 84.5, with a point"},
		{"84.5 ± 0,5 mm", ErrSyntax, 9, "a comma: write 0.5, with a point"},
		{"84.5 mm ± -0.5 mm", ErrSyntax, 11, "what stands after ± must not be negative"},
		{"84.5 mm ± 1 bar", ErrUnknownUnit, 13, "bar is a unit of pressure, not of length: write mm, in, thou"},
		{"84.5 ± 0.5 mn", ErrUnknownUnit, 12, `"mn" is no unit of length known here: write mm, in, thou`},
		{"84.5 mm ± 0.5 mm ± 1 mm", ErrTrailing, 18, `left over after mm: "± 1 mm"; write the length alone`},
		{"84.5 mm ±", ErrSyntax, 10, "empty: want a number and a unit (mm, in, thou)"},
		{"± 3 mm", ErrSyntax, 0, "no value before ±: write it first, then its limits"},
		{"84.5 mm (k=2)", ErrSyntax, 9, "k: want a coverage factor behind ±, as in ± 0.6 mm (k=2)"},
		{"84.5 mm ± 0.5 mm (k=0)", ErrSyntax, 21, `k "0": want a number above 0`},
		{"84.5 mm ± 0.5 mm (k=inf)", ErrSyntax, 21, `k "inf": want a number above 0`},
		{"84.5 mm ± 0.5 mm (u 1 mm)", ErrSyntax, 19, "u beside another uncertainty: want one of them"},
		{"84.53(12) mm (u 1 mm)", ErrSyntax, 14, "u beside another uncertainty: want one of them"},
		{"84.5 mm (u 1 mm, u 2 mm)", ErrSyntax, 17, "u is given twice"},
		{"84.5 mm (u 0.3)", ErrNoUnit, 14, "which unit? write 0.3 mm or 0.3 in or 0.3 thou"},
		{"84.5 mm (u -0.3 mm)", ErrSyntax, 11, "u: want a standard uncertainty that is not negative"},
		{"84.5 mm (u 0.3 mm, dof many)", ErrSyntax, 23, `dof "many": want a number above 0`},
		{"84.5 mm (u 0.3 mm, )", ErrSyntax, 19, "in brackets: want u, k or dof, as in (u 0.3 mm, dof 4)"},
		{"84.5 mm (u 0.3 mm, x 4)", ErrSyntax, 19, "in brackets: want u, k or dof, as in (u 0.3 mm, dof 4)"},
		{"84.5 mm (x 4)", ErrTrailing, 8, `left over after mm: "(x 4)"; write the length alone`},
		{"", ErrSyntax, 0, "empty: want a number and a unit (mm, in, thou)"},
		{"()", ErrSyntax, 0, "want a number first, then the unit (mm, in, thou)"},
		{"84.5 mm ± 1e400 mm", ErrNotFinite, 11, "1e400: too large to hold"},
	} {
		_, err := ParseReading[Length](c.text)
		var e *ParseError
		switch {
		case err == nil:
			t.Errorf("%q was read", c.text)
		case !errors.As(err, &e) || !errors.Is(err, c.err):
			t.Errorf("%q: %v, want a ParseError for %v", c.text, err, c.err)
		case e.Pos != c.pos || e.Msg != c.msg || e.Text != c.text:
			t.Errorf("%q at %d: %s\nwant at %d: %s", e.Text, e.Pos, e.Msg, c.pos, c.msg)
		}
	}
	if _, err := ParseReading[Temperature]("20 °C ± 1 %"); !errors.Is(err, ErrUnknownUnit) {
		t.Errorf("a percentage of a temperature: %v", err)
	}
}

// A reading comes back as typed.
func TestReadingText(t *testing.T) {
	for _, text := range []string{
		"84.5 mm", "84.5 mm ± 0.5 mm", "84.5 mm (u 0.3 mm)", "84.5 mm (u 0.3 mm, dof 4)", "84.5 mm ± 0.5 mm (dof 4)",
		"-0.25 mm ± 0.01 mm", "25.4 mm ± 0.396875 mm",
	} {
		checkComesBack[Length](t, text)
	}
	for _, text := range []string{"28° ± 0.5°", "28.5° ± 0.25°", "0° (u 0.1°)"} {
		checkComesBack[Angle](t, text)
	}
	for _, text := range []string{"20 °C ± 2 K", "20 °C (u 0.5 K)", "120.5 °F ± 5 °F"} {
		checkComesBack[Temperature](t, text)
	}
	for _, text := range []string{"0.15 ± 0.02", "0.15 (u 0.01)"} {
		checkComesBack[Ratio](t, text)
		checkComesBack[float64](t, text)
	}
}

func checkComesBack[Q Quantity](t *testing.T, text string) {
	t.Helper()
	r, err := ParseReading[Q](text)
	if err != nil {
		t.Error(err)
		return
	}
	if back, err := r.MarshalText(); err != nil || string(back) != text {
		t.Errorf("%q came back as %q, %v", text, back, err)
	}
}

func TestReadingRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Reading[Angle]{
			Value: Angle(rapid.Float64().Draw(t, "value")),
			Std:   Angle(math.Abs(rapid.Float64().Draw(t, "std"))),
			DoF:   math.Abs(rapid.Float64().Draw(t, "dof")),
		}
		if rapid.Bool().Draw(t, "limits") {
			r.Std = Angle(rapid.IntRange(0, 1000).Draw(t, "n")) / 100 * Degree / Angle(math.Sqrt(3))
		}
		text, err := r.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		back, err := ParseReading[Angle](string(text))
		if err != nil || back != r {
			t.Fatalf("%#v became %q became %#v, %v", r, text, back, err)
		}
	})
}

func TestReadingMarshalRefuses(t *testing.T) {
	for _, c := range []struct {
		r    Reading[Length]
		err  error
		text string
	}{
		{Reading[Length]{Value: Length(math.NaN())}, ErrNotFinite, "length: not a finite number"},
		{Reading[Length]{Std: Length(math.Inf(1))}, ErrNotFinite, "length: not a finite number"},
		{Reading[Length]{Std: 1, DoF: math.NaN()}, ErrNotFinite, "degrees of freedom NaN: not a finite number"},
		{Reading[Length]{Std: -1}, ErrDomain, "standard uncertainty -1, degrees of freedom 0: want 0 or more: outside the domain"},
	} {
		if _, err := c.r.MarshalText(); !errors.Is(err, c.err) || err.Error() != c.text {
			t.Errorf("%#v: %v", c.r, err)
		}
	}
}

func TestReadingConstructors(t *testing.T) {
	if r := Exact(35 * Millimetre); r.Std != 0 || r.Value != 35*Millimetre || r.String() != "35 mm" {
		t.Errorf("exact: %#v", r)
	}
	if r := WithStd(35*Millimetre, 0.1*Millimetre); r.Std != 0.1*Millimetre || r.DoF != 0 {
		t.Errorf("with std: %#v", r)
	}
	if PlusMinus(35*Millimetre, -0.3*Millimetre) != PlusMinus(35*Millimetre, 0.3*Millimetre) {
		t.Error("plus-minus depends on the sign of the limits")
	}
	if r, err := Expanded(35*Millimetre, 0.6*Millimetre, 2); err != nil || r.Std != 0.6*Millimetre/2 {
		t.Errorf("expanded: %#v, %v", r, err)
	}
	for _, k := range []float64{0, -2, math.NaN(), math.Inf(1)} {
		if _, err := Expanded(35*Millimetre, 0.6*Millimetre, k); !errors.Is(err, ErrDomain) || !strings.Contains(err.Error(), "want more than 0") {
			t.Errorf("k = %g: %v", k, err)
		}
	}
	if _, err := Repeats(35 * Millimetre); !errors.Is(err, ErrDomain) || err.Error() != "1 readings: want at least 2 to see how they scatter: outside the domain" {
		t.Errorf("one reading: %v", err)
	}
	if _, err := Repeats(1, Length(math.NaN())); !errors.Is(err, ErrNotFinite) || err.Error() != "reading 2: not a finite number" {
		t.Errorf("NaN among the readings: %v", err)
	}
	if r := WithStd(35*Millimetre, 3*Millimetre).With(4 * Millimetre); math.Abs(r.Std.Millimetres()-5) > 1e-12 || r.DoF != 0 {
		t.Errorf("3 mm with 4 mm: %v", r)
	}
	r := Reading[Length]{35 * Millimetre, 3 * Millimetre, 9}.With(4 * Millimetre)
	figures.Near(t, "degrees of freedom of 3 with 4", r.DoF, EffectiveDoF(Reading[Length]{0, 3, 9}, Reading[Length]{0, 4, 0}), 1e-12)
}
