package main

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
)

// A handSum is an exercise done with its numbers as the page has them and the
// formula that the page derives, rightly and with the usual slip.
type handSum struct {
	right, slip float64
	near        float64 // how well they are to agree, as a share; 0 for 1e-9
}

// TestFormulasOnThePage holds the library, which gives the answers, against the
// formulas that the pages derive.
func TestFormulasOnThePage(t *testing.T) {
	const rad = math.Pi / 180
	sq := func(x float64) float64 { return x * x }
	// Lesson 3: the drop, and the law of cosines for the way back.
	drop := func(r, l, theta float64) float64 {
		return r*(1-math.Cos(theta)) + l - math.Sqrt(l*l-sq(r*math.Sin(theta)))
	}
	angle := func(r, l, x float64) float64 {
		y := r + l - x
		return math.Acos((r*r + y*y - l*l) / (2 * r * y))
	}
	// Lesson 14: Lamé for both parts of one bronze.
	press := func(d, di, do, delta, e, nu float64) float64 {
		sh, ss := (do*do+d*d)/(do*do-d*d), (d*d+di*di)/(d*d-di*di)
		p := delta / (d * ((sh+nu)/e + (ss-nu)/e))
		return di - 2*p*d*d*di/((d*d-di*di)*e)
	}
	// Lesson 16: wires at 55°.
	wires := func(e, p, w, n float64) float64 { return e - p/2/math.Tan(27.5*rad) + w*n }
	e38 := 0.375 - (1/math.Tan(27.5*rad)/2)*2./3*0.05 // effective: two thirds of the sharp height below, H·2/3 in all
	torsion := func(d, mean, n, e, theta float64) float64 { return e * math.Pow(d, 4) / (64 * mean * n) * theta }
	u := func(s, us, uz, across, ua float64) []float64 {
		theta := 2 * s / across
		return []float64{us * 2 / across / rad, uz * 2 / across / rad, theta * ua / across / rad}
	}(70, 0.4, 0.3, 300, 1)
	swept := math.Pi / 4 * 60 * 60 * 43 / 1000 // cc
	spiral := 206e3 * 10 * math.Pow(0.5, 3) * 4 / (6 * 2000)

	sums := map[string]handSum{
		"degrees": {right: math.Pi * 356 * 24 / 360, slip: 356 * 24 * rad},
		"chord":   {right: 2 * math.Asin(120./300) / rad, slip: 2 * 120. / 300 / rad},
		"crank":   {right: drop(35, 130, 30*rad), slip: 35 * (1 - math.Cos(30*rad))},
		"rod":     {right: angle(32, 128, 4.5) / rad, slip: math.Acos(1-4.5/32) / rad},
		"tdc":     {right: (871.2 - 900 + 46.0) / 2, slip: (871.2 + 46.0) / 2},
		// Pairs are weighed by their own slope, which the two ways hardly differ in.
		"slack":       {right: (88.4 + 217.8 + 86.6 + 216.4) / 4, slip: (88.4 + 217.8) / 2, near: 1e-5},
		"sure":        {right: math.Sqrt(sq(u[0]) + sq(u[1]) + sq(u[2])), slip: u[0] + u[1] + u[2], near: 1e-4},
		"lean":        {right: 4.8 / math.Cos(28*rad), slip: 4.8 * math.Cos(28*rad)},
		"points":      {right: 360 * (190.0 - 178.6) / 1200 / 0.15 * 0.0254, slip: 360 * (190.0 - 178.6) / 1200 / 0.15 * 0.01},
		"ports":       {right: 360 - 2*angle(33, 125, 50-3.1)/rad, slip: 360 - 2*angle(33, 125, 50)/rad},
		"compression": {right: (swept + 24) / 24, slip: swept / 24},
		"fits":        {right: 25 - (-50), slip: 25 - (-25)},
		"oldpart":     {right: 15.876 + 0.016, slip: 16},
		"press":       {right: press(25, 19, 50, 0.035, 103e3, 0.34), slip: 19},
		"wires":       {right: wires(e38, 0.05, 0.030, 1+1/math.Sin(27.5*rad)), slip: wires(e38, 0.05, 0.030, 3)},
		"torsion":     {right: torsion(1.5, 12.5, 5, 206e3, 70*rad), slip: torsion(1.5, 14, 5, 206e3, 70*rad)},
		"spiral":      {right: math.Pi * spiral, slip: spiral / 2},
		"oil":         {right: 4546.09 / 21, slip: 4546.09 / 20},
	}
	for _, l := range all(t) {
		n, ok := l.Exercise.Answer.(number)
		if !ok {
			continue // a name, not a number
		}
		s, ok := sums[l.Key]
		if !ok {
			t.Errorf("%s: no formula to hold it against", l.Key)
			continue
		}
		if s.near == 0 {
			s.near = 1e-9
		}
		figures.Near(t, l.Key, n.value, s.right, s.near*s.right)
		figures.Near(t, l.Key+", "+l.Slip.Name, n.wrong[0].value, s.slip, s.near*s.slip)
	}
}

// The short forms that the pages use are as good as the pages say.
func TestRoughFormulas(t *testing.T) {
	// Lessons 4 and 5: x ≈ (r/2)(1 + r/l) θ², good to 2 % at 15°.
	const r, l, theta = 40.0, 160.0, 15 * math.Pi / 180
	exact := r*(1-math.Cos(theta)) + l - math.Sqrt(l*l-r*r*math.Sin(theta)*math.Sin(theta))
	figures.Near(t, "short form of the drop", r/2*(1+r/l)*theta*theta, exact, 0.02*exact)
	// Lesson 2: how much a chord falls short.
	for _, tc := range []struct {
		degrees float64
		short   string
	}{{10, "0.13"}, {20, "0.5"}, {30, "1.1"}, {60, "4.5"}} {
		half := tc.degrees * math.Pi / 360
		figures.Figure{Printed: tc.short, Source: "the page of lesson 2, in per cent"}.Check(t, 100*(1-math.Sin(half)/half))
	}
	// Lesson 7: a third of the largest adds a twentieth.
	figures.Figure{Printed: "0.05", Source: "the page of lesson 7"}.Check(t, math.Hypot(1, 1./3)-1)
	// Lesson 16: the constants of 55° and 60°.
	cosec, cot := func(d float64) float64 { return 1 / math.Sin(d*math.Pi/180) }, func(d float64) float64 { return 1 / math.Tan(d*math.Pi/180) }
	figures.Figure{Printed: "3.1657", Source: "the page of lesson 16"}.Check(t, 1+cosec(27.5))
	figures.Figure{Printed: "0.9605", Source: "the page of lesson 16"}.Check(t, cot(27.5)/2)
	figures.Figure{Printed: "0.866", Source: "the page of lesson 16"}.Check(t, cot(30)/2)
	figures.Figure{Printed: "0.6403", Source: "the page of lesson 16"}.Check(t, cot(27.5)/2*2/3)
	// Lesson 19: 6 % of the petrol is 5.7 % of the mix.
	figures.Figure{Printed: "5.7", Source: "the page of lesson 19"}.Check(t, 100*0.06/1.06)
}
