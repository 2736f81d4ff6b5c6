package fits

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
)

// A mutant is one entry of the tables and how to put it off by one in the last
// place.
type mutant struct {
	name string
	off  func(t *tables, by float64)
}

// mutants lists every entry of the tables that holds a figure.
func mutants() []mutant {
	var all []mutant
	add := func(name string, off func(t *tables, by float64)) { all = append(all, mutant{name, off}) }
	for row, r := range iso.grades {
		for g, v := range r {
			if v != __ {
				add(fmt.Sprintf("IT%s to %g", gradeNames[g], mainTo[row]), func(t *tables, by float64) { t.grades[row][g] += by * lastPlace(v) })
			}
		}
	}
	for row, r := range iso.shafts {
		for i, v := range r {
			if v != __ {
				add(fmt.Sprintf("shaft column %d to %g", i, mainTo[row]), func(t *tables, by float64) { t.shafts[row][i] += int16(by) })
			}
		}
	}
	for row, r := range iso.shaftsFine {
		for i, v := range r {
			if v != __ {
				add(fmt.Sprintf("shaft fine column %d to %g", i, fineTo[row]), func(t *tables, by float64) { t.shaftsFine[row][i] += int16(by) })
			}
		}
	}
	for row, r := range iso.holes {
		for i, v := range r {
			if v != __ {
				add(fmt.Sprintf("hole column %d to %g", i, mainTo[row]), func(t *tables, by float64) { t.holes[row][i] += int16(by) })
			}
		}
	}
	for row, r := range iso.holesFine {
		for i, v := range r {
			if v != __ {
				add(fmt.Sprintf("hole fine column %d to %g", i, fineTo[row]), func(t *tables, by float64) { t.holesFine[row][i] += int16(by) })
			}
		}
	}
	for row, r := range iso.deltas {
		for i, v := range r {
			add(fmt.Sprintf("delta IT%d to %g", 3+i, mainTo[row]), func(t *tables, by float64) { t.deltas[row][i] += by * lastPlace(v) })
		}
	}
	return all
}

// lastPlace is one unit of the last digit printed: tenths where there are any.
func lastPlace(v float64) float64 {
	if v != math.Trunc(v) {
		return 0.1
	}
	return 1
}

// The three lines of defence.
var defences = []struct {
	name    string
	notices func(*tables) bool
}{
	{"laws and formulas", lawsNotice},
	{"limits printed in tables of classes", spotsNotice},
	{"second printing", printingNotices},
}

func lawsNotice(t *tables) bool {
	return slices.ContainsFunc(laws, func(l law) bool { return len(l.broken(t)) > 0 })
}

func spotsNotice(t *tables) bool {
	s := System{t: t}
	for _, group := range spotChecks {
		for _, c := range group.cells {
			z, err := s.Limits(mm(c.nominal), c.class)
			if err != nil || math.Abs(z.Lower.Micrometres()-parse(c.lower)) > 0.01 || math.Abs(z.Upper.Micrometres()-parse(c.upper)) > 0.01 {
				return true
			}
		}
	}
	return false
}

func printingNotices(t *tables) bool {
	for _, p := range secondPrintings() {
		for _, c := range p.cells1(p.ends()) {
			if v, _ := valueAt(t, p, c.row); math.Abs(v-parse(c.printed)) > 0.01 {
				return true
			}
		}
	}
	return false
}

// Every entry of every table, off by one in the last place either way, must be
// noticed. testdata/unnoticed.txt lists those that the laws, the formulas and the
// printed limits let through, so that they rest on the second printing alone; none
// may get past all three.
func TestMutants(t *testing.T) {
	all := mutants()
	left := make([]int, len(defences))
	var alone, escaped []string
	for _, m := range all {
		for _, by := range []float64{-1, 1} {
			bad := iso
			m.off(&bad, by)
			var noticed [3]bool
			for i, d := range defences {
				if noticed[i] = d.notices(&bad); !noticed[i] {
					left[i]++
				}
			}
			name := fmt.Sprintf("%s, %+g in the last place", m.name, by)
			if !noticed[0] && !noticed[1] {
				alone = append(alone, name)
			}
			if !noticed[0] && !noticed[1] && !noticed[2] {
				escaped = append(escaped, name)
			}
		}
	}
	n := 2 * len(all)
	for i, d := range defences {
		t.Logf("%s: %d of %d pass", d.name, left[i], n)
	}
	t.Logf("laws, formulas and printed limits together: %d of %d pass", len(alone), n)
	if float64(len(alone)) > 0.05*float64(n) {
		t.Errorf("laws, formulas and printed limits let %d of %d pass, want 5 %% at most", len(alone), n)
	}
	for _, s := range escaped {
		t.Errorf("not noticed at all: %s", s)
	}
	holdRecord(t, filepath.Join("testdata", "unnoticed.txt"), alone)
}

// holdRecord compares lines with a file, or writes it with -update.
func holdRecord(t *testing.T, path string, lines []string) {
	t.Helper()
	now := []byte(strings.Join(lines, "\n") + "\n")
	if *figures.Update {
		if err := os.WriteFile(path, now, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	was, err := os.ReadFile(path)
	if err != nil || !bytes.Equal(bytes.ReplaceAll(was, []byte("\r"), nil), now) {
		t.Errorf("%s is stale (%v): run the tests with -update", path, err)
	}
}
