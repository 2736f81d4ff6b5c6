package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A TimeArea is the open area of a port added up over the time it is open, in
// second square metres underneath.
type TimeArea float64

// Units of time-area.
const (
	SecondSquareMetre      TimeArea = 1
	SecondSquareMillimetre TimeArea = 1e-6
)

// SecondSquareMetres returns a in second square metres.
func (a TimeArea) SecondSquareMetres() float64 { return float64(a / SecondSquareMetre) }

// SecondSquareMillimetres returns a in second square millimetres.
func (a TimeArea) SecondSquareMillimetres() float64 { return float64(a / SecondSquareMillimetre) }

// ParseTimeArea reads a time-area as people write it, always with its unit:
// s mm². The error is a *ParseError.
func ParseTimeArea(text string) (TimeArea, error) {
	v, err := timeAreaKind.parse(text)
	return TimeArea(v), err
}

// String writes a for people, in six figures at most, with its unit.
func (a TimeArea) String() string { return timeAreaKind.string(float64(a)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (a TimeArea) Format(f fmt.State, verb rune) { timeAreaKind.format(f, verb, float64(a)) }

// MarshalText writes a so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (a TimeArea) MarshalText() ([]byte, error) { return timeAreaKind.marshal(float64(a)) }

// UnmarshalText is ParseTimeArea for decoders and flags.
func (a *TimeArea) UnmarshalText(text []byte) error {
	v, err := ParseTimeArea(string(text))
	if err != nil {
		return err
	}
	*a = v
	return nil
}

// Unit gives a to gonum, with its dimensions.
func (a TimeArea) Unit() *unit.Unit { return unit.New(float64(a), timeAreaKind.dims) }

func (TimeArea) kind() *kind { return &timeAreaKind }

var timeAreaScales = [...]scale{
	{name: "s m²", factor: float64(SecondSquareMetre), goName: "SecondSquareMetre", aliases: []string{"s m²", "s m2"}},
	{name: "s mm²", factor: float64(SecondSquareMillimetre), goName: "SecondSquareMillimetre", aliases: []string{"s mm²", "s mm2"}},
}

var timeAreaKind = kind{
	name: "time-area", goName: "TimeArea", wants: "s mm²",
	dims: unit.Dimensions{unit.TimeDim: 1, unit.LengthDim: 2},
	base: timeAreaScales[0], text: []scale{timeAreaScales[1]},
	people: []scale{timeAreaScales[1]},
	scales: timeAreaScales[:],
}
