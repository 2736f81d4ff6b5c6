package springs_test

import (
	"fmt"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A brush-lever return: six open coils, hooked over a post outside.
func ExampleNewSpiral() {
	s, err := springs.NewSpiral(springs.SpiralSpec{
		Width: 6 * units.Millimetre, Thickness: 0.5 * units.Millimetre, Turns: 6,
		InnerDiameter: 12 * units.Millimetre, OuterDiameter: 40 * units.Millimetre,
		OuterEnd: springs.Hooked, Material: springs.StripC67STypical.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	wind := 0.75 * units.Turn
	m := s.Torque(wind)
	gap, _ := s.CoilGap(wind)
	pull, _ := s.SidePull(m)
	fmt.Printf("factor %.3f, rate %.0f N mm a turn\n", s.DeflectionFactor(), s.Rate().NewtonMillimetresPerTurn())
	fmt.Printf("torque %.0f N mm, stress %.0f MPa, gap %.2f mm, side pull %.1f N\n", m.NewtonMillimetres(), s.Stress(m).Megapascals(), gap.Millimetres(), pull.Newtons())
	// Output:
	// factor 1.272, rate 130 N mm a turn
	// torque 97 N mm, stress 778 MPa, gap 1.15 mm, side pull 4.9 N
}

func ExampleSpiral() {
	s, err := springs.NewSpiral(springs.SpiralSpec{
		Width: 6 * units.Millimetre, Thickness: 0.5 * units.Millimetre, Turns: 5,
		InnerDiameter: 12 * units.Millimetre, OuterDiameter: 40 * units.Millimetre,
		Material: springs.StripC67STypical.Material(),
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
	touch, _ := s.TouchAngle()
	fmt.Printf("%.2f turns at %.0f MPa; solid on the arbor after %.1f\n", wind.Turns(), a.Stress.Megapascals(), touch.Turns())
	// Output: 1.70 turns at 1348 MPa; solid on the arbor after 3.1
}

func ExampleSpiralSpec() {
	_, err := springs.NewSpiral(springs.SpiralSpec{
		Width: 6 * units.Millimetre, Thickness: 0.5 * units.Millimetre, Turns: 40,
		InnerDiameter: 12 * units.Millimetre, OuterDiameter: 40 * units.Millimetre,
		Material: springs.StripC67STypical.Material(),
	})
	fmt.Println(err)
	// Output: 40 turns between 12 mm and 40 mm leave 0.35 mm a coil: want more than 0.5 mm, the strip: outside the domain
}

func ExampleOuterEnd() {
	fmt.Println(springs.Clamped, springs.Pinned, springs.Hooked)
	// Output: clamped pinned hooked
}

// What the conventions for a pinned end make of one spring.
func ExamplePinnedFactor() {
	for _, f := range []springs.PinnedFactor{springs.PinnedByShape, springs.PinnedFiveQuarters, springs.PinnedUnincreased} {
		s, err := springs.NewSpiral(springs.SpiralSpec{
			Width: 6 * units.Millimetre, Thickness: 0.5 * units.Millimetre, Turns: 6,
			InnerDiameter: 12 * units.Millimetre, OuterDiameter: 40 * units.Millimetre,
			OuterEnd: springs.Pinned, Factor: f, Material: springs.StripC67STypical.Material(),
		})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%-13v %.0f N mm a turn\n", f, s.Rate().NewtonMillimetresPerTurn())
	}
	// Output:
	// by shape      130 N mm a turn
	// 1.25          132 N mm a turn
	// not increased 165 N mm a turn
}

func ExampleSpiralLength() {
	fmt.Printf("%.0f mm\n", springs.SpiralLength(6, 12*units.Millimetre, 40*units.Millimetre).Millimetres())
	// Output: 490 mm
}

// Bhandari, Design of Machine Elements, ex. 10.22.
func ExampleSpiralWidth() {
	b, err := springs.SpiralWidth(1200*units.NewtonMillimetre, 800*units.Megapascal, 1.25*units.Millimetre, springs.Pinned)
	fmt.Printf("%.2f mm %v\n", b.Millimetres(), err)
	// Output: 11.52 mm <nil>
}

// Bhandari, Design of Machine Elements, ex. 10.22, with the rotation not increased.
func ExampleSpiralLengthFor() {
	strip, _ := springs.RectangularWire(12*units.Millimetre, 1.25*units.Millimetre)
	l, err := springs.SpiralLengthFor(1200*units.NewtonMillimetre, 3*units.Turn, strip, 207*units.Gigapascal, 1)
	fmt.Printf("%.2f m %v\n", l.Metres(), err)
	// Output: 6.35 m <nil>
}

// A strip that comes coiled, in a rope drum.
func ExampleNewBarrel() {
	b, err := springs.NewBarrel(springs.BarrelSpec{
		Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre, Depth: 15 * units.Millimetre,
		Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre,
		Free: springs.SlackOnWall(), Friction: 0.1, Material: springs.StripC67STypical.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f turns, %.0f %% of the room filled\n", b.Turns(), 100*b.Fill())
	pre, err := b.PreWind(480 * units.NewtonMillimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := b.Worked(pre, 4.58)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f turns wound on, %.2f spare at full\n", pre, w.Spare)
	fmt.Printf("full: drives with %.0f N mm, takes %.0f N mm to wind, stress %.0f MPa\n",
		w.AtFull.Drive.NewtonMillimetres(), w.AtFull.Wind.NewtonMillimetres(), w.Stress.Megapascals())
	// Output:
	// 10.49 turns, 24 % of the room filled
	// 4.33 turns wound on, 1.59 spare at full
	// full: drives with 988 N mm, takes 1208 N mm to wind, stress 1441 MPa
}

func ExampleBarrelSpec() {
	_, err := springs.NewBarrel(springs.BarrelSpec{
		Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre,
		Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre,
		Material: springs.StripC67STypical.Material(),
	})
	fmt.Println(err)
	// Output: free state of the strip not stated: want StraightStrip, SlackOnWall or FreeTurns: outside the domain
}

// Broken 100 mm from the end, with 30 mm for a new eye.
func ExampleBarrel() {
	b, err := springs.NewBarrel(springs.BarrelSpec{
		Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre,
		Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre,
		Free: springs.SlackOnWall(), Material: springs.StripC67STypical.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := b.Shortened(100*units.Millimetre, 30*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("turns %.2f, were %.2f; a turn gives %.0f N mm, gave %.0f\n", s.Turns(), b.Turns(), s.Rate().NewtonMillimetresPerTurn(), b.Rate().NewtonMillimetresPerTurn())
	// Output: turns 10.18, were 10.49; a turn gives 130 N mm, gave 123
}

// The same strip, straight and slack, run down and after four turns.
func ExampleFreeState() {
	for _, free := range []springs.FreeState{springs.StraightStrip(), springs.FreeTurns(4), springs.SlackOnWall()} {
		b, err := springs.NewBarrel(springs.BarrelSpec{
			Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre,
			Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre,
			Free: free, Material: springs.StripC67STypical.Material(),
		})
		if err != nil {
			fmt.Println(err)
			return
		}
		m, err := b.Torque(4)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%-18v %4.0f N mm after 4 turns, %.1f J left in it run down\n", free, m.Mean.NewtonMillimetres(), b.StrainEnergy(0).Joules())
	}
	// Output:
	// straight           1579 N mm after 4 turns, 30.1 J left in it run down
	// 4 turns when free  1086 N mm after 4 turns, 9.0 J left in it run down
	// slack on the wall   493 N mm after 4 turns, 0.0 J left in it run down
}

func ExampleStraightStrip() {
	fmt.Println(springs.StraightStrip())
	// Output: straight
}

func ExampleSlackOnWall() {
	fmt.Println(springs.SlackOnWall())
	// Output: slack on the wall
}

func ExampleFreeTurns() {
	fmt.Println(springs.FreeTurns(-2))
	// Output: -2 turns when free
}

func ExampleBarrelTorque() {
	b, err := springs.NewBarrel(springs.BarrelSpec{
		Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre,
		Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre,
		Free: springs.StraightStrip(), Friction: 0.1, Material: springs.StripC67STypical.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, n := range []float64{0, 0.5, 1, 5, 10, 10.4} {
		m, err := b.Torque(n)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%4.1f turns  %-8v  %4.0f N mm (%.0f to %.0f)\n", n, m.Regime, m.Mean.NewtonMillimetres(), m.Drive.NewtonMillimetres(), m.Wind.NewtonMillimetres())
	}
	// Output:
	//  0.0 turns  rising       0 N mm (0 to 0)
	//  0.5 turns  rising     605 N mm (544 to 665)
	//  1.0 turns  straight  1209 N mm (1088 to 1330)
	//  5.0 turns  straight  1703 N mm (1532 to 1873)
	// 10.0 turns  closing   2418 N mm (2176 to 2660)
	// 10.4 turns  closing   2566 N mm (2309 to 2822)
}

func ExampleRegime() {
	fmt.Println(springs.Rising, springs.Straight, springs.Closing)
	// Output: rising straight closing
}

func ExampleHalfFillLength() {
	fmt.Printf("%.0f mm\n", springs.HalfFillLength(92*units.Millimetre, 28*units.Millimetre, 0.6*units.Millimetre).Millimetres())
	// Output: 5027 mm
}

func ExampleMostTurns() {
	n, err := springs.MostTurns(92*units.Millimetre, 28*units.Millimetre, 0.6*units.Millimetre)
	fmt.Printf("%.1f %v\n", n, err)
	// Output: 13.3 <nil>
}

func ExampleMostTurnsHandbook() {
	n, err := springs.MostTurnsHandbook(92*units.Millimetre, 28*units.Millimetre, 0.6*units.Millimetre)
	fmt.Printf("%.1f %v\n", n, err)
	// Output: 10.5 <nil>
}
