package units

// A Quantity is any of the types of this package, or float64 for a pure
// number.
type Quantity interface{ ~float64 }

// kindOf returns what type Q knows about its units.
func kindOf[Q Quantity]() *kind {
	var q Q
	if t, ok := any(q).(interface{ kind() *kind }); ok {
		return t.kind()
	}
	return &ratioKind
}

// differenceKind is the kind of the difference of two values of kind k, which
// is k itself for all but temperatures.
func (k *kind) differenceKind() *kind {
	if k == &temperatureKind {
		return &temperatureDifferenceKind
	}
	return k
}
