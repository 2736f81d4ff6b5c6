package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// micrometre shows small lengths.
var micrometre = sheet.Unit[units.Length]{Name: "µm", One: units.Micrometre}

func um(l units.Length) string { return minus(sheet.Plain(l, micrometre, 0)) }

// loosest is the greatest clearance of a fit; the slip takes the largest shaft
// with the largest hole.
func loosest(nominal units.Length, fit string) (pair[units.Length], fits.Mating, error) {
	m, err := fits.Fit(nominal, fit)
	return pair[units.Length]{right: m.Clearance().Max, slip: m.Hole.Upper - m.Shaft.Upper}, m, err
}

func limitsAndFits() (lesson, error) {
	w, m, err := loosest(25*units.Millimetre, "H7/g6")
	x, m2, err2 := loosest(40*units.Millimetre, "H7/f7")
	l := lesson{
		Key: "fits", Title: "Limits and fits",
		Purpose: []string{"No part is made to a size: it is made between two. A drawing says 25 H7/g6, and this sum says how loose or tight the pair can come out."},
		Derivation: []line{
			{"The letter says where the tolerance lies, the number how wide it is; capitals are holes, small letters shafts. H begins at the nominal size and goes up. g lies below it. All figures are deviations, signed distances from the nominal size on the diameter.", ""},
			{"A hole from EI to ES, a shaft from ei to es. The tightest pair is the smallest hole with the largest shaft, the loosest the largest hole with the smallest shaft:", "least clearance = EI − es      greatest clearance = ES − ei"},
			{"The width of the range is both tolerances together:", "greatest − least = (ES − EI) + (es − ei)"},
			{"Where the least comes out below nought the pair may be tight; where both do, it always is. Clearance is positive, interference negative.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("25 H7/g6. The tables give the hole %s to %s, the shaft %s to %s.", um(m.Hole.Lower), um(m.Hole.Upper), um(m.Shaft.Lower), um(m.Shaft.Upper)),
			Steps: []sheet.Step{
				{What: "The least clearance", Formula: "EI − es", Numbers: fmt.Sprintf("%s − (%s)", um(m.Hole.Lower), um(m.Shaft.Upper)), Result: um(m.Clearance().Min)},
				{What: "The greatest clearance", Formula: "ES − ei", Numbers: fmt.Sprintf("%s − (%s)", um(m.Hole.Upper), um(m.Shaft.Lower)), Result: um(m.Clearance().Max)},
				{What: "So the pair always has clearance: a " + m.Kind().String() + " fit", Result: um(m.Clearance().Min) + " to " + um(m.Clearance().Max)},
			},
			Printed: []printed{
				{What: "a table of holes has 25 H7 up to", Digits: "21", Unit: "µm", Source: "JIS B 0401 hole limits, Miki Pulley technical data", Got: m.Hole.Upper.Micrometres()},
				{What: "a table of shafts has 25 g6 down to", Digits: "-20", Unit: "µm", Source: "SKF, Rolling Bearings catalogue, Table 11", Got: m.Shaft.Lower.Micrometres()},
			},
		},
		Slip: slip{Name: "largest taken with largest",
			Why: "The loosest pair is the largest hole with the smallest shaft. Upper less upper is no limit of anything: some pairs will be looser than that."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("40 H7/f7. The hole is %s to %s, the shaft %s to %s. What is the greatest clearance?", um(m2.Hole.Lower), um(m2.Hole.Upper), um(m2.Shaft.Lower), um(m2.Shaft.Upper))}},
		Sources:  []string{"ISO 286-1:2010, 3.3 (from memory), for the terms; ISO 286-2:2010 for the limits. All at 20 °C."},
	}
	settle(&l, micrometre, 0, w, x,
		mistake[units.Length]{"the least clearance given", "That is the tightest pair; the question is for the loosest.", m2.Clearance().Min})
	if err := first(err, err2); err != nil {
		return l, err
	}
	l.picture("The zones of 25 H7/g6", fmt.Sprintf("The nominal size is a level line. The zone of the hole stands on it, %s high. The zone of the shaft hangs below it, from %s to %s.", um(m.Hole.Upper), um(m.Shaft.Upper), um(m.Shaft.Lower)), zonesDrawing(m))
	return l, nil
}

// zonesDrawing draws the tolerance zones of a fit, a micrometre to a millimetre.
func zonesDrawing(m fits.Mating) string {
	d := picture.NewDrawing(120, 62)
	const zero, scale = 30.0, 1.0
	y := func(l units.Length) float64 { return zero - scale*l.Micrometres() }
	d.Line(8, zero, 112, zero, picture.Heavy).Text(8, zero-1.5, 4, picture.Left, 0, "nominal")
	zone := func(x float64, s fits.Size, name string, grey float64) {
		d.Fill(box(x, y(s.Upper), 24, y(s.Lower)-y(s.Upper)), grey).Path(box(x, y(s.Upper), 24, y(s.Lower)-y(s.Upper)), picture.Heavy, picture.Solid, true)
		d.Text(x+12, (y(s.Upper)+y(s.Lower))/2+1.5, 4.5, picture.Centre, 0, name)
		d.Text(x+26, y(s.Upper)+1.2, 3.6, picture.Left, 0, um(s.Upper)).Text(x+26, y(s.Lower)-0.8, 3.6, picture.Left, 0, um(s.Lower))
	}
	zone(32, m.Hole, "H7", 0.92)
	zone(76, m.Shaft, "g6", 0.8)
	return d.SVG()
}
