package sheet

import (
	"math"
	"strconv"
	"strings"

	"example.com/benchsums/units"
)

// A Figure is one result.
type Figure struct {
	Key   string  // stable name for programs: "tdc.position"
	Name  string  // for people
	Value float64 // in Unit
	Unit  string
	Std   float64 // standard uncertainty in Unit; 0 for exact or not stated
	DoF   float64 // degrees of freedom; 0 for infinite
	Text  string  // the value with its plus-or-minus, for people
	Also  string  // the same in other units
	Note  string  // a remark

	// Read reads a text of the same kind of quantity, as a number of Unit.
	Read func(text string) (float64, error)
}

// A Unit is a unit to show a quantity in.
type Unit[Q units.Quantity] struct {
	Name string
	One  Q
}

// The units the sheets show.
var (
	Millimetre = Unit[units.Length]{"mm", units.Millimetre}
	Inch       = Unit[units.Length]{"in", units.Inch}
	Thou       = Unit[units.Length]{"thou", units.Thou}
	Degree     = Unit[units.Angle]{"°", units.Degree}
	CC         = Unit[units.Volume]{"cc", units.CubicCentimetre}
	CubicInch  = Unit[units.Volume]{"cu in", units.CubicInch}
	RPM        = Unit[units.AngularSpeed]{"rev/min", units.RevolutionPerMinute}
	MetreASec  = Unit[units.Speed]{"m/s", units.MetrePerSecond}
	FootAMin   = Unit[units.Speed]{"ft/min", units.FootPerMinute}
	Number     = Unit[float64]{"", 1}
	Percent    = Unit[float64]{"%", 0.01}
	Millisec   = Unit[float64]{"ms", 1e-3} // of seconds
)

// Of makes a figure of r in the first unit, with the others beside it.
func Of[Q units.Quantity](key, name string, r units.Reading[Q], in ...Unit[Q]) Figure {
	u := in[0]
	f := Figure{Key: key, Name: name, Unit: u.Name, DoF: r.DoF,
		Value: float64(r.Value) / float64(u.One), Std: float64(r.Std) / float64(u.One)}
	f.Text = Show(r, u)
	f.Read = func(text string) (float64, error) {
		v, err := units.ParseReading[Q](text)
		return float64(v.Value) / float64(u.One), err
	}
	var also []string
	for _, v := range in[1:] {
		also = append(also, Show(r, v))
	}
	f.Also = strings.Join(also, ", ")
	return f
}

// Rough makes a figure that has no plus-or-minus of its own and is meant to so
// many decimals.
func Rough[Q units.Quantity](key, name string, q Q, decimals int, in ...Unit[Q]) Figure {
	f := Of(key, name, units.Exact(q), in...)
	f.Text = Plain(q, in[0], decimals)
	return f
}

// HalfWidth is the half-width of the interval that the text gives, in Unit; 0
// for a figure without uncertainty.
func (f Figure) HalfWidth() float64 {
	if !(f.Std > 0) {
		return 0
	}
	return f.Std * factor(f.DoF)
}

// Noted returns f with a remark.
func (f Figure) Noted(note string) Figure {
	f.Note = note
	return f
}

// Show writes r in unit u with its plus-or-minus, both rounded to the latter.
func Show[Q units.Quantity](r units.Reading[Q], u Unit[Q]) string {
	x, std := float64(r.Value)/float64(u.One), float64(r.Std)/float64(u.One)
	if !(std > 0) {
		return join(exact(x), u.Name)
	}
	half := std * factor(r.DoF)
	places := decimals(half)
	return join(fixed(x, places), u.Name) + " ± " + join(fixed(half, places), u.Name)
}

// Value writes r in unit u rounded to its plus-or-minus, without writing that:
// for numbers put into a formula.
func Value[Q units.Quantity](r units.Reading[Q], u Unit[Q]) string {
	text, _, _ := strings.Cut(Show(r, u), " ± ")
	if strings.HasPrefix(text, "-") {
		return "(" + text + ")"
	}
	return text
}

// factor is the coverage factor for the plus-or-minus of the text.
func factor(dof float64) float64 {
	k, err := units.CoverageFactor(Coverage, dof)
	if err != nil { // fewer than one degree of freedom: as few as there can be
		k, _ = units.CoverageFactor(Coverage, 1)
	}
	return k
}

// decimals returns how many decimals a figure is written with whose
// plus-or-minus is half: two figures of half where it begins with 1 or 2, else
// one. Negative for tens and hundreds.
func decimals(half float64) int {
	text := strconv.FormatFloat(half, 'e', 1, 64) // 2.7e-01
	exp, _ := strconv.Atoi(text[4:])
	if text[0] > '2' {
		text = strconv.FormatFloat(half, 'e', 0, 64) // 3e-01; 9.96 carries to 1e+01
		carried, _ := strconv.Atoi(text[2:])
		if carried > exp {
			return 1 - carried
		}
		return -exp
	}
	return 1 - exp
}

// fixed writes x with so many decimals; fewer than none round to tens.
func fixed(x float64, decimals int) string {
	if decimals >= 0 {
		return strconv.FormatFloat(x, 'f', decimals, 64)
	}
	p := math.Pow10(-decimals)
	return strconv.FormatFloat(math.RoundToEven(x/p)*p, 'f', 0, 64)
}

// Coverage is the share of values the plus-or-minus of the text holds.
const Coverage = 0.95

// Plain writes q in unit u without its uncertainty, to the given number of
// decimals.
func Plain[Q units.Quantity](q Q, u Unit[Q], decimals int) string {
	return join(strconv.FormatFloat(float64(q)/float64(u.One), 'f', decimals, 64), u.Name)
}

// exact writes a number that has no uncertainty, in five figures at most.
func exact(x float64) string {
	if x != 0 && (math.Abs(x) >= 1e5 || math.Abs(x) < 1e-3) {
		return strconv.FormatFloat(x, 'g', 5, 64)
	}
	y, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 5, 64), 64)
	return strconv.FormatFloat(y, 'f', -1, 64)
}

func join(number, unit string) string {
	switch unit {
	case "":
		return number
	case "°":
		return number + unit
	}
	return number + "\u00a0" + unit
}
