// Package geometry is the crank, the rod and the piston: where the piston is, how
// fast it moves, what volume it shuts in, when it uncovers a port, and what a
// gauge in the plug hole sees of it.
//
// # The picture
//
// A crank turns about its centre. A rod joins its pin, the crankpin, to another in
// the piston, the gudgeon pin, which can only slide along the cylinder. Draw the
// triangle of crank centre, crankpin and gudgeon pin: two of its sides, the throw r
// and the rod l, keep their length, and everything here follows from the third.
//
// The piston is not half way down when the crank has made a quarter turn: the rod
// then leans, and leaning it reaches less far up. So the piston is lower than half
// way, by about λ/2 of the throw, moves fastest a dozen degrees or so before the
// crank is square, and lingers longer at the bottom than at the top. The shorter
// the rod, the more of all this.
//
// # Symbols
//
//	r   throw, crank centre to crankpin     θ   crank angle from true top dead centre
//	S   stroke of the piston                t   crank angle from "crank up"
//	l   rod between centres                 φ   angle of the rod to the cylinder
//	e   offset of the gudgeon pin's path    x   drop of the piston from its top
//	λ   r/l                                 ω   crank speed in radians a second
//	n   l/r                                 B   bore
//
// # Signs
//
// The crank angle is 0 where the piston is highest and rises in the direction of
// rotation. A drop is never negative. Velocity and acceleration are positive
// downwards, that is, away from the head.
//
// The offset is positive when the gudgeon pin's path lies on the side of the crank
// centre that the crankpin is on a quarter turn after it points up the cylinder.
// With an offset the piston is highest not with the crank pointing up but when
// crank and rod lie in one line, which is later by arcsin(e/(l + r)), and lowest
// later than half a turn by arcsin(e/(l − r)). Everything here counts from true top
// dead centre all the same; Crank.TopLag and Crank.BottomLag give those two angles
// to whoever has to go from one way of counting to the other.
//
// Stroke is what the piston travels. With no offset it is twice the throw, with one
// it is more. Crank.WithOffset keeps the throw and Crank.WithOffsetSameStroke the
// stroke: choose by which of them was measured.
//
// # Formulas
//
// No offset, S = 2r:
//
//	x = r(1 − cos θ) + l(1 − √(1 − λ² sin² θ))
//	cos θ = (r² + y² − l²)/(2 r y),  y = r + l − x
//	v = ω r sin θ (1 + λ cos θ / √(1 − λ² sin² θ)),  sin φ = λ sin θ
//
// With an offset:
//
//	x = √((l + r)² − e²) − r cos t − √(l² − (r sin t − e)²),  t = θ + arcsin(e/(l + r))
//	S = √((l + r)² − e²) − √((l − r)² − e²)
//	sin φ = (r sin t − e)/l
//
// Two terms of the series, for teaching, as TwoTerm has them:
//
//	x ≈ r((1 − cos θ) + (λ/4)(1 − cos 2θ))
//
// Volumes and ratios:
//
//	Vs = (π/4) B² S       swept
//	(Vs + Vc)/Vc          geometric compression ratio
//	(A x + Vc)/Vc         trapped ratio, x the drop at which the cylinder is shut
//	2 S N                 mean piston speed, N turns in the unit of time
//
// The printed forms of the drop and of its inverse lose their figures near the dead
// centres, where timing is read: at a thousandth of a degree the first is out in
// the sixth figure and the second gives no number at all. The code uses half angles
// throughout and holds 1 part in 10¹² of every value, near the top of however small
// a value, and near the bottom as far as the angle or drop given holds it: half a
// turn less a millionth of a degree is not a number that keeps twelve figures of the
// millionth.
//
// # Where things are
//
//   - Crank: drop, its inverse, velocity, acceleration, rod angle, sweep, dwell.
//   - StrokeOnly: the same with the rod not known, and what that costs.
//   - TwoTerm: the textbook series and how far it is out.
//   - Cylinder, Compression: volumes and ratios; FitLeak, BuretteClearance, Chamber,
//     Hole and Squish for the clearance.
//   - Barrel, PortEvent, Window, PortArea: ports worked by the piston.
//   - InletSpeeds: gas in the inlet bore, counted four ways.
//   - PlugHole, DomedGauge: a dial gauge in a hole that leans.
//
// # Cautions
//
// Turn an engine by hand, plug out and ignition off, when measuring in it. Work with
// thin oil and not with petrol, and away from flame. A raised compression ratio
// loads an old crank, rod and casting as nobody designed them to be loaded; before
// skimming make sure of the clearance of piston, valves and head at the new height.
//
// # Sources
//
// The relations are those of every text on the theory of machines (Khurmi & Gupta,
// Theory of Machines, ch. 15; Norton, Design of Machinery, ch. 4 and 7) and of
// internal combustion engines (Heywood, Internal Combustion Engine Fundamentals,
// 1988, ch. 2; Blair, Design and Simulation of Two-Stroke Engines, 1996, ch. 1);
// chapters from memory. The forms used in the code were derived for it and are held
// to figures of 50 digits, to the printed examples of a dozen books, and to
// numerical derivatives. What is a rule of the trade and nothing more says so where
// it stands.
package geometry
