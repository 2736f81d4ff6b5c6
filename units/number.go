package units

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"
)

// A number as written: a decimal, a fraction, or a whole number and a
// fraction. The parts are kept apart so that each is rounded once.
type number struct {
	text     string  // as written, for messages
	negative bool    // there was a minus sign
	signed   bool    // there was a sign
	whole    bool    // a plain whole number
	decimal  float64 // the decimal, or the whole part
	num, den float64 // the fraction, 0/1 if none
}

func (n number) value() float64 {
	v := n.decimal
	if n.num != 0 {
		v = (n.decimal*n.den + n.num) / n.den
	}
	if n.negative {
		return -v
	}
	return v
}

// number reads a number at pos and returns where it ends.
func (p *parser) number(pos int) (number, int, error) {
	n := number{den: 1, whole: true}
	start := pos
	switch r, size := utf8.DecodeRuneInString(p.text[pos:]); r {
	case '-', '−':
		n.negative, n.signed = true, true
		pos += size
	case '+':
		n.signed = true
		pos += size
	}
	digits := scanDecimal(p.text, pos)
	if digits == pos {
		if v := vulgar(p.text, pos); v.size > 0 { // ⅜
			n.num, n.den, n.whole = v.num, v.den, false
			n.text = p.text[start : pos+v.size]
			return n, pos + v.size, nil
		}
		return n, pos, p.noNumber(pos)
	}
	if digits < len(p.text) && p.text[digits] == ',' {
		return n, pos, p.comma(start, pos, digits)
	}
	var err error
	if n.decimal, err = p.float(pos, digits); err != nil {
		return n, pos, err
	}
	n.whole = isDigits(p.text[pos:digits])
	end := digits
	if n.whole {
		if end, err = p.fraction(&n, pos, digits); err != nil {
			return n, pos, err
		}
	}
	n.text = p.text[start:end]
	return n, end, nil
}

// fraction looks for what makes a whole number a fraction or a mixed number:
// 3/8, 1 3/16, 1-3/16, 1⅜. It returns where the number ends.
func (p *parser) fraction(n *number, pos, digits int) (int, error) {
	if slash := slashAt(p.text, digits); slash > 0 { // 3/8
		den := scanDigits(p.text, digits+slash)
		if den == digits+slash {
			return digits, p.fail(digits+slash, ErrSyntax, "a fraction without its lower number")
		}
		top := n.decimal
		n.decimal = 0
		return den, p.setFraction(n, top, pos, digits+slash, den)
	}
	next := skipSpace(p.text, digits)
	if next < len(p.text) && p.text[next] == '-' {
		next = skipSpace(p.text, next+1)
	}
	if v := vulgar(p.text, next); v.size > 0 { // 1⅜, 1-⅜
		n.num, n.den, n.whole = v.num, v.den, false
		return next + v.size, nil
	}
	if next == digits {
		return digits, nil
	}
	top := scanDigits(p.text, next)
	slash := slashAt(p.text, top)
	if top == next || slash == 0 {
		return digits, nil // the digits belong to something else
	}
	den := scanDigits(p.text, top+slash)
	if den == top+slash {
		return digits, p.fail(top+slash, ErrSyntax, "a fraction without its lower number")
	}
	num, err := p.float(next, top)
	if err != nil {
		return digits, err
	}
	if err := p.setFraction(n, num, next, top+slash, den); err != nil {
		return digits, err
	}
	if n.num >= n.den {
		return digits, p.fail(next, ErrSyntax, "%s after a whole number: want a fraction below 1", p.text[next:den])
	}
	return den, nil
}

// setFraction stores num over the digits text[from:to].
func (p *parser) setFraction(n *number, num float64, at, from, to int) error {
	den, err := p.float(from, to)
	if err != nil {
		return err
	}
	if den == 0 {
		return p.fail(at, ErrSyntax, "%s: a fraction over nothing", p.text[at:to])
	}
	n.num, n.den, n.whole = num, den, false
	return nil
}

// float reads the decimal text[from:to].
func (p *parser) float(from, to int) (float64, error) {
	v, err := strconv.ParseFloat(p.text[from:to], 64)
	if errors.Is(err, strconv.ErrRange) && math.IsInf(v, 0) {
		return 0, p.fail(from, ErrNotFinite, "%s: too large to hold", p.text[from:to])
	}
	if err != nil && !errors.Is(err, strconv.ErrRange) {
		return 0, p.fail(from, ErrSyntax, "%s: not a number", p.text[from:to])
	}
	return v, nil
}

// noNumber says what stands at pos in place of a number.
func (p *parser) noNumber(pos int) error {
	rest := trimSpace(p.text[pos:])
	for _, word := range [...]string{"nan", "inf", "infinity", "∞"} {
		if strings.EqualFold(rest, word) || len(rest) > len(word) && strings.EqualFold(rest[:len(word)], word) && rest[len(word)] == ' ' {
			return p.fail(pos, ErrNotFinite, "want a finite number and a unit (%s)", p.kind.wants)
		}
	}
	if rest == "" {
		return p.fail(pos, ErrSyntax, "no number: want a number and a unit (%s)", p.kind.wants)
	}
	if rest[0] == ',' {
		return p.fail(pos, ErrSyntax, "a comma: write 0.5, with a point and a nought in front")
	}
	return p.fail(pos, ErrSyntax, "want a number first, then the unit (%s)", p.kind.wants)
}

// comma refuses a decimal comma, which is also how some write thousands.
func (p *parser) comma(start, pos, at int) error {
	end := scanDigits(p.text, at+1)
	whole, frac := p.text[start:at], p.text[at+1:end]
	if strings.ContainsAny(p.text[pos:at], ".eE") || frac == "" {
		return p.fail(at, ErrSyntax, "a comma: write a point for decimals and no separator for thousands")
	}
	if len(frac) == 3 {
		return p.fail(at, ErrAmbiguous, "a comma: write %s.%s if it marks decimals, %s%s if thousands", whole, frac, whole, frac)
	}
	return p.fail(at, ErrSyntax, "a comma: write %s.%s, with a point", whole, frac)
}

// scanDecimal returns the end of the decimal number at pos, exponent included.
func scanDecimal(s string, pos int) int {
	i := scanDigits(s, pos)
	n := i - pos
	if i < len(s) && s[i] == '.' {
		j := scanDigits(s, i+1)
		n += j - i - 1
		if n > 0 {
			i = j
		}
	}
	if n == 0 {
		return pos
	}
	if i < len(s) && (s[i] == 'e' || s[i] == 'E') {
		j := i + 1
		if j < len(s) && (s[j] == '+' || s[j] == '-') {
			j++
		}
		if k := scanDigits(s, j); k > j {
			i = k
		}
	}
	return i
}

func scanDigits(s string, pos int) int {
	for pos < len(s) && '0' <= s[pos] && s[pos] <= '9' {
		pos++
	}
	return pos
}

func isDigits(s string) bool { return scanDigits(s, 0) == len(s) }

// slashAt returns the length of a fraction bar at pos, or 0. A bar counts only
// before a digit: in "12 rev/min" it belongs to the unit.
func slashAt(s string, pos int) int {
	r, size := utf8.DecodeRuneInString(s[pos:])
	if r == '/' || r == '⁄' || r == '∕' {
		return size
	}
	return 0
}

// A vulgarFraction is a fraction that is one character.
type vulgarFraction struct {
	num, den float64
	size     int
}

func vulgar(s string, pos int) vulgarFraction {
	r, size := utf8.DecodeRuneInString(s[pos:])
	for _, f := range [...]struct {
		r        rune
		num, den float64
	}{
		{'¼', 1, 4}, {'½', 1, 2}, {'¾', 3, 4},
		{'⅛', 1, 8}, {'⅜', 3, 8}, {'⅝', 5, 8}, {'⅞', 7, 8},
		{'⅓', 1, 3}, {'⅔', 2, 3}, {'⅙', 1, 6}, {'⅚', 5, 6},
		{'⅕', 1, 5}, {'⅖', 2, 5}, {'⅗', 3, 5}, {'⅘', 4, 5},
		{'⅐', 1, 7}, {'⅑', 1, 9}, {'⅒', 1, 10},
	} {
		if f.r == r {
			return vulgarFraction{f.num, f.den, size}
		}
	}
	return vulgarFraction{}
}

// isNumberStart reports whether r begins a number.
func isNumberStart(r rune) bool {
	return '0' <= r && r <= '9' || r == '+' || r == '-' || r == '−' || vulgar(string(r), 0).size > 0
}

// Spaces: the ordinary one and the ones word processors put in.
func isSpace(r rune) bool {
	switch r {
	case ' ', '\t', '\n', '\r', '\u00a0', '\u2009', '\u202f':
		return true
	}
	return false
}

func skipSpace(s string, pos int) int {
	for pos < len(s) {
		r, size := utf8.DecodeRuneInString(s[pos:])
		if !isSpace(r) {
			return pos
		}
		pos += size
	}
	return pos
}

func trimLeft(s string) string  { return strings.TrimLeftFunc(s, isSpace) }
func trimSpace(s string) string { return strings.TrimFunc(s, isSpace) }
