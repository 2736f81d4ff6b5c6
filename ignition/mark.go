package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// Place says what a mark is scribed on.
type Place int

// Where a mark can be scribed.
const (
	OnRim  Place = iota // on the turning rim, read at a pointer that stands still
	OnCase              // on the standing case, read against one line on the rim
)

// String returns "rim" or "case".
func (p Place) String() string {
	switch p {
	case OnRim:
		return "rim"
	case OnCase:
		return "case"
	}
	return "place not stated"
}

// MarshalText writes "rim" or "case". The error is [units.ErrDomain] for any
// other value.
func (p Place) MarshalText() ([]byte, error) { return writeWord(p, OnRim, OnCase) }

// UnmarshalText reads "rim" or "case". The error is [units.ErrDomain] for
// anything else.
func (p *Place) UnmarshalText(text []byte) error {
	return readWord(p, text, "what the mark is scribed on", OnRim, OnCase)
}

// Side says on which side of the top dead centre mark another mark lies.
type Side int

// The sides of the top dead centre mark.
const (
	AtTDC  Side = iota // no distance between them
	Ahead              // further on in the direction of rotation
	Behind             // back, against the direction of rotation
)

// String returns "ahead", "behind" or "at".
func (s Side) String() string {
	switch s {
	case Ahead:
		return "ahead"
	case Behind:
		return "behind"
	}
	return "at"
}

// MarshalText writes "ahead", "behind" or "at". The error is [units.ErrDomain]
// for any other value.
func (s Side) MarshalText() ([]byte, error) { return writeWord(s, Ahead, Behind, AtTDC) }

// UnmarshalText reads "ahead", "behind" or "at". The error is [units.ErrDomain]
// for anything else.
func (s *Side) UnmarshalText(text []byte) error {
	return readWord(s, text, "the side in the direction of rotation", Ahead, Behind, AtTDC)
}

// A Mark says where to scribe the line for a crank angle: how far from the top
// dead centre mark and which way. Make one with [NewMark].
//
// On the rim, read at a pointer that stands still, an angle before top dead
// centre lies ahead of the top dead centre mark in the direction of rotation:
// the mark has to come past the pointer first. On the case, read against one
// line on the rim, it is the other way about: there the line passes the spark
// mark first and the top dead centre mark after it, so the spark mark lies
// behind, against the rotation. Scribing the one where the other is meant puts
// the spark as far after top dead centre as it should be before it.
type Mark struct {
	Advance units.Angle  // crank angle before top dead centre; negative after it
	Arc     units.Length // along the round face; positive ahead in the direction of rotation
	Chord   units.Length // straight across, with the sign of Arc
	Place   Place
	Turning Turning // which way the engine turns, facing the rim
}

// NewMark returns where to scribe the mark for an advance on a rim, or on the
// case along a circle of the rim's radius. The advance may be anything from
// half a turn before to half a turn after top dead centre. The error is
// [units.ErrDomain] for one beyond that, for a turning that is not stated, and
// for the zero [Rim].
func NewMark(rim Rim, advance units.Angle, place Place, turning Turning) (Mark, error) {
	switch {
	case !positive(rim.radius):
		return Mark{}, fmt.Errorf("rim radius %v: want a rim made with NewRim: %w", rim.radius, units.ErrDomain)
	case !(math.Abs(float64(advance)) <= float64(units.Turn/2)):
		return Mark{}, fmt.Errorf("advance %v: want from −180° to 180°: %w", advance, units.ErrDomain)
	case place != OnRim && place != OnCase:
		return Mark{}, fmt.Errorf("%v: want OnRim or OnCase: %w", place, units.ErrDomain)
	case turning != Clockwise && turning != Anticlockwise:
		return Mark{}, fmt.Errorf("%v: want Clockwise or Anticlockwise, facing the rim: %w", turning, units.ErrDomain)
	}
	onward := advance
	if place == OnCase {
		onward = -advance
	}
	return Mark{advance, rim.Arc(onward), rim.Chord(onward), place, turning}, nil
}

// Side returns on which side of the top dead centre mark to scribe.
func (m Mark) Side() Side {
	switch {
	case m.Arc > 0:
		return Ahead
	case m.Arc < 0:
		return Behind
	}
	return AtTDC
}

// Way returns the way round, facing the rim, from the top dead centre mark to
// this one: the way the engine turns when it lies ahead, the other when it lies
// behind.
func (m Mark) Way() Turning {
	if m.Side() == Behind {
		return m.Turning.Reverse()
	}
	return m.Turning
}

// String says in one sentence what to scribe: how far, along the face and
// straight across, in millimetres and inches, from which mark, and which way.
func (m Mark) String() string {
	if m.Side() == AtTDC {
		return "scribe on the top dead centre mark itself"
	}
	arc, chord := units.Length(math.Abs(float64(m.Arc))), units.Length(math.Abs(float64(m.Chord)))
	with := "ahead of it in the direction of rotation"
	if m.Side() == Behind {
		with = "behind it, against the direction of rotation"
	}
	return fmt.Sprintf("scribe on the %v %s round the face, %s straight across, from the top dead centre mark, %s: facing the rim, %s from it",
		m.Place, metricAndInch(arc, 1), metricAndInch(chord, 1), with, m.Way())
}

// Approach says from which side to bring the crank to the mark, so that all
// slack is taken up as it is in running.
func (m Mark) Approach() string {
	return fmt.Sprintf("come to it turning forward (%s, facing the rim); if you pass it, go back a good quarter of a turn and come again", m.Turning)
}
