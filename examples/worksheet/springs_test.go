package main

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/springsheet"
	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// The slips of springs, each with the figure it gives, worked by hand from the
// demo engine's readings.
func TestSpringSlipsByHand(t *testing.T) {
	b, figures := worked(t)
	perTurn := math.Pi * 206e3 * 12.7 * 0.6 * 0.6 * 0.6 / (6 * 2400) // N mm
	travel := 1150 / (math.Pi * 80)
	room := 4 * 2400 * 0.6 / math.Pi
	there := (math.Sqrt(28*28+room) - 28 - (92 - math.Sqrt(92*92-room))) / 1.2 // turns
	for _, tc := range []struct {
		key  string
		got  float64
		want string
	}{
		{"springs.drum_travel", 1150 / (math.Pi * 40), "the radius for the diameter"},
		{"springs.drum_travel", 360 * travel, "degrees written as turns"},
		{"springs.drum_travel", 1150. / (3 * 80), "π taken as 3"},
		{"springs.drum_torque", 12 * 80, "the diameter for the radius"},
		{"springs.drum_torque", 0.480, "newton metres written as newton millimetres"},
		{"springs.strip_1_per_turn", math.Pi * 206e3 * 12.7 * 0.6 * 0.6 / (6 * 2400), "the thickness squared for cubed"},
		{"springs.strip_1_per_turn", math.Pi * 206e3 * 0.6 * 12.7 * 12.7 * 12.7 / (6 * 2400), "width and thickness changed about"},
		{"springs.strip_1_per_turn", 206e3 * 12.7 * 0.6 * 0.6 * 0.6 / (12 * 2400), "a radian for a turn"},
		{"springs.strip_1_wind", 960 / perTurn, "the diameter for the radius"},
		{"springs.strip_1_full", 480, "the torque with the rope home"},
		{"springs.strip_1_full", travel * perTurn, "the turns wound on first forgotten"},
		{"springs.strip_1_stress", math.Pi * 206e3 * 0.6 * travel / 2400, "the turns wound on first forgotten"},
		{"springs.drum_full", travel * perTurn, "the turns wound on first forgotten"},
		{"springs.drum_stress", math.Pi * 206e3 * 0.6 * 4 / 2400, "the turns of the rope forgotten"},
		{"springs.drum_left", there - travel, "the turns wound on first forgotten"},
		{"springs.drum_pull", (4 + travel) * perTurn / 80, "the diameter for the radius"},
		{"springs.wire_2_rate", 200e3 * math.Pow(1.42, 3) / (64 * 15.28 * 7) * math.Pi / 180, "the wire cubed for its fourth power"},
		{"springs.wire_2_rate", 200e3 * math.Pow(1.42, 4) / (64 * (15.28 - 1.42) * 7) * math.Pi / 180, "agrees"}, // a tenth, which the making may lose
		{"springs.wire_2_full", 60, "the torque at rest"},
		{"springs.lever_pull", 1, "the pull at rest"},
		{"springs.lever_torque", 0.060, "newton metres written as newton millimetres"},
	} {
		f := figures[tc.key]
		text := written(tc.got, f.Unit)
		v, err := f.Read(text)
		if err != nil {
			t.Errorf("%s: %v", tc.key, err)
			continue
		}
		if got := b.judge(f, text, v, figures); !strings.Contains(strings.ToLower(got), strings.ToLower(tc.want)) {
			t.Errorf("%s %s: %s; want %q", tc.key, text, got, tc.want)
		}
	}
}

// The worksheet and the program for springs alone carry the same readings.
func TestSpringsAreThoseOfTheirOwnProgram(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "returnspring", "marrowdale.toml"))
	if err != nil {
		t.Fatal(err)
	}
	var theirs struct {
		Title string             `toml:"title"`
		Drum  *springsheet.Drum  `toml:"drum"`
		Lever *springsheet.Lever `toml:"lever"`
	}
	if _, err := jobfile.Decode("marrowdale.toml", data, &theirs); err != nil {
		t.Fatal(err)
	}
	var ours job
	if _, err := jobfile.Decode("marrowdale.toml", marrowdale, &ours); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(&springsheet.Job{Drum: theirs.Drum, Lever: theirs.Lever}, ours.Springs, cmpopts.EquateEmpty()); diff != "" {
		t.Error(diff)
	}
}
