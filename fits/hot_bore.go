package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Warmth says how warm a bore and what runs in it get, a piston or a ring.
type Warmth struct {
	Bore                             units.Length
	BoreExpansion, PartExpansion     units.Expansion
	BoreTemperature, PartTemperature units.Temperature
}

// A HotBore is a bore with a piston or ring in it, both at their running
// temperatures.
type HotBore struct{ w Warmth }

// NewHotBore checks a Warmth. The error wraps units.ErrDomain for a bore or a
// coefficient that is not more than 0, or a temperature outside −100 to 1000 °C.
func NewHotBore(w Warmth) (HotBore, error) {
	if !(w.Bore > 0) || math.IsInf(float64(w.Bore), 0) {
		return HotBore{}, fmt.Errorf("bore %v: want more than 0 mm: %w", w.Bore, units.ErrDomain)
	}
	for _, a := range [...]units.Expansion{w.BoreExpansion, w.PartExpansion} {
		if !(a > 0) || math.IsInf(float64(a), 0) {
			return HotBore{}, fmt.Errorf("expansions %v and %v: want more than 0: %w", w.BoreExpansion, w.PartExpansion, units.ErrDomain)
		}
	}
	for _, t := range [...]units.Temperature{w.BoreTemperature, w.PartTemperature} {
		if !(t >= units.Celsius(-100) && t <= units.Celsius(1000)) {
			return HotBore{}, fmt.Errorf("temperatures %v and %v: want -100 °C to 1000 °C: %w", w.BoreTemperature, w.PartTemperature, units.ErrDomain)
		}
	}
	return HotBore{w}, nil
}

// closing is what a clearance loses from 20 °C to the running temperatures:
//
//	D (αp (Tp − 20 °C) − αb (Tb − 20 °C))
func (h HotBore) closing() units.Length {
	part := Growth(h.w.Bore, h.w.PartExpansion, h.w.PartTemperature.Sub(ReferenceTemperature()))
	return part - Growth(h.w.Bore, h.w.BoreExpansion, h.w.BoreTemperature.Sub(ReferenceTemperature()))
}

// HotClearance returns what is left, running, of a clearance at 20 °C; below 0 it
// seizes. To the first order in the clearance. Source: derived here.
func (h HotBore) HotClearance(cold units.Length) units.Length { return cold - h.closing() }

// ColdClearance returns the clearance that a piston must have at 20 °C for hot to be
// left of it running: HotClearance the other way round.
func (h HotBore) ColdClearance(hot units.Length) units.Length { return hot + h.closing() }

// HotGap returns the end gap that a ring has running, from its gap at 20 °C. The ring
// runs hotter than the bore, so the gap closes, by π times what a clearance would.
// Ends that meet score the bore and break the ring: what comes out must be above 0.
// Source: derived here.
func (h HotBore) HotGap(cold units.Length) units.Length { return cold - math.Pi*h.closing() }

// ColdGap returns the end gap to file at 20 °C for hot to be left of it running:
// HotGap the other way round.
func (h HotBore) ColdGap(hot units.Length) units.Length { return hot + math.Pi*h.closing() }
