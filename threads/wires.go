package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// BestWire returns the diameter of the wire that touches the flanks at the
// effective diameter, where an error of the flank angle does least harm:
//
//	w = p / (2 cos(α/2))
//
// Source: Machinery's Handbook, 31st ed., p. 2125.
func (f Form) BestWire(pitch units.Length) units.Length {
	_, cos, _ := f.flank()
	return units.Length(float64(pitch) / (2 * cos))
}

// WireRange returns the smallest wire that stands proud of the crests and the
// largest that still touches the straight of the flanks. Both follow from the
// form; wires near either end are awkward, and books keep well inside them
// (0.560p to 0.900p at 60°: NEMES 3-wire sheet). The root must be cleared too,
// which it is between these.
func (f Form) WireRange(pitch units.Length) (least, most units.Length) {
	sin, cos, _ := f.flank()
	if sin == 0 {
		return 0, 0
	}
	h := float64(f.Height(pitch))
	proud := h/2 + float64(f.EffectiveBelow(pitch))/2 // bottom of the sharp groove to the crest
	straight := proud
	if shape, r := f.Crest(pitch); shape == Round {
		straight = h - float64(r)*cos*cos/sin
	}
	return units.Length(2 * proud * sin / (1 + sin)), units.Length(2 * straight * sin / (cos * cos))
}

// flank returns the sine and cosine of the flank angle and its cotangent.
func (f Form) flank() (sin, cos, cot float64) {
	tan := f.row().tan
	if tan == 0 {
		return 0, 1, 0
	}
	sec := math.Sqrt(1 + tan*tan)
	return tan / sec, 1 / sec, 1 / tan
}

// Wires are three equal wires laid in a thread, two on one side and one on the
// other, to measure its effective diameter with a micrometer over them. Make
// one by Thread.Wires.
type Wires struct {
	form  Form
	pitch units.Length
	wire  units.Length
}

// Wires lays wires of the given diameter in the thread. They rest on the flanks,
// so that worn crests do not matter. The error wraps units.ErrDomain for a wire that would
// lie below the crests or ride on them, and for taper threads, which a
// micrometer cannot hold square.
func (t Thread) Wires(diameter units.Length) (Wires, error) {
	least, most := t.form.WireRange(t.pitch)
	switch {
	case t.form == 0 || t.pitch == 0:
		return Wires{}, fmt.Errorf("no thread: want one from Find or New: %w", units.ErrDomain)
	case t.Taper() != 0:
		return Wires{}, fmt.Errorf("%v: three wires need a parallel thread: %w", t, units.ErrDomain)
	case !(diameter > least && diameter < most):
		return Wires{}, fmt.Errorf("wire %v in %v: want more than %v, to stand proud of the crests, and less than %v, to touch the flanks; the best is %v: %w",
			diameter, t, least, most, t.form.BestWire(t.pitch), units.ErrDomain)
	}
	return Wires{t.form, t.pitch, diameter}, nil
}

// Wire returns the diameter of the wires.
func (w Wires) Wire() units.Length { return w.wire }

// PlainOver returns the measurement over the wires on a thread of the given
// effective diameter, as if it had no helix:
//
//	M = E − (p/2) cot(α/2) + w (1 + cosec(α/2))
//
// which is E − 0.8660p + 3w at 60° and E − 0.9605p + 3.1657w at 55°.
func (w Wires) PlainOver(effective units.Length) units.Length { return effective + w.plain() }

// PlainEffective is PlainOver the other way about.
func (w Wires) PlainEffective(over units.Length) units.Length { return over - w.plain() }

// plain returns how much the measurement over the wires is more than E.
func (w Wires) plain() units.Length {
	sin, _, cot := w.form.flank()
	if sin == 0 {
		return 0
	}
	p, d := float64(w.pitch), float64(w.wire)
	return units.Length(d*(1+1/sin) - p/2*cot)
}

// HelixCorrection returns how much further out the wires lie because they
// cross the groove at the helix angle ψ:
//
//	c = (w/2) tan²ψ cos(α/2) cot(α/2)   tan ψ = p / (π E)
//
// It is 0.0018 mm on M10 and 0.0029 mm on a 1/4-20 UNC with the best wire. On such
// single-start threads the formula comes within a tenth of it to the wire laid
// in the true helicoid.
//
// Source: Machinery's Handbook, three-wire section, formula (3), from memory;
// the same term as the rake correction of the National Physical Laboratory's
// Notes on Screw Gauges, from memory.
func (w Wires) HelixCorrection(effective units.Length) units.Length {
	_, cos, cot := w.form.flank()
	tan := float64(w.pitch) / (math.Pi * float64(effective))
	return units.Length(float64(w.wire) / 2 * tan * tan * cos * cot)
}

// Over returns the measurement over the wires on a thread of the given
// effective diameter, the helix allowed for: PlainOver and HelixCorrection.
func (w Wires) Over(effective units.Length) units.Length {
	return w.PlainOver(effective) + w.HelixCorrection(effective)
}

// Effective returns the effective diameter of a thread that measures so much
// over the wires: Over the other way about. The error wraps units.ErrDomain
// for a measurement that leaves nothing of the thread.
func (w Wires) Effective(over units.Length) (units.Length, error) {
	e := w.PlainEffective(over)
	if !(e > w.pitch/math.Pi) || math.IsInf(float64(e), 0) {
		return 0, fmt.Errorf("%v over wires of %v: want more than %v: %w", over, w.wire, w.PlainOver(w.pitch/math.Pi), units.ErrDomain)
	}
	plain := e
	for range 60 { // the correction is small and changes slowly with e
		next := plain - w.HelixCorrection(e)
		if next == e {
			break
		}
		e = next
	}
	return e, nil
}

// WireReadings are the readings of a three-wire measurement. A pitch of 0 is
// that of the thread, exact; the flank angle is that of the form, with the
// standard uncertainty given.
type WireReadings struct {
	Over  units.Reading[units.Length] // over the wires
	Wire  units.Reading[units.Length] // mean diameter of the wires
	Pitch units.Reading[units.Length] // as measured, or 0
	Flank units.Angle                 // standard uncertainty of the flank angle, half of the included
}

// EffectiveFrom returns the effective diameter of the thread t that the
// readings give, with its uncertainty and a budget of what it is made of. With
// the best wire the flank angle hardly enters. The error is that of Wires and of
// Wires.Effective, or units.ErrDomain for a flank uncertainty that is negative.
func (t Thread) EffectiveFrom(r WireReadings) (units.Result[units.Length], error) {
	w, err := t.Wires(r.Wire.Value)
	if err != nil {
		return units.Result[units.Length]{}, err
	}
	if r.Pitch.Value == 0 {
		r.Pitch = units.Exact(t.pitch)
	}
	w.pitch = r.Pitch.Value
	if _, err := w.Effective(r.Over.Value); err != nil {
		return units.Result[units.Length]{}, err
	}
	over, wire, pitch, flank := r.Over.Value, r.Wire.Value, r.Pitch.Value, t.form.Angle()/2
	return units.Propagate(func() units.Length {
		return effectiveOver(float64(over), float64(wire), float64(pitch), float64(flank))
	},
		units.VaryReading("over the wires", &over, r.Over),
		units.VaryReading("wire", &wire, r.Wire),
		units.VaryReading("pitch", &pitch, r.Pitch),
		units.Vary("flank angle", &flank, r.Flank))
}

// effectiveOver is Wires.Effective for any flank angle.
func effectiveOver(over, w, p, flank float64) units.Length {
	sin, cos := math.Sincos(flank)
	plain := over - w*(1+1/sin) + p/2*cos/sin
	e := plain
	for range 8 {
		tan := p / (math.Pi * e)
		e = plain - w/2*tan*tan*cos*cos/sin
	}
	return units.Length(e)
}
