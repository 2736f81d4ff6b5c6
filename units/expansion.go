package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// An Expansion is a coefficient of linear thermal expansion, per kelvin
// underneath.
type Expansion float64

// Units of coefficient of expansion.
const (
	PerKelvin                        Expansion = 1
	MicrometrePerMetreKelvin         Expansion = 1e-6
	PerFahrenheitDegree              Expansion = 1.8 // 9/5 per kelvin; NIST SP 811:2008, Appendix B (°F)
	MicroinchPerInchFahrenheitDegree Expansion = 1.8e-6
)

// PerKelvin returns e per kelvin.
func (e Expansion) PerKelvin() float64 { return float64(e / PerKelvin) }

// MicrometresPerMetreKelvin returns e in micrometres per metre kelvin.
func (e Expansion) MicrometresPerMetreKelvin() float64 { return float64(e / MicrometrePerMetreKelvin) }

// PerFahrenheitDegree returns e per Fahrenheit degree.
func (e Expansion) PerFahrenheitDegree() float64 { return float64(e / PerFahrenheitDegree) }

// MicroinchesPerInchFahrenheitDegree returns e in microinches per inch and
// Fahrenheit degree.
func (e Expansion) MicroinchesPerInchFahrenheitDegree() float64 {
	return float64(e / MicroinchPerInchFahrenheitDegree)
}

// ParseExpansion reads a coefficient of expansion as people write it, always with its unit:
// µm/m/K, /K. The error is a *ParseError.
func ParseExpansion(text string) (Expansion, error) {
	v, err := expansionKind.parse(text)
	return Expansion(v), err
}

// String writes e for people, in six figures at most, with its unit.
func (e Expansion) String() string { return expansionKind.string(float64(e)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (e Expansion) Format(f fmt.State, verb rune) { expansionKind.format(f, verb, float64(e)) }

// MarshalText writes e so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (e Expansion) MarshalText() ([]byte, error) { return expansionKind.marshal(float64(e)) }

// UnmarshalText is ParseExpansion for decoders and flags.
func (e *Expansion) UnmarshalText(text []byte) error {
	v, err := ParseExpansion(string(text))
	if err != nil {
		return err
	}
	*e = v
	return nil
}

// Unit gives e to gonum, with its dimensions.
func (e Expansion) Unit() *unit.Unit { return unit.New(float64(e), expansionKind.dims) }

func (Expansion) kind() *kind { return &expansionKind }

var expansionScales = [...]scale{
	{name: "/K", factor: float64(PerKelvin), goName: "PerKelvin", aliases: []string{"/K", "/k", "/°c", "/° c", "/degc"}},
	{name: "µm/m/K", factor: float64(MicrometrePerMetreKelvin), goName: "MicrometrePerMetreKelvin", aliases: []string{"µm/m/K", "μm/m/k", "μm/m k", "μm/m/°c", "μm/m °c", "ppm/k", "ppm/°c"}},
	{name: "/°F", factor: float64(PerFahrenheitDegree), goName: "PerFahrenheitDegree", aliases: []string{"/°F", "/°f", "/° f", "/degf"}},
	{name: "µin/in/°F", factor: float64(MicroinchPerInchFahrenheitDegree), goName: "MicroinchPerInchFahrenheitDegree", aliases: []string{"µin/in/°F", "μin/in/°f", "μin/in °f", "ppm/°f"}},
}

var expansionKind = kind{
	name: "coefficient of expansion", goName: "Expansion", wants: "µm/m/K, /K",
	dims: unit.Dimensions{unit.TemperatureDim: -1},
	base: expansionScales[0], text: []scale{expansionScales[1]},
	people: []scale{expansionScales[1]},
	scales: expansionScales[:],
}
