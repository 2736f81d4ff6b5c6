package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Drive is how a breaker, a magneto or a camshaft is driven from the crank:
// how many turns of the crank go to one turn of the shaft. The zero Drive is a
// shaft at crank speed, one to one.
type Drive struct {
	extra float64 // crank turns per shaft turn, less one
}

// CrankSpeed returns the drive of a shaft that turns once for each turn of the
// crank: a breaker on the crank itself, the magneto of a two-stroke.
func CrankSpeed() Drive { return Drive{} }

// HalfSpeed returns the drive of a shaft that turns once for two turns of the
// crank: every camshaft of a four-stroke, and a magneto geared with it.
func HalfSpeed() Drive { return Drive{1} }

// NewDrive returns the drive in which the crank turns crankTurns while the
// shaft turns shaftTurns: 2 and 1 for half speed, 2 and 3 for the magneto of a
// six-cylinder four-stroke at one and a half times crank speed. The error is
// [units.ErrDomain] for turns that are not more than 0.
func NewDrive(crankTurns, shaftTurns float64) (Drive, error) {
	ratio := crankTurns / shaftTurns
	if !(crankTurns > 0) || !(shaftTurns > 0) || !(ratio > 0) || math.IsInf(ratio, 0) {
		return Drive{}, fmt.Errorf("%g crank turns to %g shaft turns: want more than 0 of both: %w", crankTurns, shaftTurns, units.ErrDomain)
	}
	return Drive{ratio - 1}, nil
}

// NewToothedDrive returns the drive by chain, toothed belt or gears between a
// wheel of crankTeeth on the crank and one of shaftTeeth on the shaft. Idlers
// between them do not count. The error is [units.ErrDomain] for a wheel without
// teeth.
func NewToothedDrive(crankTeeth, shaftTeeth int) (Drive, error) {
	if crankTeeth < 1 || shaftTeeth < 1 {
		return Drive{}, fmt.Errorf("wheels of %d and %d teeth: want 1 tooth or more on both: %w", crankTeeth, shaftTeeth, units.ErrDomain)
	}
	return NewDrive(float64(shaftTeeth), float64(crankTeeth))
}

// Ratio returns how many turns of the crank go to one of the shaft: 2 at half
// speed.
func (d Drive) Ratio() float64 { return 1 + d.extra }

// Crank returns the crank angle that goes with an angle of the shaft. Slack in
// the drive and lost motion at the shaft count as much more at the crank: twice
// at half speed.
func (d Drive) Crank(shaft units.Angle) units.Angle { return shaft * units.Angle(d.Ratio()) }

// Shaft returns the angle of the shaft that goes with a crank angle.
func (d Drive) Shaft(crank units.Angle) units.Angle { return crank / units.Angle(d.Ratio()) }

// ShaftSpeed returns how fast the shaft turns at a speed of the crank.
func (d Drive) ShaftSpeed(crank units.AngularSpeed) units.AngularSpeed {
	return crank / units.AngularSpeed(d.Ratio())
}

// StartingAdvance returns the advance at which an impulse coupling lets the
// spark go in starting, when it holds the magneto back by lag degrees of its
// own shaft and the engine runs with the given advance:
//
//	starting = running − lag × crank turns per shaft turn
//
// A lag of 14° at a half-speed magneto takes off 28°. A negative answer is a
// spark after top dead centre, which is what the coupling is for.
//
// Source: the ratio of the drive; that an impulse coupling lags at its own shaft
// is common practice, no source.
func (d Drive) StartingAdvance(running, lag units.Angle) units.Angle {
	return running - d.Crank(lag)
}

// ImpulseLag returns the lag of an impulse coupling, in degrees of its own
// shaft, that lies between a running and a starting advance at the crank.
func (d Drive) ImpulseLag(running, starting units.Angle) units.Angle {
	return d.Shaft(running - starting)
}
