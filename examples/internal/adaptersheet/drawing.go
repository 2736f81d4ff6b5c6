package adaptersheet

import (
	"fmt"
	"math"
	"strconv"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
)

// A view is a place on the drawing and its scale.
type view struct {
	d     *picture.Drawing
	scale float64
	x, y  float64 // the engine's face, on the axis
}

// at is the place of a point so far from the engine's face and from the axis.
func (v view) at(along, off length) [2]float64 {
	return [2]float64{v.x + v.scale*along.Millimetres(), v.y - v.scale*off.Millimetres()}
}

func (v view) path(points ...[2]length) [][2]float64 {
	var out [][2]float64
	for _, p := range points {
		out = append(out, v.at(p[0], p[1]))
	}
	return out
}

// Lengths of the margins of the drawing, in millimetres.
const (
	leftMargin  = 34
	rightMargin = 40
	topMargin   = 14
)

// drawing draws the adapter cut along the axis through both studs, and from the
// engine's side, with the sizes to turn.
func (w *work) drawing() sheet.Picture {
	f := w.flange
	scale := 1.0
	for w.length().Millimetres()*scale > 90 || f.across.Millimetres()*scale > 90 {
		scale /= 2
	}
	across, long := scale*f.across.Millimetres(), scale*w.length().Millimetres()
	d := picture.NewDrawing(leftMargin+long+rightMargin+across+12, topMargin+across+34)
	cut := view{d, scale, leftMargin, topMargin + across/2}
	w.drawCut(cut)
	w.drawEnd(view{d, scale, leftMargin + long + rightMargin + across/2, cut.y})
	d.Text(leftMargin, topMargin+across+30, 3.2, picture.Left, 0, "Scale "+ratio(scale)+", sizes in mm; cut along the axis, and seen from the engine")
	return sheet.Picture{Title: "The adapter, with the sizes to turn", SVG: d.SVG(), Says: fmt.Sprintf(
		"A flange %.1f mm across and %.1f mm thick, a neck %.1f mm across and %.1f mm long, and a spigot of %.2f mm to %.2f mm, %.1f mm long; through it a passage, parallel in the spigot and widening through neck and flange; two stud holes of %.1f mm, %.2f mm apart.",
		f.across.Millimetres(), f.thick.Millimetres(), f.neckOut.Millimetres(), f.neck.Millimetres(), w.spigot.min.Millimetres(), w.spigot.max.Millimetres(), f.spigotLen.Millimetres(), f.hole.Millimetres(), f.centres.Value.Millimetres())}
}

// drawCut draws the section and its dimensions.
func (w *work) drawCut(v view) {
	f, d := w.flange, v.d
	t1, t2, t3 := f.thick, f.thick+f.neck, w.length()
	outer, neck, spigot := f.across/2, f.neckOut/2, w.spigot.aim/2
	small, large := (w.passage.small.min+w.passage.small.max)/4, (w.passage.large.min+w.passage.large.max)/4
	inHole, outHole := f.centres.Value/2-f.hole/2, f.centres.Value/2+f.hole/2
	for i, side := range [2]length{1, -1} {
		id := "adapter-cut-" + strconv.Itoa(i)
		d.Hatch(v.path([2]length{0, side * large}, [2]length{t2, side * small}, [2]length{t3, side * small}, [2]length{t3, side * spigot},
			[2]length{t2, side * spigot}, [2]length{t2, side * neck}, [2]length{t1, side * neck}, [2]length{t1, side * inHole}, [2]length{0, side * inHole}), id)
		if outer > outHole {
			d.Hatch(v.path([2]length{0, side * outHole}, [2]length{t1, side * outHole}, [2]length{t1, side * outer}, [2]length{0, side * outer}), id+"-rim")
		}
		d.Path(v.path([2]length{-4 * mm, side * f.centres.Value / 2}, [2]length{t1 + 4*mm, side * f.centres.Value / 2}), picture.Fine, picture.DashDotted, false)
	}
	for _, x := range [3]length{0, t2, t3} { // edges of the bore behind the cut
		r := small
		if x == 0 {
			r = large
		}
		d.Path(v.path([2]length{x, r}, [2]length{x, -r}), picture.Fine, picture.Solid, false)
	}
	d.Path(v.path([2]length{-6 * mm, 0}, [2]length{t3 + 6*mm, 0}), picture.Fine, picture.DashDotted, false)
	w.dimensionCut(v, t1, t2, t3)
}

// dimensionCut puts the sizes to the section.
func (w *work) dimensionCut(v view, t1, t2, t3 length) {
	f := w.flange
	z := map[string]size{}
	for _, s := range w.sizes {
		z[s.letter] = s
	}
	upright := func(along length, x float64, half length, letter string) {
		v.d.Line(v.at(along, half)[0], v.at(0, half)[1], x, v.at(0, half)[1], picture.Fine).Line(v.at(along, half)[0], v.at(0, -half)[1], x, v.at(0, -half)[1], picture.Fine)
		v.d.Dimension(x, v.at(0, -half)[1], x, v.at(0, half)[1], letter+" Ø "+limits(z[letter], sheet.Millimetre))
	}
	upright(0, v.x-24, f.across/2, "B")
	upright(0, v.x-12, (z["J"].min+z["J"].max)/4, "J")
	right := v.at(t3, 0)[0]
	upright(t3, right+10, w.passage.small.min/2, "D")
	upright(t3, right+20, w.spigot.aim/2, "C")
	upright(t2, right+30, f.neckOut/2, "E")
	base := v.at(0, -f.across/2)[1]
	for i, span := range []struct {
		from, to length
		letter   string
	}{{0, t1, "A"}, {t1, t2, "F"}, {t2, t3, "G"}} {
		y := base + 8 + 6*float64(i)
		x1, x2 := v.at(span.from, 0)[0], v.at(span.to, 0)[0]
		v.d.Line(x1, base+1, x1, y+1, picture.Fine).Line(x2, base+1, x2, y+1, picture.Fine)
		v.d.Dimension(x1, y, x2, y, "").Text(x1-1.5, y+1.1, 3.2, picture.Right, 0, span.letter+" "+limits(z[span.letter], sheet.Millimetre))
	}
}

// drawEnd draws the flange as the engine sees it.
func (w *work) drawEnd(v view) {
	f, d := w.flange, v.d
	r := func(l length) float64 { return v.scale * l.Millimetres() / 2 }
	d.Circle(v.x, v.y, r(f.across), picture.Heavy, picture.Solid)
	d.Circle(v.x, v.y, r((w.passage.large.min+w.passage.large.max)/2), picture.Heavy, picture.Solid)
	d.Circle(v.x, v.y, r((w.passage.small.min+w.passage.small.max)/2), picture.Fine, picture.Solid)
	d.Circle(v.x, v.y, r(f.neckOut), picture.Fine, picture.Dashed)
	for _, side := range [2]length{1, -1} {
		at := v.at(0, side*f.centres.Value/2)
		d.Circle(at[0], at[1], r(f.hole), picture.Heavy, picture.Solid).Line(at[0]-r(f.hole)-2, at[1], at[0]+r(f.hole)+2, at[1], picture.Fine)
	}
	d.Path(v.path([2]length{0, f.across/2 + 3*mm}, [2]length{0, -f.across/2 - 3*mm}), picture.Fine, picture.DashDotted, false)
	d.Path(v.path([2]length{-f.across/2 - 3*mm, 0}, [2]length{f.across/2 + 3*mm, 0}), picture.Fine, picture.DashDotted, false)
	x := v.x + r(f.neckOut) + 3
	top, bottom := v.at(0, f.centres.Value/2), v.at(0, -f.centres.Value/2)
	d.Line(top[0], top[1], x+1, top[1], picture.Fine).Line(bottom[0], bottom[1], x+1, bottom[1], picture.Fine)
	d.Dimension(x, bottom[1], x, top[1], sheet.Value(f.centres, bare))
	d.Text(v.x, v.y+r(f.across)+10, 3.2, picture.Centre, 0, "H two holes, drill "+limits(size{min: f.hole, max: f.hole}, sheet.Millimetre))
}

var bare = sheet.Unit[length]{Name: "", One: mm}

// ratio writes a scale as drawings do.
func ratio(scale float64) string { return "1:" + strconv.FormatFloat(1/scale, 'f', -1, 64) }

// zones draws the collar as it measures over the limits of the spigot.
func (w *work) zones() sheet.Picture {
	sp := w.spigot
	zones := []picture.Zone{
		{Name: "collar, as measured", Low: sp.collar.Least.Millimetres(), High: sp.collar.Most.Millimetres(), Sure: 2 * w.r.BoresGoodTo.Millimetres()},
		{Name: "spigot, to turn", Low: sp.min.Millimetres(), High: sp.max.Millimetres(), Sure: 2 * w.r.NewPartGoodTo.Millimetres(), Cut: true},
	}
	shut := sp.girth.Value - w.r.Slot.Value/math.Pi
	return sheet.Picture{Title: "Collar and spigot: where the sizes lie", Says: picture.ZonesSay("mm", 3, zones...) + fmt.Sprintf(" On %.3f mm the slot is shut.", shut.Millimetres()),
		SVG: picture.Zones("mm", 3, shut.Millimetres(), "slot shut", zones...).SVG()}
}
