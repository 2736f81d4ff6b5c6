package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A TorsionalStiffness is a torque per angle, the rate of a spring that is
// wound, in newton metres per radian underneath.
type TorsionalStiffness float64

// Units of torsional stiffness: those of Torque over those of Angle, with their
// sources.
const (
	NewtonMetrePerRadian      TorsionalStiffness = 1
	NewtonMillimetrePerRadian TorsionalStiffness = 1e-3
	NewtonMillimetrePerDegree TorsionalStiffness = 0.057295779513082320877   // 0.18/π N m/rad
	NewtonMetrePerDegree      TorsionalStiffness = 57.295779513082320877     // 180/π
	NewtonMetrePerTurn        TorsionalStiffness = 0.15915494309189533577    // 1/2π
	NewtonMillimetrePerTurn   TorsionalStiffness = 0.00015915494309189533577 // 1/2000π
	PoundForceInchPerRadian   TorsionalStiffness = 0.1129848290276167        // NIST SP 811:2008, Appendix B
	PoundForceInchPerDegree   TorsionalStiffness = 6.4735538522896296413     // lbf in × 180/π
	PoundForceInchPerTurn     TorsionalStiffness = 0.017982094034137860115   // lbf in / 2π
)

// NewtonMetresPerRadian returns k in newton metres per radian.
func (k TorsionalStiffness) NewtonMetresPerRadian() float64 { return float64(k / NewtonMetrePerRadian) }

// NewtonMillimetresPerRadian returns k in newton millimetres per radian.
func (k TorsionalStiffness) NewtonMillimetresPerRadian() float64 {
	return float64(k / NewtonMillimetrePerRadian)
}

// NewtonMillimetresPerDegree returns k in newton millimetres per degree.
func (k TorsionalStiffness) NewtonMillimetresPerDegree() float64 {
	return float64(k / NewtonMillimetrePerDegree)
}

// NewtonMetresPerDegree returns k in newton metres per degree.
func (k TorsionalStiffness) NewtonMetresPerDegree() float64 { return float64(k / NewtonMetrePerDegree) }

// NewtonMetresPerTurn returns k in newton metres per turn.
func (k TorsionalStiffness) NewtonMetresPerTurn() float64 { return float64(k / NewtonMetrePerTurn) }

// NewtonMillimetresPerTurn returns k in newton millimetres per turn.
func (k TorsionalStiffness) NewtonMillimetresPerTurn() float64 {
	return float64(k / NewtonMillimetrePerTurn)
}

// PoundForceInchesPerRadian returns k in pound force inches per radian.
func (k TorsionalStiffness) PoundForceInchesPerRadian() float64 {
	return float64(k / PoundForceInchPerRadian)
}

// PoundForceInchesPerDegree returns k in pound force inches per degree.
func (k TorsionalStiffness) PoundForceInchesPerDegree() float64 {
	return float64(k / PoundForceInchPerDegree)
}

// PoundForceInchesPerTurn returns k in pound force inches per turn.
func (k TorsionalStiffness) PoundForceInchesPerTurn() float64 {
	return float64(k / PoundForceInchPerTurn)
}

// ParseTorsionalStiffness reads a torsional stiffness as people write it, always with its unit:
// N mm/°, N m/rad, lbf in/rev. The error is a *ParseError.
func ParseTorsionalStiffness(text string) (TorsionalStiffness, error) {
	v, err := torsionalStiffnessKind.parse(text)
	return TorsionalStiffness(v), err
}

// String writes k for people, in six figures at most, with its unit.
func (k TorsionalStiffness) String() string { return torsionalStiffnessKind.string(float64(k)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (k TorsionalStiffness) Format(f fmt.State, verb rune) {
	torsionalStiffnessKind.format(f, verb, float64(k))
}

// MarshalText writes k so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (k TorsionalStiffness) MarshalText() ([]byte, error) {
	return torsionalStiffnessKind.marshal(float64(k))
}

// UnmarshalText is ParseTorsionalStiffness for decoders and flags.
func (k *TorsionalStiffness) UnmarshalText(text []byte) error {
	v, err := ParseTorsionalStiffness(string(text))
	if err != nil {
		return err
	}
	*k = v
	return nil
}

// Unit gives k to gonum, with its dimensions.
func (k TorsionalStiffness) Unit() *unit.Unit {
	return unit.New(float64(k), torsionalStiffnessKind.dims)
}

func (TorsionalStiffness) kind() *kind { return &torsionalStiffnessKind }

var torsionalStiffnessScales = [...]scale{
	{name: "N m/rad", factor: float64(NewtonMetrePerRadian), goName: "NewtonMetrePerRadian", aliases: []string{"N m/rad", "n m/rad", "nm/rad"}},
	{name: "N mm/rad", factor: float64(NewtonMillimetrePerRadian), goName: "NewtonMillimetrePerRadian", aliases: []string{"N mm/rad", "n mm/rad", "nmm/rad"}},
	{name: "N mm/°", factor: float64(NewtonMillimetrePerDegree), goName: "NewtonMillimetrePerDegree", aliases: []string{"N mm/°", "n mm/°", "nmm/°"}},
	{name: "N m/°", factor: float64(NewtonMetrePerDegree), goName: "NewtonMetrePerDegree", aliases: []string{"N m/°", "n m/°", "nm/°"}},
	{name: "N m/rev", factor: float64(NewtonMetrePerTurn), goName: "NewtonMetrePerTurn", aliases: []string{"N m/rev", "n m/rev", "nm/rev"}},
	{name: "N mm/rev", factor: float64(NewtonMillimetrePerTurn), goName: "NewtonMillimetrePerTurn", aliases: []string{"N mm/rev", "n mm/rev", "nmm/rev"}},
	{name: "lbf in/rad", factor: float64(PoundForceInchPerRadian), goName: "PoundForceInchPerRadian", aliases: []string{"lbf in/rad", "lb in/rad", "in lb/rad"}},
	{name: "lbf in/°", factor: float64(PoundForceInchPerDegree), goName: "PoundForceInchPerDegree", aliases: []string{"lbf in/°", "lb in/°", "in lb/°"}},
	{name: "lbf in/rev", factor: float64(PoundForceInchPerTurn), goName: "PoundForceInchPerTurn", aliases: []string{"lbf in/rev", "lb in/rev", "in lb/rev"}},
}

var torsionalStiffnessKind = kind{
	name: "torsional stiffness", goName: "TorsionalStiffness", wants: "N mm/°, N m/rad, lbf in/rev",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 2, unit.TimeDim: -2, unit.AngleDim: -1},
	base: torsionalStiffnessScales[0], text: []scale{torsionalStiffnessScales[2], torsionalStiffnessScales[4], torsionalStiffnessScales[8]},
	people: []scale{torsionalStiffnessScales[2]},
	scales: torsionalStiffnessScales[:],
}
