package springs

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/units"
)

// A Pull is one reading on a spring balance: the force at a length of the spring.
type Pull struct {
	Length units.Reading[units.Length]
	Force  units.Reading[units.Force]
}

// A MeasuredCoil is an unknown compression or extension spring of round wire as
// measured. Two pulls, well apart, find the rate whatever the free length and the
// initial tension are.
type MeasuredCoil struct {
	Wire        units.Reading[units.Length] // diameter, scale and paint off
	Outside     units.Reading[units.Length] // diameter of the coil
	ActiveTurns units.Reading[units.Ratio]  // of a compression spring without the closed ends; of an extension spring with 0.4 for its hooks
	Pulls       [2]Pull
}

// A Match is a material held against a modulus that was measured.
type Match struct {
	Grade   Grade
	Modulus units.Pressure
	Off     float64 // how far from the measured one, in standard uncertainties
}

// Rate returns the rate and its uncertainty from the two pulls,
// (F₂ − F₁)/(x₂ − x₁), without a sign. The error is units.ErrDomain for two pulls
// at one length or with one force, and what units.Propagate returns.
func (m MeasuredCoil) Rate() (units.Result[units.Stiffness], error) {
	if err := m.check(); err != nil {
		return units.Result[units.Stiffness]{}, err
	}
	v := m.variables()
	return units.Propagate(func() units.Stiffness { return units.Stiffness(v.rate()) }, v.pulls()...)
}

// ShearModulus returns the modulus that the spring's wire must have for the rate it
// shows, G = 8 k D³ N_a / d⁴. The wire counts four times over: its diameter is
// the reading to take best. The error is as for Rate, and units.ErrDomain for sizes
// that make no coil.
func (m MeasuredCoil) ShearModulus() (units.Result[units.Pressure], error) {
	if err := first(m.check(), m.checkCoil()); err != nil {
		return units.Result[units.Pressure]{}, err
	}
	v := m.variables()
	return units.Propagate(func() units.Pressure {
		return units.Pressure(v.rate() * float64(v.turns) / v.perTurn())
	}, v.all()...)
}

// Turns returns the active turns that the spring must have if its wire is of the
// given shear modulus, N_a = G d⁴ / (8 D³ k): the way to find coils that cannot be
// counted, or that are broken off. The error is as for ShearModulus.
func (m MeasuredCoil) Turns(g units.Pressure) (units.Result[units.Ratio], error) {
	if err := first(m.check(), m.checkCoil(), positive("shear modulus", g)); err != nil {
		return units.Result[units.Ratio]{}, err
	}
	v := m.variables()
	return units.Propagate(func() units.Ratio {
		return units.Ratio(float64(g) * v.perTurn() / v.rate())
	}, v.coil()...)
}

// EqualNew returns the active turns of a new spring of the same rate from other
// wire, on a mean diameter of the caller's choice: N_a = G d⁴ / (8 D³ k). The
// error is as for Rate, and units.ErrDomain for a mean diameter not above the wire.
func (m MeasuredCoil) EqualNew(wire, mean units.Length, g units.Pressure) (units.Result[units.Ratio], error) {
	section, err := RoundWire(wire)
	if err := first(err, m.check(), positive("shear modulus", g)); err != nil {
		return units.Result[units.Ratio]{}, err
	}
	if !(mean > wire) || math.IsInf(float64(mean), 0) {
		return units.Result[units.Ratio]{}, fmt.Errorf("mean diameter %v: want more than %v, the wire: %w", mean, wire, units.ErrDomain)
	}
	v := m.variables()
	return units.Propagate(func() units.Ratio {
		return units.Ratio(float64(g) * section.coilStiffness(float64(mean)) / v.rate())
	}, v.pulls()...)
}

// MatchShear returns the materials on file in the order in which their shear
// modulus, for that size of wire, comes near a measured one. Steels lie so close
// together that only the best of readings tells them apart; bronze and stainless
// stand out.
func MatchShear(measured units.Result[units.Pressure], wire units.Length) []Match {
	return match(measured, func(m Material) (units.Pressure, error) { return m.ShearModulus(wire) })
}

// MatchYoung is MatchShear for Young's modulus, from a torsion spring.
func MatchYoung(measured units.Result[units.Pressure], wire units.Length) []Match {
	return match(measured, func(m Material) (units.Pressure, error) { return m.YoungsModulus(wire) })
}

func match(measured units.Result[units.Pressure], modulus func(Material) (units.Pressure, error)) []Match {
	var out []Match
	for _, g := range Grades() {
		if v, err := modulus(g.Material()); err == nil {
			out = append(out, Match{g, v, offBy(v-measured.Value, measured.Std)})
		}
	}
	slices.SortStableFunc(out, func(a, b Match) int { return cmp.Compare(a.away(measured.Value), b.away(measured.Value)) })
	return out
}

func (m Match) away(from units.Pressure) float64 { return math.Abs(float64(m.Modulus - from)) }

// offBy returns a difference in standard uncertainties, 0 for none at all.
func offBy(difference, std units.Pressure) float64 {
	if difference == 0 {
		return 0
	}
	return math.Abs(float64(difference / std))
}

func (m MeasuredCoil) check() error {
	a, b := m.Pulls[0], m.Pulls[1]
	dx, df := b.Length.Value-a.Length.Value, b.Force.Value-a.Force.Value
	if dx == 0 || df == 0 || math.IsNaN(float64(dx)+float64(df)) {
		return fmt.Errorf("pulls %v at %v and %v at %v: want two lengths and two forces that differ: %w", a.Force, a.Length, b.Force, b.Length, units.ErrDomain)
	}
	return nil
}

func (m MeasuredCoil) checkCoil() error {
	err := first(positive("wire diameter", m.Wire.Value), positive("active turns", m.ActiveTurns.Value))
	if err == nil && !(m.Outside.Value > 2*m.Wire.Value) {
		err = fmt.Errorf("outside diameter %v: want more than %v, twice the wire: %w", m.Outside.Value, 2*m.Wire.Value, units.ErrDomain)
	}
	return err
}

// coilVariables are the readings as Propagate varies them.
type coilVariables struct {
	m             MeasuredCoil
	wire, outside units.Length
	turns         units.Ratio
	x             [2]units.Length
	f             [2]units.Force
}

func (m MeasuredCoil) variables() *coilVariables {
	v := &coilVariables{m: m, wire: m.Wire.Value, outside: m.Outside.Value, turns: m.ActiveTurns.Value}
	for i, p := range m.Pulls {
		v.x[i], v.f[i] = p.Length.Value, p.Force.Value
	}
	return v
}

func (v *coilVariables) rate() float64 {
	return math.Abs(float64(v.f[1]-v.f[0]) / float64(v.x[1]-v.x[0]))
}

// perTurn returns d⁴/(8 D³).
func (v *coilVariables) perTurn() float64 {
	d, mean := float64(v.wire), float64(v.outside-v.wire)
	return d * d * d * d / (8 * mean * mean * mean)
}

func (v *coilVariables) pulls() []units.Input {
	return []units.Input{
		units.VaryReading("first length", &v.x[0], v.m.Pulls[0].Length),
		units.VaryReading("second length", &v.x[1], v.m.Pulls[1].Length),
		units.VaryReading("first force", &v.f[0], v.m.Pulls[0].Force),
		units.VaryReading("second force", &v.f[1], v.m.Pulls[1].Force),
	}
}

func (v *coilVariables) coil() []units.Input {
	return append(v.pulls(),
		units.VaryReading("wire", &v.wire, v.m.Wire),
		units.VaryReading("outside diameter", &v.outside, v.m.Outside))
}

func (v *coilVariables) all() []units.Input {
	return append(v.coil(), units.VaryReading("active turns", &v.turns, v.m.ActiveTurns))
}
