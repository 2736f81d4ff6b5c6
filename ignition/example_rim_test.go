package ignition_test

import (
	"fmt"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A flywheel of 18 in, and marks 20° apart.
func ExampleNewRim() {
	rim, err := ignition.NewRim(18 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("along the rim    %.3f in\n", rim.Arc(20*units.Degree).Inches())
	fmt.Printf("straight across  %.3f in\n", rim.Chord(20*units.Degree).Inches())
	fmt.Printf("for each degree  %.3f in\n", rim.PerDegree().Inches())
	// Output:
	// along the rim    3.142 in
	// straight across  3.126 in
	// for each degree  0.157 in
}

// A girth read on a thin tape, taken as the rim the tape itself lies on.
func ExampleNewRimOfGirth() {
	rim, err := ignition.NewRimOfGirth(1118.33 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm for each degree, %.2f mm across\n", rim.PerDegree().Millimetres(), rim.Diameter().Millimetres())
	// Output: 3.106 mm for each degree, 355.98 mm across
}

// The same girth on a tape 0.2 mm thick: the rim is 0.2 mm less across.
func ExampleNewRimOfTape() {
	rim, err := ignition.NewRimOfTape(1118.33*units.Millimetre, 0.2*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", rim.Diameter().Millimetres())
	// Output: 355.78 mm
}

// 80 mm on a rim of 450 mm: read along the rim and straight across.
func ExampleRim() {
	rim, err := ignition.NewRim(450 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("as an arc   %.2f°\n", rim.AngleOfArc(80*units.Millimetre).Degrees())
	angle, err := rim.AngleOfChord(80 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("as a chord  %.2f°\n", angle.Degrees())
	// Output:
	// as an arc   20.37°
	// as a chord  20.48°
}

func ExampleRim_AngleOfTape() {
	rim, err := ignition.NewRim(203.2 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, thick := range []units.Length{0.1 * units.Millimetre, 0.2 * units.Millimetre} {
		angle, err := rim.AngleOfTape(40*units.Millimetre, thick)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("40 mm on a strip %.1f mm thick: %.3f°\n", thick.Millimetres(), angle.Degrees())
	}
	// Output:
	// 40 mm on a strip 0.1 mm thick: 22.546°
	// 40 mm on a strip 0.2 mm thick: 22.535°
}

// The mark at 35.5 mm, once round 640 mm, both on the same tape.
func ExampleAngleOfShare() {
	angle, err := ignition.AngleOfShare(35.5*units.Millimetre, 640*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f°\n", angle.Degrees())
	// Output: 19.97°
}

// A paper rule whose figures rise at the pointer as the engine is turned
// forward; top dead centre at 174 mm.
func ExampleNewScale() {
	rim, err := ignition.NewRimOfGirth(1118.33 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	scale, err := ignition.NewScale(rim, 174*units.Millimetre, ignition.Rising)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("118.5 mm is %.1f° before top dead centre\n", scale.Advance(118.5*units.Millimetre).Degrees())
	fmt.Printf("26° before top dead centre is %.1f mm\n", scale.FigureAtAdvance(26*units.Degree).Millimetres())
	// Output:
	// 118.5 mm is 17.9° before top dead centre
	// 26° before top dead centre is 93.2 mm
}

// The figure of a spark is lower than that of top dead centre when figures
// rise, and its mark lies ahead on the rim all the same.
func ExampleScale() {
	rim, err := ignition.NewRimOfGirth(1118.33 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	scale, err := ignition.NewScale(rim, 20*units.Millimetre, ignition.Rising)
	if err != nil {
		fmt.Println(err)
		return
	}
	figure := scale.FigureAtAdvance(26 * units.Degree)
	fmt.Printf("figure %.1f mm, on the rule %.1f mm\n", figure.Millimetres(), scale.OnRule(figure).Millimetres())
	fmt.Printf("%.1f mm ahead of top dead centre\n", scale.Position(figure).Millimetres())
	// Output:
	// figure -60.8 mm, on the rule 1057.6 mm
	// 80.8 mm ahead of top dead centre
}

func ExampleFigures() {
	var f ignition.Figures
	if err := f.UnmarshalText([]byte("falling")); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f)
	fmt.Println(f.UnmarshalText([]byte("up")))
	// Output:
	// falling
	// "up": want "rising" or "falling", what the figures do at the pointer as the engine is turned forward: outside the domain
}

func ExampleTurning() {
	fmt.Println(ignition.Anticlockwise, ignition.Anticlockwise.Reverse())
	// Output: anticlockwise clockwise
}

// The same timing scribed on the rim and on the case: opposite sides.
func ExampleNewMark() {
	rim, err := ignition.NewRim(356 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, place := range []ignition.Place{ignition.OnRim, ignition.OnCase} {
		mark, err := ignition.NewMark(rim, 26*units.Degree, place, ignition.Anticlockwise)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(mark)
	}
	// Output:
	// scribe on the rim 80.8 mm (3.180 in) round the face, 80.1 mm (3.153 in) straight across, from the top dead centre mark, ahead of it in the direction of rotation: facing the rim, anticlockwise from it
	// scribe on the case 80.8 mm (3.180 in) round the face, 80.1 mm (3.153 in) straight across, from the top dead centre mark, behind it, against the direction of rotation: facing the rim, clockwise from it
}

func ExampleMark_Approach() {
	rim, err := ignition.NewRim(356 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, err := ignition.NewMark(rim, 26*units.Degree, ignition.OnRim, ignition.Clockwise)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(mark.Approach())
	// Output: come to it turning forward (clockwise, facing the rim); if you pass it, go back a good quarter of a turn and come again
}

func ExampleSide() {
	rim, err := ignition.NewRim(356 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, err := ignition.NewMark(rim, -5*units.Degree, ignition.OnRim, ignition.Clockwise)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("5° after top dead centre lies", mark.Side(), "its mark:", mark.Way(), "from it")
	// Output: 5° after top dead centre lies behind its mark: anticlockwise from it
}

func ExamplePlace() {
	fmt.Println(ignition.OnRim, ignition.OnCase)
	// Output: rim case
}

// A mark 80 mm from the top dead centre mark, by strip and by rule.
func ExampleDistance() {
	rim, err := ignition.NewRim(450 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, held := range []ignition.Held{ignition.AlongRim, ignition.StraightAcross} {
		a, err := rim.Ahead(ignition.Distance{Length: 80 * units.Millimetre, Side: ignition.Ahead, Held: held})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("80 mm ahead %v: %.2f° before top dead centre\n", held, a.Degrees())
	}
	// Output:
	// 80 mm ahead along the rim: 20.37° before top dead centre
	// 80 mm ahead straight across: 20.48° before top dead centre
}

func ExampleHeld() {
	var h ignition.Held
	fmt.Println(h.UnmarshalText([]byte("straight")))
	// Output: "straight": want "along the rim" or "straight across", how the distance was measured: outside the domain
}
