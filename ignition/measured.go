package ignition

import "example.com/benchsums/units"

// A MeasuredScale is a [Scale] with what its figures are worth: the girth of
// the rim and the figure of top dead centre as they were found, each with its
// standard uncertainty.
type MeasuredScale struct {
	Girth   units.Reading[units.Length] // once round, on the face or the strip that carries the figures
	TDC     units.Reading[units.Length] // figure of top dead centre
	Figures Figures                     // what the figures do at the pointer, turning forward
}

// Scale returns the scale of the estimates alone. The error is
// [units.ErrDomain]: see [NewRimOfGirth] and [NewScale].
func (m MeasuredScale) Scale() (Scale, error) {
	return scaleOf(m.Girth.Value, m.TDC.Value, m.Figures)
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
	var girth, tdc, fig units.Length
	var fail error
	return units.Propagate(func() units.Angle {
		var s Scale
		s, fail = scaleOf(girth, tdc, m.Figures)
		return s.Advance(fig)
	}, units.VaryReading(girthName, &girth, m.Girth), units.VaryReading(tdcName, &tdc, m.TDC),
		units.VaryReading(name, &fig, figure), units.StopOn(&fail))
}

// Figure returns the figure that stands at the pointer at an advance, as
// [Scale.FigureAtAdvance] does, with its uncertainty and what it is made of.
// The error is that of [MeasuredScale.Scale] or of [units.Propagate].
func (m MeasuredScale) Figure(advance units.Reading[units.Angle]) (units.Result[units.Length], error) {
	var girth, tdc units.Length
	var a units.Angle
	var fail error
	return units.Propagate(func() units.Length {
		var s Scale
		s, fail = scaleOf(girth, tdc, m.Figures)
		return s.FigureAtAdvance(a)
	}, units.VaryReading(girthName, &girth, m.Girth), units.VaryReading(tdcName, &tdc, m.TDC),
		units.VaryReading("advance", &a, advance), units.StopOn(&fail))
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
	var girth, a, b units.Length
	var fail error
	return units.Propagate(func() units.Angle {
		var s Scale
		s, fail = scaleOf(girth, a, m.Figures)
		return s.Angle(b)
	}, units.VaryReading(girthName, &girth, m.Girth),
		units.VaryReading(first, &a, from), units.VaryReading(second, &b, to), units.StopOn(&fail))
}
