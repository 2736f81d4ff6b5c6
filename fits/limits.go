package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Size is a nominal size with its tolerance class worked out.
type Size struct {
	Nominal units.Length
	Class   Class

	// Lower and Upper are the limit deviations with their sign: EI and ES of a
	// hole, ei and es of a shaft.
	Lower, Upper units.Length

	// Min and Max are the limits of size: the nominal size and the deviations
	// added.
	Min, Max units.Length

	// Note says what to know about where the figure comes from. It is empty for
	// all but the few figures that printed sources do not agree on or that rest
	// on memory, and for coarse grades on sizes so small that Min is not above 0.
	Note string
}

// Limits returns the limits of a nominal size in a tolerance class, "H7" or "g6",
// by ISO 286. It is System{}.Limits.
//
// The error is a *units.ParseError for text that is not a class, and an
// *UndefinedError for a class that has no value at this size; nothing is
// extrapolated. Both wrap units.ErrDomain for what the standard does not have.
func Limits(nominal units.Length, class string) (Size, error) {
	return System{}.Limits(nominal, class)
}

// Grade returns the standard tolerance of a nominal size in a grade, "IT01" to
// "IT18", by ISO 286. It is System{}.Grade.
func Grade(nominal units.Length, grade string) (units.Length, error) {
	return System{}.Grade(nominal, grade)
}

// A System is a way of reading the standard. The zero System is ISO 286-1:2010
// with every half micrometre kept; the fields turn on what drawings of another
// time or place may mean instead.
type System struct {
	// WholeJS lowers an odd tolerance of JS and js in IT7 to IT11 to the even
	// number below, so that both deviations are whole micrometres, as ISO
	// 286-1:1988 and BS 4500 allow and several printed tables do: 25 JS7 is then
	// ±10 µm in place of ±10.5 µm.
	//
	// Source: Machine Drawing, notes on pp. 215 and 219.
	WholeJS bool

	// ISA answers by the ISA system that came before ISO (ISA Bulletin 25, DIN 7160
	// and 7161). Over 1 and up to 3 mm it has other figures, of which f, g, h, j6, n
	// and p in IT5 to IT7 are known here; j5 and j6 differ over 3 and up to 6 mm.
	// From there up to 180 mm it is taken from ISO 286, with which it agrees where it
	// was compared. All else is refused.
	//
	// Source: Spanish reprint of a DIN 7160 table of shafts.
	ISA bool

	t *tables // nil for ISO 286
}

func (s System) tables() *tables {
	if s.t != nil {
		return s.t
	}
	return &iso
}

// Limits returns the limits of a nominal size in a tolerance class. Errors as for
// the function Limits.
func (s System) Limits(nominal units.Length, class string) (Size, error) {
	c, err := ParseClass(class)
	if err != nil {
		return Size{}, err
	}
	return s.Size(nominal, c)
}

// Size returns the limits of a nominal size in class c. The error is an
// *UndefinedError.
func (s System) Size(nominal units.Length, c Class) (Size, error) {
	lower, upper, note, why := s.deviations(nominal, c)
	if why != "" {
		return Size{}, &UndefinedError{Nominal: nominal, What: c.String(), Why: why}
	}
	lo, up := micrometres(lower), micrometres(upper)
	if !(nominal+lo > 0) {
		note = noteNothing
	}
	return Size{Nominal: nominal, Class: c, Lower: lo, Upper: up, Min: nominal + lo, Max: nominal + up, Note: note}, nil
}

// micrometres divides rather than multiplies, since a power of ten divides
// without error and a millionth does not multiply without one: 21 µm is then the
// very number nearest to it.
func micrometres(um float64) units.Length { return units.Length(um) * units.Metre / 1e6 }

// deviations returns the limits of c at a nominal size in micrometres, or why
// there are none.
func (s System) deviations(nominal units.Length, c Class) (lower, upper float64, note, why string) {
	p, why := placeOf(nominal)
	if why != "" {
		return 0, 0, "", why
	}
	if c.letter == noLetter {
		return 0, 0, "", "want a class such as H7 or g6"
	}
	t := s.tables()
	it, why := t.grade(c.grade, p)
	if why != "" {
		return 0, 0, "", why
	}
	fd, why := t.deviation(c, p)
	if why != "" {
		return 0, 0, "", why
	}
	note = noteOf(c, p)
	if s.ISA {
		if it, fd, note, why = isa(c, p, it, fd); why != "" {
			return 0, 0, "", why
		}
	}
	lower, upper = s.zone(c, fd, it)
	return lower, upper, note, ""
}

// zone puts the tolerance on its side of the fundamental deviation.
func (s System) zone(c Class, fd, it float64) (lower, upper float64) {
	switch {
	case c.letter == ljs:
		half := s.half(it, c.grade)
		return -half, half
	case c.letter <= lh == c.hole: // A to H, and j to zc: fd is the lower limit
		return fd, fd + it
	}
	return fd - it, fd
}

// half is the deviation of JS and js.
func (s System) half(it float64, g grade) float64 {
	if s.WholeJS && it7 <= g && g <= it11 {
		return math.Floor(it / 2)
	}
	return it / 2
}

// Grade returns the standard tolerance of a nominal size in a grade, "IT01" to
// "IT18". The error is a *units.ParseError for text that is not a grade, and an
// *UndefinedError where the standard has no value: IT01 and IT0 over 500 mm, IT14
// to IT18 up to 1 mm, any size over 3150 mm.
//
// Source: ISO 286-1:2010, Table 1.
func (s System) Grade(nominal units.Length, grade string) (units.Length, error) {
	g, err := parseGrade(grade)
	if err != nil {
		return 0, err
	}
	p, why := placeOf(nominal)
	var it float64
	if why == "" {
		it, why = s.tables().grade(g, p)
	}
	if why == "" && s.ISA {
		it, _, _, why = isa(Class{letter: lh, grade: g}, p, it, 0)
	}
	if why != "" {
		return 0, &UndefinedError{Nominal: nominal, What: "IT" + gradeNames[g], Why: why}
	}
	return micrometres(it), nil
}

// parseGrade reads IT7.
func parseGrade(text string) (grade, error) {
	start := skipSpace(text, 0)
	if !(len(text) >= start+2 && (text[start] == 'I' || text[start] == 'i') && (text[start+1] == 'T' || text[start+1] == 't')) {
		return 0, gradeError(text, start, "want IT and a number, IT01, IT0 or IT1 to IT18", units.ErrSyntax)
	}
	start = skipSpace(text, start+2)
	end := scanDigits(text, start)
	if end == start {
		return 0, gradeError(text, start, "want the number of the grade behind IT", units.ErrSyntax)
	}
	g, ok := gradeOf(text[start:end])
	if !ok {
		return 0, gradeError(text, start, "there is no such grade: want IT01, IT0 or IT1 to IT18", units.ErrDomain)
	}
	if end = skipSpace(text, end); end < len(text) {
		return 0, gradeError(text, end, "one grade, such as IT7, and nothing behind it", units.ErrTrailing)
	}
	return g, nil
}

func gradeError(text string, pos int, msg string, kind error) error {
	return &units.ParseError{Kind: "standard tolerance grade", Text: text, Pos: pos, Msg: msg, Err: kind}
}

// An UndefinedError says that the standard has no value for what was asked.
type UndefinedError struct {
	Nominal units.Length // the nominal size that was asked for
	What    string       // the class or grade: "T7", "IT01"
	Why     string       // what the standard says
}

// Error gives the class, the size and what the standard says.
func (e *UndefinedError) Error() string {
	return fmt.Sprintf("%s at %v is not defined: %s", e.What, e.Nominal, e.Why)
}

// Unwrap returns units.ErrDomain.
func (e *UndefinedError) Unwrap() error { return units.ErrDomain }
