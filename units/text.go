package units

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// marshal writes v so that parse gives the very same value back, and writes
// what was typed, or what is as short, where that was a decimal of a few
// figures in any unit of the kind. Scaling to SI and back may be off in the last bits, so
// the decimal is looked for and not computed.
func (k *kind) marshal(v float64) ([]byte, error) {
	switch {
	case math.IsNaN(v) || math.IsInf(v, 0):
		return nil, fmt.Errorf("%s: %w", k.name, ErrNotFinite)
	case k == &temperatureKind && v < 0:
		return nil, fmt.Errorf("%s %g K: below absolute zero: %w", k.name, v, ErrDomain)
	}
	v += 0 // no minus in front of nought
	if text, ok := k.typed(v); ok {
		return []byte(text), nil
	}
	usual := &k.text[0]
	q := usual.number(v)
	for _, x := range [...]float64{figure15(q), q, math.Nextafter(q, math.Inf(1)), math.Nextafter(q, math.Inf(-1))} {
		if usual.si(x) == v {
			return []byte(usual.join(shortest(x))), nil
		}
	}
	return []byte(k.base.join(shortest(v))), nil
}

// typed looks for the decimal of a few figures that v was typed as.
func (k *kind) typed(v float64) (text string, ok bool) {
	return k.decimal(v, func(s *scale, x float64) bool { return s.si(x) == v })
}

// decimal looks near v for a decimal of a few figures that is the same, as the
// caller says: six in the usual unit of the kind, unless noughts make it long,
// else the shortest up to nine in one of the usual units, or in any other that
// saves two figures.
func (k *kind) decimal(v float64, same func(s *scale, x float64) bool) (text string, ok bool) {
	const few, some, long = 6, 9, 7
	least := math.MaxInt
	for saved, units := range [...][]scale{k.text, k.scales} {
		for i := range units {
			s := &units[i]
			x, err := strconv.ParseFloat(strconv.FormatFloat(s.number(v), 'e', some-1, 64), 64)
			if err != nil || !same(s, x) {
				continue
			}
			num := shortest(x)
			all, n := digitsIn(num)
			if s == &k.text[0] && n <= long && significant(x, few) == num {
				return s.join(num), true
			}
			if all < least-saved {
				least, text = n, s.join(num)
			}
		}
	}
	return text, least < math.MaxInt
}

// digitsIn counts the figures of a decimal, noughts in front too, and how many
// are left without noughts at the end of a whole number, three at most: 5000 psi
// is as short as 5 ksi.
func digitsIn(num string) (all, left int) {
	all = len(num) - strings.Count(num, ".")
	if strings.ContainsAny(num, ".e") {
		return all, all
	}
	return all, all - min(3, all-len(strings.TrimRight(num, "0")))
}

// shortest writes x in as few digits as read back to it, without an exponent
// where a person would write none.
func shortest(x float64) string {
	if a := math.Abs(x); a != 0 && (a < 1e-6 || a >= 1e15) {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// format is fmt.Formatter for all quantities: no verb prints a number without
// its unit.
func (k *kind) format(f fmt.State, verb rune, v float64) {
	text := ""
	switch verb {
	case 'v', 's':
		text = k.string(v)
		if prec, ok := f.Precision(); ok && verb == 'v' && prec > 0 { // figures, as for a float64
			c := k.choose(v)
			text = c.join(significant(c.number(v), prec))
		}
		if verb == 'v' && f.Flag('#') {
			text = strconv.FormatFloat(v, 'g', -1, 64) + "*units." + k.baseName()
		}
	case 'q':
		text = strconv.Quote(k.string(v))
	case 'e', 'E', 'f', 'F', 'g', 'G':
		text = k.verb(f, verb, v)
	default:
		fmt.Fprintf(f, "%%!%c(units.%s=%s)", verb, k.goName, k.string(v))
		return
	}
	if width, ok := f.Width(); ok {
		if f.Flag('-') {
			fmt.Fprintf(f, "%-*s", width, text)
		} else {
			fmt.Fprintf(f, "%*s", width, text)
		}
		return
	}
	fmt.Fprint(f, text)
}

// verb writes v for a floating-point verb, in the unit String would choose.
func (k *kind) verb(f fmt.State, verb rune, v float64) string {
	format := "%"
	for _, flag := range "+# 0" {
		if f.Flag(int(flag)) {
			format += string(flag)
		}
	}
	s := k.choose(v)
	prec, ok := f.Precision()
	if !ok {
		if verb == 'g' || verb == 'G' {
			return s.join(fmt.Sprintf(format+string(verb), s.number(v)))
		}
		prec = 6
	}
	return s.join(fmt.Sprintf(format+"."+strconv.Itoa(prec)+string(verb), s.number(v)))
}

// string is String: six figures at most, with the unit.
func (k *kind) string(v float64) string {
	s := k.choose(v)
	x := s.number(v)
	if s.zero != 0 { // what is left of 32 °F in °C is rounding, not 5.7e-14 °C
		x = math.Round(x*1e9) / 1e9
	}
	return s.join(significant(x, 6))
}

// choose takes the first unit in which v is at least 1, else the smallest.
func (k *kind) choose(v float64) *scale {
	for i := range k.people {
		s := &k.people[i]
		if math.Abs(s.number(v)) >= 1-1e-9 || s.zero != 0 || v == 0 {
			return s
		}
	}
	return &k.people[len(k.people)-1]
}

// significant writes x rounded to n figures, without trailing noughts.
func significant(x float64, n int) string {
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'e', n-1, 64), 64)
	return shortest(x + 0)
}

// baseName is the Go name of the SI unit underneath.
func (k *kind) baseName() string { return k.base.goName }
