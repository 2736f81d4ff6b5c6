package threads

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
	"pgregory.net/rapid"
)

// A tool ground to the form's own root cuts the form's own depth.
func TestDepthOfCutWithTheFormsOwnPoint(t *testing.T) {
	for _, tc := range []struct {
		thread string
		tip    func(p units.Length) ToolTip
		depth  string // over the pitch
		source string
	}{
		{"1/4-20 BSW", func(p units.Length) ToolTip { return ToolTip{Radius: 0.137329 * p} }, "0.640327", "Whitworth: depth and radius of BS 84 (Machinery's Handbook, 31st ed., p. 2087)"},
		{"1/4-26 BSC", func(p units.Length) ToolTip { return ToolTip{Radius: p / 6} }, "0.532692", "cycle: depth and radius of BS 811"},
		{"0 BA", func(p units.Length) ToolTip { return ToolTip{Radius: 0.180834 * p} }, "0.600000", "BA: depth and radius of BS 93:1951"},
		{"SI 8x1.25", func(p units.Length) ToolTip { return ToolTip{Flat: p / 8} }, "0.649519", "American and SI: depth with flats of p/8 (Jones, Turning and Boring)"},
		{"Loew 8x1.2", func(p units.Length) ToolTip { return ToolTip{Flat: p / 8} }, "0.750000", "Loewenherz: depth with flats of p/8"},
		{"M8", func(p units.Length) ToolTip { return ToolTip{Radius: p * h60 / 6} }, "0.613435", "ISO bolt: depth and radius H/6 (Machinery's Handbook, 27th ed., p. 1794)"},
		{"M8", func(p units.Length) ToolTip { return ToolTip{Flat: p / 4} }, "0.541266", "ISO basic profile: depth 5H/8 with a flat of p/4"},
	} {
		th := mustFind(t, tc.thread)
		depth, err := DepthOfCut(th, tc.tip(th.Pitch()))
		if err != nil {
			t.Fatal(err)
		}
		got := float64(depth / th.Pitch())
		figures.Figure{Printed: tc.depth, Source: tc.source, Place: 3e-6}.Check(t, got)
	}
}

// A sharp point on an ISO bolt has to reach the bottom of the sharp triangle,
// 7H/8 from the crest.
func TestDepthOfCutSharp(t *testing.T) {
	th := mustFind(t, "M10")
	depth, err := DepthOfCut(th, ToolTip{})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "M10, mm", depth.Millimetres(), 7./8*math.Sqrt(3)/2*1.5, 1e-12)
	bore, err := BoringDepth(th, ToolTip{})
	if err != nil {
		t.Fatal(err)
	}
	// From the minor diameter the sharp triangle of the nut reaches H/8 over the
	// major: 5H/8 + H/8.
	figures.Near(t, "M10 nut, mm", bore.Millimetres(), 6./8*math.Sqrt(3)/2*1.5, 1e-12)
}

func TestBlunterPointsGoLessDeep(t *testing.T) {
	th := mustFind(t, "1/2-12 BSW")
	last := units.Length(math.Inf(1))
	for _, r := range []float64{0, 0.05, 0.1, 0.137, 0.2, 0.28} {
		depth, err := DepthOfCut(th, ToolTip{Radius: units.Length(r) * th.Pitch()})
		if err != nil || !(depth < last) {
			t.Errorf("radius %.2fp: %v after %v, %v", r, depth, last, err)
		}
		last = depth
	}
	half := (th.Major() - th.Effective()) / 2
	depth, err := DepthOfCut(th, ToolTip{Flat: th.Pitch() / 2 * 0.999999})
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "a flat of half the pitch stops on the effective line", float64(depth/half), 1, 1e-5)
	depth, err = DepthOfCut(th, ToolTip{Radius: blunt(th) * 0.999999})
	if err != nil || !(depth > 0 && depth < half+th.Pitch()/4) {
		t.Errorf("the bluntest radius: %v, %v", depth, err)
	}
}

func TestSlideFeed(t *testing.T) {
	feed, err := SlideFeed(1*units.Millimetre, 60*units.Degree)
	if err != nil {
		t.Fatal(err)
	}
	figures.Near(t, "1 mm at 60°, mm", feed.Millimetres(), 2, 1e-12)
	rapid.Check(t, func(t *rapid.T) {
		depth := units.Length(rapid.Float64Range(0, 5e-3).Draw(t, "depth"))
		phi := units.Angle(rapid.Float64Range(0, 1.5).Draw(t, "angle"))
		feed, err := SlideFeed(depth, phi)
		if err != nil || !(feed >= depth) || math.Abs(float64(feed)*math.Cos(float64(phi))-float64(depth)) > 1e-15 {
			t.Errorf("%v at %v: %v, %v", depth, phi, feed, err)
		}
	})
}

func TestHelixAngle(t *testing.T) {
	// Unrolled, one turn of 1/4-20 UNC is 0.05 in up and π × 0.2175 in along.
	a := mustFind(t, "1/4-20 UNC").HelixAngle()
	figures.Near(t, "1/4-20 UNC, degrees", a.Degrees(), math.Atan(0.05/(math.Pi*0.217524))*180/math.Pi, 1e-4)
	b, err := LeadAngle(mustFind(t, "1/4-20 UNC").Pitch(), mustFind(t, "1/4-20 UNC").Effective())
	if err != nil || a != b {
		t.Errorf("%v and %v, %v", a, b, err)
	}
	if (Thread{}).HelixAngle() != 0 {
		t.Error("the zero thread climbs")
	}
}

func TestLatheRefuses(t *testing.T) {
	th := mustFind(t, "M8")
	_, err := DepthOfCut(Thread{}, ToolTip{})
	wantError(t, err, units.ErrDomain, "no thread")
	_, err = DepthOfCut(th, ToolTip{Flat: -1})
	wantError(t, err, units.ErrDomain, "below 0 mm")
	_, err = DepthOfCut(th, ToolTip{Flat: 0.1 * units.Millimetre, Radius: 0.1 * units.Millimetre})
	wantError(t, err, units.ErrDomain, "one or the other")
	_, err = BoringDepth(th, ToolTip{Flat: 0.7 * units.Millimetre})
	wantError(t, err, units.ErrDomain, "flat 0.7 mm", "0.625 mm, half the pitch")
	_, err = BoringDepth(th, ToolTip{Radius: 0.4 * units.Millimetre})
	wantError(t, err, units.ErrDomain, "radius 0.4 mm", "less than 0.36")
	_, err = DepthOfCut(th, ToolTip{Radius: units.Length(math.NaN())})
	wantError(t, err, units.ErrDomain)
	_, err = SlideFeed(-1, 0)
	wantError(t, err, units.ErrDomain, "depth of cut", "0 mm or more")
	_, err = SlideFeed(1, 90*units.Degree)
	wantError(t, err, units.ErrDomain, "90°")
	_, err = LeadAngle(0, 1)
	wantError(t, err, units.ErrDomain, "lead 0 mm")
	_, err = LeadAngle(1, units.Length(math.NaN()))
	wantError(t, err, units.ErrDomain, "diameter")
}
