package geometry

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// A Crank is a crank, a connecting rod and a piston that slides in a straight
// line, with the line through the crank centre or to one side of it. Build one
// with NewCrank; the zero Crank is not a crank and its answers mean nothing.
//
// Crank angles count from true top dead centre, where the piston is highest, and
// rise in the direction of rotation.
type Crank struct {
	throw, rod, offset  units.Length // r, l, e
	stroke, top, bottom units.Length // S, and the pin's greatest and least height above the crank centre

	lambda, epsilon float64 // λ = r/l and ε = e/l
	sinTop, cosTop  float64 // of the angle from "crank up" to true top dead centre
	k0, k1          float64 // cos²φ = k0 + k1 sin t + (λ cos t)²: see cosRod
}

// NewCrank returns the crank of an engine whose cylinder stands straight over
// the crank centre, from its stroke and the rod's length between centres. Stroke
// is then twice the throw.
//
// The error is units.ErrDomain if the stroke is not more than 0, or the rod not
// more than half the stroke, or either is not finite.
func NewCrank(stroke, rod units.Length) (Crank, error) {
	switch {
	case !(stroke > 0) || math.IsInf(float64(stroke), 0):
		return Crank{}, fmt.Errorf("stroke %v: want more than 0 mm: %w", stroke, units.ErrDomain)
	case !(rod > stroke/2) || math.IsInf(float64(rod+stroke), 0):
		return Crank{}, fmt.Errorf("rod %v: want more than %v, half the stroke: %w", rod, stroke/2, units.ErrDomain)
	}
	return newCrank(stroke/2, rod, 0), nil
}

// WithOffset returns the crank c with the path of the gudgeon pin set to one
// side of the crank centre, because the cylinder stands there or the pin is set
// over in the piston. Offset is positive towards the side the crankpin is on a
// quarter turn after it points up the cylinder.
//
// The throw stays as it was, and so the stroke of the piston becomes a little
// longer than twice the throw. Where the stroke is what was measured use
// WithOffsetSameStroke.
//
// The error is units.ErrDomain unless the offset is less, either way, than rod
// less throw: with more the crank could not turn.
func (c Crank) WithOffset(offset units.Length) (Crank, error) {
	if room := c.rod - c.throw; !(offset < room && -offset < room) {
		return Crank{}, fmt.Errorf("offset %v: want less than %v either way, the rod less the throw: %w", offset, room, units.ErrDomain)
	}
	return newCrank(c.throw, c.rod, offset), nil
}

// WithOffsetSameStroke returns a crank with the rod and the stroke of c and the
// given offset, signed as in WithOffset. It is the one to use when the stroke was
// measured at the piston: the throw comes out a little less than half of it,
//
//	r = (S/2) √(1 − 4e² / (4l² − S²))
//
// The error is units.ErrDomain when no throw gives that stroke.
//
// Source: derived here from the stroke of Crank.Stroke, solved for r.
func (c Crank) WithOffsetSameStroke(offset units.Length) (Crank, error) {
	s, l, e := float64(c.stroke), float64(c.rod), float64(offset)
	r := s / 2 * math.Sqrt(1-2*e/(2*l-s)*(2*e/(2*l+s)))
	if !(math.Abs(e) < l-r) {
		return Crank{}, fmt.Errorf("offset %v: too much for a rod of %v to give a stroke of %v: %w", offset, c.rod, c.stroke, units.ErrDomain)
	}
	d := newCrank(units.Length(r), c.rod, offset)
	d.stroke = c.stroke // to the last bit
	return d, nil
}

// newCrank works out once what every position of the crank needs.
func newCrank(throw, rod, offset units.Length) Crank {
	r, l, e := float64(throw), float64(rod), float64(offset)
	lambda, epsilon := r/l, e/l
	sin := e / (l + r)
	cos := math.Sqrt((1 - sin) * (1 + sin))
	c := Crank{
		throw: throw, rod: rod, offset: offset,
		stroke: 2 * throw,
		top:    units.Length((l + r) * cos),
		bottom: rod - throw,
		lambda: lambda, epsilon: epsilon,
		sinTop: sin, cosTop: cos,
		k0: (l-r-math.Abs(e))/l*(1+lambda+math.Abs(epsilon)) + 2*lambda*math.Abs(epsilon),
		k1: 2 * lambda * epsilon,
	}
	if e != 0 {
		b := e / (l - r)
		c.bottom = units.Length((l - r) * math.Sqrt((1-b)*(1+b)))
		c.stroke = units.Length(4 * l / float64(c.top+c.bottom) * r) // S = h_T − h_B, and h_T² − h_B² = 4lr
	}
	return c
}

// Stroke returns the distance the piston travels from its highest to its lowest.
// With an offset it is more than twice the throw:
//
//	S = √((l + r)² − e²) − √((l − r)² − e²)
//
// Source: Norton, Design of Machinery, ch. 4 (chapter from memory); plane
// geometry, crank and rod in line at either end.
func (c Crank) Stroke() units.Length { return c.stroke }

// Throw returns the distance from the crank centre to the crankpin's centre.
func (c Crank) Throw() units.Length { return c.throw }

// Rod returns the length of the rod between centres.
func (c Crank) Rod() units.Length { return c.rod }

// Offset returns how far the path of the gudgeon pin lies to one side of the
// crank centre, positive towards the side the crankpin is on a quarter turn after
// it points up the cylinder.
func (c Crank) Offset() units.Length { return c.offset }

// RodRatio returns the rod's length in throws, n = l/r, from 3.5 to 4.5 in most
// engines (common practice, no source).
func (c Crank) RodRatio() float64 { return float64(c.rod / c.throw) }

// String names what the crank was made from.
func (c Crank) String() string {
	s := fmt.Sprintf("stroke %v, rod %v", c.stroke, c.rod)
	if c.offset != 0 {
		s += fmt.Sprintf(", offset %v", c.offset)
	}
	return s
}
