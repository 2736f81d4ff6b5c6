package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Torque is a turning effort, in newton metres underneath.
type Torque float64

// Units of torque.
const (
	NewtonMetre             Torque = 1
	NewtonMillimetre        Torque = 1e-3
	NewtonCentimetre        Torque = 1e-2
	KilogramForceMetre      Torque = 9.80665                // NIST SP 811:2008, Appendix B
	KilogramForceCentimetre Torque = 9.80665e-2             // NIST SP 811:2008, Appendix B
	KilogramForceMillimetre Torque = 9.80665e-3             // NIST SP 811:2008, Appendix B
	PoundForceInch          Torque = 0.1129848290276167     // NIST SP 811:2008, Appendix B
	PoundForceFoot          Torque = 1.3558179483314004     // NIST SP 811:2008, Appendix B
	OunceForceInch          Torque = 0.00706155181422604375 // NIST SP 811:2008, Appendix B
)

// NewtonMetres returns t in newton metres.
func (t Torque) NewtonMetres() float64 { return float64(t / NewtonMetre) }

// NewtonMillimetres returns t in newton millimetres.
func (t Torque) NewtonMillimetres() float64 { return float64(t / NewtonMillimetre) }

// NewtonCentimetres returns t in newton centimetres.
func (t Torque) NewtonCentimetres() float64 { return float64(t / NewtonCentimetre) }

// KilogramForceMetres returns t in kilogram force metres.
func (t Torque) KilogramForceMetres() float64 { return float64(t / KilogramForceMetre) }

// KilogramForceCentimetres returns t in kilogram force centimetres.
func (t Torque) KilogramForceCentimetres() float64 { return float64(t / KilogramForceCentimetre) }

// KilogramForceMillimetres returns t in kilogram force millimetres.
func (t Torque) KilogramForceMillimetres() float64 { return float64(t / KilogramForceMillimetre) }

// PoundForceInches returns t in pound force inches.
func (t Torque) PoundForceInches() float64 { return float64(t / PoundForceInch) }

// PoundForceFeet returns t in pound force feet.
func (t Torque) PoundForceFeet() float64 { return float64(t / PoundForceFoot) }

// OunceForceInches returns t in ounce force inches.
func (t Torque) OunceForceInches() float64 { return float64(t / OunceForceInch) }

// ParseTorque reads a torque as people write it, always with its unit:
// N mm, N m, lbf in, lbf ft, kgf cm. The error is a *ParseError.
func ParseTorque(text string) (Torque, error) {
	v, err := torqueKind.parse(text)
	return Torque(v), err
}

// String writes t for people, in six figures at most, with its unit.
func (t Torque) String() string { return torqueKind.string(float64(t)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (t Torque) Format(f fmt.State, verb rune) { torqueKind.format(f, verb, float64(t)) }

// MarshalText writes t so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (t Torque) MarshalText() ([]byte, error) { return torqueKind.marshal(float64(t)) }

// UnmarshalText is ParseTorque for decoders and flags.
func (t *Torque) UnmarshalText(text []byte) error {
	v, err := ParseTorque(string(text))
	if err != nil {
		return err
	}
	*t = v
	return nil
}

// Unit gives t to gonum, with its dimensions.
func (t Torque) Unit() *unit.Unit { return unit.New(float64(t), torqueKind.dims) }

func (Torque) kind() *kind { return &torqueKind }

var torqueScales = [...]scale{
	{name: "N m", factor: float64(NewtonMetre), goName: "NewtonMetre", aliases: []string{"N m", "n m", "nm", "m n"}},
	{name: "N mm", factor: float64(NewtonMillimetre), goName: "NewtonMillimetre", aliases: []string{"N mm", "n mm", "nmm"}},
	{name: "N cm", factor: float64(NewtonCentimetre), goName: "NewtonCentimetre", aliases: []string{"N cm", "n cm", "ncm"}},
	{name: "kgf m", factor: float64(KilogramForceMetre), goName: "KilogramForceMetre", aliases: []string{"kgf m", "kgfm", "kg m", "kgm", "m kg", "mkg", "kpm", "mkp"}},
	{name: "kgf cm", factor: float64(KilogramForceCentimetre), goName: "KilogramForceCentimetre", aliases: []string{"kgf cm", "kgfcm", "kg cm", "kgcm", "cm kg", "kpcm"}},
	{name: "kgf mm", factor: float64(KilogramForceMillimetre), goName: "KilogramForceMillimetre", aliases: []string{"kgf mm", "kgfmm", "kg mm", "kgmm"}},
	{name: "lbf in", factor: float64(PoundForceInch), goName: "PoundForceInch", aliases: []string{"lbf in", "lbfin", "lb in", "lbin", "in lb", "inlb", "inlbs", "in lbf", "inlbf"}},
	{name: "lbf ft", factor: float64(PoundForceFoot), goName: "PoundForceFoot", aliases: []string{"lbf ft", "lbfft", "lb ft", "lbft", "ft lb", "ftlb", "ftlbs", "ft lbf", "ftlbf"}},
	{name: "ozf in", factor: float64(OunceForceInch), goName: "OunceForceInch", aliases: []string{"ozf in", "ozfin", "oz in", "ozin", "in oz", "inoz"}},
}

var torqueKind = kind{
	name: "torque", goName: "Torque", wants: "N mm, N m, lbf in, lbf ft, kgf cm",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 2, unit.TimeDim: -2},
	base: torqueScales[0], text: []scale{torqueScales[1], torqueScales[6], torqueScales[8], torqueScales[7], torqueScales[4]},
	people: []scale{torqueScales[0], torqueScales[1]},
	scales: torqueScales[:],
}
