package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// A portRead is what is measured with the head off.
type portRead struct{ stroke, rod, edge, deck units.Length }

// openFor is how long the crown keeps a port open; the slip leaves the deck out.
func openFor(p portRead) (pair[units.Angle], geometry.PortEvent, error) {
	c, err := geometry.NewCrank(p.stroke, p.rod)
	if err != nil {
		return pair[units.Angle]{}, geometry.PortEvent{}, err
	}
	flush := geometry.NewBarrel(c)
	barrel, err := flush.WithDeck(p.deck)
	event, err2 := barrel.CrownPort(p.edge)
	wrong, err3 := flush.CrownPort(p.edge)
	return pair[units.Angle]{right: event.Duration(), slip: wrong.Duration()}, event, first(err, err2, err3)
}

func ports() (lesson, error) {
	const m = units.Millimetre
	p := portRead{60 * m, 110 * m, 44 * m, 2.4 * m}
	w, event, err := openFor(p)
	p2 := portRead{66 * m, 125 * m, 50 * m, 3.1 * m}
	x, _, err2 := openFor(p2)
	l := lesson{
		Key: "ports", Title: "Ports",
		Purpose:  []string{"In a two-stroke the piston is the valve. When a port opens and shuts follows from where its edge is, and that can be measured from the top face of the barrel with a depth gauge."},
		Cautions: turningCautions(),
		Derivation: []line{
			{"The crown's edge uncovers the exhaust port when it comes level with the port's top edge. Measured from the barrel's face the edge lies at a depth h. But the piston may not come up to the face: at the top it stays the deck z below it. So it has to fall by", "x = h − z"},
			{"The crank angle at that drop is the sum of lesson 3, backwards:", "θ = angle at x"},
			{"It opens at θ after the top and shuts at θ before the next, so it is open for", "360° − 2θ"},
			{"Measure z at the edge that does the uncovering, not at the middle of a domed crown. For transfer ports the same; for an inlet worked by the skirt the skirt's length comes off too, and it is open while x is less.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("Stroke %s, rod %s. Exhaust port edge %s below the face; crown's edge %s below the face at the top.", mm(p.stroke, 0), mm(p.rod, 0), mm(p.edge, 1), mm(p.deck, 1)),
			Steps: []sheet.Step{
				{What: "The piston has to fall by", Formula: "x = h − z", Numbers: mm(p.edge, 1) + " − " + mm(p.deck, 1), Result: mm(p.edge-p.deck, 1)},
				{What: "The crank is there at", Formula: "θ at x", Result: deg(event.Opens, 1) + " after the top"},
				{What: "Open for", Formula: "360° − 2θ", Result: deg(w.right, 1)},
			},
		},
		Slip: slip{Name: "the deck left out",
			Why: "The piston does not start from the face of the barrel. Left out, a port seems to open later and shut sooner than it does: by some two degrees at each end, in an engine of this size, for every millimetre."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("Stroke %s, rod %s. The exhaust port's top edge lies %s below the face of the barrel, and the crown's edge %s below it at top dead centre. For how many degrees is the port open?", mm(p2.stroke, 0), mm(p2.rod, 0), mm(p2.edge, 1), mm(p2.deck, 1))}},
		Sources:  []string{"Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1 (from memory), for what is measured; the sum is that of the crank."},
	}
	added := p2
	added.deck = -p2.deck
	proud, _, err3 := openFor(added)
	settle(&l, sheet.Degree, 1, w, x,
		mistake[units.Angle]{"the deck added instead of taken off", "The piston starts below the face and so has less far to go. The deck comes off the depth.", proud.right})
	l.picture("Depths from the face of the barrel", "A barrel with an exhaust port in its wall. From the face down: the deck z to the crown at the top, the depth h to the upper edge of the port, and between them x, which the crown has to fall.", portDrawing())
	return l, first(err, err2, err3)
}

func portDrawing() string {
	d := picture.NewDrawing(130, 100)
	const left, right, face, crown, edge = 30.0, 80.0, 14.0, 26.0, 62.0
	d.Hatch(box(left-10, face, 10, 80), "ports-a")
	d.Hatch(box(right, face, 10, edge-face), "ports-b").Hatch(box(right, edge+16, 10, 94-edge-16), "ports-c")
	d.Path([][2]float64{{left + 1, crown}, {right - 1, crown}}, 2*picture.Heavy, picture.Solid, false)
	d.Path(box(left+1, crown, right-left-2, 60), picture.Heavy, picture.Solid, true)
	d.Line(left-12, face, right+44, face, picture.Fine).Line(right+2, edge, right+44, edge, picture.Fine)
	d.Line(right-1, crown, right+20, crown, picture.Fine)
	d.Dimension(right+15, face, right+15, crown, "").Text(right+18, crown-4, 4, picture.Left, 0, "z")
	d.Dimension(right+15, crown, right+15, edge, "").Text(right+18, (crown+edge)/2, 4, picture.Left, 0, "x")
	d.Dimension(right+36, face, right+36, edge, "").Text(right+39, (face+edge)/2, 4, picture.Left, 0, "h")
	d.Text(right+12, edge+10, 4, picture.Left, 0, "exhaust port").Text((left+right)/2, 60, 4, picture.Centre, 0, "piston at").Text((left+right)/2, 66, 4, picture.Centre, 0, "the top")
	d.Text(left-12, face-3, 4, picture.Left, 0, "face of the barrel")
	return d.SVG()
}
