package units

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// unitMax is longer than any spelling of a unit, in bytes.
const unitMax = 64

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

// unitWords splits a unit into its words, folded rune by rune. A slash is a
// word of its own. What joins words (a dot, a hyphen, a times sign) must have
// a word on either side.
func unitWords(s string) ([]string, bool) {
	if len(s) > unitMax || !utf8.ValidString(s) {
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
	joined, open, closed := false, -1, false
	for i, raw := range s {
		rest := s[i+utf8.RuneLen(raw):]
		switch r := foldRune(raw); r {
		case ' ':
			end()
			continue
		case '/':
			end()
			words = append(words, "/")
		case '(':
			end()
			if open >= 0 || closed {
				return nil, false
			}
			open = len(words)
		case ')':
			end()
			if open < 0 || open == len(words) {
				return nil, false
			}
			open, closed = -1, true
		case '.':
			if len(word) == 0 {
				return nil, false
			}
		case '^':
			if len(word) == 0 || !startsPower(rest) {
				return nil, false
			}
		case '-', '*':
			if r == '-' && len(word) > 0 && startsPower(s[i:]) {
				word = append(word, '-')
				continue
			}
			end()
			if joined || len(words) == 0 || trimSpace(rest) == "" {
				return nil, false
			}
			joined = true
			continue
		default:
			word = utf8.AppendRune(word, r)
		}
		joined = false
	}
	end()
	return words, open < 0
}

// startsPower reports whether s begins with the digits of a power.
func startsPower(s string) bool {
	if r, size := utf8.DecodeRuneInString(s); foldRune(r) == '-' {
		s = s[size:]
	}
	r, _ := utf8.DecodeRuneInString(s)
	r = foldRune(r)
	return '1' <= r && r <= '3'
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

// symbol returns the symbol for a unit written as a word, and every other word
// as it is.
func symbol(w string) string {
	switch w {
	case "metre", "metres", "meter", "meters":
		return "m"
	case "centimetre", "centimetres", "centimeter", "centimeters":
		return "cm"
	case "millimetre", "millimetres", "millimeter", "millimeters", "mms":
		return "mm"
	case "micrometre", "micrometres", "micrometer", "micrometers", "micron", "microns", "um":
		return "μm"
	case "kilometre", "kilometres", "kilometer", "kilometers":
		return "km"
	case "inch", "inches", "ins":
		return "in"
	case "thous", "thousandth", "thousandths":
		return "thou"
	case "microinch", "microinches", "uin":
		return "μin"
	case "foot", "feet":
		return "ft"
	case "yard", "yards", "yds":
		return "yd"
	case "miles":
		return "mile"
	case "kilogram", "kilograms", "kilogramme", "kilogrammes", "kilo", "kilos", "kgs":
		return "kg"
	case "gram", "grams", "gramme", "grammes", "gm", "gms":
		return "g"
	case "pound", "pounds", "lbs":
		return "lb"
	case "ounce", "ounces", "ozs":
		return "oz"
	case "hundredweight", "hundredweights":
		return "cwt"
	case "tons":
		return "ton"
	case "tonnes":
		return "tonne"
	case "newton", "newtons":
		return "n"
	case "kilonewton", "kilonewtons":
		return "kn"
	case "poundal", "poundals":
		return "pdl"
	case "kp", "kilopond", "kiloponds":
		return "kgf"
	case "pascal", "pascals":
		return "pa"
	case "kilopascal", "kilopascals":
		return "kpa"
	case "megapascal", "megapascals":
		return "mpa"
	case "gigapascal", "gigapascals":
		return "gpa"
	case "bars":
		return "bar"
	case "atmosphere", "atmospheres":
		return "atm"
	case "torrs":
		return "torr"
	case "joule", "joules":
		return "j"
	case "kilocalorie", "kilocalories":
		return "kcal"
	case "watt", "watts":
		return "w"
	case "kilowatt", "kilowatts":
		return "kw"
	case "horsepower":
		return "hp"
	case "litre", "litres", "liter", "liters", "ltr", "ltrs":
		return "l"
	case "millilitre", "millilitres", "milliliter", "milliliters", "mls":
		return "ml"
	case "ccs", "ccm":
		return "cc"
	case "fluid":
		return "fl"
	case "gills":
		return "gill"
	case "pints", "pt", "pts":
		return "pint"
	case "quarts", "qt", "qts":
		return "quart"
	case "gallon", "gallons", "gals":
		return "gal"
	case "radian", "radians", "rads":
		return "rad"
	case "degree", "degrees", "deg", "degs":
		return "°"
	case "arcminute", "arcminutes", "arcmins":
		return "arcmin"
	case "arcsecond", "arcseconds", "arcsecs":
		return "arcsec"
	case "gons", "grad", "grads", "gradian", "gradians":
		return "gon"
	case "revolution", "revolutions", "revs", "turn", "turns":
		return "rev"
	case "second", "seconds", "sec", "secs":
		return "s"
	case "minute", "minutes", "mins":
		return "min"
	case "hour", "hours", "hr", "hrs":
		return "h"
	case "celsius", "centigrade":
		return "c"
	case "fahrenheit":
		return "f"
	case "kelvin", "kelvins":
		return "k"
	case "percent", "pct":
		return "%"
	}
	return w
}
