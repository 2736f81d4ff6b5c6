// Rimstrip draws a strip of degrees to paste round a flywheel's rim, true to
// scale, with the spark and the ports marked, as PDF or SVG.
//
//	go run ./examples/rimstrip                       what the strip will have on it
//	go run ./examples/rimstrip -pdf strip.pdf        the strip, on A4
//	go run ./examples/rimstrip -pdf disc.pdf -disc   a disc instead
package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
	"text/tabwriter"

	"example.com/benchsums/examples/internal/program"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// options are what the flags say.
type options struct {
	strip
	girth, diameter, tape, printed units.Length
	sheet                          paper
	pdf, svg                       string
	disc, json                     bool
}

// run is the program: 0 is success, 1 a failure to write, 2 wrong flags.
func run(args []string, stdout, stderr io.Writer) int {
	o, err := parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintf(stderr, "rimstrip: %v; -h lists the flags\n", err)
		return 2
	}
	if err := o.write(stdout); err != nil {
		fmt.Fprintln(stderr, "rimstrip: cannot write:", err)
		return 1
	}
	return 0
}

func parse(args []string, stdout io.Writer) (*options, error) {
	o := &options{strip: strip{turns: ignition.Anticlockwise}}
	flags := flag.NewFlagSet("rimstrip", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.TextVar(&o.girth, "girth", 0*units.Millimetre, "`length` once round the rim, by tape")
	flags.TextVar(&o.tape, "tape", 0*units.Millimetre, "`thickness` of that tape, if the girth is not the rim's own")
	flags.TextVar(&o.diameter, "diameter", 0*units.Millimetre, "`length` across the rim, in place of the girth")
	flags.TextVar(&o.paper, "paper", units.Millimetre/10, "`thickness` of the paper of the strip")
	flags.TextVar(&o.turns, "turns", ignition.Anticlockwise, "`way` the engine turns, facing the flywheel: clockwise or anticlockwise")
	flags.StringVar(&o.from, "from", "TDC", "`name` of the mark that degrees count from")
	flags.Var((*markFlag)(&o.marks), "mark", "a further mark, as `name=25.9° before` or name=118° after; may be given again")
	page := flags.String("page", "A4", "`paper` to print on: A4 or Letter")
	flags.TextVar(&o.printed, "printed", 100*units.Millimetre, "what the 100 mm line of an earlier print `measures`, to make good what the printer does")
	flags.StringVar(&o.pdf, "pdf", "", "write a PDF to this `file`")
	flags.StringVar(&o.svg, "svg", "", "write SVG to this `file`, -2.svg and so on for further sheets")
	flags.BoolVar(&o.disc, "disc", false, "draw a degree disc for the shaft instead of a strip")
	flags.BoolVar(&o.json, "json", false, "write what is on the strip as JSON")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			usage(stdout, flags)
		}
		return nil, err
	}
	if flags.NArg() > 0 {
		return nil, fmt.Errorf("%q: no arguments are read", flags.Arg(0))
	}
	return o, o.check(*page)
}

// check makes the rim of what was given; the demo engine's where nothing was.
func (o *options) check(page string) error {
	if o.girth == 0 && o.diameter == 0 {
		o.girth = 1118.33 * units.Millimetre
		if len(o.marks) == 0 {
			o.marks = demoMarks()
		}
	}
	var err error
	switch {
	case o.girth != 0 && o.diameter != 0:
		return errors.New("both -girth and -diameter: give one of them")
	case o.girth != 0:
		o.rim, err = ignition.NewRimOfTape(o.girth, o.tape)
	default:
		o.rim, err = ignition.NewRim(o.diameter)
	}
	if err != nil {
		return err
	}
	if _, err := o.rim.TapeLength(units.Turn, o.paper); err != nil {
		return err
	}
	if o.length() > 20*units.Metre || o.length() < 100*units.Millimetre {
		return fmt.Errorf("a strip of %v: want from 100 mm to 20 m", o.length())
	}
	if o.from = strings.TrimSpace(o.from); o.from == "" {
		return errors.New("-from: want the name of a mark, as in -from TDC")
	}
	if !(o.printed > 80*units.Millimetre && o.printed < 125*units.Millimetre) {
		return fmt.Errorf("-printed %v: want what the 100 mm line measures, from 80 mm to 125 mm", o.printed)
	}
	o.scale = float64(100 * units.Millimetre / o.printed)
	for _, p := range papers {
		if strings.EqualFold(p.name, page) {
			o.sheet = p
			return nil
		}
	}
	return fmt.Errorf("-page %q: want A4 or Letter", page)
}

// demoMarks are those of the demo engine, as its worksheet works them out.
func demoMarks() []mark {
	return []mark{
		{"spark", -25.9 * units.Degree},
		{"inlet opens", -49.9 * units.Degree}, {"inlet shuts", 49.9 * units.Degree},
		{"exhaust opens", 118 * units.Degree}, {"exhaust shuts", -118 * units.Degree},
		{"transfer opens", 128 * units.Degree}, {"transfer shuts", -128 * units.Degree},
	}
}

func (o *options) write(stdout io.Writer) error {
	pages := []page{}
	if o.disc {
		pages = append(pages, o.discPage(o.sheet))
	} else {
		pages = o.pages(o.sheet)
	}
	if o.pdf != "" {
		var b bytes.Buffer
		if err := writePDF(&b, pages, o.sheet, "degrees round a rim"); err != nil {
			return err
		}
		if err := os.WriteFile(o.pdf, b.Bytes(), 0o644); err != nil {
			return err
		}
	}
	if o.svg != "" {
		for i, p := range pages {
			if err := os.WriteFile(program.Numbered(o.svg, i), []byte(svgOf(p, o.sheet)), 0o644); err != nil {
				return err
			}
		}
	}
	if o.json {
		return o.writeJSON(stdout, len(pages))
	}
	return o.writeText(stdout, len(pages))
}

func (o *options) writeText(w io.Writer, sheets int) error {
	fmt.Fprintf(w, "A strip %.1f mm (%.3f in) long goes once round a rim of %.1f mm (%.3f in) across,\nwith paper %.2f mm thick; %.4f mm (%.5f in) to a degree, on %d %s.\n\n",
		o.length().Millimetres(), o.length().Inches(), o.rim.Diameter().Millimetres(), o.rim.Diameter().Inches(),
		o.paper.Millimetres(), o.along(units.Degree).Millimetres(), o.along(units.Degree).Inches(), sheets, plural("sheet of "+o.sheet.name, "sheets of "+o.sheet.name, sheets))
	t := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintln(t, "mark\tangle\talong the strip\t\twhich way")
	for _, m := range o.marks {
		l := o.along(m.after)
		side, way := "after", "behind "+o.from+", against the rotation"
		if m.after < 0 {
			side, way, l = "before", "ahead of "+o.from+", with the rotation", -l
		}
		fmt.Fprintf(t, "%s\t%.1f° %s\t%.2f mm\t%.4f in\t%s\n", m.name, max(m.after, -m.after).Degrees(), side, l.Millimetres(), l.Inches(), way)
	}
	if err := t.Flush(); err != nil {
		return err
	}
	_, err := fmt.Fprintf(w, "\nFacing the flywheel the engine turns %v. With the strip uppermost and its\nlower edge towards you, %s.\n\nWrite the paper with -pdf FILE or -svg FILE. Print at 100 %% and measure the check\nlines before you paste it: a printer that is 1 %% out puts the far side of the\nrim %.1f° out.\n\nCAUTION: plug out, fuel off, magneto earthed before you turn the engine; paste\nthe strip where no belt runs, and take it off before the engine runs.\n",
		o.turns, o.sides(), 180*0.01)
	return err
}

func (o *options) writeJSON(w io.Writer, sheets int) error {
	type jsonMark struct {
		Name    string  `json:"name"`
		After   float64 `json:"degrees_after"`
		Forward float64 `json:"mm_ahead_in_rotation"`
	}
	out := struct {
		Length    float64    `json:"strip_mm"`
		PerDegree float64    `json:"mm_per_degree"`
		Diameter  float64    `json:"rim_diameter_mm"`
		Paper     float64    `json:"paper_mm"`
		Turns     string     `json:"turns"`
		Sheets    int        `json:"sheets"`
		Marks     []jsonMark `json:"marks"`
	}{o.length().Millimetres(), o.along(units.Degree).Millimetres(), o.rim.Diameter().Millimetres(), o.paper.Millimetres(), o.turns.String(), sheets, []jsonMark{}}
	for _, m := range o.marks {
		out.Marks = append(out.Marks, jsonMark{m.name, m.after.Degrees(), -o.along(m.after).Millimetres()})
	}
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	return e.Encode(out)
}

func plural(one, many string, n int) string {
	if n == 1 {
		return one
	}
	return many
}

// markFlag reads marks: name=25.9° before.
type markFlag []mark

// String is for the flag package.
func (f *markFlag) String() string { return "" }

// Set reads one mark.
func (f *markFlag) Set(text string) error {
	name, at, ok := strings.Cut(text, "=")
	name = strings.TrimSpace(name)
	if !ok || name == "" {
		return errors.New("want a name and an angle, as in spark=25.9° before")
	}
	at = strings.TrimSpace(at)
	sign := units.Angle(1)
	angle, before := strings.CutSuffix(at, "before")
	if before {
		sign = -1
	} else if angle, ok = strings.CutSuffix(at, "after"); !ok {
		return fmt.Errorf("%q: say before or after, as in %s=25.9° before", at, name)
	}
	a, err := units.ParseAngle(angle)
	if err != nil {
		return err
	}
	if !(a >= 0 && a <= units.Turn/2) {
		return fmt.Errorf("%v: want from 0° to 180°, before or after", a)
	}
	*f = append(*f, mark{name, sign * a})
	return nil
}

func usage(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprint(w, `Rimstrip draws a strip of degrees to paste round the rim of a flywheel, true to
scale, with marks where you ask for them. With no flags it tells what the strip
of the demo engine would have on it.

  rimstrip -girth 1118.3mm -turns clockwise -mark "spark=25.9° before" -pdf strip.pdf

Print the PDF at 100 % (actual size, not fitted to the page), measure the check
line, and if it is out make the sheet again with -printed. A browser does not
keep SVG to scale: print the PDF.

Flags:
`)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprint(w, "\nExit status: 0 done, 1 could not write, 2 the flags are wrong.\n")
}
