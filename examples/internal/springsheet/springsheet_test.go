package springsheet

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/springs"
	"example.com/benchsums/units"
	"github.com/stretchr/testify/require"
)

type file struct {
	Title string `toml:"title"`
	Drum  *Drum  `toml:"drum"`
	Lever *Lever `toml:"lever"`
}

// demo is the text of the demo engine's springs.
func demo(t testing.TB) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "returnspring", "marrowdale.toml"))
	require.NoError(t, err)
	return string(data)
}

// work decodes a file and works it out.
func work(text string) (*Result, error) {
	var j file
	f, err := jobfile.Decode("x.toml", []byte(text), &j)
	if err != nil {
		return nil, err
	}
	return WorkOut(f, "", &Job{j.Drum, j.Lever})
}

func worked(t testing.TB, text string) *Result {
	t.Helper()
	r, err := work(text)
	require.NoError(t, err)
	return r
}

// changed puts one text in place of another, which has to be there.
func changed(t testing.TB, text, old, with string) string {
	t.Helper()
	require.Contains(t, text, old)
	return strings.Replace(text, old, with, 1)
}

func figure(t testing.TB, r *Result, key string) sheet.Figure {
	t.Helper()
	for _, f := range r.Section.Figures {
		if f.Key == "springs."+key {
			return f
		}
	}
	t.Fatalf("no figure springs.%s", key)
	return sheet.Figure{}
}

func near(t testing.TB, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*math.Abs(want)) {
		t.Errorf("%s: %.8g, want %.8g", what, got, want)
	}
}

// plain puts a common space for one that must not break.
func plain(text string) string { return strings.ReplaceAll(text, "\u00a0", " ") }

// The figures of the demo engine, by hand from the readings and the printed
// formulas.
func TestByHand(t *testing.T) {
	r := worked(t, demo(t))
	travel := 1150 / (math.Pi * 80)
	perTurn := func(b, h, l float64) float64 { return math.Pi * 206e3 * b * h * h * h / (6 * l) }
	there := func(h, l float64) float64 {
		on := (math.Sqrt(28*28+4*l*h/math.Pi) - 28) / (2 * h)
		down := (92 - math.Sqrt(92*92-4*l*h/math.Pi)) / (2 * h)
		return on - down
	}
	a, b, c := perTurn(12.7, 0.6, 2400), perTurn(12.7, 0.5, 3200), perTurn(13, 0.8, 2000)
	k := 200e3 * math.Pow(1.22, 4) / (64 * (17 - 0.3 - 1.22) * 8.25) // N mm/rad
	for _, tc := range []struct {
		key  string
		want float64
	}{
		{"drum_travel", travel},
		{"drum_torque", 480},
		{"strip_1_per_turn", a},
		{"strip_1_turns", there(0.6, 2400)},
		{"strip_1_wind", 480 / a},
		{"strip_1_left", there(0.6, 2400) - 480/a - travel},
		{"strip_1_full", 480 + travel*a},
		{"strip_1_stress", math.Pi * 206e3 * 0.6 * (480/a + travel) / 2400},
		{"strip_2_turns", there(0.5, 3200)},
		{"strip_2_wind", 480 / b},
		{"strip_2_left", there(0.5, 3200) - 480/b - travel},
		{"strip_3_full", 480 + travel*c},
		{"strip_3_stress", math.Pi * 206e3 * 0.8 * (480/c + travel) / 2000},
		{"drum_wind", 4},
		{"drum_pull", (4 + travel) * a / 40},
		{"drum_full", (4 + travel) * a},
		{"drum_stress", math.Pi * 206e3 * 0.6 * (4 + travel) / 2400},
		{"drum_left", there(0.6, 2400) - 4 - travel},
		{"drum_most_wind", 1490*2400/(math.Pi*206e3*0.6) - travel},
		{"drum_friction", 100 * (1 - 480/a/(1490*2400/(math.Pi*206e3*0.6)-travel))},
		{"drum_old", 100 * math.Pow(0.60/0.61, 3) * 2310 / 2400},
		{"lever_torque", 60},
		{"wire_1_rate", k * math.Pi / 180},
		{"wire_1_wind", 60 / k * 180 / math.Pi},
		{"wire_1_full", 60 + k*55*math.Pi/180},
		{"lever_pull", (60 + k*55*math.Pi/180) / 60},
		{"lever_stored", math.Pow(60/k+55*math.Pi/180, 2) * k / 2 / 1000},
	} {
		f := figure(t, r, tc.key)
		tolerance := 1e-9
		if f.Std > 0 {
			tolerance = 2e-3 // curvature within the uncertainty may move the estimate by that
		}
		near(t, tc.key, f.Value, tc.want, tolerance)
	}
	// what it stores, as the area under the torque, turn by turn
	s, _ := r.Drum.chosen()
	full, area := 4+travel, 0.0
	const steps = 20000
	for i := range steps {
		m, err := s.Choice.Spring.Torque((float64(i) + 0.5) / steps * full)
		require.NoError(t, err)
		area += float64(m.Mean) * full / steps * 2 * math.Pi
	}
	near(t, "stored", figure(t, r, "drum_stored").Value, area, 2e-3)
}

// The plus-or-minus, by hand: thickness three times, diameter four times.
func TestHowSure(t *testing.T) {
	r := worked(t, demo(t))
	rel := math.Sqrt((math.Pow(3*0.01/0.6, 2) + math.Pow(0.1/12.7, 2) + math.Pow(5.0/2400, 2)) / 3)
	f := figure(t, r, "strip_1_per_turn")
	near(t, "strip A, a turn adds", f.Std/f.Value, rel, 0.01)
	rel = math.Sqrt((math.Pow(4*0.0003*25.4/1.22, 2) + 0.1*0.1) / 3)
	f = figure(t, r, "wire_1_rate")
	near(t, "wire 1.22 mm, rate", f.Std/f.Value, rel, 0.02)
	f = figure(t, r, "drum_travel")
	near(t, "travel", f.Std/f.Value, math.Hypot(5./1150, 0.5/80)/math.Sqrt(3), 0.01)
}

// What is asked for: A works, B is refused for turns, C pulls harder at a stress close
// to the strip's own strength; the two thinner wires do, the thickest pulls too hard.
func TestVerdicts(t *testing.T) {
	r := worked(t, demo(t))
	order := ""
	for _, c := range r.Drum.Ranked {
		order += c.Offer
	}
	require.Equal(t, "ACB", order)
	text := plain(strings.Join(r.Section.Answer, "\n"))
	for _, want := range []string{
		"take strip A. With the rope home wind on 4 turns first, 3.9 at least and 4.6 at most",
		"Wound on 4 turns it has 1057 N mm and 1387 MPa right out, 26.4 N (5.9 lbf) at the rope.",
		"That stress is 93 % of its least strength; 87 % is usual for steady bending (Shigley",
		"Strip B fails by its turns: 14.046 turns wanted, 13.282 there: 0.764 too few",
		"That is with 0.5 left to spare; with none it would still end 0.3 turns ± 0.6 turns before the rope does.",
		"close to the strip's own strength. At the rope that is 53 N (11.9 lbf) right out, 2.0 times the pull of A.",
		"Lever: wire of 1.22 mm (0.048 in)",
		"Wire of 1.42 mm works",
		"Wire of 1.63 mm fails by its torque at full",
		"Motor springs cannot be calculated accurately",
	} {
		require.Contains(t, text, want)
	}
	require.Contains(t, strings.Join(r.Section.Questions, "\n"), "The steel of the strips is not named; the sums take strip C67S typical.")
	require.Contains(t, strings.Join(r.Section.Questions, "\n"), "tensile strength of 1387 MPa at least, which is about 434 Vickers")
	require.Contains(t, strings.Join(r.Section.Cautions, "\n"), "as much as a 1 kg hammer falling 2.9 m")
	require.Contains(t, plain(strings.Join(r.Section.Scribe, "\n")), "the end bears on it with 88 N") // 1057 N mm / 12 mm
	require.NotContains(t, strings.Join(r.Section.Questions, "\n"), "The file does not say")
	require.Len(t, r.Section.Pictures, 2)
	for _, p := range r.Section.Pictures {
		require.Contains(t, p.SVG, "<svg")
	}
}

// Other files, and what they lead to.
func TestOtherwise(t *testing.T) {
	d := demo(t)
	text := func(r *Result) string {
		s := r.Section
		return plain(strings.Join(s.Answer, "\n") + strings.Join(s.Scribe, "\n") + strings.Join(s.Questions, "\n") + strings.Join(s.Cautions, "\n"))
	}
	for _, tc := range []struct{ name, old, with, want, not string }{
		{"straight strips", `strips_lie = "slack on the wall"`, `strips_lie = "straight"`, "Rope drum: none of the strips on offer will do.", "MPa allowed on"},
		{"a little free turn", `strips_lie = "slack on the wall"`, `strips_lie = "8 turns"`, "Strip A works", "lie slack"},
		{"named steel", `steel = { assumed = "strip C67S typical" }`, `steel = { named = "strip C67S" }`, "Strip A works", "steel of the strips is not named"},
		{"a strength of one's own", `steel = { assumed = "strip C67S typical" }`, `steel = { named = "strip C67S", least_strength = "1300 MPa" }`, "fails by its stress", "Strip A works"},
		{"a modulus of one's own", `steel = { assumed = "strip C67S typical" }`, `steel = { named = "strip C67S", youngs_modulus = "103 GPa" }`, "Strip C works: 2.67 turns", "Strip A works"},
		{"friction", `spare_turns = 0.5`, "spare_turns = 0.5\nfriction = \"10 %\"", "wind on 4.5 turns first, 4.3 at least and 4.6 at most", "What do the coils rub away"},
		{"none to spare", `spare_turns = 0.5`, `spare_turns = 0`, "13.546 turns wanted, 13.282 there: 0.264 too few", "That is with"},
		{"a hand's limit", `spare_turns = 0.5`, "most_pull = \"40 N\"", "Strip C fails by its torque at full", "Strip C works"},
		{"too wide", `width = "13.0 mm ± 0.1 mm"`, `width = "16 mm"`, "Strip C fails by its width: strip 16.00 mm, room for 15.00 mm: 1.00 mm too much", ""},
		{"only C", "[[drum.strip]]\nname = \"A\"\nthickness = \"0.60 mm ± 0.01 mm\"", "[[drum.strip]]\nname = \"A\"\nthickness = \"0.35 mm ± 0.01 mm\"", "strip C works on paper", "may then go in friction"},
		{"no slot", `slot_depth = "4 mm"`, "", "Give drum.make.slot_depth for the slot in the arbor.", "drum.make.pin"},
		{"no depth", `depth = "15`, `# depth = "15`, "Give drum.depth for the width of the strip", "drum.make.pin"},
		{"spacer without play", `side_play = "0.3 mm"`, "", "the strip leaves 2.3 mm", ""},
		{"held firmly", `play = "0.3 mm" `, "least_preload = \"90°\"\nplay = \"0.3 mm\" ", "90° wound on at rest", "held firmly enough"},
		{"legs", `play = "0.3 mm" `, "legs = [\"15 mm\", \"20 mm\"]\nplay = \"0.3 mm\" ", "Wire of 1.22 mm works", "How long are the legs"},
		{"no wire will do", `most_pull = "4 N"`, `most_pull = "1.1 N"`, "no coil of the wires on offer will do", "Mandrel"},
		{"thick wire", `wire = ["1.22 mm ± 0.0003 in"`, `wire = ["4 mm"`, "Wire of 4 mm fails by its room round the pin", ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got := text(worked(t, changed(t, d, tc.old, tc.with)))
			require.Contains(t, got, tc.want)
			if tc.not != "" {
				require.NotContains(t, got, tc.not)
			}
			for _, bad := range []string{"NaN", "Inf", "%!"} {
				require.NotContains(t, got, bad)
			}
		})
	}
}

// What is to be wound on first keeps to the most that the hand is to pull, as do the
// pictures and the parts marked out by it.
func TestWindOnKeepsToTheMostPull(t *testing.T) {
	for _, friction := range []string{"", "\nfriction = \"2 %\""} {
		r := worked(t, changed(t, demo(t), "spare_turns = 0.5", "spare_turns = 0.5\nmost_pull = \"26.9 N\""+friction))
		s, works := r.Drum.chosen()
		require.True(t, works)
		require.Equal(t, "A", s.Name)
		require.LessOrEqual(t, r.Drum.Set.AtFull.Wind.NewtonMillimetres(), 26.9*40*(1+1e-9))
	}
	r := worked(t, changed(t, demo(t), "spare_turns = 0.5", "spare_turns = 0.5\nmost_pull = \"26.2 N\""))
	s, _ := r.Drum.chosen()
	near(t, "wind on", float64(r.Drum.WindOn()), float64(s.Choice.Preload), 1e-12) // 4 turns would pull 26.4 N
	perTurn := math.Pi * 206e3 * 12.7 * 0.6 * 0.6 * 0.6 / (6 * 2400)
	near(t, "at most", figure(t, r, "drum_most_wind").Value, 26.2*40/perTurn-1150/(math.Pi*80), 5e-3)
}

// With friction the picture shows what drives the rope home and what draws it out, and
// its words, the curves and the figures are of one setting.
func TestChartWithFriction(t *testing.T) {
	r := worked(t, changed(t, demo(t), "spare_turns = 0.5", "spare_turns = 0.5\nfriction = \"20 %\""))
	s, works := r.Drum.chosen()
	require.True(t, works)
	on, travel := r.Drum.WindOn(), r.Drum.Travel.Turns()
	x, drive, wind := barrelCurves(s.Choice.Spring, on)
	near(t, "run down at", x[0], -on.Turns(), 1e-12)
	rate, checked := s.Choice.Spring.Rate().NewtonMillimetresPerTurn(), 0
	for i := range x {
		near(t, "winding over driving", wind[i]*0.8, drive[i]*1.2, 1e-12)
		if x[i] >= 0 && x[i] <= travel && x[i] < x[len(x)-1]-1 {
			near(t, "driving", drive[i], 0.8*rate*(x[i]+on.Turns()), 1e-9)
			checked++
		}
	}
	require.Greater(t, checked, 20)
	near(t, "pull", figure(t, r, "drum_pull").Value, r.Drum.Set.AtFull.Wind.NewtonMillimetres()/40, 5e-3)
	says := plain(r.Section.Pictures[0].Says)
	require.Contains(t, says, fmt.Sprintf("gives %.0f N mm at 0", r.Drum.Set.AtRest.Drive.NewtonMillimetres()))
	require.Contains(t, says, "Friction takes 20 % of the torque")
	none := worked(t, demo(t)).Section.Pictures[0]
	require.NotContains(t, none.Says, "Friction takes")
	require.Less(t, strings.Count(none.SVG, "<path"), strings.Count(r.Section.Pictures[0].SVG, "<path"))
}

// A strip that is all but solid with the rope right out has a figure for everything,
// though with a little less rope or a thicker strip it would not get there.
func TestSolidAtTheEndOfTheRope(t *testing.T) {
	d := changed(t, changed(t, demo(t), `rope = "1150 mm`, `rope = "1083 mm`), "spare_turns = 0.5", "spare_turns = 0")
	a, b, c := strings.Index(d, "[[drum.strip]]\nname = \"A\""), strings.Index(d, "[[drum.strip]]\nname = \"B\""), strings.Index(d, "[[drum.strip]]\nname = \"C\"")
	r := worked(t, d[:a]+d[b:c]+d[strings.Index(d, "[drum.make]"):])
	require.Equal(t, "B", r.Drum.Ranked[0].Offer)
	require.True(t, r.Drum.Ranked[0].Works)
	for _, f := range r.Section.Figures {
		if math.IsNaN(f.Value) || math.IsNaN(f.Std) || math.IsInf(f.Std, 0) {
			t.Errorf("%s: %v ± %v", f.Key, f.Value, f.Std)
		}
	}
}

// What cannot be is refused with file, line, key and what to write.
func TestRefuses(t *testing.T) {
	d := demo(t)
	for _, tc := range []struct{ name, old, with, want string }{
		{"no bore", `bore = "92.0 mm ± 0.05 mm"`, "", "drum.bore: not given: want the inside of the drum, across"},
		{"bore below the arbor", `bore = "92.0 mm ± 0.05 mm"`, `bore = "20 mm"`, "drum.arbor: 28 mm: want less than 20 mm, the bore"},
		{"radius below nought", `rope_seat = "80 mm`, `rope_seat = "-80 mm`, "drum.rope_seat: -80 mm: want the diameter to the centre of the rope"},
		{"no pull", `pull_home = "12 N ± 0.5 N"`, `pull_home = "0 N"`, "N: want the pull at the rope"},
		{"shape not stated", `strips_lie = "slack on the wall"`, "", `drum.strips_lie: "": want "slack on the wall"`},
		{"shape unknown", `strips_lie = "slack on the wall"`, `strips_lie = "curly"`, `drum.strips_lie: "curly": want "slack on the wall"`},
		{"too much friction", `spare_turns = 0.5`, `friction = "100 %"`, "drum.friction: 100 %: want 0 % to below 100 %"},
		{"turns below nought", `spare_turns = 0.5`, `spare_turns = -1`, "drum.spare_turns: -1: want turns from 0"},
		{"a hand weaker than the rope", `spare_turns = 0.5`, `most_pull = "10 N"`, "drum.most_pull: 10 N: want more than 12 N"},
		{"thickness and width changed about", `thickness = "0.60 mm ± 0.01 mm"`, `thickness = "15 mm"`, "drum.strip.1.thickness: 15 mm: want less than 12.7 mm, the width: are the two changed about?"},
		{"one name twice", `name = "B"`, `name = "A"`, `drum.strip.2.name: "A": a strip of that name is there already`},
		{"steel unknown", `assumed = "strip C67S typical"`, `assumed = "tinplate"`, `drum.steel.assumed: spring material "tinplate": want one of`},
		{"steel twice", `assumed = "strip C67S typical"`, `assumed = "strip C67S", named = "strip C67S"`, "both named and assumed"},
		{"no steel", `steel = { assumed = "strip C67S typical" }`, "", "drum.steel: no steel: give named"},
		{"strengths changed about", `assumed = "strip C67S typical"`, `assumed = "strip C67S", least_strength = "1700 MPa", most_strength = "1500 MPa"`, "want 1700 MPa or more"},
		{"slot too deep", `slot_depth = "4 mm"`, `slot_depth = "15 mm"`, "drum.make.slot_depth: "},
		{"more play than room", `side_play = "0.3 mm"`, `side_play = "3 mm"`, "drum.make.side_play: 3 mm: want from 0 mm to 2.3 mm"},
		{"pin without a seat", `pin_seat = "6 mm"`, "", "drum.make.pin: seat of the pin 0 mm: want more than 0 mm"},
		{"old strip in part", `width = "12.7 mm ± 0.01 mm"`, "", "drum.old.width: not given"},
		{"pin as wide as the recess", `pin = "9.50 mm ± 0.0003 in"`, `pin = "17 mm"`, "lever.pin: 17 mm: want less than 17 mm, the recess"},
		{"no travel", `travel = "55° ± 1°"`, "", "lever.travel: 0°: want how far the lever moves"},
		{"cable weaker than the spring", `most_pull = "4 N"`, `most_pull = "1 N"`, "lever.most_pull: 1 N: want more than 1 N, the pull at rest"},
		{"three legs", `most_pull = "4 N"`, `legs = ["1 mm", "1 mm", "1 mm"]`, "lever.legs: 3 legs: want two lengths at most"},
		{"play below nought", `play = "0.3 mm" `, `play = "-0.3 mm" `, "lever.play: -0.3 mm: want the play"},
		{"end play too much", `end_play = "0.3 mm"`, `end_play = "12 mm"`, "lever.end_play: 12 mm: want what the coil is to have"},
		{"wire as a radius of nothing", `"1.42 mm ± 0.0003 in"`, `"0 mm"`, "lever.wire: wire 2: 0 mm: want the diameter"},
		{"one wire twice", `"1.42 mm ± 0.0003 in"`, `"1.22 mm"`, "lever.wire: wire 2: 1.22 mm is there already"},
		{"bare number", `arm = "60 mm ± 0.5 mm"`, `arm = 60`, "lever.arm: which unit? write 60 mm"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := work(changed(t, d, tc.old, tc.with))
			require.Error(t, err)
			require.Contains(t, plain(err.Error()), tc.want)
			require.NotContains(t, err.Error(), "outside the domain")
			require.Regexp(t, `^x\.toml:\d+: `, err.Error())
		})
	}
	_, err := work("title = \"x\"\n")
	require.ErrorContains(t, err, "no spring wanted")
	_, err = work(d[:strings.Index(d, "[[drum.strip]]")])
	require.ErrorContains(t, err, "no strip on offer")
}

// A strip with no spare turns to be had is set by its least, and halves of a turn are
// only taken where they fall into the window.
func TestWindOn(t *testing.T) {
	for _, tc := range []struct{ least, most, want float64 }{
		{3.89, 4.63, 4}, {4, 4.63, 4}, {4.01, 4.63, 4.5}, {4.51, 4.63, 4.51}, {3.89, 3.5, 3.89}, {0, 1, 0},
	} {
		w := window{units.Angle(tc.least) * units.Turn, units.Angle(tc.most) * units.Turn}
		near(t, "wind on", w.windOn().Turns(), tc.want, 1e-9)
	}
}

func FuzzFreeState(f *testing.F) {
	for _, s := range []string{"slack on the wall", "straight", "3.5 turns", "-1 turns", "", "turns"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		if state, err := freeState(s); err == nil && state == (springs.FreeState{}) {
			t.Errorf("%q was taken and is no state", s)
		}
	})
}
