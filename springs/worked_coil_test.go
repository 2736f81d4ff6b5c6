package springs_test

import (
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// TestShigleyCompressionExample: Example 10-1, with D = 0.400 in and S_sy = 146
// kpsi carried as printed (unrounded arithmetic lies within 0.4 per cent).
func TestShigleyCompressionExample(t *testing.T) {
	const source = "Shigley, Mechanical Engineering Design, Example 10-1 (from memory)"
	printed := func(digits string, got float64) {
		t.Helper()
		figures.Figure{Printed: digits, Source: source}.Check(t, got)
	}
	const d = 0.037 * inch
	sut, err := springs.FittedStrengthInch(springs.MusicWireA228, d)
	ok(t, err)
	share, _, err := springs.MusicWireA228.Material().Share(springs.SteadyCompression)
	ok(t, err)
	printed("146", share*sut.KilopoundsPerSquareInch())
	spec := springs.CompressionSpec{Wire: wire(t, d), MeanDiameter: 0.400 * inch, TotalTurns: 12.5, Ends: springs.SquaredEnds, Material: steel(t, 28.5e6*psi, 11.85e6*psi)}
	c := compression(t, spec)
	printed("10.8", c.Index())
	printed("1.124", c.ShearFactor())
	load := c.ForceAtStress(146 * kpsi)
	printed("6.46", load.PoundsForce())
	printed("4.13", c.Rate().PoundsForcePerInch())
	printed("1.56", c.Deflection(load).Inches())
	printed("0.500", c.SolidLength().Inches())
	printed("2.06", (c.SolidLength() + c.Deflection(load)).Inches())
	spec.MeanDiameter, spec.OutsideDiameter = 0, 0.4375*inch
	x := compression(t, spec)
	load = x.ForceAtStress(units.Pressure(share) * sut)
	figures.Near(t, "load without rounding", load.PoundsForce(), 6.46, 0.004*6.46)
	figures.Near(t, "rate without rounding", x.Rate().PoundsForcePerInch(), 4.13, 0.004*4.13)
	figures.Near(t, "deflection without rounding", x.Deflection(load).Inches(), 1.56, 0.004*1.56)
	// stable as long as L₀ < 2.63 D/α, with the moduli behind 2.63
	spec.Material = steel(t, 207e3*mpa, 79.3e3*mpa)
	stable, err := compression(t, spec).StableLength(springs.BothFlat)
	ok(t, err)
	if stable < 2.06*inch {
		t.Errorf("stable length %v: the example's 2.06 in is said to be stable", stable)
	}
}

func TestHandbookCompressionExample(t *testing.T) {
	const source = "Machinery's Handbook, 31st ed., p. 318-319, compression spring example"
	const d, od = 0.0915 * inch, 0.8125 * inch
	figures.Figure{Printed: "0.1594", Source: source}.Check(t, springs.CoilDeflection(100*kpsi, od-d, d, springs.HandbookShearModulus).Inches())
	figures.Figure{Printed: "86.3", Source: source}.Check(t, 100*36/41.7)
	figures.Near(t, "load of one coil", springs.CoilLoad(100*kpsi, od-d, d).PoundsForce(), 41.7, 0.05)
	figures.Figure{Printed: "9.1", Source: source}.Check(t, 1.25/0.1375)
	// the same in one spring: 36 lb, 1.25 in, 11.2 million psi
	c := compression(t, springs.CompressionSpec{Wire: wire(t, d), OutsideDiameter: od, TotalTurns: 9.1, Material: steel(t, 0, springs.HandbookShearModulus), Shear: springs.NoShear})
	figures.Near(t, "deflection under 36 lb", c.Deflection(36*lbf).Inches(), 1.25, 0.005)
}

func TestHandbookCompressionTable(t *testing.T) {
	const source = "Machinery's Handbook, 31st ed., Table 5, pp. 321-322"
	for _, tc := range []struct {
		od, d units.Length
		f, p  string
		gauge string
	}{
		{0.875 * inch, 0.0938 * inch, "0.1825", "41.5", ""},
		{0.875 * inch, 0.1205 * inch, "0.1325", "91.1", "11"},
		{0.9375 * inch, 0.1205 * inch, "0.1554", "84.1", "11"},
		{1.0 * inch, 0.1483 * inch, "0.1372", "150.4", "9"},
	} {
		figures.Figure{Printed: tc.f, Source: source}.Check(t, springs.CoilDeflection(100*kpsi, tc.od-tc.d, tc.d, springs.HandbookShearModulus).Inches())
		figures.Figure{Printed: tc.p, Source: source}.Check(t, springs.CoilLoad(100*kpsi, tc.od-tc.d, tc.d).PoundsForce())
		if tc.gauge != "" {
			size, err := springs.WashburnMoenGauge.Diameter(tc.gauge)
			ok(t, err)
			figures.Near(t, "gauge "+tc.gauge, size.Inches(), tc.d.Inches(), 1e-12)
		}
	}
	figures.Figure{Printed: "39.4", Source: source}.Misprint(t, springs.CoilLoad(100*kpsi, (0.875-0.0915)*inch, 0.0915*inch).PoundsForce(), "digit slip")
	figures.Figure{Printed: "18.26", Source: source}.Misprint(t, springs.CoilLoad(100*kpsi, (0.875-0.072)*inch, 0.072*inch).PoundsForce(), "last digit of a table reckoned by hand")
}

func TestBhavikattiCompression(t *testing.T) {
	const source = "Bhavikatti, Strength of Materials, Ex. 6.22, p. 254 (output of a companion)"
	c := compression(t, springs.CompressionSpec{Wire: wire(t, 12*mm), MeanDiameter: 150 * mm, TotalTurns: 10, Material: steel(t, 0, 80000*mpa), Shear: springs.NoShear})
	figures.Figure{Printed: "99.47", Source: source}.Check(t, c.Stress(450).Megapascals())
	x := c.Deflection(450)
	figures.Figure{Printed: "73.24", Source: source}.Check(t, x.Millimetres())
	figures.Figure{Printed: "6.14", Source: source}.Check(t, c.Rate().NewtonsPerMillimetre())
	figures.Figure{Printed: "16479.49", Source: source}.Check(t, c.Energy(x).Joules()*1000) // N mm
}

func TestSinghCompression(t *testing.T) {
	const source = "Sadhu Singh, Machine Design-I, Ex. 8.12, p. 236 (output of a companion)"
	spec := springs.CompressionSpec{Wire: wire(t, 6*mm), OutsideDiameter: 75 * mm, TotalTurns: 1, Material: steel(t, 0, 84000*mpa), Shear: springs.DirectShear}
	c := compression(t, spec)
	load := c.ForceAtStress(350 * mpa)
	figures.Figure{Printed: "412.3", Source: source}.Check(t, load.Newtons())
	figures.Figure{Printed: "9.954", Source: source}.Check(t, c.Deflection(load).Millimetres())
	spec.Shear = springs.WahlShear
	figures.Figure{Printed: "382.5", Source: source}.Check(t, compression(t, spec).ForceAtStress(350*mpa).Newtons())
}

// TestJindalFactors: Ex. 8-1 at C = 6, where the companion divides whole numbers,
// and Ex. 8-8.
func TestJindalFactors(t *testing.T) {
	const source = "Jindal, Machine Design, Ex. 8-1, p. 224 (companion)"
	ks, err := springs.DirectShear.Factor(6)
	ok(t, err)
	kw, err := springs.WahlShear.Factor(6)
	ok(t, err)
	figures.Figure{Printed: "1.0000", Source: source}.Misprint(t, ks, "the companion divides whole numbers")
	figures.Figure{Printed: "1.1025", Source: source}.Misprint(t, kw, "the companion divides whole numbers")
	figures.Near(t, "K_s", ks, 1+0.5/6, 1e-15)
	figures.Near(t, "K_W", kw, 1.2525, 0.00005)
}

// TestShigleyExtensionExample: Example 10-6.
func TestShigleyExtensionExample(t *testing.T) {
	const source = "Shigley, Mechanical Engineering Design, Example 10-6 (from memory)"
	printed := func(digits string, got float64) {
		t.Helper()
		figures.Figure{Printed: digits, Source: source}.Check(t, got)
	}
	const d = 0.035 * inch
	x, err := springs.NewExtension(springs.ExtensionSpec{
		Wire: wire(t, d), OutsideDiameter: 0.248 * inch, BodyTurns: 12.17, InitialTension: 1.19 * lbf,
		HookRadius: 0.106 * inch, BendRadius: 0.089 * inch, Material: steel(t, 28.7e6*psi, 11.6e6*psi),
	})
	ok(t, err)
	const load = 5.25 * lbf
	printed("6.086", x.Index())
	printed("1.234", x.ShearFactor())
	printed("12.57", x.ActiveTurns())
	figures.Figure{Printed: "17.91", Source: source, Place: 0.04}.Check(t, x.Rate().PoundsForcePerInch())
	printed("15.1", x.InitialStress().KilopoundsPerSquareInch())
	y, err := x.Stretch(load)
	ok(t, err)
	printed("0.227", y.Inches())
	sut, err := springs.FittedStrengthInch(springs.HardDrawnA227ClassI, d)
	ok(t, err)
	printed("264.7", sut.KilopoundsPerSquareInch())
	stress := x.Stress(load)
	printed("82.0", stress.KilopoundsPerSquareInch())
	share := func(d springs.Duty) float64 {
		v, _, err := springs.HardDrawnA227ClassI.Material().Share(d)
		ok(t, err)
		return v * 264.7
	}
	printed("1.45", share(springs.ExtensionBody)/82.0)
	bending := x.HookBending(load).KilopoundsPerSquareInch()
	figures.Figure{Printed: "156.9", Source: source, Place: 0.8}.Check(t, bending) // hook factors rounded to 1.14 and 1.18
	printed("1.27", share(springs.ExtensionHookBending)/156.9)
	plain := units.Pressure(8 / 3.14159265358979 * float64(load) * float64(x.MeanDiameter()) / (float64(d) * float64(d) * float64(d)))
	figures.Figure{Printed: "78.4", Source: source, Place: 0.4}.Check(t, 1.18*plain.KilopoundsPerSquareInch()) // the factor as printed
	torsion, err := x.HookTorsion(load)
	ok(t, err)
	figures.Near(t, "hook torsion without rounding", torsion.KilopoundsPerSquareInch(), 78.4, 0.01*78.4)
	printed("1.35", share(springs.ExtensionHookTorsion)/78.4)
}

// TestSquareWireConstants: the handbook's figures for square wire against
// Saint-Venant, section modulus 0.208 a³ and torsion constant a⁴/7.11.
func TestSquareWireConstants(t *testing.T) {
	const pi = 3.14159265358979
	figures.Figure{Printed: "0.416", Source: "Machinery's Handbook, 31st ed., p. 318, square wire; Saint-Venant (from memory)"}.Check(t, 2*0.208)
	figures.Figure{Printed: "2.32", Source: "Machinery's Handbook, 31st ed., p. 318, square wire; Saint-Venant (from memory)"}.Check(t, 0.416*pi*7.11/4)
	const a, mean = 3 * mm, 30 * mm
	section, err := springs.SquareWire(a)
	ok(t, err)
	c := compression(t, springs.CompressionSpec{Wire: section, MeanDiameter: mean, TotalTurns: 1, Material: steel(t, 0, 80e3*mpa), Shear: springs.NoShear})
	load := springs.SquareCoilLoad(500*mpa, mean, a)
	figures.Near(t, "load", float64(c.ForceAtStress(500*mpa)), float64(load), 1e-9)
	figures.Near(t, "deflection", float64(c.Deflection(load)), float64(springs.SquareCoilDeflection(500*mpa, mean, a, 80e3*mpa)), 1e-12)
}

func TestInitialTensionStress(t *testing.T) {
	// 10 lb in all, 2 lb of it initial tension, 8 lb that stretches at 40 kpsi
	s, err := springs.InitialTensionStress(40*kpsi, 2*lbf, 8*lbf)
	ok(t, err)
	figures.Near(t, "S_IT, kpsi", s.KilopoundsPerSquareInch(), 10, 1e-9)
	_, err = springs.InitialTensionStress(40*kpsi, 2*lbf, 0)
	refused(t, err, "load that stretches the spring")
}

// TestBucklingConstant: 2.63 with the moduli of steel, 2.56 with those of
// phosphor bronze.
func TestBucklingConstant(t *testing.T) {
	for _, tc := range []struct {
		printed string
		m       springs.Material
	}{
		{"2.63", steel(t, 207e3*mpa, 79.3e3*mpa)},
		{"2.56", springs.PhosphorBronzeB159.Material()},
	} {
		c := compression(t, springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, TotalTurns: 10, FreeLength: 200 * mm, Material: tc.m})
		for seating, alpha := range map[springs.Seating]float64{springs.BothFlat: 0.5, springs.FlatAndHinged: 0.707, springs.BothHinged: 1, springs.FlatAndFree: 2} {
			l, err := c.StableLength(seating)
			ok(t, err)
			figures.Figure{Printed: tc.printed, Source: "Shigley, eq. 10-12 and Table 10-2"}.Check(t, float64(l/(20*mm))*alpha)
		}
		// just above the stable length it buckles nearly at the greatest deflection the
		// formula knows, L₀ E/(2(E − G)); further up, sooner
		last := units.Length(1)
		for _, l0 := range []units.Length{110 * mm, 150 * mm, 200 * mm, 400 * mm} {
			c := compression(t, springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, TotalTurns: 10, FreeLength: l0, Material: tc.m})
			y, err := c.BucklingDeflection(springs.BothFlat)
			ok(t, err)
			if share := y / l0; !(share < last && share > 0) {
				t.Errorf("buckles at %v of %v, %v before", y, l0, last)
			} else {
				last = share
			}
		}
		short := compression(t, springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, TotalTurns: 10, FreeLength: 90 * mm, Material: tc.m})
		_, err := short.BucklingDeflection(springs.BothFlat)
		refused(t, err, "does not buckle")
	}
}

// TestSurge: Shigley's form, the closed form d/(π D² N) √(G/(8 ρ)), and the constant
// for steel, 3.63e5 d/(N D²) Hz.
func TestSurge(t *testing.T) {
	c := compression(t, springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, TotalTurns: 8, Material: springs.PatentedSM.Material()})
	f, err := c.SurgeSpeed()
	ok(t, err)
	figures.Figure{Printed: "3.63e5", Source: "derived from Shigley, eq. 10-25; EN 13906-1 (from memory), G 81.5 GPa"}.Check(t, f.RevolutionsPerSecond()*8*400/2)
}

// TestFatigueOfACoil: at zero mean the Goodman line ends on S_se, and the factor falls as
// the load rises.
func TestFatigueOfACoil(t *testing.T) {
	c := compression(t, springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, TotalTurns: 8, Material: springs.MusicWireA228.Material()})
	last := 1e9
	for f := units.Force(10); f < 200; f += 10 {
		n, err := c.FatigueFactor(0, f, false)
		ok(t, err)
		peened, err := c.FatigueFactor(0, f, true)
		ok(t, err)
		if !(n < last && n > 0 && peened > n) {
			t.Errorf("factor %g (peened %g) at %v, %g before", n, peened, f, last)
		}
		last = n
	}
	_, err := c.FatigueFactor(20, 10, false)
	refused(t, err, "rising")
	a, m := springs.Zimmerli(false)
	ap, mp := springs.Zimmerli(true)
	for _, z := range []struct {
		mpa, kpsi float64
		got       units.Pressure
	}{{241, 35, a}, {379, 55, m}, {398, 57.5, ap}, {534, 77.5, mp}} {
		figures.Near(t, "Zimmerli, MPa", z.got.Megapascals(), z.mpa, 1e-9)
		figures.Near(t, "Zimmerli, kpsi", z.got.KilopoundsPerSquareInch(), z.kpsi, 0.005*z.kpsi)
	}
}
