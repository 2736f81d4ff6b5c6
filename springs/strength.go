package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Strength is the band of tensile strength that a table gives for a size. Most
// is 0 where the table prints none that can be relied on.
type Strength struct {
	Least, Most units.Pressure
	Source      string
}

// String writes the band: "1490 MPa to 1650 MPa".
func (s Strength) String() string {
	if s.Most == 0 {
		return fmt.Sprintf("%.0f MPa or more", s.Least.Megapascals())
	}
	return fmt.Sprintf("%.0f MPa to %.0f MPa", s.Least.Megapascals(), s.Most.Megapascals())
}

// most returns the upper end, or the lower one where there is none.
func (s Strength) most() units.Pressure { return max(s.Least, s.Most) }

// A strengthSource says how strength depends on size.
type strengthSource struct {
	kind        strengthKind
	source      string
	rows        []strengthRow
	from        float64 // least size, in the unit of the rows
	length      units.Length
	stress      units.Pressure
	indian      int            // IS 4454 grade
	strip       string         // steel of hardened and tempered strip
	least, most units.Pressure // the caller's own
}

type strengthKind int

const (
	none strengthKind = iota
	rows
	is4454
	strip
	hardness
	own
)

func inchList(source string, r []strengthRow) strengthSource {
	return strengthSource{kind: rows, source: source, rows: r, from: r[0].size, length: units.Inch, stress: units.KilopoundPerSquareInch}
}

func mmList(source string, r []strengthRow) strengthSource {
	return mmRanges(source, r[0].size, r)
}

func mmRanges(source string, from float64, r []strengthRow) strengthSource {
	return strengthSource{kind: rows, source: source, rows: r, from: from, length: units.Millimetre, stress: units.Megapascal}
}

func indian(grade int) strengthSource { return strengthSource{kind: is4454, indian: grade} }

// Strength returns the band of tensile strength for wire of the given diameter
// or strip of the given thickness. Least is the lower limit of the table, which
// is what a strength check should rest on: it is not the textbook's A/dᵐ, which
// for music wire lies 1 to 7 per cent above it (see FittedStrength).
//
// A size between two printed ones has the strength of the larger, which is the
// weaker. The error is units.ErrDomain for a material without a table, or a
// size outside it: strengths are never carried past the end of a table.
func (m Material) Strength(size units.Length) (Strength, error) {
	if err := positive("size", size); err != nil {
		return Strength{}, err
	}
	switch s := m.get().strength; s.kind {
	case rows:
		return s.byRows(m, size)
	case is4454:
		return s.byIndianGrade(m, size)
	case strip:
		return stripStrength(s.strip, size)
	case hardness:
		return hardnessStrength(size)
	case own:
		if s.least != 0 {
			return Strength{s.least, s.most, s.source}, nil
		}
	}
	return Strength{}, fmt.Errorf("%q: no table of strength on file: want FittedStrength for a textbook's fit, or NewMaterial with a strength of your own: %w", m.get().name, units.ErrDomain)
}

func (s strengthSource) byRows(m Material, size units.Length) (Strength, error) {
	x := float64(size / s.length)
	if x >= s.from/sameSize && x > 0 {
		for _, r := range s.rows {
			if r.lower != 0 && x <= r.size*sameSize {
				return Strength{units.Pressure(r.lower) * s.stress, units.Pressure(r.upper) * s.stress, s.source}, nil
			}
		}
	}
	return Strength{}, fmt.Errorf("%v of %v: the table runs from %v to %v: %w", m, size,
		units.Length(s.from)*s.length, units.Length(s.rows[len(s.rows)-1].size)*s.length, units.ErrDomain)
}

func (s strengthSource) byIndianGrade(m Material, size units.Length) (Strength, error) {
	mm := size.Millimetres()
	if mm >= patentedIS4454[0].size/sameSize {
		for _, r := range patentedIS4454 {
			if mm <= r.size*sameSize {
				return Strength{Least: units.Pressure(r.grades[s.indian-1]) * units.Megapascal, Source: "IS 4454, from Bhandari, Design of Machine Elements, Table 10.1"}, nil
			}
		}
	}
	return Strength{}, fmt.Errorf("%v of %v: the table runs from 0.3 mm to 8 mm: %w", m, size, units.ErrDomain)
}

// FittedStrength returns what the textbook's curve gives for the tensile
// strength of wire, in the metric form: A/dᵐ for the ASTM wires, a − b lg d for
// EN 10270-1.
//
// It is a fit, not a limit that bought wire must meet: music wire 2211/d^0.145
// lies above the lower limit of ASTM A228 at every size, by 0.9 per cent where it
// comes nearest, at 0.46 mm, and 6.6 per cent at 6.35 mm. Use it to follow a textbook, and
// Material.Strength for a check. The error is units.ErrDomain for a grade without
// a fit or a size outside it.
//
// Source: Shigley, Mechanical Engineering Design, Table 10-4 (from memory);
// EN 10270-1:2012, informative relation (see the table).
func FittedStrength(g Grade, diameter units.Length) (units.Pressure, error) {
	mm := diameter.Millimetres()
	if f, ok := powerFit(g, mm); ok {
		return units.Pressure(f.a/math.Pow(mm, f.m)) * units.Megapascal, nil
	}
	for _, f := range logFits {
		if f.grade == g && mm >= f.from/sameSize && mm <= f.to*sameSize {
			return units.Pressure(f.a-f.b*math.Log10(mm)) * units.Megapascal, nil
		}
	}
	return 0, fmt.Errorf("%v of %v: no fit on file for that size: %w", g, diameter, units.ErrDomain)
}

// FittedStrengthInch is FittedStrength with the coefficients for inches and
// thousands of pounds per square inch, which differ from the metric ones by up
// to 0.2 per cent: music wire 201/d^0.145 lies 1.1 to 6.9 per cent above the limit.
func FittedStrengthInch(g Grade, diameter units.Length) (units.Pressure, error) {
	if f, ok := powerFit(g, diameter.Millimetres()); ok {
		return units.Pressure(f.aInch/math.Pow(diameter.Inches(), f.m)) * units.KilopoundPerSquareInch, nil
	}
	return 0, fmt.Errorf("%v of %v: no fit in inches on file for that size: %w", g, diameter, units.ErrDomain)
}

type powerFitRow struct{ a, m, aInch float64 }

func powerFit(g Grade, mm float64) (powerFitRow, bool) {
	for _, f := range powerFits {
		if f.grade == g && mm >= f.from/sameSize && mm <= f.to*sameSize {
			return powerFitRow{f.a, f.m, f.aInch}, true
		}
	}
	return powerFitRow{}, false
}
