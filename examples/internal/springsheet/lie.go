package springsheet

import (
	"fmt"
	"strings"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

// A Lie says how the strips lie when nothing holds them, or run down in the drum:
// "slack on the wall", "straight", or "3.5 turns" lying loose on the bench.
type Lie string

// UnmarshalText reads it.
func (l *Lie) UnmarshalText(text []byte) error {
	t := strings.Join(strings.Fields(string(text)), " ")
	if _, err := Lie(t).state(); err != nil {
		return err
	}
	*l = Lie(t)
	return nil
}

// state is the free state that the words stand for.
func (l Lie) state() (springs.FreeState, error) {
	switch l {
	case "slack on the wall":
		return springs.SlackOnWall(), nil
	case "straight":
		return springs.StraightStrip(), nil
	}
	turns, ok := strings.CutSuffix(string(l), "turns")
	a, err := units.ParseAngle(turns + "turns")
	if !ok || err != nil || !(a > -100*units.Turn && a < 100*units.Turn) {
		return springs.FreeState{}, fmt.Errorf("%q: want \"slack on the wall\" for strip that has been coiled or has set, \"straight\", or the turns it makes lying loose, as \"3.5 turns\"", string(l))
	}
	return springs.FreeTurns(a.Turns()), nil
}
