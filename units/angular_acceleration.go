package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// An AngularAcceleration is an angular speed per time, in radians per second
// squared underneath.
type AngularAcceleration float64

// Units of angular acceleration.
const (
	RadianPerSecondSquared AngularAcceleration = 1
)

// RadiansPerSecondSquared returns a in radians per second squared.
func (a AngularAcceleration) RadiansPerSecondSquared() float64 {
	return float64(a / RadianPerSecondSquared)
}

// ParseAngularAcceleration reads an angular acceleration as people write it, always with its unit:
// rad/s². The error is a *ParseError.
func ParseAngularAcceleration(text string) (AngularAcceleration, error) {
	v, err := angularAccelerationKind.parse(text)
	return AngularAcceleration(v), err
}

// String writes a for people, in six figures at most, with its unit.
func (a AngularAcceleration) String() string { return angularAccelerationKind.string(float64(a)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (a AngularAcceleration) Format(f fmt.State, verb rune) {
	angularAccelerationKind.format(f, verb, float64(a))
}

// MarshalText writes a so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (a AngularAcceleration) MarshalText() ([]byte, error) {
	return angularAccelerationKind.marshal(float64(a))
}

// UnmarshalText is ParseAngularAcceleration for decoders and flags.
func (a *AngularAcceleration) UnmarshalText(text []byte) error {
	v, err := ParseAngularAcceleration(string(text))
	if err != nil {
		return err
	}
	*a = v
	return nil
}

// Unit gives a to gonum, with its dimensions.
func (a AngularAcceleration) Unit() *unit.Unit {
	return unit.New(float64(a), angularAccelerationKind.dims)
}

func (AngularAcceleration) kind() *kind { return &angularAccelerationKind }

var angularAccelerationScales = [...]scale{
	{name: "rad/s²", factor: float64(RadianPerSecondSquared), goName: "RadianPerSecondSquared", aliases: []string{"rad/s²", "rad/s2"}},
}

var angularAccelerationKind = kind{
	name: "angular acceleration", goName: "AngularAcceleration", wants: "rad/s²",
	dims: unit.Dimensions{unit.AngleDim: 1, unit.TimeDim: -2},
	base: angularAccelerationScales[0], text: []scale{angularAccelerationScales[0]},
	people: []scale{angularAccelerationScales[0]},
	scales: angularAccelerationScales[:],
}
