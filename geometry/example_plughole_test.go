package geometry_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// Fichtel & Sachs 505 repair instructions: 2.5 mm to 3 mm at the piston, 3.5 mm to
// 4.2 mm on a gauge at 45°.
func ExamplePlugHole() {
	h, err := geometry.NewPlugHole(45 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, drop := range []units.Length{2.5 * units.Millimetre, 3 * units.Millimetre} {
		fmt.Printf("%.1f mm at the piston, %.1f mm on the gauge\n", drop.Millimetres(), h.Reading(drop).Millimetres())
	}
	// Output:
	// 2.5 mm at the piston, 3.5 mm on the gauge
	// 3.0 mm at the piston, 4.2 mm on the gauge
}

func ExampleNewPlugHole() {
	h, err := geometry.NewPlugHole(12 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", h.Travel(5*units.Millimetre).Millimetres())
	// Output: 4.89 mm
}

// The same hole and the same dome, and two places for the tip to touch.
func ExampleDomedGauge() {
	h, err := geometry.NewPlugHole(30 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("flat crown: %.3f mm\n", h.Reading(5*units.Millimetre).Millimetres())
	for _, aim := range []units.Length{0, 30 * units.Millimetre} {
		g, err := geometry.NewDomedGauge(h, geometry.Dome{Radius: 60 * units.Millimetre, Aim: aim})
		if err != nil {
			fmt.Println(err)
			return
		}
		m, err := g.Reading(5 * units.Millimetre)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("dome, %2.0f mm from the middle: %.3f mm\n", aim.Millimetres(), m.Millimetres())
	}
	// Output:
	// flat crown: 5.774 mm
	// dome,  0 mm from the middle: 5.856 mm
	// dome, 30 mm from the middle: 4.382 mm
}

func ExampleNewDomedGauge() {
	h, err := geometry.NewPlugHole(60 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = geometry.NewDomedGauge(h, geometry.Dome{Radius: 60 * units.Millimetre, Aim: -40 * units.Millimetre})
	fmt.Println(err)
	// Output: aim -40 mm with a lean of 60°: the plunger cannot reach that side of the dome: outside the domain
}

func ExampleDome() {
	h, err := geometry.NewPlugHole(20 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	dome := geometry.Dome{Radius: 60 * units.Millimetre, Tip: 1.5 * units.Millimetre, Aim: 15 * units.Millimetre}
	g, err := geometry.NewDomedGauge(h, dome)
	if err != nil {
		fmt.Println(err)
		return
	}
	x, err := g.Drop(5 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	off, err := g.FlatError(5 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("true drop %.2f mm; the rule for a flat crown is out by %+.2f mm\n", x.Millimetres(), off.Millimetres())
	// Output: true drop 5.11 mm; the rule for a flat crown is out by -0.42 mm
}
