package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// study fits position and slack to the middles kept:
//
//	middle = position ± slack/(2 dx/ds)     + forward, − backward
//
// Source: weighted least squares; the slack as in [LateBy].
func (b *bisecting) study(keep []bool) (study, error) {
	var a [2][2]float64 // normal equations
	var rhs [2]float64
	free := b.bothWays(keep)
	for i, ok := range keep {
		if !ok {
			continue
		}
		w, row := 1/math.Pow(float64(b.pairs[i].Std), 2), b.row(i, free)
		for j := range 2 {
			rhs[j] += w * row[j] * b.target(i, free)
			for k := range 2 {
				a[j][k] += w * row[j] * row[k]
			}
		}
	}
	if !free {
		a[1][1] = 1
	}
	inverse, err := invert(a)
	if err != nil {
		return study{}, err
	}
	for j := range 2 {
		b.fitted[j] = inverse[j][0]*rhs[0] + inverse[j][1]*rhs[1]
	}
	b.cov = b.covariance(keep, free, inverse)
	return b.studyAt(keep, free, inverse), nil
}

// bothWays reports whether the slack is to be found: unknown, and pairs kept from
// both ways of turning.
func (b *bisecting) bothWays(keep []bool) bool {
	var forward, backward bool
	for i, ok := range keep {
		forward = forward || ok && b.play[i] > 0
		backward = backward || ok && b.play[i] < 0
	}
	return forward && backward && !b.setup.SlackKnown
}

// row is how the middle of pair i depends on position and slack.
func (b *bisecting) row(i int, free bool) [2]float64 {
	if free {
		return [2]float64{1, b.play[i]}
	}
	return [2]float64{1, 0}
}

// target is the middle of pair i, put right for the slack if that is known.
func (b *bisecting) target(i int, free bool) float64 {
	if !free && b.setup.SlackKnown {
		return b.middle[i] - b.play[i]*float64(b.setup.Slack.Value)
	}
	return b.middle[i]
}

// covariance is that of position and slack with every reading counted once,
// however many pairs it serves in.
func (b *bisecting) covariance(keep []bool, free bool, inverse [2][2]float64) (c [2][2]float64) {
	b.share = make([]float64, len(keep))
	gain := make([][2]float64, len(b.points)) // how far the result moves with each reading
	late := 0.0                               // and the position with the slack
	for i, ok := range keep {
		if !ok {
			continue
		}
		w, row := 1/math.Pow(float64(b.pairs[i].Std), 2), b.row(i, free)
		var g [2]float64
		for j := range 2 {
			g[j] = w * (inverse[j][0]*row[0] + inverse[j][1]*row[1])
		}
		for r, o := range b.owes[i] {
			gain[r][0] += g[0] * o
			gain[r][1] += g[1] * o
		}
		late += g[0] * b.play[i]
		b.share[i] = g[0]
	}
	b.byDial = 0
	for r, g := range gain {
		b.byDial += g[0] * g[0] * (b.std[r]*b.std[r] - math.Pow(float64(b.setup.SettingStd), 2))
		for j := range 2 {
			for k := range 2 {
				c[j][k] += g[j] * g[k] * b.std[r] * b.std[r]
			}
		}
	}
	b.slack = 0
	switch {
	case free: // in c
	case b.setup.SlackKnown:
		b.slack = math.Abs(late) * float64(b.setup.Slack.Std)
	default:
		b.slack = math.Abs(late) * b.setup.unknownSlack()
	}
	return c
}

func (b *bisecting) studyAt(keep []bool, free bool, inverse [2][2]float64) study {
	n := len(keep)
	st := study{residual: make([]float64, n), leverage: make([]float64, n), dof: -1}
	if free {
		st.dof--
	}
	for i, ok := range keep {
		std, row := float64(b.pairs[i].Std), b.row(i, free)
		st.residual[i] = (b.target(i, free) - b.fitted[0]*row[0] - b.fitted[1]*row[1]) / std
		for j := range 2 {
			for k := range 2 {
				st.leverage[i] += row[j] * inverse[j][k] * row[k] / (std * std)
			}
		}
		if ok {
			st.sum += st.residual[i] * st.residual[i]
			st.dof++
		}
	}
	return st
}

// invert inverts a symmetric matrix of two rows.
func invert(a [2][2]float64) (v [2][2]float64, err error) {
	det := a[0][0]*a[1][1] - a[0][1]*a[1][0]
	if !(det > 1e-9*a[0][0]*a[1][1]) {
		return v, ErrUnsettled
	}
	return [2][2]float64{{a[1][1] / det, -a[0][1] / det}, {-a[1][0] / det, a[0][0] / det}}, nil
}

// result gathers what the last study found.
func (b *bisecting) result(found search) (Bisection, error) {
	st, err := b.study(found.keep)
	if err != nil {
		return Bisection{}, unsettled(err)
	}
	r := Bisection{Pairs: b.pairs}
	for i := range r.Pairs {
		r.Pairs[i].LeftOut = !found.keep[i]
	}
	scale, dof := 1.0, 0.0
	if st.dof > 0 {
		r.Scatter = math.Sqrt(st.sum / float64(st.dof))
		if r.Scatter > 1 {
			scale, dof = r.Scatter, float64(st.dof)
		}
	}
	offset := b.setup.offsetStd(b.half, b.share)
	r.Position = units.Reading[units.Length]{
		Value: b.setup.onRule(units.Length(b.setup.Figures.sign()*b.fitted[0]), b.figures...),
		Std:   units.Length(scale * math.Sqrt(b.cov[0][0])), DoF: dof,
	}.With(units.Length(math.Hypot(b.slack, offset)))
	runOut := b.setup.runOutTerm(b.half, b.share)
	r.Position = r.Position.With(units.Length(runOut.u))
	r.terms = append(b.terms(scale, offset), runOut)
	switch {
	case b.bothWays(found.keep):
		r.Slack = units.Reading[units.Length]{Value: units.Length(b.fitted[1]), Std: units.Length(scale * math.Sqrt(b.cov[1][1])), DoF: dof}
	case b.setup.SlackKnown:
		r.Slack = b.setup.Slack
	default:
		r.OneWay = true
	}
	r.note(b.setup, st, found)
	return r, nil
}

// terms parts the variance of the position between its sources.
func (b *bisecting) terms(scale, offset float64) []budgetTerm {
	s, dial := b.setup, max(0, b.byDial)
	slack := budgetTerm{nameSlack, units.Length(0), units.Length(s.unknownSlack()), b.slack}
	if s.SlackKnown {
		slack.value, slack.std = s.Slack.Value, s.Slack.Std
	}
	return []budgetTerm{
		{dialName, units.Length(0), units.Length(scale * s.dialStd()), scale * math.Sqrt(dial)},
		{settingName, units.Length(0), units.Length(scale) * s.SettingStd, scale * math.Sqrt(max(0, b.cov[0][0]-dial))},
		slack, s.offsetTerm(offset),
	}
}

// offsetTerm is what the offset makes of a position found by middles.
func (s Setup) offsetTerm(u float64) budgetTerm {
	s = s.straightened()
	return budgetTerm{nameOffset, s.Offset.Value, s.Offset.Std, u}
}

// note says what a person should be told.
func (b *Bisection) note(s Setup, st study, found search) {
	add := func(format string, args ...any) { b.Notes = append(b.Notes, fmt.Sprintf(format, args...)) }
	for _, p := range b.Pairs {
		if p.LeftOut {
			add("series %s, dial %.2f, rim %.1f and %.1f: the middle lies at %.1f, left out", p.Series, p.Dial, p.Before, p.After, p.Middle)
		}
	}
	if b.Scatter > 1 && (TDC{DoF: st.dof, ChiSquare: st.sum}).Chance() < 0.01 {
		add("the middles scatter %.1f times more than stated; the uncertainty is made larger in that measure", b.Scatter)
	}
	if found.more {
		add("more middles stand out than slips explain")
	}
	if b.OneWay {
		late, tenth := 0.0, units.Millimetre/10
		for i, p := range b.Pairs {
			if found.keep[i] {
				late = math.Max(late, math.Abs(float64(p.LateBy(tenth))))
			}
		}
		add("the engine was turned %v only: with slack the position comes late in that way of turning, by up to %.2f of rim for each 0.1 mm of slack; the uncertainty allows for %.2f of slack: take a series turning the other way too", b.Pairs[0].Turned, units.Length(late), s.slackAllowed())
	}
	if s.OffsetUnknown {
		add("the offset of the cylinder is not allowed for")
	}
}
