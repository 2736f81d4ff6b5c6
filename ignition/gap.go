package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A GapTrial is where the contacts opened at one setting of their gap.
type GapTrial struct {
	Gap    units.Length                // the feeler that was used
	Figure units.Reading[units.Length] // rim figure of the opening, turned forward: [Opening.Forward]
}

// A GapEffect is what the contact gap does to the timing, from openings at two
// gaps or more, as a straight line of advance over gap. Make one with
// [MeasuredScale.GapEffect].
//
// # What the feeler does
//
// The gap a feeler leaves is the feeler's size and a setting error, from the
// drag of the blade, the skew of the contacts, the tightening of the screw. The
// model is this: each trial has one setting error of its own, independent of
// those of other trials, with the standard uncertainty given; every figure
// taken at that trial shares it. More figures at one gap make its rim figure
// better and leave the setting error as it was; only setting the gap anew, as a
// trial of its own, averages that.
//
// An error that all trials have in common, such as pits that the blade bridges
// or one hand's habit of pulling, moves every gap alike. It drops out of the
// slope, and of a gap to be set with the same feelers in the same hand, and is
// therefore not asked for.
//
// In that model the gap scatters about the feeler's size, not the feeler about
// the gap, so that the slope found is linear in the setting errors: first order
// is all there is, and more trials do not flatten the line.
type GapEffect struct {
	scale   MeasuredScale
	trials  []GapTrial
	setting units.Length
	weights []float64
}

// GapEffect returns what the gap does to the timing. Setting is the standard
// uncertainty with which one gap is set; for trials of the same gap set anew
// give them each.
//
// With more than two trials the line is that of least squares, each trial
// weighed by its uncertainty in angle, its setting error included.
//
// The error is [units.ErrDomain] for fewer than two trials, for gaps that are
// not more than 0 or that lie within 5 times setting of one another, so that
// they hardly tell the slope, and for contacts that open later the wider the
// gap, which no breaker does.
func (m MeasuredScale) GapEffect(setting units.Length, trials ...GapTrial) (GapEffect, error) {
	g := GapEffect{scale: m, setting: setting, trials: append([]GapTrial(nil), trials...)}
	if err := g.check(); err != nil {
		return GapEffect{}, err
	}
	s, err := m.Scale()
	if err != nil {
		return GapEffect{}, err
	}
	for i, f := range nearFirst(g.figures(), s.rim.Girth()) {
		g.trials[i].Figure.Value = f
	}
	g.weigh(s)
	slope, err := g.Per(units.Millimetre)
	if err != nil {
		return GapEffect{}, err
	}
	if slope.Value < -2*slope.Std {
		return GapEffect{}, fmt.Errorf("contacts open %.1f° later for each 0.1 mm more gap: a wider gap opens them earlier; want each rim figure beside its own gap, and rim figures that are %v as stated: %w",
			-slope.Value.Degrees()/10, m.Figures, units.ErrDomain)
	}
	return g, nil
}

func (g GapEffect) check() error {
	if len(g.trials) < 2 {
		return fmt.Errorf("%d gaps tried: want 2 or more: %w", len(g.trials), units.ErrDomain)
	}
	if !(g.setting >= 0) || math.IsInf(float64(g.setting), 0) {
		return fmt.Errorf("standard uncertainty of setting the gap %v: want 0 mm or more: %w", g.setting, units.ErrDomain)
	}
	for i, t := range g.trials {
		if !positive(t.Gap) {
			return fmt.Errorf("gap %d is %v: want more than 0 mm: %w", i+1, t.Gap, units.ErrDomain)
		}
	}
	if least, most := g.Tried(); !(most-least > 5*g.setting) {
		return fmt.Errorf("gaps tried from %v to %v: want them more than %v apart, 5 times what setting a gap is worth: %w", least, most, 5*g.setting, units.ErrDomain)
	}
	return nil
}

// Tried returns the least and the greatest gap tried.
func (g GapEffect) Tried() (least, most units.Length) {
	least, most = g.trials[0].Gap, g.trials[0].Gap
	for _, t := range g.trials {
		least, most = min(least, t.Gap), max(most, t.Gap)
	}
	return least, most
}

func (g GapEffect) figures() []units.Length {
	out := make([]units.Length, len(g.trials))
	for i, t := range g.trials {
		out[i] = t.Figure.Value
	}
	return out
}

// weigh gives each trial its weight, once with the scatter of its figures
// alone and then with the setting error turned into an angle by the slope so
// found.
func (g *GapEffect) weigh(s Scale) {
	slope := 0.0
	g.weights = make([]float64, len(g.trials))
	for range 4 {
		for i, t := range g.trials {
			u := math.Hypot(float64(s.rim.AngleOfArc(t.Figure.Std)), slope*float64(g.setting))
			g.weights[i] = 1
			if u > 0 {
				g.weights[i] = 1 / (u * u)
			}
		}
		slope = g.line(s, g.figures(), make([]units.Length, len(g.trials))).slope
	}
}

// A gapLine is advance over gap in SI units, through the weighted middle of
// the trials.
type gapLine struct{ gap, advance, slope float64 }

func (l gapLine) at(gap units.Length) units.Angle {
	return units.Angle(l.advance + l.slope*(float64(gap)-l.gap))
}

func (l gapLine) gapFor(advance units.Angle) units.Length {
	return units.Length(l.gap + (float64(advance)-l.advance)/l.slope)
}

// line is the weighted straight line for rim figures and setting errors.
func (g GapEffect) line(s Scale, figures, errs []units.Length) gapLine {
	var l gapLine
	var w, sxx, sxy float64
	for i, t := range g.trials {
		w += g.weights[i]
		l.gap += g.weights[i] * float64(t.Gap+errs[i])
		l.advance += g.weights[i] * float64(s.Advance(figures[i]))
	}
	l.gap, l.advance = l.gap/w, l.advance/w
	for i, t := range g.trials {
		dx := float64(t.Gap+errs[i]) - l.gap
		sxx += g.weights[i] * dx * dx
		sxy += g.weights[i] * dx * float64(s.Advance(figures[i]))
	}
	l.slope = sxy / sxx
	return l
}

// propagate finds what f makes of the line, with the uncertainties of the rim,
// of each rim figure and of each setting of the gap.
func propagate[Q units.Quantity](g GapEffect, f func(gapLine) Q, more ...units.Input) (units.Result[Q], error) {
	n := len(g.trials)
	figures, errs, out := make([]units.Length, n), make([]units.Length, n), make([]units.Length, n)
	var girth, tdc, swing units.Length
	var fail error
	inputs := append([]units.Input{units.Use(units.FirstOrder), units.StopOn(&fail),
		units.VaryReading(girthName, &girth, g.scale.Girth), units.VaryReading(tdcName, &tdc, g.scale.TDC)}, append(g.scale.runOut(&swing), more...)...)
	for i, t := range g.trials {
		inputs = append(inputs,
			units.VaryReading(fmt.Sprintf("rim figure at gap %d, %.2f mm", i+1, t.Gap.Millimetres()), &figures[i], t.Figure),
			units.Vary(fmt.Sprintf("setting of gap %d, %.2f mm", i+1, t.Gap.Millimetres()), &errs[i], g.setting))
	}
	return units.Propagate(func() Q {
		var s Scale
		s, fail = scaleOf(girth, tdc, g.scale.Figures)
		for i, figure := range figures {
			out[i] = s.swung(figure, swing)
		}
		return f(g.line(s, out, errs))
	}, inputs...)
}

// Per returns by how much the advance grows when the gap is opened by change:
// 0.01 mm, one thou. The error is that of [units.Propagate].
func (g GapEffect) Per(change units.Length) (units.Result[units.Angle], error) {
	return propagate(g, func(l gapLine) units.Angle { return units.Angle(l.slope * float64(change)) })
}

// newSetting names the error of setting the gap once more.
const newSetting = "setting the gap anew"

// Advance returns the timing to be expected when the gap is set anew to one of
// those tried or between them, by the same feelers in the same hand. The error
// of the new setting is in it; where the gap of a trial still stands as it was
// set, its own opening is the better answer.
//
// The error is [units.ErrDomain] for a gap outside those tried.
func (g GapEffect) Advance(gap units.Length) (units.Result[units.Angle], error) {
	if least, most := g.Tried(); !(gap >= least && gap <= most) {
		return units.Result[units.Angle]{}, fmt.Errorf("gap %v: want one from %v to %v, those tried: %w", gap, least, most, units.ErrDomain)
	}
	var e units.Length
	return propagate(g, func(l gapLine) units.Angle { return l.at(gap + e) }, units.Vary(newSetting, &e, g.setting))
}

// Misfit returns how far the trials lie from the line at worst, in terms of
// what their uncertainties allow. With two trials it is nothing; with more, a
// figure above 3 says that a gap or a rim figure is wrong, or that the cam's
// flank is no straight line over such a range.
func (g GapEffect) Misfit() float64 {
	s, err := g.scale.Scale()
	if err != nil {
		return math.NaN()
	}
	l := g.line(s, g.figures(), make([]units.Length, len(g.trials)))
	worst := 0.0
	for i, t := range g.trials {
		worst = max(worst, math.Abs(float64(s.Advance(t.Figure.Value)-l.at(t.Gap)))*math.Sqrt(g.weights[i]))
	}
	return worst
}
