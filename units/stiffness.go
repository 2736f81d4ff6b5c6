package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Stiffness is a force per length, the rate of a spring that is pulled or
// pushed, in newtons per metre underneath.
type Stiffness float64

// Units of stiffness.
const (
	NewtonPerMetre             Stiffness = 1
	NewtonPerMillimetre        Stiffness = 1e3
	PoundForcePerInch          Stiffness = 175.12683524647637795 // NIST SP 811:2008, Appendix B
	KilogramForcePerMillimetre Stiffness = 9806.65               // NIST SP 811:2008, Appendix B
)

// NewtonsPerMetre returns k in newtons per metre.
func (k Stiffness) NewtonsPerMetre() float64 { return float64(k / NewtonPerMetre) }

// NewtonsPerMillimetre returns k in newtons per millimetre.
func (k Stiffness) NewtonsPerMillimetre() float64 { return float64(k / NewtonPerMillimetre) }

// PoundsForcePerInch returns k in pounds force per inch.
func (k Stiffness) PoundsForcePerInch() float64 { return float64(k / PoundForcePerInch) }

// KilogramsForcePerMillimetre returns k in kilograms force per millimetre.
func (k Stiffness) KilogramsForcePerMillimetre() float64 {
	return float64(k / KilogramForcePerMillimetre)
}

// ParseStiffness reads a stiffness as people write it, always with its unit:
// N/mm, lbf/in, kgf/mm. The error is a *ParseError.
func ParseStiffness(text string) (Stiffness, error) {
	v, err := stiffnessKind.parse(text)
	return Stiffness(v), err
}

// String writes k for people, in six figures at most, with its unit.
func (k Stiffness) String() string { return stiffnessKind.string(float64(k)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (k Stiffness) Format(f fmt.State, verb rune) { stiffnessKind.format(f, verb, float64(k)) }

// MarshalText writes k so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (k Stiffness) MarshalText() ([]byte, error) { return stiffnessKind.marshal(float64(k)) }

// UnmarshalText is ParseStiffness for decoders and flags.
func (k *Stiffness) UnmarshalText(text []byte) error {
	v, err := ParseStiffness(string(text))
	if err != nil {
		return err
	}
	*k = v
	return nil
}

// Unit gives k to gonum, with its dimensions.
func (k Stiffness) Unit() *unit.Unit { return unit.New(float64(k), stiffnessKind.dims) }

func (Stiffness) kind() *kind { return &stiffnessKind }

var stiffnessScales = [...]scale{
	{name: "N/m", factor: float64(NewtonPerMetre), goName: "NewtonPerMetre", aliases: []string{"N/m", "n/m"}},
	{name: "N/mm", factor: float64(NewtonPerMillimetre), goName: "NewtonPerMillimetre", aliases: []string{"N/mm", "n/mm"}},
	{name: "lbf/in", factor: float64(PoundForcePerInch), goName: "PoundForcePerInch", aliases: []string{"lbf/in", "lb/in"}},
	{name: "kgf/mm", factor: float64(KilogramForcePerMillimetre), goName: "KilogramForcePerMillimetre", aliases: []string{"kgf/mm", "kg/mm"}},
}

var stiffnessKind = kind{
	name: "stiffness", goName: "Stiffness", wants: "N/mm, lbf/in, kgf/mm",
	dims: unit.Dimensions{unit.MassDim: 1, unit.TimeDim: -2},
	base: stiffnessScales[0], text: []scale{stiffnessScales[1], stiffnessScales[2]},
	people: []scale{stiffnessScales[1]},
	scales: stiffnessScales[:],
}
