package springsheet

import (
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// drum writes what was found for the rope drum.
func (w *writer) drum(h *Drummed) {
	s, works := h.chosen()
	if works {
		w.drumAnswer(h, s)
	} else {
		w.first("Rope drum: none of the strips on offer will do.")
	}
	for _, c := range h.Ranked {
		w.answer(h.verdict(c) + w.shortOf(h, c))
	}
	w.trust(springs.PowerSpring)
	if s.fits() {
		w.drumDemand(h, s)
	}
	for i := range h.Strips {
		w.stripFigures(h, &h.Strips[i], i+1)
	}
	if works {
		w.drumChosen(h, s)
		w.drumMake(h, s)
	}
	w.oldStrip(h)
	w.drumAsk(h)
	w.drawDrum(h)
}

// drumAnswer is the short answer.
func (w *writer) drumAnswer(h *Drummed, s *Stripped) {
	win, on := h.window(s.Choice, h.Travel, s.Choice.Strength.Least), h.WindOn()
	text := fmt.Sprintf("Rope drum: take strip %s. With the rope home wind on %s first, %.1f at least and %.1f at most; the rope right out winds it %.1f turns further, and %.1f are left.",
		s.Name, turnsOf(on), win.least.Turns(), win.most.Turns(), h.Travel.Turns(), h.Set.Spare)
	if s.Choice.Tight {
		text = fmt.Sprintf("Rope drum: strip %s works on paper, wound on %.2f turns with the rope home, but so close to its own strength that it may set or break. Ask for another before you settle for it.", s.Name, s.Choice.Preload.Turns())
	}
	w.first(text)
}

// turnsOf writes turns for a hand that counts them.
func turnsOf(a units.Angle) string {
	n := a.Turns()
	if math.Abs(2*n-math.Round(2*n)) > 1e-9 {
		return fmt.Sprintf("%.2f turns", n)
	}
	return fmt.Sprintf("%g turns", math.Round(2*n)/2)
}

// verdict is the reason of a choice, with the pull that the hand feels.
func (h *Drummed) verdict(c springs.Choice[springs.Barrel]) string {
	text := fmt.Sprintf("Strip %s %s", c.Offer, c.Reason)
	if !c.Works {
		return text + "."
	}
	pull := h.pull(c.AtFull)
	text += fmt.Sprintf(". At the rope that is %.0f N (%.1f lbf) right out", pull.Newtons(), pull.PoundsForce())
	best := h.Ranked[0]
	if c.Offer == best.Offer {
		return text + h.asSet(best)
	}
	return text + fmt.Sprintf(", %.1f times the pull of %s.", float64(c.AtFull/best.AtFull), best.Offer)
}

// asSet says of the best strip what it does wound on as the answer has it, when that
// is more than the least, and how near its strength that comes.
func (h *Drummed) asSet(c springs.Choice[springs.Barrel]) string {
	text := "."
	if on := h.WindOn(); on > c.Preload {
		pull := h.pull(h.Set.AtFull.Wind)
		text += fmt.Sprintf(" Wound on %s it has %.0f N mm and %.0f MPa right out, %.1f N (%.1f lbf) at the rope.", turnsOf(on), h.Set.AtFull.Wind.NewtonMillimetres(), h.Set.Stress.Megapascals(), pull.Newtons(), pull.PoundsForce())
	}
	text += fmt.Sprintf(" That stress is %.0f %% of its least strength", 100*float64(h.Set.Stress/c.Strength.Least))
	if share, source, err := c.Spring.Material().Share(springs.SteadyBending); err == nil {
		text += fmt.Sprintf("; %.0f %% is usual for steady bending (%s)", 100*share, source)
	}
	return text + "."
}

// shortOf says of a strip that fails by its turns how far it would come with none to
// spare.
func (w *writer) shortOf(h *Drummed, c springs.Choice[springs.Barrel]) string {
	s, ok := h.named(c.Offer)
	if !ok || c.Fault.What != "turns" || h.rules.SpareTurns == 0 {
		return ""
	}
	left, err := vary(h, s, turnsLeft)
	w.failed(err)
	if left.Value >= 0 {
		return fmt.Sprintf(" Its turns reach only with less than the %g to spare that are asked.", h.rules.SpareTurns)
	}
	left.Value = -left.Value
	return fmt.Sprintf(" That is with %g left to spare; with none it would still end %s before the rope does.", h.rules.SpareTurns, sheet.Show(left.Reading(), turns))
}

// turnsLeft is what is left with the rope right out; below 0 it does not get there.
func turnsLeft(t trial) units.Angle {
	return units.Angle(t.choice.Spring.Turns()-t.full()) * units.Turn
}

// pull is the force at the rope that goes with a torque.
func (h *Drummed) pull(m units.Torque) units.Force {
	return units.Force(float64(m) / (float64(h.Job.RopeSeat.Value) / 2))
}

// torque is that of a pull at the rope.
func (h *Drummed) torque(pull units.Force) units.Torque { return h.Job.nominal().torque(pull) }

// drumDemand writes what is asked, which no strip has a part in.
func (w *writer) drumDemand(h *Drummed, s *Stripped) {
	d := h.Job
	travel := putDrum(w, h, s, "drum_travel", "turns that the rope takes", func(t trial) units.Angle { return t.demand.Travel }, turns, sheet.Degree)
	home := putDrum(w, h, s, "drum_torque", "torque that brings the rope home", func(t trial) units.Torque { return t.demand.AtRest }, nmm, lbfIn)
	w.s.Add("Turns that the rope takes off the drum", "n = l / (π D)   D to the centre of the rope",
		fmt.Sprintf("%s / (π × %s)", sheet.Value(d.Rope, sheet.Millimetre), sheet.Value(d.RopeSeat, sheet.Millimetre)), sheet.Show(travel.Reading(), turns))
	w.s.Add("Torque that brings drum and rope home: the pull at the radius", "M = F D / 2",
		fmt.Sprintf("%s × %s / 2", sheet.Value(d.PullHome, newton), sheet.Value(d.RopeSeat, sheet.Millimetre)), sheet.Show(home.Reading(), nmm))
}

// stripFigures writes what each strip would do. One that does not go in has none.
func (w *writer) stripFigures(h *Drummed, s *Stripped, number int) {
	if !s.fits() {
		return
	}
	key, of := fmt.Sprintf("strip_%d_", number), "strip "+s.Name+": "
	putDrum(w, h, s, key+"per_turn", of+"a turn adds", func(t trial) units.TorsionalStiffness { return t.choice.Spring.Rate() }, perTurn, inPerTurn)
	putDrum(w, h, s, key+"turns", of+"turns there are", func(t trial) units.Angle { return units.Angle(t.choice.Spring.Turns()) * units.Turn }, turns)
	putDrum(w, h, s, key+"wind", of+"turns to wind on, at least", func(t trial) units.Angle { return t.choice.Preload }, turns)
	left := putDrum(w, h, s, key+"left", of+"turns left, rope right out, the least wound on", turnsLeft, turns)
	if left.Value < 0 {
		return // it never gets there
	}
	putDrum(w, h, s, key+"full", of+"torque, rope right out, the least wound on", func(t trial) units.Torque { return t.choice.AtFull }, nmm, lbfIn)
	putDrum(w, h, s, key+"stress", of+"stress, rope right out, the least wound on", func(t trial) units.Pressure { return t.choice.Stress }, mpa, ksi)
}

// drumChosen writes the rest of the best strip, and the working.
func (w *writer) drumChosen(h *Drummed, s *Stripped) {
	on := h.WindOn()
	w.s.Figures = append(w.s.Figures, sheet.Of("springs.drum_wind", "strip "+s.Name+": turns to wind on first, rope home", units.Exact(on), turns))
	w.drumWorking(h, s)
	if !s.Choice.Tight { // or there is nothing more that may be wound on
		w.drumMost(h, s)
	}
	w.drumStored(h, s, on)
	full, err := vary(h, s, func(t trial) units.Torque { return t.set(on).AtFull.Wind })
	w.failed(err)
	w.improve("for the drum, " + readings.Largest(full))
	w.cautions(springs.OpeningBarrel)
}

// drumWorking goes through the sums for the best strip.
func (w *writer) drumWorking(h *Drummed, s *Stripped) {
	b, c, d, on := s.Choice.Spring, s.Choice, h.Job, h.WindOn()
	e, err := s.material.YoungsModulus(s.Thickness.Value)
	w.failed(err)
	mm := func(r length) string { return sheet.Value(r, sheet.Millimetre) }
	perTurn, wind, full := b.Rate().NewtonMillimetresPerTurn(), c.Preload.Turns(), (on + h.Travel).Turns()
	out := h.Set.AtFull.Wind.NewtonMillimetres()
	w.s.Add(fmt.Sprintf("Strip %s: what a turn adds to the torque. The thickness counts three times", s.Name), "M = π E b t³ / (6 L)",
		fmt.Sprintf("π × %.0f MPa × %s × (%s)³ / (6 × %s)", e.Megapascals(), mm(s.Width), mm(s.Thickness), mm(s.Length)), fmt.Sprintf("%.1f N mm a turn", perTurn))
	w.s.Add(fmt.Sprintf("Turns that can be wound: those that lie on the arbor (d %s) less those that lie on the wall (D %s)", mm(d.Arbor), mm(d.Bore)), "(2L/π)/(d + √(d² + 4Lt/π)) − (2L/π)/(D + √(D² − 4Lt/π))",
		fmt.Sprintf("%.2f − %.2f", b.TurnsWound(), b.TurnsRunDown()), fmt.Sprintf("%.2f turns", b.Turns()))
	if d.Lies == Slack {
		w.s.Add("Turns to wind on at least, so that it brings the rope home"+h.rubbed(), "n₁ = M / (M a turn)",
			fmt.Sprintf("%.0f N mm / %.1f N mm", h.Home.NewtonMillimetres()/(1-h.rules.Friction), perTurn), fmt.Sprintf("%.2f turns", wind))
		w.s.Add(fmt.Sprintf("Torque with %s wound on and the rope right out", turnsOf(on))+h.rubbed(), "M₂ = (n₁ + n) × M a turn", fmt.Sprintf("(%.2f + %.2f) × %.1f N mm", on.Turns(), h.Travel.Turns(), perTurn)+h.beyondLine(), fmt.Sprintf("%.0f N mm", out))
		w.s.Add("Stress there", "σ = π E t (n₁ + n) / L", fmt.Sprintf("π × %.0f MPa × %s × %.2f / %s", e.Megapascals(), mm(s.Thickness), full, mm(s.Length)), fmt.Sprintf("%.0f MPa, in strip of %v", h.Set.Stress.Megapascals(), c.Strength))
	} else {
		w.s.Add(fmt.Sprintf("Run down it is bent already by %.2f turns from where it lies free, which count in all that follows", b.TurnsRunDown()-b.TurnsFree()), "n₀ = turns on the wall − turns when free",
			fmt.Sprintf("%.2f − %.2f", b.TurnsRunDown(), b.TurnsFree()), fmt.Sprintf("n₁ %.2f turns at least; with %s wound on M₂ %.0f N mm, stress %.0f MPa in strip of %v", wind, turnsOf(on), out, h.Set.Stress.Megapascals(), c.Strength))
	}
	of := "strip " + s.Name + ", wound on so: "
	putDrum(w, h, s, "drum_left", of+"turns left, rope right out", func(t trial) units.Angle {
		return units.Angle(t.choice.Spring.Turns())*units.Turn - on - t.demand.Travel
	}, turns)
	putDrum(w, h, s, "drum_full", of+"torque, rope right out", func(t trial) units.Torque { return t.set(on).AtFull.Wind }, nmm, lbfIn)
	putDrum(w, h, s, "drum_stress", of+"stress, rope right out", func(t trial) units.Pressure { return t.set(on).Stress }, mpa, ksi)
	pull := putDrum(w, h, s, "drum_pull", of+"pull on the rope, right out", func(t trial) units.Force {
		return units.Force(float64(t.set(on).AtFull.Wind) / (float64(t.sizes.seat) / 2))
	}, newton, lbf)
	w.s.Add("Pull on the rope, right out", "F = M₂ / (D / 2)", fmt.Sprintf("%.0f N mm / (%s / 2)", out, mm(d.RopeSeat)), sheet.Show(pull.Reading(), newton))
}

// rubbed is what to say of friction, where the file has some.
func (h *Drummed) rubbed() string {
	if h.rules.Friction == 0 {
		return ""
	}
	return fmt.Sprintf(", when friction takes %.0f %%", 100*h.rules.Friction)
}

// beyondLine is what the torque with the rope right out has besides the straight line.
func (h *Drummed) beyondLine() string {
	text := ""
	if h.rules.Friction != 0 {
		text = fmt.Sprintf(" × %.2f", 1+h.rules.Friction)
	}
	if h.Set.AtFull.Regime == springs.Closing {
		text += ", and what the last turn before solid adds"
	}
	return text
}

// drumMost writes how much more may be wound on, and what friction that makes
// good.
func (w *writer) drumMost(h *Drummed, s *Stripped) {
	b, strength := s.Choice.Spring, s.Choice.Strength.Least
	most := putDrum(w, h, s, "drum_most_wind", "strip "+s.Name+": turns to wind on, at most", func(t trial) units.Angle {
		return h.window(t.choice, t.demand.Travel, strength).most
	}, turns)
	and := ""
	if n, err := h.turnsAtMostPull(b); err == nil {
		and = fmt.Sprintf(" (and %.2f for the most pull)", n)
	}
	w.s.Add("The most to wind on: short of solid, with the turns to spare, and within the strip's least strength", "n₁ = lesser of (turns there are − spare) and σ L / (π E t), less n",
		fmt.Sprintf("%.2f − %g and %.2f, less %.2f", b.Turns(), h.rules.SpareTurns, b.TurnsAtStress(strength), h.Travel.Turns())+and, sheet.Show(most.Reading(), turns))
	if h.Job.Friction != nil {
		return
	}
	friction := putDrum(w, h, s, "drum_friction", "strip "+s.Name+": friction of the coils that this makes good", func(t trial) float64 {
		return 1 - float64(t.demand.AtRest/t.choice.Spring.LineTorque(h.window(t.choice, t.demand.Travel, strength).most.Turns()))
	}, sheet.Percent)
	w.ask(fmt.Sprintf("What do the coils rub away? Nobody has a figure for it, and the sums take nothing. If the rope hangs, wind on a little more, up to the most: %s of the torque may then go in friction.", sheet.Show(friction.Reading(), sheet.Percent)))
}

// drumStored writes what the strip holds with the rope right out.
func (w *writer) drumStored(h *Drummed, s *Stripped, on units.Angle) {
	stored := putDrum(w, h, s, "drum_stored", "strip "+s.Name+": stored, rope right out", func(t trial) units.Energy {
		return t.set(on).Stored
	}, joule, footPound)
	w.s.Add(fmt.Sprintf("Stored with %s wound on and the rope right out: the area under the torque, in radians", turnsOf(on)), "U ≈ M θ / 2", "", sheet.Show(stored.Reading(), joule))
	w.hazard(fmt.Sprintf("Rope drum: with %s wound on and the rope right out the strip holds", turnsOf(on)), stored.Value, "It comes out at once when the rope or the strip's end is let go, and takes a hand round with it.")
}

// hazard puts the stored energy into words.
func (w *writer) hazard(what string, e units.Energy, and string) {
	hz, err := springs.HazardOf(e)
	w.failed(err)
	w.caution(fmt.Sprintf("%s %s. %s", what, hz.Text, and))
}

// oldStrip holds the broken strip against the best one.
func (w *writer) oldStrip(h *Drummed) {
	o := h.Job.Old
	s, works := h.chosen()
	if o == nil || !works {
		return
	}
	t, b, l := s.Thickness.Value, s.Width.Value, s.Length.Value
	t0, b0, l0 := o.Thickness.Value, o.Width.Value, o.Length.Value
	ratio, err := units.Propagate(func() float64 {
		x := float64(t / t0)
		return x * x * x * float64(b/b0) * float64(l0/l)
	}, units.VaryReading("thickness of the strip", &t, s.Thickness), units.VaryReading("width of the strip", &b, s.Width), units.VaryReading("length of the strip", &l, s.Length),
		units.VaryReading("thickness of the broken strip", &t0, o.Thickness), units.VaryReading("width of the broken strip", &b0, o.Width), units.VaryReading("length of the broken strip", &l0, o.Length))
	w.failed(err)
	w.s.Figures = append(w.s.Figures, sheet.Of("springs.drum_old", "strip "+s.Name+": torque a turn, of the broken one's, at least", ratio.Reading(), sheet.Percent))
	w.s.Add(fmt.Sprintf("Strip %s against the broken one, as far as that was found: the torque of a turn", s.Name), "b t³ / L of one / b t³ / L of the other",
		fmt.Sprintf("(%s / %s)³ × %s / %s × %s / %s", sheet.Value(s.Thickness, sheet.Millimetre), sheet.Value(o.Thickness, sheet.Millimetre), sheet.Value(s.Width, sheet.Millimetre), sheet.Value(o.Width, sheet.Millimetre), sheet.Value(o.Length, sheet.Millimetre), sheet.Value(s.Length, sheet.Millimetre)),
		sheet.Show(ratio.Reading(), sheet.Percent)+" or more")
	w.ask(fmt.Sprintf("How much of the broken strip is missing? The pieces make %s; the longer it was, the nearer strip %s comes to it.", sheet.Value(o.Length, sheet.Millimetre), s.Name))
}

// perVickers is the tensile strength of steel, in MPa, for one of Vickers hardness
// (common practice; compare EN ISO 18265).
const perVickers = 3.2

// drumAsk asks what the sums had to take as given.
func (w *writer) drumAsk(h *Drummed) {
	d := h.Job
	if d.Steel.Assumed != "" {
		text := fmt.Sprintf("The steel of the strips is not named; the sums take %s. Is it hardened and tempered spring strip, and how hard? Have the seller put it in writing.", d.Steel.Assumed)
		if s, works := h.chosen(); works {
			need := h.Set.Stress.Megapascals()
			text += fmt.Sprintf(" Strip %s needs a tensile strength of %.0f MPa at least, which is about %.0f Vickers (strength %.1f times the Vickers number, common practice).", s.Name, need, need/perVickers, perVickers)
			if l, err := springs.StripLimits("C67S", "+QT"); err == nil {
				text += fmt.Sprintf(" Hardened and tempered C67S may be anything from %.0f MPa to %.0f MPa (%s).", l.Least.Megapascals(), l.Most.Megapascals(), l.Source)
			}
		}
		w.ask(text)
	}
	if s, works := h.chosen(); works {
		if a := s.Choice.Spring.Advice(); len(a) > 0 {
			w.ask(fmt.Sprintf("Strip %s in this drum is outside what makers of such springs are used to: %s. Was the broken one like it?", s.Name, strings.Join(a, "; ")))
		}
	}
	if d.Lies == Slack {
		w.ask("Do the strips lie slack against the drum when run down? The sums take it so. A straight one may have twice the torque or more, and is stressed as much more: lay it on the bench and look.")
	}
	w.ask("Is the thickness measured, or the seller's word? Take a micrometer to three places before it is wound: 2 per cent on the thickness is 6 per cent on the torque.")
}
