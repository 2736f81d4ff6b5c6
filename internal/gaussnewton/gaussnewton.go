// Package gaussnewton fits unknowns to readings by least squares where the
// readings do not depend on the unknowns along a straight line.
//
// The readings are compared with a model; the difference, each divided by its
// standard uncertainty, is the residual r. Near a trial x the residuals move as
// r + J d when the unknowns move by d, so the step that makes the sum of their
// squares least solves the linear problem
//
//	J d ≈ −r
//
// which is done by QR and repeated from the new trial until the step no longer
// matters. A step that makes the sum larger is halved, and steps that go to
// and fro, because the model bends so much that they overshoot, are shortened. With residuals in units
// of their standard uncertainty the covariance of the unknowns is (JᵀJ)⁻¹.
//
// Source: Å. Björck, Numerical Methods for Least Squares Problems, SIAM, 1996,
// section 9.2 (from memory).
package gaussnewton

import (
	"errors"
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
)

// The kinds of failure.
var (
	// ErrSingular: the readings do not tell the unknowns apart.
	ErrSingular = errors.New("the readings do not tell the unknowns apart")
	// ErrNoConvergence: the steps do not come to an end.
	ErrNoConvergence = errors.New("the fit does not come to an end")
	// ErrShape: fewer readings than unknowns, or no unknowns.
	ErrShape = errors.New("want at least as many readings as unknowns")
)

// A Model fills in the residuals at the unknowns x, and the Jacobian, row by
// row, ∂r[i]/∂x[j] in jac[i*len(x)+j]. It returns false for unknowns that have
// no meaning, and the step to them is then halved.
type Model func(x, r, jac []float64) bool

// A Fit is what came of it.
type Fit struct {
	X         []float64     // the unknowns
	Residuals []float64     // at X
	Cov       *mat.SymDense // covariance of X, (JᵀJ)⁻¹
	Leverage  []float64     // share of each residual in its own fitted value, 0 to 1
	Sum       float64       // sum of the squares of the residuals
	Steps     int           // steps taken
}

const (
	maxSteps   = 60
	maxHalves  = 30
	worstCond  = 1e13
	endOfStep  = 1e-7  // of a standard uncertainty
	nearEnough = 0.02  // of a standard uncertainty, after maxSteps
	rounding   = 1e-12 // of the sum of squares, by which it may seem to grow
)

// Solve fits the unknowns to n residuals, beginning at start. It stops with a
// step that moves no unknown by more than 1e-7 of its standard uncertainty, or
// when the sum of squares gets no smaller and the steps no shorter; after 60 steps
// it is content with a fiftieth of the standard uncertainty.
func Solve(n int, start []float64, model Model) (Fit, error) {
	p := len(start)
	if p == 0 || n < p {
		return Fit{}, fmt.Errorf("%d readings, %d unknowns: %w", n, p, ErrShape)
	}
	s := &state{n: n, p: p, model: model, r: make([]float64, n), jac: make([]float64, n*p), scale: make([]float64, p)}
	x := append([]float64(nil), start...)
	if !s.at(x) {
		return Fit{}, fmt.Errorf("start: %w", ErrNoConvergence)
	}
	last, share := math.Inf(1), 1.0
	for step := 1; step <= maxSteps; step++ {
		if err := s.factorize(); err != nil {
			return Fit{}, err
		}
		d, length, back := s.step()
		if share = min(1, 2*share); back { // the last step went too far
			share /= 4
		}
		before := s.sum
		moved := s.descend(x, d, share)
		level := before-s.sum <= rounding*before
		if !moved || length <= endOfStep || level && length > last/2 {
			return s.fit(x, step)
		}
		last = length
	}
	if last <= nearEnough {
		return s.fit(x, maxSteps)
	}
	return Fit{}, fmt.Errorf("%d steps: %w", maxSteps, ErrNoConvergence)
}

type state struct {
	n, p   int
	model  Model
	r, jac []float64
	sum    float64
	scale  []float64 // length of each column of the Jacobian
	qr     mat.QR
	scaled *mat.Dense // Jacobian with columns of length 1

	jd *mat.VecDense // J d of the last step
}

// at sets the state to the unknowns x.
func (s *state) at(x []float64) bool {
	if !s.model(x, s.r, s.jac) {
		return false
	}
	s.sum = 0
	for _, r := range s.r {
		s.sum += r * r
	}
	return !math.IsNaN(s.sum) && !math.IsInf(s.sum, 0)
}

// factorize makes Q and R of the Jacobian, its columns brought to length 1 so
// that unknowns in different units do no harm.
func (s *state) factorize() error {
	for j := range s.p {
		c := 0.0
		for i := range s.n {
			c += s.jac[i*s.p+j] * s.jac[i*s.p+j]
		}
		if c = math.Sqrt(c); !(c > 0) || math.IsInf(c, 0) {
			return fmt.Errorf("unknown %d changes nothing: %w", j+1, ErrSingular)
		}
		s.scale[j] = c
	}
	if s.scaled == nil {
		s.scaled = mat.NewDense(s.n, s.p, nil)
	}
	for i := range s.n {
		for j := range s.p {
			s.scaled.Set(i, j, s.jac[i*s.p+j]/s.scale[j])
		}
	}
	s.qr.Factorize(s.scaled)
	if c := s.qr.Cond(); !(c < worstCond) {
		return fmt.Errorf("condition %.3g: %w", c, ErrSingular)
	}
	return nil
}

// step returns the Gauss-Newton step and its length in standard uncertainties:
// the length of J d, at which no unknown moves further than that many of its
// own standard uncertainties. Back says that it turns against the step before by
// more than half a right angle past square.
func (s *state) step() (d []float64, length float64, back bool) {
	b := mat.NewVecDense(s.n, nil)
	for i, r := range s.r {
		b.SetVec(i, -r)
	}
	var z mat.VecDense
	_ = s.qr.SolveVecTo(&z, false, b) // the condition was looked at in factorize
	var jd mat.VecDense
	jd.MulVec(s.scaled, &z)
	d = make([]float64, s.p)
	for j := range d {
		d[j] = z.AtVec(j) / s.scale[j]
	}
	length = mat.Norm(&jd, 2)
	if s.jd != nil {
		back = mat.Dot(s.jd, &jd) < -0.7*length*mat.Norm(s.jd, 2)
	}
	s.jd = &jd
	return d, length, back
}

// descend moves x by a share of d, halved until the sum of squares gets no
// larger, and reports whether it moved.
func (s *state) descend(x, d []float64, share float64) bool {
	before, trial := s.sum, make([]float64, s.p)
	for f := share; f > math.Pow(0.5, maxHalves); f /= 2 {
		for j := range x {
			trial[j] = x[j] + f*d[j]
		}
		if s.at(trial) && s.sum <= before*(1+rounding) {
			copy(x, trial)
			return true
		}
	}
	s.at(x)
	return false
}

// fit gathers the result at x.
func (s *state) fit(x []float64, steps int) (Fit, error) {
	if err := s.factorize(); err != nil { // once more, after the last step
		return Fit{}, err
	}
	f := Fit{X: x, Residuals: s.r, Sum: s.sum, Steps: steps, Leverage: make([]float64, s.n)}
	inverse, err := s.inverseR()
	if err != nil {
		return Fit{}, err
	}
	var q mat.Dense // the first columns of Q
	q.Mul(s.scaled, inverse)
	for i := range f.Leverage {
		f.Leverage[i] = min(1, math.Pow(mat.Norm(q.RowView(i), 2), 2))
	}
	var c mat.Dense
	c.Mul(inverse, inverse.T())
	f.Cov = mat.NewSymDense(s.p, nil)
	for j := range s.p {
		for k := j; k < s.p; k++ {
			f.Cov.SetSym(j, k, c.At(j, k)/(s.scale[j]*s.scale[k]))
		}
	}
	return f, nil
}

// inverseR returns the inverse of the square part of R.
func (s *state) inverseR() (*mat.TriDense, error) {
	var full mat.Dense
	s.qr.RTo(&full)
	r, inverse := mat.NewTriDense(s.p, mat.Upper, nil), mat.NewTriDense(s.p, mat.Upper, nil)
	for j := range s.p {
		for k := j; k < s.p; k++ {
			r.SetTri(j, k, full.At(j, k))
		}
	}
	if err := inverse.InverseTri(r); err != nil {
		return nil, fmt.Errorf("%w: %w", ErrSingular, err)
	}
	return inverse, nil
}
