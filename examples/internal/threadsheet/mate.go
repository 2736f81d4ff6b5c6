package threadsheet

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A Mating is what comes of a bolt of one thread in a hole of another.
type Mating struct {
	Bolt, Hole threads.Thread
	Engaged    units.Length
	threads.Mating
}

// Mates says what comes of the likeliest thread and its rival screwed together,
// either way about; nothing where there is no rival.
func (c *Checked) Mates() []Mating {
	second, _, ok := c.Second()
	if !ok {
		return nil
	}
	first := c.Found.Candidates[0].Thread()
	var out []Mating
	for _, two := range [...][2]threads.Thread{{first, second}, {second, first}} {
		m := Mating{Bolt: two[0], Hole: two[1], Engaged: c.engaged(first)}
		p, err := threads.NewPair(m.Bolt, m.Hole)
		if err == nil {
			m.Mating, err = p.Mate(m.Engaged)
		}
		if err == nil {
			out = append(out, m)
		}
	}
	return out
}

// turns is how many turns go to the engaged length.
func (m *Mating) turns() float64 { return float64(m.Engaged / m.Hole.Pitch()) }

// String says what happens.
func (m Mating) String() string {
	return fmt.Sprintf("A bolt of %v in a hole of %v %v%s.", m.Bolt, m.Hole, m.Outcome, m.after())
}

// after says after how many turns it stops.
func (m *Mating) after() string {
	switch m.Outcome {
	case threads.RunsFree:
		return fmt.Sprintf(" over all %.1f turns", m.turns())
	case threads.RunsIfLoose:
		return fmt.Sprintf(": of %.1f turns, %s", m.turns(), m.byPlay())
	case threads.Binds:
		return fmt.Sprintf(": of %.1f turns, %s; the loosest bind after %.1f, and about one more by the lead-in", m.turns(), m.byPlay(), m.Loose)
	case threads.Tightens:
		if !math.IsInf(m.Loose, 1) {
			return fmt.Sprintf(", after %.1f to %.1f turns", m.Tight, m.Loose)
		}
	}
	return ""
}

// byPlay says how far parts of the basic sizes go, and parts with the play of
// ordinary work.
func (m *Mating) byPlay() string {
	text := "at the very sizes of the tables it does not enter"
	if enters(m.Tight) {
		text = fmt.Sprintf("parts of the very sizes of the tables bind after %.1f", m.Tight)
	}
	switch {
	case m.Middle >= m.turns():
		return text + "; parts with ordinary play mostly run all the way"
	case enters(m.Middle):
		return text + fmt.Sprintf("; parts with ordinary play bind after about %.1f", m.Middle)
	}
	return text + ", nor with half of the ordinary play"
}

// enters says whether the turns are more than none.
func enters(turns float64) bool { return turns >= 0.05 }

// mates adds what comes of the two, what gets hurt, and the working.
func (c *Checked) mates(s *sheet.Section) {
	for _, m := range c.Mates() {
		m.working(s)
	}
	if text := c.MatesText(); text != "" {
		s.Answer = append(s.Answer, text)
	}
}

// MatesText says what comes of the likeliest thread and its rival screwed
// together, and what gets hurt; nothing where there is no rival.
func (c *Checked) MatesText() string {
	var harms []string
	text := matesText(c.Mates(), &harms)
	if len(harms) > 0 {
		text = append(text, harmText(harms))
	}
	return strings.Join(text, " ")
}

// matesText says what comes of each, and adds to the harms those that are new.
func matesText(all []Mating, harms *[]string) []string {
	var text []string
	for _, m := range all {
		text = append(text, m.String())
		for _, h := range m.Harms {
			if !slices.Contains(*harms, h.String()) {
				*harms = append(*harms, h.String())
			}
		}
	}
	return text
}

func harmText(harms []string) string {
	return "What gets hurt when the one is taken for the other: " + strings.Join(harms, "; ") + "."
}

// working sets out why they bind or run.
func (m *Mating) working(s *sheet.Section) {
	play := m.Hole.Effective() - m.Bolt.Effective()
	s.Add(fmt.Sprintf("A bolt of %v in a hole of %v, by basic sizes: a difference of lead acts as if the bolt were larger, and binds when that comes up to the play", m.Bolt, m.Hole),
		"play = E − E',  growth = |p − p'| (L / p) cot(α/2)",
		fmt.Sprintf("E = %s, E' = %s, p = %s, p' = %s, L = %s", sheet.Plain(m.Hole.Effective(), sheet.Millimetre, 3), sheet.Plain(m.Bolt.Effective(), sheet.Millimetre, 3),
			sheet.Plain(m.Hole.Pitch(), sheet.Millimetre, 4), sheet.Plain(m.Bolt.Pitch(), sheet.Millimetre, 4), sheet.Plain(m.Engaged, sheet.Millimetre, 1)),
		fmt.Sprintf("play %s, growth %s; %.0f %% of the depth of the hole's thread meets the bolt", sheet.Plain(play, sheet.Millimetre, 3), sheet.Plain(m.Growth, sheet.Millimetre, 3), 100*min(m.Overlap, 1)))
}
