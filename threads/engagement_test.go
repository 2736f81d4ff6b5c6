package threads

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

var tornHole = WornHole{Bore: 0.344 * units.Inch, Deep: 0.80 * units.Inch, ToEdge: 0.25 * units.Inch}

// A 3/8 BSF hole that measures 0.344 in across its crests has 48 % left.
func TestEngagementLeftInATornHole(t *testing.T) {
	th := mustFind(t, "3/8 BSF")
	e, err := th.Engagement(tornHole.Bore, BasicThread)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "of a new stud", e, 0.031*20/(2*0.640327), 1e-6)
	e, err = th.EngagementWith(0.3712*units.Inch, tornHole.Bore, BasicThread)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "of the stud as it is", e, 0.0272*20/(2*0.640327), 1e-6)
	e, err = th.EngagementWith(0.34*units.Inch, tornHole.Bore, BasicThread)
	if err != nil || e != 0 {
		t.Errorf("a stud that passes through: %v, %v", e, err)
	}
}

// The bolt shears at the bore, so a worn bore costs it: half of its thread is
// pitch/2 wide at the effective diameter and less above it.
func TestJointInATornHole(t *testing.T) {
	th := mustFind(t, "3/8 BSF")
	stud := 0.3712 * units.Inch
	worn, err := tornHole.Joint(th, stud)
	if err != nil {
		t.Fatal(err)
	}
	sound, err := WornHole{Bore: th.Minor()}.Joint(th, stud)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "bolt's thread, mm²", worn.BoltShearArea(tornHole.Deep).SquareMillimetres(),
		math.Pi*8.7376*20.32/1.27*(0.635+0.5205670*(8.7118-8.7376)), 0.1)
	if !(worn.BoltShearArea(tornHole.Deep) < sound.BoltShearArea(tornHole.Deep)) {
		t.Error("a worn bore costs the stud nothing")
	}
	loads, err := worn.Loads(tornHole.Deep, 400*units.Megapascal, 160*units.Megapascal)
	if err != nil {
		t.Fatal(err)
	}
	if _, what := loads.Least(); !(loads.NutStrips > 0) || what == "" {
		t.Errorf("%+v", loads)
	}
	_, err = tornHole.Joint(th, 0.34*units.Inch)
	wantError(t, err, units.ErrDomain, "stud 8.636 mm", "hole of 8.7376 mm")
	_, err = WornHole{}.Joint(th, stud)
	wantError(t, err, units.ErrDomain, "bore 0 mm")
}

func TestEdgeWall(t *testing.T) {
	// 0.25 in from the bore of 0.344; a 7/16 thread reaches 0.04675 further.
	figures.Near(t, "in", EdgeWall(0.25*units.Inch, 0.344*units.Inch, 0.4375*units.Inch).Inches(), 0.20325, 1e-12)
	if !(EdgeWall(1*units.Millimetre, 8*units.Millimetre, 12*units.Millimetre) < 0) {
		t.Error("a thread that breaks through leaves a wall")
	}
}

func TestRepairs(t *testing.T) {
	all, err := Repairs(mustFind(t, "3/8 BSF"), tornHole)
	if err != nil {
		t.Fatal(err)
	}
	type line struct {
		kind   RepairKind
		thread string
	}
	var got []line
	for _, r := range all {
		got = append(got, line{r.Kind, r.Thread.Designation()})
		if !r.EdgeKnown {
			t.Errorf("%v: edge not known", r)
		}
		figures.Near(t, r.String()+": edge, mm", r.ToEdge.Millimetres(),
			6.35-(r.Thread.Major().Millimetres()-8.7376)/2, 1e-9)
		if !(r.Sound > 0 && r.Sound <= 1) {
			t.Errorf("%v: %.2f sound", r, r.Sound)
		}
	}
	insert, _ := InsertThread(mustFind(t, "3/8 BSF"))
	want := []line{
		{SteppedStud, "7/16-18 BSF"},
		{WireInsert, insert.Designation()},
		{SteppedStud, "1/2-16 BSF"},
		{SteppedStud, "9/16-16 BSF"},
		{SolidBush, "9/16-16 BSF"},
	}
	if len(got) != len(want) {
		t.Fatalf("got %v", got)
	}
	for i := range want {
		if got[i] != want[i] && got[i].kind != SolidBush {
			t.Errorf("repair %d is %v, want %v", i, got[i], want[i])
		}
	}
	for _, r := range all {
		if r.Kind == SolidBush {
			b, err := NewBush(r.Thread, mustFind(t, "3/8 BSF"))
			if err != nil || b.Strength() < 1 {
				t.Errorf("%v: strength %.2f, %v", r, b.Strength(), err)
			}
		}
	}
}

func TestRepairsWithoutTheEdge(t *testing.T) {
	all, err := Repairs(mustFind(t, "M8"), WornHole{Bore: 7.2 * units.Millimetre})
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range all {
		if r.EdgeKnown || r.ToEdge != 0 {
			t.Errorf("%v knows an edge", r)
		}
		if r.Thread.Major() <= 8*units.Millimetre {
			t.Errorf("%v is no larger", r)
		}
	}
	special, _ := New(ISOForm, 8.3*units.Millimetre, 1.25*units.Millimetre)
	all, err = Repairs(special, WornHole{Bore: 7.5 * units.Millimetre})
	if err != nil || len(all) != 1 || all[0].Kind != WireInsert {
		t.Errorf("a special thread: %v, %v", all, err)
	}
}

// The thread for a wire insert of ISO form.
func TestInsertThread(t *testing.T) {
	const source = "DIN 8140-2, receiving thread EG M8 (from memory)"
	th, err := InsertThread(mustFind(t, "M8"))
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "9.624", Source: source}.Check(t, th.Major().Millimetres())
	figures.Figure{Printed: "8.812", Source: source}.Check(t, th.Effective().Millimetres())
	figures.Figure{Printed: "8.271", Source: source}.Check(t, th.Minor().Millimetres())
	_, err = InsertThread(mustFind(t, "R 1/4"))
	wantError(t, err, units.ErrDomain, "R 1/4", "parallel")
	_, err = InsertThread(Thread{})
	wantError(t, err, units.ErrDomain, "no thread")
}

func TestWornHoleRefuses(t *testing.T) {
	th := mustFind(t, "3/8 BSF")
	for _, tc := range []struct {
		hole WornHole
		word string
	}{
		{WornHole{}, "bore 0 mm"},
		{WornHole{Bore: units.Length(math.NaN())}, "bore"},
		{WornHole{Bore: 1, Deep: -1}, "length of thread"},
		{WornHole{Bore: 1, ToEdge: units.Length(math.Inf(1))}, "metal to the edge"},
	} {
		_, err := Repairs(th, tc.hole)
		wantError(t, err, units.ErrDomain, tc.word)
	}
	_, err := Repairs(Thread{}, tornHole)
	wantError(t, err, units.ErrDomain, "no thread")
	_, err = th.EngagementWith(0, 1, BasicThread)
	wantError(t, err, units.ErrDomain, "stud 0 mm")
	_, err = th.EngagementWith(1, 0, BasicThread)
	wantError(t, err, units.ErrDomain, "bore 0 mm")
}
