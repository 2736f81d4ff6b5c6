package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A valvesJob is a four-stroke's valve events as rim figures, turned forward.
type valvesJob struct {
	Lift          units.Length  `toml:"lift"` // of the valve at the events; 0 at the first touch
	InletOpens    *units.Length `toml:"inlet_opens"`
	InletCloses   *units.Length `toml:"inlet_closes"`
	ExhaustOpens  *units.Length `toml:"exhaust_opens"`
	ExhaustCloses *units.Length `toml:"exhaust_closes"`
	GoodTo        units.Length  `toml:"good_to"`
	Clearance     *volume       `toml:"clearance_volume"`
}

// valvesSection answers when the valves of a four-stroke open and shut.
func (b *bench) valvesSection() (*sheet.Section, error) {
	v := b.job.Valves
	if v == nil {
		return nil, nil
	}
	if b.round == nil || b.tdc == nil {
		return nil, b.file.Errorf("valves", "rim figures of valves need the rim and top dead centre on it: give a [stop], a [dial] or rim.tdc_mark")
	}
	if v.InletOpens == nil || v.InletCloses == nil || v.ExhaustOpens == nil || v.ExhaustCloses == nil {
		return nil, b.file.Errorf("valves", "want all four: inlet_opens, inlet_closes, exhaust_opens, exhaust_closes")
	}
	sc, err := b.rimScale()
	if err != nil {
		return nil, b.file.Errorf("rim", "%v", err)
	}
	t, err := sc.ValveTiming(ignition.ValveMarks{Lift: v.Lift, InletOpens: *v.InletOpens, InletCloses: *v.InletCloses, ExhaustOpens: *v.ExhaustOpens, ExhaustCloses: *v.ExhaustCloses})
	if err != nil {
		return nil, b.file.Errorf("valves", "%v", err)
	}
	s := &sheet.Section{Key: "valves", Title: "When the valves open and shut"}
	one := b.round.AngleOfArc(v.GoodTo)
	both := units.Angle(1.4142135623730951) * one
	add := func(key, name string, a, std units.Angle) {
		s.Figures = append(s.Figures, sheet.Of("valves."+key, name, units.WithStd(a, std), sheet.Degree))
	}
	add("inlet_opens", "inlet opens, before top dead centre", t.InletOpens, one)
	add("inlet_shuts", "inlet shuts, after bottom dead centre", t.InletCloses, one)
	add("exhaust_opens", "exhaust opens, before bottom dead centre", t.ExhaustOpens, one)
	add("exhaust_shuts", "exhaust shuts, after top dead centre", t.ExhaustCloses, one)
	add("inlet_open_for", "inlet open for", t.InletDuration(), both)
	add("exhaust_open_for", "exhaust open for", t.ExhaustDuration(), both)
	add("overlap", "overlap, both open", t.Overlap(), both)
	s.Answer = append(s.Answer, fmt.Sprintf("At %s of lift the inlet opens %s before the top and shuts %s after the bottom; the exhaust opens %s before the bottom and shuts %s after the top. Compare timings only at one and the same lift.",
		sheet.Plain(v.Lift, sheet.Millimetre, 2), sheet.Plain(t.InletOpens, sheet.Degree, 0), sheet.Plain(t.InletCloses, sheet.Degree, 0), sheet.Plain(t.ExhaustOpens, sheet.Degree, 0), sheet.Plain(t.ExhaustCloses, sheet.Degree, 0)))
	s.Add("Open for: half a turn and what lies outside it on both sides", "inlet = before top + 180° + after bottom",
		fmt.Sprintf("%s + 180° + %s", sheet.Plain(t.InletOpens, sheet.Degree, 1), sheet.Plain(t.InletCloses, sheet.Degree, 1)), sheet.Plain(t.InletDuration(), sheet.Degree, 1))
	s.Improve = "the place where each valve reaches the lift, by a dial on its spring cap, turned forward"
	s.Cautions = append(s.Cautions, "Turned back, a camshaft lags by the slack of its drive, which counts double at the crank: always come to an event turning forward.")
	return s, b.valveRatio(s, t)
}

// valveRatio adds the ratio from inlet closing, where bore and clearance are
// known.
func (b *bench) valveRatio(s *sheet.Section, t ignition.ValveTiming) error {
	v := b.job.Valves
	if v.Clearance == nil || b.job.Bore == nil || b.crank == nil {
		return nil
	}
	bore, err := b.boreOf(&sheet.Section{})
	if err != nil {
		return err
	}
	cylinder, err := geometry.NewCylinder(bore.Value, *b.crank)
	if err != nil {
		return b.file.Errorf("bore", "%v", err)
	}
	c, err := t.Compression(cylinder, v.Clearance.Value)
	if err != nil {
		return b.file.Errorf("valves.clearance_volume", "%v", err)
	}
	rel := units.Ratio(v.Clearance.Std / v.Clearance.Value)
	one := sheet.Unit[units.Ratio]{Name: "", One: 1}
	s.Figures = append(s.Figures,
		sheet.Of("valves.ratio_geometric", "ratio, geometric (from the bottom)", units.WithStd(c.Geometric, (c.Geometric-1)*rel), one),
		sheet.Of("valves.ratio_from_inlet", "ratio from inlet closing", units.WithStd(c.Trapped, (c.Trapped-1)*rel), one))
	return nil
}
