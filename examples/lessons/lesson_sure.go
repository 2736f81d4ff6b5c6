package main

import (
	"fmt"
	"math"

	"example.com/benchsums/examples/internal/picture"
	"example.com/benchsums/examples/internal/sheet"
	"example.com/benchsums/ignition"
	"example.com/benchsums/units"
)

// An arcRead is an advance as it is read from a rim, with how well each thing was read.
type arcRead struct {
	across, mark          units.Length // rim, and mark from top dead centre
	uAcross, uMark, uZero units.Length // standard uncertainties of rim, mark, and top dead centre
}

// howGood is the standard uncertainty of the advance; the slip adds the shares
// straight.
func howGood(r arcRead) (pair[units.Angle], units.Result[units.Angle], error) {
	var fail error
	across, mark, zero := r.across, r.mark, 0*units.Millimetre
	res, err := units.Propagate(func() units.Angle {
		var rim ignition.Rim
		rim, fail = ignition.NewRim(across)
		return rim.AngleOfArc(mark - zero)
	}, units.Vary("the rim", &across, r.uAcross), units.Vary("the mark", &mark, r.uMark), units.Vary("top dead centre", &zero, r.uZero), units.StopOn(&fail))
	sum := 0.0
	for _, c := range res.Budget {
		sum += math.Sqrt(c.Share)
	}
	return pair[units.Angle]{right: res.Std, slip: res.Std * units.Angle(sum)}, res, err
}

func howSure() (lesson, error) {
	const m = units.Millimetre
	r := arcRead{400 * m, 90 * m, 0.5 * m, 0.5 * m, 0.3 * m}
	w, res, err := howGood(r)
	r2 := arcRead{300 * m, 70 * m, 1 * m, 0.4 * m, 0.3 * m}
	x, _, err2 := howGood(r2)
	rim, err3 := ignition.NewRim(r.across)
	if err := first(err, err2, err3); err != nil {
		return lesson{Key: "sure"}, err
	}
	perMM := rim.AngleOfArc(m)
	share := func(i int) string { return deg(res.Std*units.Angle(math.Sqrt(res.Budget[i].Share)), 3) }
	byName := map[string]int{}
	for i, c := range res.Budget {
		byName[c.Name] = i
	}
	l := lesson{
		Key: "sure", Title: "How sure is it?",
		Purpose: []string{"A figure without its plus-or-minus is half a figure. This sum carries what each reading is good for through to the answer, and shows which reading to take better."},
		Derivation: []line{
			{"Write u for the standard uncertainty of a reading: roughly, two readings in three fall within it. A rule read to the nearest step d has u = d/√12; a limit of ± a that is surely kept has u = a/√3; n repeats have u = s/√n.", ""},
			{"Each reading moves the answer by some amount for each unit of itself, its sensitivity c. Its contribution is c u. For an angle from an arc, θ = 2s/D in radians:", "for the arc  u(s)·2/D      for the diameter  θ·u(D)/D"},
			{"Readings that have nothing to do with one another are not all wrong the same way at the same time. Their contributions add as the sides of a right-angled triangle do:", "u² = (c₁u₁)² + (c₂u₂)² + (c₃u₃)²"},
			{"So the largest rules. One that is a third of the largest adds only a twentieth to the whole, and is not worth improving. For an interval that holds the value 95 times in 100 take twice u.", ""},
		},
		Worked: worked{
			Given: fmt.Sprintf("A mark %s along the rim from top dead centre, rim %s across. Standard uncertainties: mark %s, top dead centre %s, diameter %s.", mm(r.mark, 0), mm(r.across, 0), mm(r.uMark, 1), mm(r.uZero, 1), mm(r.uAcross, 1)),
			Steps: []sheet.Step{
				{What: "The angle", Formula: "θ = 2s/D", Result: deg(res.Value, 2)},
				{What: "The mark", Formula: "u(s)·2/D", Numbers: mm(r.uMark, 1) + " at " + deg(perMM, 4) + " to the millimetre", Result: share(byName["the mark"])},
				{What: "Top dead centre, the other end of the arc", Numbers: mm(r.uZero, 1) + " at " + deg(perMM, 4) + " to the millimetre", Result: share(byName["top dead centre"])},
				{What: "The diameter", Formula: "θ·u(D)/D", Numbers: fmt.Sprintf("%s × %s / %s", deg(res.Value, 2), mm(r.uAcross, 1), mm(r.across, 0)), Result: share(byName["the rim"])},
				{What: "Together, as squares", Result: deg(res.Std, 3)},
				{What: "As it is written down, with twice u", Result: fmt.Sprintf("%s ± %s", deg(res.Value, 1), deg(2*res.Std, 1))},
				{What: "The reading to take better first", Result: res.Largest().Name},
			},
			Printed: []printed{{What: "the u of reading to the nearest step, in steps, is", Digits: "0.29", Source: "JCGM 100:2008, F.2.2.1 (from memory)", Got: float64(units.Resolved(10*m, m).Std / m)}},
		},
		Slip: slip{Name: "the contributions added straight",
			Why: "That would be right if every reading were wrong by its most, all in the same direction. It makes honest work look worse than it is, and hides which reading matters."},
		Exercise: exercise{Ask: []string{fmt.Sprintf("A mark stands %s along the rim from top dead centre, the rim is %s across. Standard uncertainties: mark %s, top dead centre %s, diameter %s. What is the standard uncertainty of the angle?", mm(r2.mark, 0), mm(r2.across, 0), mm(r2.uMark, 1), mm(r2.uZero, 1), mm(r2.uAcross, 0))}},
		Sources:  []string{"JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.3.7, 5.1.2, F.2.2.1."},
	}
	settle(&l, sheet.Degree, 3, w, x,
		mistake[units.Angle]{"the expanded uncertainty given, twice the standard one", "The question asks for u, and not for the interval of 2u.", 2 * x.right})
	l.picture("Contributions add like the sides of a triangle", fmt.Sprintf("A right-angled triangle: one side is the contribution of the mark, %s, the other that of top dead centre, %s, and the long side is what both together come to. It is shorter than the two laid end to end.", share(byName["the mark"]), share(byName["top dead centre"])), sureDrawing())
	return l, nil
}

func sureDrawing() string {
	d := picture.NewDrawing(120, 78)
	const x, y, a, b = 20.0, 58.0, 75.0, 45.0
	d.Path([][2]float64{{x, y}, {x + a, y}, {x + a, y - b}}, 2*picture.Heavy, picture.Solid, true)
	d.Path([][2]float64{{x + a - 4, y}, {x + a - 4, y - 4}, {x + a, y - 4}}, picture.Fine, picture.Solid, false)
	d.Text(x+a/2, y+7, 4, picture.Centre, 0, "mark: c₁u₁").Text(x+a+3, y-b/2, 4, picture.Left, 0, "TDC:").Text(x+a+3, y-b/2+6, 4, picture.Left, 0, "c₂u₂")
	d.Text(x+a/2-3, y-b/2-4, 4, picture.Centre, -math.Atan2(b, a)*180/math.Pi, "both together: u")
	return d.SVG()
}
