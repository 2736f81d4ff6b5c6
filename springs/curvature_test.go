package springs

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// TestCurvatureAgainstWinkler holds the closed forms against the exact theory of
// curved beams: the neutral axis at A/∫dA/r, stress M c/(A e r).
func TestCurvatureAgainstWinkler(t *testing.T) {
	roundWire, _ := RoundWire(1 * units.Millimetre)
	flat, _ := RectangularWire(3*units.Millimetre, 1*units.Millimetre)
	for c := 3.0; c <= 20; c += 0.5 {
		tol := 0.001
		if c < 4 {
			tol = 0.0015
		}
		for _, tc := range []struct {
			section Section
			name    string
			neutral float64 // for thickness 1, mean radius c/2
			area    float64
			nominal float64 // stress of the straight bar for M = 1
		}{
			{roundWire, "round", 0.25 / (2 * (c/2 - math.Sqrt(c*c/4-0.25))), math.Pi / 4, 32 / math.Pi},
			{flat, "rectangular", 1 / math.Log((c/2+0.5)/(c/2-0.5)), 1, 6},
		} {
			e := c/2 - tc.neutral
			inside := (tc.neutral - (c/2 - 0.5)) / (tc.area * e * (c/2 - 0.5)) / tc.nominal
			outside := ((c/2 + 0.5) - tc.neutral) / (tc.area * e * (c/2 + 0.5)) / tc.nominal
			ki, err := tc.section.InsideFactor(c)
			if err != nil {
				t.Fatal(err)
			}
			ko, err := tc.section.OutsideFactor(c)
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, tc.name+" inside", ki, inside, tol)
			figures.Near(t, tc.name+" outside", ko, outside, tol)
		}
		q := StandardInside.factor(roundWire, c)
		ki := roundWire.insideFactor(c)
		if over := 100 * (q/ki - 1); c >= 4 && !(over > 0.35 && over < 1.95) {
			t.Errorf("q at index %g: %.2f %% above K_i, want 0.4 to 1.9", c, over)
		}
	}
	// a coil of great radius is a straight bar
	for _, s := range []Section{roundWire, flat} {
		figures.Near(t, "K_i of a straight bar", s.insideFactor(1e5), 1, 1e-5)
	}
	// EN 13906-1 writes Bergsträsser's factor in another way
	for c := 3.0; c < 25; c++ {
		figures.Near(t, "k of EN 13906-1", Bergstraesser.factor(c), (c+0.5)/(c-0.75), 1e-14)
	}
}
