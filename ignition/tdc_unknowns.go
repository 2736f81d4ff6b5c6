package ignition

import (
	"math"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// The names of what a fit finds; "dial zero" is followed by the name of the
// mounting where there are several.
const (
	nameTDC    = "top dead centre"
	nameSlack  = "slack"
	nameStroke = "stroke"
	nameRod    = "rod"
	nameOffset = "offset"
	nameLean   = "lean"
	nameRim    = "rim diameter"
	nameZero   = "dial zero"
)

// quantity says which figure of the model an unknown is.
type quantity int

const (
	isTDC quantity = iota
	isSlack
	isStroke
	isRod
	isOffset
	isLean
	isRim
	isZero // isZero + k is the zero of mounting k
)

// unknown is one figure that the fit may move. Where it is known beforehand,
// to std, it is weighed as one reading more.
type unknown struct {
	what       quantity
	name       string
	start, std float64 // std 0: nothing known
}

// problem is a fit: readings, unknowns, and what is held.
type problem struct {
	setup     Setup
	points    []dialPoint
	mountings []string
	unknowns  []unknown

	held    [isZero]float64 // values of what is not an unknown
	weights []float64       // of the points, 1/standard uncertainty, 0 for one left out
	priors  int             // unknowns known beforehand, and dial zeros
}

// newProblem sets up the unknowns, to start with top dead centre at the given
// figure.
func newProblem(s Setup, points []dialPoint, mountings []string, tdc, zero float64) *problem {
	p := &problem{setup: s, points: points, mountings: mountings, weights: make([]float64, len(points))}
	p.add(isTDC, nameTDC, tdc, 0, true)
	p.add(isSlack, nameSlack, slackStart(s), float64(s.Slack.Std), !s.SlackKnown)
	p.add(isStroke, nameStroke, float64(s.Stroke.Value), float64(s.Stroke.Std), false)
	p.add(isRod, nameRod, float64(s.rod()), float64(s.Rod.Std), s.RodUnknown)
	p.add(isOffset, nameOffset, float64(s.Offset.Value), float64(s.Offset.Std), s.OffsetUnknown)
	p.add(isLean, nameLean, float64(s.Lean.Value), float64(s.Lean.Std), false)
	p.add(isRim, nameRim, float64(s.Rim.Diameter()), float64(s.RimStd), false)
	for k, m := range mountings {
		name := nameZero
		if len(mountings) > 1 {
			name += " " + m
		}
		p.unknowns = append(p.unknowns, unknown{isZero + quantity(k), name, zero, 0})
		if s.ZeroStd > 0 {
			p.priors++
		}
	}
	return p
}

func slackStart(s Setup) float64 {
	if s.SlackKnown {
		return float64(s.Slack.Value)
	}
	return 0
}

// add makes a quantity an unknown if nothing is known of it, or if it is known
// with some uncertainty, and holds it otherwise.
func (p *problem) add(what quantity, name string, value, std float64, free bool) {
	p.held[what] = value
	switch {
	case free:
		p.unknowns = append(p.unknowns, unknown{what, name, value, 0})
	case std > 0:
		p.unknowns = append(p.unknowns, unknown{what, name, value, std})
		p.priors++
	}
}

// free counts the unknowns of which nothing is known beforehand.
func (p *problem) free() int {
	n := 0
	for _, u := range p.unknowns {
		if u.std == 0 && !(u.what >= isZero && p.setup.ZeroStd > 0) {
			n++
		}
	}
	return n
}

// values spreads the unknowns over all figures of the model.
func (p *problem) values(x []float64) (v [isZero]float64) {
	v = p.held
	for j, u := range p.unknowns {
		if u.what < isZero {
			v[u.what] = x[j]
		}
	}
	return v
}

// model returns the dial model at the unknowns x; ok is false where there is no
// such engine.
func (p *problem) model(x []float64) (m dialModel, ok bool) {
	v := p.values(x)
	crank, err := crankOf(units.Length(v[isStroke]), units.Length(v[isRod]), units.Length(v[isOffset]))
	ok = err == nil && v[isRim] > 0 && math.Abs(v[isLean]) < 1.4
	return dialModel{v[isTDC], v[isSlack], v[isLean], v[isRim] / 2, p.setup.dialStd() / 3, crank}, ok
}

// rows is the number of residuals.
func (p *problem) rows() int { return len(p.points) + p.priors }

// residuals is the gaussnewton.Model of the problem: a row for each reading,
// then one for each figure known beforehand.
func (p *problem) residuals(x, r, jac []float64) bool {
	m, ok := p.model(x)
	if !ok {
		return false
	}
	sizes, ok := p.larger(x)
	if !ok {
		return false
	}
	clear(jac)
	n := len(p.unknowns)
	for i, pt := range p.points {
		row := jac[i*n : (i+1)*n]
		r[i] = 0
		if w := p.weights[i]; w > 0 {
			r[i] = w * p.row(m, &sizes, x, pt, row)
			for j := range row {
				row[j] *= w
			}
		}
	}
	p.priorRows(m, x, r[len(p.points):], jac[len(p.points)*n:])
	return true
}

// lengthStep is by how much of the stroke a size of the crank is moved to see
// what that does to the drop.
const lengthStep = 1e-5

// larger holds the crank with one of its sizes a little larger.
type larger struct {
	crank geometry.Crank
	by    float64
}

// larger returns that crank for each unknown that is a size of the crank.
func (p *problem) larger(x []float64) (s [isZero]larger, ok bool) {
	for j, u := range p.unknowns {
		if u.what != isStroke && u.what != isRod && u.what != isOffset {
			continue
		}
		v := p.values(x)
		by := lengthStep * v[isStroke]
		v[u.what] = x[j] + by
		c, err := crankOf(units.Length(v[isStroke]), units.Length(v[isRod]), units.Length(v[isOffset]))
		if err != nil {
			return s, false
		}
		s[u.what] = larger{c, by}
	}
	return s, true
}

// row returns what the model shows less what was read, and its derivatives.
func (p *problem) row(m dialModel, sizes *[isZero]larger, x []float64, pt dialPoint, row []float64) float64 {
	at := m.at(pt.rim, pt.turned)
	cos, sin := math.Cos(m.lean), math.Sin(m.lean)
	speed, zero := m.speed(at), 0.0
	for j, u := range p.unknowns {
		switch u.what {
		case isTDC:
			row[j] = -speed / m.radius / cos
		case isSlack:
			row[j] = at.play / cos
		case isStroke, isRod, isOffset:
			s := &sizes[u.what]
			row[j] = at.follow * (float64(s.crank.Drop(at.theta)) - at.drop) / s.by / cos
		case isLean:
			row[j] = at.down * sin / (cos * cos)
		case isRim:
			row[j] = -speed * float64(at.theta) / (2 * m.radius) / cos
		case isZero + quantity(pt.mounting):
			row[j], zero = 1, x[j]
		}
	}
	return zero + m.dialAt(at) - pt.dial
}

// priorRows fills in the rows of what is known beforehand. The dial was put to
// 0 where the needle turns back, which is half the slack below its middle.
func (p *problem) priorRows(m dialModel, x, r, jac []float64) {
	n, i := len(p.unknowns), 0
	std := float64(p.setup.ZeroStd)
	for j, u := range p.unknowns {
		switch {
		case u.what < isZero && u.std > 0:
			r[i], jac[i*n+j] = (x[j]-u.start)/u.std, 1/u.std
			i++
		case u.what >= isZero && std > 0:
			r[i], jac[i*n+j] = (x[j]+math.Abs(m.slack)/2/math.Cos(m.lean))/std, 1/std
			if k := p.find(isSlack); k >= 0 {
				jac[i*n+k] = math.Copysign(0.5, m.slack) / math.Cos(m.lean) / std
			}
			if k := p.find(isLean); k >= 0 {
				cos, sin := math.Cos(m.lean), math.Sin(m.lean)
				jac[i*n+k] = math.Abs(m.slack) / 2 * sin / (cos * cos) / std
			}
			i++
		}
	}
}

// find returns the place of an unknown, or −1.
func (p *problem) find(what quantity) int {
	for j, u := range p.unknowns {
		if u.what == what {
			return j
		}
	}
	return -1
}
