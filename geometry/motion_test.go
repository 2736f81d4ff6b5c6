package geometry

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/diff/fd"
	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// roomyCrank draws a crank on which numerical derivatives are good: not one whose
// rod is hardly longer than the throw.
func roomyCrank(t *rapid.T) Crank {
	c, err := NewCrank(60*mm, units.Length(rapid.Float64Range(1.5, 10).Draw(t, "rod in throws"))*30*mm)
	if err != nil {
		t.Fatal(err)
	}
	part := rapid.Float64Range(-0.7, 0.7).Draw(t, "offset in its room")
	if c, err = c.WithOffset(units.Length(part) * (c.Rod() - c.Throw())); err != nil {
		t.Fatal(err)
	}
	return c
}

func numerical(f func(float64) float64, theta units.Angle) float64 {
	return fd.Derivative(f, float64(theta), &fd.Settings{Formula: fd.Central, Step: 1e-5})
}

func TestCrank_derivatives(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, theta := roomyCrank(t), anyAngle(t)
		const w = units.AngularSpeed(7)
		slope := numerical(func(x float64) float64 { return float64(c.Drop(units.Angle(x))) }, theta)
		within(t, "slope, m", float64(c.DropPerRadian(theta)), slope, 1e-9)
		curve := numerical(func(x float64) float64 { return float64(c.DropPerRadian(units.Angle(x))) }, theta)
		within(t, "curve, m", float64(c.DropPerRadianSquared(theta)), curve, 1e-9)
		turn := numerical(func(x float64) float64 { return float64(c.RodAngle(units.Angle(x))) }, theta)
		within(t, "rod speed", float64(c.RodSpeed(theta, w)), turn*7, 1e-7)
		faster := numerical(func(x float64) float64 { return float64(c.RodSpeed(units.Angle(x), w)) }, theta)
		within(t, "rod acceleration", float64(c.RodAcceleration(theta, w)), faster*7, 1e-6)
	})
}

// The first derivative has one form for the upper half of the turn and another for
// the lower: they meet.
func TestCrank_DropPerRadian_formsMeet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := roomyCrank(t)
		square := units.Turn/4 - c.TopLag()
		above, below := c.DropPerRadian(square-1e-12), c.DropPerRadian(square+1e-12)
		within(t, "slope across the square", float64(above/c.Throw()), float64(below/c.Throw()), 1e-11)
		within(t, "slope with the crank square", float64(above/c.Throw()), 1, 1e-11)
	})
}

// Close to the top the slope is the curve times the angle, to all figures, with an
// offset too.
func TestCrank_DropPerRadian_nearTop(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		theta := units.Angle(math.Pow(10, -rapid.Float64Range(9, 15).Draw(t, "digits")))
		want := float64(c.DropPerRadianSquared(0)) * float64(theta)
		within(t, "slope", float64(c.DropPerRadian(theta)), want, 1e-5*want)
		within(t, "drop", float64(c.Drop(theta)), want*float64(theta)/2, 1e-5*want*float64(theta))
	})
}

func TestCrank_deadCentres(t *testing.T) {
	c := mustCrank(t, 80*mm, 160*mm, 0)
	const w = 100 * units.RadianPerSecond
	figures.Near(t, "acceleration at the top: ω²r(1 + λ)", c.Acceleration(0, w).MetresPerSecondSquared(), 500, 1e-12)
	figures.Near(t, "acceleration at the bottom: −ω²r(1 − λ)", c.Acceleration(180*units.Degree, w).MetresPerSecondSquared(), -300, 1e-12)
	for _, theta := range []units.Angle{0, 180, 360, -180, 540} {
		if v := c.Velocity(theta*units.Degree, w); v != 0 {
			t.Errorf("velocity at %g degrees: %g m/s, want 0", float64(theta), float64(v))
		}
	}
}

func TestCrank_offsetDeadCentres(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		bottom := c.Downstroke()
		within(t, "slope at the bottom, in throws", float64(c.DropPerRadian(bottom)/c.Throw()), 0, 1e-13*math.Abs(float64(c.DropPerRadianSquared(bottom)/c.Throw()))+1e-14)
		// At the top crank and rod lie in one line, at the bottom the one on the other.
		within(t, "rod angle at the top", float64(c.RodAngle(0)), -float64(c.TopLag()), 1e-14)
		room := 1 - float64(c.Throw()/c.Rod())
		within(t, "rod angle at the bottom", math.Sin(float64(c.RodAngle(bottom))), -math.Sin(float64(c.BottomLag())), 1e-13/room)
		within(t, "pin height at the top", float64(c.PinHeight(0)-c.PinHeight(bottom)), float64(c.Stroke()), 1e-14*float64(c.Rod()))
	})
}

func TestCrank_FastestAngles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		before, after := c.FastestAngles()
		down, up := c.DropPerRadian(after), -c.DropPerRadian(-before)
		for theta := units.Angle(0); theta < units.Turn; theta += units.Degree {
			x := c.DropPerRadian(theta)
			if x > down*(1+1e-12) || -x > up*(1+1e-12) {
				t.Fatalf("at %v the slope is %v, more than %v down or %v up", theta, x, down, up)
			}
		}
		if c.Offset() == 0 {
			within(t, "angle going up", float64(before), float64(after), 1e-14)
		}
	})
	if before, after := (Crank{}).FastestAngles(); before == before || after == after {
		t.Errorf("no crank: got %v and %v, want NaN", before, after)
	}
}

func TestTwoTerm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Float64Range(1.5, 8).Draw(t, "rod in throws")
		c, err := NewCrank(2*units.Metre, units.Length(n)*units.Metre)
		if err != nil {
			t.Fatal(err)
		}
		a, err := c.TwoTerm()
		if err != nil {
			t.Fatal(err)
		}
		theta, lambda := anyAngle(t), 1/n
		x := float64(theta)
		const w = units.AngularSpeed(3)
		within(t, "drop as printed", float64(a.Drop(theta)), (1-math.Cos(x))+lambda/4*(1-math.Cos(2*x)), 1e-14)
		within(t, "velocity as printed", float64(a.Velocity(theta, w)), 3*(math.Sin(x)+lambda/2*math.Sin(2*x)), 1e-14)
		within(t, "acceleration as printed", float64(a.Acceleration(theta, w)), 9*(math.Cos(x)+lambda*math.Cos(2*x)), 1e-13)
		short := float64(c.Drop(theta) - a.Drop(theta))
		within(t, "shortfall", float64(a.Shortfall(theta)), short, 2e-15)
		within(t, "acceleration at its fastest", float64(a.Acceleration(a.FastestAngle(), w)), 0, 1e-13)
	})
	_, err := mustCrank(t, 60*mm, 110*mm, 3*mm).TwoTerm()
	refuses(t, err, "offset 3 mm: want 0 mm, the two-term series has no offset")
}

func TestCrank_Sweep(t *testing.T) {
	c := mustCrank(t, 60*mm, 110*mm, 4*mm)
	drops := make([]units.Length, 361)
	c.SweepDrops(drops, -units.Turn/2, units.Turn/2)
	i := 0
	for theta, x := range c.Sweep(-units.Turn/2, units.Turn/2, 361) {
		figures.Near(t, "angle, degrees", theta.Degrees(), float64(i-180), 1e-12)
		if x != drops[i] || x != c.Drop(theta) {
			t.Errorf("at %v: sweep %v, slice %v, drop %v", theta, x, drops[i], c.Drop(theta))
		}
		i++
	}
	if i != 361 {
		t.Errorf("%d steps, want 361", i)
	}
	for n, want := range map[int]int{-1: 0, 0: 0, 1: 1, 2: 2} {
		got := 0
		for theta := range c.Sweep(1, 2, n) {
			if got++; theta != units.Angle(got) {
				t.Errorf("step %d of %d: %v rad", got, n, float64(theta))
			}
		}
		if got != want {
			t.Errorf("%d steps for n = %d, want %d", got, n, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		from, to, n := anyAngle(t), anyAngle(t), rapid.IntRange(2, 50).Draw(t, "n")
		var last units.Angle
		for theta := range c.Sweep(from, to, n) {
			last = theta
		}
		if last != to {
			t.Errorf("sweep to %v ends at %v", to, last)
		}
	})
	for range c.Sweep(0, 1, 5) { // leaving early is no harm
		break
	}
	c.SweepDrops(nil, 0, 1)
}

func TestCrank_dwell(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		x := c.Stroke() * units.Length(math.Pow(10, -rapid.Float64Range(0.001, 12).Draw(t, "digits")))
		top, err := c.DwellAtTop(x)
		if err != nil {
			t.Fatal(err)
		}
		back, err := c.DropAtDwell(top)
		if err != nil {
			t.Fatal(err)
		}
		slope := math.Abs(float64(c.DropPerRadian(top/2))) + float64(c.Throw())*float64(top)
		within(t, "drop of the dwell", float64(back), float64(x), 1e-13*float64(x)+1e-15*float64(top)*slope)
		bottom, err := c.DwellAtBottom(x)
		if err != nil {
			t.Fatal(err)
		}
		other, err := c.DwellAtTop(c.Stroke() - x)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "both dwells together", float64(bottom+other), float64(units.Turn), 1e-6)
	})
	c := mustCrank(t, 60*mm, 110*mm, 0)
	for _, x := range []units.Length{1e-6 * mm, 0.01 * mm, 3 * mm, 30 * mm, 60 * mm} {
		bottom, err := c.DwellAtBottom(x)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, "drop at half the dwell, mm", (c.Stroke() - c.Drop(180*units.Degree-bottom/2)).Millimetres(), x.Millimetres(), 1e-13)
	}
	_, err := c.DwellAtTop(-mm)
	refuses(t, err, "drop -1 mm: want 0 mm to 60 mm, the stroke")
	_, err = c.DwellAtBottom(61 * mm)
	refuses(t, err, "distance 61 mm: want 0 mm to 60 mm, the stroke")
	_, err = c.DropAtDwell(-units.Degree)
	refuses(t, err, "angle -1°: want 0° to 360°")
}

func TestCrank_AnglePer(t *testing.T) {
	c := mustCrank(t, 60*mm, 110*mm, 0)
	for _, theta := range []units.Angle{5, 40, 90, -30, 200} {
		theta *= units.Degree
		per, err := c.AnglePer(0.01*mm, theta)
		if err != nil {
			t.Fatal(err)
		}
		moved := math.Abs(float64(c.Drop(theta+per/2) - c.Drop(theta-per/2)))
		figures.Near(t, "moved by the angle, mm", moved*1000, 0.01, 1e-8)
	}
	for _, theta := range []units.Angle{0, 180 * units.Degree, 360 * units.Degree} {
		_, err := c.AnglePer(0.01*mm, theta)
		refuses(t, err, "crank angle "+theta.String()+": want one away from the dead centres, where the piston stands still")
	}
}
