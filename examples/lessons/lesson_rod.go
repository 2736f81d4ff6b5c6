package main

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// withUnknownRod is the crank angle at a drop for a rod of four throws; the slip
// takes the rod as endless.
func withUnknownRod(stroke, drop units.Length) (pair[units.Angle], geometry.Spread[units.Angle], error) {
	s, err := geometry.NewStrokeOnly(stroke, geometry.UsualRods())
	if err != nil {
		return pair[units.Angle]{}, geometry.Spread[units.Angle]{}, err
	}
	theta, err := s.AngleAtDrop(drop)
	endless := 2 * math.Asin(math.Sqrt(float64(drop/stroke))) // x = S sin²(θ/2)
	return pair[units.Angle]{right: theta.Middle, slip: units.Angle(endless)}, theta, err
}

func rodUnknown() (lesson, error) {
	const stroke, drop = 80 * units.Millimetre, 5 * units.Millimetre
	w, spread, err := withUnknownRod(stroke, drop)
	const stroke2, drop2 = 64 * units.Millimetre, 4.5 * units.Millimetre
	x, _, err2 := withUnknownRod(stroke2, drop2)
	book, _, err3 := withUnknownRod(42*units.Millimetre, 2.5*units.Millimetre)
	l := lesson{
		Key: "rod", Title: "The rod is not known",
		Purpose:  []string{"A card gives a piston drop, the stroke can be measured down the plug hole, but the rod is inside a crankcase nobody wants to open. How many degrees is it, and how wrong can it be?"},
		Cautions: turningCautions(),
		Derivation: []line{
			{"Near the top, for small angles in radians, the triangle of the last lesson boils down to", "x ≈ (r/2)(1 + r/l) θ²"},
			{"The rod enters only through 1 + r/l. For most engines l is between 3.5 and 4.5 throws, so that this is between", "1 + 1/3.5 = 1.286   and   1 + 1/4.5 = 1.222"},
			{"and the angle goes as one over the square root of it: five per cent between the ends becomes two and a half, a third of a degree either way at 25°. Take four throws, and write down the spread beside it. In full:", "θ from l = 3.5 r to l = 4.5 r"},
			{"If a third of a degree matters, find the rod: a few dial readings well away from the top tell it.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A stroke of %s. The card says %s before the top.", mm(stroke, 0), mm(drop, 0)),
			Steps: []sheet.Step{
				{What: "A rod of 4 throws, the middle of the usual range", Formula: "l = 4 × S/2", Numbers: "4 × " + mm(stroke/2, 0), Result: mm(4*stroke/2, 0)},
				{What: "The angle with that rod", Formula: "cos θ = (r² + y² − l²) / (2 r y)", Result: deg(spread.Middle, 1)},
				{What: "With rods of 3.5 and 4.5 throws", Result: deg(spread.Least, 1) + " to " + deg(spread.Most, 1)},
			},
			Printed: []printed{{What: "a maker's book gives 2.5 mm of piston, on a stroke of 42 mm (the stroke from memory), as about", Digits: "25", Unit: "°", Source: "Fichtel & Sachs 505 repair instructions", Got: book.right.Degrees()}},
		},
		Slip: slip{Name: "the unknown rod left out altogether",
			Why: "Not knowing the rod is no reason to make it endless. Here that is three degrees of advance too many, many times as much as any usual rod can differ from four throws."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("The stroke is %s, the rod is not known, and the timing is given as %s before the top. How many degrees is that with a rod of four throws?", mm(stroke2, 0), mm(drop2, 1))}},
		Sources: []string{
			"The triangle: as in the lesson before. The short form: its series, derived.",
			"3.5 to 4.5 throws: common practice, no source.",
		},
	}
	settle(&l, sheet.Degree, 1, w, x)
	if err := first(err, err2, err3); err != nil {
		return l, err
	}
	return l, l.rodChart(stroke, drop, w.slip)
}

// rodChart draws the angle against the length of the rod.
func (l *lesson) rodChart(stroke, drop units.Length, endless units.Angle) error {
	var fail error
	throws, angle := series(2.5, 7, 46, func(n float64) float64 {
		c, err := geometry.NewCrank(stroke, units.Length(n)*stroke/2)
		before, _, err2 := c.AnglesAtDrop(drop)
		fail = first(fail, err, err2)
		return before.Degrees()
	})
	svg, err := chart(picture.NewChart("", "rod, in throws", "degrees for the same drop").
		Curve("", throws, angle, picture.Solid).Level(endless.Degrees(), "endless rod").To(7, endless.Degrees()+0.5).At(3.5, "usual from").At(4.5, "to"))
	l.picture("Angle against rod", fmt.Sprintf("A curve that rises slowly from short rods to long ones and never reaches the line of the endless rod, %.1f°. Between 3.5 and 4.5 throws it hardly moves.", endless.Degrees()), svg)
	return first(fail, err)
}
