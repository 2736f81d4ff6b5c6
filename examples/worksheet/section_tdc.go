package main

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// tdcSection finds top dead centre on the rim by every way for which there are
// readings, and says how the ways compare.
func (b *bench) tdcSection() (*sheet.Section, error) {
	j := b.job
	if j.Dial == nil && j.Stop == nil && j.ByEye == nil {
		return nil, b.trustMark()
	}
	if j.Rim != nil && j.Rim.TDCMark != nil {
		return nil, b.file.Errorf("rim.tdc_mark", "a mark to be trusted and readings to find it: leave out one of them")
	}
	if b.round == nil {
		return nil, b.file.Errorf("rim", "top dead centre is found on the rim: give its girth or its diameter")
	}
	if j.Rim.Figures == 0 {
		return nil, b.file.Errorf("rim.figures", "not stated: say rising or falling, what the figures do at the pointer as the engine is turned forward")
	}
	s := &sheet.Section{Number: 1, Key: "tdc", Title: "Top dead centre on the rim"}
	var ways []ignition.Way
	for _, way := range [...]func(*sheet.Section) ([]ignition.Way, error){b.byStop, b.byDial, b.byWatching} {
		found, err := way(s)
		if err != nil {
			return nil, err
		}
		ways = append(ways, found...)
	}
	return s, b.together(s, ways)
}

// trustMark takes a top dead centre mark that is there already. Where nothing
// but distances from it is given, the figures need not be stated.
func (b *bench) trustMark() error {
	r := b.job.Rim
	if r == nil || r.TDCMark == nil {
		return nil
	}
	b.tdc = r.TDCMark
	if r.Figures != 0 {
		return nil
	}
	if b.job.Points != nil {
		for i, set := range b.job.Points.Sets {
			if len(set.Forward)+len(set.Backward) > 0 {
				return b.file.Errorf(fmt.Sprintf("points.set.%d", i), "rim figures, but rim.figures does not say whether they rise or fall at the pointer, turning forward")
			}
		}
	}
	r.Figures = ignition.Rising // distances carry their side with them
	return nil
}

// together weighs the ways and says where to scribe the line.
func (b *bench) together(s *sheet.Section, ways []ignition.Way) error {
	all, err := ignition.Combine(ways...)
	if err != nil {
		return b.file.Errorf(b.firstOf("dial", "stop", "by_eye"), "%v", err)
	}
	b.tdc = &all.Position
	at := sheet.Show(all.Position, sheet.Millimetre)
	position := sheet.Of("tdc.position", "all ways together", all.Position, sheet.Millimetre, sheet.Inch)
	half := units.Length(position.HalfWidth()) * units.Millimetre
	s.Answer = append([]string{fmt.Sprintf("Top dead centre is where %s of the rim rule stands at the pointer; in crank angle that is good to %s.",
		at, sheet.Plain(b.round.AngleOfArc(half), sheet.Degree, 2))}, s.Answer...)
	s.Figures = append([]sheet.Figure{position}, s.Figures...)
	table := sheet.Table{Title: "The ways, side by side", Rows: [][]string{{"way", "rim figure", "share", "was it worth the trouble?"}}}
	for _, w := range all.Ways {
		share := strconv.FormatFloat(100*w.Share, 'f', 0, 64) + " %"
		if !w.Counted {
			share = "none"
		}
		table.Rows = append(table.Rows, []string{w.Name, sheet.Show(w.Position, sheet.Millimetre), share, w.Verdict})
	}
	s.Tables = append(s.Tables, table)
	if len(all.Ways) > 1 {
		s.Add("All ways together, weighed by how sure each is", "position = Σ (s/u²) / Σ (1/u²)", weights(all), at)
	}
	if !all.Agree {
		s.Questions = append(s.Questions, fmt.Sprintf("The ways differ by more than they should: that happens by chance %.1f times in 100. Was the pointer moved, or the rule, between them?", 100*all.Chance))
	}
	s.Scribe = append(s.Scribe,
		fmt.Sprintf("Turn the engine forward until %s on the rule stands at the pointer, and scribe the line TDC across the rim at the pointer. If you pass it, go back a good quarter of a turn and come again.", sheet.Value(all.Position, sheet.Millimetre)),
		"Scribe the pointer's own place on the case too, so that it can be put back.")
	s.Cautions = append(s.Cautions,
		"Turn by hand and gently, plug lead off and earthed: a stop or a gauge can go through the crown. Never use a starter against a stop, and take the stop out again.")
	return nil
}

// weights writes the ways with the share of each that counts.
func weights(all ignition.Combined) string {
	var parts []string
	for _, w := range all.Ways {
		if w.Counted {
			parts = append(parts, fmt.Sprintf("%.1f %% of %s", 100*w.Share, sheet.Value(w.Position, sheet.Millimetre)))
		}
	}
	return strings.Join(parts, " + ")
}

// setup is what the ways of finding top dead centre need to know.
func (b *bench) setup() ignition.Setup {
	set := ignition.Setup{
		Rim: *b.round, RimStd: b.girth.Std * b.round.Diameter() / b.girth.Value,
		RunOut:  b.job.Rim.RunOut,
		Figures: b.job.Rim.Figures, SettingStd: b.job.Rim.SettingGoodTo, Lean: b.lean, Offset: b.offset(),
	}
	if b.stroke != nil {
		set.Stroke = *b.stroke
	}
	if b.rod != nil {
		set.Rod = *b.rod
	} else {
		set.RodUnknown = true
	}
	if d := b.job.Dial; d != nil {
		set.Dial, set.DialStd, set.ZeroStd = d.Figures, d.GoodTo, d.ZeroGoodTo
	}
	return set
}

// byStop finds it by the positive stop.
func (b *bench) byStop(s *sheet.Section) ([]ignition.Way, error) {
	st := b.job.Stop
	if st == nil {
		return nil, nil
	}
	if len(st.Forward) != len(st.Backward) {
		return nil, b.file.Errorf("stop", "%d figures turned forward and %d backward: give both of each try", len(st.Forward), len(st.Backward))
	}
	var pairs []ignition.StopPair
	for i := range st.Forward {
		pairs = append(pairs, ignition.StopPair{Forward: st.Forward[i], Backward: st.Backward[i]})
	}
	setup := b.setup()
	setup.SettingStd = b.job.Rim.ReadingGoodTo // the rim is read where it stops, not set to a figure
	found, err := ignition.Stop(setup, pairs...)
	if err != nil {
		return nil, b.file.Errorf("stop", "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Of("tdc.stop", "by the stop", found.Position, sheet.Millimetre, sheet.Inch))
	s.Add("By the stop: half way between the two touches of each try, and the mean of the tries", "middle = (forward + backward) / 2",
		listed(found.Middles, sheet.Millimetre, 2), sheet.Show(found.Position, sheet.Millimetre))
	for _, odd := range found.Odd {
		s.Questions = append(s.Questions, sentenceOf("stop: "+odd.String()))
	}
	b.addNotes(s, found.Notes)
	s.Improve = readings.LargestOf(found.Budget()) + ", in " + strconv.Itoa(len(pairs)) + " tries"
	return []ignition.Way{{Name: "stop", Position: found.Position, Readings: "stop"}}, nil
}

// byDial finds it by equal readings and by a fit to all readings.
func (b *bench) byDial(s *sheet.Section) ([]ignition.Way, error) {
	d := b.job.Dial
	if d == nil {
		return nil, nil
	}
	if b.stroke == nil {
		return nil, b.file.Errorf("dial", "readings of a dial need the stroke: give crank.stroke, or the crown edge at both ends")
	}
	if d.Figures == 0 {
		return nil, b.file.Errorf("dial.figures", `not stated: say "more going down" or "less going down"`)
	}
	series, err := b.dialSeries()
	if err != nil {
		return nil, err
	}
	fit, err := ignition.FindTDC(b.setup(), series...)
	if err != nil {
		return nil, b.file.Errorf("dial", "%v", err)
	}
	ways := []ignition.Way{{Name: "fit to all dial readings", Position: fit.Position, Readings: "dial"}}
	b.dialSlips = fit.Slips
	b.describeFit(s, fit)
	pairs, err := ignition.Bisect(b.setup(), ignition.Without(fit.Slips, series...)...)
	if err == nil {
		s.Figures = append(s.Figures, sheet.Of("tdc.bisect", "by equal dial readings", pairs.Position, sheet.Millimetre, sheet.Inch))
		s.Add(fmt.Sprintf("By equal dial readings: half way between the places, before and after, where the dial shows the same; %d pairs", len(pairs.Pairs)),
			"middle = (s₁ + s₂) / 2", firstPair(pairs), sheet.Show(pairs.Position, sheet.Millimetre))
		b.addNotes(s, pairs.Notes)
		if !pairs.OneWay { // one way only: late by the slack, which nothing here tells
			ways = append(ways, ignition.Way{Name: "equal dial readings", Position: pairs.Position, Readings: "dial"})
		}
	}
	return ways, nil
}

// firstPair writes the pair furthest out as an instance of all.
func firstPair(b ignition.Bisection) string {
	if len(b.Pairs) == 0 {
		return ""
	}
	far := b.Pairs[0]
	for _, p := range b.Pairs[1:] {
		if p.Drop > far.Drop {
			far = p
		}
	}
	return fmt.Sprintf("for one, series %s, dial %s: (%s + %s) / 2 = %s", far.Series, sheet.Plain(far.Dial, sheet.Millimetre, 2),
		sheet.Plain(far.Before, sheet.Millimetre, 2), sheet.Plain(far.After, sheet.Millimetre, 2), sheet.Plain(far.Middle, sheet.Millimetre, 2))
}

// describeFit adds what the fit found besides the position.
func (b *bench) describeFit(s *sheet.Section, fit ignition.TDC) {
	s.Figures = append(s.Figures,
		sheet.Of("tdc.fit", "by a fit to all dial readings", fit.Position, sheet.Millimetre, sheet.Inch),
		sheet.Of("tdc.slack", "lost motion in the bearings", fit.Slack, sheet.Millimetre, sheet.Thou))
	if b.rod == nil {
		s.Figures = append(s.Figures, sheet.Of("tdc.rod", "rod, from the readings alone", fit.Rod, sheet.Millimetre, sheet.Inch))
	}
	used := 0
	for _, r := range fit.Residuals {
		if !r.LeftOut {
			used++
		}
	}
	s.Add(fmt.Sprintf("By a fit of the crank's own curve to %d dial readings, both ways round; readings turned forward lag by half the lost motion, backward lead by as much", used),
		"dial = zero + x(θ) / cos β ± slack", fmt.Sprintf("%d unknowns found at once; the readings scatter %s times what the tools allow", len(fit.Unknowns()), strconv.FormatFloat(fit.Scatter, 'f', 2, 64)),
		sheet.Show(fit.Position, sheet.Millimetre))
	b.drawFit(s, fit)
	for _, slip := range fit.Slips {
		s.Answer = append(s.Answer, "One reading was left out as a slip: "+sentenceOf(slip.String()))
	}
	b.addNotes(s, fit.Notes)
	s.Improve = readings.LargestOf(fit.Budget()) + "; " + b.plan()
}

// plan says where equal readings are best taken.
func (b *bench) plan() string {
	p, err := ignition.PlanAt(b.setup(), 5*units.Millimetre, 4)
	if err != nil {
		return "take equal readings well down on both sides"
	}
	return fmt.Sprintf("four pairs of equal readings %s down (%s either side) give it to %s of crank, where watching the needle turn leaves a dead band of %s either side",
		sheet.Plain(p.Drop, sheet.Millimetre, 0), sheet.Plain(p.Angle, sheet.Degree, 0), sheet.Plain(2*p.StdAngle, sheet.Degree, 2), sheet.Plain(p.DeadAngle, sheet.Degree, 1))
}

// dialSeries reads the tables of the series.
func (b *bench) dialSeries() ([]ignition.Series, error) {
	var all []ignition.Series
	for i, d := range b.job.Dial.Series {
		key := fmt.Sprintf("dial.series.%d", i)
		if d.Turned == 0 {
			return nil, b.file.Errorf(key, "which way was the engine turned? give turned = \"forward\" or \"backward\"")
		}
		var at, figure lengths
		if _, err := b.file.Columns(key+".readings", d.Readings, jobfile.Quantities("rim", &at), jobfile.Quantities("dial", &figure)); err != nil {
			return nil, err
		}
		series := ignition.Series{Name: d.Name, Mounting: d.Mounting, Turned: d.Turned}
		if series.Name == "" {
			series.Name = strconv.Itoa(i + 1)
		}
		for k := range at {
			series.Readings = append(series.Readings, ignition.DialReading{Rim: at[k], Dial: figure[k]})
		}
		all = append(all, series)
	}
	if len(all) == 0 {
		return nil, b.file.Errorf("dial", "no readings: give at least one [[dial.series]] on both sides of the top")
	}
	return all, nil
}

// byWatching takes the tries at seeing the needle turn back.
func (b *bench) byWatching(s *sheet.Section) ([]ignition.Way, error) {
	e := b.job.ByEye
	if e == nil {
		return nil, nil
	}
	found, err := ignition.ByEye(b.setup(), e.TurnedBackAt...)
	if err != nil {
		return nil, b.file.Errorf("by_eye", "%v", err)
	}
	s.Figures = append(s.Figures,
		sheet.Of("tdc.by_eye", "by watching the needle turn", found.Position, sheet.Millimetre, sheet.Inch),
		sheet.Rough("tdc.dead_band", "rim over which the needle stands, either side", found.DeadBand, 1, sheet.Millimetre))
	s.Add("By watching the needle turn back: the mean of the tries; within the dead band nothing tells one place from another", "band = ± √(2 d / (r (1 + r/L)))",
		listed(e.TurnedBackAt, sheet.Millimetre, 0), sheet.Show(found.Position, sheet.Millimetre))
	return []ignition.Way{{Name: "watching the needle", Position: found.Position, Readings: "by eye"}}, nil
}

func (b *bench) addNotes(s *sheet.Section, notes []string) {
	for _, n := range notes {
		s.Answer = append(s.Answer, sentenceOf(n))
	}
}
