package ignition

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// How slips are looked for. The largest residual of a fit, held against the
// scatter of the others, is compared with what the largest of so many honest
// residuals exceeds once in 1/slipRisk sets; it is taken out, the fit is done
// again, and so on to a tenth of the readings. The last one that stood out and
// all taken out before it are slips, for two slips of a kind can hide one
// another. Those that no longer stand out from the fit without them go back.
// A slip must stand out in the same measure from the uncertainty stated for the
// readings, so that readings better than stated are not held against the odd
// one that is as bad as stated.
//
// Sources: R. D. Cook and S. Weisberg, Residuals and Influence in Regression,
// 1982, 2.2.2 (residuals held against the others); B. Rosner, Technometrics 25
// (1983), 165-172 (one after another). Both from memory.
const (
	slipRisk  = 0.005 // of accusing a good reading, for each set
	slipShare = 0.1   // most of the readings that may be left out
	slipDoF   = 3     // least degrees of freedom that may judge
	slipDoubt = 2.5   // stated standard uncertainties, below which no reading is taken out on trial
)

// study is what a fit says of every reading, kept or not.
type study struct {
	residual []float64 // in stated standard uncertainties
	leverage []float64 // of a reading kept, its share in its fitted value; of one left out, its variance there
	sum      float64   // of the squares of the residuals kept
	dof      int
}

// search is what the look for slips found.
type search struct {
	keep []bool
	more bool // more readings stand out than may be left out
}

// searchSlips looks for slips in n readings. Those that are grossly out already at
// first sight, the worst first, are left out on trial from the beginning, so that
// they do not lead the first fit astray.
func searchSlips(n int, gross []int, fit func(keep []bool) (study, error)) (search, error) {
	keep := make([]bool, n)
	for i := range keep {
		keep[i] = true
	}
	most := max(1, int(slipShare*float64(n)))
	order := append([]int(nil), gross[:min(most, len(gross))]...)
	trial := append([]bool(nil), keep...)
	for _, i := range order {
		trial[i] = false
	}
	st, err := fit(trial)
	if err != nil && len(order) > 0 {
		return searchSlips(n, nil, fit)
	}
	if err != nil {
		return search{}, err
	}
	most = min(most, st.dof+len(order)-slipDoF)
	slips := takeOut(order, trial, most, st, fit)
	for _, i := range slips {
		keep[i] = false
	}
	if st, err = fit(keep); err != nil {
		return search{}, err
	}
	if len(slips) > 0 {
		if st, err = putBack(keep, slips, st, fit); err != nil {
			return search{}, err
		}
	}
	_, _, more := st.worst(keep)
	return search{keep, more && most > 0}, nil
}

// takeOut takes the worst reading out of the trial, and the worst of the rest, up
// to most of them, and returns all up to the last that stood out. Those in order
// are out already.
func takeOut(order []int, trial []bool, most int, st study, fit func([]bool) (study, error)) (slips []int) {
	n := len(order)
	for len(order) < most {
		worst, off, out := st.worst(trial)
		if off < slipDoubt {
			break
		}
		order = append(order, worst)
		trial[worst] = false
		if out {
			n = len(order)
		}
		var err error
		if st, err = fit(trial); err != nil {
			break
		}
	}
	return order[:n]
}

// putBack keeps the readings that do not stand out from the fit without them.
func putBack(keep []bool, slips []int, st study, fit func([]bool) (study, error)) (study, error) {
	changed := false
	for _, i := range slips {
		spread := math.Sqrt(1 + st.leverage[i])
		t := math.Abs(st.residual[i]) / (spread * math.Sqrt(st.sum/float64(st.dof)))
		if st.dof < slipDoF || !(t > largest(len(keep), st.dof) && math.Abs(st.residual[i]) > spread*largestStated(len(keep))) {
			keep[i], changed = true, true
		}
	}
	if changed {
		return fit(keep)
	}
	return st, nil
}

// worst returns the reading kept that is furthest off for what the others say,
// by how many stated standard uncertainties, and whether it stands out.
func (st study) worst(keep []bool) (index int, off float64, out bool) {
	if st.dof-1 < slipDoF {
		return 0, 0, false
	}
	square, kept := 0.0, 0
	for i, ok := range keep {
		if !ok {
			continue
		}
		kept++
		room := 1 - st.leverage[i]
		if room < 1e-6 {
			continue // nothing else says what this one should be
		}
		if q := st.residual[i] * st.residual[i] / room; q > square {
			square, index = q, i
		}
	}
	t := math.Sqrt(square * float64(st.dof-1) / max(st.sum-square, 0))
	if off = math.Sqrt(square); !(off > largestStated(kept)) {
		return index, off, false
	}
	return index, off, t > largest(kept, st.dof-1)
}

// largest is what the largest of n honest residuals, each held against the
// scatter of the others, exceeds with the probability slipRisk at most.
func largest(n, dof int) float64 {
	return distuv.StudentsT{Sigma: 1, Nu: float64(dof)}.Quantile(1 - slipRisk/(2*float64(n)))
}

// largestStated is the same for residuals held against a stated uncertainty.
func largestStated(n int) float64 {
	return distuv.UnitNormal.Quantile(1 - slipRisk/(2*float64(n)))
}

// withoutSlips fits with the slips left out.
func (p *problem) withoutSlips(gross []int) (solution, search, error) {
	var s solution
	x, rounds := p.start(), weightRounds
	found, err := searchSlips(len(p.points), gross, func(keep []bool) (study, error) {
		var err error
		if s, err = p.solve(x, keep, 1, rounds); err != nil {
			return study{}, err
		}
		x, rounds = s.X, 1
		return p.study(s, keep), nil
	})
	return s, found, err
}

// study looks at every reading beside a fit.
func (p *problem) study(s solution, keep []bool) study {
	n := len(p.points)
	st := study{residual: make([]float64, n), leverage: make([]float64, n), sum: s.Sum, dof: p.dof(s)}
	sizes, _ := p.larger(s.X)
	row := make([]float64, len(p.unknowns))
	for i, pt := range p.points {
		if keep[i] {
			st.residual[i], st.leverage[i] = s.Residuals[i], s.Leverage[i]
			continue
		}
		clear(row)
		std := p.std(s.model, pt)
		st.residual[i] = p.row(s.model, &sizes, s.X, pt, row) / std
		for j := range row {
			for k := range row {
				st.leverage[i] += row[j] * row[k] * s.Cov.At(j, k) / (std * std)
			}
		}
	}
	return st
}
