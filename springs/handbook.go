package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// HandbookShearModulus is the modulus behind the compression spring tables of
// Machinery's Handbook, 31st ed., Table 5, pp. 321-322, 11.2 million pounds per
// square inch, found from the printed deflections.
const HandbookShearModulus = 11.2e6 * units.PoundPerSquareInch

// HandbookDesignStress returns the design stress of Machinery's Handbook for a
// torsion spring before any curvature factor: tabled for music wire (0.055 in to
// 1/8 in) and oil-tempered wire (0.135 in to 1/4 in), and by the factors of its
// Table 15 for other materials over both. A size between two printed ones has
// the stress of the larger. The error is units.ErrDomain outside the tables.
//
// Source: Machinery's Handbook, 31st ed., Table 14, pp. 340-341, and Table 15,
// p. 343.
func HandbookDesignStress(g Grade, diameter units.Length) (units.Pressure, error) {
	in := diameter.Inches()
	table := handbookMusicWire[:]
	if g == OilTemperedA229ClassI || g != MusicWireA228 && in > handbookMusicWire[len(handbookMusicWire)-1].size*sameSize {
		table = handbookOilTempered[:]
	}
	factor, ok := handbookFactor(g, in)
	if ok && in >= table[0].size/sameSize {
		for _, r := range table {
			if in <= r.size*sameSize {
				return units.Pressure(factor*r.stress) * units.KilopoundPerSquareInch, nil
			}
		}
	}
	return 0, fmt.Errorf("%v of %v: no design stress in the handbook's table: %w", g, diameter, units.ErrDomain)
}

func handbookFactor(g Grade, inches float64) (float64, bool) {
	if g == MusicWireA228 || g == OilTemperedA229ClassI {
		return 1, true
	}
	for _, r := range handbookFactors {
		if r.grade == g && (r.upTo == 0 || inches <= r.upTo*sameSize) {
			return r.factor, true
		}
	}
	return 0, false
}

// HandbookYoungsModulus returns the modulus behind the deflections of
// Machinery's Handbook, Table 14, found from the printed values: 29.0 million
// pounds per square inch up to 0.063 in, 28.5 above. The error is
// units.ErrDomain outside 0.055 in to 0.135 in, where none was worked out.
//
// Source: Machinery's Handbook, 31st ed., Table 14, pp. 340-341.
func HandbookYoungsModulus(diameter units.Length) (units.Pressure, error) {
	in := diameter.Inches()
	switch {
	case !(in >= 0.055/sameSize && in <= 0.135*sameSize):
		return 0, fmt.Errorf("wire %v: want 0.055 in to 0.135 in: %w", diameter, units.ErrDomain)
	case in <= 0.063*sameSize:
		return 29.0e6 * units.PoundPerSquareInch, nil
	}
	return 28.5e6 * units.PoundPerSquareInch, nil
}

// HandbookDeflection returns the angle through which one coil of a torsion
// spring of round wire turns at a given stress, by the handbook's own constant:
//
//	F = 392 S D / (E d)   degrees a coil
//
// Pure theory has 360 in place of 392: the handbook's angle is 8.9 per cent
// larger, an allowance for friction found by trial. Its companion constant for
// torque is that of Handbook4000; the two sets agree within 0.2 per cent.
//
// Source: Machinery's Handbook, 31st ed., p. 334.
func HandbookDeflection(stress units.Pressure, mean, wire units.Length, e units.Pressure) units.Angle {
	return units.Angle(392*float64(stress)*float64(mean/wire)/float64(e)) * units.Degree
}

// HandbookTorque returns the torque of round wire at a stress with the handbook's
// rounded constant, T = 0.0982 S d³, which is π/32 within 0.03 per cent.
//
// Source: Machinery's Handbook, 31st ed., p. 334.
func HandbookTorque(stress units.Pressure, wire units.Length) units.Torque {
	d := float64(wire)
	return units.Torque(0.0982 * float64(stress) * d * d * d)
}

// HandbookSquareTorque is HandbookTorque for square wire, T = 0.1666 S d³.
//
// Source: Machinery's Handbook, 31st ed., p. 334.
func HandbookSquareTorque(stress units.Pressure, side units.Length) units.Torque {
	d := float64(side)
	return units.Torque(0.1666 * float64(stress) * d * d * d)
}

// CoilDeflection returns how far one coil of a compression or extension spring of
// round wire moves at shear stress S without any factor, f = π S D² / (G d).
//
// Source: Machinery's Handbook, 31st ed., p. 318.
func CoilDeflection(stress units.Pressure, mean, wire units.Length, g units.Pressure) units.Length {
	return units.Length(math.Pi * float64(stress) * float64(mean) * float64(mean) / (float64(g) * float64(wire)))
}

// CoilLoad returns the load at shear stress S without any factor, P = π S d³ / (8 D).
//
// Source: Machinery's Handbook, 31st ed., p. 318.
func CoilLoad(stress units.Pressure, mean, wire units.Length) units.Force {
	d := float64(wire)
	return units.Force(math.Pi * float64(stress) * d * d * d / (8 * float64(mean)))
}

// SquareCoilLoad returns the load of a spring of square wire, side a, at shear
// stress S, P = 0.416 S a³ / D, which is Saint-Venant's torsion modulus 0.208 a³.
//
// Source: Machinery's Handbook, 31st ed., p. 318.
func SquareCoilLoad(stress units.Pressure, mean, side units.Length) units.Force {
	a := float64(side)
	return units.Force(0.416 * float64(stress) * a * a * a / float64(mean))
}

// SquareCoilDeflection returns how far one coil of square wire moves at shear
// stress S, f = 2.32 S D² / (G a).
//
// Source: Machinery's Handbook, 31st ed., p. 318.
func SquareCoilDeflection(stress units.Pressure, mean, side units.Length, g units.Pressure) units.Length {
	return units.Length(2.32 * float64(stress) * float64(mean) * float64(mean) / (float64(g) * float64(side)))
}

// InitialTensionStress returns the shear stress that the initial tension of an
// extension spring puts into its wire, from the stress S that belongs to the load
// P_d that stretches it (the load less the initial tension IT):
//
//	S_IT = S IT / P_d
//
// The handbook calls P_d simply P. The error is units.ErrDomain for a stretching
// load that is not above 0.
//
// Source: Machinery's Handbook, 31st ed., p. 318.
func InitialTensionStress(stress units.Pressure, initialTension, stretching units.Force) (units.Pressure, error) {
	if err := positive("load that stretches the spring", stretching); err != nil {
		return 0, err
	}
	return units.Pressure(float64(stress) * float64(initialTension/stretching)), nil
}
