package threads

import (
	"math"

	"example.com/benchsums/units"
)

// A spread is how far ordinary work lies on the worn side of basic: anywhere
// from low to low + span with the same likelihood, in metres on the diameter.
type spread struct{ low, span float64 }

// A workmanship is how parts come out that are made to a thread.
type workmanship struct {
	crest, effective, root spread
}

// How far parts lie from basic. The straight lines run through the limits of
// ISO 6g, Unified 2A and British Association normal class from 3 to 12 mm:
// M8 may be 0.240 mm under its major diameter, M3 0.126 mm, 1/4-20 0.234 mm.
const (
	workEnd = 0.05e-3 // m, at no pitch at all

	workCrest     = 0.15  // of the pitch
	workEffective = 0.075 // of the pitch
	workRoundRoot = 0.15  // of the pitch, where one radius is prescribed
	workFlatRoot  = 0.27  // of the pitch, where the tool may be sharp or blunt

	// A hole may be drilled to leave from all of the thread down to 60 % of it
	// (common practice, no source).
	workBore = 0.4 // of major less minor

	// A taper thread is measured where the rule falls, 4.5 pitches either side
	// of the gauge plane: the gauge length of ISO 7-1 is 4.4 to 5.5 pitches to 1
	// in.
	workTaper = 4.5 // pitches

	// Scatter of form and size within one part, and of lead and angle.
	workScatter = 0.015e-3 // m on a diameter
	workLead    = 0.001    // of the pitch
)

const workAngle = 0.5 * units.Degree

// workOn returns the workmanship for a thread as bolt or nut.
func workOn(t Thread, m Part) workmanship {
	p := float64(t.pitch)
	w := workmanship{
		crest:     spread{0, workEnd + workCrest*p},
		effective: spread{0, workEnd + workEffective*p},
		root:      spread{0, workEnd + workRoundRoot*p},
	}
	if shape, _ := t.form.Root(t.pitch); shape != Round {
		w.root.span = workEnd + workFlatRoot*p
	}
	if profile(t.form) == ISOForm { // BoltRoot is the deep end of what is allowed
		w.root = spread{-2 * float64(ISOBoltForm.Depth(t.pitch)-ISOForm.Depth(t.pitch)), workEnd + workFlatRoot*p}
	}
	if m == Nut {
		w.crest = spread{0, workBore * float64(t.major-t.minor)}
		w.root = spread{0, workEnd + workCrest*p}
	}
	along := t.Taper() * workTaper * p
	for _, s := range [...]*spread{&w.crest, &w.effective, &w.root} {
		s.low -= along
		s.span += 2 * along
	}
	return w
}

// A model holds the readings made ready.
type model struct {
	crest, effective, root, pitch, angle dimension
	away                                 float64 // 1 for a bolt, which wears smaller, −1 for a nut
	wear                                 float64
	taper                                TaperSeen
	part                                 Part
}

func newModel(r Readings) model {
	m := model{
		crest:     ready(r.Crest, workScatter),
		effective: ready(r.Effective, workScatter),
		root:      ready(r.Root, workScatter),
		pitch:     ready(r.Pitch, workLead*float64(r.Pitch.Value)),
		angle:     ready(r.Angle, float64(workAngle)),
		away:      1,
		wear:      float64(r.Wear),
		taper:     r.Taper,
		part:      r.Part,
	}
	if r.Part == Nut {
		m.away = -1
	}
	return m
}

// far is how many standard deviations off a reading is no longer looked at.
const far = 6

// window returns the basic crest diameters that the reading can be of.
func (m *model) window(part Part) (from, to float64) {
	largest := 10e-3 // no series has a pitch so large
	if m.pitch.std != 0 {
		largest = m.pitch.value + far*m.pitch.std
	}
	along := workTaper * largest / 16
	most := workEnd + workCrest*largest
	if part == Nut {
		most = workBore * 2 * largest // no form takes twice the pitch off the diameter
	}
	short, long := far*m.crest.std+along, far*m.crest.std+along+most+m.wear
	if m.away > 0 {
		return m.crest.value - short, m.crest.value + long
	}
	return m.crest.value - long, m.crest.value + short
}

// likelihood returns how likely the readings are of a part made to thread k,
// as the product of a density for each.
func (m *model) likelihood(k *known) float64 {
	if m.taper == Parallel && k.taper || m.taper == Tapered && !k.taper {
		return 0
	}
	z := m.pitch.squares(k.pitch) + m.angle.squares(k.angle)
	if z > far*far {
		return 0
	}
	p := math.Exp(-z/2) * m.pitch.peak() * m.angle.peak()
	if m.crest.std != 0 {
		p *= k.work.crest.density(m.away*(k.sought-m.crest.value), m.crest.std, m.wear)
	}
	if m.effective.std != 0 && p > 0 {
		p *= k.work.effective.density(m.away*(float64(k.names[0].effective)-m.effective.value), m.effective.std, 0)
	}
	if m.root.std != 0 && p > 0 {
		p *= k.work.root.density(m.away*(float64(root(k.names[0], m.part))-m.root.value), m.root.std, 0)
	}
	return p
}

// squares returns how many standard deviations the true value x lies off, squared.
func (d dimension) squares(x float64) float64 {
	if d.std == 0 {
		return 0
	}
	z := (d.value - x) / d.std
	return z * z
}

// peak returns the density of the reading where the true value is the same.
func (d dimension) peak() float64 {
	if d.std == 0 {
		return 1
	}
	return 1 / (math.Sqrt(2*math.Pi) * d.std)
}

// density returns the density of a reading that lies x on the worn side of
// basic, read with standard deviation u: the spread of work, with wear from 0
// to its most on top, and a normal error.
func (s spread) density(x, u, wear float64) float64 {
	x -= s.low
	if x < -far*u || x > s.span+wear+far*u {
		return 0
	}
	if wear < u/1000 { // too little to tell from none
		return (phi(x/u) - phi((x-s.span)/u)) / s.span
	}
	// The second difference of the integral of phi: the trapezium that two even
	// spreads make together.
	d := ramp(x, u) - ramp(x-s.span, u) - ramp(x-wear, u) + ramp(x-s.span-wear, u)
	return max(d, 0) / (s.span * wear) // rounding may leave a hair below 0
}

// phi is the normal distribution function, ramp(x, u) the integral of
// phi(x/u).
func phi(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

func ramp(x, u float64) float64 {
	z := x / u
	switch {
	case z < -far-1:
		return 0
	case z > far+1:
		return x
	}
	return x*phi(z) + u*math.Exp(-z*z/2)/math.Sqrt(2*math.Pi)
}

// A thread of no table: one in fifty, of any diameter from 1 to 100 mm and any
// pitch from 0.2 to 6 mm, small ones as often in proportion as large; its
// effective diameter and root anywhere that a thread's can be, its flanks
// anywhere from 45° to 65°. Early makers did cut their own (one was found to
// have every pipe thread about 1/32 in oversize: Gas Engine Magazine, 13 March
// 2018); how many is our guess.
const priorUnlisted = 0.02

var (
	unlistedDiameters = math.Log(100)
	unlistedPitches   = math.Log(30)
)

const (
	unlistedLeast     = 0.01e-3 // m: below it none is more likely than there
	unlistedEffective = 1.0e-3  // m: an even spread as wide as this
	unlistedRoot      = 2.0e-3  // m
	unlistedAngles    = 20 * units.Degree
)

func (m *model) unlisted() float64 {
	p := 1.
	if m.crest.std != 0 {
		p /= max(m.crest.value, unlistedLeast) * unlistedDiameters
	}
	if m.pitch.std != 0 {
		p /= max(m.pitch.value, unlistedLeast) * unlistedPitches
	}
	if m.effective.std != 0 {
		p /= unlistedEffective
	}
	if m.root.std != 0 {
		p /= unlistedRoot
	}
	if m.angle.std != 0 {
		p /= float64(unlistedAngles)
	}
	return p
}

// explain fills in how the readings compare with the thread.
func (m *model) explain(c *Candidate) {
	k := c.known
	if m.crest.std != 0 {
		below := m.away * (k.sought - m.crest.value)
		c.Short = units.Length(below)
		c.Tolerances = below / k.work.crest.span
	}
	if m.pitch.std != 0 {
		c.Pitch = units.Length(m.pitch.value - k.pitch)
	}
}
