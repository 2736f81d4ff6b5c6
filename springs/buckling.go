package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Seating says how the ends of a compression spring are held against leaning.
type Seating int

const (
	// BothFlat: between two flat parallel seats, α = 0.5.
	BothFlat Seating = iota
	// FlatAndHinged: one flat seat, one free to tilt, α = 0.707.
	FlatAndHinged
	// BothHinged: both free to tilt, α = 1.
	BothHinged
	// FlatAndFree: one flat seat, the other end free, α = 2.
	FlatAndFree
)

// String describes the seating.
func (s Seating) String() string {
	switch s {
	case BothFlat:
		return "both ends flat"
	case FlatAndHinged:
		return "one end hinged"
	case BothHinged:
		return "both ends hinged"
	case FlatAndFree:
		return "one end free"
	}
	return fmt.Sprintf("Seating(%d)", int(s))
}

// endCondition returns α, Shigley, Table 10-2.
func (s Seating) endCondition() (float64, error) {
	if s < BothFlat || s > FlatAndFree {
		return 0, fmt.Errorf("seating %d: want BothFlat, FlatAndHinged, BothHinged or FlatAndFree: %w", int(s), units.ErrDomain)
	}
	return [...]float64{0.5, 0.707, 1, 2}[s], nil
}

// StableLength returns the free length below which the spring cannot buckle
// however far it is pressed:
//
//	L₀ = (π D/α) √(2 (E − G)/(2 G + E))     2.63 D/α for steel
//
// The error is units.ErrDomain for a seating that is not one, or a material
// without Young's modulus or with one not above the shear modulus.
//
// Source: Shigley, eq. 10-12 and Table 10-2.
func (c Compression) StableLength(seating Seating) (units.Length, error) {
	alpha, err := seating.endCondition()
	if err != nil {
		return 0, err
	}
	e, g, err := c.moduli()
	if err != nil {
		return 0, err
	}
	return units.Length(math.Pi * c.mean / alpha * math.Sqrt(2*(e-g)/(2*g+e))), nil
}

func (c Compression) moduli() (e, g float64, err error) {
	d := c.spec.Wire.Thickness()
	young, err := c.spec.Material.YoungsModulus(d)
	if err != nil {
		return 0, 0, err
	}
	shear, _ := c.spec.Material.ShearModulus(d) // checked when made
	if !(young > shear) {
		return 0, 0, fmt.Errorf("%v: Young's modulus %v: want more than %v, the shear modulus: %w", c.spec.Material, young, shear, units.ErrDomain)
	}
	return float64(young), float64(shear), nil
}

// BucklingDeflection returns the deflection at which the spring buckles:
//
//	y = L₀ (E/(2(E − G))) (1 − √(1 − (2π²(E − G)/(2G + E))/λ²))     λ = α L₀/D
//
// The error is units.ErrDomain for a spring that is stable at any deflection, or
// that has no free length, and as for StableLength.
//
// Source: Shigley, eq. 10-10 (from memory).
func (c Compression) BucklingDeflection(seating Seating) (units.Length, error) {
	stable, err := c.StableLength(seating)
	if err := first(err, c.needsLength()); err != nil {
		return 0, err
	}
	l0 := c.spec.FreeLength
	if l0 <= stable {
		return 0, fmt.Errorf("free length %v, %v: it does not buckle below %v: %w", l0, seating, stable, units.ErrDomain)
	}
	e, g, err := c.moduli()
	alpha, _ := seating.endCondition()
	lambda := alpha * float64(l0) / c.mean
	x := 2 * math.Pi * math.Pi * (e - g) / (2*g + e) / (lambda * lambda)
	return units.Length(float64(l0) * e / (2 * (e - g)) * x / (1 + math.Sqrt(1-x))), err
}

// Zimmerli returns the shear stresses, alternating and mean, that spring steel wire
// below 10 mm bears without end whatever its strength.
//
// Source: Zimmerli, as given in Shigley, sec. 10-9 (from memory).
func Zimmerli(peened bool) (alternating, mean units.Pressure) {
	if peened {
		return zimmerliAlternatingPeened * units.Megapascal, zimmerliMeanPeened * units.Megapascal
	}
	return zimmerliAlternating * units.Megapascal, zimmerliMean * units.Megapascal
}

// FatigueFactor returns the factor of safety against breaking in the long run when
// the force swings between two values, by Goodman's line through Zimmerli's
// figures, with a shear strength of 0.67 of the least tensile strength:
//
//	S_se = S_sa / (1 − S_sm/S_su)     n = 1 / (τ_a/S_se + τ_m/S_su)
//
// The error is units.ErrDomain for forces that are not 0 ≤ low < high, wire of 10
// mm or more, or a material without strength on file.
//
// Source: Shigley, sec. 10-9 and eq. 10-30 (from memory).
func (c Compression) FatigueFactor(low, high units.Force, peened bool) (float64, error) {
	d := c.spec.Wire.Thickness()
	if !(low >= 0 && high > low) || math.IsInf(float64(high), 0) || !(d < 10*units.Millimetre) {
		return 0, fmt.Errorf("force from %v to %v on wire %v: want 0 or more, rising, and less than 10 mm: %w", low, high, d, units.ErrDomain)
	}
	s, err := c.spec.Material.Strength(d)
	if err != nil {
		return 0, err
	}
	alternating, mean := Zimmerli(peened)
	ultimate := 0.67 * float64(s.Least)
	if !(ultimate > float64(mean)) {
		return 0, fmt.Errorf("%v of %v: shear strength %v is not above Zimmerli's mean %v: %w", c.spec.Material, d, units.Pressure(ultimate), mean, units.ErrDomain)
	}
	endurance := float64(alternating) / (1 - float64(mean)/ultimate)
	return 1 / (float64(c.Stress((high-low)/2))/endurance + float64(c.Stress((high+low)/2))/ultimate), nil
}
