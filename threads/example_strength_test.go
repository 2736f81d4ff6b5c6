package threads_test

import (
	"errors"
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

func ExampleThread_StressArea() {
	for _, text := range []string{"M8", "1/4 BSF", "2 BA"} {
		t, err := threads.Find(text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v %.1f mm²\n", t, t.StressArea().SquareMillimetres())
	}
	// Output:
	// M8x1.25 36.6 mm²
	// 1/4-26 BSF 23.0 mm²
	// 2 BA 12.4 mm²
}

// How deep must an 8.8 stud of M8 go into aluminium of 200 MPa so that the stud
// breaks before the thread in the casting strips?
func ExampleJoint() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	bolt, err1 := t.BoltLimits("6g")
	nut, err2 := t.NutLimits("6H")
	if err := errors.Join(err1, err2); err != nil {
		fmt.Println(err)
		return
	}
	j, err := threads.NewJoint(bolt, nut)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, nut := range []units.Pressure{800 * units.Megapascal, 200 * units.Megapascal} {
		le, err := j.LeastEngagement(800*units.Megapascal, nut)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("into %.0f MPa: %.1f mm\n", nut.Megapascals(), le.Millimetres())
	}
	// Output:
	// into 800 MPa: 6.0 mm
	// into 200 MPa: 17.4 mm
}

// A cycle thread has no limits here; the basic sizes do.
func ExampleNewJoint() {
	t, err := threads.Find("5/16 BSC")
	if err != nil {
		fmt.Println(err)
		return
	}
	j, err := threads.NewJoint(t.BasicLimits(threads.Bolt), t.BasicLimits(threads.Nut))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("thread of the nut, over 10 mm: %.0f mm²\n", j.NutShearArea(10*units.Millimetre).SquareMillimetres())
	// Output: thread of the nut, over 10 mm: 201 mm²
}

// What gives way when 8 mm of M8 are left in the casting?
func ExampleLoads() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	j, err := threads.NewJoint(t.BasicLimits(threads.Bolt), t.BasicLimits(threads.Nut))
	if err != nil {
		fmt.Println(err)
		return
	}
	l, err := j.Loads(8*units.Millimetre, 800*units.Megapascal, 200*units.Megapascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	f, what := l.Least()
	fmt.Printf("%s at %.1f kN\n", what, f.Kilonewtons())
	// Output: the thread of the nut strips at 17.6 kN
}

func ExampleTappedMetal() {
	t, err := threads.Find("1/2 BSW")
	if err != nil {
		fmt.Println(err)
		return
	}
	depth, err := t.EngagementByRule(threads.LightAlloyUnderShock)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.4f in\n", depth.Inches())
	// Output: 1.0625 in
}

// Shigley, 9th ed., Example 8-3: 3/4-16 UNF to 25 kip with a friction of 0.15.
func ExampleFriction() {
	t, err := threads.Find("3/4-16 UNF")
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := threads.NewFriction(0.15, 0.15, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	preload := 25000 * units.PoundForce
	fmt.Printf("%.0f lbf in, by K %.0f lbf in\n", float64(t.Torque(preload, f)/units.PoundForceInch),
		float64(t.TorqueByK(preload, 0.2)/units.PoundForceInch))
	// Output: 3551 lbf in, by K 3750 lbf in
}

// The same torque, dry and oiled: friction decides what the bolt feels.
func ExampleNewFriction() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, mu := range []float64{0.20, 0.14, 0.10} {
		f, err := threads.NewFriction(mu, mu, 0)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("friction %.2f: 20 N m pull %.1f kN\n", mu, t.Preload(20*units.NewtonMetre, f).Kilonewtons())
	}
	// Output:
	// friction 0.20: 20 N m pull 9.8 kN
	// friction 0.14: 20 N m pull 13.4 kN
	// friction 0.10: 20 N m pull 17.9 kN
}

func ExampleFinish() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, finish := range []threads.Finish{threads.BlackFinish, threads.Lubricated} {
		f, err := t.PreloadByK(20*units.NewtonMetre, finish.K())
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v, K %.2f: %.1f kN\n", finish, finish.K(), f.Kilonewtons())
	}
	// Output:
	// not plated, black, K 0.30: 8.3 kN
	// lubricated, K 0.18: 13.9 kN
}

// How well does a torque wrench set a preload, friction being what it is?
func ExampleTighteningReadings() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	res, err := t.PreloadFrom(threads.TighteningReadings{
		Torque:  units.WithStd(20*units.NewtonMetre, 0.4*units.NewtonMetre),
		Thread:  units.WithStd(0.14*units.One, 0.02*units.One),
		Bearing: units.WithStd(0.14*units.One, 0.02*units.One),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f kN, standard uncertainty %.1f kN\n", res.Value.Kilonewtons(), res.Std.Kilonewtons())
	// Output: 13.4 kN, standard uncertainty 1.2 kN
}

func ExampleGrade() {
	t, err := threads.Find("3/8 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	g, err := threads.FindGrade("British T", t.Major())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v: at least %.0f tons per square inch, breaks at %.1f kN\n", g,
		float64(g.Tensile()/units.TonForcePerSquareInch), t.TensileLoad(g).Kilonewtons())
	fmt.Println(g.Note())
	// Output:
	// British T: at least 55 tons per square inch, breaks at 46.0 kN
	// upper end of 8.8; mgparts.co.nz has 150000 lbf/in², 67 tons, and likens it to SAE 8: the weaker figure stands
}

func ExampleFindGrade() {
	for _, mm := range []units.Length{10, 20} {
		g, err := threads.FindGrade("8.8", mm*units.Millimetre)
		if err != nil {
			fmt.Println(err)
			return
		}
		proof, _ := g.Proof()
		fmt.Printf("M%.0f: tensile %.0f MPa, proof %.0f MPa\n", float64(mm), g.Tensile().Megapascals(), proof.Megapascals())
	}
	// Output:
	// M10: tensile 800 MPa, proof 580 MPa
	// M20: tensile 830 MPa, proof 600 MPa
}

// The grades of at least 1000 MPa.
func ExampleGrades() {
	for g := range threads.Grades() {
		if g.Tensile() >= 1000*units.Megapascal {
			fmt.Println(g)
		}
	}
	// Output:
	// 10.9
	// 12.9
	// SAE 8
	// British V
	// British X
	// British Y
}

// Shigley, 9th ed., Example 8-3.
func ExampleJointConstant() {
	c, err := threads.JointConstant(6.50e6*units.PoundForcePerInch, 13.8e6*units.PoundForcePerInch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("the bolt feels %.2f of the load\n", c)
	// Output: the bolt feels 0.32 of the load
}
