package threads

import (
	"math"

	"example.com/benchsums/units"
)

// StressArea returns the tensile stress area, that of a plain rod as strong as
// the threaded one.
func (t Thread) StressArea() units.Area {
	d := float64(t.stressDiameter())
	return units.Area(math.Pi / 4 * d * d)
}

// stressDiameter returns the diameter of the plain rod that is as strong.
func (t Thread) stressDiameter() units.Length {
	switch t.form {
	case 0:
		return 0
	case ISOForm, ISOBoltForm:
		return t.major - 13*t.form.Height(t.pitch)/12 // (d₂ + d₃)/2, d₃ = d₁ − H/6
	case UnifiedForm, UNRBoltForm:
		return t.major - 9*t.form.Height(t.pitch)/8 // 0.974279p, printed 0.9743/n
	}
	return (t.effective + t.minor) / 2
}
