package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A rim that runs out has its middle e beside the middle of the shaft, e being
// half of what a dial shows from end to end in one turn. With the shaft turned by θ
// the mark at the pointer is then out along the rim by e sin(θ + φ), φ the unknown
// angle at which the rim was put on. So
//
//	middle of places at ±θ     out by −e sin φ (1 − cos θ)
//	arc a between two figures  out by 2e sin(a/2) cos(…)
//
// and a figure that is c sin φ with φ anywhere has the standard uncertainty c/√2
// (arcsine; JCGM 101:2008, 6.4.6, from memory). The phase is the same for all
// figures on one rim; from one result to the next it is taken as independent,
// which matters little, because a position found by middles hardly moves.
const runOutName = "run-out of the rim"

// runOutTerm is what the run-out of the rim makes of a position that is the mean
// of middles, by their shares.
func (s Setup) runOutTerm(halves, shares []float64) budgetTerm {
	sum := 0.0
	for i, half := range halves {
		sine := math.Sin(half / float64(s.Rim.Radius()) / 2)
		sum += shares[i] * 2 * sine * sine
	}
	return s.runOutBy(math.Abs(sum))
}

// runOutBy is the term of a position that is out by the share of e at most.
func (s Setup) runOutBy(share float64) budgetTerm {
	std := s.RunOut / 2 / math.Sqrt2
	return budgetTerm{runOutName, units.Length(0), std, share * float64(std)}
}

// runOutShare is how far a fit moves at most for a unit of e. With gains g for the
// rows, and the readings out by e(sin(θ + φ) − sin φ), it moves by
// e(A sin φ + B cos φ), √(A² + B²) at most.
func (p *problem) runOutShare(s solution, gain func(row int) float64) float64 {
	var a, b float64
	for i, pt := range p.points {
		at := s.model.at(pt.rim, pt.turned)
		g := gain(i) * p.weights[i] * s.model.dialSlope(at)
		half, _ := math.Sincos(float64(at.theta) / 2)
		a -= g * 2 * half * half
		b += g * math.Sin(float64(at.theta))
	}
	return math.Hypot(a, b)
}

// swung returns the figure that would stand at the pointer at the same place of the
// crank if the rim ran out so that an arc as long as that from top dead centre to
// it is out by 2 swing sin(a/2).
func (s Scale) swung(figure, swing units.Length) units.Length {
	if swing == 0 {
		return figure
	}
	half := math.Abs(math.Sin(float64(s.Angle(figure)) / 2))
	return figure + 2*swing*units.Length(half)
}

// checkRunOut refuses a run-out that no rim has.
func checkRunOut(total, girth units.Length) error {
	if most := girth / math.Pi / 2; !(total >= 0 && total <= most) {
		return fmt.Errorf("%s %v: want from 0 mm to %v: %w", runOutName, total, most, units.ErrDomain)
	}
	return nil
}

// runOut is the input of the run-out to a propagation, none where it is 0.
func (m MeasuredScale) runOut(swing *units.Length) []units.Input {
	if e := m.RunOut / 2; e > 0 {
		return []units.Input{units.VaryAs(runOutName, swing, units.Arcsine(-e, e))}
	}
	return nil
}
