package springs

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/units"
)

// A Winder is a spring whose torque rises in proportion to its angle of wind: a
// Torsion or a Spiral.
type Winder interface {
	Rate() units.TorsionalStiffness
	Stress(units.Torque) units.Pressure
}

// A Return is a spring that brings a lever, a kick-start or a throttle home: it is
// wound a little at rest (the preload) and more as the lever travels. The stress
// goes by both together, and the preload is often the larger part.
type Return struct {
	spring          Winder
	preload, travel float64 // rad
}

// NewReturn joins a spring with its preload and the travel of what it returns. The
// error is units.ErrDomain for no spring, a preload below 0, or a travel that is not
// more than 0.
func NewReturn(spring Winder, preload, travel units.Angle) (Return, error) {
	if spring == nil {
		return Return{}, fmt.Errorf("no spring: want a Torsion or a Spiral: %w", units.ErrDomain)
	}
	if err := first(notNegative("preload", preload), positive("travel", travel)); err != nil {
		return Return{}, err
	}
	return Return{spring, float64(preload), float64(travel)}, nil
}

// PreloadFor returns the preload at which a spring holds with the given torque at
// rest. The error is units.ErrDomain for no spring or a torque below 0.
func PreloadFor(spring Winder, atRest units.Torque) (units.Angle, error) {
	if spring == nil {
		return 0, fmt.Errorf("no spring: want a Torsion or a Spiral: %w", units.ErrDomain)
	}
	return units.Angle(float64(atRest) / float64(spring.Rate())), notNegative("torque at rest", atRest)
}

// Torque returns the torque when the lever has travelled so far from rest.
func (r Return) Torque(travelled units.Angle) units.Torque {
	return units.Torque(float64(r.spring.Rate()) * (r.preload + float64(travelled)))
}

// AtRest returns the torque that holds the lever home.
func (r Return) AtRest() units.Torque { return r.Torque(0) }

// AtFull returns the torque at the end of the travel.
func (r Return) AtFull() units.Torque { return r.Torque(units.Angle(r.travel)) }

// Pull returns the force felt at an arm at the end of the travel.
func (r Return) Pull(arm units.Length) units.Force {
	return units.Force(float64(r.AtFull()) / float64(arm))
}

// FullWind returns the wind of the spring at the end of the travel, preload and
// travel together: what stress, diameter and length are to be judged at.
func (r Return) FullWind() units.Angle { return units.Angle(r.preload + r.travel) }

// Stress returns the stress at the end of the travel.
func (r Return) Stress() units.Pressure { return r.spring.Stress(r.AtFull()) }

// Energy returns what the spring gives the lever on its way home, the area under
// the torque over the travel.
func (r Return) Energy() units.Energy {
	return units.Energy((float64(r.AtRest()) + float64(r.AtFull())) / 2 * r.travel)
}

// Stored returns what the spring holds at the end of the travel.
func (r Return) Stored() units.Energy {
	return units.Energy(float64(r.AtFull()) * float64(r.FullWind()) / 2)
}

// SnapBack returns the speed with which the lever meets its stop when it is let go
// at the end of its travel, and the time it takes, with nothing to hold it back
// but the inertia of all that turns:
//
//	ω = √(2 U/J)     t = arccos(θ₁/θ₂) √(J/k)
//
// U being the energy of the travel, θ₁ the preload and θ₂ the full wind. Friction
// makes both milder. The error is units.ErrDomain for an inertia that is not more
// than 0, or a time of more than a hundred years.
func (r Return) SnapBack(inertia units.MomentOfInertia) (units.AngularSpeed, time.Duration, error) {
	if err := positive("moment of inertia", inertia); err != nil {
		return 0, 0, err
	}
	speed := math.Sqrt(2 * float64(r.Energy()) / float64(inertia))
	swing := math.Atan2(math.Sqrt(r.travel*(r.travel+2*r.preload)), r.preload) // arccos(preload/full)
	took, err := duration(swing * math.Sqrt(float64(inertia)/float64(r.spring.Rate())))
	return units.AngularSpeed(speed), took, err
}

// duration refuses times that a Duration cannot hold.
func duration(seconds float64) (time.Duration, error) {
	const century = 3.15576e9 // s
	if !(seconds <= century) {
		return 0, fmt.Errorf("%.3g s: want less than a hundred years: %w", seconds, units.ErrDomain)
	}
	return time.Duration(seconds * float64(time.Second)), nil
}

// Advice lists what lies outside practice for return springs. An empty list is no
// promise that the spring is good.
//
// Source: common practice, no source (preload a quarter to half a turn for a
// lever, half to one and a half turns for a kick-starter).
func (r Return) Advice() []string {
	turns := units.Angle(r.preload).Turns()
	switch {
	case turns < 0.25:
		return []string{fmt.Sprintf("preload %.2f turn: a quarter to half a turn holds a lever firmly, half to one and a half turns a kick-starter", turns)}
	case turns > 1.5:
		return []string{fmt.Sprintf("preload %.2f turns: more than one and a half is unusual, and all of it counts in the stress", turns)}
	}
	return nil
}

// A RopeReturn is a power spring that winds a rope drum or a starter home: the
// turns wound on with the rope home, and the turns that the rope takes.
type RopeReturn struct {
	Spare    float64      // turns left before solid, with the rope right out
	AtRest   BarrelTorque // rope home
	AtFull   BarrelTorque // rope right out
	Stress   units.Pressure
	Stored   units.Energy // given back from rope out to run down
	OverRope units.Energy // given back from rope out to rope home
}

// Worked returns what the spring does between a pre-wind and that and the travel, both
// in turns. The error is units.ErrDomain where the two are below 0 or more than
// the barrel allows.
func (b Barrel) Worked(preWind, travel float64) (RopeReturn, error) {
	if err := first(notNegative("pre-wind", preWind), positive("travel", travel)); err != nil {
		return RopeReturn{}, err
	}
	full := preWind + travel
	if !atMost(full, b.Turns()) {
		return RopeReturn{}, fmt.Errorf("%.4g turns of pre-wind and %.4g of travel: want %.4g at most, %.4g too many: %w", preWind, travel, b.Turns(), full-b.Turns(), units.ErrDomain)
	}
	full = math.Min(full, b.Turns())
	rest, err := b.Torque(preWind)
	if err != nil {
		return RopeReturn{}, err
	}
	out, err := b.Torque(full)
	if err != nil {
		return RopeReturn{}, err
	}
	home, _ := b.Energy(preWind) // in range, or Torque had refused
	all, _ := b.Energy(full)
	return RopeReturn{b.Turns() - full, rest, out, b.Stress(full), all, all - home}, nil
}

// DrumTurns returns the turns that a length of rope takes on a drum, by the
// diameter to the centre of the rope. The error is units.ErrDomain for a length or
// diameter that is not more than 0.
func DrumTurns(rope, toRopeCentre units.Length) (float64, error) {
	if err := first(positive("rope", rope), positive("diameter to the rope's centre", toRopeCentre)); err != nil {
		return 0, err
	}
	return float64(rope) / (math.Pi * float64(toRopeCentre)), nil
}
