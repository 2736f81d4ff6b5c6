package main

import (
	"math"
	"strconv"
	"strings"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/examples/internal/springsheet"
	"example.com/benchsums/springs"
)

// springUnitSlips are the mistakes of units that a spring can suffer.
func springUnitSlips(f sheet.Figure) []slip {
	v := f.Value
	switch f.Unit {
	case "turns":
		return []slip{
			{"degrees written as turns", v * 360, "a turn is 360°"},
			{"radians written as turns", v * 2 * math.Pi, "a turn is 6.28 radians"},
		}
	case "°":
		return []slip{
			{"radians written as degrees", v * math.Pi / 180, "a radian is 57.3°"},
			{"turns written as degrees", v / 360, "a turn is 360°"},
		}
	case "N mm":
		return []slip{
			{"newton metres written as newton millimetres", v / 1000, "a newton metre is 1000 N mm"},
			{"newton millimetres written as newton metres", v * 1000, "a newton metre is 1000 N mm"},
		}
	case "J":
		return []slip{{"newton millimetres written as joules", v * 1000, "a joule is a newton metre, 1000 N mm"}}
	}
	return nil
}

// springSlips are those of return springs.
func (b *bench) springSlips(f sheet.Figure, figures map[string]sheet.Figure) []slip {
	if b.springs == nil || !strings.HasPrefix(f.Key, "springs.") {
		return nil
	}
	key := strings.TrimPrefix(f.Key, "springs.")
	kind, rest, _ := strings.Cut(key, "_")
	number, what, _ := strings.Cut(rest, "_")
	n, _ := strconv.Atoi(number)
	switch {
	case kind == "strip" && b.springs.Drum != nil && n >= 1 && n <= len(b.springs.Drum.Strips):
		return stripSlips(b.springs.Drum, &b.springs.Drum.Strips[n-1], what, f.Value)
	case kind == "wire" && b.springs.Lever != nil && n >= 1 && n <= len(b.springs.Lever.Wires):
		return wireSlips(b.springs.Lever, &b.springs.Lever.Wires[n-1], what, f.Value)
	case kind == "drum":
		return drumSlips(b.springs.Drum, rest, f.Value)
	case kind == "lever":
		return leverSlips(b.springs.Lever, rest, f.Value)
	}
	return nil
}

// drumSlips are those of what the drum asks, and of the strip that was chosen.
func drumSlips(h *springsheet.Drummed, what string, v float64) []slip {
	switch what {
	case "travel":
		return append(piSlips(v, -1),
			slip{"the radius for the diameter", 2 * v, "a turn of rope is π times the diameter"},
			slip{"the diameter for the radius in 2πr", v / 2, "2πr wants half the width across"})
	case "torque":
		return []slip{{"the diameter for the radius", 2 * v, "a pull acts at the radius, half of the width across"}}
	case "pull":
		return []slip{
			{"the diameter for the radius", v / 2, "the rope pulls at the radius, half of the width across"},
			{"the pull with the rope home", h.Job.PullHome.Value.Newtons(), "the spring pulls harder the further it is wound"},
		}
	}
	c := h.Ranked[0]
	if !c.Works {
		return nil
	}
	switch what {
	case "most_wind":
		return []slip{{"the strip's own strength left out", c.Spring.Turns() - h.Job.SpareTurnsOrUsual() - h.Travel.Turns(), "turns enough are not all: the stress must stay below what the strip bears"}}
	case "left":
		return []slip{
			{"the turns wound on first forgotten", c.Spring.Turns() - h.Travel.Turns(), "they are used up before the rope is pulled"},
			{"the turns of the rope forgotten", c.Spring.Turns() - h.WindOn().Turns(), "the rope takes its turns as well"},
		}
	case "full", "stress":
		if h.Job.Lies != springsheet.Slack || h.Job.Friction != nil {
			return nil // the sum below is that of the straight line from nothing
		}
		on, travel := h.WindOn().Turns(), h.Travel.Turns()
		return []slip{
			{"the turns wound on first forgotten", v * travel / (on + travel), "they bend the strip as well"},
			{"the turns of the rope forgotten", v * on / (on + travel), "the strip is bent most with the rope right out"},
		}
	case "stored":
		full := (h.WindOn() + h.Travel).Turns()
		m := float64(c.Spring.LineTorque(full))
		return []slip{
			{"the half forgotten", m * full * 2 * math.Pi, "the torque rises from nothing, so that it is half of the last torque over the whole angle"},
			{"turns put where radians belong", v / (2 * math.Pi), "torque times angle is energy only in radians"},
		}
	}
	return nil
}

// stripSlips are those of one strip. On the straight line of a strip that lies slack
// run down, torque is turns times what a turn adds.
func stripSlips(h *springsheet.Drummed, s *springsheet.Stripped, what string, v float64) []slip {
	t, b := s.Thickness.Value.Millimetres(), s.Width.Value.Millimetres()
	c, travel := s.Choice, h.Travel.Turns()
	wind, home := c.Preload.Turns(), h.Home.NewtonMillimetres()
	perTurn := c.Spring.Rate().NewtonMillimetresPerTurn()
	plain := h.Job.Lies == springsheet.Slack && h.Job.Friction == nil // what the sums of wind, torque and stress below hold for
	if !plain && (what == "wind" || what == "full" || what == "stress") {
		return nil
	}
	switch what {
	case "per_turn":
		return []slip{
			{"the thickness squared for cubed", v / t, "a strip resists bending with the cube of its thickness"},
			{"width and thickness changed about", v * (b / t) * (b / t), "it is the thickness, the small one, that is cubed"},
			{"a radian for a turn", v / (2 * math.Pi), "a turn is 6.28 radians"},
			{"the 12 kept where 6 belongs", v / 2, "π E b t³/(6 L) has the 2 of 2π taken into it"},
		}
	case "wind":
		return []slip{
			{"the thickness squared for cubed", v * t, "a strip resists bending with the cube of its thickness"},
			{"the diameter for the radius", 2 * v, "the rope pulls at the radius of the drum"},
			{"the turns of the rope", travel, "these are wound on by pulling; those before it are to bring the rope home"},
		}
	case "turns":
		out := []slip{
			{"the turns on the arbor, those on the wall not taken off", c.Spring.TurnsWound(), "what can be wound is the difference of the two"},
			{"the turns on the wall", c.Spring.TurnsRunDown(), "what can be wound is what lies on the arbor less that"},
		}
		return append(out, radiiForDiameters(h, s)...)
	case "left":
		return []slip{
			{"the turns wound on first forgotten", c.Spring.Turns() - travel, "they are used up before the rope is pulled"},
			{"the turns of the rope forgotten", c.Spring.Turns() - wind, "the rope takes its turns as well"},
		}
	case "full":
		return []slip{
			{"the torque with the rope home", home, "the spring pulls harder the further it is wound"},
			{"the turns wound on first forgotten", travel * perTurn, "it is wound already before the rope is pulled"},
			{"the thickness squared for cubed", home + travel*perTurn/t, "a strip resists bending with the cube of its thickness"},
		}
	case "stress":
		return []slip{
			{"the turns wound on first forgotten", v * travel / (wind + travel), "they bend the strip as well"},
			{"the stress with the rope home", v * wind / (wind + travel), "the strip is bent most with the rope right out"},
			{"half the thickness", v / 2, "π E t n/L has the half of it taken in"},
		}
	}
	return nil
}

// radiiForDiameters is the count of turns with half of drum and arbor.
func radiiForDiameters(h *springsheet.Drummed, s *springsheet.Stripped) []slip {
	half, err := springs.NewBarrel(springs.BarrelSpec{Bore: h.Job.Bore.Value / 2, Arbor: h.Job.Arbor.Value / 2, Width: s.Width.Value, Thickness: s.Thickness.Value,
		Length: s.Length.Value, Free: springs.SlackOnWall(), Material: s.Choice.Spring.Material()})
	if err != nil {
		return nil
	}
	return []slip{{"the radii of drum and arbor for their diameters", half.Turns(), "both are the whole width across"}}
}

// wireSlips are those of the coil of one wire.
func wireSlips(h *springsheet.Levered, x *springsheet.Wired, what string, v float64) []slip {
	s := x.Choice.Spring
	d, mean := x.Diameter.Value.Millimetres(), s.MeanDiameter().Millimetres()
	rest, travel, rate := h.Demand.AtRest.NewtonMillimetres(), h.Demand.Travel.Degrees(), s.Rate().NewtonMillimetresPerDegree()
	legs := s.ActiveTurns() / s.BodyTurns()
	// each slip of the rate by the factor that it puts it out by
	factors := []struct {
		name string
		by   float64
		why  string
	}{
		{"the wire cubed for its fourth power", 1 / d, "wire resists bending with the fourth power of its diameter"},
		{"the inside diameter for the mean", mean / (mean - d), "D runs from middle to middle of the wire"},
		{"the outside diameter for the mean", mean / (mean + d), "D runs from middle to middle of the wire"},
		{"the legs forgotten", legs, "the legs bend too, as (l₁ + l₂)/(3πD) turns"},
	}
	var out []slip
	switch what {
	case "rate":
		out = []slip{
			{"the rate for a turn", v * 360, "this one is for a degree"},
			{"the rate for a radian", v * 180 / math.Pi, "this one is for a degree"},
			{"the radius of the wire for its diameter", v / 16, "d is the whole width across"},
		}
	case "wind":
		out = []slip{{"the travel of the lever", travel, "what is wound on at rest comes before the travel"}}
	case "full":
		out = []slip{
			{"the torque at rest", rest, "the spring pulls harder the further it is wound"},
			{"what is wound on at rest forgotten", rate * travel, "the coil is wound already before the lever moves"},
		}
	case "stress":
		full := x.Choice.AtFull.NewtonMillimetres()
		return []slip{
			{"the factor for the inside of the coil left out", v / s.CurvatureFactor(), "a bent bar is stressed more on the inside of its bend"},
			{"the stress at rest", v * x.Choice.AtRest.NewtonMillimetres() / full, "the wire is bent most at the end of the travel"},
			{"16 for 32", v / 2, "16 M/(π d³) is for wire that is twisted; this one is bent"},
		}
	default:
		return nil
	}
	for _, k := range factors {
		value := map[string]float64{"rate": v * k.by, "wind": v / k.by, "full": rest + rate*k.by*travel}[what]
		out = append(out, slip{k.name, value, k.why})
	}
	return out
}

// leverSlips are those of what the lever asks, and of the coil that was chosen.
func leverSlips(h *springsheet.Levered, what string, v float64) []slip {
	c := h.Ranked[0]
	s, d := c.Spring, c.Spring.Wire().Thickness().Millimetres()
	switch what {
	case "torque":
		return []slip{{"half the arm", v / 2, "the arm runs from the pivot to where the balance pulls: it is a radius already"}}
	case "pull":
		return []slip{{"the pull at rest", h.Job.PullAtRest.Value.Newtons(), "the spring pulls harder the further it is wound"}}
	case "play":
		return []slip{
			{"the play of the free coil", s.PinClearance(h.Job.Pin.Value, 0).Millimetres(), "wound up the coil is smaller"},
			{"the mean diameter for the bore", v + d, "the bore is the mean diameter less the wire"},
		}
	case "length":
		return []slip{
			{"one coil forgotten", v - d, "N turns of wire lie N + 1 wires long"},
			{"the length of the free coil", s.BodyLength(0).Millimetres(), "wound up the coil is longer"},
		}
	case "stored":
		return []slip{
			{"the half forgotten", 2 * v, "the torque rises from nothing"},
			{"degrees put where radians belong", v * 180 / math.Pi, "torque times angle is energy only in radians"},
		}
	}
	return nil
}
