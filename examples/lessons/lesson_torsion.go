package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

var newtonMillimetre = sheet.Unit[units.Torque]{Name: "N\u00a0mm", One: units.NewtonMillimetre}

// A coil is a torsion spring as it is measured, with Young's modulus.
type coil struct {
	wire, outside units.Length
	turns         float64
	e             units.Pressure
}

// leverTorque is what the spring pushes with when wound by an angle; the slip
// takes the outside for the mean diameter.
func leverTorque(c coil, wind units.Angle) (pair[units.Torque], springs.Torsion, error) {
	wire, err := springs.RoundWire(c.wire)
	steel, err2 := springs.NewMaterial(springs.MaterialSpec{Name: "spring steel", YoungsModulus: c.e})
	spec := springs.TorsionSpec{Wire: wire, OutsideDiameter: c.outside, BodyTurns: c.turns, Material: steel}
	right, err3 := springs.NewTorsion(spec)
	spec.MeanDiameter, spec.OutsideDiameter = c.outside, 0
	slip, err4 := springs.NewTorsion(spec)
	return pair[units.Torque]{right: right.Torque(wind), slip: slip.Torque(wind)}, right, first(err, err2, err3, err4)
}

func torsionSpring() (lesson, error) {
	const m, gpa = units.Millimetre, units.Gigapascal
	c, wind := coil{2 * m, 18 * m, 6, 206 * gpa}, 90*units.Degree
	w, s, err := leverTorque(c, wind)
	c2, wind2 := coil{1.5 * m, 14 * m, 5, 206 * gpa}, 70*units.Degree
	x, s2, err2 := leverTorque(c2, wind2)
	book, err3 := bookTorsion()
	num := func(t units.Torque, decimals int) string { return sheet.Plain(t, newtonMillimetre, decimals) }
	l := lesson{
		Key: "torsion", Title: "The torsion spring",
		Purpose:  []string{"A coil of wire over a pin, one leg against the casting, the other against the lever. This sum says how hard it pushes when it is wound on by an angle."},
		Cautions: springs.Cautions(springs.Handling),
		Derivation: []line{
			{"The name misleads: the wire of a torsion spring is bent, not twisted. Every piece of it carries the same moment M and bends a little more. A length L of wire with the stiffness E I bends by", "θ = M L / (E I)"},
			{"Round wire has I = π d⁴/64. In N coils of mean diameter D there is L = π D N. Put in:", "θ = 64 M D N / (E d⁴)      θ in radians"},
			{"So the rate, torque for a radian, is", "k = E d⁴ / (64 D N)"},
			{"The diameter of the wire counts four times: two per cent on it is eight on the torque. Measure the wire with a micrometer, in several places, on clean metal.", ""},
			{"Two design constants are published that allow for friction and give rates 5.7 and 8.3 per cent lower. This page has the pure theory; whichever you use, say which.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("Wire of %s, coil %s over the outside, %s coils, E = %s GPa, wound on by %s.", mm(c.wire, 0), mm(c.outside, 0), plain(c.turns, 0), plain(c.e.Gigapascals(), 0), deg(wind, 0)),
			Steps: []sheet.Step{
				{What: "The mean diameter", Formula: "D = outside − d", Numbers: mm(c.outside, 0) + " − " + mm(c.wire, 0), Result: mm(s.MeanDiameter(), 0)},
				{What: "The rate", Formula: "k = E d⁴ / (64 D N)", Result: plain(s.Rate().NewtonMillimetresPerRadian(), 1) + " N mm a radian, " + plain(s.Rate().NewtonMillimetresPerDegree(), 2) + " N mm a degree"},
				{What: "The torque", Formula: "M = k θ", Numbers: fmt.Sprintf("%s N mm × %s", plain(s.Rate().NewtonMillimetresPerRadian(), 1), plain(wind.Radians(), 4)), Result: num(w.right, 1)},
				{What: "What it stores", Formula: "M θ / 2", Result: plain(s.Energy(wind).Joules(), 2) + " J"},
			},
			Printed: []printed{{What: "with the design constant 10.8 in place of 10.186, wire of 0.072 in, D of 0.5218 in and 4.657 turns, a textbook has a rate per turn of", Digits: "29.18", Unit: "lbf in", Source: "Shigley, Mechanical Engineering Design, Example 10-8 (from memory)", Got: book.Rate().PoundForceInchesPerTurn()}},
		},
		Slip: slip{Name: "the outside diameter taken for the mean",
			Why: "The wire is bent along its middle, so it is the mean diameter that counts, outside less one wire. The outside makes the spring seem softer, and the more so the tighter it is coiled."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("Wire of %s, %s over the outside, %s coils, E = %s GPa, legs short enough to leave out. What torque does it give wound on by %s, by pure theory?", mm(c2.wire, 1), mm(c2.outside, 0), plain(c2.turns, 0), plain(c2.e.Gigapascals(), 0), deg(wind2, 0))}},
		Sources: []string{
			"Bending of a bar; Shigley, Mechanical Engineering Design, eqs. 10-50 and 10-51 (from memory); EN 13906-3.",
			"Commercial torsion springs are held to plus and minus 10 per cent: try it on the bench, behind a guard.",
		},
	}
	settle(&l, newtonMillimetre, 1, w, x,
		mistake[units.Torque]{"the inside diameter taken for the mean", "Mean is outside less one wire, inside plus one wire.", x.right * units.Torque((c2.outside-c2.wire)/(c2.outside-2*c2.wire))},
		mistake[units.Torque]{"the rate a radian multiplied by degrees", "k = E d⁴/(64 D N) is for a radian, 57.3 degrees.", units.Torque(s2.Rate().NewtonMillimetresPerRadian()*wind2.Degrees()) * units.NewtonMillimetre})
	l.picture("A torsion spring, seen along its pin", "A coil of mean diameter D on a pin, with two straight legs. One leg stands still, the other is wound on by θ from its free place, dashed, so that the coil gets smaller.", torsionDrawing())
	return l, first(err, err2, err3)
}

// bookTorsion is the spring of Shigley's example with its figures as printed.
func bookTorsion() (springs.Torsion, error) {
	wire, err := springs.RoundWire(0.072 * units.Inch)
	steel, err2 := springs.NewMaterial(springs.MaterialSpec{Name: "music wire", YoungsModulus: 28.5e6 * units.PoundPerSquareInch})
	s, err3 := springs.NewTorsion(springs.TorsionSpec{Wire: wire, MeanDiameter: 0.5218 * units.Inch, BodyTurns: 4.657, Material: steel, Constant: springs.Allowance108})
	return s, first(err, err2, err3)
}

func torsionDrawing() string {
	d := picture.NewDrawing(120, 96)
	const x, y, r = 56.0, 56.0, 22.0
	d.Circle(x, y, r+2, picture.Heavy, picture.Solid).Circle(x, y, r-2, picture.Heavy, picture.Solid).Circle(x, y, r, picture.Fine, picture.DashDotted)
	d.Circle(x, y, 13, picture.Heavy, picture.Solid)
	leg := func(a float64, s picture.Stroke) {
		x1, y1 := at(x, y, r, units.Angle(a)*units.Degree)
		x2, y2 := at(x1, y1, 34, units.Angle(a+90)*units.Degree)
		d.Path([][2]float64{{x1, y1}, {x2, y2}}, 3*picture.Heavy, s, false)
	}
	leg(0, picture.Solid)
	leg(-50, picture.Dashed)
	x1, y1 := at(x, y, r, 180*units.Degree)
	d.Line(x1, y1, x1+34, y1, 3*picture.Heavy)
	d.Arc(x, y, r+20, 12, 57, picture.Fine, picture.Solid)
	tx, ty := at(x, y, r+25, 27*units.Degree)
	d.Text(tx, ty, 4.5, picture.Centre, 0, "θ")
	d.Dimension(x-r, y+r+12, x+r, y+r+12, "D").Line(x-r, y, x-r, y+r+14, picture.Fine).Line(x+r, y, x+r, y+r+14, picture.Fine)
	d.Text(x, y+1.5, 4, picture.Centre, 0, "pin")
	return d.SVG()
}
