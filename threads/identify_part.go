package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Measurement is something that can be taken of a thread.
type Measurement uint8

// The measurements, in the order in which they are asked for: what is easy and
// sure before what is neither, and the angle last.
const (
	ByPitch     Measurement = iota // length over a number of threads
	ByCrest                        // diameter over the crests
	ByTaper                        // a rule laid along the crests
	ByEffective                    // effective diameter, over wires
	ByRoot                         // core of a bolt, cast of a nut
	ByAngle                        // flank angle, by a gauge leaf or a magnified shadow
)

// String returns the measurement in words.
func (m Measurement) String() string {
	switch m {
	case ByPitch:
		return "length over threads"
	case ByCrest:
		return "diameter over the crests"
	case ByTaper:
		return "taper"
	case ByEffective:
		return "effective diameter"
	case ByRoot:
		return "diameter at the root"
	case ByAngle:
		return "flank angle"
	}
	return "unknown measurement"
}

// What a small workshop can do, as standard uncertainties (common practice, no
// source).
const (
	canLength    = 0.05e-3 // m, vernier over threads
	canCrest     = 0.01e-3 // m, micrometer
	canEffective = 0.01e-3 // m, over wires
	canRoot      = 0.03e-3 // m, pointed anvils, or a cast
	canAngle     = 1.0 * units.Degree
	canThreads   = 12 // threads to span without thinking about it
	manyThreads  = 30 // threads to span where the bolt is long enough
)

// A Parting is the measurement that would part the first two candidates.
type Parting struct {
	By Measurement
	// First and Second are what to expect of each, and Std how well to take it,
	// as a standard uncertainty: 95 % of parts to the one thread then read on
	// its own side of the middle. They are 0 where By is ByAngle or ByTaper.
	First, Second, Std units.Length
	// Threads is how many to span when By is ByPitch.
	Threads int
	// The same for ByAngle.
	FirstAngle, SecondAngle, StdAngle units.Angle
	// Decides reports whether a small workshop can take it well enough. Where
	// nothing decides, By is what comes nearest and Std what to try for, the
	// best of ordinary tools.
	Decides bool

	first, second Thread
}

// String writes the parting as an instruction.
func (p Parting) String() string {
	tail := ""
	if !p.Decides {
		tail = "; it may leave them undecided"
	}
	switch p.By {
	case ByTaper:
		return fmt.Sprintf("lay a rule along the crests: one of %v and %v tapers 1 in 16%s", p.first, p.second, tail)
	case ByAngle:
		return fmt.Sprintf("flank angle: %.1f for %v, %.1f for %v, to %.1f%s",
			p.FirstAngle, p.first, p.SecondAngle, p.second, p.StdAngle, tail)
	case ByPitch:
		over := fmt.Sprintf("%d threads", p.Threads)
		if p.Threads == 1 {
			over = "one thread"
		}
		return fmt.Sprintf("length over %s: %.2f for %v, %.2f for %v, to %.2f%s",
			over, p.First, p.first, p.Second, p.second, p.Std, tail)
	}
	return fmt.Sprintf("%v: %.2f for %v, %.2f for %v, to %.3f%s", p.By, p.First, p.first, p.Second, p.second, p.Std, tail)
}

// Parting returns the measurement that would part the first two candidates, with
// how well it must be taken. It is the first in the order of Measurement that
// an ordinary tool can take well enough, with a length over more than 12
// threads asked for only after the diameters, and the angle only when nothing
// else decides. It is false where there are not two candidates,
// or where no measurement of the thread shows a difference.
func (n Identification) Parting() (Parting, bool) {
	if len(n.Candidates) < 2 {
		return Parting{}, false
	}
	return parting(n.Candidates[0].Thread(), n.Candidates[1].Thread(), n.part)
}

// PartingOf returns the measurement that would part two threads, as bolts or
// nuts. See Identification.Parting.
func PartingOf(first, second Thread, as Part) (Parting, bool) {
	if first.pitch == 0 || second.pitch == 0 || as > Nut {
		return Parting{}, false
	}
	return parting(first, second, as)
}

func parting(a, b Thread, as Part) (Parting, bool) {
	best, nearest := Parting{}, 0.
	for _, try := range [...]func(a, b Thread, m Part) (Parting, float64){
		partByPitch, partByCrest, partByTaper, partByEffective, partByRoot, partByLongPitch, partByAngle,
	} {
		p, power := try(a, b, as)
		p.first, p.second, p.Decides = a, b, power >= 1
		if p.Decides {
			return p, true
		}
		if power > nearest {
			best, nearest = p, power
		}
	}
	return best, nearest > 0.1 // less is no difference that anyone would see
}

// power returns how far two things lie apart by the side of what four standard
// deviations need, and how well the reading must be taken: apart is the
// difference, work the scatter of the parts, can what tools do.
func power(apart, work, can float64) (power, std float64) {
	quarter := math.Abs(apart) / 4
	power = quarter / math.Hypot(work, can)
	if power >= 1 {
		return power, math.Sqrt(quarter*quarter - work*work)
	}
	return power, can
}

func partByPitch(a, b Thread, _ Part) (Parting, float64) { return partOver(canThreads, a, b) }

func partByLongPitch(a, b Thread, _ Part) (Parting, float64) { return partOver(manyThreads, a, b) }

// partOver parts by the length over as few threads as will do, and over most
// at the most.
func partOver(most int, a, b Thread) (Parting, float64) {
	apart := math.Abs(float64(a.pitch - b.pitch))
	if apart < 1e-9*float64(a.pitch) {
		return Parting{}, 0
	}
	work := workLead * float64(a.pitch+b.pitch) / 2
	n := most
	if room := apart*apart/16 - work*work; room > 0 {
		n = min(n, max(1, int(math.Ceil(canLength/math.Sqrt(room)))))
	}
	k := float64(n)
	pow, std := power(k*apart, k*work, canLength)
	return Parting{By: ByPitch, Threads: n, Std: units.Length(std),
		First: units.Length(n) * a.pitch, Second: units.Length(n) * b.pitch}, pow
}

// partBySize parts by a diameter of which work leaves the spreads sa and sb.
func partBySize(by Measurement, a, b units.Length, sa, sb spread, m Part, can float64) (Parting, float64) {
	a, b = a-sa.middle(m), b-sb.middle(m)
	work := math.Hypot((sa.span+sb.span)/2/math.Sqrt(12), workScatter)
	pow, std := power(float64(a-b), work, can)
	return Parting{By: by, First: a, Second: b, Std: units.Length(std)}, pow
}

// middle returns how far below basic ordinary work lies on average.
func (s spread) middle(m Part) units.Length {
	below := units.Length(s.low + s.span/2)
	if m == Nut {
		return -below
	}
	return below
}

func partByCrest(a, b Thread, m Part) (Parting, float64) {
	return partBySize(ByCrest, crest(a, m), crest(b, m), workOn(a, m).crest, workOn(b, m).crest, m, canCrest)
}

// partByTaper is for a taper thread and a parallel one: over four turns the
// crests of the one rise by an eighth of a pitch, which a straight edge shows.
func partByTaper(a, b Thread, _ Part) (Parting, float64) {
	if a.Taper() == b.Taper() {
		return Parting{}, 0
	}
	return Parting{By: ByTaper}, 2
}

// partByEffective has no way to a nut without a gauge made for it.
func partByEffective(a, b Thread, m Part) (Parting, float64) {
	if m == Nut {
		return Parting{}, 0
	}
	return partBySize(ByEffective, a.effective, b.effective, workOn(a, m).effective, workOn(b, m).effective, m, canEffective)
}

func partByRoot(a, b Thread, m Part) (Parting, float64) {
	return partBySize(ByRoot, root(a, m), root(b, m), workOn(a, m).root, workOn(b, m).root, m, canRoot)
}

func partByAngle(a, b Thread, _ Part) (Parting, float64) {
	fa, fb := a.form.Angle(), b.form.Angle()
	pow, std := power(float64(fa-fb), float64(workAngle), float64(canAngle))
	return Parting{By: ByAngle, FirstAngle: fa, SecondAngle: fb, StdAngle: units.Angle(std)}, pow
}
