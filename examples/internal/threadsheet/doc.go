// Package threadsheet names threads from what was measured of them and says it
// on a sheet: which thread it may be and how sure that is, what to measure next
// and how well, what comes of screwing the two likeliest together, and both of
// them drawn over one another. It says what is left of a torn hole and how it
// can be mended.
//
// Measured is what stands in a file for one thread. Check makes Checked of it,
// Pairs looks at threads that belong together, and Summary and Checked.Section
// make the sections of a sheet.
package threadsheet
