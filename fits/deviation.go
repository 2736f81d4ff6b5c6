package fits

// grade returns the standard tolerance in micrometres, or why there is none.
func (t *tables) grade(g grade, p place) (it float64, why string) {
	it = t.grades[p.main][g]
	switch {
	case p.tiny && g >= it14:
		return 0, "IT14 to IT18 are not used up to 1 mm"
	case it == __:
		return 0, "IT01 and IT0 stop at 500 mm"
	}
	return it, ""
}

// deviation returns the fundamental deviation of c in micrometres, or why there
// is none. JS and js have none and want none.
func (t *tables) deviation(c Class, p place) (fd float64, why string) {
	switch {
	case c.letter == ljs:
		return 0, ""
	case p.tiny && c.letter <= lb:
		return 0, "A, B, a and b are not used up to 1 mm"
	case c.letter == lj:
		return t.j(c, p)
	case c.hole:
		return t.hole(c, p)
	}
	if v := t.shaft(c, p); v != __ {
		return float64(v), ""
	}
	return 0, gap(c.letter, p)
}

// j and J are tabulated, without a formula, and are no mirror of one another.
func (t *tables) j(c Class, p place) (fd float64, why string) {
	v := int16(__)
	switch {
	case p.main > last500:
		return 0, "J and j stop at 500 mm"
	case c.hole && it6 <= c.grade && c.grade <= it8:
		v = t.holes[p.main][8+c.grade-it6]
	case c.hole:
		return 0, "J is tabulated for grades 6 to 8 only"
	case c.grade == it5 || c.grade == it6:
		v = t.shafts[p.main][8]
	case c.grade == it7:
		v = t.shafts[p.main][9]
	case c.grade == it8:
		v = t.shafts[p.main][10]
	}
	if v == __ {
		return 0, "j is tabulated for grades 5 to 7 only, and 8 up to 3 mm"
	}
	return float64(v), ""
}

// shaft looks up a shaft other than j and js.
func (t *tables) shaft(c Class, p place) int16 {
	switch l := c.letter; {
	case l <= lc:
		return t.shaftsFine[p.fine][l-la]
	case l <= lh:
		return t.shafts[p.main][l-lcd]
	case l == lk && it4 <= c.grade && c.grade <= it7:
		return t.shafts[p.main][11]
	case l <= lp:
		return t.shafts[p.main][12+l-lk]
	default:
		return t.shaftsFine[p.fine][3+l-lr]
	}
}

// hole looks up a hole other than J and JS.
func (t *tables) hole(c Class, p place) (fd float64, why string) {
	v, coarse := int16(__), c.grade > it8
	switch l := c.letter; {
	case l <= lc:
		v = t.holesFine[p.fine][l-la]
	case l <= lh:
		v = t.holes[p.main][l-lcd]
	case l == ln && coarse && p.tiny:
		return 0, "N above IT8 is not used up to 1 mm"
	case l <= ln && coarse:
		v = t.holes[p.main][12+2*(l-lk)]
	case l <= ln:
		v = t.holes[p.main][11+2*(l-lk)]
	case l == lp:
		v, coarse = t.holes[p.main][17], c.grade > it7
	default:
		v, coarse = t.holesFine[p.fine][3+l-lr], c.grade > it7
	}
	switch {
	case v == __:
		return 0, gap(c.letter, p)
	case c.letter <= lh || coarse || p.main > last500:
		return float64(v), ""
	}
	return t.withDelta(v, c, p)
}

// withDelta adds delta to the upper deviation of a hole K, M or N up to IT8, or P
// to ZC up to IT7, up to 500 mm.
func (t *tables) withDelta(v int16, c Class, p place) (fd float64, why string) {
	switch {
	case c.letter == lm && c.grade == it6 && p.main == to315:
		return -9, "" // the one exception, where the rule gives -11
	case c.grade >= it3:
		return float64(v) + t.deltas[p.main][c.grade-it3], ""
	case p.main == to3:
		return float64(v), ""
	}
	return 0, "over 3 mm delta is tabulated for grades 3 to 8, so K to ZC have no value in finer ones"
}

// gap says why a cell of the tables of deviations is blank.
func gap(l letter, p place) string {
	large := p.main > last500
	switch {
	case l <= lc:
		return "A, B, C, a, b and c stop at 500 mm"
	case l == lcd || l == lef || l == lfg:
		return "CD, EF, FG, cd, ef and fg stop at 50 mm"
	case l == lk:
		return "K above IT8 has no value over 3 up to 500 mm"
	case l == lt:
		return "T and t start over 24 mm; up to there U and u stand in"
	case large:
		return "V to ZC and v to zc stop at 500 mm"
	case l == lv:
		return "V and v start over 14 mm; up to there X and x stand in"
	}
	return "Y and y start over 18 mm; up to there Z and z stand in"
}

// What a Size says of figures that rest on less than two printed sources or that
// printed sources do not agree on.
const (
	noteMemory  = "from memory of ISO 286-1:2010; the edition of 1988 stops at 10 mm"
	noteFine    = "publishers print IT4 and IT5 over 500 mm up to 4 µm apart"
	noteK       = "K above IT8 over 500 mm is printed by one source only"
	noteNothing = "so coarse for so small a size that the smaller limit is not above 0 mm"
	noteISA     = "taken from ISO 286, with which ISA agrees where it was compared"
)

func noteOf(c Class, p place) string {
	switch {
	case (c.letter == lcd || c.letter == lef || c.letter == lfg) && p.main > to10:
		return noteMemory
	case p.main <= last500:
		return ""
	case c.hole && c.letter == lk && c.grade > it8:
		return noteK
	case c.grade == it4 || c.grade == it5:
		return noteFine
	}
	return ""
}
