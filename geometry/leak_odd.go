package geometry

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/benchsums/units"
)

// An OddFill is a fill that does not go with the others.
type OddFill struct {
	Fill int          // which one, counted from 1
	Off  units.Volume // how far its run lies above the line through the others; below 0, under it
	Std  units.Volume // standard uncertainty of Off, as the others have it
}

// String names the fill and says how far it is off.
func (o OddFill) String() string {
	word := "more"
	if o.Off < 0 {
		word = "less"
	}
	return fmt.Sprintf("fill %d: %.1f cm³ %s than the others have it", o.Fill, math.Abs(o.Off.CubicCentimetres()), word)
}

// How a fill is judged: risk is that of naming one in a good set; a stated
// uncertainty counts with statedDoF degrees of freedom, ½(Δu/u)⁻² for one that is
// good to about a third (JCGM 100:2008, G.4.2).
const (
	oddRisk   = 0.005
	statedDoF = 4
	// leastScatter is the least that runs are taken to scatter, as a part of the
	// run, so that rounding in the sums is not taken for a slip.
	leastScatter = 1e-6
)

// odd returns the fill that lies furthest from the line through the others, if it
// does so by more than the largest of n good ones would. With e a residual and h
// its leverage, 1/n + (t − t̄)²/Σ(t − t̄)², the others lie about their own line
// with a sum of squares less by e²/(1 − h), and the fill lies e/(1 − h) off it.
func (l line) odd(fills []Fill, square, std float64) *OddFill {
	if l.n < 4 {
		return nil
	}
	worst, at := 0.0, OddFill{}
	dof := l.n - 3
	if std > 0 {
		dof += statedDoF
	}
	for i, f := range fills {
		t := f.After.Seconds() - l.t
		room := 1 - 1/l.n - t*t/l.tt
		if !(room > 1e-9) { // the others are all at one time
			continue
		}
		e := float64(f.Run) - l.at(f.After.Seconds())
		others := max(0, square-e*e/room)
		s := max(math.Sqrt((statedDoF*std*std+others)/dof), leastScatter*l.v) / math.Sqrt(room)
		if off := e / room; math.Abs(off) > worst*s {
			worst, at = math.Abs(off)/s, OddFill{i + 1, units.Volume(off), units.Volume(s)}
		}
	}
	if limit := (distuv.StudentsT{Sigma: 1, Nu: dof}).Quantile(1 - oddRisk/(2*l.n)); !(worst > limit) {
		return nil
	}
	return &at
}
