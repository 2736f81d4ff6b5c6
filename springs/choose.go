package springs

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A Demand is what is asked of a return spring at both ends of its travel.
type Demand struct {
	Travel      units.Angle  // from rest to full
	AtRest      units.Torque // at rest it must hold with at least this
	LeastAtFull units.Torque // at full it must pull with at least this; 0 for no such wish
	MostAtFull  units.Torque // at full it must not pull harder than this; 0 for no limit
}

func (d Demand) check() error {
	err := first(positive("travel", d.Travel), notNegative("torque at rest", d.AtRest), notNegative("least torque at full", d.LeastAtFull), notNegative("most torque at full", d.MostAtFull))
	if err == nil && d.MostAtFull != 0 && d.MostAtFull < max(d.AtRest, d.LeastAtFull) {
		err = fmt.Errorf("most torque at full %v: want more than %v, the least: %w", d.MostAtFull, max(d.AtRest, d.LeastAtFull), units.ErrDomain)
	}
	return err
}

// A Fault is the one thing that a choice fails by: what it has to keep to, what it
// comes to, and the difference.
type Fault struct {
	What string  // "turns", "stress", "torque at full", ...
	Text string  // with figures: "13.545 turns wanted, 13.281 there: 0.264 too few"
	Over float64 // by what share of the limit
}

// A Choice is one offer held against room and demand. S is Barrel or Torsion.
type Choice[S any] struct {
	Offer    string
	Works    bool
	Tight    bool // it works, but at a stress within the band of the material's own strength
	Spring   S    // as it would be made; the zero value where it cannot be
	Preload  units.Angle
	AtRest   units.Torque
	AtFull   units.Torque
	Stress   units.Pressure // at full
	Strength Strength       // of the material in that size
	Use      float64        // the greatest share that it uses of what is allowed
	Fault    Fault          // what fails most; empty for one that works
	Reason   string         // the verdict in a sentence

	fits bool // what fails is not the room
}

// rank orders choices: those that work, the less used first, then those that are
// tight, then those that fail, the nearest first.
func rank[S any](choices []Choice[S]) []Choice[S] {
	class := func(c Choice[S]) int {
		switch {
		case !c.Works:
			return 2
		case c.Tight:
			return 1
		}
		return 0
	}
	slices.SortStableFunc(choices, func(a, b Choice[S]) int {
		if c := cmp.Compare(class(a), class(b)); c != 0 {
			return c
		}
		if !a.Works {
			return cmp.Compare(a.Fault.Over, b.Fault.Over)
		}
		return cmp.Compare(a.Use, b.Use)
	})
	return choices
}

// A limit is one figure that must not exceed another.
type limit struct {
	what       string
	has, bound float64
	text       func(has, bound float64) string
}

// use returns the share of the limit that is used; more than 1 fails.
func (l limit) use() float64 { return l.has / l.bound }

// worst returns the greatest use, and the fault of the limit that fails most.
func worst(limits []limit) (use float64, fault Fault) {
	for _, l := range limits {
		u := l.use()
		use = math.Max(use, u)
		if u > 1+1e-9 && u-1 > fault.Over {
			fault = Fault{l.what, l.text(l.has, l.bound), u - 1}
		}
	}
	return use, fault
}

// lengthText, turnsText, torqueText and stressText say by how much a limit is
// missed.
func lengthText(what string) func(has, bound float64) string {
	return func(has, bound float64) string {
		h, b := units.Length(has).Millimetres(), units.Length(bound).Millimetres()
		return fmt.Sprintf("%s %.2f mm, room for %.2f mm: %.2f mm too much", what, h, b, h-b)
	}
}

func turnsText(has, bound float64) string {
	return fmt.Sprintf("%.3f turns wanted, %.3f there: %.3f too few", has, bound, has-bound)
}

func torqueText(what string) func(has, bound float64) string {
	return func(has, bound float64) string {
		h, b := units.Torque(has).NewtonMillimetres(), units.Torque(bound).NewtonMillimetres()
		return fmt.Sprintf("%s %.0f N mm, %.0f N mm allowed: %.0f N mm too much", what, h, b, h-b)
	}
}

func stressText(has, bound float64) string {
	h, b := units.Pressure(has).Megapascals(), units.Pressure(bound).Megapascals()
	return fmt.Sprintf("stress %.0f MPa, %.0f MPa allowed: %.0f MPa too much", h, b, h-b)
}
