package fits

import (
	"math"

	"example.com/benchsums/units"
)

// __ is a gap in a printed table.
const __ = math.MinInt16

type (
	gradeRow [20]float64 // IT01, IT0, IT1 to IT18
	shaftRow [16]int16
	holeRow  [18]int16
	fineRow  [14]int16
	deltaRow [6]float64 // IT3 to IT8
)

// tables are all the figures of the standard. The functions that read them take
// them as an argument, so that a test can hand in tables with a slip in them.
type tables struct {
	grades     [len(mainTo)]gradeRow
	shafts     [len(mainTo)]shaftRow
	shaftsFine [len(fineTo)]fineRow
	holes      [len(mainTo)]holeRow
	holesFine  [len(fineTo)]fineRow
	deltas     [last500 + 1]deltaRow
}

// iso is never written to.
var iso = tables{gradesISO, shaftsISO, shaftsFineISO, holesISO, holesFineISO, deltasISO}

// The upper ends of the nominal size ranges in millimetres. Each range is over
// the end before it and up to and including its own.
var (
	mainTo = [...]float64{
		3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500,
		630, 800, 1000, 1250, 1600, 2000, 2500, 3150,
	}
	fineTo = [...]float64{
		3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
		560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150,
	}
)

// firstFine is the first fine range within each main range.
var firstFine = [len(mainTo)]int{0, 1, 2, 3, 5, 7, 9, 11, 13, 16, 19, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39}

// Rows that the exceptions of the standard name.
const (
	to3     = 0  // up to 3 mm
	to10    = 2  // over 6 up to 10 mm
	to50    = 5  // over 30 up to 50 mm
	to315   = 10 // over 250 up to 315 mm
	last500 = 12 // over 400 up to 500 mm
)

// A place is where a nominal size stands in the tables.
type place struct {
	main, fine int
	tiny       bool // up to and including 1 mm
}

// placeOf finds the rows of a nominal size, or says why there are none. A size
// within a part in 10¹² above the end of a range still belongs to it, so that 3
// mm reckoned from inches does not fall into the next.
func placeOf(nominal units.Length) (p place, why string) {
	mm := float64(nominal * (units.Metre / units.Millimetre)) // a constant: quicker than a division
	if !(mm > 0) {
		return place{}, "a nominal size is more than 0 mm"
	}
	mm *= 1 - 1e-12
	if !(mm <= mainTo[len(mainTo)-1]) {
		return place{}, "the standard ends at 3150 mm"
	}
	p = place{main: rowOf(mainTo[:], mm), tiny: mm <= 1}
	for p.fine = firstFine[p.main]; mm > fineTo[p.fine]; p.fine++ {
	}
	return p, ""
}

// rowOf returns the first range that ends at mm or above.
func rowOf(ends []float64, mm float64) int {
	lo, n := 0, len(ends)-1
	for n > 0 {
		half := (n + 1) / 2
		if mm > ends[lo+half-1] {
			lo += half
		}
		n -= half
	}
	return lo
}
