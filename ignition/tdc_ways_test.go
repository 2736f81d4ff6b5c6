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
