package threads

import (
	"fmt"

	"example.com/benchsums/units"
)

// baLimits returns limits of BS 93:1951, in millimetres:
//
//	               major    effective       minor
//	close, 0-10    0.15p    0.08p + 0.02    0.16p + 0.04   below basic
//	normal, 0-10   0.20p    0.10p + 0.025   0.20p + 0.05   below 0.025 under basic
//	normal, 11-16  0.25p    0.10p + 0.025   0.20p + 0.05   below basic
//	nut                     0.12p + 0.03    0.375p         above basic
//
// Source: Machinery's Handbook, 31st ed., p. 2115; BS 93:2008, Annex B.
func (t Thread) baLimits(p Part, class string) (Limits, error) {
	n, ok := t.baNumber()
	if !ok {
		return Limits{}, fmt.Errorf("%v: BS 93 has limits for 0 to 16 BA: %w", t, units.ErrDomain)
	}
	l := Limits{Thread: t, Part: p, Class: class, Source: "BS 93:1951 (Machinery's Handbook, 31st ed., p. 2115)"}
	pitch := t.pitch
	const mm = units.Millimetre
	switch {
	case p == Nut && class == "normal":
		l.Major = orMore(t.major)
		l.Effective = up(t.effective, 0.12*pitch+0.03*mm)
		l.Minor = up(t.minor, 0.375*pitch)
		return l, nil
	case p == Nut:
		return Limits{}, fmt.Errorf("class %q of %v: BA nuts have one class, normal: %w", class, t, units.ErrDomain)
	case class == "close" && n <= 10:
		l.Major = down(t.major, 0.15*pitch)
		l.Effective = down(t.effective, 0.08*pitch+0.02*mm)
		l.Minor = down(t.minor, 0.16*pitch+0.04*mm)
		return l, nil
	case class == "close":
		return Limits{}, fmt.Errorf("class close of %v: it ends at 10 BA; want normal: %w", t, units.ErrDomain)
	case class != "normal":
		return Limits{}, fmt.Errorf("class %q of %v: a bolt wants close or normal: %w", class, t, units.ErrDomain)
	}
	allowance, crest := 0.025*mm, 0.20*pitch
	if n > 10 {
		allowance, crest = 0, 0.25*pitch
	}
	l.Major = down(t.major-allowance, crest)
	l.Effective = down(t.effective-allowance, 0.10*pitch+0.025*mm)
	l.Minor = down(t.minor-allowance, 0.20*pitch+0.05*mm)
	return l, nil
}

// baNumber returns the number of a BA thread that BS 93 lists.
func (t Thread) baNumber() (int, bool) {
	for i := range ba {
		if t.series == BA && ba[i].designation == t.designation {
			return i, true
		}
	}
	return 0, false
}
