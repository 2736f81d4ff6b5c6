package main

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// compressionSection answers what the engine sweeps and how far it compresses,
// counted both ways.
func (b *bench) compressionSection() (*sheet.Section, error) {
	if b.job.Bore == nil || b.stroke == nil {
		return nil, nil
	}
	s := &sheet.Section{Number: 8, Key: "compression", Title: "Swept volume and compression"}
	bore, err := b.boreOf(s)
	if err != nil {
		return nil, err
	}
	swept, err := b.swept(s, bore)
	if err != nil {
		return nil, err
	}
	s.Answer = append(s.Answer, fmt.Sprintf("The piston sweeps %s.", sheet.Show(swept.Reading(), sheet.CC)))
	s.Improve = largest(swept)
	if b.job.Burette == nil {
		return s, nil
	}
	clearance, err := b.clearance(s)
	if err != nil {
		return nil, err
	}
	return s, b.ratios(s, bore, swept, clearance)
}

// boreOf takes the bore as given, or the mean of all readings with their
// spread: a worn bore has no one diameter, and its volume goes by the mean.
func (b *bench) boreOf(s *sheet.Section) (length, error) {
	o := b.job.Bore
	if o.Diameter != nil {
		return *o.Diameter, nil
	}
	all := slices.Concat(o.TopFrontBack, o.TopSideSide, o.MiddleFrontBack, o.MiddleSideSide, o.BelowFrontBack, o.BelowSideSide)
	if len(all) == 0 {
		return length{}, b.file.Errorf("bore", "no readings: give diameter, or readings such as middle_front_back")
	}
	bore := mean(all, o.GoodTo)
	if len(all) > 2 {
		bore = units.WithStd(bore.Value, max(bore.Std, (slices.Max(all)-slices.Min(all))/6))
	}
	s.Figures = append(s.Figures, sheet.Of("compression.bore", "bore, mean of all readings", bore, sheet.Millimetre, sheet.Inch))
	return bore, nil
}

func (b *bench) swept(s *sheet.Section, bore length) (units.Result[units.Volume], error) {
	d, stroke := bore.Value, b.stroke.Value
	res, err := units.Propagate(func() units.Volume {
		return geometry.Circle(d).Times(stroke)
	}, units.VaryReading("bore", &d, bore), units.VaryReading("stroke", &stroke, *b.stroke))
	if err != nil {
		return res, b.file.Errorf("bore", "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Of("compression.swept", "swept volume", res.Reading(), sheet.CC, sheet.CubicInch))
	s.Add("Swept volume", "V = π B² S / 4", fmt.Sprintf("π × (%s)² × %s / 4", sheet.Value(bore, sheet.Millimetre), sheet.Value(*b.stroke, sheet.Millimetre)), sheet.Show(res.Reading(), sheet.CC))
	return res, nil
}

// clearance is the space left at the top, from the burette.
func (b *bench) clearance(s *sheet.Section) (units.Reading[units.Volume], error) {
	fills, err := b.fills()
	if err != nil {
		return volume{}, err
	}
	std := b.job.Burette.GoodTo
	brim := units.WithStd(fills[0].Run, std)
	if len(fills) > 1 {
		leak, err := geometry.FitLeak(fills, std)
		if err != nil {
			return volume{}, b.file.Errorf("burette.fills", "%v", err)
		}
		brim = leak.AtStart
		perMinute := sheet.Unit[units.Flow]{Name: "cc/min", One: units.CubicCentimetrePerMinute}
		s.Figures = append(s.Figures,
			sheet.Of("compression.to_brim", "oil to the brim, carried back to no time", brim, sheet.CC, sheet.CubicInch),
			sheet.Of("compression.leak", "oil creeping past the rings", leak.Rate, perMinute))
		s.Add("Oil creeps away while it is run in: a straight line through the fills, carried back to no time at all",
			"V = V₀ + q t, least squares", fmt.Sprintf("n = %d fills", len(fills)), fmt.Sprintf("V₀ %s, q %s", sheet.Show(brim, sheet.CC), sheet.Show(leak.Rate, perMinute)))
		if leak.Odd != nil {
			s.Questions = append(s.Questions, sentenceOf(leak.Odd.String())+" Was there a bubble, or a time written down wrong?")
		}
	}
	m := geometry.BuretteClearance{ToBrim: brim}
	if h := b.job.PlugHole; h != nil {
		if h.Volume != nil {
			m.PlugHole = *h.Volume
		}
		if h.Cavity != nil {
			m.PlugCavity = *h.Cavity
		}
	}
	clearance, err := m.Volume()
	if err != nil {
		return clearance, b.file.Errorf("burette.fills", "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Of("compression.clearance", "clearance volume, plug in place", clearance, sheet.CC, sheet.CubicInch))
	s.Add("Less the plug hole, which the plug fills, and with the hollow inside the plug", "Vc = V₀ − hole + hollow",
		fmt.Sprintf("%s − %s + %s", sheet.Value(brim, sheet.CC), sheet.Value(m.PlugHole, sheet.CC), sheet.Value(m.PlugCavity, sheet.CC)), sheet.Show(clearance, sheet.CC))
	return clearance, nil
}

// fills reads the table of the burette.
func (b *bench) fills() ([]geometry.Fill, error) {
	var times []time.Duration
	var runs []units.Volume
	after := jobfile.Column{Name: "after", Parse: func(cell string) error {
		d, err := time.ParseDuration(strings.ReplaceAll(cell, " ", ""))
		if err != nil {
			return fmt.Errorf("%q: want a time such as 62 s", cell)
		}
		times = append(times, d)
		return nil
	}}
	if _, err := b.file.Columns("burette.fills", b.job.Burette.Fills, after, jobfile.Quantities("oil", &runs)); err != nil {
		return nil, err
	}
	fills := make([]geometry.Fill, len(runs))
	for i := range runs {
		fills[i] = geometry.Fill{After: times[i], Run: runs[i]}
	}
	return fills, nil
}

// ratios adds the compression ratio counted from the bottom and from where the
// cylinder is shut.
func (b *bench) ratios(s *sheet.Section, bore length, swept units.Result[units.Volume], clearance volume) error {
	ratio := func(drop length, name, key, title string) (units.Result[units.Ratio], error) {
		d, x, vc := bore.Value, drop.Value, clearance.Value
		f := func() units.Ratio { return units.Ratio((geometry.Circle(d).Times(x) + vc) / vc) }
		inputs := []units.Input{units.VaryReading("bore", &d, bore), units.VaryReading(name, &x, drop), units.VaryReading("clearance volume", &vc, clearance)}
		res, err := units.Propagate(f, inputs...)
		sampleLater(b, key, title, sheet.Unit[units.Ratio]{Name: "", One: 1}, res.Reading(), f, inputs)
		return res, err
	}
	one := sheet.Unit[units.Ratio]{Name: "", One: 1}
	geometric, err := ratio(*b.stroke, "stroke", "geometric", "the geometric ratio")
	if err != nil {
		return b.file.Errorf("bore", "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Of("compression.geometric", "ratio, geometric (from the bottom)", geometric.Reading(), one))
	s.Add("Geometric ratio, from the bottom of the stroke", "(V + Vc) / Vc", ratioNumbers(swept.Value, clearance.Value), sheet.Show(geometric.Reading(), one))
	text := fmt.Sprintf("The ratio is %s counted from the bottom of the stroke (geometric)", sheet.Show(geometric.Reading(), one))
	s.Improve = largest(geometric)
	drawBudget(s, "the geometric ratio", geometric)
	if p := b.job.Ports; p != nil && len(p.ExhaustTop) > 0 && len(b.job.Crank.CrownTop) > 0 {
		closing := difference(mean(p.ExhaustTop, p.DepthsGoodTo), mean(b.job.Crank.CrownTop, b.job.Crank.DepthsGoodTo))
		trapped, err := ratio(closing, "drop at exhaust closing", "trapped", "the trapped ratio")
		if err != nil {
			return b.file.Errorf("ports.exhaust_top", "%v", err)
		}
		s.Figures = append(s.Figures, sheet.Of("compression.trapped", "ratio, trapped (from exhaust closing)", trapped.Reading(), one))
		s.Add("Trapped ratio, from where the exhaust port shuts", "(π B² x / 4 + Vc) / Vc,  x = drop at exhaust closing",
			"x = "+sheet.Value(closing, sheet.Millimetre), sheet.Show(trapped.Reading(), one))
		text += fmt.Sprintf(", and %s from exhaust closing (trapped). Ask which one is meant before comparing with a printed figure", sheet.Show(trapped.Reading(), one))
	}
	if !strings.Contains(text, "trapped") {
		text += "; the trapped ratio, from exhaust closing, is not known, because the depth of the exhaust port's top edge was not given"
	}
	s.Answer = append(s.Answer, text+".")
	return nil
}

func ratioNumbers(swept, clearance units.Volume) string {
	return fmt.Sprintf("(%s + %s) / %s", sheet.Plain(swept, sheet.CC, 1), sheet.Plain(clearance, sheet.CC, 1), sheet.Plain(clearance, sheet.CC, 1))
}
