package threads

import (
	"errors"
	"strings"
	"testing"

	"example.com/benchsums/units"
)

// Whatever the text, Find returns a thread that its own name finds again, or
// one of three errors; and capitals and spaces around do not matter.
func FuzzFind(f *testing.F) {
	for _, text := range []string{"1/4 BSF", `1/4"-26 CEI`, "2BA", "No 4 BA", "M8 x 1", "3/8-16 UNC", "#10-32", "14 mm plug", "G 1/4",
		"0.25-26 BSF", "1⅛-9 BSF", "Löwenherz 8", "1.1/8 W", "B.S.F. 1/4", "1/4 BSP taper", "M8x1,25", "1/0 BSF", "999999999999 UNC",
		"#", "x", "1/4''", "\xff", "M8x1.25-6g", "1 1/8", "½", "1½-6", "8×1.25", "-8", "1e9", "½½½", "1/4/2", "..5", "5 BA BA"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		th, err := Find(text)
		var (
			parse *units.ParseError
			amb   *AmbiguousError
			unk   *UnknownError
		)
		switch {
		case err == nil:
			if again, err := Find(th.Designation()); err != nil || again != th {
				t.Errorf("%q is %v, which is read as %v, %v", text, th, again, err)
			}
			if upper, err := Find(" " + strings.ToUpper(text) + " "); err != nil || upper != th {
				t.Errorf("%q is %v, in capitals %v, %v", text, th, upper, err)
			}
		case errors.As(err, &parse):
			if parse.Kind != "thread" || parse.Pos < 0 || parse.Pos > len(text) {
				t.Errorf("%q: %#v", text, parse)
			}
		case errors.As(err, &amb):
			if len(amb.Candidates) < 2 {
				t.Errorf("%q: ambiguous between %v", text, amb.Candidates)
			}
		case errors.As(err, &unk):
		default:
			t.Errorf("%q: %T %v", text, err, err)
		}
	})
}

func TestFindRefuses(t *testing.T) {
	for _, tc := range []struct{ text, want string }{
		// Nothing to read.
		{"", "want a size"}, {"   ", "want a size"}, {"BSF", "want a size"}, {"x", "want a size"},
		// Numbers.
		{"M8x1,25", "a comma can part decimals or thousands; write a point (character 5)"},
		{"1/0 BSF", "a fraction over 0"}, {"1 5/4 BSF", "want a fraction of less than 1"},
		{"1234567890 UNC", "too many digits"}, {"M8x1x2", "want no more than a size and a pitch"},
		{"0.1234567890 UNC", "too many digits"}, {"M8x0", "want a pitch of more than 0"},
		// Words.
		{"1/4 XYZ", "not a series known here: want M, UNC"}, {"1/4 BSF LH", "leave the hand off"},
		{"1/4 BSF UNF", "a second series, or a tolerance class, which goes to BoltLimits or NutLimits (character 9)"},
		{"M8x1.25-6g", "goes to BoltLimits or NutLimits"}, {"1/4-20 UNC-2A", "goes to BoltLimits or NutLimits"},
		{"1/4 coarse", "coarse and fine go with M"}, {"1/4 BSF taper", "taper and parallel go with BSP"},
		{"1/4 BSP taper parallel", "exclude one another"}, {"M8 coarse fine", "exclude one another"},
		{"ЖЖ 8", "not a series known here"}, {"abcdefghijklmnop 8", "not a series known here"},
		// Units and marks.
		{"mm 8", "want a size before its unit"}, {`#1/4"`, "given in two ways"}, {"1/4 mm", "given in two ways"},
		{`M8x1"`, "want the pitch in threads per inch, or in mm"}, {"26 tpi", "want a size and then"},
		{"$8", "want a size, a pitch and a series"}, {"\xff8", "want a size, a pitch and a series"},
	} {
		_, err := Find(tc.text)
		var parse *units.ParseError
		if !errors.As(err, &parse) || !errors.Is(err, units.ErrSyntax) || !strings.Contains(err.Error(), tc.want) {
			t.Errorf("Find(%q): %v; want %q", tc.text, err, tc.want)
		}
	}
}

func TestFindAllocatesNothing(t *testing.T) {
	for _, text := range []string{"1/4 BSF", "M8x1.25", "2 BA", "3/8-16 UNC", "10-32", "G 1/4", `1/4"-26 CEI`, "1⅛-9 BSF"} {
		if n := testing.AllocsPerRun(100, func() { _, _ = Find(text) }); n != 0 {
			t.Errorf("Find(%q) allocates %v times", text, n)
		}
	}
	th := mustFind(t, "M8")
	if n := testing.AllocsPerRun(100, func() {
		_ = th.StressArea()
		_, _ = th.BoltLimits("6g")
		_, _ = th.NutLimits("6H")
		for u := range All() {
			_ = u.Major()
		}
	}); n != 0 {
		t.Errorf("areas, limits and ranging over all threads allocate %v times", n)
	}
}
