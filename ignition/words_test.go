package ignition

import (
	"encoding"
	"errors"
	"strings"
	"testing"

	"example.com/benchsums/units"
)

func TestWordsRoundTrip(t *testing.T) {
	for _, v := range []interface {
		encoding.TextMarshaler
		String() string
	}{Clockwise, Anticlockwise, Rising, Falling, OnRim, OnCase} {
		text, err := v.MarshalText()
		if err != nil || string(text) != v.String() {
			t.Errorf("%v: wrote %q, %v", v, text, err)
		}
	}
	var w Turning
	var f Figures
	var p Place
	for _, tc := range []struct {
		into  encoding.TextUnmarshaler
		text  string
		wrong string
	}{
		{&w, "anticlockwise", `"Clockwise": want "clockwise" or "anticlockwise", the way the engine turns, facing the rim`},
		{&f, "falling", `want "rising" or "falling", what the figures do at the pointer`},
		{&p, "case", `want "rim" or "case", what the mark is scribed on`},
	} {
		if err := tc.into.UnmarshalText([]byte(tc.text)); err != nil {
			t.Errorf("%q: %v", tc.text, err)
		}
		err := tc.into.UnmarshalText([]byte("Clockwise"))
		if !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.wrong) {
			t.Errorf("got %v, want ErrDomain and %s", err, tc.wrong)
		}
	}
	if w != Anticlockwise || f != Falling || p != OnCase {
		t.Errorf("read %v, %v, %v", w, f, p)
	}
	for _, v := range []encoding.TextMarshaler{Turning(0), Figures(9), Place(-1)} {
		if _, err := v.MarshalText(); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v: got %v, want ErrDomain", v, err)
		}
	}
}
