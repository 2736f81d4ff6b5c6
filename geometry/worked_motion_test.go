package geometry

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Books seen through the notebooks that work their examples again.
const (
	companion  = ", as worked in the FOSSEE textbook companion notebooks (IIT Bombay)"
	khurmi     = "Khurmi & Gupta, Theory of Machines, Example "
	meriam     = "Meriam & Kraige, Engineering Mechanics: Dynamics, Sample Problem "
	gupta      = "Gupta, Fundamentals of Internal Combustion Engines, Example "
	fromMemory = " (from memory)"
	homework   = "university homework sheet on the slider crank; lengths of 10 in and 20 in inferred from its answers"
	speedForum = "quartermile.ws, topic 7907 on piston speed"
)

func mustTwoTerm(t *testing.T, throw, rod units.Length) TwoTerm {
	t.Helper()
	a, err := mustCrank(t, 2*throw, rod, 0).TwoTerm()
	if err != nil {
		t.Fatal(err)
	}
	return a
}

func TestWorked_twoTerm(t *testing.T) {
	const rpm, m, deg = units.RevolutionPerMinute, units.Metre, units.Degree
	ex3 := mustTwoTerm(t, 0.3*m, 1*m)
	ex4 := mustTwoTerm(t, 0.3*m, 1.5*m)
	ex5 := mustTwoTerm(t, 150*mm, 600*mm)
	note := mustTwoTerm(t, 0.1*m, 0.2*m)
	for _, tc := range []struct {
		name   string
		got    float64
		figure figures.Figure
	}{
		{"angle of greatest speed", ex3.FastestAngle().Degrees(), figures.Figure{Printed: "75", Source: khurmi + "15.3, p. 527" + companion}},
		{"greatest speed, m/s", ex3.Velocity(ex3.FastestAngle(), 200*rpm).MetresPerSecond(), figures.Figure{Printed: "6.54", Source: khurmi + "15.3, p. 527" + companion}},
		{"velocity, m/s", ex4.Velocity(40*deg, 180*rpm).MetresPerSecond(), figures.Figure{Printed: "4.19", Source: khurmi + "15.4, p. 528" + companion}},
		{"acceleration, m/s²", ex4.Acceleration(40*deg, 180*rpm).MetresPerSecondSquared(), figures.Figure{Printed: "85.36", Source: khurmi + "15.4, p. 528" + companion}},
		{"angle of no acceleration", ex4.FastestAngle().Degrees(), figures.Figure{Printed: "79.27", Source: khurmi + "15.4, p. 528" + companion}},
		{"velocity, m/s", ex5.Velocity(60*deg, 450*rpm).MetresPerSecond(), figures.Figure{Printed: "6.9", Source: khurmi + "15.5, p. 528" + companion}},
		{"acceleration, m/s²", ex5.Acceleration(60*deg, 450*rpm).MetresPerSecondSquared(), figures.Figure{Printed: "124.91", Source: khurmi + "15.5, p. 528" + companion}},
		{"rod speed, rad/s", ex5.RodSpeed(60*deg, 450*rpm).RadiansPerSecond(), figures.Figure{Printed: "5.9", Source: khurmi + "15.5, p. 528" + companion}},
		{"rod acceleration, rad/s², the book prints its size", ex5.RodAcceleration(60*deg, 450*rpm).RadiansPerSecondSquared(), figures.Figure{Printed: "-481", Source: khurmi + "15.5, p. 528" + companion}},
		{"angle of no acceleration", note.FastestAngle().Degrees(), figures.Figure{Printed: "68.5", Source: "audifans mailing list, msg02701, January 1998"}},
	} {
		t.Run(tc.name, func(t *testing.T) { tc.figure.Check(t, tc.got) })
	}
}

func TestWorked_motion(t *testing.T) {
	const rpm, m, deg, in = units.RevolutionPerMinute, units.Metre, units.Degree, units.Inch
	ex9 := mustCrank(t, 100*mm, 200*mm, 0)
	_, down10, err := ex9.AnglesAtDrop(10 * mm)
	if err != nil {
		t.Fatal(err)
	}
	harmonic := mustCrank(t, 2*m, 1e12*m, 0) // endless rod
	_, down25, err := harmonic.AnglesAtDrop(0.25 * m)
	if err != nil {
		t.Fatal(err)
	}
	engine := mustCrank(t, 10*in, 14*in, 0)
	tayal := mustCrank(t, 0.24*m, 0.6*m, 0)
	v6 := mustCrank(t, squareBore(t), 17.2*units.Centimetre, 0)
	car := mustCrank(t, 3.307*in, 6.024*in, 0)
	_, fastest := car.FastestAngles()
	sheet := mustCrank(t, 20*in, 20*in, 0)
	for _, tc := range []struct {
		name   string
		got    float64
		figure figures.Figure
	}{
		{"angle at a drop, read off a drawing to half a degree", down10.Degrees(), figures.Figure{Printed: "33", Source: khurmi + "15.9, p. 534" + companion}},
		{"rod angle", ex9.RodAngle(33 * deg).Degrees(), figures.Figure{Printed: "7.8257", Source: khurmi + "15.9, p. 534" + companion}},
		{"harmonic velocity, m/s", harmonic.Velocity(down25, 120*rpm).MetresPerSecond(), figures.Figure{Printed: "8.31", Source: khurmi + "4.1, p. 75" + companion}},
		{"harmonic acceleration, m/s²", harmonic.Acceleration(down25, 120*rpm).MetresPerSecondSquared(), figures.Figure{Printed: "118.44", Source: khurmi + "4.1, p. 75" + companion}},
		{"rod angle", engine.RodAngle(60 * deg).Degrees(), figures.Figure{Printed: "18.02", Source: meriam + "5/15, p. 376" + companion}},
		{"rod speed, rad/s", engine.RodSpeed(60*deg, 1500*rpm).RadiansPerSecond(), figures.Figure{Printed: "29.5", Source: meriam + "5/9, p. 353" + companion}},
		{"speed of a point on the rod 10 in from the pin, ft/s", speedOnRod(engine, 10*in, 60*deg, 1500*rpm).FeetPerSecond(), figures.Figure{Printed: "64.1", Source: meriam + "5/9, p. 353" + companion}},
		{"velocity, ft/s", engine.Velocity(60*deg, 1500*rpm).FeetPerSecond(), figures.Figure{Printed: "67.3", Source: meriam + "5/9" + fromMemory}},
		{"acceleration, ft/s²", engine.Acceleration(60*deg, 1500*rpm).FeetPerSecondSquared(), figures.Figure{Printed: "3310", Place: 10, Source: meriam + "5/15" + fromMemory}},
		{"rod acceleration, rad/s², the book prints its size", engine.RodAcceleration(60*deg, 1500*rpm).RadiansPerSecondSquared(), figures.Figure{Printed: "-7740", Place: 10, Source: meriam + "5/15" + fromMemory}},
		{"rod speed, rad/s", tayal.RodSpeed(30*deg, 300*rpm).RadiansPerSecond(), figures.Figure{Printed: "5.47", Source: "Tayal, Engineering Mechanics, Example 21.5" + companion}},
		{"velocity, m/s", tayal.Velocity(30*deg, 300*rpm).MetresPerSecond(), figures.Figure{Printed: "2.21", Source: "Tayal, Engineering Mechanics, Examples 21.5 and 21.12" + companion}},
		{"velocity, m/s", v6.Velocity(20*deg, 3000*rpm).MetresPerSecond(), figures.Figure{Printed: "5.71", Source: gupta + "16.1, p. 519" + companion}},
		{"drop, cm", v6.Drop(20 * deg).Centimetres(), figures.Figure{Printed: "0.32", Source: gupta + "16.1, p. 519" + companion}},
		{"pin height at the top, in", car.PinHeight(0).Inches(), figures.Figure{Printed: "7.68", Source: speedForum}},
		{"greatest speed, in/s", car.Velocity(fastest, 6000*rpm).InchesPerSecond(), figures.Figure{Printed: "1078", Source: speedForum}},
		{"angle of greatest speed", fastest.Degrees(), figures.Figure{Printed: "75.6", Source: speedForum}},
		{"pin height, in", car.PinHeight(75.6235 * deg).Inches(), figures.Figure{Printed: "6.218", Source: speedForum}},
		{"velocity, in/s", sheet.Velocity(45*deg, 1).InchesPerSecond(), figures.Figure{Printed: "9.744", Source: homework}},
		{"rod speed, rad/s", sheet.RodSpeed(45*deg, 1).RadiansPerSecond(), figures.Figure{Printed: "0.378", Source: homework}},
		{"half a turn less the rod angle", 180 - sheet.RodAngle(45*deg).Degrees(), figures.Figure{Printed: "159.295", Source: homework}},
	} {
		t.Run(tc.name, func(t *testing.T) { tc.figure.Check(t, tc.got) })
	}
}

// With an offset books count the angle from where the crank points up the cylinder.
func TestWorked_offset(t *testing.T) {
	norton := mustCrank(t, 80*mm, 120*mm, -20*mm)
	theta := 60*units.Degree - norton.TopLag()
	figures.Figure{Printed: "152.91", Source: "Norton, Design of Machinery, Example 4-2" + fromMemory}.
		Check(t, 180-norton.RodAngle(theta).Degrees())
	figures.Figure{Printed: "126.84", Source: "Norton, Design of Machinery, Example 4-2" + fromMemory}.
		Check(t, norton.PinHeight(theta).Millimetres())

	const cm = units.Centimetre
	straight := mustCrank(t, 6*cm, 12*cm, 0)
	over := mustCrank(t, 6*cm, 12*cm, 0.2*cm)
	push := units.Force(float64(50*units.Bar)*float64(Circle(6.5*cm))) - 900*units.Newton
	for _, tc := range []struct {
		name   string
		got    units.Force
		figure figures.Figure
	}{
		{"rod force", straight.RodForce(90*units.Degree, push), figures.Figure{Printed: "16.206", Source: gupta + "13.2, p. 424" + companion}},
		{"side thrust", straight.SideThrust(90*units.Degree, push), figures.Figure{Printed: "4.05", Source: gupta + "13.2, p. 424" + companion}},
		{"side thrust with the pin set over", over.SideThrust(90*units.Degree-over.TopLag(), push), figures.Figure{Printed: "3.765", Source: gupta + "13.2, p. 424" + companion}},
	} {
		t.Run(tc.name, func(t *testing.T) { tc.figure.Check(t, tc.got.Newtons()/1000) })
	}
}

// speedOnRod is the speed of a point of the rod a distance from the gudgeon pin:
// the piston's speed and the rod's turning about the pin put together.
func speedOnRod(c Crank, fromPin units.Length, theta units.Angle, w units.AngularSpeed) units.Speed {
	sin, cos := c.RodAngle(theta).Sincos()
	swing := float64(fromPin) * float64(c.RodSpeed(theta, w))
	return units.Speed(math.Hypot(swing*cos, swing*sin-float64(c.Velocity(theta, w))))
}

// squareBore is the bore of one of six cylinders of three litres together, bore and
// stroke the same.
func squareBore(t *testing.T) units.Length {
	t.Helper()
	b, err := BoreOfSwept(500*units.CubicCentimetre, 1)
	if err != nil {
		t.Fatal(err)
	}
	return b
}
