package threads

// A pitchRow is a line of the ISO 965-1 tables that goes by pitch alone.
type pitchRow struct {
	pitch float64 // millimetres
	um    []int16 // micrometres, a column a grade or position
	marks string  // where each was found
}

// A rangeRow is a line of the tables that go by diameter too.
type rangeRow struct {
	over, upTo float64 // diameter, millimetres
	pitchRow
}
