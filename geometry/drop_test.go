package geometry

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// The printed form, which loses its figures near the top but nowhere else.
func printedDrop(c Crank, theta units.Angle) float64 {
	r, l, e := float64(c.Throw()), float64(c.Rod()), float64(c.Offset())
	t := float64(theta) + math.Asin(e/(l+r))
	u := r*math.Sin(t) - e
	return math.Sqrt((l+r)*(l+r)-e*e) - r*math.Cos(t) - math.Sqrt(l*l-u*u)
}

func TestCrank_Drop_printedForm(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, theta := anyCrank(t), anyAngle(t)
		within(t, "drop", float64(c.Drop(theta)), printedDrop(c, theta), 1e-11*float64(c.Rod()))
	})
}

func TestCrank_Drop_ends(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		turns := units.Angle(rapid.IntRange(-100, 100).Draw(t, "turns"))
		if x := c.Drop(turns * 360 * units.Degree); x != 0 {
			t.Errorf("drop after %g turns: %g m, want 0", float64(turns), float64(x))
		}
		bottom := c.Drop(c.Downstroke())
		within(t, "drop at the bottom", float64(bottom/c.Stroke()), 1, 1e-14)
		if x := c.Drop(anyAngle(t)); !(x >= 0 && x <= c.Stroke()) {
			t.Errorf("drop %v: want 0 to the stroke, %v", x, c.Stroke())
		}
	})
}

// Twice around the other way with the cylinder on the other side is the same.
func TestCrank_Drop_mirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, theta := anyCrank(t), anyAngle(t)
		m, err := c.WithOffset(-c.Offset())
		if err != nil {
			t.Fatal(err)
		}
		within(t, "mirrored drop", float64(m.Drop(-theta)), float64(c.Drop(theta)), 1e-15*float64(c.Stroke()))
		x := c.Drop(theta)
		before, after, err := c.AnglesAtDrop(x)
		if err != nil {
			t.Fatal(err)
		}
		mBefore, mAfter, err := m.AnglesAtDrop(min(x, m.Stroke()))
		if err != nil {
			t.Fatal(err)
		}
		within(t, "mirrored angle before", float64(mBefore), float64(after), 1e-14)
		within(t, "mirrored angle after", float64(mAfter), float64(before), 1e-14)
	})
}

// The formula with an offset, at no offset to speak of, is the formula without.
func TestCrank_Drop_offsetDiesAway(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c, theta := roomyCrank(t), anyAngle(t)
		straight, _ := c.WithOffset(0)
		nearly, _ := c.WithOffset(c.Rod() * 1e-30)
		within(t, "drop", float64(nearly.Drop(theta)), float64(straight.Drop(theta)), 4e-15*float64(straight.Drop(theta))+1e-305)
		x := straight.Drop(theta)
		_, want, _ := straight.AnglesAtDrop(x)
		_, got, err := nearly.AnglesAtDrop(min(x, nearly.Stroke()))
		if err != nil {
			t.Fatal(err)
		}
		if x == 0 {
			return
		}
		// The last bit of the drop, as an angle: more than the straight line has
		// it close to the bottom.
		bit := math.Min(float64(x)*0x1p-51/math.Abs(float64(straight.DropPerRadian(theta))), 1e-7)
		within(t, "angle", float64(got), float64(want), 4e-15*float64(want)+bit)
	})
}

func TestCrank_Drop_rises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		a := rapid.Float64Range(0, 1).Draw(t, "part of the way down")
		b := rapid.Float64Range(0, 1).Draw(t, "other part")
		down := float64(c.Downstroke())
		x, y := c.Drop(units.Angle(min(a, b)*down)), c.Drop(units.Angle(max(a, b)*down))
		if x > y+1e-15*c.Stroke() {
			t.Errorf("drop %v further on than %v", x, y)
		}
	})
}

// An endless rod makes the motion of the piston simple harmonic.
func TestCrank_Drop_endlessRod(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		theta := anyAngle(t)
		c, err := NewCrank(60*mm, 1e12*units.Metre)
		if err != nil {
			t.Fatal(err)
		}
		half := math.Sin(float64(theta) / 2)
		within(t, "drop", c.Drop(theta).Millimetres(), 60*half*half, 1e-12)
		within(t, "slope", c.DropPerRadian(theta).Millimetres(), 30*math.Sin(float64(theta)), 1e-12)
		within(t, "curve", c.DropPerRadianSquared(theta).Millimetres(), 30*math.Cos(float64(theta)), 1e-12)
	})
}

// A thousandth of a degree, by the series of the drop, whose next term is 1e-11
// of the whole and whose second is left in.
func TestCrank_Drop_thousandthOfADegree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Float64Range(2, 8).Draw(t, "rod in throws")
		c, err := NewCrank(60*mm, units.Length(n)*30*mm)
		if err != nil {
			t.Fatal(err)
		}
		a, lambda := 0.001*math.Pi/180, 1/n
		// r[(1 + λ)θ²/2 − (1 + 4λ − 3λ³)θ⁴/24]
		want := 30e-3 * ((1+lambda)*a*a/2 - (1+4*lambda-3*lambda*lambda*lambda)*a*a*a*a/24)
		within(t, "drop", float64(c.Drop(0.001*units.Degree)), want, 1e-13*want)
	})
}

// There and back: as exact as the angle is held by the drop.
func TestCrank_AnglesAtDrop_roundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCrank(t)
		x := c.Stroke() * units.Length(math.Pow(10, -rapid.Float64Range(0, 15).Draw(t, "digits")))
		before, after, err := c.AnglesAtDrop(x)
		if err != nil {
			t.Fatal(err)
		}
		if !(before >= 0 && after >= 0 && before+after <= units.Turn*(1+1e-15)) {
			t.Errorf("angles %v and %v: want both positive and no more than a turn together", before, after)
		}
		// What the last bits of the angle make of the drop.
		slope := math.Abs(float64(c.DropPerRadian(after))) + math.Abs(float64(c.DropPerRadian(-before)))
		tol := 1e-15*(float64(after)+float64(before))*slope + 1e-14*float64(x)
		within(t, "drop after", float64(c.Drop(after)), float64(x), tol)
		within(t, "drop before", float64(c.Drop(-before)), float64(x), tol)
	})
}

func TestCrank_AnglesAtDrop_ends(t *testing.T) {
	for _, offset := range []units.Length{0, 10 * mm, -10 * mm} {
		c := mustCrank(t, 60*mm, 130*mm, offset)
		before, after, err := c.AnglesAtDrop(0)
		if err != nil || before != 0 || after != 0 {
			t.Errorf("at the top: %v, %v, %v: want 0, 0 and no error", before, after, err)
		}
		before, after, err = c.AnglesAtDrop(c.Stroke())
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, "after, at the bottom", float64(after), float64(c.Downstroke()), 1e-15)
		figures.Near(t, "the whole turn", float64(before+after), float64(units.Turn), 1e-15)
	}
}

func TestCrank_AnglesAtDrop_refuses(t *testing.T) {
	c := mustCrank(t, 60*mm, 110*mm, 0)
	for _, tc := range []struct {
		name string
		drop units.Length
		text string
	}{
		{"above the top", -0.1 * mm, "drop -0.1 mm: want 0 mm to 60 mm, the stroke"},
		{"below the bottom", 60.1 * mm, "drop 60.1 mm: want 0 mm to 60 mm, the stroke"},
		{"not a number", units.Length(math.NaN()), "drop NaN mm: want 0 mm to 60 mm, the stroke"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, _, err := c.AnglesAtDrop(tc.drop)
			refuses(t, err, tc.text)
		})
	}
	_, _, err := Crank{}.AnglesAtDrop(0)
	refuses(t, err, "drop 0 mm: want 0 mm to 0 mm, the stroke")
}

func TestSincos(t *testing.T) {
	for quarter := -9; quarter <= 9; quarter++ {
		sin, cos := sincos(units.Angle(quarter) * 90 * units.Degree)
		wantSin, wantCos := [...]float64{0, 1, 0, -1}[quarter&3], [...]float64{1, 0, -1, 0}[quarter&3]
		if sin != wantSin || cos != wantCos {
			t.Errorf("%d quarter turns: sine %g, cosine %g, want %g, %g", quarter, sin, cos, wantSin, wantCos)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		theta := anyAngle(t)
		sin, cos := sincos(theta)
		within(t, "sine", sin, math.Sin(float64(theta)), 2e-15)
		within(t, "cosine", cos, math.Cos(float64(theta)), 2e-15)
		s, k := halfSincos(theta)
		within(t, "2sk", 2*s*k, sin, 1e-15)
		within(t, "k² − s²", (k-s)*(k+s), cos, 1e-15)
	})
}

func BenchmarkCrank_Drop(b *testing.B) {
	for _, offset := range []units.Length{0, 4 * mm} {
		b.Run("offset "+offset.String(), func(b *testing.B) {
			c := mustCrank(b, 60*mm, 110*mm, offset)
			b.ReportAllocs()
			var theta units.Angle
			var sum units.Length
			for b.Loop() {
				sum += c.Drop(theta)
				theta += units.Degree
			}
		})
	}
}

func BenchmarkCrank_AnglesAtDrop(b *testing.B) {
	for _, offset := range []units.Length{0, 4 * mm} {
		b.Run("offset "+offset.String(), func(b *testing.B) {
			c := mustCrank(b, 60*mm, 110*mm, offset)
			b.ReportAllocs()
			var x units.Length
			for b.Loop() {
				if _, _, err := c.AnglesAtDrop(x); err != nil {
					b.Fatal(err)
				}
				if x += 0.1 * mm; x > 60*mm {
					x = 0
				}
			}
		})
	}
}

func FuzzCrank(f *testing.F) {
	f.Add(0.06, 0.11, 0.004, 0.5, 0.01)
	f.Add(0.07, 0.03, 0.0, 3.0, 0.07)
	f.Add(1e-300, 1e300, -1e-300, -1e300, math.Inf(1))
	f.Fuzz(func(t *testing.T, stroke, rod, offset, theta, drop float64) {
		c, err := NewCrank(units.Length(stroke), units.Length(rod))
		if err != nil {
			return
		}
		if d, err := c.WithOffset(units.Length(offset)); err == nil {
			c = d
		}
		if x := c.Drop(units.Angle(theta)); x < 0 || x > c.Stroke() {
			t.Errorf("drop %g of a stroke of %g", float64(x), float64(c.Stroke()))
		}
		if before, after, err := c.AnglesAtDrop(units.Length(drop)); err == nil && (before < -1e-7 || after < -1e-7) {
			t.Errorf("angles %g and %g", float64(before), float64(after))
		}
	})
}
