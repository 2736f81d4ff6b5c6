package threadsheet

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// The outline of every thread passes through its crest, its effective diameter
// and its root, is one with itself a pitch further on, and has no step.
func TestProfilePassesThroughTheThread(t *testing.T) {
	for th := range threads.All() {
		for _, part := range [...]threads.Part{threads.Bolt, threads.Nut} {
			pr := profileOf(th, part)
			pr.taper = 0
			root := th.Minor()
			if part == threads.Bolt {
				root = th.BoltRoot()
			}
			p := th.Pitch().Millimetres()
			for _, at := range [...]struct {
				what    string
				x, want float64
				within  float64
			}{
				{"crest", 0, th.Major().Millimetres() / 2, 1e-9},
				{"effective", p / 4, th.Effective().Millimetres() / 2, 1e-9},
				{"root", p / 2, root.Millimetres() / 2, 1e-9},
			} {
				figures.Near(t, th.Designation()+" "+part.String()+" "+at.what, pr.at(at.x), at.want, at.within)
				figures.Near(t, th.Designation()+" a pitch on, "+at.what, pr.at(at.x+3*p), at.want, 1e-6)
			}
			const steps = 400
			for i := range steps {
				a, b := pr.at(p*float64(i)/steps), pr.at(p*float64(i+1)/steps)
				if !(math.Abs(a-b) <= p/steps/pr.tan+0.012*p) { // the flank, and what BS 93 rounds off the depth
					t.Errorf("%v %v: a step of %.4f mm at %.2f of the pitch", th, part, a-b, float64(i)/steps)
				}
			}
		}
	}
}

// The flank of a drawn thread has the angle of its form.
func TestProfileFlankAngle(t *testing.T) {
	for _, tc := range []struct {
		name  string
		angle float64
	}{{"1/4 BSF", 55}, {"1/4-26 BSC", 60}, {"M8", 60}, {"2 BA", 47.5}} {
		th, err := threads.Find(tc.name)
		if err != nil {
			t.Fatal(err)
		}
		pr := profileOf(th, threads.Nut)
		p := pr.p
		slope := (pr.at(p/4-p/100) - pr.at(p/4+p/100)) / (p / 50)
		figures.Near(t, tc.name+", °", 2*math.Atan(1/slope)*180/math.Pi, tc.angle, 1e-6)
	}
}

// A taper thread rises by 1 in 32 on the radius.
func TestProfileTaper(t *testing.T) {
	th, err := threads.Find("R 1/4")
	if err != nil {
		t.Fatal(err)
	}
	pr := profileOf(th, threads.Bolt)
	figures.Near(t, "rise, mm", pr.at(8*pr.p)-pr.at(0), 8*pr.p/32, 1e-9)
}

// The drawing is true to the scale it states: eight pitches of 7/8-18 from crest
// to crest are eight times 25.4/18 mm.
func TestDrawingIsTrueToScale(t *testing.T) {
	plug, err := threads.Find("7/8-18 plug")
	if err != nil {
		t.Fatal(err)
	}
	metric, err := threads.Find("M22x1.5")
	if err != nil {
		t.Fatal(err)
	}
	pic := Profiles(plug, metric, threads.Bolt, 8*plug.Pitch())
	m := regexp.MustCompile(`scale ([\d.]+):1`).FindStringSubmatch(pic.Title)
	if m == nil {
		t.Fatalf("no scale in %q", pic.Title)
	}
	scale, _ := strconv.ParseFloat(m[1], 64)
	figures.Near(t, "scale", scale, 10, 0)
	var xs []float64
	outline := regexp.MustCompile(`<path d="([^"]*)" fill="none" stroke="#111" stroke-width="0.5"/>`).FindStringSubmatch(pic.SVG)
	if outline == nil {
		t.Fatal("no outline in the drawing")
	}
	for _, pt := range regexp.MustCompile(`[ML]([\d.]+) `).FindAllStringSubmatch(outline[1], -1) {
		x, _ := strconv.ParseFloat(pt[1], 64)
		xs = append(xs, x)
	}
	figures.Near(t, "length drawn, mm", xs[len(xs)-1]-xs[0], scale*8*25.4/18, 1e-3)
	for _, want := range []string{"out of step", "drawn 10:1", "M22x1.5"} {
		if !strings.Contains(pic.SVG+pic.Says, want) {
			t.Errorf("no %q", want)
		}
	}
	if strings.Contains(pic.SVG, "NaN") {
		t.Error("NaN in the drawing")
	}
}

// However long the engagement, the drawing fits a page of A4.
func TestDrawingFitsThePage(t *testing.T) {
	a, _ := threads.Find("1/4 BSF")
	b, _ := threads.Find("M6")
	for _, long := range []units.Length{units.Millimetre, 8 * units.Millimetre, 70 * units.Millimetre, 300 * units.Millimetre} {
		pic := Profiles(a, b, threads.Nut, long)
		m := regexp.MustCompile(`width="([\d.]+)mm" height="([\d.]+)mm"`).FindStringSubmatch(pic.SVG)
		w, _ := strconv.ParseFloat(m[1], 64)
		if !(w > 50 && w <= 170) {
			t.Errorf("%v long is drawn %.0f mm wide", long, w)
		}
	}
}

func TestRatio(t *testing.T) {
	for scale, want := range map[float64]string{20: "20:1", 1: "1:1", 0.5: "1:2", 2: "2:1"} {
		if got := ratio(scale); got != want {
			t.Errorf("%g is written %s, want %s", scale, got, want)
		}
	}
}
