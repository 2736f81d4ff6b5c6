package units

import (
	"fmt"
	"math"
	"strconv"
)

// A Fraction is a length in inches and a binary fraction of an inch, as a rule
// or a drill size has it, and what is left over:
//
//	length = ±(Whole + Numerator/Denominator) in + Rest
//
// The fraction is in its lowest terms and below one inch; a whole number of
// inches has Numerator 0 and Denominator 1. Rest is what the length is more
// than the fraction, negative where it is less.
type Fraction struct {
	Negative               bool
	Whole                  int
	Numerator, Denominator int
	Rest                   Length
}

// Fraction returns l as the nearest fraction of an inch with the given
// denominator, 1, 2, 4, 8, 16, 32, 64 or 128, and what is left over. A length
// half-way between two goes to the even one.
//
// The error is ErrDomain for another denominator or a length of more than a
// thousand million inches, ErrNotFinite for NaN and infinities.
func (l Length) Fraction(denominator int) (Fraction, error) {
	inches := math.Abs(l.Inches())
	switch {
	case denominator < 1 || denominator > 128 || denominator&(denominator-1) != 0:
		return Fraction{}, fmt.Errorf("denominator %d: want 1, 2, 4, 8, 16, 32, 64 or 128: %w", denominator, ErrDomain)
	case math.IsNaN(inches) || math.IsInf(inches, 0):
		return Fraction{}, fmt.Errorf("length %g m: %w", float64(l), ErrNotFinite)
	case inches > 1e9:
		return Fraction{}, fmt.Errorf("length %v: want 1e9 in or less: %w", l, ErrDomain)
	}
	n := int(math.RoundToEven(figure15(inches * float64(denominator))))
	f := Fraction{
		Negative: l < 0 && n != 0,
		Whole:    n / denominator, Numerator: n % denominator, Denominator: denominator,
	}
	for f.Denominator > 1 && f.Numerator%2 == 0 {
		f.Numerator, f.Denominator = f.Numerator/2, f.Denominator/2
	}
	f.Rest = l - f.Length()
	return f, nil
}

// figure15 rounds x to the 15 figures that a float64 surely holds, which makes
// half-way cases of what was half-way before scaling.
func figure15(x float64) float64 {
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'e', 14, 64), 64)
	return x
}

// Length returns the fraction as a length, without Rest.
func (f Fraction) Length() Length {
	if f.Denominator == 0 {
		return 0
	}
	l := Length(float64(f.Whole*f.Denominator+f.Numerator)/float64(f.Denominator)) * Inch
	if f.Negative {
		return -l
	}
	return l
}

// Nearest writes the fraction without Rest: "1 7/16 in", "-3/8 in", "2 in".
func (f Fraction) Nearest() string {
	sign := ""
	if f.Negative {
		sign = "-"
	}
	switch {
	case f.Numerator == 0:
		return fmt.Sprintf("%s%d in", sign, f.Whole)
	case f.Whole == 0:
		return fmt.Sprintf("%s%d/%d in", sign, f.Numerator, f.Denominator)
	}
	return fmt.Sprintf("%s%d %d/%d in", sign, f.Whole, f.Numerator, f.Denominator)
}

// String writes the fraction and what is left over in thou, to a tenth:
// "1 7/16 in + 1.9 thou". A remainder that rounds to nothing is left out.
func (f Fraction) String() string {
	thou := fixed(math.Abs(f.Rest.Thou()), 1)
	switch {
	case thou == "0.0":
		return f.Nearest()
	case f.Rest < 0:
		return f.Nearest() + " - " + thou + " thou"
	}
	return f.Nearest() + " + " + thou + " thou"
}
