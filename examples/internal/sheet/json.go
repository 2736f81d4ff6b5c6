package sheet

import (
	"encoding/json"
	"io"
)

// The JSON form. Keys are stable: programs may rely on them, and on the keys
// of the figures; the texts are for people and may change.
type jsonSheet struct {
	Title    string        `json:"title"`
	Sections []jsonSection `json:"sections"`
	Card     *jsonCard     `json:"card,omitempty"`
	Notes    []string      `json:"notes,omitempty"`
}

type jsonCard struct {
	Question int        `json:"question,omitempty"`
	Title    string     `json:"title"`
	Lines    []jsonLine `json:"lines"`
}

type jsonLine struct {
	Group string `json:"group"`
	Name  string `json:"name"`
	Text  string `json:"metric"`
	Also  string `json:"inch,omitempty"`
}

type jsonSection struct {
	Question int          `json:"question,omitempty"`
	Key      string       `json:"key"`
	Title    string       `json:"title"`
	Answer   []string     `json:"answer"`
	Figures  []jsonFigure `json:"figures"`
	Tables   []jsonTable  `json:"tables,omitempty"`
	Working  []jsonStep   `json:"working,omitempty"`
	Improve  string       `json:"improve,omitempty"`
	Scribe   []string     `json:"scribe,omitempty"`
	Ask      []string     `json:"questions,omitempty"`
	Cautions []string     `json:"cautions,omitempty"`
}

type jsonFigure struct {
	Key   string   `json:"key"`
	Name  string   `json:"name"`
	Value float64  `json:"value"`
	Unit  string   `json:"unit"`
	Std   *float64 `json:"standard_uncertainty,omitempty"`
	DoF   *float64 `json:"degrees_of_freedom,omitempty"`
	Note  string   `json:"note,omitempty"`
}

type jsonTable struct {
	Title string     `json:"title"`
	Rows  [][]string `json:"rows"` // the first is the heading
}

type jsonStep struct {
	What    string `json:"what"`
	Formula string `json:"formula,omitempty"`
	Numbers string `json:"numbers,omitempty"`
	Result  string `json:"result"`
}

// WriteJSON writes the sheet for programs: every figure with its key, value,
// unit and standard uncertainty. A figure that is exact has no uncertainty, and
// one whose uncertainty does not rest on a number of repeats has no degrees of
// freedom.
func (s *Sheet) WriteJSON(w io.Writer) error {
	out := jsonSheet{Title: s.Title, Notes: s.Notes}
	for _, sec := range s.Sections {
		j := jsonSection{Question: sec.Number, Key: sec.Key, Title: sec.Title, Answer: sec.Answer, Figures: []jsonFigure{},
			Improve: sec.Improve, Scribe: sec.Scribe, Ask: sec.Questions, Cautions: sec.Cautions}
		for _, f := range sec.Figures {
			j.Figures = append(j.Figures, f.json())
		}
		for _, t := range sec.Tables {
			j.Tables = append(j.Tables, jsonTable(t))
		}
		for _, st := range sec.Working {
			j.Working = append(j.Working, jsonStep(st))
		}
		out.Sections = append(out.Sections, j)
	}
	if s.Card != nil {
		out.Card = s.Card.json()
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(out)
}

func (c *Card) json() *jsonCard {
	j := &jsonCard{Question: c.Number, Title: c.Title}
	for _, g := range c.Groups {
		for _, l := range g.Lines {
			j.Lines = append(j.Lines, jsonLine{g.Title, l.Name, l.Metric, l.Inch})
		}
	}
	return j
}

func (f Figure) json() jsonFigure {
	j := jsonFigure{Key: f.Key, Name: f.Name, Value: f.Value, Unit: f.Unit, Note: f.Note}
	if f.Std > 0 {
		j.Std = &f.Std
		if f.DoF > 0 && f.DoF < 1e4 { // more is as good as infinite
			j.DoF = &f.DoF
		}
	}
	return j
}
