package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// halfWay is top dead centre from a positive stop, on a rule that goes once
// round the rim; the slip takes the mean of the two figures as they stand.
func halfWay(girth, forward, backward units.Length) (pair[units.Length], error) {
	rim, err := ignition.NewRimOfGirth(girth)
	if err != nil {
		return pair[units.Length]{}, err
	}
	setup := ignition.Setup{Rim: rim, Figures: ignition.Rising, SettingStd: 0.3 * units.Millimetre}
	found, err := ignition.Stop(setup, ignition.StopPair{Forward: forward, Backward: backward})
	return pair[units.Length]{right: found.Position.Value, slip: (forward + backward) / 2}, err
}

func findingTDC() (lesson, error) {
	const girth, forward, backward = 640 * units.Millimetre, 611.5 * units.Millimetre, 52.3 * units.Millimetre
	w, err := halfWay(girth, forward, backward)
	const girth2, forward2, backward2 = 900 * units.Millimetre, 871.2 * units.Millimetre, 46.0 * units.Millimetre
	x, err2 := halfWay(girth2, forward2, backward2)
	c, err3 := geometry.NewCrank(80*units.Millimetre, 160*units.Millimetre)
	if err := first(err, err2, err3); err != nil {
		return lesson{Key: "tdc"}, err
	}
	blind, _, err := c.AnglesAtDrop(units.Millimetre / 100)
	l := lesson{
		Key: "tdc", Title: "Finding top dead centre",
		Purpose: []string{
			"Every timing is counted from top dead centre, so every error in finding it goes into all the rest. Watching for the highest point is a poor way. Going to the same height on either side and halving is the good way.",
		},
		Cautions: append(turningCautions(), "Against a stop in the plug hole turn gently by hand. Never use the starter or force: the stop can go through the crown."),
		Derivation: []line{
			{"Near the top the piston moves as the square of the angle:", "x ≈ (r/2)(1 + r/l) θ²"},
			{fmt.Sprintf("A dial that cannot show less than 0.01 mm therefore stands still over a stretch. With a stroke of 80 mm and a rod of 160 mm it is %s either side, and nobody can say where in it the top is.", deg(blind, 1)), ""},
			{"Further down the piston moves fast and every height is met twice, once going up and once coming down, at the same angle from the top. So the top is half way between the two:", "TDC = (s₁ + s₂) / 2"},
			{"A positive stop, a bolt through an old plug body, makes the height: turn forward until the piston touches and read the rim, turn backward until it touches and read again. It asks for no dial, no stroke and no rod.", ""},
			{"One thing to mind: a rule laid once round the rim jumps from its end back to nought. If that joint lies between the two readings, bring one of them on to the same run of figures first, by adding or taking off the whole girth:", "TDC = (s₁ − C + s₂) / 2"},
		},
		Worked: worked{
			Given: fmt.Sprintf("A rule %s long once round the rim, figures rising at the pointer. The piston met the stop at %s turning forward and at %s turning backward.", mm(girth, 0), mm(forward, 1), mm(backward, 1)),
			Steps: []sheet.Step{
				{What: "Going forward from the first figure one comes over the joint of the rule, so the first is as good as", Formula: "s₁ − C", Numbers: mm(forward, 1) + " − " + mm(girth, 0), Result: mm(forward-girth, 1)},
				{What: "Half way", Formula: "(s₁ − C + s₂) / 2", Numbers: fmt.Sprintf("(%s + %s) / 2", mm(forward-girth, 1), mm(backward, 1)), Result: mm(w.right, 1)},
			},
		},
		Slip: slip{Name: "the mean taken straight across the joint of the rule",
			Why: "The mean of two figures is half way round by the long road as well as by the short. Across the joint it lands half a turn off, at bottom dead centre. Look at the rim: top dead centre lies between the two touches, where the piston was out of sight of the stop."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("The rule goes once round the rim and is %s long. The piston met the stop at %s turning forward and at %s turning backward. At what figure is top dead centre?", mm(girth2, 0), mm(forward2, 1), mm(backward2, 1))}},
		Sources: []string{
			"Halving between equal heights: symmetry of the crank about its top, derived; with the cylinder set over to one side the middle lies a little off.",
			"Positive stop: common practice, no source.",
		},
	}
	settle(&l, sheet.Millimetre, 1, w, x)
	return l, first(err, l.equalHeights(c))
}

// equalHeights draws the two places of one height.
func (l *lesson) equalHeights(c geometry.Crank) error {
	degrees, drop := series(-35, 35, 71, func(a float64) float64 { return c.Drop(units.Angle(a) * units.Degree).Millimetres() })
	before, after, err := c.AnglesAtDrop(5 * units.Millimetre)
	if err != nil {
		return err
	}
	svg, err := chart(picture.NewChart("", "degrees before (−) and after the top", "piston below its top, mm").
		Curve("", degrees, drop, picture.Solid).
		Points("the same height", []float64{-before.Degrees(), after.Degrees()}, []float64{5, 5}, picture.FilledCircle).
		Level(5, "").At(0, "TDC").Legend(true, true).Down())
	l.picture("One height, two places", fmt.Sprintf("The curve is flat at the top. A level line at 5 mm cuts it at %.1f° before and %.1f° after, and top dead centre is half way between.", before.Degrees(), after.Degrees()), svg)
	return err
}
