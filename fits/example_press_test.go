package fits_test

import (
	"fmt"

	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// bushInCase is a bush pressed into an aluminium case.
func bushInCase() (fits.Press, error) {
	alu, err := fits.FindMaterial("cast aluminium", "")
	if err != nil {
		return fits.Press{}, err
	}
	brass, err := fits.FindMaterial("red brass", "")
	if err != nil {
		return fits.Press{}, err
	}
	return fits.NewPress(fits.Joint{
		Diameter: 38.1 * units.Millimetre, Interference: 0.05 * units.Millimetre, Length: 63.5 * units.Millimetre,
		HubOutside: 60 * units.Millimetre, ShaftBore: 28.4 * units.Millimetre, Hub: alu, Shaft: brass,
	})
}

func ExampleNewPress() {
	p, err := bushInCase()
	if err != nil {
		fmt.Println(err)
		return
	}
	push, err := p.Force(0.07)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("pressure %.0f MPa, case %.0f MPa, push %.1f kN\n", p.Pressure().Megapascals(), p.HubHoop().Megapascals(), push.Newtons()/1000)
	for _, c := range fits.PressCautions()[:1] {
		fmt.Println(c)
	}
	// Output:
	// pressure 19 MPa, case 45 MPa, push 10.1 kN
	// Stand out of the line of the press and shield the work: cast iron bursts without warning, and a part that lets go flies.
}

func ExamplePress() {
	p, err := bushInCase()
	if err != nil {
		fmt.Println(err)
		return
	}
	free, err := p.FreedAt()
	if err != nil {
		fmt.Println(err)
		return
	}
	hot, err := p.At(units.Celsius(80))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("at 80 °C %.0f µm are left; it drops out at %.0f °C\n", hot.Joint().Interference.Micrometres(), free.Celsius())
	// Output: at 80 °C 41 µm are left; it drops out at 348 °C
}

func ExampleJoint() {
	steel, err := fits.FindMaterial("steel", "")
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = fits.NewPress(fits.Joint{Diameter: 30 * units.Millimetre, Interference: 1 * units.Millimetre,
		Length: 30 * units.Millimetre, HubOutside: 60 * units.Millimetre, Hub: steel, Shaft: steel})
	fmt.Println(err)
	// Output: interference 1 mm: want more than 0 mm and less than a hundredth of the diameter: outside the domain
}

// How far a bush closes in, and what to ream it to for a journal.
func ExampleReaming() {
	p, err := bushInCase()
	if err != nil {
		fmt.Println(err)
		return
	}
	journal := 28.537 * units.Millimetre
	r, err := p.Ream(journal, fits.Clearance{Min: 25 * units.Micrometre, Max: 40 * units.Micrometre})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("closes by %.3f mm to %.3f mm; ream to %.3f mm to %.3f mm\n",
		p.ClosingIn().Millimetres(), r.Before.Millimetres(), r.Min.Millimetres(), r.Max.Millimetres())
	// Output: closes by 0.024 mm to 28.376 mm; ream to 28.562 mm to 28.577 mm
}

func ExampleSmoothingLoss2001() {
	loss, err := fits.SmoothingLoss2001(6*units.Micrometre, 4*units.Micrometre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f µm of the interference go\n", loss.Micrometres())
	// Output: 8 µm of the interference go
}

func ExampleSmoothingLoss2017() {
	loss, err := fits.SmoothingLoss2017(6*units.Micrometre, 4*units.Micrometre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f µm of the interference go\n", loss.Micrometres())
	// Output: 4 µm of the interference go
}

func ExampleTyreAllowance() {
	a, err := fits.TyreAllowance(44 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f in\n", a.Inches())
	// Output: 0.047 in
}

func ExamplePressAllowance() {
	a, err := fits.PressAllowance(1.5 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f to %.2f thou of interference\n", -a.Max.Thou(), -a.Min.Thou())
	// Output: 1.50 to 3.75 thou of interference
}

func ExampleShrinkAllowance() {
	a, err := fits.ShrinkAllowance(4 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f thou\n", a.Thou())
	// Output: 4 thou
}

func ExamplePressCautions() {
	fmt.Println(fits.PressCautions()[1])
	// Output: Wear eye protection. Never strike hardened parts together or with a hard hammer: chips fly.
}

func ExampleMaterial() {
	m, err := fits.FindMaterial("grey cast iron", "all grades")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("E %.0f to %.0f GPa\n", m.Modulus.Gigapascals(), m.ModulusMost.Gigapascals())
	// Output: E 62 to 159 GPa
}

func ExampleMaterials() {
	n := 0
	for _, m := range fits.Materials() {
		if m.Name == "cast aluminium" {
			n++
		}
	}
	fmt.Println(n, "rows of cast aluminium")
	// Output: 6 rows of cast aluminium
}

func ExampleFindMaterial() {
	m, err := fits.FindMaterial("steel", "")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v: E %.0f GPa, ν %.2f, α %.1f µm/m/K\n", m, m.Modulus.Gigapascals(), m.Poisson, m.Expansion.MicrometresPerMetreKelvin())
	// Output: steel (A36): E 200 GPa, ν 0.29, α 11.7 µm/m/K
}

func ExampleFriction() {
	for _, f := range fits.Frictions() {
		if f.Pair == "steel on cast iron" {
			fmt.Printf("%s: %.2f\n", f.Condition, f.Low)
		}
	}
	// Output:
	// oil injected, mineral oil: 0.10
	// oil injected, degreased: 0.16
}

func ExampleFrictions() {
	f := fits.Frictions()[0]
	fmt.Printf("%s, %s: %.2f (%s)\n", f.Pair, f.Condition, f.Low, f.Source)
	// Output: steel on steel, oil injected, mineral oil: 0.12 (DIN 7190-1:2017, 5.3, by a secondary source)
}

func ExampleShrunkAgainstPressed() {
	along, round := fits.ShrunkAgainstPressed()
	fmt.Printf("in an old test a shrunk joint held %.2f times as much along and %.1f times round\n", along, round)
	// Output: in an old test a shrunk joint held 3.66 times as much along and 3.2 times round
}
