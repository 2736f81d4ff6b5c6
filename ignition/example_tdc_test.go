package ignition_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// exampleSetup is an engine of 76 mm stroke with a dial in its leaning plug hole
// and a paper rule round its rim.
func exampleSetup() ignition.Setup {
	const mm = units.Millimetre
	rim, err := ignition.NewRimOfGirth(1118.3 * mm)
	if err != nil {
		fmt.Println(err)
	}
	return ignition.Setup{
		Stroke:     units.WithStd(76.15*mm, 0.06*mm),
		Rod:        units.WithStd(146.0*mm, 0.03*mm),
		Rim:        rim,
		Figures:    ignition.Rising,
		SettingStd: 0.3 * mm,
		Dial:       ignition.MoreGoingDown,
		DialStd:    0.01 * mm,
		Lean:       units.WithStd(12*units.Degree, 1*units.Degree),
	}
}

// exampleSeries is ten dial readings turning forward and ten turning backward.
// One of them is a slip.
func exampleSeries() []ignition.Series {
	read := func(name string, turned ignition.Turned, pairs ...float64) ignition.Series {
		s := ignition.Series{Name: name, Turned: turned}
		for i := 0; i < len(pairs); i += 2 {
			s.Readings = append(s.Readings, ignition.DialReading{
				Rim:  units.Length(pairs[i]) * units.Millimetre,
				Dial: units.Length(pairs[i+1]) * units.Millimetre,
			})
		}
		return s
	}
	return []ignition.Series{
		read("A", ignition.Forward, 60, 9.46, 80, 6.51, 100, 5.09, 120, 2.18, 140, 0.85,
			210, 0.93, 230, 2.37, 250, 4.36, 270, 6.81, 290, 9.84),
		read("B", ignition.Backward, 290, 9.97, 270, 6.99, 250, 4.44, 230, 2.47, 210, 1.03,
			140, 0.75, 120, 1.98, 100, 3.99, 80, 6.38, 60, 9.28),
	}
}

func ExampleFindTDC() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("top dead centre at the pointer: %v, %.2f of crank\n", tdc.Position, tdc.StdAngle())
	fmt.Printf("slack in the bearings: %v\n", tdc.Slack)
	for _, slip := range tdc.Slips {
		fmt.Println("left out:", slip)
	}
	// Output:
	// top dead centre at the pointer: 173.25 mm (u 0.07 mm), 0.02° of crank
	// slack in the bearings: 0.115 mm (u 0.013 mm)
	// left out: series A, rim 100 mm: about 1.00 mm too much, one turn of the small hand?
}

// The cylinder stands 8 mm to one side of the crank; which side is not known.
func ExampleFindTDC_sideUnknown() {
	const mm = units.Millimetre
	setup := exampleSetup()
	setup.Rim, _ = ignition.NewRimOfGirth(1000 * mm)
	setup.Lean = units.Exact(units.Angle(0))
	setup.Offset, setup.SideUnknown = units.Exact(8*mm), true
	setup.SlackKnown = true // and 0: a tight engine
	var s ignition.Series
	s.Turned = ignition.Forward
	for i, dial := range []float64{18.00, 13.81, 10.03, 6.66, 3.93, 1.89, 0.59, 0.02, 0.20, 1.15, 2.80, 5.19, 8.12, 11.67, 15.62} {
		s.Readings = append(s.Readings, ignition.DialReading{Rim: units.Length(60+20*i) * mm, Dial: units.Length(dial) * mm})
	}
	tdc, err := ignition.FindTDC(setup, s)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, side := range tdc.Sides {
		fmt.Printf("offset %+.0f mm: top dead centre at %.1f, chi-square %.0f\n", side.Offset.Millimetres(), side.Position.Value, side.ChiSquare)
	}
	// Output:
	// offset +8 mm: top dead centre at 205.0 mm, chi-square 9
	// offset -8 mm: top dead centre at 205.6 mm, chi-square 35
}

func ExampleTDC_Predict() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	for rim := 100 * units.Millimetre; rim <= 250*units.Millimetre; rim += 50 * units.Millimetre {
		up, _ := tdc.Predict(rim, ignition.Forward, "")
		back, _ := tdc.Predict(rim, ignition.Backward, "")
		fmt.Printf("rim %3.0f mm: %.2f turning forward, %.2f turning backward\n", rim.Millimetres(), up, back)
	}
	// Output:
	// rim 100 mm: 4.07 mm turning forward, 3.95 mm turning backward
	// rim 150 mm: 0.42 mm turning forward, 0.30 mm turning backward
	// rim 200 mm: 0.44 mm turning forward, 0.55 mm turning backward
	// rim 250 mm: 4.34 mm turning forward, 4.45 mm turning backward
}

func ExampleTDC_Correlation() {
	setup := exampleSetup()
	setup.RodUnknown = true
	tdc, err := ignition.FindTDC(setup, exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err := tdc.Correlation("rod", "lean")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("the readings tell rod and lean apart only in part: r = %.1f\n", r)
	// Output: the readings tell rod and lean apart only in part: r = 0.8
}

func ExampleResidual() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range tdc.Residuals[1:4] {
		fmt.Printf("%s %v: read %.2f, curve %.2f, left out %v\n", r.Series, r.Rim, r.Dial, r.Fitted, r.LeftOut)
	}
	// Output:
	// A 80 mm: read 6.51 mm, curve 6.50 mm, left out false
	// A 100 mm: read 5.09 mm, curve 4.07 mm, left out true
	// A 120 mm: read 2.18 mm, curve 2.17 mm, left out false
}

func ExampleSlip() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	s := tdc.Slips[0]
	fmt.Printf("series %s, rim %v: read %.2f, should be about %.2f\n", s.Series, s.Rim, s.Dial, s.Fitted)
	// Output: series A, rim 100 mm: read 5.09 mm, should be about 4.07 mm
}

func ExampleCause() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	c := tdc.Slips[0].Causes[0]
	fmt.Printf("%s: rim %v, dial %.2f\n", c.Text, c.Rim, c.Dial)
	// Output: one turn of the small hand: rim 100 mm, dial 4.09 mm
}

func ExampleDialZero() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("the needle turns back at %.2f\n", tdc.Zeros[0].Dial.Value)
	// Output: the needle turns back at 0.00 mm
}

func ExampleWithout() {
	series := exampleSeries()
	tdc, err := ignition.FindTDC(exampleSetup(), series...)
	if err != nil {
		fmt.Println(err)
		return
	}
	rest := ignition.Without(tdc.Slips, series...)
	fmt.Println(len(series[0].Readings), "readings in series A,", len(rest[0].Readings), "without the slip")
	// Output: 10 readings in series A, 9 without the slip
}

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

func ExampleSetup() {
	setup := exampleSetup()
	setup.Figures = ignition.Falling // the rule was stuck on the other way round
	setup.Dial = ignition.LessGoingDown
	fmt.Println(setup.Figures, "rim figures; dial figures", setup.Dial)
	// Output: falling rim figures; dial figures less going down
}

func ExampleSeries() {
	s := ignition.Series{Name: "A", Turned: ignition.Forward, Readings: []ignition.DialReading{
		{Rim: 60 * units.Millimetre, Dial: 9.46 * units.Millimetre},
		{Rim: 70 * units.Millimetre, Dial: 7.90 * units.Millimetre},
	}}
	_, err := ignition.FindTDC(exampleSetup(), s)
	fmt.Println(err)
	// Output: 2 dial readings: want 5 at least, and better 20, on both sides of the top and 20° and more out: too few readings
}

func ExampleDialReading() {
	r := ignition.DialReading{Rim: 60 * units.Millimetre, Dial: 9.46 * units.Millimetre}
	fmt.Println("rim", r.Rim, "dial", r.Dial)
	// Output: rim 60 mm dial 9.46 mm
}

func ExampleTurned() {
	var t ignition.Turned
	if err := t.UnmarshalText([]byte("backward")); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t == ignition.Backward)
	// Output: true
}

func ExampleDialFigures() {
	var d ignition.DialFigures
	fmt.Println(d.UnmarshalText([]byte("up")))
	// Output: "up": want "more going down" or "less going down", what the dial figure does as the piston goes down: outside the domain
}

func ExampleOffsetSide() {
	s := ignition.OffsetSide{Offset: 8 * units.Millimetre, ChiSquare: 14, Share: 0.999}
	fmt.Printf("%+.0f mm: %.1f %%\n", s.Offset.Millimetres(), 100*s.Share)
	// Output: +8 mm: 99.9 %
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

func ExampleTDC() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%d readings more than unknowns scatter %.1f times as much as stated\n", tdc.DoF, tdc.Scatter)
	fmt.Println("found:", tdc.Unknowns())
	// Output:
	// 16 readings more than unknowns scatter 1.0 times as much as stated
	// found: [top dead centre slack stroke rod lean dial zero]
}

// What to read better first.
func ExampleTDC_Budget() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range tdc.Budget() {
		fmt.Printf("%5.1f %% %s\n", 100*c.Share, c.Name)
	}
	first := units.Result[units.Length]{Budget: tdc.Budget()}.Largest()
	fmt.Printf("first: the %s, uncertain by %.1f\n", first.Name, first.Std)
	// Output:
	//  11.3 % dial readings
	//  88.6 % setting of the rim
	//   0.0 % stroke
	//   0.0 % rod
	//   0.1 % lean
	// first: the setting of the rim, uncertain by 0.3 mm
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

func ExampleTDC_Scale() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("28° before the top stands at %.1f\n", tdc.Scale().FigureAtAdvance(28*units.Degree))
	// Output: 28° before the top stands at 86.3 mm
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
