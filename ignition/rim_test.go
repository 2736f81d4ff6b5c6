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

const computed50 = "computed with 50 digits: rim arc, chord and tape"

func must[T any](v T, err error) func(testing.TB) T {
	return func(t testing.TB) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

func TestRimAgainstFiftyDigits(t *testing.T) {
	inch18 := must(NewRim(18 * units.Inch))(t)
	mm450 := must(NewRim(450 * units.Millimetre))(t)
	inch8 := must(NewRim(203.2 * units.Millimetre))(t)

	figures.Reference{Digits: "3.14159265358979323846", Source: computed50}.Check(t, inch18.Arc(20*units.Degree).Inches())
	figures.Reference{Digits: "3.12566719800475", Source: computed50}.Check(t, inch18.Chord(20*units.Degree).Inches())
	figures.Reference{Digits: "3.92699081698724", Source: computed50}.Check(t, mm450.Arc(1*units.Degree).Millimetres())
	figures.Reference{Digits: "3.92699081698724", Source: computed50}.Check(t, mm450.PerDegree().Millimetres())
	figures.Reference{Digits: "20.4806966423724", Source: computed50}.Check(t, must(mm450.AngleOfChord(80*units.Millimetre))(t).Degrees())
	figures.Reference{Digits: "20.3718327157626", Source: computed50}.Check(t, mm450.AngleOfArc(80*units.Millimetre).Degrees())
	figures.Reference{Digits: "22.5352131811533", Source: computed50}.Check(t, must(inch8.AngleOfTape(40*units.Millimetre, 0.2*units.Millimetre))(t).Degrees())
	figures.Reference{Digits: "22.5462978900472", Source: computed50}.Check(t, must(inch8.AngleOfTape(40*units.Millimetre, 0.1*units.Millimetre))(t).Degrees())
	figures.Reference{Digits: "19.96875", Source: computed50}.Check(t, must(AngleOfShare(35.5*units.Millimetre, 640*units.Millimetre))(t).Degrees())
	girth := must(NewRimOfGirth(640 * units.Millimetre))(t)
	figures.Reference{Digits: "19.96875", Source: computed50}.Check(t, girth.AngleOfArc(35.5*units.Millimetre).Degrees())
}

// How much a chord is short of its arc.
func TestChordShortOfArc(t *testing.T) {
	rim := must(NewRim(1 * units.Metre))(t)
	for _, tc := range []struct {
		theta units.Angle
		short figures.Figure // per cent of the arc
	}{
		{10 * units.Degree, figures.Figure{Printed: "0.13", Source: "θ²/24 and the next term −θ⁴/1920, by hand"}},
		{20 * units.Degree, figures.Figure{Printed: "0.51", Source: "θ²/24 and the next term −θ⁴/1920, by hand"}},
		{30 * units.Degree, figures.Figure{Printed: "1.14", Source: "θ²/24 and the next term −θ⁴/1920, by hand"}},
	} {
		arc, chord := rim.Arc(tc.theta), rim.Chord(tc.theta)
		tc.short.Check(t, 100*float64((arc-chord)/arc))
	}
}

func TestChordEnds(t *testing.T) {
	rim := must(NewRim(300 * units.Millimetre))(t)
	for _, tc := range []struct {
		name   string
		theta  units.Angle
		wantMM float64
	}{
		{"none", 0, 0},
		{"sixth of a turn: the radius", 60 * units.Degree, 150},
		{"quarter", 90 * units.Degree, 150 * math.Sqrt2},
		{"half: the diameter", 180 * units.Degree, 300},
		{"three quarters: as a quarter", 270 * units.Degree, 150 * math.Sqrt2},
		{"a whole turn", 360 * units.Degree, 0},
		{"a turn and a sixth", 420 * units.Degree, 150},
		{"back", -60 * units.Degree, -150},
		{"back a turn and a sixth", -420 * units.Degree, -150},
	} {
		figures.Near(t, tc.name, rim.Chord(tc.theta).Millimetres(), tc.wantMM, 1e-10)
	}
	if got := must(rim.AngleOfChord(300 * units.Millimetre))(t); got != 180*units.Degree {
		t.Errorf("the diameter as a chord: got %v, want 180°", got)
	}
}

func TestRimRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rim, err := NewRim(units.Length(rapid.Float64Range(0.01, 5).Draw(t, "diameter m")))
		if err != nil {
			t.Fatal(err)
		}
		theta := units.Angle(rapid.Float64Range(-math.Pi, math.Pi).Draw(t, "theta rad"))
		thickness := units.Length(rapid.Float64Range(0, 0.002).Draw(t, "thickness m"))
		near := func(what string, got units.Angle, tol float64) {
			if !(math.Abs(float64(got-theta)) <= tol) {
				t.Errorf("%s: got %.17g, want %.17g", what, float64(got), float64(theta))
			}
		}
		near("arc", rim.AngleOfArc(rim.Arc(theta)), 4e-15)
		if math.Abs(float64(theta)) < 3 { // asin loses its digits at the full diameter
			back, err := rim.AngleOfChord(rim.Chord(theta))
			if err != nil {
				t.Fatal(err)
			}
			near("chord", back, 1e-14)
		}
		onTape, err := rim.TapeLength(theta, thickness)
		if err != nil {
			t.Fatal(err)
		}
		back, err := rim.AngleOfTape(onTape, thickness)
		if err != nil {
			t.Fatal(err)
		}
		near("tape", back, 4e-15)
		if c, s := rim.Chord(theta), rim.Arc(theta); math.Abs(float64(c)) > math.Abs(float64(s)) {
			t.Errorf("chord %v longer than arc %v", c, s)
		}
		if math.Abs(float64(onTape)) < math.Abs(float64(rim.Arc(theta))) {
			t.Errorf("a thick tape reads less than the rim")
		}
	})
}

// At small angles arc, chord and tape are the same, to the last digits.
func TestRimSmallAngles(t *testing.T) {
	rim := must(NewRim(400 * units.Millimetre))(t)
	for _, theta := range []units.Angle{1e-3, 1e-6, 1e-9, 1e-300} {
		arc := float64(rim.Arc(theta))
		figures.Near(t, "chord to arc", float64(rim.Chord(theta))/arc, 1-float64(theta*theta)/24, 1e-13)
		back := must(rim.AngleOfChord(units.Length(arc)))(t)
		figures.Near(t, "angle of chord", float64(back/theta), 1+float64(theta*theta)/24, 1e-12)
	}
}

// The three ways to a rim describe one rim.
func TestRimFromGirthAndTape(t *testing.T) {
	rim := must(NewRim(203.2 * units.Millimetre))(t)
	girth := must(NewRimOfGirth(rim.Girth()))(t)
	figures.Near(t, "girth", float64(girth.Diameter()), 0.2032, 1e-16)
	const thick = 0.2 * units.Millimetre
	reading := must(rim.TapeLength(units.Turn, thick))(t)
	taped := must(NewRimOfTape(reading, thick))(t)
	figures.Near(t, "tape", float64(taped.Diameter()), 0.2032, 1e-15)
	figures.Near(t, "tape and girth differ by πt", float64(reading-rim.Girth()), math.Pi*float64(thick), 1e-15)
	// The mark and the girth on one tape: the thickness drops out.
	mark := must(rim.TapeLength(33*units.Degree, thick))(t)
	figures.Near(t, "share", must(AngleOfShare(mark, reading))(t).Degrees(), 33, 1e-12)
}

func TestTransfer(t *testing.T) {
	flywheel := must(NewRim(356 * units.Millimetre))(t)
	pulley := must(NewRim(120 * units.Millimetre))(t)
	arc := flywheel.Arc(26 * units.Degree)
	figures.Near(t, "angle kept", pulley.AngleOfArc(flywheel.Transfer(arc, pulley)).Degrees(), 26, 1e-12)
}

func TestRunOut(t *testing.T) {
	rim := must(NewRim(356 * units.Millimetre))(t)
	// 0.35 mm in all is 0.175 mm either way on a radius of 178 mm: 0.175/178 rad.
	figures.Figure{Printed: "0.056", Source: "e/R by hand: 0.175/178 × 57.3°"}.Check(t, rim.RunOut(0.35*units.Millimetre).Degrees())
}

func TestRimRefusals(t *testing.T) {
	rim := must(NewRim(100 * units.Millimetre))(t)
	nan, inf := units.Length(math.NaN()), units.Length(math.Inf(1))
	first := func(_ any, err error) error { return err }
	for _, tc := range []struct {
		name string
		err  error
		text string
	}{
		{"no diameter", first(NewRim(0)), "rim diameter 0 mm: want more than 0 mm"},
		{"negative diameter", first(NewRim(-3 * units.Millimetre)), "rim diameter -3 mm: want more than 0 mm"},
		{"NaN diameter", first(NewRim(nan)), "want more than 0 mm"},
		{"endless diameter", first(NewRim(inf)), "want more than 0 mm"},
		{"no girth", first(NewRimOfGirth(0)), "rim girth 0 mm: want more than 0 mm"},
		{"NaN girth", first(NewRimOfGirth(nan)), "want more than 0 mm"},
		{"no taped girth", first(NewRimOfTape(0.5*units.Millimetre, 0.2*units.Millimetre)), "girth 0.5 mm on a tape 0.2 mm thick: want more than 0.628319 mm"},
		{"negative thickness", first(NewRimOfTape(1*units.Metre, -1*units.Millimetre)), "tape thickness -1 mm: want 0 mm or more"},
		{"NaN thickness", first(rim.AngleOfTape(1*units.Millimetre, nan)), "want 0 mm or more"},
		{"negative tape", first(rim.TapeLength(1*units.Degree, -1*units.Millimetre)), "tape thickness -1 mm"},
		{"chord too long", first(rim.AngleOfChord(100.5 * units.Millimetre)), "chord 100.5 mm: want 100 mm at most, the diameter of the rim"},
		{"chord too long back", first(rim.AngleOfChord(-101 * units.Millimetre)), "chord -101 mm"},
		{"NaN chord", first(rim.AngleOfChord(nan)), "want 100 mm at most"},
		{"share of nothing", first(AngleOfShare(1*units.Millimetre, 0)), "rim girth 0 mm"},
	} {
		if !errors.Is(tc.err, units.ErrDomain) {
			t.Errorf("%s: got %v, want ErrDomain", tc.name, tc.err)
			continue
		}
		if !strings.Contains(tc.err.Error(), tc.text) {
			t.Errorf("%s: got %q, want %q in it", tc.name, tc.err, tc.text)
		}
	}
}

func TestRimAllocatesNothing(t *testing.T) {
	rim := must(NewRim(356 * units.Millimetre))(t)
	to := must(NewRim(120 * units.Millimetre))(t)
	var l units.Length
	var a units.Angle
	if n := testing.AllocsPerRun(100, func() {
		l += rim.Arc(28*units.Degree) + rim.Chord(28*units.Degree) + rim.Transfer(l, to) + rim.PerDegree()
		tape, _ := rim.TapeLength(28*units.Degree, 0.1*units.Millimetre)
		back, _ := rim.AngleOfTape(tape, 0.1*units.Millimetre)
		chord, _ := rim.AngleOfChord(40 * units.Millimetre)
		share, _ := AngleOfShare(40*units.Millimetre, 1118*units.Millimetre)
		a += back + chord + share + rim.AngleOfArc(l)
	}); n != 0 {
		t.Errorf("rim conversions allocate %v times", n)
	}
}

func BenchmarkRim_Arc(b *testing.B) {
	rim := must(NewRim(356 * units.Millimetre))(b)
	var sum units.Length
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		sum += rim.Arc(units.Angle(i&63) * units.Degree)
	}
	_ = sum
}

func BenchmarkRim_AngleOfChord(b *testing.B) {
	rim := must(NewRim(356 * units.Millimetre))(b)
	var sum units.Angle
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		a, _ := rim.AngleOfChord(units.Length(i&63) * units.Millimetre)
		sum += a
	}
	_ = sum
}
