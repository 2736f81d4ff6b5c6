package springs

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A StripState is what a standard asks of spring strip in one condition of
// delivery. Least is 0 for cold rolled and annealed strip, which has upper limits
// only.
type StripState struct {
	Steel, Condition            string // "C67S", "+QT"
	Least, Most                 units.Pressure
	LeastHardness, MostHardness float64 // Vickers
	Source                      string
}

// StripLimits returns the limits for a steel, by its name, number or AISI number
// (C67S, 1.1231, 1070), and a condition: +QT hardened and tempered, +CR cold
// rolled, +A annealed. The error is units.ErrDomain for a pair that is not kept.
//
// Source: EN 10132-4, from secondary sources; see Source in the result.
func StripLimits(steel, condition string) (StripState, error) {
	for _, r := range stripStates {
		if (steel == r.steel || steel == r.number && steel != "" || steel == r.aisi && steel != "") && condition == r.condition {
			return StripState{r.steel, r.condition, units.Pressure(r.least) * units.Megapascal, units.Pressure(r.most) * units.Megapascal, r.hvLeast, r.hvMost, r.source}, nil
		}
	}
	return StripState{}, fmt.Errorf("strip %q %q: want C67S, C75S or C100S +QT, C45E, C67S or C75S +CR, C67S or C75S +A: %w", steel, condition, units.ErrDomain)
}

// stripStrength returns the wide limits of hardened and tempered strip.
func stripStrength(steel string, thickness units.Length) (Strength, error) {
	if mm := thickness.Millimetres(); !(mm >= 0.3/sameSize && mm <= 3*sameSize) {
		return Strength{}, fmt.Errorf("strip %s of %v: the limits are for 0.3 mm to 3 mm: %w", steel, thickness, units.ErrDomain)
	}
	s, err := StripLimits(steel, "+QT")
	return Strength{s.Least, s.Most, s.Source}, err
}

const hardnessSource = "3.2 times the usual Vickers hardness of C67S +QT (mill's material sheet and a stockist's table; conversion common practice)"

// hardnessStrength returns the strength that goes with the usual hardness.
func hardnessStrength(thickness units.Length) (Strength, error) {
	for _, r := range stripHardness {
		if mm := thickness.Millimetres(); mm >= stripHardness[0].from/sameSize && mm <= r.to*sameSize {
			return Strength{units.Pressure(r.least) * units.Megapascal, units.Pressure(r.most) * units.Megapascal, hardnessSource}, nil
		}
	}
	return Strength{}, fmt.Errorf("strip C67S of %v: usual hardness is on file for 0.3 mm to 3 mm: %w", thickness, units.ErrDomain)
}

// StripHardness returns the Vickers hardness in which C67S strip, hardened and
// tempered, is usually delivered. The error is units.ErrDomain outside 0.3 mm
// to 3 mm.
//
// Source: a mill's material sheet; the same bands in a second stockist's table.
func StripHardness(thickness units.Length) (least, most float64, err error) {
	for _, r := range stripHardness {
		if mm := thickness.Millimetres(); mm >= stripHardness[0].from/sameSize && mm <= r.to*sameSize {
			return r.hvLeast, r.hvMost, nil
		}
	}
	return 0, 0, fmt.Errorf("strip C67S of %v: usual hardness is on file for 0.3 mm to 3 mm: %w", thickness, units.ErrDomain)
}

// TemperedStrength returns the nominal tensile strength and Rockwell C hardness
// of strip of AISI 1050, 1074 (or 1075) or 1095 hardened in oil and tempered at
// the given heat, between printed heats on a straight line. It shows what a torch
// does to a spring: blue comes back at about 290 to 320 °C. The error is
// units.ErrDomain for another steel, or outside 400 to 1100 °F.
//
// Source: ASTM A684 strip, heat-treatment table in a stockist's data page.
func TemperedStrength(aisi string, temper units.Temperature) (units.Pressure, float64, error) {
	column := slices.Index([]string{"1050", "1074", "1095"}, aisi)
	if aisi == "1075" {
		column = 1
	}
	if column < 0 {
		return 0, 0, fmt.Errorf("steel %q: want 1050, 1074, 1075 or 1095: %w", aisi, units.ErrDomain)
	}
	f := temper.Fahrenheit()
	for i := 1; i < len(temperedStrip); i++ {
		lo, hi := temperedStrip[i-1], temperedStrip[i]
		if x := (f - lo.fahrenheit) / (hi.fahrenheit - lo.fahrenheit); x >= -1e-9 && x <= 1+1e-9 {
			kpsi := lo.kpsi[column] + x*(hi.kpsi[column]-lo.kpsi[column])
			return units.Pressure(kpsi) * units.KilopoundPerSquareInch, lo.hrc[column] + x*(hi.hrc[column]-lo.hrc[column]), nil
		}
	}
	return 0, 0, fmt.Errorf("tempered at %v: want 400 °F to 1100 °F: %w", temper, units.ErrDomain)
}

// StripTolerance returns what the thickness of strip narrower than 125 mm may
// differ from its nominal size, plus and minus, in class A, B or C. The error is
// units.ErrDomain for another class, or above 0.15 mm: the source that was read
// shows two bands only.
//
// Source: EN 10140, from a strip supplier's table.
func StripTolerance(thickness units.Length, class string) (units.Length, error) {
	if err := positive("thickness", thickness); err != nil {
		return 0, err
	}
	for _, r := range stripTolerances {
		if thickness.Millimetres() > r.to*sameSize {
			continue
		}
		switch class {
		case "A":
			return units.Length(r.a) * units.Millimetre, nil
		case "B":
			return units.Length(r.b) * units.Millimetre, nil
		case "C":
			return units.Length(r.c) * units.Millimetre, nil
		}
		return 0, fmt.Errorf("class %q: want A, B or C: %w", class, units.ErrDomain)
	}
	return 0, fmt.Errorf("strip %v: tolerances are on file up to 0.15 mm only: %w", thickness, units.ErrDomain)
}
