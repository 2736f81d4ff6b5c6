package springs

import (
	"math"

	"example.com/benchsums/units"
)

// SpiralLength returns the strip in an evenly pitched spiral of so many turns
// between two diameters, L = π n (D_in + D_out)/2, which is exact to the square
// of the slope of the spiral.
func SpiralLength(turns float64, inner, outer units.Length) units.Length {
	return units.Length(math.Pi / 2 * turns * float64(inner+outer))
}

// SpiralWidth returns the width of strip of a given thickness that carries a
// torque at a stress: b = 6 M/(σ t²) for a clamped end, 12 M/(σ t²) for a pinned or
// hooked one. The error is units.ErrDomain for a figure that is not more than 0.
//
// Source: Bhandari, Design of Machine Elements, ex. 10.22.
func SpiralWidth(torque units.Torque, stress units.Pressure, thickness units.Length, end OuterEnd) (units.Length, error) {
	if err := first(positive("torque", torque), positive("stress", stress), positive("thickness", thickness)); err != nil {
		return 0, err
	}
	k := 12.0
	if end == Clamped {
		k = 6
	}
	return units.Length(k * float64(torque) / (float64(stress) * float64(thickness) * float64(thickness))), nil
}

// SpiralLengthFor returns the length of strip that turns through an angle at a
// torque, L = θ E b t³ / (12 M f), with f the deflection factor: 1 for a clamped
// end, and for a pinned one whatever convention is followed. The error is
// units.ErrDomain for a figure that is not more than 0.
func SpiralLengthFor(torque units.Torque, wind units.Angle, strip Section, e units.Pressure, factor float64) (units.Length, error) {
	err := first(strip.check(), positive("torque", torque), positive("angle", wind), positive("Young's modulus", e), positive("deflection factor", factor))
	if err != nil {
		return 0, err
	}
	return units.Length(float64(wind) * float64(e) * strip.inertia() / (float64(torque) * factor)), nil
}
