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
	if half*m.slack >= 0 {
		return placed{theta, x, x + half*m.slack, 1, half}
	}
	size := math.Abs(m.slack)
	taken, follow, play := m.takeUp(x-size, size)
	atTop, _, playAtTop := m.takeUp(-size, size) // next to nothing; taken off so that there is no step at the top
	return placed{theta, x, size/2 + taken - atTop, follow, (0.5 + play - playAtTop) * math.Copysign(1, m.slack)}
}

// takeUp is u where that is more than 0, and else 0, with the corner rounded off
// so that the derivatives are continuous: (u + √(u² + 4w²))/2, with w far below
// what a dial shows and small beside the slack. It returns with it the derivatives
// to x and to the slack, of which u holds one and less the other.
func (m dialModel) takeUp(u, slack float64) (taken, byDrop, bySlack float64) {
	w, grows := m.round, 0.0
	if w > slack/8 {
		w, grows = slack/8, 1./8
	}
	root := math.Sqrt(u*u + 4*w*w)
	if root == 0 {
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
