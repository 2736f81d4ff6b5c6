// Worksheet reads what was measured on one engine and writes the sums: where
// top dead centre is, what the timing is and where to scribe it, when the
// ports open, what the compression is, each with the working and with how sure
// it is.
//
//	go run ./examples/worksheet                   the engine in the program
//	go run ./examples/worksheet -in engine.toml   your own readings
//	go run ./examples/worksheet -template         an empty file to fill in
//	go run ./examples/worksheet -json             the same figures for programs
//	go run ./examples/worksheet -html sheet.html  one page to print or to read on a phone
package main

import (
	_ "embed"
	"flag"
	"fmt"
	"io"
	"os"

	"example.com/benchsums/examples/internal/program"
)

//go:embed marrowdale.toml
var marrowdale []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// run is the program; [program.Program.Run] tells the exit status.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	var n int
	p := program.Program{
		Name: "worksheet", About: about, Reads: "the engine", Inside: "the engine",
		Default: program.File{Name: "marrowdale.toml", Text: marrowdale}, Template: template,
		Flags: func(flags *flag.FlagSet) {
			flags.IntVar(&n, "trials", 0, "check the plus-or-minus of the main figures by so many random trials each")
		},
		Check: func(program.Options) error {
			if n < 0 || n > 10_000_000 || n > 0 && n < 1000 {
				return fmt.Errorf("-trials %d: want 0 for none, or from 1000 to 10000000", n)
			}
			return nil
		},
		WorkOut: func(f program.File) (program.Output, error) {
			s, err := workOut(f.Name, f.Text, trials{n, onTerminal(stderr, n)})
			return program.Sheet{Sheet: s}, err
		},
	}
	return p.Run(args, stdin, stdout, stderr)
}

const about = `Worksheet works out one engine from what was measured on it: top dead centre,
timing, ports, compression; the working, how sure each figure is, where to
scribe.

With no flags it does the engine it carries inside. To do your own:

  worksheet -template > engine.toml    write an empty file
  (fill in what you measured, leave out the rest)
  worksheet -in engine.toml            work it out
`
