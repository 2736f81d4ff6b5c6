package units

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// scanDecimal returns the end of the decimal number at pos, exponent included.
func scanDecimal(s string, pos int) int {
	i := scanDigits(s, pos)
	n := i - pos
	if i < len(s) && s[i] == '.' {
		j := scanDigits(s, i+1)
		n += j - i - 1
		if n > 0 {
			i = j
		}
	}
	if n == 0 {
		return pos
	}
	if i < len(s) && (s[i] == 'e' || s[i] == 'E') {
		j := i + 1
		if j < len(s) && (s[j] == '+' || s[j] == '-') {
			j++
		}
		if k := scanDigits(s, j); k > j {
			i = k
		}
	}
	return i
}

func scanDigits(s string, pos int) int {
	for pos < len(s) && '0' <= s[pos] && s[pos] <= '9' {
		pos++
	}
	return pos
}

func isDigits(s string) bool { return scanDigits(s, 0) == len(s) }

// hyphenAt returns the length of a hyphen at pos, or 0.
func hyphenAt(s string, pos int) int {
	switch r, size := utf8.DecodeRuneInString(s[pos:]); r {
	case '-', '\u2010', '\u2011', '–':
		return size
	}
	return 0
}

// slashAt returns the length of a fraction bar at pos, or 0.
func slashAt(s string, pos int) int {
	r, size := utf8.DecodeRuneInString(s[pos:])
	if r == '/' || r == '⁄' || r == '∕' {
		return size
	}
	return 0
}

// A vulgarFraction is a fraction that is one character.
type vulgarFraction struct {
	num, den float64
	size     int
}

func vulgar(s string, pos int) vulgarFraction {
	if pos >= len(s) || s[pos] < utf8.RuneSelf {
		return vulgarFraction{}
	}
	r, size := utf8.DecodeRuneInString(s[pos:])
	num, den := vulgarRune(r)
	if den == 0 {
		return vulgarFraction{}
	}
	return vulgarFraction{num, den, size}
}

// vulgarRune returns the fraction that r is; den is 0 if it is none.
func vulgarRune(r rune) (num, den float64) {
	for _, f := range vulgarFractions {
		if f.char == r {
			return f.num, f.den
		}
	}
	return 0, 0
}

// isNumberStart reports whether r begins a number.
func isNumberStart(r rune) bool {
	if r < utf8.RuneSelf {
		return '0' <= r && r <= '9' || r == '+' || r == '-'
	}
	if r == '−' {
		return true
	}
	_, den := vulgarRune(r)
	return den != 0
}

// isSpace takes the spaces that word processors put in as well as the ordinary
// one.
func isSpace(r rune) bool { return unicode.IsSpace(r) }

func skipSpace(s string, pos int) int {
	for pos < len(s) {
		if c := s[pos]; c < utf8.RuneSelf {
			if c != ' ' && (c < '\t' || c > '\r') {
				return pos
			}
			pos++
			continue
		}
		r, size := utf8.DecodeRuneInString(s[pos:])
		if !isSpace(r) {
			return pos
		}
		pos += size
	}
	return pos
}

func trimLeft(s string) string { return strings.TrimLeftFunc(s, isSpace) }

func trimSpace(s string) string {
	s = s[skipSpace(s, 0):]
	for len(s) > 0 {
		r, size := utf8.DecodeLastRuneInString(s)
		if !isSpace(r) {
			break
		}
		s = s[:len(s)-size]
	}
	return s
}
