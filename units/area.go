package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// An Area is the size of a surface, in square metres underneath.
type Area float64

// Units of area.
const (
	SquareMetre      Area = 1
	SquareCentimetre Area = 1e-4
	SquareMillimetre Area = 1e-6
	SquareInch       Area = 0.00064516 // 0.0254² m²; NIST SP 811:2008, Appendix B
)

// SquareMetres returns a in square metres.
func (a Area) SquareMetres() float64 { return float64(a / SquareMetre) }

// SquareCentimetres returns a in square centimetres.
func (a Area) SquareCentimetres() float64 { return float64(a / SquareCentimetre) }

// SquareMillimetres returns a in square millimetres.
func (a Area) SquareMillimetres() float64 { return float64(a / SquareMillimetre) }

// SquareInches returns a in square inches.
func (a Area) SquareInches() float64 { return float64(a / SquareInch) }

// Times returns the volume of a body of this cross-section and the given length.
func (a Area) Times(l Length) Volume { return Volume(float64(a) * float64(l)) }

// ParseArea reads an area as people write it, always with its unit:
// mm², cm², in². The error is a *ParseError.
func ParseArea(text string) (Area, error) {
	v, err := areaKind.parse(text)
	return Area(v), err
}

// String writes a for people, in six figures at most, with its unit.
func (a Area) String() string { return areaKind.string(float64(a)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (a Area) Format(f fmt.State, verb rune) { areaKind.format(f, verb, float64(a)) }

// MarshalText writes a so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (a Area) MarshalText() ([]byte, error) { return areaKind.marshal(float64(a)) }

// UnmarshalText is ParseArea for decoders and flags.
func (a *Area) UnmarshalText(text []byte) error {
	v, err := ParseArea(string(text))
	if err != nil {
		return err
	}
	*a = v
	return nil
}

// Unit gives a to gonum, with its dimensions.
func (a Area) Unit() *unit.Unit { return unit.New(float64(a), areaKind.dims) }

func (Area) kind() *kind { return &areaKind }

var areaScales = [...]scale{
	{name: "m²", factor: float64(SquareMetre), goName: "SquareMetre", aliases: []string{"m²", "m2"}},
	{name: "cm²", factor: float64(SquareCentimetre), goName: "SquareCentimetre", aliases: []string{"cm²", "cm2", "sqcm"}},
	{name: "mm²", factor: float64(SquareMillimetre), goName: "SquareMillimetre", aliases: []string{"mm²", "mm2", "sqmm"}},
	{name: "in²", factor: float64(SquareInch), goName: "SquareInch", aliases: []string{"in²", "in2", "sqin"}},
}

var areaKind = kind{
	name: "area", goName: "Area", wants: "mm², cm², in²",
	dims: unit.Dimensions{unit.LengthDim: 2},
	base: areaScales[0], text: []scale{areaScales[2], areaScales[3]},
	people: []scale{areaScales[2]},
	scales: areaScales[:],
}
