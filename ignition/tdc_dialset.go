package ignition

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// dialSet is a checked set of dial readings with a first look at where top dead
// centre lies.
type dialSet struct {
	setup     Setup
	series    []Series
	points    []dialPoint
	mountings []string
	figures   []units.Length // all rim figures, as read
	tdc, zero float64        // to begin with
	gross     []int          // readings far off already at first sight, the worst first
}

func newDialSet(setup Setup, series []Series) (*dialSet, error) {
	if err := setup.check(true); err != nil {
		return nil, err
	}
	n, err := setup.checkSeries(series)
	if err != nil {
		return nil, err
	}
	if n < 4 {
		return nil, fmt.Errorf("%d dial readings: want 5 at least, and better 20, on both sides of the top and 20° and more out: %w", n, ErrTooFew)
	}
	d := &dialSet{setup: setup, series: series}
	d.gather()
	crank, err := setup.crank()
	if err != nil {
		return nil, err
	}
	if err := d.checkHeights(crank); err != nil {
		return nil, err
	}
	if err := d.look(crank); err != nil {
		return nil, err
	}
	return d, d.checkSides(dialModel{tdc: d.tdc, radius: float64(setup.Rim.Radius()), crank: crank}, nil)
}

// gather puts the readings into the terms of the model.
func (d *dialSet) gather() {
	var rim []float64
	for i, s := range d.series {
		if len(s.Readings) == 0 {
			continue
		}
		k := slices.Index(d.mountings, s.Mounting)
		if k < 0 {
			k = len(d.mountings)
			d.mountings = append(d.mountings, s.Mounting)
		}
		for j, r := range s.Readings {
			d.points = append(d.points, dialPoint{i, j, k, s.Turned.sign(), 0, d.setup.Dial.sign() * float64(r.Dial)})
			rim = append(rim, d.setup.Figures.sign()*float64(r.Rim))
			d.figures = append(d.figures, r.Rim)
		}
	}
	unwrap(rim, float64(d.setup.Rim.Girth()))
	for i := range rim {
		d.points[i].rim = rim[i]
	}
}

// checkHeights refuses readings that show no movement, or more than the stroke.
func (d *dialSet) checkHeights(c geometry.Crank) error {
	low, high := d.points[0], d.points[0] // by dial
	left, right := low.rim, low.rim
	for _, p := range d.points {
		if p.dial < low.dial {
			low = p
		}
		if p.dial > high.dial {
			high = p
		}
		left, right = min(left, p.rim), max(right, p.rim)
	}
	travel := units.Length((high.dial - low.dial) * math.Cos(float64(d.setup.Lean.Value)))
	width := units.Length(right - left)
	switch {
	case width <= units.Length(2*d.setup.flat(c)):
		return fmt.Errorf("the readings span %.0f of rim: want them to reach %.0f and better %.0f to each side of the top, past the flat where the piston hardly moves: %w",
			width, units.Length(d.setup.flat(c)), d.setup.Rim.Arc(20*units.Degree), ErrFlatTop)
	case travel <= units.Length(5*d.setup.dialStd()):
		return fmt.Errorf("the dial moves by %.2f in all over %.0f of rim: want a plunger that follows the piston, and readings at several heights: %w", travel, width, ErrSameHeight)
	case travel > c.Stroke()+units.Length(10*d.setup.dialStd()):
		return fmt.Errorf("the dial readings span %.2f of piston travel: want no more than %.2f, the stroke: %w", travel, c.Stroke(), units.ErrDomain)
	}
	return nil
}

// look tries top dead centre at many places and keeps the one where the
// readings lie nearest the curve, by the sum of the distances, on which a few
// slips have little hold.
func (d *dialSet) look(c geometry.Crank) error {
	left, right := d.points[0].rim, d.points[0].rim
	for _, p := range d.points {
		left, right = min(left, p.rim), max(right, p.rim)
	}
	width := right - left
	best, contrary := d.scan(c, left-width/2, right+width/2, 50)
	if contrary < best/4 && best > float64(len(d.points))*d.setup.dialStd() {
		return fmt.Errorf("the dial figures were stated to be %v, and they do the contrary on both sides of the top: want %v: %w", d.setup.Dial, other(d.setup.Dial), ErrUnsettled)
	}
	d.scan(c, d.tdc-width/25, d.tdc+width/25, 20)
	d.lookForGross(c)
	return nil
}

// grosslyOut is how many times the usual distance from the curve, and the
// uncertainty of the dial, a reading is out that is gross.
const grosslyOut = 15

// lookForGross lists the readings that are grossly out.
func (d *dialSet) lookForGross(c geometry.Crank) {
	m := dialModel{tdc: d.tdc, lean: float64(d.setup.Lean.Value), radius: float64(d.setup.Rim.Radius()), crank: c}
	off := make([]float64, len(d.points))
	for k := range d.mountings {
		var own []float64
		for j, p := range d.points {
			if p.mounting == k {
				off[j] = p.dial - m.dialAt(m.at(p.rim, p.turned))
				own = append(own, off[j])
			}
		}
		slices.Sort(own)
		for j, p := range d.points {
			if p.mounting == k {
				off[j] = math.Abs(off[j] - own[len(own)/2])
			}
		}
	}
	usual := slices.Clone(off)
	slices.Sort(usual)
	limit := grosslyOut * max(usual[len(usual)/2], d.setup.dialStd())
	for j := range off {
		if off[j] > limit {
			d.gross = append(d.gross, j)
		}
	}
	slices.SortStableFunc(d.gross, func(i, j int) int { return compare(off[j], off[i]) })
}

// scan tries top dead centre at steps from one place to another, keeps the best
// in tdc and zero, and returns the sum of the distances there, and the least sum
// for a dial that runs the other way.
func (d *dialSet) scan(c geometry.Crank, from, to float64, steps int) (best, contrary float64) {
	cos, radius := math.Cos(float64(d.setup.Lean.Value)), float64(d.setup.Rim.Radius())
	curve, gap := make([]float64, len(d.points)), make([]float64, len(d.points))
	best, contrary = math.Inf(1), math.Inf(1)
	for i := range steps + 1 {
		tdc := from + (to-from)*float64(i)/float64(steps)
		for j, p := range d.points {
			curve[j] = float64(c.Drop(units.Angle((p.rim-tdc)/radius))) / cos
		}
		if miss, zero := d.miss(curve, gap, 1); miss < best {
			best, d.tdc, d.zero = miss, tdc, zero
		}
		miss, _ := d.miss(curve, gap, -1)
		contrary = min(contrary, miss)
	}
	return best, contrary
}

func other(d DialFigures) DialFigures { return MoreGoingDown + LessGoingDown - d }

// miss is the sum of the distances from a curve, each mounting with the zero
// that suits it, and the zero of the first mounting.
func (d *dialSet) miss(curve, gap []float64, sense float64) (sum, zero float64) {
	for k := range d.mountings {
		gap = gap[:0]
		for j, p := range d.points {
			if p.mounting == k {
				gap = append(gap, sense*p.dial-curve[j])
			}
		}
		slices.Sort(gap)
		middle := gap[len(gap)/2]
		if k == 0 {
			zero = middle
		}
		for _, g := range gap {
			sum += math.Abs(g - middle)
		}
	}
	return sum, zero
}

// checkSides refuses readings that do not reach past the flat of the top on
// both sides of it.
func (d *dialSet) checkSides(m dialModel, keep []bool) error {
	flat := d.setup.flat(m.crank)
	before, after := 0, 0
	for i, p := range d.points {
		switch {
		case keep != nil && !keep[i]:
		case p.rim-m.tdc < -flat:
			before++
		case p.rim-m.tdc > flat:
			after++
		}
	}
	where := d.setup.onRule(units.Length(d.setup.Figures.sign()*m.tdc), d.figures...)
	side, beyond := "after", d.setup.Figures == Rising
	if before == 0 {
		side, beyond = "before", !beyond
	}
	word := "below"
	if beyond {
		word = "above"
	}
	switch {
	case before == 0 && after == 0:
		return fmt.Errorf("no reading more than %.0f from the top: want readings on both sides, better %.0f out, where the piston moves fast: %w", units.Length(flat), d.setup.Rim.Arc(20*units.Degree), ErrFlatTop)
	case before == 0 || after == 0:
		return fmt.Errorf("no reading %s top dead centre, which lies near rim %.0f: want as many with figures %s that, past the flat of the top: %w", side, where, word, ErrOneSide)
	}
	return nil
}

// residuals lists every reading beside the curve.
func (d *dialSet) residuals(p *problem, s solution, keep []bool) []Residual {
	list := make([]Residual, len(d.points))
	for i, pt := range d.points {
		r := d.series[pt.series].Readings[pt.index]
		at := s.model.at(pt.rim, pt.turned)
		fitted := s.X[p.find(isZero+quantity(pt.mounting))] + s.model.dialAt(at)
		list[i] = Residual{
			Series: nameOf(d.series[pt.series], pt.series), Turned: d.series[pt.series].Turned,
			Rim: r.Rim, Dial: r.Dial, Fitted: units.Length(d.setup.Dial.sign() * fitted),
			Difference: r.Dial - units.Length(d.setup.Dial.sign()*fitted),
			Std:        units.Length(p.std(s.model, pt)), LeftOut: !keep[i],
		}
	}
	return list
}

// notes says what a person should be told of a fit.
func (d *dialSet) notes(f TDC, p *problem, s solution, found search) []string {
	var notes []string
	add := func(format string, args ...any) { notes = append(notes, fmt.Sprintf(format, args...)) }
	if f.Scatter > 1 && f.Chance() < 0.01 {
		add("the dial readings scatter %.1f times more than stated; the uncertainties are from the scatter", f.Scatter)
	}
	if f.Scatter > 3 {
		add("that much scatter says that something stated is wrong: the stroke, the rod, the lean, the rim, or which way a series was turned")
	}
	if found.more {
		add("more readings stand out than slips explain: look for what was stated wrongly, or for a dial that sticks")
	}
	ways := map[Turned]bool{}
	for _, r := range f.Residuals {
		ways[r.Turned] = ways[r.Turned] || !r.LeftOut
	}
	if !(ways[Forward] && ways[Backward]) && !d.setup.SlackKnown {
		add("the engine was turned one way only, so the slack is told from top dead centre by the shape of the curve alone: take a series turning the other way too")
	}
	if d.setup.SettingStd == 0 {
		add("nothing was stated of the uncertainty of setting the rim: honest readings where the piston moves fast may look like slips")
	}
	if d.setup.OffsetUnknown && math.Abs(float64(f.Offset.Value)) < 2*float64(f.Offset.Std) {
		add("the readings hardly tell the offset from none (%v): state it if it can be measured", f.Offset)
	}
	if f.Slack.Std > 0 && f.Slack.Value < -3*f.Slack.Std {
		add("the slack comes out below nothing (%.2f): forward and backward, or rising and falling rim figures, may be changed over", f.Slack.Value)
	}
	for j, u := range p.unknowns {
		if u.std > 0 && math.Abs(s.X[j]-u.start) > 3*u.std {
			add("the dial readings do not agree with the %s as stated: they would have it %s, not %s", u.name, amount(u.what, s.X[j]), amount(u.what, u.start))
		}
	}
	return notes
}

func amount(what quantity, v float64) string {
	if what == isLean {
		return fmt.Sprintf("%.1f", units.Angle(v))
	}
	return fmt.Sprintf("%.2f", units.Length(v))
}
