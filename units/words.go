package units

import "unicode/utf8"

// unitMax is longer than any spelling of a unit, in bytes.
const unitMax = 64

// unitWords splits a unit into its words, folded rune by rune. A slash is a
// word of its own. What joins words (a dot, a hyphen, a times sign) must have
// a word on either side, and brackets may stand once, round words.
func unitWords(s string) ([]string, bool) {
	if len(s) > unitMax || !utf8.ValidString(s) {
		return nil, false
	}
	w := wordSplitter{word: make([]byte, 0, unitMax), open: -1}
	for i, r := range s {
		if !w.take(foldRune(r), s[i:], s[i+utf8.RuneLen(r):]) {
			return nil, false
		}
	}
	w.end()
	return w.words, w.open < 0
}

// A wordSplitter takes a unit rune by rune.
type wordSplitter struct {
	words  []string
	word   []byte // the word that is not ended yet
	joined bool   // the last rune joins words
	open   int    // the word behind an open bracket, else -1
	closed bool   // there was a bracket, and it is closed
}

// end ends the word, if there is one.
func (w *wordSplitter) end() {
	if len(w.word) > 0 {
		w.words = append(w.words, string(w.word))
		w.word = w.word[:0]
	}
}

// take takes in folded rune r, at which the text from begins and behind which the
// text rest follows. It reports false where r has no place.
func (w *wordSplitter) take(r rune, from, rest string) bool {
	switch r {
	case ' ':
		w.end()
		return true
	case '-':
		if len(w.word) > 0 && startsPower(from) {
			w.word = append(w.word, '-')
			return true
		}
		return w.join(rest)
	case '*':
		return w.join(rest)
	}
	w.joined = false
	switch r {
	case '/':
		w.end()
		w.words = append(w.words, "/")
	case '(', ')':
		return w.bracket(r)
	case '.':
		return len(w.word) > 0
	case '^':
		return len(w.word) > 0 && startsPower(rest)
	default:
		w.word = utf8.AppendRune(w.word, r)
	}
	return true
}

// join takes what stands between two words.
func (w *wordSplitter) join(rest string) bool {
	w.end()
	if w.joined || len(w.words) == 0 || trimSpace(rest) == "" {
		return false
	}
	w.joined = true
	return true
}

// bracket takes a bracket: one pair, with a word in it.
func (w *wordSplitter) bracket(r rune) bool {
	w.end()
	if r == '(' {
		ok := w.open < 0 && !w.closed
		w.open = len(w.words)
		return ok
	}
	ok := w.open >= 0 && w.open < len(w.words)
	w.open, w.closed = -1, true
	return ok
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
