package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Cylinder is a bore with a crank under it.
type Cylinder struct {
	bore  units.Length
	crank Crank
}

// NewCylinder returns a cylinder of the given bore over a crank. The error is
// units.ErrDomain if the bore is not more than 0 or not finite, or the crank is
// the zero Crank.
func NewCylinder(bore units.Length, crank Crank) (Cylinder, error) {
	switch {
	case !(bore > 0) || math.IsInf(float64(bore), 0):
		return Cylinder{}, fmt.Errorf("bore %v: want more than 0 mm: %w", bore, units.ErrDomain)
	case !(crank.stroke > 0):
		return Cylinder{}, fmt.Errorf("crank without a stroke: want one made by NewCrank: %w", units.ErrDomain)
	}
	return Cylinder{bore, crank}, nil
}

// Bore returns the bore.
func (c Cylinder) Bore() units.Length { return c.bore }

// Crank returns the crank.
func (c Cylinder) Crank() Crank { return c.crank }

// PistonArea returns the area of the bore, π B²/4.
func (c Cylinder) PistonArea() units.Area { return Circle(c.bore) }

// Circle returns the area of a circle of the given diameter, π d²/4.
//
// Source: plane geometry.
func Circle(diameter units.Length) units.Area {
	return units.Area(math.Pi / 4 * float64(diameter) * float64(diameter))
}

// Swept returns the swept volume of the one cylinder: piston area times stroke,
// the true stroke where there is an offset.
//
// Source: Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapter
// from memory).
func (c Cylinder) Swept() units.Volume { return c.SweptBelow(c.crank.stroke) }

// SweptBelow returns the volume the piston has laid open at a drop: piston area
// times drop. With the drop at which a port closes it is the volume trapped above
// the port's edge, less the clearance.
func (c Cylinder) SweptBelow(drop units.Length) units.Volume {
	return units.Volume(float64(c.PistonArea()) * float64(drop))
}

// VolumeAt returns the volume above the piston at a crank angle: the clearance
// plus what the piston has laid open.
func (c Cylinder) VolumeAt(theta units.Angle, clearance units.Volume) units.Volume {
	return clearance + c.SweptBelow(c.crank.Drop(theta))
}

// BoreOfSwept returns the bore of a cylinder from its swept volume and its stroke
// in bores, B = ∛(4V / (π s)); 1 is a square engine. The error is units.ErrDomain
// unless both are more than 0 and finite.
//
// Source: derived here from V = (π/4) B² S with S = s B.
func BoreOfSwept(swept units.Volume, strokeInBores float64) (units.Length, error) {
	b := math.Cbrt(4 * float64(swept) / (math.Pi * strokeInBores))
	if !(swept > 0 && strokeInBores > 0) || math.IsInf(b, 0) || b == 0 {
		return 0, fmt.Errorf("swept volume %v, stroke %g bores: want both more than 0: %w", swept, strokeInBores, units.ErrDomain)
	}
	return units.Length(b), nil
}
