package threads

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"example.com/benchsums/units"
)

// A DrillSet is a series that twist drills are sold in.
type DrillSet uint8

// The sets. OwnDrill is a drill that NewDrill makes.
const (
	MetricDrill   DrillSet = iota + 1 // 0.2 to 25 mm
	NumberDrill                       // #80 to #1, the wire gauge
	LetterDrill                       // A to Z
	FractionDrill                     // 64ths to 1 in, 32nds to 2 in
	OwnDrill
)

// String returns the set in a word.
func (s DrillSet) String() string {
	switch s {
	case MetricDrill:
		return "metric"
	case NumberDrill:
		return "number"
	case LetterDrill:
		return "letter"
	case FractionDrill:
		return "fractional"
	case OwnDrill:
		return "own"
	}
	return "unknown set"
}

// A Drill is a twist drill: what it is called and how large it is. It is made
// by Drills, FindDrill and NewDrill; the zero Drill is none.
type Drill struct {
	name     string
	diameter units.Length
	set      DrillSet
	source   drillSource
}

// NewDrill returns a drill of the reader's own, such as a worn or reground one
// or a reamer. The name is for the answer only; an empty one becomes the
// diameter. The error wraps units.ErrDomain for a diameter that is not more
// than 0.
func NewDrill(name string, diameter units.Length) (Drill, error) {
	if !(diameter > 0) || math.IsInf(float64(diameter), 0) {
		return Drill{}, fmt.Errorf("drill diameter %v: want more than 0 mm: %w", diameter, units.ErrDomain)
	}
	if name == "" {
		name = diameter.String()
	}
	return Drill{name: name, diameter: diameter, set: OwnDrill}, nil
}

// Name returns what the drill is called: "4.2 mm", "#29", "F", "5/32 in".
// FindDrill reads it back unless the drill is the reader's own.
func (d Drill) Name() string { return d.name }

// Diameter returns the nominal diameter. A drill cuts a little larger than it
// is, by 0.05 to 0.1 mm at 6 mm in a hand-held machine (common practice, no
// source).
func (d Drill) Diameter() units.Length { return d.diameter }

// Set returns the set the drill belongs to.
func (d Drill) Set() DrillSet { return d.set }

// FromMemory reports whether the size was not found in print.
func (d Drill) FromMemory() bool { return d.source == fromMemory && d.set != OwnDrill }

// Source returns where the size was found.
func (d Drill) Source() string {
	switch d.set {
	case MetricDrill:
		return "BS 328 preferred series, by the rule in the ipqcco.com drill chart"
	case FractionDrill:
		return "exact: 64ths and 32nds of an inch"
	case OwnDrill:
		return "the reader's own"
	}
	return d.source.String()
}

func (s drillSource) String() string {
	const list, chart = "Toolmex drill size equivalents", "printed thread, drill and tap chart (docslib 4942776)"
	switch s {
	case fromList:
		return "ANSI B94.11M: " + list
	case fromChart:
		return "ANSI B94.11M: " + chart
	case fromBoth:
		return "ANSI B94.11M: " + list + "; " + chart
	}
	return "ANSI B94.11M: from memory"
}

// String returns the name and the size: "#29 (3.454 mm)".
func (d Drill) String() string {
	if d.set == MetricDrill || d.set == OwnDrill && d.name == d.diameter.String() {
		return d.name
	}
	return fmt.Sprintf("%s (%.3f mm)", d.name, d.diameter.Millimetres())
}

// Drills returns the drills of the given sets, smallest first, or of all four
// when none is given. Where two sets have the very same size, as letter E and
// 1/4 in, both are there.
func Drills(sets ...DrillSet) []Drill {
	if len(sets) == 0 {
		sets = []DrillSet{MetricDrill, NumberDrill, LetterDrill, FractionDrill}
	}
	var all []Drill
	for i, s := range sets {
		if !slices.Contains(sets[:i], s) {
			all = s.appendTo(all)
		}
	}
	slices.SortStableFunc(all, func(a, b Drill) int { return compareLengths(a.diameter, b.diameter) })
	return all
}

func compareLengths(a, b units.Length) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

func (s DrillSet) appendTo(all []Drill) []Drill {
	switch s {
	case MetricDrill:
		return appendMetric(all)
	case NumberDrill:
		for i := range numberDrills {
			all = append(all, numberDrill(i))
		}
	case LetterDrill:
		for i := range letterDrills {
			all = append(all, letterDrill(i))
		}
	case FractionDrill:
		for _, run := range fractionDrills {
			for n := run.from; n <= run.to; n += run.step {
				all = append(all, fractionDrill(n))
			}
		}
	}
	return all
}

func numberDrill(i int) Drill {
	r := numberDrills[i]
	return Drill{"#" + strconv.Itoa(r.no), units.Length(r.size) * units.Inch, NumberDrill, r.source}
}

func letterDrill(i int) Drill {
	r := letterDrills[i]
	return Drill{string(r.letter), units.Length(r.size) * units.Inch, LetterDrill, r.source}
}

// fractionDrill returns the drill of n 64ths of an inch.
func fractionDrill(n int) Drill {
	return Drill{name: fractionName(n), diameter: units.Length(n) / 64 * units.Inch, set: FractionDrill}
}

// fractionName writes n 64ths of an inch in lowest terms: "1 3/32 in".
func fractionName(n int) string {
	whole, top, bottom := n/64, n%64, 64
	for top != 0 && top%2 == 0 {
		top, bottom = top/2, bottom/2
	}
	switch {
	case top == 0:
		return fmt.Sprintf("%d in", whole)
	case whole == 0:
		return fmt.Sprintf("%d/%d in", top, bottom)
	}
	return fmt.Sprintf("%d %d/%d in", whole, top, bottom)
}

func appendMetric(all []Drill) []Drill {
	for tenth := 20; tenth < 100; tenth += 10 {
		for _, end := range metricDrillEnds {
			all = append(all, metricDrill(tenth+end))
		}
	}
	for _, run := range metricDrills {
		for h := run.from; h <= run.to; h += run.step {
			all = append(all, metricDrill(h))
		}
	}
	return all
}

// metricDrill returns the drill of h hundredths of a millimetre.
func metricDrill(h int) Drill {
	mm := float64(h) / 100
	return Drill{name: strconv.FormatFloat(mm, 'f', -1, 64) + " mm", diameter: units.Length(mm) * units.Millimetre, set: MetricDrill}
}
