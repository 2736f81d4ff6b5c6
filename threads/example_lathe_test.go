package threads_test

import (
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A metric thread on a lathe with a leadscrew of 8 to the inch and no wheel of
// 127 teeth.
func ExampleLathe() {
	l, err := threads.NewLathe(threads.TPI(8), 20, 20, 25, 30, 35, 38, 40, 45, 50, 55, 60, 63, 65, 70, 75, 80)
	if err != nil {
		fmt.Println(err)
		return
	}
	trains, err := l.Trains(1*units.Millimetre, 0.001)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, tr := range trains[:3] {
		fmt.Printf("%v cuts %.4f mm, %+.1f µm over 25 mm\n", tr, tr.Lead().Millimetres(), tr.ErrorOver(25*units.Millimetre).Micrometres())
	}
	// Output:
	// 63/50 x 20/80 cuts 1.0001 mm, +3.1 µm over 25 mm
	// 30/75 x 63/80 cuts 1.0001 mm, +3.1 µm over 25 mm
	// 65/55 x 20/75 cuts 1.0006 mm, +15.2 µm over 25 mm
}

func ExampleNewLathe() {
	l, err := threads.NewLathe(threads.TPI(8), 20, 40, 50, 60, 65, 127)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, lead := range []units.Length{threads.TPI(26), 1.5 * units.Millimetre} {
		trains, err := l.Trains(lead, 0)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.3f mm: %v\n", lead.Millimetres(), trains[0])
	}
	// Output:
	// 0.977 mm: 20/65
	// 1.500 mm: 60/127
}

func ExampleTrain() {
	l, err := threads.NewLathe(3*units.Millimetre, 20, 25, 30, 40, 50, 55, 60, 65, 100, 127)
	if err != nil {
		fmt.Println(err)
		return
	}
	trains, err := l.Trains(threads.TPI(20), 0) // 1.27 mm on a metric leadscrew
	if err != nil || len(trains) == 0 {
		fmt.Println("none", err)
		return
	}
	tr := trains[0]
	fmt.Println("drivers", tr.Drivers(), "driven", tr.Driven(), "exact", tr.Exact())
	// Output: drivers [127 20] driven [60 100] exact true
}

func ExampleTPI() {
	fmt.Printf("26 to the inch is %.4f mm\n", threads.TPI(26).Millimetres())
	// Output: 26 to the inch is 0.9769 mm
}

// 1/2 in Whitworth with the top slide set over 27°, by a tool with the point
// honed to the form, and by one left sharp.
func ExampleDepthOfCut() {
	th, err := threads.Find("1/2 BSW")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, tip := range []threads.ToolTip{{Radius: 0.29 * units.Millimetre}, {}} {
		depth, err := threads.DepthOfCut(th, tip)
		if err != nil {
			fmt.Println(err)
			return
		}
		feed, err := threads.SlideFeed(depth, 27*units.Degree)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("in by %.2f mm, or along the slide %.2f mm (%.1f thou)\n", depth.Millimetres(), feed.Millimetres(), feed.Thou())
	}
	// Output:
	// in by 1.36 mm, or along the slide 1.52 mm (59.9 thou)
	// in by 1.69 mm, or along the slide 1.90 mm (74.9 thou)
}

func ExampleToolTip() {
	th, err := threads.Find("M10")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, tip := range []threads.ToolTip{{}, {Flat: th.Pitch() / 8}, {Radius: 0.2 * units.Millimetre}} {
		depth, err := threads.DepthOfCut(th, tip)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("flat %.2f mm, radius %.2f mm: %.3f mm\n", tip.Flat.Millimetres(), tip.Radius.Millimetres(), depth.Millimetres())
	}
	// Output:
	// flat 0.00 mm, radius 0.00 mm: 1.137 mm
	// flat 0.19 mm, radius 0.00 mm: 0.974 mm
	// flat 0.00 mm, radius 0.20 mm: 0.937 mm
}

func ExampleBoringDepth() {
	th, err := threads.Find("M18x1.5")
	if err != nil {
		fmt.Println(err)
		return
	}
	depth, err := threads.BoringDepth(th, threads.ToolTip{Flat: 0.1 * units.Millimetre})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("bore %.2f mm, then out by %.2f mm\n", th.Minor().Millimetres(), depth.Millimetres())
	// Output: bore 16.38 mm, then out by 0.89 mm
}

func ExampleSlideFeed() {
	feed, err := threads.SlideFeed(0.92*units.Millimetre, 29.5*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", feed.Millimetres())
	// Output: 1.06 mm
}

func ExampleThread_HelixAngle() {
	th, err := threads.Find("1/4-20 UNC")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f°\n", th.HelixAngle().Degrees())
	// Output: 4.18°
}

// The helix of a two-start screw at its core is steeper.
func ExampleLeadAngle() {
	a, err := threads.LeadAngle(2*3*units.Millimetre, 12*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f°\n", a.Degrees())
	// Output: 9.0°
}
