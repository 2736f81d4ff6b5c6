package main

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"example.com/benchsums/examples/internal/jobfile"
	"example.com/benchsums/examples/internal/threadsheet"
	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// What the demo engine's threads come to, worked by hand from the readings.
func TestThreadsByHand(t *testing.T) {
	_, f := worked(t)
	const (
		major = 22.225                            // 7/8 in
		p18   = 25.4 / 18                         // 18 to the inch
		bore  = (20.74 + 20.79) / 2               // over the crests
		stud  = 0.3712 * 25.4                     // T3
		torn  = 0.344 * 25.4                      // T4
		bsf   = 0.375 * 25.4                      // 3/8 BSF
		depth = 0.6403 * 25.4 / 20                // of a Whitworth thread of 20 to the inch
		d3    = 22.225 - 17./12*0.8660254037*p18  // root of an ISO or Unified bolt, H = 0.866p
		sharp = (major-21.30845)/2 + p18/2/1.1547 // (p/2) / (2 tan 30°)
	)
	for _, tc := range []struct {
		key    string
		want   float64
		within float64
	}{
		{"plug.pitch", (11.32 + 11.27 + 11.25) / 3 / 8, 1e-6},
		{"plug.tpi", 25.4 * 8 * 3 / (11.32 + 11.27 + 11.25), 1e-6},
		{"plug.crest", bore, 1e-6},
		{"plug.engagement", 100 * (major - bore) / (1.0825317547 * p18), 0.01},
		{"plug.core", d3, 1e-4},
		{"plug.depth_of_cut", sharp, 1e-3},
		{"plug.along_slide", sharp / math.Cos(29.5*math.Pi/180), 1e-3},
		{"plug.helix", math.Atan(p18/math.Pi/21.30845) * 180 / math.Pi, 1e-4},
		{"plug.wire", p18 / 2 / math.Cos(math.Pi/6), 1e-6},
		{"plug.bush_wall", (d3 - 18) / 2, 1e-4},
		{"plug.bush_area", math.Pi / 4 * (d3*d3 - 18*18), 1e-2},
		{"plug.bush_strength", 100 * (d3*d3 - 18*18) / math.Pow(18-0.938194*1.5, 2), 1e-2},
		{"plug.bush_pull", math.Pi / 4 * (d3*d3 - 18*18) * 240 / 1000, 1e-2},
		{"plug.bush_torque", 0.18 * 18 * math.Pi / 4 * (d3*d3 - 18*18) * 240 / 1000, 0.02},
		{"threads.t1_pitch", 1.154, 1e-9},
		{"threads.t10_pitch", 2.31, 1e-9},
		{"threads.t4_engagement", 100 * (bsf - torn) / (2 * depth), 0.02},
		{"threads.t4_with_stud", 100 * (stud - torn) / (2 * depth), 0.02},
		{"threads.t4_by_rule", 2*bsf + 25.4/16, 1e-6},
		{"threads.t4_edge_stepped", 0.25*25.4 - (7./16*25.4-torn)/2, 1e-6},
		{"threads.t4_edge_insert", 0.25*25.4 - (bsf+2*depth-torn)/2, 1e-3},
		{"threads.t4_edge_bush", 0.25*25.4 - (5./8*25.4-torn)/2, 1e-6},
	} {
		got, ok := f[tc.key]
		if !ok {
			t.Errorf("no figure %s", tc.key)
			continue
		}
		figures.Near(t, tc.key, got.Value, tc.want, tc.within)
	}
}

// The slips of threads, each with the figure it gives, by hand.
func TestThreadSlipsByHand(t *testing.T) {
	b, f := worked(t)
	for _, tc := range []struct {
		key  string
		got  string
		want string
	}{
		{"plug.pitch", "18.01 mm", "threads per inch for the pitch"},
		{"plug.pitch", "1.2533 mm", "crests counted in place of pitches"}, // 11.28 / 9
		{"plug.pitch", "1.6114 mm", "one pitch too few"},                  // 11.28 / 7
		{"plug.tpi", "1.410", "the pitch for threads per inch"},
		{"plug.tpi", "20.266", "crests counted"},    // 25.4 × 9 / 11.28
		{"plug.engagement", "191.2 %", "one side"},  // over one depth of thread
		{"plug.major", "22.225 mm", "nominal size"}, // 7/8 in
		{"plug.major", "21.3085 mm", "effective"},   //
		{"plug.core", "20.6974 mm", "minor diameter of the hole"},
		{"plug.depth_of_cut", "2.1386 mm", "depth on the diameter"},
		{"plug.depth_of_cut", "0.8656 mm", "form's own depth"},
		{"plug.along_slide", "0.9307 mm", "multiplying by the cosine"},
		{"plug.helix", "3.7888°", "π left out"},
		{"plug.over_wires", "21.273 mm", "wires not allowed for"},
		{"plug.bush_wall", "2.4938 mm", "both walls"},
		{"plug.bush_wall", "2.1125 mm", "outside for the core"},
		{"plug.bush_wall", "1.6542 mm", "effective diameter for the core"},
		{"threads.t1_pitch", "1.0491 mm", "crests counted"}, // 11.54 / 11
		{"threads.t2_pitch", "25.97 mm", "threads per inch for the pitch"},
		{"threads.t4_by_rule", "19.05 mm", "sixteenth"},
		{"threads.t4_edge_stepped", "3.975 mm", "whole difference"}, // 6.35 − (11.1125 − 8.7376)
		{"threads.t4_edge_stepped", "0.794 mm", "middle of the hole"},
		{"threads.t4_engagement", "96.8 %", "one side"},
		{"threads.t4_engagement", "100 %", "nominal bore"},
		{"threads.t1_pitch", "1.155 mm", "agrees"}, // as the reader rounds it
	} {
		fig, ok := f[tc.key]
		if !ok {
			t.Errorf("no figure %s", tc.key)
			continue
		}
		v, err := fig.Read(tc.got)
		if err != nil {
			t.Errorf("%s: %v", tc.key, err)
			continue
		}
		if fig.Unit == "%" && math.Abs(v) < 10 {
			t.Errorf("%s was read as %g %%", tc.got, v)
		}
		if got := b.judge(fig, tc.got, v, f); !strings.Contains(strings.ToLower(got), tc.want) {
			t.Errorf("%s %s: %s; want %q", tc.key, tc.got, got, tc.want)
		}
	}
}

// The worksheet and the program that does threads alone work from the same
// readings of the demo engine, and both read them the same.
func TestDemoThreadsAreThoseOfTheirProgram(t *testing.T) {
	b, _ := worked(t)
	if len(b.threads) != 12 {
		t.Fatalf("%d threads", len(b.threads))
	}
	named := 0
	for _, c := range b.threads {
		if c.Named() {
			named++
		}
	}
	if named != 7 {
		t.Errorf("%d have a name, want 7", named)
	}
	if got := b.plug.thread.Designation(); got != "7/8-18 plug" {
		t.Errorf("the plug hole is %s", got)
	}
}

// A looser hole has less thread left; a wider bore is refused before it has none.
func TestPlugHoleWornAway(t *testing.T) {
	for _, tc := range []struct {
		bore units.Length
		ok   bool
	}{{20.9 * units.Millimetre, true}, {21.6 * units.Millimetre, true}, {22.3 * units.Millimetre, false}} {
		var j job
		file, err := jobfile.Decode("marrowdale.toml", marrowdale, &j)
		if err != nil {
			t.Fatal(err)
		}
		j.PlugThread.Crest = lengths{tc.bore}
		j.PlugThread.Wear = 2 * units.Millimetre
		_, err = sections(file, &j, trials{})
		if (err == nil) != tc.ok {
			t.Errorf("bore %v: %v", tc.bore, err)
		}
	}
}

// Every reading of a thread has its line in the template.
func TestTemplateHasEveryReadingOfAThread(t *testing.T) {
	_, rest, ok := strings.Cut(string(template), "[[threads.thread]]")
	if !ok {
		t.Fatal("no [[threads.thread]] in the template")
	}
	rest, _, _ = strings.Cut(rest, "\n# [")
	typ := reflect.TypeFor[threadsheet.Measured]()
	for i := range typ.NumField() {
		if key := typ.Field(i).Tag.Get("toml"); !strings.Contains(rest, "\n# "+key+" = ") {
			t.Errorf("the template has no threads.thread.%s", key)
		}
	}
}
