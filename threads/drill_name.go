package threads

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/benchsums/units"
)

// FindDrill reads the name of a drill as people write it: 4.2 mm; #29, No 29,
// number 29; F, letter F; 5/32, 5/32 in, 1 1/16"; or a size in inches that one
// of the sets has to the last figure, 0.136 in.
//
// A bare whole number is refused with units.ErrAmbiguous, for 29 may be number
// 29 or 29 mm, and a bare decimal with units.ErrNoUnit. A size that no set has
// is refused with units.ErrDomain, with its neighbours named.
func FindDrill(name string) (Drill, error) {
	text := strings.ToLower(strings.Join(strings.Fields(name), " "))
	if text == "" {
		return Drill{}, fmt.Errorf("no drill: want a name such as 4.2 mm, #29, F or 5/32 in: %w", units.ErrSyntax)
	}
	if digits, ok := cutWord(text, "#", "№", "number", "no.", "no", "nr.", "nr"); ok {
		return findNumber(name, digits)
	}
	if letter, ok := cutWord(text, "letter", "ltr"); ok || len(text) == 1 && 'a' <= text[0] && text[0] <= 'z' {
		if !ok {
			letter = text
		}
		return findLetter(name, letter)
	}
	return findSize(name, text)
}

// cutWord takes the first of the words that text begins with off it.
func cutWord(text string, words ...string) (rest string, ok bool) {
	for _, w := range words {
		if rest, ok := strings.CutPrefix(text, w); ok {
			return strings.TrimSpace(rest), true
		}
	}
	return text, false
}

func findNumber(name, digits string) (Drill, error) {
	no, err := strconv.Atoi(digits)
	if err != nil {
		return Drill{}, fmt.Errorf("%q: want a whole number after the sign, as in #29: %w", name, units.ErrSyntax)
	}
	last := len(numberDrills)
	if no < 1 || no > last {
		return Drill{}, fmt.Errorf("%q: number drills run from #%d, the smallest, to #1: %w", name, last, units.ErrDomain)
	}
	return numberDrill(last - no), nil
}

func findLetter(name, letter string) (Drill, error) {
	if len(letter) != 1 || letter[0] < 'a' || letter[0] > 'z' {
		return Drill{}, fmt.Errorf("%q: want one letter, A to Z: %w", name, units.ErrSyntax)
	}
	return letterDrill(int(letter[0] - 'a')), nil
}

// findSize finds a drill by its size.
func findSize(name, text string) (Drill, error) {
	if err := bareNumber(name, text); err != nil {
		return Drill{}, err
	}
	if strings.ContainsAny(text, "/⁄∕") && !strings.ContainsAny(text, "abcdefghijklmnopqrstuvwxyz\"'") {
		text += " in" // a drill of a fraction is one of inches
	}
	size, err := units.ParseLength(text)
	if err != nil {
		return Drill{}, fmt.Errorf("drill %q: want a name such as 4.2 mm, #29, F or 5/32 in: %w", name, err)
	}
	sets := []DrillSet{FractionDrill, LetterDrill, NumberDrill}
	if strings.HasSuffix(text, "m") || strings.Contains(text, "met") {
		sets = []DrillSet{MetricDrill}
	}
	return drillOfSize(name, size, Drills(sets...))
}

// bareNumber refuses a number alone.
func bareNumber(name, text string) error {
	if no, err := strconv.Atoi(text); err == nil {
		if no < 1 || no > len(numberDrills) {
			return fmt.Errorf("drill %q: which unit? write %s mm or %s in: %w", name, text, text, units.ErrNoUnit)
		}
		return fmt.Errorf("drill %q: write #%s for the number drill or %s mm for the size: %w", name, text, text, units.ErrAmbiguous)
	}
	if _, err := strconv.ParseFloat(text, 64); err == nil {
		return fmt.Errorf("drill %q: which unit? write %s mm or %s in: %w", name, text, text, units.ErrNoUnit)
	}
	return nil
}

// drillOfSize finds the drill of exactly that size among drills, which stand
// smallest first, and otherwise names its neighbours.
func drillOfSize(name string, size units.Length, drills []Drill) (Drill, error) {
	i := 0
	for ; i < len(drills) && drills[i].diameter < size; i++ {
		if near(drills[i].diameter, size) {
			return drills[i], nil
		}
	}
	switch {
	case i < len(drills) && near(drills[i].diameter, size):
		return drills[i], nil
	case i == 0:
		return Drill{}, fmt.Errorf("drill %q: no such size, the smallest is %v: %w", name, drills[0], units.ErrDomain)
	case i == len(drills):
		return Drill{}, fmt.Errorf("drill %q: no such size, the largest is %v: %w", name, drills[i-1], units.ErrDomain)
	}
	return Drill{}, fmt.Errorf("drill %q: no such size, its neighbours are %v and %v: %w", name, drills[i-1], drills[i], units.ErrDomain)
}
