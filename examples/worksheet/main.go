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
	"bytes"
	_ "embed"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"example.com/benchsums/examples/internal/sheet"
)

//go:embed marrowdale.toml
var marrowdale []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run is the program: 0 is success, 1 a failure to write, 2 wrong input.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("worksheet", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	in := flags.String("in", "", "read the engine from this TOML `file`; - is standard input (default: the engine in the program)")
	asJSON := flags.Bool("json", false, "write JSON for programs instead of text")
	asHTML := flags.String("html", "", "write one HTML page to this `file` instead of text; - is standard output")
	n := flags.Int("trials", 0, "check the plus-or-minus of the main figures by so many random trials each")
	blank := flags.Bool("template", false, "write an empty file to fill in, and stop")
	if err := flags.Parse(args); err != nil {
		if err == flag.ErrHelp {
			usage(stdout, flags)
			return 0
		}
		fmt.Fprintf(stderr, "worksheet: %v; -h lists the flags\n", err)
		return 2
	}
	if flags.NArg() > 0 {
		fmt.Fprintf(stderr, "worksheet: %q: no arguments are read; give a file with -in %s\n", flags.Arg(0), flags.Arg(0))
		return 2
	}
	if *n < 0 || *n > 10_000_000 || *n > 0 && *n < 1000 {
		fmt.Fprintf(stderr, "worksheet: -trials %d: want 0 for none, or from 1000 to 10000000\n", *n)
		return 2
	}
	if *blank {
		return finish(stderr, func() error { _, err := stdout.Write(template); return err })
	}
	name, data, err := input(*in)
	if err != nil {
		fmt.Fprintln(stderr, "worksheet:", err)
		return 2
	}
	s, err := workOut(name, data, trials{*n, onTerminal(stderr, *n)})
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	return finish(stderr, func() error { return write(s, stdout, *asJSON, *asHTML) })
}

// input returns the file to read and its name as messages give it.
func input(in string) (string, []byte, error) {
	switch in {
	case "":
		return "marrowdale.toml", marrowdale, nil
	case "-":
		data, err := io.ReadAll(os.Stdin)
		return "standard input", data, err
	}
	data, err := os.ReadFile(in)
	if err != nil {
		if os.IsNotExist(err) {
			return "", nil, fmt.Errorf("%s: no such file; write one with -template", in)
		}
		return "", nil, fmt.Errorf("%s: cannot be read", in)
	}
	return filepath.Base(in), data, nil
}

func write(s *sheet.Sheet, stdout io.Writer, asJSON bool, html string) error {
	switch {
	case asJSON:
		return s.WriteJSON(stdout)
	case html == "-":
		return s.WriteHTML(stdout)
	case html != "":
		var page bytes.Buffer
		if err := s.WriteHTML(&page); err != nil {
			return err
		}
		return os.WriteFile(html, page.Bytes(), 0o644)
	}
	return s.WriteText(stdout)
}

func finish(stderr io.Writer, do func() error) int {
	if err := do(); err != nil {
		fmt.Fprintln(stderr, "worksheet: cannot write:", err)
		return 1
	}
	return 0
}

func usage(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprint(w, `Worksheet works out one engine from what was measured on it: top dead centre,
timing, ports, compression; the working, how sure each figure is, where to
scribe.

With no flags it does the engine it carries inside. To do your own:

  worksheet -template > engine.toml    write an empty file
  (fill in what you measured, leave out the rest)
  worksheet -in engine.toml            work it out

Flags:
`)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprint(w, `
Exit status: 0 done, 1 could not write, 2 the file or the flags are wrong.
`)
}
