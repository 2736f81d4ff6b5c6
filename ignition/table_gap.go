package ignition

import "example.com/benchsums/units"

// A GapPractice is a contact gap as a source gives it.
type GapPractice struct {
	Engine      string       // what it is for
	Least, Most units.Length // equal where one figure is given
	Source      string
}

// Contact gaps found in print, each in its source's own unit.
var gapPractice = [...]GapPractice{
	{"magnetos, by make", 0.010 * units.Inch, 0.020 * units.Inch, "magneto repairer's note on points gap, themagnetoguys.co.uk"},
	{"magnetos, most of them", 0.012 * units.Inch, 0.015 * units.Inch, "magneto repairer's note on points gap, themagnetoguys.co.uk"},
	{"Fichtel & Sachs 505 moped", 0.40 * units.Millimetre, 0.40 * units.Millimetre, "Sachs 505 repair instructions"},
	{"BSA M20 motorcycle, 1937-55", 0.012 * units.Inch, 0.012 * units.Inch, "owners' pages, wdbsa.nl"},
	{"Kohler K361 industrial engine, 1960s on", 0.017 * units.Inch, 0.023 * units.Inch, "Kohler K361 manual: 0.020 in"},
	{"motor cars", 0.014 * units.Inch, 0.016 * units.Inch, "car handbook text, minicarcare.blogspot.com, October 2009"},
	{"two-cylinder outboard", 0.020 * units.Inch, 0.020 * units.Inch, "iboats.com thread 280106"},
}

// GapTable returns the contact gaps found in print, each with its source.
func GapTable() []GapPractice { return append([]GapPractice(nil), gapPractice[:]...) }

// UsualGap returns the least and the greatest contact gap found in print for
// any engine: see [GapTable]. A gap outside them is not in use; a gap inside
// them is not thereby right, for which ask the maker's plate or book.
func UsualGap() (least, most units.Length) {
	least, most = gapPractice[0].Least, gapPractice[0].Most
	for _, g := range gapPractice {
		least, most = min(least, g.Least), max(most, g.Most)
	}
	return least, most
}
