package main

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// Charts are as wide as a page of text, in millimetres.
const (
	chartWidth  = 160
	chartHeight = 95
)

// addChart adds a chart to a section. A chart that cannot be drawn is left out:
// the figures stand in the table.
func addChart(s *sheet.Section, title, says string, c *picture.Chart) {
	if svg, err := c.SVG(chartWidth, chartHeight); err == nil {
		s.Pictures = append(s.Pictures, sheet.Picture{Title: title, Says: says, SVG: svg})
	}
}

// drawFit draws the dial readings with the curve of the crank, and what is
// left over between them.
func (b *bench) drawFit(s *sheet.Section, fit ignition.TDC) {
	type run struct{ rim, dial, left []float64 }
	var forward, backward, out run
	least, most := math.Inf(1), math.Inf(-1)
	for _, r := range fit.Residuals {
		to := &forward
		switch {
		case r.LeftOut:
			to = &out
		case r.Turned == ignition.Backward:
			to = &backward
		}
		to.rim = append(to.rim, r.Rim.Millimetres())
		to.dial = append(to.dial, r.Dial.Millimetres())
		to.left = append(to.left, r.Difference.Millimetres())
		least, most = min(least, r.Rim.Millimetres()), max(most, r.Rim.Millimetres())
	}
	tdc := fit.Position.Value.Millimetres()
	var rim, ahead, behind []float64
	for i := range 121 {
		x := least + (most-least)*float64(i)/120
		f, err := fit.Predict(units.Length(x)*units.Millimetre, ignition.Forward, fit.Zeros[0].Mounting)
		g, err2 := fit.Predict(units.Length(x)*units.Millimetre, ignition.Backward, fit.Zeros[0].Mounting)
		if err != nil || err2 != nil {
			continue
		}
		rim, ahead, behind = append(rim, x), append(ahead, f.Millimetres()), append(behind, g.Millimetres())
	}
	addChart(s, "Dial readings and the curve of the crank",
		fmt.Sprintf("The readings fall to nothing at %.1f mm on the rim and rise on both sides; readings turned backward lie a little aside of those turned forward.", tdc),
		picture.NewChart("", "rim figure at the pointer, mm", "dial, mm").
			Curve("curve, turned forward", rim, ahead, picture.Solid).Curve("curve, turned backward", rim, behind, picture.Dashed).
			Points("turned forward", forward.rim, forward.dial, picture.Circle).Points("turned backward", backward.rim, backward.dial, picture.Plus).
			Points("left out", out.rim, out.dial, picture.Square).At(tdc, "TDC"))
	addChart(s, "What is left between readings and curve",
		"Differences of a few hundredths of a millimetre, larger where the piston moves fast, and one reading far off that was left out.",
		picture.NewChart("", "rim figure at the pointer, mm", "reading less curve, mm").
			Points("turned forward", forward.rim, forward.left, picture.Circle).Points("turned backward", backward.rim, backward.left, picture.Plus).
			Points("left out", out.rim, out.left, picture.Square).At(tdc, "TDC").Level(0, ""))
}

// drawGap draws the timing against the gap with its band.
func (b *bench) drawGap(s *sheet.Section) {
	least, most := b.gap.Tried()
	var gap, mid, low, high []float64
	for i := range 41 {
		g := least + (most-least)*units.Length(i)/40
		r, err := b.gap.Advance(g)
		if err != nil {
			return
		}
		gap, mid = append(gap, g.Millimetres()), append(mid, r.Value.Degrees())
		low, high = append(low, (r.Value-2*r.Std).Degrees()), append(high, (r.Value+2*r.Std).Degrees())
	}
	var tried, found []float64
	for _, o := range b.openings {
		if o.set.Lever != fullRetard {
			tried, found = append(tried, o.set.Gap.Millimetres()), append(found, o.advance.Value.Degrees())
		}
	}
	c := picture.NewChart("", "gap, mm", "degrees before top dead centre").
		Band("95 in 100, gap set anew", gap, low, high).Curve("by the gaps tried", gap, mid, picture.Solid).Points("found", tried, found, picture.FilledCircle).Legend(true, true)
	says := fmt.Sprintf("A line rising from %.1f° at %.2f mm to %.1f° at %.2f mm.", mid[0], gap[0], mid[len(mid)-1], gap[len(gap)-1])
	if b.card != nil {
		c.Level(b.card.advance.Value.Degrees(), "the card")
	}
	addChart(s, "Timing against gap", says, c)
}

// drawPorts draws the port timing as a circle: top dead centre uppermost, the
// engine turning clockwise on paper, each port an arc of its own radius.
func drawPorts(s *sheet.Section, ports []port) {
	d := picture.NewDrawing(110, 112)
	const cx, cy, r = 55.0, 57.0, 46.0
	d.Circle(cx, cy, r, picture.Fine, picture.Solid).Line(cx, cy-r-2, cx, cy+r+2, picture.Fine).Line(cx-r-2, cy, cx+r+2, cy, picture.Fine)
	d.Text(cx, cy-r-4, 3.5, picture.Centre, 0, "TDC").Text(cx, cy+r+6, 3.5, picture.Centre, 0, "BDC")
	strokes := [...]picture.Stroke{picture.Solid, picture.Dashed, picture.Dotted}
	says := "Seen with top dead centre uppermost and the crank turning clockwise: "
	for i := range ports {
		p := &ports[i]
		radius := r - 8 - 9*float64(i)
		from, to := p.event.Opens.Degrees(), p.event.Closes.Degrees()
		d.Arc(cx, cy, radius, from, to, 3*picture.Heavy, strokes[i%len(strokes)])
		for _, a := range [2]float64{from, to} {
			sin, cos := math.Sincos(a * math.Pi / 180)
			d.Line(cx+(radius-3)*sin, cy-(radius-3)*cos, cx+r*sin, cy-r*cos, picture.Fine)
		}
		middle := (from + to) / 2 * math.Pi / 180
		d.Text(cx+(radius-5)*math.Sin(middle), cy-(radius-5)*math.Cos(middle)+1, 3.2, picture.Centre, 0, fmt.Sprintf("%s %.0f°", p.name, p.event.Duration().Degrees()))
		says += fmt.Sprintf("%s from %.0f° to %.0f°; ", p.name, from, to)
	}
	s.Pictures = append(s.Pictures, sheet.Picture{Title: "Port timing, the crank turning clockwise on paper", Says: says, SVG: d.SVG()})
}

// drawBudget draws what an uncertainty is made of.
func drawBudget[Q units.Quantity](s *sheet.Section, of string, r units.Result[Q]) {
	var names []string
	var shares []float64
	for _, c := range r.Budget {
		if c.Share > 0.005 {
			names, shares = append(names, c.Name), append(shares, c.Share)
		}
	}
	if len(names) < 2 {
		return
	}
	d := picture.NewDrawing(150, 8+9*float64(len(names)))
	says := ""
	for i, name := range names {
		y := 4 + 9*float64(i)
		w := 80 * min(shares[i], 1)
		d.Text(52, y+4.5, 3.5, picture.Right, 0, name)
		d.Fill([][2]float64{{54, y}, {54 + w, y}, {54 + w, y + 6}, {54, y + 6}}, 0.75)
		d.Path([][2]float64{{54, y}, {54 + w, y}, {54 + w, y + 6}, {54, y + 6}}, picture.Fine, picture.Solid, true)
		d.Text(56+w, y+4.5, 3.5, picture.Left, 0, fmt.Sprintf("%.0f %%", 100*shares[i]))
		says += fmt.Sprintf("%s %.0f %%; ", name, 100*shares[i])
	}
	s.Pictures = append(s.Pictures, sheet.Picture{Title: "What the uncertainty of " + of + " is made of", Says: says, SVG: d.SVG()})
}
