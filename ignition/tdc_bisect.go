package ignition

import (
	"fmt"
	"math"
	"slices"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// A Bisection is top dead centre as the middle between equal dial readings on
// either side of it.
type Bisection struct {
	Position units.Reading[units.Length] // the rim figure at the pointer with the piston at top dead centre
	Slack    units.Reading[units.Length] // lost motion along the bore, where the engine was turned both ways or it was known
	Pairs    []Pair
	Scatter  float64  // how many times more than stated the middles scatter
	OneWay   bool     // turned one way only with the slack unknown: late, in the way of turning, by the slack over twice the slope, which the uncertainty allows for
	Notes    []string // what a person should be told
	terms    []budgetTerm
}

// A Pair is one reading and the place on the other side of the top where the
// dial showed the same.
type Pair struct {
	Series        string
	Turned        Turned
	Dial          units.Length // the figure both sides share
	Before, After units.Length // rim figures at the pointer, in the order they pass it turning forward
	Middle        units.Length
	Std           units.Length // of the middle, as the readings are stated
	Drop          units.Length // of the piston, about
	PerRim        float64      // how far the piston moves for a unit of rim there
	LeftOut       bool         // stands out from the others as only a slip does
}

// LateBy returns how far the middle of such a pair lies from top dead centre
// with the given slack along the bore: slack over twice the slope, in the way of
// turning.
//
// Source: derived here, see [LateBy].
func (p Pair) LateBy(slack units.Length) units.Length {
	return units.Length(p.Turned.sign() * float64(slack) / (2 * p.PerRim))
}

// Bisect finds top dead centre half way between places on either side of it
// where the dial shows the same, for every reading before the top that has such a
// place after it in its own series. Where no reading shows the same to the last
// digit, the place is found between the two next to it, going by the square
// root of the drop, which grows in nearly equal steps along the rim.
//
// Neither the zero of the dial nor its lean nor the exact shape of the curve
// matters. Slack does: turning forward every middle comes late, by
//
//	slack/(2 dx/ds)
//
// and turning backward as much early. With series both ways the two are found
// together and the position is free of it, and so it is where the slack is
// known. With one way only and the slack unknown the position is what the
// readings say, not put right, and OneWay is set. The slack is then in the
// uncertainty: as large as Setup.Slack where that is stated, √(value² + u²), and
// otherwise anything from none to [MostSlack], a root mean square of
// MostSlack/√3, times what it does to the middles. An interval of two standard
// uncertainties holds the whole of it.
//
// Pairs are weighed by their uncertainty, which comes from the dial and the rim,
// the dial's share being the larger the nearer the pair is to the top; readings
// that serve in more than one pair are counted once. Each middle is put right
// for the offset of the cylinder if there is one. If the middles scatter more
// than stated the uncertainty is made larger in that measure.
//
// The errors are those of [FindTDC], and [ErrTooFew] where no two places match.
//
// Source: derived here; halving equal heights is common practice, no source. The
// shift by slack is that of [LateBy], the uncertainties are by JCGM 100:2008,
// 5.1.2.
func Bisect(setup Setup, series ...Series) (Bisection, error) {
	d, err := newPairSet(setup, series)
	if err != nil {
		return Bisection{}, err
	}
	b := bisecting{dialSet: d}
	if err := b.pair(); err != nil {
		return Bisection{}, err
	}
	found, err := searchSlips(len(b.pairs), nil, b.study)
	if err != nil {
		return Bisection{}, unsettled(err)
	}
	return b.result(found)
}

// newPairSet is newDialSet for as little as one pair.
func newPairSet(setup Setup, series []Series) (*dialSet, error) {
	if err := setup.check(true); err != nil {
		return nil, err
	}
	n, err := setup.checkSeries(series)
	if err != nil {
		return nil, err
	}
	if n < 2 {
		return nil, fmt.Errorf("%d dial readings: want two at least, one on each side of the top at the same height: %w", n, ErrTooFew)
	}
	d := &dialSet{setup: setup, series: series}
	d.gather()
	return d, nil
}

// bisecting holds the pairs and what each owes to which reading.
type bisecting struct {
	*dialSet
	crank  geometry.Crank
	pairs  []Pair
	owes   []map[int]float64 // middle of pair i moves by owes[i][j] when reading j moves along the rim
	middle []float64         // signed as the model has it, put right for the offset
	play   []float64         // how far the middle moves for a unit of slack
	half   []float64         // half the width of the pair
	share  []float64         // how far the position moves for a unit of each middle
	std    []float64         // of a reading's place along the rim, by reading
	fitted [2]float64        // position and slack
	cov    [2][2]float64     // as the readings are stated
	slack  float64           // share of the slack in the uncertainty of the position, where it is not found
	byDial float64           // variance of the position by the dial alone
}

// pair makes the pairs of every series.
func (b *bisecting) pair() (err error) {
	if b.crank, err = b.setup.straightened().crank(); err != nil {
		return err
	}
	b.std = make([]float64, len(b.points))
	for i := range b.series {
		if err := b.pairSeries(i); err != nil {
			return err
		}
	}
	if len(b.pairs) == 0 {
		return fmt.Errorf("no place after the top matches a reading before it: want readings on both sides, in one series, that reach the same height: %w", ErrTooFew)
	}
	return nil
}

// pairSeries makes the pairs of one series.
func (b *bisecting) pairSeries(series int) error {
	var own []int // its readings, along the rim
	for i, p := range b.points {
		if p.series == series {
			own = append(own, i)
		}
	}
	if len(own) < 2 {
		return nil
	}
	slices.SortStableFunc(own, func(i, j int) int { return compare(b.points[i].rim, b.points[j].rim) })
	apex, top, err := b.top(own)
	if err != nil {
		return fmt.Errorf("series %s: %w", nameOf(b.series[series], series), err)
	}
	cut := 0
	for cut < len(own) && b.points[own[cut]].rim < apex {
		cut++
	}
	for _, i := range own[:cut] {
		if b.points[i].dial > top+10*b.setup.dialStd() || len(own) == 2 {
			b.match(i, own[cut:], top)
		}
	}
	return nil
}

// top returns about where the top of a series lies and what the dial shows there:
// enough to tell the two sides apart and to go by the square root of the drop.
func (b *bisecting) top(own []int) (rim, dial float64, err error) {
	one := dialSet{setup: b.setup, mountings: b.mountings[:1]}
	for _, i := range own {
		p := b.points[i]
		p.mounting = 0
		one.points = append(one.points, p)
	}
	err = one.look(b.crank)
	return one.tdc, one.zero, err
}

// match looks on the other side for the height of reading i and adds the pair.
func (b *bisecting) match(i int, others []int, top float64) {
	h := b.points[i].dial
	equal := 3 * math.Sqrt2 * b.setup.dialStd()
	for k, j := range others {
		p := b.points[j]
		if p.dial == h {
			b.add(i, map[int]float64{j: 1}, p.rim)
			return
		}
		if k > 0 {
			q := b.points[others[k-1]]
			if q.dial < h && h < p.dial && q.dial > top {
				lo, hi := math.Sqrt(q.dial-top), math.Sqrt(p.dial-top)
				w := (math.Sqrt(h-top) - lo) / (hi - lo)
				b.add(i, map[int]float64{others[k-1]: 1 - w, j: w}, (1-w)*q.rim+w*p.rim)
				return
			}
		}
	}
	for _, j := range others { // nearly equal, at the ends
		if p := b.points[j]; math.Abs(p.dial-h) <= equal {
			half := (p.rim - b.points[i].rim) / 2
			b.add(i, map[int]float64{j: 1}, p.rim+(h-p.dial)/b.dialPerRim(half))
			return
		}
	}
}

// dialPerRim is how far the dial moves for a unit of rim, half the width of a
// pair from the top.
func (b *bisecting) dialPerRim(half float64) float64 {
	perRim := float64(b.crank.DropPerRadian(b.setup.Rim.AngleOfArc(units.Length(half)))) / float64(b.setup.Rim.Radius())
	return perRim / math.Cos(float64(b.setup.Lean.Value))
}

// add adds the pair of reading i and a place on the other side that rests on the
// readings in after, by their shares.
func (b *bisecting) add(i int, after map[int]float64, place float64) {
	p := b.points[i]
	half := (place - p.rim) / 2
	perRim := b.dialPerRim(half)
	if !(half > 0 && perRim > 0) {
		return
	}
	owes := map[int]float64{i: 0.5}
	for j, share := range after {
		owes[j] = share / 2
	}
	variance := 0.0
	for j, o := range owes {
		b.std[j] = math.Hypot(float64(b.setup.SettingStd), b.setup.dialStd()/perRim)
		variance += o * o * b.std[j] * b.std[j]
	}
	skew, drop := skewOf(b.crank, b.setup.Rim, half)
	cos := math.Cos(float64(b.setup.Lean.Value))
	sign := b.setup.Figures.sign()
	b.middle = append(b.middle, p.rim+half-skew)
	b.half = append(b.half, half)
	b.play = append(b.play, p.turned/(2*perRim*cos))
	b.owes = append(b.owes, owes)
	b.pairs = append(b.pairs, Pair{
		Series: nameOf(b.series[p.series], p.series), Turned: b.series[p.series].Turned,
		Dial:   b.series[p.series].Readings[p.index].Dial,
		Before: units.Length(sign * p.rim), After: units.Length(sign * place), Middle: units.Length(sign * (p.rim + half - skew)),
		Std: units.Length(math.Sqrt(variance)), Drop: drop, PerRim: perRim * cos,
	})
}

// skewOf is how far the middle of a pair lies past true top dead centre, which is
// nothing without an offset, and the drop of the piston there.
func skewOf(c geometry.Crank, rim Rim, half float64) (skew float64, drop units.Length) {
	drop, err := c.DropAtDwell(2 * rim.AngleOfArc(units.Length(half)))
	if err != nil {
		return 0, drop
	}
	before, after, err := c.AnglesAtDrop(drop)
	if err != nil {
		return 0, drop
	}
	return float64(rim.Arc(after-before)) / 2, drop
}

// straightened returns the setup with an offset whose side or size is unknown
// taken for nothing, and its size for an uncertainty.
func (s Setup) straightened() Setup {
	if s.SideUnknown || s.OffsetUnknown {
		s.Offset = units.WithStd(0, units.Length(math.Hypot(float64(s.Offset.Value), float64(s.Offset.Std))))
	}
	return s
}

// offsetStd is the uncertainty of a position that is the mean of middles, by
// their shares, for that of the offset.
func (s Setup) offsetStd(halves, shares []float64) float64 {
	s = s.straightened()
	if s.Offset.Std == 0 {
		return 0
	}
	one, err := s.crank()
	s.Offset.Value += s.Offset.Std
	other, err2 := s.crank()
	if err != nil || err2 != nil {
		return 0
	}
	sum := 0.0
	for i, half := range halves {
		a, _ := skewOf(one, s.Rim, half)
		b, _ := skewOf(other, s.Rim, half)
		sum += shares[i] * (b - a)
	}
	return math.Abs(sum)
}
