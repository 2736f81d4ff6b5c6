package main

import (
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// at returns the point at a distance from x, y, at an angle from straight up,
// clockwise.
func at(x, y, distance float64, a units.Angle) (float64, float64) {
	sin, cos := a.Sincos()
	return x + distance*sin, y - distance*cos
}

// ray draws a line from x, y outwards, from one distance to another.
func ray(d *picture.Drawing, x, y, from, to float64, a units.Angle, w picture.Weight) {
	x1, y1 := at(x, y, from, a)
	x2, y2 := at(x, y, to, a)
	d.Line(x1, y1, x2, y2, w)
}

// box is a rectangle as a path.
func box(x, y, width, height float64) [][2]float64 {
	return [][2]float64{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}
}

// slanted is a rectangle that begins at x, y and runs on for a length at an
// angle from straight up.
func slanted(x, y, length, width float64, a units.Angle) [][2]float64 {
	x2, y2 := at(x, y, length, a)
	sin, cos := a.Sincos()
	nx, ny := cos*width/2, sin*width/2
	return [][2]float64{{x - nx, y - ny}, {x + nx, y + ny}, {x2 + nx, y2 + ny}, {x2 - nx, y2 - ny}}
}

// drawCrank draws crank, rod and piston with the drop, scale millimetres of
// paper to a metre, the crank centre at x, y.
func drawCrank(d *picture.Drawing, x, y, scale float64, c geometry.Crank, theta units.Angle) {
	r, l := float64(c.Throw())*scale, float64(c.Rod())*scale
	drop := float64(c.Drop(theta)) * scale
	px, py := at(x, y, r, theta)
	pin := y - r - l + drop // gudgeon pin
	d.Circle(x, y, r, picture.Fine, picture.DashDotted)
	d.Line(x, y+r+4, x, y-r-l-16, picture.Fine)
	d.Line(x, y, px, py, 3*picture.Heavy).Line(px, py, x, pin, 2*picture.Heavy)
	d.Circle(px, py, 2, picture.Heavy, picture.Solid).Circle(x, y, 2, picture.Heavy, picture.Solid).Circle(x, pin, 1.6, picture.Heavy, picture.Solid)
	const half, crown, skirt = 12.0, 8.0, 8.0
	d.Path(box(x-half, pin-crown, 2*half, crown+skirt), picture.Heavy, picture.Solid, true)
	d.Line(x-half-1, y-r-l-14, x-half-1, y-l+r+4, picture.Heavy).Line(x+half+1, y-r-l-14, x+half+1, y-l+r+4, picture.Heavy)
	d.Line(x+half+2, pin-drop-crown, x+half+18, pin-drop-crown, picture.Fine).Line(x+half+2, pin-crown, x+half+18, pin-crown, picture.Fine)
	d.Line(x+half+14, pin-drop-crown-7, x+half+14, pin-drop-crown, picture.Fine).Line(x+half+14, pin-crown, x+half+14, pin-crown+7, picture.Fine)
	d.Text(x+half+20, pin-drop/2-crown+1.2, 4, picture.Left, 0, "x, the drop")
	d.Arc(x, y, r*0.55, 0, theta.Degrees(), picture.Fine, picture.Solid)
	lx, ly := at(x, y, r*0.72, theta/2)
	d.Text(lx, ly, 4, picture.Centre, 0, "θ")
	mx, my := at(x, y, r/2, theta)
	d.Text(mx+3, my+3, 4, picture.Left, 0, "r")
	d.Text((px+x)/2+3, (py+pin)/2, 4, picture.Left, 0, "l")
}

// series is y of x at n even steps from one x to another.
func series(from, to float64, n int, y func(x float64) float64) (xs, ys []float64) {
	for i := range n {
		x := from + (to-from)*float64(i)/float64(n-1)
		xs, ys = append(xs, x), append(ys, y(x))
	}
	return xs, ys
}

// spiral is a path that winds from one radius to another in so many turns.
func spiral(x, y, from, to, turns float64) [][2]float64 {
	n := int(math.Ceil(turns * 60))
	path := make([][2]float64, n+1)
	for i := range path {
		f := float64(i) / float64(n)
		path[i][0], path[i][1] = at(x, y, from+(to-from)*f, units.Angle(turns*f)*units.Turn)
	}
	return path
}

// chart makes SVG of a chart, in the size all have here.
func chart(c *picture.Chart) (string, error) { return c.SVG(140, 85) }
