package ignition

import (
	"errors"
	"fmt"
	"math"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// The kinds of readings from which top dead centre cannot be found. The text
// of the error says what to read instead.
var (
	// ErrTooFew: fewer readings than it takes to find what is unknown and to
	// see how well they agree.
	ErrTooFew = errors.New("too few readings")
	// ErrOneSide: all readings lie before top dead centre, or all after it.
	ErrOneSide = errors.New("readings on one side only")
	// ErrFlatTop: all readings lie so near the top that the piston hardly moves.
	ErrFlatTop = errors.New("no reading past the flat of the top")
	// ErrSameHeight: the dial shows the same everywhere.
	ErrSameHeight = errors.New("all readings at one height")
	// ErrUnsettled: the readings do not tell the unknowns apart, or contradict
	// what is known of the engine.
	ErrUnsettled = errors.New("the readings do not settle it")
)

// DialFigures says what the figure on the dial does as the piston goes down.
type DialFigures int

// What the figure on the dial does as the piston goes down.
const (
	MoreGoingDown DialFigures = iota + 1 // the figure grows: a fall is read
	LessGoingDown                        // the figure shrinks, or runs below 0
)

// String returns "more going down" or "less going down".
func (d DialFigures) String() string {
	switch d {
	case MoreGoingDown:
		return "more going down"
	case LessGoingDown:
		return "less going down"
	}
	return "dial figures not stated"
}

// MarshalText writes "more going down" or "less going down". The error is
// [units.ErrDomain] for any other value.
func (d DialFigures) MarshalText() ([]byte, error) { return writeWord(d, MoreGoingDown, LessGoingDown) }

// UnmarshalText reads "more going down" or "less going down". The error is
// [units.ErrDomain] for anything else.
func (d *DialFigures) UnmarshalText(text []byte) error {
	return readWord(d, text, "what the dial figure does as the piston goes down", MoreGoingDown, LessGoingDown)
}

// sign is +1 where the figure grows as the piston goes down.
func (d DialFigures) sign() float64 {
	if d == LessGoingDown {
		return -1
	}
	return 1
}

// A Setup says what is known of the engine and how its readings were taken. A
// figure with a standard uncertainty is weighed together with the readings; one
// without is taken as it stands.
//
// Stroke, Rim and Figures are always wanted, and Rod unless RodUnknown is set;
// Dial wherever a dial was read. The rest may stay 0.
type Setup struct {
	Stroke units.Reading[units.Length] // of the piston, from its highest to its lowest
	Rod    units.Reading[units.Length] // between centres
	Offset units.Reading[units.Length] // of the cylinder, signed as in [geometry.Crank.WithOffset]
	Slack  units.Reading[units.Length] // lost motion along the bore: see SlackKnown

	RodUnknown    bool // find the rod from the readings
	OffsetUnknown bool // find the offset from the readings
	SideUnknown   bool // the offset's size is known but not its sign: try both
	SlackKnown    bool // take Slack as given; else it is found, or where it cannot be, counts as what there may be (0: see MostSlack)

	Rim        Rim          // the rim the figures lie on
	RimStd     units.Length // standard uncertainty of its diameter
	Figures    Figures      // what the rim figures do at the pointer, turning forward
	SettingStd units.Length // standard uncertainty of bringing a figure to the pointer and of reading it
	RunOut     units.Length // of the rim, as a dial on it shows from end to end in one turn; 0 if not taken

	Dial    DialFigures                // what the dial figure does as the piston goes down
	DialStd units.Length               // standard uncertainty of a dial reading
	Lean    units.Reading[units.Angle] // of the plunger from the bore; flat crown, travel = figure × cos lean
	ZeroStd units.Length               // how well the dial was put to 0 at the top; 0 where it was not

	Division   units.Length // smallest division of the dial; 0 stands for 0.01 mm
	NeedleTurn units.Length // one turn of the needle; 0 stands for 1 mm
	RuleMark   units.Length // from one numbered mark of the rule on the rim to the next; 0 stands for 10 mm
}

// MostSlack is the most lost motion along the bore that an engine which still
// runs is taken to have where nothing is stated of it and the readings cannot
// tell: main bearing, big end and gudgeon pin together (common practice, no
// source). State [Setup.Slack] for an engine that is known to be worse, or
// better.
const MostSlack = 0.2 * units.Millimetre

// unknownSlack is how far an unknown slack may lie from none, as a root mean
// square: as stated, or anywhere from 0 to MostSlack, which gives MostSlack/√3
// (rectangular; JCGM 100:2008, 4.3.7 and F.2.4.5).
func (s Setup) unknownSlack() float64 {
	if s.Slack.Value != 0 || s.Slack.Std != 0 {
		return math.Hypot(float64(s.Slack.Value), float64(s.Slack.Std))
	}
	return float64(MostSlack) / math.Sqrt(3)
}

// slackAllowed is the slack that two of those uncertainties hold.
func (s Setup) slackAllowed() units.Length {
	if s.Slack.Value != 0 || s.Slack.Std != 0 {
		return s.Slack.Value + 2*s.Slack.Std
	}
	return MostSlack
}

// typicalRodRatio is the rod in throws that an unknown rod is first taken for:
// the middle of the usual 3.5 to 4.5 (common practice, no source).
const typicalRodRatio = 4

func (s Setup) division() float64 { return orElse(s.Division, units.Millimetre/100) }

func (s Setup) needleTurn() float64 { return orElse(s.NeedleTurn, units.Millimetre) }

func (s Setup) ruleMark() float64 { return orElse(s.RuleMark, 10*units.Millimetre) }

func orElse(l, usual units.Length) float64 {
	if l == 0 {
		return float64(usual)
	}
	return float64(l)
}

// dialStd is the standard uncertainty of a dial figure, not less than the
// rounding to its smallest division leaves.
func (s Setup) dialStd() float64 {
	return max(float64(s.DialStd), s.division()/math.Sqrt(12))
}

// rod returns the rod, or a usual one where it is unknown.
func (s Setup) rod() units.Length {
	if s.RodUnknown && s.Rod.Value == 0 {
		return typicalRodRatio * s.Stroke.Value / 2
	}
	return s.Rod.Value
}

// crank returns the crank as it is known.
func (s Setup) crank() (geometry.Crank, error) {
	return crankOf(s.Stroke.Value, s.rod(), s.Offset.Value)
}

// crankOf returns the crank whose piston has the given stroke, offset or not.
func crankOf(stroke, rod, offset units.Length) (geometry.Crank, error) {
	c, err := geometry.NewCrank(stroke, rod)
	if err != nil || offset == 0 {
		return c, err
	}
	return c.WithOffsetSameStroke(offset)
}

// check refuses a setup without meaning. Dial says whether a dial was read.
func (s Setup) check(dial bool) error {
	if _, err := s.crank(); err != nil {
		return err
	}
	if err := s.checkRim(); err != nil {
		return err
	}
	if dial && s.Dial != MoreGoingDown && s.Dial != LessGoingDown {
		return fmt.Errorf("%v: want MoreGoingDown or LessGoingDown: %w", s.Dial, units.ErrDomain)
	}
	for _, x := range []struct {
		name  string
		value units.Length
	}{
		{"uncertainty of the stroke", s.Stroke.Std}, {"uncertainty of the rod", s.Rod.Std}, {"uncertainty of the offset", s.Offset.Std},
		{"slack", s.Slack.Value}, {"uncertainty of the slack", s.Slack.Std}, {"uncertainty of the dial", s.DialStd},
		{"uncertainty of the dial's zero", s.ZeroStd}, {"division of the dial", s.Division}, {"turn of the needle", s.NeedleTurn}, {"mark of the rule", s.RuleMark},
	} {
		if !(x.value >= 0) || math.IsInf(float64(x.value), 0) {
			return fmt.Errorf("%s %v: want 0 mm or more: %w", x.name, x.value, units.ErrDomain)
		}
	}
	if !(math.Abs(s.Lean.Value.Degrees()) <= 75) || !(s.Lean.Std >= 0) || math.IsInf(float64(s.Lean.Std), 0) {
		return fmt.Errorf("lean %v with uncertainty %v: want 75° at most and 0° or more: %w", s.Lean.Value, s.Lean.Std, units.ErrDomain)
	}
	if s.OffsetUnknown && s.SideUnknown {
		return fmt.Errorf("offset of unknown size and of unknown side: want one of the two: an unknown offset has its sign found too: %w", units.ErrDomain)
	}
	return nil
}

func (s Setup) checkRim() error {
	if _, err := NewScale(s.Rim, 0, s.Figures); err != nil {
		return err
	}
	for _, x := range []struct {
		name  string
		value units.Length
	}{{"uncertainty of the rim's diameter", s.RimStd}, {"uncertainty of setting the rim", s.SettingStd}, {"run-out of the rim", s.RunOut}} {
		if !(x.value >= 0) || math.IsInf(float64(x.value), 0) {
			return fmt.Errorf("%s %v: want 0 mm or more: %w", x.name, x.value, units.ErrDomain)
		}
	}
	return nil
}

// A DialReading is a rim figure at the pointer and what the dial showed there,
// both with the sign they were written with.
type DialReading struct {
	Rim  units.Length
	Dial units.Length
}

// A Series is a run of dial readings taken while the engine was turned one way
// without going back.
type Series struct {
	Name     string // as it is to be called in messages
	Turned   Turned
	Mounting string // series taken without touching the dial have the same mounting and share its zero
	Readings []DialReading
}

// checkFigure refuses a rim figure that no rule round the rim can show.
func (s Setup) checkFigure(figure units.Length) error {
	if most := 10 * s.Rim.Girth(); !(figure >= -most && figure <= most) {
		return fmt.Errorf("rim figure %v: want no more than %v, ten times round the rim: %w", figure, most, units.ErrDomain)
	}
	return nil
}

// checkSeries refuses series without meaning and counts their readings.
func (s Setup) checkSeries(series []Series) (readings int, err error) {
	most := 10 * s.Stroke.Value
	for i, one := range series {
		if one.Turned != Forward && one.Turned != Backward {
			return 0, fmt.Errorf("series %s: %v: want Forward or Backward: %w", nameOf(one, i), one.Turned, units.ErrDomain)
		}
		for j, r := range one.Readings {
			if err := s.checkFigure(r.Rim); err != nil {
				return 0, fmt.Errorf("series %s, reading %d: %w", nameOf(one, i), j+1, err)
			}
			if !(r.Dial >= -most && r.Dial <= most) {
				return 0, fmt.Errorf("series %s, reading %d: dial figure %v: want no more than %v, ten strokes: %w", nameOf(one, i), j+1, r.Dial, most, units.ErrDomain)
			}
		}
		readings += len(one.Readings)
	}
	return readings, nil
}

func nameOf(s Series, i int) string {
	if s.Name != "" {
		return s.Name
	}
	return fmt.Sprint(i + 1)
}

// onRule brings a position on to the rule, where all the figures it was found
// from stand on it.
func (s Setup) onRule(position units.Length, figures ...units.Length) units.Length {
	for _, f := range figures {
		if f < 0 || f > s.Rim.Girth() {
			return position
		}
	}
	return Scale{rim: s.Rim}.OnRule(position)
}

// unwrap brings every rim figure to within half a girth of the middle of all of
// them, so that readings on either side of the end of the rule stand together.
func unwrap(figures []float64, girth float64) {
	var sin, cos float64
	for _, f := range figures {
		s, c := math.Sincos(2 * math.Pi * f / girth)
		sin, cos = sin+s, cos+c
	}
	low, high := figures[0], figures[0]
	for _, f := range figures {
		low, high = min(low, f), max(high, f)
	}
	if high-low <= girth/2 {
		return // as they are, to the last digit
	}
	middle := math.Atan2(sin, cos) / (2 * math.Pi) * girth
	middle = figures[0] + math.Remainder(middle-figures[0], girth)
	for i, f := range figures {
		figures[i] = middle + math.Remainder(f-middle, girth)
	}
}
