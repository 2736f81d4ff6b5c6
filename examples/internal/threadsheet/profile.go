package threadsheet

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A profile is the outline of a thread in a cut along its axis: how far from
// the axis the metal of a bolt reaches, at a distance along the axis from the
// middle of a crest. Of a nut it is the basic profile, the space that is left.
type profile struct {
	p, effective, major, minor float64 // mm, the last three from the axis
	tan                        float64
	crest, root                float64 // radii of the roundings; 0 for flats
	taper                      float64
}

func profileOf(t threads.Thread, part threads.Part) profile {
	form := t.Form()
	pr := profile{p: t.Pitch().Millimetres(), effective: t.Effective().Millimetres() / 2, major: t.Major().Millimetres() / 2,
		minor: t.Minor().Millimetres() / 2, tan: form.TanFlank(), taper: t.Taper()}
	if shape, r := form.Crest(t.Pitch()); shape == threads.Round {
		pr.crest = r.Millimetres()
	}
	if shape, r := form.Root(t.Pitch()); shape == threads.Round {
		pr.root = r.Millimetres()
	}
	if deep := t.BoltRoot(); part == threads.Bolt && deep != t.Minor() {
		_, r := threads.ISOBoltForm.Root(t.Pitch()) // ISO and Unified bolts are cut deeper, with a rounded root
		pr.minor, pr.root = deep.Millimetres()/2, r.Millimetres()
	}
	return pr
}

// at returns the distance from the axis, mm, at x mm from the middle of a crest.
func (pr profile) at(x float64) float64 {
	rise := pr.taper / 2 * x
	x = math.Abs(math.Mod(math.Abs(x)+pr.p/2, pr.p) - pr.p/2) // from the middle of the nearest crest
	cos := 1 / math.Hypot(1, pr.tan)
	r := pr.effective + (pr.p/4-x)/pr.tan
	if x < pr.crest*cos {
		r = pr.major - pr.crest + math.Sqrt(pr.crest*pr.crest-x*x)
	}
	if y := pr.p/2 - x; y < pr.root*cos {
		r = pr.minor + pr.root - math.Sqrt(pr.root*pr.root-y*y)
	}
	return min(max(r, pr.minor), pr.major) + rise
}

// scales are the enlargements of ISO 5455.
var scales = [...]float64{50, 20, 10, 5, 2, 1}

// The room for a drawing, mm.
const (
	room   = 165.
	least  = 130. // for the words below
	margin = 2.
)

// Profiles draws two threads over one another along an engaged length, with
// their first crests in one place, and says to what scale.
func Profiles(first, second threads.Thread, part threads.Part, engaged units.Length) sheet.Picture {
	long := engaged.Millimetres()
	scale := room / long
	for _, s := range scales {
		if s*long <= room {
			scale = s
			break
		}
	}
	a, b := profileOf(first, part), profileOf(second, part)
	top, bottom := max(a.major, b.major), min(a.minor, b.minor)
	top += max(a.taper, b.taper) / 2 * long
	d := picture.NewDrawing(max(long*scale, least)+2*margin, (top-bottom)*scale+34)
	place := func(x, r float64) [2]float64 { return [2]float64{margin + x*scale, 4 + (top-r)*scale} }
	outline := func(pr profile) [][2]float64 {
		n := steps(long, pr.p)
		points := make([][2]float64, n+1)
		for i := range points {
			x := long * float64(i) / float64(n)
			points[i] = place(x, pr.at(x))
		}
		return points
	}
	metal := outline(a)
	floor := 4 + (top-bottom)*scale + 6
	edge := floor
	if part == threads.Nut {
		edge = 1
	}
	d.Fill(append(append([][2]float64{}, metal...), [2]float64{margin + long*scale, edge}, [2]float64{margin, edge}), 0.9)
	d.Path(metal, picture.Heavy, picture.Solid, false).Path(outline(b), picture.Heavy, picture.Dashed, false)
	legend(d, floor+7, scale, first, second)
	return sheet.Picture{
		Title: fmt.Sprintf("%v (solid, its metal grey) and %v (dashed) over one another as %ss, %s of engagement, scale %s", first, second, partWord(part), sheet.Plain(engaged, sheet.Millimetre, 1), ratio(scale)),
		Says:  says(first, second, engaged),
		SVG:   d.SVG(),
	}
}

func partWord(p threads.Part) string {
	if p == threads.Nut {
		return "hole"
	}
	return "bolt"
}

// legend writes which line is which, and a bar of 1 mm of the thread.
func legend(d *picture.Drawing, y, scale float64, first, second threads.Thread) {
	for i, t := range [...]threads.Thread{first, second} {
		stroke := [...]picture.Stroke{picture.Solid, picture.Dashed}[i]
		d.Path([][2]float64{{margin, y - 1}, {margin + 12, y - 1}}, picture.Heavy, stroke, false)
		d.Text(margin+14, y, 3.2, picture.Left, 0, fmt.Sprintf("%v, %s, pitch %s", t, angleOf(t), sheet.Plain(t.Pitch(), sheet.Millimetre, 4)))
		y += 5
	}
	d.Path([][2]float64{{margin, y - 2.5}, {margin, y}, {margin + scale, y}, {margin + scale, y - 2.5}}, picture.Fine, picture.Solid, false)
	d.Text(margin+scale+2, y, 3.2, picture.Left, 0, fmt.Sprintf("1 mm of the thread; drawn %s, when printed at 100 %%", ratio(scale)))
}

// ratio writes a scale as a drawing has it.
func ratio(scale float64) string {
	if scale >= 1 {
		return fmt.Sprintf("%g:1", math.Round(scale*100)/100)
	}
	return fmt.Sprintf("1:%g", math.Round(100/scale)/100)
}

// says tells what the drawing shows.
func says(a, b threads.Thread, engaged units.Length) string {
	n := float64(engaged / b.Pitch())
	off := units.Length(math.Abs(float64(a.Pitch()-b.Pitch())) * n)
	text := "The two have one pitch and stay in step from end to end"
	if off > 0.001*units.Millimetre {
		text = fmt.Sprintf("Crest on crest at the left end, they are %s out of step at the right one", sheet.Plain(off, sheet.Millimetre, 3))
	}
	if a.Form().Angle() != b.Form().Angle() {
		text += fmt.Sprintf("; the flanks lean otherwise, %s against %s", angleOf(a), angleOf(b))
	}
	if a.Taper() != b.Taper() {
		text += "; one rises along the axis and the other does not"
	}
	return text + "."
}

func angleOf(t threads.Thread) string { return sheet.Plain(t.Form().Angle(), sheet.Degree, 1) }
