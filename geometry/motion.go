package geometry

import (
	"math"

	"example.com/benchsums/units"
)

// DropPerRadian returns how fast the drop grows with the crank angle: the first
// derivative of Drop, a length for each radian turned. Times π/180 it is the
// length for a degree. It is positive on the way down, 0 at both dead centres and
// negative on the way up:
//
//	dx/dθ = r sin t (1 + λ cos t / cos φ) − e λ cos t / cos φ,   sin φ = λ sin t − e/l
//
// with λ = r/l and t the angle from where the crank points up the cylinder, which
// is theta when there is no offset.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory); with
// an offset derived here by differentiating Crank.Drop.
func (c Crank) DropPerRadian(theta units.Angle) units.Length {
	s, k := halfSincos(theta)
	sinA, cosA := 2*s*k, (k-s)*(k+s)
	sin, cos := c.fromCrankUp(sinA, cosA)
	q := c.cosRod(sin, cos)
	if cos < 0 {
		rise := sin*c.lambdaCosPlus(q, sin, cos) - c.epsilon*cos
		return units.Length(float64(c.throw) * rise / q)
	}
	// The same, with sin(θ/2) taken out of it so that nothing cancels near the top.
	m := c.cosTop*k - c.sinTop*s
	v := 2*c.lambda*m*s - c.sinTop
	w := (v - c.sinTop) / (q + c.cosTop)
	rise := cosA*c.lambda*m*(c.cosTop-w*c.sinTop) + k*(q*c.cosTop-v*c.sinTop)
	return units.Length(2 * float64(c.throw) * s * rise / q)
}

// DropPerRadianSquared returns the second derivative of Drop with the crank
// angle, a length for each radian squared:
//
//	d²x/dθ² = r cos t + (r²cos²t − u r sin t)/p + u²r²cos²t/p³
//	u = r sin t − e,  p = √(l² − u²)
//
// It is r(1 + λ) at the top and −r(1 − λ) at the bottom when there is no offset.
// The code gathers the terms so that they do not cancel with a rod hardly longer
// than the throw.
//
// Source: derived here by differentiating Crank.DropPerRadian.
func (c Crank) DropPerRadianSquared(theta units.Angle) units.Length {
	sin, cos := c.fromCrankUp(sincos(theta))
	q := c.cosRod(sin, cos)
	v := c.lambda*sin - c.epsilon
	k0 := c.k0*sin + c.lambda*c.epsilon*(1+sin*sin)
	return units.Length(float64(c.throw) * (cos*c.lambdaCosPlus(q, sin, cos)/q - v*k0/(q*q*q)))
}

// lambdaCosPlus returns q + λ cos t, with q = cos φ, in a form that does not
// cancel when cos t is negative.
func (c Crank) lambdaCosPlus(q, sin, cos float64) float64 {
	if cos < 0 {
		return (c.k0 + c.k1*sin) / (q - c.lambda*cos)
	}
	return q + c.lambda*cos
}

// Velocity returns the speed of the piston at crank angle theta with the crank
// turning at a steady speed: dx/dθ times the speed in radians. It is positive on
// the way down.
//
//	v = ω r sin θ (1 + λ cos θ / √(1 − λ² sin² θ))
//
// is what books print for no offset.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory);
// Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapter from
// memory).
func (c Crank) Velocity(theta units.Angle, speed units.AngularSpeed) units.Speed {
	return units.Speed(float64(c.DropPerRadian(theta)) * float64(speed))
}

// Acceleration returns the acceleration of the piston at crank angle theta with
// the crank turning at a steady speed, positive downwards: d²x/dθ² times the
// speed in radians squared. At the dead centres it is ω²r(1 + λ) and −ω²r(1 − λ)
// when there is no offset.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (c Crank) Acceleration(theta units.Angle, speed units.AngularSpeed) units.Acceleration {
	w := float64(speed)
	return units.Acceleration(float64(c.DropPerRadianSquared(theta)) * w * w)
}

// PinHeight returns the distance of the gudgeon pin above the crank centre, along
// the cylinder: rod plus throw at top dead centre when there is no offset.
func (c Crank) PinHeight(theta units.Angle) units.Length {
	return c.bottom + (c.stroke - c.Drop(theta))
}

// RodAngle returns the angle of the rod to the cylinder, positive while the
// crankpin is on the side it goes to after top dead centre:
//
//	sin φ = (r sin t − e)/l
//
// Its size is greatest with the crank square to the cylinder.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory); with
// an offset Norton, Design of Machinery, ch. 4 (chapter from memory).
func (c Crank) RodAngle(theta units.Angle) units.Angle {
	sin, cos := c.fromCrankUp(sincos(theta))
	return units.Angle(math.Atan2(c.lambda*sin-c.epsilon, c.cosRod(sin, cos)))
}

// RodSpeed returns the angular speed of the rod, positive while its angle grows:
//
//	dφ/dt = ω r cos t / (l cos φ)
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (c Crank) RodSpeed(theta units.Angle, speed units.AngularSpeed) units.AngularSpeed {
	sin, cos := c.fromCrankUp(sincos(theta))
	return units.AngularSpeed(float64(speed) * c.lambda * cos / c.cosRod(sin, cos))
}

// RodAcceleration returns the angular acceleration of the rod at a steady crank
// speed, positive when its angle grows ever faster:
//
//	d²φ/dt² = ((dφ/dt)² sin φ − ω² λ sin t) / cos φ
//
// It is negative in the first quarter turn, where the angle grows ever slower;
// books often print its size alone.
//
// Source: Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (c Crank) RodAcceleration(theta units.Angle, speed units.AngularSpeed) units.AngularAcceleration {
	sin, cos := c.fromCrankUp(sincos(theta))
	q := c.cosRod(sin, cos)
	w := float64(speed)
	turn := c.lambda * cos / q
	return units.AngularAcceleration(w * w * (turn*turn*(c.lambda*sin-c.epsilon) - c.lambda*sin) / q)
}

// TopLag returns how far true top dead centre lies beyond the place where the
// crank points up the cylinder: arcsin(e/(l + r)). It is 0 with no offset and has
// the sign of the offset.
//
// Source: Norton, Design of Machinery, ch. 4 (chapter from memory); plane
// geometry, crank and rod in line.
func (c Crank) TopLag() units.Angle { return units.Angle(math.Atan2(c.sinTop, c.cosTop)) }

// BottomLag returns how far true bottom dead centre lies beyond the place where
// the crank points straight away from the cylinder: arcsin(e/(l − r)).
//
// Source: Norton, Design of Machinery, ch. 4 (chapter from memory); plane
// geometry, rod folded over the crank.
func (c Crank) BottomLag() units.Angle {
	return units.Angle(math.Atan2(float64(c.offset), float64(c.bottom)))
}

// Downstroke returns the angle the crank turns while the piston goes from top to
// bottom, which is also the crank angle of true bottom dead centre: half a turn
// plus BottomLag less TopLag. The way up takes what is left of the turn.
func (c Crank) Downstroke() units.Angle {
	return units.Turn/2 + (c.BottomLag() - c.TopLag())
}
