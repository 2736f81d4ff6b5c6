package geometry

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const mm = units.Millimetre

// mustCrank is for tests that are not about what NewCrank refuses.
func mustCrank(t testing.TB, stroke, rod, offset units.Length) Crank {
	t.Helper()
	c, err := NewCrank(stroke, rod)
	if err != nil {
		t.Fatal(err)
	}
	if c, err = c.WithOffset(offset); err != nil {
		t.Fatal(err)
	}
	return c
}

// anyCrank draws a crank of any shape that turns, rods hardly longer than the
// throw and offsets close to what is possible among them.
func anyCrank(t *rapid.T) Crank {
	stroke := units.Length(rapid.Float64Range(1, 1000).Draw(t, "stroke, mm")) * mm
	n := rapid.Float64Range(1.01, 50).Draw(t, "rod in throws")
	c, err := NewCrank(stroke, units.Length(n)*stroke/2)
	if err != nil {
		t.Fatal(err)
	}
	part := rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(-0.98, 0.98)).Draw(t, "offset in its room")
	c, err = c.WithOffset(units.Length(part) * (c.Rod() - c.Throw()))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func anyAngle(t *rapid.T) units.Angle {
	return units.Angle(rapid.Float64Range(-720, 720).Draw(t, "angle, degrees")) * units.Degree
}

// within reports to a rapid test as figures.Near does to others.
func within(t *rapid.T, what string, got, want, tol float64) {
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.17g, want %.17g within %.3g", what, got, want, tol)
	}
}

func refuses(t *testing.T, err error, text string) {
	t.Helper()
	if !errors.Is(err, units.ErrDomain) {
		t.Fatalf("got error %v, want units.ErrDomain", err)
	}
	if want := text + ": outside the domain"; err.Error() != want {
		t.Errorf("got  %q\nwant %q", err, want)
	}
}

func TestNewCrank_refuses(t *testing.T) {
	nan, inf := units.Length(math.NaN()), units.Length(math.Inf(1))
	for _, tc := range []struct {
		name        string
		stroke, rod units.Length
		text        string
	}{
		{"no stroke", 0, 110 * mm, "stroke 0 mm: want more than 0 mm"},
		{"stroke less than nothing", -60 * mm, 110 * mm, "stroke -60 mm: want more than 0 mm"},
		{"rod as long as the throw", 70 * mm, 35 * mm, "rod 35 mm: want more than 35 mm, half the stroke"},
		{"rod shorter than the throw", 70 * mm, 30 * mm, "rod 30 mm: want more than 35 mm, half the stroke"},
		{"stroke not a number", nan, 110 * mm, "stroke NaN mm: want more than 0 mm"},
		{"stroke infinite", inf, 110 * mm, "stroke +Inf mm: want more than 0 mm"},
		{"rod not a number", 60 * mm, nan, "rod NaN mm: want more than 30 mm, half the stroke"},
		{"rod infinite", 60 * mm, inf, "rod +Inf mm: want more than 30 mm, half the stroke"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			c, err := NewCrank(tc.stroke, tc.rod)
			refuses(t, err, tc.text)
			if c != (Crank{}) {
				t.Errorf("got %v beside the error, want the zero Crank", c)
			}
		})
	}
}

func TestCrank_WithOffset_refuses(t *testing.T) {
	c := mustCrank(t, 70*mm, 110*mm, 0)
	for _, tc := range []struct {
		name   string
		offset units.Length
		text   string
	}{
		{"all the room", 75 * mm, "offset 75 mm: want less than 75 mm either way, the rod less the throw"},
		{"beyond, the other way", -80 * mm, "offset -80 mm: want less than 75 mm either way, the rod less the throw"},
		{"not a number", units.Length(math.NaN()), "offset NaN mm: want less than 75 mm either way, the rod less the throw"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := c.WithOffset(tc.offset)
			refuses(t, err, tc.text)
		})
	}
	_, err := c.WithOffsetSameStroke(105 * mm)
	refuses(t, err, "offset 105 mm: too much for a rod of 110 mm to give a stroke of 70 mm")
	_, err = c.WithOffsetSameStroke(units.Length(math.NaN()))
	refuses(t, err, "offset NaN mm: too much for a rod of 110 mm to give a stroke of 70 mm")
}

func TestCrank_lengths(t *testing.T) {
	c := mustCrank(t, 60*mm, 130*mm, 10*mm)
	for _, tc := range []struct {
		what      string
		got, want units.Length
	}{
		{"throw", c.Throw(), 30 * mm},
		{"rod", c.Rod(), 130 * mm},
		{"offset", c.Offset(), 10 * mm},
		// √((l+r)² − e²) − √((l−r)² − e²), by Pythagoras at both dead centres.
		{"stroke", c.Stroke(), units.Length(math.Sqrt(160*160-100)-math.Sqrt(100*100-100)) * mm},
	} {
		figures.Near(t, tc.what, tc.got.Millimetres(), tc.want.Millimetres(), 1e-12)
	}
	figures.Near(t, "rod in throws", c.RodRatio(), 130.0/30, 1e-14)
	if c, err := c.WithOffset(0); err != nil || c != mustCrank(t, 60*mm, 130*mm, 0) {
		t.Errorf("offset set back to nothing: got %v, %v, want the straight crank", c, err)
	}
}

// The measured stroke comes back, and the throw agrees with the forward formula.
func TestCrank_WithOffsetSameStroke(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		again, err := NewCrank(c.Stroke(), c.Rod())
		if err != nil {
			t.Skip("an offset crank can have a stroke of more than twice its rod")
		}
		again, err = again.WithOffsetSameStroke(c.Offset())
		if err != nil {
			t.Fatal(err)
		}
		if again.Stroke() != c.Stroke() || again.Offset() != c.Offset() {
			t.Errorf("stroke %v, offset %v: want %v, %v", again.Stroke(), again.Offset(), c.Stroke(), c.Offset())
		}
		room := float64((c.Rod()-c.Throw())/c.Rod()) - math.Abs(float64(c.Offset()/c.Rod()))
		within(t, "throw", float64(again.Throw()/c.Throw()), 1, 1e-14/room)
	})
}

func TestCrank_String(t *testing.T) {
	straight := mustCrank(t, 60*mm, 110*mm, 0)
	if got, want := straight.String(), "stroke 60 mm, rod 110 mm"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	over, err := straight.WithOffsetSameStroke(-4 * mm)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := over.String(), "stroke 60 mm, rod 110 mm, offset -4 mm"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestCrank_allocatesNothing(t *testing.T) {
	c := mustCrank(t, 60*mm, 110*mm, 4*mm)
	drops := make([]units.Length, 91)
	var sum float64
	for name, f := range map[string]func(){
		"Drop":         func() { sum += float64(c.Drop(1)) },
		"AnglesAtDrop": func() { before, _, _ := c.AnglesAtDrop(10 * mm); sum += float64(before) },
		"Velocity":     func() { sum += float64(c.Velocity(1, 100)) },
		"Acceleration": func() { sum += float64(c.Acceleration(1, 100)) },
		"SweepDrops":   func() { c.SweepDrops(drops, 0, units.Turn) },
		"Sweep": func() {
			for _, x := range c.Sweep(0, units.Turn, 91) {
				sum += float64(x)
			}
		},
	} {
		if n := testing.AllocsPerRun(100, f); n != 0 {
			t.Errorf("%s: %g allocations, want none", name, n)
		}
	}
}
