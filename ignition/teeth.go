package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// mostTeeth bounds what is taken for a toothed wheel; no ignition drive comes
// near it.
const mostTeeth = 1000

// A Toothed drive can be put together only in whole steps: a chain a link
// along, gears a tooth over, a wheel with some keyways, a coupling with holes.
// Make one with [NewToothed] or [NewVernier].
type Toothed struct {
	drive Drive
	first int // places in one turn of the shaft
	other int // places of the second row of a vernier coupling, or 1
}

// NewToothed returns the drive whose shaft can be set over in the given number
// of places to a turn of the shaft: the teeth of its wheel.
//
// Setting a chain or gear over by one tooth moves the shaft by 360° over the
// teeth of the shaft's wheel, which is the same at the crank as 360° over the
// teeth of the crank's wheel. The error is [units.ErrDomain] for fewer than 1
// place or more than 1000.
func NewToothed(drive Drive, places int) (Toothed, error) { return NewVernier(drive, places, 1) }

// NewVernier returns the drive of a coupling with two rows of teeth or holes
// of unlike number, which are set over one against the other: 19 and 20 teeth
// give steps of 360°/380 at the shaft, for a tooth forward on one side and a
// tooth back on the other. The error is [units.ErrDomain] for fewer than 1
// place in a row or more than 1000.
//
// Source: counting, the least common multiple of the two rows.
func NewVernier(drive Drive, first, other int) (Toothed, error) {
	for _, n := range [...]int{first, other} {
		if n < 1 || n > mostTeeth {
			return Toothed{}, fmt.Errorf("%d places in a turn: want from 1 to %d: %w", n, mostTeeth, units.ErrDomain)
		}
	}
	return Toothed{drive, first, other}, nil
}

// Places returns how many different settings there are in one turn of the
// shaft: the teeth of a plain wheel, the least common multiple of the two rows
// of a vernier coupling.
func (w Toothed) Places() int { return w.first / gcd(w.first, w.other) * w.other }

// Step returns the least change the drive allows, in degrees of crank.
func (w Toothed) Step() units.Angle {
	return w.drive.Crank(units.Turn / units.Angle(w.Places()))
}

// A Step is one of the settings of a [Toothed] drive.
type Step struct {
	Shift units.Angle // change of advance at the crank; positive is more advance
	Teeth int         // teeth to set the shaft forward on the only or first row; negative: back
	Other int         // the same on the second row of a vernier coupling
}

// String says how many teeth to set the shaft over and what it brings.
func (s Step) String() string {
	if s.Other != 0 {
		return fmt.Sprintf("%s on the first row and %s on the other: %s", teeth(s.Teeth), teeth(s.Other), change(s.Shift))
	}
	return fmt.Sprintf("%s: %s", teeth(s.Teeth), change(s.Shift))
}

func teeth(n int) string {
	switch {
	case n == 0:
		return "as it is"
	case n == 1:
		return "1 tooth forward"
	case n == -1:
		return "1 tooth back"
	case n < 0:
		return fmt.Sprintf("%d teeth back", -n)
	}
	return fmt.Sprintf("%d teeth forward", n)
}

func change(shift units.Angle) string {
	switch {
	case shift > 0:
		return fmt.Sprintf("%.2f° earlier", shift.Degrees())
	case shift < 0:
		return fmt.Sprintf("%.2f° later", -shift.Degrees())
	}
	return "no change"
}

// Reach returns the two settings on either side of a wanted change of advance
// at the crank, positive for more advance: the nearest that is not more and the
// nearest that is not less. They are the same where a whole number of teeth
// gives the change exactly. The error is [units.ErrDomain] for a change of more
// than one turn of the shaft.
func (w Toothed) Reach(shift units.Angle) (below, above Step, err error) {
	if turn := w.drive.Crank(units.Turn); !(math.Abs(float64(shift)) <= float64(turn)) {
		return Step{}, Step{}, fmt.Errorf("change of %v: want %v at most, one turn of the shaft: %w", shift, turn, units.ErrDomain)
	}
	steps := float64(shift / w.Step())
	lo, hi := int(math.Floor(steps)), int(math.Ceil(steps))
	if whole := math.Round(steps); math.Abs(steps-whole) < 1e-9 { // rounding, not teeth
		lo, hi = int(whole), int(whole)
	}
	return w.step(lo), w.step(hi), nil
}

// Timings returns every setting whose advance lies in a range, least advance
// first, when the drive gives the advance present as it stands. The error is
// [units.ErrDomain] for a range that is empty or wider than one turn of the
// shaft, within which all settings come round.
func (w Toothed) Timings(present, least, most units.Angle) ([]Step, error) {
	turn := w.drive.Crank(units.Turn)
	if !(least <= most) || !(most-least <= turn) || !(math.Abs(float64(present-least)) <= float64(turn)) {
		return nil, fmt.Errorf("advance from %v to %v: want a range of %v at most, one turn of the shaft, and near the present %v: %w", least, most, turn, present, units.ErrDomain)
	}
	const hair = 1e-9
	step := w.Step()
	from := int(math.Ceil(float64((least-present)/step) - hair))
	to := int(math.Floor(float64((most-present)/step) + hair))
	var out []Step
	for n := from; n <= to; n++ {
		out = append(out, w.step(n))
	}
	return out, nil
}

// step returns the setting n of the least steps away. On a vernier coupling it
// looks for the teeth with the least of them on either row:
//
//	a/first + b/other = n/places
//
// Source: counting; the two rows of a vernier coupling are common practice, no
// source.
func (w Toothed) step(n int) Step {
	s := Step{Shift: units.Angle(n) * w.Step(), Teeth: n}
	if w.other == 1 {
		return s
	}
	places := w.Places()
	onFirst, onOther := places/w.first, places/w.other // steps for one tooth
	best := math.MaxInt
	for a := -w.first; a <= w.first; a++ {
		rest := n - a*onFirst
		if rest%onOther != 0 {
			continue
		}
		b := rest / onOther
		if size := abs(a) + abs(b); size < best {
			best, s.Teeth, s.Other = size, a, b
		}
	}
	return s
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}
