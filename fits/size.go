package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// Tolerance returns Upper − Lower.
func (z Size) Tolerance() units.Length { return z.Upper - z.Lower }

// Middle returns the size to aim at, half way between the limits.
func (z Size) Middle() units.Length { return z.Nominal + (z.Lower+z.Upper)/2 }

// Go returns the limit of most material, which the GO gauge is made to: the
// smallest hole, the largest shaft. The gauge must pass.
func (z Size) Go() units.Length {
	if z.Class.hole {
		return z.Min
	}
	return z.Max
}

// NoGo returns the limit of least material, which the NO GO gauge is made to: the
// largest hole, the smallest shaft. The gauge must not pass.
func (z Size) NoGo() units.Length {
	if z.Class.hole {
		return z.Max
	}
	return z.Min
}

// Contains reports whether a size lies within the limits, ends included. A
// picometre is let pass for rounding.
func (z Size) Contains(size units.Length) bool {
	return z.Min-picometre <= size && size <= z.Max+picometre
}

// Rounded returns the limits drawn in to whole steps, 0.0001 in or 0.01 mm, so
// that a part that keeps to them keeps to the class too: the smaller limit is
// rounded up and the larger down. The error is units.ErrDomain for a step that is
// not more than 0, or so coarse that no step lies within the limits.
func (z Size) Rounded(step units.Length) (least, most units.Length, err error) {
	if !(step > 0) || math.IsInf(float64(step), 0) {
		return 0, 0, fmt.Errorf("step %v: want more than 0 mm: %w", step, units.ErrDomain)
	}
	const slack = 1e-9 // of a step, for limits that are whole steps but for the last bit
	lo, hi := math.Ceil(float64(z.Min/step)-slack), math.Floor(float64(z.Max/step)+slack)
	if lo > hi {
		return 0, 0, fmt.Errorf("step %v: want one finer than the tolerance of %v, since no whole step lies between %v and %v: %w",
			step, z.Tolerance(), z.Min, z.Max, units.ErrDomain)
	}
	return units.Length(lo) * step, units.Length(hi) * step, nil
}

// String writes the size as on a drawing with the limits in mm and inches: "25 mm
// H7 (+0.021/0): 25.000 mm to 25.021 mm, 0.98425 in to 0.98508 in".
func (z Size) String() string {
	return fmt.Sprintf("%v %v (%s/%s): %s mm to %s mm, %.5f in to %.5f in", z.Nominal, z.Class,
		signedMM(z.Upper), signedMM(z.Lower), fixedMM(z.Min), fixedMM(z.Max), z.Min.Inches(), z.Max.Inches())
}

// signedMM writes a deviation in millimetres as drawings do, with its sign unless
// it is 0, to the micrometre or, where that would lose something, a tenth of one.
func signedMM(l units.Length) string {
	s := fixedMM(l)
	switch {
	case math.Abs(l.Micrometres()) < 0.05:
		return "0"
	case l > 0:
		return "+" + s
	}
	return s
}

func fixedMM(l units.Length) string {
	if um := l.Micrometres(); math.Abs(um-math.Round(um)) > 0.05 {
		return fmt.Sprintf("%.4f", l.Millimetres())
	}
	return fmt.Sprintf("%.3f", l.Millimetres())
}
