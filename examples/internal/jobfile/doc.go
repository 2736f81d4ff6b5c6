// Package jobfile reads the TOML files of the example programs, strictly, and
// says of anything wrong in them where it stands and what to write instead.
//
// A file holds readings, each with its unit: stroke = "60 mm ± 0.2 mm". A bare
// number where a reading belongs is refused, and so is a key that nothing
// reads. Counts (teeth, threads) are plain whole numbers.
package jobfile
