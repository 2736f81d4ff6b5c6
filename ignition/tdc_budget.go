package ignition

import (
	"math"
	"slices"

	"example.com/benchsums/units"
)

// The names of the readings in the budget of a position; what else a fit weighs
// along has the name of the unknown it is.
const (
	dialName    = "dial readings"
	settingName = "setting of the rim"
	bandName    = "dead band of the dial"
	sideName    = "side of the offset"
)

// budgetTerm is one source of the uncertainty of a position.
type budgetTerm struct {
	name  string
	value units.Amount
	std   units.Amount // of the source
	u     float64      // what it makes of the position, signed where that has a meaning
}

// budget writes the terms as a budget, those that are nothing left out.
func budget(terms []budgetTerm) []units.Contribution[units.Length] {
	variance := 0.0
	for _, t := range terms {
		variance += t.u * t.u
	}
	var list []units.Contribution[units.Length]
	for _, t := range terms {
		if t.u == 0 {
			continue
		}
		list = append(list, units.Contribution[units.Length]{
			Name: t.name, Value: t.value, Std: t.std,
			Sensitivity: t.u / t.std.Unit().Value(), Contribution: units.Length(t.u), Share: t.u * t.u / variance,
		})
	}
	return list
}

// Budget returns what the uncertainty of the position is made of: the dial
// readings, the setting of the rim for them, and each size of the engine that
// was stated with an uncertainty, with the run-out of the rim, in shares of the variance that add up to 1. The
// largest share is what to read better first.
//
// The position is linear in the readings near the solution: it moves by
// g = (C Jᵀ)ᵢ standard uncertainties' worth for each row of the fit, C the
// covariance and J the Jacobian in units of standard uncertainties, and the sum
// of g² over all rows is its variance. A reading's row is parted between dial and
// rim as its effective variance is. The Std of these two is that of a single
// reading, made larger where the readings scatter more than stated, and their
// sensitivity is for all readings together. What was found from the readings alone
// (slack, dial zero) makes the position less sure by way of the readings, and
// has no share of its own.
//
// Where the side of the offset is unknown the shares are those of both fits by
// their weight, and the distance between them has a share.
//
// Source: JCGM 100:2008, 5.1.2, with the covariance of least squares (JᵀJ)⁻¹.
func (f TDC) Budget() []units.Contribution[units.Length] { return budget(f.terms) }

// terms parts the variance of the position between its sources.
func (p *problem) terms(s solution, scale float64) []budgetTerm {
	n := len(p.unknowns)
	r, jac := make([]float64, p.rows()), make([]float64, p.rows()*n)
	if !p.residuals(s.X, r, jac) {
		return nil
	}
	gain := func(row int) (g float64) {
		for j := range n {
			g += s.Cov.At(0, j) * jac[row*n+j]
		}
		return p.setup.Figures.sign() * g
	}
	var dial, rim float64
	for i, pt := range p.points {
		g, share := gain(i), math.Pow(p.setup.dialStd()/p.std(s.model, pt), 2)
		dial += g * g * share
		rim += g * g * (1 - share)
	}
	list := []budgetTerm{
		{dialName, units.Length(0), units.Length(scale * p.setup.dialStd()), math.Sqrt(dial)},
		{settingName, units.Length(0), units.Length(scale) * p.setup.SettingStd, math.Sqrt(rim)},
	}
	if p.setup.RunOut > 0 {
		list = append(list, p.setup.runOutBy(p.runOutShare(s, gain)))
	}
	row := len(p.points)
	for _, u := range p.unknowns {
		switch {
		case u.what == isLean && u.std > 0:
			list = append(list, budgetTerm{u.name, units.Angle(u.start), units.Angle(u.std), gain(row)})
		case u.what < isZero && u.std > 0:
			list = append(list, budgetTerm{u.name, units.Length(u.start), units.Length(u.std), gain(row)})
		case u.what >= isZero && p.setup.ZeroStd > 0:
			list = append(list, budgetTerm{u.name, units.Length(0), p.setup.ZeroStd, gain(row)})
		default:
			continue
		}
		row++
	}
	return list
}

// runOut is what the run-out of the rim makes of the position.
func (f TDC) runOut() float64 {
	for _, t := range f.terms {
		if t.name == runOutName {
			return t.u
		}
	}
	return 0
}

// mixTerms is the budget of two fits by their weights, their positions apart.
func mixTerms(a, b []budgetTerm, weight, apart float64) []budgetTerm {
	list := slices.Clone(a)
	for i, t := range list {
		other := 0.0
		if j := slices.IndexFunc(b, func(o budgetTerm) bool { return o.name == t.name }); j >= 0 {
			other = b[j].u
		}
		list[i].u = math.Copysign(math.Sqrt(weight*t.u*t.u+(1-weight)*other*other), t.u)
	}
	return append(list, budgetTerm{sideName, units.Length(0), units.Length(apart), apart})
}

// Budget returns what the uncertainty of the position is made of: the dial
// readings and the setting of the rim, each reading counted once however many
// pairs it serves in, the slack where it was not found from the readings, the
// offset, and the run-out of the rim, in shares of the variance that add up to 1. The largest share is
// what to read better first; a large share of the slack says: turn the other way
// too.
//
// Source: JCGM 100:2008, 5.1.2.
func (b Bisection) Budget() []units.Contribution[units.Length] { return budget(b.terms) }

// Budget returns what the uncertainty of the position is made of, in shares of
// the variance that add up to 1: the setting of the rim, as stated or as the
// tries scatter, the offset of the cylinder, and the run-out of the rim.
//
// Source: JCGM 100:2008, 5.1.2.
func (f StopFinding) Budget() []units.Contribution[units.Length] { return budget(f.terms) }

// Budget returns what the uncertainty of the position is made of, in shares of
// the variance that add up to 1: the tries as they scatter, and the dead band of
// the dial, which no number of tries makes smaller.
//
// Source: JCGM 100:2008, 5.1.2.
func (f EyeFinding) Budget() []units.Contribution[units.Length] { return budget(f.terms) }
