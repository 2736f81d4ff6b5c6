package ignition_test

import (
	"fmt"
	"time"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// demo is the rim of the demonstration engine, which is invented.
var demo = ignition.MeasuredScale{
	Girth:   units.WithStd(1118.33*units.Millimetre, 0.3*units.Millimetre),
	TDC:     units.WithStd(174*units.Millimetre, 0.2*units.Millimetre),
	Figures: ignition.Rising,
}

func rimFigures(figures ...float64) []units.Length {
	out := make([]units.Length, len(figures))
	for i, f := range figures {
		out[i] = units.Length(f) * units.Millimetre
	}
	return out
}

func ExampleMeasuredScale() {
	advance, err := demo.Advance(units.WithStd(118.5*units.Millimetre, 0.5*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(advance)
	fmt.Println("take better first:", advance.Largest().Name)
	// Output:
	// 17.87° (u 0.17°)
	// take better first: figure
}

// Five figures turned forward and three turned back over the same place.
func ExampleMeasuredScale_Opening() {
	o, err := demo.Opening(rimFigures(119.8, 119.1, 118.0, 118.7, 117.0), rimFigures(114.3, 115.7, 114.4), 0.5*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("opens at", o.Forward)
	fmt.Println("slack   ", o.Slack)
	// Output:
	// opens at 118.5 mm (u 0.5 mm)
	// slack    1.20° (u 0.21°)
}

// A wrong centimetre among the figures is named and left out.
func ExampleOpening() {
	o, err := demo.Opening(rimFigures(119.8, 119.1, 128.0, 118.7, 117.0), nil, 0.5*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, odd := range o.Odd {
		fmt.Println(odd)
	}
	fmt.Printf("mean of the rest %.2f mm\n", o.Forward.Value.Millimetres())
	// Output:
	// try 3, 128.0 mm: 9.3 mm more than the others (about 10 mm: a wrong centimetre?)
	// mean of the rest 118.65 mm
}

func ExampleFindOdd() {
	odd, err := ignition.FindOdd(rimFigures(174.8, 169.0, 174.0), 0.3*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(odd)
	// Output: [try 2, 169.0 mm: 5.4 mm less than the others (about 5 mm: the half-way line taken for a numbered one?)]
}

func ExampleOddFigure() {
	odd, err := ignition.FindOdd(rimFigures(174.8, 174.1, 274.0), 0.3*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, o := range odd {
		fmt.Printf("take try %d again: %s\n", o.Try, o.Guess)
	}
	// Output: take try 3 again: about 100 mm: a wrong hundred?
}

// What the gap does, from openings at 0.30 mm and 0.45 mm, each gap set to
// about 0.02 mm.
func ExampleGapEffect() {
	effect, err := demo.GapEffect(0.02*units.Millimetre,
		ignition.GapTrial{Gap: 0.30 * units.Millimetre, Figure: units.WithStd(118.5*units.Millimetre, 0.5*units.Millimetre)},
		ignition.GapTrial{Gap: 0.45 * units.Millimetre, Figure: units.WithStd(108.3*units.Millimetre, 0.3*units.Millimetre)})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range []units.Length{units.Millimetre / 100, units.Thou} {
		per, err := effect.Per(step)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.4f mm of gap: %.2f° earlier, u %.2f°\n", step.Millimetres(), per.Value.Degrees(), per.Std.Degrees())
	}
	// Output:
	// 0.0100 mm of gap: 0.22° earlier, u 0.04°
	// 0.0254 mm of gap: 0.56° earlier, u 0.11°
}

// Two settings of each gap, each a trial of its own.
func ExampleGapTrial() {
	at := func(gap, figure float64) ignition.GapTrial {
		return ignition.GapTrial{
			Gap:    units.Length(gap) * units.Millimetre,
			Figure: units.WithStd(units.Length(figure)*units.Millimetre, 0.3*units.Millimetre),
		}
	}
	effect, err := demo.GapEffect(0.02*units.Millimetre, at(0.30, 118.5), at(0.45, 108.3), at(0.30, 119.4), at(0.45, 107.8))
	if err != nil {
		fmt.Println(err)
		return
	}
	per, err := effect.Per(units.Millimetre / 100)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f° earlier for a hundredth, u %.2f°\n", per.Value.Degrees(), per.Std.Degrees())
	// Output: 0.23° earlier for a hundredth, u 0.03°
}

// Could the gap alone give 26°?
func ExampleGapAnswer() {
	effect, err := demo.GapEffect(0.01*units.Millimetre,
		ignition.GapTrial{Gap: 0.30 * units.Millimetre, Figure: units.WithStd(118.5*units.Millimetre, 0.3*units.Millimetre)},
		ignition.GapTrial{Gap: 0.45 * units.Millimetre, Figure: units.WithStd(111.8*units.Millimetre, 0.3*units.Millimetre)})
	if err != nil {
		fmt.Println(err)
		return
	}
	answer, err := effect.GapFor(units.Exact(26 * units.Degree))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(answer)
	// Output: a gap of 0.87 mm (34 thou), u 0.06 mm, lies above the usual 0.25 to 0.58 mm (10 to 23 thou): not to be had by the gap; set the maker's gap and move the drive
}

func ExampleUsualGap() {
	least, most := ignition.UsualGap()
	fmt.Printf("%.3f to %.3f in\n", least.Inches(), most.Inches())
	// Output: 0.010 to 0.023 in
}

func ExampleGapTable() {
	for _, g := range ignition.GapTable()[2:4] {
		fmt.Printf("%s: %.2f to %.2f mm (%s)\n", g.Engine, g.Least.Millimetres(), g.Most.Millimetres(), g.Source)
	}
	// Output:
	// Fichtel & Sachs 505 moped: 0.40 to 0.40 mm (Sachs 505 repair instructions)
	// BSA M20 motorcycle, 1937-55: 0.30 to 0.30 mm (owners' pages, wdbsa.nl)
}

func ExampleGapPractice() {
	g := ignition.GapTable()[1]
	fmt.Printf("%s: %.0f to %.0f thou\n", g.Engine, g.Least.Thou(), g.Most.Thou())
	// Output: magnetos, most of them: 12 to 15 thou
}

func ExampleFit() {
	fmt.Println(ignition.Inside, ignition.Below, ignition.Above, ignition.Doubtful)
	// Output: inside below above doubtful
}

// Where the contacts open at both ends of the lever.
func ExampleLever() {
	lever, err := demo.Lever(units.WithStd(118.5*units.Millimetre, 0.5*units.Millimetre), units.WithStd(174.3*units.Millimetre, 0.3*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("range", lever.Range)
	fmt.Println(lever.Starting())
	moved := lever.SetTo(units.WithStd(26*units.Degree, 0.2*units.Degree))
	fmt.Println(moved.Caution())
	// Output:
	// range 17.96° (u 0.19°)
	// doubtful
	// kick-back: at full retard the spark still comes 8.0° before top dead centre; turned slowly by hand the engine can be thrown backward and break a wrist or throw the rope. Do not start it by hand so: retard further, or fit a lever or an impulse coupling with more range
}

// Set for starting by hand, 4° after top dead centre at full retard: what full
// advance comes to, and what to read better to know it better.
func ExampleLever_SetRetarded() {
	lever, err := demo.Lever(units.WithStd(118.5*units.Millimetre, 0.5*units.Millimetre), units.WithStd(174.3*units.Millimetre, 0.3*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	set := lever.SetRetarded(units.WithStd(-4*units.Degree, 0.1*units.Degree))
	fmt.Println(set.Caution())
	fmt.Println("full advance", set.Advanced)
	for _, c := range set.AdvancedBudget {
		fmt.Printf("%.0f %% %s\n", 100*c.Share, c.Name)
	}
	// Output:
	// at full retard the spark comes 4.0° after top dead centre; start with the lever fully back, and keep thumb and fingers on one side of the handle
	// full advance 13.96° (u 0.21°)
	// 22 % timing wanted
	// 0 % girth of the rim
	// 57 % figure at full advance
	// 21 % figure at full retard
}

func ExampleStarting() {
	late := ignition.Lever{Retarded: units.WithStd(-5*units.Degree, 1*units.Degree)}
	near := ignition.Lever{Retarded: units.WithStd(-1*units.Degree, 1*units.Degree)}
	fmt.Println(late.Starting(), near.Starting())
	// Output: late doubtful
}

// From 17.9° to 26° with a chain at one to one.
func ExampleNewRetiming() {
	r, err := ignition.NewRetiming(ignition.CrankSpeed(), units.WithStd(17.9*units.Degree, 0.2*units.Degree), units.WithStd(26*units.Degree, 0.2*units.Degree))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r)
	fmt.Printf("lines on a boss of 15 mm radius come %.1f mm apart\n", r.AtRadius(15*units.Millimetre).Millimetres())
	// Output:
	// spark 8.1° earlier at the crank (u 0.3°): with the crank held, turn the driven shaft 8.1° forward, the way it turns in running
	// lines on a boss of 15 mm radius come 2.1 mm apart
}

func ExampleRetiming() {
	r, err := ignition.NewRetiming(ignition.CrankSpeed(), units.Exact(17.9*units.Degree), units.Exact(26*units.Degree))
	if err != nil {
		fmt.Println(err)
		return
	}
	scale, err := demo.Scale()
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, err := ignition.NewMark(scale.Rim(), 26*units.Degree, ignition.OnRim, ignition.Anticlockwise)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range r.Steps(mark, scale.FigureAtAdvance(26*units.Degree))[4:6] {
		fmt.Println(step)
	}
	// Output:
	// Bring the crank to 93.2 mm (3.671 in) on the rule, 26.0° before top dead centre: come to it turning forward (anticlockwise, facing the rim); if you pass it, go back a good quarter of a turn and come again.
	// Hold the wheel back so that the pulling run of the drive is tight, and turn the driven shaft forward, the way it runs (about 8.1°), until the contacts just open.
}

// Four lobes, contacts closed over 60° of the shaft, engine at 5000 rev/min.
func ExampleNewBreaker() {
	b, err := ignition.NewBreaker(ignition.HalfSpeed(), 4, 60*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	speed := 5000 * units.RevolutionPerMinute
	fmt.Printf("dwell %.0f %%, %.0f sparks a second, contacts closed for %.1f ms\n",
		b.Dwell().Percent(), b.Sparks(speed, time.Second), b.ClosedTime(speed).Seconds()*1e3)
	// Output: dwell 67 %, 167 sparks a second, contacts closed for 4.0 ms
}

func ExampleNewBreakerOfDwell() {
	b, err := ignition.NewBreakerOfDwell(ignition.HalfSpeed(), 6, 58*units.Percent)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("closed %.1f°, open %.1f°\n", b.Closed().Degrees(), b.Open().Degrees())
	// Output: closed 34.8°, open 25.2°
}

// A single lobe on the crank: open at 20° before, closed again 40° after the top.
func ExampleNewBreakerOfMarks() {
	b, err := ignition.NewBreakerOfMarks(ignition.CrankSpeed(), 1, -20*units.Degree, 40*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("dwell %.0f°, %.1f %%\n", b.Closed().Degrees(), b.Dwell().Percent())
	// Output: dwell 300°, 83.3 %
}

func ExampleBreaker() {
	b, err := ignition.NewBreaker(ignition.HalfSpeed(), 4, 45*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("cycle %.0f°, dwell %.0f %%\n", b.Cycle().Degrees(), b.Dwell().Percent())
	// Output: cycle 90°, dwell 50 %
}
