package root_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/internal/root"
)

func ExampleFind() {
	x, err := root.Find(func(x float64) float64 { return x*x - 2 }, 0, 2, 0)
	fmt.Printf("%.12f %v\n", x, err)
	// Output: 1.414213562373 <nil>
}

func TestFind(t *testing.T) {
	for _, tc := range []struct {
		name string
		f    func(float64) float64
		a, b float64
		want float64
	}{
		{"line", func(x float64) float64 { return 3 - x }, -10, 10, 3},
		{"cosine", math.Cos, 0, 3, math.Pi / 2},
		{"cosine, ends the other way about", math.Cos, 3, 0, math.Pi / 2},
		{"flat at the root", func(x float64) float64 { return math.Pow(x-1, 9) }, 0, 3, 1},
		{"steep at one end", func(x float64) float64 { return math.Exp(50*x) - 2 }, -1, 1, math.Ln2 / 50},
		{"jump", func(x float64) float64 { return math.Copysign(1, x-0.3) }, 0, 1, 0.3},
		{"pole", func(x float64) float64 { return 1 / (x - 0.7) }, 0, 1, 0.7},
		{"root at the left end", func(x float64) float64 { return x }, 0, 1, 0},
		{"root at the right end", func(x float64) float64 { return x - 1 }, 0, 1, 1},
		{"infinite at an end", func(x float64) float64 { return math.Log(x) }, 0, 5, 1},
		{"tiny values", func(x float64) float64 { return 1e-300 * (x - 0.1) }, 0, 1, 0.1},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got, err := root.Find(tc.f, tc.a, tc.b, 0)
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, "root", got, tc.want, math.Max(math.Abs(tc.a), math.Abs(tc.b))*0x1p-51)
		})
	}
}

func TestFind_refuses(t *testing.T) {
	nan := func(float64) float64 { return math.NaN() }
	for _, tc := range []struct {
		name string
		f    func(float64) float64
		a, b float64
		want error
		text string
	}{
		{"same sign", func(x float64) float64 { return x*x + 1 }, -1, 2, root.ErrBracket, "from -1 to 2: no change of sign between the ends"},
		{"not a number at an end", nan, 0, 1, root.ErrNaN, "from 0 to 1: the function is not a number there"},
		{"infinite end", func(x float64) float64 { return x }, math.Inf(-1), 1, root.ErrBracket, "from -Inf to 1: no change of sign between the ends"},
		{"end that is not a number", math.Cos, math.NaN(), 1, root.ErrNaN, "from NaN to 1: the function is not a number there"},
		{"hole in the middle", func(x float64) float64 {
			if x > 0.2 && x < 0.8 {
				return math.NaN()
			}
			return x - 0.5
		}, 0, 1, root.ErrNaN, "at 0.5: the function is not a number there"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := root.Find(tc.f, tc.a, tc.b, 0)
			if !errors.Is(err, tc.want) {
				t.Fatalf("got %v, want %v", err, tc.want)
			}
			if err.Error() != tc.text {
				t.Errorf("got %q, want %q", err, tc.text)
			}
		})
	}
}

// A NaN or negative tolerance asks for the finest answer, no more.
func TestFind_oddTolerance(t *testing.T) {
	for _, tol := range []float64{0, -1, math.NaN(), 1e-30} {
		got, err := root.Find(math.Cos, 0, 3, tol)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, fmt.Sprintf("root with tolerance %g", tol), got, math.Pi/2, 1e-15)
	}
}

// The method's promise: at most two evaluations more than bisection, plus the ends.
func TestFind_neverFarBeyondBisection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(0.001, 0.999).Draw(t, "root")
		power := rapid.SampledFrom([]float64{1, 3, 9, 21, 0.2}).Draw(t, "power")
		tol := math.Pow(10, -rapid.Float64Range(1, 12).Draw(t, "digits"))
		calls := 0
		got, err := root.Find(func(x float64) float64 {
			calls++
			return math.Copysign(math.Pow(math.Abs(x-at), power), x-at)
		}, 0, 1, tol)
		if err != nil {
			t.Fatal(err)
		}
		if !(math.Abs(got-at) <= tol) {
			t.Errorf("root %g, want %g within %g", got, at, tol)
		}
		if most := 2 + 2 + int(math.Ceil(math.Log2(1/tol))); calls > most {
			t.Errorf("%d calls, want at most %d", calls, most)
		}
	})
}

func TestFind_smoothIsQuick(t *testing.T) {
	calls := 0
	_, err := root.Find(func(x float64) float64 { calls++; return math.Cos(x) - x }, 0, 1, 1e-12)
	if err != nil {
		t.Fatal(err)
	}
	if calls > 15 {
		t.Errorf("%d calls for cos x = x to 1e-12, want 15 at most (bisection takes 42)", calls)
	}
}
