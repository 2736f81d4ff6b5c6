package geometry

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/units"
)

const bits = 300 // some 90 digits

func wide(x float64) *big.Float { return new(big.Float).SetPrec(bits).SetFloat64(x) }

func add(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bits).Add(a, b) }
func sub(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bits).Sub(a, b) }
func mul(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bits).Mul(a, b) }
func quo(a, b *big.Float) *big.Float { return new(big.Float).SetPrec(bits).Quo(a, b) }
func root2(a *big.Float) *big.Float  { return new(big.Float).SetPrec(bits).Sqrt(a) }

// wideSincos sums the series of sine and cosine.
func wideSincos(x float64) (sin, cos *big.Float) {
	sin, cos = wide(0), wide(0)
	term := wide(1)
	for n := 1; n < 120; n++ {
		part := &sin
		if n%2 == 1 {
			part = &cos
		}
		if (n-1)/2%2 == 0 {
			*part = add(*part, term)
		} else {
			*part = sub(*part, term)
		}
		term = quo(mul(term, wide(x)), wide(float64(n)))
	}
	return sin, cos
}

// wideDrop is the printed formula in 90 digits, the angle from true top dead centre.
func wideDrop(c Crank, theta units.Angle) float64 {
	r, l, e := wide(float64(c.throw)), wide(float64(c.rod)), wide(float64(c.offset))
	reach := add(l, r)
	sinTop := quo(e, reach)
	cosTop := root2(sub(wide(1), mul(sinTop, sinTop)))
	sinA, cosA := wideSincos(float64(theta))
	sin := add(mul(sinTop, cosA), mul(cosTop, sinA))
	cos := sub(mul(cosTop, cosA), mul(sinTop, sinA))
	u := sub(mul(r, sin), e)
	height := add(mul(r, cos), root2(sub(mul(l, l), mul(u, u))))
	x, _ := sub(root2(sub(mul(reach, reach), mul(e, e))), height).Float64()
	return x
}

// From a thousandth of a millionth of a degree to half a turn, offset or not.
func TestCrank_Drop_wide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := roomyCrank(t)
		theta := math.Pi * math.Pow(10, -rapid.Float64Range(0, 11).Draw(t, "digits"))
		if rapid.Bool().Draw(t, "before the top") {
			theta = -theta
		}
		want := wideDrop(c, units.Angle(theta))
		within(t, "drop", float64(c.Drop(units.Angle(theta))), want, 3e-15*want)
	})
}

// The angles put back into 90 digits give the drop they came from.
func TestCrank_AnglesAtDrop_wide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := roomyCrank(t)
		x := c.Stroke() * units.Length(math.Pow(10, -rapid.Float64Range(0.3, 20).Draw(t, "digits")))
		before, after, err := c.AnglesAtDrop(x)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "drop after", wideDrop(c, after), float64(x), 5e-15*float64(x))
		within(t, "drop before", wideDrop(c, -before), float64(x), 5e-15*float64(x))
	})
}
