package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A FreeState says how a strip lies when nothing holds it, which decides its
// torque in the barrel as much as its size does: between a straight strip and one
// that lies slack on the wall the torque of the same strip differs by a factor of
// two or more. It has to be stated: make one with StraightStrip, SlackOnWall or
// FreeTurns; the zero value is refused.
type FreeState struct {
	kind  freeKind
	turns float64
}

type freeKind int

const (
	notStated freeKind = iota
	freeTurns
	slackOnWall
)

// StraightStrip is a strip that lies flat on the bench.
func StraightStrip() FreeState { return FreeState{freeTurns, 0} }

// SlackOnWall is a strip that has been coiled, or has set, so that run down it
// lies against the wall of the barrel without pressing on it. A strip bought
// coiled is near this.
func SlackOnWall() FreeState { return FreeState{slackOnWall, 0} }

// FreeTurns is a strip that makes n turns of even curvature lying loose on the
// bench; below 0 for one that curls the other way.
func FreeTurns(n float64) FreeState { return FreeState{freeTurns, n} }

// String describes the state.
func (f FreeState) String() string {
	switch {
	case f.kind == slackOnWall:
		return "slack on the wall"
	case f.kind == freeTurns && f.turns == 0:
		return "straight"
	case f.kind == freeTurns:
		return fmt.Sprintf("%.4g turns when free", f.turns)
	}
	return "not stated"
}

// A BarrelSpec describes a flat spiral spring whose coils lie on one another, in
// a barrel or drum.
type BarrelSpec struct {
	Bore, Arbor              units.Length // inside of the barrel, outside of the arbor
	Depth                    units.Length // inside the barrel, for the width of the strip; 0 if not judged
	Width, Thickness, Length units.Length
	Free                     FreeState
	Friction                 float64 // share of the torque that coils rubbing on one another take, 0 to below 1
	Material                 Material
}

// A Barrel is a power spring in its barrel, checked. Turns of wind are counted from
// the run-down state, in which the strip lies against the wall.
type Barrel struct {
	spec       BarrelSpec
	strip      Section
	e          float64 // Pa
	down, full float64 // turns in the strip on the wall and on the arbor
	free       float64 // turns in the strip when free
}

// NewBarrel checks a power spring. The error is units.ErrDomain for a size that
// is not more than 0, an arbor not below the bore, a strip wider than the depth
// or too long to lie in the barrel, a free state that is not stated or has more
// turns than lie on the wall, friction outside 0 to below 1, or a material
// without Young's modulus.
func NewBarrel(spec BarrelSpec) (Barrel, error) {
	strip, err := RectangularWire(spec.Width, spec.Thickness)
	if err != nil {
		return Barrel{}, err
	}
	if err := first(spec.Material.check(), spec.checkRoom(), spec.checkState()); err != nil {
		return Barrel{}, err
	}
	e, err := spec.Material.YoungsModulus(spec.Thickness)
	if err != nil {
		return Barrel{}, err
	}
	b := Barrel{spec: spec, strip: strip, e: float64(e)}
	l, t := float64(spec.Length), strip.thickness
	b.down = turnsOnWall(float64(spec.Bore), l, t)
	b.full = turnsOnArbor(float64(spec.Arbor), l, t)
	b.free = spec.Free.turns
	if spec.Free.kind == slackOnWall {
		b.free = b.down
	}
	if b.free > b.down {
		return Barrel{}, fmt.Errorf("%.4g turns when free: want %.4g at most, what lies on the wall; a strip coiled closer than that lies loose in the barrel: %w", b.free, b.down, units.ErrDomain)
	}
	return b, nil
}

func (spec BarrelSpec) checkRoom() error {
	err := first(positive("bore", spec.Bore), positive("arbor", spec.Arbor), positive("length of the strip", spec.Length), notNegative("depth", spec.Depth))
	switch {
	case err != nil:
		return err
	case spec.Arbor >= spec.Bore:
		return fmt.Errorf("arbor %v: want less than %v, the bore: %w", spec.Arbor, spec.Bore, units.ErrDomain)
	case spec.Depth != 0 && spec.Width > spec.Depth:
		return fmt.Errorf("strip %v wide: want %v at most, the depth of the barrel: %w", spec.Width, spec.Depth, units.ErrDomain)
	case !(spec.fill() < 1):
		return fmt.Errorf("strip %v long: want less than %v, which fills the barrel: %w", spec.Length, 2*HalfFillLength(spec.Bore, spec.Arbor, spec.Thickness), units.ErrDomain)
	}
	return nil
}

func (spec BarrelSpec) checkState() error {
	switch {
	case spec.Free.kind == notStated:
		return fmt.Errorf("free state of the strip not stated: want StraightStrip, SlackOnWall or FreeTurns: %w", units.ErrDomain)
	case math.IsNaN(spec.Free.turns) || math.IsInf(spec.Free.turns, 0):
		return fmt.Errorf("turns when free %g: want a number: %w", spec.Free.turns, units.ErrNotFinite)
	case !(spec.Friction >= 0 && spec.Friction < 1):
		return fmt.Errorf("friction %g: want 0 to below 1, a share of the torque: %w", spec.Friction, units.ErrDomain)
	}
	return nil
}

func (spec BarrelSpec) fill() float64 {
	bore, arbor := float64(spec.Bore), float64(spec.Arbor)
	return 4 / math.Pi * float64(spec.Length) * float64(spec.Thickness) / ((bore - arbor) * (bore + arbor))
}

// TurnsRunDown returns the turns in the strip as it lies against the wall, n_u.
func (b Barrel) TurnsRunDown() float64 { return b.down }

// TurnsWound returns the turns in the strip when it lies solid on the arbor, n_w.
func (b Barrel) TurnsWound() float64 { return b.full }

// TurnsFree returns the turns in the strip when nothing holds it.
func (b Barrel) TurnsFree() float64 { return b.free }

// Turns returns the turns of the arbor from run down to solid, n_w − n_u. Leave
// half a turn to one turn unused at each end (common practice, no source).
func (b Barrel) Turns() float64 { return b.full - b.down }

// Strip returns the section of the strip.
func (b Barrel) Strip() Section { return b.strip }

// Material returns what the strip is made of.
func (b Barrel) Material() Material { return b.spec.Material }

// Stress returns the bending stress in the strip when wound by so many turns,
// as it goes with the straight-line law of torque:
//
//	σ = 6 M / (b t²) = π E t (n − n_free) / L
//
// It is the mean along the strip, and what practice judges a power spring by. The
// first coil, bent round the arbor, carries more: see ArborStress.
func (b Barrel) Stress(turns float64) units.Pressure {
	return units.Pressure(math.Pi * b.e * b.strip.thickness * math.Abs(b.down+turns-b.free) / float64(b.spec.Length))
}

// TurnsAtStress is Stress read the other way. It may lie outside what the barrel
// allows.
func (b Barrel) TurnsAtStress(stress units.Pressure) float64 {
	return float64(stress)*float64(b.spec.Length)/(math.Pi*b.e*b.strip.thickness) + b.free - b.down
}

// ArborStress returns the bending stress in the first coil when it lies on the
// arbor:
//
//	σ = (E t/2) (1/r − 1/r_free)
//
// It is often far above the strength of the strip: the first coil then takes a
// set when the spring is first wound, which practice accepts (arbors of 12 to
// 25 t are usual) and which this sum does not follow.
func (b Barrel) ArborStress() units.Pressure {
	return units.Pressure(b.e * b.strip.thickness / 2 * (2/float64(b.spec.Arbor) - b.innerFreeCurvature()))
}

// LeastArbor returns the arbor on which the first coil carries the given stress:
// d = E t/σ for a straight strip. The error is units.ErrDomain for a stress that is
// not more than 0, or a strip that curls so much the other way that none will do.
func (b Barrel) LeastArbor(stress units.Pressure) (units.Length, error) {
	if err := positive("stress", stress); err != nil {
		return 0, err
	}
	curvature := 2*float64(stress)/(b.e*b.strip.thickness) + b.innerFreeCurvature()
	if !(curvature > 0) {
		return 0, fmt.Errorf("stress %v: the strip exceeds it when flat, no arbor will do: %w", stress, units.ErrDomain)
	}
	return units.Length(2 / curvature), nil
}

// innerFreeCurvature returns the curvature of the inner end of the free strip.
func (b Barrel) innerFreeCurvature() float64 {
	if b.spec.Free.kind == slackOnWall {
		_, inner := b.wall()
		return 1 / inner
	}
	return 2 * math.Pi * b.free / float64(b.spec.Length)
}

// wall returns the radii of the strip run down, outside and inside.
func (b Barrel) wall() (outer, inner float64) {
	outer = float64(b.spec.Bore) / 2
	return outer, math.Sqrt(outer*outer - float64(b.spec.Length)*b.strip.thickness/math.Pi)
}

// Shortened returns the spring after a piece has been broken or cut off and so
// much strip has gone into new eyes or hooks. A strip that lies slack on the wall
// stays so; another keeps its curvature and so loses free turns in proportion. The
// error is that of NewBarrel, or units.ErrDomain when nothing is left.
//
// Soften the last few millimetres only for a new eye, and bend it round no less
// than the thickness of the strip, better twice that (common practice, no source).
func (b Barrel) Shortened(cutOff, newEyes units.Length) (Barrel, error) {
	if err := first(notNegative("piece cut off", cutOff), notNegative("strip for new eyes", newEyes)); err != nil {
		return Barrel{}, err
	}
	spec := b.spec
	spec.Length -= cutOff + newEyes
	if !(spec.Length > 0) {
		return Barrel{}, fmt.Errorf("%v cut off and %v for eyes: want less than %v, the strip: %w", cutOff, newEyes, b.spec.Length, units.ErrDomain)
	}
	spec.Free.turns *= float64(spec.Length / b.spec.Length)
	return NewBarrel(spec)
}

// Advice lists what lies outside the usual ranges. An empty list is no promise
// that the spring is good.
//
// Source: Spring Manufacturers Institute (arbor 12 to 25 t, length below 15 000 t,
// fill 40 to 50 per cent; from memory, not seen).
func (b Barrel) Advice() []string {
	var out []string
	t := b.spec.Thickness
	if r := float64(b.spec.Arbor / t); r < 12 || r > 25 {
		out = append(out, fmt.Sprintf("arbor %.1f times the strip: 12 to 25 is usual", r))
	}
	if r := float64(b.spec.Length / t); r > 15000 {
		out = append(out, fmt.Sprintf("length %.0f times the thickness: below 15000 is usual", r))
	}
	if f := b.Fill(); f < 0.4 || f > 0.5 {
		out = append(out, fmt.Sprintf("strip fills %.0f %% of the room: 40 to 50 %% is usual", 100*f))
	}
	if s, err := b.spec.Material.Strength(t); err == nil && b.ArborStress() > s.most() {
		out = append(out, fmt.Sprintf("first coil bends to %v on the arbor, above the strip's %v: it takes a set when first wound", roundStress(b.ArborStress()), s))
	}
	return out
}

// roundStress rounds to 10 MPa, for text.
func roundStress(p units.Pressure) units.Pressure {
	return units.Pressure(math.Round(p.Megapascals()/10)*10) * units.Megapascal
}
