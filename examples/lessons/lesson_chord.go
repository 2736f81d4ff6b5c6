package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// acrossTheRim turns a straight distance between two marks into the angle
// between them; the slip reads it as if it lay along the rim.
func acrossTheRim(diameter, chord units.Length) (pair[units.Angle], error) {
	rim, err := ignition.NewRim(diameter)
	if err != nil {
		return pair[units.Angle]{}, err
	}
	theta, err := rim.AngleOfChord(chord)
	return pair[units.Angle]{right: theta, slip: rim.AngleOfArc(chord)}, err
}

func chordAndArc() (lesson, error) {
	const across, chord = 400 * units.Millimetre, 140 * units.Millimetre
	w, err := acrossTheRim(across, chord)
	const across2, chord2 = 300 * units.Millimetre, 120 * units.Millimetre
	x, err2 := acrossTheRim(across2, chord2)
	rim, err3 := ignition.NewRim(across)
	ratio := float64(chord / across)
	l := lesson{
		Key: "chord", Title: "Chord and arc",
		Purpose:  []string{"Two marks on a rim, and a straight rule or a pair of dividers between them. The rule cuts the corner: it goes straight where the rim goes round. This sum gets the true angle from the straight distance."},
		Cautions: turningCautions(),
		Derivation: []line{
			{"Draw the two radii to the marks and the chord c between them. The triangle has two equal sides, so a line from the centre to the middle of the chord halves both the angle and the chord, and stands square on it.", ""},
			{"In either half the radius is the long side, and half the chord stands opposite half the angle:", "sin(θ/2) = (c/2) / (D/2) = c / D"},
			{"So", "c = D sin(θ/2)      θ = 2 arcsin(c/D)"},
			{"For a small angle the sine is nearly the angle itself and chord and arc agree. They part company as the square: the chord is short by 0.13 % at 10°, 0.5 % at 20°, 1.1 % at 30°, and 4.5 % at 60°.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A rim %s across; a rule held straight between the two marks shows %s.", mm(across, 0), mm(chord, 0)),
			Steps: []sheet.Step{
				{What: "Chord over diameter", Formula: "c / D", Numbers: mm(chord, 0) + " / " + mm(across, 0), Result: plain(ratio, 4)},
				{What: "The angle whose sine that is, which is half of the one wanted", Formula: "arcsin(c/D)", Result: deg(w.right/2, 2)},
				{What: "The angle", Formula: "θ = 2 arcsin(c/D)", Result: deg(w.right, 1)},
				{What: "To set it out again with a tape that lies on the rim", Formula: "s = (D/2) θ", Result: mm(rim.Arc(w.right), 1)},
			},
		},
		Slip: slip{Name: "the straight rule read as if it lay along the rim",
			Why: "A chord is always shorter than its arc, so the angle comes out too small, and the more so the wider it is. Measure with something that bends round the rim, or use the sine."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("The exhaust mark and the top dead centre mark are %s apart, by dividers, on a rim %s across. What angle lies between them?", mm(chord2, 0), mm(across2, 0))}},
		Sources:  []string{"Plane geometry: chord of a circle."},
	}
	halved, err4 := acrossTheRim(across2, chord2/2)
	settle(&l, sheet.Degree, 1, w, x,
		mistake[units.Angle]{"the doubling forgotten", "The triangle gives half the angle. It has to be doubled.", x.right / 2},
		mistake[units.Angle]{"half the chord put over the whole diameter", "Half the chord goes with half the diameter, the radius.", halved.right})
	l.picture("Chord and arc", "Two marks on a rim, the arc s between them along the rim, the chord c straight across, and radii from the centre that enclose the angle θ. A dashed line from the centre halves it.", chordDrawing(80*units.Degree))
	return l, first(err, err2, err3, err4)
}

func chordDrawing(theta units.Angle) string {
	const x, y, r = 60, 60, 48
	d := picture.NewDrawing(120, 76)
	from, to := -theta/2, theta/2
	d.Arc(x, y, r, -100, 100, picture.Heavy, picture.Solid)
	d.Arc(x, y, r, from.Degrees(), to.Degrees(), 3*picture.Heavy, picture.Solid)
	x1, y1 := at(x, y, r, from)
	x2, y2 := at(x, y, r, to)
	d.Line(x1, y1, x2, y2, 2*picture.Heavy)
	d.Line(x, y, x1, y1, picture.Fine).Line(x, y, x2, y2, picture.Fine)
	d.Path([][2]float64{{x, y}, {x, y1}}, picture.Fine, picture.Dashed, false)
	d.Arc(x, y, 14, from.Degrees(), to.Degrees(), picture.Fine, picture.Solid)
	d.Text(x+7, y-15, 4, picture.Centre, 0, "θ/2").Text(x-7, y-15, 4, picture.Centre, 0, "θ/2")
	d.Text(x, y-r-2, 4.5, picture.Centre, 0, "arc s").Text(x, y1-2, 4.5, picture.Centre, 0, "chord c")
	d.Text((x+x2)/2+4, (y+y2)/2+4, 4, picture.Left, 0, "D/2")
	d.Circle(x, y, 1.5, picture.Heavy, picture.Solid)
	return d.SVG()
}
