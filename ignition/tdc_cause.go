package ignition

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"example.com/benchsums/units"
)

// A Slip is a reading that stands out from all the others as only a slip does,
// and was left out.
type Slip struct {
	Series    string
	Turned    Turned
	Index     int          // of the reading within its series
	Rim, Dial units.Length // as read
	Fitted    units.Length // what the dial would show there
	TooMuch   units.Length // the figure as read less what it would be; below 0, too little
	Std       units.Length // standard uncertainty of TooMuch
	Causes    []Cause      // well-known slips that give this reading, the likeliest first; may be none
}

// A Cause is a well-known slip of the eye or the pen, and what the reading
// would have been without it.
type Cause struct {
	Text      string
	Rim, Dial units.Length
	Off       float64 // how far that still is from the curve, in standard uncertainties

	likely float64 // less is likelier
	nearly units.Length
}

// String names the reading, how much it is out, and the likeliest cause as a
// question: "series C, rim 110 mm: about 1.00 mm too much, one turn of the
// small hand?"
func (s Slip) String() string {
	by, cause := s.TooMuch, ""
	if len(s.Causes) > 0 {
		cause = ", " + s.Causes[0].Text + "?"
		if s.Causes[0].nearly != 0 {
			by = s.Causes[0].nearly
		}
	}
	word := "too much"
	if by < 0 {
		word = "too little"
	}
	return fmt.Sprintf("series %s, rim %v: about %.2f %s%s", s.Series, s.Rim, units.Length(math.Abs(float64(by))), word, cause)
}

// slips names the readings left out and looks for their causes.
func (d *dialSet) slips(p *problem, s solution, keep []bool, scale float64) []Slip {
	var list []Slip
	st := p.study(s, keep)
	for i, pt := range d.points {
		if keep[i] {
			continue
		}
		series := d.series[pt.series]
		r := series.Readings[pt.index]
		std := units.Length(scale * p.std(s.model, pt) * math.Sqrt(1+st.leverage[i]/(scale*scale)))
		fitted := d.setup.Dial.sign() * (s.X[p.find(isZero+quantity(pt.mounting))] + s.model.dialAt(s.model.at(pt.rim, pt.turned)))
		slip := Slip{
			Series: nameOf(series, pt.series), Turned: series.Turned, Index: pt.index, Rim: r.Rim, Dial: r.Dial,
			Fitted: units.Length(fitted), TooMuch: r.Dial - units.Length(fitted), Std: std,
		}
		slip.Causes = d.causes(p, s, pt, slip)
		list = append(list, slip)
	}
	return list
}

// causeWithin is how near a cause must bring a reading to the curve, in
// standard uncertainties.
const causeWithin = 3

// causes tries the well-known slips. How likely each is beforehand, against one
// turn of the small hand, is common practice, no source.
func (d *dialSet) causes(p *problem, s solution, pt dialPoint, slip Slip) []Cause {
	var list []Cause
	add := func(c Cause, off, beforehand float64) {
		if c.Off = math.Abs(off); c.Off < causeWithin {
			c.likely = off*off - 2*math.Log(beforehand)
			list = append(list, c)
		}
	}
	for _, t := range d.dialSlips(slip) {
		add(Cause{Text: t.text, Rim: slip.Rim, Dial: t.dial, nearly: slip.Dial - t.dial}, float64((t.dial-slip.Fitted)/slip.Std), t.beforehand)
	}
	zero := s.X[p.find(isZero+quantity(pt.mounting))]
	for _, t := range d.rimSlips(slip) {
		moved := pt
		moved.rim += d.setup.Figures.sign() * float64(t.rim-slip.Rim)
		off := (zero + s.model.dialAt(s.model.at(moved.rim, moved.turned)) - pt.dial) / p.std(s.model, moved)
		add(Cause{Text: t.text, Rim: t.rim, Dial: slip.Dial}, off, t.beforehand)
	}
	slices.SortStableFunc(list, func(a, b Cause) int { return compare(a.likely, b.likely) })
	return list
}

type trySlip struct {
	text       string
	rim, dial  units.Length // what should have been written
	beforehand float64
}

// dialSlips lists what the dial may have shown in truth.
func (d *dialSet) dialSlips(s Slip) []trySlip {
	turn, div := units.Length(d.setup.needleTurn()), units.Length(d.setup.division())
	back := func(by units.Length) units.Length {
		return s.Dial - units.Length(math.Copysign(float64(by), float64(s.TooMuch)))
	}
	list := []trySlip{
		{text: "one turn of the small hand", dial: back(turn), beforehand: 1},
		{text: "two turns of the small hand", dial: back(2 * turn), beforehand: 0.1},
		{text: "half a turn of the needle", dial: back(turn / 2), beforehand: 0.3},
		{text: "one numbered mark of the dial", dial: back(10 * div), beforehand: 0.3},
		{text: "the sign", dial: -s.Dial, beforehand: 0.2},
		{text: "the decimal point", dial: s.Dial / 10, beforehand: 0.1},
		{text: "the decimal point", dial: s.Dial * 10, beforehand: 0.1},
	}
	for _, dial := range transposed(s.Dial, div) {
		list = append(list, trySlip{text: "two digits changed places", dial: dial, beforehand: 0.3})
	}
	return list
}

// rimSlips lists which rim figure may have stood at the pointer in truth.
func (d *dialSet) rimSlips(s Slip) []trySlip {
	mark := units.Length(d.setup.ruleMark())
	var list []trySlip
	for _, t := range []struct {
		by         units.Length
		beforehand float64
	}{{mark, 0.5}, {mark / 2, 0.3}, {10 * mark, 0.2}} {
		for _, by := range [...]units.Length{-t.by, t.by} {
			list = append(list, trySlip{text: fmt.Sprintf("rim %v for %v", s.Rim, s.Rim+by), rim: s.Rim + by, beforehand: t.beforehand})
		}
	}
	for _, rim := range transposed(s.Rim, mark/10) {
		list = append(list, trySlip{text: fmt.Sprintf("rim %v for %v, two digits changed places", s.Rim, rim), rim: rim, beforehand: 0.2})
	}
	return list
}

// transposed returns the figures that come of changing two neighbouring digits
// of one written in whole steps.
func transposed(figure, step units.Length) []units.Length {
	n := math.Round(math.Abs(float64(figure / step)))
	if !(n < 1e9) {
		return nil
	}
	digits := []byte(fmt.Sprintf("%03.0f", n))
	var list []units.Length
	for i := range len(digits) - 1 {
		if digits[i] == digits[i+1] {
			continue
		}
		swapped := slices.Clone(digits)
		swapped[i], swapped[i+1] = digits[i+1], digits[i]
		v, err := strconv.ParseFloat(string(swapped), 64)
		if err == nil {
			list = append(list, units.Length(math.Copysign(v, float64(figure)))*step)
		}
	}
	return list
}

// Without returns the series without the readings named as slips, for ways of
// finding top dead centre that do not look for slips themselves.
func Without(slips []Slip, series ...Series) []Series {
	list := slices.Clone(series)
	for i := range list {
		list[i].Readings = nil
		for j, r := range series[i].Readings {
			if !slices.ContainsFunc(slips, func(s Slip) bool { return s.Series == nameOf(series[i], i) && s.Index == j }) {
				list[i].Readings = append(list[i].Readings, r)
			}
		}
	}
	return list
}
