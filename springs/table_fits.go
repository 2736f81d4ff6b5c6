package springs

// Curves through tensile strengths, A/dᵐ, Shigley, Mechanical Engineering Design,
// Table 10-4, 8th to 11th ed. (from memory; the two forms of A agree by conversion
// within 0.2 per cent, and 2211, 1855 and 1783 were also read in worked
// examples). A in MPa with d in millimetres, and in kpsi with d in inches; sizes in
// millimetres.
var powerFits = [...]struct {
	grade    Grade
	from, to float64
	a, m     float64
	aInch    float64
}{
	{MusicWireA228, 0.10, 6.5, 2211, 0.145, 201},
	{OilTemperedA229ClassI, 0.5, 12.7, 1855, 0.187, 147},
	{HardDrawnA227ClassI, 0.7, 12.7, 1783, 0.190, 140},
	{ChromeVanadiumA232, 0.8, 11.1, 2005, 0.168, 169},
	{ChromeSiliconA401, 1.6, 9.5, 1974, 0.108, 202},
	{Stainless302A313, 0.3, 2.5, 1867, 0.146, 169},
	{Stainless302A313, 2.5, 5, 2065, 0.263, 128},
	{Stainless302A313, 5, 10, 2911, 0.478, 90},
	{PhosphorBronzeB159, 0.1, 0.6, 1000, 0, 145},
	{PhosphorBronzeB159, 0.6, 2, 913, 0.028, 121},
	{PhosphorBronzeB159, 2, 7.5, 932, 0.064, 110},
}

// Curves a − b lg d through the lower limits of EN 10270-1 (an informative relation
// of the standard). MPa, d in millimetres. SL from memory and not compared with
// a table; SM within 6 MPa of every lower limit read; SH and DH: slope from memory, the
// constant fitted to the ten lower limits read, 0.20 to 0.45 mm.
var logFits = [...]struct {
	grade    Grade
	from, to float64
	a, b     float64
}{
	{PatentedSL, 1, 10, 1720, 660},
	{PatentedSM, 0.3, 20, 1980, 740},
	{PatentedDH, 0.2, 0.45, 2230, 820},
}
