package main

import (
	"math"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// A slip is a well-known mistake: the figure it gives in place of the right one,
// in the unit of that figure, and in one sentence why it is one.
type slip struct {
	name  string
	value float64
	why   string
}

// slips returns the slips that lead to a wrong value of a figure: those of its
// own sum, and those that any figure of its unit can suffer.
func (b *bench) slips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	var all []slip
	for _, of := range [...]func(sheet.Figure, map[string]sheet.Figure) []slip{b.timingSlips, b.rimSlips, b.pointSlips, b.portSlips, b.volumeSlips, b.adapterSlips, b.bushSlips, b.boreSlips, b.threadSlips, b.springSlips, b.oilSlips} {
		all = append(all, of(f, figures)...)
	}
	return append(all, unitSlips(f)...)
}

// unitSlips are the mistakes of units.
func unitSlips(f sheet.Figure) []slip {
	v := f.Value
	if strings.HasPrefix(f.Key, "springs.") && f.Unit != "mm" {
		return springUnitSlips(f) // no crank turns there
	}
	switch f.Unit {
	case "mm":
		return []slip{
			{"inches written as millimetres", v / 25.4, "an inch is 25.4 mm"},
			{"millimetres turned into inches the wrong way", v * 25.4, "an inch is 25.4 mm, so that the number in millimetres is the larger"},
			{"thou read as hundredths of a millimetre", v / 2.54, "a thou is 0.0254 mm, two and a half hundredths"},
			{"hundredths of a millimetre read as thou", v * 2.54, "a hundredth of a millimetre is 0.4 thou"},
			{"the radius for the diameter", v / 2, "the sum wants the whole width across"},
			{"the diameter for the radius", v * 2, "the sum wants half the width across"},
		}
	case "°":
		return []slip{
			{"radians written as degrees", v * math.Pi / 180, "a radian is 57.3°"},
			{"degrees taken for radians", v * 180 / math.Pi, "a radian is 57.3°"},
			{"degrees of a half-speed shaft for those of the crank", v / 2, "a half-speed shaft turns half as far as the crank"},
			{"degrees of the crank doubled as if they were a half-speed shaft's", v * 2, "these are degrees of the crank already"},
			{"the wrong side of top dead centre", -v, "advance counts before top dead centre"},
		}
	case "cc", "l":
		return volumeUnitSlips(v, f.Unit)
	}
	return nil
}

// volumeUnitSlips are those of gallons, pints and inches.
func volumeUnitSlips(v float64, unit string) []slip {
	us := float64(units.USGallon / units.ImperialGallon)
	out := []slip{
		{"American measures for imperial ones", v * us, "a US gallon or pint is five sixths of the imperial one"},
		{"imperial measures for American ones", v / us, "an imperial gallon or pint is a fifth more than the US one"},
	}
	if unit == "cc" {
		out = append(out, slip{"cubic inches written as cc", v / units.CubicInch.CubicCentimetres(), "a cubic inch is 16.4 cc"})
	}
	return out
}

// piSlips are the mistakes of π in a figure that has it to the given power.
func piSlips(v float64, power float64) []slip {
	return []slip{
		{"π taken as 3", v * math.Pow(3/math.Pi, power), "that is 4.5 % short: use 3.1416"},
		{"π taken as 22/7", v * math.Pow(22.0/7/math.Pi, power), "22/7 is 0.04 % large, which shows where a figure is carried so far"},
	}
}

// has reports whether the figures have all the keys.
func has(figures map[string]sheet.Figure, keys ...string) bool {
	for _, k := range keys {
		if _, ok := figures[k]; !ok {
			return false
		}
	}
	return true
}

// ofForm reports whether key is prefix, anything, suffix.
func ofForm(key, prefix, suffix string) bool {
	return strings.HasPrefix(key, prefix) && strings.HasSuffix(key, suffix)
}
