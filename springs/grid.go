package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Steps is a row of sizes: From, From + By, ... , Count of them.
type Steps struct {
	From, By units.Length
	Count    int
}

// At returns size i of the row.
func (s Steps) At(i int) units.Length { return s.From + units.Length(i)*s.By }

func (s Steps) check(what string) error {
	err := first(positive(what, s.From), notNegative("step", s.By))
	if err == nil && !(s.Count > 0 && s.Count <= 1<<20) {
		err = fmt.Errorf("%d sizes of %s: want 1 to %d: %w", s.Count, what, 1<<20, units.ErrDomain)
	}
	return err
}

// A BarrelGrid asks which of all combinations of thickness, width and length of a
// straight-line power spring do a job, and which of them takes least metal. Turns
// of wind are counted from the free state of the strip, as the straight-line law
// has them.
type BarrelGrid struct {
	Thickness, Width, Length Steps
	Bore, Arbor              units.Length
	YoungsModulus            units.Pressure
	Turns                    float64        // to be delivered, at least
	SetUp                    float64        // turns of wind, from free, at rest
	LeastTorque              units.Torque   // at SetUp
	Full                     float64        // turns of wind, from free, at full
	MostStress               units.Pressure // at Full
}

// A GridResult is what a BarrelGrid finds.
type GridResult struct {
	Count                    int // combinations that do
	Thickness, Width, Length int // places of the best in the three rows; −1 for none
	Volume                   units.Volume
}

// Search tries every combination. The width enters neither the turns nor the stress
// and the torque goes up with it evenly, so thickness and length alone are tried and
// the least width is found by a division: a hundred widths cost no more than one.
// Of combinations of the same least volume it returns the first, in the order of
// thickness, then width, then length. It allocates nothing. The error is
// units.ErrDomain for rows or figures that make no sense.
func (g BarrelGrid) Search() (GridResult, error) {
	best := GridResult{Thickness: -1, Width: -1, Length: -1, Volume: units.Volume(math.Inf(1))}
	if err := g.check(); err != nil {
		return GridResult{Thickness: -1, Width: -1, Length: -1}, err
	}
	for it := range g.Thickness.Count {
		t := float64(g.Thickness.At(it))
		// σ = π E t n/L ≤ σmax
		least := math.Pi * float64(g.YoungsModulus) * t * g.Full / float64(g.MostStress)
		for il := range g.Length.Count {
			l := float64(g.Length.At(il))
			if l < least || !g.delivers(t, l) {
				continue
			}
			ib := g.leastWidth(t, l)
			if ib == g.Width.Count {
				continue
			}
			best.Count += g.Width.Count - ib
			if v := t * float64(g.Width.At(ib)) * l; v < float64(best.Volume) || v == float64(best.Volume) && it == best.Thickness && ib < best.Width {
				best.Thickness, best.Width, best.Length, best.Volume = it, ib, il, units.Volume(v)
			}
		}
	}
	if best.Count == 0 {
		best.Volume = 0
	}
	return best, nil
}

func (g BarrelGrid) check() error {
	err := first(g.Thickness.check("thickness"), g.Width.check("width"), g.Length.check("length"), positive("arbor", g.Arbor), positive("bore beyond the arbor", g.Bore-g.Arbor),
		positive("Young's modulus", g.YoungsModulus), positive("turns", g.Turns), positive("turns of set-up", g.SetUp), notNegative("least torque", g.LeastTorque),
		positive("turns at full", g.Full), positive("most stress", g.MostStress))
	return err
}

// delivers reports whether the strip lies in the barrel and gives the turns.
func (g BarrelGrid) delivers(t, l float64) bool {
	d, a := float64(g.Bore), float64(g.Arbor)
	q := 4 / math.Pi * l * t
	if !(d*d > q) {
		return false
	}
	return math.Sqrt(a*a+q)+math.Sqrt(d*d-q)-(a+d) >= 2*t*g.Turns
}

// leastWidth returns the place of the first width with torque enough, or Count. The
// division may land a place off by rounding, which the torque itself puts right.
func (g BarrelGrid) leastWidth(t, l float64) int {
	perWidth := math.Pi / 6 * float64(g.YoungsModulus) * t * t * t / l * g.SetUp
	enough := func(i int) bool { return perWidth*float64(g.Width.At(i)) >= float64(g.LeastTorque) }
	n := g.Width.Count
	i := n
	if need := float64(g.LeastTorque) / perWidth; g.Width.By > 0 {
		i = int(math.Min(math.Max(math.Ceil((need-float64(g.Width.From))/float64(g.Width.By)), 0), float64(n)))
	} else if enough(0) {
		return 0
	}
	for i > 0 && enough(i-1) {
		i--
	}
	for i < n && !enough(i) {
		i++
	}
	return i
}
