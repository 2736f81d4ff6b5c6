package geometry

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/units"
)

// A Fill is one filling of the combustion space from a burette: what was run in
// to reach the mark, and how long after the first drop the mark was reached.
type Fill struct {
	After time.Duration
	Run   units.Volume
}

// A Leak is the straight line through some fills against their times: what would
// have been run in had no time passed, and how fast the liquid creeps away past
// the rings.
type Leak struct {
	AtStart   units.Reading[units.Volume] // V₀, free of the leak
	Rate      units.Reading[units.Flow]   // q; less than 0 is no leak but a doubt
	Residuals []units.Volume              // each run less V₀ + q t, in the order given
	Scatter   units.Volume                // √(Σ residual² / (n − 2)); 0 for two fills
	Odd       *OddFill                    // the fill that stands out from the others; nil if none does
}

// FitLeak returns the least-squares line V = V₀ + q t through the fills. The slower
// a filling, the more has leaked by the time the mark is reached: the line carried
// back to no time at all leaves it out.
//
//	q = Σ(t − t̄)(V − V̄) / Σ(t − t̄)²,  V₀ = V̄ − q t̄
//	u²(V₀) = s²(1/n + t̄²/Σ(t − t̄)²),  u²(q) = s²/Σ(t − t̄)²
//
// Std is the standard uncertainty of one run, as the burette is read, or 0 if
// nothing is known of it; s is that or, with three fills or more, their scatter
// about the line where it is larger, √(Σ residual²/(n − 2)) with n − 2 degrees of
// freedom. Without std it takes three fills. Scatter much larger than std means
// bubbles, a wrong time or a slip; with four fills or more the one that stands out
// from the line through the others, if one does, is named in Odd. It is not left
// out: take it again, or leave it out yourself where you know what happened. Take
// fills at quite different speeds, for the line is carried far beyond the quickest
// of them.
//
// Petrol and paraffin are not for this: thin oil, away from flame, rings sealed
// with grease.
//
// The error is units.ErrDomain for too few fills, fills all at one time, a time
// less than 0, or a volume that is not more than 0.
//
// Source: D. C. Montgomery, E. A. Peck and G. G. Vining, Introduction to Linear
// Regression Analysis, chapter 2 (the line and its uncertainties) and chapter 4
// (a residual held against the line through the others), from memory.
func FitLeak(fills []Fill, std units.Volume) (Leak, error) {
	if err := checkFills(fills, std); err != nil {
		return Leak{}, err
	}
	l := lineThrough(fills)
	if !(l.tt > 0) {
		return Leak{}, fmt.Errorf("fills all at %v: want different times, the quickest and the slowest well apart: %w", fills[0].After, units.ErrDomain)
	}
	leak := Leak{Residuals: make([]units.Volume, len(fills))}
	var square float64
	for i, f := range fills {
		r := float64(f.Run) - l.at(f.After.Seconds())
		leak.Residuals[i] = units.Volume(r)
		square += r * r
	}
	s, dof := float64(std), 0.0
	if free := l.n - 2; free > 0 {
		leak.Scatter = units.Volume(math.Sqrt(square / free))
		if scatter := float64(leak.Scatter); scatter > s {
			s, dof = scatter, free
		}
		leak.Odd = l.odd(fills, square, float64(std))
	}
	leak.AtStart = units.Reading[units.Volume]{
		Value: units.Volume(l.at(0)),
		Std:   units.Volume(s * math.Sqrt(1/l.n+l.t*l.t/l.tt)),
		DoF:   dof,
	}
	leak.Rate = units.Reading[units.Flow]{Value: units.Flow(l.slope), Std: units.Flow(s / math.Sqrt(l.tt)), DoF: dof}
	return leak, nil
}

// A line is the least-squares line of run against seconds, about its middle.
type line struct{ n, t, v, tt, slope float64 } // count, means t̄ and V̄, Σ(t − t̄)², q

func (l line) at(t float64) float64 { return l.v + l.slope*(t-l.t) }

func lineThrough(fills []Fill) line {
	l := line{n: float64(len(fills))}
	for _, f := range fills {
		l.t += f.After.Seconds() / l.n
		l.v += float64(f.Run) / l.n
	}
	var tv float64
	for _, f := range fills {
		t := f.After.Seconds() - l.t
		l.tt += t * t
		tv += t * (float64(f.Run) - l.v)
	}
	l.slope = tv / l.tt
	return l
}

func checkFills(fills []Fill, std units.Volume) error {
	if !(std >= 0) || math.IsInf(float64(std), 0) {
		return fmt.Errorf("uncertainty of a run %v: want 0 or more: %w", std, units.ErrDomain)
	}
	least := 2
	if std == 0 {
		least = 3
	}
	if len(fills) < least {
		return fmt.Errorf("%d fills: want at least %d, at different speeds: %w", len(fills), least, units.ErrDomain)
	}
	for i, f := range fills {
		if !(f.After >= 0) || !(f.Run > 0) || math.IsInf(float64(f.Run), 0) {
			return fmt.Errorf("fill %d, %v after %v: want more than 0 cm³ and no time before the start: %w", i+1, f.Run, f.After, units.ErrDomain)
		}
	}
	return nil
}
