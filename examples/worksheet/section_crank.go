package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// crankSection says what stroke and rod came to, on which the rest stands,
// where they were not given outright.
func (b *bench) crankSection() (*sheet.Section, error) {
	c := &b.job.Crank
	if len(c.CrownTop) == 0 && len(c.RodOverPins) == 0 {
		return nil, nil
	}
	s := &sheet.Section{Key: "crank", Title: "Stroke and rod"}
	if b.stroke != nil && len(c.CrownTop) > 0 {
		top, bottom := b.meanOf("crank", "crank.crown_at_top", c.CrownTop, c.DepthsGoodTo), b.meanOf("crank", "crank.crown_at_bottom", c.CrownBottom, c.DepthsGoodTo)
		s.Figures = append(s.Figures, sheet.Of("crank.stroke", "stroke", *b.stroke, sheet.Millimetre, sheet.Inch))
		s.Add("Stroke, from the depth of the crown edge at both ends: the means", "S = depth at the bottom − depth at the top",
			fmt.Sprintf("%s − %s", sheet.Value(bottom, sheet.Millimetre), sheet.Value(top, sheet.Millimetre)), sheet.Show(*b.stroke, sheet.Millimetre))
		s.Answer = append(s.Answer, fmt.Sprintf("The stroke is %s.", sheet.Show(*b.stroke, sheet.Millimetre)))
	}
	if b.rod != nil && len(c.RodOverPins) > 0 {
		over := b.meanOf("crank", "crank.rod_over_pins", c.RodOverPins, c.RodGoodTo)
		s.Figures = append(s.Figures, sheet.Of("crank.rod", "rod between centres", *b.rod, sheet.Millimetre, sheet.Inch))
		s.Add("Rod, from over the far sides of its pins, less half of each", "L = over pins − (gudgeon pin + crankpin) / 2",
			fmt.Sprintf("%s − (%s + %s) / 2", sheet.Value(over, sheet.Millimetre), sheet.Value(*c.GudgeonPin, sheet.Millimetre), sheet.Value(*c.Crankpin, sheet.Millimetre)),
			sheet.Show(*b.rod, sheet.Millimetre))
		s.Answer = append(s.Answer, fmt.Sprintf("The rod is %s between centres.", sheet.Show(*b.rod, sheet.Millimetre)))
	}
	return s, nil
}

// checkGoodTo refuses a tool that is good to less than nothing, and a speed
// that runs backwards.
func (b *bench) checkGoodTo() error {
	j := b.job
	type good struct {
		key string
		to  units.Length
	}
	list := []good{{"crank.depths_good_to", j.Crank.DepthsGoodTo}, {"crank.rod_good_to", j.Crank.RodGoodTo}}
	if r := j.Rim; r != nil {
		list = append(list, good{"rim.girth_good_to", r.GirthGoodTo}, good{"rim.diameter_good_to", r.DiameterGoodTo}, good{"rim.setting_good_to", r.SettingGoodTo},
			good{"rim.reading_good_to", r.ReadingGoodTo}, good{"rim.paper", r.Paper}, good{"rim.tape", r.Tape}, good{"rim.run_out", r.RunOut})
	}
	if d := j.Dial; d != nil {
		list = append(list, good{"dial.good_to", d.GoodTo}, good{"dial.zero_good_to", d.ZeroGoodTo})
	}
	if p := j.Points; p != nil {
		list = append(list, good{"points.feeler_good_to", p.FeelerGoodTo})
	}
	if p := j.Ports; p != nil {
		list = append(list, good{"ports.depths_good_to", p.DepthsGoodTo}, good{"ports.exhaust_width", p.ExhaustWidth}, good{"ports.transfer_width", p.TransferWidth}, good{"ports.inlet_width", p.InletWidth})
	}
	if o := j.Bore; o != nil {
		list = append(list, good{"bore.good_to", o.GoodTo})
	}
	for _, g := range list {
		if g.to < 0 {
			return b.file.Errorf(g.key, "%v: want 0 mm or more", g.to)
		}
	}
	if n := j.Engine.Speed; n != nil && !(*n > 0) {
		return b.file.Errorf("engine.speed", "%v: want more than 0 rev/min, forward as it runs", *n)
	}
	if d := j.Drive; d != nil && d.SlotTravel != nil && !(*d.SlotTravel > 0) {
		return b.file.Errorf("drive.slot_travel", "%v: want more than 0 mm", *d.SlotTravel)
	}
	return nil
}
