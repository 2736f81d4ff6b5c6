package main

import (
	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/units"
)

// The worksheet's short names for what is done with readings on every line.

func mean[Q units.Quantity](of []Q, goodTo Q) units.Reading[Q] { return readings.Mean(of, goodTo) }

// shared adds a fault that all the repeats of a reading share. Where the
// reading has it in already, because it is larger than their scatter, it stays
// as it is.
func shared[Q units.Quantity](r units.Reading[Q], fault Q) units.Reading[Q] {
	if r.DoF == 0 {
		return r
	}
	return r.With(fault)
}

func scale[Q units.Quantity](r units.Reading[Q], by float64) units.Reading[Q] {
	return readings.Scale(r, by)
}

func difference[Q units.Quantity](a, b units.Reading[Q]) units.Reading[Q] {
	return readings.Difference(a, b)
}

func largest[Q units.Quantity](r units.Result[Q]) string { return readings.Largest(r) }
