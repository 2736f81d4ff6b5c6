package sheet

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// width is how long a line is: short enough to read at arm's length.
const width = 76

// WriteText writes the sheet for people.
func (s *Sheet) WriteText(w io.Writer) error {
	p := &printer{w: bufio.NewWriter(w)}
	p.line(strings.ToUpper(s.Title))
	p.line(strings.Repeat("=", utf8.RuneCountInString(s.Title)))
	p.paragraphs("", s.Intro)
	for i := range s.Sections {
		p.section(&s.Sections[i])
	}
	p.card(s.Card)
	if len(s.Notes) > 0 {
		p.line("")
		p.line("NOTES")
		p.items("-", s.Notes)
	}
	return p.w.Flush()
}

type printer struct{ w *bufio.Writer }

func (p *printer) line(text string) {
	p.w.WriteString(strings.TrimRight(text, " "))
	p.w.WriteByte('\n')
}

func (p *printer) section(s *Section) {
	title := strings.ToUpper(s.Title)
	if s.Number > 0 {
		title = fmt.Sprintf("%d. %s", s.Number, title)
	}
	p.line("")
	p.line("")
	p.line(title)
	p.line(strings.Repeat("-", utf8.RuneCountInString(title)))
	p.paragraphs("", s.Answer)
	p.figures(s.Figures)
	for _, t := range s.Tables {
		p.table(t)
	}
	if len(s.Scribe) > 0 {
		p.line("")
		p.line("MARK OUT")
		p.items(">", s.Scribe)
	}
	if len(s.Working) > 0 {
		p.line("")
		p.line("WORKING")
		for _, st := range s.Working {
			p.step(st)
		}
	}
	if s.Improve != "" {
		p.paragraphs("", []string{"TAKE THIS ONE BETTER FIRST: " + s.Improve})
	}
	if len(s.Questions) > 0 {
		p.line("")
		p.line("IS THIS SO?")
		p.items("?", s.Questions)
	}
	if len(s.Cautions) > 0 {
		p.line("")
		p.line("CAUTION")
		p.items("!", s.Cautions)
	}
}

// card writes the page for the wall.
func (p *printer) card(c *Card) {
	if c == nil {
		return
	}
	p.section(&Section{Number: c.Number, Title: c.Title})
	for _, g := range c.Groups {
		t := Table{Title: strings.ToUpper(g.Title)}
		for _, l := range g.Lines {
			t.Rows = append(t.Rows, []string{l.Name, l.Metric, l.Inch})
		}
		p.table(t)
	}
	p.paragraphs("", []string{c.Foot})
}

// paragraphs writes texts with an empty line before each.
func (p *printer) paragraphs(indent string, texts []string) {
	for _, t := range texts {
		p.line("")
		for _, l := range wrap(t, width-len(indent)) {
			p.line(indent + l)
		}
	}
}

// items writes texts behind a mark.
func (p *printer) items(mark string, texts []string) {
	for _, t := range texts {
		for i, l := range wrap(t, width-4) {
			if i == 0 {
				p.line(" " + mark + "  " + l)
			} else {
				p.line("    " + l)
			}
		}
	}
}

func (p *printer) figures(figures []Figure) {
	if len(figures) == 0 {
		return
	}
	rows := make([][]string, 0, len(figures))
	for _, f := range figures {
		rows = append(rows, []string{f.Name, f.Text, f.Also})
	}
	p.line("")
	p.columns(rows)
	for _, f := range figures {
		if f.Note != "" {
			p.items("*", []string{f.Name + ": " + f.Note})
		}
	}
}

func (p *printer) table(t Table) {
	p.line("")
	if t.Title != "" {
		p.line("  " + t.Title)
	}
	p.columns(t.Rows)
}

// columns writes rows in columns, two spaces apart; a row that grows too long
// puts its last cell on a line of its own.
func (p *printer) columns(rows [][]string) {
	var widths []int
	for _, r := range rows {
		for i, c := range r {
			if i == len(widths) {
				widths = append(widths, 0)
			}
			widths[i] = max(widths[i], utf8.RuneCountInString(c))
		}
	}
	total := 2
	for _, w := range widths {
		total += w + 2
	}
	for _, r := range rows {
		line := "  "
		for i, c := range r {
			if i > 0 && i == len(r)-1 && total > width+2 && c != "" {
				p.line(line)
				line = strings.Repeat(" ", 2+widths[0]+2)
			}
			line += c + strings.Repeat(" ", widths[i]-utf8.RuneCountInString(c)+2)
		}
		p.line(line)
	}
}

func (p *printer) step(s Step) {
	for _, l := range wrap(s.What, width-2) {
		p.line("  " + l)
	}
	if s.Formula != "" {
		p.line("      " + s.Formula)
	}
	p.sum(lead(s.Numbers), s.Numbers)
	p.sum(lead(""), s.Result)
}

// lead is what stands before the numbers of a step: an equals sign, or "with"
// where they are a list of symbols and values.
func lead(numbers string) string {
	if strings.HasPrefix(numbers, "for ") {
		return ""
	}
	if strings.Contains(numbers, " = ") {
		return "with "
	}
	return "= "
}

func (p *printer) sum(lead, text string) {
	if text == "" {
		return
	}
	indent := strings.Repeat(" ", 8)
	for _, l := range wrap(text, width-len(indent)-len(lead)) {
		p.line(indent + lead + l)
		lead = strings.Repeat(" ", len(lead))
	}
}

// wrap breaks text at spaces into lines of at most n characters. A space that
// must not break is written U+00A0.
func wrap(text string, n int) []string {
	var lines []string
	line := ""
	for _, w := range strings.Fields(strings.ReplaceAll(text, "\u00a0", "\x00")) {
		w = strings.ReplaceAll(w, "\x00", "\u00a0")
		if line != "" && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(w) > n {
			lines = append(lines, line)
			line = ""
		}
		if line != "" {
			line += " "
		}
		line += w
	}
	return append(lines, line)
}
