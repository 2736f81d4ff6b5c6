package units

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/mat"
)

// A pair is a correlation as the caller gave it.
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
