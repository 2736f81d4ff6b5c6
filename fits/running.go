package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Custom is a clearance that workshops give by habit where physics does not
// decide, as a share of the diameter: 0.001 is a thou to the inch.
type Custom struct {
	What      string
	Low, High float64 // of the diameter
	Source    string
}

// Clearance returns the range at a diameter.
func (c Custom) Clearance(diameter units.Length) Clearance {
	return Clearance{units.Length(c.Low) * diameter, units.Length(c.High) * diameter}
}

// Customs returns clearances by habit, for slow old engines and where neither the
// maker's figure nor the temperatures are known. All of them are common practice
// without a source; the maker's figure goes before them, and a HotBore says what heat
// alone asks for.
func Customs() []Custom {
	const habit = "common practice, no source"
	return []Custom{
		{"journal in a plain bush, splash or oil-mist", 0.0010, 0.0015, habit},
		{"journal in a plain bush, well oiled and slow", 0.0005, 0.0010, habit},
		{"gudgeon pin in a bronze bush", 0.0005, 0.0010, habit},
		{"cast-iron piston, skirt, in a cast-iron bore", 0.0010, 0.0020, habit},
		{"cast-iron piston, lands above the top ring", 0.0040, 0.0060, habit},
		{"aluminium piston, skirt, in a cast-iron bore", 0.0015, 0.0030, habit},
		{"piston ring, end gap, against the bore", 0.0030, 0.0045, habit},
	}
}

// LeakRatio returns how many times more leaks past a plain bush with one clearance
// than with another, all else alike: the cube of the ratio of the clearances, since
// oil or air creeps through a narrow gap as Q = π d c³ Δp/(96 µ L), c being the
// clearance on the diameter. Twice the clearance leaks eight times as much.
//
// The error wraps units.ErrDomain for clearances that are not more than 0.
//
// Source: Poiseuille flow between plates, π d h³ Δp/(12 µ L) with h = c/2; derived
// here. It holds while the flow is smooth, as it is in a bush.
func LeakRatio(is, was units.Length) (float64, error) {
	if !(is > 0) || !(was > 0) || math.IsInf(float64(is), 0) || math.IsInf(float64(was), 0) {
		return 0, fmt.Errorf("clearances %v and %v: want more than 0 mm: %w", is, was, units.ErrDomain)
	}
	return math.Pow(float64(is/was), 3), nil
}

// EccentricLeak returns how many times more leaks past a bush when the journal lies
// to one side than when it is in the middle: 1 + 1.5 ε², with ε 0 in the middle and 1
// where it touches, two and a half times as much. The error wraps units.ErrDomain for
// ε outside 0 to 1.
//
// Source: the flow through a narrow gap integrated round h (1 + ε cos θ); derived here.
func EccentricLeak(eccentricity float64) (float64, error) {
	if !(eccentricity >= 0 && eccentricity <= 1) {
		return 0, fmt.Errorf("eccentricity %g: want 0 in the middle to 1 touching: %w", eccentricity, units.ErrDomain)
	}
	return 1 + 1.5*eccentricity*eccentricity, nil
}
