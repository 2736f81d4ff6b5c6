package units

import (
	"fmt"
	"math"
	"time"

	"gonum.org/v1/gonum/unit"
)

// An AngularSpeed is an angle per time, in radians per second underneath.
type AngularSpeed float64

// Units of angular speed: those of angle (SI Brochure, 9th ed., Table 8) over 1 s
// or 60 s.
const (
	RadianPerSecond     AngularSpeed = 1
	RevolutionPerMinute AngularSpeed = 0.10471975511965977462  // π/30
	RevolutionPerSecond AngularSpeed = 6.2831853071795864769   // 2π
	DegreePerSecond     AngularSpeed = 0.017453292519943295769 // π/180
)

// RadiansPerSecond returns w in radians per second.
func (w AngularSpeed) RadiansPerSecond() float64 { return float64(w / RadianPerSecond) }

// RevolutionsPerMinute returns w in revolutions per minute.
func (w AngularSpeed) RevolutionsPerMinute() float64 { return float64(w / RevolutionPerMinute) }

// RevolutionsPerSecond returns w in revolutions per second.
func (w AngularSpeed) RevolutionsPerSecond() float64 { return float64(w / RevolutionPerSecond) }

// DegreesPerSecond returns w in degrees per second.
func (w AngularSpeed) DegreesPerSecond() float64 { return float64(w / DegreePerSecond) }

// Time returns how long the shaft takes to turn through a, to the nearest
// nanosecond:
//
//	t = a / ω
//
// A shaft that stands has no answer: ask for w > 0 first. At speed 0 Time
// returns the largest Duration there is, 292 years, and so it does for a time
// too long to hold; for one too long on the negative side it returns the least.
//
// Source: the definition of angular speed.
func (w AngularSpeed) Time(a Angle) time.Duration {
	ns := float64(a) / float64(w) * float64(time.Second)
	switch {
	case !(ns < math.MaxInt64): // NaN too
		return math.MaxInt64
	case ns < math.MinInt64:
		return math.MinInt64
	}
	return time.Duration(math.Round(ns))
}

// Angle returns the angle the shaft turns through in time t, ω t.
//
// Source: the definition of angular speed.
func (w AngularSpeed) Angle(t time.Duration) Angle {
	return Angle(float64(w) * t.Seconds())
}

// ParseAngularSpeed reads an angular speed as people write it, always with its unit:
// rev/min, rad/s. The error is a *ParseError.
func ParseAngularSpeed(text string) (AngularSpeed, error) {
	v, err := angularSpeedKind.parse(text)
	return AngularSpeed(v), err
}

// String writes w for people, in six figures at most, with its unit.
func (w AngularSpeed) String() string { return angularSpeedKind.string(float64(w)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (w AngularSpeed) Format(f fmt.State, verb rune) { angularSpeedKind.format(f, verb, float64(w)) }

// MarshalText writes w so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (w AngularSpeed) MarshalText() ([]byte, error) { return angularSpeedKind.marshal(float64(w)) }

// UnmarshalText is ParseAngularSpeed for decoders and flags.
func (w *AngularSpeed) UnmarshalText(text []byte) error {
	v, err := ParseAngularSpeed(string(text))
	if err != nil {
		return err
	}
	*w = v
	return nil
}

// Unit gives w to gonum, with its dimensions.
func (w AngularSpeed) Unit() *unit.Unit { return unit.New(float64(w), angularSpeedKind.dims) }

func (AngularSpeed) kind() *kind { return &angularSpeedKind }

var angularSpeedScales = [...]scale{
	{name: "rad/s", factor: float64(RadianPerSecond), goName: "RadianPerSecond", aliases: []string{"rad/s"}},
	{name: "rev/min", factor: float64(RevolutionPerMinute), goName: "RevolutionPerMinute", aliases: []string{"rev/min", "rpm", "r/min", "rev a min", "/min"}},
	{name: "rev/s", factor: float64(RevolutionPerSecond), goName: "RevolutionPerSecond", aliases: []string{"rev/s", "rps", "r/s"}},
	{name: "°/s", factor: float64(DegreePerSecond), goName: "DegreePerSecond", aliases: []string{"°/s"}},
}

var angularSpeedKind = kind{
	name: "angular speed", goName: "AngularSpeed", wants: "rev/min, rad/s",
	dims: unit.Dimensions{unit.AngleDim: 1, unit.TimeDim: -1},
	base: angularSpeedScales[0], text: []scale{angularSpeedScales[1], angularSpeedScales[0]},
	people: []scale{angularSpeedScales[1]},
	scales: angularSpeedScales[:],
}
