package springsheet

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// Charts are as wide as a page of text, in millimetres.
const (
	chartWidth  = 160
	chartHeight = 95
)

var strokes = [...]picture.Stroke{picture.Solid, picture.Dashed, picture.DashDotted, picture.Dotted}

// draw adds a chart; one that cannot be drawn is left out.
func (w *writer) draw(title, says string, c *picture.Chart) {
	if svg, err := c.SVG(chartWidth, chartHeight); err == nil {
		w.s.Pictures = append(w.s.Pictures, sheet.Picture{Title: title, Says: says, SVG: svg})
	}
}

// drawDrum draws torque against turns of the drum, the best strip wound on as the
// answer has it and the others by the least, with the demand laid over it: the rope
// home at 0. With friction a strip has two curves, going home below and drawn out
// above.
func (w *writer) drawDrum(h *Drummed) {
	c := picture.NewChart("", "turns of the drum from rope home", "torque, N mm")
	says := fmt.Sprintf("The rope comes out from 0 to %.2f turns; at 0 at least %.0f N mm are wanted.", h.Travel.Turns(), h.Home.NewtonMillimetres())
	home, out, drawn := h.Home.NewtonMillimetres(), h.Travel.Turns(), 0
	if h.Job.MostPull != nil {
		most := h.torque(*h.Job.MostPull).NewtonMillimetres()
		c.Band("what is asked", []float64{0, out}, []float64{home, home}, []float64{most, most}).Level(most, "most, right out")
	}
	for _, choice := range h.Ranked {
		b := choice.Spring
		if !(b.Turns() > 0) {
			continue
		}
		on, rest := choice.Preload, choice.AtRest
		if choice.Works && choice.Offer == h.Ranked[0].Offer {
			on, rest = h.WindOn(), h.Set.AtRest.Drive
		}
		x, drive, wind := barrelCurves(b, on)
		stroke := strokes[drawn%len(strokes)]
		drawn++
		c.Curve("strip "+choice.Offer, x, drive, stroke)
		if h.rules.Friction > 0 {
			c.Curve("", x, wind, stroke)
		}
		says += fmt.Sprintf(" Strip %s, run down at %.1f, gives %.0f N mm at 0 and is solid at %.2f turns, %s.", choice.Offer, x[0], rest.NewtonMillimetres(), x[len(x)-1], endsAt(x[len(x)-1], out))
	}
	if drawn == 0 {
		return
	}
	if h.rules.Friction > 0 {
		says += fmt.Sprintf(" Friction takes %.0f %% of the torque: of the two curves of a strip the lower is going home, the upper drawing the rope out.", 100*h.rules.Friction)
	}
	c.At(0, "home").At(out, "right out").Level(home, "wanted at home").From(0, 0).Legend(true, true)
	w.draw("Rope drum: torque against turns, with what is asked", says, c)
}

func endsAt(solid, travel float64) string {
	if solid < travel {
		return "before the rope is right out"
	}
	return "past the end of the rope"
}

// barrelCurves are the torques from run down to solid, against turns from rope home:
// what drives the rope home, and what it takes to draw it out. Without friction they
// are one.
func barrelCurves(b springs.Barrel, preload units.Angle) (x, drive, wind []float64) {
	const steps = 160
	for i := range steps + 1 {
		n := b.Turns() * float64(i) / steps
		m, err := b.Torque(n)
		if err != nil {
			continue
		}
		x = append(x, n-preload.Turns())
		drive, wind = append(drive, m.Drive.NewtonMillimetres()), append(wind, m.Wind.NewtonMillimetres())
	}
	return x, drive, wind
}

// drawLever draws torque against the lever's angle, each coil wound on as it has
// to be, with the demand laid over it: rest at 0.
func (w *writer) drawLever(h *Levered) {
	travel, rest := h.Demand.Travel.Degrees(), h.Demand.AtRest.NewtonMillimetres()
	c := picture.NewChart("", "angle of the lever from rest, degrees", "torque, N mm")
	says := fmt.Sprintf("The lever moves from 0° to %.0f°; at 0° at least %.0f N mm are wanted.", travel, rest)
	most, beyond, drawn := h.Demand.MostAtFull.NewtonMillimetres(), 1.12*travel, 0
	if most != 0 {
		c.Band("what is asked", []float64{0, travel}, []float64{rest, rest}, []float64{most, most})
	}
	for _, choice := range h.Ranked {
		if choice.Spring.BodyTurns() == 0 {
			continue
		}
		past := choice.Preload + units.Angle(beyond)*units.Degree
		x := []float64{-choice.Preload.Degrees(), 0, travel, beyond}
		y := []float64{0, choice.AtRest.NewtonMillimetres(), choice.AtFull.NewtonMillimetres(), choice.Spring.Torque(past).NewtonMillimetres()}
		c.Curve("wire "+choice.Offer, x, y, strokes[drawn%len(strokes)])
		drawn++
		says += fmt.Sprintf(" The coil of %s wire, free at %.0f°, gives %.0f N mm at rest and %.0f N mm at the end.", choice.Offer, x[0], y[1], y[2])
	}
	if drawn == 0 {
		return
	}
	c.At(0, "rest").At(travel, "end").Level(rest, "wanted at rest").From(0, 0).Legend(true, true)
	if most != 0 {
		c.Level(most, "most at the end")
		says += fmt.Sprintf(" At the end no more than %.0f N mm are wanted.", most)
	}
	w.draw("Lever: torque against angle, with what is asked", says, c)
}
