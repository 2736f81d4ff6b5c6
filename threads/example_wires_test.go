package threads_test

import (
	"fmt"

	"example.com/benchsums/threads"
	"example.com/benchsums/units"
)

func ExampleForm_BestWire() {
	fmt.Printf("%.5f in\n", threads.WhitworthForm.BestWire(units.Inch/26).Inches())
	// Output: 0.02168 in
}

// A 1/4 BSF stud over three wires.
func ExampleWires() {
	t, err := threads.Find("1/4 BSF")
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := t.Wires(0.022 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("full size measures %.4f in\n", w.Over(t.Effective()).Inches())
	e, err := w.Effective(0.2570 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("0.2570 in over wires: effective diameter %.4f in\n", e.Inches())
	// Output:
	// full size measures 0.2581 in
	// 0.2570 in over wires: effective diameter 0.2242 in
}

// Jones, Turning and Boring, p. 88: 1 1/2-6 United States Standard, wires of
// 0.140 in; 1.670 would show an oversize thread.
func ExampleWires_PlainOver() {
	t, err := threads.New(threads.SellersForm, 1.5*units.Inch, units.Inch/6)
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := t.Wires(0.140 * units.Inch)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.4f in\n", w.PlainOver(t.Effective()).Inches())
	// Output: 1.6674 in
}

// What a micrometer, wires and a pitch that are each a little unsure make of an
// effective diameter.
func ExampleWireReadings() {
	t, err := threads.Find("M10")
	if err != nil {
		fmt.Println(err)
		return
	}
	res, err := t.EffectiveFrom(threads.WireReadings{
		Over:  units.WithStd(10.302*units.Millimetre, 0.004*units.Millimetre),
		Wire:  units.WithStd(0.866*units.Millimetre, 0.001*units.Millimetre),
		Flank: 0.2 * units.Degree,
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f mm, standard uncertainty %.3f mm\n", res.Value.Millimetres(), res.Std.Millimetres())
	fmt.Println("take better:", res.Largest().Name)
	// Output:
	// 9.001 mm, standard uncertainty 0.005 mm
	// take better: over the wires
}
