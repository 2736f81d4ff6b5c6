package threads

import (
	"fmt"
	"math"

	"example.com/benchsums/units"
)

// BoltRoot returns the diameter at the bottom of the groove of a bolt or bush
// that is cut to thread t: the core of the form, or for ISO and Unified, whose
// bolts are cut deeper than the basic profile, that of the rounded root
// d₃ = D − 17/12 H = D − 1.2269 p.
func (t Thread) BoltRoot() units.Length {
	if profile(t.form) == ISOForm {
		return t.major - ISOBoltForm.MinorBelow(t.pitch)
	}
	return t.minor
}

// A Bush is a sleeve screwed outside with one thread and inside with another,
// such as one that takes a modern plug in an old plug hole. NewBush makes one.
type Bush struct{ outer, inner Thread }

// NewBush returns the bush with the two threads. The error wraps
// units.ErrDomain for no thread, and where the inner thread leaves no wall at
// all.
func NewBush(outer, inner Thread) (Bush, error) {
	if outer.pitch == 0 || inner.pitch == 0 {
		return Bush{}, noThread()
	}
	b := Bush{outer, inner}
	if !(b.Wall() > 0) {
		return Bush{}, fmt.Errorf("bush %v outside, %v inside: want a root of more than %v outside, it is %v: %w",
			outer, inner, inner.major, outer.BoltRoot(), units.ErrDomain)
	}
	return b, nil
}

// Outer returns the outer thread.
func (b Bush) Outer() Thread { return b.outer }

// Inner returns the inner thread.
func (b Bush) Inner() Thread { return b.inner }

// Wall returns the metal where it is thinnest, between the bottom of the outer
// groove and the bottom of the inner one:
//
//	wall = (root of outer − major of inner) / 2
//
// with the root as BoltRoot has it. The tap cuts the inner thread to its
// nominal major diameter or larger, and the two threads are never quite on one
// centre: half of the first and all of the second come off the wall.
//
// No published least wall was found. WallArea compares it with what it has to
// carry.
func (b Bush) Wall() units.Length { return (b.outer.BoltRoot() - b.inner.major) / 2 }

// WallArea returns the area of metal across the bush where it is thinnest,
// that of the ring between the two roots. Beside the stress area of the inner
// thread it says which would part first under the same pull in the same metal.
func (b Bush) WallArea() units.Area {
	root, hole := float64(b.outer.BoltRoot()), float64(b.inner.major)
	return units.Area(math.Pi / 4 * (root - hole) * (root + hole))
}

// Strength returns the WallArea over the stress area of the inner thread: below
// 1 the bush is weaker than what is screwed into it.
func (b Bush) Strength() float64 {
	return float64(b.WallArea() / b.inner.StressArea())
}
