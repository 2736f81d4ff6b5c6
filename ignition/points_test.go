package ignition

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// demoScale is the rim of the demonstration engine, which is invented: girth
// 1118.33 mm, figures rising.
func demoScale() MeasuredScale {
	return MeasuredScale{
		Girth:   units.WithStd(1118.33*mm, 0.3*mm),
		TDC:     units.WithStd(174.0*mm, 0.2*mm),
		Figures: Rising,
	}
}

func millimetres(figures ...float64) []units.Length {
	out := make([]units.Length, len(figures))
	for i, f := range figures {
		out[i] = units.Length(f) * mm
	}
	return out
}

var (
	demoForward30  = millimetres(119.8, 119.1, 118.0, 118.7, 117.0)
	demoBackward30 = millimetres(114.3, 115.7, 114.4)
	demoForward45  = millimetres(108.3, 108.6, 107.2, 109.0, 108.6)
	demoRetard30   = millimetres(174.8, 174.0, 174.0)
)

func TestOpeningOfTheDemonstrationEngine(t *testing.T) {
	m := demoScale()
	o, err := m.Opening(demoForward30, demoBackward30, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	const byHand = "worked by hand from the invented readings of the demonstration engine"
	figures.Figure{Printed: "118.52", Source: byHand}.Check(t, o.Forward.Value.Millimetres())
	figures.Figure{Printed: "114.80", Source: byHand}.Check(t, o.Backward.Value.Millimetres())
	// 3.72 mm at 3.1065 mm to the degree.
	figures.Figure{Printed: "1.1975", Source: byHand}.Check(t, o.Slack.Value.Degrees())
	// Squares of the distances from the mean: 4.588 mm², over 4 and over 5.
	figures.Figure{Printed: "0.4790", Source: byHand}.Check(t, o.Forward.Std.Millimetres())
	if o.Forward.DoF != 4 || o.Odd != nil || o.OddBack != nil {
		t.Errorf("got DoF %v, odd %v and %v; want 4 and none", o.Forward.DoF, o.Odd, o.OddBack)
	}
	a, err := m.Advance(o.Forward)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "17.859", Source: byHand}.Check(t, a.Value.Degrees())
	// (0.4790² + 0.2²)^½ mm at 3.1065 mm to the degree; the girth adds 0.005°.
	figures.Figure{Printed: "0.167", Source: byHand}.Check(t, a.Std.Degrees())
	if got := a.Largest().Name; got != "figure" {
		t.Errorf("largest term %q, want the figure", got)
	}
}

func TestOpeningUncertainty(t *testing.T) {
	m := demoScale()
	for _, tc := range []struct {
		name     string
		forward  []units.Length
		single   units.Length
		std, dof float64
	}{
		{"one figure", millimetres(118), 0.5 * mm, 0.5, 0},
		{"agreeing better than they can", millimetres(118, 118, 118, 118), 0.5 * mm, 0.25, 0},
		{"scattering more than they should", millimetres(116, 118, 120, 118), 0.5 * mm, math.Sqrt(8./3) / 2, 3},
		{"without a single", millimetres(117, 119), 0, 1, 1},
	} {
		o, err := m.Opening(tc.forward, nil, tc.single)
		if err != nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		figures.Near(t, tc.name, o.Forward.Std.Millimetres(), tc.std, 1e-12)
		if o.Forward.DoF != tc.dof || o.Slack != (units.Reading[units.Angle]{}) {
			t.Errorf("%s: DoF %v, slack %v", tc.name, o.Forward.DoF, o.Slack)
		}
	}
}

// Where the rule starts again in the middle of the figures the mean is still
// theirs.
func TestOpeningAcrossTheSeamOfTheRule(t *testing.T) {
	m := demoScale()
	o, err := m.Opening(millimetres(1117.33, 1, 2), nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	s := must(m.Scale())(t)
	figures.Near(t, "mean on the rule", s.OnRule(o.Forward.Value).Millimetres(), (-1+1+2)/3., 1e-9)
}

func TestSlackHasASign(t *testing.T) {
	m := demoScale()
	_, err := m.Opening(demoBackward30, demoForward30, 0.5*mm)
	refused(t, "lists changed about", err, "turned backward the contacts close 1.20° later than they open turned forward")
	m.Figures = Falling
	_, err = m.Opening(demoForward30, demoBackward30, 0.5*mm)
	refused(t, "figures said to fall", err, "want the two lists the right way round and rim figures that are falling as stated")
}

func TestOpeningRefusals(t *testing.T) {
	m := demoScale()
	for _, tc := range []struct {
		name              string
		forward, backward []units.Length
		single            units.Length
		text              string
	}{
		{"none", nil, demoBackward30, 0.5 * mm, "contacts opening, turned forward: no figures: want one at least"},
		{"one without a single", millimetres(118), nil, 0, "one figure without a standard uncertainty"},
		{"negative single", demoForward30, nil, -1 * mm, "standard uncertainty of one figure -1 mm: want 0 mm or more"},
		{"NaN single", demoForward30, nil, units.Length(math.NaN()), "want 0 mm or more"},
		{"one backward without a single", demoForward30, millimetres(114), 0, "contacts closing, turned backward: one figure"},
	} {
		_, err := m.Opening(tc.forward, tc.backward, tc.single)
		refused(t, tc.name, err, tc.text)
	}
	if _, err := m.Opening(millimetres(1, math.NaN()), nil, 0); !errors.Is(err, units.ErrNotFinite) || !strings.Contains(err.Error(), "figure 2") {
		t.Errorf("NaN figure: got %v", err)
	}
	m.Girth.Value = 0
	_, err := m.Opening(demoForward30, nil, 0)
	refused(t, "no rim", err, "rim girth 0 mm")
}

// Left out of the mean, the odd figure changes nothing but is told.
func TestOddFigureIsLeftOut(t *testing.T) {
	m := demoScale()
	clean, err := m.Opening(millimetres(119.8, 119.1, 118.7, 117.0), nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	odd, err := m.Opening(millimetres(119.8, 119.1, 128.0, 118.7, 117.0), nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	if odd.Forward != clean.Forward || len(odd.Odd) != 1 {
		t.Errorf("got %v leaving out %v, want %v", odd.Forward, odd.Odd, clean.Forward)
	}
	if got, want := odd.Odd[0].String(), "try 3, 128.0 mm: 9.3 mm more than the others (about 10 mm: a wrong centimetre?)"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

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

func TestLeverOfTheDemonstrationEngine(t *testing.T) {
	m := demoScale()
	early, err := m.Opening(demoForward30, nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	late, err := m.Opening(demoRetard30, nil, 0.5*mm)
	if err != nil {
		t.Fatal(err)
	}
	l := must(m.Lever(early.Forward, late.Forward))(t)
	const byHand = "worked by hand from the invented readings of the demonstration engine"
	figures.Figure{Printed: "17.945", Source: byHand}.Check(t, l.Range.Value.Degrees())
	figures.Figure{Printed: "-0.09", Source: byHand}.Check(t, l.Retarded.Value.Degrees())
	if l.Starting() != StartDoubtful || !strings.Contains(l.Caution(), "0.1° after top dead centre, which within its uncertainty is not surely after it") {
		t.Errorf("got %v, %q", l.Starting(), l.Caution())
	}
	set := l.SetTo(units.WithStd(26*deg, 0.2*deg))
	figures.Near(t, "retard after slipping", set.Retarded.Value.Degrees(), 26-l.Range.Value.Degrees(), 1e-12)
	if set.Starting() != StartEarly || !strings.Contains(set.Caution(), "kick-back: at full retard the spark still comes 8.1° before top dead centre") {
		t.Errorf("got %v, %q", set.Starting(), set.Caution())
	}
}

// Setting the one end moves the other by the range, and each budget says what the
// uncertainty beside it is made of.
func TestLeverSetToEitherEnd(t *testing.T) {
	m := demoScale()
	l := must(m.Lever(units.WithStd(118.5*mm, 0.5*mm), units.WithStd(174.3*mm, 0.3*mm)))(t)
	wanted := units.Reading[units.Angle]{Value: -4 * deg, Std: 0.3 * deg, DoF: 6}
	late := l.SetRetarded(wanted)
	figures.Near(t, "full retard as wanted", late.Retarded.Value.Degrees(), -4, 1e-12)
	figures.Near(t, "full advance, wanted + range", late.Advanced.Value.Degrees(), l.Range.Value.Degrees()-4, 1e-12)
	figures.Near(t, "its uncertainty", late.Advanced.Std.Degrees(), math.Hypot(0.3, l.Range.Std.Degrees()), 1e-12)
	figures.Near(t, "its degrees of freedom", late.Advanced.DoF, units.EffectiveDoF(wanted, l.Range), 1e-9)
	if late.Starting() != StartLate {
		t.Errorf("start %v, want late", late.Starting())
	}
	there := l.SetTo(late.Advanced)
	figures.Near(t, "and by the other end", there.Retarded.Value.Degrees(), -4, 1e-12)
	for name, b := range map[string]struct {
		of     units.Reading[units.Angle]
		budget []units.Contribution[units.Angle]
		most   string
	}{
		"as found, advanced":        {l.Advanced, l.AdvancedBudget, advancedName},
		"as found, retarded":        {l.Retarded, l.RetardedBudget, retardedName},
		"as found, range":           {l.Range, l.RangeBudget, advancedName},
		"retard set, advanced":      {late.Advanced, late.AdvancedBudget, wantedName},
		"retard set, retarded":      {late.Retarded, late.RetardedBudget, wantedName},
		"advance set, retarded":     {there.Retarded, there.RetardedBudget, wantedName},
		"advance surely, retarded":  {l.SetTo(units.Exact(26 * deg)).Retarded, l.SetTo(units.Exact(26 * deg)).RetardedBudget, advancedName},
		"advance set anew, advance": {there.SetTo(wanted).Advanced, there.SetTo(wanted).AdvancedBudget, wantedName},
	} {
		shares, squares, most := 0.0, 0.0, units.Contribution[units.Angle]{}
		for _, c := range b.budget {
			shares += c.Share
			squares += math.Pow(c.Contribution.Degrees(), 2)
			if c.Share > most.Share {
				most = c
			}
		}
		figures.Near(t, name+": sum of shares", shares, 1, 1e-9)
		figures.Near(t, name+": uncertainty", math.Sqrt(squares), b.of.Std.Degrees(), 1e-9)
		if most.Name != b.most {
			t.Errorf("%s: most from %q, want %q", name, most.Name, b.most)
		}
	}
	if b := (Lever{Range: l.Range}).SetTo(wanted); b.RetardedBudget != nil {
		t.Errorf("a budget out of nothing: %v", b.RetardedBudget)
	}
}

func TestStarting(t *testing.T) {
	for _, tc := range []struct {
		retard, std float64
		want        Starting
		text        string
	}{
		{5, 1, StartEarly, "5.0° before top dead centre"},
		{1, 1, StartDoubtful, "1.0° before top dead centre, which"},
		{-1, 1, StartDoubtful, "1.0° after top dead centre, which"},
		{-5, 1, StartLate, "5.0° after top dead centre"},
		{0, 0, StartLate, "0.0° after"},
	} {
		l := Lever{Retarded: units.WithStd(units.Angle(tc.retard)*deg, units.Angle(tc.std)*deg)}
		if got := l.Starting(); got != tc.want || !strings.Contains(l.Caution(), tc.text) {
			t.Errorf("%v ± %v: got %v, %q", tc.retard, tc.std, got, l.Caution())
		}
	}
}

func TestLeverRefusals(t *testing.T) {
	m := demoScale()
	_, err := m.Lever(units.WithStd(174*mm, 0.3*mm), units.WithStd(118*mm, 0.3*mm))
	refused(t, "changed about", err, "full retard 18.0° earlier than full advance")
	m.Figures = 0
	_, err = m.Lever(units.Exact(118*mm), units.Exact(174*mm))
	refused(t, "figures not stated", err, "want Rising or Falling")
	_, err = m.Figure(units.Exact(26 * deg))
	refused(t, "figures not stated", err, "want Rising or Falling")
	_, err = m.GapEffect(0.02*mm, gapTrials(t)...)
	refused(t, "figures not stated", err, "want Rising or Falling")
}

func TestMeasuredScaleFigure(t *testing.T) {
	m := demoScale()
	f := must(m.Figure(units.WithStd(26*deg, 0.2*deg)))(t)
	figures.Near(t, "figure", f.Value.Millimetres(), 174-26*1118.33/360, 1e-9)
	// 0.2 mm of top dead centre, 0.2° at 3.1065 mm, and the girth's 0.3 × 26/360 mm.
	figures.Near(t, "std", f.Std.Millimetres(), math.Sqrt(0.2*0.2+math.Pow(0.2*1118.33/360, 2)+math.Pow(0.3*26/360, 2)), 1e-6)
	back := must(m.Advance(f.Reading()))(t)
	figures.Near(t, "back", back.Value.Degrees(), 26, 1e-10)
}

func TestBreakerAgainstPrint(t *testing.T) {
	const (
		wiki  = "German Wikipedia, Schließwinkel"
		teach = "teaching page on cam dwell angle, ignitionphysics"
		page  = "page on checking dwell, innovationdiscoveries"
	)
	half := HalfSpeed()
	breaker := func(lobes int, closed units.Angle) Breaker { return must(NewBreaker(half, lobes, closed))(t) }
	ms := func(d time.Duration) float64 { return d.Seconds() * 1e3 }
	figures.Figure{Printed: "50", Source: wiki}.Check(t, breaker(4, 45*deg).Dwell().Percent())
	figures.Figure{Printed: "56", Source: wiki}.Check(t, breaker(4, 50*deg).Dwell().Percent())
	figures.Figure{Printed: "58", Source: teach}.Check(t, breaker(6, 35*deg).Dwell().Percent())
	figures.Figure{Printed: "30", Source: teach}.Check(t, breaker(4, 60*deg).Open().Degrees())
	figures.Figure{Printed: "25", Source: teach}.Check(t, breaker(6, 35*deg).Open().Degrees())
	figures.Figure{Printed: "167", Source: teach}.Check(t, breaker(4, 60*deg).Sparks(5000*rpm, time.Second))
	figures.Figure{Printed: "6", Source: teach}.Check(t, ms(breaker(4, 60*deg).Between(5000*rpm)))
	figures.Figure{Printed: "4", Source: teach}.Check(t, ms(breaker(4, 60*deg).ClosedTime(5000*rpm)))
	figures.Figure{Printed: "250", Source: teach}.Check(t, breaker(6, 35*deg).Sparks(5000*rpm, time.Second))
	figures.Figure{Printed: "4", Source: teach}.Check(t, ms(breaker(6, 35*deg).Between(5000*rpm)))
	figures.Figure{Printed: "38", Source: page}.Check(t, breaker(4, 52*deg).Open().Degrees())
	figures.Reference{Digits: "83.3333333333333", Source: "computed with 50 digits: dwell of a single lobe open 60°"}.Check(t, breaker(1, 300*deg).Dwell().Percent())
}

func TestBreakerFormsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lobes := rapid.IntRange(1, 12).Draw(t, "lobes")
		share := rapid.Float64Range(0.01, 0.99).Draw(t, "share")
		start := rapid.Float64Range(-720, 720).Draw(t, "opens")
		b, err := NewBreakerOfDwell(HalfSpeed(), lobes, units.Ratio(share))
		if err != nil {
			t.Fatal(err)
		}
		nearly(t, "dwell", float64(b.Dwell()), share, 1e-12)
		nearly(t, "open and closed make the cycle", (b.Open() + b.Closed()).Degrees(), 360/float64(lobes), 1e-12)
		opens := units.Angle(start) * deg
		m, err := NewBreakerOfMarks(HalfSpeed(), lobes, opens, opens+HalfSpeed().Crank(b.Open()))
		if err != nil {
			t.Fatal(err)
		}
		nearly(t, "by marks", m.Closed().Degrees(), b.Closed().Degrees(), 1e-9)
		// A whole turn of the rim more makes no difference where the cycle divides it.
		m, err = NewBreakerOfMarks(CrankSpeed(), 1, opens, opens+b.Open()-units.Turn)
		if err != nil {
			t.Fatal(err)
		}
		nearly(t, "by wrapped marks", m.Open().Degrees(), math.Mod(b.Open().Degrees()+360, 360), 1e-9)
	})
}

func TestBreakerRefusals(t *testing.T) {
	_, err := NewBreaker(CrankSpeed(), 0, 0)
	refused(t, "no lobes", err, "0 lobes: want from 1 to 1000")
	_, err = NewBreaker(CrankSpeed(), 4, 91*deg)
	refused(t, "more than the cycle", err, "contacts closed over 91°: want from 0° to 90°, the cycle of a lobe")
	_, err = NewBreaker(CrankSpeed(), 4, units.Angle(math.NaN()))
	refused(t, "NaN", err, "want from 0° to 90°")
	_, err = NewBreakerOfDwell(CrankSpeed(), 4, 1.2)
	refused(t, "too much dwell", err, "dwell 120 %: want from 0 % to 100 %")
	_, err = NewBreakerOfDwell(CrankSpeed(), 0, 0.5)
	refused(t, "no lobes", err, "0 lobes")
	_, err = NewBreakerOfMarks(CrankSpeed(), 1, 0, units.Angle(math.Inf(1)))
	refused(t, "endless", err, "contacts closed over")
	_, err = NewBreakerOfMarks(CrankSpeed(), -1, 0, 1)
	refused(t, "negative lobes", err, "-1 lobes")
}

func TestRetiming(t *testing.T) {
	for _, tc := range []struct {
		name            string
		drive           Drive
		present, wanted float64
		change, shaft   float64
		text            string
	}{
		{"more advance", CrankSpeed(), 18, 26, 8, 8, "spark 8.0° earlier at the crank (u 0.4°): with the crank held, turn the driven shaft 8.0° forward, the way it turns in running"},
		{"less advance", CrankSpeed(), 30, 26, -4, -4, "spark 4.0° later at the crank (u 0.4°): with the crank held, turn the driven shaft 4.0° backward, against the way"},
		{"half speed", HalfSpeed(), 18, 26, 8, 4, "turn the driven shaft 4.0° forward"},
		{"from after to before", CrankSpeed(), -5, 10, 15, 15, "15.0° earlier"},
		{"as wanted", CrankSpeed(), 26, 26, 0, 0, "leave the drive alone"},
	} {
		r := must(NewRetiming(tc.drive, units.WithStd(units.Angle(tc.present)*deg, 0.3*deg), units.WithStd(units.Angle(tc.wanted)*deg, 0.2*deg)))(t)
		figures.Near(t, tc.name+": change", r.Change.Value.Degrees(), tc.change, 1e-12)
		figures.Near(t, tc.name+": shaft", r.Shaft.Value.Degrees(), tc.shaft, 1e-12)
		figures.Near(t, tc.name+": u", r.Change.Std.Degrees(), math.Hypot(0.3, 0.2), 1e-12)
		if !strings.Contains(r.String(), tc.text) {
			t.Errorf("%s: got %q, want %q in it", tc.name, r, tc.text)
		}
		if r.Needed() != (math.Abs(tc.change) > 1) {
			t.Errorf("%s: needed %v", tc.name, r.Needed())
		}
		if r.Present.Value+r.Change.Value != r.Wanted.Value {
			figures.Near(t, tc.name+": adds up", float64(r.Present.Value+r.Change.Value), float64(r.Wanted.Value), 1e-15)
		}
	}
	r := must(NewRetiming(CrankSpeed(), units.Exact(18*deg), units.Exact(26*deg)))(t)
	figures.Near(t, "on a boss of 15 mm", r.AtRadius(15*mm).Millimetres(), 15*8*math.Pi/180, 1e-12)
	_, err := NewRetiming(CrankSpeed(), units.Exact(200*deg), units.Exact(26*deg))
	refused(t, "too far", err, "timing 200° before top dead centre: want from −180° to 180°")
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
