package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// unifiedClass holds the factors of a class on the effective diameter
// tolerance of class 2A, and on the tolerance of the major diameter.
func unifiedClass(p Part, class string) (factor, crest float64, ok bool) {
	switch {
	case p == Bolt && class == "1A":
		return 1.5, 0.090, true
	case p == Bolt && class == "2A":
		return 1, 0.060, true
	case p == Bolt && class == "3A":
		return 0.75, 0.060, true
	case p == Nut && class == "1B":
		return 1.95, 0, true
	case p == Nut && class == "2B":
		return 1.3, 0, true
	case p == Nut && class == "3B":
		return 0.975, 0, true
	}
	return 0, 0, false
}

// unifiedLimits returns limits of ASME B1.1 from its formulas, in inches:
//
//	Td2 of 2A   0.0015 ∛D + 0.0015 √Le + 0.015 ∛P²
//	es          0.300 Td2 of 2A for 1A and 2A, none for 3A
//	Td          0.060 ∛P², 0.090 ∛P² for 1A
//
// and the other classes by their factors. The rounding is that of the worked
// calculations of Machinery's Handbook, 31st ed., Tables 3 and 6: constants and
// tolerances to six decimals, the allowance and the limits to four, halves to
// the even figure; the minor diameters of 1B and 2B then to three from size 6
// up. Older printed tables differ by one in the last place here and there.
func (t Thread) unifiedLimits(p Part, class string, engagement units.Length) (Limits, error) {
	factor, crest, ok := unifiedClass(p, class)
	if !ok {
		return Limits{}, fmt.Errorf("class %q of %v: a %v wants %s: %w", class, t, p, [...]string{"1A, 2A or 3A", "1B, 2B or 3B"}[p], units.ErrDomain)
	}
	d, pitch := round(t.major.Inches(), 4), round(t.pitch.Inches(), 8)
	le := engagement.Inches()
	if engagement == 0 {
		le = t.unifiedEngagement()
	}
	td2 := 0.0015*math.Cbrt(d) + 0.0015*math.Sqrt(le) + 0.015*math.Pow(pitch, 2./3)
	tolerance := round(factor*td2, 6)
	h := round(0.64951905*pitch, 6) // major less effective
	l := Limits{Thread: t, Part: p, Class: class, FromMemory: true,
		Source: "ASME B1.1 formulas, from memory, rounded as worked in Machinery's Handbook, 31st ed., Tables 3 and 6"}
	if p == Nut {
		places := 4
		if class != "3B" && d > 0.1379 {
			places = 3
		}
		e := round(d-h, 4)
		d1 := round(d-round(1.08253175*pitch, 6), 4)
		l.Major = orMore(inches4(d))
		l.Effective = inchRange(e, round(e+tolerance, 4))
		l.Minor = inchRange(round(d1, places), round(d1+round(unifiedMinorTolerance(d, pitch, class), 6), places))
		return l, nil
	}
	if class != "3A" {
		d -= round(0.300*td2, 4)
	}
	e := round(d-h, 4)
	l.Major = inchRange(round(d-round(crest*math.Pow(pitch, 2./3), 6), 4), d)
	l.Effective = inchRange(round(e-tolerance, 4), e)
	l.Minor = orLess(inches4(d - round(1.19078493*pitch, 6)))
	return l, nil
}

// unifiedEngagement returns the normal length of engagement in inches: the
// diameter for UNC and UNF, nine pitches for the rest.
func (t Thread) unifiedEngagement() float64 {
	if t.series == UNC || t.series == UNF {
		return t.major.Inches()
	}
	return 9 * t.pitch.Inches()
}

// unifiedMinorTolerance returns the tolerance of the minor diameter of a nut,
// in inches.
func unifiedMinorTolerance(d, p float64, class string) float64 {
	small := min(0.05*math.Pow(p, 2./3)+0.03*p/d-0.002, 0.394*p)
	switch {
	case class == "3B" && p < 1/12.5: // 13 threads per inch and finer
		return max(small, 0.23*p-1.5*p*p)
	case class == "3B":
		return max(small, 0.120*p)
	case d < 0.25-1e-9:
		return max(small, 0.25*p-0.40*p*p)
	case p > 0.25+1e-9: // coarser than 4 threads per inch
		return 0.15 * p
	}
	return 0.25*p - 0.40*p*p
}

// round rounds to so many decimals, halves to the even figure.
func round(x float64, places int) float64 {
	scale := math.Pow10(places)
	x *= scale
	if f := math.Floor(x); math.Abs(x-f-0.5) < 1e-6 {
		return (f + math.Mod(f, 2)) / scale
	}
	return math.Round(x) / scale
}

func inches4(x float64) units.Length { return units.Length(round(x, 4)) * units.Inch }

func inchRange(from, to float64) Range {
	return Range{units.Length(from) * units.Inch, units.Length(to) * units.Inch}
}
