package threads

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

// wantError fails t unless err is of the kind and says every one of the words.
func wantError(t testing.TB, err, kind error, words ...string) {
	t.Helper()
	if !errors.Is(err, kind) {
		t.Errorf("error %v: want the kind %v", err, kind)
		return
	}
	for _, w := range words {
		if !strings.Contains(err.Error(), w) {
			t.Errorf("error %q does not say %q", err, w)
		}
	}
}

func TestFindDrillReadsWhatPeopleWrite(t *testing.T) {
	for _, tc := range []struct{ text, name string }{
		// metric
		{"4.2 mm", "4.2 mm"}, {"4.2mm", "4.2 mm"}, {" 4.20  MM ", "4.2 mm"}, {"0.42 cm", "4.2 mm"},
		{"10 millimetres", "10 mm"}, {"0.28 mm", "0.28 mm"}, {"14.25 mm", "14.25 mm"},
		// number
		{"#29", "#29"}, {"# 29", "#29"}, {"No 29", "#29"}, {"No. 29", "#29"}, {"no29", "#29"},
		{"number 29", "#29"}, {"№ 29", "#29"}, {"Nr. 29", "#29"}, {"#1", "#1"}, {"#80", "#80"},
		// letter
		{"F", "F"}, {"f", "F"}, {"letter F", "F"}, {"Letter  z", "Z"}, {"ltr a", "A"},
		// fraction
		{"5/32", "5/32 in"}, {"5/32 in", "5/32 in"}, {`5/32"`, "5/32 in"}, {"10/64", "5/32 in"},
		{"1 1/16", "1 1/16 in"}, {"1-1/16 in", "1 1/16 in"}, {"1 in", "1 in"}, {"½ in", "1/2 in"}, {"2 in", "2 in"},
		// decimal inches that a set has
		{"0.136 in", "#29"}, {".25 in", "1/4 in"}, {"0.257 in", "F"}, {`0.0135"`, "#80"},
	} {
		d, err := FindDrill(tc.text)
		if err != nil {
			t.Errorf("%q: %v", tc.text, err)
			continue
		}
		if d.Name() != tc.name {
			t.Errorf("%q is %s, want %s", tc.text, d.Name(), tc.name)
		}
	}
}

func TestFindDrillRefuses(t *testing.T) {
	for _, tc := range []struct {
		text  string
		kind  error
		words []string
	}{
		{"", units.ErrSyntax, []string{"no drill", "4.2 mm"}},
		{"  ", units.ErrSyntax, []string{"no drill"}},
		{"29", units.ErrAmbiguous, []string{"#29", "29 mm"}},
		{"4.2", units.ErrNoUnit, []string{"which unit", "4.2 mm"}},
		{"100", units.ErrNoUnit, []string{"100 mm"}},
		{"-3", units.ErrNoUnit, []string{"which unit"}},
		{"4.25 mm", units.ErrDomain, []string{"4.25 mm", "4.2 mm", "4.3 mm"}},
		{"0.1 mm", units.ErrDomain, []string{"smallest is 0.2 mm"}},
		{"26 mm", units.ErrDomain, []string{"largest is 25 mm"}},
		{"3 in", units.ErrDomain, []string{"largest is 2 in"}},
		{"0.137 in", units.ErrDomain, []string{"#29", "#28"}},
		{"#0", units.ErrDomain, []string{"#80", "#1"}},
		{"#81", units.ErrDomain, []string{"#80"}},
		{"#", units.ErrSyntax, []string{"whole number"}},
		{"#2.5", units.ErrSyntax, []string{"whole number"}},
		{"letter", units.ErrSyntax, []string{"A to Z"}},
		{"letter FF", units.ErrSyntax, []string{"A to Z"}},
		{"letter 4", units.ErrSyntax, []string{"A to Z"}},
		{"FF", units.ErrSyntax, []string{"4.2 mm, #29, F or 5/32 in"}},
		{"5/0", units.ErrSyntax, nil},
		{"5/", units.ErrSyntax, nil},
		{"5/32 kg", units.ErrUnknownUnit, nil},
		{"4,2 mm", units.ErrSyntax, []string{"4.2"}},
		{"NaN mm", units.ErrNotFinite, nil},
	} {
		_, err := FindDrill(tc.text)
		if err == nil {
			t.Errorf("%q was read", tc.text)
			continue
		}
		wantError(t, err, tc.kind, tc.words...)
	}
}

func FuzzFindDrill(f *testing.F) {
	for _, s := range []string{"#29", "No 29", "F", "letter F", "5/32", "1 1/16 in", "4.2 mm", "29", "4.2", "№ 7", "", "½ in", "#", "letter", "1e9 mm"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		d, err := FindDrill(text)
		if err != nil {
			return
		}
		again, err := FindDrill(d.Name())
		if err != nil || again.Diameter() != d.Diameter() {
			t.Errorf("%q is %v, which reads back as %v, %v", text, d, again, err)
		}
		if !(d.Diameter() > 0) {
			t.Errorf("%q has diameter %v", text, d.Diameter())
		}
	})
}

func TestEveryDrillReadsBack(t *testing.T) {
	all := Drills()
	for i, d := range all {
		again, err := FindDrill(d.Name())
		if err != nil || again != d {
			t.Errorf("%v reads back as %v, %v", d, again, err)
		}
		if i > 0 && d.Diameter() < all[i-1].Diameter() {
			t.Errorf("%v stands after %v", d, all[i-1])
		}
		if d.Source() == "" || d.Set().String() == "unknown set" {
			t.Errorf("%v: source %q, set %v", d, d.Source(), d.Set())
		}
	}
	if got := len(Drills(MetricDrill, MetricDrill)); got != len(Drills(MetricDrill)) {
		t.Errorf("a set given twice gives %d drills", got)
	}
}

// The numbers stop where the letters begin, and letter E is a quarter inch.
func TestDrillSetsMeet(t *testing.T) {
	numbers, letters := Drills(NumberDrill), Drills(LetterDrill)
	if !(numbers[len(numbers)-1].Diameter() < letters[0].Diameter()) {
		t.Errorf("%v is not smaller than %v", numbers[len(numbers)-1], letters[0])
	}
	e, _ := FindDrill("E")
	quarter, _ := FindDrill("1/4")
	if e.Diameter() != quarter.Diameter() {
		t.Errorf("%v is not %v", e, quarter)
	}
	for _, set := range []DrillSet{MetricDrill, NumberDrill, LetterDrill, FractionDrill} {
		all := Drills(set)
		for i := 1; i < len(all); i++ {
			if !(all[i].Diameter() > all[i-1].Diameter()) {
				t.Errorf("%v does not come after %v", all[i], all[i-1])
			}
		}
	}
}

func TestNewDrill(t *testing.T) {
	d, err := NewDrill("the 4.1 reamer", 4.1*units.Millimetre)
	if err != nil || d.String() != "the 4.1 reamer (4.100 mm)" || d.Set() != OwnDrill || d.FromMemory() || d.Source() != "the reader's own" {
		t.Errorf("%v, %v", d, err)
	}
	d, err = NewDrill("", 4.15*units.Millimetre)
	if err != nil || d.String() != "4.15 mm" {
		t.Errorf("%v, %v", d, err)
	}
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		_, err := NewDrill("", units.Length(bad))
		wantError(t, err, units.ErrDomain, "drill diameter", "more than 0 mm")
	}
}

func TestEngagementAndHoleAreInverse(t *testing.T) {
	var all []Thread
	for th := range All() {
		all = append(all, th)
	}
	rapid.Check(t, func(t *rapid.T) {
		th := rapid.SampledFrom(all).Draw(t, "thread")
		full := rapid.SampledFrom([]FullThread{BasicThread, BoltThread, AmericanThread}).Draw(t, "full")
		want := rapid.Float64Range(0.01, 1).Draw(t, "engagement")
		hole, err := th.HoleFor(want, full)
		if err != nil {
			t.Fatal(err)
		}
		got, err := th.Engagement(hole, full)
		if err != nil {
			t.Fatal(err)
		}
		if !(math.Abs(got-want) <= 1e-9) {
			t.Errorf("%v: %.4g of the thread comes back as %.12g", th, want, got)
		}
	})
}

// A hole at the basic minor leaves all of the basic thread, 15/17 of the
// bolt's and 5/6 of the American one, by the heights of the profiles.
func TestFullThreadsCompare(t *testing.T) {
	m8 := mustFind(t, "M8")
	for _, tc := range []struct {
		full FullThread
		want float64
	}{{BasicThread, 1}, {BoltThread, 15. / 17}, {AmericanThread, 5. / 6}} {
		e, err := m8.Engagement(m8.Minor(), tc.full)
		if err != nil {
			t.Fatal(err)
		}
		figures.Near(t, "M8 at its minor diameter "+tc.full.String(), e, tc.want, 1e-12)
	}
	for _, name := range []string{"1/4 BSF", "2 BA", "1/4-26 BSC", "SI 8x1.25", "Loew 8x1.2"} {
		th := mustFind(t, name)
		for _, full := range []FullThread{BasicThread, BoltThread, AmericanThread} {
			if th.FullDepth(full) != (th.Major()-th.Minor())/2 {
				t.Errorf("%s: %v gives a depth of %v", name, full, th.FullDepth(full))
			}
		}
	}
}

func TestEngagementRefuses(t *testing.T) {
	m8 := mustFind(t, "M8")
	_, err := m8.Engagement(8*units.Millimetre, BasicThread)
	wantError(t, err, units.ErrDomain, "hole 8 mm", "M8x1.25", "less than 8 mm")
	_, err = m8.Engagement(units.Length(math.NaN()), BasicThread)
	wantError(t, err, units.ErrDomain, "more than 0 mm")
	_, err = Thread{}.Engagement(1, BasicThread)
	wantError(t, err, units.ErrDomain, "no thread")
	_, err = m8.HoleFor(75, BasicThread)
	wantError(t, err, units.ErrDomain, "engagement 75", "0.75 for 75 %")
	_, err = m8.HoleFor(0, BasicThread)
	wantError(t, err, units.ErrDomain, "more than 0")
	_, err = m8.HoleFor(math.NaN(), BasicThread)
	wantError(t, err, units.ErrDomain, "engagement NaN")
	_, err = Thread{}.HoleFor(0.5, BasicThread)
	wantError(t, err, units.ErrDomain, "no thread")
	_, err = DieBlank(Thread{})
	wantError(t, err, units.ErrDomain, "no thread")
}

func TestTappingDrills(t *testing.T) {
	m8 := mustFind(t, "M8")
	got, err := TappingDrills(m8, 0.78, BoltThread, Drills(MetricDrill)...)
	if err != nil || got[0].Name() != "6.8 mm" {
		t.Errorf("M8: %v, %v", got, err)
	}
	figures.Near(t, "M8 with 6.8 mm", got[0].Engagement, 1.2/(2*0.613435*1.25), 1e-6)
	own, _ := NewDrill("old 6.7", 6.74*units.Millimetre)
	got, err = TappingDrills(m8, 0.8, BoltThread, own)
	if err != nil || len(got) != 1 || got[0].Name() != "old 6.7" {
		t.Errorf("M8 with an own drill: %v, %v", got, err)
	}
	_, err = TappingDrills(m8, 0.8, BoltThread, Drills(LetterDrill)[:3]...)
	wantError(t, err, units.ErrDomain, "M8x1.25", "none of the 3", "8 mm")
	_, err = TappingDrills(m8, 80, BoltThread)
	wantError(t, err, units.ErrDomain, "0.75 for 75 %")
	for th := range All() {
		drills, err := TappingDrills(th, 0.75, BasicThread)
		if err != nil {
			if th.Major() < 25*units.Millimetre {
				t.Error(err)
			}
			continue
		}
		for i, d := range drills {
			if d.Engagement > 1+1e-9 || d.Engagement <= 0 {
				t.Errorf("%v with %v leaves %.3f", th, d.Drill, d.Engagement)
			}
			if i > 0 && math.Abs(d.Engagement-0.75) < math.Abs(drills[i-1].Engagement-0.75)-1e-9 {
				t.Errorf("%v: %v stands after %v", th, d.Drill, drills[i-1].Drill)
			}
		}
	}
}

// A blank for a die lies within the limits of ISO 6g wherever those are known.
func TestDieBlankIsWithin6g(t *testing.T) {
	for th := range ISOCoarse.All() {
		lim, err := th.BoltLimits("6g")
		if err != nil {
			continue
		}
		blank, err := DieBlank(th)
		if err != nil || !lim.Major.Contains(blank) {
			t.Errorf("%v: blank %v, limits %v, %v", th, blank, lim.Major, err)
		}
	}
}
