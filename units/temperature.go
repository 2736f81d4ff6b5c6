package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Temperature is a temperature, in kelvins underneath. The scales people use
// have a zero of their own, so a Temperature is made by Celsius or Fahrenheit
// and not by multiplying, and the difference of two is a TemperatureDifference.
//
//	shop := units.Celsius(20)
//	rise := units.Celsius(120).Sub(shop)
type Temperature float64

// Kelvin is the unit underneath.
const Kelvin Temperature = 1

// The zeros of the two scales. SI Brochure, 9th ed. (°C); NIST SP 811:2008,
// Appendix B (°F, 459.67 × 5/9 K).
const (
	celsiusZero    = 273.15
	fahrenheitZero = 255.37222222222222222
)

// Celsius returns the temperature of t degrees Celsius.
func Celsius(t float64) Temperature { return Temperature(celsiusScale.si(t)) }

// Fahrenheit returns the temperature of t degrees Fahrenheit.
func Fahrenheit(t float64) Temperature { return Temperature(fahrenheitScale.si(t)) }

// Kelvins returns t in kelvins.
func (t Temperature) Kelvins() float64 { return float64(t) }

// Celsius returns t in degrees Celsius.
func (t Temperature) Celsius() float64 { return celsiusScale.number(float64(t)) }

// Fahrenheit returns t in degrees Fahrenheit.
func (t Temperature) Fahrenheit() float64 { return fahrenheitScale.number(float64(t)) }

// Add returns t warmed by d.
func (t Temperature) Add(d TemperatureDifference) Temperature { return t + Temperature(d) }

// Sub returns how much warmer t is than u.
func (t Temperature) Sub(u Temperature) TemperatureDifference { return TemperatureDifference(t - u) }

// ParseTemperature reads a temperature as people write it, always with its
// scale: 20 °C, 68 °F, 293.15 K. The error is a *ParseError.
func ParseTemperature(text string) (Temperature, error) {
	v, err := temperatureKind.parse(text)
	return Temperature(v), err
}

// String writes t for people, in degrees Celsius.
func (t Temperature) String() string { return temperatureKind.string(float64(t)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (t Temperature) Format(f fmt.State, verb rune) { temperatureKind.format(f, verb, float64(t)) }

// MarshalText writes t so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (t Temperature) MarshalText() ([]byte, error) { return temperatureKind.marshal(float64(t)) }

// UnmarshalText is ParseTemperature for decoders and flags.
func (t *Temperature) UnmarshalText(text []byte) error {
	v, err := ParseTemperature(string(text))
	if err != nil {
		return err
	}
	*t = v
	return nil
}

// Unit gives t to gonum, with its dimensions.
func (t Temperature) Unit() *unit.Unit { return unit.New(float64(t), temperatureKind.dims) }

func (Temperature) kind() *kind { return &temperatureKind }

var (
	kelvinScale     = scale{name: "K", goName: "Kelvin", factor: 1, aliases: []string{"K", "k"}}
	celsiusScale    = scale{name: "°C", goName: "Celsius", factor: 1, zero: celsiusZero, aliases: []string{"°C", "°c", "° c", "degc", "c"}}
	fahrenheitScale = scale{name: "°F", goName: "Fahrenheit", factor: 0.55555555555555555556, zero: fahrenheitZero, aliases: []string{"°F", "°f", "° f", "degf", "f"}}
)

var temperatureKind = kind{
	name: "temperature", goName: "Temperature", wants: "°C, °F, K",
	dims: unit.Dimensions{unit.TemperatureDim: 1},
	base: kelvinScale, text: []scale{celsiusScale, kelvinScale, fahrenheitScale},
	people: []scale{celsiusScale},
	scales: []scale{celsiusScale, fahrenheitScale, kelvinScale},
	traps: []trap{
		{[]string{"°"}, "degrees: write °C or °F"},
	},
}
