package ignition

import (
	"fmt"

	"example.com/benchsums/units"
)

// A GapAnswer is the gap that would give a wanted timing.
type GapAnswer struct {
	Gap    units.Result[units.Length] // by the line carried on, where need be, past the gaps tried
	Beyond bool                       // it lies outside the gaps tried, where the line is a guess
	Usual  Fit                        // how it lies to the gaps in use
}

// Fit says how a figure lies to a range, its uncertainty considered.
type Fit int

// How a figure lies to a range.
const (
	Doubtful Fit = iota // within its uncertainty it may be inside or outside
	Inside              // surely inside
	Below               // surely below
	Above               // surely above
)

// String returns "inside", "below", "above" or "doubtful".
func (f Fit) String() string {
	switch f {
	case Inside:
		return "inside"
	case Below:
		return "below"
	case Above:
		return "above"
	}
	return "doubtful"
}

// fitOf compares a reading with a range, two standard uncertainties either way.
func fitOf[Q units.Quantity](r units.Reading[Q], least, most Q) Fit {
	lo, hi := r.Value-2*r.Std, r.Value+2*r.Std
	switch {
	case lo >= least && hi <= most:
		return Inside
	case hi < least:
		return Below
	case lo > most:
		return Above
	}
	return Doubtful
}

// GapFor returns the gap at which the contacts would open at the wanted
// advance. It is an answer to look at, not to set: a gap is set to its maker's
// figure, or where that is lost to a usual one, and the timing is moved by the
// drive, the plate or the lever. In a magneto a wider gap also breaks the
// circuit at another place of the armature, and the spark gets weak.
//
// The line is carried on past the gaps tried where need be, and Beyond says so.
// The error is [units.ErrDomain] when the slope is not clear of its own
// uncertainty.
func (g GapEffect) GapFor(wanted units.Reading[units.Angle]) (GapAnswer, error) {
	slope, err := g.Per(units.Millimetre)
	if err != nil {
		return GapAnswer{}, err
	}
	if !(slope.Value > 2*slope.Std) {
		return GapAnswer{}, fmt.Errorf("the gap makes %.2f° for each 0.1 mm with a standard uncertainty of %.2f°: want gaps further apart before asking which gap gives a timing: %w",
			slope.Value.Degrees()/10, slope.Std.Degrees()/10, units.ErrDomain)
	}
	var a units.Angle
	var e units.Length
	gap, err := propagate(g, func(l gapLine) units.Length { return l.gapFor(a) - e },
		units.VaryReading("wanted advance", &a, wanted), units.Vary(newSetting, &e, g.setting))
	if err != nil {
		return GapAnswer{}, err
	}
	least, most := g.Tried()
	usualLeast, usualMost := UsualGap()
	return GapAnswer{gap, !(gap.Value >= least && gap.Value <= most), fitOf(gap.Reading(), usualLeast, usualMost)}, nil
}

// String says in one sentence whether the gap can give the timing.
func (a GapAnswer) String() string {
	least, most := UsualGap()
	gap := fmt.Sprintf("a gap of %.2f mm (%.0f thou), u %.2f mm", a.Gap.Value.Millimetres(), a.Gap.Value.Thou(), a.Gap.Std.Millimetres())
	usual := fmt.Sprintf("the usual %.2f to %.2f mm (%.0f to %.0f thou)", least.Millimetres(), most.Millimetres(), least.Thou(), most.Thou())
	switch {
	case a.Gap.Value <= 0:
		return "no gap gives that timing: set the maker's gap and move the drive"
	case a.Usual == Below, a.Usual == Above:
		return gap + ", lies " + a.Usual.String() + " " + usual + ": not to be had by the gap; set the maker's gap and move the drive"
	case a.Usual == Doubtful:
		return gap + ", may lie outside " + usual + ": set the maker's gap and move the drive"
	}
	return gap + ", lies inside " + usual + "; the maker's gap comes first all the same"
}
