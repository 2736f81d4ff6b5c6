package threads

import (
	"strconv"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
)

// Where the equivalents of drill sizes were read.
const (
	drillList   = "ANSI B94.11M number and letter drills (Toolmex drill size equivalents)"
	drillChart  = "ANSI B94.11M number and letter drills (thread/screw drill and tap chart, docslib 4942776)"
	drillMemory = "ANSI B94.11M number and letter drills, from memory"
	drill64ths  = "fractional drills: exact arithmetic"
	drillMetric = "BS 328 preferred metric drill series, rule as given by the ipqcco.com drill chart"
)

// printedDrills gives each drill in inches and in millimetres.
var printedDrills = [...]struct{ name, inch, mm, source string }{
	{"#80", "0.0135", "0.3429", drillList},
	{"#79", "0.0145", "0.3683", drillList},
	{"#78", "0.0160", "0.4064", drillList},
	{"#77", "0.0180", "0.4572", drillList},
	{"#76", "0.0200", "0.5080", drillList},
	{"#75", "0.0210", "0.5334", drillList},
	{"#74", "0.0225", "0.5715", drillList},
	{"#73", "0.0240", "0.6096", drillList},
	{"#72", "0.0250", "0.6350", drillList},
	{"#71", "0.0260", "0.6604", drillList},
	{"#70", "0.0280", "0.7112", drillList},
	{"#69", "0.0292", "0.7417", drillList},
	{"#68", "0.0310", "0.7874", drillList},
	{"#67", "0.0320", "0.8128", drillList},
	{"#66", "0.0330", "0.8382", drillList},
	{"#65", "0.0350", "0.8890", drillList},
	{"#64", "0.0360", "0.9144", drillList},
	{"#63", "0.0370", "0.9398", drillMemory},
	{"#62", "0.0380", "0.9652", drillMemory},
	{"#61", "0.0390", "0.9906", drillMemory},
	{"#60", "0.0400", "1.0160", drillMemory},
	{"#59", "0.0410", "1.0414", drillMemory},
	{"#58", "0.0420", "1.0668", drillMemory},
	{"#57", "0.0430", "1.0922", drillMemory},
	{"#56", "0.0465", "1.1811", drillMemory},
	{"#55", "0.0520", "1.3208", drillChart},
	{"#54", "0.0550", "1.3970", drillMemory},
	{"#53", "0.0595", "1.5113", drillChart},
	{"#52", "0.0635", "1.6129", drillChart},
	{"#51", "0.0670", "1.7018", drillMemory},
	{"#50", "0.0700", "1.7780", drillChart},
	{"#49", "0.0730", "1.8542", drillChart},
	{"#48", "0.0760", "1.9304", drillChart},
	{"#47", "0.0785", "1.9939", drillChart},
	{"#46", "0.0810", "2.0574", drillChart},
	{"#45", "0.0820", "2.0828", drillList},
	{"#44", "0.0860", "2.1844", drillList},
	{"#43", "0.0890", "2.2606", drillList},
	{"#42", "0.0935", "2.3749", drillList},
	{"#41", "0.0960", "2.4384", drillList},
	{"#40", "0.0980", "2.4892", drillChart},
	{"#39", "0.0995", "2.5273", drillList},
	{"#38", "0.1015", "2.5781", drillList},
	{"#37", "0.1040", "2.6416", drillList},
	{"#36", "0.1065", "2.7051", drillList},
	{"#35", "0.1100", "2.7940", drillList},
	{"#34", "0.1110", "2.8194", drillList},
	{"#33", "0.1130", "2.8702", drillList},
	{"#32", "0.1160", "2.9464", drillList},
	{"#31", "0.1200", "3.0480", drillList},
	{"#30", "0.1285", "3.2639", drillList},
	{"#29", "0.1360", "3.4544", drillList},
	{"#28", "0.1405", "3.5687", drillList},
	{"#27", "0.1440", "3.6576", drillList},
	{"#26", "0.1470", "3.7338", drillList},
	{"#25", "0.1495", "3.7973", drillList},
	{"#24", "0.1520", "3.8608", drillList},
	{"#23", "0.1540", "3.9116", drillList},
	{"#22", "0.1570", "3.9878", drillMemory},
	{"#21", "0.1590", "4.0386", drillChart},
	{"#20", "0.1610", "4.0894", drillChart},
	{"#19", "0.1660", "4.2164", drillMemory},
	{"#18", "0.1695", "4.3053", drillChart},
	{"#17", "0.1730", "4.3942", drillMemory},
	{"#16", "0.1770", "4.4958", drillChart},
	{"#15", "0.1800", "4.5720", drillChart},
	{"#14", "0.1820", "4.6228", drillChart},
	{"#13", "0.1850", "4.6990", drillChart},
	{"#12", "0.1890", "4.8006", drillChart},
	{"#11", "0.1910", "4.8514", drillMemory},
	{"#10", "0.1935", "4.9149", drillChart},
	{"#9", "0.1960", "4.9784", drillChart},
	{"#8", "0.1990", "5.0546", drillMemory},
	{"#7", "0.2010", "5.1054", drillChart},
	{"#6", "0.2040", "5.1816", drillMemory},
	{"#5", "0.2055", "5.2197", drillMemory},
	{"#4", "0.2090", "5.3086", drillList},
	{"#3", "0.2130", "5.4102", drillList},
	{"#2", "0.2210", "5.6134", drillList},
	{"#1", "0.2280", "5.7912", drillList},
	{"A", "0.2340", "5.9436", drillList},
	{"B", "0.2380", "6.0452", drillList},
	{"C", "0.2420", "6.1468", drillList},
	{"D", "0.2460", "6.2484", drillList},
	{"E", "0.2500", "6.3500", drillList},
	{"F", "0.2570", "6.5278", drillList},
	{"G", "0.2610", "6.6294", drillList},
	{"H", "0.2660", "6.7564", drillList},
	{"I", "0.2720", "6.9088", drillList},
	{"J", "0.2770", "7.0358", drillList},
	{"K", "0.2810", "7.1374", drillList},
	{"L", "0.2900", "7.3660", drillList},
	{"M", "0.2950", "7.4930", drillList},
	{"N", "0.3020", "7.6708", drillList},
	{"O", "0.3160", "8.0264", drillList},
	{"P", "0.3230", "8.2042", drillChart},
	{"Q", "0.3320", "8.4328", drillChart},
	{"R", "0.3390", "8.6106", drillMemory},
	{"S", "0.3480", "8.8392", drillChart},
	{"T", "0.3580", "9.0932", drillChart},
	{"U", "0.3680", "9.3472", drillChart},
	{"V", "0.3770", "9.5758", drillMemory},
	{"W", "0.3860", "9.8044", drillChart},
	{"X", "0.3970", "10.0838", drillChart},
	{"Y", "0.4040", "10.2616", drillChart},
	{"Z", "0.4130", "10.4902", drillChart},
	{"1/64 in", "0.015625", "0.3969", drill64ths},
	{"1/32 in", "0.031250", "0.7937", drill64ths},
	{"3/64 in", "0.046875", "1.1906", drill64ths},
	{"1/16 in", "0.062500", "1.5875", drill64ths},
	{"5/64 in", "0.078125", "1.9844", drill64ths},
	{"3/32 in", "0.093750", "2.3812", drill64ths},
	{"7/64 in", "0.109375", "2.7781", drill64ths},
	{"1/8 in", "0.125000", "3.1750", drill64ths},
	{"9/64 in", "0.140625", "3.5719", drill64ths},
	{"5/32 in", "0.156250", "3.9688", drill64ths},
	{"11/64 in", "0.171875", "4.3656", drill64ths},
	{"3/16 in", "0.187500", "4.7625", drill64ths},
	{"13/64 in", "0.203125", "5.1594", drill64ths},
	{"7/32 in", "0.218750", "5.5562", drill64ths},
	{"15/64 in", "0.234375", "5.9531", drill64ths},
	{"1/4 in", "0.250000", "6.3500", drill64ths},
	{"17/64 in", "0.265625", "6.7469", drill64ths},
	{"9/32 in", "0.281250", "7.1437", drill64ths},
	{"19/64 in", "0.296875", "7.5406", drill64ths},
	{"5/16 in", "0.312500", "7.9375", drill64ths},
	{"21/64 in", "0.328125", "8.3344", drill64ths},
	{"11/32 in", "0.343750", "8.7312", drill64ths},
	{"23/64 in", "0.359375", "9.1281", drill64ths},
	{"3/8 in", "0.375000", "9.5250", drill64ths},
	{"25/64 in", "0.390625", "9.9219", drill64ths},
	{"13/32 in", "0.406250", "10.3187", drill64ths},
	{"27/64 in", "0.421875", "10.7156", drill64ths},
	{"7/16 in", "0.437500", "11.1125", drill64ths},
	{"29/64 in", "0.453125", "11.5094", drill64ths},
	{"15/32 in", "0.468750", "11.9062", drill64ths},
	{"31/64 in", "0.484375", "12.3031", drill64ths},
	{"1/2 in", "0.500000", "12.7000", drill64ths},
	{"33/64 in", "0.515625", "13.0969", drill64ths},
	{"17/32 in", "0.531250", "13.4937", drill64ths},
	{"35/64 in", "0.546875", "13.8906", drill64ths},
	{"9/16 in", "0.562500", "14.2875", drill64ths},
	{"37/64 in", "0.578125", "14.6844", drill64ths},
	{"19/32 in", "0.593750", "15.0812", drill64ths},
	{"39/64 in", "0.609375", "15.4781", drill64ths},
	{"5/8 in", "0.625000", "15.8750", drill64ths},
	{"41/64 in", "0.640625", "16.2719", drill64ths},
	{"21/32 in", "0.656250", "16.6687", drill64ths},
	{"43/64 in", "0.671875", "17.0656", drill64ths},
	{"11/16 in", "0.687500", "17.4625", drill64ths},
	{"45/64 in", "0.703125", "17.8594", drill64ths},
	{"23/32 in", "0.718750", "18.2562", drill64ths},
	{"47/64 in", "0.734375", "18.6531", drill64ths},
	{"3/4 in", "0.750000", "19.0500", drill64ths},
	{"49/64 in", "0.765625", "19.4469", drill64ths},
	{"25/32 in", "0.781250", "19.8438", drill64ths},
	{"51/64 in", "0.796875", "20.2406", drill64ths},
	{"13/16 in", "0.812500", "20.6375", drill64ths},
	{"53/64 in", "0.828125", "21.0344", drill64ths},
	{"27/32 in", "0.843750", "21.4312", drill64ths},
	{"55/64 in", "0.859375", "21.8281", drill64ths},
	{"7/8 in", "0.875000", "22.2250", drill64ths},
	{"57/64 in", "0.890625", "22.6219", drill64ths},
	{"29/32 in", "0.906250", "23.0187", drill64ths},
	{"59/64 in", "0.921875", "23.4156", drill64ths},
	{"15/16 in", "0.937500", "23.8125", drill64ths},
	{"61/64 in", "0.953125", "24.2094", drill64ths},
	{"31/32 in", "0.968750", "24.6062", drill64ths},
	{"63/64 in", "0.984375", "25.0031", drill64ths},
	{"1 in", "1.000000", "25.4000", drill64ths},
	{"1 1/32 in", "1.031250", "26.1937", drill64ths},
	{"1 1/16 in", "1.062500", "26.9875", drill64ths},
	{"1 3/32 in", "1.093750", "27.7812", drill64ths},
	{"1 1/8 in", "1.125000", "28.5750", drill64ths},
	{"1 5/32 in", "1.156250", "29.3687", drill64ths},
	{"1 3/16 in", "1.187500", "30.1625", drill64ths},
	{"1 7/32 in", "1.218750", "30.9562", drill64ths},
	{"1 1/4 in", "1.250000", "31.7500", drill64ths},
	{"1 9/32 in", "1.281250", "32.5437", drill64ths},
	{"1 5/16 in", "1.312500", "33.3375", drill64ths},
	{"1 11/32 in", "1.343750", "34.1313", drill64ths},
	{"1 3/8 in", "1.375000", "34.9250", drill64ths},
	{"1 13/32 in", "1.406250", "35.7188", drill64ths},
	{"1 7/16 in", "1.437500", "36.5125", drill64ths},
	{"1 15/32 in", "1.468750", "37.3062", drill64ths},
	{"1 1/2 in", "1.500000", "38.1000", drill64ths},
	{"1 17/32 in", "1.531250", "38.8937", drill64ths},
	{"1 9/16 in", "1.562500", "39.6875", drill64ths},
	{"1 19/32 in", "1.593750", "40.4812", drill64ths},
	{"1 5/8 in", "1.625000", "41.2750", drill64ths},
	{"1 21/32 in", "1.656250", "42.0687", drill64ths},
	{"1 11/16 in", "1.687500", "42.8625", drill64ths},
	{"1 23/32 in", "1.718750", "43.6562", drill64ths},
	{"1 3/4 in", "1.750000", "44.4500", drill64ths},
	{"1 25/32 in", "1.781250", "45.2437", drill64ths},
	{"1 13/16 in", "1.812500", "46.0375", drill64ths},
	{"1 27/32 in", "1.843750", "46.8312", drill64ths},
	{"1 7/8 in", "1.875000", "47.6250", drill64ths},
	{"1 29/32 in", "1.906250", "48.4187", drill64ths},
	{"1 15/16 in", "1.937500", "49.2125", drill64ths},
	{"1 31/32 in", "1.968750", "50.0062", drill64ths},
	{"2 in", "2.000000", "50.8000", drill64ths},
}

// printedMetricDrills are the metric drills, millimetres.
const printedMetricDrills = `
0.2 0.22 0.25 0.28 0.3 0.32 0.35 0.38 0.4 0.42 0.45 0.48 0.5 0.52 0.55 0.58 0.6 0.62 0.65 0.68
0.7 0.72 0.75 0.78 0.8 0.82 0.85 0.88 0.9 0.92 0.95 0.98 1 1.05 1.1 1.15 1.2 1.25 1.3 1.35 1.4
1.45 1.5 1.55 1.6 1.65 1.7 1.75 1.8 1.85 1.9 1.95 2 2.05 2.1 2.15 2.2 2.25 2.3 2.35 2.4 2.45 2.5
2.55 2.6 2.65 2.7 2.75 2.8 2.85 2.9 2.95 3 3.1 3.2 3.3 3.4 3.5 3.6 3.7 3.8 3.9 4 4.1 4.2 4.3 4.4
4.5 4.6 4.7 4.8 4.9 5 5.1 5.2 5.3 5.4 5.5 5.6 5.7 5.8 5.9 6 6.1 6.2 6.3 6.4 6.5 6.6 6.7 6.8 6.9
7 7.1 7.2 7.3 7.4 7.5 7.6 7.7 7.8 7.9 8 8.1 8.2 8.3 8.4 8.5 8.6 8.7 8.8 8.9 9 9.1 9.2 9.3 9.4
9.5 9.6 9.7 9.8 9.9 10 10.1 10.2 10.3 10.4 10.5 10.6 10.7 10.8 10.9 11 11.1 11.2 11.3 11.4 11.5
11.6 11.7 11.8 11.9 12 12.1 12.2 12.3 12.4 12.5 12.6 12.7 12.8 12.9 13 13.1 13.2 13.3 13.4 13.5
13.6 13.7 13.8 13.9 14 14.25 14.5 14.75 15 15.25 15.5 15.75 16 16.25 16.5 16.75 17 17.25 17.5
17.75 18 18.25 18.5 18.75 19 19.25 19.5 19.75 20 20.25 20.5 20.75 21 21.25 21.5 21.75 22 22.25
22.5 22.75 23 23.25 23.5 23.75 24 24.25 24.5 24.75 25
`

func TestDrillsAsPrinted(t *testing.T) {
	for _, p := range printedDrills {
		d, err := FindDrill(p.name)
		if err != nil {
			t.Error(err)
			continue
		}
		figures.Figure{Printed: p.inch, Source: p.source}.Check(t, d.Diameter().Inches())
		figures.Figure{Printed: p.mm, Source: p.source}.Check(t, d.Diameter().Millimetres())
		if d.Name() != p.name {
			t.Errorf("%s is called %s", p.name, d.Name())
		}
		if d.FromMemory() != (p.source == drillMemory) || strings.Contains(d.Source(), "memory") != (p.source == drillMemory) {
			t.Errorf("%s: from memory %v, source %q, printed in %q", p.name, d.FromMemory(), d.Source(), p.source)
		}
	}
	if got := len(Drills(NumberDrill, LetterDrill, FractionDrill)); got != len(printedDrills) {
		t.Errorf("%d drills, %d printed", got, len(printedDrills))
	}
}

func TestMetricDrillsAsPrinted(t *testing.T) {
	printed := strings.Fields(printedMetricDrills)
	all := Drills(MetricDrill)
	if len(all) != len(printed) {
		t.Fatalf("%d metric drills, %d printed", len(all), len(printed))
	}
	for i, mm := range printed {
		d, err := FindDrill(mm + " mm")
		if err != nil {
			t.Error(err)
			continue
		}
		if d != all[i] {
			t.Errorf("drill %d is %v, printed %s mm", i, all[i], mm)
		}
		two, _ := strconv.ParseFloat(mm, 64)
		figures.Figure{Printed: strconv.FormatFloat(two, 'f', 2, 64), Source: drillMetric}.Check(t, d.Diameter().Millimetres())
	}
}
