package main

import (
	"fmt"
	"io"
	"os"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// Trials is how the sheet is to check its plus-or-minus figures by drawing the
// readings again and again; the zero value does not.
type trials struct {
	n        int
	progress func(of string, done int) // may be nil
}

// A sampled figure is one that can be drawn again and again.
type sampled struct {
	key, name, text string
	draw            func(units.Run) (low, high string, shown sheet.Figure, err error)
}

// sampleLater remembers a function and its inputs for trialsSection.
func sampleLater[Q units.Quantity](b *bench, key, name string, u sheet.Unit[Q], r units.Reading[Q], f func() Q, inputs []units.Input) {
	b.sampled = append(b.sampled, sampled{key, name, sheet.Show(r, u), func(run units.Run) (string, string, sheet.Figure, error) {
		s, err := units.MonteCarlo(f, run, inputs...)
		if err != nil {
			return "", "", sheet.Figure{}, err
		}
		i, err := s.Symmetric(sheet.Coverage)
		fig := sheet.Of("trials."+key, name+", by trial", s.Reading(), u)
		return sheet.Value(units.WithStd(i.Low, s.Std/10), u), sheet.Value(units.WithStd(i.High, s.Std/10), u), fig, err
	}})
}

// trialsSection draws the readings of the main figures at random, as often as
// the caller asked, and holds the spread that comes of it against the
// plus-or-minus of the sheet, which takes a straight line in place of each
// formula (JCGM 101:2008).
func (b *bench) trialsSection() (*sheet.Section, error) {
	if b.trials.n == 0 || len(b.sampled) == 0 {
		return nil, nil
	}
	s := &sheet.Section{Key: "trials", Title: "The plus-or-minus, by trial"}
	table := sheet.Table{Title: fmt.Sprintf("%d trials each, the readings drawn at random from what they may be", b.trials.n),
		Rows: [][]string{{"figure", "on the sheet", "95 in 100 of the trials lie between"}}}
	for _, c := range b.sampled {
		run := units.Run{Seed: 1, Trials: b.trials.n}
		if b.trials.progress != nil {
			run.Progress = func(done int) error {
				b.trials.progress(c.name, done)
				return nil
			}
		}
		low, high, figure, err := c.draw(run)
		if err != nil {
			return nil, b.file.Errorf("", "trials of %s: %v", c.key, err)
		}
		s.Figures = append(s.Figures, figure)
		table.Rows = append(table.Rows, []string{c.name, c.text, low + " and " + high})
	}
	s.Tables = append(s.Tables, table)
	s.Answer = append(s.Answer, "Where the two agree, the straight line that the plus-or-minus rests on is good enough.")
	return s, nil
}

// onTerminal returns a function that shows how far the trials have come, on w
// if it is a terminal, and what wipes that away again; nil otherwise.
func onTerminal(w io.Writer, of int) func(string, int) {
	f, ok := w.(*os.File)
	if !ok {
		return nil
	}
	if info, err := f.Stat(); err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return nil
	}
	return func(name string, done int) {
		if done >= of {
			fmt.Fprintf(f, "\r%-70s\r", "")
			return
		}
		fmt.Fprintf(f, "\r%-70s", fmt.Sprintf("%s: %d of %d trials", name, done, of))
	}
}
