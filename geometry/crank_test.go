package geometry

import (
	"testing"

	"example.com/benchsums/units"
)

func BenchmarkCrank_Drop(b *testing.B) {
	c, err := NewCrank(60*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	theta := units.Angle(0)
	var sum units.Length
	for b.Loop() {
		sum += c.Drop(theta)
		theta += units.Degree
	}
	_ = sum
}

func BenchmarkCrank_AnglesAtDrop(b *testing.B) {
	c, err := NewCrank(60*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	x := units.Length(0)
	for b.Loop() {
		if _, _, err := c.AnglesAtDrop(x); err != nil {
			b.Fatal(err)
		}
		x += 0.1 * units.Millimetre
		if x > 60*units.Millimetre {
			x = 0
		}
	}
}
