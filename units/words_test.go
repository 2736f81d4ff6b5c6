package units

import (
	"slices"
	"testing"
)

func TestUnitWords(t *testing.T) {
	for _, c := range []struct {
		text  string
		words []string
	}{
		{"N m", []string{"n", "m"}},
		{"N·m", []string{"n", "m"}},
		{"N - m", []string{"n", "m"}},
		{"lbf/in²", []string{"lbf", "/", "in2"}},
		{"sq. in.", []string{"sq", "in"}},
		{"min⁻¹", []string{"min-1"}},
		{"in^2", []string{"in2"}},
		{"pint (imp)", []string{"pint", "imp"}},
		{"(imp) pint", []string{"imp", "pint"}},
	} {
		if got, ok := unitWords(c.text); !ok || !slices.Equal(got, c.words) {
			t.Errorf("%q: %q, %v, want %q", c.text, got, ok, c.words)
		}
	}
	for _, text := range []string{
		"N··m", "N - - m", "·m", "N·", "N -", // nothing to join
		".in", "^2", "in^", "in^x", // nothing in front or behind
		"(imp", "imp)", "()", "((imp)) pint", "(imp) (pint)", "pint () imp", // brackets
		"\xff",
	} {
		if got, ok := unitWords(text); ok {
			t.Errorf("%q: %q, want it refused", text, got)
		}
	}
}
