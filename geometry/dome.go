package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A DomedGauge is a gauge in a leaning plug hole with its tip on a domed crown:
// part of a sphere with its centre on the line of the bore. Bore, gauge and point
// of contact lie in one plane.
//
// What the gauge moves by for a travel of the piston then depends on where the tip
// touches. Aimed at the crown's middle it starts by moving as on a flat crown and
// drifts; with the plunger square to the dome it moves by travel × cos β, where on
// a flat crown it is travel / cos β. A single reading is not to be trusted for the
// drop unless the place is known. Equal readings either side of top dead centre
// still halve correctly, for the reading depends on the drop alone.
type DomedGauge struct {
	lean, slope units.Angle  // β; γ, the crown's slope where the tip touches at the top
	radius      units.Length // of the dome, plus the tip's: where the tip's centre runs
}

// A Dome is a domed crown and the tip of a gauge on it, as NewDomedGauge takes
// them.
type Dome struct {
	Radius units.Length // of the sphere the crown is part of
	Tip    units.Length // radius of the ball at the gauge's tip; 0 for a point
	// Aim is how far from the line of the bore the tip touches the crown with the
	// piston at its top, positive on the side the gauge leans to, where the crown
	// faces the plunger; 0 is the crown's middle.
	Aim units.Length
}

// NewDomedGauge returns the gauge in a hole on a dome. The error is
// units.ErrDomain if the radius is not more than 0, the tip's is less than 0, the
// aim is not less than the radius either way, or the tip would touch from below.
func NewDomedGauge(hole PlugHole, dome Dome) (DomedGauge, error) {
	r := dome.Radius
	switch {
	case !(r > 0) || math.IsInf(float64(r), 0):
		return DomedGauge{}, fmt.Errorf("radius of the dome %v: want more than 0 mm: %w", r, units.ErrDomain)
	case !(dome.Tip >= 0) || math.IsInf(float64(dome.Tip), 0):
		return DomedGauge{}, fmt.Errorf("radius of the tip %v: want 0 mm or more: %w", dome.Tip, units.ErrDomain)
	case !(dome.Aim < r && -dome.Aim < r):
		return DomedGauge{}, fmt.Errorf("aim %v from the middle of a dome of radius %v: want less than the radius: %w", dome.Aim, r, units.ErrDomain)
	}
	g := DomedGauge{hole.lean, units.Angle(math.Asin(float64(dome.Aim / r))), r + dome.Tip}
	if !(math.Cos(float64(g.lean-g.slope)) > 0) {
		return DomedGauge{}, fmt.Errorf("aim %v with a lean of %v: the plunger cannot reach that side of the dome: %w", dome.Aim, hole.lean, units.ErrDomain)
	}
	return g, nil
}

// Reading returns what the gauge moves by when the piston comes down by a drop
// from its top:
//
//	m = b − √(b² − 2Rx cos γ − x²),  b = R cos(β − γ) + x cos β
//
// with R the radius of the dome and the tip together, β the lean and γ the slope
// of the crown where the tip touches at the top, sin γ = aim/radius. The code
// takes the difference as a quotient.
//
// The error is units.ErrDomain for a drop less than 0, or so great that the tip has
// slid off the side of the sphere.
//
// Source: derived here, plane geometry: a straight line and a circle that moves by
// x.
func (g DomedGauge) Reading(drop units.Length) (units.Length, error) {
	r, x := float64(g.radius), float64(drop)
	b := r*math.Cos(float64(g.lean-g.slope)) + x*math.Cos(float64(g.lean))
	t := x * (2*r*math.Cos(float64(g.slope)) + x)
	if !(x >= 0 && t <= b*b) || math.IsInf(t, 0) {
		return 0, fmt.Errorf("drop %v: want 0 mm or more, and little enough for the tip to stay on the dome: %w", drop, units.ErrDomain)
	}
	return units.Length(t / (b + math.Sqrt(b*b-t))), nil
}

// Drop returns how far the piston has come down from its top when the gauge has
// moved by a reading: Reading the other way round.
//
//	x = √(R² − (R sin γ − m sin β)²) − R cos γ + m cos β
//
// The error is units.ErrDomain for a reading less than 0, or so great that the tip
// has slid off the side of the sphere.
//
// Source: derived here from DomedGauge.Reading, solved for x.
func (g DomedGauge) Drop(reading units.Length) (units.Length, error) {
	r, m := float64(g.radius), float64(reading)
	sinLean, cosLean := g.lean.Sincos()
	sin, cos := g.slope.Sincos()
	side := r*sin - m*sinLean // the tip's centre from the line of the bore
	up := math.Sqrt((r - side) * (r + side))
	if !(m >= 0 && cosLean*up+sinLean*side > 0) {
		return 0, fmt.Errorf("reading %v: want 0 mm or more, and little enough for the tip to stay on the dome: %w", reading, units.ErrDomain)
	}
	return units.Length(m * (cosLean + sinLean*(2*r*sin-m*sinLean)/(up+r*cos))), nil
}

// Rate returns how much the gauge moves for a small travel of the piston at the
// top, cos γ / cos(β − γ): 1/cos β at the crown's middle, cos β where the plunger
// stands square to the dome.
func (g DomedGauge) Rate() float64 {
	return math.Cos(float64(g.slope)) / math.Cos(float64(g.lean-g.slope))
}

// FlatError returns by how much the rule for a flat crown, reading × cos β, is
// wrong for the drop at which the gauge shows a reading: that rule's answer less
// the true drop. The error is as for Drop.
func (g DomedGauge) FlatError(reading units.Length) (units.Length, error) {
	x, err := g.Drop(reading)
	return reading*units.Length(math.Cos(float64(g.lean))) - x, err
}
