package threads

import (
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/units"
)

// An isoClass is a tolerance class of ISO 965-1 taken apart: 5g6g is grade 5
// for the effective diameter, 6 for the crest, and position g for both.
type isoClass struct {
	effective, crest int
	position         byte
}

// isoLimits returns limits of ISO 965-1 from its tables.
//
//	bolt   d = D + es         Td, Td2 below it   root no lower than d₂min − 0.616025p
//	nut    D₁ = basic + EI    TD1, TD2 above it
//
// The basic diameters are taken to 0.001 mm, as ISO 724 prints them.
func (t Thread) isoLimits(p Part, class string) (Limits, error) {
	c, err := parseISOClass(p, class)
	if err != nil {
		return Limits{}, fmt.Errorf("class %q of %v: %w", class, t, err)
	}
	l := Limits{Thread: t, Part: p, Class: class, Source: "ISO 965-1 tables (sources beside them)"}
	deviation, memory1, err1 := t.isoDeviation(c.position)
	crest, memory2, err2 := t.isoCrest(p, c.crest)
	effective, memory3, err3 := t.isoEffective(p, c.effective)
	for _, err := range [...]error{err1, err2, err3} {
		if err != nil {
			return Limits{}, err
		}
	}
	l.FromMemory = memory1 || memory2 || memory3
	d, d2 := t.major+deviation, toMicrometre(t.effective)+deviation
	if p == Nut {
		l.Major = orMore(d)
		l.Effective = up(d2, effective)
		l.Minor = up(toMicrometre(t.minor)+deviation, crest)
		return l, nil
	}
	l.Major = down(d, crest)
	l.Effective = down(d2, effective)
	h := t.form.Height(t.pitch)
	// From the flat root of the basic profile down to the rounded one.
	l.Minor = Range{l.Effective.Min - rootBelow*h, l.Effective.Max - h/2}
	return l, nil
}

// rootBelow is 0.616025p over H: how far the rounded root may lie below the
// least effective diameter (Machinery's Handbook, 27th ed., p. 1794).
const rootBelow = 0.616025 / h60

// toMicrometre rounds to 0.001 mm.
func toMicrometre(l units.Length) units.Length {
	return units.Length(math.Round(l.Micrometres())) * units.Micrometre
}

// NormalEngagement returns the range of lengths of engagement that ISO 965-1
// calls normal, N, for which its tolerances are meant:
//
//	2.24 P d^0.2 to 6.7 P d^0.2   millimetres
//
// with d the smallest diameter of the range of diameters the thread is in. The
// tables of the standard print these lengths to a rounded figure, up to a
// tenth away: 3 to 9 mm for M6x1, 8.5 to 25 mm for M24x2. The error wraps
// units.ErrDomain for a thread that is not ISO metric or outside the tables.
//
// Source: ISO 965-1; Machinery's Handbook, 27th ed., pp. 1792 and 1817.
func (t Thread) NormalEngagement() (Range, error) {
	if t.system() == ISOForm {
		for i := range isoTd2 {
			if d := t.major.Millimetres(); d > isoTd2[i].over*(1+1e-9) && d <= isoTd2[i].upTo*(1+1e-9) {
				group := t.pitch * units.Length(math.Pow(isoTd2[i].over, 0.2))
				return Range{2.24 * group, 6.7 * group}, nil
			}
		}
	}
	return Range{}, fmt.Errorf("%v: ISO 965-1 has no normal length of engagement for it: %w", t, units.ErrDomain)
}

// parseISOClass reads a class such as 6g, 5g6g, 6H.
func parseISOClass(p Part, class string) (isoClass, error) {
	effective, crest := class, class
	if len(class) == 4 {
		effective, crest = class[:2], class[2:]
	}
	if !isISOClass(p, effective) || !isISOClass(p, crest) {
		if p == Nut {
			return isoClass{}, fmt.Errorf("a nut wants 6H, 6G, 5H6H or the like: a grade from 4 to 8 and a position of G, H: %w", units.ErrDomain)
		}
		return isoClass{}, fmt.Errorf("a bolt wants 4h, 6g, 5g6g or the like: a grade from 3 to 9 and a position of e, f, g, h: %w", units.ErrDomain)
	}
	if effective[1] != crest[1] {
		return isoClass{}, fmt.Errorf("a class with two positions, %c and %c: want one: %w", effective[1], crest[1], units.ErrDomain)
	}
	return isoClass{int(effective[0] - '0'), int(crest[0] - '0'), crest[1]}, nil
}

// isISOClass reports whether s is a grade and a position of the part.
func isISOClass(p Part, s string) bool {
	if len(s) != 2 || s[0] < '3' || s[0] > '9' {
		return false
	}
	if p == Nut {
		return s[1] == 'G' || s[1] == 'H'
	}
	return 'e' <= s[1] && s[1] <= 'h'
}

// isoDeviation returns es of a bolt or EI of a nut, and whether it is from
// memory.
func (t Thread) isoDeviation(position byte) (units.Length, bool, error) {
	if position == 'h' || position == 'H' {
		return 0, false, nil
	}
	if r := isoPitchRow(isoDeviations, t.pitch); r != nil {
		if um, memory, ok := r.cell(strings.IndexByte("efgG", position)); ok {
			return um, memory, nil
		}
	}
	return 0, false, fmt.Errorf("%v: ISO 965-1 has no position %c at pitch %v: %w", t, position, t.pitch, units.ErrDomain)
}

// isoCrest returns the tolerance of the diameter at the crests: Td of a bolt,
// which has grades 4, 6 and 8, TD1 of a nut.
func (t Thread) isoCrest(p Part, grade int) (units.Length, bool, error) {
	rows, column := isoTD1, grade-4
	if p == Bolt {
		rows, column = isoTd, [...]int{4: 0, 6: 1, 8: 2, 3: gone, 5: gone, 7: gone, 9: gone}[grade]
	}
	if r := isoPitchRow(rows, t.pitch); r != nil {
		if um, memory, ok := r.cell(column); ok {
			return um, memory, nil
		}
	}
	return 0, false, fmt.Errorf("%v: ISO 965-1 has no grade %d for the crests of a %v at pitch %v: %w", t, grade, p, t.pitch, units.ErrDomain)
}

// gone is a column that the table does not have.
const gone = -1

// isoEffective returns the tolerance of the effective diameter, Td2 or TD2.
func (t Thread) isoEffective(p Part, grade int) (units.Length, bool, error) {
	rows, column := isoTd2, grade-3
	if p == Nut {
		rows, column = isoTD2, grade-4
	}
	if r := isoRangeRow(rows, t.major.Millimetres(), t.pitch); r != nil {
		if um, memory, ok := r.cell(column); ok {
			return um, memory, nil
		}
	}
	return 0, false, fmt.Errorf("%v: ISO 965-1 has no grade %d for the effective diameter of a %v of %v at pitch %v: %w",
		t, grade, p, t.major, t.pitch, units.ErrDomain)
}

func isoPitchRow(rows []pitchRow, pitch units.Length) *pitchRow {
	for i := range rows {
		if near(units.Length(rows[i].pitch)*units.Millimetre, pitch) {
			return &rows[i]
		}
	}
	return nil
}

func isoRangeRow(rows []rangeRow, mm float64, pitch units.Length) *pitchRow {
	for i := range rows {
		r := &rows[i]
		if mm > r.over*(1+1e-9) && mm <= r.upTo*(1+1e-9) && near(units.Length(r.pitch)*units.Millimetre, pitch) {
			return &r.pitchRow
		}
	}
	return nil
}

// cell returns the figure in a column and whether it is from memory, false
// last where the table has none.
func (r *pitchRow) cell(column int) (um units.Length, memory, ok bool) {
	if column < 0 || column >= len(r.um) || r.um[column] == gap {
		return 0, false, false
	}
	return units.Length(r.um[column]) * units.Micrometre, r.marks[column] == memoryLetter, true
}
