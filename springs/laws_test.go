package springs_test

import (
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// drawTorsion makes a torsion spring of any wire, size and constant.
func drawTorsion(r *rapid.T) springs.Torsion {
	d := units.Length(rapid.Float64Range(0.3, 6).Draw(r, "wire")) * mm
	section, _ := springs.RoundWire(d)
	if rapid.Bool().Draw(r, "flat") {
		section, _ = springs.RectangularWire(2*d, d)
	}
	constant := springs.RateConstant(rapid.IntRange(0, 1).Draw(r, "constant"))
	s, err := springs.NewTorsion(springs.TorsionSpec{
		Wire: section, MeanDiameter: d * units.Length(rapid.Float64Range(4, 20).Draw(r, "index")),
		BodyTurns: rapid.Float64Range(2, 30).Draw(r, "turns"),
		Legs:      [2]units.Length{units.Length(rapid.Float64Range(0, 60).Draw(r, "leg")) * mm, 10 * mm},
		Material:  springs.PatentedSM.Material(), Constant: constant,
	})
	if err != nil {
		r.Fatal(err)
	}
	return s
}

func TestTorsionLaws(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		s := drawTorsion(r)
		wind := units.Angle(rapid.Float64Range(0.01, 3).Draw(r, "wind")) * units.Turn
		m := s.Torque(wind)
		figures.Near(t, "angle of the torque", float64(s.Angle(m)/wind), 1, 1e-12)
		figures.Near(t, "torque of the stress", float64(s.TorqueAtStress(s.Stress(m))/m), 1, 1e-12)
		figures.Near(t, "stress opened", float64(s.Stress(-m)/s.Stress(m)), 1, 0)
		// the wire stays as long as it was
		n := s.BodyTurns() + s.BodyAngle(wind).Turns()
		figures.Near(t, "wire in the body", float64(s.MeanDiameterWound(wind))*n/(float64(s.MeanDiameter())*s.BodyTurns()), 1, 1e-12)
		if !(s.InsideDiameter(wind) < s.InsideDiameter(0) && s.BodyLength(wind) > s.BodyLength(0)) {
			t.Errorf("wound by %v the coil is no smaller or no longer", wind)
		}
		// gripping is clearance 0
		pin := units.Length(rapid.Float64Range(0.3, 0.99).Draw(r, "pin")) * s.InsideDiameter(0)
		figures.Near(t, "clearance at the grip", float64(s.PinClearance(pin, s.GripAngle(pin))), 0, 1e-12)
		figures.Near(t, "free bore on the free pin", float64(s.GripAngle(s.InsideDiameter(0))), 0, 1e-9)
		// area under the line, by the midpoint rule, which is exact for a line
		area := 0.0
		for i := range 10 {
			area += float64(s.Torque(wind*units.Angle(float64(i)+0.5)/10)) * float64(wind) / 10
		}
		figures.Near(t, "energy is the area", float64(s.Energy(wind))/area, 1, 1e-12)
	})
}

// TestHandbookBore: the difference is d n/(N + n), all turns in the body.
func TestHandbookBore(t *testing.T) {
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: springs.MusicWireA228.Material()})
	got := s.HandbookInsideDiameter(1.5*units.Turn) - s.InsideDiameter(1.5*units.Turn)
	figures.Near(t, "difference, mm", got.Millimetres(), 2*1.5/7.5, 1e-12)
}

// TestLongThinTorsion: a coil of great index under a torque is a straight beam under an
// even moment, θ = M L/(E I), and each leg a cantilever, M l/(3 E I) more.
func TestLongThinTorsion(t *testing.T) {
	const e = 200e3 * mpa
	const d, mean, turns = 1e-3, 0.5, 40.0
	inertia := math.Pi * d * d * d * d / 64
	spec := springs.TorsionSpec{Wire: wire(t, 1*mm), MeanDiameter: 500 * mm, BodyTurns: turns, Material: steel(t, e, 0)}
	s := torsion(t, spec)
	length := math.Pi * mean * turns
	figures.Near(t, "beam", float64(s.Angle(1)), length/(200e9*inertia), 1e-9*length/(200e9*inertia))
	figures.Near(t, "stress of a straight beam", float64(s.Stress(1))/(32/(math.Pi*d*d*d)), 1, 0.002)
	spec.Legs = [2]units.Length{300 * mm, 200 * mm}
	withLegs := torsion(t, spec)
	figures.Near(t, "cantilevers", float64(withLegs.Angle(1)-s.Angle(1)), 0.5/(3*200e9*inertia), 1e-9)
	flat := strip(t, 10*mm, 1*mm)
	b := torsion(t, springs.TorsionSpec{Wire: flat, MeanDiameter: 500 * mm, BodyTurns: turns, Material: steel(t, e, 0)})
	figures.Near(t, "flat beam", float64(b.Angle(1)), length/(200e9*0.01*1e-9/12), 1e-9*length/(200e9*0.01*1e-9/12))
	// a spiral without shape is the same beam
	sp := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 1 * mm, Length: units.Length(length), Material: steel(t, e, 0)})
	figures.Near(t, "spiral and coil", float64(sp.Rate()/b.Rate()), 1, 1e-12)
	figures.Near(t, "stress", float64(sp.Stress(1)), 6/(0.01*1e-6), 1e-3)
}

// TestBodyWithAGap: coils wound with a gap keep their length until they touch, and then
// grow by the wire a turn.
func TestBodyWithAGap(t *testing.T) {
	spec := springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Pitch: 2.4 * mm, Material: springs.MusicWireA228.Material()}
	s := torsion(t, spec)
	figures.Near(t, "free length, mm", s.BodyLength(0).Millimetres(), 2.4*6+2, 1e-12)
	figures.Near(t, "gap, mm", s.CoilGap(0).Millimetres(), 0.4, 1e-12)
	figures.Near(t, "after half a turn, mm", s.BodyLength(0.5*units.Turn).Millimetres(), 2.4*6+2, 1e-12)
	figures.Near(t, "gap, mm", s.CoilGap(0.5*units.Turn).Millimetres(), 2.4*6/6.5-2, 1e-12)
	touch := 2.4*6/2.0 - 6 // turns at which they touch
	figures.Near(t, "gap at the touch, mm", s.CoilGap(units.Angle(touch)*units.Turn).Millimetres(), 0, 1e-12)
	figures.Near(t, "length after two turns, mm", s.BodyLength(2*units.Turn).Millimetres(), 9*2, 1e-12)
	figures.Near(t, "wire, mm", s.WireLength().Millimetres(), math.Hypot(math.Pi*20*6, 2.4*6), 1e-9)
	spec.Pitch = 0
	spec.Legs = [2]units.Length{30 * mm, 10 * mm}
	close := torsion(t, spec)
	figures.Near(t, "gap of coils that touch", float64(close.CoilGap(1)), 0, 0)
	figures.Near(t, "wire with legs, mm", close.WireLength().Millimetres(), math.Hypot(math.Pi*20*6, 12)+40, 1e-9)
	// the root is π D N_b within half a per cent for an index of 4 and up
	figures.Near(t, "wire, roughly", (close.WireLength().Millimetres()-40)/(math.Pi*20*6), 1, 0.005)
	m, err := close.Mass()
	ok(t, err)
	figures.Near(t, "mass, g", m.Grams(), 7.85e-3*math.Pi*close.WireLength().Millimetres(), 1e-9)
	free, err := close.SurgeSpeed(false)
	ok(t, err)
	held, err := close.SurgeSpeed(true)
	ok(t, err)
	figures.Near(t, "held over free", float64(held/free), 2, 1e-12)
	least, most := close.Mandrel()
	if !(least < most && most < close.InsideDiameter(0)) {
		t.Errorf("mandrel %v to %v for a bore of %v", least, most, close.InsideDiameter(0))
	}
	figures.Near(t, "pin", float64(close.PinFor(1)/close.InsideDiameter(1)), 0.9, 1e-12)
	_, err = torsion(t, springs.TorsionSpec{Wire: wire(t, 1*mm), MeanDiameter: 10 * mm, BodyTurns: 6, Material: springs.PhosphorBronzeB159.Material()}).Mass()
	refused(t, err, "no density")
}

// TestTorsionSurge: the body as a shaft of equal stiffness and inertia, one end held, the
// other free: a quarter wave. With many lumps and springs the lowest frequency comes to it.
func TestTorsionSurge(t *testing.T) {
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 10, Material: springs.PatentedSM.Material()})
	m, err := s.Mass()
	ok(t, err)
	f, err := s.SurgeSpeed(false)
	ok(t, err)
	const lumps = 200
	j := float64(m) * 1e-4 / lumps // m D²/4 shared out
	k := float64(s.Rate()) * lumps
	// Rayleigh with the shape sin(π x/2l), which is the exact one
	top, bottom := 0.0, 0.0
	shape := func(i float64) float64 { return math.Sin(math.Pi / 2 * i / lumps) }
	for i := range lumps {
		d := shape(float64(i+1)) - shape(float64(i))
		mid := shape(float64(i) + 0.5)
		top, bottom = top+k*d*d, bottom+j*mid*mid
	}
	figures.Near(t, "hertz", f.RevolutionsPerSecond(), math.Sqrt(top/bottom)/(2*math.Pi), 2e-3*f.RevolutionsPerSecond())
}

// TestOpenHookIsABeam: a hook of great radius has the stress of a straight bar in
// bending and tension.
func TestOpenHookIsABeam(t *testing.T) {
	x, err := springs.NewExtension(springs.ExtensionSpec{Wire: wire(t, 1*mm), MeanDiameter: 10 * mm, BodyTurns: 10, HookRadius: 1e4 * mm, BendRadius: 1e4 * mm, Material: springs.PatentedSM.Material()})
	ok(t, err)
	bar := 16*0.01/(math.Pi*1e-9) + 4/(math.Pi*1e-6)
	figures.Near(t, "hook", float64(x.HookBending(1))/bar, 1, 1e-4)
	shear, err := x.HookTorsion(1)
	ok(t, err)
	figures.Near(t, "bend", float64(shear)/(8*0.01/(math.Pi*1e-9)), 1, 1e-4)
}

func TestCoilLaws(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		d := units.Length(rapid.Float64Range(0.3, 6).Draw(r, "wire")) * mm
		section, _ := springs.RoundWire(d)
		ends := springs.EndForm(rapid.IntRange(0, 3).Draw(r, "ends"))
		c, err := springs.NewCompression(springs.CompressionSpec{
			Wire: section, MeanDiameter: d * units.Length(rapid.Float64Range(4, 16).Draw(r, "index")), TotalTurns: rapid.Float64Range(3.5, 30).Draw(r, "turns"),
			Ends: ends, Material: springs.PatentedSM.Material(), Shear: springs.ShearRule(rapid.IntRange(0, 3).Draw(r, "rule")),
		})
		if err != nil {
			r.Fatal(err)
		}
		f := units.Force(rapid.Float64Range(0.1, 1e4).Draw(r, "force"))
		figures.Near(t, "deflection", float64(c.Force(c.Deflection(f))/f), 1, 1e-12)
		figures.Near(t, "stress", float64(c.ForceAtStress(c.Stress(f))/f), 1, 1e-12)
		figures.Near(t, "energy", float64(c.Energy(c.Deflection(f))), float64(f)*float64(c.Deflection(f))/2, 1e-9*float64(f)*float64(c.Deflection(f)))
		// Castigliano: half the torque along the wire, squared, over G J
		g, _ := c.Material().ShearModulus(d)
		moment := float64(f) * float64(c.MeanDiameter()) / 2
		j := math.Pi * math.Pow(float64(d), 4) / 32
		strain := moment * moment * math.Pi * float64(c.MeanDiameter()) * c.ActiveTurns() / (2 * float64(g) * j)
		figures.Near(t, "strain energy of twist", float64(c.Energy(c.Deflection(f)))/strain, 1, 1e-9)
	})
}

func TestExtensionLaws(t *testing.T) {
	x, err := springs.NewExtension(springs.ExtensionSpec{Wire: wire(t, 1*mm), MeanDiameter: 10 * mm, BodyTurns: 20, InitialTension: 3, Material: springs.PatentedSM.Material()})
	ok(t, err)
	figures.Near(t, "force at nothing", float64(x.Force(0)), 3, 0)
	y, err := x.Stretch(12)
	ok(t, err)
	figures.Near(t, "force at the stretch", float64(x.Force(y)), 12, 1e-12)
	figures.Near(t, "energy is the area", float64(x.Energy(y)), (3+12)/2.0*float64(y), 1e-12)
	figures.Near(t, "free length, mm", x.FreeLength().Millimetres(), 2*9+21, 1e-12)
	_, err = x.Stretch(2)
	refused(t, err, "initial tension that holds the coils shut")
	_, err = x.HookTorsion(5)
	refused(t, err, "BendRadius")
}

func TestSpiralLaws(t *testing.T) {
	s := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 0.8 * mm, Turns: 6, InnerDiameter: 16 * mm, OuterDiameter: 60 * mm, OuterEnd: springs.Pinned, Material: springs.StripC67S.Material()})
	figures.Near(t, "length of the turns", float64(s.Length()), float64(springs.SpiralLength(6, 16*mm, 60*mm)), 1e-15)
	figures.Near(t, "factor by shape", s.DeflectionFactor(), 1.25+(16.0/60)*(16.0/60)/4, 1e-12)
	turns, err := s.Turns()
	ok(t, err)
	again := spiral(t, springs.SpiralSpec{Width: 10 * mm, Thickness: 0.8 * mm, Length: s.Length(), InnerDiameter: 16 * mm, OuterDiameter: 60 * mm, Material: springs.StripC67S.Material()})
	back, err := again.Turns()
	ok(t, err)
	figures.Near(t, "turns of the length", back, turns, 1e-12)
	figures.Near(t, "clamped is stiffer by the factor", float64(again.Rate()/s.Rate()), s.DeflectionFactor(), 1e-12)
	// the gap free is the pitch less the strip, and 0 at the touch
	gap, err := s.CoilGap(0)
	ok(t, err)
	figures.Near(t, "free gap, mm", gap.Millimetres(), 22.0/6-0.8, 1e-9)
	touch, err := s.TouchAngle()
	ok(t, err)
	gap, err = s.CoilGap(touch)
	ok(t, err)
	figures.Near(t, "gap at the touch", float64(gap), 0, 1e-12)
	// energy, stress, torque to and fro
	m := s.Torque(1)
	figures.Near(t, "angle", float64(s.Angle(m)), 1, 1e-12)
	figures.Near(t, "torque of the stress", float64(s.TorqueAtStress(s.Stress(m))/m), 1, 1e-12)
	figures.Near(t, "energy", float64(s.Energy(1)), float64(m)/2, 1e-12)
	pull, err := s.SidePull(m)
	ok(t, err)
	if lever := float64(pull) * 0.030 / float64(m); !(lever >= 1 && lever < 1.1) {
		t.Errorf("side pull %v: %.3f times M/r, want 1 and a little more", pull, lever)
	}
	swing, err := s.Period(1 * units.KilogramSquareMetre)
	ok(t, err)
	figures.Near(t, "period, s", swing.Seconds(), 2*math.Pi/math.Sqrt(float64(s.Rate())), 2e-9)
	_, err = s.Period(1e30)
	refused(t, err, "a hundred years")
	_, err = s.CoilGap(-6 * units.Turn)
	refused(t, err, "opened by", "all its turns")
}

// TestSnapBack: the speed and time of a lever let go, against its motion followed in
// small steps.
func TestSnapBack(t *testing.T) {
	s := torsion(t, springs.TorsionSpec{Wire: wire(t, 2*mm), MeanDiameter: 20 * mm, BodyTurns: 6, Material: springs.MusicWireA228.Material()})
	const inertia = 2e-3 * units.KilogramSquareMetre
	for _, preload := range []units.Angle{0, 0.1, 1.5, 8} {
		r, err := springs.NewReturn(s, preload, 1.2)
		ok(t, err)
		speed, took, err := r.SnapBack(inertia)
		ok(t, err)
		const dt = 1e-6
		at, v, clock := 1.2, 0.0, 0.0
		for at > 0 {
			v += float64(r.Torque(units.Angle(at))) / float64(inertia) * dt
			at -= v * dt
			clock += dt
		}
		figures.Near(t, "speed", speed.RadiansPerSecond(), v, 1e-3*v)
		figures.Near(t, "time", took.Seconds(), clock, 1e-3*clock+2e-6)
		if took <= 0 || took > time.Second {
			t.Errorf("took %v", took)
		}
		// what it gives is the difference of what it holds
		figures.Near(t, "energy", float64(r.Energy()), float64(s.Energy(r.FullWind())-s.Energy(preload)), 1e-12)
		figures.Near(t, "stored", float64(r.Stored()), float64(s.Energy(r.FullWind())), 1e-12)
		figures.Near(t, "pull, N", float64(r.Pull(60*mm)), float64(r.AtFull())/0.06, 1e-12)
		figures.Near(t, "stress", float64(r.Stress()), float64(s.Stress(r.AtFull())), 1e-3)
	}
	preload, err := springs.PreloadFor(s, 0.5)
	ok(t, err)
	figures.Near(t, "torque at the preload", float64(s.Torque(preload)), 0.5, 1e-12)
}

// TestAnchorPin: equilibrium of the pin in its seat. The pressure goes on a straight
// line from the mouth inwards; its sum is the pull and its moment about the pull is 0.
func TestAnchorPin(t *testing.T) {
	p := springs.AnchorPin{Diameter: 5 * mm, Radius: 25 * mm, Seat: 12 * mm, Overhang: 4 * mm, Edge: 6 * mm}
	load, err := p.Load(3)
	ok(t, err)
	figures.Near(t, "force", float64(load.Force), 120, 1e-9)
	figures.Near(t, "mean pressure", float64(load.Bearing), 120/(5e-3*12e-3), 1e-3)
	mouth := float64(load.Tilt)
	foot := 2*float64(load.Bearing) - mouth // straight line with that mean
	sum, moment := 0.0, 0.0
	const n = 1000
	for i := range n {
		x := (float64(i) + 0.5) / n * 12e-3
		w := (mouth + (foot-mouth)*x/12e-3) * 5e-3 * 12e-3 / n
		sum, moment = sum+w, moment+w*(x+4e-3)
	}
	figures.Near(t, "sum of the pressure", sum, 120, 1e-9)
	figures.Near(t, "moment about the pull", moment, 0, 1e-5)
	figures.Near(t, "shear", float64(load.Shear), 120/(math.Pi/4*25e-6), 1e-3)
	figures.Near(t, "bending", float64(load.Bending), 120*4e-3/(math.Pi/32*125e-9), 1e-3)
	edge, err := p.EdgeFor(3, load.TearOut)
	ok(t, err)
	figures.Near(t, "edge", float64(edge), 6e-3, 1e-12)
	p.Edge = 0
	load, err = p.Load(3)
	ok(t, err)
	same(t, "tear-out without an edge", load.TearOut, 0)
}

func TestSlot(t *testing.T) {
	slot, err := springs.SlotFor(strip(t, 12*mm, 1*mm), 20*mm, 4*mm, 0.2*mm, 2)
	ok(t, err)
	figures.Near(t, "force", float64(slot.Force), 2/0.008, 1e-9)
	figures.Near(t, "torque back", float64(slot.Force)*0.008, 2, 1e-12)
	figures.Near(t, "bearing", float64(slot.Bearing), 250/(12e-3*4e-3), 1e-3)
	figures.Near(t, "tongue", float64(slot.Tongue), 6*250*2e-3/(12e-3*1e-6), 1)
	figures.Near(t, "width, mm", slot.Width.Millimetres(), 1.2, 1e-12)
	same(t, "bend", slot.BetterBend, 2*slot.LeastBend)
	_, err = springs.SlotFor(strip(t, 12*mm, 1*mm), 20*mm, 11*mm, 0, 2)
	refused(t, err, "metal beyond half the arbor")
}

// TestWorked: what the rope gets is the difference of the energies.
func TestWorked(t *testing.T) {
	b := barrel(t, springs.BarrelSpec{Bore: 92 * mm, Arbor: 28 * mm, Width: 12 * mm, Thickness: 0.6 * mm, Length: 2400 * mm, Free: springs.SlackOnWall(), Friction: 0.1, Material: springs.StripC67STypical.Material()})
	w, err := b.Worked(3, 4.5)
	ok(t, err)
	from, err := b.Energy(3)
	ok(t, err)
	to, err := b.Energy(7.5)
	ok(t, err)
	figures.Near(t, "over the rope", float64(w.OverRope), float64(to-from), 1e-12)
	figures.Near(t, "spare", w.Spare, b.Turns()-7.5, 1e-12)
	figures.Near(t, "stress", float64(w.Stress), float64(b.Stress(7.5)), 1e-6)
	if !(w.AtRest.Drive < w.AtRest.Mean && w.AtFull.Wind > w.AtFull.Mean) {
		t.Errorf("no band: %+v", w)
	}
	_, err = b.Worked(7, 4.5)
	refused(t, err, "too many")
	turns, err := springs.DrumTurns(1150*mm, 80*mm)
	ok(t, err)
	figures.Near(t, "turns of the rope", turns, 1150/(math.Pi*80), 1e-12)
}
