package main

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"example.com/benchsums/examples/internal/sheet"
)

// writeList writes what there is to learn and how to go on.
func writeList(w io.Writer, lessons []lesson) error {
	p := &page{w: bufio.NewWriter(w)}
	p.title("SUMS DONE AT THE BENCH, IN "+fmt.Sprint(len(lessons))+" LESSONS", "=")
	p.line("")
	for i, l := range lessons {
		p.line(fmt.Sprintf("%3d  %-12s %s", i+1, l.Key, l.Title))
	}
	p.line("")
	p.paragraph("", "Each lesson says what its sum is for, where the formula comes from, works one number and shows how the sum usually goes wrong. Then there is one for you.")
	p.line("")
	for _, l := range [][2]string{
		{"lessons chord", "read a lesson, by name or number"},
		{"lessons chord -exercise", "its question only"},
		{`lessons chord -answer "47.2°"`, "is that right?"},
		{"lessons chord -solution", "the answer, and what slips give"},
		{"lessons -html course.html", "the whole course on one page, with drawings"},
	} {
		p.line(fmt.Sprintf("  %-32s%s", l[0], l[1]))
	}
	p.line("")
	p.paragraph("", "Without having built it, begin with go run ./examples/lessons in place of lessons.")
	return p.w.Flush()
}

// writeLesson writes one lesson for people.
func writeLesson(w io.Writer, number int, l lesson) error {
	p := &page{w: bufio.NewWriter(w)}
	p.title(fmt.Sprintf("%d. %s", number, strings.ToUpper(l.Title)), "=")
	for _, t := range l.Purpose {
		p.line("")
		p.paragraph("", t)
	}
	if len(l.Cautions) > 0 {
		p.head("CAUTION")
		p.items("!", l.Cautions)
	}
	p.head("THE DRAWING, IN WORDS (-html FILE draws it)")
	for _, d := range l.Pictures {
		p.paragraph("  ", d.Title+". "+d.Says)
	}
	p.head("WHERE THE FORMULA COMES FROM")
	for _, d := range l.Derivation {
		p.derive(d)
	}
	p.head("A WORKED NUMBER")
	p.paragraph("  ", l.Worked.Given)
	p.line("")
	if err := p.steps(l.Worked.Steps); err != nil {
		return err
	}
	for _, c := range l.Worked.Printed {
		p.line("")
		p.paragraph("  ", "In print: "+c.sentence())
	}
	p.head("THE USUAL SLIP")
	p.paragraph("  ", l.Slip.sentence())
	p.paragraph("  ", l.Slip.Why)
	p.question(l)
	p.head("SOURCES")
	p.items("-", l.Sources)
	return p.w.Flush()
}

// writeExercise writes the question of a lesson and nothing else.
func writeExercise(w io.Writer, number int, l lesson) error {
	p := &page{w: bufio.NewWriter(w)}
	p.title(fmt.Sprintf("%d. %s", number, strings.ToUpper(l.Title)), "=")
	p.question(l)
	return p.w.Flush()
}

// writeSolution writes what the exercise comes to.
func writeSolution(w io.Writer, number int, l lesson) error {
	p := &page{w: bufio.NewWriter(w)}
	p.title(fmt.Sprintf("%d. %s", number, strings.ToUpper(l.Title)), "=")
	p.question(l)
	p.head("ANSWER")
	p.paragraph("  ", l.Exercise.Answer.Right())
	for _, s := range l.Exercise.Answer.Wrong() {
		p.line("")
		p.paragraph("  ", s.sentence())
		p.paragraph("  ", s.Why)
	}
	return p.w.Flush()
}

// sentence says what the slip does to the worked number.
func (s slip) sentence() string {
	return fmt.Sprintf("%s. It gives %s where %s is right.", upper(s.Name), s.Wrong, s.Right)
}

// sentence says what the slip makes of the exercise.
func (w wrong) sentence() string { return fmt.Sprintf("%s comes of a slip: %s.", w.Shown, w.Name) }

// sentence says what a book has.
func (c printed) sentence() string {
	unit := c.Unit
	if unit != "" && unit != "°" {
		unit = "\u00a0" + unit
	}
	return fmt.Sprintf("%s %s%s. Source: %s.", c.What, c.Digits, unit, c.Source)
}

func upper(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	return strings.ToUpper(string(r)) + s[n:]
}

// A page is text on its way out.
type page struct{ w *bufio.Writer }

func (p *page) line(text string) { fmt.Fprintln(p.w, strings.TrimRight(text, " ")) }

func (p *page) title(text, under string) {
	p.line(text)
	p.line(strings.Repeat(under, utf8.RuneCountInString(text)))
}

func (p *page) head(text string) {
	p.line("")
	p.line(text)
}

func (p *page) paragraph(indent, text string) {
	for _, l := range sheet.Wrap(text, sheet.Width-len(indent)) {
		p.line(indent + l)
	}
}

func (p *page) items(mark string, texts []string) {
	for _, t := range texts {
		lead := " " + mark + "  "
		for _, l := range sheet.Wrap(t, sheet.Width-4) {
			p.line(lead + l)
			lead = "    "
		}
	}
}

func (p *page) derive(d line) {
	if d.Text != "" {
		p.paragraph("  ", d.Text)
	}
	if d.Formula != "" {
		p.line("      " + d.Formula)
	}
}

func (p *page) steps(steps []sheet.Step) error { return sheet.WriteSteps(p.w, steps) }

func (p *page) question(l lesson) {
	p.head("EXERCISE")
	for _, t := range append(l.Exercise.Ask, l.Exercise.Answer.Wanted()) {
		p.paragraph("  ", t)
	}
	p.line("")
	p.line(fmt.Sprintf("  To check it:  lessons %s -answer \"...\"", l.Key))
}
