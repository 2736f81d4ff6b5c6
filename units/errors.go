package units

import (
	"errors"
	"fmt"
)

// The kinds of refusal. Every error of this library wraps one of them where a
// caller may want to tell kinds apart with errors.Is.
var (
	// ErrDomain: a value outside the range in which the formula has an answer.
	ErrDomain = errors.New("outside the domain")
	// ErrNoUnit: a number without a unit.
	ErrNoUnit = errors.New("no unit")
	// ErrUnknownUnit: a unit this kind of quantity does not have.
	ErrUnknownUnit = errors.New("unknown unit")
	// ErrAmbiguous: text that can be read in two ways.
	ErrAmbiguous = errors.New("can be read in two ways")
	// ErrSyntax: text that is not a number and a unit.
	ErrSyntax = errors.New("not a number and a unit")
	// ErrTrailing: a quantity with something left over behind it.
	ErrTrailing = errors.New("something left over")
	// ErrNotFinite: NaN, an infinity, or a number too large to hold.
	ErrNotFinite = errors.New("not a finite number")
)

// A ParseError is what reading a quantity from text returns. It says where the
// text stops making sense and what to write instead.
type ParseError struct {
	Kind string // what was wanted: "length", "angle", ...
	Text string // the text as given
	Pos  int    // byte offset in Text at which it went wrong
	Msg  string // what is wrong and what to write
	Err  error  // the kind of refusal: ErrNoUnit, ErrUnknownUnit, ...
}

// Error gives the text, the place (counted in characters, from 1) and what to
// write instead.
func (e *ParseError) Error() string {
	column := 1
	for i := range e.Text {
		if i >= e.Pos {
			break
		}
		column++
	}
	return fmt.Sprintf("%q: %s (character %d)", e.Text, e.Msg, column)
}

// Unwrap returns the kind of refusal.
func (e *ParseError) Unwrap() error { return e.Err }
