package springsheet

import (
	"math"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A trial is a strip judged at sizes that are varied within what they are good to.
type trial struct {
	choice springs.Choice[springs.Barrel]
	sizes  sizes
	demand springs.Demand
}

// full is the wind with the rope right out, the least wound on.
func (t trial) full() float64 { return (t.choice.Preload + t.demand.Travel).Turns() }

// set is the strip with a number of turns wound on and the rope right out. Where the
// sizes of a trial bring it solid before that, solid is solid.
func (t trial) set(on units.Angle) springs.RopeReturn {
	b, travel := t.choice.Spring, t.demand.Travel.Turns()
	pre := math.Max(0, math.Min(on.Turns(), b.Turns()-travel))
	r, err := b.Worked(pre, math.Min(travel, b.Turns()))
	if err != nil {
		nan := math.NaN()
		return springs.RopeReturn{AtFull: springs.BarrelTorque{Wind: units.Torque(nan)}, Stress: units.Pressure(nan), Stored: units.Energy(nan)}
	}
	return r
}

// vary works out f for a strip with the uncertainty that its readings give it.
func vary[Q units.Quantity](h *Drummed, s *Stripped, f func(trial) Q) (units.Result[Q], error) {
	d := h.Job
	v := d.nominal()
	v.width, v.thickness, v.length = s.Width.Value, s.Thickness.Value, s.Length.Value
	m, err := fixed(s.material, s.Thickness.Value)
	if err != nil {
		return units.Result[Q]{}, err
	}
	return units.Propagate(func() Q {
		t, err := h.try(v, m)
		if err != nil {
			return Q(math.NaN())
		}
		return f(t)
	},
		units.VaryReading("thickness of the strip", &v.thickness, s.Thickness), units.VaryReading("width of the strip", &v.width, s.Width), units.VaryReading("length of the strip", &v.length, s.Length),
		units.VaryReading("bore of the drum", &v.bore, d.Bore), units.VaryReading("arbor", &v.arbor, d.Arbor), units.VaryReading("rope seat", &v.seat, d.RopeSeat),
		units.VaryReading("length of the rope", &v.rope, d.Rope), units.VaryReading("pull at the rope", &v.pull, d.PullHome))
}

// try judges one set of sizes, by all but the depth and the strength, which have
// no part in the torque.
func (h *Drummed) try(v sizes, m springs.Material) (trial, error) {
	demand, err := v.demand(nil)
	if err != nil {
		return trial{}, err
	}
	offer := springs.StripOffer{Width: v.width, Thickness: v.thickness, Length: v.length, Free: h.free, Material: m}
	choices, err := springs.ChooseStrip(springs.BarrelRoom{Bore: v.bore, Arbor: v.arbor}, demand, h.rules, []springs.StripOffer{offer})
	if err != nil {
		return trial{}, err
	}
	if choices[0].Preload == 0 && choices[0].Spring.Turns() == 0 {
		return trial{}, units.ErrDomain
	}
	return trial{choices[0], v, demand}, nil
}

// fits reports whether a spring could be made of the strip at all.
func (s *Stripped) fits() bool { return s.Choice.Spring.Turns() > 0 }
