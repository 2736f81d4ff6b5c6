package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/oilmix"
	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// oilInTheCan is the oil in a can filled to a line with mix; the slip takes the
// ratio for a part of the whole.
func oilInTheCan(ratio float64, can units.Volume) (pair[units.Volume], oilmix.Mix, error) {
	mix, err := oilmix.NewMix(ratio)
	if err != nil {
		return pair[units.Volume]{}, mix, err
	}
	_, oil := mix.Fill(can)
	return pair[units.Volume]{right: oil, slip: can / units.Volume(ratio)}, mix, nil
}

func oilInPetrol() (lesson, error) {
	const can = 5 * units.Litre
	w, mix, err := oilInTheCan(16, can)
	const can2 = units.ImperialGallon
	x, _, err2 := oilInTheCan(20, can2)
	us, _, err3 := oilInTheCan(20, units.USGallon)
	petrol, _ := mix.Fill(can)
	half, err4 := oilmix.OilTo(units.ImperialPint/2, units.ImperialGallon)
	cc := func(v units.Volume) string { return sheet.Plain(v, sheet.CC, 0) }
	l := lesson{
		Key: "oil", Title: "Oil in the petrol",
		Purpose:  []string{"A two-stroke is oiled by what is mixed into its petrol. Too little ruins it, too much fouls it, and cards give the mix in half a dozen ways."},
		Cautions: []string{"Petrol: in the open air, engine stopped and cold, no flame, no smoking, in a can made for it, stood on the ground while it is filled. Keep it off the skin and out of children's reach."},
		Derivation: []line{
			{"16:1 is sixteen parts of petrol to one of oil. That makes seventeen parts of mix. Oil to a measured amount of petrol:", "oil = petrol / 16"},
			{"Oil in a can filled up to a line with the mix:", "oil = whole / (16 + 1)"},
			{"Half a pint to the gallon is one part to sixteen, for a gallon has eight pints; but only where both are of one country. The imperial gallon is 4546 cc, the American 3785 cc.", "1/2 pint to 8 pints = 1 to 16"},
			{"A percentage may be of the petrol or of the whole: oil at 6 per cent of the petrol is 5.7 per cent of the mix.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A can is to be filled to its line, %s in all, at 16:1.", cc(can)),
			Steps: []sheet.Step{
				{What: "Parts in all", Formula: "16 + 1", Result: "17"},
				{What: "Oil", Formula: "whole / 17", Numbers: cc(can) + " / 17", Result: cc(w.right)},
				{What: "Petrol", Formula: "16 × oil", Result: cc(petrol)},
				{What: "Oil's share of the mix", Formula: "1 / 17", Result: plain(mix.OilOfMix().Percent(), 1) + " %"},
				{What: "Half an imperial pint to the imperial gallon is", Formula: "petrol / oil", Result: half.String()},
			},
		},
		Slip: slip{Name: "the ratio read as a part of the whole",
			Why: "16:1 is petrol to oil, so oil is one part in seventeen and not in sixteen. At 16:1 that is a small matter; at 4:1 it would be a quarter too much."},
		Exercise: exercise{Ask: []string{"A can of one imperial gallon (4546 cc) is to be filled up with a 20:1 mix. How much oil goes in?"}},
		Sources:  []string{"Weights and measures: imperial gallon 4.54609 litres, US gallon 231 cubic inches.", "Petrol to oil, the larger figure first: common practice, no source. What your engine wants is on its card."},
	}
	settle(&l, sheet.CC, 0, w, x,
		mistake[units.Volume]{"the American gallon used", "The American gallon is 3785 cc, a sixth less than the imperial one.", us.right})
	l.picture("Seventeen parts", "A can drawn as a column of seventeen equal layers: sixteen of petrol and one, dark, of oil.", oilDrawing(16))
	return l, first(err, err2, err3, err4)
}

func oilDrawing(petrol int) string {
	d := picture.NewDrawing(110, 80)
	const x, top, width, layer = 34.0, 8.0, 30.0, 3.8
	for i := range petrol + 1 {
		y := top + layer*float64(i)
		grey := 0.95
		if i == petrol {
			grey = 0.2
		}
		d.Fill(box(x, y, width, layer), grey).Path(box(x, y, width, layer), picture.Fine, picture.Solid, true)
	}
	bottom := top + layer*float64(petrol+1)
	d.Path([][2]float64{{x, top - 3}, {x, bottom}, {x + width, bottom}, {x + width, top - 3}}, 2*picture.Heavy, picture.Solid, false)
	d.Dimension(x-6, top, x-6, bottom, "").Text(x-9, (top+bottom)/2, 4, picture.Right, 0, fmt.Sprintf("%d parts", petrol+1))
	d.Dimension(x+width+6, top, x+width+6, bottom-layer, "").Text(x+width+9, (top+bottom)/2, 4, picture.Left, 0, fmt.Sprintf("%d petrol", petrol))
	d.Text(x+width+9, bottom-0.5, 4, picture.Left, 0, "1 oil")
	return d.SVG()
}
