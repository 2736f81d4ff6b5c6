package geometry

import (
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Printed answers that the formula does not give, each with what went wrong. They
// stand here so that nobody takes them for checks.
func TestMisprints(t *testing.T) {
	const rpm, deg, in = units.RevolutionPerMinute, units.Degree, units.Inch
	exercise := mustCrank(t, 250*mm, 500*mm, 0)
	sarkar := mustCrank(t, 120*mm, 240*mm, 0)
	_, down12, err := sarkar.AnglesAtDrop(12 * mm)
	if err != nil {
		t.Fatal(err)
	}
	agrawalCylinder := mustCylinder(t, 200*mm, 450*mm, 1000*mm)
	pulkrabekCrank := mustCrank(t, squareBore(t), 166*mm, 0)
	forum := mustCrank(t, 10*in, 7*in, 0)
	for _, tc := range []struct {
		name   string
		got    float64
		figure figures.Figure
		reason string
	}{
		{"velocity, m/s", exercise.Velocity(45*deg, 600*rpm).MetresPerSecond(),
			figures.Figure{Printed: "6.45", Source: "Khurmi & Gupta, Theory of Machines, exercise with a crank of 125 mm and a rod of 500 mm"}, "answer taken from a drawing"},
		{"rod speed, rad/s", exercise.RodSpeed(45*deg, 600*rpm).RadiansPerSecond(),
			figures.Figure{Printed: "10.8", Source: "Khurmi & Gupta, Theory of Machines, exercise with a crank of 125 mm and a rod of 500 mm"}, "answer taken from a drawing"},
		{"angle at a drop", down12.Degrees(),
			figures.Figure{Printed: "32", Source: "Sarkar, Theory of Machines, ch. 5 illustration 5" + companion}, "answer taken from a drawing"},
		{"swept volume, m³", agrawalCylinder.Swept().CubicMetres(),
			figures.Figure{Printed: "0.014139", Source: agrawal + companion}, "pi taken as 3.142"},
		{"velocity, m/s", pulkrabekCrank.Velocity(20*deg, 3600*rpm).MetresPerSecond(),
			figures.Figure{Printed: "6.89", Source: pulkrabek}, "a ratio rounded to 0.668 on the way"},
		{"velocity, in/min", forum.Velocity(60*deg, 200*rpm).InchesPerSecond() * 60,
			figures.Figure{Printed: "7917", Source: "physicsforums.com, thread 543306"}, "a value rounded to 6.30 on the way"},
	} {
		t.Run(tc.name, func(t *testing.T) { tc.figure.Misprint(t, tc.got, tc.reason) })
	}
}
