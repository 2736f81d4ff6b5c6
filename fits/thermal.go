package fits

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// ReferenceTemperature returns 20 °C, at which sizes on drawings hold.
//
// Source: ISO 1 (from memory).
func ReferenceTemperature() units.Temperature { return units.Celsius(20) }

// Growth returns by how much a size grows with a change of temperature:
//
//	Δd = d α ΔT
//
// A bore grows as the solid piece that would fill it. Any change and any sign will
// do; α itself changes with temperature, by a tenth or so over 100 K.
func Growth(size units.Length, alpha units.Expansion, change units.TemperatureDifference) units.Length {
	return units.Length(float64(size) * float64(alpha) * float64(change))
}

// A Pair is a hole and a shaft of two materials, measured at 20 °C.
type Pair struct {
	hole, shaft           units.Length
	holeAlpha, shaftAlpha units.Expansion
}

// NewPair returns a hole and the shaft in it with their coefficients of expansion.
// The error wraps units.ErrDomain for a size or a coefficient that is not more than
// 0, or sizes that differ by more than a tenth and so belong to no pair.
func NewPair(hole units.Length, ofHole units.Expansion, shaft units.Length, ofShaft units.Expansion) (Pair, error) {
	for _, d := range [...]units.Length{hole, shaft} {
		if !(d > 0) || math.IsInf(float64(d), 0) {
			return Pair{}, fmt.Errorf("hole %v and shaft %v: want more than 0 mm: %w", hole, shaft, units.ErrDomain)
		}
	}
	for _, a := range [...]units.Expansion{ofHole, ofShaft} {
		if !(a > 0) || math.IsInf(float64(a), 0) {
			return Pair{}, fmt.Errorf("expansions %v and %v: want more than 0: %w", ofHole, ofShaft, units.ErrDomain)
		}
	}
	if !(math.Abs(float64(hole-shaft)) <= 0.1*float64(hole)) {
		return Pair{}, fmt.Errorf("hole %v and shaft %v: want a pair that differs by a tenth at most: %w", hole, shaft, units.ErrDomain)
	}
	return Pair{hole, shaft, ofHole, ofShaft}, nil
}

// ClearanceAt returns the clearance when the hole and the shaft have these
// temperatures, the parts being free to grow; interference is negative:
//
//	c = D (1 + αh (Th − 20 °C)) − d (1 + αs (Ts − 20 °C))
//
// For parts that are press-fitted it is the interference that is left between them.
func (p Pair) ClearanceAt(hole, shaft units.Temperature) units.Length {
	return p.hole - p.shaft +
		Growth(p.hole, p.holeAlpha, hole.Sub(ReferenceTemperature())) -
		Growth(p.shaft, p.shaftAlpha, shaft.Sub(ReferenceTemperature()))
}

// Clearance returns the clearance at 20 °C.
func (p Pair) Clearance() units.Length { return p.hole - p.shaft }

// HeatHole returns the temperature the part with the hole must have to go over the
// shaft, which stands at its own temperature, with the easing wanted:
//
//	Th = 20 °C + (d (1 + αs (Ts − 20 °C)) + e − D)/(αh D)
//
// It is 20 °C where no warming is wanted. The error wraps units.ErrDomain for an easing below 0, and for a temperature that
// nobody can or should give a part, above 600 °C; what the material stands is usually
// far below, see HeatLimits.
func (p Pair) HeatHole(shaft units.Temperature, easing units.Length) (units.Temperature, error) {
	if err := checkEasing(easing); err != nil {
		return 0, err
	}
	want := p.shaft + Growth(p.shaft, p.shaftAlpha, shaft.Sub(ReferenceTemperature())) + easing - p.hole
	t := ReferenceTemperature().Add(units.TemperatureDifference(float64(want) / (float64(p.holeAlpha) * float64(p.hole))))
	if !(t <= units.Celsius(600)) {
		return 0, fmt.Errorf("the hole would want %.0f °C: want less interference, or the shaft chilled: %w", t.Celsius(), units.ErrDomain)
	}
	return max(t, ReferenceTemperature()), nil
}

// ChillShaft returns the temperature the shaft must have to go into the hole, which
// stands at its own temperature, with the easing wanted; 20 °C where no chilling is
// wanted. The error wraps units.ErrDomain for an easing below 0, and for a temperature
// below −196 °C, which is liquid nitrogen; dry ice gives −78 °C.
func (p Pair) ChillShaft(hole units.Temperature, easing units.Length) (units.Temperature, error) {
	if err := checkEasing(easing); err != nil {
		return 0, err
	}
	want := p.hole + Growth(p.hole, p.holeAlpha, hole.Sub(ReferenceTemperature())) - easing - p.shaft
	t := ReferenceTemperature().Add(units.TemperatureDifference(float64(want) / (float64(p.shaftAlpha) * float64(p.shaft))))
	if !(t >= units.Celsius(-196)) {
		return 0, fmt.Errorf("the shaft would want %.0f °C: want less interference, or the hole heated: %w", t.Celsius(), units.ErrDomain)
	}
	return min(t, ReferenceTemperature()), nil
}

func checkEasing(easing units.Length) error {
	if !(easing >= 0) || math.IsInf(float64(easing), 0) {
		return fmt.Errorf("easing %v: want 0 mm or more of clearance while putting together: %w", easing, units.ErrDomain)
	}
	return nil
}

// FreedAt returns the temperature at which the parts, warmed or cooled together,
// have just no interference left, and so come apart or fall apart: for an aluminium
// case with a bush of iron or bronze, above 20 °C.
//
// The error wraps units.ErrDomain when there is clearance at 20 °C already, or when
// both materials grow alike, so that no common temperature frees them.
func (p Pair) FreedAt() (units.Temperature, error) {
	rate := float64(p.hole)*float64(p.holeAlpha) - float64(p.shaft)*float64(p.shaftAlpha)
	if p.Clearance() >= 0 {
		return 0, fmt.Errorf("clearance %v at 20 °C: want interference, else they are free already: %w", p.Clearance(), units.ErrDomain)
	}
	t := ReferenceTemperature().Add(units.TemperatureDifference(-float64(p.Clearance()) / rate))
	if !(math.Abs(t.Celsius()) <= 600) || t.Celsius() < -196 {
		return 0, fmt.Errorf("expansions %v and %v: want two that differ more, since warming or cooling both together does not free them: %w",
			p.holeAlpha, p.shaftAlpha, units.ErrDomain)
	}
	return t, nil
}

// A HeatLimit is how hot a kind of part may be made for putting together or taking
// apart, or how cold a means of chilling makes it.
type HeatLimit struct {
	What   string
	Limit  units.Temperature
	Source string
}

// HeatLimits returns the highest temperatures for warming parts.
func HeatLimits() []HeatLimit {
	return []HeatLimit{
		{"ball bearings and hardened steel", units.Celsius(120), "common practice, no source"},
		{"heat-treated aluminium: LM25-TF loses strength with long time above 130 °C", units.Celsius(150), "BS 1490, typical data for LM25; the limit is common practice, no source"},
		{"case-hardened steel", units.Celsius(160), "common practice, no source (160 to 180 °C)"},
		{"plain steel and iron", units.Celsius(300), "DIN 7190-1:2017, 5.3, by a secondary source"},
	}
}

// ChillLimits returns how cold the usual means make a part.
func ChillLimits() []HeatLimit {
	return []HeatLimit{
		{"household freezer", units.Celsius(-18), "common practice, no source"},
		{"dry ice", units.Celsius(-78), "common practice, no source"},
	}
}

// HeatCautions returns what to heed when parts are warmed or chilled. A program
// that gives a temperature to somebody prints them.
func HeatCautions() []string {
	return []string{
		"Warm the part evenly in an oven or in clean dry oil, never with a torch on one side, and read a contact thermometer on the part.",
		"Petrol, its vapour and oil mist catch fire: drain, clean and air everything first, and keep an extinguisher at hand.",
		"Keep water away from hot oil, wear dry gloves and eye protection, and ventilate; a wet part in hot oil spits.",
		"Castings of magnesium must never meet a flame; find out what a light casting is before warming it.",
		"Dry ice burns the skin and drives out the air: gloves, and a window open. Never strike or press a casting that is deeply chilled: it is brittle.",
		"A joint measured cold is another hot: check it at the highest temperature it will run at.",
		"Where the part carries pressure or a life hangs on it, follow the maker and the local code, and have a competent person do it.",
	}
}
