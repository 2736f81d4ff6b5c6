package fits_test

import (
	"fmt"

	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// splitCollar is the collar of a carburettor that goes on a spigot.
func splitCollar() (fits.Clamp, error) {
	brass, err := fits.FindMaterial("brass", "")
	if err != nil {
		return fits.Clamp{}, err
	}
	return fits.NewClamp(fits.Collar{Bore: 25.5 * units.Millimetre, Wall: 2.5 * units.Millimetre,
		Length: 22 * units.Millimetre, Slot: 1.6 * units.Millimetre, Material: brass})
}

func ExampleNewClamp() {
	c, err := splitCollar()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("the slot takes up %.2f mm of clearance and is shut on %.2f mm\n", c.Reach().Millimetres(), c.Least().Millimetres())
	// Output: the slot takes up 0.51 mm of clearance and is shut on 24.99 mm
}

func ExampleClamp() {
	c, err := splitCollar()
	if err != nil {
		fmt.Println(err)
		return
	}
	margin, err := c.Margin(25.4 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f times to yield\n", margin)
	// Output: 9.3 times to yield
}

func ExampleCollar() {
	_, err := fits.NewClamp(fits.Collar{Bore: 25 * units.Millimetre, Wall: 10 * units.Millimetre,
		Length: 20 * units.Millimetre, Slot: 1.6 * units.Millimetre})
	fmt.Println(err)
	// Output: wall 10 mm: want a third of the bore of 25 mm at most, since the sums are for a thin ring: outside the domain
}

func ExampleClosing() {
	c, err := splitCollar()
	if err != nil {
		fmt.Println(err)
		return
	}
	on, err := c.On(25.4 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("slot closes %.2f mm, %.2f mm left; %.0f N bend the collar, %.0f MPa\n",
		on.Slot.Millimetres(), on.SlotLeft.Millimetres(), on.Force.Newtons(), on.Bending.Megapascals())
	// Output: slot closes 0.31 mm, 1.29 mm left; 38 N bend the collar, 47 MPa
}

func ExampleSlotNeeded() {
	g, err := fits.SlotNeeded(25.5*units.Millimetre, 25.4*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", g.Millimetres())
	// Output: 0.31 mm
}

func ExampleClampHold() {
	h, err := fits.ClampHold(800*units.Newton, 25*units.Millimetre, 0.1)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f N m sure, %.1f N m if it fits exactly\n", h.TorqueLow.NewtonMetres(), h.TorqueHigh.NewtonMetres())
	// Output: 2.0 N m sure, 3.1 N m if it fits exactly
}

func ExampleHold() {
	h, err := fits.ClampHold(800*units.Newton, 25*units.Millimetre, 0.1)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N to %.0f N along\n", h.AxialLow.Newtons(), h.AxialHigh.Newtons())
	// Output: 160 N to 251 N along
}

func ExampleBandForce() {
	fmt.Printf("%.0f N\n", fits.BandForce(800*units.Newton).Newtons())
	// Output: 1600 N
}

func ExampleHingedForce() {
	f, err := fits.HingedForce(800*units.Newton, 20*units.Millimetre, 16*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f N\n", f.Newtons())
	// Output: 1800 N
}

func ExampleGapChange() {
	fmt.Printf("%.1f thou\n", fits.GapChange(4.8*units.Thou).Thou())
	// Output: 15.1 thou
}

// The gap of a ring below its travel, where the bore was measured, and at the top.
func ExampleBoreByRing() {
	feeler := 0.02 * units.Millimetre
	below := fits.RingPlace{
		Gap:  units.WithStd(0.014*units.Inch, feeler),
		Bore: units.WithStd(2.8756*units.Inch, 0.5*units.Thou),
	}
	top, err := fits.BoreByRing(units.WithStd(0.029*units.Inch, feeler), below)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.4f in, u %.1f thou\n", top.Value.Inches(), top.Std.Thou())
	// Output: 2.8804 in, u 0.6 thou
}

func ExampleRingPlace() {
	feeler := 0.02 * units.Millimetre
	narrow := fits.RingPlace{Gap: units.WithStd(0.014*units.Inch, feeler), Bore: units.WithStd(2.8756*units.Inch, 0.5*units.Thou)}
	wide := fits.RingPlace{Gap: units.WithStd(0.029*units.Inch, feeler), Bore: units.WithStd(2.8804*units.Inch, 0.5*units.Thou)}
	c, err := fits.CheckGaps(wide, narrow)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f thou by the ring, %.1f thou by the gauge, agree: %v\n", c.ByGap.Value.Thou(), c.ByBore.Value.Thou(), c.Agree)
	// Output: 4.8 thou by the ring, 4.8 thou by the gauge, agree: true
}

func ExampleGapCheck() {
	exact := func(inches units.Length) units.Reading[units.Length] {
		return units.WithStd(inches*units.Inch, 0.3*units.Thou)
	}
	c, err := fits.CheckGaps(fits.RingPlace{Gap: exact(0.040), Bore: exact(2.880)}, fits.RingPlace{Gap: exact(0.014), Bore: exact(2.876)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("agree:", c.Agree)
	// Output: agree: false
}

func ExampleCheckGaps() {
	r := func(inches, thou units.Length) units.Reading[units.Length] {
		return units.WithStd(inches*units.Inch, thou*units.Thou)
	}
	c, err := fits.CheckGaps(fits.RingPlace{Gap: r(0.029, 1), Bore: r(2.8805, 0.5)}, fits.RingPlace{Gap: r(0.014, 1), Bore: r(2.8755, 0.5)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("wider by %.1f thou, u %.1f thou\n", c.ByGap.Value.Thou(), c.ByGap.Std.Thou())
	// Output: wider by 4.8 thou, u 0.5 thou
}
