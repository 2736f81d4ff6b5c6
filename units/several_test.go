package units

import (
	"errors"
	"testing"
)

// Two numbers that make a range are refused as one, with the reading that says
// the same.
func TestParseRefusesRanges(t *testing.T) {
	const one = "a range: write one value, or a reading such as "
	for _, c := range []struct {
		kind    *kind
		text    string
		pos     int
		reading string
	}{
		// every way to join the ends
		{&lengthKind, "3 to 4 mm", 2, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "3-4 mm", 1, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "3–4 mm", 1, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "3 — 4 mm", 2, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "3..4 mm", 1, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "3...4 mm", 1, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "3…4 mm", 1, "3.5 mm ± 0.5 mm"},
		// units: behind both, of two sizes, none
		{&lengthKind, "3 mm to 4 mm", 5, "3.5 mm ± 0.5 mm"},
		{&lengthKind, "1 in - 30 mm", 5, "27.7 mm ± 2.3 mm"},
		{&lengthKind, "3-4", 1, "3.5 mm ± 0.5 mm"},
		{&forceKind, "10-12 N", 2, "11 N ± 1 N"},
		{&pressureKind, "140 to 150 psi", 4, "145 psi ± 5 psi"},
		{&ratioKind, "9 to 10", 2, "9.5 ± 0.5"},
		{&ratioKind, "10-12 %", 2, "11 % ± 1 %"},
		// numbers: fractions, signs, ladders, a zero of its own
		{&lengthKind, "1/2-3/4 in", 3, "0.625 in ± 0.125 in"},
		{&lengthKind, "1-7/8 - 2 in", 6, "1.9375 in ± 0.0625 in"},
		{&lengthKind, "-3--1 mm", 2, "-2 mm ± 1 mm"},
		{&angleKind, "25° to 30°", 5, "27.5° ± 2.5°"},
		{&angleKind, "28° 30′ to 29°", 11, "28.75° ± 0.25°"},
		{&temperatureKind, "20-25 °C", 2, "22.5 °C ± 2.5 °C"},
	} {
		_, err := c.kind.parse(c.text)
		var e *ParseError
		if !errors.As(err, &e) || !errors.Is(err, ErrSyntax) || e.Pos != c.pos || e.Msg != one+c.reading || e.Text != c.text {
			t.Errorf("%q: %v, want %s%s at %d", c.text, err, one, c.reading, c.pos)
		}
	}
	if _, err := ParseReading[Length]("3 to 4 mm"); err == nil || err.Error() != `"3 to 4 mm": `+one+"3.5 mm ± 0.5 mm (character 3)" {
		t.Errorf("a range in place of a reading: %v", err)
	}
}

// What the message on a range tells people to write is read, and covers the
// range.
func TestRangeAsReading(t *testing.T) {
	for _, c := range []struct {
		low, high, reading string
	}{{"3 mm", "4 mm", "3.5 mm ± 0.5 mm"}, {"1/2 in", "3/4 in", "0.625 in ± 0.125 in"}, {"1 in", "30 mm", "27.7 mm ± 2.3 mm"}} {
		low, high := mustParse(t, c.low), mustParse(t, c.high)
		r, err := ParseReading[Length](c.reading)
		if err != nil {
			t.Error(err)
			continue
		}
		if want := PlusMinus((low+high)/2, (high-low)/2); !within(r.Value, want.Value) || !within(r.Std, want.Std) {
			t.Errorf("%s to %s: %v, want %v", c.low, c.high, r, want)
		}
	}
}

func mustParse(t *testing.T, text string) Length {
	t.Helper()
	l, err := ParseLength(text)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func within(got, want Length) bool {
	d := got - want
	return d < 1e-12 && d > -1e-12
}

// A reading is refused where one value is wanted, in every form it has.
func TestParseRefusesReadings(t *testing.T) {
	for _, c := range []struct {
		text string
		pos  int
	}{
		{"3±1 mm", 1}, {"3 mm ± 1 mm", 5}, {"(3 ± 1) mm", 3}, {"3 +/- 1 mm", 2}, {"3+-1 mm", 1}, {"3 ± 1", 2},
		{"84.5 mm ± 0.6 mm (k=2)", 8}, {"84.5 mm (u 0.3 mm)", 8}, {"84.53(12) mm", 5},
	} {
		_, err := ParseLength(c.text)
		var e *ParseError
		if !errors.As(err, &e) || !errors.Is(err, ErrSyntax) || e.Pos != c.pos || e.Msg != "a value and its limits: want the value alone here, or give it as a Reading" {
			t.Errorf("%q: %v at %d", c.text, err, c.pos)
		}
	}
}

// Neither is seen where there is none.
func TestParseOtherRefusals(t *testing.T) {
	for _, text := range []string{"12-10 mm", "10-32 foo", "3 to 4 foo", "2-3-4 mm", "3-1e400 mm", "to 4 mm", "3 to", "12 mm (about)", "5 ft -6 in"} {
		_, err := ParseLength(text)
		var e *ParseError
		if !errors.As(err, &e) || e.Msg[:5] == "a ran" || e.Msg[:5] == "a val" {
			t.Errorf("%q: %v", text, err)
		}
	}
}
