package fits_test

import (
	"errors"
	"fmt"

	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

func ExampleLimits() {
	hole, err := fits.Limits(25*units.Millimetre, "H7")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(hole)
	fmt.Printf("EI %.0f µm, ES %.0f µm\n", hole.Lower.Micrometres(), hole.Upper.Micrometres())
	// Output:
	// 25 mm H7 (+0.021/0): 25.000 mm to 25.021 mm, 0.98425 in to 0.98508 in
	// EI 0 µm, ES 21 µm
}

func ExampleLimits_undefined() {
	_, err := fits.Limits(20*units.Millimetre, "T7")
	fmt.Println(err)
	// Output: T7 at 20 mm is not defined: T and t start over 24 mm; up to there U and u stand in
}

func ExampleGrade() {
	it7, err := fits.Grade(25*units.Millimetre, "IT7")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f µm\n", it7.Micrometres())
	// Output: 21 µm
}

func ExampleFit() {
	m, err := fits.Fit(25*units.Millimetre, "H7/g6")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m)
	// Output: 25 mm H7/g6, clearance fit, clearance 7 µm to 41 µm
}

func ExampleMating() {
	m, err := fits.Fit(25*units.Millimetre, "H7/k6")
	if err != nil {
		fmt.Println(err)
		return
	}
	normal, err := m.InterferingIfNormal(3)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v fit: %.0f %% of pairs interfere if sizes are spread evenly, %.0f %% if normally\n",
		m.Kind(), 100*m.InterferingIfUniform(), 100*normal)
	// Output: transition fit: 40 % of pairs interfere if sizes are spread evenly, 31 % if normally
}

func ExampleKind() {
	for _, size := range []units.Length{3 * units.Millimetre, 25 * units.Millimetre} {
		m, err := fits.Fit(size, "H7/p6")
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("H7/p6 at %v: %v\n", size, m.Kind())
	}
	// Output:
	// H7/p6 at 3 mm: transition
	// H7/p6 at 25 mm: interference
}

func ExampleSize() {
	shaft, err := fits.Limits(1*units.Inch, "g6")
	if err != nil {
		fmt.Println(err)
		return
	}
	least, most, err := shaft.Rounded(0.0001 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("go %.4f mm, no go %.4f mm\n", shaft.Go().Millimetres(), shaft.NoGo().Millimetres())
	fmt.Printf("turn to %.4f in to %.4f in\n", least.Inches(), most.Inches())
	// Output:
	// go 25.3930 mm, no go 25.3800 mm
	// turn to 0.9993 in to 0.9997 in
}

func ExampleVerdict() {
	bore, err := fits.Limits(25*units.Millimetre, "H7")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, size := range []units.Length{25.010 * units.Millimetre, 25.019 * units.Millimetre, 25.030 * units.Millimetre} {
		v, err := bore.Judge(units.WithStd(size, 2*units.Micrometre))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.3f mm %v\n", size.Millimetres(), v)
	}
	// Output:
	// 25.010 mm conforms
	// 25.019 mm doubtful
	// 25.030 mm fails
}

func ExampleClass() {
	var c fits.Class
	if err := c.UnmarshalText([]byte("js13")); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(c.Letters(), c.GradeName(), "hole:", c.IsHole())
	// Output: js IT13 hole: false
}

func ExampleParseClass() {
	_, err := fits.ParseClass("Js7")
	fmt.Println(err)
	// Output: "Js7": write both letters alike, capitals for a hole and small for a shaft: JS7, js7 (character 1)
}

func ExampleParseFit() {
	hole, shaft, err := fits.ParseFit("H8-f7")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(hole, shaft)
	// Output: H8 f7
}

func ExampleParseCallout() {
	for _, text := range []string{"25H7", "Ø25 H7/g6", "1 3/16 in H7", "25e8"} {
		c, err := fits.ParseCallout(text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(c)
	}
	// Output:
	// 25 mm H7
	// 25 mm H7/g6
	// 30.1625 mm H7
	// 25 mm e8
}

func ExampleCallout() {
	c, err := fits.ParseCallout("40 H7/p6")
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := c.Fit()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m)
	// Output: 40 mm H7/p6, interference fit, clearance -42 µm to -1 µm
}

func ExampleSystem() {
	whole := fits.System{WholeJS: true} // drawings of 1988 and before
	isa := fits.System{ISA: true}       // drawings from before ISO
	js7, err := whole.Limits(25*units.Millimetre, "JS7")
	if err != nil {
		fmt.Println(err)
		return
	}
	g6, err := isa.Limits(2*units.Millimetre, "g6")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("25 JS7: ±%.0f µm\n", js7.Upper.Micrometres())
	fmt.Printf("2 g6: %.0f µm, %.0f µm\n", g6.Lower.Micrometres(), g6.Upper.Micrometres())
	// Output:
	// 25 JS7: ±10 µm
	// 2 g6: -10 µm, -3 µm
}

func ExampleUndefinedError() {
	_, err := fits.Limits(600*units.Millimetre, "c11")
	var undefined *fits.UndefinedError
	if errors.As(err, &undefined) {
		fmt.Println(undefined.What, "-", undefined.Why)
	}
	// Output: c11 - A, B, C, a, b and c stop at 500 mm
}

func ExampleClearance() {
	c := fits.Clearance{Min: -12 * units.Micrometre, Max: 9 * units.Micrometre}
	fmt.Printf("%v fit, %.1f µm in the middle, %.0f µm wide\n", c.Kind(), c.Mean().Micrometres(), c.Spread().Micrometres())
	// Output: transition fit, -1.5 µm in the middle, 21 µm wide
}

func ExamplePreferred() {
	for _, p := range fits.PreferredFits(fits.BS4500A)[:3] {
		fmt.Printf("%v %v: %s\n", p, p.Kind, p.Use)
	}
	// Output:
	// H11/c11 clearance: loose running: wide commercial tolerances on parts that need not be held well
	// H9/d10 clearance: free running: great changes of temperature, high speed or heavy journal load; not for accurate work
	// H9/e9 clearance: easy running: shafts in several bearings or long ones
}

func ExamplePreferredFits() {
	list := fits.PreferredFits(fits.ANSIB42)
	fmt.Println(len(list), "fits, from", list[0], "to", list[len(list)-1])
	// Output: 20 fits, from H11/c11 to U7/h6
}

func ExampleFitList() {
	fmt.Println(fits.ISOHoleBasis)
	// Output: ISO 286-1:2010, Figure 12, hole basis
}

func ExampleFirstChoiceHoles() {
	fmt.Println(fits.FirstChoiceHoles()[:4])
	// Output: [H7 H8 H9 H11]
}

func ExampleFirstChoiceShafts() {
	fmt.Println(fits.FirstChoiceShafts()[:4])
	// Output: [h6 h7 h9 h11]
}

func ExampleUse() {
	hole, shaft, err := fits.ParseFit("H7/g6")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(fits.Use(hole, shaft))
	// Output: sliding: turns and moves freely and locates accurately, but is not meant to run
}

func ExampleChoose() {
	want := fits.Clearance{Min: 15 * units.Micrometre, Max: 80 * units.Micrometre}
	choices, err := fits.Choose(25*units.Millimetre, want)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(choices[0].Mating)
	// Output: 25 mm H8/f7, clearance fit, clearance 20 µm to 74 µm
}

func ExampleChooseAny() {
	choices, err := fits.ChooseAny(25*units.Millimetre, fits.Clearance{Min: 6 * units.Micrometre, Max: 30 * units.Micrometre})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(choices[0].Mating)
	// Output: 25 mm H6/g5, clearance fit, clearance 7 µm to 29 µm
}

func ExampleChoice() {
	choices, err := fits.Choose(25*units.Millimetre, fits.Clearance{Min: 30 * units.Micrometre, Max: 40 * units.Micrometre})
	if err != nil {
		fmt.Println(err)
		return
	}
	c := choices[0]
	fmt.Printf("nearest is %v, %.0f µm beyond what was wanted\n", c, c.Beyond.Micrometres())
	// Output: nearest is H6/g5, 23 µm beyond what was wanted
}
