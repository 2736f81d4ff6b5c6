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
	c := climber{kind: p.kind, total: num.value(), made: 1, step: top}
	for pos := skipSpace(p.text, unitEnd); pos < len(p.text); pos = skipSpace(p.text, unitEnd) {
		if !num.whole {
			return 0, p.fail(pos, ErrSyntax, "only the last number may have a fraction")
		}
		if num, unitEnd, err = p.down(&c, pos); err != nil {
			return 0, err
		}
	}
	if negative {
		c.total = -c.total
	}
	return c.si(top), nil
}

// down reads the next number of a ladder, at pos, and its unit, and where that
// ends.
func (p *parser) down(c *climber, pos int) (num number, unitEnd int, err error) {
	num, end, err := p.number(pos)
	if err != nil {
		return num, 0, err
	}
	unitPos := skipSpace(p.text, end)
	unitEnd = p.unitEnd(unitPos)
	next, err := p.rung(num, unitPos, unitEnd, c.step)
	if err != nil {
		return num, 0, err
	}
	if err := p.fits(num, pos, p.kind.ladder[next].limit); err != nil {
		return num, 0, err
	}
	c.add(next, num.value())
	return num, unitEnd, nil
}

// A climber adds up a ladder in the units of the last step, so that nothing is
// rounded on the way.
type climber struct {
	kind  *kind
	total float64 // in units of step
	made  float64 // so many of which are one at the top
	step  int
}

// add goes down to step next and adds x of its units.
func (c *climber) add(next int, x float64) {
	for c.step < next {
		c.step++
		c.total *= c.kind.ladder[c.step].limit
		c.made *= c.kind.ladder[c.step].limit
	}
	c.total += x
}

// si is the sum in the SI unit. 28° 30′ is to be 28.5°, and 5 ft 6 1/2 in
// 66.5 in, to the last bit.
func (c *climber) si(top int) float64 {
	if q := c.total / c.made; math.FMA(q, c.made, -c.total) == 0 {
		return q * c.kind.ladder[top].factor
	}
	return c.total * c.kind.ladder[c.step].factor
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
