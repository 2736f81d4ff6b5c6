package main

import (
	"math"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// nominal is the round inch size that a measured one is nearest to, in
// millimetres: the size someone takes who does not measure.
func nominal(l units.Length, denominator float64) float64 {
	return math.Round(l.Inches()*denominator) / denominator * 25.4
}

// adapterSlips are those of the spigot, its collar and the flange.
func (b *bench) adapterSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	a := b.job.Adapter
	if a == nil || !strings.HasPrefix(f.Key, "adapter.") {
		return nil
	}
	v := func(key string) float64 { return figures["adapter."+key].Value }
	switch f.Key {
	case "adapter.spigot_least", "adapter.spigot_most":
		collar := figures["adapter.collar"].Value
		return []slip{
			{"the mean bore of the collar for the spigot", collar, "without clearance it does not go on"},
			{"the nominal size for the measured one", f.Value - collar + nominal(units.Length(collar)*units.Millimetre, 16), "an old part is at no nominal size: work from what it measures"},
			{"the clearance taken off on each side", f.Value - (collar - f.Value), "a clearance is on the diameter, both sides together"},
		}
	case "adapter.slot_closes":
		return append(piSlips(f.Value, 1),
			slip{"π forgotten: the clearance for what the slot closes", f.Value / math.Pi, "the slot closes by the difference of the girths, π times the clearance"},
			slip{"twice the clearance for what the slot closes", 2 * f.Value / math.Pi, "the slot closes by π times the clearance"})
	case "adapter.reach":
		return append(piSlips(f.Value, -1),
			slip{"π forgotten: the slot for the clearance it takes up", f.Value * math.Pi, "a slot takes up its width over π of clearance"},
			slip{"half the slot for the clearance it takes up", f.Value * math.Pi / 2, "a slot takes up its width over π of clearance"})
	case "adapter.stud_centres":
		d := a.StudDiameter.Value.Millimetres()
		return []slip{
			{"the outside of the studs for their centres", f.Value + d, "from the outside of both studs a whole diameter is to be taken off, half for each"},
			{"half a stud taken off the outside", f.Value + d/2, "from the outside of both studs a whole diameter is to be taken off, half for each"},
			{"the inside of the studs for their centres", f.Value - d, "to the inside of both studs a whole diameter is to be added, half for each"},
		}
	case "adapter.taper":
		tan := math.Tan(f.Value * math.Pi / 180)
		return []slip{
			{"the whole angle of the cone for the top slide's", 2 * f.Value, "the top slide is set over half the angle of the cone"},
			{"the difference of the diameters not halved", math.Atan(2*tan) * 180 / math.Pi, "the tool moves out by half the difference of the diameters"},
		}
	case "adapter.edge":
		return []slip{{"the centres taken to the edge of the holes", f.Value + v("stud_hole")/2, "half a hole lies outside the centres"}}
	case "adapter.clearance_least", "adapter.clearance_most":
		return []slip{{"the play to one side for the whole clearance", f.Value / 2, "clearance is on the diameter, both sides together"}}
	}
	return nil
}

// bushSlips are those of bushes.
func (b *bench) bushSlips(f sheet.Figure, _ map[string]sheet.Figure) []slip {
	for _, u := range b.bushes {
		what, ok := strings.CutPrefix(f.Key, u.key+"_")
		if ok {
			return u.slips(what, f.Value)
		}
	}
	return nil
}

// slips are those of one figure of a bush, in millimetres.
func (u *bush) slips(what string, v float64) []slip {
	const oneSide = "clearance and interference are on the diameter, both sides together"
	journal, hole, over := u.Journal.Value.Millimetres(), u.hole.Value.Millimetres(), (u.out.Value - u.hole.Value).Millimetres()
	switch what {
	case "clearance", "clearance_best":
		return []slip{
			{"the play to one side for the whole clearance", v / 2, oneSide},
			{"the nominal size of the journal for the measured one", v + journal - nominal(u.Journal.Value, 16), "a journal wears: work from what it measures"},
		}
	case "outside":
		return []slip{
			{"the interference left off", hole, "a bush of the size of its hole falls out of it"},
			{"the interference added on each side", v + over, oneSide},
			{"half the interference", v - over/2, oneSide},
			{"the interference taken off instead of added", hole - over, "a bush is larger than its hole"},
			{"the nominal size of the hole for the measured one", v - hole + nominal(u.hole.Value, 16), "a hole that has been used is at no nominal size: work from what it measures"},
		}
	case "closes":
		return []slip{
			{"all of the interference", over, "housing and bush share it: the bore closes in by a part of it"},
			{"half of the interference", over / 2, "how they share it goes by their walls and moduli"},
		}
	case "ream_least", "ream_most":
		c := v - journal
		return []slip{
			{"the clearance added on each side", v + c, oneSide},
			{"half the clearance", v - c/2, oneSide},
			{"the journal's own size", journal, "with no clearance there is no room for oil"},
			{"the nominal size of the journal for the measured one", v - journal + nominal(u.Journal.Value, 16), "a journal wears: work from what it measures"},
			{"what the bush closes in by added again", v + u.shuts.Value.Millimetres(), "reamed when it is home, the bush has closed in already"},
		}
	case "bored":
		return []slip{{"what the bush closes in by taken off twice", v - u.shuts.Value.Millimetres(), "what it closes in by comes on top of what is left for the reamer"}}
	case "leaks":
		return []slip{
			{"the ratio of the clearances without the cube", math.Cbrt(v), "what gets past goes by the cube of the clearance"},
			{"the square for the cube", math.Pow(v, 2./3), "what gets past goes by the cube of the clearance"},
		}
	case "interference_warm":
		return []slip{{"the interference cold", over, "housing and bush grow by different amounts"}, {"the change with heat taken the wrong way", 2*over - v, "the part with the larger coefficient grows more"}}
	}
	return nil
}

// boreSlips are those of bore, piston and rings.
func (b *bench) boreSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	w := b.worn
	if w == nil || !strings.HasPrefix(f.Key, "bore.") {
		return nil
	}
	const oneSide = "wear and clearance are on the diameter, both sides together"
	v := f.Value
	switch f.Key {
	case "bore.wear":
		return []slip{
			{"the wear of one side", v / 2, oneSide},
			{"wear counted from a nominal bore", w.most.Millimetres() - nominal(w.unworn.Value, 8), "count from where nothing has rubbed: no bore was made to a round size for sure"},
			{"the difference of the means for the worst place", figures["bore.taper"].Value, "wear is at the worst place, taper the difference of the means"},
		}
	case "bore.wider_by_gap":
		return append(piSlips(v, -1),
			slip{"π forgotten: the difference of the gaps for that of the diameters", v * math.Pi, "the gap opens by π times the difference of the diameters"},
			slip{"divided by 2π", v / 2, "that is the difference of the radii"})
	case "bore.new_gap_at_top":
		wider := (w.top.Value - w.unworn.Value).Millimetres()
		return []slip{
			{"π forgotten: the gap opened by the difference of the diameters", figures["bore.new_gap"].Value + wider, "the gap opens by π times the difference of the diameters"},
			{"only what the gap opens by", v - figures["bore.new_gap"].Value, "the gap it was filed to comes on top"},
		}
	case "bore.top_by_ring":
		gaps := math.Pi * figures["bore.wider_by_gap"].Value
		return []slip{{"π forgotten: the bore larger by the difference of the gaps", w.unworn.Value.Millimetres() + gaps, "the gap opens by π times the difference of the diameters"}}
	case "bore.skirt_clearance_least", "bore.skirt_clearance_most", "bore.land_clearance":
		return []slip{{"the clearance of one side", v / 2, oneSide}}
	case "bore.cleans_up_most":
		wear := figures["bore.wear"].Value
		return []slip{{"the wear counted once", v - wear, "if all of it is on one side, a bore on the old axis must go out by as much on the other"}}
	case "bore.gap_hot":
		if p := b.job.Piston; p != nil && p.GapBelow != nil {
			cold := p.GapBelow.Value.Millimetres()
			return []slip{{"π forgotten: the gap closed by what the diameter grows", cold - (cold-v)/math.Pi, "the gap closes by π times the difference of the diameters"}}
		}
	}
	return nil
}
