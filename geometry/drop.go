package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// Drop returns how far the piston has come down from its top at crank angle
// theta. With the cylinder straight over the crank
//
//	x = r(1 − cos θ) + l(1 − √(1 − (r sin θ / l)²))
//
// with r the throw and l the rod between centres. With an offset e, and t the
// angle from where the crank points up the cylinder, t = θ + arcsin(e/(l + r)),
//
//	x = √((l + r)² − e²) − r cos t − √(l² − (r sin t − e)²)
//
// Theta is measured from true top dead centre; any sign and any number of turns
// will do. The result runs from 0 to the stroke and is never negative.
//
// The code uses the same relations in half angles, which keeps their figures
// near the top, where the printed forms take two nearly equal numbers from each
// other: the result is good to a few parts in 10¹⁵ of itself however small theta
// is.
//
// Source: Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapter
// from memory); with an offset Norton, Design of Machinery, ch. 4 (chapter from
// memory). The half-angle form was derived here.
func (c Crank) Drop(theta units.Angle) units.Length {
	s, k := halfSincos(theta)
	if c.offset != 0 {
		return c.dropOffset(s, k)
	}
	b := 2 * c.lambda * s * k // sin φ = λ sin θ
	q := c.cosRod(2*s*k, (k-s)*(k+s))
	return min(units.Length(float64(c.throw)*(2*s*s+b*(2*s*k)/(1+q))), c.stroke)
}

// dropOffset is Drop from the sine and cosine of half the angle. Every term of
// the printed form is a difference from its value at the top; each is written as
// a product with sin(θ/2) in it.
func (c Crank) dropOffset(s, k float64) units.Length {
	sin, cos := c.fromCrankUp(2*s*k, (k-s)*(k+s))
	q := c.cosRod(sin, cos)
	m := c.cosTop*k - c.sinTop*s // cosine of the crank's angle half way from the top to here
	v := 2*c.lambda*m*s - c.sinTop
	w := (v - c.sinTop) / (q + c.cosTop) // tangent of the rod's angle half way
	sum := 1 + q*c.cosTop - v*c.sinTop + 2*c.lambda*k*m*(c.cosTop-w*c.sinTop)
	return min(units.Length(2*float64(c.throw)*s*s*(sum/(q+c.cosTop))), c.stroke)
}

// fromCrankUp turns the sine and cosine of an angle from true top dead centre
// into those of the angle from where the crank points up the cylinder.
func (c Crank) fromCrankUp(sin, cos float64) (float64, float64) {
	return c.sinTop*cos + c.cosTop*sin, c.cosTop*cos - c.sinTop*sin
}

// cosRod returns the cosine of the rod's angle to the cylinder,
// √(1 − (λ sin t − ε)²), as the root of a sum in which nothing cancels, however
// short the rod: 1 − λ² − ε² + 2λε sin t + (λ cos t)².
func (c Crank) cosRod(sin, cos float64) float64 {
	b := c.lambda * cos
	return math.Sqrt(c.k0 + c.k1*sin + b*b)
}

// sincos returns the sine and cosine of an angle, exact at every quarter turn
// given in degrees: the nearest is taken off first.
func sincos(theta units.Angle) (sin, cos float64) {
	quarters := math.RoundToEven(float64(theta) * (2 / math.Pi))
	sin, cos = (theta - degrees(90*quarters)).Sincos()
	switch int64(quarters) & 3 {
	case 1:
		return cos, -sin
	case 2:
		return -sin, -cos
	case 3:
		return -cos, sin
	}
	return sin, cos
}

// halfSincos returns the sine and cosine of half an angle, both perhaps with the
// other sign: for use where only their products count. Exact at every half turn.
func halfSincos(theta units.Angle) (sin, cos float64) {
	halves := math.RoundToEven(float64(theta) * (1 / math.Pi))
	sin, cos = ((theta - degrees(180*halves)) / 2).Sincos()
	if int64(halves)&1 != 0 {
		return cos, -sin
	}
	return sin, cos
}

// degrees is the angle a caller gets by writing that many degrees. The conversion
// round the product keeps it from being fused with a sum, which would make it
// another angle.
func degrees(d float64) units.Angle { return units.Angle(units.Angle(d) * units.Degree) }

// AnglesAtDrop returns the two crank angles at which the piston is the given
// distance below its top, on the way up and on the way down. Both are positive:
// before is counted back from true top dead centre, after forward. They are equal
// when there is no offset.
//
//	tan(γ/2) = (l + d − r)/(l + d + r) √( x(h + y) / ((S − x)(b + y)) )
//	after, before = γ ± atan2(e x, h y + e²)
//
// with h and b the pin's greatest and least height above the crank centre,
// y = h − x its height now, and d = √(y² + e²). For no offset it is the law of
// cosines for the triangle of crank and rod, in half angles. An angle is good to
// a few parts in 10¹⁵ of itself at any drop, however small.
//
// The error is units.ErrDomain for a drop less than 0 or more than the stroke.
//
// Source: derived here from the triangle of crank, rod and cylinder axis, plane
// geometry (half angles of the law of cosines).
func (c Crank) AnglesAtDrop(drop units.Length) (before, after units.Angle, err error) {
	if !(drop >= 0 && drop <= c.stroke && c.stroke > 0) {
		return 0, 0, fmt.Errorf("drop %v: want 0 mm to %v, the stroke: %w", drop, c.stroke, units.ErrDomain)
	}
	before, after = c.angles(drop, c.stroke-drop)
	return before, after, nil
}

// angles is AnglesAtDrop from the distances to the top and to the bottom, so that
// a small one of either keeps its figures.
func (c Crank) angles(drop, left units.Length) (before, after units.Angle) {
	h, b, e := float64(c.top), float64(c.bottom), float64(c.offset)
	y := b + float64(left)
	d := y
	if e != 0 {
		d = math.Hypot(y, e)
	}
	r, l := float64(c.throw), float64(c.rod)
	gamma := 2 * math.Atan((l+d-r)/(l+d+r)*math.Sqrt(float64(drop/left)*((h+y)/(b+y))))
	if e == 0 {
		return units.Angle(gamma), units.Angle(gamma)
	}
	skew := math.Atan2(e/h*float64(drop), y+e/h*e)
	return units.Angle(gamma - skew), units.Angle(gamma + skew)
}
