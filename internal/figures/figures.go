// Package figures checks computed numbers against published ones and keeps a
// record of what was checked. Only tests import it.
//
// A figure is entered as its source prints it, every digit, with the source
// beside it. The tolerance follows from the digits, so that nobody can loosen
// it: half a unit of the last digit printed, or 1e-12 of the value for a
// reference computed to 50 digits.
//
// Each package that has figures runs its tests through Main, which holds what
// was checked against testdata/checks.csv; CHECKS.md at the root of the module
// is made of those files. Run the tests with -update after adding figures.
package figures

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

// A Figure is a number as a source prints it.
type Figure struct {
	Printed string // every digit as printed, trailing noughts too: "3.730", "16.52e-6"
	Source  string // title, edition or year, table or page; with "from memory" where it is
	// Place is the last place that counts where the digits do not show it: 10
	// for 7740 rounded to tens. 0 means the last digit printed.
	Place float64
}

// Check fails t unless got agrees with f to half a unit of its last printed
// digit.
func (f Figure) Check(t testing.TB, got float64) {
	t.Helper()
	want, half := f.parse(t)
	diff := math.Abs(got - want)
	if !(diff <= half*(1+1e-9)) {
		t.Errorf("got %.10g, want %s within %.3g (%s)", got, f.Printed, half, f.Source)
		return
	}
	record(f.Source, diff/half, "")
}

// Misprint records a figure that does not agree, with the reason, and fails t
// when it does agree after all.
func (f Figure) Misprint(t testing.TB, got float64, reason string) {
	t.Helper()
	want, half := f.parse(t)
	if math.Abs(got-want) <= half*(1+1e-9) {
		t.Errorf("got %.10g, which agrees with %s (%s): it stands as a misprint because %s", got, f.Printed, f.Source, reason)
		return
	}
	record(f.Source, 0, f.Printed+" printed, "+strconv.FormatFloat(got, 'g', len(strings.TrimLeft(strings.ReplaceAll(f.Printed, ".", ""), "-0"))+1, 64)+" computed: "+reason)
}

func (f Figure) parse(t testing.TB) (want, half float64) {
	t.Helper()
	want, err := strconv.ParseFloat(f.Printed, 64)
	if err != nil || f.Source == "" {
		t.Fatalf("figure %q (%s): want a printed number and its source", f.Printed, f.Source)
	}
	if f.Place != 0 {
		return want, f.Place / 2
	}
	mantissa, exp, _ := strings.Cut(strings.ToLower(f.Printed), "e")
	e, _ := strconv.Atoi(exp)
	_, frac, _ := strings.Cut(mantissa, ".")
	return want, 0.5 * math.Pow10(e-len(frac))
}

// A Reference is a number computed to 50 digits or more.
type Reference struct {
	Digits string
	Source string
}

// Check fails t unless got agrees with r to 1e-12 of its value; a reference of
// 0 must be met exactly.
func (r Reference) Check(t testing.TB, got float64) {
	t.Helper()
	want, err := strconv.ParseFloat(r.Digits, 64)
	if err != nil || r.Source == "" {
		t.Fatalf("reference %q (%s): want a number and its source", r.Digits, r.Source)
	}
	tol := 1e-12 * math.Abs(want)
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("got %.17g, want %s within 1e-12 of it (%s)", got, r.Digits, r.Source)
		return
	}
	record(r.Source+referenceMark, 0, "")
}

// Near fails t unless got is within tol of want. It fails on NaN, which the
// usual helpers let through.
func Near(t testing.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.12g, want %.12g within %.3g", what, got, want, tol)
	}
}
