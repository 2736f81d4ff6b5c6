package units

import (
	"strings"
	"unicode"
)

// foldUnit brings a unit as people spell it to the one spelling the tables
// use: lower case, symbols for words, one space between factors, "in2" for
// in², sq in, in^2 and square inches, "/" for per and for negative powers, the
// country first ("imp pint" for pint (imp)). It reports false for text that
// cannot be a unit.
//
// No two units of one kind that a workshop uses differ only in case. Where
// folding would hide a difference (mPa for MPa) the spelling is among the
// traps of the kind, which are looked through first.
func foldUnit(s string) (string, bool) {
	words, ok := unitWords(s)
	if !ok {
		return "", false
	}
	var f folder
	for i, w := range words {
		if c := country(w); c != "" {
			f.put(c)
			words[i] = ""
			break
		}
	}
	for i, w := range words {
		if w == "1" && i+1 < len(words) && words[i+1] == "/" && i == 0 {
			continue // 1/min
		}
		f.word(w)
	}
	return string(f.text), f.power == "" && len(f.text) > 0
}

// A folder puts a folded unit together.
type folder struct {
	text  []byte
	power string // of the word that follows: sq, cu
}

func (f *folder) put(w string) {
	if n := len(f.text); w != "/" && n > 0 && f.text[n-1] != '/' {
		f.text = append(f.text, ' ')
	}
	f.text = append(f.text, w...)
}

func (f *folder) word(w string) {
	switch w {
	case "", "liquid", "liq": // US liquid pint
	case "/", "per":
		f.put("/")
	case "sq", "square":
		f.power = "2"
	case "cu", "cubic":
		f.power = "3"
	case "force": // pound force
		if n := len(f.text); n > 0 && f.text[n-1] != '/' {
			f.text = append(f.text, 'f')
		}
	default:
		stem, power := cutPower(w)
		if strings.HasPrefix(power, "-") {
			f.put("/")
			power = strings.TrimPrefix(power[1:], "1")
		}
		f.put(symbol(stem) + power + f.power)
		f.power = ""
	}
}

// cutPower splits "in2" and "min-1" before the power.
func cutPower(w string) (stem, power string) {
	stem = strings.TrimRight(w, "0123456789")
	if stem == "" || stem == w {
		return w, ""
	}
	if s, ok := strings.CutSuffix(stem, "-"); ok {
		stem = s
	}
	return stem, w[len(stem):]
}

// foldRune maps one character of a unit to its plain form.
func foldRune(r rune) rune {
	switch r {
	case '·', '⋅', '×', '_':
		return '*'
	case '\u2010', '\u2011', '⁻', '−':
		return '-'
	case '¹':
		return '1'
	case '²', '₂':
		return '2'
	case '³':
		return '3'
	case '⁄', '∕':
		return '/'
	case 'µ': // micro sign; the Greek letter stays
		return 'μ'
	case '′', '’', '‘':
		return '\''
	case '″', '”', '“':
		return '"'
	case 'º', '˚':
		return '°'
	}
	if unicode.IsSpace(r) {
		return ' '
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
