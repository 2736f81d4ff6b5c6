package threads_test

import (
	"encoding/json"
	"errors"
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

func ExampleFind() {
	for _, text := range []string{"1/4 BSF", "2BA", "M8 x 1", "14 mm plug", "1⅛-9 BSF"} {
		t, err := threads.Find(text)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%-12s %-14v major %.3f mm, core %.3f mm, %.5g threads per inch\n",
			text, t, t.Major().Millimetres(), t.Minor().Millimetres(), t.TPI())
	}
	// Output:
	// 1/4 BSF      1/4-26 BSF     major 6.350 mm, core 5.099 mm, 26 threads per inch
	// 2BA          2 BA           major 4.700 mm, core 3.730 mm, 31.358 threads per inch
	// M8 x 1       M8x1           major 8.000 mm, core 6.917 mm, 25.4 threads per inch
	// 14 mm plug   M14x1.25 plug  major 14.000 mm, core 12.647 mm, 20.32 threads per inch
	// 1⅛-9 BSF     1 1/8-9 BSF    major 28.575 mm, core 24.961 mm, 9 threads per inch
}

// What can be read in two ways is not guessed.
func ExampleFind_refused() {
	for _, text := range []string{"1/4-20", "M8x1.2", "M8x1,25", "M8x1.25-6g"} {
		_, err := threads.Find(text)
		fmt.Println(err)
	}
	// Output:
	// "1/4-20": which of 1/4-20 UNC, 1/4-20 BSW
	// "M8x1.2": no such thread; near it: M8x1.25, M8x1, Loew 8x1.2
	// "M8x1,25": a comma can part decimals or thousands; write a point (character 5)
	// "M8x1.25-6g": want no more than a size and a pitch; a tolerance class goes to BoltLimits or NutLimits (character 9)
}

func ExampleAmbiguousError() {
	_, err := threads.Find("1/4-26")
	var ambiguous *threads.AmbiguousError
	if errors.As(err, &ambiguous) {
		for _, t := range ambiguous.Candidates {
			fmt.Printf("%v, %s, core %.3f mm\n", t, t.Series().Name(), t.Minor().Millimetres())
		}
	}
	// Output:
	// 1/4-26 BSF, British Standard Fine, core 5.099 mm
	// 1/4-26 BSC, British Standard Cycle, core 5.309 mm
}

func ExampleUnknownError() {
	_, err := threads.Find("5/16-23 BSF")
	var unknown *threads.UnknownError
	if errors.As(err, &unknown) && len(unknown.Near) > 0 {
		fmt.Println("nearest:", unknown.Near[0])
	}
	// Output: nearest: 5/16-22 BSF
}

func ExampleThread() {
	t, err := threads.Find("1/4 CEI")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v: %s, %v form, %.0f°\n", t, t.Series().Name(), t.Form(), t.Form().Angle().Degrees())
	fmt.Printf("major %.4f in, effective %.4f in, minor %.4f in\n", t.Major().Inches(), t.Effective().Inches(), t.Minor().Inches())
	fmt.Println(t.Source())
	// Output:
	// 0.25-26 CEI: Cycle Engineers' Institute, British Standard Cycle form, 60°
	// major 0.2500 in, effective 0.2295 in, minor 0.2090 in
	// Cycle Engineers' Institute, 1902: tradeclassicbikes.co.uk list
}

// A thread in a file of readings.
func ExampleThread_UnmarshalText() {
	var hole struct {
		Thread threads.Thread `json:"thread"`
	}
	for _, file := range []string{`{"thread": "14 mm plug"}`, `{"thread": "3/8-16"}`} {
		if err := json.Unmarshal([]byte(file), &hole); err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%v, bore %.2f mm\n", hole.Thread, hole.Thread.Minor().Millimetres())
	}
	// Output:
	// M14x1.25 plug, bore 12.65 mm
	// "3/8-16": which of 3/8-16 UNC, 3/8-16 BSW
}

// A size that is only remembered says so.
func ExampleThread_FromMemory() {
	for _, text := range []string{"9/32 BSF", "1/4 BSF"} {
		t, err := threads.Find(text)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v: %v\n", t, t.Confidence())
	}
	// Output:
	// 9/32-26 BSF: from memory
	// 1/4-26 BSF: two sources or more
}

func ExampleConfidence() {
	n := map[threads.Confidence]int{}
	for t := range threads.All() {
		n[t.Confidence()]++
	}
	for _, c := range []threads.Confidence{threads.TwoSources, threads.OneSource, threads.FromMemory} {
		fmt.Printf("%v: %d\n", c, n[c])
	}
	// Output:
	// two sources or more: 306
	// one source: 134
	// from memory: 97
}

func ExampleThread_Note() {
	t, err := threads.Find("1.37-24 CEI")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(t.Note())
	// Output: sold as 1 3/8 x 24; the core of 1.326 in that lists print fits 1.370
}

// Brass 26 is the Whitworth form, so 1/4 brass is 1/4 BSF by another name, and
// not the cycle thread.
func ExampleThread_Same() {
	brass, err1 := threads.Find("1/4 brass")
	bsf, err2 := threads.Find("1/4 BSF")
	cycle, err3 := threads.Find("1/4 BSC")
	if err := errors.Join(err1, err2, err3); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(brass.Same(bsf), brass.Same(cycle))
	// Output: true false
}

// The gauge plane of a half-inch taper pipe thread.
func ExampleThread_GaugeLength() {
	t, err := threads.Find("R 1/2")
	if err != nil {
		fmt.Println(err)
		return
	}
	l, _ := t.GaugeLength()
	fmt.Printf("%.3f mm at %.1f mm from the end, growing 1 in %.0f\n", t.Major().Millimetres(), l.Millimetres(), 1/t.Taper())
	// Output: 20.955 mm at 8.2 mm from the end, growing 1 in 16
}

// A thread of no series: 13 mm with 20 threads per inch, Whitworth form.
func ExampleNew() {
	t, err := threads.New(threads.WhitworthForm, 13*units.Millimetre, units.Inch/20)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v: core %.2f mm\n", t, t.Minor().Millimetres())
	// Output: 13 mm x 1.27 mm Whitworth: core 11.37 mm
}

// All sizes of 26 threads per inch between 6 and 7 mm, whatever they are called.
func ExampleAll() {
	for t := range threads.All() {
		if t.Major() > 6*units.Millimetre && t.Major() < 7*units.Millimetre && t.TPI() > 25.9 && t.TPI() < 26.1 {
			fmt.Printf("%-12v core %.3f mm\n", t, t.Minor().Millimetres())
		}
	}
	// Output:
	// 1/4-26 BSF   core 5.099 mm
	// 1/4-26 BSC   core 5.309 mm
	// 0.25-26 CEI  core 5.309 mm
	// 0.266-26 CEI core 5.716 mm
	// 1/4-26 brass core 5.099 mm
}

func ExampleAllSeries() {
	n := 0
	for s := range threads.AllSeries() {
		if s.Form() == threads.WhitworthForm {
			n += s.Len()
			fmt.Println(s.Name())
		}
	}
	fmt.Println(n, "sizes")
	// Output:
	// British Standard Whitworth
	// British Standard Fine
	// cycle, 20 threads per inch, Whitworth form
	// British brass
	// model engineer
	// British Standard Pipe, parallel
	// British Standard Pipe, taper
	// 141 sizes
}

func ExampleSeries() {
	for t := range threads.BA.All() {
		if t.Major() > 4*units.Millimetre {
			fmt.Printf("%v %.2f x %.2f mm\n", t, t.Major().Millimetres(), t.Pitch().Millimetres())
		}
	}
	// Output:
	// 0 BA 6.00 x 1.00 mm
	// 1 BA 5.30 x 0.90 mm
	// 2 BA 4.70 x 0.81 mm
	// 3 BA 4.10 x 0.73 mm
}

// The depths of one pitch in three forms.
func ExampleForm() {
	pitch := units.Inch / 20
	for _, f := range []threads.Form{threads.UnifiedForm, threads.WhitworthForm, threads.CycleForm} {
		fmt.Printf("%-22v %.1f°, %.4f in deep\n", f, f.Angle().Degrees(), f.Depth(pitch).Inches())
	}
	// Output:
	// Unified                60.0°, 0.0271 in deep
	// Whitworth              55.0°, 0.0320 in deep
	// British Standard Cycle 60.0°, 0.0266 in deep
}

func ExampleShape() {
	for _, f := range []threads.Form{threads.ISOForm, threads.WhitworthForm} {
		shape, size := f.Crest(units.Inch / 20)
		fmt.Printf("%v crest: %v, %.3f mm\n", f, shape, size.Millimetres())
	}
	// Output:
	// ISO metric crest: flat, 0.159 mm
	// Whitworth crest: rounded, 0.174 mm
}
