package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Flow is a volume per time, such as oil creeping past rings, in cubic metres
// per second underneath.
type Flow float64

// Units of flow: those of volume over 1 s or 60 s.
const (
	CubicMetrePerSecond      Flow = 1
	CubicCentimetrePerSecond Flow = 1e-6
	CubicCentimetrePerMinute Flow = 1.6666666666666666667e-8
)

// CubicMetresPerSecond returns q in cubic metres per second.
func (q Flow) CubicMetresPerSecond() float64 { return float64(q / CubicMetrePerSecond) }

// CubicCentimetresPerSecond returns q in cubic centimetres per second.
func (q Flow) CubicCentimetresPerSecond() float64 { return float64(q / CubicCentimetrePerSecond) }

// CubicCentimetresPerMinute returns q in cubic centimetres per minute.
func (q Flow) CubicCentimetresPerMinute() float64 { return float64(q / CubicCentimetrePerMinute) }

// ParseFlow reads a flow as people write it, always with its unit:
// cc/s, cc/min. The error is a *ParseError.
func ParseFlow(text string) (Flow, error) {
	v, err := flowKind.parse(text)
	return Flow(v), err
}

// String writes q for people, in six figures at most, with its unit.
func (q Flow) String() string { return flowKind.string(float64(q)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (q Flow) Format(f fmt.State, verb rune) { flowKind.format(f, verb, float64(q)) }

// MarshalText writes q so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (q Flow) MarshalText() ([]byte, error) { return flowKind.marshal(float64(q)) }

// UnmarshalText is ParseFlow for decoders and flags.
func (q *Flow) UnmarshalText(text []byte) error {
	v, err := ParseFlow(string(text))
	if err != nil {
		return err
	}
	*q = v
	return nil
}

// Unit gives q to gonum, with its dimensions.
func (q Flow) Unit() *unit.Unit { return unit.New(float64(q), flowKind.dims) }

func (Flow) kind() *kind { return &flowKind }

var flowScales = [...]scale{
	{name: "m³/s", factor: float64(CubicMetrePerSecond), goName: "CubicMetrePerSecond", aliases: []string{"m³/s", "m3/s"}},
	{name: "cm³/s", factor: float64(CubicCentimetrePerSecond), goName: "CubicCentimetrePerSecond", aliases: []string{"cm³/s", "cm3/s", "cc/s", "ml/s"}},
	{name: "cm³/min", factor: float64(CubicCentimetrePerMinute), goName: "CubicCentimetrePerMinute", aliases: []string{"cm³/min", "cm3/min", "cc/min", "ml/min"}},
}

var flowKind = kind{
	name: "flow", goName: "Flow", wants: "cc/s, cc/min",
	dims: unit.Dimensions{unit.LengthDim: 3, unit.TimeDim: -1},
	base: flowScales[0], text: []scale{flowScales[1]},
	people: []scale{flowScales[1]},
	scales: flowScales[:],
}
