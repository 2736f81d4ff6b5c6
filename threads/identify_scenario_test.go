package threads

import (
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// The threads of one old engine as its owner measured them: an invented engine,
// with figures that agree with themselves as a real engine's would. Micrometers
// there are good to 0.0003 in, the vernier to 0.05 mm, the length of a wax to
// 0.1 mm.
var engineThreads = map[string]struct {
	where    string
	readings Readings
	threads  int          // spanned
	length   units.Length // over them
	std      units.Length // of the length
}{
	"T1":  {"carburettor flange studs", micrometer(0.3085 * units.Inch), 10, 11.54 * units.Millimetre, vernier},
	"T2":  {"crankcase bolts", micrometer(0.2472 * units.Inch), 10, 9.78 * units.Millimetre, vernier},
	"T3":  {"holding-down studs", micrometer(0.3712 * units.Inch), 10, 12.71 * units.Millimetre, vernier},
	"T4":  {"torn stud hole", bore(0.344*units.Inch, 0.0005*units.Inch), 10, 12.7 * units.Millimetre, wax},
	"T5":  {"earth terminal", micrometer(3.94 * units.Millimetre), 10, 7.00 * units.Millimetre, vernier},
	"T6":  {"contact screw", micrometer(2.96 * units.Millimetre), 10, 5.02 * units.Millimetre, vernier},
	"T7":  {"fuel tap", micrometer(0.5165 * units.Inch), 10, 13.37 * units.Millimetre, vernier},
	"T8":  {"flywheel nut", micrometer(0.8735 * units.Inch), 10, 12.71 * units.Millimetre, vernier},
	"T9":  {"drain", Readings{Crest: units.WithStd(9.66*units.Millimetre, vernier)}, 10, 9.06 * units.Millimetre, vernier},
	"T10": {"exhaust stub", Readings{Crest: units.WithStd(1.306*units.Inch, vernier)}, 5, 11.55 * units.Millimetre, vernier},
	"T11": {"main jet", micrometer(4.66 * units.Millimetre), 10, 8.11 * units.Millimetre, vernier},
	"T12": {"name plate screws", micrometer(0.1235 * units.Inch), 10, 6.36 * units.Millimetre, vernier},
	"T13": {"plug hole", bore(20.765*units.Millimetre, 0.025*units.Millimetre), 8, 11.28 * units.Millimetre, 0.021 * units.Millimetre},
}

const (
	vernier = 0.05 * units.Millimetre
	wax     = 0.1 * units.Millimetre
)

func micrometer(d units.Length) Readings {
	return Readings{Crest: units.WithStd(d, 0.0003*units.Inch)}
}

func bore(d, std units.Length) Readings {
	return Readings{Part: Nut, Crest: units.WithStd(d, std)}
}

func engineReadings(t testing.TB, id string) Readings {
	t.Helper()
	e, ok := engineThreads[id]
	if !ok {
		t.Fatalf("no thread %s", id)
	}
	r := e.readings
	r.Pitch = over(t, e.threads, e.length, e.std)
	return r
}

// Those that their figures decide.
func TestEngineThreadsThatHaveAName(t *testing.T) {
	for id, want := range map[string]string{
		"T1":  "5/16-22 BSF",
		"T3":  "3/8-20 BSF",
		"T8":  "7/8-20 UNEF",
		"T11": "2 BA", // not 3/16-32 or 10-32, whose pitch is 0.017 mm less
		"T13": "7/8-18 plug",
	} {
		got := identify(t, engineReadings(t, id))
		if !got.Decided(0.95) || got.Candidates[0].Thread().Designation() != want {
			t.Errorf("%s: %v at %.3f, want %s", id, names(got.Candidates[0]), got.Candidates[0].Probability, want)
		}
	}
}

// T2 is 1/4 in of 26 to the inch and may be fine or cycle, of 55° or 60°: each
// has half, and only the angle can tell, for both leaves seemed to fit.
func TestEngineThreadOfTwoAngles(t *testing.T) {
	got := identify(t, engineReadings(t, "T2"))
	if len(got.Within(0.99)) != 2 || got.Decided(0.6) {
		t.Fatalf("%v", got.Candidates)
	}
	both := names(got.Candidates[0]) + ", " + names(got.Candidates[1])
	for _, want := range []string{"1/4-26 BSF", "1/4-26 brass", "1/4-26 BSC"} {
		if !strings.Contains(both, want) {
			t.Errorf("%s is not among %s", want, both)
		}
	}
	p, ok := got.Parting()
	if !ok || p.By != ByAngle || !p.Decides {
		t.Errorf("%v: %v", ok, p)
	}
	// The core lies 0.21 mm apart by the tables, which the spread of work nearly covers.
	core, power := partByRoot(got.Candidates[0].Thread(), got.Candidates[1].Thread(), Bolt)
	figures.Near(t, "cores apart, mm", distance(core.First, core.Second).Millimetres(), 0.21, 0.01)
	if !(power > 0.5 && power < 1) {
		t.Errorf("the core parts them with power %.2f", power)
	}
}

// Those that the figures leave open, with what would settle them.
func TestEngineThreadsLeftOpen(t *testing.T) {
	for _, tc := range []struct {
		id, first, second string
		by                Measurement
	}{
		{"T5", "M4x0.7", "Loew 4x0.7", ByAngle}, // 60° or 53°, of one diameter and pitch
		{"T6", "M3x0.5", "Loew 3x0.5", ByAngle},
		{"T7", "G 1/4", "R 1/4", ByTaper},
		{"T9", "G 1/8", "R 1/8", ByTaper},
		{"T10", "G 1", "R 1", ByTaper},
		{"T12", "1/8-40 BSW", "1/8-40 BSC", ByAngle},
	} {
		got := identify(t, engineReadings(t, tc.id))
		if got.Decided(0.9) || len(got.Candidates) < 2 {
			t.Errorf("%s is decided: %v", tc.id, got.Candidates)
			continue
		}
		two := names(got.Candidates[0]) + ", " + names(got.Candidates[1])
		if !strings.Contains(two, tc.first) || !strings.Contains(two, tc.second) {
			t.Errorf("%s: %s, want %s and %s", tc.id, two, tc.first, tc.second)
		}
		if p, ok := got.Parting(); !ok || p.By != tc.by || !p.Decides {
			t.Errorf("%s: %v, %v", tc.id, ok, p)
		}
	}
}

// Seen to be parallel, the pipe threads have a name.
func TestEnginePipeThreads(t *testing.T) {
	for id, want := range map[string]string{"T7": "G 1/4", "T9": "G 1/8", "T10": "G 1"} {
		r := engineReadings(t, id)
		r.Taper = Parallel
		got := identify(t, r)
		if !got.Decided(0.95) || got.Candidates[0].Thread().Designation() != want {
			t.Errorf("%s: %v", id, got.Candidates)
		}
	}
}

// T4 is the hole for a stud like T3, worn or torn so far that less than 60 % of
// its thread is left. Without that knowledge the bore of 8.74 mm is as good for
// M10x1.25, and the wax is too short to tell 1.25 mm from 1.27 mm; with 1 mm of
// wear allowed, 3/8 BSF comes first and is not sure.
func TestEngineThreadTorn(t *testing.T) {
	r := engineReadings(t, "T4")
	got := identify(t, r)
	if d := got.Candidates[0].Thread().Designation(); d == "3/8-20 BSF" {
		t.Errorf("unworn: %v", got.Candidates)
	}
	r.Wear = 1 * units.Millimetre
	got = identify(t, r)
	if d := got.Candidates[0].Thread().Designation(); d != "3/8-20 BSF" || got.Decided(0.9) {
		t.Errorf("worn: %v", got.Candidates)
	}
	r.Prior, _ = NewPrior(British, 1920, 1930)
	if got = identify(t, r); got.Candidates[0].Thread().Designation() != "3/8-20 BSF" || !got.Decided(0.9) {
		t.Errorf("worn, on a British engine of the twenties: %v", got.Candidates)
	}
}

// T13, "18 tpi or 1.5 mm, cannot decide": the gauge could not, and the length
// over eight threads can. 8 × 25.4/18 = 11.289 mm and 8 × 1.5 = 12 mm, and it
// is 11.28 mm with 0.02 mm to be unsure of. The bore agrees: it is 0.07 mm over
// the minor diameter of 7/8-18.
func TestEnginePlugHole(t *testing.T) {
	r := engineReadings(t, "T13")
	got := identify(t, r)
	figures.Near(t, "bore over the minor, mm", got.Candidates[0].Short.Millimetres(), 0.068, 0.001)
	figures.Near(t, "pitch over that of the thread, mm", got.Candidates[0].Pitch.Millimetres(), -0.0011, 0.0001)
	r.Pitch, _ = PitchByLeaf(1.5*units.Millimetre, 4) // the leaf alone
	byLeaf := identify(t, r)
	if byLeaf.Decided(0.9) && byLeaf.Candidates[0].Thread().Designation() == "7/8-18 plug" {
		t.Errorf("the leaf alone decides for 7/8-18: %v", byLeaf.Candidates)
	}
}

// T8 is left-handed: the hand comes back, and changes nothing else.
func TestEngineThreadLeftHanded(t *testing.T) {
	r := engineReadings(t, "T8")
	right := identify(t, r)
	r.Hand = LeftHand
	left := identify(t, r)
	if left.Hand != LeftHand || right.Hand != RightHand || left.Candidates[0] != right.Candidates[0] {
		t.Errorf("%v and %v", left, right)
	}
}

// M4x0.7 and M3x0.5 were in DIN 13 when Loewenherz threads were still cut: a
// continental machine of the twenties does not put them behind by the prior.
func TestEngineThreadsOnAContinentalMachine(t *testing.T) {
	prior, err := NewPrior(Continental, 1920, 1927)
	if err != nil {
		t.Fatal(err)
	}
	for id, want := range map[string][2]string{"T5": {"M4x0.7", "Loew 4x0.7"}, "T6": {"M3x0.5", "Loew 3x0.5"}} {
		metric, old := mustFind(t, want[0]), mustFind(t, want[1])
		if m, o := prior.Weight(metric.Series()), prior.Weight(old.Series()); m < o {
			t.Errorf("%s: prior %g of %v, %g of %v", id, m, metric, o, old)
		}
		r := engineReadings(t, id)
		r.Prior = prior
		got := identify(t, r)
		if first := got.Candidates[0].Thread(); first != metric {
			t.Errorf("%s: %v comes first: %v", id, first, got.Candidates)
		}
	}
}

// Two figures for T6 allow for its wear.
func TestEngineThreadSlightlyWorn(t *testing.T) {
	r := engineReadings(t, "T6")
	r.Wear = 0.05 * units.Millimetre
	got := identify(t, r)
	if !strings.Contains(names(got.Candidates[0])+names(got.Candidates[1]), "M3x0.5") {
		t.Errorf("%v", got.Candidates)
	}
}
