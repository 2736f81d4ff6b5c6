package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A slackBench is an engine and what its rim and dial showed, turned both ways.
type slackBench struct {
	stroke, rod, girth units.Length
	dial               units.Length    // the height read at
	forward, backward  [2]units.Length // rim figures before and after the top
}

// freeOfSlack is top dead centre from readings both ways; the slip keeps to those
// turned forward. It returns the lost motion too.
func freeOfSlack(b slackBench) (pair[units.Length], units.Length, error) {
	rim, err := ignition.NewRimOfGirth(b.girth)
	if err != nil {
		return pair[units.Length]{}, 0, err
	}
	setup := ignition.Setup{
		Stroke: units.Exact(b.stroke), Rod: units.Exact(b.rod), Rim: rim, Figures: ignition.Rising,
		SettingStd: 0.3 * units.Millimetre, Dial: ignition.MoreGoingDown, DialStd: 0.01 * units.Millimetre,
	}
	run := func(turned ignition.Turned, at [2]units.Length) ignition.Series {
		return ignition.Series{Name: turned.String(), Turned: turned, Readings: []ignition.DialReading{{Rim: at[0], Dial: b.dial}, {Rim: at[1], Dial: b.dial}}}
	}
	found, err := ignition.Bisect(setup, run(ignition.Forward, b.forward), run(ignition.Backward, b.backward))
	return pair[units.Length]{right: found.Position.Value, slip: middle(b.forward)}, found.Slack.Value, err
}

func middle(at [2]units.Length) units.Length { return (at[0] + at[1]) / 2 }

func lostMotion() (lesson, error) {
	const m = units.Millimetre
	b := slackBench{80 * m, 160 * m, 1000 * m, 4 * m, [2]units.Length{139.1 * m, 268.7 * m}, [2]units.Length{137.3 * m, 266.9 * m}}
	w, slack, err := freeOfSlack(b)
	b2 := slackBench{80 * m, 160 * m, 1000 * m, 4 * m, [2]units.Length{88.4 * m, 217.8 * m}, [2]units.Length{86.6 * m, 216.4 * m}}
	x, _, err2 := freeOfSlack(b2)
	c, err3 := geometry.NewCrank(b.stroke, b.rod)
	late, err4 := ignition.LateBy(c, b.dial, slack)
	if err := first(err, err2, err3, err4); err != nil {
		return lesson{Key: "slack"}, err
	}
	f, bk := middle(b.forward), middle(b.backward)
	l := lesson{
		Key: "slack", Title: "Lost motion",
		Purpose: []string{
			"Bearings that have worn let the piston lag behind the crank. Halving between equal heights then finds a top dead centre that is late, and late by the same every time, so that repeating it does not show it. Turning both ways does.",
		},
		Cautions: turningCautions(),
		Derivation: []line{
			{"Call the slack along the bore δ. Turned by hand the piston is pushed on its way up and sits low by half of it; past the top it is dragged and sits high by half.", ""},
			{"Low before the top and high after it: both readings of one height come later in the way of turning, by the time the crank needs to move the piston half the slack. The middle between them is late by", "(δ/2) / (dx/ds) = δ / (2 dx/ds)"},
			{"Turning backward the same thing happens the other way about: the middle is early by as much. So", "TDC = (middle forward + middle backward) / 2"},
			{"and the difference tells the slack:", "δ = (middle forward − middle backward) dx/ds"},
		},
		Worked: worked{
			Given: fmt.Sprintf("Stroke %s, rod %s, rim %s round. The dial stood at %s at %s and %s turning forward, and at %s and %s turning backward.", mm(b.stroke, 0), mm(b.rod, 0), mm(b.girth, 0), mm(b.dial, 0),
				mm(b.forward[0], 1), mm(b.forward[1], 1), mm(b.backward[0], 1), mm(b.backward[1], 1)),
			Steps: []sheet.Step{
				{What: "The middle turning forward", Numbers: fmt.Sprintf("(%s + %s) / 2", mm(b.forward[0], 1), mm(b.forward[1], 1)), Result: mm(f, 1)},
				{What: "The middle turning backward", Numbers: fmt.Sprintf("(%s + %s) / 2", mm(b.backward[0], 1), mm(b.backward[1], 1)), Result: mm(bk, 1)},
				{What: "Top dead centre is half way between the two", Numbers: fmt.Sprintf("(%s + %s) / 2", mm(f, 1), mm(bk, 1)), Result: mm(w.right, 1)},
				{What: "The slack, from how fast the piston moves along the rim there", Formula: "δ = (middle forward − middle backward) dx/ds", Result: mm(slack, 2)},
				{What: "Which put either middle out by", Formula: "δ / (2 dx/dθ)", Result: deg(late, 2) + " of crank"},
			},
		},
		Slip: slip{Name: "readings turned one way only",
			Why: "They agree with one another beautifully, for they all share the same error. It does not average out, and it makes the spark early or late by a fair part of a degree. Take the readings both ways round, or use a stop, which takes up the slack alike from both sides."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("The dial stood at %s at %s and %s turning forward, and at %s and %s turning backward. Figures rise as the engine turns forward. Where is top dead centre?", mm(b2.dial, 0),
			mm(b2.forward[0], 1), mm(b2.forward[1], 1), mm(b2.backward[0], 1), mm(b2.backward[1], 1))}},
		Sources: []string{"Derived, for a piston that friction moves through the slack. A free upright piston whose weight closes the play has none."},
	}
	settle(&l, sheet.Millimetre, 1, w, x,
		mistake[units.Length]{"the backward readings only", "One way only, and early instead of late.", middle(b2.backward)})
	return l, l.slackChart(c)
}

// slackChart draws the piston both ways, with more slack than is likely.
func (l *lesson) slackChart(c geometry.Crank) error {
	const slack = 0.6
	run := func(way float64) func(float64) float64 {
		return func(a float64) float64 {
			x := c.Drop(units.Angle(a) * units.Degree).Millimetres()
			if a*way < 0 {
				return x + slack/2
			}
			return max(x-slack/2, slack/2)
		}
	}
	degrees, forward := series(-30, 30, 121, run(1))
	_, backward := series(-30, 30, 121, run(-1))
	svg, err := chart(picture.NewChart("", "degrees before (−) and after the top", "piston below its top, mm").
		Curve("turned forward", degrees, forward, picture.Solid).Curve("turned backward", degrees, backward, picture.Dashed).At(0, "TDC").Level(4, "").From(-30, 0).Legend(true, true).Down())
	l.picture("The piston with slack, much enlarged", "Turned forward the curve lies to the right of where it should be, turned backward to the left, each by the same. Just past the top the piston stands still until the slack is taken up.", svg)
	return err
}
