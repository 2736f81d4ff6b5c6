package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Compression is a compression ratio both ways of counting, which are not to be
// taken for one another: a two-stroke's makers have printed either. It prints
// both, each with its name.
type Compression struct {
	// Geometric counts from the bottom of the stroke: (Vs + Vc)/Vc.
	Geometric units.Ratio
	// Trapped counts from where the cylinder is shut: exhaust closing in a
	// two-stroke, inlet closing in a four-stroke, where it is called effective.
	Trapped units.Ratio
}

// String writes both ratios with their names.
func (c Compression) String() string {
	return fmt.Sprintf("geometric %.2f:1, trapped %.2f:1", float64(c.Geometric), float64(c.Trapped))
}

// Compression returns the compression ratio counted both ways, from the clearance
// and the drop at which the cylinder is shut on the way up: the depth of the
// exhaust port's top edge below the crown's highest place in a two-stroke, the
// drop at inlet closing in a four-stroke.
//
//	geometric (Vs + Vc)/Vc,  trapped (A x + Vc)/Vc
//
// The error is units.ErrDomain if the clearance is not more than 0, or the drop
// is outside the stroke.
//
// Source: Heywood, Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapter
// from memory); the trapped ratio Blair, Design and Simulation of Two-Stroke
// Engines, 1996, ch. 1 (chapter from memory).
func (c Cylinder) Compression(clearance units.Volume, closing units.Length) (Compression, error) {
	if err := checkClearance(clearance); err != nil {
		return Compression{}, err
	}
	if err := c.checkClosing(closing); err != nil {
		return Compression{}, err
	}
	return Compression{
		Geometric: ratioOf(c.Swept(), clearance),
		Trapped:   ratioOf(c.SweptBelow(closing), clearance),
	}, nil
}

func ratioOf(swept, clearance units.Volume) units.Ratio {
	return units.Ratio((swept + clearance) / clearance)
}

func (c Cylinder) checkClosing(drop units.Length) error {
	if !(drop >= 0 && drop <= c.crank.stroke) {
		return fmt.Errorf("drop at closing %v: want 0 mm to %v, the stroke: %w", drop, c.crank.stroke, units.ErrDomain)
	}
	return nil
}

func checkClearance(v units.Volume) error {
	if !(v > 0) || math.IsInf(float64(v), 0) {
		return fmt.Errorf("clearance %v: want more than 0 cm³: %w", v, units.ErrDomain)
	}
	return nil
}

func checkRatio(r units.Ratio) error {
	if !(r > 1) || math.IsInf(float64(r), 0) {
		return fmt.Errorf("compression ratio %g: want more than 1: %w", float64(r), units.ErrDomain)
	}
	return nil
}

// ClearanceForRatio returns the clearance that gives a geometric compression
// ratio: Vs/(ratio − 1). The error is units.ErrDomain for a ratio not more than 1.
//
// Source: the geometric ratio of Cylinder.Compression turned about.
func (c Cylinder) ClearanceForRatio(geometric units.Ratio) (units.Volume, error) {
	return ClearanceForRatio(c.Swept(), geometric)
}

// ClearanceForRatio returns the clearance that with a swept volume gives a
// compression ratio: V/(ratio − 1). With the volume swept above the exhaust port
// the ratio is the trapped one. The error is units.ErrDomain for a ratio not more
// than 1 or a volume not more than 0.
//
// Source: the geometric ratio of Cylinder.Compression turned about.
func ClearanceForRatio(swept units.Volume, ratio units.Ratio) (units.Volume, error) {
	if err := checkRatio(ratio); err != nil {
		return 0, err
	}
	if !(swept > 0) || math.IsInf(float64(swept), 0) {
		return 0, fmt.Errorf("swept volume %v: want more than 0 cm³: %w", swept, units.ErrDomain)
	}
	return swept / units.Volume(ratio-1), nil
}

// Skim returns how much to take off, to come from a clearance to a wanted
// geometric ratio: positive is metal to skim, negative is packing to put in.
//
// Over is the area the cut acts on. For packing under the barrel or a flat head
// it is PistonArea; for the face of a head with a chamber in it, the chamber's
// mouth at that face, which is often less than the bore and then wants a deeper
// cut. Taking metal off under a barrel, or packing it, moves every port too: see
// Barrel.Raised.
//
// Make sure before cutting that valves, deflector and head keep clear of one
// another at the new height.
//
// The error is units.ErrDomain if the clearance or the area is not more than 0 or
// the ratio not more than 1.
func (c Cylinder) Skim(clearance units.Volume, wanted units.Ratio, over units.Area) (units.Length, error) {
	return skim(clearance, c.Swept(), wanted, over)
}

// SkimForTrapped is Skim for a wanted trapped ratio, with the drop at which the
// cylinder is shut as in Compression. It is for a cut at the head, which leaves the
// ports where they are over the piston. The error is as in Skim, and for a drop
// outside the stroke.
func (c Cylinder) SkimForTrapped(clearance units.Volume, wanted units.Ratio, closing units.Length, over units.Area) (units.Length, error) {
	if err := c.checkClosing(closing); err != nil {
		return 0, err
	}
	return skim(clearance, c.SweptBelow(closing), wanted, over)
}

func skim(clearance, swept units.Volume, wanted units.Ratio, over units.Area) (units.Length, error) {
	if err := checkClearance(clearance); err != nil {
		return 0, err
	}
	if !(over > 0) || math.IsInf(float64(over), 0) {
		return 0, fmt.Errorf("area %v: want more than 0 mm²: %w", over, units.ErrDomain)
	}
	target, err := ClearanceForRatio(swept, wanted)
	if err != nil {
		return 0, err
	}
	return units.Length(float64(clearance-target) / float64(over)), nil
}

// CrankcaseRatio returns the primary compression ratio of an engine that draws
// through its crankcase: the crankcase volume with the piston at the top over
// that with the piston at the bottom, (V + Vs)/V.
//
// AtBottom is the volume under the piston at bottom dead centre, transfer passages
// included. Some books count from transfer closing instead, or give the volume at
// the top: take care which a figure is.
//
// The error is units.ErrDomain for a volume not more than 0.
//
// Source: Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1 (chapter
// from memory).
func (c Cylinder) CrankcaseRatio(atBottom units.Volume) (units.Ratio, error) {
	if !(atBottom > 0) || math.IsInf(float64(atBottom), 0) {
		return 0, fmt.Errorf("crankcase volume %v at bottom dead centre: want more than 0 cm³: %w", atBottom, units.ErrDomain)
	}
	return ratioOf(c.Swept(), atBottom), nil
}

// VolumeRatioAt returns the volume above the piston over the clearance, at a
// fraction of the stroke counted from top dead centre:
//
//	V/Vc = 1 + p(ratio − 1)
//
// It is the cut-off ratio of a diesel when p is the cut-off. The error is
// units.ErrDomain for a fraction outside 0 to 1 or a ratio not more than 1.
//
// Source: derived here from V = Vc + A x and the geometric ratio, Heywood,
// Internal Combustion Engine Fundamentals, 1988, ch. 2 (chapter from memory).
func VolumeRatioAt(fraction, geometric units.Ratio) (units.Ratio, error) {
	if err := checkRatio(geometric); err != nil {
		return 0, err
	}
	if !(fraction >= 0 && fraction <= 1) {
		return 0, fmt.Errorf("fraction of the stroke %g: want 0 to 1: %w", float64(fraction), units.ErrDomain)
	}
	return 1 + fraction*(geometric-1), nil
}
