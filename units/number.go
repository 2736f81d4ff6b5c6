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
func (p *parser) number(pos int) (n number, end int, err error) {
	n = number{den: 1, whole: true}
	start := pos
	switch r, size := utf8.DecodeRuneInString(p.text[pos:]); r {
	case '-', '−', '–':
		n.negative, n.signed = true, true
		pos = skipSpace(p.text, pos+size)
	case '+':
		n.signed = true
		pos = skipSpace(p.text, pos+size)
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
	if n.decimal, err = p.float(pos, digits); err != nil {
		return n, pos, err
	}
	n.whole = isDigits(p.text[pos:digits])
	end = digits
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
	if den, end := p.below(digits); end > 0 { // 3/8
		top := n.decimal
		n.decimal = 0
		return end, p.setFraction(n, top, pos, den, end)
	}
	next := skipSpace(p.text, digits)
	if next == digits {
		next += hyphenAt(p.text, digits)
	}
	if v := vulgar(p.text, next); v.size > 0 { // 1⅜, 1-⅜
		n.num, n.den, n.whole = v.num, v.den, false
		return next + v.size, nil
	}
	top := scanDigits(p.text, next)
	den, end := p.below(top)
	if next == digits || top == next || end == 0 {
		return digits, nil // the digits belong to something else
	}
	num, err := p.float(next, top)
	if err != nil {
		return digits, err
	}
	if err := p.setFraction(n, num, next, den, end); err != nil {
		return digits, err
	}
	if n.num >= n.den {
		return digits, p.fail(next, ErrSyntax, "%s after a whole number: want a fraction below 1", p.text[next:end])
	}
	return end, nil
}

// below finds the lower number of a fraction whose bar stands at pos, and
// where it ends; 0 if there is none.
func (p *parser) below(pos int) (den, end int) {
	bar := slashAt(p.text, pos)
	if bar == 0 {
		return 0, 0
	}
	den = pos + bar
	if end = scanDigits(p.text, den); end == den {
		return 0, 0
	}
	return den, end
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
