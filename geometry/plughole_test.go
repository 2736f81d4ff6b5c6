package geometry

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func mustHole(t testing.TB, lean units.Angle) PlugHole {
	t.Helper()
	h, err := NewPlugHole(lean)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func TestPlugHole(t *testing.T) {
	const sachs = "Fichtel & Sachs 505 repair instructions: 2.5 to 3 mm at the piston, 3.5 to 4.2 mm on a gauge at 45°"
	h := mustHole(t, 45*units.Degree)
	figures.Figure{Printed: "3.5", Source: sachs}.Check(t, h.Reading(2.5*mm).Millimetres())
	figures.Figure{Printed: "4.2", Source: sachs}.Check(t, h.Reading(3*mm).Millimetres())
	figures.Figure{Printed: "2.5", Source: sachs}.Check(t, h.Travel(3.5*mm).Millimetres())
	figures.Figure{Printed: "3.0", Source: sachs}.Check(t, h.Travel(4.2*mm).Millimetres())
	rapid.Check(t, func(t *rapid.T) {
		h, err := NewPlugHole(units.Angle(rapid.Float64Range(0, 80).Draw(t, "lean")) * units.Degree)
		if err != nil {
			t.Fatal(err)
		}
		x := units.Length(rapid.Float64Range(0, 50).Draw(t, "travel"))
		within(t, "there and back", float64(h.Travel(h.Reading(x))), float64(x), 1e-15*float64(x))
		if h.Reading(x) < x {
			t.Errorf("reading %v less than the travel %v", h.Reading(x), x)
		}
	})
	if h := mustHole(t, 0); h.Reading(3*mm) != 3*mm || h.Lean() != 0 {
		t.Errorf("upright hole: reading %v of 3 mm, lean %v", h.Reading(3*mm), h.Lean())
	}
	for _, lean := range []units.Angle{-units.Degree, 90 * units.Degree, units.Angle(math.NaN())} {
		_, err := NewPlugHole(lean)
		refuses(t, err, "lean of the plug hole "+lean.String()+": want 0° to less than 90°")
	}
}

// The place where the plunger's line meets the dome, found by walking along it.
func walked(lean, slope, radius, drop float64) float64 {
	x0, y0 := radius*math.Sin(slope), radius*math.Cos(slope) // tip's centre at the top
	low, high := 0.0, drop/math.Cos(lean)*50+radius
	inside := func(s float64) bool {
		x, y := x0-s*math.Sin(lean), y0-s*math.Cos(lean)+drop
		return math.Hypot(x, y) < radius
	}
	for s := 0.0; s < high; s += radius / 2000 { // first place inside
		if inside(s) {
			high = s
			break
		}
	}
	for range 200 {
		if m := (low + high) / 2; inside(m) {
			high = m
		} else {
			low = m
		}
	}
	return (low + high) / 2
}

func TestDomedGauge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lean := units.Angle(rapid.Float64Range(0, 60).Draw(t, "lean")) * units.Degree
		h, err := NewPlugHole(lean)
		if err != nil {
			t.Fatal(err)
		}
		slope := rapid.Float64Range(-20, 40).Draw(t, "slope where it touches") * math.Pi / 180
		dome := Dome{Radius: 60 * mm, Tip: 2 * mm, Aim: 60 * mm * units.Length(math.Sin(slope))}
		g, err := NewDomedGauge(h, dome)
		if err != nil {
			t.Skip("the plunger does not reach there")
		}
		x := units.Length(math.Pow(10, -rapid.Float64Range(0, 9).Draw(t, "digits"))) * 5 * mm
		m, err := g.Reading(x)
		if err != nil {
			t.Skip("the tip slides off")
		}
		back, err := g.Drop(m)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "drop back", float64(back), float64(x), 1e-11*float64(x))
		off, err := g.FlatError(m)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "error of the flat rule", float64(off), float64(h.Travel(m)-x), 1e-11*float64(x))
		if x > 0.1*mm {
			within(t, "reading, walked, mm", m.Millimetres(), walked(float64(lean), slope, 62, x.Millimetres()), 1e-9)
		}
		if x < 1e-7*mm {
			within(t, "rate at the top", float64(m/x), g.Rate(), 1e-7*g.Rate()*g.Rate()*g.Rate())
		}
	})
}

// A dome as flat as a plate is a flat crown.
func TestDomedGauge_flat(t *testing.T) {
	h := mustHole(t, 30*units.Degree)
	g := must[DomedGauge](t)(NewDomedGauge(h, Dome{Radius: 1e6 * units.Metre}))
	figures.Near(t, "reading, mm", must[units.Length](t)(g.Reading(5*mm)).Millimetres(), h.Reading(5*mm).Millimetres(), 1e-8)
	figures.Near(t, "drop, mm", must[units.Length](t)(g.Drop(5*mm)).Millimetres(), h.Travel(5*mm).Millimetres(), 1e-8)
	// Square to the dome, the opposite of the flat rule.
	r := 60 * mm
	g = must[DomedGauge](t)(NewDomedGauge(h, Dome{Radius: r, Aim: r / 2}))
	figures.Near(t, "rate square to the dome", g.Rate(), math.Cos(math.Pi/6), 1e-15)
}

func TestDomedGauge_refuses(t *testing.T) {
	h := mustHole(t, 60*units.Degree)
	for _, tc := range []struct {
		name string
		dome Dome
		text string
	}{
		{"no radius", Dome{}, "radius of the dome 0 mm: want more than 0 mm"},
		{"tip of less than nothing", Dome{Radius: 60 * mm, Tip: -mm}, "radius of the tip -1 mm: want 0 mm or more"},
		{"beside the dome", Dome{Radius: 60 * mm, Aim: 60 * mm}, "aim 60 mm from the middle of a dome of radius 60 mm: want less than the radius"},
		{"far side", Dome{Radius: 60 * mm, Aim: -40 * mm}, "aim -40 mm with a lean of 60°: the plunger cannot reach that side of the dome"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := NewDomedGauge(h, tc.dome)
			refuses(t, err, tc.text)
		})
	}
	g := must[DomedGauge](t)(NewDomedGauge(h, Dome{Radius: 10 * mm}))
	_, err := g.Reading(-mm)
	refuses(t, err, "drop -1 mm: want 0 mm or more, and little enough for the tip to stay on the dome")
	_, err = g.Reading(9 * mm)
	refuses(t, err, "drop 9 mm: want 0 mm or more, and little enough for the tip to stay on the dome")
	_, err = g.Drop(9 * mm)
	refuses(t, err, "reading 9 mm: want 0 mm or more, and little enough for the tip to stay on the dome")
	_, err = g.FlatError(units.Length(math.NaN()))
	refuses(t, err, "reading NaN mm: want 0 mm or more, and little enough for the tip to stay on the dome")
}
