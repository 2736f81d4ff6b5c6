package springs_test

import (
	"fmt"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// The limit of the table and the textbook's fit are not the same thing.
func ExampleMaterial_Strength() {
	d := 2.5 * units.Millimetre
	s, err := springs.MusicWireA228.Material().Strength(d)
	if err != nil {
		fmt.Println(err)
		return
	}
	fit, err := springs.FittedStrength(springs.MusicWireA228, d)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("at least %.0f MPa; the fit says %.0f MPa\n", s.Least.Megapascals(), fit.Megapascals())
	// Output: at least 1868 MPa; the fit says 1936 MPa
}

func ExampleStrength() {
	s, err := springs.StripC67STypical.Material().Strength(0.6 * units.Millimetre)
	fmt.Println(s, err)
	// Output: 1490 MPa to 1650 MPa <nil>
}

func ExampleFittedStrength() {
	s, err := springs.FittedStrength(springs.PatentedSM, 2*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MPa\n", s.Megapascals())
	// Output: 1757 MPa
}

func ExampleFittedStrengthInch() {
	s, err := springs.FittedStrengthInch(springs.MusicWireA228, 0.072*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kpsi\n", s.KilopoundsPerSquareInch())
	// Output: 294.4 kpsi
}

func ExampleNewMaterial() {
	m, err := springs.NewMaterial(springs.MaterialSpec{
		Name: "piano wire from the old stock", YoungsModulus: 205 * units.Gigapascal, ShearModulus: 80 * units.Gigapascal,
		LeastStrength: 1900 * units.Megapascal, Source: "pulled until it broke, three times", Like: springs.MusicWireA228,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	a, err := m.Allowable(springs.SteadyBending, 1*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MPa, %.0f %% of what was %s\n", a.Stress.Megapascals(), 100*a.Share, a.Strength.Source)
	// Output: 1482 MPa, 78 % of what was pulled until it broke, three times
}

func ExampleMaterialSpec() {
	_, err := springs.NewMaterial(springs.MaterialSpec{Name: "mystery"})
	fmt.Println(err)
	// Output: material "mystery": want Young's modulus or the shear modulus, above 0: outside the domain
}

func ExampleMaterial() {
	m := springs.MusicWireA228.Material()
	e, err := m.YoungsModulus(2 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v, %v: %v\n", m, m.Family(), e)
	// Output: music wire A228, patented or hard drawn steel: 196500 MPa
}

func ExampleAllowable() {
	a, err := springs.MusicWireA228.Material().Allowable(springs.Bending1000000, 1.42*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f MPa: %.0f %% of %.0f MPa, %s\n", a.Stress.Megapascals(), 100*a.Share, a.Strength.Least.Megapascals(), a.Source)
	// Output: 1020 MPa: 50 % of 2041 MPa, Shigley, Table 10-10 (from memory)
}

func ExampleDuty() {
	share, source, err := springs.StainlessNS.Material().Share(springs.SteadyBending)
	fmt.Printf("%v: %.0f %%, %s %v\n", springs.SteadyBending, 100*share, source, err)
	// Output: steady bending: 61 %, Shigley, sec. 10-12 (from memory) <nil>
}

func ExampleGrades() {
	fmt.Printf("%d grades, the first is %v\n", len(springs.Grades()), springs.Grades()[0])
	// Output: 24 grades, the first is music wire A228
}

func ExampleGrade() {
	fmt.Println(springs.PatentedSM)
	// Output: patented EN 10270-1 SM
}

func ExampleFindGrade() {
	g, err := springs.FindGrade("strip C67S")
	fmt.Println(g == springs.StripC67S, err)
	// Output: true <nil>
}

func ExampleFamily() {
	fmt.Println(springs.StainlessNS.Material().Family())
	// Output: austenitic stainless steel
}

func ExampleWireTolerance() {
	t, err := springs.WireTolerance(1.4 * units.Millimetre)
	fmt.Println(t, err)
	// Output: 0.02 mm <nil>
}

func ExampleStripLimits() {
	s, err := springs.StripLimits("1070", "+QT")
	fmt.Println(s.Steel, s.Least, s.Most, err)
	// Output: C67S 1200 MPa 1900 MPa <nil>
}

func ExampleStripState() {
	s, err := springs.StripLimits("C75S", "+A")
	fmt.Printf("soft: %v at most, %.0f HV %v\n", s.Most, s.MostHardness, err)
	// Output: soft: 640 MPa at most, 200 HV <nil>
}

func ExampleStripHardness() {
	least, most, err := springs.StripHardness(0.6 * units.Millimetre)
	fmt.Printf("%.0f to %.0f HV %v\n", least, most, err)
	// Output: 465 to 515 HV <nil>
}

// What a torch does to a 1095 spring that was tempered at 316 °C.
func ExampleTemperedStrength() {
	for _, c := range []float64{316, 427, 593} {
		s, hrc, err := springs.TemperedStrength("1095", units.Celsius(c))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.0f °C: %.0f MPa, %.0f HRC\n", c, s.Megapascals(), hrc)
	}
	// Output:
	// 316 °C: 1860 MPa, 55 HRC
	// 427 °C: 1461 MPa, 45 HRC
	// 593 °C: 1070 MPa, 34 HRC
}

func ExampleStripTolerance() {
	t, err := springs.StripTolerance(0.1*units.Millimetre, "B")
	fmt.Println(t, err)
	// Output: 0.006 mm <nil>
}

func ExampleWireGauge() {
	number, over, err := springs.StandardWireGauge.Nearest(1.63 * units.Millimetre)
	fmt.Printf("%s SWG, %.4f mm over %v\n", number, over.Millimetres(), err)
	// Output: 16 SWG, 0.0044 mm over <nil>
}

func ExampleWireGauge_Diameter() {
	for _, g := range []springs.WireGauge{springs.StandardWireGauge, springs.MusicWireGauge} {
		d, err := g.Diameter("16")
		fmt.Printf("%v 16: %.3f mm %v\n", g, d.Millimetres(), err)
	}
	// Output:
	// SWG 16: 1.626 mm <nil>
	// music wire gauge 16: 0.940 mm <nil>
}

func ExampleListedSizes() {
	sizes := springs.ListedSizes()
	fmt.Println(sizes[0], "to", sizes[len(sizes)-1])
	// Output: 0.3 mm to 20 mm
}
