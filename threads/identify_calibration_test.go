package threads

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.com/benchsums/units"
)

// A workshop draws threads, makes parts to them and measures the parts, all by
// the stated model: what is said of the parts must then be right as often as
// it is said to be.
type workshop struct {
	rng *rand.Rand
	all []Thread
}

func newWorkshop(seed uint64) *workshop {
	w := &workshop{rng: rand.New(rand.NewPCG(seed, 1))}
	for th := range All() {
		w.all = append(w.all, th)
	}
	return w
}

func (w *workshop) even(from, to float64) float64 { return from + (to-from)*w.rng.Float64() }

func (w *workshop) oneOf(x ...float64) float64 { return x[w.rng.IntN(len(x))] }

// reading measures a true value.
func (w *workshop) reading(true, std, work float64) units.Reading[units.Length] {
	read := true + math.Hypot(std, work)*w.rng.NormFloat64()
	return units.WithStd(units.Length(read), units.Length(std))
}

// part returns a thread, or none for one of no table, and the readings of a
// part made to it.
func (w *workshop) part() (Thread, Readings) {
	r := Readings{Wear: units.Length(w.oneOf(0, 0, 0.05e-3, 0.2e-3))}
	if w.rng.IntN(2) == 1 {
		r.Part = Nut
	}
	if w.rng.Float64() < priorUnlisted {
		return Thread{}, w.unlisted(r)
	}
	th := w.all[w.rng.IntN(len(w.all))]
	work := workOn(th, r.Part)
	side := 1.
	if r.Part == Nut {
		side = -1
	}
	off := func(s spread) float64 { return side * (s.low + s.span*w.rng.Float64()) }
	basic := float64(crest(th, r.Part))
	r.Wear = min(r.Wear, units.Length(basic/20))
	r.Crest = w.reading(basic-off(work.crest)-side*float64(r.Wear)*w.rng.Float64(), w.crestStd(basic), workScatter)
	r.Pitch = w.reading(float64(th.Pitch()), w.pitchStd(float64(th.Pitch())), workLead*float64(th.Pitch()))
	if w.rng.IntN(5) == 0 {
		r.Effective = w.reading(float64(th.Effective())-off(work.effective), 0.01e-3, workScatter)
	}
	if w.rng.IntN(5) == 0 {
		r.Root = w.reading(float64(root(th, r.Part))-off(work.root), 0.03e-3, workScatter)
	}
	if w.rng.IntN(4) == 0 {
		r.Angle = w.angle(th.Form().Angle())
	}
	if w.rng.IntN(3) == 0 {
		r.Taper = Parallel
		if th.Taper() != 0 {
			r.Taper = Tapered
		}
	}
	return th, r
}

// Tools from a micrometer to a rule, but no rule on a watch screw.
func (w *workshop) crestStd(d float64) float64 {
	return min(w.oneOf(0.008e-3, 0.03e-3, 0.1e-3, 0.3e-3), d/30)
}

func (w *workshop) pitchStd(p float64) float64 {
	return min(w.oneOf(0.05e-3, 0.05e-3, 0.2e-3)/w.oneOf(4, 8, 12), p/10)
}

func (w *workshop) angle(true units.Angle) units.Reading[units.Angle] {
	std := units.Angle(w.oneOf(1, 2)) * units.Degree
	read := float64(true) + math.Hypot(float64(std), float64(workAngle))*w.rng.NormFloat64()
	return units.WithStd(units.Angle(read), std)
}

func (w *workshop) unlisted(r Readings) Readings {
	d := 1e-3 * math.Exp(unlistedDiameters*w.rng.Float64())
	r.Crest = w.reading(d, w.crestStd(d), workScatter)
	pitch := 0.2e-3 * math.Exp(unlistedPitches*w.rng.Float64())
	r.Pitch = w.reading(pitch, w.pitchStd(pitch), workLead*pitch)
	if w.rng.IntN(4) == 0 {
		r.Angle = w.angle(units.Angle(w.even(45, 65)) * units.Degree)
	}
	if w.rng.IntN(3) == 0 {
		r.Taper = Parallel
	}
	return r
}

// isNamed reports whether the candidate is the thread under one of its names.
func (c Candidate) isNamed(th Thread) bool {
	for _, n := range c.known.names {
		if n == th {
			return true
		}
	}
	return false
}

// What is called 90 % is right 88 to 92 % of the time, and so at every other
// grade of sureness.
func TestIdentifyIsRightAsOftenAsItSays(t *testing.T) {
	if testing.Short() {
		t.Skip("draws 150,000 parts")
	}
	const draws = 150_000
	w := newWorkshop(20261125)
	type tally struct{ n, right, said float64 }
	var bins [20]tally // of the probability of the first candidate, by twentieths
	var ninety tally   // called 90 %, to the nearest five
	var within tally   // the candidates that together have 90 %
	for range draws {
		th, r := w.part()
		got, err := Identify(r)
		if err != nil {
			t.Fatalf("%v: %v", th, err)
		}
		sum := got.Unlisted
		for _, c := range got.Candidates {
			sum += c.Probability
		}
		if !(math.Abs(sum-1) < 1e-3) {
			t.Fatalf("%v: probabilities sum to %.6f", th, sum)
		}
		if len(got.Candidates) == 0 {
			continue
		}
		c := got.Candidates[0]
		b := &bins[min(int(20*c.Probability), 19)]
		hit := 0.
		if c.isNamed(th) {
			hit = 1
		}
		b.n, b.right, b.said = b.n+1, b.right+hit, b.said+c.Probability
		if c.Probability >= 0.875 && c.Probability < 0.925 {
			ninety.n, ninety.right, ninety.said = ninety.n+1, ninety.right+hit, ninety.said+c.Probability
		}
		if th != (Thread{}) {
			within.n++
			for _, c := range got.Within(0.9) {
				if c.isNamed(th) {
					within.right++
				}
			}
		}
	}
	if !(ninety.n > 2000) {
		t.Fatalf("only %g calls of 90 %%", ninety.n)
	}
	if share := ninety.right / ninety.n; !(share >= 0.88 && share <= 0.92) {
		t.Errorf("called 90 %% (mean %.4f) %g times: right %.4f", ninety.said/ninety.n, ninety.n, share)
	}
	t.Logf("called 90 %% (mean %.4f) %g times: right %.4f", ninety.said/ninety.n, ninety.n, ninety.right/ninety.n)
	for i, b := range bins {
		if b.n < 300 {
			continue
		}
		said, right := b.said/b.n, b.right/b.n
		t.Logf("bin %2d: said %.4f right %.4f of %g", i, said, right, b.n)
		if !(math.Abs(right-said) <= 4*math.Sqrt(said*(1-said)/b.n)+0.01) {
			t.Errorf("said %.3f, right %.3f of %g", said, right, b.n)
		}
	}
	if share := within.right / within.n; !(share >= 0.9) {
		t.Errorf("the candidates that have 90 %% hold the thread %.4f of the time", share)
	}
}

// With the prior of a British machine, of parts drawn by that prior.
func TestIdentifyByThePriorIsRightAsOftenAsItSays(t *testing.T) {
	if testing.Short() {
		t.Skip("draws 150,000 parts")
	}
	prior, err := NewPrior(British, 1900, 1955)
	if err != nil {
		t.Fatal(err)
	}
	w := newWorkshop(7)
	n, right, said := 0., 0., 0.
	for range 150_000 {
		th, r := w.part()
		if th != (Thread{}) && w.rng.Float64() > prior.Weight(th.Series()) {
			continue // drawn less often
		}
		if th == (Thread{}) && w.rng.Float64() > priorShare(prior, w.all) {
			continue
		}
		r.Prior = prior
		got, err := Identify(r)
		if err != nil {
			t.Fatal(err)
		}
		if len(got.Candidates) == 0 || got.Candidates[0].Probability < 0.85 || got.Candidates[0].Probability > 0.95 {
			continue
		}
		n, said = n+1, said+got.Candidates[0].Probability
		if got.Candidates[0].isNamed(th) {
			right++
		}
	}
	t.Logf("called 90 %% (mean %.4f) %g times: right %.4f", said/n, n, right/n)
	if !(n > 1000 && math.Abs(right/n-said/n) < 0.02) {
		t.Errorf("called 90 %% (mean %.4f) %g times: right %.4f", said/n, n, right/n)
	}
}

func priorShare(p Prior, all []Thread) float64 {
	w := 0.
	for _, th := range all {
		w += p.Weight(th.Series())
	}
	return w / float64(len(all))
}

// Parts made to the limits of a standard, which the straight lines of the model
// only follow, are named as well as the model promises.
func TestIdentifyPartsMadeToStandards(t *testing.T) {
	w := newWorkshop(3)
	n, right, said := 0., 0., 0.
	for range 40_000 {
		th := w.all[w.rng.IntN(len(w.all))]
		class, ok := map[Series]string{ISOCoarse: "6g", ISOFine: "6g", UNC: "2A", UNF: "2A", BA: "normal", BSW: "medium", BSF: "medium"}[th.Series()]
		if !ok {
			continue
		}
		lim, err := th.BoltLimits(class)
		if err != nil {
			continue
		}
		d := w.even(float64(lim.Major.Min), float64(lim.Major.Max))
		got, err := Identify(Readings{
			Crest: w.reading(d, w.crestStd(d), 0),
			Pitch: w.reading(float64(th.Pitch()), w.pitchStd(float64(th.Pitch())), 0),
		})
		if err != nil {
			t.Fatal(err)
		}
		if len(got.Candidates) > 0 && got.Candidates[0].Probability > 0.8 {
			n, said = n+1, said+got.Candidates[0].Probability
			if got.Candidates[0].isNamed(th) {
				right++
			}
		}
	}
	t.Logf("said %.4f of %g, right %.4f", said/n, n, right/n)
	if !(n > 2000 && right/n > said/n-0.02) {
		t.Errorf("said %.4f of %g, right %.4f", said/n, n, right/n)
	}
}
