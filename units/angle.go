package units

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/unit"
)

// An Angle is an angle, in radians underneath.
//
//	lean := 12 * units.Degree
//	full := 38*units.Degree + 30*units.ArcMinute
type Angle float64

// Units of angle. Those of the circle are parts of 2π rad: SI Brochure, 9th ed.,
// Table 8 (°, ′, ″).
const (
	Radian    Angle = 1                           // SI
	Degree    Angle = 0.017453292519943295769     // π/180
	ArcMinute Angle = 0.00029088820866572159615   // π/10800
	ArcSecond Angle = 0.0000048481368110953599359 // π/648000
	Gon       Angle = 0.015707963267948966192     // π/200; NIST SP 811:2008, Appendix B
	Turn      Angle = 6.2831853071795864769       // 2π
)

// Radians returns a in radians.
func (a Angle) Radians() float64 { return float64(a / Radian) }

// Degrees returns a in degrees.
func (a Angle) Degrees() float64 { return float64(a / Degree) }

// ArcMinutes returns a in arc minutes.
func (a Angle) ArcMinutes() float64 { return float64(a / ArcMinute) }

// ArcSeconds returns a in arc seconds.
func (a Angle) ArcSeconds() float64 { return float64(a / ArcSecond) }

// Gons returns a in gons.
func (a Angle) Gons() float64 { return float64(a / Gon) }

// Turns returns a in turns.
func (a Angle) Turns() float64 { return float64(a / Turn) }

// Sincos returns the sine and the cosine of a.
func (a Angle) Sincos() (sin, cos float64) { return math.Sincos(float64(a)) }

// ParseAngle reads an angle as people write it, always with its unit: 28°,
// 35 deg, 28° 30′ 15″, 28d30m, 0.5 rad, 1/2 turn. A bare m or s is refused: 30′
// and 15″ are minutes and seconds of arc. The error is a *ParseError.
func ParseAngle(text string) (Angle, error) {
	v, err := angleKind.parse(text)
	return Angle(v), err
}

// String writes a for people, in six figures at most, with its unit.
func (a Angle) String() string { return angleKind.string(float64(a)) }

// Format is fmt.Formatter: every verb writes the unit too.
func (a Angle) Format(f fmt.State, verb rune) { angleKind.format(f, verb, float64(a)) }

// MarshalText writes a so that UnmarshalText gives the very same value back.
// The error is ErrNotFinite.
func (a Angle) MarshalText() ([]byte, error) { return angleKind.marshal(float64(a)) }

// UnmarshalText is ParseAngle for decoders and flags.
func (a *Angle) UnmarshalText(text []byte) error {
	v, err := ParseAngle(string(text))
	if err != nil {
		return err
	}
	*a = v
	return nil
}

// Unit gives a to gonum, with its dimensions.
func (a Angle) Unit() *unit.Unit { return unit.New(float64(a), angleKind.dims) }

func (Angle) kind() *kind { return &angleKind }

var angleScales = [...]scale{
	{name: "rad", factor: float64(Radian), goName: "Radian", aliases: []string{"rad"}},
	{name: "°", tight: true, factor: float64(Degree), goName: "Degree", aliases: []string{"°", "d"}},
	{name: "′", tight: true, factor: float64(ArcMinute), goName: "ArcMinute", aliases: []string{"′", "'", "arcmin", "arc min", "min"}},
	{name: "″", tight: true, factor: float64(ArcSecond), goName: "ArcSecond", aliases: []string{"″", "\"", "''", "arcsec", "arc s"}},
	{name: "gon", factor: float64(Gon), goName: "Gon", aliases: []string{"gon"}},
	{name: "rev", factor: float64(Turn), goName: "Turn", aliases: []string{"rev"}},
}

var angleKind = kind{
	name: "angle", goName: "Angle", wants: "°, deg, rad",
	dims: unit.Dimensions{unit.AngleDim: 1},
	base: angleScales[0], text: []scale{angleScales[1], angleScales[0]},
	people: []scale{angleScales[1]},
	scales: angleScales[:],
	traps: []trap{
		{[]string{"m"}, "m: write 30' or 30 arcmin for minutes of arc"},
		{[]string{"s"}, "seconds of arc are written 30\" or 30 arcsec"},
	},
	ladder: []rung{
		{names: []string{"°", "d"}, factor: float64(Degree), limit: 0},
		{names: []string{"′", "'", "m", "min", "arcmin"}, factor: float64(ArcMinute), limit: 60},
		{names: []string{"″", "\"", "''", "s", "arcsec"}, factor: float64(ArcSecond), limit: 60},
	},
}
