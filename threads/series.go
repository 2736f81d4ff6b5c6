package threads

import (
	"iter"

	"example.com/benchsums/units"
)

// A Series is a list of sizes that belong together, such as British Standard
// Fine. The zero value is Special, which is no series.
type Series uint8

// The series, in the order of All.
const (
	Special          Series = iota
	ISOCoarse               // ISO 261, coarse pitches
	ISOFine                 // ISO 261, fine pitches
	UNC                     // Unified coarse
	UNF                     // Unified fine
	UNEF                    // Unified extra fine
	UNS                     // Unified special: 1-14, once American National Fine
	USS                     // American, before about 1918
	BSW                     // British Standard Whitworth
	BSF                     // British Standard Fine
	BA                      // British Association
	BSC                     // British Standard Cycle, BS 811
	Cycle20                 // cycle trade, 20 tpi, cycle form
	Cycle20Whitworth        // cycle trade, 20 tpi, Whitworth form
	CycleFittings           // cycle steering columns, brackets, hubs
	CEI                     // Cycle Engineers' Institute, 1902
	Brass                   // British brass, 26 tpi at every size
	ME                      // model engineer, 32, 40 and 60 tpi
	BSPParallel             // British pipe, parallel, ISO 228 G
	BSPTaper                // British pipe, taper, ISO 7 R
	NPT                     // American taper pipe
	SI                      // Système International, Zürich 1898
	OldMetric               // metric sizes that ISO did not take over
	Loewenherz              // Loewenherz, German instrument makers'
	SparkPlug               // plug bosses, metric
	SparkPlugInch           // plug bosses, inch
	seriesEnd               // one past the last
)

// A table holds a series as printed.
type table struct {
	name     string // long
	short    string // as in a designation
	standard string // or list it comes from
	form     Form
	unit     units.Length // of the diameters
	tpi      bool         // the pitch column is threads per inch, not millimetres
	taper    float64      // on diameter
	rows     []row
	listed   []listedRow // with effective and minor diameter as the standard prints them
	keys     []key
	sizes    []float64 // nominal bores beside rows, inches
	gauge    []float64 // gauge lengths beside listed, millimetres
}

// A row is a line of a table whose diameters follow from the form.
type row struct {
	designation  string
	major, pitch float64 // in the units of the table
	from         string  // letters of the keys
}

// A listedRow is a line of a table that prints its diameters.
type listedRow struct {
	designation             string
	size                    float64 // number of a BA thread, nominal bore of a pipe in inches
	pitch                   float64
	major, effective, minor float64
	from                    string
}

// A key says what a letter beside a row stands for. The letter m is left for
// rows from memory.
type key struct {
	letter byte
	source string
}

// row returns the table of s, and that of Special for a value out of range.
func (s Series) row() *table {
	if s >= seriesEnd {
		return &tables[Special]
	}
	return &tables[s]
}

// String returns the series as it stands in a designation, "BSF".
func (s Series) String() string { return s.row().short }

// Name returns the series in full, "British Standard Fine".
func (s Series) Name() string { return s.row().name }

// Standard returns the standard or list the series comes from.
func (s Series) Standard() string { return s.row().standard }

// Form returns the form of the series.
func (s Series) Form() Form { return s.row().form }

// Metric reports whether the series is defined in millimetres of pitch, not in
// threads per inch.
func (s Series) Metric() bool { return s != Special && s < seriesEnd && !s.row().tpi }

// Len returns how many sizes the series has.
func (s Series) Len() int { return s.row().len() }

// All ranges over the threads of the series in the order of its table.
func (s Series) All() iter.Seq[Thread] {
	return func(yield func(Thread) bool) {
		for i := range s.row().len() {
			if !yield(s.at(i)) {
				return
			}
		}
	}
}

// All ranges over every thread of every series.
func All() iter.Seq[Thread] { return all }

func all(yield func(Thread) bool) {
	for s := Special + 1; s < seriesEnd; s++ {
		for i := range s.row().len() {
			if !yield(s.at(i)) {
				return
			}
		}
	}
}

// AllSeries ranges over the series.
func AllSeries() iter.Seq[Series] { return allSeries }

func allSeries(yield func(Series) bool) {
	for s := Special + 1; s < seriesEnd; s++ {
		if !yield(s) {
			return
		}
	}
}

func (t *table) len() int { return len(t.listed) + len(t.rows) }

// at returns thread i of the table, which must be there.
func (s Series) at(i int) Thread {
	t := s.row()
	if i < len(t.listed) {
		r := &t.listed[i]
		return Thread{r.designation, units.Length(r.major) * t.unit, units.Length(r.effective) * t.unit,
			units.Length(r.minor) * t.unit, t.pitch(r.pitch), r.from, s, t.form}
	}
	r := &t.rows[i-len(t.listed)]
	form := t.form
	return basic(r.designation, units.Length(r.major)*t.unit, t.pitch(r.pitch), r.from, s, form)
}

// size returns the major diameter and the pitch of row i without the rest.
func (t *table) size(i int) (major, pitch units.Length) {
	if i < len(t.listed) {
		r := &t.listed[i]
		return units.Length(r.major) * t.unit, t.pitch(r.pitch)
	}
	r := &t.rows[i-len(t.listed)]
	return units.Length(r.major) * t.unit, t.pitch(r.pitch)
}

func (t *table) pitch(p float64) units.Length {
	if t.tpi {
		return units.Inch / units.Length(p)
	}
	return units.Length(p) * units.Millimetre
}
