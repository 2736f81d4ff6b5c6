package units

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf8"
)

// parse reads one quantity of kind k: a number and a unit ("12.7 mm",
// `1 3/16"`), or a ladder of them, largest first ("28° 30′", "5 ft 6 in").
func (k *kind) parse(text string) (float64, error) {
	v, err := k.read(text, false)
	if err != nil {
		return 0, k.oneValue(text, err)
	}
	return v, nil
}

// read is parse for a part of a reading. A difference of two values is another
// thing than a value where the scale has a zero of its own: 2 °C of uncertainty
// is 2 K.
func (k *kind) read(text string, difference bool) (float64, error) {
	p := parser{kind: k, text: text, difference: difference}
	v, err := p.quantity()
	switch {
	case err != nil:
		return 0, p.oneNumber(err)
	case k == &temperatureKind && !difference && v < 0:
		return 0, p.fail(skipSpace(text, 0), ErrDomain, "below absolute zero, -273.15 °C or -459.67 °F")
	}
	return v, nil
}

type parser struct {
	kind       *kind
	text       string
	difference bool
}

// fail makes the error for byte offset pos.
func (p *parser) fail(pos int, kind error, format string, args ...any) error {
	return &ParseError{Kind: p.kind.name, Text: p.text, Pos: pos, Msg: fmt.Sprintf(format, args...), Err: kind}
}

func (p *parser) quantity() (float64, error) {
	v, err := p.sum()
	if err == nil && (math.IsInf(v, 0) || math.IsNaN(v)) {
		return 0, p.fail(skipSpace(p.text, 0), ErrNotFinite, "too large to hold")
	}
	return v, err
}

// sum reads a number and its unit, or a ladder of them.
func (p *parser) sum() (float64, error) {
	pos := skipSpace(p.text, 0)
	if pos == len(p.text) {
		return 0, p.fail(pos, ErrSyntax, "empty: want a number and a unit (%s)", p.kind.wants)
	}
	num, next, err := p.number(pos)
	if err != nil {
		return 0, err
	}
	unitPos := skipSpace(p.text, next)
	if len(p.kind.ladder) > 0 {
		if end := p.unitEnd(unitPos); end < len(p.text) {
			return p.climb(num, unitPos, end)
		}
	}
	sc, err := p.unit(num, unitPos, len(p.text))
	if err != nil {
		return 0, err
	}
	if p.difference {
		return num.value() * sc.factor, nil
	}
	return sc.si(num.value()), nil
}

// unitEnd is where the unit at pos stops, in a ladder: before the next number.
func (p *parser) unitEnd(pos int) int {
	for i, r := range p.text[pos:] {
		if r == '-' {
			if next, _ := utf8.DecodeRuneInString(p.text[pos+i+1:]); isLetter(next) {
				continue // arc-minutes
			}
		}
		if isNumberStart(r) {
			return pos + i
		}
	}
	return len(p.text)
}

// unit reads text[pos:end] as a unit of the kind.
func (p *parser) unit(num number, pos, end int) (*scale, error) {
	raw := trimSpace(p.text[pos:end])
	if sc, ok := p.kind.find(raw); ok {
		return sc, nil
	}
	if raw == "" {
		if sc, ok := p.kind.find(""); ok { // pure numbers
			return sc, nil
		}
		return nil, p.fail(pos, ErrNoUnit, "which unit? write %s", p.kind.examples(num))
	}
	if msg, ok := p.kind.trapped(raw); ok {
		return nil, p.fail(pos, ErrAmbiguous, "%s", msg)
	}
	folded, ok := foldUnit(raw)
	if ok {
		if sc, ok := p.kind.find(folded); ok {
			return sc, nil
		}
		if msg, ok := p.kind.trapped(folded); ok {
			return nil, p.fail(pos, ErrAmbiguous, "%s", msg)
		}
	}
	return nil, p.badUnit(raw, folded, pos)
}

// badUnit says what is wrong with a unit that is not of this kind.
func (p *parser) badUnit(raw, folded string, pos int) error {
	if r, _ := utf8.DecodeRuneInString(raw); isNumberStart(r) {
		return p.fail(pos, ErrSyntax, "a second number: want one number, then the unit (%s)", p.kind.wants)
	}
	if n := slashAt(raw, 0); n > 0 && !startsDigit(raw[n:]) && folded != "" && folded[0] == '/' {
		return p.fail(pos, ErrSyntax, "%q after a number: neither a fraction nor a unit of %s", raw, p.kind.name)
	}
	if i := p.knownPrefix(raw); i > 0 {
		return p.fail(pos+i+len(raw[i:])-len(trimLeft(raw[i:])), ErrTrailing,
			"left over after %s: %q; write the %s alone", trimSpace(raw[:i]), trimSpace(p.text[pos+i:]), p.kind.name)
	}
	if raw[0] == ',' {
		return p.fail(pos, ErrSyntax, "a comma: write a point for decimals and no separator for thousands")
	}
	if other, ok := otherKind(folded); ok {
		return p.fail(pos, ErrUnknownUnit, "%s is a unit of %s, not of %s: write %s", raw, other, p.kind.name, p.kind.wants)
	}
	return p.fail(pos, ErrUnknownUnit, "%q is no unit of %s known here: write %s", raw, p.kind.name, p.kind.wants)
}

// knownPrefix returns the length of the longest beginning of raw that is a
// unit and ends at a word's end, or 0.
func (p *parser) knownPrefix(raw string) int {
	for i := len(raw); i > 0; {
		_, size := utf8.DecodeLastRuneInString(raw[:i])
		i -= size
		r, _ := utf8.DecodeRuneInString(raw[i:])
		prev, _ := utf8.DecodeLastRuneInString(raw[:i])
		if isLetter(r) && isLetter(prev) {
			continue
		}
		if folded, ok := foldUnit(raw[:i]); ok {
			if _, ok := p.kind.find(folded); ok && folded != "" {
				return i
			}
		}
	}
	return 0
}

// examples writes num with each unit the error message suggests.
func (k *kind) examples(num number) string {
	var b strings.Builder
	for i, w := range strings.Split(k.wants, ", ") {
		if i > 0 {
			b.WriteString(" or ")
		}
		b.WriteString(num.text)
		if !strings.HasPrefix(w, "°") {
			b.WriteString(" ")
		}
		b.WriteString(w)
	}
	return b.String()
}

func isLetter(r rune) bool {
	return 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' || r >= utf8.RuneSelf && foldRune(r) == r
}

func startsDigit(s string) bool { return scanDigits(s, skipSpace(s, 0)) > skipSpace(s, 0) }
