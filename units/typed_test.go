package units

import (
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"
)

// Whatever unit something is typed in, it comes back as text of the very same
// value that is hardly longer: two decimals, as a rule or a gauge is read, and
// up to six figures with the point anywhere. Six figures and a nought in front
// are always short enough, for the usual unit.
func TestTypedInAnyUnitStaysShort(t *testing.T) {
	const values, more, short = 4999, 4, 7 // two decimals, 0.01 to 49.99; figures that may be added
	step := 2
	if testing.Short() {
		step = 29
	}
	rnd := rand.New(rand.NewPCG(2, 54))
	for _, e := range everyKind {
		for i := range e.kind.scales {
			s := &e.kind.scales[i]
			longest, from, to := 0, "", ""
			for n := 1; n <= values; n += step {
				for _, x := range [...]float64{float64(n) / 100, float64(rnd.IntN(1e6)) / []float64{1, 10, 100, 1e3, 1e4}[rnd.IntN(5)]} {
					typed := s.join(strconv.FormatFloat(x, 'f', -1, 64))
					text := roundTrip(t, e.kind, typed)
					if d := figuresIn(text) - max(figuresIn(typed), short-more); d > longest {
						longest, from, to = d, typed, text
					}
				}
			}
			if longest > more {
				t.Errorf("%s: %s came back as %s, %d figures more", e.kind.name, from, to, longest)
			}
		}
	}
}

// roundTrip writes what text is read as, and sees that it reads back the same.
func roundTrip(t *testing.T, k *kind, text string) string {
	t.Helper()
	v, err := k.parse(text)
	if err != nil {
		t.Fatal(err)
	}
	out, err := k.marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	if back, err := k.parse(string(out)); err != nil || back != v {
		t.Fatalf("%s is %g, written %s, read back %g, %v", text, v, out, back, err)
	}
	return string(out)
}

// figuresIn counts the digits of the number in text, without the noughts at the
// end of a whole one: 50 m is as long as 50000 mm.
func figuresIn(text string) int {
	num := text[:len(text)-len(strings.TrimLeft(text, "0123456789.e+-"))]
	if !strings.Contains(num, ".") {
		num = strings.TrimRight(num, "0")
	}
	return len(strings.ReplaceAll(num, ".", ""))
}

// The same of readings: value and limits each in a unit that keeps them short.
func TestTypedReadingsStayShort(t *testing.T) {
	for _, c := range []struct{ typed, back string }{
		{"2.54 cm ± 0.05 cm", "2.54 cm ± 0.5 mm"},
		{"12.7 µm ± 0.5 µm", "12.7 µm ± 0.0005 mm"},
		{"17.3 thou ± 0.7 thou", "17.3 thou ± 0.7 thou"},
		{"1.01 ft (u 0.07 ft)", "307.848 mm (u 0.07 ft)"},
	} {
		checkReadingBecomes[Length](t, c.typed, c.back)
	}
	checkReadingBecomes[Torque](t, "194.39 N m ± 0.07 N m", "194.39 N m ± 70 N mm")
	checkReadingBecomes[Pressure](t, "30 ksi ± 0.7 ksi", "30 ksi ± 0.7 ksi")
	checkReadingBecomes[Temperature](t, "293.17 K ± 0.7 K", "293.17 K ± 0.7 K")
	checkReadingBecomes[AngularSpeed](t, "15 rev/s ± 0.5 rev/s", "15 rev/s ± 0.5 rev/s")
	checkReadingBecomes[Ratio](t, "12.3 % ± 0.7 %", "12.3 % ± 0.7 %")
	checkReadingBecomes[Ratio](t, "15 % ± 0.7 %", "15 % ± 0.7 %")
}

func checkReadingBecomes[Q Quantity](t *testing.T, typed, want string) {
	t.Helper()
	r, err := ParseReading[Q](typed)
	if err != nil {
		t.Error(err)
		return
	}
	text, err := r.MarshalText()
	if err != nil || string(text) != want {
		t.Errorf("%s came back as %s, %v, want %s", typed, text, err, want)
	}
	if back, err := ParseReading[Q](string(text)); err != nil || back != r {
		t.Errorf("%s is %#v, written %s, read back %#v, %v", typed, r, text, back, err)
	}
}
