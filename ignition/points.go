package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// An Opening is where the contacts part, from rim figures taken again and again
// with the gap and the lever left alone.
type Opening struct {
	Forward  units.Reading[units.Length] // figure, the engine turned forward: the one that counts
	Backward units.Reading[units.Length] // figure, the engine turned backward; all 0 if not taken
	Slack    units.Reading[units.Angle]  // slack of the drive at the crank; all 0 if not taken both ways
	Odd      []OddFigure                 // figures left out of Forward
	OddBack  []OddFigure                 // figures left out of Backward
}

// Opening returns where the contacts part. Forward holds the rim figures at
// which they just opened, the engine turned forward until the buzzer or the
// lamp changed; backward holds those at which they just closed, the engine
// turned back over the same place, and may be empty. Single is the standard
// uncertainty of one figure: how well its taker can set the crank and read the
// rule.
//
// Only the forward figures are the timing, for in running the drive is pulled
// one way and its slack lies on one side. Turned back, the crank first takes up
// the slack while the breaker stands still, so that the same event comes at an
// earlier crank position, by the whole of the slack. A mean of both ways is the
// timing of no engine.
//
// The uncertainty of a mean is that of its scatter or, where the figures happen
// to agree better than single figures can, that of single over the root of
// their number. Figures that stand out are named and left out, see [FindOdd].
//
// The error is [units.ErrDomain] for no forward figures, for one figure without
// a single, and for backward figures that lie later than the forward ones by
// more than their uncertainty: that is not slack but figures changed about, or
// rim figures that fall where they are said to rise.
func (m MeasuredScale) Opening(forward, backward []units.Length, single units.Length) (Opening, error) {
	s, err := m.Scale()
	if err != nil {
		return Opening{}, err
	}
	var o Opening
	if o.Forward, o.Odd, err = meanFigure(s, forward, single); err != nil {
		return Opening{}, fmt.Errorf("contacts opening, turned forward: %w", err)
	}
	if len(backward) == 0 {
		return o, nil
	}
	if o.Backward, o.OddBack, err = meanFigure(s, backward, single); err != nil {
		return Opening{}, fmt.Errorf("contacts closing, turned backward: %w", err)
	}
	slack, err := m.Between(o.Backward, o.Forward)
	if err != nil {
		return Opening{}, err
	}
	o.Slack = slack.Reading()
	if o.Slack.Value < -3*o.Slack.Std {
		return Opening{}, fmt.Errorf("turned backward the contacts close %.2f° later than they open turned forward: slack can only make that earlier; want the two lists the right way round and rim figures that are %v as stated: %w",
			-o.Slack.Value.Degrees(), m.Figures, units.ErrDomain)
	}
	return o, nil
}

// meanFigure returns the mean of figures of one event, which may lie on either
// side of the place where the rule starts again.
func meanFigure(s Scale, figures []units.Length, single units.Length) (units.Reading[units.Length], []OddFigure, error) {
	switch {
	case len(figures) == 0:
		return units.Reading[units.Length]{}, nil, fmt.Errorf("no figures: want one at least: %w", units.ErrDomain)
	case len(figures) == 1 && single == 0:
		return units.Reading[units.Length]{}, nil, fmt.Errorf("one figure without a standard uncertainty: want that, or several figures: %w", units.ErrDomain)
	}
	if err := checkFigures(figures, single); err != nil {
		return units.Reading[units.Length]{}, nil, err
	}
	odd, kept := splitOdd(nearFirst(figures, s.rim.Girth()), single)
	for i, o := range odd {
		odd[i].Figure = figures[o.Try-1]
	}
	return meanOf(kept, single), odd, nil
}

// nearFirst brings every figure within half a girth of the first.
func nearFirst(figures []units.Length, girth units.Length) []units.Length {
	out := make([]units.Length, len(figures))
	for i, f := range figures {
		if off := f - figures[0]; math.Abs(float64(off)) > float64(girth)/2 {
			f = figures[0] + units.Length(math.Remainder(float64(off), float64(girth)))
		}
		out[i] = f
	}
	return out
}

// meanOf returns the mean with the larger of the scatter found and the scatter
// to be expected.
func meanOf(figures []units.Length, single units.Length) units.Reading[units.Length] {
	root := units.Length(math.Sqrt(float64(len(figures))))
	r, err := units.Repeats(figures...)
	if err != nil { // one figure
		return units.WithStd(figures[0], single)
	}
	if r.Std < single/root {
		r.Std, r.DoF = single/root, 0
	}
	return r
}
