package ignition_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

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
