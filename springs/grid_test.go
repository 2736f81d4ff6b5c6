package springs_test

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// million is a grid of a hundred thicknesses, widths and lengths.
func million() springs.BarrelGrid {
	return springs.BarrelGrid{
		Thickness: springs.Steps{From: 0.2003 * mm, By: 0.01 * mm, Count: 100},
		Width:     springs.Steps{From: 3.013 * mm, By: 0.1 * mm, Count: 100},
		Length:    springs.Steps{From: 300 * mm, By: 30 * mm, Count: 100},
		Bore:      50 * mm, Arbor: 15 * mm, YoungsModulus: 206e3 * mpa,
		Turns: 3.3333, SetUp: 1.3791, LeastTorque: 151.37 * nmm, Full: 4.7123, MostStress: 1103.7 * mpa,
	}
}

// eachAlone judges every combination by the printed formulas, in millimetres, and finds
// the first of the least volume.
func eachAlone(g springs.BarrelGrid) (r springs.GridResult) {
	r = springs.GridResult{Thickness: -1, Width: -1, Length: -1}
	best := math.Inf(1)
	bore, arbor, e := g.Bore.Millimetres(), g.Arbor.Millimetres(), g.YoungsModulus.Megapascals()
	for it := range g.Thickness.Count {
		t := g.Thickness.At(it).Millimetres()
		for ib := range g.Width.Count {
			b := g.Width.At(ib).Millimetres()
			for il := range g.Length.Count {
				l := g.Length.At(il).Millimetres()
				q := 4 * l * t / math.Pi
				if bore*bore <= q {
					continue
				}
				turns := (math.Sqrt(arbor*arbor+q) + math.Sqrt(bore*bore-q) - arbor - bore) / (2 * t)
				torque := math.Pi * e * b * t * t * t / (6 * l) * g.SetUp
				stress := math.Pi * e * t * g.Full / l
				if turns < g.Turns || torque < g.LeastTorque.NewtonMillimetres() || stress > g.MostStress.Megapascals() {
					continue
				}
				r.Count++
				if v := t * b * l; v < best {
					best, r.Thickness, r.Width, r.Length = v, it, ib, il
				}
			}
		}
	}
	if r.Count > 0 {
		r.Volume = units.Volume(best * 1e-9) // from mm³
	}
	return r
}

func TestGridAgainstEachAlone(t *testing.T) {
	grids := map[string]springs.BarrelGrid{"a million": million()}
	g := million()
	g.Width.Count, g.Width.From = 7, 11*mm
	grids["narrow"] = g
	g = million()
	g.Width = springs.Steps{From: 10 * mm, Count: 1}
	grids["one width"] = g
	g = million()
	g.Width = springs.Steps{From: 10 * mm, Count: 3} // no step: three the same
	grids["the same width three times"] = g
	g = million()
	g.LeastTorque = 0
	grids["no torque asked"] = g
	g = million()
	g.MostStress = 1 * mpa
	grids["nothing does"] = g
	for name, g := range grids {
		t.Run(name, func(t *testing.T) {
			got, err := g.Search()
			ok(t, err)
			want := eachAlone(g)
			if got.Count != want.Count || got.Thickness != want.Thickness || got.Width != want.Width || got.Length != want.Length {
				t.Errorf("got %+v, want %+v", got, want)
			}
			figures.Near(t, "volume", float64(got.Volume), float64(want.Volume), 1e-12*float64(want.Volume))
			if name == "a million" && got.Count < 1000 {
				t.Errorf("%d do: the grid shows nothing", got.Count)
			}
		})
	}
}

// TestGridAndBarrel: the best of the grid does what it was found for when made a Barrel.
func TestGridAndBarrel(t *testing.T) {
	g := million()
	r, err := g.Search()
	ok(t, err)
	b := barrel(t, springs.BarrelSpec{
		Bore: g.Bore, Arbor: g.Arbor, Width: g.Width.At(r.Width), Thickness: g.Thickness.At(r.Thickness), Length: g.Length.At(r.Length),
		Free: springs.SlackOnWall(), Material: steel(t, g.YoungsModulus, 0),
	})
	if !(b.Turns() >= g.Turns && b.LineTorque(g.SetUp) >= g.LeastTorque && b.Stress(g.Full) <= g.MostStress) {
		t.Errorf("%+v: %v turns, %v, %v", r, b.Turns(), b.LineTorque(g.SetUp), b.Stress(g.Full))
	}
}

func TestGridRefusals(t *testing.T) {
	g := million()
	g.Width.Count = 0
	_, err := g.Search()
	refused(t, err, "0 sizes of width")
	g = million()
	g.Arbor = g.Bore
	_, err = g.Search()
	refused(t, err, "bore beyond the arbor")
	g = million()
	g.MostStress = units.Pressure(math.NaN())
	_, err = g.Search()
	refused(t, err, "most stress")
}

// TestNothingAllocated: sums that a search or a picture makes by the thousand.
func TestNothingAllocated(t *testing.T) {
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: springs.MusicWireA228.Material()})
	b := barrel(t, springs.BarrelSpec{Bore: 92 * mm, Arbor: 28 * mm, Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: springs.SlackOnWall(), Material: springs.StripC67STypical.Material()})
	g := million()
	g.Thickness.Count = 5
	music := springs.MusicWireA228.Material()
	var sink float64
	for name, f := range map[string]func(){
		"Torsion":  func() { sink += float64(s.Stress(s.Torque(1))) + float64(s.PinClearance(10*mm, 1)) },
		"Barrel":   func() { m, _ := b.Torque(5); sink += float64(m.Drive) + float64(b.Stress(5)) },
		"Bundle":   func() { m, _ := b.BundleTorque(5); sink += float64(m) },
		"PreWind":  func() { n, _ := b.PreWind(0.5); sink += n },
		"Grid":     func() { r, _ := g.Search(); sink += float64(r.Count) },
		"Strength": func() { st, _ := music.Strength(1 * mm); sink += float64(st.Least) },
	} {
		if n := testing.AllocsPerRun(100, f); n != 0 {
			t.Errorf("%s: %g allocations", name, n)
		}
	}
	if sink == 0 {
		t.Error("nothing computed")
	}
}

func BenchmarkBarrelGridOfAMillion(b *testing.B) {
	g := million()
	b.ReportAllocs()
	for b.Loop() {
		if r, err := g.Search(); err != nil || r.Count == 0 {
			b.Fatal(r, err)
		}
	}
}

func BenchmarkEachAlone(b *testing.B) {
	g := million()
	for b.Loop() {
		if r := eachAlone(g); r.Count == 0 {
			b.Fatal(r)
		}
	}
}

func BenchmarkTorsionStress(b *testing.B) {
	s := torsion(b, springs.TorsionSpec{Wire: wire(b, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: springs.MusicWireA228.Material()})
	b.ReportAllocs()
	var sink units.Pressure
	for b.Loop() {
		sink += s.Stress(s.Torque(1))
	}
	_ = sink
}

func BenchmarkBarrelTorque(b *testing.B) {
	s := barrel(b, springs.BarrelSpec{Bore: 92 * mm, Arbor: 28 * mm, Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: springs.SlackOnWall(), Material: springs.StripC67STypical.Material()})
	b.ReportAllocs()
	var sink units.Torque
	for b.Loop() {
		m, _ := s.Torque(5)
		sink += m.Mean
	}
	_ = sink
}

func BenchmarkChooseWire(b *testing.B) {
	room, demand := leverDemand()
	wires := wiresToHand(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := springs.ChooseWire(room, demand, springs.WireRules{}, wires); err != nil {
			b.Fatal(err)
		}
	}
}
