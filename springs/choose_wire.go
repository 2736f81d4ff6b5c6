package springs

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A TorsionRoom is the room for a helical torsion spring: the pin it sits on, the
// recess round it, and the length along the axis. A size of 0 is not judged, but one
// of pin and recess must be given.
type TorsionRoom struct{ Pin, Recess, Length units.Length }

// A WireOffer is a wire to choose from.
type WireOffer struct {
	Name     string
	Wire     Section
	Material Material
}

// WireRules are what the chooser keeps to.
type WireRules struct {
	Duty      Duty            // which stress is allowed
	Constant  RateConstant    // which rate is reckoned with
	Curvature CurvatureRule   // which factor is in the stress
	Legs      [2]units.Length // of the spring wanted
	// PinShare of the bore at full wind is the most that the pin may fill; 0 means 0.9, as
	// makers' tables have it.
	PinShare float64
	// Play is left on diameter between the free coil and the recess.
	Play units.Length
	// LeastPreload is wound on at rest even where the torque asks for less; a quarter to half a
	// turn is common practice.
	LeastPreload units.Angle
	// LeastTurns of the body; 0 means 3, below which springs are not recommended.
	LeastTurns float64
	// Step in which body turns are tried; 0 means a quarter.
	Step float64
}

// ChooseWire designs the best torsion spring of each wire for a room and a demand,
// and ranks them. For each it tries body turns in steps and mean diameters from pin
// to recess, at an index from 4 to 20; of those that do all that is asked it takes the one with the lowest
// share used of the allowed stress and torque, and where none does, the one that
// fits the room and fails by least. The error is units.ErrDomain for a demand, room or rules that make
// no sense; what is wrong with an offer by itself stands as its Fault.
func ChooseWire(room TorsionRoom, demand Demand, rules WireRules, offers []WireOffer) ([]Choice[Torsion], error) {
	rules = rules.withDefaults()
	err := first(demand.check(), notNegative("pin", room.Pin), notNegative("recess", room.Recess), notNegative("length", room.Length),
		notNegative("play", rules.Play), notNegative("least preload", rules.LeastPreload), positive("least turns", rules.LeastTurns), positive("step", rules.Step))
	switch {
	case err != nil:
		return nil, err
	case room.Pin == 0 && room.Recess == 0:
		return nil, fmt.Errorf("neither pin nor recess: want one of them, to find the diameter: %w", units.ErrDomain)
	case !(rules.PinShare > 0 && rules.PinShare <= 1) || rules.Step < 0.01:
		return nil, fmt.Errorf("pin share %g, step %g: want above 0 to 1, and 0.01 turn or more: %w", rules.PinShare, rules.Step, units.ErrDomain)
	}
	choices := make([]Choice[Torsion], len(offers))
	for i, o := range offers {
		choices[i] = o.best(room, demand, rules)
	}
	return rank(choices), nil
}

func (r WireRules) withDefaults() WireRules {
	if r.PinShare == 0 {
		r.PinShare = 0.9
	}
	if r.LeastTurns == 0 {
		r.LeastTurns = 3
	}
	if r.Step == 0 {
		r.Step = 0.25
	}
	return r
}

// best tries diameters and turns.
func (o WireOffer) best(room TorsionRoom, demand Demand, rules WireRules) Choice[Torsion] {
	none := Choice[Torsion]{Offer: o.Name}
	if err := first(o.Wire.check(), o.Material.check()); err != nil {
		return none.fails(Fault{"offer", err.Error(), math.Inf(1)})
	}
	allowed, err := o.Material.Allowable(rules.Duty, o.Wire.Thickness())
	if err != nil {
		return none.fails(Fault{"offer", err.Error(), math.Inf(1)})
	}
	low, high := o.diameters(room, rules)
	if !(high >= low) {
		return none.fails(o.noRing(low, high))
	}
	most := rules.LeastTurns
	if room.Length != 0 {
		most = math.Max(most, float64(room.Length/o.Wire.Width()))
	} else {
		most += 40
	}
	return o.search(low, high, most, allowed, room, demand, rules).verdict(allowed)
}

// A wireTrial is one spring that was tried.
type wireTrial struct {
	choice Choice[Torsion]
	fits   bool  // it lies in the room
	bad    limit // what fails most, nothing where all is kept
}

// search tries mean diameters between low and high, and turns up to most.
func (o WireOffer) search(low, high units.Length, most float64, allowed Allowable, room TorsionRoom, demand Demand, rules WireRules) wireTrial {
	var found wireTrial
	const rings = 24
	for i := range rings + 1 {
		mean := low + units.Length(float64(i)/rings)*(high-low)
		for n := rules.LeastTurns; n <= most+1e-9; n += rules.Step {
			trial, err := o.try(mean, n, allowed, room, demand, rules)
			switch {
			case err != nil:
				return wireTrial{choice: Choice[Torsion]{Offer: o.Name}.fails(Fault{"offer", err.Error(), math.Inf(1)})}
			case found.choice.Spring.rate == 0 || trial.better(found):
				found = trial
			}
		}
	}
	return found
}

// better reports whether a is to be taken before b.
func (a wireTrial) better(b wireTrial) bool {
	over, than := a.bad.over(), b.bad.over()
	switch {
	case (over == 0) != (than == 0):
		return over == 0
	case over == 0:
		return a.choice.Use < b.choice.Use
	case a.fits != b.fits:
		return a.fits
	}
	return over < than
}

// verdict puts the trial into words.
func (w wireTrial) verdict(allowed Allowable) Choice[Torsion] {
	c := w.choice
	switch {
	case c.Reason != "":
		return c
	case w.bad.over() > 0:
		return c.fails(w.bad.fault())
	}
	c.Works = true
	s := c.Spring
	c.Reason = fmt.Sprintf("works: %.2f turns on %.2f mm mean, %.0f° wound on at rest, %.0f N mm at rest, %.0f N mm at full, stress %.0f MPa of %.0f MPa allowed",
		s.BodyTurns(), s.MeanDiameter().Millimetres(), c.Preload.Degrees(), c.AtRest.NewtonMillimetres(), c.AtFull.NewtonMillimetres(), c.Stress.Megapascals(), allowed.Stress.Megapascals())
	return c
}

// diameters returns the mean diameters between which the coil lies. Without a recess
// it tries up to twelve times the wire beyond the pin, without a pin down to an
// index of 4.
func (o WireOffer) diameters(room TorsionRoom, rules WireRules) (low, high units.Length) {
	t := o.Wire.Thickness()
	low = 4 * t
	if room.Pin != 0 {
		low = max(low, units.Length(float64(room.Pin)/rules.PinShare)+t)
	}
	high = low + 12*t
	if room.Recess != 0 {
		high = room.Recess - rules.Play - t
	}
	return low, min(high, 20*t)
}

func (o WireOffer) noRing(low, high units.Length) Fault {
	over := float64(low/max(high, 1e-9)) - 1
	return Fault{"room round the pin", fmt.Sprintf("mean diameter %.2f mm at least, room for %.2f mm: %.2f mm too thick", low.Millimetres(), high.Millimetres(), (low - high).Millimetres()), math.Abs(over)}
}

func (o WireOffer) try(mean units.Length, turns float64, allowed Allowable, room TorsionRoom, demand Demand, rules WireRules) (wireTrial, error) {
	s, err := NewTorsion(TorsionSpec{Wire: o.Wire, MeanDiameter: mean, BodyTurns: turns, Legs: rules.Legs, Material: o.Material, Constant: rules.Constant, Curvature: rules.Curvature})
	if err != nil {
		return wireTrial{}, err
	}
	preload := max(s.Angle(demand.AtRest), s.Angle(demand.LeastAtFull)-demand.Travel, rules.LeastPreload)
	full := preload + demand.Travel
	c := Choice[Torsion]{Offer: o.Name, Strength: allowed.Strength, Spring: s, Preload: preload, AtRest: s.Torque(preload), AtFull: s.Torque(full)}
	c.Stress = s.Stress(c.AtFull)
	unlimited := math.Inf(1)
	fits := [...]limit{
		{"length", "body at full wind", ofLength, float64(s.BodyLength(full)), orElse(float64(room.Length), unlimited)},
		{"room round the pin", "bore wanted at full wind", ofLength, float64(room.Pin) / rules.PinShare, float64(s.InsideDiameter(full))},
	}
	loads := [...]limit{
		{"stress", "stress", ofStress, float64(c.Stress), float64(allowed.Stress)},
		{"torque at full", "torque at full", ofTorque, float64(c.AtFull), orElse(float64(demand.MostAtFull), unlimited)},
	}
	_, tooBig := worst(fits[:])
	use, bad := worst(loads[:])
	c.Use = use
	if tooBig.over() > bad.over() {
		bad = tooBig
	}
	return wireTrial{c, tooBig.over() == 0, bad}, nil
}

// orElse returns x, or y where x is 0 for not given.
func orElse(x, y float64) float64 {
	if x == 0 {
		return y
	}
	return x
}

// WiresOfGauge returns an offer of round wire for each number of a gauge between two
// sizes, both included, the thinnest first.
func WiresOfGauge(g WireGauge, from, to units.Length, m Material) []WireOffer {
	var out []WireOffer
	for _, r := range g.rows() {
		d := units.Length(r.inch) * units.Inch
		if d >= from/sameSize && d <= to*sameSize {
			out = append(out, WireOffer{fmt.Sprintf("%v %s", g, r.number), Section{round, float64(d), float64(d)}, m})
		}
	}
	if g != MusicWireGauge {
		slices.Reverse(out)
	}
	return out
}
