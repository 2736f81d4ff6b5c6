package program

import (
	"errors"
	"flag"
	"fmt"
	"io"
)

// Options are what the flags say that all programs have.
type Options struct {
	In, HTML, SVG  string
	JSON, Template bool
}

// parse reads the flags. It writes help to stdout if that is asked for, and
// nothing else: what is wrong is for the caller to say.
func (p *Program) parse(args []string, stdout io.Writer) (Options, error) {
	var o Options
	flags := flag.NewFlagSet(p.Name, flag.ContinueOnError)
	flags.SetOutput(io.Discard)
	p.add(&o, flags)
	err := flags.Parse(args)
	switch {
	case errors.Is(err, flag.ErrHelp):
		p.help(stdout, flags)
		return o, err
	case err != nil:
		return o, err
	case flags.NArg() > 0:
		return o, p.stray(flags.Arg(0))
	case o.JSON && o.HTML != "":
		return o, errors.New("both -json and -html: give one of them")
	case p.Check != nil:
		return o, p.Check(o)
	}
	return o, nil
}

func (p *Program) add(o *Options, flags *flag.FlagSet) {
	page := p.Page
	if page == "" {
		page = "one HTML page"
	}
	flags.StringVar(&o.In, "in", "", fmt.Sprintf("read %s from this TOML `file`; - is standard input (default: %s in the program)", p.Reads, p.Inside))
	flags.StringVar(&o.HTML, "html", "", fmt.Sprintf("write %s to this `file` instead of text; - is standard output", page))
	flags.BoolVar(&o.JSON, "json", false, "write JSON for programs instead of text")
	flags.BoolVar(&o.Template, "template", false, "write an empty file to fill in, and stop")
	if p.SVG != "" {
		flags.StringVar(&o.SVG, "svg", "", p.SVG)
	}
	if p.Flags != nil {
		p.Flags(flags)
	}
}

func (p *Program) stray(arg string) error {
	do := p.Stray
	if do == "" {
		do = "give a file with -in " + arg
	}
	return fmt.Errorf("%q: no arguments are read; %s", arg, do)
}

func (p *Program) help(w io.Writer, flags *flag.FlagSet) {
	fmt.Fprintf(w, "%s\nFlags:\n", p.About)
	flags.SetOutput(w)
	flags.PrintDefaults()
	fmt.Fprintf(w, "\nExit status: 0 done, 1 could not write, 2 the file or the flags are wrong.%s\n", p.Status)
}
