package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// Turning says which way an engine turns in running, as seen by someone who
// stands facing the rim.
type Turning int

// The two ways an engine can turn, facing the rim.
const (
	Clockwise     Turning = iota + 1 // top of the rim goes to the right
	Anticlockwise                    // top of the rim goes to the left
)

// String returns "clockwise" or "anticlockwise".
func (w Turning) String() string {
	switch w {
	case Clockwise:
		return "clockwise"
	case Anticlockwise:
		return "anticlockwise"
	}
	return "turning not stated"
}

// Reverse returns the other way.
func (w Turning) Reverse() Turning {
	switch w {
	case Clockwise:
		return Anticlockwise
	case Anticlockwise:
		return Clockwise
	}
	return w
}

// MarshalText writes "clockwise" or "anticlockwise". The error is
// [units.ErrDomain] for any other value.
func (w Turning) MarshalText() ([]byte, error) { return writeWord(w, Clockwise, Anticlockwise) }

// UnmarshalText reads "clockwise" or "anticlockwise". The error is
// [units.ErrDomain] for anything else.
func (w *Turning) UnmarshalText(text []byte) error {
	return readWord(w, text, "the way the engine turns, facing the rim", Clockwise, Anticlockwise)
}

// Figures says what the figures of a rule or tape on the rim do at the fixed
// pointer as the engine is turned forward. It is a question of how the rule
// was stuck on, not of which way the engine turns.
type Figures int

// What the figures do at the pointer as the engine is turned forward.
const (
	Rising  Figures = iota + 1 // 10, 20, 30: higher figures come later
	Falling                    // 30, 20, 10: higher figures come sooner
)

// String returns "rising" or "falling".
func (f Figures) String() string {
	switch f {
	case Rising:
		return "rising"
	case Falling:
		return "falling"
	}
	return "figures not stated"
}

// MarshalText writes "rising" or "falling". The error is [units.ErrDomain] for
// any other value.
func (f Figures) MarshalText() ([]byte, error) { return writeWord(f, Rising, Falling) }

// UnmarshalText reads "rising" or "falling". The error is [units.ErrDomain] for
// anything else.
func (f *Figures) UnmarshalText(text []byte) error {
	return readWord(f, text, "what the figures do at the pointer as the engine is turned forward", Rising, Falling)
}

// sign is +1 where later crank angles have higher figures.
func (f Figures) sign() float64 {
	if f == Falling {
		return -1
	}
	return 1
}

// A Scale is a rule or tape round the rim, read at a fixed pointer: it turns
// figures into crank angles and back. Make one with [NewScale].
//
// It is the place where the signs are settled. As the engine turns forward,
// marks further ahead on the rim in the direction of rotation pass the pointer
// first. Rising figures therefore rise against the rotation, and the figure of
// a spark before top dead centre is lower than that of top dead centre,
// although the mark itself lies ahead of it.
type Scale struct {
	rim     Rim
	tdc     units.Length
	figures Figures
}

// NewScale returns the scale on a rim on which top dead centre stands at the
// figure tdc. The rim is the one the figures lie on: for a tape of some
// thickness see [Rim.UnderTape]. The error is [units.ErrDomain] for figures
// that are stated neither [Rising] nor [Falling], for the zero [Rim] and for a
// figure that is not finite.
func NewScale(rim Rim, tdc units.Length, figures Figures) (Scale, error) {
	switch {
	case !positive(rim.radius):
		return Scale{}, fmt.Errorf("rim radius %v: want a rim made with NewRim: %w", rim.radius, units.ErrDomain)
	case math.IsNaN(float64(tdc)) || math.IsInf(float64(tdc), 0):
		return Scale{}, fmt.Errorf("top dead centre at %v: want a finite figure: %w", tdc, units.ErrDomain)
	case figures != Rising && figures != Falling:
		return Scale{}, fmt.Errorf("%v: want Rising or Falling, what they do at the pointer as the engine is turned forward: %w", figures, units.ErrDomain)
	}
	return Scale{rim, tdc, figures}, nil
}

// Rim returns the rim the figures lie on.
func (s Scale) Rim() Rim { return s.rim }

// TDC returns the figure of top dead centre.
func (s Scale) TDC() units.Length { return s.tdc }

// Figures returns what the figures do at the pointer in forward turning.
func (s Scale) Figures() Figures { return s.figures }

// Angle returns the crank angle at which a figure stands at the pointer: 0 at
// top dead centre, positive after it, more than −180° and at most 180°. Whole
// turns of the rim are left out, so figures may run on past the girth.
func (s Scale) Angle(figure units.Length) units.Angle {
	return wrap(s.rim.AngleOfArc(units.Length(s.figures.sign()) * (figure - s.tdc)))
}

// Advance returns how far before top dead centre the crank stands with a
// figure at the pointer; it is negative after top dead centre. It is the angle
// of [Scale.Angle] with the sign turned.
func (s Scale) Advance(figure units.Length) units.Angle { return -s.Angle(figure) }

// Position returns where the mark with that figure lies on the rim, measured
// along it from the top dead centre mark, positive ahead in the direction of
// rotation, half a girth at most either way.
func (s Scale) Position(figure units.Length) units.Length {
	return s.rim.Arc(s.Advance(figure))
}

// Figure returns the figure that stands at the pointer at a crank angle, 0 at
// top dead centre and positive after it. It may be negative or more than the
// girth; [Scale.OnRule] brings it on to a rule that goes once round.
func (s Scale) Figure(theta units.Angle) units.Length {
	return s.tdc + units.Length(s.figures.sign())*s.rim.Arc(theta)
}

// FigureAtAdvance returns the figure that stands at the pointer when the crank
// is the given angle before top dead centre.
func (s Scale) FigureAtAdvance(advance units.Angle) units.Length { return s.Figure(-advance) }

// OnRule returns the same place as a figure from 0 to the girth, as it stands
// on a rule that is laid once round the rim.
func (s Scale) OnRule(figure units.Length) units.Length {
	girth := s.rim.Girth()
	f := units.Length(math.Mod(float64(figure), float64(girth)))
	if f < 0 {
		f += girth
	}
	if f >= girth { // a hair below 0 rounds up to the girth
		return 0
	}
	return f
}

// wrap brings an angle to more than −180° and at most 180°.
func wrap(a units.Angle) units.Angle {
	const turn = float64(units.Turn)
	t := float64(a)
	if t > -turn/2 && t <= turn/2 {
		return a // as it is, to the last digit
	}
	t = math.Remainder(t, turn)
	if t <= -turn/2 {
		t += turn
	}
	return units.Angle(t)
}
