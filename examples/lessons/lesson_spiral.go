package main

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A drum is a clock spring in its drum, the strip lying slack on the wall run down.
type drum struct {
	bore, arbor, width, thickness, length units.Length
	e                                     units.Pressure
}

// drumTorque is the torque after so many turns from run down; the slip takes
// turns for radians.
func drumTorque(d drum, turns float64) (pair[units.Torque], springs.Barrel, error) {
	steel, err := springs.NewMaterial(springs.MaterialSpec{Name: "spring strip", YoungsModulus: d.e})
	b, err2 := springs.NewBarrel(springs.BarrelSpec{Bore: d.bore, Arbor: d.arbor, Width: d.width, Thickness: d.thickness, Length: d.length, Free: springs.SlackOnWall(), Material: steel})
	m := b.LineTorque(turns)
	return pair[units.Torque]{right: m, slip: m / (2 * math.Pi)}, b, first(err, err2)
}

func clockSpring() (lesson, error) {
	const m, gpa = units.Millimetre, units.Gigapascal
	d := drum{80 * m, 25 * m, 12 * m, 0.6 * m, 2500 * m, 206 * gpa}
	w, b, err := drumTorque(d, 5)
	d2 := drum{70 * m, 20 * m, 10 * m, 0.5 * m, 2000 * m, 206 * gpa}
	x, _, err2 := drumTorque(d2, 4)
	strip, err3 := springs.RectangularWire(12*m, 1.25*m)
	book, err4 := springs.SpiralLengthFor(1200*units.NewtonMillimetre, 3*units.Turn, strip, 207*gpa, 1)
	energy, err5 := b.Energy(5)
	thick := d2
	thick.width, thick.thickness = d2.thickness, d2.width
	num := func(t units.Torque, decimals int) string { return sheet.Plain(t, newtonMillimetre, decimals) }
	l := lesson{
		Key: "spiral", Title: "The clock spring",
		Purpose:  []string{"A rope drum winds itself back with a flat strip coiled inside. This sum says how hard it pulls after so many turns, and so how many to wind on first."},
		Cautions: springs.Cautions(springs.OpeningBarrel),
		Derivation: []line{
			{"The strip is a bent beam like the wire of the last lesson, with the same moment all along it:", "θ = M L / (E I)"},
			{"A strip of width b (along the axis) and thickness t has", "I = b t³ / 12"},
			{"One turn is 2π radians, so after n turns from where it pulls nothing", "M = E I 2π n / L = π E b t³ n / (6 L)"},
			{"From where are the turns counted? A strip that was bought coiled, or has set, lies slack against the wall run down and begins at nothing. A straight one pulls hard already as it lies there: it may have twice the torque. Say which you have.", ""},
			{"Thickness counts three times: two per cent on it is six on the torque. And near both ends the line does not hold: in the first turn the coils peel off the wall, in the last they crowd on the arbor.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("Strip %s wide, %s thick, %s long, lying slack on the wall of a drum of %s with an arbor of %s; E = %s GPa. Wound by 5 turns.", mm(d.width, 0), mm(d.thickness, 1), mm(d.length, 0), mm(d.bore, 0), mm(d.arbor, 0), plain(d.e.Gigapascals(), 0)),
			Steps: []sheet.Step{
				{What: "Turns there are between run down and solid", Result: plain(b.Turns(), 1)},
				{What: "The torque", Formula: "π E b t³ n / (6 L)", Result: num(w.right, 0)},
				{What: "What it stores by then, the first turn's steeper climb counted", Result: plain(energy.Joules(), 1) + " J"},
			},
			Printed: []printed{{What: "the same law turned about: a strip of 12 by 1.25 mm that gives 1200 N mm in 3 turns, with the rotation not increased for its pinned end, has a length of", Digits: "6.35", Unit: "m", Source: "Bhandari, Design of Machine Elements, Ex. 10.22 (output of a companion)", Got: book.Metres()}},
		},
		Slip: slip{Name: "turns put where radians belong",
			Why: "E I/L is the torque for a radian. A turn has 6.28 of them. A spring chosen by that figure would be six times too strong: it takes the rope out of your hand, or your hand with it."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("Strip %s wide, %s thick, %s long, slack on the wall run down, E = %s GPa. What torque does it give after 4 turns, on the straight line?", mm(d2.width, 0), mm(d2.thickness, 1), mm(d2.length, 0), plain(d2.e.Gigapascals(), 0))}},
		Sources: []string{
			"Bending of a bar; Roark's formulas; Wahl, Mechanical Springs, 2nd ed. (from memory).",
			"Spiral and power springs cannot be calculated accurately: Machinery's Handbook, 31st ed., pp. 318-344. Measure the original where there is one.",
		},
	}
	settle(&l, newtonMillimetre, 0, w, x,
		mistake[units.Torque]{"width and thickness changed about", "The thickness is the small one, and it is the thickness that is cubed.", x.right * units.Torque(math.Pow(float64(d2.width/d2.thickness), 2))},
		mistake[units.Torque]{"the 12 kept where 6 belongs", "π E b t³/(6L) has the 2 of 2π taken into it.", x.right / 2})
	l.picture("Run down and wound", "The same strip twice: run down it lies in coils against the wall of the drum with an empty ring round the arbor; wound it lies round the arbor and the room at the wall is empty.", spiralDrawing())
	return l, first(err, err2, err3, err4, err5)
}

func spiralDrawing() string {
	d := picture.NewDrawing(130, 72)
	for i, s := range [2]struct {
		x, from, to, turns float64
		name               string
	}{{34, 25, 17.5, 5, "run down"}, {96, 8, 17, 8, "wound"}} {
		const y = 32.0
		d.Circle(s.x, y, 26, 2*picture.Heavy, picture.Solid).Circle(s.x, y, 7, 2*picture.Heavy, picture.Solid)
		path := spiral(s.x, y, s.from, s.to, s.turns)
		inner, outer := path[len(path)-1], path[0]
		if i == 1 {
			inner, outer = path[0], path[len(path)-1]
		}
		d.Path(path, picture.Heavy, picture.Solid, false)
		hookX, hookY := at(s.x, y, 7, 0)
		wallX, wallY := at(s.x, y, 26, 0)
		d.Line(inner[0], inner[1], hookX, hookY, picture.Heavy).Line(outer[0], outer[1], wallX, wallY, picture.Heavy)
		d.Text(s.x, 68, 4, picture.Centre, 0, s.name)
	}
	return d.SVG()
}
