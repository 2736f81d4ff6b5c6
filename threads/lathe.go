package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// HelixAngle returns how steeply the thread climbs at its effective diameter,
// for grinding clearance on a screwcutting tool:
//
//	tan ψ = p / (π d₂)
//
// The angle is from the square to the axis. It is for a single start; for more
// starts, and for crest or root, ask LeadAngle. The zero Thread has none, 0.
func (t Thread) HelixAngle() units.Angle {
	if t.effective == 0 {
		return 0
	}
	return units.Angle(math.Atan2(float64(t.pitch), math.Pi*float64(t.effective)))
}

// LeadAngle returns the angle at which a helix of the given lead climbs at a
// diameter. The lead is the pitch times the number of starts. The error wraps
// units.ErrDomain unless both are more than 0.
func LeadAngle(lead, diameter units.Length) (units.Angle, error) {
	switch {
	case !(lead > 0) || math.IsInf(float64(lead), 0):
		return 0, fmt.Errorf("lead %v: want more than 0 mm: %w", lead, units.ErrDomain)
	case !(diameter > 0) || math.IsInf(float64(diameter), 0):
		return 0, fmt.Errorf("diameter %v: want more than 0 mm: %w", diameter, units.ErrDomain)
	}
	return units.Angle(math.Atan2(float64(lead), math.Pi*float64(diameter))), nil
}

// A ToolTip is the shape of the point of a screwcutting tool. The zero ToolTip
// is a sharp point.
type ToolTip struct {
	Flat   units.Length // width of a flat ground on the point
	Radius units.Length // radius honed on the point
}

// DepthOfCut returns the infeed, along the radius, with which a tool of the
// form's angle brings a bolt of thread t to its effective diameter, from the
// moment the tool touches the bar, which is at the major diameter:
//
//	(D − d₂)/2 + (p/2 − w) / (2 tan α)          point with a flat w
//	(D − d₂)/2 + p / (4 tan α) − r(1/sin α − 1)  point with a radius r
//
// with α the flank angle, half the angle of the thread. A point of the form's
// own shape gives the form's own depth; one that is sharper has to go deeper,
// and that deeper root is the weaker. Measure before the last cuts, over wires
// or with the nut: the bar and the tool are never quite what they should be.
//
// The error wraps units.ErrDomain for a negative size, for a point with flat
// and radius both, and for one too blunt to enter the space of the thread.
func DepthOfCut(t Thread, tip ToolTip) (units.Length, error) {
	return depthOfCut(t, tip, (t.major-t.effective)/2)
}

// BoringDepth returns the infeed with which the tool brings a nut of thread t
// to its effective diameter, from the moment it touches a bore of the basic
// minor diameter. In a larger bore the tool touches later, and the infeed is
// less by half the difference of the bores.
func BoringDepth(t Thread, tip ToolTip) (units.Length, error) {
	return depthOfCut(t, tip, (t.effective-t.minor)/2)
}

// depthOfCut adds what a tip cuts beyond the effective line.
func depthOfCut(t Thread, tip ToolTip, toEffective units.Length) (units.Length, error) {
	if t.pitch == 0 {
		return 0, noThread()
	}
	if err := tip.check(t); err != nil {
		return 0, err
	}
	tan := t.form.TanFlank()
	beyond := (float64(t.pitch)/2 - float64(tip.Flat)) / (2 * tan)
	beyond -= float64(tip.Radius) * (math.Hypot(1, 1/tan) - 1) // 1/sin α = √(1 + cot² α)
	return toEffective + units.Length(beyond), nil
}

func (tip ToolTip) check(t Thread) error {
	switch {
	case !(tip.Flat >= 0) || !(tip.Radius >= 0):
		return fmt.Errorf("tool point with flat %v and radius %v: want neither below 0 mm: %w", tip.Flat, tip.Radius, units.ErrDomain)
	case tip.Flat > 0 && tip.Radius > 0:
		return fmt.Errorf("tool point with flat %v and radius %v: want one or the other: %w", tip.Flat, tip.Radius, units.ErrDomain)
	case !(tip.Flat < t.pitch/2):
		return fmt.Errorf("tool point with flat %v for pitch %v: want less than %v, half the pitch: %w", tip.Flat, t.pitch, t.pitch/2, units.ErrDomain)
	case !(tip.Radius < blunt(t)):
		return fmt.Errorf("tool point with radius %v for pitch %v: want less than %v: %w", tip.Radius, t.pitch, blunt(t), units.ErrDomain)
	}
	return nil
}

// blunt returns the radius at which a round point touches the flanks on the
// effective line: p/(4 cos α).
func blunt(t Thread) units.Length {
	return t.pitch / 4 * units.Length(math.Hypot(1, t.form.TanFlank()))
}

// SlideFeed returns how far to advance a top slide that is set over, for an
// infeed along the radius:
//
//	s = depth / cos φ
//
// with φ the angle of the slide from square to the lathe axis. Set it half a
// degree to a degree less than the flank angle, 29.5° for 60° threads and 27°
// for Whitworth (common practice, no source): the tool then cuts on its
// leading flank and only polishes the other. Slides are marked in two ways;
// one that reads 0 when it lies along the bed wants 90° less φ.
//
// The error wraps units.ErrDomain for an angle not between 0° and 90°, or a
// depth below 0.
func SlideFeed(depth units.Length, setOver units.Angle) (units.Length, error) {
	switch {
	case !(depth >= 0) || math.IsInf(float64(depth), 0):
		return 0, fmt.Errorf("depth of cut %v: want 0 mm or more: %w", depth, units.ErrDomain)
	case !(setOver >= 0 && setOver < 90*units.Degree):
		return 0, fmt.Errorf("slide set over %v: want 0° or more and less than 90°: %w", setOver, units.ErrDomain)
	}
	return depth / units.Length(math.Cos(setOver.Radians())), nil
}
