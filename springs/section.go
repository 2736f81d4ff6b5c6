package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Section is the cross-section of the wire or strip a spring is made of:
// round, square, or rectangular. Make one with RoundWire, SquareWire or
// RectangularWire; the zero value is refused by every constructor that takes a
// Section.
//
// Thickness is always the size that lies in the plane of bending, which for a
// coil is the radial one; width lies along the axis.
type Section struct {
	shape            shape
	width, thickness float64 // m; both the diameter for round wire
}

type shape int

const (
	noShape shape = iota
	round
	square
	rectangular
)

// RoundWire returns the section of round wire of the given diameter. The error
// is units.ErrDomain for a diameter that is not more than 0.
func RoundWire(diameter units.Length) (Section, error) {
	if err := positive("wire diameter", diameter); err != nil {
		return Section{}, err
	}
	return Section{round, float64(diameter), float64(diameter)}, nil
}

// SquareWire returns the section of square wire. The error is units.ErrDomain
// for a side that is not more than 0.
func SquareWire(side units.Length) (Section, error) {
	if err := positive("side of the wire", side); err != nil {
		return Section{}, err
	}
	return Section{square, float64(side), float64(side)}, nil
}

// RectangularWire returns the section of rectangular wire or strip: width along
// the axis of the coil, thickness across it, in the plane of bending. The error
// is units.ErrDomain for a size that is not more than 0.
func RectangularWire(width, thickness units.Length) (Section, error) {
	if err := positive("width", width); err != nil {
		return Section{}, err
	}
	if err := positive("thickness", thickness); err != nil {
		return Section{}, err
	}
	return Section{rectangular, float64(width), float64(thickness)}, nil
}

// Thickness returns the size in the plane of bending: diameter, side, or
// radial thickness.
func (s Section) Thickness() units.Length { return units.Length(s.thickness) }

// Width returns the size along the axis of the coil.
func (s Section) Width() units.Length { return units.Length(s.width) }

// Area returns the area of the section.
func (s Section) Area() units.Area {
	if s.shape == round {
		return units.Area(math.Pi / 4 * s.thickness * s.thickness)
	}
	return units.Area(s.width * s.thickness)
}

// TorqueAtStress returns the bending moment at which the straight section
// carries the given stress at its skin, with no curvature factor:
//
//	M = π d³ σ / 32 round (0.0982 σ d³)     M = b t² σ / 6 rectangular
//
// Source: Machinery's Handbook, 31st ed., p. 334; Shigley, eq. 10-43.
func (s Section) TorqueAtStress(stress units.Pressure) units.Torque {
	return units.Torque(float64(stress) * s.modulus())
}

// StressAtTorque is TorqueAtStress read the other way.
func (s Section) StressAtTorque(torque units.Torque) units.Pressure {
	return units.Pressure(float64(torque) / s.modulus())
}

// String describes the section: "1.42 mm round".
func (s Section) String() string {
	switch s.shape {
	case round:
		return fmt.Sprintf("%v round", s.Thickness())
	case square:
		return fmt.Sprintf("%v square", s.Thickness())
	case rectangular:
		return fmt.Sprintf("%v x %v", s.Thickness(), s.Width())
	}
	return "no section"
}

// inertia returns the second moment of area about the axis of bending, m⁴.
func (s Section) inertia() float64 {
	t3 := s.thickness * s.thickness * s.thickness
	if s.shape == round {
		return math.Pi / 64 * s.thickness * t3
	}
	return s.width * t3 / 12
}

// modulus returns the section modulus in bending, m³.
func (s Section) modulus() float64 { return s.inertia() / (s.thickness / 2) }

func (s Section) check() error {
	if s.shape == noShape {
		return fmt.Errorf("no wire section given: want one from RoundWire, SquareWire or RectangularWire: %w", units.ErrDomain)
	}
	return nil
}
