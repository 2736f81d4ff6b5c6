package jobfile

import (
	"strings"
	"testing"

	"example.com/benchsums/units"
	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

type job struct {
	Name  string                        `toml:"name"`
	Teeth int                           `toml:"teeth"`
	Crank crank                         `toml:"crank"`
	Dial  []series                      `toml:"dial"`
	Bore  []units.Reading[units.Length] `toml:"bore"`
	Lean  *units.Reading[units.Angle]   `toml:"lean"`
}

type crank struct {
	Stroke units.Reading[units.Length] `toml:"stroke"`
	Rod    units.Length                `toml:"rod"`
}

type series struct {
	Name     string `toml:"name"`
	Readings string `toml:"readings"`
}

const good = `name = "demo"
teeth = 18
bore = ["73.1 mm", "2.88 in ± 0.001 in"]
lean = "12° ± 1°"
[crank]
stroke = "76 mm ± 0.1 mm"
rod = "6 in"
[[dial]]
name = "A"
readings = """
rim mm  dial mm
60      9.46
70      7.90
"""
[[dial]]
name = "B"
readings = "dial thou  rim cm\n1 2"
`

func TestDecode(t *testing.T) {
	for _, text := range []string{good, "\xef\xbb\xbf" + good, strings.ReplaceAll(good, "\n", "\r\n")} {
		var j job
		f, err := Decode("demo.toml", []byte(text), &j)
		require.NoError(t, err)
		if got := j.Crank.Rod; got != 6*units.Inch {
			t.Errorf("rod %v, want 6 in", got)
		}
		for key, want := range map[string]int{"teeth": 2, "crank.rod": 7, "crank.offset": 5, "dial.1.name": 16, "nothing": 0} {
			if got := f.Line(key); got != want {
				t.Errorf("%s on line %d, want %d", key, got, want)
			}
		}
		var rim, dial []units.Length
		rows, err := f.Columns("dial.0.readings", j.Dial[0].Readings, Quantities("rim", &rim), Quantities("dial", &dial))
		require.NoError(t, err)
		if diff := cmp.Diff([]int{12, 13}, rows); diff != "" {
			t.Error(diff)
		}
		if dial[1].Millimetres() != 7.90 || rim[0].Millimetres() != 60 {
			t.Errorf("rim %v, dial %v", rim, dial)
		}
	}
}

func TestDecodeRefuses(t *testing.T) {
	for _, tc := range []struct{ name, text, want string }{
		{"bare number", "[crank]\nstroke = 60", "x.toml:2: crank.stroke: which unit? write 60 mm or 60 in or 60 thou"},
		{"bare number into the float underneath", "[crank]\nrod = 60", "x.toml:2: crank.rod: which unit? write 60 mm"},
		{"bare number in a list", "bore = [\"1 mm\",\n 2.5]", "x.toml:1: bore: which unit? write 2.5 mm"},
		{"number as text", "[crank]\nstroke = \"60\"", `x.toml:2: crank.stroke: "60": which unit?`},
		{"comma", "lean = \"12,5°\"", `x.toml:1: lean: "12,5°": a comma: write 12.5`},
		{"unknown key", "teeth = 1\n[crank]\nstrike = 1", "x.toml:3: crank.strike: no such key here"},
		{"unknown table", "[motor]\na = 1", "x.toml:1: motor: no such key here"},
		{"twice", "teeth = 1\nteeth = 2", "x.toml:2: teeth: key teeth is already defined"},
		{"text for a count", "teeth = \"many\"", "x.toml:1: teeth: text, where a list (in square brackets"},
		{"number for a name", "name = 5", "x.toml:1: name: a number, where text or a table belongs"},
		{"fraction of a tooth", "teeth = 1.5", "x.toml:1: teeth: a number, where text, a whole number or a table belongs"},
		{"list for one", "[crank]\nstroke = [\"1 mm\"]", "x.toml:2: crank.stroke: a list, where one value belongs"},
		{"one for a list", "bore = \"5 mm\"", "x.toml:1: bore: text, where a list (in square brackets, as in [\"60 mm\"]), a table or a number belongs"},
		{"true for a reading", "[crank]\nstroke = true", "x.toml:2: crank.stroke: want a number first"},
		{"a date for a reading", "[crank]\nrod = 2026-01-02", "x.toml:2: crank.rod: "},
		{"no value", "teeth =\n", "x.toml:1"},
		{"half a string", "name = \"abc\n", "x.toml:1"},
		{"not text", "\xff\xfe", "x.toml: not a text file in UTF-8"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			var j job
			_, err := Decode("x.toml", []byte(tc.text), &j)
			if err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v, want %s", err, tc.want)
			}
			if err != nil && (strings.Contains(err.Error(), "struct") || strings.Contains(err.Error(), "toml:") && !strings.Contains(err.Error(), "x.toml:")) {
				t.Errorf("%v: talks of Go", err)
			}
		})
	}
}

func TestColumnsRefuse(t *testing.T) {
	for _, tc := range []struct{ name, text, want string }{
		{"no unit", "rim dial\n1 2", `x.toml:4: dial.1.readings: heading "rim dial": want rim, dial, each with its unit`},
		{"other column", "rim mm drop mm\n1 2", `x.toml:4: dial.1.readings: no column "drop" here: want rim, dial`},
		{"figure missing", "rim mm dial mm\n1 2\n\n3", `x.toml:7: dial.1.readings: "3": 1 figures, want 2`},
		{"comma", "rim mm dial mm\n1 2,5", `x.toml:5: dial.1.readings: column dial: "2,5 mm": a comma`},
		{"unknown unit", "rim mm dial furlong\n1 2", `x.toml:5: dial.1.readings: column dial: "2 furlong"`},
		{"nothing", "rim mm dial mm\n", `x.toml:4: dial.1.readings: no readings`},
	} {
		t.Run(tc.name, func(t *testing.T) {
			var j job
			f, err := Decode("x.toml", []byte("name = \"x\"\n[[dial]]\nreadings = \"\"\"\n"+tc.text+"\"\"\"\n"), &j)
			require.NoError(t, err)
			var rim, dial []units.Length
			_, err = f.Columns("dial.0.readings", j.Dial[0].Readings, Quantities("rim", &rim), Quantities("dial", &dial))
			if err == nil || !strings.Contains(err.Error(), tc.want) {
				t.Errorf("got %v, want %s", err, tc.want)
			}
		})
	}
}

func FuzzDecode(f *testing.F) {
	f.Add([]byte(good))
	f.Add([]byte("a = [1, {b = 2}]\n[[c]]\n[c.d]\ne.f = 1"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var j job
		if _, err := Decode("f.toml", data, &j); err != nil && !strings.HasPrefix(err.Error(), "f.toml") {
			t.Errorf("%v: does not name the file", err)
		}
	})
}
