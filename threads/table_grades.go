package threads

import "example.com/benchsums/units"

// A gradeRow is a line of the tables of strength. A figure that the source does
// not have is a gap.
type gradeRow struct {
	name                  string
	over, upTo            units.Length   // major diameter
	tensile, yield, proof float64        // least
	unit                  units.Pressure // of the three
	source                string
	memory                bool
	note                  string
}

// anySize is an end of the range of sizes where the source names none.
const anySize = 1000 * units.Metre

const (
	iso898 = "ISO 898-1:1999 and EN ISO 898-1:2013, public reprints"
	j429   = "SAE J429 (boltdepot.com; henrysautowarehouse.com)"
	cw2020 = "metric equivalent in Classics World, Dec 2020; the tons from memory"
)

// ISO 898-1: tensile, yield and proof in megapascals. SAE J429: in kilopounds
// per square inch. British letters: least tensile in British tons per square
// inch.
var grades = [...]gradeRow{
	{"4.6", 0, anySize, 400, 240, 225, units.Megapascal, iso898, false, ""},
	{"4.8", 0, anySize, 420, 340, 310, units.Megapascal, iso898, false, ""},
	{"5.6", 0, anySize, 500, 300, 280, units.Megapascal, iso898, false, ""},
	{"5.8", 0, anySize, 520, 420, 380, units.Megapascal, iso898, false, ""},
	{"6.8", 0, anySize, 600, 480, 440, units.Megapascal, iso898, false, ""},
	{"8.8", 0, 16 * units.Millimetre, 800, 640, 580, units.Megapascal, iso898, false, ""},
	{"8.8", 16 * units.Millimetre, anySize, 830, 660, 600, units.Megapascal, iso898, false, ""},
	{"9.8", 0, anySize, 900, 720, 650, units.Megapascal, iso898, false, ""},
	{"10.9", 0, anySize, 1040, 940, 830, units.Megapascal, iso898, false, ""},
	{"12.9", 0, anySize, 1220, 1100, 970, units.Megapascal, iso898, false, ""},

	{"SAE 1", quarterInch, 1.5 * units.Inch, 60, 36, 33, units.KilopoundPerSquareInch, "SAE J429, from memory", true, "no mark on the head"},
	{"SAE 2", quarterInch, 0.75 * units.Inch, 74, 57, 55, units.KilopoundPerSquareInch, j429, false, "no mark on the head"},
	{"SAE 2", 0.75 * units.Inch, 1.5 * units.Inch, 60, 36, 33, units.KilopoundPerSquareInch, j429, false, "no mark on the head"},
	{"SAE 5", quarterInch, 1 * units.Inch, 120, 92, 85, units.KilopoundPerSquareInch, j429, false, "three radial lines on the head"},
	{"SAE 5", 1 * units.Inch, 1.5 * units.Inch, 105, 81, 74, units.KilopoundPerSquareInch, j429, false, "three radial lines on the head"},
	{"SAE 8", quarterInch, 1.5 * units.Inch, 150, 130, 120, units.KilopoundPerSquareInch, j429, false, "six radial lines on the head"},

	{"British P", 0, anySize, 35, gap, gap, units.TonForcePerSquareInch, cw2020, true, "about 5.6 or 5.8"},
	{"British R", 0, anySize, 45, gap, gap, units.TonForcePerSquareInch, "BS 1083 and BS 1768, from memory", true, "between 5.8 and 8.8"},
	{"British S", 0, anySize, 50, gap, gap, units.TonForcePerSquareInch, cw2020, true,
		"lower end of 8.8; mgparts.co.nz has 120000 lbf/in², 53.6 tons: the weaker figure stands"},
	{"British T", 0, anySize, 55, gap, gap, units.TonForcePerSquareInch, cw2020, true,
		"upper end of 8.8; mgparts.co.nz has 150000 lbf/in², 67 tons, and likens it to SAE 8: the weaker figure stands"},
	{"British V", 0, anySize, 65, gap, gap, units.TonForcePerSquareInch, cw2020, true, "like 10.9"},
	{"British X", 0, anySize, 75, gap, gap, units.TonForcePerSquareInch, "Classics World, Dec 2020", false, "75 to 85 tons; the band of 12.9"},
	{"British Y", 0, anySize, 80, gap, gap, units.TonForcePerSquareInch, "Classics World, Dec 2020", false, "80 to 90 tons; the band of 12.9"},
}

// quarterInch is just under 1/4 in, which the SAE grades include.
const quarterInch = 0.2499 * units.Inch
