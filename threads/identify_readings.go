package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Hand is which way a thread runs.
type Hand uint8

// The hands. A right-hand thread goes in clockwise.
const (
	RightHand Hand = iota
	LeftHand
)

// String returns the hand in words.
func (h Hand) String() string {
	switch h {
	case RightHand:
		return "right hand"
	case LeftHand:
		return "left hand"
	}
	return "unknown hand"
}

// A TaperSeen is what a rule laid along the crests shows.
type TaperSeen uint8

// What it shows. Parallel and Tapered are taken as sure.
const (
	TaperNotLooked TaperSeen = iota
	Parallel
	Tapered
)

// String returns what was seen in words.
func (s TaperSeen) String() string {
	switch s {
	case TaperNotLooked:
		return "not looked at"
	case Parallel:
		return "parallel"
	case Tapered:
		return "tapered"
	}
	return "unknown"
}

// Readings are what was measured of a thread without a name. A reading whose
// value is 0 was not taken. One of the three diameters is needed; without the
// pitch there will be many candidates.
type Readings struct {
	Part Part // Bolt for any thread on the outside, Nut for a tapped hole
	// Crest is taken over the crests: the outside of a bolt, the bore of a nut.
	Crest units.Reading[units.Length]
	// Effective is the effective diameter, over wires or by anvils that touch
	// the flanks.
	Effective units.Reading[units.Length]
	// Root is taken at the bottom of the thread: the core of a bolt by pointed
	// anvils, the outside of a cast or wax of a nut.
	Root units.Reading[units.Length]
	// Pitch, best by PitchOver.
	Pitch units.Reading[units.Length]
	// Angle is the included angle between the flanks.
	Angle units.Reading[units.Angle]
	Taper TaperSeen
	// Hand parts no two series; it comes back with the answer, for any thread
	// may be cut left-handed.
	Hand Hand
	// Wear is the most that the crests may have lost by wear, rust or file, on
	// the diameter: 1 to 3 % of it on rough old work (common practice, no
	// source). Any loss up to it is held equally likely.
	Wear units.Length
	// Prior says which series are likely on this machine. The zero Prior is
	// flat: all threads of the tables are held equally likely.
	Prior Prior
}

// PitchOver returns the pitch from the length over a number of threads, crest
// to crest. The uncertainty of the length is divided by the number, so span as
// many as will go. The error wraps units.ErrDomain for a number below 1 or a
// length not more than 0 mm.
func PitchOver(threads int, length units.Reading[units.Length]) (units.Reading[units.Length], error) {
	switch {
	case threads < 1:
		return units.Reading[units.Length]{}, fmt.Errorf("length over %d threads: want 1 or more: %w", threads, units.ErrDomain)
	case !(length.Value > 0) || math.IsInf(float64(length.Value), 0):
		return units.Reading[units.Length]{}, fmt.Errorf("length %v over %d threads: want more than 0 mm: %w", length.Value, threads, units.ErrDomain)
	}
	n := units.Length(threads)
	return units.Reading[units.Length]{Value: length.Value / n, Std: length.Std / n, DoF: length.DoF}, nil
}

// leafSeen is the misfit of a gauge leaf over its length that the eye does not
// see. It puts in a figure that a leaf of 1.0 mm looks right on 26 to the inch
// over 3 or 4 threads (common practice, no source).
const leafSeen = 0.09 * units.Millimetre

// PitchByLeaf returns the pitch from a leaf of a thread gauge that seemed to
// fit over a number of threads. The true pitch may differ by as much as the
// eye does not see, taken as 0.09 mm over the length of the leaf.
func PitchByLeaf(leaf units.Length, threads int) (units.Reading[units.Length], error) {
	switch {
	case threads < 1:
		return units.Reading[units.Length]{}, fmt.Errorf("leaf on %d threads: want 1 or more: %w", threads, units.ErrDomain)
	case !(leaf > 0) || math.IsInf(float64(leaf), 0):
		return units.Reading[units.Length]{}, fmt.Errorf("leaf of pitch %v: want more than 0 mm: %w", leaf, units.ErrDomain)
	}
	return units.PlusMinus(leaf, leafSeen/units.Length(threads)), nil
}

// TPI returns the pitch of a number of threads per inch. It is infinite for 0.
func TPI(n float64) units.Length { return units.Inch / units.Length(n) }

// A dimension is a reading made ready for the sums, in SI units. A std of 0
// means that it was not taken.
type dimension struct {
	value, std float64
}

// ready returns r with the scatter of ordinary screwed work added to its
// uncertainty. A reading that rests on few repeats is widened to the normal
// distribution with the same interval of 95 %.
func ready[Q units.Quantity](r units.Reading[Q], work float64) dimension {
	if r.Value == 0 {
		return dimension{}
	}
	return dimension{float64(r.Value), math.Hypot(float64(r.Std)*widen(r.DoF), work)}
}

// Student's t for 95 % in both tails, from 1 degree of freedom: JCGM 100:2008,
// Table G.2.
var studentT = [...]float64{12.71, 4.30, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23}

// widen returns Student's t over that of a normal distribution.
func widen(dof float64) float64 {
	const normal = 1.96
	switch {
	case dof <= 0 || math.IsInf(dof, 0):
		return 1
	case dof < float64(len(studentT)+1):
		return studentT[max(int(dof), 1)-1] / normal
	}
	return 1 + 1.4/dof // within 1 % of the table beyond its end
}

func (r Readings) check() error {
	if r.Part > Nut || r.Hand > LeftHand || r.Taper > Tapered {
		return fmt.Errorf("readings of part %d, hand %d, taper %d: want values of the constants: %w", r.Part, r.Hand, r.Taper, units.ErrDomain)
	}
	for _, d := range [...]struct {
		what    string
		reading units.Reading[units.Length]
	}{
		{"diameter over the crests", r.Crest}, {"effective diameter", r.Effective},
		{"diameter at the root", r.Root}, {"pitch", r.Pitch},
	} {
		if err := checkReading(d.what, d.reading, "0 mm"); err != nil {
			return err
		}
	}
	if err := checkReading("flank angle", r.Angle, "0°"); err != nil {
		return err
	}
	switch {
	case r.Crest.Value == 0 && r.Effective.Value == 0 && r.Root.Value == 0:
		return fmt.Errorf("no diameter among the readings: want one over the crests: %w", units.ErrDomain)
	case !(r.Wear >= 0) || math.IsInf(float64(r.Wear), 0):
		return fmt.Errorf("wear allowance %v: want 0 mm or more: %w", r.Wear, units.ErrDomain)
	}
	return nil
}

func checkReading[Q units.Quantity](what string, r units.Reading[Q], zero string) error {
	switch {
	case !(r.Value >= 0) || math.IsInf(float64(r.Value), 0):
		return fmt.Errorf("%s %v: want more than %s, or 0 where it was not taken: %w", what, r.Value, zero, units.ErrDomain)
	case !(r.Std >= 0) || math.IsInf(float64(r.Std), 0):
		return fmt.Errorf("%s: uncertainty %v: want %s or more: %w", what, r.Std, zero, units.ErrDomain)
	case math.IsNaN(r.DoF) || r.DoF < 0:
		return fmt.Errorf("%s: %g degrees of freedom: want 0 or more: %w", what, r.DoF, units.ErrDomain)
	}
	return nil
}
