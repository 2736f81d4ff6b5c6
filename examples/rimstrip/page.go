package main

// A page is lines and texts in millimetres, x to the right and y downwards
// from the upper left corner. PDF and SVG are both made from it.
type page struct {
	lines []line
	texts []caption
}

type line struct{ x1, y1, x2, y2, width float64 }

// A caption is a text; align is -1, 0 or 1 for beginning, middle or end at x,
// y is its base line, turn its slope in degrees, clockwise.
type caption struct {
	x, y, size float64
	align      int
	turn       float64
	text       string
}

func (p *page) line(x1, y1, x2, y2, width float64) {
	p.lines = append(p.lines, line{x1, y1, x2, y2, width})
}

func (p *page) text(x, y, size float64, align int, text string) {
	p.texts = append(p.texts, caption{x, y, size, align, 0, text})
}

// A sheet of paper, lying on its side.
type paper struct {
	name          string
	width, height float64
}

var papers = []paper{{"A4", 297, 210}, {"Letter", 279.4, 215.9}}

// margin is left free all round: printers do not reach the edge.
const margin = 12.0

// widths of lines, mm.
const (
	fine  = 0.15
	heavy = 0.3
)

// checkLines draws the two lines that tell whether the print is true to scale,
// and what to do when it is not. The scale makes good what a printer did to an
// earlier print.
func (p *page) checkLines(scale float64) {
	y := margin + 8
	for _, c := range [...]struct {
		x, length float64
		name      string
	}{{margin, 100, "100 mm"}, {margin + 130, 4 * 25.4, "4 in"}} {
		x2 := c.x + c.length*scale
		p.line(c.x, y, x2, y, fine)
		p.line(c.x, y-3, c.x, y+3, fine)
		p.line(x2, y-3, x2, y+3, fine)
		p.text((c.x+x2)/2, y-1.2, 3, 0, c.name+" exactly")
	}
	p.text(margin, y+7, 2.8, -1, "Print at 100 %, \"actual size\", never \"fit to page\". Measure the 100 mm line. If it measures 99.2 mm, make the sheet again with -printed 99.2mm.")
}
