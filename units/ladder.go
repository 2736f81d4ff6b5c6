package units

import (
	"math"
	"slices"
)

// climb reads a ladder of numbers and units, each unit smaller than the one
// before: 28° 30′ 15″, 5 ft 6 1/2 in, 2 lb 3 oz. The first number and the end
// of its unit have been read.
func (p *parser) climb(num number, unitPos, unitEnd int) (float64, error) {
	negative := num.negative
	num.negative = false
	top, err := p.rung(num, unitPos, unitEnd, -1)
	if err != nil {
		return 0, err
	}
	total, made, step := num.value(), 1.0, top // total counts units of rung step, made of which are one at the top
	for {
		pos := skipSpace(p.text, unitEnd)
		if pos == len(p.text) {
			break
		}
		if !num.whole {
			return 0, p.fail(pos, ErrSyntax, "only the last number may have a fraction")
		}
		var end int
		if num, end, err = p.number(pos); err != nil {
			return 0, err
		}
		unitPos = skipSpace(p.text, end)
		unitEnd = p.unitEnd(unitPos)
		next, err := p.rung(num, unitPos, unitEnd, step)
		if err != nil {
			return 0, err
		}
		if err := p.fits(num, pos, p.kind.ladder[next].limit); err != nil {
			return 0, err
		}
		for step < next {
			step++
			total *= p.kind.ladder[step].limit
			made *= p.kind.ladder[step].limit
		}
		total += num.value()
	}
	if negative {
		total = -total
	}
	// 28° 30′ is to be 28.5°, and 5 ft 6 1/2 in 66.5 in, to the last bit.
	if q := total / made; math.FMA(q, made, -total) == 0 {
		return q * p.kind.ladder[top].factor, nil
	}
	return total * p.kind.ladder[step].factor, nil
}

// fits refuses a number at pos, not the first, that has a sign or makes one of
// the rung above.
func (p *parser) fits(num number, pos int, limit float64) error {
	if num.signed {
		return p.fail(pos, ErrSyntax, "a sign inside the quantity: write one sign in front")
	}
	if num.value() >= limit {
		return p.fail(pos, ErrSyntax, "%s: want less than %g here; carry it into the larger unit", num.text, limit)
	}
	return nil
}

// rung finds which step of the ladder text[pos:end] names, below step above.
func (p *parser) rung(num number, pos, end, above int) (int, error) {
	raw := trimSpace(p.text[pos:end])
	if raw == "" {
		if end < len(p.text) {
			return 0, p.badUnit(p.text[pos:], "", pos) // a second number
		}
		return 0, p.fail(pos, ErrNoUnit, "which unit has %s? write it behind the number", num.text)
	}
	if i := p.kind.rungNamed(raw, above); i >= 0 {
		return i, nil
	}
	folded, ok := foldUnit(raw)
	if i := p.kind.rungNamed(folded, above); ok && i >= 0 {
		return i, nil
	}
	_, known := p.kind.find(folded)
	switch {
	case known && above < 0:
		return 0, p.fail(end, ErrTrailing, "left over after %s: %q; write the %s alone", raw, trimSpace(p.text[end:]), p.kind.name)
	case known:
		return 0, p.fail(pos, ErrSyntax, "%q cannot follow here: write the larger unit first, each once", raw)
	}
	return 0, p.badUnit(raw, folded, pos)
}

// rungNamed returns the rung below step above that has the name, or -1.
func (k *kind) rungNamed(name string, above int) int {
	for i := above + 1; i < len(k.ladder); i++ {
		if slices.Contains(k.ladder[i].names, name) {
			return i
		}
	}
	return -1
}
