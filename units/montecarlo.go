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

// A Sample is what MonteCarlo finds: the distribution of the values of a
// function.
type Sample[Q Quantity] struct {
	Value  Q // mean of the values
	Std    Q // their standard deviation
	Trials int

	// Tolerance is what Run.Digits asks for, half a unit of the last of those
	// digits of Std, and Stable says whether the estimate, Std and both ends of
	// the interval were found to vary by no more. A run of a fixed number of
	// trials, or one that ran into its cap, is not Stable: its figures are good
	// to fewer digits than were asked for, or it was not looked into.
	Tolerance Q
	Stable    bool

	sorted []float64
}

// An Interval is a range that covers a stated fraction of the values a
// quantity may have.
type Interval[Q Quantity] struct {
	Low, High Q
	Coverage  float64
}

// Width returns the distance between the ends.
func (i Interval[Q]) Width() Q { return i.High - i.Low }

// String writes the interval, "84.1 mm to 84.9 mm (95 %)".
func (i Interval[Q]) String() string {
	k := kindOf[Q]()
	return fmt.Sprintf("%s to %s (%s %%)", k.string(float64(i.Low)), k.string(float64(i.High)), significant(100*i.Coverage, 4))
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

// symmetric is the probabilistically symmetric interval of sorted values: 7.7.1
// and 7.7.2.
func symmetric(sorted []float64, p float64) (low, high float64) {
	m, q := len(sorted), covered(len(sorted), p)
	r := (m - q + 1) / 2
	return sorted[r-1], sorted[r+q-1]
}

// shortestOf is the shortest interval of sorted values: 7.7.1 and 7.7.3.
func shortestOf(sorted []float64, p float64) (low, high float64) {
	q := covered(len(sorted), p)
	low, high = sorted[0], sorted[q]
	for r := 1; r+q < len(sorted); r++ {
		if sorted[r+q]-sorted[r] < high-low {
			low, high = sorted[r], sorted[r+q]
		}
	}
	return low, high
}

// covered is q of 7.7: how many steps of the sorted values cover p of them.
func covered(m int, p float64) int { return min(int(p*float64(m)+0.5), m-1) }

// Symmetric returns the probabilistically symmetric interval that covers the
// fraction p of the values: as many lie below it as above. The error is
// ErrDomain for p outside 0 to 1, or so near 1 that there are no values beyond.
//
// Source: JCGM 101:2008, 7.7.2.
func (s Sample[Q]) Symmetric(p float64) (Interval[Q], error) { return s.interval(p, symmetric) }

// Shortest returns the shortest interval that covers the fraction p of the
// values. Where the values pile up at one end, as a piston drop does at
// nought, it begins there. Its ends are less sure than its width, since about
// its place the width hardly changes. The error is that of Symmetric.
//
// Source: JCGM 101:2008, 7.7.3.
func (s Sample[Q]) Shortest(p float64) (Interval[Q], error) { return s.interval(p, shortestOf) }

func (s Sample[Q]) interval(p float64, of func([]float64, float64) (float64, float64)) (Interval[Q], error) {
	if !(0 < p && p < 1) || float64(s.Trials)*(1-p) < 1 {
		return Interval[Q]{}, fmt.Errorf("coverage %g of %d trials: want a fraction between 0 and 1 that leaves a trial out, such as 0.95: %w", p, s.Trials, ErrDomain)
	}
	low, high := of(s.sorted, p)
	return Interval[Q]{Q(low), Q(high), p}, nil
}

// Quantile returns the value that the fraction p of the values lies below. The
// error is ErrDomain for p outside 0 to 1.
func (s Sample[Q]) Quantile(p float64) (Q, error) {
	if !(0 <= p && p <= 1) || len(s.sorted) == 0 {
		return 0, fmt.Errorf("quantile %g of %d trials: want a fraction from 0 to 1: %w", p, s.Trials, ErrDomain)
	}
	return Q(stat.Quantile(p, stat.LinInterp, s.sorted, nil)), nil
}

// Reading returns the mean and the standard deviation as a reading.
func (s Sample[Q]) Reading() Reading[Q] { return Reading[Q]{Value: s.Value, Std: s.Std} }

// String writes the mean rounded to the standard deviation, and that.
func (s Sample[Q]) String() string { return s.Reading().String() }
