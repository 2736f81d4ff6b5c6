package ignition

import (
	"fmt"
	"strings"

	"example.com/benchsums/units"
)

// A word is a choice that is written as a word in a file of readings.
type word interface {
	comparable
	fmt.Stringer
}

// writeWord returns the word for v, which has to be one of the choices.
func writeWord[W word](v W, choices ...W) ([]byte, error) {
	for _, c := range choices {
		if c == v {
			return []byte(c.String()), nil
		}
	}
	return nil, fmt.Errorf("%v: want %s: %w", v, list(choices), units.ErrDomain)
}

// readWord sets v to the choice whose word is text.
func readWord[W word](v *W, text []byte, what string, choices ...W) error {
	for _, c := range choices {
		if c.String() == string(text) {
			*v = c
			return nil
		}
	}
	return fmt.Errorf("%q: want %s, %s: %w", text, list(choices), what, units.ErrDomain)
}

// list writes the choices as "a", "b" or "c".
func list[W word](choices []W) string {
	var b strings.Builder
	for i, c := range choices {
		switch {
		case i == 0:
		case i == len(choices)-1:
			b.WriteString(" or ")
		default:
			b.WriteString(", ")
		}
		fmt.Fprintf(&b, "%q", c.String())
	}
	return b.String()
}
