package picture

import (
	"math"
	"strings"
	"testing"
)

func TestLabels(t *testing.T) {
	x, y := []float64{1, 2, 3}, []float64{1, 4, 9}
	chart := func() *Chart { return NewChart("", "x", "y").Points("points", x, y, Cross) }
	svg, err := chart().Labels(x, y, []string{"one", "two & a bit"}).Labels(nil, nil, nil).SVG(100, 80)
	if err != nil {
		t.Fatal(err)
	}
	wellFormed(t, svg)
	for _, want := range []string{">one<", ">two &amp; a bit<"} {
		if !strings.Contains(svg, want) {
			t.Errorf("no %s in the chart", want)
		}
	}
	if _, err := chart().Labels([]float64{math.NaN()}, []float64{1}, []string{"nowhere"}).SVG(100, 80); err == nil {
		t.Error("a label was written nowhere")
	}
}

func TestToReachesFurtherAndNeverLess(t *testing.T) {
	c := NewChart("", "x", "y").Points("points", []float64{1, 2}, []float64{3, 4}, Cross).To(7, 1)
	if c.plot.X.Max != 7 || c.plot.Y.Max != 4 {
		t.Errorf("to %g, %g, want 7, 4", c.plot.X.Max, c.plot.Y.Max)
	}
}
