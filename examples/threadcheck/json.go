package main

import (
	"encoding/json"
	"io"
	"math"

	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/threads"
)

// The JSON form. Keys are stable: programs may rely on them; texts are for
// people and may change. Lengths are in millimetres, angles in degrees.
type jsonThread struct {
	Name       string          `json:"name,omitempty"`
	Where      string          `json:"where,omitempty"`
	Hand       string          `json:"hand"`
	Named      bool            `json:"named"`
	Candidates []jsonCandidate `json:"candidates"`
	OfNoTable  float64         `json:"of_no_table"`
	Pitch      *jsonReading    `json:"pitch,omitempty"`
	Parting    *jsonParting    `json:"parting,omitempty"`
	Mating     []jsonMating    `json:"mating,omitempty"`
	Questions  []string        `json:"questions,omitempty"`
}

type jsonCandidate struct {
	Names       []string `json:"names"`
	Probability float64  `json:"probability"`
	Short       float64  `json:"short_at_crests_mm"`
	PitchOff    float64  `json:"pitch_off_mm"`
}

type jsonReading struct {
	Value float64 `json:"mm"`
	Std   float64 `json:"standard_uncertainty_mm"`
	TPI   float64 `json:"threads_per_inch"`
}

type jsonParting struct {
	By      string  `json:"by"`
	First   float64 `json:"first"`
	Second  float64 `json:"second"`
	Std     float64 `json:"standard_uncertainty"`
	Unit    string  `json:"unit,omitempty"`
	Threads int     `json:"threads,omitempty"`
	Decides bool    `json:"decides"`
	Text    string  `json:"text"`
}

type jsonMating struct {
	Bolt    string   `json:"bolt"`
	Hole    string   `json:"hole"`
	Engaged float64  `json:"engaged_mm"`
	Outcome string   `json:"outcome"`
	Tight   *float64 `json:"turns_until_tight_basic"`
	Middle  *float64 `json:"turns_until_tight_middle"`
	Loose   *float64 `json:"turns_until_tight_loosest"`
	Harms   []string `json:"harms"`
}

// WriteJSON writes the threads, for programs.
func (a *answer) WriteJSON(w io.Writer) error {
	out := struct {
		Title    string       `json:"title"`
		Threads  []jsonThread `json:"threads"`
		Cautions []string     `json:"cautions"`
	}{Title: a.Title, Cautions: threadsheet.Cautions()}
	for _, c := range a.threads {
		out.Threads = append(out.Threads, jsonOf(c))
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(out)
}

func jsonOf(c *threadsheet.Checked) jsonThread {
	j := jsonThread{Name: c.Name, Where: c.Where, Hand: c.Found.Hand.String(), Named: c.Named(), Candidates: []jsonCandidate{},
		OfNoTable: c.Found.Unlisted, Questions: c.Questions()}
	for _, k := range c.Found.Candidates {
		var names []string
		for _, t := range k.Names() {
			names = append(names, t.Designation())
		}
		j.Candidates = append(j.Candidates, jsonCandidate{names, k.Probability, k.Short.Millimetres(), k.Pitch.Millimetres()})
	}
	if p := c.Readings.Pitch; p.Value != 0 {
		j.Pitch = &jsonReading{p.Value.Millimetres(), p.Std.Millimetres(), 25.4 / p.Value.Millimetres()}
	}
	if p, ok := c.Parting(); ok {
		j.Parting = partingOf(p)
	}
	for _, m := range c.Mates() {
		j.Mating = append(j.Mating, matingOf(m))
	}
	return j
}

func partingOf(p threads.Parting) *jsonParting {
	j := &jsonParting{By: p.By.String(), First: p.First.Millimetres(), Second: p.Second.Millimetres(), Std: p.Std.Millimetres(),
		Unit: "mm", Threads: p.Threads, Decides: p.Decides, Text: p.String()}
	switch p.By {
	case threads.ByAngle:
		j.First, j.Second, j.Std, j.Unit = p.FirstAngle.Degrees(), p.SecondAngle.Degrees(), p.StdAngle.Degrees(), "°"
	case threads.ByTaper:
		j.Unit = ""
	}
	return j
}

func matingOf(m threadsheet.Mating) jsonMating {
	j := jsonMating{Bolt: m.Bolt.Designation(), Hole: m.Hole.Designation(), Engaged: m.Engaged.Millimetres(), Outcome: m.Outcome.String(),
		Tight: finite(m.Tight), Middle: finite(m.Middle), Loose: finite(m.Loose), Harms: []string{}}
	for _, h := range m.Harms {
		j.Harms = append(j.Harms, h.String())
	}
	return j
}

// finite is nil for never.
func finite(turns float64) *float64 {
	if math.IsInf(turns, 0) {
		return nil
	}
	return &turns
}
