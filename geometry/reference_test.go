package geometry

import (
	"math"
	"math/big"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Every row, drop, both derivatives and the inverse, to 1e-12 of the value. A few
// rows close to bottom dead centre ask more of a float64 than it holds: there the
// angle, or the drop, as nearest float64 is itself further from the printed one
// than that. They are held to what that rounding makes, and counted.
func TestReferences(t *testing.T) {
	rows, beyond := 0, 0
	for _, g := range references {
		scale := wholeScale(g.stroke, g.rod, g.offset)
		c := referenceCrank(t, g.stroke, g.rod, g.offset, scale)
		for _, r := range g.rows {
			rows++
			name := strings.Join([]string{"stroke", g.stroke, "rod", g.rod, "offset", g.offset, "at", r.theta}, " ")
			t.Run(name, func(t *testing.T) { beyond += checkReference(t, c, r, scale) })
		}
	}
	if rows != 269 || beyond > 7 {
		t.Errorf("%d rows with %d figures beyond a float64: want 269 with at most 7", rows, beyond)
	}
}

// checkReference returns how many figures of the row were beyond a float64.
func checkReference(t *testing.T, c Crank, r referenceRow, scale float64) (beyond int) {
	up, slip := reduced(t, r.theta)
	theta := up - c.TopLag()
	slope, curve := number(t, r.slope), number(t, r.curve)
	check := func(what, digits string, got, slip float64) {
		t.Helper()
		if want := number(t, digits); slip > 1e-12*math.Abs(want) {
			figures.Near(t, what, got, want, slip+1e-12*math.Abs(want))
			beyond++
			return
		}
		figures.Reference{Digits: digits, Source: referenceSource + ", " + what}.Check(t, got)
	}
	check("drop", r.drop, float64(c.Drop(theta))/scale, slip*math.Abs(slope))
	check("first derivative of the drop", r.slope, float64(c.DropPerRadian(theta))/scale, slip*math.Abs(curve))
	check("second derivative of the drop", r.curve, float64(c.DropPerRadianSquared(theta))/scale, 0)

	x, off := nearest(t, r.drop, scale)
	_, after, err := c.AnglesAtDrop(units.Length(x))
	if err != nil {
		t.Fatal(err)
	}
	off /= scale
	wander := math.Min(2*off/math.Abs(slope), math.Sqrt(2*off/math.Abs(curve)))
	if x == 0 {
		wander = 0
	}
	check("angle at a drop", fromTop(t, r.after, c), after.Degrees(), units.Angle(wander).Degrees())
	return beyond
}

// referenceCrank builds the crank with every length times scale, so that the
// float64 is the printed length and not its neighbour.
func referenceCrank(t *testing.T, stroke, rod, offset string, scale float64) Crank {
	t.Helper()
	var l [3]units.Length
	for i, text := range [...]string{stroke, rod, offset} {
		x, off := nearest(t, text, scale)
		if off != 0 {
			t.Fatalf("%s times %g is not a float64", text, scale)
		}
		l[i] = units.Length(x)
	}
	c, err := NewCrank(l[0], l[1])
	if err != nil {
		t.Fatal(err)
	}
	if c, err = c.WithOffset(l[2]); err != nil {
		t.Fatal(err)
	}
	return c
}

// wholeScale returns a power of ten that makes all of them whole numbers.
func wholeScale(decimals ...string) float64 {
	places := 0
	for _, d := range decimals {
		_, frac, _ := strings.Cut(d, ".")
		places = max(places, len(frac))
	}
	return math.Pow10(places)
}

// nearest returns the float64 nearest to the decimal times scale, and how far off
// it is.
func nearest(t *testing.T, decimal string, scale float64) (x, off float64) {
	t.Helper()
	exact, ok := new(big.Rat).SetString(decimal)
	if !ok {
		t.Fatalf("%q: want a number", decimal)
	}
	exact.Mul(exact, new(big.Rat).SetFloat64(scale))
	x, _ = exact.Float64()
	off, _ = exact.Sub(exact, new(big.Rat).SetFloat64(x)).Float64()
	return x, math.Abs(off)
}

// reduced takes whole turns off an angle in degrees before it is rounded:
// 359.999999 is −0.000001, all digits. Slip is what an angle of that size may
// lose as a float64, in radians.
func reduced(t *testing.T, degrees string) (theta units.Angle, slip float64) {
	t.Helper()
	exact, ok := new(big.Rat).SetString(degrees)
	if !ok {
		t.Fatalf("%q: want a number", degrees)
	}
	f, _ := exact.Float64()
	exact.Sub(exact, new(big.Rat).SetFloat64(360*math.RoundToEven(f/360)))
	f, _ = exact.Float64()
	theta = units.Angle(f) * units.Degree
	if exact.IsInt() { // a whole number of degrees is met exactly
		return theta, 0
	}
	return theta, math.Abs(float64(theta)) * 0x1p-53
}

// fromTop brings an angle in degrees from "crank up" to true top dead centre.
func fromTop(t *testing.T, degrees string, c Crank) string {
	t.Helper()
	if c.Offset() == 0 {
		return degrees
	}
	return strconv.FormatFloat(number(t, degrees)-c.TopLag().Degrees(), 'g', -1, 64)
}

func number(t *testing.T, digits string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
