package adaptersheet

import (
	"math"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/units"
)

type (
	length  = units.Length
	reading = units.Reading[units.Length]
)

// Readings are what was measured of the engine, the carburettor and the bar.
type Readings struct {
	PortBore       []length `toml:"port_bore"` // at the engine's flange
	BoresGoodTo    length   `toml:"bores_good_to"`
	StudCentres    []length `toml:"stud_centres"`
	CentresGoodTo  length   `toml:"centres_good_to"`
	StudDiameter   *reading `toml:"stud_diameter"`
	StudProjection *reading `toml:"stud_projection"`
	OutOfFlat      length   `toml:"out_of_flat"`
	Gasket         length   `toml:"gasket"` // pinched

	CollarAcrossSlot []length `toml:"collar_across_slot"`
	CollarSquareTo   []length `toml:"collar_square_to_slot"`
	CollarDepth      *reading `toml:"collar_depth"`
	CollarWall       *length  `toml:"collar_wall"`
	Slot             *reading `toml:"slot"`
	CarburettorBore  *reading `toml:"carburettor_bore"` // at the collar end
	ScrewForce       *force   `toml:"screw_force"`      // that the clamp screw is thought good for
	Friction         *number  `toml:"friction"`

	BarDiameter length `toml:"bar_diameter"`
	BarLength   length `toml:"bar_length"`

	SpigotFit      string       `toml:"spigot_fit"` // ISO 286; empty for what the slot allows
	NewPartGoodTo  length       `toml:"new_part_good_to"`
	CollarMaterial string       `toml:"collar_material"`
	BarMaterial    string       `toml:"bar_material"`
	Warm           *temperature `toml:"warm"`
}

type (
	force       = units.Force
	number      = units.Ratio
	temperature = units.Temperature
)

// check refuses what is missing and what no part can measure.
func (r *Readings) check(file *jobfile.File) error {
	for _, c := range []struct {
		key   string
		given bool
	}{
		{"port_bore", len(r.PortBore) > 0}, {"bores_good_to", r.BoresGoodTo > 0},
		{"stud_centres", len(r.StudCentres) > 0}, {"stud_diameter", r.StudDiameter != nil}, {"stud_projection", r.StudProjection != nil},
		{"collar_across_slot", len(r.CollarAcrossSlot) > 0}, {"collar_square_to_slot", len(r.CollarSquareTo) > 0},
		{"collar_depth", r.CollarDepth != nil}, {"slot", r.Slot != nil}, {"carburettor_bore", r.CarburettorBore != nil},
		{"bar_diameter", r.BarDiameter > 0}, {"bar_length", r.BarLength > 0}, {"new_part_good_to", r.NewPartGoodTo > 0},
	} {
		if !c.given {
			return file.Errorf("adapter", "no %s: an adapter cannot be worked out without it, and it must be more than 0; see -template", c.key)
		}
	}
	return r.checkSizes(file)
}

// checkSizes refuses sizes that are not more than 0 or below it where 0 is an
// answer.
func (r *Readings) checkSizes(file *jobfile.File) error {
	for key, list := range map[string][]length{
		"port_bore": r.PortBore, "stud_centres": r.StudCentres, "collar_across_slot": r.CollarAcrossSlot, "collar_square_to_slot": r.CollarSquareTo,
		"stud_diameter": {r.StudDiameter.Value}, "stud_projection": {r.StudProjection.Value}, "collar_depth": {r.CollarDepth.Value},
		"slot": {r.Slot.Value}, "carburettor_bore": {r.CarburettorBore.Value},
	} {
		for _, l := range list {
			if !(l > 0) || math.IsInf(float64(l), 0) {
				return file.Errorf("adapter."+key, "%v: want more than 0 mm", l)
			}
		}
	}
	for key, l := range map[string]length{"centres_good_to": r.CentresGoodTo, "out_of_flat": r.OutOfFlat, "gasket": r.Gasket} {
		if !(l >= 0) || math.IsInf(float64(l), 0) {
			return file.Errorf("adapter."+key, "%v: want 0 mm or more", l)
		}
	}
	return nil
}
