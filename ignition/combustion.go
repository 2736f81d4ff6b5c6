package ignition

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/units"
)

// A Burn is the split of the textbooks between what keeps its time and what
// keeps its degrees: the delay after the spark takes the same time at every
// speed and so doubles in degrees when the speed doubles, while the burning
// itself, driven by the engine's own turbulence, takes the same crank angle.
//
// It is an exercise that shows why faster engines want more advance, not a way
// to find the timing of a real one.
type Burn struct {
	Delay time.Duration // from the spark until burning shows
	Burn  units.Angle   // crank angle of the burning itself
}

// NewBurn returns the split for an engine observed at one speed, with the
// delay given in degrees of crank at that speed. The error is
// [units.ErrDomain] for a speed that is not more than 0 or for angles below 0.
func NewBurn(delay, burn units.Angle, speed units.AngularSpeed) (Burn, error) {
	switch {
	case !turns(speed):
		return Burn{}, fmt.Errorf("speed %v: want more than 0 rev/min: %w", speed, units.ErrDomain)
	case !(delay >= 0) || !(burn >= 0) || math.IsInf(float64(delay+burn), 0):
		return Burn{}, fmt.Errorf("delay %v and burning %v: want 0° or more: %w", delay, burn, units.ErrDomain)
	}
	return Burn{speed.Time(delay), burn}, nil
}

// turns reports whether w is a speed at which a shaft turns.
func turns(w units.AngularSpeed) bool { return w > 0 && !math.IsInf(float64(w), 0) }

// Ends returns where burning ends, as a crank angle after top dead centre,
// with the spark the given angle before it:
//
//	end = ω delay + burn − advance
//
// Source: Mathur and Sharma, Internal Combustion Engine, Example 5.1; Rajput,
// A Textbook of Internal Combustion Engines, Examples 5.1 and 5.2.
func (b Burn) Ends(advance units.Angle, speed units.AngularSpeed) units.Angle {
	return speed.Angle(b.Delay) + b.Burn - advance
}

// Advance returns the advance with which burning ends at the given crank angle
// after top dead centre: [Burn.Ends] turned round.
func (b Burn) Advance(end units.Angle, speed units.AngularSpeed) units.Angle {
	return speed.Angle(b.Delay) + b.Burn - end
}

// FlameTime returns how long a flame takes over a distance at a steady speed.
// The error is [units.ErrDomain] for a speed that is not more than 0 or a
// distance below 0.
func FlameTime(distance units.Length, speed units.Speed) (time.Duration, error) {
	ns := float64(distance/units.Metre) / speed.MetresPerSecond() * float64(time.Second)
	if !(speed > 0) || !(distance >= 0) || !(ns < math.MaxInt64) {
		return 0, fmt.Errorf("flame over %v at %v: want a distance of 0 mm or more and a speed of more than 0 m/s: %w", distance, speed, units.ErrDomain)
	}
	return time.Duration(math.Round(ns)), nil
}

// A PeriodRule is the advance of an old instruction that grows with the speed:
// so many degrees for each hundred turns a minute. It is a constant time in
// disguise, 13.3 ms for 8° per 100 rev/min, and holds for the speeds its maker
// had in mind and no further.
type PeriodRule struct {
	PerHundred units.Angle // advance for each 100 rev/min
}

// Advance returns the advance at a speed.
func (r PeriodRule) Advance(speed units.AngularSpeed) units.Angle {
	return r.PerHundred * units.Angle(speed/(100*units.RevolutionPerMinute))
}

// Time returns the time before top dead centre, the same at every speed.
func (r PeriodRule) Time() time.Duration {
	return (100 * units.RevolutionPerMinute).Time(r.PerHundred)
}
