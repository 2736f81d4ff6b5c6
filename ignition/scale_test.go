package ignition

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const mm = units.Millimetre

// On a rim of 360 mm girth a millimetre is a degree, and every sign shows.
func TestScaleSigns(t *testing.T) {
	rim := must(NewRimOfGirth(360 * mm))(t)
	rising := must(NewScale(rim, 174*mm, Rising))(t)
	falling := must(NewScale(rim, 174*mm, Falling))(t)
	for _, tc := range []struct {
		name     string
		scale    Scale
		figure   units.Length
		angle    float64 // degrees after top dead centre
		position float64 // mm ahead on the rim
	}{
		{"rising, at the mark", rising, 174 * mm, 0, 0},
		{"rising, a lower figure comes first", rising, 144 * mm, -30, 30},
		{"rising, a higher figure comes after", rising, 194 * mm, 20, -20},
		{"falling, at the mark", falling, 174 * mm, 0, 0},
		{"falling, a higher figure comes first", falling, 204 * mm, -30, 30},
		{"falling, a lower figure comes after", falling, 154 * mm, 20, -20},
		{"past the end of the rule", rising, 504 * mm, -30, 30},
		{"below nought", rising, -216 * mm, -30, 30},
		{"a turn and a half on", rising, 714 * mm, 180, -180},
		{"bottom dead centre", rising, 354 * mm, 180, -180},
	} {
		figures.Near(t, tc.name+": angle", tc.scale.Angle(tc.figure).Degrees(), tc.angle, 1e-12)
		figures.Near(t, tc.name+": advance", tc.scale.Advance(tc.figure).Degrees(), -tc.angle, 1e-12)
		figures.Near(t, tc.name+": position", tc.scale.Position(tc.figure).Millimetres(), tc.position, 1e-12)
	}
}

// The mark whose figure comes to the pointer earlier in forward turning lies
// ahead on the rim: the point of the rim that is ahead by p passes the pointer
// when the crank is p/R before top dead centre.
func TestAheadPassesThePointerFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		girth := rapid.Float64Range(100, 3000).Draw(t, "girth mm")
		rim, _ := NewRimOfGirth(units.Length(girth) * mm)
		f := rapid.SampledFrom([]Figures{Rising, Falling}).Draw(t, "figures")
		tdc := units.Length(rapid.Float64Range(0, girth).Draw(t, "tdc mm")) * mm
		s, err := NewScale(rim, tdc, f)
		if err != nil {
			t.Fatal(err)
		}
		advance := units.Angle(rapid.Float64Range(-179, 179).Draw(t, "advance deg")) * units.Degree
		figure := s.FigureAtAdvance(advance)
		if got := s.Advance(figure); !(math.Abs(float64(got-advance)) < 1e-13) {
			t.Errorf("advance %v comes back as %v", advance, got)
		}
		if got := s.Position(figure); !(math.Abs(float64(got-rim.Arc(advance))) < 1e-13) {
			t.Errorf("position %v, want %v ahead", got, rim.Arc(advance))
		}
		on := s.OnRule(figure)
		if on < 0 || on >= rim.Girth() {
			t.Errorf("%v is not on the rule", on)
		}
		if got := s.Advance(on); !(math.Abs(float64(got-advance)) < 1e-12) {
			t.Errorf("on the rule advance %v comes back as %v", advance, got)
		}
	})
}

func TestScaleOnRuleEnds(t *testing.T) {
	rim := must(NewRimOfGirth(360 * mm))(t)
	s := must(NewScale(rim, 0, Rising))(t)
	for _, tc := range []struct{ in, want units.Length }{
		{0, 0}, {rim.Girth(), 0}, {-1e-30, 0}, {-10 * mm, rim.Girth() - 10*mm},
	} {
		figures.Near(t, tc.in.String(), float64(s.OnRule(tc.in)), float64(tc.want), 1e-15)
		if got := s.OnRule(tc.in); got >= rim.Girth() {
			t.Errorf("%v: %v is past the end", tc.in, got)
		}
	}
}

func TestScaleKeepsWhatItWasMadeOf(t *testing.T) {
	rim := must(NewRim(356 * mm))(t)
	s := must(NewScale(rim, 174*mm, Falling))(t)
	if s.Rim() != rim || s.TDC() != 174*mm || s.Figures() != Falling || rim.Radius() != 178*mm {
		t.Errorf("got %v, %v, %v, radius %v", s.Rim(), s.TDC(), s.Figures(), rim.Radius())
	}
	var l units.Length
	if n := testing.AllocsPerRun(100, func() { l += s.Figure(s.Angle(l)) + s.OnRule(l) + s.Position(l) }); n != 0 {
		t.Errorf("a scale allocates %v times", n)
	}
}

func TestScaleRefusals(t *testing.T) {
	rim := must(NewRim(100 * mm))(t)
	for _, tc := range []struct {
		name string
		rim  Rim
		tdc  units.Length
		f    Figures
		text string
	}{
		{"figures not stated", rim, 0, 0, "want Rising or Falling"},
		{"no such figures", rim, 0, 7, "want Rising or Falling"},
		{"no rim", Rim{}, 0, Rising, "want a rim made with NewRim"},
		{"NaN", rim, units.Length(math.NaN()), Rising, "want a finite figure"},
		{"endless", rim, units.Length(math.Inf(-1)), Rising, "want a finite figure"},
	} {
		_, err := NewScale(tc.rim, tc.tdc, tc.f)
		if !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.text) {
			t.Errorf("%s: got %v, want ErrDomain and %q", tc.name, err, tc.text)
		}
	}
}

func TestMarkSides(t *testing.T) {
	rim := must(NewRimOfGirth(360 * mm))(t)
	for _, tc := range []struct {
		name    string
		advance units.Angle
		place   Place
		turning Turning
		arcMM   float64
		side    Side
		way     Turning
		text    string
	}{
		{"spark on the rim", 30 * units.Degree, OnRim, Anticlockwise, 30, Ahead, Anticlockwise, "scribe on the rim 30.0 mm (1.181 in) round the face, 29.7 mm (1.168 in) straight across, from the top dead centre mark, ahead of it in the direction of rotation: facing the rim, anticlockwise from it"},
		{"spark on the rim, clockwise", 30 * units.Degree, OnRim, Clockwise, 30, Ahead, Clockwise, "clockwise from it"},
		{"after the top", -10 * units.Degree, OnRim, Clockwise, -10, Behind, Anticlockwise, "behind it, against the direction of rotation: facing the rim, anticlockwise from it"},
		{"spark on the case", 30 * units.Degree, OnCase, Anticlockwise, -30, Behind, Clockwise, "scribe on the case 30.0 mm (1.181 in) round the face, 29.7 mm (1.168 in) straight across, from the top dead centre mark, behind it"},
		{"at the top", 0, OnRim, Clockwise, 0, AtTDC, Clockwise, "on the top dead centre mark itself"},
	} {
		m := must(NewMark(rim, tc.advance, tc.place, tc.turning))(t)
		figures.Near(t, tc.name+": arc", m.Arc.Millimetres(), tc.arcMM, 1e-12)
		if m.Side() != tc.side || m.Way() != tc.way || !strings.Contains(m.String(), tc.text) {
			t.Errorf("%s: got %v, %v, %q; want %v, %v, %q", tc.name, m.Side(), m.Way(), m, tc.side, tc.way, tc.text)
		}
		if want := "turning forward (" + tc.turning.String(); !strings.Contains(m.Approach(), want) {
			t.Errorf("%s: approach %q, want %q in it", tc.name, m.Approach(), want)
		}
	}
}

// A mark on the rim and the figure of a scale name the same spot.
func TestMarkAgreesWithScale(t *testing.T) {
	rim := must(NewRim(356 * mm))(t)
	for _, f := range []Figures{Rising, Falling} {
		s := must(NewScale(rim, 174*mm, f))(t)
		m := must(NewMark(rim, 26*units.Degree, OnRim, Anticlockwise))(t)
		figures.Near(t, f.String(), float64(s.Position(s.FigureAtAdvance(26*units.Degree))), float64(m.Arc), 1e-15)
	}
}

func TestMarkRefusals(t *testing.T) {
	rim := must(NewRim(100 * mm))(t)
	for _, tc := range []struct {
		name    string
		rim     Rim
		advance units.Angle
		place   Place
		turning Turning
		text    string
	}{
		{"no turning", rim, 1, OnRim, 0, "want Clockwise or Anticlockwise"},
		{"no place", rim, 1, 9, Clockwise, "want OnRim or OnCase"},
		{"too far", rim, 181 * units.Degree, OnRim, Clockwise, "advance 181°: want from −180° to 180°"},
		{"NaN", rim, units.Angle(math.NaN()), OnRim, Clockwise, "want from −180° to 180°"},
		{"no rim", Rim{}, 1, OnRim, Clockwise, "want a rim made with NewRim"},
	} {
		_, err := NewMark(tc.rim, tc.advance, tc.place, tc.turning)
		if !errors.Is(err, units.ErrDomain) || !strings.Contains(err.Error(), tc.text) {
			t.Errorf("%s: got %v, want ErrDomain and %q", tc.name, err, tc.text)
		}
	}
}

func TestWords(t *testing.T) {
	for _, tc := range []struct{ got, want string }{
		{Clockwise.String(), "clockwise"}, {Anticlockwise.String(), "anticlockwise"}, {Turning(0).String(), "turning not stated"},
		{Clockwise.Reverse().String(), "anticlockwise"}, {Turning(0).Reverse().String(), "turning not stated"},
		{Rising.String(), "rising"}, {Falling.String(), "falling"}, {Figures(0).String(), "figures not stated"},
		{Ahead.String(), "ahead"}, {Behind.String(), "behind"}, {AtTDC.String(), "at"},
		{Place(5).String(), "place not stated"},
	} {
		if tc.got != tc.want {
			t.Errorf("got %q, want %q", tc.got, tc.want)
		}
	}
}
