package main

import (
	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/units"
)

// The worksheet's short names for what is done with readings on every line.

func mean[Q units.Quantity](of []Q, goodTo Q) units.Reading[Q] { return readings.Mean(of, goodTo) }

// both takes repeats together with a fault they all share: the scatter of the
// mean and the tool's part add as squares.
func both[Q units.Quantity](of []Q, shared Q) units.Reading[Q] { return mean(of, 0).With(shared) }

func scale[Q units.Quantity](r units.Reading[Q], by float64) units.Reading[Q] {
	return readings.Scale(r, by)
}

func difference[Q units.Quantity](a, b units.Reading[Q]) units.Reading[Q] {
	return readings.Difference(a, b)
}

func largest[Q units.Quantity](r units.Result[Q]) string { return readings.Largest(r) }
