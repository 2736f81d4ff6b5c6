package ignition_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

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
			return e.tdc + e.rim.Arc(theta) + e.swing(theta) + units.Length(rng.NormFloat64())*e.setting
		}
		pairs = append(pairs, ignition.StopPair{Forward: at(-before), Backward: at(after)})
	}
	return pairs
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
