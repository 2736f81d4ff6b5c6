package program

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/sheet"
	"github.com/stretchr/testify/require"
)

// demo works out a file to its own text, and refuses an empty one.
func demo() *Program {
	return &Program{
		Name: "demo", About: "Demo is for the tests.\n", Status: " And so on.",
		Reads: "the rope", Inside: "a rope", SVG: "draw to this `file`",
		Default: File{"rope.toml", []byte("hemp")}, Template: []byte("# blank\n"),
		WorkOut: func(f File) (Output, error) {
			if len(f.Text) == 0 {
				return nil, fmt.Errorf("%s: empty", f.Name)
			}
			return echo(f), nil
		},
	}
}

type echo File

func (e echo) WriteText(w io.Writer) error { return put(w, "text of %s: %s", e.Name, e.Text) }
func (e echo) WriteJSON(w io.Writer) error { return put(w, "json of %s: %s", e.Name, e.Text) }
func (e echo) WriteHTML(w io.Writer) error { return put(w, "html of %s: %s", e.Name, e.Text) }

func (e echo) Draw(file string, say io.Writer) error {
	if err := put(say, "drawn. "); err != nil {
		return err
	}
	return os.WriteFile(file, []byte("svg"), 0o644)
}

func put(w io.Writer, format string, args ...any) error {
	_, err := fmt.Fprintf(w, format, args...)
	return err
}

// What goes where, for each set of flags.
func TestRun(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.Mkdir("bench", 0o755))
	require.NoError(t, os.WriteFile("bench/mine.toml", []byte("wire"), 0o644))
	require.NoError(t, os.WriteFile("empty.toml", nil, 0o644))
	for _, tc := range []struct {
		args           string
		status         int
		stdout, stderr string
	}{
		{"", 0, "text of rope.toml: hemp", ""},
		{"-json", 0, "json of rope.toml: hemp", ""},
		{"-html -", 0, "html of rope.toml: hemp", ""},
		{"-template", 0, "# blank\n", ""},
		{"-template -in missing.toml", 0, "# blank\n", ""},
		{"-in bench/mine.toml", 0, "text of mine.toml: wire", ""},
		{"-in -", 0, "text of standard input: piped", ""},
		{"-svg a.svg", 0, "drawn. text of rope.toml: hemp", ""},
		{"-svg a.svg -json", 0, "json of rope.toml: hemp", ""},
		{"-svg a.svg -html -", 0, "html of rope.toml: hemp", ""},
		{"-svg a.svg -html a.html", 0, "drawn. ", ""},

		{"-svg none/a.svg -json", 1, "", "demo: cannot write: open none/a.svg: no such file or directory\n"},
		{"-html none/a.html", 1, "", "demo: cannot write: open none/a.html: no such file or directory\n"},

		{"-colour", 2, "", "demo: flag provided but not defined: -colour; -h lists the flags\n"},
		{"mine.toml", 2, "", "demo: \"mine.toml\": no arguments are read; give a file with -in mine.toml; -h lists the flags\n"},
		{"-in missing.toml", 2, "", "demo: missing.toml: no such file; write one with -template\n"},
		{"-in bench", 2, "", "demo: bench: cannot be read\n"},
		{"-in empty.toml -html b.html -svg b.svg", 2, "", "empty.toml: empty\n"},
	} {
		var stdout, stderr bytes.Buffer
		status := demo().Run(strings.Fields(tc.args), strings.NewReader("piped"), &stdout, &stderr)
		require.Equal(t, tc.status, status, tc.args)
		require.Equal(t, tc.stdout, stdout.String(), tc.args)
		require.Equal(t, tc.stderr, stderr.String(), tc.args)
	}
	page, err := os.ReadFile("a.html")
	require.NoError(t, err)
	require.Equal(t, "html of rope.toml: hemp", string(page))
	require.NoFileExists(t, "b.html")
	require.NoFileExists(t, "b.svg")
}

// Help is no error, and lists all flags; -svg only if there is one.
func TestHelp(t *testing.T) {
	p := demo()
	p.Flags = func(flags *flag.FlagSet) { flags.Int("trials", 0, "how `many`") }
	var stdout, stderr bytes.Buffer
	require.Equal(t, 0, p.Run([]string{"-h"}, nil, &stdout, &stderr))
	require.Empty(t, stderr.String())
	require.Equal(t, `Demo is for the tests.

Flags:
  -html file
    	write one HTML page to this file instead of text; - is standard output
  -in file
    	read the rope from this TOML file; - is standard input (default: a rope in the program)
  -json
    	write JSON for programs instead of text
  -svg file
    	draw to this file
  -template
    	write an empty file to fill in, and stop
  -trials many
    	how many

Exit status: 0 done, 1 could not write, 2 the file or the flags are wrong. And so on.
`, stdout.String())

	p.SVG = ""
	stdout.Reset()
	require.Equal(t, 0, p.Run([]string{"-h"}, nil, &stdout, &stderr))
	require.NotContains(t, stdout.String(), "-svg")
	require.Equal(t, 2, p.Run([]string{"-svg", "a.svg"}, nil, &stdout, &stderr))
}

// The words and the checks of one program take the place of the usual ones.
func TestOwnWords(t *testing.T) {
	p := demo()
	p.Page, p.Stray = "a page with drawings", "use a flag"
	p.Check = func(o Options) error {
		if o.JSON {
			return errors.New("no JSON today")
		}
		return nil
	}
	var stdout, stderr bytes.Buffer
	require.Equal(t, 0, p.Run([]string{"-h"}, nil, &stdout, &stderr))
	require.Contains(t, stdout.String(), "write a page with drawings to this file instead of text")
	require.Equal(t, 2, p.Run([]string{"this"}, nil, &stdout, &stderr))
	require.Equal(t, 2, p.Run([]string{"-json", "-html", "-"}, nil, &stdout, &stderr))
	require.Equal(t, 2, p.Run([]string{"-json"}, nil, &stdout, &stderr))
	require.Equal(t, "demo: \"this\": no arguments are read; use a flag; -h lists the flags\n"+
		"demo: both -json and -html: give one of them; -h lists the flags\n"+
		"demo: no JSON today; -h lists the flags\n", stderr.String())
}

// Whatever cannot be written or read is told.
func TestBroken(t *testing.T) {
	for _, args := range [][]string{nil, {"-json"}, {"-html", "-"}, {"-template"}, {"-svg", filepath.Join(t.TempDir(), "a.svg")}} {
		var stderr bytes.Buffer
		require.Equal(t, 1, demo().Run(args, nil, broken{}, &stderr), args)
		require.Equal(t, "demo: cannot write: out of paper\n", stderr.String(), args)
	}
	var stdout, stderr bytes.Buffer
	require.Equal(t, 2, demo().Run([]string{"-in", "-"}, broken{}, &stdout, &stderr))
	require.Equal(t, "demo: out of ink\n", stderr.String())
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("out of paper") }
func (broken) Read([]byte) (int, error)  { return 0, errors.New("out of ink") }

// The pictures of a sheet are counted through its sections.
func TestSheetDraw(t *testing.T) {
	dir := t.TempDir()
	s := Sheet{&sheet.Sheet{Sections: []sheet.Section{
		{Pictures: []sheet.Picture{{SVG: "one"}, {SVG: "two"}}}, {}, {Pictures: []sheet.Picture{{SVG: "three"}}},
	}}}
	var say bytes.Buffer
	require.NoError(t, s.Draw(filepath.Join(dir, "a.svg"), &say))
	require.Empty(t, say.String())
	for name, want := range map[string]string{"a.svg": "one", "a-2.svg": "two", "a-3.svg": "three"} {
		got, err := os.ReadFile(filepath.Join(dir, name))
		require.NoError(t, err)
		require.Equal(t, want, string(got), name)
	}
	require.Error(t, s.Draw(filepath.Join(dir, "none", "a.svg"), &say))
}

func TestNumbered(t *testing.T) {
	require.Equal(t, "a.svg", Numbered("a.svg", 0))
	require.Equal(t, "a-2.svg", Numbered("a.svg", 1))
	require.Equal(t, "dir.d/a-12", Numbered("dir.d/a", 11))
}
