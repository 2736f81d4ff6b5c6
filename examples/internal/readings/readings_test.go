package readings

import (
	"math"
	"testing"

	"example.com/benchsums/units"
)

const mm = units.Millimetre

// near reports whether two lengths agree to a picometre.
func near(a, b units.Length) bool { return math.Abs(float64(a-b)) <= 1e-12 }

func TestMean(t *testing.T) {
	for _, tc := range []struct {
		name   string
		of     []units.Length
		goodTo units.Length
		want   units.Reading[units.Length]
	}{
		{"none", nil, 1 * mm, units.Reading[units.Length]{}},
		{"one has only the tool", []units.Length{5 * mm}, 0.1 * mm, units.WithStd(5*mm, 0.1*mm)},
		{"they agree better than the tool", []units.Length{5 * mm, 5.01 * mm}, 0.1 * mm, units.WithStd(5.005*mm, 0.1*mm)},
		// s = √(0.08/3) = 0.1633, s/√4 = 0.0816 (JCGM 100:2008, 4.2.3)
		{"they scatter more than the tool", []units.Length{5 * mm, 5.2 * mm, 5.4 * mm, 5.2 * mm}, 0.01 * mm, units.Reading[units.Length]{Value: 5.2 * mm, Std: units.Length(math.Sqrt(0.08/3)/2) * mm, DoF: 3}},
		{"not finite", []units.Length{5 * mm, units.Length(math.Inf(1))}, 0.1 * mm, units.WithStd(5*mm, 0.1*mm)},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got := Mean(tc.of, tc.goodTo)
			if !near(got.Value, tc.want.Value) || !near(got.Std, tc.want.Std) || got.DoF != tc.want.DoF {
				t.Errorf("got %v u %v dof %g, want %v u %v dof %g", got.Value, got.Std, got.DoF, tc.want.Value, tc.want.Std, tc.want.DoF)
			}
		})
	}
}

func TestDifferenceAndScale(t *testing.T) {
	a, b := units.WithStd(10*mm, 0.3*mm), units.WithStd(4*mm, 0.4*mm)
	if d := Difference(a, b); !near(d.Value, 6*mm) || !near(d.Std, 0.5*mm) || d.DoF != 0 {
		t.Errorf("difference %v u %v dof %g, want 6 mm u 0.5 mm", d.Value, d.Std, d.DoF)
	}
	a.DoF = 4
	if d := Difference(a, b); !(d.DoF > 4) {
		t.Errorf("%g degrees of freedom, want more than the 4 of one part", d.DoF)
	}
	if s := Scale(b, -0.5); !near(s.Value, -2*mm) || !near(s.Std, 0.2*mm) {
		t.Errorf("scaled to %v u %v, want -2 mm u 0.2 mm", s.Value, s.Std)
	}
}

func TestLargest(t *testing.T) {
	for _, tc := range []struct {
		stdA, stdB units.Length
		want       string
	}{
		{0, 0, ""},
		{0.1 * mm, 0.01 * mm, "the first (nearly all of the uncertainty comes from it)"},
		{0.1 * mm, 0.05 * mm, "the first (most of the uncertainty comes from it)"},
		{0.1 * mm, 0.11 * mm, "the second (about half of the uncertainty comes from it)"},
	} {
		a, b := 1*mm, 2*mm
		r, err := units.Propagate(func() units.Length { return a + b }, units.Vary("first", &a, tc.stdA), units.Vary("second", &b, tc.stdB))
		if err != nil {
			t.Fatal(err)
		}
		if got := Largest(r); got != tc.want {
			t.Errorf("%q, want %q", got, tc.want)
		}
	}
	if got := Part(0.3); got != "the largest part" {
		t.Error(got)
	}
}
