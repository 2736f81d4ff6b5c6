// Adapter turns two measured ends and a bar into a sheet to machine by: an
// adapter from a flange on two studs to a carburettor with a split collar.
// Every size to turn comes with its limits in millimetres and inches, with the
// clearance cold and hot, what the slot of the collar closes by, the walls that
// are left, and which reading to take again.
//
//	go run ./examples/adapter                    the adapter in the program
//	go run ./examples/adapter -in mine.toml      your own readings
//	go run ./examples/adapter -template          an empty file to fill in
//	go run ./examples/adapter -svg drawing.svg   the drawing, and the zones of tolerance beside it
//	go run ./examples/adapter -html sheet.html   one page to print
package main

import (
	"bytes"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"example.com/benchsums/examples/internal/adaptersheet"
	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
)

//go:embed carburettor.toml
var demo []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// options are what the flags say.
type options struct {
	in, html, svg string
	json, blank   bool
}

// run is the program: 0 is success, 1 a failure to write, 2 wrong input.
func run(args []string, stdout, stderr io.Writer) int {
	o, err := parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintf(stderr, "adapter: %v; -h lists the flags\n", err)
		return 2
	}
	if o.blank {
		return finish(stderr, func() error { _, err := stdout.Write(template); return err })
	}
	name, data, err := o.input()
	if err != nil {
		fmt.Fprintln(stderr, "adapter:", err)
		return 2
	}
	s, err := workOut(name, data)
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	return finish(stderr, func() error { return o.write(s, stdout) })
}

func parse(args []string, stdout io.Writer) (*options, error) {
	o := &options{}
	flags := flag.NewFlagSet("adapter", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.StringVar(&o.in, "in", "", "read what was measured from this TOML `file`; - is standard input (default: the adapter in the program)")
	flags.BoolVar(&o.json, "json", false, "write JSON for programs instead of text")
	flags.StringVar(&o.html, "html", "", "write one HTML page to this `file` instead of text; - is standard output")
	flags.StringVar(&o.svg, "svg", "", "write the drawing to this `file` too, and the zones of tolerance to -2.svg")
	flags.BoolVar(&o.blank, "template", false, "write an empty file to fill in, and stop")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			usage(stdout, flags)
		}
		return nil, err
	}
	if flags.NArg() > 0 {
		return nil, fmt.Errorf("%q: no arguments are read; give a file with -in %s", flags.Arg(0), flags.Arg(0))
	}
	return o, nil
}

// input returns the file to read and its name as messages give it.
func (o *options) input() (string, []byte, error) {
	switch o.in {
	case "":
		return "carburettor.toml", demo, nil
	case "-":
		data, err := io.ReadAll(os.Stdin)
		return "standard input", data, err
	}
	data, err := os.ReadFile(o.in)
	switch {
	case os.IsNotExist(err):
		return "", nil, fmt.Errorf("%s: no such file; write one with -template", o.in)
	case err != nil:
		return "", nil, fmt.Errorf("%s: cannot be read", o.in)
	}
	return filepath.Base(o.in), data, nil
}

// A job is what stands in a file.
type job struct {
	Title   string                 `toml:"title"`
	Adapter *adaptersheet.Readings `toml:"adapter"`
}

// workOut reads a file and works out the sheet.
func workOut(name string, data []byte) (*sheet.Sheet, error) {
	var j job
	file, err := jobfile.Decode(name, data, &j)
	if err != nil {
		return nil, err
	}
	if j.Adapter == nil {
		return nil, file.Errorf("", "nothing to work out: give an [adapter]; see -template")
	}
	sec, err := adaptersheet.Section(file, j.Adapter)
	if err != nil {
		return nil, err
	}
	sec.Number = 0
	if j.Title == "" {
		j.Title = "Adapter"
	}
	return &sheet.Sheet{Title: j.Title, Intro: intro, Sections: []sheet.Section{*sec}, Notes: notes}, nil
}

var intro = []string{
	"± is the half-width that holds the value 95 times in 100, the readings being as good as the file says. Sizes hold at 20 °C.",
}

var notes = []string{
	"Every formula here is in the packages of benchsums with its source. What is marked as common practice has no source and is no rule: the maker's figure goes before it.",
	"A figure without ± was given without one, and is taken as exact.",
}

// write writes the drawings that are asked for, and the sheet.
func (o *options) write(s *sheet.Sheet, stdout io.Writer) error {
	if o.svg != "" {
		for i, p := range s.Sections[0].Pictures {
			if err := os.WriteFile(sheetName(o.svg, i), []byte(p.SVG), 0o644); err != nil {
				return err
			}
		}
	}
	switch {
	case o.json:
		return s.WriteJSON(stdout)
	case o.html == "-":
		return s.WriteHTML(stdout)
	case o.html != "":
		var page bytes.Buffer
		if err := s.WriteHTML(&page); err != nil {
			return err
		}
		return os.WriteFile(o.html, page.Bytes(), 0o644)
	}
	return s.WriteText(stdout)
}

// sheetName names the file of picture i: drawing.svg, drawing-2.svg.
func sheetName(name string, i int) string {
	if i == 0 {
		return name
	}
	base, ok := strings.CutSuffix(name, ".svg")
	if !ok {
		return fmt.Sprintf("%s-%d", name, i+1)
	}
	return fmt.Sprintf("%s-%d.svg", base, i+1)
}

func finish(stderr io.Writer, do func() error) int {
	if err := do(); err != nil {
		fmt.Fprintln(stderr, "adapter: cannot write:", err)
		return 1
	}
	return 0
}

func usage(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprint(w, `Adapter works out an adapter to be turned from bar, from a flange on two studs to
a carburettor with a split collar: every size with its limits, the clearance cold
and hot, what the slot closes by, the walls left, which reading to take again.

With no flags it does the adapter it carries inside. To do your own:

  adapter -template > mine.toml    write an empty file
  (fill in what you measured)
  adapter -in mine.toml -svg drawing.svg

Flags:
`)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprint(w, `
Exit status: 0 done, 1 could not write, 2 the file or the flags are wrong.
`)
}
