package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// DwellAtTop returns the angle the crank turns while the piston stays within the
// given distance of its top, both sides together. With the distance a dial gauge
// cannot tell from nothing, it is the width of the place in which watching the
// needle turn back finds top dead centre.
//
// For small distances it is 2√(2δ / (r(1 + λ))) radians: a hundredth of a
// millimetre is worth two degrees and more on a small engine.
//
// The error is units.ErrDomain for less than 0 or more than the stroke.
//
// Source: derived here from Crank.AnglesAtDrop; the small-drop form from the
// series, Khurmi and Gupta, Theory of Machines, ch. 15 (chapter from memory).
func (c Crank) DwellAtTop(within units.Length) (units.Angle, error) {
	before, after, err := c.AnglesAtDrop(within)
	return before + after, err
}

// DwellAtBottom returns the angle the crank turns while the piston stays within
// the given distance of its lowest place, both sides together. It is more than at
// the top, for the rod's swing works against the crankpin's there.
//
// The error is units.ErrDomain for less than 0 or more than the stroke.
func (c Crank) DwellAtBottom(within units.Length) (units.Angle, error) {
	if !(within >= 0 && within <= c.stroke) {
		return 0, fmt.Errorf("distance %v: want 0 mm to %v, the stroke: %w", within, c.stroke, units.ErrDomain)
	}
	before, after := c.angles(c.stroke-within, within)
	return units.Turn - before - after, nil
}

// DropAtDwell returns the drop within which the piston stays while the crank
// turns through the given angle about the top: DwellAtTop the other way round.
// The error is units.ErrDomain for less than 0 or more than a turn.
func (c Crank) DropAtDwell(dwell units.Angle) (units.Length, error) {
	if !(dwell >= 0 && dwell <= units.Turn) {
		return 0, fmt.Errorf("angle %v: want 0° to 360°: %w", dwell, units.ErrDomain)
	}
	l, r, e, h := float64(c.rod), float64(c.throw), float64(c.offset), float64(c.top)
	short := float64(newCrank(c.throw, c.rod, 0).Drop(dwell / 2)) // l + r less d
	d := l + r - short
	y := math.Sqrt((d - e) * (d + e))
	return min(units.Length(short*((2*(l+r)-short)/(h+y))), c.stroke), nil
}

// AnglePer returns the crank angle that moves the piston by a small step at crank
// angle theta, step/(dx/dθ), always positive. It is what a hundredth on the dial,
// or a thou, is worth there: near top dead centre much, half way down little.
//
// The error is units.ErrDomain at the dead centres, where the piston stands still
// and the answer has no bound, and so close to them that it is a turn or more;
// DwellAtTop answers for those.
//
// Source: derived here from Crank.DropPerRadian.
func (c Crank) AnglePer(step units.Length, theta units.Angle) (units.Angle, error) {
	per := units.Angle(math.Abs(float64(step / c.DropPerRadian(theta))))
	if !(per < units.Turn) {
		return 0, fmt.Errorf("crank angle %v: want one away from the dead centres, where the piston stands still: %w", theta, units.ErrDomain)
	}
	return per, nil
}
