package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A BarrelRoom is the room for a power spring. Depth 0 leaves the width unjudged.
type BarrelRoom struct{ Bore, Arbor, Depth units.Length }

// A StripOffer is a strip to choose from.
type StripOffer struct {
	Name                     string
	Width, Thickness, Length units.Length
	Free                     FreeState
	Material                 Material
}

// StripRules are what the chooser keeps to.
type StripRules struct {
	Friction   float64 // of the coils, a share of the torque; see BarrelSpec
	SpareTurns float64 // to be left before solid; half a turn to one turn is common practice
	// StressShare of the strip's least strength is allowed without comment; 0 means 1.
	// Between that share of the least and of the most strength a choice works but is Tight.
	StressShare float64
}

// ChooseStrip holds strips against the room in a barrel and a demand, and ranks
// them. The pre-wind of each is what its torque at rest, and at full if that is
// asked, calls for, friction taken off; torque at full is what the hand feels in
// winding, friction put on. The stress is that of Barrel.Stress.
//
// The error is units.ErrDomain for a demand, room or rules that make no sense; what
// is wrong with an offer by itself stands as its Fault.
func ChooseStrip(room BarrelRoom, demand Demand, rules StripRules, offers []StripOffer) ([]Choice[Barrel], error) {
	if rules.StressShare == 0 {
		rules.StressShare = 1
	}
	err := first(demand.check(), positive("bore", room.Bore), positive("arbor", room.Arbor), positive("bore beyond the arbor", room.Bore-room.Arbor),
		notNegative("depth", room.Depth), notNegative("spare turns", rules.SpareTurns), positive("share of strength", rules.StressShare))
	if err == nil && !(rules.Friction >= 0 && rules.Friction < 1) {
		err = fmt.Errorf("friction %g: want 0 to below 1, a share of the torque: %w", rules.Friction, units.ErrDomain)
	}
	if err != nil {
		return nil, err
	}
	choices := make([]Choice[Barrel], len(offers))
	for i, o := range offers {
		choices[i] = o.judge(room, demand, rules)
	}
	return rank(choices), nil
}

func (o StripOffer) judge(room BarrelRoom, demand Demand, rules StripRules) Choice[Barrel] {
	c := Choice[Barrel]{Offer: o.Name}
	if fault, ok := o.doesNotFit(room); ok {
		return c.fails(fault)
	}
	b, err := NewBarrel(BarrelSpec{room.Bore, room.Arbor, room.Depth, o.Width, o.Thickness, o.Length, o.Free, rules.Friction, o.Material})
	if err == nil {
		c.Strength, err = o.Material.Strength(o.Thickness)
	}
	if err != nil {
		return c.fails(Fault{"offer", err.Error(), math.Inf(1)})
	}
	c.Spring = b
	pre, travel := b.preWindFor(demand), demand.Travel.Turns()
	full := pre + travel
	c.Preload = units.Angle(pre) * units.Turn
	c.AtRest = units.Torque(b.meanBeyond(pre) * (1 - rules.Friction))
	c.AtFull = units.Torque(b.meanBeyond(full) * (1 + rules.Friction))
	c.Stress = b.Stress(full)
	least, most := units.Pressure(rules.StressShare)*c.Strength.Least, units.Pressure(rules.StressShare)*c.Strength.most()
	limits := []limit{
		{"turns", "", ofTurns, full + rules.SpareTurns, b.Turns()},
		{"stress", "stress", ofStress, float64(c.Stress), float64(most)},
	}
	if demand.MostAtFull != 0 {
		limits = append(limits, limit{"torque at full", "torque at full", ofTorque, float64(c.AtFull), float64(demand.MostAtFull)})
	}
	use, bad := worst(limits)
	c.Use = math.Max(use, float64(c.Stress/least))
	if bad.over() > 0 {
		return c.fails(bad.fault())
	}
	c.Works, c.Tight = true, c.Stress > least
	c.Reason = fmt.Sprintf("works: %.2f turns wound on at rest, %.2f of %.2f turns at full, %.0f N mm at rest, %.0f N mm at full, stress %.0f MPa in strip of %v",
		pre, full, b.Turns(), c.AtRest.NewtonMillimetres(), c.AtFull.NewtonMillimetres(), c.Stress.Megapascals(), c.Strength)
	if c.Tight {
		c.Reason += ": close to the strip's own strength"
	}
	return c
}

func (o StripOffer) doesNotFit(room BarrelRoom) (Fault, bool) {
	limits := []limit{{"length", "strip", ofLength, float64(o.Length), float64(2 * HalfFillLength(room.Bore, room.Arbor, o.Thickness))}}
	if room.Depth != 0 {
		limits = append(limits, limit{"width", "strip", ofLength, float64(o.Width), float64(room.Depth)})
	}
	_, bad := worst(limits)
	return bad.fault(), bad.over() > 0
}

// preWindFor returns the least pre-wind for the torques wanted at both ends. It may
// lie beyond what the barrel allows.
func (b Barrel) preWindFor(d Demand) float64 {
	return math.Max(b.windFor(float64(d.AtRest)), b.windFor(float64(d.LeastAtFull))-d.Travel.Turns())
}

// windFor is PreWind with the straight line carried on past solid.
func (b Barrel) windFor(torque float64) float64 {
	if n, err := b.PreWind(units.Torque(torque)); err == nil {
		return n
	}
	return torque/(1-b.spec.Friction)/(2*math.Pi*float64(b.Rate())) + b.free - b.down
}

// meanBeyond is the mean torque, with the straight line carried on past solid.
func (b Barrel) meanBeyond(turns float64) float64 {
	if turns > b.Turns() {
		return float64(b.LineTorque(turns))
	}
	m, _ := b.mean(turns)
	return m
}

// StripsByThickness returns an offer for each thickness, of the width given and of
// the length that gives most turns in the room, to choose among standard
// thicknesses.
func StripsByThickness(room BarrelRoom, width units.Length, thicknesses []units.Length, free FreeState, m Material) []StripOffer {
	out := make([]StripOffer, len(thicknesses))
	for i, t := range thicknesses {
		l := HalfFillLength(room.Bore, room.Arbor, t)
		out[i] = StripOffer{fmt.Sprintf("%v x %v x %.0f mm", t, width, l.Millimetres()), width, t, l, free, m}
	}
	return out
}
