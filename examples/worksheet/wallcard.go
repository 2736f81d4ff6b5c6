package main

import "example.com/benchsums/examples/internal/sheet"

// cardLines are what the sheet for the wall shows of the figures, in groups.
// Lines without a figure are left out, and groups without a line.
var cardLines = []struct {
	title string
	lines []struct{ key, name string }
}{
	{"Spark", []struct{ key, name string }{
		{"card.advance", "before top dead centre"}, {"card.drop", "piston from the top"}, {"card.dial", "gauge in the plug hole"},
		{"card.arc", "along the rim, + ahead of TDC mark"}, {"card.rim", "rim figure"}, {"lever.range", "range of the lever"},
	}},
	{"Rim", []struct{ key, name string }{
		{"tdc.position", "top dead centre, rim figure"}, {"rim.per_degree", "rim to one degree"}, {"rim.girth", "girth"},
	}},
	{"Points", []struct{ key, name string }{
		{"points.per_hundredth_mm", "0.01 mm of gap is worth"}, {"points.per_thou", "one thou of gap is worth"},
	}},
	{"Ports, from top dead centre", []struct{ key, name string }{
		{"ports.exhaust_opens", "exhaust opens"}, {"ports.exhaust_shuts", "exhaust shuts"}, {"ports.transfer_opens", "transfer opens"},
		{"ports.transfer_shuts", "transfer shuts"}, {"ports.inlet_opens", "inlet opens"}, {"ports.inlet_shuts", "inlet shuts"},
	}},
	{"Engine", []struct{ key, name string }{
		{"compression.bore", "bore"}, {"compression.swept", "swept volume"}, {"compression.clearance", "clearance volume"},
		{"compression.geometric", "ratio from the bottom"}, {"compression.trapped", "ratio from exhaust closing"},
	}},
	{"Bushes and bore", []struct{ key, name string }{
		{"bushes.small_end_ream_least", "small end, ream to, at least"}, {"bushes.main_ream_least", "main bush, ream to, at least"},
		{"bore.new_gap", "new ring, end gap, at least"},
	}},
	{"Springs", []struct{ key, name string }{
		{"springs.drum_wind", "rope drum, wind on with the rope home"}, {"springs.drum_stored", "and it holds, rope right out"},
	}},
	{"Fuel and oil", []struct{ key, name string }{
		{"oil.petrol_to_oil", "petrol to one part of oil"}, {"oil.for_can", "oil for the can"}, {"oil.tank", "tank to the brim"}, {"oil.for_tank", "oil in a full tank"},
	}},
}

// wallCard is the page to hang on the wall.
func (b *bench) wallCard(s *sheet.Sheet) *sheet.Card {
	figures := map[string]sheet.Figure{}
	for _, sec := range s.Sections {
		for _, f := range sec.Figures {
			figures[f.Key] = f
		}
	}
	card := &sheet.Card{Number: 16, Title: "To hang on the wall: " + b.title(),
		Foot: "Gap first, then timing. Plug out, fuel off and magneto earthed before turning the engine. Never a hand wound in the rope."}
	if b.starting != "" {
		card.Foot += " " + b.starting
	}
	for _, g := range cardLines {
		group := sheet.Group{Title: g.title}
		for _, l := range g.lines {
			if f, ok := figures[l.key]; ok {
				group.Lines = append(group.Lines, sheet.Line{Name: l.name, Metric: f.Text, Inch: f.Also})
			}
		}
		if len(group.Lines) > 0 {
			card.Groups = append(card.Groups, group)
		}
	}
	if lines := b.threadLines(); len(lines) > 0 {
		card.Groups = append(card.Groups, sheet.Group{Title: "Threads", Lines: lines})
	}
	if len(card.Groups) < 2 {
		return nil // a sheet that small is its own card
	}
	return card
}
