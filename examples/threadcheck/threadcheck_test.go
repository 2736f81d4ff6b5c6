package main

import (
	"flag"
	"regexp"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"threadcheck": main})
}

// The program as a user runs it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{Dir: "testdata/script"})
}

// With all its lines in force the template is a file that is read and worked
// out as far as it makes sense, and it has every key there is.
func TestTemplate(t *testing.T) {
	var lines []string
	for _, l := range strings.Split(string(template), "\n") {
		if regexp.MustCompile(`^# ([a-z_]+ = |\[)`).MatchString(l) {
			lines = append(lines, strings.TrimPrefix(l, "# "))
		}
	}
	var j job
	f, err := jobfile.Decode("template.toml", []byte(strings.Join(lines, "\n")), &j)
	if err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"name", "where", "part", "hand", "crest", "crest_good_to", "pitches", "length", "length_good_to", "leaf", "leaf_on",
		"effective", "root", "angle", "taper", "wear", "origin", "engaged", "goes_with", "remark", "torn", "deep", "to_edge", "metal", "metal_strength", "stud_grade"} {
		if !f.Has("thread.0." + key) {
			t.Errorf("the template has no %s", key)
		}
	}
	var blank job
	if _, err := jobfile.Decode("template.toml", template, &blank); err != nil || len(blank.Thread) != 0 {
		t.Errorf("as it comes: %v, %v", err, blank)
	}
}

// One thread by flags is the same thread as by a file.
func TestFlagsAndFileAgree(t *testing.T) {
	var readings single
	flags := flag.NewFlagSet("threadcheck", flag.ContinueOnError)
	readings.add(flags)
	if err := flags.Parse([]string{"-part", "bolt", "-crest", "0.2472 in (u 0.0003 in)", "-pitches", "10", "-length", "9.78 mm (u 0.05 mm)"}); err != nil {
		t.Fatal(err)
	}
	one, err := readings.answer()
	if err != nil {
		t.Fatal(err)
	}
	all, err := workOut("marrowdale.toml", marrowdale)
	if err != nil {
		t.Fatal(err)
	}
	got, want := one.threads[0].Found.Candidates, all.threads[1].Found.Candidates
	if len(got) != len(want) || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("%v by flags, %v by the file", got, want)
	}
}
