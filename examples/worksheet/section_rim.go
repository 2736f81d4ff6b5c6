package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// rimSection answers how much rim goes to a degree, and how long a strip of
// paper has to be to go round it.
func (b *bench) rimSection() (*sheet.Section, error) {
	if b.round == nil {
		return nil, nil
	}
	r := b.job.Rim
	s := &sheet.Section{Number: 2, Key: "rim", Title: "Degrees and the rim"}
	perDegree := scale(*b.girth, 1.0/360)
	diameter := units.Reading[units.Length]{Value: b.round.Diameter(), Std: b.girth.Std * b.round.Diameter() / b.girth.Value, DoF: b.girth.DoF}
	s.Answer = append(s.Answer, fmt.Sprintf("One degree of crank is %s of rim.", sheet.Show(perDegree, sheet.Millimetre)))
	s.Figures = append(s.Figures,
		sheet.Of("rim.girth", "girth of the rim", *b.girth, sheet.Millimetre, sheet.Inch),
		sheet.Of("rim.diameter", "diameter", diameter, sheet.Millimetre, sheet.Inch),
		sheet.Of("rim.per_degree", "rim to one degree", perDegree, sheet.Millimetre, sheet.Inch),
		sheet.Of("rim.ten_degrees", "rim to ten degrees", scale(perDegree, 10), sheet.Millimetre, sheet.Inch),
	)
	s.Add("The girth, by tape: the mean", "C = mean of the readings"+tapeNote(r.Tape), listed(r.Girth, sheet.Millimetre, 1), sheet.Show(*b.girth, sheet.Millimetre))
	if len(r.Girth) == 0 {
		s.Working = nil
		s.Add("The girth from the diameter", "C = π D", "π × "+sheet.Value(diameter, sheet.Millimetre), sheet.Show(*b.girth, sheet.Millimetre))
	}
	s.Add("Rim to one degree", "s = C / 360", sheet.Value(*b.girth, sheet.Millimetre)+" / 360", sheet.Show(perDegree, sheet.Millimetre))
	if err := b.strip(s); err != nil {
		return nil, err
	}
	b.compareDiameters(s, diameter)
	s.Improve = "the girth of the rim: all of the uncertainty comes from it"
	return s, nil
}

func tapeNote(tape units.Length) string {
	if tape == 0 {
		return ""
	}
	return ", less π times the thickness of the tape"
}

// strip adds the length of a paper strip to go once round.
func (b *bench) strip(s *sheet.Section) error {
	paper := b.job.Rim.Paper
	if paper == 0 {
		return nil
	}
	length, err := b.round.TapeLength(units.Turn, paper)
	if err != nil {
		return b.file.Errorf("rim.paper", "%v", err)
	}
	r := units.Reading[units.Length]{Value: length, Std: b.girth.Std, DoF: b.girth.DoF}
	s.Figures = append(s.Figures, sheet.Of("rim.strip", "paper strip, once round", r, sheet.Millimetre, sheet.Inch))
	s.Add("A strip of paper lies with its middle half a thickness off the rim", "s = (R + t/2) × 2π",
		fmt.Sprintf("(%s + %s) × 2π", sheet.Plain(b.round.Radius(), sheet.Millimetre, 2), sheet.Plain(paper/2, sheet.Millimetre, 3)), sheet.Show(r, sheet.Millimetre))
	return nil
}

// compareDiameters holds the diameter by calliper against that of the tape.
func (b *bench) compareDiameters(s *sheet.Section, tape length) {
	r := b.job.Rim
	if len(r.Girth) == 0 || len(r.Diameter) == 0 {
		return
	}
	calliper := b.meanOf("rim", "rim.diameter", r.Diameter, r.DiameterGoodTo)
	s.Figures = append(s.Figures, sheet.Of("rim.diameter_by_calliper", "diameter by calliper", calliper, sheet.Millimetre, sheet.Inch))
	d := difference(calliper, tape)
	verdict := "they agree"
	if abs(d.Value) > 2*d.Std {
		verdict = "they do not agree: measure both again"
	}
	s.Answer = append(s.Answer, fmt.Sprintf("Tape and calliper differ by %s on the diameter, which is %s what they are good to: %s. The tape is used.",
		sheet.Plain(abs(d.Value), sheet.Millimetre, 2), inside(abs(d.Value) <= 2*d.Std), verdict))
}

func abs[Q units.Quantity](q Q) Q {
	if q < 0 {
		return -q
	}
	return q
}

// rimScale is the scale of rim figures, once top dead centre is known.
func (b *bench) rimScale() (ignition.Scale, error) {
	return ignition.NewScale(*b.round, b.tdc.Value, b.job.Rim.Figures)
}
