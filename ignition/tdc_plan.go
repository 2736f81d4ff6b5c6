package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// A Plan says where to take equal dial readings on both sides of the top and
// what to expect of them.
type Plan struct {
	Pairs    int          // of readings, one on each side
	Drop     units.Length // of the piston below its top
	Dial     units.Length // how far the dial has moved from the top
	Angle    units.Angle  // of the crank from top dead centre
	Rim      units.Length // from top dead centre along the rim, either way
	Std      units.Length // standard uncertainty of the position that comes out, along the rim
	StdAngle units.Angle  // the same as a crank angle

	PerDivision units.Angle  // crank angle for one division of the dial there
	DeadBand    units.Length // rim to either side of the top over which the needle seems to stand: why not to watch it turn
	DeadAngle   units.Angle  // the same as a crank angle
}

// PlanAt says what comes of a number of pairs of equal dial readings taken with
// the piston the given drop below its top. With u(s) the uncertainty of setting
// and reading the rim, u(x) that of the dial as piston travel,
//
//	u² = (u(s)² + (u(x)/(dx/ds))²) / (2 × pairs)
//
// along the rim: near the top dx/ds is small and the dial's share is large. Slack
// and what the pairs share are not in it.
//
// The error is [units.ErrDomain] for a setup without meaning, fewer than one
// pair, or a drop that is not more than 0 and less than the stroke.
//
// Source: derived here by JCGM 100:2008, 5.1.2, from the mean of two places.
func PlanAt(setup Setup, drop units.Length, pairs int) (Plan, error) {
	if err := setup.check(false); err != nil {
		return Plan{}, err
	}
	c, err := setup.straightened().crank()
	if err != nil {
		return Plan{}, err
	}
	if pairs < 1 {
		return Plan{}, fmt.Errorf("%d pairs: want 1 at least: %w", pairs, units.ErrDomain)
	}
	if !(drop > 0 && drop < c.Stroke()) {
		return Plan{}, fmt.Errorf("drop %v: want more than 0 mm and less than %v, the stroke: %w", drop, c.Stroke(), units.ErrDomain)
	}
	_, after, err := c.AnglesAtDrop(drop)
	if err != nil {
		return Plan{}, err
	}
	return setup.plan(c, after, pairs)
}

// PlanTDC says from which drop to take a number of pairs of equal dial readings
// so that top dead centre comes out with the standard uncertainty wanted, along
// the rim: the smallest drop that will do.
//
// The error is [units.ErrDomain] for a setup or a wish without meaning, and
// [ErrUnsettled] where no drop will do; the text says how many pairs would.
func PlanTDC(setup Setup, want units.Length, pairs int) (Plan, error) {
	if err := setup.check(false); err != nil {
		return Plan{}, err
	}
	if !positive(want) || pairs < 1 {
		return Plan{}, fmt.Errorf("%v from %d pairs: want more than 0 mm from 1 pair at least: %w", want, pairs, units.ErrDomain)
	}
	c, err := setup.straightened().crank()
	if err != nil {
		return Plan{}, err
	}
	_, fastest := c.FastestAngles()
	best := setup.pairVariance(c, fastest) // of one pair
	if n := math.Ceil(best / math.Pow(float64(want), 2)); n > float64(pairs) {
		return Plan{}, fmt.Errorf("%d pairs leave %.2g at any drop, with the rim set to %v and the dial read to %v: want %.0f pairs for %v: %w",
			pairs, units.Length(math.Sqrt(best/float64(pairs))), setup.SettingStd, units.Length(setup.dialStd()), n, want, ErrUnsettled)
	}
	low, high := units.Angle(0), fastest
	for range 60 { // the uncertainty falls all the way from the top to where the piston is fastest
		if mid := (low + high) / 2; setup.pairVariance(c, mid) > math.Pow(float64(want), 2)*float64(pairs) {
			low = mid
		} else {
			high = mid
		}
	}
	return setup.plan(c, high, pairs)
}

// pairVariance is the variance of the middle of one pair, along the rim.
func (s Setup) pairVariance(c geometry.Crank, theta units.Angle) float64 {
	perRim := float64(c.DropPerRadian(theta)) / float64(s.Rim.Radius()) / math.Cos(float64(s.Lean.Value))
	return (math.Pow(float64(s.SettingStd), 2) + math.Pow(s.dialStd()/perRim, 2)) / 2
}

func (s Setup) plan(c geometry.Crank, theta units.Angle, pairs int) (Plan, error) {
	s.SlackKnown = false // it is no matter of the needle
	band, err := s.deadBand()
	if err != nil {
		return Plan{}, err
	}
	cos := math.Cos(float64(s.Lean.Value))
	per, err := c.AnglePer(units.Length(s.division()*cos), theta)
	if err != nil {
		return Plan{}, err
	}
	std := units.Length(math.Sqrt(s.pairVariance(c, theta) / float64(pairs)))
	return Plan{
		Pairs: pairs, Drop: c.Drop(theta), Dial: c.Drop(theta) / units.Length(cos), Angle: theta, Rim: s.Rim.Arc(theta),
		Std: std, StdAngle: s.Rim.AngleOfArc(std), PerDivision: per, DeadBand: band, DeadAngle: s.Rim.AngleOfArc(band),
	}, nil
}

// LateBy returns by how much of crank angle the middle between equal dial
// readings lies past top dead centre, in the way of turning, when both were taken
// turning the same way with slack in the bearings:
//
//	slack/(2 dx/dθ)
//
// On its way up the piston is pushed and sits low, past the top it is dragged and
// sits high, so the same height comes later. Turning forward finds top dead
// centre late, backward early by as much; the mean of both is free of it. It
// holds where friction moves the piston through the slack; a free upright piston
// whose weight closes the play has none.
//
// The error is [units.ErrDomain] for slack below 0 or a drop that is not more
// than 0 and less than the stroke.
//
// Source: derived here: the two heights meet at x ∓ slack/2, first order in the
// slack.
func LateBy(c geometry.Crank, drop, slack units.Length) (units.Angle, error) {
	if !(slack >= 0) || math.IsInf(float64(slack), 0) {
		return 0, fmt.Errorf("slack %v: want 0 mm or more: %w", slack, units.ErrDomain)
	}
	if !(drop > 0 && drop < c.Stroke()) {
		return 0, fmt.Errorf("drop %v: want more than 0 mm and less than %v, the stroke: %w", drop, c.Stroke(), units.ErrDomain)
	}
	before, after, err := c.AnglesAtDrop(drop)
	if err != nil {
		return 0, err
	}
	up, down := float64(-c.DropPerRadian(-before)), float64(c.DropPerRadian(after))
	return units.Angle(float64(slack) / 4 * (1/up + 1/down)), nil
}
