package fits

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

// Whatever the old part and the errors of measuring truly are, within their bounds,
// a new part measured within the limits fits as wanted.
func TestNewPartAlwaysFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		least := rapid.Float64Range(5, 80).Draw(t, "least")
		p := Part{Least: mm(least), Most: mm(least + rapid.Float64Range(0, 0.02).Draw(t, "form")), Std: mm(rapid.Float64Range(0, 0.003).Draw(t, "u"))}
		v := mm(rapid.Float64Range(0, 0.003).Draw(t, "v"))
		lo := rapid.Float64Range(-0.05, 0.05).Draw(t, "lo")
		want := Clearance{mm(lo), mm(lo + rapid.Float64Range(0.02, 0.1).Draw(t, "spread"))}
		shaft := rapid.Bool().Draw(t, "shaft")
		make := p.HoleFor
		if shaft {
			make = p.ShaftFor
		}
		m, err := make(want, v)
		if err != nil {
			var none *NoRoomError
			if !errors.As(err, &none) || 2*none.Guard+none.Form < want.Spread()-1e-15 {
				t.Fatal(err)
			}
			return
		}
		k := rapid.Float64Range(-2, 2).Draw(t, "joint error") // of the clearance, in its standard uncertainty
		off := units.Length(k * math.Hypot(float64(p.Std), float64(v)))
		for _, old := range []units.Length{p.Least, p.Most} {
			for _, made := range []units.Length{m.Min, m.Max, m.Target} {
				c := made - old + off
				if shaft {
					c = old - made + off
				}
				if c < want.Min-1e-12 || c > want.Max+1e-12 {
					t.Fatalf("old %v, new %v, error %v: clearance %v, want %v", old, made, off, c, want)
				}
			}
		}
		if left := want.Spread() * units.Length(1-m.Eaten); math.Abs(float64(left-m.Tolerance())) > 1e-12 {
			t.Errorf("eaten %g leaves %v, tolerance %v", m.Eaten, left, m.Tolerance())
		}
	})
}

func TestMachiningByHand(t *testing.T) {
	hole, err := NewPart(units.WithStd(mm(25.010), mm(0.003)))
	if err != nil {
		t.Fatal(err)
	}
	want := Clearance{mm(0.007), mm(0.041)}
	m, err := hole.ShaftFor(want, mm(0.004))
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "guard", m.Guard.Micrometres(), 10, 1e-9) // 2 × √(3² + 4²)
	figures.Near(t, "min", m.Min.Millimetres(), 25.010-0.041+0.010, 1e-9)
	figures.Near(t, "max", m.Max.Millimetres(), 25.010-0.007-0.010, 1e-9)
	figures.Near(t, "target", m.Target.Millimetres(), 24.986, 1e-9)
	figures.Near(t, "eaten", m.Eaten, 20.0/34, 1e-9)
	if len(m.Warnings) != 2 || !strings.Contains(m.Warnings[0], "59 %") || !strings.Contains(m.Warnings[1], "better tool") {
		t.Errorf("%q", m.Warnings)
	}
	oval := Part{Least: mm(25), Most: mm(25.02)}
	m, err = oval.HoleFor(want, 0)
	if err != nil || len(m.Warnings) != 2 || !strings.Contains(m.Warnings[1], "true the old part") {
		t.Errorf("%+v, %v", m, err)
	}
	if m, err := oval.HoleFor(Clearance{0, mm(0.1)}, 0); err != nil || len(m.Warnings) != 0 {
		t.Errorf("%+v, %v", m, err)
	}
	_, err = hole.ShaftFor(Clearance{0, mm(0.015)}, mm(0.004))
	var none *NoRoomError
	if !errors.As(err, &none) || !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "15 µm wide, measuring takes 20 µm") {
		t.Fatal(err)
	}
	figures.Near(t, "target of what cannot be promised", none.Target.Millimetres(), 25.010-0.0075, 1e-9)
	for _, tc := range []struct {
		p         Part
		want      Clearance
		measuring units.Length
		says      string
	}{
		{Part{}, want, 0, "more than 0 mm"}, {Part{Least: 2, Most: 1}, want, 0, "lesser first"}, {Part{Least: 1, Most: 1, Std: -1}, want, 0, "0 or more"},
		{Part{Least: 1, Most: units.Length(math.Inf(1))}, want, 0, "more than 0 mm"}, {hole, Clearance{1, 0}, 0, "lesser first"},
		{hole, want, -1, "0 mm or more"}, {hole, want, units.Length(math.NaN()), "0 mm or more"}, {hole, Clearance{mm(30), mm(31)}, 0, "smaller than the part"},
	} {
		if _, err := tc.p.ShaftFor(tc.want, tc.measuring); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%+v %v: %v, want %q", tc.p, tc.want, err, tc.says)
		}
	}
	if _, err := NewPart(units.Exact(mm(-1))); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
	c, err := Wanted(mm(23.81), "H7/g6")
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "least", c.Min.Micrometres(), 7, 1e-9)
	figures.Near(t, "greatest", c.Max.Micrometres(), 41, 1e-9)
	if _, err := Wanted(mm(20), "H7/t6"); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

// Student's t for 95.45 %, as the Guide prints it.
func TestCoverage(t *testing.T) {
	const src = "JCGM 100:2008, Table G.2, 95.45 %"
	for _, tc := range []struct {
		dof float64
		k   string
	}{{1, "13.97"}, {2, "4.53"}, {3, "3.31"}, {4, "2.87"}, {5, "2.65"}, {10, "2.28"}, {20, "2.13"}, {50, "2.05"}, {0, "2.000"}} {
		figures.Figure{Printed: tc.k, Source: src}.Check(t, coverage(tc.dof))
	}
	if k := coverage(math.Inf(1)); k != 2 {
		t.Errorf("infinite: %g", k)
	}
}

// The cylinder of an invented pumping engine, worn where the rings turn.
var bore = []Spot{
	{"top of ring travel", "front-back", 2.8810 * units.Inch}, {"top of ring travel", "front-back", 2.8815 * units.Inch},
	{"top of ring travel", "side-side", 2.8795 * units.Inch}, {"top of ring travel", "side-side", 2.8795 * units.Inch},
	{"middle", "front-back", 2.8790 * units.Inch}, {"middle", "front-back", 2.8790 * units.Inch},
	{"middle", "side-side", 2.8780 * units.Inch}, {"middle", "side-side", 2.8775 * units.Inch},
	{"below ring travel", "front-back", 2.8755 * units.Inch}, {"below ring travel", "front-back", 2.8760 * units.Inch},
	{"below ring travel", "side-side", 2.8755 * units.Inch}, {"below ring travel", "side-side", 2.8755 * units.Inch},
}

func TestSurvey(t *testing.T) {
	s, err := NewSurvey(0.5*units.Thou, bore...)
	if err != nil {
		t.Fatal(err)
	}
	if n := len(s.Places()); n != 6 || len(s.Stations()) != 3 {
		t.Errorf("%d places, %q", n, s.Stations())
	}
	ovality, where := s.Ovality()
	figures.Near(t, "ovality, thou", ovality.Thou(), 1.75, 1e-6) // 2.88125 − 2.8795
	if where != "top of ring travel" {
		t.Error(where)
	}
	taper, large, small := s.Taper()
	figures.Near(t, "taper, thou", taper.Thou(), 4.75, 1e-6) // 2.880375 − 2.875625
	if large != "top of ring travel" || small != "below ring travel" {
		t.Error(large, small)
	}
	wear, at, err := s.Wear("below ring travel")
	if err != nil || at.Way != "front-back" || at.Station != "top of ring travel" {
		t.Error(at, err)
	}
	figures.Near(t, "wear, thou", wear.Thou(), 5.625, 1e-6) // 2.88125 − 2.875625
	p := s.Part()
	figures.Near(t, "least", p.Least.Inches(), 2.8755, 1e-9)
	figures.Near(t, "most", p.Most.Inches(), 2.88125, 1e-9)
	figures.Near(t, "form", p.Form().Thou(), 5.75, 1e-6)
	if p.Std != 0.5*units.Thou {
		t.Error(p.Std)
	}
	if _, err := s.Mean("nowhere"); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "middle") {
		t.Error(err)
	}
	if _, _, err := s.Wear("nowhere"); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}

func TestSurveyOfAShaft(t *testing.T) {
	s, err := NewSurvey(0, Spot{"end", "any", mm(20)}, Spot{"bearing", "up", mm(19.9)}, Spot{"bearing", "across", mm(19.95)})
	if err != nil {
		t.Fatal(err)
	}
	wear, at, err := s.Wear("end")
	if err != nil || at.Way != "up" {
		t.Error(at, err)
	}
	figures.Near(t, "wear", wear.Millimetres(), 0.1, 1e-9)
	for _, bad := range [][]Spot{nil, {{"a", "b", 0}}, {{"a", "b", 1}, {"a", "c", units.Length(math.NaN())}}} {
		if _, err := NewSurvey(0, bad...); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v: %v", bad, err)
		}
	}
	if _, err := NewSurvey(-1, Spot{"a", "b", 1}); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
	var zero Survey
	zero.Taper()
	zero.Ovality()
	if (zero.Part() != Part{}) || (zero.Least() != Spot{}) || (zero.Most() != Spot{}) {
		t.Error("the zero survey is empty")
	}
	if _, _, err := zero.Wear(""); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
}
