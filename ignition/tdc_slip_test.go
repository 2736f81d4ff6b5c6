package ignition_test

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// goodSeries is the demo engine's readings with the slip put right.
func goodSeries() []ignition.Series {
	s := demoSeries()
	s[2].Readings[2].Dial -= units.Millimetre
	return s
}

func TestGoodDemoReadingsAreNotAccused(t *testing.T) {
	if f := findTDC(t, demoSetup(), goodSeries()...); len(f.Slips) != 0 {
		t.Errorf("slips %v", f.Slips)
	}
}

// A set without a slip has one found in it less than once in 200 times, and not
// more often for uncertainties stated wrongly.
func TestFalseAlarms(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*ignition.Setup)
		most   int // of 300: 1.5 expected at the risk taken, and 4 standard deviations
	}{
		{"as stated", func(*ignition.Setup) {}, 6},
		{"twice the true uncertainty stated", func(s *ignition.Setup) { s.SettingStd *= 2; s.DialStd *= 2 }, 3},
		{"half the true uncertainty stated", func(s *ignition.Setup) { s.SettingStd /= 2; s.DialStd /= 2 }, 6},
	} {
		t.Run(tc.name, func(t *testing.T) {
			alarms := 0
			forSeeds(t, fewer(300), func(t *testing.T, rng *rand.Rand, seed int) {
				s := demoSetup()
				e := drawn(rng, s)
				tc.change(&s)
				if f := findTDC(t, s, bothWays(rng, e)...); len(f.Slips) > 0 {
					alarms++
				}
			})
			t.Logf("%d alarms in 300 good sets", alarms)
			if alarms > tc.most {
				t.Errorf("%d false alarms in 300 sets, want %d at most", alarms, tc.most)
			}
		})
	}
}

// Each well-known slip is found, alone, and named first or at least among what
// it may have been.
func TestSlipsAreFoundAndNamed(t *testing.T) {
	const mm = units.Millimetre
	for _, tc := range []struct {
		name   string
		series int
		index  int
		slip   func(*ignition.DialReading)
		text   string // of the message, or
		among  string // one of the causes
	}{
		{"a turn too much", 0, 5, func(r *ignition.DialReading) { r.Dial += 1 * mm }, "series A, rim 110 mm: about 1.00 mm too much, one turn of the small hand?", ""},
		{"a turn too little", 1, 2, func(r *ignition.DialReading) { r.Dial -= 1 * mm }, "series B, rim 270 mm: about 1.00 mm too little, one turn of the small hand?", ""},
		{"a turn too much near the top", 2, 6, func(r *ignition.DialReading) { r.Dial += 1 * mm }, "about 1.00 mm too much, one turn of the small hand?", ""},
		{"two turns", 3, 10, func(r *ignition.DialReading) { r.Dial += 2 * mm }, "about 2.00 mm too much, two turns of the small hand?", ""},
		{"half a turn", 0, 17, func(r *ignition.DialReading) { r.Dial += 0.5 * mm }, "about 0.50 mm too much, half a turn of the needle?", "half a turn of the needle"},
		{"a numbered mark near the top", 0, 12, func(r *ignition.DialReading) { r.Dial += 0.1 * mm }, "about 0.1", "one numbered mark of the dial"},
		{"digits changed places", 0, 1, func(r *ignition.DialReading) { r.Dial = 9.70 * mm }, "", "two digits changed places"}, // 7.90
		{"digits changed places", 2, 10, func(r *ignition.DialReading) { r.Dial = 3.26 * mm }, "", "two digits changed places"},
		{"the sign", 1, 5, func(r *ignition.DialReading) { r.Dial = -r.Dial }, "", "the sign"},
		{"the decimal point", 0, 8, func(r *ignition.DialReading) { r.Dial *= 10 }, "", "the decimal point"},
		{"rim ten off", 0, 3, func(r *ignition.DialReading) { r.Rim += 10 * mm }, "", "rim 100 mm for 90 mm"},
		{"rim five off", 1, 21, func(r *ignition.DialReading) { r.Rim -= 5 * mm }, "", "rim 75 mm for 80 mm"},
		{"rim a hundred off", 0, 22, func(r *ignition.DialReading) { r.Rim -= 100 * mm }, "", "rim 180 mm for 280 mm"},
		{"rim digits changed places", 0, 19, func(r *ignition.DialReading) { r.Rim = 520 * mm }, "", "rim 520 mm for 250 mm, two digits changed places"},
		{"nothing well known", 0, 20, func(r *ignition.DialReading) { r.Dial += 0.73 * mm }, "series A, rim 260 mm: about 0.7", ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			series := goodSeries()
			r := &series[tc.series].Readings[tc.index]
			tc.slip(r)
			f := findTDC(t, demoSetup(), series...)
			if len(f.Slips) != 1 || f.Slips[0].Series != series[tc.series].Name || f.Slips[0].Index != tc.index {
				t.Fatalf("slips %v, want reading %d of series %s alone", f.Slips, tc.index, series[tc.series].Name)
			}
			slip := f.Slips[0]
			if !strings.Contains(slip.String(), tc.text) {
				t.Errorf("got %q, want %q", slip, tc.text)
			}
			if tc.among != "" && !hasCause(slip, tc.among) {
				t.Errorf("causes %+v, want %q among them", slip.Causes, tc.among)
			}
			if !f.Residuals[indexOf(series, tc.series, tc.index)].LeftOut {
				t.Error("the residual is not marked as left out")
			}
		})
	}
}

func hasCause(s ignition.Slip, text string) bool {
	for _, c := range s.Causes {
		if c.Text == text {
			return true
		}
	}
	return false
}

func indexOf(series []ignition.Series, s, i int) int {
	for _, before := range series[:s] {
		i += len(before.Readings)
	}
	return i
}

// Slips of a kind that would hide one another are found all the same.
func TestSeveralSlips(t *testing.T) {
	series := goodSeries()
	for _, at := range [][2]int{{0, 2}, {0, 3}, {2, 1}, {3, 11}} {
		series[at[0]].Readings[at[1]].Dial += units.Millimetre
	}
	f := findTDC(t, demoSetup(), series...)
	if len(f.Slips) != 4 {
		t.Errorf("slips %v, want four", f.Slips)
	}
	good := findTDC(t, demoSetup(), goodSeries()...)
	if d := f.Position.Value - good.Position.Value; !(d < f.Position.Std && -d < f.Position.Std) {
		t.Errorf("position %v with four slips left out, %v without slips", f.Position, good.Position)
	}
}

// With more slips than that the set is not to be trusted, and says so.
func TestTooManySlips(t *testing.T) {
	series := goodSeries()
	rng := rand.New(rand.NewPCG(3, 4))
	for range 14 {
		r := &series[rng.IntN(4)].Readings
		(*r)[rng.IntN(len(*r))].Dial += units.Length(1+rng.IntN(3)) * units.Millimetre
	}
	f, err := ignition.FindTDC(demoSetup(), series...)
	if err != nil {
		t.Fatal(err)
	}
	if len(f.Slips) > 7 {
		t.Errorf("%d of 74 readings left out, want a tenth at most", len(f.Slips))
	}
	if len(f.Notes) == 0 {
		t.Error("nothing said of so many slips")
	}
}

// A handful of readings cannot show a slip, and none is left out.
func TestAHandfulOfReadings(t *testing.T) {
	s := ignition.Series{Turned: ignition.Forward, Readings: goodSeries()[0].Readings[2:22:22]}
	few := ignition.Series{Turned: ignition.Forward}
	for i := 0; i < 20; i += 4 {
		few.Readings = append(few.Readings, s.Readings[i])
	}
	few.Readings[1].Dial += 0.3 * units.Millimetre
	setup := demoSetup()
	setup.SlackKnown, setup.Slack = true, units.WithStd(0.1*units.Millimetre, 0.02*units.Millimetre)
	f := findTDC(t, setup, few)
	if len(f.Slips) != 0 {
		t.Errorf("slips %v from five readings", f.Slips)
	}
	if !(f.Scatter > 2) || f.Position.DoF == 0 {
		t.Errorf("scatter %.1f: the reading that does not fit must show in the uncertainty", f.Scatter)
	}
}

func TestWithout(t *testing.T) {
	series := demoSeries()
	f := findTDC(t, demoSetup(), series...)
	rest := ignition.Without(f.Slips, series...)
	if len(rest[2].Readings) != len(series[2].Readings)-1 || len(series[2].Readings) != 13 {
		t.Fatalf("series C has %d readings left of %d", len(rest[2].Readings), len(series[2].Readings))
	}
	again := findTDC(t, demoSetup(), rest...)
	if d := again.Position.Value - f.Position.Value; len(again.Slips) != 0 || d > units.Micrometre || d < -units.Micrometre {
		t.Errorf("%s, before %s", describeTDC(again), describeTDC(f))
	}
}

// Dials in thou: one turn of the needle is 0.1 in, a division 0.001 in.
func TestInchDial(t *testing.T) {
	s := demoSetup()
	s.Division, s.NeedleTurn, s.DialStd = units.Thou, 100*units.Thou, 0.4*units.Thou
	series := goodSeries()
	series[0].Readings[4].Dial += 100 * units.Thou
	f := findTDC(t, s, series...)
	if len(f.Slips) != 1 || !hasCause(f.Slips[0], "one turn of the small hand") {
		t.Errorf("slips %v", f.Slips)
	}
}
