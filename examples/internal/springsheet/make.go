package springsheet

import (
	"fmt"
	"strings"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// drumMake says what to make for the strip: slot, spacer, pin.
func (w *writer) drumMake(h *Drummed, s *Stripped) {
	m, at := &h.Job.Make, w.at+".make"
	w.askMake(h)
	w.make(fmt.Sprintf("Rope drum, setting: rope home and its end held short of the guide, turn the drum %s the way it goes when the rope is pulled, hold it there, lead the rope through and let the drum take it up gently. Then pull the rope right out: the drum must still go at least half a turn further by hand.", turnsOf(h.WindOn())))
	if m.SlotDepth != nil {
		w.slot(h, s, at)
	}
	w.spacer(h, s, at)
	if m.Pin != nil {
		w.pin(h, s, at)
	}
	w.make(fmt.Sprintf("Ends of the strip: soften the last few millimetres only, bend round %s or more.", both(2*s.Thickness.Value, 1)))
}

// askMake names the keys without which something is left out of what to make.
func (w *writer) askMake(h *Drummed) {
	var missing []string
	if h.Job.Make.SlotDepth == nil {
		missing = append(missing, w.at+".make.slot_depth for the slot in the arbor")
	}
	if h.Job.Make.Pin == nil {
		missing = append(missing, w.at+".make.pin and .pin_seat for the pin in the wall")
	}
	if h.Job.Depth.Value == 0 {
		missing = append(missing, w.at+".depth for the width of the strip and the spacer beside it")
	}
	if len(missing) > 0 {
		w.ask("How are the strip's ends to be held, and how deep is the drum? The file does not say, so that part is not worked out. Give " + strings.Join(missing, "; ") + ".")
	}
}

// slot is that in the arbor for the bent end.
func (w *writer) slot(h *Drummed, s *Stripped, at string) {
	slot, err := springs.SlotFor(s.Choice.Spring.Strip(), h.Job.Arbor.Value, *h.Job.Make.SlotDepth, h.Job.Make.SlotClearance, h.Set.AtFull.Wind)
	if err != nil {
		w.err = w.f.Errorf(at+".slot_depth", "%s", words(err))
		return
	}
	w.make(fmt.Sprintf("Slot in the arbor for the inner end: %s wide, %s deep, %s long; %s of the arbor is left beneath. With the rope right out the end bears on it with %.0f N (%.1f lbf), %.1f MPa on the slot and %.0f MPa in the bend.",
		both(slot.Width, 2), both(slot.Depth, 1), both(slot.Length, 1), both(slot.Core, 1), slot.Force.Newtons(), slot.Force.PoundsForce(), slot.Bearing.Megapascals(), slot.Tongue.Megapascals()))
}

// spacer is the disc that fills what the strip leaves of the depth.
func (w *writer) spacer(h *Drummed, s *Stripped, at string) {
	if h.Job.Depth.Value == 0 {
		return
	}
	room := h.Job.Depth.Value - s.Width.Value
	if h.Job.Make.SidePlay == nil {
		if room > 0 {
			w.make(fmt.Sprintf("Spacer: the strip leaves %s of the depth; fill it with a disc, and leave the strip room to slide.", both(room, 1)))
		}
		return
	}
	thick := room - *h.Job.Make.SidePlay
	if !(*h.Job.Make.SidePlay >= 0) || thick < 0 {
		w.err = w.f.Errorf(at+".side_play", "%v: want from 0 mm to %v, what strip %s leaves of the depth", *h.Job.Make.SidePlay, room, s.Name)
		return
	}
	w.make(fmt.Sprintf("Spacer beside the strip: a disc %s thick, to go round an arbor of %s inside a drum of %s; it leaves the strip %s to slide.",
		both(thick, 1), both(h.Job.Arbor.Value, 1), both(h.Job.Bore.Value, 1), both(*h.Job.Make.SidePlay, 1)))
}

// pin is that in the wall for the outer end.
func (w *writer) pin(h *Drummed, s *Stripped, at string) {
	m := &h.Job.Make
	load, err := springs.AnchorPin{Diameter: *m.Pin, Radius: h.Job.Bore.Value / 2, Seat: m.PinSeat, Overhang: m.PinOverhang}.Load(h.Set.AtFull.Wind)
	if err != nil {
		w.err = w.f.Errorf(at+".pin", "%s", words(err))
		return
	}
	w.make(fmt.Sprintf("Pin in the wall for the outer end: %s thick, held %s deep. It takes %.0f N (%.1f lbf): %.0f MPa in bending, %.0f MPa at the mouth of its hole. Blows when the rope is let go are not in that.",
		both(*m.Pin, 1), both(m.PinSeat, 1), load.Force.Newtons(), load.Force.PoundsForce(), load.Bending.Megapascals(), load.Tilt.Megapascals()))
}

// leverMake says what to make for the coil: mandrel, coil, legs.
func (w *writer) leverMake(h *Levered, x *Wired) {
	s, full := x.Choice.Spring, x.Choice.Preload+h.Demand.Travel
	least, most := s.Mandrel()
	w.make(fmt.Sprintf("Mandrel for the coil: between %s and %s across, for a free bore of %s. Wind a trial coil first: how far the wire springs back nobody can say beforehand.", both(least, 1), both(most, 1), both(s.InsideDiameter(0), 2)))
	w.make(fmt.Sprintf("Coil of %s wire: %.2f turns, close wound, %s outside when free, %s long at full wind; %s of wire for the body, and the legs on top. Leave the legs long until it has been tried.",
		x.Name, s.BodyTurns(), both(s.OutsideDiameter(0), 2), both(s.BodyLength(full), 1), both(s.WireLength(), 0)))
	w.make(fmt.Sprintf("Legs: free, the lever's leg stands %.0f° short of where it is with the lever at rest, so that it has to be wound up by that much to go on.", x.Choice.Preload.Degrees()))
}

// both writes a length in millimetres and inches.
func both(l units.Length, decimals int) string {
	return fmt.Sprintf("%.*f\u00a0mm (%.*f\u00a0in)", decimals, l.Millimetres(), decimals+1+min(decimals, 1), l.Inches())
}
