package units

import "unicode/utf8"

// unitMax is longer than any spelling of a unit.
const unitMax = 48

// foldUnit brings a unit as people spell it to the one spelling the tables
// use: lower case, one space between words, "in2" for in², sq in and in^2,
// "/" for per, the country first ("imp pint" for pint (imp)). It reports false
// for text that cannot be a unit.
//
// No two units of one kind differ only in case, so that folding is safe.
func foldUnit(s string) (string, bool) {
	words, ok := unitWords(s)
	if !ok {
		return "", false
	}
	folded := make([]byte, 0, unitMax)
	put := func(w string) {
		tight := w == "/" || len(folded) == 0 || folded[len(folded)-1] == '/'
		if !tight {
			folded = append(folded, ' ')
		}
		folded = append(folded, w...)
	}
	for i, w := range words {
		if country(w) != "" {
			put(country(w))
			words[i] = ""
			break
		}
	}
	power := ""
	for _, w := range words {
		switch w {
		case "":
		case "per":
			put("/")
		case "sq", "square":
			power = "2"
		case "cu", "cubic":
			power = "3"
		default:
			put(w + power)
			power = ""
		}
	}
	return string(folded), power == ""
}

// unitWords splits a unit into its words, folded rune by rune. A slash is a
// word of its own.
func unitWords(s string) ([]string, bool) {
	if len(s) > unitMax {
		return nil, false
	}
	var words []string
	word := make([]byte, 0, unitMax)
	end := func() {
		if len(word) > 0 {
			words = append(words, string(word))
			word = word[:0]
		}
	}
	for _, r := range s {
		switch r = foldRune(r); r {
		case ' ':
			end()
		case '/':
			end()
			words = append(words, "/")
		case drop:
		default:
			word = utf8.AppendRune(word, r)
		}
	}
	end()
	return words, true
}

// drop is what foldRune returns for a character without meaning in a unit.
const drop = rune(-1)

// foldRune maps one character of a unit to its plain form.
func foldRune(r rune) rune {
	switch r {
	case ' ', '\t', '\u00a0', '\u2009', '\u202f', '·', '⋅', '×', '*', '-', '\u2011', '_', '(', ')':
		return ' '
	case '^', '.':
		return drop
	case '²':
		return '2'
	case '³':
		return '3'
	case 'µ': // micro sign; the Greek letter stays
		return 'μ'
	case '′', '’', '‘':
		return '\''
	case '″', '”', '“':
		return '"'
	case 'º', '˚':
		return '°'
	}
	if 'A' <= r && r <= 'Z' {
		return r + 'a' - 'A'
	}
	return r
}

// country returns imp or us for the words that say which country's unit is
// meant.
func country(w string) string {
	switch w {
	case "imp", "imperial", "uk", "british", "brit":
		return "imp"
	case "us", "usa", "american":
		return "us"
	}
	return ""
}
