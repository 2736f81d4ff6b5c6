package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// An EndForm says how the ends of a compression spring are finished.
type EndForm int

const (
	// PlainEnds: cut off as coiled. All turns are active; solid length d (N_t + 1).
	PlainEnds EndForm = iota
	// PlainGround: cut off and ground. N_t − 1 active; solid d N_t.
	PlainGround
	// SquaredEnds: last turns closed. N_t − 2 active; solid d (N_t + 1).
	SquaredEnds
	// SquaredGround: closed and ground. N_t − 2 active; solid d N_t.
	SquaredGround
)

// String names the form.
func (f EndForm) String() string {
	switch f {
	case PlainEnds:
		return "plain"
	case PlainGround:
		return "plain and ground"
	case SquaredEnds:
		return "squared"
	case SquaredGround:
		return "squared and ground"
	}
	return fmt.Sprintf("EndForm(%d)", int(f))
}

// deadTurns returns the turns that do no work.
func (f EndForm) deadTurns() float64 { return [...]float64{0, 1, 2, 2}[f] }

// solidTurns returns the thicknesses of wire in the solid length beyond N_t.
func (f EndForm) solidTurns() float64 { return [...]float64{1, 0, 1, 0}[f] }

// A CompressionSpec describes a helical compression spring of round or square
// wire. Give one of the three diameters, and leave the other two 0.
type CompressionSpec struct {
	Wire            Section
	MeanDiameter    units.Length
	InsideDiameter  units.Length
	OutsideDiameter units.Length
	TotalTurns      float64
	Ends            EndForm
	FreeLength      units.Length // 0 if not known
	Material        Material
	Shear           ShearRule // Bergstraesser unless named; square wire: NoShear
}

// A Compression is a helical compression spring, checked.
type Compression struct {
	spec   CompressionSpec
	mean   float64 // m
	active float64
	rate   float64 // N/m
	factor float64
}

// NewCompression checks a compression spring. The error is units.ErrDomain for a
// size that is not more than 0, none or two of the diameters, rectangular wire,
// a rule for round wire on square, turns of which none is active, a free length
// not above the solid one, or a material without shear modulus.
//
// Source of the turns: Shigley, Table 10-1.
func NewCompression(spec CompressionSpec) (Compression, error) {
	if err := spec.check(); err != nil {
		return Compression{}, err
	}
	mean, err := meanDiameter(spec.Wire, spec.MeanDiameter, spec.InsideDiameter, spec.OutsideDiameter)
	if err != nil {
		return Compression{}, err
	}
	g, err := spec.Material.ShearModulus(spec.Wire.Thickness())
	if err != nil {
		return Compression{}, err
	}
	c := Compression{spec: spec, mean: float64(mean), active: spec.TotalTurns - spec.Ends.deadTurns()}
	if !(c.active > 0) || math.IsInf(c.active, 0) {
		return Compression{}, fmt.Errorf("%.4g turns with %v ends: want more than %v: %w", spec.TotalTurns, spec.Ends, spec.Ends.deadTurns(), units.ErrDomain)
	}
	if spec.FreeLength != 0 && !(spec.FreeLength > c.SolidLength()) {
		return Compression{}, fmt.Errorf("free length %v: want more than %v, the solid length: %w", spec.FreeLength, c.SolidLength(), units.ErrDomain)
	}
	c.rate = float64(g) * spec.Wire.coilStiffness(c.mean) / c.active
	c.factor = spec.Shear.factor(c.Index())
	return c, nil
}

func (spec CompressionSpec) check() error {
	err := first(spec.Wire.check(), spec.Material.check(), spec.Shear.check(), notNegative("free length", spec.FreeLength), positive("turns", spec.TotalTurns))
	switch {
	case err != nil:
		return err
	case spec.Wire.shape == rectangular:
		return fmt.Errorf("wire %v: want round or square: %w", spec.Wire, units.ErrDomain)
	case spec.Wire.shape == square && spec.Shear != NoShear:
		return fmt.Errorf("%v factor for square wire: it is for round wire, want NoShear: %w", spec.Shear, units.ErrDomain)
	case spec.Ends < PlainEnds || spec.Ends > SquaredGround:
		return fmt.Errorf("ends %d: want PlainEnds, PlainGround, SquaredEnds or SquaredGround: %w", int(spec.Ends), units.ErrDomain)
	}
	return nil
}

// coilStiffness returns the rate of one coil over the shear modulus: d⁴/(8 D³)
// for round wire, and for square that of the handbook's two constants.
func (s Section) coilStiffness(mean float64) float64 {
	t := s.thickness
	if s.shape == round {
		return t * t * t * t / (8 * mean * mean * mean)
	}
	return 0.416 / 2.32 * t * t * t * t / (mean * mean * mean)
}

// coilStrength returns the force for a stress times the mean diameter, m³.
func (s Section) coilStrength() float64 {
	t := s.thickness
	if s.shape == round {
		return math.Pi * t * t * t / 8
	}
	return 0.416 * t * t * t
}

// Index returns the spring index C = D/d.
func (c Compression) Index() float64 { return c.mean / c.spec.Wire.thickness }

// MeanDiameter returns D.
func (c Compression) MeanDiameter() units.Length { return units.Length(c.mean) }

// Material returns what the spring is made of.
func (c Compression) Material() Material { return c.spec.Material }

// ActiveTurns returns the turns that work.
func (c Compression) ActiveTurns() float64 { return c.active }

// ShearFactor returns the factor in the stress, by the spring's rule.
func (c Compression) ShearFactor() float64 { return c.factor }

// Rate returns the force for a deflection, k = G d⁴ / (8 D³ N_a).
//
// Source: Shigley, eq. 10-9; EN 13906-1; Machinery's Handbook, 31st ed., p. 318.
func (c Compression) Rate() units.Stiffness { return units.Stiffness(c.rate) }

// Force returns the force at a deflection from the free length.
func (c Compression) Force(deflection units.Length) units.Force {
	return units.Force(c.rate * float64(deflection))
}

// Deflection returns the deflection under a force.
func (c Compression) Deflection(force units.Force) units.Length {
	return units.Length(float64(force) / c.rate)
}

// Stress returns the greatest shear stress under a force, τ = K 8 F D / (π d³), K
// by the spring's ShearRule.
//
// Source: Shigley, eq. 10-7.
func (c Compression) Stress(force units.Force) units.Pressure {
	return units.Pressure(c.factor * math.Abs(float64(force)) * c.mean / c.spec.Wire.coilStrength())
}

// ForceAtStress is Stress read the other way.
func (c Compression) ForceAtStress(stress units.Pressure) units.Force {
	return units.Force(float64(stress) * c.spec.Wire.coilStrength() / (c.factor * c.mean))
}

// SolidLength returns the length with all coils touching.
//
// Source: Shigley, Table 10-1.
func (c Compression) SolidLength() units.Length {
	return units.Length((c.spec.TotalTurns + c.spec.Ends.solidTurns()) * c.spec.Wire.thickness)
}

// SolidForce returns the force that closes the spring solid, which it should bear
// without setting. The error is units.ErrDomain for a spring without a free length.
func (c Compression) SolidForce() (units.Force, error) {
	return c.Force(c.spec.FreeLength - c.SolidLength()), c.needsLength()
}

func (c Compression) needsLength() error {
	if c.spec.FreeLength == 0 {
		return fmt.Errorf("spring without a free length: want FreeLength for this: %w", units.ErrDomain)
	}
	return nil
}

// Energy returns what the spring stores at a deflection, F x / 2.
func (c Compression) Energy(deflection units.Length) units.Energy {
	return units.Energy(c.rate * float64(deflection) * float64(deflection) / 2)
}

// Mass returns the mass of the active turns. The error is units.ErrDomain for a
// material without density.
func (c Compression) Mass() (units.Mass, error) {
	rho, err := c.spec.Material.Density()
	return units.Mass(float64(rho) * float64(c.spec.Wire.Area()) * math.Pi * c.mean * c.active), err
}

// SurgeSpeed returns the lowest natural frequency of the spring with both ends
// held, as turns of the vibration per time, so that RevolutionsPerSecond gives
// hertz: f = ½ √(k/m). It should be 15 to 20 times the frequency of working. The
// error is units.ErrDomain for a material without density.
//
// Source: Shigley, eq. 10-25 (from memory); EN 13906-1 has the same for steel.
func (c Compression) SurgeSpeed() (units.AngularSpeed, error) {
	m, err := c.Mass()
	if err != nil {
		return 0, err
	}
	return units.AngularSpeed(math.Sqrt(c.rate/float64(m))/2) * units.RevolutionPerSecond, nil
}
