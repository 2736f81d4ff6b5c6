package units

import (
	"fmt"
	"math"
)

// A Result is what Propagate finds out about the value of a function.
type Result[Q Quantity] struct {
	Value  Q       // the estimate, Shift included
	Std    Q       // combined standard uncertainty
	DoF    float64 // effective degrees of freedom, 0 for infinite; see EffectiveDoF
	Shift  Q       // what curvature adds to the estimate; 0 to first order
	Method Method  // how it was found, and whether that is good enough
	Budget []Contribution[Q]
}

// A Contribution is the line of one input in an uncertainty budget.
type Contribution[Q Quantity] struct {
	Name  string
	Value Amount  // estimate of the input
	Std   Amount  // standard uncertainty of the input
	DoF   float64 // its degrees of freedom, 0 for infinite

	// Sensitivity is the partial derivative of the function by the input, in
	// SI units of the result for one SI unit of the input (degrees do not
	// come into it: angles are in radians). String writes it in usual units.
	Sensitivity float64

	// Contribution is the sensitivity times the standard uncertainty, with
	// the sign of the sensitivity.
	Contribution Q

	// Share is the part of the variance of the result that comes from this
	// input. The shares of a budget add up to 1. The share is half the
	// relative fall of the variance for a relative fall of the input's
	// standard uncertainty: a share of 0.6 means that taking one per cent off
	// that uncertainty takes 1.2 per cent off the variance. Between correlated
	// inputs it is negative where an input makes up for others.
	//
	// Of the second-order terms ½ fᵢⱼ² is halved between its two inputs, and
	// fᵢ fᵢⱼⱼ goes to input i.
	Share float64
}

// A Method says how an uncertainty was propagated.
type Method int

const (
	// FirstOrder: the law of propagation of uncertainty, a straight line in
	// place of the function. JCGM 100:2008, 5.1.2 and 5.2.2.
	FirstOrder Method = iota
	// SecondOrder: with the terms of next higher order, because they are not
	// small. JCGM 100:2008, 5.1.2, note.
	SecondOrder
	// NeedsMonteCarlo: neither will do, because within 1.5 standard
	// uncertainties of an input the function ends or departs from its series by
	// more than a quarter of Std. Std is then only a rough figure, made of how
	// far the function moves at 1.5 standard uncertainties of each input. Use
	// the function MonteCarlo.
	NeedsMonteCarlo
)

// String names the method in words.
func (m Method) String() string {
	switch m {
	case FirstOrder:
		return "first order"
	case SecondOrder:
		return "second order"
	case NeedsMonteCarlo:
		return "rough: needs Monte Carlo"
	}
	return fmt.Sprintf("Method(%d)", int(m))
}

// Use makes Propagate keep to first or to second order, where it would choose
// for itself: to repeat a published first-order budget, or to see what the
// second-order terms are. MonteCarlo takes no notice of it.
func Use(m Method) Input {
	return Input{func(mod *model) error {
		if m != FirstOrder && m != SecondOrder {
			return fmt.Errorf("method %v: want FirstOrder or SecondOrder: %w", m, ErrDomain)
		}
		mod.forced, mod.method = true, m
		return nil
	}}
}

// Propagate finds the value of f and its standard uncertainty from those of
// the inputs, by
//
//	u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ
//
// with cᵢ the partial derivative of f by input i, uᵢ its standard uncertainty
// and rᵢⱼ the correlation of two inputs. The function f works on variables of
// the caller, of any types; Propagate sets them, calls f, and gives them their
// own values back. It must not be called at the same time as anything else
// that uses those variables.
//
// The derivatives are numerical, by central differences carried to the limit
// of step nought (Ridders); for a smooth function they are good to better than
// 1e-8 of their value. An input whose Std is 0 is not varied, and its
// Sensitivity stands as 0.
//
// Where the function bends within the uncertainty of its inputs, so that the
// terms of second order change u by more than 5 %, they are taken in:
//
//	u² + Σᵢ Σⱼ (½ fᵢⱼ² + fᵢ fᵢⱼⱼ) uᵢ² uⱼ²
//
// and the estimate moves by ½ Σ fᵢᵢ uᵢ². That is the case of a dial at top dead
// centre, where fᵢ is 0. Method says which it was, and when neither is good
// enough; then use MonteCarlo. The degrees of freedom are those of
// Welch-Satterthwaite.
//
// The error is ErrNotFinite for a function that gives NaN or an infinity,
// what StopOn was told, or ErrDomain for inputs that do not make sense: two of
// one name or of one variable, a negative standard uncertainty, a correlation
// with an unknown name, outside −1 to 1 or contradicting the others.
//
// Source: JCGM 100:2008, 5.1.2 with its note, 5.2.2 and G.4.1.
func Propagate[Q Quantity](f func() Q, inputs ...Input) (Result[Q], error) {
	m, err := newModel(f, inputs)
	if err != nil {
		return Result[Q]{}, err
	}
	defer m.keep()()
	s, err := m.expand()
	if err != nil {
		return Result[Q]{}, err
	}
	v := m.variance(s)
	res := Result[Q]{
		Value:  Q(s.y + v.shift),
		Std:    Q(math.Sqrt(v.total)),
		DoF:    m.effectiveDoF(v),
		Shift:  Q(v.shift),
		Method: v.method,
		Budget: make([]Contribution[Q], len(m.vars)),
	}
	for i := range m.vars {
		res.Budget[i] = contribution[Q](&m.vars[i], s.c[i], v.share(i))
	}
	return res, nil
}

func contribution[Q Quantity](v *variable, c, share float64) Contribution[Q] {
	u := v.dist.std()
	return Contribution[Q]{
		Name: v.name, Value: v.amount(v.dist.mean()), Std: v.spread(u), DoF: v.dist.dof(),
		Sensitivity: c, Contribution: Q(c * u), Share: share,
	}
}

// String writes the line of the budget: "arc: u 0.3 mm, 0.76°/mm, 0.23°, 61 %".
func (c Contribution[Q]) String() string {
	if c.Std == nil {
		return "nothing uncertain"
	}
	u, v := c.Std.Unit().Value(), float64(c.Contribution)
	in, out := c.Std.kind(), kindOf[Q]().differenceKind()
	num, den := out.choose(v), in.choose(u)
	slope := significant(c.Sensitivity*den.factor/num.factor, 2)
	if den.name == "" {
		slope = num.join(slope)
	} else {
		slope = num.join(slope) + "/" + den.name
	}
	return fmt.Sprintf("%s: u %s, %s, %s, %s %%", c.Name, in.brief(u), slope, out.brief(v), significant(100*c.Share, 2))
}

// brief writes v in two figures.
func (k *kind) brief(v float64) string {
	s := k.choose(v)
	return s.join(significant(s.number(v), 2))
}

// Reading returns the result as a reading, to go into a further calculation.
// That is right where the two calculations share no input; where they do,
// propagate through both at once.
func (r Result[Q]) Reading() Reading[Q] { return Reading[Q]{r.Value, r.Std, r.DoF} }

// String writes the value rounded to its uncertainty, and the uncertainty.
func (r Result[Q]) String() string { return r.Reading().String() }

// Largest returns the contribution with the largest share of the variance: the
// reading to take better first. It returns a Contribution without a name if
// the budget is empty or nothing in it is uncertain.
func (r Result[Q]) Largest() Contribution[Q] {
	var largest Contribution[Q]
	for _, c := range r.Budget {
		if c.Share > largest.Share {
			largest = c
		}
	}
	return largest
}

// Expanded returns the expanded uncertainty U = k·Std that covers the fraction
// p of what the result may be, and the coverage factor k: see CoverageFactor,
// also for the errors. It is right where the result is nearly normal: many
// contributions, or one that is normal. Where one rectangular contribution is
// most of the budget, or Method is not FirstOrder, the interval of MonteCarlo
// is the better answer.
//
// Source: JCGM 100:2008, 6.2.1 and 6.3.3.
func (r Result[Q]) Expanded(p float64) (expanded Q, k float64, err error) {
	return r.Reading().Expanded(p)
}
