package fits

import (
	"encoding"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

var (
	_ encoding.TextMarshaler   = Class{}
	_ encoding.TextUnmarshaler = (*Class)(nil)
	_ fmt.Stringer             = Mating{}
)

func TestParseClass(t *testing.T) {
	for text, want := range map[string]Class{
		// plain
		"H7": {lh, it7, true}, "g6": {lg, it6, false}, "JS13": {ljs, 14, true}, "js13": {ljs, 14, false}, "ZC8": {lzc, it8, true},
		"cd9": {lcd, 10, false}, "EF8": {lef, it8, true}, "fg6": {lfg, it6, false}, "za11": {lza, it11, false}, "ZB18": {lzb, 19, true},
		// the finest grades
		"h01": {lh, 0, false}, "h0": {lh, 1, false}, "h1": {lh, 2, false}, "H10": {lh, 11, true},
		// spacing
		" H7 ": {lh, it7, true}, "H 7": {lh, it7, true}, "\tg6": {lg, it6, false},
	} {
		if c, err := ParseClass(text); err != nil || c != want {
			t.Errorf("%q: %v, %v, want %v", text, c, err, want)
		}
	}
	for _, tc := range []struct {
		text string
		kind error
		says string
	}{
		{"", units.ErrSyntax, "want a letter first"}, {"7", units.ErrSyntax, "want a letter first"}, {"7H", units.ErrSyntax, "want a letter first"},
		{"H", units.ErrSyntax, "want the number"}, {"js", units.ErrSyntax, "want the number"},
		{"H19", units.ErrDomain, "no such grade"}, {"H007", units.ErrDomain, "no such grade"}, {"H02", units.ErrDomain, "no such grade"}, {"H99", units.ErrDomain, "no such grade"},
		{"i6", units.ErrDomain, "no such letter"}, {"L7", units.ErrDomain, "no such letter"}, {"O7", units.ErrDomain, "no such letter"},
		{"q7", units.ErrDomain, "no such letter"}, {"w7", units.ErrDomain, "no such letter"}, {"zd7", units.ErrDomain, "no such letter"},
		{"abc7", units.ErrDomain, "no such letter"}, {"hh7", units.ErrDomain, "no such letter"},
		{"Js7", units.ErrDomain, "both letters alike"}, {"zA7", units.ErrDomain, "both letters alike"},
		{"H7g6", units.ErrTrailing, "nothing behind it"}, {"H7.5", units.ErrTrailing, "nothing behind it"}, {"H7/g6", units.ErrTrailing, "nothing behind it"},
		{"Ĥ7", units.ErrSyntax, "want a letter first"},
	} {
		_, err := ParseClass(tc.text)
		var pe *units.ParseError
		if !errors.As(err, &pe) || !errors.Is(err, tc.kind) || !strings.Contains(err.Error(), tc.says) || pe.Text != tc.text {
			t.Errorf("%q: %v, want %v and %q", tc.text, err, tc.kind, tc.says)
		}
	}
}

func TestClassText(t *testing.T) {
	for _, c := range allClasses() {
		text, err := c.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		var back Class
		if err := back.UnmarshalText(text); err != nil || back != c {
			t.Errorf("%s: %v, %v", text, back, err)
		}
		if c.IsHole() != (c.Letters() == strings.ToUpper(c.Letters())) || "IT"+strings.TrimPrefix(c.String(), c.Letters()) != c.GradeName() {
			t.Errorf("%v: %s %s hole %v", c, c.Letters(), c.GradeName(), c.IsHole())
		}
	}
	if _, err := (Class{}).MarshalText(); !errors.Is(err, units.ErrDomain) {
		t.Errorf("zero class: %v", err)
	}
	var c Class
	if err := c.UnmarshalText([]byte("x")); err == nil || c != (Class{}) || c.String() != "no class" {
		t.Errorf("%v, %v", c, err)
	}
}

func TestGradeText(t *testing.T) {
	for text, um := range map[string]float64{"IT7": 21, "it7": 21, " IT 7 ": 21, "IT01": 0.6, "IT0": 1, "IT18": 3300} {
		got, err := Grade(25*units.Millimetre, text)
		if err != nil {
			t.Errorf("%q: %v", text, err)
		}
		figures.Near(t, text, got.Micrometres(), um, 1e-9)
	}
	for text, says := range map[string]string{
		"": "want IT and a number", "7": "want IT and a number", "I7": "want IT and a number", "IT": "want the number",
		"IT19": "no such grade", "IT00": "no such grade", "IT7x": "nothing behind it",
	} {
		if _, err := Grade(25*units.Millimetre, text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%q: %v, want %q", text, err, says)
		}
	}
}

func TestParseFit(t *testing.T) {
	for _, text := range []string{"H7/g6", "H7-g6", "H7 – g6", " H7 / g6 ", "H7 g6", "H7⁄g6", "H7g6"} {
		hole, shaft, err := ParseFit(text)
		if err != nil || hole.String() != "H7" || shaft.String() != "g6" {
			t.Errorf("%q: %v %v %v", text, hole, shaft, err)
		}
	}
	for text, says := range map[string]string{
		"": "want a letter first", "H7": "want a letter first", "H7/": "want a letter first", "H7/g": "want the number", "H7/g6/h6": "nothing behind them",
		"g6/H7": "comes first: H7/g6", "H7/G6": "want a hole", "h7/g6": "want a hole", "H7//g6": "want a letter first", "H7/g66": "no such grade",
	} {
		if _, _, err := ParseFit(text); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%q: %v, want %q", text, err, says)
		}
	}
}

func TestParseCallout(t *testing.T) {
	for text, want := range map[string]string{
		// millimetres without a unit, as drawings have it
		"25H7": "25 mm H7", "25 H7": "25 mm H7", "25H7/g6": "25 mm H7/g6", "25 H7/g6": "25 mm H7/g6", "25 H7-g6": "25 mm H7/g6", "2.5h9": "2.5 mm h9",
		"25 H7 g6": "25 mm H7/g6", "25 H7 / g6": "25 mm H7/g6", "0.5 H 7": "0.5 mm H7",
		// a letter that looks like an exponent
		"25e8": "25 mm e8", "25 E9": "25 mm E9", "25E9/h9": "25 mm E9/h9",
		// the sign of diameter
		"Ø25 H7": "25 mm H7", "ø25g6": "25 mm g6", "⌀ 25 H7/g6": "25 mm H7/g6", "∅25H7": "25 mm H7", "dia 25 H7": "25 mm H7", "dia. 25 H7": "25 mm H7",
		// each unit
		"25 mm H7": "25 mm H7", "1 in H7": "25.4 mm H7", "1 in H7/h6": "25.4 mm H7/h6", "2 1/2 in g6": "63.5 mm g6", "1\" H7": "25.4 mm H7", "1000 thou h6": "25.4 mm h6", "2.5 cm H8": "25 mm H8",
		"25 mm m6": "25 mm m6", "25m6": "25 mm m6",
	} {
		c, err := ParseCallout(text)
		if err != nil || c.String() != want {
			t.Errorf("%q: %v, %v, want %s", text, c, err, want)
		}
	}
	for _, tc := range []struct {
		text string
		kind error
		pos  int
		says string
	}{
		{"", units.ErrSyntax, 0, "no class at the end: want 25 H7 or 25 H7/g6"},
		{"25", units.ErrSyntax, 2, "no class at the end: want 25 H7 or 25 H7/g6"},
		{" 25 mm ", units.ErrSyntax, 6, "no class at the end: want 25 H7 or 25 H7/g6"},
		{"25 mm 3", units.ErrSyntax, 7, "no class at the end: want 25 H7 or 25 H7/g6"},
		{"H7", units.ErrSyntax, 0, "no nominal size: want 25 H7; ParseClass reads a class alone"},
		{" Ø g6", units.ErrSyntax, 4, "no nominal size: want 25 g6; ParseClass reads a class alone"},
		{"H7/g6", units.ErrSyntax, 0, "no nominal size: want 25 H7/g6; ParseFit reads a fit alone"},
		{"12,5 H7", units.ErrSyntax, 2, "a comma: write 12.5, with a point"},
		{"Ø 12,5 H7", units.ErrSyntax, 5, "a comma: write 12.5, with a point"},
		{"1 3/16 H7", units.ErrNoUnit, 0, "a fraction without a unit: write 1 3/16 in, or mm"},
		{"25 g6/H7", units.ErrSyntax, 3, "the hole, in capitals, comes first: H7/g6"},
		{"25 H19", units.ErrDomain, 4, "there is no such grade: want 01, 0 or 1 to 18"},
		{"25 H7/g66", units.ErrDomain, 7, "there is no such grade: want 01, 0 or 1 to 18"},
		{"25 i6", units.ErrDomain, 3, "the standard has no such letter: a to zc without i, l, o, q and w"},
		{"\tdia. 25 Js7", units.ErrDomain, 9, "write both letters alike, capitals for a hole and small for a shaft: JS7, js7"},
		{"25 furlong H7", units.ErrUnknownUnit, 3, `"furlong" is no unit of length known here: write mm, in, thou`},
		{"x H7", units.ErrSyntax, 0, "want a number first, then the unit (mm, in, thou)"},
		{"25 mm 3 mm H7", units.ErrTrailing, 6, `left over after mm: "3 mm"; write the length alone`},
	} {
		_, err := ParseCallout(tc.text)
		var pe *units.ParseError
		if !errors.As(err, &pe) || !errors.Is(err, tc.kind) || pe.Msg != tc.says || pe.Pos != tc.pos || pe.Text != tc.text || pe.Kind != "size and class" {
			t.Errorf("%q: %v at byte %d, want %v, %q at byte %d", tc.text, err, pe.Pos, tc.kind, tc.says, tc.pos)
		}
	}
}

func TestCalloutAnswers(t *testing.T) {
	fit, err := ParseCallout("25 H7/g6")
	if err != nil || !fit.IsFit() {
		t.Fatal(fit, err)
	}
	m, err := fit.Fit()
	if err != nil || !(math.Abs(m.Clearance().Max.Micrometres()-41) < 1e-9) {
		t.Errorf("%v, %v", m, err)
	}
	if _, err := fit.Limits(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "two parts") {
		t.Error(err)
	}
	for _, text := range []string{"25 H7", "25 g6"} {
		one, err := ParseCallout(text)
		if err != nil || one.IsFit() {
			t.Fatal(one, err)
		}
		z, err := one.Limits()
		if err != nil || !strings.HasSuffix(text, z.Class.String()) {
			t.Errorf("%v, %v", z, err)
		}
		if _, err := one.Fit(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "one part") {
			t.Error(err)
		}
	}
}

func TestCalloutText(t *testing.T) {
	for _, text := range []string{"25 mm H7/g6", "1.5 in h6", "0.1 mm H7"} {
		var c Callout
		if err := c.UnmarshalText([]byte(text)); err != nil {
			t.Fatal(err)
		}
		if out, err := c.MarshalText(); err != nil || parsed(string(out)) != c {
			t.Errorf("%s: %s, %v", text, out, err)
		}
	}
	var c Callout
	if err := c.UnmarshalText([]byte("25")); err == nil || c != (Callout{}) {
		t.Errorf("%v, %v", c, err)
	}
	if _, err := (Callout{Nominal: mm(25)}).MarshalText(); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
	if _, err := (Callout{Nominal: units.Length(math.NaN()), Hole: Class{lh, it7, true}}).MarshalText(); !errors.Is(err, units.ErrNotFinite) {
		t.Error(err)
	}
}

// parsed reads a callout that is known to be good.
func parsed(s string) Callout {
	c, _ := ParseCallout(s)
	return c
}

func FuzzParseClass(f *testing.F) {
	for _, s := range []string{"H7", "js13", "ZC8", "h01", "Js7", "H19", "", "é7", "H 7 "} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		c, err := ParseClass(s)
		if err != nil {
			if err.Error() == "" || c != (Class{}) {
				t.Errorf("%q: %v with %v", s, err, c)
			}
			return
		}
		if back, err := ParseClass(c.String()); err != nil || back != c {
			t.Errorf("%q: %v comes back as %v, %v", s, c, back, err)
		}
	})
}

func FuzzParseCallout(f *testing.F) {
	for _, s := range []string{"25 H7/g6", "25H7", "Ø25 H7-g6", "1 3/16 in H7", "25e8", "H7/g6", "25 g6/H7", "1/2\" h6", "⌀", "0\xf90A0"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		_, _, _ = ParseFit(s)
		c, err := ParseCallout(s)
		if err != nil {
			if err.Error() == "" || c != (Callout{}) {
				t.Errorf("%q: %v with %v", s, err, c)
			}
			return
		}
		if (c.Hole == Class{}) && (c.Shaft == Class{}) {
			t.Errorf("%q: no class and no error", s)
		}
		_, _ = c.Fit()
		_, _ = c.Limits()
		text, err := c.MarshalText()
		if err != nil {
			t.Fatalf("%q: %v", s, err)
		}
		if back, err := ParseCallout(string(text)); err != nil || back != c {
			t.Errorf("%q: %+v goes out as %s and comes back as %+v, %v", s, c, text, back, err)
		}
	})
}
