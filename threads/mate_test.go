package threads

import (
	"math"
	"slices"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func mate(t testing.TB, bolt, nut string, engaged units.Length) Mating {
	t.Helper()
	j, err := NewPair(mustFind(t, bolt), mustFind(t, nut))
	if err != nil {
		t.Fatal(err)
	}
	m, err := j.Mate(engaged)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// A thread goes into itself, with no harm done; a taper one until it is tight.
func TestEveryThreadMatesWithItself(t *testing.T) {
	for th := range All() {
		j, err := NewPair(th, th)
		if err != nil {
			t.Fatal(err)
		}
		m, err := j.Mate(th.Major())
		if err != nil {
			t.Fatal(err)
		}
		want := RunsFree
		if th.Taper() != 0 {
			want = Tightens
		}
		if m.Outcome != want || m.Harms != nil || m.LeadError != 0 || m.Growth != 0 {
			t.Errorf("%v in itself: %+v", th, m)
		}
		// Only the deeper root of a bolt keeps it from meeting all of the nut.
		figures.Near(t, th.Designation()+": overlap", m.Overlap, 1, 1e-9)
	}
}

// The rule for a pure difference of lead: it binds when the lead error times
// cot(half angle) comes up to the play in the effective diameter.
func TestBindsByTheRule(t *testing.T) {
	for _, form := range []Form{ISOForm, WhitworthForm, BAForm} {
		bolt, err := New(form, 9.8*units.Millimetre, 1.02*units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		nut, _ := New(form, 10*units.Millimetre, 1*units.Millimetre)
		j, _ := NewPair(bolt, nut)
		m, err := j.Mate(10 * units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		cot := 1 / form.TanFlank()
		play := (nut.Effective() - bolt.Effective()).Millimetres()
		figures.Near(t, form.String()+": turns", m.Tight, play/(0.02*cot), 1e-9)
		figures.Near(t, form.String()+": growth, mm", m.Growth.Millimetres(), 10*0.02*cot, 1e-9)
	}
}

func TestGrowthFactors(t *testing.T) {
	const source = "geometry: cot of the half angle at 60°, 55° and 47.5°"
	for _, tc := range []struct {
		form    Form
		printed string
	}{{ISOForm, "1.732"}, {WhitworthForm, "1.921"}, {BAForm, "2.273"}} {
		figures.Figure{Printed: tc.printed, Source: source}.Check(t, 1/tc.form.TanFlank())
	}
}

func TestKnownMates(t *testing.T) {
	const in = units.Inch
	for _, tc := range []struct {
		bolt, nut string
		engaged   units.Length
		outcome   Outcome
		harms     []Harm
	}{
		// They will screw together, and the joint bears on a narrow line.
		{"1/4-26 BSF", "1/4-26 BSC", 0.25 * in, RunsFree, []Harm{EdgeLoad}},
		{"1/4-26 BSC", "1/4-26 BSF", 0.25 * in, RunsIfLoose, []Harm{Wedging, EdgeLoad}},
		// Usually assembles.
		{"1/4-20 BSW", "1/4-20 UNC", 0.25 * in, RunsIfLoose, []Harm{Wedging, EdgeLoad}},
		{"0 BA", "M6x1", 6 * units.Millimetre, RunsIfLoose, []Harm{Wedging, EdgeLoad}},
		// Starts, then binds in two or three turns.
		{"1/2-12 BSW", "1/2-13 UNC", 0.5 * in, Binds, []Harm{Wedging, EdgeLoad}},
		{"5/16-26 BSC", "M8x1", 8 * units.Millimetre, Binds, []Harm{Wedging}},
		// Different sizes.
		{"M5x0.8", "2 BA", 4 * units.Millimetre, WillNotStart, []Harm{CrossStart}},
		{"M10x1.25", "M8x1.25", 8 * units.Millimetre, WillNotStart, []Harm{CrossStart}},
		{"M8x1.25", "M10x1.25", 8 * units.Millimetre, PassesThrough, []Harm{Shallow}},
		// Tapers.
		{"R 1/4", "G 1/4", 12 * units.Millimetre, Tightens, []Harm{Splitting}},
		{"G 1/4", "R 1/4", 12 * units.Millimetre, Binds, []Harm{Wedging, Leaking}},
		{"R 1/2", "R 1/2", 12 * units.Millimetre, Tightens, nil},
		// One profile under two names.
		{"M14x1.25", "14 mm plug", 12 * units.Millimetre, RunsFree, nil},
	} {
		m := mate(t, tc.bolt, tc.nut, tc.engaged)
		if m.Outcome != tc.outcome || !slices.Equal(m.Harms, tc.harms) {
			t.Errorf("%s in %s: %v %v, want %v %v (%+v)", tc.bolt, tc.nut, m.Outcome, m.Harms, tc.outcome, tc.harms, m)
		}
	}
}

// 1/2-12 in 1/2-13 is said to bind in two or three turns: one and a half by
// the play of loose parts and one by the lead-in.
func TestHalfInchBindsInTwoOrThreeTurns(t *testing.T) {
	m := mate(t, "1/2-12 BSW", "1/2-13 UNC", 0.5*units.Inch)
	if turns := m.Loose + 1; !(turns >= 2 && turns <= 3) {
		t.Errorf("%.2f turns", turns)
	}
}

// Of 1/4 Whitworth and 1/4 UNC those of the very sizes of the tables do not go
// together, as the flanks foul; most real parts do.
func TestQuarterInchEntersWithOrdinaryPlay(t *testing.T) {
	for _, tc := range [][2]string{{"1/4 BSW", "1/4 UNC"}, {"1/4 UNC", "1/4 BSW"}} {
		m := mate(t, tc[0], tc[1], 0.25*units.Inch)
		if m.Tight != 0 || !math.IsInf(m.Middle, 1) || !math.IsInf(m.Loose, 1) {
			t.Errorf("%s in %s: %g, %g, %g turns", tc[0], tc[1], m.Tight, m.Middle, m.Loose)
		}
	}
}

func TestHandsMustAgree(t *testing.T) {
	m8 := mustFind(t, "M8")
	j, _ := NewPair(m8, m8)
	for _, tc := range []struct {
		bolt, nut Hand
		want      Outcome
	}{{LeftHand, LeftHand, RunsFree}, {LeftHand, RightHand, WrongHand}, {RightHand, LeftHand, WrongHand}} {
		m, err := j.WithHands(tc.bolt, tc.nut).Mate(8 * units.Millimetre)
		if err != nil || m.Outcome != tc.want {
			t.Errorf("%v in %v: %v, %v", tc.bolt, tc.nut, m.Outcome, err)
		}
	}
}

// Looser parts never go in less far, and a longer engagement never goes easier.
func TestMateIsMonotonic(t *testing.T) {
	var all []Thread
	for th := range All() {
		if th.Major() > 5*units.Millimetre && th.Major() < 8*units.Millimetre {
			all = append(all, th)
		}
	}
	for _, a := range all {
		for _, b := range all {
			j, _ := NewPair(a, b)
			short, err1 := j.Mate(2 * units.Millimetre)
			long, err2 := j.Mate(20 * units.Millimetre)
			if err1 != nil || err2 != nil {
				t.Fatal(err1, err2)
			}
			if short.Loose < short.Middle || short.Middle < short.Tight {
				t.Errorf("%v in %v: %+v", a, b, short)
			}
			if short.Tight != long.Tight || short.Middle != long.Middle || short.Loose != long.Loose {
				t.Errorf("%v in %v: %+v, %+v", a, b, short, long)
			}
			if short.Outcome == Binds && long.Outcome < Binds {
				t.Errorf("%v in %v: %v over 2 mm, %v over 20 mm", a, b, short.Outcome, long.Outcome)
			}
			if !(short.Overlap >= 0 && short.Overlap <= 1+1e-9) || math.IsNaN(short.Tight) {
				t.Errorf("%v in %v: %+v", a, b, short)
			}
		}
	}
}

func TestMateRefuses(t *testing.T) {
	_, err := NewPair(Thread{}, mustFind(t, "M8"))
	wantError(t, err, units.ErrDomain, "no thread")
	j, _ := NewPair(mustFind(t, "M8"), mustFind(t, "M8"))
	_, err = j.Mate(0)
	wantError(t, err, units.ErrDomain, "engaged length 0 mm")
	_, err = j.Mate(units.Length(math.NaN()))
	wantError(t, err, units.ErrDomain, "engaged length")
	_, err = Pair{}.Mate(1)
	wantError(t, err, units.ErrDomain, "no thread")
	if j.Bolt() != mustFind(t, "M8") || j.Nut() != mustFind(t, "M8") {
		t.Errorf("%v in %v", j.Bolt(), j.Nut())
	}
}

// Every value of the small types has words of its own.
func TestWordsOfTheSmallTypes(t *testing.T) {
	seen := map[string]bool{}
	add := func(s string) {
		if s == "" || seen[s] {
			t.Errorf("%q twice or empty", s)
		}
		seen[s] = true
	}
	for v := RunsFree; v <= WrongHand+1; v++ {
		add(v.String())
	}
	for h := Wedging; h <= CrossStart+1; h++ {
		add(h.String())
	}
	for k := SteppedStud; k <= SolidBush+1; k++ {
		add(k.String())
	}
	for m := ByPitch; m <= ByAngle+1; m++ {
		add(m.String())
	}
	for o := AnyOrigin; o <= Continental+1; o++ {
		add(o.String())
	}
	for f := BasicThread; f <= AmericanThread+1; f++ {
		add(f.String())
	}
	for f := CloseClearance; f <= FreeClearance+1; f++ {
		add(f.String())
	}
	for h := RightHand; h <= LeftHand+1; h++ {
		add(h.String())
	}
	for s := TaperNotLooked; s <= Tapered; s++ {
		add(s.String())
	}
	for s := MetricDrill; s <= OwnDrill+1; s++ {
		add(s.String())
	}
}
