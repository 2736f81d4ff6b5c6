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
	_ "embed"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/program"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/threadsheet"
)

//go:embed marrowdale.toml
var marrowdale []byte

//go:embed template.toml
var template []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// run is the program; [program.Program.Run] tells the exit status.
func run(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	var one single
	p := program.Program{
		Name: "threadcheck", About: about, Reads: "the threads", Inside: "the threads",
		Default: program.File{Name: "marrowdale.toml", Text: marrowdale}, Template: template,
		Page:  "one HTML page with the drawings",
		SVG:   "draw the two likeliest over one another in this `file`; of several threads, each in a file with its name added",
		Stray: "give a file with -in, or a reading with its flag",
		Flags: one.add,
		Check: func(o program.Options) error {
			if o.In != "" && one.given() {
				return errors.New("a file and readings as flags: give one of them")
			}
			return nil
		},
		WorkOut: func(f program.File) (program.Output, error) {
			if one.given() {
				return one.answer()
			}
			return workOut(f.Name, f.Text)
		},
	}
	return p.Run(args, stdin, stdout, stderr)
}

const about = `Threadcheck names threads from what was measured of them, ranked and with honest
ties, and says what to measure next. With no flags it does the thirteen threads
it carries inside. One thread by flags:

  threadcheck -part bolt -crest "0.2472 in ± 0.0006 in" -pitches 10 -length "9.78 mm ± 0.1 mm"

"± 0.0006 in" means: surely within that. Several threads by a file:

  threadcheck -template > threads.toml    write an empty file
  (fill in what you measured, leave out the rest)
  threadcheck -in threads.toml            work it out

Never run a tap or a die of an assumed size through an original thread.
`

// A job is what stands in a file.
type job struct {
	Title  string                 `toml:"title"`
	Origin string                 `toml:"origin"`
	Years  []int                  `toml:"years"`
	Thread []threadsheet.Measured `toml:"thread"`
}

// An answer is the sheet, and the threads it is about.
type answer struct {
	*sheet.Sheet
	threads []*threadsheet.Checked
	drawn   bool // in files, which text tells of in place of the sheet
}

// workOut reads a file and names its threads.
func workOut(name string, text []byte) (*answer, error) {
	var j job
	f, err := jobfile.Decode(name, text, &j)
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
	return &answer{Sheet: s, threads: all}, nil
}

var intro = []string{
	"± is the half-width that holds the value 95 times in 100, the readings being as good as the file says. A probability is by the readings and all series of the tables: it is no better than they are. A thread counts as named from 95\u00a0%.",
}

var notes = []string{
	"How the probabilities come about, how a good part may differ from its basic size, and the source of each size is in the package threads of benchsums; what was checked against print is listed in CHECKS.md.",
	"A reading without ± was given without one, and is taken as exact.",
	"Drawings are true to scale when printed at 100 %: measure the bar of 1 mm.",
}

// WriteText writes the sheet, unless the drawings were asked for in its place.
func (a *answer) WriteText(w io.Writer) error {
	if a.drawn {
		return nil
	}
	return a.Sheet.WriteText(w)
}

// Draw writes a drawing for each thread that there is a second one to, and says
// so.
func (a *answer) Draw(file string, say io.Writer) error {
	a.drawn = true
	for _, c := range a.threads {
		name := file
		if len(a.threads) > 1 {
			ext := filepath.Ext(file)
			name = strings.TrimSuffix(file, ext) + "-" + strings.TrimPrefix(c.Key(), "thread_") + ext
		}
		p, ok := c.Picture()
		if !ok {
			fmt.Fprintf(say, "%s: not drawn: no thread of the tables fits the readings\n", name)
			continue
		}
		if err := os.WriteFile(name, []byte(p.SVG), 0o644); err != nil {
			return err
		}
		fmt.Fprintf(say, "%s: %s. %s\n", name, p.Title, p.Says)
	}
	return nil
}
