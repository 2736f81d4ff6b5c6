package ignition

import "example.com/benchsums/units"

// A MeasuredScale is a [Scale] with what its figures are worth: the girth of
// the rim and the figure of top dead centre as they were found, each with its
// standard uncertainty. A rim that runs out by RunOut makes an arc a between two
// figures uncertain by 2e sin(a/2)/√2, e half of RunOut and the angle at which it
// was put on unknown.
type MeasuredScale struct {
	Girth   units.Reading[units.Length] // once round, on the face or the strip that carries the figures
	TDC     units.Reading[units.Length] // figure of top dead centre
	Figures Figures                     // what the figures do at the pointer, turning forward
	RunOut  units.Length                // of the rim, as a dial on it shows from end to end in one turn; 0 if not taken
}

// Scale returns the scale of the estimates alone. The error is
// [units.ErrDomain]: see [NewRimOfGirth] and [NewScale]; also for a run-out below 0
// or more than the rim's radius.
func (m MeasuredScale) Scale() (Scale, error) {
	s, err := scaleOf(m.Girth.Value, m.TDC.Value, m.Figures)
	if err != nil {
		return Scale{}, err
	}
	return s, checkRunOut(m.RunOut, m.Girth.Value)
}

func scaleOf(girth, tdc units.Length, figures Figures) (Scale, error) {
	rim, err := NewRimOfGirth(girth)
	if err != nil {
		return Scale{}, err
	}
	return NewScale(rim, tdc, figures)
}

// The names of the two readings of a MeasuredScale in a budget.
const (
	girthName = "girth of the rim"
	tdcName   = "top dead centre"
)

// Advance returns how far before top dead centre a figure stands, as
// [Scale.Advance] does, with its uncertainty and what it is made of. The error
// is that of [MeasuredScale.Scale] or of [units.Propagate].
func (m MeasuredScale) Advance(figure units.Reading[units.Length]) (units.Result[units.Angle], error) {
	return m.advance("figure", figure)
}

// advance is Advance with a name for the figure.
func (m MeasuredScale) advance(name string, figure units.Reading[units.Length]) (units.Result[units.Angle], error) {
	var girth, tdc, fig, swing units.Length
	if _, err := m.Scale(); err != nil {
		return units.Result[units.Angle]{}, err
	}
	var fail error
	return units.Propagate(func() units.Angle {
		var s Scale
		s, fail = scaleOf(girth, tdc, m.Figures)
		return s.Advance(s.swung(fig, swing))
	}, append(m.runOut(&swing), units.VaryReading(girthName, &girth, m.Girth), units.VaryReading(tdcName, &tdc, m.TDC),
		units.VaryReading(name, &fig, figure), units.StopOn(&fail))...)
}

// Figure returns the figure that stands at the pointer at an advance, as
// [Scale.FigureAtAdvance] does, with its uncertainty and what it is made of.
// The error is that of [MeasuredScale.Scale] or of [units.Propagate].
func (m MeasuredScale) Figure(advance units.Reading[units.Angle]) (units.Result[units.Length], error) {
	var girth, tdc, swing units.Length
	var a units.Angle
	if _, err := m.Scale(); err != nil {
		return units.Result[units.Length]{}, err
	}
	var fail error
	return units.Propagate(func() units.Length {
		var s Scale
		s, fail = scaleOf(girth, tdc, m.Figures)
		return s.swung(s.FigureAtAdvance(a), swing)
	}, append(m.runOut(&swing), units.VaryReading(girthName, &girth, m.Girth), units.VaryReading(tdcName, &tdc, m.TDC),
		units.VaryReading("advance", &a, advance), units.StopOn(&fail))...)
}

// Between returns the crank angle from one figure on to another in forward
// turning, positive when the second comes later. Top dead centre does not enter
// and neither does its uncertainty. The error is that of
// [MeasuredScale.Scale] or of [units.Propagate].
func (m MeasuredScale) Between(from, to units.Reading[units.Length]) (units.Result[units.Angle], error) {
	return m.between("first figure", from, "second figure", to)
}

// between is Between with names for the figures.
func (m MeasuredScale) between(first string, from units.Reading[units.Length], second string, to units.Reading[units.Length]) (units.Result[units.Angle], error) {
	var girth, a, b, swing units.Length
	if _, err := m.Scale(); err != nil {
		return units.Result[units.Angle]{}, err
	}
	var fail error
	return units.Propagate(func() units.Angle {
		var s Scale
		s, fail = scaleOf(girth, a, m.Figures)
		return s.Angle(s.swung(b, swing))
	}, append(m.runOut(&swing), units.VaryReading(girthName, &girth, m.Girth),
		units.VaryReading(first, &a, from), units.VaryReading(second, &b, to), units.StopOn(&fail))...)
}
