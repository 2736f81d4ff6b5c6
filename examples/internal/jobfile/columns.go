package jobfile

import (
	"fmt"
	"strings"

	"example.com/benchsums/units"
)

// A Column is one column of a table of readings.
type Column struct {
	Name string // as it stands in the heading: "rim"
	// Parse reads one cell, a number and the unit of the heading.
	Parse func(cell string) error
}

// Quantities is a Column that appends to list.
func Quantities[Q units.Quantity](name string, list *[]Q) Column {
	return Column{name, func(cell string) error {
		r, err := units.ParseReading[Q](cell)
		if err != nil {
			return err
		}
		*list = append(*list, r.Value)
		return nil
	}}
}

// Columns reads a table of readings, the text of key, whose heading names the
// columns with their units:
//
//	rim mm   dial mm
//	60       9.46
//	70       7.90
//
// Columns may stand in any order; all must be there. Empty lines are passed
// over. It returns the line of the file on which each row stands.
func (f *File) Columns(key, text string, columns ...Column) ([]int, error) {
	at := f.places[key]
	line := at.line
	if at.block {
		line++
	}
	fail := func(n int, format string, args ...any) ([]int, error) {
		return nil, &Error{File: f.Name, Line: n, Key: key, Msg: fmt.Sprintf(format, args...)}
	}
	var order []Column
	var unit []string
	var rows []int
	for i, row := range strings.Split(strings.TrimRight(text, " \t\r\n"), "\n") {
		words := strings.Fields(row)
		n := line + i
		switch {
		case len(words) == 0:
		case order == nil:
			if len(words) != 2*len(columns) {
				return fail(n, "heading %q: want %s, each with its unit", strings.TrimSpace(row), headings(columns))
			}
			for j := 0; j < len(words); j += 2 {
				c, ok := named(columns, words[j])
				if !ok {
					return fail(n, "no column %q here: want %s", words[j], headings(columns))
				}
				order, unit = append(order, c), append(unit, words[j+1])
			}
		case len(words) != len(order):
			return fail(n, "%q: %d figures, want %d", strings.TrimSpace(row), len(words), len(order))
		default:
			for j, w := range words {
				if err := order[j].Parse(w + " " + unit[j]); err != nil {
					return fail(n, "column %s: %v", order[j].Name, err)
				}
			}
			rows = append(rows, n)
		}
	}
	if len(rows) == 0 {
		return fail(line, "no readings: want a heading (%s) and a line for each", headings(columns))
	}
	return rows, nil
}

func named(columns []Column, name string) (Column, bool) {
	for _, c := range columns {
		if c.Name == name {
			return c, true
		}
	}
	return Column{}, false
}

func headings(columns []Column) string {
	var names []string
	for _, c := range columns {
		names = append(names, c.Name)
	}
	return strings.Join(names, ", ")
}
