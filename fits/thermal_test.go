package fits

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

const perMK = units.MicrometrePerMetreKelvin

func TestGrowth(t *testing.T) {
	// An aluminium case (23) on a steel bush (11.7), 30 mm, warmed 100 K: 30 × 11.3 × 100.
	d := Growth(mm(30), 23*perMK, 100) - Growth(mm(30), 11.7*perMK, 100)
	figures.Figure{Printed: "0.034", Source: "derived: 30 mm × 11.3e-6 × 100 K"}.Check(t, d.Millimetres())
	figures.Near(t, "there and back", float64(Growth(mm(30), 23*perMK, 100)+Growth(mm(30), 23*perMK, -100)), 0, 1e-18)
}

func TestShrinkTemperatures(t *testing.T) {
	// A tyre shrunk on a rigid wheel of 4 ft to 6 tons/in² with E 13000 tons/in²: the bore
	// is smaller than the wheel by the strain.
	p, err := NewPair(4*units.Foot, 6.2e-6*units.PerFahrenheitDegree, 4*units.Foot*(1+6.0/13000), 1e-12)
	if err != nil {
		t.Fatal(err)
	}
	hot, err := p.HeatHole(ReferenceTemperature(), 0)
	if err != nil {
		t.Fatal(err)
	}
	rise := hot.Sub(ReferenceTemperature())
	figures.Figure{Printed: "74.4", Source: "Junnarkar, Mechanics of Structures, ch. 1 ex. 14 p. 19 (through a companion)"}.Check(t, rise.FahrenheitDegrees())

	p, err = NewPair(mm(400), 12*perMK, mm(400.2), 12*perMK)
	if err != nil {
		t.Fatal(err)
	}
	hot, err = p.HeatHole(ReferenceTemperature(), 0)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "66.67", Source: "Bhavikatti, Strength of Materials, ex. 8.17 p. 350 (through a companion)"}.
		Misprint(t, hot.Sub(ReferenceTemperature()).Kelvins(), "worked with the outside diameter of 250 mm in place of the 400 mm where the parts meet")
}

func TestPairLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := mm(rapid.Float64Range(5, 200).Draw(t, "d"))
		delta := units.Length(rapid.Float64Range(0.0002, 0.002).Draw(t, "per diameter")) * d
		ah, as := units.Expansion(rapid.Float64Range(9, 25).Draw(t, "hole"))*perMK, units.Expansion(rapid.Float64Range(9, 25).Draw(t, "shaft"))*perMK
		shaftAt := units.Celsius(rapid.Float64Range(-80, 60).Draw(t, "shaft at"))
		easing := mm(rapid.Float64Range(0, 0.05).Draw(t, "easing"))
		p, err := NewPair(d, ah, d+delta, as)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "at 20 °C", float64(p.ClearanceAt(ReferenceTemperature(), ReferenceTemperature())), float64(p.Clearance()), 1e-15)
		if hot, err := p.HeatHole(shaftAt, easing); err == nil {
			if c := p.ClearanceAt(hot, shaftAt); c < easing-1e-12 {
				t.Errorf("hole at %v, shaft at %v: clearance %v, want %v", hot, shaftAt, c, easing)
			}
		}
		if cold, err := p.ChillShaft(units.Celsius(150), easing); err == nil {
			if c := p.ClearanceAt(units.Celsius(150), cold); c < easing-1e-12 {
				t.Errorf("shaft at %v: clearance %v, want %v", cold, c, easing)
			}
		}
		if free, err := p.FreedAt(); err == nil {
			near(t, "freed", float64(p.ClearanceAt(free, free)), 0, 1e-12)
		}
	})
}

func TestThermalErrors(t *testing.T) {
	for _, tc := range []struct {
		hole, shaft units.Length
		ah, as      units.Expansion
		says        string
	}{
		{0, mm(1), perMK, perMK, "more than 0 mm"}, {mm(1), units.Length(math.NaN()), perMK, perMK, "more than 0 mm"},
		{mm(1), mm(1), 0, perMK, "more than 0"}, {mm(1), mm(1), perMK, units.Expansion(math.Inf(1)), "more than 0"}, {mm(20), mm(25), perMK, perMK, "a tenth"},
	} {
		if _, err := NewPair(tc.hole, tc.ah, tc.shaft, tc.as); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%+v: %v", tc, err)
		}
	}
	tight, err := NewPair(mm(30), 11*perMK, mm(30.5), 11*perMK)
	if err != nil {
		t.Fatal(err)
	}
	loose, err := NewPair(mm(30), 11*perMK, mm(29.9), 11*perMK)
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		err  error
		says string
	}{
		{second(tight.HeatHole(ReferenceTemperature(), 0)), "less interference"}, {second(tight.ChillShaft(ReferenceTemperature(), 0)), "less interference"},
		{second(tight.HeatHole(ReferenceTemperature(), -1)), "easing"}, {second(tight.ChillShaft(ReferenceTemperature(), units.Length(math.NaN()))), "easing"},
		{second(tight.FreedAt()), "differ more"}, {second(loose.FreedAt()), "want interference"},
	} {
		if !errors.Is(tc.err, units.ErrDomain) || !strings.Contains(tc.err.Error(), tc.says) {
			t.Errorf("%v, want %q", tc.err, tc.says)
		}
	}
	if hot, err := loose.HeatHole(ReferenceTemperature(), 0); err != nil || hot != ReferenceTemperature() {
		t.Errorf("loose already: %v, %v", hot, err)
	}
}

func second[T any](_ T, err error) error { return err }

func TestCautionsAndLimits(t *testing.T) {
	if len(HeatCautions()) < 5 || len(PressCautions()) < 5 {
		t.Error("cautions")
	}
	// One by one, so that no limit changes unseen.
	want := []struct {
		what    string // how it begins
		celsius float64
	}{
		{"ball bearings and hardened steel", 120}, {"heat-treated aluminium", 150}, {"case-hardened steel", 160}, {"plain steel and iron", 300},
		{"household freezer", -18}, {"dry ice", -78},
	}
	got := append(HeatLimits(), ChillLimits()...)
	if len(got) != len(want) || len(ChillLimits()) != 2 {
		t.Fatalf("%d limits, want %d, the last 2 for chilling", len(got), len(want))
	}
	for i, w := range want {
		if !strings.HasPrefix(got[i].What, w.what) || got[i].Source == "" {
			t.Errorf("%+v, want %s", got[i], w.what)
		}
		figures.Near(t, w.what, got[i].Limit.Celsius(), w.celsius, 1e-9)
	}
}
