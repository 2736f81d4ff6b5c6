package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// What every job of moving the spark begins and ends with.
const (
	stepSafe     = "Take the plug out, earth its lead, and shut the fuel off: a crank turned by hand can fire."
	stepGap      = "Set the contact gap first, for it moves the timing; put the lever where the timing is stated, and leave both."
	stepProof    = "Turn the engine forward to the spark again, twice, and read the rule where the contacts open: that figure is the timing, whatever was set."
	stepRetarded = "Look at full retard as well before starting by hand: both ends of the lever have moved."
)

// stepBring brings the crank to the mark.
func stepBring(mark Mark, figure units.Length) string {
	return fmt.Sprintf("Bring the crank to %s on the rule, %s: %s.", metricAndInch(figure, 1), beforeTop(mark.Advance), mark.Approach())
}

// metricAndInch writes a length in millimetres with the decimals given, and in
// inches beside it: "80.4 mm (3.165 in)".
func metricAndInch(l units.Length, decimals int) string {
	return fmt.Sprintf("%.*f mm (%.3f in)", decimals, l.Millimetres(), l.Inches())
}

// beforeTop writes an advance in words.
func beforeTop(advance units.Angle) string {
	if advance < 0 {
		return fmt.Sprintf("%.1f° after top dead centre", -advance.Degrees())
	}
	return fmt.Sprintf("%.1f° before top dead centre", advance.Degrees())
}

// Steps returns what to do, in order, where the wheel that drives the breaker or
// the magneto sits on a plain taper and can be put anywhere: with the mark that
// the crank is to stand at when the contacts just open, and the figure of the
// rule there. It ends in a check, because the wheel moves when it is tightened.
// For contacts on a plate in slots see [Plate.Steps], for a drive that moves by
// whole teeth [Toothed.Steps].
func (r Retiming) Steps(mark Mark, figure units.Length) []string {
	return []string{
		stepSafe,
		stepGap,
		"Scribe a line across wheel and shaft end, so that the old place can be found again.",
		"Draw the wheel off its taper with a puller; do not strike the shaft, and stand clear when it lets go.",
		stepBring(mark, figure),
		fmt.Sprintf("Hold the wheel back so that the pulling run of the drive is tight, and turn the driven shaft %s until the contacts just open.", r.forward()),
		"Tighten the wheel without letting either move.",
		stepProof,
		stepRetarded,
	}
}

// forward tells how far the shaft will go.
func (r Retiming) forward() string {
	if r.Change.Value < 0 {
		return fmt.Sprintf("back by more than %.1f° and then forward, the way it runs,", -r.Shaft.Value.Degrees())
	}
	return fmt.Sprintf("forward, the way it runs (about %.1f°),", r.Shaft.Value.Degrees())
}

// Steps returns what to do, in order, where the timing is set by turning the
// plate that carries the contacts: how far along its slots and which way, with
// the mark that the crank is to stand at when the contacts just open and the
// figure of the rule there. The travel is that of [Plate.Travel]; the buzzer
// decides, not the rule, and so does the check at the end, because plates creep
// when they are tightened.
func (p Plate) Steps(r Retiming, mark Mark, figure units.Length) []string {
	return []string{
		stepSafe,
		stepGap,
		"Scribe a line across plate and housing, so that the old place can be found again.",
		stepBring(mark, figure),
		p.turn(r.Change.Value),
		"If the plate comes to the end of its slots first, put it back to the middle of them and slip the drive for the whole of the change.",
		"Tighten the plate without letting it turn, and try the gap again: tightening can shift it.",
		stepProof,
		stepRetarded,
	}
}

// turn tells how to turn the plate, ending against the shaft, on contacts that
// part.
func (p Plate) turn(change units.Angle) string {
	travel, way := p.Travel(change)
	far := metricAndInch(travel, 2)
	if way == WithRotation {
		return fmt.Sprintf("Slacken the plate and turn it with the turning of the shaft, by rather more than %s along its slots, so that the contacts close; then back against it until they just open.", far)
	}
	return fmt.Sprintf("Slacken the plate and turn it against the turning of the shaft, about %s along its slots, until the contacts just open.", far)
}

// Steps returns what to do, in order, where the drive moves by whole teeth: what
// each of the two settings nearest to the wanted timing gives, the nearer first,
// how to set over, and a check, with the mark of the wanted timing and the
// figure of the rule there. What the teeth leave over is for the plate or the
// lever, not for the gap.
//
// The error is [units.ErrDomain] for a change of more than one turn of the
// shaft.
func (w Toothed) Steps(r Retiming, mark Mark, figure units.Length) ([]string, error) {
	near, far, err := w.Reach(r.Change.Value)
	if err != nil {
		return nil, err
	}
	if math.Abs(float64(far.Shift-r.Change.Value)) < math.Abs(float64(near.Shift-r.Change.Value)) {
		near, far = far, near
	}
	steps := []string{stepSafe, stepGap,
		fmt.Sprintf("The drive moves by whole teeth, %.2f° of crank a step. Nearest to the timing wanted: %s.", w.Step().Degrees(), r.gives(near))}
	if far != near {
		steps = append(steps, fmt.Sprintf("Next to it, on the other side: %s. Where both are as far off take the later, for too early a spark knocks and kicks back.", r.gives(far)))
	}
	return append(steps,
		"Mark the teeth that are together now on both wheels, or wheel and chain, so that the old place can be found again.",
		"Hold the crank where it is, take the chain off or the wheel out of mesh, turn the driven shaft by as many teeth as the setting says, forward being the way it runs, and put the drive together again; count the teeth from the mark.",
		stepProof,
		fmt.Sprintf("The timing wanted, %s, stands at %s on the rule; what the teeth leave over is for the plate or the lever, not for the gap.", beforeTop(mark.Advance), metricAndInch(figure, 1)),
		stepRetarded), nil
}

// gives says what timing a setting gives, and how it lies to the one wanted.
func (r Retiming) gives(s Step) string {
	off := s.Shift - r.Change.Value
	how := fmt.Sprintf("%.1f° too early", off.Degrees())
	switch {
	case math.Abs(float64(off)) <= max(2*float64(r.Change.Std), float64(units.Degree)/20):
		how = "as wanted within its uncertainty"
	case off < 0:
		how = fmt.Sprintf("%.1f° too late", -off.Degrees())
	}
	over := teeth(s.Teeth)
	if s.Other != 0 {
		over = fmt.Sprintf("%s on the first row and %s on the other", over, teeth(s.Other))
	}
	return fmt.Sprintf("%s gives %s, %s", over, beforeTop(r.Present.Value+s.Shift), how)
}
