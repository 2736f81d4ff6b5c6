package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// GapChange returns by how much the end gap of a piston ring opens when it is moved
// to a place of the bore that is wider by a difference of diameters: π times the
// difference. The ring must stand square.
func GapChange(wider units.Length) units.Length { return math.Pi * wider }

// BoreByRing returns the diameter of a bore at one place from the end gap of a ring
// there, the gap of the same ring at another place, and the diameter at that other
// place:
//
//	D = D₀ + (g − g₀)/π
//
// so that a feeler of 0.02 mm finds the diameter to 0.006 mm. The gap measures the
// girth, and so the mean diameter of an oval bore. The error wraps units.ErrDomain for
// a bore that is not more than 0, gaps below 0, or an uncertainty that is none.
func BoreByRing(gap, gapThere, boreThere units.Reading[units.Length]) (units.Reading[units.Length], error) {
	if err := checkReading(boreThere); err != nil {
		return units.Reading[units.Length]{}, err
	}
	for _, g := range [...]units.Reading[units.Length]{gap, gapThere} {
		if err := checkGap(g); err != nil {
			return units.Reading[units.Length]{}, err
		}
	}
	wider := difference(gap, gapThere)
	wider.Value, wider.Std = wider.Value/math.Pi, wider.Std/math.Pi
	wider.Value = -wider.Value
	return difference(boreThere, wider), nil
}

func checkGap(g units.Reading[units.Length]) error {
	if !(g.Value >= 0) || math.IsInf(float64(g.Value), 0) {
		return fmt.Errorf("ring gap %v: want 0 mm or more: %w", g.Value, units.ErrDomain)
	}
	return checkReading(units.Reading[units.Length]{Value: units.Millimetre, Std: g.Std, DoF: g.DoF})
}

// A GapCheck compares what the ring and what the gauge say about how much wider one
// place of a bore is than another.
type GapCheck struct {
	ByGap  units.Reading[units.Length] // difference of the gaps over π
	ByBore units.Reading[units.Length] // difference of the diameters
	// Agree is whether the two differ by no more than two standard uncertainties of
	// their difference.
	Agree bool
}

// CheckGaps holds the gaps of one ring at two places of a bore against the diameters
// measured there, each wide place less the narrow. Give the mean diameter where the
// bore is oval. Errors as for BoreByRing.
func CheckGaps(gapWide, gapNarrow, boreWide, boreNarrow units.Reading[units.Length]) (GapCheck, error) {
	if _, err := BoreByRing(gapWide, gapNarrow, boreNarrow); err != nil {
		return GapCheck{}, err
	}
	if err := checkReading(boreWide); err != nil {
		return GapCheck{}, err
	}
	gap := difference(gapWide, gapNarrow)
	gap.Value, gap.Std = gap.Value/math.Pi, gap.Std/math.Pi
	c := GapCheck{ByGap: gap, ByBore: difference(boreWide, boreNarrow)}
	off := difference(c.ByGap, c.ByBore)
	const slack = units.Length(1e-12)
	c.Agree = math.Abs(float64(off.Value)) <= 2*float64(off.Std)+float64(slack)
	return c, nil
}

// HotGap returns the end gap of a ring when bore and ring have these temperatures:
//
//	g' = g + π D (αb (Tb − 20 °C) − αr (Tr − 20 °C))
//
// The ring runs hotter than the bore, so the gap closes. Ends that meet stop the
// engine and break the ring: what comes out must be above 0. Source: derived here.
func HotGap(gap, bore units.Length, ofBore, ofRing units.Expansion, boreAt, ringAt units.Temperature) units.Length {
	return gap + math.Pi*(Growth(bore, ofBore, boreAt.Sub(ReferenceTemperature()))-
		Growth(bore, ofRing, ringAt.Sub(ReferenceTemperature())))
}

// ColdGap returns the gap to file at 20 °C so that hot is left of it at these
// temperatures: HotGap the other way round.
func ColdGap(hot, bore units.Length, ofBore, ofRing units.Expansion, boreAt, ringAt units.Temperature) units.Length {
	return hot - HotGap(0, bore, ofBore, ofRing, boreAt, ringAt)
}

// ColdClearance returns the clearance that a piston, or any shaft, must have at 20 °C
// in a bore so that hot is left of it when bore and piston have these temperatures:
//
//	c = hot + D (αp (Tp − 20 °C) − αb (Tb − 20 °C))
//
// to the first order in the clearance. Source: derived here.
func ColdClearance(hot, bore units.Length, ofBore, ofPiston units.Expansion, boreAt, pistonAt units.Temperature) units.Length {
	return hot + Growth(bore, ofPiston, pistonAt.Sub(ReferenceTemperature())) -
		Growth(bore, ofBore, boreAt.Sub(ReferenceTemperature()))
}
