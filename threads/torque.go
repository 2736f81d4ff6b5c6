package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Friction is what a tightening torque goes into besides the pull on the
// bolt: the coefficients in the thread and under the head or nut, and the mean
// diameter at which the head rubs. Make one with NewFriction.
type Friction struct {
	thread, bearing float64
	collar          units.Length
}

// NewFriction returns the friction of a tightened thread. The mean diameter of
// the bearing face of head or nut is about 1.25 times the major diameter of the
// thread (Shigley, 9th ed., with eq. 8-26), and collar 0 takes it so. Coefficients lie
// between 0 and 1. The error wraps units.ErrDomain.
func NewFriction(thread, bearing float64, collar units.Length) (Friction, error) {
	for _, f := range [...]float64{thread, bearing} {
		if !(f >= 0 && f < 1) {
			return Friction{}, fmt.Errorf("friction coefficient %g: want from 0 to less than 1: %w", f, units.ErrDomain)
		}
	}
	if !(collar >= 0) || math.IsInf(float64(collar), 0) {
		return Friction{}, fmt.Errorf("mean bearing diameter %v: want more than 0 mm, or 0 for 1.25 times the thread: %w", collar, units.ErrDomain)
	}
	return Friction{thread, bearing, collar}, nil
}

// Torque returns the torque that pulls the bolt to the preload:
//
//	T = F d₂/2 (tan ψ + f sec(α/2)) / (1 − f tan ψ sec(α/2)) + F fc dc/2
//
// with ψ the helix angle at the effective diameter d₂ and dc the mean diameter
// under the head. The sign of the preload is kept.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., eq. 8-26.
func (t Thread) Torque(preload units.Force, f Friction) units.Torque {
	return units.Torque(float64(preload) * t.arm(f))
}

// Preload returns the pull that a torque puts into the bolt: Torque the other
// way about. It is 0 for the zero Thread.
func (t Thread) Preload(torque units.Torque, f Friction) units.Force {
	if t.pitch == 0 {
		return 0
	}
	return units.Force(float64(torque) / t.arm(f))
}

// LooseningTorque returns the torque that undoes a bolt under the preload: the
// same with the slope of the thread helping. It is negative for a thread so
// steep and slippery that it undoes itself.
//
// Source: eq. 8-26 of Torque with the sign of the slope changed.
func (t Thread) LooseningTorque(preload units.Force, f Friction) units.Torque {
	tan, sec := t.slopes()
	screw := float64(t.effective) / 2 * (f.thread*sec - tan) / (1 + f.thread*tan*sec)
	return units.Torque(float64(preload) * (screw + f.bearing*f.mean(t)/2))
}

// arm returns torque over preload.
func (t Thread) arm(f Friction) float64 {
	tan, sec := t.slopes()
	screw := float64(t.effective) / 2 * (tan + f.thread*sec) / (1 - f.thread*tan*sec) // eq. 8-26
	return screw + f.bearing*f.mean(t)/2
}

// slopes returns tan ψ and sec(α/2).
func (t Thread) slopes() (tan, sec float64) {
	if t.effective == 0 {
		return 0, 1
	}
	return float64(t.pitch) / (math.Pi * float64(t.effective)), math.Hypot(1, t.form.TanFlank())
}

// mean returns the mean bearing diameter.
func (f Friction) mean(t Thread) float64 {
	if f.collar == 0 {
		return 1.25 * float64(t.major)
	}
	return float64(f.collar)
}

// ShortTorque returns the torque by the short form,
//
//	T = F (p/(2π) + f d₂ sec(α/2)/2 + fc dc/2)
//
// with 0.159p and 0.577 d₂ f at 60°; 0.5637 at 55° and 0.5463 at 47.5°. It leaves
// out the product of slope and friction and lies up to 1.1 % under Torque with a
// friction of 0.14, most on the finest pitches of small sizes.
//
// Source: ISO 16047 and VDI 2230, the small-angle form of Torque.
func (t Thread) ShortTorque(preload units.Force, f Friction) units.Torque {
	_, sec := t.slopes()
	arm := float64(t.pitch)/(2*math.Pi) + f.thread*float64(t.effective)*sec/2 + f.bearing*f.mean(t)/2
	return units.Torque(float64(preload) * arm)
}

// TorqueByK returns the torque by the simple form T = K F d, in which one figure
// stands for slope, friction and collar.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., eq. 8-27.
func (t Thread) TorqueByK(preload units.Force, k float64) units.Torque {
	return units.Torque(k * float64(preload) * float64(t.major))
}

// PreloadByK returns the pull that a torque puts into the bolt by the simple
// form. The error wraps units.ErrDomain for a K that is not more than 0, and for
// the zero Thread.
func (t Thread) PreloadByK(torque units.Torque, k float64) (units.Force, error) {
	if !(k > 0) || math.IsInf(k, 0) || t.major == 0 {
		return 0, fmt.Errorf("K %g with %v: want a thread, and a K of more than 0; about 0.2 is usual: %w", k, t.major, units.ErrDomain)
	}
	return units.Force(float64(torque) / (k * float64(t.major))), nil
}

// NutFactor returns K of the simple form that Torque comes to with a friction.
func (t Thread) NutFactor(f Friction) float64 {
	if t.major == 0 {
		return 0
	}
	return t.arm(f) / float64(t.major)
}

// A Finish is the state of the thread, on which K of the simple form depends.
type Finish uint8

// The finishes.
const (
	BlackFinish   Finish = iota // not plated, black
	ZincPlated                  // zinc plated
	Lubricated                  // lubricated
	CadmiumPlated               // cadmium plated
	AntiSeize                   // with an anti-seize paste
)

// K returns the torque factor of the simple form for a finish, 0 for one that
// is not known. The same bolt tightened ten times to one torque gave preloads
// with a standard deviation of 8 % (Shigley, 9th ed., Table 8-14); 25 to 35 %
// either way is what is usually quoted.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., Table 8-15.
func (f Finish) K() float64 {
	switch f {
	case BlackFinish:
		return 0.30
	case ZincPlated:
		return 0.20
	case Lubricated:
		return 0.18
	case CadmiumPlated:
		return 0.16
	case AntiSeize:
		return 0.12
	}
	return 0
}

// String returns the finish in words.
func (f Finish) String() string {
	switch f {
	case BlackFinish:
		return "not plated, black"
	case ZincPlated:
		return "zinc plated"
	case Lubricated:
		return "lubricated"
	case CadmiumPlated:
		return "cadmium plated"
	case AntiSeize:
		return "with anti-seize paste"
	}
	return "unknown finish"
}

// TighteningReadings are what is known of a tightening: the torque, and the
// friction with its spread, which is by far the larger part.
type TighteningReadings struct {
	Torque          units.Reading[units.Torque]
	Thread, Bearing units.Reading[units.Ratio]  // coefficients
	Collar          units.Reading[units.Length] // mean diameter under the head, 0 for 1.25 times the thread
}

// PreloadFrom returns the pull that the torque puts into the bolt, with its
// uncertainty and what that is made of. The error is that of NewFriction or of
// units.Propagate.
func (t Thread) PreloadFrom(r TighteningReadings) (units.Result[units.Force], error) {
	if t.pitch == 0 {
		return units.Result[units.Force]{}, fmt.Errorf("no thread: want one from Find or New: %w", units.ErrDomain)
	}
	if r.Collar.Value == 0 {
		r.Collar.Value = 1.25 * t.major
	}
	if _, err := NewFriction(float64(r.Thread.Value), float64(r.Bearing.Value), r.Collar.Value); err != nil {
		return units.Result[units.Force]{}, err
	}
	torque, thread, bearing, collar := r.Torque.Value, r.Thread.Value, r.Bearing.Value, r.Collar.Value
	return units.Propagate(func() units.Force {
		return t.Preload(torque, Friction{float64(thread), float64(bearing), collar})
	},
		units.VaryReading("torque", &torque, r.Torque),
		units.VaryReading("friction in the thread", &thread, r.Thread),
		units.VaryReading("friction under the head", &bearing, r.Bearing),
		units.VaryReading("bearing diameter", &collar, r.Collar))
}

// JointConstant returns the share of an outside pull that a preloaded bolt
// feels, by the stiffness of the bolt and of what it clamps: C = kb/(kb + km).
// The error wraps units.ErrDomain for a stiffness that is not more than 0.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., Example 8-3.
func JointConstant(bolt, members units.Stiffness) (float64, error) {
	for _, k := range [...]units.Stiffness{bolt, members} {
		if !(k > 0) || math.IsInf(float64(k), 0) {
			return 0, fmt.Errorf("stiffness %v: want more than 0 N/mm: %w", k, units.ErrDomain)
		}
	}
	return float64(bolt / (bolt + members)), nil
}
