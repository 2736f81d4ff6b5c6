package threads

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// r40 is the series of preferred numbers to which ISO 965-1 rounds its
// tolerances (ISO 3, R40; ASME B1.13M-2005, clause 6.2), as a decade from 100.
var r40 = []float64{100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236,
	250, 265, 280, 300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950, 1000}

// nearestR40 returns the preferred number nearest to a tolerance in
// micrometres; those under 100 are whole micrometres, halves to even.
func nearestR40(um float64) float64 {
	sign, scale := 1.0, 1.0
	if um < 0 {
		sign, um = -1, -um
	}
	for um > 1000 {
		um, scale = um/10, scale*10
	}
	for um < 100 {
		um, scale = um*10, scale/10
	}
	best := r40[0]
	for _, n := range r40 {
		if math.Abs(n-um) < math.Abs(best-um) {
			best = n
		}
	}
	return sign * math.RoundToEven(best*scale)
}

// The formulas behind the tables of ISO 965-1 (Machinery's Handbook, 27th ed.,
// pp. 1797 and 1819), micrometres from millimetres.
func isoTdFormula(p float64, grade int) float64 {
	return (180*math.Pow(p, 2./3) - 3.15/math.Sqrt(p)) * map[int]float64{4: 0.63, 6: 1, 8: 1.6}[grade]
}

func isoTD1Formula(p float64, grade int) float64 {
	t := 230 * math.Pow(p, 0.7)
	if p < 1 {
		t = 433*p - 190*math.Pow(p, 1.22)
	}
	return t * map[int]float64{4: 0.63, 5: 0.8, 6: 1, 7: 1.25, 8: 1.6}[grade]
}

func isoTd2Formula(p, over, upTo float64) float64 {
	return 90 * math.Pow(p, 0.4) * math.Pow(over*upTo, 0.05) // d is the geometric mean
}

var (
	bolt2Factor = map[int]float64{3: 0.5, 4: 0.63, 5: 0.8, 6: 1, 7: 1.25, 8: 1.6, 9: 2}
	nut2Factor  = map[int]float64{4: 0.85, 5: 1.06, 6: 1.32, 7: 1.7, 8: 2.12}
)

// isoCells ranges over every figure of the tables with what its formula gives.
func isoCells(yield func(what string, printed int16, mark byte, formula float64)) {
	for _, r := range isoDeviations {
		for i, a := range [...]float64{-50, -30, -15, 15} {
			if r.um[i] != gap {
				yield("deviation "+string("efgG"[i])+" at "+g(r.pitch), r.um[i], r.marks[i], a+math.Copysign(11*r.pitch, a))
			}
		}
	}
	crest := func(name string, rows []pitchRow, grades []int, formula func(float64, int) float64) {
		for _, r := range rows {
			for i, grade := range grades {
				if r.um[i] != gap {
					yield(name+" grade "+g(float64(grade))+" at "+g(r.pitch), r.um[i], r.marks[i], formula(r.pitch, grade))
				}
			}
		}
	}
	crest("Td", isoTd, []int{4, 6, 8}, isoTdFormula)
	crest("TD1", isoTD1, []int{4, 5, 6, 7, 8}, isoTD1Formula)
	effective := func(name string, rows []rangeRow, first int, factor map[int]float64) {
		for _, r := range rows {
			for i := range r.um {
				if r.um[i] != gap {
					yield(name+" grade "+g(float64(first+i))+" at "+g(r.pitch)+" over "+g(r.over), r.um[i], r.marks[i],
						isoTd2Formula(r.pitch, r.over, r.upTo)*factor[first+i])
				}
			}
		}
	}
	effective("Td2", isoTd2, 3, bolt2Factor)
	effective("TD2", isoTD2, 4, nut2Factor)
}

func g(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// The tables of ISO 965-1 against the formulas they were made with. Most cells
// are the formula rounded to R40. About one in nine is not, in print too, and
// those are a step or two of R40 away and stand in the record.
func TestISO965TolerancesAgainstTheirFormulas(t *testing.T) {
	cells, differ := 0, 0
	isoCells(func(what string, printed int16, mark byte, formula float64) {
		if strings.HasPrefix(what, "deviation") {
			return
		}
		cells++
		source := "ISO 965-1 tolerance tables against the formulas of Machinery's Handbook, 27th ed., pp. 1797 and 1819"
		if mark == memoryLetter {
			source += ", table cells from memory"
		}
		f := figures.Figure{Printed: strconv.Itoa(int(printed)), Source: source}
		rounded := nearestR40(formula)
		if rounded == float64(printed) {
			f.Check(t, rounded)
			return
		}
		differ++
		f.Misprint(t, rounded, what+": no misprint; the table rules, and the formula rounds to a neighbour")
		if ratio := float64(printed) / formula; ratio < 0.93 || ratio > 1.07 {
			t.Errorf("%s: %d lies more than a step of R40 from the formula, %.2f", what, printed, formula)
		}
	})
	if cells != 593 || differ != 69 {
		t.Errorf("%d of %d cells differ from the formula, want 69 of 593", differ, cells)
	}
}

// Deviations follow their formulas less closely: within 2.5 micrometres, but
// for position e at the two finest pitches.
func TestISO965DeviationsAgainstTheirFormulas(t *testing.T) {
	isoCells(func(what string, printed int16, mark byte, formula float64) {
		if !strings.HasPrefix(what, "deviation") {
			return
		}
		tol := 2.5
		switch what {
		case "deviation e at 0.5":
			tol = 5.5
		case "deviation e at 0.6":
			tol = 3.6
		}
		figures.Near(t, what, float64(printed), formula, tol+1e-9)
	})
}

// Where the standard has two tolerances side by side, the coarser grade, the
// coarser pitch and the larger diameter never have the smaller one.
func TestISO965TablesGrowBothWays(t *testing.T) {
	grow := func(name string, rows []rangeRow) {
		for i, r := range rows {
			last := int16(0)
			for _, um := range r.um {
				if um == gap {
					continue
				}
				if um <= last {
					t.Errorf("%s, %v over %v: %v does not grow with the grade", name, r.pitch, r.over, r.um)
				}
				last = um
			}
			for _, s := range rows[:i] {
				for k := range r.um {
					if s.um[k] != gap && r.um[k] != gap && s.pitch <= r.pitch && s.over <= r.over && s.um[k] > r.um[k] {
						t.Errorf("%s: %v over %v has %d, less than %v over %v with %d", name, r.pitch, r.over, r.um[k], s.pitch, s.over, s.um[k])
					}
				}
			}
		}
	}
	grow("Td2", isoTd2)
	grow("TD2", isoTD2)
	for name, rows := range map[string][]pitchRow{"Td": isoTd, "TD1": isoTD1} {
		var wide []rangeRow
		for _, r := range rows {
			wide = append(wide, rangeRow{pitchRow: r})
		}
		grow(name, wide)
	}
}

func TestEveryISOFigureHasItsMark(t *testing.T) {
	check := func(what string, um []int16, marks string) {
		if len(um) != len(marks) {
			t.Fatalf("%s: %d figures and %d marks", what, len(um), len(marks))
		}
		for i := range um {
			if (um[i] == gap) != (marks[i] == '-') || !strings.ContainsRune("12m-", rune(marks[i])) {
				t.Errorf("%s: figure %d with mark %c", what, um[i], marks[i])
			}
		}
	}
	for name, rows := range map[string][]pitchRow{"deviations": isoDeviations, "Td": isoTd, "TD1": isoTD1} {
		for _, r := range rows {
			check(name+" "+g(r.pitch), r.um, r.marks)
		}
	}
	for name, rows := range map[string][]rangeRow{"Td2": isoTd2, "TD2": isoTD2} {
		for _, r := range rows {
			check(name+" "+g(r.pitch), r.um, r.marks)
		}
	}
}

func mustFind(t testing.TB, designation string) Thread {
	t.Helper()
	th, err := Find(designation)
	if err != nil {
		t.Fatal(err)
	}
	return th
}

func TestBALimits(t *testing.T) {
	const source = "BS 93:1951 tolerances, Machinery's Handbook, 31st ed., p. 2115"
	for _, tc := range []struct {
		thread, class             string
		part                      Part
		major, effective, minor   string // tolerance, mm
		majorMax, effMax, minorMx string // mm, of a bolt; least of a nut
	}{
		// p = 0.81 mm: 0.15p, 0.08p + 0.02, 0.16p + 0.04.
		{"2 BA", "close", Bolt, "0.1215", "0.0848", "0.1696", "4.700", "4.215", "3.730"},
		{"2 BA", "normal", Bolt, "0.162", "0.106", "0.212", "4.675", "4.190", "3.705"},
		{"12 BA", "normal", Bolt, "0.070", "0.053", "0.106", "1.300", "1.130", "0.960"},
		{"2 BA", "normal", Nut, "", "0.1272", "0.30375", "4.700", "4.215", "3.730"},
	} {
		th := mustFind(t, tc.thread)
		l, err := th.limits(tc.part, tc.class, 0)
		if err != nil {
			t.Fatal(err)
		}
		check := func(printed string, got units.Length) {
			if printed != "" {
				figures.Figure{Printed: printed, Source: source}.Check(t, got.Millimetres())
			}
		}
		check(tc.effective, l.Effective.Width())
		check(tc.minor, l.Minor.Width())
		if tc.part == Nut {
			check(tc.majorMax, l.Major.Min)
			check(tc.effMax, l.Effective.Min)
			check(tc.minorMx, l.Minor.Min)
			continue
		}
		check(tc.major, l.Major.Width())
		check(tc.majorMax, l.Major.Max)
		check(tc.effMax, l.Effective.Max)
		check(tc.minorMx, l.Minor.Max)
	}
}

// The figures by which a good bolt may lie under nominal, worked by hand from
// the formulas of the standards.
func TestHowFarABoltMayLieUnderNominal(t *testing.T) {
	for _, tc := range []struct {
		thread, class string
		most, least   string
		inch          bool
		source        string
	}{
		{"M8x1.25", "6g", "0.240", "0.028", false, "ASME B1.13M external limits chart, 7.972 to 7.760"},
		{"M10x1.5", "6g", "0.268", "0.032", false, "ASME B1.13M external limits chart, 9.968 to 9.732"},
		{"M3x0.5", "6g", "0.126", "0.020", false, "ASME B1.13M external limits chart, 2.980 to 2.874"},
		{"1/4-20 UNC", "2A", "0.0092", "0.0011", true, "ASME B1.1, from memory, 0.2489 to 0.2408"},
		{"2 BA", "normal", "0.187", "0.025", false, "BS 93:1951, 0.025 and 0.20p"},
		{"2 BA", "close", "0.122", "0", false, "BS 93:1951, 0.15p"},
		{"1/4-20 BSW", "medium", "0.0073", "0.0012", true, "BS 84 formula with L = D, from memory"},
	} {
		th := mustFind(t, tc.thread)
		l, err := th.BoltLimits(tc.class)
		if err != nil {
			t.Fatal(err)
		}
		most, least := (th.Major() - l.Major.Min).Millimetres(), (th.Major() - l.Major.Max).Millimetres()
		if tc.inch {
			most, least = most/25.4, least/25.4
		}
		figures.Figure{Printed: tc.most, Source: tc.source}.Check(t, most)
		figures.Figure{Printed: tc.least, Source: tc.source}.Check(t, least)
	}
}

func TestLimitsRefuse(t *testing.T) {
	for _, tc := range []struct {
		thread, class, want string
		part                Part
	}{
		{"M8", "6H", `class "6H" of M8x1.25: a bolt wants 4h, 6g, 5g6g or the like`, Bolt},
		{"M8", "6g", `class "6g" of M8x1.25: a nut wants 6H, 6G, 5H6H or the like`, Nut},
		{"M8", "5g", "M8x1.25: ISO 965-1 has no grade 5 for the crests of a bolt at pitch 1.25 mm", Bolt},
		{"M8", "5g6h", "a class with two positions, g and h", Bolt},
		{"M8", "", "a bolt wants", Bolt},
		{"M8", "9H", "M8x1.25: ISO 965-1 has no grade 9 for the crests of a nut", Nut},
		{"M1x0.2", "6e", "M1x0.2: ISO 965-1 has no position e at pitch 0.2 mm", Bolt},
		{"M64x1.5", "3H", "ISO 965-1 has no grade 3", Nut},
		{"1/4-20 UNC", "6g", "a bolt wants 1A, 2A or 3A", Bolt},
		{"1/4-20 UNC", "2A", "a nut wants 1B, 2B or 3B", Nut},
		{"2 BA", "medium", "a bolt wants close or normal", Bolt},
		{"2 BA", "close", "BA nuts have one class, normal", Nut},
		{"12 BA", "close", "it ends at 10 BA; want normal", Bolt},
		{"20 BA", "normal", "BS 93 has limits for 0 to 16 BA", Bolt},
		{"1/4 BSF", "normal", "a bolt wants close, medium or free", Bolt},
		{"1/4 BSF", "free", "a nut wants close, medium or normal", Nut},
		{"G 1/4", "A", "no limits of size are known here for British Standard Pipe, parallel", Bolt},
		{"1/4 BSC", "medium", "no limits of size are known here for British Standard Cycle", Bolt},
		{"M8", "6g", "want Bolt or Nut", 2},
	} {
		_, err := mustFind(t, tc.thread).limits(tc.part, tc.class, 0)
		if !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.want) {
			t.Errorf("%s %v %q: %v; want %q", tc.thread, tc.part, tc.class, err, tc.want)
		}
	}
	odd, err := New(ISOForm, 10*units.Millimetre, 1.1*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	large, err := New(ISOForm, 400*units.Millimetre, 6*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	for _, th := range []Thread{odd, large} {
		for _, class := range []string{"6g", "6h"} {
			if _, err := th.BoltLimits(class); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "ISO 965-1 has no") {
				t.Errorf("%v %s: %v", th, class, err)
			}
		}
	}
	for _, bad := range []units.Length{0, -1, units.Length(math.NaN()), units.Length(math.Inf(1))} {
		if _, err := mustFind(t, "1/4 BSF").LimitsOver(Bolt, "medium", bad); !errors.Is(err, units.ErrDomain) {
			t.Errorf("length of engagement %v: %v", bad, err)
		}
	}
	if _, err := mustFind(t, "M8").LimitsOver(Bolt, "6g", units.Inch); err == nil || !strings.Contains(err.Error(), "do not depend") {
		t.Errorf("ISO over a length: %v", err)
	}
}

// Any bolt of any class goes into any nut of any class, since the allowance is
// never negative.
func TestEveryBoltEntersEveryNut(t *testing.T) {
	bolts := []string{"3h4h", "4h", "4g6g", "6e", "6f", "6g", "6h", "7g6g", "8g", "9g8g", "1A", "2A", "3A", "close", "normal", "medium", "free"}
	nuts := []string{"4H", "5H", "6H", "6G", "7H", "8H", "1B", "2B", "3B", "normal", "close", "medium"}
	pairs := 0
	for th := range All() {
		for _, b := range bolts {
			bolt, err := th.BoltLimits(b)
			if err != nil {
				continue
			}
			for _, n := range nuts {
				nut, err := th.NutLimits(n)
				if err != nil {
					continue
				}
				pairs++
				const last = 1e-9 * units.Metre
				if bolt.Effective.Max > nut.Effective.Min+last || bolt.Major.Max > nut.Major.Min+last {
					t.Errorf("%v: bolt %s %v, nut %s %v", th, b, bolt, n, nut)
				}
				if !(bolt.Effective.Min < bolt.Effective.Max && nut.Effective.Min < nut.Effective.Max && bolt.Major.Min < bolt.Major.Max && nut.Minor.Min < nut.Minor.Max) {
					t.Errorf("%v: a range is empty: %v; %v", th, bolt, nut)
				}
			}
		}
	}
	if pairs < 5000 {
		t.Errorf("only %d pairs of classes", pairs)
	}
}

// Lengths of engagement as printed, millimetres: the standard rounds its own
// formula, by a tenth at most.
func TestNormalEngagement(t *testing.T) {
	for _, r := range []struct {
		thread      string
		least, most float64
	}{
		{"M6", 3, 9}, {"M10", 5, 15}, {"M24x2", 8.5, 25}, {"M24", 12, 36}, // Machinery's Handbook, 27th ed., pp. 1792 and 1817
	} {
		got, err := mustFind(t, r.thread).NormalEngagement()
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, r.thread+" least", got.Min.Millimetres(), r.least, 0.1*r.least)
		figures.Near(t, r.thread+" most", got.Max.Millimetres(), r.most, 0.1*r.most)
	}
	big, err := New(ISOForm, 500*units.Millimetre, 6*units.Millimetre)
	if err != nil {
		t.Fatal(err)
	}
	for _, th := range []Thread{big, mustFind(t, "1/4 BSF"), {}} {
		if _, err := th.NormalEngagement(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "normal length of engagement") {
			t.Errorf("%v: %v", th, err)
		}
	}
}

func TestGauges(t *testing.T) {
	th := mustFind(t, "M8")
	bolt, err1 := th.BoltLimits("6g")
	nut, err2 := th.NutLimits("6H")
	if err := errors.Join(err1, err2); err != nil {
		t.Fatal(err)
	}
	// The go gauges are the largest bolt and the smallest nut, and go together.
	d, e, m := bolt.GoGauge()
	D, E, M := nut.GoGauge()
	if !(d < D && e < E && m < M) || bolt.NoGoGauge() != bolt.Effective.Min || nut.NoGoGauge() != nut.Effective.Max {
		t.Errorf("go %v %v %v in %v %v %v; no-go %v and %v", d, e, m, D, E, M, bolt.NoGoGauge(), nut.NoGoGauge())
	}
	r := Range{7 * units.Millimetre, 8 * units.Millimetre}
	const mm = units.Millimetre
	for _, tc := range []struct {
		value, std units.Length
		want       Verdict
	}{
		{7.5 * mm, 0.1 * mm, Good}, {7 * mm, 0, Good}, {8 * mm, 0, Good}, {6.9 * mm, 0, TooSmall}, {8.1 * mm, 0, TooLarge},
		{7.1 * mm, 0.06 * mm, Doubtful}, {6.9 * mm, 0.06 * mm, Doubtful}, {8.05 * mm, 0.03 * mm, Doubtful},
		{6.9 * mm, 0.04 * mm, TooSmall}, {8.1 * mm, -0.04 * mm, TooLarge}, {units.Length(math.NaN()), 0, Doubtful}, {7.5 * mm, 1, Doubtful},
	} {
		if got := r.Judge(units.WithStd(tc.value, tc.std)); got != tc.want {
			t.Errorf("%v, u %v: %v, want %v", tc.value, tc.std, got, tc.want)
		}
	}
	for v, want := range map[Verdict]string{Good: "good", TooSmall: "too small", TooLarge: "too large", Doubtful: "doubtful", 9: "unknown verdict"} {
		if v.String() != want {
			t.Errorf("verdict %d is %q", v, v)
		}
	}
}

// BS 84 worked by hand for 1/2-12 BSW: T = 0.0051521 in, √p = 0.2886751.
func TestWhitworthLimitsByHand(t *testing.T) {
	const source = "BS 84:1956 formulas, from memory, worked by hand"
	check := func(what, printed string, got units.Length) {
		t.Helper()
		figures.Figure{Printed: printed, Source: source}.Check(t, got.Inches())
	}
	half := mustFind(t, "1/2 BSW")
	for _, r := range []struct{ class, allowance, major, effective, minor string }{
		{"close", "0.000000", "0.006321", "0.003435", "0.007188"},
		{"medium", "0.001546", "0.008039", "0.005152", "0.010926"},
		{"free", "0.001546", "0.010615", "0.007728", "0.013502"},
	} {
		l, err := half.BoltLimits(r.class)
		if err != nil {
			t.Fatal(err)
		}
		check("allowance", r.allowance, half.Major()-l.Major.Max)
		check("allowance", r.allowance, half.Effective()-l.Effective.Max)
		check("allowance", r.allowance, half.Minor()-l.Minor.Max)
		check("major", r.major, l.Major.Width())
		check("effective", r.effective, l.Effective.Width())
		check("minor", r.minor, l.Minor.Width())
	}
	for _, r := range []struct{ thread, class, effective, minor string }{
		{"1/2 BSW", "close", "0.003435", "0.023667"}, {"1/2 BSW", "medium", "0.005152", "0.023667"},
		{"1/2 BSW", "normal", "0.007728", "0.023667"},
		{"1/4 BSF", "medium", "", "0.011692"}, {"3/16 BSW", "medium", "", "0.013333"}, {"5/16 BSF", "medium", "", "0.014091"},
	} {
		l, err := mustFind(t, r.thread).NutLimits(r.class)
		if err != nil {
			t.Fatal(err)
		}
		if r.effective != "" {
			check("effective", r.effective, l.Effective.Width())
		}
		check("minor", r.minor, l.Minor.Width())
	}
	// Under 1/4 in the allowance is that of 1/4 in, over 3/4 in there is none.
	for _, r := range []struct{ thread, allowance string }{{"3/16 BSW", "0.001163"}, {"3/4 BSW", "0.001799"}, {"13/16 BSW", "0.000000"}} {
		th := mustFind(t, r.thread)
		l, err := th.BoltLimits("medium")
		if err != nil {
			t.Fatal(err)
		}
		check("allowance", r.allowance, th.Major()-l.Major.Max)
	}
	small, err := New(WhitworthForm, units.Inch/8, units.Inch/40)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := small.BoltLimits("free"); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "this is neither") {
		t.Error(err)
	}
	if _, err := small.BoltLimits("close"); err != nil {
		t.Error(err)
	}
}

// 1/4-20 UNC in the loose classes: ASME B1.1, table of limits of size, from memory.
func TestLooseUnifiedClasses(t *testing.T) {
	const source = "ASME B1.1, limits of 1/4-20 UNC 1A and 1B, from memory"
	th := mustFind(t, "1/4-20 UNC")
	bolt, err1 := th.BoltLimits("1A")
	nut, err2 := th.NutLimits("1B")
	if err := errors.Join(err1, err2); err != nil {
		t.Fatal(err)
	}
	for _, r := range []struct {
		printed string
		got     units.Length
	}{
		{"0.2489", bolt.Major.Max}, {"0.2367", bolt.Major.Min}, {"0.2164", bolt.Effective.Max}, {"0.2108", bolt.Effective.Min},
		{"0.2175", nut.Effective.Min}, {"0.2248", nut.Effective.Max}, {"0.1960", nut.Minor.Min}, {"0.2070", nut.Minor.Max},
	} {
		figures.Figure{Printed: r.printed, Source: source}.Check(t, r.got.Inches())
	}
}
