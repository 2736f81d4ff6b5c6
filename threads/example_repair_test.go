package threads_test

import (
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// How much is left of a 3/8 BSF hole that measures 0.344 in across its crests.
func ExampleThread_Engagement() {
	th, err := threads.Find("3/8 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	e, err := th.Engagement(0.344*units.Inch, threads.BasicThread)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f %%\n", 100*e)
	// Output: 48 %
}

// What to do about it, with a quarter of an inch of metal beside the bore.
func ExampleRepairs() {
	th, err := threads.Find("3/8 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	hole := threads.WornHole{Bore: 0.344 * units.Inch, Deep: 0.8 * units.Inch, ToEdge: 0.25 * units.Inch}
	repairs, err := threads.Repairs(th, hole)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range repairs {
		fmt.Printf("%v; %.0f %% of it in sound metal, %.1f mm to the edge\n", r, 100*r.Sound, r.ToEdge.Millimetres())
	}
	// Output:
	// stepped stud: tap 7/16-18 BSF; 88 % of it in sound metal, 5.2 mm to the edge
	// wire insert: tap 11.1514 mm x 1.27 mm Whitworth; 100 % of it in sound metal, 5.1 mm to the edge
	// stepped stud: tap 1/2-16 BSF; 100 % of it in sound metal, 4.4 mm to the edge
	// stepped stud: tap 9/16-16 BSF; 100 % of it in sound metal, 3.6 mm to the edge
	// screwed bush: tap 5/8-14 BSF; 100 % of it in sound metal, 2.8 mm to the edge
}

func ExampleWornHole() {
	th, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = threads.Repairs(th, threads.WornHole{Bore: 7.3 * units.Millimetre, Deep: -1})
	fmt.Println(err)
	// Output: length of thread -1000 mm: want 0 mm or more: outside the domain
}

// What the torn hole would bear at best, of steel in aluminium. If the stud still
// pulls out, the metal is not sound, and no sum will mend it.
func ExampleWornHole_Joint() {
	th, err := threads.Find("3/8 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	hole := threads.WornHole{Bore: 0.344 * units.Inch, Deep: 0.8 * units.Inch}
	j, err := hole.Joint(th, 0.3712*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	loads, err := j.Loads(hole.Deep, 400*units.Megapascal, 160*units.Megapascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("stud breaks at %.0f kN, sound aluminium strips at %.0f kN\n", loads.Breaks.Newtons()/1000, loads.NutStrips.Newtons()/1000)
	// Output: stud breaks at 22 kN, sound aluminium strips at 38 kN
}

func ExampleRepair() {
	th, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	repairs, err := threads.Repairs(th, threads.WornHole{Bore: 7.3 * units.Millimetre})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range repairs {
		if r.Kind == threads.SteppedStud {
			drills, err := threads.TappingDrills(r.Thread, 0.75, threads.BoltThread, threads.Drills(threads.MetricDrill)...)
			if err != nil {
				fmt.Println(err)
				return
			}
			fmt.Printf("%v, drill %v\n", r, drills[0].Drill)
		}
	}
	// Output:
	// stepped stud: tap M9x1.25, drill 7.8 mm
	// stepped stud: tap M10x1.5, drill 8.6 mm
	// stepped stud: tap M11x1.5, drill 9.6 mm
}

func ExampleRepairKind() {
	fmt.Println(threads.SteppedStud, "-", threads.WireInsert, "-", threads.SolidBush)
	// Output: stepped stud - wire insert - screwed bush
}

func ExampleInsertThread() {
	th, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	tap, err := threads.InsertThread(th)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("tap %.3f mm at pitch %.2f mm, in a hole of %.2f mm\n", tap.Major().Millimetres(), tap.Pitch().Millimetres(), tap.Minor().Millimetres())
	// Output: tap 9.624 mm at pitch 1.25 mm, in a hole of 8.27 mm
}

func ExampleEdgeWall() {
	wall := threads.EdgeWall(0.25*units.Inch, 0.344*units.Inch, 0.5*units.Inch)
	fmt.Printf("%.3f in (%.1f mm)\n", wall.Inches(), wall.Millimetres())
	// Output: 0.172 in (4.4 mm)
}

// Has a bush from an old plug hole to an 18 mm plug metal enough?
func ExampleBush() {
	outer, err := threads.Find("7/8-18 plug")
	if err != nil {
		fmt.Println(err)
		return
	}
	inner, err := threads.Find("M18x1.5")
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := threads.NewBush(outer, inner)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("wall %.2f mm, ring %.0f mm² for a stress area of %.0f mm²: %.0f %%\n",
		b.Wall().Millimetres(), b.WallArea().SquareMillimetres(), inner.StressArea().SquareMillimetres(), 100*b.Strength())
	// Output: wall 1.25 mm, ring 75 mm² for a stress area of 216 mm²: 35 %
}

func ExampleNewBush() {
	outer, err := threads.Find("M20x1.5")
	if err != nil {
		fmt.Println(err)
		return
	}
	inner, err := threads.Find("M18x1.5")
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := threads.NewBush(outer, inner)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("wall %.2f mm\n", b.Wall().Millimetres())
	// Output: wall 0.08 mm
}
