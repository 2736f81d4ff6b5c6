package ignition_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A quarter of an inch on a stroke of 3 1/2 in with a rod of 7 in.
func ExampleAdvanceOfDrop() {
	crank, err := geometry.NewCrank(3.5*units.Inch, 7*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	advance, err := ignition.AdvanceOfDrop(crank, units.Inch/4)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f° before top dead centre\n", advance.Degrees())
	// Output: 27.82° before top dead centre
}

// A tenth of the stroke.
func ExampleAdvanceOfShare() {
	crank, err := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	advance, err := ignition.AdvanceOfShare(crank, 10*units.Percent)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f° before top dead centre\n", advance.Degrees())
	// Output: 33.12° before top dead centre
}

// The card of the demonstration engine, which is invented: 3/16 in before the
// top, in every form.
func ExampleBench() {
	crank, err := geometry.NewCrank(76.15*units.Millimetre, 146.02*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	rim, err := ignition.NewRimOfGirth(1118.33 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	bench := ignition.Bench{Rim: rim, Lean: 12 * units.Degree, Speed: 900 * units.RevolutionPerMinute}
	advance, err := ignition.AdvanceOfDrop(crank, 3*units.Inch/16)
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := bench.Forms(crank, advance)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("crank   %.2f° before top dead centre\n", f.Crank.Degrees())
	fmt.Printf("piston  %.2f mm, %v, %.1f %% of the stroke\n", f.Drop.Millimetres(), f.Card(), f.Share.Percent())
	fmt.Printf("gauge   %.2f mm in the leaning hole\n", f.Gauge.Millimetres())
	fmt.Printf("rim     %.1f mm along it, %.1f mm straight across, ahead of top dead centre\n", f.Arc.Millimetres(), f.Chord.Millimetres())
	fmt.Printf("time    %.2f ms\n", f.Time.Seconds()*1e3)
	// Output:
	// crank   25.87° before top dead centre
	// piston  4.76 mm, 3/16 in, 6.3 % of the stroke
	// gauge   4.87 mm in the leaning hole
	// rim     80.4 mm along it, 79.7 mm straight across, ahead of top dead centre
	// time    4.79 ms
}

func ExampleForms() {
	crank, err := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	rim, err := ignition.NewRim(300 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := ignition.Bench{Rim: rim}.Forms(crank, 25*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f)
	// Output: 25.0° before top dead centre: piston 4.64 mm (3/16 in - 4.7 thou, 5.8 % of the stroke) down, gauge 4.64 mm; mark 65.4 mm round the rim or 64.9 mm straight across ahead of the top dead centre mark
}

// 7/16 in on a stroke of 112 mm, and no rod length anywhere.
func ExampleFormsSpread() {
	stroke, err := geometry.NewStrokeOnly(112*units.Millimetre, geometry.UsualRods())
	if err != nil {
		fmt.Println(err)
		return
	}
	rim, err := ignition.NewRim(400 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := ignition.Bench{Rim: rim}.SpreadOfDrop(stroke, 7*units.Inch/16)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f° to %.1f°, %.1f mm to %.1f mm of rim\n",
		f.Least.Crank.Degrees(), f.Most.Crank.Degrees(), f.Least.Arc.Millimetres(), f.Most.Arc.Millimetres())
	// Output: 32.5° to 33.4°, 113.5 mm to 116.4 mm of rim
}

func ExampleNewValveTiming() {
	v, err := ignition.NewValveTiming(ignition.ValveTiming{
		Lift:       1 * units.Millimetre,
		InletOpens: 10 * units.Degree, InletCloses: 50 * units.Degree,
		ExhaustOpens: 50 * units.Degree, ExhaustCloses: 15 * units.Degree,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("inlet open %.0f°, exhaust %.0f°, both %.0f°\n", v.InletDuration().Degrees(), v.ExhaustDuration().Degrees(), v.Overlap().Degrees())
	// Output: inlet open 240°, exhaust 245°, both 25°
}

// The ratio from where the inlet closes.
func ExampleValveTiming() {
	crank, err := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	cylinder, err := geometry.NewCylinder(70*units.Millimetre, crank)
	if err != nil {
		fmt.Println(err)
		return
	}
	v, err := ignition.NewValveTiming(ignition.ValveTiming{InletCloses: 50 * units.Degree, ExhaustOpens: 50 * units.Degree})
	if err != nil {
		fmt.Println(err)
		return
	}
	ratio, err := v.Compression(cylinder, 61.6*units.Millilitre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(ratio)
	// Output: geometric 6.00:1, trapped 5.29:1
}

// Rim figures of the four events at 1 mm lift, top dead centre at 174 mm.
func ExampleValveMarks() {
	scale, err := demo.Scale()
	if err != nil {
		fmt.Println(err)
		return
	}
	v, err := scale.ValveTiming(ignition.ValveMarks{
		Lift:       1 * units.Millimetre,
		InletOpens: 143 * units.Millimetre, InletCloses: 888 * units.Millimetre,
		ExhaustOpens: 578 * units.Millimetre, ExhaustCloses: 221 * units.Millimetre,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("inlet opens %.0f° before top, closes %.0f° after bottom; overlap %.0f°\n",
		v.InletOpens.Degrees(), v.InletCloses.Degrees(), v.Overlap().Degrees())
	// Output: inlet opens 10° before top, closes 50° after bottom; overlap 25°
}

func ExampleAsk() {
	q, err := ignition.Ask(units.WithStd(26*units.Degree, 0.3*units.Degree), ignition.SmallTwoStroke, ignition.AtSpeed, 900*units.RevolutionPerMinute)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(q)
	// Output: 26.0° before top dead centre at speed: what was found for a small two-stroke at speed (2 rows) runs from 17.0° before top dead centre to 28.0° before top dead centre, and this lies inside. Does the maker's plate or card say so too? At 900 rev/min it is 4.8 ms before the top.
}

func ExampleQuestion() {
	q, err := ignition.Ask(units.Exact(52*units.Degree), ignition.FarmEngine, ignition.AtSpeed, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(q.Lies, "what these say:")
	for _, row := range q.Rows {
		fmt.Println("-", row.Source)
	}
	// Output:
	// above what these say:
	// - Hercules Engine News (G. Karch), Gas Engine Magazine, April 1999
	// - maker's literature in Hercules Engine News (G. Karch), Gas Engine Magazine, February 1995
	// - maker's literature in Hercules Engine News (G. Karch), Gas Engine Magazine, February 1995
}

func ExamplePracticeTable() {
	p := ignition.PracticeTable()[3]
	fmt.Printf("%s: %.0f° (%s)\n", p.Engine, p.Most.Degrees(), p.Source)
	// Output: J.A.P. small industrial, Wico A magneto: 25° (J.A.P. service instructions, p. 18)
}

// A timing printed as a drop alone stands for the spread of usual rods.
func ExamplePractice() {
	for _, p := range ignition.PracticeTable() {
		if p.Kind != ignition.SideValve {
			continue
		}
		least, most, ok := p.Advance()
		fmt.Printf("%s: %.1f° to %.1f° %v\n", p.Engine, least.Degrees(), most.Degrees(), ok)
	}
	// Output: BSA M20, 500 cc, 1937-55, full advance 7/16 in: 32.5° to 33.4° true
}

func ExamplePublishedAdvance() {
	least, most := ignition.PublishedAdvance()
	fmt.Printf("%.0f° to %.0f° before top dead centre\n", least.Degrees(), most.Degrees())
	// Output: 0° to 40° before top dead centre
}

func ExampleKind() {
	var k ignition.Kind
	if err := k.UnmarshalText([]byte("small two-stroke")); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(k == ignition.SmallTwoStroke)
	// Output: true
}

func ExampleRunning() {
	fmt.Println(ignition.AtSpeed, "/", ignition.AtStart, "/", ignition.ShowIdle)
	// Output: at speed / in starting / turning slowly for show
}
