package threads

// British Association, BA: BS 93:1951 basic dimensions (Machinery's Handbook,
// 31st ed., p. 2115). Millimetres, in which the series is defined: designation, number,
// pitch, major, effective, minor diameter. The depth is 0.6p to the nearest
// 0.005 mm, so the diameters are kept as printed.
var ba = []listedRow{
	{"0 BA", 0, 1.00, 6.00, 5.400, 4.800, "MK"},
	{"1 BA", 1, 0.90, 5.30, 4.760, 4.220, "MK"},
	{"2 BA", 2, 0.81, 4.70, 4.215, 3.730, "MK"},
	{"3 BA", 3, 0.73, 4.10, 3.660, 3.220, "MK"},
	{"4 BA", 4, 0.66, 3.60, 3.205, 2.810, "MK"},
	{"5 BA", 5, 0.59, 3.20, 2.845, 2.490, "MK"},
	{"6 BA", 6, 0.53, 2.80, 2.480, 2.160, "MK"},
	{"7 BA", 7, 0.48, 2.50, 2.210, 1.920, "MK"},
	{"8 BA", 8, 0.43, 2.20, 1.940, 1.680, "MK"},
	{"9 BA", 9, 0.39, 1.90, 1.665, 1.430, "MK"},
	{"10 BA", 10, 0.35, 1.70, 1.490, 1.280, "MK"},
	{"11 BA", 11, 0.31, 1.50, 1.315, 1.130, "MK"},
	{"12 BA", 12, 0.28, 1.30, 1.130, 0.960, "MK"},
	{"13 BA", 13, 0.25, 1.20, 1.050, 0.900, "MK"},
	{"14 BA", 14, 0.23, 1.00, 0.860, 0.720, "MK"},
	{"15 BA", 15, 0.21, 0.90, 0.775, 0.650, "MK"},
	{"16 BA", 16, 0.19, 0.79, 0.675, 0.560, "MK"},
}

// The watch sizes, which BS 93 leaves out: Kaye and Laby, 1941, p. 25. Major
// diameter and pitch; no table of the other diameters was found, and they follow
// from the form.
var baSmall = []row{
	{"17 BA", 0.70, 0.17, "K"},
	{"18 BA", 0.62, 0.15, "K"},
	{"19 BA", 0.54, 0.14, "K"},
	{"20 BA", 0.48, 0.12, "K"},
	{"21 BA", 0.42, 0.11, "K"},
	{"22 BA", 0.37, 0.10, "K"},
	{"23 BA", 0.33, 0.09, "K"},
	{"24 BA", 0.29, 0.08, "K"},
	{"25 BA", 0.25, 0.07, "K"},
}
