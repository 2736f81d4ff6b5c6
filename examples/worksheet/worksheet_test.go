package main

import (
	"bytes"
	"encoding"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
	"github.com/stretchr/testify/require"
)

// figuresOf works out a job and returns its figures by key.
func figuresOf(t *testing.T, s *sheet.Sheet) map[string]sheet.Figure {
	t.Helper()
	all := map[string]sheet.Figure{}
	for _, sec := range s.Sections {
		for _, f := range sec.Figures {
			if _, twice := all[f.Key]; twice {
				t.Errorf("two figures have the key %s", f.Key)
			}
			if !strings.HasPrefix(f.Key, sec.Key+".") {
				t.Errorf("figure %s stands in section %s", f.Key, sec.Key)
			}
			if math.IsNaN(f.Value) || math.IsInf(f.Value, 0) || math.IsNaN(f.Std) {
				t.Errorf("%s is %v ± %v", f.Key, f.Value, f.Std)
			}
			all[f.Key] = f
		}
	}
	return all
}

func demoSheet(t *testing.T) *sheet.Sheet {
	t.Helper()
	s, err := workOut("marrowdale.toml", marrowdale, trials{})
	require.NoError(t, err)
	return s
}

// Programs rely on these keys: one may be added, none may go.
func TestKeysAreStable(t *testing.T) {
	want, err := os.ReadFile("testdata/keys.txt")
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, demoSheet(t).WriteJSON(&b))
	var page struct {
		Sections []struct {
			Figures []struct{ Key, Unit string }
		}
	}
	require.NoError(t, json.Unmarshal(b.Bytes(), &page))
	has := map[string]bool{}
	for _, sec := range page.Sections {
		for _, f := range sec.Figures {
			has[strings.TrimSpace(f.Key+" "+f.Unit)] = true
		}
	}
	for _, line := range strings.Split(strings.TrimSpace(string(want)), "\n") {
		if !has[line] {
			t.Errorf("no figure %q any more", line)
		}
		delete(has, line)
	}
	for key := range has {
		t.Errorf("figure %q is new: add it to testdata/keys.txt", key)
	}
}

// The ways of finding top dead centre rest on different readings and must lie
// within their own stated uncertainties of one another.
func TestWaysAgree(t *testing.T) {
	f := figuresOf(t, demoSheet(t))
	ways := []string{"tdc.stop", "tdc.fit", "tdc.bisect", "tdc.by_eye"}
	for i, a := range ways {
		for _, b := range ways[i+1:] {
			d, u := f[a].Value-f[b].Value, math.Hypot(f[a].Std, f[b].Std)
			if !(math.Abs(d) <= 2*u) {
				t.Errorf("%s %.2f mm and %s %.2f mm differ by %.1f of their uncertainty", a, f[a].Value, b, f[b].Value, d/u)
			}
		}
	}
	// The rim figures of the ports lie evenly about the dead centres too, and
	// no way of finding top dead centre has used them.
	girth := f["rim.girth"].Value
	for _, middle := range []float64{(540+925)/2. - girth/2, (571+895)/2. - girth/2, (19 + 327) / 2.} {
		if d := middle - f["tdc.position"].Value; !(math.Abs(d) <= 2*math.Hypot(f["tdc.position"].Std, 1/math.Sqrt2)) {
			t.Errorf("ports put top dead centre at %.2f mm, %.2f mm from the rest", middle, d)
		}
	}
}

// An engine whose rule was stuck on the other way round is the same engine.
func TestFallingFiguresGiveTheSameAngles(t *testing.T) {
	want := figuresOf(t, demoSheet(t))
	var j job
	file, err := jobfile.Decode("marrowdale.toml", marrowdale, &j)
	require.NoError(t, err)
	flip := func(x units.Length) units.Length { return 1000*units.Millimetre - x }
	each := func(list lengths) {
		for i := range list {
			list[i] = flip(list[i])
		}
	}
	j.Rim.Figures = ignition.Falling
	each(j.Stop.Forward)
	each(j.Stop.Backward)
	each(j.ByEye.TurnedBackAt)
	for _, s := range j.Points.Sets {
		each(s.Forward)
		each(s.Backward)
	}
	r := j.Ports.Rim
	for _, p := range []*units.Length{r.ExhaustOpens, r.ExhaustCloses, r.TransferOpens, r.TransferCloses, r.InletOpens, r.InletCloses} {
		*p = flip(*p)
	}
	row := regexp.MustCompile(`(?m)^ *(\d+) `)
	for i := range j.Dial.Series {
		j.Dial.Series[i].Readings = row.ReplaceAllStringFunc(j.Dial.Series[i].Readings, func(s string) string {
			var mm float64
			fmt.Sscan(s, &mm)
			return fmt.Sprintf("%g ", 1000-mm)
		})
	}
	s, err := sections(file, &j, trials{})
	require.NoError(t, err)
	got := figuresOf(t, s)
	for key, w := range want {
		g, ok := got[key]
		switch {
		case !ok:
			t.Errorf("no %s with falling figures", key)
		case w.Unit == "°" || strings.HasSuffix(key, ".drop") || key == "tdc.slack":
			if !(math.Abs(g.Value-w.Value) < 1e-6) || !(math.Abs(g.Std-w.Std) < 1e-6) {
				t.Errorf("%s: %v ± %v with falling figures, %v ± %v with rising", key, g.Value, g.Std, w.Value, w.Std)
			}
		case key == "tdc.position" || key == "card.rim":
			if !(math.Abs(g.Value-(1000-w.Value)) < 1e-6) {
				t.Errorf("%s: %v with falling figures, want %v", key, g.Value, 1000-w.Value)
			}
		}
	}
}

// With all its lines in force the template is a file that is read, and it has
// every key there is.
func TestTemplate(t *testing.T) {
	var lines []string
	for _, l := range strings.Split(string(template), "\n") {
		if l == "# One engine, and what you measured on it." || strings.HasPrefix(l, "# ") && !regexp.MustCompile(`^# ([a-z_]+ = |\[|"""|rim mm|after s|\d+ {2,})`).MatchString(l) {
			continue
		}
		lines = append(lines, strings.TrimPrefix(l, "# "))
	}
	text := strings.Join(lines, "\n")
	var j job
	file, err := jobfile.Decode("template.toml", []byte(text), &j)
	if err != nil {
		t.Fatalf("%v in\n%s", err, text)
	}
	checkKeys(t, file, reflect.TypeFor[job](), "")

	var blank job
	if _, err := jobfile.Decode("template.toml", template, &blank); err != nil {
		t.Errorf("as it comes: %v", err)
	}
	if !reflect.DeepEqual(blank, job{}) {
		t.Error("as it comes, the template is not empty")
	}
}

func checkKeys(t *testing.T, file *jobfile.File, typ reflect.Type, prefix string) {
	t.Helper()
	for i := range typ.NumField() {
		f := typ.Field(i)
		key := prefix + f.Tag.Get("toml")
		inner, index := f.Type, ""
		if inner.Kind() == reflect.Slice && inner.Elem().Kind() == reflect.Struct && ours(inner.Elem()) {
			inner, index = inner.Elem(), ".0"
		}
		if inner.Kind() == reflect.Pointer {
			inner = inner.Elem()
		}
		if !file.Has(key + index) {
			t.Errorf("the template has no %s", key)
		}
		if inner.Kind() == reflect.Struct && ours(inner) {
			checkKeys(t, file, inner, key+index+".")
		}
	}
}

// ours reports whether a type is one of the examples': a table of the file, and
// not a quantity.
func ours(typ reflect.Type) bool {
	if reflect.PointerTo(typ).Implements(reflect.TypeFor[encoding.TextUnmarshaler]()) {
		return false
	}
	return typ.PkgPath() == "main" || strings.Contains(typ.PkgPath(), "/examples/")
}

// Each question that the sheet answers in figures has one that says how sure
// it is.
func TestEveryQuestionHasAnUncertainFigure(t *testing.T) {
	sure := map[int]bool{}
	s := demoSheet(t)
	for _, sec := range s.Sections {
		for _, f := range sec.Figures {
			if f.Std > 0 {
				sure[sec.Number] = true
			}
		}
	}
	for _, g := range s.Card.Groups {
		for _, l := range g.Lines {
			if strings.Contains(l.Metric, "±") {
				sure[s.Card.Number] = true
			}
		}
	}
	for n := 1; n <= 16; n++ {
		if !sure[n] {
			t.Errorf("question %d has no figure with an uncertainty", n)
		}
	}
}
