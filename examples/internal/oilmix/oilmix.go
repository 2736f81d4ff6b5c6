// Package oilmix works out oil in petrol for two-strokes.
//
// A mix is a ratio of petrol to oil: 16:1 is sixteen parts of petrol to one of
// oil, seventeen parts of mix in all. Cards give it as so much oil to a gallon,
// and which gallon decides: half a pint to the imperial gallon is 16:1, half a
// US pint to the US gallon is 16:1 too, but half an imperial pint to the US
// gallon is 13.3:1. Some say 1:16, or so many per cent; per cent of the petrol
// and per cent of the whole mix are not the same.
package oilmix

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Mix is how many parts of petrol go to one part of oil.
type Mix struct{ petrol float64 }

// NewMix returns the mix of so many parts of petrol to one of oil. A number
// below 1 is taken as refused and not turned about: for 1:16 give 16.
func NewMix(petrolToOil float64) (Mix, error) {
	if !(petrolToOil >= 1) || math.IsInf(petrolToOil, 0) {
		return Mix{}, fmt.Errorf("petrol to oil %g:1: want 1:1 or more petrol, as in 16:1: %w", petrolToOil, units.ErrDomain)
	}
	return Mix{petrolToOil}, nil
}

// OilTo returns the mix of so much oil to so much petrol, as a card has it.
func OilTo(oil, petrol units.Volume) (Mix, error) {
	if !(oil > 0) || !(petrol > 0) || math.IsInf(float64(petrol/oil), 0) {
		return Mix{}, fmt.Errorf("oil %v to petrol %v: want more than nothing of both: %w", oil, petrol, units.ErrDomain)
	}
	return NewMix(float64(petrol / oil))
}

// OilShare returns the mix in which oil is the given share of the whole.
func OilShare(ofMix units.Ratio) (Mix, error) {
	if !(ofMix > 0 && ofMix <= 0.5) {
		return Mix{}, fmt.Errorf("oil %v of the mix: want more than 0 %% and 50 %% at most: %w", ofMix, units.ErrDomain)
	}
	return NewMix(float64(1/ofMix) - 1)
}

// PetrolToOil returns the parts of petrol to one of oil.
func (m Mix) PetrolToOil() float64 { return m.petrol }

// OilOfMix returns the share of oil in the whole mix.
func (m Mix) OilOfMix() units.Ratio { return units.Ratio(1 / (1 + m.petrol)) }

// OilFor returns the oil to put to so much petrol.
func (m Mix) OilFor(petrol units.Volume) units.Volume { return petrol / units.Volume(m.petrol) }

// PetrolFor returns the petrol that so much oil is for.
func (m Mix) PetrolFor(oil units.Volume) units.Volume { return oil * units.Volume(m.petrol) }

// Fill returns what of each makes so much mix, for a can to be filled to a
// line.
func (m Mix) Fill(total units.Volume) (petrol, oil units.Volume) {
	oil = total / units.Volume(1+m.petrol)
	return total - oil, oil
}

// Blend returns the mix that comes of pouring two together.
func Blend(a Mix, va units.Volume, b Mix, vb units.Volume) (Mix, error) {
	if !(va >= 0) || !(vb >= 0) || !(va+vb > 0) {
		return Mix{}, fmt.Errorf("blending %v and %v: want more than nothing in all: %w", va, vb, units.ErrDomain)
	}
	pa, oa := a.Fill(va)
	pb, ob := b.Fill(vb)
	return OilTo(oa+ob, pa+pb)
}

// Correct returns the oil to add to a mix that is there, to make it into a
// richer one; less than 0 is petrol that would have to be added instead, as
// much of it as PetrolFor says.
func Correct(have Mix, volume units.Volume, want Mix) (oil, petrol units.Volume) {
	p, o := have.Fill(volume)
	if lack := want.OilFor(p) - o; lack >= 0 {
		return lack, 0
	}
	return 0, want.PetrolFor(o) - p
}

// String writes the mix as garages do.
func (m Mix) String() string { return fmt.Sprintf("%.3g:1", m.petrol) }
