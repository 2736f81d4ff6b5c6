package threads

import "strings"

// A Confidence says how well a size is borne out by print.
type Confidence uint8

// The grades of confidence.
const (
	FromMemory Confidence = iota // not found in print
	OneSource                    // found in one
	TwoSources                   // found in two or more that agree
)

// String returns the confidence in words.
func (c Confidence) String() string {
	switch c {
	case FromMemory:
		return "from memory"
	case OneSource:
		return "one source"
	case TwoSources:
		return "two sources or more"
	}
	return "unknown confidence"
}

// memoryLetter marks a row whose size, or whose place in the list, is from memory.
const memoryLetter = 'm'

// Confidence returns how well the size and pitch are borne out.
func (t Thread) Confidence() Confidence {
	switch {
	case t.FromMemory():
		return FromMemory
	case len(t.from) == 1:
		return OneSource
	}
	return TwoSources
}

// FromMemory reports whether the size was not found in print. So is every
// thread that New makes.
func (t Thread) FromMemory() bool {
	return t.from == "" || strings.IndexByte(t.from, memoryLetter) >= 0
}

// Source returns the standard the thread belongs to and the publications in
// which its size and pitch were found.
func (t Thread) Source() string {
	tab := t.series.row()
	var b strings.Builder
	b.WriteString(tab.standard)
	for i := range len(t.from) {
		if i == 0 {
			b.WriteString(": ")
		} else {
			b.WriteString("; ")
		}
		b.WriteString(tab.keyed(t.from[i]))
	}
	return b.String()
}

func (t *table) keyed(letter byte) string {
	if letter == memoryLetter {
		return "from memory"
	}
	for _, k := range t.keys {
		if k.letter == letter {
			return k.source
		}
	}
	return "unknown source"
}
