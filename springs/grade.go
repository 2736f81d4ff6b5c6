package springs

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A Grade is a spring material for which published figures are kept. Material
// returns them.
type Grade int

const (
	// MusicWireA228 is music wire, ASTM A228 (piano wire).
	MusicWireA228 Grade = iota + 1
	// HardDrawnA227ClassI is hard-drawn wire, ASTM A227 Class I.
	HardDrawnA227ClassI
	// HardDrawnA227ClassII is hard-drawn wire, ASTM A227 Class II.
	HardDrawnA227ClassII
	// OilTemperedA229ClassI is oil-tempered wire, ASTM A229 Class I.
	OilTemperedA229ClassI
	// OilTemperedA229ClassII is oil-tempered wire, ASTM A229 Class II.
	OilTemperedA229ClassII
	// OilTemperedA230 is valve spring quality wire, ASTM A230: shares for
	// fatigue only, no strengths.
	OilTemperedA230
	// ChromeVanadiumA232 is chrome-vanadium wire, ASTM A232: no lower limits of
	// strength, a fit only.
	ChromeVanadiumA232
	// ChromeSiliconA401 is chrome-silicon wire, ASTM A401: a fit only.
	ChromeSiliconA401
	// Stainless302A313 is stainless wire 302, ASTM A313: a fit only.
	Stainless302A313
	// Stainless431 is known by a handbook factor only.
	Stainless431
	// Stainless420 is known by a handbook factor only.
	Stainless420
	// PhosphorBronzeB159 is phosphor bronze wire, ASTM B159: a fit only.
	PhosphorBronzeB159
	// PatentedSL is patented cold drawn wire, EN 10270-1 SL: a fit only.
	PatentedSL
	// PatentedSM is patented cold drawn wire, EN 10270-1 SM; DM has the same limits.
	PatentedSM
	// PatentedDH is patented cold drawn wire, EN 10270-1 DH, 0.2 to 0.45 mm; SH has
	// the same limits above 0.28 mm.
	PatentedDH
	// StainlessNS is stainless wire 1.4310, EN 10270-3, normal strength.
	StainlessNS
	// PatentedIS4454Grade1 is patented cold drawn wire, IS 4454, grade 1.
	PatentedIS4454Grade1
	// PatentedIS4454Grade2 is patented cold drawn wire, IS 4454, grade 2.
	PatentedIS4454Grade2
	// PatentedIS4454Grade3 is patented cold drawn wire, IS 4454, grade 3.
	PatentedIS4454Grade3
	// PatentedIS4454Grade4 is patented cold drawn wire, IS 4454, grade 4.
	PatentedIS4454Grade4
	// StripC67S is hardened and tempered strip C67S (1070), with the wide limits
	// of EN 10132-4.
	StripC67S
	// StripC75S is hardened and tempered strip C75S (1074, 1075), with the wide
	// limits of EN 10132-4.
	StripC75S
	// StripC100S is hardened and tempered strip C100S (1095), with the wide
	// limits of EN 10132-4.
	StripC100S
	// StripC67STypical is the same strip as StripC67S with the strength that
	// goes with the hardness it is usually delivered in. It is a guide: where a
	// spring rests on it, have the seller state the hardness.
	StripC67STypical
)

// String names the grade.
func (g Grade) String() string {
	if m := g.Material(); m.row != nil {
		return m.row.name
	}
	return fmt.Sprintf("Grade(%d)", int(g))
}

// Material returns what is kept of the grade. For a Grade that is none of the
// constants it is the zero Material, which every constructor refuses.
func (g Grade) Material() Material {
	for i := range gradeRows {
		if gradeRows[i].grade == g {
			return Material{&gradeRows[i]}
		}
	}
	return Material{}
}

// Grades lists all grades.
func Grades() []Grade {
	out := make([]Grade, len(gradeRows))
	for i, r := range gradeRows {
		out[i] = r.grade
	}
	return out
}

// FindGrade returns the grade of that name, as String writes it. The error is
// units.ErrDomain and lists the names.
func FindGrade(name string) (Grade, error) {
	i := slices.IndexFunc(gradeRows[:], func(r materialRow) bool { return r.name == name })
	if i < 0 {
		names := make([]string, len(gradeRows))
		for j, r := range gradeRows {
			names[j] = r.name
		}
		return 0, fmt.Errorf("spring material %q: want one of %q: %w", name, names, units.ErrDomain)
	}
	return gradeRows[i].grade, nil
}

// gradeRows brings together what the tables keep of each grade. Nothing writes to it.
var gradeRows = [...]materialRow{
	{
		grade: MusicWireA228, name: "music wire A228", family: PatentedDrawn,
		strength: inchList("ASTM A228, as reproduced in a wire maker's data sheet", musicWireA228[:]),
		moduli:   musicWireModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: HardDrawnA227ClassI, name: "hard-drawn A227 class I", family: PatentedDrawn,
		strength: inchList("ASTM A227 Class I, as reproduced in a wire maker's data sheet", hardDrawnA227I[:]),
		moduli:   hardDrawnModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: HardDrawnA227ClassII, name: "hard-drawn A227 class II", family: PatentedDrawn,
		strength: inchList("ASTM A227 Class II, as reproduced in a wire maker's data sheet", hardDrawnA227II[:]),
		moduli:   hardDrawnModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: OilTemperedA229ClassI, name: "oil-tempered A229 class I", family: HardenedTempered,
		strength: inchList("ASTM A229 Class I, as reproduced in a wire maker's data sheet", oilTemperedA229I[:]),
		moduli:   oilTemperedModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: OilTemperedA229ClassII, name: "oil-tempered A229 class II", family: HardenedTempered,
		strength: inchList("ASTM A229 Class II, as reproduced in a wire maker's data sheet", oilTemperedA229II[:]),
		moduli:   oilTemperedModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: OilTemperedA230, name: "valve spring wire A230", family: HardenedTempered, density: steelDensity,
	},
	{
		grade: ChromeVanadiumA232, name: "chrome-vanadium A232", family: HardenedTempered,
		moduli: chromeVanadiumModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: ChromeSiliconA401, name: "chrome-silicon A401", family: HardenedTempered,
		moduli: chromeSiliconModuli[:], moduliSource: tableShigley, density: steelDensity,
	},
	{
		grade: Stainless302A313, name: "stainless 302 A313", family: Austenitic,
		moduli: stainless302Moduli[:], moduliSource: tableShigley,
	},
	{
		grade: Stainless431, name: "stainless 431",
	},
	{
		grade: Stainless420, name: "stainless 420",
	},
	{
		grade: PhosphorBronzeB159, name: "phosphor bronze B159", family: NonFerrous,
		moduli: phosphorBronzeModuli[:], moduliSource: tableShigley,
	},
	{
		grade: PatentedSL, name: "patented EN 10270-1 SL", family: PatentedDrawn,
		moduli: patentedModuli[:], moduliSource: tableKlein, density: steelDensity,
	},
	{
		grade: PatentedSM, name: "patented EN 10270-1 SM", family: PatentedDrawn,
		strength: mmList("EN 10270-1 SM, as reproduced by a spring maker, a wire maker and a stockist", patentedSM[:]),
		moduli:   patentedModuli[:], moduliSource: tableKlein, density: steelDensity,
	},
	{
		grade: PatentedDH, name: "patented EN 10270-1 DH", family: PatentedDrawn,
		strength: mmList("EN 10270-1 DH, as reproduced by a wire maker and a stockist", patentedDH[:]),
		moduli:   patentedModuli[:], moduliSource: tableKlein, density: steelDensity,
	},
	{
		grade: StainlessNS, name: "stainless EN 10270-3 NS", family: Austenitic,
		strength: mmRanges("EN 10270-3, as reproduced in a steel stockist's table", 0, stainlessNS[:]),
		moduli:   stainless302Moduli[:], moduliSource: tableShigley + ", for 302, which is the same kind of steel",
	},
	{
		grade: PatentedIS4454Grade1, name: "patented IS 4454 grade 1", family: PatentedDrawn,
		strength: indian(1),
		moduli:   patentedIS4454Moduli[:], moduliSource: tableBhandari, density: steelDensity,
	},
	{
		grade: PatentedIS4454Grade2, name: "patented IS 4454 grade 2", family: PatentedDrawn,
		strength: indian(2),
		moduli:   patentedIS4454Moduli[:], moduliSource: tableBhandari, density: steelDensity,
	},
	{
		grade: PatentedIS4454Grade3, name: "patented IS 4454 grade 3", family: PatentedDrawn,
		strength: indian(3),
		moduli:   patentedIS4454Moduli[:], moduliSource: tableBhandari, density: steelDensity,
	},
	{
		grade: PatentedIS4454Grade4, name: "patented IS 4454 grade 4", family: PatentedDrawn,
		strength: indian(4),
		moduli:   patentedIS4454Moduli[:], moduliSource: tableBhandari, density: steelDensity,
	},
	{
		grade: StripC67S, name: "strip C67S", family: HardenedTempered,
		strength: strengthSource{kind: strip, strip: "C67S"},
		moduli:   patentedModuli[:], moduliSource: tableKlein + ", for wire", density: steelDensity,
	},
	{
		grade: StripC75S, name: "strip C75S", family: HardenedTempered,
		strength: strengthSource{kind: strip, strip: "C75S"},
		moduli:   patentedModuli[:], moduliSource: tableKlein + ", for wire", density: steelDensity,
	},
	{
		grade: StripC100S, name: "strip C100S", family: HardenedTempered,
		strength: strengthSource{kind: strip, strip: "C100S"},
		moduli:   patentedModuli[:], moduliSource: tableKlein + ", for wire", density: steelDensity,
	},
	{
		grade: StripC67STypical, name: "strip C67S typical", family: HardenedTempered,
		strength: strengthSource{kind: hardness},
		moduli:   patentedModuli[:], moduliSource: tableKlein + ", for wire", density: steelDensity,
	},
}

const (
	tableShigley  = "Shigley, Mechanical Engineering Design, Table 10-5 (from memory)"
	tableKlein    = "EN 10270-1, as reported in Klein, Einführung in die DIN-Normen"
	tableBhandari = "Bhandari, Design of Machine Elements, ch. 10 (E in examples 10.21 and 10.22, G from memory)"
)
