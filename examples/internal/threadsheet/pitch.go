package threadsheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A Pitch is a pitch as it is stamped on a gauge leaf or a leadscrew: "26 tpi",
// "1 mm", and on a leaf the angle of its set, "26 tpi 55°".
type Pitch struct {
	Length units.Length
	Angle  units.Angle // of the set the leaf is in; 0 if not stated
	text   string
}

// UnmarshalText reads a pitch.
func (p *Pitch) UnmarshalText(text []byte) error {
	t := strings.Join(strings.Fields(string(text)), " ")
	got := Pitch{text: t}
	pitch := t
	if before, angle, ok := cutAngle(t); ok {
		a, err := units.ParseAngle(angle)
		if err != nil {
			return err
		}
		if !(a >= 40*units.Degree && a <= 90*units.Degree) {
			return fmt.Errorf("%q: an angle of %v: want that of the leaf's set, as 55° or 60°", t, a)
		}
		got.Angle, pitch = a, before
	}
	var err error
	if got.Length, err = parsePitch(pitch); err != nil {
		return fmt.Errorf("%q: %v", t, err)
	}
	*p = got
	return nil
}

// cutAngle parts "26 tpi 55°" before the angle.
func cutAngle(t string) (pitch, angle string, ok bool) {
	trimmed := strings.TrimSpace(strings.TrimSuffix(strings.TrimSuffix(t, "°"), "deg"))
	i := strings.LastIndexByte(trimmed, ' ')
	if trimmed == t || i < 0 {
		return t, "", false
	}
	return strings.TrimRight(trimmed[:i], " ,"), t[i+1:], true
}

func parsePitch(t string) (units.Length, error) {
	if n, ok := strings.CutSuffix(strings.ToLower(t), "tpi"); ok {
		v, err := strconv.ParseFloat(strings.TrimSpace(n), 64)
		if err != nil || !(v >= 1 && v <= 200) {
			return 0, fmt.Errorf("want 1 to 200 threads per inch, as 26 tpi")
		}
		return threads.TPI(v), nil
	}
	if _, err := strconv.ParseFloat(t, 64); err == nil {
		return 0, fmt.Errorf("threads per inch or a pitch? write %s tpi or %s mm", t, t)
	}
	p, err := units.ParseLength(t)
	if err != nil {
		return 0, fmt.Errorf("want threads per inch, as 26 tpi, or a pitch, as 1 mm")
	}
	if !(p >= 0.1*units.Millimetre && p <= 30*units.Millimetre) || math.IsInf(float64(p), 0) {
		return 0, fmt.Errorf("a pitch of %v: want from 0.1 mm to 30 mm", p)
	}
	return p, nil
}

// String returns the pitch as it was written.
func (p Pitch) String() string { return p.text }
