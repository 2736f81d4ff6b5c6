package ignition

import (
	"math"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// dialPoint is a dial reading in the terms of the model: the rim figure signed
// so that it rises as the engine turns forward, the dial figure signed so that
// it grows as the piston goes down.
type dialPoint struct {
	series, index int
	mounting      int
	turned        float64 // +1 forward, −1 backward
	rim, dial     float64
}

// dialModel is what a dial shows at a rim figure.
//
// With x the piston's drop by the crank alone and δ the slack along the bore,
// the piston on its way up is pushed and sits low, x + δ/2, and on its way down
// it is dragged and sits high, x − δ/2. Past the top it stays where it is, δ/2
// down, until the slack is taken up. A plunger that leans by β shows
//
//	y = z + d/cos β
//
// for the piston d down, z being the middle of the two positions at the top.
//
// Source: derived here; the lean as in geometry.PlugHole.
type dialModel struct {
	tdc    float64 // rim figure at top dead centre
	slack  float64 // δ
	lean   float64 // β
	radius float64 // of the rim
	round  float64 // how gently the slack is taken up
	crank  geometry.Crank
}

// placed is the piston at one reading.
type placed struct {
	theta  units.Angle
	drop   float64 // x, by the crank alone
	down   float64 // d, of the piston
	follow float64 // ∂d/∂x: 1, or less while the slack is taken up
	play   float64 // ∂d/∂δ
}

// at places the piston for a rim figure reached by turning one way. A slack
// below nothing, as scatter may make it, is slack to the other way of turning.
func (m dialModel) at(rim, turned float64) placed {
	theta := wrap(units.Angle((rim - m.tdc) / m.radius))
	x := float64(m.crank.Drop(theta))
	half := 0.5
	if float64(theta)*turned >= 0 {
		half = -0.5
	}
	p := placed{theta, x, x + half*m.slack, 1, half}
	if half*m.slack < 0 {
		low, byDrop, bySlack := m.resting(x, math.Abs(m.slack))
		p.down += low
		p.follow += byDrop
		p.play += math.Copysign(1, m.slack) * bySlack
	}
	return p
}

// resting is how much lower the piston is than x − δ/2 because past the top it
// stays where it is, δ/2 down, until x is δ:
//
//	δ − x     for x below δ, else 0
//
// with its derivatives to x and δ. The corner is rounded off, by less than an
// eighth of the slack and less than a dial shows, and the whole fades out where
// the slack itself is less than a dial shows, so that a fit finds no edges to
// stick at.
//
// Source: derived here from a piston carried along between two limits.
func (m dialModel) resting(x, slack float64) (low, byDrop, bySlack float64) {
	here, byX, byS := m.corner(x, slack)
	top, _, topByS := m.corner(0, slack) // next to nothing; taken off so that there is no step at the top
	low, byDrop, bySlack = slack-x+here-top, byX-1, 1+byS-topByS
	s4, r4 := math.Pow(slack, 4), math.Pow(m.round, 4)
	if !(s4+r4 > 0) {
		return low, byDrop, bySlack
	}
	fade := s4 / (s4 + r4)
	grows := 4 * r4 * math.Pow(slack, 3) / ((s4 + r4) * (s4 + r4))
	return fade * low, fade * byDrop, fade*bySlack + grows*low
}

// corner is x − δ where that is more than 0, and else 0, with the corner rounded
// off: (u + √(u² + 4w²))/2 with u = x − δ; and its derivatives to x and δ.
func (m dialModel) corner(x, slack float64) (v, byDrop, bySlack float64) {
	share, u := slack/(slack+8*m.round), x-slack
	w, grows := m.round*share, (1-share)*(1-share)/8
	root := math.Sqrt(u*u + 4*w*w)
	if !(root > 0) { // no slack, at the very top
		return 0, 0.5, -0.5
	}
	byDrop = (1 + u/root) / 2
	return (u + root) / 2, byDrop, 2*w*grows/root - byDrop
}

// speed is how far the piston moves for an angle of crank, per radian.
func (m dialModel) speed(p placed) float64 { return p.follow * float64(m.crank.DropPerRadian(p.theta)) }

// dialAt is what the dial shows above its z.
func (m dialModel) dialAt(p placed) float64 { return p.down / math.Cos(m.lean) }

// dialSlope is how far the dial moves for a unit of rim.
func (m dialModel) dialSlope(p placed) float64 { return m.speed(p) / m.radius / math.Cos(m.lean) }

// flat is how far from top dead centre the piston has hardly moved, along the
// rim: less than ten times the uncertainty of the dial.
func (s Setup) flat(c geometry.Crank) float64 {
	before, after, err := c.AnglesAtDrop(min(c.Stroke(), units.Length(10*s.dialStd())))
	if err != nil {
		return 0
	}
	return float64(s.Rim.Arc(max(before, after)))
}
