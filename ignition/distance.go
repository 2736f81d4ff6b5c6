package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// Held says how a distance between two marks on a rim was measured.
type Held int

// The ways of measuring from mark to mark.
const (
	AlongRim       Held = iota + 1 // on a strip or thin tape that lies on the rim
	StraightAcross                 // with a straight rule or dividers, from mark to mark
)

// String returns "along the rim" or "straight across".
func (h Held) String() string {
	switch h {
	case AlongRim:
		return "along the rim"
	case StraightAcross:
		return "straight across"
	}
	return "way of measuring not stated"
}

// MarshalText writes "along the rim" or "straight across". The error is
// [units.ErrDomain] for any other value.
func (h Held) MarshalText() ([]byte, error) { return writeWord(h, AlongRim, StraightAcross) }

// UnmarshalText reads "along the rim" or "straight across". The error is
// [units.ErrDomain] for anything else.
func (h *Held) UnmarshalText(text []byte) error {
	return readWord(h, text, "how the distance was measured", AlongRim, StraightAcross)
}

// A Distance is how far one mark on a rim lies from another, as it was
// measured. Everything that changes its meaning is stated.
type Distance struct {
	Length    units.Length // 0 or more
	Side      Side         // ahead of the other mark in the direction of rotation, or behind it
	Held      Held
	Thickness units.Length // of the strip or tape, along the rim; 0 if it does not matter
}

// Ahead returns the angle by which a mark at that distance lies ahead of the
// other in the direction of rotation, negative for one behind. For a mark
// measured from top dead centre it is the advance.
//
// The error is [units.ErrDomain] for a distance below 0 or a chord longer than
// the rim is across, and where side or way of measuring is not stated.
func (r Rim) Ahead(d Distance) (units.Angle, error) {
	switch {
	case !(d.Length >= 0) || math.IsInf(float64(d.Length), 0):
		return 0, fmt.Errorf("distance between marks %v: want 0 mm or more, and the side beside it: %w", d.Length, units.ErrDomain)
	case d.Side == AtTDC && d.Length == 0:
		return 0, nil
	case d.Side != Ahead && d.Side != Behind:
		return 0, fmt.Errorf("side of the mark: want Ahead or Behind, in the direction of rotation: %w", units.ErrDomain)
	}
	a, err := r.angleHeld(d)
	if d.Side == Behind {
		a = -a
	}
	return a, err
}

func (r Rim) angleHeld(d Distance) (units.Angle, error) {
	switch d.Held {
	case AlongRim:
		return r.AngleOfTape(d.Length, d.Thickness)
	case StraightAcross:
		return r.AngleOfChord(d.Length)
	}
	return 0, fmt.Errorf("%v: want AlongRim or StraightAcross: %w", d.Held, units.ErrDomain)
}

// FigureAt returns the figure of a mark that lies at a distance from the mark
// with the figure from. Ahead in the direction of rotation is the lower figure
// where figures rise at the pointer, and the higher where they fall. The error
// is that of [Rim.Ahead].
func (s Scale) FigureAt(from units.Length, d Distance) (units.Length, error) {
	a, err := s.rim.Ahead(d)
	if err != nil {
		return 0, err
	}
	return from - units.Length(s.figures.sign())*s.rim.Arc(a), nil
}
