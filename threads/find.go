package threads

import (
	"errors"
	"fmt"
	"math"
	"math/bits"
	"slices"
	"strings"

	"example.com/benchsums/units"
)

// ErrUnknown: a designation that reads well and names no thread of any series.
var ErrUnknown = errors.New("no such thread")

// An AmbiguousError is what Find returns when a designation names more than one
// thread: 1/4-20 is UNC at 60° and BSW at 55°. It wraps units.ErrAmbiguous.
type AmbiguousError struct {
	Text       string   // as given
	Candidates []Thread // in the order of the series
}

// Error names the readings, or the first of them where there are many.
func (e *AmbiguousError) Error() string {
	return fmt.Sprintf("%q: which of %s", e.Text, list(e.Candidates, 8))
}

// Unwrap returns units.ErrAmbiguous.
func (e *AmbiguousError) Unwrap() error { return units.ErrAmbiguous }

// An UnknownError is what Find returns when no series has the thread. It wraps
// ErrUnknown.
type UnknownError struct {
	Text string   // as given
	Near []Thread // the nearest to it, nearest first
}

// Error says which threads come near.
func (e *UnknownError) Error() string {
	if len(e.Near) == 0 {
		return fmt.Sprintf("%q: %v", e.Text, ErrUnknown)
	}
	return fmt.Sprintf("%q: %v; near it: %s", e.Text, ErrUnknown, list(e.Near, 8))
}

// Unwrap returns ErrUnknown.
func (e *UnknownError) Unwrap() error { return ErrUnknown }

func list(ts []Thread, most int) string {
	var b strings.Builder
	for i, t := range ts {
		if i == most {
			fmt.Fprintf(&b, " and %d more", len(ts)-most)
			break
		}
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(t.Designation())
	}
	return b.String()
}

// Find returns the thread that a designation names, written as people write
// it: "1/4 BSF", "2BA", "No 4 BA", "M8", "M8 x 1", "3/8-16 UNC", "#10-32",
// "14 mm plug", "G 1/4", "1/4 BSP", "Whit 1/4", `1/4"-26 CEI`, "0.25-26 BSF",
// "Loewenherz 8", "1⅛-9 BSF". Case, spaces and full stops in B.S.F. do not
// matter. It reads back every Designation of the tables.
//
// Without a pitch the series must have one pitch for the size; M8 alone is the
// coarse thread. A bare number from 0 to 12 with a pitch in threads per inch,
// 10-32, is an American number size. BSP without more is the parallel thread G
// and BSPT the taper thread R. CEI looks in the list of 1902 first and then in
// BS 811, BSC the other way about; Whit means BSW where BSW has the pitch, and
// any other series of Whitworth form where it has not.
//
// Where several series have one and the same thread under different names, the
// first of them is returned. Where a designation names threads that differ,
// the error is an *AmbiguousError with all of them; where it names none it is
// an *UnknownError with those that come near; where it cannot be read it is a
// *units.ParseError.
func Find(designation string) (Thread, error) {
	s := scanner{text: designation}
	if err := s.read(); err != nil {
		return Thread{}, err
	}
	q := &s.q
	var found finding
	for _, tier := range q.tiers() {
		q.search(tier, &found)
		if found.series != Special {
			return found.thread(designation)
		}
	}
	return Thread{}, &UnknownError{designation, q.nearest()}
}

// A finding gathers the threads that match, without those that are the same.
type finding struct {
	series Series // of the first, Special for none
	row    int
	more   []Thread // all of them, when there are several
}

func (f *finding) add(s Series, row int) {
	if f.series == Special {
		f.series, f.row = s, row
		return
	}
	first, t := f.series.at(f.row), s.at(row)
	if first.Same(t) || slices.ContainsFunc(f.more, t.Same) {
		return
	}
	if f.more == nil {
		f.more = append(f.more, first)
	}
	f.more = append(f.more, t)
}

// thread returns the only thread found.
func (f *finding) thread(text string) (Thread, error) {
	if f.more != nil {
		return Thread{}, &AmbiguousError{text, f.more}
	}
	return f.series.at(f.row), nil
}

// search adds the threads of the series in set that match.
func (q *query) search(set seriesSet, f *finding) {
	for ; set != 0; set &= set - 1 {
		q.searchSeries(Series(bits.TrailingZeros32(uint32(set))), f)
	}
}

func (q *query) searchSeries(s Series, f *finding) {
	t := &tables[s]
	switch {
	case t.tpi && q.pitchKind == millimetres || !t.tpi && q.pitchKind == inches:
		return
	case s == BA:
		if i := int(q.size); q.kind == number && float64(i) == q.size && i < t.len() && q.hasPitchOf(t, i) {
			f.add(s, i)
		}
		return
	case t.nominal():
		for i := range t.len() {
			if t.nominalSize(i) == q.size && q.kind != millimetres && q.hasPitchOf(t, i) {
				f.add(s, i)
			}
		}
		return
	}
	if q.kind != number && t.unit != q.otherUnit() {
		q.searchRows(s, q.size, f)
	}
	if q.mayBeNumber() && t.form == UnifiedForm {
		q.searchRows(s, numberSize(q.size), f)
	}
}

// searchRows adds the rows of s of the given size, in the unit of its table.
func (q *query) searchRows(s Series, size float64, f *finding) {
	t := &tables[s]
	if last := len(t.rows) - 1; size > t.rows[last].major+q.slack {
		return
	}
	for i := t.from(size - q.slack); i < len(t.rows) && t.rows[i].major <= size+q.slack; i++ {
		if q.hasPitchOf(t, i) {
			f.add(s, i)
		}
	}
}

// otherUnit returns the unit in which the size cannot be, 0 if it can be in any.
func (q *query) otherUnit() units.Length {
	switch q.kind {
	case inches:
		return units.Millimetre
	case millimetres:
		return units.Inch
	}
	return 0
}

// mayBeNumber reports whether the size may be an American number size, which
// run from 0 to 12.
func (q *query) mayBeNumber() bool {
	return (q.kind == number || q.kind == bare) && q.size <= 12 && q.size == math.Trunc(q.size)
}

// numberSize returns the diameter in inches of an American number size,
// 0.060 + 0.013 n, to the thousandth it is made of.
func numberSize(n float64) float64 { return math.Round(60+13*n) / 1000 }

// hasPitchOf reports whether row i has the pitch asked for, or none was.
func (q *query) hasPitchOf(t *table, i int) bool {
	return q.pitch == 0 || t.printedPitch(i) == q.pitch
}

// from returns the first row of t that is not smaller than size.
func (t *table) from(size float64) int {
	lo, hi := 0, len(t.rows)
	for lo < hi {
		if mid := (lo + hi) / 2; t.rows[mid].major < size {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	return lo
}

func (t *table) printedPitch(i int) float64 {
	if i < len(t.listed) {
		return t.listed[i].pitch
	}
	return t.rows[i-len(t.listed)].pitch
}

// nominal reports whether the sizes of t are names and not diameters.
func (t *table) nominal() bool { return t.sizes != nil || len(t.listed) > 0 }

// nominalSize returns the nominal size of row i of a pipe table.
func (t *table) nominalSize(i int) float64 {
	if t.sizes != nil {
		return t.sizes[i]
	}
	return t.listed[i].size
}
