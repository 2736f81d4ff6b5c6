package fits

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// integrate is Simpson's rule, for laws that come out of integrals.
func integrate(f func(float64) float64, a, b float64) float64 {
	const n = 2000
	h := (b - a) / n
	sum := f(a) + f(b)
	for i := 1; i < n; i++ {
		sum += f(a+float64(i)*h) * float64(2+2*(i%2))
	}
	return sum * h / 3
}

func collar() Collar {
	brass, _ := FindMaterial("brass", "")
	return Collar{Bore: mm(25.5), Wall: mm(2.5), Length: mm(22), Slot: mm(1.6), Material: brass}
}

// The slot: circumference against clearance.
func TestSlot(t *testing.T) {
	c, err := NewClamp(collar())
	if err != nil {
		t.Fatal(err)
	}
	g, err := SlotNeeded(mm(25.5), mm(25.4))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "slot for 0.1 mm", g.Millimetres(), math.Pi*0.1, 1e-9)
	figures.Near(t, "reach", c.Reach().Millimetres(), 1.6/math.Pi, 1e-9)
	figures.Near(t, "least", c.Least().Millimetres(), 25.5-1.6/math.Pi, 1e-9)
	g, err = SlotNeeded(mm(25.5), c.Least())
	figures.Near(t, "there and back", g.Millimetres(), 1.6, 1e-9)
	if err != nil {
		t.Error(err)
	}
}

// The thin ring by energy: the moment at θ from the slot is P r (1 − cos θ); the slot
// closes by the integral of M ∂M/∂P r dθ/(E I), and the greatest moment is at the back.
func TestClampBending(t *testing.T) {
	c, err := NewClamp(collar())
	if err != nil {
		t.Fatal(err)
	}
	on, err := c.On(mm(25.3))
	if err != nil {
		t.Fatal(err)
	}
	k := collar()
	r, i := (k.Bore+k.Wall).Metres()/2, k.Length.Metres()*math.Pow(k.Wall.Metres(), 3)/12
	moment := func(th float64) float64 { return float64(on.Force) * r * (1 - math.Cos(th)) }
	closing := integrate(func(th float64) float64 {
		return moment(th) * r * (1 - math.Cos(th)) * r / (float64(k.Material.Modulus) * i)
	}, 0, 2*math.Pi)
	figures.Near(t, "closing, mm", closing*1000, math.Pi*0.2, 1e-9)
	figures.Near(t, "slot, mm", on.Slot.Millimetres(), math.Pi*0.2, 1e-9)
	figures.Near(t, "left, mm", on.SlotLeft.Millimetres(), 1.6-math.Pi*0.2, 1e-9)
	figures.Near(t, "stress, MPa", on.Bending.Megapascals(), moment(math.Pi)*k.Wall.Metres()/(2*i)/1e6, 1e-6)
	figures.Near(t, "stress, closed form", on.Bending.Megapascals(), 4*110e3*2.5*0.2/(3*28*28), 1e-6)
	m, err := c.Margin(mm(25.3))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "margin", m, 434/on.Bending.Megapascals(), 1e-9)
	if on, err := c.On(mm(25.5)); err != nil || on.Force != 0 || on.Bending != 0 {
		t.Errorf("a spigot of the bore: %+v, %v", on, err)
	}
}

// Friction round the shaft for the three spreads of pressure: the torque is the
// integral of μ p r, the force that of p cos θ over each half.
func TestClampHold(t *testing.T) {
	const mu, f = 0.1, 1000.0
	d := mm(25)
	h, err := ClampHold(f, d, mu)
	if err != nil {
		t.Fatal(err)
	}
	factor := func(p func(float64) float64) float64 {
		friction := integrate(func(th float64) float64 { return p(th) }, -math.Pi/2, math.Pi/2)
		force := integrate(func(th float64) float64 { return p(th) * math.Cos(th) }, -math.Pi/2, math.Pi/2)
		return friction / force // M/(μ F d)
	}
	even := factor(func(float64) float64 { return 1 })
	cosine := factor(math.Cos)
	figures.Near(t, "high", h.TorqueHigh.NewtonMetres(), even*mu*f*0.025, 1e-9)
	figures.Near(t, "low", h.TorqueLow.NewtonMetres(), mu*f*0.025, 1e-12)
	figures.Near(t, "cosine lies between", cosine, 4/math.Pi, 1e-9)
	if ratio := float64(h.TorqueHigh / h.TorqueLow); math.Abs(ratio-1.57) > 0.005 {
		t.Errorf("ratio %g", ratio)
	}
	figures.Near(t, "axial low", h.AxialLow.Newtons(), 2*h.TorqueLow.NewtonMetres()/0.025, 1e-9)
	figures.Near(t, "axial high", h.AxialHigh.Newtons(), 2*h.TorqueHigh.NewtonMetres()/0.025, 1e-9)

	// A thin band: hoop tension F makes p = 2F/(d L), and μ p round the whole makes π μ F d.
	band, err := ClampHold(BandForce(f), d, mu)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "band", band.TorqueHigh.NewtonMetres(), math.Pi*mu*f*0.025, 1e-9)
	hinged, err := HingedForce(f, mm(20), mm(10))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "hinged", hinged.Newtons(), 3000, 1e-9)
}

func TestClampErrors(t *testing.T) {
	nan, inf := units.Length(math.NaN()), units.Length(math.Inf(1))
	for _, tc := range []struct {
		spoil func(*Collar)
		says  string
	}{
		{func(c *Collar) { c.Bore = 0 }, "bore"}, {func(c *Collar) { c.Wall = nan }, "wall"}, {func(c *Collar) { c.Length = inf }, "length"}, {func(c *Collar) { c.Slot = -1 }, "slot"},
		{func(c *Collar) { c.Slot = mm(30) }, "less than the bore"}, {func(c *Collar) { c.Wall = mm(9) }, "a third of the bore"}, {func(c *Collar) { c.Material = Material{Name: "wood"} }, "modulus of wood"},
	} {
		c := collar()
		tc.spoil(&c)
		if _, err := NewClamp(c); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%+v: %v, want %q", c, err, tc.says)
		}
	}
	c, _ := NewClamp(collar())
	soft := collar()
	soft.Material.Yield = 0
	s, _ := NewClamp(soft)
	for _, err := range []error{
		second(c.On(mm(26))), second(c.On(mm(24))), second(c.On(0)), second(c.Margin(mm(26))), second(s.Margin(mm(25.4))), second(SlotNeeded(inf, mm(1))),
		second(ClampHold(0, mm(1), 0.1)), second(ClampHold(1, 0, 0.1)), second(ClampHold(1, mm(1), 0)), second(ClampHold(1, mm(1), math.NaN())),
		second(HingedForce(1, 0, mm(1))), second(HingedForce(1, mm(1), inf)),
	} {
		if !errors.Is(err, units.ErrDomain) {
			t.Error(err)
		}
	}
}
