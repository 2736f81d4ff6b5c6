package ignition

import (
	"strings"
	"testing"

	"example.com/benchsums/units"
)

// inOrder fails t unless the texts come one after another in the steps.
func inOrder(t *testing.T, name string, steps []string, texts ...string) {
	t.Helper()
	at := 0
	for _, want := range texts {
		for at < len(steps) && !strings.Contains(steps[at], want) {
			at++
		}
		if at == len(steps) {
			t.Errorf("%s: no %q, or not in its place, in\n%s", name, want, strings.Join(steps, "\n"))
			return
		}
	}
}

func stepsMark(t *testing.T, advance units.Angle) Mark {
	return must(NewMark(must(NewRimOfGirth(1118.33*mm))(t), advance, OnRim, Anticlockwise))(t)
}

const bring = "Bring the crank to 93.2 mm (3.669 in) on the rule, 26.0° before top dead centre: come to it turning forward (anticlockwise, facing the rim)"

func TestRetimingSteps(t *testing.T) {
	for _, tc := range []struct {
		name    string
		present units.Angle
		text    string
	}{
		{"earlier", 18, "turn the driven shaft forward, the way it runs (about 8.0°), until the contacts just open"},
		{"later", 34, "turn the driven shaft back by more than 8.0° and then forward, the way it runs, until the contacts just open"},
	} {
		r := must(NewRetiming(CrankSpeed(), units.Exact(tc.present*deg), units.Exact(26*deg)))(t)
		inOrder(t, tc.name, r.Steps(stepsMark(t, 26*deg), 93.2*mm), "earth its lead", "contact gap first", "off its taper", bring, tc.text, "that figure is the timing", "full retard")
	}
}

func TestPlateSteps(t *testing.T) {
	p := must(NewPlate(30*mm, HalfSpeed()))(t) // 1 mm is 3.82°
	for _, tc := range []struct {
		name    string
		present units.Angle
		text    string
	}{
		{"earlier", 18, "turn it against the turning of the shaft, about 2.09 mm (0.082 in) along its slots, until the contacts just open"},
		{"later", 34, "turn it with the turning of the shaft, by rather more than 2.09 mm (0.082 in) along its slots, so that the contacts close; then back against it until they just open"},
	} {
		r := must(NewRetiming(HalfSpeed(), units.Exact(tc.present*deg), units.Exact(26*deg)))(t)
		steps := p.Steps(r, stepsMark(t, 26*deg), 93.2*mm)
		inOrder(t, tc.name, steps, "earth its lead", "contact gap first", "across plate and housing", bring, tc.text, "end of its slots", "try the gap again", "that figure is the timing", "full retard")
		if all := strings.Join(steps, " "); strings.Contains(all, "taper") {
			t.Errorf("%s: a plate has no taper: %s", tc.name, all)
		}
	}
}

func TestToothedSteps(t *testing.T) {
	chain := must(NewToothed(CrankSpeed(), 20))(t)
	for _, tc := range []struct {
		name   string
		w      Toothed
		wanted units.Reading[units.Angle]
		texts  []string
		none   string
	}{
		{"nearer the later", chain, units.Exact(26 * deg), []string{
			"18.00° of crank a step. Nearest to the timing wanted: as it is gives 18.0° before top dead centre, 8.0° too late.",
			"Next to it, on the other side: 1 tooth forward gives 36.0° before top dead centre, 10.0° too early. Where both",
		}, ""},
		{"nearer the earlier", chain, units.Exact(30 * deg), []string{
			"wanted: 1 tooth forward gives 36.0° before top dead centre, 6.0° too early.",
			"Next to it, on the other side: as it is gives 18.0° before top dead centre, 12.0° too late.",
		}, ""},
		{"good enough", chain, units.WithStd(35.2*deg, 0.5*deg), []string{
			"wanted: 1 tooth forward gives 36.0° before top dead centre, as wanted within its uncertainty.", "Next to it",
		}, ""},
		{"exactly", chain, units.Exact(36 * deg), []string{"wanted: 1 tooth forward gives 36.0° before top dead centre, as wanted"}, "Next to it"},
		{"after the top", chain, units.Exact(-20 * deg), []string{"wanted: 2 teeth back gives 18.0° after top dead centre, 2.0° too early."}, ""},
		{"vernier", must(NewVernier(CrankSpeed(), 19, 20))(t), units.Exact(26 * deg), []string{
			"wanted: 8 teeth forward on the first row and 8 teeth back on the other gives 25.6° before top dead centre, 0.4° too late.",
		}, ""},
	} {
		r := must(NewRetiming(CrankSpeed(), units.Exact(18*deg), tc.wanted))(t)
		steps := must(tc.w.Steps(r, stepsMark(t, tc.wanted.Value), 93.2*mm))(t)
		texts := append([]string{"earth its lead", "contact gap first"}, tc.texts...)
		inOrder(t, tc.name, steps, append(texts, "Mark the teeth that are together", "that figure is the timing", "stands at 93.2 mm (3.669 in) on the rule", "full retard")...)
		if all := strings.Join(steps, " "); strings.Contains(all, "taper") || tc.none != "" && strings.Contains(all, tc.none) {
			t.Errorf("%s: %s", tc.name, all)
		}
	}
	r := must(NewRetiming(CrankSpeed(), units.Exact(-130*deg), units.Exact(130*deg)))(t)
	_, err := must(NewToothed(must(NewDrive(2, 3))(t), 20))(t).Steps(r, stepsMark(t, 26*deg), 0)
	refused(t, "more than a turn of the shaft", err, "change of 260°: want 240° at most")
}
