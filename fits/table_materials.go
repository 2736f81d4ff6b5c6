package fits

// The sources of the table of materials.
const (
	hibbeler  = "Hibbeler, Mechanics of Materials, appendix C (average properties)"
	beer      = "Beer and Johnston, Mechanics of Materials, App. B (24e6 psi, 33 ksi, 6.7e-6 per °F)"
	callister = "Callister, Materials Science and Engineering, Table B.6"
	gearTech  = "Elements of Metric Gear Technology, Table 18-10"
	courses   = "Multimedia engineering mechanics, appendix of material properties"
	shigley   = "Shigley, Table A-24 (from memory)"
	shigleyDB = "Shigley, Table A-24; the same range in a public materials database"
	bronzeBar = "maker's data sheet, ASTM B103 strip"
	supplier  = "supplier's data"
	bs1490    = "BS 1490:1988, typical data"
	en755     = "EN 755-2, rod to 20 mm, minimum Rp0.2 (from memory)"
	dooley    = "Dooley, Applied Science for Metal Workers (1919), art. 109"
)

// A span is a figure, or the two ends of a range. The zero span is a gap in the
// source.
type span struct{ low, high float64 }

func one(x float64) span { return span{x, x} }

// Properties of materials as each source prints them, a source a row: modulus in
// GPa, Poisson's ratio, expansion in 10⁻⁶/K, yield or 0.2 % proof stress in MPa,
// tensile strength in MPa. Grey cast iron has no yield point.
//
// Of two figures for the same thing both are kept: A36 steel has ν 0.32 in Hibbeler
// and 0.29 elsewhere, 0.30 being usual. Dooley's untempered steel is doubtful: his
// figure for the surface implies 11.4. Sheet zinc runs with the rolling from 23 to
// 32.5.
var materialRows = [...]struct {
	name, condition string
	modulus         span // GPa
	poisson         float64
	expansion       span // 10⁻⁶/K
	yield           span // MPa
	tensile         float64
	source          string
}{
	{"grey cast iron", "ASTM 20", one(67.0), 0.28, one(12), span{}, 179, hibbeler},
	{"grey cast iron", "ASTM 20, range", span{66, 97}, 0, span{}, span{}, 0, shigleyDB},
	{"grey cast iron", "ASTM 25, range", span{79, 102}, 0, span{}, span{}, 0, shigley},
	{"grey cast iron", "ASTM 30, range", span{90, 113}, 0, span{}, span{}, 0, shigley},
	{"grey cast iron", "ASTM 40, range", span{110, 138}, 0, span{}, span{}, 0, shigley},
	{"grey cast iron", "all grades", span{62, 159}, 0, one(10.8), span{}, 0, gearTech},
	{"grey cast iron", "ASTM A48 25", span{}, 0.22, span{}, span{}, 0, courses},
	{"grey cast iron", "G1800, G3000, G4000", span{}, 0, one(11.4), span{}, 0, callister},
	{"grey cast iron", "of 1919", span{}, 0, one(10.01), span{}, 0, dooley},
	{"malleable cast iron", "ASTM A-197", one(172), 0.28, one(12), span{}, 0, hibbeler},
	{"malleable cast iron", "ASTM A-47", one(165), 0.27, one(12.1), one(230), 0, beer},
	{"ductile iron", "60-40-18", span{}, 0, one(11.2), span{}, 0, callister},
	{"ductile iron", "80-55-06", span{}, 0, one(10.6), span{}, 0, callister},
	{"wrought iron", "of 1919", span{}, 0, one(11.66), span{}, 0, dooley},
	{"steel", "A36", one(200), 0.32, one(12), one(250), 0, hibbeler},
	{"steel", "A36, second source", span{}, 0.29, span{}, span{}, 0, courses},
	{"steel", "A36 and 1020", span{}, 0, one(11.7), span{}, 0, callister},
	{"steel", "1040", span{}, 0, one(11.3), span{}, 0, callister},
	{"steel", "4140", span{}, 0, one(12.3), span{}, 0, callister},
	{"steel", "untempered, of 1919", span{}, 0, one(10.91), span{}, 0, dooley},
	{"steel", "tempered, of 1919", span{}, 0, one(12.4), span{}, 0, dooley},
	{"stainless steel", "304", span{}, 0, one(17.2), span{}, 0, callister},
	{"aluminium", "any", span{}, 0.33, span{}, span{}, 0, courses},
	{"aluminium", "6061-T6", one(68.9), 0.35, one(24), one(255), 0, hibbeler},
	{"aluminium", "6061", span{}, 0, one(23.6), span{}, 0, callister},
	{"aluminium", "2014-T6", one(73.1), 0.35, one(23), one(414), 0, hibbeler},
	{"aluminium", "2024", span{}, 0, one(22.9), span{}, 0, callister},
	{"aluminium", "6082-T6", one(70), 0, one(23.4), one(250), 0, en755},
	{"cast aluminium", "356.0", span{}, 0, one(21.5), span{}, 0, callister},
	{"cast aluminium", "LM25-M, sand", one(71), 0, one(22), span{80, 100}, 0, bs1490},
	{"cast aluminium", "LM25-TF, sand", one(71), 0, one(22), span{200, 250}, 0, bs1490},
	{"cast aluminium", "LM4-M, sand", span{}, 0, span{}, span{70, 110}, 0, bs1490},
	{"cast aluminium", "LM4-TF, sand", span{}, 0, span{}, span{200, 300}, 0, bs1490},
	{"cast aluminium", "LM0", span{}, 0, one(24), span{}, 0, bs1490},
	{"manganese bronze", "C86100, cast", one(103), 0.34, one(17), one(345), 0, hibbeler},
	{"red brass", "C83400, cast", one(101), 0.35, one(18), one(70), 0, hibbeler},
	{"phosphor bronze", "C51000, annealed", one(110), 0, one(17.82), one(165), 0, bronzeBar},
	{"phosphor bronze", "C51000, half hard", one(110), 0, one(17.82), one(395), 0, bronzeBar},
	{"phosphor bronze", "C51000, hard", one(110), 0, one(17.82), one(560), 0, bronzeBar},
	{"phosphor bronze", "C51000, spring hard", one(110), 0, one(17.82), one(690), 0, bronzeBar},
	{"phosphor bronze", "C52400", span{}, 0, one(18.4), span{}, 0, supplier},
	{"bearing bronze", "C93200", span{}, 0, one(18.0), span{}, 0, callister},
	{"brass", "C26000, hard", one(110), 0.33, span{}, one(434), 0, courses},
	{"brass", "C26000", span{}, 0, one(19.9), span{}, 0, callister},
	{"brass", "C36000, free-cutting", span{}, 0, one(20.5), span{}, 0, callister},
	{"brass", "plate, of 1919", span{}, 0, one(18.94), span{}, 0, dooley},
	{"copper", "C11000", span{}, 0, one(17.0), span{}, 0, callister},
	{"copper", "of 1919", span{}, 0, one(15.97), span{}, 0, dooley},
	{"zinc", "", span{}, 0, span{23.0, 32.5}, span{}, 0, callister},
}

// Adhesion (friction) of press and shrink fits, as printed: a coefficient a row.
// DIN 7190-1:2017 is for shrink fits, as a secondary source has it (re-read; reprints
// of older editions are remembered with 0.14 for the normal one); DIN 7190:2001 is for
// pressed fits, from memory: verify before relying on it.
var adhesionRows = [...]struct {
	pair, condition string
	low, high       float64
	shrink          bool
	source          string
}{
	{"steel on steel", "oil injected, mineral oil", 0.12, 0.12, true, din2017},
	{"steel on steel", "oil injected, degreased, glycerine", 0.18, 0.18, true, din2017},
	{"steel on steel", "shrunk, hub heated up to 300 °C", 0.15, 0.15, true, din2017},
	{"steel on steel", "shrunk, degreased, hub heated up to 300 °C", 0.20, 0.20, true, din2017},
	{"steel on cast iron", "oil injected, mineral oil", 0.10, 0.10, true, din2017},
	{"steel on cast iron", "oil injected, degreased", 0.16, 0.16, true, din2017},
	{"steel on magnesium or aluminium", "dry", 0.10, 0.15, true, din2017},
	{"steel on copper-zinc", "dry", 0.17, 0.25, true, din2017},
	{"steel on E335 steel", "dry, breaking loose", 0.11, 0.11, false, din2001},
	{"steel on E335 steel", "dry, sliding", 0.08, 0.08, false, din2001},
	{"steel on E335 steel", "oiled, breaking loose", 0.08, 0.08, false, din2001},
	{"steel on E335 steel", "oiled, sliding", 0.07, 0.07, false, din2001},
	{"steel on GE300 cast steel", "dry, breaking loose", 0.11, 0.11, false, din2001},
	{"steel on GE300 cast steel", "dry, sliding", 0.08, 0.08, false, din2001},
	{"steel on GE300 cast steel", "oiled, breaking loose", 0.08, 0.08, false, din2001},
	{"steel on GE300 cast steel", "oiled, sliding", 0.07, 0.07, false, din2001},
	{"steel on S235 mild steel", "dry, breaking loose", 0.10, 0.10, false, din2001},
	{"steel on S235 mild steel", "dry, sliding", 0.09, 0.09, false, din2001},
	{"steel on S235 mild steel", "oiled, breaking loose", 0.07, 0.07, false, din2001},
	{"steel on S235 mild steel", "oiled, sliding", 0.06, 0.06, false, din2001},
	{"steel on EN-GJL-250 grey iron", "dry, breaking loose", 0.12, 0.12, false, din2001},
	{"steel on EN-GJL-250 grey iron", "dry, sliding", 0.11, 0.11, false, din2001},
	{"steel on EN-GJL-250 grey iron", "oiled, breaking loose", 0.06, 0.06, false, din2001},
	{"steel on EN-GJL-250 grey iron", "oiled, sliding", 0.05, 0.05, false, din2001},
	{"steel on EN-GJS-600 ductile iron", "dry, breaking loose", 0.10, 0.10, false, din2001},
	{"steel on EN-GJS-600 ductile iron", "dry, sliding", 0.09, 0.09, false, din2001},
	{"steel on EN-GJS-600 ductile iron", "oiled, breaking loose", 0.06, 0.06, false, din2001},
	{"steel on EN-GJS-600 ductile iron", "oiled, sliding", 0.05, 0.05, false, din2001},
	{"steel on EN AB-44000 cast aluminium", "dry, breaking loose", 0.07, 0.07, false, din2001},
	{"steel on EN AB-44000 cast aluminium", "dry, sliding", 0.06, 0.06, false, din2001},
	{"steel on EN AB-44000 cast aluminium", "oiled, breaking loose", 0.05, 0.05, false, din2001},
	{"steel on EN AB-44000 cast aluminium", "oiled, sliding", 0.04, 0.04, false, din2001},
	{"steel on CB495K lead-tin bronze", "dry, breaking loose", 0.07, 0.07, false, din2001},
	{"steel on CB495K lead-tin bronze", "dry, sliding", 0.06, 0.06, false, din2001},
	{"any press fit", "usual assumption of textbooks", 0.15, 0.20, false, lectures},
}

const (
	din2017  = "DIN 7190-1:2017, 5.3, by a secondary source"
	din2001  = "DIN 7190:2001, table for pressed fits, steel shaft (from memory)"
	lectures = "university lecture notes on shrink fits"
)

// Forced-fit pressure factor F of Machinery's Handbook, for a steel shaft in a hub of
// cast iron of twice its diameter: shaft diameter in inches, F in short tons per cubic
// inch. As reproduced in an engineering page. The rows for 1.75, 2.75, 3.00, 3.25, 3.50,
// 3.75 and 4.50 in are left out: they sit off the smooth curve through the others by a
// unit or two and were not confirmed.
var pressureFactors = [...]struct{ diameter, factor float64 }{
	{1.00, 500},
	{1.25, 395},
	{1.50, 325},
	{2.00, 240},
	{2.25, 212},
	{2.50, 189},
	{4.00, 115},
	{4.25, 108},
	{4.75, 96},
	{5.00, 91},
	{5.25, 86},
	{5.50, 82},
	{5.75, 78},
	{6.00, 75},
	{6.25, 72},
	{6.50, 69},
	{6.75, 66},
	{7.00, 64},
	{7.25, 61},
	{7.50, 59},
	{7.75, 57},
	{8.00, 55},
	{8.50, 52},
	{9.00, 48.8},
	{9.50, 46.0},
	{10.00, 43.5},
	{10.50, 41.3},
}

// Shrinkage allowances for locomotive tyres on wheel centres, in inches. American
// Railway Master Mechanics, in Jones, Turning and Boring.
var tyreAllowances = [...]struct{ centre, allowance float64 }{
	{38, 0.040},
	{44, 0.047},
	{50, 0.053},
	{56, 0.060},
	{62, 0.066},
	{66, 0.070},
}
