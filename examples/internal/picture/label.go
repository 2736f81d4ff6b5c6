package picture

import (
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
)

// Labels writes a name beside each point, to the right of it and a little
// above.
func (c *Chart) Labels(x, y []float64, names []string) *Chart {
	xys := points(x, y)
	n := min(len(xys), len(names))
	if n == 0 {
		return c
	}
	l, err := plotter.NewLabels(plotter.XYLabels{XYs: xys[:n], Labels: names[:n]})
	if err != nil {
		c.err = err
		return c
	}
	for i := range l.TextStyle {
		l.TextStyle[i] = c.plot.X.Tick.Label
		l.TextStyle[i].Color, l.TextStyle[i].XAlign, l.TextStyle[i].YAlign = ink, text.XLeft, text.YBottom
	}
	l.Offset = vg.Point{X: vg.Points(4), Y: vg.Points(2)}
	c.plot.Add(l)
	return c
}

// To makes the axes reach a value at least.
func (c *Chart) To(x, y float64) *Chart {
	c.plot.X.Max, c.plot.Y.Max = max(c.plot.X.Max, x), max(c.plot.Y.Max, y)
	return c
}
