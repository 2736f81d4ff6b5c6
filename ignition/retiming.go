package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Retiming is how far a drive has to be slipped to change the timing: a
// chain wheel on its taper, a gear on its boss, a coupling. Make one with
// [NewRetiming].
type Retiming struct {
	Present units.Reading[units.Angle] // before top dead centre, as found
	Wanted  units.Reading[units.Angle] // before top dead centre
	Change  units.Reading[units.Angle] // at the crank, positive for an earlier spark
	Shaft   units.Reading[units.Angle] // at the driven shaft, positive the way it turns in running
}

// NewRetiming returns how far to slip a drive from the present timing to the
// wanted one:
//
//	change = wanted − present,  shaft = change / (crank turns per shaft turn)
//
// For an earlier spark the driven shaft has to run further ahead of the crank:
// with the crank held it is turned forward, the way it runs. Seen from the
// shaft, its wheel then sits further back on it by as much.
//
// The two readings are taken as independent; that leaves out only what the rim
// itself shares. The error is [units.ErrDomain] for a timing that is not within
// half a turn of top dead centre.
//
// Source: the ratio of the drive; uncertainties of a difference by JCGM 100:2008,
// 5.1.2.
func NewRetiming(drive Drive, present, wanted units.Reading[units.Angle]) (Retiming, error) {
	for _, a := range [...]units.Angle{present.Value, wanted.Value} {
		if !(math.Abs(float64(a)) <= float64(units.Turn/2)) {
			return Retiming{}, fmt.Errorf("timing %v before top dead centre: want from −180° to 180°: %w", a, units.ErrDomain)
		}
	}
	change := difference(wanted, present)
	shaft := units.Reading[units.Angle]{Value: drive.Shaft(change.Value), Std: drive.Shaft(change.Std), DoF: change.DoF}
	return Retiming{present, wanted, change, shaft}, nil
}

// Needed reports whether the present timing differs from the wanted one by more
// than twice the uncertainty of the difference. Where it does not, the readings
// give no ground to move anything.
func (r Retiming) Needed() bool { return math.Abs(float64(r.Change.Value)) > 2*float64(r.Change.Std) }

// AtRadius returns how far the wheel has to be slipped on the shaft, measured
// along a circle of the given radius: the distance that a line scribed across
// wheel and shaft end is to come apart. It is positive where the shaft goes
// forward.
func (r Retiming) AtRadius(radius units.Length) units.Length {
	return radius * units.Length(r.Shaft.Value)
}

// String says which way and how far.
func (r Retiming) String() string {
	way, spark := "forward, the way it turns in running", "earlier"
	if r.Change.Value < 0 {
		way, spark = "backward, against the way it turns in running", "later"
	}
	if r.Change.Value == 0 {
		return "the timing is as wanted: leave the drive alone"
	}
	return fmt.Sprintf("spark %.1f° %s at the crank (u %.1f°): with the crank held, turn the driven shaft %.1f° %s",
		math.Abs(r.Change.Value.Degrees()), spark, r.Change.Std.Degrees(), math.Abs(r.Shaft.Value.Degrees()), way)
}
