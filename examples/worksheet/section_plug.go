package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A plugThread is the threaded hole of the sparking plug, and what there is to
// make an adapter or a bush with.
type plugThread struct {
	Crest        lengths             `toml:"crest"` // bore over the thread crests
	CrestGoodTo  units.Length        `toml:"crest_good_to"`
	Pitches      int                 `toml:"pitches"`
	Length       lengths             `toml:"length"` // over so many pitches
	LengthGoodTo units.Length        `toml:"length_good_to"`
	Leaf         []threadsheet.Pitch `toml:"leaf"`
	Wear         units.Length        `toml:"wear"`
	Depth        *length             `toml:"depth"` // of the thread, seat face to chamber
	Seat         *length             `toml:"seat"`  // diameter of the seat face
	BushFor      *threads.Thread     `toml:"bush_for"`
	BushGrade    string              `toml:"bush_grade"` // steel of the bush
	Leadscrew    *threadsheet.Pitch  `toml:"leadscrew"`
	Wheels       []int               `toml:"wheels"`
	TipFlat      units.Length        `toml:"tip_flat"` // of the screwcutting tool
	TipRadius    units.Length        `toml:"tip_radius"`
}

// A plugWork is the plug hole with its thread named.
type plugWork struct {
	*plugThread
	bench  *bench
	thread threads.Thread
	bore   length
	named  bool // surely enough
}

// plugSection names the thread of the plug hole, and gives the sizes of an
// adapter and of a bush for it.
func (b *bench) plugSection() (*sheet.Section, error) {
	p := b.job.PlugThread
	if p == nil {
		return nil, nil
	}
	c, err := threadsheet.Check(b.file, "plug_thread", threadsheet.Measured{Part: "hole", Crest: p.Crest, CrestGoodTo: p.CrestGoodTo,
		Pitches: p.Pitches, Length: p.Length, LengthGoodTo: p.LengthGoodTo, Leaf: p.Leaf, Wear: p.Wear}, "", nil)
	if err != nil {
		return nil, err
	}
	s := &sheet.Section{Number: 9, Key: "plug", Title: "The thread of the plug hole, an adapter and a bush", Figures: c.Figures("plug.", "")}
	s.Answer = append(s.Answer, c.Answer())
	c.Working(s)
	s.Questions = c.Questions()
	s.Cautions = plugCautions
	b.plugNext(s, c)
	t, ok := c.Best()
	if !ok {
		return s, nil
	}
	b.plug = &plugWork{plugThread: p, bench: b, thread: t, bore: c.Readings.Crest, named: c.Named()}
	if !c.Named() {
		s.Answer = append(s.Answer, fmt.Sprintf("What follows is for %v, the likeliest, and holds only if it is that: settle the name before any metal is cut. An adapter or a bush of the wrong thread jams in the hole and spoils it.", t))
	}
	for _, step := range [...]func(*sheet.Section) error{b.plug.left, b.plug.adapter, b.plug.wheels, b.plug.bush} {
		if err := step(s); err != nil {
			return nil, err
		}
	}
	return s, nil
}

// plugNext says what to measure next, or what the thread must not be taken for.
func (b *bench) plugNext(s *sheet.Section, c *threadsheet.Checked) {
	s.Answer = append(s.Answer, c.Next()...)
	if p, ok := c.Parting(); ok && !c.Named() {
		s.Improve = p.By.String()
	} else {
		s.Improve = "the bore over the crests, before anything is cut to fit it; the pitch is sure enough"
	}
	if text := c.MatesText(); text != "" {
		s.Answer = append(s.Answer, text)
	}
	if p, ok := c.Picture(); ok {
		s.Pictures = append(s.Pictures, p)
	}
}

// left is how much thread the hole has.
func (p *plugWork) left(s *sheet.Section) error {
	bore := p.bore.Value
	if bore >= p.thread.Major() {
		return p.bench.file.Errorf("plug_thread.crest", "a bore of %v is larger than the %v of %v: want it over the crests", bore, p.thread.Major(), p.thread)
	}
	var fail error
	res, err := units.Propagate(func() float64 {
		e, err := p.thread.Engagement(bore, threads.BasicThread)
		fail = err
		return e
	}, units.VaryReading("bore", &bore, p.bore), units.StopOn(&fail))
	if err != nil {
		return p.bench.file.Errorf("plug_thread.crest", "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Of("plug.engagement", "depth of thread left in the hole", res.Reading(), sheet.Percent))
	s.Add("Thread left in the hole, of the basic depth", "(D − bore) / (D − D₁)",
		fmt.Sprintf("(%s − %s) / (%s − %s)", mm3(p.thread.Major()), sheet.Value(p.bore, sheet.Millimetre), mm3(p.thread.Major()), mm3(p.thread.Minor())), sheet.Show(res.Reading(), sheet.Percent))
	return nil
}

func mm3(l units.Length) string { return sheet.Plain(l, sheet.Millimetre, 3) }

var plugCautions = []string{
	"Do not run a tap through the plug hole to try or clean it: the thread is worn to its own size, the metal round it is thin, and there is no other. Clean it with a brush and solvent, plug the chamber with rag and grease, and count the rag out again.",
	"The adapter is for turning the engine by hand with the dial in it: screw it in with the fingers, and never start the engine with it.",
	"A bush holds burning gas. One that comes out leaves like a shot, and a plug with it. Lock it so that it cannot turn out with the plug, try it cold with nobody in line, and look at it again after the first runs. If the wall is thin or the old thread poor, have the hole welded up and bored by someone who does that work.",
}
