package main

import (
	"math"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// timingSlips are those of the card's timing and of top dead centre.
func (b *bench) timingSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	switch f.Key {
	case "card.advance":
		return b.advanceSlips()
	case "card.drop":
		return b.dropSlips()
	case "card.percent":
		return []slip{{"the share of the throw for that of the stroke", 2 * f.Value, "the throw is half the stroke, and percentages are of the stroke"}}
	case "card.dial":
		x := figures["card.drop"].Value
		return []slip{
			{"the lean of the gauge ignored", x, "in a leaning hole the gauge moves further than the piston"},
			{"multiplying by the cosine of the lean instead of dividing", x * math.Cos(float64(b.lean.Value)), "the gauge moves further than the piston, not less far"},
		}
	case "card.time":
		return []slip{
			{"the speed of a half-speed shaft", 2 * f.Value, "the crank turns twice as fast as such a shaft"},
			{"seconds written as milliseconds", f.Value / 1000, "a millisecond is a thousandth of a second"},
		}
	case "tdc.position":
		return b.positionSlips()
	}
	return nil
}

// advanceSlips are wrong angles for the card's drop.
func (b *bench) advanceSlips() []slip {
	if b.card == nil || b.stroke == nil {
		return nil
	}
	x, s := float64(b.card.drop.Value), float64(b.stroke.Value)
	deg := func(a float64) float64 { return a * 180 / math.Pi }
	out := []slip{
		{"the rod taken as endless", deg(math.Acos(1 - 2*x/s)), "a rod of ordinary length leans, and the piston is further down at the same angle"},
		{"the stroke for the throw", deg(math.Acos(1 - x/s)), "the throw is half the stroke"},
		{"a straight line from the top to half stroke", 90 * x / (s / 2), "the piston hardly moves near the top: its way goes with the square of the angle there"},
	}
	if b.crank == nil {
		return out
	}
	if a, _, err := b.crank.AnglesAtDrop(b.card.drop.Value * units.Length(math.Cos(float64(b.lean.Value)))); err == nil && b.lean.Value != 0 {
		out = append(out, slip{"the lean of the gauge ignored", a.Degrees(), "a dial that shows the drop in a leaning hole has moved further than the piston"})
	}
	return out
}

// dropSlips are wrong drops for the card's angle.
func (b *bench) dropSlips() []slip {
	if b.card == nil || b.stroke == nil {
		return nil
	}
	a, s := float64(b.card.advance.Value), b.stroke.Value.Millimetres()
	return []slip{
		{"the rod taken as endless", s / 2 * (1 - math.Cos(a)), "a rod of ordinary length leans, and the piston is further down"},
		{"the stroke for the throw", s * (1 - math.Cos(a)), "the throw is half the stroke"},
		{"the percentage of the stroke for the drop", 100 * float64(b.card.drop.Value/b.stroke.Value), "per cent are of the stroke and not millimetres"},
	}
}

// positionSlips are wrong places of top dead centre.
func (b *bench) positionSlips() []slip {
	var out []slip
	if b.job.Dial != nil {
		series, err := b.dialSeries()
		if err == nil {
			for _, way := range [...]ignition.Turned{ignition.Forward, ignition.Backward} {
				var one []ignition.Series
				for _, s := range series {
					if s.Turned == way {
						one = append(one, s)
					}
				}
				if bi, err := ignition.Bisect(b.setup(), ignition.Without(b.dialSlips, one...)...); err == nil && len(one) > 0 {
					out = append(out, slip{"halving equal dial readings taken turning " + way.String() + " only", bi.Position.Value.Millimetres(),
						"the lost motion in the bearings makes one way late and the other early: take both"})
				}
			}
		}
	}
	if e := b.job.ByEye; e != nil && len(e.TurnedBackAt) > 0 {
		out = append(out, slip{"taking the place where the needle seemed to stop", mean(e.TurnedBackAt, 0).Value.Millimetres(),
			"the piston stands still over several degrees there"})
	}
	return out
}

// rimSlips are those of arc, chord and girth.
func (b *bench) rimSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	if b.round == nil {
		return nil
	}
	girth, d := b.round.Girth().Millimetres(), b.round.Diameter().Millimetres()
	switch f.Key {
	case "rim.per_degree":
		return []slip{
			{"the diameter for the girth", d / 360, "a turn of the rim is π times the diameter"},
			{"the girth over 100 instead of 360", girth / 100, "there are 360° in a turn"},
		}
	case "rim.diameter":
		return append(piSlips(f.Value, -1), slip{"the girth halved", girth / 2, "the diameter is the girth over π"})
	case "rim.girth":
		return append(piSlips(f.Value, 1), slip{"the radius for the diameter", math.Pi * d / 2, "the girth is π times the diameter"})
	case "card.arc":
		return append(piSlips(f.Value, 1),
			slip{"the chord for the arc", figures["card.chord"].Value, "a rule laid straight across is shorter than the way along the rim"},
			slip{"the diameter for the radius in s = Rθ", 2 * f.Value, "the arc is the radius times the angle in radians"})
	case "card.chord":
		return []slip{{"the arc for the chord", figures["card.arc"].Value, "the way along the rim is longer than a rule laid straight across"}}
	case "card.rim":
		if b.tdc != nil && has(figures, "card.arc") {
			tdc := b.tdc.Value.Millimetres()
			return []slip{{"the wrong side of top dead centre", 2*tdc - f.Value, "with a pointer that stands still the spark mark lies ahead of the TDC mark in the direction of rotation"}}
		}
	}
	return nil
}
