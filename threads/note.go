package threads

import "example.com/benchsums/units"

// Note returns what is to be said about a size beside its figures: where a
// source contradicts the others, where the standard restricts it, what it is
// easily taken for. Most sizes have none.
func (t Thread) Note() string {
	for _, n := range sizeNotes {
		if n.designation == t.designation && t.designation != "" {
			return n.note
		}
	}
	switch t.series {
	case USS:
		return "the United States Standard root is flat at p/8 and goes to the major diameter less 1.299p, deeper than the Unified profile here"
	case Cycle20, Cycle20Whitworth:
		return "the trade cut the 20-thread sizes in the cycle form and in the Whitworth form; the cores differ by 0.27 mm"
	case SI:
		return "the root may go up to H/16 deeper than basic, so a measured core is smaller"
	case ME:
		return "the list of sizes is from memory"
	case Brass:
		return "no British Standard; the list is that of gauge makers and shops"
	case BSPTaper:
		return "the diameters are those at the gauge plane"
	case NPT:
		return "the diameters are those where the crests come out to the pipe"
	case BA:
		if _, ok := t.baNumber(); !ok {
			return "not in BS 93, which ends at 16 BA; effective and minor diameter follow from the form"
		}
	}
	return ""
}

// sizeNotes are the notes on single sizes.
var sizeNotes = [...]struct{ designation, note string }{
	{"M1.8x0.2", "sizes.com has a fine pitch of 0.25 here"},
	{"M2.2x0.25", "sizes.com has a fine pitch of 0.35 here"},
	{"M14x1.25", "for spark plugs only, by ISO 261 (from memory)"},
	{"M35x1.5", "for the lock nuts of bearings only, by ISO 261 (from memory)"},
	{"M30x3", "in brackets in ISO 261: to be avoided (from memory)"},
	{"M33x3", "in brackets in ISO 261: to be avoided (from memory)"},
	{"1-14 UNS", "the 1 inch of American National Fine before 1949; UNF has 12 threads"},
	{"1/4-24 plug", "not UNF, which has 28 threads"},
	{"7/8-18 plug", "American plugs from 1908 on"},
	{"M18x1.5 plug", "early European and motorcycle plugs"},
	{"M8x1 plug", "modern small plugs only"},
	{"1/2-14 NPT", "Ford Model T and many stationary engines had plugs of this thread; the first Model T of 1908 had 3/8 NPT"},
	{"0.281-26 CEI", "9/32 in is meant"},
	{"1.29-24 CEI", "Urban Velo, issue 25, prints 29 threads, taken as a misprint"},
	{"1.37-24 CEI", "sold as 1 3/8 x 24; the core of 1.326 in that lists print fits 1.370"},
	{"1 3/8-24 cycle", "the basic diameter may be 1.370 in, see 1.37-24 CEI"},
	{"0.5625-20 CEI", "the pedal thread, right hand and left hand"},
	{"13/32-26 cycle", "hub axles; near M10x1 but not the same"},
	{"31/32-30 cycle", "headsets"},
	{"4x0.75 old", "ISO has a pitch of 0.7"},
	{"3x0.6 old", "ISO has a pitch of 0.5"},
	{"5x0.9 old", "ISO has a pitch of 0.8"},
	{"5x0.75 old", "ISO has a pitch of 0.8; French"},
	{"Loew 36x4", "6.35 threads per inch; the handbook prints 6.4"},
	{"Loew 40x4.4", "5.77 threads per inch; the handbook prints 5.7"},
	{"R 4", "one web table has a gauge length of 25.5 mm"},
	{"22 BA", "0.9ⁿ mm to two figures is a pitch of 0.098 mm; the print rounds to 0.01 mm"},
	{"23 BA", "0.9ⁿ mm to two figures is a pitch of 0.089 mm; the print rounds to 0.01 mm"},
	{"25 BA", "0.9ⁿ mm to two figures is a pitch of 0.072 mm; the print rounds to 0.01 mm"},
}

// GaugeLength returns the gauge length of an R thread: how far from the small
// end of the bolt the diameters of the thread are found. Other threads have
// none, false.
//
// Source: ISO 7-1 (Wikipedia, British Standard Pipe).
func (t Thread) GaugeLength() (units.Length, bool) {
	tab := t.series.row()
	for i := range tab.gauge {
		if tab.listed[i].designation == t.designation {
			return units.Length(tab.gauge[i]) * units.Millimetre, true
		}
	}
	return 0, false
}
