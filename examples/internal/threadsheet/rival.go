package threadsheet

import (
	"math"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// rivalFrom is the probability below which a second candidate is no likelier
// than any neighbour in the tables.
const rivalFrom = 1e-4

// Second returns the thread to hold beside the likeliest: the second candidate,
// or where the readings leave none, the one of the tables that comes nearest to
// the first and may be taken for it.
func (c *Checked) Second() (t threads.Thread, listed, ok bool) {
	if len(c.Found.Candidates) > 1 && c.Found.Candidates[1].Probability >= rivalFrom {
		return c.Found.Candidates[1].Thread(), true, true
	}
	best, ok := c.Best()
	if !ok {
		return threads.Thread{}, false, false
	}
	t = nearest(best)
	return t, false, t != (threads.Thread{})
}

// nearest returns the thread of the tables that is most like t, by the larger of
// the differences of diameter and of pitch over five threads, both as parts of
// the pitch.
func nearest(t threads.Thread) threads.Thread {
	var found threads.Thread
	least := math.Inf(1)
	for u := range threads.All() {
		if u.Same(t) {
			continue
		}
		apart := max(part(u.Major()-t.Major(), t.Pitch()), 5*part(u.Pitch()-t.Pitch(), t.Pitch())) +
			1e-3*math.Abs(float64(u.Form().Angle()-t.Form().Angle()))
		if apart < least {
			found, least = u, apart
		}
	}
	return found
}

func part(of, whole units.Length) float64 { return math.Abs(float64(of / whole)) }
