package ignition

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/benchsums/units"
)

func TestFindOdd(t *testing.T) {
	for _, tc := range []struct {
		name    string
		figures []units.Length
		single  units.Length
		try     int // 0: none
		guess   string
	}{
		{"good readings", demoForward30, 0.5 * mm, 0, ""},
		{"a wrong centimetre", millimetres(119.8, 119.1, 128.0, 118.7, 117.0), 0.5 * mm, 3, "about 10 mm: a wrong centimetre?"},
		{"a half-way line", millimetres(174.8, 169.0, 174.0), 0.3 * mm, 2, "about 5 mm: the half-way line"},
		{"a wrong hundred", millimetres(174.8, 174.1, 274.0), 0.3 * mm, 3, "about 100 mm: a wrong hundred?"},
		{"no step of the rule", millimetres(174.8, 174.1, 174.3, 181.7), 0.2 * mm, 4, "no usual misreading: take it again"},
		{"of three, 6 times a single", millimetres(174, 174, 180), 1 * mm, 0, ""},
		{"of three, 7 times a single", millimetres(174, 174, 181), 1 * mm, 3, "a wrong quarter of an inch"},
		{"two cannot show it", millimetres(174, 184), 0.3 * mm, 0, ""},
		{"all alike and no single", millimetres(174, 174, 174), 0, 0, ""},
		{"all alike but one, no single, by more than rounding", millimetres(174, 174, 174, 184), 0, 4, "about 10 mm"},
		{"all alike but one, no single, by a rounding", millimetres(174, 174, 174, 175), 0, 0, ""},
		{"three, no single: there is too little to go by", millimetres(174.8, 169.0, 174.0), 0, 0, ""},
		{"four, no single", millimetres(174.8, 174.3, 174.5, 274.6), 0, 4, "about 100 mm"},
		{"a single too small by half", millimetres(118.0, 119.5, 117.2, 116.1, 120.4), 0.5 * mm, 0, ""},
	} {
		got, err := FindOdd(tc.figures, tc.single)
		if err != nil {
			t.Errorf("%s: %v", tc.name, err)
			continue
		}
		if tc.try == 0 {
			if len(got) != 0 {
				t.Errorf("%s: got %v, want none", tc.name, got)
			}
			continue
		}
		if len(got) != 1 || got[0].Try != tc.try || !strings.Contains(got[0].Guess, tc.guess) || got[0].Figure != tc.figures[tc.try-1] {
			t.Errorf("%s: got %v, want try %d, %q", tc.name, got, tc.try, tc.guess)
		}
	}
	_, err := FindOdd(demoForward30, -1)
	refused(t, "negative single", err, "want 0 mm or more")
}

// Good figures are accused in fewer than one set in a hundred, few or many, with
// what one is worth stated or not, and the mean of those kept holds the truth as
// often as it says.
func TestGoodFiguresAreSeldomOdd(t *testing.T) {
	sets := 4000
	if testing.Short() {
		sets = 1000
	}
	rng := rand.New(rand.NewPCG(3, 1927))
	for _, tc := range []struct {
		name        string
		single      units.Length // stated
		real, round float64      // of the figures, mm
		most        float64      // share of sets accused
	}{
		{"nothing stated", 0, 0.5, 0, 0.01},
		{"nothing stated, read to half a millimetre", 0, 0.3, 0.5, 0.01},
		{"stated", 0.5 * mm, 0.5, 0, 0.01},
		{"stated, read to a millimetre", 0.5 * mm, 0.5, 1, 0.01},
		{"half of the truth stated", 0.25 * mm, 0.5, 0, 0.02},
	} {
		for n := 3; n <= 10; n++ {
			accused, held := 0, 0
			cover := [...]float64{coverOf(0), coverOf(float64(n - 2)), coverOf(float64(n - 1))} // as stated, one left out, none
			for range sets {
				figures := make([]units.Length, n)
				for i := range figures {
					f := 118 + tc.real*rng.NormFloat64()
					if tc.round > 0 {
						f = tc.round * math.Round(f/tc.round)
					}
					figures[i] = units.Length(f) * mm
				}
				odd, kept := splitOdd(figures, tc.single)
				if len(odd) > 0 {
					accused++
				}
				if len(odd) > 1 {
					continue // not held
				}
				mean, k := meanOf(kept, tc.single), cover[0]
				if mean.DoF > 0 {
					k = cover[len(kept)-n+2]
				}
				if math.Abs(mean.Value.Millimetres()-118) <= k*mean.Std.Millimetres() {
					held++
				}
			}
			share, holds := float64(accused)/float64(sets), float64(held)/float64(sets)
			t.Logf("%s, %d figures: %.2f %% of sets accused, 95 %% interval holds %.1f %%", tc.name, n, 100*share, 100*holds)
			if share > tc.most+4*math.Sqrt(tc.most*(1-tc.most)/float64(sets)) {
				t.Errorf("%s, %d figures: %.2f %% of good sets accused, want %.0f %% at most", tc.name, n, 100*share, 100*tc.most)
			}
			if tc.round == 0 && tc.most <= 0.01 && holds < 0.945-4*math.Sqrt(0.95*0.05/float64(sets)) {
				t.Errorf("%s, %d figures: 95 %% interval holds the truth %.1f %% of the time", tc.name, n, 100*holds)
			}
		}
	}
}

func coverOf(dof float64) float64 {
	if dof == 0 {
		return distuv.UnitNormal.Quantile(0.975)
	}
	return distuv.StudentsT{Sigma: 1, Nu: dof}.Quantile(0.975)
}

// A wrong centimetre is found where there is anything to find it by.
func TestSlipsOfTheRuleAreFound(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 1927))
	for _, tc := range []struct {
		n      int
		single units.Length
		least  float64
	}{{3, 0.5 * mm, 0.99}, {4, 0.5 * mm, 0.99}, {5, 0.5 * mm, 0.99}, {10, 0.5 * mm, 0.99}, {5, 0, 0.5}, {6, 0, 0.95}, {10, 0, 0.99}} {
		t.Run(fmt.Sprintf("%d, single %v", tc.n, tc.single), func(t *testing.T) {
			found := 0
			const sets = 1000
			for range sets {
				figures := make([]units.Length, tc.n)
				for i := range figures {
					figures[i] = units.Length(118+0.5*rng.NormFloat64()) * mm
				}
				figures[1] += 10 * mm
				if odd, _ := splitOdd(figures, tc.single); len(odd) == 1 && odd[0].Try == 2 {
					found++
				}
			}
			t.Logf("found in %d of %d", found, sets)
			if float64(found) < tc.least*sets {
				t.Errorf("found in %d of %d sets", found, sets)
			}
		})
	}
}

func TestStepOf(t *testing.T) {
	for _, tc := range []struct {
		figures []units.Length
		want    units.Length
	}{
		{millimetres(174, 180), 1 * mm},
		{millimetres(174.5, 180), 0.5 * mm},
		{millimetres(174.3, 180), 0.1 * mm},
		{millimetres(38.07, 38.1), 0.01 * mm},
		{[]units.Length{3 * units.Inch / 16, units.Inch / 2}, units.Inch / 16},
		{[]units.Length{1.498 * units.Inch, 1.5 * units.Inch}, units.Thou},
		{millimetres(math.Pi, math.E), 0},
	} {
		if got := stepOf(tc.figures); math.Abs(float64(got-tc.want)) > 1e-12 {
			t.Errorf("%v: got %v, want %v", tc.figures, got, tc.want)
		}
	}
}
