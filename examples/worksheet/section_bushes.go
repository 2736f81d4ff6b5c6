package main

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// A bushesJob is the bushes that were measured.
type bushesJob struct {
	NewPartGoodTo units.Length       `toml:"new_part_good_to"`
	Warm          *units.Temperature `toml:"warm"`
	List          []bushJob          `toml:"bush"`
}

// A bushJob is one bush: where it sits, what it was, and what runs in it.
type bushJob struct {
	Name            string        `toml:"name"`
	Runs            string        `toml:"runs"` // gudgeon pin, splash or well oiled
	Journal         *length       `toml:"journal"`
	OldBore         lengths       `toml:"old_bore"` // one way and the other
	OldBoreGoodTo   units.Length  `toml:"old_bore_good_to"`
	Hole            lengths       `toml:"hole"` // with the bush out
	HoleGoodTo      units.Length  `toml:"hole_good_to"`
	HousingOutside  *length       `toml:"housing_outside"`
	Length          *length       `toml:"length"`
	HousingMaterial string        `toml:"housing_material"`
	BushMaterial    string        `toml:"bush_material"`
	LeastPress      *units.Length `toml:"interference_least"`
	MostPress       *units.Length `toml:"interference_most"`
	LeastPlay       *units.Length `toml:"clearance_least"`
	MostPlay        *units.Length `toml:"clearance_most"`
}

// A bush is one as far as it has been worked out.
type bush struct {
	*bushJob
	b   *bench
	s   *sheet.Section
	at  string // key in the file: bushes.bush.0
	key string // of its figures: bushes.small_end

	play   fits.Clearance // wanted
	custom string         // what the play rests on
	now    length         // clearance it has, the slackest way
	hole   length         // mean of the hole it goes in
	part   fits.Part
	press  fits.Clearance // wanted, below 0
	out    length         // outside to turn, the size to aim at
	bored  units.Length   // before pressing
	shuts  length         // what the bore closes in by
	ream   fits.Clearance // least and greatest size, as lengths
	beyond []string       // what would yield at the size to aim at
	gives  bool           // whether the bush itself would
	heated bool           // whether the housing is to be warmed

	elastic units.Length // largest outside at which nothing yields, 0 where it is not known
}

// bushesSection answers what to turn bushes to, how far they close in and what
// to ream to.
func (b *bench) bushesSection() (*sheet.Section, error) {
	j := b.job.Bushes
	if j == nil {
		return nil, nil
	}
	if len(j.List) == 0 {
		return nil, b.file.Errorf("bushes", "no bush: give a [[bushes.bush]] for each")
	}
	s := &sheet.Section{Number: 12, Key: "bushes", Title: "Bushes: what to turn, how far they close, what to ream"}
	rows := [][]string{{"bush", "outside", "yields at", "bored", "closes in", "ream to"}}
	b.bushes = nil
	heated := false
	for i := range j.List {
		u, err := b.workBush(s, i)
		if err != nil {
			return nil, err
		}
		b.bushes = append(b.bushes, u)
		if u.out.Value > 0 {
			rows = append(rows, u.row())
		}
		heated = heated || u.heated
	}
	if len(rows) > 1 {
		s.Tables = append(s.Tables, sheet.Table{Title: "At a glance", Rows: rows})
		s.Cautions = append(s.Cautions, fits.PressCautions()...)
	}
	if heated {
		s.Cautions = append(s.Cautions, fits.HeatCautions()...)
	}
	return s, nil
}

// workBush works out one bush.
func (b *bench) workBush(s *sheet.Section, i int) (*bush, error) {
	u := &bush{bushJob: &b.job.Bushes.List[i], b: b, s: s, at: fmt.Sprintf("bushes.bush.%d", i)}
	if err := u.name(); err != nil {
		return nil, err
	}
	for _, step := range [...]func() error{u.wantPlay, u.playNow, u.turn, u.reamTo, u.pressIn, u.warmed} {
		if err := step(); err != nil {
			return nil, err
		}
	}
	u.say()
	return u, nil
}

// name checks the name and makes the key of the figures of it.
func (u *bush) name() error {
	slug := strings.ReplaceAll(strings.TrimSpace(u.Name), " ", "_")
	for _, r := range slug {
		if r != '_' && (r < 'a' || r > 'z') && (r < '0' || r > '9') {
			slug = ""
			break
		}
	}
	if slug == "" {
		return u.b.file.Errorf(u.at+".name", "%q: want a name in small letters, such as \"small end\" or \"main\"", u.Name)
	}
	u.key = "bushes." + slug
	for _, other := range u.b.bushes {
		if other.key == u.key {
			return u.b.file.Errorf(u.at+".name", "%q: two bushes of one name", u.Name)
		}
	}
	return nil
}

func (u *bush) figure(what, name string, r length) {
	u.s.Figures = append(u.s.Figures, sheet.Of(u.key+"_"+what, u.Name+": "+name, r, sheet.Millimetre, sheet.Inch))
}

func (u *bush) fail(key, format string, args ...any) error {
	return u.b.file.Errorf(u.at+"."+key, format, args...)
}

// row is the bush in the table.
func (u *bush) row() []string {
	inches := func(l units.Length) string { return sheet.Plain(l, sheet.Inch, 4) }
	closes, elastic := "not known", "not known"
	if u.elastic > 0 {
		elastic = inches(u.elastic)
	}
	if u.shuts.Value > 0 {
		closes = sheet.Value(u.shuts, sheet.Thou)
	}
	return []string{u.Name, inches(u.out.Value), elastic, inches(u.bored), closes, strings.TrimSuffix(inches(u.ream.Min), "\u00a0in") + " to " + inches(u.ream.Max)}
}
