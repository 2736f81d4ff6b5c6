package units

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// A series is a function about the estimates of its inputs, as far as the
// second order with what the third order adds to the variance. The lower-case
// derivatives are by wᵢ = (xᵢ − estimate)/uᵢ, so that each is what one
// standard uncertainty does.
type series struct {
	y     float64
	c     []float64   // ∂f/∂xᵢ
	g     []float64   // cᵢ uᵢ
	h     [][]float64 // fᵢⱼ uᵢ uⱼ
	cubic []float64   // Σⱼ fᵢⱼⱼ uᵢ uⱼ², the sum along independent directions
	tail  float64     // largest departure of f from the series at 1.5 uᵢ
	noise float64     // what rounding alone may make of a difference of values
	swing []float64   // how far f goes at 1.5 uᵢ, for one uᵢ, with the sign of g
}

// expand works out the series of the model.
func (m *model) expand() (*series, error) {
	n := len(m.vars)
	p := &probe{model: m, x: m.estimates(), at0: m.estimates()}
	s := &series{c: make([]float64, n), g: make([]float64, n), h: make([][]float64, n), cubic: make([]float64, n), swing: make([]float64, n)}
	var err error
	if s.y, err = p.at(); err != nil {
		return nil, err
	}
	for i := range n {
		s.h[i] = make([]float64, n)
		u := m.vars[i].dist.std()
		if u == 0 {
			continue
		}
		if s.c[i], err = p.slope(i, u); err != nil {
			return nil, err
		}
		s.g[i] = s.c[i] * u
	}
	s.noise = p.rounding(s)
	if err := p.bend(s); err != nil {
		return nil, err
	}
	if err := p.twist(s); err != nil {
		return nil, err
	}
	p.depart(s)
	return s, nil
}

// rounding is some units of the last place of the value and of what each input
// brings to it.
func (p *probe) rounding(s *series) float64 {
	sum := math.Abs(s.y)
	for i, c := range s.c {
		sum += math.Abs(c * p.at0[i])
	}
	return 8 * 0x1p-52 * sum
}

// above is d, or 0 where it is no more than rounding makes.
func (s *series) above(d float64) float64 {
	if math.Abs(d) <= s.noise {
		return 0
	}
	return d
}

// A probe evaluates a model at points about its estimates.
type probe struct {
	*model
	at0 []float64 // the estimates
	x   []float64 // working space
}

// A shift moves input i by d.
type shift struct {
	i int
	d float64
}

// at evaluates the function with the inputs shifted.
func (p *probe) at(shifts ...shift) (float64, error) {
	copy(p.x, p.at0)
	for _, s := range shifts {
		p.x[s.i] += s.d
	}
	return p.model.at(p.x)
}

// slope is the derivative by input i: central differences at steps that halve,
// extrapolated to step nought; the entry of the table that changes least is
// taken.
//
// Source: C. J. F. Ridders, Accurate computation of F′(x) and F′(x) F″(x),
// Advances in Engineering Software 4 (1982), 75-76 (from memory).
func (p *probe) slope(i int, u float64) (float64, error) {
	step := math.Max(u, math.Abs(p.at0[i])*0x1p-10)
	first, err := p.central(i, step)
	if err != nil && step > u { // the function may end beyond the uncertainty
		step = u
		first, err = p.central(i, step)
	}
	if err != nil {
		return 0, err
	}
	const rows = 9
	row, last := [rows]float64{}, [rows]float64{first}
	best, least := first, math.Inf(1)
	for r := 1; r < rows; r++ {
		step /= 2
		if row[0], err = p.central(i, step); err != nil {
			return 0, err
		}
		power := 1.0
		for k := 1; k <= r; k++ {
			power *= 4
			row[k] = row[k-1] + (row[k-1]-last[k-1])/(power-1)
			if e := math.Max(math.Abs(row[k]-row[k-1]), math.Abs(row[k]-last[k-1])); e < least {
				best, least = row[k], e
			}
		}
		if least <= 1e-14*math.Abs(best) || math.Abs(row[r]-last[r-1]) > 4*least {
			break
		}
		last = row
	}
	return best, nil
}

// central is the difference quotient over a step to either side. The step is
// what the input really moves by.
func (p *probe) central(i int, step float64) (float64, error) {
	high, err := p.at(shift{i, step})
	if err != nil {
		return 0, err
	}
	over := p.x[i]
	low, err := p.at(shift{i, -step})
	if err != nil {
		return 0, err
	}
	return (high - low) / (over - p.x[i]), nil
}

// reach is the step for second differences by input i: within the uncertainty,
// where the bend matters, but no smaller than rounding allows.
func (p *probe) reach(i int) float64 {
	u := p.vars[i].dist.std()
	return math.Max(u/4, math.Min(u, 1e-4*math.Abs(p.at0[i])))
}

// bend fills in the second derivatives.
func (p *probe) bend(s *series) error {
	n := len(p.vars)
	sums := make([]float64, n) // f(+d) + f(−d) for each input alone
	for i := range n {
		u := p.vars[i].dist.std()
		if u == 0 {
			continue
		}
		d := p.reach(i)
		var err error
		if sums[i], err = p.sum(shift{i, d}); err != nil {
			return err
		}
		s.h[i][i] = s.above(sums[i]-2*s.y) * (u / d) * (u / d)
		for j := range i {
			v := p.vars[j].dist.std()
			if v == 0 {
				continue
			}
			e := p.reach(j)
			both, err := p.sum(shift{i, d}, shift{j, e})
			if err != nil {
				return err
			}
			s.h[i][j] = s.above(both-sums[i]-sums[j]+2*s.y) / 2 * (u / d) * (v / e)
			s.h[j][i] = s.h[i][j]
		}
	}
	return nil
}

// twist fills in the third derivatives: how the sum of the second ones changes
// along each input.
func (p *probe) twist(s *series) error {
	root, err := p.directions()
	if err != nil {
		return err
	}
	const step = 0.5
	for i := range p.vars {
		u := p.vars[i].dist.std()
		if u == 0 {
			continue
		}
		up, err := p.laplacian(shift{i, step * u}, step, root)
		if err != nil {
			return err
		}
		down, err := p.laplacian(shift{i, -step * u}, step, root)
		if err != nil {
			return err
		}
		s.cubic[i] = s.above((up-down)*step*step) / (2 * step * step * step)
	}
	return nil
}

// directions are the columns of a root of the correlation matrix; along them
// the inputs are independent.
func (p *probe) directions() (mat.Matrix, error) {
	if p.corr == nil {
		return identity(max(1, len(p.vars))), nil
	}
	return p.correlationRoot()
}

// laplacian is the sum of the second derivatives along the independent
// directions, at a place shifted by at.
func (p *probe) laplacian(at shift, step float64, root mat.Matrix) (float64, error) {
	middle, err := p.at(at)
	if err != nil {
		return 0, err
	}
	sum := 0.0
	for k := range p.vars {
		up, down := []shift{at}, []shift{at}
		for j, v := range p.vars {
			if d := root.At(j, k) * v.dist.std() * step; d != 0 {
				up, down = append(up, shift{j, d}), append(down, shift{j, -d})
			}
		}
		if len(up) == 1 {
			continue
		}
		high, err := p.at(up...)
		if err != nil {
			return 0, err
		}
		low, err := p.at(down...)
		if err != nil {
			return 0, err
		}
		sum += (high - middle + low - middle) / (step * step)
	}
	return sum, nil
}

// depart sees how far the function is from its series, up to second order, at
// 1.5 standard uncertainties of each input.
func (p *probe) depart(s *series) {
	const w = 1.5
	for i := range p.vars {
		u := p.vars[i].dist.std()
		if u == 0 {
			continue
		}
		up, err1 := p.at(shift{i, w * u})
		down, err2 := p.at(shift{i, -w * u})
		if err1 != nil || err2 != nil { // the function ends within the uncertainty
			s.tail, s.swing[i] = math.Inf(1), s.g[i]
			continue
		}
		s.swing[i] = math.Copysign(math.Hypot(up-s.y, down-s.y)/(w*math.Sqrt2), s.g[i])
		even := (up+down)/2 - s.y - w*w/2*s.h[i][i]
		odd := (up-down)/2 - w*s.g[i]
		s.tail = max(s.tail, math.Abs(s.above(even)), math.Abs(s.above(odd)))
	}
}

// sum is the function shifted and the function shifted the other way, added.
func (p *probe) sum(shifts ...shift) (float64, error) {
	up, err := p.at(shifts...)
	if err != nil {
		return 0, err
	}
	back := make([]shift, len(shifts))
	for i, s := range shifts {
		back[i] = shift{s.i, -s.d}
	}
	down, err := p.at(back...)
	return up + down, err
}
