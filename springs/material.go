package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Family groups materials that published rules treat alike.
type Family int

const (
	// OtherFamily has no published rules: shares of strength must be the
	// caller's own.
	OtherFamily Family = iota
	// PatentedDrawn: music wire, hard-drawn and patented cold drawn carbon steel.
	PatentedDrawn
	// HardenedTempered: hardened and tempered carbon and low alloy steel.
	HardenedTempered
	// Austenitic stainless steel.
	Austenitic
	// NonFerrous: phosphor bronze and the like.
	NonFerrous
)

// String names the family.
func (f Family) String() string {
	switch f {
	case OtherFamily:
		return "other"
	case PatentedDrawn:
		return "patented or hard drawn steel"
	case HardenedTempered:
		return "hardened and tempered steel"
	case Austenitic:
		return "austenitic stainless steel"
	case NonFerrous:
		return "non-ferrous"
	}
	return fmt.Sprintf("Family(%d)", int(f))
}

// A Material is what springs are made of: moduli, strength by size, density,
// each with its source. Get one from a Grade, or make your own with
// NewMaterial. The zero Material is refused by every constructor.
type Material struct{ row *materialRow }

// get returns what is kept, nothing for the zero Material.
func (m Material) get() *materialRow {
	if m.row == nil {
		return &noMaterial
	}
	return m.row
}

var noMaterial materialRow

type materialRow struct {
	grade        Grade
	name         string
	family       Family
	strength     strengthSource
	moduli       []modulusRow
	moduliSource string
	density      float64 // g/cm³, 0 where none was read
}

// A MaterialSpec describes a material of the caller's own.
type MaterialSpec struct {
	Name          string
	YoungsModulus units.Pressure // E, for torsion and spiral springs
	ShearModulus  units.Pressure // G, for compression and extension springs; 0 if not known
	LeastStrength units.Pressure // tensile strength it surely has; 0 if not known
	MostStrength  units.Pressure // the most it has; 0 if not known
	Density       units.Density  // 0 if not known
	Source        string         // where the figures are from
	Like          Grade          // the grade whose published shares of strength apply; 0 for none
}

// NewMaterial returns a material of the caller's own, of one strength for all
// sizes. The error is units.ErrDomain for a figure that is not finite or below
// 0, no modulus at all, or a most below the least strength.
func NewMaterial(spec MaterialSpec) (Material, error) {
	err := first(
		notNegative("Young's modulus", spec.YoungsModulus),
		notNegative("shear modulus", spec.ShearModulus),
		notNegative("least strength", spec.LeastStrength),
		notNegative("most strength", spec.MostStrength),
		notNegative("density", spec.Density),
	)
	like := spec.Like.Material().get()
	switch {
	case err != nil:
		return Material{}, err
	case spec.YoungsModulus == 0 && spec.ShearModulus == 0:
		return Material{}, fmt.Errorf("material %q: want Young's modulus or the shear modulus, above 0: %w", spec.Name, units.ErrDomain)
	case spec.MostStrength != 0 && spec.MostStrength < spec.LeastStrength:
		return Material{}, fmt.Errorf("material %q: most strength %v: want %v or more, the least strength: %w", spec.Name, spec.MostStrength, spec.LeastStrength, units.ErrDomain)
	case spec.Like != 0 && like.name == "":
		return Material{}, fmt.Errorf("material %q: like %v: want a grade of this package: %w", spec.Name, spec.Like, units.ErrDomain)
	}
	source := spec.Source
	if source == "" {
		source = "the caller"
	}
	return Material{&materialRow{
		grade: spec.Like, name: spec.Name, family: like.family,
		strength:     strengthSource{kind: own, source: source, least: spec.LeastStrength, most: spec.MostStrength},
		moduli:       []modulusRow{{0, spec.YoungsModulus.Gigapascals(), spec.ShearModulus.Gigapascals()}},
		moduliSource: source,
		density:      spec.Density.GramsPerCubicCentimetre(),
	}}, nil
}

// String returns the name.
func (m Material) String() string { return m.get().name }

// Family returns the group whose published rules apply.
func (m Material) Family() Family { return m.get().family }

// YoungsModulus returns E for wire or strip of the given size: round wire by its
// diameter, strip by its thickness. It falls a little with size in drawn wire.
// The error is units.ErrDomain where no figure is kept.
//
// Sources: see the tables; ModulusSource names them.
func (m Material) YoungsModulus(size units.Length) (units.Pressure, error) {
	r, err := m.modulus(size)
	if err == nil && r.e == 0 {
		err = fmt.Errorf("%v: no Young's modulus on file: want a material with one: %w", m, units.ErrDomain)
	}
	return units.Pressure(r.e) * units.Gigapascal, err
}

// ShearModulus returns G for the given size. The error is units.ErrDomain where
// no figure is kept.
func (m Material) ShearModulus(size units.Length) (units.Pressure, error) {
	r, err := m.modulus(size)
	if err == nil && r.g == 0 {
		err = fmt.Errorf("%v: no shear modulus on file: want a material with one: %w", m, units.ErrDomain)
	}
	return units.Pressure(r.g) * units.Gigapascal, err
}

// ModulusSource says where the moduli are from.
func (m Material) ModulusSource() string { return m.get().moduliSource }

func (m Material) modulus(size units.Length) (modulusRow, error) {
	if err := positive("size", size); err != nil {
		return modulusRow{}, err
	}
	mm := size.Millimetres()
	for _, r := range m.get().moduli {
		if r.upTo == 0 || mm <= r.upTo*sameSize {
			return r, nil
		}
	}
	return modulusRow{}, fmt.Errorf("material %q: no moduli on file: %w", m.get().name, units.ErrDomain)
}

// Density returns the density. The error is units.ErrDomain where none is kept.
func (m Material) Density() (units.Density, error) {
	if m.get().density == 0 {
		return 0, fmt.Errorf("material %q: no density on file: want a material with one: %w", m.get().name, units.ErrDomain)
	}
	return units.Density(m.get().density) * units.GramPerCubicCentimetre, nil
}

func (m Material) check() error {
	if m.row == nil {
		return fmt.Errorf("no material given: want one from a Grade or NewMaterial: %w", units.ErrDomain)
	}
	return nil
}

// WireTolerance returns what the diameter of patented wire may differ from its
// nominal size, plus and minus. Sizes between the printed bands, which are not
// standard sizes, have that of the next band up. The error is units.ErrDomain
// outside 0.05 mm to 20 mm.
//
// Source: EN 10270-1, as reported in Klein, Einführung in die DIN-Normen.
func WireTolerance(diameter units.Length) (units.Length, error) {
	mm := diameter.Millimetres()
	for _, r := range wireTolerances {
		if mm >= wireTolerances[0].from/sameSize && mm <= r.to*sameSize {
			return units.Length(r.tolerance) * units.Millimetre, nil
		}
	}
	return 0, fmt.Errorf("wire %v: want 0.05 mm to 20 mm: %w", diameter, units.ErrDomain)
}

// ElasticLimit returns the band in which the elastic limit lies, as shares of
// the tensile strength, for tension (which goes for bending) and for torsion.
// The error is units.ErrDomain for a material without such a line; a torsion
// share of 0 means that the line has none.
//
// Source: Shigley, Mechanical Engineering Design, Table 10-5 (from memory).
func (m Material) ElasticLimit() (tension, torsion [2]float64, err error) {
	for _, r := range elasticLimits {
		if r.grade == m.get().grade {
			return [2]float64{r.tensionLow / 100, r.tensionHigh / 100}, [2]float64{r.torsionLow / 100, r.torsionHigh / 100}, nil
		}
	}
	return tension, torsion, fmt.Errorf("%v: no elastic limit on file: %w", m, units.ErrDomain)
}

// sameSize lets a size count as the printed one in spite of rounding between
// inches and millimetres: a part in a million.
const sameSize = 1 + 1e-6

// atMost reports whether x is no more than limit, but for rounding.
func atMost(x, limit float64) bool { return x <= limit+math.Abs(limit)*1e-12 }
