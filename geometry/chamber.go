package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Chamber is the clearance put together from its parts, as they can be measured
// with the head off. Leave at 0 what the engine does not have.
type Chamber struct {
	Head       units.Volume // the hollow in the head, plug in place
	GasketBore units.Length // of the hole in the gasket
	Gasket     units.Length // thickness, squeezed
	Deck       units.Length // crown below the barrel's face at top dead centre; less than 0 when proud
	Dome       units.Volume // of crown, deflector and all that stands above the crown's edge
	Dish       units.Volume // hollows in the crown, valve pockets
	TopLand    units.Volume // round the piston above the top ring
}

// Volume returns the clearance of a chamber in a cylinder of the given bore:
//
//	Vc = V_head + (π/4)B_g² t + (π/4)B² z − V_dome + V_dish + V_land
//
// The error is units.ErrDomain when nothing is left or a part other than Deck is
// less than 0.
//
// Source: addition of cylinders, plane geometry; the parts are those of workshop
// practice, common practice, no source.
func (p Chamber) Volume(bore units.Length) (units.Volume, error) {
	for _, part := range [...]struct {
		name string
		size float64
	}{
		{"hollow in the head", float64(p.Head)}, {"bore of the gasket", float64(p.GasketBore)},
		{"thickness of the gasket", float64(p.Gasket)}, {"dome", float64(p.Dome)},
		{"dish", float64(p.Dish)}, {"top land", float64(p.TopLand)}, {"bore", float64(bore)},
	} {
		if !(part.size >= 0) {
			return 0, fmt.Errorf("%s: want 0 or more: %w", part.name, units.ErrDomain)
		}
	}
	v := p.Head + slab(p.GasketBore, p.Gasket) + slab(bore, p.Deck) - p.Dome + p.Dish + p.TopLand
	if !(v > 0) || math.IsInf(float64(v), 0) {
		return 0, fmt.Errorf("parts of the chamber: they leave %v, want more than 0 cm³: %w", v, units.ErrDomain)
	}
	return v, nil
}

// slab is the volume of a flat round of a diameter and a thickness.
func slab(diameter, thickness units.Length) units.Volume {
	return units.Volume(float64(Circle(diameter)) * float64(thickness))
}

// A Squish is the flat ring between the crown and the head round a bowl.
type Squish struct {
	Bore units.Length
	Bowl units.Length // diameter of the bowl; 0 for a flat head
	Gap  units.Length // thickness of a soft wire or putty squeezed there at top dead centre
}

// Volume returns what the flat ring holds: h(π/4)(B² − d²). The bowl and any
// pockets come on top.
//
// Lay the wires over the gudgeon pin, one each side, so that the piston's rocking
// cancels, and take the mean. The error is units.ErrDomain for a bowl wider than
// the bore or anything less than 0.
//
// Source: plane geometry, the area of a ring times its height; soft wire in the
// squish is common practice, no source.
func (s Squish) Volume() (units.Volume, error) {
	if !(s.Gap >= 0 && s.Bowl >= 0 && s.Bore > 0 && s.Bowl <= s.Bore) || math.IsInf(float64(s.Gap+s.Bore), 0) {
		return 0, fmt.Errorf("squish of bore %v, bowl %v, gap %v: want a bowl no wider than the bore and none less than 0: %w", s.Bore, s.Bowl, s.Gap, units.ErrDomain)
	}
	ring := math.Pi / 4 * float64(s.Bore-s.Bowl) * float64(s.Bore+s.Bowl)
	return units.Volume(ring * float64(s.Gap)), nil
}

// A Hole is a round hole of one diameter: a plug hole, a pocket, the hole in a
// gasket.
type Hole struct{ Diameter, Depth units.Length }

// Volume returns what the hole holds, (π/4) d² times its depth. For a threaded hole
// take the effective (pitch) diameter, which gives the volume to a hundredth or
// better; the diameter over the crests, which is what a calliper finds, leaves out
// half of the thread and is some per cent short.
//
// The error is units.ErrDomain for a size less than 0 or not finite.
//
// Source: plane geometry, the volume of a cylinder.
func (h Hole) Volume() (units.Volume, error) {
	v := slab(h.Diameter, h.Depth)
	if !(h.Diameter >= 0 && h.Depth >= 0) || math.IsInf(float64(v), 0) || math.IsNaN(float64(v)) {
		return 0, fmt.Errorf("hole of diameter %v and depth %v: want neither less than 0 mm: %w", h.Diameter, h.Depth, units.ErrDomain)
	}
	return v, nil
}

// A RodOverPins is a rod measured over the far sides of its two pins.
type RodOverPins struct{ Over, GudgeonPin, Crankpin units.Length }

// Centres returns the rod's length between centres: what was measured less half
// of each pin. Pull the rod tight while measuring, or the slack of both ends is in
// it. The error is units.ErrDomain when a size is not more than 0 or nothing is
// left.
func (m RodOverPins) Centres() (units.Length, error) {
	l := m.Over - (m.GudgeonPin+m.Crankpin)/2
	if !(l > 0 && m.GudgeonPin > 0 && m.Crankpin > 0) || math.IsInf(float64(l), 0) {
		return 0, fmt.Errorf("rod %v over pins of %v and %v: want each more than 0 mm and the rod longer: %w", m.Over, m.GudgeonPin, m.Crankpin, units.ErrDomain)
	}
	return l, nil
}
