package springs

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/units"
)

// An OuterEnd says how the outer end of a flat spiral spring is held.
type OuterEnd int

const (
	// Clamped: held fast, so that it cannot turn.
	Clamped OuterEnd = iota
	// Pinned: on a pin, free to turn about it.
	Pinned
	// Hooked: a hook or eye over a post, which is a pinned end.
	Hooked
)

// String names the end.
func (e OuterEnd) String() string {
	switch e {
	case Clamped:
		return "clamped"
	case Pinned:
		return "pinned"
	case Hooked:
		return "hooked"
	}
	return fmt.Sprintf("OuterEnd(%d)", int(e))
}

// A PinnedFactor says by how much the rotation of a spiral with a pinned or
// hooked outer end is taken to exceed that of a clamped one, M L/(E I). Published
// practice differs.
type PinnedFactor int

const (
	// PinnedByShape: 5/4 + (r_in/r_out)²/4, the mean square of the moment over an
	// evenly pitched spiral (derived here; it agrees with a numerical elastica).
	// It needs the diameters.
	PinnedByShape PinnedFactor = iota
	// PinnedFiveQuarters: 1.25, the limit of many coils and a small arbor. Roark;
	// Wahl (from memory).
	PinnedFiveQuarters
	// PinnedUnincreased: 1, as British and Indian textbooks have it. Bhandari,
	// Design of Machine Elements, ex. 10.22.
	PinnedUnincreased
)

// String names the convention.
func (p PinnedFactor) String() string {
	switch p {
	case PinnedByShape:
		return "by shape"
	case PinnedFiveQuarters:
		return "1.25"
	case PinnedUnincreased:
		return "not increased"
	}
	return fmt.Sprintf("PinnedFactor(%d)", int(p))
}

// A SpiralSpec describes a flat spiral spring whose coils are free of one another:
// a return spring with open coils, a hairspring, a brush spring. A spring in a
// barrel, whose coils lie on one another, is a Barrel.
//
// Give the Length of the strip, or the diameters and the Turns, from which the
// length follows. Without diameters the answers about room and side pull are
// refused.
type SpiralSpec struct {
	Width, Thickness units.Length
	Length           units.Length // between the points where it is held
	Turns            float64      // when free, in place of Length
	InnerDiameter    units.Length // on which the first coil starts
	OuterDiameter    units.Length // on which the outer end is held
	OuterEnd         OuterEnd
	Factor           PinnedFactor // for pinned and hooked ends
	Material         Material
}

// A Spiral is a flat spiral spring with free coils, checked. Angles of wind are
// measured from the free state.
type Spiral struct {
	spec    SpiralSpec
	section Section
	length  float64 // m
	turns   float64 // 0 without diameters
	e       float64 // Pa
	factor  float64
	shape   spiralShape
}

// NewSpiral checks a flat spiral spring. The error is units.ErrDomain for a size
// that is not more than 0, diameters that do not rise outwards, neither or both
// of Length and Turns, coils that touch when free, more than 500 turns, a
// pinned end by shape without diameters, or a material without Young's modulus.
func NewSpiral(spec SpiralSpec) (Spiral, error) {
	section, err := RectangularWire(spec.Width, spec.Thickness)
	if err != nil {
		return Spiral{}, err
	}
	s := Spiral{spec: spec, section: section}
	if err := first(spec.Material.check(), spec.checkEnds(), s.measure()); err != nil {
		return Spiral{}, err
	}
	e, err := spec.Material.YoungsModulus(spec.Thickness)
	s.e, s.factor = float64(e), s.deflectionFactor()
	return s, err
}

func (spec SpiralSpec) checkEnds() error {
	switch {
	case spec.OuterEnd < Clamped || spec.OuterEnd > Hooked:
		return fmt.Errorf("outer end %d: want Clamped, Pinned or Hooked: %w", int(spec.OuterEnd), units.ErrDomain)
	case spec.Factor < PinnedByShape || spec.Factor > PinnedUnincreased:
		return fmt.Errorf("pinned factor %d: want PinnedByShape, PinnedFiveQuarters or PinnedUnincreased: %w", int(spec.Factor), units.ErrDomain)
	case spec.OuterEnd != Clamped && spec.Factor == PinnedByShape && spec.OuterDiameter == 0:
		return fmt.Errorf("%v outer end without diameters: want them, or another PinnedFactor: %w", spec.OuterEnd, units.ErrDomain)
	}
	return nil
}

// measure finds length and turns from whichever was given.
func (s *Spiral) measure() error {
	spec := s.spec
	if (spec.Length == 0) == (spec.Turns == 0) {
		return fmt.Errorf("length %v and %.4g turns: want one of the two: %w", spec.Length, spec.Turns, units.ErrDomain)
	}
	if spec.InnerDiameter == 0 && spec.OuterDiameter == 0 {
		s.length = float64(spec.Length)
		return positive("length of the strip", spec.Length)
	}
	if err := positive("inner diameter", spec.InnerDiameter); err != nil {
		return err
	}
	if !(spec.OuterDiameter > spec.InnerDiameter) || math.IsInf(float64(spec.OuterDiameter), 0) {
		return fmt.Errorf("outer diameter %v: want more than %v, the inner one: %w", spec.OuterDiameter, spec.InnerDiameter, units.ErrDomain)
	}
	perTurn := math.Pi / 2 * float64(spec.InnerDiameter+spec.OuterDiameter)
	s.length, s.turns = float64(spec.Length), spec.Turns
	if spec.Turns == 0 {
		s.turns = s.length / perTurn
	} else {
		s.length = s.turns * perTurn
	}
	if !(s.turns > 0 && s.turns <= 500) {
		return fmt.Errorf("%.4g turns: want more than 0, 500 at most: %w", s.turns, units.ErrDomain)
	}
	if pitch := s.pitch(); !(pitch > float64(spec.Thickness)) {
		return fmt.Errorf("%.4g turns between %v and %v leave %v a coil: want more than %v, the strip: %w",
			s.turns, spec.InnerDiameter, spec.OuterDiameter, units.Length(pitch), spec.Thickness, units.ErrDomain)
	}
	s.shape = solveSpiral(float64(spec.InnerDiameter/2), float64(spec.OuterDiameter/2), s.turns, spec.OuterEnd != Clamped)
	return nil
}

func (s Spiral) pitch() float64 {
	return float64(s.spec.OuterDiameter-s.spec.InnerDiameter) / 2 / s.turns
}

func (s Spiral) deflectionFactor() float64 {
	switch {
	case s.spec.OuterEnd == Clamped || s.spec.Factor == PinnedUnincreased:
		return 1
	case s.spec.Factor == PinnedFiveQuarters:
		return 1.25
	}
	ratio := float64(s.spec.InnerDiameter / s.spec.OuterDiameter)
	return 1.25 + ratio*ratio/4
}

// Length returns the length of strip.
func (s Spiral) Length() units.Length { return units.Length(s.length) }

// Turns returns the turns when free. The error is units.ErrDomain for a spiral
// without diameters.
func (s Spiral) Turns() (float64, error) { return s.turns, s.needsDiameters() }

func (s Spiral) needsDiameters() error {
	if s.turns == 0 {
		return fmt.Errorf("spiral without diameters: want InnerDiameter and OuterDiameter for this: %w", units.ErrDomain)
	}
	return nil
}

// DeflectionFactor returns how many times M L/(E I) the rotation is taken to be:
// 1 for a clamped end, for the others by the PinnedFactor.
func (s Spiral) DeflectionFactor() float64 { return s.factor }

// Rate returns the torque for an angle of wind:
//
//	k = E I / (f L)     I = b t³/12, f the deflection factor
//
// Source: Roark; Wahl (from memory); Bhandari, ch. 10.
func (s Spiral) Rate() units.TorsionalStiffness {
	return units.TorsionalStiffness(s.e * s.section.inertia() / (s.factor * s.length))
}

// Torque returns the torque when wound by the given angle from the free state.
func (s Spiral) Torque(wind units.Angle) units.Torque {
	return units.Torque(float64(s.Rate()) * float64(wind))
}

// Angle returns the angle of wind at the given torque.
func (s Spiral) Angle(torque units.Torque) units.Angle {
	return units.Angle(float64(torque) / float64(s.Rate()))
}

// stressFactor is how many times the mean moment the published stress rests on.
func (s Spiral) stressFactor() float64 {
	if s.spec.OuterEnd == Clamped {
		return 1
	}
	return 2
}

// Stress returns the greatest bending stress as published:
//
//	σ = 6 M / (b t²) clamped     σ = 12 M / (b t²) pinned or hooked
//
// With the end on a pin the moment doubles on the far side of the arbor. With
// few coils a clamped spiral too has a moment that is not even; PeakStress has
// it.
//
// Source: Bhandari, ex. 10.22; Roark; Wahl (from memory).
func (s Spiral) Stress(torque units.Torque) units.Pressure {
	return units.Pressure(s.stressFactor() * math.Abs(float64(torque)) / s.section.modulus())
}

// TorqueAtStress is Stress read the other way.
func (s Spiral) TorqueAtStress(stress units.Pressure) units.Torque {
	return units.Torque(float64(stress) * s.section.modulus() / s.stressFactor())
}

// SafeWind returns the angle of wind at which Stress is what the duty allows. The
// error is that of Material.Allowable.
func (s Spiral) SafeWind(duty Duty) (units.Angle, Allowable, error) {
	a, err := s.spec.Material.Allowable(duty, s.spec.Thickness)
	if err != nil {
		return 0, a, err
	}
	return s.Angle(s.TorqueAtStress(a.Stress)), a, nil
}

// Energy returns what the spring stores when wound by the given angle, U = M θ / 2.
func (s Spiral) Energy(wind units.Angle) units.Energy {
	return units.Energy(float64(s.Rate()) * float64(wind) * float64(wind) / 2)
}

// Material returns what the spring is made of.
func (s Spiral) Material() Material { return s.spec.Material }

// Strip returns the section of the strip.
func (s Spiral) Strip() Section { return s.section }

// CoilGap returns the mean gap between coils when wound by the given angle, the
// coils being spread evenly from the arbor out. Below 0 the coils touch: the rate
// rises and the formulas end. The error is units.ErrDomain for a spiral without
// diameters, or one opened by all its turns.
func (s Spiral) CoilGap(wind units.Angle) (units.Length, error) {
	if err := s.needsDiameters(); err != nil {
		return 0, err
	}
	n := s.turns + wind.Turns()
	if !(n > 0) {
		return 0, fmt.Errorf("opened by %v: want less than %v, all its turns: %w", -wind, units.Angle(s.turns)*units.Turn, units.ErrDomain)
	}
	pitch := (s.length/(math.Pi*n) - float64(s.spec.InnerDiameter)) / n
	return units.Length(pitch) - s.spec.Thickness, nil
}

// TouchAngle returns the wind at which the gap has gone all the way round: the
// strip lies solid on the arbor. The error is units.ErrDomain for a spiral
// without diameters.
func (s Spiral) TouchAngle() (units.Angle, error) {
	if err := s.needsDiameters(); err != nil {
		return 0, err
	}
	n := turnsOnArbor(float64(s.spec.InnerDiameter), s.length, s.section.thickness)
	return units.Angle(n-s.turns) * units.Turn, nil
}

// Period returns the time of one swing there and back of a balance of the given
// moment of inertia on the spiral, T = 2π √(J/k). The error is units.ErrDomain for
// an inertia that is not more than 0, or a swing of more than a hundred years.
func (s Spiral) Period(balance units.MomentOfInertia) (time.Duration, error) {
	if err := positive("moment of inertia", balance); err != nil {
		return 0, err
	}
	return duration(2 * math.Pi * math.Sqrt(float64(balance)/float64(s.Rate())))
}
