package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Pressure is a force per area, in pascals underneath; stress and modulus too.
type Pressure float64

// Units of pressure.
const (
	Pascal                           Pressure = 1
	Kilopascal                       Pressure = 1e3
	Megapascal                       Pressure = 1e6
	Gigapascal                       Pressure = 1e9
	Bar                              Pressure = 1e5                   // SI Brochure, 9th ed.
	Atmosphere                       Pressure = 101325                // NIST SP 811:2008, Appendix B
	TechnicalAtmosphere              Pressure = 98066.5               // 1 kgf/cm²; NIST SP 811:2008, Appendix B
	KilogramForcePerSquareMillimetre Pressure = 9.80665e6             // NIST SP 811:2008, Appendix B
	PoundPerSquareInch               Pressure = 6894.7572931683613367 // lbf/in²; NIST SP 811:2008, Appendix B
	KilopoundPerSquareInch           Pressure = 6894757.2931683613367 // 1000 lbf/in²; NIST SP 811:2008, Appendix B
	TonForcePerSquareInch            Pressure = 15444256.336697129394 // British, 2240 lbf/in²; NIST SP 811:2008, Appendix B
	MillimetreOfMercury              Pressure = 133.322387415         // conventional; NIST SP 811:2008, Appendix B
	InchOfMercury                    Pressure = 3386.388640341        // conventional; NIST SP 811:2008, Appendix B
	InchOfWater                      Pressure = 249.08891             // conventional, 1000 kg/m³; NIST SP 811:2008, Appendix B
	Torr                             Pressure = 133.32236842105263158 // 101325/760 Pa; NIST SP 811:2008, Appendix B
)

// Pascals returns p in pascals.
func (p Pressure) Pascals() float64 { return float64(p / Pascal) }

// Kilopascals returns p in kilopascals.
func (p Pressure) Kilopascals() float64 { return float64(p / Kilopascal) }

// Megapascals returns p in megapascals.
func (p Pressure) Megapascals() float64 { return float64(p / Megapascal) }

// Gigapascals returns p in gigapascals.
func (p Pressure) Gigapascals() float64 { return float64(p / Gigapascal) }

// Bars returns p in bars.
func (p Pressure) Bars() float64 { return float64(p / Bar) }

// Atmospheres returns p in atmospheres.
func (p Pressure) Atmospheres() float64 { return float64(p / Atmosphere) }

// TechnicalAtmospheres returns p in technical atmospheres.
func (p Pressure) TechnicalAtmospheres() float64 { return float64(p / TechnicalAtmosphere) }

// KilogramsForcePerSquareMillimetre returns p in kilograms force per square millimetre.
func (p Pressure) KilogramsForcePerSquareMillimetre() float64 {
	return float64(p / KilogramForcePerSquareMillimetre)
}

// PoundsPerSquareInch returns p in pounds per square inch.
func (p Pressure) PoundsPerSquareInch() float64 { return float64(p / PoundPerSquareInch) }

// KilopoundsPerSquareInch returns p in kilopounds per square inch.
func (p Pressure) KilopoundsPerSquareInch() float64 { return float64(p / KilopoundPerSquareInch) }

// TonsForcePerSquareInch returns p in tons force per square inch.
func (p Pressure) TonsForcePerSquareInch() float64 { return float64(p / TonForcePerSquareInch) }

// MillimetresOfMercury returns p in millimetres of mercury.
func (p Pressure) MillimetresOfMercury() float64 { return float64(p / MillimetreOfMercury) }

// InchesOfMercury returns p in inches of mercury.
func (p Pressure) InchesOfMercury() float64 { return float64(p / InchOfMercury) }

// InchesOfWater returns p in inches of water.
func (p Pressure) InchesOfWater() float64 { return float64(p / InchOfWater) }

// Torrs returns p in torrs.
func (p Pressure) Torrs() float64 { return float64(p / Torr) }

// ParsePressure reads a pressure as people write it, always with its unit:
// MPa, bar, psi, tonf/in². The error is a *ParseError.
func ParsePressure(text string) (Pressure, error) {
	v, err := pressureKind.parse(text)
	return Pressure(v), err
}

// String writes p for people, in six figures at most, with its unit.
func (p Pressure) String() string { return pressureKind.string(float64(p)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (p Pressure) Format(f fmt.State, verb rune) { pressureKind.format(f, verb, float64(p)) }

// MarshalText writes p so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (p Pressure) MarshalText() ([]byte, error) { return pressureKind.marshal(float64(p)) }

// UnmarshalText is ParsePressure for decoders and flags.
func (p *Pressure) UnmarshalText(text []byte) error {
	v, err := ParsePressure(string(text))
	if err != nil {
		return err
	}
	*p = v
	return nil
}

// Unit gives p to gonum, with its dimensions.
func (p Pressure) Unit() *unit.Unit { return unit.New(float64(p), pressureKind.dims) }

func (Pressure) kind() *kind { return &pressureKind }

var pressureScales = [...]scale{
	{name: "Pa", factor: float64(Pascal), goName: "Pascal", aliases: []string{"Pa", "pa", "n/m2"}},
	{name: "kPa", factor: float64(Kilopascal), goName: "Kilopascal", aliases: []string{"kPa", "kpa", "kn/m2"}},
	{name: "MPa", factor: float64(Megapascal), goName: "Megapascal", aliases: []string{"MPa", "mpa", "n/mm2"}},
	{name: "GPa", factor: float64(Gigapascal), goName: "Gigapascal", aliases: []string{"GPa", "gpa", "kn/mm2"}},
	{name: "bar", factor: float64(Bar), goName: "Bar", aliases: []string{"bar"}},
	{name: "atm", factor: float64(Atmosphere), goName: "Atmosphere", aliases: []string{"atm"}},
	{name: "kgf/cm²", factor: float64(TechnicalAtmosphere), goName: "TechnicalAtmosphere", aliases: []string{"kgf/cm²", "kgf/cm2", "kg/cm2", "kgf/sqcm", "kg/sqcm", "at"}},
	{name: "kgf/mm²", factor: float64(KilogramForcePerSquareMillimetre), goName: "KilogramForcePerSquareMillimetre", aliases: []string{"kgf/mm²", "kgf/mm2", "kg/mm2"}},
	{name: "psi", factor: float64(PoundPerSquareInch), goName: "PoundPerSquareInch", aliases: []string{"psi", "lbf/in2", "lb/in2", "lbf/sqin", "lb/sqin", "psig", "psia"}},
	{name: "ksi", factor: float64(KilopoundPerSquareInch), goName: "KilopoundPerSquareInch", aliases: []string{"ksi", "kpsi", "kip/in2"}},
	{name: "tonf/in²", factor: float64(TonForcePerSquareInch), goName: "TonForcePerSquareInch", aliases: []string{"tonf/in²", "tonf/in2", "ton/in2", "tsi", "imp tonf/in2", "imp ton/in2", "tonf/sqin", "ton/sqin"}},
	{name: "mmHg", factor: float64(MillimetreOfMercury), goName: "MillimetreOfMercury", aliases: []string{"mmHg", "mmhg", "mm hg"}},
	{name: "inHg", factor: float64(InchOfMercury), goName: "InchOfMercury", aliases: []string{"inHg", "inhg", "in hg", "in of mercury"}},
	{name: "inH2O", factor: float64(InchOfWater), goName: "InchOfWater", aliases: []string{"inH2O", "inh2o", "in h2o", "inwg", "in wg", "in of water"}},
	{name: "torr", factor: float64(Torr), goName: "Torr", aliases: []string{"torr"}},
}

var pressureKind = kind{
	name: "pressure", goName: "Pressure", wants: "MPa, bar, psi, tonf/in²",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: -1, unit.TimeDim: -2},
	base: pressureScales[0], text: []scale{
		pressureScales[2], pressureScales[8], pressureScales[10], pressureScales[4], pressureScales[0], pressureScales[6],
		pressureScales[7], pressureScales[5], pressureScales[11], pressureScales[12], pressureScales[13], pressureScales[14],
	},
	people: []scale{pressureScales[2], pressureScales[1], pressureScales[0]},
	scales: pressureScales[:],
	traps: []trap{
		{[]string{"mPa"}, "mPa is a millipascal, a thousand-millionth of an MPa: write MPa or Pa"},
	},
}
