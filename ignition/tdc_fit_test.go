package ignition_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func findTDC(t *testing.T, s ignition.Setup, series ...ignition.Series) ignition.TDC {
	t.Helper()
	f, err := ignition.FindTDC(s, series...)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// The demo engine's readings: fit, bisection and stop agree, and only the slip
// is left out.
func TestDemoEngineAllWaysAgree(t *testing.T) {
	s := demoSetup()
	fit := findTDC(t, s, demoSeries()...)
	if len(fit.Slips) != 1 || fit.Slips[0].Series != "C" || inMM(fit.Slips[0].Rim) != 110 {
		t.Fatalf("slips %v, want series C, rim 110 mm and no other", fit.Slips)
	}
	const want = "series C, rim 110 mm: about 1.00 mm too much, one turn of the small hand?"
	if got := fit.Slips[0].String(); got != want {
		t.Errorf("got %q\nwant %q", got, want)
	}
	middle, err := ignition.Bisect(s, demoSeries()...)
	if err != nil {
		t.Fatal(err)
	}
	stop, err := ignition.Stop(s, demoStop()...)
	if err != nil {
		t.Fatal(err)
	}
	eye, err := ignition.ByEye(s, demoEye()...)
	if err != nil {
		t.Fatal(err)
	}
	agree := func(what string, a, b units.Reading[units.Length]) {
		t.Helper()
		if d := math.Abs(inMM(a.Value - b.Value)); !(d < 2*math.Hypot(inMM(a.Std), inMM(b.Std))) {
			t.Errorf("%s: %v and %v", what, a, b)
		}
	}
	agree("fit and stop", fit.Position, stop.Position)
	agree("fit and bisection", fit.Position, middle.Position)
	agree("bisection and stop", middle.Position, stop.Position)
	agree("by eye and fit", eye.Position, fit.Position)
	agree("slack of fit and bisection", fit.Slack, middle.Slack)
	if !(fit.Scatter > 0.7 && fit.Scatter < 1.2) {
		t.Errorf("scatter %.2f of what was stated, want about 1", fit.Scatter)
	}
	if !(inMM(fit.Position.Std) < 0.06 && inMM(eye.Position.Std) > 2) {
		t.Errorf("fit %v, by eye %v: want the fit sure and the eye not", fit.Position, eye.Position)
	}
}

// A neighbour's engine with the cylinder 8 mm to one side.
func TestNeighbourSideOfOffset(t *testing.T) {
	fit := findTDC(t, neighbourSetup(), neighbourSeries())
	if len(fit.Slips) != 0 {
		t.Errorf("good readings accused: %v", fit.Slips)
	}
	if len(fit.Sides) != 2 || inMM(fit.Sides[0].Offset) != 8 || !(fit.Sides[0].Share > 0.999999) {
		t.Fatalf("sides %+v, want +8 mm, a million to one", fit.Sides)
	}
	if d := fit.Sides[1].ChiSquare - fit.Sides[0].ChiSquare; !(d > 30) {
		t.Errorf("chi-square parts the sides by %.1f, want more than 30", d)
	}
	if apart := inMM(fit.Sides[1].Position.Value - fit.Sides[0].Position.Value); !(apart > 0.3) {
		t.Errorf("the sides lie %.2f mm apart: the wrong one must matter", apart)
	}
	// With nothing known of the offset the readings find the side and about the size.
	s := neighbourSetup()
	s.Offset, s.SideUnknown, s.OffsetUnknown = units.Exact(units.Length(0)), false, true
	free := findTDC(t, s, neighbourSeries())
	if z := (inMM(free.Offset.Value) - 8) / inMM(free.Offset.Std); !(math.Abs(z) < 2) || !(free.Offset.Value > 2*free.Offset.Std) {
		t.Errorf("offset %v, want 8 mm within 2 u and surely positive", free.Offset)
	}
	// Left out of account the offset moves the position by a good part of a millimetre.
	s.OffsetUnknown = false
	none := findTDC(t, s, neighbourSeries())
	if !(none.Scatter > fit.Scatter) {
		t.Errorf("scatter without offset %.2f, with %.2f: want more", none.Scatter, fit.Scatter)
	}
}

func TestSidesThatCannotBeToldApart(t *testing.T) {
	s := neighbourSetup()
	s.Offset.Value = 0.5 * units.Millimetre
	fit := findTDC(t, s, partOf(neighbourSeries(), 10, 20)...)
	if fit.Sides[0].Share > 0.99 {
		t.Fatalf("sides %+v told apart", fit.Sides)
	}
	if !strings.Contains(strings.Join(fit.Notes, "\n"), "do not tell which side") {
		t.Errorf("notes %q", fit.Notes)
	}
}

func TestCoverageOfFit(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*ignition.Setup)
		read   func(*rand.Rand, simulated) []ignition.Series
	}{
		{"both ways", func(*ignition.Setup) {}, bothWays},
		{"rod unknown", func(s *ignition.Setup) { s.RodUnknown = true; s.Rod.Value = 0 }, bothWays},
		{"offset unknown", func(s *ignition.Setup) { s.OffsetUnknown = true }, bothWays},
		{"one way, slack found by the shape", func(*ignition.Setup) {}, func(rng *rand.Rand, e simulated) []ignition.Series {
			return bothWays(rng, e)[:1]
		}},
		{"lopsided", func(*ignition.Setup) {}, func(rng *rand.Rand, e simulated) []ignition.Series {
			return []ignition.Series{
				e.series(rng, "", ignition.Forward, every(130, 350, 10)...),
				e.series(rng, "", ignition.Backward, every(350, 130, 10)...),
			}
		}},
		{"few", func(*ignition.Setup) {}, func(rng *rand.Rand, e simulated) []ignition.Series {
			return []ignition.Series{
				e.series(rng, "", ignition.Forward, 80, 110, 240, 270),
				e.series(rng, "", ignition.Backward, 270, 240, 110, 80),
			}
		}},
		{"half the true uncertainty stated", func(s *ignition.Setup) { s.SettingStd /= 2; s.DialStd /= 2 }, bothWays},
	} {
		t.Run(tc.name, func(t *testing.T) {
			var c coverage
			forSeeds(t, fewer(150), func(t *testing.T, rng *rand.Rand, seed int) {
				truth := demoSetup()
				e := drawn(rng, truth)
				s := demoSetup()
				tc.change(&s)
				f, err := ignition.FindTDC(s, tc.read(rng, e)...)
				if err != nil {
					t.Fatalf("seed %d: %v", seed, err)
				}
				c.add(f.Position, e.tdc)
			})
			c.check(t)
		})
	}
}

// The slack, the rod and the offset come out within their uncertainties too.
func TestCoverageOfWhatIsFoundAlong(t *testing.T) {
	var slack, rod, offset, zero coverage
	forSeeds(t, fewer(150), func(t *testing.T, rng *rand.Rand, seed int) {
		s := demoSetup()
		e := drawn(rng, s)
		series := bothWays(rng, e)
		f := findTDC(t, s, series...)
		slack.add(f.Slack, e.slack)
		zero.add(f.Zeros[0].Dial, e.zero)
		s.RodUnknown = true
		rod.add(findTDC(t, s, series...).Rod, e.crank.Rod())
		s = demoSetup()
		s.OffsetUnknown = true
		offset.add(findTDC(t, s, series...).Offset, e.crank.Offset())
	})
	for name, c := range map[string]*coverage{"slack": &slack, "dial zero": &zero, "offset": &offset} {
		t.Run(name, c.check)
	}
	t.Run("rod", func(t *testing.T) { // a hundred millimetres of uncertainty: far from a straight line
		if p := float64(rod.within2) / float64(rod.n); p < 0.9 {
			t.Errorf("95 %% interval holds the rod %.1f %% of the time", 100*p)
		}
	})
}

// Readings taken without error give the truth to the last figure, whichever way
// they were written down.
func TestExactReadings(t *testing.T) {
	base := demoSetup()
	rng := rand.New(rand.NewPCG(1, 1))
	for _, tc := range []struct {
		name   string
		change func(*ignition.Setup, *simulated)
	}{
		{"as it is", func(*ignition.Setup, *simulated) {}},
		{"rim figures falling", func(s *ignition.Setup, e *simulated) { s.Figures, e.falling = ignition.Falling, true }},
		{"dial figures shrinking", func(s *ignition.Setup, e *simulated) { s.Dial, e.lessDown = ignition.LessGoingDown, true }},
		{"no slack", func(s *ignition.Setup, e *simulated) { e.slack = 0 }},
		{"slack known", func(s *ignition.Setup, e *simulated) { s.SlackKnown, s.Slack = true, units.Exact(e.slack) }},
		{"offset", func(s *ignition.Setup, e *simulated) {
			e.crank, _ = e.crank.WithOffsetSameStroke(-6 * units.Millimetre)
			s.Offset = units.Exact(-6 * units.Millimetre)
		}},
		{"no lean", func(s *ignition.Setup, e *simulated) { s.Lean.Value, e.lean = 0, 0 }},
		{"zeroed", func(s *ignition.Setup, e *simulated) { s.ZeroStd, e.zero = 0.01*units.Millimetre, 0 }},
	} {
		t.Run(tc.name, func(t *testing.T) {
			s := base
			s.Offset.Std, s.Lean.Std, s.Stroke.Std, s.Rod.Std, s.RimStd = 0, 0, 0, 0, 0
			crank, err := geometry.NewCrank(s.Stroke.Value, s.Rod.Value)
			if err != nil {
				t.Fatal(err)
			}
			e := simulated{crank: crank, rim: s.Rim, tdc: 173.4 * units.Millimetre, slack: 0.11 * units.Millimetre, zero: 0.3 * units.Millimetre, lean: s.Lean.Value}
			tc.change(&s, &e)
			forward, backward := ignition.Forward, ignition.Backward
			if e.falling {
				forward, backward = backward, forward
			}
			f := findTDC(t, s,
				e.series(rng, "A", forward, every(60, 290, 10)...),
				e.series(rng, "B", backward, every(290, 60, 10)...))
			// Only the rounding of the dial is left, 0.003 mm on 48 readings.
			figures.Near(t, "position, mm", inMM(f.Position.Value), inMM(e.tdc), 0.02)
			figures.Near(t, "slack, mm", inMM(f.Slack.Value), inMM(e.slack), 0.003)
			figures.Near(t, "dial zero, mm", inMM(f.Zeros[0].Dial.Value), inMM(e.zero), 0.003)
			for _, r := range f.Residuals {
				got, err := f.Predict(r.Rim, r.Turned, "")
				if err != nil {
					t.Fatal(err)
				}
				figures.Near(t, "predicted and fitted, mm", inMM(got), inMM(r.Fitted), 1e-9)
				figures.Near(t, "residual, mm", inMM(r.Difference), 0, 0.012)
			}
		})
	}
}

// Nothing hangs on the order of series or readings, nor on where the rule
// begins.
func TestWrittenDownAnotherWay(t *testing.T) {
	s := demoSetup()
	want := findTDC(t, s, demoSeries()...)
	check := func(name string, f ignition.TDC, shift float64) {
		t.Helper()
		figures.Near(t, name+": position, mm", inMM(f.Position.Value), inMM(want.Position.Value)+shift, 1e-4)
		figures.Near(t, name+": uncertainty, mm", inMM(f.Position.Std), inMM(want.Position.Std), 1e-6)
		if len(f.Slips) != 1 {
			t.Errorf("%s: slips %v", name, f.Slips)
		}
	}
	series := demoSeries()
	slices.Reverse(series)
	for i := range series {
		slices.Reverse(series[i].Readings)
	}
	check("reversed", findTDC(t, s, series...), 0)
	girth := inMM(s.Rim.Girth())
	for _, shift := range []float64{500, -100, 900, girth - 173} { // the last puts the top near the end of the rule
		series := demoSeries()
		for i := range series {
			for j := range series[i].Readings {
				r := &series[i].Readings[j].Rim
				*r = units.Length(math.Mod(inMM(*r)+shift, girth)) * units.Millimetre
			}
		}
		f := findTDC(t, s, series...)
		check("shifted", f, math.Round((inMM(f.Position.Value)-inMM(want.Position.Value)-shift)/girth)*girth+shift)
	}
}

// Two mountings of the dial have a zero each; one zero for both would show.
func TestMountings(t *testing.T) {
	series := demoSeries()
	want := findTDC(t, demoSetup(), series...)
	for i := range series[1].Readings {
		series[1].Readings[i].Dial += 0.37 * units.Millimetre
	}
	series[1].Mounting = "again"
	f := findTDC(t, demoSetup(), series...)
	if len(f.Zeros) != 2 || f.Zeros[1].Mounting != "again" {
		t.Fatalf("zeros %+v", f.Zeros)
	}
	figures.Near(t, "zeros apart, mm", inMM(f.Zeros[1].Dial.Value-f.Zeros[0].Dial.Value), 0.37, 0.02)
	figures.Near(t, "position, mm", inMM(f.Position.Value), inMM(want.Position.Value), inMM(want.Position.Std))
	if got, err := f.Predict(173*units.Millimetre, ignition.Forward, "again"); err != nil || !(inMM(got) > 0.3) {
		t.Errorf("at the top in the second mounting: %v, %v", got, err)
	}
	if _, err := f.Predict(173*units.Millimetre, ignition.Forward, "third"); !errors.Is(err, units.ErrDomain) {
		t.Errorf("third mounting: %v", err)
	}
}

func TestUnknownsAndCorrelation(t *testing.T) {
	s := demoSetup()
	s.RodUnknown = true
	f := findTDC(t, s, demoSeries()...)
	want := []string{"top dead centre", "slack", "stroke", "rod", "offset", "lean", "rim diameter", "dial zero"}
	if got := f.Unknowns(); !slices.Equal(got, want) {
		t.Errorf("unknowns %q, want %q", got, want)
	}
	for _, a := range want {
		r, err := f.Correlation(a, a)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, a+" with itself", r, 1, 1e-12)
		for _, b := range want {
			one, _ := f.Correlation(a, b)
			other, _ := f.Correlation(b, a)
			figures.Near(t, a+" and "+b, one, other, 1e-12)
			if !(math.Abs(one) <= 1+1e-12) {
				t.Errorf("%s and %s: %v", a, b, one)
			}
		}
	}
	// A longer rod and a greater lean both do the same to the curve.
	if r, _ := f.Correlation("rod", "lean"); !(r > 0.9) {
		t.Errorf("rod and lean: correlation %.2f, want nearly 1", r)
	}
	if _, err := f.Correlation("rod", "bore"); !errors.Is(err, units.ErrDomain) {
		t.Errorf("bore: %v", err)
	}
}

// A parabola through nine readings every 5° to ±20°, each to 0.005 mm, on a
// throw of 40 mm and a rod of 160 mm.
func TestUncertaintyOfNineReadings(t *testing.T) {
	crank, err := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	rim, err := ignition.NewRimOfGirth(360 * units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	s := ignition.Setup{
		Stroke: units.Exact(80 * units.Millimetre), Rod: units.Exact(160 * units.Millimetre), SlackKnown: true,
		Rim: rim, Figures: ignition.Rising, Dial: ignition.MoreGoingDown, DialStd: 0.005 * units.Millimetre,
	}
	e := simulated{crank: crank, rim: rim, tdc: 100 * units.Millimetre}
	f := findTDC(t, s, e.series(rand.New(rand.NewPCG(1, 1)), "", ignition.Forward, every(80, 120, 5)...))
	const source = "uncertainty of a least-squares parabola's vertex, 9 readings every 5° to ±20°, 0.005 mm each, throw 40 mm, rod 160 mm (own derivation)"
	squares := 0.0
	for _, theta := range every(-20, 20, 5) {
		squares += math.Pow(theta*units.Degree.Radians(), 2)
	}
	nearTop := 0.005 / (40 * 1.25 * math.Sqrt(squares)) // x = r(1 + λ)θ²/2
	figures.Figure{Printed: "0.008", Source: source}.Check(t, nearTop/units.Degree.Radians())
	figures.Near(t, "by the exact curve, which is a little flatter at 20°: share of the parabola's", f.StdAngle().Radians()/nearTop, 1.02, 0.01)
}

func TestRefusals(t *testing.T) {
	s := demoSetup()
	a := demoSeries()[0]
	for _, tc := range []struct {
		name   string
		setup  func(*ignition.Setup)
		series []ignition.Series
		kind   error
		text   string
	}{
		{"nothing", nil, nil, ignition.ErrTooFew, "0 dial readings: want 5 at least"},
		{"three", nil, partOf(a, 5, 8), ignition.ErrTooFew, "3 dial readings: want 5 at least"},
		{"too few for what is unknown", func(s *ignition.Setup) { s.RodUnknown, s.OffsetUnknown = true, true },
			only(dialRun("", ignition.Forward, 80, 40, 6.51, 2.18, 0.12, 0.44, 3.30, 8.26)), ignition.ErrTooFew, "6 dial readings for 5 unknowns: want 7 at least"},
		{"all before", nil, partOf(a, 0, 10), ignition.ErrOneSide, "no reading after top dead centre"},
		{"all after", nil, partOf(a, 14, 24), ignition.ErrOneSide, "no reading before top dead centre"},
		{"all after, falling figures", func(s *ignition.Setup) { s.Figures = ignition.Falling }, partOf(a, 0, 10), ignition.ErrOneSide, "no reading before top dead centre"},
		{"on the flat", nil, only(dialRun("", ignition.Forward, 168, 2, 0.01, 0.01, 0.00, 0.00, 0.01, 0.01)), ignition.ErrFlatTop, "want them to reach"},
		{"dial stuck", nil, only(dialRun("", ignition.Forward, 60, 20, 3.00, 3.00, 3.00, 3.01, 3.00, 3.00, 3.00, 3.00)), ignition.ErrSameHeight, "want a plunger that follows the piston"},
		{"more than the stroke", func(s *ignition.Setup) { s.Stroke.Value = 8 * units.Millimetre; s.Rod.Value = 20 * units.Millimetre },
			only(a), units.ErrDomain, "want no more than 8.00 mm, the stroke"},
		{"dial the other way", func(s *ignition.Setup) { s.Dial = ignition.LessGoingDown }, only(a), ignition.ErrUnsettled, "want more going down"},
		{"dial not stated", func(s *ignition.Setup) { s.Dial = 0 }, only(a), units.ErrDomain, "want MoreGoingDown or LessGoingDown"},
		{"figures not stated", func(s *ignition.Setup) { s.Figures = 0 }, only(a), units.ErrDomain, "want Rising or Falling"},
		{"no rim", func(s *ignition.Setup) { s.Rim = ignition.Rim{} }, only(a), units.ErrDomain, "rim"},
		{"no stroke", func(s *ignition.Setup) { s.Stroke.Value = 0 }, only(a), units.ErrDomain, "stroke"},
		{"no rod", func(s *ignition.Setup) { s.Rod.Value = 0 }, only(a), units.ErrDomain, "rod"},
		{"uncertainty below nothing", func(s *ignition.Setup) { s.DialStd = -1 }, only(a), units.ErrDomain, "uncertainty of the dial"},
		{"uncertainty NaN", func(s *ignition.Setup) { s.SettingStd = units.Length(math.NaN()) }, only(a), units.ErrDomain, "uncertainty of setting"},
		{"lean out of reach", func(s *ignition.Setup) { s.Lean.Value = 80 * units.Degree }, only(a), units.ErrDomain, "want 75°"},
		{"offset unknown twice", func(s *ignition.Setup) { s.OffsetUnknown, s.SideUnknown = true, true }, only(a), units.ErrDomain, "want one of the two"},
		{"way not stated", nil, only(dialRun("A", 0, 60, 10, 9, 8, 7, 6, 5, 4)), units.ErrDomain, "series A: turning not stated"},
		{"not a number", nil, only(dialRun("A", ignition.Forward, 60, 10, 9, 8, math.NaN(), 6, 5, 4)), units.ErrDomain, "series A, reading 3"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			trial := s
			if tc.setup != nil {
				tc.setup(&trial)
			}
			f, err := ignition.FindTDC(trial, tc.series...)
			if !errors.Is(err, tc.kind) {
				t.Fatalf("got %s, error %v, want %v", describeTDC(f), err, tc.kind)
			}
			if !strings.Contains(err.Error(), tc.text) {
				t.Errorf("got %q, want it to say %q", err, tc.text)
			}
		})
	}
}

func TestNotes(t *testing.T) {
	has := func(t *testing.T, f ignition.TDC, want string) {
		t.Helper()
		if !strings.Contains(strings.Join(f.Notes, "\n"), want) {
			t.Errorf("notes %q, want one with %q", f.Notes, want)
		}
	}
	t.Run("one way", func(t *testing.T) { has(t, findTDC(t, demoSetup(), demoSeries()[0]), "one way only") })
	t.Run("forward and backward changed over", func(t *testing.T) {
		series := demoSeries()
		for i := range series {
			series[i].Turned = ignition.Forward + ignition.Backward - series[i].Turned
		}
		f := findTDC(t, demoSetup(), series...)
		has(t, f, "changed over")
	})
	t.Run("stroke and readings do not agree", func(t *testing.T) {
		s := demoSetup()
		s.Stroke.Value = 84 * units.Millimetre
		has(t, findTDC(t, s, demoSeries()...), "something stated is wrong")
	})
	t.Run("lean and readings do not agree", func(t *testing.T) {
		s := demoSetup()
		s.Lean = units.WithStd(25*units.Degree, 1*units.Degree)
		has(t, findTDC(t, s, demoSeries()...), "the dial readings do not agree with the lean as stated: they would have it 1")
	})
	t.Run("rim as good as perfect", func(t *testing.T) {
		s := demoSetup()
		s.SettingStd = 0
		has(t, findTDC(t, s, goodSeries()...), "setting the rim")
	})
	t.Run("no offset to be seen", func(t *testing.T) {
		s := demoSetup()
		s.OffsetUnknown = true
		has(t, findTDC(t, s, demoSeries()...), "hardly tell the offset from none")
	})
	t.Run("scatter", func(t *testing.T) {
		s := demoSetup()
		s.SettingStd, s.DialStd = 0.1*units.Millimetre, 0.004*units.Millimetre
		f := findTDC(t, s, demoSeries()...)
		has(t, f, "times more than stated")
		if f.Position.DoF == 0 || !(f.Chance() < 0.01) {
			t.Errorf("degrees of freedom %v, chance %v", f.Position.DoF, f.Chance())
		}
	})
}

func TestZeroTDCSaysNothing(t *testing.T) {
	var f ignition.TDC
	if !math.IsNaN(f.Chance()) {
		t.Errorf("chance %v, want NaN", f.Chance())
	}
	if _, err := f.Correlation("slack", "slack"); err == nil {
		t.Error("correlation of nothing")
	}
	if _, err := f.Predict(0, ignition.Forward, ""); err == nil {
		t.Error("prediction of nothing")
	}
}

func BenchmarkFindTDC(b *testing.B) {
	s, series := demoSetup(), demoSeries()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ignition.FindTDC(s, series...); err != nil {
			b.Fatal(err)
		}
	}
}
