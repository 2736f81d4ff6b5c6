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

// A RingPlace is a place of a bore where a ring was squared up: its end gap there,
// and the diameter there.
type RingPlace struct {
	Gap, Bore units.Reading[units.Length]
}

// check refuses a gap below 0, a bore that is not more than 0, and uncertainties
// that are none.
func (p RingPlace) check() error {
	if err := checkGap(p.Gap); err != nil {
		return err
	}
	return checkReading(p.Bore)
}

// BoreByRing returns the diameter of a bore where a ring has this end gap, from
// another place where both the gap of the same ring and the diameter are known:
//
//	D = D₀ + (g − g₀)/π
//
// so that a feeler of 0.02 mm finds the diameter to 0.006 mm. The gap measures the
// girth, and so the mean diameter of an oval bore. The error wraps units.ErrDomain for
// a bore that is not more than 0, gaps below 0, or an uncertainty that is none.
func BoreByRing(gap units.Reading[units.Length], known RingPlace) (units.Reading[units.Length], error) {
	if err := known.check(); err != nil {
		return units.Reading[units.Length]{}, err
	}
	if err := checkGap(gap); err != nil {
		return units.Reading[units.Length]{}, err
	}
	narrower := difference(known.Gap, gap)
	narrower.Value, narrower.Std = narrower.Value/math.Pi, narrower.Std/math.Pi
	return difference(known.Bore, narrower), nil
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
// measured there. Give the mean diameter where the bore is oval. Errors as for
// BoreByRing.
func CheckGaps(wide, narrow RingPlace) (GapCheck, error) {
	for _, p := range [...]RingPlace{wide, narrow} {
		if err := p.check(); err != nil {
			return GapCheck{}, err
		}
	}
	gap := difference(wide.Gap, narrow.Gap)
	gap.Value, gap.Std = gap.Value/math.Pi, gap.Std/math.Pi
	c := GapCheck{ByGap: gap, ByBore: difference(wide.Bore, narrow.Bore)}
	off := difference(c.ByGap, c.ByBore)
	c.Agree = off.Value <= 2*off.Std+picometre && off.Value >= -2*off.Std-picometre
	return c, nil
}
