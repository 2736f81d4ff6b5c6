package picture

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// A Zone is a range of sizes: the limits a part is made to, or the least and
// the greatest size a part was found to have, which may be out by Sure each.
type Zone struct {
	Name      string
	Low, High float64
	Sure      float64 // half-width that the ends may be out by; 0 to draw none
	Cut       bool    // hatched, for the part that is made
}

// Zones draws ranges of sizes side by side over one upright scale, as the
// diagrams of tolerance zones in books on limits and fits do. The unit stands
// at the scale, with the decimals that figures are to have; level is a line
// across, with a name.
func Zones(unit string, decimals int, level float64, name string, zones ...Zone) *Drawing {
	const top, height, left, wide, gap = 12.0, 70.0, 26.0, 26.0, 14.0
	low, high := level, level
	for _, z := range zones {
		low, high = min(low, z.Low-z.Sure), max(high, z.High+z.Sure)
	}
	if !(high > low) {
		low, high = low-1, high+1
	}
	pad := (high - low) / 20
	low, high = low-pad, high+pad
	at := func(v float64) float64 { return top + height*(high-v)/(high-low) }
	right := left + float64(len(zones))*(wide+gap) + gap
	d := NewDrawing(right+24, top+height+12)
	d.Line(left, top, left, top+height, Fine)
	for _, m := range (ticks{}).Ticks(low, high) {
		d.Line(left-1.5, at(m.Value), left, at(m.Value), Fine).Text(left-2.5, at(m.Value)+1.1, 3, Right, 0, m.Label)
	}
	d.Text(left, top-4, 3.2, Centre, 0, unit)
	d.Path([][2]float64{{left, at(level)}, {right, at(level)}}, Fine, DashDotted, false).Text(right+1, at(level)+1.1, 3, Left, 0, name)
	for i, z := range zones {
		d.zone(left+gap+float64(i)*(wide+gap), wide, at, z, decimals)
	}
	return d
}

// zone draws one range, its ends dotted where they may be out.
func (d *Drawing) zone(x, wide float64, at func(float64) float64, z Zone, decimals int) {
	box := [][2]float64{{x, at(z.High)}, {x + wide, at(z.High)}, {x + wide, at(z.Low)}, {x, at(z.Low)}}
	if z.Cut {
		d.Hatch(box, "zone-"+strings.Map(letter, z.Name))
	} else {
		d.Fill(box, 0.87).Path(box, Heavy, Solid, true)
	}
	if z.Sure > 0 {
		for _, end := range [2][2]float64{{z.High, z.High + z.Sure}, {z.Low, z.Low - z.Sure}} {
			middle := x + wide/2
			d.Line(middle, at(end[0]), middle, at(end[1]), Fine).Line(middle-2, at(end[1]), middle+2, at(end[1]), Fine)
		}
	}
	figure := func(v float64) string { return strconv.FormatFloat(v+0, 'f', decimals, 64) }
	d.Text(x+wide+1, at(z.High)+1, 2.8, Left, 0, figure(z.High))
	if math.Abs(at(z.High)-at(z.Low)) > 3 {
		d.Text(x+wide+1, at(z.Low)+1, 2.8, Left, 0, figure(z.Low))
	}
	d.Text(x+wide/2, d.height-4, 3, Centre, 0, z.Name)
}

// letter keeps the letters of a name, for an id.
func letter(r rune) rune {
	if r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' {
		return r
	}
	return -1
}

// ZonesSay says in words what the diagram of zones shows.
func ZonesSay(unit string, decimals int, zones ...Zone) string {
	text := ""
	for i, z := range zones {
		if i > 0 {
			text += "; "
		}
		text += fmt.Sprintf("%s from %.*f to %.*f %s", z.Name, decimals, z.Low, decimals, z.High, unit)
		if z.Sure > 0 {
			text += fmt.Sprintf(", either end good to %.*f", decimals, z.Sure)
		}
	}
	return text + "."
}
