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
	_ "embed"
	"io"
	"os"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/program"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/springsheet"
)

//go:embed marrowdale.toml
var marrowdale []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// run is the program; [program.Program.Run] tells the exit status.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	p := program.Program{
		Name: "returnspring", About: about, Status: status, Reads: "room, demand and offers", Inside: "the springs",
		Default: program.File{Name: "marrowdale.toml", Text: marrowdale}, Template: template,
		SVG: "write the torque diagrams to this `file` too, -2.svg for the second",
		WorkOut: func(f program.File) (program.Output, error) {
			s, err := workOut(f.Name, f.Text)
			return program.Sheet{Sheet: s}, err
		},
	}
	return p.Run(args, stdin, stdout, stderr)
}

const about = `Returnspring chooses return springs from what is on offer: a flat strip for a
drum that winds its rope home, a coil of wire for a lever. It says which one,
why, how many turns to wind on first, what fails of the others and by how much,
what to make, and what the wound spring can do to a hand.

With no flags it does the springs it carries inside. To do your own:

  returnspring -template > springs.toml    write an empty file
  (fill in what you measured, leave out the rest)
  returnspring -in springs.toml            work it out
`

const status = ` A
file for which nothing on offer will do is worked out all the same: 0.`

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
