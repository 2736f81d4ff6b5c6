package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Volume is a content, in cubic metres underneath. British and American
// measures of the same name differ by a fifth (gallons, pints) and carry their
// country in the name.
type Volume float64

// Units of volume.
const (
	CubicMetre         Volume = 1
	Litre              Volume = 1e-3 // since 1964; SI Brochure, 9th ed., Table 8
	Millilitre         Volume = 1e-6 // since 1964; a thousandth of the litre
	CubicCentimetre    Volume = 1e-6
	CubicMillimetre    Volume = 1e-9
	CubicInch          Volume = 16.387064e-6     // NIST SP 811:2008, Appendix B
	CubicFoot          Volume = 0.028316846592   // NIST SP 811:2008, Appendix B
	ImperialFluidOunce Volume = 28.4130625e-6    // NIST SP 811:2008, Appendix B
	ImperialGill       Volume = 142.0653125e-6   // a quarter of a pint; NIST SP 811:2008, Appendix B
	ImperialPint       Volume = 568.26125e-6     // NIST SP 811:2008, Appendix B
	ImperialQuart      Volume = 1136.5225e-6     // NIST SP 811:2008, Appendix B
	ImperialGallon     Volume = 4546.09e-6       // NIST SP 811:2008, Appendix B
	USFluidOunce       Volume = 29.5735295625e-6 // NIST SP 811:2008, Appendix B
	USPint             Volume = 473.176473e-6    // liquid; NIST SP 811:2008, Appendix B
	USQuart            Volume = 946.352946e-6    // liquid; NIST SP 811:2008, Appendix B
	USGallon           Volume = 3785.411784e-6   // 231 in³; NIST SP 811:2008, Appendix B
)

// Millilitre1901 is the millilitre of 1901 to 1964, marked c.c. on old
// burettes: 28 parts in a million larger than a cubic centimetre, which never
// matters at a bench. NIST SP 811:2008, Appendix B, note on the litre.
const Millilitre1901 Volume = 1.000028e-6

// CubicMetres returns c in cubic metres.
func (c Volume) CubicMetres() float64 { return float64(c / CubicMetre) }

// Litres returns c in litres.
func (c Volume) Litres() float64 { return float64(c / Litre) }

// Millilitres returns c in millilitres.
func (c Volume) Millilitres() float64 { return float64(c / Millilitre) }

// CubicCentimetres returns c in cubic centimetres.
func (c Volume) CubicCentimetres() float64 { return float64(c / CubicCentimetre) }

// CubicMillimetres returns c in cubic millimetres.
func (c Volume) CubicMillimetres() float64 { return float64(c / CubicMillimetre) }

// CubicInches returns c in cubic inches.
func (c Volume) CubicInches() float64 { return float64(c / CubicInch) }

// CubicFeet returns c in cubic feet.
func (c Volume) CubicFeet() float64 { return float64(c / CubicFoot) }

// ImperialFluidOunces returns c in Imperial fluid ounces.
func (c Volume) ImperialFluidOunces() float64 { return float64(c / ImperialFluidOunce) }

// ImperialGills returns c in Imperial gills.
func (c Volume) ImperialGills() float64 { return float64(c / ImperialGill) }

// ImperialPints returns c in Imperial pints.
func (c Volume) ImperialPints() float64 { return float64(c / ImperialPint) }

// ImperialQuarts returns c in Imperial quarts.
func (c Volume) ImperialQuarts() float64 { return float64(c / ImperialQuart) }

// ImperialGallons returns c in Imperial gallons.
func (c Volume) ImperialGallons() float64 { return float64(c / ImperialGallon) }

// USFluidOunces returns c in US fluid ounces.
func (c Volume) USFluidOunces() float64 { return float64(c / USFluidOunce) }

// USPints returns c in US pints.
func (c Volume) USPints() float64 { return float64(c / USPint) }

// USQuarts returns c in US quarts.
func (c Volume) USQuarts() float64 { return float64(c / USQuart) }

// USGallons returns c in US gallons.
func (c Volume) USGallons() float64 { return float64(c / USGallon) }

// ParseVolume reads a volume as people write it, always with its unit: 49 cc,
// 3 cu in, 1.5 l, 1 1/2 pint (imp), 2 US fl oz. Pints, quarts, gallons, gills and
// fluid ounces without their country are refused. The error is a *ParseError.
func ParseVolume(text string) (Volume, error) {
	v, err := volumeKind.parse(text)
	return Volume(v), err
}

// String writes c for people, in six figures at most, with its unit.
func (c Volume) String() string { return volumeKind.string(float64(c)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (c Volume) Format(f fmt.State, verb rune) { volumeKind.format(f, verb, float64(c)) }

// MarshalText writes c so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (c Volume) MarshalText() ([]byte, error) { return volumeKind.marshal(float64(c)) }

// UnmarshalText is ParseVolume for decoders and flags.
func (c *Volume) UnmarshalText(text []byte) error {
	v, err := ParseVolume(string(text))
	if err != nil {
		return err
	}
	*c = v
	return nil
}

// Unit gives c to gonum, with its dimensions.
func (c Volume) Unit() *unit.Unit { return unit.New(float64(c), volumeKind.dims) }

func (Volume) kind() *kind { return &volumeKind }

var volumeScales = [...]scale{
	{name: "m³", factor: float64(CubicMetre), goName: "CubicMetre", aliases: []string{"m³", "m3"}},
	{name: "l", factor: float64(Litre), goName: "Litre", aliases: []string{"l", "dm3"}},
	{name: "ml", factor: float64(Millilitre), goName: "Millilitre", aliases: []string{"ml"}},
	{name: "cm³", factor: float64(CubicCentimetre), goName: "CubicCentimetre", aliases: []string{"cm³", "cm3", "cc", "cucm"}},
	{name: "mm³", factor: float64(CubicMillimetre), goName: "CubicMillimetre", aliases: []string{"mm³", "mm3", "cumm"}},
	{name: "in³", factor: float64(CubicInch), goName: "CubicInch", aliases: []string{"in³", "in3", "cuin", "cid"}},
	{name: "ft³", factor: float64(CubicFoot), goName: "CubicFoot", aliases: []string{"ft³", "ft3", "cuft"}},
	{name: "imp fl oz", factor: float64(ImperialFluidOunce), goName: "ImperialFluidOunce", aliases: []string{"imp fl oz", "imp floz"}},
	{name: "imp gill", factor: float64(ImperialGill), goName: "ImperialGill", aliases: []string{"imp gill"}},
	{name: "imp pint", factor: float64(ImperialPint), goName: "ImperialPint", aliases: []string{"imp pint"}},
	{name: "imp quart", factor: float64(ImperialQuart), goName: "ImperialQuart", aliases: []string{"imp quart"}},
	{name: "imp gal", factor: float64(ImperialGallon), goName: "ImperialGallon", aliases: []string{"imp gal"}},
	{name: "US fl oz", factor: float64(USFluidOunce), goName: "USFluidOunce", aliases: []string{"US fl oz", "us fl oz", "us floz"}},
	{name: "US pint", factor: float64(USPint), goName: "USPint", aliases: []string{"US pint", "us pint"}},
	{name: "US quart", factor: float64(USQuart), goName: "USQuart", aliases: []string{"US quart", "us quart"}},
	{name: "US gal", factor: float64(USGallon), goName: "USGallon", aliases: []string{"US gal", "us gal"}},
}

var volumeKind = kind{
	name: "volume", goName: "Volume", wants: "cc, cu in, l, imp pint, US pint",
	dims: unit.Dimensions{unit.LengthDim: 3},
	base: volumeScales[0], text: []scale{
		volumeScales[3], volumeScales[5], volumeScales[1], volumeScales[9], volumeScales[13], volumeScales[7], volumeScales[12],
		volumeScales[11], volumeScales[15],
	},
	people: []scale{volumeScales[3]},
	scales: volumeScales[:],
	traps: []trap{
		{[]string{"pint"}, "pint: write imp pint (568 cc) or US pint (473 cc)"},
		{[]string{"gal"}, "gallon: write imp gal (4.55 l) or US gal (3.79 l)"},
		{[]string{"quart"}, "quart: write imp quart (1137 cc) or US quart (946 cc)"},
		{[]string{"fl oz", "floz", "oz"}, "fluid ounce: write imp fl oz (28.4 cc) or US fl oz (29.6 cc)"},
		{[]string{"gill", "us gill"}, "gill: write imp gill (142 cc); for an American one write 4 US fl oz"},
	},
}
