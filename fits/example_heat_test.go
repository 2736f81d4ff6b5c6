package fits_test

import (
	"fmt"

	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

func ExampleGrowth() {
	d := fits.Growth(30*units.Millimetre, 22*units.MicrometrePerMetreKelvin, 100*units.KelvinDifference)
	fmt.Printf("%.3f mm\n", d.Millimetres())
	// Output: 0.066 mm
}

func ExampleReferenceTemperature() {
	fmt.Printf("%.0f °C\n", fits.ReferenceTemperature().Celsius())
	// Output: 20 °C
}

// A steel ring with 0.05 mm of interference on a 60 mm shaft.
func ExampleNewPair() {
	alpha := 11.7 * units.MicrometrePerMetreKelvin
	p, err := fits.NewPair(59.95*units.Millimetre, alpha, 60*units.Millimetre, alpha)
	if err != nil {
		fmt.Println(err)
		return
	}
	hot, err := p.HeatHole(units.Celsius(20), 0.06*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("warm the ring to %.0f °C\n", hot.Celsius())
	// Output: warm the ring to 177 °C
}

// A bush of iron in an aluminium case.
func ExamplePair() {
	p, err := fits.NewPair(38.06*units.Millimetre, 22*units.MicrometrePerMetreKelvin, 38.1*units.Millimetre, 11.4*units.MicrometrePerMetreKelvin)
	if err != nil {
		fmt.Println(err)
		return
	}
	free, err := p.FreedAt()
	if err != nil {
		fmt.Println(err)
		return
	}
	warm := units.Celsius(80)
	fmt.Printf("%.0f µm cold, %.0f µm at 80 °C, free at %.0f °C\n",
		p.Clearance().Micrometres(), p.ClearanceAt(warm, warm).Micrometres(), free.Celsius())
	// Output: -40 µm cold, -16 µm at 80 °C, free at 119 °C
}

func ExampleHeatLimit() {
	for _, l := range fits.HeatLimits()[:1] {
		fmt.Printf("%s: %.0f °C (%s)\n", l.What, l.Limit.Celsius(), l.Source)
	}
	// Output: ball bearings and hardened steel: 120 °C (common practice, no source)
}

func ExampleHeatLimits() {
	fmt.Println(len(fits.HeatLimits()), "limits")
	// Output: 4 limits
}

func ExampleChillLimits() {
	for _, l := range fits.ChillLimits() {
		fmt.Printf("%s: %.0f °C\n", l.What, l.Limit.Celsius())
	}
	// Output:
	// household freezer: -18 °C
	// dry ice: -78 °C
}

func ExampleHeatCautions() {
	fmt.Println(fits.HeatCautions()[0])
	// Output: Warm the part evenly in an oven or in clean dry oil, never with a torch on one side, and read a contact thermometer on the part.
}

// A cast-iron piston in a water-cooled bore of cast iron.
func ExampleNewHotBore() {
	iron := 11.4 * units.MicrometrePerMetreKelvin
	h, err := fits.NewHotBore(fits.Warmth{
		Bore: 73 * units.Millimetre, BoreExpansion: iron, PartExpansion: iron,
		BoreTemperature: units.Celsius(90), PartTemperature: units.Celsius(180),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm cold for 0.030 mm hot\n", h.ColdClearance(0.03*units.Millimetre).Millimetres())
	// Output: 0.105 mm cold for 0.030 mm hot
}

func ExampleHotBore() {
	iron := 11.4 * units.MicrometrePerMetreKelvin
	h, err := fits.NewHotBore(fits.Warmth{
		Bore: 73 * units.Millimetre, BoreExpansion: iron, PartExpansion: iron,
		BoreTemperature: units.Celsius(90), PartTemperature: units.Celsius(160),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("a ring gap of 0.35 mm comes to %.2f mm\n", h.HotGap(0.35*units.Millimetre).Millimetres())
	// Output: a ring gap of 0.35 mm comes to 0.17 mm
}

func ExampleWarmth() {
	_, err := fits.NewHotBore(fits.Warmth{Bore: 73 * units.Millimetre})
	fmt.Println(err)
	// Output: expansions 0 µm/m/K and 0 µm/m/K: want more than 0: outside the domain
}

func ExampleCustom() {
	c := fits.Customs()[3]
	r := c.Clearance(2.876 * units.Inch)
	fmt.Printf("%s: %.1f to %.1f thou (%s)\n", c.What, r.Min.Thou(), r.Max.Thou(), c.Source)
	// Output: cast-iron piston, skirt, in a cast-iron bore: 2.9 to 5.8 thou (common practice, no source)
}

func ExampleCustoms() {
	for _, c := range fits.Customs()[:2] {
		fmt.Printf("%s: %.1f to %.1f thou to the inch\n", c.What, 1000*c.Low, 1000*c.High)
	}
	// Output:
	// journal in a plain bush, splash or oil-mist: 1.0 to 1.5 thou to the inch
	// journal in a plain bush, well oiled and slow: 0.5 to 1.0 thou to the inch
}

func ExampleLeakRatio() {
	times, err := fits.LeakRatio(4*units.Thou, 1.5*units.Thou)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f times as much\n", times)
	// Output: 19 times as much
}

func ExampleEccentricLeak() {
	times, err := fits.EccentricLeak(1)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f times as much with the journal lying on the bush\n", times)
	// Output: 2.5 times as much with the journal lying on the bush
}
