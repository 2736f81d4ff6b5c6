package main

import (
	"math"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/units"
)

// pointSlips are those of the contacts.
func (b *bench) pointSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	switch {
	case ofForm(f.Key, "points.set_", "_advance"):
		return b.openingSlips(f, figures)
	case f.Key == "points.per_hundredth_mm" && has(figures, "points.per_thou"):
		return []slip{{"a thou for a hundredth of a millimetre", figures["points.per_thou"].Value, "a thou is two and a half hundredths"}}
	case f.Key == "points.per_thou" && has(figures, "points.per_hundredth_mm"):
		return []slip{{"a hundredth of a millimetre for a thou", figures["points.per_hundredth_mm"].Value, "a thou is two and a half hundredths"}}
	case f.Key == "lever.range" && has(figures, "lever.advanced", "lever.retarded"):
		return []slip{{"the sign of full retard lost", figures["lever.advanced"].Value - math.Abs(figures["lever.retarded"].Value), "a spark after the top counts below nought, and the range is from one to the other"}}
	case f.Key == "lever.retarded_when_set" && has(figures, "lever.retarded"):
		return []slip{{"full retard as it was before the drive was slipped", figures["lever.retarded"].Value, "slipping the drive moves both ends of the lever"}}
	}
	return nil
}

// openingSlips are wrong angles of one opening.
func (b *bench) openingSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	n, err := strconv.Atoi(strings.TrimSuffix(strings.TrimPrefix(f.Key, "points.set_"), "_advance"))
	if err != nil || n < 1 || n > len(b.openings) {
		return nil
	}
	o := b.openings[n-1]
	sc, err := b.rimScale()
	if err != nil {
		return nil
	}
	var out []slip
	if o.found.Backward.Value != 0 {
		out = append(out, slip{"the mean of both ways of turning", sc.Advance((o.found.Forward.Value + o.found.Backward.Value) / 2).Degrees(),
			"turned back, the breaker lags by the slack of the drive: only the running direction is the timing"},
			slip{"the figures taken turning backward", sc.Advance(o.found.Backward.Value).Degrees(), "turned back, the breaker lags by the slack of the drive"})
	}
	arc := b.round.Arc(o.advance.Value)
	if a, err := b.round.AngleOfChord(arc); err == nil {
		out = append(out, slip{"the way along the rim taken for a straight rule's", a.Degrees(), "the figures of a rule on the rim are an arc"})
	}
	for k, other := range b.openings {
		if k != n-1 && other.set.Gap != o.set.Gap {
			out = append(out, slip{"another gap", other.advance.Value.Degrees(), "the gap moves the timing: say which gap a figure is for"})
		}
	}
	return out
}

func b01(is bool) float64 {
	if is {
		return 1
	}
	return 0
}

// portSlips are those of ports.
func (b *bench) portSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	if b.job.Ports == nil || b.crank == nil {
		return nil
	}
	var out []slip
	for _, p := range b.portList() {
		edge := mean(p.edge, 0).Value
		deck := mean(b.job.Crank.CrownTop, 0).Value
		if p.skirt {
			edge -= b.job.Crank.Skirt.Value
		}
		switch f.Key {
		case "ports." + p.key + "_opens":
			if !p.skirt {
				out = append(out, slip{"the angle counted from the bottom", 180 - f.Value, "the figures count from top dead centre"})
			}
		case "ports." + p.key + "_shuts":
			out = append(out, slip{"the opening for the closing", math.Abs(360*b01(!p.skirt) - f.Value), "going down the port opens, coming up it shuts: as far before the dead centre as after"})
		}
		var per float64 // of the figure for one half duration
		switch f.Key {
		case "ports." + p.key + "_open_for":
			per = 2
			out = append(out, slip{"half the time it is open", f.Value / 2, "a port is open on both sides of the dead centre"})
		case "ports." + p.key + "_opens":
			per = 1
		default:
			continue
		}
		from := func(x units.Length, rodless bool) (float64, bool) {
			before, _, err := b.crank.AnglesAtDrop(x)
			angle := before.Degrees()
			if rodless {
				angle = math.Acos(1-2*float64(x/b.crank.Stroke())) * 180 / math.Pi
			}
			half := angle
			if !p.skirt {
				half = 180 - angle
			}
			switch {
			case per == 2:
				return 2 * half, err == nil
			case p.skirt:
				return -angle, err == nil
			}
			return angle, err == nil
		}
		if v, ok := from(edge-deck, true); ok {
			out = append(out, slip{"the rod taken as endless", v, "a rod of ordinary length leans: near the bottom the piston is slower than at the top"})
		}
		if v, ok := from(edge, false); ok {
			out = append(out, slip{"the depth from the block face taken for the piston's drop", v, "the crown stands below the face at the top already: take that off"})
		}
	}
	return out
}
