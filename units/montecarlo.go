package units

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat"
)

// A Run says how MonteCarlo is to sample. The zero Run goes on until the
// results are stable.
type Run struct {
	Seed     uint64  // the same seed gives the same result
	Trials   int     // a fixed number of trials; 0: go on until stable
	Coverage float64 // of the interval that must be stable; 0 stands for 0.95
	Shortest bool    // the shortest interval must be stable; else the symmetric one
	Digits   int     // significant digits of Std that must be stable; 0 stands for 2
	Cap      int     // give up being stable after so many trials; 0 stands for 2 million

	// Progress, if set, is called from time to time with the number of trials
	// done. An error from it stops the run and is returned.
	Progress func(trials int) error
}

// MonteCarlo finds the distribution of the value of f by drawing its inputs
// from their distributions and evaluating f, again and again. The inputs are
// those of Propagate; inputs with a correlation must be normal. It is the way
// to go where f is not nearly a straight line within the uncertainty of its
// inputs (a dial at top dead centre), or where one rectangular input outweighs
// the rest.
//
// Without a fixed number of trials it goes on, 10 000 at a time (more for a
// coverage above 0.99), until twice the standard deviation of the averages of
// the estimate, of Std and of each end of the interval is below the tolerance,
// or Run.Cap is reached, which the Sample then says. It keeps all values,
// eight bytes a trial.
//
// The error is ErrDomain for a Run or inputs that do not make sense,
// ErrNotFinite for a function that gives NaN or an infinity at some trial, or
// what StopOn or Progress was told.
//
// Source: JCGM 101:2008, clauses 6.4, 7.2 to 7.7 and 7.9.
func MonteCarlo[Q Quantity](f func() Q, run Run, inputs ...Input) (Sample[Q], error) {
	m, err := newModel(f, inputs)
	if err != nil {
		return Sample[Q]{}, err
	}
	if run, err = run.withDefaults(); err != nil {
		return Sample[Q]{}, err
	}
	s, err := m.sampler(run)
	if err != nil {
		return Sample[Q]{}, err
	}
	defer m.keep()()
	if run.Trials > 0 {
		err = s.fixed()
	} else {
		err = s.adapt()
	}
	if err != nil {
		return Sample[Q]{}, err
	}
	mean, std := stat.MeanStdDev(s.values, nil)
	slices.Sort(s.values)
	return Sample[Q]{
		Value: Q(mean), Std: Q(std), Trials: len(s.values),
		Tolerance: Q(tolerance(std, run.Digits)), Stable: s.stable, sorted: s.values,
	}, nil
}

// withDefaults checks a Run and fills in what stands as 0.
func (r Run) withDefaults() (Run, error) {
	if r.Coverage == 0 {
		r.Coverage = 0.95
	}
	if r.Digits == 0 {
		r.Digits = 2
	}
	if r.Cap == 0 {
		r.Cap = 2_000_000
	}
	least := int(math.Ceil(1 / (1 - r.Coverage)))
	switch {
	case !(0 < r.Coverage && r.Coverage < 1):
		return r, fmt.Errorf("coverage %g: want a fraction between 0 and 1, such as 0.95: %w", r.Coverage, ErrDomain)
	case r.Digits < 1 || r.Digits > 6:
		return r, fmt.Errorf("%d digits: want 1 to 6: %w", r.Digits, ErrDomain)
	case r.Trials < 0 || r.Trials > 0 && r.Trials <= least:
		return r, fmt.Errorf("%d trials: want more than %d for a coverage of %g, and many thousands: %w", r.Trials, least, r.Coverage, ErrDomain)
	case r.Trials == 0 && r.Cap < 2*r.sequence():
		return r, fmt.Errorf("cap of %d trials: want %d or more: %w", r.Cap, 2*r.sequence(), ErrDomain)
	}
	return r, nil
}

// sequence is the number of trials between two looks at the results: M of
// 7.9.4 b).
func (r Run) sequence() int {
	return max(10_000, int(math.Ceil(100/(1-r.Coverage)-1e-9)))
}

// tolerance is half a unit of the last of so many digits of u: δ of 7.9.2.
func tolerance(u float64, digits int) float64 {
	if !(u > 0) {
		return 0
	}
	_, e, _ := strings.Cut(strconv.FormatFloat(u, 'e', digits-1, 64), "e")
	exp, _ := strconv.Atoi(e)
	return 0.5 * math.Pow10(exp-digits+1)
}

// A sampler draws values of a model.
type sampler struct {
	*model
	run    Run
	rnd    *rand.Rand
	root   *mat.Dense // nil if nothing is correlated
	joint  []bool     // inputs that are correlated with another
	z, x   []float64
	values []float64
	stable bool
}

func (m *model) sampler(run Run) (*sampler, error) {
	n := len(m.vars)
	s := &sampler{
		model: m, run: run, rnd: rand.New(rand.NewPCG(run.Seed, 0x6a636d67_31303100)),
		joint: make([]bool, n), z: make([]float64, n), x: make([]float64, n),
	}
	if m.corr == nil {
		return s, nil
	}
	for i := range n {
		for j := range n {
			s.joint[i] = s.joint[i] || i != j && m.corr.At(i, j) != 0
		}
		if _, ok := m.vars[i].dist.(normal); s.joint[i] && !ok {
			return nil, fmt.Errorf("input %q is correlated and not normal: want correlated inputs normal: %w", m.vars[i].name, ErrDomain)
		}
	}
	var err error
	s.root, err = m.correlationRoot()
	return s, err
}

// trials adds n values.
func (s *sampler) trials(n int) error {
	s.values = slices.Grow(s.values, n)
	for range n {
		s.draw()
		y, err := s.at(s.x)
		if err != nil {
			return fmt.Errorf("trial %d: %w", len(s.values)+1, err)
		}
		s.values = append(s.values, y)
	}
	if s.run.Progress != nil {
		return s.run.Progress(len(s.values))
	}
	return nil
}

// draw puts a set of inputs into x.
func (s *sampler) draw() {
	if s.root != nil {
		for i := range s.z {
			s.z[i] = s.rnd.NormFloat64()
		}
	}
	for i := range s.x {
		d := s.vars[i].dist
		if !s.joint[i] {
			s.x[i] = d.draw(s.rnd)
			continue
		}
		w := 0.0
		for k, z := range s.z {
			w += s.root.At(i, k) * z
		}
		s.x[i] = d.mean() + w*d.std()
	}
}

// fixed samples the number of trials asked for.
func (s *sampler) fixed() error {
	for len(s.values) < s.run.Trials {
		if err := s.trials(min(s.run.sequence(), s.run.Trials-len(s.values))); err != nil {
			return err
		}
	}
	return nil
}

// adapt samples until the results are stable: 7.9.4.
func (s *sampler) adapt() error {
	m := s.run.sequence()
	var seen [4][]float64 // y, u(y), y low and y high of each sequence
	sequence := make([]float64, m)
	for len(s.values)+m <= s.run.Cap {
		if err := s.trials(m); err != nil {
			return err
		}
		copy(sequence, s.values[len(s.values)-m:])
		mean, std := stat.MeanStdDev(sequence, nil)
		slices.Sort(sequence)
		low, high := symmetric(sequence, s.run.Coverage)
		if s.run.Shortest {
			low, high = shortestOf(sequence, s.run.Coverage)
		}
		for i, v := range [...]float64{mean, std, low, high} {
			seen[i] = append(seen[i], v)
		}
		if s.stable = s.settled(seen[:]); s.stable {
			return nil
		}
	}
	return nil
}

// settled is 7.9.4 i) to m): twice the standard deviation of each average is
// within the tolerance.
func (s *sampler) settled(seen [][]float64) bool {
	h := float64(len(seen[0]))
	if h < 2 {
		return false
	}
	delta := tolerance(stat.StdDev(s.values, nil), s.run.Digits)
	for _, values := range seen {
		if !(2*stat.StdDev(values, nil)/math.Sqrt(h) <= delta) {
			return false
		}
	}
	return true
}
