package geometry_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// Depths taken from the barrel's top face, the crown's edge 1.6 mm below it at top
// dead centre.
func ExampleBarrel() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := geometry.NewBarrel(crank).WithDeck(1.6 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err = b.WithSkirt(88 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	exhaust, err := b.CrownPort(61 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	inlet, err := b.SkirtPort(106 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("exhaust", exhaust)
	fmt.Println("inlet", inlet)
	// Output:
	// exhaust opens 117.3° after top dead centre, closes 117.3° before top dead centre, open for 125.4°
	// inlet opens 49.8° before top dead centre, closes 49.8° after top dead centre, open for 99.6°
}

// A post on a 200 cc single (blasterforum.com, 589993; stroke and rod from memory):
// edge 33 mm down, 91.5°; barrel up 1.5 mm, 88.5°.
func ExampleNewBarrel() {
	crank, err := geometry.NewCrank(57*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	b := geometry.NewBarrel(crank)
	for _, packing := range []units.Length{0, 1.5 * units.Millimetre} {
		e, err := b.Raised(packing).CrownPort(33 * units.Millimetre)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("opens at %.1f°, open for %.0f°\n", e.Opens.Degrees(), e.Duration().Degrees())
	}
	// Output:
	// opens at 91.5°, open for 177°
	// opens at 88.5°, open for 183°
}

func ExampleBarrel_CrownPortEdgeForDuration() {
	crank, err := geometry.NewCrank(57*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	edge, err := geometry.NewBarrel(crank).CrownPortEdgeForDuration(180 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", edge.Millimetres())
	// Output: 32.26 mm
}

func ExamplePortEvent() {
	e := geometry.PortEvent{Opens: 118 * units.Degree, Closes: 242 * units.Degree}
	fmt.Println(e)
	// Output: opens 118.0° after top dead centre, closes 118.0° before top dead centre, open for 124.0°
}

func ExamplePortEvent_AboutBottom() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	e := geometry.PortEvent{Opens: 118 * units.Degree, Closes: 242 * units.Degree}
	before, after := e.AboutBottom(crank)
	fmt.Printf("%.0f° before bottom dead centre to %.0f° after\n", before.Degrees(), after.Degrees())
	// Output: 62° before bottom dead centre to 62° after
}

func ExampleBlowdown() {
	exhaust := geometry.PortEvent{Opens: 91.5 * units.Degree, Closes: 268.5 * units.Degree}
	transfer := geometry.PortEvent{Opens: 119.5 * units.Degree, Closes: 240.5 * units.Degree}
	fmt.Printf("%.0f°\n", geometry.Blowdown(exhaust, transfer).Degrees())
	// Output: 28°
}

func ExampleWindow() {
	w := geometry.Window{Width: 34 * units.Millimetre, Height: 16 * units.Millimetre, Corner: 3 * units.Millimetre}
	for _, by := range []units.Length{3 * units.Millimetre, 16 * units.Millimetre} {
		a, err := w.Open(by)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%2.0f mm uncovered: %.0f mm²\n", by.Millimetres(), a.SquareMillimetres())
	}
	// Output:
	//  3 mm uncovered: 98 mm²
	// 16 mm uncovered: 536 mm²
}

func ExamplePortArea() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	cylinder, err := geometry.NewCylinder(70*units.Millimetre, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	window := geometry.Window{Width: 34 * units.Millimetre, Height: 16 * units.Millimetre}
	port, err := geometry.NewBarrel(crank).CrownPortArea(60*units.Millimetre, window)
	if err != nil {
		fmt.Println(err)
		return
	}
	const speed = 900 * units.RevolutionPerMinute
	ta, err := port.TimeArea(speed)
	if err != nil {
		fmt.Println(err)
		return
	}
	sta, err := port.SpecificTimeArea(speed, cylinder.Swept())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("mean %.0f mm² of %.0f mm²\n", port.Mean.SquareMillimetres(), port.Greatest.SquareMillimetres())
	fmt.Printf("time-area %.2f s mm², specific %.4f s/m\n", ta.SecondSquareMillimetres(), sta.SecondsPerMetre())
	// Output:
	// mean 361 mm² of 544 mm²
	// time-area 8.23 s mm², specific 0.0282 s/m
}
