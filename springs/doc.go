// Package springs answers three questions about a spring that has to be made or
// found again: will it return the lever, will it fit, will it last?
//
// # The springs
//
// A helical torsion spring is a coil of wire slipped over a pin, with a leg at
// each end. One leg rests against the casting, the other pushes the lever. It
// should be loaded so that it winds up: the coil gets smaller and longer by a
// turn for every turn that it is wound, and it must not grip its pin (Torsion).
//
// A flat spiral is strip coiled like a watch's hairspring, the inner end in a
// slot of the arbor, the outer end clamped, pinned or hooked. As long as there is
// air between the coils it is a bent beam and nothing else (Spiral). Put into a
// barrel or a rope drum, where its coils lie on one another, it is a power spring
// (Barrel): run down, the strip lies against the wall; wound, it lies round
// the arbor; in between the coils cross over one by one.
//
// Compression and extension springs are coils of wire that is twisted, not bent
// (Compression, Extension).
//
// # Symbols
//
//	d  wire diameter           D  mean diameter of the coil     C = D/d  spring index
//	b  width of strip (axial)  t  its thickness (radial)        L  its length
//	N  active turns            N_b  turns of the body           n  turns of wind
//	M  torque                  θ  angle of wind                 k  rate
//	E  Young's modulus         G  shear modulus                 I  second moment of area
//	σ  bending stress          τ  shear stress                  S_ut tensile strength
//
// # Formulas
//
//	torsion       k = E d⁴ / (64 D N)          σ = K_i 32 M / (π d³)
//	flat spiral   k = E b t³ / (12 f L)        σ = 6 M / (b t²), twice that on a pinned end
//	in a barrel   M = π E b t³ (n − n_free) / (6 L)
//	compression   k = G d⁴ / (8 D³ N)          τ = K 8 F D / (π d³)
//
// # Constants that differ
//
// For one and the same torsion spring three rates are published: pure theory, and
// two design constants that allow for the friction of the coils, which are 5.7
// and 8.3 per cent lower. A spring here is made with one of them, named, and
// keeps to it (RateConstant). In the same way the rotation of a spiral with a
// pinned end is published with and without an increase of a quarter
// (PinnedFactor), and the stress inside a coil with factors that differ by 2 per
// cent (CurvatureRule, ShearRule). None of these is mixed with another, and a
// worked example is repeated only with the constant that it uses.
//
// # Strength
//
// Drawn wire is the stronger the thinner it is. Material.Strength gives the limits of
// the tables, and for a size between two of them those of the thicker and weaker.
// The textbook's A/dᵐ is a fit through such figures and for music wire lies above
// the lower limit at every size: it has a name of its own, FittedStrength. What
// share of the strength may be used depends on the Duty.
//
// Strip is another matter. Standards leave hardened and tempered strip a band as
// wide as 1200 to 1900 MPa, and seller and buyer agree on less. The usual hardness by
// thickness (StripC67STypical) is a guide for strip that is bought without a
// certificate.
//
// # The free state of a strip
//
// The torque of a power spring goes by how far it is wound from the shape in which it
// lies when nothing holds it. A straight strip already pulls hard as it lies in the
// barrel run down; a strip that has set, or is bought coiled, lies slack against the
// wall and begins at nothing. The two differ by a factor of two or more, so a
// FreeState has to be stated.
//
// Near run down the torque climbs steeply in the first turn or so, then follows the
// straight line, and climbs again as the coils crowd on the arbor in the last turn
// (Regime). Friction between coils takes from it in driving and adds to it in
// winding. Nobody has a figure for that, so it is an input and makes a band.
//
// # How far to trust the sums
//
// Accuracy states what published practice says. In short: commercial torsion springs
// are held to plus and minus 10 per cent; spiral and power springs, says the
// handbook, cannot be calculated accurately. Measure the original where there is
// one: 2 per cent on the thickness of strip is 6 per cent on its torque, on wire 8.
//
// # Choosing
//
// ChooseStrip and ChooseWire hold what is on offer against a room and a demand at
// both ends of the travel. They rank what works, and of each that fails they say
// the one thing that fails and by how much. BarrelGrid searches a million
// combinations of thickness, width and length in less time than it takes to press
// the key.
//
// # Cautions
//
// A wound spring stores energy, M θ / 2 where the torque rises from nothing, and lets it go
// at once. Five newton metres through one turn are 16 joules, a one kilogram hammer
// falling 1.6 m. Let a barrel down under control before its cover comes off, and
// remember that a strip pressed against the wall still holds energy when run down
// (Barrel.StrainEnergy). Wear eye protection and leather gloves and stand out of the plane of the
// coil. Coil wire at the slowest back gear and never lead it through the fingers.
// Cautions returns the texts to print beside a result, HazardOf the figure in words.
// Where local rules or the maker ask for licensed work, follow them. The sums here
// are no substitute for a trial on the bench behind a guard.
//
// # Sources
//
//   - Shigley, Mechanical Engineering Design, 8th to 11th ed., ch. 10. Equation
//     numbers from memory; examples 10-1, 10-6 and 10-8 from memory.
//   - Machinery's Handbook, 31st ed., pp. 318-344.
//   - EN 13906-1:2013, -2:2013 and -3:2014, springs; EN 10270-1 and -3, wire;
//     EN 10132-4, strip, all through secondary sources. The German foreword of EN
//     13906-3:2014 says that two of its equations were under enquiry: the closed
//     forms here do not rest on them.
//   - Wahl, Mechanical Springs, 2nd ed.; Roark's formulas; the design handbook of the Spring
//     Manufacturers Institute (from memory).
//   - Bhandari, Design of Machine Elements, ch. 10, and worked examples named where
//     they are checked.
//
// Where a doc comment says "derived here" there is no print behind it; the tests hold
// it against an independent computation.
package springs
