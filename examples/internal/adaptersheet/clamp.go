package adaptersheet

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

var newton = sheet.Unit[units.Force]{Name: "N", One: units.Newton}
var poundForce = sheet.Unit[units.Force]{Name: "lbf", One: units.PoundForce}
var newtonMetre = sheet.Unit[units.Torque]{Name: "N m", One: units.NewtonMetre}

// heat adds the clearance when collar and spigot are warm.
func (w *work) heat() error {
	r, sp := w.r, &w.spigot
	if r.Warm == nil {
		return nil
	}
	if r.CollarMaterial == "" || r.BarMaterial == "" {
		return w.file.Errorf("adapter.warm", "the clearance hot needs collar_material and bar_material too")
	}
	collar, err := fits.FindMaterial(r.CollarMaterial, "")
	if err != nil {
		return w.file.Errorf("adapter.collar_material", "%v", err)
	}
	bar, err := fits.FindMaterial(r.BarMaterial, "")
	if err != nil {
		return w.file.Errorf("adapter.bar_material", "%v", err)
	}
	hot := func(hole, shaft length) (length, error) {
		p, err := fits.NewPair(hole, collar.Expansion, shaft, bar.Expansion)
		if err != nil {
			return 0, w.file.Errorf("adapter.collar_material", "%v", err)
		}
		return p.ClearanceAt(*r.Warm, *r.Warm), nil
	}
	least, err := hot(sp.collar.Least, sp.max)
	if err != nil {
		return err
	}
	most, err := hot(sp.collar.Most, sp.min)
	if err != nil {
		return err
	}
	at := fmt.Sprintf("%.0f °C", r.Warm.Celsius())
	w.figure("clearance_least_hot", "clearance at "+at+", closest", units.WithStd(least, w.clearanceStd()))
	w.figure("clearance_most_hot", "clearance at "+at+", slackest", units.WithStd(most, w.clearanceStd()))
	w.s.Add(fmt.Sprintf("Clearance at %s, a collar of %s on a spigot of %s", at, collar, bar), "c = D (1 + αh ΔT) − d (1 + αs ΔT)",
		fmt.Sprintf("αh = %.1f, αs = %.1f (10⁻⁶/K), ΔT = %.0f K", collar.Expansion.MicrometresPerMetreKelvin(), bar.Expansion.MicrometresPerMetreKelvin(), r.Warm.Celsius()-fits.ReferenceTemperature().Celsius()),
		fmt.Sprintf("%s, where it is %s cold", sheet.Plain(least, sheet.Millimetre, 3), sheet.Plain(sp.collar.Least-sp.max, sheet.Millimetre, 3)))
	w.s.Answer = append(w.s.Answer, warmed(at, least-(sp.collar.Least-sp.max)))
	return nil
}

// warmed says what warmth does to the clearance.
func warmed(at string, change length) string {
	if change < 0 {
		return fmt.Sprintf("Warming both to %s takes %s from the clearance: the spigot grows more than the collar.", at, both(-change))
	}
	return fmt.Sprintf("Warming both to %s adds %s to the clearance, which the clamp must take up.", at, both(change))
}

// closeSlot adds what the slot closes by as the collar comes down on the spigot.
func (w *work) closeSlot() error {
	sp, r := &w.spigot, w.r
	d0, d, slot := sp.girth.Value, sp.aim, r.Slot.Value
	of := func(f func() length, inputs ...units.Input) (units.Result[length], error) {
		res, err := units.Propagate(f, append(inputs, units.VaryReading("bore of the collar", &d0, sp.girth), units.VaryReading("spigot", &d, sp.measured))...)
		if err != nil {
			return res, w.file.Errorf("adapter.slot", "%v", err)
		}
		return res, nil
	}
	closes, err := of(func() length { return math.Pi * (d0 - d) })
	if err != nil {
		return err
	}
	left, err := of(func() length { return slot - math.Pi*(d0-d) }, units.VaryReading("slot", &slot, *r.Slot))
	if err != nil {
		return err
	}
	w.figure("slot_closes", "slot closes by, spigot in the middle of its limits", closes.Reading())
	w.figure("slot_left", "slot left then", left.Reading())
	w.figure("reach", "clearance at which the slot is shut", units.WithStd(r.Slot.Value/math.Pi, r.Slot.Std/math.Pi))
	w.s.Add("The slot closes by the difference of the girths, π times the clearance on the diameter", "g = π (D − d)",
		fmt.Sprintf("π × (%s − %s)", sheet.Plain(sp.girth.Value, sheet.Millimetre, 3), sheet.Plain(sp.aim, sheet.Millimetre, 3)), sheet.Show(closes.Reading(), sheet.Millimetre))
	worst := r.Slot.Value - math.Pi*(sp.girth.Value-sp.min)
	w.s.Answer = append(w.s.Answer, fmt.Sprintf("The slot of %s closes by %s; on the smallest spigot %s of it are left.",
		sheet.Value(*r.Slot, sheet.Millimetre), sheet.Show(closes.Reading(), sheet.Millimetre), both(worst)))
	if worst < 2*left.Std {
		w.s.Questions = append(w.s.Questions, "On the smallest spigot the slot is shut or nearly: will the collar still grip? A slot filed wider, or a spigot kept to its upper limit, leaves more.")
	}
	return w.bendCollar()
}

// bendCollar adds the stress in the collar when its wall was measured.
func (w *work) bendCollar() error {
	r, sp := w.r, &w.spigot
	if r.CollarWall == nil {
		w.s.Questions = append(w.s.Questions, "The wall of the collar was not measured (collar_wall): with it the sheet says how far the collar is bent towards its yield. Is it a material that bends, or a die casting that cracks?")
		return nil
	}
	if r.CollarMaterial == "" {
		return w.file.Errorf("adapter.collar_wall", "the bending of the collar needs collar_material too")
	}
	m, err := fits.FindMaterial(r.CollarMaterial, "")
	if err != nil {
		return w.file.Errorf("adapter.collar_material", "%v", err)
	}
	c, err := fits.NewClamp(fits.Collar{Bore: sp.girth.Value, Wall: *r.CollarWall, Length: r.CollarDepth.Value, Slot: r.Slot.Value, Material: m})
	if err != nil {
		return w.file.Errorf("adapter.collar_wall", "%v", err)
	}
	on, err := c.On(sp.min)
	if err != nil {
		return w.file.Errorf("adapter.slot", "%v", err)
	}
	megapascal := sheet.Unit[units.Pressure]{Name: "MPa", One: units.Megapascal}
	w.s.Figures = append(w.s.Figures, sheet.Of("adapter.bending", "bending stress opposite the slot, smallest spigot", units.Exact(on.Bending), megapascal))
	text := ""
	if margin, err := c.Margin(sp.min); err == nil {
		text = fmt.Sprintf(", 1/%.1f of the yield stress of %s", margin, m)
	}
	w.s.Add("The collar is bent most opposite its slot (thin ring, ears not counted)", "σ = 4 E t (D − d)/(3 (2r)²)",
		fmt.Sprintf("t = %s, E = %.0f GPa", sheet.Plain(*r.CollarWall, sheet.Millimetre, 2), m.Modulus.Gigapascals()), sheet.Plain(on.Bending, megapascal, 0)+text)
	return nil
}

// grip adds what the clamp holds, for the force of the screw that is stated or
// else for each 100 N of it.
func (w *work) grip() error {
	r, sp := w.r, &w.spigot
	screw, name := 100*units.Newton, "for each 100 N (22 lbf) of screw"
	if r.ScrewForce != nil {
		screw, name = *r.ScrewForce, "with "+sheet.Plain(*r.ScrewForce, newton, 0)+" of screw"
	}
	mu, said := 0.1, " (μ 0.1 for metal not quite dry: common practice, no source)"
	if r.Friction != nil {
		mu, said = float64(*r.Friction), ""
	}
	h, err := fits.ClampHold(screw, sp.aim, mu)
	if err != nil {
		key := "adapter.screw_force"
		if r.Friction != nil {
			key = "adapter.friction"
		}
		return w.file.Errorf(key, "%v", err)
	}
	poundInch := sheet.Unit[units.Torque]{Name: "lbf in", One: units.PoundForceInch}
	w.s.Figures = append(w.s.Figures,
		sheet.Of("adapter.holds_push", "holds a pull along, at least, "+name, units.Exact(twoFigures(h.AxialLow)), newton, poundForce),
		sheet.Of("adapter.holds_twist", "holds a twist, at least, "+name, units.Exact(twoFigures(h.TorqueLow)), newtonMetre, poundInch))
	w.s.Add("What the clamp holds"+said, "A = 2 μ F ... π μ F,  M = μ F d ... (π/2) μ F d",
		fmt.Sprintf("μ = %.2f, F = %s, d = %s", mu, sheet.Plain(screw, newton, 0), sheet.Plain(sp.aim, sheet.Millimetre, 2)),
		fmt.Sprintf("%s to %s along, %s to %s round: count on the lower", sheet.Plain(h.AxialLow, newton, 0), sheet.Plain(h.AxialHigh, newton, 0), sheet.Plain(h.TorqueLow, newtonMetre, 2), sheet.Plain(h.TorqueHigh, newtonMetre, 2)))
	return nil
}

// twoFigures rounds what is only known roughly.
func twoFigures[Q units.Quantity](q Q) Q {
	if q == 0 {
		return 0
	}
	step := math.Pow(10, math.Floor(math.Log10(math.Abs(float64(q))))-1)
	return Q(math.Round(float64(q)/step) * step)
}
