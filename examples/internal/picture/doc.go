// Package picture draws the diagrams of the example programs, all in one look:
// black on white, told apart by line and mark and never by colour, so that
// they serve in print, in a copy of a print, and for colour-blind eyes.
//
// A Chart is a curve over axes; a Drawing is lines and text in millimetres, for
// what has to be true to scale. Both come out as SVG.
package picture
