package threadsheet

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// decode reads a job out of a text and names its threads.
func decode(t *testing.T, text string) ([]*Checked, error) {
	t.Helper()
	var j struct {
		Origin string     `toml:"origin"`
		Years  []int      `toml:"years"`
		Thread []Measured `toml:"thread"`
	}
	f, err := jobfile.Decode("t.toml", []byte(text), &j)
	if err != nil {
		t.Fatal(err)
	}
	return All(f, "", &Job{Origin: j.Origin, Years: j.Years, Thread: j.Thread})
}

func mustDecode(t *testing.T, text string) []*Checked {
	t.Helper()
	all, err := decode(t, text)
	if err != nil {
		t.Fatal(err)
	}
	return all
}

const stud = `
[[thread]]
name = "Stud"
part = "bolt"
crest = ["0.3712 in"]
crest_good_to = "0.0003 in"
pitches = 10
length = ["12.71 mm"]
length_good_to = "0.05 mm"
`

const hole = `
[[thread]]
name = "Hole"
part = "hole"
crest = ["0.344 in"]
crest_good_to = "0.0005 in"
pitches = 10
length = ["12.7 mm"]
length_good_to = "0.1 mm"
wear = "1 mm"
`

func TestPitchIsRead(t *testing.T) {
	for _, tc := range []struct {
		text  string
		mm    float64
		angle float64
	}{
		{"26 tpi", 25.4 / 26, 0}, {"26tpi", 25.4 / 26, 0}, {"26 TPI", 25.4 / 26, 0}, {"11.5 tpi", 25.4 / 11.5, 0},
		{"1 mm", 1, 0}, {"0.70 mm", 0.7, 0}, {"1/20 in", 1.27, 0},
		{"26 tpi 55°", 25.4 / 26, 55}, {"26 tpi, 55 deg", 25.4 / 26, 55}, {"0.81 mm 47.5°", 0.81, 47.5}, {"  8  tpi ", 25.4 / 8, 0},
	} {
		var p Pitch
		if err := p.UnmarshalText([]byte(tc.text)); err != nil {
			t.Errorf("%q: %v", tc.text, err)
			continue
		}
		figures.Near(t, tc.text+", mm", p.Length.Millimetres(), tc.mm, 1e-9)
		figures.Near(t, tc.text+", °", p.Angle.Degrees(), tc.angle, 1e-9)
		if want := strings.Join(strings.Fields(tc.text), " "); p.String() != want {
			t.Errorf("%q comes out as %q", tc.text, p)
		}
	}
	for text, want := range map[string]string{
		"26": "write 26 tpi or 26 mm", "": "want threads per inch", "many tpi": "want 1 to 200", "0 tpi": "want 1 to 200", "-3 tpi": "want 1 to 200", "NaN tpi": "want 1 to 200",
		"300 tpi": "want 1 to 200", "0.01 mm": "from 0.1 mm to 30 mm", "1 m": "from 0.1 mm to 30 mm", "26 tpi 5°": "as 55° or 60°", "26 tpi x°": "", "1,5 mm": "", "1 kg": "",
	} {
		p := Pitch{Length: 1}
		err := p.UnmarshalText([]byte(text))
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
		if p.Length != 1 {
			t.Errorf("%q: refused, and left %v behind", text, p.Length)
		}
	}
}

func FuzzPitch(f *testing.F) {
	for _, s := range []string{"26 tpi 55°", "1 mm", "tpi", "°", " ", "1/8 in 60 deg", "deg", "1e400 tpi"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var p Pitch
		if err := p.UnmarshalText([]byte(text)); err != nil {
			return
		}
		if !(p.Length >= 0.1*units.Millimetre && p.Length <= 30*units.Millimetre) || p.Angle != 0 && !(p.Angle >= 40*units.Degree && p.Angle <= 90*units.Degree) {
			t.Fatalf("%q was read as %v at %v", text, p.Length, p.Angle)
		}
		var again Pitch
		if err := again.UnmarshalText([]byte(p.String())); err != nil || again != p {
			t.Fatalf("%q: %v came back as %v, %v", text, p, again, err)
		}
	})
}

// The hole's own readings leave it open; the stud that belongs in it decides.
func TestStudNamesItsHole(t *testing.T) {
	alone := mustDecode(t, hole)[0]
	if alone.Named() {
		t.Fatalf("alone: %v", alone.Found.Candidates)
	}
	all := mustDecode(t, stud+hole+"goes_with = \"stud\"\n")
	c := all[1]
	if got := c.Found.Candidates[0].Thread().Designation(); !c.Named() || got != "3/8-20 BSF" || c.Mate != all[0] {
		t.Errorf("with the stud: %s at %.3f", got, c.Found.Candidates[0].Probability)
	}
	if all[0].Found.Candidates[0] != mustDecode(t, stud)[0].Found.Candidates[0] {
		t.Error("the stud's answer has changed")
	}
	s := c.Section("x")
	if text := strings.Join(s.Answer, " "); !strings.Contains(text, "Alone it might be 3/8-20 BSF") {
		t.Error(text)
	}
}

// Two readings of one thread weigh as all their readings together: a bolt by its
// pitch and the same bolt by its diameter are the bolt by both.
func TestTogetherIsAllReadingsAtOnce(t *testing.T) {
	crest := units.WithStd(7.85*units.Millimetre, 0.02*units.Millimetre)
	pitch := units.WithStd(1.15*units.Millimetre, 0.02*units.Millimetre)
	effective := units.WithStd(7.15*units.Millimetre, 0.03*units.Millimetre)
	prior, err := threads.NewPrior(threads.British, 1920, 1930)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []threads.Prior{{}, prior} {
		one, err := threads.Identify(threads.Readings{Crest: crest, Prior: p})
		if err != nil {
			t.Fatal(err)
		}
		other, err := threads.Identify(threads.Readings{Effective: effective, Pitch: pitch, Prior: p})
		if err != nil {
			t.Fatal(err)
		}
		want, err := threads.Identify(threads.Readings{Crest: crest, Effective: effective, Pitch: pitch, Prior: p})
		if err != nil {
			t.Fatal(err)
		}
		got, ok := together(one, other, p)
		if !ok {
			t.Fatal("nothing in common")
		}
		figures.Near(t, "of no table", got.Unlisted, want.Unlisted, 1e-6)
		for i, k := range want.Candidates {
			if k.Probability < 1e-3 {
				break
			}
			if got.Candidates[i].Thread() != k.Thread() {
				t.Errorf("%d: %v, want %v", i, got.Candidates[i].Thread(), k.Thread())
				continue
			}
			figures.Near(t, k.Thread().Designation(), got.Candidates[i].Probability, k.Probability, 1e-4)
		}
	}
}

// Probabilities, that of no table among them, come to one.
func TestTogetherComesToOne(t *testing.T) {
	c := mustDecode(t, stud+hole+"goes_with = \"Stud\"\n")[1]
	sum := c.Found.Unlisted
	for _, k := range c.Found.Candidates {
		sum += k.Probability
	}
	figures.Near(t, "sum", sum, 1, 1e-9)
}

// A right count agrees with its leaf and is not questioned, one too many is,
// with what is wrong.
func TestLeafFindsAWrongCount(t *testing.T) {
	for n, want := range map[string]string{"10": "", "11": "over 10 they would", "9": "over 10 they would", "15": "was the length taken square"} {
		text := strings.Replace(stud, "pitches = 10", "pitches = "+n+"\nleaf = [\"20 tpi\"]", 1)
		got := strings.Join(mustDecode(t, text)[0].Questions(), " ")
		if want == "" && got != "" || !strings.Contains(got, want) {
			t.Errorf("%s pitches: %q, want %q", n, got, want)
		}
	}
}

// Where one of two leaves fits, the other is not worth a question.
func TestOneLeafOfTwoIsEnough(t *testing.T) {
	text := stud + "leaf = [\"20 tpi\", \"1.5 mm\"]\n"
	if q := mustDecode(t, text)[0].Questions(); len(q) != 0 {
		t.Error(q)
	}
}

func TestLeafOfAnotherAngle(t *testing.T) {
	for leaf, want := range map[string]bool{"20 tpi 55°": false, "20 tpi 60°": true, "20 tpi": false} {
		q := strings.Join(mustDecode(t, stud+"leaf = [\""+leaf+"\"]\n")[0].Questions(), " ")
		if strings.Contains(q, "did it show light") != want {
			t.Errorf("%s: %q", leaf, q)
		}
	}
}

// A probability is never written as more than it is.
func TestPercentClaimsNoMore(t *testing.T) {
	for p, want := range map[float64]string{1: "over 99.9 %", 0.9996: "over 99.9 %", 0.9994: "99.9 %", 0.996: "99.6 %", 0.95: "95 %", 0.5: "50 %", 0.004: "under 1 %", 0: "under 1 %"} {
		if got := strings.ReplaceAll(percent(p), "\u00a0", " "); got != want {
			t.Errorf("%g is written %s, want %s", p, got, want)
		}
	}
}

// Whatever thread is measured as it stands in the tables, its section says
// something of every part and nothing that is no number.
func TestSectionForEveryThread(t *testing.T) {
	for th := range threads.All() {
		for _, part := range [...]string{"bolt", "hole"} {
			m := Measured{Name: "X", Part: part, Crest: []units.Length{th.Major() - 0.03*units.Millimetre}, CrestGoodTo: 0.01 * units.Millimetre,
				Pitches: 10, Length: []units.Length{10 * th.Pitch()}, LengthGoodTo: 0.05 * units.Millimetre}
			if part == "hole" {
				m.Crest[0] = th.Minor() + 0.03*units.Millimetre
			}
			if m.Crest[0] <= 0.5*units.Millimetre {
				continue
			}
			c, err := Check(&jobfile.File{Name: "t"}, "", m, "", nil)
			if err != nil {
				t.Errorf("%v: %v", th, err)
				continue
			}
			s := c.Section(c.Key())
			if s.Answer[0] == "" || len(s.Figures) == 0 || len(s.Tables) == 0 {
				t.Errorf("%v %s: %v", th, part, s)
			}
			text := strings.Join(s.Answer, " ") + s.Improve
			for _, w := range s.Working {
				text += w.Numbers + w.Result
			}
			for _, p := range s.Pictures {
				text += p.SVG + p.Title + p.Says
			}
			for _, bad := range []string{"NaN", "Inf", "%!", "+Inf"} {
				if strings.Contains(text, bad) {
					t.Errorf("%v %s: %s in %s", th, part, bad, text)
				}
			}
		}
	}
}

// The rival of a named thread is another thread, and near it.
func TestNearestIsAnother(t *testing.T) {
	for th := range threads.All() {
		u := nearest(th)
		if u == (threads.Thread{}) || u.Same(th) {
			t.Errorf("nearest to %v is %v", th, u)
		}
	}
	bsf, err := threads.Find("1/4 BSF")
	if err != nil {
		t.Fatal(err)
	}
	if got := nearest(bsf).Designation(); got != "1/4-26 BSC" {
		t.Errorf("nearest to 1/4 BSF is %s", got)
	}
}

// A mate says after how many turns, and what gets hurt.
func TestMatesText(t *testing.T) {
	c := mustDecode(t, `
[[thread]]
name = "A"
part = "bolt"
crest = ["0.495 in"]
crest_good_to = "0.001 in"
pitches = 1
length = ["2.04 mm"]
length_good_to = "0.05 mm"
engaged = "0.44 in"
`)[0]
	text := c.MatesText()
	for _, want := range []string{"A bolt of ", " in a hole of ", "What gets hurt"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in %q", want, text)
		}
	}
	for _, m := range c.Mates() {
		figures.Near(t, "engaged, in", m.Engaged.Inches(), 0.44, 1e-9)
	}
}

// Parts of the basic sizes are not what lies on the bench: the words keep the
// two apart.
func TestMatingTellsBasicFromOrdinary(t *testing.T) {
	for _, tc := range []struct{ bolt, hole, want string }{
		{"1/4 BSW", "1/4 UNC", "of 5.0 turns, at the very sizes of the tables it does not enter; parts with ordinary play mostly run all the way."},
		{"5/16-26 BSC", "M8x1", "of 6.3 turns, at the very sizes of the tables it does not enter; parts with ordinary play bind after about 1.4; the loosest bind after 4.5, and about one more by the lead-in."},
		{"0 BA", "M6", "of 6.3 turns, at the very sizes of the tables it does not enter, nor with half of the ordinary play."},
	} {
		bolt, err1 := threads.Find(tc.bolt)
		hole, err2 := threads.Find(tc.hole)
		p, err3 := threads.NewPair(bolt, hole)
		m := Mating{Bolt: bolt, Hole: hole, Engaged: 6.35 * units.Millimetre}
		var err4 error
		m.Mating, err4 = p.Mate(m.Engaged)
		if err := errors.Join(err1, err2, err3, err4); err != nil {
			t.Fatal(err)
		}
		if got := m.String(); !strings.HasSuffix(got, tc.want) {
			t.Errorf("%s in %s: %s\nwant %s", tc.bolt, tc.hole, got, tc.want)
		}
	}
}

// What is left of a torn hole, by hand: 3/8 BSF is 9.525 mm with a depth of
// 0.6403 × 1.27 mm, and the bore 8.7376 mm.
func TestTornByHand(t *testing.T) {
	c := mustDecode(t, stud+hole+`goes_with = "Stud"
torn = true
deep = "0.8 in"
to_edge = "0.25 in ± 0.02 in"
metal = "light alloy"
metal_strength = "160 MPa"
stud_grade = "4.6"
`)[1]
	s := &sheet.Section{Key: "t"}
	if err := c.AddTorn(s); err != nil {
		t.Fatal(err)
	}
	want := map[string]float64{
		"t.hole_engagement":   100 * (9.525 - 8.7376) / (2 * 0.640327 * 1.27),
		"t.hole_with_stud":    100 * (0.3712*25.4 - 8.7376) / (2 * 0.640327 * 1.27),
		"t.hole_by_rule":      1.5*9.525 + 25.4/16,
		"t.hole_edge_stepped": 6.35 - (11.1125-8.7376)/2,
		"t.hole_edge_insert":  6.35 - (9.525+2*0.640327*1.27-8.7376)/2,
		"t.hole_edge_bush":    6.35 - (15.875-8.7376)/2,
	}
	for _, f := range s.Figures {
		if w, ok := want[f.Key]; ok {
			figures.Near(t, f.Key, f.Value, w, 0.01)
			delete(want, f.Key)
		}
		if strings.HasPrefix(f.Key, "t.hole_edge") { // 0.02 in either way, evenly spread
			if least := 0.02 * 25.4 / math.Sqrt(3); !(f.Std >= least && f.Std < 1.1*least) {
				t.Errorf("%s: standard uncertainty %.3f mm, want a little over %.3f mm", f.Key, f.Std, least)
			}
		}
	}
	for key := range want {
		t.Errorf("no figure %s", key)
	}
	if len(s.Cautions) == 0 || len(s.Questions) == 0 {
		t.Error("no cautions or questions")
	}
}

// With an edge too near, it is said that the new thread breaks through.
func TestTornTooNearTheEdge(t *testing.T) {
	c := mustDecode(t, stud+hole+"goes_with = \"Stud\"\ntorn = true\nto_edge = \"2 mm\"\n")[1]
	s := &sheet.Section{Key: "t"}
	if err := c.AddTorn(s); err != nil {
		t.Fatal(err)
	}
	if text := strings.Join(s.Answer, " "); !strings.Contains(text, "breaks through the edge") {
		t.Error(text)
	}
}

// A bush is drawn true to scale, with its wall written beside it.
func TestBushPicture(t *testing.T) {
	outer, _ := threads.Find("7/8-18 plug")
	inner, _ := threads.Find("18 mm plug")
	b, err := threads.NewBush(outer, inner)
	if err != nil {
		t.Fatal(err)
	}
	p := BushPicture(b, 13*units.Millimetre)
	for _, want := range []string{"wall 1.25\u00a0mm", "drawn 5:1"} {
		if !strings.Contains(p.SVG, want) {
			t.Errorf("no %q in the drawing", want)
		}
	}
	if strings.Contains(p.SVG, "NaN") || !strings.Contains(p.Says, "1.25") {
		t.Error(p.Says)
	}
}

// Where nothing in the tables fits, nothing is named and nothing drawn.
func TestOfNoTable(t *testing.T) {
	c := mustDecode(t, `
[[thread]]
name = "A"
part = "bolt"
crest = ["7 mm"]
crest_good_to = "0.01 mm"
pitches = 10
length = ["20 mm"]
length_good_to = "0.05 mm"
`)[0]
	if _, ok := c.Best(); ok || c.Named() || c.MatesText() != "" {
		t.Errorf("named %v", c.Found.Candidates)
	}
	if _, ok := c.Picture(); ok {
		t.Error("drawn")
	}
	s := Summary("threads", []*Checked{c})
	if text := strings.Join(s.Answer, " "); !strings.Contains(text, "Of no series in the tables") {
		t.Error(text)
	}
}

// Of a metric hole the percentage is of the overlap, 1.0825 p on the diameter,
// and not of the depth of a bolt.
func TestTornMetricByHand(t *testing.T) {
	c := mustDecode(t, `
[[thread]]
name = "M"
part = "hole"
crest = ["7.1 mm"]
crest_good_to = "0.01 mm"
pitches = 10
length = ["12.5 mm"]
length_good_to = "0.05 mm"
wear = "0.5 mm"
torn = true
`)[0]
	s := &sheet.Section{Key: "t"}
	if err := c.AddTorn(s); err != nil {
		t.Fatal(err)
	}
	if th, ok := c.Best(); !ok || th.Designation() != "M8x1.25" {
		t.Fatalf("named %v", th)
	}
	figures.Near(t, "left, %", s.Figures[0].Value, 100*(8-7.1)/(1.0825317547*1.25), 0.001)
	if text := strings.Join(s.Answer, " "); strings.Contains(text, "No standard has inserts") || !strings.Contains(text, "9.62") {
		t.Errorf("wire insert of M8 wants 9.62 mm by its standard: %s", text)
	}
}
