package threads

import (
	"unicode"
	"unicode/utf8"

	"example.com/benchsums/units"
)

// A query is what a designation asks for.
type query struct {
	size, pitch     float64 // as written; no pitch is 0
	slack           float64 // how far the size may lie off, for decimals that were cut short
	kind, pitchKind sizeKind
	hint            hint
	coarse, fine    bool
	taper, parallel bool
}

// A sizeKind says in what a number is to be understood.
type sizeKind uint8

const (
	bare        sizeKind = iota // whatever the series has
	inches                      // as a pitch: threads per inch
	millimetres                 //
	number                      // a number size
)

// A scanner goes through a designation.
type scanner struct {
	text string
	pos  int
	q    query
	seen int // numbers so far
}

// read reads the whole text into the query.
func (s *scanner) read() error {
	for {
		s.space()
		if s.pos == len(s.text) {
			return s.finish()
		}
		if err := s.item(); err != nil {
			return err
		}
	}
}

func (s *scanner) fail(pos int, msg string) error {
	return &units.ParseError{Kind: "thread", Text: s.text, Pos: pos, Msg: msg, Err: units.ErrSyntax}
}

// space skips spaces and the marks that part a size from a pitch.
func (s *scanner) space() {
	for s.pos < len(s.text) {
		if c := s.text[s.pos]; c == ' ' || c == '-' {
			s.pos++
			continue
		} else if isDigit(c) || isLetter(c) {
			return
		}
		r, n := s.rune()
		switch {
		case r == '-', r == '–', r == '−', r == '×', r == '*', r == ',' && !s.digitAt(s.pos+1), unicode.IsSpace(r):
			s.pos += n
		default:
			return
		}
	}
}

func (s *scanner) rune() (rune, int) {
	if c := s.text[s.pos]; c < utf8.RuneSelf {
		return rune(c), 1
	}
	return utf8.DecodeRuneInString(s.text[s.pos:])
}

func (s *scanner) digitAt(i int) bool { return i < len(s.text) && isDigit(s.text[i]) }

func isDigit(c byte) bool  { return '0' <= c && c <= '9' }
func isLetter(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' }

// item reads one number, word or mark.
func (s *scanner) item() error {
	switch c := s.text[s.pos]; {
	case isDigit(c):
		return s.number()
	case isLetter(c):
		return s.word()
	}
	r, n := s.rune()
	switch {
	case r == '.' && s.digitAt(s.pos+1), vulgar(r) != 0:
		return s.number()
	case r == '#' || r == '№':
		s.pos += n
		return s.mark(s.pos-n, number)
	case r == '"' || r == '″' || r == '”' || r == '“' || r == '\'' && s.doubled('\'') || r == '′' && s.doubled('′'):
		s.pos += n
		if r == '\'' || r == '′' {
			s.pos += n
		}
		return s.unit(s.pos-n, inches)
	case unicode.IsLetter(r):
		return s.word()
	}
	return s.fail(s.pos, "want a size, a pitch and a series, such as 1/4-26 BSF, M8x1.25 or 2 BA")
}

// doubled reports whether the mark here stands twice.
func (s *scanner) doubled(mark rune) bool {
	n := utf8.RuneLen(mark)
	r, _ := utf8.DecodeRuneInString(s.text[s.pos+n:])
	return r == mark
}

// mark notes that the size to come, or the one just read, is of the kind.
func (s *scanner) mark(pos int, k sizeKind) error {
	if s.q.kind != bare && s.q.kind != k {
		return s.fail(pos, "the size is given in two ways")
	}
	s.q.kind = k
	return nil
}

// unit notes the unit of the number just read.
func (s *scanner) unit(pos int, k sizeKind) error {
	switch {
	case s.seen == 0:
		return s.fail(pos, "want a size before its unit")
	case s.seen == 1:
		return s.mark(pos, k)
	case k == inches:
		return s.fail(pos, "want the pitch in threads per inch, or in mm")
	}
	s.q.pitchKind = k
	return nil
}

// number reads the size, or after that the pitch.
func (s *scanner) number() error {
	start := s.pos
	v, places, fraction, err := s.value()
	if err != nil {
		return err
	}
	switch s.seen++; s.seen {
	case 1:
		s.q.size = v
		s.q.slack = slack(v, places)
		if fraction {
			return s.mark(start, inches)
		}
	case 2:
		if s.q.pitch != 0 {
			return s.fail(start, "the pitch is given twice")
		}
		if !(v > 0) {
			return s.fail(start, "want a pitch of more than 0")
		}
		s.q.pitch = v
	default:
		return s.fail(start, "want no more than a size and a pitch; a tolerance class goes to BoltLimits or NutLimits")
	}
	return nil
}

// slack allows for a fraction of an inch written in three or four decimals, with
// the rest rounded or cut off: 0.312 for 5/16. Otherwise the size must be exact.
func slack(v float64, places int) float64 {
	switch places {
	case 3:
		return 0.0006
	case 4:
		return 0.00006
	}
	return 1e-9 * v
}

// finish checks what was read as a whole.
func (s *scanner) finish() error {
	q := &s.q
	switch {
	case s.seen == 0:
		return s.fail(len(s.text), "want a size, such as 1/4 BSF, M8x1.25 or 2 BA")
	case (q.coarse || q.fine) && q.hint != hintMetric:
		return s.fail(len(s.text), "coarse and fine go with M; in inches write UNC or UNF, BSW or BSF")
	case q.coarse && q.fine, q.taper && q.parallel:
		return s.fail(len(s.text), "two things that exclude one another")
	case q.taper && q.hint == hintBSP:
		q.hint = hintR
	case q.taper && q.hint != hintR && q.hint != hintNPT, q.parallel && q.hint != hintBSP && q.hint != hintG:
		return s.fail(len(s.text), "taper and parallel go with BSP")
	}
	switch {
	case q.pitch == 0 || q.pitchKind != bare:
	case q.pitch > 6: // no pitch of the tables is coarser in millimetres
		q.pitchKind = inches
	case q.pitch < 3: // nor in threads per inch
		q.pitchKind = millimetres
	}
	switch {
	case q.hint == hintBA && q.kind == bare:
		q.kind = number
	case q.hint == hintNone && q.kind == number:
		q.hint = hintNumber
	}
	return nil
}
