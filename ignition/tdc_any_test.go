package ignition_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// Whatever is written down, there is an answer or an error, and never a panic or
// a figure that is none.
func TestAnyReadings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySetup(t)
		var series []ignition.Series
		n := 0
		for range rapid.IntRange(0, 3).Draw(t, "series") {
			one := ignition.Series{Turned: ignition.Turned(rapid.IntRange(0, 2).Draw(t, "turned")), Mounting: rapid.SampledFrom([]string{"", "", "b"}).Draw(t, "mounting")}
			good := rapid.Bool().Draw(t, "a curve")
			for range rapid.IntRange(0, 12).Draw(t, "readings") {
				rim := anyLength(t, "rim", 400)
				dial := anyLength(t, "dial", 12)
				if good {
					dial = units.Length(math.Round(math.Pow(float64(rim-170*units.Millimetre), 2)/1.4*1e5)/1e5) + units.Length(rapid.IntRange(-3, 3).Draw(t, "off"))*1e-5
				}
				one.Readings = append(one.Readings, ignition.DialReading{Rim: rim, Dial: dial})
			}
			n += len(one.Readings)
			series = append(series, one)
		}
		if f, err := ignition.FindTDC(s, series...); err == nil {
			finite(t, "fit", f.Position)
			finite(t, "slack", units.Reading[units.Length]{Value: f.Slack.Value, Std: f.Slack.Std + 1})
			if len(f.Slips) > max(1, n/10) {
				t.Errorf("%d of %d readings left out", len(f.Slips), n)
			}
			for _, slip := range f.Slips {
				_ = slip.String()
			}
		} else if err.Error() == "" {
			t.Error("an error without text")
		}
		if b, err := ignition.Bisect(s, series...); err == nil {
			finite(t, "bisection", b.Position)
		}
	})
}

func TestAnyStopAndEye(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := anySetup(t)
		var tries []ignition.StopPair
		var eyes []units.Length
		for range rapid.IntRange(0, 8).Draw(t, "tries") {
			tries = append(tries, ignition.StopPair{Forward: anyLength(t, "forward", 100), Backward: anyLength(t, "backward", 300)})
			eyes = append(eyes, anyLength(t, "eye", 400))
		}
		if f, err := ignition.Stop(s, tries...); err == nil {
			finite(t, "stop", f.Position)
			if girth := s.Rim.Girth(); len(f.Odd) > 1 && len(f.Odd) > len(tries)/10 || girth <= 0 {
				t.Errorf("%d of %d tries left out", len(f.Odd), len(tries))
			}
		}
		if f, err := ignition.ByEye(s, eyes...); err == nil {
			finite(t, "by eye", f.Position)
		}
		if p, err := ignition.PlanTDC(s, anyLength(t, "want", 2), rapid.IntRange(-1, 20).Draw(t, "pairs")); err == nil && s.Stroke.Value < units.Metre {
			finite(t, "plan", units.Reading[units.Length]{Value: p.Drop, Std: p.Std})
		}
	})
}

func anySetup(t *rapid.T) ignition.Setup {
	const mm = units.Millimetre
	s := demoSetup()
	if rapid.Bool().Draw(t, "as the demo") {
		return s
	}
	std := rapid.SampledFrom([]units.Length{0, 0.001 * mm, 0.3 * mm, 5 * mm})
	s.Stroke = units.WithStd(anyLength(t, "stroke", 120), std.Draw(t, "stroke std"))
	s.Rod = units.WithStd(anyLength(t, "rod", 250), std.Draw(t, "rod std"))
	s.Offset = units.WithStd(anyLength(t, "offset", 10), std.Draw(t, "offset std"))
	s.Slack = units.WithStd(rapid.SampledFrom([]units.Length{0, 0.1 * mm, 2 * mm}).Draw(t, "slack"), std.Draw(t, "slack std"))
	s.SlackKnown = rapid.Bool().Draw(t, "slack known")
	s.RodUnknown, s.OffsetUnknown = rapid.Bool().Draw(t, "rod unknown"), rapid.Bool().Draw(t, "offset unknown")
	s.SideUnknown = rapid.Bool().Draw(t, "side unknown")
	s.Figures = ignition.Figures(rapid.IntRange(1, 2).Draw(t, "figures"))
	s.Dial = ignition.DialFigures(rapid.IntRange(1, 2).Draw(t, "dial"))
	s.SettingStd, s.DialStd, s.ZeroStd = std.Draw(t, "setting"), std.Draw(t, "dial std"), std.Draw(t, "zero std")
	s.Lean.Value = units.Angle(rapid.Float64Range(-80, 80).Draw(t, "lean")) * units.Degree
	return s
}

func anyLength(t *rapid.T, what string, most float64) units.Length {
	if rapid.IntRange(0, 40).Draw(t, what+" strange") == 0 {
		return units.Length(rapid.SampledFrom([]float64{0, -1, 1e300, -1e300, 1e-300, math.NaN(), math.Inf(1)}).Draw(t, what))
	}
	return units.Length(rapid.Float64Range(0, most).Draw(t, what)) * units.Millimetre
}

func finite(t *rapid.T, what string, r units.Reading[units.Length]) {
	if v := float64(r.Value); math.IsNaN(v) || math.IsInf(v, 0) {
		t.Errorf("%s: %v", what, r.Value)
	}
	if u := float64(r.Std); !(u > 0) || math.IsInf(u, 0) {
		t.Errorf("%s: standard uncertainty %v", what, r.Std)
	}
	if !(r.DoF >= 0) {
		t.Errorf("%s: degrees of freedom %v", what, r.DoF)
	}
}
