package springsheet

import (
	"slices"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A Result is the section, and what its sums stand on.
type Result struct {
	Section *sheet.Section
	Drum    *Drummed // nil where there is none
	Lever   *Levered
}

// WorkOut chooses the springs of a job. The key at is where it stands in the file,
// empty for a file that holds nothing else. Errors name file, line and key.
func WorkOut(f *jobfile.File, at string, j *Job) (*Result, error) {
	w := &writer{f: f, s: &sheet.Section{Number: 14, Key: "springs", Title: "Return springs"}}
	r := &Result{Section: w.s}
	if j.Drum == nil && j.Lever == nil {
		return nil, f.Errorf(at, "no spring wanted: give a drum, a lever, or both; see -template")
	}
	var err error
	if j.Drum != nil {
		w.at = under(at, "drum")
		if r.Drum, err = j.Drum.hold(f, w.at); err != nil {
			return nil, err
		}
		w.drum(r.Drum)
	}
	if j.Lever != nil {
		w.at = under(at, "lever")
		if r.Lever, err = j.Lever.hold(f, w.at); err != nil {
			return nil, err
		}
		w.lever(r.Lever)
	}
	w.s.Answer = append(w.short, w.s.Answer...)
	return r, w.err
}

func under(at, key string) string {
	if at == "" {
		return key
	}
	return at + "." + key
}

// A writer fills the section and keeps the first error.
type writer struct {
	s     *sheet.Section
	f     *jobfile.File
	at    string
	short []string // answers, which go before all else
	err   error
}

func (w *writer) failed(err error) {
	if err != nil && w.err == nil {
		w.err = w.f.Errorf(w.at, "%s", words(err))
	}
}

func (w *writer) first(text string)   { w.short = append(w.short, text) }
func (w *writer) answer(text string)  { w.s.Answer = append(w.s.Answer, text) }
func (w *writer) make(text string)    { w.s.Scribe = append(w.s.Scribe, text) }
func (w *writer) ask(text string)     { w.s.Questions = append(w.s.Questions, text) }
func (w *writer) caution(text string) { w.s.Cautions = append(w.s.Cautions, text) }

// cautions adds those of a kind of work that are not there yet.
func (w *writer) cautions(of springs.Work) {
	for _, c := range springs.Cautions(of) {
		if !slices.Contains(w.s.Cautions, c) {
			w.caution(c)
		}
	}
}

// improve keeps the reading that is to be taken better, of each spring.
func (w *writer) improve(text string) {
	if text == "" {
		return
	}
	if w.s.Improve != "" {
		w.s.Improve += "; "
	}
	w.s.Improve += text
}

// trust says how far published practice trusts such sums.
func (w *writer) trust(form springs.Form) {
	a, err := springs.Accuracy(form)
	w.failed(err)
	w.s.Answer = append(w.s.Answer, "How far to trust this: "+a.Text+" ("+a.Source+")")
}

// putDrum adds a figure of a strip in the drum.
func putDrum[Q units.Quantity](w *writer, h *Drummed, s *Stripped, key, name string, f func(trial) Q, in ...sheet.Unit[Q]) units.Result[Q] {
	res, err := vary(h, s, f)
	if err != nil {
		w.failed(err)
		return res
	}
	w.s.Figures = append(w.s.Figures, sheet.Of("springs."+key, name, res.Reading(), in...))
	return res
}

// putCoil adds a figure of a coil on the lever.
func putCoil[Q units.Quantity](w *writer, h *Levered, x *Wired, key, name string, g func(coil) Q, in ...sheet.Unit[Q]) units.Result[Q] {
	res, err := varyCoil(h, x, g)
	if err != nil {
		w.failed(err)
		return res
	}
	w.s.Figures = append(w.s.Figures, sheet.Of("springs."+key, name, res.Reading(), in...))
	return res
}

// The units of springs.
var (
	turns     = sheet.Unit[units.Angle]{Name: "turns", One: units.Turn}
	nmm       = sheet.Unit[units.Torque]{Name: "N mm", One: units.NewtonMillimetre}
	lbfIn     = sheet.Unit[units.Torque]{Name: "lbf in", One: units.PoundForceInch}
	newton    = sheet.Unit[units.Force]{Name: "N", One: units.Newton}
	lbf       = sheet.Unit[units.Force]{Name: "lbf", One: units.PoundForce}
	mpa       = sheet.Unit[units.Pressure]{Name: "MPa", One: units.Megapascal}
	ksi       = sheet.Unit[units.Pressure]{Name: "ksi", One: units.KilopoundPerSquareInch}
	joule     = sheet.Unit[units.Energy]{Name: "J", One: units.Joule}
	footPound = sheet.Unit[units.Energy]{Name: "ft lbf", One: units.FootPound}
	perTurn   = sheet.Unit[units.TorsionalStiffness]{Name: "N mm/turn", One: units.NewtonMillimetrePerTurn}
	perDegree = sheet.Unit[units.TorsionalStiffness]{Name: "N mm/°", One: units.NewtonMillimetrePerDegree}
	inPerTurn = sheet.Unit[units.TorsionalStiffness]{Name: "lbf in/turn", One: units.PoundForceInchPerTurn}
)
