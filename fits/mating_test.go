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

func TestKindOnTheLimits(t *testing.T) {
	for _, tc := range []struct {
		nominal float64
		fit     string
		kind    Kind
	}{
		{25, "H7/g6", ClearanceFit}, {25, "H7/h6", ClearanceFit}, {25, "H7/k6", TransitionFit}, {25, "H7/p6", InterferenceFit},
		{3, "H7/p6", TransitionFit}, {3, "H6/n5", TransitionFit}, {4, "H6/n5", InterferenceFit}, // ANSI B4.2-1978, footnote
		{3, "H7/r6", InterferenceFit}, // exactly as large
	} {
		m, err := Fit(mm(tc.nominal), tc.fit)
		if err != nil || m.Kind() != tc.kind {
			t.Errorf("%g %s: %v, %v, want %v", tc.nominal, tc.fit, m.Kind(), err, tc.kind)
		}
	}
	if s := Kind(9).String(); s != "Kind(9)" {
		t.Error(s)
	}
}

// The delta rule is there so that both bases give the same clearances: H/k..zc with
// a shaft one grade finer and K..ZC/h, over 3 mm up to 500 mm, but for M6 over 250 to
// 315 mm.
func TestBothBasesAgree(t *testing.T) {
	for l := lk; l <= lzc; l++ {
		for g := it5; g <= it8; g++ {
			if l > ln && g > it7 {
				continue
			}
			for _, s := range sizes() {
				if s <= 3 || s > 500 {
					continue
				}
				a, errA := System{}.Mate(mm(s), Class{lh, g, true}, Class{l, g - 1, false})
				b, errB := System{}.Mate(mm(s), Class{l, g, true}, Class{lh, g - 1, false})
				if errA != nil || errB != nil {
					if (errA == nil) != (errB == nil) {
						t.Errorf("%g: %v but %v", s, errA, errB)
					}
					continue
				}
				same := math.Abs((a.Clearance().Min - b.Clearance().Min).Micrometres()) < 1e-6
				if except := l == lm && g == it6 && s > 250 && s <= 315; same == except && !(l == lk && g == it8) {
					t.Errorf("%v and %v", a, b)
				}
			}
		}
	}
}

// Reprinted sums: the tolerance of the fit is the two tolerances together, and the
// greatest clearance less the least.
func TestClearanceLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := mm(rapid.Float64Range(3.1, 500).Draw(t, "size"))
		hole := rapid.SampledFrom([]string{"H6", "H7", "H8", "G7", "F8", "K7", "N7", "P7", "JS7", "U7"}).Draw(t, "hole")
		shaft := rapid.SampledFrom([]string{"h5", "g6", "k6", "n6", "f7", "s6", "u6", "js6"}).Draw(t, "shaft")
		m, err := Fit(s, hole+"/"+shaft)
		if err != nil {
			t.Fatal(err)
		}
		c := m.Clearance()
		if d := c.Spread() - m.Hole.Tolerance() - m.Shaft.Tolerance(); math.Abs(d.Micrometres()) > 1e-6 {
			t.Errorf("spread off by %v", d)
		}
		if d := c.Max - (m.Hole.Max - m.Shaft.Min); math.Abs(d.Micrometres()) > 1e-6 {
			t.Errorf("greatest clearance off by %v", d)
		}
		u := m.InterferingIfUniform()
		n, err := m.InterferingIfNormal(3)
		if err != nil || !(u >= 0 && u <= 1) || !(n >= 0 && n <= 1) {
			t.Errorf("shares %g, %g, %v", u, n, err)
		}
		switch m.Kind() {
		case ClearanceFit:
			if u != 0 || n > 0.5 {
				t.Errorf("clearance fit: %g, %g", u, n)
			}
		case InterferenceFit:
			if u != 1 || n < 0.5 {
				t.Errorf("interference fit: %g, %g", u, n)
			}
		}
	})
}

// The share reckoned by counting a fine grid of pairs.
func TestInterferingShare(t *testing.T) {
	for _, fit := range []string{"H7/k6", "H7/n6", "H7/js6", "H8/js7", "M7/h6", "JS11/h6", "H6/k11"} {
		m, err := Fit(25*units.Millimetre, fit)
		if err != nil {
			t.Fatal(err)
		}
		const n = 1500
		count := 0
		for i := range n {
			for j := range n {
				h := m.Hole.Min + m.Hole.Tolerance()*units.Length((float64(i)+0.5)/n)
				s := m.Shaft.Min + m.Shaft.Tolerance()*units.Length((float64(j)+0.5)/n)
				if h < s {
					count++
				}
			}
		}
		figures.Near(t, fit, m.InterferingIfUniform(), float64(count)/(n*n), 1.5e-3)
	}
	// Symmetric about nought: half of them, however they scatter.
	m := Mating{Hole: Size{Lower: -mm(0.01), Upper: mm(0.01)}, Shaft: Size{Lower: -mm(0.02), Upper: mm(0.02)}}
	figures.Near(t, "half, uniform", m.InterferingIfUniform(), 0.5, 1e-12)
	half, err := m.InterferingIfNormal(3)
	figures.Near(t, "half, normal", half, 0.5, 1e-12)
	if err != nil {
		t.Error(err)
	}
	// Φ(−1): mean clearance one σ above nought.
	m = Mating{Hole: Size{Lower: mm(-0.03 + 0.01), Upper: mm(0.03 + 0.01)}, Shaft: Size{}}
	got, _ := m.InterferingIfNormal(3)
	figures.Figure{Printed: "0.1587", Source: "standard normal table, area below -1"}.Check(t, got)
	if share, err := (Mating{}).InterferingIfNormal(3); err != nil || share != 0 {
		t.Errorf("no tolerance: %g, %v", share, err)
	}
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if _, err := m.InterferingIfNormal(bad); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "more than 0") {
			t.Errorf("%g: %v", bad, err)
		}
	}
}

func TestMateErrors(t *testing.T) {
	h7, g6 := Class{lh, it7, true}, Class{lg, it6, false}
	for _, pair := range [][2]Class{{g6, h7}, {h7, h7}, {g6, g6}} {
		if _, err := (System{}).Mate(mm(25), pair[0], pair[1]); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "want a hole") {
			t.Errorf("%v: %v", pair, err)
		}
	}
	for _, fit := range []string{"T7/h6", "H7/t6", "H7", "H7/h19"} {
		if _, err := Fit(mm(20), fit); err == nil {
			t.Errorf("%s at 20 mm: no error", fit)
		}
	}
}

func TestGaugesAndRounding(t *testing.T) {
	h, _ := Limits(mm(25.4), "H7")
	s, _ := Limits(mm(25.4), "g6")
	if h.Go() != h.Min || h.NoGo() != h.Max || s.Go() != s.Max || s.NoGo() != s.Min {
		t.Error("go and no go")
	}
	if !h.Contains(h.Min) || !h.Contains(h.Middle()) || h.Contains(h.Max+units.Micrometre) {
		t.Error("contains")
	}
	least, most, err := h.Rounded(0.1 * units.Thou)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "least", least.Inches(), 1.0000, 1e-9) // 25.4 to 25.421 mm is 1 to 1.000827 in
	figures.Near(t, "most", most.Inches(), 1.0008, 1e-9)
	for _, step := range []units.Length{0, -1, units.Length(math.NaN()), mm(50)} {
		if _, _, err := s.Rounded(step); !errors.Is(err, units.ErrDomain) {
			t.Errorf("step %v: %v", step, err)
		}
	}
	for text, want := range map[string]string{
		"25 H7": "25 mm H7 (+0.021/0): 25.000 mm to 25.021 mm, 0.98425 in to 0.98508 in",
		"5 M3":  "5 mm M3 (-0.003/-0.0055): 4.9945 mm to 4.997 mm, 0.19663 in to 0.19673 in",
	} {
		c, _ := ParseCallout(text)
		if z, err := c.Limits(); err != nil || z.String() != want {
			t.Errorf("%q, %v, want %q", z, err, want)
		}
	}
}

func TestJudge(t *testing.T) {
	z, err := Limits(mm(25), "H7") // 25.000 to 25.021
	if err != nil {
		t.Fatal(err)
	}
	for _, tc := range []struct {
		size, std float64
		dof       float64
		want      Verdict
	}{
		{25.010, 0.003, 0, Conforms}, {25.004, 0.003, 0, Doubtful}, {24.995, 0.003, 0, Doubtful}, {24.993, 0.003, 0, Fails}, {25.028, 0.003, 0, Fails},
		{25.000, 0, 0, Conforms}, {25.021, 0, 0, Conforms}, {25.0211, 0, 0, Fails}, {25.010, 0.02, 0, Doubtful}, // wider than the zone
		{25.010, 0.003, 1, Doubtful}, // two readings only: k is 14
	} {
		got, err := z.Judge(units.Reading[units.Length]{Value: mm(tc.size), Std: mm(tc.std), DoF: tc.dof})
		if err != nil || got != tc.want {
			t.Errorf("%+v: %v, %v", tc, got, err)
		}
	}
	if _, err := z.Judge(units.WithStd(mm(25), -1)); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
	if s := Verdict(0).String(); s != "Verdict(0)" {
		t.Error(s)
	}
}
