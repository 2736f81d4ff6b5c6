package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// alongTheRim turns degrees into an arc; the slip puts the diameter where the
// radius belongs.
func alongTheRim(diameter units.Length, theta units.Angle) (pair[units.Length], error) {
	rim, err := ignition.NewRim(diameter)
	return pair[units.Length]{right: rim.Arc(theta), slip: rim.Diameter() * units.Length(theta)}, err
}

func degreesAndArc() (lesson, error) {
	const across, theta = 400 * units.Millimetre, 25 * units.Degree
	w, err := alongTheRim(across, theta)
	const across2, theta2 = 356 * units.Millimetre, 24 * units.Degree
	x, err2 := alongTheRim(across2, theta2)
	rim, err3 := ignition.NewRim(across)
	l := lesson{
		Key: "degrees", Title: "Degrees and arc",
		Purpose: []string{
			"The card gives the spark in degrees. The engine has no degrees on it, but it has a flywheel. This sum tells how far along the rim to put the mark.",
			"With a pointer fixed to the engine, the spark mark lies ahead of the top dead centre mark, in the direction the wheel turns: it has to come past the pointer first.",
		},
		Cautions: turningCautions(),
		Derivation: []line{
			{"Once round the rim is one turn, 360 degrees, and measures", "C = π D"},
			{"Any part of a turn is the same part of the girth. So for an angle of θ degrees the way along the rim is", "s = π D θ / 360°"},
			{"In radians, where a whole turn is 2π, the same thing reads", "s = (D/2) θ"},
			{"Half of D stands there: the radius. Worked backwards, θ = 360° s / C. Best is to read the mark and the whole girth on one and the same tape, for then neither the diameter nor the thickness of the tape matters.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A rim %s across, a spark %s before top dead centre.", mm(across, 0), deg(theta, 0)),
			Steps: []sheet.Step{
				{What: "Once round the rim", Formula: "C = π D", Numbers: "3.1416 × " + mm(across, 0), Result: mm(rim.Girth(), 1)},
				{What: "For one degree", Formula: "C / 360", Result: mm(rim.PerDegree(), 4)},
				{What: "For the angle", Formula: "s = π D θ / 360°", Numbers: fmt.Sprintf("%s × %s / 360°", mm(rim.Girth(), 1), deg(theta, 0)), Result: mm(w.right, 1) + ", ahead of the top dead centre mark"},
			},
		},
		Slip: slip{Name: "the diameter put where the radius belongs",
			Why: "The formula in radians wants the radius. With the diameter the mark comes out twice as far away. A check that takes no time: 60 degrees is a little more than the radius, so 25 degrees must be less than half of it."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("A rim is %s across. The spark is to be %s before top dead centre. How far along the rim from the top dead centre mark is the spark mark?", mm(across2, 0), deg(theta2, 0))}},
		Sources:  []string{"Plane geometry: arc and angle of a circle.", "Which way the mark lies: derived, for a pointer that stands still and a rim that turns."},
	}
	settle(&l, sheet.Millimetre, 1, w, x,
		mistake[units.Length]{"3 used for π", "Three is short of π by 4.5 %, a degree in every 22.", 3 * across2 * units.Length(theta2/units.Turn)})
	l.picture("The arc on the rim", fmt.Sprintf("A rim of diameter D with top dead centre at the pointer; %s on, in the direction of rotation, stands the spark mark. The arc s runs along the rim between the two.", deg(theta, 0)), degreesDrawing(theta))
	return l, first(err, err2, err3)
}

func degreesDrawing(theta units.Angle) string {
	const x, y, r = 60, 58, 44
	d := picture.NewDrawing(120, 108)
	d.Circle(x, y, r, picture.Heavy, picture.Solid).Circle(x, y, 2, picture.Heavy, picture.Solid)
	d.Arc(x, y, r, 0, theta.Degrees(), 4*picture.Heavy, picture.Solid)
	ray(d, x, y, 0, r+3, 0, picture.Fine)
	ray(d, x, y, 0, r+3, theta, picture.Fine)
	d.Arc(x, y, 18, 0, theta.Degrees(), picture.Fine, picture.Solid)
	tx, ty := at(x, y, 23, theta/2)
	d.Text(tx, ty+1, 4, picture.Centre, 0, "θ")
	sx, sy := at(x, y, r-6, theta/2)
	d.Text(sx, sy+1, 4.5, picture.Centre, 0, "s")
	d.Fill([][2]float64{{x - 2, 4}, {x + 2, 4}, {x, y - r - 1.5}}, 0).Text(x-4, 9, 4, picture.Right, 0, "pointer, TDC")
	mx, my := at(x, y, r+5, theta)
	d.Text(mx, my, 4, picture.Left, 0, "spark mark")
	d.Arc(x, y, r-12, 300, 335, picture.Fine, picture.Solid)
	ax, ay := at(x, y, r-12, 335*units.Degree)
	d.Fill([][2]float64{{ax + 3, ay - 1}, {ax - 1, ay - 1.6}, {ax, ay + 2}}, 0).Text(x-17, y-10, 4, picture.Centre, 0, "turns")
	d.Dimension(x-r, y+14, x+r, y+14, "D")
	return d.SVG()
}

// turningCautions are for whoever turns an engine by hand.
func turningCautions() []string {
	return []string{"Before you turn an engine by hand: fuel off, plug out, its lead earthed. A magneto sparks at a touch. Keep sleeves, hair and fingers clear of wheel, chain and belt."}
}
