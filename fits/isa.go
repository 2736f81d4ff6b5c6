package fits

// The ISA figures over 1 and up to 3 mm, and of j over 3 and up to 6 mm, that
// differ from ISO. Micrometres.
//
// Spanish reprint of a DIN 7160 table of shafts.
const (
	isaIT5, isaIT6, isaIT7 = 5, 7, 9
	isaF, isaG             = -7, -3   // es
	isaJ6, isaN, isaP      = -1, 6, 9 // ei
	isaJ56To6              = -1       // ei of j5 and j6, over 3 up to 6 mm
)

// isa replaces what the ISA system has otherwise in a tolerance it and a deviation
// fd of ISO, or says why it has no answer.
func isa(c Class, p place, it, fd float64) (isaIT, isaFD float64, note, why string) {
	if why = isaRefuses(c, p); why != "" {
		return 0, 0, "", why
	}
	if p.main > to3 {
		note = noteISA
	}
	return isaGrade(it, c.grade, p), isaDeviation(fd, c, p), note, ""
}

// isaRefuses says why the ISA figures are not known for c.
func isaRefuses(c Class, p place) string {
	switch {
	case p.tiny:
		return "the ISA figures up to 1 mm are not known here"
	case p.main > 8:
		return "the ISA figures over 180 mm are not known here"
	case p.main > to3:
		return ""
	case c.grade < it5 || c.grade > it7:
		return "the ISA figures over 1 and up to 3 mm are known here for grades 5 to 7 only"
	case c.hole && c.letter != lh:
		return "the ISA figures over 1 and up to 3 mm are known here for shafts and H only"
	case c.letter == lj && c.grade == it6:
		return ""
	}
	switch c.letter {
	case lf, lg, lh, ln, lp:
		return ""
	}
	return "the ISA figures over 1 and up to 3 mm are known here for f, g, h, j6, n and p only"
}

// isaGrade replaces the ISO tolerance it where ISA has another.
func isaGrade(it float64, g grade, p place) float64 {
	if p.main == to3 {
		return [...]float64{isaIT5, isaIT6, isaIT7}[g-it5]
	}
	return it
}

// isaDeviation replaces the ISO deviation fd where ISA has another.
func isaDeviation(fd float64, c Class, p place) float64 {
	switch {
	case c.hole || p.main > 1:
		return fd
	case p.main == 1 && c.letter == lj && c.grade <= it6:
		return isaJ56To6
	case p.main == 1:
		return fd
	}
	switch c.letter {
	case lf:
		return isaF
	case lg:
		return isaG
	case lj:
		return isaJ6
	case ln:
		return isaN
	case lp:
		return isaP
	}
	return fd
}
