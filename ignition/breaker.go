package ignition

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/units"
)

// A Breaker is a cam that opens contacts so many times in a turn of its shaft.
// Make one with [NewBreaker], [NewBreakerOfDwell] or [NewBreakerOfMarks].
//
// Dwell is the part of the cam's cycle in which the contacts are closed. Lobes
// are 360°/n apart; of that angle the contacts are closed over the dwell angle
// and open over the rest.
type Breaker struct {
	drive  Drive
	lobes  int
	closed units.Angle // of the shaft
}

// NewBreaker returns the breaker with that many lobes whose contacts are
// closed over the dwell angle, in degrees of its own shaft, once a lobe. The
// error is [units.ErrDomain] for fewer than 1 lobe or an angle outside the
// cycle of a lobe.
func NewBreaker(drive Drive, lobes int, closed units.Angle) (Breaker, error) {
	if lobes < 1 || lobes > mostTeeth {
		return Breaker{}, fmt.Errorf("%d lobes: want from 1 to %d: %w", lobes, mostTeeth, units.ErrDomain)
	}
	b := Breaker{drive, lobes, closed}
	if !(closed >= 0 && closed <= b.Cycle()) {
		return Breaker{}, fmt.Errorf("contacts closed over %v: want from 0° to %v, the cycle of a lobe: %w", closed, b.Cycle(), units.ErrDomain)
	}
	return b, nil
}

// NewBreakerOfDwell returns the breaker whose contacts are closed over a
// fraction of the cycle: 0.6 or 60 %. The error is [units.ErrDomain] for fewer
// than 1 lobe or a fraction outside 0 to 1.
func NewBreakerOfDwell(drive Drive, lobes int, dwell units.Ratio) (Breaker, error) {
	b, err := NewBreaker(drive, lobes, 0)
	if err != nil {
		return Breaker{}, err
	}
	if !(dwell >= 0 && dwell <= 1) {
		return Breaker{}, fmt.Errorf("dwell %.4g %%: want from 0 %% to 100 %%: %w", dwell.Percent(), units.ErrDomain)
	}
	b.closed = b.Cycle() * units.Angle(dwell)
	return b, nil
}

// NewBreakerOfMarks returns the breaker from the crank angles at which the
// contacts open and next close again, both with the engine turned forward. The
// closing of a worn breaker on a slack drive may come early, because the spring
// pushes the cam on; that makes the dwell look larger than it is. The error is
// [units.ErrDomain] for fewer than 1 lobe or angles that are not finite.
func NewBreakerOfMarks(drive Drive, lobes int, opens, closes units.Angle) (Breaker, error) {
	b, err := NewBreaker(drive, lobes, 0)
	if err != nil {
		return Breaker{}, err
	}
	open := math.Mod(float64(drive.Shaft(closes-opens)), float64(b.Cycle()))
	if open < 0 {
		open += float64(b.Cycle())
	}
	return NewBreaker(drive, lobes, b.Cycle()-units.Angle(open))
}

// Cycle returns the angle from one lobe to the next, 360° over the lobes.
//
// Source: a whole turn shared between the lobes; the dwell figures it is held to
// are named in the tests of the package.
func (b Breaker) Cycle() units.Angle { return units.Turn / units.Angle(b.lobes) }

// Closed returns the dwell angle, in degrees of the breaker's own shaft.
func (b Breaker) Closed() units.Angle { return b.closed }

// Open returns the angle over which the contacts are open, in degrees of the
// breaker's own shaft.
func (b Breaker) Open() units.Angle { return b.Cycle() - b.closed }

// Dwell returns the part of the cycle in which the contacts are closed; its
// Percent is what dwell meters show.
func (b Breaker) Dwell() units.Ratio { return units.Ratio(b.closed / b.Cycle()) }

// ClosedTime returns how long the contacts stay closed at a speed of the crank,
// the time a coil has to fill. A crank that stands gives the largest Duration.
func (b Breaker) ClosedTime(crank units.AngularSpeed) time.Duration {
	return b.drive.ShaftSpeed(crank).Time(b.closed)
}

// Between returns the time from one spark to the next at a speed of the crank.
func (b Breaker) Between(crank units.AngularSpeed) time.Duration {
	return b.drive.ShaftSpeed(crank).Time(b.Cycle())
}

// Sparks returns how many sparks come in a time at a speed of the crank.
func (b Breaker) Sparks(crank units.AngularSpeed, in time.Duration) float64 {
	return float64(b.drive.ShaftSpeed(crank).Angle(in) / b.Cycle())
}
