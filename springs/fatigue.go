package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// GerberEndurance returns the alternating stress that may be borne without a mean
// stress, from the greatest stress S_r of a cycle that starts at zero:
//
//	S_e = (S_r/2) / (1 − (S_r/(2 S_ut))²)
//
// The error is units.ErrDomain unless S_r lies between 0 and twice the tensile
// strength.
//
// Source: Shigley, eq. 10-58 (from memory).
func GerberEndurance(repeated, strength units.Pressure) (units.Pressure, error) {
	if err := positive("tensile strength", strength); err != nil {
		return 0, err
	}
	x := float64(repeated/strength) / 2
	if !(x > 0 && x < 1) {
		return 0, fmt.Errorf("repeated stress %v: want more than 0 and less than %v, twice the tensile strength: %w", repeated, 2*strength, units.ErrDomain)
	}
	return units.Pressure(float64(repeated) / 2 / (1 - x*x)), nil
}

// GerberAmplitude returns the alternating stress at which a load line of the
// given ratio r of alternating to mean stress meets the Gerber curve:
//
//	S_a = (r² S_ut² / (2 S_e)) (−1 + √(1 + (2 S_e/(r S_ut))²))
//
// It is worked in a form that keeps its figures for a small S_e. The error is
// units.ErrDomain for a figure that is not more than 0.
//
// Source: Shigley, eq. 10-59 (from memory).
func GerberAmplitude(endurance, strength units.Pressure, ratio float64) (units.Pressure, error) {
	if err := first(positive("endurance", endurance), positive("tensile strength", strength), positive("ratio of alternating to mean", ratio)); err != nil {
		return 0, err
	}
	x := 2 * float64(endurance/strength) / ratio
	// (2/x²)(√(1+x²) − 1) = 2/(1 + √(1+x²))
	return units.Pressure(2 * float64(endurance) / (1 + math.Sqrt(1+x*x))), nil
}

// A Fatigue is how a torsion spring bears a load that comes and goes.
type Fatigue struct {
	Alternating, Mean units.Pressure // in the wire, curvature factor included
	Endurance         units.Pressure // S_e, Gerber
	Amplitude         units.Pressure // S_a, that the wire bears at this ratio
	Factor            float64        // S_a over the alternating stress
	Strength          Strength
	Source            string
}

// Fatigue returns the factor of safety when the torque swings between two
// values for the given duty, which must be one of the four of repeated bending.
// The error is units.ErrDomain for other duties, torques that are not 0 ≤ low <
// high, or a material for which no share is published.
//
// Source: Shigley, eq. 10-58 to 10-60 and Table 10-10 (from memory).
func (t Torsion) Fatigue(low, high units.Torque, duty Duty) (Fatigue, error) {
	if duty < Bending100000 || duty > Bending1000000Peened {
		return Fatigue{}, fmt.Errorf("duty %v: want one of bending 100 000 or a million times: %w", duty, units.ErrDomain)
	}
	if !(low >= 0 && high > low) || math.IsInf(float64(high), 0) {
		return Fatigue{}, fmt.Errorf("torque from %v to %v: want 0 or more, rising: %w", low, high, units.ErrDomain)
	}
	a, err := t.spec.Material.Allowable(duty, t.spec.Wire.Thickness())
	if err != nil {
		return Fatigue{}, err
	}
	f := Fatigue{Alternating: t.Stress((high - low) / 2), Mean: t.Stress((high + low) / 2), Strength: a.Strength, Source: a.Source}
	f.Endurance, err = GerberEndurance(a.Stress, a.Strength.Least)
	if err != nil {
		return Fatigue{}, err
	}
	f.Amplitude, err = GerberAmplitude(f.Endurance, a.Strength.Least, float64(f.Alternating/f.Mean))
	f.Factor = float64(f.Amplitude / f.Alternating)
	return f, err
}
