package ignition_test

import (
	"math"
	"testing"

	"example.com/benchsums/ignition"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// sharesOf fails t unless the budget adds up to the uncertainty beside it, and
// returns its shares by name.
func sharesOf(t *testing.T, name string, u units.Length, budget []units.Contribution[units.Length]) map[string]float64 {
	t.Helper()
	shares, squares, sum := map[string]float64{}, 0.0, 0.0
	for _, c := range budget {
		shares[c.Name] += c.Share
		sum += c.Share
		squares += math.Pow(inMM(c.Contribution), 2)
		figures.Near(t, name+", "+c.Name+": sensitivity times u, mm", c.Sensitivity*c.Std.Unit().Value()*1e3, inMM(c.Contribution), 1e-12)
	}
	figures.Near(t, name+": sum of the shares", sum, 1, 1e-9)
	figures.Near(t, name+": uncertainty by its terms, mm", math.Sqrt(squares), inMM(u), 1e-8)
	return shares
}

// A source's share is the fall of the variance when that source alone is made a
// little surer: shares of the fit against fits done anew.
func TestBudgetOfFitAgainstFitsAnew(t *testing.T) {
	s := demoSetup()
	s.ZeroStd, s.SlackKnown, s.Slack = 0.02*units.Millimetre, true, units.WithStd(0.1*units.Millimetre, 0.03*units.Millimetre)
	s.SettingStd, s.DialStd = 0.4*units.Millimetre, 0.015*units.Millimetre // more than the readings scatter
	series := goodSeries()[:1]                                             // one way: everything shows
	f := findTDC(t, s, series...)
	if f.Scatter > 1 {
		t.Fatalf("scatter %.2f: want the stated uncertainties used", f.Scatter)
	}
	shares := sharesOf(t, "fit", f.Position.Std, f.Budget())
	const less = 0.999
	for name, surer := range map[string]func(*ignition.Setup){
		"dial readings":      func(s *ignition.Setup) { s.DialStd *= less },
		"setting of the rim": func(s *ignition.Setup) { s.SettingStd *= less },
		"slack":              func(s *ignition.Setup) { s.Slack.Std *= less },
		"stroke":             func(s *ignition.Setup) { s.Stroke.Std *= less },
		"rod":                func(s *ignition.Setup) { s.Rod.Std *= less },
		"offset":             func(s *ignition.Setup) { s.Offset.Std *= less },
		"lean":               func(s *ignition.Setup) { s.Lean.Std *= less },
		"rim diameter":       func(s *ignition.Setup) { s.RimStd *= less },
		"dial zero":          func(s *ignition.Setup) { s.ZeroStd *= less },
	} {
		anew := s
		surer(&anew)
		g := findTDC(t, anew, series...)
		fall := 1 - math.Pow(float64(g.Position.Std/f.Position.Std), 2)
		figures.Near(t, "share of "+name, shares[name], fall/(1-less*less), 0.01)
		delete(shares, name)
	}
	if len(shares) > 0 {
		t.Errorf("more sources: %v", shares)
	}
}

func TestBudgetsAddUp(t *testing.T) {
	const mm = units.Millimetre
	s := demoSetup()
	rough := demoSeries()
	for i := range rough[0].Readings {
		rough[0].Readings[i].Dial += units.Length(i%3-1) * 0.2 * mm
	}
	for name, series := range map[string][]ignition.Series{"as stated": demoSeries(), "scattering more": rough} {
		f := findTDC(t, s, series...)
		if got := sharesOf(t, name, f.Position.Std, f.Budget()); !(got["setting of the rim"]+got["dial readings"] > 0.5) {
			t.Errorf("%s: shares %v: want most of it from the readings", name, got)
		}
		b, err := ignition.Bisect(s, series...)
		if err != nil {
			t.Fatal(err)
		}
		if got := sharesOf(t, name+", middles", b.Position.Std, b.Budget()); got["slack"] != 0 || !(got["setting of the rim"] > 0.5) {
			t.Errorf("%s: shares %v: want most of it from the rim, and none from the slack", name, got)
		}
	}
	one, err := ignition.Bisect(s, demoSeries()[0])
	if err != nil {
		t.Fatal(err)
	}
	if got := sharesOf(t, "middles one way", one.Position.Std, one.Budget()); !(got["slack"] > 0.5) {
		t.Errorf("shares %v: want most of it from the slack", got)
	}
	s.SlackKnown, s.Slack = true, units.WithStd(0.1*mm, 0.02*mm)
	known, err := ignition.Bisect(s, demoSeries()[0])
	if err != nil {
		t.Fatal(err)
	}
	s.Slack.Std = 0
	surely, err := ignition.Bisect(s, demoSeries()[0])
	if err != nil {
		t.Fatal(err)
	}
	got := sharesOf(t, "middles, slack known", known.Position.Std, known.Budget())
	figures.Near(t, "share of a slack that is known", got["slack"], 1-math.Pow(float64(surely.Position.Std/known.Position.Std), 2), 1e-9)
	for _, setting := range []units.Length{0.3 * mm, 0.05 * mm} {
		s.SettingStd = setting
		stop, err := ignition.Stop(s, demoStop()...)
		if err != nil {
			t.Fatal(err)
		}
		if got := sharesOf(t, "stop", stop.Position.Std, stop.Budget()); !(got["setting of the rim"] > 0.9 && got["offset"] > 0) {
			t.Errorf("stop: shares %v", got)
		}
	}
	eye, err := ignition.ByEye(s, demoEye()...)
	if err != nil {
		t.Fatal(err)
	}
	sharesOf(t, "by eye", eye.Position.Std, eye.Budget())
	if got := (ignition.TDC{}).Budget(); got != nil {
		t.Errorf("a budget out of nothing: %v", got)
	}
}

// Where the readings do not tell the side of the offset, the doubt has its share.
func TestBudgetOfUnknownSide(t *testing.T) {
	s := neighbourSetup()
	s.Offset.Value = 4 * units.Millimetre
	f := findTDC(t, s, partOf(neighbourSeries(), 10, 20)...)
	if f.Sides[0].Share > 0.99 {
		t.Fatalf("sides %+v told apart", f.Sides)
	}
	if got := sharesOf(t, "unknown side", f.Position.Std, f.Budget()); !(got["side of the offset"] > 0) {
		t.Errorf("shares %v", got)
	}
}
