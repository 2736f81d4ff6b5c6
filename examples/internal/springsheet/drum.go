package springsheet

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A Drummed is a rope drum with every strip on offer held against it.
type Drummed struct {
	Job    *Drum
	Strips []Stripped // in the order of the file
	Ranked []springs.Choice[springs.Barrel]
	Travel units.Angle        // that the rope takes
	Home   units.Torque       // that brings it home
	Set    springs.RopeReturn // the best strip wound on by WindOn; nought where none will do
	rules  springs.StripRules
	free   springs.FreeState
}

// A Stripped is one strip on offer, with what it would do.
type Stripped struct {
	*Strip
	Choice   springs.Choice[springs.Barrel]
	material springs.Material
}

// spareTurns is left before solid where the file does not say; half a turn to one
// turn is common practice, no source.
const spareTurns = 0.5

// hold holds the strips against the drum.
func (d *Drum) hold(f *jobfile.File, at string) (*Drummed, error) {
	if err := d.check(f, at); err != nil {
		return nil, err
	}
	h := &Drummed{Job: d, rules: springs.StripRules{SpareTurns: d.SpareTurnsOrUsual(), Friction: float64(d.friction())}}
	var err error
	if h.free, err = freeState(d.Lies); err != nil {
		return nil, f.Errorf(at+".strips_lie", "%v", err)
	}
	for i := range d.Strip {
		m, err := d.Steel.material(f, at+".steel", d.Strip[i].Thickness.Value)
		if err != nil {
			return nil, err
		}
		h.Strips = append(h.Strips, Stripped{Strip: &d.Strip[i], material: m})
	}
	return h, h.choose(f, at)
}

// choose has the strips judged and ranked.
func (h *Drummed) choose(f *jobfile.File, at string) error {
	demand, err := h.Job.nominal().demand(h.Job.MostPull)
	if err != nil {
		return f.Errorf(at, "%s", words(err))
	}
	h.Travel, h.Home = demand.Travel, demand.AtRest
	var offers []springs.StripOffer
	for _, s := range h.Strips {
		offers = append(offers, springs.StripOffer{Name: s.Name, Width: s.Width.Value, Thickness: s.Thickness.Value, Length: s.Length.Value, Free: h.free, Material: s.material})
	}
	room := springs.BarrelRoom{Bore: h.Job.Bore.Value, Arbor: h.Job.Arbor.Value, Depth: h.Job.Depth.Value}
	if h.Ranked, err = springs.ChooseStrip(room, demand, h.rules, offers); err != nil {
		return f.Errorf(at, "%s", words(err))
	}
	for _, c := range h.Ranked {
		if s, ok := h.named(c.Offer); ok {
			s.Choice = c
		}
	}
	if s, works := h.chosen(); works {
		if h.Set, err = s.Choice.Spring.Worked(h.WindOn().Turns(), h.Travel.Turns()); err != nil {
			return f.Errorf(at, "%s", words(err))
		}
	}
	return nil
}

// named finds the strip of a name.
func (h *Drummed) named(name string) (*Stripped, bool) {
	for i := range h.Strips {
		if h.Strips[i].Name == name {
			return &h.Strips[i], true
		}
	}
	return nil, false
}

// chosen returns the best strip, false where none will do.
func (h *Drummed) chosen() (*Stripped, bool) {
	if len(h.Ranked) == 0 {
		return nil, false
	}
	s, _ := h.named(h.Ranked[0].Offer)
	return s, h.Ranked[0].Works
}

// SpareTurnsOrUsual returns the turns to be left with the rope right out.
func (d *Drum) SpareTurnsOrUsual() float64 {
	if d.SpareTurns == nil {
		return spareTurns
	}
	return *d.SpareTurns
}

func (d *Drum) friction() units.Ratio {
	if d.Friction == nil {
		return 0
	}
	return *d.Friction
}

// check refuses what is missing or cannot be.
func (d *Drum) check(f *jobfile.File, at string) error {
	err := wanted(f, at, []need{
		{"bore", d.Bore, "the inside of the drum, across"}, {"arbor", d.Arbor, "the arbor's diameter"},
		{"rope_seat", d.RopeSeat, "the diameter to the centre of the rope as it lies on the drum"}, {"rope", d.Rope, "the length of rope to be pulled"},
	})
	switch {
	case err != nil:
		return err
	case !(d.Arbor.Value < d.Bore.Value):
		return f.Errorf(at+".arbor", "%v: want less than %v, the bore of the drum", d.Arbor.Value, d.Bore.Value)
	case !(d.Depth.Value >= 0):
		return f.Errorf(at+".depth", "%v: want the depth for the strip, more than 0 mm, or leave it out", d.Depth.Value)
	case !(d.PullHome.Value > 0):
		return f.Errorf(at+".pull_home", "%v: want the pull at the rope that brings drum and rope home, more than 0 N", d.PullHome.Value)
	case !(d.friction() >= 0 && d.friction() < 1):
		return f.Errorf(at+".friction", "%s: want 0 %% to below 100 %%, what the coils rub away of the torque", sheet.Plain(float64(d.friction()), sheet.Percent, 0))
	case !(d.SpareTurnsOrUsual() >= 0 && d.SpareTurnsOrUsual() < 100):
		return f.Errorf(at+".spare_turns", "%g: want turns from 0 to 100, to be left with the rope right out", d.SpareTurnsOrUsual())
	case d.MostPull != nil && !(*d.MostPull > d.PullHome.Value):
		return f.Errorf(at+".most_pull", "%v: want more than %v, the pull that brings the rope home", *d.MostPull, d.PullHome.Value)
	case len(d.Strip) == 0:
		return f.Errorf(at, "no strip on offer: give one [[%s.strip]] or more, with name, thickness, width and length", at)
	}
	if o := d.Old; o != nil {
		err := wanted(f, at+".old", []need{{"thickness", o.Thickness, "how thick the broken strip is"}, {"width", o.Width, "how wide it is"}, {"length", o.Length, "the length of the pieces together"}})
		if err != nil {
			return err
		}
	}
	return d.checkStrips(f, at)
}

func (d *Drum) checkStrips(f *jobfile.File, at string) error {
	seen := map[string]bool{}
	for i := range d.Strip {
		s, key := &d.Strip[i], fmt.Sprintf("%s.strip.%d", at, i)
		if s.Name == "" {
			s.Name = fmt.Sprintf("number %d", i+1)
		}
		if seen[s.Name] {
			return f.Errorf(key+".name", "%q: a strip of that name is there already", s.Name)
		}
		seen[s.Name] = true
		err := wanted(f, key, []need{{"thickness", s.Thickness, "how thick the strip is"}, {"width", s.Width, "how wide the strip is"}, {"length", s.Length, "how long the strip is"}})
		if err != nil {
			return err
		}
		if !(s.Thickness.Value < s.Width.Value) {
			return f.Errorf(key+".thickness", "%v: want less than %v, the width: are the two changed about?", s.Thickness.Value, s.Width.Value)
		}
	}
	return nil
}

// A need is a length that has to be given.
type need struct {
	key  string
	is   length
	what string
}

func wanted(f *jobfile.File, at string, needs []need) error {
	for _, n := range needs {
		switch {
		case n.is.Value == 0:
			return f.Errorf(at+"."+n.key, "not given: want %s", n.what)
		case !(n.is.Value > 0 && n.is.Value < 1000*units.Metre):
			return f.Errorf(at+"."+n.key, "%v: want %s, more than 0 mm", n.is.Value, n.what)
		}
	}
	return nil
}

// sizes are what the sums for one strip go by.
type sizes struct {
	bore, arbor, seat, rope, width, thickness, length units.Length
	pull                                              units.Force
}

func (d *Drum) nominal() sizes {
	return sizes{bore: d.Bore.Value, arbor: d.Arbor.Value, seat: d.RopeSeat.Value, rope: d.Rope.Value, pull: d.PullHome.Value}
}

// demand is what is asked of a spring in the drum.
func (s sizes) demand(most *units.Force) (springs.Demand, error) {
	turns, err := springs.DrumTurns(s.rope, s.seat)
	d := springs.Demand{Travel: units.Angle(turns) * units.Turn, AtRest: s.torque(s.pull)}
	if most != nil {
		d.MostAtFull = s.torque(*most)
	}
	return d, err
}

// torque is that of a pull on the rope.
func (s sizes) torque(pull units.Force) units.Torque {
	return units.Torque(float64(pull) * float64(s.seat) / 2)
}

// A window is what may be wound on: the least brings the rope home, the most
// leaves the spare turns, keeps within the strip's least strength and asks no more of
// the hand than it may.
type window struct{ least, most units.Angle }

// window returns the pre-winds that will do for a strip.
func (h *Drummed) window(c springs.Choice[springs.Barrel], travel units.Angle, strength units.Pressure) window {
	most := math.Min(c.Spring.Turns()-h.rules.SpareTurns, c.Spring.TurnsAtStress(strength))
	if n, err := h.turnsAtMostPull(c.Spring); err == nil {
		most = math.Min(most, n)
	}
	return window{c.Preload, units.Angle(most)*units.Turn - travel}
}

// turnsAtMostPull are those at which drawing the rope out takes the most that is asked;
// an error where nothing is, or the strip is solid before that.
func (h *Drummed) turnsAtMostPull(b springs.Barrel) (float64, error) {
	if h.Job.MostPull == nil {
		return 0, units.ErrDomain
	}
	rubs := (1 - h.rules.Friction) / (1 + h.rules.Friction) // of the torque drawing out, what would drive home
	return b.PreWind(units.Torque(float64(h.torque(*h.Job.MostPull)) * rubs))
}

// windOn is the pre-wind to begin with: the least in half turns, or the least
// itself where half turns do not fall into the window.
func (w window) windOn() units.Angle {
	half := units.Turn / 2
	up := units.Angle(math.Ceil(float64(w.least/half)-1e-9)) * half
	if up > w.most {
		return w.least
	}
	return up
}

// WindOn is what to wind on first of the best strip; 0 where none will do.
func (h *Drummed) WindOn() units.Angle {
	s, works := h.chosen()
	if !works {
		return 0
	}
	return h.window(s.Choice, h.Travel, s.Choice.Strength.Least).windOn()
}
