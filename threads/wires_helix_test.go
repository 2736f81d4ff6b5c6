package threads

import (
	"math"
	"testing"

	"example.com/benchsums/units"
)

// The helix correction against the wire itself, laid in the helicoid: the flank
// of the groove is z = pθ/2π + p/4 + (r − E/2) tan(α/2), the wire a cylinder whose
// axis crosses the plane of the thread's axis at a distance R and is tilted by φ. It
// touches where its axis is nearest to the flank, both flanks being alike by a
// half turn about the line through the middle of the wire, and it settles at the
// tilt at which R is least.
func TestHelixCorrectionAgainstTheHelicoid(t *testing.T) {
	for _, designation := range []string{"M10", "1/4 BSW", "2 BA"} {
		th := mustFind(t, designation)
		w, err := th.Wires(th.Form().BestWire(th.Pitch()))
		if err != nil {
			t.Fatal(err)
		}
		h := helicoid{th.Effective().Millimetres(), th.Pitch().Millimetres(), th.Form().TanFlank()}
		wire := w.Wire().Millimetres()
		over := 2*h.settled(wire/2) + wire
		exact := units.Length(over)*units.Millimetre - w.PlainOver(th.Effective())
		formula := w.HelixCorrection(th.Effective())
		if r := float64(formula / exact); !(r > 0.9 && r < 1.1) {
			t.Errorf("%s: formula %.3f µm, helicoid %.3f µm", designation, formula.Micrometres(), exact.Micrometres())
		}
	}
}

type helicoid struct{ e, p, tan float64 }

// distance returns how near the axis of a wire at R, tilted by phi, comes to
// the flank.
func (h helicoid) distance(R, phi float64) float64 {
	sin, cos := math.Sincos(phi)
	at := func(r, theta float64) float64 {
		s, c := math.Sincos(theta)
		z := h.p*theta/(2*math.Pi) + h.p/4 + (r-h.e/2)*h.tan
		return math.Hypot(r*c-R, z*cos-r*s*sin)
	}
	r, theta, step := h.e/2, 0.0, 0.1
	best := at(r, theta)
	for step > 1e-11 {
		moved := false
		for _, d := range [...][2]float64{{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {1, -1}, {-1, 1}, {-1, -1}} {
			if x := at(r+d[0]*step*h.p, theta+d[1]*step*h.p/h.e); x < best {
				r, theta, best, moved = r+d[0]*step*h.p, theta+d[1]*step*h.p/h.e, x, true
			}
		}
		if !moved {
			step /= 2
		}
	}
	return best
}

// resting returns R at which a wire of the radius touches at the tilt.
func (h helicoid) resting(radius, phi float64) float64 {
	lo, hi := h.e/2-h.p/2, h.e/2+2*h.p
	for range 60 {
		if mid := (lo + hi) / 2; h.distance(mid, phi) < radius {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi
}

// settled returns the least R over the tilt.
func (h helicoid) settled(radius float64) float64 {
	psi := math.Atan(h.p / (math.Pi * h.e))
	lo, hi := 0.5*psi, 1.5*psi
	for range 40 {
		a, b := lo+(hi-lo)/3, hi-(hi-lo)/3
		if h.resting(radius, a) < h.resting(radius, b) {
			hi = b
		} else {
			lo = a
		}
	}
	return h.resting(radius, (lo+hi)/2)
}
