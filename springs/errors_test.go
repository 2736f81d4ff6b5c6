package springs_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

var nan, inf = units.Length(math.NaN()), units.Length(math.Inf(1))

func TestTorsionRefusals(t *testing.T) {
	good := func() springs.TorsionSpec {
		return springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: springs.MusicWireA228.Material()}
	}
	flat := strip(t, 3*mm, 2*mm)
	for _, tc := range []struct {
		name  string
		spoil func(*springs.TorsionSpec)
		words []string
	}{
		{"no wire", func(s *springs.TorsionSpec) { s.Wire = springs.Section{} }, []string{"no wire section given", "RoundWire"}},
		{"no diameter", func(s *springs.TorsionSpec) { s.MeanDiameter = 0 }, []string{"0 diameters given", "one of mean, inside and outside"}},
		{"two diameters", func(s *springs.TorsionSpec) { s.OutsideDiameter = 22 * mm }, []string{"2 diameters given"}},
		{"coil below the wire", func(s *springs.TorsionSpec) { s.MeanDiameter = 2 * mm }, []string{"mean diameter 2 mm", "want more than 2 mm, the wire"}},
		{"outside below the wire", func(s *springs.TorsionSpec) { s.MeanDiameter = 0; s.OutsideDiameter = 3 * mm }, []string{"mean diameter 1 mm"}},
		{"inside negative", func(s *springs.TorsionSpec) { s.MeanDiameter = 0; s.InsideDiameter = -1 * mm }, []string{"mean diameter 1 mm"}},
		{"not a number", func(s *springs.TorsionSpec) { s.MeanDiameter = nan }, []string{"mean diameter"}},
		{"infinite", func(s *springs.TorsionSpec) { s.MeanDiameter = inf }, []string{"mean diameter"}},
		{"no turns", func(s *springs.TorsionSpec) { s.BodyTurns = 0 }, []string{"body turns 0", "want more than 0"}},
		{"turns not a number", func(s *springs.TorsionSpec) { s.BodyTurns = math.NaN() }, []string{"body turns"}},
		{"leg below nothing", func(s *springs.TorsionSpec) { s.Legs[1] = -1 * mm }, []string{"second leg", "want 0 mm or more"}},
		{"pitch below the wire", func(s *springs.TorsionSpec) { s.Pitch = 1 * mm }, []string{"pitch 1 mm", "want 2 mm or more, the wire, or 0"}},
		{"no material", func(s *springs.TorsionSpec) { s.Material = springs.Material{} }, []string{"no material given"}},
		{"material without modulus", func(s *springs.TorsionSpec) { s.Material = springs.Stainless431.Material() }, []string{"stainless 431", "no moduli on file"}},
		{"handbook constant for strip", func(s *springs.TorsionSpec) { s.Wire = flat; s.Constant = springs.Handbook4000 }, []string{"handbook constant 4000", "no such figure"}},
		{"no such constant", func(s *springs.TorsionSpec) { s.Constant = 7 }, []string{"RateConstant(7)"}},
		{"EN's q for strip", func(s *springs.TorsionSpec) { s.Wire = flat; s.Curvature = springs.StandardInside }, []string{"it is for round wire"}},
		{"no such rule", func(s *springs.TorsionSpec) { s.Curvature = -1 }, []string{"curvature rule -1"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			spec := good()
			tc.spoil(&spec)
			_, err := springs.NewTorsion(spec)
			refused(t, err, tc.words...)
		})
	}
	if _, err := springs.NewTorsion(good()); err != nil {
		t.Errorf("the good one: %v", err)
	}
}

func TestSpiralRefusals(t *testing.T) {
	good := func() springs.SpiralSpec {
		return springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Turns: 5, InnerDiameter: 20 * mm, OuterDiameter: 60 * mm, Material: springs.StripC67S.Material()}
	}
	for _, tc := range []struct {
		name  string
		spoil func(*springs.SpiralSpec)
		words []string
	}{
		{"no width", func(s *springs.SpiralSpec) { s.Width = 0 }, []string{"width 0 mm"}},
		{"no thickness", func(s *springs.SpiralSpec) { s.Thickness = nan }, []string{"thickness"}},
		{"neither length nor turns", func(s *springs.SpiralSpec) { s.Turns = 0 }, []string{"want one of the two"}},
		{"both", func(s *springs.SpiralSpec) { s.Length = 500 * mm }, []string{"want one of the two"}},
		{"turns without diameters", func(s *springs.SpiralSpec) { s.InnerDiameter, s.OuterDiameter = 0, 0 }, []string{"length of the strip"}},
		{"inside out", func(s *springs.SpiralSpec) { s.OuterDiameter = 10 * mm }, []string{"outer diameter 10 mm", "want more than 20 mm, the inner one"}},
		{"coils touch", func(s *springs.SpiralSpec) { s.Turns = 20 }, []string{"20 turns between 20 mm and 60 mm", "want more than 1 mm, the strip"}},
		{"too many turns", func(s *springs.SpiralSpec) { s.Turns = 501; s.Thickness = 0.01 * mm }, []string{"501 turns", "500 at most"}},
		{"no such end", func(s *springs.SpiralSpec) { s.OuterEnd = 3 }, []string{"outer end 3"}},
		{"no such factor", func(s *springs.SpiralSpec) { s.Factor = 3 }, []string{"pinned factor 3"}},
		{"by shape without a shape", func(s *springs.SpiralSpec) {
			*s = springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Length: 600 * mm, OuterEnd: springs.Hooked, Material: s.Material}
		}, []string{"hooked outer end without diameters"}},
		{"no material", func(s *springs.SpiralSpec) { s.Material = springs.Material{} }, []string{"no material given"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			spec := good()
			tc.spoil(&spec)
			_, err := springs.NewSpiral(spec)
			refused(t, err, tc.words...)
		})
	}
	bare := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Length: 600 * mm, Material: springs.StripC67S.Material()})
	_, turns := bare.Turns()
	_, gap := bare.CoilGap(1)
	_, touch := bare.TouchAngle()
	_, pull := bare.SidePull(1)
	_, peak := bare.PeakStress(1)
	_, factor := bare.RotationFactor()
	_, inner := bare.InnerFactor()
	for _, err := range []error{turns, gap, touch, pull, peak, factor, inner} {
		refused(t, err, "spiral without diameters")
	}
	_, err := bare.Period(0)
	refused(t, err, "moment of inertia")
	_, err = springs.SpiralWidth(0, 1, 1, springs.Clamped)
	refused(t, err, "torque")
	_, err = springs.SpiralLengthFor(1, 1, springs.Section{}, 1, 1)
	refused(t, err, "no wire section")
	if len(bare.Advice()) != 1 {
		t.Error("no advice about the diameters")
	}
}

func TestBarrelRefusals(t *testing.T) {
	good := func() springs.BarrelSpec {
		return springs.BarrelSpec{Bore: 92 * mm, Arbor: 28 * mm, Depth: 15 * mm, Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: springs.SlackOnWall(), Material: springs.StripC67S.Material()}
	}
	for _, tc := range []struct {
		name  string
		spoil func(*springs.BarrelSpec)
		words []string
	}{
		{"no bore", func(s *springs.BarrelSpec) { s.Bore = 0 }, []string{"bore 0 mm"}},
		{"arbor fills", func(s *springs.BarrelSpec) { s.Arbor = 92 * mm }, []string{"arbor 92 mm", "want less than 92 mm, the bore"}},
		{"too wide", func(s *springs.BarrelSpec) { s.Width = 16 * mm }, []string{"strip 16 mm wide", "15 mm at most, the depth"}},
		{"too long", func(s *springs.BarrelSpec) { s.Length = 20000 * mm }, []string{"strip 20000 mm long", "fills the barrel"}},
		{"free state not stated", func(s *springs.BarrelSpec) { s.Free = springs.FreeState{} }, []string{"free state of the strip not stated", "SlackOnWall"}},
		{"coiled too close", func(s *springs.BarrelSpec) { s.Free = springs.FreeTurns(9) }, []string{"9 turns when free", "lies loose"}},
		{"friction", func(s *springs.BarrelSpec) { s.Friction = 1 }, []string{"friction 1", "0 to below 1"}},
		{"friction not a number", func(s *springs.BarrelSpec) { s.Friction = math.NaN() }, []string{"friction NaN"}},
		{"no material", func(s *springs.BarrelSpec) { s.Material = springs.Material{} }, []string{"no material given"}},
		{"depth", func(s *springs.BarrelSpec) { s.Depth = -1 }, []string{"depth"}},
		{"width", func(s *springs.BarrelSpec) { s.Width = 0 }, []string{"width 0 mm"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			spec := good()
			tc.spoil(&spec)
			_, err := springs.NewBarrel(spec)
			refused(t, err, tc.words...)
		})
	}
	spec := good()
	spec.Free = springs.FreeTurns(math.Inf(-1))
	if _, err := springs.NewBarrel(spec); !errors.Is(err, units.ErrNotFinite) {
		t.Errorf("free turns -Inf: %v", err)
	}
	b := barrel(t, good())
	_, err := b.Torque(-0.1)
	refused(t, err, "-0.1 turns from run down", "solid on the arbor")
	_, err = b.BundleTorque(99)
	refused(t, err, "99 turns")
	_, err = b.Energy(math.NaN())
	refused(t, err, "NaN turns")
	_, err = b.PreWind(-1)
	refused(t, err, "torque")
	_, err = b.PreWind(100)
	refused(t, err, "when solid")
	_, err = b.LeastArbor(0)
	refused(t, err, "stress 0")
	spec = good()
	spec.Free = springs.FreeTurns(-8)
	_, err = barrel(t, spec).LeastArbor(1 * mpa)
	refused(t, err, "no arbor will do")
	_, err = springs.MostTurns(20*mm, 30*mm, 1*mm)
	refused(t, err, "bore 20 mm")
	_, err = springs.DrumTurns(0, 1)
	refused(t, err, "rope")
	_, err = b.Worked(-1, 1)
	refused(t, err, "pre-wind")
}

func TestCoilRefusals(t *testing.T) {
	good := func() springs.CompressionSpec {
		return springs.CompressionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, TotalTurns: 8, Ends: springs.SquaredGround, Material: springs.MusicWireA228.Material()}
	}
	square, err := springs.SquareWire(2 * mm)
	ok(t, err)
	for _, tc := range []struct {
		name  string
		spoil func(*springs.CompressionSpec)
		words []string
	}{
		{"no wire", func(s *springs.CompressionSpec) { s.Wire = springs.Section{} }, []string{"no wire section"}},
		{"strip", func(s *springs.CompressionSpec) { s.Wire = strip(t, 3*mm, 2*mm) }, []string{"want round or square"}},
		{"factor for square wire", func(s *springs.CompressionSpec) { s.Wire = square }, []string{"Bergsträsser factor for square wire", "NoShear"}},
		{"all turns dead", func(s *springs.CompressionSpec) { s.TotalTurns = 2 }, []string{"2 turns with squared and ground ends", "want more than 2"}},
		{"no such ends", func(s *springs.CompressionSpec) { s.Ends = 4 }, []string{"ends 4"}},
		{"no such rule", func(s *springs.CompressionSpec) { s.Shear = 4 }, []string{"shear rule 4"}},
		{"shorter than solid", func(s *springs.CompressionSpec) { s.FreeLength = 16 * mm }, []string{"free length 16 mm", "want more than 16 mm, the solid length"}},
		{"no shear modulus", func(s *springs.CompressionSpec) { s.Material = steel(t, 200e3*mpa, 0) }, []string{"no shear modulus on file"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			spec := good()
			tc.spoil(&spec)
			_, err := springs.NewCompression(spec)
			refused(t, err, tc.words...)
		})
	}
	c := compression(t, good())
	_, err = c.SolidForce()
	refused(t, err, "FreeLength")
	_, err = c.StableLength(9)
	refused(t, err, "seating 9")
	_, err = c.BucklingDeflection(springs.BothFlat)
	refused(t, err, "FreeLength")
	for _, spoil := range []func(*springs.ExtensionSpec){
		func(s *springs.ExtensionSpec) { s.Wire = square },
		func(s *springs.ExtensionSpec) { s.HookRadius = 1 * mm },
		func(s *springs.ExtensionSpec) { s.BendRadius = 0.5 * mm },
		func(s *springs.ExtensionSpec) { s.InitialTension = -1 },
		func(s *springs.ExtensionSpec) { s.BodyTurns = 0 },
		func(s *springs.ExtensionSpec) { s.Material = steel(t, 200e3*mpa, 0) },
		func(s *springs.ExtensionSpec) { s.Material = steel(t, 0, 80e3*mpa) },
	} {
		spec := springs.ExtensionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 8, Material: springs.MusicWireA228.Material()}
		spoil(&spec)
		_, err := springs.NewExtension(spec)
		refused(t, err)
	}
}

func TestMaterialRefusals(t *testing.T) {
	music := springs.MusicWireA228.Material()
	_, err := music.Strength(0.05 * mm)
	refused(t, err, "music wire A228 of 0.05 mm", "runs from 0.1016 mm to 6.35 mm")
	_, err = music.Strength(7 * mm)
	refused(t, err, "6.35 mm")
	_, err = music.Strength(nan)
	refused(t, err, "size")
	_, err = springs.PatentedIS4454Grade2.Material().Strength(9 * mm)
	refused(t, err, "0.3 mm to 8 mm")
	_, err = springs.StripC67S.Material().Strength(0.1 * mm)
	refused(t, err, "0.3 mm to 3 mm")
	_, err = springs.StripC67STypical.Material().Strength(4 * mm)
	refused(t, err, "0.3 mm to 3 mm")
	_, err = springs.ChromeVanadiumA232.Material().Strength(2 * mm)
	refused(t, err, "FittedStrength")
	_, err = springs.FittedStrength(springs.MusicWireA228, 9*mm)
	refused(t, err, "no fit on file")
	_, err = springs.FittedStrengthInch(springs.PatentedSM, 1*mm)
	refused(t, err, "no fit in inches")
	_, err = springs.PhosphorBronzeB159.Material().Density()
	refused(t, err, "no density on file")
	_, err = springs.HandbookDesignStress(springs.MusicWireA228, 1*mm)
	refused(t, err, "handbook's table")
	_, err = springs.HandbookDesignStress(springs.PhosphorBronzeB159, 2*mm)
	refused(t, err, "handbook's table")
	_, err = springs.HandbookYoungsModulus(4 * mm)
	refused(t, err, "0.055 in to 0.135 in")
	_, err = springs.WireTolerance(21 * mm)
	refused(t, err, "0.05 mm to 20 mm")
	_, err = springs.StripTolerance(0.2*mm, "A")
	refused(t, err, "up to 0.15 mm only")
	_, err = springs.StripTolerance(0.1*mm, "D")
	refused(t, err, `class "D"`)
	_, _, err = springs.TemperedStrength("1080", units.Celsius(300))
	refused(t, err, `steel "1080"`)
	_, _, err = springs.TemperedStrength("1095", units.Celsius(20))
	refused(t, err, "400 °F to 1100 °F")
	_, err = springs.StripLimits("C67S", "")
	refused(t, err, "+QT")
	_, err = springs.StripLimits("", "+CR")
	refused(t, err, "+QT")
	_, _, err = springs.StripHardness(5 * mm)
	refused(t, err, "0.3 mm to 3 mm")
	_, _, err = springs.StripC75S.Material().ElasticLimit()
	refused(t, err, "no elastic limit")
	_, err = springs.FindGrade("unobtainium")
	refused(t, err, "unobtainium", "music wire A228")
	for _, spec := range []springs.MaterialSpec{
		{},
		{YoungsModulus: -1},
		{YoungsModulus: units.Pressure(math.NaN())},
		{YoungsModulus: 1, LeastStrength: 2, MostStrength: 1},
		{YoungsModulus: 1, Like: 99},
		{YoungsModulus: 1, Density: -1},
	} {
		_, err := springs.NewMaterial(spec)
		refused(t, err)
	}
	if g := springs.Grade(99); g.String() != "Grade(99)" || g.Material().String() != "" {
		t.Errorf("%v", g)
	}
	_, err = springs.Accuracy(9)
	refused(t, err, "form 9")
	_, err = springs.HazardOf(-1)
	refused(t, err, "energy")
	_, err = springs.GerberEndurance(3, 1)
	refused(t, err, "repeated stress")
	_, err = springs.GerberAmplitude(1, 1, 0)
	refused(t, err, "ratio")
	_, err = wire(t, 1*mm).InsideFactor(1)
	refused(t, err, "spring index 1")
	_, err = wire(t, 1*mm).OutsideFactor(math.NaN())
	refused(t, err, "spring index NaN")
	_, err = springs.WahlShear.Factor(0)
	refused(t, err, "spring index 0")
	_, err = springs.RoundWire(0)
	refused(t, err, "wire diameter 0 mm")
	_, err = springs.SquareWire(inf)
	refused(t, err, "side of the wire")
	_, err = springs.RectangularWire(1*mm, -1*mm)
	refused(t, err, "thickness -1 mm")
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: music})
	_, err = s.Fatigue(2, 1, springs.Bending1000000)
	refused(t, err, "rising")
	_, err = s.Fatigue(0, 1, springs.SteadyBending)
	refused(t, err, "100 000")
	_, _, err = s.OpenCoil(1, 85*units.Degree)
	refused(t, err, "0° to 80°")
	_, err = springs.NewReturn(nil, 0, 1)
	refused(t, err, "no spring")
	_, err = springs.NewReturn(s, -1, 1)
	refused(t, err, "preload")
	_, err = springs.PreloadFor(nil, 1)
	refused(t, err, "no spring")
	r, err := springs.NewReturn(s, 0, 1)
	ok(t, err)
	_, _, err = r.SnapBack(0)
	refused(t, err, "moment of inertia")
	_, err = springs.AnchorPin{}.Load(1)
	refused(t, err, "pin diameter")
}

// TestGauges: numbers as people write them, and those that no gauge has.
func TestGauges(t *testing.T) {
	for _, tc := range []struct {
		g      springs.WireGauge
		number string
		inches float64
	}{
		{springs.StandardWireGauge, "16", 0.064}, {springs.StandardWireGauge, " 16 ", 0.064}, {springs.StandardWireGauge, "0000", 0.400},
		{springs.StandardWireGauge, "0", 0.324}, {springs.StandardWireGauge, "7/0", 0.5}, {springs.MusicWireGauge, "00", 0.008}, {springs.WashburnMoenGauge, "9", 0.1483},
	} {
		d, err := tc.g.Diameter(tc.number)
		if err != nil || math.Abs(d.Inches()-tc.inches) > 1e-12 {
			t.Errorf("%v %q: %v, %v", tc.g, tc.number, d, err)
		}
	}
	_, err := springs.StandardWireGauge.Diameter("51")
	refused(t, err, `SWG "51"`, "from 7/0 to 50")
	_, err = springs.WireGauge(9).Diameter("1")
	refused(t, err, "StandardWireGauge")
	for _, g := range []springs.WireGauge{springs.StandardWireGauge, springs.MusicWireGauge, springs.WashburnMoenGauge} {
		for _, n := range g.Numbers() {
			d, err := g.Diameter(n)
			ok(t, err)
			number, over, err := g.Nearest(d)
			ok(t, err)
			if number != n || over != 0 {
				t.Errorf("%v %s: nearest to its own size is %s, over by %v", g, n, number, over)
			}
		}
	}
	number, over, err := springs.StandardWireGauge.Nearest(1.63 * mm)
	ok(t, err)
	same(t, "1.63 mm", number, "16")
	if math.Abs(over.Millimetres()-0.0044) > 1e-9 {
		t.Errorf("over by %v", over)
	}
	_, _, err = springs.StandardWireGauge.Nearest(20 * mm)
	refused(t, err, "runs from 0.0254 mm to 12.7 mm")
	_, _, err = springs.MusicWireGauge.Nearest(nan)
	refused(t, err, "runs from")
}

// TestNames: each of the named things has a name, and what is none says its number.
func TestNames(t *testing.T) {
	for _, tc := range []struct {
		got  []string
		none string
	}{
		{names(springs.WahlInside, springs.StandardInside, springs.NoCurvature, springs.CurvatureRule(9)), "CurvatureRule(9)"},
		{names(springs.Bergstraesser, springs.WahlShear, springs.DirectShear, springs.NoShear, springs.ShearRule(9)), "ShearRule(9)"},
		{names(springs.TheoryRate, springs.Allowance108, springs.Handbook4000, springs.RateConstant(9)), "RateConstant(9)"},
		{names(springs.Clamped, springs.Pinned, springs.Hooked, springs.OuterEnd(9)), "OuterEnd(9)"},
		{names(springs.PinnedByShape, springs.PinnedFiveQuarters, springs.PinnedUnincreased, springs.PinnedFactor(9)), "PinnedFactor(9)"},
		{names(springs.PlainEnds, springs.PlainGround, springs.SquaredEnds, springs.SquaredGround, springs.EndForm(9)), "EndForm(9)"},
		{names(springs.BothFlat, springs.FlatAndHinged, springs.BothHinged, springs.FlatAndFree, springs.Seating(9)), "Seating(9)"},
		{names(springs.Rising, springs.Straight, springs.Closing, springs.Regime(9)), "Regime(9)"},
		{names(springs.OtherFamily, springs.PatentedDrawn, springs.HardenedTempered, springs.Austenitic, springs.NonFerrous, springs.Family(9)), "Family(9)"},
		{names(springs.Handling, springs.OpeningBarrel, springs.Coiling, springs.Heating, springs.Work(9)), "Work(9)"},
		{names(springs.HelicalTorsion, springs.OpenSpiral, springs.PowerSpring, springs.HelicalCoil, springs.Form(9)), "Form(9)"},
		{names(springs.StandardWireGauge, springs.MusicWireGauge, springs.WashburnMoenGauge, springs.WireGauge(9)), "WireGauge(9)"},
		{names(springs.SteadyBending, springs.ExtensionHookBending, springs.Duty(99)), "Duty(99)"},
		{names(springs.StraightStrip(), springs.SlackOnWall(), springs.FreeTurns(-2), springs.FreeState{}), "not stated"},
		{names(wire(t, 1*mm), strip(t, 2*mm, 1*mm), springs.Section{}), "no section"},
	} {
		seen := map[string]bool{}
		for _, n := range tc.got {
			if n == "" || seen[n] {
				t.Errorf("%q: empty or twice", tc.got)
			}
			seen[n] = true
		}
		same(t, "the last", tc.got[len(tc.got)-1], tc.none)
	}
	for _, g := range springs.Grades() {
		back, err := springs.FindGrade(g.String())
		if err != nil || back != g {
			t.Errorf("%v: %v, %v", g, back, err)
		}
	}
	for f := springs.HelicalTorsion; f <= springs.HelicalCoil; f++ {
		s, err := springs.Accuracy(f)
		ok(t, err)
		if s.Text == "" || s.Source == "" {
			t.Errorf("%v: %+v", f, s)
		}
	}
	general := springs.Cautions(springs.Handling)
	for w := springs.Handling; w <= springs.Heating; w++ {
		c := springs.Cautions(w)
		if !strings.Contains(strings.Join(c, " "), general[0]) || w != springs.Handling && len(c) <= len(general) {
			t.Errorf("%v: %q", w, c)
		}
		c[0] = "spoilt" // a copy: the next caller is not to see it
	}
	same(t, "cautions after one caller changed his", springs.Cautions(springs.Handling)[0], general[0])
}

func names[T interface{ String() string }](things ...T) []string {
	var out []string
	for _, x := range things {
		out = append(out, x.String())
	}
	return out
}

// TestAdvice: what lies outside the usual ranges is said.
func TestAdvice(t *testing.T) {
	music := springs.MusicWireA228.Material()
	for _, tc := range []struct {
		spec  springs.TorsionSpec
		words string
	}{
		{springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 16 * mm, BodyTurns: 6, Material: music}, ""},
		{springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 6 * mm, BodyTurns: 6, Material: music}, "index 3.0: outside 4 to 20"},
		{springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 30 * mm, BodyTurns: 6, Material: music}, "index 15.0: above 12"},
		{springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 16 * mm, BodyTurns: 1.5, Material: music}, "1.50 body turns: below 2"},
		{springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 16 * mm, BodyTurns: 2.5, Material: music}, "fewer than 3"},
		{springs.TorsionSpec{Wire: wire(t, 25*mm), MeanDiameter: 160 * mm, BodyTurns: 5, Material: music}, "above 20 mm"},
	} {
		got := strings.Join(torsion(t, tc.spec).Advice(), "; ")
		if tc.words == "" && got != "" || !strings.Contains(got, tc.words) {
			t.Errorf("advice %q, want %q", got, tc.words)
		}
	}
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 16 * mm, BodyTurns: 6, Material: music})
	for preload, words := range map[units.Angle]string{0.1 * units.Turn: "a quarter to half a turn", 0.3 * units.Turn: "", 2 * units.Turn: "more than one and a half"} {
		r, err := springs.NewReturn(s, preload, 1)
		ok(t, err)
		got := strings.Join(r.Advice(), "; ")
		if words == "" && got != "" || !strings.Contains(got, words) {
			t.Errorf("preload %v: %q, want %q", preload, got, words)
		}
	}
	few := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Turns: 2.5, InnerDiameter: 20 * mm, OuterDiameter: 60 * mm, Material: springs.StripC67S.Material()})
	if got := strings.Join(few.Advice(), "; "); !strings.Contains(got, "2.5 coils: below 3") {
		t.Errorf("advice %q", got)
	}
	b := barrel(t, springs.BarrelSpec{Bore: 92 * mm, Arbor: 28 * mm, Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: springs.StraightStrip(), Material: springs.StripC67STypical.Material()})
	got := strings.Join(b.Advice(), "; ")
	for _, words := range []string{"arbor 46.7 times the strip", "fills 24 % of the room", "first coil bends to 4410 MPa"} {
		if !strings.Contains(got, words) {
			t.Errorf("advice %q, want %q", got, words)
		}
	}
}

func FuzzGaugeNumber(f *testing.F) {
	for _, s := range []string{"16", "7/0", "0000", " 0 ", "", "-1", "1/0/0", "١"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for _, g := range []springs.WireGauge{springs.StandardWireGauge, springs.MusicWireGauge, springs.WashburnMoenGauge} {
			d, err := g.Diameter(s)
			if (err == nil) != (d > 0) || err != nil && !errors.Is(err, units.ErrDomain) {
				t.Errorf("%v %q: %v, %v", g, s, d, err)
			}
		}
		if g, err := springs.FindGrade(s); err == nil && g.String() != s {
			t.Errorf("%q: %v", s, g)
		}
	})
}

// TestNoMaterial: the zero Material answers every question with an error or nothing.
func TestNoMaterial(t *testing.T) {
	var m springs.Material
	same(t, "name", m.String()+m.ModulusSource(), "")
	same(t, "family", m.Family(), springs.OtherFamily)
	_, e := m.YoungsModulus(1 * mm)
	_, g := m.ShearModulus(1 * mm)
	_, rho := m.Density()
	_, s := m.Strength(1 * mm)
	_, a := m.Allowable(springs.SteadyBending, 1*mm)
	_, _, share := m.Share(springs.Bending100000)
	_, _, limit := m.ElasticLimit()
	for _, err := range []error{e, g, rho, s, a, share, limit} {
		refused(t, err, "on file")
	}
}
