package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Kind says what a fit amounts to.
type Kind int

// The kinds of fit of ISO 286-1:2010, 3.3 (from memory).
const (
	// ClearanceFit: the smallest hole is never smaller than the largest shaft.
	// Exactly as large still counts, as in H7/h6.
	ClearanceFit Kind = iota + 1
	// TransitionFit: some pairs have clearance, some interference.
	TransitionFit
	// InterferenceFit: the largest hole is never larger than the smallest shaft.
	// Exactly as large still counts, as in H7/r6 up to 3 mm.
	InterferenceFit
)

// String returns "clearance", "transition" or "interference".
func (k Kind) String() string {
	switch k {
	case ClearanceFit:
		return "clearance"
	case TransitionFit:
		return "transition"
	case InterferenceFit:
		return "interference"
	}
	return fmt.Sprintf("Kind(%d)", int(k))
}

// A Clearance is a range of clearance between a hole and the shaft in it,
// measured on the diameter: hole less shaft, so that interference is negative.
type Clearance struct {
	Min, Max units.Length
}

// Kind judges the fit from the limits, as the standard does, and never from the
// letters: H7/p6 is a transition fit up to 3 mm and an interference fit above.
// A range within a picometre of nought counts as nought.
func (c Clearance) Kind() Kind {
	switch {
	case c.Min >= -picometre:
		return ClearanceFit
	case c.Max <= picometre:
		return InterferenceFit
	}
	return TransitionFit
}

// Mean returns the middle of the range.
func (c Clearance) Mean() units.Length { return (c.Min + c.Max) / 2 }

// Spread returns how much the clearance can vary: the tolerance of the fit, which
// is the tolerances of hole and shaft together.
func (c Clearance) Spread() units.Length { return c.Max - c.Min }

// Contains reports whether x lies in the range, ends included. A picometre is let
// pass for rounding.
func (c Clearance) Contains(x units.Length) bool {
	return c.Min-picometre <= x && x <= c.Max+picometre
}

// check refuses a range that is none.
func (c Clearance) check() error {
	if !(c.Min <= c.Max) || math.IsInf(float64(c.Min), 0) || math.IsInf(float64(c.Max), 0) {
		return fmt.Errorf("clearance from %v to %v: want the lesser first, interference negative: %w", c.Min, c.Max, units.ErrDomain)
	}
	return nil
}

// A Mating is a hole and a shaft of one nominal size.
type Mating struct {
	Hole, Shaft Size
}

// Fit returns the limits of both parts of a fit, "H7/g6", by ISO 286. It is
// System{}.Fit.
func Fit(nominal units.Length, fit string) (Mating, error) { return System{}.Fit(nominal, fit) }

// Fit returns the limits of both parts of a fit as a drawing has it, the hole
// first: H7/g6, H7-g6, H7 g6. Errors as for the function Limits.
func (s System) Fit(nominal units.Length, fit string) (Mating, error) {
	hole, shaft, err := ParseFit(fit)
	if err != nil {
		return Mating{}, err
	}
	return s.Mate(nominal, hole, shaft)
}

// Mate is Fit of two classes. The error is an *UndefinedError, or wraps
// units.ErrDomain when hole is a class of shafts or shaft one of holes.
func (s System) Mate(nominal units.Length, hole, shaft Class) (Mating, error) {
	if !hole.hole || shaft.hole {
		return Mating{}, fmt.Errorf("fit of %v and %v: want a hole, in capitals, and a shaft: %w", hole, shaft, units.ErrDomain)
	}
	h, err := s.Size(nominal, hole)
	if err != nil {
		return Mating{}, err
	}
	z, err := s.Size(nominal, shaft)
	if err != nil {
		return Mating{}, err
	}
	return Mating{h, z}, nil
}

// ParseFit reads the two classes of a fit, the hole first: H7/g6, H7-g6, H7 g6.
// The error is a *units.ParseError.
func ParseFit(text string) (hole, shaft Class, err error) {
	hole, pos, msg, kind := scanClass(text, skipSpace(text, 0))
	if msg == "" {
		pos = skipBar(text, pos)
		shaft, pos, msg, kind = scanClass(text, pos)
	}
	if msg == "" {
		if end := skipSpace(text, pos); end < len(text) {
			pos, msg, kind = end, "two classes, such as H7/g6, and nothing behind them", units.ErrTrailing
		}
	}
	switch {
	case msg != "":
	case !hole.hole && shaft.hole:
		msg, pos, kind = "the hole, in capitals, comes first: "+shaft.String()+"/"+hole.String(), 0, units.ErrSyntax
	case !hole.hole || shaft.hole:
		msg, pos, kind = "want a hole, in capitals, and a shaft, in small letters", 0, units.ErrSyntax
	}
	if msg != "" {
		return Class{}, Class{}, &units.ParseError{Kind: "fit", Text: text, Pos: pos, Msg: msg, Err: kind}
	}
	return hole, shaft, nil
}

// skipBar skips what stands between the classes of a fit: / or - or nothing but
// space.
func skipBar(s string, pos int) int {
	pos = skipSpace(s, pos)
	for _, bar := range [...]string{"/", "-", "–", "⁄"} {
		if len(s) >= pos+len(bar) && s[pos:pos+len(bar)] == bar {
			return skipSpace(s, pos+len(bar))
		}
	}
	return pos
}

// Nominal returns the nominal size.
func (m Mating) Nominal() units.Length { return m.Hole.Nominal }

// Clearance returns the least and the greatest clearance:
//
//	least = EI − es      greatest = ES − ei
//
// Source: ISO 286-1:2010, 3.3.
func (m Mating) Clearance() Clearance {
	return Clearance{Min: m.Hole.Lower - m.Shaft.Upper, Max: m.Hole.Upper - m.Shaft.Lower}
}

// Kind returns the kind of fit, judged from the limits.
func (m Mating) Kind() Kind { return m.Clearance().Kind() }

// InterferingIfUniform returns the share of pairs, 0 to 1, whose shaft is larger
// than the hole it meets, when every size within the limits is as likely as any
// other and pairs are drawn at random.
//
// The clearance is then the difference of two uniform variables, with a density
// that rises, runs level and falls. With a and b the two tolerances, a the
// smaller, and x how far the least clearance lies below nought:
//
//	share = x²/(2ab)               for x ≤ a
//	        (2x − a)/(2b)          for a ≤ x ≤ b
//	        1 − (a + b − x)²/(2ab) for x ≥ b
func (m Mating) InterferingIfUniform() float64 {
	a, b := float64(m.Hole.Tolerance()), float64(m.Shaft.Tolerance())
	a, b = min(a, b), max(a, b)
	x := min(max(-float64(m.Clearance().Min), 0), a+b)
	switch {
	case m.Kind() == ClearanceFit:
		return 0
	case m.Kind() == InterferenceFit:
		return 1
	case x <= a:
		return x * x / (2 * a * b)
	case x <= b:
		return (2*x - a) / (2 * b)
	}
	return 1 - (a+b-x)*(a+b-x)/(2*a*b)
}

// InterferingIfNormal returns the share of pairs, 0 to 1, whose shaft is larger
// than the hole it meets, when sizes are normal about the middle of the limits and
// the limits stand the given number of standard deviations from it: 3 for a
// process that just holds its tolerance.
//
//	share = Φ(−mean clearance/σ),  σ = √(Th² + Ts²)/(2 × sigmas)
//
// The normal distribution has no ends, so that a clearance fit gets a small share
// too. The error is units.ErrDomain unless sigmas is more than 0.
func (m Mating) InterferingIfNormal(sigmas float64) (float64, error) {
	if !(sigmas > 0) || math.IsInf(sigmas, 0) {
		return 0, fmt.Errorf("limits at %g standard deviations: want more than 0: %w", sigmas, units.ErrDomain)
	}
	sigma := math.Hypot(float64(m.Hole.Tolerance()), float64(m.Shaft.Tolerance())) / (2 * sigmas)
	mean := float64(m.Clearance().Mean())
	if sigma == 0 && mean == 0 { // no tolerance, no clearance: it just goes in
		return 0, nil
	}
	return normalBelow(-mean / sigma), nil
}

// normalBelow is Φ, the share of a standard normal distribution below z.
func normalBelow(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// String writes the fit and its clearances: "25 mm H7/g6, clearance fit, 7 µm to
// 41 µm".
func (m Mating) String() string {
	c := m.Clearance()
	return fmt.Sprintf("%v %v/%v, %v fit, clearance %.4g µm to %.4g µm",
		m.Nominal(), m.Hole.Class, m.Shaft.Class, m.Kind(), c.Min.Micrometres(), c.Max.Micrometres())
}
