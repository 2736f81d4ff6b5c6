package house

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
)

// TestChecksFile holds CHECKS.md against what the packages recorded when their
// own tests ran.
func TestChecksFile(t *testing.T) {
	want := checksFile(t)
	name := filepath.Join(root, "CHECKS.md")
	if *figures.Update {
		if err := os.WriteFile(name, []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got := read(t, "CHECKS.md"); got != want {
		t.Error("CHECKS.md is stale: run go generate ./... and commit")
	}
}

const checksHead = `# What the figures rest on

Every number below was checked when the tests last ran. A printed figure must be
met within half a unit of its last digit, a reference computed to 50 digits
within 1e-12 of its value. "Largest difference" is the share of that allowance
which the worst of the figures used, rounded up to a tenth. This file is written
by ` + "`go generate ./...`" + `; a test fails when it is stale.

`

func checksFile(t *testing.T) string {
	t.Helper()
	var body, misprints strings.Builder
	total := 0
	for _, dir := range libraries {
		rows, err := records(dir)
		if errors.Is(err, fs.ErrNotExist) {
			t.Errorf("%s: no record of checks; run its tests with -update", dir)
			continue
		}
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&body, "## %s\n\n| source | figures | largest difference |\n| --- | ---: | ---: |\n", dir)
		for _, row := range rows {
			n, _ := strconv.Atoi(row[1])
			total += n
			largest := row[2] + " of half a unit"
			if strings.HasSuffix(row[0], "[50 digits]") {
				largest = "below 1e-12"
			}
			if n > 0 {
				fmt.Fprintf(&body, "| %s | %d | %s |\n", cell(row[0]), n, largest)
			}
			for _, m := range row[3:] {
				fmt.Fprintf(&misprints, "| %s | %s | %s |\n", dir, cell(row[0]), cell(m))
			}
		}
		body.WriteString("\n")
	}
	out := checksHead + fmt.Sprintf("%d figures agree.\n\n", total)
	if misprints.Len() > 0 {
		out += "## Figures that do not agree, and why\n\n| package | source | figure |\n| --- | --- | --- |\n" + misprints.String() + "\n"
	}
	return out + body.String()
}

func records(dir string) ([][]string, error) {
	f, err := os.Open(filepath.Join(root, dir, "testdata", "checks.csv"))
	if err != nil {
		return nil, err
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord = -1
	return r.ReadAll()
}

func cell(s string) string { return strings.ReplaceAll(s, "|", "\\|") }
