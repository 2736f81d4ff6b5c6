// Package fits says how large to make a part so that it goes with another: by the
// limits and fits of ISO 286, to a part that is already there, warm, pressed in, or
// clamped.
//
// # Limits
//
// No part is made to a size. It is made between two limits of size, and a drawing
// gives them by a nominal size and a tolerance class: 25 H7. The letter says where the
// tolerance zone lies, the number how wide it is.
//
//	           ┌───┐ ES           hole, capitals: EI and ES are the limit deviations
//	           │H7 │
//	nominal ───┴───┴─ EI = 0 ──   the zero line, at the nominal size
//	           ┌───┐ es
//	           │g6 │
//	           └───┘ ei           shaft, small letters: ei and es
//
// Deviations are signed distances from the zero line, on the diameter. The one nearer
// the zero line is the fundamental deviation and belongs to the letter; the other
// follows from the tolerance:
//
//	A to H   ES = EI + IT      a to h   ei = es − IT
//	J to ZC  EI = ES − IT      j to zc  es = ei + IT      JS, js  ±IT/2
//
// Letters run from a, well below the line, by h, on it, to zc, well above; capitals
// mirror them. Hole and shaft mean any inner and outer feature of size. Every figure
// holds at 20 °C. Limits gives a class at a size, Grade a tolerance, IT01 to IT18.
//
// # Ranges
//
// A range is over its lower end, up to and including its upper: 3 mm belongs to "up to
// 3", 18 mm to 10-18. Grades and the letters cd to p change at the main ranges,
//
//	3 6 10 18 30 50 80 120 180 250 315 400 500 630 800 1000 1250 1600 2000 2500 3150
//
// a to c and r to zc at the fine ones between. Above 500 mm another series begins, and
// some values jump there.
//
// # What holes do differently
//
// In general the deviation of a hole is that of the shaft with its sign changed. K, M
// and N up to IT8, and P to ZC up to IT7, over 3 mm and up to 500 mm, have delta added,
// ITn less IT(n−1), so that P7/h6 gives the very clearances of H7/p6. Up to 3 mm and
// above 500 mm there is no delta, and the two are different fits. The other exceptions
// are M6 over 250 to 315 mm, −9 where the rule gives −11; N above IT8, 0 over 3 mm; and J,
// which is tabulated for IT6 to IT8 and mirrors nothing.
//
// # What the standard does not have
//
// Such a class is an UndefinedError that says why, and nothing is extrapolated:
//
//	up to 1 mm     A, B, a, b; IT14 to IT18; N above IT8
//	T and t        start over 24 mm, V and v over 14, Y and y over 18
//	K above IT8    none over 3 up to 500 mm
//	j              IT5 to IT7, and IT8 up to 3 mm; J IT6 to IT8; neither over 500 mm
//	K to ZC        none finer than IT3 over 3 mm, where delta is not tabulated
//	CD, EF, FG     none over 50 mm
//	over 500 mm    no A, B, C, no V to ZC, no IT01 and IT0
//	over 3150 mm   nothing
//
// CD, EF and FG over 10 up to 50 mm came with the edition of 2010 and stand here from
// memory, in agreement with the geometric mean of their neighbours; a Size says so in
// its Note, as it does for K above IT8 over 500 mm, printed by one source only, and for
// IT4 and IT5 over 500 mm.
//
// # Where printed sources conflict
//
//	cell                        printed        kept   why
//	U 200-225                   −256 [3]       −258   EN ISO 286-1 reprint; formula 258.1
//	X 355-400                   −650 [3]       −660   Il Calibro; formula 659.9
//	M5 18-30                    −4 [9]         −5     else the zone is 10 wide, and IT5 is 9
//	E7 315-400                  +185 [10]      +182   125 and IT7 of 57
//	f8 up to 3                  −8 [11]        −6     f6 and f7 in the same row
//	g 6-10                      −8 [12]        −5     five other tables
//	j5, j6 18-65                −3, −4, −5 [12]   −4, −5, −7   five other tables
//	IT5 over 500                30 35 .. 93 [4]   32 36 .. 96   GB/T and DIN reprints agree
//	IT4 over 800                29 34 .. 69 [4]   28 33 .. 68   GB/T for the first; 5 I
//	IT01, IT0 over 500          4.5, 6 .. [4]   none   ISO 286-1 stops them at 500 mm
//
// ISO corrected its own Part 2 in 2006: A13 315-355, E8 80-120, R10 18-30 and f9 250-315.
// The figures here are the corrected ones. JS and js keep their half micrometres;
// System.WholeJS gives the whole ones of the edition of 1988. Drawings from before the
// war may mean the ISA system, which differs up to 6 mm: System.ISA. British and American
// inch systems of the same years (Newall, BS 164, ASA B4a) are other systems and are not
// here.
//
// # Fits
//
// A fit is a hole and a shaft of one nominal size, H7/g6. Clearance is hole less shaft,
// interference is negative clearance.
//
//	least clearance = EI − es     greatest = ES − ei
//
// The kind is judged from the limits, never from the letters: H7/p6 is a transition fit
// up to 3 mm and an interference fit above. PreferredFits, Choose and Use help to pick
// one; InterferingIfUniform and InterferingIfNormal say how many pairs of a transition
// fit come out tight.
//
// # A part that is already there
//
// A worn part is at no nominal size. Take what it measures for the size and the clearance
// from the fit wanted (Wanted), and make the new part to it:
//
//	shaft for a hole:  largest = least hole − least clearance − g
//	                   smallest = greatest hole − greatest clearance + g
//
// The least and the greatest place of a worn, tapered or oval part govern, each for one
// limit; a Survey finds them. The guard g is the uncertainty of measuring both parts,
// and what it and the form take is gone from the tolerance. When they take more than
// half a Machining warns; when they take all, there is no promise to be made and the
// error says so, with the size to try.
//
// # Heat and pressing
//
// A part grows by d α ΔT, a hole as the solid that would fill it. Pair gives the
// clearance hot, and the temperatures to put together and take apart. In a press fit the
// interference δ makes a pressure
//
//	p = δ / [d ((sh + νh)/Eh + (ss − νs)/Es)]
//
// after Lamé, with sh = (ro² + R²)/(ro² − R²) for the hub and ss = (R² + ri²)/(R² −
// ri²) for the shaft. From it come the stresses, the force to push, the torque held, and
// how far a bush closes in (Press). What roughness takes from the interference is
// published as 0.8 (Rz1 + Rz2) and, lately, as half of that: both are here under their
// years. Shrunk joints held 3.66 times as much along and 3.2 times as much round as
// pressed ones of the same allowance in the tests that Jones quotes [15]
// (ShrunkAgainstPressed); the coefficients of DIN 7190 differ by about two.
//
// # Clamps and rings
//
// A slot must close by the difference of the circumferences, π times the clearance
// (Clamp). What a clamp holds is known to a factor of 1.57 only; take the low figure. A
// piston ring is a gauge for the bore: its gap opens by π times the difference of the
// diameters (BoreByRing).
//
// # Cautions
//
// Pressed and heated parts hurt people: PressCautions and HeatCautions say how, and a
// program that gives a force, an interference or a temperature shows them. A material of
// the table is a typical one; a casting of a forgotten maker may be anything. Follow the
// maker, local codes and competent advice where a life hangs on a joint.
//
// # Sources
//
//	[1]  ISO 286-1:2010 and :1988, ISO 286-2:2010; where not seen printed, from memory
//	[2]  IS 919-1:1993 (ISO 286-1:1988), Annex A
//	[3]  Narayana, Kannaiah and Venkata Reddy, Machine Drawing, Tables 15.1 to 15.4
//	[4]  GOST 25346-89, Tables 1 and 2
//	[5]  GB/T 1800.3-1998, Table 1
//	[6]  Machinery's Handbook, 31st ed., Table 6a p. 768; pp. 643-645 (shrinkage fits)
//	[7]  EN ISO 286-1, holes N to ZC, reprint on a fastener site
//	[8]  DME, Mold Bases & Plates catalogue, Tables 5, 6, 7 and 9; ZCC Cutting Tools
//	     catalogue, p. 256; Fujian Longxi bearing catalogue; Il Calibro, class tables
//	[9]  SKF, Rolling Bearings catalogue, tolerance tables
//	[10] ISO 286-2 hole chart, Wisetool reprint
//	[11] JIS B 0401, shaft limits, Sumitomo
//	[12] DIN ISO 286, reprints (MechGuru)
//	[13] Shigley, Mechanical Engineering Design, 3-16 and 7-8
//	[14] DIN 7190:2001 (from memory) and DIN 7190-1:2017 (secondary sources)
//	[15] Jones, Turning and Boring; Dooley, Applied Science for Metal Workers (1919)
//	[16] JCGM 100:2008 for uncertainty; ISO 14253-1 for the guard band (from memory)
//
// Materials have their own sources, row by row.
package fits
