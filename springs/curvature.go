package springs

import (
	"fmt"

	"example.com/benchsums/units"
)

// A CurvatureRule says which factor raises the bending stress on the inside of
// a coil above that of a straight wire.
type CurvatureRule int

const (
	// WahlInside is K_i, which lies within 0.001 of the exact theory of curved
	// beams for an index from 4 to 20. It is the rule unless another is named.
	WahlInside CurvatureRule = iota
	// StandardInside is q of EN 13906-3, for round wire only: 0.4 per cent
	// above K_i at an index of 20, 1.9 per cent at 4.
	StandardInside
	// NoCurvature leaves the stress that of a straight wire, as tables of
	// design stresses before correction do, and as many rules allow for steady
	// load in the winding direction.
	NoCurvature
)

// String names the rule.
func (r CurvatureRule) String() string {
	switch r {
	case WahlInside:
		return "Wahl K_i"
	case StandardInside:
		return "EN 13906-3 q"
	case NoCurvature:
		return "no curvature factor"
	}
	return fmt.Sprintf("CurvatureRule(%d)", int(r))
}

// InsideFactor returns K_i, the ratio of the bending stress inside a coil of
// spring index c to that of straight wire:
//
//	K_i = (4C² − C − 1) / (4C(C − 1))        round wire, C = D/d
//	K_i = (3C² − C − 0.8) / (3C(C − 1))      square and rectangular, C = D/t
//
// The error is units.ErrDomain for an index not above 1.
//
// Source: Wahl, Mechanical Springs, 2nd ed.; round wire also Shigley, eq. 10-44.
func (s Section) InsideFactor(c float64) (float64, error) {
	if err := first(s.check(), checkIndex(c)); err != nil {
		return 0, err
	}
	return s.insideFactor(c), nil
}

// OutsideFactor returns K_o, the same ratio on the outside of the coil, below 1:
//
//	K_o = (4C² + C − 1) / (4C(C + 1))        round wire
//	K_o = (3C² + C − 0.8) / (3C(C + 1))      square and rectangular
//
// The error is units.ErrDomain for an index not above 1.
//
// Source: Wahl, Mechanical Springs, 2nd ed.
func (s Section) OutsideFactor(c float64) (float64, error) {
	if err := first(s.check(), checkIndex(c)); err != nil {
		return 0, err
	}
	if s.shape == round {
		return (4*c*c + c - 1) / (4 * c * (c + 1)), nil
	}
	return (3*c*c + c - 0.8) / (3 * c * (c + 1)), nil
}

func (s Section) insideFactor(c float64) float64 {
	if s.shape == round {
		return (4*c*c - c - 1) / (4 * c * (c - 1))
	}
	return (3*c*c - c - 0.8) / (3 * c * (c - 1))
}

// factor returns the curvature factor under the rule; what does not go together
// was refused when the spring was made.
func (r CurvatureRule) factor(s Section, c float64) float64 {
	switch r {
	case StandardInside:
		return (c + 0.07) / (c - 0.75) // EN 13906-3, clause 7 (from memory)
	case NoCurvature:
		return 1
	}
	return s.insideFactor(c)
}

func (r CurvatureRule) check(s Section) error {
	switch {
	case r < WahlInside || r > NoCurvature:
		return fmt.Errorf("curvature rule %d: want WahlInside, StandardInside or NoCurvature: %w", int(r), units.ErrDomain)
	case r == StandardInside && s.shape != round:
		return fmt.Errorf("EN 13906-3 q for %v wire: it is for round wire, want WahlInside: %w", s, units.ErrDomain)
	}
	return nil
}

// A ShearRule says which factor raises the shear stress inside the coil of a
// compression or extension spring.
type ShearRule int

const (
	// Bergstraesser is K_B = (4C + 2)/(4C − 3), which is also the k = (w + 0.5)/(w − 0.75)
	// of EN 13906-1. It is the rule unless another is named.
	Bergstraesser ShearRule = iota
	// WahlShear is K_W = (4C − 1)/(4C − 4) + 0.615/C.
	WahlShear
	// DirectShear is K_s = 1 + 0.5/C, direct shear without curvature.
	DirectShear
	// NoShear leaves plain torsion of a straight bar, as handbook load tables do.
	NoShear
)

// String names the rule.
func (r ShearRule) String() string {
	switch r {
	case Bergstraesser:
		return "Bergsträsser"
	case WahlShear:
		return "Wahl"
	case DirectShear:
		return "direct shear"
	case NoShear:
		return "no factor"
	}
	return fmt.Sprintf("ShearRule(%d)", int(r))
}

// Factor returns the factor for spring index c. The error is units.ErrDomain
// for an index not above 1, or a rule that is not one.
//
// Source: Shigley, eq. 10-3, 10-4 and 10-5; EN 13906-1 (from memory).
func (r ShearRule) Factor(c float64) (float64, error) {
	if err := first(r.check(), checkIndex(c)); err != nil {
		return 0, err
	}
	return r.factor(c), nil
}

func (r ShearRule) factor(c float64) float64 {
	switch r {
	case WahlShear:
		return (4*c-1)/(4*c-4) + 0.615/c
	case DirectShear:
		return 1 + 0.5/c
	case NoShear:
		return 1
	}
	return (4*c + 2) / (4*c - 3)
}

func (r ShearRule) check() error {
	if r < Bergstraesser || r > NoShear {
		return fmt.Errorf("shear rule %d: want Bergstraesser, WahlShear, DirectShear or NoShear: %w", int(r), units.ErrDomain)
	}
	return nil
}

func checkIndex(c float64) error {
	if !(c > 1) || c > 1e6 {
		return fmt.Errorf("spring index %.4g: want more than 1, mean diameter over wire: %w", c, units.ErrDomain)
	}
	return nil
}
