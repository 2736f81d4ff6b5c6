package main

import (
	"fmt"
	"slices"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// A pistonJob is piston and rings, as measured.
type pistonJob struct {
	Skirt           lengths      `toml:"skirt"` // across the pin, on the faces that bear
	SkirtGoodTo     units.Length `toml:"skirt_good_to"`
	AboveTopRing    *length      `toml:"above_top_ring"`
	Material        string       `toml:"material"`
	BoreMaterial    string       `toml:"bore_material"`
	GapBelow        *length      `toml:"ring_gap_below"` // ring squared below ring travel
	GapTop          *length      `toml:"ring_gap_top"`   // and at the top of it
	GrooveClearance *length      `toml:"groove_clearance"`

	BoreWarm   *units.Temperature `toml:"bore_warm"`
	PistonWarm *units.Temperature `toml:"piston_warm"`
	RingWarm   *units.Temperature `toml:"ring_warm"`
}

// skirtHabit and landHabit are the clearances by habit, for the material of the
// piston.
func (p *pistonJob) skirtHabit() fits.Custom {
	if p.Material == "aluminium" || p.Material == "cast aluminium" {
		return habit("aluminium piston, skirt, in a cast-iron bore")
	}
	return habit("cast-iron piston, skirt, in a cast-iron bore")
}

// habit finds a clearance by habit by what it is for.
func habit(what string) fits.Custom {
	all := fits.Customs()
	i := slices.IndexFunc(all, func(c fits.Custom) bool { return c.What == what })
	if i < 0 {
		return fits.Custom{}
	}
	return all[i]
}

// pistonPlay adds the clearance of the piston in the bore.
func (b *bench) pistonPlay(s *sheet.Section) error {
	p, w := b.job.Piston, b.worn
	if p == nil {
		return nil
	}
	if len(p.Skirt) > 0 {
		if !(p.SkirtGoodTo > 0) {
			return b.file.Errorf("piston.skirt_good_to", "not given: want how well the skirt was measured, more than 0 mm")
		}
		b.doubtPair("bore", "skirt of the piston", p.Skirt, p.SkirtGoodTo)
		skirt := mean(p.Skirt, p.SkirtGoodTo)
		skirt.DoF = 0
		if !(skirt.Value > 0 && skirt.Value < w.most) {
			return b.file.Errorf("piston.skirt", "a skirt of %v in a bore of %v: want the lesser of the two, more than 0 mm", skirt.Value, w.most)
		}
		tight, slack := difference(units.WithStd(w.least, w.std), skirt), difference(units.WithStd(w.most, w.std), skirt)
		s.Figures = append(s.Figures,
			sheet.Of("bore.skirt_clearance_least", "skirt in the bore, closest place", tight, sheet.Millimetre, sheet.Thou),
			sheet.Of("bore.skirt_clearance_most", "skirt in the bore, slackest place", slack, sheet.Millimetre, sheet.Thou))
		c := p.skirtHabit()
		s.Add("Clearance of the skirt, on the diameter", "c = bore − skirt", fmt.Sprintf("%s − %s ... %s − %s", sheet.Plain(w.least, sheet.Inch, 4), sheet.Value(skirt, sheet.Inch), sheet.Plain(w.most, sheet.Inch, 4), sheet.Value(skirt, sheet.Inch)),
			fmt.Sprintf("%s ... %s", sheet.Show(tight, sheet.Thou), sheet.Show(slack, sheet.Thou)))
		s.Answer = append(s.Answer, fmt.Sprintf("The piston has %s at the closest place and %s at the slackest; %s is usual for a new %s (%s).", sheet.Show(tight, sheet.Thou), sheet.Show(slack, sheet.Thou), thouRange(c.Clearance(w.unworn.Value)), c.What, c.Source))
	}
	if p.AboveTopRing != nil {
		land := difference(w.unworn, *p.AboveTopRing)
		s.Figures = append(s.Figures, sheet.Of("bore.land_clearance", "land above the top ring, in the unworn bore", land, sheet.Millimetre, sheet.Thou))
		c := habit("cast-iron piston, lands above the top ring").Clearance(w.unworn.Value)
		s.Add("Clearance of the land above the top ring", "c = bore − land", fmt.Sprintf("%s − %s", sheet.Value(w.unworn, sheet.Inch), sheet.Value(*p.AboveTopRing, sheet.Inch)),
			fmt.Sprintf("%s; %s by habit for cast iron (common practice, no source)", sheet.Show(land, sheet.Thou), thouRange(c)))
	}
	return nil
}

// hotParts adds what is left of clearance and gap at working heat.
func (b *bench) hotParts(s *sheet.Section) error {
	p, w := b.job.Piston, b.worn
	if p == nil || p.BoreWarm == nil && p.PistonWarm == nil && p.RingWarm == nil {
		return nil
	}
	if p.BoreWarm == nil || p.Material == "" || p.BoreMaterial == "" {
		return b.file.Errorf(b.firstOf("piston.piston_warm", "piston.ring_warm", "piston.bore_warm"), "clearances hot need bore_warm, material and bore_material too")
	}
	bore, err := fits.FindMaterial(p.BoreMaterial, "")
	if err != nil {
		return b.file.Errorf("piston.bore_material", "%v", err)
	}
	piston, err := fits.FindMaterial(p.Material, "")
	if err != nil {
		return b.file.Errorf("piston.material", "%v", err)
	}
	at := func(key string, alpha units.Expansion, t units.Temperature) (fits.HotBore, error) {
		h, err := fits.NewHotBore(fits.Warmth{Bore: w.unworn.Value, BoreExpansion: bore.Expansion, BoreTemperature: *p.BoreWarm, PartExpansion: alpha, PartTemperature: t})
		if err != nil {
			return h, b.file.Errorf("piston."+key, "%v", err)
		}
		return h, nil
	}
	if p.PistonWarm != nil && len(p.Skirt) > 0 {
		h, err := at("piston_warm", piston.Expansion, *p.PistonWarm)
		if err != nil {
			return err
		}
		cold := difference(units.WithStd(w.least, w.std), mean(p.Skirt, p.SkirtGoodTo))
		cold.DoF = 0
		left := units.WithStd(h.HotClearance(cold.Value), cold.Std)
		s.Figures = append(s.Figures, sheet.Of("bore.skirt_clearance_hot", fmt.Sprintf("skirt, closest place, bore at %.0f °C, piston at %.0f °C", p.BoreWarm.Celsius(), p.PistonWarm.Celsius()), left, sheet.Millimetre, sheet.Thou))
		s.Add("Skirt clearance left at working heat, closest place", "c = D (1 + αb ΔTb) − d (1 + αp ΔTp)", "", sheet.Show(left, sheet.Thou))
		if left.Value-2*left.Std < 0 {
			s.Questions = append(s.Questions, "At that heat the piston may have no clearance left at the closest place. Are the temperatures guessed too high, or would it seize?")
		}
	}
	if p.RingWarm == nil || p.GapBelow == nil {
		return nil
	}
	iron, err := fits.FindMaterial("grey cast iron", "")
	if err != nil {
		return b.file.Errorf("piston.ring_warm", "%v", err)
	}
	h, err := at("ring_warm", iron.Expansion, *p.RingWarm)
	if err != nil {
		return err
	}
	left := units.WithStd(h.HotGap(p.GapBelow.Value), p.GapBelow.Std)
	s.Figures = append(s.Figures, sheet.Of("bore.gap_hot", fmt.Sprintf("end gap below ring travel, bore at %.0f °C, ring of iron at %.0f °C", p.BoreWarm.Celsius(), p.RingWarm.Celsius()), left, sheet.Millimetre, sheet.Thou))
	s.Add("End gap left at working heat, where the bore is narrowest", "g = π D (αb ΔTb − αr ΔTr) + g₀", "", sheet.Show(left, sheet.Thou))
	return nil
}
