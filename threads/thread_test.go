package threads

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func TestNew(t *testing.T) {
	th, err := New(WhitworthForm, units.Inch/4, units.Inch/26)
	if err != nil {
		t.Fatal(err)
	}
	bsf := mustFind(t, "1/4 BSF")
	if th.Major() != bsf.Major() || th.Effective() != bsf.Effective() || th.Minor() != bsf.Minor() || th.Pitch() != bsf.Pitch() {
		t.Errorf("New gives %v, %v, %v; 1/4 BSF is %v, %v, %v", th.Major(), th.Effective(), th.Minor(), bsf.Major(), bsf.Effective(), bsf.Minor())
	}
	if !th.Same(bsf) || th == bsf || th.Series() != Special || !th.FromMemory() || th.Confidence() != FromMemory || th.Note() != "" {
		t.Errorf("%#v", th)
	}
	if want := "6.35 mm x 0.976923 mm Whitworth"; th.Designation() != want || th.String() != want {
		t.Errorf("designation %q, want %q", th, want)
	}
	if th.Source() != "no standard" {
		t.Errorf("source %q", th.Source())
	}
}

func TestNewRefuses(t *testing.T) {
	const mm = units.Millimetre
	nan, inf := units.Length(math.NaN()), units.Length(math.Inf(1))
	for _, tc := range []struct {
		form         Form
		major, pitch units.Length
		want         string
	}{
		{0, 6 * mm, mm, "form 0: want one of the forms"}, {formsEnd, 6 * mm, mm, "want one of the forms"}, {255, 6 * mm, mm, "form 255"},
		{ISOForm, 6 * mm, 0, "pitch 0 mm: want more than 0 mm"}, {ISOForm, 6 * mm, -mm, "want more than 0 mm"},
		{ISOForm, 6 * mm, nan, "want more than 0 mm"}, {ISOForm, 6 * mm, inf, "want more than 0 mm"},
		{ISOForm, 1 * mm, mm, "major diameter 1 mm with pitch 1 mm: want more than 1.08253 mm, twice the depth of thread"},
		{ISOForm, nan, mm, "twice the depth of thread"}, {ISOForm, inf, mm, "twice the depth of thread"},
	} {
		if _, err := New(tc.form, tc.major, tc.pitch); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.want) {
			t.Errorf("New(%d, %v, %v): %v; want %q", tc.form, tc.major, tc.pitch, err, tc.want)
		}
	}
}

func TestThreadAsText(t *testing.T) {
	for th := range All() {
		text, err := th.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		var back Thread
		if err := back.UnmarshalText(text); err != nil || back != th {
			t.Errorf("%s comes back as %v, %v", text, back, err)
		}
	}
	special, err := New(WhitworthForm, units.Inch/4, units.Inch/26)
	if err != nil {
		t.Fatal(err)
	}
	for _, th := range []Thread{{}, special} {
		if text, err := th.MarshalText(); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "no designation to write") {
			t.Errorf("%v is written %q, %v", th, text, err)
		}
	}
	kept := special
	if err := kept.UnmarshalText([]byte("1/4-20")); !errors.Is(err, units.ErrAmbiguous) || kept != special {
		t.Errorf("%v, %v", kept, err)
	}
	var plug struct{ Thread Thread }
	if err := json.Unmarshal([]byte(`{"thread": "14 mm plug"}`), &plug); err != nil || plug.Thread != mustFind(t, "M14x1.25 plug") {
		t.Errorf("%v, %v", plug.Thread, err)
	}
}

func TestZeroThreadIsNoThread(t *testing.T) {
	var z Thread
	if z.Major() != 0 || z.Effective() != 0 || z.Minor() != 0 || z.Pitch() != 0 || z.TPI() != 0 || z.StressArea() != 0 ||
		z.RootArea() != 0 || z.Taper() != 0 || z.Designation() != "" || z.Series() != Special || z.Form() != 0 || z.Note() != "" {
		t.Errorf("%#v", z)
	}
	for _, p := range []Part{Bolt, Nut} {
		if _, err := z.limits(p, "6g", 0); !errors.Is(err, units.ErrDomain) {
			t.Errorf("limits of no thread: %v", err)
		}
	}
}

func TestSeriesOutOfRange(t *testing.T) {
	for _, s := range []Series{Special, seriesEnd, 255} {
		if s.Len() != 0 || s.Form() != 0 || s.Metric() || s.Name() != "no series" || s.String() != "" || s.Standard() != "no standard" {
			t.Errorf("series %d is one", s)
		}
		for th := range s.All() {
			t.Errorf("series %d has %v", s, th)
		}
	}
	for s := range AllSeries() {
		if s.Len() == 0 || s.Name() == "" || s.String() == "" || s.Standard() == "" || s.Form() == 0 {
			t.Errorf("series %d: %d sizes, %q, %q, %q", s, s.Len(), s.Name(), s, s.Standard())
		}
		if s.Metric() == s.row().tpi {
			t.Errorf("%s: metric %t", s.Name(), s.Metric())
		}
	}
}

// Ranging over part of the threads stops where it is told.
func TestRangingStops(t *testing.T) {
	n := 0
	for range All() {
		if n++; n == 3 {
			break
		}
	}
	for range BSF.All() {
		n++
		break
	}
	for range AllSeries() {
		n++
		break
	}
	for range Grades() {
		n++
		break
	}
	if n != 6 {
		t.Errorf("%d", n)
	}
}

func TestTPIAndPitchAreInverse(t *testing.T) {
	for th := range All() {
		figures.Near(t, th.Designation(), th.TPI()*th.Pitch().Inches(), 1, 1e-15)
		if taper := th.Taper(); (taper != 0) != (th.Series() == BSPTaper || th.Series() == NPT) {
			t.Errorf("%v: taper %v", th, taper)
		}
	}
}

// Same is an equivalence: of itself, both ways, and handed on.
func TestSameIsAnEquivalence(t *testing.T) {
	var ts []Thread
	for th := range All() {
		ts = append(ts, th)
	}
	for i, a := range ts {
		if !a.Same(a) {
			t.Errorf("%v is not itself", a)
		}
		for j, b := range ts[:i] {
			if a.Same(b) != b.Same(a) {
				t.Errorf("%v and %v", a, b)
			}
			if !a.Same(b) {
				continue
			}
			for _, c := range ts[:j] {
				if b.Same(c) != a.Same(c) {
					t.Errorf("%v, %v, %v", a, b, c)
				}
			}
		}
	}
}

func TestNamesOfKinds(t *testing.T) {
	for got, want := range map[string]string{
		FromMemory.String(): "from memory", OneSource.String(): "one source", TwoSources.String(): "two sources or more", Confidence(9).String(): "unknown confidence",
		Bolt.String(): "bolt", Nut.String(): "nut",
		BlackFinish.String(): "not plated, black", ZincPlated.String(): "zinc plated", Lubricated.String(): "lubricated",
		CadmiumPlated.String(): "cadmium plated", AntiSeize.String(): "with anti-seize paste", Finish(9).String(): "unknown finish",
		Range{1e-3, 2e-3}.String(): "1 mm to 2 mm", orMore(1e-3).String(): "1 mm or more", orLess(1e-3).String(): "1 mm or less",
		mustFind(t, "2 BA").BasicLimits(Nut).String(): "2 BA nut basic: major 4.7 mm or more; effective 4.215 mm to 4.215 mm; minor 3.73 mm to 3.73 mm",
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	if s := mustFind(t, "M1.1x0.25").Source(); s != "ISO 261: sizes.com metric thread table; Yamawa tap catalogue 2021, pp. 645-656; get-it-made.co.uk coarse metric chart" {
		t.Errorf("source %q", s)
	}
	if s := mustFind(t, "M17x1").Source(); s != "ISO 261: from memory" {
		t.Errorf("source %q", s)
	}
}

func BenchmarkAll(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		for th := range All() {
			_ = th.Major()
		}
	}
}

func BenchmarkBoltLimits(b *testing.B) {
	for _, tc := range []struct{ thread, class string }{{"M8", "6g"}, {"1/4 UNC", "2A"}, {"2 BA", "close"}, {"1/4 BSF", "medium"}} {
		th := mustFind(b, tc.thread)
		b.Run(tc.thread+" "+tc.class, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_, _ = th.BoltLimits(tc.class)
			}
		})
	}
}
