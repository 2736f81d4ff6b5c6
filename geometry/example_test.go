package geometry_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

func ExampleNewCrank() {
	_, err := geometry.NewCrank(70*units.Millimetre, 30*units.Millimetre)
	fmt.Println(err)
	// Output: rod 30 mm: want more than 35 mm, half the stroke: outside the domain
}

func ExampleCrank_Drop() {
	c, err := geometry.NewCrank(60*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", c.Drop(28*units.Degree).Millimetres())
	// Output: 4.42 mm
}

// Khurmi & Gupta, Theory of Machines, Example 15.9, p. 534: crank 50 mm, rod
// 200 mm. The book reads 33° off its drawing.
func ExampleCrank_AnglesAtDrop() {
	c, err := geometry.NewCrank(100*units.Millimetre, 200*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	before, after, err := c.AnglesAtDrop(10 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f° before top dead centre and %.2f° after\n", before.Degrees(), after.Degrees())
	// Output: 33.12° before top dead centre and 33.12° after
}

func ExampleCrank_WithOffset() {
	c, err := geometry.NewCrank(60*units.Millimetre, 130*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err = c.WithOffset(10 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("stroke %.3f mm, way down %.2f° of crank\n", c.Stroke().Millimetres(), c.Downstroke().Degrees())
	fmt.Printf("top %.2f° and bottom %.2f° late\n", c.TopLag().Degrees(), c.BottomLag().Degrees())
	before, after, err := c.AnglesAtDrop(5 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("5 mm down: %.2f° before, %.2f° after top dead centre\n", before.Degrees(), after.Degrees())
	// Output:
	// stroke 60.188 mm, way down 182.16° of crank
	// top 3.58° and bottom 5.74° late
	// 5 mm down: 30.21° before, 30.44° after top dead centre
}

func ExampleCrank_WithOffsetSameStroke() {
	c, err := geometry.NewCrank(60*units.Millimetre, 130*units.Millimetre) // stroke measured at the crown
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err = c.WithOffsetSameStroke(10 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("stroke %.2f mm, throw %.3f mm\n", c.Stroke().Millimetres(), c.Throw().Millimetres())
	// Output: stroke 60.00 mm, throw 29.906 mm
}

// Meriam & Kraige, Engineering Mechanics: Dynamics, Sample Problems 5/9 and 5/15:
// crank 5 in, rod 14 in, 1500 rev/min, 60° past the top. The book gives 67.3 ft/s,
// 3310 ft/s² to the nearest ten, 18.02° and 29.5 rad/s (piston from memory).
func ExampleCrank_Velocity() {
	c, err := geometry.NewCrank(10*units.Inch, 14*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	theta, speed := 60*units.Degree, 1500*units.RevolutionPerMinute
	fmt.Printf("piston %.1f ft/s\n", c.Velocity(theta, speed).FeetPerSecond())
	fmt.Printf("piston %.0f ft/s²\n", c.Acceleration(theta, speed).FeetPerSecondSquared())
	fmt.Printf("rod %.2f°\n", c.RodAngle(theta).Degrees())
	fmt.Printf("rod %.1f rad/s\n", c.RodSpeed(theta, speed).RadiansPerSecond())
	// Output:
	// piston 67.3 ft/s
	// piston 3312 ft/s²
	// rod 18.02°
	// rod 29.5 rad/s
}

func ExampleCrank_DropPerRadian() {
	c, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	perDegree := c.DropPerRadian(25*units.Degree) * units.Length(units.Degree)
	fmt.Printf("%.3f mm a degree\n", perDegree.Millimetres())
	// Output: 0.347 mm a degree
}

func ExampleCrank_FastestAngles() {
	c, err := geometry.NewCrank(3.307*units.Inch, 6.024*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	_, after := c.FastestAngles()
	fmt.Printf("%.1f° after top dead centre\n", after.Degrees())
	// Output: 75.6° after top dead centre
}

// Gupta, Fundamentals of Internal Combustion Engines, Example 13.2, p. 424: what
// 2 mm of offset takes off the side thrust, a quarter turn from where the crank
// points up.
func ExampleCrank_SideThrust() {
	straight, err := geometry.NewCrank(6*units.Centimetre, 12*units.Centimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	over, err := straight.WithOffset(2 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	push := 15.692 * 1000 * units.Newton
	square := 90 * units.Degree
	fmt.Printf("%.2f kN straight, %.3f kN set over\n",
		straight.SideThrust(square, push).Newtons()/1000,
		over.SideThrust(square-over.TopLag(), push).Newtons()/1000)
	// Output: 4.05 kN straight, 3.765 kN set over
}

func ExampleCrank_Sweep() {
	c, err := geometry.NewCrank(60*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for theta, drop := range c.Sweep(0, 180*units.Degree, 7) {
		fmt.Printf("%.0f°: %.2f mm\n", theta.Degrees(), drop.Millimetres())
	}
	// Output:
	// 0°: 0.00 mm
	// 30°: 5.05 mm
	// 60°: 18.11 mm
	// 90°: 34.17 mm
	// 120°: 48.11 mm
	// 150°: 57.01 mm
	// 180°: 60.00 mm
}

func ExampleCrank_SweepDrops() {
	c, err := geometry.NewCrank(60*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	drops := make([]units.Length, 3)
	c.SweepDrops(drops, 0, 40*units.Degree)
	for _, x := range drops {
		fmt.Printf("%.2f mm\n", x.Millimetres())
	}
	// Output:
	// 0.00 mm
	// 2.29 mm
	// 8.72 mm
}

// Why watching the needle turn back does not find top dead centre.
func ExampleCrank_DwellAtTop() {
	c, err := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	still, err := c.DwellAtTop(0.01 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	out, err := c.AnglePer(0.01*units.Millimetre, 25*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("within 0.01 mm of the top for %.1f° of crank\n", still.Degrees())
	fmt.Printf("25° out, 0.01 mm is worth %.3f°\n", out.Degrees())
	// Output:
	// within 0.01 mm of the top for 2.3° of crank
	// 25° out, 0.01 mm is worth 0.028°
}

// Khurmi & Gupta, Theory of Machines, Example 15.4, p. 528.
func ExampleTwoTerm() {
	c, err := geometry.NewCrank(600*units.Millimetre, 1500*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	series, err := c.TwoTerm()
	if err != nil {
		fmt.Println(err)
		return
	}
	theta, speed := 40*units.Degree, 180*units.RevolutionPerMinute
	fmt.Printf("two terms %.2f m/s, exact %.2f m/s\n",
		series.Velocity(theta, speed).MetresPerSecond(), c.Velocity(theta, speed).MetresPerSecond())
	fmt.Printf("the drop is short by %.3f mm\n", series.Shortfall(theta).Millimetres())
	// Output:
	// two terms 4.19 m/s, exact 4.20 m/s
	// the drop is short by 0.052 mm
}

// A card gives 7/16 in before top dead centre and the stroke is 112 mm; nobody has
// measured the rod.
func ExampleStrokeOnly() {
	s, err := geometry.NewStrokeOnly(112*units.Millimetre, geometry.UsualRods())
	if err != nil {
		fmt.Println(err)
		return
	}
	angle, err := s.AngleAtDrop(7.0 / 16 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f° to %.1f°\n", angle.Least.Degrees(), angle.Most.Degrees())
	// Output: 32.5° to 33.4°
}

func ExampleNewStrokeOnly() {
	s, err := geometry.NewStrokeOnly(112*units.Millimetre, geometry.RodRange{Least: 4, Most: 5})
	if err != nil {
		fmt.Println(err)
		return
	}
	drop := s.Drop(30 * units.Degree)
	fmt.Printf("%.2f mm to %.2f mm\n", drop.Least.Millimetres(), drop.Most.Millimetres())
	// Output: 8.91 mm to 9.26 mm
}

func ExampleSpread() {
	s, err := geometry.NewStrokeOnly(112*units.Millimetre, geometry.UsualRods())
	if err != nil {
		fmt.Println(err)
		return
	}
	angle, err := s.AngleAtDrop(7.0 / 16 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	r := angle.Reading() // for an uncertainty budget
	fmt.Printf("%.2f°, standard uncertainty %.2f°\n", r.Value.Degrees(), r.Std.Degrees())
	// Output: 32.94°, standard uncertainty 0.24°
}

func ExampleRodRange() {
	short := geometry.RodRange{Least: 3, Most: 3.5}
	s, err := geometry.NewStrokeOnly(60*units.Millimetre, short)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", s.Drop(30*units.Degree).Middle.Millimetres())
	// Output: 5.18 mm
}

func ExampleUsualRods() {
	r := geometry.UsualRods()
	fmt.Printf("%.1f to %.1f throws\n", r.Least, r.Most)
	// Output: 3.5 to 4.5 throws
}

func ExampleRodOverPins() {
	rod, err := geometry.RodOverPins{
		Over:       6.624 * units.Inch,
		GudgeonPin: 0.6245 * units.Inch,
		Crankpin:   1.1245 * units.Inch,
	}.Centres()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm between centres\n", rod.Millimetres())
	// Output: 146.04 mm between centres
}
