package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Joint describes a press or shrink fit: a shaft, solid or hollow, in a hub. A
// bush pressed into a housing is one too: the bush is the shaft.
type Joint struct {
	Diameter     units.Length // where they meet
	Interference units.Length // on the diameter, what is left after smoothing
	Length       units.Length // along the axis
	HubOutside   units.Length // outside diameter of the hub, or of the boss round a bush
	ShaftBore    units.Length // 0 for a solid shaft
	Hub, Shaft   Material     // E and ν are needed, yield for margins, α for heat
}

// A Press is a press or shrink fit whose sums have answers.
type Press struct{ j Joint }

// NewPress checks a joint. The error wraps units.ErrDomain and says which field is
// wrong and what would be right: lengths more than 0, the hub larger than the
// joint, the bore of the shaft smaller, an interference of less than a hundredth of
// the diameter, moduli above 0 and Poisson's ratios of 0 to 0.5.
func NewPress(j Joint) (Press, error) {
	bad := func(what string, got units.Length, want string) error {
		return fmt.Errorf("%s %v: want %s: %w", what, got, want, units.ErrDomain)
	}
	d := j.Diameter
	switch {
	case !(d > 0) || math.IsInf(float64(d), 0):
		return Press{}, bad("diameter", d, "more than 0 mm")
	case !(j.Interference > 0 && j.Interference < d/100):
		return Press{}, bad("interference", j.Interference, "more than 0 mm and less than a hundredth of the diameter")
	case !(j.Length > 0) || math.IsInf(float64(j.Length), 0):
		return Press{}, bad("length", j.Length, "more than 0 mm")
	case !(j.HubOutside > d) || math.IsInf(float64(j.HubOutside), 0):
		return Press{}, bad("outside of the hub", j.HubOutside, fmt.Sprintf("more than the diameter of %v", d))
	case !(j.ShaftBore >= 0 && j.ShaftBore < d):
		return Press{}, bad("bore of the shaft", j.ShaftBore, fmt.Sprintf("0 mm for a solid shaft, or less than the diameter of %v", d))
	}
	for _, m := range [...]Material{j.Hub, j.Shaft} {
		if !(m.Modulus > 0) || math.IsInf(float64(m.Modulus), 0) {
			return Press{}, fmt.Errorf("modulus of %v is %v: want a material whose modulus is known: %w", m, m.Modulus, units.ErrDomain)
		}
		if !(m.Poisson >= 0 && m.Poisson <= 0.5) {
			return Press{}, fmt.Errorf("the Poisson's ratio of %v is %g: want 0 to 0.5: %w", m, m.Poisson, units.ErrDomain)
		}
	}
	return Press{j}, nil
}

// Joint returns the joint as given.
func (p Press) Joint() Joint { return p.j }

// shapes returns the shape factors of hub and shaft,
//
//	sh = (ro² + R²)/(ro² − R²)   ss = (R² + ri²)/(R² − ri²), 1 for a solid shaft
//
// that turn pressure into hoop stress at the joint.
func (p Press) shapes() (hub, shaft float64) {
	return shape(float64(p.j.HubOutside), float64(p.j.Diameter)), shape(float64(p.j.Diameter), float64(p.j.ShaftBore))
}

func shape(outer, inner float64) float64 {
	return (outer*outer + inner*inner) / ((outer - inner) * (outer + inner))
}

// Pressure returns the pressure between shaft and hub, after Lamé for thick rings
// in plane stress:
//
//	p = δ / [d ((sh + νh)/Eh + (ss − νs)/Es)]
//
// with the shape factors sh = (ro² + R²)/(ro² − R²) of the hub and ss = (R² +
// ri²)/(R² − ri²) of the shaft. It holds for a hub as long as the joint, away from
// its ends, and below yield; at the ends of a longer shaft the pressure is higher.
//
// Source: Shigley, Mechanical Engineering Design, eqs. 3-56 and 7-39.
func (p Press) Pressure() units.Pressure {
	h, s := p.j.Hub, p.j.Shaft
	sh, ss := p.shapes()
	perDiameter := float64(p.j.Interference / p.j.Diameter)
	return units.Pressure(perDiameter / ((sh+h.Poisson)/float64(h.Modulus) + (ss-s.Poisson)/float64(s.Modulus)))
}

// HubHoop returns the hoop stress in the hub at the joint, its greatest: p sh,
// tension.
//
// Source: Shigley, eq. 7-45.
func (p Press) HubHoop() units.Pressure {
	sh, _ := p.shapes()
	return p.Pressure() * units.Pressure(sh)
}

// HubHoopOutside returns the hoop stress at the outside of the hub, 2 p R²/(ro² −
// R²), tension.
func (p Press) HubHoopOutside() units.Pressure {
	sh, _ := p.shapes()
	return p.Pressure() * units.Pressure(sh-1)
}

// ShaftHoop returns the hoop stress in the shaft at the joint, −p ss, compression,
// so negative.
//
// Source: Shigley, eq. 7-44.
func (p Press) ShaftHoop() units.Pressure {
	_, ss := p.shapes()
	return -p.Pressure() * units.Pressure(ss)
}

// ShaftHoopBore returns the hoop stress at the bore of a hollow shaft or bush, −2 p
// R²/(R² − ri²), compression, so negative. For a solid shaft it is −p, as anywhere
// in it.
func (p Press) ShaftHoopBore() units.Pressure {
	_, ss := p.shapes()
	if p.j.ShaftBore == 0 {
		return -p.Pressure()
	}
	return -p.Pressure() * units.Pressure(ss+1)
}

// HubGrowth returns by how much the outside of the hub grows.
func (p Press) HubGrowth() units.Length {
	return p.j.HubOutside * units.Length(p.HubHoopOutside()/p.j.Hub.Modulus)
}

// ClosingIn returns by how much the bore of a hollow shaft or bush closes in, on
// the diameter, as it is pressed home:
//
//	Δ = 2 p R² di/((R² − ri²) Es)
//
// It is 0 for a solid shaft. A thin bush in a stiff housing closes by very nearly
// its interference, a little more by Lamé with the length free to change. What is
// pressed askew or scraped off at the edges is not in the sum: measure before
// reaming.
func (p Press) ClosingIn() units.Length {
	return -p.j.ShaftBore * units.Length(p.ShaftHoopBore()/p.j.Shaft.Modulus)
}

// BoreInPlace returns the bore of the bush once it is pressed home.
func (p Press) BoreInPlace() units.Length { return p.j.ShaftBore - p.ClosingIn() }

// A Reaming says what to ream a bush to when it is in place.
type Reaming struct {
	Before   units.Length // the bore in place, before reaming
	Min, Max units.Length // the size to ream to
	// Least is what the reamer takes at least, Min less Before. The bush was bored too
	// large before it was pressed when it is negative.
	Least units.Length
}

// Ream returns the size to ream a pressed bush to, for a journal to run in it with
// the wanted clearance. The error wraps units.ErrDomain for a solid shaft, a
// journal that is not more than 0, or a clearance that is no range above 0.
func (p Press) Ream(journal units.Length, want Clearance) (Reaming, error) {
	switch {
	case p.j.ShaftBore == 0:
		return Reaming{}, fmt.Errorf("solid shaft: want a bush, with a bore to ream: %w", units.ErrDomain)
	case !(journal > 0) || math.IsInf(float64(journal), 0):
		return Reaming{}, fmt.Errorf("journal %v: want more than 0 mm: %w", journal, units.ErrDomain)
	case !(want.Min > 0) || want.check() != nil:
		return Reaming{}, fmt.Errorf("running clearance from %v to %v: want the lesser first and more than 0 mm: %w", want.Min, want.Max, units.ErrDomain)
	}
	r := Reaming{Before: p.BoreInPlace(), Min: journal + want.Min, Max: journal + want.Max}
	r.Least = r.Min - r.Before
	return r, nil
}

// Force returns the axial force that makes the joint slide, at a coefficient of
// friction: F = μ p π d L. With the coefficient of sliding it is the push at the end
// of the stroke; with that of breaking loose, what the joint holds. The error wraps
// units.ErrDomain for a coefficient outside 0 to 1.
//
// Source: Shigley, eq. 7-48 (from memory).
func (p Press) Force(mu float64) (units.Force, error) {
	if !(mu > 0 && mu <= 1) {
		return 0, fmt.Errorf("coefficient of friction %g: want more than 0 and at most 1: %w", mu, units.ErrDomain)
	}
	return units.Force(mu * float64(p.Pressure()) * math.Pi * float64(p.j.Diameter) * float64(p.j.Length)), nil
}

// Torque returns the torque at which the joint slips: M = μ p π d² L/2. Errors as
// for Force.
//
// Source: Shigley, eq. 7-49 (from memory).
func (p Press) Torque(mu float64) (units.Torque, error) {
	f, err := p.Force(mu)
	return units.Torque(float64(f) * float64(p.j.Diameter) / 2), err
}

// HubMargin returns how many times the pressure could grow before the hub yields,
// by the greatest shear stress (Tresca): the pressure at yield is
//
//	p = Sy (ro² − R²)/(2 ro²)
//
// For a hub without a yield point, such as grey iron, it is the tensile strength
// over the hoop stress; keep that at 3 or more (common practice, no source). DIN 7190
// allows 2/√3 of the pressure above (from memory). The error wraps units.ErrDomain
// when neither strength is known.
func (p Press) HubMargin() (float64, error) {
	sh, _ := p.shapes()
	switch h := p.j.Hub; {
	case h.Yield > 0:
		return float64(h.Yield / (p.Pressure() * units.Pressure(sh+1))), nil
	case h.Tensile > 0:
		return float64(h.Tensile / p.HubHoop()), nil
	default:
		return 0, fmt.Errorf("strength of %v is not known: want a yield or tensile strength: %w", h, units.ErrDomain)
	}
}

// ShaftMargin returns how many times the pressure could grow before the shaft or
// bush yields at its bore, by the greatest shear stress. A bush below 1 does not
// fail; it closes for good by more than ClosingIn, and holds less. Errors as for
// HubMargin.
func (p Press) ShaftMargin() (float64, error) {
	s := p.j.Shaft
	if !(s.Yield > 0) {
		return 0, fmt.Errorf("yield stress of %v is not known: want a material that gives it: %w", s, units.ErrDomain)
	}
	return float64(s.Yield / -p.ShaftHoopBore()), nil
}

// At returns the joint with both parts at temperature t, everything having been
// measured at 20 °C: the interference becomes
//
//	δ(t) = δ + d (αs − αh)(t − 20 °C)
//
// An aluminium hub on iron, bronze or steel loses on warming, a bronze bush in an
// iron hub gains. That moduli and strengths fall with heat is not in the sum. The
// error wraps units.ErrDomain when a coefficient is not known, or when nothing is
// left of the interference, so that the joint is loose.
func (p Press) At(t units.Temperature) (Press, error) {
	h, s := p.j.Hub, p.j.Shaft
	if !(h.Expansion > 0) || !(s.Expansion > 0) {
		return Press{}, p.noExpansion()
	}
	j := p.j
	j.Interference += Growth(j.Diameter, s.Expansion-h.Expansion, t.Sub(ReferenceTemperature()))
	if !(j.Interference > 0) {
		return Press{}, fmt.Errorf("at %.0f °C the %v shaft is loose in the %v hub, by %v: want more interference cold, or to run cooler: %w",
			t.Celsius(), s.Name, h.Name, -j.Interference, units.ErrDomain)
	}
	return NewPress(j)
}

// FreedAt returns the temperature at which both parts, warmed together, have just no
// interference left, so that a bush of iron, bronze or steel drops out of an
// aluminium case: 20 °C + δ/(d (αh − αs)). The error wraps units.ErrDomain when a
// coefficient is not known, or when the hub does not grow faster than the shaft by
// enough for 600 °C to do it.
func (p Press) FreedAt() (units.Temperature, error) {
	h, s := p.j.Hub, p.j.Shaft
	if !(h.Expansion > 0) || !(s.Expansion > 0) {
		return 0, p.noExpansion()
	}
	rise := float64(p.j.Interference) / (float64(p.j.Diameter) * float64(h.Expansion-s.Expansion))
	if !(rise > 0 && rise <= 580) {
		return 0, fmt.Errorf("%v hub on %v shaft: want a hub that grows faster, since warming both together does not free them: %w", h, s, units.ErrDomain)
	}
	return ReferenceTemperature().Add(units.TemperatureDifference(rise)), nil
}

func (p Press) noExpansion() error {
	h, s := p.j.Hub, p.j.Shaft
	return fmt.Errorf("expansions of %v and %v are %v and %v: want both known: %w", h, s, h.Expansion, s.Expansion, units.ErrDomain)
}

// PressCautions returns what to heed when parts are pressed together or apart. A
// program that gives somebody an interference or a force prints them, with
// HeatCautions where heat is used.
func PressCautions() []string {
	return []string{
		"Stand out of the line of the press and shield the work: cast iron bursts without warning, and a part that lets go flies.",
		"Wear eye protection. Never strike hardened parts together or with a hard hammer: chips fly.",
		"Give both parts a lead of about 5°, oil steel that goes into iron, start square and press without stopping.",
		"Support a casting right under the boss: the force goes through whatever carries it.",
		"The same bore pressed a second time is smoother and wants less interference for the same hold.",
		"Keep the hoop stress of a cast-iron hub below a third of its tensile strength, and be warier of old castings with cracks or repairs.",
		"For flywheels and all that turns fast, follow the maker and local codes, and have the design checked by someone who answers for it.",
	}
}
