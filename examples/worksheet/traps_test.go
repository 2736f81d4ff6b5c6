package main

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/sheet"
	"github.com/stretchr/testify/require"
)

// changed works out the demo engine with some of its file changed.
func changed(t *testing.T, changes ...string) (*sheet.Sheet, string) {
	t.Helper()
	text := string(marrowdale)
	for i := 0; i < len(changes); i += 2 {
		require.Contains(t, text, changes[i])
		text = strings.Replace(text, changes[i], changes[i+1], 1)
	}
	s, err := workOut("changed.toml", []byte(text), trials{})
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, s.WriteText(&b))
	return s, strings.Join(strings.Fields(b.String()), " ")
}

// A gross slip of the pen is found in every set with enough readings to show
// one, left out and asked about.
func TestGrossSlipsAreFoundInEverySet(t *testing.T) {
	for _, tc := range []struct{ name, was, is, want string }{
		{"girth", `["1118.5 mm", "1118.0 mm", "1118.5 mm"]`, `["1118.5 mm", "1118.0 mm", "1018.5 mm", "1118.5 mm"]`, "rim.girth: try 3"},
		{"exhaust edge", `["61.4 mm", "61.3 mm", "61.6 mm"]`, `["61.4 mm", "71.3 mm", "61.6 mm"]`, "ports exhaust edge: try 2"},
		{"crown", `["77.70 mm", "77.80 mm", "77.70 mm"]`, `["77.70 mm", "87.80 mm", "77.70 mm"]`, "crank.crown_at_bottom: try 2"},
		{"rod", `["6.624 in", "6.625 in", "6.621 in"]`, `["6.624 in", "6.725 in", "6.621 in"]`, "crank.rod_over_pins: try 2"},
		{"contacts", `["174.8 mm", "174.0 mm", "174.0 mm"]`, `["174.8 mm", "174.0 mm", "164.0 mm", "174.2 mm"]`, "try 3, 164.0 mm"},
		{"stop", `"53.4 mm", "54.1 mm"`, `"63.4 mm", "54.1 mm"`, "Stop: try 4"},
		{"dial", "200     0.44", "200     0.44", "Series C, rim 110 mm"},
		{"burette", "110      77.1", "110      77.1\n90       95.0", "fill 5"},
		{"calliper", `diameter = ["356.2 mm", "14 1/32 in"]`, `diameter = ["356.2 mm", "14 9/32 in"]`, "rim.diameter: the two readings"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, text := changed(t, tc.was, tc.is)
			if !strings.Contains(strings.ToLower(text), strings.ToLower(tc.want)) {
				t.Errorf("nothing of %q", tc.want)
			}
		})
	}
	// The readings as they were taken show one slip and no more.
	s, _ := changed(t)
	for _, sec := range s.Sections {
		for _, q := range sec.Questions {
			if strings.Contains(q, "left out") {
				t.Errorf("%s accuses a good reading: %s", sec.Key, q)
			}
		}
	}
}

// Turned one way only, equal readings are late by the slack: the sheet must not
// be surer than it can be.
func TestOneWayIsNotTrusted(t *testing.T) {
	text := string(marrowdale)
	for _, name := range []string{"B", "D"} { // the series turned backward
		a := strings.Index(text, "[[dial.series]]\nname = \""+name+`"`)
		end := a + strings.Index(text[a:], "\"\"\"\n\n") + 5
		text = text[:a] + text[end:]
	}
	a, end := strings.Index(text, "[by_eye]"), strings.Index(text, "# ---------------------------------------------------------------- the timing")
	text = text[:a] + text[end:]
	s, err := workOut("oneway.toml", []byte(text), trials{})
	require.NoError(t, err)
	f := figuresOf(t, s)
	truth := figuresOf(t, demoSheet(t))["tdc.position"].Value
	if d := f["tdc.position"].Value - truth; !(math.Abs(d) <= f["tdc.position"].HalfWidth()) {
		t.Errorf("forward only: %.2f ± %.2f mm, %.2f mm from what both ways give", f["tdc.position"].Value, f["tdc.position"].HalfWidth(), d)
	}
}

// A card for full retard is judged at full retard: both ends of the lever move
// with the drive.
func TestCardForFullRetard(t *testing.T) {
	s, text := changed(t, "lever = \"full advance\"\n\n[points]", "lever = \"full retard\"\n\n[points]")
	f := figuresOf(t, s)
	if got, want := f["lever.retarded_when_set"].Value, f["card.advance"].Value; math.Abs(got-want) > 1e-9 {
		t.Errorf("full retard when set %.2f°, want the card's %.2f°", got, want)
	}
	if got, want := f["lever.advanced_when_set"].Value, f["card.advance"].Value+f["lever.range"].Value; math.Abs(got-want) > 1e-9 {
		t.Errorf("full advance when set %.2f°, want %.2f°", got, want)
	}
	if _, has := f["setting.gap"]; has {
		t.Error("a gap for full retard from gaps tried at full advance")
	}
	require.Contains(t, text, "Kick-back")
}

// A percentage goes with the stroke: its own uncertainty is nothing, and that
// of the stroke hardly matters to the angle.
func TestPercentGoesWithTheStroke(t *testing.T) {
	s, _ := changed(t, `drop = "3/16 in"`, `percent_of_stroke = "10 %"`)
	f := figuresOf(t, s)
	if f["card.percent"].Std != 0 {
		t.Errorf("10 %% ± %g %%", f["card.percent"].Std)
	}
	if u := f["card.advance"].Std; !(u > 0 && u < 0.02) {
		t.Errorf("u of the angle %.3f°: want hundredths, the stroke going along with the drop", u)
	}
}

// Where a wheel has teeth or a plate slots, no one is told to draw it off a
// taper.
func TestJointsAreKeptApart(t *testing.T) {
	for joint, more := range map[string]string{"teeth": "teeth = 18", "plate": `slot_radius = "30 mm"`} {
		_, text := changed(t, `joint = "taper"`, fmt.Sprintf("joint = %q\n%s", joint, more))
		require.NotContains(t, text, "off its taper", joint)
	}
}
