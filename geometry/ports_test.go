package geometry

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const portForum = "blasterforum.com, post 589993 on a 200 cc two-stroke single"

// The post gives angles, durations and depths; stroke and rod are from memory.
func TestWorked_ports(t *testing.T) {
	b := NewBarrel(mustCrank(t, 57*mm, 110*mm, 0))
	event := must[PortEvent](t)
	opened := func(degrees float64) PortEvent {
		t.Helper()
		return event(b.CrownPort(b.CrownPortEdge(units.Angle(degrees) * units.Degree)))
	}
	for _, tc := range []struct {
		name   string
		got    units.Angle
		figure figures.Figure
	}{
		{"exhaust duration", opened(91.5).Duration(), figures.Figure{Printed: "177", Source: portForum}},
		{"transfer duration", opened(119.5).Duration(), figures.Figure{Printed: "121", Source: portForum}},
		{"boost port duration", opened(125).Duration(), figures.Figure{Printed: "110", Source: portForum}},
		{"blow-down", Blowdown(opened(91.5), opened(119.5)), figures.Figure{Printed: "28", Source: portForum}},
		{"exhaust duration, barrel raised", opened(88.5).Duration(), figures.Figure{Printed: "183", Source: portForum}},
		{"transfer duration, barrel raised", opened(116.5).Duration(), figures.Figure{Printed: "127", Source: portForum}},
		{"exhaust opening", event(b.CrownPort(33 * mm)).Opens, figures.Figure{Printed: "91.5", Source: portForum + "; stroke and rod from memory"}},
		{"exhaust opening, barrel raised 1.5 mm", event(b.Raised(1.5 * mm).CrownPort(33 * mm)).Opens, figures.Figure{Printed: "88.5", Source: portForum + "; stroke and rod from memory"}},
	} {
		t.Run(tc.name, func(t *testing.T) { tc.figure.Check(t, tc.got.Degrees()) })
	}
	figures.Figure{Printed: "116", Source: portForum}.Misprint(t, opened(128).Duration().Degrees(),
		"a port that opens at 128° lasts 104°; 122° would last 116°")
}

// measuredBarrel has the crown 1.5 mm below the face and a skirt of 88 mm.
func measuredBarrel(t *testing.T, offset units.Length) Barrel {
	t.Helper()
	b := must[Barrel](t)(NewBarrel(mustCrank(t, 76*mm, 145*mm, offset)).WithDeck(1.5 * mm))
	return must[Barrel](t)(b.WithSkirt(88 * mm))
}

func TestBarrel_crownPort(t *testing.T) {
	for _, offset := range []units.Length{0, 8 * mm, -8 * mm} {
		b := measuredBarrel(t, offset)
		e := must[PortEvent](t)(b.CrownPort(61.5 * mm))
		// At both events the crown's edge is at the port's edge.
		figures.Near(t, "crown below the face as it opens, mm", (b.Crank().Drop(e.Opens) + b.Deck()).Millimetres(), 61.5, 1e-12)
		figures.Near(t, "crown below the face as it closes, mm", (b.Crank().Drop(e.Closes) + b.Deck()).Millimetres(), 61.5, 1e-12)
		bottom := b.Crank().Downstroke()
		if !(0 < e.Opens && e.Opens < bottom && bottom < e.Closes && e.Closes < units.Turn) {
			t.Errorf("%v: want it open round the bottom, %v", e, bottom)
		}
		figures.Near(t, "edge from the opening, mm", b.CrownPortEdge(e.Opens).Millimetres(), 61.5, 1e-12)
		before, after := e.AboutBottom(b.Crank())
		figures.Near(t, "duration about the bottom", float64(before+after), float64(e.Duration()), 1e-14)
		if offset == 0 {
			figures.Near(t, "before and after the bottom", float64(before), float64(after), 1e-14)
		} else if before-after > 0 != (offset > 0) {
			t.Errorf("%v before the bottom and %v after it with an offset of %v: want the longer before the bottom for a positive offset and after it for a negative one", before, after, offset)
		}
		back := must[units.Length](t)(b.CrownPortEdgeForDuration(e.Duration()))
		figures.Near(t, "edge from the duration, mm", back.Millimetres(), 61.5, 1e-12)
	}
}

func TestBarrel_skirtPort(t *testing.T) {
	for _, offset := range []units.Length{0, 8 * mm, -8 * mm} {
		b := measuredBarrel(t, offset)
		e := must[PortEvent](t)(b.SkirtPort(106 * mm))
		skirt := b.Deck() + b.Skirt()
		figures.Near(t, "skirt below the face as it opens, mm", (b.Crank().Drop(e.Opens) + skirt).Millimetres(), 106, 1e-12)
		figures.Near(t, "skirt below the face as it closes, mm", (b.Crank().Drop(e.Closes) + skirt).Millimetres(), 106, 1e-12)
		if !(e.Opens < 0 && 0 < e.Closes) {
			t.Errorf("%v: want it open round the top", e)
		}
		figures.Near(t, "edge from the closing, mm", b.SkirtPortEdge(e.Closes).Millimetres(), 106, 1e-12)
		figures.Near(t, "edge from the opening, mm", b.SkirtPortEdge(e.Opens).Millimetres(), 106, 1e-12)
		back := must[units.Length](t)(b.SkirtPortEdgeForDuration(e.Duration()))
		figures.Near(t, "edge from the duration, mm", back.Millimetres(), 106, 1e-12)
	}
}

// Raised ports: exhaust longer, inlet shorter, each by what the edge has moved.
func TestBarrel_Raised(t *testing.T) {
	b := measuredBarrel(t, 0)
	up := b.Raised(2 * mm)
	if up.Deck() != 3.5*mm {
		t.Errorf("deck %v, want 3.5 mm", up.Deck())
	}
	event := must[PortEvent](t)
	if was, is := event(b.CrownPort(60*mm)), event(up.CrownPort(60*mm)); is.Duration() <= was.Duration() {
		t.Errorf("exhaust %v, was %v: want it longer", is, was)
	} else {
		figures.Near(t, "as for an edge at 58 mm", float64(is.Opens), float64(event(b.CrownPort(58*mm)).Opens), 1e-14)
	}
	if was, is := event(b.SkirtPort(106*mm)), event(up.SkirtPort(106*mm)); is.Duration() >= was.Duration() {
		t.Errorf("inlet %v, was %v: want it shorter", is, was)
	}
}

func TestPortEvent_String(t *testing.T) {
	b := measuredBarrel(t, 0)
	event := must[PortEvent](t)
	for _, tc := range []struct {
		name, want string
		got        PortEvent
	}{
		{"exhaust", "opens 120.0° after top dead centre, closes 120.0° before top dead centre, open for 120.0°", event(b.CrownPort(b.CrownPortEdge(120 * units.Degree)))},
		{"inlet", "opens 55.0° before top dead centre, closes 55.0° after top dead centre, open for 110.0°", event(b.SkirtPort(b.SkirtPortEdge(55 * units.Degree)))},
	} {
		t.Run(tc.name, func(t *testing.T) {
			if got := tc.got.String(); got != tc.want {
				t.Errorf("got  %q\nwant %q", got, tc.want)
			}
		})
	}
}

func TestBarrel_refuses(t *testing.T) {
	nan := units.Length(math.NaN())
	b := measuredBarrel(t, 0)
	_, err := b.CrownPort(1 * mm)
	refuses(t, err, "port edge 1 mm below the face, crown's edge 1.5 mm below it at the top: want an edge that the crown crosses, 1.5 mm to 77.5 mm")
	_, err = b.CrownPort(80 * mm)
	refuses(t, err, "port edge 80 mm below the face, crown's edge 1.5 mm below it at the top: want an edge that the crown crosses, 1.5 mm to 77.5 mm")
	_, err = b.SkirtPort(80 * mm)
	refuses(t, err, "port edge 80 mm below the face, skirt's edge 89.5 mm below it at the top: want an edge that the skirt crosses, 89.5 mm to 165.5 mm")
	_, err = NewBarrel(b.Crank()).SkirtPort(106 * mm)
	refuses(t, err, "skirt not given: want its length below the crown's edge")
	_, err = b.WithDeck(nan)
	refuses(t, err, "deck height NaN mm: want a finite length")
	_, err = b.WithSkirt(0)
	refuses(t, err, "skirt 0 mm below the crown's edge: want more than 0 mm")
	_, err = b.CrownPortEdgeForDuration(361 * units.Degree)
	refuses(t, err, "duration 361°: want 0° to 360°")
	_, err = b.SkirtPortEdgeForDuration(-1 * units.Degree)
	refuses(t, err, "duration -1°: want 0° to 360°")
}

func TestWindow_Open(t *testing.T) {
	square := Window{Width: 30 * mm, Height: 15 * mm}
	round := Window{Width: 30 * mm, Height: 15 * mm, Corner: 4 * mm}
	slot := Window{Width: 12 * mm, Height: 12 * mm, Corner: 6 * mm} // a round hole
	area := must[units.Area](t)
	for _, tc := range []struct {
		name string
		w    Window
		by   units.Length
		want float64 // mm²
	}{
		{"shut", square, -1 * mm, 0},
		{"part", square, 5 * mm, 150},
		{"full", square, 20 * mm, 450},
		{"corners all lost", round, 15 * mm, 450 - 4*(16-math.Pi*4)},
		{"corners lost at one end", round, 8 * mm, 240 - 2*(16-math.Pi*4)},
		{"corners lost at the one end and half a height left", round, 11 * mm, 330 - 2*(16-math.Pi*4)},
		{"half a round hole", slot, 6 * mm, math.Pi * 18},
		{"round hole", slot, 12 * mm, math.Pi * 36},
		// Segment of a circle: r² arccos((r−h)/r) − (r−h)√(2rh − h²).
		{"segment of a round hole", slot, 2 * mm, 36*math.Acos(4.0/6) - 4*math.Sqrt(20)},
		{"all but a segment", slot, 10 * mm, math.Pi*36 - (36*math.Acos(4.0/6) - 4*math.Sqrt(20))},
	} {
		t.Run(tc.name, func(t *testing.T) {
			figures.Near(t, "area, mm²", area(tc.w.Open(tc.by)).SquareMillimetres(), tc.want, 1e-11)
		})
	}
	_, err := Window{Width: 30 * mm}.Open(1)
	refuses(t, err, "window 30 mm wide and 0 mm high: want both more than 0 mm")
	_, err = Window{Width: 30 * mm, Height: 10 * mm, Corner: 6 * mm}.Open(1)
	refuses(t, err, "corner radius 6 mm of a window 30 mm wide and 10 mm high: want 0 mm to half the lesser")
}

// Against the sum in five thousand even steps, which is the definition.
func TestPortArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := roomyCrank(t)
		b := NewBarrel(c)
		b, _ = b.WithSkirt(70 * mm)
		w := Window{
			Width:  20 * mm,
			Height: units.Length(rapid.Float64Range(5, 40).Draw(t, "height, mm")) * mm,
			Corner: units.Length(rapid.SampledFrom([]float64{0, 2}).Draw(t, "corner, mm")) * mm,
		}
		at := units.Length(rapid.Float64Range(0.1, 0.95).Draw(t, "edge in the stroke")) * c.Stroke()
		crown, err := b.CrownPortArea(at, w)
		if err != nil {
			t.Fatal(err)
		}
		skirt, err := b.SkirtPortArea(at+70*mm, w)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range []struct {
			name string
			got  PortArea
			way  units.Length
		}{{"crown", crown, 1}, {"skirt", skirt, -1}} {
			const n = 5000
			var sum, most float64
			for i := range n {
				theta := p.got.Event.Opens + p.got.Event.Duration()*units.Angle(float64(i)+0.5)/n
				a := float64(w.open(p.way * (c.Drop(theta) - at)))
				sum, most = sum+a/n, max(most, a)
			}
			full := float64(w.open(w.Height))
			within(t, p.name+": mean over full area", float64(p.got.Mean)/full, sum/full, 3e-6)
			within(t, p.name+": greatest over full area", float64(p.got.Greatest)/full, most/full, 3e-5)
		}
	})
}

func TestPortArea_times(t *testing.T) {
	b := measuredBarrel(t, 0)
	w := Window{Width: 34 * mm, Height: 16 * mm}
	p := must[PortArea](t)(b.CrownPortArea(61.5*mm, w))
	ta := must[units.TimeArea](t)(p.TimeArea(900 * units.RevolutionPerMinute))
	// ∫A dθ / (6N), θ in degrees and N in turns a minute.
	figures.Near(t, "time-area, s mm²", ta.SecondSquareMillimetres(), p.Mean.SquareMillimetres()*p.Event.Duration().Degrees()/(6*900), 1e-12)
	sta := must[units.SpecificTimeArea](t)(p.SpecificTimeArea(900*units.RevolutionPerMinute, 350*units.CubicCentimetre))
	figures.Near(t, "specific time-area, s/m", sta.SecondsPerMetre(), ta.SecondSquareMillimetres()*1e-6/350e-6, 1e-12)
	_, err := p.TimeArea(0)
	refuses(t, err, "crank speed 0 rev/min: want more than 0 rev/min")
	_, err = p.SpecificTimeArea(1, 0)
	refuses(t, err, "swept volume 0 cm³: want more than 0 cm³")
	_, err = b.CrownPortArea(61.5*mm, Window{})
	refuses(t, err, "window 0 mm wide and 0 mm high: want both more than 0 mm")
	_, err = b.SkirtPortArea(106*mm, Window{})
	refuses(t, err, "window 0 mm wide and 0 mm high: want both more than 0 mm")
	if _, err = b.CrownPortArea(0, w); err == nil {
		t.Error("a port above the crown: want an error")
	}
	if _, err = b.SkirtPortArea(0, w); err == nil {
		t.Error("a port above the skirt: want an error")
	}
	// An edge that the piston only just reaches opens nothing.
	p = must[PortArea](t)(b.CrownPortArea(77.5*mm, w))
	figures.Near(t, "mean area of a port at the bottom, m²", float64(p.Mean), 0, 1e-18)
}
