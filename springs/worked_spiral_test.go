package springs_test

import (
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// TestBhandariSpiral: Ex. 10.22, pinned, with the stress doubled and the rotation
// not increased.
func TestBhandariSpiral(t *testing.T) {
	const source = "Bhandari, Design of Machine Elements, Ex. 10.22 (output of a companion)"
	width, err := springs.SpiralWidth(1200*nmm, 800*mpa, 1.25*mm, springs.Pinned)
	ok(t, err)
	figures.Figure{Printed: "11.52", Source: source}.Check(t, width.Millimetres())
	section := strip(t, 12*mm, 1.25*mm)
	l, err := springs.SpiralLengthFor(1200*nmm, 3*units.Turn, section, 207000*mpa, 1)
	ok(t, err)
	figures.Figure{Printed: "6350.68", Source: source}.Check(t, l.Millimetres())
	figures.Figure{Printed: "6.35", Source: source}.Check(t, l.Metres())

	s := spiral(t, springs.SpiralSpec{Width: 12 * mm, Thickness: 1.25 * mm, Length: l, OuterEnd: springs.Pinned, Factor: springs.PinnedUnincreased, Material: steel(t, 207000*mpa, 0)})
	figures.Near(t, "torque after three turns, N mm", s.Torque(3*units.Turn).NewtonMillimetres(), 1200, 1e-6)
	figures.Near(t, "stress, MPa", s.Stress(1200*nmm).Megapascals(), 800*11.52/12, 0.01)
	s = spiral(t, springs.SpiralSpec{Width: 12 * mm, Thickness: 1.25 * mm, Length: l, OuterEnd: springs.Hooked, Factor: springs.PinnedFiveQuarters, Material: steel(t, 207000*mpa, 0)})
	figures.Near(t, "torque with the rotation increased, N mm", s.Torque(3*units.Turn).NewtonMillimetres(), 1200/1.25, 1e-6)
}

// TestBarrelHalfFill: half the room filled gives the most turns.
func TestBarrelHalfFill(t *testing.T) {
	const bore, arbor, th = 92 * mm, 28 * mm, 0.6 * mm
	best := springs.HalfFillLength(bore, arbor, th)
	figures.Figure{Printed: "2.546", Source: "derived: 8/π"}.Check(t, (92*92-28*28)/(0.6*best.Millimetres()))
	most, err := springs.MostTurns(bore, arbor, th)
	ok(t, err)
	spec := springs.BarrelSpec{Bore: bore, Arbor: arbor, Width: 12 * mm, Thickness: th, Free: springs.StraightStrip(), Material: springs.StripC67S.Material()}
	for _, share := range []float64{0.8, 0.9, 0.95, 1, 1.05, 1.1, 1.2} {
		spec.Length = units.Length(share) * best
		b := barrel(t, spec)
		if share == 1 {
			figures.Near(t, "turns at half fill", b.Turns(), most, 1e-12*most)
			figures.Near(t, "fill", b.Fill(), 0.5, 1e-14)
		} else if b.Turns() >= most {
			t.Errorf("%.2f of the best length: %v turns, most is %v", share, b.Turns(), most)
		}
	}
	ideal, err := springs.MostTurns(3*units.Metre, 1*units.Metre, 1*mm)
	ok(t, err)
	figures.Figure{Printed: "0.0787", Source: "derived: most turns for an arbor of a third"}.Check(t, ideal/3000)
	handbook, err := springs.MostTurnsHandbook(bore, arbor, th)
	ok(t, err)
	figures.Figure{Printed: "78", Source: "Spring Manufacturers Institute, 2.55 for 2 (from memory), per cent of the ideal turns"}.Check(t, 100*handbook/most)
}
