package threads

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A RepairKind is a way to save a tapped hole.
type RepairKind uint8

// The ways.
const (
	SteppedStud RepairKind = iota // a larger thread in the casting, the old one at the other end of the stud
	WireInsert                    // a coil of wire in a larger thread, the old stud inside it
	SolidBush                     // a screwed bush, the old stud inside it
)

// String returns the way in words.
func (k RepairKind) String() string {
	switch k {
	case SteppedStud:
		return "stepped stud"
	case WireInsert:
		return "wire insert"
	case SolidBush:
		return "screwed bush"
	}
	return "unknown repair"
}

// A Repair is a way to save a worn hole, with the thread that has to be tapped
// in the casting.
type Repair struct {
	Kind   RepairKind
	Thread Thread
	// Sound is how much of the depth of the new thread lies in metal that the
	// old one never reached: 1 is all of it.
	Sound float64
	// ToEdge is the metal left between the new thread and the edge, negative
	// where it breaks through. It says nothing unless EdgeKnown.
	ToEdge    units.Length
	EdgeKnown bool
}

// String writes the repair in a line.
func (r Repair) String() string {
	return fmt.Sprintf("%v: tap %v", r.Kind, r.Thread)
}

// InsertThread returns the thread to tap for a wire insert that gives thread t
// inside it:
//
//	D + 2 (D − d₂), of the same form and pitch
//
// which for ISO metric and Unified is D + 1.2990 p, the thread of DIN 8140 and
// ASME B18.29.1 (from memory). For other forms it is the same construction and
// no standard: ask whoever makes the insert. The error wraps units.ErrDomain
// for a taper thread or none.
func InsertThread(t Thread) (Thread, error) {
	switch {
	case t.pitch == 0:
		return Thread{}, noThread()
	case t.Taper() != 0:
		return Thread{}, fmt.Errorf("wire insert for %v: want a parallel thread: %w", t, units.ErrDomain)
	}
	return New(t.form, t.major+2*(t.major-t.effective), t.pitch)
}

// Repairs returns what can be done about a worn hole of thread t, the least
// metal taken first: a stepped stud with each of the next three sizes of the
// same series, a wire insert, and a screwed bush with the smallest thread of
// the series that leaves it as strong as the stud (see Bush.Strength).
//
// A thread that stands in no series has no stepped stud and no bush here. The
// sums do not know the casting: judge the metal at the edge, and what the hole
// opens into.
func Repairs(t Thread, hole WornHole) ([]Repair, error) {
	if err := hole.check(t); err != nil {
		return nil, err
	}
	larger := largerThan(t)
	var all []Repair
	for i, u := range larger {
		if i < 3 {
			all = append(all, hole.repair(SteppedStud, t, u))
		}
	}
	if u, err := InsertThread(t); err == nil {
		all = append(all, hole.repair(WireInsert, t, u))
	}
	for _, u := range larger {
		if b, err := NewBush(u, t); err == nil && b.Strength() >= 1 {
			all = append(all, hole.repair(SolidBush, t, u))
			break
		}
	}
	slices.SortStableFunc(all, func(a, b Repair) int { return compareLengths(a.Thread.major, b.Thread.major) })
	return all, nil
}

// largerThan returns the threads of the series of t that are larger, smallest
// first, of each diameter the one with the pitch nearest to that of t.
func largerThan(t Thread) []Thread {
	var all []Thread
	for u := range t.series.All() {
		if u.major > t.major {
			all = append(all, u)
		}
	}
	slices.SortStableFunc(all, func(a, b Thread) int {
		if c := compareLengths(a.major, b.major); c != 0 {
			return c
		}
		return compareLengths(distance(a.pitch, t.pitch), distance(b.pitch, t.pitch))
	})
	return slices.CompactFunc(all, func(a, b Thread) bool { return a.major == b.major })
}

// repair reckons one way of repair with thread u in the casting.
func (h WornHole) repair(kind RepairKind, t, u Thread) Repair {
	inside := max(u.minor, h.Bore, t.major) // where sound metal and new thread both begin
	r := Repair{Kind: kind, Thread: u}
	if u.major > inside {
		r.Sound = float64((u.major - inside) / (u.major - u.minor))
	}
	if h.ToEdge > 0 {
		r.ToEdge, r.EdgeKnown = EdgeWall(h.ToEdge, h.Bore, u.major), true
	}
	return r
}
