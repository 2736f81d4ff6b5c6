package main

import (
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// volumeSlips are those of swept volume and compression.
func (b *bench) volumeSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	v := func(key string) float64 { return figures[key].Value }
	switch f.Key {
	case "compression.swept":
		return append(piSlips(f.Value, 1),
			slip{"the bore for its half in πr²S", 4 * f.Value, "the area of a bore is π times the square of half of it"},
			slip{"the throw for the stroke", f.Value / 2, "the piston travels twice the throw"},
			slip{"the square of the bore without π/4", f.Value / 0.7853981633974483, "a bore is round"})
	case "compression.clearance":
		out := []slip{}
		if h := b.job.PlugHole; h != nil && h.Volume != nil {
			out = append(out, slip{"the plug hole not taken off", f.Value + h.Volume.Value.CubicCentimetres(), "the plug fills the hole the oil filled"})
			if h.Cavity != nil {
				out = append(out, slip{"the hollow of the plug not added", f.Value - h.Cavity.Value.CubicCentimetres(), "the hollow inside the plug's shell is part of the space"})
			}
		}
		if fills, err := b.fills(); err == nil && has(figures, "compression.to_brim") {
			var sum units.Volume
			for _, x := range fills {
				sum += x.Run
			}
			leaky := (sum / units.Volume(len(fills))).CubicCentimetres()
			out = append(out, slip{"the mean of the fills, with what crept past the rings in it", f.Value + leaky - v("compression.to_brim"), "the longer a fill takes, the more creeps away: carry the line back to no time"})
		}
		return out
	case "compression.geometric":
		vs, vc := v("compression.swept"), v("compression.clearance")
		return []slip{
			{"swept volume over clearance, without the clearance on top", vs / vc, "the ratio is of the whole space before and after"},
			{"the trapped ratio", v("compression.trapped"), "that one counts from exhaust closing"},
		}
	case "compression.trapped":
		return []slip{{"the geometric ratio", v("compression.geometric"), "that one counts from the bottom of the stroke"}}
	}
	return nil
}

// oilSlips are those of mixing.
func (b *bench) oilSlips(f sheet.Figure, _ map[string]sheet.Figure) []slip {
	o := b.job.Oil
	if b.oil == nil || o == nil {
		return nil
	}
	ratio := b.oil.PetrolToOil()
	usGallon := float64(units.USGallon / units.ImperialGallon)
	switch f.Key {
	case "oil.petrol_to_oil":
		return []slip{
			{"the parts of the whole for the parts of petrol", ratio + 1, "16:1 is sixteen of petrol and one of oil, seventeen in all"},
			{"an imperial pint to an American gallon", ratio * usGallon, "a US gallon is five sixths of an imperial one: pint and gallon must be of one country"},
			{"an American pint to an imperial gallon", ratio / usGallon, "a US pint is five sixths of an imperial one: pint and gallon must be of one country"},
		}
	case "oil.for_can":
		if o.Can == nil {
			return nil
		}
		can := o.Can.CubicCentimetres()
		return []slip{
			{"parts per whole for parts to parts", can / (ratio + 1), "the ratio is of petrol to oil, and the can holds petrol"},
			{"parts to parts for parts per whole", can / ratio, "the can is filled to its mark with both together"},
			{"an imperial pint to an American gallon", can / (ratio * usGallon), "pint and gallon must be of one country"},
		}
	case "oil.for_tank":
		return []slip{{"parts to parts for parts per whole", f.Value * (ratio + 1) / ratio, "a full tank holds petrol and oil together"}}
	case "oil.of_mix":
		return []slip{{"per cent of the petrol for per cent of the mix", 100 / ratio, "the mix is the petrol and the oil together"}}
	}
	return nil
}
