package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// An IndicatorPoint is a point on the compression line of an indicator diagram:
// the pressure after a fraction of the compression stroke, counted from the
// bottom.
type IndicatorPoint struct {
	Fraction units.Ratio
	Pressure units.Pressure // absolute
}

// RatioFromPressures returns the geometric compression ratio of an engine from
// two points on the compression line of its indicator diagram and the index m of
// compression, taking p Vᵐ as constant between them:
//
//	k = (p₂/p₁)^(1/m),  ratio = (k b − a)/((1 − a) − k(1 − b))
//
// with a and b the fractions of the stroke, a first. Pressures are absolute; only
// their ratio counts. It is an estimate: what leaks past old rings lowers the
// second pressure, and the ratio with it.
//
// The error is units.ErrDomain for fractions that are not 0 ≤ a < b ≤ 1, for
// pressures that do not rise, an index not more than 0, or points that no ratio
// fits.
//
// Source: H. N. Gupta, Fundamentals of Internal Combustion Engines, Example 2.2.
func RatioFromPressures(first, second IndicatorPoint, index float64) (units.Ratio, error) {
	a, b := float64(first.Fraction), float64(second.Fraction)
	switch {
	case !(a >= 0 && a < b && b <= 1):
		return 0, fmt.Errorf("fractions of the stroke %g and %g: want 0 to 1, the first less: %w", a, b, units.ErrDomain)
	case !(first.Pressure > 0 && second.Pressure > first.Pressure) || math.IsInf(float64(second.Pressure), 0):
		return 0, fmt.Errorf("pressures %v and %v: want more than 0, the second more: %w", first.Pressure, second.Pressure, units.ErrDomain)
	case !(index > 0) || math.IsInf(index, 0):
		return 0, fmt.Errorf("index of compression %g: want more than 0, 1.3 or so: %w", index, units.ErrDomain)
	}
	k := math.Pow(float64(second.Pressure/first.Pressure), 1/index)
	ratio := (k*b - a) / ((1 - a) - k*(1-b))
	if !(ratio > 1) || math.IsInf(ratio, 0) {
		return 0, fmt.Errorf("pressures %v and %v at %g and %g of the stroke: no compression ratio gives them: %w", first.Pressure, second.Pressure, a, b, units.ErrDomain)
	}
	return units.Ratio(ratio), nil
}
