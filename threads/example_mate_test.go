package threads_test

import (
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// An old 1/2 in Whitworth bolt in a modern American nut.
func ExamplePair() {
	bolt, err := threads.Find("1/2 BSW")
	if err != nil {
		fmt.Println(err)
		return
	}
	nut, err := threads.Find("1/2 UNC")
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := threads.NewPair(bolt, nut)
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := p.Mate(0.44 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v after %.1f to %.1f turns\n", m.Outcome, m.Tight, m.Loose)
	for _, h := range m.Harms {
		fmt.Println(h)
	}
	// Output:
	// starts, then binds after 0.0 to 1.4 turns
	// the flanks wedge and pick up; forced, the softer thread strips, most often the tapped hole, which is the part without a spare
	// the load bears on one edge of the flanks: it feels right by hand and yields when tightened
}

func ExampleNewPair() {
	bolt, err := threads.Find("1/4-26 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	nut, err := threads.Find("1/4-26 BSC")
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := threads.NewPair(bolt, nut)
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := p.Mate(6 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m.Outcome)
	fmt.Println(m.Harms[0])
	// Output:
	// runs free
	// the load bears on one edge of the flanks: it feels right by hand and yields when tightened
}

// A difference of pitch acts as if the bolt were larger.
func ExampleMating() {
	bolt, err := threads.Find("5/16-26 BSC")
	if err != nil {
		fmt.Println(err)
		return
	}
	nut, err := threads.Find("M8x1")
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := threads.NewPair(bolt, nut)
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := p.Mate(8 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("lead error %.3f mm, as if larger by %.2f mm; %.0f %% of the depth meets\n",
		m.LeadError.Millimetres(), m.Growth.Millimetres(), 100*m.Overlap)
	// Output: lead error 0.185 mm, as if larger by 0.32 mm; 94 % of the depth meets
}

func ExampleOutcome() {
	th, err := threads.Find("M8")
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := threads.NewPair(th, th)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, nut := range []threads.Hand{threads.RightHand, threads.LeftHand} {
		m, err := p.WithHands(threads.RightHand, nut).Mate(8 * units.Millimetre)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(m.Outcome)
	}
	// Output:
	// runs free
	// wrong hand
}

func ExampleHarm() {
	fmt.Println(threads.Splitting)
	// Output: a taper thread run into a parallel hole splits the boss
}
