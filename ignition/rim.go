package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Rim is the round face that timing marks are put on: the rim of a flywheel,
// a pulley, a degree disc. Make one with [NewRim], [NewRimOfGirth] or
// [NewRimOfTape].
type Rim struct {
	radius units.Length
}

// NewRim returns the rim of the given diameter. The error is
// [units.ErrDomain] for a diameter that is not more than 0.
func NewRim(diameter units.Length) (Rim, error) {
	if !positive(diameter) {
		return Rim{}, fmt.Errorf("rim diameter %v: want more than 0 mm: %w", diameter, units.ErrDomain)
	}
	return Rim{diameter / 2}, nil
}

// NewRimOfGirth returns the rim of the given girth, R = C/2π, where the girth
// is that of the rim itself.
//
// Give it a girth as a tape reads it, with nothing taken off, and the rim that
// comes back is the one the middle of the tape lies on: lengths read on the
// same tape then turn into angles by [Rim.AngleOfArc], and the diameter and
// the thickness of the tape both drop out. See also [AngleOfShare].
//
// The error is [units.ErrDomain] for a girth that is not more than 0.
//
// Source: plane geometry, the girth of a circle.
func NewRimOfGirth(girth units.Length) (Rim, error) {
	if !positive(girth) {
		return Rim{}, fmt.Errorf("rim girth %v: want more than 0 mm: %w", girth, units.ErrDomain)
	}
	return Rim{girth / (2 * math.Pi)}, nil
}

// NewRimOfTape returns the rim round which a tape of the given thickness reads
// the given girth:
//
//	R = C/2π − t/2
//
// because a tape that is bent keeps the length of its middle, and that lies
// half a thickness outside the rim. The error is [units.ErrDomain] for a
// thickness below 0 or a girth that leaves no rim.
//
// Source: plane geometry; that the middle of a bent strip keeps its length is the
// bending of a thin beam, common practice, no source.
func NewRimOfTape(girth, thickness units.Length) (Rim, error) {
	if !(thickness >= 0) || math.IsInf(float64(thickness), 0) {
		return Rim{}, fmt.Errorf("tape thickness %v: want 0 mm or more: %w", thickness, units.ErrDomain)
	}
	if r := girth/(2*math.Pi) - thickness/2; positive(r) {
		return Rim{r}, nil
	}
	return Rim{}, fmt.Errorf("girth %v on a tape %v thick: want more than %v: %w", girth, thickness, math.Pi*thickness, units.ErrDomain)
}

// positive reports whether l is more than 0 and finite.
func positive(l units.Length) bool { return l > 0 && !math.IsInf(float64(l), 0) }

// Radius returns R, half the diameter.
func (r Rim) Radius() units.Length { return r.radius }

// Diameter returns D.
func (r Rim) Diameter() units.Length { return 2 * r.radius }

// Girth returns the way once round the rim, πD.
//
// Source: plane geometry, the girth of a circle.
func (r Rim) Girth() units.Length { return 2 * math.Pi * r.radius }

// Arc returns the way along the rim that goes with a crank angle:
//
//	s = D θ/2   (θ in radians)
//
// It has the sign of theta. It is what a paper strip shows that lies on the
// rim, its thickness neglected; what a straight rule across shows is
// [Rim.Chord], and what a tape of some thickness shows is [Rim.TapeLength].
//
// Source: plane geometry, the arc of a circle.
func (r Rim) Arc(theta units.Angle) units.Length {
	return r.radius * units.Length(theta)
}

// AngleOfArc goes back from the way along the rim to the crank angle.
func (r Rim) AngleOfArc(arc units.Length) units.Angle {
	return units.Angle(arc / r.radius)
}

// PerDegree returns the way along the rim for one degree of crank, πD/360.
func (r Rim) PerDegree() units.Length { return r.Arc(units.Degree) }

// Chord returns the straight distance, as a rule held across shows it or
// dividers step it off, between two marks on the rim that lie theta apart:
//
//	c = D sin(θ/2)
//
// It has the sign of theta. Beyond half a turn it gets shorter again, and
// whole turns are left out. A chord is short of its arc by about θ²/24 (θ in
// radians) of itself: 0.13 % at 10°, 0.51 % at 20°, 1.14 % at 30°.
//
// Source: plane geometry, the chord of a circle.
func (r Rim) Chord(theta units.Angle) units.Length {
	t := float64(theta)
	if math.Abs(t) > float64(units.Turn) {
		t = math.Mod(t, float64(units.Turn))
	}
	return 2 * r.radius * units.Length(math.Sin(t/2))
}

// AngleOfChord goes back from a chord to the crank angle, from −180° to 180°
// with the sign of the chord:
//
//	θ = 2 asin(c/D)
//
// The error is [units.ErrDomain] for a chord longer than the diameter. Near
// the full diameter a chord tells little: there 0.1 mm may be several degrees.
//
// Source: plane geometry, the chord of a circle.
func (r Rim) AngleOfChord(chord units.Length) (units.Angle, error) {
	ratio := float64(chord / (2 * r.radius))
	if !(math.Abs(ratio) <= 1) {
		return 0, fmt.Errorf("chord %v: want %v at most, the diameter of the rim: %w", chord, r.Diameter(), units.ErrDomain)
	}
	return units.Angle(2 * math.Asin(ratio)), nil
}

// TapeLength returns what a tape or a strip of paper of the given thickness,
// laid round the rim, shows for a crank angle:
//
//	s = (R + t/2) θ   (θ in radians)
//
// because bending keeps the length of the middle of the tape. The error is
// [units.ErrDomain] for a thickness below 0.
//
// Source: plane geometry, as in [NewRimOfTape].
func (r Rim) TapeLength(theta units.Angle, thickness units.Length) (units.Length, error) {
	middle, err := r.UnderTape(thickness)
	return middle.Arc(theta), err
}

// AngleOfTape goes back from a length read on a tape or strip laid round the
// rim to the crank angle. Leaving the thickness out makes the angle too large
// by t/D of itself: 0.1 % for a 0.2 mm tape on 200 mm. The error is
// [units.ErrDomain] for a thickness below 0.
func (r Rim) AngleOfTape(length, thickness units.Length) (units.Angle, error) {
	middle, err := r.UnderTape(thickness)
	if err != nil {
		return 0, err
	}
	return middle.AngleOfArc(length), nil
}

// UnderTape returns the rim that the middle of a tape of the given thickness
// lies on, R + t/2. The error is [units.ErrDomain] for a thickness below 0.
func (r Rim) UnderTape(thickness units.Length) (Rim, error) {
	if !(thickness >= 0) || math.IsInf(float64(thickness), 0) {
		return Rim{}, fmt.Errorf("tape thickness %v: want 0 mm or more: %w", thickness, units.ErrDomain)
	}
	return Rim{r.radius + thickness/2}, nil
}

// Transfer returns how long an arc of this rim becomes on another round face
// of the same shaft: the angle stays, the arc goes with the radius.
func (r Rim) Transfer(arc units.Length, to Rim) units.Length {
	return arc * to.radius / r.radius
}

// RunOut returns the most that a mark can be out when the rim runs eccentric,
// total being what a dial on it shows from end to end in one turn: the marks
// swing by half of it to either side, e/R with e = total/2. Its standard
// uncertainty is this figure over √2, as for anything that swings between
// limits (JCGM 101:2008, 6.4.6, from memory).
func (r Rim) RunOut(total units.Length) units.Angle {
	return units.Angle(math.Abs(float64(total / 2 / r.radius)))
}

// AngleOfShare returns the crank angle of a mark when the mark and the whole
// girth are read on the same tape:
//
//	θ = 360° s/C
//
// It is the best way on any rim, for it needs neither the diameter nor the
// thickness of the tape. The error is [units.ErrDomain] for a girth that is
// not more than 0.
//
// Source: plane geometry, an arc as a share of the girth.
func AngleOfShare(mark, girth units.Length) (units.Angle, error) {
	if !positive(girth) {
		return 0, fmt.Errorf("rim girth %v: want more than 0 mm: %w", girth, units.ErrDomain)
	}
	return units.Turn * units.Angle(mark/girth), nil
}
