package repeats

import (
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Hand sums: of 1, 2 and 3 the standard deviation is 1 and that of the mean
// 1/√3.
func TestMean(t *testing.T) {
	three := []units.Length{1 * units.Millimetre, 2 * units.Millimetre, 3 * units.Millimetre}
	for _, tc := range []struct {
		name           string
		readings       []units.Length
		goodTo         units.Length
		mean, std, dof float64
	}{
		{"one reading", three[2:], 0.1 * units.Millimetre, 3, 0.1, 0},
		{"scatter", three, 0.1 * units.Millimetre, 2, 0.577350269, 2},
		{"tool", three, 0.6 * units.Millimetre, 2, 0.6, 0},
		{"none", nil, 0.6 * units.Millimetre, 0, 0, 0},
	} {
		got := Mean(tc.readings, tc.goodTo)
		figures.Near(t, tc.name+": mean, mm", got.Value.Millimetres(), tc.mean, 1e-9)
		figures.Near(t, tc.name+": std, mm", got.Std.Millimetres(), tc.std, 1e-9)
		figures.Near(t, tc.name+": degrees of freedom", got.DoF, tc.dof, 0)
	}
}
