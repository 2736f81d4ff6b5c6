package fits

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"pgregory.net/rapid"
)

func TestMain(m *testing.M) { figures.Main(m) }

// near is figures.Near for property tests, whose T is no testing.TB.
func near(t rapid.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.12g, want %.12g within %.3g", what, got, want, tol)
	}
}
