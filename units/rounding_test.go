package units

import (
	"errors"
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"example.com/benchsums/internal/figures"
)

func TestRound(t *testing.T) {
	for _, c := range []struct {
		v, u    float64
		value   string
		std     string
		comment string
	}{
		{10.05762, 0.027, "10.058", "0.027", "JCGM 100:2008, 7.2.6"},
		{100, 28.05, "100", "28", "JCGM 100:2008, 7.2.6: 28.05 kHz"},
		{100, 10.47, "100", "10", "JCGM 100:2008, 7.2.6 allows 11 too: RoundUp"},
		{3.2, 0.05, "3.20", "0.05", "noughts stay"},
		{12.3456, 9.96, "12", "10", "carry"},
		{12.3456, 0.996, "12.3", "1.0", "carry"},
		{12.3456, 0.96, "12.3", "1.0", "carry from one figure"},
		{12.3456, 0.0996, "12.35", "0.10", "carry"},
		{12.3456, 0.0294, "12.346", "0.029", "two figures from 1 and 2"},
		{12.3456, 0.0296, "12.35", "0.03", "0.0296 begins with 3 when rounded"},
		{12.3456, 0.034, "12.35", "0.03", "one figure from 3"},
		{12.345, 0.05, "12.34", "0.05", "half to even"},
		{12.335, 0.05, "12.34", "0.05", "half to even"},
		{0.125, 0.05, "0.12", "0.05", "half to even"},
		{-12.345, 0.05, "-12.34", "0.05", "sign"},
		{-0.001, 0.05, "0.00", "0.05", "no minus in front of nought"},
		{12345, 2300, "12300", "2300", "hundreds"},
		{12345, 460, "12300", "500", "hundreds"},
		{12350, 400, "12400", "400", "half to even in hundreds"},
		{12450, 400, "12400", "400", "half to even in hundreds"},
		{99.97, 0.13, "99.97", "0.13", "no carry"},
		{99.996, 0.03, "100.00", "0.03", "carry in the value"},
		{0, 0.3, "0.0", "0.3", "nought"},
		{1e-9, 2.5e-10, "0.00000000100", "0.00000000025", "small"},
		{3, 400, "0", "400", "less than the place"},
		{60, 400, "100", "400", "nearly the place"},
		{1.015, 0.03, "1.02", "0.03", "half to even by the figures as written"},
		{2e20, 3e18, "200000000000000000000", "3000000000000000000", "large"},
		{12.7, 0, "12.7", "not stated", "no uncertainty"},
		{12.7, -1, "12.7", "not stated", "no uncertainty"},
		{12.7, math.NaN(), "12.7", "not stated", "no uncertainty"},
		{12.7, math.Inf(1), "12.7", "not stated", "no uncertainty"},
	} {
		if v, u := Round(c.v, c.u); v != c.value || u != c.std {
			t.Errorf("%g ± %g: got %s and %s, want %s and %s (%s)", c.v, c.u, v, u, c.value, c.std, c.comment)
		}
	}
	if v, u := Round(12.3456*Millimetre, 0.0296*Millimetre); v != "12.35 mm" || u != "0.03 mm" {
		t.Errorf("lengths: %s, %s", v, u)
	}
	if v, u := Round(0*Newton, 4*Newton); v != "0 N" || u != "4 N" {
		t.Errorf("nought newtons: %s, %s", v, u)
	}
	if v, u := Round(1200*Newton, 40*Newton); v != "1.20 kN" || u != "0.04 kN" {
		t.Errorf("newtons: %s, %s", v, u)
	}
	if v, u := Round(Celsius(20.123), 0.04); v != "20.12 °C" || u != "0.04 K" {
		t.Errorf("temperatures: %s, %s", v, u)
	}
	if got := WithStd(84.5*Millimetre, 0.29*Millimetre).String(); got != "84.50 mm (u 0.29 mm)" {
		t.Errorf("reading: %s", got)
	}
}

func TestRoundUp(t *testing.T) {
	for _, c := range []struct {
		v, u       float64
		value, std string
	}{
		{100, 10.47, "100", "10"}, // 4.5 % lower: stays
		{100, 10.6, "100", "11"},  // to nearest
		{100, 3.4, "100", "4"},    // 12 % lower
		{12.3456, 0.034, "12.35", "0.04"},
		{12.3456, 0.0294, "12.346", "0.029"},
		{12.3456, 0.93, "12.3", "0.9"}, // 3.2 % lower: stays
		{12.3456, 0.55, "12.3", "0.6"},
		{12.3456, 0.53, "12.3", "0.6"}, // 5.7 % lower
		{0, 3.4e4, "0", "40000"},
		{12.7, 0, "12.7", "not stated"},
	} {
		if v, u := RoundUp(c.v, c.u); v != c.value || u != c.std {
			t.Errorf("%g ± %g: got %s and %s, want %s and %s", c.v, c.u, v, u, c.value, c.std)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		u := math.Exp(rapid.Float64Range(-20, 20).Draw(t, "ln u"))
		_, text := RoundUp(0, u)
		got, err := strconv.ParseFloat(text, 64)
		if err != nil || got < 0.95*u*(1-1e-12) || got > 1.4*u {
			t.Fatalf("%g became %s, %v", u, text, err)
		}
	})
}

// The rounded value is within half a unit of the last place, and has as many
// places as its uncertainty.
func TestRoundProperties(t *testing.T) {
	places := func(s string) int {
		for i := range s {
			if s[i] == '.' {
				return len(s) - i - 1
			}
		}
		return 0
	}
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(-1e6, 1e6).Draw(t, "v")
		u := math.Exp(rapid.Float64Range(-10, 10).Draw(t, "ln u"))
		value, std := Round(v, u)
		x, err1 := strconv.ParseFloat(value, 64)
		s, err2 := strconv.ParseFloat(std, 64)
		if err1 != nil || err2 != nil || places(value) != places(std) {
			t.Fatalf("%g ± %g: %s, %s", v, u, value, std)
		}
		if math.Abs(x-v) > 0.25*u || math.Abs(s-u) > 0.15*u {
			t.Fatalf("%g ± %g: %s, %s is too far off", v, u, value, std)
		}
	})
}

func TestDMS(t *testing.T) {
	for _, c := range []struct {
		a       Angle
		dms, dm string
	}{
		{28.5 * Degree, "28° 30′ 00″", "28° 30′"},
		{28*Degree + 30*ArcMinute + 15*ArcSecond, "28° 30′ 15″", "28° 30′"},
		{28*Degree - 0.4*ArcSecond, "28° 00′ 00″", "28° 00′"},
		{28*Degree + 59*ArcMinute + 59.7*ArcSecond, "29° 00′ 00″", "29° 00′"},
		{-0.5 * Degree, "-0° 30′ 00″", "-0° 30′"},
		{-0.1 * ArcSecond, "0° 00′ 00″", "0° 00′"},
		{0, "0° 00′ 00″", "0° 00′"},
		{360 * Degree, "360° 00′ 00″", "360° 00′"},
		{28*Degree + 30.5*ArcMinute, "28° 30′ 30″", "28° 30′"},
		{28*Degree + 31.5*ArcMinute, "28° 31′ 30″", "28° 32′"},
		{1.4996 * ArcSecond, "0° 00′ 01″", "0° 00′"},
		{Angle(math.NaN()), "NaN°", "NaN°"},
		{Angle(math.Inf(1)), "+Inf°", "+Inf°"},
		{1e20, "5.72958e+21°", "5.72958e+21°"},
	} {
		if got := c.a.DMS(); got != c.dms {
			t.Errorf("%g rad: got %s, want %s", float64(c.a), got, c.dms)
		}
		if got := c.a.DM(); got != c.dm {
			t.Errorf("%g rad: got %s, want %s", float64(c.a), got, c.dm)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		a := Angle(rapid.Float64Range(-100, 100).Draw(t, "a"))
		back, err := ParseAngle(a.DMS())
		if err != nil || math.Abs(float64(back-a)) > 0.5001*float64(ArcSecond) {
			t.Fatalf("%v is %s, read back %v, %v", a, a.DMS(), back, err)
		}
	})
}

func TestFraction(t *testing.T) {
	for _, c := range []struct {
		l             Length
		den           int
		nearest, text string
	}{
		{0.4394 * Inch, 64, "7/16 in", "7/16 in + 1.9 thou"},
		{1.4394 * Inch, 64, "1 7/16 in", "1 7/16 in + 1.9 thou"},
		{1.4356 * Inch, 64, "1 7/16 in", "1 7/16 in - 1.9 thou"},
		{-1.4394 * Inch, 64, "-1 7/16 in", "-1 7/16 in - 1.9 thou"},
		{2 * Inch, 64, "2 in", "2 in"},
		{1.9999 * Inch, 64, "2 in", "2 in - 0.1 thou"},
		{0.999 * Inch, 8, "1 in", "1 in - 1.0 thou"},
		{0.5 * Inch, 64, "1/2 in", "1/2 in"},
		{0.5 * Inch, 1, "0 in", "0 in + 500.0 thou"}, // half-way, to the even
		{1.5 * Inch, 1, "2 in", "2 in - 500.0 thou"},
		{0.3 * Inch, 2, "1/2 in", "1/2 in - 200.0 thou"},
		{0.3 * Inch, 4, "1/4 in", "1/4 in + 50.0 thou"},
		{0.3 * Inch, 16, "5/16 in", "5/16 in - 12.5 thou"},
		{0.3 * Inch, 32, "5/16 in", "5/16 in - 12.5 thou"},
		{0.3 * Inch, 64, "19/64 in", "19/64 in + 3.1 thou"},
		{0.3 * Inch, 128, "19/64 in", "19/64 in + 3.1 thou"},
		{3.0 / 128 * Inch, 64, "1/32 in", "1/32 in - 7.8 thou"}, // half-way, to the even 2/64
		{3.0 / 128 * Inch, 128, "3/128 in", "3/128 in"},
		{0, 64, "0 in", "0 in"},
		{-0.0001 * Inch, 64, "0 in", "0 in - 0.1 thou"},
		{30.1625 * Millimetre, 64, "1 3/16 in", "1 3/16 in"},
		{12 * Millimetre, 64, "15/32 in", "15/32 in + 3.7 thou"},
	} {
		f, err := c.l.Fraction(c.den)
		if err != nil {
			t.Errorf("%v to 1/%d: %v", c.l, c.den, err)
			continue
		}
		if f.Nearest() != c.nearest || f.String() != c.text {
			t.Errorf("%.4f in to 1/%d: got %s, %s, want %s, %s", c.l.Inches(), c.den, f.Nearest(), f, c.nearest, c.text)
		}
	}
	for _, den := range []int{0, -8, 3, 12, 100, 256} {
		if _, err := Inch.Fraction(den); !errors.Is(err, ErrDomain) || err.Error() != "denominator "+strconv.Itoa(den)+": want 1, 2, 4, 8, 16, 32, 64 or 128: outside the domain" {
			t.Errorf("denominator %d: %v", den, err)
		}
	}
	for _, l := range []float64{math.NaN(), math.Inf(1)} {
		if _, err := Length(l).Fraction(64); !errors.Is(err, ErrNotFinite) {
			t.Errorf("%g m: %v", l, err)
		}
	}
	if _, err := (1e10 * Inch).Fraction(64); !errors.Is(err, ErrDomain) || err.Error() != "length 254000000000 mm: want 1e9 in or less: outside the domain" {
		t.Errorf("a very long length: %v", err)
	}
	if (Fraction{}).Length() != 0 || (Fraction{}).Nearest() != "0 in" {
		t.Error("the zero fraction is not nought")
	}
}

// The fraction and its rest are the length, the fraction is in its lowest
// terms, the rest is within half a step, and the text reads back.
func TestFractionProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := Length(rapid.Float64Range(-100, 100).Draw(t, "inches")) * Inch
		den := 1 << rapid.IntRange(0, 7).Draw(t, "power")
		f, err := l.Fraction(den)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(float64(f.Length()+f.Rest-l)) > 1e-15*math.Abs(float64(l)) {
			t.Fatalf("%v is not %v", f, l)
		}
		if math.Abs(f.Rest.Inches()) > 0.5/float64(den)+1e-12 {
			t.Fatalf("%v to 1/%d leaves %v", l, den, f.Rest)
		}
		if f.Numerator >= f.Denominator || f.Numerator < 0 || f.Denominator > 1 && f.Numerator%2 == 0 || f.Numerator == 0 && f.Denominator != 1 {
			t.Fatalf("%+v is not in its lowest terms", f)
		}
		back, err := ParseLength(f.Nearest())
		if err != nil || back != f.Length() {
			t.Fatalf("%s reads back as %v, want %v, %v", f.Nearest(), back, f.Length(), err)
		}
		again, err := back.Fraction(den)
		if err != nil || again.Nearest() != f.Nearest() || math.Abs(again.Rest.Inches()) > 1e-12 {
			t.Fatalf("%s becomes %s", f.Nearest(), again)
		}
	})
}

func TestFixed(t *testing.T) {
	for _, c := range []struct {
		x      float64
		places int
		want   string
	}{
		{math.NaN(), 2, "NaN"}, {math.Inf(-1), 2, "-Inf"}, {0, 0, "0"}, {0, 3, "0.000"}, {0, -2, "0"},
		{1e300, -299, "10" + zeros(299)}, {5, -1, "0"}, {15, -1, "20"}, {-5e-20, 3, "0.000"}, {123.456, 20, "123.45600000000000000000"},
	} {
		if got := fixed(c.x, c.places); got != c.want {
			t.Errorf("%g to %d places: got %s, want %s", c.x, c.places, got, c.want)
		}
	}
	figures.Near(t, "figure15", figure15(0.1+0.2), 0.3, 0)
}

func zeros(n int) string {
	b := make([]byte, n)
	for i := range b {
		b[i] = '0'
	}
	return string(b)
}
