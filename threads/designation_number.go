package threads

// value reads a number: 8, 1.25, .25, 1/4, 1 1/4, 1-1/4, 1.1/4, ¼, 1¼.
func (s *scanner) value() (v float64, places int, fraction bool, err error) {
	if !s.digitAt(s.pos) {
		if r, n := s.rune(); vulgar(r) != 0 {
			s.pos += n
			return vulgar(r), 0, true, nil
		}
	}
	start := s.pos
	whole, _, err := s.digits(start)
	if err != nil {
		return 0, 0, false, err
	}
	if f, ok, err := s.fractionAfter(whole); ok || err != nil {
		return f, 0, true, err
	}
	v, places, err = s.decimals(start, whole)
	return v, places, false, err
}

// decimals reads the point and the decimals behind a whole number, if they are
// here.
func (s *scanner) decimals(start int, whole float64) (v float64, places int, err error) {
	if !s.digitAt(s.pos + 1) {
		return whole, 0, nil
	}
	switch s.text[s.pos] {
	case ',':
		return 0, 0, s.fail(s.pos, "a comma can part decimals or thousands; write a point")
	case '.':
		s.pos++
	default:
		return whole, 0, nil
	}
	decimals, n, err := s.digits(start)
	if err != nil {
		return 0, 0, err
	}
	scale := 1.0
	for range n {
		scale *= 10
	}
	return (whole*scale + decimals) / scale, n, nil
}

// digits reads digits, if there are any, nine at most.
func (s *scanner) digits(start int) (v float64, n int, err error) {
	for ; s.digitAt(s.pos); s.pos++ {
		v = 10*v + float64(s.text[s.pos]-'0')
		n++
	}
	if n > 9 {
		return 0, n, s.fail(start, "too many digits for a size or a pitch")
	}
	return v, n, nil
}

// fractionAfter reads what makes a fraction of the whole number just read: the
// rest of 1/4, or the 1/4 of 1 1/4, 1-1/4, 1.1/4 and 1¼.
func (s *scanner) fractionAfter(whole float64) (v float64, ok bool, err error) {
	if den, ok, err := s.denominator(); ok || err != nil {
		return whole / den, true, err
	}
	at := s.pos
	for at < len(s.text) && s.text[at] == ' ' {
		at++
	}
	if at == s.pos && at < len(s.text) && (s.text[at] == '-' || s.text[at] == '.') {
		at++
	}
	if at == len(s.text) || isLetter(s.text[at]) {
		return 0, false, nil
	}
	mixed := scanner{text: s.text, pos: at}
	if !mixed.digitAt(at) {
		r, n := mixed.rune()
		if vulgar(r) != 0 {
			s.pos = at + n
			return whole + vulgar(r), true, nil
		}
		return 0, false, nil
	}
	num, _, err := mixed.digits(at)
	if err != nil {
		return 0, false, nil // not a fraction; the number is read again and refused
	}
	den, ok, err := mixed.denominator()
	if !ok && err == nil {
		return 0, false, nil
	}
	s.pos = mixed.pos
	if err == nil && !(num < den) {
		err = s.fail(at, "want a fraction of less than 1 beside a whole number")
	}
	return whole + num/den, true, err
}

// denominator reads a stroke and the number under it, if they are here.
func (s *scanner) denominator() (v float64, ok bool, err error) {
	if s.pos == len(s.text) || s.text[s.pos] == ' ' {
		return 0, false, nil
	}
	r, n := s.rune()
	if r != '/' && r != '⁄' && r != '∕' || !s.digitAt(s.pos+n) {
		return 0, false, nil
	}
	start := s.pos
	s.pos += n
	v, _, err = s.digits(start)
	if err == nil && v == 0 {
		err = s.fail(start, "a fraction over 0")
	}
	return v, true, err
}

// vulgar returns the value of a fraction that is one character, 0 for others.
func vulgar(r rune) float64 {
	switch r {
	case '¼':
		return 1. / 4
	case '½':
		return 1. / 2
	case '¾':
		return 3. / 4
	case '⅛':
		return 1. / 8
	case '⅜':
		return 3. / 8
	case '⅝':
		return 5. / 8
	case '⅞':
		return 7. / 8
	}
	return 0
}
