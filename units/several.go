package units

import (
	"cmp"
	"math"
	"strings"
)

// oneValue looks again at text that was refused, for a value with its limits
// where the value alone is wanted. It returns err for any other text.
func (k *kind) oneValue(text string, err error) error {
	r := readingParser{kind: k, text: text}
	body := len(strings.TrimRightFunc(text, isSpace))
	at, _ := r.sign(body)
	if at < 0 {
		at = r.note(body)
	}
	if _, _, ok, _ := r.concise(at); ok { // 84.53(12) mm
		at = strings.IndexByte(text, '(')
	}
	if at == body {
		return err
	}
	return r.fail(at, ErrSyntax, "a value and its limits: want the value alone here, or give it as a Reading")
}

// joins stand between the ends of a range.
var joins = [...]string{"to", "–", "—", "-", "‐", "‑", "−", "...", "..", "…"}

// oneNumber looks again at text that was refused, for a range: 3 to 4 mm,
// 3-4 mm, 3 mm – 4 mm. It returns err for any other text.
func (p *parser) oneNumber(err error) error {
	if len(p.text) > unitMax {
		return err
	}
	for _, join := range joins {
		for at := range p.text {
			high, ok := strings.CutPrefix(p.text[at:], join)
			if !ok {
				continue
			}
			if reading, ok := p.middle(p.text[:at], high); ok {
				return p.fail(at, ErrSyntax, "a range: write one value, or a reading such as %s", reading)
			}
		}
	}
	return err
}

// middle writes the range from low to high as a reading, if it is one.
func (p *parser) middle(low, high string) (reading string, ok bool) {
	x, sx, ok := p.rangeEnd(low)
	if !ok {
		return "", false
	}
	y, sy, ok := p.rangeEnd(high)
	s := cmp.Or(sy, sx, &p.kind.text[0])
	x = s.number(cmp.Or(sx, s).si(x))
	half := (y - x) / 2
	if !ok || !(half > 0) || math.IsInf(half, 0) {
		return "", false
	}
	return s.join(significant(x+half, 6)) + " ± " + s.join(significant(half, 6)), true
}

// rangeEnd reads one end of a range: a number, and its scale if it has one of
// its own.
func (p *parser) rangeEnd(text string) (x float64, s *scale, ok bool) {
	q := parser{kind: p.kind, text: text}
	num, next, err := q.number(skipSpace(text, 0))
	if err != nil {
		return 0, nil, false
	}
	unitPos := skipSpace(text, next)
	if unitPos == len(text) {
		return num.value(), nil, true
	}
	if s, err = q.unit(num, unitPos, len(text)); err == nil {
		return num.value(), s, true
	}
	s = &p.kind.text[0]
	v, err := q.sum() // 28° 30′
	return s.number(v), s, err == nil
}
