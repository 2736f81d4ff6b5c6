package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// BasicLimits returns the basic sizes as limits without tolerance, for threads
// whose limits are not known. What is reckoned with them is a little too
// strong, since real threads have room between them.
func (t Thread) BasicLimits(p Part) Limits {
	l := Limits{Thread: t, Part: p, Class: "basic", Effective: Range{t.effective, t.effective}, Source: t.Source(), FromMemory: t.FromMemory()}
	if p == Nut {
		l.Major, l.Minor = orMore(t.major), Range{t.minor, t.minor}
		return l
	}
	l.Major, l.Minor = Range{t.major, t.major}, orLess(t.minor)
	return l
}

// A Joint is a bolt in a nut or in a tapped hole, each with its limits of size.
type Joint struct {
	bolt, nut Limits
}

// NewJoint puts a bolt into a nut. Both must have one form, pitch and taper,
// and the limits must be finite where the strength rests on them: the least
// major and effective diameters of the bolt, the greatest effective and minor
// of the nut. The error wraps units.ErrDomain.
func NewJoint(bolt, nut Limits) (Joint, error) {
	b, n := bolt.Thread, nut.Thread
	switch {
	case bolt.Part != Bolt || nut.Part != Nut:
		return Joint{}, fmt.Errorf("%v in %v: want a bolt and then a nut: %w", bolt.Part, nut.Part, units.ErrDomain)
	case b.form == 0 || profile(b.form) != profile(n.form) || !near(b.pitch, n.pitch) || b.Taper() != n.Taper():
		return Joint{}, fmt.Errorf("%v in %v: want one form and pitch for both: %w", b, n, units.ErrDomain)
	}
	for _, d := range [...]units.Length{bolt.Major.Min, bolt.Effective.Min, nut.Effective.Max, nut.Minor.Max} {
		if !(d > 0) || math.IsInf(float64(d), 0) {
			return Joint{}, fmt.Errorf("%v; %v: want diameters of more than 0 mm: %w", bolt, nut, units.ErrDomain)
		}
	}
	j := Joint{bolt, nut}
	if !(j.boltShear() > 0 && j.nutShear() > 0) {
		return Joint{}, fmt.Errorf("%v; %v: the threads do not reach one another: %w", bolt, nut, units.ErrDomain)
	}
	return j, nil
}

// BoltShearArea returns the area that shears when the thread of the bolt is
// stripped: a cylinder at the crests of the nut, where the thread of the bolt
// is so thick as
//
//	AS = π n Le K (1/(2n) + tan(α/2) (E − K))
//
// with n threads per inch, K the greatest minor diameter of the nut, E the least
// effective diameter of the bolt; tan is 0.57735 at 60°. An engagement that is
// not more than 0 has no area, 0.
//
// Source: FED-STD-H28/2B; ASME B1.1, Appendix B.
func (j Joint) BoltShearArea(engagement units.Length) units.Area {
	return units.Area(j.boltShear() * max(0, float64(engagement)))
}

// NutShearArea returns the area that shears when the thread of the nut is
// stripped: a cylinder at the crests of the bolt,
//
//	AN = π n Le D (1/(2n) + tan(α/2) (D − E))
//
// with D the least major diameter of the bolt and E the greatest effective
// diameter of the nut. See BoltShearArea.
func (j Joint) NutShearArea(engagement units.Length) units.Area {
	return units.Area(j.nutShear() * max(0, float64(engagement)))
}

// boltShear returns AS over Le.
func (j Joint) boltShear() float64 {
	return j.shear(j.nut.Minor.Max, j.bolt.Effective.Min-j.nut.Minor.Max)
}

// nutShear returns AN over Le.
func (j Joint) nutShear() float64 {
	return j.shear(j.bolt.Major.Min, j.bolt.Major.Min-j.nut.Effective.Max)
}

// shear returns the circumference at d times the share of it that is metal,
// where the thread is half a pitch thick at a distance depth.
func (j Joint) shear(d, depth units.Length) float64 {
	t := j.bolt.Thread
	return math.Pi * float64(d) * (0.5 + t.form.TanFlank()*float64(depth/t.pitch))
}

// LeastEngagement returns the length over which the thread must engage so that
// the bolt breaks before either thread strips, for the tensile strengths of
// bolt and nut. Where the nut is the weaker, such as a steel stud in aluminium,
// the length for the thread of the bolt,
//
//	Le = 2 At / AS per length
//
// is made longer in the ratio J = AS S(bolt) / (AN S(nut)). The strength in shear
// is taken as half the tensile for both, which cast iron and cast aluminium do
// not always reach. The error wraps units.ErrDomain for a strength that is not
// more than 0.
//
// Source: Machinery's Handbook, 24th ed., formula (1); FED-STD-H28/2B.
func (j Joint) LeastEngagement(bolt, nut units.Pressure) (units.Length, error) {
	if err := strengths(bolt, nut); err != nil {
		return 0, err
	}
	le := 2 * float64(j.bolt.Thread.StressArea()) / j.boltShear()
	if ratio := j.boltShear() * float64(bolt) / (j.nutShear() * float64(nut)); ratio > 1 {
		le *= ratio
	}
	return units.Length(le), nil
}

func strengths(bolt, nut units.Pressure) error {
	for _, s := range [...]units.Pressure{bolt, nut} {
		if !(s > 0) || math.IsInf(float64(s), 0) {
			return fmt.Errorf("tensile strength %v: want more than 0 MPa: %w", s, units.ErrDomain)
		}
	}
	return nil
}

// Loads are the pulls at which the three parts of a joint give way.
type Loads struct {
	Breaks     units.Force // the bolt is torn apart
	BoltStrips units.Force // the thread of the bolt shears
	NutStrips  units.Force // the thread of the nut shears
}

// Least returns the smallest of the loads, with what happens at it.
func (l Loads) Least() (units.Force, string) {
	switch least := min(l.Breaks, l.BoltStrips, l.NutStrips); least {
	case l.Breaks:
		return least, "the bolt breaks"
	case l.NutStrips:
		return least, "the thread of the nut strips"
	default:
		return least, "the thread of the bolt strips"
	}
}

// Loads returns the loads at which the joint gives way over the engagement, by
// the tensile strengths of bolt and nut, with the strength in shear half of the
// tensile. The error wraps units.ErrDomain.
func (j Joint) Loads(engagement units.Length, bolt, nut units.Pressure) (Loads, error) {
	if !(engagement > 0) || math.IsInf(float64(engagement), 0) {
		return Loads{}, fmt.Errorf("engagement %v: want more than 0 mm: %w", engagement, units.ErrDomain)
	}
	if err := strengths(bolt, nut); err != nil {
		return Loads{}, err
	}
	return Loads{
		Breaks:     units.Force(float64(j.bolt.Thread.StressArea()) * float64(bolt)),
		BoltStrips: units.Force(float64(j.BoltShearArea(engagement)) * float64(bolt) / 2),
		NutStrips:  units.Force(float64(j.NutShearArea(engagement)) * float64(nut) / 2),
	}, nil
}

// A TappedMetal is what a stud is screwed into, for the rule of thumb.
type TappedMetal uint8

// The metals of the rule.
const (
	SteelOrCastIron      TappedMetal = iota // 1.5 D
	HardSteelOrBronze                       // 1.0 D, hardened steel or strong bronze
	LightAlloy                              // 1.5 D + 1/16 in
	LightAlloyUnderShock                    // 2 D + 1/16 in
)

// EngagementByRule returns how deep a steel stud goes by the old rule of thumb,
// without any reckoning of strengths. The error wraps units.ErrDomain for a
// metal that the rule does not have.
//
// Source: an engineering handbook, ch. 9, as extracted by globalspec.com.
func (t Thread) EngagementByRule(m TappedMetal) (units.Length, error) {
	switch m {
	case SteelOrCastIron:
		return 1.5 * t.major, nil
	case HardSteelOrBronze:
		return t.major, nil
	case LightAlloy:
		return 1.5*t.major + units.Inch/16, nil
	case LightAlloyUnderShock:
		return 2*t.major + units.Inch/16, nil
	}
	return 0, fmt.Errorf("metal %d: want one of those of the rule: %w", m, units.ErrDomain)
}
