package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// The units of this section.
var (
	squareMillimetre = sheet.Unit[units.Area]{Name: "mm²", One: units.SquareMillimetre}
	kilonewton       = sheet.Unit[units.Force]{Name: "kN", One: 1000 * units.Newton}
	newtonMetre      = sheet.Unit[units.Torque]{Name: "N m", One: units.NewtonMetre}
	megapascal       = sheet.Unit[units.Pressure]{Name: "MPa", One: units.Megapascal}
)

// bush says what metal a bush to another plug has.
func (p *plugWork) bush(s *sheet.Section) error {
	if p.BushFor == nil {
		return nil
	}
	inner := *p.BushFor
	bush, err := threads.NewBush(p.thread, inner)
	if err != nil {
		s.Answer = append(s.Answer, fmt.Sprintf("A bush from %v to %v cannot be: nothing is left between the two threads.", p.thread, inner))
		p.otherPlugs(s)
		return nil
	}
	s.Figures = append(s.Figures,
		sheet.Of("plug.bush_wall", fmt.Sprintf("bush to %v, wall where it is thinnest", inner), units.Exact(bush.Wall()), sheet.Millimetre, sheet.Inch),
		sheet.Of("plug.bush_area", "its ring of metal there", units.Exact(bush.WallArea()), squareMillimetre),
		sheet.Of("plug.bush_strength", "that ring, of the stress area of the plug", units.Exact(bush.Strength()), sheet.Percent))
	s.Add("Wall of the bush, between the bottom of the thread outside and that of the thread inside", "wall = (core of the outer − major of the inner) / 2",
		fmt.Sprintf("(%s − %s) / 2", mm3(p.thread.BoltRoot()), mm3(inner.Major())), mm3(bush.Wall()))
	s.Add("The ring of metal there, beside the stress area of the thread inside", "π/4 (d² − D²) / At", fmt.Sprintf("%s / %s", sheet.Plain(bush.WallArea(), squareMillimetre, 0), sheet.Plain(inner.StressArea(), squareMillimetre, 0)), sheet.Plain(bush.Strength(), sheet.Percent, 0))
	s.Answer = append(s.Answer, p.bushText(bush))
	if err := p.bushLoad(s, bush); err != nil {
		return err
	}
	p.otherPlugs(s)
	long := p.thread.Major() / 2
	if p.Depth != nil {
		long = p.Depth.Value
	}
	s.Pictures = append(s.Pictures, threadsheet.BushPicture(bush, long))
	s.Questions = append(s.Questions, "Do the two threads of the bush run true to one another? All that they are off centre comes off one side of the wall: cut both in one setting.",
		"Is there room on the seat face for the shoulder of the bush, and for the washer of the new plug on top of it? Does the new plug reach no further than the hole is deep?")
	return nil
}

// bushText says in words what the sums come to.
func (p *plugWork) bushText(b threads.Bush) string {
	text := fmt.Sprintf("A bush from %v to %v is %s (%s) thick at its thinnest, less half of what the tap cuts oversize and all that the threads are off centre; its ring of metal is %s of what the plug itself has to pull with",
		b.Outer(), b.Inner(), mm2(b.Wall()), inch3(b.Wall()), sheet.Plain(b.Strength(), sheet.Percent, 0))
	if b.Strength() < 1 {
		return text + ". There is a wall, and a thin one: overtightened, the bush parts before the plug does. No least wall was found in print. Its outside is turned and cut as the body of the adapter."
	}
	return text + ": the plug parts before the bush does. Its outside is turned and cut as the body of the adapter."
}

// bushLoad says what the ring stands, where the steel is known.
func (p *plugWork) bushLoad(s *sheet.Section, b threads.Bush) error {
	if p.BushGrade == "" {
		return nil
	}
	grade, err := threads.FindGrade(p.BushGrade, b.Inner().Major())
	if err != nil {
		return p.bench.file.Errorf("plug_thread.bush_grade", "%v", err)
	}
	yield, ok := grade.Yield()
	if !ok {
		return p.bench.file.Errorf("plug_thread.bush_grade", "%v has no yield strength in its standard: give another, as \"4.6\" for mild steel", grade)
	}
	pull := units.Force(float64(b.WallArea()) * float64(yield))
	torque := b.Inner().TorqueByK(pull, threads.Lubricated.K())
	spread := units.PlusMinus(torque, 0.3*torque) // what is usually quoted of K: 25 to 35 % either way
	gas := units.Pressure(float64(pull) / float64(geometry.Circle(b.Outer().Major())))
	s.Figures = append(s.Figures, sheet.Of("plug.bush_pull", "pull at which the ring yields", units.Exact(pull), kilonewton),
		sheet.Of("plug.bush_torque", fmt.Sprintf("tightening of the plug that pulls so, oiled (K %.2f)", threads.Lubricated.K()), spread, newtonMetre))
	s.Add(fmt.Sprintf("In steel of class %v, yielding at %s (%s)", grade, sheet.Plain(yield, megapascal, 0), grade.Source()), "F = A × yield,  T = K F d, K within 30 % either way (common practice, no source)",
		fmt.Sprintf("%s × %s; %.2f × F × %s", sheet.Plain(b.WallArea(), squareMillimetre, 0), sheet.Plain(yield, megapascal, 0), threads.Lubricated.K(), mm2(b.Inner().Major())),
		fmt.Sprintf("%s, %s", sheet.Plain(pull, kilonewton, 1), sheet.Show(spread, newtonMetre)))
	s.Answer = append(s.Answer, fmt.Sprintf("In steel of class %v the ring yields at %s. Gas would have to stand at %s on the whole of the hole to pull so; a spanner does it with %s on an oiled plug. Keep well under the least of that: what does the maker of the plug say?",
		grade, sheet.Plain(pull, kilonewton, 0), sheet.Plain(gas, megapascal, 0), sheet.Show(spread, newtonMetre)))
	return nil
}

// otherPlugs is a table of what a bush to each size of plug leaves.
func (p *plugWork) otherPlugs(s *sheet.Section) {
	t := sheet.Table{Title: "Bush from " + p.thread.Designation() + " to a plug", Rows: [][]string{{"plug", "wall", "in inches", "ring of metal, of the plug's stress area"}}}
	for inner := range threads.SparkPlug.All() {
		b, err := threads.NewBush(p.thread, inner)
		if err != nil {
			t.Rows = append(t.Rows, []string{inner.Designation(), "none", "", ""})
			continue
		}
		t.Rows = append(t.Rows, []string{inner.Designation(), mm2(b.Wall()), inch3(b.Wall()), sheet.Plain(b.Strength(), sheet.Percent, 0)})
	}
	s.Tables = append(s.Tables, t)
	if best, ok := p.largestStrong(); ok {
		s.Answer = append(s.Answer, fmt.Sprintf("The largest plug whose bush is as strong as itself is %v, with a wall of %s (%s).", best.Inner(), mm2(best.Wall()), inch3(best.Wall())))
	}
}

// largestStrong is the bush to the largest plug that it does not part before.
func (p *plugWork) largestStrong() (threads.Bush, bool) {
	var best threads.Bush
	found := false
	for inner := range threads.SparkPlug.All() {
		b, err := threads.NewBush(p.thread, inner)
		if err == nil && b.Strength() >= 1 && (!found || inner.Major() > best.Inner().Major()) {
			best, found = b, true
		}
	}
	return best, found
}
