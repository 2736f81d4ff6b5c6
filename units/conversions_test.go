package units

import (
	"math"
	"math/big"
	"testing"

	"example.com/benchsums/internal/figures"
)

// The sources of the factors. Their figures were recalled and then computed
// again exactly from the definitions, as TestFactorsFromDefinitions does.
const (
	sp811     = "NIST SP 811:2008, Appendix B (from memory)"
	agreement = "international yard and pound agreement, 1959 (from memory)"
	brochure  = "SI Brochure, 9th ed. (from memory)"
	definedAs = "π, to 20 figures"
)

func TestConversions(t *testing.T) {
	for _, c := range []struct {
		text     string // "" for a unit that text never means
		kind     *kind
		constant float64
		per      float64 // the unit of the figure
		digits   string
		source   string
	}{
		// Length
		{"1 in", &lengthKind, float64(Inch), float64(Millimetre), "25.4", agreement},
		{"1 thou", &lengthKind, float64(Thou), float64(Millimetre), "0.0254", sp811},
		{"1 ft", &lengthKind, float64(Foot), float64(Metre), "0.3048", sp811},
		{"1 yd", &lengthKind, float64(Yard), float64(Metre), "0.9144", agreement},
		{"", &lengthKind, float64(USInch1893), float64(Millimetre), "25.400050800101600203", "Mendenhall Order 1893: 1 m = 39.37 in; NIST SP 811:2008, Appendix B (from memory)"},
		{"", &lengthKind, float64(USSurveyFoot), float64(Metre), "0.30480060960121920244", sp811},
		{"", &lengthKind, float64(BritishInch1898), float64(Millimetre), "25.399977896939234083", "Order in Council of 19 May 1898: 1 m = 39.370113 in (from memory)"},
		{"", &lengthKind, float64(BritishInch1922), float64(Millimetre), "25.399956", "Sears, Johnson and Jolly, NPL comparison 1922 (from memory)"},
		// Mass
		{"1 lb", &massKind, float64(Pound), float64(Kilogram), "0.45359237", agreement},
		{"1 oz", &massKind, float64(Ounce), float64(Kilogram), "0.028349523125", sp811},
		{"1 cwt (imp)", &massKind, float64(Hundredweight), float64(Kilogram), "50.80234544", sp811},
		{"1 long ton", &massKind, float64(Ton), float64(Kilogram), "1016.0469088", sp811},
		// Force
		{"1 gn", &accelerationKind, float64(StandardGravity), float64(MetrePerSecondSquared), "9.80665", "3rd CGPM, 1901; SI Brochure, 9th ed. (from memory)"},
		{"1 kgf", &forceKind, float64(KilogramForce), float64(Newton), "9.80665", sp811},
		{"1 lbf", &forceKind, float64(PoundForce), float64(Newton), "4.4482216152605", sp811},
		{"1 ozf", &forceKind, float64(OunceForce), float64(Newton), "0.27801385095378125", sp811},
		{"1 tonf", &forceKind, float64(TonForce), float64(Newton), "9964.01641818352", sp811},
		{"1 pdl", &forceKind, float64(Poundal), float64(Newton), "0.138254954376", sp811},
		// Torque
		{"1 lbf in", &torqueKind, float64(PoundForceInch), float64(NewtonMetre), "0.1129848290276167", sp811},
		{"1 lbf ft", &torqueKind, float64(PoundForceFoot), float64(NewtonMetre), "1.3558179483314004", sp811},
		{"1 ozf in", &torqueKind, float64(OunceForceInch), float64(NewtonMetre), "0.00706155181422604375", sp811},
		{"1 kgf cm", &torqueKind, float64(KilogramForceCentimetre), float64(NewtonMetre), "0.0980665", sp811},
		{"1 kgf m", &torqueKind, float64(KilogramForceMetre), float64(NewtonMetre), "9.80665", sp811},
		{"1 kgf mm", &torqueKind, float64(KilogramForceMillimetre), float64(NewtonMetre), "0.00980665", sp811},
		// Stiffness
		{"1 lbf/in", &stiffnessKind, float64(PoundForcePerInch), float64(NewtonPerMillimetre), "0.17512683524647637795", sp811},
		{"1 kgf/mm", &stiffnessKind, float64(KilogramForcePerMillimetre), float64(NewtonPerMillimetre), "9.80665", sp811},
		// Pressure
		{"1 psi", &pressureKind, float64(PoundPerSquareInch), float64(Pascal), "6894.7572931683613367", sp811},
		{"1 tonf/in²", &pressureKind, float64(TonForcePerSquareInch), float64(Megapascal), "15.444256336697129394", sp811},
		{"1 ksi", &pressureKind, float64(KilopoundPerSquareInch), float64(Megapascal), "6.8947572931683613367", sp811},
		{"1 kgf/cm²", &pressureKind, float64(TechnicalAtmosphere), float64(Pascal), "98066.5", sp811},
		{"1 kgf/mm²", &pressureKind, float64(KilogramForcePerSquareMillimetre), float64(Megapascal), "9.80665", sp811},
		{"1 bar", &pressureKind, float64(Bar), float64(Pascal), "100000", brochure},
		{"1 atm", &pressureKind, float64(Atmosphere), float64(Pascal), "101325", sp811},
		{"1 mmHg", &pressureKind, float64(MillimetreOfMercury), float64(Pascal), "133.322387415", sp811},
		{"1 inHg", &pressureKind, float64(InchOfMercury), float64(Pascal), "3386.388640341", sp811},
		{"1 torr", &pressureKind, float64(Torr), float64(Pascal), "133.32236842105263158", sp811},
		{"1 inH2O", &pressureKind, float64(InchOfWater), float64(Pascal), "249.08891", sp811},
		// Volume
		{"1 in³", &volumeKind, float64(CubicInch), float64(CubicCentimetre), "16.387064", sp811},
		{"1 ft³", &volumeKind, float64(CubicFoot), float64(CubicMetre), "0.028316846592", sp811},
		{"1 cc", &volumeKind, float64(CubicCentimetre), float64(CubicCentimetre), "1", brochure},
		{"1 litre", &volumeKind, float64(Litre), float64(CubicCentimetre), "1000", brochure},
		{"", &volumeKind, float64(Millilitre1901), float64(CubicCentimetre), "1.000028", "NIST SP 811:2008, Appendix B, note on the litre (from memory)"},
		{"1 imp gal", &volumeKind, float64(ImperialGallon), float64(CubicCentimetre), "4546.09", "NIST SP 811:2008, Appendix B; UK Units of Measurement Regulations (from memory)"},
		{"1 imp quart", &volumeKind, float64(ImperialQuart), float64(CubicCentimetre), "1136.5225", sp811},
		{"1 imp pint", &volumeKind, float64(ImperialPint), float64(CubicCentimetre), "568.26125", sp811},
		{"1 imp gill", &volumeKind, float64(ImperialGill), float64(CubicCentimetre), "142.0653125", sp811},
		{"1 imp fl oz", &volumeKind, float64(ImperialFluidOunce), float64(CubicCentimetre), "28.4130625", sp811},
		{"1 US gal", &volumeKind, float64(USGallon), float64(CubicCentimetre), "3785.411784", sp811},
		{"1 US quart", &volumeKind, float64(USQuart), float64(CubicCentimetre), "946.352946", sp811},
		{"1 US pint", &volumeKind, float64(USPint), float64(CubicCentimetre), "473.176473", sp811},
		{"1 US fl oz", &volumeKind, float64(USFluidOunce), float64(CubicCentimetre), "29.5735295625", sp811},
		// Power, energy
		{"1 hp", &powerKind, float64(Horsepower), float64(Watt), "745.69987158227022", sp811},
		{"1 PS", &powerKind, float64(MetricHorsepower), float64(Watt), "735.49875", sp811},
		{"1 ft lbf", &energyKind, float64(FootPound), float64(Joule), "1.3558179483314004", sp811},
		{"1 Btu", &energyKind, float64(BritishThermalUnit), float64(Joule), "1055.05585262", sp811},
		{"1 kcal", &energyKind, float64(Kilocalorie), float64(Joule), "4186.8", sp811},
		// Speed
		{"1 ft/min", &speedKind, float64(FootPerMinute), float64(MetrePerSecond), "0.00508", sp811},
		{"1 ft/s", &speedKind, float64(FootPerSecond), float64(MetrePerSecond), "0.3048", sp811},
		{"1 mile/h", &speedKind, float64(MilePerHour), float64(MetrePerSecond), "0.44704", sp811},
		// Angle
		{"1°", &angleKind, float64(Degree), float64(Radian), "0.017453292519943295769", definedAs},
		{"1′", &angleKind, float64(ArcMinute), float64(Radian), "0.00029088820866572159615", definedAs},
		{"1″", &angleKind, float64(ArcSecond), float64(Radian), "0.0000048481368110953599359", definedAs},
		{"1 gon", &angleKind, float64(Gon), float64(Radian), "0.015707963267948966192", sp811},
		{"1 gon", &angleKind, float64(Gon), float64(Degree), "0.9", sp811},
		{"1 rev", &angleKind, float64(Turn), float64(Radian), "6.2831853071795864769", definedAs},
		{"1 rev/min", &angularSpeedKind, float64(RevolutionPerMinute), float64(RadianPerSecond), "0.10471975511965977462", definedAs},
		{"1 rev/min", &angularSpeedKind, float64(RevolutionPerMinute), float64(DegreePerSecond), "6", sp811},
		// Temperature difference
		{"1 °F", &temperatureDifferenceKind, float64(FahrenheitDifference), float64(KelvinDifference), "0.55555555555555555556", sp811},
		{"1 °C", &temperatureDifferenceKind, float64(KelvinDifference), float64(KelvinDifference), "1", brochure},
	} {
		t.Run(c.kind.name+" "+c.text, func(t *testing.T) {
			ref := figures.Reference{Digits: c.digits, Source: c.source}
			ref.Check(t, c.constant/c.per)
			if c.text == "" {
				return
			}
			v, err := c.kind.parse(c.text)
			if err != nil {
				t.Fatal(err)
			}
			ref.Check(t, v/c.per)
			if v != c.constant {
				t.Errorf("%s: parsed to %.17g, the constant is %.17g", c.text, v, c.constant)
			}
		})
	}
}

// The temperature scales are formulas, not factors.
func TestTemperatureScales(t *testing.T) {
	const (
		fahrenheit = "NIST SP 811:2008, Appendix B: t/°C = (t/°F − 32) × 5/9 (from memory)"
		celsius    = "SI Brochure, 9th ed.: T/K = t/°C + 273.15 (from memory)"
		absolute   = "NIST SP 811:2008, Appendix B: T/K = (t/°F + 459.67) × 5/9 (from memory)"
	)
	for _, f := range []float64{-459.67, -40, 0, 32, 68, 98.6, 212, 1000} {
		want := (f - 32) * 5 / 9
		figures.Near(t, fahrenheit, Fahrenheit(f).Celsius(), want, 1e-12*(math.Abs(want)+273.15))
		figures.Near(t, absolute, Fahrenheit(f).Kelvins(), (f+459.67)*5/9, 1e-12*(f+460))
		figures.Near(t, "and back", Fahrenheit(f).Fahrenheit(), f, 1e-12*(math.Abs(f)+460))
	}
	figures.Reference{Digits: "273.15", Source: celsius}.Check(t, Celsius(0).Kelvins())
	figures.Near(t, fahrenheit, Fahrenheit(32).Celsius(), 0, 1e-12*273.15)
	figures.Reference{Digits: "100", Source: fahrenheit}.Check(t, Fahrenheit(212).Celsius())
	figures.Reference{Digits: "68", Source: fahrenheit}.Check(t, Celsius(20).Fahrenheit())
	figures.Reference{Digits: "255.37222222222222222", Source: absolute}.Check(t, Fahrenheit(0).Kelvins())
	for _, text := range []string{"20 °C", "68 °F", "293.15 K"} {
		v, err := ParseTemperature(text)
		if err != nil {
			t.Fatal(err)
		}
		figures.Reference{Digits: "293.15", Source: celsius}.Check(t, v.Kelvins())
	}
	if d := Celsius(120).Sub(Celsius(20)); d.Kelvins() != 100 || Celsius(20).Add(d) != Celsius(120) {
		t.Errorf("from 20 °C to 120 °C: %v", d)
	}
}

// Every factor that rests on others is computed here from the definitions, in
// exact arithmetic, and must be the float64 nearest to that.
func TestFactorsFromDefinitions(t *testing.T) {
	rat := func(s string) *big.Rat { r, _ := new(big.Rat).SetString(s); return r }
	mul := func(f ...*big.Rat) *big.Rat {
		r := rat("1")
		for _, x := range f {
			r.Mul(r, x)
		}
		return r
	}
	per := func(a, b *big.Rat) *big.Rat { return new(big.Rat).Quo(a, b) }
	inch, lb, g := rat("0.0254"), rat("0.45359237"), rat("9.80665")
	lbf := mul(lb, g)
	in2, in3 := mul(inch, inch), mul(inch, inch, inch)
	impGal, usGal := rat("0.00454609"), mul(rat("231"), in3)
	pi := rat("3.14159265358979323846264338327950288419716939937510582097494")
	for _, c := range []struct {
		name string
		got  float64
		want *big.Rat
	}{
		{"Thou", float64(Thou), mul(inch, rat("0.001"))},
		{"Microinch", float64(Microinch), mul(inch, rat("0.000001"))},
		{"Foot", float64(Foot), mul(inch, rat("12"))},
		{"Yard", float64(Yard), mul(inch, rat("36"))},
		{"USInch1893", float64(USInch1893), per(rat("1"), rat("39.37"))},
		{"BritishInch1898", float64(BritishInch1898), per(rat("1"), rat("39.370113"))},
		{"USSurveyFoot", float64(USSurveyFoot), per(rat("1200"), rat("3937"))},
		{"SquareInch", float64(SquareInch), in2},
		{"CubicInch", float64(CubicInch), in3},
		{"CubicFoot", float64(CubicFoot), mul(in3, rat("1728"))},
		{"ImperialFluidOunce", float64(ImperialFluidOunce), per(impGal, rat("160"))},
		{"ImperialGill", float64(ImperialGill), per(impGal, rat("32"))},
		{"ImperialPint", float64(ImperialPint), per(impGal, rat("8"))},
		{"ImperialQuart", float64(ImperialQuart), per(impGal, rat("4"))},
		{"USFluidOunce", float64(USFluidOunce), per(usGal, rat("128"))},
		{"USPint", float64(USPint), per(usGal, rat("8"))},
		{"USQuart", float64(USQuart), per(usGal, rat("4"))},
		{"USGallon", float64(USGallon), usGal},
		{"Ounce", float64(Ounce), per(lb, rat("16"))},
		{"Hundredweight", float64(Hundredweight), mul(lb, rat("112"))},
		{"Ton", float64(Ton), mul(lb, rat("2240"))},
		{"PoundForce", float64(PoundForce), lbf},
		{"OunceForce", float64(OunceForce), per(lbf, rat("16"))},
		{"TonForce", float64(TonForce), mul(lbf, rat("2240"))},
		{"GramForce", float64(GramForce), mul(g, rat("0.001"))},
		{"Poundal", float64(Poundal), mul(lb, inch, rat("12"))},
		{"PoundForceInch", float64(PoundForceInch), mul(lbf, inch)},
		{"PoundForceFoot", float64(PoundForceFoot), mul(lbf, inch, rat("12"))},
		{"OunceForceInch", float64(OunceForceInch), mul(lbf, inch, rat("0.0625"))},
		{"KilogramForceCentimetre", float64(KilogramForceCentimetre), mul(g, rat("0.01"))},
		{"PoundForcePerInch", float64(PoundForcePerInch), per(lbf, inch)},
		{"PoundPerSquareInch", float64(PoundPerSquareInch), per(lbf, in2)},
		{"KilopoundPerSquareInch", float64(KilopoundPerSquareInch), mul(rat("1000"), per(lbf, in2))},
		{"TonForcePerSquareInch", float64(TonForcePerSquareInch), mul(rat("2240"), per(lbf, in2))},
		{"TechnicalAtmosphere", float64(TechnicalAtmosphere), mul(g, rat("10000"))},
		{"MillimetreOfMercury", float64(MillimetreOfMercury), mul(rat("13595.1"), g, rat("0.001"))},
		{"InchOfWater", float64(InchOfWater), mul(rat("1000"), g, inch)},
		{"Torr", float64(Torr), per(rat("101325"), rat("760"))},
		{"Horsepower", float64(Horsepower), mul(rat("550"), lbf, inch, rat("12"))},
		{"MetricHorsepower", float64(MetricHorsepower), mul(rat("75"), g)},
		{"FootPound", float64(FootPound), mul(lbf, inch, rat("12"))},
		{"BritishThermalUnit", float64(BritishThermalUnit), mul(rat("4186.8"), lb, per(rat("5"), rat("9")))},
		{"MilePerHour", float64(MilePerHour), per(mul(inch, rat("63360")), rat("3600"))},
		{"KilometrePerHour", float64(KilometrePerHour), per(rat("1000"), rat("3600"))},
		{"MetrePerMinute", float64(MetrePerMinute), per(rat("1"), rat("60"))},
		{"FootPerMinute", float64(FootPerMinute), per(mul(inch, rat("12")), rat("60"))},
		{"CubicCentimetrePerMinute", float64(CubicCentimetrePerMinute), per(rat("0.000001"), rat("60"))},
		{"PoundSquareInch", float64(PoundSquareInch), mul(lb, in2)},
		{"FahrenheitDifference", float64(FahrenheitDifference), per(rat("5"), rat("9"))},
		{"PerFahrenheitDegree", float64(PerFahrenheitDegree), per(rat("9"), rat("5"))},
		{"Degree", float64(Degree), per(pi, rat("180"))},
		{"ArcMinute", float64(ArcMinute), per(pi, rat("10800"))},
		{"ArcSecond", float64(ArcSecond), per(pi, rat("648000"))},
		{"Gon", float64(Gon), per(pi, rat("200"))},
		{"Turn", float64(Turn), mul(pi, rat("2"))},
		{"RevolutionPerMinute", float64(RevolutionPerMinute), per(pi, rat("30"))},
		{"RevolutionPerSecond", float64(RevolutionPerSecond), mul(pi, rat("2"))},
		{"DegreePerSecond", float64(DegreePerSecond), per(pi, rat("180"))},
		{"NewtonMillimetrePerRadian", float64(NewtonMillimetrePerRadian), rat("0.001")},
		{"NewtonMillimetrePerDegree", float64(NewtonMillimetrePerDegree), per(rat("0.18"), pi)},
		{"NewtonMetrePerDegree", float64(NewtonMetrePerDegree), per(rat("180"), pi)},
		{"NewtonMetrePerTurn", float64(NewtonMetrePerTurn), per(rat("0.5"), pi)},
		{"NewtonMillimetrePerTurn", float64(NewtonMillimetrePerTurn), per(rat("0.0005"), pi)},
		{"PoundForceInchPerRadian", float64(PoundForceInchPerRadian), mul(lbf, inch)},
		{"PoundForceInchPerDegree", float64(PoundForceInchPerDegree), per(mul(lbf, inch, rat("180")), pi)},
		{"PoundForceInchPerTurn", float64(PoundForceInchPerTurn), per(mul(lbf, inch, rat("0.5")), pi)},
	} {
		if want, _ := c.want.Float64(); c.got != want {
			t.Errorf("%s: %.17g, the definitions give %.17g", c.name, c.got, want)
		}
	}
}
