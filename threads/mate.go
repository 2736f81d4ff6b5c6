package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Pair is a bolt of one thread in a nut of the same or another. NewPair
// makes one.
type Pair struct {
	bolt, nut         Thread
	boltHand, nutHand Hand
}

// NewPair returns the pair of two right-hand threads. The error wraps
// units.ErrDomain for a zero Thread.
func NewPair(bolt, nut Thread) (Pair, error) {
	if bolt.pitch == 0 || nut.pitch == 0 {
		return Pair{}, noThread()
	}
	return Pair{bolt: bolt, nut: nut}, nil
}

// WithHands returns the pair with the given hands.
func (p Pair) WithHands(bolt, nut Hand) Pair {
	p.boltHand, p.nutHand = bolt, nut
	return p
}

// Bolt returns the thread of the bolt.
func (p Pair) Bolt() Thread { return p.bolt }

// Nut returns the thread of the nut.
func (p Pair) Nut() Thread { return p.nut }

// An Outcome is what happens when bolt and nut are brought together by hand.
type Outcome uint8

// The outcomes.
const (
	RunsFree      Outcome = iota // over the whole length, even of basic sizes
	RunsIfLoose                  // over the whole length only where the parts are small or worn
	Binds                        // starts, and jams on the way
	Tightens                     // a taper thread: goes in some turns and is then tight
	WillNotStart                 // does not enter without force
	PassesThrough                // the bolt is smaller than the bore of the nut
	WrongHand                    // one right, one left
)

// String returns the verdict in words.
func (v Outcome) String() string {
	switch v {
	case RunsFree:
		return "runs free"
	case RunsIfLoose:
		return "runs only if the parts are loose"
	case Binds:
		return "starts, then binds"
	case WillNotStart:
		return "will not start"
	case Tightens:
		return "tightens as a taper does"
	case PassesThrough:
		return "passes through"
	case WrongHand:
		return "wrong hand"
	}
	return "unknown outcome"
}

// A Harm is what a pair of two different threads does to them.
type Harm uint8

// The harms.
const (
	Wedging    Harm = iota // flanks jam by a difference of pitch or of size
	EdgeLoad               // flanks of different angles bear on one edge
	Shallow                // less than 60 % of the nut's depth meets the bolt
	Splitting              // a taper bolt in a parallel hole
	Leaking                // a parallel bolt in a taper hole
	CrossStart             // what does not enter is forced
)

// String says what gets hurt.
func (h Harm) String() string {
	switch h {
	case Wedging:
		return "the flanks wedge and pick up; forced, the softer thread strips, most often the tapped hole, which is the part without a spare"
	case EdgeLoad:
		return "the load bears on one edge of the flanks: it feels right by hand and yields when tightened"
	case Shallow:
		return "little depth of thread meets: it strips, and a plug leaks or blows out"
	case Splitting:
		return "a taper thread run into a parallel hole splits the boss"
	case Leaking:
		return "a parallel thread in a taper hole bears on its end only and leaks"
	case CrossStart:
		return "forced, it crosses the thread and spoils both"
	}
	return "unknown harm"
}

// A Mating is what comes of bringing bolt and nut together.
type Mating struct {
	Outcome Outcome
	// Tight, Middle and Loose are the turns the bolt goes in before it binds or
	// is tight: with both at basic size, as tight as good work can be; with both
	// half as far on the loose side as ordinary work goes; and with both all the
	// way. Most real parts lie about the middle. +Inf means never, 0 that it does
	// not enter. Lead-in at bolt end and hole mouth lets about one turn more pass.
	Tight, Middle, Loose float64
	// LeadError is the difference of lead over the engaged length, and Growth
	// what it does: it acts as if the bolt's effective diameter were larger by
	// LeadError × cot(half angle).
	LeadError, Growth units.Length
	// Overlap is how much of the nut's depth of thread meets the bolt, both at
	// basic size.
	Overlap float64
	// Harms lists what gets hurt if the pair is used; none for a right mate.
	Harms []Harm
}

// Mate returns what comes of screwing bolt and nut together over an engaged
// length.
//
// The flanks leave each other a slack along the axis, by the basic sizes or by
// loose ones; a difference of pitch uses it up turn by turn:
//
//	turns = slack / |p bolt − p nut|
//
// With equal angles the slack is (effective of nut − effective of bolt) × tan
// of the flank angle, so that the pair binds when the difference of lead ×
// cot(half angle) comes up to the difference of effective diameters. With
// unequal ones it is taken where flanks meet first, at the top or the bottom
// of the overlap. How loose parts may be is the workmanship of Identify.
//
// Test by hand: a right mate runs its full length with the fingers. If it
// stiffens after two or three turns, stop.
//
// The error wraps units.ErrDomain for a length not more than 0 mm.
func (p Pair) Mate(engaged units.Length) (Mating, error) {
	if !(engaged > 0) || math.IsInf(float64(engaged), 0) {
		return Mating{}, fmt.Errorf("engaged length %v: want more than 0 mm: %w", engaged, units.ErrDomain)
	}
	if p.bolt.pitch == 0 {
		return Mating{}, noThread()
	}
	perTurn := math.Abs(float64(p.bolt.pitch - p.nut.pitch))
	if near(p.bolt.pitch, p.nut.pitch) {
		perTurn = 0
	}
	turns := float64(engaged / p.nut.pitch)
	tan := min(p.bolt.form.TanFlank(), p.nut.form.TanFlank())
	m := Mating{
		Tight:     p.turns(0, perTurn),
		Middle:    p.turns(0.5, perTurn),
		Loose:     p.turns(1, perTurn),
		LeadError: units.Length(perTurn * turns),
		Growth:    units.Length(perTurn * turns / tan),
		Overlap:   p.overlap(),
	}
	m.Outcome = p.outcome(m, turns)
	m.Harms = p.harms(m)
	return m, nil
}

// turns returns the turns that parts go in, loose from 0 for basic sizes to 1
// for the loosest.
func (p Pair) turns(loose, perTurn float64) float64 {
	return min(turnsUntil(p.slack(loose), perTurn), p.taperTurns(loose))
}

// turnsUntil divides the slack by what one turn uses up.
func turnsUntil(slack, perTurn float64) float64 {
	const hair = 1e-9 // m: rounding, and less than any surface
	switch {
	case slack < -hair:
		return 0
	case perTurn == 0:
		return math.Inf(1)
	}
	return max(slack, 0) / perTurn
}

// taperTurns returns the turns after which a taper is tight. A taper bolt goes
// in by its gauge length, from its small end to where it is as large as the
// mouth of the hole; a parallel bolt is that large from the start.
func (p Pair) taperTurns(loose float64) float64 {
	steepest := max(p.bolt.Taper(), p.nut.Taper())
	if steepest == 0 {
		return math.Inf(1)
	}
	play := float64(p.nut.effective - p.bolt.effective)
	play += loose * (workEnd*2 + workEffective*float64(p.bolt.pitch+p.nut.pitch))
	turns := play / (steepest * float64(p.bolt.pitch))
	if p.bolt.Taper() != 0 {
		turns += workTaper
	}
	return max(turns, 0)
}

// overlap returns the share of the nut's depth that the bolt meets, 0 where it
// meets none.
func (p Pair) overlap() float64 {
	meets := min(p.bolt.major, p.nut.major) - max(p.bolt.BoltRoot(), p.nut.minor)
	return max(float64(meets/(p.nut.major-p.nut.minor)), 0)
}

// slack returns the axial play of the flanks, or −1 m where crest fouls root.
// Loose is 0 for basic sizes and 1 for the loosest.
func (p Pair) slack(loose float64) float64 {
	b, n := workOn(p.bolt, Bolt), workOn(p.nut, Nut)
	boltCrest := float64(p.bolt.major) - loose*b.crest.span
	boltEffective := float64(p.bolt.effective) - loose*b.effective.span
	boltRoot := float64(p.bolt.BoltRoot())
	nutRoot := float64(p.nut.major) + loose*n.root.span
	nutEffective := float64(p.nut.effective) + loose*n.effective.span
	nutCrest := float64(p.nut.minor) + loose*n.crest.span
	if boltCrest > nutRoot+1e-9 || boltRoot > nutCrest+1e-9 {
		return -1
	}
	top := min(boltCrest-rounding(p.bolt), nutRoot)
	bottom := max(nutCrest+rounding(p.nut), boltRoot)
	play := func(d float64) float64 {
		return (d-boltEffective)*p.bolt.form.TanFlank() - (d-nutEffective)*p.nut.form.TanFlank()
	}
	return min(play(top), play(bottom))
}

// rounding returns what a rounded crest takes off the straight flank, on the
// diameter.
func rounding(t Thread) float64 {
	shape, r := t.form.Crest(t.pitch)
	if shape != Round {
		return 0
	}
	tan := t.form.TanFlank()
	return 2 * float64(r) * (1 - tan/math.Hypot(1, tan))
}

func (p Pair) outcome(m Mating, turns float64) Outcome {
	switch {
	case p.boltHand != p.nutHand:
		return WrongHand
	case p.bolt.major <= p.nut.minor:
		return PassesThrough
	case p.bolt.Taper() != 0 && m.Loose > 0:
		return Tightens
	case m.Tight >= turns:
		return RunsFree
	case m.Loose >= turns:
		return RunsIfLoose
	case m.Loose > 0:
		return Binds
	}
	return WillNotStart
}

func (p Pair) harms(m Mating) []Harm {
	var all []Harm
	add := func(h Harm, when bool) {
		if when {
			all = append(all, h)
		}
	}
	enters := m.Outcome <= Tightens
	add(Wedging, m.Outcome == RunsIfLoose || m.Outcome == Binds)
	add(EdgeLoad, enters && math.Abs(float64(p.bolt.form.Angle()-p.nut.form.Angle())) > 1e-9)
	add(Shallow, (enters || m.Outcome == PassesThrough) && m.Overlap < 0.6)
	add(Splitting, enters && p.bolt.Taper() > p.nut.Taper())
	add(Leaking, enters && p.bolt.Taper() < p.nut.Taper())
	add(CrossStart, m.Outcome == WillNotStart || m.Outcome == WrongHand)
	return all
}
