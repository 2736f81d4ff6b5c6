package threadsheet

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// Sure is the probability from which a thread counts as named.
const Sure = 0.95

// A Checked is a thread with the answer to which one it is.
type Checked struct {
	Measured
	Readings threads.Readings
	Found    threads.Identification
	Alone    threads.Identification // by its own readings, without those of the thread it goes with
	Mate     *Checked               // the thread it goes with, nil if there is none
	file     *jobfile.File
	at       string
}

// Check names one thread, out of all series. The key at is where it stands in
// the file, "" for readings from flags.
func Check(f *jobfile.File, at string, m Measured, origin string, years []int) (*Checked, error) {
	originKey := under(at, "origin")
	if m.Origin == "" {
		originKey, m.Origin = parentOf(at, "origin"), origin
	}
	prior, err := priorOf(f, originKey, parentOf(at, "years"), m.Origin, years)
	if err != nil {
		return nil, err
	}
	c := &Checked{Measured: m, file: f, at: at}
	if c.Readings, err = m.readings(f, at, prior); err != nil {
		return nil, err
	}
	if c.Found, err = threads.Identify(c.Readings); err != nil {
		return nil, f.Errorf(under(at, "crest"), "%v", err)
	}
	c.Alone = c.Found
	return c, nil
}

// parentOf is the key of what holds for all threads of a file.
func parentOf(at, key string) string {
	if at == "" {
		return "-" + key
	}
	table, _, ok := strings.Cut(at, "thread.")
	if !ok {
		return at + "." + key
	}
	return table + key
}

// priorOf reads where and when a machine was made.
func priorOf(f *jobfile.File, originKey, yearsKey, origin string, years []int) (threads.Prior, error) {
	if origin == "" && len(years) == 0 {
		return threads.Prior{}, nil
	}
	from := threads.AnyOrigin
	switch strings.ToLower(origin) {
	case "":
	case "british":
		from = threads.British
	case "american":
		from = threads.American
	case "continental":
		from = threads.Continental
	default:
		return threads.Prior{}, f.Errorf(originKey, "%q: want \"British\", \"American\" or \"continental\", or leave it out", origin)
	}
	first, last := 0, 0
	switch len(years) {
	case 0:
	case 2:
		first, last = years[0], years[1]
	default:
		return threads.Prior{}, f.Errorf(yearsKey, "%d numbers: want two, the first year and the last it may have been made in", len(years))
	}
	p, err := threads.NewPrior(from, first, last)
	if err != nil {
		return p, f.Errorf(yearsKey, "%v", err)
	}
	return p, nil
}

// All names the threads of a job. The key at is that of the job in the file, ""
// for a file that is nothing else.
func All(f *jobfile.File, at string, j *Job) ([]*Checked, error) {
	if at != "" {
		at += "."
	}
	if len(j.Thread) == 0 {
		return nil, f.Errorf(at+"thread", "no threads: give one [[%sthread]] for each", at)
	}
	byName := map[string]*Checked{}
	var all []*Checked
	for i, m := range j.Thread {
		key := fmt.Sprintf("%sthread.%d", at, i)
		if slug(m.Name) == "" {
			return nil, f.Errorf(key+".name", "%q: want a name in letters and figures, as T1", m.Name)
		}
		if byName[slug(m.Name)] != nil {
			return nil, f.Errorf(key+".name", "%q stands twice: want another name", m.Name)
		}
		c, err := Check(f, key, m, j.Origin, j.Years)
		if err != nil {
			return nil, err
		}
		byName[slug(m.Name)] = c
		all = append(all, c)
	}
	return all, pairUp(f, all, byName)
}

// pairUp looks at threads that belong together.
func pairUp(f *jobfile.File, all []*Checked, byName map[string]*Checked) error {
	for _, c := range all {
		if c.With == "" {
			continue
		}
		mate := byName[slug(c.With)]
		switch {
		case mate == nil:
			return f.Errorf(under(c.at, "goes_with"), "no thread %q here", c.With)
		case mate.Readings.Part == c.Readings.Part:
			return f.Errorf(under(c.at, "goes_with"), "%s and %s are both a %s: want a bolt and a hole", c.Name, mate.Name, c.Part)
		}
		both, ok := together(c.Alone, mate.Alone, c.Readings.Prior)
		if !ok {
			return f.Errorf(under(c.at, "goes_with"), "no thread fits the readings of both %s and %s: they do not belong together, or the hole has lost more than wear says", c.Name, mate.Name)
		}
		c.Found, c.Mate = both, mate
	}
	return nil
}

// slug makes a key of a name: small letters and figures.
func slug(name string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9':
			return r
		case r >= 'A' && r <= 'Z':
			return r + 'a' - 'A'
		case r == ' ' || r == '-' || r == '_':
			return '_'
		}
		return -1
	}, name)
}

// Best returns the likeliest thread; false where only a thread of no table
// would do.
func (c *Checked) Best() (threads.Thread, bool) {
	if len(c.Found.Candidates) == 0 || c.Found.Candidates[0].Probability < c.Found.Unlisted {
		return threads.Thread{}, false
	}
	return c.Found.Candidates[0].Thread(), true
}

// Named reports whether the readings name one thread.
func (c *Checked) Named() bool { return c.Found.Decided(Sure) }

// Tied returns the threads that the readings leave open, likeliest first; one
// alone where they name it.
func (c *Checked) Tied() []threads.Candidate { return c.Found.Within(Sure) }

// Parting returns what would part the first two.
func (c *Checked) Parting() (threads.Parting, bool) {
	if len(c.Found.Candidates) < 2 {
		return threads.Parting{}, false
	}
	return threads.PartingOf(c.Found.Candidates[0].Thread(), c.Found.Candidates[1].Thread(), c.Readings.Part)
}

// engaged is the length over which two are looked at: as given, or as much as
// the diameter, which is what a nut has.
func (c *Checked) engaged(t threads.Thread) units.Length {
	if c.Engaged > 0 {
		return c.Engaged
	}
	return t.Major()
}

// Key is a word for the thread, to begin the keys of its figures with.
func (c *Checked) Key() string {
	if c.Name == "" {
		return "thread"
	}
	return "thread_" + c.Slug()
}

// Slug is the name in small letters and figures, as keys of a sheet have it.
func (c *Checked) Slug() string { return slug(c.Name) }
