package springs

// Limits of tensile strength and hardness of carbon spring strip, EN 10132-4.
// MPa and Vickers. Hardened and tempered strip, 0.3 to 3 mm thick: buyer and
// mill agree on a narrower band within these. Cold rolled and annealed strip has
// upper limits only.
//
// Sources: C67S +QT and +A from a mill's material sheet (another source prints
// 1200 to 1700 for C67S +QT); C75S from a supplier's note; C100S from memory; +CR
// from a strip supplier's table.
var stripStates = [...]struct {
	steel, number, aisi, condition string
	least, most                    float64
	hvLeast, hvMost                float64
	source                         string
}{
	{"C67S", "1.1231", "1070", "+QT", 1200, 1900, 370, 580, "EN 10132-4, as given in a mill's material sheet"},
	{"C75S", "1.1248", "1075", "+QT", 1200, 1900, 370, 580, "EN 10132-4:2000, as given in a supplier's note"},
	{"C100S", "1.1274", "1095", "+QT", 1200, 2100, 370, 630, "EN 10132-4, Table 4 (from memory)"},
	{"C45E", "", "", "+CR", 0, 1020, 0, 290, "EN 10132, as given in a strip supplier's table"},
	{"C67S", "1.1231", "1070", "+CR", 0, 1140, 0, 315, "EN 10132, as given in a strip supplier's table"},
	{"C75S", "1.1248", "1075", "+CR", 0, 1170, 0, 320, "EN 10132, as given in a strip supplier's table"},
	{"C67S", "1.1231", "1070", "+A", 0, 640, 0, 200, "EN 10132-4, as given in a mill's material sheet"},
	{"C75S", "1.1248", "1075", "+A", 0, 640, 0, 200, "EN 10132-4, as given in a mill's material sheet"},
}

// Hardness in which C67S +QT is usually delivered, by thickness: a mill's
// material sheet and a second stockist's table. Strength from it is 3.2 times the
// Vickers number, rounded to tens as the sheet does (conversion: common
// practice, compare EN ISO 18265). Ranges up to and including the second figure.
// Millimetres, Vickers, MPa.
var stripHardness = [...]struct {
	from, to        float64
	hvLeast, hvMost float64
	least, most     float64
}{
	{0.30, 0.50, 485, 535, 1550, 1710},
	{0.50, 0.75, 465, 515, 1490, 1650},
	{0.75, 1.00, 455, 505, 1460, 1620},
	{1.00, 1.50, 445, 495, 1420, 1580},
	{1.50, 2.00, 425, 475, 1360, 1520},
	{2.00, 3.00, 415, 465, 1330, 1490},
}

// Strength of strip hardened in oil, by the heat it is tempered at: ASTM A684
// strip, heat-treatment table in a stockist's data page. Nominal. Degrees
// Fahrenheit, kpsi, Rockwell C.
var temperedStrip = [...]struct {
	fahrenheit float64
	kpsi, hrc  [3]float64 // AISI 1050, 1074/1075, 1095
}{
	{400, [3]float64{250, 305, 320}, [3]float64{52, 59, 62}},
	{600, [3]float64{210, 255, 270}, [3]float64{45, 53, 55}},
	{700, [3]float64{180, 230, 238}, [3]float64{39, 47, 49}},
	{800, [3]float64{160, 205, 212}, [3]float64{35, 44, 45}},
	{900, [3]float64{139, 182, 189}, [3]float64{31, 40, 41}},
	{1000, [3]float64{124, 162, 176}, [3]float64{27, 36, 38}},
	{1100, [3]float64{112, 140, 155}, [3]float64{22, 32, 34}},
}

// Tolerance on the thickness of strip narrower than 125 mm, plus and minus, EN
// 10140, classes A, B and C, from a strip supplier's table in which only the
// first two bands were legible. Millimetres.
var stripTolerances = [...]struct {
	to      float64
	a, b, c float64
}{
	{0.10, 0.008, 0.006, 0.004},
	{0.15, 0.010, 0.008, 0.005},
}
