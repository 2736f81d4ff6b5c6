package units

import (
	"math"
	"strconv"
	"strings"
)

// notStated stands where there is no uncertainty to write.
const notStated = "not stated"

// Round writes a value and its standard uncertainty as they go into a report:
// the uncertainty in two figures where it begins with 1 or 2 and in one where
// it begins with 3 to 9, the value to the same decimal place, noughts at the
// end kept. Half-way cases go to the even digit. An uncertainty of 9.96 becomes
// 10 and takes the value with it.
//
// A std that is 0, negative or not finite is "not stated", and the value is
// then written as String does. For a Temperature std is a difference.
//
// Source: JCGM 100:2008, 7.2.6: two figures at most, the value to the same
// place; which figures keep a second one is common practice, no source.
// Half-way cases: ISO 80000-1, Annex B, rule A (from memory).
func Round[Q Quantity](value, std Q) (v, u string) {
	return kindOf[Q]().rounded(float64(value), float64(std), false)
}

// RoundUp is Round, but an uncertainty that rounding would make smaller by
// more than 5 % is rounded up: the rule for certificates, where U must cover.
//
// Source: EA-4/02, section 6 (from memory).
func RoundUp[Q Quantity](value, std Q) (v, u string) {
	return kindOf[Q]().rounded(float64(value), float64(std), true)
}

// rounded writes v and its standard uncertainty u with their units.
func (k *kind) rounded(v, u float64, up bool) (value, std string) {
	if !(u > 0) || math.IsInf(u, 0) {
		return k.string(v), notStated
	}
	s := k.choose(math.Max(math.Abs(v), u))
	d := s
	if k.differenceKind() != k {
		d = k.differenceKind().choose(u)
	}
	x, ux := s.number(v), u/d.factor
	places := placesFor(ux)
	if text := fixed(ux, places); up && lowered(text, ux) {
		ux = ceil(ux, places)
		places = placesFor(ux)
	}
	return s.join(fixed(x, places)), d.join(fixed(ux, places))
}

// lowered reports whether text is more than 5 % below u.
func lowered(text string, u float64) bool {
	v, err := strconv.ParseFloat(text, 64)
	return err == nil && v < 0.95*u
}

// ceil rounds u up at the given decimal place.
func ceil(u float64, places int) float64 {
	p := math.Pow10(places)
	return math.Ceil(u*p) / p
}

// placesFor returns the decimal place to which a figure with uncertainty u is
// written. A u of 9.6 in one figure carries to 10, in the same place.
func placesFor(u float64) int {
	two, exp := scientific(u, 1)
	if two[0] < '3' {
		return 1 - exp
	}
	return -exp
}

// scientific writes x with so many decimals and a power of ten.
func scientific(x float64, decimals int) (digits string, exp int) {
	digits, e, _ := strings.Cut(strconv.FormatFloat(x, 'e', decimals, 64), "e")
	exp, _ = strconv.Atoi(e)
	return digits, exp
}

// fixed writes x to the given decimal place, which may be negative: tens,
// hundreds. Half-way cases, by the 15 figures that a float64 surely holds, go
// to the even digit.
func fixed(x float64, places int) string {
	digits, exp := scientific(math.Abs(x), 14)
	n, err := strconv.ParseInt(strings.Replace(digits, ".", "", 1), 10, 64)
	if err != nil { // NaN and infinities
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	n = roundDigits(n, 14-exp-places)
	text := strconv.FormatInt(n, 10)
	if extra := places - (14 - exp); extra > 0 { // more places than figures
		text += strings.Repeat("0", extra)
	}
	text = point(text, places)
	if x < 0 && n != 0 {
		return "-" + text
	}
	return text
}

// roundDigits drops so many of the last digits of n, half-way cases to even.
func roundDigits(n int64, drop int) int64 {
	if drop <= 0 {
		return n
	}
	if drop > 16 {
		return 0
	}
	unit := int64(1)
	for range drop {
		unit *= 10
	}
	quotient, rest := n/unit, n%unit
	if rest > unit/2 || rest == unit/2 && quotient%2 == 1 {
		quotient++
	}
	return quotient
}

// point puts a decimal point before the last places of the digits, or noughts
// behind them where places is negative.
func point(digits string, places int) string {
	switch {
	case places == 0 || digits == "0" && places < 0:
		return digits
	case places < 0:
		return digits + strings.Repeat("0", -places)
	case len(digits) <= places:
		digits = strings.Repeat("0", places-len(digits)+1) + digits
	}
	return digits[:len(digits)-places] + "." + digits[len(digits)-places:]
}
