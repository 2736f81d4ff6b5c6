// Returnspring chooses return springs from what is on offer: a strip for a drum
// that winds its rope home, a coil of wire for a lever. It ranks the choices with
// the reason, names for each that fails the one thing that fails and by how much,
// draws torque against angle with what is asked laid over it, and says what to
// make and what the wound spring can do to a hand.
//
//	go run ./examples/returnspring                   the springs in the program
//	go run ./examples/returnspring -in springs.toml  your own
//	go run ./examples/returnspring -template         an empty file to fill in
//	go run ./examples/returnspring -svg torque.svg   the diagrams
package main

import (
	"bytes"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/springsheet"
)

//go:embed marrowdale.toml
var marrowdale []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// options are what the flags say.
type options struct {
	in, html, svg  string
	json, template bool
}

// run is the program: 0 is success, 1 a failure to write, 2 wrong input.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	o, err := parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintf(stderr, "returnspring: %v; -h lists the flags\n", err)
		return 2
	case o.template:
		_, err = stdout.Write(template)
		return wrote(err, stderr)
	}
	name, data, err := o.input(stdin)
	if err != nil {
		fmt.Fprintln(stderr, "returnspring:", err)
		return 2
	}
	s, err := workOut(name, data)
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	return wrote(o.write(s, stdout), stderr)
}

func wrote(err error, stderr io.Writer) int {
	if err != nil {
		fmt.Fprintln(stderr, "returnspring: cannot write:", err)
		return 1
	}
	return 0
}

func parse(args []string, stdout io.Writer) (*options, error) {
	o := &options{}
	flags := flag.NewFlagSet("returnspring", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.StringVar(&o.in, "in", "", "read room, demand and offers from this TOML `file`; - is standard input (default: the springs in the program)")
	flags.StringVar(&o.svg, "svg", "", "write the torque diagrams to this `file` too, -2.svg for the second")
	flags.StringVar(&o.html, "html", "", "write one HTML page to this `file` instead of text; - is standard output")
	flags.BoolVar(&o.json, "json", false, "write JSON for programs instead of text")
	flags.BoolVar(&o.template, "template", false, "write an empty file to fill in, and stop")
	err := flags.Parse(args)
	switch {
	case errors.Is(err, flag.ErrHelp):
		usage(stdout, flags)
		return nil, err
	case err != nil:
		return nil, err
	case flags.NArg() > 0:
		return nil, fmt.Errorf("%q: no arguments are read; give a file with -in %s", flags.Arg(0), flags.Arg(0))
	case o.json && o.html != "":
		return nil, errors.New("both -json and -html: give one of them")
	}
	return o, nil
}

// input returns the file to read and its name as messages give it.
func (o *options) input(stdin io.Reader) (string, []byte, error) {
	switch o.in {
	case "":
		return "marrowdale.toml", marrowdale, nil
	case "-":
		data, err := io.ReadAll(stdin)
		return "standard input", data, err
	}
	data, err := os.ReadFile(o.in)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return "", nil, fmt.Errorf("%s: no such file; write one with -template", o.in)
	case err != nil:
		return "", nil, fmt.Errorf("%s: cannot be read", o.in)
	}
	return filepath.Base(o.in), data, nil
}

// A job is what stands in a file.
type job struct {
	Title string             `toml:"title"`
	Drum  *springsheet.Drum  `toml:"drum"`
	Lever *springsheet.Lever `toml:"lever"`
}

// workOut reads a file and chooses the springs.
func workOut(name string, data []byte) (*sheet.Sheet, error) {
	var j job
	file, err := jobfile.Decode(name, data, &j)
	if err != nil {
		return nil, err
	}
	r, err := springsheet.WorkOut(file, "", &springsheet.Job{Drum: j.Drum, Lever: j.Lever})
	if err != nil {
		return nil, err
	}
	r.Section.Number = 0
	if j.Title == "" {
		j.Title = "Return springs"
	}
	return &sheet.Sheet{Title: j.Title, Intro: intro, Sections: []sheet.Section{*r.Section}, Notes: notes}, nil
}

var intro = []string{
	"± is the half-width that holds the value 95 times in 100, the readings being as good as the file says and a coil made as well as springs are. What the formula for a strip in a drum is good to, nobody has published.",
}

var notes = []string{
	"Every formula here is in package springs of benchsums with its source; what was checked against print is listed in CHECKS.md.",
	"The sums do not replace a trial on the bench behind a guard.",
}

func (o *options) write(s *sheet.Sheet, stdout io.Writer) error {
	if o.svg != "" {
		for i, p := range s.Sections[0].Pictures {
			if err := os.WriteFile(pictureName(o.svg, i), []byte(p.SVG), 0o644); err != nil {
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

// pictureName names the file of diagram i: torque.svg, torque-2.svg.
func pictureName(name string, i int) string {
	if i == 0 {
		return name
	}
	ext := filepath.Ext(name)
	return fmt.Sprintf("%s-%d%s", strings.TrimSuffix(name, ext), i+1, ext)
}

func usage(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprint(w, `Returnspring chooses return springs from what is on offer: a flat strip for a
drum that winds its rope home, a coil of wire for a lever. It says which one,
why, how many turns to wind on first, what fails of the others and by how much,
what to make, and what the wound spring can do to a hand.

With no flags it does the springs it carries inside. To do your own:

  returnspring -template > springs.toml    write an empty file
  (fill in what you measured, leave out the rest)
  returnspring -in springs.toml            work it out

Flags:
`)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprint(w, `
Exit status: 0 done, 1 could not write, 2 the file or the flags are wrong. A
file for which nothing on offer will do is worked out all the same: 0.
`)
}
