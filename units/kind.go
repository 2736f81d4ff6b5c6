package units

import (
	"gonum.org/v1/gonum/unit"
)

// A kind is what one type of quantity knows about its units. All values of
// this type are tables that never change.
type kind struct {
	name   string          // "length", as error messages say it
	goName string          // "Length", as Go source says it
	dims   unit.Dimensions // for gonum
	base   scale           // the SI unit underneath
	text   []scale         // the units MarshalText would rather write, the usual one first
	people []scale         // the units String chooses from, largest first
	scales []scale         // every unit that is read
	wants  string          // what to write, for errors: "mm, in or thou"
	traps  []trap          // units that are refused with a reason
	ladder []rung          // units that may follow one another: 28° 30′
}

// A scale is a unit with the spellings it is read by.
type scale struct {
	name    string   // as written out
	goName  string   // the constant, as Go source says it
	tight   bool     // written without a space: 60°
	factor  float64  // SI units in one of it
	zero    float64  // SI value of its zero: 273.15 for °C, 0 for nearly all
	aliases []string // spellings, folded as foldUnit does
}

// A trap is a spelling that people use and that has more than one meaning.
type trap struct {
	spellings []string
	msg       string
}

// A rung is one step of a ladder: the spellings that are understood after a
// larger unit, and how many of it make the larger one.
type rung struct {
	names  []string
	factor float64 // SI units in one of it
	limit  float64 // so many make one of the rung above; 0 for the top rung
}

// si turns a number on the scale into the SI value.
func (s *scale) si(x float64) float64 {
	if s.zero != 0 {
		return x*s.factor + s.zero
	}
	return x * s.factor
}

// number turns an SI value into the number on the scale.
func (s *scale) number(v float64) float64 {
	if s.zero != 0 {
		return (v - s.zero) / s.factor
	}
	return v / s.factor
}

// join writes a number and the name of the scale.
func (s *scale) join(num string) string {
	switch {
	case s.name == "":
		return num
	case s.tight:
		return num + s.name
	}
	return num + " " + s.name
}

// find returns the scale that folded spelling u names.
func (k *kind) find(u string) (*scale, bool) {
	for i := range k.scales {
		for _, a := range k.scales[i].aliases {
			if a == u {
				return &k.scales[i], true
			}
		}
	}
	return nil, false
}

// trapped returns the reason why spelling u is refused, if it is.
func (k *kind) trapped(u string) (string, bool) {
	for _, t := range k.traps {
		for _, s := range t.spellings {
			if s == u {
				return t.msg, true
			}
		}
	}
	return "", false
}

// otherKind names a kind of quantity that does have unit u, for the message
// "psi is a unit of pressure".
func otherKind(u string) (string, bool) {
	for _, k := range [...]*kind{
		&lengthKind, &angleKind, &areaKind, &volumeKind, &massKind, &forceKind, &torqueKind, &pressureKind,
		&temperatureKind, &speedKind, &angularSpeedKind, &accelerationKind, &stiffnessKind, &torsionalStiffnessKind,
		&energyKind, &powerKind, &inertiaKind, &expansionKind, &densityKind, &flowKind, &angularAccelerationKind,
		&timeAreaKind, &specificTimeAreaKind,
	} {
		if _, ok := k.find(u); ok {
			return k.name, true
		}
	}
	return "", false
}
