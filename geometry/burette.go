package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A BuretteClearance is the clearance measured with liquid: the piston at top
// dead centre, its rings sealed with grease, the plug hole uppermost, and liquid
// run in to the brim of the hole.
type BuretteClearance struct {
	ToBrim     units.Reading[units.Volume] // run in, to the brim of the plug hole; Leak.AtStart where it creeps
	PlugHole   units.Reading[units.Volume] // of the hole, from its brim to where the plug's end will be
	PlugCavity units.Reading[units.Volume] // inside the shell of the plug, about its insulator
}

// Volume returns the clearance with the plug in place: what was run in, less the
// hole the plug will fill, plus the hollow in the plug's own nose. The standard
// uncertainties add in quadrature, their degrees of freedom by the formula of
// Welch and Satterthwaite (JCGM 100:2008, G.4.1).
//
// What stands above the top ring beside the piston counts as clearance if the
// liquid reaches it and not if grease fills it: say which beside the figure.
//
// The error is units.ErrDomain when nothing is left, or a volume is less than 0.
func (b BuretteClearance) Volume() (units.Reading[units.Volume], error) {
	run, hole, cavity := b.ToBrim.Value, b.PlugHole.Value, b.PlugCavity.Value
	v := run - hole + cavity
	if !(v > 0 && run > 0 && hole >= 0 && cavity >= 0) || math.IsInf(float64(v), 0) {
		return units.Reading[units.Volume]{}, fmt.Errorf("%v run in, plug hole %v, plug cavity %v: want none less than 0 and something left: %w", run, hole, cavity, units.ErrDomain)
	}
	return sumOf(v, b.ToBrim, b.PlugHole, b.PlugCavity), nil
}

// sumOf is a reading of v with the uncertainties of the parts it is a sum of.
func sumOf(v units.Volume, parts ...units.Reading[units.Volume]) units.Reading[units.Volume] {
	var u2, over float64
	for _, p := range parts {
		s := float64(p.Std) * float64(p.Std)
		u2 += s
		if p.DoF > 0 {
			over += s * s / p.DoF
		}
	}
	sum := units.Reading[units.Volume]{Value: v, Std: units.Volume(math.Sqrt(u2))}
	if over > 0 {
		sum.DoF = u2 * u2 / over
	}
	return sum
}
