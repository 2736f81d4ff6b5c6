package sheet

import (
	"bufio"
	"html/template"
	"io"
)

// What follows lets a program with pages of another build than a Sheet keep
// the look of one.

// Width is how many characters a line of text has at most.
const Width = width

// CSS is the style of the HTML pages.
func CSS() template.CSS { return template.CSS(css) }

// Wrap breaks text at spaces into lines of at most n characters. A space that
// must not break is written U+00A0.
func Wrap(text string, n int) []string { return wrap(text, n) }

// Lead is what stands before the numbers of a step: an equals sign, or "with"
// where they are a list of symbols and values.
func Lead(numbers string) string { return lead(numbers) }

// WriteSteps writes steps of working as the text of a Sheet has them.
func WriteSteps(w io.Writer, steps []Step) error {
	p := &printer{w: bufio.NewWriter(w)}
	for _, s := range steps {
		p.step(s)
	}
	return p.w.Flush()
}
