package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A WornHole is a tapped hole that has lost some of its thread.
type WornHole struct {
	Bore   units.Length // across what is left of the crests
	Deep   units.Length // length of thread in the hole; 0 if not measured
	ToEdge units.Length // metal from the bore to the nearest edge or the next hole; 0 if not measured
}

func (h WornHole) check(t Thread) error {
	switch {
	case t.pitch == 0:
		return noThread()
	case !(h.Bore > 0) || math.IsInf(float64(h.Bore), 0):
		return fmt.Errorf("bore %v: want more than 0 mm: %w", h.Bore, units.ErrDomain)
	case !(h.Deep >= 0) || math.IsInf(float64(h.Deep), 0):
		return fmt.Errorf("length of thread %v: want 0 mm or more: %w", h.Deep, units.ErrDomain)
	case !(h.ToEdge >= 0) || math.IsInf(float64(h.ToEdge), 0):
		return fmt.Errorf("metal to the edge %v: want 0 mm or more: %w", h.ToEdge, units.ErrDomain)
	}
	return nil
}

// EngagementWith returns how much of the full depth of thread a stud of the
// measured diameter over its crests finds in a hole of the measured bore: as
// Engagement, with the stud as it is and not as it should be. It is 0 where
// the stud passes through. The error wraps units.ErrDomain for a size not more
// than 0 mm.
func (t Thread) EngagementWith(stud, bore units.Length, full FullThread) (float64, error) {
	if err := (WornHole{Bore: bore}).check(t); err != nil {
		return 0, err
	}
	if !(stud > 0) || math.IsInf(float64(stud), 0) {
		return 0, fmt.Errorf("stud %v: want more than 0 mm: %w", stud, units.ErrDomain)
	}
	if stud <= bore {
		return 0, nil // no thread meets any other
	}
	return float64((stud - bore) / (2 * t.FullDepth(full))), nil
}

// Joint returns the joint of a stud, measured over its crests, in the worn hole,
// to ask what it will bear before it strips: see Joint.Loads. All else is taken
// at basic size and the metal as sound, so the answer is the most that can be
// hoped for; a hole that has torn once is weaker. The error wraps
// units.ErrDomain for a stud that the hole no longer holds.
func (h WornHole) Joint(t Thread, stud units.Length) (Joint, error) {
	if err := h.check(t); err != nil {
		return Joint{}, err
	}
	if !(stud > h.Bore) || math.IsInf(float64(stud), 0) {
		return Joint{}, fmt.Errorf("stud %v in a hole of %v: want a stud that is larger: %w", stud, h.Bore, units.ErrDomain)
	}
	bolt, nut := t.BasicLimits(Bolt), t.BasicLimits(Nut)
	bolt.Major, nut.Minor = Range{stud, stud}, Range{h.Bore, h.Bore}
	return NewJoint(bolt, nut)
}

// EdgeWall returns the metal that is left between a thread of the given major
// diameter and an edge, when the metal was measured from a bore on the same
// centre:
//
//	wall = metal − (major − bore)/2
//
// Negative means that the thread breaks through. The same sum serves for the
// wall between two holes, with the metal between their bores.
func EdgeWall(metal, bore, major units.Length) units.Length {
	return metal - (major-bore)/2
}
