package program

import (
	"errors"
	"flag"
	"fmt"
	"io"
)

// A Program is what is special to one program.
type Program struct {
	Name   string // as messages and help call it
	About  string // what help says above the flags, ending in a line end
	Status string // what help says after the exit status; may be empty

	Reads    string // what stands in its files: "the engine"
	Inside   string // what stands in the one it carries: "the engine"
	Default  File   // the one it carries
	Template []byte // the empty one
	Page     string // what -html writes; empty for "one HTML page"
	SVG      string // what -svg does, the name of its file in backquotes; empty for no such flag
	Stray    string // what to do in place of an argument; empty for -in with it

	// Flags adds the flags of its own; may be nil.
	Flags func(*flag.FlagSet)
	// Check refuses flags that do not go together; may be nil.
	Check func(Options) error
	// WorkOut makes the output of a file. Its errors are printed as they are:
	// they begin with the name of the file.
	WorkOut func(File) (Output, error)
}

// A File is the text of a file, and its name as messages give it.
type File struct {
	Name string
	Text []byte
}

// An Output is what a program writes. Of the first three methods one is called.
type Output interface {
	WriteText(io.Writer) error
	WriteJSON(io.Writer) error
	WriteHTML(io.Writer) error
	// Draw writes the drawings to the file and, if there are more, to files
	// named after it. It is called first, if at all. What it has to say goes to
	// say, which drops it where JSON or HTML goes to standard output.
	Draw(file string, say io.Writer) error
}

// Run runs the program and returns its exit status.
func (p *Program) Run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	o, err := p.parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintf(stderr, "%s: %v; -h lists the flags\n", p.Name, err)
		return 2
	case o.Template:
		_, err = stdout.Write(p.Template)
		return p.wrote(err, stderr)
	}
	f, err := p.read(o.In, stdin)
	if err != nil {
		fmt.Fprintf(stderr, "%s: %v\n", p.Name, err)
		return 2
	}
	out, err := p.WorkOut(f)
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	return p.wrote(o.write(out, stdout), stderr)
}

// wrote is the exit status after writing.
func (p *Program) wrote(err error, stderr io.Writer) int {
	if err != nil {
		fmt.Fprintf(stderr, "%s: cannot write: %v\n", p.Name, err)
		return 1
	}
	return 0
}
