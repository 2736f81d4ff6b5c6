package main

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A timing is one advance in every form a manual or a bench uses.
type timing struct {
	advance angle
	drop    length
	percent units.Reading[float64]
	improve string // what its uncertainty comes from
	spread  *geometry.Spread[units.Angle]
}

// cardSection turns what the card says into every other form, and says where
// to scribe it.
func (b *bench) cardSection() (*sheet.Section, error) {
	if b.job.Card == nil {
		return nil, nil
	}
	if b.stroke == nil {
		return nil, b.file.Errorf("card", "the card's timing needs the stroke of the piston: give crank.stroke, or the crown edge at both ends")
	}
	if l := b.job.Card.Lever; l != "" && l != fullAdvance && l != fullRetard {
		return nil, b.file.Errorf("card.lever", "%q: want %q or %q", l, fullAdvance, fullRetard)
	}
	s := &sheet.Section{Number: 3, Key: "card", Title: "What the card says, in every form"}
	t, err := b.cardTiming(s)
	if err != nil {
		return nil, err
	}
	b.card = t
	b.forms(s, "card", t)
	if err := b.markCard(s, t); err != nil {
		return nil, err
	}
	s.Improve = t.improve
	running := ignition.AtSpeed
	if b.cardLever() == fullRetard {
		running = ignition.AtStart
	}
	s.Questions = append(s.Questions, b.ask(t.advance, running)...)
	if b.job.Card.Lever != "" {
		s.Answer = append(s.Answer, "The card gives it for the lever at "+b.job.Card.Lever+".")
	}
	return s, nil
}

// cardTiming works out the advance from whichever form the card has.
func (b *bench) cardTiming(s *sheet.Section) (*timing, error) {
	c := b.job.Card
	given := 0
	for _, is := range [...]bool{c.Drop != nil, c.Angle != nil, c.Percent != nil} {
		if is {
			given++
		}
	}
	if given != 1 {
		return nil, b.file.Errorf("card", "want one of drop, angle and percent_of_stroke, as the card has it: %d are given", given)
	}
	switch {
	case c.Drop != nil:
		return b.timingAtDrop(s, "card.drop", units.Exact(*c.Drop))
	case c.Percent != nil:
		return b.timingAtShare(s, *c.Percent)
	}
	return b.timingAtAngle(s, units.Exact(*c.Angle))
}

// timingAtDrop is the advance with the piston a distance from the top.
func (b *bench) timingAtDrop(s *sheet.Section, key string, drop length) (*timing, error) {
	if b.crank == nil {
		return b.timingWithoutRod(s, key, drop)
	}
	res, err := b.propagateAngle(drop)
	if err != nil {
		return nil, b.file.Errorf(key, "%v", err)
	}
	t := &timing{advance: res.Reading(), drop: drop, percent: percentOf(drop, *b.stroke), improve: largest(res)}
	drawBudget(s, "the angle", res)
	r := b.stroke.Value / 2
	s.Add("Crank angle with the piston so far from the top, in half angles",
		"sin²(θ/2) = x (2L − x) / (4 r (r + L − x)),  r = S/2",
		fmt.Sprintf("x = %s, r = %s, L = %s", sheet.Value(drop, sheet.Millimetre), sheet.Plain(r, sheet.Millimetre, 2), sheet.Value(*b.rod, sheet.Millimetre)),
		sheet.Show(t.advance, sheet.Degree))
	s.Answer = append(s.Answer, fmt.Sprintf("%s from the top is %s before top dead centre.", dropText(drop), sheet.Show(t.advance, sheet.Degree)))
	return t, nil
}

// dropText writes a drop as a card would, with the fraction when it is one.
func dropText(drop length) string {
	if f, err := drop.Value.Fraction(64); err == nil && drop.Std == 0 && math.Abs(f.Rest.Thou()) < 0.05 {
		return fmt.Sprintf("%s (%s)", f, sheet.Plain(drop.Value, sheet.Millimetre, 2))
	}
	return sheet.Show(drop, sheet.Millimetre)
}

// timingAtShare is the advance with the piston a share of its stroke from the
// top: drop and stroke go together, so that the stroke hardly matters.
func (b *bench) timingAtShare(s *sheet.Section, share units.Ratio) (*timing, error) {
	drop := scale(*b.stroke, float64(share))
	s.Add("Drop from the percentage of the stroke", "x = p S", fmt.Sprintf("%s × %s", sheet.Plain(float64(share), sheet.Percent, 1), sheet.Value(*b.stroke, sheet.Millimetre)), sheet.Show(drop, sheet.Millimetre))
	if b.crank == nil {
		return b.timingWithoutRod(s, "card.percent_of_stroke", drop)
	}
	f, inputs := crankModel(b, func(c geometry.Crank) (units.Angle, error) {
		before, _, err := c.AnglesAtDrop(units.Length(share) * c.Stroke())
		return before, err
	})
	res, err := units.Propagate(f, inputs...)
	if err != nil {
		return nil, b.file.Errorf("card.percent_of_stroke", "%v", err)
	}
	sampleLater(b, "card_advance", "the card's angle before top dead centre", sheet.Degree, res.Reading(), f, inputs)
	s.Answer = append(s.Answer, fmt.Sprintf("%s of the stroke is %s before top dead centre.", sheet.Plain(float64(share), sheet.Percent, 1), sheet.Show(res.Reading(), sheet.Degree)))
	return &timing{advance: res.Reading(), drop: drop, percent: units.Exact(float64(share)), improve: largest(res)}, nil
}

// timingWithoutRod gives the spread that the usual rods make.
func (b *bench) timingWithoutRod(s *sheet.Section, key string, drop length) (*timing, error) {
	so, err := geometry.NewStrokeOnly(b.stroke.Value, geometry.UsualRods())
	if err != nil {
		return nil, b.file.Errorf("crank.stroke", "%v", err)
	}
	spread, err := so.AngleAtDrop(drop.Value)
	if err != nil {
		return nil, b.file.Errorf(key, "%v", err)
	}
	t := &timing{advance: spread.Reading(), drop: drop, percent: percentOf(drop, *b.stroke), spread: &spread, improve: "the length of the rod between centres, which was not given"}
	rods := geometry.UsualRods()
	s.Add(fmt.Sprintf("The rod was not given: the usual range is %.1f to %.1f throws (common practice, no source)", rods.Least, rods.Most),
		"sin²(θ/2) = x (2L − x) / (4 r (r + L − x)),  r = S/2, L = n r",
		fmt.Sprintf("x = %s, r = %s, n = %.1f ... %.1f", sheet.Show(drop, sheet.Millimetre), sheet.Plain(b.stroke.Value/2, sheet.Millimetre, 2), rods.Least, rods.Most),
		fmt.Sprintf("%s ... %s, middle %s", sheet.Plain(spread.Least, sheet.Degree, 2), sheet.Plain(spread.Most, sheet.Degree, 2), sheet.Plain(spread.Middle, sheet.Degree, 2)))
	s.Answer = append(s.Answer, fmt.Sprintf("%s from the top is between %s and %s before top dead centre, according to the rod, which was not given.",
		dropText(drop), sheet.Plain(spread.Least, sheet.Degree, 1), sheet.Plain(spread.Most, sheet.Degree, 1)))
	s.Figures = append(s.Figures,
		sheet.Of("card.advance_least", "advance, shortest usual rod", units.Exact(spread.Least), sheet.Degree),
		sheet.Of("card.advance_most", "advance, longest usual rod", units.Exact(spread.Most), sheet.Degree))
	return t, nil
}

// timingAtAngle is the drop at an advance.
func (b *bench) timingAtAngle(s *sheet.Section, advance angle) (*timing, error) {
	t := &timing{advance: advance}
	if b.crank == nil {
		so, err := geometry.NewStrokeOnly(b.stroke.Value, geometry.UsualRods())
		if err != nil {
			return nil, b.file.Errorf("crank.stroke", "%v", err)
		}
		t.drop, t.improve = so.Drop(advance.Value).Reading(), "the length of the rod between centres, which was not given"
		t.percent = percentOf(t.drop, *b.stroke)
	} else {
		res, err := b.propagateDrop(advance)
		if err != nil {
			return nil, b.file.Errorf("card.angle", "%v", err)
		}
		t.drop, t.improve = res.Reading(), largest(res)
		share, err := propagateCrank(b, func(c geometry.Crank) (units.Ratio, error) {
			return units.Ratio(c.Drop(-advance.Value) / c.Stroke()), nil
		})
		if err != nil {
			return nil, b.file.Errorf("card.angle", "%v", err)
		}
		t.percent = units.Reading[float64]{Value: float64(share.Value), Std: float64(share.Std), DoF: share.DoF}
	}
	numbers := fmt.Sprintf("θ = %s, r = %s", sheet.Value(advance, sheet.Degree), sheet.Plain(b.stroke.Value/2, sheet.Millimetre, 2))
	if b.rod != nil {
		numbers += ", L = " + sheet.Value(*b.rod, sheet.Millimetre)
	}
	s.Add("Piston drop at that angle", "x = r (1 − cos θ) + L (1 − √(1 − (r sin θ / L)²))", numbers, sheet.Show(t.drop, sheet.Millimetre))
	s.Answer = append(s.Answer, fmt.Sprintf("%s is %s from the top.", capital(beforeAfter(advance)), sheet.Show(t.drop, sheet.Millimetre)))
	return t, nil
}

// forms adds a timing in every form that what was measured allows.
func (b *bench) forms(s *sheet.Section, key string, t *timing) {
	s.Figures = append(s.Figures,
		sheet.Of(key+".advance", "before top dead centre", t.advance, sheet.Degree),
		sheet.Of(key+".drop", "piston drop", t.drop, sheet.Millimetre, sheet.Inch),
		sheet.Of(key+".percent", "percent of the stroke", t.percent, sheet.Percent))
	if f, err := t.drop.Value.Fraction(64); err == nil {
		s.Figures[len(s.Figures)-2].Note = "nearest " + f.String()
	}
	if b.round != nil {
		arc := b.arcOf(t.advance)
		s.Figures = append(s.Figures, sheet.Of(key+".arc", "along the rim (+ ahead of the TDC mark)", arc, sheet.Millimetre, sheet.Inch),
			sheet.Of(key+".chord", "straight across the rim", units.Reading[units.Length]{Value: b.round.Chord(t.advance.Value), Std: arc.Std, DoF: arc.DoF}, sheet.Millimetre, sheet.Inch))
		s.Add("Along the rim", "s = C θ / 360", fmt.Sprintf("%s × %s / 360", sheet.Value(*b.girth, sheet.Millimetre), sheet.Value(t.advance, sheet.Degree)), sheet.Show(arc, sheet.Millimetre))
	}
	if b.lean.Value != 0 {
		b.leaning(s, key, t)
	}
	if n := b.job.Engine.Speed; n != nil && *n > 0 {
		ms := units.Reading[float64]{Value: float64(t.advance.Value) / float64(*n), Std: float64(t.advance.Std) / float64(*n), DoF: t.advance.DoF}
		s.Figures = append(s.Figures, sheet.Of(key+".time", fmt.Sprintf("in time, at %.0f rev/min", n.RevolutionsPerMinute()), ms, sheet.Millisec))
	}
}

// leaning adds what a gauge in the leaning plug hole shows for the drop.
func (b *bench) leaning(s *sheet.Section, key string, t *timing) {
	x, lean := t.drop.Value, b.lean.Value
	res, err := units.Propagate(func() units.Length {
		return x / units.Length(math.Cos(float64(lean)))
	}, units.VaryReading("piston drop", &x, t.drop), units.VaryReading("lean of the plug hole", &lean, b.lean))
	if err != nil {
		return
	}
	s.Figures = append(s.Figures, sheet.Of(key+".dial", "gauge in the leaning hole", res.Reading(), sheet.Millimetre, sheet.Inch))
	s.Add("A gauge that leans reads long (flat crown square to the bore)", "m = x / cos β",
		fmt.Sprintf("%s / cos %s", sheet.Value(t.drop, sheet.Millimetre), sheet.Value(b.lean, sheet.Degree)), sheet.Show(res.Reading(), sheet.Millimetre))
}

// markCard says where to scribe the card's timing.
func (b *bench) markCard(s *sheet.Section, t *timing) error {
	if b.round == nil {
		return nil
	}
	if b.job.Engine.Turns == 0 {
		s.Scribe = append(s.Scribe, "The file does not say which way the engine turns (engine.turns), so no line is given here: ahead and behind cannot be told apart without it.")
		return nil
	}
	m, err := ignition.NewMark(*b.round, t.advance.Value, ignition.OnRim, b.job.Engine.Turns)
	if err != nil {
		return b.file.Errorf("card", "%v", err)
	}
	s.Scribe = append(s.Scribe, sentence(m.String()+"; with a pointer that stands still"), sentence(m.Approach()))
	if b.tdc == nil {
		return nil
	}
	figure, err := b.figureAt(t.advance)
	if err != nil {
		return b.file.Errorf("card", "%v", err)
	}
	b.cardFigure = &figure
	s.Figures = append(s.Figures, sheet.Of("card.rim", "rim figure at the pointer", figure, sheet.Millimetre, sheet.Inch))
	s.Scribe = append(s.Scribe, fmt.Sprintf("With the rule on the rim, it is the figure %s at the pointer.", sheet.Show(figure, sheet.Millimetre)))
	return nil
}

// figureAt is the rim figure at the pointer at an advance.
func (b *bench) figureAt(advance angle) (length, error) {
	res, err := b.scale().Figure(advance)
	return res.Reading(), err
}

// arcOf is how much rim goes to an angle, both with their uncertainties.
func (b *bench) arcOf(a angle) length {
	arc := b.round.Arc(a.Value)
	u := math.Hypot(float64(b.round.Arc(a.Std)), float64(arc)*float64(b.girth.Std/b.girth.Value))
	return units.Reading[units.Length]{Value: arc, Std: units.Length(u), DoF: a.DoF}
}

func percentOf(drop, stroke length) units.Reading[float64] {
	p := float64(drop.Value / stroke.Value)
	rel := math.Hypot(float64(drop.Std/drop.Value), float64(stroke.Std/stroke.Value))
	return units.WithStd(p, p*rel)
}

// propagateAngle is the angle before top dead centre at a drop, with what
// stroke, rod and offset add to its uncertainty.
func (b *bench) propagateAngle(drop length) (units.Result[units.Angle], error) {
	var x units.Length
	f, inputs := crankModel(b, func(c geometry.Crank) (units.Angle, error) {
		before, _, err := c.AnglesAtDrop(x)
		return before, err
	}, units.VaryReading("piston drop", &x, drop))
	res, err := units.Propagate(f, inputs...)
	sampleLater(b, "card_advance", "the card's angle before top dead centre", sheet.Degree, res.Reading(), f, inputs)
	return res, err
}

// propagateDrop is the drop at an angle before top dead centre.
func (b *bench) propagateDrop(advance angle) (units.Result[units.Length], error) {
	var a units.Angle
	f, inputs := crankModel(b, func(c geometry.Crank) (units.Length, error) { return c.Drop(-a), nil },
		units.VaryReading("advance", &a, advance))
	res, err := units.Propagate(f, inputs...)
	sampleLater(b, "card_drop", "the card's piston drop", sheet.Millimetre, res.Reading(), f, inputs)
	return res, err
}

// propagateCrank propagates through a function of the crank and of what more
// the caller varies.
func propagateCrank[Q units.Quantity](b *bench, f func(geometry.Crank) (Q, error), more ...units.Input) (units.Result[Q], error) {
	g, inputs := crankModel(b, f, more...)
	return units.Propagate(g, inputs...)
}

// crankModel makes of a function of the crank one of stroke, rod and offset as
// they may be, and of what more the caller varies.
func crankModel[Q units.Quantity](b *bench, f func(geometry.Crank) (Q, error), more ...units.Input) (func() Q, []units.Input) {
	var stroke, rod, offset units.Length
	var fail error
	inputs := append([]units.Input{
		units.VaryReading("stroke", &stroke, *b.stroke),
		units.VaryReading("rod", &rod, *b.rod),
		units.VaryReading("offset of the cylinder", &offset, b.offset()),
		units.StopOn(&fail),
	}, more...)
	return func() Q {
		var v Q
		c, err := geometry.NewCrank(stroke, rod)
		if err == nil {
			c, err = c.WithOffsetSameStroke(offset)
		}
		if err == nil {
			v, err = f(c)
		}
		fail = err
		return v
	}, inputs
}

func (b *bench) offset() length {
	if b.job.Crank.Offset != nil {
		return *b.job.Crank.Offset
	}
	return length{}
}
