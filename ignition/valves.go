package ignition

import (
	"fmt"
	"math"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// A ValveTiming is when the two valves of a four-stroke open and close, in the
// way manuals give it: inlet opens before top and closes after bottom, exhaust
// opens before bottom and closes after top dead centre. Each is positive on the
// side its name says and negative on the other. Make one with [NewValveTiming]
// or [Scale.ValveTiming].
//
// Bottom dead centre is half a turn from top dead centre here, as it is on a
// rim; with a cylinder set over to one side the piston's own lowest place lies a
// few degrees off.
//
// Events mean something only together with the lift at which they were read: at
// a greater lift a valve opens later and closes earlier, and timings at unlike
// lifts cannot be compared. The first touch itself moves with the clearance.
type ValveTiming struct {
	Lift          units.Length // of the valve, at which the events were read; 0: at the first touch
	InletOpens    units.Angle  // before top dead centre
	InletCloses   units.Angle  // after bottom dead centre
	ExhaustOpens  units.Angle  // before bottom dead centre
	ExhaustCloses units.Angle  // after top dead centre
}

// NewValveTiming returns t when it makes sense. The error is [units.ErrDomain]
// for an event half a turn or more from its dead centre, a negative lift, or a
// valve that closes before it opens.
func NewValveTiming(t ValveTiming) (ValveTiming, error) {
	for _, e := range [...]struct {
		name  string
		angle units.Angle
	}{
		{"inlet opens before top dead centre", t.InletOpens}, {"inlet closes after bottom dead centre", t.InletCloses},
		{"exhaust opens before bottom dead centre", t.ExhaustOpens}, {"exhaust closes after top dead centre", t.ExhaustCloses},
	} {
		if !(math.Abs(float64(e.angle)) < float64(units.Turn/2)) {
			return ValveTiming{}, fmt.Errorf("%s: %v: want less than 180° either way: %w", e.name, e.angle, units.ErrDomain)
		}
	}
	switch {
	case !(t.Lift >= 0) || math.IsInf(float64(t.Lift), 0):
		return ValveTiming{}, fmt.Errorf("lift %v: want 0 mm or more: %w", t.Lift, units.ErrDomain)
	case !(t.InletDuration() > 0):
		return ValveTiming{}, fmt.Errorf("inlet open over %v: want it to close after it opens: %w", t.InletDuration(), units.ErrDomain)
	case !(t.ExhaustDuration() > 0):
		return ValveTiming{}, fmt.Errorf("exhaust open over %v: want it to close after it opens: %w", t.ExhaustDuration(), units.ErrDomain)
	}
	return t, nil
}

// ValveMarks are the rim figures of the four events, the engine turned forward
// to each of them. Each is taken as lying within half a turn of its own dead
// centre.
type ValveMarks struct {
	Lift                                                 units.Length // of the valve at the events
	InletOpens, InletCloses, ExhaustOpens, ExhaustCloses units.Length // figures at the pointer
}

// ValveTiming returns the timing from rim figures. Turn forward only: the
// slack of the half-speed drive counts double at the crank, and turned back the
// events come early by the whole of it. Even in forward turning a spring pushes
// the cam on when its valve closes, so that on a slack drive the closings may
// show early (common practice, no source). The error is that of
// [NewValveTiming].
func (s Scale) ValveTiming(m ValveMarks) (ValveTiming, error) {
	fromBottom := func(figure units.Length) units.Angle { return wrap(s.Angle(figure) - units.Turn/2) }
	return NewValveTiming(ValveTiming{
		Lift:          m.Lift,
		InletOpens:    s.Advance(m.InletOpens),
		InletCloses:   fromBottom(m.InletCloses),
		ExhaustOpens:  -fromBottom(m.ExhaustOpens),
		ExhaustCloses: s.Angle(m.ExhaustCloses),
	})
}

// InletDuration returns the crank angle over which the inlet valve is open.
func (t ValveTiming) InletDuration() units.Angle {
	return t.InletOpens + units.Turn/2 + t.InletCloses
}

// ExhaustDuration returns the crank angle over which the exhaust valve is open.
func (t ValveTiming) ExhaustDuration() units.Angle {
	return t.ExhaustOpens + units.Turn/2 + t.ExhaustCloses
}

// Overlap returns the crank angle over which both valves are open; it is
// negative where the exhaust shuts before the inlet opens.
func (t ValveTiming) Overlap() units.Angle { return t.InletOpens + t.ExhaustCloses }

// InletPeak returns the crank angle after top dead centre half way between the
// inlet's opening and closing, where a symmetrical cam has its full lift.
func (t ValveTiming) InletPeak() units.Angle { return t.InletDuration()/2 - t.InletOpens }

// ExhaustPeak returns the crank angle before top dead centre half way between
// the exhaust's opening and closing.
func (t ValveTiming) ExhaustPeak() units.Angle { return t.ExhaustDuration()/2 - t.ExhaustCloses }

// LobeSeparation returns the angle between the two lobes' middles, in degrees
// of the camshaft, which turns at half the speed of the crank.
func (t ValveTiming) LobeSeparation() units.Angle {
	return HalfSpeed().Shaft(t.InletPeak() + t.ExhaustPeak())
}

// ClosingDrop returns how far the piston is below its top when the inlet
// closes, on its way up.
func (t ValveTiming) ClosingDrop(crank geometry.Crank) units.Length {
	return crank.Drop(units.Turn/2 + t.InletCloses)
}

// Compression returns the compression ratio counted from the bottom of the
// stroke and from where the inlet closes; see [geometry.Cylinder.Compression].
// An inlet that closes on the way down, as some automatic ones do, shuts in
// less than the stroke too. The error is [units.ErrDomain] for a clearance that
// is not more than 0.
func (t ValveTiming) Compression(c geometry.Cylinder, clearance units.Volume) (geometry.Compression, error) {
	return c.Compression(clearance, t.ClosingDrop(c.Crank()))
}

// Shifted returns the timing with the camshaft set over by a crank angle,
// positive for every event earlier: what a tooth of the drive does, see
// [Toothed]. The error is that of [NewValveTiming].
func (t ValveTiming) Shifted(earlier units.Angle) (ValveTiming, error) {
	t.InletOpens += earlier
	t.InletCloses -= earlier
	t.ExhaustOpens += earlier
	t.ExhaustCloses -= earlier
	return NewValveTiming(t)
}
