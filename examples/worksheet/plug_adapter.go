package main

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// bodyLimits are the limits of what is turned to go into the hole: of the
// ordinary class where there is one, else the basic sizes.
func bodyLimits(t threads.Thread) threads.Limits {
	for _, class := range [...]string{"6g", "2A", "medium", "normal"} {
		if l, err := t.BoltLimits(class); err == nil {
			return l
		}
	}
	return t.BasicLimits(threads.Bolt)
}

// adapter gives the sizes to turn the body of an adapter to, and how deep to
// cut.
func (p *plugWork) adapter(s *sheet.Section) error {
	lim := bodyLimits(p.thread)
	text := fmt.Sprintf("Body of the adapter for the dial gauge: turn it to between %s and %s (%s and %s) and cut %v on it", mm2(lim.Major.Min), mm2(lim.Major.Max),
		inch3(lim.Major.Min), inch3(lim.Major.Max), p.thread)
	if lim.Class != "" {
		text += ", class " + lim.Class
	}
	s.Figures = append(s.Figures,
		sheet.Of("plug.major", "outside to turn, at most", units.Exact(lim.Major.Max), sheet.Millimetre, sheet.Inch),
		sheet.Of("plug.major_least", "outside to turn, at least", units.Exact(lim.Major.Min), sheet.Millimetre, sheet.Inch),
		sheet.Of("plug.core", "core, at the bottom of its thread", units.Exact(p.thread.BoltRoot()), sheet.Millimetre, sheet.Inch))
	s.Add("Sizes of the body", "limits of "+p.thread.Designation()+" as a bolt", lim.Source, fmt.Sprintf("outside %s to %s, effective %s to %s", mm3(lim.Major.Min), mm3(lim.Major.Max), mm3(lim.Effective.Min), mm3(lim.Effective.Max)))
	if err := p.cut(s, &text); err != nil {
		return err
	}
	s.Answer = append(s.Answer, text+".")
	p.overWires(s, lim)
	p.body(s)
	return nil
}

func mm2(l units.Length) string   { return sheet.Plain(l, sheet.Millimetre, 2) }
func inch3(l units.Length) string { return sheet.Plain(l, sheet.Inch, 3) }

// cut is the depth of cut, straight in and along the slide.
func (p *plugWork) cut(s *sheet.Section, text *string) error {
	tip := threads.ToolTip{Flat: p.TipFlat, Radius: p.TipRadius}
	depth, err := threads.DepthOfCut(p.thread, tip)
	if err != nil {
		return p.bench.file.Errorf("plug_thread.tip_flat", "%v", err)
	}
	over := p.setOver()
	along, err := threads.SlideFeed(depth, over)
	if err != nil {
		return p.bench.file.Errorf("plug_thread", "%v", err)
	}
	s.Figures = append(s.Figures,
		sheet.Of("plug.depth_of_cut", "depth of cut, straight in", units.Exact(depth), sheet.Millimetre, sheet.Thou),
		sheet.Of("plug.along_slide", fmt.Sprintf("the same along the slide, set over %s", sheet.Plain(over, sheet.Degree, 1)), units.Exact(along), sheet.Millimetre, sheet.Thou),
		sheet.Of("plug.helix", "helix angle, to clear the tool", units.Exact(p.thread.HelixAngle()), sheet.Degree))
	s.Add("Depth of cut from where the tool touches, "+tipText(tip), "(D − E)/2 + (p/2 − w)/(2 tan α)  or  (D − E)/2 + p/(4 tan α) − r (1/sin α − 1)",
		fmt.Sprintf("D = %s, E = %s, p = %s, α = %s", mm3(p.thread.Major()), mm3(p.thread.Effective()), sheet.Plain(p.thread.Pitch(), sheet.Millimetre, 4), sheet.Plain(p.thread.Form().Angle()/2, sheet.Degree, 1)), mm3(depth))
	s.Add("Along a slide set over "+sheet.Plain(over, sheet.Degree, 1)+", from square to the lathe axis", "depth / cos φ", fmt.Sprintf("%s / cos %s", mm3(depth), sheet.Plain(over, sheet.Degree, 1)), mm3(along))
	*text += fmt.Sprintf("; the cut is %s (%s) straight in %s, or %s (%s) along the slide set over %s", mm2(depth), sheet.Plain(depth, sheet.Thou, 1), tipText(tip), mm2(along), sheet.Plain(along, sheet.Thou, 1), sheet.Plain(over, sheet.Degree, 1))
	return nil
}

// setOver is half a degree less than the flank angle: common practice, no
// source.
func (p *plugWork) setOver() units.Angle { return p.thread.Form().Angle()/2 - units.Degree/2 }

func tipText(t threads.ToolTip) string {
	switch {
	case t.Radius > 0:
		return "with a point honed to a radius of " + mm2(t.Radius)
	case t.Flat > 0:
		return "with a flat of " + mm2(t.Flat) + " on the point"
	}
	return "with a sharp point"
}

// overWires is what to measure before the last cuts.
func (p *plugWork) overWires(s *sheet.Section, lim threads.Limits) {
	w, err := p.thread.Wires(p.thread.Form().BestWire(p.thread.Pitch()))
	if err != nil {
		return
	}
	most, least := w.Over(lim.Effective.Max), w.Over(lim.Effective.Min)
	s.Figures = append(s.Figures,
		sheet.Of("plug.wire", "best wire to measure it over", units.Exact(w.Wire()), sheet.Millimetre, sheet.Inch),
		sheet.Of("plug.over_wires", "over three such wires, at most", units.Exact(most), sheet.Millimetre, sheet.Inch),
		sheet.Of("plug.over_wires_least", "over three such wires, at least", units.Exact(least), sheet.Millimetre, sheet.Inch))
	s.Add("Over three wires, to know the effective diameter before the last cuts", "M = E − (p/2) cot(α/2) + w (1 + cosec(α/2)) + helix", fmt.Sprintf("E = %s, w = %s", mm3(lim.Effective.Max), mm3(w.Wire())), mm3(most)+" at most")
}

// body says how long the body may be and what it seats on.
func (p *plugWork) body(s *sheet.Section) {
	if p.Depth != nil {
		s.Figures = append(s.Figures, sheet.Of("plug.depth", "thread of the hole, seat to chamber: the body no longer", *p.Depth, sheet.Millimetre, sheet.Inch))
		s.Scribe = append(s.Scribe, fmt.Sprintf("Adapter: screwed part shorter than %s, so that nothing stands into the chamber, where the piston comes; relieve the thread under the shoulder for a pitch and a half, %s, so that it seats.",
			sheet.Show(*p.Depth, sheet.Millimetre), sheet.Plain(1.5*p.thread.Pitch(), sheet.Millimetre, 1)))
	}
	if p.Seat != nil {
		s.Scribe = append(s.Scribe, fmt.Sprintf("Shoulder of adapter or bush: no larger than the seat face, %s across (%s).", sheet.Show(*p.Seat, sheet.Millimetre), sheet.Show(*p.Seat, sheet.Inch)))
	}
	s.Scribe = append(s.Scribe, "Bore the adapter for the stem of the gauge as it measures (8 mm or 3/8 in, from memory), thread and bore in one setting so that they run true; one nick along the thread lets the air out.")
}

// wheels gives the change wheels, where the lathe is known.
func (p *plugWork) wheels(s *sheet.Section) error {
	if p.Leadscrew == nil && len(p.Wheels) == 0 {
		return p.anyWheels(s)
	}
	if p.Leadscrew == nil || len(p.Wheels) == 0 {
		return p.bench.file.Errorf("plug_thread", "change wheels need both: leadscrew, as \"8 tpi\" or \"3 mm\", and wheels, the teeth of each wheel there is")
	}
	lathe, err := threads.NewLathe(p.Leadscrew.Length, p.Wheels...)
	if err != nil {
		return p.bench.file.Errorf("plug_thread.wheels", "%v", err)
	}
	trains, err := lathe.Trains(p.thread.Pitch(), 0.002)
	if err != nil {
		return p.bench.file.Errorf("plug_thread.wheels", "%v", err)
	}
	if len(trains) == 0 {
		s.Answer = append(s.Answer, fmt.Sprintf("With a leadscrew of %v none of these wheels come within 2 parts in a thousand of %v.", p.Leadscrew, p.thread))
		return nil
	}
	p.trains(s, trains)
	return nil
}

// anyWheels says how the wheels go for a lathe that was not described.
func (p *plugWork) anyWheels(s *sheet.Section) error {
	text := fmt.Sprintf("Change wheels, driver to driven, go as the pitch, %s, to that of the leadscrew, or as the leadscrew's threads per inch to %.4g", sheet.Plain(p.thread.Pitch(), sheet.Millimetre, 4), p.thread.TPI())
	usual := []int{127}
	for teeth := 20; teeth <= 100; teeth += 5 {
		usual = append(usual, teeth)
	}
	lathe, err := threads.NewLathe(threads.TPI(8), usual...)
	if err != nil {
		return err
	}
	if trains, err := lathe.Trains(p.thread.Pitch(), 0); err == nil && len(trains) > 0 {
		text += fmt.Sprintf("; for instance %v on a leadscrew of 8 to the inch", trains[0])
	}
	s.Answer = append(s.Answer, text+". With leadscrew and wheels in the file the trains of your own lathe stand here.")
	return nil
}

// trains lists the nearest trains.
func (p *plugWork) trains(s *sheet.Section, trains []threads.Train) {
	over := p.thread.Major()
	if p.Depth != nil {
		over = p.Depth.Value
	}
	t := sheet.Table{Title: fmt.Sprintf("Change wheels on a leadscrew of %v, driver/driven from the spindle on", p.Leadscrew), Rows: [][]string{{"train", "pitch it cuts", "out over " + sheet.Plain(over, sheet.Millimetre, 1)}}}
	for _, tr := range trains[:min(len(trains), 4)] {
		out := "exact"
		if !tr.Exact() {
			out = fmt.Sprintf("%+.1f\u00a0µm", tr.ErrorOver(over).Micrometres())
		}
		t.Rows = append(t.Rows, []string{tr.String(), sheet.Plain(tr.Lead(), sheet.Millimetre, 4), out})
	}
	s.Tables = append(s.Tables, t)
	s.Answer = append(s.Answer, fmt.Sprintf("Change wheels: %s (%s).", trains[0], strings.Replace(t.Rows[1][2], "exact", "cuts it exactly", 1)))
	s.Figures = append(s.Figures, sheet.Of("plug.wheels_pitch", "pitch that the wheels cut", units.Exact(trains[0].Lead()), sheet.Millimetre, sheet.Inch))
}
