package main

import (
	"math"
	"os"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/internal/figures"
	"github.com/stretchr/testify/require"
)

// thou is a thousandth of an inch in millimetres.
const thou = 0.0254

// The bushes and the bore of the demo engine, worked by hand in inches and
// thou. Allowances: Jones, 0.001 to 0.0025 of the diameter; clearances by habit
// as the sheet names them; expansions and moduli as the tables of fits have
// them.
func TestFitsByHand(t *testing.T) {
	_, f := worked(t)
	sure := math.Hypot(0.5, 0.5/math.Sqrt(3)) // gauge, and micrometer ± 0.5 thou
	outSmall, outMain := 0.8131+0.00175*0.813075, (1.5003+1.5008)/2+0.00175*(1.5008+1.5003+1.5006)/3
	small, main := (outSmall-0.813075)*1000, (outMain-(1.5008+1.5003+1.5006)/3)*1000
	warm := 20 + ((outMain+0.0006)*(1-18e-6*38)+0.001-1.5003)/(22e-6*1.5003)
	for _, tc := range []struct {
		key          string
		want, within float64 // thou, unless the figure has another unit
	}{
		{"bushes.small_end_clearance", 2.5, 1e-9},
		{"bushes.big_end_clearance", 1.7, 1e-9},
		{"bushes.main_clearance", 4.0, 1e-9},
		{"bushes.main_clearance_best", 2.0, 1e-9},
		{"bushes.main_leaks", math.Pow(3/1.404375, 3), 1e-9},
		{"bushes.small_end_outside", 1000 * outSmall, 1e-6},
		{"bushes.main_outside", 1000 * outMain, 1e-6},
		{"bushes.small_end_interference", small, 1e-6},
		{"bushes.main_interference", main, 1e-6},
		{"bushes.small_end_ream_least", 624.5 * 1.0005, 1e-6},
		{"bushes.small_end_ream_most", 624.5 * 1.001, 1e-6},
		{"bushes.main_ream_least", 1123.5 * 1.001, 1e-6},
		{"bushes.main_ream_most", 1123.5 * 1.0015, 1e-6},
		{"bushes.small_end_bored", 624.5*1.0005 - 6, 1e-6},
		{"bushes.small_end_closes", closing(813.075, small, 1122, 624.5*1.0005-6, 200, 0.29, 110, 0.34), 1e-6},
		{"bushes.main_closes", closing(1500.5666667, main, 2360, 1123.5*1.001-6, 71, 0.33, 101, 0.35), 1e-6},
		{"bushes.small_end_interference_warm", small + 813.075*(17.82-11.7)*1e-6*60, 1e-6},
		{"bushes.main_interference_warm", main - 1500.5666667*4e-6*60, 1e-6},
		{"bushes.main_warm_housing", warm, 0.5},
		{"bore.below", 2875.625, 1e-6},
		{"bore.middle", (2879.0 + 2877.75) / 2, 1e-6},
		{"bore.top", (2881.25 + 2879.5) / 2, 1e-6},
		{"bore.wear", 2881.25 - 2875.625, 1e-6},
		{"bore.ovality", 1.75, 1e-6},
		{"bore.taper", 2880.375 - 2875.625, 1e-6},
		{"bore.cleans_up_least", 2881.25, 1e-6},
		{"bore.cleans_up_most", 2875.625 + 2*5.625, 1e-6},
		{"bore.wider_by_gap", 15 / math.Pi, 1e-6},
		{"bore.wider_by_gauge", 4.75, 1e-6},
		{"bore.top_by_ring", 2875.625 + 15/math.Pi, 1e-6},
		{"bore.new_gap", 10.1, 1e-6}, // 0.0035 × 2875.6 = 10.06, up to a tenth of a thou
		{"bore.new_gap_at_top", 10.1 + math.Pi*4.75, 1e-6},
		{"bore.skirt_clearance_least", 2875.5 - 2870.25, 1e-6},
		{"bore.skirt_clearance_most", 2881.25 - 2870.25, 1e-6},
		{"bore.land_clearance", 2875.625 - 2858, 1e-6},
		{"bore.groove_clearance", 4, 1e-9},
		{"bore.skirt_clearance_hot", 5.25 + 11.4e-6*(2875.5*70-2870.25*160), 0.01},
		{"bore.gap_hot", 14 - math.Pi*2875.625*11.4e-6*60, 0.02},
	} {
		got, ok := f[tc.key]
		if !ok {
			t.Errorf("no %s", tc.key)
			continue
		}
		v := got.Value
		if got.Unit == "mm" {
			v /= thou
		}
		figures.Near(t, tc.key, v, tc.want, tc.within)
	}
	figures.Near(t, "standard uncertainty of a clearance, thou", f["bushes.main_clearance"].Std/thou, sure, 1e-9)
	figures.Near(t, "standard uncertainty by the ring, thou", f["bore.wider_by_gap"].Std/thou, 0.02/0.0254*math.Sqrt2/math.Pi, 1e-6)
	figures.Near(t, "standard uncertainty by the gauge, thou", f["bore.wider_by_gauge"].Std/thou, 0.5*math.Sqrt2, 1e-6)
	figures.Near(t, "standard uncertainty of the gap at the top, thou", f["bore.new_gap_at_top"].Std/thou, 0.5*math.Sqrt2*math.Pi, 1e-6)
	require.Equal(t, "2.3 to 26 by what the measuring may be out", f["bushes.main_leaks"].Note) // (3 ∓ 2 × 0.577 thou)³ / (1.404 thou)³

	// Main bush: force at μ 0.04 and 0.20, the ends of the published range, and the interference at which
	// housing (80 MPa) and bush (70 MPa) yield by the greatest shear stress (Tresca).
	const d, out, bored = 1500.5666667, 2360, 1123.5*1.001 - 6
	p := 1000 * pressure(d, main, out, bored, 71, 0.33, 101, 0.35) // MPa
	area := math.Pi * d * thou * 2.5 * 25.4                        // mm²
	figures.Near(t, "least push, N", f["bushes.main_push_least"].Value, 0.04*p*area, 50)
	figures.Near(t, "most push, N", f["bushes.main_push_most"].Value, 0.20*p*area, 500)
	figures.Near(t, "housing yields, thou", f["bushes.main_housing_yields"].Value/thou, main*80*(1-d*d/(out*out))/2/p, 0.05)
	figures.Near(t, "bush yields, thou", f["bushes.main_bush_yields"].Value/thou, main*70*(1-bored*bored/(d*d))/2/p, 0.05)
	// The largest outside below yield: mean of the hole and the lesser interference, down to a tenth of a thou.
	elastic := d + main*70*(1-bored*bored/(d*d))/2/p
	figures.Near(t, "outside below yield, thou", f["bushes.main_outside_elastic"].Value/thou, math.Floor(10*elastic)/10, 1e-6)
	// Beyond the first order it is what the interference is out times how far the bore follows it.
	share := f["bushes.main_closes"].Value / f["bushes.main_interference"].Value
	figures.Near(t, "standard uncertainty of the closing in, thou", f["bushes.main_closes"].Std/thou, share*f["bushes.main_interference"].Std/thou, 0.01)
}

// The sheet does not send the owner past the yield that it reckons without the
// size that stays below it, in the answer, in the table and where he marks out.
func TestBushBelowYield(t *testing.T) {
	text, err := part(t, string(marrowdale))
	require.NoError(t, err)
	require.Equal(t, 2, strings.Count(text, "to stay below yield turn it to 1.5021 in (38.153 mm) or less"))
	require.Contains(t, text, "What the bore closes in by is then a lower bound.")
	require.Contains(t, text, "Main: 1.5032 in is beyond yield as reckoned")
	require.NotContains(t, text, "Small end: 0.8145 in is beyond yield")
}

// The sheet answers first whether the bore is fit for new rings, from the evidence,
// and leaves the use of the engine as the question.
func TestBoreAnswersFirst(t *testing.T) {
	b, _ := worked(t)
	s, err := b.boreSection()
	require.NoError(t, err)
	require.Equal(t, "Whether the bore is fit for new rings by the published limits in the table, none of them the maker's, is not settled; "+
		"the measuring cannot tell: the taper (4.7 thou against 3.9 thou), past it as read, the gap of a new ring at the top (25.0 thou against 23.0 thou), past it as read; "+
		"within them: the wear (5.6 thou against 7.9 thou), the ovality (1.7 thou against 3.9 thou).",
		strings.ReplaceAll(s.Answer[0], "\u00a0", " "))
	require.Contains(t, strings.Join(s.Questions, " "), "Will the engine as it is used do with new rings in this bore?")
}

// closing is how far the bore of a bush closes in, after Lamé: diameter of the
// joint, interference, outside of the housing and bore of the bush in one unit,
// moduli in GPa.
func closing(d, over, outside, bore, eh, nuh, es, nus float64) float64 {
	return 2 * pressure(d, over, outside, bore, eh, nuh, es, nus) * d * d * bore / ((d*d - bore*bore) * es)
}

// pressure is that of the joint, in the unit of the moduli.
func pressure(d, over, outside, bore, eh, nuh, es, nus float64) float64 {
	r2, o2, i2 := d*d/4, outside*outside/4, bore*bore/4
	return over / (d * (((o2+r2)/(o2-r2)+nuh)/eh + ((r2+i2)/(r2-i2)-nus)/es))
}

// Hand sums gone wrong in the ways they do.
func TestFitsSlipsByHand(t *testing.T) {
	b, f := worked(t)
	for _, tc := range []struct{ key, got, want string }{
		{"bore.wider_by_gap", "15 thou", "π forgotten"},
		{"bore.wider_by_gap", "2.387 thou", "difference of the radii"},
		{"bore.wear", "2.8125 thou", "the wear of one side"},
		{"bore.wear", "6.25 thou", "agrees"}, // from 2 7/8 in, but within what the gauge may be out
		{"bore.skirt_clearance_most", "5.5 thou", "the clearance of one side"},
		{"bore.skirt_clearance_least", "0.0525 mm", "thou read as hundredths"},
		{"bore.cleans_up_most", "2.88125 in", "the wear counted once"},
		{"bore.new_gap_at_top", "14.85 thou", "π forgotten"},
		{"bushes.main_outside", "1.5006 in", "the interference left off"},
		{"bushes.main_outside", "1.5026 in", "the nominal size of the hole for the measured one"},
		{"bushes.main_outside", "1.50579 in", "the interference added on each side"},
		{"bushes.main_closes", "2.609 thou", "all of the interference"},
		{"bushes.small_end_clearance", "1.25 thou", "the play to one side"},
		{"bushes.small_end_ream_most", "0.625624 in", "agrees"}, // 5/8 in + 0.6245 thou, but within what the micrometer may be out
		{"bushes.main_leaks", "2.1362", "without the cube"},
		{"adapter.slot_closes", "0.1373 mm", "π forgotten"},
		{"adapter.taper", "6.56°", "whole angle of the cone"},
		{"adapter.stud_centres", "61.79 mm", "the outside of the studs"},
		{"adapter.reach", "1.6 mm", "π forgotten"},
		{"adapter.spigot_most", "25.485 mm", "the mean bore of the collar"},
	} {
		fig, ok := f[tc.key]
		require.True(t, ok, tc.key)
		v, err := fig.Read(tc.got)
		require.NoError(t, err)
		if got := b.judge(fig, tc.got, v, f); !strings.Contains(strings.ToLower(got), strings.ToLower(tc.want)) {
			t.Errorf("%s %s: %s; want %q", tc.key, tc.got, got, tc.want)
		}
	}
}

// The worksheet and the program adapter have one adapter, and one way of asking
// for it.
func TestAdapterIsThatOfTheProgram(t *testing.T) {
	for _, pair := range [][3]string{{"../adapter/carburettor.toml", string(marrowdale), "[adapter]"}, {"../adapter/template.toml", string(template), "# [adapter]"}} {
		of, err := os.ReadFile(pair[0])
		require.NoError(t, err)
		_, part, ok := strings.Cut(string(of), pair[2])
		require.True(t, ok)
		require.Contains(t, pair[1], pair[2]+part)
	}
}

// part works out a file of a few lines and returns the text of the sheet.
func part(t *testing.T, text string) (string, error) {
	t.Helper()
	var j job
	file, err := jobfile.Decode("part.toml", []byte(text), &j)
	if err != nil {
		return "", err
	}
	s, err := sections(file, &j, trials{})
	if err != nil {
		return "", err
	}
	var b strings.Builder
	require.NoError(t, s.WriteText(&b))
	return strings.Join(strings.Fields(strings.ReplaceAll(b.String(), "\u00a0", " ")), " "), nil
}

const oneBush = `[bushes]
new_part_good_to = "0.0002 in"
[[bushes.bush]]
name = "main"
runs = "splash"
journal = "1 in ± 0.0002 in"
hole = ["1.2500 in", "1.2502 in"]
hole_good_to = "0.0002 in"
`

const oneBore = `[bore]
top_front_back = ["3.010 in"]
top_side_side = ["3.008 in"]
below_front_back = ["3.000 in"]
below_side_side = ["3.000 in"]
good_to = "0.0005 in"
`

func TestBushesAndBoreSay(t *testing.T) {
	for _, tc := range []struct{ name, text, says, not string }{
		{"a hole that leaves room", oneBush, "outside, smallest", "outside to aim at"},
		{"no housing measured", oneBush, "how far the bush closes in needs housing_outside", "it closes in by"},
		{"a range of one's own", oneBush + "interference_least = \"0.001 in\"\ninterference_most = \"0.002 in\"\nclearance_least = \"0.001 in\"\nclearance_most = \"0.003 in\"\n", "ream to 1.0010 in to 1.0030 in", "Jones"},
		{"a journal larger than its bore", "[bushes]\n[[bushes.bush]]\nname = \"old\"\nruns = \"well oiled\"\njournal = \"1 in\"\nold_bore = [\"0.999 in\"]\nold_bore_good_to = \"0.0005 in\"\n", "the journal measures larger than the bore", "ream to"},
		{"no more than is usual", "[bushes]\n[[bushes.bush]]\nname = \"old\"\nruns = \"splash\"\njournal = \"1 in\"\nold_bore = [\"1.001 in\"]\nold_bore_good_to = \"0.0001 in\"\n", "That is no more than is usual", "leaks"},
		{"an iron bush lets go in a warm case", strings.Replace(oneBush, "[[", "warm = \"150 °C\"\n[[", 1) + "housing_outside = \"2 in\"\nlength = \"1 in\"\nhousing_material = \"cast aluminium\"\nbush_material = \"grey cast iron\"\ninterference_least = \"0.0005 in\"\ninterference_most = \"0.0015 in\"\n", "Will it turn or wander?", ""},
		{"readings of a hole far apart", strings.Replace(oneBush, "1.2502", "1.2602", 1), "lie further apart than they are good to", ""},
		{"a bore by itself", oneBore, "worn by 10.0 thou", "rings say"},
		{"a bore worn on one side of its limits", oneBore, "beyond the 24.0 thou", ""},
		{"a bore of which it is settled", oneBore, "is not fit for new rings as it is; past them: the wear (10.0 thou against 8.2 thou), the taper (9.0 thou against 3.9 thou), the gap of a new ring at the top (38.8 thou against 24.0 thou); within them: the ovality (2.0 thou against 3.9 thou)", "the measuring cannot tell"},
		{"a bore that is within", strings.NewReplacer("3.010", "3.0015", "3.008", "3.001").Replace(oneBore), "is fit for new rings in all that was measured; within them: the wear (1.5 thou against 8.2 thou)", "past them"},
		{"one diameter and a piston", "[bore]\ndiameter = \"73 mm ± 0.01 mm\"\n[piston]\nskirt = [\"72.9 mm\"]\nskirt_good_to = \"0.01 mm\"\nmaterial = \"aluminium\"\n", "aluminium piston, skirt", "worn by"},
		{"gaps that do not agree", oneBore + "[piston]\nring_gap_below = \"0.010 in ± 0.001 in\"\nring_gap_top = \"0.014 in ± 0.001 in\"\n", "they do not agree", "they agree"},
		{"a piston that may seize", oneBore + "[piston]\nskirt = [\"2.999 in\"]\nskirt_good_to = \"0.0003 in\"\nmaterial = \"aluminium\"\nbore_material = \"grey cast iron\"\nbore_warm = \"90 °C\"\npiston_warm = \"250 °C\"\n", "may have no clearance left", ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got, err := part(t, tc.text)
			require.NoError(t, err)
			require.Contains(t, got, tc.says)
			if tc.not != "" {
				require.NotContains(t, got, tc.not)
			}
		})
	}
}

func TestBushesAndBoreRefuse(t *testing.T) {
	with := func(text, old, new string) string { return strings.Replace(text, old, new, 1) }
	for _, tc := range []struct{ name, text, want string }{
		{"no bush", "[bushes]\n", "part.toml:1: bushes: no bush: give a [[bushes.bush]] for each"},
		{"no name", with(oneBush, `"main"`, `"Main!"`), `part.toml:4: bushes.bush.1.name: "Main!": want a name in small letters`},
		{"two of one name", oneBush + strings.TrimPrefix(oneBush, "[bushes]\nnew_part_good_to = \"0.0002 in\"\n"), "two bushes of one name"},
		{"no journal", with(oneBush, "journal = \"1 in ± 0.0002 in\"\n", ""), "bushes.bush.1.journal: not given"},
		{"journal of nothing", with(oneBush, `"1 in ± 0.0002 in"`, `"0 in"`), "part.toml:6: bushes.bush.1.journal: 0 mm: want more than 0 mm"},
		{"what runs there", with(oneBush, `"splash"`, `"fast"`), `bushes.bush.1.runs: "fast": want gudgeon pin, splash or well oiled`},
		{"one end of the clearance", oneBush + "clearance_most = \"1 thou\"\n", "give clearance_least and clearance_most, or neither"},
		{"clearance the wrong way round", oneBush + "clearance_least = \"2 thou\"\nclearance_most = \"1 thou\"\n", "the lesser first"},
		{"one end of the interference", oneBush + "interference_most = \"1 thou\"\n", "give interference_least and interference_most, or neither"},
		{"interference below nought", oneBush + "interference_least = \"-1 thou\"\ninterference_most = \"1 thou\"\n", "bushes.bush.1.interference_least"},
		{"how good the hole is", with(oneBush, "hole_good_to = \"0.0002 in\"\n", ""), "needs both hole_good_to and bushes.new_part_good_to"},
		{"how good the old bore is", oneBush + "old_bore = [\"1.01 in\"]\n", "old_bore_good_to: not given"},
		{"a hole of nothing", with(oneBush, `"1.2500 in"`, `"0 in"`), "bushes.bush.1.hole: reading 1"},
		{"a hole too large for the practice", with(with(oneBush, "1.2500", "12.500"), "1.2502", "12.502"), "bushes.bush.1.hole"},
		{"a thin housing", oneBush + "housing_outside = \"1.2 in\"\nlength = \"1 in\"\nhousing_material = \"steel\"\nbush_material = \"brass\"\n", "bushes.bush.1.housing_outside"},
		{"unknown metal", oneBush + "housing_outside = \"2 in\"\nlength = \"1 in\"\nhousing_material = \"wood\"\nbush_material = \"brass\"\n", `material "wood"`},
		{"a piston and no bore", "[piston]\nskirt = [\"72 mm\"]\n", "part.toml:1: piston: a piston and no bore"},
		{"a bore of nothing", "[bore]\ndiameter = \"0 mm\"\n[piston]\n", "part.toml:2: bore.diameter: 0 mm: want more than 0 mm"},
		{"no readings", "[bore]\ngood_to = \"1 thou\"\n[piston]\n", "bore: no readings"},
		{"how good the skirt is", oneBore + "[piston]\nskirt = [\"2.99 in\"]\n", "piston.skirt_good_to: not given"},
		{"a skirt larger than the bore", oneBore + "[piston]\nskirt = [\"3.2 in\"]\nskirt_good_to = \"1 thou\"\n", "piston.skirt: a skirt of 81.28 mm in a bore of 76.454 mm"},
		{"one gap", oneBore + "[piston]\nring_gap_top = \"30 thou\"\n", "part.toml:8: piston.ring_gap_top: one end gap only"},
		{"a gap below nought", oneBore + "[piston]\nring_gap_top = \"-30 thou\"\nring_gap_below = \"10 thou\"\n", "piston.ring_gap_top: ring gap -0.762 mm"},
		{"gaps and one diameter", "[bore]\ndiameter = \"73 mm\"\n[piston]\nring_gap_top = \"30 thou\"\nring_gap_below = \"10 thou\"\n", "the bore was not measured at both"},
		{"heat and no metal", oneBore + "[piston]\nbore_warm = \"90 °C\"\n", "clearances hot need bore_warm, material and bore_material too"},
		{"too hot", oneBore + "[piston]\nmaterial = \"grey cast iron\"\nbore_material = \"grey cast iron\"\nbore_warm = \"90 °C\"\npiston_warm = \"2000 °C\"\nskirt = [\"2.99 in\"]\nskirt_good_to = \"1 thou\"\n", "piston.piston_warm"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			_, err := part(t, tc.text)
			require.ErrorContains(t, err, tc.want)
			require.True(t, strings.HasPrefix(err.Error(), "part.toml"), err)
		})
	}
}
