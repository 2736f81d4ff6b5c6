package threadsheet

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// BushPicture draws one side of a bush cut along its axis, true to the scale it
// states.
func BushPicture(b threads.Bush, long units.Length) sheet.Picture {
	l := long.Millimetres()
	scale := room / l
	for _, s := range scales {
		if s*l <= room-40 {
			scale = s
			break
		}
	}
	outer, inner := profileOf(b.Outer(), threads.Bolt), profileOf(b.Inner(), threads.Nut)
	outer.taper, inner.taper = 0, 0
	top := outer.major
	d := picture.NewDrawing(max(l*scale+45, least)+2*margin, (top-inner.minor)*scale+24)
	place := func(x, r float64) [2]float64 { return [2]float64{margin + x*scale, 5 + (top-r)*scale} }
	var metal [][2]float64
	for i := range steps(l, outer.p) + 1 {
		x := l * float64(i) / float64(steps(l, outer.p))
		metal = append(metal, place(x, outer.at(x+outer.p/2)))
	}
	for i := range steps(l, inner.p) + 1 {
		x := l * (1 - float64(i)/float64(steps(l, inner.p)))
		metal = append(metal, place(x, inner.at(x)))
	}
	d.Hatch(metal, "bush")
	thin, hole := place(l, outer.minor), place(l, inner.major)
	x := thin[0] + 8
	for _, y := range [...]float64{thin[1], hole[1]} {
		d.Line(margin, y, x+3, y, picture.Fine)
	}
	d.Line(x, thin[1]-6, x, thin[1], picture.Fine).Line(x, hole[1], x, hole[1]+6, picture.Fine)
	d.Text(x+3, (thin[1]+hole[1])/2+1.2, 3.5, picture.Left, 0, "wall "+sheet.Plain(b.Wall(), sheet.Millimetre, 2))
	y := place(0, inner.minor)[1] + 9
	d.Path([][2]float64{{margin, y - 2.5}, {margin, y}, {margin + scale, y}, {margin + scale, y - 2.5}}, picture.Fine, picture.Solid, false)
	d.Text(margin+scale+2, y, 3.2, picture.Left, 0, fmt.Sprintf("1 mm; drawn %s, when printed at 100 %%; the axis lies %s below the crests inside", ratio(scale), sheet.Plain(b.Inner().Minor()/2, sheet.Millimetre, 1)))
	return sheet.Picture{
		Title: fmt.Sprintf("One side of the bush, cut along its axis: %v outside, %v inside, scale %s", b.Outer(), b.Inner(), ratio(scale)),
		Says:  fmt.Sprintf("The thread outside above, the thread inside below, and between the bottoms of the two a wall of %s.", sheet.Plain(b.Wall(), sheet.Millimetre, 2)),
		SVG:   d.SVG(),
	}
}

// steps is how many points a drawn outline is made of.
func steps(long, pitch float64) int { return int(math.Ceil(long / pitch * 48)) }
