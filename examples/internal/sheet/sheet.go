package sheet

// A Sheet is one worksheet.
type Sheet struct {
	Title    string
	Intro    []string // paragraphs
	Sections []Section
	Card     *Card    // to hang on the wall; nil if there is nothing for it
	Notes    []string // last words: what the figures mean, what was left out
}

// A Card is the page to hang on the wall: the numbers for one engine, on one
// sheet of paper.
type Card struct {
	Number int // the question, 0 if it has none
	Title  string
	Groups []Group
	Foot   string
}

// A Group is a heading on the card with its lines.
type Group struct {
	Title string
	Lines []Line
}

// A Line is one number of the card, in metric and inch.
type Line struct{ Name, Metric, Inch string }

// A Picture is a drawing, as SVG without an XML heading. Title and Says are
// for those who cannot see it.
type Picture struct {
	Title string
	Says  string // what it shows, in words
	SVG   string
}

// A Section answers one question.
type Section struct {
	Number    int    // the question, 0 if it has none
	Key       string // "tdc": the first word of the keys of its figures
	Title     string
	Answer    []string // paragraphs, the short answer first
	Figures   []Figure
	Tables    []Table
	Pictures  []Picture
	Working   []Step
	Improve   string   // which reading to take better first
	Scribe    []string // what to mark, how far, which way, from which side to come to it
	Questions []string // is this so? never a verdict
	Cautions  []string
}

// A Step is one line of working.
type Step struct {
	What    string // what is worked out, in words
	Formula string // as a book prints it
	Numbers string // the same with numbers put in; may be empty
	Result  string // with unit and plus-or-minus
}

// A Table is a small table, the first row its heading.
type Table struct {
	Title string
	Rows  [][]string
}

// Add appends a step of working.
func (s *Section) Add(what, formula, numbers, result string) {
	s.Working = append(s.Working, Step{what, formula, numbers, result})
}
