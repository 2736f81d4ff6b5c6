package adaptersheet

import (
	"encoding/xml"
	"io"
	"math"
	"os"
	"regexp"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/internal/figures"
	"github.com/stretchr/testify/require"
)

// demo is the adapter that the program has inside.
func demo(t *testing.T) string {
	t.Helper()
	text, err := os.ReadFile("../../adapter/carburettor.toml")
	require.NoError(t, err)
	return string(text)
}

func workText(text string) (*sheet.Section, error) {
	var j struct {
		Title   string    `toml:"title"`
		Adapter *Readings `toml:"adapter"`
	}
	file, err := jobfile.Decode("a.toml", []byte(text), &j)
	if err != nil {
		return nil, err
	}
	return Section(file, j.Adapter)
}

// changed works out the demo with some lines in place of others: "key = value"
// replaces the line of the key or is added, "key" alone takes it away.
func changed(t *testing.T, lines ...string) (*sheet.Section, error) {
	t.Helper()
	text := demo(t)
	for _, l := range lines {
		key, _, sets := strings.Cut(l, " = ")
		line := regexp.MustCompile(`(?m)^` + key + ` = .*\n`)
		switch {
		case !sets:
			text = line.ReplaceAllString(text, "")
		case line.MatchString(text):
			text = line.ReplaceAllLiteralString(text, l+"\n")
		default:
			text += l + "\n"
		}
	}
	return workText(text)
}

func byKey(t *testing.T, s *sheet.Section) map[string]sheet.Figure {
	t.Helper()
	all := map[string]sheet.Figure{}
	for _, f := range s.Figures {
		require.NotContains(t, all, f.Key)
		require.False(t, math.IsNaN(f.Value) || math.IsInf(f.Value, 0), f.Key)
		all[f.Key] = f
	}
	return all
}

// The demo, by hand. The least clearance of a shaft f over 18 and up to 30 mm
// is 20 µm (ISO 286-2:2010, by reprints). The micrometer is good to 0.0003 in,
// 0.00762 mm.
func TestByHand(t *testing.T) {
	s, err := workText(demo(t))
	require.NoError(t, err)
	f := byKey(t, s)
	g := 2 * math.Hypot(0.02, 0.00762)
	largest := 25.46 - 0.020 - g
	smallest := 25.51 - 1.6/(2*math.Pi) + g
	middle := (largest + smallest) / 2
	closes := math.Pi * (25.485 - middle)
	for _, tc := range []struct {
		key             string
		want, within    float64
		std, withinOfIt float64
	}{
		{"spigot_most", largest, 0.001, 0, 0}, // drawn in to a whole micrometre
		{"spigot_least", smallest, 0.001, 0, 0},
		{"collar", 25.485, 1e-9, 0.02, 1e-9},
		{"collar_out_of_round", 0.05, 1e-9, 0.02 * math.Sqrt2, 1e-9},
		{"clearance_least", 25.46 - largest, 0.001, math.Hypot(0.02, 0.00762), 1e-9},
		{"clearance_most", 25.51 - smallest, 0.001, math.Hypot(0.02, 0.00762), 1e-9},
		// (23.6 − 19.9)·10⁻⁶ × 60 K × 25.4 mm = 5.6 µm, and the clearance itself grows by next to nothing
		{"clearance_least_hot", 25.46 - largest - 0.0056, 0.0015, 0.0214, 0.0001},
		{"slot_closes", closes, 1e-9, math.Pi * math.Hypot(0.02, 0.00762), 1e-6},
		{"slot_left", 1.6 - closes, 1e-9, math.Hypot(math.Pi*math.Hypot(0.02, 0.00762), 0.04/math.Sqrt(3)), 1e-6},
		{"reach", 1.6 / math.Pi, 1e-9, 0.04 / math.Sqrt(3) / math.Pi, 1e-9},
		{"holds_push", 20, 1e-9, 0, 0}, // 2 × 0.1 × 100 N
		{"holds_twist", 0.25, 1e-9, 0, 0},
		{"stud_centres", 53.95, 1e-9, 0.05, 1e-9},
		{"stud_hole", 8.4, 1e-9, 0, 0}, // 7.8359 + 0.5, up to a tenth
		{"flange_most", 22 - 0.75 - 1.45*0.3085*25.4, 1e-9, 0.5 / math.Sqrt(3), 1e-9},
		{"flange", 9, 1e-9, 0, 0}, // 9.8875 − 2 × 0.289, down to a half
		{"edge", (64 - 53.95 - 8.4) / 2, 1e-9, 0.025, 1e-9},
		{"bar_needed", 53.95 + 8.4 + 0.3085*25.4 + 1, 1e-9, 0, 0},
		{"length", 9 + 13.5 + 21.5, 1e-9, 0, 0}, // neck 22 − 0.75 − 9 + 1, up to a half
		{"taper", math.Atan((23.68-21.1)/2/22.5) * 180 / math.Pi, 1e-9, 0.0455, 0.002},
		{"wall", (smallest - 21.2) / 2, 0.001, 0.00762 / math.Sqrt2, 1e-9},
		{"screw_most", 11000, 1e-9, 0, 0}, // 255 MPa × 2.049 mm × 21.5 mm = 11.2 kN
	} {
		got, ok := f["adapter."+tc.key]
		if !ok {
			t.Errorf("no adapter.%s", tc.key)
			continue
		}
		figures.Near(t, tc.key, got.Value, tc.want, tc.within)
		figures.Near(t, tc.key+": standard uncertainty", got.Std, tc.std, tc.withinOfIt+1e-12)
	}
}

// Wherever the spigot comes out within its limits, and however reading and
// measuring are out within two standard uncertainties, the collar goes on and
// not more than half the slot is shut.
func TestThePromiseOfTheSpigot(t *testing.T) {
	s, err := workText(demo(t))
	require.NoError(t, err)
	f := byKey(t, s)
	out := 2 * math.Hypot(0.02, 0.00762)
	least := 25.46 - f["adapter.spigot_most"].Value - out
	most := 25.51 - f["adapter.spigot_least"].Value + out
	if !(least >= 0.020-1e-9) {
		t.Errorf("the clearance may be %.4f mm, want 0.020 mm at least", least)
	}
	if !(math.Pi*most <= 0.8+1e-9) {
		t.Errorf("the slot may close by %.4f mm, want half of its 1.6 mm at most", math.Pi*most)
	}
}

func TestLimitsAreDrawnIn(t *testing.T) {
	z := size{min: 25.2981 * mm, max: 25.3972 * mm, fine: true}
	for _, tc := range []struct {
		z    size
		u    sheet.Unit[length]
		want string
	}{
		{z, sheet.Millimetre, "25.299 to 25.397"},
		{z, sheet.Inch, "0.9960 to 0.9998"}, // 0.99599 and 0.99989
		{size{min: 8.8 * mm, max: 9.2 * mm}, sheet.Millimetre, "8.80 to 9.20"},
		{size{min: 8.8 * mm, max: 9.2 * mm}, sheet.Inch, "0.347 to 0.362"}, // 0.34646 and 0.36220
		{size{min: 5 * mm, max: 5 * mm}, sheet.Millimetre, "5.00"},
		{size{min: 5.0001 * mm, max: 5.0002 * mm, fine: true}, sheet.Millimetre, "5.000"}, // no whole step between
	} {
		if got := limits(tc.z, tc.u); got != tc.want {
			t.Errorf("%v to %v in %s: %q, want %q", tc.z.min, tc.z.max, tc.u.Name, got, tc.want)
		}
	}
}

// What the sheet says when readings are other than the demo's.
func TestSays(t *testing.T) {
	for _, tc := range []struct {
		name      string
		lines     []string
		says, not string // in answer, questions, steps or what to take better
	}{
		{"thin bar", nil, "The bar is thin for the flange", ""},
		{"thick bar", []string{`bar_diameter = "75 mm"`}, "Turn the spigot to", "The bar is thin"},
		{"bar inside the studs", []string{`bar_diameter = "55 mm"`}, "does not reach round the stud holes", ""},
		{"measured too roughly", []string{`bores_good_to = "0.1 mm"`}, "No size of the spigot can be promised", "Turn the spigot to"},
		{"the collar out of round", []string{`collar_across_slot = ["25.58 mm"]`}, "the collar itself: being out of round takes 0.120 mm", ""},
		{"wall of the collar", []string{`collar_wall = "2.5 mm"`}, "the yield stress of brass", "was not measured (collar_wall)"},
		{"no wall", nil, "was not measured (collar_wall)", ""},
		{"a die casting's wall, no yield known", []string{`collar_wall = "2.5 mm"`, `collar_material = "grey cast iron"`}, "bent most opposite its slot", "the yield stress"},
		{"the screw's force", []string{`screw_force = "800 N"`, `friction = "0.15"`}, "240 N to 377 N along", "common practice, no source) A"},
		{"a named fit", []string{`spigot_fit = "H11/c11"`, `bores_good_to = "0.005 mm"`}, "by the fit H11/c11 of ISO 286", ""},
		{"a spigot that grows less than its collar", []string{`bar_material = "steel"`}, "to the clearance, which the clamp must take up", "from the clearance"},
		{"no temperature", []string{`warm`}, "Turn the spigot to", "Warming"},
		{"a short bar", []string{`bar_length = "55 mm"`}, "to grip by", ""},
		{"a carburettor too large", []string{`carburettor_bore = "24 mm ± 0.05 mm"`}, "narrows towards the engine", ""},
		{"a wide port", []string{`port_bore = ["31 mm"]`}, "more than 7° to the side", ""},
		{"a small collar", []string{`collar_across_slot = ["23.8 mm"]`, `collar_square_to_slot = ["23.8 mm"]`}, "The wall is under 1.5 mm", "wider across the slot"},
		{"studs close together", []string{`stud_centres = ["45 mm"]`}, "stands where the nuts turn", ""},
		{"a true flange", []string{`out_of_flat = "0.02 mm"`}, "Turn the spigot to", "out of flat"},
		{"no yield stress of the bar", []string{`bar_material = "grey cast iron"`}, "The wall left in the spigot is", "to crush it"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			s, err := changed(t, tc.lines...)
			require.NoError(t, err)
			byKey(t, s)
			all := []string{s.Improve}
			all = append(append(append(all, s.Answer...), s.Questions...), s.Scribe...)
			for _, st := range s.Working {
				all = append(all, st.What, st.Numbers, st.Result)
			}
			text := strings.ReplaceAll(strings.Join(all, " "), "\u00a0", " ")
			require.Contains(t, text, tc.says)
			if tc.not != "" {
				require.NotContains(t, text, tc.not)
			}
			for _, p := range s.Pictures {
				wellFormed(t, p.SVG)
			}
		})
	}
}

func TestRefuses(t *testing.T) {
	for _, tc := range []struct {
		name  string
		lines []string
		want  string
	}{
		{"no slot", []string{`slot`}, "a.toml:8: adapter: no slot: an adapter cannot be worked out without it"},
		{"no port", []string{`port_bore`}, "no port_bore"},
		{"no bar", []string{`bar_diameter = "0 mm"`}, "no bar_diameter"},
		{"a stud below nought", []string{`stud_diameter = "-8 mm"`}, "adapter.stud_diameter: -8 mm: want more than 0 mm"},
		{"a gasket below nought", []string{`gasket = "-1 mm"`}, "adapter.gasket: -1 mm: want 0 mm or more"},
		{"a narrow slot", []string{`slot = "0.1 mm ± 0.01 mm"`}, "adapter.slot: a slot of 0.1 mm takes up"},
		{"no such fit", []string{`spigot_fit = "tight"`}, "adapter.spigot_fit"},
		{"a fit that does not go on", []string{`spigot_fit = "H7/p6"`}, "or the collar does not go on"},
		{"a fit that shuts the slot", []string{`spigot_fit = "H13/c13"`, `slot = "1 mm"`}, "where the slot is shut"},
		{"short studs", []string{`stud_projection = "14 mm ± 0.5 mm"`}, "fit longer studs"},
		{"a short bar", []string{`bar_length = "45 mm"`}, "adapter.bar_length: an adapter of 44 mm from a bar of 45 mm"},
		{"unknown metal", []string{`collar_material = "wood"`}, `adapter.collar_material: material "wood"`},
		{"unknown bar", []string{`bar_material = "wood"`}, `adapter.bar_material: material "wood"`},
		{"no metals", []string{`collar_material`}, "adapter.warm: the clearance hot needs collar_material"},
		{"a wall and no metal", []string{`collar_wall = "2 mm"`, `collar_material`, `warm`}, "adapter.collar_wall: the bending of the collar needs collar_material"},
		{"a thick collar", []string{`collar_wall = "12 mm"`}, "adapter.collar_wall: wall 12 mm: want a third of the bore"},
		{"no friction", []string{`friction = "2"`}, "adapter.friction: coefficient of friction 2"},
		{"no screw", []string{`screw_force = "0 N"`}, "adapter.screw_force: clamping force 0 kN"},
		{"a shallow collar", []string{`collar_depth = "0.4 mm"`}, "adapter.collar_depth"},
		{"a bore as large as the collar", []string{`carburettor_bore = "25.4 mm"`}, "want a bore smaller than the collar"},
		{"a tiny port", []string{`port_bore = ["0.1 mm"]`}, "adapter.port_bore"},
		{"a bare number", []string{`gasket = 0.75`}, "adapter.gasket: which unit?"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := changed(t, tc.lines...)
			require.ErrorContains(t, err, tc.want)
			require.True(t, strings.HasPrefix(err.Error(), "a.toml:"), err)
		})
	}
}

func wellFormed(t *testing.T, svg string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		_, err := d.Token()
		if err == io.EOF {
			return
		}
		require.NoError(t, err)
	}
}

// The drawing has every size of the table, and is true to scale.
func TestDrawing(t *testing.T) {
	s, err := workText(demo(t))
	require.NoError(t, err)
	svg := strings.ReplaceAll(s.Pictures[0].SVG, "\u00a0", " ")
	for _, want := range []string{"A 8.80 to 9.20", "B Ø 63.70 to 64.30", "C Ø 25.299 to 25.397", "D Ø 21.00 to 21.20", "E Ø 31.20 to 31.80",
		"F 13.30 to 13.70", "G 21.30 to 21.50", "H two holes, drill 8.40", "J Ø 23.58 to 23.78", ">53.95<", "Scale 1:1", `r="32"`} {
		require.Contains(t, svg, want)
	}
	big, err := changed(t, `bar_diameter = "120 mm"`)
	require.NoError(t, err)
	require.Contains(t, big.Pictures[0].SVG, "Scale 1:2")
	require.Contains(t, big.Pictures[0].SVG, `r="29.75"`) // 119 mm across at half size
}
