package adaptersheet

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/readings"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// A flange goes on the two studs.
type flange struct {
	centres   reading
	hole      length
	thick     length
	across    length // its diameter
	neck      length // length
	neckOut   length // diameter
	edge      reading
	spigotLen length
}

// Room that a stud wants beyond the flange, in diameters: a nut of one, a
// washer of a fifth, and a thread or two to be seen (common practice, no source).
const nutRoom = 1.45

// planFlange works out stud holes, thickness and diameter.
func (w *work) planFlange() error {
	r, f := w.r, &w.flange
	f.centres = settled(readings.Mean(r.StudCentres, r.CentresGoodTo))
	d := r.StudDiameter.Value
	f.hole = tenthUp(d + max(mm/2, 2*f.centres.Std+2*general(f.centres.Value)/3))
	most := readings.Difference(*r.StudProjection, units.Exact(r.Gasket+nutRoom*d))
	if !(most.Value > d/2) {
		return w.file.Errorf("adapter.stud_projection", "studs of %v leave %v for a flange under gasket, washer and nut: want half a stud's diameter at least; fit longer studs", r.StudProjection.Value, most.Value)
	}
	f.thick = halfDown(min(1.25*d, most.Value-2*most.Std))
	f.thick = max(f.thick, halfDown(d/2))
	f.across = r.BarDiameter - mm
	w.figure("stud_centres", "stud centres", f.centres)
	w.figure("stud_hole", "stud holes, drill", units.Exact(f.hole))
	w.figure("flange_most", "flange, thickest that leaves room for the nuts", most)
	w.figure("flange", "flange, thickness", units.Exact(f.thick))
	w.s.Add("Thickest flange: the studs less gasket, washer, nut and a thread or two (1.45 d: common practice, no source)", "t = projection − gasket − 1.45 d",
		fmt.Sprintf("%s − %s − 1.45 × %s", sheet.Value(*r.StudProjection, sheet.Millimetre), sheet.Plain(r.Gasket, sheet.Millimetre, 2), sheet.Value(*r.StudDiameter, sheet.Millimetre)), sheet.Show(most, sheet.Millimetre))
	w.free("A", "flange, thickness", f.thick, "1 1/4 stud diameters if the studs allow (common practice, no source)")
	w.free("B", "flange, diameter", f.across, "the bar cleaned up")
	w.sizes = append(w.sizes, size{"H", "stud holes", f.hole, f.hole + mm/5, false, "stud, what the centres may be out, and how well holes are marked out"})
	w.edges()
	return nil
}

// settled takes the uncertainty of a reading as known for sure: two readings of
// one thing say too little of their own scatter to widen it further.
func settled(r reading) reading { return units.WithStd(r.Value, r.Std) }

// edges says how much metal is left outside the stud holes.
func (w *work) edges() {
	r, f := w.r, &w.flange
	half := readings.Scale(f.centres, 0.5)
	f.edge = units.WithStd(f.across/2-half.Value-f.hole/2, half.Std)
	want := r.StudDiameter.Value / 2
	w.figure("edge", "metal outside the stud holes", f.edge)
	needed := f.centres.Value + f.hole + 2*want + mm
	w.s.Add("Metal left outside the stud holes", "(flange − centres − hole)/2",
		fmt.Sprintf("(%s − %s − %s)/2", sheet.Plain(f.across, sheet.Millimetre, 1), sheet.Value(f.centres, sheet.Millimetre), sheet.Plain(f.hole, sheet.Millimetre, 1)), sheet.Show(f.edge, sheet.Millimetre))
	if f.edge.Value >= want {
		return
	}
	w.figure("bar_needed", "bar that would leave half a stud's diameter there", units.Exact(needed))
	left := fmt.Sprintf("leaves %s outside the stud holes", both(f.edge.Value))
	if f.edge.Value <= 0 {
		left = "does not reach round the stud holes"
	}
	w.s.Answer = append(w.s.Answer, fmt.Sprintf("The bar is thin for the flange: it %s, where half a stud's diameter, %s, is usual (common practice, no source). A bar of %s would do, or a flange of plate with the tube let in.", left, both(want), both(needed)))
	w.s.Questions = append(w.s.Questions, "Will washers and nuts lie wholly on the flange? If not, is there a thicker bar, or may the holes be left open as slots and thick washers bridge them?")
}

// planNeck makes the neck long enough for the collar to clear the studs, and the
// spigot as long as the collar is deep.
func (w *work) planNeck() error {
	r, f := w.r, &w.flange
	f.neck = halfUp(max(r.StudProjection.Value-r.Gasket-f.thick+mm, 5*mm))
	f.spigotLen = r.CollarDepth.Value - mm/2
	if !(f.spigotLen > 0) {
		return w.file.Errorf("adapter.collar_depth", "%v: want more than half a millimetre, which the spigot is left short", r.CollarDepth.Value)
	}
	port := readings.Mean(r.PortBore, r.BoresGoodTo)
	f.neckOut = halfUp(max(w.spigot.max, port.Value) + 6*mm)
	room := f.centres.Value - 2.2*r.StudDiameter.Value
	if f.neckOut > room {
		w.s.Questions = append(w.s.Questions, fmt.Sprintf("A neck of %s stands where the nuts turn (%s is free between their corners, 2.2 stud diameters across: common practice, no source). Can thinner nuts be had, or flats be filed on the neck?", both(f.neckOut), both(room)))
	}
	w.free("E", "neck, diameter", f.neckOut, "a shoulder of 3 mm for the collar, clear of the nuts")
	w.free("F", "neck, length", f.neck, "the collar clears the ends of the studs by 1 mm")
	w.sizes = append(w.sizes, size{"G", "spigot, length", f.spigotLen - mm/5, f.spigotLen, false, "half a millimetre short of the collar's bottom"})
	if r.OutOfFlat > mm/20 {
		w.s.Questions = append(w.s.Questions, fmt.Sprintf("The engine's flange is %s out of flat, and the gasket is %s thick pinched. Does it seal all round, or is the flange to be trued first? Ears pulled down over a hollow flange bend the adapter too.", both(r.OutOfFlat), both(r.Gasket)))
	}
	return nil
}

func (w *work) length() length { return w.flange.thick + w.flange.neck + w.flange.spigotLen }

// checkBar asks whether the bar is long enough.
func (w *work) checkBar() error {
	total := w.length()
	left := w.r.BarLength - total
	w.figure("length", "adapter, whole length", units.Exact(total))
	switch {
	case left < 2*mm:
		return w.file.Errorf("adapter.bar_length", "an adapter of %v from a bar of %v: want 2 mm more than it, to face both ends", total, w.r.BarLength)
	case left < 15*mm:
		w.s.Questions = append(w.s.Questions, fmt.Sprintf("The bar leaves %s to grip by: is that enough, or is the piece to be held by a stub or on a mandrel?", both(left)))
	}
	return nil
}

// tenthUp rounds up to a tenth of a millimetre.
func tenthUp(l length) length { return length(math.Ceil(float64(10*l/mm)-1e-9)) * mm / 10 }
