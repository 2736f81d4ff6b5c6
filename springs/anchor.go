package springs

import (
	"math"

	"example.com/benchsums/units"
)

// An AnchorPin holds the end of a spring: a post or screw in a part that is often
// softer than it.
type AnchorPin struct {
	Diameter units.Length
	Radius   units.Length // from the axis of the spring to the pin
	Seat     units.Length // length of pin held in the part
	Overhang units.Length // from the face of the part to the line of the spring's pull
	Edge     units.Length // metal left between the hole and the edge, in the line of the pull; 0 if there is none to judge
}

// An AnchorLoad is what a pin and its part bear at a torque.
type AnchorLoad struct {
	Force   units.Force
	Shear   units.Pressure // mean, across the pin: 4 F/(π d²)
	Bending units.Pressure // at the face of the part: 32 F a/(π d³)
	Bearing units.Pressure // mean of the hole's side, pin straight: F/(d l)
	Tilt    units.Pressure // greatest at the mouth of the hole, from the overhang as well
	TearOut units.Pressure // shear of the metal left at the edge: F/(2 e l); 0 where no edge was given
}

// Load returns what the pin and the part bear when the spring pulls with a torque.
// Nominal stresses of plain mechanics, with no allowance for blows or wear; the
// mouth of the hole carries
//
//	p = F/(d l) (4 + 6 a/l)
//
// when the pin is held like a beam in an elastic bed (derived here: even pressure
// F/(d l), and the moment F (a + l/2) spread on a straight line, 6 F (a + l/2)/(d l²)).
// The error is units.ErrDomain for a size that is not more than 0, or an overhang
// or edge below 0.
func (p AnchorPin) Load(torque units.Torque) (AnchorLoad, error) {
	err := first(positive("pin diameter", p.Diameter), positive("radius of the pin", p.Radius), positive("seat of the pin", p.Seat),
		notNegative("overhang", p.Overhang), notNegative("edge", p.Edge))
	if err != nil {
		return AnchorLoad{}, err
	}
	f := math.Abs(float64(torque)) / float64(p.Radius)
	d, l, a := float64(p.Diameter), float64(p.Seat), float64(p.Overhang)
	load := AnchorLoad{
		Force:   units.Force(f),
		Shear:   units.Pressure(4 * f / (math.Pi * d * d)),
		Bending: units.Pressure(32 * f * a / (math.Pi * d * d * d)),
		Bearing: units.Pressure(f / (d * l)),
		Tilt:    units.Pressure(f / (d * l) * (4 + 6*a/l)),
	}
	if p.Edge > 0 {
		load.TearOut = units.Pressure(f / (2 * float64(p.Edge) * l))
	}
	return load, nil
}

// EdgeFor returns the metal to leave between hole and edge for a shear stress in
// it. The error is as for Load, and units.ErrDomain for a stress that is not more
// than 0.
func (p AnchorPin) EdgeFor(torque units.Torque, shear units.Pressure) (units.Length, error) {
	load, err := p.Load(torque)
	if err := first(err, positive("shear stress", shear)); err != nil {
		return 0, err
	}
	return units.Length(float64(load.Force) / (2 * float64(shear) * float64(p.Seat))), nil
}

// A Slot is what to cut in an arbor for the bent inner tongue of a strip.
type Slot struct {
	Width      units.Length   // across: strip and clearance
	Depth      units.Length   // as asked for
	Length     units.Length   // along the axis: width of the strip and clearance
	LeastBend  units.Length   // least inside radius of the bend: the thickness
	BetterBend units.Length   // better: twice the thickness
	Force      units.Force    // with which the tongue bears on the slot
	Bearing    units.Pressure // mean, tongue on the slot's side
	Tongue     units.Pressure // bending of the tongue at the bend, the force in mid-depth
	Core       units.Length   // metal left under the slot: arbor less the depth
}

// SlotFor returns the slot in an arbor for a tongue bent inwards, so deep, and what
// it bears at a torque. The force acts at mid-depth. Bend radii are common
// practice, no source; soften only the last few millimetres of the strip. The error
// is units.ErrDomain for a size that is not more than 0, or a slot deeper than
// half the arbor.
func SlotFor(strip Section, arbor, depth, clearance units.Length, torque units.Torque) (Slot, error) {
	err := first(strip.check(), positive("arbor", arbor), positive("depth of the slot", depth), notNegative("clearance", clearance))
	if err == nil {
		err = notNegative("metal beyond half the arbor", arbor/2-depth)
	}
	if err != nil {
		return Slot{}, err
	}
	f := math.Abs(float64(torque)) / float64(arbor/2-depth/2)
	b, t, h := strip.width, strip.thickness, float64(depth)
	return Slot{
		Width: strip.Thickness() + clearance, Depth: depth, Length: strip.Width() + clearance,
		LeastBend: strip.Thickness(), BetterBend: 2 * strip.Thickness(),
		Force:   units.Force(f),
		Bearing: units.Pressure(f / (b * h)),
		Tongue:  units.Pressure(6 * f * h / 2 / (b * t * t)),
		Core:    arbor - depth,
	}, nil
}
