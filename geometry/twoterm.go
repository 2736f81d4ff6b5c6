package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A TwoTerm is the crank of most textbooks: the first two terms of the series of
// the piston's motion in the crank angle, with the cylinder straight over the
// crank. It is there for teaching and to check a hand calculation; Crank has no
// such error and costs no more.
type TwoTerm struct {
	throw, rod units.Length
	lambda     float64 // λ = r/l = 1/n
}

// TwoTerm returns the two-term approximation to c. The error is units.ErrDomain
// when c has an offset, which the series leaves out.
func (c Crank) TwoTerm() (TwoTerm, error) {
	if c.offset != 0 {
		return TwoTerm{}, fmt.Errorf("offset %v: want 0 mm, the two-term series has no offset: %w", c.offset, units.ErrDomain)
	}
	return TwoTerm{c.throw, c.rod, c.lambda}, nil
}

// Drop returns the drop of the piston by the two-term series:
//
//	x ≈ r((1 − cos θ) + (λ/4)(1 − cos 2θ)),  λ = r/l
//
// It falls short of the exact drop everywhere but at the dead centres, and most
// at 90°: by r(λ/2)³ and a little more, which is 0.49 % of the throw for a rod of
// three throws, 0.20 % for four and 0.10 % for five.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (a TwoTerm) Drop(theta units.Angle) units.Length {
	s, k := halfSincos(theta)
	sin := 2 * s * k
	return units.Length(float64(a.throw) * (2*s*s + a.lambda/2*sin*sin))
}

// Velocity returns the speed of the piston, positive downwards, by the two-term
// series:
//
//	v ≈ ω r (sin θ + (λ/2) sin 2θ)
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (a TwoTerm) Velocity(theta units.Angle, speed units.AngularSpeed) units.Speed {
	sin, cos := sincos(theta)
	return units.Speed(float64(speed) * float64(a.throw) * sin * (1 + a.lambda*cos))
}

// Acceleration returns the acceleration of the piston, positive downwards, by the
// two-term series. It is exact at both dead centres.
//
//	a ≈ ω² r (cos θ + λ cos 2θ)
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (a TwoTerm) Acceleration(theta units.Angle, speed units.AngularSpeed) units.Acceleration {
	sin, cos := sincos(theta)
	w := float64(speed)
	return units.Acceleration(w * w * float64(a.throw) * (cos + a.lambda*(cos-sin)*(cos+sin)))
}

// RodSpeed returns the angular speed of the rod as if its angle stayed small:
// ω λ cos θ.
func (a TwoTerm) RodSpeed(theta units.Angle, speed units.AngularSpeed) units.AngularSpeed {
	_, cos := sincos(theta)
	return units.AngularSpeed(float64(speed) * a.lambda * cos)
}

// RodAcceleration returns the angular acceleration of the rod as if its angle
// stayed small, −ω² λ sin θ. Books mostly print its size alone.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (a TwoTerm) RodAcceleration(theta units.Angle, speed units.AngularSpeed) units.AngularAcceleration {
	sin, _ := sincos(theta)
	w := float64(speed)
	return units.AngularAcceleration(-w * w * a.lambda * sin)
}

// FastestAngle returns the crank angle, either side of top dead centre, at which
// the two-term series has its greatest speed and no acceleration:
//
//	cos θ = (√(n² + 8) − n)/4,  n = l/r
//
// Source: derived here from the two-term acceleration put to 0, a quadratic in cos
// θ; Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (a TwoTerm) FastestAngle() units.Angle {
	n := 1 / a.lambda
	return units.Angle(math.Acos(2 / (math.Sqrt(n*n+8) + n)))
}

// Shortfall returns by how much the two-term drop is less than the exact one:
//
//	(r λ³ sin⁴θ / 2) / (1 + √(1 − λ² sin²θ))²
//
// It is never negative.
//
// Source: derived here from the difference of the root and its two terms.
func (a TwoTerm) Shortfall(theta units.Angle) units.Length {
	sin, cos := sincos(theta)
	b := a.lambda * sin
	q := math.Sqrt((1-a.lambda)*(1+a.lambda) + a.lambda*a.lambda*cos*cos)
	return units.Length(float64(a.rod) * b * b * b * b / (2 * (1 + q) * (1 + q)))
}
