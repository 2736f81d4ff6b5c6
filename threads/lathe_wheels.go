package threads

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"example.com/benchsums/units"
)

// A Lathe is what change wheels are reckoned for: the pitch of its leadscrew
// and the wheels to hand. NewLathe makes one.
type Lathe struct {
	leadscrew units.Length
	wheels    []int   // sorted, each as often as there are of it
	stud      float64 // turns of the first driver for one of the spindle
}

// NewLathe returns a lathe with a leadscrew of the given pitch and a wheel for
// each number of teeth; two wheels alike are given twice. The error wraps
// units.ErrDomain for a pitch not more than 0, for fewer than two wheels or
// more than 60, and for a wheel of fewer than 10 teeth or more than 1000.
func NewLathe(leadscrew units.Length, wheels ...int) (Lathe, error) {
	switch {
	case !(leadscrew > 0) || math.IsInf(float64(leadscrew), 0):
		return Lathe{}, fmt.Errorf("leadscrew pitch %v: want more than 0 mm: %w", leadscrew, units.ErrDomain)
	case len(wheels) < 2 || len(wheels) > 60:
		return Lathe{}, fmt.Errorf("%d change wheels: want 2 to 60: %w", len(wheels), units.ErrDomain)
	}
	for _, w := range wheels {
		if w < 10 || w > 1000 {
			return Lathe{}, fmt.Errorf("change wheel of %d teeth: want 10 to 1000: %w", w, units.ErrDomain)
		}
	}
	sorted := slices.Clone(wheels)
	slices.Sort(sorted)
	return Lathe{leadscrew, sorted, 1}, nil
}

// WithStud returns the lathe with a fixed gear between the spindle and the
// stud that carries the first driver: stud turns for spindle turns, 1 and 2
// where the stud turns once for two turns of the spindle. Without it they turn
// alike. The error wraps units.ErrDomain unless both are more than 0.
func (l Lathe) WithStud(stud, spindle int) (Lathe, error) {
	if stud < 1 || spindle < 1 {
		return Lathe{}, fmt.Errorf("stud %d turns to %d of the spindle: want 1 or more of each: %w", stud, spindle, units.ErrDomain)
	}
	l.stud = float64(stud) / float64(spindle)
	return l, nil
}

// clearTeeth is by how many teeth two wheels in mesh must exceed a third that
// shares a stud with one of them, for the third to clear the other's boss
// (common practice, no source).
const clearTeeth = 15

// A Train is a set of change wheels between spindle and leadscrew: the first
// driver turns with the spindle, the last driven wheel is on the leadscrew.
type Train struct {
	wheels         [4]int // driver, driven, driver, driven; 0 for none
	lead, leadWant units.Length
}

// Trains returns the trains that cut the given lead, or one that differs from
// it by no more than the part within (0 for exact trains only, 0.001 for one
// part in a thousand), nearest first and of equals the simplest. The lead of a
// thread of one start is its pitch.
//
// A train is one driver and one driven wheel, with an idler of any size
// between them, or two of each with the middle two on one stud; those that
// cannot be meshed, because a wheel would foul the next one's stud, are left
// out. A ratio that no train reaches gives none and no error; the error wraps
// units.ErrDomain for a lead not more than 0 and a part not from 0 to 0.1.
//
//	lead = leadscrew × stud × (driver/driven) × (driver/driven)
//
// A wheel of 127 teeth turns inches to millimetres exactly, as 5 in are
// 127 mm; 63 comes within 125 parts in a million.
func (l Lathe) Trains(lead units.Length, within float64) ([]Train, error) {
	switch {
	case l.leadscrew == 0:
		return nil, fmt.Errorf("no lathe: want one of NewLathe: %w", units.ErrDomain)
	case !(lead > 0) || math.IsInf(float64(lead), 0):
		return nil, fmt.Errorf("lead %v: want more than 0 mm: %w", lead, units.ErrDomain)
	case !(within >= 0 && within <= 0.1):
		return nil, fmt.Errorf("trains within %g of the lead: want 0 to 0.1: %w", within, units.ErrDomain)
	}
	found := l.simple(lead, within+exact)
	found = append(found, l.compound(lead, within+exact)...)
	slices.SortStableFunc(found, Train.compare)
	return found, nil
}

// exact is the relative difference that rounding can leave of none.
const exact = 1e-12

// kinds returns each kind of wheel once.
func (l Lathe) kinds() []int { return slices.Compact(slices.Clone(l.wheels)) }

// has reports whether there are enough wheels for the train.
func (l Lathe) has(wheels [4]int) bool {
	for i, w := range wheels {
		if w == 0 || slices.Contains(wheels[:i], w) {
			continue
		}
		need := 0
		for _, v := range wheels {
			if v == w {
				need++
			}
		}
		at, _ := slices.BinarySearch(l.wheels, w)
		if at+need > len(l.wheels) || l.wheels[at+need-1] != w {
			return false
		}
	}
	return true
}

// train returns the train of the wheels when it is near enough.
func (l Lathe) train(lead units.Length, within float64, wheels [4]int) (Train, bool) {
	ratio := l.stud * float64(wheels[0]) / float64(wheels[1])
	if wheels[2] != 0 {
		ratio *= float64(wheels[2]) / float64(wheels[3])
	}
	t := Train{wheels, l.leadscrew * units.Length(ratio), lead}
	return t, math.Abs(t.RelativeError()) <= within
}

func (l Lathe) simple(lead units.Length, within float64) []Train {
	var found []Train
	for _, a := range l.kinds() {
		for _, b := range l.kinds() {
			if t, ok := l.train(lead, within, [4]int{a, b}); ok && l.has(t.wheels) {
				found = append(found, t)
			}
		}
	}
	return found
}

// compound finds the trains of two pairs. Of the four ways to place the same
// wheels the first that meshes is kept.
func (l Lathe) compound(lead units.Length, within float64) []Train {
	var found []Train
	kinds := l.kinds()
	for i, a := range kinds {
		for _, c := range kinds[i:] {
			for j, b := range kinds {
				for _, d := range kinds[j:] {
					if a == b || a == d || c == b || c == d { // a pair alike is a simple train
						continue
					}
					t, ok := l.train(lead, within, [4]int{a, b, c, d})
					if ok && l.has(t.wheels) && t.mesh() {
						found = append(found, t)
					}
				}
			}
		}
	}
	return found
}

// mesh places the wheels so that none fouls the next one's stud, and reports
// whether they can be.
func (t *Train) mesh() bool {
	a, b, c, d := t.wheels[0], t.wheels[1], t.wheels[2], t.wheels[3]
	for _, w := range [...][4]int{{a, b, c, d}, {c, b, a, d}, {a, d, c, b}, {c, d, a, b}} {
		if w[0]+w[1] >= w[2]+clearTeeth && w[2]+w[3] >= w[1]+clearTeeth {
			t.wheels = w
			return true
		}
	}
	return false
}

// compare orders trains: the nearest first, then the fewest wheels, then the
// fewest teeth.
func (t Train) compare(u Train) int {
	return cmp.Or(
		cmp.Compare(t.missed(), u.missed()),
		cmp.Compare(len(t.Drivers()), len(u.Drivers())),
		cmp.Compare(t.teeth(), u.teeth()),
		slices.Compare(t.wheels[:], u.wheels[:]))
}

// missed is the size of the error, with rounding taken for none.
func (t Train) missed() float64 {
	if t.Exact() {
		return 0
	}
	return math.Round(math.Abs(t.RelativeError())/exact) * exact
}

func (t Train) teeth() int { return t.wheels[0] + t.wheels[1] + t.wheels[2] + t.wheels[3] }

// Drivers returns the teeth of the driving wheels, from the spindle on.
func (t Train) Drivers() []int { return t.every(0) }

// Driven returns the teeth of the driven wheels, the leadscrew's last.
func (t Train) Driven() []int { return t.every(1) }

func (t Train) every(from int) []int {
	if t.wheels[2] == 0 {
		return []int{t.wheels[from]}
	}
	return []int{t.wheels[from], t.wheels[from+2]}
}

// Lead returns the lead the train cuts.
func (t Train) Lead() units.Length { return t.lead }

// Exact reports whether the train cuts the very lead asked for.
func (t Train) Exact() bool { return math.Abs(t.RelativeError()) <= exact }

// RelativeError returns by what part the lead of the train is greater than the
// one asked for.
func (t Train) RelativeError() float64 {
	if t.leadWant == 0 {
		return 0
	}
	return float64((t.lead - t.leadWant) / t.leadWant)
}

// ErrorOver returns how far the thread runs ahead of a true one over a length
// of it: positive when the lead is too great.
func (t Train) ErrorOver(length units.Length) units.Length {
	return length * units.Length(t.RelativeError())
}

// String writes the train as it is set up: "40/50 x 45/60".
func (t Train) String() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%d/%d", t.wheels[0], t.wheels[1])
	if t.wheels[2] != 0 {
		fmt.Fprintf(&b, " x %d/%d", t.wheels[2], t.wheels[3])
	}
	return b.String()
}
