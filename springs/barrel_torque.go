package springs

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Regime is a stretch of the turns of a power spring in which one law holds.
type Regime int

const (
	// Rising: the first turn from run down. Coils leave the wall one after another,
	// the length at work grows from nothing, and the torque climbs steeply to the
	// straight line (from memory: Wahl). The figure given climbs evenly over the
	// turn and is no better than a sketch.
	Rising Regime = iota
	// Straight: the straight-line law of the whole strip.
	Straight
	// Closing: the last turn before solid. Coils crowd on the arbor and the torque
	// climbs above the line, here to what the strain energy of a close bundle gives;
	// past solid nothing but the strength of strip and anchors limits it.
	Closing
)

// String names the regime.
func (r Regime) String() string {
	switch r {
	case Rising:
		return "rising"
	case Straight:
		return "straight"
	case Closing:
		return "closing"
	}
	return fmt.Sprintf("Regime(%d)", int(r))
}

// endTurns is the length of the first and last regime: "the first turn or so".
const endTurns = 1.0

// A BarrelTorque is the torque of a power spring at one wind.
type BarrelTorque struct {
	Turns  float64 // from run down
	Regime Regime
	Mean   units.Torque // without friction
	Drive  units.Torque // running down: Mean less the share of friction
	Wind   units.Torque // winding up: Mean and the share of friction
}

// Rate returns the slope of the straight-line law, k = E I / L. A turn of the
// arbor adds π E b t³ / (6 L).
//
// Source: Roark; Wahl; Spring Manufacturers Institute (from memory); checked
// against strain energy.
func (b Barrel) Rate() units.TorsionalStiffness {
	return units.TorsionalStiffness(b.e * b.strip.inertia() / float64(b.spec.Length))
}

// LineTorque returns the straight-line law by itself:
//
//	M = π E b t³ (n − n_free) / (6 L)     n = n_u + turns
//
// which holds between the first and the last turn.
func (b Barrel) LineTorque(turns float64) units.Torque {
	return units.Torque(float64(b.Rate()) * 2 * math.Pi * (b.down + turns - b.free))
}

// BundleTorque returns the torque from the strain energy of the strip lying as one
// close bundle, r₁ to r₂, which is how coils that may not pass through one another
// store least: for a strip of even free curvature κ
//
//	M = E I (½ (1/r₁ + 1/r₂) − κ)
//
// and for one slack on the wall, whose coils have each their own,
//
//	M = E I (r₁ + r₂) (1/(2 r₁ r₂) − 1/(ρ₁ r₂ + R r₁))
//
// with R and ρ₁ the outside and inside of the strip on the wall. It agrees with
// LineTorque near run down and lies above it towards solid, by 9 per cent for a
// straight strip and 16 for a slack one in a barrel of common proportions. Derived
// here. The error is units.ErrDomain outside 0 to Turns.
func (b Barrel) BundleTorque(turns float64) (units.Torque, error) {
	if err := b.checkTurns(turns); err != nil {
		return 0, err
	}
	return units.Torque(b.bundle(turns)), nil
}

func (b Barrel) bundle(turns float64) float64 {
	n, t, l := b.down+turns, b.strip.thickness, float64(b.spec.Length)
	sum := l / (math.Pi * n)
	r1, r2 := (sum-n*t)/2, (sum+n*t)/2
	bend := b.e * b.strip.inertia()
	if b.spec.Free.kind != slackOnWall {
		return bend * ((1/r1+1/r2)/2 - 2*math.Pi*b.free/l)
	}
	outer, inner := b.wall()
	cross := inner*r2 + outer*r1
	return bend * sum * (r2*(inner-r1) + r1*(outer-r2)) / (2 * r1 * r2 * cross)
}

func (b Barrel) checkTurns(turns float64) error {
	if !(turns >= 0 && atMost(turns, b.Turns())) {
		return fmt.Errorf("%.4g turns from run down: want 0 to %.4g, solid on the arbor: %w", turns, b.Turns(), units.ErrDomain)
	}
	return nil
}

// Torque returns the torque when wound by so many turns from run down, with its
// regime and the band that friction makes of it. The error is units.ErrDomain
// outside 0 to Turns.
//
// Published practice is plain about such sums: see Accuracy.
func (b Barrel) Torque(turns float64) (BarrelTorque, error) {
	if err := b.checkTurns(turns); err != nil {
		return BarrelTorque{}, err
	}
	mean, regime := b.mean(turns)
	f := b.spec.Friction
	return BarrelTorque{turns, regime, units.Torque(mean), units.Torque(mean * (1 - f)), units.Torque(mean * (1 + f))}, nil
}

// ends returns the turns at which the straight line begins and ends.
func (b Barrel) ends() (from, to float64) {
	e := math.Min(endTurns, b.Turns()/2)
	return e, b.Turns() - e
}

func (b Barrel) mean(turns float64) (float64, Regime) {
	from, to := b.ends()
	line := float64(b.LineTorque(turns))
	switch {
	case turns < from:
		return float64(b.LineTorque(from)) * turns / from, Rising
	case turns > to:
		return line + (b.bundle(turns)-line)*(turns-to)/(b.Turns()-to), Closing
	}
	return line, Straight
}

// PreWind returns the turns from run down at which the spring drives with at least
// the given torque, friction taken off. The error is units.ErrDomain for a torque
// below 0 or above what the spring has when solid.
func (b Barrel) PreWind(torque units.Torque) (float64, error) {
	if err := notNegative("torque", torque); err != nil {
		return 0, err
	}
	want := float64(torque) / (1 - b.spec.Friction)
	lo, hi := 0.0, b.Turns()
	if top, _ := b.mean(hi); !atMost(want, top) {
		return 0, fmt.Errorf("torque %v: want %v at most, what the spring drives with when solid: %w", torque, units.Torque(top*(1-b.spec.Friction)), units.ErrDomain)
	}
	for range 100 {
		mid := (lo + hi) / 2
		if m, _ := b.mean(mid); m < want {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi, nil
}

// Energy returns the work that the spring gives back from the given wind to run
// down, without friction: the area under the mean torque. The error is
// units.ErrDomain outside 0 to Turns.
func (b Barrel) Energy(turns float64) (units.Energy, error) {
	if err := b.checkTurns(turns); err != nil {
		return 0, err
	}
	from, to := b.ends()
	area := func(lo, hi float64) float64 { // under a straight line
		return (float64(b.LineTorque(lo)) + float64(b.LineTorque(hi))) / 2 * (hi - lo)
	}
	sum := float64(b.LineTorque(from)) / from * math.Pow(math.Min(turns, from), 2) / 2
	if turns > from {
		sum += area(from, math.Min(turns, to))
	}
	if turns > to {
		sum += b.closingArea(to, turns)
	}
	return units.Energy(sum * 2 * math.Pi), nil
}

// closingArea integrates the mean torque over part of the last turn, by Simpson's
// rule on a curve that hardly bends.
func (b Barrel) closingArea(from, to float64) float64 {
	const n = 32
	h, sum := (to-from)/n, 0.0
	for i := 0; i <= n; i++ {
		m, _ := b.mean(from + h*float64(i))
		sum += simpson(i, n) * m
	}
	return sum * h / 3
}

// StrainEnergy returns all that the strip holds at a wind, ½ k θ² counted from its
// free state: what comes out when the strip leaves the barrel. A straight strip
// holds much of it even run down, which is why a barrel is never opened without
// holding the spring.
func (b Barrel) StrainEnergy(turns float64) units.Energy {
	theta := 2 * math.Pi * (b.down + turns - b.free)
	return units.Energy(float64(b.Rate()) * theta * theta / 2)
}
