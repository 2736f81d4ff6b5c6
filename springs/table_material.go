package springs

// Moduli of spring materials, Shigley, Mechanical Engineering Design, Table 10-5,
// 8th to 11th ed. (from memory; 81.0 for music wire also read in published
// solutions). A row holds for sizes up to its own, in millimetres, 0 for no upper
// end. Moduli in GPa.
type modulusRow struct {
	upTo, e, g float64
}

var (
	musicWireModuli = [...]modulusRow{
		{0.81, 203.4, 82.7},
		{1.60, 200, 81.7},
		{3.18, 196.5, 81.0},
		{0, 193, 80.0},
	}
	hardDrawnModuli = [...]modulusRow{
		{0.81, 198.6, 80.7},
		{1.60, 197.9, 80.0},
		{3.18, 197.2, 79.3},
		{0, 196.5, 78.6},
	}
	oilTemperedModuli    = [...]modulusRow{{0, 196.5, 77.2}}
	chromeVanadiumModuli = [...]modulusRow{{0, 203.4, 77.2}}
	chromeSiliconModuli  = [...]modulusRow{{0, 203.4, 77.2}}
	stainless302Moduli   = [...]modulusRow{{0, 193, 69.0}}
	phosphorBronzeModuli = [...]modulusRow{{0, 103.4, 41.4}}

	// EN 10270-1, as reported in Klein, Einführung in die DIN-Normen. Taken for
	// carbon steel strip too (common practice, no source).
	patentedModuli = [...]modulusRow{{0, 206, 81.5}}

	// Bhandari, Design of Machine Elements, ch. 10: E in examples 10.21 and 10.22,
	// G from memory.
	patentedIS4454Moduli = [...]modulusRow{{0, 207, 81.37}}
)

// Elastic limit of spring wire in per cent of its tensile strength, Shigley,
// Table 10-5 (from memory). 0 where the row has none.
var elasticLimits = [...]struct {
	grade                   Grade
	tensionLow, tensionHigh float64
	torsionLow, torsionHigh float64
}{
	{MusicWireA228, 65, 75, 45, 60},
	{HardDrawnA227ClassI, 60, 70, 45, 55},
	{HardDrawnA227ClassII, 60, 70, 45, 55},
	{OilTemperedA229ClassI, 85, 90, 45, 50},
	{OilTemperedA229ClassII, 85, 90, 45, 50},
	{ChromeVanadiumA232, 88, 93, 0, 0},
	{ChromeSiliconA401, 85, 93, 65, 75},
	{Stainless302A313, 65, 75, 45, 55},
	{PhosphorBronzeB159, 75, 80, 45, 50},
}

// Density of patented wire, EN 10270-1, as reported in Klein; taken for all
// carbon and low alloy steels. g/cm³.
const steelDensity = 7.85

// Tolerance on the diameter of wire, plus and minus, EN 10270-1, as reported in
// Klein, Einführung in die DIN-Normen (read from a text layer). Millimetres.
var wireTolerances = [...]struct {
	from, to, tolerance float64
}{
	{0.05, 0.09, 0.003},
	{0.10, 0.16, 0.004},
	{0.18, 0.25, 0.005},
	{0.28, 0.63, 0.008},
	{0.65, 0.75, 0.010},
	{0.80, 1.00, 0.015},
	{1.05, 1.70, 0.020},
	{1.80, 2.60, 0.025}, // 0,25 in the text layer, 0.025 by sequence
	{2.80, 4.00, 0.030},
	{4.25, 5.30, 0.035},
	{5.60, 7.00, 0.040},
	{7.50, 9.50, 0.045},
	{10.00, 11.00, 0.050},
	{12.00, 14.00, 0.080},
	{15.00, 18.00, 0.090},
	{19.00, 20.00, 0.100}, // 1,00 in the text layer, 0.100 by sequence
}

// Steady load: share of the tensile strength that may be used, per cent.
// Torsion springs: Shigley, sec. 10-12; compression: Table 10-6, before and after
// the set is removed (the low end where it prints a range); extension: Table 10-7,
// the low end of 45 to 50 for the body (all from memory; 78 reproduces Example
// 10-8, and 45, 40 and 75 Example 10-6). Makers' note: a spring maker's note.
var steadyShares = [...]struct {
	family                         Family
	torsion, compression, set      float64
	body, hookTorsion, hookBending float64
	maker                          float64
}{
	{PatentedDrawn, 78, 45, 60, 45, 40, 75, 80},
	{HardenedTempered, 87, 50, 65, 45, 40, 75, 80},
	{Austenitic, 61, 35, 55, 35, 30, 55, 60},
	{NonFerrous, 61, 35, 55, 35, 30, 55, 0},
}

// Torsion springs under load repeated from zero without surging: the greatest
// stress of a cycle, curvature factor included, in per cent of the tensile
// strength. Shigley, Table 10-10, from the Associated Spring handbook (from
// memory; 50 reproduces Example 10-8).
var fatigueShares = [...]struct {
	grades       [2]Grade
	e5, e5Peened float64
	e6, e6Peened float64
}{
	{[2]Grade{MusicWireA228, Stainless302A313}, 53, 62, 50, 60},
	{[2]Grade{OilTemperedA230, ChromeVanadiumA232}, 55, 64, 53, 62},
}

// Endurance of all spring steels below 10 mm in shear, alternating and mean,
// Zimmerli as given in Shigley, sec. 10-9 (from memory). MPa.
const (
	zimmerliAlternating, zimmerliMean             = 241, 379
	zimmerliAlternatingPeened, zimmerliMeanPeened = 398, 534
)
