package units

import (
	"math"
	"strconv"
)

// rounded writes v and its standard uncertainty u with their units, u in two
// figures at most and v to the same place.
func (k *kind) rounded(v, u float64) (value, std string) {
	s := k.choose(v)
	d := k.differenceKind().choose(u)
	if k.differenceKind() == k {
		d = s
	}
	x, ux := s.number(v), u/d.factor
	places := placesFor(ux)
	return s.join(fixed(x, places)), d.join(fixed(ux, places))
}

// placesFor returns the decimal place to which a figure with uncertainty u is
// written: two figures of u where it begins with 1 or 2, else one. JCGM
// 100:2008, 7.2.6, allows two at most; which second figure to keep is common
// practice, no source.
func placesFor(u float64) int {
	if !(u > 0) || math.IsInf(u, 0) {
		return 0
	}
	two := strconv.FormatFloat(u, 'e', 1, 64) // d.de±dd
	exp, _ := strconv.Atoi(two[4:])
	if two[0] < '3' {
		return 1 - exp
	}
	one := strconv.FormatFloat(u, 'e', 0, 64) // d e±dd: 9.96 carries to 1e+01
	exp1, _ := strconv.Atoi(one[2:])
	if exp1 > exp {
		return 1 - exp1
	}
	return -exp
}

// fixed writes x to the given decimal place, which may be negative: tens,
// hundreds. Trailing noughts stay.
func fixed(x float64, places int) string {
	if places >= 0 {
		return strconv.FormatFloat(x, 'f', places, 64)
	}
	p := math.Pow10(-places)
	return strconv.FormatFloat(math.RoundToEven(x/p)*p, 'f', 0, 64)
}
