package ignition

import (
	"fmt"
	"math"
	"strings"

	"example.com/benchsums/units"
)

// PublishedAdvance returns the least and the greatest advance in running that
// was found printed in degrees for any old engine: from top dead centre to 40°
// before it, see [PracticeTable]. They are the ends of what was found, not of
// what is right.
func PublishedAdvance() (least, most units.Angle) {
	for _, p := range practices {
		least, most = min(least, p.Least), max(most, p.Most)
	}
	return least, most
}

// A Question is what to ask about a timing, and what it rests on. It is never a
// verdict: makers of like engines differed by ten degrees and more, and the
// plate or the card of the engine itself outweighs any table.
type Question struct {
	Advance units.Reading[units.Angle]
	Kind    Kind
	Running Running
	Lies    Fit         // to the range of Rows, its uncertainty considered
	Least   units.Angle // of the rows
	Most    units.Angle // of the rows
	Rows    []Practice  // those of the same kind and state, and of any kind where there are none
	Own     bool        // the rows are of the engine's own kind
	Text    string      // the question, in a sentence or two
}

// Ask compares a timing with published practice for engines of its kind in the
// same state. Speed may be 0 where it is not known; where it is known, rows
// whose printed speeds lie more than a factor of two off are left out.
//
// The error is [units.ErrDomain] for a timing that is not within half a turn of
// top dead centre, for an unknown kind or state, or for a negative speed.
func Ask(advance units.Reading[units.Angle], kind Kind, running Running, speed units.AngularSpeed) (Question, error) {
	switch {
	case !(math.Abs(float64(advance.Value)) <= float64(units.Turn/2)) || !(advance.Std >= 0):
		return Question{}, fmt.Errorf("timing %v before top dead centre: want from −180° to 180°: %w", advance.Value, units.ErrDomain)
	case kind < AnyKind || kind > EarlyStationary:
		return Question{}, fmt.Errorf("kind %d: want one of those named: %w", int(kind), units.ErrDomain)
	case running < AtSpeed || running > ShowIdle:
		return Question{}, fmt.Errorf("state %d: want AtSpeed, AtStart or ShowIdle: %w", int(running), units.ErrDomain)
	case !(speed >= 0):
		return Question{}, fmt.Errorf("speed %v: want 0 rev/min or more: %w", speed, units.ErrDomain)
	}
	q := Question{Advance: advance, Kind: kind, Running: running, Own: kind != AnyKind}
	if q.Rows = rowsFor(kind, running, speed); len(q.Rows) == 0 {
		q.Own, q.Rows = false, rowsFor(AnyKind, running, 0)
	}
	q.Least, q.Most = rangeOf(q.Rows)
	q.Lies = fitOf(advance, q.Least, q.Most)
	q.Text = q.text(speed)
	return q, nil
}

// rowsFor returns the rows that say an advance for a kind and a state at about
// a speed.
func rowsFor(kind Kind, running Running, speed units.AngularSpeed) []Practice {
	var out []Practice
	for _, p := range practices {
		_, _, ok := p.Advance()
		if ok && p.Running == running && (kind == AnyKind || p.Kind == kind) && p.near(speed) {
			out = append(out, p)
		}
	}
	return out
}

// near reports whether a speed is within a factor of two of those of the row,
// or one of them is not known.
func (p Practice) near(speed units.AngularSpeed) bool {
	if speed == 0 {
		return true
	}
	return (p.Fast == 0 || speed <= 2*p.Fast) && speed >= p.Slow/2
}

func rangeOf(rows []Practice) (least, most units.Angle) {
	for i, p := range rows {
		lo, hi, _ := p.Advance()
		if i == 0 {
			least, most = lo, hi
		}
		least, most = min(least, lo), max(most, hi)
	}
	return least, most
}

func (q Question) text(speed units.AngularSpeed) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s: ", fromTop(q.Advance.Value), q.Running)
	whose := "a " + q.Kind.String()
	if !q.Own {
		whose = "old engines of any kind"
	}
	found := fmt.Sprintf("what was found for %s %s (%d %s) runs from %s to %s", whose, q.Running, len(q.Rows), plural("row", len(q.Rows)), fromTop(q.Least), fromTop(q.Most))
	switch q.Lies {
	case Inside:
		b.WriteString(found + ", and this lies inside. Does the maker's plate or card say so too?")
	case Below:
		b.WriteString(found + ", and this is later. Was it read at full advance, turned forward, and is top dead centre the right one?")
	case Above:
		b.WriteString(found + ", and this is earlier. Are these degrees of the crank and not of a shaft, and is the mark on the right side of top dead centre?")
	default:
		b.WriteString(found + ", and within its uncertainty this may lie inside or outside. Can it be read better?")
	}
	if speed > 0 && q.Running == AtSpeed && q.Advance.Value > 0 {
		fmt.Fprintf(&b, " At %.0f rev/min it is %.1f ms before the top.", speed.RevolutionsPerMinute(), speed.Time(q.Advance.Value).Seconds()*1e3)
	}
	return b.String()
}

// fromTop writes an advance the way it is spoken.
func fromTop(advance units.Angle) string {
	switch d := advance.Degrees(); {
	case math.Abs(d) < 0.05:
		return "top dead centre"
	case d < 0:
		return fmt.Sprintf("%.1f° after top dead centre", -d)
	default:
		return fmt.Sprintf("%.1f° before top dead centre", d)
	}
}

func plural(word string, n int) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

// String returns the text of the question.
func (q Question) String() string { return q.Text }
