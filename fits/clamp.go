package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Collar is a ring with one slot, drawn together by a screw across the slot to
// grip a spigot or shaft.
type Collar struct {
	Bore, Wall, Length units.Length // Length is along the axis
	Slot               units.Length // width of the slot as cut
	Material           Material     // E is needed, yield for the margin
}

// A Clamp is a collar whose sums have answers.
type Clamp struct{ c Collar }

// NewClamp checks a collar. The error wraps units.ErrDomain: lengths more than 0, a
// slot narrower than the bore, a wall of a third of the bore at most, for which
// the collar bends as a thin ring, and a material whose modulus is known.
func NewClamp(c Collar) (Clamp, error) {
	for _, l := range [...]struct {
		what string
		size units.Length
	}{{"bore", c.Bore}, {"wall", c.Wall}, {"length", c.Length}, {"slot", c.Slot}} {
		if !(l.size > 0) || math.IsInf(float64(l.size), 0) {
			return Clamp{}, fmt.Errorf("%s %v: want more than 0 mm: %w", l.what, l.size, units.ErrDomain)
		}
	}
	switch {
	case !(c.Slot < c.Bore):
		return Clamp{}, fmt.Errorf("slot %v: want less than the bore of %v: %w", c.Slot, c.Bore, units.ErrDomain)
	case !(c.Wall <= c.Bore/3):
		return Clamp{}, fmt.Errorf("wall %v: want a third of the bore of %v at most, since the sums are for a thin ring: %w", c.Wall, c.Bore, units.ErrDomain)
	case !(c.Material.Modulus > 0) || math.IsInf(float64(c.Material.Modulus), 0):
		return Clamp{}, fmt.Errorf("modulus of %v is %v: want a material whose modulus is known: %w", c.Material, c.Material.Modulus, units.ErrDomain)
	}
	return Clamp{c}, nil
}

// SlotNeeded returns how much a slot must close for a collar to come down from its
// bore on to a spigot: the difference of the circumferences,
//
//	g = π (D − d)
//
// more than three times the clearance. Cut the slot wider than that, so that it is
// not shut when the collar grips. The error wraps units.ErrDomain for sizes that are
// not more than 0, or a spigot larger than the bore.
func SlotNeeded(bore, spigot units.Length) (units.Length, error) {
	if !(spigot > 0) || !(bore >= spigot) || math.IsInf(float64(bore), 0) {
		return 0, fmt.Errorf("spigot %v in a collar of %v: want one that goes in: %w", spigot, bore, units.ErrDomain)
	}
	return math.Pi * (bore - spigot), nil
}

// Reach returns the clearance that the slot takes up by the time it is shut, slot/π.
func (c Clamp) Reach() units.Length { return c.c.Slot / math.Pi }

// Least returns the smallest spigot the collar can come down on, with its slot just
// shut: nothing that small is held, so stay well above.
func (c Clamp) Least() units.Length { return c.c.Bore - c.Reach() }

// A Closing is what it takes to draw a collar down on to a spigot, before it begins
// to grip.
type Closing struct {
	Slot     units.Length   // what the slot closes by
	SlotLeft units.Length   // what is left of it
	Force    units.Force    // in the screw, only to bend the collar
	Bending  units.Pressure // greatest bending stress, in the wall opposite the slot
}

// On returns what it takes to draw the collar down on a spigot. A thin ring with a
// slot, pulled together by P at the mean radius r, closes by g and is stressed most
// at its back:
//
//	g = 3 π P r³/(E I),  I = L t³/12,  σ = P 2 r t/(2 I)
//
// so that with g = π (D − d) the stress is 4 E t (D − d)/(3 (2r)²). Screw ears and
// clamping lugs stiffen the ring and are not in the sum.
//
// The error wraps units.ErrDomain for a spigot that does not go in, or so small
// that the slot shuts first.
//
// Source: derived here by Castigliano's theorem for a thin curved bar.
func (c Clamp) On(spigot units.Length) (Closing, error) {
	g, err := SlotNeeded(c.c.Bore, spigot)
	if err != nil {
		return Closing{}, err
	}
	if !(g < c.c.Slot) {
		return Closing{}, fmt.Errorf("spigot %v: want more than %v, on which the slot of %v is shut: %w", spigot, c.Least(), c.c.Slot, units.ErrDomain)
	}
	e, t, l := float64(c.c.Material.Modulus), float64(c.c.Wall), float64(c.c.Length)
	r := float64(c.c.Bore+c.c.Wall) / 2
	i := l * t * t * t / 12
	p := float64(g) * e * i / (3 * math.Pi * r * r * r)
	return Closing{g, c.c.Slot - g, units.Force(p), units.Pressure(p * 2 * r * t / (2 * i))}, nil
}

// Margin returns how many times the bending stress goes into the yield stress on a
// spigot. The error is that of On, or wraps units.ErrDomain when the yield stress is
// not known.
func (c Clamp) Margin(spigot units.Length) (float64, error) {
	on, err := c.On(spigot)
	if err != nil {
		return 0, err
	}
	if !(c.c.Material.Yield > 0) {
		return 0, fmt.Errorf("yield stress of %v is not known: want a material that gives it: %w", c.c.Material, units.ErrDomain)
	}
	return float64(c.c.Material.Yield / on.Bending), nil
}

// A Hold is what a clamp holds. The low figures are sure; the high ones want a bore
// that fits the shaft exactly.
type Hold struct {
	TorqueLow, TorqueHigh units.Torque
	AxialLow, AxialHigh   units.Force
}

// ClampHold returns what a split clamp holds with a force F that presses its halves
// together, on a diameter d, at a coefficient of friction μ. How the pressure spreads
// round the shaft is not known, and the published answers differ by 57 %:
//
//	two lines of contact, a loose bore   M = μ F d
//	pressure as a cosine                 M = (4/π) μ F d
//	even pressure, an exact bore         M = (π/2) μ F d
//
// The axial hold is 2 M/d in each case. Twist and push at once share it: √((2T/d)² +
// A²) stays below it. Grease on the bore halves it.
//
// The error wraps units.ErrDomain for a force or diameter that is not more than 0,
// or a coefficient outside 0 to 1.
//
// Source: derived here; Roloff/Matek, ch. 12, gives the like, with π²/8 in one case
// (from memory).
func ClampHold(force units.Force, diameter units.Length, mu float64) (Hold, error) {
	switch {
	case !(force > 0) || math.IsInf(float64(force), 0):
		return Hold{}, fmt.Errorf("clamping force %v: want more than 0 N: %w", force, units.ErrDomain)
	case !(diameter > 0) || math.IsInf(float64(diameter), 0):
		return Hold{}, fmt.Errorf("diameter %v: want more than 0 mm: %w", diameter, units.ErrDomain)
	case !(mu > 0 && mu <= 1):
		return Hold{}, fmt.Errorf("coefficient of friction %g: want more than 0 and at most 1: %w", mu, units.ErrDomain)
	}
	f := mu * float64(force)
	low := f * float64(diameter)
	return Hold{
		TorqueLow: units.Torque(low), TorqueHigh: units.Torque(math.Pi / 2 * low),
		AxialLow: units.Force(2 * f), AxialHigh: units.Force(math.Pi * f),
	}, nil
}

// BandForce returns the force that presses the halves together when a thin collar is
// pulled on both ends by one screw: twice the screw's. The pressure is then even, 2
// F/(d L), so that the high figures of ClampHold apply, M = π μ F d with F the
// screw's.
func BandForce(screw units.Force) units.Force { return 2 * screw }

// HingedForce returns the force that presses the halves together when a stiff clamp
// has one slot and bends at its back like a hinge:
//
//	F = Fs (1 + a/b)
//
// with a from the axis of the shaft to the screw and b from the axis to the back.
// Bending the back takes some of it. The error wraps units.ErrDomain for lever arms
// that are not more than 0.
//
// Source: derived here; method of Roloff/Matek, ch. 12 (from memory).
func HingedForce(screw units.Force, toScrew, toBack units.Length) (units.Force, error) {
	if !(toScrew > 0) || !(toBack > 0) || math.IsInf(float64(toScrew), 0) || math.IsInf(float64(toBack), 0) {
		return 0, fmt.Errorf("lever arms %v to the screw and %v to the back: want more than 0 mm: %w", toScrew, toBack, units.ErrDomain)
	}
	return screw * units.Force(1+float64(toScrew/toBack)), nil
}
