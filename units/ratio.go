package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Ratio is a pure number that comes as text or as a Reading: a friction
// coefficient, a compression ratio, a percentage. Formulas take and return
// plain float64 for pure numbers.
type Ratio float64

// Units of pure numbers.
const (
	One     Ratio = 1
	Percent Ratio = 1e-2
)

// Percent returns r in per cent.
func (r Ratio) Percent() float64 { return float64(r / Percent) }

// ParseRatio reads a pure number: 0.15, 15 %, 9.5:1. The error is a
// *ParseError.
func ParseRatio(text string) (Ratio, error) {
	v, err := ratioKind.parse(text)
	return Ratio(v), err
}

// String writes r for people, in six figures at most.
func (r Ratio) String() string { return ratioKind.string(float64(r)) }

// Format is fmt.Formatter.
func (r Ratio) Format(f fmt.State, verb rune) { ratioKind.format(f, verb, float64(r)) }

// MarshalText writes r so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (r Ratio) MarshalText() ([]byte, error) { return ratioKind.marshal(float64(r)) }

// UnmarshalText is ParseRatio for decoders and flags.
func (r *Ratio) UnmarshalText(text []byte) error {
	v, err := ParseRatio(string(text))
	if err != nil {
		return err
	}
	*r = v
	return nil
}

// Unit gives r to gonum, without dimensions.
func (r Ratio) Unit() *unit.Unit { return unit.New(float64(r), ratioKind.dims) }

func (Ratio) kind() *kind { return &ratioKind }

var ratioScales = [...]scale{
	{name: "", goName: "One", factor: float64(One), aliases: []string{"", ":1", ": 1", "to 1"}},
	{name: "%", goName: "Percent", factor: float64(Percent), aliases: []string{"%", "/cent"}},
}

var ratioKind = kind{
	name: "number", goName: "Ratio", wants: "nothing behind it, %, :1",
	dims: unit.Dimensions{},
	base: ratioScales[0], text: ratioScales[:1],
	people: []scale{ratioScales[0]},
	scales: ratioScales[:],
}
