package sheet

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/benchsums/units"
	"github.com/stretchr/testify/require"
)

func TestShow(t *testing.T) {
	mm := units.Millimetre
	for _, tc := range []struct {
		name string
		r    units.Reading[units.Length]
		in   Unit[units.Length]
		want string
	}{
		{"two figures", units.WithStd(173.4237*mm, 0.081*mm), Millimetre, "173.42 mm ± 0.16 mm"},
		{"one figure", units.WithStd(173.4237*mm, 0.3*mm), Millimetre, "173.4 mm ± 0.6 mm"},
		{"carry", units.WithStd(12.3456*mm, 0.0508*mm), Millimetre, "12.35 mm ± 0.10 mm"},
		{"tens", units.WithStd(1234*mm, 60*mm), Millimetre, "1230 mm ± 120 mm"},
		{"hundreds", units.WithStd(1254*mm, 160*mm), Millimetre, "1300 mm ± 300 mm"},
		{"inches", units.WithStd(25.4*mm, 0.254*mm), Inch, "1.000 in ± 0.020 in"},
		{"few repeats widen it", units.Reading[units.Length]{Value: 100 * mm, Std: 1 * mm, DoF: 2}, Millimetre, "100 mm ± 4 mm"},
		{"exact", units.Exact(3.0 / 16 * units.Inch), Millimetre, "4.7625 mm"},
		{"exact and large", units.Exact(123456789 * mm), Millimetre, "1.2346e+08 mm"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if got := strings.ReplaceAll(Show(tc.r, tc.in), "\u00a0", " "); got != tc.want {
				t.Errorf("got %s, want %s", got, tc.want)
			}
		})
	}
	if got := Show(units.WithStd(28.04*units.Degree, 0.4*units.Degree), Degree); got != "28.0° ± 0.8°" {
		t.Errorf("got %s", got)
	}
}

func demo() *Sheet {
	f := Of("tdc.position", "top dead centre", units.Reading[units.Length]{Value: 173.4 * units.Millimetre, Std: 0.1 * units.Millimetre, DoF: 4}, Millimetre, Inch)
	return &Sheet{
		Title: "An engine",
		Intro: []string{strings.Repeat("word ", 40)},
		Sections: []Section{{
			Number: 1, Key: "tdc", Title: "Top dead centre", Answer: []string{"Here."},
			Figures:  []Figure{f, Of("tdc.card", "card", units.Exact(4.7625*units.Millimetre), Millimetre).Noted("as pasted in")},
			Tables:   []Table{{"Ways", [][]string{{"way", "at"}, {"stop", "173.4 mm"}}}},
			Working:  []Step{{"The girth over pi", "D = C / π", "1118 mm / 3.1416", "355.9 mm"}},
			Improve:  "the rim setting",
			Scribe:   []string{"scribe " + strings.Repeat("far ", 30)},
			Cautions: []string{"plug out, fuel off"}, Questions: []string{"is it?"},
		}},
		Notes: []string{"last"},
	}
}

func TestTextKeepsToItsWidth(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, demo().WriteText(&b))
	for _, l := range strings.Split(b.String(), "\n") {
		if n := utf8.RuneCountInString(l); n > width+4 {
			t.Errorf("%d characters: %s", n, l)
		}
		if l != strings.TrimRight(l, " ") {
			t.Errorf("space at the end: %q", l)
		}
	}
	for _, want := range []string{"AN ENGINE\n=========", "1. TOP DEAD CENTRE", "D = C / π\n        = 1118", "TAKE THIS ONE BETTER FIRST: the rim setting", " !  plug out", " ?  is it?", " *  card: as pasted in"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %q in\n%s", want, b.String())
		}
	}
}

func TestJSON(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, demo().WriteJSON(&b))
	var got struct {
		Sections []struct {
			Question int
			Figures  []map[string]any
		}
	}
	require.NoError(t, json.Unmarshal(b.Bytes(), &got))
	f := got.Sections[0].Figures
	if f[0]["key"] != "tdc.position" || f[0]["unit"] != "mm" || f[0]["degrees_of_freedom"] != 4.0 || f[0]["standard_uncertainty"] == nil {
		t.Errorf("%v", f[0])
	}
	if _, has := f[1]["standard_uncertainty"]; has || f[1]["note"] != "as pasted in" {
		t.Errorf("an exact figure: %v", f[1])
	}
}
