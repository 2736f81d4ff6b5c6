package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// An EyeFinding is top dead centre from watching where the needle turns back.
type EyeFinding struct {
	Position units.Reading[units.Length] // the rim figure at the pointer
	DeadBand units.Length                // half the width of rim over which the needle seems to stand
	Spread   units.Length                // standard deviation of one try
	terms    []budgetTerm
}

// ByEye takes the mean of several tries at the rim figure where the needle of a
// dial seemed to turn back, with the uncertainty that this way of finding top
// dead centre really has.
//
// Near the top the piston moves as the square of the angle. A dial that cannot
// show less than one division d leaves a dead band to either side of
//
//	√(2d / (r(1 + λ))) radians     with r the throw, λ throw over rod
//
// which is a degree and more on a small engine, and slack, where it is known,
// adds to d. Within the band nothing tells one place from another, and the mean
// of many tries may lie anywhere in it: the standard uncertainty is that of the
// mean as the tries scatter together with the half width of the band over √3.
//
// The errors are [units.ErrDomain] for a setup or figures without meaning and
// [ErrTooFew] for fewer than two tries.
//
// Source: derived here from the two-term drop near the top, x = r(1 + λ) θ²/2
// (geometry.TwoTerm).
func ByEye(setup Setup, tries ...units.Length) (EyeFinding, error) {
	if err := setup.check(false); err != nil {
		return EyeFinding{}, err
	}
	if len(tries) < 2 {
		return EyeFinding{}, fmt.Errorf("%d tries by eye: want 2 at least, to see how they scatter, and better equal readings on both sides of the top: %w", len(tries), ErrTooFew)
	}
	for i, figure := range tries {
		if err := setup.checkFigure(figure); err != nil {
			return EyeFinding{}, fmt.Errorf("try %d: %w", i+1, err)
		}
	}
	band, err := setup.deadBand()
	if err != nil {
		return EyeFinding{}, err
	}
	mean, err := units.Repeats(nearFirst(tries, setup.Rim.Girth())...)
	if err != nil {
		return EyeFinding{}, err
	}
	unseen, spread := band/units.Length(math.Sqrt(3)), mean.Std*units.Length(math.Sqrt(float64(len(tries))))
	return EyeFinding{
		Position: mean.With(unseen),
		DeadBand: band,
		Spread:   spread,
		terms: []budgetTerm{
			{settingName, units.Length(0), spread, float64(mean.Std)},
			{bandName, units.Length(0), unseen, float64(unseen)},
		},
	}, nil
}

// deadBand is half the width of rim over which the dial shows no movement.
func (s Setup) deadBand() (units.Length, error) {
	c, err := s.crank()
	if err != nil {
		return 0, err
	}
	unseen := units.Length(s.division() * math.Cos(float64(s.Lean.Value)))
	if s.SlackKnown {
		unseen += s.Slack.Value
	}
	width, err := c.DwellAtTop(unseen)
	return s.Rim.Arc(width / 2), err
}
