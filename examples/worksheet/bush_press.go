package main

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// reamStock is what is left in the bore for the reamer before the bush closes in
// (common practice, no source: 4 to 10 thou).
const reamStock = 6 * units.Thou

var (
	newtons     = sheet.Unit[units.Force]{Name: "N", One: units.Newton}
	poundsForce = sheet.Unit[units.Force]{Name: "lbf", One: units.PoundForce}
	celsius     = "%.0f °C (%.0f °F)"
)

// turn adds the outside to turn the bush to.
func (u *bush) turn() error {
	if len(u.Hole) == 0 {
		return nil
	}
	if !(u.HoleGoodTo > 0) || !(u.b.job.Bushes.NewPartGoodTo > 0) {
		return u.b.file.Errorf(u.b.firstOf(u.at+".hole_good_to", "bushes.new_part_good_to", u.at+".hole"), "a bush for a hole needs both hole_good_to and bushes.new_part_good_to, more than 0 mm: how well the hole and the new bush are measured")
	}
	var spots []fits.Spot
	for i, d := range u.Hole {
		spots = append(spots, fits.Spot{Station: "hole", Way: fmt.Sprint(i + 1), Size: d})
	}
	survey, err := fits.NewSurvey(u.HoleGoodTo, spots...)
	if err != nil {
		return u.fail("hole", "%v", err)
	}
	mean, err := survey.Mean("hole")
	if err != nil {
		return u.fail("hole", "%v", err)
	}
	u.b.doubtPair("bushes", "hole of the "+u.Name, u.Hole, u.HoleGoodTo)
	u.part, u.hole = survey.Part(), units.WithStd(mean, u.HoleGoodTo)
	if err := u.wantPress(); err != nil {
		return err
	}
	return u.outside()
}

// wantPress takes the interference wanted as given, or by the practice of the
// period.
func (u *bush) wantPress() error {
	switch {
	case u.LeastPress != nil && u.MostPress != nil:
		if !(*u.LeastPress > 0 && *u.MostPress >= *u.LeastPress) {
			return u.fail("interference_least", "%v to %v: want more than 0 mm, the lesser first", *u.LeastPress, *u.MostPress)
		}
		u.press = fits.Clearance{Min: -*u.MostPress, Max: -*u.LeastPress}
		return nil
	case u.LeastPress != nil || u.MostPress != nil:
		return u.fail("interference_least", "give interference_least and interference_most, or neither")
	}
	var err error
	if u.press, err = fits.PressAllowance(u.hole.Value); err != nil {
		return u.fail("hole", "%v", err)
	}
	u.s.Add("Interference for a bush in "+sheet.Plain(u.hole.Value, sheet.Inch, 4)+", by the practice of the period (Jones, Turning and Boring)", "δ = 0.001 d ... 0.0025 d", "",
		thouRange(fits.Clearance{Min: -u.press.Max, Max: -u.press.Min}))
	return nil
}

// outside works out the limits, or where no size can be promised the one to
// aim at.
func (u *bush) outside() error {
	good := u.b.job.Bushes.NewPartGoodTo
	m, err := u.part.ShaftFor(u.press, good)
	var none *fits.NoRoomError
	zone := picture.Zone{Name: u.Name + " bush", Sure: 2 * good.Millimetres(), Cut: true}
	switch {
	case errors.As(err, &none):
		u.out = units.WithStd(none.Target, good)
		zone.Low, zone.High = none.Target.Millimetres(), none.Target.Millimetres()
		u.figure("outside", "outside to aim at", units.Exact(none.Target))
		u.better(none)
	case err != nil:
		return u.fail("hole", "%v", err)
	default:
		u.out = units.WithStd(m.Target, good)
		zone.Low, zone.High = m.Min.Millimetres(), m.Max.Millimetres()
		u.figure("outside", "outside, middle of the limits", units.Exact(m.Target))
		u.figure("outside_least", "outside, smallest", units.Exact(m.Min))
		u.figure("outside_most", "outside, largest", units.Exact(m.Max))
	}
	over := difference(u.out, u.hole)
	u.figure("interference", "interference with that, to the mean of the hole", over)
	u.s.Add("Outside of the "+u.Name+" bush: half way between the least and the greatest that the hole as it is allows", "(B₁ + δ₁ + B₂ + δ₂)/2",
		fmt.Sprintf("B = %s to %s, δ = %s", sheet.Plain(u.part.Least, sheet.Inch, 4), sheet.Plain(u.part.Most, sheet.Inch, 4), thouRange(fits.Clearance{Min: -u.press.Max, Max: -u.press.Min})),
		fmt.Sprintf("%s, so that it is %s larger than the mean of the hole", sheet.Plain(u.out.Value, sheet.Inch, 4), sheet.Show(over, sheet.Thou)))
	hole := picture.Zone{Name: u.Name + " hole", Low: u.part.Least.Millimetres(), High: u.part.Most.Millimetres(), Sure: 2 * u.HoleGoodTo.Millimetres()}
	u.s.Pictures = append(u.s.Pictures, sheet.Picture{Title: "Hole and bush, " + u.Name + ": where the sizes lie", Says: picture.ZonesSay("mm", 3, hole, zone),
		SVG: picture.Zones("mm", 3, u.hole.Value.Millimetres(), "mean of the hole", hole, zone).SVG()})
	return nil
}

// better says that the hole is to be measured better.
func (u *bush) better(none *fits.NoRoomError) {
	if u.s.Improve != "" {
		u.s.Improve += "; the same goes for the " + u.Name
		return
	}
	u.s.Improve = fmt.Sprintf("the hole of the %s: what gauge and micrometer may be out, %s, and the form of the hole, %s, are more than the range of %s that the interference may vary, so that no size can be promised and the one given is to be tried for. A plug turned to fit the hole and measured by micrometer does better than a telescopic gauge",
		u.Name, sheet.Plain(2*none.Guard, sheet.Thou, 1), sheet.Plain(none.Form, sheet.Thou, 1), sheet.Plain(u.press.Spread(), sheet.Thou, 1))
}

// joint is the bush in its housing at an interference.
func (u *bush) joint(hole, out, housing, bored units.Length) (fits.Press, error) {
	hub, err := fits.FindMaterial(u.HousingMaterial, "")
	if err != nil {
		return fits.Press{}, u.fail("housing_material", "%v", err)
	}
	shaft, err := fits.FindMaterial(u.BushMaterial, "")
	if err != nil {
		return fits.Press{}, u.fail("bush_material", "%v", err)
	}
	return fits.NewPress(fits.Joint{Diameter: hole, Interference: out - hole, Length: u.Length.Value, HubOutside: housing, ShaftBore: bored, Hub: hub, Shaft: shaft})
}

// pressIn adds how far the bush closes in, and what it takes to press it.
func (u *bush) pressIn() error {
	if len(u.Hole) == 0 {
		return nil
	}
	if u.HousingOutside == nil || u.Length == nil || u.HousingMaterial == "" || u.BushMaterial == "" {
		u.s.Questions = append(u.s.Questions, fmt.Sprintf("%s: how far the bush closes in needs housing_outside, length, housing_material and bush_material too. Were they measured?", capital(u.Name)))
		return nil
	}
	hole, out, housing, bored := u.hole.Value, u.out.Value, u.HousingOutside.Value, u.bored
	var fail error
	res, err := units.Propagate(func() units.Length {
		p, err := u.joint(hole, out, housing, bored)
		fail = err
		if err != nil {
			return 0
		}
		return p.ClosingIn()
	}, units.VaryReading("hole", &hole, u.hole), units.VaryReading("outside of the bush", &out, u.out),
		units.VaryReading("outside of the housing", &housing, *u.HousingOutside), units.StopOn(&fail))
	if err != nil {
		return u.fail("housing_outside", "%v", err)
	}
	u.shuts = res.Reading()
	u.figure("bored", "bore of the bush before pressing", units.Exact(u.bored))
	u.figure("closes", "bore closes in by", u.shuts)
	p, err := u.joint(u.hole.Value, u.out.Value, u.HousingOutside.Value, u.bored)
	if err != nil {
		return u.fail("housing_outside", "%v", err)
	}
	u.s.Add("Pressure between "+u.Name+" bush and housing, and how far the bore closes in (Lamé)", "p = δ/[d ((sh + νh)/Eh + (ss − νs)/Es)],  Δ = 2 p R² di/((R² − ri²) Es)",
		fmt.Sprintf("p = %.0f MPa, di = %s, δ = %s", p.Pressure().Megapascals(), sheet.Plain(u.bored, sheet.Inch, 4), sheet.Plain(p.Joint().Interference, sheet.Thou, 2)),
		sheet.Show(u.shuts, sheet.Thou))
	return u.pushAndMargin(p)
}

// pushAndMargin adds the force of the press and what the parts bear at the
// greatest interference that there may be.
func (u *bush) pushAndMargin(p fits.Press) error {
	low, high := pressFriction()
	least, err := p.Force(low)
	if err != nil {
		return u.fail("length", "%v", err)
	}
	most, err := p.Force(high)
	if err != nil {
		return u.fail("length", "%v", err)
	}
	u.s.Figures = append(u.s.Figures,
		sheet.Of(u.key+"_push_least", u.Name+": force to press it home, least", units.Exact(roughly(least)), newtons, poundsForce),
		sheet.Of(u.key+"_push_most", u.Name+": force to press it home, most", units.Exact(roughly(most)), newtons, poundsForce))
	u.s.Add("Force to press the "+u.Name+" bush home, the last of the way", "F = μ p π d L",
		fmt.Sprintf("μ = %.2f ... %.2f, the whole range found published for pressed parts, mostly of steel", low, high), fmt.Sprintf("%s to %s", sheet.Plain(roughly(least), newtons, 0), sheet.Plain(roughly(most), newtons, 0)))
	u.yields(p)
	return nil
}

// yields adds the interference at which housing or bush begins to yield, by the
// greatest shear stress, and asks where measuring lets it come so far.
func (u *bush) yields(p fits.Press) {
	over := p.Joint().Interference
	tightest := u.out.Value - u.part.Least + 2*difference(u.out, u.hole).Std
	first := units.Length(math.Inf(1)) // the interference at which the weaker of the two yields
	for _, m := range [...]struct {
		key, what, material string
		of                  func() (float64, error)
		ask                 string
	}{
		{"housing_yields", "housing", u.HousingMaterial, p.HubMargin, "Would a looser fit do, and a pin or a screw to keep it from turning? Is there a crack or a thin place?"},
		{"bush_yields", "bush", u.BushMaterial, p.ShaftMargin, "It would then close in for good, by more than is said here, and hold less. Would a looser fit do, or a harder bronze?"},
	} {
		margin, err := m.of()
		if err != nil {
			continue // no yield stress in the tables
		}
		exact := over * units.Length(margin)
		at := units.Length(math.Round(float64(exact/units.Thou)*10)) * units.Thou / 10
		first = min(first, exact)
		u.figure(m.key, m.what+" yields from an interference of", units.Exact(at))
		if over > exact {
			u.gives = u.gives || m.what == "bush"
			u.beyond = append(u.beyond, fmt.Sprintf("the %s, of %s, is reckoned to yield from %s of interference", m.what, m.material, sheet.Plain(at, sheet.Thou, 1)))
		}
		if tightest > exact {
			u.s.Questions = append(u.s.Questions, fmt.Sprintf("%s: the %s, of %s as the tables have it, yields from %s of interference on, and with the measuring as it is there may be %s. %s",
				capital(u.Name), m.what, m.material, sheet.Plain(at, sheet.Thou, 1), sheet.Plain(tightest, sheet.Thou, 1), m.ask))
		}
	}
	u.elasticUpTo(first)
}

// elasticUpTo adds the outside at which the weaker of housing and bush begins to
// yield, down to a tenth of a thou, so that a bush turned to it is still below.
func (u *bush) elasticUpTo(first units.Length) {
	if math.IsInf(float64(first), 0) {
		return
	}
	u.elastic = down(u.hole.Value+first, units.Thou/10)
	u.figure("outside_elastic", "outside, largest below yield, by the mean of the hole", units.Exact(u.elastic))
	u.s.Add("Largest outside of the "+u.Name+" bush at which neither bush nor housing yields, by the mean of the hole and down to a tenth of a thou", "D + δy",
		fmt.Sprintf("%s + %s", sheet.Plain(u.hole.Value, sheet.Inch, 5), sheet.Plain(first, sheet.Thou, 2)), sheet.Plain(u.elastic, sheet.Inch, 4))
}

// down rounds down to a step, for a size that must not be passed; what is a step
// but for the last digits of the computer stays.
func down(l, step units.Length) units.Length {
	return units.Length(math.Floor(float64(l/step)+1e-6)) * step
}

// pressFriction is the range of the published coefficients of pressed joints.
func pressFriction() (low, high float64) {
	low = math.Inf(1)
	for _, f := range fits.Frictions() {
		if !f.Shrink {
			low, high = min(low, f.Low), max(high, f.High)
		}
	}
	return low, high
}

// roughly rounds what is only known roughly, to two figures.
func roughly(f units.Force) units.Force {
	if !(f > 0) {
		return f
	}
	step := units.Force(math.Pow(10, math.Floor(math.Log10(float64(f)))-1))
	return units.Force(math.Round(float64(f/step))) * step
}

// warmed adds what is left of the interference at working heat, and how warm
// the housing must be for the bush to drop in.
func (u *bush) warmed() error {
	warm := u.b.job.Bushes.Warm
	if warm == nil || u.shuts.Value == 0 {
		return nil
	}
	p, err := u.joint(u.hole.Value, u.out.Value, u.HousingOutside.Value, u.bored)
	if err != nil {
		return u.fail("housing_outside", "%v", err)
	}
	hot, err := p.At(*warm)
	if err != nil {
		u.s.Questions = append(u.s.Questions, fmt.Sprintf("%s: at "+celsius+" %v. Will it turn or wander? A pin or a flange would hold it.", capital(u.Name), warm.Celsius(), warm.Fahrenheit(), err))
		return nil
	}
	std := difference(u.out, u.hole).Std
	u.figure("interference_warm", fmt.Sprintf("interference left at %.0f °C", warm.Celsius()), units.WithStd(hot.Joint().Interference, std))
	u.s.Add(fmt.Sprintf("Interference of the %s bush with all of it at %.0f °C", u.Name, warm.Celsius()), "δ(t) = δ + d (αs − αh)(t − 20 °C)",
		fmt.Sprintf("αs = %.1f, αh = %.1f (10⁻⁶/K)", p.Joint().Shaft.Expansion.MicrometresPerMetreKelvin(), p.Joint().Hub.Expansion.MicrometresPerMetreKelvin()), sheet.Plain(hot.Joint().Interference, sheet.Thou, 2))
	return u.dropIn(p)
}

// dropIn adds how warm the housing must be for the bush to go in by hand: the
// bush at 20 °C, or where that is too warm for the housing, out of a freezer.
func (u *bush) dropIn(p fits.Press) error {
	warmest, freezer := "plain steel and iron", limitOf(fits.ChillLimits(), "household freezer")
	if strings.Contains(u.HousingMaterial, "aluminium") {
		warmest = "heat-treated aluminium"
	}
	limit := limitOf(fits.HeatLimits(), warmest)
	pair, err := fits.NewPair(u.part.Least, p.Joint().Hub.Expansion, u.out.Value+2*u.out.Std, p.Joint().Shaft.Expansion)
	if err != nil {
		return u.fail("hole", "%v", err)
	}
	for _, cold := range [...]struct {
		at   units.Temperature
		name string
	}{{fits.ReferenceTemperature(), "at 20 °C"}, {freezer, fmt.Sprintf("out of a freezer at %.0f °C", freezer.Celsius())}} {
		t, err := pair.HeatHole(cold.at, units.Thou)
		if err != nil || t > limit {
			continue
		}
		f := sheet.Of(u.key+"_warm_housing", u.Name+": housing so warm that the bush, "+cold.name+", drops in", units.Exact(math.Round(t.Celsius())), sheet.Unit[float64]{Name: "°C", One: 1})
		f.Also = sheet.Plain(t.Fahrenheit(), sheet.Unit[float64]{Name: "°F", One: 1}, 0)
		u.s.Figures, u.heated = append(u.s.Figures, f), true
		u.s.Add("Housing of the "+u.Name+" so warm that the bush, "+cold.name+", drops in with a thou to spare", "Th = 20 °C + (d (1 + αs (Ts − 20 °C)) + e − D)/(αh D)", "", fmt.Sprintf(celsius, t.Celsius(), t.Fahrenheit()))
		return nil
	}
	u.s.Questions = append(u.s.Questions, fmt.Sprintf("%s: the housing would have to be warmer than the %.0f °C it should see for the bush to drop in, even out of a freezer. Is it to be pressed, then, both parts at one temperature?", capital(u.Name), limit.Celsius()))
	return nil
}

// limitOf finds the limit of a kind of part or means by how its name begins. What is
// not listed stands no warming and no chilling.
func limitOf(list []fits.HeatLimit, what string) units.Temperature {
	for _, l := range list {
		if strings.HasPrefix(l.What, what) {
			return l.Limit
		}
	}
	return fits.ReferenceTemperature()
}

// say puts the answer of one bush into a sentence.
func (u *bush) say() {
	if u.out.Value == 0 {
		return
	}
	text := fmt.Sprintf("%s: turn the outside to %s (%s), which is %s larger than the hole", capital(u.Name), sheet.Plain(u.out.Value, sheet.Inch, 4), sheet.Plain(u.out.Value, sheet.Millimetre, 3), sheet.Show(difference(u.out, u.hole), sheet.Thou))
	if u.shuts.Value > 0 {
		text += fmt.Sprintf("; bore it to %s first, it closes in by %s", sheet.Plain(u.bored, sheet.Inch, 4), sheet.Show(u.shuts, sheet.Thou))
	}
	text += fmt.Sprintf("; when it is home, ream to %s to %s (%s to %s).", sheet.Plain(u.ream.Min, sheet.Inch, 4), sheet.Plain(u.ream.Max, sheet.Inch, 4), sheet.Plain(u.ream.Min, sheet.Millimetre, 3), sheet.Plain(u.ream.Max, sheet.Millimetre, 3))
	if len(u.beyond) > 0 {
		below := fmt.Sprintf("to stay below yield turn it to %s (%s) or less", sheet.Plain(u.elastic, sheet.Inch, 4), sheet.Plain(down(u.elastic, units.Micrometre), sheet.Millimetre, 3))
		closes := "What the bore closes in by no longer holds at the size above."
		if u.gives {
			closes = "What the bore closes in by is then a lower bound."
		}
		text += fmt.Sprintf(" That is the practice of its day, or the range in the file; but %s: %s, by the mean of the hole. %s A looser range can be set with interference_least and interference_most.", strings.Join(u.beyond, ", and "), below, closes)
		u.s.Scribe = append(u.s.Scribe, fmt.Sprintf("%s: %s is beyond yield as reckoned; %s, and measure the hole again before the last cut.", capital(u.Name), sheet.Plain(u.out.Value, sheet.Inch, 4), below))
	}
	u.s.Answer = append(u.s.Answer, text)
	u.s.Scribe = append(u.s.Scribe, fmt.Sprintf("%s: give the bush a lead of about 5°, keep it square, mark where the oil hole comes, and drill that after pressing and before reaming.", capital(u.Name)))
}
