package main

import (
	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/oilmix"
	"example.com/benchsums/examples/internal/springsheet"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A bench holds the job and what several sections stand on. What was not
// measured is nil.
type bench struct {
	job  *job
	file *jobfile.File

	stroke *length
	rod    *length
	crank  *geometry.Crank
	girth  *length
	round  *ignition.Rim
	lean   angle

	tdc        *length // rim figure of top dead centre, when section 1 has found it
	card       *timing // what the card says, when section 3 has worked it out
	cardFigure *length // and its rim figure
	openings   []opening
	gap        *ignition.GapEffect
	dialSlips  []ignition.Slip
	trials     trials
	doubts     map[string][]string // by the key of the section that is to ask
	sampled    []sampled
	oil        *oilmix.Mix
	plug       *plugWork // the plug hole, when its thread has a name
	threads    []*threadsheet.Checked
	bushes     []*bush   // as far as section 12 has worked them out
	worn       *wornBore // what section 13 has found of bore, piston and rings
	springs    *springsheet.Result
	starting   string // what to tell whoever starts it by hand
}

// newBench works out what the sections share, and refuses what cannot be.
func newBench(file *jobfile.File, j *job) (*bench, error) {
	b := &bench{job: j, file: file}
	for _, step := range [...]func() error{b.checkGoodTo, b.setStroke, b.setRod, b.setCrank, b.setRim, b.setLean} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	return b, nil
}

// setStroke takes the stroke as given, or from the crown edge at both ends.
func (b *bench) setStroke() error {
	c := &b.job.Crank
	switch {
	case c.Stroke != nil && len(c.CrownTop)+len(c.CrownBottom) > 0:
		return b.file.Errorf("crank.stroke", "given twice: leave out either the stroke or the crown edge at both ends")
	case c.Stroke != nil:
		b.stroke = c.Stroke
	case len(c.CrownTop) > 0 && len(c.CrownBottom) > 0:
		s := difference(b.meanOf("crank", "crank.crown_at_bottom", c.CrownBottom, c.DepthsGoodTo), b.meanOf("crank", "crank.crown_at_top", c.CrownTop, c.DepthsGoodTo))
		b.stroke = &s
	case len(c.CrownTop)+len(c.CrownBottom) > 0:
		return b.file.Errorf("crank", "the crown edge at one end only: give crown_at_top and crown_at_bottom")
	default:
		return nil
	}
	if !(b.stroke.Value > 0) {
		return b.file.Errorf(b.firstOf("crank.stroke", "crank.crown_at_bottom"), "a stroke of %v: want more than 0 mm", b.stroke.Value)
	}
	return nil
}

// setRod takes the rod as given, or from over the pins less half of each.
func (b *bench) setRod() error {
	c := &b.job.Crank
	switch {
	case c.Rod != nil && len(c.RodOverPins) > 0:
		return b.file.Errorf("crank.rod", "given twice: leave out either the rod or the measure over the pins")
	case c.Rod != nil:
		b.rod = c.Rod
	case len(c.RodOverPins) > 0:
		if c.GudgeonPin == nil || c.Crankpin == nil {
			return b.file.Errorf("crank.rod_over_pins", "measured over the pins: give gudgeon_pin and crankpin too")
		}
		r := difference(difference(b.meanOf("crank", "crank.rod_over_pins", c.RodOverPins, c.RodGoodTo), scale(*c.GudgeonPin, 0.5)), scale(*c.Crankpin, 0.5))
		b.rod = &r
	}
	return nil
}

func (b *bench) setCrank() error {
	if b.stroke == nil || b.rod == nil {
		return nil
	}
	c, err := geometry.NewCrank(b.stroke.Value, b.rod.Value)
	if err != nil {
		return b.file.Errorf(b.firstOf("crank.rod", "crank.rod_over_pins"), "%v", err)
	}
	if c, err = c.WithOffsetSameStroke(b.offset().Value); err != nil {
		return b.file.Errorf("crank.offset", "%v", err)
	}
	b.crank = &c
	return nil
}

// setRim takes the rim from the tape round it, or from its diameter.
func (b *bench) setRim() error {
	r := b.job.Rim
	if r == nil {
		return nil
	}
	var err error
	var rim ignition.Rim
	switch {
	case len(r.Girth) > 0:
		g := b.meanOf("rim", "rim.girth", r.Girth, r.GirthGoodTo)
		g = shared(g, r.GirthGoodTo)
		if rim, err = ignition.NewRimOfTape(g.Value, r.Tape); err != nil {
			return b.file.Errorf("rim.girth", "%v", err)
		}
		g.Value = rim.Girth()
		b.girth = &g
	case len(r.Diameter) > 0:
		d := b.meanOf("rim", "rim.diameter", r.Diameter, r.DiameterGoodTo)
		if rim, err = ignition.NewRim(d.Value); err != nil {
			return b.file.Errorf("rim.diameter", "%v", err)
		}
		g := scale(d, float64(rim.Girth()/rim.Diameter()))
		b.girth = &g
	default:
		return b.file.Errorf("rim", "neither girth nor diameter: give one of them")
	}
	b.round = &rim
	return nil
}

func (b *bench) setLean() error {
	if b.job.PlugHole == nil || b.job.PlugHole.Lean == nil {
		return nil
	}
	b.lean = *b.job.PlugHole.Lean
	if !(b.lean.Value >= 0 && b.lean.Value < 80*units.Degree) {
		return b.file.Errorf("plug_hole.lean", "a lean of %v: want from 0° to below 80°, from the bore axis", b.lean.Value)
	}
	return nil
}

// firstOf returns the first of the keys that is in the file, or the first.
func (b *bench) firstOf(keys ...string) string {
	for _, k := range keys {
		if b.file.Has(k) {
			return k
		}
	}
	return keys[0]
}
