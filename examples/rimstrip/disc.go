package main

import (
	"math"
	"strconv"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// discPage draws a degree disc to go on the shaft, as large as the paper lets
// it, with the same marks as the strip. Degrees count both ways from the mark.
// The disc turns with the shaft and is read at a pointer that stands still.
func (s *strip) discPage(sheet paper) page {
	p := page{}
	p.checkLines(s.scale)
	const top = margin + 20
	radius := min(sheet.width-2*margin, sheet.height-top-margin-6) / 2
	cx, cy := sheet.width/2, top+radius
	at := func(after units.Angle, r float64) (float64, float64) {
		// On the disc, as on the rim, what is before lies ahead in the
		// direction of rotation.
		a := -float64(after)
		if s.turns == ignition.Anticlockwise {
			a = float64(after)
		}
		return cx + r*math.Sin(a), cy - r*math.Cos(a)
	}
	for deg := -179; deg <= 180; deg++ {
		a := units.Angle(deg) * units.Degree
		depth := 3.0
		switch {
		case deg%10 == 0:
			depth = 7
			x, y := at(a, radius-9.5)
			p.text(x, y+1, 2.8, 0, strconv.Itoa(abs(deg)))
		case deg%5 == 0:
			depth = 5
		}
		x1, y1 := at(a, radius)
		x2, y2 := at(a, radius-depth)
		p.line(x1, y1, x2, y2, fine)
	}
	circle(&p, cx, cy, radius)
	circle(&p, cx, cy, 3)
	p.line(cx-6, cy, cx+6, cy, fine)
	p.line(cx, cy-6, cx, cy+6, fine)
	for i, m := range append([]mark{{s.from, 0}}, s.marks...) {
		x1, y1 := at(m.after, radius)
		x2, y2 := at(m.after, radius*0.45)
		p.line(x1, y1, x2, y2, heavy)
		x, y := at(m.after, radius*(0.5+0.1*float64(i%3)))
		if x < cx {
			p.text(x-1, y-1, 2.8, 1, m.name)
		} else {
			p.text(x+1, y-1, 2.8, -1, m.name)
		}
	}
	p.text(cx, sheet.height-margin, 2.8, 0, "facing the flywheel, the engine turns "+s.turns.String()+"; "+s.from+" is where the line so named stands at the pointer")
	return p
}

// circle draws a circle as short lines.
func circle(p *page, cx, cy, r float64) {
	const n = 360
	for i := range n {
		s1, c1 := math.Sincos(2 * math.Pi * float64(i) / n)
		s2, c2 := math.Sincos(2 * math.Pi * float64(i+1) / n)
		p.line(cx+r*s1, cy-r*c1, cx+r*s2, cy-r*c2, fine)
	}
}
