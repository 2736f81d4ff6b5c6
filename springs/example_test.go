package springs_test

import (
	"fmt"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A lever return of 1.42 mm music wire, seven turns, wound on by 30° and moved by 55°.
func ExampleNewTorsion() {
	wire, err := springs.RoundWire(1.42 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := springs.NewTorsion(springs.TorsionSpec{
		Wire: wire, OutsideDiameter: 16.6 * units.Millimetre, BodyTurns: 7,
		Material: springs.MusicWireA228.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	full := 85 * units.Degree
	fmt.Printf("rate       %.2f N mm/°\n", s.Rate().NewtonMillimetresPerDegree())
	fmt.Printf("torque     %.0f N mm\n", s.Torque(full).NewtonMillimetres())
	fmt.Printf("stress     %.0f MPa\n", s.Stress(s.Torque(full)).Megapascals())
	fmt.Printf("bore       %.2f mm\n", s.InsideDiameter(full).Millimetres())
	fmt.Printf("length     %.2f mm\n", s.BodyLength(full).Millimetres())
	// Output:
	// rate       2.09 N mm/°
	// torque     177 N mm
	// stress     678 MPa
	// bore       13.26 mm
	// length     11.70 mm
}

// The same spring by three published constants.
func ExampleRateConstant() {
	wire, _ := springs.RoundWire(2 * units.Millimetre)
	for _, c := range []springs.RateConstant{springs.TheoryRate, springs.Allowance108, springs.Handbook4000} {
		s, err := springs.NewTorsion(springs.TorsionSpec{
			Wire: wire, MeanDiameter: 20 * units.Millimetre, BodyTurns: 6,
			Material: springs.PatentedSM.Material(), Constant: c,
		})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%-22v %.2f N mm/°\n", c, s.Rate().NewtonMillimetresPerDegree())
	}
	// Output:
	// theory                 7.49 N mm/°
	// design constant 10.8   7.06 N mm/°
	// handbook constant 4000 6.87 N mm/°
}

// Shigley, Example 10-8 (from memory), in one call. Its strength is that of a fit.
func ExampleTorsion_Fatigue() {
	wire, _ := springs.RoundWire(0.072 * units.Inch)
	music, err := springs.NewMaterial(springs.MaterialSpec{
		Name: "music wire by the textbook's fit", YoungsModulus: 28.5e6 * units.PoundPerSquareInch,
		LeastStrength: 294.4 * units.KilopoundPerSquareInch, Like: springs.MusicWireA228,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := springs.NewTorsion(springs.TorsionSpec{Wire: wire, OutsideDiameter: 0.59375 * units.Inch, BodyTurns: 4.25, Material: music})
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := s.Fatigue(1*units.PoundForceInch, 5*units.PoundForceInch, springs.Bending1000000)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f (%s)\n", f.Factor, f.Source)
	// Output: 1.13 (Shigley, Table 10-10 (from memory))
}

func ExampleFatigue() {
	f := springs.Fatigue{Alternating: 420 * units.Megapascal, Amplitude: 475 * units.Megapascal, Factor: 475.0 / 420}
	fmt.Printf("bears %.0f MPa, gets %.0f MPa: factor %.2f\n", f.Amplitude.Megapascals(), f.Alternating.Megapascals(), f.Factor)
	// Output: bears 475 MPa, gets 420 MPa: factor 1.13
}

func ExampleGerberEndurance() {
	s, err := springs.GerberEndurance(0.5*294.4*units.KilopoundPerSquareInch, 294.4*units.KilopoundPerSquareInch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kpsi\n", s.KilopoundsPerSquareInch())
	// Output: 78.51 kpsi
}

func ExampleGerberAmplitude() {
	s, err := springs.GerberAmplitude(78.51*units.KilopoundPerSquareInch, 294.4*units.KilopoundPerSquareInch, 2.0/3)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f kpsi\n", s.KilopoundsPerSquareInch())
	// Output: 68.85 kpsi
}

func ExampleTorsion_SafeWind() {
	wire, _ := springs.RoundWire(1.42 * units.Millimetre)
	s, err := springs.NewTorsion(springs.TorsionSpec{
		Wire: wire, OutsideDiameter: 16.6 * units.Millimetre, BodyTurns: 7,
		Material: springs.MusicWireA228.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	wind, a, err := s.SafeWind(springs.SteadyBending)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f°, at %.0f %% of %v\n", wind.Degrees(), 100*a.Share, a.Strength)
	fmt.Printf("grips a 9.5 mm pin at %.0f°\n", s.GripAngle(9.5*units.Millimetre).Degrees())
	// Output:
	// 199°, at 78 % of 2041 MPa to 2255 MPa
	// grips a 9.5 mm pin at 983°
}

func ExampleTorsionSpec() {
	wire, _ := springs.SquareWire(2 * units.Millimetre)
	s, err := springs.NewTorsion(springs.TorsionSpec{
		Wire: wire, InsideDiameter: 12 * units.Millimetre, BodyTurns: 4.5,
		Legs:     [2]units.Length{20 * units.Millimetre, 30 * units.Millimetre},
		Material: springs.OilTemperedA229ClassI.Material(), Constant: springs.Handbook4000,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f turns work, 0.38 of them the legs': %.1f N mm/°\n", s.ActiveTurns(), s.Rate().NewtonMillimetresPerDegree())
	// Output: 4.88 turns work, 0.38 of them the legs': 19.4 N mm/°
}

func ExampleTorsion() {
	wire, _ := springs.RoundWire(2 * units.Millimetre)
	s, err := springs.NewTorsion(springs.TorsionSpec{Wire: wire, MeanDiameter: 20 * units.Millimetre, BodyTurns: 2.5, Material: springs.MusicWireA228.Material()})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range s.Advice() {
		fmt.Println(line)
	}
	// Output: 2.50 body turns: fewer than 3 are not recommended
}

func ExampleRoundWire() {
	s, err := springs.RoundWire(0.08 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v carries %.1f lbf in at 169 kpsi\n", s, s.TorqueAtStress(169*units.KilopoundPerSquareInch).PoundForceInches())
	// Output: 2.032 mm round carries 8.5 lbf in at 169 kpsi
}

func ExampleSquareWire() {
	s, err := springs.SquareWire(2 * units.Millimetre)
	fmt.Println(s, err)
	// Output: 2 mm square <nil>
}

func ExampleRectangularWire() {
	s, err := springs.RectangularWire(12.7*units.Millimetre, 0.6*units.Millimetre)
	fmt.Println(s, err)
	// Output: 0.6 mm x 12.7 mm <nil>
}

func ExampleSection() {
	s, _ := springs.RoundWire(2 * units.Millimetre)
	k, err := s.InsideFactor(8)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f inside the coil\n", k)
	// Output: 1.103 inside the coil
}

func ExampleCurvatureRule() {
	wire, _ := springs.RoundWire(2 * units.Millimetre)
	for _, rule := range []springs.CurvatureRule{springs.WahlInside, springs.StandardInside, springs.NoCurvature} {
		s, err := springs.NewTorsion(springs.TorsionSpec{Wire: wire, MeanDiameter: 12 * units.Millimetre, BodyTurns: 6, Material: springs.PatentedSM.Material(), Curvature: rule})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%-19v %.3f\n", rule, s.CurvatureFactor())
	}
	// Output:
	// Wahl K_i            1.142
	// EN 13906-3 q        1.156
	// no curvature factor 1.000
}

func ExampleShearRule() {
	k, err := springs.Bergstraesser.Factor(10.8)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f\n", k)
	// Output: 1.124
}

func ExampleHandbookDeflection() {
	// Machinery's Handbook, 31st ed., Table 14: gauge 24 music wire on 13/16 in.
	f := springs.HandbookDeflection(180*units.KilopoundPerSquareInch, (0.8125+0.055)*units.Inch, 0.055*units.Inch, 29e6*units.PoundPerSquareInch)
	fmt.Printf("%.2f° a coil\n", f.Degrees())
	// Output: 38.38° a coil
}

func ExampleHandbookTorque() {
	fmt.Printf("%.3f lbf in\n", springs.HandbookTorque(180*units.KilopoundPerSquareInch, 0.055*units.Inch).PoundForceInches())
	// Output: 2.941 lbf in
}

func ExampleHandbookSquareTorque() {
	fmt.Printf("%.1f lbf in\n", springs.HandbookSquareTorque(150*units.KilopoundPerSquareInch, 0.1*units.Inch).PoundForceInches())
	// Output: 25.0 lbf in
}

func ExampleHandbookDesignStress() {
	s, err := springs.HandbookDesignStress(springs.MusicWireA228, 0.080*units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kpsi\n", s.KilopoundsPerSquareInch())
	// Output: 169 kpsi
}

func ExampleHandbookYoungsModulus() {
	e, err := springs.HandbookYoungsModulus(0.080 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f million psi\n", e.PoundsPerSquareInch()/1e6)
	// Output: 28.5 million psi
}

func ExampleCoilDeflection() {
	// Machinery's Handbook, 31st ed., p. 318.
	f := springs.CoilDeflection(100*units.KilopoundPerSquareInch, (0.8125-0.0915)*units.Inch, 0.0915*units.Inch, springs.HandbookShearModulus)
	fmt.Printf("%.4f in a coil\n", f.Inches())
	// Output: 0.1594 in a coil
}

func ExampleCoilLoad() {
	p := springs.CoilLoad(100*units.KilopoundPerSquareInch, (0.8125-0.0915)*units.Inch, 0.0915*units.Inch)
	fmt.Printf("%.1f lbf\n", p.PoundsForce())
	// Output: 41.7 lbf
}

func ExampleSquareCoilLoad() {
	fmt.Printf("%.0f N\n", springs.SquareCoilLoad(500*units.Megapascal, 30*units.Millimetre, 3*units.Millimetre).Newtons())
	// Output: 187 N
}

func ExampleSquareCoilDeflection() {
	f := springs.SquareCoilDeflection(500*units.Megapascal, 30*units.Millimetre, 3*units.Millimetre, 80*units.Gigapascal)
	fmt.Printf("%.2f mm a coil\n", f.Millimetres())
	// Output: 4.35 mm a coil
}

func ExampleInitialTensionStress() {
	s, err := springs.InitialTensionStress(40*units.KilopoundPerSquareInch, 2*units.PoundForce, 8*units.PoundForce)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f kpsi\n", s.KilopoundsPerSquareInch())
	// Output: 10 kpsi
}
