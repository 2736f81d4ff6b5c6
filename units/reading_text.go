package units

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// ParseReading reads a quantity and how well it is known; see Reading for the
// forms. The error is a *ParseError.
func ParseReading[Q Quantity](text string) (Reading[Q], error) {
	p := readingParser{kind: kindOf[Q](), text: text}
	value, std, dof, err := p.reading()
	if err != nil {
		return Reading[Q]{}, err
	}
	return Reading[Q]{Value: Q(value), Std: Q(std), DoF: dof}, nil
}

// MarshalText writes r so that UnmarshalText gives the very same reading back.
// The error is ErrNotFinite, or ErrDomain for a negative Std or DoF.
func (r Reading[Q]) MarshalText() ([]byte, error) {
	k := kindOf[Q]()
	text, err := k.marshal(float64(r.Value))
	switch {
	case err != nil:
		return nil, err
	case math.IsNaN(r.DoF) || math.IsInf(r.DoF, 0):
		return nil, fmt.Errorf("degrees of freedom %g: %w", r.DoF, ErrNotFinite)
	case r.Std < 0 || r.DoF < 0:
		return nil, fmt.Errorf("standard uncertainty %g, degrees of freedom %g: want 0 or more: %w", float64(r.Std), r.DoF, ErrDomain)
	case r.Std == 0 && r.DoF == 0:
		return text, nil
	}
	dof := ""
	if r.DoF != 0 {
		dof = "dof " + strconv.FormatFloat(r.DoF, 'g', -1, 64)
	}
	half, ok := k.differenceKind().limits(float64(r.Std))
	if ok && k == &ratioKind && strings.HasSuffix(half, "%") { // 0.15 ± 1 % would be read as 0.15 % ± 1 %
		text, ok = percent(float64(r.Value), text)
	}
	if ok {
		if dof != "" {
			dof = " (" + dof + ")"
		}
		return []byte(string(text) + " ± " + half + dof), nil
	}
	std, err := k.differenceKind().marshal(float64(r.Std))
	if err != nil {
		return nil, err
	}
	if dof != "" {
		dof = ", " + dof
	}
	return []byte(string(text) + " (u " + string(std) + dof + ")"), nil
}

// percent writes v in per cent, and reports whether that reads back to it; else
// it gives text back.
func percent(v float64, text []byte) ([]byte, bool) {
	s := &ratioScales[1]
	if s.si(figure15(s.number(v))) != v {
		return text, false
	}
	return []byte(s.join(shortest(figure15(s.number(v))))), true
}

// limits looks for limits of a few figures whose standard uncertainty is
// exactly std: for what was typed as ± 0.5 mm. A std that is itself of a few
// figures was typed as such.
func (k *kind) limits(std float64) (text string, ok bool) {
	if _, ok := k.typed(std); ok || std == 0 {
		return "", false
	}
	return k.decimal(std*math.Sqrt(3), func(s *scale, x float64) bool { return x*s.factor/math.Sqrt(3) == std })
}

// UnmarshalText is ParseReading for decoders and flags.
func (r *Reading[Q]) UnmarshalText(text []byte) error {
	v, err := ParseReading[Q](string(text))
	if err != nil {
		return err
	}
	*r = v
	return nil
}

// A readingParser takes a reading apart into quantities, which kind.read
// reads.
type readingParser struct {
	kind *kind
	text string
}

func (p *readingParser) fail(pos int, kind error, format string, args ...any) error {
	return &ParseError{Kind: p.kind.name, Text: p.text, Pos: pos, Msg: fmt.Sprintf(format, args...), Err: kind}
}

func (p *readingParser) reading() (value, std, dof float64, err error) {
	body := len(strings.TrimRightFunc(p.text, isSpace))
	note := p.note(body)
	value, std, ok, err := p.concise(note)
	half, limits := 0.0, false
	if !ok && err == nil {
		value, half, limits, err = p.estimate(note)
		std = half / math.Sqrt(3)
	}
	if err != nil || note == body {
		return value, std, 0, err
	}
	return p.notes(note, body, value, std, half, limits)
}

// concise reads 84.53(12) mm, which is 84.53 mm with u 0.12 mm: the figures in
// brackets are of the last places of the value. JCGM 100:2008, 7.2.2.
func (p *readingParser) concise(end int) (value, std float64, ok bool, err error) {
	from := skipSpace(p.text[:end], 0)
	number := from
	if n := hyphenAt(p.text[:end], from); n > 0 {
		number += n
	}
	point := scanDigits(p.text[:end], number)
	open := point
	if open < end && p.text[open] == '.' {
		open = scanDigits(p.text[:end], point+1)
	}
	shut := scanDigits(p.text[:end], min(open+1, end))
	if open == number || open >= end || p.text[open] != '(' || shut == open+1 || shut >= end || p.text[shut] != ')' {
		return 0, 0, false, nil
	}
	if value, err = p.shared(from, open, shut+1, end, false); err != nil {
		return 0, 0, true, err
	}
	places := max(0, open-point-1)
	q := readingParser{p.kind, p.text[open+1:shut] + "e-" + strconv.Itoa(places) + " " + p.text[shut+1:end]}
	std, err = q.quantity(0, len(q.text), true)
	return value, std, true, err
}

// note returns where "(u 0.3 mm, dof 4)" begins, or end if there is none.
func (p *readingParser) note(end int) int {
	i := strings.LastIndexByte(p.text[:end], '(')
	if i < 0 || p.text[end-1] != ')' {
		return end
	}
	if name, _ := noteWord(p.text[i+1 : end-1]); name == "u" || name == "k" || name == "dof" {
		return i
	}
	return end // pint (imp)
}

// estimate reads what stands before the note: a value and perhaps its limits.
func (p *readingParser) estimate(end int) (value, half float64, limits bool, err error) {
	at, size := p.sign(end)
	if at < 0 {
		value, err = p.quantity(0, end, false)
		return value, 0, false, err
	}
	from, to := skipSpace(p.text, 0), at+size
	if from == at {
		return 0, 0, true, p.fail(at, ErrSyntax, "no value before ±: write it first, then its limits")
	}
	if shut := strings.LastIndexByte(p.text[:end], ')'); p.text[from] == '(' && shut > to { // (84.5 ± 0.5) mm
		value, half, err = p.limits(from+1, at, to, shut, shut+1, end)
		return value, half, true, err
	}
	unit := p.numberEnd(to, end)
	if unit == to { // no number there
		_, err = p.quantity(to, end, true)
		return 0, 0, true, err
	}
	value, half, err = p.limits(from, at, to, unit, unit, end)
	return value, half, true, err
}

// sign finds the plus-or-minus sign.
func (p *readingParser) sign(end int) (at, size int) {
	for _, sign := range [...]string{"±", "+/-", "+/−", "+-", "+ or -"} {
		if at = strings.Index(p.text[:end], sign); at >= 0 {
			return at, len(sign)
		}
	}
	return -1, 0
}

// limits reads text[from:to] ± text[from2:to2] with the unit text[unit:end],
// which the value may have too.
func (p *readingParser) limits(from, to, from2, to2, unit, end int) (value, half float64, err error) {
	if p.numberEnd(from, to) == to { // 84.5 ± 0.5 mm
		value, err = p.shared(from, to, unit, end, false)
	} else {
		value, err = p.quantity(from, to, false)
	}
	if err != nil {
		return 0, 0, err
	}
	if trimSpace(p.text[unit:end]) == "%" && p.kind != &ratioKind && p.kind != &temperatureKind {
		q := readingParser{&ratioKind, p.text}
		half, err = q.shared(from2, to2, unit, end, true)
		half *= math.Abs(value)
	} else {
		half, err = p.shared(from2, to2, unit, end, true)
	}
	if err == nil && !(half >= 0) {
		err = p.fail(skipSpace(p.text, from2), ErrSyntax, "what stands after ± must not be negative")
	}
	return value, half, err
}

// numberEnd returns where the number text[from:end] ends; from if there is
// none.
func (p *readingParser) numberEnd(from, end int) int {
	q := parser{kind: p.kind, text: p.text[:end]}
	_, next, err := q.number(skipSpace(q.text, from))
	if err != nil {
		return from
	}
	return skipSpace(q.text, next)
}

// quantity reads text[from:to].
func (p *readingParser) quantity(from, to int, difference bool) (float64, error) {
	return p.shared(from, to, to, to, difference)
}

// shared reads the number text[from:to] with the unit text[unit:end], and
// gives an error its place in the whole text.
func (p *readingParser) shared(from, to, unit, end int, difference bool) (float64, error) {
	text := p.text[from:to]
	if unit < end {
		text += " " + p.text[unit:end]
	}
	v, err := p.kind.read(text, difference)
	var e *ParseError
	if errors.As(err, &e) {
		pos := from + e.Pos
		if e.Pos > to-from {
			pos = min(unit+e.Pos-(to-from)-1, end)
		}
		return 0, &ParseError{Kind: e.Kind, Text: p.text, Pos: pos, Msg: e.Msg, Err: e.Err}
	}
	return v, err
}

// notes reads the note in brackets, text[from:to], behind a value with std, or
// with limits of half.
func (p *readingParser) notes(from, to int, value, std, half float64, limits bool) (_, _, dof float64, err error) {
	seen := map[string]bool{}
	for pos := from + 1; pos < to && err == nil; {
		end := pos + strings.IndexAny(p.text[pos:to], ",)")
		name, val := noteWord(p.text[pos:end])
		at, start := skipSpace(p.text, pos), pos+strings.LastIndex(p.text[pos:end], val)
		switch {
		case seen[name]:
			err = p.fail(at, ErrSyntax, "%s is given twice", name)
		case name == "u" && (limits || std != 0):
			err = p.fail(at, ErrSyntax, "u beside another uncertainty: want one of them")
		case name == "u":
			std, err = p.quantity(start, end, true)
			if err == nil && !(std >= 0) {
				err = p.fail(start, ErrSyntax, "u: want a standard uncertainty that is not negative")
			}
		case name == "k" && !limits:
			err = p.fail(at, ErrSyntax, "k: want a coverage factor behind ±, as in ± 0.6 mm (k=2)")
		case name == "k":
			var k float64
			k, err = p.factor(name, val, start)
			std = half / k
		case name == "dof":
			dof, err = p.factor(name, val, start)
		default:
			err = p.fail(at, ErrSyntax, "in brackets: want u, k or dof, as in (u 0.3 mm, dof 4)")
		}
		seen[name] = true
		pos = end + 1
	}
	return value, std, dof, err
}

// factor reads a number above 0.
func (p *readingParser) factor(name, val string, pos int) (float64, error) {
	v, err := strconv.ParseFloat(val, 64)
	if err != nil || !(v > 0) || math.IsInf(v, 0) {
		return 0, p.fail(pos, ErrSyntax, "%s %q: want a number above 0", name, val)
	}
	return v, nil
}

// noteWord splits "u 0.3 mm" or "k=2" after the first word.
func noteWord(s string) (word, rest string) {
	s = trimSpace(s)
	i := strings.IndexFunc(s, func(r rune) bool { return isSpace(r) || r == '=' })
	if i < 0 {
		return s, ""
	}
	return s[:i], trimSpace(strings.TrimLeftFunc(s[i:], func(r rune) bool { return isSpace(r) || r == '=' }))
}
