package ignition

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func gapTrials(t *testing.T) []GapTrial {
	m := demoScale()
	a, err := m.Opening(demoForward30, nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	b, err := m.Opening(demoForward45, nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	return []GapTrial{{0.30 * mm, a.Forward}, {0.45 * mm, b.Forward}}
}

func TestGapEffectOfTheDemonstrationEngine(t *testing.T) {
	m := demoScale()
	g := must(m.GapEffect(0.02*mm, gapTrials(t)...))(t)
	per := must(g.Per(0.01 * mm))(t)
	const byHand = "worked by hand from the invented readings of the demonstration engine"
	// 118.52 − 108.34 = 10.18 mm, /3.10647 mm per degree, over 15 hundredths.
	figures.Figure{Printed: "0.2185", Source: byHand}.Check(t, per.Value.Degrees())
	figures.Figure{Printed: "0.555", Source: byHand}.Check(t, must(g.Per(units.Thou))(t).Value.Degrees())
	// Two settings of 0.02 mm in a difference of 0.15 mm, 18.9 %, and the rim
	// figures, 0.4790 and 0.3156 mm in 10.18 mm, 5.6 %: together 19.7 %.
	figures.Figure{Printed: "0.0430", Source: byHand}.Check(t, per.Std.Degrees())
	for _, c := range per.Budget {
		if c.Name == tdcName && math.Abs(c.Share) > 1e-9 {
			t.Errorf("top dead centre enters the slope: %v", c)
		}
	}
	if misfit := g.Misfit(); !(misfit < 1e-9) {
		t.Errorf("two trials lie on their line, got a misfit of %g", misfit)
	}
	at := must(g.Advance(0.45 * mm))(t)
	figures.Near(t, "advance at a gap tried", at.Value.Degrees(), (174-108.34)/(1118.33/360), 1e-9)
}

// More figures at one gap do not make up for how well that gap was set.
func TestRepeatsDoNotAverageTheFeeler(t *testing.T) {
	m := demoScale()
	exact := func(gap, fig float64) GapTrial {
		return GapTrial{units.Length(gap) * mm, units.Exact(units.Length(fig) * mm)}
	}
	g := must(m.GapEffect(0.02*mm, exact(0.30, 118.52), exact(0.45, 108.34)))(t)
	per := must(g.Per(0.01 * mm))(t)
	figures.Near(t, "the feeler alone", float64(per.Std/per.Value), 0.02*math.Sqrt2/0.15, 1e-3)
	// Setting each gap four times anew halves it, all but the girth's small share.
	var trials []GapTrial
	for range 4 {
		trials = append(trials, exact(0.30, 118.52), exact(0.45, 108.34))
	}
	four := must(must(m.GapEffect(0.02*mm, trials...))(t).Per(0.01 * mm))(t)
	figures.Near(t, "set anew four times", float64(four.Std/per.Std), 0.5, 1e-5)
}

func TestGapForTheCard(t *testing.T) {
	m := demoScale()
	g := must(m.GapEffect(0.02*mm, gapTrials(t)...))(t)
	a := must(g.GapFor(units.WithStd(26*deg, 0.2*deg)))(t)
	// 21.14° at 0.45 mm, 4.86° more at 0.2185° for a hundredth: 22 hundredths.
	figures.Near(t, "gap", a.Gap.Value.Millimetres(), 0.45+(26-(174-108.34)/(1118.33/360))/21.847, 1e-4)
	if !a.Beyond || a.Usual != Doubtful && a.Usual != Above {
		t.Errorf("got %+v, want a gap beyond those tried and beyond usual ones", a)
	}
	if want := "set the maker's gap and move the drive"; !strings.Contains(a.String(), want) {
		t.Errorf("got %q, want %q in it", a, want)
	}
	in := must(g.GapFor(units.Exact(19 * deg)))(t)
	if in.Beyond || in.Usual != Inside || !strings.Contains(in.String(), "lies inside the usual 0.25 to 0.58 mm (10 to 23 thou)") {
		t.Errorf("got %+v, %q", in, in)
	}
	below := must(g.GapFor(units.Exact(14 * deg)))(t)
	if below.Usual != Below && below.Usual != Doubtful {
		t.Errorf("got %+v, want below", below)
	}
	none := must(g.GapFor(units.Exact(-10 * deg)))(t)
	if !strings.HasPrefix(none.String(), "no gap gives that timing") {
		t.Errorf("got %q", none)
	}
}

// The line goes back to where it came from, for any number of trials on it.
func TestGapLineRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := demoScale()
		s, _ := m.Scale()
		perHundredth := rapid.Float64Range(0.05, 1).Draw(t, "degrees per 0.01 mm")
		n := rapid.IntRange(2, 6).Draw(t, "trials")
		trials := make([]GapTrial, n)
		for i := range trials {
			gap := 0.30 + 0.05*float64(i)
			figure := s.FigureAtAdvance(units.Angle(15+100*perHundredth*(gap-0.30)) * deg)
			trials[i] = GapTrial{units.Length(gap) * mm, units.WithStd(figure, 0.3*mm)}
		}
		g, err := m.GapEffect(0.005*mm, trials...)
		if err != nil {
			t.Fatal(err)
		}
		per, err := g.Per(0.01 * mm)
		if err != nil {
			t.Fatal(err)
		}
		nearly(t, "slope", per.Value.Degrees(), perHundredth, 1e-9)
		if g.Misfit() > 1e-6 {
			t.Errorf("misfit %g of points on a line", g.Misfit())
		}
		least, most := g.Tried()
		at, err := g.Advance((least + most) / 2)
		if err != nil {
			t.Fatal(err)
		}
		if per.Value < 2*per.Std {
			return
		}
		back, err := g.GapFor(at.Reading())
		if err != nil {
			t.Fatal(err)
		}
		nearly(t, "gap", float64(back.Gap.Value), float64((least+most)/2), 1e-9)
	})
}

func TestMisfitShowsABentLine(t *testing.T) {
	m := demoScale()
	trial := func(gap, fig float64) GapTrial {
		return GapTrial{units.Length(gap) * mm, units.WithStd(units.Length(fig)*mm, 0.2*mm)}
	}
	g := must(m.GapEffect(0.005*mm, trial(0.30, 118), trial(0.40, 112), trial(0.50, 90)))(t)
	if !(g.Misfit() > 3) {
		t.Errorf("misfit %g of a bent line, want more than 3", g.Misfit())
	}
}

func TestGapRefusals(t *testing.T) {
	m := demoScale()
	two := gapTrials(t)
	for _, tc := range []struct {
		name    string
		setting units.Length
		trials  []GapTrial
		text    string
	}{
		{"one", 0.02 * mm, two[:1], "1 gaps tried: want 2 or more"},
		{"same gap twice", 0.02 * mm, []GapTrial{two[0], two[0]}, "gaps tried from 0.3 mm to 0.3 mm: want them more than 0.1 mm apart"},
		{"too near", 0.031 * mm, two, "want them more than 0.155 mm apart"},
		{"negative setting", -0.01 * mm, two, "standard uncertainty of setting the gap -0.01 mm"},
		{"no gap", 0.02 * mm, []GapTrial{{0, two[0].Figure}, two[1]}, "gap 1 is 0 mm: want more than 0 mm"},
		{"changed about", 0.02 * mm, []GapTrial{{two[0].Gap, two[1].Figure}, {two[1].Gap, two[0].Figure}}, "contacts open 2.2° later for each 0.1 mm more gap: a wider gap opens them earlier"},
	} {
		_, err := m.GapEffect(tc.setting, tc.trials...)
		refused(t, tc.name, err, tc.text)
	}
	g := must(m.GapEffect(0.02*mm, two...))(t)
	_, err := g.Advance(0.5 * mm)
	refused(t, "outside", err, "gap 0.5 mm: want one from 0.3 mm to 0.45 mm, those tried")
	flat := must(m.GapEffect(0.02*mm, two[0], GapTrial{0.45 * mm, two[0].Figure}))(t)
	_, err = flat.GapFor(units.Exact(26 * deg))
	refused(t, "no slope", err, "want gaps further apart")
}

// The gaps in use come from the sources and not from the sum.
func TestUsualGapCoversItsTable(t *testing.T) {
	least, most := UsualGap()
	for _, g := range GapTable() {
		if g.Least < least || g.Most > most || g.Least > g.Most || g.Source == "" || g.Engine == "" {
			t.Errorf("%+v lies outside %v to %v or lacks a source", g, least, most)
		}
	}
	GapTable()[0].Least = 0
	if l, _ := UsualGap(); l != least {
		t.Error("a caller can change the table")
	}
}

// An engine is made up, its readings are drawn with the scatter that the model
// states, and what the model says of its own uncertainty is held against what
// comes out.
func TestGapUncertaintyAgainstDraws(t *testing.T) {
	const (
		draws   = 1500
		slope   = 22.0 // degrees for a millimetre
		setting = 0.02
		single  = 0.5
	)
	rng := rand.New(rand.NewPCG(1, 2))
	m := demoScale()
	s := must(m.Scale())(t)
	perDegree := s.Rim().PerDegree().Millimetres()
	var off, stated, gapOff, gapStated float64
	for range draws {
		trials := make([]GapTrial, 2)
		for i, gap := range [...]float64{0.30, 0.45} {
			real := gap + setting*rng.NormFloat64() // one error for the setting
			at := 174 - perDegree*(18+slope*(real-0.30))
			figures := make([]units.Length, 5)
			for j := range figures { // and one for each figure
				figures[j] = units.Length(at+single*rng.NormFloat64()) * mm
			}
			trials[i] = GapTrial{units.Length(gap) * mm, meanOf(figures, single*mm)}
		}
		g := must(m.GapEffect(setting*mm, trials...))(t)
		per := must(g.Per(1 * mm))(t)
		d := (per.Value - slope*deg).Degrees()
		off, stated = off+d*d, stated+math.Pow(per.Std.Degrees(), 2)
		if per.Value < 2*per.Std {
			continue
		}
		// The gap for 20°: set anew, with a new error of setting.
		a := must(g.GapFor(units.Exact(20 * deg)))(t)
		e := a.Gap.Value.Millimetres() + setting*rng.NormFloat64() - (0.30 + 2/slope)
		gapOff, gapStated = gapOff+e*e, gapStated+math.Pow(a.Gap.Std.Millimetres(), 2)
	}
	if ratio := math.Sqrt(off / stated); !(ratio > 0.9 && ratio < 1.1) {
		t.Errorf("slope scatters %.2f times as much as stated", ratio)
	}
	if ratio := math.Sqrt(gapOff / gapStated); !(ratio > 0.9 && ratio < 1.1) {
		t.Errorf("gap scatters %.2f times as much as stated", ratio)
	}
}
