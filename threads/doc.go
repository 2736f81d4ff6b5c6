// Package threads holds the screw threads that old small engines carry: their
// forms, the sizes of each series, the limits between which a good one lies, how
// to find one by what people call it, how to measure it, how strong it is, which
// one an unknown thread is, and what to do about a torn one.
//
// # The picture
//
// Cut a bolt along its axis. Its edge is a row of triangles with their tips cut off
// or rounded, and the nut is the same row seen from the other side.
//
//	   crest of the bolt      ┌─p─┐
//	────────── ___ ───────── ___ ───  major diameter D
//	          /   \         /   \
//	---------/-----\-------/-----\--  effective diameter E: here the ridge is as
//	        /       \     /       \   wide as the gap
//	───────/─────────\___/─────────   minor diameter K, the core
//	   root of the bolt
//
// Effective is the British word for what ISO and the Americans call the pitch
// diameter; the flanks bear there, and it decides whether a nut goes on. Crests wear
// and corrode, flanks seldom do, so it is the better witness too.
//
// # Symbols
//
//	p    pitch                     D, d   major diameter, of nut and bolt
//	n    threads per inch, 1/p     D₂, d₂ effective diameter, also E
//	α    included angle            D₁, d₁ minor diameter, also K
//	H    height of the sharp       d₃     root of an ISO bolt
//	     triangle                  At     tensile stress area
//	ψ    helix angle               Le     length of engagement
//
// # Forms
//
// H = p / (2 tan(α/2)). A form says how much of H is cut off where:
//
//	                     α       depth     crest and root
//	ISO, Unified         60°     0.5413p   flat, p/8 and p/4
//	US Standard          60°     0.6495p   flat, p/8 (Sellers; before Unified)
//	SI 1898              60°     0.6495p   flat, p/8; root up to H/16 deeper
//	Whitworth            55°     0.6403p   rounded, 0.1373p (BSW BSF BSP brass)
//	BA                   47.5°   0.6p      rounded, 0.1808p
//	cycle                60°     0.5327p   rounded, p/6
//	Loewenherz           53.13°  0.75p     flat, p/8; here H = p
//	NPT                  60°     0.8p      narrow flats; taper 1 in 16
//
// A Form gives these at a pitch. The major less the effective diameter is
// EffectiveBelow, the major less the minor MinorBelow.
//
// # Series
//
// A Series is a list of sizes in the unit that defines it: millimetres for the
// metric ones and for BA, inches and threads per inch for the rest; pipe diameters
// are tabulated in millimetres by ISO. The diameters of a Thread follow from its form,
// except where the standard prints them: BS 93 rounds the depth of BA threads to
// 0.005 mm and ISO 228 the diameters of pipe threads to 0.001 mm, and those are kept.
//
// Each size carries the publications it was found in (Thread.Source) and how well it is
// borne out (Thread.Confidence). What was not found in print is from memory and says so:
// Thread.FromMemory. Among them are third-choice ISO fine sizes, SI above 27 mm, half the
// list of the Cycle Engineers' Institute, and the list of model engineers' sizes.
//
// Where sources contradict one another the size has a Note. For M1.8x0.2 and M2.2x0.25
// one list has fine pitches of 0.25 and 0.35, two have these. The bottom bracket sold as
// 1 3/8 x 24 is 1.370 in by the core that lists print; both are here. A gauge length of
// 25.5 mm for R 4 in one table against 25.4 is left out. BA 17 to 25, watch sizes, are not
// in BS 93; no table of their effective and minor diameters was found.
//
// # Finding
//
// Find reads what people write: 1/4 BSF, 2BA, M8 x 1, 14 mm plug, 3/8-16 UNC. It does not
// guess. 1/4-20 is UNC at 60° and BSW at 55°, and that is an AmbiguousError with both.
// What no series has is an UnknownError with the nearest. Of the US Standard only 1/2-12 is
// tabulated: 1/4-20 USS is not found, though it has the diameter and pitch of 1/4-20 UNC,
// whose name stands for it.
//
// # Confusions
//
//	1/4-26          BSF (55°, core 5.099 mm) and cycle (60°, core 5.309 mm) screw into
//	                one another and bear on a narrow line; 1/4 brass is BSF, not cycle
//	BSW, UNC        the same diameters and pitches from 1/4 in to 1 in, but for 1/2 in,
//	                and another angle: they go together and do not hold together
//	1/2-12, 1/2-13  BSW and UNC: starts, then binds; American work before about 1918 may
//	                have 12 threads at 60°
//	2 BA            4.70 x 0.81; beside it 3/16-32 (4.76 x 0.79), 10-32 (4.83 x 0.79), M5
//	0 BA, M6        diameter and pitch alike, 47.5° and 60°
//	7/16-20         UNF (core 9.738), cycle (9.759), Whitworth form (9.486)
//	5/16-26, M8x1   0.023 mm a thread apart
//	old metric      3 x 0.6, 4 x 0.75, 5 x 0.9 against 0.5, 0.7, 0.8 of ISO
//	BSP, NPT        1/2 and 3/4 in have 14 threads each, at 55° and 60°
//	plugs           M14x1.25 and a 9/16-20 pedal; 7/8-18 and M22x1.5
//
// A metric thread under a Whitworth hexagon is no contradiction: makers of the 1920s kept
// French threads with British heads. Pedals, some axles and fan nuts are left-handed.
// Identify weighs a measured thread against every series; Pair.Mate says whether a bolt will
// go into a nut that is not its own, how far, and what gets hurt.
//
// # Limits of size
//
// BoltLimits and NutLimits give the sizes between which a good thread lies.
//
//	ISO 965-1     6g, 6H: from its tables     BS 93     close, normal
//	ASME B1.1     2A, 2B: from its formulas   BS 84     close, medium, free
//
// ISO 965 is a table here and not its formula. The standard gives a formula and a rule of
// rounding, preferred numbers R40, but one printed tolerance in nine is not what they
// give: TD1 of grade 6 at pitch 1 mm is 236 µm in every book, and 224 by formula and
// rounding. Who computes them gets gauges that disagree with everyone else's. What the
// table does not have is refused. Figures of grades other than 6, and positions e and f,
// are largely from memory, and Limits.FromMemory says where one entered.
//
// The formulas of ASME B1.1 reproduce printed tables to the last place, apart from older
// tables that round in another order. Those of BS 84 are from memory, and no printed limits
// were found to test them on. BA limits are those of BS 93. Cycle, brass, model engineer
// and pipe threads have no limits here; BasicLimits stands in, without tolerance.
//
// Charts headed 2A that start from the basic diameter leave the allowance out and show 3A.
// A go gauge has the full form and tries everything at once; a no-go gauge tries the
// effective diameter alone (GoGauge, NoGoGauge). Range.Judge takes the uncertainty of the
// measurement into account.
//
// # Measuring
//
// Three wires in the grooves carry the micrometer to the effective diameter:
//
//	M = E − (p/2) cot(α/2) + w (1 + cosec(α/2)) + (w/2) tan²ψ cos(α/2) cot(α/2)
//
// The last term is the helix. The best wire, w = p / (2 cos(α/2)), touches at the effective
// diameter, where a flank that is not quite at its angle does no harm. Whitworth takes
// 3.1657w; with 3w, which is for 60°, a note in print went wrong by 0.009 in.
//
// # Strength
//
// A bolt pulls like a plain rod of area At (StressArea). A thread strips by shearing a
// cylinder: the bolt's at the crests of the nut, the nut's at the crests of the bolt, the
// areas of FED-STD-H28 (Joint). In a nut as strong as itself a bolt breaks first beyond
// about 0.8 d; in aluminium a steel stud needs 2 d and more. LeastEngagement reckons it.
//
// Most of a tightening torque is friction. Torque and Preload have it in full, TorqueByK in
// one figure. K runs from 0.12 to 0.30 with the state of the thread, and the preload at a
// given torque with it; PreloadFrom says how sure it is.
//
// Grades are the property classes of ISO 898-1, SAE J429 and the British letters. For S and T
// sources differ by up to a fifth, and the weaker figure stands.
//
// # Which thread is this?
//
// Naming a thread is where crankcases get torn, so the answer is never one
// name. Identify gives every thread that the readings may be of, each with its
// probability, and Identification.Parting says what to measure next and how
// well. Two threads that are one and the same under two names, as 1/4-26 BSF
// and 1/4-26 brass are, count as one candidate with both names.
//
// Clean the thread and choose where it is least worn. Take the pitch first,
// over as many threads as will fit, since the error of the reading is divided
// by their number: 26 to the inch and 1.0 mm differ by 0.023 mm a thread, which
// a vernier sees over ten threads and a gauge leaf does not see over four. Then
// the diameter over the crests of a bolt, or the bore of a nut; then core and
// effective diameter, if they can be got at, for crests wear and flanks last;
// and the angle only when it decides. Look at the rest of the machine too: one
// maker keeps to one or two series. A spanner proves nothing: metric threads
// were made under Whitworth hexagons for decades.
//
// The probability of a thread is its prior weight times the likelihood of each
// reading, over the sum of these for all threads. The likelihood is the density
// of the reading for a part made to that thread:
//
//	crest of a bolt   the major diameter less anything from 0 to 0.05 mm + 0.15 p,
//	                  less any wear up to the allowance given
//	bore of a nut     the minor diameter and anything up to 0.4 (D − D₁) more,
//	                  which leaves 60 % of the thread, and any wear on top
//	effective         less anything from 0 to 0.05 mm + 0.075 p; of a nut, more
//	root of a bolt    the core less anything from 0 to 0.05 mm + 0.15 p where a
//	                  radius is laid down; where it is not, from the basic
//	                  profile down over a span of 0.05 mm + 0.27 p
//	pitch             as it is
//	taper threads     all diameters up to 4.5 p / 16 more or less, as the reading
//	                  falls beside the gauge plane
//
// with every value in a span equally likely, and on it the error of the reading
// and the scatter of ordinary work, both normal: 0.015 mm on a diameter, 0.1 %
// on a pitch, 0.5° on an angle. The spans follow the limits of ISO 6g, Unified
// 2A and BA normal class within a quarter, from 3 to 12 mm. The thread of no
// table, cut to the maker's own size, has a prior of one in fifty (our guess)
// and even odds at every size. A simulation of parts made and measured by this
// model is among the tests: what it calls 90 % is right 88 to 92 times in a
// hundred. On parts that are not made so, bent, plated or filed
// beyond the allowance, the figures mean less.
//
// The prior is flat unless NewPrior is given the origin and years of the
// machine. Its weights are common practice and no more: they order what the
// readings leave tied.
//
// # Whether two will screw together
//
// Pair.Mate tells whether a bolt of one thread goes into a nut of another, after
// how many turns it binds, and what gets hurt. A difference of pitch d over the
// engaged length acts as if the bolt's effective diameter grew by d × cot(half
// angle): 1.732 d at 60°, 1.921 d at 55°, 2.273 d at 47.5°. When that comes up
// to the play the thread jams. A difference of angle alone feels right by hand:
// the load then bears on one edge of the flanks, which yield when tightened.
//
// Pedals, fans and flywheel nuts are often left-handed; look before force is used.
//
// # Holes, drills and dies
//
// A percentage of thread means nothing without its basis. FullThread has the
// three in use: a hole of 6.8 mm for M8 leaves 89 % of the overlap of bolt and
// nut, 78 % of the bolt's own depth, which metric charts mean, and 74 % of
// 3/4 H, which American charts mean. TappingDrills chooses from the metric,
// number, letter and fractional drills or from the reader's own; ClearanceHole,
// ClearanceDrill and DieBlank do the rest.
//
// Of a worn hole, Thread.Engagement says how much thread its bore has left, and
// Repairs what can be tapped in its place: a larger thread for a stepped stud, a
// wire insert, a screwed bush, each with how much of the new thread lies in
// sound metal and what is left to the edge. Bush gives the wall between two
// threads. A bush in a plug hole or a stud in a cylinder holds hot gas: if the
// sums leave it thin, have it welded and bored by someone who does that work,
// and try it cold, with the engine turned by hand and nobody in line with it.
//
// # On the lathe
//
// Lathe.Trains finds the change wheels for a lead, exact or nearly so, with the
// error over a length. A wheel of 127 teeth makes inches millimetres; 63 in
// its place is 125 parts in a million out. DepthOfCut and BoringDepth give the
// infeed for the tool's point as it is ground, SlideFeed the same along a slide
// that is set over, Thread.HelixAngle the slope to grind the tool for.
//
// # Cautions
//
// A thread that stiffens after two or three turns by hand is a wrong one: stop, and use no
// spanner. Do not run a tap or die of an assumed size through an old thread to clean it.
// Crankcases and cast lugs tear first and have no spares. A spark plug in a wrong or worn
// thread is blown out of a running engine. Strengths here are least values of standards for
// sound new parts; an old bolt of no known steel is weaker. Where a failure can hurt someone,
// as in brakes, lifting and pressure, go by the code that applies and by those licensed to.
//
// # Sources
//
// ISO 68-1, 261, 262, 724, 965-1, 228-1, 7-1, 898-1; ASME B1.1, B1.13M, B1.20.1; BS 84:1956,
// BS 93:1951, BS 811:1950; FED-STD-H28; Machinery's Handbook, 24th, 27th and 31st editions;
// Shigley's Mechanical Engineering Design, 9th ed.; Jones, Turning and Boring; Kaye and Laby,
// Tables of Physical and Chemical Constants, 1941. The source of each figure stands beside
// it, in the tables and in the tests. Drills: ANSI B94.11M, BS 328. Clearance holes:
// BS 4186:1967 and ANSI/ASME B18.2.8-1999 (Machinery's Handbook, 31st ed., pp. 2173 and
// 1741). Percentages of thread: the same, p. 2155. Wire inserts: DIN 8140-2 and ASME
// B18.29.1, from memory. Shop rules are marked common practice, no source, where they stand.
package threads
