package threads

import (
	"errors"
	"testing"

	"example.com/benchsums/units"
)

func TestFindReadsWhatPeopleWrite(t *testing.T) {
	for _, tc := range []struct{ text, want string }{
		// British.
		{"1/4 BSF", "1/4-26 BSF"}, {"1/4BSF", "1/4-26 BSF"}, {"bsf 1/4", "1/4-26 BSF"},
		{"1/4 B.S.F.", "1/4-26 BSF"}, {"0.25-26 BSF", "1/4-26 BSF"}, {".25 BSF", "1/4-26 BSF"},
		{"¼ BSF", "1/4-26 BSF"}, {`1/4" BSF`, "1/4-26 BSF"}, {"1/4″ × 26 BSF", "1/4-26 BSF"},
		{"1/4 in. x 26 tpi BSF", "1/4-26 BSF"}, {"1/4''-26 bsf", "1/4-26 BSF"}, {"1⁄4 BSF", "1/4-26 BSF"},
		{"1 1/8 BSF", "1 1/8-9 BSF"}, {"1-1/8 BSF", "1 1/8-9 BSF"}, {"1.1/8 BSF", "1 1/8-9 BSF"},
		{"1⅛-9 BSF", "1 1/8-9 BSF"}, {"1 ⅛ BSF", "1 1/8-9 BSF"}, {"1 1/8-9 BSF", "1 1/8-9 BSF"},
		{"½ BSF", "1/2-16 BSF"}, {"¾ BSF", "3/4-12 BSF"}, {"⅜ BSF", "3/8-20 BSF"}, {"⅝ BSF", "5/8-14 BSF"}, {"⅞ BSF", "7/8-11 BSF"},
		{"1 BSF", "1-10 BSF"}, {"1-10 BSF", "1-10 BSF"}, {"0.312 BSF", "5/16-22 BSF"}, {"0.313-22 BSF", "5/16-22 BSF"},
		{"Whit 1/4", "1/4-20 BSW"}, {"1/4 W", "1/4-20 BSW"}, {"BSW 1/4", "1/4-20 BSW"},
		{"1/4 Whitworth", "1/4-20 BSW"}, {"7/16-20 Whit form", "7/16-20 Whit form"}, {"1/4-40 Whit", "1/4-40 ME"},
		{`1/4"-26 CEI`, "0.25-26 CEI"}, {"0.25in-26 CEI", "0.25-26 CEI"}, {"1/4 BSC", "1/4-26 BSC"},
		{"1/4 BSCy", "1/4-26 BSC"}, {"1/2 CEI", "1/2-26 BSC"}, {"9/16-20 CEI", "0.5625-20 CEI"},
		{"1/4-26 cycle", "1/4-26 BSC"}, {"1 3/8-24 cycle", "1 3/8-24 cycle"}, {"9/16-20 pedal", "9/16-20 cycle"}, {`9/16" x 20 tpi pedal thread`, "9/16-20 cycle"}, {"1/4-26 brass", "1/4-26 brass"},
		{"3/8 brass", "3/8-26 brass"}, {"1/4 x 40 ME", "1/4-40 ME"}, {"ME 1/4-32", "1/4-32 ME"},
		{"2BA", "2 BA"}, {"2 BA", "2 BA"}, {"No 4 BA", "4 BA"}, {"No. 4 B.A.", "4 BA"}, {"BA 0", "0 BA"},
		{"0BA", "0 BA"}, {"#8 BA", "8 BA"}, {"16ba", "16 BA"}, {"22 BA", "22 BA"},
		{"G 1/4", "G 1/4"}, {"G1/4", "G 1/4"}, {"1/4 BSP", "G 1/4"}, {"1/4 BSPP", "G 1/4"}, {"1/4-19 BSP", "G 1/4"},
		{"BSP 1/4 parallel", "G 1/4"}, {"G 1 1/4", "G 1 1/4"}, {"G1", "G 1"},
		{"R 1/4", "R 1/4"}, {"1/4 BSPT", "R 1/4"}, {"1/4 BSP taper", "R 1/4"}, {"Rc 1/2", "R 1/2"},
		// Metric.
		{"M8", "M8x1.25"}, {"m8", "M8x1.25"}, {"M 8", "M8x1.25"}, {"M8x1.25", "M8x1.25"}, {"M8 x 1", "M8x1"},
		{"M8×1", "M8x1"}, {"M8*1", "M8x1"}, {"M8-1", "M8x1"}, {"M8 x 1.0 mm", "M8x1"}, {"M8 fine x 1", "M8x1"}, {"M8 stud, pitch 1 mm", "M8x1"}, {"8mm x 1.0", "M8x1"},
		{"M8 coarse", "M8x1.25"}, {"metric 8 x 1", "M8x1"}, {"M3x0.6", "3x0.6 old"}, {"M14x1.25", "M14x1.25"},
		{"SI 8", "SI 8x1.25"}, {"8 x 1.25 SI", "SI 8x1.25"}, {"3x0.6", "3x0.6 old"}, {"Loewenherz 8", "Loew 8x1.2"},
		{"Löwenherz 8", "Loew 8x1.2"}, {"Loew 8x1.2", "Loew 8x1.2"}, {"8 x 1.2", "Loew 8x1.2"}, {"M8x1 plug", "M8x1 plug"},
		// Plugs.
		{"14 mm plug", "M14x1.25 plug"}, {"14mm plug", "M14x1.25 plug"}, {"18 mm spark plug", "M18x1.5 plug"},
		{"M10 plug", "M10x1 plug"}, {"7/8 plug", "7/8-18 plug"}, {"7/8-18", "7/8-18 plug"}, {"1/2 NPT plug", "1/2-14 NPT"},
		{"1/2 plug", "1/2-14 NPT"}, {"1/2-14 NPT taper", "1/2-14 NPT"},
		// American.
		{"3/8-16 UNC", "3/8-16 UNC"}, {"3/8 UNC", "3/8-16 UNC"}, {"UNC 3/8", "3/8-16 UNC"}, {"#10-32", "#10-32 UNF"},
		{"10-32", "#10-32 UNF"}, {"No. 10-32 UNF", "#10-32 UNF"}, {"No 10-24", "#10-24 UNC"}, {"10-32 UNF", "#10-32 UNF"},
		{"10 UNF", "#10-32 UNF"}, {"4-40", "#4-40 UNC"}, {"№ 4-40", "#4-40 UNC"}, {"0.190-32", "#10-32 UNF"},
		{"0-80", "#0-80 UNF"}, {"1-8 UNC", "1-8 UNC"}, {"1-64 UNC", "#1-64 UNC"}, {"1-1/8-7 UNC", "1 1/8-7 UNC"},
		{"1-14 NF", "1-14 UNS"}, {"3/8-24 SAE", "3/8-24 UNF"}, {"1/2-12 USS", "1/2-12 USS"}, {"1/4-28", "1/4-28 UNF"},
		{"2-4.5 UNC", "2-4.5 UNC"}, {"1/8-27 NPT", "1/8-27 NPT"}, {"1/8 NPT", "1/8-27 NPT"},
	} {
		got, err := Find(tc.text)
		if err != nil || got.Designation() != tc.want {
			t.Errorf("Find(%q) = %v, %v; want %s", tc.text, got, err, tc.want)
		}
	}
}

func TestFindSaysWhatItCannotDecide(t *testing.T) {
	for _, tc := range []struct{ text, want string }{
		{"3/8-16", `"3/8-16": which of 3/8-16 UNC, 3/8-16 BSW`},
		{"1/4-20", `"1/4-20": which of 1/4-20 UNC, 1/4-20 BSW`},
		{"1/4-26", `"1/4-26": which of 1/4-26 BSF, 1/4-26 BSC`},
		{"1/2-12", `"1/2-12": which of 1/2-12 USS, 1/2-12 BSW`},
		{"No 4", `"No 4": which of #4-40 UNC, #4-48 UNF, 4 BA`},
		{"1/4 ME", `"1/4 ME": which of 1/4-32 ME, 1/4-40 ME`},
		{"8x1.25", `"8x1.25": which of M8x1.25, SI 8x1.25`},
		{"M15", `"M15": which of M15x1.5, M15x1`},
		{"14 mm", ""},
		{"1/2", `"1/2": which of 1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF, 1/2-12 USS, 1/2-12 BSW, 1/2-16 BSF, 1/2-26 BSC, 1/2-20 cycle and 4 more`},
		{"8", ""},
	} {
		_, err := Find(tc.text)
		var amb *AmbiguousError
		if !errors.As(err, &amb) || !errors.Is(err, units.ErrAmbiguous) || len(amb.Candidates) < 2 {
			t.Errorf("Find(%q): %v, want an *AmbiguousError", tc.text, err)
			continue
		}
		if tc.want != "" && err.Error() != tc.want {
			t.Errorf("Find(%q): %v\nwant %s", tc.text, err, tc.want)
		}
	}
}

func TestFindReadsBackEveryDesignation(t *testing.T) {
	for th := range All() {
		if got, err := Find(th.Designation()); err != nil || got != th {
			t.Errorf("Find(%q) = %v (%v), %v", th.Designation(), got, got.Series().Name(), err)
		}
	}
}

func TestFindSuggestsWhatComesNear(t *testing.T) {
	for _, tc := range []struct{ text, want string }{
		{"M8x1.2", `"M8x1.2": no such thread; near it: M8x1.25, M8x1, Loew 8x1.2`},
		// A trainees' handbook of taps and dies lists M46x3 for M45x3.
		{"M46x3", `"M46x3": no such thread; near it: M45x3, M48x3, M50x3`},
		{"1/4-27 BSF", ""},
		{"26 BA", ""},
		{"G 1/3", ""},
		{"1/4-19 BSW", ""},
		{"1/4-20 USS", ""},
		{"100 UNC", `"100 UNC": no such thread`},
	} {
		_, err := Find(tc.text)
		var unk *UnknownError
		if !errors.As(err, &unk) || !errors.Is(err, ErrUnknown) {
			t.Errorf("Find(%q): %v, want an *UnknownError", tc.text, err)
			continue
		}
		if tc.want != "" && err.Error() != tc.want {
			t.Errorf("Find(%q): %v\nwant %s", tc.text, err, tc.want)
		}
	}
}

func BenchmarkFind(b *testing.B) {
	for _, text := range []string{"1/4 BSF", "M8x1.25", "2 BA", "3/8-16 UNC", "10-32", "G 1/4", `1/4"-26 CEI`,
		"M8 x 1", "#10-32", "14 mm plug", "No 4 BA", "1/4 BSP"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_, _ = Find(text)
			}
		})
	}
}
