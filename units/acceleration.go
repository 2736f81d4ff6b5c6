package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// An Acceleration is a speed per time, in metres per second squared underneath.
type Acceleration float64

// Units of acceleration.
const (
	MetrePerSecondSquared Acceleration = 1
	FootPerSecondSquared  Acceleration = 0.3048  // NIST SP 811:2008, Appendix B
	StandardGravity       Acceleration = 9.80665 // 3rd CGPM, 1901; SI Brochure, 9th ed.
)

// MetresPerSecondSquared returns a in metres per second squared.
func (a Acceleration) MetresPerSecondSquared() float64 { return float64(a / MetrePerSecondSquared) }

// FeetPerSecondSquared returns a in feet per second squared.
func (a Acceleration) FeetPerSecondSquared() float64 { return float64(a / FootPerSecondSquared) }

// StandardGravities returns a in standard gravities.
func (a Acceleration) StandardGravities() float64 { return float64(a / StandardGravity) }

// ParseAcceleration reads an acceleration as people write it, always with its unit:
// m/s², ft/s². The error is a *ParseError.
func ParseAcceleration(text string) (Acceleration, error) {
	v, err := accelerationKind.parse(text)
	return Acceleration(v), err
}

// String writes a for people, in six figures at most, with its unit.
func (a Acceleration) String() string { return accelerationKind.string(float64(a)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (a Acceleration) Format(f fmt.State, verb rune) { accelerationKind.format(f, verb, float64(a)) }

// MarshalText writes a so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (a Acceleration) MarshalText() ([]byte, error) { return accelerationKind.marshal(float64(a)) }

// UnmarshalText is ParseAcceleration for decoders and flags.
func (a *Acceleration) UnmarshalText(text []byte) error {
	v, err := ParseAcceleration(string(text))
	if err != nil {
		return err
	}
	*a = v
	return nil
}

// Unit gives a to gonum, with its dimensions.
func (a Acceleration) Unit() *unit.Unit { return unit.New(float64(a), accelerationKind.dims) }

func (Acceleration) kind() *kind { return &accelerationKind }

var accelerationScales = [...]scale{
	{name: "m/s²", factor: float64(MetrePerSecondSquared), goName: "MetrePerSecondSquared", aliases: []string{"m/s²", "m/s2"}},
	{name: "ft/s²", factor: float64(FootPerSecondSquared), goName: "FootPerSecondSquared", aliases: []string{"ft/s²", "ft/s2"}},
	{name: "gn", factor: float64(StandardGravity), goName: "StandardGravity", aliases: []string{"gn", "g"}},
}

var accelerationKind = kind{
	name: "acceleration", goName: "Acceleration", wants: "m/s², ft/s²",
	dims: unit.Dimensions{unit.LengthDim: 1, unit.TimeDim: -2},
	base: accelerationScales[0], text: []scale{accelerationScales[0]},
	people: []scale{accelerationScales[0]},
	scales: accelerationScales[:],
}
