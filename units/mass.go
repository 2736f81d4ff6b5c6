package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Mass is an amount of matter, in kilograms underneath.
type Mass float64

// Units of mass.
const (
	Kilogram      Mass = 1
	Gram          Mass = 1e-3
	Pound         Mass = 0.45359237     // avoirdupois; international yard and pound agreement, 1959
	Ounce         Mass = 0.028349523125 // avoirdupois; NIST SP 811:2008, Appendix B
	Hundredweight Mass = 50.80234544    // 112 lb, British; NIST SP 811:2008, Appendix B
	Ton           Mass = 1016.0469088   // 2240 lb, British; NIST SP 811:2008, Appendix B
)

// Kilograms returns m in kilograms.
func (m Mass) Kilograms() float64 { return float64(m / Kilogram) }

// Grams returns m in grams.
func (m Mass) Grams() float64 { return float64(m / Gram) }

// Pounds returns m in pounds.
func (m Mass) Pounds() float64 { return float64(m / Pound) }

// Ounces returns m in ounces.
func (m Mass) Ounces() float64 { return float64(m / Ounce) }

// Hundredweights returns m in hundredweights.
func (m Mass) Hundredweights() float64 { return float64(m / Hundredweight) }

// Tons returns m in tons.
func (m Mass) Tons() float64 { return float64(m / Ton) }

// ParseMass reads a mass as people write it, always with its unit:
// g, kg, lb, oz. The error is a *ParseError.
func ParseMass(text string) (Mass, error) {
	v, err := massKind.parse(text)
	return Mass(v), err
}

// String writes m for people, in six figures at most, with its unit.
func (m Mass) String() string { return massKind.string(float64(m)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (m Mass) Format(f fmt.State, verb rune) { massKind.format(f, verb, float64(m)) }

// MarshalText writes m so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (m Mass) MarshalText() ([]byte, error) { return massKind.marshal(float64(m)) }

// UnmarshalText is ParseMass for decoders and flags.
func (m *Mass) UnmarshalText(text []byte) error {
	v, err := ParseMass(string(text))
	if err != nil {
		return err
	}
	*m = v
	return nil
}

// Unit gives m to gonum, with its dimensions.
func (m Mass) Unit() *unit.Unit { return unit.New(float64(m), massKind.dims) }

func (Mass) kind() *kind { return &massKind }

var massScales = [...]scale{
	{name: "kg", factor: float64(Kilogram), goName: "Kilogram", aliases: []string{"kg"}},
	{name: "g", factor: float64(Gram), goName: "Gram", aliases: []string{"g"}},
	{name: "lb", factor: float64(Pound), goName: "Pound", aliases: []string{"lb"}},
	{name: "oz", factor: float64(Ounce), goName: "Ounce", aliases: []string{"oz"}},
	{name: "imp cwt", factor: float64(Hundredweight), goName: "Hundredweight", aliases: []string{"imp cwt"}},
	{name: "imp ton", factor: float64(Ton), goName: "Ton", aliases: []string{"imp ton", "long ton"}},
}

var massKind = kind{
	name: "mass", goName: "Mass", wants: "g, kg, lb, oz",
	dims: unit.Dimensions{unit.MassDim: 1},
	base: massScales[0], text: []scale{massScales[1], massScales[2], massScales[3]},
	people: []scale{massScales[0], massScales[1]},
	scales: massScales[:],
	traps: []trap{
		{[]string{"cwt"}, "cwt: the British one is 112 lb (imp cwt), the American one 100 lb; write it in lb"},
		{[]string{"ton", "tonne", "t"}, "ton: the British one is 2240 lb (imp ton), the American one 2000 lb, the tonne 1000 kg; write it in lb or kg"},
	},
	ladder: []rung{
		{names: []string{"lb"}, factor: float64(Pound), limit: 0},
		{names: []string{"oz"}, factor: float64(Ounce), limit: 16},
	},
}
