package threads

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A FullThread says which depth of thread counts as 100 %. Charts differ in
// it, so that 75 % of one is 83 % or 90 % of another, and seldom say so.
type FullThread uint8

// The bases of percentage. All three are the same for the rounded forms
// (Whitworth, British Association, cycle) and for the old flat ones.
const (
	// BasicThread is the overlap of bolt and nut by the basic profile, half of
	// major less minor: 5/8 H for ISO and Unified. A hole at the basic minor
	// diameter leaves 100 %.
	BasicThread FullThread = iota
	// BoltThread is the depth of the bolt with its rounded root, 17/24 H for
	// ISO and Unified: the basis of metric charts. A hole at the basic minor
	// diameter leaves 88 %.
	BoltThread
	// AmericanThread is 3/4 H for ISO and Unified, 0.6495 p, the depth of the
	// old American thread, which American charts have kept. A hole at the basic
	// minor diameter leaves 83 %.
	AmericanThread
)

// String returns the basis in words.
func (f FullThread) String() string {
	switch f {
	case BasicThread:
		return "of the basic overlap"
	case BoltThread:
		return "of the bolt's depth"
	case AmericanThread:
		return "of 3/4 H"
	}
	return "of an unknown depth"
}

// FullDepth returns the depth of thread that counts as 100 %, along the radius.
func (t Thread) FullDepth(full FullThread) units.Length {
	switch {
	case full == BoltThread && profile(t.form) == ISOForm:
		return ISOBoltForm.Depth(t.pitch)
	case full == AmericanThread && profile(t.form) == ISOForm:
		return SellersForm.Depth(t.pitch)
	}
	return (t.major - t.minor) / 2
}

// Engagement returns how much of the full depth of thread a hole leaves, as a
// number in which 1 is all of it:
//
//	(D − hole) / 2h   with D the major diameter, h the full depth.
//
// More than 1 means that the tap has to cut its own bore, and will break. The
// hole may be a drill or a worn bore measured across the crests. The error
// wraps units.ErrDomain for a hole not more than 0, and for one that leaves
// nothing.
//
// Source: Machinery's Handbook, 31st ed., p. 2155 (with AmericanThread).
func (t Thread) Engagement(hole units.Length, full FullThread) (float64, error) {
	switch {
	case t.pitch == 0:
		return 0, noThread()
	case !(hole > 0) || math.IsInf(float64(hole), 0):
		return 0, fmt.Errorf("hole %v: want more than 0 mm: %w", hole, units.ErrDomain)
	case hole >= t.major:
		return 0, fmt.Errorf("hole %v for %v: want less than %v, its major diameter: %w", hole, t, t.major, units.ErrDomain)
	}
	return t.engagement(hole, full), nil
}

// engagement is Engagement without the checks.
func (t Thread) engagement(hole units.Length, full FullThread) float64 {
	return float64((t.major - hole) / (2 * t.FullDepth(full)))
}

// HoleFor returns the hole that leaves the given engagement: the inverse of
// Engagement. The engagement is more than 0 and at most 1.
func (t Thread) HoleFor(engagement float64, full FullThread) (units.Length, error) {
	switch {
	case t.pitch == 0:
		return 0, noThread()
	case !(engagement > 0 && engagement <= 1):
		return 0, fmt.Errorf("engagement %.4g: want more than 0 and at most 1, as 0.75 for 75 %%: %w", engagement, units.ErrDomain)
	}
	return t.major - units.Length(2*engagement)*t.FullDepth(full), nil
}

func noThread() error {
	return fmt.Errorf("no thread: want one of Find, All or New: %w", units.ErrDomain)
}

// A TappingDrill is a drill for a tapped hole and the engagement it leaves.
type TappingDrill struct {
	Drill
	Engagement float64 // 1 is the full depth of the basis asked for
}

// TappingDrills returns the drills that can be tapped, nearest to the wanted
// engagement first. A drill can be tapped when its hole is no smaller than the
// basic minor diameter and smaller than the major. Drills not given means all
// of Drills.
//
// What to want: 75 % in most metals, of AmericanThread or a few points more of
// BoltThread; 60 % and less in steel that is hard to tap and for deep holes; a
// strength test breaks the bolt before a nut of 60 % strips (common practice,
// no source). Cast iron and aluminium stand up to more, as their threads are
// the first to go.
//
// A taper thread is taken at its gauge plane: the hole is for a taper tap run
// in without reaming, and larger than the core at the small end.
func TappingDrills(t Thread, want float64, full FullThread, drills ...Drill) ([]TappingDrill, error) {
	hole, err := t.HoleFor(want, full)
	if err != nil {
		return nil, err
	}
	if len(drills) == 0 {
		drills = Drills()
	}
	var fits []TappingDrill
	for _, d := range drills {
		if (d.diameter >= t.minor || near(d.diameter, t.minor)) && d.diameter < t.major {
			fits = append(fits, TappingDrill{d, t.engagement(d.diameter, full)})
		}
	}
	if len(fits) == 0 {
		return nil, fmt.Errorf("drills for %v: none of the %d lies between %v and %v: %w", t, len(drills), t.minor, t.major, units.ErrDomain)
	}
	slices.SortStableFunc(fits, func(a, b TappingDrill) int {
		return compareLengths(distance(a.diameter, hole), distance(b.diameter, hole))
	})
	return fits, nil
}

func distance(a, b units.Length) units.Length { return units.Length(math.Abs(float64(a - b))) }

// DieBlank returns the diameter to turn or choose for a rod that a die is to
// thread:
//
//	d − 0.1 p
//
// A die squeezes metal up into its crests, and a rod at the full diameter jams
// it. Of ISO metric threads the result lies within the limits of class 6g.
//
// Common practice, no source.
func DieBlank(t Thread) (units.Length, error) {
	if t.pitch == 0 {
		return 0, noThread()
	}
	return t.major - t.pitch/10, nil
}
