package threads

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Every size of every list is found by the name the list gives it, or is one of
// the readings of that name, and has the list's diameters.
func TestSeriesAgainstPrint(t *testing.T) {
	for _, table := range printedThreads {
		for _, r := range table.rows {
			th, ok := printedAs(r)
			if !ok {
				t.Errorf("%s (%s): not found", r.designation, table.source)
				continue
			}
			for _, f := range []struct {
				printed string
				got     units.Length
			}{{r.major, th.Major()}, {r.pitch, th.Pitch()}, {r.effective, th.Effective()}, {r.minor, th.Minor()}} {
				if f.printed != "" {
					figures.Figure{Printed: f.printed, Source: table.source}.Check(t, f.got.Millimetres())
				}
			}
			if memory := len(table.source) > 13 && table.source[len(table.source)-13:] == ", from memory"; memory && !th.FromMemory() {
				t.Errorf("%v does not say that it is from memory", th)
			}
		}
	}
}

// printedAs returns the thread that a list means: the one Find returns, or of
// several readings the one of that pitch and minor diameter.
func printedAs(r printedThread) (Thread, bool) {
	th, err := Find(r.designation)
	if err == nil {
		return th, true
	}
	var amb *AmbiguousError
	if !errors.As(err, &amb) {
		return Thread{}, false
	}
	for _, c := range amb.Candidates {
		if strconv.FormatFloat(c.Minor().Millimetres(), 'f', 4, 64) == r.minor {
			return c, true
		}
	}
	return Thread{}, false
}

func TestEveryThreadHasASize(t *testing.T) {
	seen := map[string]bool{}
	n := 0
	for th := range All() {
		n++
		if !(th.Major() > th.Effective() && th.Effective() > th.Minor() && th.Minor() > 0 && th.Pitch() > 0) {
			t.Errorf("%v: %v, %v, %v at pitch %v", th, th.Major(), th.Effective(), th.Minor(), th.Pitch())
		}
		if th.Designation() == "" || th.Source() == "" || th.Form() == 0 || seen[th.Designation()] {
			t.Errorf("%v of %v: no designation, source or form, or not the only one", th, th.Series().Name())
		}
		seen[th.Designation()] = true
	}
	if want := 537; n != want {
		t.Errorf("%d threads, want %d", n, want)
	}
}

// The rows of a table stand in the order of size, which Find relies on.
func TestTablesAreInOrder(t *testing.T) {
	for s := range AllSeries() {
		rows := s.row().rows
		if s != BA && !slices.IsSortedFunc(rows, func(a, b row) int { return int(math.Copysign(1, a.major-b.major)) }) {
			for i := 1; i < len(rows); i++ {
				if rows[i].major < rows[i-1].major {
					t.Errorf("%v: %s stands behind %s", s.Name(), rows[i].designation, rows[i-1].designation)
				}
			}
		}
		if tab := s.row(); tab.sizes != nil && len(tab.sizes) != len(tab.rows) || tab.gauge != nil && len(tab.gauge) != len(tab.listed) {
			t.Errorf("%v: columns of unequal length", s.Name())
		}
		for th := range s.All() {
			for i := range len(th.from) {
				if s.row().keyed(th.from[i]) == "unknown source" {
					t.Errorf("%v: no source for letter %c", th, th.from[i])
				}
			}
		}
	}
}

// BS 93: the pitch is 0.9ⁿ mm and the diameter 6 p^1.2 mm, both to two figures,
// and the depth 0.6 of the pitch to the nearest 0.005 mm.
func TestBALaw(t *testing.T) {
	two := func(x float64) string { return strconv.FormatFloat(x, 'g', 2, 64) }
	for n, r := range ba {
		p := math.Pow(0.9, float64(n))
		if two(p) != two(r.pitch) {
			t.Errorf("%d BA: pitch %v, rule %s", n, r.pitch, two(p))
		}
		if d := 6 * math.Pow(p, 1.2); two(d) != two(r.major) {
			t.Errorf("%d BA: major %v, rule %s", n, r.major, two(d))
		}
		depth := math.Round(0.6*r.pitch/0.005) * 0.005
		figures.Near(t, r.designation+" effective", r.effective, r.major-depth, 1e-9)
		figures.Near(t, r.designation+" minor", r.minor, r.major-2*depth, 1e-9)
		if r.size != float64(n) {
			t.Errorf("%s stands in line %d", r.designation, n)
		}
	}
	// The watch sizes of Kaye and Laby: to the nearest 0.01 mm.
	for i, r := range baSmall {
		n := float64(len(ba) + i)
		figures.Near(t, r.designation+" pitch", r.pitch, math.Pow(0.9, n), 0.0051)
		figures.Near(t, r.designation+" major", r.major, 6*math.Pow(math.Pow(0.9, n), 1.2), 0.0051)
	}
}

// Find takes a pitch of more than 6 for threads per inch and one of less than 3
// for millimetres.
func TestPitchesShowTheirUnit(t *testing.T) {
	for s := range AllSeries() {
		tab := s.row()
		for i := range s.Len() {
			if p := tab.printedPitch(i); tab.tpi && p < 3 || !tab.tpi && p > 6 {
				t.Errorf("%v: pitch %v", s.at(i), p)
			}
		}
	}
}

// British pipe threads: the tabulated diameters are the Whitworth profile on the
// tabulated major diameter, to 0.001 mm, and R is G at its gauge plane.
func TestPipeLaw(t *testing.T) {
	majors := map[float64]Thread{}
	for _, s := range []Series{BSPParallel, BSPTaper} {
		for th := range s.All() {
			figures.Near(t, th.Designation()+" effective", th.Effective().Millimetres(), (th.Major() - WhitworthForm.EffectiveBelow(th.Pitch())).Millimetres(), 0.001)
			figures.Near(t, th.Designation()+" minor", th.Minor().Millimetres(), (th.Major() - WhitworthForm.MinorBelow(th.Pitch())).Millimetres(), 0.001)
		}
	}
	for i, r := range bspParallel {
		majors[r.size] = BSPParallel.at(i)
	}
	for i, r := range bspTaper {
		if g, taper := majors[r.size], BSPTaper.at(i); g.Major() != taper.Major() || g.Pitch() != taper.Pitch() || g.Minor() != taper.Minor() {
			t.Errorf("%v and %v differ", g, taper)
		}
	}
}

// Inch sizes are fractions with a denominator of 64 or less, number sizes of
// 0.060 + 0.013n, or in the list of the Cycle Engineers' Institute decimals.
func TestInchSizes(t *testing.T) {
	for s := range AllSeries() {
		if s.row().unit != units.Inch || s == CEI || s == NPT {
			continue
		}
		for _, r := range s.row().rows {
			n := math.Round((r.major - 0.060) / 0.013)
			if r.designation[0] == '#' {
				if numberSize(n) != r.major {
					t.Errorf("%s: %v in", r.designation, r.major)
				}
				continue
			}
			if x := r.major * 64; x != math.Trunc(x) {
				t.Errorf("%s: %v in", r.designation, r.major)
			}
		}
	}
}

// ISO 261 has these pitches, coarse and fine; the coarse is the largest.
func TestISOPitches(t *testing.T) {
	pitches := []float64{0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6, 0.7, 0.75, 0.8, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6}
	coarse := map[float64]float64{}
	for _, r := range isoCoarse {
		coarse[r.major] = r.pitch
	}
	for _, r := range append(slices.Clone(isoCoarse), isoFine...) {
		if !slices.Contains(pitches, r.pitch) {
			t.Errorf("%s: pitch %v", r.designation, r.pitch)
		}
	}
	for _, r := range isoFine {
		if c, ok := coarse[r.major]; ok && !(r.pitch < c) {
			t.Errorf("%s is not finer than the coarse pitch, %v", r.designation, c)
		}
	}
	last := 0.0
	for _, r := range isoCoarse {
		if r.pitch < last {
			t.Errorf("%s: the coarse pitch falls", r.designation)
		}
		last = r.pitch
	}
}

// SI is ISO coarse from 6 mm up, in diameter and pitch.
func TestSIIsISOCoarseFromSixUp(t *testing.T) {
	coarse := map[float64]float64{}
	for _, r := range isoCoarse {
		coarse[r.major] = r.pitch
	}
	for _, r := range si {
		if coarse[r.major] != r.pitch {
			t.Errorf("%s: ISO has %v", r.designation, coarse[r.major])
		}
	}
}

// The classic pairs of threads that look alike, with the figures that part them.
func TestConfusions(t *testing.T) {
	const source = "geometry of the forms and lists"
	for _, tc := range []struct{ thread, effective, minor string }{
		{"1/4 BSF", "", "5.099"}, {"0.25-26 CEI", "", "5.309"}, {"1/4-20 BSW", "5.537", "4.724"}, {"1/4-20 UNC", "5.525", "4.975"},
		{"7/16-20 UNF", "", "9.738"}, {"7/16-20 cycle", "", "9.759"}, {"7/16-20 Whit form", "", "9.486"},
	} {
		th := mustFind(t, tc.thread)
		if tc.effective != "" {
			figures.Figure{Printed: tc.effective, Source: source}.Check(t, th.Effective().Millimetres())
		}
		figures.Figure{Printed: tc.minor, Source: source}.Check(t, th.Minor().Millimetres())
	}
	if !mustFind(t, "1/4-26 brass").Same(mustFind(t, "1/4 BSF")) || mustFind(t, "1/4-26 brass").Same(mustFind(t, "0.25-26 CEI")) {
		t.Error("1/4 brass is 1/4 BSF and not the cycle thread")
	}
	figures.Figure{Printed: "0.023", Source: source + ": 26 threads per inch beside 1 mm"}.Check(t, 1-mustFind(t, "5/16-26 BSC").Pitch().Millimetres())
}

// Figures that stand wrong in print.
func TestMisprintsOfTheLists(t *testing.T) {
	for _, m := range []struct {
		printed, source string
		got             float64
		reason          string
	}{
		{"1.6", "internet sheet of BA threads, core = D − 1.6p", BAForm.MinorBelow(units.Millimetre).Millimetres(), "the core is D − 1.2p"},
		{"0.2", "internet sheet of BA threads, effective = D − 0.2p", BAForm.EffectiveBelow(units.Millimetre).Millimetres(), "the effective diameter is D − 0.6p"},
		{"0.5376", "model-engineer.co.uk, 10 Feb 2018, depth of cycle threads over p", CycleForm.Depth(units.Millimetre).Millimetres(), "geometry with r = p/6 gives 0.5327, and the core diameters of the lists agree"},
		{"0.980491", "web copy of GOST 6357, H over p", WhitworthForm.Height(units.Millimetre).Millimetres(), "the Whitworth triangle is 0.960491p"},
		{"9.729", "older GOST pipe tables, G 1/8 major", mustFind(t, "G 1/8").Major().Millimetres(), "ISO 228 has 9.728"},
		{"9.148", "older GOST pipe tables, G 1/8 effective", mustFind(t, "G 1/8").Effective().Millimetres(), "ISO 228 has 9.147"},
		{"8.567", "older GOST pipe tables, G 1/8 minor", mustFind(t, "G 1/8").Minor().Millimetres(), "ISO 228 has 8.566"},
		{"15.394", "coarse metric chart, M18 minor", mustFind(t, "M18").Minor().Millimetres(), "it is 15.294"},
		{"1.625", "web table of bottom brackets, 1 3/8-24 major, inches", mustFind(t, "1.37-24 CEI").Major().Inches(), "the core of 1.326 beside it fits a major of 1.370"},
		{"29", "Urban Velo, issue 25, threads per inch of 1.29 in", mustFind(t, "1.29-24 CEI").TPI(), "24 is meant"},
		{"0.667", "UNC sheet of 2016, 2-56 minor, inches", round(mustFind(t, "#2-56 UNC").Minor().Inches(), 4), "0.0667 is meant"},
		{"0.0855", "UNC sheet of 2016, 3-48 2B effective maximum, inches", effectiveMax(t, "#3-48 UNC", "2B").Inches(), "0.0885 is meant; 0.0855 is the minimum"},
		{"30.663", "BS 3643 Part 2 reprint, Machinery's Handbook, 27th ed., p. 1822, 33x2 8g effective maximum", effectiveMaxBolt(t, "M33x2", "8g").Millimetres(), "31.663 is meant"},
		{"27.925", "BS 3643 Part 2 reprint, Machinery's Handbook, 27th ed., p. 1822, 30x2 6H effective maximum", effectiveMax(t, "M30x2", "6H").Millimetres(), "28.925 is meant"},
	} {
		figures.Figure{Printed: m.printed, Source: m.source}.Misprint(t, m.got, m.reason)
	}
	// The figures meant.
	figures.Figure{Printed: "31.663", Source: "BS 3643 Part 2, the misprint of M33x2 8g put right"}.Check(t, effectiveMaxBolt(t, "M33x2", "8g").Millimetres())
	figures.Figure{Printed: "28.925", Source: "BS 3643 Part 2, the misprint of M30x2 6H put right"}.Check(t, effectiveMax(t, "M30x2", "6H").Millimetres())
	figures.Figure{Printed: "1.326", Source: "public web table of BSC threads, core of 1 3/8-24, inches"}.Check(t, mustFind(t, "1.37-24 CEI").Minor().Inches())
	figures.Figure{Printed: "0.959", Source: "public web table of BSC threads, core of 1-26, inches"}.Check(t, mustFind(t, "1-26 BSC").Minor().Inches())
}

func effectiveMax(t *testing.T, designation, class string) units.Length {
	t.Helper()
	l, err := mustFind(t, designation).NutLimits(class)
	if err != nil {
		t.Fatal(err)
	}
	return l.Effective.Max
}

func effectiveMaxBolt(t *testing.T, designation, class string) units.Length {
	t.Helper()
	l, err := mustFind(t, designation).BoltLimits(class)
	if err != nil {
		t.Fatal(err)
	}
	return l.Effective.Max
}

// Every note is about a size there is, and none hides another.
func TestNotes(t *testing.T) {
	for i, n := range sizeNotes {
		if th := mustFind(t, n.designation); th.Note() != n.note {
			t.Errorf("note %d, %v: %q", i, th, th.Note())
		}
	}
	if n := mustFind(t, "M8").Note(); n != "" {
		t.Errorf("M8: %q", n)
	}
	for series, designation := range map[Series]string{USS: "1/2-12 USS", Cycle20: "1/2-20 cycle", SI: "SI 8", ME: "1/4-40 ME", Brass: "1/4 brass", BSPTaper: "R 1/2", NPT: "1/4 NPT", BA: "17 BA"} {
		if th := mustFind(t, designation); th.Note() == "" || th.Series() != series {
			t.Errorf("%v has no note", th)
		}
	}
}

// Gauge lengths: ISO 7-1. They grow with the size, by turns that are a handful.
func TestGaugeLengths(t *testing.T) {
	for size, printed := range map[string]string{"1/8": "4.0", "1/4": "6.0", "1/2": "8.2", "1": "10.4", "2": "15.9", "6": "28.6"} {
		l, ok := mustFind(t, "R "+size).GaugeLength()
		if !ok {
			t.Fatal(size)
		}
		figures.Figure{Printed: printed, Source: "ISO 7-1 (Wikipedia, British Standard Pipe)"}.Check(t, l.Millimetres())
	}
	last := units.Length(0)
	for th := range BSPTaper.All() {
		l, ok := th.GaugeLength()
		if turns := float64(l / th.Pitch()); !ok || l < last || turns < 4 || turns > 13 {
			t.Errorf("%v: gauge length %v, %.1f turns", th, l, turns)
		}
		last = l
	}
	if _, ok := mustFind(t, "G 1/2").GaugeLength(); ok {
		t.Error("a parallel thread has a gauge length")
	}
}

// NPT: the plane in which the crests come out to the pipe lies between the plane
// of hand-tight engagement and the end of the useful thread (E1, L1 and L2 of
// ASME B1.20.1, inches: unifiedalloys.com; Scribd document 468524381), and the
// depth of thread is the one printed.
func TestNPTAgainstPrint(t *testing.T) {
	const source = "ASME B1.20.1 (unifiedalloys.com; Scribd document 468524381)"
	for _, r := range []struct {
		size, pitch, depth string
		e1, l1, l2         float64
	}{
		{"1/8", "0.03704", "0.02963", 0.37360, 0.162, 0.2639}, {"1/4", "0.05556", "0.04444", 0.49163, 0.228, 0.4018},
		{"3/8", "0.05556", "0.04444", 0.62701, 0.240, 0.4078}, {"1/2", "0.07143", "0.05714", 0.77843, 0.320, 0.5337},
		{"3/4", "0.07143", "0.05714", 0.98887, 0.339, 0.5457}, {"1", "0.08696", "0.06957", 1.23863, 0.400, 0.6828},
		{"1 1/4", "0.08696", "0.06957", 1.58338, 0.420, 0.7068}, {"1 1/2", "0.08696", "0.06957", 1.82234, 0.420, 0.7235},
		{"2", "0.08696", "0.06957", 2.29627, 0.436, 0.7565},
	} {
		th := mustFind(t, r.size+" NPT")
		figures.Figure{Printed: r.pitch, Source: source}.Check(t, th.Pitch().Inches())
		figures.Figure{Printed: r.depth, Source: source}.Check(t, th.Form().Depth(th.Pitch()).Inches())
		if at := r.l1 + 16*(th.Effective().Inches()-r.e1); !(at > r.l1 && at < r.l2) {
			t.Errorf("%v: its plane lies %.3f in from the end, want between %v and %v", th, at, r.l1, r.l2)
		}
	}
	for size, od := range map[string]string{"1/16": "0.3125", "1/8": "0.405", "1/4": "0.540", "3/8": "0.675", "1/2": "0.840", "3/4": "1.050", "1": "1.315", "1 1/4": "1.660", "1 1/2": "1.900", "2": "2.375"} {
		figures.Figure{Printed: od, Source: "nusil.avantorsciences.com, standard pipe thread fittings, actual outside diameter in inches"}.Check(t, mustFind(t, size+" NPT").Major().Inches())
	}
}
