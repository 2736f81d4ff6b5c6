package geometry

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func TestFitLeak(t *testing.T) {
	fills := []Fill{{0, 50 * cc}, {10 * time.Second, 50.2 * cc}, {20 * time.Second, 50.4 * cc}}
	leak := must[Leak](t)(FitLeak(fills, 0.2*cc))
	figures.Near(t, "at the start, cm³", leak.AtStart.Value.CubicCentimetres(), 50, 1e-12)
	figures.Near(t, "its uncertainty, cm³", leak.AtStart.Std.CubicCentimetres(), 0.2*math.Sqrt(1.0/3+0.5), 1e-12)
	figures.Near(t, "rate, cm³/s", leak.Rate.Value.CubicCentimetresPerSecond(), 0.02, 1e-13)
	figures.Near(t, "its uncertainty, cm³/s", leak.Rate.Std.CubicCentimetresPerSecond(), 0.2/math.Sqrt(200), 1e-13)
	if leak.AtStart.DoF != 0 || leak.Rate.DoF != 0 {
		t.Errorf("degrees of freedom %g, %g: want 0, none counted, with a stated uncertainty", leak.AtStart.DoF, leak.Rate.DoF)
	}
	figures.Near(t, "scatter, cm³", leak.Scatter.CubicCentimetres(), 0, 1e-12)

	// The middle point 0.3 up: residuals −0.1, 0.2, −0.1; s = √(0.06/1).
	fills[1].Run += 0.3 * cc
	leak = must[Leak](t)(FitLeak(fills, 0))
	s := math.Sqrt(0.06)
	figures.Near(t, "at the start, cm³", leak.AtStart.Value.CubicCentimetres(), 50.1, 1e-12)
	figures.Near(t, "scatter, cm³", leak.Scatter.CubicCentimetres(), s, 1e-12)
	figures.Near(t, "uncertainty from the scatter, cm³", leak.AtStart.Std.CubicCentimetres(), s*math.Sqrt(1.0/3+0.5), 1e-12)
	figures.Near(t, "degrees of freedom", leak.AtStart.DoF, 1, 0)
	for i, want := range []float64{-0.1, 0.2, -0.1} {
		figures.Near(t, "residual, cm³", leak.Residuals[i].CubicCentimetres(), want, 1e-12)
	}

	two := must[Leak](t)(FitLeak(fills[1:], 0.2*cc))
	figures.Near(t, "scatter of two, cm³", float64(two.Scatter), 0, 0)
}

func TestFitLeak_refuses(t *testing.T) {
	ok := Fill{10 * time.Second, 50 * cc}
	for _, tc := range []struct {
		name  string
		fills []Fill
		std   units.Volume
		text  string
	}{
		{"none", nil, 0.2 * cc, "0 fills: want at least 2, at different speeds"},
		{"two without an uncertainty", []Fill{ok, ok}, 0, "2 fills: want at least 3, at different speeds"},
		{"all at one time", []Fill{ok, ok, ok}, 0, "fills all at 10s: want different times, the quickest and the slowest well apart"},
		{"before the start", []Fill{ok, {-time.Second, 50 * cc}}, 0.2 * cc, "fill 2, 50 cm³ after -1s: want more than 0 cm³ and no time before the start"},
		{"nothing run", []Fill{ok, {time.Second, 0}}, 0.2 * cc, "fill 2, 0 cm³ after 1s: want more than 0 cm³ and no time before the start"},
		{"uncertainty less than nothing", []Fill{ok, ok}, -cc, "uncertainty of a run -1 cm³: want 0 or more"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := FitLeak(tc.fills, tc.std)
			refuses(t, err, tc.text)
		})
	}
}

// creeping is four runs as oil creeps past the rings, and a slip among them.
func creeping() []Fill {
	return []Fill{{62 * time.Second, 75.6 * cc}, {48 * time.Second, 75.6 * cc}, {75 * time.Second, 75.9 * cc}, {110 * time.Second, 77.1 * cc}}
}

// A slip does not keep the small uncertainty of the burette, whether it is seen
// for what it is or not, and it is named where the others can tell.
func TestFitLeak_slip(t *testing.T) {
	good := must[Leak](t)(FitLeak(creeping(), 0.2*cc))
	if good.Odd != nil {
		t.Errorf("good fills: %v accused", good.Odd)
	}
	s := good.Scatter.CubicCentimetres() // a little more than stated
	if !(s > 0.2 && s < 0.25) || good.AtStart.DoF != 2 {
		t.Errorf("good fills: scatter %.3f cm³, %g degrees of freedom, want 0.20 to 0.25 and 2", s, good.AtStart.DoF)
	}
	figures.Near(t, "good fills: uncertainty, cm³", good.AtStart.Std.CubicCentimetres(), s*math.Sqrt(1/4.+73.75*73.75/2116.75), 1e-9)
	for _, after := range []time.Duration{40, 90, 150} {
		for _, std := range []units.Volume{0, 0.2 * cc} {
			leak := must[Leak](t)(FitLeak(append(creeping(), Fill{after * time.Second, 85.9 * cc}), std))
			if !(leak.AtStart.Std > 2.5*cc) || leak.AtStart.DoF != 3 {
				t.Errorf("after %d s, std %v: at the start %v with %g degrees of freedom, want u of more than 2.5 cm³ with 3", after, std, leak.AtStart, leak.AtStart.DoF)
			}
			if std > 0 && (leak.Odd == nil || leak.Odd.Fill != 5 || !(leak.Odd.Off > 6*cc)) {
				t.Errorf("after %d s, std %v: odd %v, want fill 5", after, std, leak.Odd)
			}
		}
	}
	// Of four, one stands out only by what is stated.
	four := append(creeping()[:3], Fill{110 * time.Second, 85.9 * cc})
	if leak := must[Leak](t)(FitLeak(four, 0.2*cc)); leak.Odd == nil || !(leak.AtStart.Std > 2*cc) {
		t.Errorf("four fills: odd %v, at the start %v", leak.Odd, leak.AtStart)
	}
	// Exactly on a line nothing is odd.
	exact := []Fill{{10 * time.Second, 50.1 * cc}, {20 * time.Second, 50.2 * cc}, {30 * time.Second, 50.3 * cc}, {50 * time.Second, 50.5 * cc}}
	if leak := must[Leak](t)(FitLeak(exact, 0)); leak.Odd != nil {
		t.Errorf("on a line: %v accused", leak.Odd)
	}
	// One fill alone tells the slope: nothing says what it should be.
	lone := []Fill{{10 * time.Second, 50 * cc}, {10 * time.Second, 50.1 * cc}, {10 * time.Second, 49.9 * cc}, {60 * time.Second, 80 * cc}}
	if leak := must[Leak](t)(FitLeak(lone, 0.1*cc)); leak.Odd != nil {
		t.Errorf("the only slow fill: %v accused", leak.Odd)
	}
	if got, want := (OddFill{2, -3.14 * cc, cc}).String(), "fill 2: 3.1 cm³ less than the others have it"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Good fills are seldom accused, and the interval holds the truth.
func TestFitLeak_goodFills(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 1927))
	const sets = 2000
	for _, std := range []units.Volume{0, 0.2 * cc} {
		for n := 3; n <= 8; n++ {
			accused, held := 0, 0
			k := [...]float64{distuv.UnitNormal.Quantile(0.975), distuv.StudentsT{Sigma: 1, Nu: float64(n - 2)}.Quantile(0.975)}
			for range sets {
				var fills []Fill
				for i := range n {
					at := time.Duration(40+80*i/n) * time.Second
					fills = append(fills, Fill{at, units.Volume(74+0.03*at.Seconds()+0.2*rng.NormFloat64()) * cc})
				}
				leak := must[Leak](t)(FitLeak(fills, std))
				if leak.Odd != nil {
					accused++
				}
				if math.Abs(float64(leak.AtStart.Value-74*cc)) <= k[int(min(1, leak.AtStart.DoF))]*float64(leak.AtStart.Std) {
					held++
				}
			}
			t.Logf("%d fills, std %v: %.2f %% accused, 95 %% interval holds %.1f %%", n, std, 100*float64(accused)/sets, 100*float64(held)/sets)
			if float64(accused) > 0.01*sets+4*math.Sqrt(0.01*sets) {
				t.Errorf("%d fills, std %v: %d of %d good sets accused", n, std, accused, sets)
			}
			if p := float64(held) / sets; p < 0.95-4*math.Sqrt(0.95*0.05/sets) {
				t.Errorf("%d fills, std %v: 95 %% interval holds %.1f %%", n, std, 100*p)
			}
		}
	}
}
