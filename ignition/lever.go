package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Lever is what a hand lever, or an automatic advance in its two end
// positions, does to the timing. Make one with [MeasuredScale.Lever].
type Lever struct {
	Advanced units.Reading[units.Angle] // before top dead centre, lever full forward
	Retarded units.Reading[units.Angle] // before top dead centre, lever full back; negative: after
	Range    units.Reading[units.Angle] // between them, free of the uncertainty of top dead centre

	// What each uncertainty is made of, in shares that add up to 1; the largest
	// names the reading to take better first. Empty for a Lever not made here.
	AdvancedBudget []units.Contribution[units.Angle]
	RetardedBudget []units.Contribution[units.Angle]
	RangeBudget    []units.Contribution[units.Angle]
}

// The names of the readings of a Lever in its budgets.
const (
	advancedName = "figure at full advance"
	retardedName = "figure at full retard"
	wantedName   = "timing wanted"
)

// Lever returns the timing at both ends of a lever, from the rim figures at
// which the contacts open at full advance and at full retard, with one gap and
// turned forward. The error is [units.ErrDomain] when full retard is clearly
// earlier than full advance: then the two are changed about, or the rim figures
// are not as stated.
func (m MeasuredScale) Lever(advanced, retarded units.Reading[units.Length]) (Lever, error) {
	early, err := m.advance(advancedName, advanced)
	if err != nil {
		return Lever{}, err
	}
	late, err := m.advance(retardedName, retarded)
	if err != nil {
		return Lever{}, err
	}
	span, err := m.between(advancedName, advanced, retardedName, retarded)
	if err != nil {
		return Lever{}, err
	}
	if span.Value < -3*span.Std {
		return Lever{}, fmt.Errorf("full retard %.1f° earlier than full advance: want the two ends the right way round and rim figures that are %v as stated: %w",
			-span.Value.Degrees(), m.Figures, units.ErrDomain)
	}
	return Lever{early.Reading(), late.Reading(), span.Reading(), early.Budget, late.Budget, span.Budget}, nil
}

// SetTo returns the same lever after the drive has been moved so that full
// advance is as wanted. Full retard is then wanted less the lever's range, and
// has to be looked at again: a drive moved to give more advance takes the
// starting position with it. See [Lever.SetRetarded] for the other end.
func (l Lever) SetTo(wanted units.Reading[units.Angle]) Lever {
	set := l
	set.Advanced, set.AdvancedBudget = wanted, budgetOfEnd(wanted, l, 0)
	set.Retarded, set.RetardedBudget = difference(wanted, l.Range), budgetOfEnd(wanted, l, -1)
	return set
}

// SetRetarded returns the same lever after the drive has been moved so that
// full retard is as wanted, which is what to set for starting by hand: wanted is
// before top dead centre, negative for a spark after it. Full advance is then
// wanted plus the lever's range, and is to be held against what the engine is
// meant to run with: an engine set to start safely may run too late, and then
// the lever has too little range.
func (l Lever) SetRetarded(wanted units.Reading[units.Angle]) Lever {
	set := l
	set.Retarded, set.RetardedBudget = wanted, budgetOfEnd(wanted, l, 0)
	set.Advanced, set.AdvancedBudget = sum(wanted, l.Range), budgetOfEnd(wanted, l, 1)
	return set
}

// budgetOfEnd is what the uncertainty of wanted + sign × range is made of.
func budgetOfEnd(wanted units.Reading[units.Angle], l Lever, sign float64) []units.Contribution[units.Angle] {
	own, other := math.Pow(float64(wanted.Std), 2), math.Pow(sign*float64(l.Range.Std), 2)
	if !(own+other > 0) || sign != 0 && len(l.RangeBudget) == 0 {
		return nil
	}
	budget := []units.Contribution[units.Angle]{{
		Name: wantedName, Value: wanted.Value, Std: wanted.Std, DoF: wanted.DoF,
		Sensitivity: 1, Contribution: wanted.Std, Share: own / (own + other),
	}}
	if sign == 0 {
		return budget
	}
	for _, c := range l.RangeBudget {
		c.Sensitivity *= sign
		c.Contribution *= units.Angle(sign)
		c.Share *= other / (own + other)
		budget = append(budget, c)
	}
	return budget
}

// sum returns a + b for independent readings.
func sum[Q units.Quantity](a, b units.Reading[Q]) units.Reading[Q] {
	b.Value = -b.Value
	return difference(a, b)
}

// difference returns a − b for independent readings.
func difference[Q units.Quantity](a, b units.Reading[Q]) units.Reading[Q] {
	r := a.With(b.Std)
	r.Value -= b.Value
	r.DoF = units.EffectiveDoF(a, b)
	return r
}

// Starting says what the timing at full retard means for starting by hand.
type Starting int

// What the timing at full retard means for starting by hand.
const (
	StartDoubtful Starting = iota // within its uncertainty the spark may come before top dead centre
	StartLate                     // the spark comes after top dead centre
	StartEarly                    // the spark comes before top dead centre: it can kick back
)

// String returns "late", "early" or "doubtful".
func (s Starting) String() string {
	switch s {
	case StartLate:
		return "late"
	case StartEarly:
		return "early"
	}
	return "doubtful"
}

// Starting says whether the spark at full retard comes before top dead centre,
// two standard uncertainties considered.
func (l Lever) Starting() Starting {
	switch early := l.Retarded.Value; {
	case early-2*l.Retarded.Std > 0:
		return StartEarly
	case early+2*l.Retarded.Std <= 0:
		return StartLate
	}
	return StartDoubtful
}

// Caution returns what to tell whoever starts the engine by hand.
func (l Lever) Caution() string {
	at := l.Retarded.Value.Degrees()
	switch l.Starting() {
	case StartEarly:
		return fmt.Sprintf("kick-back: at full retard the spark still comes %.1f° before top dead centre; turned slowly by hand the engine can be thrown backward and break a wrist or throw the rope. Do not start it by hand so: retard further, or fit a lever or an impulse coupling with more range", at)
	case StartLate:
		return fmt.Sprintf("at full retard the spark comes %.1f° after top dead centre; start with the lever fully back, and keep thumb and fingers on one side of the handle", math.Abs(at))
	}
	side := "before"
	if at < 0 {
		side = "after"
	}
	return fmt.Sprintf("kick-back: at full retard the spark comes %.1f° %s top dead centre, which within its uncertainty is not surely after it; treat the engine as one that can kick back, and find full retard better before starting it by hand", math.Abs(at), side)
}
