package main

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// A port is one port of the engine: what was measured, and what comes of it.
type port struct {
	name, key string
	edge      lengths // of the edge that is uncovered first
	far       lengths // of its other edge
	width     units.Length
	skirt     bool // worked by the skirt, open round the top
	opens     *units.Length
	closes    *units.Length

	event   geometry.PortEvent
	half    angle  // half the duration, from the depth
	improve string // what its uncertainty comes from
}

// worstPort says which reading to take better for the port that is least sure.
func worstPort(ports []port) string {
	if len(ports) == 0 {
		return ""
	}
	worst := ports[0]
	for _, p := range ports[1:] {
		if p.half.Std > worst.half.Std {
			worst = p
		}
	}
	return worst.improve + ", for the " + worst.name + " port"
}

// portList is the ports that were measured.
func (b *bench) portList() []port {
	p := b.job.Ports
	r := p.Rim
	if r == nil {
		r = &portsRim{}
	}
	all := []port{
		{name: "exhaust", key: "exhaust", edge: p.ExhaustTop, far: p.ExhaustBottom, width: p.ExhaustWidth, opens: r.ExhaustOpens, closes: r.ExhaustCloses},
		{name: "transfer", key: "transfer", edge: p.TransferTop, far: p.TransferBottom, width: p.TransferWidth, opens: r.TransferOpens, closes: r.TransferCloses},
		{name: "inlet", key: "inlet", edge: p.InletBottom, far: p.InletTop, width: p.InletWidth, skirt: true, opens: r.InletOpens, closes: r.InletCloses},
	}
	var measured []port
	for _, x := range all {
		if len(x.edge) > 0 {
			measured = append(measured, x)
		}
	}
	return measured
}

// portsSection answers when the ports open and shut, from their depths, and
// whether the rim says the same.
func (b *bench) portsSection() (*sheet.Section, error) {
	if b.job.Ports == nil {
		return nil, nil
	}
	if b.crank == nil || len(b.job.Crank.CrownTop) == 0 {
		return nil, b.file.Errorf("ports", "depths of ports need the crown edge at the top of the stroke (crank.crown_at_top), the stroke and the rod")
	}
	s := &sheet.Section{Number: 7, Key: "ports", Title: "When the ports open and shut"}
	ports := b.portList()
	table := sheet.Table{Title: "From the depths, counted from top dead centre", Rows: [][]string{{"port", "opens", "shuts", "open for"}}}
	for i := range ports {
		p := &ports[i]
		if err := b.portEvents(s, p); err != nil {
			return nil, err
		}
		table.Rows = append(table.Rows, []string{p.name, sheet.Plain(p.event.Opens, sheet.Degree, 1), sheet.Plain(p.event.Closes, sheet.Degree, 1), sheet.Show(scale(p.half, 2), sheet.Degree)})
		b.compareRim(s, p)
	}
	s.Tables = append(s.Tables, table)
	drawPorts(s, ports)
	b.blowdown(s, ports)
	if err := b.timeAreas(s, ports); err != nil {
		return nil, err
	}
	s.Improve = worstPort(ports)
	return s, nil
}

// portEvents works out one port from its depth.
func (b *bench) portEvents(s *sheet.Section, p *port) error {
	depths := b.job.Ports
	key := "ports." + p.key + "_top"
	edge := b.meanOf("ports", "ports "+p.name+" edge", p.edge, depths.DepthsGoodTo)
	deck := mean(b.job.Crank.CrownTop, b.job.Crank.DepthsGoodTo)
	skirt := length{}
	if p.skirt {
		key = "ports.inlet_bottom"
		if b.job.Crank.Skirt == nil {
			return b.file.Errorf(key, "a port that the skirt works needs crank.skirt, from the crown edge to the bottom of the skirt")
		}
		skirt = *b.job.Crank.Skirt
	}
	var depth, top, foot units.Length
	events := func(c geometry.Crank) (geometry.PortEvent, error) {
		barrel, err := p.barrel(c, top, foot)
		if err != nil {
			return geometry.PortEvent{}, err
		}
		if p.skirt {
			return barrel.SkirtPort(depth)
		}
		return barrel.CrownPort(depth)
	}
	half, err := propagateCrank(b, func(c geometry.Crank) (units.Angle, error) {
		e, err := events(c)
		return e.Duration() / 2, err
	}, units.VaryReading("port edge", &depth, edge), units.VaryReading("crown edge at the top", &top, deck), units.VaryReading("skirt", &foot, skirt))
	if err != nil {
		return b.file.Errorf(key, "%v", err)
	}
	depth, top, foot = edge.Value, deck.Value, skirt.Value
	if p.event, err = events(*b.crank); err != nil {
		return b.file.Errorf(key, "%v", err)
	}
	p.half, p.improve = half.Reading(), largest(half)
	name := p.name + " port, "
	s.Figures = append(s.Figures,
		sheet.Of("ports."+p.key+"_opens", name+"opens", units.Reading[units.Angle]{Value: p.event.Opens, Std: half.Std, DoF: half.DoF}, sheet.Degree),
		sheet.Of("ports."+p.key+"_shuts", name+"shuts", units.Reading[units.Angle]{Value: p.event.Closes, Std: half.Std, DoF: half.DoF}, sheet.Degree),
		sheet.Of("ports."+p.key+"_open_for", name+"open for", scale(half.Reading(), 2), sheet.Degree))
	drop, formula := edge.Value-deck.Value, "x = depth of edge − depth of crown at the top"
	numbers := fmt.Sprintf("%s − %s", sheet.Value(edge, sheet.Millimetre), sheet.Value(deck, sheet.Millimetre))
	if p.skirt {
		drop -= skirt.Value
		formula, numbers = formula+" − skirt", numbers+" − "+sheet.Value(skirt, sheet.Millimetre)
	}
	s.Add(sentence("piston drop at which the edge of the "+p.name+" port is crossed, and the angle there"), formula, numbers,
		fmt.Sprintf("%s, at %s", sheet.Plain(drop, sheet.Millimetre, 2), sheet.Show(half.Reading(), sheet.Degree)+" "+halfWords(p.skirt)))
	return nil
}

// barrel is the barrel over a crank, with the crown and the skirt where they
// were measured.
func (p *port) barrel(c geometry.Crank, deck, skirt units.Length) (geometry.Barrel, error) {
	barrel, err := geometry.NewBarrel(c).WithDeck(deck)
	if err != nil || !p.skirt {
		return barrel, err
	}
	return barrel.WithSkirt(skirt)
}

func halfWords(skirt bool) string {
	if skirt {
		return "either side of the top"
	}
	return "either side of the bottom"
}

// compareRim holds the depth's timing against the rim's.
func (b *bench) compareRim(s *sheet.Section, p *port) {
	if p.opens == nil || p.closes == nil || b.round == nil || b.tdc == nil {
		return
	}
	sc, err := b.rimScale()
	if err != nil {
		return
	}
	half := func(figure units.Length) units.Angle { return abs(sc.Angle(figure)) }
	byRim := (half(*p.opens) + half(*p.closes)) / 2
	if !p.skirt {
		byRim = units.Turn/2 - byRim
	}
	std := b.round.AngleOfArc(b.job.Ports.Rim.GoodTo) / units.Angle(math.Sqrt2)
	rim := units.WithStd(2*byRim, 2*std)
	depth := scale(p.half, 2)
	s.Figures = append(s.Figures, sheet.Of("ports."+p.key+"_open_for_by_rim", p.name+" port, open for, by the rim", rim, sheet.Degree))
	d := difference(rim, depth)
	word := "agree within what they are good to"
	if abs(d.Value) > 2*d.Std {
		word = "do not agree: see where light first shows past a chamfered edge, and read both again"
	}
	s.Answer = append(s.Answer, fmt.Sprintf("%s: depth says open for %s, the rim %s; they %s.", capital(p.name), sheet.Show(depth, sheet.Degree), sheet.Show(rim, sheet.Degree), word))
}

// blowdown adds the time between exhaust and transfer.
func (b *bench) blowdown(s *sheet.Section, ports []port) {
	var exhaust, transfer *port
	for i := range ports {
		switch ports[i].key {
		case "exhaust":
			exhaust = &ports[i]
		case "transfer":
			transfer = &ports[i]
		}
	}
	if exhaust == nil || transfer == nil {
		return
	}
	d := difference(exhaust.half, transfer.half)
	d.Value = geometry.Blowdown(exhaust.event, transfer.event)
	s.Figures = append(s.Figures, sheet.Of("ports.blowdown", "from exhaust opening to transfer opening", d, sheet.Degree))
	if d.Value < 0 {
		s.Questions = append(s.Questions, "The transfer seems to open before the exhaust. Are the two depths the right way round?")
	}
}

// timeAreas adds the open area over the time it is open, where the windows were
// measured and the speed is given.
func (b *bench) timeAreas(s *sheet.Section, ports []port) error {
	speed := b.job.Engine.Speed
	if speed == nil || !(*speed > 0) {
		return nil
	}
	for i := range ports {
		p := &ports[i]
		if p.width == 0 || len(p.far) == 0 {
			continue
		}
		ta, err := b.timeArea(p, *speed)
		if err != nil {
			return b.file.Errorf("ports."+p.key+"_width", "%v", err)
		}
		s.Figures = append(s.Figures, sheet.Of("ports."+p.key+"_time_area", fmt.Sprintf("%s port, time-area at %.0f rev/min", p.name, speed.RevolutionsPerMinute()),
			ta, sheet.Unit[units.TimeArea]{Name: "s mm²", One: units.SecondSquareMillimetre}))
	}
	return nil
}

// timeArea is the open area of a port added up over the time it is open.
func (b *bench) timeArea(p *port, speed units.AngularSpeed) (units.Reading[units.TimeArea], error) {
	depths, crown := b.job.Ports, b.job.Crank
	edge, far := mean(p.edge, depths.DepthsGoodTo), mean(p.far, depths.DepthsGoodTo)
	deck, skirt := mean(crown.CrownTop, crown.DepthsGoodTo), length{}
	if p.skirt {
		skirt = *crown.Skirt
	}
	var top, bottom, down, foot units.Length
	res, err := propagateCrank(b, func(c geometry.Crank) (units.TimeArea, error) {
		barrel, err := p.barrel(c, down, foot)
		if err != nil {
			return 0, err
		}
		opening := barrel.CrownPortArea
		if p.skirt {
			opening = barrel.SkirtPortArea
		}
		area, err := opening(top, geometry.Window{Width: p.width, Height: abs(bottom - top)})
		if err != nil {
			return 0, err
		}
		return area.TimeArea(speed)
	}, units.VaryReading("port edge", &top, edge), units.VaryReading("far edge", &bottom, far),
		units.VaryReading("crown edge at the top", &down, deck), units.VaryReading("skirt", &foot, skirt))
	return res.Reading(), err
}
