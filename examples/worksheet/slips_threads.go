package main

import (
	"math"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// threadSlips are those of threads: counting them, and which of their
// diameters a sum wants.
func (b *bench) threadSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	if p := b.plug; p != nil && strings.HasPrefix(f.Key, "plug.") {
		switch f.Key {
		case "plug.pitch", "plug.tpi":
			return pitchSlips(f, p.Pitches)
		case "plug.engagement":
			return engagementSlips(f.Value, p.thread, p.bore.Value)
		case "plug.bush_wall", "plug.bush_area", "plug.bush_torque":
			return p.bushSlips(f)
		}
		return p.bodySlips(f, figures)
	}
	for _, c := range b.threads {
		if key, ok := strings.CutPrefix(f.Key, "threads."+c.Slug()+"_"); ok {
			return namelessSlips(f, key, c)
		}
	}
	return nil
}

// namelessSlips are those of a thread that had no name.
func namelessSlips(f sheet.Figure, key string, c *threadsheet.Checked) []slip {
	if key == "pitch" {
		return pitchSlips(f, c.Pitches)
	}
	t, ok := c.Best()
	if !ok {
		return nil
	}
	switch key {
	case "engagement", "with_stud":
		return engagementSlips(f.Value, t, c.Readings.Crest.Value)
	case "by_rule":
		return []slip{{"the sixteenth of an inch left out", f.Value - (units.Inch / 16).Millimetres(), "the rule for light alloy adds a sixteenth of an inch"}}
	case "edge_stepped", "edge_insert", "edge_bush":
		return edgeSlips(f.Value, c, t)
	}
	return nil
}

// pitchSlips are those of a length over so many pitches.
func pitchSlips(f sheet.Figure, pitches int) []slip {
	const per = 25.4
	v, n := f.Value, float64(pitches)
	const why = "between nine crests there are eight pitches"
	if f.Key == "plug.tpi" {
		out := []slip{{"the pitch for threads per inch", per / v, "threads per inch are 25.4 mm over the pitch"},
			{"an inch taken as 25 mm", v * 25 / per, "an inch is 25.4 mm"}}
		if pitches > 1 {
			out = append(out, slip{"crests counted in place of pitches", v * (n + 1) / n, why}, slip{"one pitch too few counted", v * (n - 1) / n, why})
		}
		return out
	}
	out := []slip{{"threads per inch for the pitch", per / v, "the pitch is 25.4 mm over the threads per inch"}}
	if pitches > 1 {
		out = append(out, slip{"crests counted in place of pitches", v * n / (n + 1), why}, slip{"one pitch too few counted", v * n / (n - 1), why})
	}
	return out
}

// engagementSlips are those of the thread left in a hole; v is a percentage.
func engagementSlips(v float64, t threads.Thread, bore units.Length) []slip {
	out := []slip{
		{"the depth of one side for that of both", 2 * v, "two sides of the bore have lost thread, so both depths go under the line"},
		{"the nominal bore for the one measured", 100, "the sum is of the hole as it is"},
	}
	for _, full := range [...]threads.FullThread{threads.BoltThread, threads.AmericanThread} {
		if e, err := t.Engagement(bore, full); err == nil {
			out = append(out, slip{"another depth of thread for the basic one", 100 * e, "this percentage is of the overlap of bolt and nut by the basic profile; charts take others"})
		}
	}
	return out
}

// edgeSlips are those of the metal left to an edge, v in mm.
func edgeSlips(v float64, c *threadsheet.Checked, t threads.Thread) []slip {
	metal, bore := c.ToEdge.Value.Millimetres(), c.Readings.Crest.Value.Millimetres()
	major := bore + 2*(metal-v)
	return []slip{
		{"the whole difference of the diameters taken off", metal - (major - bore), "a larger hole takes half of its growth from each side"},
		{"the metal counted from the middle of the hole", metal - major/2, "it was measured from the wall of the bore"},
		{"the nominal bore for the one measured", metal - (major-t.Minor().Millimetres())/2, "the hole has grown, and the metal was measured from where its wall is now"},
		{"the core of the new thread for its outside", v + (major-bore)/2 - (t.Minor().Millimetres()-bore)/2, "the tap cuts to the outside of the thread, not to the tapping drill"},
	}
}

// bodySlips are those of what is turned to go into the plug hole.
func (p *plugWork) bodySlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	t, v := p.thread, f.Value
	major, effective, core := t.Major().Millimetres(), t.Effective().Millimetres(), t.BoltRoot().Millimetres()
	switch f.Key {
	case "plug.major":
		return []slip{
			{"the nominal size for the turned one", major, "a bolt is turned below its nominal size, or it will not enter"},
			{"the effective diameter for the outside", effective, "the effective diameter lies half-way down the flanks"},
			{"the core for the outside", core, "the core is the bottom of the thread"},
		}
	case "plug.core":
		return []slip{
			{"the depth of thread taken off once", (major + core) / 2, "the thread is cut on both sides: twice its depth comes off the diameter"},
			{"the minor diameter of the hole for the core of the body", t.Minor().Millimetres(), "a bolt is cut deeper than the crests of its nut"},
		}
	case "plug.depth_of_cut":
		return []slip{
			{"the depth on the diameter for the depth of cut", 2 * v, "the tool goes in by half of what the diameter loses"},
			{"the form's own depth with a sharp point", (major - core) / 2, "a sharp point has to go deeper before the flanks are right"},
			{"the depth along the slide", figures["plug.along_slide"].Value, "this one is straight in"},
		}
	case "plug.along_slide":
		depth, over := figures["plug.depth_of_cut"].Value, float64(p.setOver())
		return []slip{
			{"multiplying by the cosine", depth * math.Cos(over), "the way along the slant is longer than straight in"},
			{"the slide's angle counted from the lathe axis", depth / math.Sin(over), "the angle is from square to the axis"},
			{"the slant not allowed for", depth, "the way along the slide is longer than straight in"},
		}
	case "plug.helix":
		p := t.Pitch().Millimetres()
		return []slip{
			{"π left out", math.Atan(p/effective) * 180 / math.Pi, "one turn goes once round the thread, π times its diameter"},
			{"the angle from the axis", 90 - v, "the helix angle is from the square to the axis"},
		}
	case "plug.over_wires", "plug.over_wires_least":
		return p.wireSlips(f, figures)
	}
	return nil
}

// wireSlips are those of a measurement over wires.
func (p *plugWork) wireSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	w, pitch := figures["plug.wire"].Value, p.thread.Pitch().Millimetres()
	half := float64(p.thread.Form().Angle()) / 2
	over := func(half float64) float64 { return -pitch/2/math.Tan(half) + w*(1+1/math.Sin(half)) }
	out := []slip{{"the wires not allowed for", f.Value - over(half), "the micrometer goes over the wires, not over the flanks"}}
	for _, other := range [...]float64{55, 60} {
		if rad := other * math.Pi / 360; math.Abs(rad-half) > 1e-6 {
			out = append(out, slip{"the wire sum of another angle", f.Value - over(half) + over(rad), "the factors of the sum go with the angle of the thread"})
		}
	}
	return out
}

// bushSlips are those of a bush.
func (p *plugWork) bushSlips(f sheet.Figure) []slip {
	outer, inner := p.thread, *p.BushFor
	wall := func(a, b units.Length) float64 { return (a - b).Millimetres() / 2 }
	switch f.Key {
	case "plug.bush_area":
		return piSlips(f.Value, 1)
	case "plug.bush_torque":
		return []slip{{"the radius for the diameter", f.Value / 2, "K goes with the whole diameter"}}
	}
	return []slip{
		{"both walls for one", 2 * f.Value, "the difference of the diameters is that of two walls"},
		{"the outside for the core of the outer thread", wall(outer.Major(), inner.Major()), "the wall is thinnest under the bottom of the outer thread"},
		{"the effective diameter for the core of the outer thread", wall(outer.Effective(), inner.Major()), "the wall is thinnest under the bottom of the outer thread"},
		{"the minor diameter of the hole for the core of the bush", wall(outer.Minor(), inner.Major()), "the thread of a bush is cut deeper than the crests of the hole"},
		{"the tapping drill for the outside of the inner thread", wall(outer.BoltRoot(), inner.Minor()), "the tap cuts into the wall, to the outside of its thread"},
	}
}
