package threads

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// Loads of ISO 898-1 in newtons, from the class and the stress area rounded to
// three figures, as the standard makes them.
func TestLoadsAgainstPrint(t *testing.T) {
	const (
		ultimate = "ISO 898-1 ultimate loads (two public reprints; slsbearings.com)"
		proof    = "ISO 898-1 proof loads (slsbearings.com)"
	)
	for _, r := range []struct {
		thread, grade, printed string
		place                  float64
		source                 string
	}{
		{"M6", "8.8", "16100", 100, ultimate}, {"M8", "8.8", "29200", 100, ultimate}, {"M10", "8.8", "46400", 100, ultimate},
		{"M10", "10.9", "60300", 100, ultimate}, {"M12", "10.9", "87700", 100, ultimate}, {"M8", "4.6", "14600", 100, ultimate},
		{"M10", "12.9", "70800", 100, ultimate}, {"M20", "8.8", "203000", 1000, ultimate},
		{"M6", "8.8", "11600", 100, proof}, {"M8", "8.8", "21200", 100, proof}, {"M10", "8.8", "33700", 100, proof},
		{"M10", "10.9", "48100", 100, proof}, {"M10", "12.9", "56300", 100, proof}, {"M6", "4.8", "6230", 10, proof},
	} {
		th := mustFind(t, r.thread)
		g, err := FindGrade(r.grade, th.Major())
		if err != nil {
			t.Fatal(err)
		}
		load := th.TensileLoad(g)
		if r.source == proof {
			load, _ = th.ProofLoad(g)
		}
		area, err := strconv.ParseFloat(fmt.Sprintf("%.3g", th.StressArea().SquareMillimetres()), 64)
		if err != nil {
			t.Fatal(err)
		}
		got := load.Newtons() / th.StressArea().SquareMillimetres() * area
		f := figures.Figure{Printed: r.printed, Source: r.source, Place: r.place}
		switch r.thread + " " + r.printed {
		case "M8 29200", "M6 11600", "M10 33700":
			f.Misprint(t, got, r.thread+" "+r.grade+": the print is not the product of its own area and stress, to the last place")
			want, _ := strconv.ParseFloat(r.printed, 64)
			figures.Near(t, r.thread, got, want, 0.006*want)
		default:
			f.Check(t, got)
		}
	}
}

// What the name of a property class says: 100 MPa times the first figure is the
// nominal tensile strength, ten times the product of both the nominal yield.
// The least values of the table are the nominal ones or a little more.
func TestPropertyClassesKeepTheirNames(t *testing.T) {
	for g := range Grades() {
		a, b, ok := strings.Cut(g.Name(), ".")
		if !ok {
			continue
		}
		x, _ := strconv.ParseFloat(a, 64)
		y, _ := strconv.ParseFloat(b, 64)
		tensile := g.Tensile().Megapascals()
		yield, hasYield := g.Yield()
		proof, hasProof := g.Proof()
		if !hasYield || !hasProof {
			t.Fatalf("%v has no yield or no proof stress", g)
		}
		if r := tensile / (100 * x); r < 1 || r > 1.06 {
			t.Errorf("%v: tensile %v", g, g.Tensile())
		}
		if r := yield.Megapascals() / (10 * x * y); r < 1 || r > 1.07 {
			t.Errorf("%v: yield %v", g, yield)
		}
		if r := float64(proof / yield); r < 0.87 || r > 0.95 {
			t.Errorf("%v: proof stress %.2f of yield", g, r)
		}
	}
}

// Tensile, yield and proof stress as a second list prints them: megapascals for
// the property classes, kilopounds per square inch for SAE.
func TestStressesAgainstPrint(t *testing.T) {
	const (
		iso = "usefastener.com property class table; EN ISO 898-1:2013 as reprinted by nfgab.se"
		sae = "SAE J429, henrysautowarehouse.com"
	)
	for _, r := range []struct {
		grade                 string
		size                  units.Length
		tensile, yield, proof string
		unit                  units.Pressure
		source                string
	}{
		{"4.6", 8e-3, "400", "240", "225", units.Megapascal, iso}, {"4.8", 8e-3, "420", "340", "310", units.Megapascal, iso},
		{"5.6", 8e-3, "500", "300", "280", units.Megapascal, iso}, {"5.8", 8e-3, "520", "420", "380", units.Megapascal, iso},
		{"6.8", 8e-3, "600", "480", "440", units.Megapascal, iso}, {"8.8", 16e-3, "800", "640", "580", units.Megapascal, iso},
		{"8.8", 18e-3, "830", "660", "600", units.Megapascal, iso}, {"9.8", 8e-3, "900", "720", "650", units.Megapascal, iso},
		{"10.9", 8e-3, "1040", "940", "830", units.Megapascal, iso}, {"12.9", 8e-3, "1220", "1100", "970", units.Megapascal, iso},
		{"SAE 1", units.Inch, "60", "36", "33", units.KilopoundPerSquareInch, "SAE J429, from memory"},
		{"SAE 2", units.Inch / 2, "74", "57", "55", units.KilopoundPerSquareInch, sae}, {"SAE 2", units.Inch, "60", "36", "33", units.KilopoundPerSquareInch, sae},
		{"SAE 5", units.Inch, "120", "92", "85", units.KilopoundPerSquareInch, sae}, {"SAE 5", 1.25 * units.Inch, "105", "81", "74", units.KilopoundPerSquareInch, sae},
		{"SAE 8", units.Inch, "150", "130", "120", units.KilopoundPerSquareInch, sae},
	} {
		g, err := FindGrade(r.grade, r.size)
		if err != nil {
			t.Fatal(err)
		}
		yield, _ := g.Yield()
		proof, _ := g.Proof()
		for printed, got := range map[string]units.Pressure{r.tensile: g.Tensile(), r.yield: yield, r.proof: proof} {
			figures.Figure{Printed: printed, Source: r.source}.Check(t, float64(got/r.unit))
		}
	}
}

// The property classes as another list prints them, and the old grades in
// megapascals: Classics World, Dec 2020.
func TestGradesAgainstPrint(t *testing.T) {
	for _, r := range []struct {
		grade           string
		mm              units.Length
		tensile, source string
	}{
		{"8.8", 16, "800", "usefastener.com property class table"}, {"8.8", 18, "830", "usefastener.com property class table"},
		{"10.9", 20, "1040", "usefastener.com property class table"}, {"12.9", 8, "1220", "usefastener.com property class table"},
		{"British P", 8, "541", "Classics World, Dec 2020"}, {"British R", 8, "695", "BS 1083 and BS 1768, from memory"},
		{"British S", 8, "772", "Classics World, Dec 2020"}, {"British T", 8, "849", "Classics World, Dec 2020"},
		{"British V", 8, "1004", "Classics World, Dec 2020"}, {"British X", 8, "1158", "Classics World, Dec 2020"},
		{"British Y", 8, "1236", "Classics World, Dec 2020"},
	} {
		g, err := FindGrade(r.grade, r.mm*units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		figures.Figure{Printed: r.tensile, Source: r.source}.Check(t, g.Tensile().Megapascals())
	}
	figures.Figure{Printed: "15.4443", Source: "definition: 2240 lbf/in²"}.Check(t, units.TonForcePerSquareInch.Megapascals())
	for name, memory := range map[string]bool{"8.8": false, "SAE 1": true, "SAE 5": false, "British R": true, "British T": true, "British X": false} {
		g, err := FindGrade(name, 10*units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		if g.FromMemory() != memory || g.FromMemory() != strings.Contains(g.Source(), "memory") {
			t.Errorf("%v: from memory %t, source %q", g, g.FromMemory(), g.Source())
		}
	}
	// Where sources contradict one another the weaker figure stands.
	for letter, other := range map[string]float64{"S": 120, "T": 150} {
		g, err := FindGrade(letter, 8*units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		if !(g.Tensile().KilopoundsPerSquareInch() < other) || !strings.Contains(g.Note(), "weaker") {
			t.Errorf("%v: %v (%s)", g, g.Tensile(), g.Note())
		}
	}
}

func TestGradesRefuse(t *testing.T) {
	for _, tc := range []struct {
		name  string
		major units.Length
		kind  error
		want  string
	}{
		{"8.9", 8e-3, ErrUnknown, "want a property class such as 8.8"},
		{"", 8e-3, ErrUnknown, "want a property class"},
		{"SAE 5", 2 * units.Inch, units.ErrDomain, "does not have that size"},
		{"SAE 5", units.Length(math.NaN()), units.ErrDomain, "does not have that size"},
		{"8.8", 0, units.ErrDomain, "does not have that size"},
	} {
		if _, err := FindGrade(tc.name, tc.major); !errors.Is(err, tc.kind) || !strings.Contains(err.Error(), tc.want) {
			t.Errorf("%q at %v: %v", tc.name, tc.major, err)
		}
	}
	if g, err := FindGrade("sae 5", quarterInch+1e-6); err != nil || g.Name() != "SAE 5" {
		t.Errorf("%v, %v", g, err)
	}
	for g := range Grades() {
		over, upTo := g.Sizes()
		if found, err := FindGrade(g.Name(), upTo); err != nil || found != g || !(over < upTo) || g.Source() == "" {
			t.Errorf("%v to %v: %v, %v", g, upTo, found, err)
		}
	}
	var zero Grade
	if zero.Tensile() != 0 || zero.Name() != "" {
		t.Error("the zero Grade has a strength")
	}
}
