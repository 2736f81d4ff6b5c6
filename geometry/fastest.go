package geometry

import (
	"math"

	"example.com/benchsums/internal/root"
	"example.com/benchsums/units"
)

// FastestAngles returns the two crank angles at which the piston moves fastest,
// and its acceleration is nothing: before top dead centre, going up, and after it,
// going down. Both are positive; with no offset they are equal. They lie some
// degrees short of a quarter turn, the more so the shorter the rod.
//
// There is no closed form: the angles are found by a search for the zero of the
// second derivative, to 1e-14 of a radian or so.
func (c Crank) FastestAngles() (before, after units.Angle) {
	down := c.Downstroke()
	return c.stillPoint(-1, units.Turn-down), c.stillPoint(1, down)
}

// stillPoint finds where the acceleration is nothing between the top and the
// bottom, going forward (1) or backward (-1) from the top. The acceleration is
// downward at the top and upward at the bottom, so that there is such a place.
func (c Crank) stillPoint(way, bottom units.Angle) units.Angle {
	x, err := root.Find(func(theta float64) float64 {
		return float64(c.DropPerRadianSquared(way * units.Angle(theta)))
	}, 0, float64(bottom), 0)
	if err != nil { // the zero Crank
		return units.Angle(math.NaN())
	}
	return units.Angle(x)
}
