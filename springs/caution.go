package springs

import (
	"fmt"
	"slices"

	"example.com/benchsums/units"
)

// A Hazard puts stored energy into words.
type Hazard struct {
	Energy units.Energy
	// Fall is the height from which a hammer of 1 kg falls with that energy.
	Fall units.Length
	// Text says it in a sentence.
	Text string
}

// gravity is the standard acceleration, CGPM 1901 (NIST SP 811:2008, Appendix B).
const gravity = 9.80665

// HazardOf returns what a stored energy means: "16 J: as much as a 1 kg hammer
// falling 1.6 m". The error is units.ErrDomain for an energy below 0.
func HazardOf(e units.Energy) (Hazard, error) {
	if err := notNegative("energy", e); err != nil {
		return Hazard{}, err
	}
	fall := units.Length(float64(e) / gravity)
	how := fmt.Sprintf("%.1f m", fall.Metres())
	if fall < 0.95*units.Metre {
		how = fmt.Sprintf("%.0f mm", fall.Millimetres())
	}
	return Hazard{e, fall, fmt.Sprintf("%.3g J: as much as a 1 kg hammer falling %s", e.Joules(), how)}, nil
}

// A Work is a kind of work on springs, for which there are cautions.
type Work int

const (
	// Handling wound springs of any kind.
	Handling Work = iota
	// OpeningBarrel: power springs in barrels and behind kick-start covers.
	OpeningBarrel
	// Coiling wire in the lathe.
	Coiling
	// Heating springs and new ends on old ones.
	Heating
)

// String names the work.
func (w Work) String() string {
	switch w {
	case Handling:
		return "handling wound springs"
	case OpeningBarrel:
		return "opening a barrel"
	case Coiling:
		return "coiling wire"
	case Heating:
		return "heating springs"
	}
	return fmt.Sprintf("Work(%d)", int(w))
}

var handling = [...]string{
	"A wound spring stores energy and lets it go at once. Know the figure in joules before you touch it.",
	"Wear eye protection and leather gloves. Stand out of the plane of the coil: strip edges cut, and a loose end whips.",
	"Look for cracks at holes and hooks before winding an old spring. Discard it where rust pits can be felt.",
	"Where local rules or the maker ask for licensed work, follow them.",
}

// Cautions returns what to print beside any result for a kind of work, the general
// cautions first.
//
// Source: common practice, no source; the loss of strength by heat from a
// stockist's table (see TemperedStrength).
func Cautions(w Work) []string {
	out := slices.Clone(handling[:])
	switch w {
	case OpeningBarrel:
		out = append(out,
			"Let the spring down under control, through its click or with a bar on the arbor, before any cover comes off.",
			"A strip pressed against the wall still holds energy when run down. Hold it in as the cover is lifted, and let it out coil by coil into a bag or box.")
	case Coiling:
		out = append(out,
			"Coil at the slowest back gear or by hand. Lead the wire through a guide block, never through the fingers.",
			"The free end flies when the wire is cut or let go: hold it in pliers until the tension is off.",
			"Make a trial coil first: the wire springs back, and the mandrel is to be 5 to 15 per cent smaller than the bore wanted.")
	case Heating:
		out = append(out,
			"Keep a torch away from all but the last few millimetres of a tempered spring: at the blue, about 290 to 320 °C, strength is already going.",
			"Do not plate a hard spring without baking it afterwards: hydrogen breaks it days later.",
			"Hot parts look like cold ones. Keep oil, rags and petrol away.")
	}
	return out
}

// A Soundness is what published practice says of how far a sum can be trusted.
type Soundness struct {
	Share  float64 // plus and minus, as a share of the torque or rate; 0 where no figure is published
	Text   string
	Source string
}

// A Form is a form of spring, for Accuracy.
type Form int

const (
	// HelicalTorsion springs.
	HelicalTorsion Form = iota
	// OpenSpiral springs.
	OpenSpiral
	// PowerSpring in a barrel.
	PowerSpring
	// HelicalCoil: compression and extension springs.
	HelicalCoil
)

// String names the form.
func (f Form) String() string {
	switch f {
	case HelicalTorsion:
		return "helical torsion spring"
	case OpenSpiral:
		return "open spiral spring"
	case PowerSpring:
		return "power spring"
	case HelicalCoil:
		return "compression or extension spring"
	}
	return fmt.Sprintf("Form(%d)", int(f))
}

// Accuracy states what published practice says of the accuracy of the sums for a
// form of spring. Print it with them. The error is units.ErrDomain for a form that
// is none of the constants.
func Accuracy(f Form) (Soundness, error) {
	switch f {
	case HelicalTorsion:
		return Soundness{0.10, "Commercial torque is within plus and minus 10 per cent. One torque at one angle is enough to specify a spring. Three published constants for the rate differ by 8 per cent, for friction. Wire 2 per cent thicker gives 8 per cent more.",
			"Machinery's Handbook, 31st ed., p. 343 (10 per cent) and p. 334; Shigley, eq. 10-51"}, nil
	case OpenSpiral:
		return Soundness{0, "Spiral springs cannot be calculated accurately. With a pinned end published rotations differ by 25 per cent. Strip 2 per cent thicker gives 6 per cent more.",
			"Machinery's Handbook, 31st ed., p. 344; Roark against Bhandari for the pinned end"}, nil
	case PowerSpring:
		return Soundness{0, "Motor springs cannot be calculated accurately. Torque in driving and in winding differ by a friction for which no published figure could be read; take it as an input. The free shape of the strip alone changes the torque by a factor of two or more. Rules for the length differ noticeably: measure the original where there is one.",
			"Machinery's Handbook, 31st ed., p. 344"}, nil
	case HelicalCoil:
		return Soundness{0, "The formula for the rate is good; the wire is not: 1 per cent on its diameter is 4 per cent on the rate, and closed ends leave a quarter turn in doubt.",
			"derived: k goes with d⁴; common practice, no source, for the ends"}, nil
	}
	return Soundness{}, fmt.Errorf("form %d: want HelicalTorsion, OpenSpiral, PowerSpring or HelicalCoil: %w", int(f), units.ErrDomain)
}
