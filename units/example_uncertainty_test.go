package units_test

import (
	"errors"
	"fmt"
	"math"

	"example.com/benchsums/units"
)

func ExampleReading() {
	rim := units.Reading[units.Length]{Value: 152 * units.Millimetre, Std: 0.3 * units.Millimetre, DoF: 4}
	fmt.Println(rim)
	text, err := rim.MarshalText()
	fmt.Println(string(text), err)
	// Output:
	// 152.0 mm (u 0.3 mm)
	// 152 mm (u 0.3 mm, dof 4) <nil>
}

func ExampleParseReading() {
	for _, text := range []string{
		"84.5 mm ± 0.5 mm", "84.5 ± 0.5 mm", "84.5 mm ± 0.6 mm (k=2)", "84.5 mm (u 0.3 mm, dof 4)", "84.53(12) mm", "1/2 in ± 1/64 in",
	} {
		r, err := units.ParseReading[units.Length](text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(r)
	}
	// Output:
	// 84.50 mm (u 0.29 mm)
	// 84.50 mm (u 0.29 mm)
	// 84.5 mm (u 0.3 mm)
	// 84.5 mm (u 0.3 mm)
	// 84.53 mm (u 0.12 mm)
	// 12.70 mm (u 0.23 mm)
}

func ExampleExact() {
	fmt.Println(units.Exact(35 * units.Millimetre))
	// Output: 35 mm
}

func ExampleWithStd() {
	fmt.Println(units.WithStd(35*units.Millimetre, 0.02*units.Millimetre))
	// Output: 35.000 mm (u 0.020 mm)
}

// Copper's coefficient of expansion from a handbook: JCGM 100:2008, 4.3.7.
func ExamplePlusMinus() {
	copper := units.PlusMinus(16.52*units.MicrometrePerMetreKelvin, 0.40*units.MicrometrePerMetreKelvin)
	fmt.Println(copper)
	// Output: 16.52 µm/m/K (u 0.23 µm/m/K)
}

// A rule read to the nearest half millimetre.
func ExampleResolved() {
	fmt.Println(units.Resolved(84.5*units.Millimetre, 0.5*units.Millimetre))
	// Output: 84.50 mm (u 0.14 mm)
}

// A certificate: 10 mm, U = 0.6 µm, k = 2.
func ExampleExpanded() {
	block, err := units.Expanded(10*units.Millimetre, 0.6*units.Micrometre, 2)
	fmt.Println(block, err)
	// Output: 10.0000 mm (u 0.0003 mm) <nil>
}

// A bore taken five times.
func ExampleRepeats() {
	mm := units.Millimetre
	bore, err := units.Repeats(35.02*mm, 35.04*mm, 35.03*mm, 35.05*mm, 35.02*mm)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(bore, bore.DoF)
	fmt.Println(bore.With(0.01 * mm)) // and the micrometer itself
	// Output:
	// 35.032 mm (u 0.006 mm) 4
	// 35.032 mm (u 0.012 mm)
}

// The angle of an arc along a rim, and which reading to take better first.
func ExamplePropagate() {
	diameter, arc := 152*units.Millimetre, 37*units.Millimetre
	res, err := units.Propagate(
		func() units.Angle { return units.Angle(2 * arc / diameter) },
		units.Vary("rim diameter", &diameter, 0.3*units.Millimetre),
		units.Vary("arc", &arc, 0.5*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(res)
	for _, line := range res.Budget {
		fmt.Println(line)
	}
	fmt.Println("take better first:", res.Largest().Name)
	// Output:
	// 27.9° (u 0.4°)
	// rim diameter: u 0.3 mm, -0.18°/mm, -0.055°, 2.1 %
	// arc: u 0.5 mm, 0.75°/mm, 0.38°, 98 %
	// take better first: arc
}

// A dial at top dead centre: the slope is nought, and what the crank angle
// does comes from the second order.
func ExamplePropagate_deadCentre() {
	crank := 0 * units.Degree
	drop := func() units.Length {
		throw, rod := 30.0, 110.0
		sin, cos := crank.Sincos()
		return units.Length(throw*(1-cos)+rod-math.Sqrt(rod*rod-throw*throw*sin*sin)) * units.Millimetre
	}
	res, err := units.Propagate(drop, units.Vary("crank", &crank, 2*units.Degree))
	fmt.Printf("%v, %v %v\n", res, res.Method, err)
	// Output: 0.02 mm (u 0.03 mm), second order <nil>
}

func ExampleResult() {
	x := 12 * units.Millimetre
	res, err := units.Propagate(func() units.Length { return x / 2 },
		units.VaryReading("x", &x, units.Reading[units.Length]{Value: 12 * units.Millimetre, Std: 0.1 * units.Millimetre, DoF: 4}))
	if err != nil {
		fmt.Println(err)
		return
	}
	expanded, k, err := res.Expanded(0.95)
	fmt.Printf("%v, U %.2f with k %.2f, %v\n", res, expanded, k, err)
	// Output: 6.00 mm (u 0.05 mm), U 0.14 mm with k 2.78, <nil>
}

func ExampleContribution() {
	side := 20 * units.Millimetre
	res, err := units.Propagate(func() units.Area { return units.Area(side) * units.Area(side) },
		units.Vary("side", &side, 0.1*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	c := res.Budget[0]
	fmt.Println(c)
	fmt.Printf("%s: %v, u %v, brings %v\n", c.Name, c.Value, c.Std, c.Contribution)
	// Output:
	// side: u 0.1 mm, 40 mm²/mm, 4 mm², 100 %
	// side: 20 mm, u 0.1 mm, brings 4 mm²
}

// An Amount is what a budget lists: a quantity of any type.
func ExampleAmount() {
	for _, a := range []units.Amount{152 * units.Millimetre, 28 * units.Degree, units.Ratio(0.15)} {
		fmt.Printf("%.1f\n", a)
	}
	// Output:
	// 152.0 mm
	// 28.0°
	// 0.1
}

func ExampleMethod() {
	fmt.Println(units.FirstOrder, "or", units.SecondOrder)
	// Output: first order or second order
}

func ExampleQuantity() {
	fmt.Println(mean(35.02*units.Millimetre, 35.04*units.Millimetre))
	fmt.Println(mean(28*units.Degree, 29*units.Degree))
	// Output:
	// 35.03 mm
	// 28.5°
}

// mean works for every type of quantity.
func mean[Q units.Quantity](a, b Q) Q { return (a + b) / 2 }

// An Input is made by Vary and the like, and a set of them serves for several
// functions.
func ExampleInput() {
	a, b := 3*units.Millimetre, 4*units.Millimetre
	inputs := []units.Input{units.Vary("a", &a, 0.1*units.Millimetre), units.Vary("b", &b, 0.1*units.Millimetre)}
	sum, err1 := units.Propagate(func() units.Length { return a + b }, inputs...)
	diagonal, err2 := units.Propagate(func() units.Length { return units.Length(math.Hypot(float64(a), float64(b))) }, inputs...)
	fmt.Println(sum, err1)
	fmt.Println(diagonal, err2)
	// Output:
	// 7.00 mm (u 0.14 mm) <nil>
	// 5.00 mm (u 0.10 mm) <nil>
}

func ExampleVary() {
	bore := 35 * units.Millimetre
	res, err := units.Propagate(func() units.Length { return bore / 2 }, units.Vary("bore", &bore, 0.02*units.Millimetre))
	fmt.Println(res, err)
	// Output: 17.500 mm (u 0.010 mm) <nil>
}

// The variable takes the value of the reading while the sum is done.
func ExampleVaryReading() {
	reading, err := units.ParseReading[units.Length]("35 mm ± 0.05 mm")
	if err != nil {
		fmt.Println(err)
		return
	}
	var bore units.Length
	res, err := units.Propagate(func() units.Length { return bore / 2 }, units.VaryReading("bore", &bore, reading))
	fmt.Println(res, err, bore)
	// Output: 17.500 mm (u 0.014 mm) <nil> 0 mm
}

func ExampleVaryAs() {
	var slot units.Angle
	res, err := units.Propagate(func() units.Angle { return 2 * slot },
		units.VaryAs("slot", &slot, units.Rectangular(12*units.Degree, 16*units.Degree)))
	fmt.Println(res, err)
	// Output: 28.0° (u 2.3°) <nil>
}

// Two lengths taken with the same rule share its error, and it drops out of
// their difference.
func ExampleCorrelate() {
	long, short := 120*units.Millimetre, 80*units.Millimetre
	u := 0.2 * units.Millimetre
	difference := func() units.Length { return long - short }
	apart, err1 := units.Propagate(difference, units.Vary("long", &long, u), units.Vary("short", &short, u))
	shared, err2 := units.Propagate(difference, units.Vary("long", &long, u), units.Vary("short", &short, u),
		units.Correlate("long", "short", 0.9))
	fmt.Println(apart, err1)
	fmt.Println(shared, err2)
	// Output:
	// 40.00 mm (u 0.28 mm) <nil>
	// 40.00 mm (u 0.09 mm) <nil>
}

// A function that has no answer for some readings says so through a variable.
func ExampleStopOn() {
	chord, rim := 151*units.Millimetre, 152*units.Millimetre
	var failed error
	angle := func() units.Angle {
		if !(chord <= rim) {
			failed = errors.New("the chord is longer than the rim is wide")
		}
		return units.Angle(2 * math.Asin(float64(chord/rim)))
	}
	_, err := units.Propagate(angle, units.Vary("chord", &chord, 2*units.Millimetre), units.StopOn(&failed))
	fmt.Println(err)
	// Output: with chord at 153 mm: the chord is longer than the rim is wide
}

func ExampleUse() {
	x := 0.0
	square := func() float64 { return x * x }
	first, err1 := units.Propagate(square, units.Vary("x", &x, 0.1), units.Use(units.FirstOrder))
	second, err2 := units.Propagate(square, units.Vary("x", &x, 0.1))
	fmt.Printf("%.3f %v, %.3f %v\n", first.Std, err1, second.Std, err2)
	// Output: 0.000 <nil>, 0.014 <nil>
}

// A piston drop at top dead centre, by sampling: the shortest interval begins
// at nought.
func ExampleMonteCarlo() {
	crank := 0 * units.Degree
	drop := func() units.Length {
		sin, cos := crank.Sincos()
		return units.Length(30*(1-cos)+110-math.Sqrt(110*110-900*sin*sin)) * units.Millimetre
	}
	s, err := units.MonteCarlo(drop, units.Run{Seed: 1, Trials: 100_000}, units.Vary("crank", &crank, 2*units.Degree))
	if err != nil {
		fmt.Println(err)
		return
	}
	interval, err := s.Shortest(0.95)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("mean %.3f, 95 %% from %.2f to %.2f\n", s.Value, interval.Low, interval.High)
	// Output: mean 0.023 mm, 95 % from 0.00 mm to 0.09 mm
}

// Without a number of trials it goes on until the figures are stable.
func ExampleRun() {
	a, b := 3.0, 4.0
	s, err := units.MonteCarlo(func() float64 { return a * b }, units.Run{Seed: 1, Digits: 1, Cap: 500_000},
		units.Vary("a", &a, 0.1), units.VaryAs("b", &b, units.Rectangular(3.8, 4.2)))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f, u %.1f, stable: %v\n", s.Value, s.Std, s.Stable)
	// Output: 12.0, u 0.5, stable: true
}

func ExampleSample() {
	play := 0 * units.Millimetre
	s, err := units.MonteCarlo(func() units.Length { return play }, units.Run{Seed: 1, Trials: 100_000},
		units.VaryAs("play", &play, units.Arcsine(-0.1*units.Millimetre, 0.1*units.Millimetre)))
	if err != nil {
		fmt.Println(err)
		return
	}
	high, err := s.Quantile(0.75)
	fmt.Printf("u %.3f, three quarters below %.3f %v\n", s.Std, high, err)
	// Output: u 0.071 mm, three quarters below 0.071 mm <nil>
}

func ExampleInterval() {
	i := units.Interval[units.Length]{Low: 84.1 * units.Millimetre, High: 84.9 * units.Millimetre, Coverage: 0.95}
	fmt.Println(i)
	fmt.Printf("%.1f wide\n", i.Width())
	// Output:
	// 84.1 mm to 84.9 mm (95 %)
	// 0.8 mm wide
}

func ExampleDistribution() {
	for _, d := range []units.Distribution[units.Length]{
		units.Normal(10*units.Millimetre, 0.1*units.Millimetre),
		units.Rectangular(9.9*units.Millimetre, 10.1*units.Millimetre),
	} {
		fmt.Printf("%.0f, u %.3f\n", d.Mean(), d.Std())
	}
	// Output:
	// 10 mm, u 0.100 mm
	// 10 mm, u 0.058 mm
}

func ExampleNormal() {
	fmt.Println(units.Normal(10*units.Millimetre, 0.02*units.Millimetre).Reading())
	// Output: 10.000 mm (u 0.020 mm)
}

func ExampleStudentT() {
	r := units.StudentT(35.032*units.Millimetre, 0.006*units.Millimetre, 4).Reading()
	fmt.Println(r, r.DoF)
	// Output: 35.032 mm (u 0.006 mm) 4
}

func ExampleRectangular() {
	fmt.Println(units.Rectangular(96.0, 104).Reading())
	// Output: 100.0 (u 2.3)
}

func ExampleTriangular() {
	fmt.Println(units.Triangular(96.0, 104).Reading())
	// Output: 100.0 (u 1.6)
}

// Two rectangles of ±50 and ±25 µm added: β = (50 − 25)/(50 + 25).
func ExampleTrapezoidal() {
	fmt.Println(units.Trapezoidal(-75*units.Micrometre, 75*units.Micrometre, 1.0/3).Reading())
	// Output: 0.00 mm (u 0.03 mm)
}

func ExampleArcsine() {
	fmt.Println(units.Arcsine(units.Celsius(18), units.Celsius(22)).Reading())
	// Output: 20.0 °C (u 1.4 K)
}

func ExampleCurvilinearTrapezoid() {
	d := units.CurvilinearTrapezoid(-0.05, 0.05, 0.025)
	fmt.Printf("u %.3f\n", d.Std())
	// Output: u 0.030
}

// JCGM 100:2008, G.4.1, example 1: 18.9987 degrees of freedom are used as 19.
func ExampleCoverageFactor() {
	k, err := units.CoverageFactor(0.95, 18.9987)
	fmt.Printf("%.2f %v\n", k, err)
	// Output: 2.09 <nil>
}

// EA-4/02, example S10: resolution ±25 µm and mechanical effects ±50 µm.
func ExampleTrapezoidFactor() {
	k, err := units.TrapezoidFactor(0.95, (50.0-25)/(50+25))
	fmt.Printf("%.2f %v\n", k, err)
	// Output: 1.83 <nil>
}

func ExampleEffectiveDoF() {
	nu := units.EffectiveDoF(
		units.Reading[units.Ratio]{Std: 0.25 * units.Percent, DoF: 9},
		units.Reading[units.Ratio]{Std: 0.57 * units.Percent, DoF: 4},
		units.Reading[units.Ratio]{Std: 0.82 * units.Percent, DoF: 14})
	fmt.Printf("%.1f\n", nu)
	// Output: 19.0
}

// JCGM 100:2008, 7.2.6.
func ExampleRound() {
	value, u := units.Round(10.05762, 0.027)
	fmt.Println(value, u)
	length, u := units.Round(84.4963*units.Millimetre, 0.0996*units.Millimetre)
	fmt.Println(length, u)
	_, u = units.Round(84.4963*units.Millimetre, 0)
	fmt.Println(u)
	// Output:
	// 10.058 0.027
	// 84.50 mm 0.10 mm
	// not stated
}

func ExampleRoundUp() {
	_, u := units.Round(100.0, 3.4)
	_, up := units.RoundUp(100.0, 3.4)
	fmt.Println(u, up)
	// Output: 3 4
}
