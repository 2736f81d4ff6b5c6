package units

import (
	"math"
	"strconv"
	"strings"
)

// ParseReading reads a quantity and how well it is known; see Reading for the
// forms. The error is a *ParseError.
func ParseReading[Q Quantity](text string) (Reading[Q], error) {
	k := kindOf[Q]()
	body, note := cutNote(text)
	head, tail := cutLimits(body)
	if tail != "" && lacksUnit(head) { // 84.5 ± 0.5 mm
		head = strings.TrimRight(head, " ") + " " + strings.TrimLeft(tail, " +-0123456789./⁄½¼¾⅛⅜⅝⅞")
	}
	v, err := k.parse(head)
	if err != nil {
		return Reading[Q]{}, err
	}
	r := Reading[Q]{Value: Q(v)}
	fail := func(msg string, kind error) (Reading[Q], error) {
		return Reading[Q]{}, &ParseError{Kind: k.name, Text: text, Pos: len(body), Msg: msg, Err: kind}
	}
	half := 0.0
	if tail != "" {
		if half, err = k.parseDifference(tail); err != nil {
			return Reading[Q]{}, err
		}
		if !(half >= 0) {
			return fail("what stands after ± must not be negative", ErrSyntax)
		}
		r.Std = Q(half / math.Sqrt(3))
	}
	for _, part := range note {
		name, val := cutWord(part)
		switch name {
		case "u":
			u, err := k.parseDifference(val)
			if err != nil {
				return Reading[Q]{}, err
			}
			if !(u >= 0) || tail != "" {
				return fail("u: want one standard uncertainty, not negative, and no ±", ErrSyntax)
			}
			r.Std = Q(u)
		case "k":
			f, err := strconv.ParseFloat(val, 64)
			if err != nil || !(f > 0) || tail == "" || math.IsInf(f, 0) {
				return fail("k: want a coverage factor behind ±, as in ± 0.6 mm (k=2)", ErrSyntax)
			}
			r.Std = Q(half / f)
		case "dof":
			f, err := strconv.ParseFloat(val, 64)
			if err != nil || !(f > 0) || math.IsInf(f, 0) {
				return fail("dof: want a number of degrees of freedom above 0", ErrSyntax)
			}
			r.DoF = f
		default:
			return fail("in brackets: want u, k or dof, as in (u 0.3 mm, dof 4)", ErrSyntax)
		}
	}
	return r, nil
}

// MarshalText writes r so that UnmarshalText gives the very same reading back.
// The error is ErrNotFinite.
func (r Reading[Q]) MarshalText() ([]byte, error) {
	k := kindOf[Q]()
	text, err := k.marshal(float64(r.Value))
	if err != nil || r.Std == 0 && r.DoF == 0 {
		return text, err
	}
	if half, err := k.differenceKind().marshal(limitsOf(float64(r.Std))); err == nil && r.DoF == 0 {
		if back, err := ParseReading[Q](string(text) + " ± " + string(half)); err == nil && back == r {
			return []byte(string(text) + " ± " + string(half)), nil
		}
	}
	std, err := k.differenceKind().marshal(float64(r.Std))
	if err != nil {
		return nil, err
	}
	note := " (u " + string(std)
	if r.DoF != 0 {
		note += ", dof " + strconv.FormatFloat(r.DoF, 'g', -1, 64)
	}
	return []byte(string(text) + note + ")"), nil
}

// limitsOf returns the limits whose standard uncertainty is std, taking the
// rounder of the numbers that do.
func limitsOf(std float64) float64 {
	half := std * math.Sqrt(3)
	round, err := strconv.ParseFloat(strconv.FormatFloat(half, 'e', 14, 64), 64)
	if err == nil && round/math.Sqrt(3) == std {
		return round
	}
	return half
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

// cutNote cuts "(u 0.3 mm, dof 4)" off the end and returns its parts.
func cutNote(text string) (body string, parts []string) {
	trimmed := trimSpace(text)
	i := strings.LastIndexByte(trimmed, '(')
	if i < 0 || !strings.HasSuffix(trimmed, ")") {
		return text, nil
	}
	inside := trimmed[i+1 : len(trimmed)-1]
	name, val := cutWord(inside)
	if val == "" || name != "u" && name != "k" && name != "dof" {
		return text, nil // pint (imp)
	}
	return trimSpace(trimmed[:i]), strings.Split(inside, ",")
}

// cutLimits cuts text at its plus-or-minus sign.
func cutLimits(text string) (value, limits string) {
	for _, sign := range [...]string{"±", "+/-", "+-", "+ or -"} {
		if head, tail, ok := strings.Cut(text, sign); ok {
			return head, tail
		}
	}
	return text, ""
}

// cutWord splits "u 0.3 mm" or "k=2" after the first word.
func cutWord(s string) (word, rest string) {
	s = trimSpace(s)
	i := strings.IndexAny(s, " =")
	if i < 0 {
		return s, ""
	}
	return s[:i], trimSpace(strings.TrimLeft(s[i:], " ="))
}

// lacksUnit reports whether text is a number and nothing else.
func lacksUnit(text string) bool {
	text = trimSpace(text)
	return text != "" && strings.Trim(text, " +-−0123456789./⁄½¼¾⅛⅜⅝⅞") == ""
}
