package threads

import (
	"fmt"
	"iter"
	"strings"

	"example.com/benchsums/units"
)

// A Grade is a strength of bolt: an ISO property class, an SAE grade or a
// British letter, in a range of sizes.
type Grade struct {
	row *gradeRow
}

// Name returns the grade as it is written: "8.8", "SAE 5", "British T".
func (g Grade) Name() string { return g.data().name }

// Tensile returns the least tensile strength.
func (g Grade) Tensile() units.Pressure { return units.Pressure(g.data().tensile) * g.data().unit }

// Yield returns the least yield strength, false where the source has none.
func (g Grade) Yield() (units.Pressure, bool) { return g.optional(g.data().yield) }

// Proof returns the proof stress, false where the source has none.
func (g Grade) Proof() (units.Pressure, bool) { return g.optional(g.data().proof) }

func (g Grade) optional(v float64) (units.Pressure, bool) {
	return units.Pressure(v) * g.data().unit, v != gap
}

// Sizes returns the major diameters for which the grade has these figures,
// more than the first and up to the second.
func (g Grade) Sizes() (over, upTo units.Length) { return g.data().over, g.data().upTo }

// Source returns where the figures come from.
func (g Grade) Source() string { return g.data().source }

// FromMemory reports whether a figure was not found in print.
func (g Grade) FromMemory() bool { return g.data().memory }

// Note returns what there is to be said: marks on the head, and where sources
// contradict one another. Where they do, the weaker figure stands.
func (g Grade) Note() string { return g.data().note }

// String returns the name.
func (g Grade) String() string { return g.data().name }

// data returns the row, an empty one for the zero Grade.
func (g Grade) data() *gradeRow {
	if g.row == nil {
		return &gradeRow{}
	}
	return g.row
}

// Grades ranges over the grades, weakest first within each system.
func Grades() iter.Seq[Grade] {
	return func(yield func(Grade) bool) {
		for i := range grades {
			if !yield(Grade{&grades[i]}) {
				return
			}
		}
	}
}

// FindGrade returns the grade of a name, "8.8", "SAE 5", "British T" or "T", for
// a thread of the major diameter. The error wraps ErrUnknown for a name that is
// none and units.ErrDomain for a size that the grade does not have.
func FindGrade(name string, major units.Length) (Grade, error) {
	known := false
	for i := range grades {
		r := &grades[i]
		short := strings.TrimPrefix(r.name, "British ")
		if !strings.EqualFold(name, r.name) && !strings.EqualFold(name, short) {
			continue
		}
		known = true
		if major > r.over && major <= r.upTo*(1+1e-9) {
			return Grade{r}, nil
		}
	}
	if !known {
		return Grade{}, fmt.Errorf("grade %q: want a property class such as 8.8, SAE 1, 2, 5 or 8, or a British letter P, R, S, T, V, X, Y: %w", name, ErrUnknown)
	}
	return Grade{}, fmt.Errorf("grade %q at %v: it does not have that size: %w", name, major, units.ErrDomain)
}

// TensileLoad returns the pull that breaks a bolt of the grade: the stress area
// times the least tensile strength.
func (t Thread) TensileLoad(g Grade) units.Force {
	return units.Force(float64(t.StressArea()) * float64(g.Tensile()))
}

// ProofLoad returns the pull that a bolt of the grade stands without lasting
// stretch, false where the grade has no proof stress.
func (t Thread) ProofLoad(g Grade) (units.Force, bool) {
	p, ok := g.Proof()
	return units.Force(float64(t.StressArea()) * float64(p)), ok
}
