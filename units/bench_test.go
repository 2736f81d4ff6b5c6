package units

import "testing"

func BenchmarkParseLength(b *testing.B) {
	for _, text := range []string{"12.7 mm", "1 3/16 in", "10 thou", "5 ft 6 1/2 in", "3 inches"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := ParseLength(text); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

func BenchmarkParseAngle(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ParseAngle("28° 30′"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkParseReading(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ParseReading[Length]("84.5 mm ± 0.5 mm"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLengthMarshalText(b *testing.B) {
	l := 12.7 * Millimetre
	b.ReportAllocs()
	for b.Loop() {
		if _, err := l.MarshalText(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLengthString(b *testing.B) {
	l := 12.7 * Millimetre
	b.ReportAllocs()
	for b.Loop() {
		_ = l.String()
	}
}

func BenchmarkPropagate(b *testing.B) {
	x, y := 3.0*Millimetre, 4.0*Millimetre
	f := func() Area { return Area(x) * Area(y) }
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Propagate(f, Vary("x", &x, 0.1*Millimetre), Vary("y", &y, 0.1*Millimetre)); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMonteCarlo(b *testing.B) {
	x, y := 3.0*Millimetre, 4.0*Millimetre
	f := func() Area { return Area(x) * Area(y) }
	for b.Loop() {
		if _, err := MonteCarlo(f, Run{Trials: 10_000}, Vary("x", &x, 0.1*Millimetre), Vary("y", &y, 0.1*Millimetre)); err != nil {
			b.Fatal(err)
		}
	}
}
