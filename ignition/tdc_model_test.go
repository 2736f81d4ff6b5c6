package ignition

import (
	"fmt"
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func modelSetup() Setup {
	const mm = units.Millimetre
	rim, _ := NewRim(356 * mm)
	return Setup{
		Stroke: units.WithStd(76*mm, 0.1*mm), Rod: units.WithStd(146*mm, 0.1*mm), Offset: units.WithStd(2*mm, 0.3*mm),
		Rim: rim, RimStd: 0.1 * mm, Figures: Rising, SettingStd: 0.3 * mm,
		Dial: MoreGoingDown, DialStd: 0.01 * mm, Lean: units.WithStd(12*units.Degree, units.Degree), ZeroStd: 0.02 * mm,
	}
}

// Every derivative of the model agrees with differences, at readings all round
// the top and for slack of every size, either sign.
func TestDerivativesOfTheModel(t *testing.T) {
	var points []dialPoint
	for i := -60; i <= 60; i++ {
		points = append(points, dialPoint{turned: 1 - 2*math.Abs(float64(i%2)), rim: 0.17 + 0.0021*float64(i), mounting: (i*i + i) % 3 / 2})
	}
	for _, slack := range []float64{1e-4, 5e-5, 1e-5, 2e-6, -3e-6, -1e-4} {
		t.Run(fmt.Sprint(slack), func(t *testing.T) {
			p := newProblem(modelSetup(), points, []string{"a", "b"}, 0.1703, 0.001)
			for i := range p.weights {
				p.weights[i] = 1
			}
			x := p.start()
			x[p.find(isSlack)] = slack
			n := len(x)
			jac, scratch := make([]float64, p.rows()*n), make([]float64, p.rows()*n)
			r, more, less := make([]float64, p.rows()), make([]float64, p.rows()), make([]float64, p.rows())
			if !p.residuals(x, r, jac) {
				t.Fatal("no model")
			}
			for j, u := range p.unknowns {
				h := 1e-7
				if u.what == isSlack || u.what == isTDC {
					h = 1e-9
				}
				at := func(step float64, r []float64) {
					moved := append([]float64(nil), x...)
					moved[j] += step
					if !p.residuals(moved, r, scratch) {
						t.Fatal("no model")
					}
				}
				at(h, more)
				at(-h, less)
				for i := range r {
					want := (more[i] - less[i]) / (2 * h)
					if got := jac[i*n+j]; !(math.Abs(got-want) <= 2e-5+1e-4*math.Abs(want)) {
						t.Errorf("%s, row %d: got %.8g, by differences %.8g", u.name, i, got, want)
					}
				}
			}
		})
	}
}

// Going up the piston is δ/2 below where the crank has it, going down δ/2 above,
// and between it rests: the model against a piston carried along between two
// limits.
func TestModelOfSlack(t *testing.T) {
	crank, err := modelSetup().crank()
	if err != nil {
		t.Fatal(err)
	}
	const slack = 1e-4
	for _, turned := range []float64{1, -1} {
		m := dialModel{tdc: 0.17, slack: slack, radius: 0.178, round: 1e-6, crank: crank}
		piston := math.Inf(1)
		for i := -4000; i <= 4000; i++ {
			rim := 0.17 + turned*3e-5*float64(i)
			x := float64(crank.Drop(units.Angle((rim - 0.17) / 0.178)))
			piston = math.Min(math.Max(piston, x-slack/2), x+slack/2)
			if got := m.at(rim, turned).down; !(math.Abs(got-piston) <= 1.1e-6) {
				t.Fatalf("rim %g, turned %g: got %.7f mm, carried along %.7f mm", rim, turned, 1e3*got, 1e3*piston)
			}
		}
	}
}

func TestUnwrap(t *testing.T) {
	for _, tc := range []struct{ in, want []float64 }{
		{[]float64{100, 300, 200}, []float64{100, 300, 200}},
		{[]float64{1000, 1100, 10, 60}, []float64{1000, 1100, 1128, 1178}},
		{[]float64{10, 1100}, []float64{10, -18}},
		{[]float64{-20, 40}, []float64{-20, 40}},
	} {
		got := append([]float64(nil), tc.in...)
		unwrap(got, 1118)
		for i := range got {
			figures.Near(t, fmt.Sprint(tc.in), got[i], tc.want[i], 1e-9)
		}
	}
}

func TestTransposed(t *testing.T) {
	got := fmt.Sprintf("%.2f", transposed(4.07*units.Millimetre, 0.01*units.Millimetre))
	if want := "[0.47 mm 4.70 mm]"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	if got := transposed(1e9*units.Metre, units.Micrometre); got != nil {
		t.Errorf("got %v for a figure of too many digits", got)
	}
}
