package fits_test

import (
	"errors"
	"fmt"

	"example.com/benchsums/fits"
	"example.com/benchsums/units"
)

// The gudgeon pin and the worn bush of an old engine.
func ExampleMeasured() {
	bush := units.WithStd(0.6270*units.Inch, 0.5*units.Thou)
	pin := units.WithStd(0.6245*units.Inch, 0.3*units.Thou)
	f, err := fits.Measured(bush, pin)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f thou, u %.1f thou: %v, as %v\n", f.Clearance.Value.Thou(), f.Clearance.Std.Thou(), f.Kind, f.Fits[0])
	// Output: 2.5 thou, u 0.6 thou: clearance, as H9/e8
}

func ExampleFinding() {
	hole := units.WithStd(20.000*units.Millimetre, 5*units.Micrometre)
	shaft := units.WithStd(20.002*units.Millimetre, 5*units.Micrometre)
	f, err := fits.Measured(hole, shaft)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v, sure: %v, %.0f %% likely to interfere\n", f.Kind, f.Sure, 100*f.Interfering)
	// Output: interference, sure: false, 61 % likely to interfere
}

// A shaft for a hole that measures 23.81 mm, which is no nominal size.
func ExampleWanted() {
	want, err := fits.Wanted(23.81*units.Millimetre, "H7/g6")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f µm to %.0f µm\n", want.Min.Micrometres(), want.Max.Micrometres())
	// Output: 7 µm to 41 µm
}

func ExampleNewPart() {
	hole, err := fits.NewPart(units.WithStd(23.815*units.Millimetre, 3*units.Micrometre))
	if err != nil {
		fmt.Println(err)
		return
	}
	want, err := fits.Wanted(hole.Least, "H7/f7")
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := hole.ShaftFor(want, 2*units.Micrometre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("turn the shaft to %.3f mm to %.3f mm\n", m.Min.Millimetres(), m.Max.Millimetres())
	// Output: turn the shaft to 23.760 mm to 23.788 mm
}

// A hole in an aluminium case, not quite round, that a bush is to be pressed into
// with 1 to 4 thou of interference.
func ExamplePart() {
	hole := fits.Part{Least: 1.5003 * units.Inch, Most: 1.5008 * units.Inch, Std: 0.25 * units.Thou}
	want := fits.Clearance{Min: -4 * units.Thou, Max: -1 * units.Thou}
	bush, err := hole.ShaftFor(want, 0.2*units.Thou)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("turn the bush to %.4f in to %.4f in\n", bush.Min.Inches(), bush.Max.Inches())
	// Output: turn the bush to 1.5024 in to 1.5037 in
}

func ExampleMachining() {
	shaft := fits.Part{Least: 19.98 * units.Millimetre, Most: 20.00 * units.Millimetre, Std: 2 * units.Micrometre}
	want := fits.Clearance{Min: 10 * units.Micrometre, Max: 50 * units.Micrometre}
	hole, err := shaft.HoleFor(want, 2*units.Micrometre)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("bore to %.3f mm to %.3f mm\n", hole.Min.Millimetres(), hole.Max.Millimetres())
	for _, w := range hole.Warnings {
		fmt.Println(w)
	}
	// Output:
	// bore to 20.016 mm to 20.024 mm
	// measuring and form eat 78 % of the wanted range: 8.686 µm of 40 µm are left to machine to
	// the form eats more than the measuring: true the old part first, or accept a wider range
}

func ExampleNoRoomError() {
	hole, err := fits.NewPart(units.WithStd(25*units.Millimetre, 10*units.Micrometre))
	if err != nil {
		fmt.Println(err)
		return
	}
	_, err = hole.ShaftFor(fits.Clearance{Min: 5 * units.Micrometre, Max: 25 * units.Micrometre}, 0)
	var none *fits.NoRoomError
	if errors.As(err, &none) {
		fmt.Printf("measuring takes %.0f µm at each end: try %.3f mm in place\n", none.Guard.Micrometres(), none.Target.Millimetres())
	}
	// Output: measuring takes 20 µm at each end: try 24.985 mm in place
}

func ExampleNewSurvey() {
	s, err := fits.NewSurvey(0.3*units.Thou,
		fits.Spot{Station: "top", Way: "front-back", Size: 2.8810 * units.Inch},
		fits.Spot{Station: "top", Way: "front-back", Size: 2.8815 * units.Inch},
		fits.Spot{Station: "top", Way: "side-side", Size: 2.8795 * units.Inch},
		fits.Spot{Station: "below the rings", Way: "front-back", Size: 2.8755 * units.Inch},
		fits.Spot{Station: "below the rings", Way: "side-side", Size: 2.8755 * units.Inch})
	if err != nil {
		fmt.Println(err)
		return
	}
	wear, at, err := s.Wear("below the rings")
	if err != nil {
		fmt.Println(err)
		return
	}
	ovality, where := s.Ovality()
	fmt.Printf("worn %.2f thou at the %s, %s\n", wear.Thou(), at.Station, at.Way)
	fmt.Printf("oval by %.2f thou at the %s\n", ovality.Thou(), where)
	// Output:
	// worn 5.75 thou at the top, front-back
	// oval by 1.75 thou at the top
}

func ExampleSurvey() {
	s, err := fits.NewSurvey(3*units.Micrometre,
		fits.Spot{Station: "flange end", Way: "up", Size: 30.02 * units.Millimetre},
		fits.Spot{Station: "flange end", Way: "across", Size: 30.00 * units.Millimetre},
		fits.Spot{Station: "far end", Way: "up", Size: 30.05 * units.Millimetre})
	if err != nil {
		fmt.Println(err)
		return
	}
	taper, large, small := s.Taper()
	fmt.Printf("%.2f mm larger at the %s than at the %s\n", taper.Millimetres(), large, small)
	// Output: 0.04 mm larger at the far end than at the flange end
}

func ExampleSpot() {
	s, err := fits.NewSurvey(0, fits.Spot{Station: "middle", Way: "across", Size: 12.01 * units.Millimetre},
		fits.Spot{Station: "middle", Way: "up", Size: 12.04 * units.Millimetre})
	if err != nil {
		fmt.Println(err)
		return
	}
	most := s.Most()
	fmt.Println(most.Station, most.Way, most.Size)
	// Output: middle up 12.04 mm
}
