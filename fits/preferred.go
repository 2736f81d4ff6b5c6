package fits

import "fmt"

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
