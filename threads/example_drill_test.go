package threads_test

import (
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

func ExampleFindDrill() {
	for _, name := range []string{"No 29", "letter F", "5/32", "4.2 mm", "29"} {
		d, err := threads.FindDrill(name)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(d)
	}
	// Output:
	// #29 (3.454 mm)
	// F (6.528 mm)
	// 5/32 in (3.969 mm)
	// 4.2 mm
	// drill "29": write #29 for the number drill or 29 mm for the size: can be read in two ways
}

// What stands on a drill stand between 5 and 5.2 mm.
func ExampleDrills() {
	for _, d := range threads.Drills() {
		if d.Diameter() >= 5*units.Millimetre && d.Diameter() <= 5.2*units.Millimetre {
			fmt.Println(d)
		}
	}
	// Output:
	// 5 mm
	// #8 (5.055 mm)
	// 5.1 mm
	// #7 (5.105 mm)
	// 13/64 in (5.159 mm)
	// #6 (5.182 mm)
	// 5.2 mm
}

func ExampleDrill() {
	d, err := threads.FindDrill("#11")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: %.4f in, %v drill, from memory %v\n", d.Name(), d.Diameter().Inches(), d.Set(), d.FromMemory())
	// Output: #11: 0.1910 in, number drill, from memory true
}

func ExampleDrillSet() {
	for _, set := range []threads.DrillSet{threads.MetricDrill, threads.NumberDrill, threads.LetterDrill, threads.FractionDrill} {
		all := threads.Drills(set)
		fmt.Printf("%v: %d, from %v to %v\n", set, len(all), all[0], all[len(all)-1])
	}
	// Output:
	// metric: 227, from 0.2 mm to 25 mm
	// number: 80, from #80 (0.343 mm) to #1 (5.791 mm)
	// letter: 26, from A (5.944 mm) to Z (10.490 mm)
	// fractional: 96, from 1/64 in (0.397 mm) to 2 in (50.800 mm)
}

// A drill that was reground and cuts a little small.
func ExampleNewDrill() {
	d, err := threads.NewDrill("reground 8.5", 8.46*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	m10, err := threads.Find("M10")
	if err != nil {
		fmt.Println(err)
		return
	}
	e, err := m10.Engagement(d.Diameter(), threads.BoltThread)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v leaves %.0f %%\n", d, 100*e)
	// Output: reground 8.5 (8.460 mm) leaves 84 %
}

// Three quarters of a thread in M6, from the metric drills alone.
func ExampleTappingDrills() {
	m6, err := threads.Find("M6")
	if err != nil {
		fmt.Println(err)
		return
	}
	drills, err := threads.TappingDrills(m6, 0.75, threads.BoltThread, threads.Drills(threads.MetricDrill)...)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range drills[:3] {
		fmt.Printf("%v leaves %.0f %%\n", d.Drill, 100*d.Engagement)
	}
	// Output:
	// 5.1 mm leaves 73 %
	// 5 mm leaves 82 %
	// 5.2 mm leaves 65 %
}

// The drill for 1/4-20 with the percentage that American charts mean.
func ExampleTappingDrill() {
	th, err := threads.Find("1/4-20 UNC")
	if err != nil {
		fmt.Println(err)
		return
	}
	drills, err := threads.TappingDrills(th, 0.75, threads.AmericanThread)
	if err != nil {
		fmt.Println(err)
		return
	}
	best := drills[0] // a TappingDrill
	fmt.Printf("%v: %.1f %%\n", best.Drill, 100*best.Engagement)
	// Output: #7 (5.105 mm): 75.4 %
}

// The same hole by the three bases of percentage.
func ExampleFullThread() {
	m8, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, full := range []threads.FullThread{threads.BasicThread, threads.BoltThread, threads.AmericanThread} {
		e, err := m8.Engagement(6.8*units.Millimetre, full)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.1f %% %v\n", 100*e, full)
	}
	// Output:
	// 88.7 % of the basic overlap
	// 78.2 % of the bolt's depth
	// 73.9 % of 3/4 H
}

func ExampleThread_HoleFor() {
	th, err := threads.Find("2 BA")
	if err != nil {
		fmt.Println(err)
		return
	}
	hole, err := th.HoleFor(0.75, threads.BasicThread)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", hole.Millimetres())
	// Output: 3.97 mm
}

func ExampleDieBlank() {
	th, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	blank, err := threads.DieBlank(th)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("turn to %.2f mm\n", blank.Millimetres())
	// Output: turn to 7.88 mm
}

func ExampleClearanceHole() {
	th, err := threads.Find("2 BA")
	if err != nil {
		fmt.Println(err)
		return
	}
	hole, err := threads.ClearanceHole(th, threads.CloseClearance)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f mm\n", hole.Millimetres())
	// Output: 5.0 mm
}

func ExampleClearanceDrill() {
	th, err := threads.Find("5/16 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	d, err := threads.ClearanceDrill(th, threads.CloseClearance, threads.Drills(threads.FractionDrill)...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(d)
	// Output: 21/64 in (8.334 mm)
}

func ExampleClearanceFit() {
	m8, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, fit := range []threads.ClearanceFit{threads.CloseClearance, threads.MediumClearance, threads.FreeClearance} {
		hole, err := threads.ClearanceHole(m8, fit)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v: %.1f mm\n", fit, hole.Millimetres())
	}
	// Output:
	// close: 8.4 mm
	// medium: 9.0 mm
	// free: 10.0 mm
}
