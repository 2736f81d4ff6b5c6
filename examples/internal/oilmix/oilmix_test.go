package oilmix

import (
	"errors"
	"math"
	"testing"

	"example.com/benchsums/units"
	"github.com/stretchr/testify/require"
)

func mix(t *testing.T, r float64) Mix {
	t.Helper()
	m, err := NewMix(r)
	require.NoError(t, err)
	return m
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-12*math.Max(1, math.Abs(want))) {
		t.Errorf("%s: got %.15g, want %.15g", what, got, want)
	}
}

func TestMeasures(t *testing.T) {
	// Eight pints to the gallon, in either country (definition).
	for _, tc := range []struct{ oil, petrol units.Volume }{
		{units.ImperialPint / 2, units.ImperialGallon}, {units.USPint / 2, units.USGallon}, {units.Litre, 16 * units.Litre},
	} {
		m, err := OilTo(tc.oil, tc.petrol)
		require.NoError(t, err)
		near(t, "half a pint to the gallon", m.PetrolToOil(), 16)
	}
	m, err := OilShare(0.05)
	require.NoError(t, err)
	near(t, "5 % of the mix", m.PetrolToOil(), 19)
	if m.String() != "19:1" {
		t.Errorf("%v", m)
	}
}

func TestFill(t *testing.T) {
	m := mix(t, 16)
	petrol, oil := m.Fill(17 * units.Litre)
	near(t, "petrol", petrol.Litres(), 16)
	near(t, "oil", oil.Litres(), 1)
	near(t, "back", float64(m.PetrolFor(m.OilFor(3*units.Litre))/units.Litre), 3)
	near(t, "share", float64(m.OilOfMix()), 1.0/17)
}

func TestBlendAndCorrect(t *testing.T) {
	a, b := mix(t, 16), mix(t, 32)
	same, err := Blend(a, units.Litre, a, 5*units.Litre)
	require.NoError(t, err)
	near(t, "like with like", same.PetrolToOil(), 16)
	m, err := Blend(a, 17*units.Litre, b, 33*units.Litre) // 16+32 petrol, 1+1 oil
	require.NoError(t, err)
	near(t, "blend", m.PetrolToOil(), 24)
	oil, petrol := Correct(b, 33*units.Litre, a)
	near(t, "oil to add", oil.Litres(), 1)
	near(t, "no petrol", petrol.Litres(), 0)
	oil, petrol = Correct(a, 17*units.Litre, b)
	near(t, "no oil", oil.Litres(), 0)
	near(t, "petrol to add", petrol.Litres(), 16)
}

func TestRefusals(t *testing.T) {
	for name, err := range map[string]error{
		"turned about": func() error { _, err := NewMix(1.0 / 16); return err }(),
		"NaN":          func() error { _, err := NewMix(math.NaN()); return err }(),
		"no oil":       func() error { _, err := OilTo(0, units.Litre); return err }(),
		"all oil":      func() error { _, err := OilShare(1); return err }(),
		"nothing":      func() error { _, err := Blend(Mix{16}, 0, Mix{16}, 0); return err }(),
	} {
		if !errors.Is(err, units.ErrDomain) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
