package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A MomentOfInertia resists a change of turning speed, in kilogram square
// metres underneath.
type MomentOfInertia float64

// Units of moment of inertia.
const (
	KilogramSquareMetre      MomentOfInertia = 1
	KilogramSquareMillimetre MomentOfInertia = 1e-6
	GramSquareCentimetre     MomentOfInertia = 1e-7
	PoundSquareInch          MomentOfInertia = 0.0002926396534292 // 0.45359237 kg × (0.0254 m)²; international yard and pound agreement, 1959
)

// KilogramSquareMetres returns i in kilogram square metres.
func (i MomentOfInertia) KilogramSquareMetres() float64 { return float64(i / KilogramSquareMetre) }

// KilogramSquareMillimetres returns i in kilogram square millimetres.
func (i MomentOfInertia) KilogramSquareMillimetres() float64 {
	return float64(i / KilogramSquareMillimetre)
}

// GramSquareCentimetres returns i in gram square centimetres.
func (i MomentOfInertia) GramSquareCentimetres() float64 { return float64(i / GramSquareCentimetre) }

// PoundSquareInches returns i in pound square inches.
func (i MomentOfInertia) PoundSquareInches() float64 { return float64(i / PoundSquareInch) }

// ParseMomentOfInertia reads a moment of inertia as people write it, always with its unit:
// kg m², g cm², lb in². The error is a *ParseError.
func ParseMomentOfInertia(text string) (MomentOfInertia, error) {
	v, err := inertiaKind.parse(text)
	return MomentOfInertia(v), err
}

// String writes i for people, in six figures at most, with its unit.
func (i MomentOfInertia) String() string { return inertiaKind.string(float64(i)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (i MomentOfInertia) Format(f fmt.State, verb rune) { inertiaKind.format(f, verb, float64(i)) }

// MarshalText writes i so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (i MomentOfInertia) MarshalText() ([]byte, error) { return inertiaKind.marshal(float64(i)) }

// UnmarshalText is ParseMomentOfInertia for decoders and flags.
func (i *MomentOfInertia) UnmarshalText(text []byte) error {
	v, err := ParseMomentOfInertia(string(text))
	if err != nil {
		return err
	}
	*i = v
	return nil
}

// Unit gives i to gonum, with its dimensions.
func (i MomentOfInertia) Unit() *unit.Unit { return unit.New(float64(i), inertiaKind.dims) }

func (MomentOfInertia) kind() *kind { return &inertiaKind }

var inertiaScales = [...]scale{
	{name: "kg m²", factor: float64(KilogramSquareMetre), goName: "KilogramSquareMetre", aliases: []string{"kg m²", "kg m2", "kgm2"}},
	{name: "kg mm²", factor: float64(KilogramSquareMillimetre), goName: "KilogramSquareMillimetre", aliases: []string{"kg mm²", "kg mm2", "kgmm2"}},
	{name: "g cm²", factor: float64(GramSquareCentimetre), goName: "GramSquareCentimetre", aliases: []string{"g cm²", "g cm2", "gcm2"}},
	{name: "lb in²", factor: float64(PoundSquareInch), goName: "PoundSquareInch", aliases: []string{"lb in²", "lb in2"}},
}

var inertiaKind = kind{
	name: "moment of inertia", goName: "MomentOfInertia", wants: "kg m², g cm², lb in²",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 2},
	base: inertiaScales[0], text: []scale{inertiaScales[1], inertiaScales[3]},
	people: []scale{inertiaScales[1]},
	scales: inertiaScales[:],
}
