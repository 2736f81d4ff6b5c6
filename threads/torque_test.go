package threads

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Shigley, 9th ed., Example 8-3, pp. 439-440: 3/4-16 UNF grade 5, 25 kip.
func TestTorqueAgainstShigley(t *testing.T) {
	const source = "Shigley, 9th ed., Example 8-3, pp. 439-440"
	th := mustFind(t, "3/4-16 UNF")
	preload := 25000 * units.PoundForce
	figures.Figure{Printed: "0.373", Source: source}.Check(t, float64(th.StressArea()/units.SquareInch))
	stress := units.Pressure(float64(preload) / (0.373 * float64(units.SquareInch))) // the book rounds the area first
	figures.Figure{Printed: "67.02", Source: source}.Check(t, stress.KilopoundsPerSquareInch())
	c, err := JointConstant(6.50e6*units.PoundForcePerInch, 13.8e6*units.PoundForcePerInch)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "0.320", Source: source}.Check(t, c)
	figures.Figure{Printed: "3750", Source: source + ", result from memory"}.Check(t, float64(th.TorqueByK(preload, ZincPlated.K())/units.PoundForceInch))
	f, err := NewFriction(0.15, 0.15, 0)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "3551", Source: source + ", result from memory"}.Check(t, float64(th.Torque(preload, f)/units.PoundForceInch))
	figures.Figure{Printed: "0.0280", Source: source + ", result from memory"}.Check(t, slopeOf(th))
}

// Shigley, 9th ed., Table 8-15.
func TestKAgainstShigley(t *testing.T) {
	for f, printed := range map[Finish]string{BlackFinish: "0.30", ZincPlated: "0.20", Lubricated: "0.18", CadmiumPlated: "0.16", AntiSeize: "0.12"} {
		figures.Figure{Printed: printed, Source: "Shigley, 9th ed., Table 8-15"}.Check(t, f.K())
		// Each stands for some friction, the same in thread and collar: 0.08 to 0.25.
		th := mustFind(t, "M10")
		lo, hi := 0.0, 0.9
		for range 60 {
			mid := (lo + hi) / 2
			if fr, _ := NewFriction(mid, mid, 0); th.NutFactor(fr) < f.K() {
				lo = mid
			} else {
				hi = mid
			}
		}
		if !(lo > 0.07 && lo < 0.25) {
			t.Errorf("K %v means a friction of %.3f", f.K(), lo)
		}
	}
	if Finish(99).K() != 0 {
		t.Error("K of no finish")
	}
}

// Ten lubricated bolts tightened to 90 N m: Shigley, 9th ed., Table 8-14.
func TestScatterOfPreload(t *testing.T) {
	const source = "Shigley, 9th ed., Table 8-14"
	kN := units.Kilonewton
	r, err := units.Repeats(30.3*kN, 32.5*kN, 32.5*kN, 32.9*kN, 32.9*kN, 33.8*kN, 34.3*kN, 34.7*kN, 37.4*kN, 40.5*kN)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "34.18", Source: source}.Check(t, r.Value.Kilonewtons())
	figures.Figure{Printed: "2.88", Source: source}.Check(t, r.Std.Kilonewtons()*math.Sqrt(10))
}

// The constants of the short form: VDI 2230 and ISO 16047 at 60°.
func TestShortTorque(t *testing.T) {
	one := func(form Form) (slope, thread float64) {
		th, err := New(form, 10*units.Millimetre, units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		none, _ := NewFriction(0, 0, 0)
		some, _ := NewFriction(0.1, 0, 0)
		s := float64(th.ShortTorque(units.Newton, none))
		return s / float64(th.Pitch()), (float64(th.ShortTorque(units.Newton, some)) - s) / 0.1 / float64(th.Effective())
	}
	slope, at60 := one(ISOForm)
	_, at55 := one(WhitworthForm)
	_, at47 := one(BAForm)
	const source = "VDI 2230 and ISO 16047, short form, as derived from Shigley, 9th ed., eq. 8-26"
	figures.Figure{Printed: "0.159", Source: source}.Check(t, slope)
	figures.Figure{Printed: "0.577", Source: source}.Check(t, at60)
	figures.Figure{Printed: "0.58", Source: "VDI 2230, from memory"}.Check(t, at60)
	figures.Figure{Printed: "0.5637", Source: source}.Check(t, at55)
	figures.Figure{Printed: "0.5463", Source: source}.Check(t, at47)
	f, _ := NewFriction(0.14, 0.14, 0)
	for th := range All() {
		full, short := th.Torque(units.Newton, f), th.ShortTorque(units.Newton, f)
		if share := float64(short / full); !(share > 0.989 && share < 1) {
			t.Errorf("%v: short form %.4f of the full one", th, share)
		}
	}
}

func TestTorqueGoesBothWays(t *testing.T) {
	f, err := NewFriction(0.12, 0.16, 13*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	for th := range All() {
		torque := th.Torque(1234*units.Newton, f)
		figures.Near(t, th.Designation(), float64(th.Preload(torque, f)), 1234, 1e-9)
		k, err := th.PreloadByK(th.TorqueByK(1234*units.Newton, 0.2), 0.2)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, th.Designation()+" by K", float64(k), 1234, 1e-9)
		figures.Near(t, th.Designation()+" K", float64(th.TorqueByK(1, th.NutFactor(f))), float64(th.Torque(1, f)), 1e-15)
		if loose := th.LooseningTorque(1234*units.Newton, f); !(loose > 0 && loose < torque) {
			t.Errorf("%v: loosens at %v, tightened at %v", th, loose, torque)
		}
	}
	// Without friction the work of a turn is the pull times the pitch, and the
	// bolt undoes itself.
	none, _ := NewFriction(0, 0, 0)
	th := mustFind(t, "M10")
	figures.Near(t, "work", float64(th.Torque(1000, none))*2*math.Pi, 1000*float64(th.Pitch()), 1e-12)
	figures.Near(t, "loosening", float64(th.LooseningTorque(1000, none)), -float64(th.Torque(1000, none)), 1e-12)
}

func TestPreloadFromReadings(t *testing.T) {
	th := mustFind(t, "M10")
	r := TighteningReadings{
		Torque:  units.WithStd(40*units.NewtonMetre, 1*units.NewtonMetre),
		Thread:  units.WithStd(0.14*units.One, 0.02*units.One),
		Bearing: units.WithStd(0.14*units.One, 0.02*units.One),
	}
	res, err := th.PreloadFrom(r)
	if err != nil {
		t.Fatal(err)
	}
	f, _ := NewFriction(0.14, 0.14, 0)
	nominal := th.Preload(r.Torque.Value, f)
	figures.Near(t, "preload", float64(res.Value/nominal), 1, 0.02)
	if share := float64(res.Std / res.Value); !(share > 0.08 && share < 0.12) {
		t.Errorf("friction known to 14 %% gives a preload known to %.0f %%", 100*share)
	}
	if name := res.Largest().Name; !strings.Contains(name, "friction") {
		t.Errorf("the largest share is of %s", name)
	}
	r.Thread.Value = 1.5
	if _, err := th.PreloadFrom(r); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "friction coefficient 1.5") {
		t.Error(err)
	}
	if _, err := (Thread{}).PreloadFrom(r); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

func TestTorqueRefuses(t *testing.T) {
	nan := math.NaN()
	for _, tc := range []struct {
		thread, bearing float64
		collar          units.Length
	}{{-0.1, 0.1, 0}, {0.1, 1, 0}, {nan, 0.1, 0}, {0.1, nan, 0}, {0.1, 0.1, -1}, {0.1, 0.1, units.Length(nan)}} {
		if _, err := NewFriction(tc.thread, tc.bearing, tc.collar); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v: %v", tc, err)
		}
	}
	th := mustFind(t, "M10")
	for _, k := range []float64{0, -1, nan, math.Inf(1)} {
		if _, err := th.PreloadByK(40, k); !errors.Is(err, units.ErrDomain) {
			t.Errorf("K %v: %v", k, err)
		}
	}
	if _, err := (Thread{}).PreloadByK(40, 0.2); !errors.Is(err, units.ErrDomain) {
		t.Error("no thread")
	}
	for _, s := range []units.Stiffness{0, -1, units.Stiffness(nan)} {
		if _, err := JointConstant(s, 1); !errors.Is(err, units.ErrDomain) {
			t.Errorf("stiffness %v: %v", s, err)
		}
	}
	var zero Thread
	f, _ := NewFriction(0.1, 0.1, 0)
	if zero.Torque(1, f) != 0 || zero.Preload(1, f) != 0 || zero.NutFactor(f) != 0 || zero.LooseningTorque(1, f) != 0 || zero.ShortTorque(1, f) != 0 {
		t.Error("the zero Thread has a torque")
	}
}

func slopeOf(th Thread) float64 {
	tan, _ := th.slopes()
	return tan
}
