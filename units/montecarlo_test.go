package units

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/stat"

	"example.com/benchsums/internal/figures"
)

func supplement(clause string) string { return "JCGM 101:2008, " + clause + " (from memory)" }

// The examples of clause 9. Sampled figures are held to what is printed with
// room for the scatter of sampling only where they come from sampling.

func TestMonteCarloAdditive(t *testing.T) {
	sum := func(d [4]Distribution[float64]) (Sample[float64], Result[float64]) {
		var x [4]float64
		f := func() float64 { return x[0] + x[1] + x[2] + x[3] }
		inputs := []Input{VaryAs("X1", &x[0], d[0]), VaryAs("X2", &x[1], d[1]), VaryAs("X3", &x[2], d[2]), VaryAs("X4", &x[3], d[3])}
		s, err := MonteCarlo(f, Run{Seed: 1, Trials: 1_000_000}, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		r, err := Propagate(f, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		return s, r
	}
	rectangle := func(u float64) Distribution[float64] { return Rectangular(-u*math.Sqrt(3), u*math.Sqrt(3)) }
	t.Run("four normal", func(t *testing.T) {
		source := supplement("9.2.2")
		n := Normal(0.0, 1)
		s, r := sum([4]Distribution[float64]{n, n, n, n})
		figures.Figure{Printed: "2.00", Source: source}.Check(t, s.Std)
		figures.Figure{Printed: "0.00", Source: source}.Check(t, s.Value)
		figures.Figure{Printed: "2.00", Source: source}.Check(t, r.Std)
		u, k, err := r.Expanded(0.95)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "1.96", Source: source}.Check(t, k)
		figures.Figure{Printed: "3.92", Source: source}.Check(t, u)
		i, err := s.Symmetric(0.95)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "-3.92", Source: source, Place: 0.02}.Check(t, i.Low)
		figures.Figure{Printed: "3.92", Source: source, Place: 0.02}.Check(t, i.High)
	})
	t.Run("one rectangle outweighs three", func(t *testing.T) {
		source := supplement("9.2.4")
		s, r := sum([4]Distribution[float64]{rectangle(1), rectangle(1), rectangle(1), rectangle(10)})
		figures.Figure{Printed: "10.1", Source: source}.Check(t, r.Std)
		figures.Figure{Printed: "0.0", Source: source}.Check(t, r.Value)
		u, _, err := r.Expanded(0.95)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "19.9", Source: source}.Check(t, u)
		figures.Figure{Printed: "10.1", Source: source}.Check(t, s.Std)
		i, err := s.Symmetric(0.95)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "-17.0", Source: source}.Check(t, i.Low)
		figures.Figure{Printed: "17.0", Source: source}.Check(t, i.High)
		figures.Near(t, "exact by convolution", i.High, 17.016, 0.05)
	})
}

// massCalibration is the example of clause 9.3: a weight compared with a
// reference in air. Milligrams and kilograms per cubic metre.
func massCalibration() (func() float64, []Input) {
	var ref, small, air, weight, reference float64
	f := func() float64 { return (ref+small)*(1+(air-1.2)*(1/weight-1/reference)) - 100000 }
	return f, []Input{
		VaryAs("reference weight", &ref, Normal(100000.000, 0.050)),
		VaryAs("added weight", &small, Normal(1.234, 0.020)),
		VaryAs("density of air", &air, Rectangular(1.10, 1.30)),
		VaryAs("density of the weight", &weight, Rectangular(7000.0, 9000)),
		VaryAs("density of the reference", &reference, Rectangular(7950.0, 8050)),
	}
}

func TestMonteCarloMass(t *testing.T) {
	f, inputs := massCalibration()
	t.Run("first order", func(t *testing.T) {
		source := supplement("9.3, first order")
		r, err := Propagate(f, append(inputs, Use(FirstOrder))...)
		if err != nil {
			t.Fatal(err)
		}
		u, _, err := r.Expanded(0.95)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "1.2340", Source: source}.Check(t, r.Value)
		figures.Figure{Printed: "0.0539", Source: source}.Check(t, r.Std)
		figures.Figure{Printed: "1.1285", Source: source}.Check(t, r.Value-u)
		figures.Figure{Printed: "1.3395", Source: source, Place: 0.0002}.Check(t, r.Value+u) // 1.33955
	})
	t.Run("second order, which it chooses", func(t *testing.T) {
		source := supplement("9.3, second order")
		r, err := Propagate(f, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		u, _, err := r.Expanded(0.95)
		if err != nil {
			t.Fatal(err)
		}
		if r.Method != SecondOrder {
			t.Errorf("method: %v", r.Method)
		}
		figures.Figure{Printed: "0.0750", Source: source}.Check(t, r.Std)
		figures.Figure{Printed: "1.0870", Source: source, Place: 0.0002}.Check(t, r.Value-u)
		figures.Figure{Printed: "1.3810", Source: source, Place: 0.0002}.Check(t, r.Value+u)
	})
	t.Run("sampled", func(t *testing.T) {
		source := supplement("9.3, sampled")
		s, err := MonteCarlo(f, Run{Seed: 7, Trials: 1_000_000}, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "1.2340", Source: source, Place: 0.0004}.Check(t, s.Value)
		figures.Figure{Printed: "0.0754", Source: source, Place: 0.0002}.Check(t, s.Std)
		i, err := s.Shortest(0.95)
		if err != nil {
			t.Fatal(err)
		}
		// The width is sure; about its place the width hardly changes, so the ends scatter.
		figures.Figure{Printed: "1.0834", Source: source, Place: 0.004}.Check(t, i.Low)
		figures.Figure{Printed: "1.3825", Source: source, Place: 0.004}.Check(t, i.High)
		figures.Near(t, "width", i.Width(), 0.2991, 0.0008)
	})
}

// Clause 9.4: a sum of squares at nought, where the first derivatives vanish.
func TestMonteCarloSquares(t *testing.T) {
	source := supplement("9.4, x1 = 0, r = 0")
	var x, y float64
	f := func() float64 { return x*x + y*y }
	inputs := []Input{Vary("x", &x, 0.005), Vary("y", &y, 0.005)}
	s, err := MonteCarlo(f, Run{Seed: 3, Shortest: true, Trials: 1_000_000}, inputs...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "0.000050", Source: source}.Check(t, s.Value)
	figures.Figure{Printed: "0.000050", Source: source}.Check(t, s.Std)
	i, err := s.Shortest(0.95)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "0.000150", Source: source, Place: 0.000002}.Check(t, i.High)
	figures.Near(t, "exact upper end", i.High, -2*0.005*0.005*math.Log(0.05), 1e-6)
	figures.Near(t, "lower end", i.Low, 0, 1e-8)
	r, err := Propagate(f, inputs...)
	if err != nil {
		t.Fatal(err)
	}
	if r.Method != SecondOrder {
		t.Errorf("method: %v", r.Method)
	}
	figures.Figure{Printed: "0.000050", Source: source}.Check(t, r.Value)
	figures.Figure{Printed: "0.000050", Source: source}.Check(t, r.Std)
	figures.Near(t, "estimate to second order, exact", r.Value, 5e-5, 1e-15)
	figures.Near(t, "u to second order, exact", r.Std, 5e-5, 1e-13)
}

func TestMonteCarloGaugeBlock(t *testing.T) {
	var ls, d, d1, d2, alpha, theta0, swing, deltaAlpha, deltaTheta float64
	f := func() float64 {
		return ls + d + d1 + d2 - ls*(deltaAlpha*(theta0+swing)+alpha*deltaTheta) - 50e6
	}
	inputs := []Input{
		VaryAs("standard", &ls, StudentT(50000623.0, 25, 18)),
		VaryAs("difference", &d, StudentT(215.0, 6, 24)),
		VaryAs("random error of the comparator", &d1, StudentT(0.0, 4, 5)),
		VaryAs("systematic error of the comparator", &d2, StudentT(0.0, 7, 8)),
		VaryAs("expansion", &alpha, Rectangular(9.5e-6, 13.5e-6)),
		VaryAs("mean temperature", &theta0, Normal(-0.1, 0.2)),
		VaryAs("swing of temperature", &swing, Arcsine(-0.5, 0.5)),
		VaryAs("difference of expansion", &deltaAlpha, CurvilinearTrapezoid(-1e-6, 1e-6, 0.1e-6)),
		VaryAs("difference of temperature", &deltaTheta, CurvilinearTrapezoid(-0.050, 0.050, 0.025)),
	}
	guide, asGuide := endGauge() // the same, with the degrees of freedom of the Guide
	r, err := Propagate(guide, append(asGuide, Use(FirstOrder))...)
	if err != nil {
		t.Fatal(err)
	}
	r.Value -= 50e6
	first := "JCGM 101:2008, Table 11, first order (from memory; 32 nm also in a public manual)"
	figures.Figure{Printed: "838", Source: first}.Check(t, r.Value)
	figures.Figure{Printed: "32", Source: first}.Check(t, r.Std)
	figures.Figure{Printed: "16", Source: first}.Check(t, wholeDoF(r.DoF))
	u, k, err := r.Expanded(0.99)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "2.92", Source: first}.Check(t, k)
	figures.Figure{Printed: "93", Source: first, Place: 2}.Check(t, u) // 2.92 × 32, rounded first
	figures.Figure{Printed: "745", Source: first, Place: 2}.Check(t, r.Value-u)
	figures.Figure{Printed: "931", Source: first, Place: 2}.Check(t, r.Value+u)

	s, err := MonteCarlo(f, Run{Seed: 1, Trials: 400_000, Coverage: 0.99}, inputs...)
	if err != nil {
		t.Fatal(err)
	}
	sampled := "JCGM 101:2008, Table 11, sampled (from memory; 36 nm also in a public manual)"
	figures.Figure{Printed: "838", Source: sampled}.Check(t, s.Value)
	figures.Figure{Printed: "36", Source: sampled}.Check(t, s.Std)
}

// The distributions have the mean and the spread they say, and stay within
// their limits.
func TestDistributions(t *testing.T) {
	const n = 200_000
	for _, c := range []struct {
		name      string
		d         Distribution[Length]
		mean, std float64
		low, high float64
	}{
		{"normal", Normal[Length](3, 2), 3, 2, math.Inf(-1), math.Inf(1)},
		{"t", StudentT[Length](3, 2, 8), 3, 2 * math.Sqrt(8.0/6), math.Inf(-1), math.Inf(1)},
		{"rectangular", Rectangular[Length](1, 5), 3, 4 / math.Sqrt(12), 1, 5},
		{"triangular", Triangular[Length](1, 5), 3, 4 / math.Sqrt(24), 1, 5},
		{"trapezoidal", Trapezoidal[Length](1, 5, 0.5), 3, 4 * math.Sqrt(1.25/24), 1, 5},
		{"arcsine", Arcsine[Length](1, 5), 3, 4 / math.Sqrt(8), 1, 5},
		{"curvilinear trapezoid", CurvilinearTrapezoid[Length](1, 5, 1.5), 3, math.Sqrt(16.0/12 + 2.25/9), -0.5, 6.5},
	} {
		t.Run(c.name, func(t *testing.T) {
			rnd := rand.New(rand.NewPCG(1, 2))
			xs := make([]float64, n)
			for i := range xs {
				xs[i] = c.d.draw(rnd)
				if !(c.low <= xs[i] && xs[i] <= c.high) {
					t.Fatalf("drew %g, outside %g to %g", xs[i], c.low, c.high)
				}
			}
			mean, std := stat.MeanStdDev(xs, nil)
			figures.Near(t, "mean", mean, c.mean, 4*c.std/math.Sqrt(n))
			figures.Near(t, "standard deviation", std, c.std, 0.01*c.std)
			if reach := c.high - c.low; !math.IsInf(reach, 0) { // it goes to both ends
				figures.Near(t, "least", slices.Min(xs), c.low, 0.1*reach)
				figures.Near(t, "most", slices.Max(xs), c.high, 0.1*reach)
			}
			if c.name != "t" {
				figures.Near(t, "as it says", float64(c.d.Std()), c.std, 1e-12)
			}
			figures.Near(t, "mean as it says", float64(c.d.Mean()), c.mean, 1e-12)
		})
	}
	if d := StudentT[Length](3, 2, 8); d.Std() != 2 || d.Reading().DoF != 8 {
		t.Errorf("t: %#v, the law of propagation takes the scale and the degrees of freedom", d.Reading())
	}
	if (Distribution[Length]{}).Reading() != (Reading[Length]{}) {
		t.Error("the zero distribution says something")
	}
}

// A trapezoid with known limits is the sum of two rectangles, and its coverage
// factor is what sampling finds.
func TestTrapezoidFactorAgainstSampling(t *testing.T) {
	for _, beta := range []float64{0, 0.33, 0.6, 0.9, 0.95, 1} {
		for _, p := range []float64{0.5, 0.9, 0.95, 0.99} {
			k, err := TrapezoidFactor(p, beta)
			if err != nil {
				t.Fatal(err)
			}
			var x float64
			s, err := MonteCarlo(func() float64 { return x }, Run{Seed: 5, Trials: 100_000}, VaryAs("x", &x, Trapezoidal(-1.0, 1, beta)))
			if err != nil {
				t.Fatal(err)
			}
			i, err := s.Symmetric(p)
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, "k", i.Width()/2/Trapezoidal(-1.0, 1, beta).Std(), k, 0.02)
		}
	}
	// The two branches meet.
	for _, p := range []float64{0.5, 0.9, 0.95} {
		edge := p / (2 - p)
		low, _ := TrapezoidFactor(p, edge)
		high, _ := TrapezoidFactor(p, math.Nextafter(edge, 1))
		figures.Near(t, "the branches", low, high, 1e-9)
	}
}

func TestMonteCarloRepeatable(t *testing.T) {
	f, inputs := massCalibration()
	run := func(seed uint64) Sample[float64] {
		s, err := MonteCarlo(f, Run{Seed: seed, Trials: 20_000}, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	a, b, c := run(1), run(1), run(2)
	if a.Value != b.Value || a.Std != b.Std {
		t.Error("the same seed gives another result")
	}
	if a.Value == c.Value {
		t.Error("another seed gives the same result")
	}
	if a.Stable {
		t.Error("a fixed number of trials claims to be stable")
	}
}

func TestMonteCarloStopsWhenStable(t *testing.T) {
	var x float64
	f := func() float64 { return x }
	var seen []int
	s, err := MonteCarlo(f, Run{Seed: 1, Digits: 1, Progress: func(n int) error { seen = append(seen, n); return nil }}, Vary("x", &x, 1))
	if err != nil {
		t.Fatal(err)
	}
	if !s.Stable || s.Trials != 20_000 && s.Trials > 200_000 || s.Tolerance != 0.5 {
		t.Errorf("stable %v after %d trials, tolerance %g", s.Stable, s.Trials, s.Tolerance)
	}
	if len(seen) < 2 || seen[0] != 10_000 || seen[len(seen)-1] != s.Trials {
		t.Errorf("progress was told %v", seen)
	}
	capped, err := MonteCarlo(f, Run{Seed: 1, Digits: 4, Cap: 30_000}, Vary("x", &x, 1))
	if err != nil {
		t.Fatal(err)
	}
	if capped.Stable || capped.Trials != 30_000 {
		t.Errorf("stable %v after %d trials of a cap of 30000", capped.Stable, capped.Trials)
	}
	constant, err := MonteCarlo(func() float64 { return 3 }, Run{}, Vary("x", &x, 1))
	if err != nil || !constant.Stable || constant.Std != 0 || constant.Value != 3 {
		t.Errorf("a constant: %+v, %v", constant.Reading(), err)
	}
}

// Twice the standard deviation of the average of two sequences is their
// difference, and that is held against the tolerance, for each of the four.
func TestSettled(t *testing.T) {
	s := &sampler{run: Run{Digits: 2}, values: []float64{-1, 1, -1, 1, -1, 1, -1, 1}} // u 1.07, tolerance 0.05
	for i := range 4 {
		for _, c := range []struct {
			apart float64
			want  bool
		}{{0, true}, {0.049, true}, {0.051, false}, {math.NaN(), false}} {
			seen := [][]float64{{0, 0}, {1, 1}, {-2, -2}, {2, 2}}
			seen[i][1] += c.apart
			if got := s.settled(seen); got != c.want {
				t.Errorf("sequences %g apart in figure %d: settled %v", c.apart, i, got)
			}
		}
	}
	if s.settled([][]float64{{0}, {1}, {-2}, {2}}) {
		t.Error("one sequence settles it")
	}
	for _, c := range []struct {
		u      float64
		digits int
		want   float64
	}{{35.8, 2, 0.5}, {35.8, 1, 5}, {0.0754, 2, 0.0005}, {9.96, 2, 0.5}, {9.94, 2, 0.05}, {1e-120, 1, 0.5e-120}, {0, 2, 0}} {
		figures.Near(t, "tolerance", tolerance(c.u, c.digits), c.want, 1e-12*c.want)
	}
}

func TestMonteCarloCorrelated(t *testing.T) {
	var x, y, z float64
	s, err := MonteCarlo(func() float64 { return x + y + z }, Run{Seed: 4, Trials: 400_000},
		Vary("x", &x, 3), Vary("y", &y, 4), VaryAs("z", &z, Rectangular(-6.0, 6)), Correlate("x", "y", -0.5))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "variance", s.Std*s.Std, 9+16-12+12, 0.2)
	full, err := MonteCarlo(func() float64 { return x - y }, Run{Seed: 4, Trials: 10_000},
		Vary("x", &x, 3), Vary("y", &y, 3), Correlate("x", "y", 1))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "a difference of fully correlated inputs", full.Std, 0, 1e-6)
}

func TestMonteCarloRefuses(t *testing.T) {
	var x, y float64
	ok := Vary("x", &x, 1)
	stop := errors.New("enough")
	f := func() float64 { return x }
	for _, c := range []struct {
		name   string
		f      func() float64
		run    Run
		inputs []Input
		err    error
		text   string
	}{
		{"coverage", f, Run{Coverage: 1.5}, []Input{ok}, ErrDomain, "coverage 1.5: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{"coverage NaN", f, Run{Coverage: math.NaN()}, []Input{ok}, ErrDomain, "coverage NaN: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{"digits", f, Run{Digits: 9}, []Input{ok}, ErrDomain, "9 digits: want 1 to 6: outside the domain"},
		{"trials", f, Run{Trials: 10}, []Input{ok}, ErrDomain, "10 trials: want more than 20 for a coverage of 0.95, and many thousands: outside the domain"},
		{"cap", f, Run{Cap: 100}, []Input{ok}, ErrDomain, "cap of 100 trials: want 20000 or more: outside the domain"},
		{"NaN", func() float64 { return math.NaN() }, Run{}, nil, ErrNotFinite, "trial 1: with every input at its estimate: the function gives NaN: not a finite number"},
		{"progress", f, Run{Progress: func(int) error { return stop }}, []Input{ok}, stop, "enough"},
		{"correlated rectangle", f, Run{}, []Input{ok, VaryAs("y", &y, Rectangular(0.0, 1)), Correlate("x", "y", 0.5)}, ErrDomain, `input "y" is correlated and not normal: want correlated inputs normal: outside the domain`},
		{"limits", f, Run{}, []Input{VaryAs("x", &x, Rectangular(2.0, 1))}, ErrDomain, `input "x": limits 2 and 1: want the lower one first: outside the domain`},
		{"beta", f, Run{}, []Input{VaryAs("x", &x, Trapezoidal(1.0, 2, 3))}, ErrDomain, `input "x": flat part of the trapezoid 3: want 0 to 1: outside the domain`},
		{"inexact", f, Run{}, []Input{VaryAs("x", &x, CurvilinearTrapezoid(1.0, 2, 3))}, ErrDomain, `input "x": limits known to ±3: want 0 to half the width between them, 0.5: outside the domain`},
		{"infinite limit", f, Run{}, []Input{VaryAs("x", &x, Arcsine(math.Inf(-1), 2))}, ErrNotFinite, `input "x": limits -Inf and 2: not a finite number`},
		{"dof", f, Run{}, []Input{VaryAs("x", &x, StudentT(1.0, 2, -3))}, ErrDomain, `input "x": -3 degrees of freedom: want more than 0: outside the domain`},
		{"no distribution", f, Run{}, []Input{VaryAs("x", &x, Distribution[float64]{})}, ErrDomain, `input "x" has no distribution: outside the domain`},
	} {
		_, err := MonteCarlo(c.f, c.run, c.inputs...)
		if !errors.Is(err, c.err) || err.Error() != c.text {
			t.Errorf("%s: %v", c.name, err)
		}
	}
	s, err := MonteCarlo(f, Run{Trials: 100}, ok)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []float64{0, 1, -1, math.NaN(), 0.9999} {
		if _, err := s.Shortest(p); !errors.Is(err, ErrDomain) {
			t.Errorf("shortest %g: %v", p, err)
		}
		if _, err := s.Symmetric(p); !errors.Is(err, ErrDomain) {
			t.Errorf("symmetric %g: %v", p, err)
		}
	}
	if _, err := s.Quantile(2); !errors.Is(err, ErrDomain) {
		t.Errorf("quantile 2: %v", err)
	}
	if _, err := (Sample[float64]{}).Quantile(0.5); !errors.Is(err, ErrDomain) {
		t.Errorf("quantile of nothing: %v", err)
	}
}

// The intervals hold what they say, and the shortest is no longer than the
// symmetric.
func TestSampleIntervals(t *testing.T) {
	var x float64
	s, err := MonteCarlo(func() Length { return Length(x * x) }, Run{Seed: 9, Trials: 50_000}, Vary("x", &x, 1))
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []float64{0.5, 0.6827, 0.95, 0.99} {
		short, err1 := s.Shortest(p)
		symmetric, err2 := s.Symmetric(p)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		for _, i := range []Interval[Length]{short, symmetric} {
			in := 0
			for _, v := range s.sorted {
				if float64(i.Low) <= v && v <= float64(i.High) {
					in++
				}
			}
			figures.Near(t, "covered", float64(in)/float64(s.Trials), p, 1e-3)
		}
		if short.Width() > symmetric.Width() {
			t.Errorf("p %g: shortest %v, symmetric %v", p, short.Width(), symmetric.Width())
		}
	}
	median, err := s.Quantile(0.5)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "median of chi-squared with one degree of freedom", float64(median), 0.4549, 0.02)
}
