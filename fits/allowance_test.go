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

func TestSmoothing(t *testing.T) {
	old, err := SmoothingLoss2001(6*units.Micrometre, 4*units.Micrometre)
	if err != nil {
		t.Fatal(err)
	}
	recent, err := SmoothingLoss2017(6*units.Micrometre, 4*units.Micrometre)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "8.0", Source: "DIN 7190:2001, 0.8 (Rz1 + Rz2), by a secondary source"}.Check(t, old.Micrometres())
	figures.Figure{Printed: "4.0", Source: "DIN 7190-1:2017, 0.4 Rz per surface, by two secondary sources"}.Check(t, recent.Micrometres())
	for _, bad := range [][2]units.Length{{-1, 0}, {0, units.Length(math.NaN())}, {units.Length(math.Inf(1)), 0}} {
		if _, err := SmoothingLoss2001(bad[0], bad[1]); !errors.Is(err, units.ErrDomain) {
			t.Error(err)
		}
		if _, err := SmoothingLoss2017(bad[0], bad[1]); !errors.Is(err, units.ErrDomain) {
			t.Error(err)
		}
	}
}

func TestPeriodAllowances(t *testing.T) {
	const jones = "Jones, Turning and Boring (American Railway Master Mechanics)"
	for _, tc := range []struct {
		centre float64
		inches string
	}{{38, "0.04"}, {44, "0.047"}, {50, "0.053"}, {56, "0.06"}, {62, "0.066"}, {66, "0.07"}} {
		a, err := TyreAllowance(units.Length(tc.centre) * units.Inch)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: tc.inches, Source: jones}.Check(t, a.Inches())
		// The law: about 1.06 thou to the inch.
		figures.Near(t, fmt.Sprint(tc.centre), a.Thou()/tc.centre, 1.06, 0.012) // printed to a thou
	}
	if _, err := TyreAllowance(40 * units.Inch); !errors.Is(err, units.ErrDomain) {
		t.Error(err)
	}
	const press = "Jones, Turning and Boring, allowance for forced fits"
	a, err := PressAllowance(2 * units.Inch)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "-0.0025", Source: press}.Check(t, a.Min.Inches()/2)
	figures.Figure{Printed: "-0.001", Source: press}.Check(t, a.Max.Inches()/2)
	if !a.Contains(-4*units.Thou) || !a.Contains(-0.0015*2*units.Inch) { // 2 in: 0.004 in all told; 0.0015 on average
		t.Error(a)
	}
	if a, err = PressAllowance(8 * units.Inch); err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "-0.009", Source: press}.Check(t, a.Min.Inches())
	shrink, err := ShrinkAllowance(68 * units.Inch)
	if err != nil {
		t.Fatal(err)
	}
	figures.Figure{Printed: "0.068", Source: "Dooley, Applied Science for Metal Workers, art. 453"}.Check(t, shrink.Inches())
	for _, bad := range []units.Length{0, -1, units.Length(math.NaN()), units.Length(math.Inf(1))} {
		if _, err := PressAllowance(bad); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v: %v", bad, err)
		}
		if _, err := ShrinkAllowance(bad); !errors.Is(err, units.ErrDomain) {
			t.Errorf("%v: %v", bad, err)
		}
	}
	if _, err := PressAllowance(9 * units.Inch); !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), "at most 8 in") {
		t.Error(err)
	}
}

func TestShrunkAgainstPressed(t *testing.T) {
	const src = "Jones, Turning and Boring, tests of shrunk and forced joints of one size and allowance"
	along, round := ShrunkAgainstPressed()
	figures.Figure{Printed: "3.66", Source: src}.Check(t, along)
	figures.Figure{Printed: "3.2", Source: src}.Check(t, round)
	// The doc says that the coefficients differ by less than the joints tested did.
	var shrunk, pressed float64
	for _, f := range Frictions() {
		if f.Shrink {
			shrunk = max(shrunk, f.High)
		} else {
			pressed = max(pressed, f.High)
		}
	}
	if r := shrunk / pressed; !(r > 1 && r < round) {
		t.Errorf("coefficients %g to %g: %g times", shrunk, pressed, r)
	}
}
