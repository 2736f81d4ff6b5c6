package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Density is a mass per volume, in kilograms per cubic metre underneath.
type Density float64

// Units of density.
const (
	KilogramPerCubicMetre  Density = 1
	GramPerCubicCentimetre Density = 1e3
)

// KilogramsPerCubicMetre returns d in kilograms per cubic metre.
func (d Density) KilogramsPerCubicMetre() float64 { return float64(d / KilogramPerCubicMetre) }

// GramsPerCubicCentimetre returns d in grams per cubic centimetre.
func (d Density) GramsPerCubicCentimetre() float64 { return float64(d / GramPerCubicCentimetre) }

// ParseDensity reads a density as people write it, always with its unit:
// kg/m³, g/cm³. The error is a *ParseError.
func ParseDensity(text string) (Density, error) {
	v, err := densityKind.parse(text)
	return Density(v), err
}

// String writes d for people, in six figures at most, with its unit.
func (d Density) String() string { return densityKind.string(float64(d)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (d Density) Format(f fmt.State, verb rune) { densityKind.format(f, verb, float64(d)) }

// MarshalText writes d so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (d Density) MarshalText() ([]byte, error) { return densityKind.marshal(float64(d)) }

// UnmarshalText is ParseDensity for decoders and flags.
func (d *Density) UnmarshalText(text []byte) error {
	v, err := ParseDensity(string(text))
	if err != nil {
		return err
	}
	*d = v
	return nil
}

// Unit gives d to gonum, with its dimensions.
func (d Density) Unit() *unit.Unit { return unit.New(float64(d), densityKind.dims) }

func (Density) kind() *kind { return &densityKind }

var densityScales = [...]scale{
	{name: "kg/m³", factor: float64(KilogramPerCubicMetre), goName: "KilogramPerCubicMetre", aliases: []string{"kg/m³", "kg/m3"}},
	{name: "g/cm³", factor: float64(GramPerCubicCentimetre), goName: "GramPerCubicCentimetre", aliases: []string{"g/cm³", "g/cm3", "g/cc", "g/ml", "kg/l"}},
}

var densityKind = kind{
	name: "density", goName: "Density", wants: "kg/m³, g/cm³",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: -3},
	base: densityScales[0], text: []scale{densityScales[0]},
	people: []scale{densityScales[0]},
	scales: densityScales[:],
}
