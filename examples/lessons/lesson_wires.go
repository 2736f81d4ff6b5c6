package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// overWires is what a micrometer shows over three wires in a Whitworth thread of
// full size; the slip uses three wires and no more, as for 60°.
func overWires(major, pitch, wire units.Length) (pair[units.Length], threads.Thread, error) {
	t, err := threads.New(threads.WhitworthForm, major, pitch)
	if err != nil {
		return pair[units.Length]{}, t, err
	}
	w, err := t.Wires(wire)
	over := w.PlainOver(t.Effective())
	rest := over - t.Effective() - wire*wireFactor(threads.WhitworthForm) // − (p/2) cot(α/2)
	return pair[units.Length]{right: over, slip: t.Effective() + 3*wire + rest}, t, err
}

// wireFactor is 1 + cosec(α/2).
func wireFactor(f threads.Form) units.Length {
	sin, _ := (f.Angle() / 2).Sincos()
	return units.Length(1 + 1/sin)
}

func threeWires() (lesson, error) {
	const in = units.Inch
	const major, pitch, wire = 1.625 * in, in / 11, 0.055 * in
	w, t, err := overWires(major, pitch, wire)
	const major2, pitch2, wire2 = 0.375 * in, in / 20, 0.030 * in
	x, t2, err2 := overWires(major2, pitch2, wire2)
	best := threads.WhitworthForm.BestWire(pitch)
	sixty := threads.ISOForm.BestWire(units.Millimetre)
	l := lesson{
		Key: "wires", Title: "Three wires",
		Purpose: []string{"Whether a nut goes on is decided on the flanks, where no micrometer reaches. Three equal wires laid in the grooves, two on one side and one on the other, carry the flanks out to where it does."},
		Derivation: []line{
			{"Look along one groove, a V of angle α. A wire of diameter w touches both flanks. From its centre to a flank is w/2, square on the flank, so the centre lies above the point of the V by", "(w/2) / sin(α/2)"},
			{"The point of the V lies below the effective diameter, where groove and ridge are alike wide and the groove is half a pitch across, by", "(p/4) cot(α/2)"},
			{"Put both sides together, and half a wire more at each end:", "M = E − (p/2) cot(α/2) + w (1 + 1/sin(α/2))"},
			{fmt.Sprintf("For 60° that is E − 0.866p + 3w; for the 55° of Whitworth the last figure is %s.", plain(float64(wireFactor(threads.WhitworthForm)), 4)), "M = E − 0.9605p + 3.1657w"},
			{"The best wire touches right at the effective diameter, where a flank that is not quite at its angle does least harm:", "w = p / (2 cos(α/2))"},
			{"The wires cross the groove at the slope of the thread and so lie a hair further out. On ordinary threads that is a tenth of a thou or so; the library has it, this page leaves it out.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("1 5/8 in with 11 threads to the inch, Whitworth form, wires of %s.", inch(wire, 3)),
			Steps: []sheet.Step{
				{What: "The best wire would be", Formula: "p / (2 cos(α/2))", Result: inch(best, 4) + ", so these will do"},
				{What: "The effective diameter of full size", Formula: "E = D − 0.6403p", Result: inch(t.Effective(), 4)},
				{What: "Over the wires", Formula: "E − 0.9605p + 3.1657w", Numbers: fmt.Sprintf("%s − 0.9605 × %s + 3.1657 × %s", inch(t.Effective(), 4), inch(pitch, 5), inch(wire, 3)), Result: inch(w.right, 4)},
			},
			Printed: []printed{
				{What: "by the old formula D − 1.6008p + 3.1657w it is", Digits: "1.6536", Unit: "in", Source: "Jones, Turning and Boring", Got: w.right.Inches()},
				{What: "for 60° and a pitch of 1, the best wire is", Digits: "0.57735", Source: "Machinery's Handbook, 31st ed., p. 2125", Got: sixty.Millimetres()},
			},
		},
		Slip: slip{Name: "three wires added, as for 60°, on a thread of 55°",
			Why: "In the sharper V the wire sits higher, and it takes 3.1657 of them. With 3w the reading for full size is set too low, and a good thread is cut down until it is loose. This slip has been printed for this very thread, by nine thou."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("3/8 BSF: 20 threads to the inch, Whitworth form, effective diameter %s. What should the micrometer show over wires of %s when the thread is of full size? Leave the slope of the thread out.", inch(t2.Effective(), 4), inch(wire2, 3))}},
		Sources: []string{
			"Plane geometry; Machinery's Handbook, 31st ed., pp. 2125 and 2129; Jones, Turning and Boring.",
			"Jones's formula and the printed slip are of one thread, 1 5/8-11 Whitworth; industrialmonitordirect.com has 1.6445 in.",
		},
	}
	settle(&l, sheet.Inch, 4, w, x,
		mistake[units.Length]{"the wires counted from the major diameter", "The formula starts from the effective diameter, which is smaller.", x.right + t2.Major() - t2.Effective()})
	l.picture("A wire in its groove", "One groove of a thread with a wire in it. The wire touches both flanks, where the radius w/2 stands square on them; its top stands proud of the crests. A level line marks the effective diameter, half a pitch wide in the groove.", wiresDrawing())
	return l, first(err, err2)
}

func wiresDrawing() string {
	d := picture.NewDrawing(124, 90)
	const x, eff, half, depth = 62.0, 50.0, 20.0, 26.0 // half the groove at the effective diameter is p/4
	sin, cos := (55 * units.Degree / 2).Sincos()
	slope := sin / cos
	flank := func(y float64) float64 { return half + (eff-y)*slope } // half the groove at height y
	top, bottom := eff-depth, eff+depth
	d.Path([][2]float64{{6, top}, {x - flank(top), top}, {x - flank(bottom), bottom}, {x + flank(bottom), bottom}, {x + flank(top), top}, {118, top}}, 2*picture.Heavy, picture.Solid, false)
	d.Path([][2]float64{{6, eff}, {118, eff}}, picture.Fine, picture.DashDotted, false)
	d.Text(6, eff-2, 4, picture.Left, 0, "E")
	r := half / cos // the best wire touches at the effective diameter
	cy := eff - r*sin
	d.Circle(x, cy, r, 2*picture.Heavy, picture.Solid)
	d.Line(x, cy, x+half, eff, picture.Heavy).Line(x, cy, x-half, eff, picture.Fine)
	d.Text(x+half/2+2, (cy+eff)/2-2, 4, picture.Left, 0, "w/2")
	point := eff + half/slope
	d.Path([][2]float64{{x - flank(bottom), bottom}, {x, point}, {x + flank(bottom), bottom}}, picture.Fine, picture.Dashed, false)
	d.Dimension(x-half, eff+8, x+half, eff+8, "p/2")
	d.Line(6, cy-r, 118, cy-r, picture.Heavy).Text(6, cy-r-2, 4, picture.Left, 0, "anvil")
	return d.SVG()
}
