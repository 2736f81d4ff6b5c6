package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Twist is one reading of a torsion spring: the torque at an angle, as a force on
// an arm of known length.
type Twist struct {
	Angle units.Reading[units.Angle]
	Force units.Reading[units.Force]
}

// A MeasuredTorsion is an unknown torsion spring of round wire as measured.
type MeasuredTorsion struct {
	Wire      units.Reading[units.Length]
	Outside   units.Reading[units.Length]
	BodyTurns units.Reading[units.Ratio]
	Legs      [2]units.Length             // as for TorsionSpec; taken as exact, they count for little
	Arm       units.Reading[units.Length] // from the axis to the line of the force
	Twists    [2]Twist
	Constant  RateConstant // with which the new spring will be reckoned
}

// Rate returns the rate and its uncertainty from the two readings,
// a (F₂ − F₁)/(θ₂ − θ₁), without a sign. The error is units.ErrDomain for two
// readings at one angle or with one force or an arm that is not more than 0, and what
// units.Propagate returns.
func (m MeasuredTorsion) Rate() (units.Result[units.TorsionalStiffness], error) {
	if err := m.check(); err != nil {
		return units.Result[units.TorsionalStiffness]{}, err
	}
	v := m.variables()
	return units.Propagate(func() units.TorsionalStiffness { return units.TorsionalStiffness(v.rate()) }, v.twists()...)
}

// YoungsModulus returns the modulus that the wire must have for the rate the spring
// shows, by the spring's constant. The error is as for Rate, and units.ErrDomain
// for sizes that make no coil.
func (m MeasuredTorsion) YoungsModulus() (units.Result[units.Pressure], error) {
	if err := first(m.check(), m.checkCoil()); err != nil {
		return units.Result[units.Pressure]{}, err
	}
	v := m.variables()
	return units.Propagate(func() units.Pressure {
		return units.Pressure(v.rate() * (float64(v.turns) + v.legTurns()) / v.perTurn())
	}, append(v.coil(), units.VaryReading("body turns", &v.turns, m.BodyTurns))...)
}

// Turns returns the body turns that the spring must have if its wire is of the given
// Young's modulus. The error is as for YoungsModulus.
func (m MeasuredTorsion) Turns(e units.Pressure) (units.Result[units.Ratio], error) {
	if err := first(m.check(), m.checkCoil(), positive("Young's modulus", e)); err != nil {
		return units.Result[units.Ratio]{}, err
	}
	v := m.variables()
	return units.Propagate(func() units.Ratio {
		return units.Ratio(float64(e)*v.perTurn()/v.rate() - v.legTurns())
	}, v.coil()...)
}

// EqualNew returns the body turns of a new spring of the same rate from other wire on
// a mean diameter of the caller's choice, with the same legs. The error is as for
// Rate, and units.ErrDomain for a mean diameter not above the wire.
func (m MeasuredTorsion) EqualNew(wire, mean units.Length, e units.Pressure) (units.Result[units.Ratio], error) {
	if err := first(m.check(), positive("wire diameter", wire), positive("Young's modulus", e)); err != nil {
		return units.Result[units.Ratio]{}, err
	}
	if !(mean > wire) || math.IsInf(float64(mean), 0) {
		return units.Result[units.Ratio]{}, fmt.Errorf("mean diameter %v: want more than %v, the wire: %w", mean, wire, units.ErrDomain)
	}
	v := m.variables()
	v.wire, v.outside = wire, mean+wire
	return units.Propagate(func() units.Ratio {
		return units.Ratio(float64(e)*v.perTurn()/v.rate() - v.legTurns())
	}, v.twists()...)
}

func (m MeasuredTorsion) check() error {
	a, b := m.Twists[0], m.Twists[1]
	dx, df := b.Angle.Value-a.Angle.Value, b.Force.Value-a.Force.Value
	switch {
	case dx == 0 || df == 0 || math.IsNaN(float64(dx)+float64(df)):
		return fmt.Errorf("%v at %v and %v at %v: want two angles and two forces that differ: %w", a.Force, a.Angle, b.Force, b.Angle, units.ErrDomain)
	case m.Constant.angleFactor(round) == 0:
		return fmt.Errorf("constant %d: want TheoryRate, Allowance108 or Handbook4000: %w", int(m.Constant), units.ErrDomain)
	}
	return positive("arm", m.Arm.Value)
}

func (m MeasuredTorsion) checkCoil() error {
	err := first(positive("wire diameter", m.Wire.Value), positive("body turns", m.BodyTurns.Value))
	if err == nil && !(m.Outside.Value > 2*m.Wire.Value) {
		err = fmt.Errorf("outside diameter %v: want more than %v, twice the wire: %w", m.Outside.Value, 2*m.Wire.Value, units.ErrDomain)
	}
	return err
}

type torsionVariables struct {
	m                  MeasuredTorsion
	wire, outside, arm units.Length
	turns              units.Ratio
	x                  [2]units.Angle
	f                  [2]units.Force
}

func (m MeasuredTorsion) variables() *torsionVariables {
	v := &torsionVariables{m: m, wire: m.Wire.Value, outside: m.Outside.Value, arm: m.Arm.Value, turns: m.BodyTurns.Value}
	for i, p := range m.Twists {
		v.x[i], v.f[i] = p.Angle.Value, p.Force.Value
	}
	return v
}

func (v *torsionVariables) rate() float64 {
	return math.Abs(float64(v.arm) * float64(v.f[1]-v.f[0]) / float64(v.x[1]-v.x[0]))
}

func (v *torsionVariables) mean() float64 { return float64(v.outside - v.wire) }

func (v *torsionVariables) legTurns() float64 {
	return float64(v.m.Legs[0]+v.m.Legs[1]) / (3 * math.Pi * v.mean())
}

// perTurn returns I/(π D f): the rate of one turn over Young's modulus.
func (v *torsionVariables) perTurn() float64 {
	d := float64(v.wire)
	return d * d * d * d / (64 * v.mean() * v.m.Constant.angleFactor(round))
}

func (v *torsionVariables) twists() []units.Input {
	return []units.Input{
		units.VaryReading("first angle", &v.x[0], v.m.Twists[0].Angle),
		units.VaryReading("second angle", &v.x[1], v.m.Twists[1].Angle),
		units.VaryReading("first force", &v.f[0], v.m.Twists[0].Force),
		units.VaryReading("second force", &v.f[1], v.m.Twists[1].Force),
		units.VaryReading("arm", &v.arm, v.m.Arm),
	}
}

func (v *torsionVariables) coil() []units.Input {
	return append(v.twists(),
		units.VaryReading("wire", &v.wire, v.m.Wire),
		units.VaryReading("outside diameter", &v.outside, v.m.Outside))
}
