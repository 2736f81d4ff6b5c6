// Package units holds quantities as a workshop reads them: a value, its unit,
// and how well it was read.
//
// A rule says 152, a dial 4.42, a card 28. None of these is a length or an angle
// until its unit is said, and none is worth more than the care it was read
// with. This package keeps the three together, from the text someone types to
// the figure that is printed, and works out how sure an answer is from how
// sure its readings are.
//
// # Quantities
//
// Each kind of quantity is a type: [Length], [Angle], [Area], [Volume], [Mass],
// [Force], [Torque], [Pressure] (stress too), [Speed], [AngularSpeed],
// [Acceleration], [AngularAcceleration], [Temperature],
// [TemperatureDifference], [Stiffness], [TorsionalStiffness], [Energy],
// [Power], [MomentOfInertia], [Density], [Flow], [Expansion], [TimeArea],
// [SpecificTimeArea], and [Ratio] for pure numbers that come as text. A value is
// made by multiplying by a unit and read by asking for one, in the manner of
// [time.Duration], which is the type for time. Underneath is a float64 in the
// SI unit, radians for angles.
//
// The factors are those of the definitions, each written out whole: the inch of
// 25.4 mm, the pound of 0.45359237 kg, standard gravity of 9.80665 m/s² [3][4].
// Measures that differ between Britain and America carry the country in their
// name. The older inches stand among the constants for those who ask; they
// differ by two parts in a million, and no workshop sum should correct for
// them.
//
// Three things the types do not stop: a bare constant is taken as the SI unit
// (a Length of 28 is 28 m), two Lengths multiply to a Length, and a Temperature
// may be multiplied by two. Write the unit always, and use the methods.
//
// # Text in
//
// What people write is read: 12.7 mm, 1 3/16 in, 1-3/16", ⅜", 0.010 in,
// 10 thou, 5 ft 6 1/2 in, 28°, 28° 30′, 28d30m, 60 N mm, oz-in, lbf/in²,
// lb per sq. in., cc, cu. in., 1 1/2 pint (imp), rpm, r.p.m., min⁻¹, 20 °C. Case,
// plurals, words for symbols, dots, hyphens, superscripts and the spaces of
// word processors make no difference.
//
// What has two readings is refused and both are named: a bare number, a pint
// without its country, mil, a ton, 1,000. So are decimal commas, ranges, unknown
// units, anything left over behind the unit, and what is not finite. The error
// is a [ParseError] with the place and what to write instead; errors.Is tells
// the kinds apart by [ErrNoUnit], [ErrAmbiguous] and the others.
//
// Files should be decoded into [Reading] and not into the plain types. A TOML
// decoder puts a bare number straight into any type that is a float64
// underneath, without asking: 60 becomes 60 m. A Reading is a struct and
// refuses.
//
// # Text out
//
// String is for people, in six figures at most. Every verb of fmt prints the
// unit: %.2f of a Length is 4.42 mm. MarshalText is for machines: what it
// writes reads back to the very same value, bit for bit. What was typed in the
// usual unit comes back as typed, 60° and never 59.99999999999999°; what was
// typed in another comes back in the usual unit or in its own, whichever keeps
// it short: 1 in is 25.4 mm, and 2.54 cm stays 2.54 cm.
// [Length.Fraction] writes inches as a rule has them, with what is left over in
// thou; [Angle.DMS] writes degrees, minutes and seconds.
//
// # How well it was read
//
// The words are those of the Guide to the expression of uncertainty in
// measurement [1]:
//
//	standard uncertainty u      one standard deviation of what the value may be
//	degrees of freedom ν        how well u itself is known: n − 1 for n repeats
//	sensitivity coefficient c   how far the answer moves for one unit of an input
//	contribution c·u            how far it moves for that input's u
//	combined uncertainty        all contributions together, as squares
//	budget                      the table of contributions
//	coverage factor k           U = k·u covers a stated part, 95 % say
//	expanded uncertainty U      that ± interval
//
// A [Reading] is a value with its u and ν. Limits ± a that the value surely lies
// between, with nothing more known, make u = a/√3 ([PlusMinus]); reading to the
// nearest step d makes u = d/√12 ([Resolved]); a certificate's U makes u = U/k
// ([Expanded]); n repeats make u = s/√n with ν = n − 1 ([Repeats]). Repeats do
// not show what they all share, nor what is smaller than the step of the scale.
// A difference of two readings of one scale has the step in it twice.
//
// # What it does to an answer
//
// [Propagate] takes any function of the caller's variables and the uncertainty
// of each, and gives the answer with its uncertainty and the budget:
//
//	u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ
//
// with r the correlation of two inputs, nought unless [Correlate] says
// otherwise. [Result.Largest] is the reading to take better first. It is often
// not the one that looked worst.
//
// The law puts a straight line in place of the function. Where the function
// turns, the line is flat: a dial at top dead centre does not move for a small
// movement of the crank, and the law says that the drop is known exactly.
// Propagate sees that and takes the terms of second order (the note to 5.1.2 of
// [1]),
//
//	u² + Σᵢ Σⱼ (½ fᵢⱼ² + fᵢ fᵢⱼⱼ) uᵢ² uⱼ²,   estimate + ½ Σᵢ fᵢᵢ uᵢ²
//
// and Result.Method says so. Where a series will not do at all it says that it
// [NeedsMonteCarlo].
//
// [MonteCarlo] draws the inputs from their distributions ([Normal],
// [Rectangular], [Arcsine] and others), evaluates the function at each draw,
// and looks at the answers [2]. It needs no straight line, goes on until the
// result is stable, and gives the interval itself: the symmetric one, with as
// much left out below as above, or the shortest.
//
// For an interval from u alone, [CoverageFactor] is Student's t with the
// effective degrees of freedom of Welch and Satterthwaite ([EffectiveDoF]); it
// is for nearly normal answers. [TrapezoidFactor] is for one or two rectangles
// that outweigh the rest.
//
// # Writing it down
//
// An uncertainty is written in one figure or two and the value to the same
// place, noughts kept: 84.50 mm (u 0.29 mm). [Round] does that, once, from the
// full figures. Keep more in the working. An unknown uncertainty is not stated,
// and never ± 0.
//
// # Sources
//
//	[1] JCGM 100:2008, Evaluation of measurement data - Guide to the expression
//	    of uncertainty in measurement (GUM).
//	[2] JCGM 101:2008, Supplement 1 to the GUM - Propagation of distributions
//	    using a Monte Carlo method.
//	[3] NIST Special Publication 811, 2008 edition, Guide for the use of the
//	    International System of Units, Appendix B.
//	[4] The International System of Units, SI Brochure, 9th edition.
//	[5] EA-4/02, Evaluation of the uncertainty of measurement in calibration.
package units
