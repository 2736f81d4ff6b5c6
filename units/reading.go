package units

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat"
)

// A Reading is a quantity together with how well it is known. Std is the
// standard uncertainty of JCGM 100:2008, one standard deviation, and never a
// limit; DoF is its degrees of freedom, with 0 for a figure that does not rest
// on a number of repeats (an infinite number, in the words of the Guide).
//
// A Reading is text as well:
//
//	84.5 mm ± 0.5 mm              limits the value surely lies between: u = 0.5 mm/√3
//	84.5 ± 0.5 mm                 the same; so are +/- and (84.5 ± 0.5) mm
//	84.5 mm ± 1 %                 limits as a part of the value
//	84.5 mm ± 0.6 mm (k=2)        an expanded uncertainty: u = 0.3 mm
//	84.5 mm (u 0.3 mm)            a standard uncertainty
//	84.5 mm (u 0.3 mm, dof 4)     with degrees of freedom
//	84.53(12) mm                  u = 0.12 mm, JCGM 100:2008, 7.2.2
//	84.5 mm                       exact
//
// A bare number is refused, also by decoders that would put one straight into
// a Length.
//
// The Std of a Reading[Temperature] is a difference, in kelvins.
type Reading[Q Quantity] struct {
	Value Q
	Std   Q
	DoF   float64
}

// Exact returns v as a reading without uncertainty.
func Exact[Q Quantity](v Q) Reading[Q] { return Reading[Q]{Value: v} }

// WithStd returns v with standard uncertainty std.
func WithStd[Q Quantity](v, std Q) Reading[Q] { return Reading[Q]{Value: v, Std: std} }

// PlusMinus returns v known to lie surely within half of it, on either side,
// with nothing more known: a rectangular distribution, u = half/√3.
//
// Source: JCGM 100:2008, 4.3.7.
func PlusMinus[Q Quantity](v, half Q) Reading[Q] {
	return Reading[Q]{Value: v, Std: Q(math.Abs(float64(half)) / math.Sqrt(3))}
}

// Resolved returns v read to the nearest step of a scale: u = step/√12.
//
// Source: JCGM 100:2008, F.2.2.1.
func Resolved[Q Quantity](v, step Q) Reading[Q] {
	return Reading[Q]{Value: v, Std: Q(math.Abs(float64(step)) / math.Sqrt(12))}
}

// Expanded returns v with the expanded uncertainty U that a certificate states
// with its coverage factor k: u = U/k. The error is ErrDomain for a k that is
// not more than 0.
//
// Source: JCGM 100:2008, 4.3.3.
func Expanded[Q Quantity](v, expanded Q, k float64) (Reading[Q], error) {
	if !(k > 0) || math.IsInf(k, 0) {
		return Reading[Q]{}, fmt.Errorf("coverage factor %g: want more than 0: %w", k, ErrDomain)
	}
	return Reading[Q]{Value: v, Std: Q(math.Abs(float64(expanded)) / k)}, nil
}

// Repeats returns the mean of readings taken again and again of the same
// thing, with the standard deviation of the mean s/√n and n − 1 degrees of
// freedom. The error is ErrDomain for fewer than two readings or one that is
// not finite.
//
// Repeats do not show what all of them share, such as a feeler gauge that is
// thicker than it says, nor what is smaller than the step of the scale.
//
// Source: JCGM 100:2008, 4.2.1 to 4.2.3.
func Repeats[Q Quantity](values ...Q) (Reading[Q], error) {
	if len(values) < 2 {
		return Reading[Q]{}, fmt.Errorf("%d readings: want at least 2 to see how they scatter: %w", len(values), ErrDomain)
	}
	xs := make([]float64, len(values))
	for i, v := range values {
		xs[i] = float64(v)
		if math.IsNaN(xs[i]) || math.IsInf(xs[i], 0) {
			return Reading[Q]{}, fmt.Errorf("reading %d: %w", i+1, ErrNotFinite)
		}
	}
	mean, s := stat.MeanStdDev(xs, nil)
	n := float64(len(xs))
	return Reading[Q]{Value: Q(mean), Std: Q(s / math.Sqrt(n)), DoF: n - 1}, nil
}

// With returns r with a further, independent source of uncertainty: the
// standard uncertainties add as squares, the degrees of freedom by
// Welch-Satterthwaite.
//
// Source: JCGM 100:2008, 5.1.2 and G.4.1.
func (r Reading[Q]) With(std Q) Reading[Q] {
	u := math.Hypot(float64(r.Std), float64(std))
	if r.DoF > 0 && r.Std != 0 {
		r.DoF *= math.Pow(u/float64(r.Std), 4)
	} else {
		r.DoF = 0
	}
	r.Std = Q(u)
	return r
}

// String writes the value rounded to its uncertainty, and the uncertainty:
// "84.50 mm (u 0.29 mm)".
func (r Reading[Q]) String() string {
	k := kindOf[Q]()
	if r.Std == 0 {
		return k.string(float64(r.Value))
	}
	value, std := k.rounded(float64(r.Value), float64(r.Std), false)
	return value + " (u " + std + ")"
}
