package main

import (
	"fmt"
	"strings"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A boltRead is a bolt as it is measured: over the crests, and ten threads in a
// row.
type boltRead struct{ crest, ten units.Length }

// verniered is what a vernier is good for here.
const verniered = 0.05 * units.Millimetre

// whichThread names it.
func whichThread(b boltRead) (threads.Identification, error) {
	pitch, err := threads.PitchOver(10, units.WithStd(b.ten, verniered))
	if err != nil {
		return threads.Identification{}, err
	}
	return threads.Identify(threads.Readings{Crest: units.WithStd(b.crest, 0.01*units.Millimetre), Pitch: pitch})
}

func namingThreads() (lesson, error) {
	const m = units.Millimetre
	b := boltRead{7.90 * m, 9.78 * m}
	found, err := whichThread(b)
	b2 := boltRead{7.93 * m, 9.97 * m}
	found2, err2 := whichThread(b2)
	metric, err3 := threads.Find("M8x1")
	cycle, err4 := threads.Find("5/16-26 BSC")
	brass, err6 := threads.Find("5/16-26 brass")
	coarse, err5 := threads.Find("M8")
	if err := first(err, err2, err3, err4, err5, err6); err != nil {
		return lesson{Key: "threads"}, err
	}
	apart := metric.Pitch() - cycle.Pitch()
	best, best2 := found.Candidates[0], found2.Candidates[0]
	const slipName = "an inch thread taken for a metric one of nearly the same pitch, or the other way about"
	const slipWhy = "One thread, or a leaf held to four of them, cannot tell 1 mm from 26 to the inch. Over ten threads the difference is a quarter of a millimetre, which any vernier sees. A wrong one goes on two or three turns and then tears the hole."
	l := lesson{
		Key: "threads", Title: "Naming a thread",
		Purpose:  []string{"An old bolt has no name on it, and many threads look alike. The sum here is small, but it decides whether a crankcase gets torn: measure the pitch over many threads, then the diameter, and see what is left."},
		Cautions: []string{"A thread that stiffens after two or three turns by hand is a wrong one. Stop, and use no spanner. A spark plug in a wrong or worn thread is blown out of a running engine."},
		Derivation: []line{
			{"Over n threads in a row, from flank to like flank, the distance is n pitches, so an error of reading is divided by n:", "p = length / n      u(p) = u(length) / n"},
			{"Inch threads are named by how many go to the inch:", "p = 25.4 mm / threads per inch"},
			{"so 26 to the inch and one millimetre differ by", fmt.Sprintf("%s − 25.4 mm / 26 = %s", mm(metric.Pitch(), 3), mm(apart, 3))},
			{"A bolt is never larger over the crests than its major diameter, and a new one only a tenth of a millimetre or two smaller; worn, more. So of the threads with the right pitch take the one whose diameter is a little more than what you measure.", ""},
			{"What then is left, if anything, differs in the angle of the flanks. Those pairs screw into one another and do not hold.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A bolt, %s over the crests; ten threads by vernier, %s.", mm(b.crest, 2), mm(b.ten, 2)),
			Steps: []sheet.Step{
				{What: "The pitch", Formula: "length / n", Numbers: mm(b.ten, 2) + " / 10", Result: mm(b.ten/10, 3) + ", good to " + mm(verniered/10, 3)},
				{What: "In threads to the inch", Formula: "25.4 mm / p", Result: plain(float64(units.Inch/(b.ten/10)), 1)},
				{What: "What fits pitch and diameter, the likeliest first", Result: fmt.Sprintf("%v, %s %% likely", best.Thread(), plain(100*best.Probability, 0))},
				{What: "It is short of its full size by", Result: mm(best.Short, 2)},
				{What: "What to measure next, if more than one is left", Result: parting(found)},
			},
		},
		Slip: slip{Name: slipName, Why: slipWhy, Right: names(found), Wrong: metric.Designation()},
		Exercise: exercise{
			Ask:    []string{fmt.Sprintf("Another bolt is %s over the crests and its ten threads take %s. Which thread is it?", mm(b2.crest, 2), mm(b2.ten, 2))},
			Answer: name{right: best2.Thread(), wrong: []wrong{{Name: slipName, Why: slipWhy, Shown: cycle.Designation(), threads: []threads.Thread{cycle, brass}}, {Name: "the diameter looked up and the pitch not", Why: "M8 without more is M8 with its coarse pitch of 1.25 mm. Ten of those take 12.5 mm.", Shown: coarse.Designation(), threads: []threads.Thread{coarse}}}},
		},
		Sources: []string{
			"Pitch over many threads: common practice, no source.",
			"Sizes: ISO 261; BSC and CEI cycle threads, BS 811:1950 and the Cycle Engineers' Institute list. How likely: the model is in the chapter of package threads.",
		},
	}
	return l, l.threadsChart(b, b2)
}

// names lists the threads that are left.
func names(found threads.Identification) string {
	var left []string
	for _, c := range found.Within(0.95) {
		left = append(left, c.Thread().Designation())
	}
	return strings.Join(left, " or ")
}

func parting(found threads.Identification) string {
	p, ok := found.Parting()
	if !ok {
		return "nothing: it is decided"
	}
	return p.String()
}

// threadsChart draws the neighbours by pitch and diameter, and both bolts.
func (l *lesson) threadsChart(read ...boltRead) error {
	var fail error
	place := func(names ...string) (pitch, major []float64) {
		for _, n := range names {
			t, err := threads.Find(n)
			fail = first(fail, err)
			pitch, major = append(pitch, t.Pitch().Millimetres()), append(major, t.Major().Millimetres())
		}
		return pitch, major
	}
	metric, imperial := []string{"M8x1", "M8x1.25"}, []string{"5/16-26 BSC", "5/16-24 UNF", "5/16-22 BSF"}
	mp, md := place(metric...)
	ip, id := place(imperial...)
	var rp, rd []float64
	for _, r := range read {
		rp, rd = append(rp, r.ten.Millimetres()/10), append(rd, r.crest.Millimetres())
	}
	svg, err := chart(picture.NewChart("", "pitch, mm", "over the crests, mm").
		Points("metric", mp, md, picture.Square).Labels(mp, md, metric).Points("inch", ip, id, picture.Triangle).Labels(ip, id, []string{"5/16-26", "5/16-24", "5/16-22"}).
		Points("the two bolts", rp, rd, picture.Cross).From(0.95, 7.88).To(1.3, 8.02).Legend(false, false))
	l.picture("Threads near the two bolts", "Each thread is a point at its pitch and its full diameter: M8 with pitches of 1 and 1.25 mm as squares, 5/16 in with 22, 24 and 26 to the inch as triangles. The bolts, as crosses, lie a little below the thread they belong to, and close to each other.", svg)
	return first(fail, err)
}
