package main

import (
	"math"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
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
			{"degrees taken for radians in the cosine", x / math.Cos(b.lean.Value.Degrees()), "a calculator set to radians takes 12° for 12 radians"},
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
	case "crank.stroke":
		return b.strokeSlips()
	case "crank.rod":
		return b.rodSlips()
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
	drop, cos := b.card.drop.Value, units.Length(math.Cos(float64(b.lean.Value)))
	at := func(name string, drop units.Length, why string) {
		if a, _, err := b.crank.AnglesAtDrop(drop); err == nil && drop != b.card.drop.Value {
			out = append(out, slip{name, a.Degrees(), why})
		}
	}
	at("the lean of the gauge ignored", drop*cos, "a dial that shows the drop in a leaning hole has moved further than the piston")
	at("the lean applied the wrong way", drop/cos, "the piston moves less than a gauge that leans, not more")
	at("the percentage of the stroke for the drop", units.Length(100*drop/b.stroke.Value)*units.Millimetre, "per cent are of the stroke and not millimetres")
	at("thou taken for hundredths of a millimetre", drop/2.54, "a thou is 0.0254 mm, two and a half hundredths")
	if c, err := geometry.NewCrank(2*b.stroke.Value, b.rod.Value); err == nil {
		if a, _, err := c.AnglesAtDrop(drop); err == nil {
			out = append(out, slip{"the stroke for the throw", a.Degrees(), "the throw is half the stroke"})
		}
	}
	return out
}

// dropSlips are wrong drops for the card's angle.
func (b *bench) dropSlips() []slip {
	if b.card == nil || b.stroke == nil {
		return nil
	}
	a, s := float64(b.card.advance.Value), b.stroke.Value.Millimetres()
	deg := b.card.advance.Value.Degrees()
	out := []slip{}
	if b.crank != nil {
		out = append(out, slip{"degrees taken for radians in sine and cosine", b.crank.Drop(units.Angle(deg)).Millimetres(), "a calculator set to radians takes 25° for 25 radians"})
	}
	return append(out, []slip{
		{"the rod taken as endless", s / 2 * (1 - math.Cos(a)), "a rod of ordinary length leans, and the piston is further down"},
		{"the stroke for the throw", s * (1 - math.Cos(a)), "the throw is half the stroke"},
		{"the percentage of the stroke for the drop", 100 * float64(b.card.drop.Value/b.stroke.Value), "per cent are of the stroke and not millimetres"},
	}...)
}

// strokeSlips are wrong strokes from the crown's depths.
func (b *bench) strokeSlips() []slip {
	c := b.job.Crank
	top, bottom := mean(c.CrownTop, 0).Value.Millimetres(), mean(c.CrownBottom, 0).Value.Millimetres()
	return []slip{
		{"the depth of the crown at the top forgotten", bottom, "the crown stands below the face at the top already: take that off"},
		{"the depth of the crown at the top added", bottom + top, "it is to be taken off: the piston starts from there"},
	}
}

// rodSlips are wrong rods from over the pins.
func (b *bench) rodSlips() []slip {
	c := b.job.Crank
	if c.GudgeonPin == nil || c.Crankpin == nil {
		return nil
	}
	over, pins := mean(c.RodOverPins, 0).Value, c.GudgeonPin.Value+c.Crankpin.Value
	return []slip{
		{"the pins not taken off", over.Millimetres(), "over the far sides of the pins is half of each pin too long"},
		{"the whole of both pins taken off", (over - pins).Millimetres(), "only half of each pin lies outside its centre"},
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
			slip{"degrees put where radians belong in s = Rθ", f.Value * 180 / math.Pi, "the arc is the radius times the angle in radians: 57.3° to one"},
			slip{"the diameter for the radius in s = Rθ", 2 * f.Value, "the arc is the radius times the angle in radians"})
	case "card.chord":
		deg := 0.0
		if b.card != nil {
			deg = b.card.advance.Value.Degrees()
		}
		return []slip{
			{"the arc for the chord", figures["card.arc"].Value, "the way along the rim is longer than a rule laid straight across"},
			{"degrees taken for radians in the sine", math.Abs(d * math.Sin(deg/2)), "a calculator set to radians takes 25° for 25 radians"},
		}
	case "card.rim":
		if b.tdc != nil && has(figures, "card.arc") {
			tdc := b.tdc.Value.Millimetres()
			chord := figures["card.chord"].Value
			laid := tdc - chord
			if f.Value > tdc {
				laid = tdc + chord
			}
			return []slip{{"the chord laid off where the arc belongs", laid, "the figures of a rule on the rim are an arc"},
				{"the wrong side of top dead centre", 2*tdc - f.Value, "with a pointer that stands still the spark mark lies ahead of the TDC mark in the direction of rotation"}}
		}
	}
	return nil
}
