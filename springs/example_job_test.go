package springs_test

import (
	"fmt"

	"example.com/benchsums/springs"
	"example.com/benchsums/units"
)

func ExampleNewCompression() {
	// Shigley, Example 10-1 (from memory).
	wire, _ := springs.RoundWire(0.037 * units.Inch)
	c, err := springs.NewCompression(springs.CompressionSpec{
		Wire: wire, OutsideDiameter: 0.4375 * units.Inch, TotalTurns: 12.5, Ends: springs.SquaredEnds,
		FreeLength: 2.06 * units.Inch, Material: springs.MusicWireA228.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	f, err := c.SolidForce()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f lbf/in, solid at %.3f in under %.1f lbf, %.0f kpsi\n", c.Rate().PoundsForcePerInch(), c.SolidLength().Inches(), f.PoundsForce(), c.Stress(f).KilopoundsPerSquareInch())
	// Output: 4.12 lbf/in, solid at 0.500 in under 6.4 lbf, 145 kpsi
}

func ExampleCompression() {
	wire, _ := springs.RoundWire(2 * units.Millimetre)
	c, err := springs.NewCompression(springs.CompressionSpec{
		Wire: wire, MeanDiameter: 16 * units.Millimetre, TotalTurns: 10, Ends: springs.SquaredGround,
		FreeLength: 60 * units.Millimetre, Material: springs.PatentedSM.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	stable, err := c.StableLength(springs.BothFlat)
	if err != nil {
		fmt.Println(err)
		return
	}
	surge, err := c.SurgeSpeed()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f N/mm, stable up to %.0f mm long, surges at %.0f Hz\n", c.Rate().NewtonsPerMillimetre(), stable.Millimetres(), surge.RevolutionsPerSecond())
	// Output: 4.97 N/mm, stable up to 83 mm long, surges at 354 Hz
}

func ExampleCompressionSpec() {
	wire, _ := springs.RoundWire(2 * units.Millimetre)
	_, err := springs.NewCompression(springs.CompressionSpec{Wire: wire, MeanDiameter: 16 * units.Millimetre, TotalTurns: 2, Ends: springs.SquaredGround, Material: springs.PatentedSM.Material()})
	fmt.Println(err)
	// Output: 2 turns with squared and ground ends: want more than 2: outside the domain
}

func ExampleEndForm() {
	wire, _ := springs.RoundWire(2 * units.Millimetre)
	for _, ends := range []springs.EndForm{springs.PlainEnds, springs.PlainGround, springs.SquaredEnds, springs.SquaredGround} {
		c, err := springs.NewCompression(springs.CompressionSpec{Wire: wire, MeanDiameter: 16 * units.Millimetre, TotalTurns: 10, Ends: ends, Material: springs.PatentedSM.Material()})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%-18v %2.0f active, solid %.0f mm\n", ends, c.ActiveTurns(), c.SolidLength().Millimetres())
	}
	// Output:
	// plain              10 active, solid 22 mm
	// plain and ground    9 active, solid 20 mm
	// squared             8 active, solid 22 mm
	// squared and ground  8 active, solid 20 mm
}

func ExampleSeating() {
	fmt.Println(springs.BothFlat, "or", springs.FlatAndFree)
	// Output: both ends flat or one end free
}

func ExampleZimmerli() {
	a, m := springs.Zimmerli(false)
	fmt.Println(a, "about a mean of", m)
	// Output: 241 MPa about a mean of 379 MPa
}

func ExampleNewExtension() {
	// Shigley, Example 10-6 (from memory), in hard-drawn wire with its tabled moduli.
	wire, _ := springs.RoundWire(0.035 * units.Inch)
	x, err := springs.NewExtension(springs.ExtensionSpec{
		Wire: wire, OutsideDiameter: 0.248 * units.Inch, BodyTurns: 12.17, InitialTension: 1.19 * units.PoundForce,
		HookRadius: 0.106 * units.Inch, BendRadius: 0.089 * units.Inch, Material: springs.HardDrawnA227ClassI.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	y, err := x.Stretch(5.25 * units.PoundForce)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("stretches %.3f in; body %.0f kpsi, hook %.0f kpsi in bending\n", y.Inches(), x.Stress(5.25*units.PoundForce).KilopoundsPerSquareInch(), x.HookBending(5.25*units.PoundForce).KilopoundsPerSquareInch())
	// Output: stretches 0.227 in; body 82 kpsi, hook 157 kpsi in bending
}

func ExampleExtension() {
	wire, _ := springs.RoundWire(1 * units.Millimetre)
	x, err := springs.NewExtension(springs.ExtensionSpec{Wire: wire, MeanDiameter: 9 * units.Millimetre, BodyTurns: 20, InitialTension: 4, Material: springs.PatentedSM.Material()})
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = x.Stretch(3)
	fmt.Println(err)
	// Output: force 3 N: want 4 N or more, the initial tension that holds the coils shut: outside the domain
}

func ExampleExtensionSpec() {
	wire, _ := springs.RoundWire(1 * units.Millimetre)
	x, err := springs.NewExtension(springs.ExtensionSpec{Wire: wire, MeanDiameter: 9 * units.Millimetre, BodyTurns: 20, Material: springs.PatentedSM.Material()})
	fmt.Printf("%.2f turns work, %.0f mm inside the hooks %v\n", x.ActiveTurns(), x.FreeLength().Millimetres(), err)
	// Output: 20.40 turns work, 37 mm inside the hooks <nil>
}

func measured() springs.MeasuredCoil {
	return springs.MeasuredCoil{
		Wire:        units.WithStd(1.20*units.Millimetre, 0.01*units.Millimetre),
		Outside:     units.WithStd(11.2*units.Millimetre, 0.05*units.Millimetre),
		ActiveTurns: units.WithStd[units.Ratio](8, 0.1),
		Pulls: [2]springs.Pull{
			{Length: units.WithStd(40*units.Millimetre, 0.2*units.Millimetre), Force: units.WithStd(5*units.Newton, 0.2*units.Newton)},
			{Length: units.WithStd(25*units.Millimetre, 0.2*units.Millimetre), Force: units.WithStd(44.5*units.Newton, 0.2*units.Newton)},
		},
	}
}

// What is this spring? Its wire, by the modulus that it must have.
func ExampleMeasuredCoil() {
	m := measured()
	g, err := m.ShearModulus()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("G = %.0f GPa, u %.0f GPa\n", g.Value.Gigapascals(), g.Std.Gigapascals())
	turns, err := m.EqualNew(1.25*units.Millimetre, 10*units.Millimetre, 81.5*units.Gigapascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("equal, of 1.25 mm wire: %.1f active turns, u %.1f\n", turns.Value, turns.Std)
	// Output:
	// G = 81 GPa, u 4 GPa
	// equal, of 1.25 mm wire: 9.4 active turns, u 0.2
}

func ExamplePull() {
	p := measured().Pulls[0]
	fmt.Println(p.Force, "at", p.Length)
	// Output: 5.00 N (u 0.20 N) at 40.00 mm (u 0.20 mm)
}

func ExampleMatchShear() {
	g, err := measured().ShearModulus()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range springs.MatchShear(g, 1.2*units.Millimetre) {
		if m.Grade == springs.PatentedSM || m.Grade == springs.PhosphorBronzeB159 {
			fmt.Printf("%v: %v, off by %.0f standard uncertainties\n", m.Grade, m.Modulus, m.Off)
		}
	}
	// Output:
	// patented EN 10270-1 SM: 81500 MPa, off by 0 standard uncertainties
	// phosphor bronze B159: 41400 MPa, off by 11 standard uncertainties
}

func ExampleMatch() {
	m := springs.Match{Grade: springs.PhosphorBronzeB159, Modulus: 41.4 * units.Gigapascal, Off: 0.3}
	fmt.Printf("%v, off by %.1f\n", m.Grade, m.Off)
	// Output: phosphor bronze B159, off by 0.3
}

func measuredTorsion() springs.MeasuredTorsion {
	return springs.MeasuredTorsion{
		Wire:      units.WithStd(1.42*units.Millimetre, 0.005*units.Millimetre),
		Outside:   units.WithStd(16.6*units.Millimetre, 0.05*units.Millimetre),
		BodyTurns: units.WithStd[units.Ratio](7, 0.05),
		Arm:       units.WithStd(60*units.Millimetre, 0.5*units.Millimetre),
		Twists: [2]springs.Twist{
			{Angle: units.WithStd(30*units.Degree, units.Degree), Force: units.WithStd(1.05*units.Newton, 0.05*units.Newton)},
			{Angle: units.WithStd(120*units.Degree, units.Degree), Force: units.WithStd(4.15*units.Newton, 0.05*units.Newton)},
		},
	}
}

func ExampleMeasuredTorsion() {
	n, err := measuredTorsion().Turns(200 * units.Gigapascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f turns, u %.1f\n", n.Value, n.Std)
	// Output: 7.1 turns, u 0.2
}

func ExampleTwist() {
	t := measuredTorsion().Twists[1]
	fmt.Println(t.Force, "at", t.Angle)
	// Output: 4.15 N (u 0.05 N) at 120.0° (u 1.0°)
}

func ExampleMatchYoung() {
	e, err := measuredTorsion().YoungsModulus()
	if err != nil {
		fmt.Println(err)
		return
	}
	best := springs.MatchYoung(e, 1.42*units.Millimetre)[0]
	fmt.Printf("E = %.0f GPa, u %.0f GPa; off by %.1f from the nearest\n", e.Value.Gigapascals(), e.Std.Gigapascals(), best.Off)
	// Output: E = 198 GPa, u 7 GPa; off by 0.0 from the nearest
}

func leverSpring() springs.Torsion {
	wire, _ := springs.RoundWire(1.42 * units.Millimetre)
	s, _ := springs.NewTorsion(springs.TorsionSpec{Wire: wire, OutsideDiameter: 16.6 * units.Millimetre, BodyTurns: 7, Material: springs.MusicWireA228.Material()})
	return s
}

func ExampleNewReturn() {
	s := leverSpring()
	preload, err := springs.PreloadFor(s, 60*units.NewtonMillimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err := springs.NewReturn(s, preload, 55*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	speed, took, err := r.SnapBack(60 * units.KilogramSquareMillimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("preload %.0f°, %.0f to %.0f N mm, %.1f N on a 60 mm arm, %.0f MPa\n",
		preload.Degrees(), r.AtRest().NewtonMillimetres(), r.AtFull().NewtonMillimetres(), r.Pull(60*units.Millimetre).Newtons(), r.Stress().Megapascals())
	fmt.Printf("let go: home in %d ms at %.0f rad/s\n", took.Milliseconds(), speed.RadiansPerSecond())
	fmt.Println(r.Advice()[0])
	// Output:
	// preload 29°, 60 to 175 N mm, 2.9 N on a 60 mm arm, 668 MPa
	// let go: home in 27 ms at 61 rad/s
	// preload 0.08 turn: a quarter to half a turn holds a lever firmly, half to one and a half turns a kick-starter
}

func ExampleReturn() {
	r, err := springs.NewReturn(leverSpring(), 90*units.Degree, 55*units.Degree)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("holds %.2f J, gives %.2f J on the way home\n", r.Stored().Joules(), r.Energy().Joules())
	// Output: holds 0.38 J, gives 0.24 J on the way home
}

func ExamplePreloadFor() {
	a, err := springs.PreloadFor(leverSpring(), 60*units.NewtonMillimetre)
	fmt.Printf("%.0f° %v\n", a.Degrees(), err)
	// Output: 29° <nil>
}

func ExampleWinder() {
	var w springs.Winder = leverSpring()
	fmt.Printf("%.2f N mm/°\n", w.Rate().NewtonMillimetresPerDegree())
	// Output: 2.09 N mm/°
}

func ExampleRopeReturn() {
	b, err := springs.NewBarrel(springs.BarrelSpec{
		Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre,
		Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre,
		Free: springs.SlackOnWall(), Material: springs.StripC67STypical.Material(),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := b.Worked(3.9, 4.58)
	if err != nil {
		fmt.Println(err)
		return
	}
	h, err := springs.HazardOf(w.Stored)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(h.Text)
	// Output: 27.9 J: as much as a 1 kg hammer falling 2.8 m
}

func ExampleDrumTurns() {
	n, err := springs.DrumTurns(1150*units.Millimetre, 80*units.Millimetre)
	fmt.Printf("%.2f turns %v\n", n, err)
	// Output: 4.58 turns <nil>
}

func ExampleAnchorPin() {
	p := springs.AnchorPin{Diameter: 5 * units.Millimetre, Radius: 25 * units.Millimetre, Seat: 12 * units.Millimetre, Overhang: 4 * units.Millimetre, Edge: 6 * units.Millimetre}
	load, err := p.Load(3 * units.NewtonMetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N: pin %.1f MPa in shear, %.0f MPa in bending\n", load.Force.Newtons(), load.Shear.Megapascals(), load.Bending.Megapascals())
	fmt.Printf("hole %.0f MPa at its mouth, edge %.2f MPa\n", load.Tilt.Megapascals(), load.TearOut.Megapascals())
	// Output:
	// 120 N: pin 6.1 MPa in shear, 39 MPa in bending
	// hole 12 MPa at its mouth, edge 0.83 MPa
}

func ExampleAnchorLoad() {
	edge, err := springs.AnchorPin{Diameter: 5 * units.Millimetre, Radius: 25 * units.Millimetre, Seat: 12 * units.Millimetre}.EdgeFor(30*units.NewtonMetre, 10*units.Megapascal)
	fmt.Printf("leave %.1f mm of metal %v\n", edge.Millimetres(), err)
	// Output: leave 5.0 mm of metal <nil>
}

func ExampleSlotFor() {
	strip, _ := springs.RectangularWire(12.7*units.Millimetre, 0.6*units.Millimetre)
	s, err := springs.SlotFor(strip, 28*units.Millimetre, 6*units.Millimetre, 0.2*units.Millimetre, 1044*units.NewtonMillimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("slot %.1f x %.0f mm, %.1f mm long; bend round %.1f mm, better %.1f mm\n", s.Width.Millimetres(), s.Depth.Millimetres(), s.Length.Millimetres(), s.LeastBend.Millimetres(), s.BetterBend.Millimetres())
	// Output: slot 0.8 x 6 mm, 12.9 mm long; bend round 0.6 mm, better 1.2 mm
}

func ExampleSlot() {
	strip, _ := springs.RectangularWire(12.7*units.Millimetre, 0.6*units.Millimetre)
	s, err := springs.SlotFor(strip, 28*units.Millimetre, 6*units.Millimetre, 0.2*units.Millimetre, 1044*units.NewtonMillimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N on the tongue, %.0f MPa in its bend, %.1f MPa on the slot\n", s.Force.Newtons(), s.Tongue.Megapascals(), s.Bearing.Megapascals())
	// Output: 95 N on the tongue, 374 MPa in its bend, 1.2 MPa on the slot
}

// Three strips on offer for a rope drum.
func ExampleChooseStrip() {
	turns, err := springs.DrumTurns(1150*units.Millimetre, 80*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	room := springs.BarrelRoom{Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre, Depth: 15 * units.Millimetre}
	demand := springs.Demand{Travel: units.Angle(turns) * units.Turn, AtRest: 480 * units.NewtonMillimetre}
	m, slack := springs.StripC67STypical.Material(), springs.SlackOnWall()
	choices, err := springs.ChooseStrip(room, demand, springs.StripRules{}, []springs.StripOffer{
		{Name: "A", Width: 12.7 * units.Millimetre, Thickness: 0.60 * units.Millimetre, Length: 2400 * units.Millimetre, Free: slack, Material: m},
		{Name: "B", Width: 12.7 * units.Millimetre, Thickness: 0.50 * units.Millimetre, Length: 3200 * units.Millimetre, Free: slack, Material: m},
		{Name: "C", Width: 13.0 * units.Millimetre, Thickness: 0.80 * units.Millimetre, Length: 2000 * units.Millimetre, Free: slack, Material: m},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range choices {
		fmt.Printf("%s %s\n", c.Offer, c.Reason)
	}
	// Output:
	// A works: 3.89 turns wound on at rest, 8.47 of 10.49 turns at full, 480 N mm at rest, 1044 N mm at full, stress 1370 MPa in strip of 1490 MPa to 1650 MPa
	// C works: 1.34 turns wound on at rest, 5.91 of 8.30 turns at full, 480 N mm at rest, 2123 N mm at full, stress 1531 MPa in strip of 1460 MPa to 1620 MPa: close to the strip's own strength
	// B fails by its turns: 13.546 turns wanted, 13.282 there: 0.264 too few
}

// Wire to hand for a lever return.
func ExampleChooseWire() {
	var offers []springs.WireOffer
	for _, d := range []units.Length{1.22 * units.Millimetre, 1.42 * units.Millimetre, 1.63 * units.Millimetre} {
		wire, err := springs.RoundWire(d)
		if err != nil {
			fmt.Println(err)
			return
		}
		offers = append(offers, springs.WireOffer{Name: d.String(), Wire: wire, Material: springs.MusicWireA228.Material()})
	}
	choices, err := springs.ChooseWire(
		springs.TorsionRoom{Pin: 9.5 * units.Millimetre, Recess: 17 * units.Millimetre, Length: 12 * units.Millimetre},
		springs.Demand{Travel: 55 * units.Degree, AtRest: 60 * units.NewtonMillimetre, MostAtFull: 240 * units.NewtonMillimetre},
		springs.WireRules{Play: 0.3 * units.Millimetre}, offers)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range choices {
		fmt.Println(c.Offer, c.Reason)
	}
	// Output:
	// 1.22 mm works: 8.50 turns on 15.48 mm mean, 65° wound on at rest, 60 N mm at rest, 111 N mm at full, stress 659 MPa of 1630 MPa allowed
	// 1.42 mm works: 7.00 turns on 15.28 mm mean, 29° wound on at rest, 60 N mm at rest, 174 N mm at full, stress 665 MPa of 1592 MPa allowed
	// 1.63 mm fails by its torque at full: torque at full 290 N mm, 240 N mm allowed: 50 N mm too much
}

func ExampleChoice() {
	c := springs.Choice[springs.Barrel]{Offer: "B", Fault: springs.Fault{What: "turns", Text: "13.546 turns wanted, 13.282 there: 0.264 too few"}}
	fmt.Println(c.Offer, c.Works, c.Fault.What)
	// Output: B false turns
}

func ExampleFault() {
	f := springs.Fault{What: "turns", Text: "13.546 turns wanted, 13.282 there: 0.264 too few", Over: 0.0199}
	fmt.Printf("%s (%.1f %% over)\n", f.Text, 100*f.Over)
	// Output: 13.546 turns wanted, 13.282 there: 0.264 too few (2.0 % over)
}

func ExampleDemand() {
	d := springs.Demand{Travel: 55 * units.Degree, AtRest: 60 * units.NewtonMillimetre, MostAtFull: 50 * units.NewtonMillimetre}
	_, err := springs.ChooseWire(springs.TorsionRoom{Pin: 9.5 * units.Millimetre}, d, springs.WireRules{}, nil)
	fmt.Println(err)
	// Output: most torque at full 50 N mm: want more than 60 N mm, the least: outside the domain
}

func ExampleBarrelRoom() {
	room := springs.BarrelRoom{Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre}
	fmt.Println(room.Bore, room.Arbor)
	// Output: 92 mm 28 mm
}

func ExampleStripOffer() {
	o := springs.StripOffer{Name: "A", Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre, Free: springs.SlackOnWall(), Material: springs.StripC67STypical.Material()}
	fmt.Println(o.Name, o.Thickness, o.Free)
	// Output: A 0.6 mm slack on the wall
}

// Friction of the coils costs pre-wind.
func ExampleStripRules() {
	room := springs.BarrelRoom{Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre}
	demand := springs.Demand{Travel: 4.58 * units.Turn, AtRest: 480 * units.NewtonMillimetre}
	offer := springs.StripOffer{Name: "A", Width: 12.7 * units.Millimetre, Thickness: 0.6 * units.Millimetre, Length: 2400 * units.Millimetre, Free: springs.SlackOnWall(), Material: springs.StripC67STypical.Material()}
	for _, friction := range []float64{0, 0.1} {
		choices, err := springs.ChooseStrip(room, demand, springs.StripRules{Friction: friction}, []springs.StripOffer{offer})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.0f %%: %.2f turns\n", 100*friction, choices[0].Preload.Turns())
	}
	// Output:
	// 0 %: 3.89 turns
	// 10 %: 4.33 turns
}

func ExampleStripsByThickness() {
	room := springs.BarrelRoom{Bore: 92 * units.Millimetre, Arbor: 28 * units.Millimetre}
	for _, o := range springs.StripsByThickness(room, 12*units.Millimetre, []units.Length{0.6 * units.Millimetre, 0.8 * units.Millimetre}, springs.SlackOnWall(), springs.StripC67S.Material()) {
		fmt.Println(o.Name)
	}
	// Output:
	// 0.6 mm x 12 mm x 5027 mm
	// 0.8 mm x 12 mm x 3770 mm
}

func ExampleTorsionRoom() {
	_, err := springs.ChooseWire(springs.TorsionRoom{Length: 12 * units.Millimetre}, springs.Demand{Travel: 55 * units.Degree}, springs.WireRules{}, nil)
	fmt.Println(err)
	// Output: neither pin nor recess: want one of them, to find the diameter: outside the domain
}

func ExampleWireOffer() {
	wire, _ := springs.RoundWire(1.42 * units.Millimetre)
	o := springs.WireOffer{Name: "17 SWG", Wire: wire, Material: springs.MusicWireA228.Material()}
	fmt.Println(o.Name, o.Wire)
	// Output: 17 SWG 1.42 mm round
}

// With a preload of a quarter turn, as is common for a lever, the cable pulls harder.
func ExampleWireRules() {
	wire, _ := springs.RoundWire(1.42 * units.Millimetre)
	choices, err := springs.ChooseWire(
		springs.TorsionRoom{Pin: 9.5 * units.Millimetre, Recess: 17 * units.Millimetre, Length: 12 * units.Millimetre},
		springs.Demand{Travel: 55 * units.Degree, AtRest: 60 * units.NewtonMillimetre, MostAtFull: 240 * units.NewtonMillimetre},
		springs.WireRules{LeastPreload: 0.25 * units.Turn}, []springs.WireOffer{{Name: "17 SWG", Wire: wire, Material: springs.MusicWireA228.Material()}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(choices[0].Reason)
	// Output: fails by its torque at full: torque at full 295 N mm, 240 N mm allowed: 55 N mm too much
}

func ExampleWiresOfGauge() {
	for _, w := range springs.WiresOfGauge(springs.StandardWireGauge, 1.2*units.Millimetre, 1.65*units.Millimetre, springs.MusicWireA228.Material()) {
		fmt.Println(w.Name, w.Wire)
	}
	// Output:
	// SWG 18 1.2192 mm round
	// SWG 17 1.4224 mm round
	// SWG 16 1.6256 mm round
}

// A million combinations.
func ExampleBarrelGrid() {
	g := springs.BarrelGrid{
		Thickness: springs.Steps{From: 0.20 * units.Millimetre, By: 0.01 * units.Millimetre, Count: 100},
		Width:     springs.Steps{From: 3 * units.Millimetre, By: 0.1 * units.Millimetre, Count: 100},
		Length:    springs.Steps{From: 300 * units.Millimetre, By: 30 * units.Millimetre, Count: 100},
		Bore:      50 * units.Millimetre, Arbor: 15 * units.Millimetre, YoungsModulus: 206 * units.Gigapascal,
		Turns: 3.3, SetUp: 1.4, LeastTorque: 150 * units.NewtonMillimetre, Full: 4.7, MostStress: 1100 * units.Megapascal,
	}
	r, err := g.Search()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f x %.1f x %.0f mm takes least metal\n", g.Thickness.At(r.Thickness).Millimetres(), g.Width.At(r.Width).Millimetres(), g.Length.At(r.Length).Millimetres())
	// Output: 0.52 x 10.2 x 1440 mm takes least metal
}

func ExampleGridResult() {
	r, err := springs.BarrelGrid{}.Search()
	fmt.Println(r.Count, r.Thickness, err)
	// Output: 0 -1 thickness 0 mm: want more than 0 mm: outside the domain
}

func ExampleSteps() {
	s := springs.Steps{From: 0.2 * units.Millimetre, By: 0.1 * units.Millimetre, Count: 5}
	fmt.Println(s.At(4))
	// Output: 0.6 mm
}

func ExampleHazardOf() {
	// 5 N m through one turn, the torque rising from nothing
	h, err := springs.HazardOf(units.Energy(5 * 3.14159265))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(h.Text)
	// Output: 15.7 J: as much as a 1 kg hammer falling 1.6 m
}

func ExampleHazard() {
	h, err := springs.HazardOf(0.4 * units.Joule)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(h.Text)
	// Output: 0.4 J: as much as a 1 kg hammer falling 41 mm
}

func ExampleCautions() {
	for _, c := range springs.Cautions(springs.Coiling)[4:6] {
		fmt.Println(c)
	}
	// Output:
	// Coil at the slowest back gear or by hand. Lead the wire through a guide block, never through the fingers.
	// The free end flies when the wire is cut or let go: hold it in pliers until the tension is off.
}

func ExampleWork() {
	fmt.Println(springs.OpeningBarrel)
	// Output: opening a barrel
}

func ExampleAccuracy() {
	a, err := springs.Accuracy(springs.HelicalTorsion)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("plus and minus %.0f %%\n", 100*a.Share)
	// Output: plus and minus 10 %
}

func ExampleSoundness() {
	a, err := springs.Accuracy(springs.PowerSpring)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a.Text[:46], "("+a.Source+")")
	// Output: Motor springs cannot be calculated accurately. (Machinery's Handbook, 31st ed., p. 344)
}

func ExampleForm() {
	fmt.Println(springs.PowerSpring)
	// Output: power spring
}
