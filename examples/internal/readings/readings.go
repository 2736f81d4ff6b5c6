// Package readings makes one reading of several, and adds and scales readings
// with what they are good to: the small change of the worksheets.
package readings

import (
	"math"

	"example.com/benchsums/units"
)

// Mean takes readings of one thing, each good to within goodTo two times in
// three: u = goodTo (JCGM 100:2008, 4.3.6). What the readings scatter and what
// the tool may be out are two views of the same faults, so the larger of s/√n
// and goodTo counts, and not both (common practice, no source). One reading has
// only the tool; none is the zero Reading.
func Mean[Q units.Quantity](of []Q, goodTo Q) units.Reading[Q] {
	switch len(of) {
	case 0:
		return units.Reading[Q]{}
	case 1:
		return units.WithStd(of[0], goodTo)
	}
	r, err := units.Repeats(of...)
	if err != nil { // not finite: cannot come out of a file
		return units.WithStd(of[0], goodTo)
	}
	if float64(r.Std) >= float64(goodTo) {
		return r
	}
	return units.WithStd(r.Value, goodTo)
}

// Scale multiplies a reading by a pure number known exactly.
func Scale[Q units.Quantity](r units.Reading[Q], by float64) units.Reading[Q] {
	return units.Reading[Q]{Value: Q(float64(r.Value) * by), Std: Q(math.Abs(float64(r.Std) * by)), DoF: r.DoF}
}

// Difference is a − b of independent readings.
func Difference[Q units.Quantity](a, b units.Reading[Q]) units.Reading[Q] {
	d := units.Reading[Q]{Value: a.Value - b.Value, Std: Q(math.Hypot(float64(a.Std), float64(b.Std)))}
	if a.DoF > 0 || b.DoF > 0 {
		d.DoF = units.EffectiveDoF(a, b)
	}
	return d
}

// Part is what share of a figure its uncertainty comes from, in words.
func Part(share float64) string {
	switch {
	case share > 0.95:
		return "nearly all"
	case share > 0.7:
		return "most"
	case share > 0.4:
		return "about half"
	}
	return "the largest part"
}

// Largest says which input the uncertainty of a result comes from most; nothing
// for a result without any.
func Largest[Q units.Quantity](r units.Result[Q]) string {
	if r.Std == 0 {
		return ""
	}
	return LargestOf(r.Budget)
}

// LargestOf is Largest for a budget on its own.
func LargestOf[Q units.Quantity](budget []units.Contribution[Q]) string {
	if len(budget) == 0 {
		return ""
	}
	top := budget[0]
	for _, c := range budget[1:] {
		if c.Share > top.Share {
			top = c
		}
	}
	return "the " + top.Name + " (" + Part(top.Share) + " of the uncertainty comes from it)"
}
