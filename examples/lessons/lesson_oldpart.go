package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// An oldPin is a worn shaft: what it measures least and most, what it is said to
// be, and the fit a new bush is to have on it.
type oldPin struct {
	least, most, nominal units.Length
	fit                  string
}

// toTheOldPin is the smallest hole for a new bush; the slip makes the hole of the
// standard at the nominal size.
func toTheOldPin(p oldPin) (pair[units.Length], fits.Clearance, fits.Machining, error) {
	want, err := fits.Wanted(p.most, p.fit)
	if err != nil {
		return pair[units.Length]{}, want, fits.Machining{}, err
	}
	hole, err := fits.Part{Least: p.least, Most: p.most}.HoleFor(want, 0)
	standard, err2 := fits.Fit(p.nominal, p.fit)
	return pair[units.Length]{right: hole.Min, slip: standard.Hole.Min}, want, hole, first(err, err2)
}

func oldPart() (lesson, error) {
	const m = units.Millimetre
	p := oldPin{23.790 * m, 23.810 * m, 24 * m, "H8/f7"}
	w, want, hole, err := toTheOldPin(p)
	p2 := oldPin{15.868 * m, 15.876 * m, 16 * m, "H8/f7"}
	x, want2, _, err2 := toTheOldPin(p2)
	l := lesson{
		Key: "oldpart", Title: "A fit to an old part",
		Purpose: []string{"The pin is worn and at no size that stands in a table. The bush is to be new. The table still tells how much clearance such a fit has; the size comes from the pin."},
		Derivation: []line{
			{"From the table take only the range of clearance that the wanted fit has at about this size, c₁ to c₂. Measure the pin in several places and both ways across: least d₁, most d₂.", ""},
			{"The hole must be large enough for the thickest place and not too large for the thinnest:", "smallest hole = d₂ + c₁      largest hole = d₁ + c₂"},
			{"So whatever the pin is out of round comes off what is left to machine to. Your measuring takes its share too: draw both limits in by about twice the combined standard uncertainty of measuring pin and hole,", "g = 2 √(u² + v²)"},
			{"If nothing is left between the limits no size can be promised: true the pin, or measure better.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A pin measures %s to %s. It was %s when new, one supposes. A running fit %s is wanted. Measuring is left out here.", mm(p.least, 3), mm(p.most, 3), mm(p.nominal, 0), p.fit),
			Steps: []sheet.Step{
				{What: "Clearance of " + p.fit + " at this size, from the table", Result: um(want.Min) + " to " + um(want.Max)},
				{What: "Smallest hole", Formula: "d₂ + c₁", Numbers: mm(p.most, 3) + " + " + mm(want.Min, 3), Result: mm(hole.Min, 3)},
				{What: "Largest hole", Formula: "d₁ + c₂", Numbers: mm(p.least, 3) + " + " + mm(want.Max, 3), Result: mm(hole.Max, 3)},
				{What: "Left to machine to", Result: um(hole.Tolerance()) + " of " + um(want.Spread())},
			},
		},
		Slip: slip{Name: "the hole made to the table at the nominal size",
			Why: "The table knows nothing of the wear. A reamer of the nominal size makes a hole for a new pin, and the old one rattles in it by all that it has lost."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("A pin, %s when new, measures from %s to %s. For a fit of %s the table gives a clearance of %s to %s at this size. Leave the uncertainty of measuring out. What is the smallest hole to make?", mm(p2.nominal, 0), mm(p2.least, 3), mm(p2.most, 3), p2.fit, um(want2.Min), um(want2.Max))}},
		Sources: []string{
			"ISO 286-2:2010 for the clearances.",
			"The limits for a part that is there: derived. Guard band on both sides: ISO 14253-1 (from memory).",
		},
	}
	settle(&l, sheet.Millimetre, 3, w, x,
		mistake[units.Length]{"the thinnest place of the pin taken", "The bush has to pass the thickest place too.", p2.least + want2.Min})
	l.picture("Where the hole may lie", "On a scale of diameters: the worn pin from its least to its most, the new hole a clearance above it, and far to the right the nominal size, where the hole of the table would begin.", oldPinDrawing(p, hole))
	return l, first(err, err2)
}

func oldPinDrawing(p oldPin, hole fits.Machining) string {
	d := picture.NewDrawing(130, 58)
	x := func(l units.Length) float64 { return 12 + 400*(l-p.least+5*units.Micrometre).Millimetres() }
	const axis = 34.0
	d.Line(6, axis, 124, axis, picture.Fine)
	bar := func(from, to units.Length, name string, grey float64) {
		d.Fill(box(x(from), axis-9, x(to)-x(from), 9), grey).Path(box(x(from), axis-9, x(to)-x(from), 9), picture.Heavy, picture.Solid, true)
		d.Text((x(from)+x(to))/2, axis-11, 4, picture.Centre, 0, name)
		d.Text(x(from)-1, axis+4, 3.2, picture.Left, 60, mm(from, 3)).Text(x(to)-1, axis+4, 3.2, picture.Left, 60, mm(to, 3))
	}
	bar(p.least, p.most, "pin", 0.8)
	bar(hole.Min, hole.Max, "hole", 0.92)
	d.Line(x(p.nominal), axis-14, x(p.nominal), axis, 2*picture.Heavy).Text(x(p.nominal), axis-16, 4, picture.Centre, 0, "nominal, "+mm(p.nominal, 0))
	d.Dimension(x(p.most), axis-22, x(p.nominal), axis-22, "all this would be play")
	return d.SVG()
}
