package springsheet

import "example.com/benchsums/units"

type (
	length = units.Reading[units.Length]
	angle  = units.Reading[units.Angle]
	force  = units.Reading[units.Force]
)

// A Job is the room for return springs, what is asked of them, and what is on
// offer. Either part may be left out.
type Job struct {
	Drum  *Drum  `toml:"drum"`
	Lever *Lever `toml:"lever"`
}

// A Drum is a rope drum with a flat spiral spring inside.
type Drum struct {
	Bore     length `toml:"bore"`
	Arbor    length `toml:"arbor"`
	Depth    length `toml:"depth"`     // for the width of the strip
	RopeSeat length `toml:"rope_seat"` // diameter, to the centre of the rope
	Rope     length `toml:"rope"`      // to be pulled out
	PullHome force  `toml:"pull_home"` // at the rope, to turn the empty drum and rope home

	MostPull   *units.Force `toml:"most_pull"`   // at the rope, right out
	Friction   *units.Ratio `toml:"friction"`    // of the coils, a share of the torque
	SpareTurns *float64     `toml:"spare_turns"` // left with the rope right out
	Lies       string       `toml:"strips_lie"`  // run down, or loose
	Steel      Steel        `toml:"steel"`
	Old        *OldStrip    `toml:"old"`
	Strip      []Strip      `toml:"strip"`
	Make       DrumMake     `toml:"make"`
}

// An OldStrip is the broken one; the length is that of all pieces found.
type OldStrip struct {
	Thickness length `toml:"thickness"`
	Width     length `toml:"width"`
	Length    length `toml:"length"`
}

// A Strip is one on offer.
type Strip struct {
	Name      string `toml:"name"`
	Thickness length `toml:"thickness"`
	Width     length `toml:"width"`
	Length    length `toml:"length"`
}

// A DrumMake is how the ends of the strip are to be held: choices of whoever
// makes it, not readings.
type DrumMake struct {
	SlotDepth     *units.Length `toml:"slot_depth"`     // in the arbor, for the bent inner end
	SlotClearance units.Length  `toml:"slot_clearance"` // across the slot and along it
	SidePlay      *units.Length `toml:"side_play"`      // of the strip between drum and spacer
	Pin           *units.Length `toml:"pin"`            // diameter of the pin in the wall, for the outer end
	PinSeat       units.Length  `toml:"pin_seat"`       // how deep it is held
	PinOverhang   units.Length  `toml:"pin_overhang"`   // from where it is held to the middle of the strip
}

// A Lever is a lever with a helical torsion spring on a pin.
type Lever struct {
	Pin        length `toml:"pin"`
	Recess     length `toml:"recess"`
	Length     length `toml:"length"` // of the recess
	Travel     angle  `toml:"travel"`
	Arm        length `toml:"arm"`
	PullAtRest force  `toml:"pull_at_rest"` // on that arm

	MostPull     *units.Force   `toml:"most_pull"` // on that arm, at the end of the travel
	Legs         []units.Length `toml:"legs"`      // straight, from coil to where they bear
	Play         units.Length   `toml:"play"`      // on diameter between free coil and recess
	EndPlay      units.Length   `toml:"end_play"`  // along the recess, with the coil wound right up
	LeastPreload units.Angle    `toml:"least_preload"`
	Steel        Steel          `toml:"steel"`
	Wire         []length       `toml:"wire"`
}
