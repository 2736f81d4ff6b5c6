package threads

// Where the sizes of the number and letter drills were read. The two lists give
// the same size wherever both have one.
type drillSource uint8

const (
	fromList   drillSource = iota // ANSI B94.11M sizes in the Toolmex list of drill size equivalents
	fromChart                     // ANSI B94.11M sizes in a printed thread, drill and tap chart (docslib 4942776)
	fromBoth                      // both of these
	fromMemory                    // from memory, seen in neither
)

// Number drills, ANSI B94.11M. Inches, in which the series is defined; it is
// also called the wire gauge, and each step has no rule but the table.
var numberDrills = [...]struct {
	no     int
	size   float64
	source drillSource
}{
	{80, 0.0135, fromList},
	{79, 0.0145, fromList},
	{78, 0.0160, fromList},
	{77, 0.0180, fromList},
	{76, 0.0200, fromList},
	{75, 0.0210, fromList},
	{74, 0.0225, fromList},
	{73, 0.0240, fromList},
	{72, 0.0250, fromList},
	{71, 0.0260, fromList},
	{70, 0.0280, fromList},
	{69, 0.0292, fromList},
	{68, 0.0310, fromList},
	{67, 0.0320, fromList},
	{66, 0.0330, fromList},
	{65, 0.0350, fromList},
	{64, 0.0360, fromList},
	{63, 0.0370, fromMemory},
	{62, 0.0380, fromMemory},
	{61, 0.0390, fromMemory},
	{60, 0.0400, fromMemory},
	{59, 0.0410, fromMemory},
	{58, 0.0420, fromMemory},
	{57, 0.0430, fromMemory},
	{56, 0.0465, fromMemory},
	{55, 0.0520, fromChart},
	{54, 0.0550, fromMemory},
	{53, 0.0595, fromChart},
	{52, 0.0635, fromChart},
	{51, 0.0670, fromMemory},
	{50, 0.0700, fromChart},
	{49, 0.0730, fromChart},
	{48, 0.0760, fromChart},
	{47, 0.0785, fromChart},
	{46, 0.0810, fromChart},
	{45, 0.0820, fromBoth},
	{44, 0.0860, fromBoth},
	{43, 0.0890, fromBoth},
	{42, 0.0935, fromBoth},
	{41, 0.0960, fromBoth},
	{40, 0.0980, fromChart},
	{39, 0.0995, fromList},
	{38, 0.1015, fromBoth},
	{37, 0.1040, fromBoth},
	{36, 0.1065, fromBoth},
	{35, 0.1100, fromBoth},
	{34, 0.1110, fromList},
	{33, 0.1130, fromBoth},
	{32, 0.1160, fromBoth},
	{31, 0.1200, fromBoth},
	{30, 0.1285, fromBoth},
	{29, 0.1360, fromBoth},
	{28, 0.1405, fromBoth},
	{27, 0.1440, fromBoth},
	{26, 0.1470, fromBoth},
	{25, 0.1495, fromBoth},
	{24, 0.1520, fromBoth},
	{23, 0.1540, fromList},
	{22, 0.1570, fromMemory},
	{21, 0.1590, fromChart},
	{20, 0.1610, fromChart},
	{19, 0.1660, fromMemory},
	{18, 0.1695, fromChart},
	{17, 0.1730, fromMemory},
	{16, 0.1770, fromChart},
	{15, 0.1800, fromChart},
	{14, 0.1820, fromChart},
	{13, 0.1850, fromChart},
	{12, 0.1890, fromChart},
	{11, 0.1910, fromMemory},
	{10, 0.1935, fromChart},
	{9, 0.1960, fromChart},
	{8, 0.1990, fromMemory},
	{7, 0.2010, fromChart},
	{6, 0.2040, fromMemory},
	{5, 0.2055, fromMemory},
	{4, 0.2090, fromList},
	{3, 0.2130, fromBoth},
	{2, 0.2210, fromBoth},
	{1, 0.2280, fromBoth},
}

// Letter drills, ANSI B94.11M. Inches.
var letterDrills = [...]struct {
	letter byte
	size   float64
	source drillSource
}{
	{'A', 0.2340, fromList},
	{'B', 0.2380, fromList},
	{'C', 0.2420, fromList},
	{'D', 0.2460, fromList},
	{'E', 0.2500, fromList},
	{'F', 0.2570, fromBoth},
	{'G', 0.2610, fromList},
	{'H', 0.2660, fromBoth},
	{'I', 0.2720, fromBoth},
	{'J', 0.2770, fromBoth},
	{'K', 0.2810, fromList},
	{'L', 0.2900, fromBoth},
	{'M', 0.2950, fromList},
	{'N', 0.3020, fromList},
	{'O', 0.3160, fromList},
	{'P', 0.3230, fromChart},
	{'Q', 0.3320, fromChart},
	{'R', 0.3390, fromMemory},
	{'S', 0.3480, fromChart},
	{'T', 0.3580, fromChart},
	{'U', 0.3680, fromChart},
	{'V', 0.3770, fromMemory},
	{'W', 0.3860, fromChart},
	{'X', 0.3970, fromChart},
	{'Y', 0.4040, fromChart},
	{'Z', 0.4130, fromChart},
}

// Fractional drills run in 64ths of an inch to 1 in and in 32nds to 2 in.
var fractionDrills = [...]struct {
	from, to, step int // 64ths of an inch
}{
	{1, 64, 1},
	{66, 128, 2},
}

// Metric drills, the preferred series of BS 328 by the rule given in the drill
// chart of ipqcco.com: below 1 mm the sizes of each tenth end in 0, 2, 5 and 8
// hundredths, above it they go in even steps.
var (
	metricDrillEnds = [...]int{0, 2, 5, 8} // hundredths of a millimetre, from 0.20 to 0.98

	metricDrills = [...]struct {
		from, to, step int // hundredths of a millimetre
	}{
		{100, 295, 5},
		{300, 1390, 10},
		{1400, 2500, 25},
	}
)
