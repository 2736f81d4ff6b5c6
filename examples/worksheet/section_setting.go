package main

import (
	"fmt"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// settingSection answers whether the gap alone can give the card's timing, and
// if not how far to slip the drive, which way and to what mark.
func (b *bench) settingSection() (*sheet.Section, error) {
	if b.card == nil || len(b.openings) == 0 {
		return nil, nil
	}
	now := b.at(b.cardLever(), 0)
	if now == nil {
		return nil, nil
	}
	s := &sheet.Section{Number: 5, Key: "setting", Title: "Setting the card's timing"}
	if err := b.byGap(s); err != nil {
		return nil, err
	}
	if err := b.bySlip(s, now); err != nil {
		return nil, err
	}
	return s, nil
}

// cardLever is how the lever stands for the card's timing.
func (b *bench) cardLever() string {
	if b.job.Card.Lever == "" {
		return fullAdvance
	}
	return b.job.Card.Lever
}

// byGap says what gap would give the timing.
func (b *bench) byGap(s *sheet.Section) error {
	if b.gap == nil || b.cardLever() != fullAdvance { // the gaps were tried at full advance
		return nil
	}
	answer, err := b.gap.GapFor(b.card.advance)
	if err != nil {
		s.Answer = append(s.Answer, "By the gap alone: "+err.Error()+".")
		return nil
	}
	s.Answer = append(s.Answer, sentenceOf(answer.String()))
	s.Figures = append(s.Figures, sheet.Of("setting.gap", "gap that would give it", answer.Gap.Reading(), sheet.Millimetre, sheet.Thou))
	least, most := ignition.UsualGap()
	s.Figures = append(s.Figures,
		sheet.Of("setting.usual_gap_least", "least gap found in print", units.Exact(least), sheet.Millimetre, sheet.Thou),
		sheet.Of("setting.usual_gap_most", "greatest gap found in print", units.Exact(most), sheet.Millimetre, sheet.Thou))
	return nil
}

// bySlip says how far to move the drive.
func (b *bench) bySlip(s *sheet.Section, now *opening) error {
	drive, err := b.driveOf()
	if err != nil {
		return err
	}
	r, err := ignition.NewRetiming(drive, now.advance.Reading(), b.card.advance)
	if err != nil {
		return b.file.Errorf("card", "%v", err)
	}
	s.Answer = append(s.Answer, fmt.Sprintf("With the gap at %s the spark comes %s; the card wants %s.",
		sheet.Plain(now.set.Gap, sheet.Millimetre, 2), beforeAfter(r.Present), beforeAfter(r.Wanted)))
	s.Figures = append(s.Figures,
		sheet.Of("setting.change", "change wanted, at the crank (+ is earlier)", r.Change, sheet.Degree),
		sheet.Of("setting.shaft", "the same at the driven shaft", r.Shaft, sheet.Degree))
	s.Add("Change of timing, and the same at the driven shaft", "change = wanted − present,  shaft = change / crank turns per shaft turn",
		fmt.Sprintf("%s − %s, over %s", sheet.Value(r.Wanted, sheet.Degree), sheet.Value(r.Present, sheet.Degree), sheet.Plain(drive.Ratio(), sheet.Number, 2)),
		fmt.Sprintf("%s at the crank, %s at the shaft", sheet.Show(r.Change, sheet.Degree), sheet.Show(r.Shaft, sheet.Degree)))
	if !r.Needed() {
		s.Answer = append(s.Answer, "That is no further apart than the readings are good to: they give no ground to move anything.")
		return nil
	}
	s.Answer = append(s.Answer, sentenceOf(r.String()))
	if err := b.joint(s, r, drive); err != nil {
		return err
	}
	return b.setTo(s, r, now)
}

// setTo gives the steps to set it.
func (b *bench) setTo(s *sheet.Section, r ignition.Retiming, now *opening) error {
	if b.cardFigure == nil || b.job.Engine.Turns == 0 {
		return nil
	}

	mark, err := ignition.NewMark(*b.round, b.card.advance.Value, ignition.OnRim, b.job.Engine.Turns)
	if err != nil {
		return b.file.Errorf("card", "%v", err)
	}
	s.Scribe = append(s.Scribe, fmt.Sprintf("All this is for a gap of %s, with the lever at %s.", sheet.Plain(now.set.Gap, sheet.Millimetre, 2), b.cardLever()))
	steps, err := b.steps(r, mark)
	if err != nil {
		return err
	}
	for _, step := range steps {
		s.Scribe = append(s.Scribe, sentenceOf(step))
	}
	s.Cautions = append(s.Cautions, "Magneto earthed, plug out, fuel off while you turn the engine; a chain wheel takes fingers.")
	return nil
}

// steps is what to do in order, as the wheel or the plate is held.
func (b *bench) steps(r ignition.Retiming, mark ignition.Mark) ([]string, error) {
	drive, err := b.driveOf()
	if err != nil {
		return nil, err
	}
	d := b.job.Drive
	switch {
	case d != nil && d.Joint == "teeth":
		w, err := ignition.NewToothed(drive, d.Teeth)
		if err != nil {
			return nil, b.file.Errorf("drive.teeth", "%v", err)
		}
		steps, err := w.Steps(r, mark, b.cardFigure.Value)
		if err != nil {
			return nil, b.file.Errorf("drive.teeth", "%v", err)
		}
		return steps, nil
	case d != nil && d.Joint == "plate":
		p, err := ignition.NewPlate(*d.SlotRadius, drive)
		if err != nil {
			return nil, b.file.Errorf("drive.slot_radius", "%v", err)
		}
		return p.Steps(r, mark, b.cardFigure.Value), nil
	}
	return r.Steps(mark, b.cardFigure.Value), nil
}

// driveOf is the drive of the magneto; crank speed where nothing is said.
func (b *bench) driveOf() (ignition.Drive, error) {
	d := b.job.Drive
	if d == nil || d.Ratio == nil {
		return ignition.CrankSpeed(), nil
	}
	drive, err := ignition.NewDrive(1, float64(*d.Ratio))
	if err != nil {
		return drive, b.file.Errorf("drive.turns_per_crank_turn", "%v", err)
	}
	return drive, nil
}

// joint says what the way the wheel is held allows.
func (b *bench) joint(s *sheet.Section, r ignition.Retiming, drive ignition.Drive) error {
	d := b.job.Drive
	if d == nil {
		return nil
	}
	switch d.Joint {
	case "", "taper":
		if d.Joint == "taper" {
			s.Answer = append(s.Answer, "The wheel sits on a plain taper and can be put anywhere.")
		}
	case "teeth":
		if d.Teeth < 1 {
			return b.file.Errorf("drive.teeth", "%d: want the teeth of the wheel that is slipped", d.Teeth)
		}
		w, err := ignition.NewToothed(drive, d.Teeth)
		if err != nil {
			return b.file.Errorf("drive.teeth", "%v", err)
		}
		below, above, err := w.Reach(r.Change.Value)
		if err != nil {
			return b.file.Errorf("drive.teeth", "%v", err)
		}
		s.Answer = append(s.Answer, fmt.Sprintf("The wheel can only move by whole teeth, %s of crank each. Nearest: %s; or %s.", sheet.Plain(w.Step(), sheet.Degree, 2), below, above))
	case "plate":
		return b.plate(s, r, drive)
	default:
		return b.file.Errorf("drive.joint", "%q: want taper, teeth or plate", d.Joint)
	}
	return nil
}

// plate says how far to move a slotted plate.
func (b *bench) plate(s *sheet.Section, r ignition.Retiming, drive ignition.Drive) error {
	d := b.job.Drive
	if d.SlotRadius == nil {
		return b.file.Errorf("drive", "a plate in slots needs slot_radius, from the middle of the shaft")
	}
	p, err := ignition.NewPlate(*d.SlotRadius, drive)
	if err != nil {
		return b.file.Errorf("drive.slot_radius", "%v", err)
	}
	travel, way := p.Travel(r.Change.Value)
	s.Figures = append(s.Figures, sheet.Of("setting.plate", "travel of the plate in its slot", units.Exact(travel), sheet.Millimetre, sheet.Inch))
	s.Answer = append(s.Answer, fmt.Sprintf("Move the plate %s along its slot, %s.", sheet.Plain(travel, sheet.Millimetre, 2), way))
	if d.SlotTravel != nil && travel > *d.SlotTravel {
		s.Answer = append(s.Answer, fmt.Sprintf("The slot has only %s in all, and less from where the plate stands now: the rest must come from the drive.", sheet.Plain(*d.SlotTravel, sheet.Millimetre, 2)))
	}
	return nil
}
