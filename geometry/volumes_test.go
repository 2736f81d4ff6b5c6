package geometry

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const cc = units.CubicCentimetre

func TestNewCylinder_refuses(t *testing.T) {
	_, err := NewCylinder(0, mustCrank(t, 60*mm, 110*mm, 0))
	refuses(t, err, "bore 0 mm: want more than 0 mm")
	_, err = NewCylinder(units.Length(math.Inf(1)), mustCrank(t, 60*mm, 110*mm, 0))
	refuses(t, err, "bore +Inf mm: want more than 0 mm")
	_, err = NewCylinder(60*mm, Crank{})
	refuses(t, err, "crank without a stroke: want one made by NewCrank")
	_, err = BoreOfSwept(0, 1)
	refuses(t, err, "swept volume 0 cm³, stroke 1 bores: want both more than 0")
	_, err = BoreOfSwept(100*cc, math.NaN())
	refuses(t, err, "swept volume 100 cm³, stroke NaN bores: want both more than 0")
}

func TestCylinder_volumes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		crank := anyCrank(t)
		c, err := NewCylinder(units.Length(rapid.Float64Range(10, 500).Draw(t, "bore, mm"))*mm, crank)
		if err != nil {
			t.Fatal(err)
		}
		swept := math.Pi / 4 * c.Bore().Millimetres() * c.Bore().Millimetres() * crank.Stroke().Millimetres() / 1000
		within(t, "swept volume, cm³", c.Swept().CubicCentimetres(), swept, 1e-12*swept)
		within(t, "volume at the top, cm³", c.VolumeAt(0, 50*cc).CubicCentimetres(), 50, 1e-12)
		within(t, "volume at the bottom, cm³", c.VolumeAt(crank.Downstroke(), 50*cc).CubicCentimetres(), 50+swept, 1e-12*swept)
		bore, err := BoreOfSwept(c.Swept(), float64(crank.Stroke()/c.Bore()))
		if err != nil {
			t.Fatal(err)
		}
		within(t, "bore back, mm", bore.Millimetres(), c.Bore().Millimetres(), 1e-12*c.Bore().Millimetres())
		if c.Crank() != crank {
			t.Errorf("crank %v, want %v", c.Crank(), crank)
		}
	})
}

func TestCylinder_Compression(t *testing.T) {
	c := mustCylinder(t, 76*mm, 76*mm, 145*mm)
	rapid.Check(t, func(t *rapid.T) {
		wanted := units.Ratio(rapid.Float64Range(1.5, 20).Draw(t, "ratio"))
		clearance, err := c.ClearanceForRatio(wanted)
		if err != nil {
			t.Fatal(err)
		}
		part := rapid.Float64Range(0, 1).Draw(t, "closing in the stroke")
		both, err := c.Compression(clearance, units.Length(part)*c.Crank().Stroke())
		if err != nil {
			t.Fatal(err)
		}
		within(t, "geometric ratio back", float64(both.Geometric), float64(wanted), 1e-13*float64(wanted))
		at, err := VolumeRatioAt(units.Ratio(part), wanted)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "trapped ratio by the fraction of the stroke", float64(both.Trapped), float64(at), 1e-13*float64(wanted))

		// Skimmed by what Skim says, the chamber has the wanted ratio.
		other := units.Ratio(rapid.Float64Range(1.5, 20).Draw(t, "other ratio"))
		cut, err := c.Skim(clearance, other, c.PistonArea())
		if err != nil {
			t.Fatal(err)
		}
		left := clearance - c.SweptBelow(cut)
		both, err = c.Compression(left, 0)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "ratio after the cut", float64(both.Geometric), float64(other), 1e-10*float64(other))
		if (cut > 0) != (other > wanted) && cut != 0 {
			t.Errorf("cut %v from ratio %g to %g: wrong way", cut, float64(wanted), float64(other))
		}

		if part > 0.1 {
			cut, err = c.SkimForTrapped(clearance, other, units.Length(part)*c.Crank().Stroke(), c.PistonArea())
			if err != nil {
				t.Fatal(err)
			}
			both, err = c.Compression(clearance-c.SweptBelow(cut), units.Length(part)*c.Crank().Stroke())
			if err != nil {
				t.Fatal(err)
			}
			within(t, "trapped ratio after the cut", float64(both.Trapped), float64(other), 1e-9*float64(other))
		}

		// Pressures by the law the estimate rests on give the ratio back.
		index := rapid.Float64Range(1, 1.5).Draw(t, "index")
		pressure := func(fraction float64) IndicatorPoint {
			v := 1 + (1-fraction)*(float64(wanted)-1)
			return IndicatorPoint{units.Ratio(fraction), units.Bar * units.Pressure(math.Pow(v, -index))}
		}
		got, err := RatioFromPressures(pressure(0.1), pressure(0.7), index)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "ratio from pressures", float64(got), float64(wanted), 1e-10*float64(wanted))
	})
	figures.Near(t, "crankcase ratio", float64(must[units.Ratio](t)(c.CrankcaseRatio(c.Swept()*4))), 1.25, 1e-15)
	if got, want := (Compression{7.256, 5.5}).String(), "geometric 7.26:1, trapped 5.50:1"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestCompression_refuses(t *testing.T) {
	c := mustCylinder(t, 76*mm, 76*mm, 145*mm)
	low, high := IndicatorPoint{0.1, units.Bar}, IndicatorPoint{0.7, 4 * units.Bar}
	errOf := func(_ any, err error) error { return err }
	for _, tc := range []struct {
		name string
		err  error
		text string
	}{
		{"no clearance", errOf(c.Compression(0, 50*mm)), "clearance 0 cm³: want more than 0 cm³"},
		{"closing below the bottom", errOf(c.Compression(60*cc, 77*mm)), "drop at closing 77 mm: want 0 mm to 76 mm, the stroke"},
		{"ratio of one", errOf(c.ClearanceForRatio(1)), "compression ratio 1: want more than 1"},
		{"nothing swept", errOf(ClearanceForRatio(0, 8)), "swept volume 0 cm³: want more than 0 cm³"},
		{"skim from nothing", errOf(c.Skim(0, 8, 1)), "clearance 0 cm³: want more than 0 cm³"},
		{"skim over nothing", errOf(c.Skim(60*cc, 8, 0)), "area 0 mm²: want more than 0 mm²"},
		{"skim to nothing", errOf(c.Skim(60*cc, 1, 1)), "compression ratio 1: want more than 1"},
		{"skim with closing below the bottom", errOf(c.SkimForTrapped(60*cc, 6, 77*mm, 1)), "drop at closing 77 mm: want 0 mm to 76 mm, the stroke"},
		{"skim with nothing trapped", errOf(c.SkimForTrapped(60*cc, 6, 0, 1)), "swept volume 0 cm³: want more than 0 cm³"},
		{"no crankcase", errOf(c.CrankcaseRatio(0)), "crankcase volume 0 cm³ at bottom dead centre: want more than 0 cm³"},
		{"fraction of more than the stroke", errOf(VolumeRatioAt(1.1, 8)), "fraction of the stroke 1.1: want 0 to 1"},
		{"fraction at no ratio", errOf(VolumeRatioAt(0.1, 1)), "compression ratio 1: want more than 1"},
		{"points in the wrong order", errOf(RatioFromPressures(high, low, 1.3)), "fractions of the stroke 0.7 and 0.1: want 0 to 1, the first less"},
		{"falling pressure", errOf(RatioFromPressures(low, IndicatorPoint{0.7, 0.5 * units.Bar}, 1.3)), "pressures 100 kPa and 50 kPa: want more than 0, the second more"},
		{"no index", errOf(RatioFromPressures(low, high, 0)), "index of compression 0: want more than 0, 1.3 or so"},
		{"more pressure than any ratio gives", errOf(RatioFromPressures(low, IndicatorPoint{0.2, 40 * units.Bar}, 1.3)), "pressures 100 kPa and 4 MPa at 0.1 and 0.2 of the stroke: no compression ratio gives them"},
	} {
		t.Run(tc.name, func(t *testing.T) { refuses(t, tc.err, tc.text) })
	}
}

// A line through points that lie on one is that line; the uncertainties are those
// of the formulas for a straight line, worked by hand for three even points:
// t = 0, 10, 20 s about 10; Σ(t − t̄)² = 200; u² = s²(1/3 + 100/200), s²/200.
func TestBuretteClearance(t *testing.T) {
	b := BuretteClearance{
		ToBrim:     units.Reading[units.Volume]{Value: 74 * cc, Std: 0.4 * cc, DoF: 2},
		PlugHole:   units.WithStd(4.7*cc, 0.3*cc),
		PlugCavity: units.WithStd(1*cc, 0),
	}
	v := must[units.Reading[units.Volume]](t)(b.Volume())
	figures.Near(t, "clearance, cm³", v.Value.CubicCentimetres(), 74-4.7+1, 1e-12)
	figures.Near(t, "its uncertainty, cm³", v.Std.CubicCentimetres(), 0.5, 1e-12)
	// Welch and Satterthwaite: 0.5⁴ / (0.4⁴/2).
	figures.Near(t, "degrees of freedom", v.DoF, 0.0625/(0.0256/2), 1e-9)
	b.PlugHole.Value = 80 * cc
	_, err := b.Volume()
	refuses(t, err, "74 cm³ run in, plug hole 80 cm³, plug cavity 1 cm³: want none less than 0 and something left")
	b.PlugHole.Value = -1 * cc
	_, err = b.Volume()
	refuses(t, err, "74 cm³ run in, plug hole -1 cm³, plug cavity 1 cm³: want none less than 0 and something left")
}

func TestChamber(t *testing.T) {
	const bore = 76 * mm
	area := math.Pi / 4 * 7.6 * 7.6 // cm²
	p := Chamber{Head: 30 * cc, GasketBore: bore, Gasket: 1 * mm, Deck: 2 * mm, Dome: 4 * cc, Dish: 1 * cc, TopLand: 0.5 * cc}
	v := must[units.Volume](t)(p.Volume(bore))
	figures.Near(t, "chamber, cm³", v.CubicCentimetres(), 30+area*0.3-4+1+0.5, 1e-12)
	p.Deck = -2 * mm
	v = must[units.Volume](t)(p.Volume(bore))
	figures.Near(t, "chamber of a proud piston, cm³", v.CubicCentimetres(), 30-area*0.1-4+1+0.5, 1e-12)
	p.Dome = 40 * cc
	_, err := p.Volume(bore)
	if want := "parts of the chamber: they leave -13.0365 cm³, want more than 0 cm³: outside the domain"; err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
	_, err = Chamber{Head: 30 * cc, Gasket: -1 * mm}.Volume(bore)
	refuses(t, err, "thickness of the gasket: want 0 or more")
	_, err = Chamber{Head: 30 * cc}.Volume(units.Length(math.NaN()))
	refuses(t, err, "bore: want 0 or more")
}

func TestSquish(t *testing.T) {
	s := Squish{Bore: 50 * mm, Bowl: 30 * mm, Gap: 1 * mm}
	figures.Near(t, "squish, cm³", must[units.Volume](t)(s.Volume()).CubicCentimetres(), math.Pi/4*(25-9)*0.1, 1e-13)
	s.Bowl = 51 * mm
	_, err := s.Volume()
	refuses(t, err, "squish of bore 50 mm, bowl 51 mm, gap 1 mm: want a bowl no wider than the bore and none less than 0")
}

func TestHole(t *testing.T) {
	v := must[units.Volume](t)(Hole{Diameter: 20 * mm, Depth: 14 * mm}.Volume())
	figures.Near(t, "hole, cm³", v.CubicCentimetres(), math.Pi*1.4, 1e-14)
	_, err := Hole{Diameter: 20 * mm, Depth: -mm}.Volume()
	refuses(t, err, "hole of diameter 20 mm and depth -1 mm: want neither less than 0 mm")

	// A threaded hole by its effective diameter, against the sum along one pitch of
	// a vee of height H cut off at its roots and crests: by H/8 and H/4 as in a
	// metric nut, by H/6 both as in Whitworth's (without the rounding).
	const pitch, effective = 1.5, 20.0
	for _, tc := range []struct {
		name         string
		angle        float64 // of the thread, degrees
		root, crest  float64 // of the height
		within, miss float64 // by the effective diameter, and at least by the crest diameter
	}{
		{"metric", 60, 1.0 / 8, 1.0 / 4, 0.01, 0.05},
		{"Whitworth", 55, 1.0 / 6, 1.0 / 6, 0.002, 0.05},
	} {
		h := pitch / 2 / math.Tan(tc.angle*math.Pi/360)
		const n = 10000
		var square float64
		for i := range n {
			y := min(max((float64(i)+0.5)/n, tc.crest), 1-tc.root) * h // out from the sharp crest
			d := effective + 2*(y-h/2)
			square += d * d / n
		}
		crest := effective - 2*(0.5-tc.crest)*h
		figures.Near(t, tc.name+": volume by the effective diameter", effective*effective/square, 1, tc.within)
		if short := 1 - crest*crest/square; !(short > tc.miss) {
			t.Errorf("%s: the crest diameter is %.1f %% short in the volume, want more than %.0f %%", tc.name, 100*short, 100*tc.miss)
		}
	}
}

func TestRodOverPins(t *testing.T) {
	l := must[units.Length](t)(RodOverPins{Over: 150 * mm, GudgeonPin: 16 * mm, Crankpin: 30 * mm}.Centres())
	figures.Near(t, "rod, mm", l.Millimetres(), 127, 1e-12)
	_, err := RodOverPins{Over: 20 * mm, GudgeonPin: 16 * mm, Crankpin: 30 * mm}.Centres()
	refuses(t, err, "rod 20 mm over pins of 16 mm and 30 mm: want each more than 0 mm and the rod longer")
}

func TestStrokeOnly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, err := NewStrokeOnly(112*mm, UsualRods())
		if err != nil {
			t.Fatal(err)
		}
		theta := anyAngle(t)
		drop := s.Drop(theta)
		if !(drop.Least <= drop.Middle+1e-16 && drop.Middle <= drop.Most+1e-16) {
			t.Errorf("drop %v out of order", drop)
		}
		n := rapid.Float64Range(3.5, 4.5).Draw(t, "rod in throws")
		c, err := NewCrank(112*mm, units.Length(n)*56*mm)
		if err != nil {
			t.Fatal(err)
		}
		if x := c.Drop(theta); !(drop.Least-1e-16 <= x && x <= drop.Most+1e-16) {
			t.Errorf("drop %v with a rod of %g throws: want it in %v", x, n, drop)
		}
		x := s.Stroke() * units.Length(rapid.Float64Range(0, 1).Draw(t, "drop in the stroke"))
		angle, err := s.AngleAtDrop(x)
		if err != nil {
			t.Fatal(err)
		}
		if at, _, _ := c.AnglesAtDrop(x); !(angle.Least-1e-14 <= at && at <= angle.Most+1e-14) {
			t.Errorf("angle %v with a rod of %g throws: want it in %v", at, n, angle)
		}
	})
	s, err := NewStrokeOnly(60*mm, RodRange{3, 5})
	if err != nil {
		t.Fatal(err)
	}
	spread := Spread[units.Length]{1 * mm, 2 * mm, 5 * mm}
	figures.Near(t, "reading, mm", spread.Reading().Value.Millimetres(), 3, 1e-12)
	figures.Near(t, "its uncertainty, mm", spread.Reading().Std.Millimetres(), 2/math.Sqrt(3), 1e-12)
	if got, want := spread.String(), "2 mm (1 mm to 5 mm)"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	_, err = s.AngleAtDrop(61 * mm)
	refuses(t, err, "drop 61 mm: want 0 mm to 60 mm, the stroke")
	_, err = NewStrokeOnly(60*mm, RodRange{1, 4})
	refuses(t, err, "rod 1 to 4 throws: want more than 1, least first")
	_, err = NewStrokeOnly(60*mm, RodRange{5, 4})
	refuses(t, err, "rod 5 to 4 throws: want more than 1, least first")
	_, err = NewStrokeOnly(0, UsualRods())
	refuses(t, err, "stroke 0 mm: want more than 0 mm")
}

func TestCylinder_InletSpeeds(t *testing.T) {
	const rpm = units.RevolutionPerMinute
	c := mustCylinder(t, 76*mm, 76*mm, 145*mm)
	got := must[InletSpeeds](t)(c.InletSpeeds(25*mm, 120*units.Degree, 900*rpm))
	// 76 mm × 900/30 = 2.28 m/s, times (76/25)²; a third of a turn at 900 rev/min
	// is 1/45 s.
	mean := 2.28 * 76 / 25 * 76 / 25
	figures.Near(t, "over the stroke, m/s", got.OverStroke.MetresPerSecond(), mean, 1e-12)
	figures.Near(t, "over the turn, m/s", got.OverTurn.MetresPerSecond(), mean/2, 1e-12)
	figures.Near(t, "over the opening, m/s", got.OverOpening.MetresPerSecond(), 0.076*45*76/25*76/25, 1e-12)
	var most units.Speed
	for theta := units.Angle(0); theta < units.Turn; theta += 0.01 {
		most = max(most, c.Crank().Velocity(theta, 900*rpm))
	}
	figures.Near(t, "greatest, m/s", got.Greatest.MetresPerSecond(), most.MetresPerSecond()*76/25*76/25, 1e-3)
	_, err := c.InletSpeeds(0, 1, 1)
	refuses(t, err, "inlet bore 0 mm: want more than 0 mm")
	_, err = c.InletSpeeds(25*mm, 361*units.Degree, 1)
	refuses(t, err, "inlet open for 361°: want more than 0° and at most 360°")
	_, err = c.InletSpeeds(25*mm, 1, -1*rpm)
	refuses(t, err, "crank speed -1 rev/min: want more than 0 rev/min")
	_, err = StrokeOfMeanPistonSpeed(0, rpm)
	refuses(t, err, "mean piston speed 0 m/s: want more than 0 m/s")
	_, err = StrokeOfMeanPistonSpeed(9, 0)
	refuses(t, err, "crank speed 0 rev/min: want more than 0 rev/min")
}
