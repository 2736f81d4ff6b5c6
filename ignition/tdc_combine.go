package ignition

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"

	"example.com/benchsums/units"
)

// A Way is one way of finding top dead centre and what came of it.
type Way struct {
	Name     string
	Position units.Reading[units.Length]
	// Readings names what the way rests on. Ways with the same name here (a
	// bisection and a fit of the same dial readings) are not independent, and only
	// the surest of them counts. An empty name stands for readings of its own.
	Readings string
}

// A Weighed way is one beside all of them together.
type Weighed struct {
	Way
	Counted   bool         // false where a surer way rests on the same readings
	Share     float64      // of the weight, of 1; for one not counted, what it would have had in place of the surer one
	Deviation units.Length // from the combined position
	InStd     float64      // the deviation in standard uncertainties of the deviation
	Verdict   string       // whether it was worth the trouble
}

// A Combined position is the mean of several ways, weighed by their
// uncertainties.
type Combined struct {
	Position  units.Reading[units.Length]
	Ways      []Weighed // in the order given
	ChiSquare float64   // of the ways counted
	DoF       int       // ways counted less one
	Ratio     float64   // Birge's: √(ChiSquare/DoF); more than 1 says they scatter more than their uncertainties allow. 0 for one way
	Chance    float64   // how likely it is that honest ways scatter at least as much; 1 for one way
	Agree     bool      // Chance is 0.01 or more
}

// The shares of the weight that the verdicts go by, common practice, no source,
// and how far a way may be off.
const (
	worthMuch  = 0.5
	worthCheck = 0.1
	farOff     = 3 // standard uncertainties of the deviation
	leastLuck  = 0.01
)

// Combine weighs several ways of finding top dead centre by 1/u², and shows
// where they disagree:
//
//	position = Σ(s/u²)/Σ(1/u²)     u(position)² = 1/Σ(1/u²)
//
// If they scatter more than their uncertainties allow, the uncertainty of the
// mean is multiplied by Birge's ratio √(χ²/(n−1)); it is never made smaller. Each
// way is listed with its deviation, its share of the weight and whether it was
// worth the trouble.
//
// A [Bisection] turned one way only with its slack unknown has that slack in its
// uncertainty and weighs no more than it is worth; two turned the same way share
// the slack, so give them the same name in Readings.
//
// The error is [units.ErrDomain] for no way, or one without a standard
// uncertainty, which could not be weighed.
//
// Source: R. T. Birge, Physical Review 40 (1932), 207-227 (from memory); degrees
// of freedom by JCGM 100:2008, G.4.1.
func Combine(ways ...Way) (Combined, error) {
	if len(ways) == 0 {
		return Combined{}, fmt.Errorf("no way of finding top dead centre: want one at least: %w", units.ErrDomain)
	}
	for _, w := range ways {
		p := w.Position
		if !positive(p.Std) || math.IsNaN(float64(p.Value)) || math.IsInf(float64(p.Value), 0) || !(p.DoF >= 0) {
			return Combined{}, fmt.Errorf("%s: %v with standard uncertainty %v: want a finite figure and an uncertainty of more than 0 mm: %w", w.Name, p.Value, p.Std, units.ErrDomain)
		}
	}
	c := Combined{Chance: 1}
	counted := surest(ways)
	weight := c.mean(ways, counted)
	for i, w := range ways {
		if counted[i] {
			c.ChiSquare += math.Pow(float64((w.Position.Value-c.Position.Value)/w.Position.Std), 2)
			c.DoF++
		}
	}
	if c.DoF--; c.DoF > 0 {
		c.Ratio = math.Sqrt(c.ChiSquare / float64(c.DoF))
		c.Chance = distuv.ChiSquared{K: float64(c.DoF)}.Survival(c.ChiSquare)
	}
	c.Agree = c.Chance >= leastLuck
	for i := range ways {
		c.Ways = append(c.Ways, c.weigh(ways, counted, weight, i))
	}
	c.Position.Std *= units.Length(max(1, c.Ratio))
	return c, nil
}

// surest marks the ways that count: of those on the same readings the one with
// the least uncertainty.
func surest(ways []Way) []bool {
	counted := make([]bool, len(ways))
	for i, w := range ways {
		counted[i] = true
		for j, o := range ways {
			same := w.Readings != "" && o.Readings == w.Readings
			if same && (o.Position.Std < w.Position.Std || o.Position.Std == w.Position.Std && j < i) {
				counted[i] = false
			}
		}
	}
	return counted
}

// mean sets the position to the weighed mean and returns the sum of the weights.
func (c *Combined) mean(ways []Way, counted []bool) (weight float64) {
	for i, w := range ways {
		if counted[i] {
			g := 1 / math.Pow(float64(w.Position.Std), 2)
			weight += g
			c.Position.Value += units.Length(g) * w.Position.Value
		}
	}
	c.Position.Value /= units.Length(weight)
	c.Position.Std = units.Length(1 / math.Sqrt(weight))
	perDoF := 0.0
	for i, w := range ways {
		if counted[i] && w.Position.DoF > 0 {
			share := 1 / (math.Pow(float64(w.Position.Std), 2) * weight)
			perDoF += share * share / w.Position.DoF
		}
	}
	if perDoF > 0 {
		c.Position.DoF = 1 / perDoF
	}
	return weight
}

// weigh sets one way beside the mean.
func (c Combined) weigh(ways []Way, counted []bool, weight float64, i int) Weighed {
	w := Weighed{Way: ways[i], Counted: counted[i], Deviation: ways[i].Position.Value - c.Position.Value}
	own, mean := math.Pow(float64(w.Position.Std), 2), 1/weight
	spread := own - mean // a way is part of the mean it is held against
	instead := weight
	if !w.Counted {
		spread = own + mean
		for j, o := range ways {
			if counted[j] && o.Readings == w.Readings {
				instead += 1/own - 1/math.Pow(float64(o.Position.Std), 2)
			}
		}
	}
	w.Share = 1 / own / instead
	if spread > 1e-12*own {
		w.InStd = float64(w.Deviation) / math.Sqrt(spread)
	}
	w.Verdict = w.verdict()
	return w
}

func (w Weighed) verdict() string {
	percent := fmt.Sprintf("%.2g %% of the weight", 100*w.Share)
	if w.Share >= 0.995 {
		percent = "all but the whole of the weight"
	}
	switch {
	case math.Abs(w.InStd) > farOff:
		return fmt.Sprintf("does not agree: off by %.1f times what its uncertainty allows", math.Abs(w.InStd))
	case !w.Counted:
		return "a check: rests on the same readings as a surer way and does not count again"
	case w.Share >= worthMuch:
		return "worth the trouble: " + percent
	case w.Share >= worthCheck:
		return "worth having: " + percent
	}
	return "hardly worth the trouble: " + percent
}
