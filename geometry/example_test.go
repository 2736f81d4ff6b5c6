package geometry_test

import (
	"fmt"

	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

func ExampleCrank_Drop() {
	c, err := geometry.NewCrank(60*units.Millimetre, 110*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f mm\n", c.Drop(28*units.Degree).Millimetres())
	// Output: 4.42 mm
}

func ExampleCrank_WithOffset() {
	c, err := geometry.NewCrank(60*units.Millimetre, 130*units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err = c.WithOffset(10 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("stroke %.3f mm\n", c.Stroke().Millimetres())
	before, after, err := c.AnglesAtDrop(5 * units.Millimetre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.2f° before, %.2f° after top dead centre\n", before.Degrees(), after.Degrees())
	// Output:
	// stroke 60.188 mm
	// 30.21° before, 30.44° after top dead centre
}
