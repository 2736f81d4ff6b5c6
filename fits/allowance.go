package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// SmoothingLoss2001 returns what the roughness of both surfaces takes from the
// measured interference as the peaks are pressed flat, 0.8 (Rz1 + Rz2), with Rz the
// mean height of the roughness. On a small bore it can be all of it. The error wraps
// units.ErrDomain for a roughness below 0.
//
// Source: DIN 7190:2001, by a secondary source.
func SmoothingLoss2001(rzHub, rzShaft units.Length) (units.Length, error) {
	return smoothing(0.8, rzHub, rzShaft)
}

// SmoothingLoss2017 returns what the roughness of both surfaces takes by the newer
// edition, half of what the older allowed: 0.4 (Rz1 + Rz2). Errors as for
// SmoothingLoss2001.
//
// Source: DIN 7190-1:2017, by two secondary sources.
func SmoothingLoss2017(rzHub, rzShaft units.Length) (units.Length, error) {
	return smoothing(0.4, rzHub, rzShaft)
}

func smoothing(share units.Length, a, b units.Length) (units.Length, error) {
	if !(a >= 0 && b >= 0) || math.IsInf(float64(a+b), 0) {
		return 0, fmt.Errorf("roughness %v and %v: want 0 µm or more: %w", a, b, units.ErrDomain)
	}
	return share * (a + b), nil
}

// ForceByHandbook returns the force to press a steel shaft into a cast-iron hub of
// twice its diameter, by the old workshop rule
//
//	P = A a F/2, in short tons
//
// with A the area of contact in square inches, a the allowance in inches and F the
// pressure factor of the table for the diameter. Between the diameters of the table
// F times the diameter is taken to run straight. It is an estimate for choosing the
// press; Force is the reckoning. The error wraps units.ErrDomain for a diameter
// outside 1 to 10.5 in, which the table does not reach, or a hub that is not twice
// the shaft to a twentieth, for which the table is not.
//
// Source: Machinery's Handbook, forced fits, as reproduced in an engineering page.
func (p Press) ForceByHandbook() (units.Force, error) {
	d, j := p.j.Diameter, p.j
	if !(math.Abs(float64(j.HubOutside/d)-2) <= 0.1) {
		return 0, fmt.Errorf("hub of %v on a shaft of %v: want twice the shaft, for which the rule is: %w", j.HubOutside, d, units.ErrDomain)
	}
	f, err := pressureFactor(d.Inches())
	if err != nil {
		return 0, err
	}
	tons := math.Pi * d.Inches() * j.Length.Inches() * j.Interference.Inches() * f / 2
	return units.Force(tons*2000) * units.PoundForce, nil
}

func pressureFactor(d float64) (float64, error) {
	rows := pressureFactors[:]
	const slack = 1e-9
	if !(d >= rows[0].diameter-slack && d <= rows[len(rows)-1].diameter+slack) {
		return 0, fmt.Errorf("diameter %.4g in: want 1 in to 10.5 in, which is as far as the table goes: %w", d, units.ErrDomain)
	}
	i := 1
	for i < len(rows)-1 && d > rows[i].diameter {
		i++
	}
	a, b := rows[i-1], rows[i]
	share := (d - a.diameter) / (b.diameter - a.diameter)
	return ((1-share)*a.diameter*a.factor + share*b.diameter*b.factor) / d, nil
}

// TyreAllowance returns the shrinkage allowance that American railways gave a tyre
// on a wheel centre, for centres of 38, 44, 50, 56, 62 and 66 in, about 1.06 thou per
// inch. Other sizes are refused.
//
// Source: American Railway Master Mechanics, in Jones, Turning and Boring.
func TyreAllowance(centre units.Length) (units.Length, error) {
	for _, r := range tyreAllowances {
		if math.Abs(centre.Inches()-r.centre) < 1e-6 {
			return units.Length(r.allowance) * units.Inch, nil
		}
	}
	return 0, fmt.Errorf("wheel centre %.4g in: want 38, 44, 50, 56, 62 or 66 in, the sizes in the table: %w", centre.Inches(), units.ErrDomain)
}

// PressAllowance returns the range of interference that period practice gave a
// shaft forced into a hub: 0.001 to 0.0025 of the diameter, and no more than 9 thou
// in all. The error wraps units.ErrDomain for a diameter that is not more than 0, or
// over 8 in, for which the book gives nothing.
//
// Source: Jones, Turning and Boring, who gives 0.0015 as the average, 4 thou in all
// at 2 in and not over 9 thou at 8 in.
func PressAllowance(diameter units.Length) (Clearance, error) {
	if !(diameter > 0 && diameter <= 8*units.Inch+picometre) {
		return Clearance{}, fmt.Errorf("diameter %.4g in: want more than 0 in and at most 8 in, for which the rule is: %w", diameter.Inches(), units.ErrDomain)
	}
	return Clearance{Min: -min(0.0025*diameter, 9*units.Thou), Max: -0.001 * diameter}, nil
}

// ShrinkAllowance returns the interference that period practice gave a ring shrunk
// on to a wheel or shaft: 0.001 of the diameter. The error wraps units.ErrDomain for a
// diameter that is not more than 0.
//
// Source: Dooley, Applied Science for Metal Workers (1919), art. 453.
func ShrinkAllowance(diameter units.Length) (units.Length, error) {
	if !(diameter > 0) || math.IsInf(float64(diameter), 0) {
		return 0, fmt.Errorf("diameter %v: want more than 0 mm: %w", diameter, units.ErrDomain)
	}
	return 0.001 * diameter, nil
}

// ShrunkAgainstPressed returns how many times as much a shrunk joint held as a
// pressed one of the same size and allowance when the two were tested: along, before
// it was pushed out, and round, before it turned. It is one series of tests and no
// figure to design by; the friction coefficients of today differ by about two, see
// Frictions.
//
// Source: Jones, Turning and Boring.
func ShrunkAgainstPressed() (along, round float64) { return 3.66, 3.2 }
