package ignition_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func TestPlan(t *testing.T) {
	const source = "computed with 50 digits: stroke 80 mm, rod 160 mm"
	rim, err := ignition.NewRim(300 * units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	s := ignition.Setup{
		Stroke: units.Exact(80 * units.Millimetre), Rod: units.Exact(160 * units.Millimetre),
		Rim: rim, Figures: ignition.Rising, SettingStd: 0.3 * units.Millimetre, DialStd: 0.01 * units.Millimetre,
	}
	crank, err := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		degrees units.Angle
		digits  string
	}{{25, "0.0276037615785902"}, {2, "0.32838482138043"}} {
		p, err := ignition.PlanAt(s, crank.Drop(tc.degrees*units.Degree), 1)
		if err != nil {
			t.Fatal(err)
		}
		figures.Reference{Digits: tc.digits, Source: source + ", crank degrees for 0.01 mm"}.Check(t, p.PerDivision.Degrees())
		figures.Near(t, "angle", p.Angle.Degrees(), float64(tc.degrees), 1e-9)
		perRim := inMM(crank.DropPerRadian(tc.degrees*units.Degree)) / 150
		figures.Near(t, "uncertainty of one pair, mm", inMM(p.Std), math.Sqrt((0.09+math.Pow(0.01/perRim, 2))/2), 1e-9)
		figures.Reference{Digits: "1.14594543369699", Source: source + ", half the dead band of 0.01 mm"}.Check(t, p.DeadAngle.Degrees())
	}
	for _, want := range []float64{0.3, 0.15, 0.1} {
		for _, pairs := range []int{1, 4, 12} {
			p, err := ignition.PlanTDC(s, units.Length(want)*units.Millimetre, pairs)
			if floor := 0.3 / math.Sqrt(2*float64(pairs)); want < floor {
				if !errors.Is(err, ignition.ErrUnsettled) || !strings.Contains(err.Error(), "pairs for") {
					t.Errorf("%g mm from %d pairs: %v", want, pairs, err)
				}
				continue
			}
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, "uncertainty planned for, mm", inMM(p.Std), want, 1e-9)
			again, err := ignition.PlanAt(s, p.Drop, pairs)
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, "and what comes of that drop, mm", inMM(again.Std), want, 1e-9)
		}
	}
	for name, try := range map[string]func() error{
		"no pair":        func() error { _, err := ignition.PlanAt(s, units.Millimetre, 0); return err },
		"no drop":        func() error { _, err := ignition.PlanAt(s, 0, 1); return err },
		"whole stroke":   func() error { _, err := ignition.PlanAt(s, 80*units.Millimetre, 1); return err },
		"no setup":       func() error { _, err := ignition.PlanAt(ignition.Setup{}, 1, 1); return err },
		"nothing wanted": func() error { _, err := ignition.PlanTDC(s, 0, 1); return err },
		"no pairs":       func() error { _, err := ignition.PlanTDC(s, 1, 0); return err },
		"no setup here":  func() error { _, err := ignition.PlanTDC(ignition.Setup{}, 1, 1); return err },
	} {
		if err := try(); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// A plan keeps its promise: simulated pairs from its drop scatter as it says.
func TestPlanIsKept(t *testing.T) {
	s := demoSetup()
	s.Offset, s.Lean = units.Exact(units.Length(0)), units.Exact(units.Angle(0))
	p, err := ignition.PlanTDC(s, 0.15*units.Millimetre, 4)
	if err != nil {
		t.Fatal(err)
	}
	crank, err := geometry.NewCrank(s.Stroke.Value, s.Rod.Value)
	if err != nil {
		t.Fatal(err)
	}
	e := simulated{crank: crank, rim: s.Rim, tdc: 173 * units.Millimetre, setting: s.SettingStd, reading: 0.0095 * units.Millimetre}
	s.SlackKnown = true
	half, squares, n := inMM(p.Rim), 0.0, 0
	forSeeds(t, fewer(200), func(t *testing.T, rng *rand.Rand, seed int) {
		var series []ignition.Series
		for range 4 {
			series = append(series, e.series(rng, "", ignition.Forward, 173-half, 173+half-3, 173+half+3))
		}
		b, err := ignition.Bisect(s, series...)
		if err != nil {
			t.Fatal(err)
		}
		squares += math.Pow(inMM(b.Position.Value)-173, 2)
		n++
	})
	// Going between two places on the far side averages their errors a little.
	figures.Near(t, "scatter of the position, mm", math.Sqrt(squares/float64(n)), inMM(p.Std)*math.Sqrt(0.75), 0.015)
}

func TestCombine(t *testing.T) {
	const mm = units.Millimetre
	way := func(name string, v, u, dof float64, on string) ignition.Way {
		return ignition.Way{Name: name, Position: units.Reading[units.Length]{Value: units.Length(v) * mm, Std: units.Length(u) * mm, DoF: dof}, Readings: on}
	}
	// Two ways, 10.0 ± 1 and 13.0 ± 2: weights 4 to 1, mean 10.6, u = √0.8,
	// χ² = 0.36 + 1.44 = 1.8.
	c, err := ignition.Combine(way("a", 10, 1, 4, ""), way("b", 13, 2, 0, ""))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "mean", inMM(c.Position.Value), 10.6, 1e-12)
	figures.Near(t, "chi-square", c.ChiSquare, 1.8, 1e-12)
	figures.Near(t, "Birge's ratio", c.Ratio, math.Sqrt(1.8), 1e-12)
	figures.Near(t, "uncertainty", inMM(c.Position.Std), math.Sqrt(0.8*1.8), 1e-12)
	figures.Near(t, "chance, erfc(√(χ²/2))", c.Chance, math.Erfc(math.Sqrt(0.9)), 1e-9)
	figures.Near(t, "share", c.Ways[0].Share, 0.8, 1e-12)
	figures.Near(t, "degrees of freedom, 4/0.8²", c.Position.DoF, 4/0.64, 1e-12)
	for i, want := range []float64{-0.6 / math.Sqrt(0.2), 2.4 / math.Sqrt(3.2)} {
		figures.Near(t, "deviation in its own uncertainty", c.Ways[i].InStd, want, 1e-9)
	}
	// Ways that agree too well do not make the uncertainty smaller.
	c, err = ignition.Combine(way("a", 10, 1, 0, ""), way("b", 10, 1, 0, ""), way("c", 10, 1, 0, ""))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "uncertainty of three that agree", inMM(c.Position.Std), 1/math.Sqrt(3), 1e-12)
	// The same readings count once.
	c, err = ignition.Combine(way("fit", 10, 1, 0, "dial"), way("middles", 10.2, 1.5, 0, "dial"), way("stop", 10.1, 1, 0, ""))
	if err != nil {
		t.Fatal(err)
	}
	if c.Ways[1].Counted || !c.Ways[0].Counted || c.DoF != 1 {
		t.Errorf("%+v: want the middles not counted", c)
	}
	figures.Near(t, "mean of fit and stop", inMM(c.Position.Value), 10.05, 1e-12)
	// Disagreement shows.
	c, err = ignition.Combine(way("fit", 10, 0.1, 0, ""), way("stop", 11, 0.1, 0, ""))
	if err != nil {
		t.Fatal(err)
	}
	if c.Agree || !(inMM(c.Position.Std) > 0.4) || !strings.Contains(c.Ways[0].Verdict, "does not agree") {
		t.Errorf("%+v: want disagreement", c)
	}
	single, err := ignition.Combine(way("fit", 10, 0.1, 7, ""))
	if err != nil || single.Position.DoF != 7 || !single.Agree || single.Ratio != 0 {
		t.Errorf("one way: %+v, %v", single, err)
	}
	for _, bad := range [][]ignition.Way{nil, {way("exact", 1, 0, 0, "")}, {way("nan", math.NaN(), 1, 0, "")}, {way("dof", 1, 1, -1, "")}} {
		if _, err := ignition.Combine(bad...); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

func TestWordsOfDialReadings(t *testing.T) {
	for _, v := range []ignition.Turned{ignition.Forward, ignition.Backward} {
		text, err := v.MarshalText()
		var back ignition.Turned
		if err != nil || back.UnmarshalText(text) != nil || back != v {
			t.Errorf("%v: %q, %v, %v", v, text, back, err)
		}
	}
	for _, v := range []ignition.DialFigures{ignition.MoreGoingDown, ignition.LessGoingDown} {
		text, err := v.MarshalText()
		var back ignition.DialFigures
		if err != nil || back.UnmarshalText(text) != nil || back != v {
			t.Errorf("%v: %q, %v, %v", v, text, back, err)
		}
	}
	var turned ignition.Turned
	var dial ignition.DialFigures
	for _, err := range []error{turned.UnmarshalText([]byte("left")), dial.UnmarshalText([]byte("down"))} {
		if !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v, want ErrDomain", err)
		}
	}
	if _, err := turned.MarshalText(); !errors.Is(err, units.ErrDomain) {
		t.Errorf("%v, want ErrDomain", err)
	}
	if _, err := dial.MarshalText(); !errors.Is(err, units.ErrDomain) {
		t.Errorf("%v, want ErrDomain", err)
	}
}
