package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A SpecificTimeArea is a TimeArea for each swept volume, in seconds per metre
// underneath.
type SpecificTimeArea float64

// Units of specific time-area.
const (
	SecondPerMetre SpecificTimeArea = 1
)

// SecondsPerMetre returns a in seconds per metre.
func (a SpecificTimeArea) SecondsPerMetre() float64 { return float64(a / SecondPerMetre) }

// ParseSpecificTimeArea reads a specific time-area as people write it, always with its unit:
// s/m. The error is a *ParseError.
func ParseSpecificTimeArea(text string) (SpecificTimeArea, error) {
	v, err := specificTimeAreaKind.parse(text)
	return SpecificTimeArea(v), err
}

// String writes a for people, in six figures at most, with its unit.
func (a SpecificTimeArea) String() string { return specificTimeAreaKind.string(float64(a)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (a SpecificTimeArea) Format(f fmt.State, verb rune) {
	specificTimeAreaKind.format(f, verb, float64(a))
}

// MarshalText writes a so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (a SpecificTimeArea) MarshalText() ([]byte, error) {
	return specificTimeAreaKind.marshal(float64(a))
}

// UnmarshalText is ParseSpecificTimeArea for decoders and flags.
func (a *SpecificTimeArea) UnmarshalText(text []byte) error {
	v, err := ParseSpecificTimeArea(string(text))
	if err != nil {
		return err
	}
	*a = v
	return nil
}

// Unit gives a to gonum, with its dimensions.
func (a SpecificTimeArea) Unit() *unit.Unit { return unit.New(float64(a), specificTimeAreaKind.dims) }

func (SpecificTimeArea) kind() *kind { return &specificTimeAreaKind }

var specificTimeAreaScales = [...]scale{
	{name: "s/m", factor: float64(SecondPerMetre), goName: "SecondPerMetre", aliases: []string{"s/m"}},
}

var specificTimeAreaKind = kind{
	name: "specific time-area", goName: "SpecificTimeArea", wants: "s/m",
	dims: unit.Dimensions{unit.TimeDim: 1, unit.LengthDim: -1},
	base: specificTimeAreaScales[0], text: []scale{specificTimeAreaScales[0]},
	people: []scale{specificTimeAreaScales[0]},
	scales: specificTimeAreaScales[:],
}
