package ignition

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/geometry"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func crankOfMM(t testing.TB, stroke, rod float64) geometry.Crank {
	t.Helper()
	return must(geometry.NewCrank(units.Length(stroke)*mm, units.Length(rod)*mm))(t)
}

func TestPeriodPairs(t *testing.T) {
	const (
		awo   = "AWO 425 motorcycle operating instructions (1950s), section 5.21; stroke 68 mm from memory, rod 135 mm fitted to both pairs"
		sachs = "Fichtel & Sachs 505 repair instructions, ignition setting page; stroke 42 mm from memory, rod 85 mm assumed (76 to 90 mm fit)"
	)
	c := crankOfMM(t, 68, 135)
	figures.Figure{Printed: "0.65", Source: awo}.Check(t, c.Drop(-10*deg).Millimetres())
	figures.Figure{Printed: "8.8", Source: awo}.Check(t, c.Drop(-38*deg).Millimetres())
	c = crankOfMM(t, 42, 85)
	figures.Figure{Printed: "25", Source: sachs}.Check(t, must(AdvanceOfDrop(c, 2.5*mm))(t).Degrees())
	figures.Figure{Printed: "28", Source: sachs}.Check(t, must(AdvanceOfDrop(c, 3*mm))(t).Degrees())

	const gauge = "Fichtel & Sachs 505 repair instructions, ignition setting page: gauge at 45°"
	b := Bench{Rim: must(NewRim(200 * mm))(t), Lean: 45 * deg}
	for _, tc := range []struct {
		drop    units.Length
		printed string
	}{{2.5 * mm, "3.5"}, {3 * mm, "4.2"}} {
		f := must(b.Forms(c, must(AdvanceOfDrop(c, tc.drop))(t)))(t)
		figures.Figure{Printed: tc.printed, Source: gauge}.Check(t, f.Gauge.Millimetres())
	}
}

func TestAdvanceAgainstFiftyDigits(t *testing.T) {
	const src = "computed with 50 digits: drop, share of the stroke and angle"
	ref := func(digits string, got float64) {
		t.Helper()
		figures.Reference{Digits: digits, Source: src}.Check(t, got)
	}
	b := Bench{Rim: must(NewRim(450 * mm))(t)}
	long := crankOfMM(t, 112, 190.5)
	f := must(b.Forms(long, 30*deg))(t)
	ref("9.57155552595872", f.Drop.Millimetres())
	ref("8.546031719606", f.Share.Percent())
	ref("32.4256640367809", must(AdvanceOfDrop(long, 7./16*units.Inch))(t).Degrees())
	inch := must(geometry.NewCrank(3.5*units.Inch, 7*units.Inch))(t)
	ref("27.8156217566067", must(AdvanceOfDrop(inch, 0.25*units.Inch))(t).Degrees())
	c := crankOfMM(t, 80, 160)
	ref("33.1229402077438", must(AdvanceOfShare(c, 10*units.Percent))(t).Degrees())
	ref("12.6", (420 * rpm).Angle(5e6).Degrees())
	ref("0.0276037615785902", must(c.AnglePer(0.01*mm, 25*deg))(t).Degrees())
	ref("0.32838482138043", must(c.AnglePer(0.01*mm, 2*deg))(t).Degrees())
	ref("1.14594543369699", must(c.DwellAtTop(0.01*mm))(t).Degrees()/2)
	lean := Bench{Rim: b.Rim, Lean: 30 * deg}
	angle := must(lean.AdvanceOfGauge(c, 5*mm))(t)
	ref("4.33012701892219", c.Drop(-angle).Millimetres())
	// To the nanosecond that a time.Duration holds: 5.64102564… ms.
	figures.Figure{Printed: "5.641026", Source: src + ", to the nanosecond"}.Check(t, (650*rpm).Time(22*deg).Seconds()*1e3)
	figures.Figure{Printed: "3.333", Source: "Rajput, A Textbook of Internal Combustion Engines, Example 12.2, p. 421: 30° at 1500 rev/min on the way to its answer, recomputed"}.Check(t, (1500*rpm).Time(30*deg).Seconds()*1e3)
}

// One advance comes back from every one of its forms.
func TestFormsGoBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		stroke := units.Length(rapid.Float64Range(20, 300).Draw(t, "stroke")) * mm
		crank, err := geometry.NewCrank(stroke, stroke*units.Length(rapid.Float64Range(1.5, 3).Draw(t, "rod in strokes")))
		if err != nil {
			t.Fatal(err)
		}
		if crank, err = crank.WithOffset(stroke * units.Length(rapid.Float64Range(-0.1, 0.1).Draw(t, "offset in strokes"))); err != nil {
			t.Fatal(err)
		}
		rim, err := NewRim(stroke * 4)
		if err != nil {
			t.Fatal(err)
		}
		b := Bench{Rim: rim, Drive: HalfSpeed(), Lean: units.Angle(rapid.Float64Range(0, 60).Draw(t, "lean")) * deg, Speed: 900 * rpm}
		want := units.Angle(rapid.Float64Range(0.01, 120).Draw(t, "advance")) * deg
		f, err := b.Forms(crank, want)
		if err != nil {
			t.Fatal(err)
		}
		same := func(what string, got units.Angle, err error) {
			if err != nil {
				t.Errorf("%s: %v", what, err)
			}
			nearly(t, what, got.Degrees(), want.Degrees(), 1e-9)
		}
		a, err := AdvanceOfDrop(crank, f.Drop)
		same("drop", a, err)
		a, err = AdvanceOfShare(crank, f.Share)
		same("share", a, err)
		a, err = b.AdvanceOfGauge(crank, f.Gauge)
		same("gauge", a, err)
		same("arc", rim.AngleOfArc(f.Arc), nil)
		a, err = rim.AngleOfChord(f.Chord)
		same("chord", a, err)
		same("shaft", b.Drive.Crank(f.Shaft), nil)
		nearly(t, "time", b.Speed.Angle(f.Time).Degrees(), want.Degrees(), 5.4e-6) // half a nanosecond
		card := f.Card()
		nearly(t, "card", float64(card.Length()+card.Rest), float64(f.Drop), 1e-15)
		if math.Abs(card.Rest.Inches()) > 1./128+1e-12 {
			t.Errorf("card %v is further off than half a 64th", card)
		}
	})
}

func TestFormsOfTheDemonstrationEngine(t *testing.T) {
	// Invented: stroke 76.15 mm, rod 146.02 mm, girth 1118.33 mm, hole leaning 12°.
	c := crankOfMM(t, 76.15, 146.02)
	b := Bench{Rim: must(NewRimOfGirth(1118.33 * mm))(t), Lean: 12 * deg, Speed: 900 * rpm}
	const byHand = "worked by hand for the invented demonstration engine"
	figures.Figure{Printed: "3.106", Source: byHand + ": girth 1118.33 mm over 360"}.Check(t, b.Rim.PerDegree().Millimetres())
	angle := must(AdvanceOfDrop(c, 3./16*units.Inch))(t)
	f := must(b.Forms(c, angle))(t)
	if got := f.Card().String(); got != "3/16 in" {
		t.Errorf("card %q, want 3/16 in", got)
	}
	figures.Figure{Printed: "4.87", Source: byHand + ": 4.7625 mm over cos 12°"}.Check(t, f.Gauge.Millimetres())
	figures.Figure{Printed: "6.254", Source: byHand + ": 4.7625 mm of 76.15 mm"}.Check(t, f.Share.Percent())
	// Law of cosines: y = r + l − x = 179.3325 mm; cos θ = (r² + y² − l²)/2ry.
	r, l, y := 76.15/2, 146.02, 76.15/2+146.02-4.7625
	figures.Near(t, "angle", math.Cos(float64(angle)), (r*r+y*y-l*l)/(2*r*y), 1e-12)
	if want := "ahead of the top dead centre mark"; !strings.Contains(f.String(), want) {
		t.Errorf("got %q, want %q in it", f, want)
	}
	late := must(b.Forms(c, -5*deg))(t)
	if want := "5.0° after top dead centre"; !strings.HasPrefix(late.String(), want) || !strings.HasSuffix(late.String(), "behind the top dead centre mark") {
		t.Errorf("got %q, want %q first and behind at the end", late, want)
	}
	if late.Time >= 0 || late.Shaft >= 0 || late.Drop <= 0 {
		t.Errorf("after top dead centre: %+v", late)
	}
	b.Speed = 0
	if f := must(b.Forms(c, angle))(t); f.Time != 0 {
		t.Errorf("no speed, and a time of %v", f.Time)
	}
}

// With an offset cylinder the way up and the way down differ.
func TestFormsWithOffset(t *testing.T) {
	c := must(crankOfMM(t, 76, 146).WithOffset(8 * mm))(t)
	b := Bench{Rim: must(NewRim(300 * mm))(t)}
	before, after, err := c.AnglesAtDrop(5 * mm)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "before", must(b.Forms(c, before))(t).Drop.Millimetres(), 5, 1e-12)
	figures.Near(t, "after", must(b.Forms(c, -after))(t).Drop.Millimetres(), 5, 1e-12)
	if math.Abs(float64(before-after)) < 1e-3 {
		t.Error("the offset makes no difference")
	}
}

// BSA M20: 7/16 in on a stroke of 112 mm is 32.5° to 33.4° for rods of 3.5 to
// 4.5 throws.
func TestRodUnknown(t *testing.T) {
	s := must(geometry.NewStrokeOnly(112*mm, geometry.UsualRods()))(t)
	b := Bench{Rim: must(NewRim(400 * mm))(t), Lean: 20 * deg}
	f := must(b.SpreadOfDrop(s, 7./16*units.Inch))(t)
	const src = "7/16 in on 112 mm, rods of 3.5 and 4.5 throws, law of cosines by hand"
	figures.Figure{Printed: "32.5", Source: src}.Check(t, f.Least.Crank.Degrees())
	figures.Figure{Printed: "33.4", Source: src}.Check(t, f.Most.Crank.Degrees())
	if f.Least.Drop != f.Most.Drop || f.Least.Gauge != f.Most.Gauge || !(f.Least.Arc < f.Middle.Arc && f.Middle.Arc < f.Most.Arc) {
		t.Errorf("got %+v", f)
	}
	a := must(b.SpreadOfAdvance(s, 33*deg))(t)
	if !(a.Least.Drop < a.Middle.Drop && a.Middle.Drop < a.Most.Drop) || a.Least.Arc != a.Most.Arc {
		t.Errorf("got %+v", a)
	}
	_, err := b.SpreadOfDrop(s, 120*mm)
	refused(t, "too low", err, "drop 120 mm: want 0 mm to 112 mm, the stroke")
	_, err = b.SpreadOfAdvance(s, 200*deg)
	refused(t, "too far", err, "advance 200°")
	for _, bad := range []Bench{{}, {Rim: b.Rim, Lean: 90 * deg}} {
		_, err = bad.SpreadOfDrop(s, 5*mm)
		refused(t, "bench", err, "want")
	}
}

func TestAdvanceRefusals(t *testing.T) {
	c := crankOfMM(t, 80, 160)
	b := Bench{Rim: must(NewRim(300 * mm))(t)}
	first := func(_ any, err error) error { return err }
	for _, tc := range []struct {
		name string
		err  error
		text string
	}{
		{"drop below the stroke", first(AdvanceOfDrop(c, 81*mm)), "drop 81 mm: want 0 mm to 80 mm, the stroke"},
		{"negative drop", first(AdvanceOfDrop(c, -1*mm)), "drop -1 mm"},
		{"more than the whole", first(AdvanceOfShare(c, 1.5)), "part of the stroke 150 %: want from 0 % to 100 %"},
		{"NaN share", first(AdvanceOfShare(c, units.Ratio(math.NaN()))), "want from 0 % to 100 %"},
		{"no rim", first(Bench{}.Forms(c, 1)), "want a rim made with NewRim"},
		{"flat hole", first(Bench{Rim: b.Rim, Lean: 90 * deg}.Forms(c, 1)), "lean of the plug hole 90°: want 0° to less than 90°"},
		{"negative speed", first(Bench{Rim: b.Rim, Speed: -1}.Forms(c, 1)), "want 0 rev/min or more"},
		{"no crank", first(b.Forms(geometry.Crank{}, 1)), "want a crank made with NewCrank"},
		{"too far", first(b.Forms(c, 181*deg)), "advance 181°: want from −180° to 180°"},
		{"NaN", first(b.Forms(c, units.Angle(math.NaN()))), "want from −180° to 180°"},
		{"gauge too far", first(b.AdvanceOfGauge(c, 90*mm)), "drop 90 mm"},
		{"gauge without a rim", first(Bench{}.AdvanceOfGauge(c, 1*mm)), "want a rim made with NewRim"},
	} {
		refused(t, tc.name, tc.err, tc.text)
	}
}

func TestFormsAllocateNothing(t *testing.T) {
	c := crankOfMM(t, 80, 160)
	b := Bench{Rim: must(NewRim(300 * mm))(t), Lean: 12 * deg, Speed: 900 * rpm}
	var sum units.Length
	if n := testing.AllocsPerRun(100, func() {
		f, _ := b.Forms(c, 26*deg)
		a, _ := AdvanceOfDrop(c, f.Drop)
		sum += f.Arc + f.Chord + b.Rim.Arc(a)
	}); n != 0 {
		t.Errorf("forms allocate %v times", n)
	}
}

func BenchmarkBench_Forms(b *testing.B) {
	c := crankOfMM(b, 80, 160)
	bench := Bench{Rim: must(NewRim(300 * mm))(b), Lean: 12 * deg, Speed: 900 * rpm}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = bench.Forms(c, 26*deg)
	}
}
