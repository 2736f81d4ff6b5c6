package main

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
)

// An ownSum is a result the reader has worked out by hand.
type ownSum struct {
	Figure string `toml:"figure"` // the key of a figure of the sheet: "card.advance"
	Value  string `toml:"value"`  // what the reader got, as written
}

// A verdict is how a hand sum lies to the sheet's.
type verdict int

const (
	agrees        verdict = iota // to the last digit written, or one off in it
	agreesAsFarAs                // within the uncertainty
	differs
)

// ownSection holds the reader's own results against the sheet's, and looks for
// the slip that gives exactly what the reader got.
func (b *bench) ownSection(done *sheet.Sheet) (*sheet.Section, error) {
	if len(b.job.Own) == 0 {
		return nil, nil
	}
	figures := map[string]sheet.Figure{}
	for _, sec := range done.Sections {
		for _, f := range sec.Figures {
			figures[f.Key] = f
		}
	}
	s := &sheet.Section{Key: "own", Title: "Check of your own sums"}
	for i, own := range b.job.Own {
		key := fmt.Sprintf("own.%d", i)
		f, ok := figures[own.Figure]
		if !ok {
			return nil, b.file.Errorf(key+".figure", "no figure %q on this sheet; -json lists the keys there are", own.Figure)
		}
		v, err := f.Read(own.Value)
		if err != nil {
			return nil, b.file.Errorf(key+".value", "%v", err)
		}
		fig := sheet.Figure{Key: fmt.Sprintf("own.%d", i+1), Name: f.Name + ", by your sum", Value: v, Unit: f.Unit, Text: strings.TrimSpace(own.Value), Also: "here: " + f.Text}
		s.Figures = append(s.Figures, fig)
		s.Answer = append(s.Answer, sentenceOf(b.judge(f, own.Value, v, figures)))
	}
	return s, nil
}

// judge says in words how a hand sum lies to the sheet's figure.
func (b *bench) judge(f sheet.Figure, text string, v float64, figures map[string]sheet.Figure) string {
	last := lastPlace(text, f, v)
	name := fmt.Sprintf("%s (%s)", f.Name, f.Key)
	switch compare(f, v, last) {
	case agrees:
		return fmt.Sprintf("%s: your %s agrees", name, strings.TrimSpace(text))
	case agreesAsFarAs:
		return fmt.Sprintf("%s: your %s agrees with %s within the uncertainty", name, strings.TrimSpace(text), f.Text)
	}
	found := b.slipsThatGive(f, v, last, figures)
	if len(found) == 0 {
		return fmt.Sprintf("%s: your %s differs from %s, and no well-known slip gives that figure: go through the readings and the working above", name, strings.TrimSpace(text), f.Text)
	}
	var why []string
	for _, sl := range found {
		why = append(why, fmt.Sprintf("%s gives exactly that: %s", sl.name, sl.why))
	}
	return fmt.Sprintf("%s: your %s differs from %s. %s", name, strings.TrimSpace(text), f.Text, capital(strings.Join(why, ". Or: ")))
}

// compare compares a value with the figure; last is the size of one in the last
// digit written.
func compare(f sheet.Figure, v, last float64) verdict {
	d := math.Abs(v - f.Value)
	switch {
	case d <= last*(1+1e-9):
		return agrees
	case d <= f.HalfWidth()+last/2:
		return agreesAsFarAs
	}
	return differs
}

// lastPlace is the size of one in the last digit of the text as it is written,
// in the figure's unit: the last decimal, or one in the lower number of a
// fraction, of the last number of the text, in the unit that stands behind it.
func lastPlace(text string, f sheet.Figure, v float64) float64 {
	numbers := numberText.FindAllStringIndex(text, -1)
	if len(numbers) == 0 {
		return math.Abs(v) * 1e-4 // ½ and the like
	}
	at := numbers[len(numbers)-1]
	last := text[at[0]:at[1]]
	step, ok := stepOf(last)
	if !ok {
		return math.Abs(v) * 1e-4
	}
	// What one step more in the last number makes of the whole text.
	more, err := f.Read(text[:at[0]] + step + text[at[1]:])
	nought := "0"
	if _, below, ok := strings.Cut(last, "/"); ok {
		nought = "0/" + strings.TrimSpace(below)
	}
	none, err2 := f.Read(text[:at[0]] + nought + text[at[1]:])
	if err != nil || err2 != nil { // no unit behind it: a number in the figure's own
		one, err := strconv.ParseFloat(step, 64)
		written, err2 := strconv.ParseFloat(last, 64)
		if err != nil || err2 != nil || written == 0 {
			return math.Abs(v) * 1e-4
		}
		return math.Abs(v / written * one)
	}
	return math.Abs(more - none)
}

// numberText finds the numbers of a text: fractions, and decimals with their
// exponent.
var numberText = regexp.MustCompile(`\d+\s*/\s*\d+|\d*\.?\d+(?:[eE][+-]?\d+)?`)

// stepOf returns one in the last place of a number, as text.
func stepOf(number string) (string, bool) {
	if _, below, ok := strings.Cut(number, "/"); ok {
		return "1/" + strings.TrimSpace(below), true
	}
	mantissa, exponent, _ := strings.Cut(strings.ToLower(number), "e")
	e := 0
	if exponent != "" {
		var err error
		if e, err = strconv.Atoi(exponent); err != nil {
			return "", false
		}
	}
	_, frac, _ := strings.Cut(mantissa, ".")
	return "1e" + strconv.Itoa(e-len(frac)), true
}

// slipsThatGive returns the slips whose figure rounds to what the reader wrote.
func (b *bench) slipsThatGive(f sheet.Figure, v, last float64, figures map[string]sheet.Figure) []slip {
	var found []slip
	for _, sl := range b.slips(f, figures) {
		if math.Abs(sl.value-v) <= 0.5*last*(1+1e-9)+1e-12*math.Abs(v) && !named(found, sl.name) {
			found = append(found, sl)
		}
	}
	return found
}

func named(list []slip, name string) bool {
	for _, s := range list {
		if s.name == name {
			return true
		}
	}
	return false
}
