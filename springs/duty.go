package springs

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A Duty is what is asked of a spring: which stress, and how often.
type Duty int

const (
	// SteadyBending: a torsion spring under steady load, or moved seldom.
	SteadyBending Duty = iota
	// SteadyBendingMaker is the same as spring makers put it in their notes.
	SteadyBendingMaker
	// Bending100000: a torsion spring wound from nothing 100 000 times.
	Bending100000
	// Bending100000Peened is the same for shot-peened wire.
	Bending100000Peened
	// Bending1000000: a torsion spring wound from nothing a million times.
	Bending1000000
	// Bending1000000Peened is the same for shot-peened wire.
	Bending1000000Peened
	// SteadyCompression: shear in a compression spring, set not removed.
	SteadyCompression
	// SteadyCompressionSet: the same after the set has been removed.
	SteadyCompressionSet
	// ExtensionBody: shear in the body of an extension spring.
	ExtensionBody
	// ExtensionHookTorsion: shear where the hook leaves the body.
	ExtensionHookTorsion
	// ExtensionHookBending: bending in the hook.
	ExtensionHookBending
)

var dutyNames = [...]string{
	"steady bending", "steady bending, makers' note",
	"bending 100 000 times", "bending 100 000 times, peened", "bending a million times", "bending a million times, peened",
	"steady compression", "steady compression, set removed",
	"extension, body", "extension, hook in torsion", "extension, hook in bending",
}

// String names the duty.
func (d Duty) String() string {
	if d < 0 || int(d) >= len(dutyNames) {
		return fmt.Sprintf("Duty(%d)", int(d))
	}
	return dutyNames[d]
}

// An Allowable is the greatest stress for a duty, and what it rests on.
type Allowable struct {
	Stress   units.Pressure
	Share    float64  // of the least tensile strength
	Strength Strength // of that size
	Source   string   // of the share
}

// Allowable returns the greatest stress that published practice allows in wire or
// strip of the given size: a share of the least tensile strength of the table.
// Stresses to be held against it carry the curvature factor.
//
// The error is units.ErrDomain where no share or no strength is published for the
// material: fatigue of torsion springs for A228, A230, A232 and 302 stainless
// alone.
//
// Sources: Shigley, sec. 10-12 and Tables 10-6, 10-7 and 10-10 (from memory);
// makers' shares from a spring maker's note.
func (m Material) Allowable(duty Duty, size units.Length) (Allowable, error) {
	share, source, err := m.Share(duty)
	if err != nil {
		return Allowable{}, err
	}
	s, err := m.Strength(size)
	if err != nil {
		return Allowable{}, err
	}
	return Allowable{units.Pressure(share) * s.Least, share, s, source}, nil
}

// Share returns the share of the tensile strength that published practice allows
// for a duty, and its source. The error is units.ErrDomain where there is none.
func (m Material) Share(duty Duty) (share float64, source string, err error) {
	percent := m.steadyPercent(duty)
	source = steadySource(duty)
	if duty >= Bending100000 && duty <= Bending1000000Peened {
		percent, source = m.fatiguePercent(duty), "Shigley, Table 10-10 (from memory)"
	}
	if percent == 0 {
		return 0, "", fmt.Errorf("%q, %v: no published share of strength on file: %w", m.get().name, duty, units.ErrDomain)
	}
	return percent / 100, source, nil
}

func steadySource(duty Duty) string {
	switch duty {
	case SteadyBending:
		return "Shigley, sec. 10-12 (from memory)"
	case SteadyBendingMaker:
		return "a spring maker's note"
	case SteadyCompression, SteadyCompressionSet:
		return "Shigley, Table 10-6 (from memory)"
	}
	return "Shigley, Table 10-7 (from memory)"
}

func (m Material) steadyPercent(duty Duty) float64 {
	for _, r := range steadyShares {
		if r.family == m.get().family {
			switch duty {
			case SteadyBending:
				return r.torsion
			case SteadyBendingMaker:
				return r.maker
			case SteadyCompression:
				return r.compression
			case SteadyCompressionSet:
				return r.set
			case ExtensionBody:
				return r.body
			case ExtensionHookTorsion:
				return r.hookTorsion
			case ExtensionHookBending:
				return r.hookBending
			}
		}
	}
	return 0
}

func (m Material) fatiguePercent(duty Duty) float64 {
	for _, r := range fatigueShares {
		if m.get().grade != 0 && slices.Contains(r.grades[:], m.get().grade) {
			return [...]float64{r.e5, r.e5Peened, r.e6, r.e6Peened}[duty-Bending100000]
		}
	}
	return 0
}
