package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// leverSection answers whether it is safe to start with the lever at full
// retard.
func (b *bench) leverSection() (*sheet.Section, error) {
	retarded := b.at(fullRetard, 0)
	if retarded == nil {
		return nil, nil
	}
	advanced := b.at(fullAdvance, retarded.set.Gap)
	if advanced == nil {
		return nil, nil
	}
	s := &sheet.Section{Number: 6, Key: "lever", Title: "Starting with the lever at full retard"}
	lever, err := b.scale().Lever(advanced.found.Forward, retarded.found.Forward)
	if err != nil {
		return nil, b.file.Errorf("points", "%v", err)
	}
	s.Figures = append(s.Figures,
		sheet.Of("lever.advanced", "full advance, before top dead centre", lever.Advanced, sheet.Degree),
		sheet.Of("lever.retarded", "full retard, before top dead centre", lever.Retarded, sheet.Degree),
		sheet.Of("lever.range", "range of the lever", lever.Range, sheet.Degree))
	s.Answer = append(s.Answer, fmt.Sprintf("As it stands, full retard breaks %s.", beforeAfter(lever.Retarded)), sentenceOf(lever.Caution()))
	s.Add("Range of the lever, from one rim figure to the other (top dead centre drops out)", "range = 360 (figure retarded − figure advanced) / C",
		fmt.Sprintf("360 × (%s − %s) / %s", sheet.Value(retarded.found.Forward, sheet.Millimetre), sheet.Value(advanced.found.Forward, sheet.Millimetre), sheet.Value(*b.girth, sheet.Millimetre)),
		sheet.Show(lever.Range, sheet.Degree))
	b.starting = sentenceOf(lever.Caution())
	if b.card != nil {
		set, which := lever.SetTo(b.card.advance), fullAdvance
		if b.cardLever() == fullRetard {
			set, which = lever.SetRetarded(b.card.advance), fullRetard
			s.Figures = append(s.Figures, sheet.Of("lever.advanced_when_set", "full advance once the card's timing is set", set.Advanced, sheet.Degree))
		}
		b.starting = "With the card's timing set: " + sentenceOf(set.Caution())
		s.Figures = append(s.Figures, sheet.Of("lever.retarded_when_set", "full retard once the card's timing is set", set.Retarded, sheet.Degree))
		s.Answer = append(s.Answer, fmt.Sprintf("Once %s is set to the card, full retard will break %s. %s", which, beforeAfter(set.Retarded), sentenceOf(set.Caution())))
		s.Add("Full retard after setting "+which+" to the card", "retard = advance − range",
			fmt.Sprintf("%s − %s", sheet.Value(set.Advanced, sheet.Degree), sheet.Value(lever.Range, sheet.Degree)), sheet.Show(set.Retarded, sheet.Degree))
	}
	s.Improve = readings.LargestOf(lever.RetardedBudget)
	s.Cautions = append(s.Cautions,
		"An engine that fires before the top while it is being started kicks back and breaks wrists. Pull a rope or handle that lets go, never wind it round the hand, stand clear of handle and rope, and try the spark at full retard first.")
	return s, nil
}

// sanity asks whether an opening is what such engines have.
func (b *bench) sanity(o opening) []string {
	if o.set.Lever == fullRetard {
		return b.ask(o.advance.Reading(), ignition.AtStart)
	}
	return b.ask(o.advance.Reading(), ignition.AtSpeed)
}

// ask compares an advance with published practice, as a question.
func (b *bench) ask(advance angle, running ignition.Running) []string {
	var speed units.AngularSpeed
	if b.job.Engine.Speed != nil {
		speed = *b.job.Engine.Speed
	}
	q, err := ignition.Ask(advance, b.job.Engine.Kind, running, speed)
	if err != nil {
		return nil
	}
	text := q.Text
	for _, r := range q.Rows {
		if r.Source != "" && len(q.Rows) <= 3 {
			text += " [" + r.Source + "]"
		}
	}
	return []string{sentenceOf(text)}
}
