package geometry

import (
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const (
	agrawal   = "Agrawal & Agrawal, Basic Mechanical Engineering, ch. 14 Example 7, p. 309"
	bhatt     = "Bhatt & Mehta, Elements of Mechanical Engineering, Example "
	rajput    = "Rajput, A Textbook of Internal Combustion Engines, Example "
	kates     = "Kates, Diesel and High Compression Gas Engines, ch. 4 Example "
	pulkrabek = "Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, Example 2-1" + fromMemory
)

func mustCylinder(t *testing.T, bore, stroke, rod units.Length) Cylinder {
	t.Helper()
	c, err := NewCylinder(bore, mustCrank(t, stroke, rod, 0))
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// must is for sums that are not expected to be refused.
func must[Q any](t *testing.T) func(Q, error) Q {
	return func(q Q, err error) Q {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
}

func TestWorked_volumes(t *testing.T) {
	const rpm, m, cm, cc = units.RevolutionPerMinute, units.Metre, units.Centimetre, units.CubicCentimetre
	const longRod = 10 * units.Metre // where the book gives no rod
	volume, length, ratio := must[units.Volume](t), must[units.Length](t), must[units.Ratio](t)

	v6 := mustCylinder(t, squareBore(t), squareBore(t), 17.2*cm)
	v6Clearance := volume(v6.ClearanceForRatio(9))
	other := mustCylinder(t, squareBore(t), squareBore(t), 16.6*cm)
	gupta24 := mustCylinder(t, 0.2*m, 0.3*m, longRod)
	gupta24Clearance := volume(gupta24.ClearanceForRatio(16))
	bhatt15 := mustCylinder(t, 0.21*m, 0.3*m, longRod)
	bhatt15Clearance := volume(bhatt15.ClearanceForRatio(16))
	gupta114 := mustCylinder(t, 8*cm, 10*cm, 1e9*m)
	atClosing := gupta114.SweptBelow(gupta114.Crank().Drop(180*units.Degree - 60*units.Degree))
	geometric := func(c Cylinder, clearance units.Volume) float64 {
		both, err := c.Compression(clearance, c.Crank().Stroke())
		if err != nil {
			t.Fatal(err)
		}
		return float64(both.Geometric)
	}

	for _, tc := range []struct {
		name   string
		got    float64
		figure figures.Figure
	}{
		{"square bore, cm", squareBore(t).Centimetres(), figures.Figure{Printed: "8.6", Source: gupta + "16.1, p. 519" + companion}},
		{"mean piston speed, m/s", v6.Crank().MeanPistonSpeed(3000 * rpm).MetresPerSecond(), figures.Figure{Printed: "8.6", Source: gupta + "16.1, p. 519" + companion}},
		{"clearance, cm³", v6Clearance.CubicCentimetres(), figures.Figure{Printed: "62.5", Source: gupta + "16.1, p. 519" + companion}},
		{"volume at an angle, cm³", v6.VolumeAt(20*units.Degree, v6Clearance).CubicCentimetres(), figures.Figure{Printed: "81.24", Source: gupta + "16.1, p. 519" + companion}},
		{"stroke of a mean piston speed, cm", length(StrokeOfMeanPistonSpeed(9, 3000*rpm)).Centimetres(), figures.Figure{Printed: "9.0", Source: gupta + "11.3, p. 368" + companion}},
		{"trapped volume, m³", (atClosing + volume(ClearanceForRatio(atClosing, 8))).CubicMetres(), figures.Figure{Printed: "0.00043", Source: gupta + "11.4, p. 369" + companion}},
		{"ratio from two pressures", float64(ratio(RatioFromPressures(IndicatorPoint{0.05, 1.2 * units.Bar}, IndicatorPoint{0.75, 4.8 * units.Bar}, 1.3))), figures.Figure{Printed: "9.5", Source: gupta + "2.2, p. 46" + companion}},
		{"clearance, m³", gupta24Clearance.CubicMetres(), figures.Figure{Printed: "0.00063", Source: gupta + "2.4, p. 48" + companion}},
		{"total volume, m³", gupta24.VolumeAt(180*units.Degree, gupta24Clearance).CubicMetres(), figures.Figure{Printed: "0.01005", Source: gupta + "2.4, p. 48" + companion}},
		{"volume ratio at cut-off", float64(ratio(VolumeRatioAt(8*units.Percent, 16))), figures.Figure{Printed: "2.2", Source: gupta + "2.4, p. 48" + companion}},
		{"compression ratio", geometric(mustCylinder(t, 200*mm, 450*mm, longRod), 2*units.Litre), figures.Figure{Printed: "8.07", Source: agrawal + companion}},
		{"clearance, m³", bhatt15Clearance.CubicMetres(), figures.Figure{Printed: "0.000693", Source: bhatt + "6.15, p. 30" + companion}},
		{"total volume, m³", (bhatt15.Swept() + bhatt15Clearance).CubicMetres(), figures.Figure{Printed: "0.0111", Source: bhatt + "6.15, p. 30" + companion}},
		{"total volume, m³", (942.5*cc + volume(ClearanceForRatio(942.5*cc, 6.5))).CubicMetres(), figures.Figure{Printed: "0.00111", Source: bhatt + "6.13, p. 28" + companion}},
		{"compression ratio", geometric(mustCylinder(t, 0.25*m, 0.375*m, longRod), 0.00263*units.CubicMetre), figures.Figure{Printed: "8", Source: rajput + "3.8, p. 96" + companion}},
		{"bore, mm", length(BoreOfSwept(units.CubicMetre/300, 1.5)).Millimetres(), figures.Figure{Printed: "141.44", Source: rajput + "20.2, p. 750" + companion}},
		{"piston area, in²", Circle(3 * units.Inch).SquareInches(), figures.Figure{Printed: "7.07", Source: kates + "1, p. 61" + companion}},
		{"mean piston speed, ft/min", mustCrank(t, 4.5*units.Inch, longRod, 0).MeanPistonSpeed(1600 * rpm).FeetPerMinute(), figures.Figure{Printed: "1200", Source: kates + "3, p. 63" + companion}},
		{"square bore, cm", other.Bore().Centimetres(), figures.Figure{Printed: "8.60", Source: pulkrabek}},
		{"mean piston speed, m/s", other.Crank().MeanPistonSpeed(3600 * rpm).MetresPerSecond(), figures.Figure{Printed: "10.32", Source: pulkrabek}},
		{"clearance, cm³", volume(other.ClearanceForRatio(9.5)).CubicCentimetres(), figures.Figure{Printed: "59", Source: pulkrabek}},
		{"rod in throws", other.Crank().RodRatio(), figures.Figure{Printed: "3.86", Source: pulkrabek}},
	} {
		t.Run(tc.name, func(t *testing.T) { tc.figure.Check(t, tc.got) })
	}
}
