package threadsheet

import (
	"slices"

	"example.com/benchsums/threads"
)

// unlisted is how likely a thread of no table is before anything is measured, as
// threads.Identify has it.
const unlisted = 0.02

// together weighs the readings of a bolt and of the hole it belongs in as
// readings of one thread. Both answers hold the same prior, which counts once:
//
//	P(t | both) ∝ P(t | hole) P(t | bolt) / P(t)
//
// It is false where no thread is in both answers.
func together(hole, bolt threads.Identification, prior threads.Prior) (threads.Identification, bool) {
	whole := 0.
	for t := range threads.All() {
		whole += prior.Weight(t.Series())
	}
	both := threads.Identification{Hand: hole.Hand, Unlisted: hole.Unlisted * bolt.Unlisted / unlisted}
	sum := both.Unlisted
	for _, c := range hole.Candidates {
		i := slices.IndexFunc(bolt.Candidates, func(d threads.Candidate) bool { return d.Thread() == c.Thread() })
		w := weightOf(c, prior)
		if i < 0 || !(w > 0) {
			continue
		}
		c.Probability *= bolt.Candidates[i].Probability * whole / (w * (1 - unlisted))
		sum += c.Probability
		both.Candidates = append(both.Candidates, c)
	}
	if len(both.Candidates) == 0 {
		return both, false
	}
	for i := range both.Candidates {
		both.Candidates[i].Probability /= sum
	}
	both.Unlisted /= sum
	slices.SortStableFunc(both.Candidates, func(a, b threads.Candidate) int {
		switch {
		case a.Probability > b.Probability:
			return -1
		case a.Probability < b.Probability:
			return 1
		}
		return 0
	})
	return both, true
}

// weightOf is the prior weight of a candidate under all its names.
func weightOf(c threads.Candidate, prior threads.Prior) float64 {
	w := 0.
	for _, t := range c.Names() {
		w += prior.Weight(t.Series())
	}
	return w
}
