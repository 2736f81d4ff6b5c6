package main

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

const (
	fullAdvance = "full advance"
	fullRetard  = "full retard"
)

// An opening is one set of figures of the contacts, worked out.
type opening struct {
	set     pointsSet
	found   ignition.Opening
	advance units.Result[units.Angle]
}

// scale is the rim scale with what its figures are worth.
func (b *bench) scale() ignition.MeasuredScale {
	return ignition.MeasuredScale{Girth: *b.girth, TDC: *b.tdc, Figures: b.job.Rim.Figures, RunOut: b.job.Rim.RunOut}
}

// readOpenings works out every set of contact figures.
func (b *bench) readOpenings() error {
	p := b.job.Points
	if b.round == nil || b.tdc == nil {
		return b.file.Errorf("points", "rim figures of the contacts need the rim (girth or diameter) and top dead centre on it: give a [stop] or a [dial]")
	}
	for i, set := range p.Sets {
		key := fmt.Sprintf("points.set.%d", i)
		if !(set.Gap > 0) {
			return b.file.Errorf(key+".gap", "a gap of %v: want more than 0 mm", set.Gap)
		}
		if set.Lever != fullAdvance && set.Lever != fullRetard && set.Lever != "" {
			return b.file.Errorf(key+".lever", "%q: want %q or %q", set.Lever, fullAdvance, fullRetard)
		}
		forward, err := b.forwardFigures(set)
		if err != nil {
			return b.file.Errorf(key, "%v", err)
		}
		found, err := b.scale().Opening(forward, set.Backward, b.job.Rim.ReadingGoodTo)
		if err != nil {
			return b.file.Errorf(key, "%v", err)
		}
		advance, err := b.scale().Advance(found.Forward)
		if err != nil {
			return b.file.Errorf(key, "%v", err)
		}
		b.openings = append(b.openings, opening{set, found, advance})
	}
	if len(b.openings) == 0 {
		return b.file.Errorf("points", "no figures: give at least one [[points.set]]")
	}
	return nil
}

// forwardFigures returns the rim figures of a set, with the distances from the
// top dead centre mark turned into figures.
func (b *bench) forwardFigures(set pointsSet) (lengths, error) {
	figures := slices.Clone(set.Forward)
	if len(set.Ahead)+len(set.Behind) > 0 && set.Held == 0 {
		return nil, errors.New(`say how the distances were measured: held = "along the rim" or "straight across"`)
	}
	sc, err := b.rimScale()
	if err != nil {
		return nil, err
	}
	for _, side := range [...]struct {
		list lengths
		side ignition.Side
	}{{set.Ahead, ignition.Ahead}, {set.Behind, ignition.Behind}} {
		for _, l := range side.list {
			f, err := sc.FigureAt(b.tdc.Value, ignition.Distance{Length: l, Side: side.side, Held: set.Held, Thickness: b.job.Rim.Tape})
			if err != nil {
				return nil, err
			}
			figures = append(figures, f)
		}
	}
	return figures, nil
}

// pointsSection answers where the contacts break now, and what the gap does.
func (b *bench) pointsSection() (*sheet.Section, error) {
	if b.job.Points == nil {
		return nil, nil
	}
	if err := b.readOpenings(); err != nil {
		return nil, err
	}
	s := &sheet.Section{Number: 4, Key: "points", Title: "Where the points break now"}
	for i, o := range b.openings {
		b.describeOpening(s, i, o)
	}
	b.slackNote(s)
	if err := b.gapEffect(s); err != nil {
		return nil, err
	}
	s.Improve = largest(b.openings[0].advance) + ", at the gap of " + sheet.Plain(b.openings[0].set.Gap, sheet.Millimetre, 2)
	s.Questions = append(s.Questions, b.sanity(b.openings[0])...)
	s.Cautions = append(s.Cautions, "A magneto turned by hand can give a shock that makes one jump: earth its terminal while turning the engine.")
	return s, nil
}

// describeOpening adds one set.
func (b *bench) describeOpening(s *sheet.Section, i int, o opening) {
	at := fmt.Sprintf("gap %s", sheet.Plain(o.set.Gap, sheet.Millimetre, 2))
	if o.set.Lever != "" {
		at += ", " + o.set.Lever
	}
	adv := o.advance.Reading()
	s.Answer = append(s.Answer, fmt.Sprintf("At %s they break %s.", at, beforeAfter(adv)))
	key := fmt.Sprintf("points.set_%d", i+1)
	s.Figures = append(s.Figures,
		sheet.Of(key+"_rim", at+": rim figure", o.found.Forward, sheet.Millimetre, sheet.Inch),
		sheet.Of(key+"_advance", at+": before top dead centre", adv, sheet.Degree))
	s.Add(sentence(at+": mean of the figures taken turning forward, and the angle from top dead centre"),
		"θ = 360 (figure of TDC − figure) / C"+fallingNote(b.job.Rim.Figures),
		fmt.Sprintf("360 × (%s − %s) / %s", sheet.Value(*b.tdc, sheet.Millimetre), sheet.Value(o.found.Forward, sheet.Millimetre), sheet.Value(*b.girth, sheet.Millimetre)),
		sheet.Show(adv, sheet.Degree))
	for _, odd := range append(o.found.Odd, o.found.OddBack...) {
		s.Questions = append(s.Questions, sentence("at "+at+": "+odd.String()))
	}
}

func fallingNote(f ignition.Figures) string {
	if f == ignition.Falling {
		return ", sign turned because the figures fall"
	}
	return ""
}

// beforeAfter writes an advance in words: 12° ± 1° before top dead centre.
func beforeAfter(a angle) string {
	if a.Value < 0 {
		a.Value = -a.Value
		return sheet.Show(a, sheet.Degree) + " after top dead centre"
	}
	return sheet.Show(a, sheet.Degree) + " before top dead centre"
}

// slackNote adds what turning back shows of the drive.
func (b *bench) slackNote(s *sheet.Section) {
	for _, o := range b.openings {
		if o.found.Slack.Value == 0 && o.found.Slack.Std == 0 {
			continue
		}
		s.Figures = append(s.Figures, sheet.Of("points.drive_slack", "slack of the drive, at the crank", o.found.Slack, sheet.Degree))
		s.Answer = append(s.Answer, fmt.Sprintf("Turned backward they shut %s of crank away: that is the slack of the drive. Only the figures taken turning forward are the timing; a mean of both ways is the timing of no engine.", sheet.Show(o.found.Slack, sheet.Degree)))
		return
	}
}

// gapEffect adds degrees per hundredth and per thou, from sets at full advance
// with different gaps.
func (b *bench) gapEffect(s *sheet.Section) error {
	var trials []ignition.GapTrial
	for _, o := range b.openings {
		if o.set.Lever != fullRetard {
			trials = append(trials, ignition.GapTrial{Gap: o.set.Gap, Figure: o.found.Forward})
		}
	}
	if len(trials) < 2 || b.job.Points.FeelerGoodTo == 0 {
		return nil
	}
	effect, err := b.scale().GapEffect(b.job.Points.FeelerGoodTo, trials...)
	if err != nil {
		return b.file.Errorf("points", "%v", err)
	}
	b.gap = &effect
	hundredth, err := effect.Per(units.Millimetre / 100)
	if err != nil {
		return b.file.Errorf("points", "%v", err)
	}
	thou, err := effect.Per(units.Thou)
	if err != nil {
		return b.file.Errorf("points", "%v", err)
	}
	s.Figures = append(s.Figures,
		sheet.Of("points.per_hundredth_mm", "0.01 mm wider makes it earlier by", hundredth.Reading(), sheet.Degree),
		sheet.Of("points.per_thou", "one thou wider makes it earlier by", thou.Reading(), sheet.Degree))
	s.Answer = append(s.Answer, fmt.Sprintf("Opening the gap by 0.01 mm makes the spark %s earlier, one thou %s.", sheet.Show(hundredth.Reading(), sheet.Degree), sheet.Show(thou.Reading(), sheet.Degree)))
	s.Add("What the gap does: a straight line through the gaps tried. Each gap has one error of the feeler, which its repeats share and do not make smaller",
		"dθ/dg = (θ₂ − θ₁) / (g₂ − g₁)", fmt.Sprintf("%d gaps, each good to %s", len(trials), sheet.Plain(b.job.Points.FeelerGoodTo, sheet.Millimetre, 2)),
		sheet.Show(hundredth.Reading(), sheet.Degree)+" for 0.01 mm; most of the doubt is "+largest(hundredth))
	b.drawGap(s)
	if effect.Misfit() > 3 {
		s.Questions = append(s.Questions, "The gaps do not lie on one line. Was one of them set wrong, or a rim figure misread?")
	}
	return nil
}

// at returns the opening at a place of the lever, the one with a gap nearest
// to the given one if there are several, or nil.
func (b *bench) at(lever string, gap units.Length) *opening {
	var best *opening
	for i := range b.openings {
		o := &b.openings[i]
		if o.set.Lever != lever {
			continue
		}
		if best == nil || math.Abs(float64(o.set.Gap-gap)) < math.Abs(float64(best.set.Gap-gap)) {
			best = o
		}
	}
	return best
}
