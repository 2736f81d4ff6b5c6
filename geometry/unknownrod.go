package geometry

import (
	"fmt"

	"example.com/benchsums/units"
)

// A RodRange is the range in which a rod's length is taken to lie, in throws,
// n = l/r (twice the rod/stroke ratio).
type RodRange struct{ Least, Most float64 }

// UsualRods returns the range that most engines lie in, 3.5 to 4.5 throws, which
// is a rod 1.75 to 2.25 strokes long (common practice, no source). Slow old
// engines with long rods, marine and steam, go to 5 and beyond.
func UsualRods() RodRange { return RodRange{3.5, 4.5} }

// A Spread is an answer that depends on something unknown: the least and the
// most it can be, and a value between for the middle of what is unknown.
type Spread[Q units.Quantity] struct{ Least, Middle, Most Q }

// Reading returns the spread as a reading, any value between the ends being as
// likely as any other: half of the width over √3 is the standard uncertainty
// (JCGM 100:2008, 4.3.7).
func (s Spread[Q]) Reading() units.Reading[Q] {
	return units.PlusMinus(s.Least+(s.Most-s.Least)/2, (s.Most-s.Least)/2)
}

// String writes the middle and the ends.
func (s Spread[Q]) String() string {
	return fmt.Sprintf("%v (%v to %v)", s.Middle, s.Least, s.Most)
}

// A StrokeOnly is a crank of which the stroke is known and the rod is not: its
// answers come with the spread that the range of rods makes. The cylinder stands
// straight over the crank.
type StrokeOnly struct{ short, middle, long Crank }

// NewStrokeOnly returns the crank with the given stroke and a rod anywhere in a
// range, UsualRods where nothing better is known. The error is units.ErrDomain if
// the stroke is not more than 0, or the range does not begin above 1 throw and end
// at or above its beginning.
func NewStrokeOnly(stroke units.Length, rods RodRange) (StrokeOnly, error) {
	if !(rods.Least > 1 && rods.Most >= rods.Least) {
		return StrokeOnly{}, fmt.Errorf("rod %g to %g throws: want more than 1, least first: %w", rods.Least, rods.Most, units.ErrDomain)
	}
	var c [3]Crank
	for i, n := range [...]float64{rods.Least, rods.Least + (rods.Most-rods.Least)/2, rods.Most} {
		var err error
		if c[i], err = NewCrank(stroke, units.Length(n)*(stroke/2)); err != nil {
			return StrokeOnly{}, err
		}
	}
	return StrokeOnly{c[0], c[1], c[2]}, nil
}

// Stroke returns the stroke.
func (s StrokeOnly) Stroke() units.Length { return s.middle.stroke }

// Drop returns the drop at a crank angle with its spread: the longer the rod, the
// less the drop, everywhere but at the dead centres.
func (s StrokeOnly) Drop(theta units.Angle) Spread[units.Length] {
	return Spread[units.Length]{s.long.Drop(theta), s.middle.Drop(theta), s.short.Drop(theta)}
}

// AngleAtDrop returns the crank angle, before or after top dead centre alike, at
// a drop, with its spread: the longer the rod, the greater the angle. In the usual
// range the ends lie about a degree apart at thirty degrees.
//
// The error is units.ErrDomain for a drop less than 0 or more than the stroke.
func (s StrokeOnly) AngleAtDrop(drop units.Length) (Spread[units.Angle], error) {
	middle, _, err := s.middle.AnglesAtDrop(drop)
	if err != nil {
		return Spread[units.Angle]{}, err
	}
	least, _ := s.short.angles(drop, s.short.stroke-drop)
	most, _ := s.long.angles(drop, s.long.stroke-drop)
	return Spread[units.Angle]{least, middle, most}, nil
}
