package main

import (
	"encoding/json"
	"io"
	"strings"
)

// The JSON form, for programs that set exercises.
type jsonLesson struct {
	Number   int          `json:"number"`
	Key      string       `json:"key"`
	Title    string       `json:"title"`
	Purpose  []string     `json:"purpose"`
	Cautions []string     `json:"cautions,omitempty"`
	Sources  []string     `json:"sources"`
	Exercise jsonExercise `json:"exercise"`
}

type jsonExercise struct {
	Question []string    `json:"question"`
	Wanted   string      `json:"wanted"`
	Unit     string      `json:"unit,omitempty"`
	Decimals *int        `json:"decimals,omitempty"`
	Answer   any         `json:"answer"`
	Slips    []jsonWrong `json:"slips"`
}

type jsonWrong struct {
	Name  string `json:"name"`
	Why   string `json:"why"`
	Gives string `json:"gives"`
}

func writeJSON(w io.Writer, lessons []numbered) error {
	out := struct {
		Lessons []jsonLesson `json:"lessons"`
	}{}
	for _, l := range lessons {
		j := jsonLesson{Number: l.Number, Key: l.Key, Title: l.Title, Purpose: l.Purpose, Cautions: l.Cautions, Sources: l.Sources}
		j.Exercise = jsonExercise{Question: l.Exercise.Ask, Wanted: l.Exercise.Answer.Wanted(), Answer: l.Exercise.Answer.json()}
		if n, ok := l.Exercise.Answer.(number); ok {
			j.Exercise.Unit, j.Exercise.Decimals = strings.ReplaceAll(n.unit, "\u00a0", " "), &n.decimals
		}
		for _, s := range l.Exercise.Answer.Wrong() {
			j.Exercise.Slips = append(j.Exercise.Slips, jsonWrong{s.Name, s.Why, s.Shown})
		}
		out.Lessons = append(out.Lessons, j)
	}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(out)
}
