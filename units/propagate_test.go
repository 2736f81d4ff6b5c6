package units

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
)

// Sensitivities are good to 1e-8 of their value on smooth functions, whatever
// the uncertainty: tiny, of the size of a reading, or large.
func TestSensitivity(t *testing.T) {
	for _, c := range []struct {
		name  string
		f, df func(float64) float64
		x     float64
	}{
		{"square", func(x float64) float64 { return x * x }, func(x float64) float64 { return 2 * x }, 3},
		{"sine", math.Sin, math.Cos, 0.7},
		{"sine near its top", math.Sin, math.Cos, math.Pi/2 - 0.01},
		{"exponential", math.Exp, math.Exp, 2},
		{"logarithm", math.Log, func(x float64) float64 { return 1 / x }, 5},
		{"root", math.Sqrt, func(x float64) float64 { return 0.5 / math.Sqrt(x) }, 2},
		{"arc sine", math.Asin, func(x float64) float64 { return 1 / math.Sqrt(1-x*x) }, 0.5},
		{"reciprocal", func(x float64) float64 { return 1 / x }, func(x float64) float64 { return -1 / (x * x) }, 0.035},
		{"a small effect on a large value", func(x float64) float64 { return 1e6 + x*x*x }, func(x float64) float64 { return 3 * x * x }, 100},
		{"at nought", func(x float64) float64 { return math.Sin(x) + 2*x }, func(float64) float64 { return 3 }, 0},
		{"tenth power", func(x float64) float64 { return math.Pow(x, 10) }, func(x float64) float64 { return 10 * math.Pow(x, 9) }, 1.5},
	} {
		for _, u := range []float64{1e-9, 1e-6, 1e-3, 0.02} {
			x := c.x
			res, err := Propagate(func() float64 { return c.f(x) }, Vary("x", &x, u))
			if err != nil {
				t.Errorf("%s, u %g: %v", c.name, u, err)
				continue
			}
			tolerance := 1e-8
			if u >= 1e-3 { // a step large enough for the extrapolation to show
				tolerance = 1e-11
			}
			if c.x == 0 && u < 1e-3 || c.name == "a small effect on a large value" {
				tolerance = 1e-6 // rounding of the function itself
			}
			figures.Near(t, c.name, res.Budget[0].Sensitivity/c.df(c.x), 1, tolerance)
			if x != c.x {
				t.Errorf("%s: x is left at %g", c.name, x)
			}
		}
	}
}

// A function over variables of several types, with a result of another.
func TestPropagateTypes(t *testing.T) {
	bore, stroke, deck := 35*Millimetre, 40*Millimetre, 2.5*Millilitre
	shop, rise, slip := Celsius(20), 100*KelvinDifference, 0.02
	f := func() Volume {
		grown := float64(bore) * (1 + 23e-6*float64(shop.Add(rise).Sub(Celsius(20))))
		return Volume(math.Pi/4*grown*grown*float64(stroke)*(1-slip)) + deck
	}
	res, err := Propagate(f,
		Vary("bore", &bore, 0.05*Millimetre), VaryReading("stroke", &stroke, PlusMinus(40*Millimetre, 0.2*Millimetre)),
		Vary("deck", &deck, 0.1*Millilitre), Vary("shop", &shop, 2), Vary("rise", &rise, 20*KelvinDifference), Vary("slip", &slip, 0.005))
	if err != nil {
		t.Fatal(err)
	}
	if res.Method != FirstOrder || res.Shift != 0 {
		t.Errorf("%v, shift %v", res.Method, res.Shift)
	}
	figures.Near(t, "bore: dV/dd = 2V/d", res.Budget[0].Sensitivity, 2*float64(res.Value-deck)/0.035, 1e-9)
	figures.Near(t, "deck", res.Budget[2].Sensitivity, 1, 1e-9)
	sum, shares := 0.0, 0.0
	for _, b := range res.Budget {
		sum += float64(b.Contribution) * float64(b.Contribution)
		shares += b.Share
	}
	figures.Near(t, "variance", float64(res.Std), math.Sqrt(sum), 1e-9*float64(res.Std))
	figures.Near(t, "shares", shares, 1, 1e-12)
	for i, want := range []string{"35 mm", "40 mm", "2.5 cm³", "20 °C", "100 K", "0.02"} {
		if got := res.Budget[i].Value.String(); got != want {
			t.Errorf("value of %s: %s, want %s", res.Budget[i].Name, got, want)
		}
	}
	if got := res.Budget[3].Std.String(); got != "2 K" { // a difference, not 2 K above absolute zero
		t.Errorf("u of the shop temperature: %s", got)
	}
	if res.Largest().Name != "slip" && res.Largest().Name != "deck" && res.Largest().Name != "bore" {
		t.Errorf("largest: %v", res.Largest())
	}
	wantLargest := 0.0
	for _, b := range res.Budget {
		wantLargest = math.Max(wantLargest, b.Share)
	}
	if res.Largest().Share != wantLargest {
		t.Errorf("largest: %v", res.Largest())
	}
	if got, want := res.Budget[0].String(), "bore: u 0.05 mm, 2.2 cm³/mm, 0.11 cm³, "; !strings.HasPrefix(got, want) {
		t.Errorf("got %q, want it to begin %q", got, want)
	}
}

// Rounding is not taken for a bend: an uncertainty near the last place of its
// input still goes by the straight line.
func TestPropagateTinyUncertainty(t *testing.T) {
	x, y, z := 1.1, 3.3, -7.7
	for _, u := range []float64{1e-9, 1e-12, 1e-13, 1e-14, 4e-16, 1e-17, 1e-300, 5e-324} {
		for name, f := range map[string]func() float64{
			"a sum":         func() float64 { return x + y + z },
			"a product":     func() float64 { return x * y * z },
			"a sine":        func() float64 { return math.Sin(x) * math.Exp(y) / z },
			"a cancelling":  func() float64 { return x - 1.1 + (y - 3.3) },
			"a large value": func() float64 { return 1e5 + x*y },
		} {
			res, err := Propagate(f, Vary("x", &x, u), Vary("y", &y, u), Vary("z", &z, u))
			if err != nil || res.Method != FirstOrder || !(res.Std >= 0) || res.Shift != 0 {
				t.Errorf("%s, u %g: %v, u %g, shift %g, %v", name, u, res.Method, res.Std, res.Shift, err)
			}
		}
	}
}

// The caller's variables come back whatever happens.
func TestPropagateRestores(t *testing.T) {
	x, y := 3*Millimetre, 7.0
	check := func(when string) {
		t.Helper()
		if x != 3*Millimetre || y != 7 {
			t.Errorf("%s: left at %v and %g", when, x, y)
		}
	}
	inputs := []Input{VaryReading("x", &x, WithStd(50*Millimetre, Millimetre)), VaryReading("y", &y, WithStd(2.0, 0.1))}
	if res, err := Propagate(func() Length { return x * Length(y) }, inputs...); err != nil || math.Abs(res.Value.Millimetres()-100) > 1e-9 {
		t.Errorf("%v, %v", res, err)
	}
	check("after a result")
	if _, err := Propagate(func() Length { return Length(math.NaN()) }, inputs...); err == nil {
		t.Error("NaN was taken")
	}
	check("after an error")
	func() {
		defer func() { _ = recover() }()
		_, _ = Propagate(func() Length { panic("the caller's own") }, inputs...)
	}()
	check("after a panic")
	if _, err := MonteCarlo(func() Length { return x * Length(y) }, Run{Trials: 100}, inputs...); err != nil {
		t.Error(err)
	}
	check("after sampling")
}

func TestStopOn(t *testing.T) {
	x := 1.0
	tooFar := errors.New("too far")
	var failed error
	f := func() float64 {
		if x > 1.5 {
			failed = tooFar
			return 0
		}
		return x
	}
	failed = errors.New("left from something else")
	if _, err := Propagate(f, Vary("x", &x, 0.1), StopOn(&failed)); err != nil {
		t.Error(err)
	}
	_, err := Propagate(f, Vary("x", &x, 1), StopOn(&failed))
	if !errors.Is(err, tooFar) || err.Error() != "with x at 2: too far" {
		t.Errorf("got %v", err)
	}
	if failed != nil {
		t.Errorf("left %v behind", failed)
	}
	if _, err := MonteCarlo(f, Run{Trials: 1000}, Vary("x", &x, 1), StopOn(&failed)); !errors.Is(err, tooFar) {
		t.Errorf("sampling: %v", err)
	}
}

func TestPropagateRefuses(t *testing.T) {
	x, y, z := 1.0, 2.0, 3.0
	angle := 28 * Degree
	f := func() float64 { return x + y + z }
	var none *float64
	for _, c := range []struct {
		inputs []Input
		err    error
		text   string
	}{
		{[]Input{Vary("x", &x, -0.5)}, ErrDomain, `input "x": standard uncertainty -0.5: want 0 or more: outside the domain`},
		{[]Input{Vary("angle", &angle, -0.5*Degree)}, ErrDomain, `input "angle": standard uncertainty -0.5°: want 0 or more: outside the domain`},
		{[]Input{Vary("x", &x, math.NaN())}, ErrNotFinite, `input "x": standard uncertainty NaN: not a finite number`},
		{[]Input{VaryReading("x", &x, Reading[float64]{Value: math.Inf(1)})}, ErrNotFinite, `input "x": estimate +Inf: not a finite number`},
		{[]Input{VaryReading("x", &x, Reading[float64]{1, 1, -2})}, ErrDomain, `input "x": -2 degrees of freedom: want more than 0: outside the domain`},
		{[]Input{Vary("", &x, 1)}, ErrDomain, "input 1 has no name: outside the domain"},
		{[]Input{Vary("x", &x, 1), Vary("x", &y, 1)}, ErrDomain, `input "x" is given twice: outside the domain`},
		{[]Input{Vary("x", &x, 1), Vary("y", &x, 1)}, ErrDomain, `inputs "x" and "y" are the same variable: outside the domain`},
		{[]Input{Vary("x", none, 1)}, ErrDomain, `input "x" has no variable: outside the domain`},
		{[]Input{VaryReading("x", none, Exact(1.0))}, ErrDomain, `input "x" has no variable: outside the domain`},
		{[]Input{{}}, ErrDomain, "an empty Input: make it with Vary, VaryReading, VaryAs or Correlate: outside the domain"},
		{[]Input{StopOn(nil)}, ErrDomain, "StopOn without a variable: outside the domain"},
		{[]Input{Use(NeedsMonteCarlo)}, ErrDomain, "method rough: needs Monte Carlo: want FirstOrder or SecondOrder: outside the domain"},
		{[]Input{Vary("x", &x, 1), Vary("y", &y, 1), Correlate("x", "w", 0.5)}, ErrDomain, `correlation with "w": want one of the inputs "x", "y": outside the domain`},
		{[]Input{Vary("x", &x, 1), Vary("y", &y, 1), Correlate("v", "x", 0.5)}, ErrDomain, `correlation with "v": want one of the inputs "x", "y": outside the domain`},
		{[]Input{Vary("x", &x, 1), Vary("y", &y, 1), Correlate("x", "y", 1.5)}, ErrDomain, `correlation of "x" and "y" 1.5: want -1 to 1: outside the domain`},
		{[]Input{Vary("x", &x, 1), Vary("y", &y, 1), Correlate("x", "y", math.NaN())}, ErrDomain, `correlation of "x" and "y" NaN: want -1 to 1: outside the domain`},
		{[]Input{Vary("x", &x, 1), Correlate("x", "x", 0.5)}, ErrDomain, `correlation of "x" with itself: want two inputs: outside the domain`},
		{[]Input{Vary("x", &x, 1), Vary("y", &y, 1), Correlate("x", "y", 0.5), Correlate("y", "x", 0.5)}, ErrDomain, `correlation of "y" and "x" is given twice: outside the domain`},
		{[]Input{Vary("x", &x, 1), Vary("y", &y, 1), Vary("z", &z, 1), Correlate("x", "y", 1), Correlate("y", "z", 1), Correlate("x", "z", -1)}, ErrDomain, "correlations that contradict one another: the matrix has the eigenvalue -1, want none below 0: outside the domain"},
		{[]Input{Correlate("x", "y", 0.5)}, ErrDomain, `correlation with "x": there are no inputs: outside the domain`},
	} {
		_, err := Propagate(f, c.inputs...)
		if !errors.Is(err, c.err) || err.Error() != c.text {
			t.Errorf("got  %v\nwant %s", err, c.text)
		}
	}
	_, err := Propagate(func() float64 { return math.Sqrt(x - 1) }, Vary("x", &x, 0.1))
	if !errors.Is(err, ErrNotFinite) || err.Error() != "with x at 0.9: the function gives NaN: not a finite number" {
		t.Errorf("a root below nought: %v", err)
	}
	if _, err := Propagate[float64](nil); !errors.Is(err, ErrDomain) || err.Error() != "no function: outside the domain" {
		t.Errorf("no function: %v", err)
	}
}

func TestPropagateWithoutInputs(t *testing.T) {
	res, err := Propagate(func() Length { return 35 * Millimetre })
	if err != nil || res.Value != 35*Millimetre || res.Std != 0 || res.Method != FirstOrder || res.DoF != 0 {
		t.Errorf("%+v, %v", res, err)
	}
	if l := res.Largest(); l.Name != "" || l.String() != "nothing uncertain" {
		t.Errorf("largest: %v", l)
	}
}

// An exact input is not varied: a function that ends at it is no trouble.
func TestPropagateExactInput(t *testing.T) {
	offset, arc := 0*Millimetre, 30*Millimetre
	f := func() Length { return Length(math.Sqrt(float64(offset))) + arc }
	res, err := Propagate(f, VaryReading("offset", &offset, Exact(0*Millimetre)), Vary("arc", &arc, 0.5*Millimetre))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "u", res.Std.Millimetres(), 0.5, 1e-9)
	if b := res.Budget[0]; b.Share != 0 || b.Contribution != 0 || b.Sensitivity != 0 {
		t.Errorf("an exact input brings %+v", b)
	}
}

// The case that matters: a dial at top dead centre. The slope is nought there,
// and the first-order law says the drop is known exactly.
func TestPropagateTopDeadCentre(t *testing.T) {
	theta := 0 * Degree
	throw, rod := 30*Millimetre, 110*Millimetre
	drop := func() Length {
		s, c := theta.Sincos()
		r, l := float64(throw), float64(rod)
		return Length(r*(1-c) + l - math.Sqrt(l*l-r*r*s*s))
	}
	inputs := []Input{Vary("crank", &theta, 2*Degree), Vary("throw", &throw, 0.05*Millimetre), Vary("rod", &rod, 0.5*Millimetre)}
	first, err := Propagate(drop, append(inputs, Use(FirstOrder))...)
	if err != nil {
		t.Fatal(err)
	}
	if first.Std > 1e-9*Millimetre || first.Shift != 0 {
		t.Errorf("to first order: %v, u %g mm", first, first.Std.Millimetres())
	}
	res, err := Propagate(drop, inputs...)
	if err != nil {
		t.Fatal(err)
	}
	// Half the curvature r(1 + r/l) times θ²: mean κu²/2, standard deviation κu²/√2.
	kappa, u := 30*(1+30.0/110), (2 * Degree).Radians()
	if res.Method != SecondOrder || res.Largest().Name != "crank" {
		t.Errorf("%v, largest %v", res.Method, res.Largest())
	}
	figures.Near(t, "mean drop", res.Value.Millimetres(), kappa*u*u/2, 1e-4*kappa*u*u)
	figures.Near(t, "u of the drop", res.Std.Millimetres(), kappa*u*u/math.Sqrt2, 1e-4*kappa*u*u)
	figures.Near(t, "shift", float64(res.Shift), float64(res.Value), 1e-15)
	s, err := MonteCarlo(drop, Run{Seed: 1, Trials: 200_000}, inputs...)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "mean drop, sampled", s.Value.Millimetres(), res.Value.Millimetres(), 0.01*res.Value.Millimetres())
	figures.Near(t, "u of the drop, sampled", s.Std.Millimetres(), res.Std.Millimetres(), 0.02*res.Std.Millimetres())
	// Well away from the top a straight line will do.
	theta = 40 * Degree
	away, err := Propagate(drop, inputs...)
	if err != nil || away.Method != FirstOrder {
		t.Errorf("at 40°: %v, %v", away.Method, err)
	}
}

// Second order agrees with what is known exactly for normal inputs.
func TestSecondOrderExact(t *testing.T) {
	x, y := 0.0, 0.0
	for _, c := range []struct {
		name       string
		f          func() float64
		x, y       float64
		ux, uy, r  float64
		mean, vari float64 // of the value
	}{
		{"a square", func() float64 { return x * x }, 3, 0, 1, 0, 0, 10, 4*9 + 2},
		{"a product", func() float64 { return x * y }, 3, 4, 2, 1, 0, 12, 16*4 + 9*1 + 4},
		{"a correlated product", func() float64 { return x * y }, 3, 4, 2, 1, 0.5, 13, 16*4 + 9*1 + 2*12*2*0.5 + 4*(1+0.25)},
		{"fully correlated", func() float64 { return x * y }, 3, 3, 1, 1, 1, 10, 4*9 + 2},
		{"a saddle at nought", func() float64 { return x * y }, 0, 0, 2, 3, 0, 0, 36},
		{"x(1 + y²), mixed third derivative", func() float64 { return x * (1 + y*y/10) }, 0, 0, 1, 1, 0, 0, 1 + 2.0/10},
	} {
		x, y = c.x, c.y
		inputs := []Input{Vary("x", &x, c.ux), Vary("y", &y, c.uy), Use(SecondOrder)}
		if c.r != 0 {
			inputs = append(inputs, Correlate("x", "y", c.r))
		}
		res, err := Propagate(c.f, inputs...)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		figures.Near(t, c.name+": mean", res.Value, c.mean, 1e-9)
		figures.Near(t, c.name+": variance", res.Std*res.Std, c.vari, 1e-7*c.vari)
		shares := 0.0
		for _, b := range res.Budget {
			shares += b.Share
		}
		figures.Near(t, c.name+": shares", shares, 1, 1e-9)
	}
}

// Where a series will not do, it says so and gives a figure that is not
// nought.
func TestNeedsMonteCarlo(t *testing.T) {
	x := 0.0
	for _, c := range []struct {
		name string
		x, u float64
		f    func() float64
	}{
		{"a cube at nought", 0, 1, func() float64 { return x * x * x }},
		{"a corner", 1, 0.5, func() float64 { return math.Abs(x - 1) }},
		{"a step", 1, 0.5, func() float64 {
			if x > 1.2 {
				return 1
			}
			return 0
		}},
		{"a fourth power at nought", 0, 1, func() float64 { return x * x * x * x }},
		{"a wave within the uncertainty", 0, 1, func() float64 { return math.Sin(5 * x) }},
		{"the end of a root", 1, 0.8, func() float64 { return math.Sqrt(x) }},
	} {
		x = c.x
		res, err := Propagate(c.f, Vary("x", &x, c.u))
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		if res.Method != NeedsMonteCarlo || !(res.Std > 0) || res.Shift != 0 {
			t.Errorf("%s: %v, u %g, shift %g", c.name, res.Method, res.Std, res.Shift)
		}
	}
	for m, want := range map[Method]string{FirstOrder: "first order", SecondOrder: "second order", NeedsMonteCarlo: "rough: needs Monte Carlo", 7: "Method(7)"} {
		if m.String() != want {
			t.Errorf("%d: %q", int(m), m.String())
		}
	}
}

// Correlation, the share as a rate, and a straight function in any direction.
func TestPropagateLinear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) float64 { return float64(rapid.IntRange(-100, 100).Draw(t, name)) / 10 }
		a, b, x, y := draw("a"), draw("b"), draw("x"), draw("y")
		ux, uy, r := math.Abs(draw("ux"))+0.1, math.Abs(draw("uy"))+0.1, draw("r")/10
		if a == 0 && b == 0 {
			a = 1
		}
		run := func(ux float64) Result[float64] {
			res, err := Propagate(func() float64 { return a*x + b*y }, Vary("x", &x, ux), Vary("y", &y, uy), Correlate("x", "y", r))
			if err != nil {
				t.Fatal(err)
			}
			return res
		}
		res := run(ux)
		want := a*a*ux*ux + b*b*uy*uy + 2*a*b*ux*uy*r
		scale := a*a*ux*ux + b*b*uy*uy
		if res.Method != FirstOrder && want > 1e-6*scale {
			t.Fatalf("method %v", res.Method)
		}
		if !(math.Abs(res.Std*res.Std-want) <= 1e-7*scale) {
			t.Fatalf("variance %g, want %g", res.Std*res.Std, want)
		}
		if want < 1e-3*scale {
			return
		}
		// A share is half the relative change of the variance with that of the input's u.
		const step = 1e-4
		up, down := run(ux*(1+step)), run(ux*(1-step))
		rate := (up.Std*up.Std - down.Std*down.Std) / (2 * step) / want / 2
		if !(math.Abs(rate-res.Budget[0].Share) <= 1e-5*math.Max(1, scale/want)) {
			t.Fatalf("share %g, the variance changes at %g", res.Budget[0].Share, rate)
		}
	})
}

// Correlated inputs count once in the degrees of freedom, through others too.
func TestEffectiveDoFOfGroups(t *testing.T) {
	var x [4]float64
	in := func(i int, dof float64) Input {
		return VaryReading(string(rune('a'+i)), &x[i], Reading[float64]{0, 1, dof})
	}
	f := func() float64 { return x[0] + x[1] + x[2] + x[3] }
	dof := func(more ...Input) float64 {
		res, err := Propagate(f, append([]Input{in(0, 8), in(1, 4), in(2, 0), in(3, 6)}, more...)...)
		if err != nil {
			t.Fatal(err)
		}
		return res.DoF
	}
	figures.Near(t, "independent", dof(), 16/(1.0/8+1.0/4+1.0/6), 1e-6)
	figures.Near(t, "a with b", dof(Correlate("a", "b", 1)), 36/(16.0/4+1.0/6), 1e-6)
	figures.Near(t, "b with d", dof(Correlate("b", "d", 1)), 36/(1.0/8+16.0/4), 1e-6)
	figures.Near(t, "a with c, c with b", dof(Correlate("a", "c", 0.5), Correlate("b", "c", 0.5)), 36/(25.0/4+1.0/6), 1e-6)
}

func TestCoverageRefuses(t *testing.T) {
	for _, c := range []struct {
		p, dof float64
		text   string
	}{
		{0, 0, "coverage 0: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{1, 0, "coverage 1: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{95, 0, "coverage 95: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{math.NaN(), 0, "coverage NaN: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{0.95, 0.4, "0.4 degrees of freedom: want 1 or more, or 0 for infinite: outside the domain"},
		{0.95, -1, "-1 degrees of freedom: want 1 or more, or 0 for infinite: outside the domain"},
		{0.95, math.NaN(), "NaN degrees of freedom: want 1 or more, or 0 for infinite: outside the domain"},
	} {
		if _, err := CoverageFactor(c.p, c.dof); !errors.Is(err, ErrDomain) || err.Error() != c.text {
			t.Errorf("%v", err)
		}
	}
	for _, c := range []struct {
		p, beta float64
		text    string
	}{
		{1.5, 0.5, "coverage 1.5: want a fraction between 0 and 1, such as 0.95: outside the domain"},
		{0.95, -0.1, "flat part of the trapezoid -0.1: want 0 to 1: outside the domain"},
		{0.95, math.NaN(), "flat part of the trapezoid NaN: want 0 to 1: outside the domain"},
	} {
		if _, err := TrapezoidFactor(c.p, c.beta); !errors.Is(err, ErrDomain) || err.Error() != c.text {
			t.Errorf("%v", err)
		}
	}
}

// Student's t falls to the normal factor, and one and two degrees of freedom
// have it in closed form.
func TestCoverageFactorLaws(t *testing.T) {
	last := math.Inf(1)
	for dof := 1.0; dof < 1e9; dof *= 3 {
		k, err := CoverageFactor(0.95, dof)
		if err != nil || !(k <= last) {
			t.Errorf("%g degrees of freedom: %g after %g, %v", dof, k, last, err)
		}
		last = k
	}
	normal, _ := CoverageFactor(0.95, 0)
	figures.Near(t, "in the limit", last, normal, 1e-6)
	figures.Reference{Digits: "1.95996398454005423552", Source: "normal quantile 0.975, to 20 figures"}.Check(t, normal)
	for _, p := range []float64{0.5, 0.6827, 0.9, 0.95, 0.99} {
		one, _ := CoverageFactor(p, 1)
		two, _ := CoverageFactor(p, 2)
		figures.Near(t, "one degree of freedom: tan πp/2", one, math.Tan(math.Pi*p/2), 1e-12*one)
		figures.Near(t, "two: p√(2/(1 − p²))", two, p*math.Sqrt(2/(1-p*p)), 1e-12*two)
	}
	rectangle, _ := TrapezoidFactor(0.95, 1)
	figures.Figure{Printed: "1.65", Source: "EA-4/02, rectangular distribution (from memory)"}.Check(t, rectangle)
	figures.Near(t, "rectangle: p√3", rectangle, 0.95*math.Sqrt(3), 1e-12)
	triangle, _ := TrapezoidFactor(0.95, 0)
	figures.Near(t, "triangle: (1 − √(1 − p))√6", triangle, (1-math.Sqrt(0.05))*math.Sqrt(6), 1e-12)
	for _, c := range []struct{ nu, want float64 }{{18.9987, 19}, {18.94, 18}, {16.76, 16}, {1, 1}, {0.96, 1}} {
		if got := wholeDoF(c.nu); got != c.want {
			t.Errorf("%g degrees of freedom are used as %g, want %g", c.nu, got, c.want)
		}
	}
	if EffectiveDoF(WithStd(0.0, 1), WithStd(0.0, 2)) != 0 {
		t.Error("contributions with infinite degrees of freedom make a finite number")
	}
	if EffectiveDoF(Reading[float64]{0, 0, 5}) != 0 {
		t.Error("nothing uncertain has degrees of freedom")
	}
}
