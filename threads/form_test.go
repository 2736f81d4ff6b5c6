package threads

import (
	"math"
	"strings"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// The forms as books print them, lengths over the pitch.
func TestFormsAgainstPrint(t *testing.T) {
	const p = units.Millimetre
	for _, r := range []struct {
		form                                   Form
		angle, height, depth, effective, minor string
		crest, root                            string
		source                                 string
	}{
		{ISOForm, "60", "0.866025", "0.541266", "0.649519", "1.082532", "0.125", "0.25", "ISO 68-1; Shigley, 9th ed., Fig. 8-2; Machinery's Handbook, 27th ed., p. 1794"},
		{ISOBoltForm, "60", "0.866025", "0.613435", "0.649519", "1.226869", "0.125", "0.144338", "Machinery's Handbook, 27th ed., p. 1794; get-it-made.co.uk coarse metric chart"},
		{UnifiedForm, "60", "0.866025", "0.541266", "0.649519", "1.082532", "0.125", "0.25", "ASME B1.1; Wikipedia, Unified Thread Standard"},
		{UNRBoltForm, "60", "0.866025", "0.595392", "0.649519", "1.190785", "0.125", "0.108", "ASME B1.1-2003 as worked in Machinery's Handbook, 31st ed., Tables 3 and 6"},
		{SellersForm, "60", "0.866025", "0.649519", "0.649519", "1.299038", "0.125", "0.125", "Shigley, 9th ed., Table 8-2 footnote; Jones, Turning and Boring"},
		{SharpVForm, "60", "0.866025", "0.866025", "0.866025", "1.732051", "0", "0", "Jones, Turning and Boring"},
		{WhitworthForm, "55", "0.960491", "0.640327", "0.640327", "1.280654", "0.137329", "0.137329", "BS 84; Machinery's Handbook, 31st ed., p. 2087, Table 2"},
		{BAForm, "47.5", "1.136336", "0.600000", "0.600000", "1.200000", "0.180834", "0.180834", "BS 93:1951 (Machinery's Handbook, 31st ed., p. 2115)"},
		{CycleForm, "60", "0.866025", "0.532692", "0.532692", "1.065384", "0.166667", "0.166667", "BS 811:1950 as quoted on model-engineer.co.uk, 10 Feb 2018"},
		{LoewenherzForm, "53.13", "1.000000", "0.750000", "0.750000", "1.500000", "0.125", "0.125", "Wikipedia, Loewenherz thread; Machinery's Handbook, 31st ed., p. 2119"},
		{SIForm, "60", "0.866025", "0.649519", "0.649519", "1.299038", "0.125", "", "sizes.com, Zürich 1898; Machinery's Handbook, 27th ed., p. 1824"},
		{OldDINForm, "60", "0.866025", "0.694500", "0.649519", "1.389000", "0.125", "0.063300", "DIN 13 of the 1920s, from memory"},
	} {
		_, crest := r.form.Crest(p)
		_, root := r.form.Root(p)
		for _, f := range []struct {
			printed string
			got     float64
		}{
			{r.angle, r.form.Angle().Degrees()}, {r.height, r.form.Height(p).Millimetres()}, {r.depth, r.form.Depth(p).Millimetres()},
			{r.effective, r.form.EffectiveBelow(p).Millimetres()}, {r.minor, r.form.MinorBelow(p).Millimetres()},
			{r.crest, crest.Millimetres()}, {r.root, root.Millimetres()},
		} {
			switch fig := (figures.Figure{Printed: f.printed, Source: r.source}); f.printed {
			case "":
			case "1.280654":
				fig.Misprint(t, f.got, "twice the rounded depth, 0.640327p")
			default:
				fig.Check(t, f.got)
			}
		}
	}
	// Whitworth: a sixth of the height is cut off at either end, 0.073917p of it
	// being the depth of the rounding. BA: 0.268168p is cut off.
	h := WhitworthForm.Height(p).Millimetres()
	figures.Figure{Printed: "0.160082", Source: "BS 84; Machinery's Handbook, 31st ed., p. 2087"}.Check(t, (h-WhitworthForm.Depth(p).Millimetres())/2)
	figures.Figure{Printed: "0.073917", Source: "BS 84; Machinery's Handbook, 31st ed., p. 2087"}.Misprint(t, whitworthRadius*(1-sin27_5), "cut off, not rounded")
	figures.Figure{Printed: "0.268168", Source: "BS 93:1951 (Machinery's Handbook, 31st ed., p. 2115)"}.Check(t, (BAForm.Height(p)-BAForm.Depth(p)).Millimetres()/2)
	// SI may go a sixteenth of the height deeper than basic, 0.7036p at most; the
	// French bolt cores of the handbook have it.
	figures.Figure{Printed: "0.7036", Source: "Zürich 1898, basic depth and H/16"}.Check(t, (SIForm.Depth(p) + SIForm.Height(p)/16).Millimetres())
	for _, r := range []struct {
		major, pitch float64
		core         string
	}{{6, 1, "4.59"}, {10, 1.5, "7.89"}} {
		deepest := r.major - r.pitch*2*(SIForm.Depth(p)+SIForm.Height(p)/16).Millimetres()
		figures.Figure{Printed: r.core, Source: "French bolt cores, Machinery's Handbook, 27th ed., p. 1824"}.Check(t, deepest)
	}
}

// The constants of the triangles, to 20 figures.
func TestTriangleConstants(t *testing.T) {
	const source = "tangent and sine by series, 38 digits"
	for _, c := range []struct {
		digits string
		got    float64
	}{
		{"0.57735026918962576450914878050195745565", ISOForm.TanFlank()},
		{"0.52056705055174628887607", WhitworthForm.TanFlank()},
		{"0.44001053089183341736944", BAForm.TanFlank()},
		{"0.46174861323503393056293", sin27_5},
		{"0.40274668985873723481858", sin23_75},
		{"0.96049106348558292389656", WhitworthForm.Height(1e-3).Millimetres()},
		{"1.13633643946334009304728", BAForm.Height(1e-3).Millimetres()},
	} {
		figures.Reference{Digits: c.digits, Source: source}.Check(t, c.got)
	}
}

// What is cut off at crest and root and the depth make up the triangle; a flat
// is as wide as the triangle there, an arc fits the flanks.
func TestFormsAreCutFromTheirTriangle(t *testing.T) {
	cut := func(f Form, s Shape, size float64) float64 {
		tan := f.TanFlank()
		sin := tan / math.Hypot(1, tan)
		switch s {
		case Flat:
			return size / (2 * tan)
		case Round:
			return size * (1 - sin) / sin
		}
		return 0
	}
	for f := ISOForm; f < formsEnd; f++ {
		crest, c := f.Crest(1)
		root, r := f.Root(1)
		h, sum := float64(f.Height(1)), cut(f, crest, float64(c))+float64(f.Depth(1))
		// The radius of the UNR root is the least allowed, the others fit.
		if f == UNRBoltForm {
			r = units.Length(3. / 16 * h60)
		}
		if root == FlatOrRound {
			r = units.Length(1. / 8)
			root = Flat
		}
		tol := 1e-12
		if f == OldDINForm {
			tol = 1e-4 // figures to four places
		}
		figures.Near(t, f.String()+": crest, depth and root", sum+cut(f, root, float64(r)), h, tol)
		figures.Near(t, f.String()+": two depths", float64(f.MinorBelow(1)), 2*float64(f.Depth(1)), 1e-12)
	}
}

func TestFormsSayTheirNames(t *testing.T) {
	seen := map[string]bool{}
	for f := ISOForm; f < formsEnd; f++ {
		if f.String() == "" || f.Source() == "" || seen[f.String()] {
			t.Errorf("form %d: %q, %q", f, f.String(), f.Source())
		}
		if f.FromMemory() != strings.Contains(f.Source(), "from memory") && f != UNRBoltForm {
			t.Errorf("%v: from memory %v, source %q", f, f.FromMemory(), f.Source())
		}
		seen[f.String()] = true
	}
	for _, f := range []Form{0, formsEnd, 255} {
		if f.Height(1) != 0 || f.Depth(1) != 0 || f.Angle() != 0 || f.BestWire(0) != 0 || f.String() != "no form" {
			t.Errorf("form %d is one", f)
		}
	}
	for s, want := range map[Shape]string{Sharp: "sharp", Flat: "flat", Round: "rounded", FlatOrRound: "flat or rounded", 9: "unknown shape"} {
		if s.String() != want {
			t.Errorf("shape %d is %q", s, s)
		}
	}
}
