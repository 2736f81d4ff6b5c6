package fits

import (
	"cmp"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A Finding says what two measured parts amount to.
type Finding struct {
	// Clearance is the hole less the shaft, with the uncertainties of both.
	Clearance units.Reading[units.Length]
	// Kind is ClearanceFit or InterferenceFit, whichever is likelier: two parts that
	// are there are never a transition fit.
	Kind Kind
	// Interfering is how likely it is, 0 to 1, that the shaft is the larger, given
	// how well the parts were measured and a normal distribution.
	Interfering float64
	// Sure is whether the kind is beyond doubt at two standard uncertainties.
	Sure bool
	// Fits are the published fits that allow this clearance, the one nearest to the
	// middle of its range first.
	Fits []Choice
}

// Measured names what a hole and a shaft amount to that are there and were
// measured. The size of the hole serves as the nominal size. The error wraps
// units.ErrDomain for a size outside the standard or an uncertainty that is none.
func Measured(hole, shaft units.Reading[units.Length]) (Finding, error) {
	for _, r := range [...]units.Reading[units.Length]{hole, shaft} {
		if err := checkReading(r); err != nil {
			return Finding{}, err
		}
	}
	if _, why := placeOf(hole.Value); why != "" {
		return Finding{}, &UndefinedError{hole.Value, "a fit", why}
	}
	f := Finding{Clearance: difference(hole, shaft), Kind: ClearanceFit}
	c, u := float64(f.Clearance.Value), float64(f.Clearance.Std)
	if c < 0 {
		f.Kind, f.Interfering = InterferenceFit, 1
	}
	if u > 0 {
		f.Interfering = normalBelow(-c / u)
	}
	f.Sure = math.Abs(c) >= 2*u
	f.Fits = allowing(hole.Value, f.Clearance.Value)
	return f, nil
}

// difference returns a − b with the uncertainties added as squares, the degrees of
// freedom by Welch-Satterthwaite. Source: JCGM 100:2008, 5.1.2 and G.4.1.
func difference(a, b units.Reading[units.Length]) units.Reading[units.Length] {
	d := units.WithStd(a.Value-b.Value, units.Length(math.Hypot(float64(a.Std), float64(b.Std))))
	sum := 0.0
	for _, r := range [...]units.Reading[units.Length]{a, b} {
		if r.DoF > 0 && d.Std > 0 {
			sum += math.Pow(float64(r.Std/d.Std), 4) / r.DoF
		}
	}
	if sum > 0 {
		d.DoF = 1 / sum
	}
	return d
}

// allowing returns the published fits whose range holds a clearance, the best
// centred first.
func allowing(nominal, clearance units.Length) []Choice {
	choices := slices.DeleteFunc(published(nominal), func(c Choice) bool { return !c.Mating.Clearance().Contains(clearance) })
	offCentre := func(c Choice) int64 { // in millionths of the range
		r := c.Mating.Clearance()
		return int64(math.Round(1e6 * math.Abs(float64((clearance-r.Mean())/r.Spread()))))
	}
	slices.SortStableFunc(choices, func(a, b Choice) int { return cmp.Compare(offCentre(a), offCentre(b)) })
	return choices
}
