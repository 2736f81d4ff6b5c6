package picture

import (
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
)

func wellFormed(t *testing.T, svg string) {
	t.Helper()
	if !strings.HasPrefix(svg, "<svg") {
		t.Errorf("begins with %.40q", svg)
	}
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		_, err := d.Token()
		if err == io.EOF {
			return
		}
		if err != nil {
			t.Fatalf("%v in %s", err, svg)
		}
	}
}

func TestChart(t *testing.T) {
	x, y, low, high := make([]float64, 50), make([]float64, 50), make([]float64, 50), make([]float64, 50)
	for i := range x {
		x[i] = float64(i) - 25
		y[i] = x[i] * x[i] / 60
		low[i], high[i] = y[i]-0.5, y[i]+0.5
	}
	svg, err := NewChart("Drop & angle", "degrees", "drop, mm").
		Band("band", x, low, high).Curve("curve", x, y, Solid).Curve("other", x, low, Dashed).
		Points("readings", x[:10], y[:10], Cross).Points("none", nil, nil, Circle).At(3, "TDC").Level(2, "card").Legend(true, false).Down().SVG(160, 100)
	if err != nil {
		t.Fatal(err)
	}
	wellFormed(t, svg)
	for _, want := range []string{"Drop &amp; angle", "readings", "TDC", "card"} {
		if !strings.Contains(svg, want) {
			t.Errorf("no %q in the chart", want)
		}
	}
	if _, err := NewChart("", "", "").Curve("c", []float64{1, math.NaN()}, []float64{1, 2}, Solid).SVG(100, 100); err == nil {
		t.Error("a curve with NaN was drawn")
	}
}

func TestDrawing(t *testing.T) {
	svg := NewDrawing(50, 40).Line(0, 0, 10, 0, Fine).Circle(10, 10, 5, Heavy, Dashed).Arc(20, 20, 10, 0, 90, Heavy, Solid).
		Text(1, 2, 3, Centre, 90, `<b> & "x"`).Hatch([][2]float64{{0, 0}, {5, 0}, {5, 5}}, "cut").Fill([][2]float64{{0, 0}, {1, 0}, {1, 1}}, 0.02).
		Dimension(0, 10, 30, 10, "30").SVG()
	wellFormed(t, svg)
	for _, want := range []string{`width="50mm" height="40mm" viewBox="0 0 50 40"`, `&lt;b&gt; &amp;`, `fill="#050505"`, "L30 20"} {
		if !strings.Contains(svg, want) {
			t.Errorf("no %s in %s", want, svg)
		}
	}
}

func TestTicksAreRound(t *testing.T) {
	for _, tc := range []struct {
		low, high float64
		want      string
	}{
		{60, 290, "100 150 200 250"}, {0, 9.97, "0 2 4 6 8"}, {-0.1, 1.0, "0.0 0.2 0.4 0.6 0.8 1.0"},
		{0.3, 0.45, "0.30 0.35 0.40 0.45"}, {-40, 40, "-40 -20 0 20 40"}, {1200, 1900, "1200 1400 1600 1800"}, {3, 3, "3"},
	} {
		var labels []string
		for _, m := range (ticks{}).Ticks(tc.low, tc.high) {
			labels = append(labels, m.Label)
		}
		if got := strings.Join(labels, " "); got != tc.want {
			t.Errorf("%g to %g: %s, want %s", tc.low, tc.high, got, tc.want)
		}
	}
}

// Figures of dimensions read from below or from the right, and stand clear of
// their line on the left of the way along it.
func TestDimensionReads(t *testing.T) {
	for _, tc := range []struct {
		x2, y2 float64
		turn   float64 // of the text
	}{
		{20, 0, 0}, {-20, 0, 0}, {0, -20, -90}, {0, 20, -90}, {20, 20, 45}, {-20, -20, 45}, {20, -20, -45}, {-20, 20, -45},
	} {
		svg := NewDrawing(100, 100).Dimension(50, 50, 50+tc.x2, 50+tc.y2, "7").SVG()
		var x, y, turn float64
		i := strings.Index(svg, "<text ")
		fmt.Sscanf(svg[i:], `<text x="%f" y="%f"`, &x, &y)
		if _, after, ok := strings.Cut(svg[i:], "rotate("); ok {
			fmt.Sscanf(after, "%f", &turn)
		}
		if math.Abs(turn-tc.turn) > 1e-6 {
			t.Errorf("to %.0f, %.0f: turned %.3f°, want %.0f°", tc.x2, tc.y2, turn, tc.turn)
		}
		// The middle of the letters is 1.2 mm above the base line, as the text stands.
		sin, cos := math.Sincos(turn * math.Pi / 180)
		mx, my := x+1.2*sin-50-tc.x2/2, y-1.2*cos-50-tc.y2/2
		left := (mx*tc.y2 - my*tc.x2) / math.Hypot(tc.x2, tc.y2)
		if !(left > 1.8) {
			t.Errorf("to %.0f, %.0f: the figure stands %.1f mm to the left, on the line or beyond it", tc.x2, tc.y2, left)
		}
	}
}

func TestZones(t *testing.T) {
	zones := []Zone{{Name: "hole & slot", Low: 25.46, High: 25.51, Sure: 0.04}, {Name: "shaft", Low: 25.3, High: 25.4, Cut: true}}
	svg := Zones("mm", 3, 25, "shut", zones...).SVG()
	wellFormed(t, svg)
	for _, want := range []string{"hole &amp; slot", "25.460", "25.510", "25.300", "shut", `id="zone-shaft"`} {
		if !strings.Contains(svg, want) {
			t.Errorf("no %q in the diagram", want)
		}
	}
	if got, want := ZonesSay("mm", 2, zones...), "hole & slot from 25.46 to 25.51 mm, either end good to 0.04; shaft from 25.30 to 25.40 mm."; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	wellFormed(t, Zones("mm", 1, 3, "level", Zone{Low: 3, High: 3}).SVG())
}
