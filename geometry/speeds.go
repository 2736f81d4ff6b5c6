package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// MeanPistonSpeed returns the mean speed of the piston over a turn, 2 S N with N
// the turns in a unit of time; S N/30 in m/s for S in metres and N in turns a
// minute, S N/6 in ft/min for S in inches.
//
// Source: Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapter
// from memory).
func (c Crank) MeanPistonSpeed(speed units.AngularSpeed) units.Speed {
	return units.Speed(2 * float64(c.stroke) * speed.RevolutionsPerSecond())
}

// StrokeOfMeanPistonSpeed returns the stroke that gives a mean piston speed at a
// crank speed. The error is units.ErrDomain unless both are more than 0 and finite.
func StrokeOfMeanPistonSpeed(mean units.Speed, speed units.AngularSpeed) (units.Length, error) {
	if err := checkSpeed(speed); err != nil {
		return 0, err
	}
	if !(mean > 0) || math.IsInf(float64(mean), 0) {
		return 0, fmt.Errorf("mean piston speed %v: want more than 0 m/s: %w", mean, units.ErrDomain)
	}
	return units.Length(float64(mean) / (2 * speed.RevolutionsPerSecond())), nil
}

func checkSpeed(speed units.AngularSpeed) error {
	if !(speed > 0) || math.IsInf(float64(speed), 0) {
		return fmt.Errorf("crank speed %v: want more than 0 rev/min: %w", speed, units.ErrDomain)
	}
	return nil
}

// InletSpeeds are mean speeds of the gas in an inlet bore, as if the swept volume
// went through it whole and the gas kept its density: four ways of counting that
// are not to be taken for one another. No rule with a source says what is good;
// compare them with an engine that runs well.
//
// Source: continuity at one density, v (B/d)²; Blair, Design and Simulation of
// Two-Stroke Engines, 1996, ch. 1 (chapter from memory).
type InletSpeeds struct {
	// OverStroke counts the gas as passing while the piston makes one stroke: mean
	// piston speed times the ratio of the areas, v (B/d)². Most books print this.
	OverStroke units.Speed
	// OverTurn counts it over a whole turn, one filling to each, as in a
	// two-stroke: half of OverStroke. A four-stroke fills every other turn; halve
	// it again.
	OverTurn units.Speed
	// OverOpening counts it over the time the inlet is open.
	OverOpening units.Speed
	// Greatest is the greatest piston speed times the ratio of the areas.
	Greatest units.Speed
}

// InletSpeeds returns the mean gas speeds in an inlet bore, a carburettor's choke
// or the port's narrowest place, with the inlet open for an angle of crank at a
// steady crank speed.
//
// The error is units.ErrDomain for a bore, an angle or a speed not more than 0, or
// an angle of more than a turn.
func (c Cylinder) InletSpeeds(bore units.Length, open units.Angle, speed units.AngularSpeed) (InletSpeeds, error) {
	switch {
	case !(bore > 0) || math.IsInf(float64(bore), 0):
		return InletSpeeds{}, fmt.Errorf("inlet bore %v: want more than 0 mm: %w", bore, units.ErrDomain)
	case !(open > 0 && open <= units.Turn):
		return InletSpeeds{}, fmt.Errorf("inlet open for %v: want more than 0° and at most 360°: %w", open, units.ErrDomain)
	}
	if err := checkSpeed(speed); err != nil {
		return InletSpeeds{}, err
	}
	areas := units.Speed(c.PistonArea() / Circle(bore))
	mean := areas * c.crank.MeanPistonSpeed(speed)
	before, after := c.crank.FastestAngles()
	return InletSpeeds{
		OverStroke:  mean,
		OverTurn:    mean / 2,
		OverOpening: mean / 2 * units.Speed(units.Turn/open),
		Greatest:    areas * max(c.crank.Velocity(after, speed), -c.crank.Velocity(-before, speed)),
	}, nil
}
