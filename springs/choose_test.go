package springs_test

import (
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// The demand of the demonstration engine's rope drum: 1150 mm of rope on 80 mm, and 12 N
// at the rope to bring drum and rope home.
func ropeDemand(t testing.TB) (springs.BarrelRoom, springs.Demand) {
	t.Helper()
	turns, err := springs.DrumTurns(1150*mm, 80*mm)
	ok(t, err)
	room := springs.BarrelRoom{Bore: 92 * mm, Arbor: 28 * mm, Depth: 15 * mm}
	return room, springs.Demand{Travel: units.Angle(turns) * units.Turn, AtRest: units.Torque(12 * 0.040)}
}

func stripsOnOffer() []springs.StripOffer {
	m := springs.StripC67STypical.Material()
	slack := springs.SlackOnWall() // they come coiled
	return []springs.StripOffer{
		{Name: "A", Width: 12.7 * mm, Thickness: 0.60 * mm, Length: 2400 * mm, Free: slack, Material: m},
		{Name: "B", Width: 12.7 * mm, Thickness: 0.50 * mm, Length: 3200 * mm, Free: slack, Material: m},
		{Name: "C", Width: 13.0 * mm, Thickness: 0.80 * mm, Length: 2000 * mm, Free: slack, Material: m},
	}
}

// TestThreeStrips: A works, B is refused for its turns, C pulls harder, at a stress close
// to the strip's own strength.
func TestThreeStrips(t *testing.T) {
	room, demand := ropeDemand(t)
	choices, err := springs.ChooseStrip(room, demand, springs.StripRules{}, stripsOnOffer())
	ok(t, err)
	order := ""
	by := map[string]springs.Choice[springs.Barrel]{}
	for _, c := range choices {
		order += c.Offer
		by[c.Offer] = c
	}
	same(t, "order", order, "ACB")

	a := by["A"]
	if !a.Works || a.Tight {
		t.Errorf("A: %s", a.Reason)
	}
	// by hand: M a turn = π E b t³/(6 L), the rest as in the printed formulas
	perTurn := math.Pi * 206e3 * 12.7 * 0.6 * 0.6 * 0.6 / (6 * 2400)
	figures.Near(t, "A, turns wound on at rest", a.Preload.Turns(), 480/perTurn, 1e-6)
	figures.Near(t, "A, torque at rest, N mm", a.AtRest.NewtonMillimetres(), 480, 1e-6)
	travel := 1150 / (math.Pi * 80)
	figures.Near(t, "A, torque at full, N mm", a.AtFull.NewtonMillimetres(), 480+travel*perTurn, 1e-6)
	figures.Near(t, "A, stress, MPa", a.Stress.Megapascals(), math.Pi*206e3*0.6*(480/perTurn+travel)/2400, 1e-6)

	b := by["B"]
	if b.Works || b.Fault.What != "turns" || !strings.Contains(b.Reason, "fails by its turns: 13.546 turns wanted, 13.282 there: 0.264 too few") {
		t.Errorf("B: %s", b.Reason)
	}

	c := by["C"]
	if !c.Works || !c.Tight || !strings.HasSuffix(c.Reason, "stress 1531 MPa in strip of 1460 MPa to 1620 MPa: close to the strip's own strength") {
		t.Errorf("C: %s", c.Reason)
	}
	if c.AtFull < 2*a.AtFull {
		t.Errorf("C pulls with %v at full, A with %v: want twice as hard", c.AtFull, a.AtFull)
	}
}

// TestFreeStateDecides: the same strip taken as straight does the same job with the torque
// of its set-up thrown in, and quite another stress.
func TestFreeStateDecides(t *testing.T) {
	room, demand := ropeDemand(t)
	offers := stripsOnOffer()[:1]
	offers[0].Free = springs.StraightStrip()
	choices, err := springs.ChooseStrip(room, demand, springs.StripRules{}, offers)
	ok(t, err)
	c := choices[0]
	if c.Works || c.Fault.What != "stress" {
		t.Errorf("straight strip: %s", c.Reason)
	}
	if c.Preload.Turns() > 0.5 {
		t.Errorf("straight strip: pre-wind %.2f turns, want next to none", c.Preload.Turns())
	}
}

// TestStripFaults: each thing that an offer can fail by is named, with figures.
func TestStripFaults(t *testing.T) {
	room, demand := ropeDemand(t)
	m := springs.StripC67STypical.Material()
	slack := springs.SlackOnWall()
	demand.MostAtFull = 1200 * nmm
	for _, tc := range []struct {
		offer springs.StripOffer
		what  string
		words string
	}{
		{springs.StripOffer{Width: 16 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: slack, Material: m}, "width", "strip 16.00 mm, room for 15.00 mm: 1.00 mm too much"},
		{springs.StripOffer{Width: 12 * mm, Thickness: 0.6 * mm, Length: 12000 * mm, Free: slack, Material: m}, "length", "strip 12000.00 mm, room for 10053.10 mm"},
		{springs.StripOffer{Width: 13 * mm, Thickness: 0.8 * mm, Length: 2000 * mm, Free: slack, Material: m}, "torque at full", "1200 N mm allowed"},
		{springs.StripOffer{Width: 5 * mm, Thickness: 0.45 * mm, Length: 1500 * mm, Free: slack, Material: m}, "turns", "too few"},
		{springs.StripOffer{Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: slack}, "offer", "no material given"},
		{springs.StripOffer{Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Material: m}, "offer", "free state of the strip not stated"},
		{springs.StripOffer{Width: 12 * mm, Thickness: 0.2 * mm, Length: 2400 * mm, Free: slack, Material: m}, "offer", "0.3 mm to 3 mm"},
	} {
		choices, err := springs.ChooseStrip(room, demand, springs.StripRules{}, []springs.StripOffer{tc.offer})
		ok(t, err)
		if c := choices[0]; c.Works || c.Fault.What != tc.what || !strings.Contains(c.Reason, tc.words) {
			t.Errorf("%+v: %s, want %s: %s", tc.offer, c.Reason, tc.what, tc.words)
		}
	}
}

// TestFrictionAsksForMore: friction raises the pre-wind and what the hand feels.
func TestFrictionAsksForMore(t *testing.T) {
	room, demand := ropeDemand(t)
	offers := stripsOnOffer()[:1]
	free, err := springs.ChooseStrip(room, demand, springs.StripRules{}, offers)
	ok(t, err)
	rubbed, err := springs.ChooseStrip(room, demand, springs.StripRules{Friction: 0.1}, offers)
	ok(t, err)
	figures.Near(t, "pre-wind", rubbed[0].Preload.Turns(), free[0].Preload.Turns()/0.9, 1e-6)
	figures.Near(t, "drives with what was asked", float64(rubbed[0].AtRest), float64(demand.AtRest), 1e-9)
	if rubbed[0].AtFull <= free[0].AtFull {
		t.Errorf("at full %v with friction, %v without", rubbed[0].AtFull, free[0].AtFull)
	}
	_, err = springs.ChooseStrip(room, demand, springs.StripRules{Friction: 1}, offers)
	refused(t, err, "friction 1")
	_, err = springs.ChooseStrip(room, springs.Demand{}, springs.StripRules{}, offers)
	refused(t, err, "travel")
	demand.MostAtFull = demand.AtRest / 2
	_, err = springs.ChooseStrip(room, demand, springs.StripRules{}, offers)
	refused(t, err, "most torque at full")
}

// leverDemand is that of the demonstration engine's spark lever.
func leverDemand() (springs.TorsionRoom, springs.Demand) {
	return springs.TorsionRoom{Pin: 9.5 * mm, Recess: 17 * mm, Length: 12 * mm},
		springs.Demand{Travel: 55 * units.Degree, AtRest: 60 * nmm, MostAtFull: 4 * 60 * nmm}
}

func wiresToHand(t testing.TB) []springs.WireOffer {
	var out []springs.WireOffer
	for _, d := range []units.Length{1.22 * mm, 1.42 * mm, 1.63 * mm} {
		out = append(out, springs.WireOffer{Name: d.String(), Wire: wire(t, d), Material: springs.MusicWireA228.Material()})
	}
	return out
}

// TestThreeWires: the two thinner wires do, the thickest pulls too hard in the length there
// is.
func TestThreeWires(t *testing.T) {
	room, demand := leverDemand()
	choices, err := springs.ChooseWire(room, demand, springs.WireRules{Play: 0.3 * mm}, wiresToHand(t))
	ok(t, err)
	want := []struct {
		offer string
		works bool
	}{{"1.22 mm", true}, {"1.42 mm", true}, {"1.63 mm", false}}
	for i, c := range choices {
		if c.Offer != want[i].offer || c.Works != want[i].works {
			t.Errorf("place %d: %s %s", i+1, c.Offer, c.Reason)
		}
		full := c.Preload + demand.Travel
		s := c.Spring
		// whatever was chosen lies in the room, and at rest holds as asked
		if s.BodyLength(full) > room.Length || s.OutsideDiameter(0) > room.Recess-0.3*mm+1e-12 || float64(room.Pin) > 0.9*float64(s.InsideDiameter(full))+1e-12 {
			t.Errorf("%s does not lie in the room: length %v, outside %v, bore %v", c.Offer, s.BodyLength(full), s.OutsideDiameter(0), s.InsideDiameter(full))
		}
		figures.Near(t, c.Offer+", torque at rest, N mm", c.AtRest.NewtonMillimetres(), 60, 1e-9)
		if c.Works != (c.AtFull <= demand.MostAtFull) {
			t.Errorf("%s: %v at full", c.Offer, c.AtFull)
		}
	}
	last := choices[2]
	if last.Fault.What != "torque at full" || !strings.Contains(last.Reason, "240 N mm allowed") {
		t.Errorf("1.63 mm: %s", last.Reason)
	}
	// with fewer coils or a smaller coil 1.63 mm only pulls harder: the best that lies in the
	// room is the longest that the length takes
	if n := last.Spring.BodyTurns(); n != 6 {
		t.Errorf("1.63 mm: %g turns, want 6, the most in 12 mm", n)
	}
	// asking for more torque at rest turns the thin wire away by nothing but stress or pull
	demand.AtRest = 150 * nmm
	choices, err = springs.ChooseWire(room, demand, springs.WireRules{}, wiresToHand(t))
	ok(t, err)
	if !choices[0].Works || choices[0].Offer != "1.22 mm" {
		t.Errorf("150 N mm at rest: %s %s", choices[0].Offer, choices[0].Reason)
	}
}

func TestWireFaults(t *testing.T) {
	room, demand := leverDemand()
	thick := []springs.WireOffer{{Name: "4 mm", Wire: wire(t, 4*mm), Material: springs.MusicWireA228.Material()}}
	choices, err := springs.ChooseWire(room, demand, springs.WireRules{}, thick)
	ok(t, err)
	if c := choices[0]; c.Works || c.Fault.What != "room round the pin" {
		t.Errorf("4 mm: %s", c.Reason)
	}
	bronze := []springs.WireOffer{{Name: "bronze", Wire: wire(t, 1.2*mm), Material: springs.PhosphorBronzeB159.Material()}, {Name: "nothing"}}
	choices, err = springs.ChooseWire(room, demand, springs.WireRules{}, bronze)
	ok(t, err)
	for _, c := range choices {
		if c.Works || c.Fault.What != "offer" {
			t.Errorf("%s: %s", c.Offer, c.Reason)
		}
	}
	room.Length = 2 * mm
	choices, err = springs.ChooseWire(room, demand, springs.WireRules{}, wiresToHand(t))
	ok(t, err)
	for _, c := range choices {
		if c.Works || c.Fault.What != "length" {
			t.Errorf("2 mm long: %s: %s", c.Offer, c.Reason)
		}
	}
	demand.MostAtFull = 0
	demand.LeastAtFull = 5 * units.NewtonMetre
	room.Length = 12 * mm
	choices, err = springs.ChooseWire(room, demand, springs.WireRules{}, wiresToHand(t))
	ok(t, err)
	for _, c := range choices {
		if c.Works || c.Fault.What != "stress" {
			t.Errorf("5 N m: %s: %s", c.Offer, c.Reason)
		}
	}
	_, err = springs.ChooseWire(springs.TorsionRoom{Length: 12 * mm}, springs.Demand{Travel: 1}, springs.WireRules{}, nil)
	refused(t, err, "neither pin nor recess")
	_, err = springs.ChooseWire(room, demand, springs.WireRules{PinShare: 1.2}, nil)
	refused(t, err, "pin share 1.2")
}

// TestChooseWireIsBest: no other turns or diameter on a finer grid does better by more than the
// step between them.
func TestChooseWireIsBest(t *testing.T) {
	room, demand := leverDemand()
	choices, err := springs.ChooseWire(room, demand, springs.WireRules{}, wiresToHand(t)[:2])
	ok(t, err)
	for _, c := range choices {
		best := math.Inf(1)
		for d := 12.0; d <= 16; d += 0.01 {
			for n := 3.0; n < 10; n += 0.25 {
				s, err := springs.NewTorsion(springs.TorsionSpec{Wire: c.Spring.Wire(), MeanDiameter: units.Length(d) * mm, BodyTurns: n, Material: c.Spring.Material()})
				ok(t, err)
				full := s.Angle(60*nmm) + demand.Travel
				if s.OutsideDiameter(0) > room.Recess || s.BodyLength(full) > room.Length || float64(room.Pin) > 0.9*float64(s.InsideDiameter(full)) {
					continue
				}
				a, err := s.Material().Allowable(springs.SteadyBending, s.Wire().Thickness())
				ok(t, err)
				best = math.Min(best, math.Max(float64(s.Torque(full)/demand.MostAtFull), float64(s.Stress(s.Torque(full))/a.Stress)))
			}
		}
		if c.Use > best*1.001 {
			t.Errorf("%s: uses %.4f, %.4f can be had", c.Offer, c.Use, best)
		}
	}
}

func TestOffers(t *testing.T) {
	swg := springs.WiresOfGauge(springs.StandardWireGauge, 1.2*mm, 1.7*mm, springs.MusicWireA228.Material())
	names := ""
	for _, w := range swg {
		names += w.Name + ", "
	}
	same(t, "SWG", names, "SWG 18, SWG 17, SWG 16, ")
	music := springs.WiresOfGauge(springs.MusicWireGauge, 0.055*inch, 0.063*inch, springs.MusicWireA228.Material())
	same(t, "music wire", len(music), 3)
	same(t, "thinnest first", music[0].Name, "music wire gauge 24")
	room, _ := ropeDemand(t)
	strips := springs.StripsByThickness(room, 12*mm, []units.Length{0.5 * mm, 0.6 * mm}, springs.SlackOnWall(), springs.StripC67S.Material())
	same(t, "strips", len(strips), 2)
	figures.Near(t, "half fill", float64(strips[1].Length), float64(springs.HalfFillLength(room.Bore, room.Arbor, 0.6*mm)), 0)
}
