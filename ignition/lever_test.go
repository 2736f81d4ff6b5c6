package ignition

import (
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

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
