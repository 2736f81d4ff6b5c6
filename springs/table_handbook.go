package springs

// Design stresses for torsion springs before any curvature factor, Machinery's
// Handbook, 31st ed., Table 14, pp. 340-341: music wire in music wire sizes, then
// oil-tempered MB wire in Washburn and Moen sizes. Inches, kpsi.
type designStressRow struct {
	size, stress float64
}

var (
	handbookMusicWire = [...]designStressRow{
		{0.055, 180}, // 24
		{0.059, 178}, // 25
		{0.063, 176}, // 26
		{0.067, 174}, // 27
		{0.071, 173}, // 28
		{0.075, 171}, // 29
		{0.080, 169}, // 30
		{0.085, 167}, // 31
		{0.090, 166}, // 32
		{0.095, 164}, // 33
		{0.100, 163}, // 34
		{0.106, 161}, // 35
		{0.112, 160}, // 36
		{0.118, 158}, // 37
		{0.125, 156}, // 1/8
	}
	handbookOilTempered = [...]designStressRow{
		{0.135, 161}, // 10
		{0.162, 154}, // 8
		{0.177, 150}, // 7
		{0.192, 146}, // 6
		{0.207, 143}, // 5
		{0.250, 139}, // 1/4
	}
)

// Factors that multiply the design stress, torque and deflection of that table
// for other materials, Machinery's Handbook, 31st ed., Table 15, p. 343 (its
// order is scrambled in the text layer that was read). Sizes up to upTo inches,
// 0 for no upper end.
var handbookFactors = [...]struct {
	grade  Grade
	upTo   float64
	factor float64
}{
	{HardDrawnA227ClassI, 0, 0.75},
	{ChromeVanadiumA232, 0, 1.10},
	{ChromeSiliconA401, 0, 1.20},
	{Stainless302A313, 0.125, 0.85},
	{Stainless302A313, 0.250, 0.75},
	{Stainless302A313, 0, 0.65},
	{Stainless431, 0, 0.80},
	{Stainless420, 0, 0.85},
}
