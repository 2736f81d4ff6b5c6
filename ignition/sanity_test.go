package ignition

import (
	"encoding"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/geometry"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Where a row gives degrees and a drop, the two agree for a usual rod, to half
// a degree of rounding.
func TestPracticeRowsAgreeWithThemselves(t *testing.T) {
	for _, p := range PracticeTable() {
		if p.Source == "" || p.Confidence == "" || p.Engine == "" || p.Kind == AnyKind {
			t.Errorf("%+v lacks a source, a confidence, a name or a kind", p)
		}
		if p.Least > p.Most || p.Slow > p.Fast {
			t.Errorf("%s: range the wrong way round", p.Engine)
		}
		if p.Most == 0 || p.Drop == 0 || p.Stroke == 0 {
			continue
		}
		s := must(geometry.NewStrokeOnly(p.Stroke, geometry.UsualRods()))(t)
		a := must(s.AngleAtDrop(p.Drop))(t)
		if p.Least < a.Least-0.5*deg || p.Most > a.Most+0.5*deg {
			t.Errorf("%s: %v to %v printed, the drop gives %v", p.Engine, p.Least, p.Most, a)
		}
	}
	PracticeTable()[0].Least = 0
	if PracticeTable()[0].Least == 0 {
		t.Error("a caller can change the table")
	}
}

// The rows that come of a rule in degrees for each 100 rev/min obey it.
func TestPracticeRowsObeyTheirRules(t *testing.T) {
	for _, tc := range []struct {
		engine     string
		slow, fast PeriodRule
	}{
		{"Jumbo", PeriodRule{8 * deg}, PeriodRule{8 * deg}},
		{"show speed", PeriodRule{3 * deg}, PeriodRule{4 * deg}},
	} {
		found := false
		for _, p := range PracticeTable() {
			if strings.Contains(p.Engine, tc.engine) {
				found = true
				figures.Near(t, tc.engine+" slow", tc.slow.Advance(p.Slow).Degrees(), p.Least.Degrees(), 1e-9)
				figures.Near(t, tc.engine+" fast", tc.fast.Advance(p.Fast).Degrees(), p.Most.Degrees(), 1e-9)
			}
		}
		if !found {
			t.Errorf("no row for %s", tc.engine)
		}
	}
}

func TestPracticeAdvanceOfDrop(t *testing.T) {
	for _, p := range PracticeTable() {
		lo, hi, ok := p.Advance()
		switch {
		case strings.HasPrefix(p.Engine, "BSA M20"):
			const src = "7/16 in on 112 mm, rods of 3.5 and 4.5 throws, law of cosines by hand"
			figures.Figure{Printed: "32.5", Source: src}.Check(t, lo.Degrees())
			figures.Figure{Printed: "33.4", Source: src}.Check(t, hi.Degrees())
		case strings.HasPrefix(p.Engine, "Dixie"):
			if ok {
				t.Errorf("a drop without a stroke gave %v to %v", lo, hi)
			}
		case p.Most > 0 && (lo != p.Least || hi != p.Most || !ok):
			t.Errorf("%s: got %v to %v", p.Engine, lo, hi)
		}
	}
}

func TestPublishedAdvance(t *testing.T) {
	least, most := PublishedAdvance()
	figures.Near(t, "least", least.Degrees(), 0, 0)
	figures.Near(t, "most", most.Degrees(), 40, 1e-12)
}

func TestAsk(t *testing.T) {
	for _, tc := range []struct {
		name         string
		advance, std float64
		kind         Kind
		running      Running
		speed        float64
		lies         Fit
		least, most  float64
		own          bool
		text         string
	}{
		{"two-stroke inside", 22, 0.5, SmallTwoStroke, AtSpeed, 900, Inside, 17, 28, true, "22.0° before top dead centre at speed: what was found for a small two-stroke at speed (2 rows) runs from 17.0° before top dead centre to 28.0° before top dead centre, and this lies inside. Does the maker's plate"},
		{"in milliseconds", 22, 0.5, SmallTwoStroke, AtSpeed, 900, Inside, 17, 28, true, "At 900 rev/min it is 4.1 ms before the top"},
		{"too near to tell", 27.5, 0.5, SmallTwoStroke, AtSpeed, 0, Doubtful, 17, 28, true, "may lie inside or outside. Can it be read better?"},
		{"twice the crank", 52, 0.5, SmallTwoStroke, AtSpeed, 0, Above, 17, 28, true, "Are these degrees of the crank and not of a shaft"},
		{"late", 5, 0.5, SmallTwoStroke, AtSpeed, 0, Below, 17, 28, true, "and this is later"},
		{"after the top", -3, 0.5, FarmEngine, AtSpeed, 0, Below, 15, 40, true, "3.0° after top dead centre at speed"},
		{"starting at the top", 0, 0, FarmEngine, AtStart, 0, Inside, 0, 0, true, "top dead centre in starting: what was found for a slow farm engine in starting (1 row) runs from top dead centre to top dead centre"},
		{"show speed", 5, 0.5, FarmEngine, ShowIdle, 150, Inside, 3, 8, true, "turning slowly for show"},
		{"a kind without a row falls back on all", 25, 0.5, AeroAndCar, AtSpeed, 0, Inside, 15, 41.61, false, "old engines of any kind"}, // 19/32 in on 100 mm, rod 225 mm: acos 0.74767
		{"Jumbo is left out far from its speeds", 22, 0.5, FarmEngine, AtSpeed, 150, Inside, 15, 35, true, "(2 rows)"},
		{"Jumbo still counts at less than twice its speed", 22, 0.5, FarmEngine, AtSpeed, 950, Inside, 15, 40, true, "(3 rows)"},
		{"and no longer above it", 22, 0.5, FarmEngine, AtSpeed, 1050, Inside, 15, 35, true, "(2 rows)"},
	} {
		q, err := Ask(units.WithStd(units.Angle(tc.advance)*deg, units.Angle(tc.std)*deg), tc.kind, tc.running, units.AngularSpeed(tc.speed)*rpm)
		if err != nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		if q.Lies != tc.lies || q.Own != tc.own || !strings.Contains(q.String(), tc.text) || len(q.Rows) == 0 {
			t.Errorf("%s: got %v, own %v, %q; want %v, %v, %q", tc.name, q.Lies, q.Own, q, tc.lies, tc.own, tc.text)
		}
		figures.Near(t, tc.name+": least", q.Least.Degrees(), tc.least, 0.005)
		figures.Near(t, tc.name+": most", q.Most.Degrees(), tc.most, 0.005)
		if !strings.Contains(q.Text, "?") {
			t.Errorf("%s: not a question: %q", tc.name, q)
		}
	}
}

func TestAskRefusals(t *testing.T) {
	for _, tc := range []struct {
		name    string
		a       units.Reading[units.Angle]
		kind    Kind
		running Running
		speed   units.AngularSpeed
		text    string
	}{
		{"too far", units.Exact(181 * deg), AnyKind, AtSpeed, 0, "timing 181° before top dead centre"},
		{"NaN", units.Exact(units.Angle(math.NaN())), AnyKind, AtSpeed, 0, "want from −180° to 180°"},
		{"kind", units.Exact(20 * deg), 99, AtSpeed, 0, "kind 99"},
		{"state", units.Exact(20 * deg), AnyKind, -1, 0, "state -1"},
		{"speed", units.Exact(20 * deg), AnyKind, AtSpeed, -1, "want 0 rev/min or more"},
	} {
		_, err := Ask(tc.a, tc.kind, tc.running, tc.speed)
		refused(t, tc.name, err, tc.text)
	}
}

func TestKindsAsText(t *testing.T) {
	for _, k := range kinds() {
		text, err := k.MarshalText()
		var back Kind
		if err != nil || back.UnmarshalText(text) != nil || back != k {
			t.Errorf("%v comes back as %v, %v", k, back, err)
		}
	}
	for _, r := range []Running{AtSpeed, AtStart, ShowIdle} {
		text, err := r.MarshalText()
		var back Running
		if err != nil || back.UnmarshalText(text) != nil || back != r {
			t.Errorf("%v comes back as %v, %v", r, back, err)
		}
	}
	var k Kind
	refused(t, "kind", k.UnmarshalText([]byte("steam")), `"steam": want "any engine", "slow farm engine", `)
	var r Running
	refused(t, "state", r.UnmarshalText([]byte("idle")), `"idle": want "at speed", "in starting" or "turning slowly for show", the state the timing is for`)
	for _, v := range []encoding.TextMarshaler{Kind(99), Running(-1)} {
		_, err := v.MarshalText()
		refused(t, "no such word", err, "not stated: want")
	}
}
