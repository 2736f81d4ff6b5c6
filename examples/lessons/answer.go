package main

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// An answer is what an exercise comes to.
type answer interface {
	Wanted() string                // how it is to be given
	Right() string                 // what is right
	Wrong() []wrong                // what the slips give, that of the lesson first
	check(string) (verdict, error) // of what somebody typed
	json() any                     // what is right, for programs
}

// A wrong answer is what a slip gives.
type wrong struct {
	Name, Why, Shown string
	value            float64          // of a number
	threads          []threads.Thread // of a name
}

// A verdict is what is said of an answer.
type verdict struct {
	agrees bool
	text   []string // paragraphs
}

// A number is an answer with a unit, to so many decimals.
type number struct {
	unit     string
	decimals int
	value    float64
	wrong    []wrong
	read     func(string) (float64, error)
}

func (n number) place() float64 { return math.Pow10(-n.decimals) }

// Wanted says to which digit.
func (n number) Wanted() string {
	if n.unit == "" {
		return "Give it to " + n.show(n.place()) + "."
	}
	return "Give it with its unit, to " + n.show(n.place()) + "."
}

// Right returns the answer rounded as it is asked for.
func (n number) Right() string { return n.show(n.value) }

// Wrong returns what the slips give.
func (n number) Wrong() []wrong { return n.wrong }

func (n number) json() any {
	v, _ := strconv.ParseFloat(strconv.FormatFloat(n.value, 'f', n.decimals, 64), 64)
	return v
}

func (n number) show(x float64) string {
	return sheet.Plain(x, sheet.Unit[float64]{Name: n.unit, One: 1}, n.decimals)
}

// check holds an answer against the right one. Rounding to the place asked for
// costs half a unit of it, and as much again is let pass for rounding on the
// way.
func (n number) check(text string) (verdict, error) {
	got, err := n.read(text)
	if err != nil {
		return verdict{}, err
	}
	within := func(x, places float64) bool { return math.Abs(got-x) <= places*n.place()*(1+1e-9) }
	if within(n.value, 0.5) {
		return verdict{true, []string{fmt.Sprintf("%s agrees.", text)}}, nil
	}
	for _, w := range n.wrong {
		if within(w.value, 1) {
			return w.accuse(text), nil
		}
	}
	switch {
	case within(n.value, 1.5):
		return verdict{true, []string{fmt.Sprintf("%s agrees but for the last figure. Carry one figure more in the working and round once, at the end.", text)}}, nil
	case within(n.value, 10):
		return verdict{false, []string{fmt.Sprintf("%s is near, but differs. %s", text, n.Wanted())}}, nil
	}
	return verdict{false, []string{fmt.Sprintf("%s differs, and it is not the figure of a slip this page knows. Go through the working again, units first.", text)}}, nil
}

// has reports whether a thread is among those of the slip.
func (w wrong) has(t threads.Thread) bool { return slices.ContainsFunc(w.threads, t.Same) }

// accuse names a slip.
func (w wrong) accuse(text string) verdict {
	return verdict{false, []string{
		fmt.Sprintf("%s differs. It is just what comes of a well-known slip: %s.", text, w.Name), w.Why}}
}

// A name is an answer that is a thread.
type name struct {
	right threads.Thread
	wrong []wrong
}

// Wanted says what to give.
func (n name) Wanted() string { return "Give the name of the thread, as in M6 or 1/4 BSF." }

// Right returns the name.
func (n name) Right() string { return n.right.Designation() }

// Wrong returns what the slips give.
func (n name) Wrong() []wrong { return n.wrong }

func (n name) json() any { return n.Right() }

// check looks the thread up and holds it against the right one, by what it
// measures and not by what it is called.
func (n name) check(text string) (verdict, error) {
	got, err := threads.Find(text)
	var several *threads.AmbiguousError
	if errors.As(err, &several) { // which of them matters only where one is right
		for _, w := range n.wrong {
			if slices.ContainsFunc(several.Candidates, w.has) && !slices.ContainsFunc(several.Candidates, n.right.Same) {
				return w.accuse(text), nil
			}
		}
	}
	if err != nil {
		return verdict{}, err
	}
	if got.Same(n.right) {
		return verdict{true, []string{fmt.Sprintf("%s agrees.", text)}}, nil
	}
	for _, w := range n.wrong {
		if w.has(got) {
			return w.accuse(text), nil
		}
	}
	return verdict{false, []string{fmt.Sprintf("%s differs: it has a pitch of %s and is %s across the crests. Hold both against what was measured.", text, mm(got.Pitch(), 3), mm(got.Major(), 3))}}, nil
}

// unread says what is wrong with an answer that cannot be read, in one line.
func unread(text string, err error) string {
	var p *units.ParseError
	if errors.As(err, &p) || strings.Contains(err.Error(), strconv.Quote(text)) {
		return err.Error()
	}
	return fmt.Sprintf("%q: %v", text, err)
}
