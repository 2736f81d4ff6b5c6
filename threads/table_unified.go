package threads

// Unified coarse, UNC: ASME B1.1. Inches and threads per inch.
var unc = []row{
	{"#1-64 UNC", 0.073, 64, "FHM"},
	{"#2-56 UNC", 0.086, 56, "FHM"},
	{"#3-48 UNC", 0.099, 48, "FHM"},
	{"#4-40 UNC", 0.112, 40, "FHM"},
	{"#5-40 UNC", 0.125, 40, "FHM"},
	{"#6-32 UNC", 0.138, 32, "FHM"},
	{"#8-32 UNC", 0.164, 32, "FHM"},
	{"#10-24 UNC", 0.19, 24, "FHM"},
	{"#12-24 UNC", 0.216, 24, "FHM"},
	{"1/4-20 UNC", 1. / 4, 20, "FHM"},
	{"5/16-18 UNC", 5. / 16, 18, "FHM"},
	{"3/8-16 UNC", 3. / 8, 16, "FHM"},
	{"7/16-14 UNC", 7. / 16, 14, "FHM"},
	{"1/2-13 UNC", 1. / 2, 13, "FHM"},
	{"9/16-12 UNC", 9. / 16, 12, "FHM"},
	{"5/8-11 UNC", 5. / 8, 11, "FHM"},
	{"3/4-10 UNC", 3. / 4, 10, "FHM"},
	{"7/8-9 UNC", 7. / 8, 9, "FHM"},
	{"1-8 UNC", 1, 8, "FHM"},
	{"1 1/8-7 UNC", 1 + 1./8, 7, "FHM"},
	{"1 1/4-7 UNC", 1 + 1./4, 7, "FHM"},
	{"1 3/8-6 UNC", 1 + 3./8, 6, "FHM"},
	{"1 1/2-6 UNC", 1 + 1./2, 6, "FHM"},
	{"1 3/4-5 UNC", 1 + 3./4, 5, "FHM"},
	{"2-4.5 UNC", 2, 4.5, "FHM"},
}

// Unified fine, UNF: ASME B1.1. Inches and threads per inch.
var unf = []row{
	{"#0-80 UNF", 0.06, 80, "OHM"},
	{"#1-72 UNF", 0.073, 72, "OHM"},
	{"#2-64 UNF", 0.086, 64, "OHM"},
	{"#3-56 UNF", 0.099, 56, "OHM"},
	{"#4-48 UNF", 0.112, 48, "OHM"},
	{"#5-44 UNF", 0.125, 44, "OHM"},
	{"#6-40 UNF", 0.138, 40, "OHM"},
	{"#8-36 UNF", 0.164, 36, "OHM"},
	{"#10-32 UNF", 0.19, 32, "OHM"},
	{"#12-28 UNF", 0.216, 28, "OHM"},
	{"1/4-28 UNF", 1. / 4, 28, "OHM"},
	{"5/16-24 UNF", 5. / 16, 24, "OHM"},
	{"3/8-24 UNF", 3. / 8, 24, "OHM"},
	{"7/16-20 UNF", 7. / 16, 20, "OHM"},
	{"1/2-20 UNF", 1. / 2, 20, "OHM"},
	{"9/16-18 UNF", 9. / 16, 18, "OHM"},
	{"5/8-18 UNF", 5. / 8, 18, "OHM"},
	{"3/4-16 UNF", 3. / 4, 16, "OHM"},
	{"7/8-14 UNF", 7. / 8, 14, "OHM"},
	{"1-12 UNF", 1, 12, "OHM"},
	{"1 1/8-12 UNF", 1 + 1./8, 12, "OHM"},
	{"1 1/4-12 UNF", 1 + 1./4, 12, "OHM"},
	{"1 3/8-12 UNF", 1 + 3./8, 12, "OHM"},
	{"1 1/2-12 UNF", 1 + 1./2, 12, "OHM"},
}

// Unified extra fine, UNEF: ASME B1.1. Inches and threads per inch.
var unef = []row{
	{"#12-32 UNEF", 0.216, 32, "MCJ"},
	{"1/4-32 UNEF", 1. / 4, 32, "MCJ"},
	{"5/16-32 UNEF", 5. / 16, 32, "MCJ"},
	{"3/8-32 UNEF", 3. / 8, 32, "MCJ"},
	{"7/16-28 UNEF", 7. / 16, 28, "MCJ"},
	{"1/2-28 UNEF", 1. / 2, 28, "MXJ"},
	{"9/16-24 UNEF", 9. / 16, 24, "MCJ"},
	{"5/8-24 UNEF", 5. / 8, 24, "MLJ"},
	{"11/16-24 UNEF", 11. / 16, 24, "MLJ"},
	{"3/4-20 UNEF", 3. / 4, 20, "MJ"},
	{"13/16-20 UNEF", 13. / 16, 20, "MJ"},
	{"7/8-20 UNEF", 7. / 8, 20, "MJ"},
	{"15/16-20 UNEF", 15. / 16, 20, "MLJ"},
	{"1-20 UNEF", 1, 20, "MJ"},
	{"1 1/16-18 UNEF", 1 + 1./16, 18, "MJ"},
	{"1 1/8-18 UNEF", 1 + 1./8, 18, "MJ"},
	{"1 3/16-18 UNEF", 1 + 3./16, 18, "MJ"},
	{"1 1/4-18 UNEF", 1 + 1./4, 18, "MJ"},
	{"1 5/16-18 UNEF", 1 + 5./16, 18, "MJ"},
	{"1 3/8-18 UNEF", 1 + 3./8, 18, "MJ"},
	{"1 7/16-18 UNEF", 1 + 7./16, 18, "MJ"},
	{"1 1/2-18 UNEF", 1 + 1./2, 18, "MJ"},
	{"1 9/16-18 UNEF", 1 + 9./16, 18, "MJ"},
	{"1 5/8-18 UNEF", 1 + 5./8, 18, "MJ"},
	{"1 11/16-18 UNEF", 1 + 11./16, 18, "MJ"},
}

// Unified special: the 1 inch of American National Fine, 14 threads where UNF
// has 12.
var uns = []row{
	{"1-14 UNS", 1, 14, "W"},
}

// American before about 1918: 60° like the Unified, 12 threads at 1/2 inch where
// the later standard has 13.
var uss = []row{
	{"1/2-12 USS", 1. / 2, 12, "E"},
}

// Spark plugs in inches.
var plugInch = []row{
	{"1/4-24 plug", 1. / 4, 24, "T"},
	{"3/8-24 plug", 3. / 8, 24, "T"},
	{"7/8-18 plug", 7. / 8, 18, "LT"},
}
