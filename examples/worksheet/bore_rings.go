package main

import (
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// ringGaps holds what the ring says of the bore against what the gauge says.
func (b *bench) ringGaps(s *sheet.Section) error {
	p, w := b.job.Piston, b.worn
	if p == nil || p.GapBelow == nil && p.GapTop == nil {
		return nil
	}
	if p.GapBelow == nil || p.GapTop == nil {
		return b.file.Errorf(b.firstOf("piston.ring_gap_below", "piston.ring_gap_top"), "one end gap only: give the gap of the same ring both below ring travel and at the top of it")
	}
	if !w.has {
		return b.file.Errorf("piston.ring_gap_top", "end gaps at two places, but the bore was not measured at both: give readings at the top and below ring travel")
	}
	wide, narrow := fits.RingPlace{Gap: *p.GapTop, Bore: w.top}, fits.RingPlace{Gap: *p.GapBelow, Bore: w.unworn}
	check, err := fits.CheckGaps(wide, narrow)
	if err != nil {
		return b.file.Errorf("piston.ring_gap_top", "%v", err)
	}
	byRing, err := fits.BoreByRing(*p.GapTop, narrow)
	if err != nil {
		return b.file.Errorf("piston.ring_gap_top", "%v", err)
	}
	s.Figures = append(s.Figures,
		sheet.Of("bore.wider_by_gap", "top wider than below, by the ring's gaps", check.ByGap, sheet.Millimetre, sheet.Thou),
		sheet.Of("bore.wider_by_gauge", "the same, by the gauge, means of both ways", check.ByBore, sheet.Millimetre, sheet.Thou),
		sheet.Of("bore.top_by_ring", "bore at the top of ring travel, by the ring", byRing, sheet.Millimetre, sheet.Inch))
	s.Add("A ring's gap opens by π times as much as the bore is wider", "D − D₀ = (g − g₀)/π",
		fmt.Sprintf("(%s − %s)/π", sheet.Value(*p.GapTop, sheet.Thou), sheet.Value(*p.GapBelow, sheet.Thou)), sheet.Show(check.ByGap, sheet.Thou))
	s.Add("By the gauge", "D − D₀", fmt.Sprintf("%s − %s", sheet.Plain(w.top.Value, sheet.Inch, 5), sheet.Plain(w.unworn.Value, sheet.Inch, 5)), sheet.Show(check.ByBore, sheet.Thou))
	text := "they agree"
	if !check.Agree {
		text = "they do not agree"
		s.Questions = append(s.Questions, "Ring and gauge differ by more than they may be out. Did the ring stand square, were both gaps of the same ring, is one of the readings a slip?")
	}
	s.Answer = append(s.Answer, fmt.Sprintf("The ring's two gaps say that the top is wider by %s, the gauge says %s: %s.", sheet.Show(check.ByGap, sheet.Thou), sheet.Show(check.ByBore, sheet.Thou), text))
	s.Improve = "the readings of the gauge"
	if check.ByGap.Std < check.ByBore.Std {
		s.Improve = fmt.Sprintf("the bore, with the ring: a feeler good to %s in its gap tells one place from another to %s, where the gauge does to %s. Square the ring up at the middle too, and at every half inch",
			sheet.Plain(p.GapTop.Std, sheet.Thou, 1), sheet.Plain(check.ByGap.Std, sheet.Thou, 2), sheet.Plain(check.ByBore.Std, sheet.Thou, 2))
	}
	return nil
}

// Published limits for cast-iron bores and rings.
const (
	makerOfRings = "Hastings, maker of piston rings, service note on oversize cylinders"
	gapLeast     = 0.0035 // of the bore, below ring travel
	gapMost      = 0.008
	periodBook   = "Velocette, Mk II OHC instruction book: 0.008 in of wear on a bore of 2.913 in"
	wearToRebore = 0.008 / 2.913
	armyManual   = "TM 9-2815-226-34-1: a feeler of 0.006 in must not enter beside a new ring"
	grooveMost   = 6 * units.Thou
	carBook      = "Suzuki Jimny service manual, 0.10 mm on a bore of 78 mm, for taper and ovality alike"
	carForm      = units.Millimetre / 10
)

// newRings adds the end gap to file new rings to, and what it opens to.
func (b *bench) newRings(s *sheet.Section) error {
	w := b.worn
	if !w.has {
		return nil
	}
	tenth := units.Thou / 10
	least := units.Length(math.Ceil(gapLeast*float64(w.unworn.Value/tenth))) * tenth // a ring is filed to no finer than that
	most := units.Length(gapMost) * w.unworn.Value
	opens := fits.GapChange(w.top.Value - w.unworn.Value)
	std := math.Pi * difference(w.top, w.unworn).Std
	w.newGap = units.WithStd(least+opens, std)
	s.Figures = append(s.Figures,
		sheet.Of("bore.new_gap", "new ring, least end gap below ring travel", units.Exact(least), sheet.Millimetre, sheet.Thou),
		sheet.Of("bore.new_gap_at_top", "which at the top of ring travel opens to", units.WithStd(least+opens, std), sheet.Millimetre, sheet.Thou))
	s.Add("A new ring filed to the least gap where the bore is unworn opens at the top", "g = 0.0035 D₀ + π (D − D₀)",
		fmt.Sprintf("%s + π × %s", sheet.Plain(least, sheet.Thou, 1), sheet.Plain(w.top.Value-w.unworn.Value, sheet.Thou, 2)), sheet.Show(units.WithStd(least+opens, std), sheet.Thou))
	s.Answer = append(s.Answer, fmt.Sprintf("A new ring filed to %s at the bottom would stand open by %s at the top of its travel, and its ends would work in and out at every stroke.", thouAnd(least), sheet.Show(units.WithStd(least+opens, std), sheet.Thou)))
	over := "within"
	if least+opens > most {
		over = "beyond"
	}
	s.Questions = append(s.Questions, fmt.Sprintf("Will the engine as it is used do with new rings in this bore? The gap of such a ring at the top is %s the %s at which a maker of rings speaks of an oversize bore; the table has what else is published. A slow engine that need only pump water may live with more than one that must start easily and keep its crankcase tight.", over, thouAnd(most)))
	return nil
}

// thouAnd writes a length in thou and millimetres.
func thouAnd(l units.Length) string {
	return fmt.Sprintf("%s (%s)", sheet.Plain(l, sheet.Thou, 1), sheet.Plain(l, sheet.Millimetre, 3))
}

// boreLimits sets what was found beside what is published or usual.
func (b *bench) boreLimits(s *sheet.Section) {
	w, p := b.worn, b.job.Piston
	t := sheet.Table{Title: "Beside what is published or usual; none of it is the maker's for this engine", Rows: [][]string{{"what", "here", "limit", "whose"}}}
	row := func(what string, here length, limit, whose string) {
		t.Rows = append(t.Rows, []string{what, sheet.Show(here, sheet.Thou), limit, whose})
	}
	thou := func(l units.Length) string { return sheet.Plain(l, sheet.Thou, 1) }
	two := difference(w.top, w.unworn).Std
	if w.has {
		wear, _, _ := w.survey.Wear(belowTravel) // was worked out above
		row("wear", units.WithStd(wear, two), "rebore over "+thou(units.Length(wearToRebore)*w.unworn.Value), periodBook+", in proportion")
		ovality, _ := w.survey.Ovality()
		row("ovality", units.WithStd(ovality, two), "rebore over "+thou(carForm), carBook)
		taper, _, _ := w.survey.Taper()
		row("taper", units.WithStd(taper, two), "rebore over "+thou(carForm), "the same, a car's that turns much faster")
		fitForRings(s, held{"wear", units.WithStd(wear, two), units.Length(wearToRebore) * w.unworn.Value},
			held{"ovality", units.WithStd(ovality, two), carForm}, held{"taper", units.WithStd(taper, two), carForm},
			held{"gap of a new ring at the top", w.newGap, units.Length(gapMost) * w.unworn.Value})
	}
	if p == nil {
		b.addLimits(s, t)
		return
	}
	gap := fmt.Sprintf("%s to %s", thou(units.Length(gapLeast)*w.unworn.Value), thou(units.Length(gapMost)*w.unworn.Value))
	if p.GapBelow != nil {
		row("end gap, below", *p.GapBelow, gap, makerOfRings)
	}
	if p.GapTop != nil {
		row("end gap, top", *p.GapTop, gap, "the same, which is for below ring travel")
	}
	if p.GrooveClearance != nil {
		s.Figures = append(s.Figures, sheet.Of("bore.groove_clearance", "ring in its groove, up and down", *p.GrooveClearance, sheet.Millimetre, sheet.Thou))
		row("ring in groove", *p.GrooveClearance, "below "+thou(grooveMost), armyManual)
		if p.GrooveClearance.Value >= grooveMost-2*p.GrooveClearance.Std || p.GrooveClearance.Value > 3*units.Thou {
			s.Questions = append(s.Questions, fmt.Sprintf("The top ring has %s up and down in its groove. Was that with the old ring or a new one? A groove worn to a wedge is trued for a wider ring, or new rings soon leak and break.", thouAnd(p.GrooveClearance.Value)))
		}
	}
	b.addLimits(s, t)
}

// A held is something found, to be held against a limit.
type held struct {
	what  string
	here  length
	limit units.Length
}

// fitForRings answers first, from the evidence alone: what is within the published
// limits, what is past them, and of what the measuring cannot tell.
func fitForRings(s *sheet.Section, found ...held) {
	var within, past, unsure []string
	for _, h := range found {
		text := fmt.Sprintf("the %s (%s against %s)", h.what, sheet.Plain(h.here.Value, sheet.Thou, 1), sheet.Plain(h.limit, sheet.Thou, 1))
		switch give := 2 * h.here.Std; {
		case h.here.Value+give <= h.limit:
			within = append(within, text)
		case h.here.Value-give > h.limit:
			past = append(past, text)
		case h.here.Value > h.limit:
			unsure = append(unsure, text+", past it as read")
		default:
			unsure = append(unsure, text+", within it as read")
		}
	}
	var parts []string
	for _, p := range [...]struct {
		lead string
		list []string
	}{{"past them: ", past}, {"the measuring cannot tell: ", unsure}, {"within them: ", within}} {
		if len(p.list) > 0 {
			parts = append(parts, p.lead+strings.Join(p.list, ", "))
		}
	}
	answer := "By the published limits in the table, none of them the maker's, the bore is fit for new rings in all that was measured; "
	switch {
	case len(past) > 0:
		answer = "By the published limits in the table, none of them the maker's, the bore is not fit for new rings as it is; "
	case len(unsure) > 0:
		answer = "Whether the bore is fit for new rings by the published limits in the table, none of them the maker's, is not settled; "
	}
	s.Answer = append([]string{answer + strings.Join(parts, "; ") + "."}, s.Answer...)
}

func (b *bench) addLimits(s *sheet.Section, t sheet.Table) {
	if len(t.Rows) > 1 {
		s.Tables = append(s.Tables, t)
	}
	s.Cautions = append(s.Cautions,
		"Ring ends are sharp and rings break: eye protection, and a cloth round them when they are sprung on or off. Ends that meet when hot score the bore; never fit a ring with less gap than its maker gives.",
		"Honing dust and paraffin burn and harm the lungs: wet, aired, and no flame. For a new piston or a liner follow the maker or a firm that answers for it.")
}
