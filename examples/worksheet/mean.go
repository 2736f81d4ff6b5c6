package main

import (
	"math"

	"example.com/benchsums/units"
)

// mean takes readings of one thing, each good to within goodTo two times in
// three: u = goodTo (JCGM 100:2008, 4.3.6). What the readings scatter and what
// the tool may be out are two views of the same faults, so the larger of s/√n
// and goodTo counts, and not both (common practice, no source). One reading has
// only the tool.
func mean[Q units.Quantity](readings []Q, goodTo Q) units.Reading[Q] {
	if len(readings) < 2 {
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

// both takes repeats together with a fault they all share: the scatter of the
// mean and the tool's part add as squares.
func both[Q units.Quantity](readings []Q, shared Q) units.Reading[Q] {
	return mean(readings, 0).With(shared)
}

// scale multiplies a reading by a pure number known exactly.
func scale[Q units.Quantity](r units.Reading[Q], by float64) units.Reading[Q] {
	return units.Reading[Q]{Value: Q(float64(r.Value) * by), Std: Q(math.Abs(float64(r.Std) * by)), DoF: r.DoF}
}

// difference is a − b of independent readings.
func difference[Q units.Quantity](a, b units.Reading[Q]) units.Reading[Q] {
	d := units.Reading[Q]{Value: a.Value - b.Value, Std: Q(math.Hypot(float64(a.Std), float64(b.Std)))}
	if a.DoF > 0 || b.DoF > 0 {
		d.DoF = units.EffectiveDoF(a, b)
	}
	return d
}

// part is what share of a figure its uncertainty comes from, in words.
func part(share float64) string {
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

// largest says which input the uncertainty of a result comes from most.
func largest[Q units.Quantity](r units.Result[Q]) string {
	if len(r.Budget) == 0 || r.Std == 0 {
		return ""
	}
	top := r.Budget[0]
	for _, c := range r.Budget[1:] {
		if c.Share > top.Share {
			top = c
		}
	}
	return "the " + top.Name + " (" + part(top.Share) + " of the uncertainty comes from it)"
}
