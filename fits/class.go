package fits

import (
	"fmt"
	"strings"

	"example.com/benchsums/units"
)

// A Class is a tolerance class: a letter or two for the fundamental deviation,
// capital for a hole and small for a shaft, and the number of the standard
// tolerance grade. H7 is a hole, g6 a shaft. "Hole" and "shaft" mean any inner
// and outer feature of size, a groove and a key as well.
//
// Classes compare with ==. The zero Class is none; it is refused where it is
// used. A Class is text: it decodes with ParseClass and is written as on a
// drawing.
//
// Source: ISO 286-1:2010, 4.1.
type Class struct {
	letter letter
	grade  grade
	hole   bool
}

// A letter is a fundamental deviation, in the order of the standard.
type letter uint8

const (
	noLetter letter = iota
	la
	lb
	lc
	lcd
	ld
	le
	lef
	lf
	lfg
	lg
	lh
	ljs
	lj
	lk
	lm
	ln
	lp
	lr
	ls
	lt
	lu
	lv
	lx
	ly
	lz
	lza
	lzb
	lzc
)

var letterNames = [...]string{
	"", "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j", "k", "m", "n", "p",
	"r", "s", "t", "u", "v", "x", "y", "z", "za", "zb", "zc",
}

var capitalNames = [...]string{
	"", "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H", "JS", "J", "K", "M", "N", "P",
	"R", "S", "T", "U", "V", "X", "Y", "Z", "ZA", "ZB", "ZC",
}

// A grade is a column of the table of standard tolerances: 0 for IT01, 1 for IT0,
// n + 1 for ITn.
type grade uint8

const (
	it3  grade = 4
	it4  grade = 5
	it5  grade = 6
	it6  grade = 7
	it7  grade = 8
	it8  grade = 9
	it11 grade = 12
	it14 grade = 15
)

var gradeNames = [...]string{
	"01", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12", "13", "14", "15", "16", "17", "18",
}

// ParseClass reads a tolerance class as a drawing has it: H7, g6, js13, ZC8, H01.
// The case matters, since it tells a hole from a shaft. The error is a
// *units.ParseError; for letters and grades that the standard does not have it
// wraps units.ErrDomain. Whether a class has values depends on the nominal size,
// and Limits says so.
func ParseClass(text string) (Class, error) {
	c, end, msg, kind := scanClass(text, skipSpace(text, 0))
	if msg == "" {
		if end = skipSpace(text, end); end < len(text) {
			msg, kind = "one class, such as H7, and nothing behind it", units.ErrTrailing
		}
	}
	if msg != "" {
		return Class{}, classError(text, end, msg, kind)
	}
	return c, nil
}

func classError(text string, pos int, msg string, kind error) error {
	return &units.ParseError{Kind: "tolerance class", Text: strings.Clone(text), Pos: pos, Msg: msg, Err: kind}
}

// scanClass reads a class at pos and returns where it ends, or where it went
// wrong and how.
func scanClass(text string, pos int) (c Class, end int, msg string, kind error) {
	mid := scanLetters(text, pos)
	if mid == pos {
		return c, pos, "want a letter first, capital for a hole: H7, g6", units.ErrSyntax
	}
	if c, msg = letterOf(text[pos:mid]); msg != "" {
		return c, pos, msg, units.ErrDomain
	}
	start := skipSpace(text, mid)
	end = scanDigits(text, start)
	if end == start {
		return c, start, "want the number of the grade behind the letter: H7, g6", units.ErrSyntax
	}
	g, ok := gradeOf(text[start:end])
	if !ok {
		return c, start, "there is no such grade: want 01, 0 or 1 to 18", units.ErrDomain
	}
	c.grade = g
	return c, end, "", nil
}

// letterOf reads one or two ASCII letters.
func letterOf(s string) (c Class, msg string) {
	hole := s[0] < 'a'
	switch {
	case len(s) == 1:
		c = Class{letter: singles[s[0]|0x20-'a'], hole: hole}
	case len(s) > 2:
	case hole != (s[1] < 'a'):
		return c, "write both letters alike, capitals for a hole and small for a shaft: JS7, js7"
	default:
		c = Class{letter: double(s[0]|0x20, s[1]|0x20), hole: hole}
	}
	if c.letter == noLetter {
		return Class{}, "the standard has no such letter: a to zc without i, l, o, q and w"
	}
	return c, ""
}

// singles finds a letter by its place in the alphabet.
var singles = [26]letter{
	0: la, 'b' - 'a': lb, 'c' - 'a': lc, 'd' - 'a': ld, 'e' - 'a': le, 'f' - 'a': lf, 'g' - 'a': lg, 'h' - 'a': lh,
	'j' - 'a': lj, 'k' - 'a': lk, 'm' - 'a': lm, 'n' - 'a': ln, 'p' - 'a': lp, 'r' - 'a': lr, 's' - 'a': ls, 't' - 'a': lt,
	'u' - 'a': lu, 'v' - 'a': lv, 'x' - 'a': lx, 'y' - 'a': ly, 'z' - 'a': lz,
}

// double finds the letters that come in twos, or noLetter.
func double(first, second byte) letter {
	switch {
	case first == 'c' && second == 'd':
		return lcd
	case first == 'e' && second == 'f':
		return lef
	case first == 'f' && second == 'g':
		return lfg
	case first == 'j' && second == 's':
		return ljs
	case first == 'z' && 'a' <= second && second <= 'c':
		return lza + letter(second-'a')
	}
	return noLetter
}

// gradeOf reads the digits of a grade: 01, 0, 1 to 18.
func gradeOf(digits string) (grade, bool) {
	switch {
	case len(digits) == 1:
		return grade(digits[0]-'0') + 1, true
	case digits == "01":
		return 0, true
	case len(digits) == 2 && digits[0] == '1' && digits[1] <= '8':
		return grade(digits[1]-'0') + 11, true
	}
	return 0, false
}

func scanLetters(s string, pos int) int {
	for pos < len(s) && ('a' <= s[pos] && s[pos] <= 'z' || 'A' <= s[pos] && s[pos] <= 'Z') {
		pos++
	}
	return pos
}

func scanDigits(s string, pos int) int {
	for pos < len(s) && '0' <= s[pos] && s[pos] <= '9' {
		pos++
	}
	return pos
}

func skipSpace(s string, pos int) int {
	for pos < len(s) && (s[pos] == ' ' || s[pos] == '\t') {
		pos++
	}
	return pos
}

// IsHole reports whether c is a class of holes, written with capitals.
func (c Class) IsHole() bool { return c.hole }

// Letters returns the letter or letters of the fundamental deviation: "H", "js".
func (c Class) Letters() string {
	if c.hole {
		return capitalNames[c.letter]
	}
	return letterNames[c.letter]
}

// GradeName returns the standard tolerance grade as Grade takes it: "IT7".
func (c Class) GradeName() string { return "IT" + gradeNames[c.grade] }

// String writes c as on a drawing: H7.
func (c Class) String() string {
	if c.letter == noLetter {
		return "no class"
	}
	return c.Letters() + gradeNames[c.grade]
}

// MarshalText is String, and refuses the zero Class with units.ErrDomain.
func (c Class) MarshalText() ([]byte, error) {
	if c.letter == noLetter {
		return nil, fmt.Errorf("no class: want one such as H7: %w", units.ErrDomain)
	}
	return []byte(c.String()), nil
}

// UnmarshalText is ParseClass for decoders and flags.
func (c *Class) UnmarshalText(text []byte) error {
	parsed, err := ParseClass(string(text))
	if err != nil {
		return err
	}
	*c = parsed
	return nil
}
