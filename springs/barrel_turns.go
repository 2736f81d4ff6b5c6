package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// turnsOnWall returns the turns of a strip lying against the wall:
//
//	n_u = (D − √(D² − 4Lt/π)) / (2t) = (2L/π) / (D + √(D² − 4Lt/π))
//
// in the second form, which keeps its figures for a thin strip.
func turnsOnWall(bore, l, t float64) float64 {
	return 2 / math.Pi * l / (bore + math.Sqrt(bore*bore-4/math.Pi*l*t))
}

// turnsOnArbor returns the turns of a strip lying on the arbor:
//
//	n_w = (√(d² + 4Lt/π) − d) / (2t) = (2L/π) / (d + √(d² + 4Lt/π))
func turnsOnArbor(arbor, l, t float64) float64 {
	return 2 / math.Pi * l / (arbor + math.Sqrt(arbor*arbor+4/math.Pi*l*t))
}

// Fill returns the share of the room between arbor and wall that the strip takes:
// f = 4 L t / (π (D² − d²)). One half gives the most turns.
func (b Barrel) Fill() float64 { return b.spec.fill() }

// HalfFillLength returns the length of strip that gives the most turns, the one
// that fills half of the room: L = π (D² − d²) / (8 t). Derived: f = ½ is exact.
func HalfFillLength(bore, arbor, thickness units.Length) units.Length {
	return units.Length(math.Pi / 8 * float64(bore-arbor) * float64((bore+arbor)/thickness))
}

// MostTurns returns the turns that a strip of the given thickness and the best
// length delivers, by geometry alone:
//
//	N = (√(2(D² + d²)) − (D + d)) / (2t) = (D − d)² / (2t (√(2(D² + d²)) + D + d))
//
// The error is units.ErrDomain for sizes that do not rise from thickness to arbor
// to bore.
func MostTurns(bore, arbor, thickness units.Length) (float64, error) {
	if err := first(positive("thickness", thickness), positive("arbor", arbor)); err != nil {
		return 0, err
	}
	if !(bore > arbor) || math.IsInf(float64(bore), 0) {
		return 0, fmt.Errorf("bore %v: want more than %v, the arbor: %w", bore, arbor, units.ErrDomain)
	}
	d, a, t := float64(bore), float64(arbor), float64(thickness)
	return (d - a) * (d - a) / (2 * t * (math.Sqrt(2*(d*d+a*a)) + d + a)), nil
}

// MostTurnsHandbook is MostTurns with the design handbook's 2.55 t in place of 2 t,
// which leaves 78 per cent of the ideal turns.
//
// Source: Spring Manufacturers Institute (from memory).
func MostTurnsHandbook(bore, arbor, thickness units.Length) (float64, error) {
	n, err := MostTurns(bore, arbor, thickness)
	return n * 2 / 2.55, err
}
