package fits

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A FitList is a published choice among the thousands of fits there could be.
type FitList int

// The lists.
const (
	ANSIB42       FitList = iota + 1 // ANSI B4.2-1978, preferred fits on both bases
	ISOHoleBasis                     // ISO 286-1:2010, Figure 12
	ISOShaftBasis                    // ISO 286-1:2010, Figure 13 (from memory)
	BS4500A                          // BS 4500A, selected fits on hole basis
	BS4500B                          // BS 4500B, selected fits on shaft basis (from memory)
)

// String returns the name of the list with its source.
func (l FitList) String() string {
	switch l {
	case ANSIB42:
		return "ANSI B4.2-1978"
	case ISOHoleBasis:
		return "ISO 286-1:2010, Figure 12, hole basis"
	case ISOShaftBasis:
		return "ISO 286-1:2010, Figure 13, shaft basis (from memory)"
	case BS4500A:
		return "BS 4500A, hole basis"
	case BS4500B:
		return "BS 4500B, shaft basis (from memory)"
	}
	return fmt.Sprintf("FitList(%d)", int(l))
}

func (l FitList) rows() []fitRow {
	switch l {
	case ANSIB42:
		return ansiB42[:]
	case ISOHoleBasis:
		return isoHoleBasis[:]
	case ISOShaftBasis:
		return isoShaftBasis[:]
	case BS4500A:
		return bs4500A[:]
	case BS4500B:
		return bs4500B[:]
	}
	return nil
}

// A Preferred fit is one of a published list. Hole basis gives the hole H and
// makes the character with the shaft, which suits drilled and reamed holes; shaft
// basis gives the shaft h, which suits bright bar.
type Preferred struct {
	Hole, Shaft Class
	Kind        Kind    // as the list has it; it can differ at small sizes, where the limits decide
	Use         string  // what it is for, in plain words
	List        FitList // 0 for a fit of no list
}

// String writes the fit: H7/g6.
func (p Preferred) String() string { return p.Hole.String() + "/" + p.Shaft.String() }

// PreferredFits returns the fits of a list in its order. A list there is not is
// empty.
func PreferredFits(list FitList) []Preferred {
	var fits []Preferred
	for _, row := range list.rows() {
		hole, shaft, err := ParseFit(row.fit)
		if err != nil {
			continue // a test shows that there is none
		}
		fits = append(fits, Preferred{hole, shaft, row.kind, Use(hole, shaft), list})
	}
	return fits
}

// FirstChoiceHoles returns the classes of holes to be chosen before others, since
// reamers and gauges for them are easiest to come by.
//
// Source: ISO 1829:1975 and ISO 286-1:2010, Figure 10 (from memory).
func FirstChoiceHoles() []Class { return parseClasses(firstHoles[:]) }

// FirstChoiceShafts returns the classes of shafts to be chosen before others.
//
// Source: ISO 1829:1975 and ISO 286-1:2010, Figure 11 (from memory).
func FirstChoiceShafts() []Class { return parseClasses(firstShafts[:]) }

func parseClasses(names []string) []Class {
	var classes []Class
	for _, name := range names {
		if c, err := ParseClass(name); err == nil {
			classes = append(classes, c)
		}
	}
	return classes
}

// Use says in plain words what a fit on hole basis or shaft basis is for, by the
// letter that is not H. It is empty for a fit on neither basis. The words are about
// the usual grades; the limits decide.
//
// Source: Kverneland, Metric Standards for Worldwide Manufacturing (2012), Table
// 6-1, for c, d, f, g, h, k, n, p, s and u; the others are common practice, no source.
func Use(hole, shaft Class) string {
	l := shaft.letter
	switch {
	case hole.letter == lh:
	case shaft.letter == lh:
		l = hole.letter
	default:
		return ""
	}
	for _, u := range uses {
		if u.shaft == l {
			return u.words
		}
	}
	return ""
}

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

// check refuses a range that is none.
func (c Clearance) check() error {
	if !(c.Min <= c.Max) || math.IsInf(float64(c.Min), 0) || math.IsInf(float64(c.Max), 0) {
		return fmt.Errorf("clearance from %v to %v: want the lesser first, interference negative: %w", c.Min, c.Max, units.ErrDomain)
	}
	return nil
}

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
