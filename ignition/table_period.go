package ignition

import (
	"example.com/benchsums/geometry"
	"example.com/benchsums/units"
)

// A Practice is a timing as a source gives it for one engine or one sort of
// engine. It holds what was printed; what was not printed is 0.
type Practice struct {
	Engine      string
	Kind        Kind
	Running     Running
	Least, Most units.Angle        // before top dead centre, where printed in degrees
	Drop        units.Length       // of the piston before top dead centre, where printed so
	Stroke      units.Length       // with the drop, from memory
	Slow, Fast  units.AngularSpeed // speeds it holds for, where printed
	Confidence  string             // "printed", or what is from memory or at second hand
	Source      string
}

// Period practice, in the order it was found. Degrees before top dead centre;
// "about top dead centre" and "just after" stand as 0. Speeds in rev/min where
// the source gives them.
var practices = [...]Practice{
	{Engine: "AWO 425, 250 cc, 1950s, full advance", Kind: OverheadValve, Least: 38 * units.Degree, Most: 38 * units.Degree, Drop: 8.8 * units.Millimetre, Stroke: 68 * units.Millimetre,
		Confidence: "printed; stroke from memory", Source: "AWO 425 operating instructions, section 5.21"},
	{Engine: "AWO 425, 250 cc, 1950s, static", Kind: OverheadValve, Running: AtStart, Least: 10 * units.Degree, Most: 10 * units.Degree, Drop: 0.65 * units.Millimetre, Stroke: 68 * units.Millimetre,
		Confidence: "printed; stroke from memory", Source: "AWO 425 operating instructions, section 5.21"},
	{Engine: "Fichtel & Sachs 505 moped", Kind: SmallTwoStroke, Least: 25 * units.Degree, Most: 28 * units.Degree,
		Confidence: "printed", Source: "Sachs 505 repair instructions, ignition setting page"},
	{Engine: "J.A.P. small industrial, Wico A magneto", Kind: IndustrialEngine, Least: 25 * units.Degree, Most: 25 * units.Degree,
		Confidence: "printed", Source: "J.A.P. service instructions, p. 18"},
	{Engine: "J.A.P. small industrial, impulse in action below about 165 rev/min, just after top dead centre", Kind: IndustrialEngine, Running: AtStart, Fast: 165 * units.RevolutionPerMinute,
		Confidence: "printed", Source: "J.A.P. service instructions, p. 18"},
	{Engine: "Hercules and Economy, hit-and-miss, 1910s-30s, run position, by size", Kind: FarmEngine, Least: 20 * units.Degree, Most: 25 * units.Degree,
		Confidence: "printed, at second hand", Source: "Hercules Engine News (G. Karch), Gas Engine Magazine, April 1999"},
	{Engine: "Hercules and Economy, start position, about top dead centre", Kind: FarmEngine, Running: AtStart,
		Confidence: "printed, at second hand", Source: "Hercules Engine News (G. Karch), Gas Engine Magazine, April 1999"},
	{Engine: "Hercules and Economy kept at show speed, 3° to 4° for each 100 rev/min", Kind: FarmEngine, Running: ShowIdle, Least: 3 * units.Degree, Most: 8 * units.Degree,
		Slow: 100 * units.RevolutionPerMinute, Fast: 200 * units.RevolutionPerMinute,
		Confidence: "printed, at second hand", Source: "Hercules Engine News (G. Karch), Gas Engine Magazine, March 1995 and April 1999"},
	{Engine: "Jumbo, 8° for each 100 rev/min: 28° at 350, 40° at 500", Kind: FarmEngine, Least: 28 * units.Degree, Most: 40 * units.Degree,
		Slow: 350 * units.RevolutionPerMinute, Fast: 500 * units.RevolutionPerMinute,
		Confidence: "printed, at second hand", Source: "maker's literature in Hercules Engine News (G. Karch), Gas Engine Magazine, February 1995"},
	{Engine: "Racine-Sattley, 15° for the 15 hp up to 35° for the 1 hp", Kind: FarmEngine, Least: 15 * units.Degree, Most: 35 * units.Degree,
		Confidence: "printed, at second hand", Source: "maker's literature in Hercules Engine News (G. Karch), Gas Engine Magazine, February 1995"},
	{Engine: "BSA M20, 500 cc, 1937-55, full advance 7/16 in", Kind: SideValve, Drop: 0.4375 * units.Inch, Stroke: 112 * units.Millimetre,
		Confidence: "owners' pages; stroke from memory, rod unknown", Source: "owners' pages, wdbsa.nl, two of them"},
	{Engine: "Panther M100, 600 cc, pre-war, 19/32 in", Kind: OverheadValve, Drop: 0.59375 * units.Inch, Stroke: 100 * units.Millimetre,
		Confidence: "owner's page; stroke from memory, rod unknown", Source: "owner's page, drewgrant.info"},
	{Engine: "Velocette MAC, automatic advance, static, 12° on premium petrol", Kind: OverheadValve, Running: AtStart, Least: 0, Most: 12 * units.Degree,
		Confidence: "printed", Source: "MAC rigid-frame service manual"},
	{Engine: "Kohler K361, 1960s on", Kind: IndustrialEngine, Least: 20 * units.Degree, Most: 20 * units.Degree,
		Confidence: "printed", Source: "Kohler K361 manual"},
	{Engine: "Vespa small-frame, 1960s on", Kind: SmallTwoStroke, Least: 17 * units.Degree, Most: 24 * units.Degree,
		Confidence: "printed", Source: "table of smallframes.com"},
	{Engine: "Dixie magneto, lever full retard, 1/16 in before the end of compression", Kind: AeroAndCar, Running: AtStart, Drop: 0.0625 * units.Inch,
		Confidence: "printed; stroke not given", Source: "Page, Aviation Engines (1917)"},
	{Engine: "example engine at 1200 rev/min, about 1/4 in before the end of compression", Kind: EarlyStationary, Drop: 0.25 * units.Inch, Slow: 1200 * units.RevolutionPerMinute, Fast: 1200 * units.RevolutionPerMinute,
		Confidence: "printed; stroke not given", Source: "Whitman, Tractor Principles (about 1920)"},
	{Engine: "slow gas engines about 1905, starting slightly after dead centre", Kind: EarlyStationary, Running: AtStart,
		Confidence: "printed", Source: "Mathot, Gas Engines and Producer-Gas Plants (1905)"},
	{Engine: "Matchless and AJS singles, 39° = 1/2 in", Kind: OverheadValve, Least: 39 * units.Degree, Most: 39 * units.Degree, Drop: 0.5 * units.Inch, Stroke: 93 * units.Millimetre,
		Confidence: "from memory", Source: "from memory"},
	{Engine: "BSA A10 twin, 34° = 11/32 in", Kind: OverheadValve, Least: 34 * units.Degree, Most: 34 * units.Degree, Drop: 0.34375 * units.Inch, Stroke: 84 * units.Millimetre,
		Confidence: "from memory", Source: "from memory"},
}

// PracticeTable returns the timings that were found in print or are remembered,
// each with its source and how sure it is.
func PracticeTable() []Practice { return append([]Practice(nil), practices[:]...) }

// Advance returns the least and the greatest advance the row stands for. Where
// it was printed as a drop alone that is the spread of [geometry.UsualRods] on
// the stroke; ok is false where there is no stroke either.
func (p Practice) Advance() (least, most units.Angle, ok bool) {
	if p.Least != 0 || p.Most != 0 || p.Drop == 0 {
		return p.Least, p.Most, true
	}
	s, err := geometry.NewStrokeOnly(p.Stroke, geometry.UsualRods())
	if err != nil {
		return 0, 0, false
	}
	a, err := s.AngleAtDrop(p.Drop)
	return a.Least, a.Most, err == nil
}
