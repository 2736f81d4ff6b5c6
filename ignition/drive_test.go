package ignition

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const deg = units.Degree

// refused fails t unless err is ErrDomain and says text.
func refused(t *testing.T, name string, err error, text string) {
	t.Helper()
	if !errors.Is(err, units.ErrDomain) {
		t.Errorf("%s: got %v, want ErrDomain", name, err)
		return
	}
	if !strings.Contains(err.Error(), text) {
		t.Errorf("%s: got %q, want %q in it", name, err, text)
	}
}

// nearly is figures.Near for the tests that draw their own values.
func nearly(t rapid.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.12g, want %.12g within %.3g", what, got, want, tol)
	}
}

func TestHalfSpeedMagneto(t *testing.T) {
	const awo = "AWO 425 motorcycle operating instructions (1950s), section 5.21"
	figures.Figure{Printed: "19", Source: awo}.Check(t, HalfSpeed().Shaft(38*deg).Degrees())
	figures.Figure{Printed: "5", Source: awo}.Check(t, HalfSpeed().Shaft(10*deg).Degrees())
	figures.Near(t, "and back", HalfSpeed().Crank(19*deg).Degrees(), 38, 1e-13)
}

func TestImpulseCoupling(t *testing.T) {
	const forum = "note on magneto impulse couplings, yesterdaystractors.com, Farmall thread 467601"
	d := HalfSpeed()
	figures.Figure{Printed: "28", Source: forum}.Check(t, d.Crank(14*deg).Degrees())
	figures.Near(t, "trips at top dead centre", d.StartingAdvance(28*deg, 14*deg).Degrees(), 0, 1e-13)
	figures.Near(t, "later than top dead centre", d.StartingAdvance(20*deg, 14*deg).Degrees(), -8, 1e-13)
	figures.Near(t, "lag back", d.ImpulseLag(28*deg, 0).Degrees(), 14, 1e-13)
	figures.Near(t, "at crank speed it counts once", CrankSpeed().StartingAdvance(28*deg, 14*deg).Degrees(), 14, 1e-13)
}

func TestDriveRatios(t *testing.T) {
	for _, tc := range []struct {
		name  string
		d     Drive
		ratio float64
	}{
		{"crank speed", CrankSpeed(), 1},
		{"zero drive", Drive{}, 1},
		{"half speed", HalfSpeed(), 2},
		{"by turns", must(NewDrive(2, 1))(t), 2},
		{"six cylinders: three sparks in two turns, two in one of the magneto", must(NewDrive(2, 3))(t), 2. / 3},
		{"15 teeth on the crank, 30 on the shaft", must(NewToothedDrive(15, 30))(t), 2},
		{"as many on both", must(NewToothedDrive(17, 17))(t), 1},
	} {
		figures.Near(t, tc.name, tc.d.Ratio(), tc.ratio, 1e-15)
		figures.Near(t, tc.name+": there and back", tc.d.Shaft(tc.d.Crank(33*deg)).Degrees(), 33, 1e-13)
		figures.Near(t, tc.name+": speed", tc.d.ShaftSpeed(900*units.RevolutionPerMinute).RevolutionsPerMinute(), 900/tc.ratio, 1e-10)
	}
}

func TestDriveRefusals(t *testing.T) {
	for _, tc := range []struct{ crank, shaft float64 }{{0, 1}, {1, 0}, {-2, -1}, {math.NaN(), 1}, {math.Inf(1), 1}, {1, math.Inf(1)}} {
		_, err := NewDrive(tc.crank, tc.shaft)
		refused(t, "turns", err, "want more than 0 of both")
	}
	_, err := NewToothedDrive(0, 20)
	refused(t, "teeth", err, "wheels of 0 and 20 teeth: want 1 tooth or more on both")
}

func TestReachWithTeeth(t *testing.T) {
	for _, tc := range []struct {
		name         string
		drive        Drive
		first, other int
		shift        units.Angle
		below, above Step
		text         string
	}{
		{"between two teeth", CrankSpeed(), 20, 1, 25 * deg, Step{18 * deg, 1, 0}, Step{36 * deg, 2, 0}, "2 teeth forward: 36.00° earlier"},
		{"the tooth itself", CrankSpeed(), 20, 1, 36 * deg, Step{36 * deg, 2, 0}, Step{36 * deg, 2, 0}, "2 teeth forward: 36.00° earlier"},
		{"back", CrankSpeed(), 20, 1, -25 * deg, Step{-36 * deg, -2, 0}, Step{-18 * deg, -1, 0}, "1 tooth back: 18.00° later"},
		{"nothing", CrankSpeed(), 20, 1, 0, Step{0, 0, 0}, Step{0, 0, 0}, "as it is: no change"},
		{"half speed: a tooth is twice as much", HalfSpeed(), 30, 1, 10 * deg, Step{0, 0, 0}, Step{24 * deg, 1, 0}, "1 tooth forward: 24.00° earlier"},
		{"vernier", CrankSpeed(), 19, 20, 360. / 380 * deg, Step{360. / 380 * deg, 1, -1}, Step{360. / 380 * deg, 1, -1}, "1 tooth forward on the first row and 1 tooth back on the other: 0.95° earlier"},
		{"vernier, five steps", CrankSpeed(), 19, 20, 5.1 * 360. / 380 * deg, Step{5 * 360. / 380 * deg, 5, -5}, Step{6 * 360. / 380 * deg, 6, -6}, "6 teeth forward on the first row"},
	} {
		w := must(NewVernier(tc.drive, tc.first, tc.other))(t)
		below, above, err := w.Reach(tc.shift)
		if err != nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		for _, pair := range [][2]Step{{below, tc.below}, {above, tc.above}} {
			figures.Near(t, tc.name, pair[0].Shift.Degrees(), pair[1].Shift.Degrees(), 1e-12)
			if pair[0].Teeth != pair[1].Teeth || pair[0].Other != pair[1].Other {
				t.Errorf("%s: got %+v, want %+v", tc.name, pair[0], pair[1])
			}
		}
		if !strings.HasPrefix(above.String(), tc.text) {
			t.Errorf("%s: got %q, want %q", tc.name, above, tc.text)
		}
	}
}

// A tooth of the chain is the same at the crank whichever wheel it is counted on.
func TestChainToothCountedOnEitherWheel(t *testing.T) {
	for crank := 9; crank < 30; crank++ {
		for shaft := 9; shaft < 60; shaft++ {
			w := must(NewToothed(must(NewToothedDrive(crank, shaft))(t), shaft))(t)
			figures.Near(t, "one tooth", w.Step().Degrees(), 360/float64(crank), 1e-12)
		}
	}
}

// What the teeth say and what the shift says are the same angle, and the wanted
// shift lies between the two.
func TestReachBracketsAndAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first, other := rapid.IntRange(1, 60).Draw(t, "first"), rapid.IntRange(1, 60).Draw(t, "other")
		w, err := NewVernier(HalfSpeed(), first, other)
		if err != nil {
			t.Fatal(err)
		}
		want := units.Angle(rapid.Float64Range(-700, 700).Draw(t, "shift")) * deg
		below, above, err := w.Reach(want)
		if err != nil {
			t.Fatal(err)
		}
		hair := 2e-9 * w.Step() // what counts as rounding
		if below.Shift > want+hair || above.Shift < want-hair || above.Shift-below.Shift > w.Step()*(1+1e-9) {
			t.Errorf("%v is not between %+v and %+v", want, below, above)
		}
		for _, s := range []Step{below, above} {
			sum := 720 * (float64(s.Teeth)/float64(first) + float64(s.Other)/float64(other))
			if math.Abs(sum-s.Shift.Degrees()) > 1e-9 {
				t.Errorf("%+v: the teeth make %v°", s, sum)
			}
		}
	})
}

func TestTimingsWithTeeth(t *testing.T) {
	w := must(NewToothed(CrankSpeed(), 20))(t)
	got := must(w.Timings(19*deg, 0, 60*deg))(t)
	want := []float64{1, 19, 37, 55}
	if len(got) != len(want) {
		t.Fatalf("got %v, want advances of %v", got, want)
	}
	for i, s := range got {
		figures.Near(t, "advance", 19+s.Shift.Degrees(), want[i], 1e-12)
		if s.Teeth != i-1 {
			t.Errorf("setting %d: %d teeth", i, s.Teeth)
		}
	}
	if got := must(w.Timings(19*deg, 20*deg, 30*deg))(t); len(got) != 0 {
		t.Errorf("none lies between 20° and 30°, got %v", got)
	}
	if got := must(w.Timings(0, -180*deg, 180*deg))(t); len(got) != 21 {
		t.Errorf("a whole turn with both ends: got %d settings, want 21", len(got))
	}
}

func TestTeethRefusals(t *testing.T) {
	_, err := NewToothed(CrankSpeed(), 0)
	refused(t, "none", err, "0 places in a turn: want from 1 to 1000")
	_, err = NewVernier(CrankSpeed(), 19, 1001)
	refused(t, "too many", err, "1001 places in a turn")
	w := must(NewToothed(CrankSpeed(), 20))(t)
	_, _, err = w.Reach(361 * deg)
	refused(t, "too far", err, "change of 361°: want 360° at most")
	_, _, err = w.Reach(units.Angle(math.NaN()))
	refused(t, "NaN", err, "want 360° at most")
	_, err = w.Timings(0, 10*deg, 5*deg)
	refused(t, "empty", err, "advance from 10° to 5°")
	_, err = w.Timings(0, -200*deg, 200*deg)
	refused(t, "too wide", err, "want a range of 360° at most")
	_, err = w.Timings(units.Angle(math.NaN()), 0, 1)
	refused(t, "NaN present", err, "near the present")
}

func TestPlateAgainstFiftyDigits(t *testing.T) {
	const src = "computed with 50 digits: back plate"
	crank := must(NewPlate(38*mm, CrankSpeed()))(t)
	figures.Reference{Digits: "1.5077836713969", Source: src}.Check(t, must(crank.Range(6*mm, 5*mm))(t).Degrees())
	half := must(NewPlate(30*mm, HalfSpeed()))(t)
	figures.Reference{Digits: "3.81971863420549", Source: src}.Check(t, must(half.Change(1*mm, AgainstRotation))(t).Degrees())
	figures.Reference{Digits: "-3.81971863420549", Source: src}.Check(t, must(half.Change(1*mm, WithRotation))(t).Degrees())
	// The chord of a small travel is its arc: 2 asin(c/2R) = c/R (1 + c²/24R²).
	chord := must(crank.RangeOfChord(6*mm, 5*mm))(t)
	figures.Near(t, "chord form", chord.Degrees()/1.5077836713969, 1+1./(24*38*38), 1e-8)
}

func TestPlateThereAndBack(t *testing.T) {
	p := must(NewPlate(38*mm, HalfSpeed()))(t)
	for _, want := range []units.Angle{8 * deg, -8 * deg, 0} {
		travel, way := p.Travel(want)
		got := must(p.Change(travel, way))(t)
		figures.Near(t, "change", got.Degrees(), want.Degrees(), 1e-13)
		if travel < 0 || way == AgainstRotation != (want >= 0) {
			t.Errorf("%v: travel %v %v", want, travel, way)
		}
	}
	// Straight across the whole circle is half a turn of the plate.
	figures.Near(t, "diameter", must(p.AngleOfChord(76*mm))(t).Degrees(), 360, 1e-10)
}

func TestPlateRefusals(t *testing.T) {
	_, err := NewPlate(0, CrankSpeed())
	refused(t, "no radius", err, "radius of the slots 0 mm: want more than 0 mm")
	p := must(NewPlate(38*mm, CrankSpeed()))(t)
	_, err = p.Change(-1*mm, WithRotation)
	refused(t, "negative travel", err, "travel of the plate -1 mm: want 0 mm or more")
	_, err = p.Change(1*mm, 0)
	refused(t, "no way", err, "way not stated: want AgainstRotation or WithRotation")
	_, err = p.Range(4*mm, 5*mm)
	refused(t, "bolt too thick", err, "slot 4 mm with a bolt 5 mm thick")
	_, err = p.RangeOfChord(units.Length(math.NaN()), 5*mm)
	refused(t, "NaN", err, "want a slot as long as the bolt or longer")
	_, err = p.AngleOfChord(77 * mm)
	refused(t, "too long", err, "chord 77 mm: want 76 mm at most")
	_, err = p.AngleOfChord(-1 * mm)
	refused(t, "negative chord", err, "chord -1 mm: want 0 mm or more")
	for _, tc := range []struct{ got, want string }{
		{AgainstRotation.String(), "against the shaft"}, {WithRotation.String(), "with the shaft"}, {Shift(0).String(), "way not stated"},
	} {
		if tc.got != tc.want {
			t.Errorf("got %q, want %q", tc.got, tc.want)
		}
	}
}

func TestDriveAllocatesNothing(t *testing.T) {
	w := must(NewVernier(HalfSpeed(), 19, 20))(t)
	p := must(NewPlate(38*mm, HalfSpeed()))(t)
	var a units.Angle
	if n := testing.AllocsPerRun(100, func() {
		lo, hi, _ := w.Reach(7 * deg)
		c, _ := p.Change(1*mm, WithRotation)
		a += lo.Shift + hi.Shift + c + HalfSpeed().StartingAdvance(28*deg, 14*deg)
	}); n != 0 {
		t.Errorf("drives allocate %v times", n)
	}
}
