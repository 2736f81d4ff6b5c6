package picture

import (
	"bytes"
	"fmt"
	"image/color"
	"math"
	"strconv"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"
)

// A Stroke is how a curve is drawn.
type Stroke int

// The strokes, most prominent first.
const (
	Solid Stroke = iota
	Dashed
	Dotted
	DashDotted
	Thin
)

// A Mark is how points are drawn.
type Mark int

// The marks.
const (
	Circle Mark = iota
	Cross
	Square
	Triangle
	Plus
	FilledCircle
)

var (
	ink  = color.Gray{0x11}
	grey = color.Gray{0x77}
	soft = color.Gray{0xdd}
)

// A Chart is a diagram of curves and points over two axes.
type Chart struct {
	plot *plot.Plot
	err  error
}

// NewChart returns an empty chart; the axis titles carry their units.
func NewChart(title, x, y string) *Chart {
	p := plot.New()
	p.Title.Text, p.X.Label.Text, p.Y.Label.Text = title, x, y
	for _, style := range []*text.Style{&p.Title.TextStyle, &p.X.Label.TextStyle, &p.Y.Label.TextStyle, &p.X.Tick.Label, &p.Y.Tick.Label, &p.Legend.TextStyle} {
		style.Font.Typeface, style.Font.Variant = "Liberation", "Sans"
		style.Font.Size, style.Color = 10, ink
	}
	p.Title.TextStyle.Font.Size, p.Title.Padding = 12, vg.Points(6)
	p.X.Padding, p.Y.Padding = vg.Points(4), vg.Points(4)
	p.Legend.Top, p.Legend.Padding, p.Legend.ThumbnailWidth = true, vg.Points(2), vg.Points(26)
	p.X.Tick.Marker, p.Y.Tick.Marker = ticks{}, ticks{}
	grid := plotter.NewGrid()
	grid.Vertical.Color, grid.Horizontal.Color = soft, soft
	p.Add(grid)
	return &Chart{plot: p}
}

// Curve adds a curve through the points (x[i], y[i]).
func (c *Chart) Curve(name string, x, y []float64, s Stroke) *Chart {
	l, err := plotter.NewLine(points(x, y))
	if err != nil {
		c.err = err
		return c
	}
	l.LineStyle = lineStyle(s)
	c.plot.Add(l)
	if name != "" {
		c.plot.Legend.Add(name, l)
	}
	return c
}

// Points adds points.
func (c *Chart) Points(name string, x, y []float64, m Mark) *Chart {
	if len(x) == 0 {
		return c
	}
	s, err := plotter.NewScatter(points(x, y))
	if err != nil {
		c.err = err
		return c
	}
	s.GlyphStyle = draw.GlyphStyle{Color: ink, Radius: vg.Points(3), Shape: glyph(m)}
	c.plot.Add(s)
	if name != "" {
		c.plot.Legend.Add(name, s)
	}
	return c
}

// Band adds the grey band between low and high.
func (c *Chart) Band(name string, x, low, high []float64) *Chart {
	ring := points(x, high)
	for i := len(x) - 1; i >= 0; i-- {
		ring = append(ring, plotter.XY{X: x[i], Y: low[i]})
	}
	p, err := plotter.NewPolygon(ring)
	if err != nil {
		c.err = err
		return c
	}
	p.Color, p.LineStyle.Width = soft, 0
	c.plot.Add(p)
	if name != "" {
		c.plot.Legend.Add(name, p)
	}
	return c
}

// At adds a labelled upright line at x, over the height of the chart's data.
func (c *Chart) At(x float64, label string) *Chart {
	c.plot.Add(rule{at: x, upright: true, label: label, style: c.plot.X.Tick.Label})
	c.plot.X.Min, c.plot.X.Max = min(c.plot.X.Min, x), max(c.plot.X.Max, x)
	return c
}

// Level adds a labelled level line at y.
func (c *Chart) Level(y float64, label string) *Chart {
	c.plot.Add(rule{at: y, label: label, style: c.plot.X.Tick.Label})
	c.plot.Y.Min, c.plot.Y.Max = min(c.plot.Y.Min, y), max(c.plot.Y.Max, y)
	return c
}

// Legend says in which corner the names stand: top or bottom, left or right.
func (c *Chart) Legend(top, left bool) *Chart {
	c.plot.Legend.Top, c.plot.Legend.Left = top, left
	return c
}

// Down makes the y axis count downwards, for a piston that falls.
func (c *Chart) Down() *Chart {
	c.plot.Y.Scale = plot.InvertedScale{Normalizer: c.plot.Y.Scale}
	return c
}

// From makes an axis begin at nought.
func (c *Chart) From(x, y float64) *Chart {
	c.plot.X.Min, c.plot.Y.Min = min(c.plot.X.Min, x), min(c.plot.Y.Min, y)
	return c
}

// SVG writes the chart, width and height in millimetres.
func (c *Chart) SVG(width, height float64) (string, error) {
	if c.err != nil {
		return "", fmt.Errorf("picture: %w", c.err)
	}
	canvas := vgsvg.New(vg.Length(width)*vg.Millimeter, vg.Length(height)*vg.Millimeter)
	c.plot.Draw(draw.New(canvas))
	var b bytes.Buffer
	if _, err := canvas.WriteTo(&b); err != nil {
		return "", fmt.Errorf("picture: %w", err)
	}
	return inline(b.String()), nil
}

// inline takes the XML heading off, which has no place inside a page.
func inline(svg string) string {
	if i := strings.Index(svg, "<svg"); i > 0 {
		svg = svg[i:]
	}
	return svg
}

func points(x, y []float64) plotter.XYs {
	xys := make(plotter.XYs, min(len(x), len(y)))
	for i := range xys {
		xys[i] = plotter.XY{X: x[i], Y: y[i]}
	}
	return xys
}

func lineStyle(s Stroke) draw.LineStyle {
	style := draw.LineStyle{Color: ink, Width: vg.Points(1.5)}
	switch s {
	case Dashed:
		style.Dashes = []vg.Length{vg.Points(7), vg.Points(4)}
	case Dotted:
		style.Dashes = []vg.Length{vg.Points(1.5), vg.Points(3)}
	case DashDotted:
		style.Dashes = []vg.Length{vg.Points(8), vg.Points(3), vg.Points(1.5), vg.Points(3)}
	case Thin:
		style.Width, style.Color = vg.Points(0.7), grey
	}
	return style
}

func glyph(m Mark) draw.GlyphDrawer {
	switch m {
	case Cross:
		return draw.CrossGlyph{}
	case Square:
		return draw.SquareGlyph{}
	case Triangle:
		return draw.TriangleGlyph{}
	case Plus:
		return draw.PlusGlyph{}
	case FilledCircle:
		return draw.CircleGlyph{}
	}
	return draw.RingGlyph{}
}

// ticks puts marks at round figures, 1, 2 or 5 times a power of ten apart.
type ticks struct{}

// Ticks returns the marks of an axis from low to high.
func (ticks) Ticks(low, high float64) []plot.Tick {
	span := high - low
	if !(span > 0) || math.IsInf(span, 0) {
		return []plot.Tick{{Value: low, Label: strconv.FormatFloat(low, 'g', 4, 64)}}
	}
	power := math.Floor(math.Log10(span / 5))
	step, decimals := math.Pow(10, power), max(0, -int(power))
	for _, m := range [...]float64{10, 5, 2} {
		if span/(m*step) >= 3 {
			step *= m
			decimals = max(0, -int(math.Floor(math.Log10(step)+1e-9)))
			break
		}
	}
	var marks []plot.Tick
	for i := math.Ceil(low/step - 1e-9); i*step <= high+1e-9*step; i++ {
		marks = append(marks, plot.Tick{Value: i * step, Label: strconv.FormatFloat(i*step+0, 'f', decimals, 64)})
	}
	return marks
}

// A rule is a labelled line across the whole chart.
type rule struct {
	at      float64
	upright bool
	label   string
	style   text.Style
}

// Plot draws the rule.
func (r rule) Plot(c draw.Canvas, p *plot.Plot) {
	tx, ty := p.Transforms(&c)
	style := lineStyle(Thin)
	style.Color = ink
	label := r.style
	label.Handler, label.Color = p.TextHandler, ink
	if r.upright {
		x := tx(r.at)
		c.StrokeLine2(style, x, c.Min.Y, x, c.Max.Y)
		label.XAlign, label.YAlign = text.XLeft, text.YTop
		c.FillText(label, vg.Point{X: x + vg.Points(3), Y: c.Max.Y - vg.Points(2)}, r.label)
		return
	}
	y := ty(r.at)
	c.StrokeLine2(style, c.Min.X, y, c.Max.X, y)
	label.XAlign, label.YAlign = text.XRight, text.YBottom
	c.FillText(label, vg.Point{X: c.Max.X - vg.Points(3), Y: y + vg.Points(2)}, r.label)
}
