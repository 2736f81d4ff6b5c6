// Threadcheck names threads from what was measured of them: every thread it may
// be, ranked, with honest ties; what to measure next and how well; what comes of
// screwing the two likeliest together; and the two drawn over one another.
//
//	go run ./examples/threadcheck                      the thirteen threads in the program
//	go run ./examples/threadcheck -in threads.toml     your own, from a file
//	go run ./examples/threadcheck -part bolt -crest "0.2472 in ± 0.0006 in" -pitches 10 -length "9.78 mm ± 0.1 mm"
//	go run ./examples/threadcheck -svg t.svg ...       the two likeliest, drawn
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

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/threadsheet"
)

//go:embed marrowdale.toml
var marrowdale []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// options are what the flags say.
type options struct {
	in, html, svg string
	json, blank   bool
	one           *single // nil where the threads come from a file
}

// run is the program: 0 is success, 1 a failure to write, 2 wrong input.
func run(args []string, stdout, stderr io.Writer) int {
	o, err := parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintf(stderr, "threadcheck: %v; -h lists the flags\n", err)
		return 2
	}
	if o.blank {
		return finish(stderr, func() error { _, err := stdout.Write(template); return err })
	}
	a, err := o.answer()
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 2
	}
	return finish(stderr, func() error { return o.write(a, stdout) })
}

func parse(args []string, stdout io.Writer) (*options, error) {
	o := &options{}
	one := &single{}
	flags := flag.NewFlagSet("threadcheck", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.StringVar(&o.in, "in", "", "read the threads from this TOML `file`; - is standard input (default: the threads in the program)")
	flags.BoolVar(&o.json, "json", false, "write JSON for programs instead of text")
	flags.StringVar(&o.html, "html", "", "write one HTML page with the drawings to this `file` instead of text; - is standard output")
	flags.StringVar(&o.svg, "svg", "", "draw the two likeliest over one another in this `file`; of several threads, each in a file with its name added")
	flags.BoolVar(&o.blank, "template", false, "write an empty file to fill in, and stop")
	one.add(flags)
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			usage(stdout, flags)
		}
		return nil, err
	}
	if flags.NArg() > 0 {
		return nil, fmt.Errorf("%q: no arguments are read; give a file with -in, or a reading with its flag", flags.Arg(0))
	}
	if one.given(flags) {
		if o.in != "" {
			return nil, errors.New("a file and readings as flags: give one of them")
		}
		o.one = one
	}
	return o, nil
}

// A job is what stands in a file.
type job struct {
	Title  string                 `toml:"title"`
	Origin string                 `toml:"origin"`
	Years  []int                  `toml:"years"`
	Thread []threadsheet.Measured `toml:"thread"`
}

// An answer is the sheet, and the threads it is about.
type answer struct {
	sheet   *sheet.Sheet
	threads []*threadsheet.Checked
}

// answer works out the threads.
func (o *options) answer() (*answer, error) {
	if o.one != nil {
		return o.one.answer()
	}
	name, data, err := o.input()
	if err != nil {
		return nil, fmt.Errorf("threadcheck: %w", err)
	}
	var j job
	f, err := jobfile.Decode(name, data, &j)
	if err != nil {
		return nil, err
	}
	all, err := threadsheet.All(f, "", &threadsheet.Job{Origin: j.Origin, Years: j.Years, Thread: j.Thread})
	if err != nil {
		return nil, err
	}
	if j.Title == "" {
		j.Title = "Threads"
	}
	return assemble(j.Title, all)
}

// input returns the file to read and its name as messages give it.
func (o *options) input() (string, []byte, error) {
	switch o.in {
	case "":
		return "marrowdale.toml", marrowdale, nil
	case "-":
		data, err := io.ReadAll(os.Stdin)
		return "standard input", data, err
	}
	data, err := os.ReadFile(o.in)
	if errors.Is(err, os.ErrNotExist) {
		return "", nil, fmt.Errorf("%s: no such file; write one with -template", o.in)
	}
	if err != nil {
		return "", nil, fmt.Errorf("%s: cannot be read", o.in)
	}
	return filepath.Base(o.in), data, nil
}

// assemble makes the sheet: of several threads, their names first.
func assemble(title string, all []*threadsheet.Checked) (*answer, error) {
	s := &sheet.Sheet{Title: title, Intro: intro, Notes: notes}
	if len(all) > 1 {
		s.Sections = append(s.Sections, *threadsheet.Summary("threads", all))
	}
	for _, c := range all {
		sec := c.Section(c.Key())
		if err := c.AddTorn(sec); err != nil {
			return nil, err
		}
		s.Sections = append(s.Sections, *sec)
	}
	if len(all) == 1 {
		s.Sections[0].Cautions = append(threadsheet.Cautions(), s.Sections[0].Cautions...)
	}
	return &answer{s, all}, nil
}

var intro = []string{
	"± is the half-width that holds the value 95 times in 100, the readings being as good as the file says. A probability is by the readings and all series of the tables: it is no better than they are. A thread counts as named from 95\u00a0%.",
}

var notes = []string{
	"How the probabilities come about, how a good part may differ from its basic size, and the source of each size is in the package threads of benchsums; what was checked against print is listed in CHECKS.md.",
	"A reading without ± was given without one, and is taken as exact.",
	"Drawings are true to scale when printed at 100 %: measure the bar of 1 mm.",
}

func (o *options) write(a *answer, stdout io.Writer) error {
	if o.svg != "" {
		if err := a.draw(o.svg, stdout, o.json || o.html == "-"); err != nil {
			return err
		}
	}
	switch {
	case o.json:
		return a.writeJSON(stdout)
	case o.html == "-":
		return a.sheet.WriteHTML(stdout)
	case o.html != "":
		var page bytes.Buffer
		if err := a.sheet.WriteHTML(&page); err != nil {
			return err
		}
		return os.WriteFile(o.html, page.Bytes(), 0o644)
	case o.svg != "":
		return nil
	}
	return a.sheet.WriteText(stdout)
}

// draw writes a drawing for each thread that there is a second one to, and says
// so unless it is to be quiet.
func (a *answer) draw(file string, stdout io.Writer, quiet bool) error {
	for _, c := range a.threads {
		name := file
		if len(a.threads) > 1 {
			ext := filepath.Ext(file)
			name = strings.TrimSuffix(file, ext) + "-" + strings.TrimPrefix(c.Key(), "thread_") + ext
		}
		p, ok := c.Picture()
		if ok {
			if err := os.WriteFile(name, []byte(p.SVG), 0o644); err != nil {
				return err
			}
		}
		switch {
		case quiet:
		case ok:
			fmt.Fprintf(stdout, "%s: %s. %s\n", name, p.Title, p.Says)
		default:
			fmt.Fprintf(stdout, "%s: not drawn: no thread of the tables fits the readings\n", name)
		}
	}
	return nil
}

func finish(stderr io.Writer, do func() error) int {
	if err := do(); err != nil {
		fmt.Fprintln(stderr, "threadcheck: cannot write:", err)
		return 1
	}
	return 0
}

func usage(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprint(w, `Threadcheck names threads from what was measured of them, ranked and with honest
ties, and says what to measure next. With no flags it does the thirteen threads
it carries inside. One thread by flags:

  threadcheck -part bolt -crest "0.2472 in ± 0.0006 in" -pitches 10 -length "9.78 mm ± 0.1 mm"

"± 0.0006 in" means: surely within that. Several threads by a file:

  threadcheck -template > threads.toml    write an empty file
  (fill in what you measured, leave out the rest)
  threadcheck -in threads.toml            work it out

Never run a tap or a die of an assumed size through an original thread.

Flags:
`)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprint(w, "\nExit status: 0 done, 1 could not write, 2 the file or the flags are wrong.\n")
}
