package main

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// What runs in a bush, as the file says it, and the clearance by habit.
var runs = [...]struct{ said, custom string }{
	{"gudgeon pin", "gudgeon pin in a bronze bush"},
	{"splash", "journal in a plain bush, splash or oil-mist"},
	{"well oiled", "journal in a plain bush, well oiled and slow"},
}

// wantPlay takes the clearance wanted as given, or by habit for what runs in
// the bush.
func (u *bush) wantPlay() error {
	if u.Journal == nil {
		return u.fail("journal", "not given: want the pin or journal that runs in it")
	}
	if !(u.Journal.Value > 0) {
		return u.fail("journal", "%v: want more than 0 mm", u.Journal.Value)
	}
	switch {
	case u.LeastPlay != nil && u.MostPlay != nil:
		if !(*u.LeastPlay > 0 && *u.MostPlay >= *u.LeastPlay) {
			return u.fail("clearance_least", "%v to %v: want more than 0 mm, the lesser first", *u.LeastPlay, *u.MostPlay)
		}
		u.play, u.custom = fits.Clearance{Min: *u.LeastPlay, Max: *u.MostPlay}, "as the file says"
		return nil
	case u.LeastPlay != nil || u.MostPlay != nil:
		return u.fail("clearance_least", "give clearance_least and clearance_most, or neither")
	}
	for _, r := range runs {
		if r.said != u.Runs {
			continue
		}
		all := fits.Customs()
		c := all[slices.IndexFunc(all[:], func(c fits.Custom) bool { return c.What == r.custom })]
		u.play = c.Clearance(u.Journal.Value)
		u.custom = fmt.Sprintf("%s, %.1f to %.1f thou to the inch: %s", c.What, 1000*c.Low, 1000*c.High, c.Source)
		return nil
	}
	return u.fail("runs", "%q: want gudgeon pin, splash or well oiled; or give clearance_least and clearance_most", u.Runs)
}

// playNow adds the clearance that the old bush has.
func (u *bush) playNow() error {
	if len(u.OldBore) == 0 {
		return nil
	}
	if !(u.OldBoreGoodTo > 0) {
		return u.fail("old_bore_good_to", "not given: want how well the old bore was measured, more than 0 mm")
	}
	most, least := slices.Max(u.OldBore), slices.Min(u.OldBore)
	if !(least > 0) {
		return u.fail("old_bore", "%v: want more than 0 mm", least)
	}
	u.now = difference(units.WithStd(most, u.OldBoreGoodTo), *u.Journal)
	u.figure("clearance", "clearance now, the slackest way", u.now)
	if most != least {
		u.figure("clearance_best", "clearance now, the closest way", difference(units.WithStd(least, u.OldBoreGoodTo), *u.Journal))
	}
	u.s.Add("Clearance of the old "+u.Name+" bush, on the diameter", "c = bore − journal",
		fmt.Sprintf("%s − %s", sheet.Plain(most, sheet.Inch, 4), sheet.Value(*u.Journal, sheet.Inch)), sheet.Show(u.now, sheet.Thou))
	u.s.Answer = append(u.s.Answer, fmt.Sprintf("%s: the clearance now is %s; %s is wanted (%s).", capital(u.Name), sheet.Show(u.now, sheet.Thou), thouRange(u.play), u.custom)+u.judgePlay())
	return u.leaks(difference(units.WithStd((most+least)/2, u.OldBoreGoodTo), *u.Journal))
}

// judgePlay says how the clearance lies to what is wanted, as far as the
// measuring tells.
func (u *bush) judgePlay() string {
	switch half := 2 * u.now.Std; {
	case u.now.Value < 0:
		u.s.Questions = append(u.s.Questions, fmt.Sprintf("%s: the journal measures larger than the bore it runs in. Is one of the readings a slip?", capital(u.Name)))
		return " That cannot be: see the question below."
	case u.now.Value-half > u.play.Max:
		return " That is more than is usual, by more than the measuring may be out."
	case u.now.Value <= u.play.Max:
		return " That is no more than is usual."
	}
	return " Whether that is more than is usual the measuring cannot tell."
}

// leaks adds how much more gets past the worn bush, where the crankcase has to
// hold pressure.
func (u *bush) leaks(mean length) error {
	if u.b.job.Engine.Kind != ignition.SmallTwoStroke || u.Runs == "gudgeon pin" || !(mean.Value > 2*mean.Std) || len(u.Hole) == 0 {
		return nil
	}
	was := u.play.Mean()
	var times [3]float64 // as measured, at the least and at the most that it may be
	for i, c := range [3]units.Length{mean.Value, mean.Value - 2*mean.Std, mean.Value + 2*mean.Std} {
		var err error
		if times[i], err = fits.LeakRatio(c, was); err != nil {
			return u.fail("old_bore", "%v", err)
		}
	}
	between := fmt.Sprintf("%s to %s by what the measuring may be out", few(times[1]), few(times[2]))
	u.s.Figures = append(u.s.Figures, sheet.Of(u.key+"_leaks", u.Name+": leaks now, times what it should", units.Exact(times[0]), sheet.Number).Noted(between))
	u.s.Add("What gets past a plain bush goes by the cube of the clearance (mean of both ways, against the middle of what is wanted)", "Q/Q₀ = (c/c₀)³",
		fmt.Sprintf("(%s / %s)³", sheet.Value(mean, sheet.Thou), sheet.Plain(was, sheet.Thou, 2)), few(times[0])+" times, "+between)
	u.s.Answer = append(u.s.Answer, fmt.Sprintf("%s: as a seal of the crankcase the old bush leaks some %s times what a new one would (%s).", capital(u.Name), few(times[0]), between))
	return nil
}

// few writes a number that is only known roughly, in two figures.
func few(x float64) string {
	if x < 9.95 {
		return fmt.Sprintf("%.1f", x)
	}
	return fmt.Sprintf("%.0f", x)
}

// reamTo adds what to ream to, once the bush is home.
func (u *bush) reamTo() error {
	if len(u.Hole) == 0 {
		return nil
	}
	u.ream = fits.Clearance{Min: u.Journal.Value + u.play.Min, Max: u.Journal.Value + u.play.Max}
	u.bored = u.ream.Min - reamStock
	u.figure("ream_least", "ream to, smallest", units.WithStd(u.ream.Min, u.Journal.Std))
	u.figure("ream_most", "ream to, largest", units.WithStd(u.ream.Max, u.Journal.Std))
	u.s.Add("Ream the "+u.Name+" bush when it is home", "D = journal + c",
		fmt.Sprintf("%s + %s", sheet.Value(*u.Journal, sheet.Inch), thouRange(u.play)), fmt.Sprintf("%s to %s", sheet.Plain(u.ream.Min, sheet.Inch, 4), sheet.Plain(u.ream.Max, sheet.Inch, 4)))
	if guard := 2 * units.Length(math.Hypot(float64(u.Journal.Std), float64(u.HoleGoodTo))); 2*guard > u.play.Spread() {
		ask := fmt.Sprintf("%s: the range to ream to is %s wide, which is finer than a gauge good to %s can tell. Will you finish it by trial, with the journal itself or with a plug turned to a size the micrometer measures?",
			capital(u.Name), sheet.Plain(u.play.Spread(), sheet.Thou, 2), sheet.Plain(u.HoleGoodTo, sheet.Thou, 1))
		if u.Runs == "gudgeon pin" {
			ask += " A pin that is right goes through clean and dry under the thumb (common practice, no source)."
		}
		u.s.Questions = append(u.s.Questions, ask)
	}
	return nil
}

// thouRange writes a range in thou and millimetres.
func thouRange(c fits.Clearance) string {
	return fmt.Sprintf("%.1f to %.1f thou (%.3f to %.3f mm)", c.Min.Thou(), c.Max.Thou(), c.Min.Millimetres(), c.Max.Millimetres())
}
