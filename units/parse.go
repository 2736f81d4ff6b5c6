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
	p := parser{kind: k, text: text}
	v, err := p.quantity()
	if err != nil {
		return 0, err
	}
	if math.IsInf(v, 0) || math.IsNaN(v) {
		return 0, p.fail(0, ErrNotFinite, "too large to hold")
	}
	return v, nil
}

// parseDifference is parse for a difference of two values, which matters only
// where the scale has a zero of its own: 2 °C of uncertainty is 2 K.
func (k *kind) parseDifference(text string) (float64, error) {
	p := parser{kind: k, text: text, difference: true}
	return p.quantity()
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
		if isNumberStart(r) {
			return pos + i
		}
	}
	return len(p.text)
}

// unit reads text[pos:end] as a unit of the kind.
func (p *parser) unit(num number, pos, end int) (scale, error) {
	raw := trimSpace(p.text[pos:end])
	if sc, ok := p.kind.find(raw); ok {
		return sc, nil
	}
	if raw == "" {
		if sc, ok := p.kind.find(""); ok { // pure numbers
			return sc, nil
		}
		return scale{}, p.fail(pos, ErrNoUnit, "which unit? write %s", p.kind.examples(num))
	}
	folded, ok := foldUnit(raw)
	if ok {
		if sc, ok := p.kind.find(folded); ok {
			return sc, nil
		}
		if msg, ok := p.kind.trapped(folded); ok {
			return scale{}, p.fail(pos, ErrAmbiguous, "%s", msg)
		}
	}
	return scale{}, p.badUnit(raw, folded, pos)
}

// badUnit says what is wrong with a unit that is not of this kind.
func (p *parser) badUnit(raw, folded string, pos int) error {
	if i := p.knownPrefix(raw); i > 0 {
		return p.fail(pos+i+len(raw[i:])-len(trimLeft(raw[i:])), ErrTrailing,
			"left over after %s: %q; write the %s alone", trimSpace(raw[:i]), trimSpace(raw[i:]), p.kind.name)
	}
	if raw[0] == ',' {
		return p.fail(pos, ErrSyntax, "a comma: write a point for decimals and no separator for thousands")
	}
	if other, ok := otherKind(folded); ok {
		return p.fail(pos, ErrUnknownUnit, "%s is a unit of %s: want a %s in %s", raw, other, p.kind.name, p.kind.wants)
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
