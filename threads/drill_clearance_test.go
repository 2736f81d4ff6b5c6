package threads

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

var clearanceFits = [...]ClearanceFit{CloseClearance, MediumClearance, FreeClearance}

// ISO 273 agrees with BS 4186 to 10 mm.
func TestMetricClearanceAgainstISO273(t *testing.T) {
	const source = "ISO 273 (engineeringhardware.com, clearance hole table)"
	for _, tc := range []struct {
		thread string
		holes  [3]string
	}{
		{"M1.6", [3]string{"1.7", "1.8", "2.0"}},
		{"M2", [3]string{"2.2", "2.4", "2.6"}},
		{"M2.5", [3]string{"2.7", "2.9", "3.1"}},
		{"M3", [3]string{"3.2", "3.4", "3.6"}},
		{"M4", [3]string{"4.3", "4.5", "4.8"}},
		{"M5", [3]string{"5.3", "5.5", "5.8"}},
		{"M6", [3]string{"6.4", "6.6", "7.0"}},
		{"M7", [3]string{"7.4", "7.6", "8.0"}},
		{"M8", [3]string{"8.4", "9.0", "10.0"}},
		{"M10", [3]string{"10.5", "11.0", "12.0"}},
	} {
		for i, fit := range clearanceFits {
			hole, err := ClearanceHole(mustFind(t, tc.thread), fit)
			if err != nil {
				t.Fatal(err)
			}
			figures.Figure{Printed: tc.holes[i], Source: source}.Check(t, hole.Millimetres())
		}
	}
}

// The same standard gives a metric drill for each inch hole, chosen for it from
// drills that go by tenths up to 13 mm and by quarters and halves above.
func TestInchClearanceAgainstItsMetricDrills(t *testing.T) {
	const source = "ANSI/ASME B18.2.8-1999, metric drills for inch fasteners (Machinery's Handbook, 31st ed., p. 1743, Table 3a)"
	for i, tc := range [...][3]string{
		{"1.7", "1.9", "2.4"}, {"2.05", "2.25", "2.6"}, {"2.4", "2.6", "2.9"}, {"2.7", "2.9", "3.3"},
		{"3", "3.3", "3.7"}, {"3.6", "4", "4.4"}, {"3.9", "4.3", "4.7"}, {"4.6", "5", "5.4"}, {"5.2", "5.6", "6"},
		{"6.7", "7.1", "7.5"}, {"8.3", "8.7", "9.1"}, {"9.9", "10.2", "10.5"}, {"11.5", "11.8", "12.2"},
		{"13.5", "14.25", "15.5"}, {"16.75", "17.5", "19"}, {"20", "20.5", "23"}, {"23", "24", "26"},
		{"26", "27.5", "29.5"}, {"29.5", "31", "33.5"}, {"32.5", "34", "36.5"}, {"36.5", "38", "41"}, {"39.5", "41", "44"},
	} {
		r := inchClearance[i]
		for j, fit := range clearanceFits {
			step := 0.3
			if r.bolt >= 0.5 {
				step = 1 // half a millimetre either way
			}
			f := figures.Figure{Printed: tc[j], Source: source, Place: step}
			if r.bolt == 0.375 && fit == FreeClearance {
				f.Misprint(t, 25.4*r.hole(fit), "3/8 in free: smaller than the least hole of Table 1a, 0.422 in; the text of the page may be misread")
				continue
			}
			f.Check(t, 25.4*r.hole(fit))
		}
	}
}

func TestClearanceTablesGrow(t *testing.T) {
	for _, rows := range [][]clearanceRow{metricClearance[:], inchClearance[:]} {
		for i, r := range rows {
			if !(r.bolt < r.close && r.close < r.medium && r.medium < r.free) {
				t.Errorf("holes for %v out of order: %v", r.bolt, r)
			}
			if i > 0 && !(r.bolt > rows[i-1].bolt && r.close > rows[i-1].close && r.medium > rows[i-1].medium && r.free > rows[i-1].free) {
				t.Errorf("row %v does not grow", r)
			}
		}
	}
}

func TestClearanceBetweenRows(t *testing.T) {
	hole, err := ClearanceHole(mustFind(t, "2 BA"), MediumClearance) // 4.7 mm, between 4 and 5
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "2 BA medium, mm", hole.Millimetres(), 5.2, 1e-9)
	between, _ := New(ISOForm, 7.5*units.Millimetre, 1*units.Millimetre) // 7 has 1 mm of play, 8 has 2 mm
	hole, err = ClearanceHole(between, FreeClearance)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "7.5 mm free, mm", hole.Millimetres(), 9.5, 1e-9)
	hole, err = ClearanceHole(mustFind(t, "5/32-32 BSC"), CloseClearance)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "5/32 close, in", hole.Inches(), 0.15625+0.016, 1e-9)
}

func TestClearanceDrill(t *testing.T) {
	d, err := ClearanceDrill(mustFind(t, "1/4 BSF"), CloseClearance, Drills(FractionDrill)...)
	if err != nil || d.Name() != "17/64 in" {
		t.Errorf("1/4 in close: %v, %v", d, err)
	}
	d, err = ClearanceDrill(mustFind(t, "M8"), MediumClearance)
	if err != nil || d.Name() != "9 mm" {
		t.Errorf("M8 medium: %v, %v", d, err)
	}
	_, err = ClearanceDrill(mustFind(t, "M8"), MediumClearance, Drills(NumberDrill)...)
	wantError(t, err, units.ErrDomain, "M8x1.25", "none of the 80", "9 mm")
	_, err = ClearanceDrill(mustFind(t, "16 BA"), MediumClearance)
	wantError(t, err, units.ErrDomain, "16 BA", "1.6 mm")
	_, err = ClearanceHole(Thread{}, MediumClearance)
	wantError(t, err, units.ErrDomain, "no thread")
	_, err = ClearanceHole(mustFind(t, "M8"), 7)
	wantError(t, err, units.ErrDomain, "close, medium or free")
	special, _ := New(WhitworthForm, 7*units.Millimetre, 1*units.Millimetre)
	hole, err := ClearanceHole(special, CloseClearance)
	if err != nil || math.Abs(hole.Millimetres()-7.4) > 1e-9 {
		t.Errorf("special 7 mm: %v, %v", hole, err)
	}
}
