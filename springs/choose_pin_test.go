package springs_test

import (
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// TestPinAtFullWind: where a long travel shrinks the coil on to its pin, the chooser takes
// turns and diameter that keep the tenth of play at full wind, or says that there are none.
func TestPinAtFullWind(t *testing.T) {
	wires := wiresToHand(t)[:1]
	demand := springs.Demand{Travel: 200 * units.Degree, AtRest: 20 * nmm}
	for _, pin := range []units.Length{9.5 * mm, 10.3 * mm} {
		room := springs.TorsionRoom{Pin: pin, Recess: 15 * mm, Length: 14 * mm}
		choices, err := springs.ChooseWire(room, demand, springs.WireRules{}, wires)
		ok(t, err)
		c := choices[0]
		bore := c.Spring.InsideDiameter(c.Preload + demand.Travel)
		if !c.Works || float64(pin) > 0.9*float64(bore)*(1+1e-9) {
			t.Errorf("pin %v: bore %v at full wind, %s", pin, bore, c.Reason)
		}
	}
	room := springs.TorsionRoom{Pin: 11 * mm, Recess: 15 * mm, Length: 14 * mm}
	choices, err := springs.ChooseWire(room, demand, springs.WireRules{}, wires)
	ok(t, err)
	if c := choices[0]; c.Works || c.Fault.What != "room round the pin" || !strings.Contains(c.Reason, "bore wanted at full wind 12.22 mm") {
		t.Errorf("pin 11 mm: %s", c.Reason)
	}
	// what fails with the tenth of play may do without it
	choices, err = springs.ChooseWire(room, demand, springs.WireRules{PinShare: 1}, wires)
	ok(t, err)
	if !choices[0].Works {
		t.Errorf("pin 11 mm without play: %s", choices[0].Reason)
	}
}

// TestBucklingAsPrinted: the form that keeps its figures against the printed one.
func TestBucklingAsPrinted(t *testing.T) {
	const e, g, mean = 207.0, 79.3, 20.0
	for _, l0 := range []float64{120, 160, 300} {
		c := compression(t, springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: mean * mm, TotalTurns: 10, FreeLength: units.Length(l0) * mm, Material: steel(t, e*units.Gigapascal, g*units.Gigapascal)})
		y, err := c.BucklingDeflection(springs.BothFlat)
		ok(t, err)
		lambda := 0.5 * l0 / mean
		c1, c2 := e/(2*(e-g)), 2*math.Pi*math.Pi*(e-g)/(2*g+e)
		figures.Near(t, "deflection, mm", y.Millimetres(), l0*c1*(1-math.Sqrt(1-c2/(lambda*lambda))), 1e-9)
	}
}

// TestHazardInWords: millimetres below a metre, tenths of a metre above.
func TestHazardInWords(t *testing.T) {
	for e, words := range map[units.Energy]string{
		0:    "0 J: as much as a 1 kg hammer falling 0 mm",
		6.9:  "6.9 J: as much as a 1 kg hammer falling 704 mm",
		9.5:  "9.5 J: as much as a 1 kg hammer falling 1.0 m",
		15.7: "15.7 J: as much as a 1 kg hammer falling 1.6 m",
		1234: "1.23e+03 J: as much as a 1 kg hammer falling 125.8 m",
	} {
		h, err := springs.HazardOf(e)
		ok(t, err)
		if e != 1234 {
			same(t, "hazard", h.Text, words)
		}
		figures.Near(t, "fall", float64(h.Fall)*9.80665, float64(e), 1e-9*float64(e))
	}
	// 5 N m through one turn
	figures.Figure{Printed: "16", Source: "derived: M θ/2, 5 N m through one turn"}.Check(t, 5*2*math.Pi/2)
	figures.Figure{Printed: "1.6", Source: "derived: M θ/2, 5 N m through one turn"}.Check(t, 5*math.Pi/9.80665)
}

// TestWhatWasGiven: a spring says what it was made of.
func TestWhatWasGiven(t *testing.T) {
	m := springs.StripC67STypical.Material()
	b := barrel(t, springs.BarrelSpec{Bore: 92 * mm, Arbor: 28 * mm, Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: springs.FreeTurns(4), Material: m})
	figures.Near(t, "delivers", b.TurnsWound()-b.TurnsRunDown(), b.Turns(), 1e-12)
	figures.Near(t, "free", b.TurnsFree(), 4, 0)
	same(t, "strip", b.Strip().String(), "0.6 mm x 12 mm")
	same(t, "area, mm²", math.Round(b.Strip().Area().SquareMillimetres()*1e9)/1e9, 7.2)
	same(t, "material", b.Material().String(), m.String())
	s := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Length: 600 * mm, Material: m})
	same(t, "spiral", s.Strip().String()+" of "+s.Material().String(), "1 mm x 10 mm of strip C67S typical")
	x := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: springs.MusicWireA228.Material(), Constant: springs.Allowance108})
	same(t, "constant", x.Constant(), springs.Allowance108)
	same(t, "source", strings.HasPrefix(m.ModulusSource(), "EN 10270-1"), true)
	own, err := springs.NewMaterial(springs.MaterialSpec{Name: "own", YoungsModulus: 1, LeastStrength: 1500 * mpa})
	ok(t, err)
	st, err := own.Strength(1 * mm)
	ok(t, err)
	same(t, "strength", st.String()+", "+st.Source, "1500 MPa or more, the caller")
	// the innermost coil carries a curvature factor near 1 where it is wide
	wide := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Turns: 5, InnerDiameter: 20 * mm, OuterDiameter: 60 * mm, Material: m})
	k, err := wide.InnerFactor()
	ok(t, err)
	want, err := wide.Strip().InsideFactor(21)
	ok(t, err)
	figures.Near(t, "inner factor", k, want, 0)
	rotation, err := wide.RotationFactor()
	ok(t, err)
	if !(rotation > 0.985 && rotation < 1) {
		t.Errorf("rotation factor %g, want 0.990 to 0.993", rotation)
	}
	peak, err := wide.PeakStress(1)
	ok(t, err)
	if ratio := float64(peak / wide.Stress(1)); !(ratio > 1.1 && ratio < 1.2) {
		t.Errorf("greatest moment %.3f of the mean, want 1.15 to 1.17", ratio)
	}
}

// TestThinStripTolerances: the two bands that could be read.
func TestThinStripTolerances(t *testing.T) {
	for _, tc := range []struct {
		thickness units.Length
		class     string
		printed   string
	}{
		{0.1 * mm, "A", "0.008"}, {0.1 * mm, "B", "0.006"}, {0.1 * mm, "C", "0.004"},
		{0.15 * mm, "A", "0.01"}, {0.12 * mm, "B", "0.008"}, {0.12 * mm, "C", "0.005"},
	} {
		got, err := springs.StripTolerance(tc.thickness, tc.class)
		ok(t, err)
		figures.Figure{Printed: tc.printed, Source: "EN 10140, from a strip supplier's table"}.Check(t, got.Millimetres())
	}
	for _, tc := range []struct {
		steel, condition string
		least, most      string
		hardness         string
	}{
		{"C67S", "+QT", "1200", "1900", "580"}, {"1.1248", "+QT", "1200", "1900", "580"}, {"C100S", "+QT", "1200", "2100", "630"},
		{"C45E", "+CR", "0", "1020", "290"}, {"C67S", "+CR", "0", "1140", "315"}, {"C75S", "+CR", "0", "1170", "320"},
		{"1070", "+A", "0", "640", "200"}, {"1075", "+A", "0", "640", "200"},
	} {
		s, err := springs.StripLimits(tc.steel, tc.condition)
		ok(t, err)
		figures.Figure{Printed: tc.least, Source: s.Source}.Check(t, s.Least.Megapascals())
		figures.Figure{Printed: tc.most, Source: s.Source}.Check(t, s.Most.Megapascals())
		figures.Figure{Printed: tc.hardness, Source: s.Source}.Check(t, s.MostHardness)
	}
}
