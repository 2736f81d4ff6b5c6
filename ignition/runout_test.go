package ignition_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// A rim put on a millimetre out shifts what the figures say by as much as is
// stated: the errors of simulated engines against their standard uncertainties.
func TestRunOutIsInThePosition(t *testing.T) {
	for _, tc := range []struct {
		name string
		find func(s ignition.Setup, rng *rand.Rand, e simulated) (units.Reading[units.Length], []units.Contribution[units.Length], error)
	}{
		{"fit", func(s ignition.Setup, rng *rand.Rand, e simulated) (units.Reading[units.Length], []units.Contribution[units.Length], error) {
			f, err := ignition.FindTDC(s, bothWays(rng, e)...)
			return f.Position, f.Budget(), err
		}},
		{"middles", func(s ignition.Setup, rng *rand.Rand, e simulated) (units.Reading[units.Length], []units.Contribution[units.Length], error) {
			f, err := ignition.Bisect(s, bothWays(rng, e)...)
			return f.Position, f.Budget(), err
		}},
		{"stop", func(s ignition.Setup, rng *rand.Rand, e simulated) (units.Reading[units.Length], []units.Contribution[units.Length], error) {
			f, err := ignition.Stop(s, e.stop(rng, 5)...)
			return f.Position, f.Budget(), err
		}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			var squares, stated, within float64
			n := fewer(300)
			forSeeds(t, n, func(t *testing.T, rng *rand.Rand, seed int) {
				s := demoSetup()
				s.RunOut = 2 * units.Millimetre
				e := drawn(rng, s)
				e.beside, e.phase = s.RunOut/2, units.Angle(rng.Float64())*units.Turn
				r, budget, err := tc.find(s, rng, e)
				if err != nil {
					t.Fatalf("seed %d: %v", seed, err)
				}
				if shares := sharesOf(t, tc.name, r.Std, budget); !(shares["run-out of the rim"] > 0.1) {
					t.Fatalf("shares %v", shares)
				}
				off := float64(r.Value - e.tdc)
				squares += off * off
				stated += float64(r.Std) * float64(r.Std)
				if math.Abs(off) < 2*float64(r.Std) {
					within++
				}
			})
			t.Logf("errors are %.2f of what is stated, %.1f %% within two", math.Sqrt(squares/stated), 100*within/float64(n))
			figures.Near(t, "errors against uncertainty", math.Sqrt(squares/stated), 1, 0.1+2/math.Sqrt(float64(n)))
			if !(within/float64(n) > 0.93) {
				t.Errorf("%.1f %% within two standard uncertainties", 100*within/float64(n))
			}
		})
	}
}

// What the run-out makes of a fit is how far the fit to readings without other
// errors moves, with the rim put on beside the shaft at two phases.
func TestRunOutMovesTheFit(t *testing.T) {
	s := demoSetup()
	s.RunOut = 0.4 * units.Millimetre
	crank := drawn(rand.New(rand.NewPCG(6, 1927)), ignition.Setup{Stroke: units.Exact(s.Stroke.Value), Rod: units.Exact(s.Rod.Value), Rim: s.Rim}).crank
	s.Offset = units.Exact(units.Length(0))
	moved := func(phase units.Angle) (off units.Length, share units.Length) {
		e := simulated{crank: crank, rim: s.Rim, tdc: 185 * units.Millimetre, slack: 0.1 * units.Millimetre, lean: s.Lean.Value, beside: s.RunOut / 2, phase: phase}
		f := findTDC(t, s, bothWays(rand.New(rand.NewPCG(7, 1927)), e)...)
		for _, c := range f.Budget() {
			if c.Name == "run-out of the rim" {
				share = c.Contribution
			}
		}
		return f.Position.Value - e.tdc, share
	}
	a, share := moved(90 * units.Degree)
	b, _ := moved(0)
	if !(math.Abs(inMM(a)) > 0.01) {
		t.Errorf("moved by %v and %v: the first must matter", a, b)
	}
	t.Logf("moved by %.4f and %.4f mm, share %.4f mm", inMM(a), inMM(b), inMM(share))
	figures.Near(t, "share of the run-out, mm", inMM(share), math.Hypot(inMM(a), inMM(b))/math.Sqrt2, 0.003)
}

// A single pair at ±θ is uncertain by e(1 − cos θ)/√2.
func TestRunOutOfAPair(t *testing.T) {
	const mm = units.Millimetre
	s := demoSetup()
	s.Offset, s.SlackKnown = units.Exact(units.Length(0)), true
	half := 35 * units.Degree
	arc := s.Rim.Arc(half)
	pair := ignition.StopPair{Forward: 173*mm - arc, Backward: 173*mm + arc}
	with := func(total units.Length) float64 {
		s.RunOut = total
		stop, err := ignition.Stop(s, pair)
		if err != nil {
			t.Fatal(err)
		}
		b, err := ignition.Bisect(s, ignition.Series{Turned: ignition.Forward, Readings: []ignition.DialReading{{Rim: pair.Forward, Dial: 8 * mm}, {Rim: pair.Backward, Dial: 8 * mm}}})
		if err != nil {
			t.Fatal(err)
		}
		s.RunOut = 0
		plain, err := ignition.Bisect(s, ignition.Series{Turned: ignition.Forward, Readings: []ignition.DialReading{{Rim: pair.Forward, Dial: 8 * mm}, {Rim: pair.Backward, Dial: 8 * mm}}})
		if err != nil {
			t.Fatal(err)
		}
		share := math.Sqrt(math.Pow(inMM(stop.Position.Std), 2) - 0.3*0.3/2)
		figures.Near(t, "the same for middles, mm", math.Sqrt(math.Pow(inMM(b.Position.Std), 2)-math.Pow(inMM(plain.Position.Std), 2)), share, 1e-9)
		return share
	}
	figures.Near(t, "share of the run-out, mm", with(0.8*mm), 0.4*(1-math.Cos(half.Radians()))/math.Sqrt2, 1e-9)
}

// An arc a between two figures is uncertain by 2e sin(a/2)/√2, against places
// drawn on an eccentric rim.
func TestRunOutOfAnArc(t *testing.T) {
	const mm = units.Millimetre
	m := ignition.MeasuredScale{Girth: units.Exact(1118.33 * mm), TDC: units.Exact(174 * mm), Figures: ignition.Rising}
	eccentric := m
	eccentric.RunOut = 0.8 * mm
	s, err := m.Scale()
	if err != nil {
		t.Fatal(err)
	}
	for _, a := range []float64{0, 5, 26, 90, 170} {
		advance := units.Angle(a) * units.Degree
		squares, n := 0.0, 3600
		for i := range n {
			phase := units.Turn * units.Angle(i) / units.Angle(n)
			swing := 0.4 * (math.Sin((phase - advance).Radians()) - math.Sin(phase.Radians()))
			squares += swing * swing / float64(n)
		}
		want := math.Sqrt(squares)
		got, err := eccentric.Advance(units.Exact(s.FigureAtAdvance(advance)))
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, fmt.Sprintf("advance of %g°, as mm", a), inMM(s.Rim().Arc(got.Std)), want, 1e-6)
		figure, err := eccentric.Figure(units.Exact(advance))
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, fmt.Sprintf("figure at %g°, mm", a), inMM(figure.Std), want, 1e-6)
		between, err := eccentric.Between(units.Exact(20*mm), units.Exact(20*mm+s.Rim().Arc(advance)))
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, fmt.Sprintf("between, %g°, as mm", a), inMM(s.Rim().Arc(between.Std)), want, 1e-6)
	}
	trials := []ignition.GapTrial{{Gap: 0.3 * mm, Figure: units.WithStd(118*mm, 0.1*mm)}, {Gap: 0.45 * mm, Figure: units.WithStd(108*mm, 0.1*mm)}}
	plain, err := m.GapEffect(0.01*mm, trials...)
	if err != nil {
		t.Fatal(err)
	}
	out, err := eccentric.GapEffect(0.01*mm, trials...)
	if err != nil {
		t.Fatal(err)
	}
	p, err := plain.Advance(0.3 * mm)
	if err != nil {
		t.Fatal(err)
	}
	o, err := out.Advance(0.3 * mm)
	if err != nil {
		t.Fatal(err)
	}
	share := math.Sqrt(math.Pow(o.Std.Degrees(), 2) - math.Pow(p.Std.Degrees(), 2))
	want := 2 * 0.4 / math.Sqrt2 * math.Sin(p.Value.Radians()/2) / inMM(s.Rim().PerDegree())
	figures.Near(t, "at a gap, degrees", share, want, 0.02*want)
}

func TestRunOutRefusals(t *testing.T) {
	const mm = units.Millimetre
	for _, bad := range []units.Length{-1 * mm, units.Length(math.NaN()), units.Length(math.Inf(1))} {
		s := demoSetup()
		s.RunOut = bad
		_, err := ignition.Stop(s, demoStop()...)
		_, err2 := ignition.MeasuredScale{Girth: units.Exact(1118.33 * mm), TDC: units.Exact(174 * mm), Figures: ignition.Rising, RunOut: bad}.Advance(units.Exact(100 * mm))
		for _, err := range []error{err, err2} {
			if !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "run-out of the rim") {
				t.Errorf("run-out %v: %v", bad, err)
			}
		}
	}
}
