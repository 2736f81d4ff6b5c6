package geometry

import (
	"iter"

	"example.com/benchsums/units"
)

// Sweep runs through n crank angles evenly spaced from one to another, both ends
// included, with the drop at each: for a curve, a table, a cam. With n of 1 it
// gives the first angle alone, with less nothing.
func (c Crank) Sweep(from, to units.Angle, n int) iter.Seq2[units.Angle, units.Length] {
	return func(yield func(units.Angle, units.Length) bool) {
		for i := range n {
			if theta := step(from, to, i, n); !yield(theta, c.Drop(theta)) {
				return
			}
		}
	}
}

// SweepDrops fills drops with the drop at len(drops) crank angles evenly spaced
// from one to another, both ends included: the same figures as Sweep, for those
// who keep the slice. It allocates nothing.
func (c Crank) SweepDrops(drops []units.Length, from, to units.Angle) {
	for i := range drops {
		drops[i] = c.Drop(step(from, to, i, len(drops)))
	}
}

// step returns the i-th of n evenly spaced angles; the last is to itself.
func step(from, to units.Angle, i, n int) units.Angle {
	switch i {
	case 0:
		return from
	case n - 1:
		return to
	}
	return from + (to-from)*units.Angle(i)/units.Angle(n-1)
}
