package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Force is a push or pull, in newtons underneath. Old books write lb and kg
// for the weight of a pound and a kilogram; as a force, text is read so.
type Force float64

// Units of force.
const (
	Newton        Force = 1
	Kilonewton    Force = 1e3
	KilogramForce Force = 9.80665             // NIST SP 811:2008, Appendix B
	GramForce     Force = 9.80665e-3          // NIST SP 811:2008, Appendix B
	PoundForce    Force = 4.4482216152605     // NIST SP 811:2008, Appendix B
	OunceForce    Force = 0.27801385095378125 // NIST SP 811:2008, Appendix B
	TonForce      Force = 9964.01641818352    // 2240 lbf, British; NIST SP 811:2008, Appendix B
	Poundal       Force = 0.138254954376      // NIST SP 811:2008, Appendix B
)

// Newtons returns q in newtons.
func (q Force) Newtons() float64 { return float64(q / Newton) }

// Kilonewtons returns q in kilonewtons.
func (q Force) Kilonewtons() float64 { return float64(q / Kilonewton) }

// KilogramsForce returns q in kilograms force.
func (q Force) KilogramsForce() float64 { return float64(q / KilogramForce) }

// GramsForce returns q in grams force.
func (q Force) GramsForce() float64 { return float64(q / GramForce) }

// PoundsForce returns q in pounds force.
func (q Force) PoundsForce() float64 { return float64(q / PoundForce) }

// OuncesForce returns q in ounces force.
func (q Force) OuncesForce() float64 { return float64(q / OunceForce) }

// TonsForce returns q in tons force.
func (q Force) TonsForce() float64 { return float64(q / TonForce) }

// Poundals returns q in poundals.
func (q Force) Poundals() float64 { return float64(q / Poundal) }

// ParseForce reads a force as people write it, always with its unit:
// N, lbf, kgf. The error is a *ParseError.
func ParseForce(text string) (Force, error) {
	v, err := forceKind.parse(text)
	return Force(v), err
}

// String writes q for people, in six figures at most, with its unit.
func (q Force) String() string { return forceKind.string(float64(q)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (q Force) Format(f fmt.State, verb rune) { forceKind.format(f, verb, float64(q)) }

// MarshalText writes q so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (q Force) MarshalText() ([]byte, error) { return forceKind.marshal(float64(q)) }

// UnmarshalText is ParseForce for decoders and flags.
func (q *Force) UnmarshalText(text []byte) error {
	v, err := ParseForce(string(text))
	if err != nil {
		return err
	}
	*q = v
	return nil
}

// Unit gives q to gonum, with its dimensions.
func (q Force) Unit() *unit.Unit { return unit.New(float64(q), forceKind.dims) }

func (Force) kind() *kind { return &forceKind }

var forceScales = [...]scale{
	{name: "N", factor: float64(Newton), goName: "Newton", aliases: []string{"N", "n"}},
	{name: "kN", factor: float64(Kilonewton), goName: "Kilonewton", aliases: []string{"kN", "kn"}},
	{name: "kgf", factor: float64(KilogramForce), goName: "KilogramForce", aliases: []string{"kgf", "kg"}},
	{name: "gf", factor: float64(GramForce), goName: "GramForce", aliases: []string{"gf", "pond", "p", "g"}},
	{name: "lbf", factor: float64(PoundForce), goName: "PoundForce", aliases: []string{"lbf", "lb"}},
	{name: "ozf", factor: float64(OunceForce), goName: "OunceForce", aliases: []string{"ozf", "oz"}},
	{name: "tonf", factor: float64(TonForce), goName: "TonForce", aliases: []string{"tonf", "imp tonf", "imp ton", "tonsf"}},
	{name: "pdl", factor: float64(Poundal), goName: "Poundal", aliases: []string{"pdl"}},
}

var forceKind = kind{
	name: "force", goName: "Force", wants: "N, lbf, kgf",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 1, unit.TimeDim: -2},
	base: forceScales[0], text: []scale{forceScales[0], forceScales[4], forceScales[2], forceScales[5], forceScales[6], forceScales[7]},
	people: []scale{forceScales[1], forceScales[0]},
	scales: forceScales[:],
	traps: []trap{
		{[]string{"ton"}, "ton: write tonf for the British 2240 lbf, or give it in lbf"},
	},
}
