package units

import (
	"fmt"
	"math"
	"math/rand/v2"

	"gonum.org/v1/gonum/stat/distuv"
)

// A Distribution says what is known of a quantity: which values it may have
// and how likely each is. Make one with Normal, StudentT, Rectangular,
// Triangular, Trapezoidal, Arcsine or CurvilinearTrapezoid. Its limits and its
// parameters are checked where it is used.
//
// Source: JCGM 101:2008, 6.4.
type Distribution[Q Quantity] struct{ distribution }

// A distribution is a Distribution in SI units.
type distribution interface {
	mean() float64
	std() float64 // what the law of propagation takes
	dof() float64 // 0 for infinite
	check(k *kind) error
	draw(rnd *rand.Rand) float64
}

// Normal is the distribution of a quantity of which an estimate and a
// standard uncertainty are known: a calibration certificate, the sum of many
// small influences.
//
// Source: JCGM 101:2008, 6.4.7.
func Normal[Q Quantity](mean, std Q) Distribution[Q] {
	return Distribution[Q]{normal{float64(mean), float64(std)}}
}

// StudentT is the scaled and shifted t-distribution with dof degrees of
// freedom, for the mean of repeated readings: scale is the standard deviation
// of the mean. Its spread is larger than scale, by √(dof/(dof − 2)); the law
// of propagation takes scale itself, with its degrees of freedom.
//
// Source: JCGM 101:2008, 6.4.9.
func StudentT[Q Quantity](mean, scale Q, dof float64) Distribution[Q] {
	return Distribution[Q]{studentT{normal{float64(mean), float64(scale)}, dof}}
}

// Rectangular is the distribution of a quantity that surely lies from low to
// high, with nothing more known: u = (high − low)/√12.
//
// Source: JCGM 101:2008, 6.4.2.
func Rectangular[Q Quantity](low, high Q) Distribution[Q] {
	return Distribution[Q]{trapezoid{limits{float64(low), float64(high)}, 1}}
}

// Triangular is the distribution of a quantity that lies from low to high and
// more likely in the middle: u = (high − low)/√24. The sum of two equal
// rectangular quantities has it.
//
// Source: JCGM 101:2008, 6.4.5.
func Triangular[Q Quantity](low, high Q) Distribution[Q] {
	return Distribution[Q]{trapezoid{limits{float64(low), float64(high)}, 0}}
}

// Trapezoidal is the distribution of a quantity that lies from low to high,
// alike over the middle part beta of that width (0 makes a triangle, 1 a
// rectangle) and falling off evenly to both ends: u = (high − low)
// √((1 + β²)/24). The sum of two rectangular quantities of half-widths a > b
// has it, with β = (a − b)/(a + b).
//
// Source: JCGM 101:2008, 6.4.4.
func Trapezoidal[Q Quantity](low, high Q, beta float64) Distribution[Q] {
	return Distribution[Q]{trapezoid{limits{float64(low), float64(high)}, beta}}
}

// Arcsine is the distribution of a quantity that swings evenly between low and
// high, such as the room temperature under a thermostat or the run-out of a
// wheel: u = (high − low)/√8.
//
// Source: JCGM 101:2008, 6.4.6.
func Arcsine[Q Quantity](low, high Q) Distribution[Q] {
	return Distribution[Q]{arcsine{limits{float64(low), float64(high)}}}
}

// CurvilinearTrapezoid is the distribution of a quantity that lies from low
// to high where the limits themselves are known only to ± inexact:
// u = √((high − low)²/12 + inexact²/9).
//
// Source: JCGM 101:2008, 6.4.3.
func CurvilinearTrapezoid[Q Quantity](low, high, inexact Q) Distribution[Q] {
	return Distribution[Q]{curvilinear{limits{float64(low), float64(high)}, float64(inexact)}}
}

// Mean returns the expectation of d.
func (d Distribution[Q]) Mean() Q { return d.Reading().Value }

// Std returns the standard uncertainty that the law of propagation takes for
// d.
func (d Distribution[Q]) Std() Q { return d.Reading().Std }

// Reading returns what the law of propagation takes for d: its expectation,
// its standard uncertainty and its degrees of freedom.
func (d Distribution[Q]) Reading() Reading[Q] {
	if d.distribution == nil {
		return Reading[Q]{}
	}
	return Reading[Q]{Q(d.distribution.mean()), Q(d.distribution.std()), d.distribution.dof()}
}

type normal struct{ mu, sigma float64 }

func (d normal) mean() float64               { return d.mu }
func (d normal) std() float64                { return d.sigma }
func (d normal) dof() float64                { return 0 }
func (d normal) draw(rnd *rand.Rand) float64 { return d.mu + d.sigma*rnd.NormFloat64() }

func (d normal) check(k *kind) error {
	switch {
	case math.IsNaN(d.mu) || math.IsInf(d.mu, 0):
		return fmt.Errorf("estimate %g: %w", d.mu, ErrNotFinite)
	case math.IsNaN(d.sigma) || math.IsInf(d.sigma, 0):
		return fmt.Errorf("standard uncertainty %g: %w", d.sigma, ErrNotFinite)
	case !(d.sigma >= 0):
		return fmt.Errorf("standard uncertainty %s: want 0 or more: %w", k.differenceKind().string(d.sigma), ErrDomain)
	}
	return nil
}

type studentT struct {
	normal
	nu float64
}

func (d studentT) dof() float64 { return d.nu }

func (d studentT) draw(rnd *rand.Rand) float64 {
	chi := distuv.ChiSquared{K: d.nu, Src: rnd}.Rand()
	return d.mu + d.sigma*rnd.NormFloat64()*math.Sqrt(d.nu/chi)
}

func (d studentT) check(k *kind) error {
	if !(d.nu > 0) || math.IsInf(d.nu, 0) {
		return fmt.Errorf("%g degrees of freedom: want more than 0: %w", d.nu, ErrDomain)
	}
	return d.normal.check(k)
}

// limits is what the distributions between two limits share.
type limits struct{ low, high float64 }

func (l limits) mean() float64  { return l.low + (l.high-l.low)/2 }
func (l limits) width() float64 { return l.high - l.low }
func (l limits) dof() float64   { return 0 }

func (l limits) check(k *kind) error {
	switch {
	case math.IsNaN(l.low) || math.IsInf(l.low, 0) || math.IsNaN(l.high) || math.IsInf(l.high, 0) || math.IsInf(l.width(), 0):
		return fmt.Errorf("limits %g and %g: %w", l.low, l.high, ErrNotFinite)
	case !(l.low <= l.high):
		return fmt.Errorf("limits %s and %s: want the lower one first: %w", k.string(l.low), k.string(l.high), ErrDomain)
	}
	return nil
}

type trapezoid struct {
	limits
	beta float64
}

func (d trapezoid) std() float64 { return d.width() * math.Sqrt((1+d.beta*d.beta)/24) }

func (d trapezoid) draw(rnd *rand.Rand) float64 {
	return d.low + d.width()/2*((1+d.beta)*rnd.Float64()+(1-d.beta)*rnd.Float64())
}

func (d trapezoid) check(k *kind) error {
	if !(0 <= d.beta && d.beta <= 1) {
		return fmt.Errorf("flat part of the trapezoid %g: want 0 to 1: %w", d.beta, ErrDomain)
	}
	return d.limits.check(k)
}

type arcsine struct{ limits }

func (d arcsine) std() float64 { return d.width() / math.Sqrt(8) }

func (d arcsine) draw(rnd *rand.Rand) float64 {
	return d.mean() + d.width()/2*math.Sin(2*math.Pi*rnd.Float64())
}

type curvilinear struct {
	limits
	inexact float64
}

func (d curvilinear) std() float64 {
	return math.Sqrt(d.width()*d.width()/12 + d.inexact*d.inexact/9)
}

func (d curvilinear) draw(rnd *rand.Rand) float64 {
	low := d.low - d.inexact + 2*d.inexact*rnd.Float64()
	high := d.low + d.high - low // the limits move against each other: the middle stays
	return low + (high-low)*rnd.Float64()
}

func (d curvilinear) check(k *kind) error {
	if !(0 <= d.inexact && d.inexact <= d.width()/2) {
		return fmt.Errorf("limits known to ±%s: want 0 to half the width between them, %s: %w",
			k.differenceKind().string(d.inexact), k.differenceKind().string(d.width()/2), ErrDomain)
	}
	return d.limits.check(k)
}
