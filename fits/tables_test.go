package fits

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
)

// A cell of the second printing: where it is, what it says, who says it.
type cell struct {
	row     int // main or fine
	printed string
}

// rows spreads a printing over the ranges it runs through. ends are the main or
// the fine ranges.
func (p printing) rows(ends []float64) []cell {
	row := 0
	if p.over > 0 {
		row = rowOf(ends, p.over) + 1
	}
	var cells []cell
	for i, s := range strings.Fields(p.cells) {
		cells = append(cells, cell{row + i, s})
	}
	return cells
}

// fineColumn reports whether a letter changes at the fine ranges.
func fineColumn(c Class) bool { return c.letter <= lc || c.letter >= lr }

// valueAt reads one cell of the tables for a column of the second printing.
func valueAt(t *tables, p printing, row int) (float64, string) {
	if strings.HasPrefix(p.column, "IT") {
		return t.grades[row][mustGrade(p.column)], p.column
	}
	if p.column == "DELTA" {
		return t.deltas[row][mustGrade(p.grades)-it3], "delta " + p.grades
	}
	v, _ := lookUp(t, p, row)
	return v, p.column + " " + p.grades
}

func mustGrade(s string) grade {
	g, err := parseGrade(s)
	if err != nil {
		panic(err)
	}
	return g
}

// lookUp reads a deviation the way the library does, in a grade for which the
// column stands as it is, without delta.
func lookUp(t *tables, p printing, row int) (float64, string) {
	c, msg := letterOf(p.column)
	if msg != "" {
		panic(msg)
	}
	at := place{main: row, fine: row}
	if fineColumn(c) {
		at.main = rowOf(mainTo[:], fineTo[row])
	}
	c.grade = gradeFor(p.grades)
	v, why := t.deviation(c, at)
	if strings.HasSuffix(p.grades, "+delta") {
		v -= t.deltas[at.main][c.grade-it3]
	}
	return v, why
}

// gradeFor picks a grade for which a column stands.
func gradeFor(grades string) grade {
	switch grades {
	case "all", "<=IT8", "<=IT8+delta", "IT4-IT7", "<=IT7", "<=IT7+delta", "IT7":
		return it7
	case "IT5-IT6", "IT6 exception", "all, no delta", "IT6":
		return it6
	case "IT8", ">IT7", "<=IT3 and >=IT8":
		return it8
	case ">IT8":
		return it11
	}
	panic("no grade for " + grades)
}

func (p printing) ends() []float64 {
	if strings.HasPrefix(p.column, "IT") || p.column == "DELTA" {
		return mainTo[:]
	}
	if c, _ := letterOf(p.column); fineColumn(c) {
		return fineTo[:]
	}
	return mainTo[:]
}

// secondPrintings are all columns of the second printing.
func secondPrintings() []printing {
	all := append(append([]printing{}, printedGrades...), printedShafts...)
	return append(all, printedHoles...)
}

// The ranges up to 1 and over 1 mm are one row of our tables: what is printed for
// over 1 mm stands for it.
func (p printing) cells1(ends []float64) []cell {
	if p.over == 1 {
		p.over = 0
	}
	return p.rows(ends)
}

func TestSecondPrinting(t *testing.T) {
	n := 0
	for _, p := range secondPrintings() {
		for _, c := range p.cells1(p.ends()) {
			got, what := valueAt(&iso, p, c.row)
			t.Run(fmt.Sprintf("%s to %g", what, p.ends()[c.row]), func(t *testing.T) {
				figures.Figure{Printed: c.printed, Source: p.source}.Check(t, got)
			})
			n++
		}
	}
	t.Logf("%d cells", n)
}

func TestSpotChecks(t *testing.T) {
	for _, group := range spotChecks {
		for _, s := range group.cells {
			t.Run(fmt.Sprintf("%g %s", s.nominal, s.class), func(t *testing.T) {
				z, err := Limits(mm(s.nominal), s.class)
				if err != nil {
					t.Fatal(err)
				}
				figures.Figure{Printed: s.lower, Source: group.source}.Check(t, z.Lower.Micrometres())
				figures.Figure{Printed: s.upper, Source: group.source}.Check(t, z.Upper.Micrometres())
				figures.Near(t, "least size", z.Min.Millimetres(), s.nominal+parse(s.lower)/1000, 1e-9)
				figures.Near(t, "greatest size", z.Max.Millimetres(), s.nominal+parse(s.upper)/1000, 1e-9)
			})
		}
	}
}

func parse(s string) float64 {
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return math.NaN()
	}
	return v
}

// Half micrometres are printed: a tenth counts there.
func TestHalfMicrometres(t *testing.T) {
	for _, tc := range []struct {
		nominal      float64
		class        string
		lower, upper float64
	}{
		{30, "JS7", -10.5, 10.5}, {8, "JS7", -7.5, 7.5}, {50, "js7", -12.5, 12.5}, {120, "js5", -7.5, 7.5},
		{5, "M3", -5.5, -3}, {5, "K4", -3.5, 0.5},
	} {
		z, err := Limits(mm(tc.nominal), tc.class)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, tc.class+" lower", z.Lower.Micrometres(), tc.lower, 1e-9)
		figures.Near(t, tc.class+" upper", z.Upper.Micrometres(), tc.upper, 1e-9)
	}
}

// What the edition of 2010 added over 10 mm, which no printed table was at hand for.
func TestAddedIn2010(t *testing.T) {
	const src = "ISO 286-1:2010, Table 4, from memory"
	for class, printed := range map[string][3]string{
		"cd8": {"-70", "-85", "-100"}, "ef8": {"-23", "-28", "-35"}, "fg8": {"-10", "-12", "-15"},
	} {
		for i, size := range []float64{18, 30, 50} {
			z, err := Limits(mm(size), class)
			if err != nil {
				t.Fatal(err)
			}
			figures.Figure{Printed: printed[i], Source: src}.Check(t, z.Upper.Micrometres())
		}
	}
}

// Printed sources that differ from what is kept, each with the reason.
func TestConflicts(t *testing.T) {
	for _, tc := range []struct {
		nominal float64
		class   string
		upper   bool
		printed string
		source  string
		reason  string
	}{
		{225, "U8", true, "-256", mdHoles, "EN ISO 286-1 reprint has -258 and the formula gives 258.1"},
		{400, "X8", true, "-650", mdHoles, "Il Calibro prints +660 for the shaft and the formula gives 659.9"},
		{30, "M5", true, "-4", "SKF Rolling Bearings catalogue, Table 20", "with the -14 beside it the zone would be 10 wide, and IT5 is 9"},
		{400, "E7", true, "185", "ISO 286-2 hole chart, Wisetool reprint", "125 and IT7 of 57 make 182"},
		{3, "f8", true, "-8", "JIS B 0401 shaft limits, Sumitomo", "f6 and f7 in the same row have -6"},
		{10, "g6", true, "-8", "DIN ISO 286 shaft deviations, reprint (MechGuru)", "five other tables have -5"},
		{560, "IT5", true, "30", gostGrades, "GB/T 1800.3-1998 has 32"},
		{700, "IT5", true, "35", gostGrades, "GB/T 1800.3-1998 has 36"},
		{1200, "IT5", true, "46", gostGrades, "the DIN ISO 286 reprint has 47"},
		{1500, "IT5", true, "54", gostGrades, "the DIN ISO 286 reprint has 55"},
		{2300, "IT5", true, "77", gostGrades, "the DIN ISO 286 reprint has 78"},
		{3000, "IT5", true, "93", gostGrades, "the DIN ISO 286 reprint has 96"},
		{900, "IT4", true, "29", gostGrades, "GB/T 1800.3-1998 has 28"},
		{1200, "IT4", true, "34", gostGrades, "ISO 286-1 has 33 (from memory), and 5I is 32.9"},
		{1500, "IT4", true, "40", gostGrades, "ISO 286-1 has 39 (from memory), and 5I is 38.8"},
		{1800, "IT4", true, "48", gostGrades, "ISO 286-1 has 46 (from memory), and 5I is 46.3"},
		{2300, "IT4", true, "57", gostGrades, "ISO 286-1 has 55 (from memory), and 5I is 55.2"},
		{3000, "IT4", true, "69", gostGrades, "ISO 286-1 has 68 (from memory)"},
	} {
		t.Run(fmt.Sprintf("%g %s", tc.nominal, tc.class), func(t *testing.T) {
			f := figures.Figure{Printed: tc.printed, Source: tc.source}
			if strings.HasPrefix(tc.class, "IT") {
				it, err := Grade(mm(tc.nominal), tc.class)
				if err != nil {
					t.Fatal(err)
				}
				f.Misprint(t, it.Micrometres(), tc.reason)
				return
			}
			z, err := Limits(mm(tc.nominal), tc.class)
			if err != nil {
				t.Fatal(err)
			}
			f.Misprint(t, z.Upper.Micrometres(), tc.reason)
		})
	}
}
