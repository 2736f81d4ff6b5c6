package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Range is what a diameter may be: from Min to Max, both allowed. A side
// without a limit is 0 below and an infinity above.
type Range struct {
	Min, Max units.Length
}

// Contains reports whether d lies in r, its ends included.
func (r Range) Contains(d units.Length) bool { return r.Min <= d && d <= r.Max }

// Width returns how far the ends lie apart: the tolerance.
func (r Range) Width() units.Length { return r.Max - r.Min }

// String writes the range for people.
func (r Range) String() string {
	switch {
	case math.IsInf(float64(r.Max), 1):
		return fmt.Sprintf("%v or more", r.Min)
	case r.Min == 0:
		return fmt.Sprintf("%v or less", r.Max)
	}
	return fmt.Sprintf("%v to %v", r.Min, r.Max)
}

// A Part is one half of a screw joint.
type Part uint8

// The parts.
const (
	Bolt Part = iota // external thread: bolt, screw, stud, plug
	Nut              // internal thread: nut, tapped hole
)

// String returns the part in a word.
func (p Part) String() string {
	if p == Nut {
		return "nut"
	}
	return "bolt"
}

// Limits are the limits of size of one half of a screw joint.
//
// Of a nut the major diameter has no upper limit, since the tap may run out
// over the crests; of a bolt the minor has no lower one, save in ISO 965 and
// BS 93, where the root is limited too.
type Limits struct {
	Thread                  Thread
	Part                    Part
	Class                   string // as the standard names it
	Major, Effective, Minor Range
	Source                  string
	// FromMemory says that a figure or the formula behind these limits was
	// not found in print.
	FromMemory bool
}

// String writes the limits on one line.
func (l Limits) String() string {
	return fmt.Sprintf("%v %v %s: major %v; effective %v; minor %v", l.Thread, l.Part, l.Class, l.Major, l.Effective, l.Minor)
}

// BoltLimits returns the limits of size of a bolt of the class:
//
//	ISO metric, plugs      6g, 6h, 5g6g ...     ISO 965-1, from its tables
//	Unified                1A, 2A, 3A           ASME B1.1, from its formulas
//	BA                     close, normal        BS 93:1951
//	Whitworth, BSF         close, medium, free  BS 84:1956, from memory
//
// The length of engagement is the normal one: for Unified coarse and fine and
// for Whitworth the diameter, for other Unified series nine pitches. For a
// thread made by New the series is not known and the form decides. The error
// wraps units.ErrDomain for a class or a size that the standard does not have.
func (t Thread) BoltLimits(class string) (Limits, error) { return t.limits(Bolt, class, 0) }

// NutLimits returns the limits of size of a nut, or of a tapped hole, of the
// class: 6H, 5H6H, 6G and so on for ISO metric; 1B, 2B, 3B for Unified; normal
// for BA, which has one class of nut; close, medium, normal for Whitworth and
// BSF. See BoltLimits.
func (t Thread) NutLimits(class string) (Limits, error) { return t.limits(Nut, class, 0) }

// LimitsOver returns the limits where the length of engagement is not the
// normal one. Only the formulas of ASME B1.1 and BS 84 have it in them; for
// other series the error wraps units.ErrDomain.
func (t Thread) LimitsOver(p Part, class string, engagement units.Length) (Limits, error) {
	if !(engagement > 0) || math.IsInf(float64(engagement), 0) {
		return Limits{}, fmt.Errorf("length of engagement %v: want more than 0 mm: %w", engagement, units.ErrDomain)
	}
	return t.limits(p, class, engagement)
}

// limits returns the limits by the system of the thread, over the normal
// length of engagement if that is 0.
func (t Thread) limits(p Part, class string, engagement units.Length) (Limits, error) {
	switch system := t.system(); {
	case p > Nut:
		return Limits{}, fmt.Errorf("part %d: want Bolt or Nut: %w", p, units.ErrDomain)
	case engagement != 0 && (system == BAForm || system == ISOForm):
		return Limits{}, fmt.Errorf("%v: its limits do not depend on the length of engagement: %w", t, units.ErrDomain)
	case system == ISOForm:
		return t.isoLimits(p, class)
	case system == UnifiedForm:
		return t.unifiedLimits(p, class, engagement)
	case system == BAForm:
		return t.baLimits(p, class)
	case system == WhitworthForm:
		return t.whitworthLimits(p, class, engagement)
	}
	return Limits{}, fmt.Errorf("%v: no limits of size are known here for %s: %w", t, t.kind(), units.ErrDomain)
}

// system returns the form whose system of limits the thread is under, 0 for
// none. Pipe threads have the Whitworth form and limits of their own; the
// trade lists have none.
func (t Thread) system() Form {
	switch t.series {
	case BSPParallel, BSPTaper, NPT, Brass, ME, Cycle20Whitworth, USS:
		return 0
	}
	switch t.form {
	case ISOForm, UnifiedForm, BAForm, WhitworthForm:
		return t.form
	}
	return 0
}

func (t Thread) kind() string {
	if t.series == Special {
		return fmt.Sprintf("the form %v", t.form)
	}
	return t.series.Name()
}

// up returns a range from min to min+tolerance, down one from max-tolerance.
func up(min, tolerance units.Length) Range   { return Range{min, min + tolerance} }
func down(max, tolerance units.Length) Range { return Range{max - tolerance, max} }

func orMore(min units.Length) Range { return Range{min, units.Length(math.Inf(1))} }
func orLess(max units.Length) Range { return Range{0, max} }
