package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// inPlace is the bore of a bush once it is pressed home; the slip takes it to
// stay as it was turned.
func inPlace(j fits.Joint) (pair[units.Length], fits.Press, error) {
	p, err := fits.NewPress(j)
	if err != nil {
		return pair[units.Length]{}, p, err
	}
	return pair[units.Length]{right: p.BoreInPlace(), slip: j.ShaftBore}, p, nil
}

func pressAndReam() (lesson, error) {
	const m = units.Millimetre
	iron, err := fits.FindMaterial("grey cast iron", "ASTM 20")
	bronze, err2 := fits.FindMaterial("manganese bronze", "")
	j := fits.Joint{Diameter: 30 * m, Interference: 0.04 * m, Length: 40 * m, HubOutside: 55 * m, ShaftBore: 24 * m, Hub: iron, Shaft: bronze}
	w, p, err3 := inPlace(j)
	j2 := fits.Joint{Diameter: 25 * m, Interference: 0.035 * m, Length: 30 * m, HubOutside: 50 * m, ShaftBore: 19 * m, Hub: bronze, Shaft: bronze}
	x, p2, err4 := inPlace(j2)
	const journal = 23.99 * m
	running := fits.Clearance{Min: 0.02 * m, Max: 0.04 * m}
	ream, err5 := p.Ream(journal, running)
	book, err6 := fits.NewPress(bookCylinders())
	l := lesson{
		Key: "press", Title: "Press and ream",
		Purpose:  []string{"A bush pressed into a housing closes in. Bored to the running size beforehand it ends up tight on the shaft. This sum says by how much it closes, so that you leave enough to ream and not too much."},
		Cautions: fits.PressCautions(),
		Derivation: []line{
			{"Bush and housing are two thick rings. Between them stands the interference δ, measured on the diameter d where they meet. It makes a pressure p that opens the one and closes the other until they are of one size:", "p = δ / ( d [ (sh + νh)/Eh + (ss − νs)/Es ] )"},
			{"E and ν are what the materials give, h for housing, s for bush. The shapes come in through the ratios of the diameters, outside do, joint d, bore di:", "sh = (do² + d²)/(do² − d²)      ss = (d² + di²)/(d² − di²)"},
			{"The pressure from outside squeezes the bore of the bush:", "closes in by  2 p d² di / ((d² − di²) Es)"},
			{"A thin bush in a stiff housing closes by very nearly its interference; a thick one in a soft housing by little more than half of it. Turn the bore so small that something is left to ream even if it hardly closes at all.", ""},
			{"What is scraped off or pressed askew is in no sum. Measure in place before you ream.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A bush of %v %s outside, bored %s, with %s of interference, in a boss of %v %s across.", bronze.Name, mm(j.Diameter, 0), mm(j.ShaftBore, 0), mm(j.Interference, 3), iron.Name, mm(j.HubOutside, 0)),
			Steps: []sheet.Step{
				{What: "The pressure between them", Formula: "p", Numbers: fmt.Sprintf("Eh = %s GPa, νh = %s, Es = %s GPa, νs = %s", plain(iron.Modulus.Gigapascals(), 0), plain(iron.Poisson, 2), plain(bronze.Modulus.Gigapascals(), 0), plain(bronze.Poisson, 2)), Result: plain(p.Pressure().Megapascals(), 1) + " MPa"},
				{What: "The bore closes in by", Formula: "2 p d² di / ((d² − di²) Es)", Result: mm(p.ClosingIn(), 3)},
				{What: "Bore in place", Numbers: mm(j.ShaftBore, 3) + " − " + mm(p.ClosingIn(), 3), Result: mm(w.right, 3)},
				{What: fmt.Sprintf("For a journal of %s to run with %s to %s, ream to", mm(journal, 3), um(running.Min), um(running.Max)), Result: mm(ream.Min, 3) + " to " + mm(ream.Max, 3)},
				{What: "So the reamer takes at least", Result: mm(ream.Least, 3)},
			},
			Printed: []printed{{What: "a textbook presses rings of 300, 400 and 500 mm together with 0.1 mm on the radius, which is 0.2 mm on the diameter; the pressure comes to", Digits: "12.3", Unit: "MPa", Source: "Ugural & Fenster, Advanced Strength and Applied Elasticity, Ex. 8.3, p. 243 (output of a companion)", Got: book.Pressure().Megapascals()}},
		},
		Slip: slip{Name: "the bore taken to stay as it was turned",
			Why: "Bored to running size before pressing, the bush grips the shaft once it is home. Leave it small and ream in place."},
		Exercise: exercise{Ask: []string{
			fmt.Sprintf("A bush %s outside and bored %s is pressed into a boss %s across, of the same bronze, with %s of interference on the diameter. E is %s GPa and ν is %s for both. What is the bore in place?", mm(j2.Diameter, 0), mm(j2.ShaftBore, 3), mm(j2.HubOutside, 0), mm(j2.Interference, 3), plain(bronze.Modulus.Gigapascals(), 0), plain(bronze.Poisson, 2)),
		}},
		Sources: []string{
			"Lamé, for thick rings in plane stress: Shigley, Mechanical Engineering Design, eqs. 3-56 and 7-39. Closing in: derived from the same.",
			"E and ν: " + bronze.Source + ".",
		},
	}
	halved := j2
	halved.Interference /= 2
	half, _, err7 := inPlace(halved)
	settle(&l, sheet.Millimetre, 3, w, x,
		mistake[units.Length]{"half the interference used, as if it were on the radius", "Interference is given on the diameter, and the formula here wants it so.", half.right},
		mistake[units.Length]{"the bore taken to open", "The housing opens, the bush closes.", j2.ShaftBore + p2.ClosingIn()})
	l.picture("The bush in its housing", "A housing cut along its axis with a bush in it. The outside of the bush was larger than the hole by the interference δ; pressed home, its bore has closed in, as the dashed lines inside the old ones show.", pressDrawing())
	return l, first(err, err2, err3, err4, err5, err6, err7)
}

// bookCylinders are the rings of the textbook's example: Poisson's ratio drops
// out where both are of one material.
func bookCylinders() fits.Joint {
	steel := fits.Material{Name: "steel", Modulus: 200 * units.Gigapascal, Poisson: 0.3}
	const m = units.Millimetre
	return fits.Joint{Diameter: 400 * m, Interference: 0.2 * m, Length: 100 * m, HubOutside: 500 * m, ShaftBore: 300 * m, Hub: steel, Shaft: steel}
}

func pressDrawing() string {
	d := picture.NewDrawing(124, 96)
	const left, width, axis = 24.0, 58.0, 48.0
	for i, s := range [2]float64{-1, 1} {
		ring := func(inner, outer float64, id string) {
			d.Hatch([][2]float64{{left, axis + s*inner}, {left + width, axis + s*inner}, {left + width, axis + s*outer}, {left, axis + s*outer}}, id)
		}
		ring(26, 42, fmt.Sprintf("press-hub%d", i))
		d.Fill([][2]float64{{left - 6, axis + s*17}, {left + width + 6, axis + s*17}, {left + width + 6, axis + s*26}, {left - 6, axis + s*26}}, 0.85)
		d.Path([][2]float64{{left - 6, axis + s*17}, {left + width + 6, axis + s*17}, {left + width + 6, axis + s*26}, {left - 6, axis + s*26}}, picture.Heavy, picture.Solid, true)
		d.Path([][2]float64{{left, axis + s*14.5}, {left + width, axis + s*14.5}}, picture.Heavy, picture.Dashed, false)
	}
	d.Path([][2]float64{{12, axis}, {98, axis}}, picture.Fine, picture.DashDotted, false)
	d.Dimension(98, axis-26, 98, axis+26, "").Text(101, axis+1, 4, picture.Left, 0, "d")
	d.Dimension(106, axis-42, 106, axis+42, "").Text(109, axis+1, 4, picture.Left, 0, "do")
	d.Dimension(50, axis-17, 50, axis+17, "").Text(53, axis-3, 4, picture.Left, 0, "di as turned")
	d.Line(left+width, axis-42, 108, axis-42, picture.Fine).Line(left+width, axis+42, 108, axis+42, picture.Fine).Line(left+width+6, axis-26, 100, axis-26, picture.Fine).Line(left+width+6, axis+26, 100, axis+26, picture.Fine)
	return d.SVG()
}
