package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A spiralShape is what the bending of an evenly pitched spiral says beyond the
// mean: figures for a torque of 1 on the arbor.
type spiralShape struct {
	rotation float64 // times M L/(E I)
	peak     float64 // greatest moment over the torque
	pull     float64 // sideways force on the arbor over the torque, 1/m
}

// solveSpiral bends an evenly pitched strip a little, with its arbor turning on a
// fixed centre. The moment along the strip is m = M + b x + a y, forces b and a on
// the arbor; what they are follows from the centre staying where it is:
//
//	clamped   ∫ m x ds = 0, ∫ m y ds = 0
//	pinned    m = 0 at the pin, and the pin keeps its distance: ∫ m y ds = 0
//
// with x measured towards the outer end. Derived here.
func solveSpiral(in, out, turns float64, pinned bool) spiralShape {
	n := 2 * int(math.Ceil(64*turns)) // Simpson, at least 128 steps a turn
	var i1, ix, iy, ixx, ixy, iyy float64
	for j := 0; j <= n; j++ {
		w := simpson(j, n)
		x, y, ds := spiralPoint(in, out, turns, float64(j)/float64(n))
		w *= ds
		i1, ix, iy = i1+w, ix+w*x, iy+w*y
		ixx, ixy, iyy = ixx+w*x*x, ixy+w*x*y, iyy+w*y*y
	}
	var a, b float64 // for M = 1
	if pinned {
		b = -1 / out // so that 1 + b x = 0 at the pin
		a = -(iy + b*ixy) / iyy
	} else {
		det := ixx*iyy - ixy*ixy
		b = (-ix*iyy + iy*ixy) / det
		a = (-iy*ixx + ix*ixy) / det
	}
	s := spiralShape{pull: math.Hypot(a, b)}
	if pinned {
		// the work of the tangential force at the pin: ∫ m (1 + b x) ds
		s.rotation = (i1 + 2*b*ix + a*iy + b*b*ixx + a*b*ixy) / i1
	} else {
		s.rotation = (i1 + b*ix + a*iy) / i1
	}
	for j := 0; j <= n; j++ {
		x, y, _ := spiralPoint(in, out, turns, float64(j)/float64(n))
		s.peak = math.Max(s.peak, math.Abs(1+b*x+a*y))
	}
	return s
}

// spiralPoint returns the point a share of the way inwards, and ds for that share
// (up to a factor that cancels).
func spiralPoint(in, out, turns, share float64) (x, y, ds float64) {
	r := out + (in-out)*share
	sin, cos := math.Sincos(2 * math.Pi * turns * share)
	return r * cos, r * sin, math.Hypot(r*2*math.Pi*turns, in-out)
}

func simpson(j, n int) float64 {
	switch {
	case j == 0 || j == n:
		return 1
	case j%2 == 1:
		return 4
	}
	return 2
}

// SidePull returns the force with which the spring pulls its arbor sideways at
// a torque. On a pinned end it is M/r_out and a little more: the pin can hold
// by a force only. On a clamped end it falls with the number of coils, and is 0 in
// the formulas for many coils.
//
// It is the theory of small bending of an evenly pitched spiral, derived here. The
// error is units.ErrDomain for a spiral without diameters.
func (s Spiral) SidePull(torque units.Torque) (units.Force, error) {
	return units.Force(s.shape.pull * math.Abs(float64(torque))), s.needsDiameters()
}

// PeakStress returns the greatest bending stress in the strip at a torque, with
// the moment as it really goes along an evenly pitched spiral: for a clamped end
// 1.15 to 1.17 times the mean at 5 coils, 1.05 at 20; for a pinned one 1.9 to 2
// times. On the innermost coil the strip's curvature comes on top; see
// InnerFactor. The error is units.ErrDomain for a spiral without diameters.
//
// Derived here; it agrees with a numerical elastica.
func (s Spiral) PeakStress(torque units.Torque) (units.Pressure, error) {
	return units.Pressure(s.shape.peak * math.Abs(float64(torque)) / s.section.modulus()), s.needsDiameters()
}

// RotationFactor returns the rotation in multiples of M L/(E I) that the theory of
// small bending gives for this number of coils, to hold against DeflectionFactor:
// for a clamped end 0.990 to 0.993 at 5 coils, 0.998 at 10. The error is
// units.ErrDomain for a spiral without diameters.
func (s Spiral) RotationFactor() (float64, error) { return s.shape.rotation, s.needsDiameters() }

// InnerFactor returns the curvature factor K_i at the innermost coil, rectangular
// section, with C the mean diameter of that coil over t. The error is
// units.ErrDomain for a spiral without diameters.
//
// Source: Wahl, Mechanical Springs, 2nd ed.
func (s Spiral) InnerFactor() (float64, error) {
	if err := s.needsDiameters(); err != nil {
		return 0, err
	}
	return s.section.InsideFactor(float64(s.spec.InnerDiameter/s.spec.Thickness) + 1)
}

// Advice lists what lies outside the range the formulas hold for. An empty list
// is no promise that the spring is good.
func (s Spiral) Advice() []string {
	var out []string
	if s.turns == 0 {
		return []string{"no diameters given: room, side pull and the number of coils are not judged"}
	}
	if s.turns < 3 {
		out = append(out, fmt.Sprintf("%.1f coils: below 3 the formulas do not hold (at 2.5 the rotation is 4 per cent less and the peak 31 per cent more)", s.turns))
	}
	return out
}
