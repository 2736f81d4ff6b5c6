package units

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// CoverageFactor returns the factor k for which a standard uncertainty with
// dof degrees of freedom (0 for infinite), multiplied by k, covers the fraction
// p of what the value may be: Student's t, for normal and nearly normal
// results.
//
// Degrees of freedom that are not whole, as Welch-Satterthwaite gives, are
// rounded to one decimal and then truncated: 18.9987 is used as 19, as the
// Guide does, and 16.76 as 16.
//
// The error is ErrDomain for p outside 0 to 1 or dof below 1.
//
// Source: JCGM 100:2008, G.3.2, G.4.1 and Table G.2.
func CoverageFactor(p, dof float64) (float64, error) {
	if !(0 < p && p < 1) {
		return 0, fmt.Errorf("coverage %g: want a fraction between 0 and 1, such as 0.95: %w", p, ErrDomain)
	}
	if dof == 0 || dof > 1e7 { // from there t agrees with the normal distribution to 3e-7

		return distuv.UnitNormal.Quantile((1 + p) / 2), nil
	}
	nu := wholeDoF(dof)
	if !(nu >= 1) {
		return 0, fmt.Errorf("%.3g degrees of freedom: want 1 or more, or 0 for infinite: %w", dof, ErrDomain)
	}
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: nu}.Quantile((1 + p) / 2), nil
}

// wholeDoF rounds to one decimal and truncates.
func wholeDoF(nu float64) float64 { return math.Floor(math.Round(nu*10) / 10) }

// TrapezoidFactor returns the coverage factor for a result whose distribution
// is a symmetrical trapezoid with the fraction beta of its width flat, from 0, a
// triangle, to 1, a rectangle. Two rectangular contributions of half-widths
// a > b that outweigh all others make one with β = (a − b)/(a + b).
//
//	k = (1 − √((1 − p)(1 − β²))) / √((1 + β²)/6)   for β ≤ p/(2 − p)
//	k = (p(1 + β)/2) / √((1 + β²)/6)               above
//
// At 95 % it is 1.645 for a rectangle. The error is ErrDomain for p outside 0
// to 1 or beta outside 0 to 1.
//
// Source: EA-4/02, example S10, for the first line; the second is the same
// integral where the interval ends within the flat part.
func TrapezoidFactor(p, beta float64) (float64, error) {
	switch {
	case !(0 < p && p < 1):
		return 0, fmt.Errorf("coverage %g: want a fraction between 0 and 1, such as 0.95: %w", p, ErrDomain)
	case !(0 <= beta && beta <= 1):
		return 0, fmt.Errorf("flat part of the trapezoid %g: want 0 to 1: %w", beta, ErrDomain)
	}
	u := math.Sqrt((1 + beta*beta) / 6)
	if beta <= p/(2-p) {
		return (1 - math.Sqrt((1-p)*(1-beta*beta))) / u, nil
	}
	return p * (1 + beta) / 2 / u, nil
}

// EffectiveDoF returns the effective degrees of freedom of a sum of independent
// contributions, each with its Std as a contribution to the result and its
// degrees of freedom, by the formula of Welch and Satterthwaite:
//
//	ν = (Σ uᵢ²)² / Σ (uᵢ⁴/νᵢ)
//
// Contributions with infinite degrees of freedom (DoF 0) add nothing below the
// line. The result is 0, for infinite, if all are so.
//
// Source: JCGM 100:2008, G.4.1, eq. G.2b.
func EffectiveDoF[Q Quantity](contributions ...Reading[Q]) float64 {
	total := 0.0
	parts, dof := make([]float64, len(contributions)), make([]float64, len(contributions))
	for i, c := range contributions {
		parts[i], dof[i] = float64(c.Std)*float64(c.Std), c.DoF
		total += parts[i]
	}
	return welchSatterthwaite(total, parts, dof)
}

// welchSatterthwaite takes variances.
func welchSatterthwaite(total float64, parts, dof []float64) float64 {
	sum := 0.0
	for i, v := range parts {
		if dof[i] > 0 && total > 0 {
			sum += v / total * v / total / dof[i]
		}
	}
	if sum == 0 {
		return 0
	}
	return 1 / sum
}

// effectiveDoF is Welch-Satterthwaite over the independent groups of inputs.
// Inputs that are correlated, directly or through others, count as one group
// with the smallest degrees of freedom among them: the formula holds for
// independent contributions only, and quantities measured together, n times,
// have n − 1 degrees of freedom and not n − 1 each.
func (m *model) effectiveDoF(v variance) float64 {
	n := len(m.vars)
	parts, dof := make([]float64, n), make([]float64, n)
	for i, g := range m.groups() {
		parts[g] += v.parts[i]
		if d := m.vars[i].dist.dof(); d > 0 && m.vars[i].dist.std() > 0 && (dof[g] == 0 || d < dof[g]) {
			dof[g] = d
		}
	}
	return welchSatterthwaite(v.total, parts, dof)
}

// groups numbers for each input the first input it is correlated with,
// directly or through others.
func (m *model) groups() []int {
	group := make([]int, len(m.vars))
	for i := range group {
		group[i] = i
		for j := range i {
			if m.r(i, j) == 0 || group[i] == group[j] {
				continue
			}
			from, to := max(group[i], group[j]), min(group[i], group[j])
			for k := range i + 1 {
				if group[k] == from {
					group[k] = to
				}
			}
		}
	}
	return group
}

// Expanded returns the expanded uncertainty U = k·Std that covers the fraction
// p of what the value may be, and the coverage factor k: see CoverageFactor,
// also for the errors.
//
// Source: JCGM 100:2008, 6.2.1 and 6.3.3.
func (r Reading[Q]) Expanded(p float64) (expanded Q, k float64, err error) {
	k, err = CoverageFactor(p, r.DoF)
	return Q(k * float64(r.Std)), k, err
}
