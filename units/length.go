package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Length is a distance, in metres underneath. Build one by multiplying by a
// unit, read one by asking for a unit.
//
//	bore := 35 * units.Millimetre
//	dial := units.Length(reading) * units.Thou // reading is a float64
type Length float64

// Units of length.
const (
	Metre      Length = 1
	Centimetre Length = 1e-2
	Millimetre Length = 1e-3
	Micrometre Length = 1e-6
	Inch       Length = 0.0254    // international yard and pound agreement, 1959
	Thou       Length = 0.0254e-3 // a thousandth of an inch
	Microinch  Length = 0.0254e-6 // a millionth of an inch, for roughness
	Foot       Length = 0.3048    // NIST SP 811:2008, Appendix B
	Yard       Length = 0.9144    // international yard and pound agreement, 1959
)

// The inches of older drawings, for those who ask which inch is meant. They
// differ from the international inch by 2 parts in a million at most, 0.0002 mm
// on 100 mm, so no workshop sum should correct for them, and text never means
// them.
const (
	USInch1893      Length = 0.025400050800101600203 // 1 m = 39.37 in, Mendenhall Order 1893; NIST SP 811:2008, Appendix B
	BritishInch1898 Length = 0.025399977896939234083 // 1 m = 39.370113 in, Order in Council of 19 May 1898 (from memory)
	BritishInch1922 Length = 0.025399956             // yard measured by Sears, Johnson and Jolly, NPL 1922 (from memory)
	USSurveyFoot    Length = 0.30480060960121920244  // 1200/3937 m; NIST SP 811:2008, Appendix B
)

// Metres returns l in metres.
func (l Length) Metres() float64 { return float64(l / Metre) }

// Centimetres returns l in centimetres.
func (l Length) Centimetres() float64 { return float64(l / Centimetre) }

// Millimetres returns l in millimetres.
func (l Length) Millimetres() float64 { return float64(l / Millimetre) }

// Micrometres returns l in micrometres.
func (l Length) Micrometres() float64 { return float64(l / Micrometre) }

// Inches returns l in inches.
func (l Length) Inches() float64 { return float64(l / Inch) }

// Thou returns l in thou.
func (l Length) Thou() float64 { return float64(l / Thou) }

// Microinches returns l in microinches.
func (l Length) Microinches() float64 { return float64(l / Microinch) }

// Feet returns l in feet.
func (l Length) Feet() float64 { return float64(l / Foot) }

// Yards returns l in yards.
func (l Length) Yards() float64 { return float64(l / Yard) }

// Times returns the area of a rectangle of sides l and width.
func (l Length) Times(width Length) Area { return Area(float64(l) * float64(width)) }

// ParseLength reads a length as people write it, always with its unit: 12.7 mm,
// 1 3/16 in, 1-3/16", ⅜ in, 10 thou, 7 cm, 12 µm, 5 ft 6 1/2 in. The error is a
// *ParseError.
func ParseLength(text string) (Length, error) {
	v, err := lengthKind.parse(text)
	return Length(v), err
}

// String writes l for people, in six figures at most, with its unit.
func (l Length) String() string { return lengthKind.string(float64(l)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (l Length) Format(f fmt.State, verb rune) { lengthKind.format(f, verb, float64(l)) }

// MarshalText writes l so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (l Length) MarshalText() ([]byte, error) { return lengthKind.marshal(float64(l)) }

// UnmarshalText is ParseLength for decoders and flags.
func (l *Length) UnmarshalText(text []byte) error {
	v, err := ParseLength(string(text))
	if err != nil {
		return err
	}
	*l = v
	return nil
}

// Unit gives l to gonum, with its dimensions.
func (l Length) Unit() *unit.Unit { return unit.New(float64(l), lengthKind.dims) }

func (Length) kind() *kind { return &lengthKind }

var lengthScales = [...]scale{
	{name: "m", factor: float64(Metre), goName: "Metre", aliases: []string{"m"}},
	{name: "cm", factor: float64(Centimetre), goName: "Centimetre", aliases: []string{"cm"}},
	{name: "mm", factor: float64(Millimetre), goName: "Millimetre", aliases: []string{"mm"}},
	{name: "µm", factor: float64(Micrometre), goName: "Micrometre", aliases: []string{"µm", "μm"}},
	{name: "in", factor: float64(Inch), goName: "Inch", aliases: []string{"in", "\"", "''"}},
	{name: "thou", factor: float64(Thou), goName: "Thou", aliases: []string{"thou", "thou of an in"}},
	{name: "µin", factor: float64(Microinch), goName: "Microinch", aliases: []string{"µin", "μin"}},
	{name: "ft", factor: float64(Foot), goName: "Foot", aliases: []string{"ft", "'"}},
	{name: "yd", factor: float64(Yard), goName: "Yard", aliases: []string{"yd"}},
}

var lengthKind = kind{
	name: "length", goName: "Length", wants: "mm, in, thou",
	dims: unit.Dimensions{unit.LengthDim: 1},
	base: lengthScales[0], text: []scale{lengthScales[2], lengthScales[4]},
	people: []scale{lengthScales[2]},
	scales: lengthScales[:],
	traps: []trap{
		{[]string{"mil", "mils"}, "mil: write thou for a thousandth of an inch, mm for a millimetre"},
		{[]string{"line", "lines"}, "line: the English line is 1/12 in, the French one 2.256 mm; write it in mm or in"},
	},
	ladder: []rung{
		{names: []string{"ft", "'"}, factor: float64(Foot), limit: 0},
		{names: []string{"in", "\"", "''"}, factor: float64(Inch), limit: 12},
	},
}
