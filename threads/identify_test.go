package threads

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

// over returns the pitch from a length over n threads.
func over(t testing.TB, n int, length, std units.Length) units.Reading[units.Length] {
	t.Helper()
	p, err := PitchOver(n, units.WithStd(length, std))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func identify(t testing.TB, r Readings) Identification {
	t.Helper()
	got, err := Identify(r)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// names returns the designations of a candidate, joined.
func names(c Candidate) string {
	var all []string
	for _, n := range c.Names() {
		all = append(all, n.Designation())
	}
	return strings.Join(all, ", ")
}

// An exact bolt of each thread, worn by nothing, has the thread among the
// first, behind none that is more like it.
func TestIdentifyFindsEveryThread(t *testing.T) {
	for th := range All() {
		for _, part := range []Part{Bolt, Nut} {
			r := Readings{Part: part, Angle: units.WithStd(th.Form().Angle(), 0.1*units.Degree)}
			middle := units.Length(workOn(th, part).crest.low + workOn(th, part).crest.span/2)
			r.Crest = units.Exact(th.Major() - middle)
			if part == Nut {
				r.Crest = units.Exact(th.Minor() + middle)
			}
			r.Pitch = units.Exact(th.Pitch())
			r.Taper = Parallel
			if th.Taper() != 0 {
				r.Taper = Tapered
			}
			got := identify(t, r)
			found := slices.ContainsFunc(got.Candidates, func(c Candidate) bool {
				return c.isNamed(th) && c.Probability > 0.05
			})
			if !found {
				t.Errorf("%v as %v is not among %d candidates, the first %v", th, part, len(got.Candidates), got.Candidates)
			}
			for _, c := range got.Candidates {
				if c.Thread().Form().Angle() != th.Form().Angle() && c.Probability > 1e-3 {
					t.Errorf("%v as %v: %v has another angle and probability %.3g", th, part, c.Thread(), c.Probability)
				}
			}
		}
	}
}

func TestIdentificationIsOrderedAndSums(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		std := units.Length(rapid.Float64Range(0.001e-3, 0.5e-3).Draw(t, "std"))
		r := Readings{
			Part:  rapid.SampledFrom([]Part{Bolt, Nut}).Draw(t, "part"),
			Crest: units.WithStd(units.Length(rapid.Float64Range(0.2e-3, 100e-3).Draw(t, "crest")), std),
			Wear:  units.Length(rapid.Float64Range(0, 1e-3).Draw(t, "wear")),
		}
		if rapid.Bool().Draw(t, "pitch") {
			r.Pitch = units.WithStd(units.Length(rapid.Float64Range(0.05e-3, 7e-3).Draw(t, "pitch")), std/10)
		}
		got, err := Identify(r)
		if err != nil {
			t.Fatal(err)
		}
		sum, last := got.Unlisted, 1.
		for _, c := range got.Candidates {
			if !(c.Probability <= last && c.Probability >= least) {
				t.Errorf("%v with %g after %g", c.Thread(), c.Probability, last)
			}
			sum, last = sum+c.Probability, c.Probability
		}
		if !(math.Abs(sum-1) < 1e-3) || !(got.Unlisted > 0) {
			t.Errorf("probabilities sum to %g, %g unlisted", sum, got.Unlisted)
		}
		if p, ok := got.Parting(); ok && p.String() == "" {
			t.Error("a parting without words")
		}
	})
}

// Whatever is read, the answer is one of probabilities.
func TestIdentifyAnyReadings(t *testing.T) {
	number := rapid.OneOf(rapid.Float64Range(0, 0.2), rapid.Float64Range(0, math.MaxFloat64), rapid.Just(0.), rapid.Just(5e-324))
	length := func(t *rapid.T, what string) units.Reading[units.Length] {
		return units.Reading[units.Length]{
			Value: units.Length(number.Draw(t, what)), Std: units.Length(number.Draw(t, what+" std")), DoF: number.Draw(t, what+" dof"),
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		got, err := Identify(Readings{
			Part:  rapid.SampledFrom([]Part{Bolt, Nut}).Draw(t, "part"),
			Crest: length(t, "crest"), Effective: length(t, "effective"), Root: length(t, "root"), Pitch: length(t, "pitch"),
			Angle: units.WithStd(units.Angle(number.Draw(t, "angle")), units.Angle(number.Draw(t, "angle std"))),
			Wear:  units.Length(number.Draw(t, "wear")),
			Taper: rapid.SampledFrom([]TaperSeen{TaperNotLooked, Parallel, Tapered}).Draw(t, "taper"),
		})
		if err != nil {
			if !errors.Is(err, units.ErrDomain) {
				t.Fatal(err)
			}
			return
		}
		sum := got.Unlisted
		for _, c := range got.Candidates {
			sum += c.Probability
		}
		if !(got.Unlisted >= 0 && math.Abs(sum-1) < 1e-3) {
			t.Errorf("probabilities sum to %g, %g unlisted", sum, got.Unlisted)
		}
	})
}

// The density of the model is a density: it comes to 1 over all readings.
func TestSpreadComesToOne(t *testing.T) {
	for _, tc := range []struct {
		s       spread
		u, wear float64
	}{
		{spread{0, 0.2}, 0.01, 0}, {spread{0, 0.2}, 0.3, 0}, {spread{-0.1, 0.2}, 0.02, 0.5},
		{spread{0, 0.05}, 0.001, 0.05}, {spread{-0.3, 1}, 0.1, 0.0002}, {spread{0, 0.2}, 0.02, 3},
	} {
		const n = 200_000
		from, to := tc.s.low-8*tc.u, tc.s.low+tc.s.span+tc.wear+8*tc.u
		sum, mean := 0., 0.
		for i := range n {
			x := from + (to-from)*(float64(i)+0.5)/n
			d := tc.s.density(x, tc.u, tc.wear) * (to - from) / n
			sum, mean = sum+d, mean+d*x
		}
		figures.Near(t, "all of the density", sum, 1, 1e-6)
		figures.Near(t, "its mean", mean, tc.s.low+tc.s.span/2+tc.wear/2, 1e-4)
	}
}

// Where wear ends and no wear begins the density does not jump.
func TestSpreadIsContinuousInWear(t *testing.T) {
	s := spread{0, 0.2}
	for _, x := range []float64{-0.01, 0, 0.1, 0.2, 0.21} {
		a, b := s.density(x, 0.01, 0.999e-5), s.density(x, 0.01, 1.001e-5)
		figures.Near(t, "density", a, b, 0.01*math.Max(a, b)+1e-12)
	}
}

// The workmanship of the model against limits in print: how far under nominal
// a good bolt may be.
func TestWorkmanshipAgainstLimits(t *testing.T) {
	for _, tc := range []struct{ thread, class string }{
		{"M3", "6g"}, {"M5", "6g"}, {"M8", "6g"}, {"M10", "6g"}, {"M12x1", "6g"},
		{"1/4-20 UNC", "2A"}, {"3/8-16 UNC", "2A"}, {"2 BA", "normal"}, {"4 BA", "normal"},
	} {
		th := mustFind(t, tc.thread)
		lim, err := th.BoltLimits(tc.class)
		if err != nil {
			t.Fatal(err)
		}
		work := workOn(th, Bolt)
		figures.Near(t, tc.thread+": most under the major, over what the limits allow",
			work.crest.span/float64(th.Major()-lim.Major.Min), 1, 0.2)
		figures.Near(t, tc.thread+": most under the effective, over what the limits allow",
			work.effective.span/float64(th.Effective()-lim.Effective.Min), 1, 0.25)
	}
}

// The bore of a nut: from all of the thread down to 60 % of it, which takes in
// what ISO 965 allows.
func TestBoreAgainstTheHolesThatAreDrilled(t *testing.T) {
	for _, name := range []string{"M8", "1/4-20 UNC", "3/8 BSF", "2 BA"} {
		th := mustFind(t, name)
		hole, err := th.HoleFor(0.6, BasicThread)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, name+": loosest bore, m", float64(th.Minor())+workOn(th, Nut).crest.span, float64(hole), 1e-12)
	}
	lim, err := mustFind(t, "M8").NutLimits("6H")
	if err != nil || !(lim.Minor.Width() < units.Length(workOn(mustFind(t, "M8"), Nut).crest.span)) {
		t.Errorf("6H bore %v, %v", lim.Minor, err)
	}
}

// To tell 26 to the inch from 1.0 mm, span 10 threads with a caliper
// good to 0.05 mm.
func TestPartingOf26FromOneMillimetre(t *testing.T) {
	p, ok := PartingOf(mustFind(t, "5/16-26 BSC"), mustFind(t, "M8x1"), Bolt)
	if !ok || p.By != ByPitch || !p.Decides || p.Threads < 8 || p.Threads > 10 {
		t.Errorf("%v, %v over %d", ok, p.By, p.Threads)
	}
	figures.Near(t, "difference a thread, mm", (p.Second-p.First).Millimetres()/float64(p.Threads), 0.023, 0.0005)
}

func TestPartingAsksForTheAngleLast(t *testing.T) {
	for _, tc := range []struct {
		a, b    string
		by      Measurement
		decides bool
	}{
		{"1/4-26 BSF", "1/4-26 BSC", ByAngle, true},   // differ in nothing else that a workshop can measure
		{"1/4-20 BSW", "1/4-20 UNC", ByAngle, true},   // the same
		{"0 BA", "M6x1", ByAngle, true},               // the same
		{"1/2-12 BSW", "1/2-13 UNC", ByPitch, true},   // angle differs, and is not asked for
		{"2 BA", "M5x0.8", ByCrest, true},             // 4.70 and 5.00
		{"5/16-22 BSF", "5/16-24 UNF", ByPitch, true}, // 1.155 and 1.058
		{"2 BA", "3/16-32 BSF", ByPitch, true},        // 0.810 and 0.794: over 13 threads, before the angle
		{"G 1/4", "R 1/4", ByTaper, true},
		{"7/8-18 plug", "M22x1.5", ByPitch, true},
		{"1/2-20 UNF", "1/2-20 cycle", ByEffective, false}, // both 60°
		{"M8x1.25", "SI 8x1.25", ByRoot, false},            // one profile but for the root
	} {
		p, ok := PartingOf(mustFind(t, tc.a), mustFind(t, tc.b), Bolt)
		if !ok || p.By != tc.by || p.Decides != tc.decides {
			t.Errorf("%s and %s: %v, %v; want %v", tc.a, tc.b, ok, p, tc.by)
		}
		if !strings.Contains(p.String(), tc.a) || !strings.Contains(p.String(), tc.b) ||
			strings.Contains(p.String(), "undecided") == tc.decides {
			t.Errorf("%s and %s: %q", tc.a, tc.b, p)
		}
	}
	if _, ok := PartingOf(mustFind(t, "1/4-26 BSF"), mustFind(t, "1/4-26 brass"), Bolt); ok {
		t.Error("BSF and brass are one thread at 1/4-26, and were parted")
	}
	if _, ok := PartingOf(Thread{}, mustFind(t, "M8"), Bolt); ok {
		t.Error("no thread was parted")
	}
}

// Taken as well as it says, the measurement does part them: the second falls
// below 5 %.
func TestPartingParts(t *testing.T) {
	a, b := mustFind(t, "1/4-26 BSF"), mustFind(t, "1/4-26 BSC")
	p, _ := PartingOf(a, b, Bolt)
	got := identify(t, Readings{
		Crest: units.WithStd(6.28*units.Millimetre, 0.01*units.Millimetre),
		Pitch: over(t, 10, 9.78*units.Millimetre, 0.05*units.Millimetre),
		Angle: units.WithStd(p.FirstAngle, p.StdAngle),
	})
	if !got.Decided(0.95) || got.Candidates[0].Thread() != a {
		t.Errorf("%v", got.Candidates)
	}
}

func TestIdentifyRefuses(t *testing.T) {
	mm := units.Millimetre
	crest := units.WithStd(6*mm, 0.01*mm)
	for _, tc := range []struct {
		r     Readings
		words []string
	}{
		{Readings{}, []string{"no diameter"}},
		{Readings{Pitch: units.Exact(1 * mm)}, []string{"no diameter"}},
		{Readings{Crest: units.Exact(-6 * mm)}, []string{"diameter over the crests -6 mm", "more than 0 mm"}},
		{Readings{Crest: units.Exact(units.Length(math.NaN()))}, []string{"diameter over the crests"}},
		{Readings{Crest: units.WithStd(6*mm, -mm)}, []string{"uncertainty -1 mm"}},
		{Readings{Crest: crest, Pitch: units.Exact(units.Length(math.Inf(1)))}, []string{"pitch"}},
		{Readings{Crest: crest, Effective: units.Exact(-mm)}, []string{"effective diameter"}},
		{Readings{Crest: crest, Root: units.Exact(-mm)}, []string{"diameter at the root"}},
		{Readings{Crest: crest, Angle: units.Exact(-60 * units.Degree)}, []string{"flank angle -60°"}},
		{Readings{Crest: crest, Wear: -mm}, []string{"wear allowance -1 mm"}},
		{Readings{Crest: units.Reading[units.Length]{Value: 6 * mm, Std: mm, DoF: -1}}, []string{"degrees of freedom"}},
		{Readings{Crest: crest, Part: 5}, []string{"part 5"}},
	} {
		_, err := Identify(tc.r)
		wantError(t, err, units.ErrDomain, tc.words...)
	}
	_, err := PitchOver(0, units.Exact(1*mm))
	wantError(t, err, units.ErrDomain, "0 threads")
	_, err = PitchOver(5, units.Exact(0*mm))
	wantError(t, err, units.ErrDomain, "length 0 mm over 5 threads")
	_, err = PitchByLeaf(TPI(0), 4)
	wantError(t, err, units.ErrDomain, "leaf of pitch")
	_, err = PitchByLeaf(TPI(26), 0)
	wantError(t, err, units.ErrDomain, "0 threads")
	_, err = NewPrior(British, 1955, 1900)
	wantError(t, err, units.ErrDomain, "1955 to 1900")
	_, err = NewPrior(9, 0, 0)
	wantError(t, err, units.ErrDomain, "origin 9")
	_, err = (Prior{}).With(200, 1)
	wantError(t, err, units.ErrDomain, "series 200")
	_, err = (Prior{}).With(BSF, -1)
	wantError(t, err, units.ErrDomain, "weight -1", "BSF")
	_, err = NewIdentifier(func(func(Thread) bool) {})
	wantError(t, err, units.ErrDomain, "no threads")
	_, err = NewIdentifier(slices.Values([]Thread{{}}))
	wantError(t, err, units.ErrDomain, "no thread")
	_, err = (*Identifier)(nil).Identify(Readings{Crest: crest})
	wantError(t, err, units.ErrDomain, "NewIdentifier")
}

func TestPriors(t *testing.T) {
	for s := range AllSeries() {
		row := priors[s]
		if row.british == 0 || row.american == 0 || row.continental == 0 {
			t.Errorf("%v has no prior", s)
		}
		if (Prior{}).Weight(s) != 1 {
			t.Errorf("%v: the flat prior is %g", s, (Prior{}).Weight(s))
		}
	}
	old, err := NewPrior(British, 1900, 1907)
	if err != nil {
		t.Fatal(err)
	}
	later, _ := NewPrior(British, 1920, 1930)
	if !(old.Weight(BSF) == 0.1 && later.Weight(BSF) == 1 && later.Weight(BSW) == 1) {
		t.Errorf("BSF before 1908 %g, after %g", old.Weight(BSF), later.Weight(BSF))
	}
	none, err := (Prior{}).With(BSF, 0)
	if err != nil || none.Weight(BSF) != 0 || none.Weight(BSW) != 1 {
		t.Errorf("%v, %v", none, err)
	}
	mm := units.Millimetre
	r := Readings{Crest: units.WithStd(7.85*mm, 0.01*mm), Pitch: units.WithStd(25.4/22*mm, 0.005*mm)}
	if got := identify(t, r); got.Candidates[0].Thread().Designation() != "5/16-22 BSF" {
		t.Errorf("%v", got.Candidates)
	}
	r.Prior = none
	if got := identify(t, r); len(got.Candidates) > 0 && got.Candidates[0].Thread().Series() == BSF {
		t.Errorf("ruled out, and named: %v", got.Candidates)
	}
	all := Prior{}
	for s := range AllSeries() {
		all, _ = all.With(s, 0)
	}
	r.Prior = all
	_, err = Identify(r)
	wantError(t, err, units.ErrDomain, "prior")
}

func TestAnIdentifierOfTheReadersOwn(t *testing.T) {
	odd, err := New(WhitworthForm, 9*units.Millimetre, TPI(20))
	if err != nil {
		t.Fatal(err)
	}
	id, err := NewIdentifier(slices.Values([]Thread{odd, mustFind(t, "3/8 BSF")}))
	if err != nil {
		t.Fatal(err)
	}
	got, err := id.Identify(Readings{Crest: units.WithStd(8.9*units.Millimetre, 0.02*units.Millimetre), Pitch: units.WithStd(TPI(20), 0.01*units.Millimetre)})
	if err != nil || len(got.Candidates) == 0 || got.Candidates[0].Thread() != odd {
		t.Errorf("%v, %v", got.Candidates, err)
	}
}

// The effective diameter alone will do, and so will the core.
func TestIdentifyWithoutTheCrest(t *testing.T) {
	th := mustFind(t, "3/8 BSF")
	for _, r := range []Readings{
		{Effective: units.WithStd(th.Effective()-0.05*units.Millimetre, 0.005*units.Millimetre)},
		{Root: units.WithStd(th.Minor()-0.05*units.Millimetre, 0.005*units.Millimetre)},
	} {
		r.Pitch = units.WithStd(th.Pitch(), 0.005*units.Millimetre)
		got := identify(t, r)
		if !slices.ContainsFunc(got.Candidates, func(c Candidate) bool { return c.isNamed(th) && c.Probability > 0.1 }) {
			t.Errorf("%v", got.Candidates)
		}
		if c := got.Candidates[0]; c.Short != 0 || c.Tolerances != 0 {
			t.Errorf("short of a crest that was not measured: %+v", c)
		}
	}
}

func TestZeroValuesOfTheAnswer(t *testing.T) {
	if (Candidate{}).Thread() != (Thread{}) || (Candidate{}).Names() != nil {
		t.Error("no candidate has a name")
	}
	if _, ok := (Identification{}).Parting(); ok || (Identification{}).Decided(0) || len((Identification{}).Within(0.9)) != 0 {
		t.Error("no answer decides")
	}
}

// Names is a copy: what a caller does to it does not reach the tables.
func TestNamesAreTheCallersOwn(t *testing.T) {
	r := Readings{Crest: units.WithStd(6.28*units.Millimetre, 0.01*units.Millimetre), Pitch: units.WithStd(TPI(26), 0.005*units.Millimetre)}
	got := identify(t, r).Candidates[0]
	got.Names()[0] = Thread{}
	if again := identify(t, r).Candidates[0]; again.Names()[0] == (Thread{}) {
		t.Error("the tables were written to")
	}
}

// With few repeats behind it a reading is trusted less.
func TestFewRepeatsWiden(t *testing.T) {
	figures.Near(t, "3 repeats", widen(2), 4.30/1.96, 1e-12)
	figures.Near(t, "2 repeats", widen(1), 12.71/1.96, 1e-12)
	figures.Near(t, "less than one degree of freedom", widen(0.5), 12.71/1.96, 1e-12)
	figures.Near(t, "no number of repeats", widen(0), 1, 0)
	for _, tc := range [...]struct{ dof, t float64 }{{11, 2.20}, {20, 2.09}, {50, 2.01}, {100, 1.984}} { // JCGM 100:2008, Table G.2
		figures.Near(t, "Student's t beyond the table", widen(tc.dof)*1.96, tc.t, 0.02*tc.t)
	}
}

func TestFewRepeatsDecideLess(t *testing.T) {
	r := Readings{
		Crest: units.WithStd(7.85*units.Millimetre, 0.01*units.Millimetre),
		Pitch: units.WithStd(0.979*units.Millimetre, 0.005*units.Millimetre),
	}
	many := identify(t, r)
	r.Pitch.DoF = 2
	few := identify(t, r)
	if !(few.Candidates[0].Probability < many.Candidates[0].Probability-0.0005) {
		t.Errorf("with 3 repeats %.5f, with many %.5f", few.Candidates[0].Probability, many.Candidates[0].Probability)
	}
}

func TestPitchReadings(t *testing.T) {
	p := over(t, 10, 9.78*units.Millimetre, 0.05*units.Millimetre)
	figures.Near(t, "pitch, mm", p.Value.Millimetres(), 0.978, 1e-12)
	figures.Near(t, "its u, mm", p.Std.Millimetres(), 0.005, 1e-12)
	// A leaf of 1.0 mm looks right on 26 to the inch over 3 threads, and not over 12.
	short, _ := PitchByLeaf(1*units.Millimetre, 3)
	long, _ := PitchByLeaf(1*units.Millimetre, 12)
	off := 1*units.Millimetre - TPI(26)
	if !(off < 2*short.Std && off > 3*long.Std) {
		t.Errorf("u %v over 3 threads, %v over 12, off by %v", short.Std, long.Std, off)
	}
}

// An answer allocates its candidates and nothing else.
func TestIdentifyAllocatesOnlyItsAnswer(t *testing.T) {
	r := Readings{
		Crest: units.WithStd(0.2472*units.Inch, 0.0003*units.Inch),
		Pitch: over(t, 10, 9.78*units.Millimetre, 0.05*units.Millimetre),
	}
	identify(t, r)
	if n := testing.AllocsPerRun(100, func() { _, _ = Identify(r) }); n > 1 {
		t.Errorf("%g allocations", n)
	}
}

func BenchmarkIdentify(b *testing.B) {
	r := Readings{
		Crest: units.WithStd(0.2472*units.Inch, 0.0003*units.Inch),
		Pitch: over(b, 10, 9.78*units.Millimetre, 0.05*units.Millimetre),
		Wear:  0.05 * units.Millimetre,
	}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = Identify(r)
	}
}

// A diameter by eye, which leaves hundreds of threads open: the slow end.
func BenchmarkIdentifyVague(b *testing.B) {
	r := Readings{Crest: units.WithStd(10*units.Millimetre, 3*units.Millimetre), Wear: 2 * units.Millimetre}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = Identify(r)
	}
}

// The most crowded place of the tables, with a prior, wear and an angle.
func BenchmarkIdentifyCrowded(b *testing.B) {
	prior, _ := NewPrior(British, 1900, 1955)
	r := Readings{
		Crest: units.WithStd(12.55*units.Millimetre, 0.05*units.Millimetre),
		Pitch: over(b, 4, 5.1*units.Millimetre, 0.2*units.Millimetre),
		Angle: units.WithStd(57*units.Degree, 2*units.Degree),
		Wear:  0.2 * units.Millimetre,
		Prior: prior,
	}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = Identify(r)
	}
}
