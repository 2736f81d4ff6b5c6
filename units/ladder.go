package units

import "slices"

// climb reads a ladder of numbers and units, each unit smaller than the one
// before: 28° 30′ 15″, 5 ft 6 1/2 in, 2 lb 3 oz. The first number and the end
// of its unit have been read.
func (p *parser) climb(num number, unitPos, unitEnd int) (float64, error) {
	negative := num.negative
	num.negative = false
	sum, step := 0.0, -1
	for {
		i, err := p.rung(num, unitPos, unitEnd, step)
		if err != nil {
			return 0, err
		}
		r := p.kind.ladder[i]
		if step >= 0 && num.value() >= r.limit {
			return 0, p.fail(unitPos, ErrSyntax, "%s: want less than %g here; carry it into the larger unit", num.text, r.limit)
		}
		sum += num.value() * r.factor
		step = i
		pos := skipSpace(p.text, unitEnd)
		if pos == len(p.text) {
			if negative {
				return -sum, nil
			}
			return sum, nil
		}
		if !num.whole {
			return 0, p.fail(pos, ErrSyntax, "only the last number may have a fraction")
		}
		var next int
		if num, next, err = p.number(pos); err != nil {
			return 0, err
		}
		if num.signed {
			return 0, p.fail(pos, ErrSyntax, "a sign inside the quantity: write one sign in front")
		}
		unitPos = skipSpace(p.text, next)
		unitEnd = p.unitEnd(unitPos)
	}
}

// rung finds which step of the ladder text[pos:end] names, below step above.
func (p *parser) rung(num number, pos, end, above int) (int, error) {
	raw := trimSpace(p.text[pos:end])
	if raw == "" {
		return 0, p.fail(pos, ErrNoUnit, "which unit has %s? write it behind the number", num.text)
	}
	folded, ok := foldUnit(raw)
	for i := above + 1; ok && i < len(p.kind.ladder); i++ {
		if slices.Contains(p.kind.ladder[i].names, folded) {
			return i, nil
		}
	}
	if above < 0 {
		if _, known := p.kind.find(folded); known {
			return 0, p.fail(end, ErrTrailing, "left over after %s: %q; write the %s alone", raw, trimSpace(p.text[end:]), p.kind.name)
		}
		return 0, p.badUnit(raw, folded, pos)
	}
	return 0, p.fail(pos, ErrSyntax, "%q cannot follow here: write the larger unit first, each once", raw)
}
