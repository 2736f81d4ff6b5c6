package threads

import "example.com/benchsums/units"

// The series, each with its list and the publications behind the letters.
var tables = [seriesEnd]table{
	Special: {name: "no series", standard: "no standard"},
	ISOCoarse: {name: "ISO metric coarse", short: "M", standard: "ISO 261", form: ISOForm,
		unit: units.Millimetre, rows: isoCoarse, keys: isoKeys},
	ISOFine: {name: "ISO metric fine", short: "M", standard: "ISO 261", form: ISOForm,
		unit: units.Millimetre, rows: isoFine, keys: isoKeys},
	UNC: {name: "Unified National Coarse", short: "UNC", standard: "ASME B1.1", form: UnifiedForm,
		unit: units.Inch, tpi: true, rows: unc, keys: unifiedKeys},
	UNF: {name: "Unified National Fine", short: "UNF", standard: "ASME B1.1", form: UnifiedForm,
		unit: units.Inch, tpi: true, rows: unf, keys: unifiedKeys},
	UNEF: {name: "Unified National Extra Fine", short: "UNEF", standard: "ASME B1.1", form: UnifiedForm,
		unit: units.Inch, tpi: true, rows: unef, keys: unifiedKeys},
	UNS: {name: "Unified National Special", short: "UNS", standard: "ASME B1.1", form: UnifiedForm,
		unit: units.Inch, tpi: true, rows: uns, keys: unifiedKeys},
	USS: {name: "American, before about 1918", short: "USS", standard: "United States Standard", form: UnifiedForm,
		unit: units.Inch, tpi: true, rows: uss, keys: unifiedKeys},
	BSW: {name: "British Standard Whitworth", short: "BSW", standard: "BS 84", form: WhitworthForm,
		unit: units.Inch, tpi: true, rows: bsw, keys: whitworthKeys},
	BSF: {name: "British Standard Fine", short: "BSF", standard: "BS 84", form: WhitworthForm,
		unit: units.Inch, tpi: true, rows: bsf, keys: whitworthKeys},
	BA: {name: "British Association", short: "BA", standard: "BS 93:1951", form: BAForm,
		unit: units.Millimetre, listed: ba, rows: baSmall, keys: []key{
			{'M', "Machinery's Handbook, 31st ed., p. 2115"},
			{'K', "Kaye and Laby, Tables of Physical and Chemical Constants, 1941, p. 25"},
		}},
	BSC: {name: "British Standard Cycle", short: "BSC", standard: "BS 811:1950", form: CycleForm,
		unit: units.Inch, tpi: true, rows: bsc, keys: cycleKeys},
	Cycle20: {name: "cycle, 20 threads per inch, cycle form", short: "cycle", standard: "trade list", form: CycleForm,
		unit: units.Inch, tpi: true, rows: cycle20, keys: cycleKeys},
	Cycle20Whitworth: {name: "cycle, 20 threads per inch, Whitworth form", short: "Whit form", standard: "trade list", form: WhitworthForm,
		unit: units.Inch, tpi: true, rows: cycle20Whitworth, keys: cycleKeys},
	CycleFittings: {name: "cycle fittings", short: "cycle", standard: "trade list", form: CycleForm,
		unit: units.Inch, tpi: true, rows: cycleFittings, keys: cycleKeys},
	CEI: {name: "Cycle Engineers' Institute", short: "CEI", standard: "Cycle Engineers' Institute, 1902", form: CycleForm,
		unit: units.Inch, tpi: true, rows: cei, keys: cycleKeys},
	Brass: {name: "British brass", short: "brass", standard: "trade list", form: WhitworthForm,
		unit: units.Inch, tpi: true, rows: brass, keys: whitworthKeys},
	ME: {name: "model engineer", short: "ME", standard: "model engineer", form: WhitworthForm,
		unit: units.Inch, tpi: true, rows: me, keys: whitworthKeys},
	BSPParallel: {name: "British Standard Pipe, parallel", short: "G", standard: "ISO 228-1", form: WhitworthForm,
		unit: units.Millimetre, tpi: true, listed: bspParallel, keys: pipeKeys},
	BSPTaper: {name: "British Standard Pipe, taper", short: "R", standard: "ISO 7-1", form: WhitworthForm,
		unit: units.Millimetre, tpi: true, taper: 1. / 16, listed: bspTaper, keys: pipeKeys, gauge: gaugeLengths},
	NPT: {name: "American taper pipe", short: "NPT", standard: "ASME B1.20.1", form: NPTForm,
		unit: units.Inch, tpi: true, taper: 1. / 16, rows: npt, keys: pipeKeys, sizes: nptSizes},
	SI: {name: "Système International, Zürich 1898", short: "SI", standard: "Zürich congress, 1898", form: SIForm,
		unit: units.Millimetre, rows: si, keys: continentalKeys},
	OldMetric: {name: "metric before ISO", short: "old", standard: "older national lists", form: SIForm,
		unit: units.Millimetre, rows: oldMetric, keys: continentalKeys},
	Loewenherz: {name: "Loewenherz", short: "Loew", standard: "Loewenherz", form: LoewenherzForm,
		unit: units.Millimetre, rows: loewenherz, keys: continentalKeys},
	SparkPlug: {name: "spark plug, metric", short: "plug", standard: "ISO 28741", form: ISOForm,
		unit: units.Millimetre, rows: plugMetric, keys: plugKeys},
	SparkPlugInch: {name: "spark plug, inch", short: "plug", standard: "plug makers' lists", form: UnifiedForm,
		unit: units.Inch, tpi: true, rows: plugInch, keys: plugKeys},
}

var isoKeys = []key{
	{'W', "Wikipedia, ISO metric screw thread"},
	{'S', "sizes.com metric thread table"},
	{'Y', "Yamawa tap catalogue 2021, pp. 645-656"},
	{'Z', "Yamawa tap catalogue 2016, p. 799"},
	{'G', "get-it-made.co.uk coarse metric chart"},
	{'E', "echosupply.com metric chart"},
	{'D', "deepri.com metric fine list"},
	{'Q', "note to a table of tapping drills, rideout-sw.co.uk"},
	{'A', "ASME B1.13M chart of external limits"},
	{'B', "ASME B1.13M chart of internal limits"},
	{'R', "ASME B1.13M list (public reprint, Scribd document 604040407)"},
	{'N', "Narayana and others, Machine Drawing, p. 80, Table 5.1"},
	{'T', "Thread cutting by dies and taps, trainees' handbook, App. 1 (Institut für Berufliche Entwicklung, Berlin)"},
	{'P', "BS 3643 Part 2 in Machinery's Handbook, 27th ed., p. 1822, Table 5"},
}

var unifiedKeys = []key{
	{'F', "TR Fastenings UNC geometry table"},
	{'O', "boltport UNF table"},
	{'H', "Shigley's Mechanical Engineering Design, 9th ed., Table 8-2"},
	{'M', "Machinery's Handbook, 31st ed., pp. 1978-1980, Tables 4a and 4c; 27th ed., p. 1764, Table 4b"},
	{'C', "tapping drill chart"},
	{'X', "Machinery's Handbook, 31st ed., Table 3 (worked 1/2-28 UNEF-2A)"},
	{'L', "public reprints of the B1.1 limits of size"},
	{'J', "eisen.gr.jp Unified gauge table"},
	{'W', "Wikipedia, Unified Thread Standard"},
	{'E', "Gas Engine Magazine, Field Notes, 13 Mar 2018"},
}

var whitworthKeys = []key{
	{'F', "TR Fastenings BSW geometry table"},
	{'O', "oldengine.org Threading Tables, chart 1"},
	{'W', "Wikipedia, British Standard Fine"},
	{'M', "BS 1083:1965 in Machinery's Handbook, 31st ed., Table 1"},
	{'T', "tradeclassicbikes.co.uk thread list"},
	{'U', "Unik Gauges range"},
	{'B', "boltscience.com"},
	{'E', "model-engineer.co.uk forum"},
}

var cycleKeys = []key{
	{'T', "tradeclassicbikes.co.uk list"},
	{'P', "a public web table of BSC threads"},
	{'V', "Urban Velo, issue 25"},
	{'G', "grubb1937.blogspot.com, 2013, list of cycle threads"},
	{'X', "engineeringtoolbox.com cycle thread table"},
	{'D', "peterverdone.com note on hub axle thread"},
	{'E', "note in BS 811:1950 as reported on model-engineer.co.uk, 10 Feb 2018"},
}

var pipeKeys = []key{
	{'W', "Wikipedia, British Standard Pipe"},
	{'H', "BS 2779:1973 in Mechanical Engineer's Data Handbook, p. 301"},
	{'Y', "Yamawa EU catalogue, p. 724"},
	{'N', "nusil.avantorsciences.com, standard pipe thread fittings"},
	{'T', "toolsnz.com, US standard taper pipe thread"},
}

var continentalKeys = []key{
	{'S', "sizes.com metric thread table"},
	{'M', "Machinery's Handbook, 27th ed., p. 1824 (SI) and 31st ed., p. 2119 (Loewenherz)"},
	{'C', "classiccmp.org, 2011, citing Machinery's Handbook of 1943"},
	{'Y', "Yamawa tap catalogue 2021, p. 656"},
	{'Z', "Yamawa tap catalogue 2016, p. 799"},
	{'D', "ds-restoration.blogspot.com, 9 May 2024"},
}

var plugKeys = []key{
	{'C', "sparkplugs.co.uk technical terms"},
	{'V', "mechanicvibe.com plug thread list"},
	{'L', "tnlab.org summary of ISO 28741 (metric); ALAM standard of 1908 reprinted by clickamericana.com (7/8 in)"},
	{'T', "tradeclassicbikes.co.uk list"},
}
