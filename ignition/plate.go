package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Plate is the back plate that carries the contacts and can be turned in
// slots round the breaker shaft. Make one with [NewPlate].
type Plate struct {
	radius units.Length
	drive  Drive
}

// NewPlate returns the plate whose slots lie at the given radius from the
// middle of the shaft, on a breaker with the given drive. The error is
// [units.ErrDomain] for a radius that is not more than 0.
func NewPlate(radius units.Length, drive Drive) (Plate, error) {
	if !positive(radius) {
		return Plate{}, fmt.Errorf("radius of the slots %v: want more than 0 mm: %w", radius, units.ErrDomain)
	}
	return Plate{radius, drive}, nil
}

// Shift says what turning a plate does.
type Shift int

// The two ways to turn a plate.
const (
	AgainstRotation Shift = iota + 1 // against the turning of the breaker shaft: earlier spark
	WithRotation                     // with the turning of the breaker shaft: later spark
)

// String returns "against the shaft" or "with the shaft".
func (s Shift) String() string {
	switch s {
	case AgainstRotation:
		return "against the shaft"
	case WithRotation:
		return "with the shaft"
	}
	return "way not stated"
}

// Change returns by how much the advance at the crank changes when the plate
// is moved by travel along its slot, measured round the circle of the slots:
//
//	Δθ = travel/R × crank turns per shaft turn   (radians)
//
// Turned against the shaft the cam meets the contacts sooner and the change is
// positive, more advance; turned with the shaft it is negative. The error is
// [units.ErrDomain] when the way is not stated or travel is below 0.
//
// Source: plane geometry, angle = arc/radius.
func (p Plate) Change(travel units.Length, way Shift) (units.Angle, error) {
	switch {
	case !(travel >= 0) || math.IsInf(float64(travel), 0):
		return 0, fmt.Errorf("travel of the plate %v: want 0 mm or more, and the way it is turned beside it: %w", travel, units.ErrDomain)
	case way == AgainstRotation:
		return p.angle(travel), nil
	case way == WithRotation:
		return -p.angle(travel), nil
	}
	return 0, fmt.Errorf("%v: want AgainstRotation or WithRotation: %w", way, units.ErrDomain)
}

// angle is what a way round the circle of the slots is at the crank.
func (p Plate) angle(arc units.Length) units.Angle {
	return p.drive.Crank(units.Angle(arc / p.radius))
}

// Travel returns how far to move the plate along its slot, and which way, for
// a change of the advance at the crank; positive is more advance.
func (p Plate) Travel(change units.Angle) (units.Length, Shift) {
	arc := p.radius * units.Length(p.drive.Shaft(change))
	if arc < 0 {
		return -arc, WithRotation
	}
	return arc, AgainstRotation
}

// AngleOfChord returns what the plate's travel is at the crank when it was
// measured straight across, by dividers from one scribed line to the other:
// 2 asin(c/2R) at the shaft. The error is [units.ErrDomain] for a chord below 0
// or longer than twice the radius.
//
// Source: plane geometry, the chord of a circle.
func (p Plate) AngleOfChord(chord units.Length) (units.Angle, error) {
	if !(chord >= 0) {
		return 0, fmt.Errorf("chord %v: want 0 mm or more: %w", chord, units.ErrDomain)
	}
	shaft, err := Rim{p.radius}.AngleOfChord(chord)
	return p.drive.Crank(shaft), err
}

// Range returns the whole range of adjustment at the crank of a slot that
// follows the circle, with round ends: the bolt's middle travels the slot's
// length along the curve less the diameter of the bolt.
//
//	Δθ = (l − d)/R × crank turns per shaft turn   (radians)
//
// The error is [units.ErrDomain] for a slot shorter than the bolt is thick.
//
// Source: plane geometry, angle = arc/radius.
func (p Plate) Range(slot, bolt units.Length) (units.Angle, error) {
	travel, err := boltTravel(slot, bolt)
	return p.angle(travel), err
}

// RangeOfChord is [Plate.Range] for a slot that is straight, or whose length
// was measured straight across: 2 asin((l − d)/2R) at the shaft.
func (p Plate) RangeOfChord(slot, bolt units.Length) (units.Angle, error) {
	travel, err := boltTravel(slot, bolt)
	if err != nil {
		return 0, err
	}
	return p.AngleOfChord(travel)
}

func boltTravel(slot, bolt units.Length) (units.Length, error) {
	if !(bolt >= 0) || !(slot >= bolt) || math.IsInf(float64(slot), 0) {
		return 0, fmt.Errorf("slot %v with a bolt %v thick: want a slot as long as the bolt or longer: %w", slot, bolt, units.ErrDomain)
	}
	return slot - bolt, nil
}
