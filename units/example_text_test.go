package units_test

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"

	"github.com/pelletier/go-toml/v2"

	"example.com/benchsums/units"
)

// Text goes in as people write it and comes out with its unit.
func Example() {
	bore, err := units.ParseLength(`1 3/8"`)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(bore)
	fmt.Printf("%.2f\n", bore)
	fmt.Printf("%.3f in\n", bore.Inches())
	// Output:
	// 34.925 mm
	// 34.92 mm
	// 1.375 in
}

func ExampleParseError() {
	for _, text := range []string{"12.7", "12,7 mm", "1,000 mm", "12 mil", "12 psi", "12.7 mm or so"} {
		_, err := units.ParseLength(text)
		fmt.Println(err)
	}
	_, err := units.ParseLength("12.7")
	var e *units.ParseError
	if errors.As(err, &e) && errors.Is(err, units.ErrNoUnit) {
		fmt.Println("no unit behind byte", e.Pos)
	}
	// Output:
	// "12.7": which unit? write 12.7 mm or 12.7 in or 12.7 thou (character 5)
	// "12,7 mm": a comma: write 12.7, with a point (character 3)
	// "1,000 mm": a comma: write 1.000 if it marks decimals, 1000 if thousands (character 2)
	// "12 mil": mil: write thou for a thousandth of an inch, mm for a millimetre (character 4)
	// "12 psi": psi is a unit of pressure, not of length: write mm, in, thou (character 4)
	// "12.7 mm or so": left over after mm: "or so"; write the length alone (character 9)
	// no unit behind byte 4
}

func ExampleLength() {
	stroke := 60 * units.Millimetre
	gap := 12 * units.Thou
	fmt.Println(stroke, gap)
	fmt.Printf("%.4f in, %.3f mm\n", stroke.Inches(), gap.Millimetres())
	// Output:
	// 60 mm 0.3048 mm
	// 2.3622 in, 0.305 mm
}

func ExampleLength_MarshalText() {
	out, err := json.Marshal(map[string]units.Length{"bore": 35 * units.Millimetre, "drill": 3.0 / 64 * units.Inch})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(string(out))
	// Output: {"bore":"35 mm","drill":"0.046875 in"}
}

func ExampleLength_UnmarshalText() {
	var bore units.Length
	flags := flag.NewFlagSet("sum", flag.ContinueOnError)
	flags.TextVar(&bore, "bore", 35*units.Millimetre, "bore of the cylinder")
	if err := flags.Parse([]string{"-bore", "1 3/8 in"}); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(bore)
	// Output: 34.925 mm
}

// Every verb prints the unit.
func ExampleLength_Format() {
	drop := 4.4217 * units.Millimetre
	fmt.Printf("%v|%.2f|%10.1f|%#v\n", drop, drop, drop, 4.5*units.Metre)
	// Output: 4.4217 mm|4.42 mm|    4.4 mm|4.5*units.Metre
}

func ExampleParseLength() {
	for _, text := range []string{"12.7 mm", "1/2 in", `1 3/16"`, "1-3/16 in", "⅜ in", "10 thou", "7 cm", "5 ft 6 1/2 in"} {
		l, err := units.ParseLength(text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(l)
	}
	// Output:
	// 12.7 mm
	// 12.7 mm
	// 30.1625 mm
	// 30.1625 mm
	// 9.525 mm
	// 0.254 mm
	// 70 mm
	// 1689.1 mm
}

func ExampleAngle() {
	advance := 28 * units.Degree
	sin, cos := advance.Sincos()
	fmt.Printf("%v, sine %.4f, cosine %.4f\n", advance, sin, cos)
	// Output: 28°, sine 0.4695, cosine 0.8829
}

func ExampleAngle_DMS() {
	a := 28.504 * units.Degree
	fmt.Println(a.DMS(), "or", a.DM())
	// Output: 28° 30′ 14″ or 28° 30′
}

func ExampleParseAngle() {
	for _, text := range []string{"35°", "35 deg", "28° 30′", "28d30m", "0.5 rad"} {
		a, err := units.ParseAngle(text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(a)
	}
	// Output:
	// 35°
	// 35°
	// 28.5°
	// 28.5°
	// 28.6479°
}

func ExampleArea() {
	port := 12 * units.SquareMillimetre
	fmt.Printf("%v is %.4f in²\n", port, port.SquareInches())
	// Output: 12 mm² is 0.0186 in²
}

func ExampleParseArea() {
	a, err := units.ParseArea("0.5 sq. in.")
	fmt.Println(a, err)
	// Output: 322.58 mm² <nil>
}

func ExampleVolume() {
	swept := 49 * units.CubicCentimetre
	fmt.Printf("%v is %.2f cu in\n", swept, swept.CubicInches())
	// Output: 49 cm³ is 2.99 cu in
}

func ExampleParseVolume() {
	tank, err := units.ParseVolume("1 1/2 pint (imp)")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f\n", tank)
	_, err = units.ParseVolume("1 1/2 pints")
	fmt.Println(err)
	// Output:
	// 852 cm³
	// "1 1/2 pints": pint: write imp pint (568 cc) or US pint (473 cc) (character 7)
}

func ExampleMass() {
	flywheel := 2*units.Pound + 3*units.Ounce
	fmt.Printf("%.3f kg\n", flywheel.Kilograms())
	// Output: 0.992 kg
}

func ExampleParseMass() {
	m, err := units.ParseMass("2 lb 3 oz")
	fmt.Println(m, err)
	// Output: 992.233 g <nil>
}

func ExampleForce() {
	pull := 5 * units.PoundForce
	fmt.Printf("%.1f, %.2f kgf\n", pull, pull.KilogramsForce())
	// Output: 22.2 N, 2.27 kgf
}

func ExampleParseForce() {
	f, err := units.ParseForce("2.5 kgf")
	fmt.Printf("%.2f %v\n", f, err)
	// Output: 24.52 N <nil>
}

func ExampleTorque() {
	nut := 12 * units.PoundForceFoot
	fmt.Printf("%.1f, %.2f kgf m\n", nut, nut.KilogramForceMetres())
	// Output: 16.3 N m, 1.66 kgf m
}

func ExampleParseTorque() {
	for _, text := range []string{"60 N mm", "8.5 oz-in", "2.5 kgf cm", "12 ft-lbs"} {
		q, err := units.ParseTorque(text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(q)
	}
	// Output:
	// 60 N mm
	// 60.0232 N mm
	// 245.166 N mm
	// 16.2698 N m
}

func ExamplePressure() {
	tyre, steel := 32*units.PoundPerSquareInch, 30*units.TonForcePerSquareInch
	fmt.Printf("%.2f bar, %.0f\n", tyre.Bars(), steel)
	// Output: 2.21 bar, 463 MPa
}

func ExampleParsePressure() {
	p, err := units.ParsePressure("28 tons per sq. in.")
	fmt.Printf("%.0f %v\n", p, err)
	// Output: 432 MPa <nil>
}

func ExampleSpeed() {
	piston := 1200 * units.FootPerMinute
	fmt.Printf("%.2f\n", piston)
	// Output: 6.10 m/s
}

func ExampleParseSpeed() {
	v, err := units.ParseSpeed("1200 ft/min")
	fmt.Printf("%.2f %v\n", v, err)
	// Output: 6.10 m/s <nil>
}

func ExampleAngularSpeed() {
	n := 3000 * units.RevolutionPerMinute
	fmt.Printf("%v, %.1f rad/s, %.0f° in a second\n", n, n.RadiansPerSecond(), n.DegreesPerSecond())
	// Output: 3000 rev/min, 314.2 rad/s, 18000° in a second
}

func ExampleParseAngularSpeed() {
	for _, text := range []string{"3000 rpm", "3000 min⁻¹", "50 rev/s"} {
		n, err := units.ParseAngularSpeed(text)
		fmt.Println(n, err)
	}
	// Output:
	// 3000 rev/min <nil>
	// 3000 rev/min <nil>
	// 3000 rev/min <nil>
}

func ExampleAcceleration() {
	fmt.Printf("%.3f\n", 1*units.StandardGravity)
	// Output: 9.807 m/s²
}

func ExampleParseAcceleration() {
	a, err := units.ParseAcceleration("32.2 ft/s²")
	fmt.Printf("%.2f %v\n", a, err)
	// Output: 9.81 m/s² <nil>
}

func ExampleAngularAcceleration() {
	fmt.Println(50 * units.RadianPerSecondSquared)
	// Output: 50 rad/s²
}

func ExampleParseAngularAcceleration() {
	a, err := units.ParseAngularAcceleration("50 rad/s^2")
	fmt.Println(a, err)
	// Output: 50 rad/s² <nil>
}

func ExampleTemperature() {
	shop, oven := units.Celsius(20), units.Fahrenheit(392)
	fmt.Printf("%.0f, %.0f, %v warmer\n", shop, oven, oven.Sub(shop))
	fmt.Printf("%.0f °F\n", shop.Add(180*units.KelvinDifference).Fahrenheit())
	// Output:
	// 20 °C, 200 °C, 180 K warmer
	// 392 °F
}

func ExampleCelsius() {
	fmt.Printf("%.0f °F\n", units.Celsius(100).Fahrenheit())
	// Output: 212 °F
}

func ExampleFahrenheit() {
	fmt.Println(units.Fahrenheit(212))
	// Output: 100 °C
}

func ExampleParseTemperature() {
	t, err := units.ParseTemperature("68 °F")
	fmt.Println(t, err)
	// Output: 20 °C <nil>
}

func ExampleTemperatureDifference() {
	fmt.Println(9 * units.FahrenheitDifference)
	// Output: 5 K
}

func ExampleParseTemperatureDifference() {
	d, err := units.ParseTemperatureDifference("180 °F")
	fmt.Println(d, err)
	// Output: 100 K <nil>
}

func ExampleStiffness() {
	spring := 30 * units.PoundForcePerInch
	fmt.Printf("%.2f\n", spring)
	// Output: 5.25 N/mm
}

func ExampleParseStiffness() {
	k, err := units.ParseStiffness("30 lb/in")
	fmt.Printf("%.2f %v\n", k, err)
	// Output: 5.25 N/mm <nil>
}

func ExampleTorsionalStiffness() {
	spring := 40 * units.NewtonMillimetrePerDegree
	fmt.Printf("%.1f, %.2f lbf in a turn\n", spring, spring.PoundForceInchesPerTurn())
	// Output: 40.0 N mm/°, 127.45 lbf in a turn
}

func ExampleParseTorsionalStiffness() {
	k, err := units.ParseTorsionalStiffness("40 N mm per degree")
	fmt.Println(k, err)
	// Output: 40 N mm/° <nil>
}

func ExampleEnergy() {
	fmt.Printf("%.1f\n", 10*units.FootPound)
	// Output: 13.6 J
}

func ExampleParseEnergy() {
	e, err := units.ParseEnergy("10 ft lbf")
	fmt.Printf("%.1f %v\n", e, err)
	// Output: 13.6 J <nil>
}

func ExamplePower() {
	p := 1.5 * units.Horsepower
	fmt.Printf("%.2f, %.2f PS\n", p, p.MetricHorsepower())
	// Output: 1.12 kW, 1.52 PS
}

func ExampleParsePower() {
	p, err := units.ParsePower("1 1/2 h.p.")
	fmt.Printf("%.2f %v\n", p, err)
	// Output: 1.12 kW <nil>
}

func ExampleMomentOfInertia() {
	j := 3 * units.PoundSquareInch
	fmt.Printf("%.0f\n", j)
	// Output: 878 kg mm²
}

func ExampleParseMomentOfInertia() {
	j, err := units.ParseMomentOfInertia("3 lb in²")
	fmt.Printf("%.0f %v\n", j, err)
	// Output: 878 kg mm² <nil>
}

func ExampleDensity() {
	fmt.Println(7.85 * units.GramPerCubicCentimetre)
	// Output: 7850 kg/m³
}

func ExampleParseDensity() {
	d, err := units.ParseDensity("7.85 g/cc")
	fmt.Println(d, err)
	// Output: 7850 kg/m³ <nil>
}

func ExampleFlow() {
	fmt.Println(6 * units.CubicCentimetrePerMinute)
	// Output: 0.1 cm³/s
}

func ExampleParseFlow() {
	f, err := units.ParseFlow("6 cc/min")
	fmt.Println(f, err)
	// Output: 0.1 cm³/s <nil>
}

func ExampleExpansion() {
	steel := 11.5 * units.MicrometrePerMetreKelvin
	fmt.Printf("%v, %.2e per °F\n", steel, steel.PerFahrenheitDegree())
	// Output: 11.5 µm/m/K, 6.39e-06 per °F
}

func ExampleParseExpansion() {
	e, err := units.ParseExpansion("11.5e-6 /°C")
	fmt.Println(e, err)
	// Output: 11.5 µm/m/K <nil>
}

func ExampleTimeArea() {
	fmt.Println(0.012 * units.SecondSquareMillimetre)
	// Output: 0.012 s mm²
}

func ExampleParseTimeArea() {
	a, err := units.ParseTimeArea("0.012 s mm²")
	fmt.Println(a, err)
	// Output: 0.012 s mm² <nil>
}

func ExampleSpecificTimeArea() {
	perSweptVolume := units.SpecificTimeArea(0.012 * units.SecondSquareMillimetre / units.TimeArea(49*units.CubicCentimetre))
	fmt.Printf("%.6f\n", perSweptVolume)
	// Output: 0.000245 s/m
}

func ExampleParseSpecificTimeArea() {
	a, err := units.ParseSpecificTimeArea("0.00025 s/m")
	fmt.Println(a, err)
	// Output: 0.00025 s/m <nil>
}

func ExampleRatio() {
	friction := 15 * units.Percent
	fmt.Println(friction)
	// Output: 0.15
}

func ExampleParseRatio() {
	for _, text := range []string{"9.5:1", "15 %", "3/4"} {
		r, err := units.ParseRatio(text)
		fmt.Println(r, err)
	}
	// Output:
	// 9.5 <nil>
	// 0.15 <nil>
	// 0.75 <nil>
}

func ExampleFraction() {
	f := units.Fraction{Whole: 1, Numerator: 7, Denominator: 16, Rest: 1.9 * units.Thou}
	fmt.Println(f)
	fmt.Println(f.Nearest())
	// Output:
	// 1 7/16 in + 1.9 thou
	// 1 7/16 in
}

func ExampleLength_Fraction() {
	f, err := (12 * units.Millimetre).Fraction(64)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(f)
	// Output: 15/32 in + 3.7 thou
}

// A bare number in a file is refused where it would be taken for metres.
func ExampleReading_UnmarshalText() {
	var job struct {
		Stroke units.Reading[units.Length]
		Rim    units.Reading[units.Length]
	}
	if err := toml.Unmarshal([]byte(`
stroke = "60 mm ± 0.1 mm"
rim = "152.0(3) mm"
`), &job); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(job.Stroke)
	fmt.Println(job.Rim)
	fmt.Println(toml.Unmarshal([]byte(`stroke = 60`), &job) != nil)
	// Output:
	// 60.00 mm (u 0.06 mm)
	// 152.0 mm (u 0.3 mm)
	// true
}
