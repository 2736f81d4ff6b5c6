package threads

import (
	"cmp"
	"fmt"
	"iter"
	"slices"
	"sync"

	"example.com/benchsums/units"
)

// An Identifier names unknown threads out of a list of known ones, which it
// holds sorted. It does not change once NewIdentifier has made it, and may be
// used from many goroutines.
type Identifier struct {
	bolts []known // by major diameter
	nuts  []known // by minor diameter
	total int     // threads, under every name
	count [seriesEnd]int
}

// A known is a thread under all its names, with what the sums need of it.
type known struct {
	names  []Thread // the same thread by Thread.Same
	sought float64  // the basic diameter at the crest, m
	work   workmanship
	pitch  float64 // m
	angle  float64 // rad
	taper  bool
}

// NewIdentifier returns an identifier that knows the given threads. Threads
// that are the same under two names count as one candidate with both. The
// error wraps units.ErrDomain when there is none.
func NewIdentifier(all iter.Seq[Thread]) (*Identifier, error) {
	var names [][]Thread
	var id Identifier
	for t := range all {
		if t.pitch == 0 {
			return nil, noThread()
		}
		id.total++
		id.count[t.series]++
		i := slices.IndexFunc(names, func(n []Thread) bool { return n[0].Same(t) })
		if i < 0 {
			names = append(names, []Thread{t})
		} else {
			names[i] = append(names[i], t)
		}
	}
	if id.total == 0 {
		return nil, fmt.Errorf("identifier of no threads: want at least one: %w", units.ErrDomain)
	}
	id.bolts, id.nuts = sorted(names, Bolt), sorted(names, Nut)
	return &id, nil
}

// sorted returns what is known of each thread as bolt or nut, by its crest.
func sorted(names [][]Thread, m Part) []known {
	all := make([]known, len(names))
	for i, n := range names {
		t := n[0]
		all[i] = known{n, float64(crest(t, m)), workOn(t, m), float64(t.pitch), float64(t.form.Angle()), t.Taper() != 0}
	}
	slices.SortStableFunc(all, func(a, b known) int { return cmp.Compare(a.sought, b.sought) })
	return all
}

// crest returns the basic diameter at the crests, root that at the roots.
func crest(t Thread, m Part) units.Length {
	if m == Nut {
		return t.minor
	}
	return t.major
}

func root(t Thread, m Part) units.Length {
	if m == Nut {
		return t.major
	}
	return t.BoltRoot()
}

// everyThread is made on first use and then kept: sorting all the tables takes
// a hundred times as long as one answer. It never changes.
var everyThread = sync.OnceValues(func() (*Identifier, error) { return NewIdentifier(All()) })

// Identify names a thread from its readings, out of all series, best first.
// See Identifier.Identify.
func Identify(r Readings) (Identification, error) {
	id, err := everyThread()
	if err != nil {
		return Identification{}, err
	}
	return id.Identify(r)
}

// A Candidate is a thread that the readings may be of.
type Candidate struct {
	// Probability is that of the thread under all its names.
	Probability float64
	// Short is how much metal the part is short of at its crests, on the
	// diameter: how far the reading lies under the major diameter of a bolt, over
	// the minor of a nut. 0 when there is no such reading.
	Short units.Length
	// Pitch is how much the reading of the pitch exceeds that of the thread. 0
	// when there is no such reading.
	Pitch units.Length
	// Tolerances is Short over the tolerance that ordinary work has there.
	Tolerances float64

	known *known
}

// Thread returns the thread by the first of its names.
func (c Candidate) Thread() Thread {
	if c.known == nil {
		return Thread{}
	}
	return c.known.names[0]
}

// Names returns the thread under all its names, such as 1/4-26 BSF and 1/4-26
// brass, which no measurement can part.
func (c Candidate) Names() []Thread {
	if c.known == nil {
		return nil
	}
	return slices.Clone(c.known.names)
}

// An Identification is the answer of Identify.
type Identification struct {
	// Candidates has every thread of a probability of a millionth or more, the
	// likeliest first.
	Candidates []Candidate
	// Unlisted is the probability that it is a thread of no table, cut to the
	// maker's own sizes.
	Unlisted float64
	// Hand is that of the readings.
	Hand Hand

	part Part
}

// least is the probability below which a candidate is left out.
const least = 1e-6

// Identify returns the candidates for the readings with their probabilities,
// the likeliest first.
//
// The probability of a thread is its prior weight times the likelihood of each
// reading, over the sum of these for all threads and for one of no table. The
// likelihood says how a part made to the thread comes to measure as it does;
// the package documentation sets it out under "Which thread is this?".
//
// The time goes with the threads that the readings reach: a few microseconds
// for a diameter and a pitch off a micrometer and a rule, and some hundred times
// as long for a vague diameter alone that leaves hundreds of threads open.
//
// The error wraps units.ErrDomain for readings that make no sense.
func (id *Identifier) Identify(r Readings) (Identification, error) {
	if err := r.check(); err != nil {
		return Identification{}, err
	}
	if id == nil || id.total == 0 {
		return Identification{}, fmt.Errorf("no identifier: want one of NewIdentifier: %w", units.ErrDomain)
	}
	weight := r.Prior.total(id)
	if weight == 0 {
		return Identification{}, fmt.Errorf("prior: want a weight above 0 for one series at least: %w", units.ErrDomain)
	}
	m := newModel(r)
	all, lo, hi := id.window(&m, r.Part)
	unlisted := priorUnlisted / (1 - priorUnlisted) * weight * m.unlisted()
	sum := unlisted
	found := make([]Candidate, 0, 16)
	for i := lo; i < hi; i++ {
		k := &all[i]
		if p := m.likelihood(k); p > 0 {
			p *= r.Prior.of(k)
			sum += p
			found = append(found, Candidate{known: k, Probability: p})
		}
	}
	if !(sum > 0) { // so far out that even the thread of no table underflows
		return Identification{Unlisted: 1, Hand: r.Hand, part: r.Part}, nil
	}
	found = rank(found, sum)
	for i := range found {
		m.explain(&found[i])
	}
	return Identification{Candidates: found, Unlisted: unlisted / sum, Hand: r.Hand, part: r.Part}, nil
}

// of returns the prior weight of a thread under all its names.
func (p *Prior) of(k *known) float64 {
	if !p.set {
		return float64(len(k.names))
	}
	w := 0.
	for i := range k.names {
		w += p.weights[k.names[i].series]
	}
	return w
}

// total returns the prior weight of all threads together.
func (p *Prior) total(id *Identifier) float64 {
	if !p.set {
		return float64(id.total)
	}
	w := 0.
	for s, n := range id.count {
		w += p.weights[s] * float64(n)
	}
	return w
}

// rank turns weights into probabilities and puts the likeliest first.
func rank(found []Candidate, sum float64) []Candidate {
	n := 0
	for _, c := range found {
		if c.Probability /= sum; c.Probability >= least {
			found[n] = c
			n++
		}
	}
	slices.SortStableFunc(found[:n], func(a, b Candidate) int { return cmp.Compare(b.Probability, a.Probability) })
	return found[:n]
}

// window returns the threads as the part and the range of them that the
// reading over the crests leaves.
func (id *Identifier) window(m *model, part Part) (all []known, lo, hi int) {
	all = id.bolts
	if part == Nut {
		all = id.nuts
	}
	if m.crest.std == 0 {
		return all, 0, len(all)
	}
	from, to := m.window(part)
	lo, _ = slices.BinarySearchFunc(all, from, func(k known, x float64) int { return cmp.Compare(k.sought, x) })
	hi, _ = slices.BinarySearchFunc(all[lo:], to, func(k known, x float64) int { return cmp.Compare(k.sought, x) })
	return all, lo, lo + hi
}

// Decided reports whether the likeliest thread alone has the probability.
func (n Identification) Decided(probability float64) bool {
	return len(n.Candidates) > 0 && n.Candidates[0].Probability >= probability
}

// Within returns the fewest candidates that together have the probability, or
// all where they do not reach it.
func (n Identification) Within(probability float64) []Candidate {
	sum := 0.
	for i, c := range n.Candidates {
		if sum += c.Probability; sum >= probability {
			return n.Candidates[:i+1]
		}
	}
	return n.Candidates
}
