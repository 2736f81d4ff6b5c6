package main

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"io"
	"math"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/threads"
	"github.com/rogpeppe/go-internal/testscript"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"lessons": main})
}

// The program as a user runs it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script"})
}

func all(t *testing.T) []numbered {
	t.Helper()
	lessons, err := course()
	require.NoError(t, err)
	chosen, err := choose(lessons, "")
	require.NoError(t, err)
	return chosen
}

// broken is what a number or a verb that went wrong looks like.
var broken = regexp.MustCompile(`NaN|Inf\b|%!|[0-9]e[+-][0-9]`)

func TestEveryLessonIsWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, l := range all(t) {
		t.Run(l.Key, func(t *testing.T) {
			if seen[l.Key] || l.Key == "" || l.Title == "" {
				t.Error("the lesson needs a name of its own")
			}
			seen[l.Key] = true
			for what, n := range map[string]int{
				"purpose": len(l.Purpose), "picture": len(l.Pictures), "derivation": len(l.Derivation), "source": len(l.Sources),
				"given": len(l.Worked.Given), "steps": len(l.Worked.Steps), "slip": len(l.Slip.Name), "reason": len(l.Slip.Why),
				"right": len(l.Slip.Right), "wrong": len(l.Slip.Wrong), "question": len(l.Exercise.Ask),
			} {
				if n == 0 {
					t.Errorf("no %s", what)
				}
			}
			if l.Slip.Right == l.Slip.Wrong {
				t.Errorf("the slip makes no difference: %s", l.Slip.Right)
			}
			if !strings.Contains(strings.Join(l.Exercise.Ask, " "), "?") {
				t.Error("the exercise asks nothing")
			}
			for _, s := range l.Worked.Steps {
				if s.What == "" || s.Result == "" {
					t.Errorf("a step without words or result: %+v", s)
				}
			}
		})
	}
	require.Len(t, seen, 19)
}

// The slip shown on the worked number is the one the exercise names first.
func TestSlipIsOneAndTheSame(t *testing.T) {
	for _, l := range all(t) {
		if first := l.Exercise.Answer.Wrong()[0]; first.Name != l.Slip.Name || first.Why != l.Slip.Why {
			t.Errorf("%s: %q in the exercise, %q on the page", l.Key, first.Name, l.Slip.Name)
		}
	}
}

func TestText(t *testing.T) {
	for _, l := range all(t) {
		for what, write := range map[string]func(io.Writer, int, lesson) error{"lesson": writeLesson, "exercise": writeExercise, "solution": writeSolution} {
			var b bytes.Buffer
			require.NoError(t, write(&b, l.Number, l.lesson))
			checkText(t, l.Key+", "+what, b.String())
			if shown := strings.Contains(b.String(), l.Exercise.Answer.Right()); shown != (what == "solution") && l.Key != "threads" { // whose page names the thread as a neighbour
				t.Errorf("%s, %s: the answer is shown: %v", l.Key, what, shown)
			}
		}
	}
	var b bytes.Buffer
	lessons, err := course()
	require.NoError(t, err)
	require.NoError(t, writeList(&b, lessons))
	checkText(t, "list", b.String())
}

func checkText(t *testing.T, what, text string) {
	t.Helper()
	if m := broken.FindString(text); m != "" {
		t.Errorf("%s: %s in\n%s", what, m, text)
	}
	for _, l := range strings.Split(text, "\n") {
		if n := utf8.RuneCountInString(l); n > sheet.Width+4 {
			t.Errorf("%s: %d characters: %s", what, n, l)
		}
		if l != strings.TrimRight(l, " ") {
			t.Errorf("%s: space at the end: %q", what, l)
		}
	}
}

func TestAnswers(t *testing.T) {
	for _, l := range all(t) {
		t.Run(l.Key, func(t *testing.T) {
			a := l.Exercise.Answer
			require.True(t, verdictOn(t, a, a.Right()).agrees, "its own answer")
			for _, w := range a.Wrong() {
				v := verdictOn(t, a, w.Shown)
				require.False(t, v.agrees, "%s is what comes of %s", w.Shown, w.Name)
				require.Contains(t, v.text[0], w.Name)
				require.Contains(t, v.text, w.Why)
			}
		})
	}
}

func verdictOn(t *testing.T, a answer, text string) verdict {
	t.Helper()
	v, err := a.check(text)
	require.NoError(t, err)
	return v
}

// What agrees, what nearly does and what does not, in units of the last place
// asked for.
func TestAnswersByPlaces(t *testing.T) {
	for _, l := range all(t) {
		n, ok := l.Exercise.Answer.(number)
		if !ok {
			continue
		}
		for _, tc := range []struct {
			off    float64
			agrees bool
			says   string
		}{
			{0, true, "agrees."}, {0.45, true, "agrees."}, {-0.45, true, "agrees."},
			{1.2, true, "but for the last figure"}, {-1.2, true, "but for the last figure"},
			{2.6, false, "near, but differs"}, {200.3, false, "not the figure of a slip"},
		} {
			m := n
			m.read = func(string) (float64, error) { return n.value + tc.off*n.place(), nil }
			if v := verdictOn(t, m, "that"); v.agrees != tc.agrees || !strings.Contains(v.text[0], tc.says) {
				if hits := nearSlip(n, n.value+tc.off*n.place()); !hits {
					t.Errorf("%s, %+.2f places off: %v %q", l.Key, tc.off, v.agrees, v.text[0])
				}
			}
		}
	}
}

func nearSlip(n number, x float64) bool {
	for _, w := range n.wrong {
		if math.Abs(w.value-x) <= n.place() {
			return true
		}
	}
	return false
}

// A right answer rounded anyhow is never accused, and no two slips are taken for
// one another.
func TestSlipsStandApart(t *testing.T) {
	for _, l := range all(t) {
		n, ok := l.Exercise.Answer.(number)
		if !ok {
			continue
		}
		for i, w := range n.wrong {
			if !(math.Abs(w.value-n.value) > 4*n.place()) {
				t.Errorf("%s: %s gives %s where %s is right", l.Key, w.Name, w.Shown, n.Right())
			}
			for _, v := range n.wrong[:i] {
				if !(math.Abs(w.value-v.value) > 2*n.place()) {
					t.Errorf("%s: %s and %s give %s and %s", l.Key, w.Name, v.Name, w.Shown, v.Shown)
				}
			}
		}
	}
}

// A bare number is refused where the answer has a unit.
func TestUnitIsWanted(t *testing.T) {
	for _, l := range all(t) {
		_, err := l.Exercise.Answer.check("12.5")
		if n, ok := l.Exercise.Answer.(number); ok && n.unit == "" {
			require.NoError(t, err, l.Key)
			continue
		}
		require.Error(t, err, l.Key)
	}
}

func TestThreadAnswers(t *testing.T) {
	m8, err := threads.Find("M8x1")
	require.NoError(t, err)
	cycle, err := threads.Find("5/16-26 BSC")
	require.NoError(t, err)
	brass, err := threads.Find("5/16-26 brass")
	require.NoError(t, err)
	n := name{right: m8, wrong: []wrong{{Name: "inch for metric", Why: "count more", threads: []threads.Thread{cycle, brass}}}}
	for _, tc := range []struct {
		text   string
		agrees bool
		says   string
	}{
		{"M8x1", true, "agrees"}, {"m8 x 1", true, "agrees"}, {"5/16-26 BSC", false, "inch for metric"},
		{"5/16-26", false, "inch for metric"}, // two threads, both wrong
		{"M6", false, "1.000\u00a0mm"},
	} {
		if v := verdictOn(t, n, tc.text); v.agrees != tc.agrees || !strings.Contains(v.text[0], tc.says) {
			t.Errorf("%s: %v %q", tc.text, v.agrees, v.text)
		}
	}
	n.right = cycle // then 5/16-26 may be right and has to be said in full
	_, err = n.check("5/16-26")
	require.ErrorContains(t, err, "which of")
	_, err = n.check("a bolt")
	require.Error(t, err)
}

// Every figure that a page says is printed agrees with the library.
func TestPrintedFigures(t *testing.T) {
	count := 0
	for _, l := range all(t) {
		for _, p := range l.Worked.Printed {
			t.Run(l.Key+" "+p.Digits, func(t *testing.T) {
				figures.Figure{Printed: strings.ReplaceAll(p.Digits, "−", "-"), Source: p.Source, Place: p.Place}.Check(t, p.Got)
			})
			count++
		}
	}
	require.Greater(t, count, 12)
}

func TestHTML(t *testing.T) {
	lessons := all(t)
	var b bytes.Buffer
	require.NoError(t, writeHTML(&b, "Sums <done> & checked", lessons))
	page := b.String()
	if m := broken.FindString(regexp.MustCompile(`<svg(?s:.*?)</svg>`).ReplaceAllString(page, "")); m != "" {
		t.Errorf("%s in the page", m)
	}
	require.NotContains(t, page, "<script")
	require.NotContains(t, page, "<done>")
	for _, banned := range []string{"http://", "https://", "@import", "src="} {
		require.NotContains(t, strings.ReplaceAll(page, "http://www.w3.org/", ""), banned)
	}
	ids := unique(t, page)
	for _, l := range lessons {
		require.True(t, ids[l.Key], "no place for %s", l.Key)
	}
	for _, m := range regexp.MustCompile(`(?:href="|url\()#([^")]+)`).FindAllStringSubmatch(page, -1) {
		require.True(t, ids[m[1]], "a way to %s, which is nowhere", m[1])
	}
	wellFormed(t, page)
}

// unique returns the ids of a page and fails where one stands twice.
func unique(t *testing.T, page string) map[string]bool {
	t.Helper()
	ids := map[string]bool{}
	for _, m := range regexp.MustCompile(` id="([^"]+)"`).FindAllStringSubmatch(page, -1) {
		if ids[m[1]] {
			t.Errorf("id %s stands twice", m[1])
		}
		ids[m[1]] = true
	}
	return ids
}

// wellFormed wants every element that is opened to be closed again.
func wellFormed(t *testing.T, page string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(strings.TrimPrefix(page, "<!DOCTYPE html>")))
	d.Strict = false
	d.AutoClose = []string{"meta", "link"}
	d.Entity = xml.HTMLEntity
	for {
		_, err := d.Token()
		if err == io.EOF {
			return
		}
		require.NoError(t, err)
	}
}

func TestJSON(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, writeJSON(&b, all(t)))
	require.NotRegexp(t, broken, b.String())
	var got struct{ Lessons []jsonLesson }
	require.NoError(t, json.Unmarshal(b.Bytes(), &got))
	require.Len(t, got.Lessons, 19)
	chord := got.Lessons[1]
	require.Equal(t, "chord", chord.Key)
	require.Equal(t, 47.2, chord.Exercise.Answer)
	require.Equal(t, "°", chord.Exercise.Unit)
	require.NotEmpty(t, chord.Exercise.Slips)
	require.Equal(t, "M8x1", got.Lessons[14].Exercise.Answer)
	require.Equal(t, "N mm", got.Lessons[16].Exercise.Unit)
}
