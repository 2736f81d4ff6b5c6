package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// turnsAdded returns the turns by which the body has grown.
func (t Torsion) turnsAdded(wind units.Angle) float64 { return t.BodyAngle(wind).Turns() }

// MeanDiameterWound returns the mean diameter when wound, as the same wire then
// makes more turns:
//
//	D′ = N_b D / (N_b + n)     n turns of wind in the body
//
// The legs' share of the angle does not shrink the coil and is left out of n.
//
// Source: Shigley, eq. 10-53; EN 13906-3 has the same for the inside diameter.
func (t Torsion) MeanDiameterWound(wind units.Angle) units.Length {
	n := t.spec.BodyTurns
	return units.Length(n * t.mean / (n + t.turnsAdded(wind)))
}

// InsideDiameter returns the bore of the coil when wound, D′ − d; at 0 it is the
// free one.
func (t Torsion) InsideDiameter(wind units.Angle) units.Length {
	return t.MeanDiameterWound(wind) - t.spec.Wire.Thickness()
}

// OutsideDiameter returns the outside of the coil when wound, D′ + d.
func (t Torsion) OutsideDiameter(wind units.Angle) units.Length {
	return t.MeanDiameterWound(wind) + t.spec.Wire.Thickness()
}

// HandbookInsideDiameter returns the bore when wound by the handbook's rule,
// which shrinks the bore itself in the ratio of the turns:
//
//	ID₁ = ID N / (N + F/360)
//
// with all of the angle taken up by the body. The wire does not shrink, so for a
// spring without legs this leaves a bore larger than InsideDiameter by d n/(N + n):
// a little too hopeful.
//
// Source: Machinery's Handbook, 31st ed., p. 334.
func (t Torsion) HandbookInsideDiameter(wind units.Angle) units.Length {
	n := t.spec.BodyTurns
	return units.Length(float64(t.InsideDiameter(0)) * n / (n + wind.Turns()))
}

// PinClearance returns the play on diameter between a pin and the coil when wound,
// D′ − d − pin. Below 0 the coil has gripped the pin: the rate climbs steeply and
// the wire is drawn where no formula here follows it. Judge it at full wind, never
// free.
//
// Source: Shigley, eq. 10-54.
func (t Torsion) PinClearance(pin units.Length, wind units.Angle) units.Length {
	return t.InsideDiameter(wind) - pin
}

// GripAngle returns the wind at which the coil grips a pin. It is negative for
// a pin that does not go in.
func (t Torsion) GripAngle(pin units.Length) units.Angle {
	turns := t.spec.BodyTurns * (t.mean/(float64(pin)+t.spec.Wire.thickness) - 1)
	return units.Angle(turns*t.active/t.spec.BodyTurns) * units.Turn
}

// PinFor returns the pin that makers' tables go with, nine tenths of the bore at
// the full wind.
//
// Source: several spring makers' tables (about 10 per cent clearance at the rated
// angle).
func (t Torsion) PinFor(fullWind units.Angle) units.Length {
	return units.Length(0.9 * float64(t.InsideDiameter(fullWind)))
}

// Mandrel returns the band in which the mandrel lies that leaves the free bore
// after the wire has sprung back, 5 to 15 per cent smaller. Make a trial coil
// (common practice, no source).
func (t Torsion) Mandrel() (least, most units.Length) {
	bore := float64(t.InsideDiameter(0))
	return units.Length(0.85 * bore), units.Length(0.95 * bore)
}

// BodyLength returns the axial length of the body when wound. Coils that touch
// grow by the width of the wire a turn, (N_b + 1 + n) b; coils with a gap keep
// their length, pitch × N_b + b, until they touch.
//
// Source: Shigley, sec. 10-12 and spring makers' data (from memory).
func (t Torsion) BodyLength(wind units.Angle) units.Length {
	n, b := t.spec.BodyTurns, t.spec.Wire.width
	touching := (n + 1 + t.turnsAdded(wind)) * b
	if t.spec.Pitch == 0 {
		return units.Length(touching)
	}
	return units.Length(math.Max(touching, float64(t.spec.Pitch)*n+b))
}

// CoilGap returns the gap left between coils when wound: 0 where they touch.
// About 1/64 in, 0.4 mm, takes the friction between coils away.
//
// Source: Machinery's Handbook, 31st ed., p. 336 (the 1/64 in).
func (t Torsion) CoilGap(wind units.Angle) units.Length {
	if t.spec.Pitch == 0 {
		return 0
	}
	n, b := t.spec.BodyTurns, t.spec.Wire.width
	return units.Length(math.Max(0, float64(t.spec.Pitch)*n/(n+t.turnsAdded(wind))-b))
}

// WireLength returns the wire in the spring, legs counted as far as given; what a
// hook or a bend takes comes on top.
func (t Torsion) WireLength() units.Length {
	n := t.spec.BodyTurns
	pitch := float64(max(t.spec.Pitch, t.spec.Wire.Width()))
	return units.Length(math.Hypot(math.Pi*t.mean*n, pitch*n)) + t.spec.Legs[0] + t.spec.Legs[1]
}

// Mass returns the mass of the wire. The error is units.ErrDomain for a material
// without density.
func (t Torsion) Mass() (units.Mass, error) {
	rho, err := t.spec.Material.Density()
	return units.Mass(float64(rho) * float64(t.spec.Wire.Area()) * float64(t.WireLength())), err
}

// SurgeSpeed returns the lowest natural frequency of the body, as turns of the
// vibration per time, so that RevolutionsPerSecond gives hertz. One end free:
//
//	f = ¼ √(k/J)     both ends held: f = ½ √(k/J)     J = m D²/4
//
// Derived here on the pattern of compression springs; no print was found. The
// error is units.ErrDomain for a material without density.
func (t Torsion) SurgeSpeed(bothHeld bool) (units.AngularSpeed, error) {
	rho, err := t.spec.Material.Density()
	if err != nil {
		return 0, err
	}
	mass := float64(rho) * float64(t.spec.Wire.Area()) * math.Pi * t.mean * t.spec.BodyTurns
	body := t.rate * t.active / t.spec.BodyTurns
	f := math.Sqrt(body/(mass*t.mean*t.mean/4)) / 4
	if bothHeld {
		f *= 2
	}
	return units.AngularSpeed(f) * units.RevolutionPerSecond, nil
}

// Advice lists what lies outside the ranges that standards and handbooks keep to.
// An empty list is no promise that the spring is good.
//
// Sources: EN 13906-3 (scope: wire to 20 mm, at least 2 turns, index 4 to 20);
// Shigley, sec. 10-12 (index 4 to 12, at least 3 turns; from memory).
func (t Torsion) Advice() []string {
	var out []string
	c := t.Index()
	switch {
	case c < 4 || c > 20:
		out = append(out, fmt.Sprintf("index %.1f: outside 4 to 20, the scope of EN 13906-3 for cold coiling", c))
	case c > 12:
		out = append(out, fmt.Sprintf("index %.1f: above 12 it is awkward to coil and hold", c))
	}
	switch {
	case t.spec.BodyTurns < 2:
		out = append(out, fmt.Sprintf("%.2f body turns: below 2, outside the scope of EN 13906-3", t.spec.BodyTurns))
	case t.spec.BodyTurns < 3:
		out = append(out, fmt.Sprintf("%.2f body turns: fewer than 3 are not recommended", t.spec.BodyTurns))
	}
	if t.spec.Wire.Thickness() > 20*units.Millimetre {
		out = append(out, fmt.Sprintf("wire %v: above 20 mm, outside the scope of EN 13906-3", t.spec.Wire.Thickness()))
	}
	return out
}
