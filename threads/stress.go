package threads

import (
	"math"

	"example.com/benchsums/units"
)

// StressArea returns the tensile stress area: that of a plain rod as strong as
// the threaded one.
//
//	ISO metric        π/4 ((d₂ + d₃)/2)² = π/4 (d − 0.938194p)²   ISO 898-1
//	Unified           π/4 (D − 0.974279p)²                        ASME B1.1
//	all others        π/4 ((d₂ + d₁)/2)²
//
// The last is π/4 (D − 0.960491p)² for Whitworth threads and π/4 (d − 0.9p)² for
// BA, where the basic diameters are not rounded; it carries the rule of the
// modern standards over to the old ones (practice of BS 3580, from memory).
// Older British books reckon with the area at the bottom of the thread instead,
// which is RootArea.
//
// Sources: Shigley's Mechanical Engineering Design, 9th ed., p. 411 and Tables
// 8-1 and 8-2; Machinery's Handbook, 24th ed., as quoted in public.
func (t Thread) StressArea() units.Area { return circle(t.stressDiameter()) }

// stressDiameter returns the diameter of the plain rod that is as strong.
func (t Thread) stressDiameter() units.Length {
	h := t.form.Height(t.pitch)
	switch t.form {
	case 0:
		return 0
	case ISOForm, ISOBoltForm:
		return t.major - 13*h/12 // d₂ = d − 3H/4, d₃ = d − 17H/12
	case UnifiedForm, UNRBoltForm:
		return t.major - 9*h/8
	}
	return (t.effective + t.minor) / 2
}

// RootArea returns the area at the bottom of the thread of the bolt. The root
// of an ISO metric bolt is d₃ = d − 1.226869p, of a Unified one D − 1.299038p as
// for the flat root; other forms have the minor diameter.
//
// Source: Shigley's Mechanical Engineering Design, 9th ed., Tables 8-1 and 8-2.
func (t Thread) RootArea() units.Area { return circle(t.RootDiameter()) }

// RootDiameter returns the diameter at the bottom of the thread of the bolt,
// on which RootArea rests.
func (t Thread) RootDiameter() units.Length {
	h := t.form.Height(t.pitch)
	switch t.form {
	case ISOForm, ISOBoltForm:
		return t.major - 17*h/12
	case UnifiedForm, UNRBoltForm:
		return t.major - 3*h/2
	}
	return t.minor
}

func circle(d units.Length) units.Area { return units.Area(math.Pi / 4 * float64(d) * float64(d)) }
