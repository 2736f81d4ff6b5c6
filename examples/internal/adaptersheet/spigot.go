package adaptersheet

import (
	"errors"
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// A spigot is what the collar clamps on.
type spigot struct {
	collar   fits.Part
	girth    reading // mean bore of the collar, which its girth goes by
	want     fits.Clearance
	min, max length
	aim      length
	promised bool // whether a size within the limits is sure to serve
	measured reading
}

// fitSpigot works out the spigot from the collar as it measures.
func (w *work) fitSpigot() error {
	r := w.r
	var spots []fits.Spot
	for _, d := range r.CollarAcrossSlot {
		spots = append(spots, fits.Spot{Station: "collar", Way: "across the slot", Size: d})
	}
	for _, d := range r.CollarSquareTo {
		spots = append(spots, fits.Spot{Station: "collar", Way: "square to the slot", Size: d})
	}
	survey, err := fits.NewSurvey(r.BoresGoodTo, spots...)
	if err != nil {
		return w.file.Errorf("adapter.collar_across_slot", "%v", err)
	}
	mean, err := survey.Mean("collar")
	if err != nil {
		return w.file.Errorf("adapter.collar_across_slot", "%v", err)
	}
	sp := &w.spigot
	sp.collar, sp.girth = survey.Part(), units.WithStd(mean, r.BoresGoodTo)
	if err := w.wanted(); err != nil {
		return err
	}
	m, err := sp.collar.ShaftFor(sp.want, r.NewPartGoodTo)
	var none *fits.NoRoomError
	switch {
	case errors.As(err, &none):
		sp.min, sp.max, sp.aim = none.Target, none.Target, none.Target
		w.s.Improve = fmt.Sprintf("the bore of the collar: %v. Until then fit the spigot to the collar by trial from %s, a thou at a time", err, both(none.Target))
	case err != nil:
		return w.file.Errorf("adapter.collar_across_slot", "%v", err)
	default:
		sp.min, sp.max, sp.aim, sp.promised = drawnIn(m.Min, 1), drawnIn(m.Max, -1), m.Target, true
		w.s.Improve = w.eats(m)
	}
	sp.measured = units.WithStd(sp.aim, r.NewPartGoodTo)
	w.saySpigot(m)
	return nil
}

// drawnIn rounds a limit to a whole micrometre, up for the smaller (way 1) and
// down for the larger (way −1).
func drawnIn(l length, way float64) length {
	step := mm / 1000
	return length(way*math.Ceil(way*float64(l/step)-1e-6)) * step
}

// wanted takes the clearance from the fit asked for, or from what the collar
// allows: free to go on by hand, and no more than shuts half the slot.
func (w *work) wanted() error {
	sp, r := &w.spigot, w.r
	if r.SpigotFit != "" {
		want, err := fits.Wanted(sp.girth.Value, r.SpigotFit)
		if err != nil {
			return w.file.Errorf("adapter.spigot_fit", "%v", err)
		}
		if !(want.Min >= 0) || !(want.Max < r.Slot.Value/math.Pi) {
			return w.file.Errorf("adapter.spigot_fit", "%s has a clearance of %s to %s here: want none below 0, or the collar does not go on, and less than %s, where the slot is shut",
				r.SpigotFit, sheet.Plain(want.Min, sheet.Millimetre, 3), sheet.Plain(want.Max, sheet.Millimetre, 3), sheet.Plain(r.Slot.Value/math.Pi, sheet.Millimetre, 3))
		}
		sp.want = want
		w.s.Add(fmt.Sprintf("Clearance wanted, by the fit %s of ISO 286 at the size that is there", r.SpigotFit), "EI − es ... ES − ei", "", w.range3(want))
		return nil
	}
	free, err := fits.Wanted(sp.girth.Value, "H8/f7")
	if err != nil {
		return w.file.Errorf("adapter.collar_across_slot", "%v", err)
	}
	sp.want = fits.Clearance{Min: free.Min, Max: r.Slot.Value / (2 * math.Pi)}
	if !(sp.want.Max > sp.want.Min) {
		return w.file.Errorf("adapter.slot", "a slot of %v takes up %v of clearance by half: want a wider one, the collar would not grip", r.Slot.Value, sp.want.Max)
	}
	w.s.Add("Clearance wanted: at least that of a shaft f, which goes on by hand (ISO 286), at most what shuts half the slot (half: common practice, no source)",
		"f ... g/(2π)", fmt.Sprintf("%s ... %s / (2π)", sheet.Plain(free.Min, sheet.Millimetre, 3), sheet.Value(*r.Slot, sheet.Millimetre)), w.range3(sp.want))
	return nil
}

func (w *work) range3(c fits.Clearance) string {
	return fmt.Sprintf("%s to %s", sheet.Plain(c.Min, sheet.Millimetre, 3), sheet.Plain(c.Max, sheet.Millimetre, 3))
}

// eats says what takes most of the wanted range.
func (w *work) eats(m fits.Machining) string {
	what := fmt.Sprintf("the bore of the collar: what it may be out takes %s at each end", both(m.Guard))
	if m.Form > 2*m.Guard {
		what = fmt.Sprintf("the collar itself: being out of round takes %s", both(m.Form))
	}
	return fmt.Sprintf("%s; of %s that the spigot might vary %s are left to turn to. A plug turned to slide in the collar and measured by micrometer is surer than any calliper in it",
		what, both(w.spigot.want.Spread()), both(m.Tolerance()))
}

// saySpigot puts the spigot down.
func (w *work) saySpigot(m fits.Machining) {
	sp := &w.spigot
	w.figure("collar", "collar of the carburettor, mean of both ways", sp.girth)
	w.figure("collar_out_of_round", "collar out of round", readings.Difference(units.WithStd(sp.collar.Most, w.r.BoresGoodTo), units.WithStd(sp.collar.Least, w.r.BoresGoodTo)))
	if !sp.promised {
		w.figure("spigot_aim", "spigot, to be tried from", units.Exact(sp.aim))
		w.s.Answer = append(w.s.Answer, fmt.Sprintf("No size of the spigot can be promised to fit the collar: measuring and the form of the collar eat all of the wanted clearance. Try it in the collar from %s.", both(sp.aim)))
		w.sizes = append(w.sizes, size{"C", "spigot, diameter", sp.aim, sp.aim, true, "fit to the collar by trial"})
	} else {
		w.figure("spigot_least", "spigot, smallest", units.Exact(sp.min))
		w.figure("spigot_most", "spigot, largest", units.Exact(sp.max))
		z := size{"C", "spigot, diameter", sp.min, sp.max, true, "slides into the collar; the slot closes it"}
		w.sizes = append(w.sizes, z)
		w.s.Answer = append(w.s.Answer, fmt.Sprintf("Turn the spigot to %s mm (%s in): the collar goes on by hand wherever in those limits it comes out, and its screw closes it.", limits(z, sheet.Millimetre), limits(z, sheet.Inch)))
		w.s.Add("Spigot, from the least and the greatest bore of the collar, both drawn in by what measuring may be out",
			"d = B₂ − c₂ + g ... B₁ − c₁ − g,  g = 2 √(u² + v²)",
			fmt.Sprintf("B₁, B₂ = %s, %s; c₁, c₂ = %s, %s; g = %s, u = %s, v = %s", sheet.Plain(sp.collar.Least, sheet.Millimetre, 2), sheet.Plain(sp.collar.Most, sheet.Millimetre, 2),
				sheet.Plain(sp.want.Min, sheet.Millimetre, 3), sheet.Plain(sp.want.Max, sheet.Millimetre, 3), sheet.Plain(m.Guard, sheet.Millimetre, 3), sheet.Plain(w.r.BoresGoodTo, sheet.Millimetre, 3), sheet.Plain(w.r.NewPartGoodTo, sheet.Millimetre, 4)),
			fmt.Sprintf("%s mm", limits(z, sheet.Millimetre)))
	}
	w.figure("clearance_least", "clearance cold, closest", units.WithStd(sp.collar.Least-sp.max, w.clearanceStd()))
	w.figure("clearance_most", "clearance cold, slackest", units.WithStd(sp.collar.Most-sp.min, w.clearanceStd()))
	if sp.collar.Form() > mm/50 {
		w.s.Questions = append(w.s.Questions, fmt.Sprintf("The collar is %s wider across the slot than square to it. Has it been sprung open, or squeezed on something too small? Is it cracked opposite the slot?", both(sp.collar.Form())))
	}
	w.s.Questions = append(w.s.Questions, "Does the slot stop within the length of the spigot? If it runs on past it, air goes in there.")
}

func (w *work) clearanceStd() length {
	return length(math.Hypot(float64(w.r.BoresGoodTo), float64(w.r.NewPartGoodTo)))
}

// both writes a length in millimetres and inches.
func both(l length) string {
	if l < mm/2 && l > -mm/2 {
		return fmt.Sprintf("%s (%s)", sheet.Plain(l, sheet.Millimetre, 3), sheet.Plain(l, sheet.Thou, 1))
	}
	return fmt.Sprintf("%s (%s)", sheet.Plain(l, sheet.Millimetre, 2), sheet.Plain(l, sheet.Inch, 3))
}
