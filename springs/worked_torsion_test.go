package springs_test

import (
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// TestShigleyTorsionExample follows Example 10-8 with the values that it carries
// rounded, D = 0.5218 in, S_ut = 294.4, S_y = 229.6, K_i = 1.115 and the like, and then
// without rounding, within the 0.15 per cent that this makes.
func TestShigleyTorsionExample(t *testing.T) {
	const source = "Shigley, Mechanical Engineering Design, Example 10-8 (from memory)"
	printed := func(digits string, got float64) {
		t.Helper()
		figures.Figure{Printed: digits, Source: source}.Check(t, got)
	}
	const d = 0.072 * inch
	strength, err := springs.FittedStrengthInch(springs.MusicWireA228, d)
	ok(t, err)
	printed("294.4", strength.KilopoundsPerSquareInch()) // A/dᵐ, a fit
	sy := 0.78 * 294.4 * kpsi
	printed("229.6", sy.KilopoundsPerSquareInch())

	exact := torsion(t, springs.TorsionSpec{
		Wire: wire(t, d), OutsideDiameter: 0.59375 * inch, BodyTurns: 4.25, Legs: [2]units.Length{1 * inch, 1 * inch},
		Material: steel(t, 28.5e6*psi, 0), Constant: springs.Allowance108,
	})
	spec := springs.TorsionSpec{
		Wire: wire(t, d), MeanDiameter: 0.5218 * inch, BodyTurns: 4.25, Legs: [2]units.Length{1 * inch, 1 * inch},
		Material: steel(t, 28.5e6*psi, 0), Constant: springs.Allowance108,
	}
	s := torsion(t, spec)
	printed("7.247", s.Index())
	printed("1.115", s.CurvatureFactor())
	const ki = 1.115
	static := units.Torque(float64(s.Wire().TorqueAtStress(229.6*kpsi)) / ki)
	printed("7.546", static.PoundForceInches())
	printed("4.657", s.ActiveTurns())
	carried := spec
	carried.BodyTurns, carried.Legs = 4.657, [2]units.Length{} // N_a as printed
	printed("29.18", torsion(t, carried).Rate().PoundForceInchesPerTurn())
	wind := s.Angle(static)
	printed("0.259", wind.Turns())
	printed("93.2", (0.259 * units.Turn).Degrees()) // from the turns as printed
	figures.Near(t, "angle without rounding", wind.Degrees(), 93.2, 0.0015*93.2)
	printed("0.236", s.BodyAngle(wind).Turns())
	printed("0.494", s.MeanDiameterWound(wind).Inches())
	printed("0.022", s.PinClearance(0.400*inch, wind).Inches())

	alternating := units.Pressure(ki) * s.Wire().StressAtTorque(2*lbin)
	printed("60857", alternating.PoundsPerSquareInch())
	figures.Figure{Printed: "91286", Source: source, Place: 4}.Check(t, units.Pressure(ki*float64(s.Wire().StressAtTorque(3*lbin))).PoundsPerSquareInch())
	share, _, err := springs.MusicWireA228.Material().Share(springs.Bending1000000)
	ok(t, err)
	endurance, err := springs.GerberEndurance(units.Pressure(share)*294.4*kpsi, 294.4*kpsi)
	ok(t, err)
	printed("78.51", endurance.KilopoundsPerSquareInch())
	amplitude, err := springs.GerberAmplitude(78.51*kpsi, 294.4*kpsi, 2.0/3)
	ok(t, err)
	printed("68.85", amplitude.KilopoundsPerSquareInch())
	printed("1.13", float64(amplitude/alternating))

	for what, pair := range map[string][2]float64{
		"index":      {exact.Index(), 7.247},
		"factor":     {exact.CurvatureFactor(), 1.115},
		"static":     {exact.TorqueAtStress(229.6 * kpsi).PoundForceInches(), 7.546},
		"turns":      {exact.ActiveTurns(), 4.657},
		"rate":       {exact.Rate().PoundForceInchesPerTurn(), 29.18},
		"alternates": {exact.Stress(2 * lbin).PoundsPerSquareInch(), 60857},
		"mean":       {exact.Stress(3 * lbin).PoundsPerSquareInch(), 91286},
	} {
		figures.Near(t, what+" without rounding", pair[0], pair[1], 0.0015*pair[1])
	}
}

// TestShigleyFatigueInOneCall holds Fatigue against the steps of Example 10-8.
func TestShigleyFatigueInOneCall(t *testing.T) {
	m, err := springs.NewMaterial(springs.MaterialSpec{Name: "music wire, fitted", YoungsModulus: 28.5e6 * psi, LeastStrength: 294.4 * kpsi, Like: springs.MusicWireA228})
	ok(t, err)
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 0.072*inch), OutsideDiameter: 0.59375 * inch, BodyTurns: 4.25, Material: m})
	f, err := s.Fatigue(1*lbin, 5*lbin, springs.Bending1000000)
	ok(t, err)
	figures.Near(t, "S_e", f.Endurance.KilopoundsPerSquareInch(), 78.51, 0.005)
	figures.Near(t, "S_a", f.Amplitude.KilopoundsPerSquareInch(), 68.85, 0.02)
	figures.Near(t, "n_f", f.Factor, 1.13, 0.005)
	same(t, "source", f.Source, "Shigley, Table 10-10 (from memory)")
}

// TestJindalTorsionExample: Ex. 8-9.
func TestJindalTorsionExample(t *testing.T) {
	const source = "Jindal, Machine Design, Ex. 8-9, p. 230 (output of a companion)"
	printed := func(digits string, got float64) {
		t.Helper()
		figures.Figure{Printed: digits, Source: source}.Check(t, got)
	}
	const d = 1.5 * mm
	strength, err := springs.FittedStrength(springs.MusicWireA228, d)
	ok(t, err)
	spec := springs.TorsionSpec{Wire: wire(t, d), OutsideDiameter: 16 * mm, BodyTurns: 4.25, Legs: [2]units.Length{20 * mm, 20 * mm}, Material: steel(t, 2e5*mpa, 0), Constant: springs.Allowance108}
	s := torsion(t, spec)
	static := s.TorqueAtStress(0.78 * strength)
	printed("497.25", static.NewtonMillimetres())
	wind := s.Angle(static)
	printed("0.327", s.BodyAngle(wind).Turns())
	printed("0.293", s.LegTurns())
	legs := spec
	legs.BodyTurns, legs.Legs = s.LegTurns(), [2]units.Length{}
	printed("22089.3", torsion(t, legs).Rate().NewtonMillimetresPerTurn())
	printed("0.0225", (wind - s.BodyAngle(wind)).Turns())
	printed("13.46", s.MeanDiameterWound(wind).Millimetres())
	printed("0.75", (s.PinClearance(11.5*mm, 0) / 2).Millimetres())
	printed("0.23", (s.PinClearance(11.5*mm, wind) / 2).Millimetres())
}

func TestBhandariTorsionTurns(t *testing.T) {
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 1.6*mm), MeanDiameter: 18 * mm, BodyTurns: 1, Material: steel(t, 207000*mpa, 0)})
	turns := s.Rate().NewtonMillimetresPerRadian() / 3
	figures.Figure{Printed: "393", Source: "Bhandari, Design of Machine Elements, Ex. 10.21 (output of a companion; theory, rounded up)", Place: 2}.Check(t, turns)
}

// TestHandbookTorsionTable: deflection a coil and torque at the design stress, by
// the handbook's own constants 392 and 0.0982.
func TestHandbookTorsionTable(t *testing.T) {
	const source = "Machinery's Handbook, 31st ed., Table 14, pp. 340-341"
	for _, tc := range []struct {
		gauge       string
		d, id       units.Length
		s           units.Pressure
		e           units.Pressure
		deg, torque string
	}{
		{"24", 0.055 * inch, 0.8125 * inch, 180 * kpsi, 29e6 * psi, "38.38", "2.941"},
		{"24", 0.055 * inch, 1.25 * inch, 180 * kpsi, 29e6 * psi, "57.73", ""},
		{"26", 0.063 * inch, 1.0 * inch, 176 * kpsi, 29e6 * psi, "40.14", ""},
		{"27", 0.067 * inch, 0.875 * inch, 174 * kpsi, 28.5e6 * psi, "33.65", ""},
		{"29", 0.075 * inch, 1.0625 * inch, 171 * kpsi, 28.5e6 * psi, "35.67", ""},
		{"30", 0.080 * inch, 0.9375 * inch, 169 * kpsi, 28.5e6 * psi, "29.56", "8.497"},
		{"32", 0.090 * inch, 1.1875 * inch, 166 * kpsi, 28.5e6 * psi, "32.41", ""},
		{"34", 0.100 * inch, 0.8125 * inch, 163 * kpsi, 28.5e6 * psi, "20.46", ""},
		{"36", 0.112 * inch, 1.125 * inch, 160 * kpsi, 28.5e6 * psi, "24.31", "22.07"},
		{"1/8", 0.125 * inch, 1.25 * inch, 156 * kpsi, 28.5e6 * psi, "23.60", ""},
	} {
		t.Run(tc.gauge, func(t *testing.T) {
			figures.Figure{Printed: tc.deg, Source: source}.Check(t, springs.HandbookDeflection(tc.s, tc.id+tc.d, tc.d, tc.e).Degrees())
			design, err := springs.HandbookDesignStress(springs.MusicWireA228, tc.d)
			ok(t, err)
			figures.Near(t, "design stress, kpsi", design.KilopoundsPerSquareInch(), tc.s.KilopoundsPerSquareInch(), 1e-9)
			e, err := springs.HandbookYoungsModulus(tc.d)
			ok(t, err)
			figures.Near(t, "modulus", float64(e), float64(tc.e), 1)
			if tc.torque != "" {
				figures.Figure{Printed: tc.torque, Source: source}.Check(t, springs.HandbookTorque(tc.s, tc.d).PoundForceInches())
				figures.Near(t, "0.0982 and π/32", float64(springs.HandbookTorque(tc.s, tc.d)/wire(t, tc.d).TorqueAtStress(tc.s)), 1, 0.0003)
			}
			if tc.gauge != "1/8" {
				size, err := springs.MusicWireGauge.Diameter(tc.gauge)
				ok(t, err)
				figures.Near(t, "gauge", float64(size), float64(tc.d), 1e-12)
			}
		})
	}
	misprint := func(digits string, d, id units.Length, s units.Pressure, why string) {
		figures.Figure{Printed: digits, Source: source}.Misprint(t, springs.HandbookDeflection(s, id+d, d, 28.5e6*psi).Degrees(), why)
	}
	misprint("24.58", 0.090*inch, 0.875*inch, 166*kpsi, "digit slip in print or text layer: the row runs 22.90, 24.58, 26.07")
	misprint("28.86", 0.100*inch, 1.1875*inch, 163*kpsi, "an exact half, rounded down in print")
}

// TestHandbookConstantsAgree: 4000 with 0.0982 gives 392.8, of which the book
// makes 392.
func TestHandbookConstantsAgree(t *testing.T) {
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 1, Material: steel(t, 200e3*mpa, 0), Constant: springs.Handbook4000, Curvature: springs.NoCurvature})
	stress := 1000 * mpa
	figures.Near(t, "ratio of the two", float64(s.Angle(s.TorqueAtStress(stress))/springs.HandbookDeflection(stress, 20*mm, 2*mm, 200e3*mpa)), 1, 0.0025)
}

func TestRateConstants(t *testing.T) {
	for _, tc := range []struct {
		constant springs.RateConstant
		shape    string
		printed  string
		source   string
		perTurn  bool
	}{
		{springs.TheoryRate, "round", "10.186", "Shigley, eq. 10-51: 32/π", true},
		{springs.Allowance108, "round", "10.8", "Shigley, eq. 10-51; Spring Manufacturers Institute (from memory)", true},
		{springs.TheoryRate, "round", "3667", "derived: 11520/π", false},
		{springs.Handbook4000, "round", "4000", "Machinery's Handbook, 31st ed., p. 334, Table 13", false},
		{springs.TheoryRate, "square", "2160", "derived", false},
		{springs.Handbook4000, "square", "2375", "Machinery's Handbook, 31st ed., p. 334", false},
		{springs.TheoryRate, "rectangular", "6", "derived", true},
		{springs.Allowance108, "rectangular", "6.6", "Spring Manufacturers Institute (from memory)", true},
	} {
		t.Run(tc.constant.String()+" "+tc.shape, func(t *testing.T) {
			section, form := wire(t, 2*mm), 16e-12
			switch tc.shape {
			case "square":
				section, _ = springs.SquareWire(2 * mm)
			case "rectangular":
				section, _ = springs.RectangularWire(3*mm, 2*mm)
				form = 24e-12
			}
			s := torsion(t, springs.TorsionSpec{Wire: section, MeanDiameter: 20 * mm, BodyTurns: 5, Material: steel(t, 200e3*mpa, 0), Constant: tc.constant})
			k := s.Rate().NewtonMetresPerDegree()
			if tc.perTurn {
				k = s.Rate().NewtonMetresPerTurn()
			}
			// constant = E d⁴/(k D N), E b t³/(k D N) for rectangular wire
			figures.Figure{Printed: tc.printed, Source: tc.source}.Check(t, 200e9*form/(k*20e-3*5))
		})
	}
	ratio := func(a, b springs.RateConstant) float64 {
		spec := springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 5, Material: steel(t, 200e3*mpa, 0), Constant: a}
		x := torsion(t, spec)
		spec.Constant = b
		return float64(torsion(t, spec).Rate() / x.Rate())
	}
	figures.Near(t, "rate by 10.8 over theory", ratio(springs.TheoryRate, springs.Allowance108), 1-0.057, 0.0005)
	figures.Near(t, "rate by 4000 over theory", ratio(springs.TheoryRate, springs.Handbook4000), 1-0.083, 0.0005)
}

// TestOpenCoil: Junnarkar, Ex. 19.
func TestOpenCoil(t *testing.T) {
	const source = "Junnarkar, Mechanics of Structures, Ex. 19, p. 477 (output of a companion)"
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 0.375*inch), MeanDiameter: 4 * inch, BodyTurns: 12, Material: steel(t, 30e6*psi, 12e6*psi)})
	turn, grow, err := s.OpenCoil(75*lbin, 15*units.Degree)
	ok(t, err)
	figures.Figure{Printed: "23.422", Source: source}.Check(t, turn.Degrees())
	figures.Figure{Printed: "0.0503", Source: source}.Check(t, grow.Inches())
	flat, still, err := s.OpenCoil(75*lbin, 0)
	ok(t, err)
	figures.Near(t, "close coil, as Angle", float64(flat), float64(s.Angle(75*lbin)), 1e-12)
	figures.Near(t, "close coil, growth", float64(still), 0, 1e-15)
}
