package threads

import (
	"math"

	"example.com/benchsums/units"
)

// A Form is the shape of a thread: the flank angle and how the sharp triangle
// is cut off at crest and root. Every length of a form goes with the pitch, so
// its methods take the pitch. The zero Form is no form: all its lengths are 0.
type Form uint8

// The forms. Each has its figures in the table of forms.
const (
	ISOForm        Form = iota + 1 // ISO 68-1 basic profile, bolt and nut
	ISOBoltForm                    // ISO metric bolt with its root rounded (d₃)
	UnifiedForm                    // ASME B1.1 basic profile
	UNRBoltForm                    // Unified bolt with its root rounded (UNR)
	SellersForm                    // United States Standard, American National
	SharpVForm                     // sharp V, untruncated
	WhitworthForm                  // 55°, BSW BSF BSP, brass, model engineer
	BAForm                         // British Association, 47.5°
	CycleForm                      // British Standard Cycle, CEI
	LoewenherzForm                 // Loewenherz, 53° 8'
	SIForm                         // Zürich congress of 1898
	OldDINForm                     // DIN 13 before ISO: the bolt
	NPTForm                        // American taper pipe
	formsEnd                       // one past the last
)

// A Shape is how a crest or a root is finished.
type Shape uint8

// The shapes. The size that goes with a Flat is its width, with Round its
// radius, with Sharp nothing. FlatOrRound is left to the maker, without a size.
const (
	Sharp Shape = iota
	Flat
	Round
	FlatOrRound
)

// String returns the shape in a word.
func (s Shape) String() string {
	switch s {
	case Sharp:
		return "sharp"
	case Flat:
		return "flat"
	case Round:
		return "rounded"
	case FlatOrRound:
		return "flat or rounded"
	}
	return "unknown shape"
}

// row returns the figures of f, and those of no form for a value out of range.
func (f Form) row() *formRow {
	if f >= formsEnd {
		return &forms[0]
	}
	return &forms[f]
}

// String returns the name of the form.
func (f Form) String() string { return f.row().name }

// Source returns where the figures of the form come from.
func (f Form) Source() string { return f.row().source }

// FromMemory reports whether the figures of the form were not found in print.
func (f Form) FromMemory() bool { return f.row().memory }

// Angle returns the included angle between the flanks, 60° for ISO metric. The
// flank itself leans half of that from the square to the axis.
func (f Form) Angle() units.Angle {
	return units.Angle(2 * math.Atan(f.row().tan))
}

// TanFlank returns the tangent of the flank angle, which is half the included
// angle. It is the number in which nearly every formula wants the angle.
func (f Form) TanFlank() float64 { return f.row().tan }

// Height returns H, the height of the sharp triangle:
//
//	H = p / (2 tan(α/2))   with α the included angle.
func (f Form) Height(pitch units.Length) units.Length {
	if f.row().tan == 0 {
		return 0
	}
	return pitch / units.Length(2*f.row().tan)
}

// Depth returns the depth of thread, crest to root along the radius.
func (f Form) Depth(pitch units.Length) units.Length {
	return units.Length(f.row().depth) * pitch
}

// EffectiveBelow returns how much smaller the effective (pitch) diameter is
// than the major.
func (f Form) EffectiveBelow(pitch units.Length) units.Length {
	return units.Length(f.row().effective) * pitch
}

// MinorBelow returns how much smaller the minor diameter is than the major.
func (f Form) MinorBelow(pitch units.Length) units.Length {
	return units.Length(f.row().minor) * pitch
}

// Crest returns the shape of the crest and its size: the width of a flat, the
// radius of a rounding.
func (f Form) Crest(pitch units.Length) (Shape, units.Length) {
	r := f.row()
	return r.crest, units.Length(r.crestSize) * pitch
}

// Root returns the shape of the root and its size, as Crest does.
func (f Form) Root(pitch units.Length) (Shape, units.Length) {
	r := f.row()
	return r.root, units.Length(r.rootSize) * pitch
}
