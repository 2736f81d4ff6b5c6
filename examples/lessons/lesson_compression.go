package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// overClearance is the compression ratio counted from a distance of the piston
// below its top: the stroke, or where the cylinder is shut. The slip leaves the
// clearance out of the upper line.
func overClearance(bore, stroke, from units.Length, clearance units.Volume) (pair[units.Ratio], geometry.Cylinder, error) {
	crank, err := geometry.NewCrank(stroke, 2*stroke)
	if err != nil {
		return pair[units.Ratio]{}, geometry.Cylinder{}, err
	}
	cylinder, err := geometry.NewCylinder(bore, crank)
	if err != nil {
		return pair[units.Ratio]{}, cylinder, err
	}
	ratio, err := cylinder.Compression(clearance, from)
	return pair[units.Ratio]{right: ratio.Trapped, slip: units.Ratio(cylinder.SweptBelow(from) / clearance)}, cylinder, err
}

func compression() (lesson, error) {
	const bore, stroke, clearance = 200 * units.Millimetre, 450 * units.Millimetre, 2 * units.Litre
	w, cylinder, err := overClearance(bore, stroke, stroke, clearance)
	const bore2, stroke2, from2, clearance2 = 60 * units.Millimetre, 62 * units.Millimetre, 43 * units.Millimetre, 24 * units.Millilitre
	x, _, err2 := overClearance(bore2, stroke2, from2, clearance2)
	whole, _, err3 := overClearance(bore2, stroke2, stroke2, clearance2)
	l := lesson{
		Key: "compression", Title: "Compression",
		Purpose: []string{
			"The compression ratio says how small the charge is squeezed. There are two in use: from the bottom of the stroke, and from where the cylinder is really shut. A two-stroke's makers have printed either, so know which you have.",
		},
		Cautions: []string{"Measure the clearance with thin oil and not with petrol, away from flame, the engine cold and the plug lead earthed. A raised ratio loads an old crank and casting as nobody designed them to be loaded."},
		Derivation: []line{
			{"Above the piston at its top there is left the clearance volume Vc, plug in place. A piston that is x below its top has laid open", "V = (π/4) B² x"},
			{"Before squeezing the charge fills both, afterwards the clearance alone:", "ratio = (V + Vc) / Vc = 1 + V / Vc"},
			{"With x the whole stroke this is the geometric ratio. With x the height at which the last port shuts it is the trapped ratio, which is the smaller.", ""},
			{"Backwards, the clearance that gives a wanted ratio:", "Vc = V / (ratio − 1)"},
		},
		Worked: worked{
			Given: fmt.Sprintf("Bore %s, stroke %s, clearance %s cc.", mm(bore, 0), mm(stroke, 0), plain(clearance.CubicCentimetres(), 0)),
			Steps: []sheet.Step{
				{What: "Swept by the piston", Formula: "V = (π/4) B² S", Result: plain(cylinder.Swept().CubicCentimetres(), 0) + " cc"},
				{What: "The ratio", Formula: "(V + Vc) / Vc", Numbers: fmt.Sprintf("(%s cc + %s cc) / %s cc", plain(cylinder.Swept().CubicCentimetres(), 0), plain(clearance.CubicCentimetres(), 0), plain(clearance.CubicCentimetres(), 0)), Result: plain(float64(w.right), 2)},
			},
			Printed: []printed{{What: "a textbook has this sum and gives", Digits: "8.07", Source: "Agrawal & Agrawal, Basic Mechanical Engineering, ch. 14, Example 7, p. 309, re-worked in the FOSSEE open textbook companion", Got: float64(w.right)}},
		},
		Slip: slip{Name: "the swept volume put over the clearance, the clearance left out above",
			Why: "At the bottom the charge fills the swept volume and the clearance. Left out above, the ratio is short by exactly one: look whether a single 1 mends the figure."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("A two-stroke: bore %s, stroke %s, clearance %s cc. The exhaust port shuts with the piston %s below its top. What is the trapped compression ratio, counted from there?", mm(bore2, 0), mm(stroke2, 0), plain(clearance2.CubicCentimetres(), 0), mm(from2, 0))}},
		Sources:  []string{"Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2; Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1 (chapters from memory)."},
	}
	settle(&l, sheet.Unit[units.Ratio]{Name: "", One: 1}, 2, w, x,
		mistake[units.Ratio]{"the whole stroke counted", "That is the geometric ratio. Until the exhaust port shuts nothing is squeezed, so the trapped ratio counts from there.", whole.right})
	l.picture("What is squeezed into what", "A cylinder with the piston at its top, dashed, and lower down where the exhaust port shuts. Between the two positions lies V, above the upper one the clearance Vc.", compressionDrawing())
	return l, first(err, err2, err3)
}

func compressionDrawing() string {
	d := picture.NewDrawing(120, 104)
	const left, right, head, top, shut = 34.0, 82.0, 14.0, 28.0, 68.0
	d.Hatch(box(left-8, head-8, right-left+16, 8), "compression-a").Hatch(box(left-8, head, 8, 86), "compression-b").Hatch(box(right, head, 8, shut-head), "compression-c").Hatch(box(right, shut+14, 8, 18), "compression-d")
	d.Fill(box(left, head, right-left, top-head), 0.8).Fill(box(left, top, right-left, shut-top), 0.93)
	d.Path([][2]float64{{left, top}, {right, top}}, picture.Heavy, picture.Dashed, false)
	d.Path(box(left+0.6, shut, right-left-1.2, 30), 2*picture.Heavy, picture.Solid, true)
	d.Text((left+right)/2, (head+top)/2+1.5, 4.5, picture.Centre, 0, "Vc").Text((left+right)/2, (top+shut)/2+1.5, 4.5, picture.Centre, 0, "V")
	d.Text((left+right)/2, shut+16, 4, picture.Centre, 0, "piston").Text(right+3, shut+8, 4, picture.Left, 0, "exhaust port")
	d.Line(right+8, top, right+22, top, picture.Fine).Line(right+8, shut, right+22, shut, picture.Fine)
	d.Dimension(right+18, top, right+18, shut, "").Text(right+21, (top+shut)/2, 4, picture.Left, 0, "x")
	d.Dimension(left, shut-5, right, shut-5, "B")
	return d.SVG()
}
