package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A TemperatureDifference is a rise or fall of temperature, in kelvins
// underneath. Here 9 °F is 5 K; a Temperature of 9 °F is another matter.
type TemperatureDifference float64

// Units of temperature difference.
const (
	KelvinDifference     TemperatureDifference = 1
	FahrenheitDifference TemperatureDifference = 0.55555555555555555556 // 5/9 K; NIST SP 811:2008, Appendix B
)

// Kelvins returns d in kelvins.
func (d TemperatureDifference) Kelvins() float64 { return float64(d / KelvinDifference) }

// FahrenheitDegrees returns d in Fahrenheit degrees.
func (d TemperatureDifference) FahrenheitDegrees() float64 { return float64(d / FahrenheitDifference) }

// ParseTemperatureDifference reads a temperature difference as people write it, always with its unit:
// K, °C, °F. The error is a *ParseError.
func ParseTemperatureDifference(text string) (TemperatureDifference, error) {
	v, err := temperatureDifferenceKind.parse(text)
	return TemperatureDifference(v), err
}

// String writes d for people, in six figures at most, with its unit.
func (d TemperatureDifference) String() string { return temperatureDifferenceKind.string(float64(d)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (d TemperatureDifference) Format(f fmt.State, verb rune) {
	temperatureDifferenceKind.format(f, verb, float64(d))
}

// MarshalText writes d so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (d TemperatureDifference) MarshalText() ([]byte, error) {
	return temperatureDifferenceKind.marshal(float64(d))
}

// UnmarshalText is ParseTemperatureDifference for decoders and flags.
func (d *TemperatureDifference) UnmarshalText(text []byte) error {
	v, err := ParseTemperatureDifference(string(text))
	if err != nil {
		return err
	}
	*d = v
	return nil
}

// Unit gives d to gonum, with its dimensions.
func (d TemperatureDifference) Unit() *unit.Unit {
	return unit.New(float64(d), temperatureDifferenceKind.dims)
}

func (TemperatureDifference) kind() *kind { return &temperatureDifferenceKind }

var temperatureDifferenceScales = [...]scale{
	{name: "K", factor: float64(KelvinDifference), goName: "KelvinDifference", aliases: []string{"K", "k", "°c", "degc", "° c", "c°"}},
	{name: "°F", factor: float64(FahrenheitDifference), goName: "FahrenheitDifference", aliases: []string{"°F", "°f", "degf", "° f", "f°"}},
}

var temperatureDifferenceKind = kind{
	name: "temperature difference", goName: "TemperatureDifference", wants: "K, °C, °F",
	dims: unit.Dimensions{unit.TemperatureDim: 1},
	base: temperatureDifferenceScales[0], text: temperatureDifferenceScales[:],
	people: []scale{temperatureDifferenceScales[0]},
	scales: temperatureDifferenceScales[:],
}
