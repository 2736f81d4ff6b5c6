package main

import (
	"encoding"
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// A lesson is one page of the course.
type lesson struct {
	Key, Title string
	Purpose    []string // what the sum is for
	Cautions   []string // where the work can hurt
	Pictures   []sheet.Picture
	Derivation []line
	Sources    []string // of the formulas
	Worked     worked
	Slip       slip
	Exercise   exercise
}

// A line of a derivation is a sentence or two, a formula, or both.
type line struct{ Text, Formula string }

// A worked number is done from beginning to end.
type worked struct {
	Given   string
	Steps   []sheet.Step
	Printed []printed // the same as a book has it
}

// A printed figure is one that a book gives for a sum of the lesson.
type printed struct {
	What   string
	Digits string // as printed
	Unit   string
	Source string
	Got    float64 // what the library gives, in Unit
	Place  float64 // last place that counts, where the digits do not show it
}

// A slip is how a sum usually goes wrong.
type slip struct {
	Name, Why    string
	Right, Wrong string // what it makes of the worked number
}

// An exercise is a sum for the reader.
type exercise struct {
	Ask    []string
	Answer answer
}

// A pair is a sum done rightly and with the usual slip.
type pair[Q units.Quantity] struct{ right, slip Q }

// A mistake is one more way in which an exercise may go wrong.
type mistake[Q units.Quantity] struct {
	name, why string
	gives     Q
}

// settle fills in what the worked number and the exercise come to: both rightly
// and with the slip of the lesson, which has its name and its reason by then.
func settle[Q units.Quantity, P interface {
	*Q
	encoding.TextUnmarshaler
}](l *lesson, in sheet.Unit[Q], decimals int, worked, exercise pair[Q], also ...mistake[Q]) {
	l.Slip.Right, l.Slip.Wrong = sheet.Plain(worked.right, in, decimals), sheet.Plain(worked.slip, in, decimals)
	n := number{unit: in.Name, decimals: decimals, value: float64(exercise.right / in.One)}
	for _, m := range append([]mistake[Q]{{l.Slip.Name, l.Slip.Why, exercise.slip}}, also...) {
		n.wrong = append(n.wrong, wrong{Name: m.name, Why: m.why, Shown: sheet.Plain(m.gives, in, decimals), value: float64(m.gives / in.One)})
	}
	n.read = func(text string) (float64, error) {
		var q Q
		err := P(&q).UnmarshalText([]byte(text))
		return float64(q / in.One), err
	}
	l.Exercise.Answer = n
}

// course returns the lessons in the order they are best taken.
func course() ([]lesson, error) {
	var lessons []lesson
	for _, write := range order {
		l, err := write()
		if err != nil {
			return nil, fmt.Errorf("lesson %d, %s: %w", len(lessons)+1, l.Key, err)
		}
		lessons = append(lessons, l)
	}
	return lessons, nil
}

// order is the order of the lessons.
var order = [...]func() (lesson, error){
	degreesAndArc, chordAndArc, crankAndDrop, rodUnknown, findingTDC, lostMotion, howSure, leaningHole,
	points, ports, compression, limitsAndFits, oldPart, pressAndReam, namingThreads, threeWires,
	torsionSpring, clockSpring, oilInPetrol,
}

// picture adds a drawing, with what it shows in words.
func (l *lesson) picture(title, says, svg string) {
	l.Pictures = append(l.Pictures, sheet.Picture{Title: title, Says: says, SVG: svg})
}

// first returns the first error of several.
func first(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

// Numbers for the text, with their unit and a true minus.
func mm(l units.Length, decimals int) string {
	return minus(sheet.Plain(l, sheet.Millimetre, decimals))
}
func inch(l units.Length, decimals int) string { return minus(sheet.Plain(l, sheet.Inch, decimals)) }
func deg(a units.Angle, decimals int) string   { return minus(sheet.Plain(a, sheet.Degree, decimals)) }
func plain(x float64, decimals int) string     { return minus(sheet.Plain(x, sheet.Number, decimals)) }

func minus(text string) string { return strings.ReplaceAll(text, "-", "−") }
