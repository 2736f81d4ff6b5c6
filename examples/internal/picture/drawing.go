package picture

import (
	"fmt"
	"html"
	"math"
	"strconv"
	"strings"
)

// A Drawing is lines and text in millimetres, x to the right and y downwards,
// true to scale when it is printed without fitting to the page.
type Drawing struct {
	width, height float64
	body          strings.Builder
}

// NewDrawing returns an empty drawing of a size in millimetres.
func NewDrawing(width, height float64) *Drawing { return &Drawing{width: width, height: height} }

// Weight is the width of a line in millimetres.
type Weight float64

// The line widths of a workshop drawing (ISO 128 has 0.25 and 0.5 in its
// series).
const (
	Fine  Weight = 0.25
	Heavy Weight = 0.5
)

// Line draws a line.
func (d *Drawing) Line(x1, y1, x2, y2 float64, w Weight) *Drawing {
	return d.Path([][2]float64{{x1, y1}, {x2, y2}}, w, Solid, false)
}

// Path draws a line through points, dashed where the stroke says so; closed
// paths return to their beginning.
func (d *Drawing) Path(points [][2]float64, w Weight, s Stroke, closed bool) *Drawing {
	d.path(points, closed, fmt.Sprintf(`fill="none" stroke="#111" stroke-width="%s"%s`, num(float64(w)), dashes(s)))
	return d
}

// Fill fills a closed path with a grey, 0 for black and 1 for white.
func (d *Drawing) Fill(points [][2]float64, grey float64) *Drawing {
	g := strconv.FormatInt(int64(math.Round(255*min(max(grey, 0), 1))), 16)
	if len(g) < 2 {
		g = "0" + g
	}
	d.path(points, true, fmt.Sprintf(`fill="#%s%s%s"`, g, g, g))
	return d
}

// Hatch fills a closed path with slanting lines, for metal that is cut.
func (d *Drawing) Hatch(points [][2]float64, id string) *Drawing {
	fmt.Fprintf(&d.body, `<defs><pattern id="%s" width="2" height="2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V2" stroke="#111" stroke-width="0.25"/></pattern></defs>`, html.EscapeString(id))
	d.path(points, true, fmt.Sprintf(`fill="url(#%s)" stroke="#111" stroke-width="0.35"`, html.EscapeString(id)))
	return d
}

// Circle draws a circle.
func (d *Drawing) Circle(x, y, radius float64, w Weight, s Stroke) *Drawing {
	fmt.Fprintf(&d.body, `<circle cx="%s" cy="%s" r="%s" fill="none" stroke="#111" stroke-width="%s"%s/>`+"\n", num(x), num(y), num(radius), num(float64(w)), dashes(s))
	return d
}

// Arc draws part of a circle from one angle to another, in degrees from
// straight up, clockwise.
func (d *Drawing) Arc(x, y, radius, from, to float64, w Weight, s Stroke) *Drawing {
	steps := max(2, int(math.Ceil(math.Abs(to-from)/2))+1)
	points := make([][2]float64, steps)
	for i := range points {
		a := (from + (to-from)*float64(i)/float64(steps-1)) * math.Pi / 180
		points[i] = [2]float64{x + radius*math.Sin(a), y - radius*math.Cos(a)}
	}
	return d.Path(points, w, s, false)
}

// An Align is where a text stands to its point.
type Align string

// The alignments.
const (
	Left   Align = "start"
	Centre Align = "middle"
	Right  Align = "end"
)

// Text writes a text whose base line begins, centres or ends at x, y; size is
// the height of its letters in millimetres, turn its slope in degrees,
// clockwise.
func (d *Drawing) Text(x, y, size float64, a Align, turn float64, text string) *Drawing {
	rotate := ""
	if turn != 0 {
		rotate = fmt.Sprintf(` transform="rotate(%s %s %s)"`, num(turn), num(x), num(y))
	}
	fmt.Fprintf(&d.body, `<text x="%s" y="%s" font-size="%s" text-anchor="%s"%s fill="#111">%s</text>`+"\n", num(x), num(y), num(size), a, rotate, html.EscapeString(text))
	return d
}

// Dimension draws a dimension line between two points with its figure beside
// it, on the left of the way from the first to the second; upright ones read
// from the right, as on workshop drawings (ISO 129).
func (d *Drawing) Dimension(x1, y1, x2, y2 float64, text string) *Drawing {
	d.Line(x1, y1, x2, y2, Fine)
	angle := math.Atan2(y2-y1, x2-x1)
	for _, end := range [2]struct{ x, y, turn float64 }{{x1, y1, 0}, {x2, y2, math.Pi}} {
		for _, barb := range [2]float64{0.26, -0.26} {
			a := angle + end.turn + barb
			d.Line(end.x, end.y, end.x+2.5*math.Cos(a), end.y+2.5*math.Sin(a), Fine)
		}
	}
	const size, off = 3.2, 1.2
	turn, clear := angle*180/math.Pi, off
	if turn > 90-1e-9 || turn < -90-1e-9 { // upside down: turn it, and keep its head off the line
		turn, clear = math.Mod(turn+270, 360)-90, off+0.75*size
	}
	nx, ny := math.Sin(angle), -math.Cos(angle)
	return d.Text((x1+x2)/2+clear*nx, (y1+y2)/2+clear*ny, size, Centre, turn, text)
}

// SVG writes the drawing with its size in millimetres.
func (d *Drawing) SVG() string {
	return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s" font-family="Liberation Sans, Arial, Helvetica, sans-serif">`+"\n%s</svg>\n",
		num(d.width), num(d.height), num(d.width), num(d.height), d.body.String())
}

func (d *Drawing) path(points [][2]float64, closed bool, style string) {
	if len(points) == 0 {
		return
	}
	d.body.WriteString(`<path d="`)
	for i, p := range points {
		c := "L"
		if i == 0 {
			c = "M"
		}
		d.body.WriteString(c + num(p[0]) + " " + num(p[1]))
	}
	if closed {
		d.body.WriteString("Z")
	}
	d.body.WriteString(`" ` + style + "/>\n")
}

func dashes(s Stroke) string {
	switch s {
	case Dashed:
		return ` stroke-dasharray="3 1.5"`
	case Dotted:
		return ` stroke-dasharray="0.5 1"`
	case DashDotted:
		return ` stroke-dasharray="5 1 1 1"`
	}
	return ""
}

// num writes a millimetre figure to a tenth of a micrometre.
func num(x float64) string {
	return strconv.FormatFloat(math.Round(x*1e4)/1e4+0, 'f', -1, 64)
}
