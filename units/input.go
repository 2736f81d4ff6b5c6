package units

import (
	"encoding"
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// An Input names one thing that Propagate or MonteCarlo is to take account of:
// a variable that is not known exactly (Vary, VaryReading, VaryAs), a
// correlation between two of them (Correlate), a place where the function
// leaves its errors (StopOn), or the method to use (Use).
type Input struct{ add func(*model) error }

// An Amount is a quantity of any type, as a budget lists it. A plain number
// stands in a budget as a Ratio. All types of this package that have units are
// Amounts.
type Amount interface {
	fmt.Stringer
	fmt.Formatter
	encoding.TextMarshaler
	unit.Uniter
	kind() *kind
}

// Vary names variable p, whose estimate is the value it has when the
// calculation is started, and whose standard uncertainty is std. Its degrees
// of freedom are taken as infinite and its distribution, where one is needed,
// as normal.
//
// For a Temperature std is a difference, in kelvins.
func Vary[Q Quantity](name string, p *Q, std Q) Input {
	return Input{func(m *model) error {
		v := newVariable(name, p)
		if p != nil {
			v.dist = Normal(*p, std).distribution
		}
		return m.vary(v, p == nil)
	}}
}

// VaryReading names variable p and gives it the value, the standard
// uncertainty and the degrees of freedom of r. The variable holds r.Value
// while the function is evaluated and gets its own value back afterwards, so
// that p need not have been set. Where a distribution is needed it is normal,
// or with a finite number of degrees of freedom Student's (JCGM 101:2008,
// 6.4.9).
func VaryReading[Q Quantity](name string, p *Q, r Reading[Q]) Input {
	d := Normal(r.Value, r.Std)
	if r.DoF != 0 {
		d = StudentT(r.Value, r.Std, r.DoF)
	}
	return VaryAs(name, p, d)
}

// VaryAs names variable p and gives it a distribution. MonteCarlo draws from
// it; Propagate takes its expectation, its standard uncertainty and its
// degrees of freedom. As with VaryReading the variable gets its own value
// back afterwards.
func VaryAs[Q Quantity](name string, p *Q, d Distribution[Q]) Input {
	return Input{func(m *model) error {
		v := newVariable(name, p)
		v.dist = d.distribution
		return m.vary(v, p == nil)
	}}
}

// Correlate says that the inputs named a and b are correlated with
// coefficient r, from −1 to 1. Inputs of which nothing is said are
// independent.
//
// Source: JCGM 100:2008, 5.2.
func Correlate(a, b string, r float64) Input {
	return Input{func(m *model) error {
		m.pairs = append(m.pairs, pair{a, b, r})
		return nil
	}}
}

// StopOn is how a function that may fail says so. It is given the address of
// an error variable that the function sets; the variable is cleared before
// every call, and when a call leaves an error there the calculation stops and
// returns it, with the values at which it happened. A function without an
// answer may also return NaN, which is refused in any case but cannot say why.
func StopOn(err *error) Input {
	return Input{func(m *model) error {
		if err == nil {
			return fmt.Errorf("StopOn without a variable: %w", ErrDomain)
		}
		m.stop = append(m.stop, err)
		return nil
	}}
}

// A variable is one input that varies.
type variable struct {
	name   string
	kind   *kind
	place  any // the caller's pointer, to find one given twice
	get    func() float64
	set    func(float64)
	amount func(float64) Amount // an estimate of it
	spread func(float64) Amount // a difference of two of them
	dist   distribution
}

func newVariable[Q Quantity](name string, p *Q) variable {
	return variable{
		name: name, kind: kindOf[Q](), place: p,
		get:    func() float64 { return float64(*p) },
		set:    func(x float64) { *p = Q(x) },
		amount: func(x float64) Amount { return amountOf(Q(x)) },
		spread: func(x float64) Amount { return spreadOf(Q(x)) },
	}
}

func amountOf[Q Quantity](v Q) Amount {
	if a, ok := any(v).(Amount); ok {
		return a
	}
	return Ratio(v)
}

func spreadOf[Q Quantity](v Q) Amount {
	if t, ok := any(v).(Temperature); ok {
		return TemperatureDifference(t)
	}
	return amountOf(v)
}
