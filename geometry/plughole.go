package geometry

import (
	"fmt"

	"example.com/benchsums/units"
)

// A PlugHole is a hole in the head through which a dial gauge or a rod reaches the
// crown, leaning from the line of the bore. The crown is taken as flat and square
// to the bore; for a domed one see DomedGauge.
type PlugHole struct {
	lean    units.Angle
	cosLean float64
}

// NewPlugHole returns a plug hole whose line leans from the line of the bore by
// an angle, whichever way. The error is units.ErrDomain unless it is from 0 to less
// than a right angle.
func NewPlugHole(lean units.Angle) (PlugHole, error) {
	if !(lean >= 0 && lean < 90*units.Degree) {
		return PlugHole{}, fmt.Errorf("lean of the plug hole %v: want 0° to less than 90°: %w", lean, units.ErrDomain)
	}
	_, cos := sincos(lean)
	return PlugHole{lean, cos}, nil
}

// Lean returns the angle between the line of the hole and the line of the bore.
func (h PlugHole) Lean() units.Angle { return h.lean }

// Travel returns how far the piston has moved when a gauge in the hole has moved
// by a reading: reading × cos β. The plunger slides across the flat crown and so
// goes further than the piston; whether its tip is a ball or flat does not matter
// to the change.
//
// Source: plane geometry, a right triangle.
func (h PlugHole) Travel(reading units.Length) units.Length {
	return reading * units.Length(h.cosLean)
}

// Reading returns what a gauge in the hole moves by when the piston moves by a
// travel: travel / cos β.
//
// A printed check: Fichtel & Sachs 505 repair instructions give 2.5 mm and 3.0 mm
// at the piston as 3.5 mm and 4.2 mm on a gauge at 45°.
//
// Source: plane geometry, a right triangle.
func (h PlugHole) Reading(travel units.Length) units.Length {
	return travel / units.Length(h.cosLean)
}
