package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// Two openings of the contacts: the gap and the rim figure of each.
type openings struct {
	girth, tdc units.Length
	gap, rim   [2]units.Length
}

// whatAThouDoes is what a thou more gap does to the advance; the slip takes a
// thou for a hundredth of a millimetre.
func whatAThouDoes(o openings) (pair[units.Angle], ignition.GapEffect, error) {
	scale := ignition.MeasuredScale{Girth: units.Exact(o.girth), TDC: units.Exact(o.tdc), Figures: ignition.Rising}
	var trials []ignition.GapTrial
	for i := range o.gap {
		trials = append(trials, ignition.GapTrial{Gap: o.gap[i], Figure: units.WithStd(o.rim[i], 0.3*units.Millimetre)})
	}
	effect, err := scale.GapEffect(0.01*units.Millimetre, trials...)
	if err != nil {
		return pair[units.Angle]{}, effect, err
	}
	thou, err := effect.Per(units.Thou)
	hundredth, err2 := effect.Per(units.Millimetre / 100)
	return pair[units.Angle]{right: thou.Value, slip: hundredth.Value}, effect, first(err, err2)
}

func points() (lesson, error) {
	const m = units.Millimetre
	o := openings{1000 * m, 120 * m, [2]units.Length{0.35 * m, 0.45 * m}, [2]units.Length{46.0 * m, 37.6 * m}}
	w, effect, err := whatAThouDoes(o)
	o2 := openings{1200 * m, 260 * m, [2]units.Length{0.30 * m, 0.45 * m}, [2]units.Length{190.0 * m, 178.6 * m}}
	x, _, err2 := whatAThouDoes(o2)
	rim, err3 := ignition.NewRimOfGirth(o.girth)
	scale, err4 := ignition.NewScale(rim, o.tdc, ignition.Rising)
	if err := first(err, err2, err3, err4); err != nil {
		return lesson{Key: "points"}, err
	}
	a, b := scale.Advance(o.rim[0]), scale.Advance(o.rim[1])
	l := lesson{
		Key: "points", Title: "Points and their gap",
		Purpose:  []string{"A wider gap opens the contacts earlier, and the spark with it. So the gap is set first and the timing second. This sum tells how much a change of gap does on the engine in front of you, for no book can: it depends on the cam."},
		Cautions: append(turningCautions(), "A magneto gives a dangerous shock, above all to people with heart trouble. Earth the lead while you try the contacts."),
		Derivation: []line{
			{"The cam pushes the moving contact away along a nearly straight flank. Over the small gaps in use, advance against gap is then a straight line, and two points settle it: set one gap, turn forward until the buzzer changes and read the rim; set another gap and do it again.", ""},
			{"From a rim figure to the advance, figures rising at the pointer:", "advance = 360° (TDC − figure) / C"},
			{"The slope of the line:", "k = (advance₂ − advance₁) / (gap₂ − gap₁)"},
			{"Then for any small change of gap", "change of advance = k × change of gap"},
			{"Take the two gaps well apart. A feeler leaves a gap that is out by a hundredth or two, and that error is divided by the distance between the gaps. Read only turning forward, the way the engine runs: backward the slack of the drive is in it.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("Rim %s round, top dead centre at %s. At a gap of %s the contacts opened at %s, at %s at %s.", mm(o.girth, 0), mm(o.tdc, 0), mm(o.gap[0], 2), mm(o.rim[0], 1), mm(o.gap[1], 2), mm(o.rim[1], 1)),
			Steps: []sheet.Step{
				{What: "Advance at the first gap", Formula: "360° (TDC − figure) / C", Numbers: fmt.Sprintf("360° × %s / %s", mm(o.tdc-o.rim[0], 1), mm(o.girth, 0)), Result: deg(a, 2)},
				{What: "Advance at the second", Numbers: fmt.Sprintf("360° × %s / %s", mm(o.tdc-o.rim[1], 1), mm(o.girth, 0)), Result: deg(b, 2)},
				{What: "For a hundredth of a millimetre", Formula: "k × 0.01 mm", Numbers: fmt.Sprintf("%s / %s × 0.01 mm", deg(b-a, 2), mm(o.gap[1]-o.gap[0], 2)), Result: deg(w.slip, 2)},
				{What: "For a thou, which is 0.0254 mm", Formula: "k × 0.0254 mm", Result: deg(w.right, 2)},
			},
		},
		Slip: slip{Name: "a thou taken for a hundredth of a millimetre",
			Why: "Both are the last figure of somebody's gauge, and a feeler may be marked in either. A thou is 0.0254 mm, two and a half hundredths."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("Rim %s round, top dead centre at %s, figures rising. At a gap of %s the contacts opened at %s, at %s at %s. How much earlier does the spark come for each thou more gap?", mm(o2.girth, 0), mm(o2.tdc, 0), mm(o2.gap[0], 2), mm(o2.rim[0], 1), mm(o2.gap[1], 2), mm(o2.rim[1], 1))}},
		Sources:  []string{"Straight line through two openings: derived. That advance grows with the gap, and how well a feeler sets one: common practice, no source.", "The thou: the inch of 25.4 mm, international agreement of 1959."},
	}
	settle(&l, sheet.Degree, 2, w, x,
		mistake[units.Angle]{"halved for a half-speed shaft", "The rim turns with the crank, so its degrees are crank degrees already. Only degrees read on a half-speed shaft want doubling.", x.right / 2})
	return l, l.gapChart(o, effect, a, b)
}

func (l *lesson) gapChart(o openings, effect ignition.GapEffect, a, b units.Angle) error {
	least, most := effect.Tried()
	per, err := effect.Per(units.Millimetre)
	gap, advance := series(least.Millimetres()-0.05, most.Millimetres()+0.05, 2, func(g float64) float64 {
		return a.Degrees() + (g-o.gap[0].Millimetres())*per.Value.Degrees()
	})
	svg, err2 := chart(picture.NewChart("", "gap, mm", "degrees before the top").Curve("", gap, advance, picture.Solid).
		Points("found", []float64{o.gap[0].Millimetres(), o.gap[1].Millimetres()}, []float64{a.Degrees(), b.Degrees()}, picture.FilledCircle).Legend(true, true))
	l.picture("Advance against gap", fmt.Sprintf("A straight line through %s at %s and %s at %s: the wider the gap, the earlier the spark.", deg(a, 1), mm(o.gap[0], 2), deg(b, 1), mm(o.gap[1], 2)), svg)
	return first(err, err2)
}
