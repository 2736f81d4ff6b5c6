package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// inTheLeaningHole is what a gauge shows for a travel of the piston; the slip
// multiplies by the cosine where it should divide.
func inTheLeaningHole(lean units.Angle, travel units.Length) (pair[units.Length], error) {
	hole, err := geometry.NewPlugHole(lean)
	return pair[units.Length]{right: hole.Reading(travel), slip: hole.Travel(travel)}, err
}

func leaningHole() (lesson, error) {
	const lean, travel = 45 * units.Degree, 2.5 * units.Millimetre
	w, err := inTheLeaningHole(lean, travel)
	more, err2 := inTheLeaningHole(lean, 3*units.Millimetre)
	const lean2, travel2 = 28 * units.Degree, 4.8 * units.Millimetre
	x, err3 := inTheLeaningHole(lean2, travel2)
	const book = "Fichtel & Sachs 505 repair instructions"
	_, cos := lean.Sincos()
	l := lesson{
		Key: "lean", Title: "A gauge in a leaning hole",
		Purpose:  []string{"The plug hole leans, so a dial gauge in it does not stand along the bore. It moves by another amount than the piston does. This sum says what the dial must show for the drop on the card."},
		Cautions: turningCautions(),
		Derivation: []line{
			{"The tip rests on a flat crown. When the crown goes straight down by x, the tip slides across it and the plunger follows along its own line until it meets the crown again.", ""},
			{"The way along the plunger is the long side of a right-angled triangle. The drop x is the side next to the lean β:", "cos β = x / m"},
			{"So the dial moves by more than the piston:", "m = x / cos β      x = m cos β"},
			{"A domed or wedge-shaped crown does not keep to this: what counts then is where the tip touches. Equal readings either side of the top still find the top, whatever the crown.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A hole that leans by %s from the bore, a flat crown, the piston to be %s below its top.", deg(lean, 0), mm(travel, 1)),
			Steps: []sheet.Step{
				{What: "The cosine of the lean", Formula: "cos β", Result: plain(cos, 4)},
				{What: "What the dial must show", Formula: "m = x / cos β", Numbers: mm(travel, 1) + " / " + plain(cos, 4), Result: mm(w.right, 2)},
			},
			Printed: []printed{
				{What: "for 2.5 mm at 45° a maker's book has", Digits: "3.5", Unit: "mm", Source: book, Got: w.right.Millimetres()},
				{What: "for 3.0 mm the same book has", Digits: "4.2", Unit: "mm", Source: book, Got: more.right.Millimetres()},
			},
		},
		Slip: slip{Name: "multiplied by the cosine instead of divided",
			Why: "The dial must move by more than the piston, never by less: the slanting way is the longer one. If the figure came out smaller than the drop, it is upside down."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("The card says %s before the top. The plug hole leans by %s, the crown is flat. What must the dial show?", mm(travel2, 1), deg(lean2, 0))}},
		Sources:  []string{"Plane geometry, for a flat crown square to the bore.", "Checked by " + book + "."},
	}
	settle(&l, sheet.Millimetre, 2, w, x,
		mistake[units.Length]{"the lean left out", "The dial stands at a slant and moves by more than the piston.", travel2})
	l.picture("The gauge in the leaning hole", "The crown at the top and, dashed, a distance x lower. The plunger comes down along its own slanting line to meet the lower crown, and has moved by m, which is longer than x.", leanDrawing(35*units.Degree))
	return l, first(err, err2, err3)
}

func leanDrawing(lean units.Angle) string {
	d := picture.NewDrawing(120, 92)
	const left, right, top, drop = 14.0, 106.0, 52.0, 22.0
	d.Line(left, 14, left, 88, picture.Heavy).Line(right, 14, right, 88, picture.Heavy)
	d.Line(left, top, right, top, 2*picture.Heavy)
	d.Path([][2]float64{{left, top + drop}, {right, top + drop}}, 2*picture.Heavy, picture.Dashed, false)
	const x = 58.0
	x2, y2 := at(x, top, 48, lean)
	d.Path(slanted(x, top, 48, 3, lean), picture.Heavy, picture.Solid, true)
	sin, cos := lean.Sincos()
	m := drop / cos
	lowX, lowY := x-m*sin, top+drop
	d.Line(x, top, lowX, lowY, picture.Heavy)
	d.Path([][2]float64{{x, 8}, {x, lowY}}, picture.Fine, picture.DashDotted, false)
	d.Arc(x, top, 26, 0, lean.Degrees(), picture.Fine, picture.Solid)
	bx, by := at(x, top, 31, lean/2)
	d.Text(bx, by, 4, picture.Centre, 0, "β")
	d.Text(x+3, top+drop/2+1, 4.5, picture.Left, 0, "x")
	d.Text((x+lowX)/2-4, (top+lowY)/2+1, 4.5, picture.Right, 0, "m")
	d.Text(x2-6, y2+2, 4, picture.Right, 0, "plunger").Text(left+2, top-2, 4, picture.Left, 0, "crown at top")
	d.Text(left+2, top+drop+5, 4, picture.Left, 0, "crown lower")
	return d.SVG()
}
