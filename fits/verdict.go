package fits

import (
	"fmt"

	"example.com/benchsums/units"
)

// A Verdict says whether a measured part is within limits, as far as the measuring
// can tell.
type Verdict int

// The verdicts. Between the two sure ones lies a band about each limit, as wide as
// the uncertainty, in which measuring proves nothing.
const (
	Conforms Verdict = iota + 1 // within the limits beyond doubt
	Doubtful                    // within the uncertainty of a limit
	Fails                       // outside the limits beyond doubt
)

// String returns "conforms", "doubtful" or "fails".
func (v Verdict) String() string {
	switch v {
	case Conforms:
		return "conforms"
	case Doubtful:
		return "doubtful"
	case Fails:
		return "fails"
	}
	return fmt.Sprintf("Verdict(%d)", int(v))
}

// Judge says whether a measured part is within the limits. The expanded
// uncertainty, for 95.45 %, is taken off the zone for a part to conform and added to
// it for a part to fail. The error wraps units.ErrDomain for a size that is not more
// than 0 or an uncertainty that is less.
//
// Source: the rules of ISO 14253-1 for proving conformity and nonconformity (from
// memory).
func (z Size) Judge(measured units.Reading[units.Length]) (Verdict, error) {
	if err := checkReading(measured); err != nil {
		return 0, err
	}
	u := units.Length(coverage(measured.DoF)) * measured.Std
	switch m := measured.Value; {
	case m >= z.Min+u-picometre && m <= z.Max-u+picometre:
		return Conforms, nil
	case m < z.Min-u-picometre || m > z.Max+u+picometre:
		return Fails, nil
	}
	return Doubtful, nil
}
