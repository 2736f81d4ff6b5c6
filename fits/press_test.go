package fits

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

func steelOf(e units.Pressure, nu float64) Material {
	return Material{Name: "steel", Modulus: e, Poisson: nu, Expansion: 11.7 * perMK, Yield: 250 * units.Megapascal}
}

const ugural = "Ugural and Fenster, Advanced Strength and Applied Elasticity, ex. 8.3 p. 243 (through a companion)"

func TestPressUgural(t *testing.T) {
	m := steelOf(200000*units.Megapascal, 0.3)
	j := Joint{Diameter: mm(400), Interference: mm(0.2), Length: mm(100), HubOutside: mm(500), ShaftBore: mm(300), Hub: m, Shaft: m}
	p, err := NewPress(j)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "12.3", Source: ugural}.Check(t, p.Pressure().Megapascals())
	// The book goes on with 12.3.
	j.Interference *= units.Length(12.3 * units.Megapascal / p.Pressure())
	if p, err = NewPress(j); err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "56.03", Source: ugural}.Check(t, p.HubHoop().Megapascals())
	figures.Figure{Printed: "43.73", Source: ugural}.Check(t, p.HubHoopOutside().Megapascals())
	figures.Figure{Printed: "-56.23", Source: ugural}.Check(t, p.ShaftHoopBore().Megapascals())
	figures.Figure{Printed: "-43.93", Source: ugural}.Check(t, p.ShaftHoop().Megapascals())
	const ex81 = "Ugural and Fenster, ex. 8.1 p. 239 (through a companion)"
	figures.Figure{Printed: "70", Source: ex81}.Check(t, 250/shape(0.2, 0.15))
	figures.Figure{Printed: "54.6875", Source: ex81}.Check(t, 250/(shape(0.2, 0.15)+1))
	if p.Joint() != j {
		t.Error("joint")
	}
}

func TestPressBhavikatti(t *testing.T) {
	m := steelOf(200000*units.Megapascal, 0.25)
	p, err := NewPress(Joint{Diameter: mm(250), Interference: mm(2 * 0.1), Length: mm(100), HubOutside: mm(300), ShaftBore: mm(200), Hub: m, Shaft: m})
	if err != nil {
		t.Fatal(err)
	}
	radial := 0.1 * 30 / p.Pressure().Megapascals() // for 30 MPa
	figures.Figure{Printed: "0.189", Source: "Bhavikatti, Strength of Materials, ex. 8.16 p. 348 (through a companion)"}.Check(t, radial)
}

func TestPressJunnarkar(t *testing.T) {
	const src = "Junnarkar, Mechanics of Structures, ch. 10 ex. 11 p. 404 (through a companion)"
	m := steelOf(30e6*units.PoundPerSquareInch, 0.3)
	j := Joint{Diameter: 10 * units.Inch, Interference: 5 * units.Thou, Length: units.Inch, HubOutside: 12 * units.Inch, ShaftBore: 6 * units.Inch, Hub: m, Shaft: m}
	p, err := NewPress(j)
	if err != nil {
		t.Fatal(err)
	}
	j.Interference *= units.Length(1500 * units.PoundPerSquareInch / p.Pressure())
	if p, err = NewPress(j); err != nil {
		t.Fatal(err)
	}
	psi := func(s units.Pressure) float64 { return float64(s / units.PoundPerSquareInch) }
	figures.Figure{Printed: "4687.5", Source: src}.Check(t, -psi(p.ShaftHoopBore()))
	figures.Figure{Printed: "3187.5", Source: src}.Check(t, -psi(p.ShaftHoop()))
	figures.Figure{Printed: "8318.2", Source: src}.Check(t, psi(p.HubHoop()))
	figures.Figure{Printed: "6818.2", Source: src}.Check(t, psi(p.HubHoopOutside()))
	bore := 12000 * shape(6, 3)
	figures.Figure{Printed: "20000", Source: src}.Check(t, bore)
	figures.Figure{Printed: "15312.5", Source: src}.Check(t, bore+psi(p.ShaftHoopBore()))
}

// Factor C of Machinery's Handbook is (ss − νs)/(sh + νh); with ν 1/3 for steel and
// 1/4 for cast iron it reproduces the printed factors. It is taken out of Pressure.
func TestHandbookFactor(t *testing.T) {
	const src = "Machinery's Handbook, 31st ed., pp. 644-645, shrinkage-fit factor C"
	for _, tc := range []struct {
		hub   float64 // D2/D1
		shaft float64 // D1/D0, 0 for solid
		nu    float64
		c     string
	}{
		{1.5, 0, 1.0 / 3, "0.227"}, {1.8, 0, 1.0 / 3, "0.299"}, {2, 0, 1.0 / 3, "0.333"}, {3, 0, 1.0 / 3, "0.421"}, {4, 0, 1.0 / 3, "0.455"},
		{1.5, 0, 0.25, "0.234"}, {2, 0, 0.25, "0.348"}, {3, 0, 0.25, "0.444"},
		{1.5, 2, 1.0 / 3, "0.455"}, {2, 2, 1.0 / 3, "0.667"}, {2, 2.5, 1.0 / 3, "0.524"}, {1.5, 2, 0.25, "0.468"}, {3, 2.5, 0.25, "0.698"},
	} {
		d := mm(50)
		j := Joint{Diameter: d, Interference: mm(0.05), Length: d, HubOutside: d * units.Length(tc.hub),
			Hub: steelOf(200*units.Gigapascal, tc.nu), Shaft: steelOf(200*units.Gigapascal, 1.0/3)}
		if tc.shaft > 0 {
			j.ShaftBore = d / units.Length(tc.shaft)
		}
		p, err := NewPress(j)
		if err != nil {
			t.Fatal(err)
		}
		hub := shape(tc.hub, 1) + tc.nu
		c := 0.001*float64(200*units.Gigapascal/p.Pressure())/hub - 1
		figures.Figure{Printed: tc.c, Source: src}.Check(t, c)
	}
}

// Lamé from scratch: the growth of the hub's bore and the shrinking of the shaft by
// Hooke's law add up to the interference, whatever the materials.
func TestPressCompatibility(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, j := drawPress(t)
		pr := float64(p.Pressure())
		hub := (float64(p.HubHoop()) + j.Hub.Poisson*pr) / float64(j.Hub.Modulus) * float64(j.Diameter)
		shaft := (float64(p.ShaftHoop()) + j.Shaft.Poisson*pr) / float64(j.Shaft.Modulus) * float64(j.Diameter)
		near(t, "interference", hub-shaft, float64(j.Interference), 1e-9*float64(j.Interference))
		// Equilibrium: hoop stress times wall carries pressure times diameter; the stress
		// runs as A + B/r², so its mean is known from both ends.
		a := (float64(p.HubHoopOutside())*sq(j.HubOutside) - float64(p.HubHoop())*sq(j.Diameter)) / (sq(j.HubOutside) - sq(j.Diameter))
		b := (float64(p.HubHoop()) - a) * sq(j.Diameter) / 4
		r, R := float64(j.HubOutside)/2, float64(j.Diameter)/2
		carried := 2 * (a*(r-R) + b*(1/R-1/r))
		near(t, "equilibrium", carried/(pr*float64(j.Diameter)), 1, 1e-9)
		if p.ClosingIn() < 0 || j.ShaftBore > 0 && p.ClosingIn() > j.Interference*1.2 {
			t.Errorf("closes by %v of %v", p.ClosingIn(), j.Interference)
		}
		// The outside carries no pressure: its strain is its hoop stress over E.
		near(t, "hub growth", float64(p.HubGrowth()), float64(p.HubHoopOutside())/float64(j.Hub.Modulus)*float64(j.HubOutside), 1e-12)
		near(t, "bore in place", float64(p.BoreInPlace()+p.ClosingIn()), float64(j.ShaftBore), 1e-15)
		f, err := p.Force(0.12)
		if err != nil {
			t.Fatal(err)
		}
		m, _ := p.Torque(0.12)
		near(t, "torque over force", float64(m)/float64(f), float64(j.Diameter)/2, 1e-12)
		near(t, "force", float64(f), 0.12*pr*math.Pi*float64(j.Diameter)*float64(j.Length), 1e-9*float64(f))
	})
}

func sq(l units.Length) float64 { return float64(l) * float64(l) }

func drawPress(t *rapid.T) (Press, Joint) {
	d := mm(rapid.Float64Range(5, 150).Draw(t, "d"))
	j := Joint{
		Diameter: d, Interference: d * units.Length(rapid.Float64Range(0.0002, 0.003).Draw(t, "δ")), Length: d,
		HubOutside: d * units.Length(rapid.Float64Range(1.1, 4).Draw(t, "hub")),
		ShaftBore:  d * units.Length(rapid.Float64Range(0, 0.9).Draw(t, "bore")),
		Hub:        steelOf(units.Pressure(rapid.Float64Range(60, 210).Draw(t, "Eh"))*units.Gigapascal, rapid.Float64Range(0.2, 0.36).Draw(t, "νh")),
		Shaft:      steelOf(units.Pressure(rapid.Float64Range(60, 210).Draw(t, "Es"))*units.Gigapascal, rapid.Float64Range(0.2, 0.36).Draw(t, "νs")),
	}
	p, err := NewPress(j)
	if err != nil {
		t.Fatal(err)
	}
	return p, j
}

// Printed for one material: p = E δ (do² − d²)(d² − di²)/(2 d³ (do² − di²)).
func TestPressOneMaterial(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, j := drawPress(t)
		j.Shaft = j.Hub
		p, err := NewPress(j)
		if err != nil {
			t.Fatal(err)
		}
		do, d, di := sq(j.HubOutside), sq(j.Diameter), sq(j.ShaftBore)
		want := float64(j.Hub.Modulus) * float64(j.Interference) * (do - d) * (d - di) / (2 * d * float64(j.Diameter) * (do - di))
		near(t, "Shigley eq. 7-40", float64(p.Pressure())/want, 1, 1e-9)
	})
}

func TestPressMargins(t *testing.T) {
	iron, _ := FindMaterial("grey cast iron", "")
	steel, _ := FindMaterial("steel", "")
	j := Joint{Diameter: mm(30), Interference: mm(0.02), Length: mm(30), HubOutside: mm(60), Hub: iron, Shaft: steel}
	p, err := NewPress(j)
	if err != nil {
		t.Fatal(err)
	}
	m, err := p.HubMargin()
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "cast iron", m, 179/p.HubHoop().Megapascals(), 1e-9)
	s, err := p.ShaftMargin()
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "solid shaft", s, 250/p.Pressure().Megapascals(), 1e-9)
	j.Hub, j.Shaft = steel, iron
	j.ShaftBore = mm(20)
	if p, err = NewPress(j); err != nil {
		t.Fatal(err)
	}
	m, _ = p.HubMargin()
	limit := 250.0 * (60*60 - 30*30) / (2 * 60 * 60) // Tresca, in MPa
	figures.Near(t, "steel", m, limit/p.Pressure().Megapascals(), 1e-9)
	if _, err := p.ShaftMargin(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "grey cast iron") {
		t.Error(err)
	}
	j.Hub.Yield, j.Hub.Tensile = 0, 0
	if p, err = NewPress(j); err != nil {
		t.Fatal(err)
	}
	if _, err := p.HubMargin(); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

func TestPressHot(t *testing.T) {
	alu, _ := FindMaterial("cast aluminium", "")
	for _, name := range []string{"grey cast iron", "steel", "phosphor bronze"} {
		inner, err := FindMaterial(name, "")
		if err != nil {
			t.Fatal(err)
		}
		p, err := NewPress(Joint{Diameter: mm(38), Interference: mm(0.04), Length: mm(60), HubOutside: mm(60), ShaftBore: mm(28), Hub: alu, Shaft: inner})
		if err != nil {
			t.Fatal(err)
		}
		warm, err := p.At(units.Celsius(80))
		if err != nil {
			t.Fatal(err)
		}
		lost := p.Joint().Interference - warm.Joint().Interference
		figures.Near(t, name, lost.Millimetres(), 38*(22-inner.Expansion.MicrometresPerMetreKelvin())*60e-6, 1e-9)
		free, err := p.FreedAt()
		if err != nil {
			t.Fatal(err)
		}
		if _, err := p.At(free + 1); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "is loose in the cast aluminium hub") {
			t.Errorf("%s above %v: %v", name, free, err)
		}
		if _, err := p.At(free - 1); err != nil {
			t.Errorf("%s below %v: %v", name, free, err)
		}
		j := p.Joint()
		j.Hub.Expansion = 0
		cold, err := NewPress(j)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := cold.At(units.Celsius(80)); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "both known") {
			t.Error(err)
		}
		if _, err := cold.FreedAt(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "both known") {
			t.Error(err)
		}
		j = p.Joint()
		j.Hub, j.Shaft = inner, alu
		shrinks, err := NewPress(j)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := shrinks.FreedAt(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "grows faster") {
			t.Error(err)
		}
	}
}

func TestReam(t *testing.T) {
	iron, _ := FindMaterial("grey cast iron", "")
	bronze, _ := FindMaterial("phosphor bronze", "")
	p, err := NewPress(Joint{Diameter: mm(20.65), Interference: mm(0.04), Length: mm(31.75), HubOutside: mm(28.5), ShaftBore: mm(15.8), Hub: iron, Shaft: bronze})
	if err != nil {
		t.Fatal(err)
	}
	r, err := p.Ream(mm(15.862), Clearance{mm(0.012), mm(0.02)})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "min", r.Min.Millimetres(), 15.874, 1e-9)
	figures.Near(t, "max", r.Max.Millimetres(), 15.882, 1e-9)
	figures.Near(t, "least", float64(r.Least), float64(r.Min-p.BoreInPlace()), 1e-15)
	if !(p.ClosingIn() > 0 && p.ClosingIn() < mm(0.04)) {
		t.Error(p.ClosingIn())
	}
	solid := p.Joint()
	solid.ShaftBore = 0
	s, err := NewPress(solid)
	if err != nil || s.ClosingIn() != 0 {
		t.Fatal(err, s.ClosingIn())
	}
	for _, err := range []error{
		second(s.Ream(mm(16), Clearance{1e-5, 2e-5})), second(p.Ream(0, Clearance{1e-5, 2e-5})), second(p.Ream(mm(16), Clearance{})), second(p.Ream(mm(16), Clearance{2e-5, 1e-5})),
	} {
		if !errors.Is(err, units.ErrDomain) {
			t.Error(err)
		}
	}
}

func TestPressErrors(t *testing.T) {
	steel, _ := FindMaterial("steel", "")
	good := Joint{Diameter: mm(30), Interference: mm(0.03), Length: mm(30), HubOutside: mm(60), ShaftBore: mm(10), Hub: steel, Shaft: steel}
	nan := units.Length(math.NaN())
	for _, tc := range []struct {
		spoil func(*Joint)
		says  string
	}{
		{func(j *Joint) { j.Diameter = 0 }, "diameter"}, {func(j *Joint) { j.Diameter = nan }, "diameter"}, {func(j *Joint) { j.Interference = 0 }, "interference"},
		{func(j *Joint) { j.Interference = mm(1) }, "a hundredth"}, {func(j *Joint) { j.Length = -1 }, "length"}, {func(j *Joint) { j.HubOutside = mm(30) }, "outside of the hub"},
		{func(j *Joint) { j.HubOutside = units.Length(math.Inf(1)) }, "outside of the hub"}, {func(j *Joint) { j.ShaftBore = mm(30) }, "bore of the shaft"},
		{func(j *Joint) { j.ShaftBore = nan }, "bore of the shaft"}, {func(j *Joint) { j.Hub.Modulus = 0 }, "modulus"}, {func(j *Joint) { j.Shaft.Poisson = 0.6 }, "Poisson"},
	} {
		j := good
		tc.spoil(&j)
		if _, err := NewPress(j); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%+v: %v, want %q", j, err, tc.says)
		}
	}
	p, err := NewPress(good)
	if err != nil {
		t.Fatal(err)
	}
	for _, mu := range []float64{0, -1, 1.1, math.NaN()} {
		if _, err := p.Force(mu); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%g: %v", mu, err)
		}
		if _, err := p.Torque(mu); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%g: %v", mu, err)
		}
	}
}
