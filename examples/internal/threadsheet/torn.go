package threadsheet

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// AddTorn adds to a section what is left of a torn hole, and how it can be
// mended. It adds nothing for a thread that is none.
func (c *Checked) AddTorn(s *sheet.Section) error {
	if !c.Torn {
		return nil
	}
	if c.Readings.Part != threads.Nut || c.Readings.Crest.Value == 0 {
		return c.file.Errorf(under(c.at, "torn"), "only a hole with its bore can be mended: want part = \"hole\" and crest, the bore across what is left of the crests")
	}
	t, ok := c.Best()
	if !ok {
		s.Answer = append(s.Answer, "What is left of "+c.Name+" has no name, so nothing can be said of its repair.")
		return nil
	}
	h := &torn{Checked: c, t: t, key: s.Key + "." + c.Slug() + "_", own: s.Key == c.Key()}
	for _, step := range [...]func(*sheet.Section) error{h.left, h.length, h.loads, h.repairs} {
		if err := step(s); err != nil {
			return err
		}
	}
	s.Cautions = append(s.Cautions, h.cautions()...)
	return nil
}

// A torn is a torn hole with its name.
type torn struct {
	*Checked
	t   threads.Thread
	key string
	own bool // the section is about this thread and no other
}

// left is how much thread the hole has left, of the basic depth.
func (h *torn) left(s *sheet.Section) error {
	bore := h.Readings.Crest.Value
	whole, err := h.propagate(func() (float64, error) { return h.t.Engagement(bore, threads.BasicThread) },
		units.VaryReading("bore", &bore, h.Readings.Crest))
	if err != nil {
		return h.file.Errorf(under(h.at, "crest"), "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Of(h.key+"engagement", h.Name+", depth of thread left", whole, sheet.Percent))
	s.Add(h.Name+": thread left in the hole, of the basic depth", "(D − bore) / (D − D₁)",
		fmt.Sprintf("(%s − %s) / (%s − %s)", h.mm(h.t.Major()), sheet.Value(h.Readings.Crest, sheet.Millimetre), h.mm(h.t.Major()), h.mm(h.t.Minor())), sheet.Show(whole, sheet.Percent))
	text := fmt.Sprintf("%s has %s of its depth of thread left at most", h.subject(), sheet.Show(whole, sheet.Percent))
	if h.Mate != nil && h.Mate.Readings.Crest.Value != 0 {
		if h.withStud(s, &text) != nil {
			text += "; the stud as it measures passes through it"
		}
	}
	s.Answer = append(s.Answer, text+". What was pulled once is weaker than any sum says: do not tighten it again as it is.")
	return nil
}

// subject begins a sentence about the hole, and says first how it came by its
// name where the section has not said so.
func (h *torn) subject() string {
	name := h.Name
	if h.Where != "" {
		name += " (" + h.Where + ")"
	}
	if why := h.together(); why != "" && !h.own {
		return fmt.Sprintf("%s is %v. %s As that it", name, h.t, why)
	}
	return fmt.Sprintf("%s as %v", name, h.t)
}

// withStud is how much the stud finds, as it measures.
func (h *torn) withStud(s *sheet.Section, text *string) error {
	bore, stud := h.Readings.Crest.Value, h.Mate.Readings.Crest.Value
	meets, err := h.propagate(func() (float64, error) { return h.t.EngagementWith(stud, bore, threads.BasicThread) },
		units.VaryReading("bore", &bore, h.Readings.Crest), units.VaryReading("stud", &stud, h.Mate.Readings.Crest))
	if err != nil || !(meets.Value > 0) {
		return fmt.Errorf("no overlap: %w", units.ErrDomain)
	}
	s.Figures = append(s.Figures, sheet.Of(h.key+"with_stud", h.Name+", depth that the stud "+h.Mate.Name+" finds", meets, sheet.Percent))
	s.Add(h.Name+": what the stud finds, as it measures", "(d − bore) / (D − D₁)",
		fmt.Sprintf("(%s − %s) / (%s − %s)", sheet.Value(h.Mate.Readings.Crest, sheet.Millimetre), sheet.Value(h.Readings.Crest, sheet.Millimetre), h.mm(h.t.Major()), h.mm(h.t.Minor())), sheet.Show(meets, sheet.Percent))
	*text += fmt.Sprintf(", and the stud %s, as it measures, finds %s", h.Mate.Name, sheet.Show(meets, sheet.Percent))
	return nil
}

func (h *torn) propagate(f func() (float64, error), inputs ...units.Input) (units.Reading[float64], error) {
	var fail error
	res, err := units.Propagate(func() float64 {
		v, err := f()
		fail = err
		return v
	}, append(inputs, units.StopOn(&fail))...)
	return res.Reading(), err
}

func (h *torn) mm(l units.Length) string { return sheet.Plain(l, sheet.Millimetre, 3) }

// length holds the depth of the thread against the rule of thumb.
func (h *torn) length(s *sheet.Section) error {
	if h.Deep == nil {
		return nil
	}
	if !(h.Deep.Value > 0) {
		return h.file.Errorf(under(h.at, "deep"), "%v: want the length of thread in the hole, more than 0 mm", h.Deep.Value)
	}
	text := fmt.Sprintf("The thread is %s deep, %.1f diameters", sheet.Show(*h.Deep, sheet.Millimetre), float64(h.Deep.Value/h.t.Major()))
	metal, ok, err := h.tappedMetal()
	if err != nil {
		return err
	}
	if ok {
		rule, err := h.t.EngagementByRule(metal)
		if err != nil {
			return h.file.Errorf(under(h.at, "metal"), "%v", err)
		}
		s.Figures = append(s.Figures, sheet.Of(h.key+"by_rule", h.Name+", length that the old rule wants", units.Exact(rule), sheet.Millimetre, sheet.Inch))
		text += fmt.Sprintf("; the old rule wants %s (%s) for %s", sheet.Plain(rule, sheet.Millimetre, 1), sheet.Plain(rule, sheet.Inch, 3), h.Metal)
		if rule > h.Deep.Value {
			text += ", so that even a whole thread would be a little short there: go as deep as the hole allows"
		}
	}
	s.Answer = append(s.Answer, text+".")
	return nil
}

func (h *torn) tappedMetal() (threads.TappedMetal, bool, error) {
	switch h.Metal {
	case "":
		return 0, false, nil
	case "steel or cast iron":
		return threads.SteelOrCastIron, true, nil
	case "hard steel or bronze":
		return threads.HardSteelOrBronze, true, nil
	case "light alloy":
		return threads.LightAlloy, true, nil
	case "light alloy under shock":
		return threads.LightAlloyUnderShock, true, nil
	}
	return 0, false, h.file.Errorf(under(h.at, "metal"), "%q: want \"steel or cast iron\", \"hard steel or bronze\", \"light alloy\" or \"light alloy under shock\"", h.Metal)
}

// loads says what gives way first, when the strengths are known.
func (h *torn) loads(s *sheet.Section) error {
	if h.Strength == nil && h.StudIs == "" {
		return nil
	}
	if h.Strength == nil || h.StudIs == "" || h.Deep == nil || h.Mate == nil {
		return h.file.Errorf(under(h.at, "metal_strength"), "what the hole will bear wants metal_strength, stud_grade, deep, and goes_with for the stud")
	}
	grade, err := threads.FindGrade(h.StudIs, h.t.Major())
	if err != nil {
		return h.file.Errorf(under(h.at, "stud_grade"), "%v", err)
	}
	hole := threads.WornHole{Bore: h.Readings.Crest.Value, Deep: h.Deep.Value}
	j, err := hole.Joint(h.t, h.Mate.Readings.Crest.Value)
	if err != nil {
		return h.file.Errorf(under(h.at, "crest"), "%v", err)
	}
	loads, err := j.Loads(hole.Deep, grade.Tensile(), *h.Strength)
	if err != nil {
		return h.file.Errorf(under(h.at, "metal_strength"), "%v", err)
	}
	least, what := loads.Least()
	s.Figures = append(s.Figures, sheet.Of(h.key+"strips", h.Name+", pull at which sound metal strips", units.Exact(loads.NutStrips), kilonewton),
		sheet.Of(h.key+"breaks", h.Name+", pull at which the stud breaks", units.Exact(loads.Breaks), kilonewton))
	s.Answer = append(s.Answer, fmt.Sprintf("If its metal were sound, the first thing to happen would be this, at %s: %s. It pulled out, so it is not.", sheet.Plain(least, kilonewton, 0), what))
	return nil
}

var kilonewton = sheet.Unit[units.Force]{Name: "kN", One: 1000 * units.Newton}

// repairs lists the ways to mend it.
func (h *torn) repairs(s *sheet.Section) error {
	hole := threads.WornHole{Bore: h.Readings.Crest.Value}
	if h.ToEdge != nil {
		if !(h.ToEdge.Value > 0) {
			return h.file.Errorf(under(h.at, "to_edge"), "%v: want the metal from the bore to the nearest edge, more than 0 mm", h.ToEdge.Value)
		}
		hole.ToEdge = h.ToEdge.Value
	}
	if h.Deep != nil {
		hole.Deep = h.Deep.Value
	}
	ways, err := threads.Repairs(h.t, hole)
	if err != nil {
		return h.file.Errorf(under(h.at, "torn"), "%v", err)
	}
	table := sheet.Table{Title: h.Name + ": ways to mend it, the least metal taken first", Rows: [][]string{{"way", "tap", "hole to drill", "in sound metal", "left to the edge"}}}
	for _, w := range ways {
		table.Rows = append(table.Rows, []string{w.Kind.String(), w.Thread.Designation(), drillFor(w.Thread), fmt.Sprintf("%.0f %%", 100*w.Sound), edgeText(w)})
		if w.EdgeKnown && h.firstOf(w.Kind, ways) == w {
			h.edge(s, w)
		}
	}
	s.Tables = append(s.Tables, table)
	s.Answer = append(s.Answer, h.advice(ways)...)
	s.Questions = append(s.Questions, h.Name+": what does the hole open into (water, crankcase, an oil way), and is the metal round it sound and free of cracks? The sums know neither.",
		h.Name+": is the hole square to its face? A stud in a hole that leans bends when it is tightened; bore true in the lathe or under a drilling machine, not by hand.")
	return nil
}

func (h *torn) firstOf(k threads.RepairKind, ways []threads.Repair) threads.Repair {
	for _, w := range ways {
		if w.Kind == k {
			return w
		}
	}
	return threads.Repair{}
}

// edge is the metal left to the edge, with its uncertainty.
func (h *torn) edge(s *sheet.Section, w threads.Repair) {
	metal, bore := h.ToEdge.Value, h.Readings.Crest.Value
	res, err := units.Propagate(func() units.Length { return threads.EdgeWall(metal, bore, w.Thread.Major()) },
		units.VaryReading("metal to the edge", &metal, *h.ToEdge), units.VaryReading("bore", &bore, h.Readings.Crest))
	if err != nil {
		return
	}
	s.Figures = append(s.Figures, sheet.Of(h.key+edgeKeys[w.Kind], fmt.Sprintf("%s, metal left to the edge, %v", h.Name, w.Kind), res.Reading(), sheet.Millimetre, sheet.Inch))
	s.Add(fmt.Sprintf("%s: metal left between %v and the edge", h.Name, w.Thread), "wall = metal − (D − bore) / 2",
		fmt.Sprintf("%s − (%s − %s) / 2", sheet.Value(*h.ToEdge, sheet.Millimetre), h.mm(w.Thread.Major()), sheet.Value(h.Readings.Crest, sheet.Millimetre)), sheet.Show(res.Reading(), sheet.Millimetre))
}

var edgeKeys = [...]string{threads.SteppedStud: "edge_stepped", threads.WireInsert: "edge_insert", threads.SolidBush: "edge_bush"}

// wanted is the engagement that drills are chosen for, of the bolt's depth:
// common practice, no source.
const wanted = 0.75

func drillFor(t threads.Thread) string {
	d, err := threads.TappingDrills(t, wanted, threads.BoltThread)
	if err != nil || len(d) == 0 {
		return sheet.Plain(t.Minor(), sheet.Millimetre, 2) + " bore"
	}
	return fmt.Sprintf("%v, %.0f %%", d[0].Drill, 100*d[0].Engagement)
}

func edgeText(w threads.Repair) string {
	if !w.EdgeKnown {
		return "not measured"
	}
	return sheet.Plain(w.ToEdge, sheet.Millimetre, 1)
}

// advice says what the table comes to.
func (h *torn) advice(ways []threads.Repair) []string {
	var out []string
	say := func(k threads.RepairKind, text func(w threads.Repair) string) {
		if w := h.firstOf(k, ways); w.Thread != (threads.Thread{}) {
			out = append(out, text(w))
		}
	}
	left := func(w threads.Repair) string {
		if !w.EdgeKnown {
			return ""
		}
		if w.ToEdge <= 0 {
			return ", and it breaks through the edge"
		}
		return fmt.Sprintf(", with %s (%s) left to the edge", sheet.Plain(w.ToEdge, sheet.Millimetre, 1), sheet.Plain(w.ToEdge, sheet.Inch, 2))
	}
	say(threads.SteppedStud, func(w threads.Repair) string {
		return fmt.Sprintf("Least metal goes for a stepped stud: tap the case %v%s; %.0f %% of its depth stands in metal that the old thread never reached. The other end stays %v.", w.Thread, left(w), 100*w.Sound, h.t)
	})
	say(threads.WireInsert, func(w threads.Repair) string {
		return fmt.Sprintf("A wire insert keeps the old stud: its tap is %s at %s%s.%s", sheet.Plain(w.Thread.Major(), sheet.Millimetre, 2), pitchText(w.Thread), left(w), insertNote(h.t))
	})
	say(threads.SolidBush, func(w threads.Repair) string {
		return fmt.Sprintf("A screwed bush as strong as the stud wants %v outside%s. It takes the most metal and is the last resort.", w.Thread, left(w))
	})
	return out
}

func pitchText(t threads.Thread) string {
	if t.Form() == threads.ISOForm {
		return sheet.Plain(t.Pitch(), sheet.Millimetre, 2) + " pitch"
	}
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%.2f", t.TPI()), "0"), ".") + " tpi"
}

// insertNote says where the construction of an insert is no standard.
func insertNote(t threads.Thread) string {
	switch t.Form() {
	case threads.ISOForm, threads.UnifiedForm:
		return ""
	}
	return " No standard has inserts of this form: ask whoever makes them before drilling."
}

func (h *torn) cautions() []string {
	return []string{
		h.Name + ": drill and tap with the case held and the hole stopped with grease, so that no swarf falls into the engine; keep the tap square, and turn it back often.",
		h.Name + ": a cylinder that lifts in running throws parts. If a stud that holds it is in doubt, have the hole built up by welding and bored by someone who does such work.",
	}
}
