package ignition

import (
	"math"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

func TestDistancesAsTheyAreTaken(t *testing.T) {
	rim := must(NewRim(450 * mm))(t)
	rising := must(NewScale(rim, 174*mm, Rising))(t)
	falling := must(NewScale(rim, 174*mm, Falling))(t)
	const src = "computed with 50 digits: rim arc, chord and tape"
	for _, tc := range []struct {
		name  string
		d     Distance
		ahead figures.Reference
	}{
		{"arc ahead", Distance{80 * mm, Ahead, AlongRim, 0}, figures.Reference{Digits: "20.3718327157626", Source: src}},
		{"arc behind", Distance{80 * mm, Behind, AlongRim, 0}, figures.Reference{Digits: "-20.3718327157626", Source: src}},
		{"chord ahead", Distance{80 * mm, Ahead, StraightAcross, 0}, figures.Reference{Digits: "20.4806966423724", Source: src}},
		{"chord behind", Distance{80 * mm, Behind, StraightAcross, 0}, figures.Reference{Digits: "-20.4806966423724", Source: src}},
		{"on the mark", Distance{}, figures.Reference{Digits: "0", Source: "definition: the mark itself"}},
	} {
		a := must(rim.Ahead(tc.d))(t)
		tc.ahead.Check(t, a.Degrees())
		// From the top dead centre mark the angle ahead is the advance, on any scale.
		for _, s := range []Scale{rising, falling} {
			f := must(s.FigureAt(174*mm, tc.d))(t)
			figures.Near(t, tc.name+", "+s.Figures().String(), float64(s.Advance(f)), float64(a), 1e-14)
		}
	}
	thick := must(must(NewRim(203.2 * mm))(t).Ahead(Distance{40 * mm, Ahead, AlongRim, 0.2 * mm}))(t)
	figures.Reference{Digits: "22.5352131811533", Source: src}.Check(t, thick.Degrees())
	if f := must(rising.FigureAt(174*mm, Distance{80 * mm, Ahead, AlongRim, 0}))(t); !(f < 174*mm) {
		t.Errorf("ahead of 174 mm on a rising scale: got %v, want less", f)
	}
}

func TestDistanceRefusals(t *testing.T) {
	rim := must(NewRim(100 * mm))(t)
	for _, tc := range []struct {
		name string
		d    Distance
		text string
	}{
		{"negative", Distance{-1 * mm, Ahead, AlongRim, 0}, "distance between marks -1 mm: want 0 mm or more, and the side beside it"},
		{"NaN", Distance{units.Length(math.NaN()), Ahead, AlongRim, 0}, "want 0 mm or more"},
		{"no side", Distance{1 * mm, AtTDC, AlongRim, 0}, "want Ahead or Behind"},
		{"no way", Distance{1 * mm, Behind, 0, 0}, "way of measuring not stated: want AlongRim or StraightAcross"},
		{"long chord", Distance{101 * mm, Behind, StraightAcross, 0}, "chord 101 mm: want 100 mm at most"},
		{"thin tape", Distance{1 * mm, Ahead, AlongRim, -1 * mm}, "tape thickness -1 mm"},
	} {
		_, err := rim.Ahead(tc.d)
		refused(t, tc.name, err, tc.text)
		_, err = Scale{rim: rim, figures: Rising}.FigureAt(0, tc.d)
		refused(t, tc.name, err, tc.text)
	}
}

func FuzzWords(f *testing.F) {
	for _, s := range []string{"clockwise", "rising", "rim", "ahead", "along the rim", "small two-stroke", "at speed", "", "Rising\n"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var (
			w Turning
			g Figures
			p Place
			s Side
			h Held
			k Kind
			r Running
		)
		for _, v := range []interface {
			UnmarshalText([]byte) error
			MarshalText() ([]byte, error)
		}{&w, &g, &p, &s, &h, &k, &r} {
			if v.UnmarshalText([]byte(text)) != nil {
				continue
			}
			if back, err := v.MarshalText(); err != nil || string(back) != text {
				t.Errorf("%q comes back as %q, %v", text, back, err)
			}
		}
	})
}
