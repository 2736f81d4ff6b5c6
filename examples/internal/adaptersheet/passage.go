package adaptersheet

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// A passage leads from the carburettor to the port: parallel through the
// spigot, then a taper.
type passage struct {
	small, large size
	half         units.Reading[units.Angle] // half the angle of the cone
	wall         reading                    // of the spigot
}

// planPassage works out the passage so that no step faces the stream.
func (w *work) planPassage() error {
	r, p, f := w.r, &w.passage, &w.flange
	carb, port := *r.CarburettorBore, slices.Min(r.PortBore)
	p.small = size{"D", "passage at the collar, parallel", carb.Value, carb.Value + mm/5, false, "no narrower than the carburettor"}
	p.large = size{"J", "passage at the engine", port - mm/5, port, false, "no wider than the port"}
	w.sizes = append(w.sizes, p.small, p.large)
	if !(w.spigot.min > p.small.max) {
		return w.file.Errorf("adapter.carburettor_bore", "a passage of %v in a spigot of %v: want a bore smaller than the collar", p.small.max, w.spigot.min)
	}
	if !(p.large.min > 0) || !(f.neckOut > p.large.max) {
		return w.file.Errorf("adapter.port_bore", "a port of %v: want one smaller than the neck of %v", port, f.neckOut)
	}
	d0, d1, long := carb.Value+mm/10, port-mm/10, f.thick+f.neck
	half, err := units.Propagate(func() units.Angle {
		return units.Angle(math.Atan2(float64(d1-d0)/2, float64(long)))
	}, units.VaryReading("bore of the carburettor", &d0, units.WithStd(d0, carb.Std)), units.Vary("bore of the port", &d1, r.BoresGoodTo))
	if err != nil {
		return w.file.Errorf("adapter.port_bore", "%v", err)
	}
	p.half = half.Reading()
	w.s.Figures = append(w.s.Figures, sheet.Of("adapter.taper", "top slide over, half the angle of the cone", p.half, sheet.Degree))
	w.s.Add("Top slide for the taper through flange and neck", "tan β = (D₁ − D₀)/(2 l)",
		fmt.Sprintf("D₁ = %s, D₀ = %s, l = %s", sheet.Plain(d1, sheet.Millimetre, 2), sheet.Plain(d0, sheet.Millimetre, 2), sheet.Plain(long, sheet.Millimetre, 1)), sheet.Show(p.half, sheet.Degree))
	if d1 < d0 {
		w.s.Questions = append(w.s.Questions, "The passage narrows towards the engine: is this carburettor too large for the port?")
	}
	if math.Abs(p.half.Value.Degrees()) > 7 {
		w.s.Questions = append(w.s.Questions, "The taper is more than 7° to the side, where a stream begins to leave the wall (common practice, no source). Can the neck be made longer?")
	}
	w.walls()
	return nil
}

// walls adds what is left of the spigot, and what it bears.
func (w *work) walls() {
	r, p, sp := w.r, &w.passage, &w.spigot
	thin := (sp.min - p.small.max) / 2
	p.wall = units.WithStd(thin, readings.Scale(reading{Std: r.NewPartGoodTo}, 1/math.Sqrt2).Std)
	w.figure("wall", "wall of the spigot, at the thinnest", p.wall)
	w.s.Add("Wall of the spigot at the thinnest", "(smallest spigot − widest passage)/2",
		fmt.Sprintf("(%s − %s)/2", sheet.Plain(sp.min, sheet.Millimetre, 2), sheet.Plain(p.small.max, sheet.Millimetre, 2)), sheet.Plain(thin, sheet.Millimetre, 2))
	bears := ""
	if m, err := fits.FindMaterial(r.BarMaterial, ""); err == nil && m.Yield > 0 {
		most := units.Force(float64(m.Yield) * float64(thin) * float64(w.flange.spigotLen))
		w.s.Figures = append(w.s.Figures, sheet.Of("adapter.screw_most", "screw force at which the spigot would yield", units.Exact(twoFigures(most)), newton, poundForce))
		w.s.Add(fmt.Sprintf("The screw squeezes the spigot as a thin ring (derived here); yield of %s, less in a bar of unknown temper", m), "F = σ t l",
			fmt.Sprintf("%.0f MPa × %s × %s", m.Yield.Megapascals(), sheet.Plain(thin, sheet.Millimetre, 2), sheet.Plain(w.flange.spigotLen, sheet.Millimetre, 1)), sheet.Plain(twoFigures(most), newton, 0))
		bears = fmt.Sprintf("; it would take about %.0f kN of screw to crush it", most.Kilonewtons())
	}
	w.s.Answer = append(w.s.Answer, fmt.Sprintf("The wall left in the spigot is %s%s.", both(thin), bears))
	if thin < 3*mm/2 {
		w.s.Questions = append(w.s.Questions, "The wall is under 1.5 mm (common practice, no source): will it stand the clamp and the engine's shaking?")
	}
}
