package fits

// A row is a fit and the kind its source gives it.
type fitRow struct {
	fit  string
	kind Kind
}

// ANSI B4.2-1978, hole basis and shaft basis in turn. Kverneland, Metric Standards
// for Worldwide Manufacturing (2012), Table 6-1, and Engineering Essentials, notes on
// ANSI B4.2-1978 (R2004), agree.
var ansiB42 = [...]fitRow{
	{"H11/c11", ClearanceFit},
	{"C11/h11", ClearanceFit},
	{"H9/d9", ClearanceFit},
	{"D9/h9", ClearanceFit},
	{"H8/f7", ClearanceFit},
	{"F8/h7", ClearanceFit},
	{"H7/g6", ClearanceFit},
	{"G7/h6", ClearanceFit},
	{"H7/h6", ClearanceFit},
	{"H7/h6", ClearanceFit},
	{"H7/k6", TransitionFit},
	{"K7/h6", TransitionFit},
	{"H7/n6", TransitionFit},
	{"N7/h6", TransitionFit},
	{"H7/p6", InterferenceFit},
	{"P7/h6", InterferenceFit},
	{"H7/s6", InterferenceFit},
	{"S7/h6", InterferenceFit},
	{"H7/u6", InterferenceFit},
	{"U7/h6", InterferenceFit},
}

// ISO 286-1:2010, Figure 12, recommended fits on hole basis, as read in a public
// tutorial.
var isoHoleBasis = [...]fitRow{
	{"H6/g5", ClearanceFit},
	{"H6/h5", ClearanceFit},
	{"H6/js5", TransitionFit},
	{"H6/k5", TransitionFit},
	{"H6/m5", TransitionFit},
	{"H6/n5", InterferenceFit},
	{"H6/p5", InterferenceFit},
	{"H7/f6", ClearanceFit},
	{"H7/g6", ClearanceFit},
	{"H7/h6", ClearanceFit},
	{"H7/js6", TransitionFit},
	{"H7/k6", TransitionFit},
	{"H7/m6", TransitionFit},
	{"H7/n6", TransitionFit},
	{"H7/p6", InterferenceFit},
	{"H7/r6", InterferenceFit},
	{"H7/s6", InterferenceFit},
	{"H7/t6", InterferenceFit},
	{"H7/u6", InterferenceFit},
	{"H7/x6", InterferenceFit},
	{"H8/e7", ClearanceFit},
	{"H8/f7", ClearanceFit},
	{"H8/h7", ClearanceFit},
	{"H8/d8", ClearanceFit},
	{"H8/e8", ClearanceFit},
	{"H8/f8", ClearanceFit},
	{"H8/h8", ClearanceFit},
	{"H8/js7", TransitionFit},
	{"H8/k7", TransitionFit},
	{"H8/m7", TransitionFit},
	{"H8/s7", InterferenceFit},
	{"H8/u7", InterferenceFit},
	{"H9/d8", ClearanceFit},
	{"H9/e8", ClearanceFit},
	{"H9/f8", ClearanceFit},
	{"H9/h8", ClearanceFit},
	{"H10/b9", ClearanceFit},
	{"H10/c9", ClearanceFit},
	{"H10/d9", ClearanceFit},
	{"H10/e9", ClearanceFit},
	{"H10/h9", ClearanceFit},
	{"H11/b11", ClearanceFit},
	{"H11/c11", ClearanceFit},
	{"H11/d10", ClearanceFit},
	{"H11/h10", ClearanceFit},
}

// ISO 286-1:2010, Figure 13, recommended fits on shaft basis, from memory.
var isoShaftBasis = [...]fitRow{
	{"G6/h5", ClearanceFit},
	{"H6/h5", ClearanceFit},
	{"JS6/h5", TransitionFit},
	{"K6/h5", TransitionFit},
	{"M6/h5", TransitionFit},
	{"N6/h5", InterferenceFit},
	{"P6/h5", InterferenceFit},
	{"F7/h6", ClearanceFit},
	{"G7/h6", ClearanceFit},
	{"H7/h6", ClearanceFit},
	{"JS7/h6", TransitionFit},
	{"K7/h6", TransitionFit},
	{"M7/h6", TransitionFit},
	{"N7/h6", TransitionFit},
	{"P7/h6", InterferenceFit},
	{"R7/h6", InterferenceFit},
	{"S7/h6", InterferenceFit},
	{"T7/h6", InterferenceFit},
	{"U7/h6", InterferenceFit},
	{"X7/h6", InterferenceFit},
	{"E8/h7", ClearanceFit},
	{"F8/h7", ClearanceFit},
	{"H8/h7", ClearanceFit},
	{"D9/h8", ClearanceFit},
	{"E9/h8", ClearanceFit},
	{"F9/h8", ClearanceFit},
	{"H9/h8", ClearanceFit},
	{"E8/h9", ClearanceFit},
	{"F8/h9", ClearanceFit},
	{"H8/h9", ClearanceFit},
	{"D9/h9", ClearanceFit},
	{"E9/h9", ClearanceFit},
	{"F9/h9", ClearanceFit},
	{"H9/h9", ClearanceFit},
	{"B11/h9", ClearanceFit},
	{"C10/h9", ClearanceFit},
	{"D10/h9", ClearanceFit},
	{"H10/h9", ClearanceFit},
}

// BS 4500A, selected fits on hole basis: data sheet from memory, the classes
// confirmed by a handbook chapter (Taylor & Francis, 2016, ch. 32) and H9/d10 by
// Kverneland.
var bs4500A = [...]fitRow{
	{"H11/c11", ClearanceFit},
	{"H9/d10", ClearanceFit},
	{"H9/e9", ClearanceFit},
	{"H8/f7", ClearanceFit},
	{"H7/g6", ClearanceFit},
	{"H7/h6", ClearanceFit},
	{"H7/k6", TransitionFit},
	{"H7/n6", TransitionFit},
	{"H7/p6", InterferenceFit},
	{"H7/s6", InterferenceFit},
}

// BS 4500B, selected fits on shaft basis: data sheet from memory, D10/h9 confirmed by
// Kverneland.
var bs4500B = [...]fitRow{
	{"C11/h11", ClearanceFit},
	{"D10/h9", ClearanceFit},
	{"E9/h9", ClearanceFit},
	{"F8/h7", ClearanceFit},
	{"G7/h6", ClearanceFit},
	{"H7/h6", ClearanceFit},
	{"K7/h6", TransitionFit},
	{"N7/h6", TransitionFit},
	{"P7/h6", InterferenceFit},
	{"S7/h6", InterferenceFit},
}

// The classes in frames, to be chosen first. ISO 1829:1975 and ISO 286-1:2010,
// Figures 10 and 11, from memory.
var (
	firstHoles = [...]string{
		"H7", "H8", "H9", "H11", "G7", "F8", "E9", "D10", "C11", "B11", "A11", "JS7", "K7", "N7", "P7", "R7", "S7",
	}
	firstShafts = [...]string{
		"h6", "h7", "h9", "h11", "g6", "f7", "e8", "d9", "c11", "b11", "a11", "js6", "k6", "n6", "p6", "r6", "s6",
	}
)

// What a fit is for, in our words, by hole basis; the same letters on shaft basis
// serve the same ends. The nine of ANSI B4.2 after Kverneland, Table 6-1; the others
// are common practice, no source.
var uses = [...]struct {
	shaft letter
	words string
}{
	{la, "very loose: wide clearance for dirt, heat and rough work"},
	{lb, "very loose: wide clearance for dirt, heat and rough work"},
	{lc, "loose running: wide commercial tolerances on parts that need not be held well"},
	{lcd, "loose running on small parts"},
	{ld, "free running: great changes of temperature, high speed or heavy journal load; not for accurate work"},
	{le, "easy running: shafts in several bearings or long ones"},
	{lef, "easy running on small parts"},
	{lf, "close running: accurate machines at moderate speed and load, and accurate location"},
	{lfg, "close running on small parts"},
	{lg, "sliding: turns and moves freely and locates accurately, but is not meant to run"},
	{lh, "locating: snug, for parts that stand still; goes together by hand, oiled; the least clearance is nought"},
	{ljs, "locating: a light push, or a tap with a soft hammer"},
	{lj, "locating: a light push, or a tap with a soft hammer"},
	{lk, "locating accurately: between a little clearance and a little interference"},
	{lm, "locating accurately and firmly: driven with a hammer, can be taken apart again"},
	{ln, "locating more accurately still, where some interference is allowed"},
	{lp, "locating rigidly and in line, without much pressure in the bore: a light press fit"},
	{lr, "medium press fit for parts that are seldom taken apart"},
	{ls, "medium drive: steel parts in general, shrink fits on light sections; about the tightest for cast iron"},
	{lt, "force fit for parts that stand high stress"},
	{lu, "force or shrink fit for parts that stand high stress"},
	{lv, "heavy shrink fit: check the stresses"},
	{lx, "heavy shrink fit: check the stresses"},
	{ly, "heavy shrink fit: check the stresses"},
	{lz, "heavy shrink fit: check the stresses"},
	{lza, "heavy shrink fit: check the stresses"},
	{lzb, "heavy shrink fit: check the stresses"},
	{lzc, "heavy shrink fit: check the stresses"},
}
