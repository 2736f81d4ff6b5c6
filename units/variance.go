package units

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// A variance is the variance of a result with the part each input has in it.
type variance struct {
	total  float64
	shift  float64
	method Method
	parts  []float64 // they add up to total
}

// share is the part of input i as a fraction of the whole.
func (v variance) share(i int) float64 {
	if v.total == 0 {
		return 0
	}
	return v.parts[i] / v.total
}

// curved is how much larger or smaller the variance may become by the terms of
// second order before they are taken in: u changes by 5 %.
const curved = 0.1

// rough is how far the function may depart from its series, as a fraction of
// the standard uncertainty.
const rough = 0.25

// variance adds up the series, to first order, or to second where that is not
// small, or gives a rough figure where neither will do.
func (m *model) variance(s *series) variance {
	first := m.firstOrder(s.g)
	if m.forced && m.method == FirstOrder {
		return first
	}
	second := m.secondOrder(s, first)
	switch {
	case m.forced:
		return second
	case second.total < 0 || s.tail > rough*math.Sqrt(second.total):
		v := m.firstOrder(s.swing)
		v.method = NeedsMonteCarlo
		return v
	case math.Abs(second.total-first.total) <= curved*first.total:
		return first
	}
	return second
}

// firstOrder is u² = Σ Σ gᵢ rᵢⱼ gⱼ, and row i of it is the part of input i.
// JCGM 100:2008, 5.2.2.
func (m *model) firstOrder(g []float64) variance {
	v := variance{method: FirstOrder, parts: make([]float64, len(g))}
	for i := range g {
		for j := range g {
			v.parts[i] += g[i] * m.r(i, j) * g[j]
		}
		v.total += v.parts[i]
	}
	v.total = math.Max(v.total, 0) // coefficients of ±1 may leave a last bit below
	return v
}

// secondOrder adds the note to JCGM 100:2008, 5.1.2. With R the correlation matrix and H the
// second derivatives, ½ Σ Σ hᵢⱼ² is ½ tr(H R H R) and the shift ½ tr(H R);
// that is the form the note takes where inputs are correlated and normal.
func (m *model) secondOrder(s *series, first variance) variance {
	n := len(s.g)
	v := variance{method: SecondOrder, total: first.total, parts: slices.Clone(first.parts)}
	if n == 0 {
		return v
	}
	hr := m.times(s.h)
	var square mat.Dense
	square.Mul(hr, hr)
	for i := range n {
		part := square.At(i, i) / 2
		for j := range n {
			part += s.g[j] * m.r(j, i) * s.cubic[i]
		}
		v.shift += hr.At(i, i) / 2
		v.parts[i] += part
		v.total += part
	}
	return v
}

// times is H R.
func (m *model) times(h [][]float64) *mat.Dense {
	n := len(h)
	d := mat.NewDense(n, n, nil)
	for i, row := range h {
		d.SetRow(i, row)
	}
	if m.corr != nil {
		d.Mul(d, m.corr)
	}
	return d
}

// r is the correlation coefficient of inputs i and j.
func (m *model) r(i, j int) float64 {
	switch {
	case i == j:
		return 1
	case m.corr == nil:
		return 0
	}
	return m.corr.At(i, j)
}
