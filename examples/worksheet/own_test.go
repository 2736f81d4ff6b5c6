package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"github.com/stretchr/testify/require"
)

// worked returns the demo engine worked out, with its figures by key.
func worked(t *testing.T) (*bench, map[string]sheet.Figure) {
	t.Helper()
	var j job
	file, err := jobfile.Decode("marrowdale.toml", marrowdale, &j)
	require.NoError(t, err)
	b, err := newBench(file, &j)
	require.NoError(t, err)
	s, err := b.sheet()
	require.NoError(t, err)
	return b, figuresOf(t, s)
}

// written writes a value as a careful person would, to six figures.
func written(v float64, unit string) string {
	text := strconv.FormatFloat(v, 'f', max(0, 5-int(math.Floor(math.Log10(math.Abs(v))))), 64)
	switch unit {
	case "°":
		return text + unit
	case "s mm²", "ms", "":
		return text
	}
	return text + " " + unit
}

// A right figure is never accused, however it is rounded; a slip is always
// named.
func TestEverySlipIsNamedAndNoRightFigureAccused(t *testing.T) {
	b, figures := worked(t)
	count := 0
	for key, f := range figures {
		if f.Value == 0 || f.Unit == "ms" || f.Unit == "s mm²" || f.Unit == "cc/min" || f.Unit == "%" {
			continue
		}
		for digits := 2; digits <= 7; digits++ {
			text := strconv.FormatFloat(f.Value, 'f', max(0, digits-1-int(math.Floor(math.Log10(math.Abs(f.Value))))), 64)
			v, _ := strconv.ParseFloat(text, 64)
			if got := b.judge(f, text, v, figures); !strings.Contains(got, "agrees") || strings.Contains(got, "slip") || strings.Contains(got, "exactly") {
				t.Errorf("%s written as %s: %s", key, text, got)
			}
		}
		for _, sl := range b.slips(f, figures) {
			if math.Abs(sl.value-f.Value) <= f.HalfWidth()*1.01+1e-5*math.Abs(f.Value) || sl.value == 0 || math.IsNaN(sl.value) {
				continue // it makes no difference that could be seen
			}
			count++
			text := written(sl.value, f.Unit)
			v, err := f.Read(text)
			if err != nil {
				t.Errorf("%s: %v", key, err)
				continue
			}
			if got := b.judge(f, text, v, figures); !strings.Contains(strings.ToLower(got), strings.ToLower(sl.name)) {
				t.Errorf("%s: %s for %s: not named: %s", key, text, sl.name, got)
			}
			if sl.why == "" || strings.HasSuffix(sl.why, ".") {
				t.Errorf("%s: %s: wants one sentence without its stop: %q", key, sl.name, sl.why)
			}
		}
	}
	if count < 60 {
		t.Errorf("only %d slips were tried", count)
	}
	t.Logf("%d slips", count)
}

// angleAt and dropAt are the crank as books print it, in degrees.
func angleAt(drop, stroke, rod float64) float64 {
	r := stroke / 2
	y := r + rod - drop
	return math.Acos((r*r+y*y-rod*rod)/(2*r*y)) * 180 / math.Pi
}

func dropAt(degrees, stroke, rod float64) float64 {
	r := stroke / 2
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return r*(1-cos) + rod - math.Sqrt(rod*rod-r*r*sin*sin)
}

// The slips people make, each with the figure it gives, worked by hand from the
// demo engine's readings.
func TestSlipsByHand(t *testing.T) {
	b, figures := worked(t)
	stroke := (77.70+77.80+77.70)/3 - (1.60+1.55+1.60)/3
	drop := 3.0 / 16 * 25.4
	girth := (1118.5 + 1118.0 + 1118.5) / 3
	advance := figures["card.advance"].Value
	rod := ((6.624+6.625+6.621)/3 - (0.6245+1.1245)/2) * 25.4
	for _, tc := range []struct {
		key  string
		got  float64
		want string
	}{
		{"card.advance", math.Acos(1-2*drop/stroke) * 180 / math.Pi, "rod taken as endless"},
		{"card.advance", advance * math.Pi / 180, "radians written as degrees"},
		{"card.advance", advance / 2, "half-speed shaft for those of the crank"},
		{"card.arc", girth / math.Pi * math.Sin(advance*math.Pi/360), "the chord for the arc"},
		{"card.dial", drop * math.Cos(12*math.Pi/180), "multiplying by the cosine"},
		{"card.dial", drop, "lean of the gauge ignored"},
		{"card.rim", figures["tdc.position"].Value + figures["card.arc"].Value, "wrong side of top dead centre"},
		{"rim.diameter", girth / 3, "π taken as 3"},
		{"rim.diameter", girth * 7 / 22, "agrees"}, // within the uncertainty: not to be accused
		{"rim.per_degree", girth / 360 / 25.4, "inches written as millimetres"},
		{"tdc.position", (164. + 177 + 172 + 175) / 4, "needle seemed to stop"},
		{"points.per_hundredth_mm", figures["points.per_thou"].Value, "a thou for a hundredth"},
		{"compression.swept", 4 * figures["compression.swept"].Value, "the bore for its half"},
		{"compression.geometric", figures["compression.trapped"].Value, "the trapped ratio"},
		{"card.arc", girth / 2 / math.Pi * advance, "degrees put where radians belong"},
		{"card.chord", girth / math.Pi * math.Abs(math.Sin(advance/2)), "degrees taken for radians in the sine"},
		{"card.drop", dropAt(advance*180/math.Pi, stroke, rod), "degrees taken for radians in sine and cosine"},
		{"card.dial", drop / math.Cos(12), "degrees taken for radians in the cosine"},
		{"card.advance", angleAt(100*drop/stroke, stroke, rod), "percentage of the stroke for the drop"},
		{"card.advance", angleAt(1.875, stroke, rod), "thou taken for hundredths"},
		{"card.advance", angleAt(drop, 2*stroke, rod), "stroke for the throw"},
		{"card.advance", angleAt(drop/math.Cos(12*math.Pi/180), stroke, rod), "lean applied the wrong way"},
		{"crank.rod", (6.624 + 6.625 + 6.621) / 3 * 25.4, "pins not taken off"},
		{"crank.stroke", (77.70 + 77.80 + 77.70) / 3, "crown at the top forgotten"},
		{"ports.exhaust_opens", 180 - figures["ports.exhaust_opens"].Value, "counted from the bottom"},
		{"ports.exhaust_shuts", figures["ports.exhaust_opens"].Value, "the opening for the closing"},
		{"oil.for_tank", figures["oil.tank"].Value * 1000 / 16, "parts to parts for parts per whole"},
		{"oil.tank", 10.5 * 7 * 5.25 * 0.016387064 * 3.785411784 / 4.54609, "american measures for imperial ones"},
		{"oil.for_can", 20000. / 17, "parts per whole for parts to parts"},
		{"oil.petrol_to_oil", 17, "parts of the whole"},
		{"oil.for_can", 1500, "no well-known slip"},
	} {
		f := figures[tc.key]
		text := written(tc.got, f.Unit)
		v, err := f.Read(text)
		if err != nil {
			t.Errorf("%s: %v", tc.key, err)
			continue
		}
		if got := b.judge(f, text, v, figures); !strings.Contains(strings.ToLower(got), tc.want) {
			t.Errorf("%s %s: %s; want %q", tc.key, text, got, tc.want)
		}
	}
}

// Two slips that give one figure are both named.
func TestTwoSlipsOfOneFigureAreBothNamed(t *testing.T) {
	b, figures := worked(t)
	f := figures["rim.diameter"]
	got := b.judge(f, fmt.Sprintf("%.4f mm", f.Value/2), f.Value/2, figures)
	if !strings.Contains(got, "radius for the diameter") {
		t.Error(got)
	}
	f = figures["card.arc"] // 2 × the arc: diameter for radius, twice over
	got = b.judge(f, fmt.Sprintf("%.4f mm", 2*f.Value), 2*f.Value, figures)
	if !strings.Contains(got, "Or: ") {
		t.Error(got)
	}
}

// How finely a figure is written decides whether it agrees.
func TestHowFinelyItIsWritten(t *testing.T) {
	b, figures := worked(t)
	for _, tc := range []struct{ key, text, want string }{
		{"card.advance", "25.9°", "agrees"},
		{"card.advance", "26°", "agrees"},
		{"card.advance", "25° 52'", "agrees"},
		{"card.advance", "25d52m", "agrees"},
		{"card.advance", "25° 10'", "differs"},
		{"card.advance", "26° 50'", "differs"},
		{"card.advance", "2.587e1°", "agrees"},
		{"card.advance", "26.9°", "differs"},
		{"card.arc", "3 3/16 in", "agrees"}, // 3.164 in, to the nearest sixteenth
		{"card.arc", "3 11/64 in", "agrees"},
		{"card.arc", "3 7/16 in", "differs"},
		{"card.arc", "80.35 mm", "agrees"},
		{"card.arc", "8.0 cm", "agrees"},
		{"card.arc", "82 mm", "differs"},
		{"rim.per_degree", "1/8 in", "agrees"},
		{"oil.for_can", "1.25e3 cc", "agrees"},
		{"oil.for_can", "1.19e3 cc", "differs"},
		{"oil.for_can", "1.25 l", "agrees"},
		{"oil.for_can", "44 imp fl oz", "agrees"},
	} {
		f := figures[tc.key]
		v, err := f.Read(tc.text)
		require.NoError(t, err, tc.text)
		if got := b.judge(f, tc.text, v, figures); !strings.Contains(got, tc.want) {
			t.Errorf("%s %s: %s; want %q", tc.key, tc.text, got, tc.want)
		}
	}
}
