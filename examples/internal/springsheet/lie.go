package springsheet

import (
	"fmt"
	"strings"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// Slack is how strip lies that has been coiled, or has set.
const Slack = "slack on the wall"

// freeState reads how the strips lie when nothing holds them, or run down in the
// drum: "slack on the wall", "straight", or "3.5 turns" lying loose on the bench.
func freeState(lies string) (springs.FreeState, error) {
	switch lies {
	case Slack:
		return springs.SlackOnWall(), nil
	case "straight":
		return springs.StraightStrip(), nil
	}
	turns, ok := strings.CutSuffix(lies, "turns")
	a, err := units.ParseAngle(turns + "turns")
	if !ok || err != nil || !(a > -100*units.Turn && a < 100*units.Turn) {
		return springs.FreeState{}, fmt.Errorf("%q: want %q for strip that has been coiled or has set, \"straight\", or the turns it makes lying loose, as \"3.5 turns\"; the torque goes by it as much as by the size", lies, Slack)
	}
	return springs.FreeTurns(a.Turns()), nil
}
