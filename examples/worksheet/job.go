package main

import (
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// A job is what stands in a file: the readings of one engine. Every part may
// be left out; sections of the sheet appear for what was measured.
type job struct {
	Title    string    `toml:"title"`
	Engine   engine    `toml:"engine"`
	Crank    crank     `toml:"crank"`
	PlugHole *plugHole `toml:"plug_hole"`
	Bore     *bore     `toml:"bore"`
	Rim      *rim      `toml:"rim"`
	Dial     *dial     `toml:"dial"`
	ByEye    *byEye    `toml:"by_eye"`
	Stop     *stop     `toml:"stop"`
	Card     *card     `toml:"card"`
	Points   *points   `toml:"points"`
	Drive    *drive    `toml:"drive"`
	Ports    *ports    `toml:"ports"`
	Burette  *burette  `toml:"burette"`

	Valves     *valvesJob  `toml:"valves"`
	PlugThread *plugThread `toml:"plug_thread"`
	Threads    *threadJob  `toml:"threads"`
	Adapter    *adapterJob `toml:"adapter"`
	Bushes     *bushesJob  `toml:"bushes"`
	Piston     *pistonJob  `toml:"piston"`
	Springs    *springsJob `toml:"springs"`
	Oil        *oilJob     `toml:"oil"`

	Own []ownSum `toml:"own"`
}

type (
	lengths = []units.Length
	length  = units.Reading[units.Length]
	angle   = units.Reading[units.Angle]
	volume  = units.Reading[units.Volume]
)

type engine struct {
	Kind  ignition.Kind       `toml:"kind"`
	Turns ignition.Turning    `toml:"turns"`
	Speed *units.AngularSpeed `toml:"speed"`
}

type crank struct {
	Stroke       *length      `toml:"stroke"`
	CrownTop     lengths      `toml:"crown_at_top"`
	CrownBottom  lengths      `toml:"crown_at_bottom"`
	DepthsGoodTo units.Length `toml:"depths_good_to"`
	Rod          *length      `toml:"rod"`
	RodOverPins  lengths      `toml:"rod_over_pins"`
	GudgeonPin   *length      `toml:"gudgeon_pin"`
	Crankpin     *length      `toml:"crankpin"`
	RodGoodTo    units.Length `toml:"rod_good_to"`
	Offset       *length      `toml:"offset"`
	Skirt        *length      `toml:"skirt"`
}

type plugHole struct {
	Lean   *angle  `toml:"lean"`
	Volume *volume `toml:"volume"`
	Cavity *volume `toml:"cavity"`
}

type bore struct {
	Diameter        *length      `toml:"diameter"`
	TopFrontBack    lengths      `toml:"top_front_back"`
	TopSideSide     lengths      `toml:"top_side_side"`
	MiddleFrontBack lengths      `toml:"middle_front_back"`
	MiddleSideSide  lengths      `toml:"middle_side_side"`
	BelowFrontBack  lengths      `toml:"below_front_back"`
	BelowSideSide   lengths      `toml:"below_side_side"`
	GoodTo          units.Length `toml:"good_to"`
}

type rim struct {
	Girth          lengths          `toml:"girth"`
	GirthGoodTo    units.Length     `toml:"girth_good_to"`
	Tape           units.Length     `toml:"tape"` // thickness to take off; 0 when the girth is the rim's own
	Diameter       lengths          `toml:"diameter"`
	DiameterGoodTo units.Length     `toml:"diameter_good_to"`
	Figures        ignition.Figures `toml:"figures"`
	SettingGoodTo  units.Length     `toml:"setting_good_to"` // a figure brought to the pointer
	ReadingGoodTo  units.Length     `toml:"reading_good_to"` // a figure read where the rim stands
	Paper          units.Length     `toml:"paper"`
	TDCMark        *length          `toml:"tdc_mark"` // figure of a top dead centre mark that is there already
	RunOut         units.Length     `toml:"run_out"`  // of the face at the pointer, total on a dial
}

type dial struct {
	Figures    ignition.DialFigures `toml:"figures"`      // as the piston goes down
	ZeroGoodTo units.Length         `toml:"zero_good_to"` // how well it was put to nought at the top; 0 where it was not
	GoodTo     units.Length         `toml:"good_to"`
	Series     []dialSeries         `toml:"series"`
}

type dialSeries struct {
	Name     string          `toml:"name"`
	Turned   ignition.Turned `toml:"turned"`
	Mounting string          `toml:"mounting"` // series with the dial left as it stood share one
	Readings string          `toml:"readings"`
}

type byEye struct {
	TurnedBackAt lengths `toml:"turned_back_at"`
}

type stop struct {
	Forward  lengths `toml:"forward"`
	Backward lengths `toml:"backward"`
}

type card struct {
	Drop    *units.Length `toml:"drop"`
	Angle   *units.Angle  `toml:"angle"`
	Percent *units.Ratio  `toml:"percent_of_stroke"`
	Lever   string        `toml:"lever"`
}

type points struct {
	FeelerGoodTo units.Length `toml:"feeler_good_to"`
	Sets         []pointsSet  `toml:"set"`
}

type pointsSet struct {
	Gap      units.Length  `toml:"gap"`
	Lever    string        `toml:"lever"` // "full advance", "full retard" or a name of the reader's
	Forward  lengths       `toml:"forward"`
	Backward lengths       `toml:"backward"`
	Ahead    lengths       `toml:"ahead"`  // distances of the mark from that of top dead centre,
	Behind   lengths       `toml:"behind"` // in or against the direction of rotation
	Held     ignition.Held `toml:"held"`
}

type drive struct {
	Ratio      *units.Ratio  `toml:"turns_per_crank_turn"`
	Joint      string        `toml:"joint"` // taper, teeth or plate
	Teeth      int           `toml:"teeth"`
	SlotTravel *units.Length `toml:"slot_travel"`
	SlotRadius *units.Length `toml:"slot_radius"`
}

type ports struct {
	DepthsGoodTo   units.Length `toml:"depths_good_to"`
	ExhaustTop     lengths      `toml:"exhaust_top"`
	ExhaustBottom  lengths      `toml:"exhaust_bottom"`
	ExhaustWidth   units.Length `toml:"exhaust_width"`
	TransferTop    lengths      `toml:"transfer_top"`
	TransferBottom lengths      `toml:"transfer_bottom"`
	TransferWidth  units.Length `toml:"transfer_width"`
	InletBottom    lengths      `toml:"inlet_bottom"`
	InletTop       lengths      `toml:"inlet_top"`
	InletWidth     units.Length `toml:"inlet_width"`
	Rim            *portsRim    `toml:"rim"`
}

type portsRim struct {
	GoodTo         units.Length  `toml:"good_to"`
	ExhaustOpens   *units.Length `toml:"exhaust_opens"`
	ExhaustCloses  *units.Length `toml:"exhaust_closes"`
	TransferOpens  *units.Length `toml:"transfer_opens"`
	TransferCloses *units.Length `toml:"transfer_closes"`
	InletOpens     *units.Length `toml:"inlet_opens"`
	InletCloses    *units.Length `toml:"inlet_closes"`
}

type burette struct {
	GoodTo units.Volume `toml:"good_to"`
	Fills  string       `toml:"fills"`
}
