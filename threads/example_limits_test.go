package threads_test

import (
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

func ExampleThread_BoltLimits() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	l, err := t.BoltLimits("6g")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("major     %.3f to %.3f mm\n", l.Major.Min.Millimetres(), l.Major.Max.Millimetres())
	fmt.Printf("effective %.3f to %.3f mm\n", l.Effective.Min.Millimetres(), l.Effective.Max.Millimetres())
	// Output:
	// major     7.760 to 7.972 mm
	// effective 7.042 to 7.160 mm
}

func ExampleThread_NutLimits() {
	t, err := threads.Find("1/4-20 UNC")
	if err != nil {
		fmt.Println(err)
		return
	}
	l, err := t.NutLimits("2B")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("effective %.4f to %.4f in\n", l.Effective.Min.Inches(), l.Effective.Max.Inches())
	fmt.Printf("bore      %.4f to %.4f in\n", l.Minor.Min.Inches(), l.Minor.Max.Inches())
	// Output:
	// effective 0.2175 to 0.2224 in
	// bore      0.1960 to 0.2070 in
}

// A standard that does not have the class says so.
func ExampleThread_BoltLimits_refused() {
	t, err := threads.Find("12 BA")
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = t.BoltLimits("close")
	fmt.Println(err)
	// Output: class close of 12 BA: it ends at 10 BA; want normal: outside the domain
}

// A long engagement in a casting wants more tolerance.
func ExampleThread_LimitsOver() {
	t, err := threads.Find("1/2 BSW")
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, over := range []units.Length{units.Inch / 2, units.Inch} {
		l, err := t.LimitsOver(threads.Bolt, "medium", over)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("over %.1f in: tolerance of the effective diameter %.4f in, from memory: %t\n", over.Inches(), l.Effective.Width().Inches(), l.FromMemory)
	}
	// Output:
	// over 0.5 in: tolerance of the effective diameter 0.0052 in, from memory: true
	// over 1.0 in: tolerance of the effective diameter 0.0060 in, from memory: true
}

func ExampleLimits() {
	t, err := threads.Find("2 BA")
	if err != nil {
		fmt.Println(err)
		return
	}
	l, err := t.BoltLimits("close")
	if err != nil {
		fmt.Println(err)
		return
	}
	major, effective, minor := l.GoGauge()
	fmt.Printf("go ring: %.3f, %.3f, %.3f mm\n", major.Millimetres(), effective.Millimetres(), minor.Millimetres())
	fmt.Printf("no-go ring: effective %.3f mm\n", l.NoGoGauge().Millimetres())
	// Output:
	// go ring: 4.700, 4.215, 3.730 mm
	// no-go ring: effective 4.130 mm
}

func ExamplePart() {
	t, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	l := t.BasicLimits(threads.Nut)
	fmt.Println(l.Part, l.Class, l.Major)
	// Output: nut basic 8 mm or more
}

func ExampleRange() {
	bore := threads.Range{Min: 6.647 * units.Millimetre, Max: 6.912 * units.Millimetre}
	fmt.Println(bore.Contains(6.8*units.Millimetre), bore)
	// Output: true 6.647 mm to 6.912 mm
}

// A stud measured over wires, with what the measurement is worth.
func ExampleVerdict() {
	effective := threads.Range{Min: 7.042 * units.Millimetre, Max: 7.160 * units.Millimetre}
	for _, mm := range []units.Length{7.10, 7.05, 7.00} {
		fmt.Println(effective.Judge(units.WithStd(mm*units.Millimetre, 0.006*units.Millimetre)))
	}
	// Output:
	// good
	// doubtful
	// too small
}

func ExampleThread_NormalEngagement() {
	t, err := threads.Find("M10")
	if err != nil {
		fmt.Println(err)
		return
	}
	n, err := t.NormalEngagement()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f to %.1f mm\n", n.Min.Millimetres(), n.Max.Millimetres())
	// Output: 4.7 to 14.2 mm
}
