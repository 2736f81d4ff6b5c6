package main

import (
	"flag"
	"fmt"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/units"
)

// A single is one thread measured, by flags.
type single struct {
	threadsheet.Measured
	years []int
	flags *flag.FlagSet // those of the program
}

// add adds the flags of one thread.
func (s *single) add(flags *flag.FlagSet) {
	s.flags = flags
	flags.StringVar(&s.Part, "part", "", "`what` was measured: bolt, any thread on the outside, or hole, a nut or a tapped hole")
	flags.StringVar(&s.Hand, "hand", "", "`way` it runs: right or left (default right)")
	flags.Func("crest", "`diameter` over the crests: outside of a bolt, bore of a hole, as \"0.2472 in ± 0.0006 in\"", func(text string) error {
		return reading(text, func(r units.Reading[units.Length]) {
			s.Crest, s.CrestGoodTo = []units.Length{r.Value}, r.Std
		})
	})
	flags.IntVar(&s.Pitches, "pitches", 0, "how `many` pitches the length goes over; eleven crests make ten")
	flags.Func("length", "`length` over so many pitches, as \"9.78 mm ± 0.1 mm\"", func(text string) error {
		return reading(text, func(r units.Reading[units.Length]) {
			s.Length, s.LengthGoodTo = []units.Length{r.Value}, r.Std
		})
	})
	flags.Func("leaf", "gauge `leaf` that seemed to fit, as \"26 tpi\", \"26 tpi 55°\" or \"1 mm\"; may be given again", func(text string) error {
		var p threadsheet.Pitch
		err := p.UnmarshalText([]byte(text))
		s.Leaf = append(s.Leaf, p)
		return err
	})
	flags.IntVar(&s.LeafOn, "leaf-on", 0, "how `many` threads lay under the leaf (default 4)")
	flags.Func("effective", "effective `diameter`, over wires", readingOf(&s.Effective))
	flags.Func("root", "`diameter` at the root: core of a bolt, outside of a cast of a hole", readingOf(&s.Root))
	flags.Func("angle", "`angle` between the flanks, as \"55° ± 2°\"", readingOf(&s.Angle))
	flags.StringVar(&s.Taper, "taper", "", "what a straight edge along the crests `shows`: none, seen or not looked")
	flags.Func("wear", "the `most` that the crests may have lost, on the diameter", func(text string) error { return s.Wear.UnmarshalText([]byte(text)) })
	flags.Func("engaged", "`length` over which bolt and hole meet (default one diameter)", func(text string) error { return s.Engaged.UnmarshalText([]byte(text)) })
	flags.StringVar(&s.Origin, "origin", "", "`where` it was made: British, American or continental")
	flags.Func("years", "`years` between which it was made, as 1920-1935", s.setYears)
}

// given reports whether a flag of one thread was given.
func (s *single) given() bool {
	given := false
	s.flags.Visit(func(f *flag.Flag) {
		switch f.Name {
		case "in", "json", "html", "svg", "template":
		default:
			given = true
		}
	})
	return given
}

func (s *single) setYears(text string) error {
	from, to, _ := strings.Cut(text, "-")
	a, err := strconv.Atoi(strings.TrimSpace(from))
	b, err2 := strconv.Atoi(strings.TrimSpace(to))
	if err != nil || err2 != nil {
		return fmt.Errorf("want two years, as 1920-1935")
	}
	s.years = []int{a, b}
	return nil
}

// answer names the thread.
func (s *single) answer() (*answer, error) {
	c, err := threadsheet.Check(&jobfile.File{Name: "threadcheck"}, "", s.Measured, s.Origin, s.years)
	if err != nil {
		return nil, err
	}
	return assemble("The thread measured", []*threadsheet.Checked{c})
}

// reading reads a quantity with its plus-or-minus.
func reading[Q units.Quantity](text string, use func(units.Reading[Q])) error {
	r, err := units.ParseReading[Q](text)
	if err == nil {
		use(r)
	}
	return err
}

func readingOf[Q units.Quantity](to **units.Reading[Q]) func(string) error {
	return func(text string) error {
		return reading(text, func(r units.Reading[Q]) { *to = &r })
	}
}
