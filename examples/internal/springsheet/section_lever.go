package springsheet

import (
	"fmt"

	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// lever writes what was found for the lever.
func (w *writer) lever(h *Levered) {
	x, works := h.chosen()
	if works {
		w.first(fmt.Sprintf("Lever: wire of %s (%.3f in), %.2f turns on a mean diameter of %s, %.0f° wound on at rest.", x.Name, x.Diameter.Value.Inches(), x.Choice.Spring.BodyTurns(), both(x.Choice.Spring.MeanDiameter(), 2), x.Choice.Preload.Degrees()))
	} else {
		w.first("Lever: no coil of the wires on offer will do.")
	}
	for _, c := range h.Ranked {
		w.answer(h.verdict(c))
	}
	w.trust(springs.HelicalTorsion)
	w.leverDemand(h)
	for i := range h.Wires {
		w.wireFigures(h, &h.Wires[i], i+1)
	}
	if works {
		w.leverChosen(h, x)
		w.leverMake(h, x)
	}
	w.leverAsk(h, x, works)
	w.drawLever(h)
}

// verdict is the reason of a choice, with the pull on the arm.
func (h *Levered) verdict(c springs.Choice[springs.Torsion]) string {
	text := fmt.Sprintf("Wire of %s %s", c.Offer, c.Reason)
	if c.Spring.BodyTurns() == 0 {
		return text + "."
	}
	pull := units.Force(float64(c.AtFull) / float64(h.Job.Arm.Value))
	if !c.Works {
		s := c.Spring
		return text + fmt.Sprintf(". That is the best there is of it: %.2f turns on %.2f mm mean, %.1f N (%.2f lbf) on the arm.", s.BodyTurns(), s.MeanDiameter().Millimetres(), pull.Newtons(), pull.PoundsForce())
	}
	return text + fmt.Sprintf(". On the arm that is %.1f N (%.2f lbf) at the end of the travel.", pull.Newtons(), pull.PoundsForce())
}

// leverDemand writes what is asked.
func (w *writer) leverDemand(h *Levered) {
	l := h.Job
	pull, arm := l.PullAtRest.Value, l.Arm.Value
	rest, err := units.Propagate(func() units.Torque { return onArm(pull, arm) }, units.VaryReading("pull at rest", &pull, l.PullAtRest), units.VaryReading("arm", &arm, l.Arm))
	w.failed(err)
	w.s.Figures = append(w.s.Figures, sheet.Of("springs.lever_torque", "lever: torque wanted at rest", rest.Reading(), nmm, lbfIn))
	w.s.Add("Lever: torque wanted at rest", "M = F × arm", fmt.Sprintf("%s × %s", sheet.Value(l.PullAtRest, newton), sheet.Value(l.Arm, sheet.Millimetre)), sheet.Show(rest.Reading(), nmm))
	if h.Demand.MostAtFull != 0 {
		w.s.Add("Lever: the most that it may pull at the end of its travel", "M = F × arm", fmt.Sprintf("%s × %s", sheet.Plain(*l.MostPull, newton, 1), sheet.Value(l.Arm, sheet.Millimetre)), sheet.Plain(h.Demand.MostAtFull, nmm, 0))
	}
}

// wireFigures writes what the coil of each wire would do. One that does not go
// in has none.
func (w *writer) wireFigures(h *Levered, x *Wired, number int) {
	if !x.fits() {
		return
	}
	key, of := fmt.Sprintf("wire_%d_", number), "wire "+x.Name+": "
	putCoil(w, h, x, key+"rate", of+"rate", func(c coil) units.TorsionalStiffness {
		return c.torsion.Rate() * units.TorsionalStiffness(c.made)
	}, perDegree, inPerTurn)
	putCoil(w, h, x, key+"wind", of+"to wind on at rest", func(c coil) units.Angle {
		return max(c.torsion.Angle(onArm(c.pull, c.arm))/units.Angle(c.made), h.rules.LeastPreload)
	}, sheet.Degree, turns)
	putCoil(w, h, x, key+"full", of+"torque at the end of the travel", func(c coil) units.Torque { return c.torque(c.wind) }, nmm, lbfIn)
	putCoil(w, h, x, key+"stress", of+"stress at the end of the travel", func(c coil) units.Pressure { return c.torsion.Stress(c.torque(c.wind)) }, mpa, ksi)
}

// leverChosen writes the rest of the best coil, and the working.
func (w *writer) leverChosen(h *Levered, x *Wired) {
	of := "wire " + x.Name + ": "
	pull := putCoil(w, h, x, "lever_pull", of+"pull on the arm at the end of the travel", func(c coil) units.Force {
		return units.Force(float64(c.torque(c.wind)) / float64(c.arm))
	}, newton, lbf)
	play := putCoil(w, h, x, "lever_play", of+"play of the coil on its pin at full wind", func(c coil) units.Length { return c.torsion.PinClearance(c.pin, c.wind) }, sheet.Millimetre, sheet.Thou)
	putCoil(w, h, x, "lever_length", of+"length of the coil at full wind", func(c coil) units.Length { return c.torsion.BodyLength(c.wind) }, sheet.Millimetre, sheet.Inch)
	stored := putCoil(w, h, x, "lever_stored", of+"stored at the end of the travel", func(c coil) units.Energy {
		return c.torsion.Energy(c.wind) * units.Energy(c.made)
	}, joule, footPound)
	w.leverWorking(h, x, pull, play, stored)
	full, err := varyCoil(h, x, func(c coil) units.Torque { return c.torque(c.wind) })
	w.failed(err)
	w.improve("for the lever, " + readings.Largest(full))
	w.hazard(fmt.Sprintf("Lever: at the end of its travel the coil of %s wire holds", x.Name), stored.Value, "Little, but a leg that slips off its stop finds an eye.")
	w.cautions(springs.Coiling)
}

// leverWorking goes through the sums for the best coil.
func (w *writer) leverWorking(h *Levered, x *Wired, pull units.Result[units.Force], play units.Result[units.Length], stored units.Result[units.Energy]) {
	c, s := x.Choice, x.Choice.Spring
	full := c.Preload + h.Demand.Travel
	e, err := x.material.YoungsModulus(x.Diameter.Value)
	w.failed(err)
	d, mean := sheet.Value(x.Diameter, sheet.Millimetre), sheet.Plain(s.MeanDiameter(), sheet.Millimetre, 2)
	active := fmt.Sprintf("%.2f", s.ActiveTurns())
	w.s.Add(fmt.Sprintf("Coil of %s wire: rate by theory. The wire counts four times; legs count as l/(3πD) turns", x.Name), "k = E d⁴ / (64 D N)",
		fmt.Sprintf("%.0f MPa × (%s)⁴ / (64 × %s × %s), × π/180", e.Megapascals(), d, mean, active), fmt.Sprintf("%.3f N mm a degree", s.Rate().NewtonMillimetresPerDegree()))
	w.s.Add("To wind on at rest", "θ₁ = M / k", fmt.Sprintf("%.0f N mm / %.3f N mm", c.AtRest.NewtonMillimetres(), s.Rate().NewtonMillimetresPerDegree()), sheet.Plain(c.Preload, sheet.Degree, 0))
	w.s.Add("Torque at the end of the travel", "M₂ = k (θ₁ + θ)", fmt.Sprintf("%.3f N mm × (%.0f + %.0f)", s.Rate().NewtonMillimetresPerDegree(), c.Preload.Degrees(), h.Demand.Travel.Degrees()), fmt.Sprintf("%.0f N mm", c.AtFull.NewtonMillimetres()))
	w.s.Add("Pull on the arm at the end of the travel, the making of the coil counted in the ±", "F = M₂ / arm", "", sheet.Show(pull.Reading(), newton))
	w.s.Add("Stress there, on the inside of the coil", "σ = K 32 M / (π d³)", fmt.Sprintf("%.3f × 32 × %.0f N mm / (π × (%s)³)", s.CurvatureFactor(), c.AtFull.NewtonMillimetres(), d), fmt.Sprintf("%.0f MPa, in wire of %v", c.Stress.Megapascals(), c.Strength))
	w.s.Add("Play on the pin: the coil winds up, and shrinks", "D N_b / (N_b + n) − d − pin   n turns of wind", fmt.Sprintf("%s × %.2f / (%.2f + %.3f) − %s − %s", mean, s.BodyTurns(), s.BodyTurns(), s.BodyAngle(full).Turns(), d, sheet.Value(h.Job.Pin, sheet.Millimetre)), sheet.Show(play.Reading(), sheet.Millimetre))
	w.s.Add("Stored at the end of the travel", "U = M₂ θ / 2, θ in radians", fmt.Sprintf("%.0f N mm × %.2f / 2", c.AtFull.NewtonMillimetres(), float64(full)), sheet.Show(stored.Reading(), joule))
}

// leverAsk asks what the sums had to take as given.
func (w *writer) leverAsk(h *Levered, x *Wired, works bool) {
	l := h.Job
	if l.Steel.Assumed != "" {
		text := fmt.Sprintf("What is the wire? The sums take %s.", l.Steel.Assumed)
		if works {
			if a, err := x.material.Allowable(springs.SteadyBending, x.Diameter.Value); err == nil {
				text += fmt.Sprintf(" Little hangs on it: the coil of %s asks for a tensile strength of %.0f MPa, and hard drawn spring wire has more.", x.Name, x.Choice.Stress.Megapascals()/a.Share)
			}
		}
		w.ask(text)
	}
	w.ask("Which way does the lever go under its cable? Coil the spring of that hand that winds it up, smaller on its pin: opened the other way it sets.")
	if l.Play == 0 || l.EndPlay == 0 {
		w.ask("Has the coil room to move? No play is asked round it or no end_play along it, and it may fill the recess to the last.")
	}
	if len(l.Legs) == 0 {
		w.ask("How long are the legs? They are not counted here. Legs of so much together as three times the coil's circumference, 3πD, act like one more turn.")
	}
	if works {
		r, err := springs.NewReturn(x.Choice.Spring, x.Choice.Preload, h.Demand.Travel)
		w.failed(err)
		for _, a := range r.Advice() {
			quarter := x.Choice.Spring.Torque(units.Turn/4 + h.Demand.Travel)
			w.ask(fmt.Sprintf("Is the lever held firmly enough? The sum has a %s. Wound on a quarter of a turn this coil pulls %.0f N mm at the end.", a, quarter.NewtonMillimetres()))
		}
	}
	w.ask("How good is the spring balance? Hang something of known weight on it, a litre of water in a light bottle: 9.8 N (2.2 lbf).")
}
