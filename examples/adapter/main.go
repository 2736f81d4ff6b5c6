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
	_ "embed"
	"io"
	"os"

	"example.com/benchsums/examples/internal/adaptersheet"
	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/program"
	"example.com/benchsums/examples/internal/sheet"
)

//go:embed carburettor.toml
var demo []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// run is the program; [program.Program.Run] tells the exit status.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	p := program.Program{
		Name: "adapter", About: about, Reads: "what was measured", Inside: "the adapter",
		Default: program.File{Name: "carburettor.toml", Text: demo}, Template: template,
		SVG: "write the drawing to this `file` too, and the zones of tolerance to -2.svg",
		WorkOut: func(f program.File) (program.Output, error) {
			s, err := workOut(f.Name, f.Text)
			return program.Sheet{Sheet: s}, err
		},
	}
	return p.Run(args, stdin, stdout, stderr)
}

const about = `Adapter works out an adapter to be turned from bar, from a flange on two studs to
a carburettor with a split collar: every size with its limits, the clearance cold
and hot, what the slot closes by, the walls left, which reading to take again.

With no flags it does the adapter it carries inside. To do your own:

  adapter -template > mine.toml    write an empty file
  (fill in what you measured)
  adapter -in mine.toml -svg drawing.svg
`

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
