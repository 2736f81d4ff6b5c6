// Package repeats makes one reading of several of the same thing.
package repeats

import "example.com/benchsums/units"

// Mean takes readings of one thing, at least one, each good to within goodTo
// two times in three: u = goodTo (JCGM 100:2008, 4.3.6). What the readings
// scatter and what the tool may be out are two views of the same faults, so the
// larger of s/√n and goodTo counts, and not both (common practice, no source).
// One reading has only the tool.
func Mean[Q units.Quantity](readings []Q, goodTo Q) units.Reading[Q] {
	if len(readings) == 0 {
		return units.Reading[Q]{}
	}
	if len(readings) == 1 {
		return units.WithStd(readings[0], goodTo)
	}
	r, err := units.Repeats(readings...)
	if err != nil { // not finite: cannot come out of a file
		return units.WithStd(readings[0], goodTo)
	}
	if float64(r.Std) >= float64(goodTo) {
		return r
	}
	return units.WithStd(r.Value, goodTo)
}
