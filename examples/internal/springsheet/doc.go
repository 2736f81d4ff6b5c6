// Package springsheet chooses return springs from what is on offer: a flat strip
// for a drum that winds its rope home, and a coil of wire for a lever. It takes
// the readings as they stand in a file and returns the section of a sheet: which
// one, why, how many turns to wind on first, what fails of the others and by how
// much, what to make, and what the wound spring can do to a hand.
//
// The sums are those of package springs. What is added here is how sure they are:
// thickness of strip counts three times and diameter of wire four, and in the
// making of a coil a tenth may be lost (springs.Accuracy). Neither the steel of
// what is on offer nor the shape in which a strip lies is guessed: both have to be
// stated, and a steel that is only assumed comes back as a question.
package springsheet
