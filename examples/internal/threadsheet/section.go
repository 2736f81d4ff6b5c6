package threadsheet

import (
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// Cautions are what holds for every thread without a name.
func Cautions() []string {
	return []string{
		"Never run a tap or a die of an assumed size through an original thread, to clean it or to try it, until diameter, pitch and angle are all known: it cuts a new thread across the old one. Brush, solvent and a pick clean as well.",
		"Try a mate by hand only. A right one runs its whole length with the fingers; if it stiffens after two or three turns it is the wrong one: stop, turn it back, and use no spanner. The tapped hole is hurt first, and it is the part without a spare.",
		"Keep each bolt with its own hole until the thread has a name. A plug, a cylinder stud or a flywheel nut that holds by part of its thread can come off a running engine: if it is in doubt, do not start; ask someone who does such work.",
	}
}

// leftHanded is what to heed where a left-hand thread is met.
const leftHanded = "A left-hand thread tightens anticlockwise: turned as usual to undo it, it is tightened until something breaks. Mark it."

// Section answers for one thread. Keys of figures begin with key.
func (c *Checked) Section(key string) *sheet.Section {
	s := &sheet.Section{Key: key, Title: c.title()}
	s.Answer = append(s.Answer, c.Answer())
	if text := c.together(); text != "" {
		s.Answer = append(s.Answer, text)
	}
	if c.Readings.Pitch.Value == 0 {
		s.Questions = append(s.Questions, "The pitch was not measured: take the length over as many threads as will go, and most of these names fall away.")
	}
	s.Answer = append(s.Answer, c.Next()...)
	s.Figures = c.Figures(key+".", "")
	s.Tables = append(s.Tables, c.candidates())
	c.Working(s)
	c.mates(s)
	if c.Remark != "" {
		s.Answer = append(s.Answer, "Noted of it: "+c.Remark+".")
	}
	if p, ok := c.Picture(); ok {
		s.Pictures = append(s.Pictures, p)
	}
	s.Improve = c.improve()
	s.Questions = append(s.Questions, c.Questions()...)
	if c.Found.Hand == threads.LeftHand {
		s.Cautions = append(s.Cautions, leftHanded)
	}
	return s
}

// Next says what would settle the thread, or where it has a name what it must
// not be taken for.
func (c *Checked) Next() []string {
	second, listed, ok := c.Second()
	switch {
	case !c.Named():
		return c.settle()
	case ok && listed:
		return []string{"The next is " + second.Designation() + ". " + strings.Join(c.settle(), " ")}
	case ok:
		return []string{c.nearestText(second)}
	}
	return nil
}

// nearestText names the thread of the tables that may be taken for the one
// found, and what tells them apart.
func (c *Checked) nearestText(second threads.Thread) string {
	text := fmt.Sprintf("No other thread of the tables fits the readings. The nearest, and not to be taken for it, is %v", second)
	p, ok := threads.PartingOf(c.Found.Candidates[0].Thread(), second, c.Readings.Part)
	if !ok {
		return text + "."
	}
	return text + ". " + partingText(p, tool(p.By, c.Readings.Part))
}

func (c *Checked) title() string {
	switch {
	case c.Name != "" && c.Where != "":
		return c.Name + ": " + c.Where
	case c.Where != "":
		return c.Where
	case c.Name != "":
		return c.Name
	}
	return "The thread measured"
}

// together says that two were looked at as one thread.
func (c *Checked) together() string {
	if c.Mate == nil {
		return ""
	}
	text := fmt.Sprintf("That is by its own readings and those of %s, which belongs in it: the two are of one thread.", c.Mate.Name)
	if a := c.Alone.Candidates; !c.Alone.Decided(Sure) && len(a) > 1 {
		text += fmt.Sprintf(" Alone it might be %v (%s) or %v (%s).", a[0].Thread(), percent(a[0].Probability), a[1].Thread(), percent(a[1].Probability))
	}
	return text
}

// Figures are those of the readings: keys and names begin as given.
func (c *Checked) Figures(key, name string) []sheet.Figure {
	var out []sheet.Figure
	r := c.Readings
	if r.Crest.Value != 0 {
		what := "diameter over the crests"
		if r.Part == threads.Nut {
			what = "bore over the crests"
		}
		out = append(out, sheet.Of(key+"crest", name+what, r.Crest, sheet.Millimetre, sheet.Inch))
	}
	if r.Pitch.Value != 0 {
		out = append(out, sheet.Of(key+"pitch", name+"pitch", r.Pitch, sheet.Millimetre, sheet.Inch),
			sheet.Of(key+"tpi", name+"threads to the inch", perInch(r.Pitch), sheet.Number))
	}
	return out
}

// perInch turns a pitch into threads to the inch.
func perInch(p units.Reading[units.Length]) units.Reading[float64] {
	n := float64(units.Inch / p.Value)
	return units.Reading[float64]{Value: n, Std: n * float64(p.Std/p.Value), DoF: p.DoF}
}

// shown is how many candidates a table has at most.
const shown = 6

// candidates is the table of what it may be.
func (c *Checked) candidates() sheet.Table {
	t := sheet.Table{Title: "What it may be, by " + c.basis(), Rows: [][]string{{"thread", "probability", "short at the crests", "pitch off by"}}}
	for i, k := range c.Found.Candidates {
		if i == shown || i > 1 && k.Probability < 1e-3 {
			break
		}
		short, pitch := offText(k, c.Readings)
		t.Rows = append(t.Rows, []string{nameOf(k), percent(k.Probability), short, pitch})
	}
	t.Rows = append(t.Rows, []string{"a thread of no table", percent(c.Found.Unlisted), "", ""})
	return t
}

func (c *Checked) basis() string {
	if c.Origin == "" {
		return "the readings alone"
	}
	return "the readings, and what was usual on " + c.Origin + " machines"
}

// WorkPitch sets out how the pitch came about.
func (c *Checked) WorkPitch(s *sheet.Section) {
	r, name := c.Readings, "Pitch"
	if c.Name != "" {
		name = c.Name + ": pitch"
	}
	if c.Pitches > 0 {
		over := units.Reading[units.Length]{Value: r.Pitch.Value * units.Length(c.Pitches), Std: r.Pitch.Std * units.Length(c.Pitches), DoF: r.Pitch.DoF}
		s.Add(name+" from the length over several", "p = l / n,  tpi = 25.4 mm / p",
			fmt.Sprintf("%s / %d", sheet.Value(over, sheet.Millimetre), c.Pitches),
			fmt.Sprintf("%s, or %s to the inch", sheet.Show(r.Pitch, sheet.Millimetre), sheet.Show(perInch(r.Pitch), sheet.Number)))
	} else if len(c.Leaf) > 0 {
		s.Add(name+" from a gauge leaf: a misfit of 0.09 mm over its length is not seen (common practice, no source)", "p ± 0.09 mm / n",
			fmt.Sprintf("%v on %d threads", c.Leaf[0], c.leafOn()), sheet.Show(r.Pitch, sheet.Millimetre))
	}
}

// Working sets out the sums.
func (c *Checked) Working(s *sheet.Section) {
	r := c.Readings
	c.WorkPitch(s)
	best, ok := c.Best()
	if !ok || r.Crest.Value == 0 {
		return
	}
	k := c.Found.Candidates[0]
	basic, what := best.Major(), "Major diameter of the likeliest less the reading over the crests: what ordinary work and wear have taken"
	formula, numbers := "D − d", "%s − %s"
	if r.Part == threads.Nut {
		basic, what = best.Minor(), "Bore less the minor diameter of the likeliest: what the tapping drill and wear have taken"
		formula = "bore − D₁"
	}
	a, b := sheet.Plain(basic, sheet.Millimetre, 3), sheet.Value(r.Crest, sheet.Millimetre)
	if r.Part == threads.Nut {
		a, b = b, a
	}
	s.Add(what, formula, fmt.Sprintf(numbers, a, b), fmt.Sprintf("%s, %.1f of what ordinary work may take", sheet.Plain(k.Short, sheet.Millimetre, 3), k.Tolerances))
	s.Add("Each thread's share: prior weight times the likelihood of every reading, over the sum of all", "P = w L / Σ w L", "", fmt.Sprintf("%v %s", best, percent(k.Probability)))
}

// improve says which reading is worth the next trouble.
func (c *Checked) improve() string {
	if c.Named() || len(c.Found.Candidates) < 2 {
		return ""
	}
	p, ok := c.Parting()
	if !ok {
		return ""
	}
	return p.By.String() + ", with " + tool(p.By, c.Readings.Part)
}

// Picture draws the two likeliest over one another.
func (c *Checked) Picture() (sheet.Picture, bool) {
	b, _, ok := c.Second()
	if !ok {
		return sheet.Picture{}, false
	}
	a := c.Found.Candidates[0].Thread()
	return Profiles(a, b, c.Readings.Part, c.engaged(a)), true
}

// Questions are what looks odd in the readings, for the reader to judge.
func (c *Checked) Questions() []string {
	var out []string
	if q := c.leafQuestion(); q != "" {
		out = append(out, q)
	}
	if q := c.angleQuestion(); q != "" {
		out = append(out, q)
	}
	if t, ok := c.Best(); ok && t.FromMemory() {
		out = append(out, fmt.Sprintf("The size %v was not found in print and stands here from memory: is it in a list you have?", t))
	}
	return out
}

// leafQuestion compares the leaves that seemed to fit with the length measured,
// and looks for the count that would explain it if none agrees.
func (c *Checked) leafQuestion() string {
	p := c.Readings.Pitch
	if c.Pitches == 0 || p.Value == 0 || len(c.Leaf) == 0 || c.anyLeaf(p.Value) {
		return ""
	}
	length := p.Value * units.Length(c.Pitches)
	for _, n := range [...]int{c.Pitches - 1, c.Pitches + 1} {
		if n > 0 && c.anyLeaf(length/units.Length(n)) {
			return fmt.Sprintf("The leaf %v and %s over %d pitches do not agree; over %d they would. Were crests counted in place of pitches? Between eleven crests there are ten.", c.Leaf[0], sheet.Plain(length, sheet.Millimetre, 2), c.Pitches, n)
		}
	}
	return fmt.Sprintf("The leaf %v and a pitch of %s do not agree: was the length taken square to the crests, and over so many?", c.Leaf[0], sheet.Show(p, sheet.Millimetre))
}

// anyLeaf reports whether a leaf may have seemed to fit a pitch.
func (c *Checked) anyLeaf(pitch units.Length) bool {
	seen := math.Hypot(2*float64(c.Readings.Pitch.Std), float64(0.09*units.Millimetre)/float64(c.leafOn()))
	for _, leaf := range c.Leaf {
		if math.Abs(float64(pitch-leaf.Length)) <= seen {
			return true
		}
	}
	return false
}

// angleQuestion compares the set the leaf is in with the angle of the thread
// that was named.
func (c *Checked) angleQuestion() string {
	t, ok := c.Best()
	if !ok || !c.Named() {
		return ""
	}
	for _, leaf := range c.Leaf {
		if leaf.Angle == 0 {
			return "" // which set was not written down
		}
		if math.Abs(float64(leaf.Angle-t.Form().Angle())) < float64(3*units.Degree) {
			return ""
		}
	}
	if len(c.Leaf) == 0 {
		return ""
	}
	return fmt.Sprintf("The leaf %v is of another angle than %v, which has %s: did it show light along the flanks?", c.Leaf[0], t, angleOf(t))
}
