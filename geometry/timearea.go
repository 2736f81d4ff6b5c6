package geometry

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"

	"example.com/benchsums/units"
)

// A Window is the shape of a port in the cylinder wall: a rectangle, or one with
// rounded corners. Its width is the chord straight across, as a vernier gives it,
// which is what gas sees passing through; several equal windows that open together
// count as one of all their widths, if Corner is 0.
type Window struct {
	Width, Height units.Length
	Corner        units.Length // radius of all four corners; 0 for square ones
}

func (w Window) check() error {
	if !(w.Width > 0 && w.Height > 0) || math.IsInf(float64(w.Width+w.Height), 0) {
		return fmt.Errorf("window %v wide and %v high: want both more than 0 mm: %w", w.Width, w.Height, units.ErrDomain)
	}
	if !(w.Corner >= 0 && 2*w.Corner <= min(w.Width, w.Height)) {
		return fmt.Errorf("corner radius %v of a window %v wide and %v high: want 0 mm to half the lesser: %w", w.Corner, w.Width, w.Height, units.ErrDomain)
	}
	return nil
}

// Open returns the area laid open when the edge that uncovers the window has
// passed its first edge by a distance: nothing before that, the whole window past
// its far edge. With square corners it is width times distance between.
//
// The error is units.ErrDomain for a window without a width and height, or corners
// that do not fit in it.
//
// Source: plane geometry; the corners are segments of a circle.
func (w Window) Open(uncovered units.Length) (units.Area, error) {
	if err := w.check(); err != nil {
		return 0, err
	}
	return w.open(uncovered), nil
}

func (w Window) open(uncovered units.Length) units.Area {
	h := float64(min(max(uncovered, 0), w.Height))
	height, r := float64(w.Height), float64(w.Corner)
	// Two corners where it begins to open, two at its far edge.
	lost := cornerLoss(r, h) + cornerLoss(r, height) - cornerLoss(r, height-h)
	return units.Area(float64(w.Width)*h - lost)
}

// cornerLoss returns what two rounded corners of radius r take from a strip of
// height h at their end of a window: 2rh − r²(arccos c − c√(1 − c²)), c = 1 − h/r,
// and no more beyond a height of r.
func cornerLoss(r, h float64) float64 {
	if r == 0 {
		return 0
	}
	h = min(h, r)
	c := 1 - h/r
	return 2*r*h - r*r*(math.Acos(c)-c*math.Sqrt((1-c)*(1+c)))
}

// A PortArea is a port's opening through one turn of the crank.
type PortArea struct {
	Event    PortEvent
	Mean     units.Area // over the time it is open
	Greatest units.Area
}

// CrownPortArea returns the opening through a turn of a port that the crown works:
// CrownPort with the window below its top edge. The error is units.ErrDomain as
// there, or for a window that Window.Open refuses.
func (b Barrel) CrownPortArea(topEdge units.Length, w Window) (PortArea, error) {
	if err := w.check(); err != nil {
		return PortArea{}, err
	}
	e, err := b.CrownPort(topEdge)
	if err != nil {
		return PortArea{}, err
	}
	edge := topEdge - b.deck
	a := opening{b.crank, w, edge, 1}
	return PortArea{e, a.mean(e), w.open(b.crank.stroke - edge)}, nil
}

// SkirtPortArea returns the opening through a turn of a port that the skirt works:
// SkirtPort with the window above its bottom edge. The error is units.ErrDomain as
// there, or for a window that Window.Open refuses.
func (b Barrel) SkirtPortArea(bottomEdge units.Length, w Window) (PortArea, error) {
	if err := w.check(); err != nil {
		return PortArea{}, err
	}
	e, err := b.SkirtPort(bottomEdge)
	if err != nil {
		return PortArea{}, err
	}
	edge := bottomEdge - b.deck - b.skirt
	a := opening{b.crank, w, edge, -1}
	return PortArea{e, a.mean(e), w.open(edge)}, nil
}

// TimeArea returns the open area of the port added up over the time of one turn at
// a steady speed: mean area times the time it is open. The error is
// units.ErrDomain for a speed not more than 0.
//
// Source: Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1 (chapter
// from memory).
func (a PortArea) TimeArea(speed units.AngularSpeed) (units.TimeArea, error) {
	if err := checkSpeed(speed); err != nil {
		return 0, err
	}
	return units.TimeArea(float64(a.Mean) * float64(a.Event.Duration()) / float64(speed)), nil
}

// SpecificTimeArea returns the time-area for each unit of swept volume, by which
// ports of engines of different size are compared. The error is units.ErrDomain
// for a speed or a volume not more than 0.
func (a PortArea) SpecificTimeArea(speed units.AngularSpeed, swept units.Volume) (units.SpecificTimeArea, error) {
	if !(swept > 0) || math.IsInf(float64(swept), 0) {
		return 0, fmt.Errorf("swept volume %v: want more than 0 cm³: %w", swept, units.ErrDomain)
	}
	t, err := a.TimeArea(speed)
	return units.SpecificTimeArea(float64(t) / float64(swept)), err
}

// An opening is a window whose edge lies at a drop, uncovered by a piston that
// goes beyond it (way 1) or is not yet there (way -1).
type opening struct {
	crank Crank
	w     Window
	edge  units.Length
	way   units.Length
}

// mean returns the mean open area between the events, by Gauss-Legendre quadrature
// between the places where an edge or a corner passes, where the area has a kink.
func (o opening) mean(e PortEvent) units.Area {
	area := func(theta float64) float64 {
		return float64(o.w.open(o.way * (o.crank.Drop(units.Angle(theta)) - o.edge)))
	}
	var sum float64
	kinks := o.kinks(e)
	for i := 1; i < len(kinks); i++ {
		sum += quad.Fixed(area, kinks[i-1], kinks[i], 48, nil, 0)
	}
	if e.Duration() == 0 {
		return 0
	}
	return units.Area(sum / float64(e.Duration()))
}

// kinks returns the events, and between them the angles at which a corner's end or
// the window's far edge passes, in order.
func (o opening) kinks(e PortEvent) []float64 {
	at := []float64{float64(e.Opens), float64(e.Closes)}
	for _, h := range [...]units.Length{o.w.Corner, o.w.Height - o.w.Corner, o.w.Height} {
		before, after, err := o.crank.AnglesAtDrop(o.edge + o.way*h)
		if err != nil {
			continue // the piston does not go so far
		}
		if o.way > 0 {
			before = units.Turn - before
		} else {
			before = -before
		}
		at = append(at, float64(before), float64(after))
	}
	slices.Sort(at)
	return at
}
