package threads_test

import (
	"fmt"
	"slices"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

// A crankcase bolt: 0.2472 in over the crests by micrometer, ten threads in
// 9.78 mm by vernier.
func ExampleIdentify() {
	pitch, err := threads.PitchOver(10, units.WithStd(9.78*units.Millimetre, 0.05*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	found, err := threads.Identify(threads.Readings{
		Crest: units.WithStd(0.2472*units.Inch, 0.0003*units.Inch),
		Pitch: pitch,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range found.Candidates {
		fmt.Printf("%.0f %% %v\n", 100*c.Probability, c.Names())
	}
	if p, ok := found.Parting(); ok {
		fmt.Println(p)
	}
	// Output:
	// 50 % [1/4-26 BSF 1/4-26 brass]
	// 50 % [1/4-26 BSC 0.25-26 CEI]
	// flank angle: 55.0° for 1/4-26 BSF, 60.0° for 1/4-26 BSC, to 1.1°
}

// A plug hole: its bore, and eight threads of a wax.
func ExampleReadings() {
	pitch, err := threads.PitchOver(8, units.WithStd(11.28*units.Millimetre, 0.02*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	found, err := threads.Identify(threads.Readings{
		Part:  threads.Nut,
		Crest: units.WithStd(20.765*units.Millimetre, 0.025*units.Millimetre),
		Pitch: pitch,
		Wear:  0.1 * units.Millimetre,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	best := found.Candidates[0]
	fmt.Printf("%v, sure %v: bore %.2f mm over the minor, pitch %+.4f mm\n",
		best.Thread(), found.Decided(0.95), best.Short.Millimetres(), best.Pitch.Millimetres())
	// Output: 7/8-18 plug, sure true: bore 0.07 mm over the minor, pitch -0.0011 mm
}

func ExampleIdentification() {
	found, err := threads.Identify(threads.Readings{
		Crest: units.WithStd(4.66*units.Millimetre, 0.01*units.Millimetre),
		Pitch: units.WithStd(0.81*units.Millimetre, 0.01*units.Millimetre),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range found.Within(0.98) {
		fmt.Printf("%v %.2f\n", c.Thread(), c.Probability)
	}
	fmt.Printf("of no table %.3f\n", found.Unlisted)
	// Output:
	// 2 BA 0.44
	// 3/16-32 BSF 0.24
	// 3/16-32 BSC 0.24
	// #10-32 UNF 0.07
	// of no table 0.000
}

func ExampleCandidate() {
	found, err := threads.Identify(threads.Readings{
		Crest: units.WithStd(7.85*units.Millimetre, 0.01*units.Millimetre),
		Pitch: units.WithStd(1.154*units.Millimetre, 0.005*units.Millimetre),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	c := found.Candidates[0]
	fmt.Printf("%v: %.3f mm under nominal, %.1f of its tolerance\n", c.Thread(), c.Short.Millimetres(), c.Tolerances)
	// Output: 5/16-22 BSF: 0.088 mm under nominal, 0.4 of its tolerance
}

// Only British fine threads are asked about.
func ExampleNewIdentifier() {
	id, err := threads.NewIdentifier(threads.BSF.All())
	if err != nil {
		fmt.Println(err)
		return
	}
	found, err := id.Identify(threads.Readings{Crest: units.WithStd(9.43*units.Millimetre, 0.01*units.Millimetre)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v %.2f\n", found.Candidates[0].Thread(), found.Candidates[0].Probability)
	// Output: 3/8-20 BSF 1.00
}

// One thread more than the tables have: a maker's own.
func ExampleIdentifier() {
	own, err := threads.New(threads.WhitworthForm, 0.36*units.Inch, threads.TPI(18))
	if err != nil {
		fmt.Println(err)
		return
	}
	all := append(slices.Collect(threads.All()), own)
	id, err := threads.NewIdentifier(slices.Values(all))
	if err != nil {
		fmt.Println(err)
		return
	}
	found, err := id.Identify(threads.Readings{
		Crest: units.WithStd(0.356*units.Inch, 0.0005*units.Inch),
		Pitch: units.WithStd(threads.TPI(18), 0.005*units.Millimetre),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(found.Candidates[0].Thread())
	// Output: 9.144 mm x 1.41111 mm Whitworth
}

func ExamplePitchOver() {
	p, err := threads.PitchOver(20, units.WithStd(19.56*units.Millimetre, 0.05*units.Millimetre))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p)
	// Output: 0.9780 mm (u 0.0025 mm)
}

func ExamplePitchByLeaf() {
	p, err := threads.PitchByLeaf(threads.TPI(26), 8)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p)
	// Output: 0.977 mm (u 0.006 mm)
}

// The same nameless terminal on a British machine and on a continental one.
func ExampleNewPrior() {
	r := threads.Readings{
		Crest: units.WithStd(3.52*units.Millimetre, 0.01*units.Millimetre),
		Pitch: units.WithStd(0.64*units.Millimetre, 0.02*units.Millimetre),
	}
	for _, from := range []threads.Origin{threads.British, threads.Continental} {
		prior, err := threads.NewPrior(from, 1920, 1930)
		if err != nil {
			fmt.Println(err)
			return
		}
		r.Prior = prior
		found, err := threads.Identify(r)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v: %v %.2f\n", from, found.Candidates[0].Thread(), found.Candidates[0].Probability)
	}
	// Output:
	// British: 4 BA 0.90
	// continental: 4 BA 0.46
}

// A machine known to be screwed in BSF throughout.
func ExamplePrior() {
	p, err := threads.Prior{}.With(threads.BSF, 20)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("BSF %.0f, BSW %.0f\n", p.Weight(threads.BSF), p.Weight(threads.BSW))
	// Output: BSF 20, BSW 1
}

func ExampleOrigin() {
	fmt.Println(threads.British, threads.American, threads.Continental)
	// Output: British American continental
}

func ExampleHand() {
	found, err := threads.Identify(threads.Readings{
		Crest: units.WithStd(0.8735*units.Inch, 0.0003*units.Inch),
		Pitch: units.WithStd(1.271*units.Millimetre, 0.005*units.Millimetre),
		Hand:  threads.LeftHand,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v, %v: check the hand before applying force\n", found.Candidates[0].Thread(), found.Hand)
	// Output: 7/8-20 UNEF, left hand: check the hand before applying force
}

func ExampleTaperSeen() {
	r := threads.Readings{
		Crest: units.WithStd(13.119*units.Millimetre, 0.01*units.Millimetre),
		Pitch: units.WithStd(1.337*units.Millimetre, 0.005*units.Millimetre),
	}
	for _, seen := range []threads.TaperSeen{threads.TaperNotLooked, threads.Parallel, threads.Tapered} {
		r.Taper = seen
		found, err := threads.Identify(r)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%v: %v %.2f\n", seen, found.Candidates[0].Thread(), found.Candidates[0].Probability)
	}
	// Output:
	// not looked at: G 1/4 0.80
	// parallel: G 1/4 1.00
	// tapered: R 1/4 1.00
}

func ExampleParting() {
	bsf, err := threads.Find("5/16 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	unf, err := threads.Find("5/16 UNF")
	if err != nil {
		fmt.Println(err)
		return
	}
	p, ok := threads.PartingOf(bsf, unf, threads.Bolt)
	fmt.Println(ok, p.By, p.Threads, p.Decides)
	// Output: true length over threads 3 true
}

func ExamplePartingOf() {
	for _, two := range [][2]string{{"0 BA", "M6"}, {"M8x1", "5/16-26 BSC"}, {"1/4 BSP", "R 1/4"}, {"M8", "SI 8x1.25"}} {
		a, err := threads.Find(two[0])
		if err != nil {
			fmt.Println(err)
			continue
		}
		b, err := threads.Find(two[1])
		if err != nil {
			fmt.Println(err)
			continue
		}
		if p, ok := threads.PartingOf(a, b, threads.Bolt); ok {
			fmt.Println(p)
		}
	}
	// Output:
	// flank angle: 47.5° for 0 BA, 60.0° for M6x1, to 3.1°
	// length over 9 threads: 9.00 mm for M8x1, 8.79 mm for 5/16-26 BSC, to 0.05 mm
	// lay a rule along the crests: one of G 1/4 and R 1/4 tapers 1 in 16
	// diameter at the root: 6.45 mm for M8x1.25, 6.18 mm for SI 8x1.25, to 0.030 mm; it may leave them undecided
}

func ExampleMeasurement() {
	for m := threads.ByPitch; m <= threads.ByAngle; m++ {
		fmt.Println(m)
	}
	// Output:
	// length over threads
	// diameter over the crests
	// taper
	// effective diameter
	// diameter at the root
	// flank angle
}
