package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Power is work per time, in watts underneath.
type Power float64

// Units of power.
const (
	Watt             Power = 1
	Kilowatt         Power = 1e3
	Horsepower       Power = 745.69987158227022 // British, 550 ft lbf/s; NIST SP 811:2008, Appendix B
	MetricHorsepower Power = 735.49875          // 75 kgf m/s; NIST SP 811:2008, Appendix B
)

// Watts returns p in watts.
func (p Power) Watts() float64 { return float64(p / Watt) }

// Kilowatts returns p in kilowatts.
func (p Power) Kilowatts() float64 { return float64(p / Kilowatt) }

// Horsepower returns p in horsepower.
func (p Power) Horsepower() float64 { return float64(p / Horsepower) }

// MetricHorsepower returns p in metric horsepower.
func (p Power) MetricHorsepower() float64 { return float64(p / MetricHorsepower) }

// ParsePower reads a power as people write it, always with its unit:
// W, kW, hp, PS. The error is a *ParseError.
func ParsePower(text string) (Power, error) {
	v, err := powerKind.parse(text)
	return Power(v), err
}

// String writes p for people, in six figures at most, with its unit.
func (p Power) String() string { return powerKind.string(float64(p)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (p Power) Format(f fmt.State, verb rune) { powerKind.format(f, verb, float64(p)) }

// MarshalText writes p so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (p Power) MarshalText() ([]byte, error) { return powerKind.marshal(float64(p)) }

// UnmarshalText is ParsePower for decoders and flags.
func (p *Power) UnmarshalText(text []byte) error {
	v, err := ParsePower(string(text))
	if err != nil {
		return err
	}
	*p = v
	return nil
}

// Unit gives p to gonum, with its dimensions.
func (p Power) Unit() *unit.Unit { return unit.New(float64(p), powerKind.dims) }

func (Power) kind() *kind { return &powerKind }

var powerScales = [...]scale{
	{name: "W", factor: float64(Watt), goName: "Watt", aliases: []string{"W", "w"}},
	{name: "kW", factor: float64(Kilowatt), goName: "Kilowatt", aliases: []string{"kW", "kw"}},
	{name: "hp", factor: float64(Horsepower), goName: "Horsepower", aliases: []string{"hp", "bhp"}},
	{name: "PS", factor: float64(MetricHorsepower), goName: "MetricHorsepower", aliases: []string{"PS", "ps", "cv", "ch", "pk"}},
}

var powerKind = kind{
	name: "power", goName: "Power", wants: "W, kW, hp, PS",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 2, unit.TimeDim: -3},
	base: powerScales[0], text: []scale{powerScales[0], powerScales[2], powerScales[3]},
	people: []scale{powerScales[1], powerScales[0]},
	scales: powerScales[:],
}
