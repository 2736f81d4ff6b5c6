package threadsheet

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
)

// Summary answers for all threads at once: a table of names, which are left
// open, and which of those the ordinary gauges cannot part. Figures and keys
// begin with key, "" for none of them.
func Summary(key string, all []*Checked) *sheet.Section {
	s := &sheet.Section{Key: key, Title: "The threads, and which they are", Cautions: Cautions()}
	named, soon, tied, none := sorted(all)
	s.Answer = append(s.Answer, counts(all, named))
	if len(tied) > 0 {
		s.Answer = append(s.Answer, "Not to be told apart with micrometer, vernier and leaves: "+listOf(tied)+". They share diameter and pitch and differ in what those gauges do not see.")
	}
	if len(soon) > 0 {
		s.Answer = append(s.Answer, "Left open, and soon settled: "+listOf(soon)+".")
	}
	if len(none) > 0 {
		s.Answer = append(s.Answer, "Of no series in the tables, or not measured right: "+listOf(none)+".")
	}
	s.Answer = append(s.Answer, openText(append(soon, tied...))...)
	s.Tables = append(s.Tables, namesTable(all))
	for _, c := range append(soon, tied...) {
		if how := c.improve(); how != "" {
			s.Improve = c.Name + ", " + how
			break
		}
	}
	for _, c := range all {
		if c.Found.Hand == threads.LeftHand {
			s.Cautions = append(s.Cautions, c.Name+": "+leftHanded)
		}
	}
	return s
}

// sorted parts the threads into those with a name, those that an ordinary
// measurement will settle, those that none will, and those of no table.
func sorted(all []*Checked) (named, soon, tied, none []*Checked) {
	for _, c := range all {
		p, ok := c.Parting()
		switch {
		case len(c.Found.Candidates) == 0 || c.Found.Unlisted > 0.5:
			none = append(none, c)
		case c.Named():
			named = append(named, c)
		case ok && common(p):
			soon = append(soon, c)
		default:
			tied = append(tied, c)
		}
	}
	return named, soon, tied, none
}

func counts(all, named []*Checked) string {
	if len(named) == len(all) {
		return fmt.Sprintf("All %d have a name: %s.", len(all), listOf(named))
	}
	text := fmt.Sprintf("%d of %d have a name; the readings leave %d open.", len(named), len(all), len(all)-len(named))
	if len(named) > 0 {
		text += " Named: " + listOf(named) + "."
	}
	return text
}

func listOf(list []*Checked) string {
	var each []string
	for _, c := range list {
		each = append(each, c.Name+" ("+c.shortName()+")")
	}
	return strings.Join(each, ", ")
}

func namesTable(all []*Checked) sheet.Table {
	t := sheet.Table{Title: "Names", Rows: [][]string{{"thread", "likeliest", "probability", "also possible", "where"}}}
	for _, c := range all {
		best, share, also := "none of the tables", percent(c.Found.Unlisted), ""
		if len(c.Found.Candidates) > 0 && c.Found.Unlisted <= 0.5 {
			k := c.Found.Candidates[0]
			best, share = k.Thread().Designation()+c.handText(), percent(k.Probability)
			also = alsoText(c)
		}
		t.Rows = append(t.Rows, []string{c.Name, best, share, also, c.Where})
	}
	return t
}

// alsoText lists what else is within the probability that counts as named.
func alsoText(c *Checked) string {
	var each []string
	for i, k := range c.Tied() {
		if i > 0 {
			each = append(each, k.Thread().Designation())
		}
	}
	return strings.Join(each, ", ")
}

// openText says of each thread that is left open what would settle it and what
// comes of taking the one for the other, and in the end what gets hurt.
func openText(open []*Checked) []string {
	var out, harms []string
	for _, c := range open {
		text := append([]string{c.Name + ". " + strings.Join(c.settle(), " ")}, matesText(c.Mates(), &harms)...)
		out = append(out, strings.Join(text, " "))
	}
	if len(harms) > 0 {
		out = append(out, harmText(harms))
	}
	return out
}

// Figures are the pitches of all threads, with the name of each in key and name.
func Figures(key string, all []*Checked) []sheet.Figure {
	var out []sheet.Figure
	for _, c := range all {
		if c.Readings.Pitch.Value == 0 {
			continue
		}
		f := sheet.Of(key+"."+slug(c.Name)+"_pitch", c.Name+", pitch", c.Readings.Pitch, sheet.Millimetre)
		f.Also = sheet.Show(perInch(c.Readings.Pitch), sheet.Number) + " to the inch"
		out = append(out, f)
	}
	return out
}
