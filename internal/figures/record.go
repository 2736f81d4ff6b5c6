package figures

import (
	"bytes"
	"encoding/csv"
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"sync"
	"testing"
)

// referenceMark tells 50-digit references from printed figures in the record.
const referenceMark = " [50 digits]"

// Update says that the tests are to rewrite their records.
var Update = flag.Bool("update", false, "rewrite testdata/checks.csv and CHECKS.md")

type tally struct {
	figures   int
	largest   float64 // share of the tolerance used
	misprints []string
}

var (
	mu      sync.Mutex
	tallies = map[string]*tally{}
)

func record(source string, share float64, misprint string) {
	mu.Lock()
	defer mu.Unlock()
	t := tallies[source]
	if t == nil {
		t = &tally{}
		tallies[source] = t
	}
	if misprint != "" {
		if !slices.Contains(t.misprints, misprint) {
			t.misprints = append(t.misprints, misprint)
		}
		return
	}
	t.figures++
	t.largest = math.Max(t.largest, share)
}

// recordFile is where a package keeps its record.
var recordFile = filepath.Join("testdata", "checks.csv")

// Main runs the tests of a package and then holds what they checked against
// the package's record. It does so only when every test has run and passed.
func Main(m *testing.M) {
	code := m.Run()
	if code == 0 && complete() {
		if err := compare(); err != nil {
			fmt.Fprintln(os.Stderr, err)
			code = 1
		}
	}
	os.Exit(code)
}

// complete reports whether no flag has narrowed the run.
func complete() bool {
	for _, name := range [...]string{"test.run", "test.skip", "test.fuzz", "test.list"} {
		if f := flag.Lookup(name); f != nil && f.Value.String() != "" {
			return false
		}
	}
	if f := flag.Lookup("test.count"); f != nil && f.Value.String() != "1" {
		return false
	}
	return !testing.Short()
}

func compare() error {
	now := render()
	if *Update {
		if err := os.MkdirAll(filepath.Dir(recordFile), 0o755); err != nil {
			return err
		}
		return os.WriteFile(recordFile, now, 0o644)
	}
	was, err := os.ReadFile(recordFile)
	if err != nil {
		return fmt.Errorf("figures: %w; run the tests with -update", err)
	}
	if !bytes.Equal(bytes.ReplaceAll(was, []byte("\r"), nil), now) {
		return fmt.Errorf("figures: %s is stale: run the tests of this package with -update, then go test . -update at the root", recordFile)
	}
	return nil
}

// render writes the record: source, number of figures, largest difference in
// hundredths of the tolerance, rounded up to the next tenth so that a last bit
// does not change it, and what does not agree.
func render() []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	sources := make([]string, 0, len(tallies))
	for s := range tallies {
		sources = append(sources, s)
	}
	slices.Sort(sources)
	for _, s := range sources {
		t := tallies[s]
		slices.Sort(t.misprints)
		row := append([]string{s, strconv.Itoa(t.figures), strconv.FormatFloat(max(0, math.Ceil(t.largest*10-1e-6)/10), 'f', 1, 64)}, t.misprints...)
		_ = w.Write(row)
	}
	w.Flush()
	return b.Bytes()
}
