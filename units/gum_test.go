package units

import (
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"

	"example.com/benchsums/internal/figures"
)

// The worked examples of the Guide (JCGM 100:2008), calculated through the
// package and held against what is printed. The quantities are pure numbers
// here, in the unit of the example.

func gum(clause string) string { return "JCGM 100:2008, " + clause + " (from memory)" }

func TestGUMTypeB(t *testing.T) {
	t.Run("bounds of three standard deviations", func(t *testing.T) {
		r, err := Expanded(1000.000325, 240e-6, 3)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "0.000080", Source: gum("4.3.3")}.Check(t, r.Std)
		figures.Figure{Printed: "1000.000325", Source: gum("4.3.3")}.Check(t, r.Value)
	})
	t.Run("bounds at 99 %", func(t *testing.T) {
		k, err := CoverageFactor(0.99, 0)
		if err != nil {
			t.Fatal(err)
		}
		r, err := Expanded(10.000742, 129e-6, k)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "0.000050", Source: gum("4.3.4")}.Check(t, r.Std)
	})
	t.Run("even odds", func(t *testing.T) {
		k, err := CoverageFactor(0.5, 0)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "1.48", Source: gum("4.3.5")}.Check(t, 1/k)
		r, err := Expanded(10.11, 0.04, k)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "0.06", Source: gum("4.3.5")}.Check(t, r.Std)
		figures.Figure{Printed: "10.11", Source: gum("4.3.5")}.Check(t, r.Value)
	})
	t.Run("expansion of copper", func(t *testing.T) {
		r := PlusMinus(16.52e-6, 0.40e-6)
		figures.Figure{Printed: "0.23e-6", Source: gum("4.3.7")}.Check(t, r.Std)
	})
	t.Run("rectangle and triangle", func(t *testing.T) {
		r := PlusMinus(Celsius(100), 4)
		figures.Figure{Printed: "2.3", Source: gum("4.4.5")}.Check(t, float64(r.Std))
		figures.Figure{Printed: "2.3", Source: gum("4.4.5")}.Check(t, Rectangular(96.0, 104).Std())
		tri := Triangular(Celsius(96), Celsius(104))
		figures.Figure{Printed: "1.6", Source: gum("4.4.6")}.Check(t, float64(tri.Std()))
		figures.Figure{Printed: "100", Source: gum("4.4.6")}.Check(t, tri.Mean().Celsius())
	})
	t.Run("resolution", func(t *testing.T) {
		figures.Figure{Printed: "0.29", Source: gum("F.2.2.1")}.Check(t, Resolved(7.0, 1).Std)
	})
}

func TestGUMTwentyReadings(t *testing.T) {
	readings := []Temperature{}
	for _, c := range []float64{
		96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07,
		100.33, 100.42, 100.68, 100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72,
	} {
		readings = append(readings, Celsius(c))
	}
	r, err := Repeats(readings...)
	if err != nil {
		t.Fatal(err)
	}
	// The mean is 100.145 exactly; the Guide prints 100.14.
	figures.Figure{Printed: "100.14", Source: gum("4.4.3 and Table 1"), Place: 0.012}.Check(t, r.Value.Celsius())
	figures.Figure{Printed: "0.33", Source: gum("4.4.3 and Table 1")}.Check(t, float64(r.Std))
	figures.Figure{Printed: "1.49", Source: gum("4.4.3 and Table 1")}.Check(t, float64(r.Std)*math.Sqrt(20))
	figures.Figure{Printed: "19", Source: gum("4.4.3 and Table 1")}.Check(t, r.DoF)
}

func TestGUMTenResistors(t *testing.T) {
	for _, c := range []struct {
		correlation float64
		printed     string
	}{{1, "1.0"}, {0, "0.32"}} {
		var r [10]float64
		var inputs []Input
		for i := range r {
			r[i] = 1000
			inputs = append(inputs, Vary(fmt.Sprintf("R%d", i+1), &r[i], 0.1))
			for j := range i {
				if c.correlation != 0 {
					inputs = append(inputs, Correlate(fmt.Sprintf("R%d", i+1), fmt.Sprintf("R%d", j+1), c.correlation))
				}
			}
		}
		res, err := Propagate(func() float64 {
			sum := 0.0
			for _, x := range r {
				sum += x
			}
			return sum
		}, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: c.printed, Source: gum("5.2.2, example")}.Check(t, res.Std)
		figures.Figure{Printed: "10000", Source: gum("5.2.2, example")}.Check(t, res.Value)
		for _, b := range res.Budget {
			figures.Near(t, b.Name+" share", b.Share, 0.1, 1e-9)
		}
	}
}

func TestGUMReport(t *testing.T) {
	m := Reading[Mass]{100.02147 * Gram, 0.35e-3 * Gram, 9}
	expanded, k, err := m.Expanded(0.95)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "2.26", Source: gum("7.2.4")}.Check(t, k)
	figures.Figure{Printed: "0.00079", Source: gum("7.2.4")}.Check(t, expanded.Grams())
	if text := m.String(); text != "100.0215 g (u 0.0004 g)" {
		t.Errorf("got %s", text) // 0.35 goes to one figure, half to even
	}
}

// y = b x1 x2 x3 with relative uncertainties and few degrees of freedom.
func TestGUMWelchSatterthwaite(t *testing.T) {
	x := [3]float64{1, 1, 1}
	res, err := Propagate(func() float64 { return 100 * x[0] * x[1] * x[2] },
		VaryReading("x1", &x[0], Reading[float64]{1, 0.0025, 9}),
		VaryReading("x2", &x[1], Reading[float64]{1, 0.0057, 4}),
		VaryReading("x3", &x[2], Reading[float64]{1, 0.0082, 14}))
	if err != nil {
		t.Fatal(err)
	}
	u, k, err := res.Expanded(0.95)
	if err != nil {
		t.Fatal(err)
	}
	source := gum("G.4.1, example 1")
	figures.Figure{Printed: "1.03", Source: source}.Check(t, res.Std)
	figures.Figure{Printed: "19.0", Source: source}.Check(t, res.DoF)
	figures.Figure{Printed: "2.09", Source: source}.Check(t, k)
	figures.Figure{Printed: "2.2", Source: source}.Check(t, u)
	figures.Near(t, "degrees of freedom, not rounded", res.DoF, 18.9987, 5e-5)
	figures.Near(t, "and as a sum", EffectiveDoF(Reading[float64]{0, 0.25, 9}, Reading[float64]{0, 0.57, 4}, Reading[float64]{0, 0.82, 14}), 18.9987, 5e-5)
}

// endGauge is the example of Annex H.1: a gauge compared with a standard of the
// same nominal length. Lengths in nanometres.
func endGauge() (f func() float64, inputs []Input) {
	var ls, d, alpha, theta, deltaAlpha, deltaTheta float64
	f = func() float64 { return ls + d - ls*(deltaAlpha*theta+alpha*deltaTheta) }
	return f, []Input{
		VaryReading("standard", &ls, Reading[float64]{50000623, 25, 18}),
		VaryReading("difference", &d, Reading[float64]{215, 9.7, 25.6}),
		VaryReading("expansion", &alpha, WithStd(11.5e-6, 1.2e-6)),
		VaryReading("temperature", &theta, WithStd(-0.1, 0.41)),
		VaryReading("difference of expansion", &deltaAlpha, Reading[float64]{0, 0.58e-6, 50}),
		VaryReading("difference of temperature", &deltaTheta, Reading[float64]{0, 0.029, 2}),
	}
}

func TestGUMEndGauge(t *testing.T) {
	const source = "JCGM 100:2008, Annex H.1 (as quoted in public test material)"
	f, inputs := endGauge()
	res, err := Propagate(f, append(inputs, Use(FirstOrder))...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "50.000838", Source: source}.Check(t, res.Value/1e6) // mm
	figures.Figure{Printed: "32", Source: source}.Check(t, res.Std)
	figures.Figure{Printed: "16", Source: source}.Check(t, wholeDoF(res.DoF))
	expanded, k, err := res.Expanded(0.99)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "2.92", Source: source}.Check(t, k)
	// The Guide multiplies the rounded figures, 2.92 × 32.
	figures.Figure{Printed: "93", Source: source, Place: 2}.Check(t, expanded)
	for i, want := range []string{"25", "9.7", "0", "0", "2.9", "16.6"} {
		figures.Figure{Printed: want, Source: source, Place: 0.2}.Check(t, math.Abs(res.Budget[i].Contribution))
	}
	figures.Figure{Printed: "16.6", Source: source, Place: 0.2}.Check(t, math.Abs(res.Budget[5].Sensitivity)*0.029)
	figures.Figure{Printed: "575", Source: source}.Check(t, math.Abs(res.Budget[5].Sensitivity))
	if res.Largest().Name != "standard" {
		t.Errorf("largest: %v", res.Largest())
	}
}

// d of the end gauge: five differences with a pooled standard deviation from
// 25 observations, and two errors of the comparator.
func TestGUMEndGaugeDifference(t *testing.T) {
	const source = "JCGM 100:2008, Annex H.1 (as quoted in public test material)"
	parts := []Reading[float64]{{0, 13 / math.Sqrt(5), 24}, {0, 10 / 2.57, 5}, {0, 20.0 / 3, 8}}
	dof := EffectiveDoF(parts...)
	sum := 0.0
	for _, p := range parts {
		sum += p.Std * p.Std
	}
	figures.Figure{Printed: "9.7", Source: source}.Check(t, math.Sqrt(sum))
	figures.Figure{Printed: "25.6", Source: source, Place: 0.4}.Check(t, dof) // 25.45 before rounding the parts
}

func TestGUMEndGaugeSecondOrder(t *testing.T) {
	f, inputs := endGauge()
	res, err := Propagate(f, inputs...)
	if err != nil {
		t.Fatal(err)
	}
	if res.Method != SecondOrder {
		t.Errorf("method: %v", res.Method)
	}
	figures.Figure{Printed: "34", Source: gum("H.1.7")}.Check(t, res.Std)
	first, err := Propagate(f, append(inputs, Use(FirstOrder))...)
	if err != nil {
		t.Fatal(err)
	}
	// The two terms, 11.7 nm and 1.7 nm, together; from the rounded 0.58e-6 and
	// 0.41 the first comes out 11.9.
	added := math.Sqrt(res.Std*res.Std - first.Std*first.Std)
	figures.Near(t, "second-order terms", added, math.Hypot(50000623*0.58e-6*0.41, 50000623*1.2e-6*0.029), 1e-6)
	figures.Figure{Printed: "11.7", Source: gum("H.1.7"), Place: 0.6}.Check(t, math.Sqrt(added*added-1.74*1.74))
}

func TestGUMSimultaneousReadings(t *testing.T) {
	volts := []float64{5.007, 4.994, 5.005, 4.990, 4.999}
	milliamps := []float64{19.663, 19.639, 19.640, 19.685, 19.678}
	radians := []float64{1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
	source := gum("Annex H.2")
	var v, i, phi float64
	mean := func(xs []float64) Reading[float64] {
		r, err := Repeats(xs...)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	rv, ri, rphi := mean(volts), mean(milliamps), mean(radians)
	for _, c := range []struct {
		got     float64
		printed string
	}{
		{rv.Value, "4.9990"}, {rv.Std, "0.0032"}, {ri.Value, "19.6610"}, {ri.Std, "0.0095"}, {rphi.Value, "1.04446"}, {rphi.Std, "0.00075"},
		{rv.DoF, "4"}, {ri.DoF, "4"}, {rphi.DoF, "4"},
		{stat.Correlation(volts, milliamps, nil), "-0.36"}, {stat.Correlation(volts, radians, nil), "0.86"}, {stat.Correlation(milliamps, radians, nil), "-0.65"},
	} {
		figures.Figure{Printed: c.printed, Source: source}.Check(t, c.got)
	}
	inputs := []Input{
		VaryReading("V", &v, rv), VaryReading("I", &i, ri), VaryReading("phi", &phi, rphi),
		Correlate("V", "I", stat.Correlation(volts, milliamps, nil)),
		Correlate("V", "phi", stat.Correlation(volts, radians, nil)),
		Correlate("phi", "I", stat.Correlation(milliamps, radians, nil)),
	}
	for _, c := range []struct {
		name       string
		f          func() float64
		value, std string
	}{
		{"R", func() float64 { return v / i * 1000 * math.Cos(phi) }, "127.732", "0.071"},
		{"X", func() float64 { return v / i * 1000 * math.Sin(phi) }, "219.847", "0.295"},
		{"Z", func() float64 { return v / i * 1000 }, "254.260", "0.236"},
	} {
		res, err := Propagate(c.f, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: c.value, Source: source}.Check(t, res.Value)
		if c.name == "X" { // 0.2956: the last digit printed does not round
			figures.Figure{Printed: c.std, Source: source}.Misprint(t, res.Std, "0.2956 from the readings of Table H.2; R and Z agree")
		} else {
			figures.Figure{Printed: c.std, Source: source}.Check(t, res.Std)
		}
		// The readings were taken together, five times: four degrees of freedom, not more.
		if c.name != "Z" {
			figures.Near(t, c.name+" degrees of freedom", res.DoF, 4, 1e-9)
		}
		shares := 0.0
		for _, b := range res.Budget {
			shares += b.Share
		}
		figures.Near(t, c.name+" shares", shares, 1, 1e-9)
	}
}

// The calibration line of Annex H.3: slope and intercept are functions of the
// eleven readings, so their uncertainties follow from that of one.
func TestGUMCalibrationLine(t *testing.T) {
	source := gum("Annex H.3")
	temps := []float64{21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511}
	b := []float64{-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160}
	xs := make([]float64, len(temps))
	for i, v := range temps {
		xs[i] = v - 20
	}
	fit := func() (intercept, slope float64) { return stat.LinearRegression(xs, b, nil, false) }
	y1, y2 := fit()
	figures.Figure{Printed: "-0.1712", Source: source}.Check(t, y1)
	figures.Figure{Printed: "0.00218", Source: source}.Check(t, y2)
	rest := 0.0
	for i := range xs {
		d := b[i] - y1 - y2*xs[i]
		rest += d * d
	}
	s := math.Sqrt(rest / 9)
	figures.Figure{Printed: "0.0035", Source: source}.Check(t, s)
	var inputs []Input
	for i := range b {
		inputs = append(inputs, Vary(fmt.Sprintf("b%d", i+1), &b[i], s))
	}
	std := func(f func() float64) float64 {
		res, err := Propagate(f, inputs...)
		if err != nil {
			t.Fatal(err)
		}
		return res.Std
	}
	u1 := std(func() float64 { a, _ := fit(); return a })
	u2 := std(func() float64 { _, a := fit(); return a })
	figures.Figure{Printed: "0.0029", Source: source}.Check(t, u1)
	figures.Figure{Printed: "0.00067", Source: source}.Check(t, u2)
	// r from the variance of a sum: u²(y1 + k y2) = u1² + k²u2² + 2k r u1 u2.
	const k = 5.0
	us := std(func() float64 { a, c := fit(); return a + k*c })
	figures.Figure{Printed: "-0.930", Source: source}.Check(t, (us*us-u1*u1-k*k*u2*u2)/(2*k*u1*u2))
	// And back: with that correlation the line at 30 °C has the Guide's 0.0041 °C.
	at30, err := Propagate(func() float64 { return y1 + 10*y2 }, Vary("y1", &y1, u1), Vary("y2", &y2, u2), Correlate("y1", "y2", -0.930))
	if err != nil {
		t.Fatal(err)
	}
	whole := std(func() float64 { a, c := fit(); return a + 10*c })
	figures.Near(t, "the line at 30 °C", at30.Std, whole, 1e-5)
}

func TestStudentTable(t *testing.T) {
	sigma := func(k float64) float64 { return math.Erf(k / math.Sqrt2) }
	// p: 68.27 %, 90 %, 95 %, 95.45 %, 99 %, 99.73 %; the first, fourth and
	// last are those of one, two and three standard deviations.
	p := [...]float64{sigma(1), 0.90, 0.95, sigma(2), 0.99, sigma(3)}
	for _, row := range []struct {
		dof float64
		t   [6]string
	}{
		{1, [6]string{"1.84", "6.31", "12.71", "13.97", "63.66", "235.80"}},
		{2, [6]string{"1.32", "2.92", "4.30", "4.53", "9.92", "19.21"}},
		{3, [6]string{"1.20", "2.35", "3.18", "3.31", "5.84", "9.22"}},
		{4, [6]string{"1.14", "2.13", "2.78", "2.87", "4.60", "6.62"}},
		{5, [6]string{"1.11", "2.02", "2.57", "2.65", "4.03", "5.51"}},
		{6, [6]string{"1.09", "1.94", "2.45", "2.52", "3.71", "4.90"}},
		{8, [6]string{"1.07", "1.86", "2.31", "2.37", "3.36", "4.28"}},
		{10, [6]string{"1.05", "1.81", "2.23", "2.28", "3.17", "3.96"}},
		{20, [6]string{"1.03", "1.72", "2.09", "2.13", "2.85", "3.42"}},
		{50, [6]string{"1.01", "1.68", "2.01", "2.05", "2.68", "3.16"}},
	} {
		for i, printed := range row.t {
			k, err := CoverageFactor(p[i], row.dof)
			if err != nil {
				t.Fatal(err)
			}
			figures.Figure{Printed: printed, Source: "JCGM 100:2008, Table G.2; NIST TN 1297, Table B.1 (from memory)"}.Check(t, k)
		}
	}
}

func TestOtherGuides(t *testing.T) {
	t.Run("EA-4/02 S2, 10 kg weight", func(t *testing.T) {
		const source = "EA-4/02, example S2 (from memory)"
		var standard, drift, difference, eccentric, buoyancy float64
		res, err := Propagate(func() float64 { return standard + drift + difference + eccentric + buoyancy },
			VaryReading("standard", &standard, WithStd(10000005, 22.5)), // mg
			Vary("drift", &drift, 8.95),
			VaryReading("difference", &difference, WithStd(20.0, 14.4)),
			Vary("eccentricity", &eccentric, 5.77), Vary("buoyancy", &buoyancy, 5.77))
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "10000.025", Source: source}.Check(t, res.Value/1e3)
		figures.Figure{Printed: "0.0293", Source: source}.Check(t, res.Std/1e3)
		figures.Figure{Printed: "0.059", Source: source}.Check(t, 2*res.Std/1e3)
	})
	t.Run("EA-4/02 S3, 10 kilohm resistor", func(t *testing.T) {
		const source = "EA-4/02, example S3 (from memory)"
		var rs, drift, temp, rc, r, tempX float64
		res, err := Propagate(func() float64 { return (rs+drift+temp)*rc*r - tempX },
			VaryReading("standard", &rs, WithStd(10000.053, 2.5e-3)),
			VaryAs("drift", &drift, Rectangular(-10e-3, 10e-3)),
			VaryAs("temperature of the standard", &temp, Rectangular(-2.75e-3, 2.75e-3)),
			VaryAs("temperature of the unknown", &tempX, Rectangular(-5.5e-3, 5.5e-3)),
			VaryAs("parasitic", &rc, Triangular(1-1e-6, 1+1e-6)),
			VaryReading("ratio", &r, WithStd(1.0000105, 0.07e-6)))
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "0.00833", Source: source}.Check(t, res.Std)
		figures.Figure{Printed: "0.017", Source: source}.Check(t, 2*res.Std)
	})
	t.Run("EA-4/02 S10, calliper", func(t *testing.T) {
		const source = "EA-4/02, example S10 (from memory)"
		var gauge, temp, resolution, mechanical float64
		res, err := Propagate(func() float64 { return 100 + gauge + temp + resolution + mechanical }, // µm
			Vary("gauge block", &gauge, 0.46), Vary("temperature", &temp, 2.0),
			Vary("resolution", &resolution, 15), Vary("mechanical", &mechanical, 29)) // as printed, from ±25 and ±50
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "0.033", Source: source}.Check(t, res.Std/1e3)
		figures.Figure{Printed: "0.10", Source: source}.Check(t, res.Value/1e3)
		figures.Figure{Printed: "15", Source: source, Place: 2}.Check(t, PlusMinus(0.0, 25).Std) // 14.4
		figures.Figure{Printed: "29", Source: source}.Check(t, PlusMinus(0.0, 50).Std)
		beta := (50.0 - 25) / (50 + 25)
		k, err := TrapezoidFactor(0.95, beta)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "1.83", Source: source}.Check(t, k)
		figures.Figure{Printed: "0.06", Source: source}.Check(t, k*res.Std/1e3)
	})
	t.Run("NPL Good Practice Guide 11, length of string", func(t *testing.T) {
		const source = "S. Bell, NPL Good Practice Guide No. 11, string example (from memory)"
		calibration, err := Expanded(0.0, 5.0, 2)
		if err != nil {
			t.Fatal(err)
		}
		length, division, straight, repeats := 5017.0, 0.0, 0.0, 0.0 // mm
		res, err := Propagate(func() float64 { return length + division + straight + repeats },
			VaryReading("tape calibration", &length, WithStd(5017, calibration.Std)),
			VaryReading("division", &division, PlusMinus(0.0, 0.5)),
			VaryReading("not straight", &straight, PlusMinus(0.0, 10)),
			Vary("repeats", &repeats, 2.1/math.Sqrt(10)))
		if err != nil {
			t.Fatal(err)
		}
		for i, want := range []string{"2.5", "0.3", "5.8", "0.7"} {
			figures.Figure{Printed: want, Source: source}.Check(t, res.Budget[i].Contribution)
		}
		// The guide adds the rounded contributions; without rounding it is 6.33 mm.
		figures.Figure{Printed: "0.0064", Source: source, Place: 0.0002}.Check(t, res.Std/1e3)
		figures.Figure{Printed: "0.0128", Source: source, Place: 0.0004}.Check(t, 2*res.Std/1e3)
		if res.Largest().Name != "not straight" {
			t.Errorf("largest: %v", res.Largest())
		}
	})
	t.Run("NIST TN 1900, E2, daily maxima", func(t *testing.T) {
		const source = "NIST TN 1900, example E2 (from memory)"
		r := Reading[Temperature]{Celsius(25.59), 0.872, 21}
		expanded, k, err := r.Expanded(0.95)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "2.08", Source: source}.Check(t, k)
		figures.Figure{Printed: "1.8", Source: source}.Check(t, float64(expanded))
		figures.Figure{Printed: "23.8", Source: source}.Check(t, (r.Value - expanded).Celsius())
		figures.Figure{Printed: "27.4", Source: source}.Check(t, (r.Value + expanded).Celsius())
	})
	t.Run("Sawhney, example 3.22", func(t *testing.T) {
		const source = "Sawhney, Mechanical Measurements and Instrumentation, example 3.22 (FOSSEE notebook)"
		r, err := Repeats(41.7, 42, 41.8, 42, 42.1, 41.9, 42, 41.9, 42.5, 41.8)
		if err != nil {
			t.Fatal(err)
		}
		s := r.Std * math.Sqrt(10)
		figures.Figure{Printed: "41.97", Source: source}.Check(t, r.Value)
		figures.Figure{Printed: "0.221", Source: source}.Check(t, s)
		figures.Figure{Printed: "0.149", Source: source}.Check(t, 0.6745*s)
		figures.Figure{Printed: "9", Source: source}.Check(t, r.DoF)
	})
	t.Run("Sawhney, example 3.38", func(t *testing.T) {
		const source = "Sawhney, Mechanical Measurements and Instrumentation, example 3.38 (FOSSEE notebook)"
		v, i := 110.2, 5.3
		res, err := Propagate(func() Power { return Power(v*i) * Watt }, Vary("V", &v, 0.2), Vary("I", &i, 0.06))
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "584.06", Source: source}.Check(t, res.Value.Watts())
		figures.Figure{Printed: "6.70", Source: source}.Check(t, res.Std.Watts())
		figures.Figure{Printed: "1.147", Source: source}.Check(t, 100*float64(res.Std/res.Value))
	})
}
