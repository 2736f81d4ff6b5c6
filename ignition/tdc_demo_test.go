package ignition_test

import (
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// The demo engine: an invented two-stroke with a rim of 356 mm, whose owner took
// four series of dial readings, two turning each way. One reading is a slip.
func demoSetup() ignition.Setup {
	const mm = units.Millimetre
	rim, err := ignition.NewRimOfGirth(1118.3 * mm)
	if err != nil {
		panic(err)
	}
	return ignition.Setup{
		Stroke:     units.WithStd(76.15*mm, 0.06*mm),
		Rod:        units.WithStd(146.0*mm, 0.03*mm),
		Offset:     units.PlusMinus(0, 0.5*mm),
		Rim:        rim,
		RimStd:     0.06 * mm,
		Figures:    ignition.Rising,
		SettingStd: 0.3 * mm,
		Dial:       ignition.MoreGoingDown,
		DialStd:    0.01 * mm,
		Lean:       units.WithStd(12*units.Degree, 1*units.Degree),
	}
}

// dialRun makes a series of equally spaced rim figures, all in millimetres.
func dialRun(name string, turned ignition.Turned, from, step float64, dial ...float64) ignition.Series {
	s := ignition.Series{Name: name, Turned: turned}
	for i, d := range dial {
		s.Readings = append(s.Readings, ignition.DialReading{
			Rim:  units.Length(from+step*float64(i)) * units.Millimetre,
			Dial: units.Length(d) * units.Millimetre,
		})
	}
	return s
}

func demoSeries() []ignition.Series {
	return []ignition.Series{
		dialRun("A", ignition.Forward, 60, 10,
			9.46, 7.90, 6.51, 5.23, 4.09, 3.07, 2.18, 1.47, 0.85, 0.42, 0.12, 0.01,
			0.01, 0.11, 0.44, 0.93, 1.56, 2.37, 3.30, 4.36, 5.56, 6.81, 8.26, 9.84),
		dialRun("B", ignition.Backward, 290, -10,
			9.97, 8.42, 6.99, 5.64, 4.44, 3.38, 2.47, 1.64, 1.03, 0.56, 0.20, 0.04,
			0.01, 0.02, 0.31, 0.75, 1.34, 1.98, 2.98, 3.99, 5.15, 6.38, 7.96, 9.28),
		dialRun("C", ignition.Forward, 80, 15,
			6.54, 4.67, 4.07, 1.81, 0.84, 0.25, 0.02, 0.01, 0.45, 1.23, 2.36, 3.80, 5.53),
		dialRun("D", ignition.Backward, 260, -15,
			5.64, 3.88, 2.41, 1.32, 0.55, 0.11, 0.00, 0.14, 0.73, 1.68, 2.93, 4.56, 6.34),
	}
}

// neighbourSetup is the same engine's neighbour, whose cylinder stands 8 mm to
// one side of the crank, he does not remember which.
func neighbourSetup() ignition.Setup {
	s := demoSetup()
	rim, err := ignition.NewRimOfGirth(1000 * units.Millimetre)
	if err != nil {
		panic(err)
	}
	s.Rim, s.Lean = rim, units.Exact(units.Angle(0))
	s.Offset, s.SideUnknown = units.Exact(8*units.Millimetre), true
	s.SlackKnown = true
	return s
}

func neighbourSeries() ignition.Series {
	return dialRun("", ignition.Forward, 60, 10,
		18.00, 15.89, 13.81, 11.78, 10.03, 8.18, 6.66, 5.24, 3.93, 2.85, 1.89, 1.16, 0.59, 0.22, 0.02,
		0.03, 0.20, 0.58, 1.15, 1.89, 2.80, 3.87, 5.19, 6.57, 8.12, 9.86, 11.67, 13.55, 15.62, 17.75)
}

func inMM(l units.Length) float64 { return l.Millimetres() }

// partOf is a series of some of the readings of another.
func partOf(s ignition.Series, from, to int) []ignition.Series {
	s.Readings = s.Readings[from:to]
	return []ignition.Series{s}
}

func only(s ignition.Series) []ignition.Series { return []ignition.Series{s} }

// demoStop is the owner's five tries with the positive stop.
func demoStop() []ignition.StopPair {
	const mm = units.Millimetre
	return []ignition.StopPair{
		{Forward: 54.2 * mm, Backward: 292.2 * mm},
		{Forward: 54.0 * mm, Backward: 293.0 * mm},
		{Forward: 54.0 * mm, Backward: 293.0 * mm},
		{Forward: 53.4 * mm, Backward: 293.8 * mm},
		{Forward: 54.1 * mm, Backward: 292.8 * mm},
	}
}

// demoEye is the owner's four tries at where the needle stops.
func demoEye() []units.Length {
	const mm = units.Millimetre
	return []units.Length{164 * mm, 177 * mm, 172 * mm, 175 * mm}
}
