package springs_test

import (
	"errors"
	"strings"
	"testing"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

const (
	mm   = units.Millimetre
	inch = units.Inch
	mpa  = units.Megapascal
	psi  = units.PoundPerSquareInch
	kpsi = units.KilopoundPerSquareInch
	nmm  = units.NewtonMillimetre
	lbin = units.PoundForceInch
	lbf  = units.PoundForce
)

// ok stops the test at an error.
func ok(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func same[T comparable](t testing.TB, what string, got, want T) {
	t.Helper()
	if got != want {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

// refused fails t unless err is units.ErrDomain and says all of the words.
func refused(t testing.TB, err error, words ...string) {
	t.Helper()
	if !errors.Is(err, units.ErrDomain) {
		t.Errorf("got %v, want units.ErrDomain", err)
		return
	}
	for _, w := range words {
		if !strings.Contains(err.Error(), w) {
			t.Errorf("error %q does not say %q", err, w)
		}
	}
}

func wire(t testing.TB, d units.Length) springs.Section {
	t.Helper()
	s, err := springs.RoundWire(d)
	ok(t, err)
	return s
}

func strip(t testing.TB, width, thickness units.Length) springs.Section {
	t.Helper()
	s, err := springs.RectangularWire(width, thickness)
	ok(t, err)
	return s
}

func steel(t testing.TB, e, g units.Pressure) springs.Material {
	t.Helper()
	m, err := springs.NewMaterial(springs.MaterialSpec{Name: "steel", YoungsModulus: e, ShearModulus: g, Like: springs.MusicWireA228})
	ok(t, err)
	return m
}

func torsion(t testing.TB, spec springs.TorsionSpec) springs.Torsion {
	t.Helper()
	s, err := springs.NewTorsion(spec)
	ok(t, err)
	return s
}

func spiral(t testing.TB, spec springs.SpiralSpec) springs.Spiral {
	t.Helper()
	s, err := springs.NewSpiral(spec)
	ok(t, err)
	return s
}

func barrel(t testing.TB, spec springs.BarrelSpec) springs.Barrel {
	t.Helper()
	b, err := springs.NewBarrel(spec)
	ok(t, err)
	return b
}

func compression(t testing.TB, spec springs.CompressionSpec) springs.Compression {
	t.Helper()
	c, err := springs.NewCompression(spec)
	ok(t, err)
	return c
}
