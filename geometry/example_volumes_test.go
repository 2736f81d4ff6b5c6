package geometry_test

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// Gupta, Fundamentals of Internal Combustion Engines, Example 16.1, p. 519: six
// cylinders of three litres together, bore and stroke the same, ratio 9.
func ExampleCylinder() {
	bore, err := geometry.BoreOfSwept(500*units.CubicCentimetre, 1)
	if err != nil {
		fmt.Println(err)
		return
	}
	crank, err := geometry.NewCrank(bore, 17.2*units.Centimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := geometry.NewCylinder(bore, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	clearance, err := c.ClearanceForRatio(9)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("clearance %.1f cm³\n", clearance.CubicCentimetres())
	fmt.Printf("20° past the top %.2f cm³\n", c.VolumeAt(20*units.Degree, clearance).CubicCentimetres())
	// Output:
	// clearance 62.5 cm³
	// 20° past the top 81.24 cm³
}

func ExampleNewCylinder() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := geometry.NewCylinder(70*units.Millimetre, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("swept %.1f cm³\n", c.Swept().CubicCentimetres())
	// Output: swept 292.5 cm³
}

// Rajput, A Textbook of Internal Combustion Engines, Example 20.2, p. 750.
func ExampleBoreOfSwept() {
	bore, err := geometry.BoreOfSwept(units.CubicMetre/300, 1.5)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", bore.Millimetres())
	// Output: 141.44 mm
}

// Kates, Diesel and High Compression Gas Engines, ch. 4 Example 1, p. 61.
func ExampleCircle() {
	fmt.Printf("%.2f in²\n", geometry.Circle(3*units.Inch).SquareInches())
	// Output: 7.07 in²
}

func ExampleCylinder_Compression() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := geometry.NewCylinder(70*units.Millimetre, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	ratios, err := c.Compression(58*units.CubicCentimetre, 60*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(ratios)
	// Output: geometric 6.04:1, trapped 4.98:1
}

// Which reading to take better: the budget says.
func ExampleCylinder_Compression_uncertainty() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	bore, clearance := 70*units.Millimetre, 58*units.CubicCentimetre
	ratio := func() units.Ratio {
		c, err := geometry.NewCylinder(bore, crank)
		if err != nil {
			return units.Ratio(math.NaN())
		}
		both, err := c.Compression(clearance, crank.Stroke())
		if err != nil {
			return units.Ratio(math.NaN())
		}
		return both.Geometric
	}
	res, err := units.Propagate(ratio,
		units.Vary("bore", &bore, 0.02*units.Millimetre),
		units.Vary("clearance", &clearance, 0.4*units.CubicCentimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f:1, standard uncertainty %.2f\n", float64(res.Value), float64(res.Std))
	for _, b := range res.Budget {
		fmt.Printf("%s %.0f %%\n", b.Name, 100*b.Share)
	}
	// Output:
	// 6.04:1, standard uncertainty 0.03
	// bore 1 %
	// clearance 99 %
}

func ExampleCompression() {
	c := geometry.Compression{Geometric: 6.5, Trapped: 5.1}
	fmt.Println(c)
	// Output: geometric 6.50:1, trapped 5.10:1
}

func ExampleCylinder_Skim() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := geometry.NewCylinder(70*units.Millimetre, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, wanted := range []units.Ratio{6.5, 5.5} {
		cut, err := c.Skim(58*units.CubicCentimetre, wanted, c.PistonArea())
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("for %.1f:1 %+.2f mm\n", float64(wanted), cut.Millimetres())
	}
	// Output:
	// for 6.5:1 +1.25 mm
	// for 5.5:1 -1.82 mm
}

// Bhatt & Mehta, Elements of Mechanical Engineering, Example 6.13, p. 28: with the
// swept volume, 0.00111 m³.
func ExampleClearanceForRatio() {
	swept := 942.5 * units.CubicCentimetre
	clearance, err := geometry.ClearanceForRatio(swept, 6.5)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.5f m³ in all\n", (swept + clearance).CubicMetres())
	// Output: 0.00111 m³ in all
}

// Gupta, Fundamentals of Internal Combustion Engines, Example 2.4, p. 48: ratio
// 16, cut-off at 8 % of the stroke.
func ExampleVolumeRatioAt() {
	r, err := geometry.VolumeRatioAt(8*units.Percent, 16)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f\n", float64(r))
	// Output: 2.2
}

// Gupta, Fundamentals of Internal Combustion Engines, Example 2.2, p. 46.
func ExampleRatioFromPressures() {
	r, err := geometry.RatioFromPressures(
		geometry.IndicatorPoint{Fraction: 5 * units.Percent, Pressure: 1.2 * units.Bar},
		geometry.IndicatorPoint{Fraction: 75 * units.Percent, Pressure: 4.8 * units.Bar},
		1.3)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f:1\n", float64(r))
	// Output: 9.5:1
}

func ExampleIndicatorPoint() {
	p := geometry.IndicatorPoint{Fraction: 75 * units.Percent, Pressure: 4.8 * units.Bar}
	fmt.Printf("%.1f bar after %.0f %% of the stroke\n", p.Pressure.Bars(), p.Fraction.Percent())
	// Output: 4.8 bar after 75 % of the stroke
}

// Three fillings to the brim of the plug hole, each slower than the last, while
// the oil creeps past the rings.
func ExampleFitLeak() {
	leak, err := geometry.FitLeak([]geometry.Fill{
		{After: 45 * time.Second, Run: 61.3 * units.CubicCentimetre},
		{After: 80 * time.Second, Run: 61.9 * units.CubicCentimetre},
		{After: 120 * time.Second, Run: 63.0 * units.CubicCentimetre},
	}, 0.2*units.CubicCentimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("without the leak %.1f cm³, standard uncertainty %.1f cm³\n",
		leak.AtStart.Value.CubicCentimetres(), leak.AtStart.Std.CubicCentimetres())
	fmt.Printf("leak %.1f cm³ a minute\n", leak.Rate.Value.CubicCentimetresPerMinute())
	// Output:
	// without the leak 60.2 cm³, standard uncertainty 0.3 cm³
	// leak 1.4 cm³ a minute
}

func ExampleFill() {
	f := geometry.Fill{After: 45 * time.Second, Run: 61.3 * units.CubicCentimetre}
	fmt.Printf("%.1f cm³ by %v\n", f.Run.CubicCentimetres(), f.After)
	// Output: 61.3 cm³ by 45s
}

func ExampleLeak() {
	fills := []geometry.Fill{
		{After: 40 * time.Second, Run: 61.2 * units.CubicCentimetre},
		{After: 60 * time.Second, Run: 63.4 * units.CubicCentimetre}, // bubbles?
		{After: 80 * time.Second, Run: 61.9 * units.CubicCentimetre},
		{After: 120 * time.Second, Run: 63.3 * units.CubicCentimetre},
	}
	leak, err := geometry.FitLeak(fills, 0.2*units.CubicCentimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, r := range leak.Residuals {
		fmt.Printf("fill %d: %+.1f cm³\n", i+1, r.CubicCentimetres())
	}
	// Output:
	// fill 1: -0.6 cm³
	// fill 2: +1.2 cm³
	// fill 3: -0.6 cm³
	// fill 4: +0.0 cm³
}

// Of five runs the third is a slip: it is named, and the uncertainty grows until
// it is taken again.
func ExampleOddFill() {
	leak, err := geometry.FitLeak([]geometry.Fill{
		{After: 48 * time.Second, Run: 75.6 * units.CubicCentimetre},
		{After: 62 * time.Second, Run: 75.6 * units.CubicCentimetre},
		{After: 90 * time.Second, Run: 85.9 * units.CubicCentimetre},
		{After: 75 * time.Second, Run: 75.9 * units.CubicCentimetre},
		{After: 110 * time.Second, Run: 77.1 * units.CubicCentimetre},
	}, 0.2*units.CubicCentimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	if leak.Odd != nil {
		fmt.Println(leak.Odd)
	}
	fmt.Printf("standard uncertainty at the start %.0f cm³\n", leak.AtStart.Std.CubicCentimetres())
	// Output:
	// fill 3: 9.4 cm³ more than the others have it
	// standard uncertainty at the start 8 cm³
}

func ExampleBuretteClearance() {
	v, err := geometry.BuretteClearance{
		ToBrim:     units.WithStd(60.2*units.CubicCentimetre, 0.3*units.CubicCentimetre),
		PlugHole:   units.WithStd(4.1*units.CubicCentimetre, 0.1*units.CubicCentimetre),
		PlugCavity: units.WithStd(1.0*units.CubicCentimetre, 0.1*units.CubicCentimetre),
	}.Volume()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f cm³, standard uncertainty %.1f cm³\n", v.Value.CubicCentimetres(), v.Std.CubicCentimetres())
	// Output: 57.1 cm³, standard uncertainty 0.3 cm³
}

func ExampleChamber() {
	v, err := geometry.Chamber{
		Head:       48 * units.CubicCentimetre,
		GasketBore: 72 * units.Millimetre,
		Gasket:     1.2 * units.Millimetre,
		Deck:       1.6 * units.Millimetre,
		Dome:       3.5 * units.CubicCentimetre,
	}.Volume(70 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f cm³\n", v.CubicCentimetres())
	// Output: 55.5 cm³
}

// A plug hole, by the effective diameter of its thread.
func ExampleHole() {
	v, err := geometry.Hole{Diameter: 17.03 * units.Millimetre, Depth: 12.5 * units.Millimetre}.Volume()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f cm³\n", v.CubicCentimetres())
	// Output: 2.85 cm³
}

func ExampleSquish() {
	v, err := geometry.Squish{
		Bore: 70 * units.Millimetre,
		Bowl: 46 * units.Millimetre,
		Gap:  1.4 * units.Millimetre, // soft wire, mean of both sides
	}.Volume()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f cm³\n", v.CubicCentimetres())
	// Output: 3.06 cm³
}

// Kates, Diesel and High Compression Gas Engines, ch. 4 Example 3, p. 63: stroke
// 4.5 in, 1600 rev/min. The rod does not enter.
func ExampleCrank_MeanPistonSpeed() {
	c, err := geometry.NewCrank(4.5*units.Inch, 9*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f ft/min\n", c.MeanPistonSpeed(1600*units.RevolutionPerMinute).FeetPerMinute())
	// Output: 1200 ft/min
}

// Gupta, Fundamentals of Internal Combustion Engines, Example 11.3, p. 368.
func ExampleStrokeOfMeanPistonSpeed() {
	stroke, err := geometry.StrokeOfMeanPistonSpeed(9*units.MetrePerSecond, 3000*units.RevolutionPerMinute)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f cm\n", stroke.Centimetres())
	// Output: 9.0 cm
}

func ExampleInletSpeeds() {
	crank, err := geometry.NewCrank(76*units.Millimetre, 146*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := geometry.NewCylinder(70*units.Millimetre, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	v, err := c.InletSpeeds(22*units.Millimetre, 110*units.Degree, 900*units.RevolutionPerMinute)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("over the stroke %.1f m/s\n", v.OverStroke.MetresPerSecond())
	fmt.Printf("over the opening %.1f m/s\n", v.OverOpening.MetresPerSecond())
	// Output:
	// over the stroke 23.1 m/s
	// over the opening 37.8 m/s
}
