package main

import (
	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
)

// workOut reads a file and works out the sheet. Nothing is returned in part:
// a reading that cannot be right stops it all.
func workOut(name string, data []byte, t trials) (*sheet.Sheet, error) {
	var j job
	file, err := jobfile.Decode(name, data, &j)
	if err != nil {
		return nil, err
	}
	return sections(file, &j, t)
}

// sections works out the sheet of a job.
func sections(file *jobfile.File, j *job, t trials) (*sheet.Sheet, error) {
	b, err := newBench(file, j)
	if err != nil {
		return nil, err
	}
	b.trials = t
	return b.sheet()
}

// sheet works out every section for which there are readings.
func (b *bench) sheet() (*sheet.Sheet, error) {
	s := &sheet.Sheet{Title: b.title(), Intro: intro, Notes: notes}
	for _, section := range [...]func() (*sheet.Section, error){
		b.crankSection, b.tdcSection, b.rimSection, b.cardSection, b.pointsSection, b.settingSection, b.leverSection, b.portsSection, b.valvesSection, b.compressionSection,
		b.plugSection, b.threadsSection, b.adapterSection, b.bushesSection, b.boreSection, b.springsSection, b.oilSection,
		b.trialsSection,
		func() (*sheet.Section, error) { return b.ownSection(s) },
	} {
		sec, err := section()
		if err != nil {
			return nil, err
		}
		if sec != nil {
			sec.Questions = append(sec.Questions, b.doubts[sec.Key]...)
			s.Sections = append(s.Sections, *sec)
		}
	}
	if len(s.Sections) == 0 {
		return nil, b.file.Errorf("", "nothing to work out: give at least a [rim], a [card] with a [crank], a [dial] or a [stop]; see -template")
	}
	s.Card = b.wallCard(s)
	return s, nil
}

func (b *bench) title() string {
	if b.job.Title == "" {
		return "Worksheet"
	}
	return b.job.Title
}

var intro = []string{
	"± is the half-width that holds the value 95 times in 100, the readings being as good as the file says. Where u stands, it is one standard uncertainty, about half of that. Advance is counted before top dead centre. Forward is the way the engine runs.",
	"Before turning the engine by hand: plug out, fuel off, magneto earthed, belt off; hands and sleeves clear of spokes and chain. These sums do not replace the maker's instructions, local rules or a licensed fitter.",
}

var notes = []string{
	"Every formula here is in the packages of benchsums with its source; what was checked against print is listed in CHECKS.md.",
	"A figure without ± was given without one, or is a rough guide that has none.",
}
