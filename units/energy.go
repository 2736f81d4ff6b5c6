package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// An Energy is work stored or done, in joules underneath.
type Energy float64

// Units of energy.
const (
	Joule              Energy = 1
	FootPound          Energy = 1.3558179483314004 // NIST SP 811:2008, Appendix B
	BritishThermalUnit Energy = 1055.05585262      // international table; NIST SP 811:2008, Appendix B
	Kilocalorie        Energy = 4186.8             // international table; NIST SP 811:2008, Appendix B
)

// Joules returns e in joules.
func (e Energy) Joules() float64 { return float64(e / Joule) }

// FootPounds returns e in foot pounds.
func (e Energy) FootPounds() float64 { return float64(e / FootPound) }

// BritishThermalUnits returns e in British thermal units.
func (e Energy) BritishThermalUnits() float64 { return float64(e / BritishThermalUnit) }

// Kilocalories returns e in kilocalories.
func (e Energy) Kilocalories() float64 { return float64(e / Kilocalorie) }

// ParseEnergy reads an energy as people write it, always with its unit:
// J, ft lbf. The error is a *ParseError.
func ParseEnergy(text string) (Energy, error) {
	v, err := energyKind.parse(text)
	return Energy(v), err
}

// String writes e for people, in six figures at most, with its unit.
func (e Energy) String() string { return energyKind.string(float64(e)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (e Energy) Format(f fmt.State, verb rune) { energyKind.format(f, verb, float64(e)) }

// MarshalText writes e so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (e Energy) MarshalText() ([]byte, error) { return energyKind.marshal(float64(e)) }

// UnmarshalText is ParseEnergy for decoders and flags.
func (e *Energy) UnmarshalText(text []byte) error {
	v, err := ParseEnergy(string(text))
	if err != nil {
		return err
	}
	*e = v
	return nil
}

// Unit gives e to gonum, with its dimensions.
func (e Energy) Unit() *unit.Unit { return unit.New(float64(e), energyKind.dims) }

func (Energy) kind() *kind { return &energyKind }

var energyScales = [...]scale{
	{name: "J", factor: float64(Joule), goName: "Joule", aliases: []string{"J", "j"}},
	{name: "ft lbf", factor: float64(FootPound), goName: "FootPound", aliases: []string{"ft lbf", "ftlbf", "ft lb", "ftlb", "ftlbs"}},
	{name: "Btu", factor: float64(BritishThermalUnit), goName: "BritishThermalUnit", aliases: []string{"Btu", "btu"}},
	{name: "kcal", factor: float64(Kilocalorie), goName: "Kilocalorie", aliases: []string{"kcal"}},
}

var energyKind = kind{
	name: "energy", goName: "Energy", wants: "J, ft lbf",
	dims: unit.Dimensions{unit.MassDim: 1, unit.LengthDim: 2, unit.TimeDim: -2},
	base: energyScales[0], text: []scale{energyScales[0], energyScales[1], energyScales[2]},
	people: []scale{energyScales[0]},
	scales: energyScales[:],
}
