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

// defined says, letter by letter and in other words than the code, what the
// standard has. Sources: ISO 286-1:2010 as gathered in the package comment.
func defined(c Class, nominal float64) bool {
	n := int(c.grade) - 1 // IT01 is −1
	s := c.Letters()
	low := strings.ToLower(s)
	in := func(over, to float64) bool { return nominal > over && nominal <= to }
	if !in(0, 3150) || n <= 0 && nominal > 500 || n >= 14 && nominal <= 1 {
		return false
	}
	switch {
	case low == "a" || low == "b":
		return in(1, 500)
	case low == "c":
		return in(0, 500)
	case low == "cd" || low == "ef" || low == "fg":
		return in(0, 50)
	case low == "d" || low == "e" || low == "f" || low == "g" || low == "h" || low == "js":
		return true
	case s == "J":
		return n >= 6 && n <= 8 && nominal <= 500
	case s == "j":
		return n >= 5 && n <= 7 && nominal <= 500 || n == 8 && nominal <= 3
	}
	if c.hole && n < 3 && in(3, 500) {
		return false // no delta
	}
	switch {
	case s == "K":
		return n <= 8 || nominal <= 3 || nominal > 500
	case s == "N":
		return n <= 8 || nominal > 1
	case low == "k" || low == "m" || low == "n" || low == "p" || low == "r" || low == "s" || low == "u":
		return true
	case low == "t":
		return nominal > 24
	case low == "v":
		return in(14, 500)
	case low == "y":
		return in(18, 500)
	}
	return in(0, 500)
}

// sizes are the two ends and a middle of every range, and what stands round 1 mm.
func sizes() []float64 {
	s := []float64{0.3, 1, 1.0001, 2}
	for i, end := range fineTo {
		s = append(s, end)
		if i+1 < len(fineTo) {
			s = append(s, end+0.001, math.Sqrt(end*fineTo[i+1]))
		}
	}
	return append(s, 3150.001, 4000)
}

func allClasses() []Class {
	var all []Class
	for _, hole := range []bool{false, true} {
		for l := la; l <= lzc; l++ {
			for g := grade(0); g < grade(len(gradeNames)); g++ {
				all = append(all, Class{l, g, hole})
			}
		}
	}
	return all
}

// Every class at every size answers or is refused as the standard says, and an
// answer is as wide as the grade.
func TestWalk(t *testing.T) {
	answered, refused := 0, 0
	for _, c := range allClasses() {
		for _, s := range sizes() {
			z, err := Limits(mm(s), c.String())
			if want := defined(c, s); want != (err == nil) {
				t.Errorf("%g %v: error %v, want an answer: %v", s, c, err, want)
				continue
			}
			if err != nil {
				var u *UndefinedError
				if !errors.As(err, &u) || u.Why == "" {
					t.Errorf("%g %v: %v", s, c, err)
				}
				refused++
				continue
			}
			answered++
			it, err := Grade(mm(s), c.GradeName())
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, fmt.Sprintf("%g %v tolerance", s, c), z.Tolerance().Micrometres(), it.Micrometres(), 1e-6)
			if c.letter == ljs && z.Lower != -z.Upper {
				t.Errorf("%g %v: %v and %v", s, c, z.Lower, z.Upper)
			}
			figures.Near(t, "least", z.Min.Metres(), (z.Nominal + z.Lower).Metres(), 0)
			figures.Near(t, "greatest", z.Max.Metres(), (z.Nominal + z.Upper).Metres(), 0)
			if z.Class != c || z.Nominal != mm(s) {
				t.Errorf("%g %v: answers for %v %v", s, c, z.Nominal, z.Class)
			}
		}
	}
	t.Logf("%d answered, %d refused", answered, refused)
}

// The laws of the standard, seen from outside: tolerances grow with the grade, the
// letters stand in their order, A to H mirror a to h in every grade, and K to ZC mirror
// k to zc with delta where there is delta.
func TestWalkLaws(t *testing.T) {
	at := func(s float64, c Class) (lower, upper float64, ok bool) {
		z, err := System{}.Size(mm(s), c)
		return z.Lower.Micrometres(), z.Upper.Micrometres(), err == nil
	}
	it := func(s float64, g grade) float64 {
		v, err := Grade(mm(s), "IT"+gradeNames[g])
		if err != nil {
			return math.NaN()
		}
		return v.Micrometres()
	}
	for _, s := range sizes() {
		for g := grade(0); g < grade(len(gradeNames)); g++ {
			if g > 0 && it(s, g) <= it(s, g-1) {
				t.Errorf("%g: IT%s is not above IT%s", s, gradeNames[g], gradeNames[g-1])
			}
			last := math.Inf(-1)
			for l := la; l <= lzc; l++ {
				lower, upper, ok := at(s, Class{l, g, false})
				if !ok || l == ljs || l == lj {
					continue
				}
				if lower < last {
					t.Errorf("%g %v lies below the letter before", s, Class{l, g, false})
				}
				last = lower
				holeLower, holeUpper, ok := at(s, Class{l, g, true})
				switch {
				case !ok: // no delta there, or K above IT8
				case l <= lh:
					figures.Near(t, fmt.Sprintf("%g %v", s, Class{l, g, true}), holeLower, -upper, 1e-6)
				default:
					checkMirror(t, s, Class{l, g, true}, holeUpper, lower, it(s, g)-it(s, max(g, 1)-1))
				}
			}
		}
	}
}

// checkMirror holds the upper deviation of a hole against the lower of the shaft.
func checkMirror(t *testing.T, s float64, c Class, hole, shaft, step float64) {
	t.Helper()
	if c.letter == lk { // k is 0 outside IT4 to IT7, and K is not its mirror there
		z, err := System{}.Size(mm(s), Class{lk, it6, false})
		if err != nil {
			t.Fatal(err)
		}
		shaft = z.Lower.Micrometres()
	}
	want := -shaft
	small, large := s <= 3, s > 500
	switch {
	case c.letter == ln && c.grade > it8 && !small && !large:
		want = 0
	case c.letter == lm && c.grade == it6 && s > 250 && s <= 315:
		want = -9
	case small || large || c.grade > it8 || c.grade == it8 && c.letter >= lp:
	default:
		want += step
	}
	figures.Near(t, fmt.Sprintf("%g %v", s, c), hole, want, 1e-6)
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
