package ignition

import (
	"math"
	"testing"
	"time"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

const rpm = units.RevolutionPerMinute

func TestTextbookBurns(t *testing.T) {
	const (
		rajput51 = "Rajput, A Textbook of Internal Combustion Engines, Example 5.1, p. 218"
		rajput52 = "Rajput, A Textbook of Internal Combustion Engines, Example 5.2, p. 219"
		mathur51 = "Mathur & Sharma, Internal Combustion Engine, Example 5.1, p. 178"
	)
	// Bore 10.2 cm, plug 0.6 cm off the middle, flame 15.8 m/s, lag 6.5° at 1200 rev/min.
	flame := must(FlameTime(10.2/2*units.Centimetre+0.6*units.Centimetre, 15.8*units.MetrePerSecond))(t)
	whole := flame + (1200 * rpm).Time(6.5*deg)
	figures.Figure{Printed: "4.51", Source: rajput51}.Check(t, whole.Seconds()*1e3)
	figures.Figure{Printed: "12.47", Source: rajput51}.Check(t, ((1200 * rpm).Angle(whole) - 20*deg).Degrees())

	// Delay 22° and burning 17° at full speed, ending 13° after the top; any full speed will do.
	const full = 3000 * rpm
	b := must(NewBurn(22*deg, 17*deg, full))(t)
	figures.Figure{Printed: "15", Source: rajput52}.Check(t, b.Advance(13*deg, full/2).Degrees())
	figures.Near(t, "full speed", b.Advance(13*deg, full).Degrees(), 26, 1e-4)

	// Spark 25° before, delay over 3° before, burning over 12° after the top.
	b = must(NewBurn(25*deg-3*deg, 3*deg+12*deg, full))(t)
	figures.Figure{Printed: "14", Source: mathur51}.Check(t, b.Advance(12*deg, full/2).Degrees())
	figures.Near(t, "ends", b.Ends(25*deg, full).Degrees(), 12, 1e-4) // the delay is held to a nanosecond
}

func TestAdvancePerHundredTurns(t *testing.T) {
	const jumbo = "maker's literature of the Jumbo farm engine, in Hercules Engine News (G. Karch), Gas Engine Magazine, February 1995"
	r := PeriodRule{8 * deg}
	figures.Figure{Printed: "40", Source: jumbo}.Check(t, r.Advance(500*rpm).Degrees())
	figures.Figure{Printed: "28", Source: jumbo}.Check(t, r.Advance(350*rpm).Degrees())
	// 13.3333… ms to the nanosecond that a time.Duration holds.
	figures.Figure{Printed: "13.333333", Source: "computed with 50 digits: 8° per 100 rev/min as a time, to the nanosecond"}.Check(t, r.Time().Seconds()*1e3)
	for _, speed := range []units.AngularSpeed{50 * rpm, 350 * rpm, 900 * rpm} {
		figures.Near(t, "the same time at every speed", speed.Time(r.Advance(speed)).Seconds(), r.Time().Seconds(), 1e-9)
	}
}

func TestBurnKeepsTimeAndDegrees(t *testing.T) {
	b := must(NewBurn(10*deg, 30*deg, 600*rpm))(t)
	for _, tc := range []struct {
		speed units.AngularSpeed
		want  float64
	}{{300 * rpm, 5 + 30 - 8}, {600 * rpm, 10 + 30 - 8}, {1200 * rpm, 20 + 30 - 8}} {
		got := b.Advance(8*deg, tc.speed)
		figures.Near(t, tc.speed.String(), got.Degrees(), tc.want, 1e-4)
		figures.Near(t, "and back", b.Ends(got, tc.speed).Degrees(), 8, 1e-12)
	}
}

func TestBurnRefusals(t *testing.T) {
	for _, tc := range []struct {
		delay, burn units.Angle
		speed       units.AngularSpeed
		text        string
	}{
		{1, 1, 0, "speed 0 rev/min: want more than 0 rev/min"},
		{1, 1, units.AngularSpeed(math.Inf(1)), "want more than 0 rev/min"},
		{-1 * deg, 1, 100 * rpm, "delay -1°"},
		{1, units.Angle(math.NaN()), 100 * rpm, "want 0° or more"},
	} {
		_, err := NewBurn(tc.delay, tc.burn, tc.speed)
		refused(t, "burn", err, tc.text)
	}
	_, err := FlameTime(1*mm, 0)
	refused(t, "standing flame", err, "want a distance of 0 mm or more and a speed of more than 0 m/s")
	_, err = FlameTime(-1*mm, 1)
	refused(t, "negative way", err, "flame over -1 mm")
	if got := must(FlameTime(0, 1))(t); got != time.Duration(0) {
		t.Errorf("no way: %v", got)
	}
}
