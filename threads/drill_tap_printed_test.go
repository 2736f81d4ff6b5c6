package threads

import (
	"math"
	"strconv"
	"testing"

	"example.com/benchsums/internal/figures"
	"example.com/benchsums/units"
)

// A chart names a drill for each thread; some say which part of the full depth
// it leaves. Where a drill was chosen for a heading of the chart, the figure is
// only as near as the next drill, so the heading is held to 6 points.
type printedTap struct {
	thread, drill, percent string
}

// American chart with columns of 75 and 50 %.
var tapChart = [...]printedTap{
	{"#0-80 UNF", "3/64", "75"},
	{"#0-80 UNF", "#55", "50"},
	{"#1-64 UNC", "#53", "75"},
	{"#1-64 UNC", "1/16", "50"},
	{"#1-72 UNF", "#53", "75"},
	{"#1-72 UNF", "#52", "50"},
	{"#2-56 UNC", "#50", "75"},
	{"#2-56 UNC", "#49", "50"},
	{"#2-64 UNF", "#50", "75"},
	{"#2-64 UNF", "#48", "50"},
	{"#3-48 UNC", "#47", "75"},
	{"#3-48 UNC", "#44", "50"},
	{"#3-56 UNF", "#45", "75"},
	{"#3-56 UNF", "#43", "50"},
	{"#4-40 UNC", "#43", "75"},
	{"#4-40 UNC", "#41", "50"},
	{"#4-48 UNF", "#42", "75"},
	{"#4-48 UNF", "#40", "50"},
	{"#5-40 UNC", "#38", "75"},
	{"#5-40 UNC", "7/64", "50"},
	{"#5-44 UNF", "#37", "75"},
	{"#5-44 UNF", "#35", "50"},
	{"#6-32 UNC", "#36", "75"},
	{"#6-32 UNC", "#32", "50"},
	{"#8-32 UNC", "#29", "75"},
	{"#8-32 UNC", "#27", "50"},
	{"#8-36 UNF", "#29", "75"},
	{"#8-36 UNF", "#26", "50"},
	{"#10-24 UNC", "#25", "75"},
	{"#10-24 UNC", "#20", "50"},
	{"#10-32 UNF", "#21", "75"},
	{"#10-32 UNF", "#18", "50"},
	{"#12-24 UNC", "#16", "75"},
	{"#12-24 UNC", "#12", "50"},
	{"#12-28 UNF", "#14", "75"},
	{"#12-28 UNF", "#10", "50"},
	{"#12-32 UNEF", "#13", "75"},
	{"#12-32 UNEF", "#9", "50"},
	{"1/4-20 UNC", "#7", "75"},
	{"1/4-20 UNC", "7/32", "50"},
	{"1/4-28 UNF", "#3", "75"},
	{"1/4-28 UNF", "#1", "50"},
	{"1/4-32 UNEF", "7/32", "75"},
	{"1/4-32 UNEF", "#1", "50"},
	{"5/16-18 UNC", "F", "75"},
	{"5/16-18 UNC", "J", "50"},
	{"5/16-32 UNEF", "9/32", "75"},
	{"5/16-32 UNEF", "L", "50"},
	{"3/8-16 UNC", "5/16", "75"},
	{"3/8-16 UNC", "Q", "50"},
	{"3/8-24 UNF", "Q", "75"},
	{"3/8-24 UNF", "S", "50"},
	{"3/8-32 UNEF", "11/32", "75"},
	{"3/8-32 UNEF", "T", "50"},
	{"7/16-20 UNF", "25/64", "75"},
	{"7/16-20 UNF", "13/32", "50"},
	{"7/16-28 UNEF", "Y", "75"},
	{"7/16-28 UNEF", "Z", "50"},
	{"1/2-13 UNC", "27/64", "75"},
	{"1/2-13 UNC", "29/64", "50"},
	{"1/2-20 UNF", "29/64", "75"},
	{"1/2-20 UNF", "15/32", "50"},
	{"1/2-28 UNEF", "15/32", "75"},
	{"1/2-28 UNEF", "15/32", "50"},
	{"9/16-12 UNC", "31/64", "75"},
	{"9/16-12 UNC", "33/64", "50"},
	{"9/16-24 UNEF", "33/64", "75"},
	{"9/16-24 UNEF", "17/32", "50"},
	{"5/8-11 UNC", "17/32", "75"},
	{"5/8-11 UNC", "9/16", "50"},
	{"5/8-18 UNF", "37/64", "75"},
	{"5/8-18 UNF", "19/32", "50"},
}

// Machinery's Handbook, 31st ed., p. 2155, Table 2.
var tapHandbook = [...]printedTap{
	{"#0-80 UNF", "1.3 mm", "54"},
	{"#0-80 UNF", "1.25 mm", "68"},
	{"#0-80 UNF", "1.2 mm", "79"},
	{"#1-64 UNC", "1/16", "51"},
	{"#1-64 UNC", "1.55 mm", "59"},
	{"#1-64 UNC", "#53", "66"},
	{"#1-64 UNC", "1.5 mm", "69"},
	{"#1-64 UNC", "1.45 mm", "77"},
	{"#1-72 UNF", "#52", "53"},
	{"#1-72 UNF", "1/16", "58"},
	{"#1-72 UNF", "#53", "75"},
	{"#1-72 UNF", "1.5 mm", "77"},
	{"#2-56 UNC", "#49", "56"},
	{"#2-56 UNC", "1.8 mm", "65"},
	{"#2-56 UNC", "#50", "69"},
	{"#2-56 UNC", "1.75 mm", "74"},
	{"#2-64 UNF", "1.9 mm", "55"},
	{"#2-64 UNF", "#49", "64"},
	{"#2-64 UNF", "1.8 mm", "74"},
	{"#2-64 UNF", "#50", "79"},
	{"#3-48 UNC", "2.15 mm", "53"},
	{"#3-48 UNC", "2.1 mm", "60"},
	{"#3-48 UNC", "#45", "63"},
	{"#3-48 UNC", "#47", "76"},
	{"#3-48 UNC", "5/64", "77"},
}

// Internal metric thread chart to ASME B1.13M, tap drill column.
var tapMetricFine = [...]printedTap{
	{"M9x1.25", "7.75 mm", ""},
	{"M9x1", "8 mm", ""},
	{"M10x1.5", "8.5 mm", ""},
	{"M10x1.25", "8.75 mm", ""},
	{"M10x1", "9 mm", ""},
	{"M10x0.75", "9.25 mm", ""},
	{"M11x1", "10 mm", ""},
	{"M12x1.75", "10.25 mm", ""},
	{"M12x1.5", "10.5 mm", ""},
	{"M12x1.25", "10.75 mm", ""},
	{"M14x2", "12 mm", ""},
	{"M14x1.5", "12.5 mm", ""},
}

// Coarse metric chart of get-it-made.co.uk, ISO 2306 sizes.
var tapMetricCoarse = [...]printedTap{
	{"M1x0.25", "0.75 mm", ""},
	{"M1.1x0.25", "0.85 mm", ""},
	{"M1.2x0.25", "0.95 mm", ""},
	{"M1.4x0.3", "1.1 mm", ""},
	{"M1.6x0.35", "1.25 mm", ""},
	{"M1.8x0.35", "1.45 mm", ""},
	{"M2x0.4", "1.6 mm", ""},
	{"M2.2x0.45", "1.75 mm", ""},
	{"M2.5x0.45", "2.05 mm", ""},
	{"M3x0.5", "2.5 mm", ""},
	{"M3.5x0.6", "2.9 mm", ""},
	{"M4x0.7", "3.3 mm", ""},
	{"M4.5x0.75", "3.8 mm", ""},
	{"M5x0.8", "4.2 mm", ""},
	{"M6x1", "5 mm", ""},
	{"M7x1", "6 mm", ""},
	{"M8x1.25", "6.8 mm", ""},
	{"M9x1.25", "7.8 mm", ""},
	{"M10x1.5", "8.5 mm", ""},
	{"M12x1.75", "10.2 mm", ""},
	{"M14x2", "12 mm", ""},
	{"M16x2", "14 mm", ""},
	{"M18x2.5", "15.5 mm", ""},
	{"M20x2.5", "17.5 mm", ""},
}

// BSW drills of BS 1157 (oldengine.org, Threading Tables, chart 1).
var tapWhitworth = [...]printedTap{
	{"1/8-40 BSW", "2.55 mm", ""},
	{"3/16-24 BSW", "3.7 mm", ""},
	{"1/4-20 BSW", "5.1 mm", ""},
	{"5/16-18 BSW", "6.5 mm", ""},
	{"3/8-16 BSW", "5/16", ""},
	{"7/16-14 BSW", "9.25 mm", ""},
	{"1/2-12 BSW", "10.5 mm", ""},
	{"9/16-12 BSW", "12.1 mm", ""},
	{"5/8-11 BSW", "13.5 mm", ""},
	{"3/4-10 BSW", "41/64", ""},
	{"1-8 BSW", "22 mm", ""},
	{"1 1/8-7 BSW", "24.75 mm", ""},
	{"1 1/2-6 BSW", "33.5 mm", ""},
	{"1 3/4-5 BSW", "39 mm", ""},
	{"2-4.5 BSW", "44.5 mm", ""},
}

// BSF drills (Wikipedia, British Standard Fine).
var tapBSF = [...]printedTap{
	{"3/16-32 BSF", "5/32", ""},
	{"7/32-28 BSF", "4.6 mm", ""},
	{"1/4-26 BSF", "5.3 mm", ""},
	{"5/16-22 BSF", "17/64", ""},
	{"3/8-20 BSF", "8.2 mm", ""},
	{"7/16-18 BSF", "9.7 mm", ""},
	{"1/2-16 BSF", "7/16", ""},
	{"5/8-14 BSF", "14 mm", ""},
	{"11/16-14 BSF", "15.5 mm", ""},
	{"3/4-12 BSF", "16.75 mm", ""},
	{"7/8-11 BSF", "25/32", ""},
	{"1 1/8-9 BSF", "26.5 mm", ""},
	{"1 1/4-9 BSF", "28.75 mm", ""},
	{"1 1/2-8 BSF", "34.5 mm", ""},
}

// BA drills (britishfasteners.com).
var tapBA = [...]printedTap{
	{"4 BA", "3 mm", ""},
	{"5 BA", "2.65 mm", ""},
	{"6 BA", "2.3 mm", ""},
	{"8 BA", "1.8 mm", ""},
	{"9 BA", "1.55 mm", ""},
	{"10 BA", "1.4 mm", ""},
	{"11 BA", "1.2 mm", ""},
	{"12 BA", "1.05 mm", ""},
	{"14 BA", "0.8 mm", ""},
	{"15 BA", "0.7 mm", ""},
	{"16 BA", "0.6 mm", ""},
	{"4 BA", "#31", ""},
	{"5 BA", "#37", ""},
	{"7 BA", "#46", ""},
	{"8 BA", "#50", ""},
	{"10 BA", "#54", ""},
	{"11 BA", "#56", ""},
	{"12 BA", "#60", ""},
	{"13 BA", "#62", ""},
	{"15 BA", "#70", ""},
	{"16 BA", "#73", ""},
}

// BA drills, from memory.
var tapBAMemory = [...]printedTap{
	{"0 BA", "5.1 mm", ""},
	{"1 BA", "4.5 mm", ""},
	{"2 BA", "4 mm", ""},
	{"3 BA", "3.4 mm", ""},
}

// BA drills by the "rule of four" (royalsignals.org.uk, BHI workshop hints).
var tapRuleOfFour = [...]printedTap{
	{"2 BA", "#24", ""},
	{"4 BA", "#34", ""},
	{"6 BA", "#44", ""},
	{"8 BA", "#54", ""},
}

// British pipe drills, with the headings of the table (Wikipedia, British Standard Pipe).
var tapPipe = [...]printedTap{
	{"R 1/16", "6.6 mm", "95"},
	{"G 1/16", "6.8 mm", "80"},
	{"R 1/8", "8.6 mm", "95"},
	{"G 1/8", "8.8 mm", "80"},
	{"R 1/4", "11.5 mm", "95"},
	{"G 1/4", "11.8 mm", "80"},
	{"R 3/8", "15 mm", "95"},
	{"G 3/8", "15.25 mm", "80"},
	{"R 1/2", "18.75 mm", "95"},
	{"G 1/2", "19 mm", "80"},
	{"G 5/8", "21 mm", "80"},
	{"R 1", "30.4 mm", "95"},
	{"G 1", "30.75 mm", "80"},
	{"R 1 1/4", "39 mm", "95"},
	{"G 1 1/4", "39.5 mm", "80"},
	{"R 1 1/2", "45 mm", "95"},
	{"G 1 1/2", "45 mm", "80"},
	{"R 2", "56.75 mm", "95"},
	{"G 2", "57 mm", "80"},
}

// Column headed drill of a cycle list (tradeclassicbikes.co.uk).
var tapCycle = [...]printedTap{
	{"1/4-26 BSC", "0.209 in", ""},
	{"5/16-26 BSC", "0.272 in", ""},
	{"3/8-26 BSC", "0.334 in", ""},
	{"7/16-26 BSC", "0.397 in", ""},
	{"1/2-26 BSC", "0.459 in", ""},
	{"9/16-26 BSC", "0.522 in", ""},
	{"5/8-26 BSC", "0.584 in", ""},
	{"3/4-26 BSC", "0.709 in", ""},
	{"3/16-32 BSC", "0.154 in", ""},
	{"5/32-32 BSC", "0.123 in", ""},
	{"1/8-40 BSC", "0.098 in", ""},
	{"7/16-20 cycle", "0.384 in", ""},
	{"1/2-20 cycle", "0.447 in", ""},
	{"9/16-20 cycle", "0.509 in", ""},
}

// find returns the thread, and the drill as a hole even where it is no stocked
// size.
func (p printedTap) find(t *testing.T) (th Thread, hole units.Length) {
	t.Helper()
	th, err := Find(p.thread)
	if err != nil {
		t.Fatal(err)
	}
	if d, err := FindDrill(p.drill); err == nil {
		return th, d.Diameter()
	}
	hole, err = units.ParseLength(p.drill)
	if err != nil {
		t.Fatal(err)
	}
	return th, hole
}

// engagement returns the part of the full depth the drill leaves, in per cent.
func (p printedTap) engagement(t *testing.T, full FullThread) float64 {
	t.Helper()
	th, hole := p.find(t)
	e, err := th.Engagement(hole, full)
	if err != nil {
		t.Fatal(err)
	}
	return 100 * e
}

// The drills that miss the heading of their column by 6 points and more.
var missesHeading = map[[2]string]bool{
	{"#1-64 UNC", "#53"}: true, {"#2-56 UNC", "#50"}: true, {"#2-56 UNC", "#49"}: true,
	{"#3-56 UNF", "#43"}: true, {"#4-48 UNF", "#42"}: true, {"3/8-32 UNEF", "T"}: true,
	{"1/2-28 UNEF", "15/32"}: true, {"9/16-12 UNC", "33/64"}: true, {"9/16-24 UNEF", "33/64"}: true,
	{"9/16-24 UNEF", "17/32"}: true, {"5/8-18 UNF", "37/64"}: true, {"5/8-18 UNF", "19/32"}: true,
	{"#8-32 UNC", "#29"}: true, {"G 1 1/2", "45 mm"}: true, {"G 2", "57 mm"}: true,
}

func checkHeading(t *testing.T, p printedTap, source, reason string, full FullThread) {
	t.Helper()
	f := figures.Figure{Printed: p.percent, Source: source, Place: 12}
	if missesHeading[[2]string{p.thread, p.drill}] {
		f.Misprint(t, p.engagement(t, full), p.thread+" with "+p.drill+": "+reason)
		return
	}
	f.Check(t, p.engagement(t, full))
}

func TestTapDrillsOfTheAmericanChart(t *testing.T) {
	const source = "thread/screw drill and tap chart, docslib 4942776, columns of 75 and 50 %"
	for _, p := range tapChart {
		checkHeading(t, p, source, "the column heading, not what the drill leaves", AmericanThread)
	}
}

func TestTapDrillsOfTheHandbook(t *testing.T) {
	const source = "Machinery's Handbook, 31st ed., p. 2155, Table 2"
	for _, p := range tapHandbook {
		f := figures.Figure{Printed: p.percent, Source: source}
		got := p.engagement(t, AmericanThread)
		switch p {
		case printedTap{"#0-80 UNF", "1.25 mm", "68"}, printedTap{"#1-64 UNC", "1.45 mm", "77"}:
			f.Misprint(t, got, p.thread+" with "+p.drill+": more than a point off its own formula")
		default:
			if whole := math.Floor(got); strconv.Itoa(int(whole)) == p.percent {
				got = whole // the table cuts off as often as it rounds
			}
			f.Check(t, got)
		}
	}
}

// A metric tapping drill is the major diameter less the pitch, which is 81.5 %
// of the bolt's depth, brought to the next stocked size.
func TestTapDrillsOfMetricCharts(t *testing.T) {
	for _, c := range []struct {
		source string
		place  float64 // of the stocked sizes, mm
		taps   []printedTap
	}{
		{"internal metric thread chart to ASME B1.13M, tap drill column", 0.01, tapMetricFine[:]},
		{"get-it-made.co.uk coarse metric chart (ISO 2306 sizes)", 0.1, tapMetricCoarse[:]},
	} {
		for _, p := range c.taps {
			th, hole := p.find(t)
			byRule, err := th.HoleFor(1/(2*17*h60/24), BoltThread)
			if err != nil {
				t.Fatal(err)
			}
			figures.Near(t, p.thread+": hole by the rule", byRule.Millimetres(), (th.Major() - th.Pitch()).Millimetres(), 1e-12)
			figures.Figure{Printed: p.drill[:len(p.drill)-3], Source: c.source, Place: c.place}.Check(t, byRule.Millimetres())
			if e := p.engagement(t, BoltThread); e < 76 || e > 84 {
				t.Errorf("%s: %v leaves %.1f %%", p.thread, hole, e)
			}
		}
	}
}

// BS 1157 says that its drills leave 77 to 87 %.
func TestTapDrillsOfWhitworthAndFine(t *testing.T) {
	band := figures.Figure{Printed: "82", Place: 11, Source: "BS 1157:1975, drills for BSW and BSF leave 77 to 87 % (oldengine.org, Threading Tables, chart 1)"}
	for _, p := range tapWhitworth {
		band.Check(t, p.engagement(t, BasicThread))
	}
	band.Source = "drills of the table in Wikipedia, British Standard Fine, by the 77 to 87 % of BS 1157:1975"
	for _, p := range tapBSF {
		got := p.engagement(t, BasicThread)
		switch p.thread {
		case "1 1/8-9 BSF":
			band.Misprint(t, got, "1 1/8-9 BSF with 26.5 mm: about 25.5 mm would do")
		case "1 1/2-8 BSF":
			band.Misprint(t, got, "1 1/2-8 BSF with 34.5 mm: fuller than BS 1157 says of its drills")
		default:
			band.Check(t, got)
		}
	}
}

// Holes are drilled for 70 to 85 % of the thread (common practice, no source);
// the charts keep to it within two points.
func TestTapDrillsOfBA(t *testing.T) {
	band := figures.Figure{Printed: "77.5", Place: 18, Source: "BA tapping drills of britishfasteners.com, by the 70 to 85 % of common practice"}
	for _, p := range tapBA {
		band.Check(t, p.engagement(t, BasicThread))
	}
	band.Source = "BA tapping drills, from memory, by the 70 to 85 % of common practice"
	for _, p := range tapBAMemory {
		band.Check(t, p.engagement(t, BasicThread))
	}
	band.Source = `"rule of four" BA drills (royalsignals.org.uk, BHI workshop hints), by the 70 to 85 % of common practice`
	for _, p := range tapRuleOfFour {
		got := p.engagement(t, BasicThread)
		switch p.thread {
		case "2 BA":
			band.Place = 19
			band.Check(t, got)
		case "8 BA":
			band.Misprint(t, got, "8 BA with #54: the drill is below the core and cannot be tapped")
		default:
			band.Misprint(t, got, p.thread+" with "+p.drill+": too full to tap by hand")
		}
	}
}

func TestTapDrillsOfPipe(t *testing.T) {
	const source = "Wikipedia, British Standard Pipe: drills under the headings R 95 % and G 80 % (second list at 0685.com)"
	for _, p := range tapPipe {
		checkHeading(t, p, source, "likely the drill for the taper thread again", BasicThread)
	}
}

// What one cycle list heads as drills is the core.
func TestCycleDrillsAreTheCore(t *testing.T) {
	const source = "tradeclassicbikes.co.uk, column headed drill, which is the core diameter"
	for _, p := range tapCycle {
		th, _ := p.find(t)
		figures.Figure{Printed: p.drill[:len(p.drill)-3], Source: source}.Check(t, th.Minor().Inches())
	}
}
