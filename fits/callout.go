package fits

import (
	"errors"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/benchsums/units"
)

// A Callout is a nominal size with a class or a fit, as it stands on a drawing.
// Hole or Shaft is the zero Class when the drawing gives the other alone.
type Callout struct {
	Nominal     units.Length
	Hole, Shaft Class
}

// ParseCallout reads what a drawing has: 25H7, 25 H7/g6, 25 H7-g6, Ø25 g6, 25 mm
// H7, 1 in H7, 1 3/16 in H7/h6. A number without a unit is in millimetres, since
// ISO 286 has no other unit; a fraction without one is refused, because whoever
// writes fractions means inches. The error is a *units.ParseError.
func ParseCallout(text string) (Callout, error) {
	body := trimDiameter(text)
	from := len(strings.TrimRightFunc(text, unicode.IsSpace)) - len(body) // where body stands in text
	hole, shaft, at, err := trailingClasses(body)
	if err != nil {
		return Callout{}, calloutError(text, from+at, len(text), err)
	}
	number := strings.TrimRight(body[:at], " \t")
	end := from + len(number)
	switch last, _ := utf8.DecodeLastRuneInString(number); {
	case number == "":
		return Callout{}, refusedCallout(text, from, noNominal(hole, shaft), units.ErrSyntax)
	case !isDigit(last) && last != '.':
	case strings.ContainsAny(number, "/⁄"):
		return Callout{}, refusedCallout(text, from, fmt.Sprintf("a fraction without a unit: write %s in, or mm", number), units.ErrNoUnit)
	default:
		number += " mm"
	}
	nominal, err := units.ParseLength(number)
	if err != nil {
		return Callout{}, calloutError(text, from, end, err)
	}
	return Callout{nominal, hole, shaft}, nil
}

func refusedCallout(text string, pos int, msg string, kind error) error {
	return &units.ParseError{Kind: "size and class", Text: strings.Clone(text), Pos: pos, Msg: msg, Err: kind}
}

// calloutError is what was wrong with the part of text that begins at from, told of the
// whole text. The place is no further than end, since the unit behind may be our own.
func calloutError(text string, from, end int, err error) error {
	var part *units.ParseError
	if !errors.As(err, &part) {
		return refusedCallout(text, from, err.Error(), units.ErrSyntax)
	}
	return refusedCallout(text, min(from+part.Pos, end), part.Msg, part.Err)
}

// noNominal says what is missing before a class or a fit that stands alone.
func noNominal(hole, shaft Class) string {
	if hole != (Class{}) && shaft != (Class{}) {
		return fmt.Sprintf("no nominal size: want 25 %v/%v; ParseFit reads a fit alone", hole, shaft)
	}
	if hole == (Class{}) {
		hole = shaft
	}
	return fmt.Sprintf("no nominal size: want 25 %v; ParseClass reads a class alone", hole)
}

// trimDiameter takes off the sign of diameter.
func trimDiameter(s string) string {
	s = strings.TrimSpace(s)
	for _, sign := range [...]string{"Ø", "ø", "⌀", "∅", "dia", "Dia", "DIA"} {
		if rest, ok := strings.CutPrefix(s, sign); ok {
			return strings.TrimLeft(strings.TrimPrefix(rest, "."), " \t")
		}
	}
	return s
}

// trailingClasses reads the class or the fit at the end of a callout and says
// where it begins.
func trailingClasses(s string) (hole, shaft Class, at int, err error) {
	at = lastClass(s)
	if at < 0 {
		return hole, shaft, 0, classError(s, len(s), "no class at the end: want 25 H7 or 25 H7/g6", units.ErrSyntax)
	}
	if first := lastClass(trimBar(s[:at])); first >= 0 {
		hole, shaft, err = ParseFit(s[first:])
		return hole, shaft, first, err
	}
	c, err := ParseClass(s[at:])
	if c.hole {
		return c, shaft, at, err
	}
	return hole, c, at, err
}

// lastClass returns where the letters and digits at the end of s begin, or −1. The
// letters must not be part of a word.
func lastClass(s string) int {
	s = strings.TrimRight(s, " \t")
	digits := len(s)
	for digits > 0 && '0' <= s[digits-1] && s[digits-1] <= '9' {
		digits--
	}
	end := len(strings.TrimRight(s[:digits], " \t"))
	letters := end
	for letters > 0 && scanLetters(s[:end], letters-1) == end {
		letters--
	}
	if digits == len(s) || letters == end || end-letters > 2 {
		return -1
	}
	if _, msg := letterOf(s[letters:end]); msg != "" && !looksLikeClass(s[letters:end]) {
		return -1
	}
	return letters
}

// looksLikeClass tells a mistyped class from a unit with a number behind it.
func looksLikeClass(letters string) bool {
	_, err := units.ParseLength("1 " + letters)
	return err != nil
}

func trimBar(s string) string {
	s = strings.TrimRight(s, " \t")
	for _, bar := range [...]string{"/", "-", "–", "⁄"} {
		if rest, ok := strings.CutSuffix(s, bar); ok {
			return rest
		}
	}
	return s
}

func isDigit(r rune) bool { return '0' <= r && r <= '9' }

// IsFit reports whether both parts have a class.
func (c Callout) IsFit() bool { return c.Hole != Class{} && c.Shaft != Class{} }

// Limits returns the limits of the one part that has a class. The error is an
// *UndefinedError, or wraps units.ErrDomain for a fit, which has two parts.
func (c Callout) Limits() (Size, error) {
	switch {
	case c.IsFit():
		return Size{}, fmt.Errorf("%v has two parts: ask for the fit: %w", c, units.ErrDomain)
	case c.Hole != Class{}:
		return System{}.Size(c.Nominal, c.Hole)
	}
	return System{}.Size(c.Nominal, c.Shaft)
}

// Fit returns both parts. The error is an *UndefinedError, or wraps
// units.ErrDomain for a callout with one class.
func (c Callout) Fit() (Mating, error) {
	if !c.IsFit() {
		return Mating{}, fmt.Errorf("%v has one part: want two classes, such as H7/g6: %w", c, units.ErrDomain)
	}
	return System{}.Mate(c.Nominal, c.Hole, c.Shaft)
}

// String writes the callout with its unit: "25 mm H7/g6".
func (c Callout) String() string {
	switch {
	case c.IsFit():
		return fmt.Sprintf("%v %v/%v", c.Nominal, c.Hole, c.Shaft)
	case c.Hole != Class{}:
		return fmt.Sprintf("%v %v", c.Nominal, c.Hole)
	}
	return fmt.Sprintf("%v %v", c.Nominal, c.Shaft)
}

// MarshalText writes the callout so that UnmarshalText gives the very same back. The
// error is that of the nominal size, or wraps units.ErrDomain when there is no class.
func (c Callout) MarshalText() ([]byte, error) {
	size, err := c.Nominal.MarshalText()
	if err != nil {
		return nil, err
	}
	if c.Hole == (Class{}) && c.Shaft == (Class{}) {
		return nil, fmt.Errorf("%v without a class: want one such as H7: %w", c.Nominal, units.ErrDomain)
	}
	rest := strings.TrimPrefix(c.String(), c.Nominal.String())
	return append(size, rest...), nil
}

// UnmarshalText is ParseCallout for decoders and flags.
func (c *Callout) UnmarshalText(text []byte) error {
	parsed, err := ParseCallout(string(text))
	if err != nil {
		return err
	}
	*c = parsed
	return nil
}
