package fits

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/benchsums/units"
)

// A Part is a hole or a shaft that is already there: the least and the greatest
// diameter it was found to have, and how well that was measured. Least and Most
// are equal for a part that is round and parallel, or was measured in one place.
type Part struct {
	Least, Most units.Length
	Std         units.Length // standard uncertainty of either
	DoF         float64      // its degrees of freedom, 0 for an infinite number
}

// NewPart returns a part measured in one place. The error wraps units.ErrDomain
// for a size that is not more than 0 or an uncertainty that is less.
func NewPart(size units.Reading[units.Length]) (Part, error) {
	if err := checkReading(size); err != nil {
		return Part{}, err
	}
	return Part{size.Value, size.Value, size.Std, size.DoF}, nil
}

func checkReading(r units.Reading[units.Length]) error {
	if !(r.Value > 0) || math.IsInf(float64(r.Value), 0) {
		return fmt.Errorf("measured size %v: want more than 0 mm: %w", r.Value, units.ErrDomain)
	}
	if !(r.Std >= 0) || math.IsInf(float64(r.Std), 0) || !(r.DoF >= 0) {
		return fmt.Errorf("standard uncertainty %v with %g degrees of freedom: want 0 or more of each: %w", r.Std, r.DoF, units.ErrDomain)
	}
	return nil
}

// Form returns how much the part departs from round and parallel.
func (p Part) Form() units.Length { return p.Most - p.Least }

func (p Part) check() error {
	if !(p.Least <= p.Most) {
		return fmt.Errorf("part from %v to %v: want the lesser first: %w", p.Least, p.Most, units.ErrDomain)
	}
	if err := checkReading(units.Reading[units.Length]{Value: p.Least, Std: p.Std, DoF: p.DoF}); err != nil {
		return err
	}
	return checkReading(units.Exact(p.Most))
}

// Wanted returns the clearance that a fit of the standard has at a size, which
// need not be a nominal size of anything: Wanted(23.81*units.Millimetre, "H7/g6")
// for a sliding fit on a pin that is 23.81 mm. Errors as for Fit.
func Wanted(size units.Length, fit string) (Clearance, error) {
	m, err := Fit(size, fit)
	return m.Clearance(), err
}

// A Machining is a size to make a new part to, so that it fits one that is there.
type Machining struct {
	// Min and Max are the limits for the size as it will be measured on the new
	// part: measure within them and the clearance is as wanted.
	Min, Max units.Length
	// Target is the middle, to aim at.
	Target units.Length
	// Guard is what each limit was drawn in by, for the uncertainty of measuring both
	// parts: the coverage factor times the combined standard uncertainty.
	Guard units.Length
	// Form is what the old part takes away by being out of round or tapered.
	Form units.Length
	// Eaten is the share of the wanted range, 0 to 1, that Guard and Form take.
	Eaten float64
	// Warnings say in words what to look out for. There are none for most parts.
	Warnings []string
}

// Tolerance returns Max − Min, what is left for the machining.
func (m Machining) Tolerance() units.Length { return m.Max - m.Min }

// A NoRoomError says that measuring uncertainty and the form of the old part eat
// all of the wanted range, so that no size can be promised to fit.
type NoRoomError struct {
	Want   Clearance
	Guard  units.Length // at each end, for measuring
	Form   units.Length // out of round and taper of the old part
	Target units.Length // the size most likely to serve, to be tried in place
}

// Error says what eats the range and what to do.
func (e *NoRoomError) Error() string {
	return fmt.Sprintf("no size can be promised: the wanted range is %.4g µm wide, measuring takes %.4g µm and the form of the part %.4g µm: measure better, true the part, allow more, or fit by trial from %v",
		e.Want.Spread().Micrometres(), 2*e.Guard.Micrometres(), e.Form.Micrometres(), e.Target)
}

// Unwrap returns units.ErrDomain.
func (e *NoRoomError) Unwrap() error { return units.ErrDomain }

// ShaftFor returns the size to make a shaft to that goes into this hole with the
// wanted clearance, wherever in the hole and however the errors of measuring fall:
//
//	largest  = least hole    − least clearance    − g
//	smallest = greatest hole − greatest clearance + g,   g = k √(u² + v²)
//
// with u the uncertainty of the part, v that of measuring the new shaft (its
// standard uncertainty) and k the coverage factor for 95.45 %, 2 when the degrees
// of freedom are infinite. For interference give a negative clearance.
//
// The error is a *NoRoomError when nothing is left, or wraps units.ErrDomain for a
// range or an uncertainty that is none.
//
// Source: the guard band on both sides is the rule of ISO 14253-1 for proving
// conformity (from memory); coverage factor, JCGM 100:2008, G.
func (p Part) ShaftFor(want Clearance, measuring units.Length) (Machining, error) {
	return p.mate(want, measuring, p.Most-want.Max, p.Least-want.Min)
}

// HoleFor returns the size to make a hole to that takes this shaft with the wanted
// clearance:
//
//	smallest = greatest shaft + least clearance    + g
//	largest  = least shaft    + greatest clearance − g
//
// with g and errors as for ShaftFor.
func (p Part) HoleFor(want Clearance, measuring units.Length) (Machining, error) {
	return p.mate(want, measuring, p.Most+want.Min, p.Least+want.Max)
}

// mate draws the limits lo and hi in by the guard band.
func (p Part) mate(want Clearance, measuring, lo, hi units.Length) (Machining, error) {
	if err := p.check(); err != nil {
		return Machining{}, err
	}
	if err := want.check(); err != nil {
		return Machining{}, err
	}
	if !(measuring >= 0) || math.IsInf(float64(measuring), 0) {
		return Machining{}, fmt.Errorf("standard uncertainty %v of measuring the new part: want 0 mm or more: %w", measuring, units.ErrDomain)
	}
	u := units.Reading[units.Length]{Std: p.Std, DoF: p.DoF}.With(measuring)
	g := units.Length(coverage(u.DoF)) * u.Std
	m := Machining{Min: lo + g, Max: hi - g, Target: (lo + hi) / 2, Guard: g, Form: p.Form()}
	if !(m.Min <= m.Max) {
		return Machining{}, &NoRoomError{want, g, m.Form, m.Target}
	}
	if !(m.Min > 0) {
		return Machining{}, fmt.Errorf("the new part would come to %v: want a clearance smaller than the part: %w", m.Min, units.ErrDomain)
	}
	if want.Spread() > 0 {
		m.Eaten = float64((2*g + m.Form) / want.Spread())
	}
	m.warn(want)
	return m, nil
}

// warn puts into words what eats the tolerance.
func (m *Machining) warn(want Clearance) {
	add := func(format string, args ...any) { m.Warnings = append(m.Warnings, fmt.Sprintf(format, args...)) }
	if m.Eaten > 0.5 {
		add("measuring and form eat %.0f %% of the wanted range: %.4g µm of %.4g µm are left to machine to", 100*m.Eaten, m.Tolerance().Micrometres(), want.Spread().Micrometres())
	}
	switch {
	case m.Eaten > 0.5 && 2*m.Guard >= m.Form:
		add("measuring eats more than the form: take the readings again with a better tool, or more of them")
	case m.Eaten > 0.5:
		add("the form eats more than the measuring: true the old part first, or accept a wider range")
	}
}

// coverage is the factor that makes a standard uncertainty with dof degrees of
// freedom cover 95.45 %: 2 for an infinite number, Student's t otherwise.
//
// Source: JCGM 100:2008, Table G.2.
func coverage(dof float64) float64 {
	if !(dof > 0) || math.IsInf(dof, 0) {
		return 2
	}
	const p = (1 + 0.9544997361036416) / 2 // Φ(2)
	return distuv.StudentsT{Mu: 0, Sigma: 1, Nu: dof}.Quantile(p)
}
