package ignition

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat"

	"example.com/benchsums/units"
)

// A StopPair is one try with a positive stop, a bolt in the plug hole that the
// piston meets before it reaches the top: the rim figures at the pointer where
// it met the stop, the engine turned forward and the engine turned backward.
type StopPair struct {
	Forward  units.Length // turned forward until it touched, before top dead centre
	Backward units.Length // turned backward until it touched, after top dead centre
}

// A StopFinding is top dead centre from a positive stop.
type StopFinding struct {
	Position units.Reading[units.Length] // the rim figure at the pointer with the piston at top dead centre
	Middles  []units.Length              // of each try
	Spread   units.Length                // standard deviation of one middle as the tries show it; 0 for one try
	Half     units.Length                // mean distance along the rim from top dead centre to a touch
	Odd      []OddFigure                 // middles that stand out, left out
	Notes    []string                    // what a person should be told
	figures  []units.Length              // all touches
	terms    []budgetTerm
}

// Stop finds top dead centre half way between the places where the piston met
// a positive stop from either side.
//
// The crown is pushed against the stop from both sides, which takes up the
// bearings the same way, so that slack does not matter; nor do lean, rod and
// stroke. Each try has both of its touches at one setting of the stop; between
// tries it may be set anew. Turn by hand, gently, with the plug lead off and
// earthed: never use the starter or force, for the stop can go through the
// crown.
//
// The standard uncertainty is that of the mean of the middles as they scatter,
// with one degree of freedom less than tries, or what the setting of the rim
// leaves, SettingStd/√(2n), if that is more. Of the setup only the rim is needed;
// stroke and rod with an offset, for which the middles are put right.
//
// The errors are [units.ErrDomain] for a setup or figures without meaning,
// [ErrTooFew] for no try, or one with nothing stated of its uncertainty, and
// [ErrUnsettled] where the touches do not embrace the top.
//
// Source: the positive stop is common practice, no source; the mean and its
// uncertainty are JCGM 100:2008, 4.2.
func Stop(setup Setup, tries ...StopPair) (StopFinding, error) {
	if err := setup.checkRim(); err != nil {
		return StopFinding{}, err
	}
	if len(tries) == 0 || len(tries) == 1 && setup.SettingStd == 0 {
		return StopFinding{}, fmt.Errorf("%d tries with the stop: want 3 or better 5, to see how they scatter: %w", len(tries), ErrTooFew)
	}
	skew, err := setup.skewer()
	if err != nil {
		return StopFinding{}, err
	}
	var f StopFinding
	var halves []float64
	for i, t := range tries {
		middle, half, err := setup.stopMiddle(t)
		if err != nil {
			return StopFinding{}, fmt.Errorf("try %d: %w", i+1, err)
		}
		middle -= units.Length(setup.Figures.sign() * skew(half))
		if i > 0 { // the same turn of the rim as the first
			middle = f.Middles[0] + units.Length(math.Remainder(float64(middle-f.Middles[0]), float64(setup.Rim.Girth())))
		}
		f.figures = append(f.figures, t.Forward, t.Backward)
		f.Middles, halves = append(f.Middles, middle), append(halves, half)
	}
	if err := f.settle(setup, halves); err != nil {
		return StopFinding{}, err
	}
	return f, nil
}

// stopMiddle returns the middle of two touches as a rim figure, and half their
// distance.
func (s Setup) stopMiddle(t StopPair) (middle units.Length, half float64, err error) {
	for _, figure := range [...]units.Length{t.Forward, t.Backward} {
		if err := s.checkFigure(figure); err != nil {
			return 0, 0, err
		}
	}
	girth, sign := float64(s.Rim.Girth()), s.Figures.sign()
	width := math.Mod(sign*float64(t.Backward-t.Forward), girth)
	if width < 0 {
		width += girth
	}
	if !(width > 0 && width < girth/2) {
		return 0, 0, fmt.Errorf("touches %v forward and %v backward, figures %v: from the first on to the second it is %.0f of rim, want less than half way round: were forward and backward changed over?: %w",
			t.Forward, t.Backward, s.Figures, units.Length(width), ErrUnsettled)
	}
	return t.Forward + units.Length(sign*width/2), width / 2, nil
}

// skewer returns what puts a middle right for the offset: nothing where there is
// none.
func (s Setup) skewer() (func(half float64) float64, error) {
	s = s.straightened()
	if s.Offset.Value == 0 && s.Offset.Std == 0 {
		return func(float64) float64 { return 0 }, nil
	}
	c, err := s.crank()
	if err != nil {
		return nil, err
	}
	return func(half float64) float64 { skew, _ := skewOf(c, s.Rim, half); return skew }, nil
}

// settle finds mean and uncertainty of the middles.
func (f *StopFinding) settle(s Setup, halves []float64) error {
	found, err := searchSlips(len(f.Middles), nil, f.study(float64(s.SettingStd)/math.Sqrt2))
	if err != nil {
		return err
	}
	var kept, keptHalves []float64
	for i, m := range f.Middles {
		if found.keep[i] {
			kept, keptHalves = append(kept, float64(m)), append(keptHalves, halves[i])
		}
	}
	mean := stat.Mean(kept, nil)
	f.Half = units.Length(stat.Mean(keptHalves, nil))
	f.position(s, mean, kept, keptHalves)
	for i, m := range f.Middles {
		if !found.keep[i] {
			f.leaveOut(s, i, m, m-units.Length(mean))
		}
	}
	if s.OffsetUnknown {
		f.Notes = append(f.Notes, "the offset of the cylinder is not allowed for")
	}
	return nil
}

// position sets the position to the mean of the middles kept, and says how sure it
// is.
func (f *StopFinding) position(s Setup, mean float64, kept, halves []float64) {
	n := float64(len(kept))
	stated := float64(s.SettingStd) / math.Sqrt(2*n)
	f.Position = units.WithStd(s.onRule(units.Length(mean), f.figures...), units.Length(stated))
	if len(kept) > 1 {
		f.Spread = units.Length(stat.StdDev(kept, nil))
		if seen := float64(f.Spread) / math.Sqrt(n); seen > stated {
			f.Position.Std, f.Position.DoF = units.Length(seen), n-1
		}
	}
	shares := make([]float64, len(kept))
	for i := range shares {
		shares[i] = 1 / n
	}
	offset := s.offsetStd(halves, shares)
	f.terms = []budgetTerm{
		{settingName, units.Length(0), f.Position.Std * units.Length(math.Sqrt(2*n)), float64(f.Position.Std)},
		s.offsetTerm(offset), s.runOutTerm(halves, shares),
	}
	f.Position = f.Position.With(units.Length(math.Hypot(offset, f.terms[2].u)))
}

// study holds the middles against their mean, each uncertain by std.
func (f *StopFinding) study(std float64) func(keep []bool) (study, error) {
	if std == 0 {
		std = 1e-3 * float64(units.Micrometre) // nothing stated: let the scatter judge
	}
	return func(keep []bool) (study, error) {
		n, mean := 0, 0.0
		for i, ok := range keep {
			if ok {
				n++
				mean += float64(f.Middles[i])
			}
		}
		mean /= float64(n)
		st := study{residual: make([]float64, len(keep)), leverage: make([]float64, len(keep)), dof: n - 1}
		for i, ok := range keep {
			st.residual[i], st.leverage[i] = (float64(f.Middles[i])-mean)/std, 1/float64(n)
			if ok {
				st.sum += st.residual[i] * st.residual[i]
			}
		}
		return st, nil
	}
}

// leaveOut names a middle that stands out. A touch misread by a mark of the rule
// moves the middle by half of it.
func (f *StopFinding) leaveOut(s Setup, i int, middle, off units.Length) {
	odd := OddFigure{Try: i + 1, Figure: middle, Off: off, Guess: "take that try again"}
	slack := 4 * float64(s.SettingStd)
	for _, by := range [...]float64{s.ruleMark() / 2, s.ruleMark(), 10 * s.ruleMark()} {
		if math.Abs(2*math.Abs(float64(off))-by) <= max(slack, by/20) {
			odd.Guess = fmt.Sprintf("one touch misread by %v?", units.Length(by))
		}
	}
	f.Odd = append(f.Odd, odd)
	f.Notes = append(f.Notes, "left out: "+odd.String())
}
