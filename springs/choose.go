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
	Text string  // with figures: "13.546 turns wanted, 13.282 there: 0.264 too few"
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
	what       string // "turns"
	label      string // what has is, in a sentence: "stress"
	kind       limitKind
	has, bound float64
}

type limitKind int

const (
	ofLength limitKind = iota
	ofTurns
	ofTorque
	ofStress
)

// used returns the share of the limit that is used; where there is no room at all, all
// and more.
func (l limit) used() float64 {
	if l.bound <= 0 && l.has > l.bound {
		return math.Inf(1)
	}
	return l.has / l.bound
}

// over returns by what share the limit is exceeded, 0 for one that is kept.
func (l limit) over() float64 {
	if u := l.used(); u > 1+1e-9 {
		return u - 1
	}
	return 0
}

// fault says in figures how the limit is missed.
func (l limit) fault() Fault {
	h, b := l.has, l.bound
	var text string
	switch l.kind {
	case ofLength:
		h, b = units.Length(h).Millimetres(), units.Length(b).Millimetres()
		text = fmt.Sprintf("%s %.2f mm, room for %.2f mm: %.2f mm too much", l.label, h, b, h-b)
	case ofTurns:
		text = fmt.Sprintf("%.3f turns wanted, %.3f there: %.3f too few", h, b, h-b)
	case ofTorque:
		h, b = units.Torque(h).NewtonMillimetres(), units.Torque(b).NewtonMillimetres()
		text = fmt.Sprintf("%s %.0f N mm, %.0f N mm allowed: %.0f N mm too much", l.label, h, b, h-b)
	case ofStress:
		h, b = units.Pressure(h).Megapascals(), units.Pressure(b).Megapascals()
		text = fmt.Sprintf("%s %.0f MPa, %.0f MPa allowed: %.0f MPa too much", l.label, h, b, h-b)
	}
	return Fault{l.what, text, l.over()}
}

// worst returns the greatest share used of any limit, and the limit that fails most.
func worst(limits []limit) (use float64, fails limit) {
	for _, l := range limits {
		use = math.Max(use, l.used())
		if l.over() > fails.over() {
			fails = l
		}
	}
	return use, fails
}

// fails sets the verdict of a choice that does not do.
func (c Choice[S]) fails(f Fault) Choice[S] {
	c.Works, c.Tight, c.Fault = false, false, f
	c.Reason = "fails by its " + f.What + ": " + f.Text
	return c
}
