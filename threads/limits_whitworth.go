package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// whitworthSource says how much the limits of Whitworth threads are worth.
const whitworthSource = "BS 84:1956 formulas, from memory; no printed limits were found to test them on"

// whitworthLimits returns limits of BS 84:1956, in inches, from
//
//	T = 0.002 ∛D + 0.003 √L + 0.005 √p
//
//	bolt      major             effective   minor
//	close     2T/3 + 0.01 √p    2T/3        2T/3 + 0.013 √p
//	medium    T + 0.01 √p       T           T + 0.02 √p
//	free      3T/2 + 0.01 √p    3T/2        3T/2 + 0.02 √p
//
// below basic, or below an allowance of 0.3T for medium and free up to 3/4 in;
// sizes under 1/4 in have the allowance of 1/4 in. A nut has 2T/3 (close), T
// (medium) or 3T/2 (normal) on the effective diameter, and on the minor 0.2p and
// 0.004 in at 26 threads per inch and finer, 0.005 in at 24 and 22, 0.007 in at 20
// and coarser.
//
// Source: BS 84:1956, from memory; that medium and free have the allowance up
// to 3/4 in: thegauge.co.uk.
func (t Thread) whitworthLimits(p Part, class string, engagement units.Length) (Limits, error) {
	share, ok := whitworthClass(p, class)
	if !ok {
		return Limits{}, fmt.Errorf("class %q of %v: a %v wants %s: %w", class, t, p,
			[...]string{"close, medium or free", "close, medium or normal"}[p], units.ErrDomain)
	}
	d, pitch, le := t.major.Inches(), t.pitch.Inches(), engagement.Inches()
	if engagement == 0 {
		le = d
	}
	T := whitworthT(d, le, pitch)
	root := math.Sqrt(pitch)
	const in = units.Inch
	l := Limits{Thread: t, Part: p, Class: class, Source: whitworthSource, FromMemory: true}
	if p == Nut {
		l.Major = orMore(t.major)
		l.Effective = up(t.effective, units.Length(share*T)*in)
		l.Minor = up(t.minor, units.Length(0.2*pitch+whitworthMinor(t.TPI()))*in)
		return l, nil
	}
	minor := 0.02
	if class == "close" {
		minor = 0.013
	}
	allowance, err := t.whitworthAllowance(class, T)
	if err != nil {
		return Limits{}, err
	}
	l.Major = down(t.major-allowance, units.Length(share*T+0.01*root)*in)
	l.Effective = down(t.effective-allowance, units.Length(share*T)*in)
	l.Minor = down(t.minor-allowance, units.Length(share*T+minor*root)*in)
	return l, nil
}

// whitworthClass returns what part of T a class has.
func whitworthClass(p Part, class string) (share float64, ok bool) {
	switch {
	case class == "close":
		return 2. / 3, true
	case class == "medium":
		return 1, true
	case class == "free" && p == Bolt, class == "normal" && p == Nut:
		return 3. / 2, true
	}
	return 0, false
}

// whitworthT returns T, everything in inches.
func whitworthT(d, engagement, pitch float64) float64 {
	return 0.002*math.Cbrt(d) + 0.003*math.Sqrt(engagement) + 0.005*math.Sqrt(pitch)
}

// whitworthMinor returns what the minor diameter of a nut has beside 0.2p, in
// inches.
func whitworthMinor(tpi float64) float64 {
	switch {
	case tpi > 25:
		return 0.004
	case tpi > 21:
		return 0.005
	}
	return 0.007
}

// whitworthAllowance returns the allowance of a bolt.
func (t Thread) whitworthAllowance(class string, T float64) (units.Length, error) {
	d := t.major.Inches()
	switch {
	case class == "close" || d > 0.75+1e-9:
		return 0, nil
	case d > 0.25-1e-9:
		return units.Length(0.3*T) * units.Inch, nil
	case t.series == BSW:
		return units.Length(0.3*whitworthT(0.25, 0.25, 1./20)) * units.Inch, nil
	case t.series == BSF:
		return units.Length(0.3*whitworthT(0.25, 0.25, 1./26)) * units.Inch, nil
	}
	return 0, fmt.Errorf("class %s of %v: under 1/4 in the allowance is that of 1/4 BSW or 1/4 BSF, and this is neither; close has none: %w",
		class, t, units.ErrDomain)
}
