package threadsheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// nameOf writes a candidate with its other names.
func nameOf(c threads.Candidate) string {
	names := c.Names()
	text := names[0].Designation()
	for i, t := range names[1:] {
		if i == 0 {
			text += " (the same as " + t.Designation()
		} else {
			text += ", " + t.Designation()
		}
		if i == len(names)-2 {
			text += ")"
		}
	}
	return text
}

// percent writes a probability so that it never claims what is not so: 99.98 %
// is not 100 %.
func percent(p float64) string {
	switch {
	case p >= 0.9995:
		return "over 99.9\u00a0%"
	case p >= 0.995:
		return fmt.Sprintf("%.1f\u00a0%%", math.Floor(p*1000)/10)
	case p < 0.005:
		return "under 1\u00a0%"
	}
	return fmt.Sprintf("%.0f\u00a0%%", 100*p)
}

// Answer says in a sentence which thread it is.
func (c *Checked) Answer() string {
	tied := c.Tied()
	switch {
	case len(tied) == 0 || c.Found.Unlisted > 0.5:
		return fmt.Sprintf("It is of no series in the tables, or was not measured right (%s): measure again, pitch first.", percent(c.Found.Unlisted))
	case c.Named():
		return fmt.Sprintf("It is %s, %s%s.", nameOf(tied[0]), percent(tied[0].Probability), c.handText())
	}
	var each []string
	for _, t := range tied {
		each = append(each, fmt.Sprintf("%s, %s", nameOf(t), percent(t.Probability)))
	}
	return fmt.Sprintf("The readings leave it open: %s%s.", strings.Join(each, "; or "), c.handText())
}

func (c *Checked) handText() string {
	if c.Found.Hand == threads.LeftHand {
		return ", left hand"
	}
	return ""
}

// shortName is for tables.
func (c *Checked) shortName() string {
	var each []string
	for _, t := range c.Tied() {
		each = append(each, t.Thread().Designation())
	}
	if len(each) == 0 || c.Found.Unlisted > 0.5 {
		return "none of the tables"
	}
	return strings.Join(each, " or ") + c.handText()
}

// tool says what a measurement is taken with, on a bolt or in a hole.
func tool(by threads.Measurement, part threads.Part) string {
	inside := part == threads.Nut
	switch {
	case by == threads.ByPitch && inside:
		return "a vernier on a wax or a cast of the thread"
	case by == threads.ByPitch:
		return "a vernier, or a rule beside a long row of threads"
	case by == threads.ByCrest && inside:
		return "a small hole gauge, or an inside calliper, and a micrometer"
	case by == threads.ByCrest:
		return "a micrometer"
	case by == threads.ByTaper:
		return "a straight edge"
	case by == threads.ByEffective:
		return "a micrometer over three wires"
	case by == threads.ByRoot && inside:
		return "a cast of the thread"
	case by == threads.ByRoot:
		return "pointed anvils"
	case inside:
		return "a cast of the thread, a leaf of each angle against it, or its shadow enlarged and a protractor"
	}
	return "a leaf of each angle against the light, where there is one, or the shadow of the thread enlarged and a protractor"
}

// common reports whether a small workshop has what the measurement wants:
// wires, pointed anvils and enlarged shadows are not what it has to hand.
func common(p threads.Parting) bool {
	switch p.By {
	case threads.ByPitch, threads.ByCrest, threads.ByTaper:
		return p.Decides
	}
	return false
}

// pairsSettled is how many pairs settle speaks of at most.
const pairsSettled = 3

// settle says what would part the threads that are left, each from the next. As
// long as the pitch is not known, only the first two are worth it.
func (c *Checked) settle() []string {
	var all []string
	list := c.Found.Candidates
	n := min(len(c.Tied())-1, pairsSettled)
	if c.Readings.Pitch.Value == 0 {
		n = 1
	}
	for i := 0; i < max(n, 1) && i+1 < len(list); i++ {
		p, ok := threads.PartingOf(list[i].Thread(), list[i+1].Thread(), c.Readings.Part)
		if !ok {
			all = append(all, fmt.Sprintf("Nothing that can be measured parts %v from %v.", list[i].Thread(), list[i+1].Thread()))
			continue
		}
		with := tool(p.By, c.Readings.Part)
		if p.By == threads.ByAngle && c.leafOf(p.FirstAngle) && c.leafOf(p.SecondAngle) {
			with = "the shadow of the thread enlarged and a protractor, since leaves of both seem to fit"
		}
		all = append(all, partingText(p, with))
	}
	return all
}

// leafOf reports whether a leaf of an angle seemed to fit.
func (c *Checked) leafOf(angle units.Angle) bool {
	return slices.ContainsFunc(c.Leaf, func(p Pitch) bool { return math.Abs(float64(p.Angle-angle)) < float64(3*units.Degree) })
}

// partingText writes what to measure, how well and with what.
func partingText(p threads.Parting, with string) string {
	text, open := strings.CutSuffix(p.String(), "; it may leave them undecided")
	text = strings.ToUpper(text[:1]) + text[1:]
	if p.By != threads.ByTaper {
		text += " (two times in three), with " + with
	}
	if open {
		text += "; even so it may leave them undecided"
	}
	return text + "."
}

// offText says how a candidate lies to the readings.
func offText(c threads.Candidate, r threads.Readings) (short, pitch string) {
	short, pitch = "-", "-"
	if r.Crest.Value != 0 {
		short = sheet.Plain(c.Short, sheet.Millimetre, 3)
	}
	if r.Pitch.Value != 0 {
		pitch = fmt.Sprintf("%+.4f\u00a0mm", c.Pitch.Millimetres())
	}
	return short, pitch
}
