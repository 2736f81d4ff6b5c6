package ignition_test

import (
	"fmt"

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

func ExampleTDC_Scale() {
	tdc, err := ignition.FindTDC(exampleSetup(), exampleSeries()...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("28° before the top stands at %.1f\n", tdc.Scale().FigureAtAdvance(28*units.Degree))
	// Output: 28° before the top stands at 86.3 mm
}
