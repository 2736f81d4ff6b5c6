package units

import (
	"encoding"
	"fmt"
	"math"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/mat"
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

type pair struct {
	a, b string
	r    float64
}

// A model is a function with its inputs, ready to be evaluated.
type model struct {
	f      func() float64
	vars   []variable
	pairs  []pair
	stop   []*error
	forced bool
	method Method
	corr   *mat.SymDense // nil where all inputs are independent
}

// newModel puts the inputs together and checks them.
func newModel[Q Quantity](f func() Q, inputs []Input) (*model, error) {
	if f == nil {
		return nil, fmt.Errorf("no function: %w", ErrDomain)
	}
	m := &model{f: func() float64 { return float64(f()) }}
	for _, in := range inputs {
		if in.add == nil {
			return nil, fmt.Errorf("an empty Input: make it with Vary, VaryReading, VaryAs or Correlate: %w", ErrDomain)
		}
		if err := in.add(m); err != nil {
			return nil, err
		}
	}
	return m, m.correlate()
}

func (m *model) vary(v variable, missing bool) error {
	switch {
	case v.name == "":
		return fmt.Errorf("input %d has no name: %w", len(m.vars)+1, ErrDomain)
	case missing:
		return fmt.Errorf("input %q has no variable: %w", v.name, ErrDomain)
	case v.dist == nil:
		return fmt.Errorf("input %q has no distribution: %w", v.name, ErrDomain)
	}
	for _, w := range m.vars {
		if w.name == v.name {
			return fmt.Errorf("input %q is given twice: %w", v.name, ErrDomain)
		}
		if w.place == v.place {
			return fmt.Errorf("inputs %q and %q are the same variable: %w", w.name, v.name, ErrDomain)
		}
	}
	if err := v.dist.check(v.kind); err != nil {
		return fmt.Errorf("input %q: %w", v.name, err)
	}
	m.vars = append(m.vars, v)
	return nil
}

// index finds the input called name, for a correlation.
func (m *model) index(name string) (int, error) {
	names := make([]string, len(m.vars))
	for i, v := range m.vars {
		if v.name == name {
			return i, nil
		}
		names[i] = strconv.Quote(v.name)
	}
	if len(names) == 0 {
		return 0, fmt.Errorf("correlation with %q: there are no inputs: %w", name, ErrDomain)
	}
	return 0, fmt.Errorf("correlation with %q: want one of the inputs %s: %w", name, strings.Join(names, ", "), ErrDomain)
}

// correlate builds the matrix of correlation coefficients.
func (m *model) correlate() error {
	if len(m.pairs) == 0 {
		return nil
	}
	m.corr = identity(max(1, len(m.vars)))
	for _, p := range m.pairs {
		i, err := m.index(p.a)
		if err != nil {
			return err
		}
		j, err := m.index(p.b)
		if err != nil {
			return err
		}
		switch {
		case !(math.Abs(p.r) <= 1):
			return fmt.Errorf("correlation of %q and %q %g: want -1 to 1: %w", p.a, p.b, p.r, ErrDomain)
		case i == j:
			return fmt.Errorf("correlation of %q with itself: want two inputs: %w", p.a, ErrDomain)
		case m.corr.At(i, j) != 0:
			return fmt.Errorf("correlation of %q and %q is given twice: %w", p.a, p.b, ErrDomain)
		}
		m.corr.SetSym(i, j, p.r)
	}
	if _, err := m.correlationRoot(); err != nil {
		return err
	}
	return nil
}

func identity(n int) *mat.SymDense {
	m := mat.NewSymDense(n, nil)
	for i := range n {
		m.SetSym(i, i, 1)
	}
	return m
}

// correlationRoot returns L with L Lᵀ the correlation matrix, from its eigenvectors, so
// that coefficients of ±1 are in order. It refuses a matrix that no set of
// quantities can have.
func (m *model) correlationRoot() (*mat.Dense, error) {
	n := len(m.vars)
	var eig mat.EigenSym
	if !eig.Factorize(m.corr, true) {
		return nil, fmt.Errorf("correlations: no eigenvalues found: %w", ErrDomain)
	}
	var l mat.Dense
	eig.VectorsTo(&l)
	for j, v := range eig.Values(nil) {
		if !(v >= -1e-12*float64(n)) {
			return nil, fmt.Errorf("correlations that contradict one another: the matrix has the eigenvalue %.3g, want none below 0: %w", v, ErrDomain)
		}
		for i := range n {
			l.Set(i, j, l.At(i, j)*math.Sqrt(math.Max(v, 0)))
		}
	}
	return &l, nil
}

// estimates returns the expectation of every input.
func (m *model) estimates() []float64 {
	x := make([]float64, len(m.vars))
	for i, v := range m.vars {
		x[i] = v.dist.mean()
	}
	return x
}

// keep returns a function that gives the caller's variables their own values
// back and leaves no error where StopOn looks.
func (m *model) keep() (restore func()) {
	was := make([]float64, len(m.vars))
	for i, v := range m.vars {
		was[i] = v.get()
	}
	return func() {
		for i, v := range m.vars {
			v.set(was[i])
		}
		m.clear()
	}
}

func (m *model) clear() {
	for _, e := range m.stop {
		*e = nil
	}
}

// at evaluates the function with the inputs at x.
func (m *model) at(x []float64) (float64, error) {
	for i := range m.vars {
		m.vars[i].set(x[i])
	}
	m.clear()
	y := m.f()
	for _, e := range m.stop {
		if *e != nil {
			return 0, fmt.Errorf("%s: %w", m.where(x), *e)
		}
	}
	if math.IsNaN(y) || math.IsInf(y, 0) {
		return 0, fmt.Errorf("%s: the function gives %g: %w", m.where(x), y, ErrNotFinite)
	}
	return y, nil
}

// where names the inputs that differ from their estimates.
func (m *model) where(x []float64) string {
	var parts []string
	for i, v := range m.vars {
		if x[i] != v.dist.mean() {
			parts = append(parts, fmt.Sprintf("%s at %v", v.name, v.amount(x[i])))
		}
	}
	if parts == nil {
		return "with every input at its estimate"
	}
	return "with " + strings.Join(parts, ", ")
}
