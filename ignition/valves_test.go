package ignition

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/geometry"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// On a rim of 360 mm girth with top dead centre at 50 the marks read as degrees.
func TestValveTimingFromMarks(t *testing.T) {
	rim := must(NewRimOfGirth(360 * mm))(t)
	for _, tc := range []struct {
		f     Figures
		marks ValveMarks
	}{
		{Rising, ValveMarks{Lift: 1 * mm, InletOpens: 40 * mm, InletCloses: 280 * mm, ExhaustOpens: 180 * mm, ExhaustCloses: 65 * mm}},
		{Falling, ValveMarks{Lift: 1 * mm, InletOpens: 60 * mm, InletCloses: 180 * mm, ExhaustOpens: 280 * mm, ExhaustCloses: 35 * mm}},
	} {
		s := must(NewScale(rim, 50*mm, tc.f))(t)
		v := must(s.ValveTiming(tc.marks))(t)
		for _, e := range []struct {
			name      string
			got, want float64
		}{
			{"inlet opens before top", v.InletOpens.Degrees(), 10},
			{"inlet closes after bottom", v.InletCloses.Degrees(), 50},
			{"exhaust opens before bottom", v.ExhaustOpens.Degrees(), 50},
			{"exhaust closes after top", v.ExhaustCloses.Degrees(), 15},
			{"inlet open", v.InletDuration().Degrees(), 240},
			{"exhaust open", v.ExhaustDuration().Degrees(), 245},
			{"overlap", v.Overlap().Degrees(), 25},
			{"inlet peak", v.InletPeak().Degrees(), 110},
			{"exhaust peak", v.ExhaustPeak().Degrees(), 107.5},
			{"lobe separation, of the cam", v.LobeSeparation().Degrees(), 108.75},
		} {
			figures.Near(t, tc.f.String()+": "+e.name, e.got, e.want, 1e-11)
		}
		if v.Lift != 1*mm {
			t.Errorf("lift %v", v.Lift)
		}
	}
}

func TestValveTimingLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) units.Angle { return units.Angle(rapid.Float64Range(-20, 80).Draw(t, name)) * deg }
		v, err := NewValveTiming(ValveTiming{InletOpens: draw("io"), InletCloses: draw("ic"), ExhaustOpens: draw("eo"), ExhaustCloses: draw("ec")})
		if err != nil {
			t.Fatal(err)
		}
		by := units.Angle(rapid.Float64Range(-20, 20).Draw(t, "earlier")) * deg
		w, err := v.Shifted(by)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range []struct {
			name      string
			got, want units.Angle
		}{
			{"setting the cam over keeps the inlet's duration", w.InletDuration(), v.InletDuration()},
			{"and the exhaust's", w.ExhaustDuration(), v.ExhaustDuration()},
			{"and the overlap", w.Overlap(), v.Overlap()},
			{"and the lobes", w.LobeSeparation(), v.LobeSeparation()},
			{"and brings the peak forward", w.InletPeak(), v.InletPeak() - by},
			{"on both valves", w.ExhaustPeak(), v.ExhaustPeak() + by},
			{"durations of both less a whole turn are overlap and the gap at bottom", v.InletDuration() + v.ExhaustDuration() - units.Turn, v.Overlap() + v.InletCloses + v.ExhaustOpens},
		} {
			nearly(t, e.name, float64(e.got), float64(e.want), 1e-13)
		}
	})
}

func TestRatioFromInletClosing(t *testing.T) {
	crank := crankOfMM(t, 80, 160)
	cylinder := must(geometry.NewCylinder(70*mm, crank))(t)
	clearance := must(cylinder.ClearanceForRatio(6))(t)
	at := func(closes units.Angle) geometry.Compression {
		v := must(NewValveTiming(ValveTiming{InletCloses: closes, ExhaustOpens: 50 * deg}))(t)
		return must(v.Compression(cylinder, clearance))(t)
	}
	c := at(0)
	figures.Near(t, "closing at bottom: all of the stroke", float64(c.Trapped), 6, 1e-12)
	c = at(50 * deg)
	figures.Near(t, "geometric", float64(c.Geometric), 6, 1e-12)
	// r = 40, l = 160, 130° from the top: x = 40(1 − cos 130°) + 160 − √(160² − (40 sin 130°)²).
	rad := 130 * math.Pi / 180
	x := 40*(1-math.Cos(rad)) + 160 - math.Sqrt(160*160-math.Pow(40*math.Sin(rad), 2))
	figures.Near(t, "trapped", float64(c.Trapped), 1+5*x/80, 1e-12)
	if !(at(70*deg).Trapped < c.Trapped) {
		t.Error("a later closing traps less")
	}
	v := must(NewValveTiming(ValveTiming{InletCloses: 180*deg - 1e-9, ExhaustOpens: 50 * deg}))(t)
	_, err := v.Compression(cylinder, 0)
	refused(t, "no clearance", err, "clearance 0 cm³")
}

// With the cylinder to one side the way up is not the mirror of the way down.
func TestInletClosesOnTheWayUp(t *testing.T) {
	crank := must(crankOfMM(t, 80, 160).WithOffset(10 * mm))(t)
	v := must(NewValveTiming(ValveTiming{InletCloses: 50 * deg, ExhaustOpens: 50 * deg}))(t)
	x := v.ClosingDrop(crank)
	before, after, err := crank.AnglesAtDrop(x)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "before the top", before.Degrees(), 130, 1e-10)
	if math.Abs(after.Degrees()-130) < 1 {
		t.Errorf("the offset makes no difference: %v after", after)
	}
}

func TestValveRefusals(t *testing.T) {
	for _, tc := range []struct {
		name string
		v    ValveTiming
		text string
	}{
		{"half a turn", ValveTiming{InletOpens: 180 * deg}, "inlet opens before top dead centre: 180°: want less than 180° either way"},
		{"NaN", ValveTiming{ExhaustCloses: units.Angle(math.NaN())}, "exhaust closes after top dead centre"},
		{"closes first", ValveTiming{InletOpens: -100 * deg, InletCloses: -90 * deg}, "inlet open over -10°: want it to close after it opens"},
		{"exhaust closes first", ValveTiming{ExhaustOpens: -100 * deg, ExhaustCloses: -80 * deg}, "exhaust open over 0°"},
		{"negative lift", ValveTiming{Lift: -1 * mm}, "lift -1 mm: want 0 mm or more"},
	} {
		_, err := NewValveTiming(tc.v)
		refused(t, tc.name, err, tc.text)
	}
}
