package fits

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
)

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
