package fits

import (
	"errors"
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func TestRingGap(t *testing.T) {
	figures.Near(t, "a thou wider", GapChange(units.Thou).Thou(), math.Pi, 1e-12)
	feeler := 0.02 * units.Millimetre
	at := func(in float64, u units.Length) units.Reading[units.Length] {
		return units.WithStd(units.Length(in)*units.Inch, u)
	}
	narrow := RingPlace{at(0.014, feeler), at(2.8756, 0.5*units.Thou)}
	b, err := BoreByRing(at(0.029, feeler), narrow)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "bore", b.Value.Inches(), 2.8756+0.015/math.Pi, 1e-9)
	figures.Near(t, "u", b.Std.Millimetres(), math.Hypot(0.02*math.Sqrt2/math.Pi, 0.0127), 1e-9)

	// The bore of an invented pumping engine: the gaps agree with the gauge.
	c, err := CheckGaps(RingPlace{at(0.029, feeler), at(2.8804, 0.5*units.Thou)}, narrow)
	if err != nil || !c.Agree {
		t.Errorf("%+v, %v", c, err)
	}
	figures.Near(t, "by gap, thou", c.ByGap.Value.Thou(), 15/math.Pi, 1e-6)
	figures.Near(t, "by bore, thou", c.ByBore.Value.Thou(), 4.8, 1e-6)
	for _, gap := range []float64{0.044, 0.001} {
		c, err = CheckGaps(RingPlace{at(gap, feeler), at(2.8804, 0.5*units.Thou)}, narrow)
		if err != nil || c.Agree {
			t.Errorf("%+v, %v", c, err)
		}
	}
	for _, bad := range []RingPlace{{at(-1, 0), at(3, 0)}, {at(0.01, -1), at(3, 0)}, {at(math.NaN(), 0), at(3, 0)}, {at(0.01, 0), at(0, 0)}} {
		for _, err := range []error{second(BoreByRing(at(0.01, 0), bad)), second(CheckGaps(narrow, bad)), second(CheckGaps(bad, narrow))} {
			if !errors.Is(err, units.ErrDomain) {
				t.Errorf("%+v: %v", bad, err)
			}
		}
	}
	if _, err := BoreByRing(at(-1, 0), narrow); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

func warm() Warmth {
	return Warmth{Bore: mm(73), BoreExpansion: 11 * perMK, PartExpansion: 12 * perMK, BoreTemperature: units.Celsius(120), PartTemperature: units.Celsius(200)}
}

// The girth of the bore less the length of the ring is the gap, hot and cold.
func TestHotGap(t *testing.T) {
	h, err := NewHotBore(warm())
	if err != nil {
		t.Fatal(err)
	}
	hot := h.HotGap(mm(0.3))
	ring := (math.Pi*73 - 0.3) * (1 + 12e-6*180)
	girth := math.Pi * 73 * (1 + 11e-6*100)
	figures.Near(t, "gap, mm", hot.Millimetres(), girth-ring, 1e-3) // the ring is shorter than the girth by the gap: second order
	figures.Near(t, "there and back", h.ColdGap(hot).Millimetres(), 0.3, 1e-12)
}

func TestHotClearance(t *testing.T) {
	w := warm()
	w.PartExpansion, w.PartTemperature = 21*perMK, units.Celsius(180)
	h, err := NewHotBore(w)
	if err != nil {
		t.Fatal(err)
	}
	c := h.ColdClearance(mm(0.03))
	figures.Near(t, "cold", c.Millimetres(), 0.03+73*(21e-6*160-11e-6*100), 1e-12)
	figures.Near(t, "there and back", h.HotClearance(c).Millimetres(), 0.03, 1e-12)
	p, err := NewPair(mm(73), 11*perMK, mm(73)-c, 21*perMK)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "hot", p.ClearanceAt(units.Celsius(120), units.Celsius(180)).Millimetres(), 0.03, 1e-3)
}

func TestHotBoreErrors(t *testing.T) {
	for _, spoil := range []func(*Warmth){
		func(w *Warmth) { w.Bore = 0 }, func(w *Warmth) { w.Bore = units.Length(math.Inf(1)) }, func(w *Warmth) { w.BoreExpansion = 0 },
		func(w *Warmth) { w.PartExpansion = units.Expansion(math.NaN()) }, func(w *Warmth) { w.BoreTemperature = units.Celsius(2000) }, func(w *Warmth) { w.PartTemperature = 0 },
	} {
		w := warm()
		spoil(&w)
		if _, err := NewHotBore(w); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%+v: %v", w, err)
		}
	}
}

// The habits, one by one, so that no number of them changes unseen.
func TestCustoms(t *testing.T) {
	want := []struct {
		what      string
		low, high float64 // of the diameter
	}{
		{"journal in a plain bush, splash or oil-mist", 0.0010, 0.0015},
		{"journal in a plain bush, well oiled and slow", 0.0005, 0.0010},
		{"gudgeon pin in a bronze bush", 0.0005, 0.0010},
		{"cast-iron piston, skirt, in a cast-iron bore", 0.0010, 0.0020},
		{"cast-iron piston, lands above the top ring", 0.0040, 0.0060},
		{"aluminium piston, skirt, in a cast-iron bore", 0.0015, 0.0030},
		{"piston ring, end gap, against the bore", 0.0030, 0.0045},
	}
	got := Customs()
	if len(got) != len(want) {
		t.Fatalf("%d habits, want %d", len(got), len(want))
	}
	for i, w := range want {
		c := got[i]
		if c != (Custom{w.what, w.low, w.high, "common practice, no source"}) {
			t.Errorf("%+v, want %+v", c, w)
		}
		r := c.Clearance(units.Inch)
		figures.Near(t, c.What, r.Min.Inches(), w.low, 1e-12)
		figures.Near(t, c.What, r.Max.Inches(), w.high, 1e-12)
	}
}

func TestLeak(t *testing.T) {
	r, err := LeakRatio(mm(0.1), mm(0.05))
	figures.Near(t, "twice the clearance", r, 8, 1e-12)
	if err != nil {
		t.Error(err)
	}
	for _, e := range []float64{0, 0.3, 0.8, 1} {
		got, err := EccentricLeak(e)
		if err != nil {
			t.Fatal(err)
		}
		want := integrate(func(th float64) float64 { return math.Pow(1+e*math.Cos(th), 3) }, 0, 2*math.Pi) / (2 * math.Pi)
		figures.Near(t, "eccentric", got, want, 1e-9)
	}
	for _, err := range []error{
		second(LeakRatio(0, mm(1))), second(LeakRatio(mm(1), units.Length(math.NaN()))), second(LeakRatio(mm(1), units.Length(math.Inf(1)))),
		second(EccentricLeak(-0.1)), second(EccentricLeak(1.1)), second(EccentricLeak(math.NaN())),
	} {
		if !errors.Is(err, units.ErrDomain) {
			t.Error(err)
		}
	}
}
