// Package ignition turns degrees of crank into marks on a rim and back, and
// says when the spark comes, when it should, and what to move.
//
// An old engine has no timing marks, or has some that nobody trusts. What it
// has is a flywheel. Stand facing its rim. A wire pointer is fixed to the
// engine close to the rim, and a paper rule is laid round it. When the piston
// is highest some figure of the rule stands at the pointer: that is top dead
// centre, and finding it well is the first job. Turn the engine by hand the way
// it runs, with a buzzer across the contacts: at some other figure the contacts
// part, and that is where the spark comes. The distance between the two figures
// is an arc of the rim, the arc is an angle of the crank, and the angle is a
// distance of the piston from its top, as the card in the tool box gives it.
//
// # Symbols
//
//	D, R   diameter and radius of the rim    θ   crank angle, 0 at top dead centre,
//	C      girth, once round the rim             positive in the direction of rotation
//	s      arc, along the rim                t   thickness of a tape, or a time
//	c      chord, straight across            N   speed
//	x      drop of the piston from its top   β   lean of the plug hole from the bore
//	S      stroke                            i   crank turns for one of the shaft
//
// # The rim
//
// Arc, chord and tape are three different things and have three different
// names here ([Rim]):
//
//	s = D θ/2            along the rim        θ = 2s/D
//	c = D sin(θ/2)       straight across      θ = 2 asin(c/D)
//	s = (R + t/2) θ      on a tape of some thickness laid round the rim
//
// with θ in radians. A straight rule read as if it were an arc makes the angle
// too small, by 1 % at 30°. A tape read as if it had no thickness makes it too
// large, because it is the middle of the tape that keeps its length when it is
// bent. Best is to read the mark and the whole girth on the same tape,
// θ = 360° s/C ([AngleOfShare]): diameter and thickness both drop out.
//
// # Which way
//
// With a fixed pointer the spark mark lies ahead of the top dead centre mark in
// the direction of rotation, because it has to come past the pointer first. On
// the case, read against one line on the rim, it is the other way about. A
// mark scribed on the wrong side puts the spark as far after top dead centre as
// it should be before it. [Mark] says how far, which way from which mark,
// clockwise or anticlockwise facing the rim, and from which side to come to it.
//
// The figures of a rule may rise or fall at the pointer as the engine is turned
// forward. That depends on how the rule was stuck on and not on the way the
// engine turns, and has to be stated: [Rising] or [Falling]. A [Scale] turns
// figures into crank angles and back; a [MeasuredScale] does so with the
// uncertainty of girth and top dead centre.
//
// Angles called an advance, and everything said to be before top dead centre,
// are positive before it and negative after it. A position on the rim is
// positive ahead, in the direction of rotation.
//
// # One advance in every form
//
// Cards give the piston's distance from the top, in millimetres or in fractions
// of an inch; handbooks give degrees; old rules give a part of the stroke; the
// rim wants an arc; a gauge in a leaning hole falls by more than the piston
// does; and the flame knows only time:
//
//	x = drop of the piston at −θ     geometry.Crank.Drop
//	share = x/S
//	gauge = x / cos β                flat crown, square to the bore
//	shaft = θ / i                    i = 2 for a half-speed magneto
//	time  = θ / 6N                   θ in degrees, N in rev/min
//
// A [Bench] gives all of them at once ([Forms]). Where the rod is not known the
// angle comes with the spread of usual rods ([FormsSpread]): about a degree at
// thirty. A domed or wedge-shaped crown does not give its drop to a gauge in a
// leaning hole; equal readings on both sides of the top still find the top.
//
// # Finding top dead centre
//
// Every way of finding it gives a position: the figure of the rule that stands
// at the fixed pointer when the piston is highest. It is a figure at the
// pointer, not a distance on the rim from some other mark, and [Setup] states
// whether figures rise or fall there as the engine is turned forward.
//
// Why not watch for the highest point? Near it the piston moves as the square
// of the angle,
//
//	x = r(1 + λ) θ²/2     r throw, λ throw over rod, θ in radians
//
// so a dial that cannot show less than δ stands still over
// ±√(2δ/(r(1 + λ))), more than a degree either way for a hundredth of a
// millimetre. [ByEye] takes such tries for what they are worth. A few degrees
// further out the piston moves, and the same height is met once before the top
// and once after it. Half way between is top dead centre ([Bisect]), with
//
//	u² = (u(s)² + (u(x)/(dx/ds))²)/2
//
// for one pair of readings, u(s) the uncertainty of setting the rim and u(x)
// that of the dial. [PlanTDC] says how far down to read for a wanted certainty.
//
// Slack spoils it. Turned by hand the piston is pushed on its way up and sits
// low in its bearings, and is dragged past the top and sits high, by δ in all;
// just past the top it stays where it is until the slack is taken up. The same
// height then comes later in the way of turning, by δ/(2 dx/dθ) ([LateBy]):
// turning forward top dead centre is found late, turning backward early by as
// much. Readings both ways show δ and are free of it; middles taken one way only
// carry in their uncertainty what δ there may be ([MostSlack]). So is a positive stop
// ([Stop]), against which the piston is pushed from both sides; it asks no dial,
// no rod and no stroke. A dial is best put to zero while the piston is pushed up
// to the top: drops set on the way up then need no correction, drops set on the
// way down read short by δ.
//
// With the cylinder to one side of the crank, by e, the middle of equal heights
// lies e x/(l + r)² past top dead centre, a little more the further down; middles
// are put right for it where the offset is known.
//
// The best use of many dial readings is to lay the true curve of the crank
// through all of them by least squares ([FindTDC]). Position, dial zero and slack
// are unknown, rod or offset may be; what is known with some uncertainty (stroke,
// lean, rim) is weighed along with the readings, each of which counts by its
// effective variance u(x)² + (dx/ds)² u(s)². If the readings scatter more than
// stated the scatter is used. A reading that stands out as only a slip does is
// left out and named, with the well-known slips of eye and pen that would
// explain it; a good set is accused less often than once in 200. That holds if the
// uncertainties of dial and rim are stated in about their true proportion: a rim
// said to be set without error makes honest readings look like slips.
//
// Each way says what its uncertainty is made of ([TDC.Budget]), and with that
// which reading to take better first.
//
// A rim that runs out swings its marks to and fro under the pointer. With e half
// of what a dial on it shows in a turn, a position found from ±θ is out by up to
// e(1 − cos θ) and an arc a between two figures by up to 2e sin(a/2); both are in
// the uncertainties where the run-out is stated ([Setup], [MeasuredScale]).
//
// [Combine] weighs the results of several ways against each other, shows where
// they disagree, and says which was worth the trouble.
//
// A degree disc is a rim 360 mm round, a millimetre to the degree.
//
// # The contacts
//
// Only the figures taken turning forward, the way the engine runs, are the
// timing ([MeasuredScale.Opening]). Chain and gears have slack. Forward, the
// pulling side is tight, as in running. Turned back, the crank takes up the
// slack first while the breaker stands, so that the contacts change at an
// earlier crank position, by the whole slack. The difference of both ways is the
// slack; their mean is nothing.
//
// A wider gap opens the contacts earlier and closes them later: less dwell, and
// an earlier spark. So the gap is set first and the timing second. How much it
// is depends on the cam and is measured at two gaps ([MeasuredScale.GapEffect]).
// There the error of setting each gap counts once, whatever the number of rim
// figures taken at it: they make the rim figure better and leave the gap as it
// was. [GapEffect.GapFor] tells which gap would give a wanted timing, as an
// answer to look at. Degrees are not bought with gap: in a magneto it also moves
// the break away from the armature's best place.
//
// The dwell of a breaker, and how long its contacts have to fill the coil, are in
// [Breaker]:
//
//	cycle = 360°/lobes,  dwell % = 100 × closed/cycle,  open = cycle − closed
//
// all of them in degrees of the breaker's own shaft.
//
// # Moving the spark
//
// A [Drive] is the ratio of crank to shaft. Slack, wear and lag at a half-speed
// shaft count double at the crank; an impulse coupling that holds the magneto
// back by 14° takes 28° off ([Drive.StartingAdvance]). There are three things to
// move:
//
//	the wheel on a plain taper   any angle              Retiming
//	a chain or gears, by teeth   whole steps only       Toothed
//	the plate in its slot        Δθ = i × travel/radius  Plate
//
// To advance, the driven shaft goes forward against the crank, the way it runs;
// the plate goes against the shaft's turning. Whatever was set, the proof is the
// rim figure at which the contacts part when the engine is turned forward again.
// [Retiming.Steps], [Toothed.Steps] and [Plate.Steps] give the order of work for
// each of the three.
//
// # The lever, and starting
//
// A lever moves the spark between full advance and full retard ([Lever]). In
// starting by hand the piston comes up slowly, and a spark before top dead
// centre can throw it back: crank handle, kick lever or rope, and the hand and
// wrist on it, go the wrong way. The uncertainty of full retard counts here, so
// [Lever.Starting] takes two standard uncertainties on the safe side. Slipping
// the drive for more advance moves full retard by as much: look at it again
// ([Lever.SetTo]). Or set full retard safe and see what is left for running
// ([Lever.SetRetarded]).
//
// # Valves
//
// The same marks serve the four-stroke: [Scale.ValveTiming] makes opening and
// closing angles, overlap and durations of rim figures taken at a stated lift,
// and the compression ratio from where the inlet closes.
//
// # Is it likely?
//
// [Ask] holds a timing against what makers and owners of like engines wrote. It
// answers with a question and the rows it rests on, never with a verdict:
// published practice runs from top dead centre to 40° before it, and makers of
// like engines differed by ten degrees and more.
//
// # How sure
//
// Figures carry standard uncertainties ([units.Reading]), and results say what
// theirs is made of ([units.Result]). Figures taken again and again of the same
// thing are looked through for one that stands out, a wrong centimetre or a
// half-way line taken for a numbered one ([FindOdd]); it is named, left out of
// the mean, and should be taken again.
//
// # Sources
//
// The relations are plane geometry and are derived in the comments where they
// stand. Period figures and worked examples are named where they are used:
// AWO 425 operating instructions (1950s); Fichtel & Sachs 505 repair
// instructions; J.A.P. service instructions; Hercules Engine News in Gas Engine
// Magazine (1995, 1999); Page, Aviation Engines (1917); Mathot, Gas Engines and
// Producer-Gas Plants (1905); Rajput, A Textbook of Internal Combustion Engines;
// Mathur and Sharma, Internal Combustion Engine. Uncertainty is that of
// JCGM 100:2008. What is common practice without a source says so where it
// stands.
//
// # Cautions
//
// Shut the fuel off, take the plug out and earth its lead before turning an
// engine by hand; a magneto sparks at a touch, and its shock is dangerous to
// people with heart trouble. Never turn an engine by its starter, or force it,
// against a stop in the plug hole. Keep sleeves, hair and fingers away from
// wheel, chain and belt. Petrol vapour and the spark of a timing test do not go
// together: work in the open air, with the can shut and away. Pull a wheel off
// its taper with a puller, and stand out of its line. An engine timed too early
// kicks back. Where local rules or a licensed trade apply, they come first.
package ignition
