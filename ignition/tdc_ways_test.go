package ignition_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func TestCoverageOfBisection(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*ignition.Setup, simulated)
		read   func(*rand.Rand, simulated) []ignition.Series
	}{
		{"both ways", func(*ignition.Setup, simulated) {}, bothWays},
		{"one way, slack known", func(s *ignition.Setup, e simulated) {
			s.SlackKnown, s.Slack = true, units.WithStd(e.slack, 0)
		}, func(rng *rand.Rand, e simulated) []ignition.Series { return bothWays(rng, e)[:1] }},
		{"three pairs each way", func(*ignition.Setup, simulated) {}, func(rng *rand.Rand, e simulated) []ignition.Series {
			return []ignition.Series{
				e.series(rng, "", ignition.Forward, every(60, 290, 23)...),
				e.series(rng, "", ignition.Backward, every(290, 60, 23)...),
			}
		}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			var c coverage
			forSeeds(t, fewer(150), func(t *testing.T, rng *rand.Rand, seed int) {
				s := demoSetup()
				e := drawn(rng, s)
				tc.change(&s, e)
				b, err := ignition.Bisect(s, tc.read(rng, e)...)
				if err != nil {
					t.Fatalf("seed %d: %v", seed, err)
				}
				c.add(b.Position, e.tdc)
			})
			c.check(t)
		})
	}
}

// Turned one way only with the slack unknown, the truth lies inside the interval
// stated for any slack there may be, and the middle stays what the readings say.
func TestOneWayHoldsAnUnknownSlack(t *testing.T) {
	const mm = units.Millimetre
	for _, tc := range []struct {
		name  string
		slack units.Length
		prior units.Reading[units.Length]
	}{
		{"no slack", 0, units.Reading[units.Length]{}},
		{"0.1 mm", 0.1 * mm, units.Reading[units.Length]{}},
		{"as much as there may be", ignition.MostSlack, units.Reading[units.Length]{}},
		{"0.5 mm, about that stated", 0.5 * mm, units.WithStd(0.4*mm, 0.1*mm)},
	} {
		for i, turned := range []ignition.Turned{ignition.Forward, ignition.Backward} {
			t.Run(tc.name+", "+turned.String(), func(t *testing.T) {
				held, n := 0, 0
				forSeeds(t, fewer(200), func(t *testing.T, rng *rand.Rand, seed int) {
					s := demoSetup()
					e := drawn(rng, s)
					e.slack, s.Slack = tc.slack, tc.prior
					b, err := ignition.Bisect(s, bothWays(rng, e)[i])
					if err != nil {
						t.Fatalf("seed %d: %v", seed, err)
					}
					u, _, err := b.Position.Expanded(0.95)
					if err != nil || !b.OneWay {
						t.Fatalf("seed %d: one way %v, error %v", seed, b.OneWay, err)
					}
					n++
					if math.Abs(float64(b.Position.Value-e.tdc)) <= float64(u) {
						held++
					}
				})
				t.Logf("95 %% interval holds %d of %d", held, n)
				if share := float64(held) / float64(n); share < 0.95-4*math.Sqrt(0.95*0.05/float64(n)) {
					t.Errorf("95 %% interval holds the truth %d times in %d", held, n)
				}
			})
		}
	}
}

// The share of the slack is that of a rectangular spread from 0 to its limit
// about a position that is not put right for it, by slack over twice the slope.
func TestOneWayShareOfSlack(t *testing.T) {
	const mm = units.Millimetre
	s := demoSetup()
	pair := ignition.Series{Turned: ignition.Forward, Readings: []ignition.DialReading{{Rim: 100 * mm, Dial: 4 * mm}, {Rim: 246 * mm, Dial: 4 * mm}}}
	find := func(change func(*ignition.Setup)) ignition.Bisection {
		s := s
		change(&s)
		b, err := ignition.Bisect(s, pair)
		if err != nil {
			t.Fatal(err)
		}
		return b
	}
	none := find(func(s *ignition.Setup) { s.SlackKnown = true })
	for _, tc := range []struct {
		name  string
		slack units.Reading[units.Length]
		rms   units.Length
	}{
		{"nothing stated", units.Reading[units.Length]{}, ignition.MostSlack / units.Length(math.Sqrt(3))},
		{"stated", units.WithStd(0.3*mm, 0.4*mm), 0.5 * mm},
	} {
		got := find(func(s *ignition.Setup) { s.Slack = tc.slack })
		late := none.Pairs[0].LateBy(tc.rms)
		figures.Near(t, tc.name+": uncertainty, mm", inMM(got.Position.Std), math.Hypot(inMM(none.Position.Std), inMM(late)), 1e-9)
		figures.Near(t, tc.name+": position, mm", inMM(got.Position.Value), inMM(none.Position.Value), 1e-12)
	}
}

// A middle found one way does not outvote a stop.
func TestOneWayDoesNotOutvote(t *testing.T) {
	s := demoSetup()
	e := drawn(rand.New(rand.NewPCG(1, 1927)), s)
	rng := rand.New(rand.NewPCG(2, 1927))
	b, err := ignition.Bisect(s, e.series(rng, "A", ignition.Forward, every(60, 290, 5)...))
	if err != nil {
		t.Fatal(err)
	}
	stop, err := ignition.Stop(s, e.stop(rng, 5)...)
	if err != nil {
		t.Fatal(err)
	}
	c, err := ignition.Combine(ignition.Way{Name: "middles one way", Position: b.Position}, ignition.Way{Name: "stop", Position: stop.Position})
	if err != nil {
		t.Fatal(err)
	}
	if share := c.Ways[0].Share; !(share < 0.5) || !c.Agree {
		t.Errorf("share %.2f of the weight, agree %v: %+v", share, c.Agree, c)
	}
}

func TestCoverageOfStop(t *testing.T) {
	for _, tc := range []struct {
		name   string
		tries  int
		stated float64 // of the true uncertainty
	}{{"one try", 1, 1}, {"five tries", 5, 1}, {"five tries, nothing stated", 5, 0}, {"eight tries, half stated", 8, 0.5}} {
		t.Run(tc.name, func(t *testing.T) {
			var c coverage
			forSeeds(t, fewer(1000), func(t *testing.T, rng *rand.Rand, seed int) {
				s := demoSetup()
				e := drawn(rng, s)
				s.SettingStd *= units.Length(tc.stated)
				f, err := ignition.Stop(s, e.stop(rng, tc.tries)...)
				if err != nil {
					t.Fatal(err)
				}
				c.add(f.Position, e.tdc)
			})
			c.check(t)
		})
	}
}

// stop meets a stop some way down from either side, set anew for each try.
func (e simulated) stop(rng *rand.Rand, tries int) (pairs []ignition.StopPair) {
	for range tries {
		drop := units.Length(10+rng.Float64()) * units.Millimetre
		before, after, err := e.crank.AnglesAtDrop(drop)
		if err != nil {
			panic(err)
		}
		at := func(theta units.Angle) units.Length {
			return e.tdc + e.rim.Arc(theta) + units.Length(rng.NormFloat64())*e.setting
		}
		pairs = append(pairs, ignition.StopPair{Forward: at(-before), Backward: at(after)})
	}
	return pairs
}

// Slack shifts the middle between equal readings taken turning one way, late in
// that way, by slack over twice the slope; the mean of both ways is free of it.
func TestLateBy(t *testing.T) {
	const source = "middle between equal readings turning one way, throw 38.1 mm, rod 146.05 mm, slack 0.107 mm: sampled 20 000 times with 0.01 mm of noise and by slack over twice the slope (own derivation)"
	crank, err := geometry.NewCrank(76.2*units.Millimetre, 146.05*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	const slack = 0.107 * units.Millimetre
	for _, tc := range []struct {
		drop    float64 // mm
		printed string
	}{{1, "0.315"}, {2, "0.225"}, {5, "0.146"}, {10, "0.108"}} {
		t.Run(fmt.Sprint(tc.drop, " mm"), func(t *testing.T) {
			drop := units.Length(tc.drop) * units.Millimetre
			late, err := ignition.LateBy(crank, drop, slack)
			if err != nil {
				t.Fatal(err)
			}
			figures.Figure{Printed: tc.printed, Source: source}.Check(t, late.Degrees())
			// The same by carrying the piston through its slack.
			_, up, _ := crank.AnglesAtDrop(drop - slack/2)
			_, down, err := crank.AnglesAtDrop(drop + slack/2)
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, "late, exactly, degrees", ((down - up) / 2).Degrees(), late.Degrees(), 1e-3*late.Degrees())
		})
	}
	for _, bad := range [][2]units.Length{{-1, slack}, {0, slack}, {76.2 * units.Millimetre, slack}, {1, -1}, {1, units.Length(math.NaN())}} {
		if _, err := ignition.LateBy(crank, bad[0], bad[1]); !errors.Is(err, units.ErrDomain) {
			t.Errorf("drop %v, slack %v: %v", bad[0], bad[1], err)
		}
	}
}

// Readings simulated with a loose piston show that shift, with the right sign
// either way, and lose it both ways together.
func TestBisectionOneWayIsLate(t *testing.T) {
	crank, err := geometry.NewCrank(76.2*units.Millimetre, 146.05*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	s := demoSetup()
	s.Stroke, s.Rod, s.Lean = units.Exact(crank.Stroke()), units.Exact(crank.Rod()), units.Exact(units.Angle(0))
	s.Offset = units.Exact(units.Length(0))
	e := simulated{crank: crank, rim: s.Rim, tdc: 173.4 * units.Millimetre, slack: 0.107 * units.Millimetre, reading: 0.0095 * units.Millimetre}
	for _, drop := range []float64{1, 2, 5, 10} {
		late, err := ignition.LateBy(crank, units.Length(drop)*units.Millimetre, e.slack)
		if err != nil {
			t.Fatal(err)
		}
		_, theta, _ := crank.AnglesAtDrop(units.Length(drop) * units.Millimetre)
		half := inMM(s.Rim.Arc(theta))
		around := append(every(173.4-half-2, 173.4-half+2, 4), every(173.4+half-4, 173.4+half+4, 4)...)
		back := make([]float64, len(around))
		for i, f := range around {
			back[len(around)-1-i] = f
		}
		var forward, backward, both float64
		const n = 200
		forSeeds(t, n, func(t *testing.T, rng *rand.Rand, seed int) {
			a, b := e.series(rng, "A", ignition.Forward, around...), e.series(rng, "B", ignition.Backward, back...)
			position := func(series ...ignition.Series) float64 {
				r, err := ignition.Bisect(s, series...)
				if err != nil {
					t.Fatal(err)
				}
				if r.OneWay != (len(series) == 1) {
					t.Errorf("one way: %v for %d series", r.OneWay, len(series))
				}
				return s.Rim.AngleOfArc(r.Position.Value-e.tdc).Degrees() / n
			}
			forward += position(a)
			backward += position(b)
			both += position(a, b)
		})
		noise := 4 * 0.3 / math.Sqrt(n) // degrees, generous near the top
		if drop > 1.5 {
			noise /= 3
		}
		figures.Near(t, fmt.Sprintf("%g mm, forward, degrees", drop), forward, late.Degrees(), noise/3)
		figures.Near(t, fmt.Sprintf("%g mm, backward, degrees", drop), backward, -late.Degrees(), noise/3)
		figures.Near(t, fmt.Sprintf("%g mm, both, degrees", drop), both, 0, noise/3)
	}
}

// A degree disc is a rim of 360 mm with a millimetre to the degree.
func TestDegreeDisc(t *testing.T) {
	const source = "computed with 50 digits: degree disc reads 341.5 and 24.25 at equal dial readings"
	rim, err := ignition.NewRimOfGirth(360 * units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	s := ignition.Setup{
		Stroke: units.Exact(80 * units.Millimetre), Rod: units.Exact(160 * units.Millimetre),
		Rim: rim, Figures: ignition.Rising, SettingStd: 0.5 * units.Millimetre, Dial: ignition.MoreGoingDown,
	}
	stop, err := ignition.Stop(s, ignition.StopPair{Forward: 341.5 * units.Millimetre, Backward: 24.25 * units.Millimetre})
	if err != nil {
		t.Fatal(err)
	}
	figures.Reference{Digits: "2.875", Source: source}.Check(t, inMM(stop.Position.Value))
	figures.Near(t, "uncertainty", inMM(stop.Position.Std), 0.5/math.Sqrt2, 1e-12)
	b, err := ignition.Bisect(s, ignition.Series{Turned: ignition.Forward, Readings: []ignition.DialReading{
		{Rim: 341.5 * units.Millimetre, Dial: 1.77 * units.Millimetre}, {Rim: 24.25 * units.Millimetre, Dial: 1.77 * units.Millimetre},
	}})
	if err != nil {
		t.Fatal(err)
	}
	figures.Reference{Digits: "2.875", Source: source}.Check(t, inMM(b.Position.Value))
	if !b.OneWay || len(b.Notes) == 0 {
		t.Errorf("one way %v, notes %q", b.OneWay, b.Notes)
	}
}

// With an offset the middle lies e x/(L + r)² past top dead centre, and is put
// right for it.
func TestMiddlesArePutRightForTheOffset(t *testing.T) {
	s := demoSetup()
	s.Stroke, s.Rod, s.Offset = units.Exact(60*units.Millimetre), units.Exact(130*units.Millimetre), units.Exact(2*units.Millimetre)
	straight, err := geometry.NewCrank(60*units.Millimetre, 130*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	crank, err := straight.WithOffsetSameStroke(2 * units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	before, after, err := crank.AnglesAtDrop(5 * units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "0.023", Source: "offset error of bisection e x/(L + r)², r 30, L 130, e 2, x 5 mm (own derivation)"}.Check(t, ((after - before) / 2).Degrees())
	at := func(theta units.Angle) units.Length { return 173*units.Millimetre + s.Rim.Arc(theta) }
	stop, err := ignition.Stop(s, ignition.StopPair{Forward: at(-before), Backward: at(after)})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "stop, mm", inMM(stop.Position.Value), 173, 1e-6)
	b, err := ignition.Bisect(s, ignition.Series{Turned: ignition.Forward, Readings: []ignition.DialReading{{Rim: at(-before), Dial: 5 * units.Millimetre}, {Rim: at(after), Dial: 5 * units.Millimetre}}})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "bisection, mm", inMM(b.Position.Value), 173, 1e-6)
	s.SideUnknown = true
	unsure, err := ignition.Stop(s, ignition.StopPair{Forward: at(-before), Backward: at(after)})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "uncertainty with the side unknown, mm", inMM(unsure.Position.Std), math.Hypot(inMM(stop.Position.Std), inMM(s.Rim.Arc(after-before))/2), 1e-4)
}

func TestStopRefusals(t *testing.T) {
	const mm = units.Millimetre
	for _, tc := range []struct {
		name   string
		change func(*ignition.Setup)
		tries  []ignition.StopPair
		kind   error
		text   string
	}{
		{"no try", nil, nil, ignition.ErrTooFew, "0 tries with the stop: want 3"},
		{"one try, nothing stated", func(s *ignition.Setup) { s.SettingStd = 0 }, demoStop()[:1], ignition.ErrTooFew, "1 tries"},
		{"changed over", nil, []ignition.StopPair{{Forward: 292 * mm, Backward: 54 * mm}}, ignition.ErrUnsettled, "try 1: touches 292 mm forward and 54 mm backward, figures rising"},
		{"figures the other way", func(s *ignition.Setup) { s.Figures = ignition.Falling }, demoStop(), ignition.ErrUnsettled, "changed over"},
		{"not a number", nil, []ignition.StopPair{{Forward: units.Length(math.NaN()), Backward: 54 * mm}}, units.ErrDomain, "rim figure NaN mm: want no more than"},
		{"no rim", func(s *ignition.Setup) { s.Rim = ignition.Rim{} }, demoStop(), units.ErrDomain, "rim"},
		{"offset without a crank", func(s *ignition.Setup) { s.Stroke.Value = 0 }, demoStop(), units.ErrDomain, "stroke"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			s := demoSetup()
			if tc.change != nil {
				tc.change(&s)
			}
			_, err := ignition.Stop(s, tc.tries...)
			if !errors.Is(err, tc.kind) || !strings.Contains(err.Error(), tc.text) {
				t.Errorf("got %v, want %v and %q", err, tc.kind, tc.text)
			}
		})
	}
}

func TestStopNeedsNoCrank(t *testing.T) {
	full := demoSetup()
	s := ignition.Setup{Rim: full.Rim, Figures: full.Figures, SettingStd: full.SettingStd}
	f, err := ignition.Stop(s, demoStop()...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "position, the mean of 173.2, 173.5, 173.5, 173.6 and 173.45", inMM(f.Position.Value), 173.45, 1e-9)
	figures.Near(t, "uncertainty as stated, 0.3/√10", inMM(f.Position.Std), 0.3/math.Sqrt(10), 1e-9)
	s.SettingStd = 0.05 * units.Millimetre
	f, err = ignition.Stop(s, demoStop()...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "spread", inMM(f.Spread), 0.15, 1e-9)
	figures.Near(t, "uncertainty as seen, 0.15/√5", inMM(f.Position.Std), 0.15/math.Sqrt(5), 1e-9)
	figures.Near(t, "degrees of freedom", f.Position.DoF, 4, 0)
	tries := demoStop()
	tries[1].Backward += 10 * units.Millimetre
	if f, err = ignition.Stop(s, tries...); err != nil || len(f.Odd) != 1 || f.Odd[0].Try != 2 || len(f.Notes) != 1 {
		t.Errorf("odd %v, notes %q, error %v: want try 2", f.Odd, f.Notes, err)
	}
}

func TestByEye(t *testing.T) {
	s := demoSetup()
	f, err := ignition.ByEye(s, demoEye()...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "mean", inMM(f.Position.Value), 172, 1e-9)
	figures.Near(t, "spread", inMM(f.Spread), math.Sqrt((64+25+0+9)/3.), 1e-9)
	want := math.Hypot(inMM(f.Spread)/2, inMM(f.DeadBand)/math.Sqrt(3))
	figures.Near(t, "uncertainty", inMM(f.Position.Std), want, 1e-9)
	near := inMM(s.Rim.Radius()) * math.Sqrt(2*0.01*math.Cos(12*units.Degree.Radians())/(38.075*(1+38.075/146)))
	figures.Near(t, "dead band by the formula for small drops", inMM(f.DeadBand)/near, 1, 1e-3)
	s.SlackKnown, s.Slack = true, units.Exact(0.1*units.Millimetre)
	loose, err := ignition.ByEye(s, demoEye()...)
	if err != nil || !(loose.DeadBand > 3*f.DeadBand) {
		t.Errorf("dead band with slack %v, without %v, error %v", loose.DeadBand, f.DeadBand, err)
	}
	if _, err := ignition.ByEye(s, 172*units.Millimetre); !errors.Is(err, ignition.ErrTooFew) {
		t.Errorf("one try: %v", err)
	}
	if _, err := ignition.ByEye(ignition.Setup{}, demoEye()...); !errors.Is(err, units.ErrDomain) {
		t.Errorf("no setup: %v", err)
	}
}

func TestBisectRefusals(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*ignition.Setup)
		series []ignition.Series
		kind   error
		text   string
	}{
		{"nothing", nil, nil, ignition.ErrTooFew, "0 dial readings: want two at least"},
		{"one side", nil, partOf(demoSeries()[0], 0, 9), ignition.ErrTooFew, "no place after the top matches"},
		{"no match", nil, only(dialRun("", ignition.Forward, 80, 200, 6.51, 9)), ignition.ErrTooFew, "no place after the top matches"},
		{"dial the other way", func(s *ignition.Setup) { s.Dial = ignition.LessGoingDown }, demoSeries(), ignition.ErrUnsettled, "series A"},
		{"way not stated", nil, only(ignition.Series{Readings: demoSeries()[0].Readings}), units.ErrDomain, "turning not stated"},
		{"no rod", func(s *ignition.Setup) { s.Rod.Value = 0 }, demoSeries(), units.ErrDomain, "rod"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			s := demoSetup()
			if tc.change != nil {
				tc.change(&s)
			}
			_, err := ignition.Bisect(s, tc.series...)
			if !errors.Is(err, tc.kind) || !strings.Contains(err.Error(), tc.text) {
				t.Errorf("got %v, want %v and %q", err, tc.kind, tc.text)
			}
		})
	}
}

// Falling figures turn every sign about and change nothing else.
func TestBisectionWithFallingFigures(t *testing.T) {
	want, err := ignition.Bisect(demoSetup(), demoSeries()...)
	if err != nil {
		t.Fatal(err)
	}
	s, series := demoSetup(), demoSeries()
	s.Figures = ignition.Falling
	for i := range series {
		for j := range series[i].Readings {
			series[i].Readings[j].Rim = 400*units.Millimetre - series[i].Readings[j].Rim
		}
	}
	got, err := ignition.Bisect(s, series...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "position, mm", inMM(got.Position.Value), 400-inMM(want.Position.Value), 1e-6)
	figures.Near(t, "uncertainty, mm", inMM(got.Position.Std), inMM(want.Position.Std), 1e-9)
	figures.Near(t, "slack, mm", inMM(got.Slack.Value), inMM(want.Slack.Value), 1e-9)
	if p := got.Pairs[0]; !(p.Before > p.After) {
		t.Errorf("before %v, after %v: falling figures pass the higher one first", p.Before, p.After)
	}
}

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
