package springsheet

import (
	"fmt"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A Levered is a lever with every wire on offer coiled for it.
type Levered struct {
	Job    *Lever
	Wires  []Wired // in the order of the file
	Ranked []springs.Choice[springs.Torsion]
	Demand springs.Demand
	rules  springs.WireRules
}

// A Wired is one wire on offer, with the best coil of it.
type Wired struct {
	Name     string
	Diameter length
	Choice   springs.Choice[springs.Torsion]
	material springs.Material
}

// hold has the wires coiled and ranked.
func (l *Lever) hold(f *jobfile.File, at string) (*Levered, error) {
	if err := l.check(f, at); err != nil {
		return nil, err
	}
	h := &Levered{Job: l, rules: springs.WireRules{Play: l.Play, LeastPreload: l.LeastPreload}}
	copy(h.rules.Legs[:], l.Legs)
	h.Demand = springs.Demand{Travel: l.Travel.Value, AtRest: onArm(l.PullAtRest.Value, l.Arm.Value)}
	if l.MostPull != nil {
		h.Demand.MostAtFull = onArm(*l.MostPull, l.Arm.Value)
	}
	var offers []springs.WireOffer
	for i, d := range l.Wire {
		key := at + ".wire"
		m, err := l.Steel.material(f, at+".steel", d.Value)
		if err != nil {
			return nil, err
		}
		wire, err := springs.RoundWire(d.Value)
		if err != nil {
			return nil, f.Errorf(key, "%s", words(err))
		}
		w := Wired{Name: d.Value.String(), Diameter: d, material: m}
		if _, twice := h.named(w.Name); twice {
			return nil, f.Errorf(key, "wire %d: %s is there already", i+1, w.Name)
		}
		h.Wires = append(h.Wires, w)
		offers = append(offers, springs.WireOffer{Name: w.Name, Wire: wire, Material: m})
	}
	ranked, err := springs.ChooseWire(springs.TorsionRoom{Pin: l.Pin.Value, Recess: l.Recess.Value, Length: l.Length.Value - l.EndPlay}, h.Demand, h.rules, offers)
	if err != nil {
		return nil, f.Errorf(at, "%s", words(err))
	}
	h.Ranked = ranked
	for _, c := range ranked {
		if w, ok := h.named(c.Offer); ok {
			w.Choice = c
		}
	}
	return h, nil
}

// named finds the wire of a name.
func (h *Levered) named(name string) (*Wired, bool) {
	for i := range h.Wires {
		if h.Wires[i].Name == name {
			return &h.Wires[i], true
		}
	}
	return nil, false
}

// chosen returns the best wire, false where none will do.
func (h *Levered) chosen() (*Wired, bool) {
	if len(h.Ranked) == 0 {
		return nil, false
	}
	w, _ := h.named(h.Ranked[0].Offer)
	return w, h.Ranked[0].Works
}

func onArm(pull units.Force, arm units.Length) units.Torque {
	return units.Torque(float64(pull) * float64(arm))
}

// check refuses what is missing or cannot be.
func (l *Lever) check(f *jobfile.File, at string) error {
	err := wanted(f, at, []need{
		{"pin", l.Pin, "the pin that the coil sits on"}, {"recess", l.Recess, "the inside of the recess round it"},
		{"length", l.Length, "the length of the recess"}, {"arm", l.Arm, "how far from the pivot the pulls were taken"},
	})
	switch {
	case err != nil:
		return err
	case !(l.Pin.Value < l.Recess.Value):
		return f.Errorf(at+".pin", "%v: want less than %v, the recess", l.Pin.Value, l.Recess.Value)
	case !(l.Travel.Value > 0 && l.Travel.Value < 10*units.Turn):
		return f.Errorf(at+".travel", "%v: want how far the lever moves, more than 0°", l.Travel.Value)
	case !(l.PullAtRest.Value > 0):
		return f.Errorf(at+".pull_at_rest", "%v: want the pull on the arm that holds the lever at rest, more than 0 N", l.PullAtRest.Value)
	case l.MostPull != nil && !(*l.MostPull > l.PullAtRest.Value):
		return f.Errorf(at+".most_pull", "%v: want more than %v, the pull at rest", *l.MostPull, l.PullAtRest.Value)
	case !(l.Play >= 0 && l.Play < l.Recess.Value):
		return f.Errorf(at+".play", "%v: want the play between the free coil and the recess, from 0 mm to below %v", l.Play, l.Recess.Value)
	case !(l.EndPlay >= 0 && l.EndPlay < l.Length.Value):
		return f.Errorf(at+".end_play", "%v: want what the coil is to have along the recess, from 0 mm to below %v", l.EndPlay, l.Length.Value)
	case !(l.LeastPreload >= 0 && l.LeastPreload < 10*units.Turn):
		return f.Errorf(at+".least_preload", "%v: want what is wound on at rest at least, from 0°", l.LeastPreload)
	case len(l.Legs) > 2:
		return f.Errorf(at+".legs", "%d legs: want two lengths at most", len(l.Legs))
	case len(l.Wire) == 0:
		return f.Errorf(at+".wire", "no wire on offer: give a list of diameters, as [\"1.22 mm\", \"1.42 mm\"]")
	}
	for i, d := range l.Wire {
		if !(d.Value > 0.05*units.Millimetre && d.Value <= 20*units.Millimetre) {
			return f.Errorf(at+".wire", "wire %d: %v: want the diameter, from 0.05 mm to 20 mm", i+1, d.Value)
		}
	}
	for _, leg := range l.Legs {
		if !(leg >= 0 && leg < units.Metre) {
			return f.Errorf(at+".legs", "%v: want the length of the straight leg, from 0 mm to 1 m", leg)
		}
	}
	return nil
}

// making is what the making of a coil may put its rate out by.
func making() (springs.Soundness, error) { return springs.Accuracy(springs.HelicalTorsion) }

// A coil is a torsion spring as it was chosen, made of wire that may be a little
// thicker and turned out a little weaker.
type coil struct {
	torsion      springs.Torsion
	made         float64 // rate as it turns out, of the rate reckoned
	pin, arm     units.Length
	travel, wind units.Angle // the lever's; preload as chosen and travel
	pull         units.Force
}

// torque is that at an angle of wind.
func (c coil) torque(wind units.Angle) units.Torque {
	return c.torsion.Torque(wind) * units.Torque(c.made)
}

// varyCoil works out g for the coil of a wire with the uncertainty of its readings
// and of its making.
func varyCoil[Q units.Quantity](h *Levered, w *Wired, g func(coil) Q) (units.Result[Q], error) {
	l, s := h.Job, w.Choice.Spring
	m, err := fixed(w.material, w.Diameter.Value)
	if err != nil {
		return units.Result[Q]{}, err
	}
	sound, err := making()
	if err != nil {
		return units.Result[Q]{}, err
	}
	d, c := w.Diameter.Value, coil{made: 1, pin: l.Pin.Value, arm: l.Arm.Value, travel: l.Travel.Value, pull: l.PullAtRest.Value}
	broken := error(nil)
	res, err := units.Propagate(func() Q {
		wire, err := springs.RoundWire(d)
		if err == nil {
			c.torsion, err = springs.NewTorsion(springs.TorsionSpec{Wire: wire, MeanDiameter: s.MeanDiameter(), BodyTurns: s.BodyTurns(), Legs: h.rules.Legs, Material: m})
		}
		if err != nil {
			broken = err
		}
		c.wind = w.Choice.Preload + c.travel
		return g(c)
	},
		units.VaryReading("diameter of the wire", &d, w.Diameter), units.VaryReading("making of the coil", &c.made, units.PlusMinus(1.0, sound.Share)),
		units.VaryReading("pin", &c.pin, l.Pin), units.VaryReading("arm", &c.arm, l.Arm), units.VaryReading("travel of the lever", &c.travel, l.Travel), units.VaryReading("pull at rest", &c.pull, l.PullAtRest))
	if broken != nil {
		return res, fmt.Errorf("wire %s: %w", w.Name, broken)
	}
	return res, err
}

// fits reports whether a coil could be laid in the room at all.
func (w *Wired) fits() bool { return w.Choice.Spring.BodyTurns() > 0 }
