package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A RateConstant says which published constant the rate of a torsion spring is
// reckoned with. They give three different answers for the same spring, so a
// Torsion keeps to one for everything that it says.
type RateConstant int

const (
	// TheoryRate is the bending of a bar, E d⁴/(64 D N) a radian, which is
	// E d⁴/(10.186 D N) a turn and E d⁴/(3667 D N) a degree. It is the constant
	// unless another is named.
	TheoryRate RateConstant = iota
	// Allowance108 is the design constant 10.8 a turn in place of 10.186, for the
	// friction of coils and arbor seen in tests: the angle comes out 6.0 per cent
	// larger, the rate 5.7 per cent lower. Square and rectangular wire: 6.6 in
	// place of 6 (from memory). Shigley, eq. 10-51; Spring Manufacturers Institute.
	Allowance108
	// Handbook4000 is the design constant 4000 a degree in place of 3667: the angle
	// 9.1 per cent larger, the rate 8.3 per cent lower. Square wire: 2375 in place
	// of 2160. Machinery's Handbook, 31st ed., p. 334, Table 13. There is none
	// for rectangular wire.
	Handbook4000
)

// String names the constant.
func (c RateConstant) String() string {
	switch c {
	case TheoryRate:
		return "theory"
	case Allowance108:
		return "design constant 10.8"
	case Handbook4000:
		return "handbook constant 4000"
	}
	return fmt.Sprintf("RateConstant(%d)", int(c))
}

// angleFactor returns how much larger than in theory the angle comes out, 0 where
// the constant has no figure for the shape.
func (c RateConstant) angleFactor(s shape) float64 {
	switch {
	case c == TheoryRate:
		return 1
	case c == Allowance108 && s == round:
		return 10.8 * math.Pi / 32
	case c == Allowance108:
		return 6.6 / 6
	case c == Handbook4000 && s == round:
		return 4000 * math.Pi / 11520
	case c == Handbook4000 && s == square:
		return 2375.0 / 2160
	}
	return 0
}

// A TorsionSpec describes a helical torsion spring. Give one of the three
// diameters, and leave the other two 0.
type TorsionSpec struct {
	Wire            Section
	MeanDiameter    units.Length
	InsideDiameter  units.Length
	OutsideDiameter units.Length
	BodyTurns       float64         // N_b, of the coiled body, part turns counted
	Legs            [2]units.Length // straight tangential legs, from the coil to where the load acts
	Pitch           units.Length    // 0 for coils that touch
	Material        Material
	Constant        RateConstant  // TheoryRate unless named
	Curvature       CurvatureRule // WahlInside unless named
}

// A Torsion is a helical torsion spring, checked. Angles of wind are measured from
// the free state, positive in the direction that makes the coil smaller, which is
// the way such a spring should be loaded.
type Torsion struct {
	spec      TorsionSpec
	mean      float64 // m
	active    float64 // turns, with the legs' share
	rate      float64 // N m/rad
	curvature float64
}

// NewTorsion checks a helical torsion spring. The error is units.ErrDomain for
// a size or number of turns that is not more than 0, a mean diameter not above
// the thickness of the wire, a pitch below the width of the wire, none or two of
// the diameters, a material without Young's modulus, or a constant that does not
// go with the section.
func NewTorsion(spec TorsionSpec) (Torsion, error) {
	mean, err := spec.meanDiameter()
	if err != nil {
		return Torsion{}, err
	}
	err = first(
		spec.Material.check(), spec.Curvature.check(spec.Wire), positive("body turns", spec.BodyTurns),
		notNegative("first leg", spec.Legs[0]), notNegative("second leg", spec.Legs[1]), notNegative("pitch", spec.Pitch),
	)
	if err != nil {
		return Torsion{}, err
	}
	factor := spec.Constant.angleFactor(spec.Wire.shape)
	switch {
	case factor == 0:
		return Torsion{}, fmt.Errorf("%v for %v wire: it has no such figure, want TheoryRate or Allowance108: %w", spec.Constant, spec.Wire, units.ErrDomain)
	case spec.Pitch != 0 && spec.Pitch < spec.Wire.Width():
		return Torsion{}, fmt.Errorf("pitch %v: want %v or more, the wire, or 0 for coils that touch: %w", spec.Pitch, spec.Wire.Width(), units.ErrDomain)
	}
	e, err := spec.Material.YoungsModulus(spec.Wire.Thickness())
	if err != nil {
		return Torsion{}, err
	}
	t := Torsion{spec: spec, mean: float64(mean)}
	t.active = spec.BodyTurns + float64(spec.Legs[0]+spec.Legs[1])/(3*math.Pi*t.mean) // Shigley, eq. 10-48
	t.rate = float64(e) * spec.Wire.inertia() / (math.Pi * t.mean * t.active * factor)
	t.curvature = spec.Curvature.factor(spec.Wire, t.Index())
	return t, nil
}

// meanDiameter finds D from whichever diameter was given.
func (spec TorsionSpec) meanDiameter() (units.Length, error) {
	if err := spec.Wire.check(); err != nil {
		return 0, err
	}
	return meanDiameter(spec.Wire, spec.MeanDiameter, spec.InsideDiameter, spec.OutsideDiameter)
}

func meanDiameter(wire Section, mean, inside, outside units.Length) (units.Length, error) {
	given := 0
	for _, d := range [...]units.Length{mean, inside, outside} {
		if d != 0 {
			given++
		}
	}
	if given != 1 {
		return 0, fmt.Errorf("%d diameters given: want one of mean, inside and outside: %w", given, units.ErrDomain)
	}
	t := wire.Thickness()
	switch {
	case inside != 0:
		mean = inside + t
	case outside != 0:
		mean = outside - t
	}
	if !(mean > t) || math.IsInf(float64(mean), 0) {
		return 0, fmt.Errorf("mean diameter %v: want more than %v, the wire: %w", mean, t, units.ErrDomain)
	}
	return mean, nil
}

// Index returns the spring index C, mean diameter over the radial size of the
// wire.
func (t Torsion) Index() float64 { return t.mean / t.spec.Wire.thickness }

// MeanDiameter returns the free mean diameter D.
func (t Torsion) MeanDiameter() units.Length { return units.Length(t.mean) }

// Wire returns the section of the wire.
func (t Torsion) Wire() Section { return t.spec.Wire }

// Material returns what the spring is made of.
func (t Torsion) Material() Material { return t.spec.Material }

// BodyTurns returns the turns of the coiled body.
func (t Torsion) BodyTurns() float64 { return t.spec.BodyTurns }

// LegTurns returns the turns to which the bending of both legs is equal:
//
//	N_e = (l₁ + l₂) / (3 π D)
//
// Source: Shigley, eq. 10-48.
func (t Torsion) LegTurns() float64 { return t.active - t.spec.BodyTurns }

// ActiveTurns returns N_a = N_b + N_e.
func (t Torsion) ActiveTurns() float64 { return t.active }

// Constant returns the constant that the rate is reckoned with.
func (t Torsion) Constant() RateConstant { return t.spec.Constant }

// Rate returns the torque for an angle of wind, by the spring's constant:
//
//	k = E I / (π D N_a)  =  E d⁴ / (64 D N_a) for round wire, in theory
//
// Source: Shigley, eq. 10-50 and 10-51; EN 13906-3; see RateConstant.
func (t Torsion) Rate() units.TorsionalStiffness { return units.TorsionalStiffness(t.rate) }

// Torque returns the torque when wound by the given angle from the free state.
// It is negative when the spring is opened.
func (t Torsion) Torque(wind units.Angle) units.Torque {
	return units.Torque(t.rate * float64(wind))
}

// Angle returns the angle of wind at the given torque.
func (t Torsion) Angle(torque units.Torque) units.Angle {
	return units.Angle(float64(torque) / t.rate)
}

// BodyAngle returns the part of an angle of wind that is in the coiled body: the
// rest is the bending of the legs.
func (t Torsion) BodyAngle(wind units.Angle) units.Angle {
	return units.Angle(float64(wind) * t.spec.BodyTurns / t.active)
}

// CurvatureFactor returns the factor in the stress, by the spring's rule.
func (t Torsion) CurvatureFactor() float64 { return t.curvature }

// Stress returns the greatest bending stress at a torque, on the inside of the
// coil:
//
//	σ = K 32 M / (π d³) round     σ = K 6 M / (b t²) rectangular
//
// with K by the spring's CurvatureRule. It is the size of the stress, without a
// sign. Opened against the winding direction a spring meets what coiling left
// in the wire the wrong way, and sets or breaks at less than this sum allows.
//
// Source: Shigley, eq. 10-43 and 10-44; EN 13906-3.
func (t Torsion) Stress(torque units.Torque) units.Pressure {
	return units.Pressure(t.curvature * math.Abs(float64(torque)) / t.spec.Wire.modulus())
}

// TorqueAtStress is Stress read the other way.
func (t Torsion) TorqueAtStress(stress units.Pressure) units.Torque {
	return units.Torque(float64(stress) * t.spec.Wire.modulus() / t.curvature)
}

// SafeWind returns the angle of wind at which the stress is what the duty allows,
// and what that rests on. The error is that of Material.Allowable.
func (t Torsion) SafeWind(duty Duty) (units.Angle, Allowable, error) {
	a, err := t.spec.Material.Allowable(duty, t.spec.Wire.Thickness())
	if err != nil {
		return 0, a, err
	}
	return t.Angle(t.TorqueAtStress(a.Stress)), a, nil
}

// Energy returns what the spring stores when wound by the given angle,
// U = M θ / 2, the area under the line of torque.
func (t Torsion) Energy(wind units.Angle) units.Energy {
	return units.Energy(t.rate * float64(wind) * float64(wind) / 2)
}

// OpenCoil returns how far the spring turns and how much longer it grows under
// a torque about its axis when it is coiled open, at a helix angle that is not
// small:
//
//	φ = M L (cos²α/(E I) + sin²α/(G J))     L = π D N / cos α
//	x = ½ D M L sin α cos α (1/(G J) − 1/(E I))
//
// It is theory for round wire, whatever the spring's constant, for the body
// alone. The error is units.ErrDomain for other wire, no shear modulus, or a helix
// angle outside 0° to 80°.
//
// Source: strength of materials (as in Junnarkar, Mechanics of Structures, ex. 19).
func (t Torsion) OpenCoil(torque units.Torque, helix units.Angle) (units.Angle, units.Length, error) {
	s := t.spec
	if s.Wire.shape != round || !(helix >= 0 && helix <= 80*units.Degree) {
		return 0, 0, fmt.Errorf("%v wire at a helix of %v: want round wire and 0° to 80°: %w", s.Wire, helix, units.ErrDomain)
	}
	g, err := s.Material.ShearModulus(s.Wire.Thickness())
	if err != nil {
		return 0, 0, err
	}
	e, _ := s.Material.YoungsModulus(s.Wire.Thickness()) // checked when made
	sin, cos := helix.Sincos()
	length := math.Pi * t.mean * s.BodyTurns / cos
	bend, twist := float64(e)*s.Wire.inertia(), float64(g)*2*s.Wire.inertia()
	phi := float64(torque) * length * (cos*cos/bend + sin*sin/twist)
	x := t.mean / 2 * float64(torque) * length * sin * cos * (1/twist - 1/bend)
	return units.Angle(phi), units.Length(x), nil
}
