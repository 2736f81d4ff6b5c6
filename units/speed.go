package units

import (
	"fmt"

	"gonum.org/v1/gonum/unit"
)

// A Speed is a distance per time, in metres per second underneath.
type Speed float64

// Units of speed: a length over 1 s, 60 s or 3600 s (SI Brochure, 9th ed., Table 8).
const (
	MetrePerSecond   Speed = 1
	FootPerMinute    Speed = 0.00508 // NIST SP 811:2008, Appendix B
	FootPerSecond    Speed = 0.3048  // NIST SP 811:2008, Appendix B
	InchPerSecond    Speed = 0.0254  // NIST SP 811:2008, Appendix B
	MetrePerMinute   Speed = 0.016666666666666666667
	KilometrePerHour Speed = 0.27777777777777777778
	MilePerHour      Speed = 0.44704 // NIST SP 811:2008, Appendix B
)

// MetresPerSecond returns s in metres per second.
func (s Speed) MetresPerSecond() float64 { return float64(s / MetrePerSecond) }

// FeetPerMinute returns s in feet per minute.
func (s Speed) FeetPerMinute() float64 { return float64(s / FootPerMinute) }

// FeetPerSecond returns s in feet per second.
func (s Speed) FeetPerSecond() float64 { return float64(s / FootPerSecond) }

// InchesPerSecond returns s in inches per second.
func (s Speed) InchesPerSecond() float64 { return float64(s / InchPerSecond) }

// MetresPerMinute returns s in metres per minute.
func (s Speed) MetresPerMinute() float64 { return float64(s / MetrePerMinute) }

// KilometresPerHour returns s in kilometres per hour.
func (s Speed) KilometresPerHour() float64 { return float64(s / KilometrePerHour) }

// MilesPerHour returns s in miles per hour.
func (s Speed) MilesPerHour() float64 { return float64(s / MilePerHour) }

// ParseSpeed reads a speed as people write it, always with its unit:
// m/s, ft/min. The error is a *ParseError.
func ParseSpeed(text string) (Speed, error) {
	v, err := speedKind.parse(text)
	return Speed(v), err
}

// String writes s for people, in six figures at most, with its unit.
func (s Speed) String() string { return speedKind.string(float64(s)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (s Speed) Format(f fmt.State, verb rune) { speedKind.format(f, verb, float64(s)) }

// MarshalText writes s so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (s Speed) MarshalText() ([]byte, error) { return speedKind.marshal(float64(s)) }

// UnmarshalText is ParseSpeed for decoders and flags.
func (s *Speed) UnmarshalText(text []byte) error {
	v, err := ParseSpeed(string(text))
	if err != nil {
		return err
	}
	*s = v
	return nil
}

// Unit gives s to gonum, with its dimensions.
func (s Speed) Unit() *unit.Unit { return unit.New(float64(s), speedKind.dims) }

func (Speed) kind() *kind { return &speedKind }

var speedScales = [...]scale{
	{name: "m/s", factor: float64(MetrePerSecond), goName: "MetrePerSecond", aliases: []string{"m/s"}},
	{name: "ft/min", factor: float64(FootPerMinute), goName: "FootPerMinute", aliases: []string{"ft/min", "fpm"}},
	{name: "ft/s", factor: float64(FootPerSecond), goName: "FootPerSecond", aliases: []string{"ft/s", "fps"}},
	{name: "in/s", factor: float64(InchPerSecond), goName: "InchPerSecond", aliases: []string{"in/s"}},
	{name: "m/min", factor: float64(MetrePerMinute), goName: "MetrePerMinute", aliases: []string{"m/min"}},
	{name: "km/h", factor: float64(KilometrePerHour), goName: "KilometrePerHour", aliases: []string{"km/h", "kph", "kmh"}},
	{name: "mile/h", factor: float64(MilePerHour), goName: "MilePerHour", aliases: []string{"mile/h", "mph"}},
}

var speedKind = kind{
	name: "speed", goName: "Speed", wants: "m/s, ft/min",
	dims: unit.Dimensions{unit.LengthDim: 1, unit.TimeDim: -1},
	base: speedScales[0], text: []scale{speedScales[0], speedScales[1], speedScales[2], speedScales[4], speedScales[5], speedScales[6]},
	people: []scale{speedScales[0]},
	scales: speedScales[:],
}
