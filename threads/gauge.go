package threads

import (
	"math"

	"example.com/benchsums/units"
)

// A Verdict says whether a part is good.
type Verdict uint8

// The verdicts.
const (
	Good     Verdict = iota // surely within the limits
	TooSmall                // surely below them
	TooLarge                // surely above them
	Doubtful                // too near a limit for the measurement to tell
)

// String returns the verdict in words.
func (v Verdict) String() string {
	switch v {
	case Good:
		return "good"
	case TooSmall:
		return "too small"
	case TooLarge:
		return "too large"
	case Doubtful:
		return "doubtful"
	}
	return "unknown verdict"
}

// Judge says whether a measured diameter lies in r. A measurement within two
// standard uncertainties of a limit is Doubtful, and so is NaN; one without
// uncertainty is taken as it is. Such guard
// bands are those of ISO 14253-1 with a coverage factor of 2 (from memory).
func (r Range) Judge(d units.Reading[units.Length]) Verdict {
	u := 2 * units.Length(math.Abs(float64(d.Std)))
	switch {
	case d.Value-u >= r.Min && d.Value+u <= r.Max:
		return Good
	case d.Value+u < r.Min:
		return TooSmall
	case d.Value-u > r.Max:
		return TooLarge
	}
	return Doubtful
}

// GoGauge returns the basic sizes of the go gauge, which has the full form and
// must pass over the whole length: a ring at the largest diameters of a bolt, a
// plug at the smallest of a nut. It tries pitch, angle and all three diameters
// at once. Gauge makers' tolerances and wear allowances are not in it.
func (l Limits) GoGauge() (major, effective, minor units.Length) {
	if l.Part == Nut {
		return l.Major.Min, l.Effective.Min, l.Minor.Min
	}
	return l.Major.Max, l.Effective.Max, l.Minor.Max
}

// NoGoGauge returns the effective diameter of the no-go gauge, which has
// shortened flanks, tries that diameter alone, and must not enter by more than a
// turn or two.
func (l Limits) NoGoGauge() units.Length {
	if l.Part == Nut {
		return l.Effective.Max
	}
	return l.Effective.Min
}
