package threads

import (
	"fmt"

	"example.com/benchsums/units"
)

// A ClearanceFit is how freely a bolt is to pass through a plain hole.
type ClearanceFit uint8

// The fits, by the names of BS 4186; the American table calls the second and
// third normal and loose.
const (
	CloseClearance ClearanceFit = iota
	MediumClearance
	FreeClearance
)

// String returns the fit in a word.
func (f ClearanceFit) String() string {
	switch f {
	case CloseClearance:
		return "close"
	case MediumClearance:
		return "medium"
	case FreeClearance:
		return "free"
	}
	return "unknown fit"
}

func (r clearanceRow) hole(f ClearanceFit) float64 {
	return [...]float64{r.close, r.medium, r.free}[f]
}

// ClearanceHole returns the plain hole for a bolt of thread t, from the table
// of inch fasteners if its pitch is in threads per inch and from the metric
// one if not. A bolt between two lines of the table (0 BA, 5/32 in, a cycle
// spindle) gets the larger clearance of the two, which is a rule of ours. The
// error wraps units.ErrDomain for a bolt smaller or larger than the table has.
//
// Source: BS 4186:1967; ANSI/ASME B18.2.8-1999.
func ClearanceHole(t Thread, fit ClearanceFit) (units.Length, error) {
	if t.pitch == 0 {
		return 0, noThread()
	}
	if fit > FreeClearance {
		return 0, fmt.Errorf("clearance fit %d: want close, medium or free: %w", fit, units.ErrDomain)
	}
	rows, unit := metricClearance[:], units.Millimetre
	if !t.series.Metric() && t.series != Special {
		rows, unit = inchClearance[:], units.Inch
	}
	bolt := float64(t.major / unit)
	for i, r := range rows {
		if near(units.Length(r.bolt), units.Length(bolt)) {
			return units.Length(r.hole(fit)) * unit, nil
		}
		if i > 0 && r.bolt > bolt && rows[i-1].bolt < bolt {
			below := rows[i-1]
			play := max(below.hole(fit)-below.bolt, r.hole(fit)-r.bolt)
			return t.major + units.Length(play)*unit, nil
		}
	}
	return 0, fmt.Errorf("clearance hole for %v: want a bolt from %v to %v, the ends of the table: %w", t,
		units.Length(rows[0].bolt)*unit, units.Length(rows[len(rows)-1].bolt)*unit, units.ErrDomain)
}

// ClearanceDrill returns the smallest drill that is no smaller than the
// clearance hole. Drills not given means all of Drills. The error wraps
// units.ErrDomain when ClearanceHole has no answer or no drill is large enough.
func ClearanceDrill(t Thread, fit ClearanceFit, drills ...Drill) (Drill, error) {
	hole, err := ClearanceHole(t, fit)
	if err != nil {
		return Drill{}, err
	}
	if len(drills) == 0 {
		drills = Drills()
	}
	var best Drill
	for _, d := range drills {
		// The tables give drills to the nearest thousandth of an inch.
		if d.diameter >= hole-units.Thou/2 && (best.diameter == 0 || d.diameter < best.diameter) {
			best = d
		}
	}
	if best.diameter == 0 {
		return Drill{}, fmt.Errorf("%s clearance for %v: none of the %d drills is as large as %v: %w", fit, t, len(drills), hole, units.ErrDomain)
	}
	return best, nil
}
