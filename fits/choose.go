package fits

import (
	"cmp"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A Choice is a published fit weighed against a clearance.
type Choice struct {
	Preferred
	Mating Mating
	// Beyond is how far the limits of the fit stick out of what was wanted, both ends
	// together: nought for a fit that serves.
	Beyond units.Length
}

// Choose looks through all published lists for fits whose clearance at this
// nominal size keeps within the wanted range. Those that serve come first, the one
// with the widest tolerances, which is the cheapest to make, at their head; behind
// them come the others, the nearest first. A fit that stands in several lists is
// given once, in the first of them.
//
// The error is an *UndefinedError for a nominal size outside the standard, or
// wraps units.ErrDomain for a range that has its ends the wrong way round.
func Choose(nominal units.Length, want Clearance) ([]Choice, error) {
	if err := want.check(); err != nil {
		return nil, err
	}
	if _, why := placeOf(nominal); why != "" {
		return nil, &UndefinedError{nominal, "a fit", why}
	}
	choices := published(nominal)
	for i := range choices {
		c := choices[i].Mating.Clearance()
		choices[i].Beyond = max(0, want.Min-c.Min) + max(0, c.Max-want.Max)
	}
	slices.SortStableFunc(choices, func(a, b Choice) int {
		if c := compare(a.Beyond, b.Beyond); c != 0 || !(a.Beyond <= picometre) {
			return c
		}
		return compare(b.Mating.Clearance().Spread(), a.Mating.Clearance().Spread())
	})
	return choices, nil
}

// ChooseAny looks beyond the published lists: all fits on hole basis and on shaft
// basis whose grades are IT5 to IT11, the shaft as fine as the hole or up to two
// grades finer, as shafts are easier to make. It returns those that keep within the
// wanted range, the widest tolerances first, with no list to their names; there may be
// none. Errors as for Choose.
func ChooseAny(nominal units.Length, want Clearance) ([]Choice, error) {
	if err := want.check(); err != nil {
		return nil, err
	}
	if _, why := placeOf(nominal); why != "" {
		return nil, &UndefinedError{nominal, "a fit", why}
	}
	var choices []Choice
	for l := la; l <= lzc; l++ {
		for hole := it5; hole <= it11; hole++ {
			for shaft := max(it5, hole-2); shaft <= hole; shaft++ {
				choices = append(choices, serving(nominal, want, Class{lh, hole, true}, Class{l, shaft, false})...)
				if l != lh {
					choices = append(choices, serving(nominal, want, Class{l, hole, true}, Class{lh, shaft, false})...)
				}
			}
		}
	}
	slices.SortStableFunc(choices, func(a, b Choice) int {
		return compare(b.Mating.Clearance().Spread(), a.Mating.Clearance().Spread())
	})
	return choices, nil
}

// serving returns the fit of two classes if it has values and keeps within want.
func serving(nominal units.Length, want Clearance, hole, shaft Class) []Choice {
	m, err := System{}.Mate(nominal, hole, shaft)
	if err != nil || !want.Contains(m.Clearance().Min) || !want.Contains(m.Clearance().Max) {
		return nil
	}
	return []Choice{{Preferred: Preferred{Hole: hole, Shaft: shaft, Kind: m.Kind(), Use: Use(hole, shaft)}, Mating: m}}
}

// picometre is below all that the tables can tell apart and above what rounding
// leaves.
const picometre = 1e-6 * units.Micrometre

// compare orders two lengths, equal within a picometre.
func compare(a, b units.Length) int {
	return cmp.Compare(math.Round(float64(a/picometre)), math.Round(float64(b/picometre)))
}

// published returns each published fit that has values at a nominal size, once.
func published(nominal units.Length) []Choice {
	var choices []Choice
	seen := map[[2]Class]bool{}
	for list := ANSIB42; list <= BS4500B; list++ {
		for _, p := range PreferredFits(list) {
			key := [2]Class{p.Hole, p.Shaft}
			m, err := System{}.Mate(nominal, p.Hole, p.Shaft)
			if seen[key] || err != nil {
				continue
			}
			seen[key] = true
			choices = append(choices, Choice{Preferred: p, Mating: m})
		}
	}
	return choices
}
