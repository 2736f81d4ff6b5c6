package units

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
)

// A spelling is a text and the SI value it stands for.
type spelling struct {
	text string
	want float64
}

func checkSpellings(t *testing.T, k *kind, heading string, spellings []spelling) {
	t.Run(heading, func(t *testing.T) {
		for _, s := range spellings {
			got, err := k.parse(s.text)
			if err != nil {
				t.Errorf("%v", err)
				continue
			}
			if got != s.want {
				t.Errorf("%q: got %.17g, want %.17g", s.text, got, s.want)
			}
		}
	})
}

func TestParseLength(t *testing.T) {
	const mm, in, ft, thou = float64(Millimetre), float64(Inch), float64(Foot), float64(Thou)
	check := func(heading string, s ...spelling) { checkSpellings(t, &lengthKind, heading, s) }
	check("plain",
		spelling{"12.7 mm", 12.7 * mm}, spelling{"12.7mm", 12.7 * mm}, spelling{"12. mm", 12 * mm}, spelling{".5 mm", 0.5 * mm},
		spelling{"0 mm", 0}, spelling{"007 mm", 7 * mm}, spelling{"1e-3 mm", 1e-3 * mm}, spelling{"1E3 mm", 1000 * mm}, spelling{"2.5e+1mm", 25 * mm})
	check("sign",
		spelling{"-12.7 mm", -12.7 * mm}, spelling{"+12.7 mm", 12.7 * mm}, spelling{"−12.7 mm", -12.7 * mm},
		spelling{"–12.7 mm", -12.7 * mm}, spelling{"- 12.7 mm", -12.7 * mm}, spelling{"-1 3/16 in", -1.1875 * in})
	check("fraction",
		spelling{"1/2 in", 0.5 * in}, spelling{`3/8"`, 0.375 * in}, spelling{"⅜ in", 0.375 * in}, spelling{`⅜"`, 0.375 * in},
		spelling{"1 3/16 in", 1.1875 * in}, spelling{`1 3/16"`, 1.1875 * in}, spelling{"1-3/16 in", 1.1875 * in}, spelling{"1‑3/16 in", 1.1875 * in},
		spelling{"1⅜ in", 1.375 * in}, spelling{"1 ⅜ in", 1.375 * in}, spelling{"1-⅜ in", 1.375 * in}, spelling{"3⁄8 in", 0.375 * in},
		spelling{"9/8 in", 1.125 * in}, spelling{"17/64 in", 17.0 / 64 * in}, spelling{"½in", 0.5 * in}, spelling{"¾ in", 0.75 * in},
		spelling{"¼ in", 0.25 * in}, spelling{"⅛ in", 0.125 * in}, spelling{"⅝ in", 0.625 * in}, spelling{"⅞ in", 0.875 * in},
		spelling{"⅓ in", 1.0 / 3 * in}, spelling{"⅔ in", 2.0 / 3 * in}, spelling{"⅙ in", 1.0 / 6 * in}, spelling{"⅚ in", 5.0 / 6 * in},
		spelling{"⅕ in", 0.2 * in}, spelling{"⅖ in", 0.4 * in}, spelling{"⅗ in", 0.6 * in}, spelling{"⅘ in", 0.8 * in},
		spelling{"⅐ in", 1.0 / 7 * in}, spelling{"⅑ in", 1.0 / 9 * in}, spelling{"⅒ in", 0.1 * in}, spelling{"1/2 mm", 0.5 * mm})
	check("each unit",
		spelling{"3 m", 3}, spelling{"7 cm", 7 * float64(Centimetre)}, spelling{"12 µm", 12 * float64(Micrometre)}, spelling{"12 μm", 12 * float64(Micrometre)},
		spelling{"12 um", 12 * float64(Micrometre)}, spelling{"12 microns", 12 * float64(Micrometre)}, spelling{"0.010 in", 0.010 * in}, spelling{"10 thou", 10 * thou},
		spelling{"10 thousandths of an inch", 10 * thou}, spelling{"32 µin", 32 * float64(Microinch)}, spelling{"3 ft", 3 * ft}, spelling{"3'", 3 * ft},
		spelling{"2 yd", 2 * float64(Yard)}, spelling{"3 inches", 3 * in}, spelling{"1 inch", in}, spelling{"1 foot", ft}, spelling{"2 feet", 2 * ft},
		spelling{"5 millimetres", 5 * mm}, spelling{"5 millimeters", 5 * mm}, spelling{"5 metres", 5}, spelling{"5 MM", 5 * mm}, spelling{"5 m.m.", 5 * mm}, spelling{"5 ins.", 5 * in})
	check("ladder",
		spelling{"5 ft 6 in", 5.5 * ft}, spelling{`5' 6"`, 5.5 * ft}, spelling{`5'6 1/2"`, 66.5 * in}, spelling{"5 ft 6½ in", 66.5 * in},
		spelling{"-5 ft 6 in", -5.5 * ft}, spelling{"5 feet 6.25 inches", 66.25 * in}, spelling{"5 ft 0 in", 5 * ft})
	check("spacing",
		spelling{" 12.7 mm ", 12.7 * mm}, spelling{"12.7\u00a0mm", 12.7 * mm}, spelling{"12.7\u202fmm", 12.7 * mm}, spelling{"12.7\u2009mm", 12.7 * mm},
		spelling{"12.7\tmm\n", 12.7 * mm}, spelling{"1\u00a03/16 in", 1.1875 * in}, spelling{"12.7   mm", 12.7 * mm}, spelling{"12.7\u2007mm", 12.7 * mm})
}

func TestParseAngle(t *testing.T) {
	const deg, arcmin, arcsec = float64(Degree), float64(ArcMinute), float64(ArcSecond)
	check := func(heading string, s ...spelling) { checkSpellings(t, &angleKind, heading, s) }
	check("plain", spelling{"28°", 28 * deg}, spelling{"28.5 °", 28.5 * deg}, spelling{"35 deg", 35 * deg}, spelling{"35deg", 35 * deg},
		spelling{"35 degrees", 35 * deg}, spelling{"28 º", 28 * deg}, spelling{"28 ˚", 28 * deg}, spelling{"28d", 28 * deg})
	check("each unit", spelling{"0.5 rad", 0.5}, spelling{"2 radians", 2}, spelling{"30'", 30 * arcmin}, spelling{"30 arcmin", 30 * arcmin}, spelling{"30 min", 30 * arcmin},
		spelling{"15\"", 15 * arcsec}, spelling{"15 arcsec", 15 * arcsec}, spelling{"15 arc seconds", 15 * arcsec}, spelling{"100 gon", 100 * float64(Gon)}, spelling{"100 grad", 100 * float64(Gon)},
		spelling{"2 turns", 2 * float64(Turn)}, spelling{"1 revolution", float64(Turn)}, spelling{"1/2 rev", 0.5 * float64(Turn)})
	check("ladder", spelling{"28° 30′", 28.5 * deg}, spelling{"28 deg 30'", 28.5 * deg}, spelling{"28d30m", 28.5 * deg}, spelling{"28°30'", 28.5 * deg},
		spelling{"28° 30′ 36″", (28*3600 + 30*60 + 36.0) * arcsec}, spelling{"28d30m36s", (28*3600 + 30*60 + 36.0) * arcsec}, spelling{"28° 36″", (28*3600 + 36.0) * arcsec}, spelling{"28 degrees 30 minutes", 28.5 * deg},
		spelling{"0° 30′", 0.5 * deg}, spelling{"28° 7.5′", 28.125 * deg})
	check("sign", spelling{"-28° 30′", -28.5 * deg}, spelling{"−0° 30′", -0.5 * deg}, spelling{"+28°", 28 * deg})
}

// Each unit of the other kinds in the ways it is written.
func TestParseEachUnit(t *testing.T) {
	for _, c := range []struct {
		kind  *kind
		want  float64
		texts string // separated by semicolons
	}{
		{&areaKind, 3 * float64(SquareMillimetre), "3 mm²; 3 mm2; 3 sq mm; 3 mm^2; 3 sq. mm; 3 square millimetres"},
		{&areaKind, 3 * float64(SquareCentimetre), "3 cm²; 3 sq cm; 3 square centimetres"},
		{&areaKind, 3 * float64(SquareInch), "3 in²; 3 in^2; 3 sq in; 3 sq. in.; 3 sq.in.; 3 square inches; 3 SQ IN"},
		{&areaKind, 3, "3 m²; 3 m2; 3 square metres"},
		{&volumeKind, 49 * float64(CubicCentimetre), "49 cc; 49 cm³; 49 c.c.; 49 ccs; 49 cubic centimetres; 49 cu cm; 49 ccm"},
		{&volumeKind, 49 * float64(Millilitre), "49 ml; 49 mL; 49 millilitres"},
		{&volumeKind, 3 * float64(CubicInch), "3 cu in; 3 in³; 3 cu. in.; 3 cubic inches; 3 cu.in."},
		{&volumeKind, 3 * float64(CubicFoot), "3 ft³; 3 cu ft; 3 cubic feet"},
		{&volumeKind, 3 * float64(CubicMillimetre), "3 mm³; 3 cu mm"},
		{&volumeKind, 3, "3 m³; 3 cubic metres"},
		{&volumeKind, 2 * float64(Litre), "2 l; 2 L; 2 litres; 2 liters; 2 dm³; 2 ltr"},
		{&volumeKind, 1.5 * float64(ImperialPint), "1 1/2 pint (imp); 1½ imp pint; 1.5 imperial pints; 1.5 UK pt; 1-1/2 pints (imperial); 1.5 British pints"},
		{&volumeKind, 1.5 * float64(USPint), "1 1/2 pint (US); 1½ US pint; 1.5 US pints; 1.5 U.S. pt; 1.5 American pints; 1.5 US liquid pints"},
		{&volumeKind, 2 * float64(ImperialFluidOunce), "2 imp fl oz; 2 fl oz (imp); 2 fl. oz. (imp); 2 fluid ounces (UK); 2 imp fl-oz"},
		{&volumeKind, 2 * float64(USFluidOunce), "2 US fl oz; 2 fl oz (US); 2 us fluid ounces"},
		{&volumeKind, 2 * float64(ImperialQuart), "2 imp quart; 2 qt (imp)"},
		{&volumeKind, 2 * float64(USQuart), "2 US quart; 2 US qt"},
		{&volumeKind, 2 * float64(ImperialGallon), "2 imp gal; 2 gallons (imp); 2 UK gal"},
		{&volumeKind, 2 * float64(USGallon), "2 US gal; 2 gallons (US)"},
		{&volumeKind, 2 * float64(ImperialGill), "2 imp gill; 2 gills (imp)"},
		{&massKind, 2 * float64(Kilogram), "2 kg; 2 KG; 2 kilos; 2 kilograms; 2 kgs"},
		{&massKind, 2 * float64(Gram), "2 g; 2 gm; 2 grams; 2 grammes"},
		{&massKind, 2 * float64(Pound), "2 lb; 2 lbs; 2 lb.; 2 pounds"},
		{&massKind, 2 * float64(Ounce), "2 oz; 2 oz.; 2 ounces"},
		{&massKind, 35 * float64(Ounce), "2 lb 3 oz; 2lb 3oz; 2 pounds 3 ounces"},
		{&massKind, 2 * float64(Hundredweight), "2 cwt (imp); 2 imp cwt; 2 British hundredweight"},
		{&massKind, 2 * float64(Ton), "2 tons (imp); 2 long tons"},
		{&forceKind, 5, "5 N; 5 newtons; 5 n"},
		{&forceKind, 5 * float64(Kilonewton), "5 kN; 5 kilonewtons"},
		{&forceKind, 5 * float64(PoundForce), "5 lbf; 5 lb; 5 pounds force; 5 pound-force; 5 lbs"},
		{&forceKind, 5 * float64(OunceForce), "5 ozf; 5 oz; 5 ounces"},
		{&forceKind, 5 * float64(KilogramForce), "5 kgf; 5 kp; 5 kg; 5 kilopond; 5 kilogram-force"},
		{&forceKind, 5 * float64(GramForce), "5 gf; 5 pond; 5 g"},
		{&forceKind, 5 * float64(TonForce), "5 tonf; 5 tonf (imp); 5 imp tons force"},
		{&forceKind, 5 * float64(Poundal), "5 pdl; 5 poundals"},
		{&torqueKind, 60 * float64(NewtonMillimetre), "60 N mm; 60 Nmm; 60 N·mm; 60 N*mm; 60 N-mm; 60 N.mm; 60 N×mm; 60 newton millimetres"},
		{&torqueKind, 60, "60 N m; 60 Nm; 60 N·m; 60 N⋅m; 60 newton metres"},
		{&torqueKind, 60 * float64(NewtonCentimetre), "60 N cm; 60 Ncm"},
		{&torqueKind, 5 * float64(OunceForceInch), "5 oz in; 5 oz-in; 5 ozf in; 5 ounce inches; 5 inch ounces; 5 in oz; 5 oz.in."},
		{&torqueKind, 5 * float64(PoundForceInch), "5 lbf in; 5 lb in; 5 in lb; 5 in-lbs; 5 in.lbs; 5 inch pounds; 5 lbf·in; 5 pound-force inches; 5 in.lb."},
		{&torqueKind, 5 * float64(PoundForceFoot), "5 lbf ft; 5 lb ft; 5 ft lb; 5 ft-lbs; 5 foot pounds; 5 ft.lbs; 5 ft lbf"},
		{&torqueKind, 2.5 * float64(KilogramForceCentimetre), "2.5 kgf cm; 2.5 kg cm; 2.5 kgf·cm; 2.5 cm kg; 2.5 kgcm; 2.5 kp cm"},
		{&torqueKind, 2.5 * float64(KilogramForceMetre), "2.5 kgf m; 2.5 kgm; 2.5 mkg; 2.5 m-kg; 2.5 kpm"},
		{&torqueKind, 2.5 * float64(KilogramForceMillimetre), "2.5 kgf mm; 2.5 kg mm"},
		{&pressureKind, 14.7 * float64(PoundPerSquareInch), "14.7 psi; 14.7 p.s.i.; 14.7 lbf/in²; 14.7 lb/in2; 14.7 lb/sq in; 14.7 lb/sq.in.; 14.7 lbs per sq. in.; 14.7 pounds per square inch; 14.7 lbf in⁻²"},
		{&pressureKind, 30 * float64(TonForcePerSquareInch), "30 tonf/in²; 30 tons/sq in; 30 tons per sq. in.; 30 tsi; 30 ton/in^2; 30 tonf (imp)/in²"},
		{&pressureKind, 5 * float64(Megapascal), "5 MPa; 5 mpa; 5 N/mm²; 5 N/mm2; 5 N mm-2; 5 megapascals"},
		{&pressureKind, 5 * float64(Kilopascal), "5 kPa; 5 kN/m²"},
		{&pressureKind, 5 * float64(Gigapascal), "5 GPa; 5 kN/mm²"},
		{&pressureKind, 5, "5 Pa; 5 N/m²; 5 pascals"},
		{&pressureKind, 5 * float64(Bar), "5 bar; 5 bars"},
		{&pressureKind, 5 * float64(Atmosphere), "5 atm; 5 atmospheres"},
		{&pressureKind, 5 * float64(TechnicalAtmosphere), "5 kgf/cm²; 5 kg/cm2; 5 kp/cm²; 5 kg per sq cm; 5 at"},
		{&pressureKind, 5 * float64(KilogramForcePerSquareMillimetre), "5 kgf/mm²; 5 kg/mm2"},
		{&pressureKind, 5 * float64(KilopoundPerSquareInch), "5 ksi; 5 kpsi"},
		{&pressureKind, 5 * float64(MillimetreOfMercury), "5 mmHg; 5 mm Hg"},
		{&pressureKind, 5 * float64(InchOfMercury), "5 inHg; 5 in. Hg; 5 inches of mercury"},
		{&pressureKind, 5 * float64(InchOfWater), "5 inH2O; 5 in. w.g.; 5 inches of water; 5 in H₂O"},
		{&pressureKind, 5 * float64(Torr), "5 torr; 5 Torr"},
		{&speedKind, 5, "5 m/s; 5 metres per second; 5 m s⁻¹; 5 m s^-1; 5 m/sec"},
		{&speedKind, 5 * float64(FootPerMinute), "5 ft/min; 5 fpm; 5 feet per minute; 5 f.p.m."},
		{&speedKind, 5 * float64(FootPerSecond), "5 ft/s; 5 fps; 5 feet per second"},
		{&speedKind, 5 * float64(InchPerSecond), "5 in/s; 5 inches per second"},
		{&speedKind, 5 * float64(MetrePerMinute), "5 m/min; 5 metres per minute"},
		{&speedKind, 5 * float64(KilometrePerHour), "5 km/h; 5 kph; 5 km per hour"},
		{&speedKind, 5 * float64(MilePerHour), "5 mile/h; 5 mph; 5 miles per hour; 5 m.p.h."},
		{&angularSpeedKind, 3000 * float64(RevolutionPerMinute), "3000 rev/min; 3000 rpm; 3000 r.p.m.; 3000 RPM; 3000 r/min; 3000 revs per minute; 3000 turns a minute; 3000 1/min; 3000/min; 3000 min⁻¹; 3000 min-1; 3000 rev min^-1"},
		{&angularSpeedKind, 5 * float64(RevolutionPerSecond), "5 rev/s; 5 rps; 5 revolutions per second"},
		{&angularSpeedKind, 5, "5 rad/s; 5 rad s⁻¹; 5 radians per second"},
		{&angularSpeedKind, 5 * float64(DegreePerSecond), "5 °/s; 5 deg/s; 5 degrees per second"},
		{&accelerationKind, 5, "5 m/s²; 5 m/s2; 5 m/s^2; 5 m s⁻²; 5 m s-2"},
		{&accelerationKind, 5 * float64(FootPerSecondSquared), "5 ft/s²; 5 ft/s2"},
		{&accelerationKind, 5 * float64(StandardGravity), "5 gn; 5 g"},
		{&angularAccelerationKind, 5, "5 rad/s²; 5 rad s⁻²"},
		{&temperatureDifferenceKind, 5, "5 K; 5 °C; 5 degrees C; 5 C°; 5 kelvin"},
		{&temperatureDifferenceKind, 9 * float64(FahrenheitDifference), "9 °F; 9 deg F; 9 F°"},
		{&stiffnessKind, 5 * float64(NewtonPerMillimetre), "5 N/mm; 5 newtons per millimetre"},
		{&stiffnessKind, 5, "5 N/m"},
		{&stiffnessKind, 5 * float64(PoundForcePerInch), "5 lbf/in; 5 lb/in; 5 lbs per inch; 5 pounds per inch"},
		{&stiffnessKind, 5 * float64(KilogramForcePerMillimetre), "5 kgf/mm; 5 kg/mm"},
		{&torsionalStiffnessKind, 5, "5 N m/rad; 5 Nm/rad"},
		{&torsionalStiffnessKind, 5 * float64(NewtonMillimetrePerRadian), "5 N mm/rad"},
		{&torsionalStiffnessKind, 5 * float64(NewtonMillimetrePerDegree), "5 N mm/°; 5 Nmm/deg; 5 N·mm per degree"},
		{&torsionalStiffnessKind, 5 * float64(NewtonMetrePerDegree), "5 N m/°; 5 N m/deg"},
		{&torsionalStiffnessKind, 5 * float64(NewtonMetrePerTurn), "5 N m/rev; 5 N m per turn"},
		{&torsionalStiffnessKind, 5 * float64(NewtonMillimetrePerTurn), "5 N mm/rev; 5 N mm/turn"},
		{&torsionalStiffnessKind, 5 * float64(PoundForceInchPerRadian), "5 lbf in/rad"},
		{&torsionalStiffnessKind, 5 * float64(PoundForceInchPerDegree), "5 lbf in/°; 5 in-lb/deg; 5 inch pounds per degree"},
		{&torsionalStiffnessKind, 5 * float64(PoundForceInchPerTurn), "5 lbf in/rev; 5 lb in/turn"},
		{&energyKind, 5, "5 J; 5 joules"},
		{&energyKind, 5 * float64(FootPound), "5 ft lbf; 5 ft lb; 5 ft-lbs; 5 foot-pounds"},
		{&energyKind, 5 * float64(BritishThermalUnit), "5 Btu; 5 BTU; 5 B.T.U."},
		{&energyKind, 5 * float64(Kilocalorie), "5 kcal; 5 kilocalories"},
		{&powerKind, 5, "5 W; 5 watts"},
		{&powerKind, 5 * float64(Kilowatt), "5 kW; 5 kilowatts"},
		{&powerKind, 5 * float64(Horsepower), "5 hp; 5 HP; 5 h.p.; 5 bhp; 5 b.h.p.; 5 horsepower"},
		{&powerKind, 5 * float64(MetricHorsepower), "5 PS; 5 CV; 5 ch; 5 pk"},
		{&inertiaKind, 5, "5 kg m²; 5 kg·m²; 5 kgm2"},
		{&inertiaKind, 5 * float64(KilogramSquareMillimetre), "5 kg mm²"},
		{&inertiaKind, 5 * float64(GramSquareCentimetre), "5 g cm²"},
		{&inertiaKind, 5 * float64(PoundSquareInch), "5 lb in²; 5 lb-in²; 5 lb sq in"},
		{&densityKind, 5, "5 kg/m³; 5 kg/m3; 5 kg m⁻³"},
		{&densityKind, 5 * float64(GramPerCubicCentimetre), "5 g/cm³; 5 g/cc; 5 g/ml; 5 kg/l"},
		{&flowKind, 5 * float64(CubicCentimetrePerSecond), "5 cc/s; 5 cm³/s; 5 ml/s; 5 cc/sec"},
		{&flowKind, 5 * float64(CubicCentimetrePerMinute), "5 cc/min; 5 cm³/min; 5 ml per minute"},
		{&flowKind, 5, "5 m³/s"},
		{&expansionKind, 11.5 * float64(MicrometrePerMetreKelvin), "11.5 µm/m/K; 11.5 µm/(m·K); 11.5 µm/m/°C; 11.5 ppm/K; 11.5 µm m⁻¹ K⁻¹"},
		{&expansionKind, 11.5e-6, "11.5e-6/K; 11.5e-6 /K; 11.5e-6 1/K; 11.5e-6 K⁻¹; 11.5e-6 K-1; 11.5e-6 per °C; 11.5e-6/degC"},
		{&expansionKind, 6.4e-6 * float64(PerFahrenheitDegree), "6.4e-6/°F; 6.4e-6 per degree F; 6.4e-6 per deg F"},
		{&expansionKind, 6.4 * float64(MicroinchPerInchFahrenheitDegree), "6.4 µin/in/°F; 6.4 ppm/°F"},
		{&timeAreaKind, 5 * float64(SecondSquareMillimetre), "5 s mm²; 5 s·mm²"},
		{&timeAreaKind, 5, "5 s m²"},
		{&specificTimeAreaKind, 5, "5 s/m; 5 sec/m"},
		{&ratioKind, 9.5, "9.5; 9.5:1; 9.5 : 1; 9.5 to 1; +9.5; 9 1/2; 9½"},
		{&ratioKind, 10 * float64(Percent), "10 %; 10%; 10 % ; 10 per cent; 10 percent"},
		{&temperatureKind, float64(Celsius(20)), "20 °C; 20°C; 20 C; 20 deg C; 20 degC; 20 degrees C; 20 degrees Celsius; 20 celsius; 20 ºC; 20 centigrade; 20 deg. C"},
		{&temperatureKind, float64(Fahrenheit(68)), "68 °F; 68 F; 68 deg F; 68 degrees fahrenheit"},
		{&temperatureKind, 293.15, "293.15 K; 293.15 kelvin"},
	} {
		for text := range strings.SplitSeq(c.texts, ";") {
			text = strings.TrimSpace(text)
			got, err := c.kind.parse(text)
			if err != nil {
				t.Errorf("%s: %v", c.kind.name, err)
			} else if got != c.want {
				t.Errorf("%s %q: got %.17g, want %.17g", c.kind.name, text, got, c.want)
			}
		}
	}
}

// What is refused: the kind of refusal, the place and the words.
func TestParseRefuses(t *testing.T) {
	for _, c := range []struct {
		kind *kind
		text string
		err  error
		pos  int
		msg  string
	}{
		// no unit
		{&lengthKind, "12.7", ErrNoUnit, 4, "which unit? write 12.7 mm or 12.7 in or 12.7 thou"},
		{&lengthKind, "1 3/16", ErrNoUnit, 6, "which unit? write 1 3/16 mm or 1 3/16 in or 1 3/16 thou"},
		{&angleKind, "28", ErrNoUnit, 2, "which unit? write 28° or 28 deg or 28 rad"},
		{&angleKind, "28° 30", ErrNoUnit, 7, "which unit has 30? write it behind the number"},
		{&lengthKind, "5' 6 1/2", ErrNoUnit, 8, "which unit has 6 1/2? write it behind the number"},
		// two readings
		{&volumeKind, "1 pint", ErrAmbiguous, 2, "pint: write imp pint (568 cc) or US pint (473 cc)"},
		{&volumeKind, "2 pts", ErrAmbiguous, 2, "pint: write imp pint (568 cc) or US pint (473 cc)"},
		{&volumeKind, "1 gallon", ErrAmbiguous, 2, "gallon: write imp gal (4.55 l) or US gal (3.79 l)"},
		{&volumeKind, "1 quart", ErrAmbiguous, 2, "quart: write imp quart (1137 cc) or US quart (946 cc)"},
		{&volumeKind, "1 fl. oz.", ErrAmbiguous, 2, "fluid ounce: write imp fl oz (28.4 cc) or US fl oz (29.6 cc)"},
		{&volumeKind, "1 gill (US)", ErrAmbiguous, 2, "gill: write imp gill (142 cc); for an American one write 4 US fl oz"},
		{&lengthKind, "12 mil", ErrAmbiguous, 3, "mil: write thou for a thousandth of an inch, mm for a millimetre"},
		{&lengthKind, "3 lines", ErrAmbiguous, 2, "line: the English line is 1/12 in, the French one 2.256 mm; write it in mm or in"},
		{&lengthKind, "1,000 mm", ErrAmbiguous, 1, "a comma: write 1.000 if it marks decimals, 1000 if thousands"},
		{&massKind, "1 ton", ErrAmbiguous, 2, "ton: the British one is 2240 lb (imp ton), the American one 2000 lb, the tonne 1000 kg; write it in lb or kg"},
		{&massKind, "1 cwt", ErrAmbiguous, 2, "cwt: the British one is 112 lb (imp cwt), the American one 100 lb; write it in lb"},
		{&forceKind, "5 tons", ErrAmbiguous, 2, "ton: write tonf for the British 2240 lbf, or give it in lbf"},
		{&pressureKind, "5 mPa", ErrAmbiguous, 2, "mPa is a millipascal, a thousand-millionth of an MPa: write MPa or Pa"},
		{&temperatureKind, "20°", ErrAmbiguous, 2, "degrees: write °C or °F"},
		{&angleKind, "28 m", ErrAmbiguous, 3, "m: write 30' or 30 arcmin for minutes of arc"},
		{&angleKind, "28 sec", ErrAmbiguous, 3, `seconds of arc are written 30" or 30 arcsec`},
		// a comma
		{&lengthKind, "12,7 mm", ErrSyntax, 2, "a comma: write 12.7, with a point"},
		{&lengthKind, "-12,75 mm", ErrSyntax, 3, "a comma: write -12.75, with a point"},
		{&lengthKind, ",5 mm", ErrSyntax, 0, "a comma: write 0.5, with a point and a nought in front"},
		{&lengthKind, "1.234,5 mm", ErrSyntax, 5, "a comma: write a point for decimals and no separator for thousands"},
		{&lengthKind, "12 , 7 mm", ErrSyntax, 3, "a comma: write a point for decimals and no separator for thousands"},
		// unknown units
		{&lengthKind, "12 furlongs", ErrUnknownUnit, 3, `"furlongs" is no unit of length known here: write mm, in, thou`},
		{&lengthKind, "12 psi", ErrUnknownUnit, 3, "psi is a unit of pressure, not of length: write mm, in, thou"},
		{&angleKind, "20 °C", ErrUnknownUnit, 3, "°C is a unit of temperature, not of angle: write °, deg, rad"},
		{&ratioKind, "1 mm", ErrUnknownUnit, 2, "mm is a unit of length, not of number: write nothing behind it, %, :1"},
		{&ratioKind, "1:50", ErrUnknownUnit, 1, `":50" is no unit of number known here: write nothing behind it, %, :1`},
		{&volumeKind, "1 imp us pint", ErrUnknownUnit, 2, `"imp us pint" is no unit of volume known here: write cc, cu in, l, imp pint, US pint`},
		{&volumeKind, "5 cubic", ErrUnknownUnit, 2, `"cubic" is no unit of volume known here: write cc, cu in, l, imp pint, US pint`},
		{&lengthKind, "12 \u200bmm", ErrUnknownUnit, 3, `"\u200bmm" is no unit of length known here: write mm, in, thou`},
		{&lengthKind, "12 " + strings.Repeat("m", 70), ErrUnknownUnit, 3, `"` + strings.Repeat("m", 70) + `" is no unit of length known here: write mm, in, thou`},
		// something left over
		{&lengthKind, "12.7 mm junk", ErrTrailing, 8, `left over after mm: "junk"; write the length alone`},
		{&lengthKind, "12.7 mm, about", ErrTrailing, 7, `left over after mm: ", about"; write the length alone`},
		{&lengthKind, "12.7 mm 5", ErrTrailing, 8, `left over after mm: "5"; write the length alone`},
		{&lengthKind, "12.7 mm)", ErrTrailing, 7, `left over after mm: ")"; write the length alone`},
		{&lengthKind, "12.7 mm -", ErrTrailing, 8, `left over after mm: "-"; write the length alone`},
		{&lengthKind, "5 ft 6 in tall", ErrTrailing, 10, `left over after in: "tall"; write the length alone`},
		{&forceKind, "12 N5", ErrTrailing, 4, `left over after N: "5"; write the force alone`},
		{&torqueKind, "5 N m/rad", ErrTrailing, 5, `left over after N m: "/rad"; write the torque alone`},
		// no number and a unit
		{&lengthKind, "", ErrSyntax, 0, "empty: want a number and a unit (mm, in, thou)"},
		{&lengthKind, " \t", ErrSyntax, 2, "empty: want a number and a unit (mm, in, thou)"},
		{&lengthKind, "mm", ErrSyntax, 0, "want a number first, then the unit (mm, in, thou)"},
		{&lengthKind, "-", ErrSyntax, 1, "no number: want a number and a unit (mm, in, thou)"},
		{&lengthKind, "12-10 mm", ErrSyntax, 2, "a second number: want one number, then the unit (mm, in, thou)"},
		{&lengthKind, "1 - 3/16 in", ErrSyntax, 2, "a second number: want one number, then the unit (mm, in, thou)"},
		{&forceKind, "12-10 N", ErrSyntax, 2, "a second number: want one number, then the unit (N, lbf, kgf)"},
		{&lengthKind, "1.5 3/16 in", ErrSyntax, 4, "a second number: want one number, then the unit (mm, in, thou)"},
		{&lengthKind, "1/0 in", ErrSyntax, 0, "1/0: a fraction over nothing"},
		{&lengthKind, "2 1/0 in", ErrSyntax, 2, "1/0: a fraction over nothing"},
		{&lengthKind, "1 9/8 in", ErrSyntax, 2, "9/8 after a whole number: want a fraction below 1"},
		{&lengthKind, "3/ in", ErrSyntax, 1, `"/ in" after a number: neither a fraction nor a unit of length`},
		{&lengthKind, "5 ft 13 in", ErrSyntax, 5, "13: want less than 12 here; carry it into the larger unit"},
		{&lengthKind, "5 in 6 ft", ErrSyntax, 7, `"ft" cannot follow here: write the larger unit first, each once`},
		{&lengthKind, "5 ft 6 ft", ErrSyntax, 7, `"ft" cannot follow here: write the larger unit first, each once`},
		{&lengthKind, "5 ft -6 in", ErrSyntax, 5, "a sign inside the quantity: write one sign in front"},
		{&lengthKind, "5.5 ft 6 in", ErrSyntax, 7, "only the last number may have a fraction"},
		{&angleKind, "28° 60′", ErrSyntax, 5, "60: want less than 60 here; carry it into the larger unit"},
		{&massKind, "2 lb 16 oz", ErrSyntax, 5, "16: want less than 16 here; carry it into the larger unit"},
		// not finite
		{&lengthKind, "NaN mm", ErrNotFinite, 0, "want a finite number and a unit (mm, in, thou)"},
		{&lengthKind, "inf", ErrNotFinite, 0, "want a finite number and a unit (mm, in, thou)"},
		{&lengthKind, "-Infinity mm", ErrNotFinite, 1, "want a finite number and a unit (mm, in, thou)"},
		{&lengthKind, "∞ mm", ErrNotFinite, 0, "want a finite number and a unit (mm, in, thou)"},
		{&lengthKind, "1e400 mm", ErrNotFinite, 0, "1e400: too large to hold"},
		{&forceKind, "1e308 kN", ErrNotFinite, 0, "too large to hold"},
		{&temperatureKind, "-300 °C", ErrDomain, 0, "below absolute zero, -273.15 °C or -459.67 °F"},
	} {
		_, err := c.kind.parse(c.text)
		var e *ParseError
		switch {
		case err == nil:
			t.Errorf("%s %q was read", c.kind.name, c.text)
		case !errors.As(err, &e) || !errors.Is(err, c.err):
			t.Errorf("%q: %v, want a ParseError for %v", c.text, err, c.err)
		case e.Pos != c.pos || e.Msg != c.msg || e.Text != c.text || e.Kind != c.kind.name:
			t.Errorf("%q at %d: %s\nwant at %d: %s", e.Text, e.Pos, e.Msg, c.pos, c.msg)
		}
	}
}

// The place is counted in characters.
func TestParseErrorText(t *testing.T) {
	_, err := ParseAngle("28° 30′ junk")
	want := `"28° 30′ junk": left over after ′: "junk"; write the angle alone (character 9)`
	if err == nil || err.Error() != want {
		t.Errorf("got %v\nwant %s", err, want)
	}
	if (&ParseError{Text: "µ", Pos: 99}).Error() != `"µ":  (character 2)` {
		t.Error("a place beyond the text is not its end")
	}
}

// A mixed number is rounded once: 5 2/3 is 17/3.
func TestMixedNumberIsRoundedOnce(t *testing.T) {
	for whole := range 40 {
		for _, den := range []int{3, 5, 6, 7, 10, 64} {
			for num := 1; num < den; num++ {
				text := fmt.Sprintf("%d %d/%d", whole, num, den)
				want := float64(whole*den+num) / float64(den)
				if got, err := ratioKind.parse(text); err != nil || got != want {
					t.Errorf("%s: %.17g, %v, want %.17g", text, got, err, want)
				}
			}
		}
	}
}

// Small numbers do not trouble the parser.
func TestParseUnderflow(t *testing.T) {
	if v, err := ParseLength("1e-400 mm"); err != nil || v != 0 {
		t.Errorf("1e-400 mm: %v, %v", v, err)
	}
	if v, err := ParseLength("-0 mm"); err != nil || v != 0 || !math.Signbit(float64(v)) {
		t.Errorf("-0 mm: %v, %v", v, err)
	}
}
