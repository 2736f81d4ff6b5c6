package main

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// Places along the bore, as the survey names them.
const (
	topOfTravel = "top of ring travel"
	midTravel   = "middle"
	belowTravel = "below ring travel"
)

// A wornBore is what was found of bore, piston and rings.
type wornBore struct {
	survey *fits.Survey // nil where one diameter was given
	unworn length       // below ring travel, or the one diameter
	top    length       // mean at the top of ring travel
	least  units.Length
	most   units.Length
	std    units.Length
	has    bool   // readings below and at the top
	newGap length // of a new ring at the top of its travel
}

// boreSection answers whether the bore is fit for new rings, and whether ring
// gaps and gauge agree.
func (b *bench) boreSection() (*sheet.Section, error) {
	if b.job.Bore == nil {
		if b.job.Piston != nil {
			return nil, b.file.Errorf("piston", "a piston and no bore: give [bore], with diameter or readings at three heights")
		}
		return nil, nil
	}
	w, err := b.surveyBore()
	if err != nil {
		return nil, err
	}
	if !w.has && b.job.Piston == nil {
		return nil, nil
	}
	b.worn = w
	s := &sheet.Section{Number: 13, Key: "bore", Title: "Bore, piston and rings"}
	for _, step := range [...]func(*sheet.Section) error{b.boreWear, b.pistonPlay, b.ringGaps, b.newRings, b.hotParts} {
		if err := step(s); err != nil {
			return nil, err
		}
	}
	b.boreLimits(s)
	return s, nil
}

// surveyBore takes the readings of the bore by place and way.
func (b *bench) surveyBore() (*wornBore, error) {
	o := b.job.Bore
	var spots []fits.Spot
	for _, p := range [...]struct {
		list         lengths
		station, way string
	}{
		{o.TopFrontBack, topOfTravel, "front-back"}, {o.TopSideSide, topOfTravel, "side-side"},
		{o.MiddleFrontBack, midTravel, "front-back"}, {o.MiddleSideSide, midTravel, "side-side"},
		{o.BelowFrontBack, belowTravel, "front-back"}, {o.BelowSideSide, belowTravel, "side-side"},
	} {
		b.doubtPair("bore", p.station+", "+p.way, p.list, o.GoodTo)
		for _, d := range p.list {
			spots = append(spots, fits.Spot{Station: p.station, Way: p.way, Size: d})
		}
	}
	if len(spots) == 0 {
		if o.Diameter == nil {
			return nil, b.file.Errorf("bore", "no readings: give diameter, or readings such as middle_front_back")
		}
		if !(o.Diameter.Value > 0) {
			return nil, b.file.Errorf("bore.diameter", "%v: want more than 0 mm", o.Diameter.Value)
		}
		d := *o.Diameter
		return &wornBore{unworn: d, top: d, least: d.Value, most: d.Value, std: d.Std}, nil
	}
	v, err := fits.NewSurvey(o.GoodTo, spots...)
	if err != nil {
		return nil, b.file.Errorf(b.firstOf("bore.top_front_back", "bore"), "%v", err)
	}
	w := &wornBore{survey: &v, least: v.Least().Size, most: v.Most().Size, std: o.GoodTo}
	below, errBelow := v.Mean(belowTravel)
	top, errTop := v.Mean(topOfTravel)
	w.has = errBelow == nil && errTop == nil
	if errBelow != nil {
		below = w.least
	}
	if errTop != nil {
		top = w.most
	}
	w.unworn, w.top = units.WithStd(below, o.GoodTo), units.WithStd(top, o.GoodTo)
	return w, nil
}

// doubtPair asks whether readings of one place are right that lie further
// apart than they are good to, by as much as six times.
func (b *bench) doubtPair(section, where string, list lengths, goodTo units.Length) {
	if len(list) < 2 || !(goodTo > 0) {
		return
	}
	if least, most := slices.Min(list), slices.Max(list); float64(most-least) > 6*math.Sqrt2*float64(goodTo) {
		b.doubt(section, fmt.Sprintf("%s: the readings from %v to %v lie further apart than they are good to. Is one of them a slip of the pen?", where, least, most))
	}
}

// boreWear adds wear, ovality and taper, and what a rebore would clean up at.
func (b *bench) boreWear(s *sheet.Section) error {
	w := b.worn
	if !w.has {
		return nil
	}
	v := w.survey
	wear, worst, err := v.Wear(belowTravel)
	if err != nil {
		return b.file.Errorf("bore", "%v", err)
	}
	for _, p := range [...]struct{ key, station string }{{"top", topOfTravel}, {"middle", midTravel}, {"below", belowTravel}} {
		if d, err := v.Mean(p.station); err == nil {
			s.Figures = append(s.Figures, sheet.Of("bore."+p.key, "bore, "+p.station+", mean of both ways", units.WithStd(d, w.std), sheet.Millimetre, sheet.Inch))
		}
	}
	two := difference(w.top, w.unworn).Std // of the difference of two readings
	ovality, where := v.Ovality()
	taper, large, small := v.Taper()
	wide := func(key, name string, d units.Length) {
		s.Figures = append(s.Figures, sheet.Of("bore."+key, name, units.WithStd(d, two), sheet.Millimetre, sheet.Thou))
	}
	wide("wear", "wear, the worst place against below ring travel", wear)
	wide("ovality", "ovality, the worst, "+where, ovality)
	wide("taper", "taper, "+large+" less "+small, taper)
	s.Figures = append(s.Figures,
		sheet.Of("bore.cleans_up_least", "rebore would clean up at, worn alike all round", units.WithStd(worst.Size, w.std), sheet.Millimetre, sheet.Inch),
		sheet.Of("bore.cleans_up_most", "rebore would clean up at, all the wear on one side", units.WithStd(w.unworn.Value+2*wear, 2*two), sheet.Millimetre, sheet.Inch))
	s.Add("Wear: the worst place, against the mean below ring travel, where nothing rubs; on the diameter", "w = D − D₀",
		fmt.Sprintf("%s − %s", sheet.Plain(worst.Size, sheet.Inch, 5), sheet.Plain(w.unworn.Value, sheet.Inch, 5)), sheet.Show(units.WithStd(wear, two), sheet.Thou)+", "+worst.Station+", "+worst.Way)
	s.Add("A rebore on the old axis cleans up at the worst diameter if the bore is worn alike on both sides, and at D₀ + 2 w if all of it is on one side: a bore gauge does not tell which", "D₀ + w ... D₀ + 2 w",
		"", fmt.Sprintf("%s to %s", sheet.Plain(worst.Size, sheet.Inch, 4), sheet.Plain(w.unworn.Value+2*wear, sheet.Inch, 4)))
	s.Answer = append(s.Answer, fmt.Sprintf("The bore is worn by %s on the diameter at the %s, %s; it is oval by %s there at most and tapered by %s.",
		sheet.Show(units.WithStd(wear, two), sheet.Thou), worst.Station, worst.Way, sheet.Show(units.WithStd(ovality, two), sheet.Thou), sheet.Show(units.WithStd(taper, two), sheet.Thou)))
	b.drawBore(s)
	return nil
}

// drawBore draws the range of diameters at each height over the unworn one.
func (b *bench) drawBore(s *sheet.Section) {
	w := b.worn
	var zones []picture.Zone
	for _, station := range w.survey.Stations() {
		z := picture.Zone{Name: station, Sure: 2 * w.std.Inches()}
		first := true
		for _, p := range w.survey.Places() {
			if p.Station != station {
				continue
			}
			if first {
				z.Low, z.High, first = p.Size.Inches(), p.Size.Inches(), false
			}
			z.Low, z.High = min(z.Low, p.Size.Inches()), max(z.High, p.Size.Inches())
		}
		zones = append(zones, z)
	}
	s.Pictures = append(s.Pictures, sheet.Picture{Title: "The bore from the top down: least and greatest diameter", Says: picture.ZonesSay("in", 4, zones...),
		SVG: picture.Zones("in", 4, w.unworn.Value.Inches(), "unworn", zones...).SVG()})
}
