// Package root finds where a function of one number is zero between two places
// at which its signs differ.
package root

import (
	"errors"
	"fmt"
	"math"
)

var (
	// ErrBracket: the function has the same sign at both ends, or an end is not
	// a finite number.
	ErrBracket = errors.New("no change of sign between the ends")
	// ErrNaN: the function gave NaN on the way.
	ErrNaN = errors.New("the function is not a number there")
)

// Find returns a place between a and b, in either order, at which f changes sign,
// to within tol, or within 2⁻⁵² of the larger end where tol is finer than that.
// The function needs a different sign at a and b and need not be smooth; where it
// jumps across zero Find returns the place of the jump.
//
// The method is ITP (interpolate, truncate, project): the false position, pulled
// a little towards the middle and kept so close to the middle that it never takes
// more than two steps more than bisection would, and with a smooth function
// takes far fewer.
//
// Source: I. F. D. Oliveira and R. H. C. Takahashi, An Enhancement of the
// Bisection Method Average Performance Preserving Minmax Optimality, ACM
// Transactions on Mathematical Software 47(1), 2020, article 5 (from memory).
func Find(f func(float64) float64, a, b, tol float64) (float64, error) {
	if a > b {
		a, b = b, a
	}
	fa, fb := f(a), f(b)
	switch {
	case math.IsNaN(fa) || math.IsNaN(fb):
		return 0, fmt.Errorf("from %g to %g: %w", a, b, ErrNaN)
	case fa == 0:
		return a, nil
	case fb == 0:
		return b, nil
	case fa > 0 == (fb > 0) || !(b-a < math.Inf(1)):
		return 0, fmt.Errorf("from %g to %g: %w", a, b, ErrBracket)
	}
	half := math.Max(math.Abs(a), math.Abs(b)) * 0x1p-52
	if tol/2 > half {
		half = tol / 2
	}
	return itp(f, a, b, fa, fb, half)
}

// itp narrows the bracket until half of it is at most half.
func itp(f func(float64) float64, a, b, fa, fb, half float64) (float64, error) {
	pull := 0.2 / (b - a)                                            // κ₁, with κ₂ = 2
	room := half * math.Exp2(math.Ceil(math.Log2((b-a)/(2*half)))+1) // ε 2^(n − j), n one more than bisection needs
	for ; b-a > 2*half; room /= 2 {
		x := project(a, b, fa, fb, pull*(b-a)*(b-a), room-(b-a)/2)
		switch y := f(x); {
		case math.IsNaN(y):
			return 0, fmt.Errorf("at %g: %w", x, ErrNaN)
		case y == 0:
			return x, nil
		case y > 0 == (fb > 0):
			b, fb = x, y
		default:
			a, fa = x, y
		}
	}
	return a + (b-a)/2, nil
}

// project returns the next place to look: the false position, moved by delta
// towards the middle, and no further from the middle than r.
func project(a, b, fa, fb, delta, r float64) float64 {
	middle := a + (b-a)/2
	x := a + (b-a)*(fa/(fa-fb)) // false position
	away := x - middle
	if !(math.Abs(away) > delta) {
		return middle
	}
	reach := math.Min(math.Abs(away)-delta, math.Max(r, 0))
	return middle + math.Copysign(reach, away)
}
