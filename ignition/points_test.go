package ignition

import (
	"errors"
	"math"
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
