package threads

import (
	"unicode"
	"unicode/utf8"
)

// A seriesSet is a set of series, a bit each.
type seriesSet uint32

// A hint is what the words of a designation say about the series.
type hint uint8

const (
	hintNone hint = iota
	hintNumber
	hintMetric
	hintUN
	hintUNC
	hintUNF
	hintUNEF
	hintUNS
	hintUSS
	hintWhitworth
	hintBSF
	hintBA
	hintBSC
	hintCEI
	hintCycle
	hintBrass
	hintME
	hintBSP
	hintG
	hintR
	hintNPT
	hintSI
	hintOld
	hintLoewenherz
	hintPlug
)

const (
	metricSeries    seriesSet = 1<<ISOCoarse | 1<<ISOFine
	unifiedSeries   seriesSet = 1<<UNC | 1<<UNF | 1<<UNEF | 1<<UNS
	cycleSeries     seriesSet = 1<<BSC | 1<<Cycle20 | 1<<CycleFittings | 1<<CEI
	whitworthSeries seriesSet = 1<<BSW | 1<<BSF | 1<<Brass | 1<<ME | 1<<Cycle20Whitworth
	plugSeries      seriesSet = 1<<SparkPlug | 1<<SparkPlugInch
	oldSeries       seriesSet = 1<<SI | 1<<OldMetric | 1<<Loewenherz
	everySeries               = metricSeries | unifiedSeries | 1<<USS | cycleSeries | whitworthSeries | plugSeries | oldSeries
)

// hints holds where to look for each hint: the series of the first set that
// has the thread.
var hints = [...][3]seriesSet{
	hintNone:       {everySeries},
	hintNumber:     {unifiedSeries | 1<<BA},
	hintMetric:     {1 << ISOCoarse, 1 << ISOFine, 1 << OldMetric},
	hintUN:         {unifiedSeries},
	hintUNC:        {1 << UNC},
	hintUNF:        {1 << UNF, 1 << UNS},
	hintUNEF:       {1 << UNEF},
	hintUNS:        {1 << UNS},
	hintUSS:        {1 << USS},
	hintWhitworth:  {1 << BSW, whitworthSeries},
	hintBSF:        {1 << BSF},
	hintBA:         {1 << BA},
	hintBSC:        {1 << BSC, 1 << CEI, 1<<Cycle20 | 1<<CycleFittings},
	hintCEI:        {1 << CEI, 1 << BSC, 1<<Cycle20 | 1<<CycleFittings},
	hintCycle:      {cycleSeries},
	hintBrass:      {1 << Brass},
	hintME:         {1 << ME},
	hintBSP:        {1 << BSPParallel},
	hintG:          {1 << BSPParallel},
	hintR:          {1 << BSPTaper},
	hintNPT:        {1 << NPT},
	hintSI:         {1 << SI},
	hintOld:        {1 << OldMetric},
	hintLoewenherz: {1 << Loewenherz},
	hintPlug:       {plugSeries, 1 << NPT},
}

// tiers returns the sets of series in which to look, one after the other.
func (q *query) tiers() [3]seriesSet {
	switch {
	case q.coarse && q.hint == hintMetric:
		return [3]seriesSet{1 << ISOCoarse}
	case q.fine && q.hint == hintMetric:
		return [3]seriesSet{1 << ISOFine}
	}
	return hints[q.hint]
}

// asked returns every series that the query looks in.
func (q *query) asked() seriesSet {
	t := q.tiers()
	return t[0] | t[1] | t[2]
}

// word reads a word and takes it for a series, a unit or nothing much.
func (s *scanner) word() error {
	start := s.pos
	var buf [12]byte
	n := s.letters(&buf)
	switch string(buf[:n]) {
	case "X", "BY", "FORM", "THREAD", "PITCH", "SIZE", "ISO", "SPARK", "MODEL", "PIPE", "BOLT", "STUD", "SCREW", "NUT", "TAP", "DIE":
		return nil
	case "IN", "INCH", "INCHES", "INS":
		return s.unit(start, inches)
	case "MM":
		return s.unit(start, millimetres)
	case "TPI":
		return s.tpi(start)
	case "NO", "NR", "NUMBER":
		return s.mark(start, number)
	case "COARSE":
		s.q.coarse = true
		return nil
	case "FINE":
		s.q.fine = true
		return nil
	case "TAPER", "TAPERED":
		s.q.taper = true
		return nil
	case "PARALLEL":
		s.q.parallel = true
		return nil
	case "LH", "RH", "LEFT", "RIGHT", "HAND", "HANDED":
		return s.fail(start, "leave the hand off: the sizes are the same for both")
	}
	h := seriesWord(string(buf[:n]))
	if h == hintNone {
		return s.fail(start, "not a series known here: want M, UNC, UNF, UNEF, BSW, BSF, BA, BSC, CEI, brass, ME, G, R, BSP, NPT, SI, Loewenherz or plug")
	}
	return s.series(start, h)
}

// letters reads a word in capitals into buf without the stops of B.S.F. and
// returns its length, 0 for one that is too long or not plain letters.
func (s *scanner) letters(buf *[12]byte) int {
	n, plain := 0, true
	for s.pos < len(s.text) {
		c := s.text[s.pos]
		switch {
		case isLetter(c):
			c &^= 0x20 // capital
		case c == '.' && !s.digitAt(s.pos+1):
			s.pos++
			continue
		case c < utf8.RuneSelf:
			return whole(n, plain)
		default:
			r, size := s.rune()
			if r == utf8.RuneError || !unicode.IsLetter(r) {
				return whole(n, plain)
			}
			s.pos += size - 1
			plain = plain && (r == 'ö' || r == 'Ö') // of Löwenherz, read as Lowenherz
			c = 'O'
		}
		s.pos++
		if plain = plain && n < len(buf); plain {
			buf[n] = c
			n++
		}
	}
	return whole(n, plain)
}

func whole(n int, plain bool) int {
	if !plain {
		return 0
	}
	return n
}

// seriesWord returns the series that a word in capitals names.
func seriesWord(w string) hint {
	switch w {
	case "M", "METRIC":
		return hintMetric
	case "UN":
		return hintUN
	case "UNC", "NC", "ANC":
		return hintUNC
	case "UNF", "NF", "ANF", "SAE":
		return hintUNF
	case "UNEF", "NEF":
		return hintUNEF
	case "UNS", "NS":
		return hintUNS
	case "USS":
		return hintUSS
	case "W", "WW", "BSW", "WHIT", "WHITWORTH":
		return hintWhitworth
	case "BSF":
		return hintBSF
	case "BA":
		return hintBA
	case "BSC", "BSCY":
		return hintBSC
	case "CEI":
		return hintCEI
	case "CYCLE", "CYC", "PEDAL":
		return hintCycle
	case "BRASS", "BSB":
		return hintBrass
	case "ME", "ENGINEER":
		return hintME
	case "BSP":
		return hintBSP
	case "G", "BSPP", "BSPF", "PF":
		return hintG
	case "R", "BSPT", "BSPTR", "RC", "PT":
		return hintR
	case "NPT":
		return hintNPT
	case "SI":
		return hintSI
	case "OLD":
		return hintOld
	case "LOEW", "LOEWENHERZ", "LOWENHERZ":
		return hintLoewenherz
	case "PLUG":
		return hintPlug
	}
	return hintNone
}

// series notes the series named, which another word may have named before.
func (s *scanner) series(pos int, h hint) error {
	was := s.q.hint
	switch {
	case was == hintNone || was == h,
		was == hintMetric && (h == hintPlug || h == hintSI || h == hintOld || h == hintLoewenherz),
		was == hintPlug && h == hintNPT,
		was == hintBSP && (h == hintG || h == hintR):
		s.q.hint = h
	case h == hintMetric && (was == hintPlug || was == hintSI || was == hintOld || was == hintLoewenherz),
		h == hintPlug && was == hintNPT,
		h == hintBSP && (was == hintG || was == hintR):
	default:
		return s.fail(pos, "a second series, or a tolerance class, which goes to BoltLimits or NutLimits")
	}
	return nil
}

// tpi notes that the number just read counts threads per inch.
func (s *scanner) tpi(pos int) error {
	if s.seen != 2 {
		return s.fail(pos, "want a size and then the threads per inch")
	}
	s.q.pitchKind = inches
	return nil
}
