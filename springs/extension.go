package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// An ExtensionSpec describes a helical extension spring of round wire with hooks.
// Give one of the three diameters, and leave the other two 0.
type ExtensionSpec struct {
	Wire            Section
	MeanDiameter    units.Length
	InsideDiameter  units.Length
	OutsideDiameter units.Length
	BodyTurns       float64      // N_b
	InitialTension  units.Force  // F_i, that the coils are wound with; 0 for none
	HookRadius      units.Length // r₁, mean radius of the hook; 0: half the mean diameter
	BendRadius      units.Length // r₂, mean radius of the bend between body and hook; 0 if not judged
	Material        Material
	Shear           ShearRule
}

// An Extension is a helical extension spring, checked.
type Extension struct {
	spec   ExtensionSpec
	mean   float64
	active float64
	rate   float64
	factor float64
}

// NewExtension checks an extension spring. The error is units.ErrDomain for a size
// that is not more than 0, none or two of the diameters, other than round wire, a
// hook or bend too tight to be, or a material without both moduli.
func NewExtension(spec ExtensionSpec) (Extension, error) {
	err := first(spec.Wire.check(), spec.Material.check(), spec.Shear.check(), positive("body turns", spec.BodyTurns),
		notNegative("initial tension", spec.InitialTension), notNegative("hook radius", spec.HookRadius), notNegative("bend radius", spec.BendRadius))
	if err != nil {
		return Extension{}, err
	}
	if spec.Wire.shape != round {
		return Extension{}, fmt.Errorf("wire %v: want round wire: %w", spec.Wire, units.ErrDomain)
	}
	mean, err := meanDiameter(spec.Wire, spec.MeanDiameter, spec.InsideDiameter, spec.OutsideDiameter)
	if err != nil {
		return Extension{}, err
	}
	x := Extension{spec: spec, mean: float64(mean)}
	if spec.HookRadius == 0 {
		x.spec.HookRadius = mean / 2
	}
	d := spec.Wire.Thickness()
	if !(x.spec.HookRadius > d/2) || spec.BendRadius != 0 && !(spec.BendRadius > d/2) {
		return Extension{}, fmt.Errorf("hook radius %v, bend radius %v: want more than %v, half the wire: %w", x.spec.HookRadius, spec.BendRadius, d/2, units.ErrDomain)
	}
	e, err := spec.Material.YoungsModulus(d)
	if err != nil {
		return Extension{}, err
	}
	g, err := spec.Material.ShearModulus(d)
	x.active = spec.BodyTurns + float64(g/e) // Shigley, eq. 10-40
	x.rate = float64(g) * spec.Wire.coilStiffness(x.mean) / x.active
	x.factor = spec.Shear.factor(x.Index())
	return x, err
}

// Index returns the spring index C = D/d.
func (x Extension) Index() float64 { return x.mean / x.spec.Wire.thickness }

// MeanDiameter returns D.
func (x Extension) MeanDiameter() units.Length { return units.Length(x.mean) }

// ShearFactor returns the factor in the stress of the body, by the spring's rule.
func (x Extension) ShearFactor() float64 { return x.factor }

// ActiveTurns returns the turns that work, with the two hooks' share:
// N_a = N_b + G/E.
//
// Source: Shigley, eq. 10-40.
func (x Extension) ActiveTurns() float64 { return x.active }

// Rate returns the force for a stretch beyond the initial tension,
// k = G d⁴ / (8 D³ N_a).
func (x Extension) Rate() units.Stiffness { return units.Stiffness(x.rate) }

// Force returns the force at a stretch from the closed state, F = F_i + k y. At 0
// it is the initial tension, below which the spring does not open.
func (x Extension) Force(stretch units.Length) units.Force {
	return x.spec.InitialTension + units.Force(x.rate*float64(stretch))
}

// Stretch returns how far a force stretches the spring. The error is
// units.ErrDomain for a force below the initial tension.
func (x Extension) Stretch(force units.Force) (units.Length, error) {
	if !(force >= x.spec.InitialTension) {
		return 0, fmt.Errorf("force %v: want %v or more, the initial tension that holds the coils shut: %w", force, x.spec.InitialTension, units.ErrDomain)
	}
	return units.Length(float64(force-x.spec.InitialTension) / x.rate), nil
}

// Stress returns the greatest shear stress in the body under a force,
// τ = K 8 F D / (π d³).
//
// Source: Shigley, eq. 10-7.
func (x Extension) Stress(force units.Force) units.Pressure {
	return units.Pressure(x.factor * math.Abs(float64(force)) * x.mean / x.spec.Wire.coilStrength())
}

// InitialStress returns the shear stress of the initial tension without factor,
// 8 F_i D / (π d³), as tables of what can be wound in have it.
func (x Extension) InitialStress() units.Pressure {
	return units.Pressure(float64(x.spec.InitialTension) * x.mean / x.spec.Wire.coilStrength())
}

// HookBending returns the greatest bending stress in the hook, on its inside where
// it lies across the axis (point A):
//
//	σ = F (K_A 16 D/(π d³) + 4/(π d²))     K_A = (4C₁² − C₁ − 1)/(4C₁(C₁ − 1)), C₁ = 2 r₁/d
//
// Source: Shigley, eq. 10-34 and 10-35.
func (x Extension) HookBending(force units.Force) units.Pressure {
	d := x.spec.Wire.thickness
	k := x.spec.Wire.insideFactor(2 * float64(x.spec.HookRadius) / d)
	return units.Pressure(math.Abs(float64(force)) * (k*16*x.mean/(math.Pi*d*d*d) + 4/(math.Pi*d*d)))
}

// HookTorsion returns the shear stress where the hook leaves the body (point B):
//
//	τ = K_B 8 F D/(π d³)     K_B = (4C₂ − 1)/(4C₂ − 4), C₂ = 2 r₂/d
//
// The error is units.ErrDomain for a spring without a bend radius.
//
// Source: Shigley, eq. 10-36.
func (x Extension) HookTorsion(force units.Force) (units.Pressure, error) {
	if x.spec.BendRadius == 0 {
		return 0, fmt.Errorf("spring without a bend radius: want BendRadius for this: %w", units.ErrDomain)
	}
	c := 2 * float64(x.spec.BendRadius) / x.spec.Wire.thickness
	return units.Pressure((4*c - 1) / (4*c - 4) * math.Abs(float64(force)) * x.mean / x.spec.Wire.coilStrength()), nil
}

// FreeLength returns the length inside the hooks, both full loops of the body's
// diameter: L₀ = 2 (D − d) + (N_b + 1) d.
//
// Source: Shigley, eq. 10-39 (from memory).
func (x Extension) FreeLength() units.Length {
	d := x.spec.Wire.thickness
	return units.Length(2*(x.mean-d) + (x.spec.BodyTurns+1)*d)
}

// Energy returns what the spring stores at a stretch, F_i y + k y²/2.
func (x Extension) Energy(stretch units.Length) units.Energy {
	y := float64(stretch)
	return units.Energy(float64(x.spec.InitialTension)*y + x.rate*y*y/2)
}
