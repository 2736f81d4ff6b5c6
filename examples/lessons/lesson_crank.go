package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// belowTheTop is how far the piston is down at a crank angle; the slip leaves
// the rod out, as if it were endless.
func belowTheTop(stroke, rod units.Length, theta units.Angle) (pair[units.Length], error) {
	c, err := geometry.NewCrank(stroke, rod)
	if err != nil {
		return pair[units.Length]{}, err
	}
	return pair[units.Length]{right: c.Drop(theta), slip: crankAlone(stroke, theta)}, nil
}

// crankAlone is the drop with an endless rod: r(1 − cos θ).
func crankAlone(stroke units.Length, theta units.Angle) units.Length {
	half, _ := (theta / 2).Sincos()
	return stroke * units.Length(half*half) // 1 − cos θ = 2 sin²(θ/2)
}

func crankAndDrop() (lesson, error) {
	const stroke, rod, theta = 86 * units.Millimetre, 172 * units.Millimetre, 20 * units.Degree
	w, err := belowTheTop(stroke, rod, theta)
	const stroke2, rod2, theta2 = 70 * units.Millimetre, 130 * units.Millimetre, 30 * units.Degree
	x, err2 := belowTheTop(stroke2, rod2, theta2)
	l := lesson{
		Key: "crank", Title: "Crank and drop",
		Purpose: []string{
			"Old cards give the spark as a distance of the piston from its top; new books give degrees. The crank, the rod and the piston are one triangle, and this sum goes from the one to the other.",
		},
		Cautions: turningCautions(),
		Derivation: []line{
			{"The crankpin goes round on a circle of radius r, half the stroke. At the top crank and rod lie in one line and the piston is r + l above the crank centre, l being the rod between centres.", ""},
			{"Turn by θ. The crankpin has come down to r cos θ above the centre, and stands r sin θ to one side. The rod now leans and reaches up by the third side of a right-angled triangle:", "√(l² − r² sin² θ)"},
			{"What is missing from r + l is the drop:", "x = r(1 − cos θ) + l − √(l² − r² sin² θ)"},
			{"The first part is the crank alone. The second is the leaning of the rod, and adds about a quarter as much near the top when the rod is four throws long. It is never nothing.", ""},
			{"Backwards, with y = r + l − x the height of the gudgeon pin, the law of cosines gives", "cos θ = (r² + y² − l²) / (2 r y)"},
		},
		Worked: worked{
			Given: fmt.Sprintf("A stroke of %s, a rod of %s between centres, the crank %s from the top.", mm(stroke, 0), mm(rod, 0), deg(theta, 0)),
			Steps: []sheet.Step{
				{What: "The crank alone, with r half the stroke", Formula: "r(1 − cos θ)", Numbers: fmt.Sprintf("%s × (1 − cos %s)", mm(stroke/2, 0), deg(theta, 0)), Result: mm(w.slip, 3)},
				{What: "The leaning of the rod", Formula: "l − √(l² − r² sin² θ)", Result: mm(w.right-w.slip, 3)},
				{What: "The drop", Formula: "x", Numbers: mm(w.slip, 3) + " + " + mm(w.right-w.slip, 3), Result: mm(w.right, 2)},
			},
			Printed: []printed{{What: "this very sum is in a textbook, which has", Digits: "0.32", Unit: "cm", Source: "Gupta, Fundamentals of Internal Combustion Engines, Example 16.1, p. 519, re-worked in the FOSSEE open textbook companion", Got: w.right.Centimetres()}},
		},
		Slip: slip{Name: "the rod left out, as if it were endless",
			Why: "r(1 − cos θ) is the drop of a pin on the crank. A rod of ordinary length leans, and takes the piston about a quarter further down near the top. Degrees got from a drop in that way are too many."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("Stroke %s, rod %s between centres. How far is the piston below its top when the crank is %s before it?", mm(stroke2, 0), mm(rod2, 0), deg(theta2, 0))}},
		Sources:  []string{"Every text on the theory of machines: Khurmi & Gupta, Theory of Machines, ch. 15; Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapters from memory)."},
	}
	whole, err3 := geometry.NewCrank(2*stroke2, rod2)
	settle(&l, sheet.Millimetre, 2, w, x,
		mistake[units.Length]{"the stroke put where the throw belongs", "r is half the stroke: crank centre to crankpin.", whole.Drop(theta2)})
	c, err4 := geometry.NewCrank(stroke, rod)
	if err := first(err, err2, err3, err4); err != nil {
		return l, err
	}
	d := picture.NewDrawing(120, 130)
	drawCrank(d, 45, 100, 400, c, 50*units.Degree)
	l.picture("Crank, rod and piston", "The crank of throw r has turned by θ from the top, the rod of length l leans from the crankpin to the gudgeon pin, and the piston stands the drop x below its highest place.", d.SVG())
	return l, l.dropChart(c)
}

// dropChart draws the drop with and without the rod.
func (l *lesson) dropChart(c geometry.Crank) error {
	deg, with := series(0, 60, 61, func(a float64) float64 { return c.Drop(units.Angle(a) * units.Degree).Millimetres() })
	_, without := series(0, 60, 61, func(a float64) float64 {
		return crankAlone(c.Stroke(), units.Angle(a)*units.Degree).Millimetres()
	})
	svg, err := chart(picture.NewChart("", "degrees from the top", "drop, mm").
		Curve("as it is", deg, with, picture.Solid).Curve("rod left out", deg, without, picture.Dashed).Legend(false, true).Down())
	l.picture("Drop against angle", fmt.Sprintf("Two curves that leave the top flat and fall ever faster. At 60° the piston is %.0f mm down; with the rod left out it would seem to be %.0f mm.", with[60], without[60]), svg)
	return err
}
