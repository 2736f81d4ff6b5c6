package main

import (
	"cmp"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/threads"
)

// A threadJob is what was measured of threads without a name; the program
// threadcheck says more about each of them.
type threadJob = threadsheet.Job

// threadsSection names the other threads, and says what to do about a torn hole.
func (b *bench) threadsSection() (*sheet.Section, error) {
	if b.job.Threads == nil {
		return nil, nil
	}
	all, err := threadsheet.All(b.file, "threads", b.job.Threads)
	if err != nil {
		return nil, err
	}
	b.threads = all
	s := threadsheet.Summary("threads", all)
	s.Number = 10
	s.Title = "The other threads"
	s.Figures = threadsheet.Figures("threads", all)
	for _, c := range all {
		if c.Torn {
			s.Title = "The other threads, and the torn hole"
		}
		c.WorkPitch(s)
		if err := c.AddTorn(s); err != nil {
			return nil, err
		}
		if p, ok := c.Picture(); ok && !c.Named() {
			s.Pictures = append(s.Pictures, p)
		}
		for _, q := range c.Questions() {
			s.Questions = append(s.Questions, c.Name+": "+q)
		}
	}
	return s, nil
}

// threadLines are what of the threads belongs on the wall: that of the plug, and
// every left-hand one, for whoever takes a spanner to it.
func (b *bench) threadLines() []sheet.Line {
	var lines []sheet.Line
	if b.plug != nil && b.plug.named {
		lines = append(lines, sheet.Line{Name: "plug hole", Metric: b.plug.thread.Designation()})
	}
	for _, c := range b.threads {
		if t, ok := c.Best(); ok && c.Named() && c.Found.Hand == threads.LeftHand {
			lines = append(lines, sheet.Line{Name: cmp.Or(c.Where, c.Name), Metric: t.Designation(), Inch: "LEFT HAND"})
		}
	}
	return lines
}
