package ignition_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

func ExampleBisect() {
	setup, series := exampleSetup(), exampleSeries()
	series[0].Readings[2].Dial = 4.09 * units.Millimetre // the slip put right
	both, err := ignition.Bisect(setup, series...)
	if err != nil {
		fmt.Println(err)
		return
	}
	forward, err := ignition.Bisect(setup, series[0])
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("both ways: %v\n", both.Position)
	fmt.Printf("turning forward only: %.1f, late by what the slack makes\n", forward.Position.Value)
	// Output:
	// both ways: 173.27 mm (u 0.09 mm)
	// turning forward only: 173.9 mm, late by what the slack makes
}

func ExamplePair_LateBy() {
	b, err := ignition.Bisect(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	p := b.Pairs[0]
	fmt.Printf("dial %.2f at rim %.1f and %.1f: middle %.1f, late by %.2f for 0.1 mm of slack\n",
		p.Dial, p.Before, p.After, p.Middle, p.LateBy(0.1*units.Millimetre))
	// Output: dial 9.46 mm at rim 60.0 mm and 287.7 mm: middle 173.8 mm, late by 0.32 mm for 0.1 mm of slack
}

func ExampleStop() {
	const mm = units.Millimetre
	stop, err := ignition.Stop(exampleSetup(),
		ignition.StopPair{Forward: 54.2 * mm, Backward: 292.2 * mm},
		ignition.StopPair{Forward: 54.0 * mm, Backward: 293.0 * mm},
		ignition.StopPair{Forward: 53.4 * mm, Backward: 293.8 * mm})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(stop.Position)
	// Output: 173.43 mm (u 0.12 mm)
}

func ExampleStopPair() {
	// A degree disc is a rim of 360 mm, a millimetre to the degree.
	const degree = units.Millimetre
	disc, err := ignition.NewRimOfGirth(360 * degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	setup := ignition.Setup{Rim: disc, Figures: ignition.Rising, SettingStd: 0.25 * degree}
	stop, err := ignition.Stop(setup, ignition.StopPair{Forward: 341.5 * degree, Backward: 24.25 * degree})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f° on the disc\n", stop.Position.Value.Millimetres())
	// Output: 2.875° on the disc
}

func ExampleByEye() {
	const mm = units.Millimetre
	eye, err := ignition.ByEye(exampleSetup(), 164*mm, 177*mm, 172*mm, 175*mm)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v; the needle seems to stand over %.1f to either side\n", eye.Position, eye.DeadBand)
	// Output: 172 mm (u 4 mm); the needle seems to stand over 3.6 mm to either side
}

func ExamplePlanTDC() {
	plan, err := ignition.PlanTDC(exampleSetup(), 0.1*units.Millimetre, 6)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%d pairs from %.1f down, %.0f of rim to either side of the top, %.0f of crank\n", plan.Pairs, plan.Drop, plan.Rim, plan.Angle)
	fmt.Printf("a hundredth on the dial is %.2f there; watching it turn back leaves ± %.1f\n", plan.PerDivision, plan.DeadAngle)
	// Output:
	// 6 pairs from 1.1 mm down, 38 mm of rim to either side of the top, 12° of crank
	// a hundredth on the dial is 0.06° there; watching it turn back leaves ± 1.2°
}

func ExamplePlanAt() {
	for _, drop := range []units.Length{0.2 * units.Millimetre, 1 * units.Millimetre, 5 * units.Millimetre} {
		plan, err := ignition.PlanAt(exampleSetup(), drop, 1)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("one pair at %.1f: top dead centre to %.2f of rim\n", drop, plan.Std)
	}
	// Output:
	// one pair at 0.2 mm: top dead centre to 0.35 mm of rim
	// one pair at 1.0 mm: top dead centre to 0.25 mm of rim
	// one pair at 5.0 mm: top dead centre to 0.22 mm of rim
}

func ExampleLateBy() {
	crank, err := geometry.NewCrank(3*units.Inch, 5.75*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, drop := range []units.Length{1 * units.Millimetre, 10 * units.Millimetre} {
		late, err := ignition.LateBy(crank, drop, 0.1*units.Millimetre)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v down: late by %.2f\n", drop, late)
	}
	// Output:
	// 1 mm down: late by 0.29°
	// 10 mm down: late by 0.10°
}

func ExampleCombine() {
	const mm = units.Millimetre
	all, err := ignition.Combine(
		ignition.Way{Name: "positive stop", Position: units.WithStd(173.45*mm, 0.10*mm)},
		ignition.Way{Name: "fit of the dial", Position: units.WithStd(173.34*mm, 0.04*mm), Readings: "dial"},
		ignition.Way{Name: "equal dial readings", Position: units.WithStd(173.36*mm, 0.04*mm), Readings: "dial"},
		ignition.Way{Name: "by eye", Position: units.WithStd(172*mm, 4*mm)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(all.Position, "agree:", all.Agree)
	for _, w := range all.Ways {
		fmt.Printf("%s: %+.2f mm, %s\n", w.Name, w.Deviation.Millimetres(), w.Verdict)
	}
	// Output:
	// 173.36 mm (u 0.04 mm) agree: true
	// positive stop: +0.09 mm, worth having: 14 % of the weight
	// fit of the dial: -0.02 mm, worth the trouble: 86 % of the weight
	// equal dial readings: +0.00 mm, a check: rests on the same readings as a surer way and does not count again
	// by eye: -1.36 mm, hardly worth the trouble: 0.0086 % of the weight
}

func ExampleWay() {
	_, err := ignition.Combine(ignition.Way{Name: "guess", Position: units.Exact(173 * units.Millimetre)})
	fmt.Println(err)
	// Output: guess: 173 mm with standard uncertainty 0 mm: want a finite figure and an uncertainty of more than 0 mm: outside the domain
}

func ExampleWeighed() {
	all, err := ignition.Combine(
		ignition.Way{Name: "stop", Position: units.WithStd(173.4*units.Millimetre, 0.1*units.Millimetre)},
		ignition.Way{Name: "old mark", Position: units.WithStd(180*units.Millimetre, 0.5*units.Millimetre)})
	if err != nil {
		fmt.Println(err)
		return
	}
	w := all.Ways[1]
	fmt.Printf("%s: %s\n", w.Name, w.Verdict)
	// Output: old mark: does not agree: off by 12.9 times what its uncertainty allows
}

func ExampleCombined() {
	all, err := ignition.Combine(
		ignition.Way{Name: "stop", Position: units.WithStd(173.4*units.Millimetre, 0.1*units.Millimetre)},
		ignition.Way{Name: "old mark", Position: units.WithStd(180*units.Millimetre, 0.5*units.Millimetre)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("agree: %v, Birge's ratio %.0f, %v\n", all.Agree, all.Ratio, all.Position)
	// Output: agree: false, Birge's ratio 13, 173.7 mm (u 1.3 mm)
}

// Turned one way only, most of the doubt is the slack: turn the other way too.
func ExampleBisection_Budget() {
	b, err := ignition.Bisect(exampleSetup(), exampleSeries()[1])
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range b.Budget() {
		fmt.Printf("%5.1f %% %s\n", 100*c.Share, c.Name)
	}
	// Output:
	//   1.3 % dial readings
	//  13.7 % setting of the rim
	//  85.0 % slack
}

func ExampleStopFinding_Budget() {
	found, err := ignition.Stop(exampleSetup(), ignition.StopPair{Forward: 54.2 * units.Millimetre, Backward: 292.2 * units.Millimetre}, ignition.StopPair{Forward: 54.0 * units.Millimetre, Backward: 293.0 * units.Millimetre})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range found.Budget() {
		fmt.Printf("%.0f %% %s\n", 100*c.Share, c.Name)
	}
	// Output:
	// 100 % setting of the rim
}

func ExamplePlan() {
	_, err := ignition.PlanTDC(exampleSetup(), 0.05*units.Millimetre, 6)
	fmt.Println(err)
	// Output: 6 pairs leave 0.088 mm at any drop, with the rim set to 0.3 mm and the dial read to 0.01 mm: want 19 pairs for 0.05 mm: the readings do not settle it
}

func ExampleBisection() {
	series := exampleSeries()
	series[0].Readings[2].Dial = 4.09 * units.Millimetre // the slip put right
	b, err := ignition.Bisect(exampleSetup(), series...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%d pairs, slack %v\n", len(b.Pairs), b.Slack)
	// Output: 8 pairs, slack 0.133 mm (u 0.018 mm)
}

func ExamplePair() {
	b, err := ignition.Bisect(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range b.Pairs[:2] {
		fmt.Printf("%s, %v: middle of %.1f and %.1f is %.1f\n", p.Series, p.Turned, p.Before, p.After, p.Middle)
	}
	// Output:
	// A, forward: middle of 60.0 mm and 287.7 mm is 173.8 mm
	// A, forward: middle of 80.0 mm and 267.8 mm is 173.9 mm
}

func ExampleStopFinding() {
	const mm = units.Millimetre
	setup := exampleSetup()
	tries := make([]ignition.StopPair, 6)
	for i := range tries {
		tries[i] = ignition.StopPair{Forward: 54 * mm, Backward: 293 * mm}
	}
	tries[3].Backward = 303 * mm
	stop, err := ignition.Stop(setup, tries...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(stop.Notes[0])
	// Output: left out: try 4, 178.5 mm: 5.0 mm more than the others (one touch misread by 10 mm?)
}

func ExampleEyeFinding() {
	setup := exampleSetup()
	setup.SlackKnown, setup.Slack = true, units.Exact(0.1*units.Millimetre)
	eye, err := ignition.ByEye(setup, 164*units.Millimetre, 177*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("with slack the needle seems to stand over %.0f to either side\n", eye.DeadBand)
	// Output: with slack the needle seems to stand over 12 mm to either side
}
