package fits

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func mm(x float64) units.Length { return units.Length(x) * units.Millimetre }

// What printed sources say the standard does not have.
var undefined = []struct {
	nominal float64
	class   string
	says    string
}{
	{1, "A11", "up to 1 mm"}, {0.8, "b9", "up to 1 mm"}, {1, "B12", "up to 1 mm"}, {1, "N9", "up to 1 mm"},
	{1, "H14", "up to 1 mm"}, {0.5, "h16", "up to 1 mm"},
	{20, "T7", "over 24 mm"}, {24, "t6", "over 24 mm"}, {3, "t6", "over 24 mm"},
	{14, "V7", "over 14 mm"}, {10, "v6", "over 14 mm"}, {18, "Y7", "over 18 mm"}, {16, "y7", "over 18 mm"}, {3, "Y8", "over 18 mm"},
	{5, "j8", "8 up to 3 mm"}, {20, "j4", "5 to 7 only"}, {25, "j9", "5 to 7 only"},
	{50, "J5", "6 to 8 only"}, {25, "J9", "6 to 8 only"}, {600, "J7", "stop at 500 mm"}, {600, "j6", "stop at 500 mm"},
	{10, "K9", "K above IT8"}, {400, "K10", "K above IT8"},
	{600, "A11", "stop at 500 mm"}, {501, "c11", "stop at 500 mm"}, {560, "B11", "stop at 500 mm"},
	{700, "z8", "stop at 500 mm"}, {600, "x6", "stop at 500 mm"}, {600, "ZC8", "stop at 500 mm"},
	{600, "cd8", "stop at 50 mm"}, {600, "IT01", "stop at 500 mm"}, {600, "IT0", "stop at 500 mm"},
	{3151, "H7", "ends at 3150 mm"}, {0, "H7", "more than 0 mm"}, {-5, "H7", "more than 0 mm"},
	{math.NaN(), "H7", "more than 0 mm"}, {math.Inf(1), "H7", "ends at 3150 mm"},
	{60, "EF8", "stop at 50 mm"}, {40, "M2", "grades 3 to 8"}, {40, "P01", "grades 3 to 8"},
}

func TestUndefined(t *testing.T) {
	for _, tc := range undefined {
		t.Run(fmt.Sprintf("%g %s", tc.nominal, tc.class), func(t *testing.T) {
			var err error
			if strings.HasPrefix(tc.class, "IT") {
				_, err = Grade(mm(tc.nominal), tc.class)
			} else {
				_, err = Limits(mm(tc.nominal), tc.class)
			}
			var u *UndefinedError
			if !errors.As(err, &u) || !errors.Is(err, units.ErrDomain) {
				t.Fatalf("got %v, want an UndefinedError", err)
			}
			if u.What != tc.class || !strings.Contains(err.Error(), tc.says) || !strings.HasPrefix(err.Error(), tc.class+" at ") {
				t.Errorf("got %q, want it to name %s and say %q", err, tc.class, tc.says)
			}
		})
	}
	if _, err := (System{}).Size(mm(25), Class{}); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "want a class") {
		t.Errorf("zero class: %v", err)
	}
}

// The ends of the ranges belong to the range below, however the size was reckoned.
func TestBoundaries(t *testing.T) {
	for row, end := range fineTo {
		for _, at := range []units.Length{mm(end), mm(end/7) * 7, units.Length(end/25.4) * units.Inch, mm(math.Nextafter(end, 0)), mm(math.Nextafter(end, 1e6))} {
			p, why := placeOf(at)
			if why != "" || p.fine != row || mainTo[p.main] < end*(1-1e-9) || p.main > 0 && mainTo[p.main-1] > end*(1-1e-9) {
				t.Errorf("%v: row %d (%s), want %d", at, p.fine, why, row)
			}
		}
		if row == len(fineTo)-1 {
			break
		}
		if p, _ := placeOf(mm(end * (1 + 1e-6))); p.fine != row+1 {
			t.Errorf("over %g mm: row %d, want %d", end, p.fine, row+1)
		}
	}
	if p, _ := placeOf(mm(1)); !p.tiny {
		t.Error("1 mm is up to and including 1 mm")
	}
	if p, _ := placeOf(mm(1.001)); p.tiny {
		t.Error("1.001 mm is over 1 mm")
	}
}

func TestNotes(t *testing.T) {
	for _, tc := range []struct {
		nominal float64
		class   string
		note    string
	}{
		{25, "H7", ""}, {10, "cd8", ""}, {12, "cd8", noteMemory}, {50, "FG6", noteMemory}, {900, "n5", noteFine}, {900, "n6", ""},
		{600, "K9", noteK}, {600, "k9", ""}, {500, "K8", ""},
		{1.2, "h18", noteNothing}, {1.5, "h18", ""},
	} {
		if z, err := Limits(mm(tc.nominal), tc.class); err != nil || z.Note != tc.note {
			t.Errorf("%g %s: note %q, %v, want %q", tc.nominal, tc.class, z.Note, err, tc.note)
		}
	}
}

func TestWholeJS(t *testing.T) {
	const jis = "JIS B 0401:1999 limits, Mitsubishi Materials p. 1263"
	const gb = "GB/T shaft limits in common use"
	for _, tc := range []struct {
		nominal float64
		class   string
		half    string
		source  string
	}{
		{25, "JS7", "10", jis}, {8, "js7", "7", gb}, {25, "js7", "10", gb}, {40, "js7", "12", gb},
	} {
		z, err := System{WholeJS: true}.Limits(mm(tc.nominal), tc.class)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: tc.half, Source: tc.source}.Check(t, z.Upper.Micrometres())
		figures.Near(t, "symmetry", float64(z.Upper), -float64(z.Lower), 0)
	}
	for _, class := range []string{"js5", "js6", "js12", "h7"} { // not concerned
		a, _ := Limits(mm(120), class)
		b, _ := System{WholeJS: true}.Limits(mm(120), class)
		if a != b {
			t.Errorf("%s: %v and %v", class, a, b)
		}
	}
}

func TestISA(t *testing.T) {
	const src = "DIN 7160 table of shafts, Spanish reprint"
	isa := System{ISA: true}
	for _, tc := range []struct {
		nominal      float64
		class        string
		lower, upper string
	}{
		{2, "g6", "-10", "-3"}, {2, "f7", "-16", "-7"}, {2, "n6", "6", "13"}, {2, "p6", "9", "16"}, {2, "j6", "-1", "6"},
		{3, "h5", "-5", "0"}, {3, "h6", "-7", "0"}, {3, "h7", "-9", "0"}, {5, "j5", "-1", "4"}, {5, "j6", "-1", "7"},
	} {
		z, err := isa.Limits(mm(tc.nominal), tc.class)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: tc.lower, Source: src}.Check(t, z.Lower.Micrometres())
		figures.Figure{Printed: tc.upper, Source: src}.Check(t, z.Upper.Micrometres())
	}
	it, err := isa.Grade(mm(2), "IT7")
	if err != nil || !(math.Abs(it.Micrometres()-9) < 1e-9) {
		t.Errorf("ISA IT7 up to 3 mm: %v, %v", it, err)
	}
	for _, tc := range []struct {
		nominal float64
		class   string
		says    string
	}{
		{2, "k6", "f, g, h, j6, n and p"}, {2, "j5", "f, g, h, j6, n and p"}, {2, "h8", "grades 5 to 7"}, {2, "G7", "shafts and H"},
		{1, "h6", "up to 1 mm"}, {200, "h6", "over 180 mm"},
	} {
		if _, err := isa.Limits(mm(tc.nominal), tc.class); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("ISA %g %s: %v, want it to say %q", tc.nominal, tc.class, err, tc.says)
		}
	}
	if _, err := isa.Grade(mm(2), "IT8"); !errors.Is(err, units.ErrDomain) {
		t.Errorf("ISA IT8 at 2 mm: %v", err)
	}
	a, errA := Limits(mm(5), "g6")
	b, errB := isa.Limits(mm(5), "g6")
	if errA != nil || errB != nil || a.Lower != b.Lower || a.Upper != b.Upper {
		t.Errorf("5 g6: %v, %v (%v, %v)", a, b, errA, errB)
	}
	for _, class := range []string{"H7", "k6", "g6", "j7", "P7"} { // as ISO from there
		a, errA := Limits(mm(25), class)
		b, errB := isa.Limits(mm(25), class)
		if errA != nil || errB != nil || a.Lower != b.Lower || a.Upper != b.Upper || b.Note != noteISA {
			t.Errorf("%s: ISO %v, ISA %v (%v, %v)", class, a, b, errA, errB)
		}
	}
}

func TestLimitsOfNoClass(t *testing.T) {
	for _, s := range []System{{}, {ISA: true}, {WholeJS: true}} {
		if _, err := s.Limits(mm(25), "Q7"); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "no such letter") {
			t.Error(err)
		}
	}
	if _, err := Limits(mm(25), "seven"); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

func TestLimitsAllocatesNothing(t *testing.T) {
	for _, class := range []string{"H7", "zc10", "js13"} {
		if n := testing.AllocsPerRun(100, func() { _, _ = Limits(25*units.Millimetre, class) }); n != 0 {
			t.Errorf("%s: %g allocations", class, n)
		}
	}
}

func BenchmarkLimits(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Limits(25*units.Millimetre, "H7"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLimitsDelta(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Limits(450*units.Millimetre, "ZC7"); err != nil {
			b.Fatal(err)
		}
	}
}

func FuzzLimits(f *testing.F) {
	f.Add(0.025, "H7")
	f.Add(-1.0, "g6")
	f.Add(1e-9, "c11")
	f.Add(3.15, "zc18")
	f.Fuzz(func(t *testing.T, metres float64, class string) {
		nominal := units.Length(metres)
		z, err := Limits(nominal, class)
		if err != nil {
			if err.Error() == "" || z != (Size{}) {
				t.Errorf("%v %q: %v with %v", nominal, class, err, z)
			}
			return
		}
		if !(z.Min <= z.Max) || !(z.Lower < z.Upper) || z.Nominal != nominal || !defined(z.Class, nominal.Millimetres()*(1-1e-12)) || z.String() == "" {
			t.Errorf("%v %q: %v", nominal, class, z)
		}
	})
}
