package gaussnewton_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/internal/gaussnewton"
)

// line is y = a + b t, whose answer is known in closed form.
func line(t, y []float64, u float64) gaussnewton.Model {
	return func(x, r, jac []float64) bool {
		for i := range t {
			r[i] = (x[0] + x[1]*t[i] - y[i]) / u
			jac[2*i], jac[2*i+1] = 1/u, t[i]/u
		}
		return true
	}
}

func TestStraightLine(t *testing.T) {
	ts, ys := []float64{0, 1, 2, 3, 4}, []float64{1.1, 2.9, 5.2, 6.8, 9.0}
	f, err := gaussnewton.Solve(5, []float64{0, 0}, line(ts, ys, 0.2))
	if err != nil {
		t.Fatal(err)
	}
	// Mean 2, Σ(t−2)² = 10, Σ(t−2)y = 19.7: b = 1.97, a = 5 − 3.94 = 1.06.
	figures.Near(t, "slope", f.X[1], 1.97, 1e-12)
	figures.Near(t, "at 0", f.X[0], 1.06, 1e-12)
	figures.Near(t, "variance of the slope, u²/Σ(t−2)²", f.Cov.At(1, 1), 0.04/10, 1e-14)
	figures.Near(t, "variance at 0, u²(1/5 + 4/10)", f.Cov.At(0, 0), 0.04*0.6, 1e-14)
	figures.Near(t, "covariance, −2u²/10", f.Cov.At(0, 1), -0.04*2/10, 1e-14)
	for i, want := range []float64{0.6, 0.3, 0.2, 0.3, 0.6} { // 1/5 + (t−2)²/10
		figures.Near(t, fmt.Sprintf("leverage %d", i), f.Leverage[i], want, 1e-12)
	}
}

// Source: NIST Statistical Reference Datasets, nonlinear regression, Misra1a
// (lower difficulty): y = b1(1 − exp(−b2 x)).
func TestMisra1a(t *testing.T) {
	const source = "NIST StRD, Misra1a, certified values (from memory)"
	xs := []float64{77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0}
	ys := []float64{10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78}
	model := func(b, r, jac []float64) bool {
		for i, x := range xs {
			e := math.Exp(-b[1] * x)
			r[i] = b[0]*(1-e) - ys[i]
			jac[2*i], jac[2*i+1] = 1-e, b[0]*x*e
		}
		return true
	}
	for _, start := range [][]float64{{500, 0.0001}, {250, 0.0005}} {
		f, err := gaussnewton.Solve(len(xs), start, model)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: "2.3894212918e2", Source: source}.Check(t, f.X[0])
		figures.Figure{Printed: "5.5015643181e-4", Source: source}.Check(t, f.X[1])
		figures.Figure{Printed: "1.2455138894e-1", Source: source}.Check(t, f.Sum)
		s := math.Sqrt(f.Sum / 12)
		figures.Figure{Printed: "2.7070075241e0", Source: source}.Check(t, s*math.Sqrt(f.Cov.At(0, 0)))
		figures.Figure{Printed: "7.2668688436e-6", Source: source}.Check(t, s*math.Sqrt(f.Cov.At(1, 1)))
	}
}

// The answer of a linear problem agrees with the normal equations, whatever
// the units of the unknowns.
func TestAgainstNormalEquations(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for _, unit := range []float64{1, 1e-6, 1e6} {
		const n, p = 12, 4
		a, b := mat.NewDense(n, p, nil), mat.NewVecDense(n, nil)
		for i := range n {
			for j := range p {
				a.Set(i, j, rng.NormFloat64()*math.Pow(unit, float64(j)/3))
			}
			b.SetVec(i, rng.NormFloat64())
		}
		f, err := gaussnewton.Solve(n, make([]float64, p), func(x, r, jac []float64) bool {
			var ax mat.VecDense
			ax.MulVec(a, mat.NewVecDense(p, x))
			for i := range n {
				r[i] = ax.AtVec(i) - b.AtVec(i)
				copy(jac[i*p:], a.RawRowView(i))
			}
			return true
		})
		if err != nil {
			t.Fatal(err)
		}
		var grad mat.VecDense // Jᵀr is 0 at the least sum
		grad.MulVec(a.T(), mat.NewVecDense(n, f.Residuals))
		var ata, id mat.Dense
		ata.Mul(a.T(), a)
		id.Mul(&ata, f.Cov)
		for j := range p {
			figures.Near(t, "gradient", grad.AtVec(j)/math.Sqrt(ata.At(j, j)), 0, 1e-9)
			for k := range p {
				want := 0.0
				if j == k {
					want = 1
				}
				figures.Near(t, "JᵀJ Cov", id.At(j, k)*math.Sqrt(ata.At(k, k)/ata.At(j, j)), want, 1e-9)
			}
		}
		total := 0.0
		for _, h := range f.Leverage {
			total += h
		}
		figures.Near(t, "sum of leverages, the number of unknowns", total, p, 1e-9)
	}
}

func TestRefusals(t *testing.T) {
	flat := func(x, r, jac []float64) bool {
		for i := range r {
			r[i] = x[0] - 1
			jac[2*i], jac[2*i+1] = 1, 0
		}
		return true
	}
	same := func(x, r, jac []float64) bool {
		for i := range r {
			r[i] = x[0] + x[1] - 1
			jac[2*i], jac[2*i+1] = 1, 1
		}
		return true
	}
	wrong := func(x, r, jac []float64) bool { // a Jacobian that leads uphill
		for i := range r {
			r[i] = math.Sqrt(1 + x[0]*x[0])
			jac[i] = -x[0] / r[i]
		}
		return true
	}
	never := func(x, r, jac []float64) bool { return false }
	for _, tc := range []struct {
		name  string
		n     int
		start []float64
		model gaussnewton.Model
		want  error
	}{
		{"no unknowns", 3, nil, flat, gaussnewton.ErrShape},
		{"too few readings", 1, []float64{0, 0}, flat, gaussnewton.ErrShape},
		{"an unknown that changes nothing", 4, []float64{0, 0}, flat, gaussnewton.ErrSingular},
		{"two unknowns that do the same", 4, []float64{0, 0}, same, gaussnewton.ErrSingular},
		{"no meaning at the start", 4, []float64{0}, never, gaussnewton.ErrNoConvergence},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if _, err := gaussnewton.Solve(tc.n, tc.start, tc.model); !errors.Is(err, tc.want) {
				t.Errorf("got %v, want %v", err, tc.want)
			}
		})
	}
	// With a wrong Jacobian no step helps; it must still come back.
	f, err := gaussnewton.Solve(3, []float64{1}, wrong)
	if err == nil && f.X[0] != 1 {
		t.Errorf("moved uphill to %v", f.X)
	}
}

// A model may refuse unknowns without meaning: here a root of a negative
// number, which a full first step would reach.
func TestStepIsHalvedBackIntoTheDomain(t *testing.T) {
	f, err := gaussnewton.Solve(1, []float64{0.01}, func(x, r, jac []float64) bool {
		if !(x[0] > 0) {
			return false
		}
		r[0], jac[0] = math.Log(x[0])-2, 1/x[0]
		return true
	})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "e²", f.X[0], math.Exp(2), 1e-8)
}

// The residuals x + 1 and λx² + x − 1 have their least sum at 0, where the plain
// step overshoots λ times as far to the other side: for λ below −1 it never ends.
//
// Source: K. Madsen, H. B. Nielsen and O. Tingleff, Methods for Non-Linear Least
// Squares Problems, 2nd edition, 2004, example 3.4 (from memory).
func TestStepsThatOvershoot(t *testing.T) {
	for _, lambda := range []float64{0.5, -0.9, -1.5, -3, -8} {
		f, err := gaussnewton.Solve(2, []float64{0.1}, func(x, r, jac []float64) bool {
			r[0], r[1] = x[0]+1, lambda*x[0]*x[0]+x[0]-1
			jac[0], jac[1] = 1, 2*lambda*x[0]+1
			return true
		})
		if err != nil {
			t.Fatalf("λ = %g: %v", lambda, err)
		}
		figures.Near(t, fmt.Sprintf("λ = %g", lambda), f.X[0], 0, 1e-5)
	}
}

func BenchmarkSolveLine40(b *testing.B) {
	ts, ys := make([]float64, 40), make([]float64, 40)
	for i := range ts {
		ts[i], ys[i] = float64(i), 3+2*float64(i)
	}
	model := line(ts, ys, 1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := gaussnewton.Solve(40, []float64{0, 0}, model); err != nil {
			b.Fatal(err)
		}
	}
}
