// Lessons is a course in the sums done at the bench: what each is for, where it
// comes from, one worked, the usual slip, and one to do.
//
//	go run ./examples/lessons                          what there is
//	go run ./examples/lessons chord                    one lesson
//	go run ./examples/lessons chord -answer "47.2°"    is that right?
//	go run ./examples/lessons -html course.html        all of it, with drawings
package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// options are what the flags say.
type options struct {
	name               string // of the lesson; empty for all
	exercise, solution bool
	answer, html       string
	answered, json     bool
}

// run is the program: 0 is success, 1 an answer that differs or a failure to
// write, 2 wrong flags.
func run(args []string, stdout, stderr io.Writer) int {
	o, err := parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		fmt.Fprintf(stderr, "lessons: %v; -h lists the flags\n", err)
		return 2
	}
	lessons, err := course()
	if err != nil {
		fmt.Fprintln(stderr, "lessons:", err)
		return 1
	}
	chosen, err := choose(lessons, o.name)
	if err != nil {
		fmt.Fprintln(stderr, "lessons:", err)
		return 2
	}
	if o.answered {
		return mark(chosen[0].lesson, o.answer, stdout, stderr)
	}
	if err := o.write(stdout, lessons, chosen); err != nil {
		fmt.Fprintln(stderr, "lessons: cannot write:", err)
		return 1
	}
	return 0
}

// parse reads the flags, which may stand before the lesson or behind it.
func parse(args []string, stdout io.Writer) (*options, error) {
	o := &options{}
	flags := flag.NewFlagSet("lessons", flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	flags.BoolVar(&o.exercise, "exercise", false, "print the question of the lesson only")
	flags.BoolVar(&o.solution, "solution", false, "print its answer, and what slips would give")
	flags.StringVar(&o.answer, "answer", "", "check this `answer`, with its unit")
	flags.StringVar(&o.html, "html", "", "write the lesson, or the whole course, as a page to this `file`; - for standard output")
	flags.BoolVar(&o.json, "json", false, "write the lesson, or the whole course, with questions and answers as JSON")
	for len(args) > 0 {
		if err := flags.Parse(args); err != nil {
			if errors.Is(err, flag.ErrHelp) {
				usage(stdout, flags)
			}
			return nil, err
		}
		if args = flags.Args(); len(args) == 0 {
			break
		}
		if o.name != "" {
			return nil, fmt.Errorf("%q and %q: one lesson at a time", o.name, args[0])
		}
		o.name, args = args[0], args[1:]
	}
	flags.Visit(func(f *flag.Flag) { o.answered = o.answered || f.Name == "answer" })
	return o, o.check()
}

// check refuses flags that do not go together.
func (o *options) check() error {
	n := 0
	for _, set := range [...]bool{o.exercise, o.solution, o.answered, o.html != "", o.json} {
		if set {
			n++
		}
	}
	if n > 1 {
		return errors.New("give one of -exercise, -solution, -answer, -html and -json")
	}
	if o.name == "" && (o.exercise || o.solution || o.answered) {
		return errors.New("which lesson? name it, as in lessons chord -exercise")
	}
	return nil
}

// choose finds a lesson by name or number; with no name it returns all.
func choose(lessons []lesson, name string) ([]numbered, error) {
	var all []numbered
	for i, l := range lessons {
		n := numbered{i + 1, l}
		if strings.EqualFold(l.Key, name) || strconv.Itoa(n.Number) == name {
			return []numbered{n}, nil
		}
		all = append(all, n)
	}
	if name == "" {
		return all, nil
	}
	var keys []string
	for _, l := range lessons {
		keys = append(keys, l.Key)
	}
	return nil, fmt.Errorf("%q: no such lesson; there are 1 to %d: %s", name, len(lessons), strings.Join(keys, ", "))
}

// mark says whether an answer is right. Status 1 is for one that differs.
func mark(l lesson, text string, stdout, stderr io.Writer) int {
	v, err := l.Exercise.Answer.check(text)
	if err != nil {
		fmt.Fprintln(stderr, "lessons:", unread(text, err))
		return 2
	}
	for _, t := range v.text {
		for _, line := range sheet.Wrap(t, sheet.Width) {
			if _, err := fmt.Fprintln(stdout, line); err != nil {
				fmt.Fprintln(stderr, "lessons: cannot write:", err)
				return 1
			}
		}
	}
	if !v.agrees {
		return 1
	}
	return 0
}

func (o *options) write(w io.Writer, lessons []lesson, chosen []numbered) error {
	one := chosen[0]
	switch {
	case o.json:
		return writeJSON(w, chosen)
	case o.html != "":
		return o.writeHTML(w, chosen)
	case o.name == "":
		return writeList(w, lessons)
	case o.exercise:
		return writeExercise(w, one.Number, one.lesson)
	case o.solution:
		return writeSolution(w, one.Number, one.lesson)
	}
	return writeLesson(w, one.Number, one.lesson)
}

func (o *options) writeHTML(w io.Writer, chosen []numbered) error {
	title := "Sums done at the bench"
	if len(chosen) == 1 {
		title = chosen[0].Title
	}
	var page bytes.Buffer
	if err := writeHTML(&page, title, chosen); err != nil {
		return err
	}
	if o.html == "-" {
		_, err := w.Write(page.Bytes())
		return err
	}
	return os.WriteFile(o.html, page.Bytes(), 0o644)
}

func usage(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprint(w, `Lessons is a course in the sums done at the bench. With no arguments it lists
the lessons.

  lessons chord                      read a lesson, by name or number
  lessons chord -answer "47.2°"      check your answer to its exercise
  lessons -html course.html          the whole course on one page

Flags:
`)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprint(w, `
Exit status: 0 done, and an answer agrees; 1 an answer differs, or nothing could
be written; 2 the flags or the answer cannot be read.
`)
}
