package units

import (
	"fmt"

	"gonum.org/v1/gonum/stat"
)

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
