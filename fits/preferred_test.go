package fits

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// The kind that a list gives a fit holds at every size, but for the two that the
// footnote of ANSI B4.2-1978 names; T and t have no value up to 24 mm.
func TestPreferredKinds(t *testing.T) {
	counts := map[FitList]int{ANSIB42: 20, ISOHoleBasis: 45, ISOShaftBasis: 38, BS4500A: 10, BS4500B: 10}
	for list, count := range counts {
		fits := PreferredFits(list)
		if len(fits) != count {
			t.Errorf("%v: %d fits, want %d", list, len(fits), count)
		}
		for _, p := range fits {
			if p.Use == "" || p.List != list {
				t.Errorf("%v: %+v", p, p)
			}
			for _, end := range fineTo[:25] {
				m, err := System{}.Mate(mm(end), p.Hole, p.Shaft)
				if err != nil {
					if !(strings.Contains(strings.ToLower(p.String()), "t") && end <= 24) {
						t.Errorf("%v at %g: %v", p, end, err)
					}
					continue
				}
				small := end <= 3 && (p.String() == "H7/p6" || p.String() == "H6/n5")
				if (m.Kind() == p.Kind) == small {
					t.Errorf("%v (%v): stated %v", m, list, p.Kind)
				}
			}
		}
	}
	if PreferredFits(99) != nil || FitList(99).String() != "FitList(99)" {
		t.Error("a list there is not")
	}
	for list := ANSIB42; list <= BS4500B; list++ {
		if strings.HasPrefix(list.String(), "FitList") {
			t.Errorf("%d has no name", list)
		}
	}
}

// Shaft basis mirrors hole basis, letter for letter, in the lists that print both.
func TestPreferredMirror(t *testing.T) {
	ansi := PreferredFits(ANSIB42)
	for i := 0; i < len(ansi); i += 2 {
		h, s := ansi[i], ansi[i+1]
		if h.Hole.letter != lh || s.Shaft.letter != lh || h.Shaft.letter != s.Hole.letter || h.Kind != s.Kind {
			t.Errorf("%v and %v", h, s)
		}
	}
	a, b := PreferredFits(BS4500A), PreferredFits(BS4500B)
	for i := range a {
		if a[i].Shaft.letter != b[i].Hole.letter || a[i].Kind != b[i].Kind {
			t.Errorf("%v and %v", a[i], b[i])
		}
	}
	for _, p := range PreferredFits(ISOShaftBasis) {
		if p.Shaft.letter != lh {
			t.Errorf("%v is not on shaft basis", p)
		}
	}
}

func TestFirstChoice(t *testing.T) {
	holes, shafts := FirstChoiceHoles(), FirstChoiceShafts()
	if len(holes) != 17 || len(shafts) != 17 {
		t.Errorf("%d holes, %d shafts, want 17 each", len(holes), len(shafts))
	}
	for i, c := range holes {
		if _, err := (System{}).Size(mm(25), c); err != nil || !c.IsHole() {
			t.Errorf("%v: %v", c, err)
		}
		if _, err := (System{}).Size(mm(25), shafts[i]); err != nil || shafts[i].IsHole() {
			t.Errorf("%v: %v", shafts[i], err)
		}
	}
}

func TestUse(t *testing.T) {
	for _, c := range allClasses() {
		h, s := Class{lh, it7, true}, Class{lh, it6, false}
		hole, shaft := h, c
		if c.hole {
			hole, shaft = c, s
		}
		if Use(hole, shaft) == "" {
			t.Errorf("%v/%v has no words", hole, shaft)
		}
	}
	if w := Use(Class{lk, it7, true}, Class{lg, it6, false}); w != "" {
		t.Errorf("neither basis: %q", w)
	}
}

func TestChoose(t *testing.T) {
	want := Clearance{5 * units.Micrometre, 45 * units.Micrometre}
	choices, err := Choose(mm(25), want)
	if err != nil {
		t.Fatal(err)
	}
	if choices[0].String() != "H7/g6" && choices[0].String() != "G7/h6" || choices[0].Beyond != 0 {
		t.Errorf("first choice %v", choices[0])
	}
	seen := map[string]bool{}
	last := -1.0
	for _, c := range choices {
		r := c.Mating.Clearance()
		inside := r.Min >= want.Min && r.Max <= want.Max
		if inside != (c.Beyond < 1e-12) || seen[c.String()] || float64(c.Beyond) < last-1e-12 {
			t.Errorf("%v: inside %v, beyond %v", c, inside, c.Beyond)
		}
		last = math.Max(last, float64(c.Beyond))
		seen[c.String()] = true
	}
	for _, bad := range []Clearance{{1, 0}, {units.Length(math.NaN()), 0}, {0, units.Length(math.Inf(1))}} {
		if _, err := Choose(mm(25), bad); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "the lesser first") {
			t.Errorf("%v: %v", bad, err)
		}
	}
	if _, err := Choose(mm(4000), want); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

func TestChooseAny(t *testing.T) {
	want := Clearance{9 * units.Micrometre, 33 * units.Micrometre} // narrower than any listed fit with this place
	choices, err := ChooseAny(mm(25), want)
	if err != nil || len(choices) == 0 {
		t.Fatal(choices, err)
	}
	listed, err := Choose(mm(25), want)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range listed {
		if c.Beyond <= picometre && !holds(choices, c) {
			t.Errorf("%v is listed and serves, but is not found", c)
		}
	}
	last := units.Length(math.Inf(1))
	for _, c := range choices {
		r := c.Mating.Clearance()
		if r.Min < want.Min-picometre || r.Max > want.Max+picometre || r.Spread() > last+picometre || c.List != 0 || c.Use == "" {
			t.Errorf("%v: %v", c, r)
		}
		last = r.Spread()
	}
	if none, err := ChooseAny(mm(25), Clearance{9 * units.Micrometre, 10 * units.Micrometre}); err != nil || len(none) != 0 {
		t.Errorf("%v, %v", none, err)
	}
	for _, err := range []error{second(ChooseAny(mm(25), Clearance{1, 0})), second(ChooseAny(0, want))} {
		if !errors.Is(err, units.ErrDomain) {
			t.Error(err)
		}
	}
}

func holds(choices []Choice, c Choice) bool {
	for _, d := range choices {
		if d.Hole == c.Hole && d.Shaft == c.Shaft {
			return true
		}
	}
	return false
}

func TestMeasured(t *testing.T) {
	tool := 0.5 * units.Thou
	// The gudgeon pin of an old engine in its worn bush.
	f, err := Measured(units.WithStd(0.6270*units.Inch, tool), units.WithStd(0.6245*units.Inch, tool))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "clearance, thou", f.Clearance.Value.Thou(), 2.5, 1e-9)
	figures.Near(t, "uncertainty, thou", f.Clearance.Std.Thou(), 0.5*math.Sqrt2, 1e-9)
	if f.Kind != ClearanceFit || !f.Sure || !(f.Interfering < 1e-3) || len(f.Fits) == 0 {
		t.Errorf("%+v", f)
	}
	for _, c := range f.Fits {
		if !c.Mating.Clearance().Contains(f.Clearance.Value) {
			t.Errorf("%v does not allow %v", c, f.Clearance.Value)
		}
	}
	tight, err := Measured(units.WithStd(mm(20), mm(0.005)), units.WithStd(mm(20.002), mm(0.005)))
	if err != nil || tight.Kind != InterferenceFit || tight.Sure || !(tight.Interfering > 0.5 && tight.Interfering < 0.7) {
		t.Errorf("%+v, %v", tight, err)
	}
	exact, err := Measured(units.Exact(mm(20)), units.Exact(mm(20.03)))
	if err != nil || exact.Kind != InterferenceFit || exact.Interfering != 1 || !exact.Sure {
		t.Errorf("%+v, %v", exact, err)
	}
	for _, bad := range [][2]units.Reading[units.Length]{
		{units.Exact(units.Length(0)), units.Exact(mm(20))}, {units.Exact(mm(20)), units.Exact(units.Length(math.NaN()))},
		{units.WithStd(mm(20), -1), units.Exact(mm(20))}, {units.Exact(mm(3200)), units.Exact(mm(3200))},
		{{Value: mm(20), DoF: -1}, units.Exact(mm(20))},
	} {
		if _, err := Measured(bad[0], bad[1]); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v: %v", bad, err)
		}
	}
}

func TestDifferenceDoF(t *testing.T) {
	a := units.Reading[units.Length]{Value: 2, Std: 3, DoF: 9}
	b := units.Reading[units.Length]{Value: 1, Std: 4, DoF: 16}
	d := difference(a, b)
	figures.Near(t, "value", float64(d.Value), 1, 0)
	figures.Near(t, "std", float64(d.Std), 5, 1e-12)
	figures.Near(t, "dof", d.DoF, 625/(81.0/9+256.0/16), 1e-9) // Welch-Satterthwaite by hand
	if d := difference(units.Exact(units.Length(1)), units.Exact(units.Length(1))); d.DoF != 0 || d.Std != 0 {
		t.Errorf("%+v", fmt.Sprint(d))
	}
}
