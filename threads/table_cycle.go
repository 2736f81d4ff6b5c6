package threads

// British Standard Cycle, BSC: BS 811:1950. Inches and threads per inch.
var bsc = []row{
	{"1/8-40 BSC", 1. / 8, 40, "T"},
	{"5/32-32 BSC", 5. / 32, 32, "T"},
	{"3/16-32 BSC", 3. / 16, 32, "T"},
	{"7/32-26 BSC", 7. / 32, 26, "T"},
	{"1/4-26 BSC", 1. / 4, 26, "TP"},
	{"9/32-26 BSC", 9. / 32, 26, "T"},
	{"5/16-26 BSC", 5. / 16, 26, "TP"},
	{"3/8-26 BSC", 3. / 8, 26, "TP"},
	{"7/16-26 BSC", 7. / 16, 26, "TP"},
	{"1/2-26 BSC", 1. / 2, 26, "TP"},
	{"9/16-26 BSC", 9. / 16, 26, "TP"},
	{"5/8-26 BSC", 5. / 8, 26, "TP"},
	{"11/16-26 BSC", 11. / 16, 26, "TP"},
	{"3/4-26 BSC", 3. / 4, 26, "TP"},
	{"1-26 BSC", 1, 26, "P"},
}

// Cycle trade, 20 threads per inch, in the cycle form. Inches.
var cycle20 = []row{
	{"7/16-20 cycle", 7. / 16, 20, "T"},
	{"1/2-20 cycle", 1. / 2, 20, "T"},
	{"9/16-20 cycle", 9. / 16, 20, "T"},
	{"5/8-20 cycle", 5. / 8, 20, "T"},
	{"11/16-20 cycle", 11. / 16, 20, "T"},
	{"3/4-20 cycle", 3. / 4, 20, "T"},
}

// The same sizes in the Whitworth form, of which a note in BS 811:1950 warns.
var cycle20Whitworth = []row{
	{"7/16-20 Whit form", 7. / 16, 20, "E"},
	{"1/2-20 Whit form", 1. / 2, 20, "E"},
	{"9/16-20 Whit form", 9. / 16, 20, "E"},
	{"5/8-20 Whit form", 5. / 8, 20, "E"},
	{"11/16-20 Whit form", 11. / 16, 20, "E"},
	{"3/4-20 Whit form", 3. / 4, 20, "E"},
}

// Cycle fittings: steering columns, bottom brackets, headsets, hub axles. Inches.
var cycleFittings = []row{
	{"13/32-26 cycle", 13. / 32, 26, "D"},
	{"31/32-30 cycle", 31. / 32, 30, "G"},
	{"1-24 cycle", 1, 24, "G"},
	{"1 3/8-24 cycle", 1 + 3./8, 24, "G"},
	{"1 3/8-26 cycle", 1 + 3./8, 26, "G"},
}

// Cycle Engineers' Institute, 1902, as old handbooks reprint it. Inches, decimal
// as in the list. A letter says which source confirms size and pitch; that the
// size stood in the first list is from memory.
var cei = []row{
	{"0.056-62 CEI", 0.056, 62, "m"},
	{"0.064-62 CEI", 0.064, 62, "m"},
	{"0.072-62 CEI", 0.072, 62, "m"},
	{"0.08-62 CEI", 0.08, 62, "m"},
	{"0.092-56 CEI", 0.092, 56, "m"},
	{"0.104-44 CEI", 0.104, 44, "m"},
	{"0.125-40 CEI", 0.125, 40, "T"},
	{"0.154-40 CEI", 0.154, 40, "m"},
	{"0.175-32 CEI", 0.175, 32, "m"},
	{"0.1875-32 CEI", 0.1875, 32, "T"},
	{"0.25-26 CEI", 0.25, 26, "T"},
	{"0.266-26 CEI", 0.266, 26, "m"},
	{"0.281-26 CEI", 0.281, 26, "m"},
	{"0.3125-26 CEI", 0.3125, 26, "T"},
	{"0.375-26 CEI", 0.375, 26, "T"},
	{"0.5625-20 CEI", 0.5625, 20, "G"},
	{"1-26 CEI", 1, 26, "GX"},
	{"1.29-24 CEI", 1.29, 24, "m"},
	{"1.37-24 CEI", 1.37, 24, "V"},
	{"1.4375-24 CEI", 1.4375, 24, "m"},
	{"1.5-24 CEI", 1.5, 24, "m"},
}
