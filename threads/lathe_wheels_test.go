package threads

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

// A set by fives, as many small lathes have, with two of 20.
var byFives = []int{20, 20, 25, 30, 35, 38, 40, 45, 50, 55, 60, 65, 70, 75}

func eightTPI(t testing.TB, more ...int) Lathe {
	t.Helper()
	l, err := NewLathe(TPI(8), append(more, byFives...)...)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func TestTrainsForTheLeadscrewsOwnFractions(t *testing.T) {
	l := eightTPI(t)
	for _, tc := range []struct {
		tpi  float64
		best string
	}{
		{16, "20/40"}, // half the leadscrew
		{20, "20/50"},
		{26, "20/65"},
		{8, ""}, // 1 to 1: two wheels alike, or two pairs
		{11, "40/55"},
		{14, "20/35"},
	} {
		trains, err := l.Trains(TPI(tc.tpi), 0)
		if err != nil || len(trains) == 0 {
			t.Errorf("%g to the inch: %d trains, %v", tc.tpi, len(trains), err)
			continue
		}
		if tc.best != "" && trains[0].String() != tc.best {
			t.Errorf("%g to the inch: %v, want %s", tc.tpi, trains[0], tc.best)
		}
		if !trains[0].Exact() || trains[0].ErrorOver(units.Inch) > 1e-14 {
			t.Errorf("%g to the inch: %v cuts %v", tc.tpi, trains[0], trains[0].Lead())
		}
	}
}

func TestMetricPitchesOnAnInchLeadscrew(t *testing.T) {
	// 1.5 mm with the 127 wheel: 1.5 / 3.175 = 60/127.
	trains, err := eightTPI(t, 127).Trains(1.5*units.Millimetre, 0)
	if err != nil || len(trains) == 0 || trains[0].String() != "60/127" || !trains[0].Exact() {
		t.Errorf("with 127: %v, %v", trains, err)
	}
	// Without, none is exact: 25.4 = 2 × 127 / 10 and 127 is prime.
	trains, err = eightTPI(t, 63).Trains(1.5*units.Millimetre, 0)
	if err != nil || len(trains) != 0 {
		t.Errorf("without 127: %v, %v", trains, err)
	}
	// With 63 for it 1600/63 mm stand for the inch.
	trains, err = eightTPI(t, 63, 80).Trains(1*units.Millimetre, 0.0005)
	if err != nil || len(trains) == 0 {
		t.Fatalf("with 63: %v, %v", trains, err)
	}
	found := false
	for _, tr := range trains {
		if math.Abs(tr.RelativeError()-(25.4/(1600./63)-1)) < 1e-9 {
			found = true
			figures.Figure{Printed: "125", Source: "1600/63 for 25.4: arithmetic, parts in a million"}.Check(t, 1e6*tr.RelativeError())
			figures.Near(t, "error over 20 mm, µm", tr.ErrorOver(20*units.Millimetre).Micrometres(), 2.5, 0.001)
		}
	}
	if !found {
		t.Errorf("no train with 63 for 127 among %v", trains)
	}
}

func TestWheelsAreNotUsedTwice(t *testing.T) {
	l := eightTPI(t)
	for _, lead := range []units.Length{TPI(40), TPI(32), 0.8 * units.Millimetre, 1 * units.Millimetre, TPI(19)} {
		trains, err := l.Trains(lead, 0.002)
		if err != nil {
			t.Fatal(err)
		}
		seen := map[string]bool{}
		for i, tr := range trains {
			if seen[tr.String()] {
				t.Errorf("%v twice", tr)
			}
			seen[tr.String()] = true
			left := append([]int(nil), byFives...)
			for _, w := range append(tr.Drivers(), tr.Driven()...) {
				at := -1
				for j, v := range left {
					if v == w {
						at = j
					}
				}
				if at < 0 {
					t.Errorf("%v wants a wheel that is not there", tr)
					break
				}
				left = append(left[:at], left[at+1:]...)
			}
			if i > 0 && math.Abs(tr.RelativeError()) < math.Abs(trains[i-1].RelativeError())-1e-11 {
				t.Errorf("%v stands after %v", tr, trains[i-1])
			}
			if d, n := tr.Drivers(), tr.Driven(); len(d) == 2 {
				if d[0]+n[0] < d[1]+15 || d[1]+n[1] < n[0]+15 {
					t.Errorf("%v does not mesh", tr)
				}
			}
		}
	}
}

// The large driven wheel goes on the leadscrew: on the stud it would foul it.
func TestMeshPlacesTheWheels(t *testing.T) {
	tr := Train{wheels: [4]int{20, 100, 20, 30}}
	if !tr.mesh() || tr.wheels != [4]int{20, 30, 20, 100} {
		t.Errorf("%v", tr)
	}
	tr = Train{wheels: [4]int{20, 30, 90, 35}} // the large driver goes on the spindle
	if !tr.mesh() || tr.wheels != [4]int{90, 30, 20, 35} {
		t.Errorf("%v", tr)
	}
}

func TestTrainLeadIsTheProductOfItsWheels(t *testing.T) {
	l, err := eightTPI(t).WithStud(1, 2)
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		lead := units.Length(rapid.Float64Range(0.2e-3, 3e-3).Draw(t, "lead"))
		trains, err := l.Trains(lead, 0.003)
		if err != nil {
			t.Fatal(err)
		}
		for _, tr := range trains {
			want := 3.175 / 2
			for i := range tr.Drivers() {
				want *= float64(tr.Drivers()[i]) / float64(tr.Driven()[i])
			}
			if math.Abs(tr.Lead().Millimetres()-want) > 1e-12 {
				t.Errorf("%v cuts %v, want %.6f mm", tr, tr.Lead(), want)
			}
			if math.Abs(tr.RelativeError()) > 0.003+1e-9 {
				t.Errorf("%v is %g off", tr, tr.RelativeError())
			}
		}
	})
}

func TestTrainsRefuse(t *testing.T) {
	_, err := NewLathe(0, 20, 40)
	wantError(t, err, units.ErrDomain, "leadscrew pitch 0 mm")
	_, err = NewLathe(TPI(0), 20, 40)
	wantError(t, err, units.ErrDomain, "leadscrew pitch")
	_, err = NewLathe(TPI(8), 20)
	wantError(t, err, units.ErrDomain, "1 change wheels", "2 to 60")
	_, err = NewLathe(TPI(8), 20, 4)
	wantError(t, err, units.ErrDomain, "4 teeth")
	l := eightTPI(t)
	_, err = l.WithStud(0, 1)
	wantError(t, err, units.ErrDomain, "stud 0 turns")
	_, err = l.Trains(units.Length(math.NaN()), 0)
	wantError(t, err, units.ErrDomain, "lead")
	_, err = l.Trains(1, 0.5)
	wantError(t, err, units.ErrDomain, "0 to 0.1")
	_, err = Lathe{}.Trains(1, 0)
	wantError(t, err, units.ErrDomain, "no lathe")
	if (Train{}).RelativeError() != 0 {
		t.Error("the zero train is off")
	}
}

func BenchmarkTrains(b *testing.B) {
	l := eightTPI(b, 63)
	for b.Loop() {
		_, _ = l.Trains(1*units.Millimetre, 0.001)
	}
}
