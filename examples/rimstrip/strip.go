package main

import (
	"fmt"
	"math"
	"strconv"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A strip is what goes round the rim.
type strip struct {
	rim   ignition.Rim
	paper units.Length // thickness
	turns ignition.Turning
	from  string // the mark degrees count from
	marks []mark
	scale float64 // what to draw a millimetre as, to make good what the printer does
}

// A mark is a line with a name, at an angle after the mark degrees count from.
type mark struct {
	name  string
	after units.Angle
}

// length is the strip once round, on its own middle.
func (s *strip) length() units.Length { return s.along(units.Turn) }

// along is how far along the strip an angle goes: the middle of the paper lies
// half a thickness outside the rim.
func (s *strip) along(a units.Angle) units.Length {
	l, err := s.rim.TapeLength(a, s.paper)
	if err != nil { // the thickness was checked when it was read
		return s.rim.Arc(a)
	}
	return l
}

// position is the place of an angle on the strip, in millimetres from its left
// end. The strip begins and ends half a turn from the mark degrees count from.
// Seen from the flywheel side with the strip uppermost, a rim that turns
// clockwise moves to the right: what is before the mark lies to its right.
func (s *strip) position(after units.Angle) float64 {
	half := s.length() / 2
	if s.turns == ignition.Anticlockwise {
		return (half + s.along(after)).Millimetres()
	}
	return (half - s.along(after)).Millimetres()
}

// Heights on the strip, mm.
const (
	stripHeight = 20.0
	rowHeight   = 34.0
	overlap     = 15.0
)

// pages draws the strip in pieces on sheets of paper.
func (s *strip) pages(sheet paper) []page {
	usable := (sheet.width - 2*margin) / s.scale
	total := s.length().Millimetres()
	step := usable - overlap
	pieces := max(1, int(math.Ceil((total-overlap)/step-1e-9)))
	rows := max(1, int((sheet.height-2*margin-22)/rowHeight))
	var pages []page
	for i := range pieces {
		if i%rows == 0 {
			p := page{}
			p.checkLines(s.scale)
			p.text(sheet.width-margin, margin+8, 2.8, 1, fmt.Sprintf("sheet %d of %d", i/rows+1, (pieces+rows-1)/rows))
			pages = append(pages, p)
		}
		start := step * float64(i)
		s.piece(&pages[len(pages)-1], margin+22+rowHeight*float64(i%rows), start, min(start+usable, total), i, pieces)
	}
	return pages
}

// piece draws the strip from one place to another, its upper edge at y.
func (s *strip) piece(p *page, y, from, to float64, i, pieces int) {
	x := func(at float64) float64 { return margin + (at-from)*s.scale }
	p.line(x(from), y, x(to), y, fine)
	p.line(x(from), y+stripHeight, x(to), y+stripHeight, fine)
	p.line(x(from), y, x(from), y+stripHeight, fine)
	p.line(x(to), y, x(to), y+stripHeight, fine)
	for deg := -180; deg <= 180; deg++ {
		at := s.position(units.Angle(deg) * units.Degree)
		if at < from-1e-9 || at > to+1e-9 {
			continue
		}
		height := 3.0
		switch {
		case deg%10 == 0:
			height = 7.5
			p.text(x(at)+0.5, y+9.5, 2.6, -1, strconv.Itoa(abs(deg)))
		case deg%5 == 0:
			height = 5
		}
		p.line(x(at), y, x(at), y+height, fine)
	}
	for _, m := range append([]mark{{s.from, 0}}, s.marks...) {
		at := s.position(m.after)
		if at < from || at > to {
			continue
		}
		p.line(x(at), y, x(at), y+stripHeight, heavy)
		p.text(x(at)+0.8, y+14, 2.8, -1, m.name)
	}
	s.words(p, y, x, from, to)
	s.joins(p, y, x, from, to, i, pieces)
}

// words writes beside the mark degrees count from which side is which.
func (s *strip) words(p *page, y float64, x func(float64) float64, from, to float64) {
	at := s.position(0)
	if at < from || at > to {
		return
	}
	left, right := "after", "before"
	if s.turns == ignition.Anticlockwise {
		left, right = right, left
	}
	p.text(x(at)-1, y+18.5, 2.8, 1, "< "+left)
	p.text(x(at)+1, y+18.5, 2.8, -1, right+" >")
}

// joins draws where the pieces lie over one another and which way is forward.
func (s *strip) joins(p *page, y float64, x func(float64) float64, from, to float64, i, pieces int) {
	below := y + stripHeight + 3.5
	if i > 0 {
		p.line(x(from+overlap), y+stripHeight, x(from+overlap), y+stripHeight+2.5, heavy)
		p.text(x(from), below, 2.6, -1, fmt.Sprintf("lay over piece %d", i))
	}
	if i < pieces-1 {
		p.line(x(to-overlap), y+stripHeight, x(to-overlap), y+stripHeight+2.5, heavy)
		p.text(x(to), below, 2.6, 1, fmt.Sprintf("piece %d lies over this", i+2))
	}
	arrow := "forward >>>"
	if s.turns == ignition.Anticlockwise {
		arrow = "<<< forward"
	}
	p.text((x(from)+x(to))/2, below, 2.8, 0, fmt.Sprintf("piece %d of %d    %s    this edge towards you, facing the flywheel", i+1, pieces, arrow))
}

// sides says which side of the mark is before it.
func (s *strip) sides() string {
	if s.turns == ignition.Anticlockwise {
		return "before " + s.from + " is to the left of it, after is to the right"
	}
	return "before " + s.from + " is to the right of it, after is to the left"
}

func abs(i int) int {
	if i < 0 {
		return -i
	}
	return i
}
