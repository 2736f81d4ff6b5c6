package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Barrel ties the depths at which ports are measured, from the barrel's top
// face, to the piston that works them. Set the deck height and the skirt on it
// with WithDeck and WithSkirt.
type Barrel struct {
	crank Crank
	deck  units.Length // crown's edge below the face at top dead centre
	skirt units.Length // crown's edge to the skirt's lower edge
}

// NewBarrel returns a barrel over a crank, with the crown's edge level with the
// top face at top dead centre.
func NewBarrel(crank Crank) Barrel { return Barrel{crank: crank} }

// WithDeck returns the barrel with the crown's edge the given distance below the
// top face at top dead centre, less than 0 when it stands proud. Measure at the
// edge that uncovers the ports, not at the middle of a domed crown.
//
// The error is units.ErrDomain for a distance that is not finite.
func (b Barrel) WithDeck(deck units.Length) (Barrel, error) {
	if math.IsNaN(float64(deck)) || math.IsInf(float64(deck), 0) {
		return Barrel{}, fmt.Errorf("deck height %v: want a finite length: %w", deck, units.ErrDomain)
	}
	b.deck = deck
	return b, nil
}

// WithSkirt returns the barrel with a piston whose skirt, where it works the inlet
// port, reaches the given distance below the crown's edge.
//
// The error is units.ErrDomain for a length not more than 0 or not finite.
func (b Barrel) WithSkirt(skirt units.Length) (Barrel, error) {
	if !(skirt > 0) || math.IsInf(float64(skirt), 0) {
		return Barrel{}, fmt.Errorf("skirt %v below the crown's edge: want more than 0 mm: %w", skirt, units.ErrDomain)
	}
	b.skirt = skirt
	return b, nil
}

// Raised returns the barrel after packing of a thickness has gone under it, or,
// with less than 0, metal off its foot: every port stands that much higher over
// the piston, and exhaust, transfer and inlet all change together. The volume shut
// in as the exhaust closes stays as it was, but the clearance grows by the piston
// area times the packing, and so the trapped ratio falls.
func (b Barrel) Raised(packing units.Length) Barrel {
	b.deck += packing
	return b
}

// Crank returns the crank under the barrel.
func (b Barrel) Crank() Crank { return b.crank }

// Deck returns how far the crown's edge is below the top face at top dead centre.
func (b Barrel) Deck() units.Length { return b.deck }

// Skirt returns the distance from the crown's edge to the skirt's lower edge.
func (b Barrel) Skirt() units.Length { return b.skirt }

// A PortEvent is when a port opens and closes, as crank angles from true top dead
// centre in the direction of rotation, Opens always less than Closes. A port
// worked by the crown opens after the top and closes before the next, which is
// 360° on; one worked by the skirt opens before the top, at an angle less than 0,
// and closes after it.
type PortEvent struct{ Opens, Closes units.Angle }

// Duration returns for how much of a turn the port is open.
func (e PortEvent) Duration() units.Angle { return e.Closes - e.Opens }

// AboutBottom returns how long before true bottom dead centre of a crank a port
// worked by the crown opens, and how long after it closes: the other way in which
// handbooks give transfer and exhaust timings. With no offset the two are equal.
func (e PortEvent) AboutBottom(c Crank) (before, after units.Angle) {
	bottom := c.Downstroke()
	return bottom - e.Opens, e.Closes - bottom
}

// String writes both events the way timings are given, and the duration.
func (e PortEvent) String() string {
	return fmt.Sprintf("opens %s, closes %s, open for %s", fromTopText(e.Opens), fromTopText(e.Closes), degreesText(e.Duration()))
}

// fromTopText writes an angle as so much before or after the nearest top.
func fromTopText(theta units.Angle) string {
	switch {
	case theta > units.Turn/2:
		return degreesText(units.Turn-theta) + " before top dead centre"
	case theta < 0:
		return degreesText(-theta) + " before top dead centre"
	}
	return degreesText(theta) + " after top dead centre"
}

func degreesText(a units.Angle) string { return fmt.Sprintf("%.1f°", a.Degrees()) }

// CrownPort returns when the crown's edge opens and closes a port, exhaust or
// transfer, from the depth of the port's top edge below the barrel's face:
//
//	x = depth − deck;  opens at θ(x) going down, closes at θ(x) coming up
//
// A chamfer or a scallop at the crown's edge opens the port earlier: measure where
// light first shows.
//
// The error is units.ErrDomain when the crown does not cross that edge.
//
// Source: Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1 (chapter
// from memory), with Crank.AnglesAtDrop.
func (b Barrel) CrownPort(topEdge units.Length) (PortEvent, error) {
	before, after, err := b.crank.AnglesAtDrop(topEdge - b.deck)
	if err != nil {
		return PortEvent{}, fmt.Errorf("port edge %v below the face, crown's edge %v below it at the top: want an edge that the crown crosses, %v to %v: %w",
			topEdge, b.deck, b.deck, b.deck+b.crank.stroke, units.ErrDomain)
	}
	return PortEvent{Opens: after, Closes: units.Turn - before}, nil
}

// SkirtPort returns when the skirt's lower edge opens and closes a port, the
// inlet, from the depth of the port's bottom edge below the barrel's face. The
// port is open round the top of the stroke, while the piston's drop is less than
//
//	x = depth − deck − skirt
//
// The error is units.ErrDomain when the skirt does not cross that edge, or
// WithSkirt has not given its length.
//
// Source: Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1 (chapter
// from memory), with Crank.AnglesAtDrop.
func (b Barrel) SkirtPort(bottomEdge units.Length) (PortEvent, error) {
	if !(b.skirt > 0) {
		return PortEvent{}, fmt.Errorf("skirt not given: want its length below the crown's edge: %w", units.ErrDomain)
	}
	top := b.deck + b.skirt // skirt below the face at top dead centre
	before, after, err := b.crank.AnglesAtDrop(bottomEdge - top)
	if err != nil {
		return PortEvent{}, fmt.Errorf("port edge %v below the face, skirt's edge %v below it at the top: want an edge that the skirt crosses, %v to %v: %w",
			bottomEdge, top, top, top+b.crank.stroke, units.ErrDomain)
	}
	return PortEvent{Opens: -before, Closes: after}, nil
}

// CrownPortEdge returns how far below the barrel's face a port's top edge stands
// that the crown opens at a crank angle: CrownPort the other way round.
func (b Barrel) CrownPortEdge(opens units.Angle) units.Length {
	return b.crank.Drop(opens) + b.deck
}

// SkirtPortEdge returns how far below the barrel's face a port's bottom edge
// stands that the skirt closes at a crank angle: SkirtPort the other way round. The
// angle at which it opens serves too, less than 0 for before the top.
func (b Barrel) SkirtPortEdge(closes units.Angle) units.Length {
	return b.crank.Drop(closes) + b.deck + b.skirt
}

// CrownPortEdgeForDuration returns how far below the barrel's face the top edge
// stands of a port that the crown keeps open for a duration. The error is
// units.ErrDomain for less than 0 or more than a turn.
func (b Barrel) CrownPortEdgeForDuration(duration units.Angle) (units.Length, error) {
	drop, err := b.crank.DropAtDwell(units.Turn - duration)
	if err != nil {
		return 0, fmt.Errorf("duration %v: want 0° to 360°: %w", duration, units.ErrDomain)
	}
	return drop + b.deck, nil
}

// SkirtPortEdgeForDuration returns how far below the barrel's face the bottom edge
// stands of a port that the skirt keeps open for a duration. The error is
// units.ErrDomain for less than 0 or more than a turn.
func (b Barrel) SkirtPortEdgeForDuration(duration units.Angle) (units.Length, error) {
	drop, err := b.crank.DropAtDwell(duration)
	if err != nil {
		return 0, fmt.Errorf("duration %v: want 0° to 360°: %w", duration, units.ErrDomain)
	}
	return drop + b.deck + b.skirt, nil
}

// Blowdown returns the crank angle from exhaust opening to transfer opening, in
// which the pressure has to fall before the transfer lets crankcase gas in. Less
// than 0 means that the transfer opens first.
func Blowdown(exhaust, transfer PortEvent) units.Angle { return transfer.Opens - exhaust.Opens }
