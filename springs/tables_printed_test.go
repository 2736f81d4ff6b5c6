package springs

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// The tables of this package once more, entered from the printed figures a second
// time and as text, so that a slip of one digit in a table fails here. Rows run across
// the lines; "gap" stands where the reproduction that was read has a misprint.

const (
	wireSheet = "a wire maker's data sheet"

	// Inches, kpsi.
	printedA228 = `
	0.004 439 485   0.005 426 471   0.006 415 459   0.007 407 449   0.008 399 441
	0.009 393 434   0.010 387 428   0.011 382 422   0.012 377 417   0.013 373 412
	0.014 369 408   0.015 365 404   0.016 362 400   0.018 356 393   0.020 350 387
	0.022 345 382   0.024 341 377   0.026 337 373   0.028 333 368   0.030 330 365
	0.032 327 361   0.034 324 358   0.036 321 gap   0.038 318 352   0.040 315 349
	0.042 313 346   0.045 309 342   0.048 306 339   0.051 303 335   0.055 300 331
	0.059 296 327   0.063 293 324   0.067 290 321   0.072 287 317   0.076 284 314
	0.080 282 312   0.085 279 308   0.090 276 305   0.095 274 303   0.100 271 300
	0.102 270 299   0.107 268 296   0.110 267 295   0.112 266 294   0.121 263 290
	0.125 261 288   0.130 259 286   0.135 258 285   0.140 256 283   0.145 254 281
	0.150 253 279   0.156 251 277   0.162 249 275   0.177 245 270   0.192 241 267
	0.207 238 264   0.225 235 260   0.250 230 255`

	// Inches; class I, class II, kpsi.
	printedA227 = `
	0.020 283 323 324 364   0.023 279 319 320 360   0.026 275 315 316 356
	0.029 271 311 312 352   0.032 266 306 307 347   0.035 261 301 302 342
	0.041 255 293 294 332   0.048 248 286 287 325   0.054 243 279 280 316
	0.062 237 272 273 308   0.072 232 266 267 301   0.080 227 261 262 296
	0.092 220 253 254 287   0.106 216 248 249 281   0.120 210 241 242 273
	0.135 206 237 238 269   0.148 203 234 235 266   0.162 200 230 231 261
	0.177 195 225 226 256   0.192 192 221 222 251   0.207 190 218 219 247
	0.225 186 214 215 243   0.250 182 210 211 239   0.312 174 200 201 227
	0.375 167 193 194 220   0.438 165 190 191 216   0.500 156 180 181 205
	0.562 152 176 177 201   0.625 147 170 171 gap`
	printedA229 = `
	0.020 293 323 324 354   0.023 289 319 320 350   0.026 286 316 317 347
	0.029 283 313 314 344   0.032 280 310 311 341   0.035 274 304 305 335
	0.041 266 296 297 327   0.048 259 289 290 320   0.054 253 283 284 314
	0.062 247 277 278 308   0.072 241 271 272 302   0.080 235 265 266 296
	0.092 230 260 261 291   0.106 225 255 256 286   0.120 220 250 251 281
	0.135 215 240 241 266   0.148 210 235 236 261   0.162 205 230 231 256
	0.177 200 225 226 251   0.192 195 220 221 246   0.207 190 215 216 241
	0.225 188 213 214 239   0.244 187 212 213 238   0.250 185 210 211 236
	0.312 183 208 209 234   0.375 180 205 206 231   0.438 175 200 201 226
	0.500 170 195 196 221   0.562 165 190 191 216   0.625 165 190 191 216`

	// Millimetres, MPa. DH and NS: the upper end of a range of sizes.
	printedSM = `
	0.3 2370 2650   0.32 2350 2630   0.34 2330 2600   0.35 2320 2590   0.4 2270 2550
	0.45 2240 2500   0.5 2200 2470   0.6 2140 2400   0.7 2090 2350   0.8 2050 2300
	0.9 2010 2260   1.0 1980 gap   1.1 1950 2190   1.2 1920 2160   1.3 1900 2130
	1.4 1870 2100   1.5 1850 2080   1.6 1830 2050   1.7 1810 2030   1.8 1790 2010
	1.9 1770 1990   2.0 1760 1970   2.1 1740 1960   2.4 1700 1910   2.5 1690 1890
	2.6 1670 1880   2.8 1650 1850   3.0 1630 1830   3.2 1610 1810   3.4 1590 1780
	3.5 1580 1770   3.6 1570 1760   3.8 1550 1740   4.0 1530 1730   4.5 1500 1680
	5.0 1460 1650   5.5 1430 1610   6.0 1400 1580   6.5 1380 1550   7.0 1350 1530
	7.5 1330 1500   8.0 1310 1480   8.5 1290 1460   9.0 1270 1440   9.5 1260 1420
	10.0 1240 1400   10.5 1220 1380   11.0 1210 1370   12.0 1180 1340   12.5 1170 1320
	13.0 1160 1310   14.0 1130 1280   15.0 gap 1260   16.0 1090 1230   17.0 1070 1210
	18.0 1050 1190   19.0 1030 1170   20.0 1020 1150`
	printedDH = `
	0.2 2800 3110   0.22 2770 3080   0.25 2720 3010   0.28 2680 2970   0.3 2660 2940
	0.32 2640 2920   0.34 2610 2890   0.35 2600 2880   0.40 2560 2830   0.45 2510 2780`
	printedNS = `
	0.2 2200 2530   0.3 2150 2472   0.4 2100 2415   0.5 2050 2358   0.65 2000 2300
	0.8 1950 2242   1.0 1900 2185   1.25 1850 2128   1.5 1800 2070   1.75 1750 2012
	2.0 1700 1955   2.5 1650 1897   3.0 1600 1840   3.5 1550 1782   4.25 1500 1725
	5.0 1450 1667   6.0 1400 1610   7.0 1350 1552   8.5 1300 1495   10.0 1250 1438`

	// Millimetres; grades 1 to 4, MPa.
	printedIS4454 = `
	0.3 1720 2060 2460 2660   0.4 1700 2040 2430 2620   0.5 1670 2010 2390 2580
	0.6 1650 1990 2360 2550   0.7 1630 1970 2320 2530   0.8 1610 1950 2280 2480
	0.9 1590 1920 2250 2440   1 1570 1900 2240 2400   1.2 1540 1860 2170 2340
	1.4 1500 1820 2090 2290   1.6 1470 1780 2080 2250   1.8 1440 1750 2030 2190
	2 1420 1720 1990 2160   2.5 1370 1640 1890 2050   3 1320 1570 1830 1980
	3.6 1270 1510 1750 1890   4 1250 1480 1700 1840   4.5 1230 1440 1660 1800
	5 1190 1390 1600 1750   6 1130 1320 1530 1670   7 1090 1260 1460 1610
	8 1050 1220 1400 1540`

	// Number, inches.
	printedSWG = `
	7/0 0.500   6/0 0.464   5/0 0.432   4/0 0.400   3/0 0.372   2/0 0.348   1/0 0.324   1 0.300
	2 0.276   3 0.252   4 0.232   5 0.212   6 0.192   7 0.176   8 0.160   9 0.144
	10 0.128   11 0.116   12 0.104   13 0.092   14 0.080   15 0.072   16 0.064   17 0.056
	18 0.048   19 0.040   20 0.036   21 0.032   22 0.028   23 0.024   24 0.022   25 0.020
	26 0.018   27 0.0164   28 0.0148   29 0.0136   30 0.0124   31 0.0116   32 0.0108   33 0.0100
	34 0.0092   35 0.0084   36 0.0076   37 0.0068   38 0.0060   39 0.0052   40 0.0048   41 0.0044
	42 0.0040   43 0.0036   44 0.0032   45 0.0028   46 0.0024   47 0.0020   48 0.0016   49 0.0012
	50 0.0010`
	printedMusicWireGauge = `
	6/0 0.004   5/0 0.005   4/0 0.006   3/0 0.007   2/0 0.008   1/0 0.009   1 0.010   2 0.011
	3 0.012   4 0.013   5 0.014   6 0.016   7 0.018   8 0.020   9 0.022   10 0.024
	11 0.026   12 0.029   13 0.031   14 0.033   15 0.035   16 0.037   17 0.039   18 0.041
	19 0.043   20 0.045   21 0.047   22 0.049   23 0.051   24 0.055   25 0.059   26 0.063
	27 0.067   28 0.071   29 0.075   30 0.080   31 0.085   32 0.090   33 0.095   34 0.100
	35 0.106   36 0.112   37 0.118   38 0.125   39 0.130   40 0.138   41 0.146   42 0.154
	43 0.162   44 0.170   45 0.180`
	printedWashburnMoen = `
	15 0.072   14 0.080   13 0.0915   12 0.1055   11 0.1205   10 0.135   9 0.1483   8 0.162
	7 0.177   6 0.192   5 0.207   4 0.2253   3 0.2437`

	// Millimetres.
	printedListedSizes = `
	0.3   0.4   0.5   0.6   0.7   0.8   0.9   1.0   1.1   1.2   1.3   1.4   1.5   1.6
	1.7   1.8   1.9   2.0   2.1   2.4   2.5   2.6   2.8   3.0   3.2   3.4   3.5   3.6
	3.8   4.0   4.5   5.0   5.5   6.0   6.5   7.0   7.5   8.0   8.5   9.0   9.5   10.0
	10.5   11.0   12.0   12.5   13.0   14.0   15.0   16.0   17.0   18.0   19.0   20.0`

	// From, to, plus and minus, millimetres. 0.025 and 0.1 read by sequence.
	printedTolerances = `
	0.05 0.09 0.003   0.1 0.16 0.004   0.18 0.25 0.005   0.28 0.63 0.008
	0.65 0.75 0.01   0.8 1.0 0.015   1.05 1.7 0.02   1.8 2.6 0.025
	2.8 4.0 0.03   4.25 5.3 0.035   5.6 7.0 0.04   7.5 9.5 0.045
	10.0 11.0 0.05   12.0 14.0 0.08   15.0 18.0 0.09   19.0 20.0 0.1`

	// Number of the gauge, or inches, and kpsi.
	printedStressMusicWire = `
	24 180   25 178   26 176   27 174   28 173   29 171   30 169   31 167
	32 166   33 164   34 163   35 161   36 160   37 158   1/8 156`
	printedStressOilTempered = `
	10 161   8 154   7 150   6 146   5 143   1/4 139`
)

// cells cuts a printed table into rows of n cells.
func cells(t *testing.T, table string, n, rows int) [][]string {
	t.Helper()
	out := slices.Collect(slices.Chunk(strings.Fields(table), n))
	if len(out) != rows || len(out[rows-1]) != n {
		t.Fatalf("%d rows of %d printed, %d in the table", len(out), n, rows)
	}
	return out
}

// printed checks one cell; a gap is 0 in the table.
func printed(t *testing.T, source, cell string, got float64) {
	t.Helper()
	if cell == "gap" {
		figures.Near(t, source+", gap", got, 0, 0)
		return
	}
	figures.Figure{Printed: cell, Source: source}.Check(t, got)
}

// TestPrintedStrengths holds each size and both limits against the print. That
// Material.Strength finds every row is TestEveryRowIsFound.
func TestPrintedStrengths(t *testing.T) {
	for _, tc := range []struct {
		source, table string
		rows          [][]strengthRow // side by side, at the same sizes
	}{
		{"ASTM A228, limits of tensile strength, in " + wireSheet, printedA228, [][]strengthRow{musicWireA228[:]}},
		{"ASTM A227, limits of tensile strength, in " + wireSheet, printedA227, [][]strengthRow{hardDrawnA227I[:], hardDrawnA227II[:]}},
		{"ASTM A229, limits of tensile strength, in " + wireSheet, printedA229, [][]strengthRow{oilTemperedA229I[:], oilTemperedA229II[:]}},
		{"EN 10270-1 SM, limits of tensile strength, in a spring maker's glossary (0.32 and 0.34 in a wire maker's data sheet, 0.35 and 0.45 on a stockist's page)", printedSM, [][]strengthRow{patentedSM[:]}},
		{"EN 10270-1 DH, limits of tensile strength, in a wire maker's data sheet (0.35 to 0.45 on a stockist's page)", printedDH, [][]strengthRow{patentedDH[:]}},
		{"EN 10270-3 NS, limits of tensile strength, in a steel stockist's table", printedNS, [][]strengthRow{stainlessNS[:]}},
	} {
		for i, row := range cells(t, tc.table, 1+2*len(tc.rows), len(tc.rows[0])) {
			for class, rows := range tc.rows {
				figures.Near(t, tc.source+", size", rows[i].size, number(t, row[0]), 0)
				printed(t, tc.source, row[1+2*class], rows[i].lower)
				printed(t, tc.source, row[2+2*class], rows[i].upper)
			}
		}
	}
	const bhandari = "Bhandari, Design of Machine Elements, Table 10.1, p. 402 (IS 4454, as transcribed by a companion)"
	for i, row := range cells(t, printedIS4454, 5, len(patentedIS4454)) {
		figures.Near(t, "IS 4454, size, mm", patentedIS4454[i].size, number(t, row[0]), 0)
		for g, cell := range row[1:] {
			printed(t, bhandari, cell, patentedIS4454[i].grades[g])
		}
	}
}

// number reads a size, which must match to the last bit and not only to half a unit.
func number(t *testing.T, cell string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(cell, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// TestPrintedGauges looks up every number of the three gauges.
func TestPrintedGauges(t *testing.T) {
	for _, tc := range []struct {
		g             WireGauge
		source, table string
	}{
		{StandardWireGauge, "BS 3737:1964, inch sizes, from an engineering data page", printedSWG},
		{MusicWireGauge, "music wire size list, inch sizes (24 to 37 also in Machinery's Handbook, 31st ed., Table 14, p. 340)", printedMusicWireGauge},
		{WashburnMoenGauge, "Machinery's Handbook, 31st ed., Tables 5 and 14, Washburn and Moen sizes", printedWashburnMoen},
	} {
		numbers := tc.g.Numbers()
		for i, row := range cells(t, tc.table, 2, len(numbers)) {
			if numbers[i] != row[0] {
				t.Errorf("%v: number %s, want %s", tc.g, numbers[i], row[0])
			}
			printed(t, tc.source, row[1], mustDiameter(t, tc.g, row[0]))
		}
	}
	sizes := ListedSizes()
	for i, row := range cells(t, printedListedSizes, 1, len(sizes)) {
		figures.Near(t, "size listed in EN 10270-1, mm", sizes[i].Millimetres(), number(t, row[0]), 1e-12)
	}
}

// TestPrintedTolerances: both edges of each band and the tolerance at both.
func TestPrintedTolerances(t *testing.T) {
	const klein = "EN 10270-1, tolerance on diameter, as reported in Klein (text layer)"
	for i, row := range cells(t, printedTolerances, 3, len(wireTolerances)) {
		figures.Near(t, "band from, mm", wireTolerances[i].from, number(t, row[0]), 0)
		figures.Near(t, "band to, mm", wireTolerances[i].to, number(t, row[1]), 0)
		for _, edge := range row[:2] {
			got, err := WireTolerance(units.Length(number(t, edge)) * units.Millimetre)
			if err != nil {
				t.Fatal(err)
			}
			// the last place is the thousandth, also where the band is 0.01 or 0.1
			figures.Figure{Printed: row[2], Source: klein, Place: 0.001}.Check(t, got.Millimetres())
		}
	}
}

// TestPrintedDesignStresses: 21 lines of the handbook, by the number of the wire.
func TestPrintedDesignStresses(t *testing.T) {
	const source = "Machinery's Handbook, 31st ed., Table 14, pp. 340-341, design stress"
	for _, tc := range []struct {
		grade Grade
		gauge WireGauge
		table string
		rows  []designStressRow
	}{
		{MusicWireA228, MusicWireGauge, printedStressMusicWire, handbookMusicWire[:]},
		{OilTemperedA229ClassI, WashburnMoenGauge, printedStressOilTempered, handbookOilTempered[:]},
	} {
		for i, row := range cells(t, tc.table, 2, len(tc.rows)) {
			var d units.Length
			switch row[0] {
			case "1/8":
				d = units.Inch / 8
			case "1/4":
				d = units.Inch / 4
			default:
				d = units.Length(mustDiameter(t, tc.gauge, row[0])) * units.Inch
			}
			figures.Near(t, "size, in", tc.rows[i].size, d.Inches(), 1e-12)
			s, err := HandbookDesignStress(tc.grade, d)
			if err != nil {
				t.Fatal(err)
			}
			printed(t, source, row[1], s.KilopoundsPerSquareInch())
		}
	}
	for _, upTo := range []struct {
		row     int
		printed string
	}{{3, "0.125"}, {4, "0.250"}} {
		printed(t, "Machinery's Handbook, 31st ed., Table 15, p. 343, sizes of stainless 302", upTo.printed, handbookFactors[upTo.row].upTo)
	}
}

// TestPrintedFits: every coefficient and both ends of every range.
func TestPrintedFits(t *testing.T) {
	const shigley = "Shigley, Mechanical Engineering Design, Table 10-4 (from memory)"
	for i, tc := range [...]struct {
		grade                  Grade
		from, to, a, m, inches string
	}{
		{MusicWireA228, "0.10", "6.5", "2211", "0.145", "201"},
		{OilTemperedA229ClassI, "0.5", "12.7", "1855", "0.187", "147"},
		{HardDrawnA227ClassI, "0.7", "12.7", "1783", "0.190", "140"},
		{ChromeVanadiumA232, "0.8", "11.1", "2005", "0.168", "169"},
		{ChromeSiliconA401, "1.6", "9.5", "1974", "0.108", "202"},
		{Stainless302A313, "0.3", "2.5", "1867", "0.146", "169"},
		{Stainless302A313, "2.5", "5", "2065", "0.263", "128"},
		{Stainless302A313, "5", "10", "2911", "0.478", "90"},
		{PhosphorBronzeB159, "0.1", "0.6", "1000", "0", "145"},
		{PhosphorBronzeB159, "0.6", "2", "913", "0.028", "121"},
		{PhosphorBronzeB159, "2", "7.5", "932", "0.064", "110"},
	} {
		f := powerFits[i]
		if f.grade != tc.grade || len(powerFits) != 11 {
			t.Errorf("fit %d of %d: %v, want %v of 11", i, len(powerFits), f.grade, tc.grade)
		}
		printed(t, shigley, tc.a, f.a)
		printed(t, shigley, tc.inches, f.aInch)
		figures.Figure{Printed: tc.m, Source: shigley, Place: 0.001}.Check(t, f.m)
		figures.Near(t, "fit from, mm", f.from, number(t, tc.from), 0)
		figures.Near(t, "fit to, mm", f.to, number(t, tc.to), 0)
	}
	for i, tc := range [...]struct {
		grade  Grade
		source string
		a, b   string
	}{
		{PatentedSL, "EN 10270-1 SL, informative relation (from memory)", "1720", "660"},
		{PatentedSM, "EN 10270-1 SM, informative relation (from memory)", "1980", "740"},
		{PatentedDH, "EN 10270-1 DH, informative relation (slope from memory, constant fitted to ten limits that were read)", "2230", "820"},
	} {
		f := logFits[i]
		if f.grade != tc.grade || len(logFits) != 3 {
			t.Errorf("fit %d: %v, want %v", i, f.grade, tc.grade)
		}
		printed(t, tc.source, tc.a, f.a)
		printed(t, tc.source, tc.b, f.b)
	}
	printed(t, "EN 10270-1 SL, sizes of the relation (from memory)", "1", logFits[0].from)
	printed(t, "EN 10270-1 SL, sizes of the relation (from memory)", "10", logFits[0].to)
}

// TestPrintedElasticLimits: both ends of each band, looked up.
func TestPrintedElasticLimits(t *testing.T) {
	const shigley = "Shigley, Mechanical Engineering Design, Table 10-5, elastic limits (from memory)"
	for _, tc := range []struct {
		grade            Grade
		tension, torsion [2]string
	}{
		{MusicWireA228, [2]string{"65", "75"}, [2]string{"45", "60"}},
		{HardDrawnA227ClassI, [2]string{"60", "70"}, [2]string{"45", "55"}},
		{HardDrawnA227ClassII, [2]string{"60", "70"}, [2]string{"45", "55"}},
		{OilTemperedA229ClassI, [2]string{"85", "90"}, [2]string{"45", "50"}},
		{OilTemperedA229ClassII, [2]string{"85", "90"}, [2]string{"45", "50"}},
		{ChromeVanadiumA232, [2]string{"88", "93"}, [2]string{"gap", "gap"}},
		{ChromeSiliconA401, [2]string{"85", "93"}, [2]string{"65", "75"}},
		{Stainless302A313, [2]string{"65", "75"}, [2]string{"45", "55"}},
		{PhosphorBronzeB159, [2]string{"75", "80"}, [2]string{"45", "50"}},
	} {
		tension, torsion, err := tc.grade.Material().ElasticLimit()
		if err != nil {
			t.Fatal(err)
		}
		for end := range 2 {
			printed(t, shigley, tc.tension[end], 100*tension[end])
			printed(t, shigley, tc.torsion[end], 100*torsion[end])
		}
	}
}

// TestPrintedShares: the whole table of steady loads, each cell looked up.
func TestPrintedShares(t *testing.T) {
	duties := [...]Duty{SteadyBending, SteadyCompression, SteadyCompressionSet, ExtensionBody, ExtensionHookTorsion, ExtensionHookBending}
	for _, tc := range []struct {
		grade Grade
		row   [len(duties)]string
	}{
		{MusicWireA228, [...]string{"78", "45", "60", "45", "40", "75"}},
		{OilTemperedA229ClassI, [...]string{"87", "50", "65", "45", "40", "75"}},
		{Stainless302A313, [...]string{"61", "35", "55", "35", "30", "55"}},
		{PhosphorBronzeB159, [...]string{"61", "35", "55", "35", "30", "55"}},
	} {
		for i, duty := range duties {
			share, source, err := tc.grade.Material().Share(duty)
			if err != nil {
				t.Fatal(err)
			}
			printed(t, source, tc.row[i], 100*share)
		}
	}
}

// TestPrintedStrip: limits, hardness bands and tolerances of strip, looked up.
func TestPrintedStrip(t *testing.T) {
	const mill, supplier = "EN 10132-4, in a mill's material sheet", "EN 10132, in a strip supplier's table"
	for _, tc := range [...]struct {
		steel, condition                     string
		least, most, hvLeast, hvMost, source string
	}{
		{"C67S", "+QT", "1200", "1900", "370", "580", mill},
		{"C75S", "+QT", "1200", "1900", "370", "580", "EN 10132-4:2000, in a supplier's note"},
		{"C100S", "+QT", "1200", "2100", "370", "630", "EN 10132-4, Table 4 (from memory)"},
		{"C45E", "+CR", "gap", "1020", "gap", "290", supplier},
		{"C67S", "+CR", "gap", "1140", "gap", "315", supplier},
		{"C75S", "+CR", "gap", "1170", "gap", "320", supplier},
		{"C67S", "+A", "gap", "640", "gap", "200", mill},
		{"C75S", "+A", "gap", "640", "gap", "200", mill},
	} {
		s, err := StripLimits(tc.steel, tc.condition)
		if err != nil {
			t.Fatal(err)
		}
		printed(t, tc.source, tc.least, s.Least.Megapascals())
		printed(t, tc.source, tc.most, s.Most.Megapascals())
		printed(t, tc.source, tc.hvLeast, s.LeastHardness)
		printed(t, tc.source, tc.hvMost, s.MostHardness)
	}
	const delivered = "strip C67S +QT as delivered, hardness by thickness, in a mill's material sheet and a stockist's table"
	for i, row := range [...][4]string{
		{"0.3", "0.5", "485", "535"}, {"0.5", "0.75", "465", "515"}, {"0.75", "1.0", "455", "505"},
		{"1.0", "1.5", "445", "495"}, {"1.5", "2.0", "425", "475"}, {"2.0", "3.0", "415", "465"},
	} {
		r := stripHardness[i]
		figures.Near(t, "strip from, mm", r.from, number(t, row[0]), 0)
		figures.Near(t, "strip to, mm", r.to, number(t, row[1]), 0)
		least, most, err := StripHardness(units.Length(number(t, row[1])) * units.Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		printed(t, delivered, row[2], least)
		printed(t, delivered, row[3], most)
	}
	for i, row := range [...][4]string{{"0.10", "0.008", "0.006", "0.004"}, {"0.15", "0.010", "0.008", "0.005"}} {
		figures.Near(t, "strip tolerance up to, mm", stripTolerances[i].to, number(t, row[0]), 0)
		for c, class := range []string{"A", "B", "C"} {
			got, err := StripTolerance(units.Length(number(t, row[0]))*units.Millimetre, class)
			if err != nil {
				t.Fatal(err)
			}
			printed(t, "EN 10140, strip narrower than 125 mm, in a strip supplier's table", row[1+c], got.Millimetres())
		}
	}
}

// TestPrintedModulusSizes: the sizes at which the moduli of drawn wire step (their
// values are in TestModuli).
func TestPrintedModulusSizes(t *testing.T) {
	for _, rows := range [][]modulusRow{musicWireModuli[:], hardDrawnModuli[:]} {
		for i, cell := range cells(t, "0.81 1.60 3.18 0", 1, len(rows)) {
			figures.Near(t, "Shigley, Table 10-5, size up to, mm", rows[i].upTo, number(t, cell[0]), 0)
		}
	}
}
