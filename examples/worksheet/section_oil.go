package main

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/oilmix"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// An oilJob is the card's mix, the tank, and the can and bottle to hand. The mix
// is given one way: oil and petrol as a card has it, parts of petrol to one of
// oil, or the share of oil in the mix.
type oilJob struct {
	Oil     *units.Volume `toml:"oil"`    // so much oil
	To      *units.Volume `toml:"petrol"` // to so much petrol
	Ratio   *mixRatio     `toml:"petrol_to_oil"`
	Share   *units.Ratio  `toml:"oil_of_mix"`
	Can     *units.Volume `toml:"can"`
	CanIs   string        `toml:"can_is"` // petrol or mix: what the can is filled to
	Bottle  *units.Volume `toml:"bottle"`
	TankBox []length      `toml:"tank"` // length, width, depth inside
	Left    *units.Volume `toml:"left_in_tank"`
	LeftMix *mixRatio     `toml:"left_petrol_to_oil"`
}

// A mixRatio is parts of petrol to one of oil, written either way round: 16:1,
// 1:16, or 16 alone. There is always more petrol than oil.
type mixRatio float64

// UnmarshalText reads the ratio.
func (r *mixRatio) UnmarshalText(text []byte) error {
	written := strings.TrimSpace(string(text))
	if first, second, ok := strings.Cut(written, ":"); ok && strings.TrimSpace(first) == "1" {
		written = second // 1:16
	}
	v, err := units.ParseRatio(written)
	if err != nil {
		return fmt.Errorf("%q: want petrol to oil, as in 16:1 or 1:16", text)
	}
	*r = mixRatio(v)
	return nil
}

// oilSection answers how much oil goes to the can to hand.
func (b *bench) oilSection() (*sheet.Section, error) {
	o := b.job.Oil
	if o == nil {
		return nil, nil
	}
	m, how, err := b.mix()
	if err != nil {
		return nil, err
	}
	b.oil = &m
	s := &sheet.Section{Number: 15, Key: "oil", Title: "Oil in the petrol"}
	s.Figures = append(s.Figures,
		sheet.Of("oil.petrol_to_oil", "petrol to one part of oil", units.Exact(m.PetrolToOil()), sheet.Number),
		sheet.Rough("oil.of_mix", "oil in the whole mix", float64(m.OilOfMix()), 2, sheet.Percent))
	s.Add("The mix", how[0], how[1], m.String())
	s.Answer = append(s.Answer, fmt.Sprintf("The mix is %s, petrol to oil.", m))
	for _, step := range [...]func(*sheet.Section, oilmix.Mix) error{b.can, b.bottle, b.tank, b.leftOver} {
		if err := step(s, m); err != nil {
			return nil, err
		}
	}
	s.Cautions = append(s.Cautions,
		"Petrol vapour creeps along the floor to the nearest flame: mix out of doors, in a can made for it, away from stoves, motors and switches; earth can and funnel together, wipe up spills, and follow local rules for storing fuel.",
		"The card's mix is for the oil of its day. An oil made for two-strokes has its own ratio printed on it: ask those who run such engines before using less.")
	return s, nil
}

// mix takes the mix in the one way it is given.
func (b *bench) mix() (oilmix.Mix, [2]string, error) {
	o := b.job.Oil
	given := 0
	for _, is := range [...]bool{o.Oil != nil || o.To != nil, o.Ratio != nil, o.Share != nil} {
		if is {
			given++
		}
	}
	if given != 1 {
		return oilmix.Mix{}, [2]string{}, b.file.Errorf("oil", "want the mix one way, %d are given: oil with petrol, petrol_to_oil, or oil_of_mix", given)
	}
	var m oilmix.Mix
	var err error
	var how [2]string
	key := "oil.petrol_to_oil"
	switch {
	case o.Ratio != nil:
		m, err = oilmix.NewMix(float64(*o.Ratio))
		how = [2]string{"petrol / oil", ""}
	case o.Share != nil:
		key = "oil.oil_of_mix"
		m, err = oilmix.OilShare(*o.Share)
		how = [2]string{"petrol / oil = 1/share − 1", "1/" + sheet.Plain(float64(*o.Share), sheet.Number, 4) + " − 1"}
	case o.Oil == nil || o.To == nil:
		return m, how, b.file.Errorf("oil", "so much oil to so much petrol: give both oil and petrol")
	default:
		key = "oil.oil"
		m, err = oilmix.OilTo(*o.Oil, *o.To)
		how = [2]string{"petrol / oil", fmt.Sprintf("%s / %s", sheet.Plain(*o.To, sheet.CC, 0), sheet.Plain(*o.Oil, sheet.CC, 0))}
	}
	if err != nil {
		return m, how, b.file.Errorf(key, "%v", err)
	}
	return m, how, nil
}

// can adds the oil for the can to hand.
func (b *bench) can(s *sheet.Section, m oilmix.Mix) error {
	o := b.job.Oil
	if o.Can == nil {
		return nil
	}
	oil, what := m.OilFor(*o.Can), "petrol"
	switch o.CanIs {
	case "petrol":
	case "mix":
		_, oil = m.Fill(*o.Can)
		what = "mix in all"
	default:
		return b.file.Errorf("oil.can_is", "%q: want \"petrol\" if the can is filled with petrol and the oil added, \"mix\" if it is filled up to its mark with both", o.CanIs)
	}
	s.Figures = append(s.Figures, sheet.Of("oil.for_can", fmt.Sprintf("oil for %s of %s", sheet.Plain(*o.Can, litres, 1), what), units.Exact(oil), sheet.CC, fluidOunces, usFluidOunces))
	s.Answer = append(s.Answer, fmt.Sprintf("To %s of %s goes %s of oil (%s, %s).", sheet.Plain(*o.Can, litres, 1), what, sheet.Plain(oil, sheet.CC, 0), sheet.Plain(oil, fluidOunces, 1), sheet.Plain(oil, usFluidOunces, 1)))
	s.Add("Oil for the can", "oil = petrol / ratio, or mix / (ratio + 1)", "", sheet.Plain(oil, sheet.CC, 1))
	return nil
}

// bottle adds how far the bottle to hand goes.
func (b *bench) bottle(s *sheet.Section, m oilmix.Mix) error {
	o := b.job.Oil
	if o.Bottle == nil {
		return nil
	}
	petrol := m.PetrolFor(*o.Bottle)
	s.Figures = append(s.Figures, sheet.Of("oil.bottle_is_for", "petrol that the bottle is for", units.Exact(petrol), litres, imperialGallons, usGallons))
	text := fmt.Sprintf("The bottle holds %s and is for %s of petrol", sheet.Plain(*o.Bottle, sheet.CC, 0), sheet.Plain(petrol, litres, 1))
	if o.Can != nil {
		oil := m.OilFor(*o.Can)
		if o.CanIs == "mix" {
			_, oil = m.Fill(*o.Can)
		}
		share := float64(oil / *o.Bottle)
		switch {
		case share > 1:
			text += fmt.Sprintf(": it is not enough for the can, %s short", sheet.Plain(oil-*o.Bottle, sheet.CC, 0))
		default:
			text += fmt.Sprintf("; the can takes %s of it", sheet.Plain(share, sheet.Percent, 0))
		}
	}
	s.Answer = append(s.Answer, text+".")
	return nil
}

// tank adds what the tank holds.
func (b *bench) tank(s *sheet.Section, m oilmix.Mix) error {
	o := b.job.Oil
	if len(o.TankBox) == 0 {
		return nil
	}
	if len(o.TankBox) != 3 {
		return b.file.Errorf("oil.tank", "%d sizes: want length, width and depth inside", len(o.TankBox))
	}
	for _, l := range o.TankBox {
		if !(l.Value > 0) {
			return b.file.Errorf("oil.tank", "%v: want sizes of more than 0 mm", l.Value)
		}
	}
	var long, wide, deep units.Length
	volume, err := units.Propagate(func() units.Volume { return long.Times(wide).Times(deep) },
		units.VaryReading("length", &long, o.TankBox[0]), units.VaryReading("width", &wide, o.TankBox[1]), units.VaryReading("depth", &deep, o.TankBox[2]))
	if err != nil {
		return b.file.Errorf("oil.tank", "%v", err)
	}
	oil := scale(volume.Reading(), 1/(1+m.PetrolToOil()))
	s.Figures = append(s.Figures,
		sheet.Of("oil.tank", "tank, full to the brim", volume.Reading(), litres, imperialGallons, usGallons),
		sheet.Of("oil.for_tank", "oil in a full tank", oil, sheet.CC, fluidOunces, usFluidOunces))
	s.Answer = append(s.Answer, fmt.Sprintf("The tank holds %s to the brim; leave room for the fuel to swell.", sheet.Show(volume.Reading(), litres)))
	s.Add("The tank, as a box", "V = length × width × depth", fmt.Sprintf("%s × %s × %s", sheet.Value(o.TankBox[0], sheet.Inch), sheet.Value(o.TankBox[1], sheet.Inch), sheet.Value(o.TankBox[2], sheet.Inch)), sheet.Show(volume.Reading(), litres))
	return nil
}

// leftOver adds what comes of filling up on a mix that is still in the tank.
func (b *bench) leftOver(s *sheet.Section, m oilmix.Mix) error {
	o := b.job.Oil
	if o.Left == nil && o.LeftMix == nil {
		return nil
	}
	if o.Left == nil || o.LeftMix == nil {
		return b.file.Errorf("oil", "a mix left in the tank needs both left_in_tank and left_petrol_to_oil")
	}
	have, err := oilmix.NewMix(float64(*o.LeftMix))
	if err != nil {
		return b.file.Errorf("oil.left_petrol_to_oil", "%v", err)
	}
	if err := b.blend(s, have, m); err != nil {
		return err
	}
	oil, petrol := oilmix.Correct(have, *o.Left, m)
	s.Figures = append(s.Figures, sheet.Of("oil.add_to_left", "oil to add to what is left", units.Exact(oil), sheet.CC, fluidOunces, usFluidOunces))
	if petrol > 0 {
		s.Answer = append(s.Answer, fmt.Sprintf("What is left in the tank has more oil than the card wants: %s of petrol alone brings it to %s.", sheet.Plain(petrol, litres, 2), m))
		return nil
	}
	s.Answer = append(s.Answer, fmt.Sprintf("What is left in the tank has less oil than the card wants: add %s of oil to bring it to %s.", sheet.Plain(oil, sheet.CC, 0), m))
	return nil
}

// blend adds what the tank holds when it is filled up to the brim with the
// card's mix on top of what is left in it.
func (b *bench) blend(s *sheet.Section, have, m oilmix.Mix) error {
	o := b.job.Oil
	if len(o.TankBox) != 3 {
		return nil
	}
	room := o.TankBox[0].Value.Times(o.TankBox[1].Value).Times(o.TankBox[2].Value) - *o.Left
	if !(room >= 0) {
		return b.file.Errorf("oil.left_in_tank", "%v: more than the tank holds", *o.Left)
	}
	both, err := oilmix.Blend(have, *o.Left, m, room)
	if err != nil {
		return b.file.Errorf("oil.left_in_tank", "%v", err)
	}
	s.Figures = append(s.Figures, sheet.Rough("oil.blend", "petrol to one of oil, tank filled up on what is left", both.PetrolToOil(), 1, sheet.Number))
	s.Answer = append(s.Answer, fmt.Sprintf("Filled up to the brim with %s on top of the %s that is left of %s, the tank holds %s.", m, sheet.Plain(*o.Left, litres, 2), have, both))
	s.Add("Two mixes poured together: petrol with petrol and oil with oil", "(V₁ r₁/(r₁+1) + V₂ r₂/(r₂+1)) / (V₁/(r₁+1) + V₂/(r₂+1))",
		fmt.Sprintf("V₁ = %s of %s, V₂ = %s of %s", sheet.Plain(*o.Left, litres, 2), have, sheet.Plain(room, litres, 2), m), both.String())
	return nil
}

var (
	litres          = sheet.Unit[units.Volume]{Name: "l", One: units.Litre}
	fluidOunces     = sheet.Unit[units.Volume]{Name: "imp fl oz", One: units.ImperialFluidOunce}
	usFluidOunces   = sheet.Unit[units.Volume]{Name: "US fl oz", One: units.USFluidOunce}
	imperialGallons = sheet.Unit[units.Volume]{Name: "imp gal", One: units.ImperialGallon}
	usGallons       = sheet.Unit[units.Volume]{Name: "US gal", One: units.USGallon}
)
