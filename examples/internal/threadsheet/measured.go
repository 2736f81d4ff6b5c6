package threadsheet

import (
	"math"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A Measured is one thread as it stands in a file: what it is called there and
// what was measured of it.
type Measured struct {
	Name  string `toml:"name"`
	Where string `toml:"where"`
	Part  string `toml:"part"` // bolt, or hole: any nut or tapped hole
	Hand  string `toml:"hand"` // right or left

	Crest       []units.Length `toml:"crest"` // over the crests: outside of a bolt, bore of a hole
	CrestGoodTo units.Length   `toml:"crest_good_to"`

	Pitches      int            `toml:"pitches"` // from crest to crest: one less than the crests
	Length       []units.Length `toml:"length"`  // over so many pitches
	LengthGoodTo units.Length   `toml:"length_good_to"`
	Leaf         []Pitch        `toml:"leaf"`    // gauge leaves that seemed to fit
	LeafOn       int            `toml:"leaf_on"` // threads under the leaf

	Effective *units.Reading[units.Length] `toml:"effective"`
	Root      *units.Reading[units.Length] `toml:"root"`
	Angle     *units.Reading[units.Angle]  `toml:"angle"`
	Taper     string                       `toml:"taper"` // none, seen or not looked
	Wear      units.Length                 `toml:"wear"`

	Origin  string       `toml:"origin"` // where made, if not as the rest
	Engaged units.Length `toml:"engaged"`
	With    string       `toml:"goes_with"` // name of the thread it belongs to
	Remark  string       `toml:"remark"`

	Torn     bool                         `toml:"torn"` // a hole to be mended
	Deep     *units.Reading[units.Length] `toml:"deep"`
	ToEdge   *units.Reading[units.Length] `toml:"to_edge"`
	Metal    string                       `toml:"metal"`
	Strength *units.Pressure              `toml:"metal_strength"`
	StudIs   string                       `toml:"stud_grade"`
}

// A Job is the threads of one machine, and what is known of where and when it
// was made.
type Job struct {
	Origin string     `toml:"origin"` // British, American or continental
	Years  []int      `toml:"years"`  // from, to
	Thread []Measured `toml:"thread"`
}

// leafOn is how many threads lie under a leaf when the file does not say.
const leafOn = 4

// readings makes what Identify wants of a thread. The key at is where it stands
// in the file.
func (m *Measured) readings(f *jobfile.File, at string, prior threads.Prior) (threads.Readings, error) {
	r := threads.Readings{Wear: m.Wear, Prior: prior}
	for _, step := range [...]func(*jobfile.File, string, *threads.Readings) error{m.setWords, m.setCrest, m.setPitch, m.setRest} {
		if err := step(f, at, &r); err != nil {
			return r, err
		}
	}
	return r, nil
}

// setWords takes what is said in words.
func (m *Measured) setWords(f *jobfile.File, at string, r *threads.Readings) error {
	switch m.Part {
	case "bolt":
	case "hole":
		r.Part = threads.Nut
	default:
		return f.Errorf(under(at, "part"), "%q: want \"bolt\" for any thread on the outside, or \"hole\" for a nut or a tapped hole", m.Part)
	}
	switch m.Hand {
	case "", "right":
	case "left":
		r.Hand = threads.LeftHand
	default:
		return f.Errorf(under(at, "hand"), "%q: want \"right\" or \"left\"", m.Hand)
	}
	switch m.Taper {
	case "", "not looked":
	case "none":
		r.Taper = threads.Parallel
	case "seen":
		r.Taper = threads.Tapered
	default:
		return f.Errorf(under(at, "taper"), "%q: want what a rule along the crests shows: \"none\", \"seen\", or \"not looked\"", m.Taper)
	}
	return nil
}

// setCrest takes the diameter over the crests.
func (m *Measured) setCrest(f *jobfile.File, at string, r *threads.Readings) error {
	for _, d := range m.Crest {
		if !(d > 0.5*units.Millimetre && d < units.Metre) {
			return f.Errorf(under(at, "crest"), "%v: want the whole diameter over the crests, from 0.5 mm to 1 m", d)
		}
	}
	r.Crest = readings.Mean(m.Crest, m.CrestGoodTo)
	return nil
}

// setPitch takes the pitch from the length over several, or from a leaf.
func (m *Measured) setPitch(f *jobfile.File, at string, r *threads.Readings) error {
	switch {
	case m.Pitches == 0 && len(m.Length) == 0:
		return m.pitchByLeaf(f, at, r)
	case m.Pitches < 1 || m.Pitches > 200:
		return f.Errorf(under(at, "pitches"), "%d: want how many pitches the length goes over, crest to crest, from 1 to 200; between eleven crests there are ten", m.Pitches)
	case len(m.Length) == 0:
		return f.Errorf(under(at, "length"), "not given: want the length over the %d pitches", m.Pitches)
	}
	p, err := threads.PitchOver(m.Pitches, readings.Mean(m.Length, m.LengthGoodTo))
	if err != nil {
		return f.Errorf(under(at, "length"), "%v", err)
	}
	if !(p.Value > 0.1*units.Millimetre && p.Value < 30*units.Millimetre) {
		return f.Errorf(under(at, "length"), "%v over %d pitches is %v a thread: want from 0.1 mm to 30 mm", m.Length[0], m.Pitches, p.Value)
	}
	r.Pitch = p
	return nil
}

func (m *Measured) pitchByLeaf(f *jobfile.File, at string, r *threads.Readings) error {
	on := m.leafOn()
	if on < 1 {
		return f.Errorf(under(at, "leaf_on"), "%d: want how many threads lay under the leaf", on)
	}
	for i, leaf := range m.Leaf {
		if i > 0 && !closeTo(leaf.Length, m.Leaf[0].Length) {
			return f.Errorf(under(at, "leaf"), "%v and %v: when two leaves seem to fit, only a length over many pitches tells; give pitches and length", m.Leaf[0], leaf)
		}
	}
	if len(m.Leaf) == 0 {
		return nil
	}
	p, err := threads.PitchByLeaf(m.Leaf[0].Length, on)
	if err != nil {
		return f.Errorf(under(at, "leaf"), "%v", err)
	}
	r.Pitch = p
	return nil
}

func (m *Measured) leafOn() int {
	if m.LeafOn == 0 {
		return leafOn
	}
	return m.LeafOn
}

func closeTo(a, b units.Length) bool { return math.Abs(float64(a-b)) <= 1e-6*math.Abs(float64(b)) }

// setRest takes the readings that are given with their uncertainty.
func (m *Measured) setRest(f *jobfile.File, at string, r *threads.Readings) error {
	if m.Effective != nil {
		r.Effective = *m.Effective
	}
	if m.Root != nil {
		r.Root = *m.Root
	}
	if m.Angle != nil {
		r.Angle = *m.Angle
	}
	if len(m.Crest) == 0 && m.Effective == nil && m.Root == nil {
		return f.Errorf(under(at, "crest"), "no diameter: give crest, the diameter over the crests of a bolt or the bore of a hole")
	}
	if !(m.Engaged >= 0) {
		return f.Errorf(under(at, "engaged"), "%v: want the length over which the two are screwed together", m.Engaged)
	}
	return nil
}

// under is the key of a reading in the table at, or the flag where there is no
// table because the readings come from the command line.
func under(at, key string) string {
	if at == "" {
		return "-" + key
	}
	return at + "." + key
}
