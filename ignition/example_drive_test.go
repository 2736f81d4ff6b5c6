package ignition_test

import (
	"fmt"
	"time"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// The AWO 425 handbook: magneto at half speed, magneto values are half.
func ExampleHalfSpeed() {
	fmt.Printf("%.0f° at the magneto\n", ignition.HalfSpeed().Shaft(38*units.Degree).Degrees())
	// Output: 19° at the magneto
}

func ExampleCrankSpeed() {
	fmt.Printf("%.0f° at the magneto\n", ignition.CrankSpeed().Shaft(38*units.Degree).Degrees())
	// Output: 38° at the magneto
}

// A magneto that turns three times for two turns of the crank.
func ExampleNewDrive() {
	drive, err := ignition.NewDrive(2, 3)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("30° of crank are %.0f° of magneto\n", drive.Shaft(30*units.Degree).Degrees())
	// Output: 30° of crank are 45° of magneto
}

func ExampleNewToothedDrive() {
	drive, err := ignition.NewToothedDrive(15, 30)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f crank turns to one, 1° of slack counts %.0f°\n", drive.Ratio(), drive.Crank(1*units.Degree).Degrees())
	// Output: 2 crank turns to one, 1° of slack counts 2°
}

// An impulse coupling that holds a half-speed magneto back by 14°.
func ExampleDrive() {
	drive := ignition.HalfSpeed()
	fmt.Printf("starting %.0f° before top dead centre\n", drive.StartingAdvance(28*units.Degree, 14*units.Degree).Degrees())
	// Output: starting 0° before top dead centre
}

// A chain wheel of 20 teeth, and 8° more advance wanted.
func ExampleNewToothed() {
	wheel, err := ignition.NewToothed(ignition.CrankSpeed(), 20)
	if err != nil {
		fmt.Println(err)
		return
	}
	below, above, err := wheel.Reach(8 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(below)
	fmt.Println(above)
	// Output:
	// as it is: no change
	// 1 tooth forward: 18.00° earlier
}

// A coupling with 19 teeth on one side and 20 on the other comes much nearer.
func ExampleNewVernier() {
	coupling, err := ignition.NewVernier(ignition.CrankSpeed(), 19, 20)
	if err != nil {
		fmt.Println(err)
		return
	}
	below, above, err := coupling.Reach(8 * units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(below)
	fmt.Println(above)
	// Output:
	// 8 teeth forward on the first row and 8 teeth back on the other: 7.58° earlier
	// 9 teeth forward on the first row and 9 teeth back on the other: 8.53° earlier
}

func ExampleToothed() {
	wheel, err := ignition.NewToothed(ignition.CrankSpeed(), 20)
	if err != nil {
		fmt.Println(err)
		return
	}
	present := 18 * units.Degree
	steps, err := wheel.Timings(present, 0, 40*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range steps {
		fmt.Printf("%4.0f° before top dead centre, %v\n", (present + s.Shift).Degrees(), s)
	}
	// Output:
	//    0° before top dead centre, 1 tooth back: 18.00° later
	//   18° before top dead centre, as it is: no change
	//   36° before top dead centre, 1 tooth forward: 18.00° earlier
}

func ExampleStep() {
	fmt.Println(ignition.Step{Shift: -36 * units.Degree, Teeth: -2})
	// Output: 2 teeth back: 36.00° later
}

// A slot 6 mm long with a 5 mm bolt, 38 mm from the middle of a crank-speed
// shaft.
func ExampleNewPlate() {
	plate, err := ignition.NewPlate(38*units.Millimetre, ignition.CrankSpeed())
	if err != nil {
		fmt.Println(err)
		return
	}
	all, err := plate.Range(6*units.Millimetre, 5*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f° from end to end\n", all.Degrees())
	// Output: 1.51° from end to end
}

func ExamplePlate() {
	plate, err := ignition.NewPlate(30*units.Millimetre, ignition.HalfSpeed())
	if err != nil {
		fmt.Println(err)
		return
	}
	travel, way := plate.Travel(3 * units.Degree)
	fmt.Printf("for 3° more advance: %.2f mm %v\n", travel.Millimetres(), way)
	// Output: for 3° more advance: 0.79 mm against the shaft
}

// Contacts on a plate whose slots lie 30 mm from the middle of a half-speed shaft:
// the two steps in which the plate is turned.
func ExamplePlate_Steps() {
	drive := ignition.HalfSpeed()
	plate, err := ignition.NewPlate(30*units.Millimetre, drive)
	if err != nil {
		fmt.Println(err)
		return
	}
	rim, err := ignition.NewRim(356 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, err := ignition.NewMark(rim, 26*units.Degree, ignition.OnRim, ignition.Anticlockwise)
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err := ignition.NewRetiming(drive, units.Exact(23*units.Degree), units.Exact(26*units.Degree))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range plate.Steps(r, mark, 93.2*units.Millimetre)[3:5] {
		fmt.Println(step)
	}
	// Output:
	// Bring the crank to 93.2 mm (3.669 in) on the rule, 26.0° before top dead centre: come to it turning forward (anticlockwise, facing the rim); if you pass it, go back a good quarter of a turn and come again.
	// Slacken the plate and turn it against the turning of the shaft, about 0.79 mm (0.031 in) along its slots, until the contacts just open.
}

// A chain wheel of 20 teeth: what the two settings nearest to 26° give.
func ExampleToothed_Steps() {
	wheel, err := ignition.NewToothed(ignition.CrankSpeed(), 20)
	if err != nil {
		fmt.Println(err)
		return
	}
	rim, err := ignition.NewRim(356 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, err := ignition.NewMark(rim, 26*units.Degree, ignition.OnRim, ignition.Anticlockwise)
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err := ignition.NewRetiming(ignition.CrankSpeed(), units.Exact(17.9*units.Degree), units.Exact(26*units.Degree))
	if err != nil {
		fmt.Println(err)
		return
	}
	steps, err := wheel.Steps(r, mark, 93.2*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range steps[2:4] {
		fmt.Println(step)
	}
	// Output:
	// The drive moves by whole teeth, 18.00° of crank a step. Nearest to the timing wanted: as it is gives 17.9° before top dead centre, 8.1° too late.
	// Next to it, on the other side: 1 tooth forward gives 35.9° before top dead centre, 9.9° too early. Where both are as far off take the later, for too early a spark knocks and kicks back.
}

func ExampleShift() {
	plate, err := ignition.NewPlate(30*units.Millimetre, ignition.HalfSpeed())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, way := range []ignition.Shift{ignition.AgainstRotation, ignition.WithRotation} {
		change, err := plate.Change(1*units.Millimetre, way)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("1 mm %v: %+.2f°\n", way, change.Degrees())
	}
	// Output:
	// 1 mm against the shaft: +3.82°
	// 1 mm with the shaft: -3.82°
}

// Mathur and Sharma, Internal Combustion Engine, Example 5.1: spark 25° before,
// delay over 3° before, burning over 12° after top dead centre; half the speed.
func ExampleNewBurn() {
	full := 3000 * units.RevolutionPerMinute
	burn, err := ignition.NewBurn(22*units.Degree, 15*units.Degree, full)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f° before top dead centre\n", burn.Advance(12*units.Degree, full/2).Degrees())
	// Output: 14° before top dead centre
}

func ExampleBurn() {
	burn := ignition.Burn{Delay: 2 * time.Millisecond, Burn: 20 * units.Degree}
	for _, speed := range []units.AngularSpeed{400 * units.RevolutionPerMinute, 800 * units.RevolutionPerMinute} {
		fmt.Printf("%4.0f rev/min: %.1f°\n", speed.RevolutionsPerMinute(), burn.Advance(10*units.Degree, speed).Degrees())
	}
	// Output:
	//  400 rev/min: 14.8°
	//  800 rev/min: 19.6°
}

// Rajput, A Textbook of Internal Combustion Engines, Example 5.1: half the bore
// of 10.2 cm and 0.6 cm more at 15.8 m/s.
func ExampleFlameTime() {
	t, err := ignition.FlameTime(5.7*units.Centimetre, 15.8*units.MetrePerSecond)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f ms\n", t.Seconds()*1e3)
	// Output: 3.61 ms
}

// The Jumbo farm engine: 8° for each 100 rev/min.
func ExamplePeriodRule() {
	rule := ignition.PeriodRule{PerHundred: 8 * units.Degree}
	fmt.Printf("%.0f° at 350, %.0f° at 500, %.1f ms at any speed\n",
		rule.Advance(350*units.RevolutionPerMinute).Degrees(),
		rule.Advance(500*units.RevolutionPerMinute).Degrees(),
		rule.Time().Seconds()*1e3)
	// Output: 28° at 350, 40° at 500, 13.3 ms at any speed
}
