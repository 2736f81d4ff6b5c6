package ignition

import (
	"math"

	"example.com/benchsums/internal/gaussnewton"
)

// solution is a fit with its weights settled.
type solution struct {
	gaussnewton.Fit
	model dialModel
	used  int // readings not left out
}

// dof is the number of readings more than unknowns.
func (p *problem) dof(s solution) int { return s.used + p.priors - len(p.unknowns) }

// weightRounds is how often the weights are set again: they change with the
// slope of the curve, which hardly moves after the first fit.
const weightRounds = 5

// solve fits the problem, beginning at x, with the readings in keep. The
// uncertainty of a reading is that of the dial together with that of the rim
// times the slope there, all times scale; as the slope depends on the unknowns
// the fit is done again until the weights settle, or for the rounds given.
func (p *problem) solve(x []float64, keep []bool, scale float64, rounds int) (solution, error) {
	var s solution
	for range rounds {
		m, ok := p.model(x)
		if !ok {
			return s, ErrUnsettled
		}
		s.used = p.weigh(m, keep, scale)
		f, err := gaussnewton.Solve(p.rows(), x, p.residuals)
		if err != nil {
			return s, err
		}
		s.Fit = f
		moved := math.Abs(f.X[0]-x[0]) / math.Sqrt(f.Cov.At(0, 0))
		x = f.X
		if moved < 1e-4 {
			break
		}
	}
	s.model, _ = p.model(x)
	return s, nil
}

// weigh sets the weights by the slope of the model and counts the readings kept.
func (p *problem) weigh(m dialModel, keep []bool, scale float64) (used int) {
	for i, pt := range p.points {
		p.weights[i] = 0
		if keep[i] {
			p.weights[i] = 1 / (scale * p.std(m, pt))
			used++
		}
	}
	return used
}

// std is the standard uncertainty of a dial reading, that of the rim included.
func (p *problem) std(m dialModel, pt dialPoint) float64 {
	return math.Hypot(p.setup.dialStd(), float64(p.setup.SettingStd)*m.dialSlope(m.at(pt.rim, pt.turned)))
}

// start returns the unknowns to begin with.
func (p *problem) start() []float64 {
	x := make([]float64, len(p.unknowns))
	for j, u := range p.unknowns {
		x[j] = u.start
	}
	return x
}
