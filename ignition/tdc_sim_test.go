package ignition_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/benchsums/geometry"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// simulated is an engine whose truth is known, read by someone whose errors are
// as stated.
type simulated struct {
	crank    geometry.Crank
	rim      ignition.Rim
	tdc      units.Length // rim figure at top dead centre
	slack    units.Length
	zero     units.Length // dial figure with the piston pushed up to the top
	lean     units.Angle
	setting  units.Length // standard deviation of setting the rim
	reading  units.Length // and of reading the dial, before rounding to 0.01 mm
	falling  bool         // rim figures fall, turning forward
	lessDown bool         // dial figures shrink as the piston goes down
	beside   units.Length // how far the middle of the rim lies beside that of the shaft
	phase    units.Angle  // and where
}

// turnedTo is the crank angle with a place of the rim at the pointer, that far
// along it from the one at top dead centre.
func (e simulated) turnedTo(along units.Length) (theta units.Angle) {
	theta = e.rim.AngleOfArc(along)
	for range 20 {
		theta = e.rim.AngleOfArc(along - e.swing(theta))
	}
	return theta
}

// swing is how far the eccentric rim is out at a crank angle, against top dead
// centre.
func (e simulated) swing(theta units.Angle) units.Length {
	return e.beside * units.Length(math.Sin(float64(theta+e.phase))-math.Sin(float64(e.phase)))
}

// series turns the engine one way through the figures and reads the dial. The
// piston is carried along between two limits a slack apart, as a loose piston
// is: nothing here is taken from the code under test but the crank's drop.
func (e simulated) series(rng *rand.Rand, name string, turned ignition.Turned, figures ...float64) ignition.Series {
	s := ignition.Series{Name: name, Turned: turned}
	way, last := 1.0, math.Inf(-1)
	if turned == ignition.Backward {
		way = -1
	}
	sign := 1.0
	if e.falling {
		sign = -1
	}
	piston := units.Length(math.Inf(1)) // comes from below, pushed
	carry := func(theta units.Angle) {
		x := e.crank.Drop(theta)
		piston = min(max(piston, x-e.slack/2), x+e.slack/2)
	}
	for _, f := range figures {
		rim := units.Length(f)*units.Millimetre + units.Length(rng.NormFloat64())*e.setting
		theta := e.turnedTo(units.Length(sign) * (rim - e.tdc))
		if along := way * float64(theta); along < last {
			panic("figures that go back")
		} else if last < 0 && along > 0 {
			carry(0) // through the top
		} else {
			last = along
		}
		last = way * float64(theta)
		carry(theta)
		dial := float64(e.zero) + float64(piston-e.slack/2)/math.Cos(float64(e.lean)) + rng.NormFloat64()*float64(e.reading)
		if e.lessDown {
			dial = float64(e.zero) - (dial - float64(e.zero))
		}
		s.Readings = append(s.Readings, ignition.DialReading{
			Rim:  units.Length(f) * units.Millimetre,
			Dial: units.Length(math.Round(dial*1e5) / 1e5),
		})
	}
	return s
}

func every(from, to, step float64) (f []float64) {
	n := int(math.Round(math.Abs(to-from) / step))
	for i := range n + 1 {
		f = append(f, from+(to-from)*float64(i)/float64(n))
	}
	return f
}

// coverage counts how often the truth lies inside the interval stated.
type coverage struct {
	n, within1, within2 int
	sum, sumSquares     float64
}

func (c *coverage) add(r units.Reading[units.Length], truth units.Length) {
	z := float64((r.Value - truth) / r.Std)
	k1, k2 := 1.0, 1.959964
	if r.DoF > 0 {
		t := distuv.StudentsT{Sigma: 1, Nu: r.DoF}
		k1, k2 = t.Quantile(0.841345), t.Quantile(0.975)
	}
	c.n++
	if math.Abs(z) <= k1 {
		c.within1++
	}
	if math.Abs(z) <= k2 {
		c.within2++
	}
	c.sum += z
	c.sumSquares += z * z
}

// check fails t unless the intervals hold the truth about as often as they say:
// not less, within four standard deviations of the count, and not so often that
// they would be of no use.
func (c *coverage) check(t *testing.T) {
	t.Helper()
	n := float64(c.n)
	low := func(p float64) float64 { return p - 4*math.Sqrt(p*(1-p)/n) }
	high := func(p float64) float64 { return p + 4*math.Sqrt(p*(1-p)/n) }
	p1, p2 := float64(c.within1)/n, float64(c.within2)/n
	t.Logf("%d engines: 68 %% interval holds %.1f %%, 95 %% interval %.1f %%, mean of z %.3f, of z² %.2f", c.n, 100*p1, 100*p2, c.sum/n, c.sumSquares/n)
	if p1 < low(0.683) || p1 > max(0.85, high(0.683)) {
		t.Errorf("68 %% interval holds the truth %.1f %% of the time", 100*p1)
	}
	if p2 < low(0.95) || p2 > max(0.998, high(0.95)) {
		t.Errorf("95 %% interval holds the truth %.1f %% of the time", 100*p2)
	}
	if bias := c.sum / n; math.Abs(bias) > 4/math.Sqrt(n) {
		t.Errorf("biased by %.2f of the standard uncertainty", bias)
	}
}

// drawn is an engine whose sizes differ from those in the setup as much as the
// setup says they may.
func drawn(rng *rand.Rand, s ignition.Setup) simulated {
	vary := func(r units.Reading[units.Length]) units.Length {
		return r.Value + units.Length(rng.NormFloat64())*r.Std
	}
	crank, err := geometry.NewCrank(vary(s.Stroke), vary(s.Rod))
	if err == nil {
		crank, err = crank.WithOffsetSameStroke(vary(s.Offset))
	}
	if err != nil {
		panic(err)
	}
	rim, err := ignition.NewRim(s.Rim.Diameter() + units.Length(rng.NormFloat64())*s.RimStd)
	if err != nil {
		panic(err)
	}
	return simulated{
		crank: crank, rim: rim, tdc: units.Length(150+50*rng.Float64()) * units.Millimetre,
		slack: units.Length(0.05+0.1*rng.Float64()) * units.Millimetre, zero: units.Length(rng.NormFloat64()) * units.Millimetre,
		lean:    s.Lean.Value + units.Angle(rng.NormFloat64())*s.Lean.Std,
		setting: s.SettingStd, reading: 0.0095 * units.Millimetre, // and its rounding makes 0.01 mm
	}
}

func bothWays(rng *rand.Rand, e simulated) []ignition.Series {
	return []ignition.Series{
		e.series(rng, "A", ignition.Forward, every(60, 290, 10)...),
		e.series(rng, "B", ignition.Backward, every(290, 60, 10)...),
	}
}

func forSeeds(t *testing.T, n int, f func(t *testing.T, rng *rand.Rand, seed int)) {
	t.Helper()
	for seed := range n {
		f(t, rand.New(rand.NewPCG(uint64(seed), 1927)), seed)
	}
}

// fewer is how many simulated engines a short run makes do with; the bounds
// widen with it.
func fewer(n int) int {
	if testing.Short() {
		return max(20, n/5)
	}
	return n
}

func describeTDC(f ignition.TDC) string {
	return fmt.Sprintf("%v, slack %v, %v", f.Position, f.Slack, f.Slips)
}
