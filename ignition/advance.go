package ignition

import (
	"fmt"
	"math"
	"time"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// AdvanceOfDrop returns the crank angle before top dead centre at which the
// piston is the given distance below its top, which is how old cards give the
// timing: 3/16 in, 4.8 mm. The error is [units.ErrDomain] for a drop outside
// the stroke.
func AdvanceOfDrop(crank geometry.Crank, drop units.Length) (units.Angle, error) {
	before, _, err := crank.AnglesAtDrop(drop)
	return before, err
}

// AdvanceOfShare returns the crank angle before top dead centre at which the
// piston is the given part of its stroke below its top: 10 %, a tenth. The
// error is [units.ErrDomain] for a part outside 0 to 1.
func AdvanceOfShare(crank geometry.Crank, share units.Ratio) (units.Angle, error) {
	if !(share >= 0 && share <= 1) {
		return 0, fmt.Errorf("part of the stroke %.4g %%: want from 0 %% to 100 %%: %w", share.Percent(), units.ErrDomain)
	}
	return AdvanceOfDrop(crank, crank.Stroke()*units.Length(share))
}

// A Bench is what an advance is measured with: the rim the marks are put on,
// the drive of the breaker, the lean of the hole the gauge stands in, and the
// speed the engine runs at. Rim is wanted; a hole that stands upright has no
// Lean, and without a Speed there is no time. The zero Drive is crank speed.
type Bench struct {
	Rim   Rim
	Drive Drive
	Lean  units.Angle        // of the gauge from the bore, crown flat and square to the bore
	Speed units.AngularSpeed // 0 if it does not matter
}

// Forms is one advance in every form that a manual or a bench uses. Everything
// is before top dead centre; after it, Crank, Shaft, Arc, Chord and Time are
// negative, and Drop, Share and Gauge are of the way down.
type Forms struct {
	Crank units.Angle   // of the crank
	Shaft units.Angle   // of the magneto or breaker shaft
	Drop  units.Length  // of the piston below its top
	Share units.Ratio   // of the stroke; Percent gives per cent
	Gauge units.Length  // fall of a gauge in the leaning hole
	Arc   units.Length  // along the rim, ahead of the top dead centre mark in the direction of rotation
	Chord units.Length  // straight across, from the same mark
	Time  time.Duration // at the bench's speed; 0 without one
}

// Forms returns an advance in every form. The error is [units.ErrDomain] for an
// advance beyond half a turn, a bench without a rim, a lean below 0° or of 90°
// and more, a negative speed, or the zero Crank.
func (b Bench) Forms(crank geometry.Crank, advance units.Angle) (Forms, error) {
	if !positive(crank.Stroke()) {
		return Forms{}, fmt.Errorf("stroke %v: want a crank made with NewCrank: %w", crank.Stroke(), units.ErrDomain)
	}
	return b.forms(advance, crank.Drop(-advance), crank.Stroke())
}

// forms puts together what goes with an advance and its drop.
func (b Bench) forms(advance units.Angle, drop, stroke units.Length) (Forms, error) {
	hole, err := b.check()
	if err != nil {
		return Forms{}, err
	}
	if !(math.Abs(float64(advance)) <= float64(units.Turn/2)) {
		return Forms{}, fmt.Errorf("advance %v: want from −180° to 180°: %w", advance, units.ErrDomain)
	}
	f := Forms{
		Crank: advance, Shaft: b.Drive.Shaft(advance),
		Drop: drop, Share: units.Ratio(drop / stroke), Gauge: hole.Reading(drop),
		Arc: b.Rim.Arc(advance), Chord: b.Rim.Chord(advance),
	}
	if b.Speed > 0 {
		f.Time = b.Speed.Time(advance)
	}
	return f, nil
}

// check returns the hole the gauge stands in, if the bench is in order.
func (b Bench) check() (geometry.PlugHole, error) {
	switch {
	case !positive(b.Rim.radius):
		return geometry.PlugHole{}, fmt.Errorf("rim radius %v: want a rim made with NewRim: %w", b.Rim.radius, units.ErrDomain)
	case !(b.Speed >= 0) || math.IsInf(float64(b.Speed), 0):
		return geometry.PlugHole{}, fmt.Errorf("speed %v: want 0 rev/min or more: %w", b.Speed, units.ErrDomain)
	}
	return geometry.NewPlugHole(b.Lean)
}

// AdvanceOfGauge returns the crank angle before top dead centre at which a
// gauge in the leaning hole has fallen by reading since the top. The error is
// [units.ErrDomain] for a reading that is no place of the piston, or a bench
// that is not in order.
func (b Bench) AdvanceOfGauge(crank geometry.Crank, reading units.Length) (units.Angle, error) {
	hole, err := b.check()
	if err != nil {
		return 0, err
	}
	return AdvanceOfDrop(crank, hole.Travel(reading))
}

// Card returns the drop as a card would print it, to the nearest 1/64 in with
// what is left over in thou.
func (f Forms) Card() units.Fraction {
	card, err := f.Drop.Fraction(64)
	if err != nil { // a drop is finite and no engine is a thousand million inches high
		return units.Fraction{Denominator: 1}
	}
	return card
}

// String writes the forms in one line.
func (f Forms) String() string {
	side, arc := "before", "ahead of"
	if f.Crank < 0 {
		side, arc = "after", "behind"
	}
	return fmt.Sprintf("%.1f° %s top dead centre: piston %.2f mm (%v, %.1f %% of the stroke) down, gauge %.2f mm; mark %.1f mm round the rim or %.1f mm straight across %s the top dead centre mark",
		math.Abs(f.Crank.Degrees()), side, f.Drop.Millimetres(), f.Card(), f.Share.Percent(), f.Gauge.Millimetres(),
		math.Abs(f.Arc.Millimetres()), math.Abs(f.Chord.Millimetres()), arc)
}

// FormsSpread is one timing in every form when the rod is not known: for the
// rod that gives the least, for the middle one, and for the rod that gives the
// most.
type FormsSpread struct{ Least, Middle, Most Forms }

// SpreadOfDrop returns every form of a timing that is given as a drop, before
// top dead centre, on an engine whose rod is not known. The drop, its share and
// the gauge are the same throughout; the angle has the spread of the rods. The
// error is [units.ErrDomain] for a drop outside the stroke or a bench that is
// not in order.
func (b Bench) SpreadOfDrop(s geometry.StrokeOnly, drop units.Length) (FormsSpread, error) {
	angle, err := s.AngleAtDrop(drop)
	if err != nil {
		return FormsSpread{}, err
	}
	at := geometry.Spread[units.Length]{Least: drop, Middle: drop, Most: drop}
	return b.spread(angle, at, s.Stroke())
}

// SpreadOfAdvance returns every form of a timing that is given as an angle, on
// an engine whose rod is not known. Everything on the rim is the same
// throughout; the drop has the spread of the rods. The error is
// [units.ErrDomain] for an advance beyond half a turn or a bench that is not
// in order.
func (b Bench) SpreadOfAdvance(s geometry.StrokeOnly, advance units.Angle) (FormsSpread, error) {
	angle := geometry.Spread[units.Angle]{Least: advance, Middle: advance, Most: advance}
	return b.spread(angle, s.Drop(-advance), s.Stroke())
}

func (b Bench) spread(a geometry.Spread[units.Angle], d geometry.Spread[units.Length], stroke units.Length) (f FormsSpread, err error) {
	if f.Least, err = b.forms(a.Least, d.Least, stroke); err != nil {
		return FormsSpread{}, err
	}
	if f.Middle, err = b.forms(a.Middle, d.Middle, stroke); err != nil {
		return FormsSpread{}, err
	}
	if f.Most, err = b.forms(a.Most, d.Most, stroke); err != nil {
		return FormsSpread{}, err
	}
	return f, nil
}
