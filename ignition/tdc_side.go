package ignition

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// An OffsetSide is a fit with the offset to one side.
type OffsetSide struct {
	Offset    units.Length
	Position  units.Reading[units.Length]
	ChiSquare float64 // less is likelier
	Share     float64 // how likely, of 1, if both sides were as likely before
}

// findSide fits with the offset to either side and weighs the two against each
// other. Where the readings do not decide, the position is the weighed mean and
// its uncertainty holds the distance of the two.
func (d *dialSet) findSide(setup Setup) (TDC, error) {
	var fits []TDC
	var firstErr error
	for _, sign := range [...]units.Length{1, -1} {
		trial := setup
		trial.Offset.Value *= sign
		f, err := d.find(trial)
		if err != nil {
			firstErr = err
			continue
		}
		fits = append(fits, f)
	}
	if len(fits) < 2 {
		return TDC{}, firstErr
	}
	slices.SortStableFunc(fits, func(a, b TDC) int { return compare(a.ChiSquare, b.ChiSquare) })
	best := fits[0]
	scale := max(1, best.Scatter*best.Scatter)
	odds := math.Exp(-(fits[1].ChiSquare - best.ChiSquare) / (2 * scale))
	shares := [...]float64{1 / (1 + odds), odds / (1 + odds)}
	for i, f := range fits {
		best.Sides = append(best.Sides, OffsetSide{f.Offset.Value, f.Position, f.ChiSquare, shares[i]})
	}
	best.mixSides()
	best.terms = mixTerms(fits[0].terms, fits[1].terms, shares[0], best.sidesApart())
	return best, nil
}

// decided is the share above which one side of the offset counts as found.
const decided = 0.99

// mixSides sets the position to what both sides together say.
func (f *TDC) mixSides() {
	a, b := f.Sides[0], f.Sides[1]
	apart := f.sidesApart()
	f.Position.Value = units.Length(a.Share)*a.Position.Value + units.Length(b.Share)*b.Position.Value
	within := a.Share*math.Pow(float64(a.Position.Std), 2) + b.Share*math.Pow(float64(b.Position.Std), 2)
	f.Position.Std = units.Length(math.Sqrt(within + apart*apart))
	if a.Share >= decided {
		f.Notes = append(f.Notes, fmt.Sprintf("the offset lies on the side of %+.1f mm: the other side fits worse by %.3g in chi-square, odds of %s", a.Offset.Millimetres(), b.ChiSquare-a.ChiSquare, odds(a.Share, b.Share)))
		return
	}
	f.Notes = append(f.Notes, fmt.Sprintf("the readings do not tell which side the offset is on (%+.1f mm: %.0f %%): read further out, where the two sides part", a.Offset.Millimetres(), 100*a.Share))
}

// sidesApart is the standard deviation of a position that is one or the other by
// their shares: √(p(1 − p)) times their distance.
func (f *TDC) sidesApart() float64 {
	a, b := f.Sides[0], f.Sides[1]
	return math.Sqrt(a.Share*b.Share) * math.Abs(float64(a.Position.Value-b.Position.Value))
}

func odds(a, b float64) string {
	if !(a/b < 1e6) {
		return "more than a million to one"
	}
	return fmt.Sprintf("%.0f to one", a/b)
}
