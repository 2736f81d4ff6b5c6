package main

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"github.com/rogpeppe/go-internal/testscript"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"returnspring": main})
}

// The program as a user runs it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script"})
}

// The diagrams are whole SVG, of the size that is asked.
func TestDiagrams(t *testing.T) {
	s, err := workOut("marrowdale.toml", marrowdale)
	require.NoError(t, err)
	require.Len(t, s.Sections[0].Pictures, 2)
	for _, p := range s.Sections[0].Pictures {
		d := xml.NewDecoder(strings.NewReader(p.SVG))
		for {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("%s: %v", p.Title, err)
			}
		}
		require.NotEmpty(t, p.Says)
	}
}

// JSON has every figure with its unit, and its uncertainty where it has one.
func TestJSON(t *testing.T) {
	var out, errs bytes.Buffer
	require.Equal(t, 0, run([]string{"-json"}, nil, &out, &errs))
	var page struct {
		Sections []struct {
			Key     string
			Figures []struct {
				Key, Unit string
				Value     float64
				Std       *float64 `json:"standard_uncertainty"`
			}
		}
	}
	require.NoError(t, json.Unmarshal(out.Bytes(), &page))
	require.Len(t, page.Sections, 1)
	found := map[string]bool{}
	for _, f := range page.Sections[0].Figures {
		require.False(t, found[f.Key], f.Key)
		found[f.Key] = true
		require.True(t, f.Key == "springs.drum_wind" || f.Std != nil, f.Key)
	}
	require.True(t, found["springs.strip_1_wind"] && found["springs.wire_3_full"])
}

// The template as it comes is empty, and with all its lines in force it is read and
// worked out.
func TestTemplate(t *testing.T) {
	var blank job
	_, err := jobfile.Decode("template.toml", template, &blank)
	require.NoError(t, err)
	require.True(t, reflect.DeepEqual(blank, job{}), "as it comes, the template is not empty")

	var lines []string
	in := regexp.MustCompile(`^# ([a-z_]+ = |\[)`)
	for _, l := range strings.Split(string(template), "\n") {
		if in.MatchString(l) && !strings.HasPrefix(l, "# named") {
			lines = append(lines, strings.TrimPrefix(l, "# "))
		}
	}
	s, err := workOut("template.toml", []byte(strings.Join(lines, "\n")))
	require.NoError(t, err)
	require.NotEmpty(t, s.Sections[0].Figures)
}

// What cannot be written is a failure, and says so.
func TestCannotWrite(t *testing.T) {
	for _, args := range [][]string{nil, {"-json"}, {"-html", "-"}, {"-template"}, {"-html", t.TempDir()}, {"-svg", t.TempDir()}} {
		var errs bytes.Buffer
		if got := run(args, nil, broken{}, &errs); got != 1 || !strings.Contains(errs.String(), "cannot write") {
			t.Errorf("%q: exit %d, %s", args, got, errs.String())
		}
	}
	var out, errs bytes.Buffer
	require.Equal(t, 2, run([]string{"-in", os.TempDir()}, nil, &out, &errs))
	require.Contains(t, errs.String(), "cannot be read")
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("the paper is out") }
