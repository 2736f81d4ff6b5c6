package springsheet

import (
	"strings"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A Steel is what strips or wires are made of: named by whoever sells them, or
// assumed. The figures stand in place of the tables where they are known.
type Steel struct {
	Named         string          `toml:"named"`
	Assumed       string          `toml:"assumed"`
	YoungsModulus *units.Pressure `toml:"youngs_modulus"`
	LeastStrength *units.Pressure `toml:"least_strength"`
	MostStrength  *units.Pressure `toml:"most_strength"`
}

// grade looks the name up among those of package springs.
func (s *Steel) grade(f *jobfile.File, at string) (springs.Grade, error) {
	key, name := at+".named", s.Named
	switch {
	case s.Named != "" && s.Assumed != "":
		return 0, f.Errorf(at+".assumed", "both named and assumed: if the seller names the steel, leave assumed out")
	case s.Assumed != "":
		key, name = at+".assumed", s.Assumed
	case s.Named == "":
		return 0, f.Errorf(at, "no steel: give named, as the seller has it, or assumed if nobody has said: \"strip C67S typical\" for hardened strip, \"music wire A228\" for wire")
	}
	g, err := springs.FindGrade(strings.TrimSpace(name))
	if err != nil {
		return 0, f.Errorf(key, "%s; for another name the nearest, and give youngs_modulus and least_strength", words(err))
	}
	return g, nil
}

// material returns the steel for strip or wire of a size.
func (s *Steel) material(f *jobfile.File, at string, size units.Length) (springs.Material, error) {
	grade, err := s.grade(f, at)
	if err != nil {
		return springs.Material{}, err
	}
	m := grade.Material()
	if s.YoungsModulus == nil && s.LeastStrength == nil && s.MostStrength == nil {
		return m, nil
	}
	spec := springs.MaterialSpec{Name: m.String(), Source: "the file", Like: grade}
	if strength, err := m.Strength(size); err == nil {
		spec.LeastStrength, spec.MostStrength = strength.Least, strength.Most
	}
	if spec.YoungsModulus, err = m.YoungsModulus(size); err == nil {
		spec.ShearModulus, _ = m.ShearModulus(size)
	}
	s.override(&spec)
	if m, err = springs.NewMaterial(spec); err != nil {
		return m, f.Errorf(at, "%s", words(err))
	}
	return m, nil
}

// override puts what the file gives in place of the tables' figures. A least
// strength of the file's own makes the table's most meaningless.
func (s *Steel) override(spec *springs.MaterialSpec) {
	if s.YoungsModulus != nil {
		spec.YoungsModulus = *s.YoungsModulus
	}
	if s.LeastStrength != nil {
		spec.LeastStrength, spec.MostStrength = *s.LeastStrength, 0
	}
	if s.MostStrength != nil {
		spec.MostStrength = *s.MostStrength
	}
}

// fixed returns a material with the figures that m has at a size, at every size,
// so that a size may be varied without stepping from row to row of a table.
func fixed(m springs.Material, size units.Length) (springs.Material, error) {
	e, err := m.YoungsModulus(size)
	if err != nil {
		return m, err
	}
	return springs.NewMaterial(springs.MaterialSpec{Name: m.String(), YoungsModulus: e, LeastStrength: 1 * units.Pascal})
}

// words is an error of the library without its last words, which say the kind of
// it to programs.
func words(err error) string {
	return strings.TrimSuffix(err.Error(), ": "+units.ErrDomain.Error())
}
